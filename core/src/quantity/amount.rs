//! An amount as written: one number, or several with their units, added up only when asked in which spoons.

use super::{
    LABEL_CUP_ML, LABEL_TABLESPOON_ML, LABEL_TEASPOON_ML, Mass, Measure, SpoonSystem, Temperature, Unit, Volume,
    celsius, fahrenheit, gas_mark, grams, milliliters, thermostat,
};
use chrono::TimeDelta;

/// One number with its unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Part {
    /// The number, finite.
    pub value: f64,
    /// Its unit, if one was written.
    pub unit: Option<Unit>,
}

/// An amount of one or more parts that measure the same thing: `14 lb 6 oz` has two.
#[derive(Debug, Clone, PartialEq)]
pub struct Amount {
    first: Part,
    rest: Vec<Part>,
}

impl Amount {
    /// An amount of one part.
    pub fn new(value: f64, unit: Option<Unit>) -> Self {
        Self { first: Part { value, unit }, rest: Vec::new() }
    }

    /// Adds a part. The caller has seen that it measures the same.
    pub(super) fn push(&mut self, part: Part) {
        self.rest.push(part);
    }

    /// Gives a bare number its unit.
    pub fn with_unit(mut self, unit: Unit) -> Self {
        self.first.unit.get_or_insert(unit);
        self
    }

    /// Number of the first part.
    pub fn value(&self) -> f64 {
        self.first.value
    }

    /// Unit of the first part.
    pub fn unit(&self) -> Option<Unit> {
        self.first.unit
    }

    /// The parts in the order written.
    pub fn parts(&self) -> impl Iterator<Item = Part> + '_ {
        std::iter::once(self.first).chain(self.rest.iter().copied())
    }

    /// The number, where no unit was written.
    pub fn bare(&self) -> Option<f64> {
        self.first.unit.is_none().then_some(self.first.value)
    }

    /// What it measures; none for a bare number.
    pub fn measure(&self) -> Option<Measure> {
        self.first.unit.map(Unit::measure)
    }

    fn total(&self, factor: impl Fn(Unit) -> Option<f64>) -> Option<f64> {
        self.parts().map(|part| Some(part.value * factor(part.unit?)?)).sum()
    }

    /// The mass, where every part is one (a stick counts as 113 g of butter).
    pub fn mass(&self) -> Option<Mass> {
        self.total(Unit::grams).map(grams)
    }

    /// The volume, where every part is one, in the person's spoons (a stick counts as half a US cup).
    pub fn volume(&self, system: SpoonSystem) -> Option<Volume> {
        self.total(|unit| unit.milliliters(system)).map(milliliters)
    }

    /// The volume as a US nutrition label means it: spoons of 5 and 15 mL, cups of 240 mL, the rest as in the US.
    pub fn label_volume(&self) -> Option<Volume> {
        let factor = |unit| match unit {
            Unit::Teaspoon => Some(LABEL_TEASPOON_ML),
            Unit::Tablespoon => Some(LABEL_TABLESPOON_ML),
            Unit::Cup => Some(LABEL_CUP_ML),
            other => other.milliliters(SpoonSystem::Us),
        };
        self.total(factor).map(milliliters)
    }

    /// The temperature. None for a scale not named ([`Unit::Degree`]) and for a mark that no dial has.
    pub fn temperature(&self) -> Option<Temperature> {
        match self.first.unit? {
            Unit::Fahrenheit => Some(fahrenheit(self.first.value)),
            Unit::Celsius => Some(celsius(self.first.value)),
            Unit::GasMark => gas_mark(self.first.value),
            Unit::Thermostat => thermostat(self.first.value),
            _ => None,
        }
    }

    /// The span of time to the second, where every part is one and the sum is under a thousand years.
    pub fn span(&self) -> Option<TimeDelta> {
        let seconds = self.total(Unit::seconds)?;
        if seconds.abs() > 3.2e10 {
            return None;
        }
        TimeDelta::try_seconds(seconds.round() as i64)
    }

    /// The percentage.
    pub fn percent(&self) -> Option<f64> {
        self.total(|unit| (unit == Unit::Percent).then_some(1.0))
    }
}
