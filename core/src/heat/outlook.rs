//! When the spots reach their targets, as a distribution.
//!
//! Owns the way from the unknowns' posterior to minutes. Knows nothing of readings. Start at [`crossing`], then [`later`].
//!
//! The minute is no linear function of the unknowns (a stalled bird is late without bound, never early), so it is computed along the one
//! line through the posterior that moves it most, at five standard scores.

use super::pit::Air;
use super::posterior::{Noise, Posterior, STEP, curve_of, curve_with_slopes, curves_of, through};
use super::prior::{BREAST, THIGH, UNKNOWNS};
use super::small::{Vector, apply};

/// Where the crossing of one spot lies on a line through the unknowns.
#[derive(Debug, Clone, Copy)]
pub struct Crossing {
    /// Minutes at the standard scores of [`SCORES`].
    pub at: [f64; 5],
    /// Standard deviation of the most probable minute from what is no unknown, minutes.
    pub own: f64,
    /// Slope of the logarithm of the minute in the unknowns.
    pub slope: Vector,
    /// Standard deviation of the logarithm from the unknowns.
    pub deviation: f64,
}

/// Standard scores at which the crossing is computed.
pub const SCORES: [f64; 5] = [-1.6, -0.8, 0.0, 0.8, 1.6];

/// Longest cook thought of, minutes.
pub const LONGEST: f64 = 1800.0;

/// First minute a curve reaches `target`, with `left` fading from `now` on.
fn crosses(curve: &[f64], target: f64, now: f64, left: f64, memory: f64) -> Option<f64> {
    let value = |i: usize| {
        let t = i as f64 * STEP;
        curve[i] + left * (-(t - now).abs() / memory).exp()
    };
    let mut before = value(0);
    for i in 1..curve.len() {
        let at = value(i);
        if at >= target {
            let part = if at > before { ((at - target) / (at - before)).clamp(0.0, 1.0) } else { 0.0 };
            return Some((i as f64 - part) * STEP);
        }
        before = at;
    }
    None
}

/// The crossing of one spot; `wider` stretches its interval.
pub fn crossing(
    posterior: &Posterior,
    air: &Air,
    which: usize,
    target: f64,
    now: f64,
    noise: &Noise,
    wider: f64,
) -> Crossing {
    let spot = [BREAST, THIGH][which];
    let (left, spread) = posterior.left[which];
    let mut horizon = now + 240.0;
    let at = loop {
        let curve = curve_of(&posterior.mean, spot, air, points(horizon));
        if let Some(at) = crosses(&curve, target, now, left, noise.memory) {
            break at;
        }
        if horizon >= LONGEST {
            break LONGEST;
        }
        horizon = (horizon * 1.6).min(LONGEST);
    };
    let curve = curve_with_slopes(&posterior.mean, spot, air, points(at + STEP));
    let place = ((at / STEP) as usize).min(curve.celsius.len() - 2);
    let rise = ((curve.celsius[place + 1] - curve.celsius[place]) / STEP).max(0.02);
    let mut slope = curve.slopes[place];
    let part = at / STEP - place as f64;
    for (s, next) in slope.iter_mut().zip(&curve.slopes[place + 1]) {
        *s = -(*s + part * (next - *s)) / (rise * at.max(1.0));
    }
    let toward = apply(&posterior.covariance, &slope);
    let deviation = through(&posterior.covariance, &slope, &slope).sqrt();
    let fade = (-(at - now).max(0.0) / noise.memory).exp();
    let wander = spread * fade * fade + noise.wander.powi(2) * (1.0 - fade * fade);
    let own = (posterior.scale * wander + OFFSET * OFFSET).sqrt() / rise;
    let horizon = (at * 1.7 + 120.0).min(LONGEST);
    let mut times = [at; 5];
    if deviation > 1e-9 {
        let moved = [0, 1, 3, 4].map(|k| {
            let mut moved = posterior.mean;
            for i in 0..UNKNOWNS {
                moved[i] += SCORES[k] * wider * toward[i] / deviation;
            }
            moved
        });
        let curves = curves_of(moved.each_ref(), spot, air, points(horizon));
        for (lane, k) in [0, 1, 3, 4].into_iter().enumerate() {
            let curve: Vec<f64> = curves.iter().map(|c| c[lane]).collect();
            times[k] = crosses(&curve, target, now, left, noise.memory).unwrap_or(horizon);
        }
    }
    for i in (0..2).rev() {
        times[i] = times[i].min(times[i + 1]);
        times[4 - i] = times[4 - i].max(times[3 - i]);
    }
    Crossing { at: times, own: own * wider, slope, deviation }
}

/// Standard deviation of a thermometer's own offset, °C.
const OFFSET: f64 = 0.3;

fn points(minutes: f64) -> usize {
    (minutes / STEP) as usize + 2
}

impl Crossing {
    /// The minute at a standard score.
    pub fn quantile(&self, score: f64) -> f64 {
        let middle = self.at[2];
        let place = ((score - SCORES[0]) / 0.8).clamp(0.0, 3.999);
        let below = place as usize;
        let part = (score - SCORES[below]) / 0.8;
        let line = self.at[below] + part * (self.at[below + 1] - self.at[below]);
        let away = ((line - middle).powi(2) + (score * self.own).powi(2)).sqrt();
        if score < 0.0 { middle - away } else { middle + away }
    }
}

/// p10, p50, p90 of one spot's minute, given that it lies after `now`.
pub fn soonest(crossing: &Crossing, now: f64) -> [f64; 3] {
    let times = (0..DRAWS).map(|i| crossing.quantile(normal_score((i as f64 + 0.5) / DRAWS as f64))).collect();
    quantiles(times, now)
}

/// p10, p50, p90 of the latest of the spots, given that it is still to come.
pub fn later(crossings: &[Crossing], posterior: &Posterior, now: f64) -> [f64; 3] {
    let [a, b] = match crossings {
        [] => return [now; 3],
        [one] => return soonest(one, now),
        [a, b, ..] => [a, b],
    };
    let whole = |c: &Crossing| (c.deviation.powi(2) + (c.own / c.at[2].max(1.0)).powi(2)).sqrt();
    let shared = through(&posterior.covariance, &a.slope, &b.slope);
    let link = (shared / (whole(a) * whole(b)).max(1e-12)).clamp(-0.99, 0.99);
    let times = (0..DRAWS)
        .map(|i| {
            // A lattice instead of chance: the same readings give the same forecast.
            let first = normal_score((i as f64 + 0.5) / DRAWS as f64);
            let second = normal_score(((i as f64 + 0.5) * 0.618_033_988_749_895).fract().clamp(1e-4, 1.0 - 1e-4));
            let second = link * first + (1.0 - link * link).sqrt() * second;
            a.quantile(first).max(b.quantile(second))
        })
        .collect();
    quantiles(times, now)
}

const DRAWS: usize = 512;

fn quantiles(mut times: Vec<f64>, now: f64) -> [f64; 3] {
    times.sort_by(f64::total_cmp);
    let gone = times.partition_point(|t| *t <= now);
    let to_come = &times[gone.min(DRAWS - 8)..];
    calibrated(
        [0.1, 0.5, 0.9].map(|share| to_come[((share * to_come.len() as f64) as usize).min(to_come.len() - 1)].max(now)),
        now,
    )
}

/// Corrects what the fit is known to get wrong: how far the median lies off and how wide the interval is, by time to go.
fn calibrated([p10, p50, p90]: [f64; 3], now: f64) -> [f64; 3] {
    let to_go = p50 - now;
    let middle = now + to_go * by_time_to_go(&MEDIAN, to_go);
    let width = by_time_to_go(&WIDTH, to_go);
    [(middle - width * (p50 - p10)).max(now), middle, middle + width * (p90 - p50)]
}

/// Factors at 0, 15, 45, 90, 150 and 240 minutes to go, straight between. Fitted by cross-validation on the synthetic logs.
const KNOTS: [f64; 6] = [0.0, 15.0, 45.0, 90.0, 150.0, 240.0];
const MEDIAN: [f64; 6] = [1.0, 1.0, 1.0, 0.975, 0.985, 1.0];
const WIDTH: [f64; 6] = [0.55, 0.85, 1.05, 1.2, 1.1, 1.05];

fn by_time_to_go(factors: &[f64; 6], to_go: f64) -> f64 {
    let place = KNOTS.partition_point(|k| *k <= to_go).clamp(1, KNOTS.len() - 1);
    let part = ((to_go - KNOTS[place - 1]) / (KNOTS[place] - KNOTS[place - 1])).clamp(0.0, 1.0);
    factors[place - 1] + part * (factors[place] - factors[place - 1])
}

/// Standard normal quantile (Acklam's rational approximation, error below 2e-9 relative; from memory).
pub fn normal_score(p: f64) -> f64 {
    const A: [f64; 6] = [
        -3.969683028665376e1,
        2.209460984245205e2,
        -2.759285104469687e2,
        1.383_577_518_672_69e2,
        -3.066479806614716e1,
        2.506628277459239,
    ];
    const B: [f64; 5] =
        [-5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1, -1.328068155288572e1];
    const C: [f64; 6] = [
        -7.784894002430293e-3,
        -3.223964580411365e-1,
        -2.400758277161838,
        -2.549732539343734,
        4.374664141464968,
        2.938163982698783,
    ];
    const D: [f64; 4] = [7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416];
    let tail = |p: f64| {
        let q = (-2.0 * p.ln()).sqrt();
        (((((C[0] * q + C[1]) * q + C[2]) * q + C[3]) * q + C[4]) * q + C[5])
            / ((((D[0] * q + D[1]) * q + D[2]) * q + D[3]) * q + 1.0)
    };
    if p < 0.02425 {
        tail(p)
    } else if p > 1.0 - 0.02425 {
        -tail(1.0 - p)
    } else {
        let q = p - 0.5;
        let r = q * q;
        (((((A[0] * r + A[1]) * r + A[2]) * r + A[3]) * r + A[4]) * r + A[5]) * q
            / (((((B[0] * r + B[1]) * r + B[2]) * r + B[3]) * r + B[4]) * r + 1.0)
    }
}
