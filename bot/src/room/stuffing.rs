//! The stuffing while it cooks: "stuffed it and it's in", "the stuffing won't get there", "I took the stuffing out".
//!
//! Out of the bird it goes by its own 165 °F in a dish, and the bird by its spots.

use super::sitting::button;
use super::state::LivePlan;
use super::turn::Urgency;
use super::{Sitting, board, readings, reports, undo};
use crate::reading;
use crate::words::{Arg, Text};

/// `false`: they say nothing of it, or no bird is over the heat.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    if let Some(report) = reading::read_stuffed_in(text, lexicon) {
        let waits = |plan: &&mut LivePlan| plan.on_since(sitting.now).is_none() && !plan.is_off();
        // Whatever was planned: its middle is to be measured now.
        if let Some(plan) = sitting.room.plan.as_mut().filter(waits) {
            plan.wish.stuffed = Some(true);
        }
        return sitting.room.plan.is_some() && reports::heard(sitting, &report);
    }
    reading::says_stuffing_out(text, lexicon) && readings::cooks(sitting) && taken_out(sitting)
}

/// What is kept of its having been taken out.
const OUT: &str = "stuffing-out";

/// Whether it was taken out: what it read in the bird says nothing of the bird any more.
pub(super) fn is_out(plan: &LivePlan) -> bool {
    plan.wish.stuffed == Some(false) && plan.limits_called.iter().any(|name| name == OUT)
}

/// It cooks on by itself.
fn taken_out(sitting: &mut Sitting<'_>) -> bool {
    let (now, by) = (sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| plan.wish.stuffed == Some(true) && !plan.is_off()) else {
        return false;
    };
    plan.remember("mended", None, by, now);
    plan.wish.stuffed = Some(false);
    plan.limits_called.push(OUT.to_owned());
    let undo = button("room-button-undo", &undo::newest(plan));
    // Nothing that was called is called again for it.
    let _solved = sitting.resolve();
    let text = Text::new("room-stuffing-out").with("target", Arg::Temperature(super::target()));
    sitting.answer(text).urgency(Urgency::Safety).row([undo]);
    board::refresh(sitting);
    true
}
