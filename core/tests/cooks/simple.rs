//! The four simple forecasters Carvetime is compared with, each calibrated on the logs it is not scored on.
//!
//! A forecaster gives a raw minute; what it is off by on the calibration logs, as a ratio of the time to go and by how far away it
//! says it is, gives its median and interval.

use super::score::{Shot, shots};
use super::{Log, minutes};
use carvetime_core::bird::Condition;
use carvetime_core::heat::{Cook, Reading};
use carvetime_core::quantity::{Temperature, in_celsius};
use carvetime_core::roast::{CookingTime, Timetable};

/// A raw forecaster: minutes at which the last spot reaches its target.
type Raw = fn(&Cook, &[Reading], f64) -> f64;

/// Names and forecasters, in the README's order.
pub const ALL: [(&str, Raw); 4] = [
    ("timetable by mass", timetable),
    ("straight line", straight),
    ("exponential approach", exponential),
    ("heated sphere", sphere),
];

/// Scores a raw forecaster: each part of the logs with the calibration of the others.
pub fn cross_validated(logs: &[Log], raw: Raw, folds: usize) -> Vec<Shot> {
    let said: Vec<Vec<Shot>> = logs
        .iter()
        .map(|log| {
            shots(log, |cook, readings, now| {
                let now = minutes(now);
                [raw(cook, readings, now).max(now + 1.0); 3]
            })
        })
        .collect();
    let mut out = Vec::new();
    for fold in 0..folds {
        let known: Vec<&Shot> =
            said.iter().enumerate().filter(|(i, _)| i % folds != fold).flat_map(|(_, shots)| shots).collect();
        for shot in said.iter().enumerate().filter(|(i, _)| i % folds == fold).flat_map(|(_, shots)| shots) {
            let to_go = shot.quantiles[0] - shot.now;
            let mut ratios: Vec<f64> = known
                .iter()
                .filter(|k| ((k.quantiles[0] - k.now + 5.0) / (to_go + 5.0)).ln().abs() < 0.35)
                .map(|k| (k.truth - k.now + 5.0) / (k.quantiles[0] - k.now + 5.0))
                .collect();
            ratios.sort_by(f64::total_cmp);
            let at = |share: f64| ratios.get((share * ratios.len() as f64) as usize).copied().unwrap_or(1.0);
            let quantiles = [0.1, 0.5, 0.9].map(|share| shot.now + ((to_go + 5.0) * at(share) - 5.0).max(0.0));
            out.push(Shot { quantiles, ..shot.clone() });
        }
    }
    out
}

/// The timetable carried to the setting, whatever the thermometers say.
fn timetable(cook: &Cook, _: &[Reading], _: f64) -> f64 {
    Timetable.cooking_time(&cook.bird, &cook.heat, Condition::Fresh).map_or(200.0, |s| minutes(s.p50))
}

/// The later of the two spots by `way`; the timetable while it can't say.
fn later(cook: &Cook, readings: &[Reading], now: f64, way: impl Fn(&[(f64, f64)], f64) -> Option<f64>) -> f64 {
    type Pick = fn(&Reading) -> Option<Temperature>;
    let spots: [(Pick, Option<Temperature>); 2] = [(|r| r.breast, cook.breast), (|r| r.thigh, cook.thigh)];
    let times = spots.iter().filter_map(|(pick, target)| {
        let curve: Vec<(f64, f64)> =
            readings.iter().filter_map(|r| Some((minutes(r.at), in_celsius(pick(r)?)))).collect();
        way(&curve, in_celsius((*target)?))
    });
    let latest = times.fold(f64::NEG_INFINITY, f64::max);
    if latest.is_finite() { latest.clamp(now, 1800.0) } else { timetable(cook, readings, now) }
}

fn straight(cook: &Cook, readings: &[Reading], now: f64) -> f64 {
    later(cook, readings, now, |curve, target| {
        let (slope, at, end) = last_slope(curve, 30.0)?;
        (slope > 0.05).then(|| end + (target - at) / slope)
    })
}

fn exponential(cook: &Cook, readings: &[Reading], now: f64) -> f64 {
    let pit = in_celsius(cook.heat.setting);
    later(cook, readings, now, |curve, target| {
        let logs: Vec<(f64, f64)> =
            curve.iter().filter(|(_, y)| *y < pit).map(|(t, y)| (*t, -(pit - y).ln())).collect();
        let (slope, at, end) = last_slope(&logs, 60.0)?;
        (slope > 1e-4).then(|| end + (-(pit - target).ln() - at) / slope)
    })
}

/// The centre of a sphere whose skin is at the setting from the start: one time scale a probe.
fn sphere(cook: &Cook, readings: &[Reading], now: f64) -> f64 {
    let pit = in_celsius(cook.heat.setting);
    let start = cook.start.map_or(4.5, in_celsius);
    later(cook, readings, now, |curve, target| {
        let fourier = |celsius: f64| inverse_centre((pit - celsius) / (pit - start));
        // Each reading names a time scale; those far along say most.
        let (mut sum, mut weight) = (0.0, 0.0);
        for (t, celsius) in curve.iter().filter(|(t, y)| *t > 20.0 && *y > start + 8.0 && *y < pit) {
            let worth = (celsius - start).powi(2) * (-(now - t) / 10.0).exp();
            sum += worth * t / fourier(*celsius);
            weight += worth;
        }
        (weight > 0.0).then(|| sum / weight * fourier(target))
    })
}

/// Fourier number at which the centre of a sphere with a fixed surface has this dimensionless temperature.
fn inverse_centre(theta: f64) -> f64 {
    let centre = |fourier: f64| -> f64 {
        let term = |n: i32| {
            let sign = if n % 2 == 1 { 2.0 } else { -2.0 };
            sign * (-(std::f64::consts::PI * f64::from(n)).powi(2) * fourier).exp()
        };
        (1..30).map(term).sum()
    };
    let (mut low, mut high) = (0.01, 3.0);
    for _ in 0..40 {
        let middle = 0.5 * (low + high);
        if centre(middle) > theta { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

/// Slope, value and time at the end of a least-squares line through the last `span` minutes, or the last two points.
fn last_slope(curve: &[(f64, f64)], span: f64) -> Option<(f64, f64, f64)> {
    let end = curve.last()?.0;
    let from = curve.iter().position(|(t, _)| *t >= end - span)?.min(curve.len().checked_sub(2)?);
    let points = &curve[from..];
    let n = points.len() as f64;
    let (mt, my) = (points.iter().map(|p| p.0).sum::<f64>() / n, points.iter().map(|p| p.1).sum::<f64>() / n);
    let spread: f64 = points.iter().map(|p| (p.0 - mt).powi(2)).sum();
    let slope = points.iter().map(|p| (p.0 - mt) * (p.1 - my)).sum::<f64>() / spread;
    (spread > 0.0).then_some((slope, my + slope * (end - mt), end))
}
