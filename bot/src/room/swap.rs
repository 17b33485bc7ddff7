//! "It's a fresh 13 lb one": the bird in the house, or the one that is bought, is another than was planned with.
//!
//! What was only taken for done of the other one, nobody having said so, is open again. Says nothing by itself.

use super::action::JobRef;
use super::state::{JobState, LiveJob, LivePlan};
use crate::reading::Wish;
use crate::words::{Arg, Text};
use carvetime_core::bird::Condition;
use carvetime_core::plan::{Moment, Step};

/// Whether what is told is of another bird: fresh where a frozen one was planned, or the other way round, before it is on.
pub(super) fn is_swapped(plan: &LivePlan, wish: &Wish) -> bool {
    let raw = plan.job(Step::On, 0).is_some_and(|job| job.state == JobState::Waiting);
    raw && wish.condition.is_some() && plan.wish.condition.is_some() && wish.condition != plan.wish.condition
}

/// Bought and thawing were of the other bird, and only taken for done.
pub(super) fn unassume(plan: &mut LivePlan, now: Moment) {
    let taken: Vec<(Step, u8)> = plan.assumed(now).filter_map(|job| Some((job.step()?, job.nth))).collect();
    for (step, nth) in taken.into_iter().filter(|(step, _)| matches!(step, Step::Buy | Step::Thaw | Step::Salt)) {
        if let Some(job) = plan.job_mut(step, nth) {
            uncall(job);
        }
    }
}

/// As if nobody had been called for it.
pub(super) fn uncall(job: &mut LiveJob) {
    job.calls = 0;
    job.call_at = None;
    (job.rungs, job.reached, job.called_in) = Default::default();
}

/// For how long a fresh one keeps, and by that when it is bought, where nobody has said that it is in the house.
pub(super) fn keeps(plan: &LivePlan) -> Option<(Text, JobRef)> {
    let fresh = plan.wish.condition.as_deref() == Some(Condition::Fresh.name()) && plan.wish.use_by.is_none();
    let buy = plan.job(Step::Buy, 0).filter(|job| fresh && job.state == JobState::Waiting)?;
    let text = Text::new("room-swap-keeps").with("when", Arg::DayClock(buy.at));
    Some((text, JobRef { serial: plan.serial, step: Step::Buy, nth: buy.nth }))
}
