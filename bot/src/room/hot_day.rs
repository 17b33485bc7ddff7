//! A day on which it is hotter than 90 °F where food stands: an hour out of heat and cold then, not two. Source:
//! [`US_ONE_HOUR_RULE_AIR`].
//!
//! It is said once and counts for the plan's dinner; where nobody has said so, two hours count.

use super::state::LivePlan;
use super::turn::Urgency;
use super::{RoomKind, Sitting, board, hot_road, kept_hot};
use crate::reading;
use crate::words::{Arg, Text};
use carvetime_core::plan::spans;
use carvetime_core::quantity::{Temperature, fahrenheit};
use carvetime_core::safety::US_ONE_HOUR_RULE_AIR;
use chrono::TimeDelta;

/// So long before and after dinner the heat of the day is that dinner's.
const BEFORE: TimeDelta = TimeDelta::hours(18);
const AFTER: TimeDelta = TimeDelta::hours(8);

/// How long cooked food may be out.
pub(super) fn most(plan: &LivePlan) -> TimeDelta {
    if plan.hot_day { spans::HOT_ROAD_IN_HEAT } else { spans::HOT_MOST }
}

/// How hot it is around it, as the tables ask: `None` where nobody said that it is hotter than they count on.
pub(super) fn air(plan: &LivePlan) -> Option<Temperature> {
    plan.hot_day.then(|| fahrenheit(carvetime_core::quantity::in_fahrenheit(limit()) + 1.0))
}

/// That its time is up.
pub(super) fn over(plan: &LivePlan) -> Text {
    Text::new(if plan.hot_day { "room-limit-chill-hot" } else { "room-limit-chill" })
}

/// "It's 95 out here": from then on an hour counts. `false`: nothing of the kind, or no dinner is near.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let now = sitting.now;
    let near =
        |plan: &&LivePlan| plan.wish.dinner.is_some_and(|dinner| dinner - BEFORE <= now && now <= dinner + AFTER);
    if sitting.room.plan.as_ref().filter(near).is_none() || !(addressed || sitting.room.kind == RoomKind::Group) {
        return false;
    }
    let Some(at) = reading::read_hot_air(text, &sitting.ground()).filter(|at| *at > limit()) else { return false };
    let Some(plan) = sitting.room.plan.as_mut() else { return false };
    plan.hot_day = true;
    let from = if hot_road::is_hot(plan) { hot_road::last_hot(plan) } else { kept_hot::known(plan) };
    let by = from.filter(|_| plan.is_off()).map(|from| from + most(plan));
    let text = match by {
        Some(by) if by <= now => over(plan),
        Some(by) => Text::new("cook-hot-day-off").with("by", Arg::Clock(by)),
        None => Text::new("cook-hot-day"),
    };
    // What it moves is the fridge's hour, which is said here.
    let _told = sitting.resolve();
    sitting
        .answer(text.with("at", Arg::Temperature(at)).with("air", Arg::Temperature(limit())))
        .urgency(Urgency::Safety);
    board::refresh(sitting);
    true
}

/// Source: [`US_ONE_HOUR_RULE_AIR`].
fn limit() -> Temperature {
    US_ONE_HOUR_RULE_AIR.temperature().unwrap_or(fahrenheit(90.0))
}
