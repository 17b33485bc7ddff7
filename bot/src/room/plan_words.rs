//! The plan's values as messages: what a step is called, what its call says, why, what a change costs.
//!
//! Owns the mapping from `core::plan` to `locales/LANG/plan.ftl`, and no decision. Every match is complete, so that a new
//! value of the plan can't stay without words.

use crate::words::{Arg, Text};
use carvetime_core::bird::{BirdError, Condition, Kind};
use carvetime_core::plan::{
    Caution, Change, ColdPlace, Dish, DishHeat, Moment, Need, Offer, Order, Reason, Rival, Salting, Schedule, Step,
    Thawing, spans,
};
use carvetime_core::quantity::fahrenheit;
use carvetime_core::roast::{self, Cooker, RoastError};
use carvetime_core::thaw::WATER_CHANGE_EVERY;
use chrono::TimeDelta;

/// The places of a list of jobs that are shown where it is cut to `most`: what comes next, dishes among the next, what the dinner turns on,
/// then the first.
pub fn shown(steps: &[Option<Step>], most: usize) -> Vec<usize> {
    let is_pivot = |step: &Option<Step>| matches!(step, Some(Step::Pull | Step::Carve | Step::Travel | Step::Serve));
    let pivots = (0..steps.len()).filter(|at| steps.get(*at).is_some_and(is_pivot));
    let mut shown: Vec<usize> = Vec::new();
    let dishes = (0..steps.len().min(most)).filter(|at| steps.get(*at) == Some(&Some(Step::Dish)));
    for at in (0..steps.len().min(1)).chain(dishes).chain(pivots).chain(0..steps.len()) {
        if shown.len() < most && !shown.contains(&at) {
            shown.push(at);
        }
    }
    shown.sort_unstable();
    shown
}

/// Safe anywhere in poultry; also for reheating. Source: [`carvetime_core::source`], `safe-minimum`.
fn safe() -> Arg {
    fahrenheit_arg(165.0)
}

/// Food kept hot is at least so hot. Source: `danger-zone`.
fn hot() -> Arg {
    fahrenheit_arg(140.0)
}

/// Food kept cold is at most so warm. Source: `danger-zone`.
fn cold() -> Arg {
    fahrenheit_arg(40.0)
}

fn fahrenheit_arg(degrees: f64) -> Arg {
    Arg::Temperature(fahrenheit(degrees))
}

/// What the `nth` (from 0) of a step is called on the board.
pub fn step_name(step: Step, nth: u8) -> Text {
    of_dish(Text::named("plan-step", named(step, nth)), step, nth)
}

/// What it is called once it is done.
pub fn step_done(step: Step, nth: u8) -> Text {
    of_dish(Text::named("plan-done", named(step, nth)), step, nth)
}

/// A dish is called by the name its cook gave it.
fn of_dish(text: Text, step: Step, nth: u8) -> Text {
    if step == Step::Dish { text.with("name", Arg::Dish(nth)) } else { text }
}

/// A second thawing is the move from the fridge into cold water, a second packing is wrapping it hot: they have names of their own.
fn named(step: Step, nth: u8) -> &'static str {
    match (step, nth) {
        (Step::Thaw, 1..) => "thaw-finish",
        (Step::Pack, 1..) => "pack-hot",
        _ => step.name(),
    }
}

/// What to do now that a job is due: the `nth` (from 0) of `of`, to be done by `latest`.
pub fn step_call(step: Step, nth: u8, of: usize, order: Option<&Order>, latest: Moment) -> Vec<Text> {
    let stuffed = order.is_some_and(|order| order.bird.stuffed);
    let ahead = order.is_some_and(Order::cooks_ahead);
    let hot_road = order.is_some_and(Order::carries_hot);
    let text = match step {
        Step::Buy => {
            let condition = order.map_or(Condition::Fresh, |order| order.bird.condition);
            Text::new("plan-call-buy").with("condition", Arg::Choice(condition.name()))
        }
        Step::Thaw if nth > 0 => Text::new("plan-call-thaw-finish").with("every", Arg::Span(WATER_CHANGE_EVERY)),
        Step::Thaw if order.is_some_and(|order| order.thawing == Thawing::ColdWater) => {
            Text::new("plan-call-thaw-water").with("every", Arg::Span(WATER_CHANGE_EVERY))
        }
        Step::Thaw => Text::new("plan-call-thaw-fridge").with("cold", cold()),
        Step::Water => {
            let n = i64::from(nth) + 1;
            let of = i64::try_from(of).unwrap_or(n).max(n);
            Text::new("plan-call-water").with("n", Arg::Count(n)).with("of", Arg::Count(of))
        }
        Step::Salt if thaws_in_water(order) => Text::new("plan-call-salt-now"),
        Step::Salt if order.is_some_and(|order| order.salting == Salting::Wet) => {
            Text::new("plan-call-salt-wet").with("cold", cold())
        }
        Step::Salt => Text::new("plan-call-salt-dry"),
        Step::Rest => Text::new("plan-call-rest"),
        Step::Temper if thaws_in_water(order) => {
            Text::new("plan-call-temper-water").with("most", Arg::Span(spans::AT_ONCE))
        }
        Step::Temper if order.is_some_and(|order| matches!(order.bird.kind, Kind::Duck | Kind::Goose)) => {
            Text::new("plan-call-temper-fat").with("most", Arg::Span(spans::ROOM_MOST))
        }
        Step::Temper => Text::new("plan-call-temper").with("most", Arg::Span(spans::ROOM_MOST)),
        Step::Fire => fire_call(order),
        Step::On if stuffed => Text::new("plan-call-on-stuffed"),
        Step::On => Text::new("plan-call-on"),
        Step::Check => Text::new("plan-call-check").with("cooker", Arg::Choice(cooker(order).name())),
        Step::Pull if stuffed => Text::new("plan-call-pull-stuffed").with("target", safe()),
        Step::Pull => Text::new("plan-call-pull").with("target", safe()),
        Step::Stand => Text::new("plan-call-stand").with("least", Arg::Span(spans::STAND_LEAST)),
        Step::Carve if hot_road => Text::new("plan-call-carve-hot").with("hot", hot()),
        Step::Carve => Text::new("plan-call-carve"),
        Step::Chill if ahead && nth == 0 => Text::new("plan-call-chill-ahead").with("latest", Arg::Clock(latest)),
        Step::Chill => Text::new("plan-call-chill").with("latest", Arg::Clock(latest)),
        Step::Pack if nth > 0 => Text::new("plan-call-pack-hot")
            .with("hour", Arg::Span(spans::HOT_ROAD_IN_HEAT))
            .with("air", fahrenheit_arg(90.0)),
        Step::Pack => Text::new("plan-call-pack").with("cold", cold()),
        Step::Travel if hot_road => Text::new("plan-call-travel-hot"),
        Step::Travel => Text::new("plan-call-travel"),
        Step::Reheat => Text::new("plan-call-reheat")
            .with("low", fahrenheit_arg(325.0))
            .with("high", fahrenheit_arg(350.0))
            .with("target", safe()),
        Step::Serve => Text::new("plan-call-serve"),
        Step::Leftovers => Text::new("plan-call-leftovers"),
        Step::Dish => dish_call(nth, order),
    };
    let then = order.filter(|_| step == Step::Dish).and_then(|order| order.dishes.get(nth)).and_then(then_kept);
    std::iter::once(text).chain(then).collect()
}

fn fire_call(order: Option<&Order>) -> Text {
    let text = match cooker(order) {
        Cooker::Smoker => Text::new("plan-call-fire-smoker"),
        Cooker::Oven | Cooker::FanOven => Text::new("plan-call-fire-oven"),
    };
    let setting = order.map_or_else(|| fahrenheit(roast::OVEN_AUTHORITY_F), |order| order.heat.setting);
    text.with("setting", Arg::Temperature(setting))
}

fn dish_call(nth: u8, order: Option<&Order>) -> Text {
    let Some(dish) = order.and_then(|order| order.dishes.get(nth)) else {
        return Text::new("plan-call-dish").with("name", Arg::Dish(nth));
    };
    let text = match dish.heat {
        _ if is_only_chilled(dish) => Text::new("plan-call-dish-chill").with("cold", cold()),
        DishHeat::None if dish.takes.is_zero() => Text::new("plan-call-dish"),
        DishHeat::Oven(setting) => Text::new("plan-call-dish-oven").with("setting", Arg::Temperature(setting)),
        DishHeat::Smoker(setting) => Text::new("plan-call-dish-smoker").with("setting", Arg::Temperature(setting)),
        DishHeat::Stove => Text::new("plan-call-dish-stove"),
        DishHeat::None => Text::new("plan-call-dish-made"),
    };
    text.with("name", Arg::Dish(nth)).with("takes", Arg::Span(dish.takes))
}

/// It is only put into the fridge.
fn is_only_chilled(dish: Dish) -> bool {
    dish.takes.is_zero() && dish.in_fridge() > 0
}

/// Where a dish waits once it is made.
fn then_kept(dish: Dish) -> Option<Text> {
    if dish.early && dish.cold().is_none() {
        return Some(Text::new("plan-call-dish-then-hot").with("hot", hot()));
    }
    let id = match dish.cold()?.place {
        ColdPlace::Fridge if is_only_chilled(dish) => return None,
        ColdPlace::Fridge => "plan-call-dish-then-fridge",
        ColdPlace::Cooler => "plan-call-dish-then-cooler",
    };
    Some(Text::new(id).with("cold", cold()).with("most", Arg::Span(spans::ROOM_MOST)))
}

fn cooker(order: Option<&Order>) -> Cooker {
    order.map_or(Cooker::Oven, |order| order.heat.cooker)
}

fn thaws_in_water(order: Option<&Order>) -> bool {
    order.is_some_and(|order| {
        let in_water = matches!(order.thawing, Thawing::ColdWater | Thawing::FridgeThenWater);
        in_water && order.bird.condition != Condition::Fresh
    })
}

/// Why a job stands where it does: half a sentence.
pub fn reason(reason: &Reason) -> Text {
    match *reason {
        Reason::Dinner => Text::new("plan-reason-dinner"),
        Reason::Now => Text::new("plan-reason-now"),
        Reason::Done => Text::new("plan-reason-done"),
        Reason::Follows { step, takes } => {
            Text::new("plan-reason-follows").with("step", Arg::from(step_name(step, 0))).with("takes", Arg::Span(takes))
        }
        Reason::ShopFrom { at } => Text::new("plan-reason-shop").with("at", Arg::DayClock(at)),
        Reason::RawKeeps { most } => Text::new("plan-reason-raw-keeps").with("most", Arg::Span(most)),
        Reason::UseBy { until } => Text::new("plan-reason-use-by").with("day", Arg::Day(until)),
        Reason::FridgeThaw { least, most, .. } => {
            Text::new("plan-reason-fridge-thaw").with("time", Arg::SpanRange(least, most))
        }
        Reason::FridgeShare { spent, whole, .. } => {
            Text::new("plan-reason-fridge-share").with("spent", Arg::Span(spent)).with("whole", Arg::Span(whole))
        }
        Reason::WaterThaw { least, most, .. } => {
            Text::new("plan-reason-water-thaw").with("time", Arg::SpanRange(least, most))
        }
        Reason::WaterFinish { most } => Text::new("plan-reason-water-finish").with("most", Arg::Span(most)),
        Reason::WaterChange { every } => Text::new("plan-reason-water-change").with("every", Arg::Span(every)),
        Reason::CookAtOnce => Text::new("plan-reason-cook-at-once"),
        Reason::ThawedKeeps { most } => Text::new("plan-reason-thawed-keeps").with("most", Arg::Span(most)),
        Reason::SaltWants { least } => Text::new("plan-reason-salt-wants").with("least", Arg::Span(least)),
        Reason::SaltAtMost { most } => Text::new("plan-reason-salt-at-most").with("most", Arg::Span(most)),
        Reason::BrineWants { least } => Text::new("plan-reason-brine-wants").with("least", Arg::Span(least)),
        Reason::Temper { about } => Text::new("plan-reason-temper").with("about", Arg::Span(about)),
        Reason::RoomTemperature { most } => Text::new("plan-reason-room-temperature").with("most", Arg::Span(most)),
        Reason::Preheat { cooker, least } => {
            Text::new("plan-reason-preheat").with("cooker", Arg::Choice(cooker.name())).with("least", Arg::Span(least))
        }
        Reason::CookingTime { p10, p90, .. } => {
            Text::new("plan-reason-cooking-time").with("time", Arg::SpanRange(p10, p90))
        }
        Reason::Forecast => Text::new("plan-reason-forecast"),
        Reason::CheckBefore => Text::new("plan-reason-check-before"),
        Reason::Stand { least } => Text::new("plan-reason-stand").with("least", Arg::Span(least)),
        Reason::HotHold { most } => Text::new("plan-reason-hot-hold").with("most", Arg::Span(most)).with("hot", hot()),
        Reason::Carving { about } => Text::new("plan-reason-carving").with("about", Arg::Span(about)),
        Reason::TwoHours { most } => Text::new("plan-reason-two-hours").with("most", Arg::Span(most)),
        Reason::ColdThrough { least } => Text::new("plan-reason-cold-through").with("least", Arg::Span(least)),
        Reason::Drive { takes } => Text::new("plan-reason-drive").with("takes", Arg::Span(takes)),
        Reason::PackedCold { most } => Text::new("plan-reason-packed-cold").with("most", Arg::Span(most)),
        Reason::HotRoad { most } => Text::new("plan-reason-hot-road").with("most", Arg::Span(most)),
        Reason::Reheat { about } => Text::new("plan-reason-reheat").with("about", Arg::Span(about)),
        Reason::ReheatWithin { most } => {
            Text::new("plan-reason-reheat-within").with("most", Arg::Span(most)).with("target", safe())
        }
        Reason::CookedKeeps { most } => Text::new("plan-reason-cooked-keeps").with("most", Arg::Span(most)),
        Reason::DishHot { dish, most } => {
            Text::new("plan-reason-dish-hot").with("name", Arg::Dish(dish)).with("most", Arg::Span(most))
        }
        Reason::DishAhead { dish } => Text::new("plan-reason-dish-ahead").with("name", Arg::Dish(dish)),
        Reason::DishCold { dish, least } => {
            Text::new("plan-reason-dish-cold").with("name", Arg::Dish(dish)).with("least", Arg::Span(least))
        }
        Reason::FridgeTaken { dish, shelves, bird } => {
            let id = if bird { "plan-reason-fridge-taken" } else { "plan-reason-fridge-full" };
            Text::new(id).with("name", Arg::Dish(dish)).with("shelves", Arg::Count(shelves.into()))
        }
        Reason::HeatTaken { dish, rival } => heat_taken(dish, rival),
        Reason::Sociable => Text::new("plan-reason-sociable"),
        Reason::DinnerPast => Text::new("plan-reason-dinner-past"),
        Reason::DinnerTooFar => Text::new("plan-reason-dinner-too-far"),
        Reason::DriveTooLong { most } => Text::new("plan-reason-drive-too-long").with("most", Arg::Span(most)),
        Reason::NotCookedSo(error) => not_cooked_so(error),
    }
}

fn heat_taken(dish: u8, rival: Rival) -> Text {
    let text = Text::new("plan-reason-heat-taken").with("name", Arg::Dish(dish));
    let (settings, text, how) = match rival {
        Rival::Several => return text.with("how", Arg::Choice("alone")),
        Rival::Full { room } => {
            let room = i64::try_from(room).unwrap_or(i64::MAX);
            return text.with("how", Arg::Choice("full")).with("room", Arg::Count(room));
        }
        Rival::Bird { settings } => {
            (settings, text.with("other", Arg::from(Text::new("plan-reason-heat-bird"))), ["setting-bird", "time-bird"])
        }
        Rival::Dish { place, settings } => (settings, text.with("other", Arg::Dish(place)), ["setting", "time"]),
    };
    let [apart, together] = how;
    match settings {
        Some((own, others)) => text
            .with("how", Arg::Choice(apart))
            .with("own", Arg::Temperature(own))
            .with("others", Arg::Temperature(others)),
        None => text.with("how", Arg::Choice(together)),
    }
}

fn not_cooked_so(error: RoastError) -> Text {
    match error {
        RoastError::Setting { cooker, low, high, .. } => Text::new("plan-reason-setting")
            .with("cooker", Arg::Choice(cooker.name()))
            .with("low", Arg::Temperature(low))
            .with("high", Arg::Temperature(high)),
        RoastError::ThawBeforeSmoking => Text::new("plan-reason-thaw-before-smoking"),
        RoastError::Bird(BirdError::StuffedFrozen) => Text::new("plan-reason-stuffed-frozen"),
        RoastError::Bird(BirdError::StuffedForm { .. }) => Text::new("plan-reason-stuffed-form"),
        RoastError::Bird(BirdError::StuffedKind { .. }) => Text::new("plan-reason-stuffed-kind"),
        RoastError::Bird(BirdError::FormForKind { .. }) => Text::new("plan-reason-form-for-kind"),
        RoastError::Bird(BirdError::MassForKind { low, high, .. }) => {
            Text::new("plan-reason-mass-for-kind").with("low", Arg::Mass(low)).with("high", Arg::Mass(high))
        }
        RoastError::Bird(BirdError::Solution { .. }) => Text::new("plan-reason-solution"),
    }
}

/// A change as the label of a button.
pub fn change(change: &Change) -> Text {
    match *change {
        Change::ColdWater => Text::new("plan-change-cold-water"),
        Change::FinishInWater => Text::new("plan-change-finish-in-water"),
        Change::FridgeThaw => Text::new("plan-change-fridge-thaw"),
        Change::CookFrozen => Text::new("plan-change-cook-frozen"),
        Change::ShorterRest => Text::new("plan-change-shorter-rest"),
        Change::NoSalt => Text::new("plan-change-no-salt"),
        Change::Dinner(at) => Text::new("plan-change-dinner").with("when", Arg::DayClock(at)),
        Change::Hotter(setting) => Text::new("plan-change-hotter").with("setting", Arg::Temperature(setting)),
        Change::Flat => Text::new("plan-change-flat"),
        Change::Unstuffed => Text::new("plan-change-unstuffed"),
        Change::CookAhead => Text::new("plan-change-cook-ahead"),
        Change::CarryCold => Text::new("plan-change-carry-cold"),
        Change::SmallerBird(mass) => Text::new("plan-change-smaller-bird").with("mass", Arg::Mass(mass.get())),
        Change::TwoBirds(mass) => Text::new("plan-change-two-birds").with("mass", Arg::Mass(mass.get())),
        Change::BuyFresh => Text::new("plan-change-buy-fresh"),
        Change::BuyLater => Text::new("plan-change-buy-later"),
        Change::Freeze => Text::new("plan-change-freeze"),
        Change::DishBeside(dish) => Text::new("plan-change-dish-beside").with("name", Arg::Dish(dish)),
        Change::DishAhead(dish) => Text::new("plan-change-dish-ahead").with("name", Arg::Dish(dish)),
        Change::DishEarly(dish) => Text::new("plan-change-dish-early").with("name", Arg::Dish(dish)),
        Change::DishLater(dish, _) => Text::new("plan-change-dish-later").with("name", Arg::Dish(dish)),
        Change::DishCooler(dish) => Text::new("plan-change-dish-cooler").with("name", Arg::Dish(dish)),
        Change::DishOut(dish) => Text::new("plan-change-dish-out").with("name", Arg::Dish(dish)),
    }
}

/// What an offer asks of the cook: half a sentence.
pub fn offer_cost(offer: &Offer) -> Text {
    let schedule = &offer.schedule;
    let when = |step: Step| Arg::DayClock(schedule.job(step, 0).map_or(schedule.finish.p50, |job| job.at));
    match offer.change {
        Change::ColdWater => {
            let changes = i64::try_from(schedule.count(Step::Water)).unwrap_or(i64::MAX);
            Text::new("plan-cost-cold-water").with("changes", Arg::Count(changes)).with("when", when(Step::Thaw))
        }
        Change::FinishInWater => {
            let changes = i64::try_from(schedule.count(Step::Water)).unwrap_or(i64::MAX);
            let start = schedule.job(Step::Thaw, 1).map_or(schedule.finish.p50, |job| job.at);
            Text::new("plan-cost-finish-in-water")
                .with("changes", Arg::Count(changes))
                .with("when", Arg::DayClock(start))
        }
        Change::FridgeThaw => Text::new("plan-cost-fridge-thaw").with("when", when(Step::Thaw)),
        Change::CookFrozen => Text::new("plan-cost-cook-frozen")
            .with("time", Arg::Span(schedule.cooking.p50))
            .with("when", when(Step::On)),
        Change::ShorterRest => Text::new("plan-cost-shorter-rest")
            .with("rest", Arg::Span(schedule.salted_rest.unwrap_or(spans::DRY_SHORTEST)))
            .with("wanted", Arg::Span(wanted_rest(schedule))),
        Change::NoSalt => Text::new("plan-cost-no-salt"),
        Change::Dinner(_) => Text::new("plan-cost-dinner"),
        Change::Hotter(_) => Text::new("plan-cost-hotter"),
        Change::Flat => Text::new("plan-cost-flat"),
        Change::Unstuffed => Text::new("plan-cost-unstuffed"),
        Change::CookAhead => Text::new("plan-cost-cook-ahead").with("target", safe()),
        Change::CarryCold => Text::new("plan-cost-carry-cold").with("target", safe()),
        Change::SmallerBird(_) => Text::new("plan-cost-smaller-bird"),
        Change::TwoBirds(_) => Text::new("plan-cost-two-birds"),
        Change::BuyFresh => Text::new("plan-cost-buy-fresh").with("when", when(Step::Buy)),
        Change::BuyLater => Text::new("plan-cost-buy-later").with("when", when(Step::Buy)),
        Change::Freeze => Text::new("plan-cost-freeze").with("when", when(Step::Thaw)),
        Change::DishBeside(dish) => {
            let takes = schedule.job(Step::Dish, dish).map_or(TimeDelta::zero(), |job| job.lasts);
            let at = schedule.job(Step::Dish, dish).map_or(schedule.finish.p50, |job| job.at);
            Text::new("plan-cost-dish-beside").with("takes", Arg::Span(takes)).with("when", Arg::DayClock(at))
        }
        Change::DishEarly(dish) => {
            let at = schedule.job(Step::Dish, dish).map_or(schedule.finish.p50, |job| job.at);
            Text::new("plan-cost-dish-early").with("when", Arg::DayClock(at)).with("hot", hot())
        }
        Change::DishAhead(dish) => {
            let at = schedule.job(Step::Dish, dish).map_or(schedule.finish.p50, |job| job.at);
            Text::new("plan-cost-dish-ahead").with("when", Arg::DayClock(at)).with("target", safe())
        }
        Change::DishLater(dish, stay) => {
            let in_at = schedule.job(Step::Dish, dish).map_or(schedule.finish.p50, |job| job.at + job.lasts);
            Text::new("plan-cost-dish-later").with("stay", Arg::Span(stay)).with("when", Arg::DayClock(in_at))
        }
        Change::DishCooler(_) => Text::new("plan-cost-dish-cooler").with("cold", cold()),
        Change::DishOut(_) => Text::new("plan-cost-dish-out"),
    }
}

/// The rest the salt would have wanted: brine wants less than dry salt.
fn wanted_rest(schedule: &Schedule) -> TimeDelta {
    if schedule.needs.contains(&Need::BrineVessel) { spans::WET_WANTED } else { spans::DRY_WANTED }
}

/// What the host should know of a plan that works.
pub fn caution(caution: &Caution) -> Text {
    match *caution {
        Caution::OddHours(step) | Caution::AtNight(step) => {
            Text::new("plan-caution-odd-hours").with("step", Arg::from(step_name(step, 0)))
        }
        Caution::ShortRest(rest) => Text::new("plan-caution-short-rest").with("rest", Arg::Span(rest)),
        Caution::KeepHot(wait) => Text::new("plan-caution-keep-hot").with("wait", Arg::Span(wait)).with("hot", hot()),
        Caution::HotTillPacked(wait) => {
            Text::new("plan-caution-hot-till-packed").with("wait", Arg::Span(wait)).with("hot", hot())
        }
        Caution::StuffingOut => Text::new("plan-caution-stuffing-out"),
        Caution::Overrun(why) => Text::new("plan-caution-overrun").with("reason", Arg::from(reason(&why))),
        Caution::StuffingApart => Text::new("plan-caution-stuffing-apart"),
        Caution::Cooking(caution) => cooking_caution(caution),
    }
}

fn cooking_caution(caution: roast::Caution) -> Text {
    let limit = |degrees: f64| Arg::Temperature(fahrenheit(degrees));
    match caution {
        roast::Caution::OvenBelowAuthority => {
            Text::new("plan-caution-oven-below-authority").with("limit", limit(roast::OVEN_AUTHORITY_F))
        }
        roast::Caution::SmokerBelowAuthority => {
            Text::new("plan-caution-smoker-below-authority").with("limit", limit(225.0))
        }
        roast::Caution::SmokerAbovePublished => {
            Text::new("plan-caution-smoker-above-published").with("limit", limit(300.0))
        }
        roast::Caution::LongInDangerZone => {
            Text::new("plan-caution-long-in-danger-zone").with("cold", cold()).with("hot", hot())
        }
        roast::Caution::OutsideTable => Text::new("plan-caution-outside-table"),
        roast::Caution::StuffingLast => Text::new("plan-caution-stuffing-last").with("target", safe()),
        roast::Caution::FromFrozen => Text::new("plan-caution-from-frozen"),
        roast::Caution::PartThawed => Text::new("plan-caution-part-thawed"),
        roast::Caution::PiecesDiffer => Text::new("plan-caution-pieces-differ"),
    }
}

/// A thing that must be in the house.
pub fn need(need: Need) -> Text {
    Text::named("plan-need", need.name())
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

    use super::*;
    use crate::words::{Reader, Voice, plain};
    use carvetime_core::bird::{Bird, BirdMass, Diners, Form};
    use carvetime_core::plan::{self, Carry};
    use carvetime_core::quantity::pounds;
    use carvetime_core::roast::Heat;
    use chrono::TimeZone;
    use chrono_tz::{America, Europe};

    fn readers(now: Moment) -> [Reader; 2] {
        [Reader::new("en-US", America::Chicago, now), Reader::new("es-ES", Europe::Madrid, now)]
    }

    /// The text in each language; fails where it can't be written.
    fn said(text: &Text) -> [String; 2] {
        let voice = Voice::new();
        let now = America::Chicago.with_ymd_and_hms(2027, 11, 22, 18, 30, 0).unwrap().to_utc();
        readers(now).map(|reader| {
            let unsaid = voice.render(&[Text::new("units-unsaid")], &reader);
            let said = plain(&voice.render(std::slice::from_ref(text), &reader));
            assert_ne!(said, unsaid, "{text:?}");
            said
        })
    }

    fn order(condition: Condition, cooker: Cooker) -> Order {
        let bird = Bird {
            kind: Kind::Turkey,
            mass: BirdMass::new(pounds(14.5)).unwrap(),
            condition,
            form: Form::Whole,
            stuffed: false,
            solution: None,
        };
        let dinner = America::Chicago.with_ymd_and_hms(2027, 11, 25, 17, 0, 0).unwrap().to_utc();
        let diners = Diners { adults: 11, children: 0, leftovers: false };
        Order::new(bird, diners, Heat { cooker, setting: fahrenheit(325.0) }, dinner, America::Chicago)
    }

    fn monday_evening() -> Moment {
        America::Chicago.with_ymd_and_hms(2027, 11, 22, 18, 30, 0).unwrap().to_utc()
    }

    fn schedule(order: &Order) -> Schedule {
        plan::solve(order, &[], monday_evening()).unwrap()
    }

    #[test]
    fn every_step_has_a_name_that_fits_a_line_and_a_word_for_done() {
        for &step in Step::ALL.iter().filter(|step| **step != Step::Dish) {
            for nth in 0..2 {
                for text in said(&step_name(step, nth)).into_iter().chain(said(&step_done(step, nth))) {
                    assert!(text.chars().count() < 29, "{text}");
                }
            }
        }
    }

    #[test]
    fn every_call_can_be_said_for_every_kind_of_order() {
        let water = Order { thawing: Thawing::ColdWater, ..order(Condition::Frozen, Cooker::Oven) };
        let wet = Order { salting: Salting::Wet, ..order(Condition::Fresh, Cooker::Oven) };
        let mut stuffed = order(Condition::Fresh, Cooker::FanOven);
        stuffed.bird.stuffed = true;
        let carried = Order {
            carry: Some(Carry { drive: TimeDelta::hours(1), hot: false }),
            ..order(Condition::Fresh, Cooker::Smoker)
        };
        for order in [None, Some(&water), Some(&wet), Some(&stuffed), Some(&carried)] {
            for &step in Step::ALL.iter().filter(|step| **step != Step::Dish) {
                for text in step_call(step, 1, 3, order, monday_evening()).iter().flat_map(said) {
                    assert!(text.chars().count() > 10, "{text}");
                }
            }
        }
    }

    #[test]
    fn the_calls_that_keep_people_safe_say_the_number() {
        let smoker = order(Condition::Fresh, Cooker::Smoker);
        let say = |step, nth| said(&step_call(step, nth, 14, Some(&smoker), monday_evening())[0]);
        assert!(say(Step::Pull, 0)[0].contains("165 °F"));
        assert!(say(Step::Pull, 0)[1].contains("74 °C"));
        assert!(say(Step::Reheat, 0)[0].contains("165 °F"));
        assert!(say(Step::Fire, 0)[0].contains("never indoors"));
        assert!(say(Step::Water, 2)[0].contains("3 of 14"));
        assert!(say(Step::Chill, 0)[0].contains("6:30 PM"));
    }

    #[test]
    fn a_bird_finished_in_water_is_called_into_the_water_and_out_of_it() {
        let order =
            Order { thawing: Thawing::FridgeThenWater, at_home: true, ..order(Condition::Frozen, Cooker::Oven) };
        let schedule = schedule(&order);
        let say = |step, nth| said(&step_call(step, nth, 5, Some(&order), monday_evening())[0])[0].clone();
        assert!(say(Step::Thaw, 0).contains("into the fridge"));
        assert!(say(Step::Thaw, 1).contains("from the fridge into cold water"));
        assert!(say(Step::Temper, 0).contains("out of the water"));
        assert!(say(Step::Salt, 0).contains("straight on"));
        let why: Vec<String> =
            schedule.jobs.iter().flat_map(|job| &job.reasons).map(|why| said(&reason(why))[0].clone()).collect();
        assert!(why.iter().any(|why| why.contains("in the fridge, of up to 4 days")), "{why:?}");
    }

    #[test]
    fn every_offer_of_a_bird_frozen_too_long_has_a_label_and_a_price() {
        let conflict = plan::solve(&order(Condition::Frozen, Cooker::Oven), &[], monday_evening()).unwrap_err();
        assert!(!conflict.offers.is_empty());
        for offer in &conflict.offers {
            for label in said(&change(&offer.change)) {
                assert!(label.chars().count() < 33, "{label}");
            }
            said(&offer_cost(offer));
        }
        for why in &conflict.because {
            said(&reason(why));
        }
        let water = conflict.offers.iter().find(|offer| offer.change == Change::ColdWater).unwrap();
        assert_eq!(said(&offer_cost(water))[0], "15 changes of water, from Thu 2:50 AM; no salted rest");
    }

    #[test]
    fn every_change_has_a_label_that_fits_a_button() {
        let mass = BirdMass::new(pounds(8.0)).unwrap();
        for it in [
            Change::FinishInWater,
            Change::FridgeThaw,
            Change::CookFrozen,
            Change::ShorterRest,
            Change::NoSalt,
            Change::Dinner(monday_evening()),
            Change::Hotter(fahrenheit(350.0)),
            Change::Flat,
            Change::Unstuffed,
            Change::CookAhead,
            Change::CarryCold,
            Change::SmallerBird(mass),
            Change::TwoBirds(mass),
            Change::BuyFresh,
            Change::BuyLater,
            Change::Freeze,
        ] {
            let offer = Offer { change: it, cost: 0, schedule: schedule(&order(Condition::Fresh, Cooker::Oven)) };
            for label in said(&change(&it)) {
                assert!(label.chars().count() < 29, "{label}");
            }
            said(&offer_cost(&offer));
        }
    }

    #[test]
    fn reasons_cautions_and_needs_of_whole_plans_can_be_said() {
        let carried = Order {
            carry: Some(Carry { drive: TimeDelta::hours(1), hot: false }),
            ..order(Condition::Fresh, Cooker::Smoker)
        };
        let hot = Order {
            carry: Some(Carry { drive: TimeDelta::minutes(40), hot: true }),
            ..order(Condition::Fresh, Cooker::Oven)
        };
        for order in [order(Condition::Fresh, Cooker::Oven), carried, hot] {
            let schedule = schedule(&order);
            for why in schedule.jobs.iter().flat_map(|job| &job.reasons) {
                said(&reason(why));
            }
            schedule.cautions.iter().for_each(|it| drop(said(&caution(it))));
        }
        for &it in Need::ALL {
            said(&need(it));
        }
        for why in [
            Reason::DinnerPast,
            Reason::DinnerTooFar,
            Reason::DriveTooLong { most: spans::DRIVE_MOST },
            Reason::NotCookedSo(RoastError::ThawBeforeSmoking),
            Reason::NotCookedSo(RoastError::Bird(BirdError::StuffedFrozen)),
        ] {
            said(&caution(&Caution::Overrun(why)));
        }
        for it in [
            Caution::OddHours(Step::Thaw),
            Caution::ShortRest(TimeDelta::hours(14)),
            Caution::KeepHot(TimeDelta::hours(3)),
            Caution::StuffingApart,
            Caution::StuffingOut,
            Caution::HotTillPacked(TimeDelta::minutes(40)),
            Caution::Cooking(roast::Caution::LongInDangerZone),
            Caution::Cooking(roast::Caution::OvenBelowAuthority),
            Caution::Cooking(roast::Caution::StuffingLast),
        ] {
            said(&caution(&it));
        }
    }
}
