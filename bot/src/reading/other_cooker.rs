//! "Let's do it in the oven instead": what the bird is to be cooked in after all.
//!
//! Owns no word: see the `cooker-` and `talk-other-cooker` entries of the lexicon.

use super::lexicon::Lexicon;
use super::sentence::{Sentence, What};
use super::told::Told;

/// "Let's do it in the oven instead", "rather the smoker, not the oven": what it is to cook in, where no heat is told. Two named are as many
/// as none.
pub fn read_other_cooker(text: &str, lexicon: &'static Lexicon) -> Option<&'static str> {
    /// So far before it stands what it is not.
    const BEFORE: usize = 3;
    let s = Sentence::read(text, lexicon);
    let others = |at: usize| {
        let food = s.of(at, "food-").is_some() || s.of(at, "dish-").is_some();
        food || s.number(at).is_some() || s.amount(at).is_some()
    };
    if !Told::of(text, lexicon).says("other-cooker") || (0..s.len()).any(others) {
        return None;
    }
    let is_not = |at: usize| {
        let before = at.saturating_sub(BEFORE)..at;
        before.rev().take_while(|place| s.of(*place, "cooker-").is_none()).any(|place| s.is(place, "negation"))
    };
    let mut named = (0..s.len()).filter(|at| !is_not(*at)).filter_map(|at| s.of(at, "cooker-"));
    let first = named.next()?;
    // "I have to clean the smoker": of the cooker, and not of what goes in.
    let empty =
        |word: &String| ["other-cooker-link", "filler", "manners"].iter().any(|group| lexicon.talk(word, group));
    let word = |raw: &str| lexicon.talk_words(raw).iter().all(empty);
    let plain = text.split([',', ';', '.', '!', '\n']).any(|clause| {
        let clause = Sentence::read(clause, lexicon);
        let cooker = |at: usize| clause.of(at, "cooker-").is_some();
        let is_word = |at: usize| matches!(clause.item(at).map(|item| &item.what), Some(What::Word([])));
        let empty = |at: usize| cooker(at) || !is_word(at) || word(clause.raw(at));
        (0..clause.len()).any(cooker) && (0..clause.len()).all(empty)
    });
    (plain && named.all(|other| other == first)).then_some(first)
}
