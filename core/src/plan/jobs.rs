//! From placed points to jobs with their windows and reasons, and what the host should know and have.

use super::method::Salted;
use super::network::{
    BUY, CARVE, CHILL, FIRE, FRIDGE, Known, Network, ON, PACK, READY, REHEAT, SALT, SERVE, TEMPER, THAW, TRAVEL,
};
use super::order::Way;
use super::place::Placed;
use super::stn::Point;
use super::{Caution, ColdPlace, Dish, Finish, Job, Moment, Need, Reason, Schedule, Step, Thawing, clock, spans};
use crate::bird::Condition;
use crate::roast::Cooker;
use crate::safety::{self, Food, Jurisdiction, Keep, Place};
use crate::thaw;
use chrono::TimeDelta;
use chrono_tz::Tz;

/// Hour at which the leftovers' last day is called. Common practice, no source.
const LEFTOVERS_HOUR: (u32, u32) = (12, 0);

/// The schedule of a placed network.
pub(super) fn schedule(network: &Network<'_>, placed: &Placed) -> Schedule {
    let finish = finish(network, placed);
    let mut list = List { network, placed, finish, jobs: Vec::with_capacity(32) };
    list.before_the_heat();
    list.over_the_heat();
    match network.order.way() {
        Way::Here => list.same_day(),
        Way::Hot => list.hot_road(),
        Way::Ahead => list.ahead(),
    }
    list.after_dinner();
    list.dishes();
    let mut jobs = list.jobs;
    jobs.sort_by_key(|job| (job.at, job.step, job.nth));
    let salted_rest = matches!(network.salted, Salted::Dry | Salted::Wet)
        .then(|| network.is_present(SALT).then(|| placed.at(ON) - placed.at(SALT)))
        .flatten();
    Schedule {
        cautions: cautions(network, &jobs, &finish, placed, salted_rest),
        needs: needs(network),
        spare: spare(network, placed),
        thawing: network.thaw.map(|thaw| thaw.way),
        cooking: network.cooking,
        finish,
        salted_rest,
        jobs,
    }
}

/// When it comes off the heat.
fn finish(network: &Network<'_>, placed: &Placed) -> Finish {
    if let Known::At(at) = network.known(READY) {
        return Finish { p10: at, p50: at, p90: at };
    }
    let now = network.now;
    match network.forecast {
        Some(finish) => Finish { p10: finish.p10.max(now), p50: finish.p50.max(now), p90: finish.p90.max(now) },
        None => {
            let on = placed.at(ON);
            let cooking = network.cooking;
            Finish {
                p10: (on + cooking.p10).max(now),
                p50: (on + cooking.p50).max(now),
                p90: placed.at(READY).max(now),
            }
        }
    }
}

/// Time left over even when it takes as long as one in ten do.
fn spare(network: &Network<'_>, placed: &Placed) -> TimeDelta {
    let last_steps = spans::STAND_LEAST + spans::CARVING_LEAST;
    let done = placed.at(READY) + last_steps;
    let needed = match (network.order.way(), network.order.carry) {
        (Way::Hot, _) => return (placed.at(PACK) - placed.at(READY)).max(TimeDelta::zero()),
        (Way::Ahead, Some(_)) => placed.at(PACK) - spans::COLD_THROUGH,
        (Way::Ahead, None) => placed.at(REHEAT) - spans::COLD_THROUGH,
        (Way::Here, _) => placed.at(SERVE),
    };
    (needed - done).max(TimeDelta::zero())
}

struct List<'a, 'b> {
    network: &'b Network<'a>,
    placed: &'b Placed,
    finish: Finish,
    jobs: Vec<Job>,
}

impl List<'_, '_> {
    /// A job at a point of the network.
    fn point(&mut self, step: Step, point: Point, lasts: TimeDelta, reasons: &[Reason]) {
        let (earliest, latest) = self.placed.window(point);
        let nth = if point == PACK { self.network.pack_nth() } else { 0 };
        self.job(step, nth, self.placed.at(point), lasts, (earliest, latest), reasons);
    }

    /// Any job: left out when skipped or overtaken, at its real time when done.
    fn job(&mut self, step: Step, nth: u8, at: Moment, lasts: TimeDelta, window: (Moment, Moment), reasons: &[Reason]) {
        let past = self.network.past;
        if let Some(at) = past.done(step, nth) {
            let reasons = vec![Reason::Done];
            self.jobs.push(Job { step, nth, at, lasts, earliest: at, latest: at, done: true, reasons });
        } else if !past.skipped(step, nth) && !past.overtaken(step, nth) {
            let at = at.max(self.network.now);
            let earliest = window.0.max(self.network.now).min(at);
            let latest = window.1.max(at);
            self.jobs.push(Job { step, nth, at, lasts, earliest, latest, done: false, reasons: reasons.to_vec() });
        }
    }

    fn before_the_heat(&mut self) {
        let (network, placed) = (self.network, self.placed);
        let on = placed.at(ON);
        if network.is_present(BUY) {
            let fresh = network.order.bird.condition == Condition::Fresh;
            let keeps = [Reason::RawKeeps { most: spans::RAW_KEEPS }, Reason::Sociable];
            self.point(Step::Buy, BUY, spans::BRING_HOME, if fresh { &keeps } else { &keeps[1..] });
        }
        self.thawing();
        if network.is_present(SALT) {
            self.salting();
        }
        if network.is_present(TEMPER) {
            let reasons = [Reason::Temper { about: spans::TEMPER }, Reason::RoomTemperature { most: spans::ROOM_MOST }];
            self.point(Step::Temper, TEMPER, (on - placed.at(TEMPER)).max(TimeDelta::zero()), &reasons);
        }
        if network.is_present(FIRE) {
            let hot = Reason::Preheat { cooker: network.order.heat.cooker, least: network.heats().1 };
            self.point(Step::Fire, FIRE, (on - placed.at(FIRE)).max(TimeDelta::zero()), &[hot]);
        }
    }

    fn thawing(&mut self) {
        let network = self.network;
        if network.thaw.is_none_or(|thaw| thaw.nth > 0) {
            for (nth, at) in network.past.all_done(Step::Thaw).into_iter().filter(|(nth, _)| *nth == 0) {
                self.job(Step::Thaw, nth, at, TimeDelta::zero(), (at, at), &[]);
            }
        }
        let Some(thaw) = network.thaw.filter(|_| network.is_present(THAW)) else { return };
        let why = network.thaw_reason();
        if thaw.way != Thawing::ColdWater {
            let keeps = Reason::ThawedKeeps { most: spans::THAWED_KEEPS };
            return self.point(Step::Thaw, THAW, thaw.most, &[why, keeps, Reason::Sociable]);
        }
        if let Some(before) = thaw.before.filter(|_| network.is_open(FRIDGE)) {
            let lasts = (self.placed.at(THAW) - self.placed.at(FRIDGE)).max(before.least);
            self.point(Step::Thaw, FRIDGE, lasts, &[Network::fridge_reason(&before), Reason::Sociable]);
        }
        let window = self.placed.window(THAW);
        self.job(Step::Thaw, thaw.nth, self.placed.at(THAW), thaw.most, window, &[why, Reason::CookAtOnce]);
        let start = self.placed.at(THAW);
        let every = thaw::WATER_CHANGE_EVERY;
        let end = start + thaw.most;
        for (nth, at) in network.past.all_done(Step::Water) {
            self.job(Step::Water, nth, at, spans::WATER_TAKES, (at, at), &[]);
        }
        let (mut nth, last) = match network.past.last_done(Step::Water) {
            Some((nth, at)) => (nth.saturating_add(1), at),
            None => (0, start),
        };
        // Changes that were missed are one change now.
        let mut at = (last + every).max(network.now);
        while at < end && nth < u8::MAX {
            let window = (at - spans::WATER_TAKES, at);
            self.job(Step::Water, nth, at, spans::WATER_TAKES, window, &[Reason::WaterChange { every }]);
            nth += 1;
            at += every;
        }
        // What is thawed hours before the heat is taken out of the water.
        let out = network.past.last_done(Step::Water).is_none_or(|(_, at)| at < end);
        if network.waits_thawed() && out && nth < u8::MAX {
            self.job(Step::Water, nth, end, spans::WATER_TAKES, (end, end), &[why]);
        }
    }

    fn salting(&mut self) {
        let (network, placed) = (self.network, self.placed);
        let least = network.rest_least();
        let most = Reason::SaltAtMost { most: spans::SALTED_MOST };
        match network.salted {
            Salted::No => {}
            Salted::AtOnce => self.point(Step::Salt, SALT, spans::WATER_TAKES, &[Reason::CookAtOnce]),
            Salted::Dry | Salted::Wet => {
                let wants = match network.salted {
                    Salted::Wet => Reason::BrineWants { least },
                    _ => Reason::SaltWants { least },
                };
                self.point(Step::Salt, SALT, spans::SALTING, &[wants, most, Reason::Sociable]);
                self.rest(placed.at(SALT) + spans::SALTING, &[wants, most]);
            }
        }
    }

    /// The salted rest starts by itself when the salting is done.
    fn rest(&mut self, start: Moment, reasons: &[Reason]) {
        let (network, placed) = (self.network, self.placed);
        let end = if network.is_present(TEMPER) { placed.at(TEMPER) } else { placed.at(ON) };
        let lasts = (end - start).max(TimeDelta::zero());
        let running = network.past.done(Step::Salt, 0).is_some() && start <= network.now;
        if running && network.past.done(Step::Rest, 0).is_none() && !network.past.overtaken(Step::Rest, 0) {
            let reasons = vec![Reason::Done];
            let job =
                Job { step: Step::Rest, nth: 0, at: start, lasts, earliest: start, latest: start, done: true, reasons };
            return self.jobs.push(job);
        }
        let (earliest, latest) = placed.window(SALT);
        self.job(Step::Rest, 0, start, lasts, (earliest + spans::SALTING, latest + spans::SALTING), reasons);
    }

    fn over_the_heat(&mut self) {
        let (network, placed) = (self.network, self.placed);
        let cooking = network.cooking;
        let time = match network.forecast {
            Some(_) => Reason::Forecast,
            None => network.cooking_reason(),
        };
        if network.is_present(ON) {
            self.point(Step::On, ON, cooking.p50, &[time, Reason::Dinner]);
        }
        self.checks(placed.at(ON));
        let finish = self.finish;
        let pull = round(finish.p50, finish.p10, finish.p90);
        self.job(Step::Pull, 0, pull, spans::PULLING, (finish.p10, finish.p90), &[time]);
    }

    /// A look at two thirds of the expected time, then when one in ten is done, and just before half are.
    fn checks(&mut self, on: Moment) {
        let network = self.network;
        for (nth, at) in network.past.all_done(Step::Check) {
            self.job(Step::Check, nth, at, spans::CHECKING, (at, at), &[]);
        }
        let finish = self.finish;
        let whole = finish.p50 - on;
        let mut last = on;
        let wanted = [on + whole * 2 / 3, finish.p10, finish.p10 + (finish.p50 - finish.p10) * 2 / 3];
        for (nth, at) in (0_u8..).zip(wanted) {
            let at = clock::floor(at, TimeDelta::minutes(5)).max(on + spans::CHECKING);
            let early = at - last < CHECK_APART && nth > 0;
            let over = at < network.now || network.past.last_done(Step::Check).is_some_and(|(done, _)| done >= nth);
            if early || over || at >= finish.p90 {
                continue;
            }
            last = at;
            self.job(Step::Check, nth, at, spans::CHECKING, (on, finish.p90), &[Reason::CheckBefore]);
        }
    }

    fn same_day(&mut self) {
        let placed = self.placed;
        let (finish, carve) = (self.finish, placed.at(CARVE));
        self.stand(carve - spans::STAND_LEAST);
        let lasts = (placed.at(SERVE) - carve).max(spans::CARVING_LEAST);
        let (_, latest) = placed.window(CARVE);
        self.job(
            Step::Carve,
            0,
            carve,
            lasts,
            (finish.p10 + spans::STAND_LEAST, latest),
            &[Reason::Stand { least: spans::STAND_LEAST }, Reason::Carving { about: spans::CARVING }],
        );
    }

    /// It stands in its wrapping, on the road.
    fn hot_road(&mut self) {
        let (network, placed, finish) = (self.network, self.placed, self.finish);
        let Some(carry) = network.order.carry else { return };
        let carve = placed.at(CARVE);
        self.stand(carve - spans::STAND_LEAST);
        let road = Reason::HotRoad { most: spans::HOT_ROAD };
        if network.is_present(PACK) {
            self.point(Step::Pack, PACK, spans::PACKING, &[road]);
        }
        if network.is_present(TRAVEL) {
            self.point(Step::Travel, TRAVEL, carry.drive, &[Reason::Drive { takes: carry.drive }, road]);
        }
        let lasts = (placed.at(SERVE) - carve).max(spans::CARVING_LEAST);
        let window = (finish.p10 + spans::STAND_LEAST, placed.window(CARVE).1);
        self.job(Step::Carve, 0, carve, lasts, window, &[road, Reason::Carving { about: spans::CARVING }]);
    }

    /// The stand starts by itself with the pull and ends with carving.
    fn stand(&mut self, latest: Moment) {
        let finish = self.finish;
        let pull = self.pull_at();
        let carve = if self.network.order.cooks_ahead() { pull + spans::STAND } else { self.placed.at(CARVE) };
        let lasts = (carve - pull).max(spans::STAND_LEAST);
        let reasons = [Reason::Stand { least: spans::STAND_LEAST }, Reason::HotHold { most: spans::HOT_MOST }];
        if let Known::At(at) = self.network.known(READY)
            && self.network.past.done(Step::Stand, 0).is_none()
            && !self.network.past.overtaken(Step::Stand, 0)
            && !self.network.past.skipped(Step::Stand, 0)
            && at <= self.network.now
        {
            let reasons = reasons.to_vec();
            let job = Job { step: Step::Stand, nth: 0, at, lasts, earliest: at, latest: at, done: true, reasons };
            return self.jobs.push(job);
        }
        self.job(Step::Stand, 0, pull, lasts, (finish.p10, latest), &reasons);
    }

    fn pull_at(&self) -> Moment {
        round(self.finish.p50, self.finish.p10, self.finish.p90)
    }

    fn ahead(&mut self) {
        let (network, placed, finish) = (self.network, self.placed, self.finish);
        let pull = self.pull_at();
        self.stand(placed.window(CARVE).1);
        let carve = match network.known(CARVE) {
            Known::At(at) => at,
            _ => pull + spans::STAND,
        };
        let carving = Reason::Carving { about: spans::CARVING };
        let window = (finish.p10 + spans::STAND_LEAST, placed.window(CARVE).1);
        self.job(Step::Carve, 0, carve, spans::CARVING, window, &[carving]);
        let two_hours = Reason::TwoHours { most: spans::FRIDGE_WITHIN };
        let window = (finish.p10 + spans::STAND_LEAST + spans::CARVING_LEAST, pull + spans::FRIDGE_WITHIN);
        self.job(Step::Chill, 0, carve + spans::CARVING, spans::CHILLING, window, &[two_hours]);
        if let Some(carry) = network.order.carry {
            let cold = Reason::ColdThrough { least: spans::COLD_THROUGH };
            self.point(Step::Pack, PACK, spans::PACKING, &[cold, Reason::PackedCold { most: spans::PACKED_MOST }]);
            self.point(Step::Travel, TRAVEL, carry.drive, &[Reason::Drive { takes: carry.drive }]);
        }
        let reasons = [Reason::Reheat { about: spans::REHEATING }, Reason::ReheatWithin { most: spans::REHEAT_MOST }];
        let lasts = (placed.at(SERVE) - placed.at(REHEAT)).max(TimeDelta::zero());
        self.point(Step::Reheat, REHEAT, lasts, &reasons);
    }

    /// What else is on the table.
    fn dishes(&mut self) {
        let (network, placed) = (self.network, self.placed);
        for (place, dish) in network.order.dishes.iter() {
            let point = network.dish(place);
            if !network.is_present(point) {
                continue;
            }
            let why = match dish.cold() {
                Some(cold) => dish.cold_reason(place, cold),
                None => Reason::DishHot { dish: place, most: dish.waits() },
            };
            self.job(Step::Dish, place, placed.at(point), dish.takes, placed.window(point), &[why]);
        }
    }

    /// Dinner, the fridge within two hours, the leftovers' last day.
    fn after_dinner(&mut self) {
        let (network, placed) = (self.network, self.placed);
        let ahead = network.order.cooks_ahead();
        self.point(Step::Serve, SERVE, spans::DINNER, &[Reason::Dinner]);
        // The two hours count from carving, or from the table when it was reheated.
        // Carried hot nobody knows how long it was hot: they count from leaving the heat.
        let hot_until = match network.order.way() {
            Way::Here => placed.at(CARVE),
            Way::Hot => placed.at(PACK),
            Way::Ahead => placed.at(SERVE),
        };
        let limit = hot_until + spans::FRIDGE_WITHIN;
        let chill = (placed.at(SERVE) + spans::DINNER).min(limit).max(placed.at(SERVE));
        let nth = u8::from(ahead);
        let two_hours = Reason::TwoHours { most: spans::FRIDGE_WITHIN };
        self.job(Step::Chill, nth, chill, spans::CHILLING, (placed.at(SERVE), limit.max(chill)), &[two_hours]);

        let cooked = if ahead { placed.at(CHILL) } else { chill };
        let cooked = network.past.done(Step::Chill, 0).unwrap_or(cooked);
        let zone = network.order.zone;
        let (planned, most) = cooked_keeps(zone);
        let last_day = clock::date(zone, cooked + planned);
        let (hour, minute) = LEFTOVERS_HOUR;
        let at = clock::at_hour(zone, last_day, hour, minute).max(chill);
        let window = (chill, cooked + most);
        let keeps = Reason::CookedKeeps { most };
        self.job(Step::Leftovers, 0, at, TimeDelta::zero(), window, &[keeps]);
    }
}

/// How long leftovers keep where the kitchen is: as long as is counted on, and at most.
fn cooked_keeps(zone: Tz) -> (TimeDelta, TimeDelta) {
    let there = safety::keeps(Food::Leftovers, Place::Fridge, Jurisdiction::of_zone(zone)).map(|keeping| keeping.keep);
    match there {
        Some(Keep::Days(days)) => (TimeDelta::days(i64::from(days.low)), TimeDelta::days(i64::from(days.high))),
        _ => (spans::COOKED_PLANNED, spans::COOKED_KEEPS),
    }
}

/// Looks are at least this far apart.
const CHECK_APART: TimeDelta = TimeDelta::minutes(15);

/// To five minutes, within its window.
fn round(at: Moment, earliest: Moment, latest: Moment) -> Moment {
    if earliest == latest { at } else { clock::floor(at, TimeDelta::minutes(5)).max(earliest).min(latest) }
}

fn cautions(
    network: &Network<'_>,
    jobs: &[Job],
    finish: &Finish,
    placed: &Placed,
    salted_rest: Option<TimeDelta>,
) -> Vec<Caution> {
    let mut cautions = network.cautions.clone();
    let wanted = if network.salted == Salted::Dry { spans::DRY_WANTED } else { spans::WET_WANTED };
    if let Some(rest) = salted_rest
        && rest < wanted
        && network.is_open(ON)
    {
        cautions.push(Caution::ShortRest(rest));
    }
    if network.order.way() == Way::Hot && network.is_open(PACK) {
        let wait = placed.at(PACK) - finish.p10;
        if placed.at(SERVE) - finish.p10 > spans::HOT_ROAD && wait > TimeDelta::zero() {
            cautions.push(Caution::HotTillPacked(wait));
        }
        if network.order.bird.stuffed {
            cautions.push(Caution::StuffingOut);
        }
    }
    if network.order.way() == Way::Here && network.is_open(CARVE) {
        let wait = placed.at(CARVE) - finish.p10;
        if wait > spans::HOT_MOST {
            cautions.push(Caution::KeepHot(wait));
        }
    }
    if network.order.cooks_ahead() && network.order.bird.stuffed {
        cautions.push(Caution::StuffingApart);
    }
    for job in jobs.iter().filter(|job| !job.done && job.step.needs_hands()) {
        // The move into the water belongs to the water: it is no start of thawing to anyone.
        let step = if job.step == Step::Thaw && job.nth > 0 { Step::Water } else { job.step };
        let odd = Caution::OddHours(step);
        if !clock::is_sociable(network.order.zone, job.at) && !cautions.contains(&odd) {
            cautions.push(odd);
        }
        let night = Caution::AtNight(step);
        if clock::is_night(network.order.zone, job.at) && !cautions.contains(&night) {
            cautions.push(night);
        }
    }
    cautions
}

fn needs(network: &Network<'_>) -> Vec<Need> {
    let order = network.order;
    let in_water = network.thaw.is_some_and(|thaw| thaw.way == Thawing::ColdWater);
    [
        (Need::Bird, network.is_open(BUY)),
        (Need::Thermometer, true),
        (Need::Salt, network.salted != Salted::No),
        (Need::Rack, true),
        (Need::Bag, in_water),
        (Need::BrineVessel, network.salted == Salted::Wet),
        (Need::Fuel, order.heat.cooker == Cooker::Smoker),
        (Need::Foil, true),
        (Need::ShallowDishes, true),
        (Need::Cooler, order.carry.is_some() && order.cooks_ahead() || order.dishes.iter().any(iced)),
        (Need::HotBox, order.carries_hot()),
        (Need::Broth, order.cooks_ahead()),
    ]
    .into_iter()
    .filter_map(|(need, wanted)| wanted.then_some(need))
    .collect()
}

fn iced((_, dish): (u8, Dish)) -> bool {
    dish.cold().is_some_and(|cold| cold.place == ColdPlace::Cooler)
}
