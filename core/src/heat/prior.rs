//! What is believed of a bird and a cooker before the first reading.
//!
//! Owns the list of unknowns and their prior. Start at [`Prior::of`]. The shipped numbers are learned from
//! [`crate::source::SYNTHETIC_COOKS`].

use super::small::{Matrix, Vector, ZERO};

/// How many unknowns a cook has.
pub const UNKNOWNS: usize = 14;
/// °C the air at the bird is hotter than the pit's thermometer (or than the setting, where nothing reads the pit).
pub const PIT: usize = 0;
/// °C of the bird as it meets the heat; below freezing it stands for ice still inside.
pub const START: usize = 1;
/// °C the pit's future is hotter than its recent past.
pub const AHEAD: usize = 12;
/// Logarithm of the minutes in which the skin dries.
pub const DRY: usize = 13;
/// Unknowns of the breast; those of the thigh follow.
pub const BREAST: usize = 2;
/// Unknowns of the thigh.
pub const THIGH: usize = 7;
/// Within a spot: logarithm of the rate, 1/min.
pub const RATE: usize = 0;
/// Logarithm of the Biot number.
pub const BIOT: usize = 1;
/// Logarithm of the wetness.
pub const WET: usize = 2;
/// Logit of the depth.
pub const DEPTH: usize = 3;
/// Share of the pit in what the thermometer shows (heat along its stem).
pub const STEM: usize = 4;
/// What the program is told of a cook, as plain numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Facts {
    /// Mass, kg.
    pub mass: f64,
    /// Opened flat.
    pub flat: bool,
    /// Stuffed.
    pub stuffed: bool,
    /// Over fire.
    pub smoker: bool,
    /// With a fan.
    pub fan: bool,
    /// Setting, °C.
    pub setting: f64,
    /// Start temperature as the cook read it, °C.
    pub start: Option<f64>,
    /// Whether the pit is read.
    pub pit_read: bool,
}

/// How many covariates a mean has.
pub const COVARIATES: usize = 7;

impl Facts {
    /// What the means depend on.
    pub fn covariates(&self) -> [f64; COVARIATES] {
        let flag = |b: bool| f64::from(u8::from(b));
        [
            1.0,
            (self.mass / 6.0).ln(),
            flag(self.flat),
            flag(self.stuffed),
            flag(self.smoker),
            flag(self.fan),
            (self.setting - 163.0) / 30.0,
        ]
    }
}

/// Normal prior of the unknowns.
#[derive(Debug, Clone)]
pub struct Prior {
    /// Mean.
    pub mean: Vector,
    /// Covariance.
    pub covariance: Matrix,
}

/// The constants a prior is made of.
#[derive(Debug, Clone)]
pub struct Learned {
    /// Mean of each unknown, a coefficient a covariate.
    pub means: [[f64; COVARIATES]; UNKNOWNS],
    /// Covariance about these means where the pit is read.
    pub covariance: Matrix,
}

impl Learned {
    /// Where learning starts: physics (mass to the power -2/3, Biot with the radius) and wide beliefs.
    pub fn naive() -> Self {
        let mut means = [[0.0; COVARIATES]; UNKNOWNS];
        let mut covariance = ZERO;
        let mut believe = |unknown: usize, mean: [f64; COVARIATES], deviation: f64| {
            means[unknown] = mean;
            covariance[unknown][unknown] = deviation * deviation;
        };
        believe(PIT, [0.0; COVARIATES], 2.0);
        believe(START, [4.5, 0.0, 0.0, 6.0, 0.0, 0.0, 0.0], 2.0);
        believe(AHEAD, [0.0; COVARIATES], 6.0);
        believe(DRY, [25.0_f64.ln(), 0.0, 0.0, 0.0, 0.0, 0.0, 0.0], 0.17);
        for spot in [BREAST, THIGH] {
            believe(spot + RATE, [0.0012_f64.ln(), -0.667, 0.4, -0.3, 0.0, 0.0, 0.0], 0.2);
            believe(spot + BIOT, [2.5_f64.ln(), 0.333, 0.0, 0.0, 0.0, 0.3, 0.0], 0.3);
            believe(spot + WET, [0.1_f64.ln(), 0.0, 0.0, 0.0, 0.0, 0.0, 0.0], 0.7);
            believe(spot + DEPTH, [-0.3, 0.0, 0.3, 0.0, 0.0, 0.0, 0.0], 1.1);
            believe(spot + STEM, [0.01, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0], 0.008);
        }
        Self { means, covariance }
    }
}

impl Prior {
    /// The prior of a cook.
    pub fn of(facts: &Facts, learned: &Learned) -> Self {
        let covariates = facts.covariates();
        let mut mean = [0.0; UNKNOWNS];
        for (mean, row) in mean.iter_mut().zip(&learned.means) {
            *mean = row.iter().zip(&covariates).map(|(a, b)| a * b).sum();
        }
        let mut covariance = learned.covariance;
        if !facts.pit_read {
            covariance[PIT][PIT] += 20.0;
            mean[PIT] -= 5.5;
        }
        if let Some(start) = facts.start
            && !facts.stuffed
        {
            mean[START] = start;
            if start < 0.5 {
                mean[START] -= 8.0;
                covariance[START][START] += 100.0;
            }
        }
        Self { mean, covariance }
    }
}
