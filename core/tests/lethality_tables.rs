//! Hold times against USDA FSIS, FSIS-GD-2021-14, December 2021, Tables 3 and 4, cell by cell.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_core::bird::Kind;
use carvetime_core::lethality::{Answer, CurveError, Hold, hold_time, is_enough, log_reduction};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_fahrenheit};
use chrono::TimeDelta;
use proptest::prelude::*;

const KINDS: [Kind; 6] = [Kind::Turkey, Kind::TurkeyBreast, Kind::Chicken, Kind::Capon, Kind::Duck, Kind::Goose];

fn table(name: &str) -> csv::Reader<std::fs::File> {
    csv::Reader::from_path(format!("{}/../tests/tables/{name}.csv", env!("CARGO_MANIFEST_DIR"))).unwrap()
}

/// (°F, fat %, printed seconds) of every cell.
fn cells(name: &str) -> Vec<(f64, f64, f64)> {
    table(name)
        .records()
        .map(|row| {
            let row = row.unwrap();
            let number = |i: usize| row[i].parse::<f64>().unwrap();
            (number(0), number(2), number(3))
        })
        .collect()
}

fn seconds(hold: Hold) -> f64 {
    match hold {
        Hold::BelowTable => f64::INFINITY,
        Hold::For(time) => time.as_seconds_f64(),
        Hold::Instant => 0.0,
    }
}

#[test]
fn every_printed_cell_is_given_back() {
    for (name, kind) in [("fsis_lethality_turkey", Kind::Turkey), ("fsis_lethality_chicken", Kind::Chicken)] {
        let cells = cells(name);
        assert_eq!(cells.len(), 30 * 12);
        for (f, fat, printed) in cells {
            let got = seconds(hold_time(fahrenheit(f), kind, Some(fat)));
            assert!((got - printed).abs() < 1e-3, "{name} {f} F {fat} %: {got}, printed {printed}");
        }
    }
}

#[test]
fn the_cells_other_readings_confirm_are_given_back() {
    let mut seen = 0;
    for row in table("fsis_lethality_crosscheck").records() {
        let row = row.unwrap();
        let kind = Kind::from_name(&row[1]).unwrap();
        let unit = match &row[5] {
            "min" => 60.0,
            "sec" | "s" => 1.0,
            other => panic!("unit {other}"),
        };
        let Ok(value) = row[4].parse::<f64>() else { continue };
        let got = seconds(hold_time(fahrenheit(row[2].parse().unwrap()), kind, Some(row[3].parse().unwrap())));
        // Half the last printed digit; a tenth of a minute is six seconds.
        let half = if unit > 1.0 { 3.0 } else { 0.05 };
        assert!((got - value * unit).abs() <= half + 1e-3, "{row:?}: {got}");
        seen += 1;
    }
    assert!(seen >= 40, "{seen} figures");
}

#[test]
fn between_rows_the_colder_row_counts() {
    for (f, fat, printed) in cells("fsis_lethality_turkey") {
        let got = seconds(hold_time(fahrenheit(f + 0.9), Kind::Turkey, Some(fat)));
        assert!((got - printed).abs() < 1e-3, "{f} F {fat} %");
    }
}

#[test]
fn between_columns_the_slower_one_counts_even_where_the_print_dips() {
    // Turkey at 150 F dips from 3.8 to 3.7 min; chicken at 151 F from 2.1 to 2.0.
    for (name, kind) in [("fsis_lethality_turkey", Kind::Turkey), ("fsis_lethality_chicken", Kind::Chicken)] {
        let cells = cells(name);
        let mut dips = 0;
        for pair in cells.windows(2).filter(|pair| pair[0].0 == pair[1].0) {
            let slower = pair[0].2.max(pair[1].2);
            dips += i32::from(pair[0].2 > pair[1].2);
            let got = seconds(hold_time(fahrenheit(pair[0].0), kind, Some(pair[0].1 + 0.5)));
            assert!((got - slower).abs() < 1e-3, "{name} {pair:?}");
        }
        assert!(dips > 0, "{name} dips in print");
    }
}

#[test]
fn unknown_fat_and_other_birds_take_the_slowest() {
    let slowest =
        |name: &str, f: f64| cells(name).iter().filter(|cell| cell.0 == f).map(|cell| cell.2).fold(0.0, f64::max);
    for degree in 136..=165 {
        let f = f64::from(degree);
        let (turkey, chicken) = (slowest("fsis_lethality_turkey", f), slowest("fsis_lethality_chicken", f));
        for fat in [None, Some(40.0), Some(-1.0), Some(f64::NAN)] {
            assert!((seconds(hold_time(fahrenheit(f), Kind::TurkeyBreast, fat)) - turkey).abs() < 1e-3);
            assert!((seconds(hold_time(fahrenheit(f), Kind::Capon, fat)) - chicken).abs() < 1e-3);
            assert!((seconds(hold_time(fahrenheit(f), Kind::Goose, fat)) - turkey.max(chicken)).abs() < 1e-3);
        }
    }
}

#[test]
fn two_minutes_at_158_are_enough_and_half_a_minute_is_not() {
    let held = |seconds| is_enough(fahrenheit(158.0), TimeDelta::seconds(seconds), Kind::Turkey, None);
    assert_eq!(held(120).answer, Answer::Enough);
    // Table 4, 158 F, 12 %: 40.9 s.
    assert_eq!(held(30).answer, Answer::NotYet { missing: TimeDelta::milliseconds(10_900) });
    assert_eq!(held(120).row_f, Some(158));
    assert!((in_fahrenheit(held(120).kitchen) - 165.0).abs() < 1e-9);
    // 70 C is that row, not the one below.
    assert_eq!(is_enough(celsius(70.0), TimeDelta::zero(), Kind::Turkey, None).row_f, Some(158));
}

#[test]
fn below_136_no_time_is_enough() {
    for kind in KINDS {
        for f in [-40.0, 100.0, 135.9, f64::NAN] {
            let verdict = is_enough(fahrenheit(f), TimeDelta::days(30), kind, Some(1.0));
            assert_eq!((verdict.answer, verdict.needed, verdict.row_f), (Answer::Never, Hold::BelowTable, None));
        }
    }
}

#[test]
fn the_printed_time_at_a_row_makes_seven_decades() {
    for (f, fat, printed) in cells("fsis_lethality_turkey").into_iter().filter(|cell| cell.2 > 0.0) {
        // In steps of at most an hour: a longer gap says nothing.
        let step = TimeDelta::milliseconds((printed * 1e3 / 2.0) as i64);
        let curve: Vec<_> = (0..=2).map(|i| (step * i, fahrenheit(f))).collect();
        let got = log_reduction(&curve, Kind::Turkey, Some(fat)).unwrap();
        assert!((got - 7.0).abs() < 1e-3, "{f} F {fat} %: {got}");
    }
}

#[test]
fn a_gap_of_two_hours_between_readings_counts_for_nothing() {
    let curve = [(TimeDelta::zero(), fahrenheit(160.0)), (TimeDelta::hours(2), fahrenheit(160.0))];
    assert_eq!(log_reduction(&curve, Kind::Turkey, None), Ok(0.0));
}

#[test]
fn readings_out_of_order_are_named() {
    let (early, late) = (TimeDelta::minutes(5), TimeDelta::minutes(9));
    let curve = [(late, fahrenheit(150.0)), (early, fahrenheit(151.0))];
    let error = Err(CurveError::OutOfOrder { earlier: late, later: early });
    assert_eq!(log_reduction(&curve, Kind::Turkey, None), error);
    let curve = [(early, fahrenheit(f64::NAN))];
    assert_eq!(log_reduction(&curve, Kind::Turkey, None), Err(CurveError::NoTemperature { at: early }));
}

fn readings() -> impl Strategy<Value = Vec<(TimeDelta, Temperature)>> {
    prop::collection::vec((0_i64..1_800, 60.0..200.0_f64), 0..30).prop_map(|steps| {
        let mut at = 0;
        steps
            .into_iter()
            .map(|(step, f)| {
                at += step;
                (TimeDelta::seconds(at), fahrenheit(f))
            })
            .collect()
    })
}

proptest! {
    #[test]
    fn a_hotter_bird_never_needs_longer(f in 130.0..180.0_f64, more in 0.0..20.0_f64, fat in prop::option::of(0.0..20.0_f64), kind in 0..6_usize) {
        let kind = KINDS[kind];
        prop_assert!(seconds(hold_time(fahrenheit(f + more), kind, fat)) <= seconds(hold_time(fahrenheit(f), kind, fat)));
    }

    #[test]
    fn knowing_the_fat_never_makes_it_slower_than_not_knowing(f in 130.0..180.0_f64, fat in 0.0..20.0_f64, kind in 0..6_usize) {
        let kind = KINDS[kind];
        prop_assert!(seconds(hold_time(fahrenheit(f), kind, Some(fat))) <= seconds(hold_time(fahrenheit(f), kind, None)));
    }

    #[test]
    fn the_reduction_never_falls_as_readings_come_in(curve in readings(), kind in 0..6_usize) {
        let mut before = 0.0;
        for n in 0..=curve.len() {
            let now = log_reduction(&curve[..n], KINDS[kind], None).unwrap();
            prop_assert!(now.is_finite() && now >= before);
            before = now;
        }
    }

    #[test]
    fn a_hotter_curve_never_counts_less(curve in readings(), more in 0.0..30.0_f64) {
        let hotter: Vec<_> = curve.iter().map(|(at, t)| (*at, fahrenheit(in_fahrenheit(*t) + more))).collect();
        let less = log_reduction(&curve, Kind::Goose, None).unwrap();
        prop_assert!(log_reduction(&hotter, Kind::Goose, None).unwrap() >= less - 1e-9);
    }
}
