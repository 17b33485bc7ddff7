//! A bird that waits off the heat and is said to be kept hot: until when it is known to have been.
//!
//! That it is kept hot is a word; only readings of breast and thigh at 140 °F or hotter move the moment the two hours count from. Until there is
//! one they count from the heat, and a reading is asked for. Start at [`known`].

use super::alarms::off_at;
use super::readings::{ONE_LOOK, Spots};
use super::state::{JobState, LivePlan, StoredReading};
use super::turn::Urgency;
use super::{Sitting, alarms, hot_day, hot_road, live, reheated};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};
use carvetime_core::safety::US_HOT_HOLD_CONSUMER;

/// Hot enough to wait. Source: [`US_HOT_HOLD_CONSUMER`].
pub(super) fn holds() -> Temperature {
    US_HOT_HOLD_CONSUMER.temperature().unwrap_or(fahrenheit(140.0))
}

pub(super) fn is_hot_enough(spot: Temperature) -> bool {
    in_fahrenheit(spot) >= in_fahrenheit(holds()) - 1e-6
}

/// From when its two hours run: off the heat; said to be kept hot, or carried so, from when breast and thigh last read hot.
pub(super) fn known(plan: &LivePlan) -> Option<Moment> {
    if hot_road::is_hot(plan) {
        return hot_road::last_hot(plan);
    }
    let off = off_at(plan)?;
    let said = plan.held_hot || plan.was_held;
    Some(if said { read_hot(plan, off).unwrap_or(off) } else { off })
}

/// When breast and thigh, in one look after `off`, last read hot enough.
///
/// One that was read below that in between was warmed up again: it counts from its target on, and only before its two hours were over, or if
/// it went in before.
pub(super) fn read_hot(plan: &LivePlan, off: Moment) -> Option<Moment> {
    // Cut up, it is no bird that is kept hot any more.
    let carved = carved_at(plan);
    let whole = |reading: &&StoredReading| reading.at > off && carved.is_none_or(|carved| reading.at <= carved);
    let counted: Vec<&StoredReading> = plan.counted().into_iter().filter(whole).collect();
    let read = |of: fn(&StoredReading) -> Option<f64>| -> Vec<(Moment, Temperature)> {
        counted.iter().filter_map(|reading| Some((reading.at, celsius(of(reading)?)))).collect()
    };
    let (breast, thigh) = (read(|reading| reading.breast_c), read(|reading| reading.thigh_c));
    let hot = |(_, spot): &&(Moment, Temperature)| is_hot_enough(*spot);
    let mut looks: Vec<(Moment, bool)> = Vec::new();
    for (one, at_breast) in breast.iter().filter(hot) {
        let near = thigh.iter().filter(hot).filter(|(other, _)| (*one - *other).abs() <= ONE_LOOK);
        looks.extend(
            near.map(|(other, at_thigh)| {
                (*one.min(other), reheated::is_done(*at_breast) && reheated::is_done(*at_thigh))
            }),
        );
    }
    looks.sort_unstable();
    let cold = |from: Moment, to: Moment| {
        // Measured again within one look, deeper: what was read first says nothing.
        let again = |at: Moment, spots: &[(Moment, Temperature)]| {
            spots.iter().any(|(later, spot)| at < *later && *later - at <= ONE_LOOK && is_hot_enough(*spot))
        };
        let below = |spots: &[(Moment, Temperature)]| {
            let cold = |(at, spot): &&(Moment, Temperature)| (from < *at && *at <= to) && !is_hot_enough(*spot);
            spots.iter().filter(cold).any(|(at, _)| !again(*at, spots))
        };
        below(&breast) || below(&thigh)
    };
    let mut last = None;
    for (at, done) in looks {
        let from = last.unwrap_or(off);
        let late = plan.heated_late.is_some_and(|late| late <= at);
        let in_time = at - from <= hot_day::most(plan) || plan.heated_again.is_some_and(|again| again <= at);
        if !late && (!cold(from, at) || done && in_time) {
            last = Some(at);
        }
    }
    last
}

fn carved_at(plan: &LivePlan) -> Option<Moment> {
    plan.facts.iter().find(|fact| fact.done && fact.step == Step::Carve.name()).map(|fact| fact.at)
}

/// What "kept hot" is answered with: that a reading is wanted, and until when there is time without one.
pub(super) fn asked_for(plan: &LivePlan, now: Moment) -> Text {
    let from = known(plan).unwrap_or(now);
    Text::new("room-held")
        .with("hot", Arg::Temperature(holds()))
        .with("off", Arg::Clock(from))
        .with("by", Arg::Clock(from + hot_day::most(plan)))
}

/// Its two hours are over as far as anyone has read, and it may have been hot all the while: it is measured before anything else.
pub(super) fn unread(plan: &LivePlan, now: Moment) -> Option<Text> {
    let from = known(plan).filter(|_| plan.held_hot && !hot_road::is_hot(plan))?;
    // Leftovers have no middle to be measured.
    if carved_at(plan).is_some_and(|carved| now - carved > ONE_LOOK) {
        return None;
    }
    let text = Text::new("cook-held-unread").with("off", Arg::Clock(from)).with("hot", Arg::Temperature(holds()));
    (now >= from + hot_day::most(plan)).then_some(text)
}

/// What to do where the two hours are over: measured, where it was said to be kept hot; else it is thrown away.
pub(super) fn over(plan: &LivePlan, now: Moment) -> Text {
    reheated::over(plan).or_else(|| unread(plan, now)).unwrap_or_else(|| hot_day::over(plan))
}

/// What a reading means for a bird kept hot; `None` where it is none, or is cut up.
pub(super) fn meaning(sitting: &Sitting<'_>, spots: &Spots) -> Option<Text> {
    let plan = sitting.room.plan.as_ref().filter(|plan| plan.held_hot && !hot_road::is_hot(plan))?;
    let off = off_at(plan)?;
    plan.job(Step::Carve, 0).filter(|job| job.state == JobState::Waiting)?;
    let (breast, thigh) = spots.meat();
    let coldest = [breast, thigh].into_iter().flatten().reduce(Temperature::min).filter(|spot| is_hot_enough(*spot))?;
    let both = read_hot(plan, off).is_some_and(|at| sitting.now - at <= ONE_LOOK);
    let id = if both { "cook-hot-still" } else { "cook-hot-one" };
    debug_assert!(is_hot_enough(coldest));
    Some(Text::new(id).with("hot", Arg::Temperature(holds())).with("most", Arg::Span(hot_day::most(plan))))
}

/// A bird that was said to be kept hot and reads less: nobody knows since when, so the two hours run from when it was last known to be hot.
pub(super) fn broken(sitting: &mut Sitting<'_>, spots: &Spots) -> Option<Text> {
    let now = sitting.now;
    let read = [spots.breast, spots.thigh, spots.wing, spots.stuffing].into_iter().flatten().map(in_celsius);
    let coldest = read.reduce(f64::min).map(celsius).filter(|at| !is_hot_enough(*at))?;
    let plan = sitting.room.plan.as_mut().filter(|plan| plan.held_hot && plan.is_off())?;
    let (off, from) = off_at(plan).zip(known(plan))?;
    (plan.held_hot, plan.was_held) = (false, true);
    let by = from + hot_day::most(plan);
    Some(if by <= now {
        hot_day::over(plan)
    } else {
        Text::new("room-hold-broken")
            .with("at", Arg::Temperature(coldest))
            .with("hot", Arg::Temperature(holds()))
            .with("from", Arg::Choice(if from > off { "read" } else { "heat" }))
            .with("by", Arg::Clock(by))
    })
}

/// Breast and thigh have just been read hot: what was said of the two hours before may have to be said again, two hours on.
pub(super) fn begins_anew(sitting: &mut Sitting<'_>) {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| plan.held_hot || hot_road::is_hot(plan)) else { return };
    let read = off_at(plan).and_then(|off| read_hot(plan, off));
    if read.is_some_and(|at| now - at <= ONE_LOOK) {
        plan.limits_called.retain(|name| name != alarms::HOLD && name != live::CHILL_LIMIT);
    }
}

/// What the call to carve adds, or to wrap it: that it is measured first, where that was long ago.
pub(super) fn measured_first(plan: &LivePlan, step: Step, now: Moment) -> Option<Text> {
    let waits = match step {
        Step::Carve => plan.held_hot && !hot_road::is_hot(plan),
        Step::Pack => hot_road::is_hot(plan),
        _ => false,
    };
    let from = known(plan).filter(|from| waits && plan.is_off() && now - *from > ONE_LOOK)?;
    let text = Text::new("cook-measure-first").with("off", Arg::Clock(from)).with("hot", Arg::Temperature(holds()));
    Some(unread(plan, now).unwrap_or(text))
}

/// Says that the two hours are over, or that it is measured first.
pub(super) fn say_over(sitting: &mut Sitting<'_>) {
    let Some(text) = sitting.room.plan.as_ref().map(|plan| over(plan, sitting.now)) else { return };
    sitting.answer(text).urgency(Urgency::Safety);
}
