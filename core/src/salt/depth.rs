//! How far salt has got into the meat, and how long that takes.
//!
//! Salt from a surface that stays salty into deep muscle: the concentration falls as erfc(x / 2√(Dt)). Diffusivity:
//! [`crate::source::SALT_IN_MUSCLE`], measured in **pork loin**; nothing is published for poultry at kitchen pressure, so
//! whoever shows a depth says so.

use crate::range::Range;
use crate::source::{self, Source};
use chrono::TimeDelta;

/// Diffusivity of NaCl in pork loin at 4 to 6 °C, m²/s, and its uncertainty.
const DIFFUSIVITY: f64 = 1.9e-10;
const DIFFUSIVITY_UNCERTAINTY: f64 = 0.28e-10;
/// Where erfc is 0.1.
const ERFC_INVERSE_OF_A_TENTH: f64 = 1.163_087_153_676_674_3;

/// Depth at which a tenth of the surface's extra salt has arrived, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Depth {
    /// Between the ends of the published uncertainty, mm.
    pub mm: Range<f64>,
    /// At the published value, mm.
    pub expected_mm: f64,
    /// Where the diffusivity comes from.
    pub source: Source,
}

/// How deep salt has got after `rest` in the fridge. Zero for no time or less.
pub fn depth_after(rest: TimeDelta) -> Depth {
    let seconds = rest.num_seconds().max(0) as f64;
    let mm = |diffusivity: f64| 2.0 * (diffusivity * seconds).sqrt() * ERFC_INVERSE_OF_A_TENTH * 1000.0;
    Depth {
        mm: Range::new(mm(DIFFUSIVITY - DIFFUSIVITY_UNCERTAINTY), mm(DIFFUSIVITY + DIFFUSIVITY_UNCERTAINTY)),
        expected_mm: mm(DIFFUSIVITY),
        source: source::SALT_IN_MUSCLE,
    }
}
