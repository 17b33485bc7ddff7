//! How hot it is where people are: "it's 95 out here", "tá 34 graus na cozinha". The air's, and no reading of meat or oven.
//!
//! Owns no word: see `talk-air-here` in the lexicon.

use super::ground::Ground;
use super::log::{Scale, numbers};
use super::sentence::Sentence;
use super::told::Told;
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_fahrenheit};

/// Longer texts tell a story.
const LONGEST: usize = 80;
/// What a hot day's air may be, °F.
const AIR_F: std::ops::RangeInclusive<f64> = 85.0..=125.0;

/// Reads it. `None`: the text is of something else.
pub fn read_hot_air(text: &str, ground: &Ground) -> Option<Temperature> {
    let sentence = Sentence::read(text, ground.lexicon);
    if text.chars().count() > LONGEST || !Told::of(text, ground.lexicon).says("air-here") {
        return None;
    }
    let groups = ["spot-", "food-", "dish-", "bird-", "place-", "cooker-", "step-"];
    let other = |at: usize| groups.iter().any(|group| sentence.of(at, group).is_some());
    let numbers = numbers(&sentence);
    let [one] = &numbers[..] else { return None };
    if (0..sentence.len()).any(other) || sentence.has("ask-thermometer") {
        return None;
    }
    let at = match one.scale {
        Some(Scale::Fahrenheit) => fahrenheit(one.value),
        Some(Scale::Celsius) => celsius(one.value),
        None if ground.metric => celsius(one.value),
        None => fahrenheit(one.value),
    };
    AIR_F.contains(&in_fahrenheit(at)).then_some(at)
}
