//! What meat off the heat reads: "in the fridge. its 80", "meat is 50", "reheated, 167", a bare 48.
//!
//! Owns the grammar only: which words may stand beside the number, and what else the text says. What the number means hangs on how far
//! the plan is, and is for the room to say.

use super::ground::Ground;
use super::lexicon::Lexicon;
use super::log::{Number, Scale, numbers};
use super::sentence::Sentence;
use super::talk::{Report, ReportKind, begins_as_question, opens_as_question, read_report};
use super::told::Told;
use carvetime_core::plan::Step;
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_fahrenheit};
use std::ops::RangeInclusive;

/// What was said of meat that is off the heat.
#[derive(Debug, Clone, PartialEq)]
pub struct Meat {
    /// The coldest number in it.
    pub coldest: Temperature,
    /// The hottest.
    pub hottest: Temperature,
    /// A scale, a spot or a word for meat stands beside it: no other number can be meant.
    pub plain: bool,
    /// A word that comes with a thermometer's number, or where a bird rests: said of one that rests, no other number is likely.
    pub tells: bool,
    /// A spot of the bird is named.
    pub spot: bool,
    /// What was done, told with it.
    pub report: Option<Report>,
    /// It is about reheating.
    pub reheated: bool,
    /// It asks whether that is all right to eat.
    pub asks: bool,
    /// What it says beside the number that is none of these.
    pub rest: Option<String>,
}

/// Longer texts tell a story.
const LONGEST: usize = 100;
/// Meat in a kitchen, from the freezer to just off the fire, °F.
const MEAT_F: RangeInclusive<f64> = 15.0..=212.0;

/// Reads a temperature of meat. `None`: no number, or one that may be of something else.
pub fn read_meat(text: &str, ground: &Ground) -> Option<Meat> {
    let sentence = Sentence::read(text, ground.lexicon);
    let air = sentence.has("spot-pit") && !sentence.has("ask-reheat");
    if asks_of_number(text, ground.lexicon) {
        return None;
    }
    if text.chars().count() > LONGEST || text.contains([':', '/']) || air || !only_degrees(&sentence) {
        return None;
    }
    let numbers = numbers(&sentence);
    let written = numbers.iter().find_map(|number| number.scale);
    let usual = if ground.metric { Scale::Celsius } else { Scale::Fahrenheit };
    let read: Vec<Temperature> = numbers
        .iter()
        .map(|number| match number.scale.or(written).unwrap_or(usual) {
            Scale::Fahrenheit => fahrenheit(number.value),
            Scale::Celsius => celsius(number.value),
        })
        .collect();
    if read.is_empty() || read.len() > 3 || !read.iter().all(|at| MEAT_F.contains(&in_fahrenheit(*at))) {
        return None;
    }
    let (coldest, hottest) =
        (read.iter().copied().reduce(Temperature::min)?, read.iter().copied().reduce(Temperature::max)?);
    let degree = (0..sentence.len()).any(|at| sentence.amount(at).is_some_and(|amount| amount.unit().is_some()));
    let spot = (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some_and(|spot| spot != "pit"));
    let beside = beside(text, ground.lexicon);
    let said_beside = beside.join(", ");
    let told = Told::of(text, ground.lexicon);
    let (words, asks_to_eat) = (told.words(), told.says("eat"));
    let asking = text.contains(['?', '¿']) || told.says("asking");
    // "Is it still ok?" is made of words that say nothing by themselves.
    let asks = (sentence.has("ask-safe") || asks_to_eat) && (!beside.is_empty() || asking);
    let report = read_report(&said_beside, ground.lexicon);
    let reheated = sentence.has("ask-reheat");
    let rest = (!beside.is_empty() && !asks && report.is_none() && !reheated).then_some(said_beside);
    let plain = degree
        || written.is_some()
        || spot
        || words.iter().any(|word| ground.lexicon.talk(word, "meat"))
        || report.is_some();
    let tells =
        words.iter().any(|word| ["meat-tells", "meat-rests"].iter().any(|group| ground.lexicon.talk(word, group)));
    Some(Meat { coldest, hottest, plain, tells, spot, report, reheated, asks, rest })
}

/// "Ovens on, 325 right": the fire is lit, and the number is of the air in it.
pub fn read_lit(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    let sentence = Sentence::read(text, lexicon);
    let meat = (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some_and(|spot| spot != "pit"));
    if meat || text.chars().count() > LONGEST || numbers(&sentence).is_empty() {
        return None;
    }
    let fire = |report: &Report| report.kind == ReportKind::Done && report.step == Some(Step::Fire);
    read_report(&beside(text, lexicon).join(", "), lexicon).filter(fire)
}

/// Whether the numbers in a text can only be of the air in a cooker.
pub fn names_air(text: &str, ground: &Ground) -> bool {
    const AIR_F: RangeInclusive<f64> = 215.0..=550.0;
    let sentence = Sentence::read(text, ground.lexicon);
    let meat = (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some_and(|spot| spot != "pit"));
    let numbers = numbers(&sentence);
    let usual = if ground.metric { Scale::Celsius } else { Scale::Fahrenheit };
    let fahrenheit = |number: &Number| match number.scale.unwrap_or(usual) {
        Scale::Fahrenheit => number.value,
        Scale::Celsius => in_fahrenheit(celsius(number.value)),
    };
    !meat && !numbers.is_empty() && numbers.iter().all(|number| AIR_F.contains(&fahrenheit(number)))
}

/// "Is 150 ok": of a number, not of this bird.
fn asks_of_number(text: &str, lexicon: &'static Lexicon) -> bool {
    const FIRST: usize = 3;
    let words = lexicon.talk_words(text);
    let early = words.iter().take(FIRST).any(|word| word.starts_with(|c: char| c.is_ascii_digit()));
    early && (begins_as_question(text, lexicon) || opens_as_question(text, lexicon))
}

/// Every amount is a temperature or a number alone: "it's 70 and been out 2 hours" is a question of the hours.
fn only_degrees(s: &Sentence) -> bool {
    let amounts: Vec<usize> =
        (0..s.len()).filter(|at| s.amount(*at).is_some_and(|amount| amount.unit().is_some())).collect();
    let numbers: Vec<usize> = numbers(s).iter().map(|number| number.at).collect();
    amounts.iter().all(|at| numbers.contains(at))
}

/// What the clauses say beside their numbers and the words that come with numbers.
fn beside(text: &str, lexicon: &'static Lexicon) -> Vec<String> {
    let empty = |word: &String| {
        let digits = word.trim_end_matches(['f', 'c', '°']).bytes().all(|b| b.is_ascii_digit());
        let spot = || Sentence::read(word, lexicon).of(0, "spot-").is_some_and(|spot| spot != "pit");
        digits || ["filler", "meat", "meat-reads", "meat-rests"].iter().any(|group| lexicon.talk(word, group)) || spot()
    };
    clauses(text)
        .into_iter()
        .map(|clause| lexicon.talk_words(clause))
        .filter(|words| !words.iter().all(empty))
        .map(|words| {
            let numbers = |word: &String| word.contains(|c: char| c.is_ascii_digit());
            let said = words.iter().filter(|word| !numbers(word) && !lexicon.talk(word, "meat"));
            said.map(String::as_str).collect::<Vec<_>>().join(" ")
        })
        .collect()
}

/// The text at its stops; a decimal comma is none.
pub(super) fn clauses(text: &str) -> Vec<&str> {
    let mut clauses = Vec::new();
    let mut from = 0;
    for (at, stop) in text.char_indices().filter(|(_, c)| matches!(c, ',' | ';' | '.' | '!' | '?' | '\n')) {
        let digit = |c: Option<char>| c.is_some_and(|c| c.is_ascii_digit());
        let end = at + stop.len_utf8();
        let inside = digit(text.get(..at).and_then(|before| before.chars().next_back()))
            && digit(text.get(end..).and_then(|after| after.chars().next()));
        if !inside {
            clauses.extend(text.get(from..at));
            from = end;
        }
    }
    clauses.extend(text.get(from..));
    clauses.retain(|clause| !clause.trim().is_empty());
    clauses
}
