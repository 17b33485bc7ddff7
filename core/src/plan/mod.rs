//! The plan: steps, their windows as a simple temporal network, the schedule, and why a wish can't be met.
//!
//! Start at [`solve`]. Knows no words and no clock: `now` is an argument, reasons are values.

use crate::bird::{Bird, Diners};
use crate::roast::{Heat, Spread};
use chrono::{DateTime, TimeDelta, Utc};
use chrono_tz::Tz;

/// A point in time.
pub type Moment = DateTime<Utc>;

/// The jobs between the shop and the last leftover.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Step {
    /// Buy the bird.
    Buy,
    /// Start thawing.
    Thaw,
    /// Change the thawing water.
    Water,
    /// Salt it.
    Salt,
    /// The salted rest in the fridge begins.
    Rest,
    /// Out of the fridge: dry, pierce, butter.
    Temper,
    /// Light the fire or heat the oven.
    Fire,
    /// Bird on.
    On,
    /// Read the thermometers.
    Check,
    /// Off the heat.
    Pull,
    /// The rest after the heat.
    Stand,
    /// Carve.
    Carve,
    /// Into the fridge.
    Chill,
    /// Pack it cold.
    Pack,
    /// Leave for the other house.
    Travel,
    /// Reheat.
    Reheat,
    /// Serve.
    Serve,
    /// Last day of the leftovers.
    Leftovers,
}

/// How strong the salting is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Salting {
    /// None.
    None,
    /// Dry salt, then a rest in the fridge.
    Dry,
    /// In brine.
    Wet,
}

/// The meal is eaten at another house, the bird carried there cold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Carry {
    /// Door to door.
    pub drive: TimeDelta,
}

/// How the bird is thawed, if it must be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Thawing {
    /// In the fridge.
    Fridge,
    /// In cold water, changed every 30 minutes.
    ColdWater,
    /// Not at all: cooked from frozen.
    CookFrozen,
}

/// A complete, checked order for a dinner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Order {
    /// The bird.
    pub bird: Bird,
    /// Who eats.
    pub diners: Diners,
    /// Cooker and setting.
    pub heat: Heat,
    /// Salted or not.
    pub salting: Salting,
    /// How it is thawed (ignored when fresh).
    pub thawing: Thawing,
    /// When it is on the table.
    pub dinner: Moment,
    /// Zone of the kitchen: keeps jobs out of the small hours where the windows allow.
    pub zone: Tz,
    /// Carried to another house.
    pub carry: Option<Carry>,
    /// Cooked the day before, carved, chilled and reheated.
    pub ahead: bool,
    /// The bird is already in the house.
    pub at_home: bool,
}

/// What really happened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Fact {
    /// Which step.
    pub step: Step,
    /// Which of several (0 for the first): water changes, checks.
    pub nth: u8,
    /// When.
    pub at: Moment,
    /// Done, or left out on purpose.
    pub done: bool,
}

/// One job on the clock.
#[derive(Debug, Clone, PartialEq)]
pub struct Job {
    /// Which step.
    pub step: Step,
    /// Which of several.
    pub nth: u8,
    /// When it is to be done.
    pub at: Moment,
    /// How long it takes or lasts.
    pub lasts: TimeDelta,
    /// No sooner than.
    pub earliest: Moment,
    /// No later than.
    pub latest: Moment,
    /// Why then.
    pub reasons: Vec<Reason>,
}

/// Why a job stands where it does. Rendered as a sentence by the front end, with its source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Reason {}

/// A plan that works.
#[derive(Debug, Clone, PartialEq)]
pub struct Schedule {
    /// Jobs in order of time.
    pub jobs: Vec<Job>,
    /// Time over the heat.
    pub cooking: Spread,
}

names!(Step {
    Buy => "buy",
    Thaw => "thaw",
    Water => "water",
    Salt => "salt",
    Rest => "rest",
    Temper => "temper",
    Fire => "fire",
    On => "on",
    Check => "check",
    Pull => "pull",
    Stand => "stand",
    Carve => "carve",
    Chill => "chill",
    Pack => "pack",
    Travel => "travel",
    Reheat => "reheat",
    Serve => "serve",
    Leftovers => "leftovers",
});
names!(Salting { None => "none", Dry => "dry", Wet => "wet" });
names!(Thawing { Fridge => "fridge", ColdWater => "cold-water", CookFrozen => "cook-frozen" });
