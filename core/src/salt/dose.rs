//! How much salt a bird takes and where on the bird it goes.

use super::{Salt, us_teaspoon_ml};
use crate::bird::{Bird, Form, Kind};
use crate::quantity::{Mass, Volume, grams, in_milliliters, in_pounds};
use crate::range::Range;
use chrono::TimeDelta;

/// How salty.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Strength {
    /// Two thirds of the usual.
    Light,
    /// 3.9 g a kilogram of bird as bought (1 tbsp of flake kosher for nearly 5 lb).
    Usual,
    /// One and a half times the usual.
    Bold,
}

/// A place on the bird that gets its own spoon.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// Inside a whole bird.
    Cavity,
    /// The bony side of a flattened bird or a breast.
    BoneSide,
    /// A breast, under the skin.
    Breast,
    /// A thigh, under the skin.
    Thigh,
    /// A drumstick, under the skin.
    Drumstick,
    /// The skin, in a mix with pepper and baking powder.
    Skin,
}

names!(Strength { Light => "light", Usual => "usual", Bold => "bold" });
names!(Place {
    Cavity => "cavity",
    BoneSide => "bone-side",
    Breast => "breast",
    Thigh => "thigh",
    Drumstick => "drumstick",
    Skin => "skin",
});

/// Salt of one place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// Where.
    pub place: Place,
    /// How many of it a bird has.
    pub count: u8,
    /// Salt for each.
    pub each: Mass,
}

/// Why a dose is smaller than asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum HeldBack {
    /// The packer put in so much solution that more salt would spoil it: none.
    Nothing {
        /// Percent of solution on the label.
        percent: f64,
    },
    /// There is a little solution in it: light at most.
    Light {
        /// Percent of solution on the label.
        percent: f64,
    },
}

/// Salt for a bird.
#[derive(Debug, Clone, PartialEq)]
pub struct Dose {
    /// All of it.
    pub total: Mass,
    /// The strength given, after holding back.
    pub strength: Strength,
    /// Where it goes; sums to `total`. Empty when there is none.
    pub shares: Vec<Share>,
    /// Why less than asked for.
    pub held_back: Option<HeldBack>,
}

/// Why there is no dose.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum DoseError {
    /// A label can't say that.
    #[error("{given} % of solution is outside {low} to {high} %")]
    Solution {
        /// What was given, percent.
        given: f64,
        /// Least.
        low: f64,
        /// Most.
        high: f64,
    },
}

/// Most hours a salted bird waits in the fridge before it is cooked. Source: [`crate::source::SALTING_GUIDANCE`].
const LONGEST_REST_HOURS: i64 = 48;

/// From this percentage of solution on no salt is added. Source: [`crate::source::SALTED_BY_THE_PACKER`].
pub const NO_SALT_FROM_PERCENT: f64 = 5.0;
/// Baking powder, grams a US teaspoon (USDA SR28, NDB 18369).
pub const BAKING_POWDER_G_PER_TSP: f64 = 4.6;
/// Ground black pepper, grams a US teaspoon (USDA SR28, NDB 02030).
pub const PEPPER_G_PER_TSP: f64 = 2.3;
/// Sodium of baking powder, milligrams a gram: straight phosphate to sodium aluminium sulfate (USDA SR28, NDB 18370, 18369).
const BAKING_POWDER_SODIUM_MG_PER_G: Range<f64> = Range::new(78.93, 106.0);

impl Strength {
    /// Grams of salt a kilogram of bird as bought, bones in.
    pub fn grams_per_kg(self) -> f64 {
        let usual = 8.0 * 2.8 / (12.7 * 0.453_592_37);
        usual
            * match self {
                Self::Light => 2.0 / 3.0,
                Self::Usual => 1.0,
                Self::Bold => 1.5,
            }
    }
}

/// Salt for `bird` at `strength`.
///
/// A bird "containing up to N % of a solution" has been salted by the packer, and the label seldom says how much. A basted
/// whole bird holds about 3 % (9 CFR 381.169), which a light dose on top does not spoil; from 5 % on there is as much
/// salt in it as a usual dose, so it gets none. Water retained from chilling (9 CFR 441.10) is no solution.
///
/// # Errors
/// [`DoseError::Solution`] for a percentage outside 0 to 50.
pub fn dose(bird: &Bird, strength: Strength) -> Result<Dose, DoseError> {
    let held_back = held_back(bird.solution, strength)?;
    let strength = if held_back.is_some() { Strength::Light } else { strength };
    if let Some(HeldBack::Nothing { .. }) = held_back {
        return Ok(Dose { total: grams(0.0), strength, shares: Vec::new(), held_back });
    }
    let total = bird.mass.get() * (strength.grams_per_kg() / 1000.0);
    let places = places(bird.kind, bird.form);
    let sixteenths: f64 = places.iter().map(|(_, count, each)| f64::from(*count) * each).sum();
    let shares = places.iter().map(|(place, count, each)| Share {
        place: *place,
        count: *count,
        each: total * (each / sixteenths),
    });
    Ok(Dose { total, strength, shares: shares.collect(), held_back })
}

fn held_back(solution: Option<f64>, strength: Strength) -> Result<Option<HeldBack>, DoseError> {
    match solution {
        None => Ok(None),
        Some(percent) if !(0.0..=50.0).contains(&percent) => {
            Err(DoseError::Solution { given: percent, low: 0.0, high: 50.0 })
        }
        Some(percent) if percent >= NO_SALT_FROM_PERCENT => Ok(Some(HeldBack::Nothing { percent })),
        Some(percent) if percent > 0.0 && strength > Strength::Light => Ok(Some(HeldBack::Light { percent })),
        Some(_) => Ok(None),
    }
}

/// Places, how many, and sixteenths of a whole bird's dose for each; what a form lacks falls to the others.
fn places(kind: Kind, form: Form) -> &'static [(Place, u8, f64)] {
    const WHOLE: &[(Place, u8, f64)] = &[
        (Place::Cavity, 1, 6.0),
        (Place::Breast, 2, 2.0),
        (Place::Thigh, 2, 1.0),
        (Place::Drumstick, 2, 1.0),
        (Place::Skin, 1, 2.0),
    ];
    const FLAT: &[(Place, u8, f64)] = &[
        (Place::BoneSide, 1, 6.0),
        (Place::Breast, 2, 2.0),
        (Place::Thigh, 2, 1.0),
        (Place::Drumstick, 2, 1.0),
        (Place::Skin, 1, 2.0),
    ];
    const PIECES: &[(Place, u8, f64)] =
        &[(Place::Breast, 2, 2.0), (Place::Thigh, 2, 1.0), (Place::Drumstick, 2, 1.0), (Place::Skin, 1, 2.0)];
    const BREAST: &[(Place, u8, f64)] = &[(Place::BoneSide, 1, 6.0), (Place::Breast, 2, 2.0), (Place::Skin, 1, 2.0)];
    match (kind, form) {
        (Kind::TurkeyBreast, _) => BREAST,
        (_, Form::Whole) => WHOLE,
        (_, Form::Flat) => FLAT,
        (_, Form::Pieces) => PIECES,
    }
}

/// The mix for the skin: equal spoons of salt, pepper and baking powder.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SkinMix {
    /// The spoon: the same volume of each.
    pub spoon: Volume,
    /// Salt.
    pub salt: Mass,
    /// Ground black pepper.
    pub pepper: Mass,
    /// Baking powder.
    pub baking_powder: Mass,
    /// Sodium of the baking powder alone, mg, over its kinds.
    pub baking_powder_sodium_mg: Range<f64>,
}

impl Dose {
    /// Salt for each of `place`, if the bird has it.
    pub fn each(&self, place: Place) -> Option<Mass> {
        self.shares.iter().find(|share| share.place == place).map(|share| share.each)
    }

    /// The skin's mix when `salt` is the salt; none where there is no dose.
    pub fn skin_mix(&self, salt: &Salt) -> Option<SkinMix> {
        let skin = self.each(Place::Skin)?;
        let spoon = salt.volume_of(skin);
        let teaspoons = in_milliliters(spoon) / us_teaspoon_ml();
        let powder = teaspoons * BAKING_POWDER_G_PER_TSP;
        Some(SkinMix {
            spoon,
            salt: skin,
            pepper: grams(teaspoons * PEPPER_G_PER_TSP),
            baking_powder: grams(powder),
            baking_powder_sodium_mg: Range::new(
                powder * BAKING_POWDER_SODIUM_MG_PER_G.low,
                powder * BAKING_POWDER_SODIUM_MG_PER_G.high,
            ),
        })
    }

    /// The published dose for the same bird, 1 tbsp of kosher salt for 5 lb, in flake kosher: the grain that brings it nearest.
    pub fn published(bird: &Bird) -> Mass {
        grams(3.0 * 2.8 * in_pounds(bird.mass.get()) / 5.0)
    }

    /// The longest salted rest published.
    pub fn longest_rest() -> TimeDelta {
        TimeDelta::hours(LONGEST_REST_HOURS)
    }
}
