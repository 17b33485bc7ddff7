//! One salt for another: by mass, with the cooks' rules of thumb beside it.

use super::{Grain, Salt};
use crate::quantity::{Mass, Volume};
use crate::source::{self, Source};

/// How an amount of salt was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Measured {
    /// On a scale.
    Mass(Mass),
    /// In spoons.
    Volume(Volume),
}

/// The same saltiness in two salts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Converted {
    /// Mass, the same of both.
    pub mass: Mass,
    /// Volume in the first salt.
    pub from: Volume,
    /// Volume in the second.
    pub to: Volume,
}

/// What `amount` of `from` is in `to`. Signs and zero pass through.
pub fn convert(amount: Measured, from: &Salt, to: &Salt) -> Converted {
    let mass = match amount {
        Measured::Mass(mass) => mass,
        Measured::Volume(volume) => from.mass_of(volume),
    };
    Converted { mass, from: from.volume_of(mass), to: to.volume_of(mass) }
}

/// What cooks say without a scale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RuleOfThumb {
    /// The salt of the recipe.
    pub from: Grain,
    /// The salt at hand.
    pub to: Grain,
    /// Spoons of `to` for a spoon of `from`, as the rule has it.
    pub spoons: f64,
    /// Where it comes from.
    pub source: Source,
}

/// The rules worth a word beside the answer by mass. The answer itself is always by mass.
pub const RULES_OF_THUMB: &[RuleOfThumb] = &[
    RuleOfThumb { from: Grain::FlakeKosher, to: Grain::Table, spoons: 0.5, source: source::HALF_AS_MUCH_TABLE },
    RuleOfThumb {
        from: Grain::FlakeKosher,
        to: Grain::CoarseKosher,
        spoons: 0.75,
        source: source::A_QUARTER_LESS_COARSE,
    },
];

impl RuleOfThumb {
    /// Spoons of `to` for a spoon of `from` by mass.
    pub fn spoons_by_mass(&self) -> f64 {
        self.from.grams_per_teaspoon().0 / self.to.grams_per_teaspoon().0
    }

    /// Whether mass bears it out within a tenth.
    pub fn holds(&self) -> bool {
        (self.spoons / self.spoons_by_mass() - 1.0).abs() <= 0.1
    }
}

/// The rule for that pair, turned round where it is told the other way.
pub fn rule_of_thumb(from: Grain, to: Grain) -> Option<RuleOfThumb> {
    RULES_OF_THUMB.iter().find_map(|rule| {
        if (rule.from, rule.to) == (from, to) {
            Some(*rule)
        } else if (rule.to, rule.from) == (from, to) {
            Some(RuleOfThumb { from, to, spoons: 1.0 / rule.spoons, source: rule.source })
        } else {
            None
        }
    })
}
