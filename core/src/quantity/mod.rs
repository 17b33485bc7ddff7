//! Quantities of the kitchen: masses, volumes, temperatures, spans of time.
//!
//! Owns our own unit factors (uom's pound and spoons are cut to seven digits), the constructors and readers used
//! everywhere else, parsing of what people type and rounding to what a kitchen can measure. Knows no language: words for
//! units come in from outside ([`UnitWords`]). Start at [`scan`]. Durations are [`chrono::TimeDelta`], points in time [`chrono::DateTime<Utc>`].

mod amount;
mod gas;
mod lex;
mod round;
mod scan;
mod unit;
pub mod units;
mod words;

pub use amount::{Amount, Part};
pub use gas::{gas_mark, nearest_gas_mark, thermostat};
pub use round::{
    SpoonCount, reading_celsius, reading_fahrenheit, round_grams, round_milliliters, round_spoons, setting_celsius,
    setting_fahrenheit,
};
pub use scan::{Found, scan};
pub use unit::{LABEL_CUP_ML, LABEL_TABLESPOON_ML, LABEL_TEASPOON_ML, Measure, STICK_G, Unit};
pub use uom::si::f64::{Mass, TemperatureInterval, ThermodynamicTemperature as Temperature, Volume};
pub use words::{NumberWord, UnitWords};

use uom::si::{mass, temperature_interval, thermodynamic_temperature as tt, volume};

/// A mass of `value` grams.
pub fn grams(value: f64) -> Mass {
    Mass::new::<mass::gram>(value)
}

/// A mass of `value` kilograms.
pub fn kilograms(value: f64) -> Mass {
    Mass::new::<mass::kilogram>(value)
}

/// A mass of `value` avoirdupois pounds (exactly 0.453 592 37 kg each).
pub fn pounds(value: f64) -> Mass {
    Mass::new::<units::mass::pound>(value)
}

/// A mass of `value` avoirdupois ounces (a sixteenth of a pound).
pub fn ounces(value: f64) -> Mass {
    Mass::new::<units::mass::ounce>(value)
}

/// `mass` in grams.
pub fn in_grams(mass: Mass) -> f64 {
    mass.get::<mass::gram>()
}

/// `mass` in kilograms.
pub fn in_kilograms(mass: Mass) -> f64 {
    mass.get::<mass::kilogram>()
}

/// `mass` in pounds.
pub fn in_pounds(mass: Mass) -> f64 {
    mass.get::<units::mass::pound>()
}

/// A volume of `value` millilitres.
pub fn milliliters(value: f64) -> Volume {
    Volume::new::<volume::milliliter>(value)
}

/// `volume` in millilitres.
pub fn in_milliliters(volume: Volume) -> f64 {
    volume.get::<volume::milliliter>()
}

/// A temperature of `value` degrees Fahrenheit.
pub fn fahrenheit(value: f64) -> Temperature {
    Temperature::new::<tt::degree_fahrenheit>(value)
}

/// A temperature of `value` degrees Celsius.
pub fn celsius(value: f64) -> Temperature {
    Temperature::new::<tt::degree_celsius>(value)
}

/// `temperature` in degrees Fahrenheit.
pub fn in_fahrenheit(temperature: Temperature) -> f64 {
    temperature.get::<tt::degree_fahrenheit>()
}

/// `temperature` in degrees Celsius.
pub fn in_celsius(temperature: Temperature) -> f64 {
    temperature.get::<tt::degree_celsius>()
}

/// `temperature` in kelvin.
pub fn in_kelvin(temperature: Temperature) -> f64 {
    temperature.get::<tt::kelvin>()
}

/// How much hotter `a` is than `b` (negative when colder). The one place where two temperatures are subtracted.
pub fn hotter_by(a: Temperature, b: Temperature) -> TemperatureInterval {
    TemperatureInterval::new::<temperature_interval::kelvin>(a.get::<tt::kelvin>() - b.get::<tt::kelvin>())
}

/// Whose spoons and cups a recipe means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SpoonSystem {
    /// US customary: teaspoon 4.928 92 mL, tablespoon three of them, cup 236.588 mL.
    Us,
    /// Metric (Canada, New Zealand, most of Europe): 5, 15, 250 mL; fluid ounce and up as in the US.
    Metric,
    /// United Kingdom: 5, 15 mL; imperial pint and fluid ounce.
    Uk,
    /// Australia: 5, 20, 250 mL.
    Australia,
}
names!(SpoonSystem { Us => "us", Metric => "metric", Uk => "uk", Australia => "australia" });
