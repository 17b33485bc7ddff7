//! What the heat was set to when the bird went in: "it went in at 325". It is of the air, and no reading.
//!
//! Owns no word: see the `talk-went-in-at` entry of the lexicon.

use super::lexicon::Lexicon;
use super::log::{Scale, numbers};
use super::sentence::Sentence;
use super::talk::begins_as_question;
use super::told::Told;
use carvetime_core::quantity::{celsius, fahrenheit, in_celsius};

/// Longer texts tell a story.
const LONGEST: usize = 100;
/// Air that ovens and smokers are set to, °C: no clock shows it in °F, no meat reads it.
const AIR_C: std::ops::RangeInclusive<f64> = 100.0..=290.0;

/// The setting, °C. `None`: nothing is said of it, it is asked, or a spot or another temperature stands beside it.
pub fn read_went_in_at(text: &str, metric: bool, lexicon: &'static Lexicon) -> Option<f64> {
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    if asks || text.chars().count() > LONGEST {
        return None;
    }
    let sentence = Sentence::read(text, lexicon);
    let other = |at: usize| {
        ["food-", "dish-"].iter().any(|group| sentence.of(at, group).is_some())
            || sentence.of(at, "spot-").is_some_and(|spot| spot != "pit")
    };
    let numbers = numbers(&sentence);
    let [number] = &numbers[..] else { return None };
    if (0..sentence.len()).any(other) {
        return None;
    }
    let usual = if metric { Scale::Celsius } else { Scale::Fahrenheit };
    let set = match number.scale.unwrap_or(usual) {
        Scale::Fahrenheit => in_celsius(fahrenheit(number.value)),
        Scale::Celsius => in_celsius(celsius(number.value)),
    };
    let behind = sentence.of(number.at + 1, "unit-").is_some();
    let raw = (0..sentence.len()).filter(|at| !behind || *at != number.at + 1);
    let raw: Vec<&str> = raw.map(|at| if at == number.at { "n" } else { sentence.raw(at) }).collect();
    let told = Told::of(&raw.join(" "), lexicon);
    let starts = told.places("went-in-at").map(|place| place.start).min()?;
    (AIR_C.contains(&set) && !names_a_thing(&told, starts)).then_some(set)
}

/// "The pie went in at 350": an article and a word that is not the bird's.
fn names_a_thing(told: &Told, end: usize) -> bool {
    let is = |at: usize, group: &str| told.is(at..at + 1, group);
    (1..end).any(|at| is(at - 1, "article") && !is(at, "filler"))
}
