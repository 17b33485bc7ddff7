//! Who has the fridge when: the bird until it comes out for good, the dishes that wait in it for the table.
//!
//! Everything a dish needs stands in the fridge until dinner, so room is short at two times only: while the bird is still in, and
//! at the table's hour. Where nobody has said how many shelves there are, nothing is checked.

use super::network::{Known, Network, ON, PACK, REHEAT, TEMPER, THAW};
use super::seating::Seat;
use super::stn::{Constraint, ORIGIN, Point};
use super::{Order, Reason, Thawing};
use crate::bird::Condition;
use crate::quantity::in_pounds;
use chrono::TimeDelta;

/// A bird from this mass on, in pounds, has a shelf to itself. Common practice, no source.
const WHOLE_SHELF_LB: f64 = 8.0;

/// The bird makes room for a dish at most so long before it must come out: up to an hour sooner than it would. Common practice, no
/// source.
const SOONER_MOST: TimeDelta = TimeDelta::minutes(90);

/// How a dish stands to the bird in the fridge.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Shelf {
    /// It does not need the fridge, or there is room whatever happens.
    Any,
    /// In while the bird is.
    Beside,
    /// In when the bird is out.
    After,
}

/// The room there is, in halves of a shelf.
#[derive(Debug, Clone, Copy)]
pub(super) struct Shelves {
    /// Shelves there are.
    shelves: u8,
    /// When the bird is out; `None`: it is, or never was in.
    out: Option<Point>,
    /// Room for dishes while the bird is in.
    beside: u8,
    /// Room for dishes at the table's hour.
    whole: u8,
}

impl Shelves {
    /// The room left by the bird and the dishes that are in already; `None` where nobody has said how much there is.
    pub fn of(network: &Network<'_>) -> Option<Self> {
        let shelves = network.order.shelves?;
        let whole = shelves.saturating_mul(2);
        let inside: u8 = network
            .order
            .dishes
            .iter()
            .filter(|(place, _)| matches!(network.known(network.dish(*place)), Known::At(_)))
            .fold(0, |sum, (_, dish)| sum.saturating_add(dish.in_fridge()));
        let beside = whole.saturating_sub(bird_halves(network.order)).saturating_sub(inside);
        Some(Self { shelves, out: bird_out(network), beside, whole: whole.saturating_sub(inside) })
    }

    /// The first of the dishes that finds no room even when the bird is out.
    pub fn too_many(&self, dishes: &[Seat]) -> Option<Reason> {
        let mut left = self.whole;
        let crowded = dishes.iter().find(|seat| match left.checked_sub(seat.dish.in_fridge()) {
            Some(rest) => {
                left = rest;
                false
            }
            None => true,
        });
        crowded.map(|seat| Reason::FridgeTaken { dish: seat.place, shelves: self.shelves, bird: false })
    }

    /// The ways a dish can stand to the bird, those it was told first.
    pub fn ways(&self, seat: &Seat, seated: &[Seat]) -> Vec<Shelf> {
        let needs = seat.dish.in_fridge();
        if needs == 0 || self.out.is_none() {
            return vec![Shelf::Any];
        }
        let taken: u8 = seated
            .iter()
            .filter(|other| other.shelf == Shelf::Beside)
            .fold(0, |sum, other| sum.saturating_add(other.dish.in_fridge()));
        let room = taken.saturating_add(needs) <= self.beside;
        // What is to stand overnight is not quietly put off to the day.
        let waits = !seat.dish.ahead;
        [(Shelf::Beside, room), (Shelf::After, waits)]
            .into_iter()
            .filter_map(|(shelf, applies)| applies.then_some(shelf))
            .collect()
    }

    /// What a way asks of the times: the dish in after the bird is out, and the bird out not much sooner for its sake.
    pub fn constraints(&self, network: &Network<'_>, seat: &Seat) -> Vec<Constraint<Reason>> {
        let Some(out) = self.out.filter(|_| seat.shelf == Shelf::After) else { return Vec::new() };
        let why = self.reason(seat);
        let after =
            Constraint { from: out, to: seat.point, least: Some(-seat.dish.takes.num_seconds()), most: None, why };
        let latest = network.stn().solve().ok().and_then(|windows| windows.get(out)?.latest);
        let least = latest.map(|latest| latest - SOONER_MOST.num_seconds());
        let soonest = Constraint { from: ORIGIN, to: out, least, most: None, why };
        vec![after, soonest]
    }

    /// Why a dish finds no room.
    pub fn reason(&self, seat: &Seat) -> Reason {
        Reason::FridgeTaken { dish: seat.place, shelves: self.shelves, bird: true }
    }
}

/// Room in the fridge, in halves of a shelf: the birds before they are on, and the dishes that wait in it for the table.
pub(super) fn fridge_halves(order: &Order) -> u8 {
    let dishes = order.dishes.iter().fold(0_u8, |sum, (_, dish)| sum.saturating_add(dish.in_fridge()));
    bird_halves(order).saturating_add(dishes)
}

/// Room the birds take.
fn bird_halves(order: &Order) -> u8 {
    let each = if in_pounds(order.bird.mass.get()) < WHOLE_SHELF_LB { 1 } else { 2 };
    order.birds.max(1).saturating_mul(each)
}

/// Where the bird leaves the fridge for good, if it is still to: carved and chilled, it goes back for a while.
fn bird_out(network: &Network<'_>) -> Option<Point> {
    let order = network.order;
    let point = match network.thaw {
        _ if order.carry.is_some() && order.cooks_ahead() => PACK,
        _ if order.cooks_ahead() => REHEAT,
        _ if order.thawing == Thawing::CookFrozen && order.bird.condition != Condition::Fresh => return None,
        Some(thaw) if thaw.way == Thawing::ColdWater => {
            if thaw.nth == 0 && thaw.before.is_none() {
                return None;
            }
            THAW
        }
        _ if network.is_present(TEMPER) => TEMPER,
        _ => ON,
    };
    network.is_open(point).then_some(point)
}
