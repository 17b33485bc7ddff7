//! `/start`, `/help`, and the one line for what could not be read.

use super::action::Action;
use super::sitting::button;
use super::turn::How;
use super::{RoomKind, Sitting, board};
use crate::reading;
use crate::words::{Arg, Text};

/// `/start`: what this is, and the three things people come for.
pub(super) fn start(sitting: &mut Sitting<'_>, how: How) {
    let id = match sitting.room.kind {
        RoomKind::Private => "room-start",
        RoomKind::Group => "room-start-group",
    };
    entrance(sitting, id, how);
}

/// "How does this work?".
pub(super) fn how(sitting: &mut Sitting<'_>) {
    entrance(sitting, "room-how", How::New);
}

fn entrance(sitting: &mut Sitting<'_>, id: &'static str, how: How) {
    let page = |label: &'static str, page: &str| button(label, &Action::Help(page.to_owned()));
    let say = sitting.answer(Text::new(id)).key("start").how(how);
    say.row([page("room-start-button-plan", "plan")])
        .row([page("room-start-button-salt", "salt"), page("room-start-button-safe", "safe")]);
}

/// `/help`.
pub(super) fn help(sitting: &mut Sitting<'_>) {
    sitting.answer(Text::new("room-help"));
}

/// A page behind one of the buttons of `/start`.
pub(super) fn page(sitting: &mut Sitting<'_>, page: &str) {
    let id = match page {
        "plan" => "room-help-plan",
        "salt" => "room-help-salt",
        "safe" => "room-help-safe",
        _ => return start(sitting, How::Edit),
    };
    let say = sitting.answer(Text::new(id)).key("start").how(How::Edit);
    say.row([button("room-button-back", &Action::Help("start".into()))]);
}

/// A greeting.
pub(super) fn hello(sitting: &mut Sitting<'_>) {
    if sitting.room.plan.is_some() {
        board::repost(sitting);
    } else {
        sitting.answer(Text::new("room-hello"));
    }
}

/// "Lol", a thumb up, "no" where nothing was asked: at most a word. `false`: it is no small talk.
pub(super) fn small_talk(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    // Where a question lies open a picture is an answer that can't be read.
    let asked = sitting.speaker().is_some_and(|who| sitting.room.drafts.contains_key(&who));
    if reading::is_wordless(text) && !asked || reading::is_laughter(text, lexicon) {
        return true;
    }
    if !asked && reading::is_chatter(text, lexicon) && !reading::is_plain_no(text, lexicon) {
        return true;
    }
    if reading::says_put_back(text, lexicon) {
        sitting.answer(Text::new("room-ok"));
        return true;
    }
    let no = reading::is_plain_no(text, lexicon);
    if no {
        sitting.answer(Text::new("room-fine"));
    }
    no
}

/// What is said of words that mean nothing here.
pub(super) const UNREAD: &str = "room-unread";

/// Words that mean nothing here: what could be said instead, at this stage.
pub(super) fn unread(sitting: &mut Sitting<'_>) {
    let text = Text::new(UNREAD).with("stage", Arg::Choice(stage(sitting)));
    sitting.answer(text);
}

/// How far the speaker's dinner is.
fn stage(sitting: &Sitting<'_>) -> &'static str {
    if sitting.speaker().is_some_and(|who| sitting.room.drafts.contains_key(&who)) {
        return "draft";
    }
    match &sitting.room.plan {
        None => "none",
        Some(plan) if plan.is_off() || plan.wish.dinner.is_some_and(|dinner| dinner <= sitting.now) => "after",
        Some(plan) if plan.on_since(sitting.now).is_some() => "cooking",
        // Alone there is nobody to share the jobs with.
        Some(_) if sitting.room.kind == RoomKind::Private => "alone",
        Some(_) => "ahead",
    }
}
