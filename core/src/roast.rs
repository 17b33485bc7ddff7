//! How long a bird takes over the heat, as a distribution: published timetable, mass law, common practice.
//!
//! A live forecast from readings belongs to `heat`; both answer through [`CookingTime`].

use crate::bird::Bird;
use crate::quantity::Temperature;
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
pub trait CookingTime {
    /// The time from meeting the heat to the last required spot reaching its target.
    fn cooking_time(&self, bird: &Bird, heat: &Heat) -> Spread;
}

names!(Cooker { Oven => "oven", FanOven => "fan-oven", Smoker => "smoker" });
