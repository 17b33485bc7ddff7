//! Meaning to take the bird off at a temperature, and to count on its rise: "it'll rise 10 deg resting. pull it at 155".
//!
//! What it is to be pulled at is no reading, nor is what it may climb to. Owns no word: see the `talk-pull-ahead` entry of the lexicon.

use super::lexicon::Lexicon;
use super::log::{Scale, numbers};
use super::sentence::Sentence;
use super::talk::begins_as_question;
use super::told::Told;
use carvetime_core::quantity::{Temperature, celsius, fahrenheit};

/// Longer texts tell a story.
const LONGEST: usize = 160;
/// Where the degrees stood.
const DEGREES: &str = "n";
/// What people take birds off at, in each scale: less may be an hour.
const PULLED_F: std::ops::RangeInclusive<f64> = 140.0..=195.0;
const PULLED_C: std::ops::RangeInclusive<f64> = 55.0..=90.0;

/// At what it is meant to come off. `None`: nobody means to, it is asked, or a spot is read beside it.
pub fn read_pull_ahead(text: &str, metric: bool, lexicon: &'static Lexicon) -> Option<Temperature> {
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    if asks || text.chars().count() > LONGEST {
        return None;
    }
    let sentence = Sentence::read(text, lexicon);
    let meat = ["spot-breast", "spot-thigh", "spot-wing", "spot-stuffing"];
    if meat.iter().any(|spot| sentence.has(spot)) {
        return None;
    }
    let usual = if metric { Scale::Celsius } else { Scale::Fahrenheit };
    numbers(&sentence).into_iter().find_map(|number| {
        let pulled = match number.scale.unwrap_or(usual) {
            Scale::Fahrenheit => PULLED_F.contains(&number.value).then(|| fahrenheit(number.value)),
            Scale::Celsius => PULLED_C.contains(&number.value).then(|| celsius(number.value)),
        };
        let behind = sentence.of(number.at + 1, "unit-").is_some();
        let raw = (0..sentence.len()).filter(|at| !behind || *at != number.at + 1);
        let raw: Vec<&str> = raw.map(|at| if at == number.at { DEGREES } else { sentence.raw(at) }).collect();
        pulled.filter(|_| Told::of(&raw.join(" "), lexicon).says("pull-ahead"))
    })
}
