//! Whoever has a job hears privately that its hour has moved, if others moved it: once, with what was told before.
//!
//! So it is with a dish somebody else has taken off the plan. Looks, changes of water and what is due already are called when they come. Start at [`tell`].

use super::action::{Action, JobRef};
use super::live::runs_by_itself;
use super::sitting::labelled;
use super::state::{JobState, LiveJob, LivePlan};
use super::turn::{Say, To, Urgency};
use super::{PersonId, RoomKind, Sitting, calls, ladder, plan_words};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use chrono::TimeDelta;
use std::collections::BTreeMap;

/// A shift that its owner should hear of.
const WORTH_TELLING: TimeDelta = TimeDelta::minutes(10);
/// A job this near is called before a word about it is read.
const AT_HAND: TimeDelta = TimeDelta::minutes(5);

/// Tells the owners of the plan in hand what has moved in this turn, and notes which hours they know.
pub(super) fn tell(sitting: &mut Sitting<'_>) {
    if sitting.room.kind != RoomKind::Group {
        return;
    }
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_ref() else { return };
    let before = sitting.before.room.plans().into_iter().find(|old| old.serial == plan.serial);
    // What is put away when depends on the heat and the table, and is called in time; it is news when dinner itself moves.
    let dinner_moved = before.is_some_and(|old| old.wish.dinner != plan.wish.dinner);
    let known: Vec<Option<Moment>> = plan.jobs.iter().map(|job| known(job, before)).collect();
    let mut moved: BTreeMap<PersonId, News> = BTreeMap::new();
    for (job, was) in plan.jobs.iter().zip(&known) {
        let (Some(owner), Some(step), Some(was)) = (job.owner, job.step(), *was) else { continue };
        let far = (job.at - was).abs() >= WORTH_TELLING && job.at > now + AT_HAND;
        let follows = matches!(step, Step::Chill | Step::Leftovers) && !dinner_moved;
        if far && !follows && is_told(job, step) && Some(owner) != sitting.speaker() && is_reachable(sitting, owner) {
            let line = Text::new("room-shift")
                .with("what", Arg::from(plan_words::step_name(step, job.nth)))
                .with("was", Arg::DayClock(was))
                .with("is", Arg::DayClock(job.at));
            let it = JobRef { serial: plan.serial, step, nth: job.nth };
            let news = moved.entry(owner).or_default();
            news.lines.push(line);
            news.asleep.extend(ladder::wants_asking(sitting, job, step).then_some(it));
        }
    }
    let speaker = sitting.speaker();
    let taken_off = taken_off(sitting, before, plan);
    let stood = |job: &LiveJob| {
        before
            .and_then(|plan| plan.jobs.iter().find(|old| old.step == job.step && old.nth == job.nth))
            .map(|old| old.at)
    };
    if let Some(plan) = sitting.room.plan.as_mut() {
        for (job, was) in plan.jobs.iter_mut().zip(known) {
            // Whoever moves their own job knows when it comes.
            let moved = stood(job).is_some_and(|was| was != job.at);
            if moved && job.owner.is_some() && job.owner == speaker && job.taken_for.is_some() {
                job.taken_for = Some(job.at);
            }
            let small = was.is_some_and(|was| (job.at - was).abs() < WORTH_TELLING);
            job.told = if job.owner.is_none() { None } else { was.filter(|_| small).or(Some(job.at)) };
        }
    }
    for (owner, gone) in taken_off {
        let text = Text::new("sharing-dish-gone").with("what", Arg::List(gone));
        let mut say = Say::of(To::Person(owner), calls::from(sitting).into_iter().chain([text]).collect());
        say.urgency(Urgency::Due);
        sitting.say(say);
    }
    for (owner, News { lines, asleep }) in moved {
        let asked = (!asleep.is_empty()).then(|| Text::new("sharing-moved-asleep"));
        let text =
            calls::from(sitting).into_iter().chain([Text::new("sharing-moved")]).chain(lines).chain(asked).collect();
        let mut say = Say::of(To::Person(owner), text);
        say.urgency(Urgency::Due);
        for it in asleep {
            let what = || Arg::from(plan_words::step_name(it.step, it.nth));
            let stays = labelled(Text::new("sharing-moved-stays").with("what", what()), &Action::Take(it));
            say.row([stays, labelled(Text::new("sharing-moved-drop").with("what", what()), &Action::Drop(it))]);
        }
        sitting.say(say);
    }
}

/// Whose dishes somebody else has taken off the plan in this turn, by name.
fn taken_off(sitting: &Sitting<'_>, before: Option<&LivePlan>, plan: &LivePlan) -> BTreeMap<PersonId, Vec<Text>> {
    let mut owners: BTreeMap<PersonId, Vec<Text>> = BTreeMap::new();
    let waits = |job: &&LiveJob| job.step() == Some(Step::Dish) && job.state == JobState::Waiting;
    for job in before.iter().flat_map(|plan| &plan.jobs).filter(waits) {
        let dish = |plan: &LivePlan| plan.wish.dishes.get(usize::from(job.nth)).cloned().flatten();
        let gone = before.and_then(dish).filter(|_| dish(plan).is_none());
        let told = job.owner.filter(|owner| Some(*owner) != sitting.speaker() && is_reachable(sitting, *owner));
        if let (Some(dish), Some(owner)) = (gone, told) {
            owners.entry(owner).or_default().push(Text::new("dish-name").with("name", Arg::Verbatim(dish.name)));
        }
    }
    owners
}

/// What one owner is told.
#[derive(Default)]
struct News {
    /// A line for each job that has moved.
    lines: Vec<Text>,
    /// Those that have moved into their quiet hours.
    asleep: Vec<JobRef>,
}

/// The hour its owner knows: what they were told, else the one that stood before this turn.
fn known(job: &LiveJob, before: Option<&LivePlan>) -> Option<Moment> {
    let old = before?.jobs.iter().find(|old| old.step == job.step && old.nth == job.nth);
    // Whoever has just taken it took it as it stands.
    let same = old.filter(|old| job.owner.is_some() && old.owner == job.owner);
    same.map(|old| job.told.unwrap_or(old.at))
}

fn is_told(job: &LiveJob, step: Step) -> bool {
    let open = job.state == JobState::Waiting && job.calls == 0;
    open && !runs_by_itself(step) && !matches!(step, Step::Check | Step::Water)
}

fn is_reachable(sitting: &Sitting<'_>, person: PersonId) -> bool {
    sitting.people.get(&person).is_some_and(|person| person.reachable)
}
