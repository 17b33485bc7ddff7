//! A fresh bird that will not keep until its dinner: until a way out is picked, people are told when it has to be on the heat or frozen.
//!
//! The evening before, and when its time is up. Where the plan works it goes on in time, and nothing is said.

use super::Sitting;
use super::state::{LivePlan, Room};
use super::turn::{Bell, BellKind, Urgency};
use crate::words::{Arg, Text};
use carvetime_core::bird::Condition;
use carvetime_core::plan::clock::{at_hour, date};
use carvetime_core::plan::{Moment, Step, spans};
use chrono::Days;
use chrono_tz::Tz;

/// The limit's name the evening before.
const EVE: &str = "raw-eve";
/// Its name when it is over.
const OVER: &str = "raw";
/// The evening hour: there is still time to cook or freeze it, or to shop.
const HOUR: u32 = 18;

/// The bells still to ring.
pub(super) fn bells(room: &Room, plan: &LivePlan, now: Moment) -> Vec<Bell> {
    let Some((zone, until)) = room.taste.zone().and_then(|zone| Some((zone, until(plan, zone, now)?))) else {
        return Vec::new();
    };
    let open = |name: &&str| !plan.limits_called.iter().any(|called| called == name);
    let bell = |name: &str| {
        let at = if name == EVE { evening_before(until, zone)? } else { until };
        Some(Bell { at, kind: BellKind::Limit { name: name.into() } })
    };
    [EVE, OVER].iter().filter(|name| open(name)).filter_map(|name| bell(name)).collect()
}

fn evening_before(until: Moment, zone: Tz) -> Option<Moment> {
    Some(at_hour(zone, date(zone, until).checked_sub_days(Days::new(1))?, HOUR, 0))
}

/// Until when it keeps, where that is too short for the plan.
fn until(plan: &LivePlan, zone: Tz, now: Moment) -> Option<Moment> {
    let order = plan.order(zone).filter(|order| order.bird.condition == Condition::Fresh)?;
    plan.clash.as_ref().filter(|_| plan.on_since(now).is_none() && !plan.is_off())?;
    let bought = plan.facts.iter().find(|fact| fact.step == Step::Buy.name() && fact.done).map(|fact| fact.at);
    let until = order.use_by.or_else(|| Some(bought? + spans::RAW_KEEPS))?;
    // Whatever else doesn't fit: in the heat by then, it keeps.
    plan.job(Step::On, 0).is_some_and(|on| until < on.at).then_some(until)
}

/// A limit's bell rang.
pub(super) fn rang(sitting: &mut Sitting<'_>, kind: &BellKind) {
    let BellKind::Limit { name } = kind else { return };
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| !plan.limits_called.contains(name)) else { return };
    let (Some(until), Some(dinner)) = (until(plan, zone, now), plan.wish.dinner) else { return };
    let text = match name.as_str() {
        EVE if now < until => {
            Text::new("room-raw-eve").with("until", Arg::DayClock(until)).with("dinner", Arg::DayClock(dinner))
        }
        OVER if now >= until => Text::new("room-raw-over"),
        _ => return,
    };
    plan.limits_called.push(name.clone());
    sitting.answer(text).urgency(Urgency::Safety);
}
