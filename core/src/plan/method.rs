//! How an order thaws and salts its bird, given what has happened so far.
//!
//! Owns what thawing does to salting, and the switch from fridge to water. Knows no windows (`network`).

use super::past::Past;
use super::{Moment, Order, Salting, Step, Thawing, place, spans};
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
}

/// How it thaws from here on; `None` when there is nothing to thaw.
pub(super) fn thaw_of(order: &Order, past: Past<'_>, now: Moment, cooking: &Spread) -> Option<Thawed> {
    if past.skipped(Step::Thaw, 0) {
        return None;
    }
    let fridge = thaw::fridge(&order.bird)?;
    let water = thaw::cold_water(&order.bird)?.thaw;
    let whole =
        |way, thaw: thaw::Thaw| Thawed { way, nth: 0, least: thaw.time.low, most: thaw.time.high, source: thaw.source };
    match order.thawing {
        Thawing::Fridge => Some(whole(Thawing::Fridge, fridge)),
        Thawing::ColdWater => Some(whole(Thawing::ColdWater, water)),
        Thawing::FridgeThenWater => {
            let Some(started) = past.done(Step::Thaw, 0) else { return Some(whole(Thawing::Fridge, fridge)) };
            let left = |switch: Moment| finish_in_water(switch - started, fridge.time.high, water.time.high);
            let by = place::wanted_on(order, cooking) - spans::AT_ONCE;
            let switch = past.done(Step::Thaw, 1).unwrap_or_else(|| {
                // The longer it stays in the fridge the less is left: two tries come near enough.
                let once = left((by - water.time.high).max(now));
                let twice = left((by - once).max(now));
                (by - twice).max(now)
            });
            let most = left(switch);
            Some(Thawed { nth: 1, least: most / 2, most, ..whole(Thawing::ColdWater, water) })
        }
        Thawing::CookFrozen => None,
    }
}

/// Time in cold water after `spent` of `fridge` in the fridge: the part that is left, of the whole time in water, and
/// never under a quarter of it (the ice in the cavity goes last). Common practice, no source.
fn finish_in_water(spent: TimeDelta, fridge: TimeDelta, water: TimeDelta) -> TimeDelta {
    let left = 1.0 - spent.num_seconds() as f64 / fridge.num_seconds().max(1) as f64;
    let share = left.clamp(thaw::PART_THAWED_SHARE.low, 1.0);
    TimeDelta::seconds((water.num_seconds() as f64 * share).round() as i64)
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
