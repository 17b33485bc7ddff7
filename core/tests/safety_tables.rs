//! Rules against the published rows, one by one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/tables.rs"]
mod tables;

use carvetime_core::bird::Form;
use carvetime_core::quantity::{celsius, fahrenheit, in_fahrenheit};
use carvetime_core::range::Range;
use carvetime_core::safety::{
    Cooling, Food, HAZARDS, Hazard, Jurisdiction, KEEPING, Keep, Place, RULES, Spot, Unit, Verdict, cooling, end_point,
    fridge, hold_hot, in_danger_zone, keeps, left_out, reheat, rule, spots, two_hour_limit,
};
use carvetime_core::source::Standing;
use chrono::TimeDelta;
use proptest::prelude::*;
use tables::rows;

fn number(text: &str) -> Option<f64> {
    (!text.is_empty()).then(|| text.parse().unwrap())
}

fn unit(text: &str) -> Unit {
    match text {
        "F" => Unit::Fahrenheit,
        "C" => Unit::Celsius,
        "s" => Unit::Seconds,
        "min" => Unit::Minutes,
        "h" => Unit::Hours,
        "day" => Unit::Days,
        "log10" => Unit::Log10,
        "pct" | "pct_fat" => Unit::Percent,
        "spots" | "times" | "" => Unit::Count,
        "bool" => Unit::Flag,
        "in" => Unit::Inches,
        "ft" => Unit::Feet,
        "lb" => Unit::Pounds,
        "ratio" => Unit::Ratio,
        "min_per_lb" => Unit::MinutesPerPound,
        "lb_per_day" => Unit::PoundsPerDay,
        "h_per_kg" => Unit::HoursPerKilogram,
        "cup_per_lb" => Unit::CupsPerPound,
        other => panic!("unit {other}"),
    }
}

fn standing(status: &str) -> Standing {
    match status.split([':', ';']).next() {
        Some("seen") => Standing::Seen,
        Some("seen-secondary") => Standing::SeenSecondary,
        other => panic!("status {other:?}"),
    }
}

#[test]
fn every_published_rule_stands_in_the_table_as_printed() {
    let mut seen = 0;
    for (name, prefix) in [("temperature_rules", ""), ("thawing_rules", "thaw_"), ("roasting_rules", "roast_")] {
        for row in rows(name) {
            let id = format!("{prefix}{}", row["rule_id"]);
            let rule = rule(&id).unwrap_or_else(|| panic!("no rule {id}"));
            assert_eq!(rule.low, number(&row["value_min"]), "{id}");
            assert_eq!(rule.high, number(&row["value_max"]), "{id}");
            assert_eq!(rule.unit, unit(&row["unit"]), "{id}");
            if let Some(jurisdiction) = row.get("jurisdiction") {
                assert_eq!(rule.jurisdiction.name(), jurisdiction.to_lowercase(), "{id}");
            }
            assert_eq!(rule.source.standing, standing(&row["status"]), "{id} rests on {}", rule.source.id);
            // Where the print gives Celsius beside Fahrenheit, ours agrees to half its last digit.
            let celsius = row.get("value_c_min").and_then(|text| number(text)).filter(|_| rule.low.is_some());
            if let (Some(printed), Some(temperature)) = (celsius, rule.temperature()) {
                let got = (in_fahrenheit(temperature) - 32.0) / 1.8;
                assert!((got - printed).abs() <= 0.05 + 1e-9, "{id}: {got}, printed {printed}");
            }
            seen += 1;
        }
    }
    assert_eq!(seen, RULES.len());
}

#[test]
fn every_published_keeping_time_stands_in_the_table_as_printed() {
    let rows = rows("cold_storage");
    assert_eq!(rows.len(), KEEPING.len());
    for (row, keeping) in rows.iter().zip(KEEPING) {
        let printed = Range::new(row["time_min"].parse().unwrap(), row["time_max"].parse().unwrap());
        let keep = if row["unit"] == "day" { Keep::Days(printed) } else { Keep::Months(printed) };
        assert_eq!(keeping.keep, keep, "{row:?}");
        let place = match row["where"].as_str() {
            "refrigerator" => Place::Fridge,
            "freezer" => Place::Freezer,
            _ => Place::Shop,
        };
        assert_eq!(keeping.place, place, "{row:?}");
        assert_eq!(keeping.source.standing, standing(&row["status"]), "{row:?}");
    }
}

#[test]
fn every_published_caution_stands_in_the_table_as_printed() {
    let rows = rows("cautions");
    assert_eq!(rows.len(), HAZARDS.len());
    for (row, fact) in rows.iter().zip(HAZARDS) {
        assert_eq!(fact.figure.map(|figure| figure.0), number(&row["value"]), "{row:?}");
        if let Some((_, printed)) = fact.figure {
            assert_eq!(printed, unit(&row["unit"]), "{row:?}");
        }
        assert_eq!(fact.source.standing, standing(&row["status"]), "{row:?}");
        assert_eq!(fact.hazard.fact(), Some(fact));
    }
    assert_eq!(Hazard::ALL.len(), HAZARDS.len());
}

#[test]
fn two_hours_are_one_above_90_f() {
    assert_eq!(two_hour_limit(None).id, "us_two_hour_rule");
    assert_eq!(two_hour_limit(Some(fahrenheit(90.0))).id, "us_two_hour_rule");
    assert_eq!(two_hour_limit(Some(fahrenheit(91.0))).id, "us_one_hour_rule");
    assert_eq!(two_hour_limit(Some(fahrenheit(f64::NAN))).id, "us_one_hour_rule");
}

#[test]
fn food_out_for_three_hours_is_thrown_away() {
    let over = TimeDelta::hours(1);
    assert!(matches!(left_out(None, TimeDelta::hours(3)), Verdict::Discard { over: o, .. } if o == over));
    assert!(matches!(left_out(None, TimeDelta::hours(2)), Verdict::Discard { .. }));
    let left = TimeDelta::minutes(30);
    assert!(
        matches!(left_out(None, TimeDelta::minutes(90)), Verdict::Fine { left: l, if_cool: true, .. } if l == left)
    );
    let picnic = left_out(Some(fahrenheit(95.0)), TimeDelta::minutes(90));
    assert!(matches!(picnic, Verdict::Discard { over: o, .. } if o == left));
}

#[test]
fn cooling_keeps_both_marks_of_the_food_code() {
    let hours = TimeDelta::hours;
    let mark = |cooling| match cooling {
        Cooling::OnTrack { left, mark } => (left, in_fahrenheit(mark).round() as i32),
        other => panic!("{other:?}"),
    };
    assert_eq!(mark(cooling(fahrenheit(100.0), hours(1), None)), (hours(1), 70));
    assert_eq!(mark(cooling(fahrenheit(69.0), hours(2), None)), (hours(4), 41));
    assert_eq!(cooling(fahrenheit(71.0), hours(2), None), Cooling::TooSlow { over: TimeDelta::zero() });
    assert_eq!(cooling(fahrenheit(41.0), hours(6), Some(true)), Cooling::Done);
    assert_eq!(cooling(fahrenheit(45.0), hours(7), Some(true)), Cooling::TooSlow { over: hours(1) });
    // Cold now, but nobody looked at two hours: not enough evidence.
    assert_eq!(cooling(fahrenheit(40.0), hours(5), None), Cooling::TooSlow { over: hours(3) });
}

#[test]
fn where_charts_disagree_the_shorter_time_is_given() {
    let days = |food, whose| match keeps(food, Place::Fridge, whose).unwrap().keep {
        Keep::Days(days) => (days.low, days.high),
        Keep::Months(_) => panic!("{food:?} in months"),
    };
    assert_eq!(days(Food::Leftovers, Jurisdiction::Us), (3, 4));
    assert_eq!(days(Food::Leftovers, Jurisdiction::Uk), (2, 2));
    assert_eq!(days(Food::Stuffing, Jurisdiction::Us), (1, 2));
    assert_eq!(days(Food::Gravy, Jurisdiction::Us), (1, 2));
    assert_eq!(days(Food::RawWhole, Jurisdiction::Us), (1, 2));
    let frozen = keeps(Food::Leftovers, Place::Freezer, Jurisdiction::Us).unwrap();
    assert_eq!((frozen.keep, frozen.keep.safe_limit()), (Keep::Months(Range::new(3, 4)), None));
}

#[test]
fn each_authority_has_its_own_end_point() {
    let f = |form, whose| in_fahrenheit(end_point(form, whose).temperature).round() as i32;
    assert_eq!(f(Form::Whole, Jurisdiction::Us), 165);
    assert_eq!(f(Form::Whole, Jurisdiction::Ca), 180);
    assert_eq!(f(Form::Pieces, Jurisdiction::Ca), 165);
    assert_eq!(f(Form::Whole, Jurisdiction::Uk), 158);
    assert_eq!(end_point(Form::Whole, Jurisdiction::Uk).hold, TimeDelta::minutes(2));
    assert_eq!(end_point(Form::Whole, Jurisdiction::Us).hold, TimeDelta::zero());
    assert_eq!(hold_hot(Jurisdiction::Us).low, Some(140.0));
    assert_eq!(hold_hot(Jurisdiction::Uk).low, Some(63.0));
    assert_eq!(fridge(Jurisdiction::Us).high, Some(40.0));
    assert_eq!(reheat(Food::Leftovers).low, Some(165.0));
    assert_eq!(reheat(Food::Gravy).id, "us_gravy_reheat");
}

#[test]
fn a_bird_is_measured_in_three_spots_and_its_stuffing() {
    assert_eq!(spots(false), [Spot::Thigh, Spot::Wing, Spot::Breast]);
    assert_eq!(spots(true).last(), Some(&Spot::Stuffing));
}

#[test]
fn lukewarm_is_in_the_danger_zone_whoever_rules() {
    for &whose in Jurisdiction::ALL {
        assert!(in_danger_zone(celsius(37.0), whose));
        assert!(!in_danger_zone(celsius(3.0), whose));
        assert!(!in_danger_zone(celsius(70.0), whose));
        assert!(in_danger_zone(celsius(f64::NAN), whose));
    }
}

proptest! {
    #[test]
    fn longer_or_hotter_is_never_safer(f in 30.0..120.0_f64, more in 0.0..50.0_f64, minutes in 0_i64..400, longer in 0_i64..200) {
        let rank = |verdict| match verdict {
            Verdict::Fine { left, .. } => -left.num_seconds(),
            Verdict::Discard { over, .. } => over.num_seconds(),
        };
        let out = left_out(Some(fahrenheit(f)), TimeDelta::minutes(minutes));
        let worse = left_out(Some(fahrenheit(f + more)), TimeDelta::minutes(minutes + longer));
        prop_assert!(rank(worse) >= rank(out));
    }
}
