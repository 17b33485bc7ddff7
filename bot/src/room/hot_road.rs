//! A bird carried hot to another house: until when it may be eaten, and what a thermometer says of it on the way.
//!
//! The rule is the two-hour rule: out of the heat and not known to be at 140 °F, it is eaten within two hours. Only readings of
//! breast and thigh together move the moment from which they count.

use super::alarms::off_at;
use super::readings::{ONE_LOOK, Spots};
use super::state::{JobState, LiveJob, LivePlan, StoredFact};
use super::{Sitting, hot_day, kept_hot, reheated};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step, spans};
use carvetime_core::quantity::Temperature;
use carvetime_core::safety::{Verdict, left_out};
use chrono::TimeDelta;

/// The job of wrapping it hot.
pub(super) const PACK: (Step, u8) = (Step::Pack, 1);

/// Whether the plan carries its bird hot.
pub(super) fn is_hot(plan: &LivePlan) -> bool {
    let wish = &plan.wish;
    wish.elsewhere == Some(true) && wish.hot == Some(true) && wish.ahead != Some(true)
}

/// Nobody has said that it is cut up or eaten, nor is its dinner long over. Past the hour of dinner nobody is called to carve any more.
pub(super) fn is_whole(plan: &LivePlan, now: Moment) -> bool {
    const EATEN: TimeDelta = TimeDelta::hours(3);
    let cut = |fact: &StoredFact| fact.done && [Step::Carve, Step::Chill].iter().any(|step| fact.step == step.name());
    let settled = plan.job(Step::Carve, 0).is_some_and(|job| job.state != JobState::Waiting);
    !settled && !plan.facts.iter().any(cut) && plan.wish.dinner.is_none_or(|dinner| now - dinner < EATEN)
}

/// When it left the heat, as far as that was said.
fn left_heat(plan: &LivePlan) -> Option<Moment> {
    let said = |(step, nth): (Step, u8)| {
        plan.facts
            .iter()
            .rev()
            .find(|fact| fact.step == step.name() && fact.nth == nth && fact.done)
            .map(|fact| fact.at)
    };
    // Said when it is over, and on the safe side.
    let packed = said(PACK).or(said((Step::Travel, 0))).map(|at| at - spans::PACKING);
    off_at(plan).or(packed)
}

/// When it was last known to be hot.
pub(super) fn last_hot(plan: &LivePlan) -> Option<Moment> {
    let left = left_heat(plan)?;
    let read = read_hot(plan).unwrap_or(left);
    Some(plan.heated_again.map_or(read, |again| again.max(read)))
}

/// When breast and thigh last read hot off the heat.
pub(super) fn read_hot(plan: &LivePlan) -> Option<Moment> {
    kept_hot::read_hot(plan, left_heat(plan)?)
}

/// The two hours after the heat, for what is left over: they count from when it was last known to be hot.
pub(super) fn count(plan: &LivePlan, jobs: &mut [LiveJob]) {
    const CALLED_BEFORE: TimeDelta = TimeDelta::minutes(20);
    let Some(limit) = last_hot(plan).map(|hot| hot + hot_day::most(plan)) else { return };
    let at = |step: Step| jobs.iter().find(|job| job.step == step.name()).map(|job| job.at);
    // Once its hour is past nobody is called to serve it.
    let Some(served) = at(Step::Serve).or(plan.wish.dinner) else { return };
    let called = (served + spans::DINNER).min(limit - CALLED_BEFORE);
    for job in jobs.iter_mut().filter(|job| job.step == Step::Chill.name() && job.state == JobState::Waiting) {
        job.latest = limit;
        // Before it is even served there are no leftovers to call for: the limit alone is said then.
        if called < served {
            job.at = job.at.min(limit);
            job.earliest = job.earliest.min(job.at);
            job.call_at = None;
            continue;
        }
        job.earliest = job.earliest.min(called);
        job.call_at = job.call_at.map(|call| if call == job.at { called } else { call });
        job.at = called;
    }
}

/// What the call to carve adds: by when it is eaten if it has cooled.
pub(super) fn at_table(plan: &LivePlan) -> Option<Text> {
    let by = last_hot(plan).filter(|_| is_hot(plan))? + hot_day::most(plan);
    if let Some(since) = plan.heated_again {
        return Some(reheated::at_table(since));
    }
    Some(Text::new("cook-hot-by").with("by", Arg::Clock(by)))
}

/// Off the heat, and dinner is after its two hours: it keeps hot until then, or it is eaten sooner.
pub(super) fn dinner_too_late(plan: &LivePlan) -> Option<Text> {
    let by = last_hot(plan).filter(|_| is_hot(plan))? + hot_day::most(plan);
    let waits = plan.job(Step::Carve, 0).is_some_and(|job| job.state == JobState::Waiting);
    let late = waits && plan.wish.dinner.is_some_and(|dinner| dinner > by);
    late.then(|| {
        Text::new("cook-hot-dinner-late").with("hot", Arg::Temperature(kept_hot::holds())).with("by", Arg::Clock(by))
    })
}

/// What readings after the heat mean for a bird carried hot; `None` where they mean nothing, or it is eaten.
pub(super) fn meaning(sitting: &Sitting<'_>, spots: &Spots) -> Option<Text> {
    let plan = sitting.room.plan.as_ref().filter(|plan| is_hot(plan) && plan.is_off())?;
    let left = left_heat(plan).filter(|_| is_whole(plan, sitting.now))?;
    let (breast, thigh) = spots.meat();
    let coldest = [breast, thigh].into_iter().flatten().reduce(Temperature::min)?;
    let now = sitting.now;
    let hot = last_hot(plan).unwrap_or(left);
    let both = |enough: fn(Temperature) -> bool| [breast, thigh].iter().all(|spot| spot.is_some_and(enough));
    if let Some(over) = reheated::over(plan) {
        return Some(over);
    }
    // Warmed up again, whether that was said or shows.
    let lately = |at: Moment| now - at <= ONE_LOOK;
    let counts = read_hot(plan).is_some_and(lately);
    let again = plan.heated_again.is_some() || kept_hot::is_hot_enough(coldest) && both(|_| true) && !counts;
    let over = matches!(left_out(hot_day::air(plan), now - hot), Verdict::Discard { .. });
    if again && !over {
        let id = if counts && both(reheated::is_done) { "cook-hot-in-there" } else { "cook-hot-in-more" };
        let text = Text::new(id).with("target", Arg::Temperature(super::target()));
        return Some(text.with("by", Arg::Clock(hot + hot_day::most(plan))));
    }
    if again {
        return Some(Text::new("cook-hot-too-late").with("by", Arg::Clock(hot + hot_day::most(plan))));
    }
    let text = match left_out(hot_day::air(plan), now - hot) {
        _ if kept_hot::is_hot_enough(coldest) && breast.is_some() && thigh.is_some() => Text::new("cook-hot-still"),
        _ if kept_hot::is_hot_enough(coldest) => Text::new("cook-hot-one"),
        Verdict::Discard { .. } => Text::new("cook-hot-over"),
        _ => Text::new("cook-hot-below"),
    };
    Some(
        text.with("hot", Arg::Temperature(kept_hot::holds()))
            .with("off", Arg::Clock(hot))
            .with("by", Arg::Clock(hot + hot_day::most(plan)))
            .with("most", Arg::Span(hot_day::most(plan))),
    )
}
