//! After the cook: what was predicted and what happened, and what this cooker taught.
//!
//! The line is said with the pull. The profile learns once, when dinner has come, so that a pull taken back teaches nothing.

use super::alarms::off_at;
use super::state::{LivePlan, StoredProfile};
use super::{Sitting, forecast};
use crate::words::{Arg, Text};
use carvetime_core::plan::Moment;

/// What is said with the pull: prediction and fact.
pub(super) fn lines(plan: &LivePlan, off: Moment) -> Vec<Text> {
    let mut lines = Vec::new();
    if let Some((first, _)) = &plan.told {
        let near = first.p50 - first.at < forecast::NEAR;
        let said = |at| Arg::Clock(forecast::rounded(at, near));
        lines.push(
            Text::new("cook-after")
                .with("when", Arg::Clock(first.at))
                .with("about", said(first.p50))
                .with("from", said(first.p10))
                .with("to", said(first.p90))
                .with("off", Arg::Clock(off)),
        );
    }
    lines
}

/// The cooker's profile learns from this cook, and is kept with the host.
pub(super) fn learn(sitting: &mut Sitting<'_>) {
    let light = sitting.light();
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| !plan.learned) else { return };
    let (Some(off), Some((on, cook, order))) = (off_at(plan), forecast::cook_of(plan, &light)) else { return };
    plan.learned = true;
    // Begun in one cooker and finished in another it teaches nothing of either.
    if plan.was_set.iter().any(|was| was.elsewhere) {
        return;
    }
    let readings: Vec<_> = plan.readings_since(on).into_iter().filter(|reading| reading.at <= off - on).collect();
    let host = plan.host;
    let learned = light.profile.after(&cook, &readings);
    if learned.cooks == light.profile.cooks {
        return;
    }
    let stored = StoredProfile { pit_offset_c: learned.pit_offset, speed: learned.speed, cooks: learned.cooks };
    let cooker = order.heat.cooker.name().to_owned();
    sitting.change_person(host, |person| {
        person.profiles.insert(cooker, stored);
    });
}
