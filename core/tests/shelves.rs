//! The fridge before a dinner: the bird's shelf, what waits beside it, and the ways out when it is full.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_core::bird::{Bird, BirdMass, Condition, Diners, Form, Kind};
use carvetime_core::plan::{
    Change, Cold, ColdPlace, DISH_HALVES, Dish, DishHeat, Dishes, Fact, Moment, Need, Order, Reason, Schedule, Step,
    clock, solve,
};
use carvetime_core::quantity::{fahrenheit, pounds};
use carvetime_core::roast::{Cooker, Heat};
use chrono::{NaiveDateTime, TimeDelta};
use chrono_tz::America::Chicago;
use proptest::prelude::*;

/// Early enough for a frozen bird in the fridge.
const EARLY: &str = "2027-11-20 12:00";

fn at(local: &str) -> Moment {
    clock::instant(Chicago, NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").unwrap())
}

fn order(condition: Condition, shelves: Option<u8>, dishes: &[Dish]) -> Order {
    let bird = Bird {
        kind: Kind::Turkey,
        mass: BirdMass::new(pounds(12.0)).unwrap(),
        condition,
        form: Form::Whole,
        stuffed: false,
        solution: None,
    };
    let heat = Heat { cooker: Cooker::Oven, setting: fahrenheit(325.0) };
    let diners = Diners { adults: 8, children: 0, leftovers: false };
    let mut all = Dishes::default();
    for (place, dish) in (0..).zip(dishes) {
        assert!(all.set(place, Some(*dish)));
    }
    Order { dishes: all, shelves, ..Order::new(bird, diners, heat, at("2027-11-25 17:00"), Chicago) }
}

/// Made in twenty minutes, then in the fridge for so many hours on so many half shelves.
fn cold(hours: i64, halves: u8) -> Dish {
    let cold = Cold { least: TimeDelta::hours(hours), halves, place: ColdPlace::Fridge };
    Dish { cold: Some(cold), ..Dish::new(DishHeat::None, TimeDelta::minutes(20)) }
}

fn overnight(halves: u8) -> Dish {
    Dish { ahead: true, ..cold(4, halves) }
}

fn when(schedule: &Schedule, step: Step, nth: u8) -> Moment {
    schedule.job(step, nth).unwrap_or_else(|| panic!("no {step:?} {nth}: {schedule:#?}")).at
}

/// When the dish is in the fridge.
fn inside(schedule: &Schedule, nth: u8) -> Moment {
    when(schedule, Step::Dish, nth) + schedule.job(Step::Dish, nth).unwrap().lasts
}

#[test]
fn a_dish_is_made_as_long_before_dinner_as_it_wants_to_be_cold() {
    let schedule = solve(&order(Condition::Fresh, None, &[cold(6, 2)]), &[], at(EARLY)).unwrap();
    assert_eq!(inside(&schedule, 0), at("2027-11-25 11:00"));
}

#[test]
fn nothing_is_checked_where_nobody_has_said_how_many_shelves_there_are() {
    let many = [cold(20, 8), cold(20, 8), overnight(8)];
    assert!(solve(&order(Condition::Fresh, None, &many), &[], at(EARLY)).is_ok());
}

#[test]
fn with_a_shelf_to_spare_nothing_moves() {
    let plain = solve(&order(Condition::Fresh, None, &[]), &[], at(EARLY)).unwrap();
    let with =
        solve(&order(Condition::Fresh, Some(2), &[cold(20, 1), overnight(DISH_HALVES)]), &[], at(EARLY)).unwrap();
    for step in [Step::Buy, Step::Salt, Step::Temper, Step::On] {
        assert_eq!(when(&plain, step, 0), when(&with, step, 0), "{step:?}");
    }
    assert!(inside(&with, 0) < when(&with, Step::Temper, 0) && inside(&with, 1) < when(&with, Step::Temper, 0));
}

#[test]
fn a_dish_that_wants_a_little_longer_than_the_bird_leaves_gets_it_by_moving_the_bird() {
    let plain = solve(&order(Condition::Fresh, None, &[]), &[], at(EARLY)).unwrap();
    let order = order(Condition::Fresh, Some(1), &[cold(6, 2)]);
    let schedule = solve(&order, &[], at(EARLY)).unwrap();
    let out = when(&schedule, Step::Temper, 0);
    assert!(out < when(&plain, Step::Temper, 0) && inside(&schedule, 0) >= out, "{schedule:#?}");
    assert!(order.dinner - inside(&schedule, 0) >= TimeDelta::hours(6));
}

#[test]
fn the_bird_does_not_go_on_hours_too_soon_for_a_pudding() {
    let conflict = solve(&order(Condition::Fresh, Some(1), &[cold(8, 2)]), &[], at(EARLY)).unwrap_err();
    assert_eq!(conflict.because, [Reason::FridgeTaken { dish: 0, shelves: 1, bird: true }]);
    let changes: Vec<Change> = conflict.offers.iter().map(|offer| offer.change).collect();
    assert_eq!(changes[0], Change::DishLater(0, TimeDelta::hours(6)), "{changes:?}");
}

#[test]
fn no_shelf_beside_the_bird_is_named_and_every_way_out_works() {
    let order = order(Condition::Frozen, Some(1), &[overnight(2)]);
    let conflict = solve(&order, &[], at(EARLY)).unwrap_err();
    assert_eq!(conflict.because, [Reason::FridgeTaken { dish: 0, shelves: 1, bird: true }]);
    let changes: Vec<Change> = conflict.offers.iter().map(|offer| offer.change).collect();
    assert!(matches!(changes[0], Change::DishLater(0, _)), "{changes:?}");
    for wanted in [Change::DishCooler(0), Change::ColdWater, Change::DishOut(0)] {
        assert!(changes.contains(&wanted), "{wanted:?} not in {changes:?}");
    }
    for offer in &conflict.offers {
        assert!(solve(&offer.change.apply(&order), &[], at(EARLY)).is_ok(), "{:?}", offer.change);
    }
    let later = &conflict.offers[0].schedule;
    assert!(inside(later, 0) >= when(later, Step::Temper, 0));
    let iced = conflict.offers.iter().find(|offer| offer.change == Change::DishCooler(0)).unwrap();
    assert!(iced.schedule.needs.contains(&Need::Cooler));
    assert_eq!(inside(&iced.schedule, 0), at("2027-11-24 18:20"), "it still stands overnight");
}

#[test]
fn a_fridge_too_small_without_the_bird_says_so() {
    let order = order(Condition::Fresh, Some(1), &[cold(3, 1), cold(3, 1), cold(3, 1)]);
    let conflict = solve(&order, &[], at(EARLY)).unwrap_err();
    assert_eq!(conflict.because, [Reason::FridgeTaken { dish: 2, shelves: 1, bird: false }]);
    assert!(!conflict.offers.iter().any(|offer| matches!(offer.change, Change::DishLater(..))), "{conflict:#?}");
    assert!(conflict.offers.iter().any(|offer| offer.change == Change::DishCooler(2)));
}

#[test]
fn a_bird_already_out_leaves_its_shelf() {
    let order = order(Condition::Fresh, Some(1), &[cold(3, 2)]);
    let facts = [Fact { step: Step::Temper, nth: 0, at: at("2027-11-25 11:30"), done: true }];
    let schedule = solve(&order, &facts, at("2027-11-25 11:40")).unwrap();
    assert_eq!(inside(&schedule, 0), at("2027-11-25 14:00"));
}

#[test]
fn a_dish_in_the_fridge_keeps_its_room() {
    let order = order(Condition::Fresh, Some(2), &[overnight(2), cold(8, 1)]);
    let facts = [Fact { step: Step::Dish, nth: 0, at: at("2027-11-24 18:00"), done: true }];
    let conflict = solve(&order, &facts, at("2027-11-24 19:00")).unwrap_err();
    assert_eq!(conflict.because, [Reason::FridgeTaken { dish: 1, shelves: 2, bird: true }]);
}

fn dish() -> impl Strategy<Value = Dish> {
    (1_i64..=30, 1_u8..=4, any::<bool>()).prop_map(|(hours, halves, ahead)| Dish { ahead, ..cold(hours, halves) })
}

/// Never more in the fridge than it holds.
fn holds(order: &Order, schedule: &Schedule) -> Result<(), TestCaseError> {
    let Some(shelves) = order.shelves else { return Ok(()) };
    let out = schedule.job(Step::Temper, 0).filter(|_| {
        order.bird.condition == Condition::Fresh || schedule.thawing == Some(carvetime_core::plan::Thawing::Fridge)
    });
    let mut early = 0;
    let mut all = 0;
    for (place, dish) in order.dishes.iter() {
        all += dish.in_fridge();
        let cold = dish.cold().unwrap();
        let stay = order.dinner - inside(schedule, place);
        prop_assert!(stay >= cold.least, "dish {place} stays {stay}");
        if out.is_some_and(|out| inside(schedule, place) < out.at) {
            early += dish.in_fridge();
        }
    }
    prop_assert!(all <= shelves * 2, "{all} halves on {shelves} shelves at the table");
    prop_assert!(early == 0 || early + 2 <= shelves * 2, "{early} halves beside the bird on {shelves} shelves");
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 120, ..ProptestConfig::default() })]

    #[test]
    fn the_fridge_never_holds_more_than_it_can_and_every_offer_solves(
        dishes in prop::collection::vec(dish(), 0..=5), shelves in 1_u8..=4, frozen in any::<bool>()
    ) {
        let condition = if frozen { Condition::Frozen } else { Condition::Fresh };
        let order = order(condition, Some(shelves), &dishes);
        match solve(&order, &[], at(EARLY)) {
            Ok(schedule) => holds(&order, &schedule)?,
            Err(conflict) => {
                prop_assert!(!conflict.because.is_empty());
                for offer in conflict.offers {
                    let changed = offer.change.apply(&order);
                    let schedule = solve(&changed, &[], at(EARLY));
                    prop_assert!(schedule.is_ok(), "{:?}", offer.change);
                    if !changed.cooks_ahead() && offer.change != Change::CookFrozen && changed.birds == 1 {
                        holds(&changed, &schedule.unwrap())?;
                    }
                }
            }
        }
    }
}
