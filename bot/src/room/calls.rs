//! Calling people when a job falls due, and what is said after the bot was away.
//!
//! A due job calls its owner privately where that works, else it is said in the room. Not acknowledged, it goes up the ladder, faster
//! for what food safety hangs on. After a downtime what is still useful is said, the rest is folded into one line.

use super::action::{Action, JobRef};
use super::ladder::{self, Next};
use super::live::{CHILL_LIMIT, runs_by_itself};
use super::sitting::{button, name};
use super::state::{JobState, LiveJob, LivePlan, Rung};
use super::turn::{BellKind, How, Say, To, Urgency};
use super::{
    PersonId, RoomKind, Sitting, after, alarms, allergy, bells, board, dose, ice, kept_hot, no_heat, not_bought,
    not_lit, plan_words,
};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Order, Step, Thawing};
use chrono::{DateTime, TimeDelta, Utc};

/// A call this late was missed, not delayed.
const MISSED: TimeDelta = TimeDelta::minutes(20);
/// A job nobody answered goes to the next rung after this: the whole ladder within the time after which it is taken for done.
const AGAIN: TimeDelta = TimeDelta::minutes(14);
/// The same for the shopping: whoever is in the shop is not asked again at once.
const AGAIN_SHOPPING: TimeDelta = TimeDelta::minutes(20);
/// The same for what food safety hangs on: the host knows while there is still time.
const AGAIN_SAFETY: TimeDelta = TimeDelta::minutes(8);

/// What the message key of a job's call begins with.
pub(super) const KEY: &str = "job-";

/// The message key of a job's call.
pub(super) fn key(step: Step, nth: u8) -> String {
    format!("{KEY}{}-{nth}", step.name())
}

/// Bells rang.
pub(super) fn rang(sitting: &mut Sitting<'_>, bells: &[(DateTime<Utc>, BellKind)]) {
    if bells.iter().any(|(_, kind)| matches!(kind, BellKind::Limit { .. })) {
        alarms::limit(sitting);
    }
    let before = sitting.room.plan.as_ref().map(|plan| plan.limits_called.clone()).unwrap_or_default();
    let mut due = due(sitting, bells);
    limits(sitting, bells);
    // What stood out too long by now is not called for in the same breath.
    let over = |name: &String| sitting.room.plan.as_ref().is_some_and(|plan| plan.limits_called.contains(name));
    due.retain(|job| !bells::limit(job).is_some_and(|name| over(&name) && !before.contains(&name)));
    bells.iter().for_each(|(_, kind)| super::feedback::rang(sitting, kind));
    bells.iter().for_each(|(_, kind)| super::eve::rang(sitting, kind));
    bells.iter().for_each(|(_, kind)| super::at_rest::rang(sitting, kind));
    bells.iter().for_each(|(_, kind)| super::raw::rang(sitting, kind));
    bells.iter().for_each(|(_, kind)| no_heat::rang(sitting, kind));
    if bells.iter().any(|(_, kind)| matches!(kind, BellKind::Offer { .. })) {
        super::offering::rang(sitting);
    }
    if due.is_empty() {
        return;
    }
    let mut missed = Vec::new();
    for job in due {
        let Some(step) = job.step() else { continue };
        if sitting.room.plan.as_ref().is_some_and(|plan| no_heat::holds(plan, step, sitting.now)) {
            put_off(sitting, step, job.nth);
        } else if sitting.room.plan.as_ref().is_some_and(|plan| not_lit::holds(plan, step)) {
            not_lit::put_off(sitting, step, job.nth);
        } else if runs_by_itself(step) {
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
            // It may have stood too long: nobody is called to carve it.
            let carve = plan.job_mut(Step::Carve, 0).filter(|_| name == CHILL_LIMIT);
            if let Some(job) = carve.filter(|job| job.state == JobState::Waiting) {
                job.call_at = None;
            }
            kept_hot::say_over(sitting);
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
    // Whether it is bought is worth asking at any hour.
    let asks = ladder::next(sitting, job, step, sitting.now).is_some_and(|next| next.rung == Rung::Whether);
    if !late || asks {
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

/// Nobody is called for it before the heat is back; not at all where that was never said.
fn put_off(sitting: &mut Sitting<'_>, step: Step, nth: u8) {
    let (now, again) = (sitting.now, sitting.now + no_heat::WAITS);
    if sitting.room.plan.as_ref().is_some_and(|plan| no_heat::since(plan, now).is_none()) {
        return silence(sitting, step, nth);
    }
    if let Some(live) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(step, nth)) {
        live.call_at = Some(again);
    }
}

fn silence(sitting: &mut Sitting<'_>, step: Step, nth: u8) {
    if let Some(live) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(step, nth)) {
        live.call_at = None;
        live.calls = live.calls.saturating_add(1);
    }
}

/// Says that a job is due, to whom the next rung names.
fn call(sitting: &mut Sitting<'_>, step: Step, job: &LiveJob) {
    // A bell is never silent: where nobody is left to be called, the room hears it once more.
    let nobody = || Next { rung: Rung::Again, people: Vec::new(), at: sitting.now };
    let Next { rung, people, .. } = ladder::next(sitting, job, step, sitting.now)
        .or_else(|| not_bought::last(sitting, job, step))
        .unwrap_or_else(nobody);
    let mut called = job.clone();
    called.calls = job.calls.saturating_add(1);
    called.rungs.push(rung);
    called.reached.extend(people.iter().filter(|who| !job.reached.contains(who)));
    let wait = match step {
        Step::Buy => AGAIN_SHOPPING,
        _ if step.is_safety() => AGAIN_SAFETY,
        _ => AGAIN,
    };
    called.call_at = ladder::next(sitting, &called, step, sitting.now + wait).map(|next| next.at);
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let serial = plan.serial;
    if let Some(live) = plan.job_mut(step, job.nth) {
        *live = called;
    }
    for (to, named) in targets(sitting, rung, people) {
        say_call(sitting, step, job, rung, JobRef { serial, step, nth: job.nth }, (to, named));
    }
}

/// One message of a call: to a person, or to the room with the people it names.
fn say_call(
    sitting: &mut Sitting<'_>,
    step: Step,
    job: &LiveJob,
    rung: Rung,
    it: JobRef,
    (to, named): (To, Vec<PersonId>),
) {
    let private = matches!(to, To::Person(_));
    let chat = match &to {
        To::Person(person) => person.private_room(),
        _ => sitting.room.id,
    };
    if let Some(live) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(step, job.nth))
        && !live.called_in.contains(&chat)
    {
        live.called_in.push(chat);
    }
    if let To::Person(person) = &to {
        let here = sitting.room.id;
        sitting.change_person(*person, |person| person.called_from = Some(here));
    }
    let mut text: Vec<Text> = Vec::new();
    if private {
        text.extend(from(sitting));
    } else if !named.is_empty() {
        let names =
            named.iter().map(|person| Text::new("sharing-name").with("name", mention_of(sitting, *person))).collect();
        text.push(Text::new("room-call-name").with("name", Arg::List(names)));
    }
    let what = Arg::from(plan_words::step_name(step, job.nth));
    match rung {
        Rung::Owner | Rung::Room => text.extend(what_to_do(sitting, step, job)),
        Rung::Again => {
            text.push(Text::new("room-call-again").with("what", what).with("since", Arg::Clock(job.at)));
        }
        Rung::Whether => text.push(not_bought::question(step, job.at)),
        Rung::Helpers | Rung::Host => {
            let id = if rung == Rung::Helpers { "sharing-call-helpers" } else { "sharing-call-host" };
            let since = ladder::silent_since(sitting, job);
            text.push(Text::new(id).with("what", what).with("since", Arg::Clock(since)));
        }
    }
    let unheard = named.iter().any(|who| !is_reachable(sitting, *who));
    let link = if unheard { super::invites::button(sitting) } else { None };
    let mut say = Say::of(to, text);
    say.step = Some(step);
    say.key(key(step, job.nth)).urgency(if step.is_safety() { Urgency::Safety } else { Urgency::Due });
    if rung == Rung::Whether {
        say.row([
            button("room-button-yes", &Action::AsPlanned(it)),
            button("room-button-not-yet", &Action::NotYet(it)),
        ]);
        say.row(link);
        sitting.say(say);
        return;
    }
    say.row([
        button("room-button-done", &Action::Done(it)),
        button("room-button-later", &Action::Later(it)),
        button("room-button-skip", &Action::Skip(it)),
    ]);
    if sitting.room.kind == RoomKind::Group && (job.owner.is_none() || rung == Rung::Helpers || rung == Rung::Host) {
        say.row([button("room-button-take", &Action::Take(it))]);
    }
    say.row(link);
    sitting.say(say);
}

/// The sentences of a call.
fn what_to_do(sitting: &Sitting<'_>, step: Step, job: &LiveJob) -> Vec<Text> {
    let zone = sitting.zone_or_utc();
    let order = sitting.room.plan.as_ref().and_then(|plan| plan.order(zone));
    let of =
        sitting.room.plan.as_ref().map_or(0, |plan| plan.jobs.iter().filter(|other| other.step == job.step).count());
    let plan = sitting.room.plan.as_ref();
    if let Some(out) = plan.filter(|_| step == Step::Water).and_then(|plan| ice::taken_out(plan, job, zone)) {
        return vec![out];
    }
    // Out of the water it has been in the fridge since.
    let waited = step == Step::Temper && plan.is_some_and(|plan| ice::waits_from(plan, zone).is_some());
    let order = order.map(|order| if waited { Order { thawing: Thawing::Fridge, ..order } } else { order });
    let of = of - usize::from(step == Step::Water && plan.is_some_and(|plan| ice::waits_from(plan, zone).is_some()));
    let mut text = plan_words::step_call(step, job.nth, of, order.as_ref(), job.latest);
    let dish = sitting.room.plan.as_ref().and_then(|plan| plan.wish.dishes.get(usize::from(job.nth))?.as_ref());
    if step == Step::Dish && dish.is_some_and(|dish| dish.hot_through) {
        text.push(Text::new("dish-hot-through").with("target", Arg::Temperature(super::target())));
    }
    if step == Step::Carve {
        // Called to come off, and nobody has said that it did.
        let unsaid = plan.and_then(|plan| plan.job(Step::Pull, 0)).is_some_and(|job| job.state == JobState::Waiting);
        if unsaid {
            text.insert(0, Text::new("room-call-carve-unsaid").with("target", Arg::Temperature(super::target())));
        }
        text.extend(sitting.room.plan.as_ref().and_then(super::hot_road::at_table));
    }
    let kind = order.as_ref().map(|order| order.bird.kind);
    text.extend(plan.and_then(|plan| allergy::no_butter(plan, step, kind)));
    text.extend(plan.and_then(|plan| kept_hot::measured_first(plan, step, sitting.now)));
    if let (Step::Salt | Step::Temper, Some(order), Some(plan)) = (step, &order, plan) {
        let own = dose::own(sitting, plan);
        let usual = sitting.usual_salt();
        text.extend(match step {
            Step::Salt => dose::lines(order, own, dose::strength(&plan.wish), usual),
            _ => dose::last_lines(order, &plan.wish, own, usual),
        });
    }
    if step == Step::Leftovers && sitting.now > job.latest {
        return vec![Text::new("room-leftovers-over").with("when", Arg::DayClock(job.latest))];
    }
    let kept = plan.is_some_and(is_chilled);
    // Cooked ahead and cut up, it was to cool first: carried and warmed only if it did.
    let cooled_first = job.nth == 0
        && matches!(step, Step::Pack | Step::Reheat)
        && plan.is_some_and(|plan| plan.wish.hot != Some(true));
    if step == Step::Leftovers || cooled_first {
        text.extend((!kept).then(|| Text::new("room-leftovers-if")));
    }
    text
}

/// It went into the fridge, and in time.
fn is_chilled(plan: &LivePlan) -> bool {
    // Put away too late, it was to be thrown out.
    let in_time =
        |job: &LiveJob| matches!(job.state, JobState::Done { at, .. } if at <= job.latest + super::jobs::CHILL_GRACE);
    plan.jobs.iter().any(|job| job.step() == Some(Step::Chill) && in_time(job))
}

/// Where a rung's call goes, and whom it names there: privately where that works, else one message in the room.
fn targets(sitting: &Sitting<'_>, rung: Rung, people: Vec<PersonId>) -> Vec<(To, Vec<PersonId>)> {
    let room = To::Room(sitting.room.id);
    let group = sitting.room.kind == RoomKind::Group;
    // Where one message went unseen, another beside it would too; but at night the others sleep.
    let asleep = !carvetime_core::plan::clock::is_sociable(sitting.zone_or_utc(), sitting.now);
    // Alone there is nobody else to wake.
    let theirs = group && !people.is_empty() && people.iter().all(|who| is_reachable(sitting, *who));
    let again = rung == Rung::Again && !(asleep && theirs);
    if rung == Rung::Room || again {
        return vec![(room, people.into_iter().filter(|_| group).collect())];
    }
    let (private, named): (Vec<PersonId>, Vec<PersonId>) =
        people.into_iter().partition(|who| group && is_reachable(sitting, *who));
    let mut all: Vec<(To, Vec<PersonId>)> = private.into_iter().map(|who| (To::Person(who), Vec::new())).collect();
    if !named.is_empty() {
        all.push((room, if group { named } else { Vec::new() }));
    }
    all
}

/// Which room, and which dinner, a private message speaks of.
pub(super) fn from(sitting: &Sitting<'_>) -> Option<Text> {
    if sitting.room.kind == RoomKind::Private {
        return None;
    }
    let dinner = Arg::from(proposal_dinner(sitting)?);
    Some(match sitting.room.title.clone() {
        Some(title) => Text::new("sharing-call-from-titled").with("what", dinner).with("title", Arg::Verbatim(title)),
        None => Text::new("room-call-from").with("what", dinner),
    })
}

fn is_reachable(sitting: &Sitting<'_>, person: PersonId) -> bool {
    sitting.people.get(&person).is_some_and(|person| person.reachable)
}

pub(super) fn mention_of(sitting: &Sitting<'_>, person: PersonId) -> Arg {
    match name(sitting, person) {
        Arg::Verbatim(name) => Arg::Mention { person, name },
        other => other,
    }
}

fn proposal_dinner(sitting: &Sitting<'_>) -> Option<Text> {
    let dinner = sitting.room.plan.as_ref()?.wish.dinner?;
    Some(Text::new("room-known-dinner").with("when", Arg::DayClock(dinner)))
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
