//! Learns the forecast's prior from logs whose truth is known, and scores it on logs it was not learned from.

use super::score::{Shot, shots};
use super::{Log, minutes};
use carvetime_core::heat::posterior::Posterior;
use carvetime_core::heat::prior::{AHEAD, COVARIATES, DRY, Facts, Learned, PIT, Prior, START, UNKNOWNS};
use carvetime_core::heat::{fit_known, forecast_with};

/// Parts the logs are split into; each is scored with a prior learned from the others.
pub const FOLDS: usize = 6;
/// Rounds of learning.
const ROUNDS: usize = 8;
/// Cooks' worth of belief in the physics' spread, and in each of its coefficients.
const SPREAD_WORTH: f64 = 1.5;
const COEFFICIENT_WORTH: f64 = 1.0;

/// Every log's forecasts under a prior learned from the other parts' logs.
pub fn cross_validated(logs: &[Log]) -> Vec<Shot> {
    cross_validated_in(logs, 0)
}

/// The same for one of many ways to part the logs: 0 as they stand, else shuffled by `seed`.
pub fn cross_validated_in(logs: &[Log], seed: u64) -> Vec<Shot> {
    let parts = parts(logs.len(), seed);
    let mut out = Vec::new();
    for fold in 0..FOLDS {
        let (own, others): (Vec<_>, Vec<_>) = logs.iter().zip(&parts).partition(|(_, part)| **part == fold);
        let others: Vec<&Log> = others.into_iter().map(|(log, _)| log).collect();
        let learned = learn(&others);
        for (log, _) in own {
            out.extend(shots(log, |cook, readings, now| {
                let done = forecast_with(&learned, cook, readings, now).done;
                [done.p10, done.p50, done.p90].map(minutes)
            }));
        }
    }
    // Scores look at a log's forecasts together.
    out.sort_by(|a, b| a.id.cmp(&b.id).then(a.now.total_cmp(&b.now)));
    out
}

/// A part for each of `count` logs, all of nearly one size.
fn parts(count: usize, seed: u64) -> Vec<usize> {
    let mut parts: Vec<usize> = (0..count).map(|i| i % FOLDS).collect();
    let mut state = seed;
    for i in (1..count).rev().filter(|_| seed != 0) {
        // Knuth's linear congruential generator is good enough to shuffle sixty.
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        parts.swap(i, (state >> 33) as usize % (i + 1));
    }
    parts
}

/// Expectation and maximisation in turn: fit every cook under the prior, then fit the prior to the cooks.
pub fn learn(logs: &[&Log]) -> Learned {
    let mut learned = Learned::naive();
    for _ in 0..ROUNDS {
        let fits: Vec<_> = logs
            .iter()
            .map(|l| fit_known(&learned, &l.cook(), &l.readings(), [l.truth.breast_min, l.truth.thigh_min]))
            .collect();
        learned = next(learned, &fits);
    }
    learned
}

fn next(mut learned: Learned, fits: &[(Facts, Prior, Posterior)]) -> Learned {
    let physics = Learned::naive();
    for unknown in (0..UNKNOWNS).filter(|u| ![START, AHEAD, DRY].contains(u)) {
        let mut normal = [[0.0; COVARIATES]; COVARIATES];
        let mut right = [0.0; COVARIATES];
        for (facts, _, posterior) in fits.iter().filter(|f| unknown != PIT || f.0.pit_read) {
            let row = facts.covariates();
            for i in 0..COVARIATES {
                right[i] += row[i] * posterior.mean[unknown];
                (0..COVARIATES).for_each(|j| normal[i][j] += row[i] * row[j]);
            }
        }
        for i in 0..COVARIATES {
            let worth = if i == 0 { 0.01 } else { COEFFICIENT_WORTH };
            normal[i][i] += worth;
            right[i] += worth * physics.means[unknown][i];
        }
        learned.means[unknown] = gauss(normal, right);
    }
    let mut sum = [[0.0; UNKNOWNS]; UNKNOWNS];
    let mut with_pit = [0.0; UNKNOWNS];
    for (facts, _, posterior) in fits {
        let mean = Prior::of(facts, &learned).mean;
        let off: Vec<f64> = (0..UNKNOWNS).map(|i| posterior.mean[i] - mean[i]).collect();
        for i in 0..UNKNOWNS {
            (0..UNKNOWNS).for_each(|j| sum[i][j] += off[i] * off[j] + posterior.covariance[i][j]);
            if facts.pit_read {
                with_pit[i] += off[i] * off[PIT] + posterior.covariance[i][PIT];
            }
        }
    }
    let cooks = fits.len() as f64;
    let read = fits.iter().filter(|f| f.0.pit_read).count() as f64;
    let held = |i: usize| [START, AHEAD, DRY].contains(&i);
    for i in 0..UNKNOWNS {
        for j in 0..UNKNOWNS {
            let believed = physics.covariance[i][j];
            learned.covariance[i][j] = if held(i) || held(j) {
                believed
            } else if i == PIT || j == PIT {
                // Cross terms are shrunk a little: few cooks read the pit.
                let shrink = if i == j { 1.0 } else { 0.8 };
                shrink
                    * (with_pit[i.max(j)] * f64::from(u8::from(i != j))
                        + with_pit[PIT] * f64::from(u8::from(i == j))
                        + SPREAD_WORTH * believed)
                    / (read + SPREAD_WORTH)
            } else {
                (sum[i][j] + SPREAD_WORTH * believed) / (cooks + SPREAD_WORTH)
            };
        }
    }
    learned
}

fn gauss(mut a: [[f64; COVARIATES]; COVARIATES], mut b: [f64; COVARIATES]) -> [f64; COVARIATES] {
    for i in 0..COVARIATES {
        for k in i + 1..COVARIATES {
            let factor = a[k][i] / a[i][i];
            (i..COVARIATES).for_each(|j| a[k][j] -= factor * a[i][j]);
            b[k] -= factor * b[i];
        }
    }
    for i in (0..COVARIATES).rev() {
        (i + 1..COVARIATES).for_each(|j| b[i] -= a[i][j] * b[j]);
        b[i] /= a[i][i];
    }
    b
}
