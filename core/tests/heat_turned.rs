//! A cooker turned up or down on the way: what it was before is not forgotten.
#![allow(clippy::unwrap_used)]

#[path = "common/oven.rs"]
mod oven;

use carvetime_core::heat::{Cook, Reading, forecast};
use carvetime_core::quantity::fahrenheit;
use chrono::TimeDelta;

fn cook(setting_f: f64, was: &[(i64, f64)]) -> Cook {
    oven::cook(12.0, setting_f, was)
}

fn reading(minutes: i64, breast_f: f64, thigh_f: f64) -> Reading {
    Reading {
        breast: Some(fahrenheit(breast_f)),
        thigh: Some(fahrenheit(thigh_f)),
        at: TimeDelta::minutes(minutes),
        pit: None,
        sure: false,
    }
}

/// Half of the cooks are done by then, minutes since it met the heat.
fn done(cook: &Cook, readings: &[Reading], now: i64) -> f64 {
    forecast(cook, readings, TimeDelta::minutes(now)).done.p50.as_seconds_f64() / 60.0
}

#[test]
fn turned_up_late_it_saves_less_than_set_high_from_the_start() {
    let readings = [reading(80, 105.0, 115.0)];
    let stays = done(&cook(325.0, &[]), &readings, 90);
    let turned = done(&cook(400.0, &[(90, 325.0)]), &readings, 90);
    assert!(turned < stays - 5.0, "hotter is sooner: {turned} after {stays}");
    assert!(turned > 90.0 + (stays - 90.0) * 0.5, "and no wonder: {turned} of {stays}");
}

#[test]
fn turned_down_it_takes_longer() {
    let readings = [reading(80, 105.0, 115.0)];
    let stays = done(&cook(350.0, &[]), &readings, 90);
    let turned = done(&cook(300.0, &[(90, 350.0)]), &readings, 90);
    assert!(turned > stays + 5.0, "{turned} after {stays}");
}

#[test]
fn a_pit_read_before_it_was_turned_says_nothing_of_after() {
    let pit = |minutes, f| Reading {
        pit: Some(fahrenheit(f)),
        ..reading(minutes, 60.0 + minutes as f64 * 0.6, 65.0 + minutes as f64 * 0.6)
    };
    let readings: Vec<Reading> = (1..=8).map(|n| pit(n * 10, 325.0)).collect();
    let outlook = forecast(&cook(250.0, &[(85, 325.0)]), &readings, TimeDelta::minutes(90));
    let stays = done(&cook(325.0, &[]), &readings, 90);
    let turned = outlook.done.p50.as_seconds_f64() / 60.0;
    assert!(turned > stays + 15.0, "{turned} after {stays}");
}
