//! A reading put right: "oops 154", "112 lol", "no 152", "162 i mean", "sorry, thigh 171".
//!
//! Owns the grammar only. Which reading is meant, and whether there is one, is for the room to say.

use super::fold::fold;
use super::ground::Ground;
use super::log::{Place, Scale, numbers};
use super::sentence::{Sentence, What};
use super::shorthand;
use super::told::Told;
use carvetime_core::quantity::{Temperature, celsius, fahrenheit};

/// What a reading should have been.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slip {
    /// Where, if that was said.
    pub place: Option<Place>,
    /// The right number.
    pub meant: Temperature,
}

/// Longer texts say more than that.
const LONGEST: usize = 50;

/// Reads a correction. `None`: the text is none, or says more.
pub fn read_slip(text: &str, ground: &Ground) -> Option<Slip> {
    let lexicon = ground.lexicon;
    if text.chars().count() > LONGEST || text.contains(['?', '¿', ':', '/']) {
        return None;
    }
    let spelled_out = shorthand::spelled_out(text, lexicon);
    let text = spelled_out.as_deref().unwrap_or(text);
    let sentence = Sentence::read(text, lexicon);
    let (value, scale) = told(&sentence)?;
    let said = Told::of(text, lexicon);
    let (words, slips) = (said.words(), || said.all("slip"));
    let negated = |word: &str| Sentence::read(word, lexicon).is(0, "negation");
    let corrects = || slips().next().is_some() || words.iter().any(|word| negated(word)) || text.contains('*');
    let slip = |word: &str| slips().flatten().any(|part| part == word) || negated(word);
    let number = |word: &str| word.starts_with(|c: char| c.is_ascii_digit());
    let only = || words.iter().all(|word| number(word) || slip(word) || shorthand::says_no_more(&fold(word), lexicon));
    if !only() || !corrects() {
        return None;
    }
    let place = (0..sentence.len()).find_map(|at| sentence.of(at, "spot-").and_then(Place::from_name));
    let usual = if ground.metric { Scale::Celsius } else { Scale::Fahrenheit };
    let meant = match scale.unwrap_or(usual) {
        Scale::Fahrenheit => fahrenheit(value),
        Scale::Celsius => celsius(value),
    };
    Some(Slip { place, meant })
}

/// The one number told; "152, not 125" and "no 152" have one.
fn told(s: &Sentence) -> Option<(f64, Option<Scale>)> {
    match numbers(s)[..] {
        [ref one] => Some((one.value, one.scale)),
        [] => {
            let any = |at: usize| match s.item(at).map(|item| &item.what) {
                Some(What::Amount(..) | What::Digits(_)) => s.number(at).or_else(|| s.amount(at).map(|it| it.value())),
                _ => None,
            };
            let mut all = (0..s.len()).filter_map(any);
            all.next().filter(|_| all.next().is_none()).map(|value| (value, None))
        }
        _ => None,
    }
}
