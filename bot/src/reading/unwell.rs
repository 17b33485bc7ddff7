//! Whoever cooks is ill or has cut themselves, and whoever has eaten is ill: "I have a stomach bug, can I still make the stuffing", "Jake was throwing up last night",
//! "I cut my finger".
//!
//! Owns no word: see the `talk-unwell-` entries of the lexicon. A dog that is sick, a bug of weeks ago and a film are of nobody who cooks.

use super::lexicon::Lexicon;
use super::told::Told;

/// Longer texts tell a story.
const LONGEST: usize = 200;
/// A word that takes the next one back stands so near before it.
const DENIED_WITHIN: usize = 2;
/// As near stands who it is.
const OWN_WITHIN: usize = 3;

/// What keeps someone from food, or food from them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unwell {
    /// They throw up, or have diarrhea.
    Sick,
    /// They bleed.
    Cut,
    /// What they have eaten here made them ill.
    Ate,
}

/// What is said of somebody's health, and whether it is the speaker's own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Health {
    /// What it is.
    pub what: Unwell,
    /// They say it of themselves.
    pub own: bool,
}

/// Reads it. `None` for everything else.
pub fn read_unwell(text: &str, lexicon: &'static Lexicon) -> Option<Health> {
    if text.chars().count() > LONGEST {
        return None;
    }
    let told = Told::of(text, lexicon);
    let any = |group: &str| told.says(group);
    let sick = place(&told, "unwell-sick", lexicon);
    // "Grandpa threw up after dinner": he ate, whoever cooks.
    let ill = || sick.is_some() || place(&told, "unwell-queasy", lexicon).is_some();
    let ate = any("unwell-after") && ill() && !any("unwell-overate");
    if any("unwell-other") && !(ate && any("unwell-frail")) {
        return None;
    }
    let what = if ate {
        Unwell::Ate
    } else if sick.is_some() {
        Unwell::Sick
    } else if any("unwell-cut-self") || any("unwell-cut") && any("unwell-part") {
        Unwell::Cut
    } else {
        return None;
    };
    // "Had a bug last week, is it ok to cook?" wants its answer; told only, it is over.
    let asks = text.contains(['?', '¿']) && what != Unwell::Cut;
    if (any("weeks-ago") || any("other-year")) && !asks {
        return None;
    }
    let own = |(from, to): (usize, usize)| {
        let near = from.saturating_sub(OWN_WITHIN)..to;
        told.places("unwell-mine").any(|mine| near.start <= mine.start && mine.end <= near.end)
    };
    Some(Health { what, own: sick.is_some_and(own) })
}

/// Where the first phrase of that group stands that nothing before it takes back.
fn place(told: &Told, group: &str, lexicon: &Lexicon) -> Option<(usize, usize)> {
    let words = told.words();
    (0..words.len()).find_map(|from| {
        let to = told.end(from, group)?;
        let before = words.get(from.saturating_sub(DENIED_WITHIN)..from).unwrap_or_default();
        let denied = before.iter().any(|word| lexicon.talk(word, "unwell-denied"));
        // "He threw up 40 points".
        let counts = words.get(to).is_some_and(|next| next.starts_with(|c: char| c.is_ascii_digit()));
        (!denied && !counts).then_some((from, to))
    })
}
