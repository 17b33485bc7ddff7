//! Learns the forecast's prior from the synthetic logs and scores it on logs it has not seen.
//!
//! `cargo run --release -p carvetime-core --example tune_forecast` prints the cross-validated table, with `list` every
//! forecast too; with `ways` the mean over eight ways to part the logs; with `write` it learns from all sixty and writes `core/src/heat/learned.rs`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../tests/cooks/mod.rs"]
mod cooks;

use carvetime_core::heat::prior::Learned;
use cooks::{learn, logs, score};

fn main() {
    let logs = logs();
    let what = std::env::args().nth(1).unwrap_or_default();
    if what == "write" {
        let learned = learn::learn(&logs.iter().collect::<Vec<_>>());
        std::fs::write(concat!(env!("CARGO_MANIFEST_DIR"), "/src/heat/learned.rs"), written(&learned)).unwrap();
        return;
    }
    if what == "ways" {
        return ways(&logs);
    }
    let shots = learn::cross_validated(&logs);
    println!("{}", score::HEADER);
    score::table("carvetime, cross-validated", &shots);
    if what == "list" {
        for s in &shots {
            let [a, b, c] = s.quantiles.map(|q| q - s.truth);
            let to_go = s.truth - s.now;
            println!(
                "{} {} {} now {:.0} to go {to_go:.1} err {b:.1} lo {a:.1} hi {c:.1}",
                s.id, s.family, s.mode, s.now
            );
        }
    }
}

/// The mean score over several ways to part the logs: what one way flatters, another doesn't.
fn ways(logs: &[cooks::Log]) {
    const WAYS: u64 = 8;
    let scores: Vec<score::Score> = std::thread::scope(|scope| {
        let half = |from| {
            scope.spawn(move || {
                let seeds = (from..WAYS).step_by(2);
                seeds
                    .map(|seed| score::score(&learn::cross_validated_in(logs, seed).iter().collect::<Vec<_>>()))
                    .collect()
            })
        };
        let halves: [std::thread::ScopedJoinHandle<'_, Vec<score::Score>>; 2] = [half(0), half(1)];
        halves.into_iter().flat_map(|half| half.join().unwrap()).collect()
    });
    println!("{}", score::HEADER);
    println!("{}", score::line("mean of eight ways", &score::mean_of(&scores)));
}

fn written(learned: &Learned) -> String {
    let rows = |rows: &[Vec<f64>]| {
        let row = |r: &Vec<f64>| {
            format!("        [{}],\n", r.iter().map(|v| format!("{v:.5e}")).collect::<Vec<_>>().join(", "))
        };
        rows.iter().map(row).collect::<String>()
    };
    let means = rows(&learned.means.iter().map(|r| r.to_vec()).collect::<Vec<_>>());
    let covariance = rows(&learned.covariance.iter().map(|r| r.to_vec()).collect::<Vec<_>>());
    format!(
        "//! The prior learned from the synthetic logs: one row an unknown.\n//!\n//! Written by `cargo run --release -p \
         carvetime-core --example tune_forecast write`; not edited by hand.\n\nuse super::prior::Learned;\n\n/// What the \
         program ships with.\n#[rustfmt::skip]\npub static SHIPPED: Learned = Learned {{\n    means: [\n{means}    ],\n    \
         covariance: [\n{covariance}    ],\n}};\n"
    )
}
