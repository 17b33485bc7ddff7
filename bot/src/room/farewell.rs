//! `/stop` and `/forget`: both ask first.

use super::action::Action;
use super::heard::PersonId;
use super::sitting::button;
use super::turn::{Forget, How};
use super::{RoomKind, Sitting, birds, may};
use crate::words::{Arg, Text};

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
}

/// `/forget`.
pub(super) fn forget(sitting: &mut Sitting<'_>) {
    if sitting.room.kind == RoomKind::Group && !may::steer_all(sitting) {
        return may::refuse(sitting);
    }
    let id = match sitting.room.kind {
        RoomKind::Private => "room-forget-sure-me",
        RoomKind::Group => "room-forget-sure-group",
    };
    ask(sitting, "forget", Text::new(id));
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
            if sitting.room.plan.take().is_none() {
                return sitting.notice(Text::new("room-stale"));
            }
            sitting.answer(Text::new("room-stopped")).key("stop").how(How::Edit);
            birds::refresh_others(sitting);
        }
        "forget" if sitting.room.kind == RoomKind::Private || may::steer_all(sitting) => {
            sitting.forget = Some(match sitting.room.kind {
                RoomKind::Private => Forget::Person(who),
                RoomKind::Group => Forget::Room(sitting.room.id),
            });
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
