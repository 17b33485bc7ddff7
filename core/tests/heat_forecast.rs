//! How a forecast behaves: the laws it keeps, what it asks about, and why it widens.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod cooks;

use carvetime_core::bird::Kind;
use carvetime_core::heat::{Cook, Doubt, Outlook, Place, Reading, Slip, State, forecast, suspects};
use carvetime_core::lethality::{Answer, LOG_TARGET, is_enough};
use carvetime_core::quantity::{celsius, fahrenheit, in_fahrenheit};
use carvetime_core::roast::Spread;
use chrono::TimeDelta;
use cooks::{Log, logs, minutes};
use proptest::prelude::*;

fn log(id: &str) -> Log {
    logs().into_iter().find(|l| l.id == id).unwrap()
}

fn until(log: &Log, end: f64) -> Vec<Reading> {
    log.readings().into_iter().filter(|r| minutes(r.at) <= end).collect()
}

fn at(log: &Log, end: f64) -> Outlook {
    forecast(&log.cook(), &until(log, end), cooks::span(end))
}

fn width(spread: Spread) -> f64 {
    minutes(spread.p90) - minutes(spread.p10)
}

fn doubts(outlook: &Outlook) -> Vec<&'static str> {
    outlook.doubts.iter().map(Doubt::name).collect()
}

#[test]
fn the_same_readings_give_the_same_forecast() {
    let log = log("152");
    assert_eq!(at(&log, 180.0), at(&log, 180.0));
}

#[test]
fn without_readings_the_prior_answers_and_says_so() {
    let log = log("005");
    let outlook = forecast(&log.cook(), &[], TimeDelta::zero());
    assert_eq!(doubts(&outlook), ["no-readings"]);
    assert!((150.0..240.0).contains(&minutes(outlook.done.p50)), "{:?}", outlook.done);
    assert_eq!(outlook.log_reduction, 0.0);
    assert_eq!(outlook.state, State::Cooking);
}

#[test]
fn readings_narrow_the_interval() {
    for id in ["005", "076", "094", "182"] {
        let log = log(id);
        let end = log.truth.target_min;
        let widths = [0.0, 0.5 * end, 0.9 * end].map(|t| width(at(&log, t).done));
        assert!(widths[0] > widths[1] && widths[1] > widths[2], "{id}: {widths:?}");
    }
}

#[test]
fn a_cook_is_done_when_both_spots_have_been_read_at_their_targets_and_not_before() {
    let log = log("023");
    let end = log.lines.last().unwrap().minutes;
    assert_eq!(at(&log, end).state, State::Done);
    assert_eq!(at(&log, end - 15.0).state, State::Cooking);
}

#[test]
fn a_cooler_pit_never_finishes_sooner() {
    for id in ["005", "076", "101"] {
        let mut cook = log(id).cook();
        let time = |cook: &Cook| forecast(cook, &[], TimeDelta::zero()).done.p50;
        let hot = time(&cook);
        cook.heat.setting = fahrenheit(in_fahrenheit(cook.heat.setting) - 25.0);
        assert!(time(&cook) > hot, "{id}");
    }
}

#[test]
fn a_lost_digit_is_asked_about_and_does_not_move_the_forecast() {
    let log = log("182");
    let mut readings = until(&log, 150.0);
    let clean = forecast(&log.cook(), &readings, cooks::span(151.0));
    let last = in_fahrenheit(readings.last().unwrap().breast.unwrap());
    let typed =
        Reading { at: cooks::span(151.0), pit: None, breast: Some(fahrenheit(last - 100.0)), thigh: None, sure: false };
    let asked = suspects(&log.cook(), &readings, &typed);
    assert_eq!((asked.len(), asked[0].place, asked[0].slip), (1, Place::Breast, Slip::Digit));
    assert!((in_fahrenheit(asked[0].meant.unwrap()) - last).abs() < 0.5);
    readings.push(typed);
    let with = forecast(&log.cook(), &readings, cooks::span(151.0));
    assert_eq!(with.suspects, asked);
    assert_eq!(with.done, clean.done);
}

#[test]
fn celsius_typed_as_fahrenheit_is_recognized() {
    let log = log("182");
    let readings = until(&log, 150.0);
    let true_f = in_fahrenheit(readings.last().unwrap().breast.unwrap());
    let typed = fahrenheit(((true_f - 32.0) / 1.8).round());
    let new =
        Reading { at: cooks::span(155.0), pit: Some(fahrenheit(163.0)), breast: Some(typed), thigh: None, sure: false };
    let asked = suspects(&log.cook(), &readings, &new);
    let slips: Vec<_> = asked.iter().map(|s| (s.place, s.slip)).collect();
    assert_eq!(slips, [(Place::Pit, Slip::WasCelsius), (Place::Breast, Slip::WasCelsius)]);
    assert!((in_fahrenheit(asked[1].meant.unwrap()) - true_f).abs() < 1.5);
}

#[test]
fn a_reading_the_cook_stands_by_counts() {
    let log = log("182");
    let new = Reading { at: cooks::span(155.0), pit: None, breast: Some(fahrenheit(60.0)), thigh: None, sure: true };
    assert!(suspects(&log.cook(), &until(&log, 150.0), &new).is_empty());
}

#[test]
fn a_dying_fire_is_named_and_costs_time() {
    let log = log("076");
    let before = at(&log, 120.0);
    let mut readings = until(&log, 120.0);
    let bird = *readings.last().unwrap();
    for i in 1..=8 {
        let t = 120.0 + 5.0 * f64::from(i);
        let pit = Some(fahrenheit(270.0 - 14.0 * f64::from(i)));
        readings.push(Reading { at: cooks::span(t), pit, ..bird });
    }
    let after = forecast(&log.cook(), &readings, cooks::span(160.0));
    assert!(doubts(&after).contains(&"fire-dying"), "{:?}", after.doubts);
    assert!(after.done.p50 > before.done.p50 + TimeDelta::minutes(15));
    assert!(width(after.done) > width(before.done));
}

#[test]
fn an_opened_door_is_no_dying_fire() {
    let log = log("152");
    for t in [112.0, 150.0, 252.0] {
        assert!(!doubts(&at(&log, t)).contains(&"fire-dying"), "at {t}");
    }
}

#[test]
fn an_hour_without_readings_widens_the_interval_and_says_why() {
    let log = log("182");
    let now = cooks::span(170.0);
    let full = forecast(&log.cook(), &until(&log, 170.0), now);
    let stale = forecast(&log.cook(), &until(&log, 95.0), now);
    assert!(doubts(&stale).contains(&"gap") && !doubts(&full).contains(&"gap"));
    assert!(width(stale.done) > 1.5 * width(full.done));
}

#[test]
fn a_moved_probe_widens_the_interval_and_says_why() {
    let log = log("182");
    let clean = at(&log, 160.0);
    let mut readings = until(&log, 160.0);
    for reading in readings.iter_mut().filter(|r| minutes(r.at) > 140.0) {
        reading.breast = reading.breast.map(|t| fahrenheit(in_fahrenheit(t) - 22.0));
    }
    let moved = forecast(&log.cook(), &readings, cooks::span(160.0));
    assert!(moved.doubts.contains(&Doubt::ProbeMoved(Place::Breast)), "{:?}", moved.doubts);
    assert!(width(moved.done) > 1.2 * width(clean.done), "{:?} {:?}", moved.done, clean.done);
}

#[test]
fn foil_half_way_widens_the_interval_and_says_why() {
    // Foil slows a hot oven's bird: from minute 100 on the spots rise at three fifths of their pace.
    let log = log("182");
    let covered: Vec<Reading> = until(&log, 150.0)
        .into_iter()
        .map(|r| {
            let t = minutes(r.at);
            let real = if t > 100.0 { 100.0 + 0.4 * (t - 100.0) } else { t };
            let source = until(&log, real);
            let last = source.iter().rev().find(|s| s.breast.is_some() && s.thigh.is_some()).unwrap();
            Reading { breast: last.breast, thigh: last.thigh, ..r }
        })
        .collect();
    let plain = at(&log, 150.0);
    let foil = forecast(&log.cook(), &covered, cooks::span(150.0));
    assert!(doubts(&foil).contains(&"changed"), "{:?}", foil.doubts);
    assert!(width(foil.done) > 1.3 * width(plain.done));
    assert!(foil.done.p50 > plain.done.p50);
}

#[test]
fn two_probes_far_apart_are_named() {
    let log = log("182");
    let mut readings = until(&log, 150.0);
    for reading in &mut readings {
        reading.thigh = reading.thigh.map(|t| fahrenheit(40.0 + 0.3 * (in_fahrenheit(t) - 40.0)));
    }
    let outlook = forecast(&log.cook(), &readings, cooks::span(150.0));
    assert!(doubts(&outlook).contains(&"probes-disagree"), "{:?}", outlook.doubts);
}

#[test]
fn looks_are_asked_for_rarely_at_first_and_often_near_the_end() {
    let log = log("182");
    let wait = |t: f64| minutes(at(&log, t).next_look) - t;
    assert!(wait(30.0) >= 30.0, "{}", wait(30.0));
    assert!((10.0..=15.0).contains(&wait(215.0)), "{}", wait(215.0));
}

#[test]
fn no_reduction_is_claimed_before_the_heat_has_done_it_and_enough_after() {
    let log = log("182");
    let mut before = 0.0;
    for t in [60.0, 120.0, 180.0, 205.0, 225.0] {
        let now = at(&log, t).log_reduction;
        assert!(now >= before - 0.2, "{t}: {now} after {before}");
        before = now;
    }
    assert_eq!(at(&log, 120.0).log_reduction, 0.0);
    assert!(before > 0.5, "{before}");
    // One spot alone says too little of a whole bird.
    let blind: Vec<Reading> = until(&log, 225.0).into_iter().map(|r| Reading { thigh: None, ..r }).collect();
    assert_eq!(forecast(&log.cook(), &blind, cooks::span(225.0)).log_reduction, 0.0);
}

/// A spot that rises from what it had at the pull to its peak is at least as hot as at the pull all that time.
#[test]
fn decades_foretold_of_a_pull_are_there_in_truth() {
    let (mut claimed, mut by_the_rise) = (0, 0);
    for log in logs() {
        let pull = log.truth.pull_min;
        let outlook = at(&log, pull);
        assert!(outlook.log_reduction_off >= outlook.log_reduction, "{}: standing undoes nothing", log.id);
        if outlook.log_reduction_off < LOG_TARGET {
            continue;
        }
        claimed += 1;
        by_the_rise += usize::from(outlook.log_reduction < LOG_TARGET);
        for (at_pull, rises) in log.truth.at_pull {
            let held = is_enough(fahrenheit(at_pull), cooks::span(rises), Kind::Turkey, None);
            let there = held.answer == Answer::Enough;
            // Over the heat it may have had its time already.
            assert!(there || outlook.log_reduction >= LOG_TARGET, "{}: {at_pull} °F for {rises} min", log.id);
        }
    }
    assert!(claimed > 40 && by_the_rise > 3, "{claimed} claimed, {by_the_rise} by the rise alone");
}

#[test]
fn an_earlier_cook_on_a_fast_cooker_makes_the_next_forecast_earlier() {
    let log = log("058");
    let cook = log.cook();
    let profile = cook.profile.after(&cook, &log.readings());
    assert_eq!(profile.cooks, 1);
    let next = Cook { profile, ..cook.clone() };
    let time = |c: &Cook| minutes(forecast(c, &[], TimeDelta::zero()).done.p50);
    let (usual, learned, truth) = (time(&cook), time(&next), log.truth.target_min);
    assert!((learned - truth).abs() < (usual - truth).abs(), "usual {usual}, learned {learned}, true {truth}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn no_readings_whatever_break_the_order_of_the_quantiles(
        values in prop::collection::vec((0.0..600.0_f64, -60.0..700.0_f64, -60.0..700.0_f64, -60.0..700.0_f64, 0_u8..8), 0..25),
        sure: bool,
    ) {
        let cook = log("005").cook();
        let readings: Vec<Reading> = values
            .into_iter()
            .map(|(t, pit, breast, thigh, mask)| Reading {
                at: cooks::span(t),
                pit: (mask & 1 == 0).then(|| fahrenheit(pit)),
                breast: (mask & 2 == 0).then(|| celsius(breast)),
                thigh: (mask & 4 == 0).then(|| fahrenheit(thigh)),
                sure,
            })
            .collect();
        let now = readings.iter().map(|r| r.at).max().unwrap_or_default();
        let outlook = forecast(&cook, &readings, now);
        let Spread { p10, p50, p90 } = outlook.done;
        prop_assert!(now <= p10 + TimeDelta::seconds(1) && p10 <= p50 && p50 <= p90, "{:?}", outlook.done);
        prop_assert!(outlook.log_reduction.is_finite() && outlook.log_reduction >= 0.0);
        prop_assert!(outlook.log_reduction_off.is_finite() && outlook.log_reduction_off >= outlook.log_reduction);
        prop_assert!(outlook.next_look > now - TimeDelta::minutes(3));
    }
}
