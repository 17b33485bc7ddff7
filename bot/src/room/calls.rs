//! Calling people when a job falls due, and what is said after the bot was away.
//!
//! A due job calls its owner privately where that works, else it is said in the room. Not acknowledged, it is called once
//! more; then the board has to do. After a downtime what is still useful is said, the rest is folded into one line.

use super::action::{Action, JobRef};
use super::live::runs_by_itself;
use super::sitting::{button, name};
use super::state::{JobState, LiveJob};
use super::turn::{BellKind, How, Say, To, Urgency};
use super::{PersonId, RoomKind, Sitting, after, alarms, bells, board, dose, plan_words};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use chrono::{DateTime, TimeDelta, Utc};

/// A call this late was missed, not delayed.
const MISSED: TimeDelta = TimeDelta::minutes(20);
/// A job nobody answered is called again after this.
const AGAIN: TimeDelta = TimeDelta::minutes(20);
/// The same for what food safety hangs on.
const AGAIN_SAFETY: TimeDelta = TimeDelta::minutes(8);
/// How often a job is called in all.
const CALLS: u8 = 2;
/// The same for what food safety hangs on.
const CALLS_SAFETY: u8 = 3;

/// The message key of a job's call.
pub(super) fn key(step: Step, nth: u8) -> String {
    format!("job-{}-{nth}", step.name())
}

/// Bells rang.
pub(super) fn rang(sitting: &mut Sitting<'_>, bells: &[(DateTime<Utc>, BellKind)]) {
    if bells.iter().any(|(_, kind)| matches!(kind, BellKind::Limit { .. })) {
        alarms::limit(sitting);
    }
    let due = due(sitting, bells);
    limits(sitting, bells);
    if due.is_empty() {
        return;
    }
    let mut missed = Vec::new();
    for job in due {
        let Some(step) = job.step() else { continue };
        if runs_by_itself(step) {
            pass(sitting, step, &job);
            if step == Step::Serve {
                after::learn(sitting);
            }
        } else if is_missed(sitting, &job, step) {
            silence(sitting, step, job.nth);
            missed.push(step);
        } else {
            call(sitting, step, &job);
        }
    }
    tell_missed(sitting, missed);
    board::refresh(sitting);
}

/// The two hours are over and nobody has put the food away: said once, to everyone.
fn limits(sitting: &mut Sitting<'_>, bells: &[(DateTime<Utc>, BellKind)]) {
    for (_, kind) in bells {
        let BellKind::Limit { name } = kind else { continue };
        let now = sitting.now;
        let Some(plan) = sitting.room.plan.as_mut() else { return };
        let over = plan
            .jobs
            .iter()
            .any(|job| bells::limit(job).as_ref() == Some(name) && job.state == JobState::Waiting && job.latest <= now);
        if over && !plan.limits_called.contains(name) {
            plan.limits_called.push(name.clone());
            sitting.answer(Text::new("room-limit-chill")).urgency(Urgency::Safety);
        }
    }
}

/// The waiting jobs these bells speak of, their call really due.
fn due(sitting: &Sitting<'_>, bells: &[(DateTime<Utc>, BellKind)]) -> Vec<LiveJob> {
    let Some(plan) = &sitting.room.plan else { return Vec::new() };
    let mut due: Vec<LiveJob> = Vec::new();
    for (_, kind) in bells {
        let BellKind::Job { step, nth, .. } = kind else { continue };
        let job = plan.jobs.iter().find(|job| job.step == *step && job.nth == *nth);
        let known = |job: &LiveJob| due.iter().any(|other| other.step == job.step && other.nth == job.nth);
        if let Some(job) = job.filter(|job| job.call_at.is_some_and(|at| at <= sitting.now) && !known(job)) {
            due.push(job.clone());
        }
    }
    due
}

/// Only the newest of several missed water changes and checks is worth a call; anything whose last useful minute is past is not.
fn is_missed(sitting: &Sitting<'_>, job: &LiveJob, step: Step) -> bool {
    let late = job.call_at.is_some_and(|at| sitting.now - at > MISSED);
    if !late {
        return false;
    }
    let superseded = sitting.room.plan.as_ref().is_some_and(|plan| {
        plan.jobs.iter().any(|other| {
            other.step == job.step && other.nth > job.nth && other.call_at.is_some_and(|at| at <= sitting.now)
        })
    });
    superseded || (sitting.now > job.latest + MISSED && !step.is_safety())
}

/// A step that needs no hands has come.
fn pass(sitting: &mut Sitting<'_>, step: Step, job: &LiveJob) {
    let at = job.at.min(sitting.now);
    let Some(live) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(step, job.nth)) else { return };
    live.call_at = None;
    live.state = JobState::Done { by: None, at };
}

fn silence(sitting: &mut Sitting<'_>, step: Step, nth: u8) {
    if let Some(live) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(step, nth)) {
        live.call_at = None;
        live.calls = live.calls.saturating_add(1);
    }
}

/// Says that a job is due, to whom it concerns.
fn call(sitting: &mut Sitting<'_>, step: Step, job: &LiveJob) {
    let calls = job.calls.saturating_add(1);
    let wait = if step.is_safety() { AGAIN_SAFETY } else { AGAIN };
    let again = (calls < most_calls(step)).then(|| sitting.now + wait);
    let to = addressee(sitting, job, calls);
    let chat = match &to {
        To::Person(person) => person.private_room(),
        _ => sitting.room.id,
    };
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let it = JobRef { serial: plan.serial, step, nth: job.nth };
    if let Some(live) = plan.job_mut(step, job.nth) {
        live.calls = calls;
        live.call_at = again;
        if !live.called_in.contains(&chat) {
            live.called_in.push(chat);
        }
    }
    let mut text = Vec::new();
    if let Some(person) = mention(sitting, job, calls, &to) {
        text.push(person);
    }
    if calls > 1 {
        let what = Arg::from(plan_words::step_name(step, job.nth));
        text.push(Text::new("room-call-again").with("what", what).with("since", Arg::Clock(job.at)));
    } else {
        text.extend(what_to_do(sitting, step, job));
    }
    let mut say = Say::of(to, text);
    say.step = Some(step);
    say.key(key(step, job.nth)).urgency(if step.is_safety() { Urgency::Safety } else { Urgency::Due });
    say.row([
        button("room-button-done", &Action::Done(it)),
        button("room-button-later", &Action::Later(it)),
        button("room-button-skip", &Action::Skip(it)),
    ]);
    if sitting.room.kind == RoomKind::Group && job.owner.is_none() {
        say.row([button("room-button-take", &Action::Take(it))]);
    }
    sitting.say(say);
}

/// The sentences of a call.
fn what_to_do(sitting: &Sitting<'_>, step: Step, job: &LiveJob) -> Vec<Text> {
    let order = sitting.room.plan.as_ref().and_then(|plan| plan.order(sitting.zone_or_utc()));
    let of =
        sitting.room.plan.as_ref().map_or(0, |plan| plan.jobs.iter().filter(|other| other.step == job.step).count());
    let mut text = plan_words::step_call(step, job.nth, of, order.as_ref(), job.latest);
    if let (Step::Salt, Some(order)) = (step, &order) {
        let own = job
            .owner
            .or(sitting.room.plan.as_ref().map(|plan| plan.host))
            .and_then(|id| sitting.people.get(&id)?.own_salt);
        text.extend(dose::lines(order, own));
    }
    text
}

/// The owner, privately where that works; everyone in the room where the first call went unheard.
fn addressee(sitting: &Sitting<'_>, job: &LiveJob, calls: u8) -> To {
    let reachable = job.owner.filter(|owner| sitting.people.get(owner).is_some_and(|person| person.reachable));
    match reachable {
        Some(owner) if sitting.room.kind == RoomKind::Group && calls < 2 => To::Person(owner),
        _ => To::Room(sitting.room.id),
    }
}

/// Whom the room's message names: the owner, and the host when a call went unanswered.
fn mention(sitting: &Sitting<'_>, job: &LiveJob, calls: u8, to: &To) -> Option<Text> {
    if sitting.room.kind == RoomKind::Private {
        return None;
    }
    if let To::Person(_) = to {
        return Some(Text::new("room-call-from").with("what", Arg::from(proposal_dinner(sitting)?)));
    }
    let host = sitting.room.plan.as_ref().map(|plan| plan.host);
    let safety = job.step().is_some_and(Step::is_safety);
    let host = host.filter(|host| safety || !is_quiet(sitting, *host));
    let person = if calls > 1 { job.owner.or(host) } else { job.owner }?;
    Some(Text::new("room-call-name").with("name", mention_of(sitting, person)))
}

/// Whether it is a person's quiet hour. What they took at that hour, and what safety hangs on, is called all the same.
fn is_quiet(sitting: &Sitting<'_>, person: PersonId) -> bool {
    let Some((from, to)) = sitting.people.get(&person).and_then(|person| person.quiet) else { return false };
    let time = sitting.now.with_timezone(&sitting.zone_or_utc()).time();
    if from <= to { (from..to).contains(&time) } else { time >= from || time < to }
}

fn mention_of(sitting: &Sitting<'_>, person: PersonId) -> Arg {
    match name(sitting, person) {
        Arg::Verbatim(name) => Arg::Mention { person, name },
        other => other,
    }
}

fn proposal_dinner(sitting: &Sitting<'_>) -> Option<Text> {
    let dinner = sitting.room.plan.as_ref()?.wish.dinner?;
    Some(Text::new("room-known-dinner").with("when", Arg::DayClock(dinner)))
}

/// Leftovers, checks and shopping are said once; the next water change comes by itself. A second call would be a nag.
fn most_calls(step: Step) -> u8 {
    match step {
        Step::Leftovers | Step::Check | Step::Buy | Step::Water => 1,
        _ if step.is_safety() => CALLS_SAFETY,
        _ => CALLS,
    }
}

/// One line for all that fell into the time away.
fn tell_missed(sitting: &mut Sitting<'_>, mut missed: Vec<Step>) {
    missed.dedup();
    if missed.is_empty() {
        return;
    }
    let what = missed.into_iter().map(|step| plan_words::step_name(step, 0)).collect();
    sitting
        .answer(Text::new("room-missed").with("what", Arg::List(what)))
        .key("missed")
        .how(How::New)
        .urgency(Urgency::Due);
}

/// A plan accepted late has jobs that are due at once: their bells ring with the next tick, so nothing is said here but
/// that they come.
pub(super) fn overdue_at_start(sitting: &mut Sitting<'_>) {
    let now: Moment = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    for job in plan.jobs.iter_mut().filter(|job| job.state == JobState::Waiting) {
        if job.call_at.is_some_and(|at| at < now) {
            job.call_at = Some(now);
        }
    }
}
