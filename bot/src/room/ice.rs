//! The bird is found with ice inside after its time to thaw: cold water finishes it, or the oven has it as it is, and the
//! rest is planned again.
//!
//! A plan that counts it as thawed would put it on the heat as it is. Whoever looks knows better than the plan.

use super::live::{self, Light};
use super::sitting::button;
use super::state::{JobState, LiveJob, LivePlan};
use super::{Sitting, board, jobs, undo};
use crate::words::{Arg, Text};
use carvetime_core::bird::Condition;
use carvetime_core::plan::{Change as PlanChange, Salting, Step, Thawing};
use carvetime_core::roast::Cooker;
use chrono::TimeDelta;

/// What is to be done again, or for the first time, with a bird that is not thawed.
const AGAIN: [Step; 6] = [Step::Thaw, Step::Water, Step::Salt, Step::Rest, Step::Temper, Step::Fire];

/// With so long to go before it is salted or goes on it may well be frozen still.
const SOON: TimeDelta = TimeDelta::hours(12);

/// `false`: the plan has nothing more to thaw; the bird was bought fresh, or is on the heat.
pub(super) fn found(sitting: &mut Sitting<'_>) -> bool {
    let (now, by, zone, light) = (sitting.now, sitting.speaker(), sitting.zone_or_utc(), sitting.light());
    let Some(plan) = sitting.room.plan.as_mut() else { return false };
    let frozen = plan.order(zone).is_some_and(|order| order.bird.condition != Condition::Fresh);
    if !frozen || plan.on_since(now).is_some() || plan.job(Step::On, 0).is_none() {
        return false;
    }
    // On the second day of three nobody wonders.
    let waiting = |step: Step| plan.job(step, 0).filter(|job| job.state == JobState::Waiting);
    let needed = waiting(Step::Salt).or_else(|| waiting(Step::Temper)).or_else(|| waiting(Step::On)).map(|job| job.at);
    if let Some(at) = needed.filter(|at| *at > now + SOON) {
        sitting.answer(Text::new("room-ice-early").with("when", Arg::DayClock(at)));
        return true;
    }
    plan.remember("mended", None, by, now);
    let before = plan.jobs.clone();
    let is_salted =
        |job: &LiveJob| job.step() == Some(Step::Salt) && matches!(job.state, JobState::Done { by: Some(_), .. });
    if plan.jobs.iter().any(is_salted) {
        plan.wish.salting = Some(Salting::None.name().to_owned());
    }
    plan.wish.condition = Some(Condition::PartThawed.name().to_owned());
    plan.wish.at_home = Some(true);
    let again = |step: Option<Step>| step.is_some_and(|step| AGAIN.contains(&step));
    plan.facts.retain(|fact| !again(Step::from_name(&fact.step)));
    plan.jobs.retain(|job| is_salted(job) || !again(job.step()));
    let thawing = best(plan, &light);
    plan.wish.thawing = Some(thawing.name().to_owned());
    let undo = undo::newest(plan);
    let solved = sitting.resolve();
    let Some(plan) = &sitting.room.plan else { return true };
    let mut shifts = live::shifts(&before, plan);
    shifts.retain(|(step, ..)| *step != Step::Thaw);
    let at = |step| plan.job(step, 0).map(|job| job.at).filter(|at| *at > now);
    let text = match (thawing, at(Step::Thaw), at(Step::On)) {
        (Thawing::CookFrozen, _, Some(on)) => Text::new("room-ice-roast").with("when", Arg::DayClock(on)),
        (Thawing::CookFrozen, ..) => Text::new("room-ice-roast-now"),
        (_, Some(water), _) => Text::new("room-ice").with("when", Arg::DayClock(water)),
        _ => Text::new("room-ice-now"),
    };
    let done = Text::new("room-ice-done").with("target", Arg::Temperature(super::target()));
    let done = (thawing == Thawing::CookFrozen).then_some(done);
    let say = sitting.answer(text).lines(done).key("ice").row([button("room-button-undo", &undo)]);
    match solved {
        Ok(_) => {
            say.lines(jobs::shift_lines(&shifts));
        }
        Err(conflict) => jobs::tell_conflict(sitting, &conflict),
    }
    board::refresh(sitting);
    true
}

/// Cold water, unless it leaves no time and an oven may have the bird as it is: whatever feeds people sooner.
fn best(plan: &LivePlan, light: &Light) -> Thawing {
    let may_roast =
        plan.order(light.zone).is_some_and(|order| order.heat.cooker != Cooker::Smoker && !order.bird.stuffed);
    // The hour at which dinner could be; that of the plan where it can stay.
    let dinner = |thawing: Thawing| {
        let mut tried = plan.clone();
        tried.wish.thawing = Some(thawing.name().to_owned());
        match tried.solve(light)? {
            Ok(_) => tried.wish.dinner,
            Err(conflict) => conflict.offers.iter().find_map(|offer| match offer.change {
                PlanChange::Dinner(at) => Some(at),
                _ => None,
            }),
        }
    };
    let (water, roast) = (dinner(Thawing::ColdWater), dinner(Thawing::CookFrozen).filter(|_| may_roast));
    match (water, roast) {
        (Some(water), Some(roast)) if roast < water => Thawing::CookFrozen,
        (None, Some(_)) => Thawing::CookFrozen,
        _ => Thawing::ColdWater,
    }
}
