//! A bird carried hot that is put into the oven of the other house: before its two hours are over readings decide from then on; after them
//! no heat makes it food again.

use super::action::JobRef;
use super::state::{JobState, LivePlan};
use super::turn::Urgency;
use super::{Sitting, board, hot_day, hot_road, jobs, kept_hot, readings};
use crate::reading::{self, ReportKind, Told};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{Temperature, in_fahrenheit};

/// Off the heat, carried hot and not carved.
fn carried(plan: &LivePlan, now: Moment) -> bool {
    hot_road::is_hot(plan) && plan.is_off() && hot_road::is_whole(plan, now)
}

/// It is in the heat again, as far as anyone has said.
pub(super) fn is_in(sitting: &Sitting<'_>) -> bool {
    sitting.room.plan.as_ref().is_some_and(|plan| carried(plan, sitting.now) && plan.heated_again.is_some())
}

/// "Put it in my aunt's oven", "do we have to warm it up?", of a bird carried hot. `false`: nothing of the kind.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| carried(plan, sitting.now)) else { return false };
    let served = |report: reading::Report| {
        report.kind == ReportKind::Done && matches!(report.step, Some(Step::Carve | Step::Serve))
    };
    if let Some(over) = over(plan)
        && reading::read_report(text, lexicon).is_some_and(served)
    {
        sitting.answer(over).urgency(Urgency::Safety);
        return true;
    }
    if reading::asks_to_reheat(text, lexicon) {
        return asked(sitting);
    }
    if wraps(sitting, text) {
        return true;
    }
    let meant = reading::says_into_heat(text, lexicon);
    meant && goes_in(sitting)
}

/// "Wrapped it in foil and towels, it's in the cooler", where that is the job: done, and no foil is advised on.
fn wraps(sitting: &mut Sitting<'_>, text: &str) -> bool {
    /// Foil, towels and a box are named.
    const NAMED: usize = 3;
    let (step, nth) = hot_road::PACK;
    let Some(plan) = &sitting.room.plan else { return false };
    let waits = plan.job(step, nth).is_some_and(|job| job.state == JobState::Waiting);
    let it = JobRef { serial: plan.serial, step, nth };
    let told = Told::of(text, sitting.lexicon());
    let named = told.all("meat-rests").count();
    let asks = text.contains(['?', '¿', '/']) || text.contains(|c: char| c.is_ascii_digit());
    let wraps = waits && !asks && named >= NAMED;
    if wraps {
        jobs::done(sitting, it);
    }
    wraps
}

fn goes_in(sitting: &mut Sitting<'_>) -> bool {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut() else { return false };
    let Some(by) = hot_road::last_hot(plan).map(|hot| hot + hot_day::most(plan)) else { return false };
    if plan.heated_late.is_some() || now > by {
        plan.heated_late.get_or_insert(now);
        sitting.answer(too_late(by)).urgency(Urgency::Safety);
        return true;
    }
    let since = *plan.heated_again.get_or_insert(now);
    let text = Text::new("cook-hot-in").with("at", Arg::Clock(since)).with("target", Arg::Temperature(super::target()));
    // What changes with it is told with the readings.
    let _shifts = sitting.resolve();
    sitting.answer(text).urgency(Urgency::Safety);
    board::refresh(sitting);
    true
}

fn too_late(by: Moment) -> Text {
    Text::new("cook-hot-too-late").with("by", Arg::Clock(by))
}

/// It was warmed up after its two hours: that it is thrown away.
pub(super) fn over(plan: &LivePlan) -> Option<Text> {
    plan.heated_late?;
    Some(too_late(hot_road::last_hot(plan)? + hot_day::most(plan)))
}

fn asked(sitting: &mut Sitting<'_>) -> bool {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_ref() else { return false };
    let Some(hot) = hot_road::last_hot(plan) else { return false };
    let by = hot + hot_day::most(plan);
    let text = if let Some(over) = over(plan) {
        over
    } else if now > by {
        kept_hot::over(plan, now)
    } else if let Some(since) = plan.heated_again {
        at_table(since)
    } else {
        let read = hot_road::read_hot(plan).is_some_and(|at| now - at <= readings::ONE_LOOK);
        Text::new(if read { "cook-hot-needs-no" } else { "cook-hot-needs" })
    };
    let text = text.with("hot", Arg::Temperature(kept_hot::holds())).with("by", Arg::Clock(by));
    sitting.answer(text.with("target", Arg::Temperature(super::target()))).urgency(Urgency::Safety);
    true
}

/// When it is carved, of a bird that is in the heat again.
pub(super) fn at_table(since: Moment) -> Text {
    Text::new("cook-hot-in-table").with("at", Arg::Clock(since)).with("target", Arg::Temperature(super::target()))
}

/// Done once more: as hot as any bird has to be.
pub(super) fn is_done(spot: Temperature) -> bool {
    in_fahrenheit(spot) >= in_fahrenheit(super::target()) - 1e-6
}
