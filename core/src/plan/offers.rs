//! What would make an impossible wish possible: every change is tried, only what really solves it is offered.
//!
//! Start at [`conflict`]. Ranks by [`Offer::cost`]; a cost is a judgement of trouble, not a measurement.

use super::network::{Known, Network, SERVE};
use super::past::Past;
use super::{
    Caution, Cold, ColdPlace, Conflict, Dish, DishHeat, Fact, Failure, Finish, Moment, Offer, Order, Reason, Salting,
    Schedule, Step, Thawing, clock, spans,
};
use crate::bird::{BirdMass, Condition, Form, Kind, Leftovers, feeds};
use crate::quantity::{Temperature, fahrenheit, in_fahrenheit, in_pounds, pounds};
use crate::roast::Cooker;
use chrono::{NaiveTime, TimeDelta};

/// A change of an order.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// Thaw in cold water instead of the fridge.
    ColdWater,
    /// Thaw in the fridge as long as there is time, and finish it in cold water.
    FinishInWater,
    /// Thaw in the fridge after all.
    FridgeThaw,
    /// Cook it from frozen.
    CookFrozen,
    /// A salted rest shorter than wanted.
    ShorterRest,
    /// No salt beforehand.
    NoSalt,
    /// Dinner at another time.
    Dinner(Moment),
    /// A hotter oven or pit.
    Hotter(Temperature),
    /// Open it flat.
    Flat,
    /// Stuffing baked beside it.
    Unstuffed,
    /// Cook it the day before.
    CookAhead,
    /// Carry it cold, cooked the day before, instead of hot.
    CarryCold,
    /// A smaller bird; it still feeds everyone.
    SmallerBird(BirdMass),
    /// Two birds of this mass instead of one.
    TwoBirds(BirdMass),
    /// Buy a fresh one instead of a frozen one.
    BuyFresh,
    /// Buy another one nearer the day.
    BuyLater,
    /// Freeze the fresh one that is there, and thaw it in time.
    Freeze,
    /// The dish of that place goes in with the bird, at the bird's setting.
    DishBeside(u8),
    /// The dish of that place is made ahead.
    DishAhead(u8),
    /// The dish of that place is made earlier and kept hot.
    DishEarly(u8),
    /// The dish of that place is left out.
    DishOut(u8),
    /// The dish of that place goes into the fridge later and waits there only so long.
    DishLater(u8, TimeDelta),
    /// The dish of that place waits in a cooler with ice.
    DishCooler(u8),
}

impl Change {
    /// The order with the change made.
    #[must_use]
    pub fn apply(self, order: &Order) -> Order {
        let mut order = *order;
        match self {
            Self::ColdWater => order.thawing = Thawing::ColdWater,
            Self::FinishInWater => order.thawing = Thawing::FridgeThenWater,
            Self::FridgeThaw => order.thawing = Thawing::Fridge,
            Self::CookFrozen => order.thawing = Thawing::CookFrozen,
            Self::ShorterRest => order.short_rest = true,
            Self::NoSalt => order.salting = Salting::None,
            Self::Dinner(at) => order.dinner = at,
            Self::Hotter(setting) => order.heat.setting = setting,
            Self::Flat => order.bird.form = Form::Flat,
            Self::Unstuffed => order.bird.stuffed = false,
            Self::CookAhead => order.ahead = true,
            Self::CarryCold => order.carry = order.carry.map(|carry| super::Carry { hot: false, ..carry }),
            Self::SmallerBird(mass) => order.bird.mass = mass,
            Self::TwoBirds(mass) => {
                order.bird.mass = mass;
                order.birds = order.birds.saturating_mul(2);
            }
            Self::BuyFresh => order.bird.condition = Condition::Fresh,
            Self::BuyLater => (order.at_home, order.use_by) = (false, None),
            Self::Freeze => {
                order.bird.condition = Condition::Frozen;
                (order.at_home, order.use_by) = (true, None);
            }
            Self::DishBeside(place) => {
                let setting = order.heat.setting;
                order.dishes.set(place, order.dishes.get(place).map(|dish| dish.beside(setting)));
            }
            Self::DishAhead(place) => {
                order.dishes.set(place, order.dishes.get(place).map(|dish| super::Dish { ahead: true, ..dish }));
            }
            Self::DishEarly(place) => {
                order.dishes.set(place, order.dishes.get(place).map(|dish| super::Dish { early: true, ..dish }));
            }
            Self::DishOut(place) => {
                order.dishes.set(place, None);
            }
            Self::DishLater(place, least) => {
                let later =
                    |dish: Dish| Dish { ahead: false, cold: dish.cold().map(|cold| Cold { least, ..cold }), ..dish };
                order.dishes.set(place, order.dishes.get(place).map(later));
            }
            Self::DishCooler(place) => {
                let iced = |cold: Cold| Cold { place: ColdPlace::Cooler, ..cold };
                let iced = |dish: Dish| Dish { cold: dish.cold().map(iced), ..dish };
                order.dishes.set(place, order.dishes.get(place).map(iced));
            }
        }
        order
    }

    /// Whether what happened to the bird so far still counts with the change made: to another bird nothing has happened.
    #[must_use]
    pub fn keeps(self, step: Step) -> bool {
        self != Self::BuyLater || matches!(step, Step::Fire | Step::Dish)
    }

    /// Trouble it makes in itself.
    fn cost(self, order: &Order, schedule: &Schedule) -> u32 {
        match self {
            Self::ShorterRest => {
                let missing = schedule.salted_rest.map_or(0, |rest| (spans::DRY_WANTED - rest).num_hours());
                10 + u32::try_from(missing).unwrap_or(0)
            }
            Self::Hotter(_) => 15,
            Self::FridgeThaw | Self::BuyLater => 20,
            Self::Freeze => 25,
            Self::Dinner(at) => {
                let moved = u32::try_from((at - order.dinner).num_minutes().abs()).unwrap_or(u32::MAX);
                20 + (moved / 2).min(500)
            }
            Self::DishBeside(_) => 5,
            Self::DishEarly(_) => 10,
            Self::DishAhead(_) => 12,
            Self::DishLater(..) => 8,
            Self::DishCooler(_) => 15,
            Self::DishOut(_) => 60,
            Self::Unstuffed => 30,
            Self::NoSalt => 40,
            Self::FinishInWater => 45,
            Self::ColdWater => 50,
            Self::Flat => 60,
            Self::CookFrozen => 70,
            Self::SmallerBird(_) => 75,
            // What was wished can't be had on that road at any hour; this is the nearest to it.
            Self::CarryCold => 40,
            Self::CookAhead => 80,
            Self::TwoBirds(_) => 90,
            // Who says "frozen" mostly has it already, bought or not.
            Self::BuyFresh => 110,
        }
    }
}

/// One night-time job more.
const ODD_HOURS_COST: u32 = 20;
/// Hottest setting offered, °F. Common practice, no source: beyond it a whole bird burns before it is done.
const OVEN_TOP_F: f64 = 375.0;
/// The same for a smoker: 325 to 350 °F is common practice.
const SMOKER_TOP_F: f64 = 350.0;
/// Settings are tried in such steps, °F.
const HOTTER_STEP_F: f64 = 25.0;
/// Dinner is offered between these hours, unless it was wished outside them.
const DINNER_HOURS: (u32, u32) = (11, 21);

/// Hours for which a dish may wait in the fridge instead of longer, most first.
const COLD_HOURS: [i64; 6] = [8, 6, 5, 4, 3, 2];
/// Shorter in the fridge a dish is not cold. Common practice, no source.
const COLD_SHORTEST: TimeDelta = TimeDelta::hours(2);

/// A dinner this much later is still the same dinner.
const LITTLE_LATE: TimeDelta = TimeDelta::minutes(90);

/// The conflict behind a failure, with everything that would do.
pub(super) fn conflict(
    order: &Order,
    facts: &[Fact],
    finish: Option<Finish>,
    now: Moment,
    failure: Failure,
) -> Conflict {
    let search = Search { order, facts, finish, now };
    let Failure { because, mut short_by } = failure;
    let mut offers = Vec::new();
    if !matches!(because.as_slice(), [Reason::DinnerPast | Reason::DinnerTooFar | Reason::DriveTooLong { .. }]) {
        if let Some((dinner, missing)) = search.other_dinner() {
            offers.extend(search.offer(Change::Dinner(dinner)));
            short_by = missing;
        }
        for change in search.candidates().into_iter().chain(search.dishes()) {
            offers.extend(search.offer(change));
        }
        offers.extend(search.later());
        offers.extend(search.hotter());
        offers.extend(search.smaller());
    }
    // Time in the fridge is only worth a word if it spares changes of water.
    let changes = |offer: &Offer| offer.schedule.count(Step::Water);
    let whole = offers.iter().find(|offer| offer.change == Change::ColdWater).map(changes);
    offers.retain(|offer| offer.change != Change::FinishInWater || whole.is_none_or(|whole| changes(offer) < whole));
    offers.sort_by_key(|offer| offer.cost);
    Conflict { because, short_by, offers }
}

/// The hottest setting offered for a cooker. Common practice, no source.
pub fn hottest(cooker: Cooker) -> Temperature {
    fahrenheit(if cooker == Cooker::Smoker { SMOKER_TOP_F } else { OVEN_TOP_F })
}

/// What is tried around one order.
struct Search<'a> {
    order: &'a Order,
    facts: &'a [Fact],
    finish: Option<Finish>,
    now: Moment,
}

impl Search<'_> {
    /// The change as an offer, if it solves everything.
    fn offer(&self, change: Change) -> Option<Offer> {
        let facts: Vec<Fact> = self.facts.iter().filter(|fact| change.keeps(fact.step)).copied().collect();
        let schedule = super::attempt(&change.apply(self.order), &facts, self.finish, self.now).ok()?;
        if change == Change::Freeze && !self.freezes_through(&schedule) {
            return None;
        }
        let odd = schedule.cautions.iter().filter(|caution| matches!(caution, Caution::OddHours(_))).count();
        let cost = change.cost(self.order, &schedule) + ODD_HOURS_COST * u32::try_from(odd).unwrap_or(0);
        Some(Offer { change, cost, schedule })
    }

    /// Whether it is left frozen long enough before it thaws.
    fn freezes_through(&self, schedule: &Schedule) -> bool {
        schedule.job(Step::Thaw, 0).is_some_and(|thaw| thaw.at - self.now >= spans::FREEZING)
    }

    fn past(&self) -> Past<'_> {
        Past::new(self.order, self.facts)
    }

    fn not_yet(&self, step: Step) -> bool {
        let past = self.past();
        past.passed(step, 0).is_none() && !past.overtaken(step, 0)
    }

    /// The dinner hour nearest to the one wished at which everything fits, and how far the bare minimum is away.
    fn other_dinner(&self) -> Option<(Moment, TimeDelta)> {
        let mut network = Network::build(self.order, self.past(), self.finish, self.now).ok()?;
        if network.known(SERVE) != Known::Open {
            return None;
        }
        network.free_dinner();
        super::seating::seat(&mut network).ok()?;
        let window = *network.stn().solve().ok()?.get(SERVE)?;
        let quarter = TimeDelta::minutes(15);
        let earliest = window.earliest.map_or(self.now, |at| network.moment(at));
        if earliest > self.order.dinner {
            let soonest = clock::ceil(earliest, quarter);
            return Some((
                self.polite(soonest, window.latest.map(|at| network.moment(at))),
                earliest - self.order.dinner,
            ));
        }
        let latest = network.moment(window.latest?);
        (latest < self.order.dinner).then(|| (clock::floor(latest, quarter), self.order.dinner - latest))
    }

    /// `soonest`, or the wished hour on the first day that allows it when `soonest` is no hour for a dinner.
    fn polite(&self, soonest: Moment, latest: Option<Moment>) -> Moment {
        let zone = self.order.zone;
        let time = |at: Moment| at.with_timezone(&zone).time();
        let hour = |hour| NaiveTime::from_hms_opt(hour, 0, 0).unwrap_or(NaiveTime::MIN);
        let usual = hour(DINNER_HOURS.0)..=hour(DINNER_HOURS.1);
        // A little late is better than tomorrow; and a bird on the heat doesn't wait for tomorrow.
        let cooking = self.facts.iter().any(|fact| fact.step == Step::On && fact.done);
        if cooking || soonest - self.order.dinner <= LITTLE_LATE {
            return soonest;
        }
        let on_the_day = clock::date(zone, soonest) == clock::date(zone, self.order.dinner);
        if on_the_day && usual.contains(&time(soonest)) {
            return soonest;
        }
        let mut day = clock::date(zone, soonest);
        for _ in 0..2 {
            let same_hour = clock::instant(zone, day.and_time(time(self.order.dinner)));
            if same_hour >= soonest && latest.is_none_or(|latest| same_hour <= latest) {
                return same_hour;
            }
            let Some(next) = day.succ_opt() else { break };
            day = next;
        }
        soonest
    }

    /// Changes without a number in them, those that can still be made.
    fn candidates(&self) -> Vec<Change> {
        let order = self.order;
        let thaw_open = order.bird.condition != Condition::Fresh && self.not_yet(Step::Thaw);
        let past = self.past();
        let frozen = order.bird.condition != Condition::Fresh && !past.is_beyond(Step::Water);
        let begun = frozen && past.done(Step::Thaw, 0).is_some() && past.last_done(Step::Water).is_none();
        let raw = self.not_yet(Step::On);
        let salts = order.salting != Salting::None && self.not_yet(Step::Salt);
        let in_oven = order.heat.cooker != Cooker::Smoker;
        let there =
            raw && order.bird.condition == Condition::Fresh && (order.at_home || past.done(Step::Buy, 0).is_some());
        let flattens = matches!(order.bird.kind, Kind::Turkey | Kind::Chicken | Kind::Capon | Kind::Duck);
        let whole = order.bird.form == Form::Whole;
        [
            (Change::ShorterRest, raw && salts && !order.short_rest),
            (Change::NoSalt, raw && salts),
            (Change::ColdWater, raw && thaw_open && order.thawing != Thawing::ColdWater),
            (
                Change::FinishInWater,
                raw && order.thawing != Thawing::FridgeThenWater
                    && (thaw_open || begun && order.thawing == Thawing::Fridge),
            ),
            (Change::FridgeThaw, raw && thaw_open && order.thawing != Thawing::Fridge),
            (Change::CookFrozen, raw && frozen && in_oven && order.thawing != Thawing::CookFrozen),
            (Change::Flat, raw && flattens && whole && !order.bird.stuffed),
            (Change::Unstuffed, raw && order.bird.stuffed),
            (Change::CookAhead, raw && !order.cooks_ahead() && order.carry.is_none()),
            (Change::CarryCold, raw && order.carries_hot()),
            (Change::BuyFresh, thaw_open && !order.at_home && self.not_yet(Step::Buy)),
            (Change::BuyLater, there),
            (Change::Freeze, there && !past.is_beyond(Step::Thaw)),
        ]
        .into_iter()
        .filter_map(|(change, applies)| applies.then_some(change))
        .collect()
    }

    /// What can be done with the dishes that are still to be made.
    fn dishes(&self) -> Vec<Change> {
        let open = |place: &u8| self.past().done(Step::Dish, *place).is_none();
        let places: Vec<u8> = self.order.dishes.iter().map(|(place, _)| place).filter(open).collect();
        let cooks = |place: &&u8| {
            self.order.dishes.get(**place).is_some_and(|dish| dish.heat != DishHeat::None && dish.cold().is_none())
        };
        let ways = |place: &u8| {
            let beside = self.order.dishes.get(*place).is_some_and(|dish| dish.heat.setting().is_some());
            let beside = beside.then_some(Change::DishBeside(*place));
            beside.into_iter().chain([Change::DishEarly(*place), Change::DishAhead(*place)])
        };
        let own = places.iter().filter(cooks).flat_map(ways);
        let cold = self.chilled().into_iter().map(|(place, _)| Change::DishCooler(place));
        own.chain(cold).chain(places.iter().map(|place| Change::DishOut(*place))).collect()
    }

    /// The dishes still to be made that take room in a fridge known to be small.
    fn chilled(&self) -> Vec<(u8, Dish)> {
        let open = |place: u8| self.past().done(Step::Dish, place).is_none();
        let all = self.order.dishes.iter().filter(|_| self.order.shelves.is_some());
        all.filter(|(place, dish)| dish.in_fridge() > 0 && open(*place)).collect()
    }

    /// For each of them the longest shorter time in the fridge that does. What was hot has to be cold through.
    fn later(&self) -> Vec<Offer> {
        let shorter = |place: u8, dish: Dish| {
            let told = dish.cold()?.least;
            let least = if dish.heat == DishHeat::None { COLD_SHORTEST } else { spans::COLD_THROUGH };
            let stays = COLD_HOURS.into_iter().map(TimeDelta::hours).filter(|stay| *stay >= least);
            let mut stays = stays.filter(|stay| dish.ahead || *stay < told);
            stays.find_map(|stay| self.offer(Change::DishLater(place, stay)))
        };
        self.chilled().into_iter().filter_map(|(place, dish)| shorter(place, dish)).collect()
    }

    /// The least hotter setting that does.
    fn hotter(&self) -> Option<Offer> {
        // Cooking under way at the old setting is no longer as quick as the new one's timetable.
        if self.past().passed(Step::On, 0).is_some_and(|on| self.now - on > TimeDelta::minutes(20))
            || self.finish.is_some()
        {
            return None;
        }
        let top = in_fahrenheit(hottest(self.order.heat.cooker)) + 1e-9;
        let mut setting = (in_fahrenheit(self.order.heat.setting) / HOTTER_STEP_F + 1.0 - 1e-9).floor() * HOTTER_STEP_F;
        while setting <= top {
            if let Some(offer) = self.offer(Change::Hotter(fahrenheit(setting))) {
                return Some(offer);
            }
            setting += HOTTER_STEP_F;
        }
        None
    }

    /// The biggest smaller bird that does, if it still feeds everyone, and two of half the mass.
    fn smaller(&self) -> Vec<Offer> {
        let order = self.order;
        if order.at_home || !self.not_yet(Step::Buy) {
            return Vec::new();
        }
        let lb = in_pounds(order.bird.mass.get());
        let least = in_pounds(order.bird.kind.usual_mass().low);
        let try_mass = |share: f64| {
            let lb = (lb * share * 2.0).floor() / 2.0;
            (lb >= least).then(|| BirdMass::new(pounds(lb)).ok()).flatten()
        };
        let smaller = [0.9, 0.8, 0.7, 0.6, 0.5]
            .into_iter()
            .filter_map(try_mass)
            .filter(|mass| self.feeds_all(*mass))
            .find_map(|mass| self.offer(Change::SmallerBird(mass)));
        let two = try_mass(0.5).and_then(|mass| self.offer(Change::TwoBirds(mass)));
        smaller.into_iter().chain(two).collect()
    }

    fn feeds_all(&self, mass: BirdMass) -> bool {
        let diners = self.order.diners;
        let heads = u32::from(diners.adults) + u32::from(diners.children).div_ceil(2);
        let people = feeds(self.order.bird.kind, mass, Leftovers::None).people.high;
        u32::from(people) * u32::from(self.order.birds.max(1)) >= heads
    }
}
