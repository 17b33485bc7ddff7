//! Plans of real dinners, and the laws every plan obeys.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_core::bird::{Bird, BirdMass, Condition, Diners, Form, Kind};
use carvetime_core::plan::{
    Carry, Caution, Change, Fact, Finish, Job, Moment, Order, Reason, Salting, Schedule, Step, Thawing, clock, solve,
    solve_with, spans,
};
use carvetime_core::quantity::{fahrenheit, pounds};
use carvetime_core::roast::{Cooker, Heat};
use carvetime_core::thaw;
use chrono::{Datelike, NaiveDateTime, TimeDelta, Timelike};
use chrono_tz::{America, Europe, Tz};

/// The moment of a local time in Chicago.
fn at(local: &str) -> Moment {
    at_in(America::Chicago, local)
}

fn at_in(zone: Tz, local: &str) -> Moment {
    clock::instant(zone, NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").unwrap())
}

fn local(moment: Moment) -> String {
    moment.with_timezone(&America::Chicago).format("%Y-%m-%d %H:%M").to_string()
}

fn turkey(lb: f64, condition: Condition) -> Bird {
    Bird {
        kind: Kind::Turkey,
        mass: BirdMass::new(pounds(lb)).unwrap(),
        condition,
        form: Form::Whole,
        stuffed: false,
        solution: None,
    }
}

fn oven() -> Heat {
    Heat { cooker: Cooker::Oven, setting: fahrenheit(325.0) }
}

fn eight() -> Diners {
    Diners { adults: 8, children: 0, leftovers: false }
}

/// Thanksgiving 2027, 5 pm.
fn thanksgiving(lb: f64, condition: Condition) -> Order {
    Order::new(turkey(lb, condition), eight(), oven(), at("2027-11-25 17:00"), America::Chicago)
}

fn done(step: Step, when: &str) -> Fact {
    Fact { step, nth: 0, at: at(when), done: true }
}

fn job(schedule: &Schedule, step: Step) -> &Job {
    schedule.job(step, 0).unwrap_or_else(|| panic!("no {step:?} in {schedule:#?}"))
}

#[test]
fn a_fresh_bird_for_eight_is_bought_salted_cooked_and_served_in_good_time() {
    let schedule = solve(&thanksgiving(12.0, Condition::Fresh), &[], at("2027-11-19 18:30")).unwrap();
    assert_eq!(local(job(&schedule, Step::Salt).at), "2027-11-23 18:30");
    assert_eq!(local(job(&schedule, Step::Serve).at), "2027-11-25 17:00");
    let on = job(&schedule, Step::On).at;
    assert!(on - job(&schedule, Step::Buy).at <= TimeDelta::days(2));
    let rest = on - job(&schedule, Step::Salt).at;
    assert!((TimeDelta::hours(24)..=TimeDelta::hours(48)).contains(&rest), "{rest}");
    assert_eq!(schedule.salted_rest, Some(rest));
    assert_eq!(schedule.thawing, None);
    assert_eq!(schedule.cautions, []);
    assert_eq!(schedule.count(Step::Check), 3);
    // Two hours from carving, not from the end of the meal.
    assert!(job(&schedule, Step::Chill).latest <= job(&schedule, Step::Carve).at + TimeDelta::hours(2));
    assert_eq!(local(job(&schedule, Step::Leftovers).at), "2027-11-28 12:00");
}

#[test]
fn a_fraction_of_a_second_now_does_not_bring_dinner_forward() {
    let now = at("2027-11-19 18:30") + TimeDelta::milliseconds(27_400);
    let schedule = solve(&thanksgiving(12.0, Condition::Fresh), &[], now).unwrap();
    assert_eq!(job(&schedule, Step::Serve).at, at("2027-11-25 17:00"));
}

#[test]
fn a_bird_needed_the_same_evening_is_bought_at_once() {
    let order = Order { short_rest: true, ..thanksgiving(12.0, Condition::Fresh) };
    let schedule = solve(&order, &[], at("2027-11-24 18:00")).unwrap();
    assert_eq!(local(job(&schedule, Step::Buy).at), "2027-11-24 18:00");
}

#[test]
fn a_bird_on_a_little_too_late_is_offered_a_later_hour_not_another_day() {
    let order = Order { dinner: at("2027-11-25 21:00"), ..thanksgiving(13.0, Condition::Fresh) };
    let planned = solve(&order, &[], at("2027-11-22 12:00")).unwrap();
    let late = job(&planned, Step::On).latest + TimeDelta::minutes(20);
    let facts = [Fact { step: Step::On, nth: 0, at: late, done: true }];
    let conflict = solve(&order, &facts, late).unwrap_err();
    let later = conflict.offers.iter().find_map(|offer| match offer.change {
        Change::Dinner(to) => Some(to),
        _ => None,
    });
    assert_eq!(later.map(local).as_deref(), Some("2027-11-25 21:30"), "{:?}", conflict.because);
    assert!(
        conflict
            .meanwhile(order.dinner)
            .unwrap()
            .jobs
            .iter()
            .all(|job| job.step == Step::Leftovers || job.at < at("2027-11-26 03:00"))
    );
}

#[test]
fn a_frozen_bird_planned_in_time_thaws_as_long_as_the_table_says() {
    // 14.5 lb: 3 to 4 days in the refrigerator (USDA FSIS turkey thawing table, 12 to 16 lb).
    let schedule = solve(&thanksgiving(14.5, Condition::Frozen), &[], at("2027-11-15 18:30")).unwrap();
    let thaw = job(&schedule, Step::Thaw);
    assert_eq!(thaw.lasts, TimeDelta::days(4));
    assert!(job(&schedule, Step::Salt).at >= thaw.at + TimeDelta::days(4));
    assert!(job(&schedule, Step::On).at <= thaw.at + TimeDelta::days(4) + TimeDelta::days(2));
    assert_eq!(schedule.thawing, Some(Thawing::Fridge));
}

#[test]
fn a_bird_still_frozen_on_monday_cannot_make_thursday_from_the_fridge() {
    let conflict = solve(&thanksgiving(14.5, Condition::Frozen), &[], at("2027-11-22 18:30")).unwrap_err();
    assert!(conflict.because.iter().any(|why| matches!(why, Reason::FridgeThaw { .. })), "{:?}", conflict.because);
    assert!(conflict.because.contains(&Reason::Dinner));
    assert!(conflict.short_by > TimeDelta::days(2), "{}", conflict.short_by);
    let offered: Vec<Change> = conflict.offers.iter().map(|offer| offer.change).collect();
    assert!(offered.contains(&Change::BuyFresh), "it is still to be bought: {offered:?}");
    assert!(offered.contains(&Change::ColdWater) && offered.contains(&Change::CookFrozen), "{offered:?}");
    assert!(offered.iter().any(|change| matches!(change, Change::Dinner(at) if *at > self::at("2027-11-25 17:00"))));
    // Less salt alone does not thaw a bird.
    assert!(!offered.contains(&Change::ShorterRest) && !offered.contains(&Change::NoSalt));
    assert!(conflict.offers.is_sorted_by_key(|offer| offer.cost));
    // A bird already in the freezer at home is not bought again.
    let at_home = Order { at_home: true, ..thanksgiving(14.5, Condition::Frozen) };
    let conflict = solve(&at_home, &[], at("2027-11-22 18:30")).unwrap_err();
    assert!(!conflict.offers.iter().any(|offer| matches!(offer.change, Change::BuyFresh | Change::SmallerBird(_))));
}

#[test]
fn every_number_of_a_plan_says_where_it_comes_from() {
    let schedule = solve(&thanksgiving(14.5, Condition::Frozen), &[], at("2027-11-15 18:30")).unwrap();
    let source = |step| job(&schedule, step).reasons.iter().find_map(|why| why.source()).unwrap();
    assert_eq!(source(Step::Thaw).id, "turkey-thawing");
    assert_eq!(source(Step::On).id, "turkey-timetable");
    assert_eq!(source(Step::Salt).id, "plan-practice");
    assert_eq!(source(Step::Chill).id, "danger-zone");
}

#[test]
fn a_bird_thawed_in_cold_water_has_its_water_changed_and_goes_on_at_once() {
    let order = Order { thawing: Thawing::ColdWater, ..thanksgiving(14.5, Condition::Frozen) };
    let schedule = solve(&order, &[], at("2027-11-22 18:30")).unwrap();
    let thaw = job(&schedule, Step::Thaw);
    let changes: Vec<&Job> = schedule.jobs.iter().filter(|job| job.step == Step::Water).collect();
    assert_eq!(changes.len(), 15);
    for (nth, change) in changes.iter().enumerate() {
        assert_eq!(change.at - thaw.at, TimeDelta::minutes(30) * (i32::try_from(nth).unwrap() + 1));
    }
    assert!(job(&schedule, Step::On).at - (thaw.at + thaw.lasts) <= spans::AT_ONCE);
    assert!(schedule.job(Step::Rest, 0).is_none(), "no salted rest after cold water");
    assert!(job(&schedule, Step::Salt).reasons.contains(&Reason::CookAtOnce));
}

#[test]
fn a_late_change_of_water_moves_the_ones_after_it() {
    let order = Order { thawing: Thawing::ColdWater, ..thanksgiving(14.5, Condition::Frozen) };
    let facts = [done(Step::Thaw, "2027-11-25 02:50"), done(Step::Water, "2027-11-25 03:40")];
    let schedule = solve(&order, &facts, at("2027-11-25 03:40")).unwrap();
    let next = schedule.job(Step::Water, 1).unwrap();
    assert_eq!(local(next.at), "2027-11-25 04:10");
    // Two missed ones are one change now.
    let schedule = solve(&order, &facts, at("2027-11-25 05:00")).unwrap();
    assert_eq!(local(schedule.job(Step::Water, 1).unwrap().at), "2027-11-25 05:00");
    assert_eq!(local(schedule.job(Step::Water, 2).unwrap().at), "2027-11-25 05:30");
}

#[test]
fn a_bird_still_icy_the_day_before_can_be_finished_in_cold_water() {
    // Into the fridge on Monday evening; 14.5 lb want up to four days.
    let order = thanksgiving(14.5, Condition::Frozen);
    let facts = [done(Step::Thaw, "2027-11-22 18:30")];
    let now = at("2027-11-25 06:00");
    let conflict = solve(&order, &facts, now).unwrap_err();
    let offer = conflict.offers.iter().find(|offer| offer.change == Change::FinishInWater).unwrap();
    let switch = offer.schedule.job(Step::Thaw, 1).unwrap();
    // What is left of the four days is left of the eight hours.
    let left = 96.0 - (switch.at - facts[0].at).num_minutes() as f64 / 60.0;
    let hours = switch.lasts.num_minutes() as f64 / 60.0;
    assert!((hours - 8.0 * left / 96.0).abs() < 0.1, "{hours} h of water for {left} h of fridge");
    assert!(job(&offer.schedule, Step::Thaw).done);
    assert!(job(&offer.schedule, Step::On).at >= switch.at + switch.lasts);
    assert!(offer.schedule.job(Step::Rest, 0).is_none());
    // Done at once, the water is called every half hour.
    let order = Change::FinishInWater.apply(&order);
    let facts = [facts[0], Fact { step: Step::Thaw, nth: 1, at: now, done: true }];
    let schedule = solve(&order, &facts, now).unwrap();
    assert_eq!(local(job(&schedule, Step::Water).at), "2027-11-25 06:30");
}

#[test]
fn a_bird_still_frozen_on_monday_thaws_in_the_fridge_first_and_in_water_on_thursday_morning() {
    let order = Order { at_home: true, ..thanksgiving(14.5, Condition::Frozen) };
    let conflict = solve(&order, &[], at("2027-11-22 18:30")).unwrap_err();
    let place = |change| conflict.offers.iter().position(|offer| offer.change == change).unwrap();
    assert!(place(Change::FinishInWater) < place(Change::ColdWater));
    let schedule = &conflict.offers[place(Change::FinishInWater)].schedule;
    let (fridge, water) = (job(schedule, Step::Thaw), schedule.job(Step::Thaw, 1).unwrap());
    assert_eq!(local(fridge.at), "2027-11-22 18:30");
    // 3 to 4 days in the refrigerator, 6 to 8 hours in water: what is left of four days is left of eight hours.
    let left = 96.0 - (water.at - fridge.at).num_minutes() as f64 / 60.0;
    let hours = water.lasts.num_minutes() as f64 / 60.0;
    assert!((hours - 8.0 * left / 96.0).abs() < 0.1, "{hours} h of water for {left} h of fridge");
    let changes: Vec<&Job> = schedule.jobs.iter().filter(|job| job.step == Step::Water).collect();
    assert!((1..8).contains(&changes.len()), "{}", changes.len());
    for job in changes.iter().copied().chain([water]) {
        assert!(job.at >= at("2027-11-25 06:00"), "{}", local(job.at));
    }
    assert!(!schedule.cautions.contains(&Caution::OddHours(Step::Thaw)), "{:?}", schedule.cautions);
    let on = job(schedule, Step::On);
    assert!(on.at >= water.at + water.lasts && on.at - (water.at + water.lasts) <= spans::AT_ONCE);
    assert!(schedule.job(Step::Rest, 0).is_none() && job(schedule, Step::Salt).at >= water.at + water.lasts);
}

#[test]
fn the_quick_end_of_the_fridge_is_never_counted_on() {
    // Three days and some hours: the table says 3 to 4 days for 14.5 lb.
    let order = Order { thawing: Thawing::FridgeThenWater, at_home: true, ..thanksgiving(14.5, Condition::Frozen) };
    let schedule = solve(&order, &[], at("2027-11-21 18:00")).unwrap();
    let (fridge, water) = (job(&schedule, Step::Thaw), schedule.job(Step::Thaw, 1).unwrap());
    assert!(water.at - fridge.at > TimeDelta::days(3));
    assert!(water.lasts >= TimeDelta::hours(2) && schedule.count(Step::Water) >= 1, "{}", water.lasts);
}

#[test]
fn what_was_done_decides_how_long_the_water_takes() {
    let order = Order { thawing: Thawing::FridgeThenWater, at_home: true, ..thanksgiving(14.5, Condition::Frozen) };
    let moved = |when: &str| Fact { nth: 1, ..done(Step::Thaw, when) };
    let water = |facts: &[Fact], now: &str| {
        solve(&order, facts, at(now)).unwrap().job(Step::Thaw, 1).map(|job| (job.at, job.lasts)).unwrap()
    };
    let early = water(&[done(Step::Thaw, "2027-11-22 18:30")], "2027-11-22 18:30");
    let late = water(&[done(Step::Thaw, "2027-11-23 18:30")], "2027-11-23 18:30");
    assert!(late.1 > early.1 && late.0 < early.0, "a day less in the fridge: {early:?}, {late:?}");
    // Moved early, more is still ice: 54 of 96 hours leave 3.5 of 8.
    let facts = [done(Step::Thaw, "2027-11-22 18:30"), moved("2027-11-25 00:30")];
    assert_eq!(water(&facts, "2027-11-25 00:30").1, TimeDelta::minutes(210));
    // Nobody said that it was in the fridge: then the whole time in water.
    assert_eq!(water(&facts[1..], "2027-11-25 00:30").1, TimeDelta::hours(8));
    // A change of water said without a word of the move tells when the move was.
    let facts = [facts[0], done(Step::Water, "2027-11-25 09:00")];
    let schedule = solve(&order, &facts, at("2027-11-25 09:00")).unwrap();
    assert_eq!(local(schedule.job(Step::Water, 1).unwrap().at), "2027-11-25 09:30");
    let last = schedule.jobs.iter().rfind(|job| job.step == Step::Water).unwrap();
    // 62 of 96 hours leave 2 h 50 min of 8, from half past eight.
    assert_eq!(local(last.at), "2027-11-25 11:00");
}

#[test]
fn a_change_of_water_said_tells_that_thawing_has_begun() {
    let order = Order { thawing: Thawing::ColdWater, ..thanksgiving(14.5, Condition::Frozen) };
    let facts = [done(Step::Water, "2027-11-25 03:20")];
    let schedule = solve(&order, &facts, at("2027-11-25 03:20")).unwrap();
    assert_eq!(local(schedule.job(Step::Water, 1).unwrap().at), "2027-11-25 03:50");
}

#[test]
fn put_into_the_water_far_too_early_it_waits_thawed_and_goes_on_as_planned() {
    let order = Order { thawing: Thawing::ColdWater, ..thanksgiving(14.5, Condition::Frozen) };
    let before = solve(&order, &[], at("2027-11-24 12:00")).unwrap();
    let early = solve(&order, &[done(Step::Thaw, "2027-11-24 12:00")], at("2027-11-24 12:00")).unwrap();
    assert_eq!(job(&early, Step::On).at, job(&before, Step::On).at);
    let last = early.jobs.iter().rfind(|job| job.step == Step::Water).unwrap();
    assert_eq!(
        last.at,
        job(&early, Step::Thaw).at + job(&early, Step::Thaw).lasts,
        "out of the water when it is thawed"
    );
    // Half an hour early it goes on out of the water, as ever.
    let start = job(&before, Step::Thaw).at - TimeDelta::minutes(30);
    let fact = Fact { step: Step::Thaw, nth: 0, at: start, done: true };
    let near = solve(&order, &[fact], start).unwrap();
    let thawed = job(&near, Step::Thaw).at + job(&near, Step::Thaw).lasts;
    assert!(job(&near, Step::On).at - thawed <= spans::AT_ONCE);
}

#[test]
fn a_smoked_bird_is_cooked_the_day_before_carried_cold_and_reheated_there() {
    let order = Order {
        heat: Heat { cooker: Cooker::Smoker, setting: fahrenheit(325.0) },
        carry: Some(Carry { drive: TimeDelta::minutes(90), hot: false }),
        ..thanksgiving(12.7, Condition::Fresh)
    };
    let schedule = solve(&order, &[], at("2027-11-19 18:30")).unwrap();
    let steps = [Step::Fire, Step::On, Step::Pull, Step::Carve, Step::Chill];
    for step in steps {
        assert_eq!(job(&schedule, step).at.with_timezone(&America::Chicago).day(), 24, "{step:?}");
    }
    let chill = job(&schedule, Step::Chill);
    assert!(chill.latest - job(&schedule, Step::Pull).at <= TimeDelta::hours(2));
    assert!(job(&schedule, Step::Pack).at - chill.at >= TimeDelta::hours(4));
    let travel = job(&schedule, Step::Travel);
    assert_eq!(travel.lasts, TimeDelta::minutes(90));
    assert!(job(&schedule, Step::Reheat).at >= travel.at + TimeDelta::minutes(90));
    assert!(job(&schedule, Step::Serve).at - job(&schedule, Step::Reheat).at <= TimeDelta::hours(2));
    assert!(schedule.job(Step::Chill, 1).is_some(), "what is left after dinner goes into the fridge too");
    assert!(!schedule.cautions.iter().any(|caution| matches!(caution, Caution::OddHours(_))));
}

#[test]
fn a_dinner_an_hour_later_moves_the_heat_and_leaves_the_salt_in_the_evening() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let now = at("2027-11-19 18:30");
    let before = solve(&order, &[], now).unwrap();
    let later = Order { dinner: order.dinner + TimeDelta::hours(1), ..order };
    let after = solve(&later, &[], now).unwrap();
    for step in [Step::On, Step::Fire, Step::Temper, Step::Pull, Step::Carve, Step::Serve] {
        assert_eq!(job(&after, step).at - job(&before, step).at, TimeDelta::hours(1), "{step:?}");
    }
    assert_eq!(job(&after, Step::Salt).at, job(&before, Step::Salt).at);
}

#[test]
fn salted_late_the_rest_is_shorter_and_the_dinner_stands() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let facts = [done(Step::Buy, "2027-11-23 15:00"), done(Step::Salt, "2027-11-24 20:00")];
    let schedule = solve(&order, &facts, at("2027-11-24 20:00")).unwrap();
    assert!(schedule.salted_rest.unwrap() < TimeDelta::hours(24));
    assert!(schedule.cautions.iter().any(|caution| matches!(caution, Caution::ShortRest(_))));
    assert_eq!(job(&schedule, Step::Serve).at, order.dinner);
}

#[test]
fn a_plan_under_way_shortens_its_rest_but_a_new_one_asks_first() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let now = at("2027-11-24 18:00");
    let conflict = solve(&order, &[], now).unwrap_err();
    assert_eq!(conflict.offers.first().map(|offer| offer.change), Some(Change::ShorterRest));
    let bought = [done(Step::Buy, "2027-11-24 17:30")];
    assert!(solve(&order, &bought, now).is_ok());
}

#[test]
fn bird_on_a_little_late_still_makes_dinner_and_much_later_does_not() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let salted = done(Step::Salt, "2027-11-23 20:00");
    let planned = job(&solve(&order, &[salted], at("2027-11-24 12:00")).unwrap(), Step::On).at;

    let on = Fact { step: Step::On, nth: 0, at: planned + TimeDelta::minutes(10), done: true };
    let schedule = solve(&order, &[salted, on], on.at).unwrap();
    assert_eq!(job(&schedule, Step::Serve).at, order.dinner);

    let on = Fact { at: planned + TimeDelta::minutes(50), ..on };
    let conflict = solve(&order, &[salted, on], on.at).unwrap_err();
    assert!(conflict.because.iter().any(|why| matches!(why, Reason::CookingTime { .. })), "{:?}", conflict.because);
    assert_eq!(conflict.short_by, TimeDelta::minutes(35));
    let offered: Vec<Change> = conflict.offers.iter().map(|offer| offer.change).collect();
    assert!(offered.iter().any(|change| matches!(change, Change::Dinner(_))), "{offered:?}");
    assert!(offered.iter().any(|change| matches!(change, Change::Hotter(_))), "{offered:?}");
    // Nobody buys another bird with one in the oven.
    assert!(!offered.iter().any(|change| matches!(change, Change::SmallerBird(_) | Change::Flat | Change::CookAhead)));
    // While they think, the jobs go on by the later dinner.
    let meanwhile = conflict.meanwhile(order.dinner).unwrap();
    assert!(job(meanwhile, Step::Serve).at > order.dinner);
}

#[test]
fn the_forecast_takes_the_place_of_the_timetable_once_the_bird_is_on() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let on = done(Step::On, "2027-11-25 12:20");
    let finish = Finish { p10: at("2027-11-25 15:30"), p50: at("2027-11-25 15:40"), p90: at("2027-11-25 15:55") };
    let now = at("2027-11-25 14:30");
    let schedule = solve_with(&order, &[on], Some(finish), now).unwrap();
    assert_eq!(schedule.finish, finish);
    assert_eq!(job(&schedule, Step::Pull).at, finish.p50);
    assert_eq!(job(&schedule, Step::Pull).reasons, [Reason::Forecast]);
    let late = Finish { p90: at("2027-11-25 16:45"), ..finish };
    let conflict = solve_with(&order, &[on], Some(late), now).unwrap_err();
    assert!(conflict.because.contains(&Reason::Forecast), "{:?}", conflict.because);
    // Before the bird is on a forecast counts for nothing.
    assert_eq!(
        solve_with(&order, &[], Some(late), now - TimeDelta::days(3)),
        solve(&order, &[], now - TimeDelta::days(3))
    );
}

#[test]
fn a_later_step_done_settles_the_forgotten_ones() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let schedule = solve(&order, &[done(Step::On, "2027-11-25 12:20")], at("2027-11-25 12:20")).unwrap();
    for step in [Step::Buy, Step::Salt, Step::Rest, Step::Temper, Step::Fire] {
        assert!(schedule.job(step, 0).is_none(), "{step:?}");
    }
    assert!(schedule.job(Step::Check, 0).is_some());
}

#[test]
fn dinner_time_passed_as_planned_leaves_the_fridge_and_the_leftovers() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let facts = [done(Step::On, "2027-11-25 12:20")];
    let schedule = solve(&order, &facts, at("2027-11-25 17:20")).unwrap();
    let open: Vec<Step> = schedule.jobs.iter().filter(|job| !job.done).map(|job| job.step).collect();
    assert_eq!(open, [Step::Chill, Step::Leftovers]);
    // Even long after, the fridge is called at once rather than forgotten.
    let late = at("2027-11-25 19:30");
    assert_eq!(job(&solve(&order, &facts, late).unwrap(), Step::Chill).at, late);
}

#[test]
fn skipping_the_salt_drops_the_rest_and_nothing_else() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let now = at("2027-11-23 19:00");
    let skip = Fact { done: false, ..done(Step::Salt, "2027-11-23 19:00") };
    let schedule = solve(&order, &[done(Step::Buy, "2027-11-23 15:00"), skip], now).unwrap();
    assert!(schedule.job(Step::Salt, 0).is_none() && schedule.job(Step::Rest, 0).is_none());
    assert_eq!(schedule.salted_rest, None);
    assert!(schedule.job(Step::On, 0).is_some());
}

#[test]
fn taking_back_a_fact_gives_back_the_plan_before_it() {
    let order = thanksgiving(14.5, Condition::Frozen);
    let now = at("2027-11-20 18:30");
    let facts = [done(Step::Buy, "2027-11-19 11:00"), done(Step::Thaw, "2027-11-19 15:00")];
    let before = solve(&order, &facts, now).unwrap();
    let mut more = facts.to_vec();
    more.push(done(Step::Salt, "2027-11-20 18:30"));
    assert_ne!(solve(&order, &more, now).as_ref(), Ok(&before));
    more.pop();
    assert_eq!(solve(&order, &more, now), Ok(before));
}

#[test]
fn a_fresh_bird_at_home_does_not_keep_until_next_week() {
    let order = Order { at_home: true, ..thanksgiving(12.0, Condition::Fresh) };
    let conflict = solve(&order, &[], at("2027-11-19 18:30")).unwrap_err();
    assert!(conflict.because.iter().any(|why| matches!(why, Reason::RawKeeps { .. })), "{:?}", conflict.because);
    let offered: Vec<Change> = conflict.offers.iter().map(|offer| offer.change).collect();
    assert!(offered.contains(&Change::BuyLater), "{offered:?}");
    assert!(offered.iter().any(|change| matches!(change, Change::Dinner(at) if *at < order.dinner)), "{offered:?}");
}

#[test]
fn thawing_begins_by_day_where_salting_a_little_later_allows_it() {
    // 4.8 kg, planned on Sunday evening for Friday: salted on Wednesday evening it would have to go into the fridge at a quarter past one.
    let goose = Bird { kind: Kind::Goose, ..thanksgiving(10.58, Condition::Frozen).bird };
    let order = Order { bird: goose, dinner: at("2027-11-26 19:30"), ..thanksgiving(10.58, Condition::Frozen) };
    let schedule = solve(&order, &[], at("2027-11-21 19:00")).unwrap();
    let thaw = job(&schedule, Step::Thaw);
    let hour = local(thaw.at)[11..13].parse::<u32>().unwrap();
    assert!((8..23).contains(&hour), "{}", local(thaw.at));
    assert!(schedule.salted_rest.unwrap() >= TimeDelta::hours(24));
    assert!(
        !schedule.cautions.iter().any(|it| matches!(it, Caution::AtNight(_) | Caution::OddHours(_))),
        "{:?}",
        schedule.cautions
    );
}

#[test]
fn a_fresh_bird_bought_days_early_gets_ways_out_and_no_other_days_dinner_meanwhile() {
    let order = thanksgiving(14.0, Condition::Fresh);
    let facts = [done(Step::Buy, "2027-11-13 11:00")];
    let now = at("2027-11-13 12:00");
    let conflict = solve(&order, &facts, now).unwrap_err();
    let offer = |change: Change| conflict.offers.iter().find(|offer| offer.change == change);
    // To another bird nothing has happened: it is bought when it keeps.
    let another = &offer(Change::BuyLater).unwrap().schedule;
    let bought = job(another, Step::Buy);
    assert!(!bought.done && job(another, Step::On).at - bought.at <= TimeDelta::days(2));
    // Frozen, it thaws as long as the table says for 12 to 16 lb, and has had a night and a day to freeze.
    let thaw = job(&offer(Change::Freeze).unwrap().schedule, Step::Thaw);
    assert_eq!(thaw.lasts, TimeDelta::days(4));
    assert!(thaw.at - now >= TimeDelta::hours(36));
    assert!(conflict.offers.iter().any(|offer| matches!(offer.change, Change::Dinner(_))));
    assert_eq!(conflict.meanwhile(order.dinner), None);

    // Two days before it has to thaw there is no freezing it.
    let late = [done(Step::Buy, "2027-11-20 11:00")];
    let conflict = solve(&order, &late, at("2027-11-20 12:00")).unwrap_err();
    assert!(conflict.offers.iter().all(|offer| offer.change != Change::Freeze));
}

#[test]
fn the_date_on_a_pack_holds_a_fresh_bird_until_then_and_no_longer() {
    let facts = [done(Step::Buy, "2027-11-19 11:00")];
    let now = at("2027-11-19 12:00");
    let bought = thanksgiving(14.0, Condition::Fresh);
    assert!(solve(&bought, &facts, now).is_err());
    let dated = Order { use_by: Some(at("2027-11-26 23:59")), ..bought };
    let schedule = solve(&dated, &facts, now).unwrap();
    // Once salted the pack is open: two days, as in the Cold Food Storage Chart (1 to 2 days raw).
    let rest = job(&schedule, Step::On).at - job(&schedule, Step::Salt).at;
    assert!(rest <= TimeDelta::days(2), "{rest}");
    let short = Order { use_by: Some(at("2027-11-24 23:59")), ..bought };
    let conflict = solve(&short, &facts, now).unwrap_err();
    assert!(conflict.because.iter().any(|why| matches!(why, Reason::UseBy { .. })), "{:?}", conflict.because);
    assert!(conflict.offers.iter().any(|offer| offer.change == Change::BuyLater));
}

#[test]
fn a_bird_out_of_the_fridge_for_two_hours_is_not_planned_on() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let facts = [done(Step::Salt, "2027-11-23 18:30"), done(Step::Temper, "2027-11-25 09:00")];
    let conflict = solve(&order, &facts, at("2027-11-25 11:30")).unwrap_err();
    assert!(conflict.because.iter().any(|why| matches!(why, Reason::RoomTemperature { .. })), "{:?}", conflict.because);
    // And if it went on all the same, the plan says so.
    let on = [facts[0], facts[1], done(Step::On, "2027-11-25 11:30")];
    let schedule = solve(&order, &on, at("2027-11-25 11:30")).unwrap();
    assert!(schedule.cautions.iter().any(|c| matches!(c, Caution::Overrun(Reason::RoomTemperature { .. }))));
}

#[test]
fn impossible_wishes_are_named() {
    let order = thanksgiving(12.0, Condition::Fresh);
    let because = |order: &Order, now: &str| solve(order, &[], at(now)).unwrap_err().because;
    assert_eq!(because(&order, "2027-11-26 12:00"), [Reason::DinnerPast]);
    assert_eq!(because(&order, "2026-01-01 12:00"), [Reason::DinnerTooFar]);
    let far = Order { carry: Some(Carry { drive: TimeDelta::hours(20), hot: false }), ..order };
    assert_eq!(because(&far, "2027-11-19 12:00"), [Reason::DriveTooLong { most: spans::DRIVE_MOST }]);
    let frozen = Order {
        heat: Heat { cooker: Cooker::Smoker, setting: fahrenheit(325.0) },
        thawing: Thawing::CookFrozen,
        ..thanksgiving(12.0, Condition::Frozen)
    };
    assert!(matches!(because(&frozen, "2027-11-15 12:00")[..], [Reason::NotCookedSo(_)]));
    let conflict = solve(&frozen, &[], at("2027-11-15 12:00")).unwrap_err();
    assert!(conflict.offers.iter().any(|offer| offer.change == Change::FridgeThaw));
}

#[test]
fn the_salt_stays_at_half_past_six_on_the_wall_across_a_clock_change() {
    // Spring and autumn, America and Europe; all Sundays (2027-03-28 is Easter).
    for (zone, dinner) in [
        (America::Chicago, "2027-03-14 17:00"),
        (America::Chicago, "2027-11-07 17:00"),
        (Europe::Madrid, "2027-03-28 17:00"),
        (Europe::Madrid, "2027-10-31 17:00"),
    ] {
        let dinner = at_in(zone, dinner);
        let order = Order { dinner, zone, ..thanksgiving(12.0, Condition::Fresh) };
        let schedule = solve(&order, &[], dinner - TimeDelta::days(6)).unwrap();
        let salt = job(&schedule, Step::Salt);
        let wall = salt.at.with_timezone(&zone).time();
        assert_eq!((wall.hour(), wall.minute()), (18, 30), "{zone} {dinner}");
        // Elapsed time, not the wall's difference, is what the salt gets.
        let rest = job(&schedule, Step::On).at - salt.at;
        assert_eq!(schedule.salted_rest, Some(rest));
        assert!((TimeDelta::hours(24)..=TimeDelta::hours(48)).contains(&rest), "{zone} {dinner}: {rest}");
        let wall_rest =
            job(&schedule, Step::On).at.with_timezone(&zone).naive_local() - salt.at.with_timezone(&zone).naive_local();
        assert_eq!((wall_rest - rest).abs(), TimeDelta::hours(1), "{zone} {dinner}: the clock changed in between");
    }
}

#[test]
fn local_times_skipped_or_repeated_by_the_clock_have_one_meaning() {
    let table = include_str!("../../tests/tables/timezone_gap_fold_cases.csv");
    let mut seen = (0, 0);
    for line in table.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let zone: Tz = cells[1].parse().unwrap();
        let wanted: NaiveDateTime = cells[2].parse().unwrap();
        let before: Moment = cells[4].parse().unwrap();
        let got = clock::instant(zone, wanted);
        if cells[3] == "fold" {
            seen.1 += 1;
            assert_eq!(got, before, "{line}: the earlier one");
        } else {
            seen.0 += 1;
            let wall = |at: Moment| at.with_timezone(&zone).naive_local();
            assert!(wall(got) > wanted && wall(got - TimeDelta::seconds(1)) < wanted, "{line}: {got} is not the first");
        }
    }
    assert_eq!(seen, (3, 3));
}

#[test]
fn elapsed_time_across_a_clock_change_ends_where_the_table_says() {
    let table = include_str!("../../tests/tables/timezone_elapsed_cases.csv");
    let mut rows = 0;
    for line in table.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let zone: Tz = cells[1].parse().unwrap();
        let start: NaiveDateTime = cells[2].parse().unwrap();
        let elapsed = TimeDelta::seconds((cells[5].parse::<f64>().unwrap() * 3600.0) as i64);
        let end: NaiveDateTime = cells[6].parse().unwrap();
        assert_eq!((clock::instant(zone, start) + elapsed).with_timezone(&zone).naive_local(), end, "{line}");
        rows += 1;
    }
    assert_eq!(rows, 8);
}

mod laws {
    use super::*;
    use proptest::prelude::*;

    fn order() -> impl Strategy<Value = Order> {
        let bird = (
            prop::sample::select(Kind::ALL),
            3.0_f64..26.0,
            prop::sample::select(Condition::ALL),
            prop::sample::select(Form::ALL),
            any::<bool>(),
        )
            .prop_map(|(kind, lb, condition, form, stuffed)| Bird {
                kind,
                mass: BirdMass::new(pounds(lb)).unwrap(),
                condition,
                form,
                stuffed,
                solution: None,
            });
        let heat = (prop::sample::select(Cooker::ALL), 225.0_f64..400.0)
            .prop_map(|(cooker, setting)| Heat { cooker, setting: fahrenheit(setting.round()) });
        let how = (
            prop::sample::select(Salting::ALL),
            prop::sample::select(Thawing::ALL),
            prop::sample::select(vec![America::Chicago, Europe::Madrid, chrono_tz::Australia::Lord_Howe]),
            prop::option::of((10_i64..300, any::<bool>())),
            any::<(bool, bool, bool)>(),
        );
        // Minutes after the start of 2027, so that clock changes are met.
        (bird, heat, how, 0_i64..500_000).prop_map(|(bird, heat, how, minutes)| {
            let (salting, thawing, zone, drive, (ahead, at_home, short_rest)) = how;
            Order {
                salting,
                thawing,
                carry: drive.map(|(minutes, hot)| Carry { drive: TimeDelta::minutes(minutes), hot }),
                ahead,
                at_home,
                short_rest,
                ..Order::new(bird, eight(), heat, start() + TimeDelta::minutes(minutes), zone)
            }
        })
    }

    fn start() -> Moment {
        at("2027-01-01 00:00")
    }

    /// The jobs whose order in time is fixed.
    fn chain(schedule: &Schedule) -> Vec<&Job> {
        let ahead = schedule.job(Step::Reheat, 0).is_some();
        let mut steps = vec![
            (Step::Buy, 0),
            (Step::Thaw, 0),
            (Step::Salt, 0),
            (Step::Rest, 0),
            (Step::Temper, 0),
            (Step::On, 0),
            (Step::Pull, 0),
            (Step::Stand, 0),
        ];
        if !ahead {
            steps.extend([(Step::Pack, 1), (Step::Travel, 0)]);
        }
        steps.push((Step::Carve, 0));
        if ahead {
            steps.extend([(Step::Chill, 0), (Step::Pack, 0), (Step::Travel, 0), (Step::Reheat, 0)]);
        }
        steps.extend([(Step::Serve, 0), (Step::Chill, u8::from(ahead)), (Step::Leftovers, 0)]);
        steps.into_iter().filter_map(|(step, nth)| schedule.job(step, nth)).collect()
    }

    fn between(schedule: &Schedule, from: Step, to: Step) -> Option<TimeDelta> {
        Some(schedule.job(to, 0)?.at - schedule.job(from, 0)?.at)
    }

    /// Everything that makes a plan a plan.
    fn obeys(order: &Order, schedule: &Schedule, now: Moment) -> Result<(), TestCaseError> {
        for job in &schedule.jobs {
            prop_assert!(job.earliest <= job.at && job.at <= job.latest, "{job:?}");
            prop_assert!(job.lasts >= TimeDelta::zero(), "{job:?}");
            prop_assert!(job.done || job.at >= now, "{job:?}");
        }
        prop_assert!(schedule.jobs.is_sorted_by_key(|job| job.at));
        let chain = chain(schedule);
        prop_assert!(chain.is_sorted_by_key(|job| job.at), "{chain:#?}");
        if let Some(serve) = schedule.job(Step::Serve, 0).filter(|job| !job.done) {
            prop_assert_eq!(serve.at, order.dinner);
            if !order.cooks_ahead() {
                prop_assert!(schedule.finish.p90 + spans::STAND_LEAST + spans::CARVING_LEAST <= order.dinner);
            }
        }
        safe(order, schedule)
    }

    /// The published limits, read off the jobs.
    fn safe(order: &Order, schedule: &Schedule) -> Result<(), TestCaseError> {
        let within = |from, to, most: TimeDelta| between(schedule, from, to).is_none_or(|span| span <= most);
        if order.bird.condition == Condition::Fresh {
            prop_assert!(within(Step::Buy, Step::On, TimeDelta::days(2)));
        }
        prop_assert!(within(Step::Temper, Step::On, TimeDelta::hours(2)));
        prop_assert!(within(Step::Salt, Step::On, TimeDelta::hours(48)));
        prop_assert!(within(Step::Reheat, Step::Serve, TimeDelta::hours(2)));
        if order.cooks_ahead() {
            prop_assert!(within(Step::Pull, Step::Chill, TimeDelta::hours(2)));
        } else {
            prop_assert!(within(Step::Carve, Step::Chill, TimeDelta::hours(2)));
        }
        let thaw = schedule.job(Step::Thaw, 1).or(schedule.job(Step::Thaw, 0));
        if let (Some(thaw), Some(on)) = (thaw, schedule.job(Step::On, 0)) {
            let keeps = if schedule.thawing == Some(Thawing::ColdWater) { spans::AT_ONCE } else { TimeDelta::days(2) };
            prop_assert!(on.at - (thaw.at + thaw.lasts) <= keeps && on.at >= thaw.at + thaw.lasts);
            let mut last = thaw.at;
            for water in schedule.jobs.iter().filter(|job| job.step == Step::Water) {
                prop_assert!(water.at - last <= thaw::WATER_CHANGE_EVERY);
                last = water.at;
            }
        }
        Ok(())
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 400, ..ProptestConfig::default() })]

        #[test]
        fn every_plan_keeps_its_windows_its_order_its_dinner_and_the_limits(
            order in order(),
            lead in 1_i64..20_000,
        ) {
            let now = order.dinner - TimeDelta::minutes(lead);
            match solve(&order, &[], now) {
                Ok(schedule) => obeys(&order, &schedule, now)?,
                Err(conflict) => {
                    prop_assert!(!conflict.because.is_empty());
                    prop_assert!(conflict.short_by >= TimeDelta::zero());
                    prop_assert!(conflict.offers.is_sorted_by_key(|offer| offer.cost));
                    for offer in &conflict.offers {
                        let changed = offer.change.apply(&order);
                        prop_assert_ne!(changed, order);
                        prop_assert!(solve(&changed, &[], now).as_ref() == Ok(&offer.schedule), "{:?}", offer.change);
                        obeys(&changed, &offer.schedule, now)?;
                    }
                }
            }
        }

        #[test]
        fn whatever_has_happened_what_is_still_to_do_is_ahead_and_in_its_window(
            order in order(),
            now_minutes in -10_000_i64..4_000,
            happened in prop::collection::vec(
                (prop::sample::select(Step::ALL), 0_u8..3, 0_i64..12_000, prop::bool::weighted(0.8)), 0..6),
        ) {
            let now = order.dinner + TimeDelta::minutes(now_minutes);
            let facts: Vec<Fact> = happened
                .into_iter()
                .map(|(step, nth, ago, done)| Fact { step, nth, at: now - TimeDelta::minutes(ago), done })
                .collect();
            match solve(&order, &facts, now) {
                Ok(schedule) => {
                    for job in &schedule.jobs {
                        prop_assert!(job.earliest <= job.at && job.at <= job.latest, "{job:?}");
                        prop_assert!(job.done || job.at >= now, "{job:?}");
                        prop_assert!(!facts.iter().any(|f| f.step == job.step && f.nth == job.nth) || job.done, "{job:?}");
                    }
                }
                Err(conflict) => prop_assert!(!conflict.because.is_empty()),
            }
        }

        #[test]
        fn doing_every_job_when_it_is_due_never_upsets_the_plan(order in order(), lead in 5_000_i64..20_000) {
            let mut now = order.dinner - TimeDelta::minutes(lead);
            let Ok(mut schedule) = solve(&order, &[], now) else { return Ok(()) };
            let mut facts = Vec::new();
            while let Some(next) = schedule.next().cloned() {
                prop_assert!(next.at >= now);
                now = next.at;
                facts.push(Fact { step: next.step, nth: next.nth, at: now, done: true });
                match solve(&order, &facts, now) {
                    Ok(solved) => schedule = solved,
                    Err(conflict) => prop_assert!(false, "after {next:?}: {:?}", conflict.because),
                }
                obeys(&order, &schedule, now)?;
                prop_assert!(facts.len() < 120);
            }
        }
    }
}

/// Thanksgiving at another house, the bird carried there hot.
fn carried_hot(minutes: i64) -> Order {
    let carry = Some(Carry { drive: TimeDelta::minutes(minutes), hot: true });
    Order { carry, ..thanksgiving(12.0, Condition::Fresh) }
}

#[test]
fn a_bird_carried_hot_is_wrapped_driven_and_eaten_within_two_hours_of_the_heat() {
    let schedule = solve(&carried_hot(40), &[], at("2027-11-19 18:30")).unwrap();
    let pack = schedule.job(Step::Pack, 1).unwrap();
    assert_eq!(local(pack.at), "2027-11-25 15:25");
    assert_eq!(local(job(&schedule, Step::Travel).at), "2027-11-25 15:40");
    assert_eq!(local(job(&schedule, Step::Carve).at), "2027-11-25 16:35");
    assert!(job(&schedule, Step::Serve).at - pack.at <= spans::HOT_ROAD);
    assert!(schedule.finish.p90 <= pack.at, "done before it is wrapped, nine times in ten");
    for absent in [Step::Reheat, Step::Pack] {
        assert!(schedule.job(absent, 0).is_none(), "{absent:?}");
    }
    // Off the heat so early that the two hours would be over at the table: kept at 140 °F until it is wrapped.
    let wait = pack.at - schedule.finish.p10;
    assert!(job(&schedule, Step::Serve).at - schedule.finish.p10 > spans::HOT_ROAD);
    assert!(schedule.cautions.contains(&Caution::HotTillPacked(wait)), "{:?}", schedule.cautions);
    // What is left counts from the heat, not from carving.
    assert!(job(&schedule, Step::Chill).latest <= pack.at + spans::HOT_ROAD);
    let why = job(&schedule, Step::Travel).reasons.iter().filter_map(|reason| reason.source());
    assert!(why.into_iter().any(|source| source == carvetime_core::source::DANGER_ZONE));
}

#[test]
fn a_drive_too_long_for_a_hot_bird_is_offered_cold_and_at_no_other_hour() {
    assert!(solve(&carried_hot(spans::HOT_DRIVE_MOST.num_minutes()), &[], at("2027-11-19 18:30")).is_ok());
    let order = carried_hot(spans::HOT_DRIVE_MOST.num_minutes() + 20);
    let conflict = solve(&order, &[], at("2027-11-19 18:30")).unwrap_err();
    assert!(conflict.because.contains(&Reason::HotRoad { most: spans::HOT_ROAD }), "{:?}", conflict.because);
    assert_eq!(conflict.short_by, TimeDelta::minutes(20));
    assert_eq!(conflict.offers[0].change, Change::CarryCold);
    let cold = Change::CarryCold.apply(&order);
    assert!(cold.cooks_ahead() && cold.carry.is_some());
    assert!(!conflict.offers.iter().any(|offer| matches!(offer.change, Change::Dinner(_))));
}

#[test]
fn a_hot_bird_on_the_road_is_carved_when_it_arrives() {
    let order = carried_hot(40);
    let pack = Fact { nth: 1, ..done(Step::Pack, "2027-11-25 15:25") };
    let facts = [
        done(Step::On, "2027-11-25 11:30"),
        done(Step::Pull, "2027-11-25 14:50"),
        pack,
        done(Step::Travel, "2027-11-25 15:50"),
    ];
    let schedule = solve(&order, &facts, at("2027-11-25 15:51")).unwrap();
    let carve = job(&schedule, Step::Carve).at;
    assert!(carve >= at("2027-11-25 16:30") && carve <= at("2027-11-25 16:40"), "{}", local(carve));
    assert!(schedule.job(Step::Stand, 0).is_none_or(|stand| stand.done || stand.at <= carve));
    // Too late for the hour wished: dinner is later, and the food is judged by the thermometer.
    let late = [facts[0], facts[1], facts[2], done(Step::Travel, "2027-11-25 16:20")];
    let conflict = solve(&order, &late, at("2027-11-25 16:21")).unwrap_err();
    assert!(matches!(conflict.offers[0].change, Change::Dinner(_)), "{:?}", conflict.offers[0].change);
}

/// Food Standards Agency, Cooking your food, leftovers: within 48 hours (`source::UK_COOKING`).
#[test]
fn leftovers_in_britain_end_after_two_days() {
    let zone = chrono_tz::Europe::London;
    let order = Order::new(turkey(13.0, Condition::Fresh), eight(), oven(), at_in(zone, "2027-12-25 15:00"), zone);
    let schedule = solve(&order, &[], at_in(zone, "2027-12-21 10:00")).unwrap();
    let last = job(&schedule, Step::Leftovers);
    assert_eq!(last.at, at_in(zone, "2027-12-27 12:00"));
    let chilled = job(&schedule, Step::Chill).at;
    assert!(last.at > chilled && last.latest <= chilled + chrono::TimeDelta::hours(48));
}
