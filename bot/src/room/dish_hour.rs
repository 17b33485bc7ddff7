//! The hour somebody said for a dish, to begin it or to have it ready, beside the hour the plan has for it.

use super::state::LivePlan;
use super::{Sitting, plan_words};
use crate::reading::{Ground, When};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step, clock};
use chrono::{NaiveTime, TimeDelta};

/// So near it is the same hour.
const SAME: TimeDelta = TimeDelta::minutes(15);

/// Whoever said when it is made is told when it has to be, where that is another hour; where a way out is to be picked first, that it was
/// heard. `from`: what is said of the dish begins there. `ready`: it was the hour by which it is ready.
pub(super) fn said(sitting: &mut Sitting<'_>, from: usize, start: Option<When>, ready: bool) {
    let (Some(start), Some(plan)) = (start, &sitting.room.plan) else { return };
    let ground = sitting.table_ground();
    let says = sitting.says.get(from..).unwrap_or_default();
    let added = says.iter().position(|say| say.text.first().is_some_and(|text| text.id == "dish-added"));
    if let Some(at) = added {
        let line = beside(plan, says.get(at).and_then(|say| say.text.first()), start, ready, &ground);
        if let (Some(line), Some(say)) = (line, sitting.says.get_mut(from + at)) {
            say.text.insert(1, line);
        }
        return;
    }
    let Some(dinner) = plan.wish.dinner.filter(|_| plan.adding.is_some()) else { return };
    let text = match start {
        When::Day(said) if said == clock::date(ground.zone, dinner) => return,
        When::Day(said) => Arg::Day(ground.moment(said, NaiveTime::MIN)),
        When::Moment(said) => Arg::DayClock(said),
        When::Hour(hour) => Arg::DayClock(ground.moment(clock::date(ground.zone, dinner), hour)),
    };
    if let Some(say) = sitting.says.iter_mut().skip(from).rfind(|say| say.key.as_deref() == Some("dish")) {
        say.text.insert(0, Text::new("dish-said").with("said", text));
    }
}

/// What is said beside the dish that was added with these words. `None`: its hour is the one that was told, or soon enough.
fn beside(plan: &LivePlan, added: Option<&Text>, start: When, ready: bool, ground: &Ground) -> Option<Text> {
    // Of what has just been added the line names the place.
    let job = plan.wish.dishes.iter().zip(0_u8..).find_map(|(dish, place)| {
        let named = added?.args.iter().any(|(_, arg)| *arg == Arg::from(plan_words::step_name(Step::Dish, place)));
        dish.as_ref().filter(|_| named).and_then(|_| plan.job(Step::Dish, place))
    })?;
    let at = if ready { job.at + TimeDelta::minutes(job.lasts_min) } else { job.at };
    let day = clock::date(ground.zone, at);
    let moment = match start {
        When::Moment(said) => Some(said),
        When::Hour(hour) => Some(ground.moment(day, hour)),
        When::Day(said) if said == day => return None,
        When::Day(_) => None,
    };
    let soon = |said: Moment| if ready { at - said < SAME } else { (said - at).abs() < SAME };
    if moment.is_some_and(soon) {
        return None;
    }
    let said = match (moment, start) {
        (Some(said), _) => Arg::DayClock(said),
        (None, When::Day(said)) => Arg::Day(ground.moment(said, NaiveTime::MIN)),
        (None, _) => return None,
    };
    let text = Text::new(if ready { "dish-ready" } else { "dish-start" });
    Some(text.with("said", said).with("when", Arg::DayClock(at)))
}
