//! Who has the oven when: the bird's heat and the burners shared with the dishes; and, by `shelves`, who has the fridge.
//!
//! Two uses of one heat that don't agree can't overlap: one comes first. Which one is a choice, and the choices are searched here
//! in a fixed order, the network telling after each whether anything still fits. Eight dishes make few choices; the search is bounded.

use super::dish::{Cold, Dish, DishHeat};
use super::network::{FIRE, Network, ON, READY, SERVE};
use super::order::Way;
use super::shelves::{Shelf, Shelves};
use super::stn::{Constraint, Point};
use super::{Failure, Order, Reason, Rival, spans};
use crate::quantity::{Temperature, celsius, fahrenheit, in_celsius};
use crate::roast::Cooker;
use chrono::TimeDelta;

/// Arrangements tried before giving up. Far more than sensible dinners need.
const MOST_TRIES: usize = 3000;

/// How a dish stands to the bird on the same heat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Turn {
    /// It does not share with the bird.
    Apart,
    /// In with the bird, whose setting suits it.
    Beside,
    /// When the bird is out.
    After,
    /// Before the bird's fire is lit.
    Before,
}

/// A dish of the network.
#[derive(Debug, Clone, Copy)]
pub(super) struct Seat {
    pub place: u8,
    pub point: Point,
    pub dish: Dish,
    pub turn: Turn,
    pub shelf: Shelf,
}

impl Seat {
    /// Why it waits for the other, or the other for it.
    fn against(&self, other: &Seat) -> Reason {
        let settings = apart(self.dish.heat, other.dish.heat);
        Reason::HeatTaken { dish: self.place, rival: Rival::Dish { place: other.place, settings } }
    }
}

/// Finds an order in which every dish has its heat, and puts it into the network.
///
/// # Errors
/// The dish that finds no place.
pub(super) fn seat(network: &mut Network<'_>) -> Result<(), Failure> {
    let dishes: Vec<Seat> = network
        .order
        .dishes
        .iter()
        .map(|(place, dish)| Seat { place, point: network.dish(place), dish, turn: Turn::Apart, shelf: Shelf::Any })
        .filter(|seat| network.is_open(seat.point))
        .collect();
    if dishes.is_empty() || network.stn().solve().is_err() {
        return Ok(()); // without a dinner that works there is nothing to share
    }
    for seat in &dishes {
        network.dish_at_table(seat.point, seat.place, seat.dish);
        if let Err(cycle) = network.stn().solve() {
            return Err(network.failure(cycle));
        }
    }
    let shelves = Shelves::of(network);
    if let Some(crowded) = shelves.and_then(|shelves| shelves.too_many(&dishes)) {
        return Err(crowded.into());
    }
    let blocked = match search(network, &dishes, shelves) {
        None => return Ok(()),
        Some(blocked) => blocked,
    };
    // With all the room there is in the fridge it would fit: then that is what is missing.
    let chilled = |seat: &&Seat| seat.dish.in_fridge() > 0;
    let cold = dishes.get(blocked).filter(chilled).or(dishes.iter().rev().find(chilled));
    if let (Some(shelves), Some(seat)) = (shelves, cold)
        && search(network, &dishes, None).is_none()
    {
        return Err(shelves.reason(seat).into());
    }
    let Some(seat) = dishes.get(blocked).or(dishes.last()).copied() else { return Ok(()) };
    let rival = rival(network, &dishes, &seat, shelves);
    Err(Reason::HeatTaken { dish: seat.place, rival }.into())
}

/// What a dish that finds no place has in its way: the one dish without which all the others would fit, else the bird, if it is there.
fn rival(network: &mut Network<'_>, dishes: &[Seat], seat: &Seat, shelves: Option<Shelves>) -> Rival {
    let same_place = |other: &&Seat| other.place != seat.place && other.dish.heat.is_same_place(seat.dish.heat);
    let beside = dishes.iter().filter(same_place).filter(|other| other.dish.heat.agrees(seat.dish.heat)).count();
    let room = seat.dish.heat.room();
    let full = (beside >= room).then_some(Rival::Full { room });
    for other in dishes.iter().filter(same_place) {
        let rest: Vec<Seat> = dishes.iter().filter(|it| it.place != other.place).copied().collect();
        let before = network.len();
        let fits = search(network, &rest, shelves).is_none();
        network.truncate(before);
        if fits {
            let settings = apart(seat.dish.heat, other.dish.heat);
            let one = Rival::Dish { place: other.place, settings };
            return full.filter(|_| settings.is_none()).unwrap_or(one);
        }
    }
    let bird = birds_heat(network.order, seat.dish);
    if bird.is_same_place(seat.dish.heat) {
        let settings = apart(seat.dish.heat, bird);
        return full.filter(|_| settings.is_none()).unwrap_or(Rival::Bird { settings });
    }
    full.unwrap_or(Rival::Several)
}

/// The settings of both, if no setting suits both.
fn apart(one: DishHeat, other: DishHeat) -> Option<(Temperature, Temperature)> {
    one.setting().zip(other.setting()).filter(|_| !one.agrees(other))
}

/// What the bird has while a dish is cooked. Cooked ahead, it is the reheating that wants an oven at the table's hour.
fn birds_heat(order: &Order, dish: Dish) -> DishHeat {
    match order.heat.cooker {
        _ if order.cooks_ahead() && dish.cold().is_none() => DishHeat::Oven(reheating()),
        Cooker::Smoker => DishHeat::Smoker(order.heat.setting),
        Cooker::Oven | Cooker::FanOven => DishHeat::Oven(order.heat.setting),
    }
}

/// Seats them all. `Some`: there is no way, and the first that found no place is that one of them.
fn search(network: &mut Network<'_>, dishes: &[Seat], shelves: Option<Shelves>) -> Option<usize> {
    let mut search = Search { network, dishes, shelves, tries: 0, deepest: 0 };
    if search.next(&mut Vec::new()) { None } else { Some(search.deepest) }
}

struct Search<'a, 'b> {
    network: &'a mut Network<'b>,
    dishes: &'a [Seat],
    shelves: Option<Shelves>,
    tries: usize,
    deepest: usize,
}

impl Search<'_, '_> {
    /// Seats the next dish and all after it. `false`: there is no way, and the network is as it was.
    fn next(&mut self, seated: &mut Vec<Seat>) -> bool {
        let Some(seat) = self.dishes.get(seated.len()).copied() else { return true };
        self.deepest = self.deepest.max(seated.len());
        let shelves = self.shelves.map_or(vec![Shelf::Any], |shelves| shelves.ways(&seat, seated));
        let ways = self.turns(&seat).into_iter().flat_map(|turn| shelves.iter().map(move |shelf| (turn, *shelf)));
        for (turn, shelf) in ways.collect::<Vec<_>>() {
            let seat = Seat { turn, shelf, ..seat };
            let before = self.network.len();
            let mut wanted = self.to_the_bird(&seat);
            wanted.extend(self.shelves.iter().flat_map(|shelves| shelves.constraints(self.network, &seat)));
            if self.take(&wanted) {
                let rivals: Vec<Seat> = rivals(&seat, seated);
                seated.push(seat);
                if self.order(&seat, &rivals, seated) {
                    return true;
                }
                seated.pop();
            }
            self.network.truncate(before);
        }
        false
    }

    /// Puts the dish before or after each of its rivals, then seats the others.
    fn order(&mut self, seat: &Seat, rivals: &[Seat], seated: &mut Vec<Seat>) -> bool {
        let Some((rival, rest)) = rivals.split_first() else { return self.next(seated) };
        for (first, second) in [(seat, rival), (rival, seat)] {
            let before = self.network.len();
            let after = first.dish.takes + change(first.dish.heat, second.dish.heat);
            if self.take(&[at_least(first.point, second.point, after, first.against(second))])
                && self.order(seat, rest, seated)
            {
                return true;
            }
            self.network.truncate(before);
        }
        false
    }

    /// Adds constraints if something still fits with them.
    fn take(&mut self, constraints: &[Constraint<Reason>]) -> bool {
        self.tries += 1;
        if self.tries > MOST_TRIES {
            return false;
        }
        constraints.iter().for_each(|constraint| self.network.add(*constraint));
        constraints.is_empty() || self.network.stn().solve().is_ok()
    }

    /// The ways a dish can stand to the bird, the least trouble first.
    fn turns(&self, seat: &Seat) -> Vec<Turn> {
        let order = self.network.order;
        let (ahead, dish) = (order.cooks_ahead(), seat.dish);
        let waits = dish.cold().is_some();
        if order.way() == Way::Hot && !waits {
            return vec![Turn::Apart]; // hot at a table in another house: it has another oven
        }
        let bird = birds_heat(order, dish);
        if !dish.heat.is_same_place(bird) {
            return vec![Turn::Apart];
        }
        let beside = dish.heat.agrees(bird).then_some(Turn::Beside);
        let alone: &[Turn] = match (ahead, waits) {
            (_, true) => &[Turn::Before, Turn::After],
            (false, false) => &[Turn::After],
            (true, false) => &[],
        };
        beside.into_iter().chain(alone.iter().copied()).collect()
    }

    fn to_the_bird(&self, seat: &Seat) -> Vec<Constraint<Reason>> {
        let bird = self.network.order.heat.setting;
        let change = seat.dish.heat.setting().map_or(TimeDelta::zero(), |own| {
            if in_celsius(own) == in_celsius(bird) { TimeDelta::zero() } else { spans::CHANGE_SETTING }
        });
        let rival = Rival::Bird { settings: apart(seat.dish.heat, birds_heat(self.network.order, seat.dish)) };
        let why = Reason::HeatTaken { dish: seat.place, rival };
        let pair = match seat.turn {
            Turn::Apart | Turn::Beside => return Vec::new(),
            Turn::After => at_least(READY, seat.point, change, why),
            Turn::Before => {
                let first = if self.network.is_present(FIRE) { FIRE } else { ON };
                at_least(seat.point, first, seat.dish.takes, why)
            }
        };
        let known = self.network.is_present(pair.from) && self.network.is_present(pair.to);
        if known { vec![pair] } else { Vec::new() }
    }
}

/// Setting of the oven while the bird is reheated: the middle of 325 to 350 °F.
fn reheating() -> crate::quantity::Temperature {
    celsius((in_celsius(fahrenheit(325.0)) + in_celsius(fahrenheit(350.0))) / 2.0)
}

/// The dishes seated already that can't be on the heat at the same time.
fn rivals(seat: &Seat, seated: &[Seat]) -> Vec<Seat> {
    let same = seated.iter().filter(|other| other.dish.heat.is_same_place(seat.dish.heat));
    let mut room = seat.dish.heat.room();
    let mut rivals = Vec::new();
    for other in same.rev() {
        let beside = seat.turn == Turn::Beside && other.turn == Turn::Beside;
        if beside || !other.dish.heat.agrees(seat.dish.heat) || room <= 1 {
            rivals.push(*other);
        } else {
            room -= 1;
        }
    }
    rivals
}

fn change(from: DishHeat, to: DishHeat) -> TimeDelta {
    match (from.setting(), to.setting()) {
        (Some(one), Some(other)) if in_celsius(one) != in_celsius(other) => spans::CHANGE_SETTING,
        _ => TimeDelta::zero(),
    }
}

fn at_least(from: Point, to: Point, span: TimeDelta, why: Reason) -> Constraint<Reason> {
    Constraint { from, to, least: Some(span.num_seconds()), most: None, why }
}

impl Dish {
    /// Why it is made so early.
    pub(super) fn cold_reason(self, place: u8, cold: Cold) -> Reason {
        if self.ahead { Reason::DishAhead { dish: place } } else { Reason::DishCold { dish: place, least: cold.least } }
    }
}

impl Network<'_> {
    /// A dish is hot on the table, or made in good time and cold.
    fn dish_at_table(&mut self, point: Point, place: u8, dish: Dish) {
        let (least, most, why) = match dish.cold() {
            Some(cold) => (dish.takes + cold.least, spans::COOKED_PLANNED, dish.cold_reason(place, cold)),
            None => (dish.takes, dish.takes + dish.waits(), Reason::DishHot { dish: place, most: dish.waits() }),
        };
        self.rule(point, SERVE, Some(least), Some(most), why);
    }
}
