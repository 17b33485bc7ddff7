//! A reading whose digits stand apart, as voice typing writes them: "pechuga 5 8", "breast 1 5 8", "breast one fifty eight".
//!
//! No meat over heat reads a single digit in either scale, so they are one number; whether they are, is for the room to ask.

use super::ground::Ground;
use super::log::{Log, read_log};
use super::sentence::Sentence;
use carvetime_core::quantity::Unit;

/// Longer texts tell a story.
const LONGEST: usize = 80;

/// The readings with their digits put together. `None`: none stand apart behind a spot.
pub fn read_digits_apart(text: &str, ground: &Ground) -> Option<Log> {
    if text.chars().count() > LONGEST {
        return None;
    }
    let sentence = Sentence::read(text, ground.lexicon);
    let (mut words, mut joined, mut at) = (Vec::new(), false, 0);
    while at < sentence.len() {
        let behind_spot = at.checked_sub(1).is_some_and(|before| is_spot(&sentence, before));
        match run(&sentence, at, ground.metric).filter(|_| behind_spot || at == 0) {
            Some((end, number)) => {
                words.push(number);
                joined = true;
                at = end;
            }
            None => {
                words.push(sentence.raw(at).to_owned());
                at += 1;
            }
        }
    }
    // Digits alone are a reading only beside a spot.
    let named = (0..sentence.len()).any(|at| is_spot(&sentence, at));
    let log = read_log(&words.join(" "), ground).ok().flatten();
    log.filter(|log| joined && named && log.readings.iter().all(|reading| reading.place.is_some()))
}

fn is_spot(s: &Sentence, at: usize) -> bool {
    s.is(at, "bird-turkey-breast") || s.of(at, "spot-").is_some_and(|spot| spot != "pit")
}

/// The digits that stand apart from there on: where they end, and the number they make, with its scale where one is written.
fn run(s: &Sentence, from: usize, metric: bool) -> Option<(usize, String)> {
    let most = if metric { 2 } else { 3 };
    let mut number = String::new();
    let mut at = from;
    while at < s.len() && number.len() < most {
        let Some(part) = part(s, at, !metric && number == "1") else { break };
        number.push_str(&part);
        at += 1;
        if s.number(at - 1).is_none() && !s.is(at - 1, "number-1") {
            // A scale is written behind the last.
            break;
        }
    }
    let value: f64 = number.parse().ok()?;
    let apart = at - from >= 2;
    let meat = if metric { (20.0..=99.0).contains(&value) } else { (40.0..=212.0).contains(&value) };
    let more = s.number(at).is_some() || s.mark(at) == Some('/');
    let scale = match s.amount(at - 1).and_then(|amount| amount.unit()) {
        Some(Unit::Fahrenheit) => " f",
        Some(Unit::Celsius | Unit::Cup) => " c",
        _ => "",
    };
    (apart && meat && !more).then(|| (at, number + scale))
}

/// One digit, or the two behind a hundred.
fn part(s: &Sentence, at: usize, behind_hundred: bool) -> Option<String> {
    if s.is(at, "number-1") {
        return Some("1".to_owned());
    }
    let degrees = [None, Some(Unit::Degree), Some(Unit::Fahrenheit), Some(Unit::Celsius), Some(Unit::Cup)];
    let amount = s.amount(at).filter(|amount| degrees.contains(&amount.unit()))?;
    let value = amount.value();
    let whole = value.fract() == 0.0 && !s.raw(at).contains(['.', ',', ':']);
    let most = if behind_hundred { 99.0 } else { 9.0 };
    (whole && (0.0..=most).contains(&value)).then(|| format!("{value:.0}"))
}
