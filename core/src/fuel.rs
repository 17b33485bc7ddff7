//! How much a fire eats. Common practice, no source: [`crate::source::FUEL`]. Weather and cooker change it much.

use crate::quantity::{Mass, kilograms, pounds};
use crate::range::Range;
use chrono::TimeDelta;

/// What burns.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Fuel {
    /// Charcoal, briquettes or lump, under a lid at 325 °F.
    Charcoal,
    /// Propane at a medium flame.
    Propane,
    /// Wood pellets at 325 °F.
    Pellets,
}

names!(Fuel { Charcoal => "charcoal", Propane => "propane", Pellets => "pellets" });

/// Propane in a usual full bottle.
pub fn propane_bottle() -> Mass {
    pounds(20.0)
}

impl Fuel {
    /// What an hour takes. Source: [`crate::source::FUEL`].
    pub fn an_hour(self) -> Range<Mass> {
        match self {
            Self::Charcoal => Range::new(kilograms(0.4), kilograms(0.7)),
            Self::Propane => Range::new(pounds(1.0), pounds(1.5)),
            Self::Pellets => Range::new(pounds(1.0), pounds(2.0)),
        }
    }

    /// What `span` takes; nothing for no time or less.
    pub fn needed(self, span: TimeDelta) -> Range<Mass> {
        let hours = (span.as_seconds_f64() / 3600.0).max(0.0);
        let hour = self.an_hour();
        Range::new(hour.low * hours, hour.high * hours)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::in_kilograms;

    #[test]
    fn more_time_takes_more_fuel_and_no_time_none() {
        for fuel in Fuel::ALL {
            let (three, four) = (fuel.needed(TimeDelta::hours(3)), fuel.needed(TimeDelta::hours(4)));
            assert!(three.low < four.low && three.high < four.high && four.low < four.high);
            assert!(in_kilograms(fuel.needed(TimeDelta::hours(-1)).high).abs() < 1e-12);
        }
    }
}
