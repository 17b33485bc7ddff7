//! Dishes as people tell of them without a word that adds one first: "I'll bring green bean casserole, needs 30 min at 350", "no stuffing
//! after all", "stuffing takes 60 min".
//!
//! What is brought counts with its heat and its time only; what is dropped or changed is one that stands on the plan by that very name, which
//! is for the room to tell. Owns no word: see the `talk-` entries of the lexicon.

use super::Ground;
use super::dish::{self, DishOrder};
use super::sentence::{Sentence, What};
use super::will::made_of;
use carvetime_core::quantity::{Temperature, in_fahrenheit};

/// Longer texts tell a story.
const LONGEST: usize = 100;
/// As many words as a phrase looked for has.
const MOST_WORDS: usize = 6;
/// Under this no oven is set for a dish: it is what a thermometer reads in it.
const COOLEST_SETTING_F: f64 = 200.0;

/// What is told of a dish on the plan.
#[derive(Debug, Clone, PartialEq)]
pub struct DishChange {
    /// How long it takes, minutes.
    pub minutes: Option<u32>,
    /// What its oven is set to.
    pub setting: Option<Temperature>,
    /// `oven`, `smoker`, `stove`.
    pub heat: Option<&'static str>,
    /// An hour is told, at which it is to be in.
    pub hour: bool,
    /// With a verb: "stuffing takes 60 min", and not "stuffing 60 min".
    pub said: bool,
}

/// The dish someone says they bring, or asks the plan to take: it has its heat and its time. `None`: nothing of the kind.
pub fn read_brought(text: &str, ground: &Ground) -> Option<DishOrder> {
    let text = text.trim().trim_end_matches(['?', '!', '.', ' ']);
    if text.contains(['?', '¿', '\n']) && !text.starts_with('¿') || text.chars().count() > LONGEST {
        return None;
    }
    dish::told_whole(behind(text.trim_start_matches('¿'), "dish-bring", ground)?, ground)
}

/// The name of the dish that is dropped: "no stuffing after all", "skip the pie", "die Füllung lassen wir weg".
pub fn read_dropped(text: &str, ground: &Ground) -> Option<String> {
    if text.contains(['?', '¿', '/', '\n'])
        || text.chars().count() > LONGEST
        || text.contains(|c: char| c.is_ascii_digit())
    {
        return None;
    }
    let lead = behind(text, "dish-drop", ground);
    let words: Vec<&str> = lead.unwrap_or(text).split_whitespace().collect();
    let phrase = |from: usize| ground.lexicon.talk_words(&words.get(from..).unwrap_or_default().join(" "));
    let polite = |from: &usize| made_of(&phrase(*from), &["dish-drop-tail", "manners"], ground.lexicon).is_some();
    let drops =
        |from: &usize| made_of(&phrase(*from), &["dish-drop-last", "dish-drop-tail", "manners"], ground.lexicon);
    let end = match lead {
        Some(_) => (1..words.len()).find(polite).unwrap_or(words.len()),
        None => (1..words.len()).find(|from| drops(from).is_some_and(|found| found.contains(&"dish-drop-last")))?,
    };
    let name = dish::name(&words.get(..end)?.join(" "), ground);
    (!name.is_empty()).then_some(name)
}

/// The name of the dish that is taken off a plan: "take the rolls out", "nimm die Brötchen raus". Said of a plan only: rolls are taken out of
/// ovens as well.
pub fn read_taken_off(text: &str, ground: &Ground) -> Option<String> {
    let rest = behind(text.trim_end_matches(['.', '!', ' ']), "dish-take", ground)?;
    let words: Vec<&str> = rest.split_whitespace().collect();
    let off = |from: &usize| {
        let tail = ground.lexicon.talk_words(&words.get(*from..).unwrap_or_default().join(" "));
        made_of(&tail, &["dish-take-last", "manners"], ground.lexicon).is_some()
    };
    let end = (1..words.len()).find(off)?;
    let name = dish::name(&words.get(..end)?.join(" "), ground);
    (!name.is_empty()).then_some(name)
}

/// What the rest of a text, without the dish's name, says of it: "takes 60 min", "needs the oven at 400". `None`: something else as well.
pub fn read_dish_change(rest: &str, ground: &Ground) -> Option<DishChange> {
    if rest.contains(['?', '¿', '/', '\n']) || rest.chars().count() > LONGEST {
        return None;
    }
    let s = Sentence::read(rest, ground.lexicon);
    let mut change = DishChange { minutes: None, setting: None, heat: None, hour: false, said: false };
    for at in 0..s.len() {
        let word = super::fold(s.raw(at));
        let says = |group: &str| ground.lexicon.talk(&ground.lexicon.talk_words(&word).join(" "), group);
        change.said |= says("dish-change");
        if let Some(heat) = dish::heat(&s, at) {
            change.heat = Some(heat);
        } else if let Some(span) = s.amount(at).and_then(|amount| amount.span()) {
            change.minutes = Some(u32::try_from(span.num_minutes()).ok()?);
        } else if let Some(setting) = dish::setting(&s, at, ground) {
            (in_fahrenheit(setting) >= COOLEST_SETTING_F).then_some(())?;
            change.setting = Some(setting);
        } else if s.whole(at, 1..=24).is_some() {
            change.hour = true;
        } else if matches!(s.item(at)?.what, What::Word(_)) {
            let clock = ["part-", "number-and"].iter().any(|group| s.of(at, group).is_some()) || s.is(at, "oclock");
            let known = clock
                || says("dish-change")
                || says("dish-link")
                || says("manners")
                || s.is(at, "at")
                || s.is(at, "instead");
            known.then_some(())?;
        }
    }
    (change.minutes.is_some() || change.setting.is_some() || change.hour).then_some(change)
}

/// The text behind the longest phrase of that group at its beginning; politeness may stand before it.
pub(super) fn behind<'t>(text: &'t str, group: &str, ground: &Ground) -> Option<&'t str> {
    let blanks = text.char_indices().filter(|(_, c)| c.is_whitespace()).map(|(at, _)| at);
    let ends: Vec<usize> = blanks.take(MOST_WORDS + 2).collect();
    let leads = |end: &usize| {
        let words = ground.lexicon.talk_words(text.get(..*end).unwrap_or_default());
        made_of(&words, &[group, "manners"], ground.lexicon).is_some_and(|found| found.last() == Some(&group))
    };
    let end = ends.into_iter().rev().find(leads)?;
    text.get(end..).map(str::trim)
}
