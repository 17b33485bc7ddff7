//! Who may do what.
//!
//! Anyone in the room may log readings, take a free job, mark a job done. The host and the chat's administrators may move
//! dinner, end the plan, hand back others' jobs. Nobody outside the room sees or changes anything.

use super::{PersonId, RoomKind, Sitting};
use crate::words::Text;

/// Whether the speaker may change the plan as a whole.
pub(super) fn steer(sitting: &Sitting<'_>) -> bool {
    if sitting.room.kind == RoomKind::Private {
        return true;
    }
    let Some(speaker) = &sitting.heard.by else { return sitting.heard.for_group };
    let host = sitting.room.plan.as_ref().is_none_or(|plan| plan.host == speaker.id);
    host || speaker.admin
}

/// Whether the speaker may change everything planned here.
pub(super) fn steer_all(sitting: &Sitting<'_>) -> bool {
    let hosts_all = || sitting.room.plans().iter().all(|plan| Some(plan.host) == sitting.speaker());
    steer(sitting) && (sitting.room.kind == RoomKind::Private || is_admin(sitting) || hosts_all())
}

/// Whether the speaker administers the chat.
pub(super) fn is_admin(sitting: &Sitting<'_>) -> bool {
    sitting.heard.by.as_ref().map_or(sitting.heard.for_group, |speaker| speaker.admin)
}

/// Whether the speaker belongs to the room. A press that comes from another chat proves nothing by itself, nor does one here by
/// somebody who has left or, where the group is public, was never in it.
pub(super) fn belongs(sitting: &Sitting<'_>) -> bool {
    let outside = sitting.heard.by.as_ref().is_some_and(|by| by.inside == Some(false));
    let gone = outside || sitting.speaker().is_some_and(|who| sitting.room.left.contains(&who));
    !gone && !sitting.routed() || sitting.speaker().is_some_and(|who| sitting.room.members.contains(&who))
}

/// Whether the draft is the speaker's own.
pub(super) fn owns_draft(sitting: &Sitting<'_>, who: PersonId) -> bool {
    sitting.speaker() == Some(who)
}

/// Says no, to the one who asked only.
pub(super) fn refuse(sitting: &mut Sitting<'_>) {
    let host = sitting.room.plan.as_ref().map(|plan| plan.host);
    let text = match host {
        Some(host) => Text::new("room-may-host").with("name", super::sitting::name(sitting, host)),
        None => Text::new("room-may-not"),
    };
    sitting.notice(text);
}
