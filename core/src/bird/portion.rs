//! Guests to mass and mass to guests.
//!
//! A portion is mass as bought a person. Published for turkey, turkey breast and chicken; the rest is common practice and
//! marked so. Start at [`mass_for`].

use super::{BirdMass, Diners, Kind};
use crate::quantity::{Mass, in_pounds, pounds};
use crate::range::Range;
use crate::source::{self, Source};

/// Above this mass two birds are the better buy: quicker, more even, and the timetable ends here.
pub const TWO_BIRDS_ABOVE_LB: f64 = 24.0;

/// Share of an adult's portion that a child eats. Common practice, no source.
const CHILD: f64 = 0.5;
/// A turkey this big carries more meat a pound, so that the leaner portion suffices.
const BIG_TURKEY_LB: f64 = 12.0;
/// Birds of one kind nobody cooks more of at a time.
const MOST_BIRDS: f64 = 200.0;

/// Whether there should be some left.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Leftovers {
    /// Just enough.
    None,
    /// For the days after: a quarter to a half more (common practice, no source).
    Some,
}

impl Leftovers {
    /// From a plain yes or no.
    pub fn wanted(wanted: bool) -> Self {
        if wanted { Self::Some } else { Self::None }
    }

    fn factor(self) -> Range<f64> {
        match self {
            Self::None => Range::exactly(1.0),
            Self::Some => Range::new(1.25, 1.5),
        }
    }
}

/// Mass as bought a person.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Portion {
    /// A person: from the lean to the ample portion.
    pub each: Range<Mass>,
    /// Source of the ample one.
    pub source: Source,
    /// Source of the lean one, where it is another.
    pub lean_source: Source,
}

/// What to buy.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Purchase {
    /// All together, from enough to ample.
    pub mass: Range<Mass>,
    /// How many birds.
    pub birds: u16,
    /// Each bird.
    pub each: Range<Mass>,
    /// The portion it rests on.
    pub portion: Portion,
}

/// How many adults a bird feeds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Feeds {
    /// From ample to lean portions.
    pub people: Range<u16>,
    /// The portion it rests on.
    pub portion: Portion,
}

/// Portion of that kind.
pub fn portion(kind: Kind) -> Portion {
    let (lean, ample, lean_source, source) = match kind {
        Kind::Turkey => (0.75, 1.0, source::BIG_TURKEY_PORTION, source::TURKEY_PORTIONS),
        Kind::TurkeyBreast => (0.75, 0.75, source::TURKEY_PORTIONS, source::TURKEY_PORTIONS),
        Kind::Chicken => (0.5, 1.0, source::CHICKEN_PORTIONS, source::PORTION_HABITS),
        Kind::Capon => (0.75, 1.0, source::PORTION_HABITS, source::PORTION_HABITS),
        Kind::Duck | Kind::Goose => (1.0, 1.5, source::PORTION_HABITS, source::PORTION_HABITS),
    };
    Portion { each: Range::new(pounds(lean), pounds(ample)), source, lean_source }
}

/// What to buy for those people; `None` when nobody eats, or more people than any kitchen feeds.
///
/// A turkey above 12 lb may be reckoned with the leaner portion; below, the low end is the full pound as well.
pub fn mass_for(kind: Kind, diners: &Diners) -> Option<Purchase> {
    let heads = f64::from(diners.adults) + CHILD * f64::from(diners.children);
    if heads <= 0.0 {
        return None;
    }
    let portion = portion(kind);
    let factor = Leftovers::wanted(diners.leftovers).factor();
    let ample = in_pounds(portion.each.high) * heads;
    let lean = lean_mass(kind, in_pounds(portion.each.low) * heads, ample);
    let low = lean * factor.low;
    let high = ample * factor.high;

    let biggest = in_pounds(kind.usual_mass().high);
    let birds = (low / biggest).ceil().max(1.0);
    if birds > MOST_BIRDS {
        return None;
    }
    // A single guest still buys a whole bird: never less than the smallest one sold.
    let smallest = in_pounds(kind.usual_mass().low);
    let each = Range::new((low / birds).clamp(smallest, biggest), (high / birds).clamp(smallest, biggest));
    Some(Purchase {
        mass: Range::new(pounds(each.low * birds), pounds((each.high * birds).max(each.low * birds))),
        birds: birds as u16,
        each: Range::new(pounds(each.low), pounds(each.high)),
        portion,
    })
}

/// How many adults (a child counts half of one) that mass feeds.
pub fn feeds(kind: Kind, mass: BirdMass, leftovers: Leftovers) -> Feeds {
    let lb = in_pounds(mass.get());
    let portion = portion(kind);
    let factor = leftovers.factor();
    let ample = in_pounds(portion.each.high) * factor.high;
    let lean = if kind == Kind::Turkey && lb <= BIG_TURKEY_LB {
        in_pounds(portion.each.high) * factor.low
    } else {
        in_pounds(portion.each.low) * factor.low
    };
    // The nudge keeps 14 lb at 1 lb each at 14 people, whatever the last bit of the pounds.
    let people = |each: f64| (lb / each + 1e-9).floor() as u16;
    Feeds { people: Range::new(people(ample), people(lean).max(people(ample))), portion }
}

/// The leaner portion counts for a turkey only as far as the bird is then still a big one.
fn lean_mass(kind: Kind, lean: f64, ample: f64) -> f64 {
    if kind == Kind::Turkey { lean.max(ample.min(BIG_TURKEY_LB)) } else { lean }
}

/// Cooked edible share of the mass as bought, meat and skin. `solution` tells whether the packer added some.
///
/// # Source
/// Turkey: 53 and 54.1 % (47.9 % with added solution); turkey breast 62 and 63 %; chicken 39.2 % (broiler) to 46.3 %
/// (roaster); duck 38.1 %, goose 41.5 %. Capon: as a roaster, by analogy.
pub fn edible_share(kind: Kind, solution: bool) -> (Range<f64>, Source) {
    match (kind, solution) {
        (Kind::Turkey, true) => (Range::new(0.4788, 0.53), source::TURKEY_YIELD_SR28),
        (Kind::Turkey, false) => (Range::new(0.53, 0.5411), source::TURKEY_YIELD_SR28),
        (Kind::TurkeyBreast, _) => (Range::new(0.62, 0.63), source::TURKEY_YIELD),
        (Kind::Chicken, _) => (Range::new(0.3924, 0.463), source::POULTRY_YIELD_SR28),
        (Kind::Capon, _) => (Range::exactly(0.463), source::POULTRY_YIELD_SR28),
        (Kind::Duck, _) => (Range::exactly(0.3814), source::POULTRY_YIELD_SR28),
        (Kind::Goose, _) => (Range::exactly(0.4145), source::POULTRY_YIELD_SR28),
    }
}

/// Cooked meat and skin a bird of that mass gives.
pub fn edible(kind: Kind, mass: BirdMass, solution: bool) -> Range<Mass> {
    let (share, _) = edible_share(kind, solution);
    Range::new(mass.get() * share.low, mass.get() * share.high)
}
