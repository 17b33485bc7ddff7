//! "Put it back in": a bird that was taken off the heat, and not done, goes on cooking.

use super::sitting::button;
use super::state::JobState;
use super::turn::Urgency;
use super::{Sitting, board, undo};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;
use chrono::TimeDelta;

/// It is measured again after this.
const LOOK: TimeDelta = TimeDelta::minutes(15);

/// It is back in the heat, or never came out of it. `false`: nobody had said that it came off, or it is cut up.
pub(super) fn told(sitting: &mut Sitting<'_>) -> bool {
    let (now, by) = (sitting.now, sitting.speaker());
    let settled = |step: Step, plan: &super::state::LivePlan| plan.facts.iter().any(|fact| fact.step == step.name());
    let off = |plan: &&mut super::state::LivePlan| settled(Step::Pull, plan) && !settled(Step::Carve, plan);
    let Some(plan) = sitting.room.plan.as_mut().filter(off) else { return false };
    plan.remember("back-on", Some(Step::Pull), by, now);
    plan.facts.retain(|fact| fact.step != Step::Pull.name());
    (plan.held_hot, plan.was_held, plan.off_asked) = (false, false, None);
    (plan.heated_again, plan.heated_late) = (None, None);
    if let Some(job) = plan.job_mut(Step::Pull, 0) {
        job.state = JobState::Waiting;
        job.calls = 0;
        job.rungs.clear();
        job.reached.clear();
    }
    let undo = undo::newest(plan);
    let solved = sitting.resolve();
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.look(now + LOOK);
        if let Some(job) = plan.job_mut(Step::Pull, 0) {
            job.call_at = Some(job.at.max(now + LOOK));
        }
    }
    let text = Text::new("room-back-on")
        .with("target", Arg::Temperature(super::target()))
        .with("look", Arg::Clock(now + LOOK));
    sitting.answer(text).urgency(Urgency::Safety).row([button("room-button-undo", &undo)]);
    if let Err(conflict) = solved {
        super::jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
    true
}
