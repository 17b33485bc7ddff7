//! "Salted, 1 tbsp and 1 tsp", "salted it with 20 g": a bird that is salted, and with how much.
//!
//! Owns no word: see the `talk-` entries of the lexicon.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::{self, Report, ReportKind};
use super::told::Told;
use carvetime_core::plan::Step;
use carvetime_core::quantity::{Measure, in_grams};

/// Longer texts tell a story.
const LONGEST: usize = 80;
/// Nobody salts a bird with more.
const MOST_G: f64 = 500.0;

/// That the bird is salted, with amounts of salt beside it and nothing else.
pub fn read_dosed(text: &str, lexicon: &'static Lexicon) -> Option<Report> {
    let asks = text.contains(['?', '¿', '/']) || talk::begins_as_question(text, lexicon);
    if asks || text.chars().count() > LONGEST {
        return None;
    }
    let s = Sentence::read(text, lexicon);
    let mut rest = Vec::new();
    let mut dosed = false;
    for at in 0..s.len() {
        match s.amount(at) {
            Some(amount) => {
                let light = amount.mass().is_some_and(|mass| in_grams(mass) <= MOST_G);
                if !(light || amount.measure() == Some(Measure::Volume)) {
                    return None;
                }
                dosed = true;
            }
            None if s.number(at).is_some() => return None,
            None if s.mark(at).is_some() => {}
            None => rest.push(s.raw(at)),
        }
    }
    let words = rest.join(" ");
    let told = Told::of(&words, lexicon);
    let rest: Vec<&str> =
        told.words().iter().map(String::as_str).filter(|word| !lexicon.talk(word, "dose-link")).collect();
    let report = talk::read_report(&rest.join(" "), lexicon).filter(|_| dosed)?;
    (report.step == Some(Step::Salt) && report.kind == ReportKind::Done).then_some(report)
}
