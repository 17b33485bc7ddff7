//! Salt: kinds by grain, a person's own from its packet, conversions by mass, doses and sodium.
//!
//! Owns grams a spoon and what follows from them. Knows nothing of when to salt (`plan`), of brine in a tub
//! ([`crate::brine`]) or of words. Start at [`Salt`], [`convert`] and [`dose`]; [`depth_after`] tells how far salt gets.

mod convert;
mod depth;
mod dose;
mod own;
mod sodium;

pub use convert::{Converted, Measured, RULES_OF_THUMB, RuleOfThumb, convert, rule_of_thumb};
pub use depth::{Depth, depth_after};
pub use dose::{
    BAKING_POWDER_G_PER_TSP, Dose, DoseError, HeldBack, NO_SALT_FROM_PERCENT, PEPPER_G_PER_TSP, Place, Share, SkinMix,
    Strength, dose,
};
pub use own::{OwnSalt, PacketError};
pub use sodium::{
    DAILY_SODIUM_MG, SODIUM_OF_NACL, Serving, SodiumError, SodiumEstimate, SodiumRange, sodium_per_serving,
};

use crate::quantity::{Mass, SpoonSystem, Unit, Volume, grams, in_grams, in_milliliters, milliliters};
use crate::source::{self, Source};

/// Kind of salt by its grain.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Grain {
    /// Table salt.
    Table,
    /// Fine sea salt.
    FineSea,
    /// Pickling (canning) salt: fine, nothing added.
    Pickling,
    /// Kosher salt of light hollow flakes.
    FlakeKosher,
    /// Kosher salt of dense coarse grains.
    CoarseKosher,
    /// Coarse sea salt.
    CoarseSea,
}

names!(Grain {
    Table => "table",
    FineSea => "fine-sea",
    Pickling => "pickling",
    FlakeKosher => "flake-kosher",
    CoarseKosher => "coarse-kosher",
    CoarseSea => "coarse-sea",
});

impl Grain {
    /// Grams in a US teaspoon, and who says so.
    pub fn grams_per_teaspoon(self) -> (f64, Source) {
        match self {
            Self::Table => (6.0, source::TABLE_SALT),
            Self::FineSea => (5.5, source::SEA_SALT),
            Self::Pickling => (6.2, source::PICKLING_SALT),
            Self::FlakeKosher => (2.8, source::KOSHER_SALT),
            Self::CoarseKosher => (4.8, source::KOSHER_SALT),
            Self::CoarseSea => (5.0, source::SEA_SALT),
        }
    }
}

/// The salt in the cook's hand.
#[derive(Debug, Clone, PartialEq)]
pub enum Salt {
    /// A kind known by its grain.
    Grain(Grain),
    /// A person's own, from its packet or their scale.
    Own(OwnSalt),
}

impl From<Grain> for Salt {
    fn from(grain: Grain) -> Self {
        Self::Grain(grain)
    }
}

impl Salt {
    /// Grams in a millilitre, loosely spooned.
    pub fn grams_per_ml(&self) -> f64 {
        match self {
            Self::Grain(grain) => grain.grams_per_teaspoon().0 / us_teaspoon_ml(),
            Self::Own(own) => own.grams_per_ml(),
        }
    }

    /// Grams in one teaspoon of `system`.
    pub fn grams_per_teaspoon(&self, system: SpoonSystem) -> f64 {
        self.grams_per_ml() * Unit::Teaspoon.milliliters(system).unwrap_or(5.0)
    }

    /// Mass of a volume of it.
    pub fn mass_of(&self, volume: Volume) -> Mass {
        grams(in_milliliters(volume) * self.grams_per_ml())
    }

    /// Volume of a mass of it.
    pub fn volume_of(&self, mass: Mass) -> Volume {
        milliliters(in_grams(mass) / self.grams_per_ml())
    }

    /// Who says how heavy it is; none for a person's own.
    pub fn source(&self) -> Option<Source> {
        match self {
            Self::Grain(grain) => Some(grain.grams_per_teaspoon().1),
            Self::Own(_) => None,
        }
    }
}

/// A US teaspoon in millilitres.
fn us_teaspoon_ml() -> f64 {
    Unit::Teaspoon.milliliters(SpoonSystem::Us).unwrap_or(4.928_921_593_75)
}
