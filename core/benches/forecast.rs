//! How good and how fast the forecast is: the table of `tests/cooks/README.md`, for Carvetime and four simple forecasters, and the
//! time a new reading costs.
//!
//! `cargo bench -p carvetime-core --bench forecast`. The prior shipped was learned from these same logs, so Carvetime's line here
//! flatters it; `cargo run --release -p carvetime-core --example tune_forecast` scores it on logs its prior has not seen.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../tests/cooks/mod.rs"]
mod cooks;

use carvetime_core::heat::forecast;
use cooks::{logs, minutes, score, simple};
use std::hint::black_box;
use std::time::Instant;

fn main() {
    let logs = logs();
    println!("{}", score::HEADER);
    for (name, raw) in simple::ALL {
        let shots = simple::cross_validated(&logs, raw, 6);
        println!("{}", score::line(name, &score::score(&shots.iter().collect::<Vec<_>>())));
    }
    let mut shots = Vec::new();
    for log in &logs {
        shots.extend(score::shots(log, |cook, readings, now| {
            let done = forecast(cook, readings, now).done;
            [done.p10, done.p50, done.p90].map(minutes)
        }));
    }
    score::table("carvetime (shipped prior)", &shots);

    println!("\none new reading to a full forecast:");
    let log = logs.iter().find(|l| l.id == "200").unwrap();
    let (cook, all) = (log.cook(), log.readings());
    for count in [25, 50, 100, 200, 400] {
        // The whole cook, read so often that this many readings stand in its log at nine tenths of its time.
        let end = 0.9 * log.truth.target_min;
        let readings: Vec<_> = (0..count)
            .map(|i| {
                let at = end * f64::from(i) / f64::from(count - 1);
                let near = all.iter().min_by(|a, b| (minutes(a.at) - at).abs().total_cmp(&(minutes(b.at) - at).abs()));
                carvetime_core::heat::Reading { at: cooks::span(at), ..*near.unwrap() }
            })
            .collect();
        const TURNS: u32 = 40;
        let start = Instant::now();
        for _ in 0..TURNS {
            black_box(forecast(&cook, black_box(&readings), cooks::span(end)));
        }
        println!(
            "{count:4} readings over {end:.0} min: {:.2} ms",
            start.elapsed().as_secs_f64() * 1000.0 / f64::from(TURNS)
        );
    }
}
