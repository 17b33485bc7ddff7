//! The windows of one order: which points there are, what is known of them, and the constraints between them.
//!
//! Start at [`Network::build`]. What comes after dinner is not here: it follows from it and can't stand in its way.

use super::method::{Before, Salted, Thawed, in_water_since, salted_of, thaw_of};
use super::order::Way;
use super::past::Past;
use super::place::{last_on, wanted_on};
use super::stn::{Constraint, Cycle, ORIGIN, Point, Stn};
use super::{Caution, Failure, Finish, MOST_DISHES, Moment, Order, Reason, Step, Thawing, clock, spans};
use crate::bird::Condition;
use crate::roast::{self, Cooker, Estimate, Spread};
use crate::source::Source;
use chrono::TimeDelta;

pub(super) const BUY: Point = 1;
pub(super) const THAW: Point = 2;
/// Thawed through, as planned.
pub(super) const THAWED: Point = 3;
pub(super) const SALT: Point = 4;
pub(super) const TEMPER: Point = 5;
pub(super) const FIRE: Point = 6;
pub(super) const ON: Point = 7;
/// Off the heat even if it takes as long as one in ten do.
pub(super) const READY: Point = 8;
pub(super) const CARVE: Point = 9;
/// In the fridge after cooking ahead.
pub(super) const CHILL: Point = 10;
pub(super) const PACK: Point = 11;
pub(super) const TRAVEL: Point = 12;
pub(super) const REHEAT: Point = 13;
pub(super) const SERVE: Point = 14;
/// Into the fridge, when cold water is to finish the thawing: then [`THAW`] is the move into the water.
pub(super) const FRIDGE: Point = 15;
pub(super) const POINTS: usize = 16;

/// A point as far as it is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Known {
    /// Not part of this plan (any more).
    Absent,
    /// Still to come.
    Open,
    /// It was then.
    At(Moment),
}

/// One order's network.
#[derive(Debug)]
pub(super) struct Network<'a> {
    pub order: &'a Order,
    pub past: Past<'a>,
    pub now: Moment,
    pub thaw: Option<Thawed>,
    pub salted: Salted,
    pub cooking: Spread,
    /// Where the cooking time comes from.
    pub cooking_source: Source,
    /// The forecast, if it counts.
    pub forecast: Option<Finish>,
    pub cautions: Vec<Caution>,
    known: Vec<Known>,
    stn: Stn<Reason>,
}

impl<'a> Network<'a> {
    /// The network of `order` as of `now`.
    pub fn build(order: &'a Order, past: Past<'a>, finish: Option<Finish>, now: Moment) -> Result<Self, Failure> {
        check(order, past, now)?;
        let estimate = estimate(order)?;
        let past = if dinner_is_over(order, past, &estimate.spread, finish, now) { past.served() } else { past };
        let thaw = thaw_of(order, past, now, &estimate.spread);
        let on = past.passed(Step::On, 0).is_some();
        let mut network = Self {
            order,
            past,
            now,
            thaw,
            salted: salted_of(order, past, thaw),
            cooking: estimate.spread,
            cooking_source: estimate.source,
            forecast: finish.filter(|_| on && past.passed(Step::Pull, 0).is_none()),
            cautions: estimate.cautions.into_iter().map(Caution::Cooking).collect(),
            known: vec![Known::Absent; POINTS + MOST_DISHES],
            stn: Stn::new(POINTS + MOST_DISHES),
        };
        network.know();
        network.before_the_heat();
        network.over_the_heat();
        match order.way() {
            Way::Here => network.same_day(),
            Way::Hot => network.hot_road(),
            Way::Ahead => network.ahead(),
        }
        Ok(network)
    }

    /// The constraints.
    pub fn stn(&self) -> &Stn<Reason> {
        &self.stn
    }

    /// The point at which the dish of that place is begun.
    pub fn dish(&self, place: u8) -> Point {
        POINTS + usize::from(place)
    }

    /// How many points there are, the origin among them.
    pub fn points(&self) -> usize {
        self.known.len()
    }

    /// How many constraints there are.
    pub fn len(&self) -> usize {
        self.stn.constraints().len()
    }

    /// Adds a constraint.
    pub fn add(&mut self, constraint: Constraint<Reason>) {
        self.stn.add(constraint);
    }

    /// Takes the newest constraints away until `len` are left.
    pub fn truncate(&mut self, len: usize) {
        self.stn.truncate(len);
    }

    /// Lets dinner be at any hour: when could it be?
    pub fn free_dinner(&mut self) {
        self.stn.relax(|constraint| constraint.why != Reason::Dinner);
    }

    pub fn known(&self, point: Point) -> Known {
        self.known[point]
    }

    /// Seconds from now.
    pub fn seconds(&self, at: Moment) -> i64 {
        (at - self.now).num_seconds()
    }

    /// The moment so many seconds from now.
    pub fn moment(&self, seconds: i64) -> Moment {
        self.now + TimeDelta::seconds(seconds)
    }

    pub fn is_present(&self, point: Point) -> bool {
        self.known[point] != Known::Absent
    }

    pub fn is_open(&self, point: Point) -> bool {
        self.known[point] == Known::Open
    }

    /// Preferred and least time for the cooker to get hot.
    pub fn heats(&self) -> (TimeDelta, TimeDelta) {
        heats(self.order.heat.cooker)
    }

    /// Least salted rest that this order takes.
    pub fn rest_least(&self) -> TimeDelta {
        // A plan under way shortens its rest by itself rather than upset the dinner.
        let short = self.order.short_rest || self.past.begun();
        match (self.salted, short) {
            (Salted::Dry, false) => spans::DRY_WANTED,
            (Salted::Dry, true) => spans::DRY_SHORTEST,
            (Salted::Wet, false) => spans::WET_WANTED,
            (Salted::Wet, true) => spans::WET_SHORTEST,
            (Salted::No | Salted::AtOnce, _) => TimeDelta::zero(),
        }
    }

    /// It was put into the water so early that it is thawed hours before anyone wants it on: till then it is in the fridge. Common
    /// practice, no source: the authority has it cooked at once, so a plan that still has the choice never thaws it as early.
    pub fn waits_thawed(&self) -> bool {
        let in_water = self.thaw.is_some_and(|thaw| thaw.way == Thawing::ColdWater);
        let last = last_on(self.order, &self.cooking);
        let wanted = wanted_on(self.order, &self.cooking).min(last);
        // Cooked ahead, it goes on at an hour when people are up, if there is one.
        let by_day = |thawed: Moment| match self.order.way() {
            Way::Ahead => clock::sociable(self.order.zone, wanted, thawed.min(wanted), last),
            Way::Here | Way::Hot => wanted,
        };
        let early = |thawed: Moment| by_day(thawed) - thawed > spans::THAWED_EARLY;
        in_water && self.is_open(ON) && matches!(self.known[THAWED], Known::At(thawed) if early(thawed))
    }

    /// When cold water was to have thawed it, of a bird that is out to dry by now.
    pub fn out_of_water(&self) -> Option<Moment> {
        let thaw = self.thaw.filter(|thaw| thaw.way == Thawing::ColdWater && !self.waits_thawed())?;
        let out = matches!(self.known[TEMPER], Known::At(_)) && self.is_open(ON);
        match self.known[THAW] {
            Known::At(at) if out => Some(at + thaw.most),
            _ => None,
        }
    }

    /// Turns a proof that nothing fits into reasons a person can follow.
    pub fn failure(&self, cycle: Cycle<Reason>) -> Failure {
        let mut because: Vec<Reason> = Vec::new();
        for reason in cycle.reasons {
            if !because.contains(&reason) {
                because.push(reason);
            }
        }
        because.sort_by_key(|reason| reason.place());
        Failure { because, short_by: TimeDelta::seconds(cycle.short_by) }
    }

    /// What is known of each point.
    fn know(&mut self) {
        let order = self.order;
        let ahead = order.cooks_ahead();
        let thaws = self.thaw.is_some();
        let salts = self.salted != Salted::No;
        let frozen_on = order.thawing == Thawing::CookFrozen && order.bird.condition != Condition::Fresh;
        let points = [
            (BUY, Step::Buy, !order.at_home),
            (FRIDGE, Step::Thaw, self.thaw.is_some_and(|thaw| thaw.before.is_some())),
            (THAW, Step::Thaw, thaws),
            (SALT, Step::Salt, salts),
            (TEMPER, Step::Temper, !frozen_on),
            (FIRE, Step::Fire, true),
            (ON, Step::On, true),
            (READY, Step::Pull, true),
            (CARVE, Step::Carve, true),
            (CHILL, Step::Chill, ahead),
            (PACK, Step::Pack, order.carry.is_some()),
            (TRAVEL, Step::Travel, order.carry.is_some()),
            (REHEAT, Step::Reheat, ahead),
            (SERVE, Step::Serve, true),
        ];
        for (point, step, applies) in points {
            let nth = if point == PACK { self.pack_nth() } else { 0 };
            self.known[point] = match self.past.passed(step, nth) {
                _ if !applies => Known::Absent,
                Some(at) => Known::At(at),
                None if self.past.skipped(step, nth) || self.past.overtaken(step, nth) => Known::Absent,
                None => Known::Open,
            };
        }
        if self.past.is_served() && self.known[SERVE] == Known::Open {
            self.known[SERVE] = Known::At(order.dinner);
        }
        self.known[THAW] = self.thaw_start();
        // Thawing goes on by itself: known with its start, over once anything later has been done.
        self.known[THAWED] = match (self.known[THAW], self.thaw) {
            (Known::At(at), Some(thaw)) => Known::At(at + thaw.most),
            (Known::Open, Some(_)) => Known::Open,
            _ => Known::Absent,
        };
        if self.past.overtaken(Step::Rest, 0)
            || matches!(self.known[ON], Known::At(_))
            || self.past.overtaken(Step::On, 0)
        {
            self.known[THAWED] = Known::Absent;
        }
        for (place, _) in order.dishes.iter() {
            self.known[POINTS + usize::from(place)] = match self.past.done(Step::Dish, place) {
                Some(at) => Known::At(at),
                None if self.past.skipped(Step::Dish, place) || self.past.overtaken(Step::Dish, place) => Known::Absent,
                None => Known::Open,
            };
        }
        for point in 1..self.known.len() {
            match self.known[point] {
                Known::Open => self.stn.at_least(ORIGIN, point, 0, Reason::Now),
                Known::At(at) if point == THAWED => {
                    let at = self.seconds(at);
                    let why = self.thaw_reason();
                    self.stn.between(ORIGIN, point, at, at, why);
                }
                Known::At(at) => {
                    let at = self.seconds(at);
                    self.stn.between(ORIGIN, point, at, at, Reason::Done);
                }
                Known::Absent => {}
            }
        }
    }

    /// When thawing (or finishing it in water) starts or started. A change of water tells as well as a word.
    fn thaw_start(&self) -> Known {
        let Some(thaw) = self.thaw else { return Known::Absent };
        let begun = if thaw.way == Thawing::ColdWater { in_water_since(self.past, thaw.nth) } else { None };
        match begun.or_else(|| self.past.done(Step::Thaw, thaw.nth)) {
            Some(at) => Known::At(at),
            None if self.past.is_beyond(Step::Water) => Known::Absent,
            None => Known::Open,
        }
    }

    /// `from` to `to` takes between `least` and `most`, where both are part of the plan.
    ///
    /// Between two facts there is nothing to plan: there a broken limit becomes a caution.
    pub(super) fn rule(
        &mut self,
        from: Point,
        to: Point,
        least: Option<TimeDelta>,
        most: Option<TimeDelta>,
        why: Reason,
    ) {
        match (self.known[from], self.known[to]) {
            (Known::Absent, _) | (_, Known::Absent) => {}
            (Known::At(earlier), Known::At(later)) => {
                if most.is_some_and(|most| later - earlier > most) {
                    self.cautions.push(Caution::Overrun(why));
                }
            }
            _ => self.stn.add(Constraint {
                from,
                to,
                least: least.map(|span| span.num_seconds()),
                most: most.map(|span| span.num_seconds()),
                why,
            }),
        }
    }

    fn at_least(&mut self, from: Point, to: Point, least: TimeDelta, why: Reason) {
        self.rule(from, to, Some(least), None, why);
    }

    fn at_most(&mut self, from: Point, to: Point, most: TimeDelta, why: Reason) {
        self.rule(from, to, None, Some(most), why);
    }

    pub fn cooking_reason(&self) -> Reason {
        Reason::CookingTime { p10: self.cooking.p10, p90: self.cooking.p90, source: self.cooking_source }
    }

    /// Why it is in the fridge before the water.
    pub fn fridge_reason(before: &Before) -> Reason {
        Reason::FridgeShare { spent: before.least, whole: before.whole, source: before.source }
    }

    pub fn thaw_reason(&self) -> Reason {
        match self.thaw {
            Some(Thawed { way: Thawing::ColdWater, nth: 1.., most, .. }) => Reason::WaterFinish { most },
            Some(Thawed { way: Thawing::ColdWater, least, most, source, .. }) => {
                Reason::WaterThaw { least, most, source }
            }
            Some(Thawed { least, most, source, .. }) => Reason::FridgeThaw { least, most, source },
            None => Reason::Done,
        }
    }

    /// Shop, thawing, salt, out of the fridge.
    fn before_the_heat(&mut self) {
        let home = Reason::Follows { step: Step::Buy, takes: spans::BRING_HOME };
        if let Some(at) = self.order.shop_from.filter(|at| *at > self.now && self.is_open(BUY)) {
            let from = self.seconds(at);
            self.stn.at_least(ORIGIN, BUY, from, Reason::ShopFrom { at });
        }
        for next in [FRIDGE, THAW, SALT, TEMPER, ON] {
            self.at_least(BUY, next, spans::BRING_HOME, home);
        }
        if self.order.bird.condition == Condition::Fresh {
            self.keeping_raw();
        }
        if let Some(thaw) = self.thaw {
            self.thawing(thaw);
        }
        self.salting();
        self.at_least(TEMPER, ON, spans::TEMPER_LEAST, Reason::Temper { about: spans::TEMPER });
        self.at_most(TEMPER, ON, spans::ROOM_MOST, Reason::RoomTemperature { most: spans::ROOM_MOST });
        let (_, least) = self.heats();
        let hot = Reason::Preheat { cooker: self.order.heat.cooker, least };
        self.at_least(FIRE, ON, least, hot);
        if self.is_open(FIRE) {
            self.at_most(FIRE, ON, spans::FIRE_MOST, hot);
        }
    }

    /// A fresh bird keeps until the date on its pack, and once that is open, or where nobody told the date, for two days.
    fn keeping_raw(&mut self) {
        let keeps = Reason::RawKeeps { most: spans::RAW_KEEPS };
        if let Some(until) = self.order.use_by {
            if self.is_open(ON) {
                self.stn.at_most(ORIGIN, ON, self.seconds(until), Reason::UseBy { until });
            }
            return self.at_most(SALT, ON, spans::RAW_KEEPS, keeps);
        }
        // What is still to be bought leaves room for a fire lit late.
        let most = if self.is_open(BUY) { spans::RAW_KEEPS - spans::RAW_SLACK } else { spans::RAW_KEEPS };
        self.at_most(BUY, ON, most, keeps);
        if self.order.at_home && self.past.done(Step::Buy, 0).is_none() && self.is_open(ON) {
            self.stn.at_most(ORIGIN, ON, spans::RAW_KEEPS.num_seconds(), keeps);
        }
    }

    fn thawing(&mut self, thaw: Thawed) {
        let why = self.thaw_reason();
        if let Some(before) = thaw.before {
            if self.is_open(THAW) {
                self.at_least(FRIDGE, THAW, before.least, Self::fridge_reason(&before));
            }
            let keeps = Reason::ThawedKeeps { most: spans::THAWED_KEEPS };
            self.at_most(FRIDGE, ON, before.whole + self.thawed_keeps(FRIDGE), keeps);
        }
        if self.is_open(THAW) {
            self.rule(THAW, THAWED, Some(thaw.most), Some(thaw.most), why);
        }
        for next in [SALT, TEMPER, ON] {
            self.at_least(THAWED, next, TimeDelta::zero(), why);
        }
        if self.waits_thawed() {
            self.at_most(THAWED, ON, spans::THAWED_KEEPS, Reason::ThawedKeeps { most: spans::THAWED_KEEPS });
        } else if thaw.way == Thawing::ColdWater {
            // The end of thawing is an estimate: being past it means "now", not "never".
            let late =
                matches!(self.known[THAWED], Known::At(at) if at + spans::AT_ONCE < self.now + spans::TEMPER_LEAST);
            if late {
                self.cautions.push(Caution::Overrun(Reason::CookAtOnce));
            } else {
                self.at_most(THAWED, ON, spans::AT_ONCE, Reason::CookAtOnce);
            }
        } else {
            let most = self.thawed_keeps(THAW);
            self.at_most(THAWED, ON, most, Reason::ThawedKeeps { most: spans::THAWED_KEEPS });
        }
    }

    /// How long a thawed bird keeps: planned for two days, and what has begun a little sooner is no clash.
    fn thawed_keeps(&self, begun: Point) -> TimeDelta {
        if self.is_open(begun) { spans::THAWED_KEEPS } else { spans::THAWED_KEEPS + spans::THAWED_SLACK }
    }

    fn salting(&mut self) {
        let takes = Reason::Follows { step: Step::Salt, takes: spans::SALTING };
        match self.salted {
            Salted::No => {}
            Salted::AtOnce => self.at_least(SALT, TEMPER, spans::WATER_TAKES, takes),
            Salted::Dry | Salted::Wet => {
                if self.is_open(SALT) {
                    let least = self.rest_least();
                    let wants = if self.salted == Salted::Dry {
                        Reason::SaltWants { least }
                    } else {
                        Reason::BrineWants { least }
                    };
                    self.at_least(SALT, ON, least, wants);
                }
                self.at_least(SALT, TEMPER, spans::SALTING, takes);
                self.at_most(SALT, ON, spans::SALTED_MOST, Reason::SaltAtMost { most: spans::SALTED_MOST });
            }
        }
    }

    /// From "on" to off the heat.
    fn over_the_heat(&mut self) {
        if !self.is_open(READY) {
            return;
        }
        match self.forecast {
            Some(finish) => {
                let at = self.seconds(finish.p90);
                self.stn.at_least(ORIGIN, READY, at, Reason::Forecast);
            }
            None => {
                let why = self.cooking_reason();
                // Once it is on it may take longer; as long as it isn't, the time planned with is the time planned with.
                let most = self.is_open(ON).then_some(self.cooking.p90);
                self.rule(ON, READY, Some(self.cooking.p90), most, why);
            }
        }
    }

    /// Carved and served when it has stood.
    fn same_day(&mut self) {
        let stand = Reason::Stand { least: spans::STAND_LEAST };
        self.at_least(READY, CARVE, spans::STAND_LEAST, stand);
        // In the water it can't wait; done early it is kept hot instead, and the plan says so.
        let in_water = self.thaw.is_some_and(|thaw| thaw.way == Thawing::ColdWater) && !self.is_open(THAW);
        if self.is_open(ON) && (!in_water || self.waits_thawed()) {
            let most = (self.cooking.p50 + spans::HOT_MOST).max(self.cooking.p90 + spans::STAND);
            self.at_most(ON, CARVE, most, Reason::HotHold { most: spans::HOT_MOST });
        }
        self.rule(
            CARVE,
            SERVE,
            Some(self.carving_left()),
            self.carved_most(),
            Reason::Carving { about: spans::CARVING },
        );
        self.dinner();
    }

    /// Wrapped hot when it is sure to be done, driven, carved at the other house, eaten within two hours of leaving the heat.
    fn hot_road(&mut self) {
        let Some(carry) = self.order.carry else { return };
        let packing = Reason::Follows { step: Step::Pack, takes: spans::PACKING };
        let drive = Reason::Drive { takes: carry.drive };
        let road = Reason::HotRoad { most: spans::HOT_ROAD };
        self.at_least(READY, PACK, TimeDelta::zero(), packing);
        // Said to be wrapped, it can leave; on the road, what is left of the slack may go.
        let wrapping = if self.is_open(PACK) { spans::PACKING } else { TimeDelta::zero() };
        let unpacking = if self.is_open(TRAVEL) { spans::UNPACKING } else { spans::UNPACKING_LEAST };
        self.at_least(PACK, TRAVEL, wrapping, packing);
        self.at_least(TRAVEL, CARVE, carry.drive + unpacking, drive);
        let carving = Reason::Carving { about: spans::CARVING };
        self.rule(CARVE, SERVE, Some(self.carving_left()), self.carved_most(), carving);
        // Once it is packed the limit is said at the table, by the thermometer, and is no bound on the plan.
        if self.is_open(PACK) {
            self.at_most(PACK, SERVE, spans::HOT_ROAD, road);
        }
        if self.is_open(ON) {
            let most = (self.cooking.p50 + spans::HOT_MOST).max(self.cooking.p90 + spans::PULLING);
            self.at_most(ON, PACK, most, Reason::HotHold { most: spans::HOT_MOST });
        }
        self.dinner();
    }

    /// Which packing it is: the hot one has a name of its own.
    pub fn pack_nth(&self) -> u8 {
        u8::from(self.order.way() == Way::Hot)
    }

    /// What carving takes from its point on: said to be done, it is over.
    fn carving_left(&self) -> TimeDelta {
        if self.is_open(CARVE) { spans::CARVING_LEAST } else { TimeDelta::zero() }
    }

    /// How long it may be carved before it is served. Said to be carved, it is: too soon is no bound on dinner, its two hours are told.
    fn carved_most(&self) -> Option<TimeDelta> {
        self.is_open(CARVE).then_some(spans::CARVED_MOST)
    }

    /// Carved and chilled when it has stood, then (carried and) reheated.
    fn ahead(&mut self) {
        let stand = Reason::Stand { least: spans::STAND_LEAST };
        let carving = Reason::Carving { about: spans::CARVING };
        self.at_least(READY, CARVE, spans::STAND_LEAST, stand);
        self.at_least(CARVE, CHILL, self.carving_left(), carving);
        // Once it is off the heat the limit is a call for today, not a bound on the plan.
        if self.is_open(READY) {
            self.at_most(READY, CHILL, spans::FRIDGE_WITHIN, Reason::TwoHours { most: spans::FRIDGE_WITHIN });
        }
        let cold = Reason::ColdThrough { least: spans::COLD_THROUGH };
        let next = if self.order.carry.is_some() { PACK } else { REHEAT };
        self.at_least(CHILL, next, spans::COLD_THROUGH, cold);
        // A plan counts on three of the three to four days: it may be done, and chilled, sooner than planned.
        let keeps = if self.is_open(CHILL) { spans::COOKED_PLANNED } else { spans::COOKED_KEEPS };
        self.at_most(CHILL, SERVE, keeps, Reason::CookedKeeps { most: spans::COOKED_KEEPS });
        if let Some(carry) = self.order.carry {
            let drive = Reason::Drive { takes: carry.drive };
            self.at_least(PACK, TRAVEL, spans::PACKING, Reason::Follows { step: Step::Pack, takes: spans::PACKING });
            self.at_most(PACK, TRAVEL, spans::PACKED_MOST, Reason::PackedCold { most: spans::PACKED_MOST });
            self.at_least(TRAVEL, REHEAT, carry.drive + spans::UNPACKING, drive);
        }
        // Told of, it is done: nothing is left of it.
        let left = if self.is_open(REHEAT) { spans::REHEATING_LEAST } else { TimeDelta::zero() };
        self.at_least(REHEAT, SERVE, left, Reason::Reheat { about: spans::REHEATING });
        self.at_most(REHEAT, SERVE, spans::REHEAT_MOST, Reason::ReheatWithin { most: spans::REHEAT_MOST });
        self.dinner();
    }

    fn dinner(&mut self) {
        if self.is_open(SERVE) {
            let at = self.seconds(self.order.dinner);
            self.stn.between(ORIGIN, SERVE, at, at, Reason::Dinner);
        }
    }
}

/// Preferred and least time for a cooker to get hot.
pub(super) fn heats(cooker: Cooker) -> (TimeDelta, TimeDelta) {
    match cooker {
        Cooker::Smoker => spans::SMOKER_HEATS,
        Cooker::Oven | Cooker::FanOven => spans::OVEN_HEATS,
    }
}

/// What no network has to be built for.
fn check(order: &Order, past: Past<'_>, now: Moment) -> Result<(), Failure> {
    if order.dinner <= now && !past.begun() {
        return Err(Reason::DinnerPast.into());
    }
    if order.dinner - now > spans::FARTHEST {
        return Err(Reason::DinnerTooFar.into());
    }
    match order.carry {
        Some(carry) if carry.drive > spans::DRIVE_MOST => Err(Reason::DriveTooLong { most: spans::DRIVE_MOST }.into()),
        _ => Ok(()),
    }
}

fn estimate(order: &Order) -> Result<Estimate, Failure> {
    let start = if order.thawing == Thawing::CookFrozen { order.bird.condition } else { Condition::Fresh };
    roast::estimate(&order.bird, &order.heat, start).map_err(|error| Reason::NotCookedSo(error).into())
}

/// Whether the dinner hour has passed with everything as planned: then it has been served, said or not.
fn dinner_is_over(order: &Order, past: Past<'_>, cooking: &Spread, finish: Option<Finish>, now: Moment) -> bool {
    if now < order.dinner {
        return false;
    }
    let last_steps = spans::STAND_LEAST + spans::CARVING_LEAST;
    let in_time = |off: Moment| off + last_steps <= order.dinner;
    if order.cooks_ahead() {
        return past.passed(Step::Reheat, 0).is_some() || past.done(Step::Chill, 0).is_some();
    }
    match (past.passed(Step::Pull, 0).or(past.passed(Step::Carve, 0)), past.passed(Step::On, 0)) {
        (Some(_), _) => true,
        (None, Some(on)) => in_time(finish.map_or(on + cooking.p90, |finish| finish.p90)),
        (None, None) => false,
    }
}
