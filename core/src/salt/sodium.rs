//! Sodium on the plate, as a range: a good part of the salt stays behind in the pan.

use super::dose::Dose;
use super::{Grain, Salt};
use crate::bird::{Bird, Kind, edible};
use crate::quantity::{Mass, in_grams};
use crate::range::Range;

/// Sodium in pure NaCl, by mass: 22.98976928 / (22.98976928 + 35.453).
pub const SODIUM_OF_NACL: f64 = 0.393_372;
/// Sodium in table salt, by mass (USDA SR28, NDB 02047).
const SODIUM_OF_TABLE_SALT: f64 = 0.387_58;
/// Daily value on US labels, mg. Source: [`crate::source::SODIUM_DAILY_VALUE`].
pub const DAILY_SODIUM_MG: f64 = 2300.0;

/// Share of the salt that ends in what is eaten: low, expected, high. Source: [`crate::source::SALT_THAT_STAYS`].
const STAYS: [f64; 3] = [0.6, 0.8, 1.0];
/// Salt in a packer's solution, by mass: low, expected, high. Source: [`crate::source::SOLUTION_STRENGTH`].
const SOLUTION: [f64; 3] = [0.02, 0.04, 0.06];

/// How much one person eats.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Serving {
    /// The bird shared evenly among so many.
    OneOf(f64),
    /// So much cooked meat and skin.
    Mass(Mass),
}

/// Why there is no estimate.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum SodiumError {
    /// Servings or the mass of one are not above zero, or more than the bird has.
    #[error("{given:?} is no serving of this bird; it has {low} to {high} g")]
    Serving {
        /// What was given.
        given: Serving,
        /// Least, grams of cooked meat.
        low: f64,
        /// Most, grams of cooked meat.
        high: f64,
    },
}

/// Milligrams of sodium: low, expected, high.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SodiumRange {
    /// Least.
    pub low_mg: f64,
    /// Expected.
    pub expected_mg: f64,
    /// Most.
    pub high_mg: f64,
}

impl SodiumRange {
    fn from_three(mg: [f64; 3]) -> Self {
        let [low_mg, expected_mg, high_mg] = mg;
        Self { low_mg, expected_mg, high_mg }
    }

    /// Percent of the daily value: least to most.
    pub fn percent_of_day(&self) -> Range<f64> {
        let percent = |mg: f64| mg / DAILY_SODIUM_MG * 100.0;
        Range::new(percent(self.low_mg), percent(self.high_mg))
    }

    /// Percent of the daily value, expected.
    pub fn expected_percent_of_day(&self) -> f64 {
        self.expected_mg / DAILY_SODIUM_MG * 100.0
    }
}

/// Sodium of one serving and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SodiumEstimate {
    /// All of it.
    pub total: SodiumRange,
    /// From the salt and the baking powder.
    pub added: SodiumRange,
    /// From the packer's solution.
    pub solution: SodiumRange,
    /// From the meat itself.
    pub natural: SodiumRange,
}

impl Salt {
    /// Sodium of it, by mass.
    pub fn sodium_share(&self) -> f64 {
        match self {
            Self::Grain(Grain::Table) => SODIUM_OF_TABLE_SALT,
            _ => SODIUM_OF_NACL,
        }
    }
}

/// Sodium in one serving of roasted meat and skin, carrying what the dose and the packer put in.
///
/// # Errors
/// [`SodiumError::Serving`] for a serving that is not above zero or is more than the whole bird.
pub fn sodium_per_serving(
    bird: &Bird,
    salted: Option<(&Dose, &Salt)>,
    serving: Serving,
) -> Result<SodiumEstimate, SodiumError> {
    let cooked = edible(bird.kind, bird.mass, bird.solution.is_some_and(|p| p > 0.0));
    let (least, most) = (in_grams(cooked.low), in_grams(cooked.high));
    let cooked_g = [least, f64::midpoint(least, most), most];
    let share = shares(serving, cooked_g).ok_or(SodiumError::Serving { given: serving, low: 0.0, high: least })?;
    let added = salted.map_or([0.0; 3], |(dose, salt)| dose_sodium_mg(dose, salt));
    let natural = natural_sodium_mg_per_100g(bird.kind);
    let salt_in_solution = solution_salt_g(bird);

    let added = three(|i| added[i] * STAYS[i] * share[i]);
    let solution = three(|i| salt_in_solution * SOLUTION[i] * 1000.0 * SODIUM_OF_NACL * STAYS[i] * share[i]);
    // natural sodium was measured roasted: nothing more is lost, and it goes with the meat on the plate
    let natural = three(|i| natural[i] / 100.0 * plate_g(serving, cooked_g[i]));
    Ok(SodiumEstimate {
        total: SodiumRange::from_three(three(|i| added[i] + solution[i] + natural[i])),
        added: SodiumRange::from_three(added),
        solution: SodiumRange::from_three(solution),
        natural: SodiumRange::from_three(natural),
    })
}

fn three(value: impl Fn(usize) -> f64) -> [f64; 3] {
    [value(0), value(1), value(2)]
}

fn plate_g(serving: Serving, cooked_g: f64) -> f64 {
    match serving {
        Serving::OneOf(servings) => cooked_g / servings,
        Serving::Mass(mass) => in_grams(mass),
    }
}

/// The serving's share of the bird for low, expected and high sodium: little meat makes each gram saltier.
fn shares(serving: Serving, cooked_g: [f64; 3]) -> Option<[f64; 3]> {
    match serving {
        Serving::OneOf(servings) => (servings >= 1.0 && servings.is_finite()).then(|| [1.0 / servings; 3]),
        Serving::Mass(mass) => {
            let g = in_grams(mass);
            (g > 0.0 && g <= cooked_g[0]).then(|| three(|i| g / cooked_g[2 - i]))
        }
    }
}

fn dose_sodium_mg(dose: &Dose, salt: &Salt) -> [f64; 3] {
    let of_salt = in_grams(dose.total) * salt.sodium_share() * 1000.0;
    let powder = dose.skin_mix(salt).map_or(Range::exactly(0.0), |mix| mix.baking_powder_sodium_mg);
    [of_salt + powder.low, of_salt + f64::midpoint(powder.low, powder.high), of_salt + powder.high]
}

/// Grams of solution in the bird as bought: `N %` of the raw bird before it was added.
fn solution_salt_g(bird: &Bird) -> f64 {
    let percent = bird.solution.unwrap_or(0.0).clamp(0.0, 50.0);
    in_grams(bird.mass.get()) * percent / (100.0 + percent)
}

/// Sodium of roasted meat and skin without anything added, mg in 100 g: low, expected, high (USDA SR28).
fn natural_sodium_mg_per_100g(kind: Kind) -> [f64; 3] {
    match kind {
        Kind::Turkey => [77.0, 103.0, 114.0], // leg 05194; whole 05166; breast parts 05733
        Kind::TurkeyBreast => [63.0, 63.0, 114.0], // 05192; retail parts 05733
        Kind::Chicken | Kind::Capon => [73.0, 77.5, 82.0], // roaster 05112, broiler 05009
        Kind::Duck => [59.0; 3],              // 05140
        Kind::Goose => [70.0; 3],             // 05147
    }
}
