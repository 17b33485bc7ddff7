//! "Pie is in", "the rolls are out", "it's in" from whoever was just called for a dish: its job is settled, and the bird's is not.
//!
//! A dish is called once, when it is begun. That it is out or done says that it was. Owns no word: see the `talk-dish-` entries of the
//! lexicon.

use super::action::{Action, JobRef};
use super::sitting::button;
use super::state::{JobState, LiveJob, LivePlan};
use super::{RoomKind, Sitting, jobs, of_dishes, plan_words};
use crate::reading::{self, ReportKind};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;
use chrono::TimeDelta;

/// After so long "it's in" is of the last thing that was called no more.
const JUST_CALLED: TimeDelta = TimeDelta::minutes(45);
/// A dish begun longer before its hour is asked about.
const EARLY: TimeDelta = TimeDelta::hours(3);
/// The bird's own job, so near, may be meant as well.
const NEAR: TimeDelta = TimeDelta::minutes(30);

/// What is said to have happened.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Said {
    In,
    Out,
    Done,
}

/// `false`: the words settle no dish.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let asks = text.contains(['?', '¿', '/']) || reading::begins_as_question(text, sitting.lexicon());
    if sitting.room.plan.is_none() || asks || text.contains(|c: char| c.is_ascii_digit()) {
        return false;
    }
    named(sitting, text, addressed) || just_called(sitting, text, addressed)
}

/// "It's in", below the call of that dish. `false`: it says something else.
pub(super) fn replied(sitting: &mut Sitting<'_>, text: &str, it: JobRef) -> bool {
    let settles =
        it.step == Step::Dish && !reading::names_a_bird(text, sitting.lexicon()) && said(sitting, text).is_some();
    if settles {
        jobs::done(sitting, it);
    }
    settles
}

/// "The pie is in the oven."
fn named(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(spoken) = of_dishes::spoken_of(sitting, text) else { return false };
    let Some(said) = of_words(sitting, &spoken.rest) else { return false };
    let Some((it, job)) = of_dishes::job(sitting, spoken.place) else { return false };
    // Of stuffing in a stuffed bird other rules hold.
    let plan = sitting.room.plan.as_ref();
    let dish = plan.and_then(|plan| plan.wish.dishes.get(usize::from(spoken.place))?.as_ref());
    if dish.is_some_and(|dish| dish.hot_through) && plan.is_some_and(|plan| plan.wish.stuffed == Some(true)) {
        return false;
    }
    if job.state != JobState::Waiting {
        if addressed {
            sitting.answer(Text::new("room-ok"));
        }
        return true;
    }
    if job.calls == 0 && job.at - sitting.now > EARLY {
        // "The rolls are out", days before, is of no oven.
        if said == Said::Out {
            return false;
        }
        let text = Text::new("room-report-early")
            .with("what", Arg::from(plan_words::step_name(it.step, it.nth)))
            .with("when", Arg::DayClock(job.at));
        sitting.answer(text).row([button("room-button-done", &Action::Done(it))]);
        return true;
    }
    jobs::done(sitting, it);
    true
}

/// "It's in", "done", of the dish whose call came last, where nothing of the bird can be meant.
fn just_called(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some((it, job)) = called(sitting, text) else { return false };
    if of_dishes::waits(&job) {
        jobs::done(sitting, it);
    } else if addressed {
        sitting.answer(Text::new("room-ok"));
    }
    true
}

/// Whether it is so of a dish the speaker has: with several birds nothing else tells which plan is meant.
pub(super) fn is_of_own(sitting: &Sitting<'_>, text: &str) -> bool {
    called(sitting, text).is_some_and(|(_, job)| job.owner.is_some() && job.owner == sitting.speaker())
}

fn called(sitting: &Sitting<'_>, text: &str) -> Option<(JobRef, LiveJob)> {
    let said = said(sitting, text).filter(|_| !reading::names_a_bird(text, sitting.lexicon()))?;
    let (now, who, routed) = (sitting.now, sitting.speaker(), sitting.routed());
    let plan = sitting.room.plan.as_ref()?;
    let theirs = |job: &&LiveJob| match job.owner {
        Some(owner) => Some(owner) == who,
        None => !routed || who.is_some_and(|who| job.reached.contains(&who)),
    };
    let fresh = |job: &&LiveJob| match job.state {
        JobState::Waiting => job.step() == Some(Step::Dish) && job.calls > 0 && now - job.at <= JUST_CALLED,
        // Said once more of the one they have just begun.
        JobState::Done { by, at } => {
            job.step() == Some(Step::Dish) && by.is_some() && by == who && now - at <= NEAR && said != Said::Done
        }
        JobState::Skipped { .. } => false,
    };
    let job = plan.jobs.iter().filter(fresh).filter(theirs).max_by_key(|job| job.at)?;
    // Two dishes called at once: nobody can tell which.
    let as_late = |other: &&LiveJob| of_dishes::waits(other) && fresh(other) && theirs(other) && other.at == job.at;
    if plan.jobs.iter().filter(as_late).count() > 1 || is_of_the_bird(plan, job, said, sitting) {
        return None;
    }
    Some((JobRef { serial: plan.serial, step: Step::Dish, nth: job.nth }, job.clone()))
}

/// Whether a job of the bird may be meant by it: one that is as near. Whoever has the dish alone means the dish.
fn is_of_the_bird(plan: &LivePlan, dish: &LiveJob, said: Said, sitting: &Sitting<'_>) -> bool {
    let (now, who) = (sitting.now, sitting.speaker());
    let cook = sitting.room.kind == RoomKind::Private || Some(plan.host) == who;
    let could = |job: &LiveJob| cook || job.owner.is_some() && job.owner == who || dish.owner.is_none();
    let waits = |step: Step| plan.job(step, 0).filter(|job| job.state == JobState::Waiting && could(job));
    match said {
        Said::In => [Step::On, Step::Fire].into_iter().filter_map(waits).any(|job| {
            let near = job.at <= now + NEAR && now - job.at <= JUST_CALLED || job.denied;
            near && plan.on_since(now).is_none()
        }),
        Said::Out => waits(Step::Pull).is_some() && plan.on_since(now).is_some() && !plan.is_off(),
        // What was called last is meant.
        Said::Done => {
            plan.waiting().any(|job| job.step() != Some(Step::Dish) && job.calls > 0 && job.at >= dish.at && could(job))
        }
    }
}

/// What a text without a name says has happened.
fn said(sitting: &Sitting<'_>, text: &str) -> Option<Said> {
    let lexicon = sitting.lexicon();
    if let Some(report) = reading::read_report(text, lexicon) {
        let says = |step: Step| [report.step, report.or].contains(&Some(step));
        return match () {
            () if report.kind != ReportKind::Done => None,
            () if says(Step::On) || says(Step::Fire) => Some(Said::In),
            () if says(Step::Pull) || says(Step::Temper) => Some(Said::Out),
            () => report.step.is_none().then_some(Said::Done),
        };
    }
    of_words(sitting, &lexicon.talk_words(text))
}

/// The same of words that are of nothing else.
fn of_words(sitting: &Sitting<'_>, words: &[String]) -> Option<Said> {
    const GROUPS: [&str; 6] = ["dish-in", "dish-out", "dish-soft", "dish-link", "manners", "assent"];
    let found = reading::made_of(words, &GROUPS, sitting.lexicon())?;
    if found.contains(&"dish-in") {
        return Some(Said::In);
    }
    found.contains(&"dish-out").then_some(Said::Out)
}
