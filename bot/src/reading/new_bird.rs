//! "Bought a new one", "got a new turkey, 12 lb fresh", "found a fresh 13 lb one at the store": another bird in place of one that was thrown
//! away.
//!
//! Read only where one was: elsewhere a new one may be a new thermometer. Owns no word: see the `talk-new-bird` entries of the lexicon.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::{begins_as_question, tells_of_other_years};
use super::told::Told;
use carvetime_core::quantity::Measure;

/// Longer texts tell a story.
const LONGEST: usize = 160;

/// What is said of another bird.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NewBird {
    /// There is one, or one was found.
    Is,
    /// One is spoken of, and nobody has it yet.
    Wanted,
}

/// Reads it. `None`: the words are of something else. `addressed`: they are said to the bot, which asked what the new one is like.
pub fn read_new_bird(text: &str, lexicon: &'static Lexicon, addressed: bool) -> Option<NewBird> {
    /// "12 lb fresh", "a fresh one, 12 and a half pounds".
    const FEW_WORDS: usize = 8;

    if text.chars().count() > LONGEST || tells_of_other_years(text, lexicon) {
        return None;
    }
    let told = Told::of(text, lexicon);
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    let sentence = Sentence::read(text, lexicon);
    let named = told.says("new-bird");
    if asks || told.says("new-bird-none") {
        return named.then_some(NewBird::Wanted);
    }
    let has = told.says("new-bird-got");
    let at = |test: &dyn Fn(usize) -> bool| (0..sentence.len()).any(test);
    let weighs = at(&|at| sentence.amount(at).is_some_and(|amount| amount.measure() == Some(Measure::Mass)));
    let like = at(&|at| sentence.of(at, "condition-").is_some());
    let bird = at(&|at| sentence.of(at, "bird-").is_some()) || told.says("new-bird-one");
    // "Got 10 lb of potatoes": a weight alone is of no bird, and neither is one of a dish.
    let food = |at: usize| sentence.of(at, "food-").is_some() && !sentence.is(at, "food-raw");
    let other = at(&|at| sentence.of(at, "dish-").is_some() || food(at));
    match (named, has) {
        (true, true) => Some(NewBird::Is),
        (true, false) if weighs => Some(NewBird::Is),
        (true, false) => Some(NewBird::Wanted),
        (false, true) if bird && (weighs || like) && !other => Some(NewBird::Is),
        (false, false) if weighs && (like || addressed) && !other && told.words().len() <= FEW_WORDS => {
            Some(NewBird::Is)
        }
        _ => None,
    }
}
