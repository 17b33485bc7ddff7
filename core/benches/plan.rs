//! How long a plan takes to solve: `cargo bench -p carvetime-core --bench plan`. The aim is 200 µs for 20 steps.
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used)]

use carvetime_core::bird::{Bird, BirdMass, Condition, Diners, Form, Kind};
use carvetime_core::plan::{Carry, Dish, DishHeat, Fact, Moment, Order, Step, Thawing, clock, solve};
use carvetime_core::quantity::{fahrenheit, pounds};
use carvetime_core::roast::{Cooker, Heat};
use chrono::{NaiveDate, TimeDelta};
use chrono_tz::America;
use divan::{Bencher, black_box};

fn main() {
    divan::main();
}

fn day(day: u32, hour: u32) -> Moment {
    clock::at_hour(America::Chicago, NaiveDate::from_ymd_opt(2027, 11, day).unwrap(), hour, 0)
}

/// Frozen, smoked, cooked ahead and carried: every step of the contract but the water.
fn carried() -> Order {
    let bird = Bird {
        kind: Kind::Turkey,
        mass: BirdMass::new(pounds(14.5)).unwrap(),
        condition: Condition::Frozen,
        form: Form::Whole,
        stuffed: false,
        solution: None,
    };
    let diners = Diners { adults: 11, children: 0, leftovers: true };
    let heat = Heat { cooker: Cooker::Smoker, setting: fahrenheit(325.0) };
    let order = Order::new(bird, diners, heat, day(25, 17), America::Chicago);
    Order { carry: Some(Carry { drive: TimeDelta::hours(1), hot: false }), ..order }
}

#[divan::bench]
fn a_plan_of_twenty_steps(bencher: Bencher<'_, '_>) {
    let order = carried();
    let now = day(15, 18);
    assert!(solve(&order, &[], now).unwrap().jobs.len() >= 20);
    bencher.bench(|| solve(black_box(&order), &[], black_box(now)));
}

#[divan::bench]
fn the_same_with_half_of_it_done(bencher: Bencher<'_, '_>) {
    let order = carried();
    let fact = |step, at| Fact { step, nth: 0, at, done: true };
    let facts = [fact(Step::Buy, day(16, 11)), fact(Step::Thaw, day(18, 10)), fact(Step::Salt, day(22, 19))];
    let now = day(23, 9);
    assert!(solve(&order, &facts, now).is_ok());
    bencher.bench(|| solve(black_box(&order), black_box(&facts), black_box(now)));
}

#[divan::bench]
fn fifteen_changes_of_water(bencher: Bencher<'_, '_>) {
    let order = Order { thawing: Thawing::ColdWater, carry: None, ..carried() };
    let now = day(22, 18);
    assert!(solve(&order, &[], now).is_ok());
    bencher.bench(|| solve(black_box(&order), &[], black_box(now)));
}

#[divan::bench]
fn a_wish_that_cannot_be_met_and_its_offers(bencher: Bencher<'_, '_>) {
    let order = Order { carry: None, ..carried() };
    let now = day(22, 18);
    assert!(solve(&order, &[], now).is_err());
    bencher.bench(|| solve(black_box(&order), &[], black_box(now)));
}

/// A bird and eight dishes that share its oven and the stove. The aim is 2 ms.
#[divan::bench]
fn a_plan_with_eight_dishes(bencher: Bencher<'_, '_>) {
    let dish = |heat, minutes| Some(Dish::new(heat, TimeDelta::minutes(minutes)));
    let oven = |f| DishHeat::Oven(fahrenheit(f));
    let heats = [
        (oven(325.0), 30),
        (oven(350.0), 40),
        (oven(400.0), 20),
        (oven(425.0), 15),
        (DishHeat::Stove, 40),
        (DishHeat::Stove, 25),
        (DishHeat::Stove, 15),
        (DishHeat::None, 10),
    ];
    let mut order = carried();
    order.carry = None;
    order.heat.cooker = Cooker::Oven;
    for (place, (heat, minutes)) in (0..).zip(heats) {
        order.dishes.set(place, dish(heat, minutes));
    }
    let now = day(15, 18);
    assert_eq!(solve(&order, &[], now).unwrap().count(Step::Dish), 8);
    bencher.bench(|| solve(black_box(&order), &[], now));
}
