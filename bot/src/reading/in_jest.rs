//! What only sounds like the kitchen's: frost outside the house, frying that is over, of another year or of other food.
//!
//! Owns no word: see the `talk-frost` and `talk-fry-over` entries of the lexicon.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::begins_as_question;
use super::told::Told;

/// "My heart is at 37 degrees", "he has a fever of 38": of nobody's dinner.
pub fn speaks_of_own_body(text: &str, lexicon: &'static Lexicon) -> bool {
    // "I have a fever", without a figure, is of who can't come.
    text.contains(|c: char| c.is_ascii_digit()) && Told::of(text, lexicon).says("own-body")
}

/// "It's frozen outside": the ground is, and no bird that is said to be frozen still.
pub fn tells_of_frost(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    let sentence = Sentence::read(text, lexicon);
    let food = |at: usize| ["bird-", "food-", "dish-"].iter().any(|group| sentence.of(at, group).is_some());
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    told.says("frost") && !asks && !told.says("undone-thaw") && !(0..sentence.len()).any(food)
}

/// "Still should've fried it lol", "next year we're frying it", "fried onions": nobody fries a bird now.
pub fn only_speaks_of_frying(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    let asks = || text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    told.says("fry-over") || told.says("year-to-come") && !asks()
}
