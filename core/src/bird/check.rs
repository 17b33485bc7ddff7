//! Which birds make sense: hard errors for what can't be, notes for what is odd.

use super::{Bird, BirdMass, Condition, Form, Kind};
use crate::quantity::{Mass, pounds};
use crate::range::Range;

/// Why a bird can't be cooked as described.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum BirdError {
    /// No bird of that kind has that mass: most likely a wrong unit or digit.
    #[error("{kind:?} of {given:?}, possible {low:?} to {high:?}")]
    MassForKind {
        /// Kind.
        kind: Kind,
        /// What was given.
        given: Mass,
        /// Smallest mass taken.
        low: Mass,
        /// Largest mass taken.
        high: Mass,
    },
    /// Only a whole bird can be stuffed.
    #[error("a bird in form {form:?} can't be stuffed")]
    StuffedForm {
        /// Its form.
        form: Form,
    },
    /// The roasting chart says not to stuff this kind.
    #[error("{kind:?} is not stuffed")]
    StuffedKind {
        /// Kind.
        kind: Kind,
    },
    /// A frozen bird can't be stuffed; thaw it first.
    #[error("a frozen bird can't be stuffed")]
    StuffedFrozen,
    /// A breast has no backbone to take out and is one piece already.
    #[error("{kind:?} can't be {form:?}")]
    FormForKind {
        /// Kind.
        kind: Kind,
        /// Form asked for.
        form: Form,
    },
    /// Label percentages above 50 or below 0 are misread.
    #[error("{given} % of solution, possible {low} to {high}")]
    Solution {
        /// What was given, percent.
        given: f64,
        /// Least percent.
        low: f64,
        /// Most percent.
        high: f64,
    },
}

/// What is worth a word about a possible bird.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BirdNote {
    /// Smaller than usually sold.
    Small(Range<Mass>),
    /// Bigger than usually sold.
    Big(Range<Mass>),
    /// So big that two birds cook quicker and safer.
    BetterTwo,
}

/// Largest added solution taken from a label, percent.
const SOLUTION_MAX_PCT: f64 = 50.0;

impl Kind {
    /// Masses at which it is usually sold. Common practice, no source ([`crate::source::USUAL_MASSES`]); the roasting
    /// timetable's weights lie inside.
    pub fn usual_mass(self) -> Range<Mass> {
        let (low, high) = match self {
            Self::Turkey => (8.0, 24.0),
            Self::TurkeyBreast => (3.0, 9.0),
            Self::Chicken => (2.5, 8.0),
            Self::Capon => (4.0, 10.0),
            Self::Duck => (3.5, 7.0),
            Self::Goose => (8.0, 14.0),
        };
        Range::new(pounds(low), pounds(high))
    }

    /// Masses taken at all: outside, a digit or a unit is wrong. Common practice, no source.
    pub fn possible_mass(self) -> Range<Mass> {
        let (low, high) = match self {
            Self::Turkey => (3.0, 50.0),
            Self::TurkeyBreast => (0.5, 16.0),
            Self::Chicken => (0.5, 14.0),
            Self::Capon => (2.0, 16.0),
            Self::Duck => (1.0, 14.0),
            Self::Goose => (3.0, 25.0),
        };
        Range::new(pounds(low), pounds(high))
    }
}

impl Bird {
    /// Checks that the bird makes sense, and says what is odd about it.
    ///
    /// # Errors
    /// [`BirdError`], the first that applies.
    pub fn check(&self) -> Result<Vec<BirdNote>, BirdError> {
        let mass = self.mass.get();
        // Pieces are sold by any weight.
        let possible = self.kind.possible_mass();
        if self.form != Form::Pieces && !possible.holds(mass) {
            return Err(BirdError::MassForKind {
                kind: self.kind,
                given: mass,
                low: possible.low,
                high: possible.high,
            });
        }
        if self.kind == Kind::TurkeyBreast && self.form != Form::Whole {
            return Err(BirdError::FormForKind { kind: self.kind, form: self.form });
        }
        if self.stuffed {
            if self.form != Form::Whole {
                return Err(BirdError::StuffedForm { form: self.form });
            }
            if self.kind == Kind::Duck {
                return Err(BirdError::StuffedKind { kind: self.kind });
            }
        }
        if let Some(given) = self.solution
            && !(0.0..=SOLUTION_MAX_PCT).contains(&given)
        {
            return Err(BirdError::Solution { given, low: 0.0, high: SOLUTION_MAX_PCT });
        }
        Ok(self.notes(self.mass))
    }

    /// Checks that it can go onto the heat in that condition.
    ///
    /// # Errors
    /// As [`Bird::check`], and [`BirdError::StuffedFrozen`].
    pub fn check_for_heat(&self, start: Condition) -> Result<Vec<BirdNote>, BirdError> {
        let notes = self.check()?;
        if self.stuffed && start != Condition::Fresh {
            return Err(BirdError::StuffedFrozen);
        }
        Ok(notes)
    }

    fn notes(&self, mass: BirdMass) -> Vec<BirdNote> {
        let mut notes = Vec::new();
        let usual = self.kind.usual_mass();
        if self.form != Form::Pieces {
            if mass.get() < usual.low {
                notes.push(BirdNote::Small(usual));
            } else if mass.get() > usual.high {
                notes.push(BirdNote::Big(usual));
            }
            if mass.get() > pounds(super::TWO_BIRDS_ABOVE_LB) {
                notes.push(BirdNote::BetterTwo);
            }
        }
        notes
    }
}
