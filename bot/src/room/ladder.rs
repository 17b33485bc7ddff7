//! Who is called next for a due job, and when: its owner, once more, the other helpers, the host, each once.
//!
//! Worked out afresh before each call from whom it has reached already, so that people may come, go and fall asleep in between.
//! Quiet hours are a person's own, on their own clock. Says nothing. Start at [`next`].

use super::live::TAKEN_FOR_DONE;
use super::state::{JobState, LiveJob, Rung};
use super::{PersonId, RoomKind, Sitting, not_bought};
use carvetime_core::plan::clock::instant;
use carvetime_core::plan::{Moment, Step};
use chrono::{Days, TimeDelta};

/// A job taken for an hour this near to the present one was taken for it.
const SAME_HOUR: TimeDelta = TimeDelta::minutes(10);

/// A call to come.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Next {
    /// Which rung.
    pub rung: Rung,
    /// Whom it is for; nobody in particular where the room is told.
    pub people: Vec<PersonId>,
    /// No sooner than.
    pub at: Moment,
}

/// The call that follows what the job was called for so far, at `from` or when the first of those left wakes. `None`: everyone has
/// been called, or the rest would be woken by it when it is of no use any more.
///
/// Looks, water and leftovers are called once: the next comes by itself or a second call would be a nag. Where one water after the other
/// stays without an answer, the next goes up the ladder instead; so does the look that the end hangs on.
pub(super) fn next(sitting: &Sitting<'_>, job: &LiveJob, step: Step, from: Moment) -> Option<Next> {
    climb(sitting, job, step, from).or_else(|| not_bought::whether(sitting, job, step, from))
}

fn climb(sitting: &Sitting<'_>, job: &LiveJob, step: Step, from: Moment) -> Option<Next> {
    let once = match step {
        Step::Leftovers | Step::Water => true,
        Step::Check => !is_last_look(sitting, job, from),
        _ => false,
    };
    if once && !job.rungs.is_empty() {
        return None;
    }
    if sitting.room.kind == RoomKind::Private {
        // A third word for a look would come when it is to come off anyway.
        let most = if step.is_safety() && step != Step::Check { 3 } else { 2 };
        let rung = if job.rungs.is_empty() { Rung::Room } else { Rung::Again };
        return (job.rungs.len() < most).then_some(Next { rung, people: Vec::new(), at: from });
    }
    if let Some(next) = unanswered(sitting, job, step, from) {
        return Some(next);
    }
    let owner = job.owner.filter(|owner| wakes(sitting, job, step, *owner, from) == from);
    let now = |rung, people| Some(Next { rung, people, at: from });
    match owner {
        Some(owner) if !job.reached.contains(&owner) => return now(Rung::Owner, vec![owner]),
        Some(owner) if !job.rungs.contains(&Rung::Again) => return now(Rung::Again, vec![owner]),
        None if job.rungs.is_empty() => return now(Rung::Room, Vec::new()),
        _ => {}
    }
    let useful = from.max(job.latest).max(job.at + TAKEN_FOR_DONE);
    others(sitting, job, step, from).into_iter().filter(|next| next.at <= useful).min_by_key(|next| next.at)
}

/// The look after which it comes off, while nothing was read for it. An earlier one that nobody answers costs little: the plan goes by the
/// timetable and the next look comes. Without this one nobody knows whether the bird is ahead of its hour. At that hour the call to take it
/// off asks for numbers itself.
fn is_last_look(sitting: &Sitting<'_>, job: &LiveJob, from: Moment) -> bool {
    /// So near before coming off a look is about the end.
    const NEAR_THE_END: TimeDelta = TimeDelta::hours(1);
    /// A reading this fresh at the look is one to go by.
    const FRESH: TimeDelta = TimeDelta::minutes(30);
    let Some(plan) = &sitting.room.plan else { return false };
    let more = plan.waiting().any(|other| other.step() == Some(Step::Check) && other.at > job.at);
    let pull = plan.job(Step::Pull, 0).filter(|pull| pull.state == JobState::Waiting);
    let near = pull.is_some_and(|pull| from < pull.at && pull.at - job.at <= NEAR_THE_END);
    near && !more && !plan.is_read_since(job.at - FRESH)
}

/// Changes of water come one after the other, so nobody is called twice for one. Two in a row without an answer, the third goes to those
/// who were not called for them yet.
fn unanswered(sitting: &Sitting<'_>, job: &LiveJob, step: Step, from: Moment) -> Option<Next> {
    const PATIENCE: usize = 2;
    let before = if job.rungs.is_empty() { silent_before(sitting, job) } else { Vec::new() };
    if before.len() < PATIENCE {
        return None;
    }
    let mut called = job.clone();
    called.reached.extend(before.iter().flat_map(|old| old.reached.iter().copied()));
    others(sitting, &called, step, from).into_iter().find(|next| next.at <= from)
}

/// The changes of water just before this one that nobody has answered, the newest first.
fn silent_before<'a>(sitting: &'a Sitting<'_>, job: &LiveJob) -> Vec<&'a LiveJob> {
    let jobs = sitting.room.plan.iter().flat_map(|plan| &plan.jobs);
    let of_water = |old: &&LiveJob| old.step() == Some(Step::Water) && old.step == job.step && old.nth < job.nth;
    let mut before: Vec<&LiveJob> = jobs.filter(of_water).collect();
    before.sort_by_key(|old| std::cmp::Reverse(old.nth));
    let silent = |old: &&LiveJob| {
        !old.rungs.is_empty() && matches!(old.state, JobState::Waiting | JobState::Done { by: None, .. })
    };
    before.into_iter().take_while(silent).collect()
}

/// Since when nobody has answered calls for it.
pub(super) fn silent_since(sitting: &Sitting<'_>, job: &LiveJob) -> Moment {
    silent_before(sitting, job).last().map_or(job.at, |first| first.at)
}

/// The calls left for those who don't have the job: the helpers who are up, the host, and those who sleep when they wake.
fn others(sitting: &Sitting<'_>, job: &LiveJob, step: Step, from: Moment) -> Vec<Next> {
    let host = sitting.room.plan.as_ref().map(|plan| plan.host);
    let left = |who: &PersonId| !job.reached.contains(who);
    let wakes = |who: PersonId| wakes(sitting, job, step, who, from);
    let comes = |who: &PersonId| !sitting.room.excused.contains(who);
    let members = sitting.room.members.iter().copied().filter(comes);
    let helpers: Vec<PersonId> =
        members.filter(|who| Some(*who) != host && Some(*who) != job.owner).filter(left).collect();
    let up: Vec<PersonId> = helpers.iter().copied().filter(|who| wakes(*who) == from).collect();
    let asleep = helpers.iter().copied().filter(|who| wakes(*who) > from);
    let mut all = Vec::new();
    if !up.is_empty() {
        all.push(Next { rung: Rung::Helpers, people: up, at: from });
    }
    if let Some(host) = host.filter(left).filter(|host| job.owner != Some(*host)) {
        all.push(Next { rung: Rung::Host, people: vec![host], at: wakes(host) });
    }
    all.extend(asleep.map(|who| Next { rung: Rung::Helpers, people: vec![who], at: wakes(who) }));
    // One who sleeps through the hour of their own job is called when they wake.
    if let Some(owner) = job.owner.filter(left) {
        all.push(Next { rung: Rung::Owner, people: vec![owner], at: wakes(owner) });
    }
    all
}

/// When `who` may be called for it: at `from`, or at the end of their quiet hours. Safety is called at any hour, and so is what they
/// took at that hour.
fn wakes(sitting: &Sitting<'_>, job: &LiveJob, step: Step, who: PersonId, from: Moment) -> Moment {
    let took_it_so = job.owner == Some(who) && is_agreed(sitting, job, who);
    if step.is_safety() || took_it_so {
        return from;
    }
    quiet_until(sitting, who, from).unwrap_or(from)
}

/// Whether its owner has agreed to the hour at which it stands, as far as that hour is a quiet one.
fn is_agreed(sitting: &Sitting<'_>, job: &LiveJob, owner: PersonId) -> bool {
    let Some(taken) = job.taken_for else { return true };
    (job.at - taken).abs() < SAME_HOUR || quiet_until(sitting, owner, taken).is_some()
}

/// Whether the job has come to stand in quiet hours of its owner who took it for another hour.
pub(super) fn wants_asking(sitting: &Sitting<'_>, job: &LiveJob, step: Step) -> bool {
    let asleep = |owner| quiet_until(sitting, owner, job.at).is_some() && !is_agreed(sitting, job, owner);
    !step.is_safety() && job.owner.is_some_and(asleep)
}

/// The end of the quiet hours that `at` falls into.
pub(super) fn quiet_until(sitting: &Sitting<'_>, who: PersonId, at: Moment) -> Option<Moment> {
    let person = sitting.people.get(&who)?;
    let (from, to) = person.quiet?;
    let zone = person.taste.zone().unwrap_or_else(|| sitting.zone_or_utc());
    let local = at.with_timezone(&zone).naive_local();
    let (day, time) = (local.date(), local.time());
    let quiet = if from <= to { (from..to).contains(&time) } else { time >= from || time < to };
    let last = if time < to { day } else { day.checked_add_days(Days::new(1))? };
    quiet.then(|| instant(zone, last.and_time(to)))
}
