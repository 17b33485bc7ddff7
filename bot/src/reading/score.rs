//! The score of a game that is watched beside the cooking: "score 21 to 17", "flames won 4-2", "cowboys 21 eagles 17".
//!
//! Its two numbers are of no bird, no oven and no clock. Owns no word: see the `talk-game` entry of the lexicon.

use super::lexicon::Lexicon;
use super::sentence::{Sentence, What};
use super::told::Told;
use regex::Regex;
use std::sync::LazyLock;

/// Longer texts tell a story.
const LONGEST: usize = 120;

/// Two numbers as a score is written or said.
static PAIR: LazyLock<Option<Regex>> = LazyLock::new(|| {
    Regex::new(r"(?i)(^|[^\d.,:])\d{1,3}\s*(-|–|:|\bto\b|\ba\b|\bà\b|\bzu\b|\bx\b)\s*\d{1,3}([^\d.,:°]|[.,]?$)").ok()
});

/// Whether it tells a score and names nothing of the dinner.
pub fn tells_a_score(text: &str, lexicon: &'static Lexicon) -> bool {
    if text.chars().count() > LONGEST {
        return false;
    }
    let sentence = Sentence::read(text, lexicon);
    const OURS: [&str; 5] = ["bird-", "food-", "dish-", "meal-", "place-"];
    let spot = |at: usize| sentence.of(at, "spot-").is_some_and(|spot| spot != "pit");
    let ours = |at: usize| spot(at) || OURS.iter().any(|group| sentence.of(at, group).is_some());
    let measured = |at: usize| sentence.amount(at).is_some_and(|amount| amount.unit().is_some());
    let of_dinner = ["people", "ask-thermometer", "cooker-oven", "cooker-smoker", "reading-said", "part-afternoon"];
    if (0..sentence.len()).any(|at| ours(at) || measured(at)) || of_dinner.iter().any(|it| sentence.has(it)) {
        return false;
    }
    let paired = PAIR.as_ref().is_some_and(|pair| pair.is_match(text));
    paired && Told::of(text, lexicon).says("game") || names_two_sides(&sentence, lexicon)
}

/// "Cowboys 21 eagles 17": two names nobody knows, a number behind each, and nothing else.
fn names_two_sides(s: &Sentence, lexicon: &'static Lexicon) -> bool {
    let items: Vec<usize> = (0..s.len()).filter(|at| s.mark(*at).is_none()).collect();
    let [one, first, other, second] = items[..] else { return false };
    let name = |at: usize| {
        let word = super::fold::fold(s.raw(at));
        let unknown = matches!(s.item(at).map(|item| &item.what), Some(What::Word([])));
        unknown && !lexicon.knows(&word) && word.chars().all(char::is_alphabetic)
    };
    name(one) && name(other) && s.whole(first, 0..=200).is_some() && s.whole(second, 0..=200).is_some()
}
