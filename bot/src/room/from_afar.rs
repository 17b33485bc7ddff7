//! Words in somebody's private chat that concern a group's plan: a reply to a call made there, what a thermometer reads, the hour of
//! dinner asked for, a job taken or handed back.
//!
//! A call that came privately is answered privately, and heard where it was made. What it is answered with goes back to the
//! one who answered; what it changes, and what can't wait, is seen in the group.

use super::birds::{self, unmarked};
use super::heard::{PersonId, RoomId, RoomKind, What};
use super::sitting::Sitting;
use super::state::{JobState, LivePlan, Person, Room};
use super::turn::{How, To, Turn, Urgency};
use super::{calls, help, hot_road, order, stepping_down, stood_out};
use crate::ask::{self, Asker, Question};
use crate::reading::command::{Address, read_command};
use crate::reading::sentence::Sentence;
use crate::reading::{self, Ground, Lexicon, fold, read_log};
use carvetime_core::plan::{Moment, Step};

/// Whether `what`, said privately by `person`, answers a call that `room` made there, or is of its plan.
pub fn is_answered(room: &Room, person: &Person, what: &What, now: Moment) -> bool {
    /// On the day of the dinner a thermometer is in its bird.
    const SOON: chrono::TimeDelta = chrono::TimeDelta::hours(10);
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
    if plans.iter().any(|plan| !birds::is_past(plan, now)) && concerns(room, person, text) {
        return true;
    }
    if plans.iter().any(|plan| plan.host == person.id && !birds::is_past(plan, now)) && changes(room, person, text, now)
    {
        return true;
    }
    let judged = |plan: &&LivePlan| plan.feedback.is_some() && plan.host == person.id;
    if plans.iter().any(judged) && is_verdict(room, person, text) {
        return true;
    }
    let cooks = |plan: &&LivePlan| !plan.is_off() && plan.on_since(now).is_some();
    if plans.iter().any(cooks) && is_of_the_heat(room, person, text, now) {
        return true;
    }
    if plans.iter().any(|plan| stood_out::stands(plan) && !birds::is_past(plan, now))
        && is_of_hours_out(room, person, text, now)
    {
        return true;
    }
    let look = |plan: &&&LivePlan| !plan.is_off() && was_called(plan, chat, |step, _| step == Step::Check.name());
    let ahead = |plan: &&LivePlan| !birds::is_past(plan, now);
    // Whoever measures has it over the heat, though nobody has said so yet.
    let soon = |plan: &&LivePlan| {
        !plan.is_off() && plan.wish.dinner.is_some_and(|dinner| dinner > now && dinner - now <= SOON)
    };
    // Kept hot, or carried so, it is measured off the heat as well.
    let kept = |plan: &&LivePlan| {
        let whole = plan.job(Step::Carve, 0).is_some_and(|job| job.state == JobState::Waiting);
        plan.is_off() && whole && (plan.held_hot || hot_road::is_hot(plan)) && !birds::is_past(plan, now)
    };
    let reads = plans.iter().any(|plan| look(&plan)) || plans.iter().any(|plan| soon(plan) || kept(plan));
    reads && is_reading(room, person, text, now) || plans.iter().any(ahead) && is_of_the_bird(room, person, text, now)
}

/// Whether `what`, said privately by one who plans a bird of their own there, is of the group's: its owner is named, or its kind and none
/// of theirs is that; or it is a reading, theirs in the group is over the heat, and none in private is. `people`: the owners.
pub fn is_of_a_groups_bird(
    room: &Room,
    own: &Room,
    people: &[Person],
    person: &Person,
    what: &What,
    now: Moment,
) -> bool {
    let What::Said { text, reply_to: None, .. } = what else { return false };
    if room.kind != RoomKind::Group || room.gone || !room.members.contains(&person.id) {
        return false;
    }
    let theirs: Vec<&LivePlan> = room.plans().into_iter().filter(|plan| !birds::is_past(plan, now)).collect();
    let lexicon = person.reader(room, now).locale.as_str().to_owned();
    let lexicon = Lexicon::of(&lexicon);
    let says = reading::cancels(text, lexicon)
        || is_of_the_heat(room, person, text, now)
        || is_of_the_bird(room, person, text, now)
        || concerns(room, person, text);
    if theirs.is_empty() || !says {
        return false;
    }
    let sentence = Sentence::read(text, lexicon);
    let kinds: Vec<&str> = (0..sentence.len()).filter_map(|at| sentence.of(at, "bird-")).collect();
    let is_kind = |plan: &&LivePlan| {
        let kind = order::kind(&plan.wish).name();
        // "Turkey breast 160" is read in the breast of a turkey.
        kinds.iter().any(|told| *told == kind || told.starts_with(kind))
    };
    let own_kind = own.plans().iter().any(is_kind);
    let whose = |plan: &&LivePlan| {
        let owner = people.iter().find(|known| known.id == plan.host && known.id != person.id);
        owner.is_some_and(|owner| names_as_owner(text, &owner.name))
    };
    if theirs.iter().any(whose) || !own_kind && theirs.iter().any(is_kind) {
        return true;
    }
    let cooks = |plan: &&LivePlan| !plan.is_off() && plan.on_since(now).is_some();
    let unnamed = kinds.iter().all(|kind| *kind == "any");
    let on = theirs.iter().filter(|plan| plan.host == person.id).any(cooks);
    unnamed && on && !own.plans().iter().any(cooks) && is_reading(room, person, text, now)
}

/// "Ben's turkey", "bens": with the ending that says whose something is.
fn names_as_owner(text: &str, name: &str) -> bool {
    let Some(first) = name.split_whitespace().next().map(fold) else { return false };
    text.split_whitespace().any(|part| {
        let told = fold(part);
        let told = told.trim_matches(|c: char| !c.is_alphanumeric());
        told.strip_suffix('s').is_some_and(|stem| stem.trim_end_matches(['\'', '’']) == first)
    })
}

/// Whether `person` has a part in a dinner of that group that is still to come, or is just over.
pub fn has_part(room: &Room, person: &Person, now: Moment) -> bool {
    let member = room.kind == RoomKind::Group && !room.gone && room.members.contains(&person.id);
    member && room.plans().iter().any(|plan| !birds::is_past(plan, now))
}

/// Whether a private chat made nothing of what was said in it: it says so, or asks for a bird or a dinner nobody has told of there.
pub fn is_lost(turn: &Turn) -> bool {
    let [say] = turn.says.as_slice() else { return false };
    let asked = |id: &str| id == "ask-back-mass" || id.starts_with("room-ask-dinner") || id == "room-ask-size";
    say.text.iter().any(|text| text.id == help::UNREAD || asked(&text.id))
}

/// Whether the group, asked the same, makes more of it than the private chat did. Who is understood nowhere is helped with what
/// could be said there.
pub fn is_found(here: &Turn, there: &Turn) -> bool {
    let unread = |turn: &Turn| turn.says.iter().flat_map(|say| &say.text).any(|text| text.id == help::UNREAD);
    !there.says.is_empty() && (unread(here) || !is_lost(there))
}

/// Readings, a dead oven or its return, and whether the bird can be eaten, while it cooks.
fn is_of_the_heat(room: &Room, person: &Person, text: &str, now: Moment) -> bool {
    let reader = person.reader(room, now);
    let metric = reader.units == crate::words::UnitSystem::Metric;
    let ground = Ground::new(&reader.locale, metric, reader.zone, now);
    is_reading(room, person, text, now)
        || reading::says_heat_failed(text, &ground)
        || reading::read_heat_back(text, &ground).is_some()
        || reading::asks_to_eat(text, ground.lexicon)
}

/// "Salted it", "still frozen inside", "how do I salt it?", "is it too late to thaw?" of one who has no bird of their own.
fn is_of_the_bird(room: &Room, person: &Person, text: &str, now: Moment) -> bool {
    let reader = person.reader(room, now);
    let metric = reader.units == crate::words::UnitSystem::Metric;
    let ground = Ground::new(&reader.locale, metric, reader.zone, now);
    let reported = reading::read_report(text, ground.lexicon).is_some_and(|report| report.step.is_some());
    let asked = || ask::read_question(text, &Asker::of_reader(&reader));
    reported
        || matches!(asked(), Ok(Question::SaltDose { bird, .. } | Question::ThawTime { bird }) if bird.mass.is_none())
}

/// "It's been out since 11, is it ok?"
fn is_of_hours_out(room: &Room, person: &Person, text: &str, now: Moment) -> bool {
    let asked = ask::read_question(text, &Asker::of_reader(&person.reader(room, now)));
    matches!(asked, Ok(Question::LeftOut { ahead: false, span: Some(_), .. }))
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

/// "A little dry" of a host who was asked how it was.
fn is_verdict(room: &Room, person: &Person, text: &str) -> bool {
    let taste = person.taste.or(&room.taste);
    reading::read_verdict(text, Lexicon::of(taste.language.as_deref().unwrap_or("en"))).is_some()
}

/// "When's dinner?", "what's my job?", "I can't make it Thursday", "did someone salt it?", from one who has no dinner of their own.
fn concerns(room: &Room, person: &Person, text: &str) -> bool {
    let taste = person.taste.or(&room.taste);
    let lexicon = Lexicon::of(taste.language.as_deref().unwrap_or("en"));
    let looks = match read_command(text, None) {
        Address::Command(command) => ["board", "when"].iter().any(|look| command.name.eq_ignore_ascii_case(look)),
        Address::Plain(_) | Address::Other => false,
    };
    let of_hours = || {
        reading::asks_of_the_dinner(text, lexicon)
            || reading::asks_for_the_oven(text, lexicon)
            || reading::asks_when(text, lexicon)
            || !reading::asks_when_step(text, lexicon).is_empty()
    };
    let of_jobs = || {
        reading::asks_what_is_next(text, lexicon)
            || reading::asks_what_now(text, lexicon)
            || reading::asks_for_the_plan(text, lexicon)
            || reading::asks_what_is_left(text, lexicon)
            || reading::asks_own_jobs(text, lexicon).is_some()
            || reading::asks_who_does_what(text, lexicon)
            || reading::asks_who(text, lexicon).is_some()
            || reading::asks_whether_done(text, lexicon).is_some()
    };
    let of_hands = || {
        let refuses = reading::read_refusal(text, lexicon).is_some();
        refuses && !stepping_down::is_of_another_day(room, text, lexicon)
            || !reading::read_takings(text, lexicon).is_empty()
            || reading::asks_for_another(text, lexicon).is_some()
    };
    looks || of_hours() || of_jobs() || of_hands()
}

/// "We're 12 now", "8 pm works better", "cancel dinner", from the host: the plan is theirs to change, or to end after a yes.
fn changes(room: &Room, person: &Person, text: &str, now: Moment) -> bool {
    const SHORT: usize = 60;
    const LATELY: chrono::TimeDelta = chrono::TimeDelta::minutes(5);
    let reader = person.reader(room, now);
    let metric = reader.units == crate::words::UnitSystem::Metric;
    let ground = Ground::new(&reader.locale, metric, reader.zone, now);
    let asked = room
        .stop_asked
        .as_ref()
        .is_some_and(|asked| asked.by == person.id && !asked.passed && now - asked.at <= LATELY);
    if asked && is_answer(room, person, text) || reading::cancels(text, ground.lexicon) {
        return true;
    }
    if text.len() > SHORT || text.contains(['?', '¿']) {
        return false;
    }
    let (told, _) = reading::read_wish(text, &ground);
    let people = told.adults.is_some() || told.children.is_some();
    let sentence = Sentence::read(text, ground.lexicon);
    // "Wir sind jetzt 12": not "for 12", which may be a dinner of their own.
    let we_are = (0..sentence.len()).any(|at| sentence.is(at, "for") && sentence.raw(at).contains([' ', '\'', '’']));
    let of_now = told.more || told.fewer || we_are || sentence.has("now") || sentence.has("in-all");
    let alone = reading::Wish { adults: None, children: None, among: false, more: false, fewer: false, ..told };
    people && of_now && alone.is_empty() || reading::settled(text, ground.lexicon).is_some()
}

/// Nothing that person says privately is heard in `room` any more.
pub(super) fn forget(sitting: &mut Sitting<'_>, who: PersonId, room: RoomId) {
    let leads = |at: Option<RoomId>| at == Some(room);
    let any = |person: &Person| leads(person.called_from) || leads(person.shares_in);
    if sitting.people.get(&who).is_some_and(any) {
        sitting.change_person(who, |person| {
            person.called_from.take_if(|at| *at == room);
            person.shares_in.take_if(|at| *at == room);
        });
    }
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
    /// Answers to what was said from afar go to the one who said it; the board and what can't wait stay in the group. Whoever has a part
    /// in another group's dinner too is told which one it was, and can reply to that.
    pub(super) fn answer_privately(&mut self, who: PersonId) {
        let here = To::Room(self.room.id);
        let other = |at: Option<RoomId>| at.is_some_and(|at| at != self.room.id);
        let others = self.people.get(&who).is_some_and(|person| other(person.called_from) || other(person.shares_in));
        let from = if others { calls::from(self) } else { None };
        for say in &mut self.says {
            if say.to == here && say.how == How::New && say.urgency == Urgency::Answer && !say.pin {
                say.to = To::Person(who);
                if let Some(from) = &from {
                    say.text.insert(0, from.clone());
                    say.key.get_or_insert_with(|| birds::REPLIED.into());
                }
            }
        }
    }
}
