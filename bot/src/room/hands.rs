//! Giving a job to someone: a job nobody has, or one's own. The other has to agree.
//!
//! The one asked is asked privately where that works, else by name in the room. Until they answer, nothing changes.

use super::action::{Action, JobRef};
use super::sitting::{button, labelled, name, short_name};
use super::state::{Asked, JobState, LiveJob};
use super::turn::{Button, How, Say, To, Urgency};
use super::{PersonId, Sitting, calls, jobs, may, plan_words};
use crate::reading::fold;
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;

/// As many people as a page shows.
const MOST_PEOPLE: usize = 12;

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
    if let Some(live) = job_mut(sitting, it) {
        live.asked = Some(Asked { by, of: person });
    }
    let reachable = sitting.people.get(&person).is_some_and(|person| person.reachable);
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
    let step = crate::reading::read_step(text, lexicon).and_then(|(step, nth)| jobs::by_step(sitting, step, nth));
    let Some(it) = step.map(|it| JobRef { serial, ..it }) else { return false };
    ask(sitting, it, person);
    true
}

/// "I'll carve", "I'll do the salting": theirs, as if taken with a button. `false`: the words take nothing.
///
/// What people say to each other counts where the words can't mean anything else: "I'll check" may be about anything.
pub(super) fn volunteered(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    if sitting.room.kind != super::RoomKind::Group || sitting.room.plan.is_none() {
        return false;
    }
    let Some(step) = crate::reading::read_taking(text, sitting.lexicon()) else { return false };
    let plain = matches!(step, Step::Thaw | Step::Salt | Step::Temper | Step::Carve | Step::Reheat);
    if !(addressed || plain) {
        return false;
    }
    let Some(it) = jobs::by_step(sitting, step, None) else { return false };
    jobs::take(sitting, it);
    true
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
