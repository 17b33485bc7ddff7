//! One spot read several times, and each time something else: "the thermometer said 140 then 98 then 112".
//!
//! What only climbs is a bird that cooks. Owns no word: see the `talk-wanders` entry of the lexicon.

use super::ground::Ground;
use super::log::{Place, Scale, numbers};
use super::sentence::Sentence;
use super::told::Told;
use super::when::{Lean, read_when};

/// Longer texts tell a story.
const LONGEST: usize = 120;
/// What meat reads over heat, in °C.
const MEAT_C: std::ops::RangeInclusive<f64> = 4.0..=100.0;
/// Less is the hand that holds it, °C.
const FALL_C: f64 = 3.0;

/// Readings of one spot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wandering {
    /// Where; `None` where no spot was named.
    pub place: Option<Place>,
    /// The lowest of them, °C.
    pub lowest_c: f64,
    /// A thermometer, or what it said, was named.
    pub measured: bool,
}

/// Reads them. `None`: several spots, an hour beside them, or no spot that wanders.
pub fn read_wandering(text: &str, ground: &Ground) -> Option<Wandering> {
    if text.chars().count() > LONGEST {
        return None;
    }
    let sentence = Sentence::read(text, ground.lexicon);
    let mut taken = vec![false; sentence.len()];
    let numbers = numbers(&sentence);
    if numbers.len() < 2 || read_when(&sentence, &mut taken, ground, Lean::Past).is_some() {
        return None;
    }
    let mut places = (0..sentence.len()).filter_map(|at| match sentence.is(at, "bird-turkey-breast") {
        true => Some(Place::Breast),
        false => sentence.of(at, "spot-").and_then(Place::from_name),
    });
    let place = places.next();
    if place == Some(Place::Pit) || places.any(|other| Some(other) != place) {
        return None;
    }
    let usual = if ground.metric { Scale::Celsius } else { Scale::Fahrenheit };
    let scale = numbers.iter().find_map(|number| number.scale).unwrap_or(usual);
    let in_c = |value: f64| if scale == Scale::Fahrenheit { (value - 32.0) / 1.8 } else { value };
    let read: Vec<f64> = numbers.iter().map(|number| in_c(number.value)).collect();
    let meat = read.iter().all(|value| MEAT_C.contains(value));
    let falls = read.windows(2).any(|two| matches!(two, [one, other] if one - other >= FALL_C));
    let turns = |two: &[super::log::Number]| matches!(two, [one, other] if (one.at..other.at).any(|at| sentence.is(at, "in-turn")));
    let told = Told::of(text, ground.lexicon);
    let wanders = told.says("wanders") || numbers.windows(2).all(turns);
    let measured = sentence.has("ask-thermometer") || sentence.has("reading-said");
    let lowest_c = read.into_iter().fold(f64::INFINITY, f64::min);
    (meat && falls && wanders).then_some(Wandering { place, lowest_c, measured })
}
