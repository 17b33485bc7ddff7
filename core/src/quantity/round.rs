//! Rounding to what a kitchen can measure; the exact value stays beside it.

use super::{SpoonSystem, Temperature, Unit, Volume, in_celsius, in_fahrenheit, in_milliliters, milliliters};

/// A volume as cups and spoons.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpoonCount {
    /// Whose spoons.
    pub system: SpoonSystem,
    /// Quarter cups.
    pub quarter_cups: u32,
    /// Whole tablespoons beside them.
    pub tablespoons: u32,
    /// Eighths of a teaspoon beside these.
    pub eighth_teaspoons: u32,
    /// The volume before rounding.
    pub exact: Volume,
    eighths: u32,
}

impl SpoonCount {
    /// The whole rounded volume in teaspoons, cups and tablespoons included (8 for `2 tbsp + 2 tsp`).
    pub fn teaspoons(&self) -> f64 {
        f64::from(self.eighths) / 8.0
    }

    /// The rounded volume.
    pub fn volume(&self) -> Volume {
        milliliters(self.teaspoons() * teaspoon_ml(self.system))
    }
}

fn teaspoon_ml(system: SpoonSystem) -> f64 {
    Unit::Teaspoon.milliliters(system).unwrap_or(5.0)
}

/// Eighths of a teaspoon in a tablespoon and in a quarter cup.
fn larger_spoons(system: SpoonSystem) -> (u32, u32) {
    match system {
        SpoonSystem::Us => (24, 96),
        SpoonSystem::Metric | SpoonSystem::Uk => (24, 100),
        SpoonSystem::Australia => (32, 100),
    }
}

/// `volume` in the nearest spoons: eighths of a teaspoon below ½ tsp, quarters below a quarter cup, whole teaspoons from
/// there, whole tablespoons from four cups. Cups are used where they come out even, or from half a cup. Negative, infinite
/// and absent volumes give nothing; more than 10 000 cups gives 10 000.
pub fn round_spoons(volume: Volume, system: SpoonSystem) -> SpoonCount {
    let eighths = in_milliliters(volume) / teaspoon_ml(system) * 8.0;
    let (tablespoon, quarter_cup) = larger_spoons(system);
    let step = match eighths {
        e if e < 4.0 => 1,
        e if e < f64::from(quarter_cup) => 2,
        e if e < f64::from(16 * quarter_cup) => 8,
        _ => tablespoon,
    };
    let steps = (eighths / f64::from(step)).round().clamp(0.0, 4_000_000.0 / f64::from(step));
    let eighths = steps as u32 * step; // a NaN becomes 0
    let even = eighths.is_multiple_of(quarter_cup);
    let quarter_cups = if even || eighths >= 2 * quarter_cup { eighths / quarter_cup } else { 0 };
    let rest = eighths - quarter_cups * quarter_cup;
    SpoonCount {
        system,
        quarter_cups,
        tablespoons: rest / tablespoon,
        eighth_teaspoons: rest % tablespoon,
        exact: volume,
        eighths,
    }
}

/// Grams as a kitchen scale shows them: to 5 g, to 1 g below 20 g, to 0.1 g below 2 g.
pub fn round_grams(grams: f64) -> f64 {
    match grams.abs() {
        g if g < 2.0 => (grams * 10.0).round() / 10.0,
        g if g < 20.0 => grams.round(),
        _ => (grams / 5.0).round() * 5.0,
    }
}

/// Millilitres as a jug shows them: to 50 mL from 1 L, to 5 mL from 20 mL, else to 1 mL.
pub fn round_milliliters(ml: f64) -> f64 {
    match ml.abs() {
        v if v < 20.0 => ml.round(),
        v if v < 1000.0 => (ml / 5.0).round() * 5.0,
        _ => (ml / 50.0).round() * 50.0,
    }
}

/// A dial's setting in °F, to 5°.
pub fn setting_fahrenheit(temperature: Temperature) -> f64 {
    (in_fahrenheit(temperature) / 5.0).round() * 5.0
}

/// A dial's setting in °C, to 1°.
pub fn setting_celsius(temperature: Temperature) -> f64 {
    in_celsius(temperature).round()
}

/// A thermometer's reading in °F, to 1°.
pub fn reading_fahrenheit(temperature: Temperature) -> f64 {
    in_fahrenheit(temperature).round()
}

/// A thermometer's reading in °C, to 1°.
pub fn reading_celsius(temperature: Temperature) -> f64 {
    in_celsius(temperature).round()
}
