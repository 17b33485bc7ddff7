//! The units a cook writes, by name; which belong together and how large each is.
//!
//! Owns the factors of spoons, cups and the larger liquid measures in each [`SpoonSystem`]. Knows no words for them: see
//! [`super::words`].

use super::SpoonSystem;

/// A unit as written in a recipe or a message.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Unit {
    /// Milligram.
    Milligram,
    /// Gram.
    Gram,
    /// Kilogram.
    Kilogram,
    /// Avoirdupois pound.
    Pound,
    /// Pound of 500 g, as German `Pfund` and French `livre` are meant in a kitchen (common practice, no source).
    MetricPound,
    /// Avoirdupois ounce.
    Ounce,
    /// Stick of butter: 113 g, or half a US cup.
    Stick,
    /// Pinch: a sixteenth of a teaspoon (common practice, no source).
    Pinch,
    /// Teaspoon of the person's [`SpoonSystem`].
    Teaspoon,
    /// Tablespoon of the person's [`SpoonSystem`].
    Tablespoon,
    /// Cup of the person's [`SpoonSystem`].
    Cup,
    /// Fluid ounce.
    FluidOunce,
    /// Pint.
    Pint,
    /// Quart.
    Quart,
    /// Gallon.
    Gallon,
    /// Millilitre.
    Milliliter,
    /// Litre.
    Liter,
    /// Degree Fahrenheit.
    Fahrenheit,
    /// Degree Celsius.
    Celsius,
    /// A degree of a scale not named (`325°`): whoever reads it decides by the person's units.
    Degree,
    /// Mark of a gas oven's dial.
    GasMark,
    /// Mark of a French oven's dial.
    Thermostat,
    /// Second of time.
    Second,
    /// Minute of time.
    Minute,
    /// Hour.
    Hour,
    /// Day of 24 hours.
    Day,
    /// Hundredth part.
    Percent,
}

names!(Unit {
    Milligram => "milligram", Gram => "gram", Kilogram => "kilogram", Pound => "pound", MetricPound => "metric-pound", Ounce => "ounce", Stick => "stick",
    Pinch => "pinch", Teaspoon => "teaspoon", Tablespoon => "tablespoon", Cup => "cup", FluidOunce => "fluid-ounce",
    Pint => "pint", Quart => "quart", Gallon => "gallon", Milliliter => "milliliter", Liter => "liter",
    Fahrenheit => "fahrenheit", Celsius => "celsius", Degree => "degree", GasMark => "gas-mark", Thermostat => "thermostat",
    Second => "second", Minute => "minute", Hour => "hour", Day => "day", Percent => "percent",
});

/// What a unit measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Measure {
    /// A mass.
    Mass,
    /// A volume.
    Volume,
    /// Butter by the stick: a mass and a volume.
    Stick,
    /// A temperature.
    Temperature,
    /// A span of time.
    Span,
    /// A share.
    Percent,
}

/// US gallon, exactly 231 cubic inches, in millilitres.
const US_GALLON_ML: f64 = 3_785.411_784;
/// Imperial gallon in millilitres, exact.
const IMPERIAL_GALLON_ML: f64 = 4_546.09;
/// Teaspoon of US nutrition labels in millilitres (21 CFR 101.9(b)(5)(viii)).
pub const LABEL_TEASPOON_ML: f64 = 5.0;
/// Tablespoon of US nutrition labels in millilitres (21 CFR 101.9(b)(5)(viii)).
pub const LABEL_TABLESPOON_ML: f64 = 15.0;
/// Cup of US nutrition labels in millilitres (21 CFR 101.9(b)(5)(viii)).
pub const LABEL_CUP_ML: f64 = 240.0;
/// Stick of butter in grams (USDA SR28, butter, household measure "stick").
pub const STICK_G: f64 = 113.0;

impl Unit {
    /// What it measures.
    pub fn measure(self) -> Measure {
        match self {
            Self::Milligram | Self::Gram | Self::Kilogram | Self::Pound | Self::MetricPound | Self::Ounce => {
                Measure::Mass
            }
            Self::Stick => Measure::Stick,
            Self::Pinch
            | Self::Teaspoon
            | Self::Tablespoon
            | Self::Cup
            | Self::FluidOunce
            | Self::Pint
            | Self::Quart
            | Self::Gallon
            | Self::Milliliter
            | Self::Liter => Measure::Volume,
            Self::Fahrenheit | Self::Celsius | Self::Degree | Self::GasMark | Self::Thermostat => Measure::Temperature,
            Self::Second | Self::Minute | Self::Hour | Self::Day => Measure::Span,
            Self::Percent => Measure::Percent,
        }
    }

    /// Grams in one, for units of mass and the stick.
    pub fn grams(self) -> Option<f64> {
        Some(match self {
            Self::Milligram => 1e-3,
            Self::Gram => 1.0,
            Self::Kilogram => 1000.0,
            Self::Pound => 453.592_37,
            Self::MetricPound => 500.0,
            Self::Ounce => 453.592_37 / 16.0,
            Self::Stick => STICK_G,
            _ => return None,
        })
    }

    /// Millilitres in one, for units of volume and the stick.
    ///
    /// Fluid ounce, pint, quart and gallon are imperial in the United Kingdom and Australia, US otherwise: with metric
    /// spoons they come out of US recipes. No law fixes a British cup; 250 mL is taken there too.
    pub fn milliliters(self, system: SpoonSystem) -> Option<f64> {
        let imperial = matches!(system, SpoonSystem::Uk | SpoonSystem::Australia);
        let us = matches!(system, SpoonSystem::Us);
        let teaspoon = if us { US_GALLON_ML / 768.0 } else { 5.0 };
        let gallon = if imperial { IMPERIAL_GALLON_ML } else { US_GALLON_ML };
        Some(match self {
            Self::Pinch => teaspoon / 16.0,
            Self::Teaspoon => teaspoon,
            Self::Tablespoon if system == SpoonSystem::Australia => 20.0,
            Self::Tablespoon => 3.0 * teaspoon,
            Self::Cup => {
                if us {
                    US_GALLON_ML / 16.0
                } else {
                    250.0
                }
            }
            Self::FluidOunce => gallon / if imperial { 160.0 } else { 128.0 },
            Self::Pint => gallon / 8.0,
            Self::Quart => gallon / 4.0,
            Self::Gallon => gallon,
            Self::Milliliter => 1.0,
            Self::Liter => 1000.0,
            Self::Stick => US_GALLON_ML / 32.0,
            _ => return None,
        })
    }

    /// Seconds in one, for units of time.
    pub fn seconds(self) -> Option<f64> {
        Some(match self {
            Self::Second => 1.0,
            Self::Minute => 60.0,
            Self::Hour => 3600.0,
            Self::Day => 86_400.0,
            _ => return None,
        })
    }

    /// Whether `self` may follow `larger` in one amount, as in `14 lb 6 oz` or `1 h 30 min`.
    pub(super) fn follows(self, larger: Self) -> bool {
        use Unit as U;
        const CHAINS: &[&[Unit]] = &[
            &[U::Pound, U::Ounce],
            &[U::Kilogram, U::Gram, U::Milligram],
            &[U::MetricPound, U::Gram],
            &[U::Liter, U::Milliliter],
            &[U::Gallon, U::Quart, U::Pint, U::Cup, U::FluidOunce, U::Tablespoon, U::Teaspoon, U::Pinch],
            &[U::Day, U::Hour, U::Minute, U::Second],
        ];
        CHAINS.iter().any(|chain| {
            let place = |unit| chain.iter().position(|u| *u == unit);
            matches!((place(larger), place(self)), (Some(a), Some(b)) if a < b)
        })
    }

    /// Whether a thousand of it is beyond any kitchen, so that `2.268 kg` is never two thousand.
    pub(super) fn never_thousands(self) -> bool {
        !matches!(self, Self::Milligram | Self::Gram | Self::Milliliter | Self::Second | Self::Minute)
    }
}
