//! "Which bird?": asked of the one who spoke, and answered by a button, a name, "not the goose".
//!
//! What they said waits until then. The same place keeps words that were meant for no one in particular, with what they would change.

use super::action::Action;
use super::heard::Document;
use super::state::Unsure;
use super::turn::{How, Say, To};
use super::{PersonId, Sitting, birds, logs, moves, naming, which};
use crate::reading;
use crate::words::{Arg, Text};
use carvetime_core::plan::Moment;
use chrono::TimeDelta;

/// As much as waits for an answer; the oldest makes room.
const MOST_UNSURE: usize = 8;
/// What was said so long ago is not acted on any more.
const KEPT: TimeDelta = TimeDelta::hours(12);
/// "The big one" answers what was asked within this time; later a button does.
const ASKED_LATELY: TimeDelta = TimeDelta::minutes(10);

pub(super) fn ask(sitting: &mut Sitting<'_>, serials: &[u32], unsure: impl FnOnce(u32, PersonId, Moment) -> Unsure) {
    let Some(who) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    let now = sitting.now;
    let mut quoted = String::new();
    let number = keep(sitting, |number| {
        let unsure = unsure(number, who, now);
        quoted = moves::clip(unsure.log.as_deref().unwrap_or(&unsure.text));
        unsure
    });
    let buttons: Vec<_> = sitting
        .room
        .plans()
        .iter()
        .filter(|plan| serials.contains(&plan.serial))
        .filter_map(|plan| {
            let label = birds::label(sitting, plan)?;
            Some(super::sitting::labelled(label, &Action::Bird(who, number, plan.serial)))
        })
        .collect();
    let say = sitting.answer(Text::new("birds-which").with("text", Arg::Verbatim(quoted))).key(key(number));
    for button in buttons {
        say.row([button]);
    }
}

/// What someone said that would change the plan, which `who` is to say: heard as told to the bot once they agree.
pub(super) fn offer_to(sitting: &mut Sitting<'_>, who: PersonId, text: &str, change: Text) {
    let Some(serial) = sitting.room.plan.as_ref().map(|plan| plan.serial) else { return };
    let (text, at) = (text.to_owned(), sitting.now);
    let number = keep(sitting, |number| Unsure {
        number,
        by: who,
        at,
        text,
        log: None,
        addressed: true,
        edited: false,
        passed: false,
    });
    let yes = super::sitting::button("room-button-amend", &Action::Bird(who, number, serial));
    sitting.answer(change).key(key(number)).row([yes]);
}

/// "Yes", typed by whom a change was just offered to, instead of the button. `false`: none was.
pub(super) fn agreed(sitting: &mut Sitting<'_>, text: &str, addressed: bool, reply_to: Option<&str>) -> bool {
    // Beside another bird what lies open may be which of them was meant.
    let serial = sitting.room.plan.as_ref().filter(|_| sitting.room.others.is_empty()).map(|plan| plan.serial);
    let (Some(who), Some(serial)) = (sitting.speaker(), serial) else { return false };
    if sitting.room.drafts.contains_key(&who) || reading::read_willing(text, sitting.lexicon()).is_none() {
        return false;
    }
    let Some(number) = offered(sitting, who, addressed, reply_to) else { return false };
    told(sitting, number, serial);
    true
}

/// What was offered to that person, as far as a bare yes or no is to it: the next they say, or a reply to it.
fn offered(sitting: &Sitting<'_>, who: PersonId, addressed: bool, reply_to: Option<&str>) -> Option<u32> {
    const LATELY: TimeDelta = TimeDelta::minutes(5);
    let now = sitting.now;
    let open = |unsure: &&Unsure| {
        let fresh = !addressed && !unsure.passed && now - unsure.at <= LATELY;
        unsure.by == who && unsure.log.is_none() && (fresh || reply_to == Some(key(unsure.number).as_str()))
    };
    sitting.room.unsure.iter().rev().find(open).map(|unsure| unsure.number)
}

/// "No, leave it", of the one a change was just offered to: it goes. `false`: none was.
pub(super) fn declined(sitting: &mut Sitting<'_>, who: PersonId) -> bool {
    let Some(number) = offered(sitting, who, false, None) else { return false };
    sitting.room.unsure.retain(|unsure| unsure.number != number);
    sitting.answer(Text::new("room-kept-going")).key(key(number)).how(How::Edit);
    true
}

/// Keeps what waits for an answer; its number.
fn keep(sitting: &mut Sitting<'_>, unsure: impl FnOnce(u32) -> Unsure) -> u32 {
    sitting.room.unsure_made = sitting.room.unsure_made.wrapping_add(1);
    let number = sitting.room.unsure_made;
    let now = sitting.now;
    let waiting = &mut sitting.room.unsure;
    waiting.retain(|old| now - old.at <= KEPT);
    if waiting.len() >= MOST_UNSURE {
        waiting.remove(0);
    }
    waiting.push(unsure(number));
    number
}

fn key(number: u32) -> String {
    format!("which-{number}")
}

/// "The duck", from one who was asked which: the question, and the plan.
pub(super) fn answers(sitting: &Sitting<'_>, text: &str) -> Option<(u32, u32)> {
    let asked = asked_lately(sitting)?;
    Some((asked.number, naming::answer(sitting, text)?))
}

/// "Both", from one who was asked which.
pub(super) fn answers_both(sitting: &Sitting<'_>, text: &str) -> Option<Unsure> {
    let words = sitting.lexicon().talk_words(text).join(" ");
    let asked = asked_lately(sitting).filter(|asked| asked.log.is_none())?;
    sitting.lexicon().talk(&words, "both").then(|| asked.clone())
}

/// What the speaker was asked a moment ago.
fn asked_lately<'a>(sitting: &'a Sitting<'_>) -> Option<&'a Unsure> {
    let speaker = sitting.speaker();
    let lately = |unsure: &&Unsure| Some(unsure.by) == speaker && sitting.now - unsure.at <= ASKED_LATELY;
    sitting.room.unsure.iter().rev().find(lately)
}

impl Unsure {
    /// Whether it is what a thermometer reads.
    pub(super) fn reads(&self, sitting: &Sitting<'_>) -> bool {
        self.log.is_some() || reading::read_log(&self.text, &sitting.ground()).is_ok_and(|log| log.is_some())
    }
}

/// Told which: what was said is heard now, as of when it was said.
pub(super) fn told(sitting: &mut Sitting<'_>, number: u32, serial: u32) {
    let now = sitting.now;
    let place = sitting.room.unsure.iter().position(|unsure| unsure.number == number && now - unsure.at <= KEPT);
    let Some(place) = place.filter(|_| which::has(sitting, serial)) else {
        return sitting.notice(Text::new("birds-which-gone"));
    };
    let unsure = sitting.room.unsure.remove(place);
    let room = To::Room(sitting.room.id);
    sitting.say(Say::of(room, Vec::new())).key(key(number)).how(How::Close);
    which::about(sitting, serial);
    sitting.now = unsure.at;
    match unsure.log {
        Some(name) => logs::sent(sitting, &name, &Document::Text(unsure.text)),
        None => super::said(sitting, &unsure.text, unsure.addressed, None, unsure.edited),
    }
    sitting.now = now;
}
