//! The numbers of several birds in one message, each with its bird: "bens 121 in the breast, the big one 98".
//!
//! Where every number has a bird and every bird a number, each gets its own; where not, nothing is guessed.

use super::naming;
use super::sitting::Sitting;
use crate::reading::sentence::Sentence;
use crate::reading::{self, Log, Place};
use carvetime_core::quantity::in_fahrenheit;

/// Meat over a heat or just off it, where no spot is named, °F.
const MEAT_F: std::ops::RangeInclusive<f64> = 60.0..=212.0;

/// The plans with what was read in each. `None`: not every number has a bird of its own.
pub(super) fn read(sitting: &Sitting<'_>, text: &str) -> Option<Vec<(u32, Log)>> {
    let parts: Vec<&str> = text.split_whitespace().collect();
    let names = naming::mentions(sitting, &parts);
    let first = names.first()?;
    if names.iter().all(|name| name.serial == first.serial) {
        return None;
    }
    let named = |at: usize| names.iter().any(|name| name.place.contains(&at));
    let number = |at: usize| !named(at) && parts.get(at).is_some_and(|part| naming::measures(part));
    let leads = first.place.start < (0..parts.len()).find(|at| number(*at))?;
    let mut said: Vec<(u32, String)> = Vec::new();
    let mut used = Vec::new();
    for (nth, name) in names.iter().enumerate() {
        let next = names.get(nth + 1).map_or(parts.len(), |next| next.place.start);
        let before = nth.checked_sub(1).and_then(|nth| names.get(nth)).map_or(0, |before| before.place.end);
        let range = if leads { name.place.end..next } else { before..name.place.start };
        used.extend(range.clone());
        let words: Vec<&str> = range.filter_map(|at| parts.get(at).copied()).collect();
        let words = words.join(" ");
        match said.iter_mut().find(|(serial, _)| *serial == name.serial) {
            Some((_, told)) => *told = format!("{told} {words}"),
            None => said.push((name.serial, words)),
        }
    }
    if (0..parts.len()).any(|at| number(at) && !used.contains(&at)) {
        return None;
    }
    let mut logs: Vec<(u32, Log)> = Vec::new();
    for (serial, words) in &said {
        logs.push((*serial, log(sitting, words)?));
    }
    let bare = logs.iter().all(|(_, log)| log.readings.iter().all(|reading| reading.place.is_none()));
    if bare && !(names.iter().all(|name| name.sure) && logs.iter().all(|(_, log)| is_meat(sitting, log))) {
        return None;
    }
    // "Bens 121 in the thigh, martas 97": of the same spot.
    let spots: Vec<Place> = logs.iter().flat_map(|(_, log)| log.readings.iter().filter_map(|it| it.place)).collect();
    if let [spot] = spots.as_slice() {
        logs.iter_mut().flat_map(|(_, log)| &mut log.readings).for_each(|reading| reading.place = Some(*spot));
    }
    Some(logs)
}

/// One bird's number with no spot and nothing else beside its name: "mine is at 110". `None`: it may be of anything.
pub(super) fn at_a_number(sitting: &Sitting<'_>, text: &str) -> Option<Log> {
    let parts: Vec<&str> = text.split_whitespace().collect();
    let names = naming::mentions(sitting, &parts);
    let [name] = names.as_slice() else { return None };
    let words = |range: &mut dyn Iterator<Item = usize>| {
        range.filter_map(|at| parts.get(at).copied()).collect::<Vec<_>>().join(" ")
    };
    let rest = words(&mut (0..parts.len()).filter(|at| !name.place.contains(at)));
    let log = log(sitting, &rest)?;
    let bare = log.readings.iter().all(|reading| reading.place.is_none());
    (name.sure && bare && !text.contains(['?', '¿']) && is_meat(sitting, &log)).then_some(log)
}

/// What was read, from words that say nothing but that.
fn log(sitting: &Sitting<'_>, words: &str) -> Option<Log> {
    let lexicon = sitting.lexicon();
    let plain = |part: &str| {
        let told = lexicon.talk_words(part);
        let spot = |word: &String| Sentence::read(word, lexicon).of(0, "spot-").is_some_and(|spot| spot != "pit");
        let says = |word: &String, group: &str| lexicon.talk(word, group);
        let groups = ["filler", "meat", "meat-reads", "meat-tells", "dish-link", "which-filler"];
        naming::measures(part) || told.iter().all(|word| spot(word) || groups.iter().any(|group| says(word, group)))
    };
    if !words.split_whitespace().all(plain) {
        return None;
    }
    let words = words.trim_end_matches(|c: char| !c.is_alphanumeric() && c != '°');
    let mut log = reading::read_log(words, &sitting.ground()).ok().flatten()?;
    // "Down to 138" may be of a fire; of a bird that is named it is not.
    for reading in &mut log.readings {
        reading.place.take_if(|place| *place == Place::Pit);
    }
    Some(log)
}

fn is_meat(sitting: &Sitting<'_>, log: &Log) -> bool {
    let scale = if sitting.us_units() { reading::Scale::Fahrenheit } else { reading::Scale::Celsius };
    log.readings.iter().all(|reading| MEAT_F.contains(&in_fahrenheit(reading.temperature(scale))))
}
