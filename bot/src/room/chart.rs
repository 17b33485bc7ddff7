//! What the picture of a cook shows, without any ink: curves, forecast, marks. [`crate::picture`] draws it.

use super::forecast::Foresight;
use carvetime_core::heat::{Reading, SpotOutlook};
use carvetime_core::plan::{Finish, Moment};
use carvetime_core::quantity::Temperature;
use chrono::TimeDelta;

/// Room on the right of the last mark.
const MARGIN: TimeDelta = TimeDelta::minutes(20);

/// The picture of a cook.
#[derive(Debug, Clone, PartialEq)]
pub struct Chart {
    /// Left edge: the bird met the heat.
    pub from: Moment,
    /// Right edge.
    pub to: Moment,
    /// The present.
    pub now: Moment,
    /// What the air is called: `oven`, or `pit`.
    pub air: &'static str,
    /// The air.
    pub pit: Vec<(Moment, Temperature)>,
    /// What it is set to.
    pub setting: Temperature,
    /// The bird's spots.
    pub spots: Vec<Curve>,
    /// Where a spot is done.
    pub target: Temperature,
    /// When all of it is.
    pub finish: Finish,
    /// Dinner.
    pub dinner: Moment,
}

/// One thermometer in the bird.
#[derive(Debug, Clone, PartialEq)]
pub struct Curve {
    /// `breast` or `thigh`.
    pub name: &'static str,
    /// What was read.
    pub read: Vec<(Moment, Temperature)>,
    /// Where it is now, by all readings.
    pub at_now: Temperature,
    /// When it reaches the target; `None` once it has.
    pub ahead: Option<Finish>,
}

impl Chart {
    /// The picture of a forecast.
    pub fn of(sight: &Foresight, now: Moment) -> Self {
        let finish = sight.finish();
        let dinner = sight.dinner();
        // A dinner on another day is no mark in this picture.
        let last = if dinner - finish.p90 < TimeDelta::hours(6) { dinner.max(finish.p90) } else { finish.p90 };
        let points = |of: fn(&Reading) -> Option<Temperature>| {
            sight.readings.iter().filter_map(|reading| Some((sight.on + reading.at, of(reading)?))).collect()
        };
        let curve = |name, spot: Option<SpotOutlook>, read: Vec<(Moment, Temperature)>| {
            let spot = spot?;
            let at = |span: TimeDelta| (sight.on + span).max(now);
            let ahead = (!spot.reached && sight.cooks()).then(|| Finish {
                p10: at(spot.spread.p10),
                p50: at(spot.spread.p50),
                p90: at(spot.spread.p90),
            });
            Some(Curve { name, read, at_now: sight.now_at(name, spot.now), ahead })
        };
        let breast = curve("breast", sight.outlook.breast, points(|reading| reading.breast));
        let thigh = curve("thigh", sight.outlook.thigh, points(|reading| reading.thigh));
        Self {
            from: sight.on,
            to: last.max(now) + MARGIN,
            now,
            air: super::heat::air(sight.cook.heat.cooker),
            pit: points(|reading| reading.pit),
            setting: sight.cook.heat.setting,
            spots: breast.into_iter().chain(thigh).collect(),
            target: super::target(),
            finish,
            dinner,
        }
    }
}
