//! Whom the food is for: a small child, somebody pregnant, old or with a weak immune system. "Can Gabin, 14 months, have some of the
//! chicken?", "foie gras and pregnant?", "the baby ate a whole chestnut".
//!
//! Owns no word: see the `talk-diner-` entries of the lexicon. Who comes to dinner, and what a baby's bird weighs, is read elsewhere
//! ([`super::wish`]).

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::{begins_as_question, opens_as_question};
use super::told::Told;

/// Longer texts tell a story.
const LONGEST: usize = 200;
/// As many words name a food and who may not have it, and ask by that alone.
const BARE_WORDS: usize = 7;
/// Months of a child that still chokes easily, and years.
const MONTHS: std::ops::RangeInclusive<u32> = 4..=48;
const YEARS: std::ops::RangeInclusive<u32> = 1..=4;

/// What is asked, or has happened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Diner {
    /// A small child has swallowed what it may choke on.
    Swallowed,
    /// What a small child may choke on.
    Chokes,
    /// What those at more risk leave: raw, or made to be eaten cold.
    Leaves,
    /// What a small child may have of the bird.
    LittleOne,
    /// What those at more risk may have of the bird.
    Frail,
    /// What they may have at all.
    FrailAtAll,
}

/// Reads it. `None` for everything else.
pub fn read_diner(text: &str, lexicon: &'static Lexicon) -> Option<Diner> {
    if text.chars().count() > LONGEST {
        return None;
    }
    let told = Told::of(text, lexicon);
    let says = |group: &str| told.says(group);
    let sentence = Sentence::read(text, lexicon);
    let little = says("diner-little") || is_of_a_small_age(&told);
    let frail = sentence.has("habit-fragile") || sentence.has("frail-person");
    if !little && !frail && !says("diner-child") && !says("diner-chokes") {
        return None;
    }
    let raw = ["condition-frozen", "place-freezer", "ask-thaw", "at-home"].iter().any(|concept| sentence.has(concept));
    let marked = text.contains(['?', '¿']);
    let asks = marked || begins_as_question(text, lexicon) || opens_as_question(text, lexicon) || says("diner-may");
    let hard = says("diner-hard");
    let swallowed = little && says("diner-swallowed") || (little || says("diner-child")) && says("diner-gulped");
    if hard && swallowed && !says("diner-may") {
        return Some(Diner::Swallowed);
    }
    if hard && (little || says("diner-child")) && asks || hard && says("diner-chokes") {
        return Some(Diner::Chokes);
    }
    let bare = told.words().len() <= BARE_WORDS;
    if says("diner-risky") && (frail || little) && (asks || bare) {
        return Some(Diner::Leaves);
    }
    let at = |group: &str| (0..sentence.len()).any(|at| sentence.of(at, group).is_some());
    let birdish = at("bird-") || at("food-");
    // "Can we eat earlier, for the baby?", "how much turkey for six and a baby?"
    let of_dinner = ["earlier", "later", "ask-how-much", "ask-how-big", "ask-how-many", "ask-how-long"]
        .iter()
        .any(|concept| sentence.has(concept));
    if raw || of_dinner || !asks || !(says("diner-may") || birdish) {
        return None;
    }
    let eats = says("diner-eats") || little && at("food-");
    let numbers = told.words().iter().any(|word| word.contains(|c: char| c.is_ascii_digit()));
    if !eats || names_an_hour(text) {
        return None;
    }
    if little {
        return Some(Diner::LittleOne);
    }
    // "Grandma is 84, is 74 degrees enough?" is asked of the degrees.
    if !frail || numbers {
        return None;
    }
    Some(if !birdish && says("diner-what") { Diner::FrailAtAll } else { Diner::Frail })
}

/// Somebody eats, or is given something to.
pub fn speaks_of_a_meal(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    ["eat", "diner-eats"].iter().any(|group| told.says(group))
}

/// Whether food is named that is no bird's, or what goes beside it: its rule is its own.
pub(crate) fn names_what_is_beside(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    ["other-food", "diner-risky", "diner-hard"].iter().any(|group| told.says(group))
}

/// "At 19:00", "19h30", "7pm".
fn names_an_hour(text: &str) -> bool {
    let hour = |word: &str| {
        let behind = word.trim_start_matches(|c: char| c.is_ascii_digit());
        let counts = behind.len() < word.len();
        counts && (behind.starts_with(['h', ':']) || behind.starts_with("am") || behind.starts_with("pm"))
    };
    text.to_lowercase().split_whitespace().any(hour)
}

/// "14 months", "2 years old".
fn is_of_a_small_age(told: &Told) -> bool {
    let words = told.words();
    let counts = |at: usize| words.get(at).and_then(|word| word.parse::<u32>().ok());
    let follows = |at: usize, group: &str| told.end(at + 1, group).is_some();
    (0..words.len()).any(|at| {
        counts(at).is_some_and(|count| {
            MONTHS.contains(&count) && follows(at, "diner-months")
                || YEARS.contains(&count) && follows(at, "diner-years")
        })
    })
}
