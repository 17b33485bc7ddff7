//! "The car won't start", "stuck in traffic", "we leave at 5:20": on the way to the other house, later than planned.
//!
//! Nothing moves by it: the bird's two hours run whatever the road is like. Whoever drives is called at the hour they said, and a bird
//! carried hot gets its limit told while there is still something to be done about it.

use super::state::{JobState, LivePlan};
use super::turn::Urgency;
use super::{Sitting, hot_road, kept_hot, swap};
use crate::reading::{self, Told};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step, spans};
use chrono::TimeDelta;

/// Longer texts tell a story.
const LONGEST: usize = 80;
/// From so long before it was to begin, and for so long after it began, the drive is what is meant.
const NEAR: TimeDelta = TimeDelta::minutes(90);
/// Nobody having said when they leave, they are asked again.
const AGAIN: TimeDelta = TimeDelta::minutes(15);

/// `false`: nobody is held up on this dinner's road.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let (now, lexicon) = (sitting.now, sitting.lexicon());
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, lexicon);
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| !asks && is_on_the_road(plan, now)) else { return false };
    if text.chars().count() > LONGEST {
        return false;
    }
    let told = Told::of(text, lexicon);
    let held = told.says("held-up");
    let waits = plan.job(Step::Travel, 0).is_some_and(|job| job.state == JobState::Waiting);
    let leaves = leaving(sitting, plan, text).filter(|_| waits && (held || told.says("did-travel")));
    if !held && leaves.is_none() {
        return false;
    }
    let hot = hot_road::is_hot(plan).then(|| hot_road::last_hot(plan)).flatten();
    let again = leaves.unwrap_or(now + AGAIN);
    if let Some(job) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(Step::Travel, 0)).filter(|_| waits) {
        swap::uncall(job);
        // They have not left, whatever the hour.
        (job.call_at, job.calls, job.denied) = (Some(again), 1, true);
    }
    let leave = waits.then(|| Text::new("room-held-up-leave").with("when", Arg::Clock(again)));
    let limit = hot.map(|hot| {
        let by = hot + spans::HOT_ROAD;
        let id = if now > by { "room-held-up-over" } else { "room-held-up-hot" };
        Text::new(id).with("by", Arg::Clock(by)).with("hot", Arg::Temperature(kept_hot::holds()))
    });
    let urgency = if limit.is_some() { Urgency::Safety } else { Urgency::Due };
    let lines: Vec<Text> = leave.into_iter().chain(limit).collect();
    if !lines.is_empty() {
        sitting.answer_all(lines).key("held-up").urgency(urgency);
    }
    true
}

/// The drive is at hand or under way, and the bird still whole.
fn is_on_the_road(plan: &LivePlan, now: Moment) -> bool {
    let drive = plan.job(Step::Travel, 0);
    let drive = drive.is_some_and(|job| match job.state {
        JobState::Waiting => now + NEAR >= job.at,
        JobState::Done { at, .. } => now - at <= NEAR + TimeDelta::minutes(job.lasts_min),
        JobState::Skipped { .. } => false,
    });
    drive && hot_road::is_whole(plan, now)
}

/// The hour told, if it is one before dinner.
fn leaving(sitting: &Sitting<'_>, plan: &LivePlan, text: &str) -> Option<Moment> {
    let at = reading::read_job_hour(text, &sitting.ground())?;
    // "At 5:20" of an afternoon.
    let hours = [at - TimeDelta::hours(12), at];
    let dinner = plan.wish.dinner?;
    hours.into_iter().find(|at| *at > sitting.now && *at < dinner)
}
