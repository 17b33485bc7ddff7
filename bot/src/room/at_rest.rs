//! After the leftovers' last day nothing is left to do: the board is at rest, and their call has no buttons any more.
//!
//! Nobody has said that they were eaten or frozen, and it is not taken for said: the job stays as it is, and is not offered.

use super::state::{JobState, LivePlan, Room};
use super::turn::{Bell, BellKind, How, Say, To};
use super::{PersonId, Sitting, board, calls};
use crate::words::{Arg, Text};
use carvetime_core::plan::clock::{at_hour, date};
use carvetime_core::plan::{Moment, Step};
use chrono::Days;
use chrono_tz::Tz;

/// The bell's name.
const BELL: &str = "at-rest";

/// The bell, if leftovers are still to be eaten.
pub(super) fn bell(room: &Room, plan: &LivePlan) -> Option<Bell> {
    let at = from(plan, room.taste.zone()?)?;
    let open = !plan.limits_called.iter().any(|name| name == BELL);
    open.then(|| Bell { at, kind: BellKind::Note { name: BELL.into() } })
}

/// "Eat or freeze them today" holds for all of that day, and no longer than they keep.
fn from(plan: &LivePlan, zone: Tz) -> Option<Moment> {
    let job = plan.job(Step::Leftovers, 0).filter(|job| job.state == JobState::Waiting)?;
    let midnight = at_hour(zone, date(zone, job.at).checked_add_days(Days::new(1))?, 0, 0);
    Some(midnight.min(job.latest.max(job.at)))
}

/// Whether that day is over: whatever nobody said of the bird before, it is eaten or gone.
pub(super) fn is(plan: &LivePlan, zone: Tz, now: Moment) -> bool {
    from(plan, zone).is_some_and(|from| from <= now)
}

/// The bell rang.
pub(super) fn rang(sitting: &mut Sitting<'_>, kind: &BellKind) {
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    if !matches!(kind, BellKind::Note { name } if name == BELL) {
        return;
    }
    let due = |plan: &&mut LivePlan| from(plan, zone).is_some_and(|at| at <= now);
    let Some(plan) = sitting.room.plan.as_mut().filter(due) else { return };
    if plan.limits_called.iter().any(|name| name == BELL) {
        return;
    }
    plan.limits_called.push(BELL.into());
    let Some(job) = plan.job_mut(Step::Leftovers, 0) else { return };
    job.call_at = None;
    let (chats, last) = (job.called_in.clone(), job.at);
    for chat in chats {
        let to = if chat == sitting.room.id { To::Room(chat) } else { To::Person(PersonId(chat.0)) };
        let text = Text::new("room-leftovers-over").with("when", Arg::DayClock(last));
        sitting.say(Say::new(to, text)).key(calls::key(Step::Leftovers, 0)).how(How::Edit);
    }
    board::refresh(sitting);
}
