//! Two figures of one oven: what it is set to, and what a thermometer in it says. "Oven thermometer says 375 but I set 350."
//!
//! The thermometer's is the air's. Owns no word: see the `talk-dial-` entries of the lexicon.

use super::lexicon::Lexicon;
use super::log::{Scale, numbers};
use super::sentence::Sentence;
use super::told::Told;
use std::ops::Range;

/// Longer texts tell a story.
const LONGEST: usize = 140;
/// Where a figure stood: no word of any language.
const FIGURE: &str = "nnn";
/// What air that cooks may be at, in either scale: no meat is as hot.
const AIR: std::ops::RangeInclusive<f64> = 95.0..=600.0;
/// The same where the figure is in °F.
const AIR_F: f64 = 213.0;
/// Further apart they are not of one oven.
const APART: f64 = 150.0;

/// What an oven is set to, and what it has.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DialAndAir {
    /// What it is set to.
    pub dial: f64,
    /// What a thermometer in it says.
    pub air: f64,
    /// The scale of both, where it was written.
    pub scale: Option<Scale>,
}

/// Whose figure it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Whose {
    Dial,
    Air,
}

/// Reads both. `None`: there are not just these two, or they are of meat.
pub fn read_dial_and_air(text: &str, metric: bool, lexicon: &'static Lexicon) -> Option<DialAndAir> {
    if text.chars().count() > LONGEST {
        return None;
    }
    let sentence = Sentence::read(text, lexicon);
    let numbers = numbers(&sentence);
    let [first, second] = &numbers[..] else { return None };
    let meat = ["spot-breast", "spot-thigh", "spot-wing", "spot-stuffing"];
    let scale = first.scale.or(second.scale);
    let fahrenheit = scale == Some(Scale::Fahrenheit) || scale.is_none() && !metric;
    let air = |value: f64| AIR.contains(&value) && (!fahrenheit || value >= AIR_F);
    if meat.iter().any(|spot| sentence.has(spot))
        || !air(first.value)
        || !air(second.value)
        || (first.value - second.value).abs() > APART
    {
        return None;
    }
    let figure = |at: usize| numbers.iter().any(|number| number.at == at);
    let raw: Vec<&str> = (0..sentence.len()).map(|at| if figure(at) { FIGURE } else { sentence.raw(at) }).collect();
    let told = Told::of(&raw.join(" "), lexicon);
    let mut at = (0..told.words().len()).filter(|at| told.words().get(*at).is_some_and(|word| word == FIGURE));
    let (one, other) = (at.next()?, at.next()?);
    let clues = clues(&told);
    let before = |from: usize, to: usize| clues.iter().rev().find(|(place, _)| place.start >= from && place.end <= to);
    let behind = |from: usize, to: usize| clues.iter().find(|(place, _)| place.start >= from && place.end <= to);
    // "375 on the thermometer, 350 on the dial": where nothing stands before the first, each is named behind.
    let first_is = before(0, one).or_else(|| behind(one, other))?.1;
    let named_behind = before(0, one).is_none();
    let last = told.words().len();
    let second_is = match before(one, other).filter(|_| !named_behind || clues.len() > 1) {
        Some((_, whose)) if *whose != first_is => *whose,
        _ => behind(other, last)?.1,
    };
    match (first_is, second_is) {
        (Whose::Dial, Whose::Air) => Some(DialAndAir { dial: first.value, air: second.value, scale }),
        (Whose::Air, Whose::Dial) => Some(DialAndAir { dial: second.value, air: first.value, scale }),
        _ => None,
    }
}

/// Where words for either stand, in order; of those within each other the longest.
fn clues(told: &Told) -> Vec<(Range<usize>, Whose)> {
    let of = |group, whose| told.places(group).map(move |place| (place, whose));
    let all: Vec<(Range<usize>, Whose)> = of("dial-set", Whose::Dial).chain(of("dial-true", Whose::Air)).collect();
    let within =
        |one: &Range<usize>, other: &Range<usize>| one != other && other.start <= one.start && one.end <= other.end;
    let mut clues: Vec<(Range<usize>, Whose)> =
        all.iter().filter(|(one, _)| !all.iter().any(|(other, _)| within(one, other))).cloned().collect();
    clues.sort_by_key(|(place, _)| place.start);
    clues
}
