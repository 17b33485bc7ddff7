//! What is said to everyone in a group and can only be meant for the plan: the yes to one's own proposal, the hour of dinner asked for,
//! who has a job, a dish with its heat and its time, the bird that goes in.
//!
//! People talk to each other here: whatever might be meant for someone else is left alone.

use super::state::Draft;
use super::{RoomKind, Sitting, dishes, job_hour, jobs, may, planning, readings, reports};
use crate::reading;
use carvetime_core::plan::Step;
use chrono::TimeDelta;

/// A yes is one to what lies open if that was shown within this time.
const LATELY: TimeDelta = TimeDelta::minutes(10);

/// `false`: it is between people.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if sitting.room.kind != RoomKind::Group {
        return false;
    }
    accepts(sitting, text)
        || sitting.room.plan.is_some() && (asks(sitting, text) || adds(sitting, text) || goes_in(sitting, text))
}

/// "Looks good", by whose proposal it is.
fn accepts(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(who) = sitting.speaker() else { return false };
    let fresh = |draft: &Draft| draft.proposed_at.is_some_and(|at| sitting.now - at <= LATELY);
    let open = planning::is_proposed(sitting, who) && sitting.room.drafts.get(&who).is_some_and(fresh);
    if !open || reading::read_willing(text, sitting.lexicon()).is_none() {
        return false;
    }
    planning::accept(sitting, who);
    true
}

/// "When's dinner?", "when does the bird go in?", "who's salting?".
fn asks(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    if reading::asks_when(text, lexicon) {
        readings::when(sitting);
        return true;
    }
    jobs::who(sitting, text) || job_hour::told(sitting, text, false)
}

/// "Add mac and cheese in the oven 45 min at 350", by whoever may change the plan; "no stuffing after all", "stuffing takes 60 min".
fn adds(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let order = may::steer(sitting) && reading::is_dish_order(text, &sitting.ground());
    order && dishes::told(sitting, text) || dishes::retold(sitting, text)
}

/// "It's in, at 325": the number is the air's.
fn goes_in(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let on = |report: &reading::Report| report.step == Some(Step::On) || report.or == Some(Step::On);
    let report = reading::report_beside(text, sitting.lexicon()).filter(on);
    let Some(report) = report.filter(|_| reading::names_air(text, &sitting.ground())) else { return false };
    reports::means(sitting, &report) && reports::heard(sitting, &report)
}
