//! A change taken back in words: "oh wait, undo that", "never mind", "no leave it", "wait no, it's back on".
//!
//! Counts as a whole, with nothing but politeness around it. Owns no word: see the `talk-` entries of the lexicon.

use super::lexicon::Lexicon;
use super::will::made_of;

/// Longer texts tell a story.
const LONGEST: usize = 60;
/// Of what it is made.
const GROUPS: [&str; 7] = ["plan-on", "leave-it", "undo-that", "undo-next", "unwilling", "assent", "manners"];

/// What is meant to be as it was.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Retraction {
    /// "Undo that": the change just made.
    Undo,
    /// "Wait no", "never mind": whatever came of the words just before.
    Never,
    /// "No leave it", "nope": what is asked.
    Leave,
    /// "It's back on": the dinner that was called off.
    PlanOn,
}

/// Reads it. `None` for everything else.
pub fn read_retraction(text: &str, lexicon: &'static Lexicon) -> Option<Retraction> {
    let found = all_of(text, &GROUPS, lexicon)?;
    let says = |group: &str| found.contains(&group);
    match () {
        () if says("plan-on") => Some(Retraction::PlanOn),
        () if says("undo-that") => Some(Retraction::Undo),
        () if says("leave-it") => Some(Retraction::Leave),
        () if says("undo-next") => Some(Retraction::Never),
        () if says("unwilling") && !says("assent") => Some(Retraction::Leave),
        () => None,
    }
}

/// The groups a short text is made of, clause by clause. `None`: it says something else as well, asks or is long.
fn all_of<'g>(text: &str, groups: &[&'g str], lexicon: &'static Lexicon) -> Option<Vec<&'g str>> {
    if text.len() > LONGEST || text.contains(['?', '¿', '/']) {
        return None;
    }
    let mut found = Vec::new();
    for clause in text.split([',', '.', ';', '!', '\n', '…', '-', '–', '—']) {
        let words = lexicon.talk_words(clause);
        if !words.is_empty() {
            found.extend(made_of(&words, groups, lexicon)?);
        }
    }
    Some(found)
}

/// A number that was heard as a reading and was none of this bird.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Misread {
    /// "That's the score lol", "not our bird", "wrong number".
    Other,
    /// "I meant the pit".
    Air,
}

/// Reads it, of the whole text and nothing but politeness and laughter around it.
pub fn read_misread(text: &str, lexicon: &'static Lexicon) -> Option<Misread> {
    const GROUPS: [&str; 7] = ["misread-air", "misread", "undo-that", "undo-next", "unwilling", "laughter", "manners"];
    let found = all_of(text, &GROUPS, lexicon)?;
    match () {
        () if found.contains(&"misread-air") => Some(Misread::Air),
        () if found.contains(&"misread") => Some(Misread::Other),
        () => None,
    }
}

/// Whether somebody is asked something, marked as a question or not: "mom do we have wine". `names`: what the people go by.
pub fn puts_a_question(text: &str, names: &[String], lexicon: &'static Lexicon) -> bool {
    let named = |word: &String| names.iter().any(|name| lexicon.talk_words(name).contains(word));
    let words = lexicon.talk_words(text);
    let addressed = words.iter().take_while(|word| lexicon.talk(word, "manners") || named(word)).count();
    let rest = words.get(addressed..).unwrap_or_default().join(" ");
    if text.contains(['?', '¿']) {
        return true;
    }
    // "Va bene", "está bien": without its mark that is a yes.
    if super::read_willing(text, lexicon).is_some() {
        return false;
    }
    let first = |many: usize| words.get(addressed..addressed + many).map(|some| some.join(" "));
    super::begins_as_question(&rest, lexicon)
        || super::opens_as_question(&rest, lexicon)
        || (1..=3).filter_map(first).any(|lead| lexicon.talk(&lead, "asking-plain"))
}
