//! A bird that went on with ice inside, or whose start was measured: the forecast starts from there.
#![allow(clippy::unwrap_used)]

#[path = "common/oven.rs"]
mod oven;

use carvetime_core::bird::Condition;
use carvetime_core::heat::{Cook, Doubt, Outlook, Pace, Reading, forecast};
use carvetime_core::quantity::fahrenheit;
use chrono::TimeDelta;

fn thawed() -> Cook {
    oven::cook(14.0, 325.0, &[])
}

fn icy() -> Cook {
    let mut cook = thawed();
    cook.bird.condition = Condition::PartThawed;
    cook
}

fn look(cook: &Cook, readings: &[(i64, f64, f64)]) -> Outlook {
    let readings: Vec<Reading> = readings
        .iter()
        .map(|(at, breast, thigh)| Reading {
            at: TimeDelta::minutes(*at),
            pit: Some(fahrenheit(325.0)),
            breast: Some(fahrenheit(*breast)),
            thigh: Some(fahrenheit(*thigh)),
            sure: false,
        })
        .collect();
    forecast(cook, &readings, readings.last().map_or(TimeDelta::zero(), |last| last.at))
}

#[test]
fn with_ice_inside_it_takes_longer_and_nobody_knows_so_well_how_long() {
    let (icy, thawed) = (look(&icy(), &[]).done, look(&thawed(), &[]).done);
    assert!(icy.p50 > thawed.p50 + TimeDelta::minutes(10), "{icy:?} after {thawed:?}");
    assert!(icy.p90 - icy.p50 > thawed.p90 - thawed.p50, "{icy:?} after {thawed:?}");
}

#[test]
fn ice_is_never_good_news() {
    let cooks: [&[(i64, f64, f64)]; 4] = [
        &[(50, 40.0, 46.0)],
        &[(50, 31.0, 34.0), (85, 35.0, 48.0)],
        &[(50, 56.0, 70.0), (85, 80.0, 96.0)],
        &[(50, 40.0, 46.0), (85, 46.0, 60.0), (130, 66.0, 88.0), (175, 92.0, 115.0)],
    ];
    for readings in cooks {
        let (icy, thawed) = (look(&icy(), readings), look(&thawed(), readings));
        for (one, other) in
            [(icy.done.p10, thawed.done.p10), (icy.done.p50, thawed.done.p50), (icy.done.p90, thawed.done.p90)]
        {
            assert!(one >= other, "{readings:?}: {:?} before {:?}", icy.done, thawed.done);
        }
        assert!(icy.doubts.contains(&Doubt::PartFrozen), "it is said: {:?}", icy.doubts);
        let behind = icy.doubts.iter().any(|doubt| matches!(doubt, Doubt::OutOfStep(_, Pace::Behind)));
        assert!(!behind, "the ice is known, and no oven was off: {:?}", icy.doubts);
    }
}

#[test]
fn the_colder_it_was_measured_as_it_went_on_the_longer_it_takes() {
    let from = |f: f64| look(&Cook { start: Some(fahrenheit(f)), ..thawed() }, &[]).done.p50;
    assert!(from(55.0) < from(40.0) && from(40.0) < from(34.0), "{:?} {:?}", from(55.0), from(34.0));
    assert!(from(31.0) > from(34.0), "ice");
}
