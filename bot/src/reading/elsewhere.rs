//! Whose oven, freezer or power is spoken of: "bob's oven just died", "power went out at the cabin", "my oven broke in March" are of no
//! kitchen that cooks here now. Owns no word: see `talk-other-kitchen` and `talk-sits-people` of the lexicon.

use super::fold::fold;
use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::tells_of_past_weeks;
use super::told::Told;

/// Shorter than that it is no name with an s behind it.
const NAME: usize = 4;

/// Whether it is another's kitchen, or one of long ago. `names`: who is here; what is theirs may be ours.
pub fn names_another_kitchen(text: &str, names: &[String], lexicon: &'static Lexicon) -> bool {
    names_a_place(&Told::of(text, lexicon)) || tells_of_past_weeks(text, lexicon) || is_anothers(text, names, lexicon)
}

/// "We eat at home after all", "no drive, we stay home": told, and not asked.
pub fn says_eaten_at_home(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    !text.contains(['?', '¿', '/']) && told.says("eaten-home") && !told.opens_with("asking")
}

/// "At the cabin"; "I'm at work" says where someone is who hears of their own oven.
fn names_a_place(told: &Told) -> bool {
    let of_us = |at: usize| (1..=2).any(|count| at >= count && told.is(at - count..at, "of-us"));
    told.places("other-kitchen").any(|place| !of_us(place.start))
}

/// "Bob's oven", "el horno de Bob": whose name nobody here has.
fn is_anothers(text: &str, names: &[String], lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(text, lexicon);
    let thing = |at: usize| {
        sentence.of(at, "cooker-").is_some()
            || ["ask-oven-down", "habit-fridge-down", "habit-freezer-down"].iter().any(|down| sentence.is(at, down))
    };
    let here = |name: &str| names.iter().any(|known| fold(known).split(' ').any(|part| part == name));
    let unknown = |name: &str| !name.is_empty() && !lexicon.means(name) && !here(name);
    let owner = |at: usize| {
        let word = fold(sentence.raw(at));
        let stem = word.strip_suffix('s').map(|stem| stem.trim_end_matches('\''));
        let named = word.chars().count() >= NAME && sentence.meanings(at).is_empty();
        named && stem.is_some_and(|stem| unknown(stem) && (word.contains('\'') || unknown(&word)))
    };
    let before = |at: usize| at.checked_sub(1).is_some_and(owner);
    // "Bob" behind the words for his oven, as other languages have it.
    let behind = |at: usize| {
        let link = lexicon.talk(&fold(sentence.raw(at + 1)), "other-kitchen-of");
        let name = fold(sentence.raw(at + 2));
        link && sentence.meanings(at + 2).is_empty() && name.chars().all(char::is_alphabetic) && unknown(&name)
    };
    (0..sentence.len()).any(|at| thing(at) && (before(at) || behind(at)))
}

/// "Sat on the couch since 5": people do.
pub fn sits_somewhere(text: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).says("sits-people")
}
