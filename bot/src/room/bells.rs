//! Which bells a room needs: worked out afresh from its state, so that none can be forgotten or left over.

use super::state::{JobState, LiveJob, LivePlan, Room};
use super::turn::{Bell, BellKind};
use super::{alarms, at_rest, eve, feedback, no_heat, offering, raw};
use carvetime_core::plan::{Moment, Step};

/// Every bell of the room, in no particular order.
pub(super) fn of(room: &Room, now: Moment) -> Vec<Bell> {
    let Some(plan) = room.plan.as_ref().filter(|_| !room.gone) else { return Vec::new() };
    let calls = plan.jobs.iter().filter(|job| !is_over(plan, job, now)).filter_map(|job| {
        let kind = BellKind::Job { step: job.step.clone(), nth: job.nth, call: job.calls };
        Some(Bell { at: job.call_at?, kind })
    });
    let limits = plan.jobs.iter().filter_map(|job| {
        let name = limit(job)?;
        let open = job.state == JobState::Waiting && !plan.limits_called.contains(&name);
        open.then_some(Bell { at: job.latest, kind: BellKind::Limit { name } })
    });
    let hold = alarms::limit_at(plan).map(|at| Bell { at, kind: BellKind::Limit { name: alarms::HOLD.into() } });
    let notes = feedback::bell(room, plan).into_iter().chain(eve::bell(room, plan, now));
    let notes = notes.chain(at_rest::bell(room, plan));
    let limits = limits.chain(raw::bells(room, plan, now)).chain(no_heat::bells(plan, now));
    calls.chain(limits).chain(hold).chain(offering::bells(room, plan, now)).chain(notes).collect()
}

/// Its limit has been said: what may have stood too long is not called into the fridge any more.
pub(super) fn is_over(plan: &LivePlan, job: &LiveJob, now: Moment) -> bool {
    job.latest <= now && limit(job).is_some_and(|name| plan.limits_called.contains(&name))
}

/// The limit that runs out with a job: food not in the fridge in time.
pub(super) fn limit(job: &LiveJob) -> Option<String> {
    (job.step() == Some(Step::Chill)).then(|| format!("chill-{}", job.nth))
}
