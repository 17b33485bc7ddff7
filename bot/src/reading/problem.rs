//! What was understood and cannot be right: the value, the range, an example, as a message.

use super::log::Scale;
use crate::words::{Arg, Text};
use carvetime_core::plan::Moment;
use carvetime_core::quantity::{celsius, kilograms};
use chrono::TimeDelta;
use serde::{Deserialize, Serialize};

/// Lightest and heaviest bird in kilograms, as [`carvetime_core::bird::BirdMass`] takes it.
pub const MASS_KG: (f64, f64) = (0.2, 25.0);
/// Fewest and most guests.
pub const GUESTS: (i64, i64) = (1, 200);
/// Coolest and hottest setting of a cooker in °C. Which of them are safe is for the plan to say.
pub const SETTING_C: (f64, f64) = (80.0, 290.0);
/// Longest drive.
pub const LONGEST_DRIVE: TimeDelta = TimeDelta::hours(12);
/// Highest percentage of added solution.
pub const SOLUTION_PERCENT: (f64, f64) = (0.0, 50.0);
/// Farthest dinner.
pub const FARTHEST_DINNER: TimeDelta = TimeDelta::days(400);
/// A fresh bird's pack names no day further ahead. Common practice, no source: three to four weeks in a tight bag are the most.
pub const FARTHEST_USE_BY: TimeDelta = TimeDelta::days(30);
/// Range of a thermometer in °C.
pub const READING_C: (f64, f64) = (-40.0, 500.0);

/// Something said that cannot be right.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Problem {
    /// A bird of this mass in kilograms.
    Mass(f64),
    /// Two birds of so many kilograms, the lighter one first: one is planned at a time.
    TwoWeights(f64, f64),
    /// So many guests.
    Guests(f64),
    /// Heat of so many °C.
    Setting(f64),
    /// A bird with so many percent of solution.
    Solution(f64),
    /// A drive of so many minutes.
    Drive(f64),
    /// Dinner at a moment that is over.
    Past(Moment),
    /// Dinner too far ahead.
    Far(Moment),
    /// A use-by date that is over (`true`), or further ahead than any fresh bird's.
    UseBy(Moment, bool),
    /// A whole plan over hot oil.
    Fryer,
    /// A bird nobody published times for.
    OtherBird,
    /// A thermometer at so much, as it was typed.
    Reading {
        /// The number.
        value: f64,
        /// Its scale, where it was written.
        scale: Option<Scale>,
    },
    /// A reading from the future.
    Future(Moment),
    /// More readings than spots, or the same spot twice.
    TooManyReadings,
    /// A number with no meaning here.
    LooseNumber(String),
}

impl Problem {
    /// What is wrong and what can be done, in that order.
    pub fn text(&self) -> Text {
        let kg = |value: f64| Arg::Mass(kilograms(value));
        let degrees = |value: f64| Arg::Temperature(celsius(value));
        match self {
            Self::Mass(given) => Text::new("reading-mass")
                .with("given", kg(*given))
                .with("low", kg(MASS_KG.0))
                .with("high", kg(MASS_KG.1)),
            Self::TwoWeights(light, heavy) => {
                Text::new("reading-two-weights").with("light", kg(*light)).with("heavy", kg(*heavy))
            }
            Self::Guests(given) => Text::new("reading-guests")
                .with("given", Arg::Number(*given, 1))
                .with("low", Arg::Count(GUESTS.0))
                .with("high", Arg::Count(GUESTS.1)),
            Self::Setting(given) => Text::new("reading-setting")
                .with("given", degrees(*given))
                .with("low", degrees(SETTING_C.0))
                .with("high", degrees(SETTING_C.1))
                .with("example", degrees(165.0)),
            Self::Solution(given) => Text::new("reading-solution")
                .with("given", Arg::Number(*given, 1))
                .with("high", Arg::Number(SOLUTION_PERCENT.1, 0)),
            Self::Drive(given) => {
                Text::new("reading-drive").with("given", Arg::Number(*given, 0)).with("high", Arg::Span(LONGEST_DRIVE))
            }
            Self::Past(given) => Text::new("reading-past").with("given", Arg::DayClock(*given)),
            Self::Far(given) => Text::new("reading-far")
                .with("given", Arg::Day(*given))
                .with("days", Arg::Count(FARTHEST_DINNER.num_days())),
            Self::UseBy(given, true) => Text::new("reading-used-by").with("day", Arg::Day(*given)),
            Self::UseBy(given, false) => Text::new("reading-use-by-far").with("day", Arg::Day(*given)),
            Self::Fryer => Text::new("reading-fryer"),
            Self::OtherBird => Text::new("reading-other-bird").with("target", degrees(74.0)),
            Self::Reading { value, scale } => Text::new("reading-thermometer")
                .with("given", as_typed(*value, *scale))
                .with("low", degrees(READING_C.0))
                .with("high", degrees(READING_C.1)),
            Self::Future(given) => Text::new("reading-future").with("given", Arg::Clock(*given)),
            Self::TooManyReadings => Text::new("reading-too-many"),
            Self::LooseNumber(given) => Text::new("reading-loose-number").with("given", Arg::Verbatim(given.clone())),
        }
    }
}

/// The number as it was typed, on its own scale.
fn as_typed(value: f64, scale: Option<Scale>) -> Arg {
    let degrees = |id: &'static str| Arg::from(Text::new(id).with("n", Arg::Number(value, 1)));
    match scale {
        Some(Scale::Fahrenheit) => degrees("units-fahrenheit"),
        Some(Scale::Celsius) => degrees("units-celsius"),
        None => Arg::Number(value, 1),
    }
}
