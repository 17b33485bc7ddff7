//! Food that went into the fridge too late is thrown away, and what was planned for it ends.

use super::state::{JobState, LivePlan};
use super::{Moment, plan_words};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;

/// What is done with the whole bird after it was chilled the day before.
const WITH_THE_BIRD: [Step; 6] = [Step::Pack, Step::Travel, Step::Reheat, Step::Serve, Step::Chill, Step::Leftovers];
/// What is done with leftovers.
const WITH_LEFTOVERS: [Step; 1] = [Step::Leftovers];

/// Ends the jobs for what `chilled` put away too late; says which. A bird cooked ahead was all of it, else it was what was left over.
pub(super) fn end(plan: &mut LivePlan, chilled: u8, now: Moment) -> Option<Text> {
    let whole = chilled == 0 && plan.job(Step::Reheat, 0).is_some();
    let over: &[Step] = if whole { &WITH_THE_BIRD } else { &WITH_LEFTOVERS };
    let mut ended = Vec::new();
    for job in plan.jobs.iter_mut().filter(|job| job.state == JobState::Waiting) {
        let Some(step) = job.step().filter(|step| over.contains(step)) else { continue };
        job.state = JobState::Skipped { by: None, at: now };
        job.call_at = None;
        if step != Step::Serve {
            ended.push(plan_words::step_name(step, job.nth));
        }
    }
    (!ended.is_empty()).then(|| Text::new("room-chill-ended").with("jobs", Arg::List(ended)))
}
