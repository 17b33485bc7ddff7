//! The bird is found with ice inside after its time to thaw: cold water finishes it, or the oven has it as it is, and the
//! rest is planned again.
//!
//! A plan that counts it as thawed would put it on the heat as it is. Whoever looks knows better than the plan.

use super::live::{self, Light};
use super::sitting::button;
use super::state::{JobState, LiveJob, LivePlan};
use super::turn::Urgency;
use super::{Sitting, What, board, jobs, order, swap, undo};
use crate::reading::{self, Lexicon};
use crate::words::{Arg, Text};
use carvetime_core::bird::Condition;
use carvetime_core::plan::{Change as PlanChange, Conflict, Moment, Salting, Step, Thawing, spans};
use carvetime_core::quantity::fahrenheit;
use carvetime_core::roast::Cooker;
use carvetime_core::thaw::{WATER_CHANGE_EVERY, cold_water};
use chrono::{TimeDelta, Timelike};
use chrono_tz::Tz;

/// What is to be done again, or for the first time, with a bird that is not thawed.
const AGAIN: [Step; 6] = [Step::Thaw, Step::Water, Step::Salt, Step::Rest, Step::Temper, Step::Fire];

/// With so long to go before it is salted or goes on it may well be frozen still.
const SOON: TimeDelta = TimeDelta::hours(12);
/// The same of a bird bought fresh, which nobody has planned to thaw: a night and a day in the fridge melt what ice there is. Practice.
const SOON_BOUGHT_FRESH: TimeDelta = TimeDelta::hours(36);

/// Thawed in water it is cooked at once; so long it waits cold for the dinner it was thawed for, and no longer. Practice.
const LONGEST_OUT_OF_WATER: TimeDelta = TimeDelta::hours(8);

/// `false`: the plan has nothing more to thaw; the bird was bought fresh, or is on the heat.
pub(super) fn found(sitting: &mut Sitting<'_>) -> bool {
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let Some(plan) = sitting.room.plan.as_ref() else { return false };
    // Said to be thawed, and it is not.
    let was_frozen = plan.jobs.iter().any(|job| job.step() == Some(Step::Thaw));
    let frozen = plan.order(zone).is_some_and(|order| order.bird.condition != Condition::Fresh || was_frozen);
    if plan.on_since(now).is_some() || plan.job(Step::On, 0).is_none() {
        return false;
    }
    // On the second day of three nobody wonders; a bird sold as fresh may be icy inside as well.
    let waiting = |step: Step| plan.job(step, 0).filter(|job| job.state == JobState::Waiting);
    let salt = waiting(Step::Salt).filter(|_| frozen);
    let needed = salt.or_else(|| waiting(Step::Temper)).or_else(|| waiting(Step::On)).map(|job| job.at);
    let soon = if frozen { SOON } else { SOON_BOUGHT_FRESH };
    if let Some(at) = needed.filter(|at| *at > now + soon) {
        sitting.answer(Text::new("room-ice-early").with("when", Arg::DayClock(look_again(at, zone))));
        return true;
    }
    if !frozen {
        return false;
    }
    again(sitting, Condition::PartThawed)
}

/// When cold water still has the hours it takes for what ice may be left, and people are up.
fn look_again(needed: Moment, zone: Tz) -> Moment {
    const AHEAD: TimeDelta = TimeDelta::hours(8);
    const UP: u32 = 7;
    let at = (needed - AHEAD).with_timezone(&zone);
    let asleep = i64::from(UP.saturating_sub(at.hour())) * 60 - i64::from(at.minute());
    needed - AHEAD + TimeDelta::minutes(asleep.max(0))
}

/// It never left the freezer, whoever thought it had: it thaws from now on, the slow way if that still works. `false`: its thawing was not
/// due yet, or there is nothing to thaw.
pub(super) fn never(sitting: &mut Sitting<'_>) -> bool {
    let now = sitting.now;
    let Some(plan) = &sitting.room.plan else { return false };
    let thaw = plan.jobs.iter().find(|job| job.step() == Some(Step::Thaw));
    let begun = thaw.is_some_and(|job| matches!(job.state, JobState::Done { .. }) || job.at <= now);
    if !begun || plan.on_since(now).is_some() || plan.job(Step::On, 0).is_none() {
        return false;
    }
    let heard = again(sitting, Condition::Frozen);
    // Someone has said that it is not thawing: it is not taken for begun a second time.
    if let Some(plan) = sitting.room.plan.as_mut() {
        for job in plan.jobs.iter_mut().filter(|job| job.step() == Some(Step::Thaw)) {
            job.denied = true;
        }
    }
    heard
}

/// It thaws as far as the plan goes, and nobody has said that it does.
pub(super) fn is_taken_to_thaw(sitting: &Sitting<'_>) -> bool {
    let thaw = sitting.room.plan.as_ref().and_then(|plan| plan.job(Step::Thaw, 0));
    thaw.is_some_and(|job| job.state == JobState::Waiting && job.at <= sitting.now)
}

/// Begun only now, its thaw as planned leaves no dinner.
pub(super) fn is_too_late_for_the_fridge(sitting: &Sitting<'_>) -> bool {
    let (light, Some(plan)) = (sitting.light(), &sitting.room.plan) else { return false };
    let mut tried = plan.clone();
    let waits = |job: &&mut LiveJob| job.state == JobState::Waiting && job.step().is_some_and(|it| AGAIN.contains(&it));
    for job in tried.jobs.iter_mut().filter(waits) {
        swap::uncall(job);
        job.denied |= job.step() == Some(Step::Thaw);
    }
    matches!(tried.solve(&light), Some(Err(_)))
}

/// Planned as a fresh bird, and it is frozen: it thaws from now on, the slow way if that still works.
pub(super) fn after_all(sitting: &mut Sitting<'_>) -> bool {
    again(sitting, Condition::Frozen)
}

/// It goes into the oven before its thaw was over, or is `said` to be frozen: it takes as long as a frozen one does, and nobody is called to
/// thaw it.
pub(super) fn goes_on_frozen(plan: &mut LivePlan, zone: Option<Tz>, said: bool, now: Moment) {
    /// With less of it to go the middle is soft enough.
    const NEARLY: TimeDelta = TimeDelta::hours(1);
    let oven = plan.order(zone.unwrap_or(Tz::UTC)).is_some_and(|order| order.heat.cooker != Cooker::Smoker);
    let thaws = |job: &LiveJob| matches!(job.step(), Some(Step::Thaw | Step::Water)) && job.at - now > NEARLY;
    if oven && said {
        plan.wish.condition = Some(Condition::Frozen.name().to_owned());
    }
    if oven && (said || plan.ahead(now).any(thaws)) {
        plan.wish.thawing = Some(Thawing::CookFrozen.name().to_owned());
    }
}

/// "It's in the cold water now", of a bird that thawed in the fridge as far as anyone had said: it is thawed the water's way from here on.
/// `false`: no water is named, or it is thawed, on, or in the water already.
pub(super) fn into_water(sitting: &mut Sitting<'_>) -> bool {
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let What::Said { text, .. } = &sitting.heard.what else { return false };
    let Some(plan) = sitting.room.plan.as_ref().filter(|_| reading::names_water(text, sitting.lexicon())) else {
        return false;
    };
    let in_fridge = plan.wish.thawing.as_deref().is_none_or(|thawing| thawing == Thawing::Fridge.name());
    let frozen = plan.order(zone).is_some_and(|order| order.bird.condition != Condition::Fresh);
    let begun = plan.job(Step::Thaw, 0).is_some_and(|job| matches!(job.state, JobState::Done { .. }));
    let raw = plan.on_since(now).is_none() && !plan.is_off() && plan.job(Step::On, 0).is_some();
    if !(in_fridge && frozen && begun && raw) {
        return false;
    }
    begin_again(sitting, Condition::PartThawed, Some(Thawing::ColdWater));
    // What stands against it is said with the job.
    let _solved = sitting.resolve();
    if let Some(it) = jobs::by_step(sitting, Step::Thaw, None) {
        jobs::done(sitting, it);
    }
    true
}

/// The thaw and what hangs on it begin anew, with a bird in that condition.
fn again(sitting: &mut Sitting<'_>, condition: Condition) -> bool {
    let now = sitting.now;
    let Some((before, thawing)) = begin_again(sitting, condition, None) else { return false };
    let Some(plan) = sitting.room.plan.as_ref() else { return false };
    let undo = undo::newest(plan);
    let solved = sitting.resolve();
    let Some(plan) = &sitting.room.plan else { return true };
    let mut shifts = live::shifts(&before, plan);
    shifts.retain(|(step, ..)| *step != Step::Thaw);
    let at = |step| plan.job(step, 0).map(|job| job.at).filter(|at| *at > now);
    let looked = condition == Condition::PartThawed;
    let text = match (thawing, at(Step::Thaw), at(Step::On)) {
        (Thawing::CookFrozen, _, Some(on)) => {
            Text::new(if looked { "room-ice-roast" } else { "room-never-roast" }).with("when", Arg::DayClock(on))
        }
        (Thawing::CookFrozen, ..) => Text::new(if looked { "room-ice-roast-now" } else { "room-never-roast-now" }),
        (Thawing::Fridge, ..) => Text::new("room-never-fridge"),
        (Thawing::FridgeThenWater, ..) => {
            let water = plan.job(Step::Thaw, 1).map_or(now, |job| job.at);
            Text::new("room-never-both").with("when", Arg::DayClock(water))
        }
        (_, Some(water), _) => {
            Text::new(if looked { "room-ice" } else { "room-never-water" }).with("when", Arg::DayClock(water))
        }
        _ => Text::new(if looked { "room-ice-now" } else { "room-never-water-now" }),
    };
    let done = Text::new("room-ice-done").with("target", Arg::Temperature(super::target()));
    let done = (thawing == Thawing::CookFrozen).then_some(done);
    let moved = jobs::shift_lines(&shifts).into_iter().filter(|_| solved.is_ok());
    sitting.answer(text).lines(done).key("ice").row([button("room-button-undo", &undo)]).lines(moved);
    close(sitting, solved.err().as_deref())
}

/// The same before it is planned: the jobs as they were, and how it thaws now, the way that is `wanted` or the best there is.
fn begin_again(
    sitting: &mut Sitting<'_>,
    condition: Condition,
    wanted: Option<Thawing>,
) -> Option<(Vec<LiveJob>, Thawing)> {
    let (now, by, light) = (sitting.now, sitting.speaker(), sitting.light());
    let plan = sitting.room.plan.as_mut()?;
    plan.remember("mended", None, by, now);
    let before = plan.jobs.clone();
    let is_salted =
        |job: &LiveJob| job.step() == Some(Step::Salt) && matches!(job.state, JobState::Done { by: Some(_), .. });
    if plan.jobs.iter().any(is_salted) {
        plan.wish.salting = Some(Salting::None.name().to_owned());
    }
    plan.wish.condition = Some(condition.name().to_owned());
    plan.wish.at_home = Some(true);
    let anew = |step: Option<Step>| step.is_some_and(|step| AGAIN.contains(&step));
    plan.facts.retain(|fact| !anew(Step::from_name(&fact.step)));
    // To be done anew, by whoever had it.
    for job in plan.jobs.iter_mut().filter(|job| !is_salted(job) && anew(job.step())) {
        job.state = JobState::Waiting;
        (job.calls, job.offered, job.denied) = (0, 0, false);
        (job.call_at, job.told, job.asked) = (None, None, None);
        (job.rungs, job.reached, job.called_in) = Default::default();
    }
    let thawing = wanted.unwrap_or_else(|| match condition {
        Condition::Frozen => slowest(plan, &light).unwrap_or_else(|| best(plan, &light)),
        _ => best(plan, &light),
    });
    plan.wish.thawing = Some(thawing.name().to_owned());
    Some((before, thawing))
}

/// It is thawed, by whoever looked: what was to thaw it is done, and from here on it is a fresh bird in the fridge. `false`: the plan has
/// nothing to thaw.
pub(super) fn gone(sitting: &mut Sitting<'_>) -> bool {
    let (now, by, zone, light) = (sitting.now, sitting.speaker(), sitting.zone_or_utc(), sitting.light());
    let Some(plan) = sitting.room.plan.as_mut() else { return false };
    let frozen = plan.order(zone).is_some_and(|order| order.bird.condition != Condition::Fresh);
    if !frozen || plan.on_since(now).is_some() || plan.job(Step::On, 0).is_none() {
        return false;
    }
    plan.remember("done", Some(Step::Thaw), by, now);
    let before = plan.jobs.clone();
    let soaked = soaked_since(plan, &light, now);
    let thaws = |step: Option<Step>| matches!(step, Some(Step::Buy | Step::Thaw | Step::Water));
    for job in plan.jobs.iter_mut().filter(|job| thaws(job.step()) && job.state == JobState::Waiting) {
        job.state = JobState::Done { by, at: now };
        job.call_at = None;
    }
    match soaked {
        // Out of the water it is cooked at once: it counts as begun so much sooner as it is done sooner.
        Some((nth, begun)) => plan.record(Step::Thaw, nth, begun, true, by),
        None => {
            plan.facts.retain(|fact| !matches!(Step::from_name(&fact.step), Some(Step::Thaw | Step::Water)));
            plan.wish.condition = Some(Condition::Fresh.name().to_owned());
            plan.wish.thawing = None;
            plan.wish.at_home = Some(true);
        }
    }
    let undo = undo::newest(plan);
    rest_as_it_goes(plan, &light);
    let solved = sitting.resolve();
    let Some(plan) = &sitting.room.plan else { return true };
    let shifts = live::shifts(&before, plan);
    let next = plan.ahead(now).find(|job| job.step() != Some(Step::Dish)).map(|job| job.at);
    let on = plan.job(Step::On, 0).map(|job| job.at).filter(|_| soaked.is_some());
    let soon = now + TimeDelta::hours(1);
    let text = match next.filter(|at| *at > soon) {
        // Out of the water it is cooked, and not kept.
        Some(next) if soaked.is_some() => {
            let on = on.unwrap_or(next);
            let id = if on - now > LONGEST_OUT_OF_WATER { "room-thawed-water-far" } else { "room-thawed-water" };
            Text::new(id)
                .with("when", Arg::DayClock(on))
                .with("cold", Arg::Temperature(fahrenheit(40.0)))
                .with("target", Arg::Temperature(super::target()))
        }
        Some(at) => Text::new("room-thawed").with("when", Arg::DayClock(at)),
        None => Text::new("room-thawed-now"),
    };
    let moved = jobs::shift_lines(&shifts).into_iter().filter(|_| solved.is_ok());
    sitting.answer(text).row([button("room-button-undo", &undo)]).lines(moved);
    close(sitting, solved.err().as_deref())
}

/// When a bird put into cold water hours too early is thawed: from then it waits in the fridge. `None`: it goes on out of the water, or
/// nobody has put it in.
pub(super) fn waits_from(plan: &LivePlan, zone: Tz) -> Option<Moment> {
    let order = plan.order(zone).filter(|order| order.bird.condition != Condition::Fresh)?;
    let last = match order.thawing {
        Thawing::ColdWater => 0,
        Thawing::FridgeThenWater => 1,
        Thawing::Fridge | Thawing::CookFrozen => return None,
    };
    let thaw = plan.job(Step::Thaw, last)?;
    let begun = plan.facts.iter().find(|fact| fact.done && fact.step == thaw.step && fact.nth == thaw.nth)?.at;
    let thawed = begun + TimeDelta::minutes(thaw.lasts_min);
    let on = plan.job(Step::On, 0).filter(|job| job.state == JobState::Waiting)?.at;
    (on - thawed > spans::THAWED_EARLY).then_some(thawed)
}

/// It went into the water hours too early: what to do with it once it is thawed, or to stop until it was wanted there.
pub(super) fn told_early(sitting: &mut Sitting<'_>, planned: &LiveJob) {
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let Some(plan) = sitting.room.plan.as_ref() else { return };
    let Some((thawed, on)) = waits_from(plan, zone).zip(plan.job(Step::On, 0).map(|job| job.at)) else { return };
    let undo = undo::newest(plan);
    let cold = Arg::Temperature(fahrenheit(40.0));
    // No water thaw takes a day: the fridge was to do it.
    let in_fridge = planned.lasts_min >= TimeDelta::days(1).num_minutes();
    let text = if in_fridge && thawed > now {
        let text = Text::new("room-thaw-water").with("thawed", Arg::DayClock(thawed)).with("cold", cold);
        text.with("on", Arg::DayClock(on)).with("every", Arg::Span(WATER_CHANGE_EVERY))
    } else if thawed <= now {
        let text = Text::new("room-thaw-long").with("thawed", Arg::DayClock(thawed)).with("cold", cold);
        text.with("limit", Arg::Span(spans::ROOM_MOST))
    } else {
        let text = Text::new("room-thaw-early").with("thawed", Arg::DayClock(thawed)).with("cold", cold);
        text.with("on", Arg::DayClock(on)).with("water", Arg::DayClock(planned.at))
    };
    sitting.answer(text).urgency(Urgency::Safety).row([button("room-button-undo", &undo)]);
}

/// "Put it in cold water", where the fridge was to thaw it: the water is changed every half hour, whatever was planned.
pub(super) fn in_water(plan: &mut LivePlan, zone: Tz, heard: &What, lexicon: &'static Lexicon) {
    let in_fridge = plan.wish.thawing.as_deref().is_none_or(|thawing| thawing == Thawing::Fridge.name());
    let What::Said { text, .. } = heard else { return };
    if in_fridge && reading::names_water(text, lexicon) {
        plan.wish.thawing = Some(Thawing::ColdWater.name().to_owned());
        let lasts = plan.order(zone).and_then(|order| cold_water(&order.bird)).map(|water| water.thaw.time.high);
        if let Some((job, lasts)) = plan.job_mut(Step::Thaw, 0).zip(lasts) {
            job.lasts_min = lasts.num_minutes();
        }
    }
}

/// The last change of water is none: by then it is thawed, and waits in the fridge.
pub(super) fn taken_out(plan: &LivePlan, job: &LiveJob, zone: Tz) -> Option<Text> {
    waits_from(plan, zone).filter(|thawed| job.at >= *thawed)?;
    let on = plan.job(Step::On, 0)?.at;
    Some(Text::new("room-thaw-out").with("cold", Arg::Temperature(fahrenheit(40.0))).with("on", Arg::DayClock(on)))
}

/// What stands against the plan now, if anything does, and the board behind the answer.
fn close(sitting: &mut Sitting<'_>, conflict: Option<&Conflict>) -> bool {
    if let Some(conflict) = conflict {
        jobs::tell_conflict(sitting, conflict);
    }
    board::refresh(sitting);
    true
}

/// What was to be salted straight out of the water has a night to rest now, be it a short one.
fn rest_as_it_goes(plan: &mut LivePlan, light: &Light) {
    let Some((order, Err(conflict))) = plan.order(light.zone).zip(plan.solve(light)) else { return };
    let shorter = conflict.offers.iter().find(|offer| matches!(offer.change, PlanChange::ShorterRest));
    if let Some(offer) = shorter {
        order::absorb(&mut plan.wish, &offer.change.apply(&order));
        plan.adopt(&offer.schedule, light.now);
    }
}

/// It lies in water: when that would have had to begin for it to be thawed now as planned. `None`: it thaws in the fridge, or nobody has
/// put it into the water yet.
fn soaked_since(plan: &LivePlan, light: &Light, now: Moment) -> Option<(u8, Moment)> {
    plan.order(light.zone).filter(|order| order.thawing == Thawing::ColdWater)?;
    let water = plan.jobs.iter().filter(|job| job.step() == Some(Step::Water));
    let end = water.map(|job| job.at).max()? + WATER_CHANGE_EVERY;
    let thaw = plan.jobs.iter().filter(|job| job.step() == Some(Step::Thaw)).max_by_key(|job| job.nth)?;
    let begun = plan.facts.iter().find(|fact| fact.done && fact.step == Step::Thaw.name() && fact.nth == thaw.nth)?.at;
    Some((thaw.nth, begun - (end - now).max(TimeDelta::zero())))
}

/// The slowest way to thaw it that still brings it to the table as planned.
fn slowest(plan: &LivePlan, light: &Light) -> Option<Thawing> {
    [Thawing::Fridge, Thawing::FridgeThenWater, Thawing::ColdWater].into_iter().find(|thawing| {
        let mut tried = plan.clone();
        tried.wish.thawing = Some(thawing.name().to_owned());
        matches!(tried.solve(light), Some(Ok(_)))
    })
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
