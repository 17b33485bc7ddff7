//! The forecast without a reading against published roasting times, rates and laws.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod table;

use carvetime_core::bird::{Bird, BirdMass, Condition, Form, Kind};
use carvetime_core::heat::body::{Body, Shape, Stuff};
use carvetime_core::heat::surface::Skin;
use carvetime_core::heat::{Cook, Profile, forecast};
use carvetime_core::quantity::{fahrenheit, pounds};
use carvetime_core::roast::{Cooker, Heat, Spread};
use chrono::TimeDelta;
use table::Table;

fn cook(kind: Kind, lb: f64, cooker: Cooker, pit_f: f64, breast_f: f64, thigh_f: f64) -> Cook {
    Cook {
        bird: Bird {
            kind,
            mass: BirdMass::new(pounds(lb)).unwrap(),
            condition: Condition::Fresh,
            form: Form::Whole,
            stuffed: false,
            solution: None,
        },
        heat: Heat { cooker, setting: fahrenheit(pit_f) },
        start: None,
        breast: Some(fahrenheit(breast_f)),
        thigh: (kind != Kind::TurkeyBreast).then(|| fahrenheit(thigh_f)),
        profile: Profile::default(),
        was_set: Vec::new(),
    }
}

fn hours(span: TimeDelta) -> f64 {
    span.num_seconds() as f64 / 3600.0
}

fn spread(cook: &Cook) -> Spread {
    forecast(cook, &[], TimeDelta::zero()).done
}

/// The bird of a row of the government timetable, cooked to these end points; `None` for pieces and small birds.
fn of_row(row: &table::Row, breast_f: f64, thigh_f: f64) -> Option<Cook> {
    let kind = match (row.text("bird"), row.text("form")) {
        ("turkey", "breast") => Kind::TurkeyBreast,
        ("turkey", "whole") => Kind::Turkey,
        ("chicken", "whole") => Kind::Chicken,
        ("capon", "whole") => Kind::Capon,
        ("goose", "whole, young") => Kind::Goose,
        _ => return None,
    };
    if row.text("state") != "thawed" {
        return None;
    }
    let lb = 0.5 * (row.number("weight_lb_min") + row.number("weight_lb_max"));
    let mut cook = cook(kind, lb, Cooker::Oven, row.number("oven_f"), breast_f, thigh_f);
    cook.bird.stuffed = row.text("stuffed") == "yes";
    Some(cook)
}

#[test]
fn every_row_of_the_government_timetable_meets_the_forecasts_interval() {
    let mut rows = 0;
    for row in Table::read("roasting_times.csv").rows() {
        let Some(cook) = of_row(&row, 165.0, 165.0) else { continue };
        let Spread { p10, p90, .. } = spread(&cook);
        let (low, high) = (row.number("time_h_min"), row.number("time_h_max"));
        let lb = row.number("weight_lb_min");
        // The stuffed birds the prior was learned from (four, synthetic) are slower than the printed table has them: to the breast's
        // and the thigh's target, with cold stuffing still drawing heat.
        let slow = if cook.bird.stuffed { 1.15 } else { 1.0 };
        assert!(
            hours(p10) <= slow * high && low <= hours(p90),
            "{} from {lb} lb: {low} to {high} h, {p10} to {p90}",
            row.text("bird")
        );
        rows += 1;
    }
    assert_eq!(rows, 18);
}

/// The timetable was made for 170 °F in the breast and 180 °F in the thigh (before 2006) and is printed unchanged beside today's
/// 165 °F: a forecast for the older end points should lie in it or a little above, one for today's in it or a little below.
#[test]
fn unstuffed_turkeys_meet_the_timetable_at_todays_and_at_the_older_end_points() {
    const TOLERANCE: f64 = 0.12;
    for row in Table::read("roasting_times.csv").rows() {
        let median = |breast, thigh| of_row(&row, breast, thigh).map(|c| (c.bird, hours(spread(&c).p50)));
        let (Some((bird, today)), Some((_, older))) = (median(165.0, 165.0), median(170.0, 180.0)) else { continue };
        if bird.kind != Kind::Turkey || bird.stuffed {
            continue;
        }
        let (low, high) = (row.number("time_h_min"), row.number("time_h_max"));
        let lb = row.number("weight_lb_min");
        assert!(older > today, "from {lb} lb: older {older:.2} h, today {today:.2} h");
        assert!(
            low * (1.0 - TOLERANCE) < today && today < high,
            "165 °F, from {lb} lb: {today:.2} h, printed {low} to {high}"
        );
        assert!(
            low < older && older < high * (1.0 + TOLERANCE),
            "170/180 °F, from {lb} lb: {older:.2} h, printed {low} to {high}"
        );
    }
}

#[test]
fn unstuffed_turkeys_take_the_time_measured_in_home_ovens() {
    // Chang 1997: 155 + 11 m minutes, m in kg, 5.9 to 10.4 kg, to the higher end points of the time.
    for kg in [5.9, 6.8, 8.6, 9.5, 10.4] {
        let minutes =
            60.0 * hours(spread(&cook(Kind::Turkey, kg / 0.453_592_37, Cooker::Oven, 325.0, 170.0, 180.0)).p50);
        let measured = 155.0 + 11.0 * kg;
        assert!((minutes / measured - 1.0).abs() < 0.1, "{kg} kg: {minutes:.0} min, measured {measured:.0}");
    }
}

#[test]
fn the_constant_of_the_mass_law_lies_where_it_is_published() {
    // t = W^(2/3) / P, h and lb: P from 1.1 to 1.9 (AIP Advances 11, 115316), 1.5 in the formula quoted there.
    for lb in [8.0, 12.0, 16.0, 20.0, 24.0_f64] {
        let constant =
            lb.powf(2.0 / 3.0) / hours(spread(&cook(Kind::Turkey, lb, Cooker::Oven, 325.0, 165.0, 165.0)).p50);
        assert!((1.1..1.95).contains(&constant), "{lb} lb: P = {constant:.2}");
    }
}

#[test]
fn a_body_of_the_same_biot_number_obeys_the_mass_law_exactly() {
    let minutes = |mass: f64| {
        let radius = (3.0 * mass / (4.0 * std::f64::consts::PI * 1060.0)).cbrt();
        let stuff = Stuff::Constant { conductivity: 0.464, capacity: 1060.0 * 3500.0 };
        let skin = Skin::dry(4.0 * 0.464 / radius);
        let mut body = Body::new(Shape::Sphere, radius, stuff, 60, 4.0);
        let mut seconds = 0.0_f64;
        while body.at(0.0) < 74.0 {
            body.step(20.0, &skin, 163.0, 163.0);
            seconds += 20.0;
        }
        seconds / 60.0
    };
    let power = (minutes(8.0) / minutes(4.0)).log2();
    assert!((power - 2.0 / 3.0).abs() < 0.003, "{power}");
}

#[test]
fn a_smoker_at_325_to_350_takes_what_cooks_reckon_with() {
    // 10 to 16 min/lb for 12 to 16 lb: common practice, no source.
    for (lb, pit_f) in [(12.0, 325.0), (12.0, 350.0), (14.0, 335.0), (16.0, 325.0), (16.0, 350.0)] {
        let rate = 60.0 * hours(spread(&cook(Kind::Turkey, lb, Cooker::Smoker, pit_f, 165.0, 165.0)).p50) / lb;
        assert!((10.0..16.0).contains(&rate), "{lb} lb at {pit_f} °F: {rate:.1} min/lb");
    }
}
