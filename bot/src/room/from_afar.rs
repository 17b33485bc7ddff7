//! Words in somebody's private chat that answer what a group asked them there: what a thermometer reads, or a reply to a call.
//!
//! A call that came privately is answered privately, and heard where it was made. What it is answered with goes back to the
//! one who answered; what it changes, and what can't wait, is seen in the group.

use super::birds::unmarked;
use super::heard::{PersonId, RoomId, RoomKind, What};
use super::sitting::Sitting;
use super::state::{LivePlan, Person, Room};
use super::turn::{How, To, Urgency};
use crate::reading::command::{Address, read_command};
use crate::reading::{self, Ground, Lexicon, read_log};
use carvetime_core::plan::{Moment, Step};

/// Whether `what`, said privately by `person`, answers a call that `room` made there.
pub fn is_answered(room: &Room, person: &Person, what: &What, now: Moment) -> bool {
    let What::Said { text, reply_to, .. } = what else { return false };
    if room.kind != RoomKind::Group || room.gone || !room.members.contains(&person.id) {
        return false;
    }
    let chat = person.id.private_room();
    let called = reply_to.as_deref().and_then(|key| unmarked(key).0.strip_prefix("job-"));
    let plans = room.plans();
    if let Some(called) = called {
        return plans.iter().any(|plan| was_called(plan, chat, |step, nth| format!("{step}-{nth}") == called));
    }
    let asked = |plan: &&LivePlan| {
        plan.waiting().any(|job| {
            let called = job.calls > 0 && job.called_in.contains(&chat);
            called || job.asked.is_some_and(|asked| asked.of == person.id)
        })
    };
    if plans.iter().any(asked) && is_answer(room, person, text) {
        return true;
    }
    let look = |plan: &&&LivePlan| !plan.is_off() && was_called(plan, chat, |step, _| step == Step::Check.name());
    plans.iter().any(|plan| look(&plan)) && is_reading(room, person, text, now)
}

fn was_called(plan: &LivePlan, chat: RoomId, is: impl Fn(&str, u8) -> bool) -> bool {
    plan.jobs.iter().any(|job| is(&job.step, job.nth) && job.called_in.contains(&chat))
}

/// "On it", "I can't", "no, sorry", "done".
fn is_answer(room: &Room, person: &Person, text: &str) -> bool {
    let taste = person.taste.or(&room.taste);
    let lexicon = Lexicon::of(taste.language.as_deref().unwrap_or("en"));
    let will = reading::read_willing(text, lexicon).is_some() || reading::is_unwilling(text, lexicon);
    will || reading::read_report(text, lexicon).is_some()
}

/// Numbers with the place they were read at, or after `/log`.
fn is_reading(room: &Room, person: &Person, text: &str, now: Moment) -> bool {
    let reader = person.reader(room, now);
    let metric = reader.units == crate::words::UnitSystem::Metric;
    let ground = Ground::new(&reader.locale, metric, reader.zone, now);
    let (text, ordered) = match read_command(text, None) {
        Address::Command(command) => (command.rest, command.name.eq_ignore_ascii_case("log")),
        Address::Plain(text) => (text, false),
        Address::Other => return false,
    };
    let commanded = ordered || !text.trim_start().starts_with('/');
    let log = read_log(text, &ground).ok().flatten().filter(|_| commanded);
    log.is_some_and(|log| ordered || log.readings.iter().any(|reading| reading.place.is_some()))
}

impl Sitting<'_> {
    /// Answers to what was said from afar go to the one who said it; the board and what can't wait stay in the group.
    pub(super) fn answer_privately(&mut self, who: PersonId) {
        let here = To::Room(self.room.id);
        for say in &mut self.says {
            if say.to == here && say.how == How::New && say.urgency == Urgency::Answer && !say.pin {
                say.to = To::Person(who);
            }
        }
    }
}
