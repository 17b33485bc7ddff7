//! Why a job stands where it does, and why a wish can't be met. Values, not words.
//!
//! The front end turns each into a sentence; [`Reason::source`] is what stands behind "why?".

use super::{Moment, Step};
use crate::quantity::Temperature;
use crate::roast::{Cooker, RoastError};
use crate::source::{self, Source};
use chrono::TimeDelta;

/// What is in a dish's way at the heat it wants.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Rival {
    /// No single thing.
    Several,
    /// As many dishes as go on that heat at once.
    Full {
        /// How many that is.
        room: usize,
    },
    /// The bird.
    Bird {
        /// What the dish wants, and what the bird has, if they can't be there together.
        settings: Option<(Temperature, Temperature)>,
    },
    /// Another dish.
    Dish {
        /// Its place in the order.
        place: u8,
        /// What the one wants, and what the other, if they can't be there together.
        settings: Option<(Temperature, Temperature)>,
    },
}

/// A rule, a fact or a wish that holds a job in its place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reason {
    /// Dinner is at that hour.
    Dinner,
    /// It can't be sooner than now.
    Now,
    /// It was done then.
    Done,
    /// One comes after the other, and takes this long.
    Follows {
        /// The job that comes first.
        step: Step,
        /// How long it takes.
        takes: TimeDelta,
    },
    /// Nobody goes shopping before then.
    ShopFrom {
        /// When.
        at: Moment,
    },
    /// A raw bird that was never frozen keeps this long in the fridge.
    RawKeeps {
        /// At most.
        most: TimeDelta,
    },
    /// The pack says until when a fresh bird is to be used.
    UseBy {
        /// The last moment of that day.
        until: Moment,
    },
    /// It thaws this long in the fridge.
    FridgeThaw {
        /// At least.
        least: TimeDelta,
        /// Planned with.
        most: TimeDelta,
        /// Where that comes from, for this bird.
        source: Source,
    },
    /// It spends this long in the fridge, of the time it would need there; cold water does the rest.
    FridgeShare {
        /// At least.
        spent: TimeDelta,
        /// The longest it may need there.
        whole: TimeDelta,
        /// Where that comes from, for this bird.
        source: Source,
    },
    /// It thaws this long in cold water.
    WaterThaw {
        /// At least.
        least: TimeDelta,
        /// Planned with.
        most: TimeDelta,
        /// Where that comes from, for this bird.
        source: Source,
    },
    /// What is still ice after some time in the fridge thaws this long in cold water.
    WaterFinish {
        /// Planned with.
        most: TimeDelta,
    },
    /// Thawing water is changed this often.
    WaterChange {
        /// How often.
        every: TimeDelta,
    },
    /// Thawed in cold water it is cooked at once.
    CookAtOnce,
    /// Thawed in the fridge it keeps this long raw.
    ThawedKeeps {
        /// At most.
        most: TimeDelta,
    },
    /// Dry salt wants this long to get in.
    SaltWants {
        /// At least.
        least: TimeDelta,
    },
    /// Salted or brined it waits at most this long.
    SaltAtMost {
        /// At most.
        most: TimeDelta,
    },
    /// Brine wants this long.
    BrineWants {
        /// At least.
        least: TimeDelta,
    },
    /// It takes this long to dry, pierce and butter it.
    Temper {
        /// About.
        about: TimeDelta,
    },
    /// It is out of the fridge at most this long.
    RoomTemperature {
        /// At most.
        most: TimeDelta,
    },
    /// The cooker needs this long to be hot.
    Preheat {
        /// Which cooker.
        cooker: Cooker,
        /// At least.
        least: TimeDelta,
    },
    /// It takes so long over the heat, as the timetable or practice has it.
    CookingTime {
        /// One in ten is quicker.
        p10: TimeDelta,
        /// Nine in ten are quicker: the time planned with.
        p90: TimeDelta,
        /// Where that comes from, for this bird and cooker.
        source: Source,
    },
    /// The readings say when it will be done.
    Forecast,
    /// Read the thermometers in good time before it can be done.
    CheckBefore,
    /// It stands before it is carved.
    Stand {
        /// At least.
        least: TimeDelta,
    },
    /// Hot it waits at most this long, unless kept at 140 °F.
    HotHold {
        /// At most.
        most: TimeDelta,
    },
    /// Carving takes this long.
    Carving {
        /// About.
        about: TimeDelta,
    },
    /// Out of the heat or off the table it is in the fridge within this time.
    TwoHours {
        /// At most.
        most: TimeDelta,
    },
    /// It has to be cold through before it is packed or reheated.
    ColdThrough {
        /// At least.
        least: TimeDelta,
    },
    /// The drive takes this long.
    Drive {
        /// Door to door.
        takes: TimeDelta,
    },
    /// Packed cold it leaves within this time.
    PackedCold {
        /// At most.
        most: TimeDelta,
    },
    /// Carried hot it is on the table within this time of leaving the heat.
    HotRoad {
        /// At most.
        most: TimeDelta,
    },
    /// Reheating takes this long.
    Reheat {
        /// About.
        about: TimeDelta,
    },
    /// Between cold and 165 °F it takes at most this long.
    ReheatWithin {
        /// At most.
        most: TimeDelta,
    },
    /// Cooked it keeps this long in the fridge.
    CookedKeeps {
        /// At most.
        most: TimeDelta,
    },
    /// A dish is hot when it comes to the table.
    DishHot {
        /// Its place in the order.
        dish: u8,
        /// How long it waits at most.
        most: TimeDelta,
    },
    /// A dish is made in good time and kept in the fridge.
    DishAhead {
        /// Its place in the order.
        dish: u8,
    },
    /// A dish wants this long in the cold before it is eaten.
    DishCold {
        /// Its place in the order.
        dish: u8,
        /// At least.
        least: TimeDelta,
    },
    /// A dish finds no room in the fridge.
    FridgeTaken {
        /// Its place in the order.
        dish: u8,
        /// Shelves there are.
        shelves: u8,
        /// It is the bird that is in its way: once that is out there is room.
        bird: bool,
    },
    /// A dish wants a heat that something else has.
    HeatTaken {
        /// Its place in the order.
        dish: u8,
        /// What has it.
        rival: Rival,
    },
    /// At an hour when people are up.
    Sociable,
    /// Dinner was before now.
    DinnerPast,
    /// Dinner is more than a year away.
    DinnerTooFar,
    /// That bird isn't cooked so: the setting, the cooker or the bird itself.
    NotCookedSo(RoastError),
    /// The drive is longer than a cooler is trusted for.
    DriveTooLong {
        /// At most.
        most: TimeDelta,
    },
}

impl Reason {
    /// Where the number comes from. `None` for facts, wishes and the order of things.
    pub fn source(self) -> Option<Source> {
        Some(match self {
            Self::RawKeeps { .. } => source::COUNTDOWN,
            Self::UseBy { .. } => source::USE_BY,
            Self::FridgeThaw { source, .. }
            | Self::FridgeShare { source, .. }
            | Self::WaterThaw { source, .. }
            | Self::CookingTime { source, .. } => source,
            Self::CookAtOnce | Self::ThawedKeeps { .. } => source::TURKEY_THAWING,
            Self::WaterChange { .. } => source::BIG_THAW,
            Self::SaltAtMost { .. } => SALT_LIMIT,
            Self::RoomTemperature { .. } | Self::TwoHours { .. } | Self::HotHold { .. } | Self::HotRoad { .. } => {
                source::DANGER_ZONE
            }
            Self::ColdThrough { .. } | Self::ReheatWithin { .. } => source::FOOD_CODE,
            Self::CookedKeeps { .. } | Self::DishAhead { .. } => source::LEFTOVERS,
            Self::Stand { .. } => source::TURKEY_STUFFING,
            Self::NotCookedSo(RoastError::ThawBeforeSmoking) => source::SMOKING,
            Self::WaterFinish { .. }
            | Self::SaltWants { .. }
            | Self::BrineWants { .. }
            | Self::Temper { .. }
            | Self::Preheat { .. }
            | Self::CheckBefore
            | Self::Carving { .. }
            | Self::PackedCold { .. }
            | Self::Reheat { .. }
            | Self::DishHot { .. }
            | Self::DishCold { .. }
            | Self::FridgeTaken { .. }
            | Self::HeatTaken { .. }
            | Self::DriveTooLong { .. } => PLAN_PRACTICE,
            Self::Dinner
            | Self::Now
            | Self::Done
            | Self::Follows { .. }
            | Self::ShopFrom { .. }
            | Self::Forecast
            | Self::Drive { .. }
            | Self::Sociable
            | Self::DinnerPast
            | Self::DinnerTooFar
            | Self::NotCookedSo(_) => return None,
        })
    }
}

impl Reason {
    /// Place in the telling: from the shop to the table, as the jobs come.
    pub(super) fn place(self) -> u8 {
        match self {
            Self::Now | Self::Done | Self::DinnerPast | Self::DinnerTooFar | Self::NotCookedSo(_) => 0,
            Self::Follows { step: Step::Buy, .. }
            | Self::ShopFrom { .. }
            | Self::RawKeeps { .. }
            | Self::UseBy { .. } => 1,
            Self::FridgeThaw { .. } | Self::FridgeShare { .. } => 2,
            Self::WaterThaw { .. } | Self::WaterFinish { .. } | Self::WaterChange { .. } => 2,
            Self::ThawedKeeps { .. } | Self::CookAtOnce => 3,
            Self::SaltWants { .. } | Self::BrineWants { .. } | Self::SaltAtMost { .. } => 4,
            Self::Follows { step: Step::Salt, .. } => 5,
            Self::Temper { .. } | Self::RoomTemperature { .. } | Self::Preheat { .. } => 6,
            Self::CookingTime { .. } | Self::Forecast | Self::CheckBefore => 7,
            Self::Stand { .. } | Self::HotHold { .. } => 8,
            Self::Carving { .. } | Self::TwoHours { .. } => 9,
            Self::ColdThrough { .. } | Self::CookedKeeps { .. } => 10,
            Self::Follows { .. } | Self::PackedCold { .. } => 11,
            Self::HotRoad { .. } => 8,
            Self::Drive { .. } | Self::DriveTooLong { .. } => 12,
            Self::Reheat { .. } | Self::ReheatWithin { .. } => 13,
            Self::Sociable | Self::DishHot { .. } | Self::DishAhead { .. } | Self::HeatTaken { .. } => 14,
            Self::DishCold { .. } | Self::FridgeTaken { .. } => 14,
            Self::Dinner => 15,
        }
    }
}

/// At most 48 hours in salt or brine.
const SALT_LIMIT: Source = Source {
    id: "salt-limit",
    publisher: "USDA FSIS",
    title: "brining and dry-brining a turkey (video transcript)",
    edition: "",
    table: "",
    standing: source::Standing::Seen,
};

/// Times of handling, preheating, carving, reheating.
const PLAN_PRACTICE: Source = Source {
    id: "plan-practice",
    publisher: "common practice",
    title: "no source",
    edition: "",
    table: "",
    standing: source::Standing::CommonPractice,
};
