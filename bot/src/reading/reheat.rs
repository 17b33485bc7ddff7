//! "Put it in my aunt's oven", "it's warming up": a bird that was off the heat is in it again.
//!
//! Owns the grammar only: the oven or the warming is named, and beside it nothing but who put it there and whose oven it is.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::told::Told;
use super::will::made_of;

/// Longer texts tell a story.
const LONGEST: usize = 80;
/// What may stand before it, and behind.
const BEFORE: [&str; 6] = ["into-heat-put", "filler", "manners", "into-heat-whose", "kin", "kin-two"];
const BEHIND: [&str; 7] = ["into-heat-whose", "kin", "kin-two", "article", "party-my", "filler", "manners"];

/// Whether the text says so. "The plates are in the oven" is of plates.
pub fn says_into_heat(text: &str, lexicon: &'static Lexicon) -> bool {
    let short = text.chars().count() <= LONGEST && !text.contains(['?', '¿', '/']);
    short && text.split([',', '.', '!', ';', '\n']).any(|clause| clause_says(clause, lexicon))
}

fn clause_says(clause: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(clause, lexicon);
    let words = told.words();
    let sentence = Sentence::read(clause, lexicon);
    let other = |at: usize| ["food-", "dish-"].iter().any(|group| sentence.of(at, group).is_some());
    if (0..sentence.len()).any(other) || clause.contains(|c: char| c.is_ascii_digit()) {
        return false;
    }
    let is = |word: &String, groups: &[&str]| groups.iter().any(|group| lexicon.talk(word, group));
    // A name nobody listed may stand behind "at".
    let whose = |word: &String| is(word, &BEHIND) || !lexicon.means(word);
    told.places("into-heat").any(|place| {
        let (before, behind) =
            (words.get(..place.start).unwrap_or_default(), words.get(place.end..).unwrap_or_default());
        (before.is_empty() || made_of(before, &BEFORE, lexicon).is_some()) && behind.iter().all(whose)
    })
}

/// "Do we have to warm it up?", "shall I put it in your oven?".
pub fn asks_to_reheat(text: &str, lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(text, lexicon);
    let asks = text.contains(['?', '¿']) || super::begins_as_question(text, lexicon);
    let other = |at: usize| ["food-", "dish-", "place-"].iter().any(|group| sentence.of(at, group).is_some());
    let names = sentence.has("ask-reheat") || Told::of(text, lexicon).says("into-heat");
    asks && names && text.chars().count() <= LONGEST && !(0..sentence.len()).any(other)
}

/// "Can I warm it up twice?": once more than once.
pub fn reheats_again(text: &str, lexicon: &'static Lexicon) -> bool {
    Sentence::read(text, lexicon).has("ask-reheat") && Told::of(text, lexicon).says("twice")
}
