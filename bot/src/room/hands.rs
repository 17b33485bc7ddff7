//! Giving a job to someone: a job nobody has, or one's own. The other has to agree.
//!
//! The one asked is asked privately where that works, else by name in the room. Until they answer, nothing changes.

use super::action::{Action, JobRef};
use super::sitting::{button, labelled, name, short_name};
use super::state::{Asked, JobState, LiveJob};
use super::turn::{Button, How, Say, To, Urgency};
use super::{PersonId, RoomKind, Sitting, calls, jobs, may, offering, plan_words};
use crate::reading::{self, Lexicon, Willing, fold};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use chrono::TimeDelta;

/// As many people as a page shows.
const MOST_PEOPLE: usize = 12;
/// An answer nobody has marked as one comes within this time.
const LATELY: TimeDelta = TimeDelta::minutes(20);

/// The jobs that can be given away by the one who presses.
pub(super) fn giving(sitting: &mut Sitting<'_>, serial: u32) {
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.serial == serial) else {
        return sitting.notice(Text::new("room-stale"));
    };
    let mut seen = Vec::new();
    let mut rows: Vec<Button> = Vec::new();
    for job in plan.waiting() {
        let Some(step) = job.step().filter(|step| *step == Step::Dish || !seen.contains(step)) else { continue };
        seen.push(step);
        if may_give(sitting, job) {
            let what = Arg::from(plan_words::step_name(step, job.nth));
            let it = JobRef { serial, step, nth: job.nth };
            rows.push(labelled(Text::new("room-jobs-take").with("what", what), &Action::Give(it)));
        }
    }
    let back = button("room-button-back", &Action::Jobs(serial));
    let say = sitting.answer(Text::new("sharing-giving")).key("jobs").how(How::Edit);
    for row in rows {
        say.row([row]);
    }
    say.row([back]);
}

/// The people the job could be given to.
pub(super) fn give(sitting: &mut Sitting<'_>, it: JobRef) {
    let Some(job) = givable(sitting, it) else { return };
    let people: Vec<PersonId> = others(sitting).filter(|person| Some(*person) != job.owner).collect();
    if people.is_empty() {
        return sitting.notice(Text::new("sharing-give-nobody"));
    }
    let rows: Vec<Button> = people
        .iter()
        .take(MOST_PEOPLE)
        .map(|person| {
            labelled(Text::new("sharing-name").with("name", short_name(sitting, *person)), &Action::AskFor(it, *person))
        })
        .collect();
    let what = Arg::from(plan_words::step_name(it.step, it.nth));
    let say = sitting.answer(Text::new("sharing-give-whom").with("what", what)).key("jobs").how(How::Edit);
    for pair in rows.chunks(2) {
        say.row(pair.to_vec());
    }
    say.row([button("room-button-back", &Action::Giving(it.serial))]);
}

/// Asks that person.
pub(super) fn ask(sitting: &mut Sitting<'_>, it: JobRef, person: PersonId) {
    let Some(job) = givable(sitting, it) else { return };
    let Some(by) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    if person == by {
        return jobs::take(sitting, it);
    }
    if !sitting.room.members.contains(&person) {
        return sitting.notice(Text::new("sharing-give-gone"));
    }
    if job.owner == Some(person) {
        return sitting.notice(Text::new("room-take-theirs").with("name", name(sitting, person)));
    }
    if job.asked.is_some_and(|asked| asked.of == person) {
        return sitting.notice(Text::new("sharing-give-waiting").with("name", name(sitting, person)));
    }
    let at = Some(sitting.now);
    if let Some(live) = job_mut(sitting, it) {
        live.asked = Some(Asked { by, of: person, at });
    }
    let reachable = sitting.people.get(&person).is_some_and(|person| person.reachable);
    let here = sitting.room.id;
    if reachable {
        sitting.change_person(person, |person| person.called_from = Some(here));
    }
    let to = if reachable { To::Person(person) } else { To::Room(sitting.room.id) };
    let mut lines = Vec::new();
    if !reachable {
        lines.push(Text::new("room-call-name").with("name", calls::mention_of(sitting, person)));
    } else if let Some(from) = calls::from(sitting) {
        lines.push(from);
    }
    lines.push(
        Text::new("sharing-give-ask")
            .with("name", name(sitting, by))
            .with("what", Arg::from(plan_words::step_name(it.step, it.nth)))
            .with("when", Arg::DayClock(job.at)),
    );
    let link = (!reachable).then(|| super::invites::button(sitting)).flatten();
    let mut say = Say::of(to, lines);
    say.step = Some(it.step);
    say.key(key(it)).urgency(Urgency::Answer);
    say.row([button("room-button-yes", &Action::Willing(it)), button("room-button-no", &Action::Unwilling(it))]);
    say.row(link);
    sitting.say(say);
    let asked = Text::new("sharing-give-asked").with("name", name(sitting, person));
    if matches!(sitting.heard.what, super::What::Pressed { .. }) {
        sitting.notice(asked);
        jobs::list_again(sitting, it.serial);
    } else if reachable {
        sitting.notice(asked);
    }
}

/// The one who was asked has answered.
pub(super) fn answered(sitting: &mut Sitting<'_>, it: JobRef, willing: bool) {
    let Some(job) = jobs::standing(sitting, it) else { return };
    let Some(asked) = job.asked else { return sitting.notice(Text::new("sharing-give-over")) };
    if sitting.speaker() != Some(asked.of) {
        return sitting.notice(Text::new("sharing-give-theirs").with("name", name(sitting, asked.of)));
    }
    if let Some(live) = job_mut(sitting, it) {
        live.asked = None;
    }
    if job.state != JobState::Waiting {
        return sitting.notice(Text::new("sharing-give-over"));
    }
    let text = Text::new(if willing { "sharing-give-yes" } else { "sharing-give-no" })
        .with("name", name(sitting, asked.of))
        .with("what", Arg::from(plan_words::step_name(it.step, it.nth)))
        .with("when", Arg::DayClock(job.at));
    if willing {
        jobs::own(sitting, it, Some(asked.of), "take");
    }
    // Where it was asked, the answer takes its place.
    let here = sitting.routed();
    let to = if here { To::Person(asked.of) } else { To::Room(sitting.room.id) };
    sitting.say(Say::new(to, text.clone())).key(key(it)).how(How::Edit);
    // And the one who asked hears of it where the others don't.
    if here && sitting.people.get(&asked.by).is_some_and(|person| person.reachable) {
        sitting.say(Say::new(To::Person(asked.by), text));
    } else if here && !willing {
        sitting.answer(text).how(How::Quiet);
    }
}

/// The job the speaker has been asked for and has not answered.
pub(super) fn pending(sitting: &Sitting<'_>) -> Option<JobRef> {
    let (plan, who) = (sitting.room.plan.as_ref()?, sitting.speaker()?);
    let job = plan.waiting().find(|job| job.asked.is_some_and(|asked| asked.of == who))?;
    Some(JobRef { serial: plan.serial, step: job.step()?, nth: job.nth })
}

/// "Sure", "no sorry" to who was asked; "on it" to a call or an offer. `to`: the key of the message replied to. `false`: the words
/// answer nothing that lies open.
pub(super) fn replied(sitting: &mut Sitting<'_>, text: &str, addressed: bool, to: Option<&str>) -> bool {
    let lexicon = sitting.lexicon();
    let willing = reading::read_willing(text, lexicon);
    if sitting.room.kind != RoomKind::Group || sitting.room.plan.is_none() {
        return false;
    }
    if let Some(it) = pending(sitting).filter(|it| is_meant(sitting, *it, addressed, to))
        && (willing.is_some() || reading::is_unwilling(text, lexicon))
    {
        // Asked for two jobs at once, they have answered both.
        let at = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)?.asked?.at);
        let both = to.is_none();
        answered(sitting, it, willing.is_some());
        while let Some(next) = pending(sitting).filter(|next| both && is_asked_at(sitting, *next, at)) {
            answered(sitting, next, willing.is_some());
        }
        return true;
    }
    let Some(willing) = willing else { return false };
    if to.is_some_and(|key| key == offering::KEY) {
        offering::pick(sitting);
        return true;
    }
    // Among themselves people agree to much; "on it" just after a call is of the job.
    let clear = to.is_some() || sitting.routed() || willing == Willing::DoesIt;
    let Some(it) = called(sitting, to).filter(|_| clear) else { return false };
    let owner = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)?.owner);
    match owner {
        None => jobs::take(sitting, it),
        // They know, and are called no more than once again.
        Some(owner) if Some(owner) == sitting.speaker() => jobs::later(sitting, it),
        Some(_) => return false,
    }
    true
}

fn is_asked_at(sitting: &Sitting<'_>, it: JobRef, at: Option<Moment>) -> bool {
    let asked = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)?.asked);
    asked.is_some_and(|asked| asked.at == at)
}

/// Whether words answer what the speaker was asked: the message replied to says so, else that they speak to the bot, else that they
/// were asked a moment ago. Whoever is planning answers the plan.
fn is_meant(sitting: &Sitting<'_>, it: JobRef, addressed: bool, to: Option<&str>) -> bool {
    if to.is_some() {
        return to == Some(key(it).as_str());
    }
    let planning = sitting.speaker().is_some_and(|who| sitting.room.drafts.contains_key(&who));
    let asked = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)?.asked?.at);
    let lately = asked.is_some_and(|at| sitting.now - at <= LATELY);
    !planning && (addressed || lately)
}

/// The job whose call the words answer: the message replied to, else the only one called lately that nobody else has.
fn called(sitting: &Sitting<'_>, to: Option<&str>) -> Option<JobRef> {
    let (plan, who) = (sitting.room.plan.as_ref()?, sitting.speaker());
    let it = |job: &LiveJob| Some(JobRef { serial: plan.serial, step: job.step()?, nth: job.nth });
    let open = |job: &&LiveJob| job.calls > 0 && (job.owner.is_none() || job.owner == who);
    if let Some(to) = to {
        return plan
            .waiting()
            .filter(open)
            .find(|job| it(job).is_some_and(|it| calls::key(it.step, it.nth) == to))
            .and_then(it);
    }
    let chat = sitting.routed().then(|| who.map(|who| who.private_room())).flatten();
    let here = |job: &&LiveJob| chat.is_none_or(|chat| job.called_in.contains(&chat));
    let lately = |job: &&LiveJob| sitting.now - job.at <= LATELY;
    let mut found = plan.waiting().filter(open).filter(here).filter(lately);
    let first = found.next()?;
    found.next().is_none().then(|| it(first)).flatten()
}

/// "Give carving to Tom", "/take carve Tom": the member named, if it is not the speaker.
pub(super) fn named(sitting: &Sitting<'_>, text: &str) -> Option<PersonId> {
    fn words(text: &str) -> impl Iterator<Item = &str> {
        text.split(|c: char| !c.is_alphanumeric() && c != '_').filter(|word| !word.is_empty())
    }
    let text = fold(text);
    others(sitting).find(|person| {
        let Some(person) = sitting.people.get(person) else { return false };
        let name = fold(&person.name);
        // An emoji before it or a hyphen behind it is nothing that people type.
        let first = words(&name).next();
        let username = person.username.as_deref().map(fold);
        words(&text).any(|word| Some(word) == first || Some(word) == username.as_deref())
    })
}

/// "Give carving to Tom", "can you carve, Tom". `false`: the words ask nobody.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(serial) = sitting.room.plan.as_ref().map(|plan| plan.serial) else { return false };
    let lexicon = sitting.lexicon();
    if !fold(text).split(|c: char| !c.is_alphanumeric()).any(|word| lexicon.talk(word, "give")) {
        return false;
    }
    let Some(person) = named(sitting, text) else { return false };
    let step = job_asked(text, lexicon).and_then(|(step, nth)| jobs::by_step(sitting, step, nth));
    let Some(it) = step.map(|it| JobRef { serial, ..it }) else { return false };
    ask(sitting, it, person);
    true
}

/// "Can you salt it, Ben?", said to everyone: Ben is asked, where the job has one meaning only. `false`: it asks nobody, or of nothing
/// that is planned.
pub(super) fn asked_by_name(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    if addressed || sitting.room.kind != RoomKind::Group || !text.contains('?') {
        return false;
    }
    let step = job_asked(text, sitting.lexicon()).map(|(step, _)| step);
    step.is_some_and(|step| !matches!(step, Step::Check | Step::Dish)) && told(sitting, text)
}

/// The job someone is asked for; that the one who asks can't do it may hide it.
fn job_asked(text: &str, lexicon: &'static Lexicon) -> Option<(Step, Option<u8>)> {
    reading::read_step(text, lexicon).or_else(|| Some((reading::read_cant(text, lexicon)?, None)))
}

fn others<'a>(sitting: &'a Sitting<'_>) -> impl Iterator<Item = PersonId> + use<'a> {
    let speaker = sitting.speaker();
    sitting.room.members.iter().copied().filter(move |person| Some(*person) != speaker)
}

/// The job, if it is open and the speaker may give it away; else it says why not.
fn givable(sitting: &mut Sitting<'_>, it: JobRef) -> Option<LiveJob> {
    let job = jobs::standing(sitting, it)?;
    if job.state != JobState::Waiting {
        jobs::already(sitting, None, &job);
        return None;
    }
    if !may_give(sitting, &job) {
        let owner = job.owner.map(|owner| name(sitting, owner));
        let text =
            Text::new("sharing-give-not-yours").with("name", owner.unwrap_or_else(|| Arg::Verbatim(String::new())));
        sitting.notice(text);
        return None;
    }
    Some(job)
}

/// What nobody has anyone may give away, else the one who has it, the host and the administrators.
fn may_give(sitting: &Sitting<'_>, job: &LiveJob) -> bool {
    job.owner.is_none() || job.owner == sitting.speaker() || may::steer(sitting)
}

fn job_mut<'a>(sitting: &'a mut Sitting<'_>, it: JobRef) -> Option<&'a mut LiveJob> {
    sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(it.step, it.nth))
}

fn key(it: JobRef) -> String {
    format!("give-{}-{}", it.step.name(), it.nth)
}
