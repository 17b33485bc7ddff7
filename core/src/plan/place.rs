//! Chooses a time for every point within its window: hours at which people are up, as late as sensible for the heat.
//!
//! Points are fixed one after the other, the least movable first; the network narrows the others, so whatever is wished
//! for here can't break a rule.

use super::clock;
use super::method::Salted;
use super::network::{
    BUY, CARVE, CHILL, FIRE, FRIDGE, Known, Network, ON, PACK, READY, REHEAT, SALT, SERVE, TEMPER, THAW, THAWED,
    TRAVEL, heats,
};
use super::order::Way;
use super::stn::{Minimal, Point, Window};
use super::{Failure, Moment, Order, Thawing, spans};
use crate::roast::Spread;
use chrono::TimeDelta;

/// Hour and minute of the evening at which a bird is salted if it can be. Common practice, no source.
const SALT_HOUR: (u32, u32) = (18, 30);
/// Hour by which a bird cooked ahead should be in the fridge the day before. Common practice, no source.
const AHEAD_BY: (u32, u32) = (18, 0);
/// Hour at which one goes shopping. Common practice, no source.
const SHOP_HOUR: (u32, u32) = (11, 0);
/// A hot dish is ready this long before the table, if it can choose. Common practice, no source.
const DISH_EARLY: TimeDelta = TimeDelta::minutes(5);
/// Times chosen freely fall on a multiple of this.
const ROUND: TimeDelta = TimeDelta::minutes(5);

/// A time for every point, and the window it had before any other was fixed.
#[derive(Debug)]
pub(super) struct Placed {
    at: Vec<Moment>,
    windows: Vec<(Moment, Moment)>,
}

impl Placed {
    pub fn at(&self, point: Point) -> Moment {
        self.at[point]
    }

    /// Earliest and latest.
    pub fn window(&self, point: Point) -> (Moment, Moment) {
        self.windows[point]
    }
}

/// Places all points.
pub(super) fn place(network: &Network<'_>) -> Result<Placed, Failure> {
    let minimal = network.stn().minimal().map_err(|cycle| network.failure(cycle))?;
    let windows = (0..network.points()).map(|point| bounds(network, minimal.window(point))).collect();
    let mut hand = Hand { network, minimal, at: vec![network.now; network.points()] };
    hand.after_known();
    match network.order.way() {
        Way::Here => hand.same_day(),
        Way::Hot => hand.hot_road(),
        Way::Ahead => hand.ahead(),
    }
    hand.heat();
    hand.salt_and_thaw();
    hand.shop();
    hand.dishes();
    Ok(Placed { at: hand.at, windows })
}

/// When the bird should go on: as late as is sure to be in time, or, cooked ahead, so that it is in the fridge by early
/// evening the day before, later if the fire would be lit too early for that.
pub(super) fn wanted_on(order: &Order, cooking: &Spread) -> Moment {
    let last_steps = cooking.p90
        + match (order.way(), order.carry) {
            (Way::Hot, Some(carry)) => {
                spans::PULLING + spans::PACKING + carry.drive + spans::UNPACKING + spans::CARVING
            }
            _ => spans::STAND + spans::CARVING,
        };
    let eve = clock::date(order.zone, order.dinner).pred_opt().filter(|_| order.cooks_ahead());
    let on = eve.map_or(order.dinner - last_steps, |day| {
        let by = clock::at_hour(order.zone, day, AHEAD_BY.0, AHEAD_BY.1);
        (by - last_steps).max(clock::at_hour(order.zone, day, clock::DAY_STARTS, 0) + heats(order.heat.cooker).0)
    });
    clock::floor(on, ROUND)
}

/// When the bird must go on at the latest, everything after it as short as it goes.
pub(super) fn last_on(order: &Order, cooking: &Spread) -> Moment {
    let drive = order.carry.map(|carry| carry.drive);
    let off_to_table = match order.way() {
        Way::Here => spans::STAND_LEAST + spans::CARVING_LEAST,
        Way::Hot => spans::PACKING + drive.unwrap_or_default() + spans::UNPACKING + spans::CARVING_LEAST,
        Way::Ahead => {
            let road = drive.map_or(TimeDelta::zero(), |drive| spans::PACKING + drive + spans::UNPACKING);
            let cold = spans::STAND_LEAST + spans::CARVING_LEAST + spans::COLD_THROUGH;
            cold + road + spans::REHEATING_LEAST
        }
    };
    order.dinner - cooking.p90 - off_to_table
}

/// A window as moments; unbounded sides end at now and at dinner.
fn bounds(network: &Network<'_>, window: Window) -> (Moment, Moment) {
    let earliest = window.earliest.map_or(network.now, |at| network.moment(at));
    let latest = window.latest.map_or(network.order.dinner.max(earliest), |at| network.moment(at));
    (earliest, latest)
}

/// The hand that moves the points.
struct Hand<'a, 'b> {
    network: &'b Network<'a>,
    minimal: Minimal,
    at: Vec<Moment>,
}

impl Hand<'_, '_> {
    /// What has happened stands where it happened.
    fn after_known(&mut self) {
        for point in 1..self.network.points() {
            if let Known::At(at) = self.network.known(point) {
                self.at[point] = at;
            }
        }
    }

    /// Fixes an open point as near to `wanted` as may be.
    fn fix(&mut self, point: Point, wanted: Moment) {
        if self.network.is_open(point) {
            let at = self.minimal.fix(point, self.network.seconds(wanted));
            self.at[point] = self.network.moment(at);
        } else if !self.network.is_present(point) {
            // Of no account for the plan; what leans on it leans on the wish.
            self.at[point] = wanted;
        }
    }

    /// Fixes an open point near `wanted`, at an hour at which people are up if there is one.
    fn fix_awake(&mut self, point: Point, wanted: Moment) {
        let (earliest, latest) = self.left(point);
        let wanted = clock::sociable(self.network.order.zone, wanted, earliest, latest.max(earliest));
        self.fix(point, wanted);
    }

    /// When it should go on; out of cold water no later than was planned before it was out to dry.
    fn wanted_on(&self) -> Moment {
        let wanted = wanted_on(self.network.order, &self.network.cooking);
        self.network.out_of_water().map_or(wanted, |thawed| wanted.min(thawed + spans::AT_ONCE))
    }

    /// What is left for a point now.
    fn left(&self, point: Point) -> (Moment, Moment) {
        bounds(self.network, self.minimal.window(point))
    }

    fn same_day(&mut self) {
        self.fix(SERVE, self.network.order.dinner);
        self.fix(CARVE, self.at[SERVE] - spans::CARVING);
        self.fix(ON, self.wanted_on());
        self.ready();
    }

    fn hot_road(&mut self) {
        let order = self.network.order;
        let drive = order.carry.map_or(TimeDelta::zero(), |carry| carry.drive);
        self.fix(SERVE, order.dinner);
        self.fix(CARVE, self.at[SERVE] - spans::CARVING);
        self.fix(TRAVEL, clock::floor(self.at[CARVE] - drive - spans::UNPACKING, ROUND));
        self.fix(PACK, self.at[TRAVEL] - spans::PACKING);
        self.fix(ON, self.wanted_on());
        self.ready();
    }

    fn ahead(&mut self) {
        let order = self.network.order;
        self.fix(SERVE, order.dinner);
        self.fix(REHEAT, self.at[SERVE] - spans::REHEATING);
        let drive = order.carry.map_or(TimeDelta::zero(), |carry| carry.drive);
        self.fix(TRAVEL, clock::floor(self.at[REHEAT] - drive - spans::UNPACKING, ROUND));
        self.fix(PACK, self.at[TRAVEL] - spans::PACKING * 2);
        self.fix_awake(ON, self.wanted_on());
        self.ready();
        self.fix(CARVE, self.at[READY] + spans::STAND);
        self.fix(CHILL, self.at[CARVE] + spans::CARVING);
    }

    /// Off the heat as soon as it is sure to be done.
    fn ready(&mut self) {
        let (earliest, _) = self.left(READY);
        self.fix(READY, earliest);
    }

    fn heat(&mut self) {
        let on = self.at[ON];
        self.fix(FIRE, on - self.network.heats().0);
        let in_water = self.network.thaw.is_some_and(|thaw| thaw.way == Thawing::ColdWater);
        self.fix(TEMPER, on - if in_water { spans::TEMPER_LEAST * 2 } else { spans::TEMPER });
    }

    fn salt_and_thaw(&mut self) {
        match self.network.salted {
            Salted::No => {}
            Salted::AtOnce => self.fix(SALT, self.at[TEMPER] - spans::WATER_TAKES),
            Salted::Dry | Salted::Wet => {
                let (earliest, latest) = self.left(SALT);
                let (hour, minute) = SALT_HOUR;
                // An evening that leaves the salt less than it wants is no better than an odd hour that does not.
                let last_full = (self.at[ON] - spans::DRY_WANTED).min(latest);
                let until = if earliest <= last_full { last_full } else { latest };
                let evening = clock::last_hour_within(self.network.order.zone, hour, minute, earliest, until);
                // Salted that evening, the thawing might have to begin in the small hours.
                match evening {
                    Some(evening) if self.thaws_by_day_instead(evening) => self.fix_awake(SALT, self.left(SALT).0),
                    Some(evening) => self.fix(SALT, evening),
                    None => self.fix_awake(SALT, until),
                }
            }
        }
        if self.network.thaw.is_some_and(|thaw| thaw.way == Thawing::Fridge) {
            let (earliest, latest) = self.left(THAW);
            self.fix_awake(THAW, clock::floor(earliest + (latest - earliest) / 2, ROUND * 3));
        } else {
            let (_, latest) = self.left(THAW);
            self.fix(THAW, clock::floor(latest, ROUND));
        }
        if let Some(before) = self.network.thaw.and_then(|thaw| thaw.before) {
            // As soon as it can be, but not thawed through before its time.
            self.fix_awake(FRIDGE, before.start.max(self.at[THAW] - before.whole));
        }
        let (earliest, _) = self.left(THAWED);
        self.fix(THAWED, earliest);
    }

    /// Where salting at `salt` would leave the thawing nothing but the night to begin in: begins it late that evening, if it may, else by
    /// day. Whether the salt has to wait for it.
    fn thaws_by_day_instead(&mut self, salt: Moment) -> bool {
        /// Up to here an evening is no night yet.
        const LATE: TimeDelta = TimeDelta::minutes(90);
        let zone = self.network.order.zone;
        let Some(thaw) = self.network.thaw.filter(|thaw| thaw.way == Thawing::Fridge && self.network.is_open(THAW))
        else {
            return false;
        };
        let (earliest, latest) = self.left(THAW);
        let until = (salt - thaw.most).min(latest);
        let by_day = |to: Moment| clock::is_sociable(zone, clock::sociable(zone, to, earliest, to.max(earliest)));
        if by_day(until) {
            return false;
        }
        if earliest <= until && clock::is_sociable(zone, earliest - LATE) {
            self.fix(THAW, clock::ceil(earliest, ROUND).min(until));
            return false;
        }
        let waits = by_day(latest);
        if waits {
            self.fix_awake(THAW, earliest);
        }
        waits
    }

    /// Hot dishes as late as goes, ready a little before the table; cold ones as long before it as they want, those made ahead
    /// the evening before if they can be.
    fn dishes(&mut self) {
        let order = self.network.order;
        for (place, dish) in order.dishes.iter() {
            let point = self.network.dish(place);
            if !self.network.is_open(point) {
                continue;
            }
            match dish.cold() {
                None => {
                    self.fix(point, clock::floor(self.at[SERVE] - dish.takes - DISH_EARLY, ROUND));
                    continue;
                }
                Some(cold) if !dish.ahead => {
                    self.fix_awake(point, clock::floor(self.at[SERVE] - dish.takes - cold.least, ROUND));
                    continue;
                }
                Some(_) => {}
            }
            let (earliest, latest) = self.left(point);
            let (hour, minute) = AHEAD_BY;
            match clock::last_hour_within(order.zone, hour, minute, earliest, latest) {
                Some(at) => self.fix(point, at),
                // The hour is past: in the evening still at once, on the day itself as late as goes.
                None => {
                    let eve = clock::date(order.zone, earliest) < clock::date(order.zone, order.dinner);
                    self.fix_awake(point, if eve { earliest } else { clock::floor(latest, ROUND) });
                }
            }
        }
    }

    fn shop(&mut self) {
        let (earliest, latest) = self.left(BUY);
        if let Some(from) = self.network.order.shop_from.filter(|from| (earliest..=latest).contains(from)) {
            return self.fix(BUY, from);
        }
        let zone = self.network.order.zone;
        // Not in the last hours before it is needed, if there is a choice.
        let unhurried = (latest - TimeDelta::hours(3)).max(earliest);
        let (hour, minute) = SHOP_HOUR;
        match clock::last_hour_within(zone, hour, minute, earliest, unhurried) {
            Some(at) => self.fix(BUY, at),
            // No such hour is left: the shops may close, so rather at once than at the last minute.
            None => self.fix_awake(BUY, earliest),
        }
    }
}
