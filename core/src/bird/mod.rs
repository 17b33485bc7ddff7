//! What is cooked and for whom: kinds of bird, mass, condition, form; guests to mass and back.

mod check;
mod portion;

pub use check::{BirdError, BirdNote};
pub use portion::{
    Feeds, Leftovers, Portion, Purchase, TWO_BIRDS_ABOVE_LB, edible, edible_share, feeds, mass_for, portion,
};

use crate::quantity::{Mass, in_kilograms, kilograms};

/// Kind of bird.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kind {
    /// A whole turkey.
    Turkey,
    /// A turkey breast, bone in.
    TurkeyBreast,
    /// A chicken (broiler or roaster).
    Chicken,
    /// A capon.
    Capon,
    /// A duck.
    Duck,
    /// A goose.
    Goose,
}

/// State in which the bird is at hand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Condition {
    /// Never frozen, or fully thawed.
    Fresh,
    /// Frozen hard.
    Frozen,
    /// Thawed outside, still ice inside.
    PartThawed,
}

/// How it lies over the heat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Form {
    /// Whole.
    Whole,
    /// Backbone out, opened flat.
    Flat,
    /// Cut into pieces.
    Pieces,
}

/// Mass of the bird as sold, bones in: 0.2 kg to 25 kg.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct BirdMass(Mass);

/// Why a mass is no bird's mass.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{given:?} is outside {low:?} to {high:?}")]
pub struct BirdMassError {
    /// What was given.
    pub given: Mass,
    /// Smallest mass taken.
    pub low: Mass,
    /// Largest mass taken.
    pub high: Mass,
}

impl BirdMass {
    /// Checks the range.
    ///
    /// # Errors
    /// [`BirdMassError`] outside 0.2 kg to 25 kg, or when not a number.
    pub fn new(mass: Mass) -> Result<Self, BirdMassError> {
        let kg = in_kilograms(mass);
        if (0.2..=25.0).contains(&kg) {
            Ok(Self(mass))
        } else {
            Err(BirdMassError { given: mass, low: kilograms(0.2), high: kilograms(25.0) })
        }
    }

    /// The mass.
    pub fn get(self) -> Mass {
        self.0
    }
}

/// The bird of a plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bird {
    /// Kind.
    pub kind: Kind,
    /// Mass as sold.
    pub mass: BirdMass,
    /// Fresh, frozen or in between.
    pub condition: Condition,
    /// Whole, flat, pieces.
    pub form: Form,
    /// Stuffed (only when whole).
    pub stuffed: bool,
    /// Percent of added solution on the label ("contains up to N %"), if the packer already salted it.
    pub solution: Option<f64>,
}

impl Bird {
    /// The same bird once it has thawed.
    #[must_use]
    pub fn thawed(self) -> Self {
        Self { condition: Condition::Fresh, ..self }
    }
}

/// Who eats.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Diners {
    /// Adults.
    pub adults: u16,
    /// Children.
    pub children: u16,
    /// Whether leftovers are wanted.
    pub leftovers: bool,
}

names!(Kind {
    Turkey => "turkey",
    TurkeyBreast => "turkey-breast",
    Chicken => "chicken",
    Capon => "capon",
    Duck => "duck",
    Goose => "goose",
});
names!(Condition { Fresh => "fresh", Frozen => "frozen", PartThawed => "part-thawed" });
names!(Form { Whole => "whole", Flat => "flat", Pieces => "pieces" });
