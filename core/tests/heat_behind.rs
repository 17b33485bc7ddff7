//! A bird far colder than its heat makes it: the forecast believes the reading, and never that it will be done in no time.
#![allow(clippy::unwrap_used)]

#[path = "common/oven.rs"]
mod oven;

use carvetime_core::heat::{Cook, Doubt, Outlook, Pace, Reading, forecast};
use carvetime_core::quantity::fahrenheit;
use chrono::TimeDelta;

fn cook(setting_f: f64, was: &[(i64, f64)]) -> Cook {
    oven::cook(14.0, setting_f, was)
}

fn breast(minutes: i64, breast_f: f64) -> Reading {
    Reading { breast: Some(fahrenheit(breast_f)), thigh: None, at: TimeDelta::minutes(minutes), pit: None, sure: false }
}

fn look(cook: &Cook, readings: &[(i64, f64)]) -> Outlook {
    let readings: Vec<Reading> = readings.iter().map(|(at, f)| breast(*at, *f)).collect();
    forecast(cook, &readings, readings.last().unwrap().at)
}

fn togo(out: &Outlook, now: i64) -> [i64; 3] {
    [out.done.p10, out.done.p50, out.done.p90].map(|at| at.num_minutes() - now)
}

fn is_behind(out: &Outlook) -> bool {
    out.doubts.iter().any(|doubt| matches!(doubt, Doubt::OutOfStep(_, Pace::Behind)))
}

/// A whole bird's breast rises by no more than this, °F a minute: the fastest of the synthetic logs, a flattened one, does 2.5.
const FASTEST_F: f64 = 2.5;

#[test]
fn nothing_is_done_sooner_than_meat_can_warm() {
    for setting in [325.0, 400.0] {
        for at in [90, 120, 180, 225, 295, 350, 420] {
            for f in [50.0, 60.0, 80.0, 100.0, 115.0, 128.0, 140.0, 150.0] {
                let [p10, p50, _] = togo(&look(&cook(setting, &[]), &[(at, f)]), at);
                let least = ((165.0 - f) / FASTEST_F) as i64;
                assert!(
                    p10 >= least && p50 > least,
                    "{f} °F after {at} min at {setting}: {p10}, {p50}, not before {least}"
                );
            }
        }
    }
}

#[test]
fn the_colder_it_reads_the_longer_it_takes() {
    for at in [180, 225, 295, 350] {
        let half: Vec<i64> = [60.0, 90.0, 110.0, 128.0, 140.0, 150.0, 158.0]
            .map(|f| togo(&look(&cook(325.0, &[]), &[(at, f)]), at)[1])
            .to_vec();
        // A cold bird may be one that got no heat for long, or a slow one: the step between the two may be small.
        assert!(half.windows(2).all(|two| two[0] + 5 >= two[1]), "{at} min: {half:?}");
        assert!(half[0] > half[3] + 30 && half[3] > half[6] + 30, "{at} min: {half:?}");
    }
}

#[test]
fn a_bird_at_sixty_after_four_hours_is_hours_away_and_doubted() {
    let out = look(&cook(325.0, &[]), &[(225, 60.0)]);
    let [p10, p50, p90] = togo(&out, 225);
    assert!(is_behind(&out), "{:?}", out.doubts);
    // The same bird takes some two and a half hours from 45 °F on, an hour after it went on.
    let [_, usual, _] = togo(&look(&cook(325.0, &[]), &[(60, 60.0)]), 60);
    assert!((p50 - usual).abs() < 45 && p10 > 60 && p90 - p10 > 100, "{p10} {p50} {p90}, usually {usual}");
    let later = look(&cook(325.0, &[]), &[(225, 60.0), (245, 68.0), (265, 77.0)]);
    assert!(togo(&later, 265)[1] > 90, "{:?}", togo(&later, 265));
}

#[test]
fn turned_up_on_a_late_bird_it_is_sooner_and_not_at_once() {
    let stays = togo(&look(&cook(325.0, &[]), &[(295, 128.0)]), 295);
    let up = togo(&look(&cook(375.0, &[(298, 325.0)]), &[(295, 128.0)]), 295);
    assert!(up[1] < stays[1] && up[0] > 25, "{up:?} of {stays:?}");
    let next = togo(&look(&cook(375.0, &[(298, 325.0)]), &[(295, 128.0), (315, 141.0)]), 315);
    assert!(next[0] > 15 && next[1] > 25, "{next:?}");
}

#[test]
fn a_tip_at_the_bone_is_named_and_hurries_nobody() {
    let out = look(&cook(325.0, &[]), &[(60, 130.0)]);
    assert!(out.doubts.iter().any(|doubt| matches!(doubt, Doubt::OutOfStep(_, Pace::Ahead))), "{:?}", out.doubts);
    let [_, usual, _] = togo(&look(&cook(325.0, &[]), &[(120, 105.0)]), 120);
    assert!(togo(&out, 60)[1] > usual, "{:?}, usually {usual}", togo(&out, 60));
}

#[test]
fn a_usual_bird_is_not_doubted() {
    for readings in [&[(60, 60.0)][..], &[(120, 100.0)], &[(120, 110.0), (150, 124.0)], &[(180, 140.0)]] {
        let out = look(&cook(325.0, &[]), readings);
        assert!(
            !out.doubts.iter().any(|doubt| matches!(doubt, Doubt::OutOfStep(..))),
            "{readings:?}: {:?}",
            out.doubts
        );
    }
}

#[test]
fn spots_that_disagree_are_so_far_apart_whichever_is_hotter() {
    for (breast, thigh) in [(90.0, 160.0), (160.0, 90.0)] {
        let both = Reading { thigh: Some(fahrenheit(thigh)), ..self::breast(120, breast) };
        let out = forecast(&cook(325.0, &[]), &[both], both.at);
        let apart = out.doubts.iter().find_map(|doubt| match doubt {
            Doubt::ProbesDisagree(by) => Some(by.value * 1.8),
            _ => None,
        });
        assert!((apart.unwrap() - 70.0).abs() < 0.01, "{apart:?}");
    }
}
