//! How a forecast is scored, as the logs' own README says.

use super::{Log, span};
use carvetime_core::heat::{Cook, Reading};
use chrono::TimeDelta;

/// The forecasts to score: at each reading before the truth, dense logs thinned to one in five minutes.
pub fn shots(log: &Log, forecast: impl Fn(&Cook, &[Reading], TimeDelta) -> [f64; 3]) -> Vec<Shot> {
    let (cook, readings) = (log.cook(), log.readings());
    let mut last = f64::NEG_INFINITY;
    let mut shots = Vec::new();
    for (i, line) in log.lines.iter().enumerate().take_while(|(_, l)| l.minutes < log.truth.target_min) {
        if log.truth.mode.starts_with("dense") && line.minutes - last < 5.0 {
            continue;
        }
        last = line.minutes;
        shots.push(Shot {
            id: log.id.clone(),
            family: log.truth.family.clone(),
            mode: log.truth.mode.clone(),
            now: line.minutes,
            truth: log.truth.target_min,
            quantiles: forecast(&cook, &readings[..=i], span(line.minutes)),
        });
    }
    shots
}

/// One forecast made at a reading before the truth.
#[derive(Debug, Clone)]
pub struct Shot {
    pub id: String,
    pub family: String,
    pub mode: String,
    pub now: f64,
    pub truth: f64,
    pub quantiles: [f64; 3],
}

/// A line of the table.
#[derive(Debug, Clone)]
pub struct Score {
    pub coverage: f64,
    pub bucket_coverage: [f64; 4],
    pub bucket_error: [f64; 4],
    pub bucket_bias: [f64; 4],
    pub width: f64,
    pub pinball: f64,
    pub half_time: f64,
}

/// Which bucket of time to go: over 120, 60 to 120, 30 to 60, under 30 min.
pub fn bucket(to_go: f64) -> usize {
    if to_go > 120.0 {
        0
    } else if to_go > 60.0 {
        1
    } else if to_go > 30.0 {
        2
    } else {
        3
    }
}

/// Three-quantile pinball loss in minutes: the sum over the quantiles.
pub fn pinball(quantiles: [f64; 3], truth: f64) -> f64 {
    [0.1, 0.5, 0.9]
        .iter()
        .zip(quantiles)
        .map(|(share, q)| if truth >= q { share * (truth - q) } else { (1.0 - share) * (q - truth) })
        .sum::<f64>()
        * 2.0
        / 3.0
}

/// Weighted values: each cook counts as much as another.
fn weights(shots: &[&Shot]) -> Vec<f64> {
    shots.iter().map(|s| 1.0 / shots.iter().filter(|o| o.id == s.id).count() as f64).collect()
}

fn mean(values: &[f64], weights: &[f64]) -> f64 {
    values.iter().zip(weights).map(|(v, w)| v * w).sum::<f64>() / weights.iter().sum::<f64>()
}

fn median(values: &[f64], weights: &[f64]) -> f64 {
    let mut pairs: Vec<(f64, f64)> = values.iter().copied().zip(weights.iter().copied()).collect();
    pairs.sort_by(|a, b| a.0.total_cmp(&b.0));
    let half = weights.iter().sum::<f64>() / 2.0;
    let mut sum = 0.0;
    for (v, w) in pairs {
        sum += w;
        if sum >= half {
            return v;
        }
    }
    f64::NAN
}

fn covered(s: &Shot) -> f64 {
    f64::from(u8::from(s.quantiles[0] <= s.truth && s.truth <= s.quantiles[2]))
}

/// Scores forecasts.
pub fn score(shots: &[&Shot]) -> Score {
    let all: Vec<&Shot> = shots.to_vec();
    let w = weights(&all);
    let mut out = Score {
        coverage: mean(&all.iter().map(|s| covered(s)).collect::<Vec<_>>(), &w),
        bucket_coverage: [f64::NAN; 4],
        bucket_error: [f64::NAN; 4],
        bucket_bias: [f64::NAN; 4],
        width: mean(&all.iter().map(|s| s.quantiles[2] - s.quantiles[0]).collect::<Vec<_>>(), &w),
        pinball: mean(&all.iter().map(|s| pinball(s.quantiles, s.truth)).collect::<Vec<_>>(), &w),
        half_time: f64::NAN,
    };
    for b in 0..4 {
        let some: Vec<&Shot> = all.iter().copied().filter(|s| bucket(s.truth - s.now) == b).collect();
        let w = weights(&some);
        out.bucket_coverage[b] = mean(&some.iter().map(|s| covered(s)).collect::<Vec<_>>(), &w);
        out.bucket_error[b] = median(&some.iter().map(|s| (s.quantiles[1] - s.truth).abs()).collect::<Vec<_>>(), &w);
        out.bucket_bias[b] = mean(&some.iter().map(|s| s.quantiles[1] - s.truth).collect::<Vec<_>>(), &w);
    }
    // Half-time: the forecast made at the reading nearest to half the true time.
    let mut ids: Vec<&str> = all.iter().map(|s| s.id.as_str()).collect();
    ids.dedup();
    let near = ids.iter().filter(|id| {
        let half = all
            .iter()
            .filter(|s| s.id == **id)
            .min_by(|a, b| (a.now - a.truth / 2.0).abs().total_cmp(&(b.now - b.truth / 2.0).abs()));
        half.is_some_and(|s| (s.quantiles[1] - s.truth).abs() <= 15.0)
    });
    out.half_time = near.count() as f64 / ids.len() as f64;
    out
}

/// The mean of several scores.
pub fn mean_of(scores: &[Score]) -> Score {
    let mean = |of: &dyn Fn(&Score) -> f64| scores.iter().map(of).sum::<f64>() / scores.len() as f64;
    let four = |of: fn(&Score) -> [f64; 4]| std::array::from_fn(|i| mean(&|s: &Score| of(s)[i]));
    Score {
        coverage: mean(&|s| s.coverage),
        bucket_coverage: four(|s| s.bucket_coverage),
        bucket_error: four(|s| s.bucket_error),
        bucket_bias: four(|s| s.bucket_bias),
        width: mean(&|s| s.width),
        pinball: mean(&|s| s.pinball),
        half_time: mean(&|s| s.half_time),
    }
}

/// Head of the table.
pub const HEADER: &str = "| forecaster | coverage (by time to go: > 120 / 60-120 / 30-60 / < 30 min) | median error | width | pinball | half-time p50 within 15 min | bias |";

/// One line of the README's table.
pub fn line(name: &str, s: &Score) -> String {
    let four = |v: [f64; 4], unit: f64| v.map(|x| format!("{:.1}", x * unit)).join(" / ");
    let percent = |v: [f64; 4]| v.map(|x| format!("{:.0}", x * 100.0)).join(" / ");
    format!(
        "| {name:<28} | {:.0} % ({}) | {} | {:.0} | {:.1} | {:.0} % | bias {} |",
        s.coverage * 100.0,
        percent(s.bucket_coverage),
        four(s.bucket_error, 1.0),
        s.width,
        s.pinball,
        s.half_time * 100.0,
        four(s.bucket_bias, 1.0)
    )
}

/// Prints the table: all, and by family and mode.
pub fn table(name: &str, shots: &[Shot]) {
    let all: Vec<&Shot> = shots.iter().collect();
    println!("{}", line(name, &score(&all)));
    let by = |key: fn(&Shot) -> &str| {
        let mut keys: Vec<&str> = shots.iter().map(key).collect();
        keys.sort_unstable();
        keys.dedup();
        for k in keys {
            let some: Vec<&Shot> = shots.iter().filter(|s| key(s) == k).collect();
            println!("{}", line(&format!("  {k}"), &score(&some)));
        }
    };
    by(|s| &s.family);
    by(|s| &s.mode);
}
