//! What a forecast costs, counted and not timed: only in tests.
//!
//! Owns the counters that the solver and the fit tick, and the bounds on them. A clock would measure the machine.
#![allow(clippy::unwrap_used)]

use super::forecast::{Cook, Reading, forecast};
use crate::bird::{Bird, BirdMass, Condition, Form, Kind};
use crate::quantity::{fahrenheit, pounds};
use crate::roast::{Cooker, Heat};
use chrono::TimeDelta;
use std::cell::Cell;

thread_local! {
    static STEPS: Cell<usize> = const { Cell::new(0) };
    static TAKEN: Cell<usize> = const { Cell::new(0) };
}

/// One step of the solver, in so many lanes.
pub(super) fn stepped(lanes: usize) {
    STEPS.set(STEPS.get() + lanes);
}

/// One reading taken into the fit.
pub(super) fn taken() {
    TAKEN.set(TAKEN.get() + 1);
}

/// Lanes stepped and readings taken in by a forecast three hours into a cook, of which `readings` were read at even spaces.
fn counted(readings: usize) -> (usize, usize) {
    const SPAN: f64 = 180.0;
    let bird = Bird {
        kind: Kind::Turkey,
        mass: BirdMass::new(pounds(14.0)).unwrap(),
        condition: Condition::Fresh,
        form: Form::Whole,
        stuffed: false,
        solution: None,
    };
    let cook = Cook {
        bird,
        heat: Heat { cooker: Cooker::Oven, setting: fahrenheit(325.0) },
        start: Some(fahrenheit(40.0)),
        breast: Some(fahrenheit(165.0)),
        thigh: Some(fahrenheit(175.0)),
        profile: super::Profile::default(),
        was_set: Vec::new(),
    };
    let minute = |i: usize| SPAN * (i + 1) as f64 / readings as f64;
    // A bird that lags half an hour, then warms evenly.
    let spot = |minutes: f64| Some(fahrenheit((40.0 + 0.72 * (minutes - 30.0).max(0.0)).round()));
    let readings: Vec<Reading> = (0..readings)
        .map(|i| Reading {
            at: TimeDelta::seconds((minute(i) * 60.0) as i64),
            pit: Some(fahrenheit(320.0)),
            breast: spot(minute(i)),
            thigh: spot(minute(i) + 4.0),
            sure: false,
        })
        .collect();
    STEPS.set(0);
    TAKEN.set(0);
    forecast(&cook, &readings, TimeDelta::minutes(SPAN as i64));
    (STEPS.get(), TAKEN.get())
}

#[test]
fn twice_the_readings_are_at_most_twice_the_work() {
    // Each reading of two spots enters a turn once: seventeen turns of the fit and as many to look for a change.
    const MOST: usize = 2 * 2 * 17;
    let counts = [25, 50, 100, 200, 400, 800].map(|readings| (readings, counted(readings)));
    for (readings, (_, taken)) in counts {
        assert!(taken > 0 && taken <= MOST * readings, "{readings} readings were taken {taken} times: {counts:?}");
    }
}

#[test]
fn the_solver_steps_through_the_time_and_not_through_the_readings() {
    let counts = [25, 50, 100, 200, 400, 800].map(counted);
    let steps: Vec<usize> = counts.into_iter().map(|(steps, _)| steps).collect();
    let (least, most) = (steps.iter().min().unwrap(), steps.iter().max().unwrap());
    // The turns until the fit stands still differ from log to log.
    assert!(*least > 0 && *most <= 3 * *least, "{steps:?}");
}
