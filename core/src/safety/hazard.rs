//! What hurts people around a bird: short facts, each with its source, in the order of the published list.

use super::Unit;
use crate::source::{self, Source};

/// A danger or a habit that prevents one. The bot has a line for each.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Hazard {
    /// Burning charcoal indoors, in a tent, vehicle, garage or under a roofed porch: carbon monoxide kills, and does not smell.
    CharcoalIndoors,
    /// A grill still warm is not brought inside.
    WarmGrillInside,
    /// Frying: outdoors, at least so far from the house and anything that burns.
    FryOutdoors,
    /// Frying: fully thawed and dry, water makes the oil boil over.
    FryDry,
    /// Frying: find the oil level with water first; no heavier bird.
    FrySmall,
    /// Frying: never stuffed, never left alone, a dry-powder extinguisher at hand.
    FryWatched,
    /// Washing a raw bird: share of washers with bacteria in the sink afterwards.
    WashingBird,
    /// Washing: still there after the sink was cleaned.
    WashingSinkCleaned,
    /// Washing: washers who passed bacteria to the salad.
    WashingSalad,
    /// Not washing the bird is not enough: people who passed bacteria to the salad by hands and utensils.
    HandsSalad,
    /// Hands are washed at least so long.
    WashHands,
    /// Salmonella may survive on surfaces up to so long.
    SalmonellaOnSurfaces,
    /// Campylobacter may survive on surfaces up to so long.
    CampylobacterOnSurfaces,
    /// Raw bird in a tray on the lowest shelf; salad is made before.
    LowestShelf,
    /// The stuffing's centre reaches this.
    StuffingHot,
    /// Stuff loosely, just before cooking; wet and dry chilled apart; safest baked outside.
    StuffLoosely,
    /// Fresh ready-stuffed birds are not bought.
    ReadyStuffed,
    /// No oven below this.
    LowOven,
    /// Never part-cook now and finish later, unless straight on to the hot grill or smoker.
    PartCooking,
    /// More at risk: pregnant people, 65 or older, weakened immune system, small children.
    Vulnerable,
    /// High altitude starts here for cookbooks.
    HighAltitude,
    /// The air is much drier above this.
    DryAir,
    /// Innermost thigh, innermost wing, thickest breast; away from bone, fat, gristle.
    Thermometer,
    /// Colour and clear juices do not show that poultry is safe.
    Colour,
    /// Not reheated in a slow cooker; thawed before one.
    SlowCooker,
}

/// A hazard with the figure it prints, if any.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HazardFact {
    /// Which.
    pub hazard: Hazard,
    /// Its figure and unit.
    pub figure: Option<(f64, Unit)>,
    /// Where it is printed.
    pub source: Source,
}

const fn fact(hazard: Hazard, figure: Option<(f64, Unit)>, source: Source) -> HazardFact {
    HazardFact { hazard, figure, source }
}

/// All of them.
#[rustfmt::skip]
pub static HAZARDS: &[HazardFact] = &[
    fact(Hazard::CharcoalIndoors, None, source::CHARCOAL),
    fact(Hazard::WarmGrillInside, None, source::CHARCOAL),
    fact(Hazard::FryOutdoors, Some((10.0, Unit::Feet)), source::FRYING),
    fact(Hazard::FryDry, None, source::FRYING),
    fact(Hazard::FrySmall, Some((12.0, Unit::Pounds)), source::FRYING),
    fact(Hazard::FryWatched, None, source::FRYING),
    fact(Hazard::WashingBird, Some((60.0, Unit::Percent)), source::WASHING),
    fact(Hazard::WashingSinkCleaned, Some((14.0, Unit::Percent)), source::WASHING),
    fact(Hazard::WashingSalad, Some((26.0, Unit::Percent)), source::WASHING),
    fact(Hazard::HandsSalad, Some((31.0, Unit::Percent)), source::WASHING),
    fact(Hazard::WashHands, Some((20.0, Unit::Seconds)), source::HANDS),
    fact(Hazard::SalmonellaOnSurfaces, Some((32.0, Unit::Hours)), source::HANDS),
    fact(Hazard::CampylobacterOnSurfaces, Some((4.0, Unit::Hours)), source::HANDS),
    fact(Hazard::LowestShelf, None, source::LOWEST_SHELF),
    fact(Hazard::StuffingHot, Some((165.0, Unit::Fahrenheit)), source::TURKEY_STUFFING),
    fact(Hazard::StuffLoosely, None, source::TURKEY_STUFFING),
    fact(Hazard::ReadyStuffed, None, source::COUNTDOWN),
    fact(Hazard::LowOven, Some((325.0, Unit::Fahrenheit)), source::LOW_OVEN),
    fact(Hazard::PartCooking, None, source::SMOKING),
    fact(Hazard::Vulnerable, None, source::VULNERABLE),
    fact(Hazard::HighAltitude, Some((3000.0, Unit::Feet)), source::ALTITUDE),
    fact(Hazard::DryAir, Some((2500.0, Unit::Feet)), source::ALTITUDE),
    fact(Hazard::Thermometer, None, source::ROASTING_CHARTS),
    fact(Hazard::Colour, None, source::COLOUR),
    fact(Hazard::SlowCooker, None, source::SLOW_COOKERS),
];

impl Hazard {
    /// Its figure and source.
    pub fn fact(self) -> Option<&'static HazardFact> {
        HAZARDS.iter().find(|fact| fact.hazard == self)
    }
}

names!(Hazard {
    CharcoalIndoors => "charcoal-indoors",
    WarmGrillInside => "warm-grill-inside",
    FryOutdoors => "fry-outdoors",
    FryDry => "fry-dry",
    FrySmall => "fry-small",
    FryWatched => "fry-watched",
    WashingBird => "washing-bird",
    WashingSinkCleaned => "washing-sink-cleaned",
    WashingSalad => "washing-salad",
    HandsSalad => "hands-salad",
    WashHands => "wash-hands",
    SalmonellaOnSurfaces => "salmonella-on-surfaces",
    CampylobacterOnSurfaces => "campylobacter-on-surfaces",
    LowestShelf => "lowest-shelf",
    StuffingHot => "stuffing-hot",
    StuffLoosely => "stuff-loosely",
    ReadyStuffed => "ready-stuffed",
    LowOven => "low-oven",
    PartCooking => "part-cooking",
    Vulnerable => "vulnerable",
    HighAltitude => "high-altitude",
    DryAir => "dry-air",
    Thermometer => "thermometer",
    Colour => "colour",
    SlowCooker => "slow-cooker",
});
