//! How long food keeps in fridge and freezer.

use super::Jurisdiction;
use crate::range::Range;
use crate::source::{self, Source};
use chrono::TimeDelta;

/// What is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Food {
    /// A raw whole chicken or turkey, never frozen or thawed in the fridge.
    RawWhole,
    /// Raw pieces of chicken or turkey.
    RawPieces,
    /// A raw duck or goose.
    RawDuckOrGoose,
    /// Raw giblets.
    Giblets,
    /// Cooked bird, leftovers of any kind.
    Leftovers,
    /// Cooked slices or pieces without sauce.
    CookedPieces,
    /// Cooked, covered with broth or gravy.
    CookedInGravy,
    /// Gravy and broth.
    Gravy,
    /// Cooked stuffing.
    Stuffing,
    /// Stuffing and gravy, frozen.
    StuffingAndGravy,
    /// Soup or stew.
    Soup,
}

/// Where it is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// At 40 °F or below.
    Fridge,
    /// At 0 °F.
    Freezer,
    /// Bought so long before it is cooked.
    Shop,
}

/// A time, by the calendar's measure in which it is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Keep {
    /// Days: a matter of safety.
    Days(Range<u8>),
    /// Months in the freezer: quality only, it stays safe.
    Months(Range<u8>),
}

impl Keep {
    /// The longest safe time; `None` where time is only a matter of quality.
    pub fn safe_limit(self) -> Option<TimeDelta> {
        match self {
            Self::Days(days) => Some(TimeDelta::days(i64::from(days.high))),
            Self::Months(_) => None,
        }
    }
}

/// One printed keeping time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Keeping {
    /// What.
    pub food: Food,
    /// Where.
    pub place: Place,
    /// How long.
    pub keep: Keep,
    /// Where it is printed.
    pub source: Source,
}

const fn days(food: Food, place: Place, low: u8, high: u8, source: Source) -> Keeping {
    Keeping { food, place, keep: Keep::Days(Range::new(low, high)), source }
}

const fn months(food: Food, place: Place, low: u8, high: u8, source: Source) -> Keeping {
    Keeping { food, place, keep: Keep::Months(Range::new(low, high)), source }
}

use Food::*;
use Place::{Freezer, Fridge, Shop};

/// All printed keeping times, where they disagree too.
#[rustfmt::skip]
pub static KEEPING: &[Keeping] = &[
    days(RawWhole, Fridge, 1, 2, source::COLD_STORAGE), // chicken or turkey, whole, raw
    months(RawWhole, Freezer, 12, 12, source::COLD_STORAGE), // chicken or turkey, whole, raw
    days(RawPieces, Fridge, 1, 2, source::COLD_STORAGE), // chicken or turkey, pieces, raw
    months(RawPieces, Freezer, 9, 9, source::COLD_STORAGE), // chicken or turkey, pieces, raw
    days(RawDuckOrGoose, Fridge, 1, 2, source::DUCK_GOOSE), // duck or goose, raw
    days(Leftovers, Fridge, 3, 4, source::COLD_STORAGE), // cooked meat or poultry (leftovers)
    months(Leftovers, Freezer, 2, 6, source::COLD_STORAGE), // cooked meat or poultry (leftovers)
    days(Leftovers, Fridge, 3, 4, source::LEFTOVERS), // leftovers, any
    months(Leftovers, Freezer, 3, 4, source::LEFTOVERS), // leftovers, any
    days(Soup, Fridge, 3, 4, source::COLD_STORAGE), // soup or stew
    months(Soup, Freezer, 2, 3, source::COLD_STORAGE), // soup or stew
    days(Gravy, Fridge, 1, 2, source::COLD_STORAGE_COUNTY), // gravy and meat broth
    months(Gravy, Freezer, 2, 3, source::COLD_STORAGE_COUNTY), // gravy and meat broth
    days(Stuffing, Fridge, 3, 4, source::COLD_STORAGE_COUNTY), // cooked stuffing
    days(Stuffing, Fridge, 1, 2, source::STUFFING_SAFELY), // cooked stuffing
    months(Stuffing, Freezer, 1, 1, source::COLD_STORAGE_COUNTY), // cooked stuffing
    days(Giblets, Fridge, 1, 2, source::COLD_STORAGE_COUNTY), // giblets, raw
    months(Giblets, Freezer, 3, 4, source::COLD_STORAGE_COUNTY), // giblets, raw
    months(CookedPieces, Freezer, 4, 4, source::COLD_STORAGE_RETAILER), // turkey slices or pieces, plain, cooked
    months(CookedInGravy, Freezer, 6, 6, source::COLD_STORAGE_RETAILER), // turkey covered with broth or gravy, cooked
    months(StuffingAndGravy, Freezer, 1, 1, source::COLD_STORAGE_RETAILER), // stuffing and gravy
    months(RawWhole, Freezer, 12, 12, source::TURKEY_BUYING), // whole turkey, frozen
    days(RawWhole, Shop, 1, 2, source::COUNTDOWN), // fresh whole turkey: buy before cooking, at most
];

/// UK: leftovers keep 48 hours.
const UK_LEFTOVERS: Keeping = days(Leftovers, Fridge, 2, 2, source::UK_COOKING);

/// How long `food` keeps at `place`: where the charts disagree, the shorter. `None` where nothing is printed: then the
/// careful answer is the fridge's two hours and no more.
pub fn keeps(food: Food, place: Place, jurisdiction: Jurisdiction) -> Option<Keeping> {
    let cooked = matches!(food, Leftovers | CookedPieces | CookedInGravy | Gravy | Stuffing | StuffingAndGravy | Soup);
    // Slices, and slices in gravy, are leftovers in the fridge; stuffing with gravy keeps as its weaker half.
    let printed_as = match (food, place) {
        (CookedPieces, Fridge) => Leftovers,
        (CookedInGravy | StuffingAndGravy, Fridge) => Gravy,
        (food, _) => food,
    };
    let shortest = KEEPING
        .iter()
        .filter(|row| row.food == printed_as && row.place == place)
        .min_by_key(|row| match row.keep {
            Keep::Days(days) | Keep::Months(days) => (days.high, days.low),
        })
        .copied()?;
    let shortest = Keeping { food, ..shortest };
    let uk = jurisdiction == Jurisdiction::Uk && cooked && place == Fridge;
    Some(match shortest.keep {
        Keep::Days(days) if uk && days.high > 2 => Keeping { food, ..UK_LEFTOVERS },
        _ => shortest,
    })
}

names!(Food {
    RawWhole => "raw-whole",
    RawPieces => "raw-pieces",
    RawDuckOrGoose => "raw-duck-or-goose",
    Giblets => "giblets",
    Leftovers => "leftovers",
    CookedPieces => "cooked-pieces",
    CookedInGravy => "cooked-in-gravy",
    Gravy => "gravy",
    Stuffing => "stuffing",
    StuffingAndGravy => "stuffing-and-gravy",
    Soup => "soup",
});
names!(Place { Fridge => "fridge", Freezer => "freezer", Shop => "shop" });
