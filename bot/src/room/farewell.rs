//! `/stop` and `/forget`: both ask first.

use super::action::Action;
use super::heard::PersonId;
use super::sitting::button;
use super::state::{AskedBack, Person};
use super::turn::{Forget, How};
use super::{RoomKind, Sitting, birds, from_afar, may, retracted};
use crate::reading;
use crate::words::{Arg, Text};
use chrono::TimeDelta;

/// A bare yes is one to the question within this time.
const LATELY: TimeDelta = TimeDelta::minutes(5);

/// `/stop`.
pub(super) fn stop(sitting: &mut Sitting<'_>) {
    let Some(plan) = &sitting.room.plan else {
        sitting.answer(Text::new("room-no-plan"));
        return;
    };
    let dinner = plan.wish.dinner;
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let mut text = Text::new("room-stop-sure");
    if let Some(dinner) = dinner {
        text = text.with("dinner", Arg::DayClock(dinner));
    }
    ask(sitting, "stop", text);
    let (at, serial) = (sitting.now, sitting.room.plan.as_ref().map(|plan| plan.serial));
    sitting.room.stop_asked = sitting.speaker().map(|by| AskedBack { by, at, passed: false, serial });
}

/// "Cancel the plan", "dinner's off": asked first, like `/stop`; and the yes or no to that, typed. `false`: the words are neither.
///
/// A bare yes is one to it as the next they say, with nothing asked by others in between, or in reply to it: the plan hangs on it.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, reply_to: Option<&str>) -> bool {
    const REPLIED: TimeDelta = TimeDelta::hours(1);
    let Some(who) = sitting.speaker().filter(|_| sitting.room.plan.is_some()) else { return false };
    let lexicon = sitting.lexicon();
    let replied = reply_to == Some("stop");
    let open = |asked: &AskedBack| {
        let fresh = !asked.passed && sitting.now - asked.at <= LATELY;
        asked.by == who && (fresh || replied && sitting.now - asked.at <= REPLIED)
    };
    if sitting.room.stop_asked.as_ref().is_some_and(open) {
        let yes = reading::read_willing(text, lexicon).is_some();
        if yes || reading::is_unwilling(text, lexicon) {
            sitting.room.stop_asked = None;
            if yes {
                self::yes(sitting, "stop", who)
            } else {
                no(sitting, "stop", who)
            }
            return true;
        }
    }
    let cancels = reading::cancels(text, lexicon) && may::steer(sitting);
    if cancels {
        stop(sitting);
    }
    cancels
}

/// The plan that the speaker was just asked about, where the words are the yes or no to that.
pub(super) fn is_answer(sitting: &Sitting<'_>, text: &str) -> Option<u32> {
    let open =
        |asked: &&AskedBack| Some(asked.by) == sitting.speaker() && !asked.passed && sitting.now - asked.at <= LATELY;
    let asked = sitting.room.stop_asked.as_ref().filter(open)?;
    let answers =
        reading::read_willing(text, sitting.lexicon()).is_some() || reading::is_unwilling(text, sitting.lexicon());
    let stands = |serial: &u32| sitting.room.plans().iter().any(|plan| plan.serial == *serial);
    asked.serial.filter(|serial| answers && stands(serial))
}

/// `/forget`.
pub(super) fn forget(sitting: &mut Sitting<'_>) {
    if sitting.room.kind == RoomKind::Group && !may::steer_all(sitting) {
        return may::refuse(sitting);
    }
    let (id, things) = match sitting.room.kind {
        RoomKind::Private => ("room-forget-sure-me", own_things(sitting)),
        RoomKind::Group => ("room-forget-sure-group", group_things(sitting)),
    };
    let things = things.into_iter().map(|thing| Text::named("room-kept", thing)).collect();
    ask(sitting, "forget", Text::new(id).with("things", Arg::List(things)));
}

/// What is kept of the one who asks. A private room knows no group: what may stand there is named in any case.
fn own_things(sitting: &Sitting<'_>) -> Vec<&'static str> {
    let room = &sitting.room;
    let me = sitting.speaker().and_then(|who| sitting.people.get(&who));
    let has = |of: fn(&Person) -> bool| me.is_some_and(of);
    let things = [
        (true, "name"),
        (true, "settings"),
        (has(|me| me.own_salt.is_some()), "salt"),
        (has(|me| me.cooker.is_some()), "cooker"),
        (has(|me| me.fridge_c.is_some() || me.fridge_shelves.is_some()), "fridge"),
        (has(|me| !me.profiles.is_empty()), "learned"),
        (has(|me| !me.notes.is_empty()), "notes"),
        (room.plan.is_some() || !room.drafts.is_empty(), "plan"),
        (!room.questions.is_empty() || !room.unsure.is_empty(), "question"),
        (true, "groups"),
    ];
    things.into_iter().filter(|(kept, _)| *kept).map(|(_, thing)| thing).collect()
}

/// What is kept of a group.
fn group_things(sitting: &Sitting<'_>) -> Vec<&'static str> {
    let room = &sitting.room;
    let read = room.plans().iter().any(|plan| !plan.readings.is_empty());
    let things = [
        (true, "title"),
        (true, "members"),
        (room.plan.is_some(), "jobs"),
        (read, "readings"),
        (!room.drafts.is_empty() || !room.questions.is_empty() || !room.unsure.is_empty(), "said"),
        (!room.invites.is_empty(), "links"),
    ];
    things.into_iter().filter(|(kept, _)| *kept).map(|(_, thing)| thing).collect()
}

fn ask(sitting: &mut Sitting<'_>, what: &str, text: Text) {
    let Some(who) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    let say = sitting.answer(text).key(what);
    say.row([
        button("room-button-yes", &Action::Yes(what.into(), who)),
        button("room-button-no", &Action::No(what.into(), who)),
    ]);
}

/// `Yes`, by the one who was asked.
pub(super) fn yes(sitting: &mut Sitting<'_>, what: &str, who: PersonId) {
    if sitting.speaker() != Some(who) {
        return sitting.notice(Text::new("room-not-yours"));
    }
    match what {
        "stop" if may::steer(sitting) => {
            let Some(plan) = sitting.room.end_plan(sitting.now) else {
                return sitting.notice(Text::new("room-stale"));
            };
            sitting.room.stop_asked = None;
            let mut text = vec![Text::new("room-stopped")];
            text.extend(plan.calendar.as_ref().map(|_| Text::new("room-stopped-calendar")));
            text.push(Text::new("room-stopped-back"));
            sitting.answer_all(text).key("stop").how(How::Edit);
            retracted::keep(sitting, plan);
            birds::refresh_others(sitting);
        }
        "forget" if sitting.room.kind == RoomKind::Private || may::steer_all(sitting) => {
            sitting.forget = Some(match sitting.room.kind {
                RoomKind::Private => Forget::Person(who),
                RoomKind::Group => Forget::Room(sitting.room.id),
            });
            // Nobody's private answers lead here any more.
            let here = sitting.room.id;
            if sitting.room.kind == RoomKind::Group {
                for member in sitting.room.members.clone() {
                    from_afar::forget(sitting, member, here);
                }
            }
            sitting.answer(Text::new("room-forgotten")).key("forget").how(How::Edit);
        }
        _ => may::refuse(sitting),
    }
}

/// `No`.
pub(super) fn no(sitting: &mut Sitting<'_>, what: &str, who: PersonId) {
    if sitting.speaker() != Some(who) {
        return sitting.notice(Text::new("room-not-yours"));
    }
    if matches!(what, "stop" | "forget" | super::undo::KEY) {
        sitting.answer(Text::new("room-kept-going")).key(what).how(How::Edit);
    }
}
