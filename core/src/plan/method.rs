//! How an order thaws and salts its bird, given what has happened so far.
//!
//! Owns what thawing does to salting, and the switch from fridge to water. Knows no windows (`network`).

use super::past::Past;
use super::{Moment, Order, Salting, Step, Thawing, clock, place, spans};
use crate::bird::Condition;
use crate::roast::Spread;
use crate::source::Source;
use crate::thaw;
use chrono::TimeDelta;

/// How salt comes into it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Salted {
    /// Not at all.
    No,
    /// Just before the heat: cold water leaves no time for a rest.
    AtOnce,
    /// With a rest in the fridge.
    Dry,
    /// In brine.
    Wet,
}

/// How it thaws.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Thawed {
    /// Fridge or cold water, as it goes on from here.
    pub way: Thawing,
    /// Which `thaw` it starts with: 1 after a switch to water.
    pub nth: u8,
    pub least: TimeDelta,
    pub most: TimeDelta,
    pub source: Source,
    /// Time in the fridge before the water.
    pub before: Option<Before>,
}

/// Thawing in the fridge before cold water finishes it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Before {
    /// Into the fridge then, if it can be.
    pub start: Moment,
    /// So long there at least: the time in water counts on it.
    pub least: TimeDelta,
    /// Thawed through without any water.
    pub whole: TimeDelta,
    pub source: Source,
}

/// How it thaws from here on; `None` when there is nothing to thaw.
pub(super) fn thaw_of(order: &Order, past: Past<'_>, now: Moment, cooking: &Spread) -> Option<Thawed> {
    if past.skipped(Step::Thaw, 0) {
        return None;
    }
    let fridge = thaw::fridge(&order.bird)?;
    let water = thaw::cold_water(&order.bird)?.thaw;
    let whole = |way, thaw: thaw::Thaw| Thawed {
        way,
        nth: 0,
        least: thaw.time.low,
        most: thaw.time.high,
        source: thaw.source,
        before: None,
    };
    match order.thawing {
        Thawing::Fridge => Some(whole(Thawing::Fridge, fridge)),
        Thawing::ColdWater => Some(whole(Thawing::ColdWater, water)),
        Thawing::FridgeThenWater => {
            let started = past.done(Step::Thaw, 0);
            let start = started.unwrap_or_else(|| soonest_in_fridge(order, past, now));
            let spent = match (in_water_since(past, 1), started) {
                (Some(moved), Some(started)) => moved - started,
                // Nobody said that it was in the fridge: then nothing has thawed there.
                (Some(_), None) => TimeDelta::zero(),
                (None, started) => {
                    let by = place::wanted_on(order, cooking).min(place::last_on(order, cooking)) - spans::AT_ONCE;
                    let fits = longest_in_fridge(by - start, fridge.time.high, water.time.high);
                    if started.is_some() { fits.max(now - start) } else { fits.min(fridge.time.high) }
                }
            };
            let most = finish_in_water(spent, fridge.time.high, water.time.high);
            let before = (started.is_some() || in_water_since(past, 1).is_none()).then_some(Before {
                start,
                least: spent,
                whole: fridge.time.high,
                source: fridge.source,
            });
            Some(Thawed { nth: 1, least: most / 2, most, before, ..whole(Thawing::ColdWater, water) })
        }
        Thawing::CookFrozen => None,
    }
}

/// Since when it has been in the water, the `nth` start of thawing. A change of water tells as well as a word.
pub(super) fn in_water_since(past: Past<'_>, nth: u8) -> Option<Moment> {
    past.done(Step::Thaw, nth).or_else(|| {
        if past.is_beyond(Step::Water) {
            return None;
        }
        let (change, at) = past.last_done(Step::Water)?;
        Some(at - thaw::WATER_CHANGE_EVERY * (i32::from(change) + 1))
    })
}

/// The first hour at which someone can put it into the fridge, bought before if it must be.
fn soonest_in_fridge(order: &Order, past: Past<'_>, now: Moment) -> Moment {
    let awake = clock::sociable(order.zone, now, now, now + TimeDelta::days(1));
    let to_buy = !order.at_home && past.passed(Step::Buy, 0).is_none() && !past.skipped(Step::Buy, 0);
    if to_buy && !past.overtaken(Step::Buy, 0) {
        let awake = order.shop_from.map_or(awake, |from| awake.max(from));
        return awake + spans::BRING_HOME;
    }
    // Just bought, it is still on its way home.
    past.done(Step::Buy, 0).map_or(awake, |bought| awake.max(bought + spans::BRING_HOME))
}

/// Time in cold water after `spent` of `fridge` in the fridge: the part that is left, of the whole time in water, and
/// never under a quarter of it (the ice in the cavity goes last). Both times are the slow ends. Common practice, no source.
fn finish_in_water(spent: TimeDelta, fridge: TimeDelta, water: TimeDelta) -> TimeDelta {
    let left = 1.0 - spent.num_seconds() as f64 / fridge.num_seconds().max(1) as f64;
    let share = left.clamp(thaw::PART_THAWED_SHARE.low, 1.0);
    TimeDelta::seconds((water.num_seconds() as f64 * share).round() as i64)
}

/// The longest time in the fridge that leaves, of `total`, enough for the water to finish it.
fn longest_in_fridge(total: TimeDelta, fridge: TimeDelta, water: TimeDelta) -> TimeDelta {
    // spent + finish_in_water(spent) = total, on either side of the least share of water.
    let ratio = water.num_seconds() as f64 / fridge.num_seconds().max(1) as f64;
    let shared = (total - water).num_seconds() as f64 / (1.0 - ratio).max(0.01);
    let capped = total - finish_in_water(fridge, fridge, water);
    TimeDelta::seconds(shared.floor() as i64).min(capped).max(TimeDelta::zero())
}

/// How it is salted: cold water leaves no time for a rest, ice takes no salt.
pub(super) fn salted_of(order: &Order, past: Past<'_>, thaw: Option<Thawed>) -> Salted {
    let from_frozen = order.thawing == Thawing::CookFrozen && order.bird.condition != Condition::Fresh;
    if past.skipped(Step::Salt, 0) || from_frozen {
        return Salted::No;
    }
    let in_water = thaw.is_some_and(|thaw| thaw.way == Thawing::ColdWater);
    match (order.salting, in_water) {
        (Salting::None, _) | (Salting::Wet, true) => Salted::No,
        (Salting::Dry, true) => Salted::AtOnce,
        (Salting::Dry, false) => Salted::Dry,
        (Salting::Wet, false) => Salted::Wet,
    }
}
