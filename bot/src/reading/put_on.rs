//! Dishes told without a word that can only add: "put potatoes in the oven 40 min at 375", "Füllung hinzufügen im Ofen 45 min bei 190",
//! "potatoes in the oven 40 min at 375".
//!
//! Each has its heat and its time and names nothing of the bird, so that no oven of the bird is set by it. Owns no word: see the
//! `talk-dish-` entries of the lexicon.

use super::Ground;
use super::bringing::behind;
use super::dish::{self, DishOrder};
use super::sentence::{Sentence, What};

/// A name told so is short.
const MOST_WORDS: usize = 4;

/// The dish told so. `None`: none, or it may be of the bird, or is asked.
pub(super) fn read_put_on(text: &str, ground: &Ground) -> Option<DishOrder> {
    let text = text.trim().trim_end_matches(['.', '!', ' ']);
    if text.contains(['?', '¿', '\n']) {
        return None;
    }
    put(text, ground).or_else(|| amid(text, ground)).or_else(|| bare(text, ground))
}

/// "Put potatoes in the oven 40 min at 375."
fn put(text: &str, ground: &Ground) -> Option<DishOrder> {
    dish::told_whole(behind(text, "dish-put", ground)?, ground).filter(|order| is_food(order, ground))
}

/// "Füllung hinzufügen im Ofen 45 min bei 190", "Kartoffeln dazu, 30 min auf dem Herd": the word that adds stands behind the name.
fn amid(text: &str, ground: &Ground) -> Option<DishOrder> {
    let adds = |word: &str| ground.lexicon.talk(&super::fold(word.trim_matches(',')), "dish-add-last");
    let words: Vec<&str> = text.split_whitespace().collect();
    let at = (1..words.len().min(MOST_WORDS + 2)).find(|at| words.get(*at).is_some_and(|word| adds(word)))?;
    let (name, rest) = (words.get(..at)?.join(" "), words.get(at + 1..)?.join(" "));
    dish::told_whole(&format!("{name} {rest}"), ground).filter(|order| is_food(order, ground))
}

/// "Potatoes in the oven 40 min at 375", and not a word more.
fn bare(text: &str, ground: &Ground) -> Option<DishOrder> {
    let order = dish::told_whole(text, ground).filter(|order| is_food(order, ground))?;
    let DishOrder::Add(added, None) = &order else { return None };
    added.setting_c?;
    let s = Sentence::read(text, ground.lexicon);
    // Where it goes or how long it takes begins what is no name.
    let from = (0..s.len()).find(|at| is_measured(&s, *at))?;
    // "We had it in the oven", in the words as they were written.
    let of_talk = ["dish-verb", "dish-soft", "mine", "manners", "asking"];
    let name = ground.lexicon.talk_words(&added.name);
    let named = name.iter().all(|word| !of_talk.iter().any(|group| ground.lexicon.talk(word, group)));
    (named && (from..s.len()).all(|at| is_measured(&s, at) || is_link(&s, at, ground))).then_some(order)
}

/// "40 min on the stove", "45 min at 375": how long and how hot, and nothing else.
pub fn tells_only_time(text: &str, ground: &Ground) -> bool {
    let s = Sentence::read(text, ground.lexicon);
    let timed = (0..s.len()).any(|at| s.amount(at).is_some_and(|amount| amount.span().is_some()));
    let about = |at: usize| ["dish-change", "dish-soft", "manners"].iter().any(|group| talks(&s, at, group, ground));
    timed
        && (0..s.len()).all(|at| is_measured(&s, at) || is_link(&s, at, ground) || about(at) || s.mark(at) == Some('.'))
}

fn talks(s: &Sentence, at: usize, group: &str, ground: &Ground) -> bool {
    ground.lexicon.talk(&super::fold(s.raw(at)), group)
}

/// An amount, a number, a heat.
fn is_measured(s: &Sentence, at: usize) -> bool {
    let number = matches!(s.item(at).map(|item| &item.what), Some(What::Amount(..) | What::Digits(_)));
    number || dish::heat(s, at).is_some()
}

fn is_link(s: &Sentence, at: usize, ground: &Ground) -> bool {
    s.mark(at) == Some(',') || s.is(at, "at") || talks(s, at, "dish-link", ground)
}

/// Whether what it is called may be food: no "it", no bird, no oven.
fn is_food(order: &DishOrder, ground: &Ground) -> bool {
    let DishOrder::Add(dish, _) = order else { return false };
    let words = ground.lexicon.talk_words(&dish.name);
    (1..=MOST_WORDS).contains(&words.len()) && !words.iter().any(|word| ground.lexicon.talk(word, "dish-not"))
}
