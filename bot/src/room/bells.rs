//! Which bells a room needs: worked out afresh from its state, so that none can be forgotten or left over.

use super::state::Room;
use super::turn::{Bell, BellKind};

/// Every bell of the room, in no particular order.
pub(super) fn of(room: &Room) -> Vec<Bell> {
    let Some(plan) = room.plan.as_ref().filter(|_| !room.gone) else { return Vec::new() };
    plan.jobs
        .iter()
        .filter_map(|job| {
            let kind = BellKind::Job { step: job.step.clone(), nth: job.nth, call: job.calls };
            Some(Bell { at: job.call_at?, kind })
        })
        .collect()
}
