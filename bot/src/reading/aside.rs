//! Questions people put to each other that have nothing to do with the bird: "has the dog been out?", "did you buy the wine?".
//!
//! Owns what makes a question one of those. What is made of the answer to it is the room's to say.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::{begins_as_question, opens_as_question};

/// Shorter words link others ("al", "tu", "du").
const SHORTEST: usize = 3;
/// Longer texts are no question in passing.
const LONGEST: usize = 120;

/// Whether the text asks something, names no bird, and names a thing that no job of a plan is about. `names` are the people's.
pub fn asks_of_other_things(text: &str, names: &[String], lexicon: &'static Lexicon) -> bool {
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon) || opens_as_question(text, lexicon);
    if !asks || text.len() > LONGEST || names_the_bird(text, lexicon) {
        return false;
    }
    let sentence = Sentence::read(text, lexicon);
    if sentence.has("habit-dog") || sentence.has("aside-drink") {
        return true;
    }
    let names: Vec<String> = names.iter().flat_map(|name| lexicon.talk_words(name).to_vec()).collect();
    lexicon.talk_words(text).iter().any(|word| {
        let counts = word.chars().any(|c| c.is_ascii_digit());
        word.chars().count() >= SHORTEST && !counts && !names.contains(word) && !lexicon.knows(word)
    })
}

/// Whether the text speaks of a bird by name.
pub fn names_the_bird(text: &str, lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(text, lexicon);
    (0..sentence.len()).any(|at| sentence.of(at, "bird-").is_some())
}
