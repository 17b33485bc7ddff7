//! "Bought it, it's 15 lb", "got the bird, 7.2 kg", "bought a 15 lb turkey": the bird is in the house, with its weight.
//!
//! A text counts where all of it is of that: "picked up 10 lb of potatoes" is no bird. Owns no word: see the `talk-` entries of the lexicon.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::{self, Report, ReportKind};
use super::told::Told;
use super::will::made_of;
use carvetime_core::plan::Step;
use carvetime_core::quantity::{Measure, in_grams};

/// Longer texts tell a story.
const LONGEST: usize = 80;

/// The purchase and the grams told with it. `None`: the text says something else as well, or asks.
pub fn read_bought(text: &str, lexicon: &'static Lexicon) -> Option<(Report, f64)> {
    if text.contains(['?', '¿', '/']) || text.chars().count() > LONGEST {
        return None;
    }
    let s = Sentence::read(text, lexicon);
    let mass = |at: usize| s.amount(at).filter(|amount| amount.measure() == Some(Measure::Mass));
    let mut weights = (0..s.len()).filter(|at| mass(*at).is_some());
    let (at, None) = (weights.next()?, weights.next()) else { return None };
    let grams = in_grams(mass(at)?.mass()?);
    let before = at.checked_sub(1).map(|last| s.quote(0, last)).unwrap_or_default();
    let rest = format!("{before} {}", s.quote(at + 1, s.len().saturating_sub(1)));
    if rest.contains(|c: char| c.is_ascii_digit()) {
        return None;
    }
    let mut found = None;
    for clause in rest.split([',', ';', '.', '!', '\n', ':']) {
        let words = lexicon.talk_words(clause);
        // "Got it" alone may be of anything; beside a weight it is the bird.
        if lexicon.talk(&words.join(" "), "got-it") {
            found = Some(Report { step: Some(Step::Buy), or: None, kind: ReportKind::Done, partly: false });
            continue;
        }
        if words.is_empty() || made_of(&words, &["weight-link", "manners", "filler"], lexicon).is_some() {
            continue;
        }
        let report = talk::read_report(clause, lexicon);
        let bought = |report: &Report| report.step == Some(Step::Buy) && report.kind == ReportKind::Done;
        found = Some(report.filter(bought)?);
    }
    found.map(|report| (report, grams))
}

/// "Nobody bought anything yet", in whatever stands beside it.
pub fn says_not_bought(text: &str, lexicon: &'static Lexicon) -> bool {
    const LONGEST: usize = 140;
    let asks = text.contains(['?', '¿', '/']) || talk::begins_as_question(text, lexicon);
    let told = Told::of(text, lexicon);
    !asks && text.chars().count() <= LONGEST && told.says("undone-buy") && !talk::tells_of_past_weeks(text, lexicon)
}

/// "It's already brined", "dont salt it, its pre brined", "the label says it's injected": the packer has salted it.
pub fn says_packer_salted(text: &str, lexicon: &'static Lexicon) -> bool {
    let asks = text.contains(['?', '¿', '/']) || talk::begins_as_question(text, lexicon);
    if asks || text.chars().count() > LONGEST {
        return false;
    }
    let mut says = false;
    for clause in text.split([',', ';', '.', '!', '\n', ':', '(', ')']) {
        let words = lexicon.talk_words(clause);
        if words.is_empty() {
            continue;
        }
        let Some(found) = made_of(&words, &["packer-salted", "packer-told", "manners", "filler", "mine-link"], lexicon)
        else {
            return false;
        };
        says |= found.contains(&"packer-salted");
    }
    says
}

/// "I injected it with my marinade, no more salt please": the salt is in what it has been given.
pub fn says_salted_by_marinade(text: &str, lexicon: &'static Lexicon) -> bool {
    let asks = text.contains(['?', '¿', '/']) || talk::begins_as_question(text, lexicon);
    let told = Told::of(text, lexicon);
    !asks && told.says("marinated") && told.says("salt-no-more") && !talk::tells_of_past_weeks(text, lexicon)
}

/// "It weighs 3.4 kg after all": the weight, where nothing is said but that something has it.
pub fn weighs(text: &str, lexicon: &'static Lexicon) -> Option<String> {
    if text.contains(['?', '¿', '/']) {
        return None;
    }
    let sentence = Sentence::read(text, lexicon);
    let mass = |at: &usize| sentence.amount(*at).is_some_and(|amount| amount.measure() == Some(Measure::Mass));
    let rest: Vec<&str> = (0..sentence.len()).filter(|at| !mass(at)).map(|at| sentence.raw(at)).collect();
    let one = rest.len() + 1 == sentence.len();
    let words = lexicon.talk_words(&rest.join(" "));
    let told = || made_of(&words, &["weighs", "turned-out", "manners", "filler"], lexicon);
    let said = one && told().is_some_and(|groups| groups.contains(&"weighs"));
    let at = (0..sentence.len()).find(mass).filter(|_| said)?;
    Some(sentence.raw(at).to_owned())
}
