//! What is wanted, complete and checked, and what has really happened since.

use super::{Dishes, Moment, Step};
use crate::bird::{Bird, Diners};
use crate::roast::Heat;
use chrono::TimeDelta;
use chrono_tz::Tz;

/// How the bird is salted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Salting {
    /// Not at all.
    None,
    /// Dry salt, then a rest in the fridge.
    Dry,
    /// In brine.
    Wet,
}

/// The meal is eaten at another house.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Carry {
    /// Door to door.
    pub drive: TimeDelta,
    /// Carried whole and hot on the day, to be eaten within two hours of leaving the heat. Else it is cooked ahead and
    /// carried cold.
    pub hot: bool,
}

/// How the bird gets from the heat to the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Way {
    /// It stands, is carved and eaten.
    Here,
    /// It is wrapped and carried hot, then carved and eaten.
    Hot,
    /// It is carved, chilled, perhaps carried, and reheated.
    Ahead,
}

/// How the bird is thawed, if it must be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Thawing {
    /// In the fridge.
    Fridge,
    /// In cold water, changed every 30 minutes.
    ColdWater,
    /// In the fridge as long as there is time, finished in cold water. The move into the water is `thaw` with `nth` 1.
    FridgeThenWater,
    /// Not at all: cooked from frozen.
    CookFrozen,
}

/// A complete, checked order for a dinner. Make one with [`Order::new`] and change its fields.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Order {
    /// The bird; one of [`Order::birds`].
    pub bird: Bird,
    /// How many such birds.
    pub birds: u8,
    /// Who eats.
    pub diners: Diners,
    /// Cooker and setting.
    pub heat: Heat,
    /// Salted or not.
    pub salting: Salting,
    /// A salted rest shorter than the wanted 24 h is all right.
    pub short_rest: bool,
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
    /// Nobody goes shopping before then, where somebody said when the bird is bought.
    pub shop_from: Option<Moment>,
    /// The last moment of the use-by date on a fresh bird's pack, where somebody told it.
    pub use_by: Option<Moment>,
    /// What else is on the table.
    pub dishes: Dishes,
    /// Shelves of the fridge that are free for this dinner, the bird's among them. `None`: nobody has said, and nothing is checked.
    pub shelves: Option<u8>,
}

impl Order {
    /// Room it takes in a fridge, in halves of a shelf: its birds before they are on, and its dishes that wait there for the table.
    pub fn fridge_halves(&self) -> u8 {
        super::shelves::fridge_halves(self)
    }

    /// The usual dinner: one bird still to be bought, dry-salted, thawed in the fridge, cooked on the day, eaten here.
    pub fn new(bird: Bird, diners: Diners, heat: Heat, dinner: Moment, zone: Tz) -> Self {
        Self {
            bird,
            birds: 1,
            diners,
            heat,
            salting: Salting::Dry,
            short_rest: false,
            thawing: Thawing::Fridge,
            dinner,
            zone,
            carry: None,
            ahead: false,
            at_home: false,
            shop_from: None,
            use_by: None,
            dishes: Dishes::default(),
            shelves: None,
        }
    }

    /// Cooked, carved and chilled first, reheated for the table.
    pub fn cooks_ahead(&self) -> bool {
        self.way() == Way::Ahead
    }

    /// Carried whole and hot.
    pub fn carries_hot(&self) -> bool {
        self.way() == Way::Hot
    }

    pub(super) fn way(&self) -> Way {
        match self.carry {
            _ if self.ahead => Way::Ahead,
            Some(carry) if carry.hot => Way::Hot,
            Some(_) => Way::Ahead,
            None => Way::Here,
        }
    }
}

/// What really happened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Fact {
    /// Which step.
    pub step: Step,
    /// Which of several (0 for the first): water changes, checks, fridge runs, the switch from fridge to water.
    pub nth: u8,
    /// When.
    pub at: Moment,
    /// Done, or left out on purpose.
    pub done: bool,
}

/// When the bird will come off the heat, as forecast from readings. Takes the place of the timetable.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Finish {
    /// One in ten is sooner.
    pub p10: Moment,
    /// Half are sooner.
    pub p50: Moment,
    /// Nine in ten are sooner.
    pub p90: Moment,
}

names!(Salting { None => "none", Dry => "dry", Wet => "wet" });
names!(Thawing {
    Fridge => "fridge",
    ColdWater => "cold-water",
    FridgeThenWater => "fridge-then-water",
    CookFrozen => "cook-frozen",
});
