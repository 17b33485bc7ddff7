//! Simulated cooks: a short run of what the soak does at length. `CARVETIME_SEED=17` plays that world alone.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::sim::{play, play_many};

#[test]
fn two_hundred_cooks_lose_nothing_whatever_goes_wrong() {
    if let Some(seed) = std::env::var("CARVETIME_SEED").ok().and_then(|text| text.parse().ok()) {
        println!("{:#?}", play(seed).unwrap_or_else(|wrong| panic!("CARVETIME_SEED={seed}: {wrong}")));
        return;
    }
    let all = play_many(1, 200, 2).unwrap_or_else(|(seed, wrong)| panic!("CARVETIME_SEED={seed}: {wrong}"));
    println!("{all:#?}");
    assert!(all.cooks == 200 && all.faults() > 10_000 && all.repeated > 0, "hardly anything happened: {all:?}");
    assert_eq!(all.faults.len(), 16, "every sort of fault happened: {:?}", all.faults);
}

#[test]
fn a_seed_gives_the_same_world_every_time() {
    assert_eq!(play(5), play(5));
}
