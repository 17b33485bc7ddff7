//! "Stuffed and in the oven", "I took the stuffing out, it finishes in a dish", "the stuffing won't get there, what do we do".

use super::lexicon::Lexicon;
use super::talk::{Report, ReportKind, begins_as_question, read_report};
use super::told::Told;
use carvetime_core::plan::Step;

/// Longer texts tell a story.
const LONGEST: usize = 100;

/// The bird is stuffed, and on: what is left without the first says the second.
pub fn read_stuffed_in(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    if text.contains(['?', '¿']) || text.chars().count() > LONGEST {
        return None;
    }
    let told = Told::of(text, lexicon);
    let place = told.places("stuffed-and").max_by_key(|place| place.len())?;
    let words = told.words();
    let rest: Vec<&str> =
        words.iter().enumerate().filter(|(at, _)| !place.contains(at)).map(|(_, word)| word.as_str()).collect();
    let on = |report: &Report| report.kind == ReportKind::Done && report.step == Some(Step::On);
    read_report(&rest.join(" "), lexicon).filter(on)
}

/// It was taken out of the bird.
pub fn says_stuffing_out(text: &str, lexicon: &'static Lexicon) -> bool {
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    !asks && text.chars().count() <= LONGEST && Told::of(text, lexicon).says("stuffing-out")
}
