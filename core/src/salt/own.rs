//! A person's own salt, from its packet or a spoon on their scale.

use super::sodium::SODIUM_OF_NACL;
use crate::quantity::{Mass, Volume, grams, in_grams, in_milliliters};

/// A salt known by its weight a volume: 0.3 to 1.6 g/mL.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnSalt {
    /// What its owner calls it.
    pub name: Option<String>,
    grams_per_ml: f64,
}

/// Lightest loose salt taken, g/mL (about 1.5 g a teaspoon: large hollow flakes).
const LIGHTEST: f64 = 0.3;
/// Heaviest loose salt taken, g/mL (about 8 g a teaspoon; solid rock salt is 2.17).
const HEAVIEST: f64 = 1.6;

/// Why the figures of a packet are not those of salt.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum PacketError {
    /// The volume is zero, negative or no number.
    #[error("{given:?} is no volume of salt")]
    Volume {
        /// What was given.
        given: Volume,
    },
    /// The mass is zero, negative or no number.
    #[error("{given:?} is no mass of salt or sodium")]
    Mass {
        /// What was given.
        given: Mass,
    },
    /// No salt is so light or so heavy: most likely another spoon or a slipped point.
    #[error("{given} g/mL is outside {low} to {high} g/mL")]
    Density {
        /// Grams in a millilitre.
        given: f64,
        /// Least, g/mL.
        low: f64,
        /// Most, g/mL.
        high: f64,
    },
    /// The packet states mass and sodium, and they are not those of plain salt: a mixture, or a misread line.
    #[error("sodium is {given} of the mass, plain salt has {low} to {high}")]
    NotPlainSalt {
        /// Sodium over mass.
        given: f64,
        /// Least share taken for plain salt.
        low: f64,
        /// Most share taken for plain salt.
        high: f64,
    },
}

impl OwnSalt {
    /// A salt of which a millilitre weighs `grams_per_ml`.
    ///
    /// # Errors
    /// [`PacketError::Density`] outside 0.3 to 1.6 g/mL, or when not a number.
    pub fn new(name: Option<String>, grams_per_ml: f64) -> Result<Self, PacketError> {
        if (LIGHTEST..=HEAVIEST).contains(&grams_per_ml) {
            Ok(Self { name, grams_per_ml })
        } else {
            Err(PacketError::Density { given: grams_per_ml, low: LIGHTEST, high: HEAVIEST })
        }
    }

    /// From `1/4 tsp is 0.7 g`. The volume is in the spoon it was measured with: the person's own, or a label's
    /// ([`crate::quantity::Amount::label_volume`]).
    ///
    /// # Errors
    /// Volume or mass not above zero, or a weight no salt has.
    pub fn from_weight(name: Option<String>, volume: Volume, mass: Mass) -> Result<Self, PacketError> {
        let ml = in_milliliters(volume);
        if !(ml > 0.0 && ml.is_finite()) {
            return Err(PacketError::Volume { given: volume });
        }
        if !(in_grams(mass) > 0.0 && in_grams(mass).is_finite()) {
            return Err(PacketError::Mass { given: mass });
        }
        Self::new(name, in_grams(mass) / ml)
    }

    /// From the sodium line of a label, `1/4 tsp has 280 mg sodium`; `volume` in label spoons. `mass` is the serving's weight
    /// where the label prints it: it only checks that this is plain salt, because labels round it to 0.1 g and sodium
    /// to 10 mg.
    ///
    /// # Errors
    /// As [`OwnSalt::from_weight`], and [`PacketError::NotPlainSalt`] where mass and sodium don't fit together.
    pub fn from_label(
        name: Option<String>,
        volume: Volume,
        sodium: Mass,
        mass: Option<Mass>,
    ) -> Result<Self, PacketError> {
        if let Some(mass) = mass {
            plain_salt(in_grams(sodium) / in_grams(mass), in_grams(mass))?;
        }
        Self::from_weight(name, volume, grams(in_grams(sodium) / SODIUM_OF_NACL))
    }

    /// Grams in a millilitre.
    pub fn grams_per_ml(&self) -> f64 {
        self.grams_per_ml
    }
}

/// Whether sodium is the share of the mass that plain salt has, as far as a label's rounding lets one see.
fn plain_salt(share: f64, grams: f64) -> Result<(), PacketError> {
    let slack = (0.05 + 0.005 / SODIUM_OF_NACL) / grams + 0.02;
    let (low, high) = (SODIUM_OF_NACL * (1.0 - slack), SODIUM_OF_NACL * (1.0 + slack));
    if (low..=high).contains(&share) { Ok(()) } else { Err(PacketError::NotPlainSalt { given: share, low, high }) }
}
