//! The plan: steps, their windows as a simple temporal network, the schedule, and why a wish can't be met.
//!
//! Start at [`solve`]: an [`Order`] and what has happened since ([`Fact`]) give a [`Schedule`], or a [`Conflict`] with
//! offers that really help. The windows are elapsed time and live in the network ([`stn`], filled by `network`); within
//! them `place` chooses hours at which people are up. Knows no words and no clock: `now` is an argument, reasons are
//! values, and the same arguments give the same plan, so taking back a fact gives back the plan before it.

pub mod clock;
pub mod dish;
mod jobs;
mod method;
mod network;
mod offers;
mod order;
mod past;
mod place;
mod reason;
mod schedule;
mod seating;
mod shelves;
pub mod spans;
mod step;
pub mod stn;

pub use dish::{Cold, ColdPlace, DISH_HALVES, Dish, DishHeat, Dishes, MOST_DISHES};
pub use offers::{Change, hottest};
pub use order::{Carry, Fact, Finish, Order, Salting, Thawing};
pub use reason::{Reason, Rival};
pub use schedule::{Caution, Conflict, Job, Need, Offer, Schedule};
pub use step::Step;

use chrono::{DateTime, SubsecRound, TimeDelta, Utc};
use network::Network;
use past::Past;

/// A point in time.
pub type Moment = DateTime<Utc>;

/// The plan for `order`, given what has happened, as of `now`.
///
/// # Errors
/// [`Conflict`] when it can't be met, with what stands in the way and the changes that would do.
pub fn solve(order: &Order, facts: &[Fact], now: Moment) -> Result<Schedule, Conflict> {
    solve_with(order, facts, None, now)
}

/// As [`solve`], with the end of cooking as forecast from readings instead of from the timetable. The forecast counts
/// once the bird is on and until it is off.
///
/// # Errors
/// As [`solve`].
pub fn solve_with(order: &Order, facts: &[Fact], finish: Option<Finish>, now: Moment) -> Result<Schedule, Conflict> {
    // The network counts whole seconds from now; a fraction would put dinner a second early.
    let now = now.trunc_subsecs(0);
    attempt(order, facts, finish, now).map_err(|failure| offers::conflict(order, facts, finish, now, failure))
}

/// Why an attempt failed, still without offers.
#[derive(Debug, Clone, PartialEq)]
struct Failure {
    because: Vec<Reason>,
    short_by: TimeDelta,
}

impl From<Reason> for Failure {
    fn from(reason: Reason) -> Self {
        Self { because: vec![reason], short_by: TimeDelta::zero() }
    }
}

/// One try at exactly this order.
fn attempt(order: &Order, facts: &[Fact], finish: Option<Finish>, now: Moment) -> Result<Schedule, Failure> {
    let past = Past::new(order, facts);
    let mut network = Network::build(order, past, finish, now)?;
    seating::seat(&mut network)?;
    let placed = place::place(&network)?;
    Ok(jobs::schedule(&network, &placed))
}
