//! The live plan: solved again whenever something has happened, and compared with what stood before.
//!
//! Owns the way between `core::plan` and the stored jobs. Says nothing.

use super::forecast::{self, Foresight, tightened};
use super::hot_road;
use super::kept_hot;
use super::order;
use super::state::{Change, Inside, JobState, LiveJob, LivePlan, StoredFact, StoredReading};
use super::{PersonId, Sitting, hot_day, spoiled};
use carvetime_core::heat::Profile;
use carvetime_core::plan::{self, Conflict, Fact, Job, Moment, Order, Schedule, Step};
use chrono::TimeDelta;
use chrono_tz::Tz;

/// A shift that people should hear of.
const WORTH_TELLING: TimeDelta = TimeDelta::minutes(10);

/// A job called and not answered for this long is taken for done as planned.
pub(super) const TAKEN_FOR_DONE: TimeDelta = TimeDelta::minutes(45);

/// The same for a dish, on which nothing hangs but itself.
const DISH_TAKEN_FOR_DONE: TimeDelta = TimeDelta::minutes(15);

/// Leftovers are called for so long before the two hours run out.
const CALLED_BEFORE: TimeDelta = TimeDelta::minutes(20);

/// The limit of what is chilled first, by name.
pub(super) const CHILL_LIMIT: &str = "chill-0";

/// How many changes can be taken back.
const HISTORY: usize = 20;

/// What a live plan is solved by, besides itself.
#[derive(Debug, Clone, Copy)]
pub struct Light {
    /// The kitchen's zone.
    pub zone: Tz,
    /// The present.
    pub now: Moment,
    /// What the host's earlier cooks taught.
    pub profile: Profile,
    /// Shelves of the host's fridge that are free for a dinner, as far as told.
    pub shelves: Option<u8>,
}

/// Steps that nobody has to be called for: they follow from another, or everyone is there.
pub fn runs_by_itself(step: Step) -> bool {
    !step.needs_hands() || step == Step::Serve
}

impl LivePlan {
    /// The plan of an accepted schedule.
    pub fn new(serial: u32, host: PersonId, wish: crate::reading::Wish, schedule: &Schedule, now: Moment) -> Self {
        let mut plan = Self {
            serial,
            beside: false,
            made: Some(now),
            host,
            wish,
            jobs: Vec::new(),
            facts: Vec::new(),
            readings: Vec::new(),
            edition: 0,
            changes: 0,
            history: Vec::new(),
            ready_from: None,
            ready_to: None,
            held_hot: false,
            hot_day: false,
            was_held: false,
            burns_on: false,
            heated_again: None,
            heated_late: None,
            off_asked: None,
            limits_called: Vec::new(),
            was_set: Vec::new(),
            inside: Inside::default(),
            down_since: None,
            told: None,
            doubted: Vec::new(),
            alarms: Vec::new(),
            adding: None,
            feedback: None,
            learned: false,
            wanted: None,
            eve_told: false,
            clash: None,
            calendar: None,
            in_doubt: None,
            allergies: Vec::new(),
        };
        plan.adopt(schedule, now);
        plan
    }

    /// The order behind the plan.
    pub fn order(&self, zone: Tz) -> Option<Order> {
        order::order(&self.wish, zone).ok().flatten()
    }

    /// What has happened, for the solver: what was said, and what is taken for done as planned because nobody said otherwise.
    ///
    /// A cook with full hands does not press buttons. Without this a thaw nobody confirmed would still be ahead days later.
    /// Nothing that safety hangs on is ever taken for done.
    pub fn facts(&self, now: Moment) -> Vec<Fact> {
        let told = self.facts.iter().filter_map(|fact| {
            Some(Fact { step: Step::from_name(&fact.step)?, nth: fact.nth, at: fact.at, done: fact.done })
        });
        let assumed = self
            .jobs
            .iter()
            .filter(|job| is_assumed(job, now) || self.is_on_by_reading(job))
            .filter_map(|job| Some(Fact { step: job.step()?, nth: job.nth, at: job.at, done: true }));
        told.chain(assumed).collect()
    }

    /// Jobs taken for done as planned, nobody having said so.
    pub fn assumed(&self, now: Moment) -> impl Iterator<Item = &LiveJob> {
        self.jobs.iter().filter(move |job| is_assumed(job, now) || self.is_on_by_reading(job))
    }

    /// Called for, not answered, and the thermometers are in it: it is on.
    fn is_on_by_reading(&self, job: &LiveJob) -> bool {
        let open = job.step() == Some(Step::On) && job.state == JobState::Waiting && job.calls > 0;
        open && self.is_read_since(job.at)
    }

    /// Whether the bird has been measured since.
    pub fn is_read_since(&self, at: Moment) -> bool {
        let in_bird = |reading: &StoredReading| reading.breast_c.is_some() || reading.thigh_c.is_some();
        self.readings.iter().any(|reading| reading.at > at && in_bird(reading))
    }

    /// Solves the rest of the plan, by the forecast where there is one. `None` only where the stored wish can no longer be
    /// read.
    pub fn solve(&self, light: &Light) -> Option<Result<Schedule, Conflict>> {
        self.solve_seen(Foresight::of(self, light).as_ref(), light)
    }

    /// The same, the forecast being made already.
    pub fn solve_seen(&self, sight: Option<&Foresight>, light: &Light) -> Option<Result<Schedule, Conflict>> {
        let order = self.order(light.zone)?;
        let order = Order { shelves: order.shelves.or(light.shelves), ..order };
        let facts = self.facts(light.now);
        let finish = sight.map(Foresight::finish).or_else(|| forecast::turned(self, light));
        let solve = |finish| plan::solve_with(&order, &facts, finish, light.now);
        let first = solve(finish);
        if first.is_err()
            && let Some(tight) = sight.and_then(|sight| tightened(&sight.finish(), &order))
            && let Ok(schedule) = solve(Some(tight))
        {
            return Some(Ok(schedule));
        }
        Some(first)
    }

    /// Takes over the times of a schedule that works; who has what, and what is done, stays.
    pub fn adopt(&mut self, schedule: &Schedule, now: Moment) {
        self.clash = None;
        let old = std::mem::take(&mut self.jobs);
        // Once readings speak, they say when the next look tells most.
        let looked = self.told.is_some();
        let is_look = |step: &str, waiting: bool| looked && waiting && step == Step::Check.name();
        let kept = |job: &Job| old.iter().find(|live| live.step == job.step.name() && live.nth == job.nth);
        let mut jobs: Vec<LiveJob> = schedule
            .jobs
            .iter()
            .filter(|job| !is_look(job.step.name(), !job.done))
            .map(|job| live_job(job, kept(job), now))
            .collect();
        let stays =
            |live: &&LiveJob| live.state != JobState::Waiting || is_look(&live.step, true) && !schedule.is_off();
        water_to_its_owner(&mut jobs, &old);
        for live in old.iter().filter(stays) {
            if !jobs.iter().any(|job| job.step == live.step && job.nth == live.nth) {
                jobs.push(live.clone());
            }
        }
        if hot_road::is_hot(self) {
            hot_road::count(self, &mut jobs);
        } else {
            self.count_from_the_heat(&mut jobs);
        }
        self.eat_after_carving(&mut jobs);
        sort(&mut jobs);
        let stands = |job: &LiveJob| (job.step.clone(), job.nth, job.at, job.state);
        if !jobs.iter().map(stands).eq(old.iter().map(stands)) {
            self.edition += 1;
        }
        self.jobs = jobs;
        self.ready_from = Some(schedule.finish.p10);
        self.ready_to = Some(schedule.finish.p90);
    }

    /// The next look at the thermometers is at `at`; no other is asked for.
    pub fn look(&mut self, at: Moment) {
        let is_look = |job: &LiveJob| job.step() == Some(Step::Check) && job.state == JobState::Waiting;
        let first = self.jobs.iter().find(|job| is_look(job)).cloned();
        let offered = self.jobs.iter().filter(|job| job.step() == Some(Step::Check)).map(|job| job.offered).max();
        // Whoever has the looks has the next one as well.
        let last = self.jobs.iter().filter(|job| job.step() == Some(Step::Check)).max_by_key(|job| job.nth).cloned();
        self.jobs.retain(|job| !is_look(job));
        let nth = self.jobs.iter().filter(|job| job.step() == Some(Step::Check)).map(|job| job.nth.saturating_add(1));
        let nth = nth.max().unwrap_or(0);
        let (owner, called_in) = first.or(last).map(|job| (job.owner, job.called_in)).unwrap_or_default();
        self.jobs.push(LiveJob {
            step: Step::Check.name().into(),
            nth,
            at,
            earliest: at,
            latest: at + plan::spans::CHECKING,
            lasts_min: plan::spans::CHECKING.num_minutes(),
            owner,
            state: JobState::Waiting,
            call_at: Some(at),
            calls: 0,
            rungs: Vec::new(),
            reached: Vec::new(),
            called_in,
            denied: false,
            asked: None,
            offered: offered.unwrap_or(0),
            told: None,
            taken_for: None,
        });
        sort(&mut self.jobs);
    }

    /// Off the heat, the two hours to the fridge run from there, not from carving; kept hot, from when that was last read. They run out when
    /// they do, wherever dinner or the work left over would put the job.
    fn count_from_the_heat(&self, jobs: &mut [LiveJob]) {
        let is = |job: &LiveJob, step: Step| job.step == step.name();
        let Some(limit) = kept_hot::known(self).map(|from| from + hot_day::most(self)) else { return };
        let carve = jobs.iter().find(|job| is(job, Step::Carve)).map(|job| (job.at, job.state == JobState::Waiting));
        // Before it is even carved there are no leftovers to call for: the limit alone is said then.
        let unsaid = carve.is_some_and(|(at, waits)| at >= if waits { limit - CALLED_BEFORE } else { limit });
        let called = carve.map_or(limit - CALLED_BEFORE, |(at, _)| at.clamp(limit - CALLED_BEFORE, limit));
        let ahead = |job: &&mut LiveJob| is(job, Step::Chill) && job.nth == 0 && job.state == JobState::Waiting;
        for job in jobs.iter_mut().filter(ahead).filter(|job| job.latest > limit) {
            job.latest = limit;
            if unsaid {
                job.at = job.at.min(limit);
                job.call_at = None;
            } else {
                job.at = job.at.min(called);
                job.call_at = job.call_at.map(|at| at.min(job.at));
            }
            job.earliest = job.earliest.min(job.at);
        }
        // And once it is over nobody is called to carve what may have stood too long.
        let over = !self.held_hot && self.limits_called.iter().any(|name| name == CHILL_LIMIT);
        for job in jobs.iter_mut().filter(|job| over && is(job, Step::Carve) && job.state == JobState::Waiting) {
            job.call_at = None;
        }
    }

    /// Carved after the hour of dinner, it is eaten after that: nobody is called for leftovers from a full plate, unless the two hours
    /// run out.
    fn eat_after_carving(&self, jobs: &mut [LiveJob]) {
        const EATING: TimeDelta = TimeDelta::minutes(45);
        let carved = self.facts.iter().find(|fact| fact.step == Step::Carve.name() && fact.done).map(|fact| fact.at);
        let Some(carved) = carved.filter(|at| self.wish.dinner.is_some_and(|dinner| *at > dinner)) else { return };
        let ahead = |job: &&mut LiveJob| job.step() == Some(Step::Chill) && job.state == JobState::Waiting;
        for job in jobs.iter_mut().filter(ahead) {
            let at = job.at.max((carved + EATING).min(job.latest - CALLED_BEFORE));
            job.call_at = job.call_at.map(|call| if job.calls == 0 { call.max(at) } else { call });
            job.at = at;
        }
    }

    /// The job, if the plan has it.
    pub fn job(&self, step: Step, nth: u8) -> Option<&LiveJob> {
        self.jobs.iter().find(|job| job.step == step.name() && job.nth == nth)
    }

    /// The same, to change.
    pub fn job_mut(&mut self, step: Step, nth: u8) -> Option<&mut LiveJob> {
        self.jobs.iter_mut().find(|job| job.step == step.name() && job.nth == nth)
    }

    /// Jobs still ahead that need hands, in order.
    pub fn waiting(&self) -> impl Iterator<Item = &LiveJob> {
        self.jobs.iter().filter(|job| job.state == JobState::Waiting && !job.step().is_some_and(runs_by_itself))
    }

    /// Jobs really still ahead: those taken for done are not.
    pub fn ahead(&self, now: Moment) -> impl Iterator<Item = &LiveJob> {
        // Water changes are over once the bird has gone on, said or taken for so.
        let on = self.job(Step::On, 0).is_some_and(|job| job.state != JobState::Waiting || is_assumed(job, now));
        self.waiting().filter(move |job| !(is_assumed(job, now) || on && job.step() == Some(Step::Water)))
    }

    /// Writes down what happened.
    pub fn record(&mut self, step: Step, nth: u8, at: Moment, done: bool, by: Option<PersonId>) {
        self.facts.retain(|fact| !(fact.step == step.name() && fact.nth == nth));
        self.facts.push(StoredFact { step: step.name().into(), nth, at, done, by });
        if let Some(job) = self.job_mut(step, nth) {
            job.state = if done { JobState::Done { by, at } } else { JobState::Skipped { by, at } };
            job.call_at = None;
        }
        self.settle_what_follows(step, at);
    }

    /// What happened to another bird than the one planned with now.
    pub fn forget(&mut self, other: impl Fn(Step) -> bool) {
        let of_other = |step: Option<Step>| step.is_some_and(&other);
        self.facts.retain(|fact| !of_other(Step::from_name(&fact.step)));
        for job in self.jobs.iter_mut().filter(|job| of_other(job.step())) {
            job.state = JobState::Waiting;
        }
    }

    /// What a step implies of those before it: a bird on the heat is bought and thawed, whether anyone said so or not. Salt
    /// that was never called for, or that someone said was forgotten, was left out.
    fn settle_what_follows(&mut self, step: Step, at: Moment) {
        let over: &[Step] = match step {
            Step::Thaw => &[Step::Buy],
            Step::Salt | Step::Temper => &[Step::Buy, Step::Thaw, Step::Water],
            Step::On => &[Step::Buy, Step::Thaw, Step::Water, Step::Salt, Step::Rest, Step::Temper, Step::Fire],
            Step::Pull => &[Step::On, Step::Check],
            Step::Carve => &[Step::Stand],
            Step::Chill => &[Step::Stand, Step::Carve],
            _ => &[],
        };
        for job in self.jobs.iter_mut().filter(|job| job.state == JobState::Waiting) {
            let Some(before) = job.step().filter(|before| over.contains(before)) else { continue };
            job.call_at = None;
            job.state = match before {
                Step::Salt | Step::Rest if job.calls == 0 || job.denied => JobState::Skipped { by: None, at },
                _ => JobState::Done { by: None, at },
            };
        }
    }

    /// Keeps what stands now, so that the change about to be made can be taken back.
    pub fn remember(&mut self, name: &str, step: Option<Step>, by: Option<PersonId>, at: Moment) {
        self.changes += 1;
        let change = Change {
            number: self.changes,
            name: name.into(),
            step: step.map(|step| step.name().into()),
            by,
            at,
            wish: self.wish.clone(),
            jobs: self.jobs.clone(),
            facts: self.facts.clone(),
            readings: self.readings.len(),
            was_set: Some(self.was_set.clone()),
            inside: self.inside,
        };
        if self.history.len() == HISTORY {
            self.history.remove(0);
        }
        self.history.push(change);
    }
}

/// In order of time; but what is not carved yet is carved before it goes into the fridge, whenever its limit is.
fn sort(jobs: &mut [LiveJob]) {
    let waits = |job: &&LiveJob| job.step() == Some(Step::Carve) && job.state == JobState::Waiting;
    let carve = jobs.iter().find(waits).map(|job| job.at);
    let at = |job: &LiveJob| match job.step() {
        Some(Step::Chill) => carve.map_or(job.at, |carve| job.at.max(carve)),
        _ => job.at,
    };
    jobs.sort_by_key(|job| (at(job), job.step(), job.nth));
}

/// Called, not answered, and long past.
fn is_assumed(job: &LiveJob, now: Moment) -> bool {
    let kind = matches!(
        job.step(),
        Some(Step::Buy | Step::Thaw | Step::Salt | Step::Temper | Step::Fire | Step::On | Step::Dish)
    );
    let after = if job.step() == Some(Step::Dish) { DISH_TAKEN_FOR_DONE } else { TAKEN_FOR_DONE };
    kind && !job.denied && job.state == JobState::Waiting && job.calls > 0 && now - job.at > after
}

/// A waiting job whose time moved by enough to be told: step, which, before, after.
pub type Shift = (Step, u8, Moment, Moment);

/// Which waiting jobs stand elsewhere than before.
pub fn shifts(before: &[LiveJob], after: &LivePlan) -> Vec<Shift> {
    after
        .jobs
        .iter()
        .filter(|job| job.state == JobState::Waiting)
        .filter_map(|job| {
            let step = job.step()?;
            let was = before.iter().find(|old| old.step == job.step && old.nth == job.nth)?;
            let moved = (job.at - was.at).abs() >= WORTH_TELLING;
            // One that is called for already is due, whatever minute stands on it.
            let told = !runs_by_itself(step) && !matches!(step, Step::Check | Step::Water) && job.calls == 0;
            (moved && told).then_some((step, job.nth, was.at, job.at))
        })
        .collect()
}

/// Changes of water that came in later go to whoever changes it, or thaws, as the first ones did. Nobody's stay nobody's where the others
/// of before were given back.
fn water_to_its_owner(jobs: &mut [LiveJob], old: &[LiveJob]) {
    let of = |jobs: &[LiveJob], step: Step| -> Option<Option<PersonId>> {
        jobs.iter().rev().find(|job| job.step() == Some(step)).map(|job| job.owner)
    };
    let Some(owner) = of(old, Step::Water).or_else(|| of(jobs, Step::Thaw)).flatten() else { return };
    let known = |job: &LiveJob| old.iter().any(|old| old.step == job.step && old.nth == job.nth);
    for job in jobs.iter_mut() {
        if job.step() == Some(Step::Water) && job.state == JobState::Waiting && job.owner.is_none() && !known(job) {
            job.owner = Some(owner);
            job.taken_for = Some(job.at);
        }
    }
}

fn live_job(job: &Job, kept: Option<&LiveJob>, now: Moment) -> LiveJob {
    let mut live = LiveJob {
        step: job.step.name().into(),
        nth: job.nth,
        at: job.at,
        earliest: job.earliest,
        latest: job.latest,
        lasts_min: job.lasts.num_minutes(),
        owner: None,
        state: JobState::Waiting,
        call_at: Some(job.at),
        calls: 0,
        rungs: Vec::new(),
        reached: Vec::new(),
        called_in: Vec::new(),
        denied: false,
        asked: None,
        offered: 0,
        told: None,
        taken_for: None,
    };
    let Some(old) = kept else { return live };
    live.owner = old.owner;
    live.state = old.state;
    live.denied = old.denied;
    live.asked = old.asked;
    live.offered = old.offered;
    live.told = old.told;
    live.taken_for = old.taken_for;
    live.called_in.clone_from(&old.called_in);
    let called_and_not_moved_on = old.calls > 0 && job.at <= now.max(old.at) + TimeDelta::minutes(5);
    if old.state != JobState::Waiting || called_and_not_moved_on {
        live.calls = old.calls;
        live.rungs.clone_from(&old.rungs);
        live.reached.clone_from(&old.reached);
        // Called for, and meanwhile moved to later: it is not late before then.
        live.call_at = old.call_at.map(|at| if job.at > now { at.max(job.at) } else { at });
    }
    live
}

/// A plan solved again: the jobs that moved or what stands against it, and the forecast it was solved by.
pub struct Solved {
    /// Which jobs moved.
    pub outcome: Result<Vec<Shift>, Box<Conflict>>,
    /// The forecast, where there is one.
    pub sight: Option<Foresight>,
}

impl Sitting<'_> {
    /// What the live plan is solved by.
    pub(super) fn light(&self) -> Light {
        let host = self.room.plan.as_ref().and_then(|plan| self.people.get(&plan.host));
        let shelves = host.and_then(|host| host.fridge_shelves);
        Light { zone: self.zone_or_utc(), now: self.now, profile: forecast::profile(self), shelves }
    }

    /// Solves the live plan again as of now and takes over the times. `Err` carries what stands against it; until someone
    /// has chosen, the jobs are called by the nearest plan that works.
    pub(super) fn resolve(&mut self) -> Result<Vec<Shift>, Box<Conflict>> {
        self.solve_again().outcome
    }

    /// The same, with the forecast behind it.
    pub(super) fn solve_again(&mut self) -> Solved {
        let light = self.light();
        // What was thrown away is not planned any more.
        let Some(plan) = self.room.plan.as_mut().filter(|plan| !spoiled::is_gone(plan)) else {
            return Solved { outcome: Ok(Vec::new()), sight: None };
        };
        let sight = Foresight::of(plan, &light);
        let outcome = match plan.solve_seen(sight.as_ref(), &light) {
            None => Ok(Vec::new()),
            Some(Ok(schedule)) => {
                let before = plan.jobs.clone();
                plan.adopt(&schedule, light.now);
                Ok(shifts(&before, plan))
            }
            Some(Err(conflict)) => {
                if let Some(meanwhile) = plan.wish.dinner.and_then(|dinner| conflict.meanwhile(dinner)) {
                    let told = plan.clash.take();
                    plan.adopt(meanwhile, light.now);
                    plan.clash = told;
                }
                Err(Box::new(conflict))
            }
        };
        if let Some(sight) = &sight {
            let finish = sight.finish();
            (plan.ready_from, plan.ready_to) = (Some(finish.p10), Some(finish.p90));
            // The call to pull asks to measure too.
            let pull = plan.job(Step::Pull, 0).map_or(finish.p50, |job| job.at);
            if sight.is_done() || sight.next_look() >= pull - TimeDelta::minutes(5) {
                plan.jobs.retain(|job| job.step() != Some(Step::Check) || job.state != JobState::Waiting);
            } else {
                plan.look(sight.next_look());
            }
        }
        Solved { outcome, sight }
    }
}
