//! How long a bird takes over the heat, as a distribution: published timetable, mass law, common practice.
//!
//! Owns the timetables ([`table`]) and how they are carried to other masses, settings and cookers ([`estimate()`]). Reads
//! no thermometer: a live forecast from readings belongs to `heat`; both answer through [`CookingTime`].

pub mod table;

mod estimate;
mod level;

pub use estimate::{Basis, Caution, Estimate, OVEN_AUTHORITY_F, RoastError, Timetable, estimate, setting_factor};
pub use level::OvenLevel;

use crate::bird::{Bird, Condition};
use crate::quantity::{Temperature, fahrenheit};
use crate::range::Range;
use chrono::TimeDelta;

/// What gives the heat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Cooker {
    /// Conventional oven.
    Oven,
    /// Oven with a fan.
    FanOven,
    /// Smoker or kettle with a lid.
    Smoker,
}

impl Cooker {
    /// Settings taken: 200 to 550 °F in an oven, 200 to 400 °F in a smoker. Common practice, no source.
    pub fn settings(self) -> Range<Temperature> {
        let high = match self {
            Self::Oven | Self::FanOven => 550.0,
            Self::Smoker => 400.0,
        };
        Range::new(fahrenheit(200.0), fahrenheit(high))
    }
}

/// Cooker and its setting.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heat {
    /// Which cooker.
    pub cooker: Cooker,
    /// Air temperature it is set to.
    pub setting: Temperature,
}

/// A duration known as a distribution.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Spread {
    /// One in ten is quicker.
    pub p10: TimeDelta,
    /// Half are quicker.
    pub p50: TimeDelta,
    /// Nine in ten are quicker.
    pub p90: TimeDelta,
}

/// Anything that can say how long the bird needs from "on" to "pull".
///
/// Before the fire is lit the [`Timetable`] answers; once there are readings, the forecast in `heat` answers through the
/// same trait.
pub trait CookingTime {
    /// The time from meeting the heat to the last required spot reaching its target. `start` is the bird's condition as
    /// it goes on, whatever it was at the shop.
    ///
    /// # Errors
    /// [`RoastError`] when that bird isn't cooked so.
    fn cooking_time(&self, bird: &Bird, heat: &Heat, start: Condition) -> Result<Spread, RoastError>;
}

names!(Cooker { Oven => "oven", FanOven => "fan-oven", Smoker => "smoker" });
