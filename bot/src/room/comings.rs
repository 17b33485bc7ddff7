//! Who comes and goes, the bot included, and a group that becomes another.

use super::heard::{PersonId, RoomId, RoomKind};
use super::turn::{How, Urgency};
use super::{Sitting, birds, board, from_afar, help, plan_words, stepping_down};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;

/// The bot was added, or may speak again. What stands goes on; what fell due meanwhile is said by its bells, in one line.
///
/// One who lets it speak to them again is not greeted for that: the button that unblocks a bot sends `/start` behind it, which is.
pub(super) fn welcomed(sitting: &mut Sitting<'_>) {
    sitting.room.gone = false;
    let private = sitting.room.kind == RoomKind::Private;
    if private {
        let who = PersonId(sitting.room.id.0);
        sitting.change_person(who, |person| person.reachable = true);
    }
    if sitting.room.plan.is_some() {
        birds::each(sitting, board::repost);
    } else if !private {
        help::start(sitting, How::New);
    }
}

/// The bot can't speak here any more: nothing rings until it is let in again; the plan is kept.
pub(super) fn removed(sitting: &mut Sitting<'_>) {
    sitting.room.gone = true;
    if sitting.room.kind == RoomKind::Private {
        let who = PersonId(sitting.room.id.0);
        sitting.change_person(who, |person| person.reachable = false);
    }
}

/// Someone has left: they have no say and no jobs here any more. Their jobs are offered, in one line.
pub(super) fn left(sitting: &mut Sitting<'_>, who: PersonId) {
    let name = super::sitting::name(sitting, who);
    sitting.room.dismiss(who);
    sitting.room.drafts.remove(&who);
    sitting.room.questions.remove(&who);
    // Links still open may be in their hands: they go as well, new ones are given with the next job.
    sitting.room.invites.retain(|invite| invite.used.is_some_and(|by| by != who));
    let here = sitting.room.id;
    from_afar::forget(sitting, who, here);
    birds::each(sitting, |sitting| leave(sitting, who, &name));
}

fn leave(sitting: &mut Sitting<'_>, who: PersonId, name: &Arg) {
    let (heir, now) = (sitting.room.members.first().copied(), sitting.now);
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let heir = heir.filter(|_| plan.host == who);
    plan.host = heir.unwrap_or(plan.host);
    for job in &mut plan.jobs {
        job.asked.take_if(|asked| asked.by == who || asked.of == who);
    }
    let mut free: Vec<Step> = Vec::new();
    for it in stepping_down::release(plan, now, who, |job| job.owner == Some(who)) {
        if !free.contains(&it.step) {
            free.push(it.step);
        }
    }
    if let Some(heir) = heir {
        let text = Text::new("sharing-left-host").with("name", name.clone());
        let text = text.with("heir", super::sitting::name(sitting, heir));
        sitting.answer(text).urgency(Urgency::Due);
    }
    if free.is_empty() {
        return;
    }
    let jobs = free.into_iter().map(|step| plan_words::step_name(step, 0)).collect();
    let text = Text::new("room-left").with("name", name.clone()).with("jobs", Arg::List(jobs));
    sitting.answer(text).urgency(Urgency::Due);
    board::refresh(sitting);
}

/// The board can't be pinned: said once in a room's life, and never a reproach.
pub(super) fn not_pinned(sitting: &mut Sitting<'_>) {
    if std::mem::replace(&mut sitting.room.pin_told, true) || sitting.room.kind == RoomKind::Private {
        return;
    }
    sitting.answer(Text::new("room-pin-how")).how(How::Quiet).urgency(Urgency::Board);
}

/// The group has become another: everything goes there, and the messages of the old one can't be changed any more, so a
/// new board stands in the new one.
pub(super) fn migrated(sitting: &mut Sitting<'_>, to: RoomId) {
    sitting.room.rename(to);
    sitting.moved = Some(to);
    birds::each(sitting, board::repost);
}
