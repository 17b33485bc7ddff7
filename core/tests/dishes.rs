//! Dishes beside the bird: one oven, one plan, and the laws every arrangement obeys.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_core::bird::{Bird, BirdMass, Condition, Diners, Form, Kind};
use carvetime_core::plan::{
    Carry, Change, Dish, DishHeat, Dishes, Fact, Moment, Order, Reason, Rival, Schedule, Step, clock, solve, spans,
};
use carvetime_core::quantity::{fahrenheit, in_fahrenheit, pounds};
use carvetime_core::roast::{Cooker, Heat};
use chrono::{NaiveDateTime, TimeDelta};
use chrono_tz::America::Chicago;
use proptest::prelude::*;

fn at(local: &str) -> Moment {
    clock::instant(Chicago, NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").unwrap())
}

fn order(setting: f64, cooker: Cooker, dishes: &[Dish]) -> Order {
    let bird = Bird {
        kind: Kind::Turkey,
        mass: BirdMass::new(pounds(12.0)).unwrap(),
        condition: Condition::Fresh,
        form: Form::Whole,
        stuffed: false,
        solution: None,
    };
    let heat = Heat { cooker, setting: fahrenheit(setting) };
    let diners = Diners { adults: 8, children: 0, leftovers: false };
    let mut all = Dishes::default();
    for (place, dish) in (0..).zip(dishes) {
        assert!(all.set(place, Some(*dish)));
    }
    Order { dishes: all, ..Order::new(bird, diners, heat, at("2027-11-25 17:00"), Chicago) }
}

fn oven(f: f64, minutes: i64) -> Dish {
    Dish::new(DishHeat::Oven(fahrenheit(f)), TimeDelta::minutes(minutes))
}

fn stove(minutes: i64) -> Dish {
    Dish::new(DishHeat::Stove, TimeDelta::minutes(minutes))
}

fn span(schedule: &Schedule, step: Step, nth: u8) -> (Moment, Moment) {
    let job = schedule.job(step, nth).unwrap_or_else(|| panic!("no {step:?} {nth}: {schedule:#?}"));
    (job.at, job.at + job.lasts)
}

const EARLY: &str = "2027-11-22 12:00";

#[test]
fn a_dish_at_another_setting_waits_for_the_bird_and_the_bird_goes_in_sooner() {
    let plain = solve(&order(325.0, Cooker::Oven, &[]), &[], at(EARLY)).unwrap();
    let with = solve(&order(325.0, Cooker::Oven, &[oven(400.0, 60)]), &[], at(EARLY)).unwrap();
    let (start, end) = span(&with, Step::Dish, 0);
    assert!(start >= with.finish.p90 + spans::CHANGE_SETTING, "{start} {:?}", with.finish);
    let dinner = at("2027-11-25 17:00");
    assert!(end <= dinner && dinner - end <= spans::DISH_WAITS);
    assert!(with.job(Step::On, 0).unwrap().at < plain.job(Step::On, 0).unwrap().at);
}

#[test]
fn a_dish_that_suits_the_bird_s_setting_moves_nothing() {
    let plain = solve(&order(325.0, Cooker::Oven, &[]), &[], at(EARLY)).unwrap();
    let with = solve(&order(325.0, Cooker::Oven, &[oven(350.0, 60)]), &[], at(EARLY)).unwrap();
    assert_eq!(with.job(Step::On, 0).unwrap().at, plain.job(Step::On, 0).unwrap().at);
    assert_eq!(span(&with, Step::Dish, 0).1, at("2027-11-25 16:55"));
}

#[test]
fn what_does_not_share_the_bird_s_heat_is_none_of_its_business() {
    let plain = solve(&order(325.0, Cooker::Smoker, &[]), &[], at(EARLY)).unwrap();
    let with = solve(&order(325.0, Cooker::Smoker, &[oven(425.0, 50), stove(40)]), &[], at(EARLY)).unwrap();
    assert_eq!(with.job(Step::On, 0).unwrap().at, plain.job(Step::On, 0).unwrap().at);
}

#[test]
fn a_dish_made_ahead_is_done_the_evening_before_and_the_oven_is_free() {
    let ahead = Dish { ahead: true, ..oven(400.0, 60) };
    let schedule = solve(&order(325.0, Cooker::Oven, &[ahead]), &[], at(EARLY)).unwrap();
    let (start, end) = span(&schedule, Step::Dish, 0);
    assert!(end <= schedule.job(Step::Fire, 0).unwrap().at);
    assert_eq!(start, at("2027-11-24 18:00"));
}

#[test]
fn a_dish_made_ahead_and_not_begun_in_time_is_still_for_that_evening() {
    let ahead = Dish { ahead: true, ..stove(30) };
    let now = at("2027-11-24 18:20");
    let salted = Fact { step: Step::Salt, nth: 0, at: at("2027-11-24 09:00"), done: true };
    let schedule = solve(&order(325.0, Cooker::Oven, &[ahead]), &[salted], now).unwrap();
    assert_eq!(span(&schedule, Step::Dish, 0).0, now);
}

#[test]
fn with_the_bird_in_and_no_time_left_the_clash_is_named_and_every_way_out_works() {
    let order = order(325.0, Cooker::Oven, &[oven(425.0, 120)]);
    let on = Fact { step: Step::On, nth: 0, at: at("2027-11-25 12:25"), done: true };
    let now = at("2027-11-25 12:30");
    let conflict = solve(&order, &[on], now).unwrap_err();
    let settings = Some((fahrenheit(425.0), fahrenheit(325.0)));
    let taken = Reason::HeatTaken { dish: 0, rival: Rival::Bird { settings } };
    assert!(conflict.because.contains(&taken), "{:?}", conflict.because);
    let changes: Vec<Change> = conflict.offers.iter().map(|offer| offer.change).collect();
    assert!(
        changes.contains(&Change::DishOut(0)) && changes.iter().any(|c| matches!(c, Change::Dinner(_))),
        "{changes:?}"
    );
    for offer in &conflict.offers {
        assert!(solve(&offer.change.apply(&order), &[on], now).is_ok(), "{:?}", offer.change);
    }
}

#[test]
fn beside_the_bird_the_dish_takes_longer_and_both_fit() {
    let order = order(325.0, Cooker::Oven, &[oven(375.0, 45)]);
    let on = Fact { step: Step::On, nth: 0, at: at("2027-11-25 12:30"), done: true };
    let conflict = solve(&order, &[on], at("2027-11-25 12:35")).unwrap_err();
    let offer = conflict.offers.iter().find(|offer| offer.change == Change::DishBeside(0)).expect("beside");
    let (start, end) = span(&offer.schedule, Step::Dish, 0);
    assert_eq!(end - start, TimeDelta::minutes(60));
}

#[test]
fn a_dish_done_stays_where_it_was_done() {
    let order = order(325.0, Cooker::Oven, &[stove(40)]);
    let fact = Fact { step: Step::Dish, nth: 0, at: at("2027-11-25 15:00"), done: true };
    let on = Fact { step: Step::On, nth: 0, at: at("2027-11-25 12:25"), done: true };
    let schedule = solve(&order, &[on, fact], at("2027-11-25 15:30")).unwrap();
    let job = schedule.job(Step::Dish, 0).unwrap();
    assert!(job.done && job.at == at("2027-11-25 15:00"));
}

#[test]
fn carried_to_another_house_the_dish_shares_with_the_reheating() {
    let base = order(325.0, Cooker::Oven, &[oven(350.0, 45)]);
    let carried = Order { carry: Some(Carry { drive: TimeDelta::hours(1), hot: false }), ..base };
    let schedule = solve(&carried, &[], at(EARLY)).unwrap();
    assert!(span(&schedule, Step::Dish, 0).1 <= at("2027-11-25 17:00"));
    let hot = Order { carry: carried.carry, ..order(325.0, Cooker::Oven, &[oven(450.0, 45)]) };
    let conflict = solve(&hot, &[], at(EARLY)).unwrap_err();
    assert!(conflict.offers.iter().any(|offer| offer.change == Change::DishAhead(0)));
}

fn dish() -> impl Strategy<Value = Dish> {
    let heat = prop_oneof![
        (250_u32..=450).prop_map(|f| DishHeat::Oven(fahrenheit(f64::from(f)))),
        (225_u32..=350).prop_map(|f| DishHeat::Smoker(fahrenheit(f64::from(f)))),
        Just(DishHeat::Stove),
        Just(DishHeat::None),
    ];
    (heat, 5_i64..=120, any::<bool>())
        .prop_map(|(heat, minutes, ahead)| Dish { ahead, ..Dish::new(heat, TimeDelta::minutes(minutes)) })
}

fn same_place(a: DishHeat, b: DishHeat) -> bool {
    matches!((a, b), (DishHeat::Oven(_), DishHeat::Oven(_)) | (DishHeat::Smoker(_), DishHeat::Smoker(_)))
}

fn apart_f(a: DishHeat, b: DishHeat) -> f64 {
    let f = |heat: DishHeat| heat.setting().map_or(0.0, in_fahrenheit);
    (f(a) - f(b)).abs()
}

/// No two uses of one heat that don't agree overlap, and every hot dish is hot.
fn obeys(order: &Order, schedule: &Schedule) -> Result<(), TestCaseError> {
    let dishes: Vec<(u8, Dish)> = order.dishes.iter().collect();
    let bird = match order.heat.cooker {
        Cooker::Smoker => DishHeat::Smoker(order.heat.setting),
        _ => DishHeat::Oven(order.heat.setting),
    };
    let (on, off) = (schedule.job(Step::On, 0).unwrap().at, schedule.finish.p90);
    for (place, dish) in &dishes {
        let (start, end) = span(schedule, Step::Dish, *place);
        if !dish.ahead {
            let wait = order.dinner - end;
            prop_assert!((TimeDelta::zero()..=dish.waits()).contains(&wait), "dish {place} waits {wait}");
        }
        if same_place(dish.heat, bird) && apart_f(dish.heat, bird) > 25.01 {
            prop_assert!(end <= on || start >= off, "dish {place} {start}..{end} and the bird {on}..{off}");
        }
        for (other, rival) in dishes.iter().filter(|(other, _)| other > place) {
            let (from, to) = span(schedule, Step::Dish, *other);
            if same_place(dish.heat, rival.heat) && apart_f(dish.heat, rival.heat) > 25.01 {
                prop_assert!(end <= from || to <= start, "dishes {place} and {other} overlap");
            }
        }
    }
    for dishes in [|heat: DishHeat| heat == DishHeat::Stove, |heat: DishHeat| matches!(heat, DishHeat::Oven(_))] {
        let most = if dishes(DishHeat::Stove) { 4 } else { 2 };
        let used: Vec<(Moment, Moment)> = order
            .dishes
            .iter()
            .filter(|(_, dish)| dishes(dish.heat))
            .map(|(place, _)| span(schedule, Step::Dish, place))
            .collect();
        for (start, _) in &used {
            let at_once = used.iter().filter(|(from, to)| from <= start && start < to).count();
            prop_assert!(at_once <= most, "{at_once} at once");
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, ..ProptestConfig::default() })]

    #[test]
    fn every_arrangement_keeps_the_laws_and_every_offer_solves(
        dishes in prop::collection::vec(dish(), 0..=8), smoker in any::<bool>(), setting in 300_u32..=350
    ) {
        let cooker = if smoker { Cooker::Smoker } else { Cooker::Oven };
        let order = order(f64::from(setting), cooker, &dishes);
        match solve(&order, &[], at(EARLY)) {
            Ok(schedule) => obeys(&order, &schedule)?,
            Err(conflict) => {
                prop_assert!(!conflict.because.is_empty());
                for offer in conflict.offers {
                    let changed = offer.change.apply(&order);
                    let schedule = solve(&changed, &[], at(EARLY));
                    prop_assert!(schedule.is_ok(), "{:?}", offer.change);
                    obeys(&changed, &schedule.unwrap())?;
                }
            }
        }
    }

    #[test]
    fn the_same_wish_gives_the_same_plan(dishes in prop::collection::vec(dish(), 0..=8)) {
        let order = order(325.0, Cooker::Oven, &dishes);
        prop_assert_eq!(solve(&order, &[], at(EARLY)), solve(&order, &[], at(EARLY)));
    }
}

#[test]
fn what_is_one_too_many_on_a_heat_is_told_as_that_and_may_start_earlier() {
    for (dish, room) in [(stove(40), 4), (oven(400.0, 45), 2)] {
        let dishes = vec![dish; room + 1];
        let order = order(325.0, Cooker::Smoker, &dishes);
        let conflict = solve(&order, &[], at(EARLY)).unwrap_err();
        let full = |reason: &Reason| matches!(reason, Reason::HeatTaken { rival: Rival::Full { room: told }, .. } if *told == room);
        assert!(conflict.because.iter().any(full), "{:?}", conflict.because);
        let earlier = conflict.offers.iter().find(|offer| matches!(offer.change, Change::DishEarly(_)));
        let Some(Change::DishEarly(place)) = earlier.map(|offer| offer.change) else { panic!("{:?}", conflict.offers) };
        let (_, end) = span(&earlier.unwrap().schedule, Step::Dish, place);
        let waits = at("2027-11-25 17:00") - end;
        assert!(waits > spans::DISH_WAITS && waits <= spans::DISH_KEPT_HOT, "{waits}");
    }
    // At settings that don't agree it is the setting that is told, as before.
    let apart = order(325.0, Cooker::Smoker, &[oven(350.0, 150), oven(450.0, 150)]);
    let conflict = solve(&apart, &[], at(EARLY)).unwrap_err();
    let other =
        |reason: &Reason| matches!(reason, Reason::HeatTaken { rival: Rival::Dish { settings: Some(_), .. }, .. });
    assert!(conflict.because.iter().any(other), "{:?}", conflict.because);
}
