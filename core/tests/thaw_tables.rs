//! Thawing times against the published table (USDA FSIS, current edition) and The Big Thaw.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/tables.rs"]
mod tables;

use carvetime_core::bird::{Bird, BirdMass, Condition, Form, Kind};
use carvetime_core::quantity::{kilograms, pounds};
use carvetime_core::range::Range;
use carvetime_core::thaw::{self, Basis, cold_water, fridge};
use chrono::TimeDelta;
use proptest::prelude::*;
use std::collections::HashMap;
use tables::rows;

fn frozen(kind: Kind, lb: f64) -> Bird {
    let mass = BirdMass::new(pounds(lb)).unwrap();
    Bird { kind, mass, condition: Condition::Frozen, form: Form::Whole, stuffed: false, solution: None }
}

fn number(row: &HashMap<String, String>, column: &str) -> f64 {
    row[column].parse().unwrap()
}

/// The rows of a turkey in the current edition: pounds, printed range, in the fridge or not.
fn turkey() -> Vec<(Range<f64>, Range<TimeDelta>, bool)> {
    rows("thawing_times")
        .iter()
        .filter(|row| row["bird"] == "turkey" && row["edition"] == "current")
        .map(|row| {
            let in_fridge = row["unit"] == "day";
            let hours = if in_fridge { 24.0 } else { 1.0 };
            let time = |column| TimeDelta::minutes((number(row, column) * hours * 60.0) as i64);
            let lb = Range::new(number(row, "weight_lb_min"), number(row, "weight_lb_max"));
            (lb, Range::new(time("time_min"), time("time_max")), in_fridge)
        })
        .collect()
}

#[test]
fn every_printed_line_is_given_back_at_every_weight_it_covers() {
    let lines = turkey();
    assert_eq!(lines.len(), 8);
    for (lb, printed, in_fridge) in lines {
        // A weight on the border belongs to the lighter line.
        for tenth in 0..=10 {
            let weight = (lb.low + if lb.low > 4.0 { 0.01 } else { 0.0 })
                .max(lb.low + (lb.high - lb.low) * f64::from(tenth) / 10.0);
            let bird = frozen(Kind::Turkey, weight);
            let thaw = if in_fridge { fridge(&bird).unwrap() } else { cold_water(&bird).unwrap().thaw };
            assert_eq!((thaw.printed, thaw.basis), (Some(printed), Basis::Published), "{weight} lb");
            assert!(printed.holds(thaw.time.low) && printed.holds(thaw.time.high), "{weight} lb: {thaw:?}");
        }
        // The heaviest bird of a line takes the most it prints.
        let bird = frozen(Kind::Turkey, lb.high);
        let thaw = if in_fridge { fridge(&bird).unwrap() } else { cold_water(&bird).unwrap().thaw };
        assert_eq!(thaw.time.high, printed.high, "{lb:?}");
    }
}

#[test]
fn a_small_chicken_or_duck_thaws_in_water_as_printed() {
    for kind in [Kind::Chicken, Kind::Duck] {
        for lb in [3.0, 3.5, 4.0] {
            let water = cold_water(&frozen(kind, lb)).unwrap();
            assert_eq!(water.thaw.time, Range::new(TimeDelta::hours(2), TimeDelta::hours(3)));
            assert_eq!(water.thaw.basis, Basis::Published);
            assert_eq!(water.changes, Range::new(3, 5));
        }
    }
    assert_eq!(fridge(&frozen(Kind::Duck, 5.0)).unwrap().time, Range::exactly(TimeDelta::days(2)));
}

#[test]
fn the_rates_are_the_published_ones() {
    let rule = |id: &str| {
        let rows = rows("thawing_rules");
        let row = rows.iter().find(|row| row["rule_id"] == id).unwrap().clone();
        Range::new(number(&row, "value_min"), number(&row, "value_max"))
    };
    assert_eq!(rule("us_water_change"), Range::exactly(thaw::WATER_CHANGE_EVERY.num_minutes() as f64));
    let keeps = rule("us_keep_after_fridge_thaw");
    assert_eq!(thaw::KEEPS_AFTER_FRIDGE.low, TimeDelta::days(keeps.low as i64));
    assert_eq!(thaw::KEEPS_AFTER_FRIDGE.high, TimeDelta::days(keeps.high as i64));
    assert_eq!(rule("us_cook_after_water_thaw").high, thaw::KEEPS_AFTER_WATER.num_hours() as f64);
    // 30 minutes a pound.
    let water = cold_water(&frozen(Kind::Turkey, 14.0)).unwrap();
    assert_eq!(water.thaw.time.low.num_minutes() as f64, rule("us_water_rate").low * 14.0);
    assert_eq!(water.changes.low, 13);
    // At least 24 hours for each 5 lb, also where the table ends.
    for lb in [12.0, 24.0, 30.0] {
        let days = fridge(&frozen(Kind::Turkey, lb)).unwrap().time.high.num_hours() as f64 / 24.0;
        assert!(days >= lb / rule("us_fridge_rate_bigthaw").low, "{lb} lb");
        assert!(days >= (lb / rule("us_fridge_rate").low).floor(), "{lb} lb");
    }
    let factor = rows("roasting_rules").iter().find(|row| row["rule_id"] == "from_frozen_factor").unwrap().clone();
    assert_eq!(number(&factor, "value_min"), thaw::FROM_FROZEN_FACTOR);
}

#[test]
fn a_bird_weighed_in_kilograms_meets_the_same_line() {
    let mut bird = frozen(Kind::Turkey, 12.0);
    bird.mass = BirdMass::new(kilograms(12.0 * 0.453_592_37)).unwrap();
    assert_eq!(fridge(&bird), fridge(&frozen(Kind::Turkey, 12.0)));
}

#[test]
fn a_fresh_bird_needs_no_thawing_and_a_part_thawed_one_less() {
    for &kind in Kind::ALL {
        let whole = frozen(kind, 10.0);
        let part = Bird { condition: Condition::PartThawed, ..whole };
        assert_eq!((fridge(&whole.thawed()), cold_water(&whole.thawed())), (None, None));
        let (all, some) = (fridge(&whole).unwrap(), fridge(&part).unwrap());
        assert!(some.time.high < all.time.high && some.basis == Basis::Share);
    }
}

proptest! {
    #[test]
    fn a_heavier_bird_never_thaws_sooner(lb in 0.5..50.0_f64, more in 0.0..5.0_f64, kind in 0..6_usize) {
        let kind = Kind::ALL[kind];
        let (light, heavy) = (frozen(kind, lb), frozen(kind, lb + more));
        let (a, b) = (fridge(&light).unwrap().time, fridge(&heavy).unwrap().time);
        prop_assert!(a.low <= b.low && a.high <= b.high && a.low <= a.high);
        let (a, b) = (cold_water(&light).unwrap(), cold_water(&heavy).unwrap());
        prop_assert!(a.thaw.time.low <= b.thaw.time.low && a.thaw.time.high <= b.thaw.time.high);
        prop_assert!(a.thaw.time.low <= a.thaw.time.high && a.changes.low <= a.changes.high);
    }

    #[test]
    fn water_is_quicker_than_the_fridge(lb in 0.5..50.0_f64, kind in 0..6_usize) {
        let bird = frozen(Kind::ALL[kind], lb);
        prop_assert!(cold_water(&bird).unwrap().thaw.time.high < fridge(&bird).unwrap().time.high);
    }
}
