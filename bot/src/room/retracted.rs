//! "Undo that", "wait no", "no leave it", "it's back on", said to everyone by the one who made the change, was asked, or ended the plan.
//!
//! Owns what ages a question for a bare yes: whatever else the one asked says, and what another asks, since that may be what the next yes
//! is to.

use super::action::Action;
use super::state::{AskedBack, Over};
use super::turn::{Say, To};
use super::{PersonId, RoomKind, Sitting, What, asked_which, board, late, may, undo};
use crate::reading::{self, Retraction};
use crate::words::{Arg, Text};
use chrono::TimeDelta;
use std::collections::BTreeMap;

/// A change is taken back in words within this time.
const UNDONE_WITHIN: TimeDelta = TimeDelta::minutes(10);
/// "Wait no" is of the answer just given.
const AT_ONCE: TimeDelta = TimeDelta::minutes(5);
/// A plan that was ended by mistake comes back within this time.
const BACK_WITHIN: TimeDelta = TimeDelta::hours(1);

/// `false`: the words take nothing back.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(who) = sitting.speaker().filter(|who| !sitting.room.drafts.contains_key(who)) else { return false };
    let Some(said) = reading::read_retraction(text, sitting.lexicon()) else { return false };
    let now = sitting.now;
    let at_once = sitting.room.changed.is_some_and(|it| it.by == who && !it.passed && now - it.at <= AT_ONCE);
    if sitting.room.plan.is_none() {
        let meant = matches!(said, Retraction::PlanOn | Retraction::Undo) || said == Retraction::Never && at_once;
        return meant && back(sitting);
    }
    // That question is asked, and answered, elsewhere.
    if sitting.room.stop_asked.is_some_and(|asked| asked.by == who && !asked.passed) {
        return false;
    }
    // To the bot alone there is a word for each of these further on.
    if addressed || sitting.room.kind != RoomKind::Group || said == Retraction::PlanOn {
        return false;
    }
    if matches!(said, Retraction::Leave | Retraction::Never) && closes(sitting, who) {
        return true;
    }
    let own = |at| now - at <= UNDONE_WITHIN;
    let last = sitting.room.plan.as_ref().and_then(|plan| plan.history.last());
    let own = last.is_some_and(|last| last.by == Some(who) && own(last.at));
    let undoes = own && (said == Retraction::Undo || said == Retraction::Never && at_once);
    if undoes {
        undo::last(sitting);
    }
    undoes
}

/// The question that lies open goes, with its buttons.
fn closes(sitting: &mut Sitting<'_>, who: PersonId) -> bool {
    if asked_which::declined(sitting, who) {
        return true;
    }
    let open = sitting.room.offered.clone().filter(|open| sitting.now - open.at <= UNDONE_WITHIN);
    let Some(open) = open.filter(|_| may::steer(sitting) && sitting.room.others.is_empty()) else { return false };
    let of_dinner = |data: &String| matches!(Action::read(data), Some(Action::Dinner(..) | Action::Shift(..)));
    if !open.choices.iter().any(of_dinner) {
        return false;
    }
    let standing = sitting.room.plan.as_ref().and_then(|plan| Some((plan.serial, plan.wish.dinner?)));
    let Some((serial, dinner)) = standing else { return false };
    sitting.room.offered = None;
    if let Some(wanted) = sitting.room.plan.as_mut().and_then(|plan| plan.wanted.as_mut()) {
        wanted.answered = true;
    }
    late::stay(sitting, serial, late::minute(dinner));
    true
}

// ---- the plan that was ended

/// The plan in hand is over; who had a job in it is told, once.
pub(super) fn keep(sitting: &mut Sitting<'_>, plan: super::state::LivePlan) {
    let (by, at) = (sitting.speaker(), sitting.now);
    let told = concerned(sitting, &plan);
    let text = Text::new("room-stopped-told");
    tell(sitting, &told, &plan, text);
    sitting.room.over = Some(Box::new(Over { plan, by, at, told }));
}

/// Who has a job still to be done, or was called for one in the private chat.
fn concerned(sitting: &Sitting<'_>, plan: &super::state::LivePlan) -> Vec<PersonId> {
    let speaker = sitting.speaker();
    let concerned = |who: &PersonId| {
        let chat = who.private_room();
        let has = plan.waiting().any(|job| job.owner == Some(*who) || job.calls > 0 && job.called_in.contains(&chat));
        has && Some(*who) != speaker && sitting.people.get(who).is_some_and(|person| person.reachable)
    };
    let group = sitting.room.kind == RoomKind::Group;
    sitting.room.members.iter().copied().filter(|who| group && concerned(who)).collect()
}

fn tell(sitting: &mut Sitting<'_>, people: &[PersonId], plan: &super::state::LivePlan, text: Text) {
    let Some(dinner) = plan.wish.dinner else { return };
    let text = text.with("dinner", Arg::DayClock(dinner));
    for who in people {
        sitting.say(Say::new(To::Person(*who), text.clone()));
    }
}

/// The plan that was ended stands again, as it was. `false`: there is none, or it is not for them to say.
pub(super) fn back(sitting: &mut Sitting<'_>) -> bool {
    let (now, who) = (sitting.now, sitting.speaker());
    let by_whom =
        |over: &Over| who.is_some() && (over.by == who || Some(over.plan.host) == who) || may::is_admin(sitting);
    let open = sitting.room.over.as_ref().is_some_and(|over| {
        now - over.at <= BACK_WITHIN && over.plan.wish.dinner.is_some_and(|dinner| dinner > now) && by_whom(over)
    });
    let Some(over) = sitting.room.over.take_if(|_| open && sitting.room.plan.is_none()) else { return false };
    let Over { mut plan, told, .. } = *over;
    let calendar = plan.calendar.as_ref().map(|calendar| calendar.uid.clone());
    sitting.room.ended.retain(|ended| Some(&ended.uid) != calendar.as_ref());
    if let Some(calendar) = plan.calendar.as_mut() {
        // The export in between may have counted one on.
        calendar.sequence += 2;
    }
    plan.edition += 1;
    for job in &mut plan.jobs {
        // What was due meanwhile is due now.
        job.call_at = job.call_at.map(|at| at.max(now));
    }
    let text = Text::new("room-back-again");
    tell(sitting, &told, &plan, text.clone());
    let dinner = plan.wish.dinner.map_or(now, |dinner| dinner);
    sitting.room.plan = Some(plan);
    sitting.answer(text.with("dinner", Arg::DayClock(dinner)));
    board::repost(sitting);
    true
}

// ---- what a bare yes may be to

/// What was said in this turn beside what lies open ages it; a change just made is noted.
pub(super) fn note(sitting: &mut Sitting<'_>) {
    let (before, now) = (&sitting.before.room, sitting.now);
    sitting.room.over.take_if(|over| now - over.at > BACK_WITHIN);
    // Whichever of them is in hand.
    let made = |room: &super::state::Room| -> BTreeMap<u32, u32> {
        room.plans().iter().map(|plan| (plan.serial, plan.changes)).collect()
    };
    let who = sitting.speaker();
    if made(before) != made(&sitting.room) && who.is_some() {
        sitting.room.changed = who.map(|by| AskedBack { by, at: now, passed: false, serial: None });
    }
    let What::Said { text, edited: false, .. } = &sitting.heard.what else { return };
    let Some(who) = who.filter(|_| !text.trim_start().starts_with('/') && !sitting.routed()) else { return };
    let same = |one: &Option<AskedBack>, other: &Option<AskedBack>| one.is_some() && one == other;
    let names: Vec<String> = sitting.room.members.iter().map(|member| sitting.name_of(*member)).collect();
    let asks = reading::puts_a_question(text, &names, sitting.lexicon());
    let steers = may::steer(sitting);
    let before = sitting.before;
    let (stop, changed) = (before.room.stop_asked, before.room.changed);
    let room = &mut sitting.room;
    for (it, was) in [(&mut room.stop_asked, stop), (&mut room.changed, changed)] {
        if same(it, &was)
            && let Some(it) = it.as_mut()
        {
            it.passed |= asks || it.by == who;
        }
    }
    for unsure in &mut room.unsure {
        let stood = before.room.unsure.iter().any(|old| old.number == unsure.number);
        unsure.passed |= stood && (asks || unsure.by == who);
    }
    let wanted = before.room.plan.as_ref().and_then(|plan| plan.wanted);
    if let Some(now) = room.plan.as_mut().and_then(|plan| plan.wanted.as_mut())
        && Some(*now) == wanted
    {
        now.passed |= asks || steers;
    }
    let of_job = |data: &String| matches!(Action::read(data), Some(Action::Take(_)));
    let aged = |open: &super::state::Offered| {
        before.room.offered.as_ref() == Some(open) && !open.choices.iter().all(of_job) && (asks || steers)
    };
    room.offered.take_if(|open| aged(open));
}
