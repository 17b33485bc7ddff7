//! Wet brine: strength in both conventions, salt for water, volume, vessel, time, cold.
//!
//! Owns what happens in the tub. Knows nothing of dry doses or of how deep salt gets ([`crate::salt`]). Start at
//! [`wet_brine`].

use crate::bird::Bird;
use crate::quantity::{
    Mass, Temperature, Volume, fahrenheit, grams, in_celsius, in_grams, in_kilograms, in_milliliters, in_pounds,
    milliliters,
};
use crate::range::Range;
use chrono::TimeDelta;

/// Strength of a brine: mass of salt over mass of solution, above 0 to 26 % (it holds no more when cold).
///
/// Cooks mean one of two things by "6 %": 6 g of salt in 100 g of brine, or 6 g of salt to 100 g of water. Constructors and
/// readers name which.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct BrineStrength(f64);

/// Why there is no brine.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum BrineError {
    /// Not above zero, or more than cold water dissolves.
    #[error("{given} % of salt in the brine is outside {low} to {high} %")]
    Strength {
        /// Percent of the brine's mass.
        given: f64,
        /// Least percent.
        low: f64,
        /// Most percent.
        high: f64,
    },
    /// The volume of water is not above zero.
    #[error("{given:?} is no volume of water")]
    Water {
        /// What was given.
        given: Volume,
    },
    /// The packer has put salt in already: brine would make it too salty.
    #[error("the bird holds {percent} % of solution already")]
    AlreadySalted {
        /// Percent on the label.
        percent: f64,
    },
}

/// Most salt cold water holds, percent of the brine's mass.
const SATURATED: f64 = 26.0;
/// Longest time in brine published, hours. Source: [`crate::source::SALTING_GUIDANCE`].
const LONGEST_HOURS: i64 = 48;

impl BrineStrength {
    /// `percent` grams of salt in 100 g of brine.
    ///
    /// # Errors
    /// [`BrineError::Strength`] unless above 0 and at most 26 %.
    pub fn of_solution(percent: f64) -> Result<Self, BrineError> {
        if percent > 0.0 && percent <= SATURATED {
            Ok(Self(percent / 100.0))
        } else {
            Err(BrineError::Strength { given: percent, low: 0.0, high: SATURATED })
        }
    }

    /// `percent` grams of salt to 100 g of water.
    ///
    /// # Errors
    /// As [`BrineStrength::of_solution`], with the percentage of the brine.
    pub fn of_water(percent: f64) -> Result<Self, BrineError> {
        Self::of_solution(100.0 * percent / (100.0 + percent))
    }

    /// The strength of `salt` in `water`.
    ///
    /// # Errors
    /// No water, or a strength out of range.
    pub fn mixed(salt: Mass, water: Volume) -> Result<Self, BrineError> {
        let water_g = in_milliliters(water);
        if !(water_g > 0.0 && water_g.is_finite()) {
            return Err(BrineError::Water { given: water });
        }
        Self::of_water(100.0 * in_grams(salt) / water_g)
    }

    /// The published one, 3/4 cup of table salt to a US gallon of water: 5.5 % of the brine. Source:
    /// [`crate::source::SALTING_GUIDANCE`].
    pub fn usual() -> Self {
        Self(219.0 / (219.0 + 3_785.411_784))
    }

    /// Percent of the brine's mass.
    pub fn percent_of_solution(self) -> f64 {
        self.0 * 100.0
    }

    /// Percent of the water's mass.
    pub fn percent_of_water(self) -> f64 {
        100.0 * self.0 / (1.0 - self.0)
    }

    /// Salt to stir into `water` (taken at 1 g/mL: within 0.3 % up to 25 °C).
    pub fn salt_for(self, water: Volume) -> Mass {
        grams(in_milliliters(water) * self.0 / (1.0 - self.0))
    }

    /// Kilograms a litre of it, 0 to 25 °C: within 0.004 up to 10 % of salt, 0.006 beyond (it is let expand like water, and
    /// brine expands more). Source: [`crate::source::BRINE_DENSITY`].
    pub fn density(self, temperature: Temperature) -> f64 {
        let from_densest = in_celsius(temperature) - 4.0;
        (1.0 - 6.6e-6 * from_densest * from_densest) * (1.0 + self.0 * (0.7076 + 0.2494 * self.0))
    }

    /// Volume of the brine that `water` makes, cold.
    pub fn volume_from(self, water: Volume) -> Volume {
        let mass_g = in_milliliters(water) + in_grams(self.salt_for(water));
        milliliters(mass_g / self.density(warmest_allowed()))
    }
}

/// Bird and brine stay at or below this: 40 °F.
pub fn warmest_allowed() -> Temperature {
    fahrenheit(40.0)
}

/// A bird in brine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WetBrine {
    /// Strength.
    pub strength: BrineStrength,
    /// Water.
    pub water: Volume,
    /// Salt, any grain: it all dissolves.
    pub salt: Mass,
    /// The brine they make.
    pub brine: Volume,
    /// A vessel that holds brine and bird with room to spare.
    pub vessel: Volume,
    /// How long it takes.
    pub time: Range<TimeDelta>,
    /// Never longer than this, salted rest included.
    pub at_most: TimeDelta,
    /// Never warmer than this.
    pub no_warmer_than: Temperature,
}

/// Brine for `bird`. Volume, vessel and time are common practice; strength, limit and cold are published.
///
/// # Errors
/// [`BrineError::AlreadySalted`] for a bird that holds any solution.
pub fn wet_brine(bird: &Bird, strength: BrineStrength) -> Result<WetBrine, BrineError> {
    if let Some(percent) = bird.solution.filter(|p| *p != 0.0) {
        return Err(BrineError::AlreadySalted { percent });
    }
    let kg = in_kilograms(bird.mass.get());
    let water = milliliters(1150.0 * kg);
    let at_most = TimeDelta::hours(LONGEST_HOURS);
    let minutes =
        |per_pound: f64| TimeDelta::minutes((per_pound * in_pounds(bird.mass.get())).round() as i64).min(at_most);
    Ok(WetBrine {
        strength,
        water,
        salt: strength.salt_for(water),
        brine: strength.volume_from(water),
        vessel: milliliters(2500.0 * kg),
        time: Range::new(minutes(30.0), minutes(60.0)),
        at_most,
        no_warmer_than: warmest_allowed(),
    })
}
