//! A bird that has thawed where it should not: "left it in the sink to thaw overnight", "it's been in the garage since Saturday".
//!
//! Told, not asked ahead ("can I thaw it in the sink"). All of the text is of that, or it is of the beer in the garage. Owns no word: see
//! the `talk-thaw-` entries of the lexicon.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::{begins_as_question, tells_of_other_years};
use super::told::Told;
use super::will::made_of;
use chrono::TimeDelta;

/// Longer texts tell a story.
const LONGEST: usize = 120;
/// So long in the warm is too long.
const TOO_LONG: TimeDelta = TimeDelta::hours(2);
/// What such a text is made of.
const GROUPS: [&str; 8] =
    ["thaw-warm", "thaw-unsure", "thaw-word", "thaw-long", "thaw-link", "gone-day", "filler", "manners"];

/// Where it thawed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WarmThaw {
    /// In the kitchen, for hours.
    Kitchen,
    /// Somewhere that may have been cold enough, or not.
    Outside,
}

/// "Put it in cold water": it thaws in water.
pub fn names_water(text: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).says("thaw-water")
}

/// "Shall I put it in warm water?": not of hands or dishes, and not that there is none.
pub fn puts_into_warm_water(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    let sentence = Sentence::read(text, lexicon);
    let other = sentence.has("ask-wash") || (0..sentence.len()).any(|at| sentence.of(at, "dish-").is_some());
    told.says("thaw-hot") && !other && text.chars().count() <= LONGEST
}

/// Reads it, and whether thawing is named: without it, a bird that is planned has to be meant.
pub fn read_warm_thaw(text: &str, lexicon: &'static Lexicon) -> Option<(WarmThaw, bool)> {
    if text.chars().count() > LONGEST || begins_as_question(text, lexicon) || tells_of_other_years(text, lexicon) {
        return None;
    }
    let told = Told::of(text, lexicon);
    let any = |group: &str| told.says(group);
    let place = if any("thaw-warm") {
        WarmThaw::Kitchen
    } else if any("thaw-unsure") {
        WarmThaw::Outside
    } else {
        return None;
    };
    let sentence = Sentence::read(text, lexicon);
    let span = (0..sentence.len()).find_map(|at| sentence.amount(at)?.span());
    if any("weeks-ago") || span.is_some_and(|span| span <= TOO_LONG) {
        return None;
    }
    let thaws = any("thaw-word");
    // Out of the fridge and not said to thaw, fresh or cooked, is a matter of its hours.
    if !thaws && (place == WarmThaw::Kitchen || sentence.has("ask-out")) {
        return None;
    }
    let long = span.is_some() || any("thaw-long") || any("gone-day");
    let digits = |word: &String| word.starts_with(|c: char| c.is_ascii_digit());
    let told: Vec<String> = told.words().iter().filter(|word| !digits(word)).cloned().collect();
    (long && made_of(&told, &GROUPS, lexicon).is_some()).then_some((place, thaws))
}
