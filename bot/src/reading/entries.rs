//! The word tables of a language as they are written in `locales/LANG/lexicon.ftl`, read once however many lexicons are made of them.
//!
//! Owns no word and knows no meaning: that is for [`super::lexicon`]. Start at [`of`]. All text lives as long as the program: most of it lies in the
//! files themselves, and the rest is kept once.

use super::fold::fold;
use crate::words::locales;
use fluent_syntax::ast::{Entry, PatternElement};
use rustc_hash::FxHashSet;
use std::collections::BTreeMap;
use std::sync::{LazyLock, Mutex, OnceLock, PoisonError};

/// Words and phrases by id (without `lexicon-`).
pub(super) type Entries = BTreeMap<&'static str, Vec<&'static str>>;

/// The tables of one language. A file that does not parse gives what can be read of it; a test holds it whole.
pub(super) fn of(language: &str) -> &'static Entries {
    static READ: LazyLock<Vec<(&'static str, OnceLock<Entries>)>> =
        LazyLock::new(|| locales::languages().into_iter().map(|language| (language, OnceLock::new())).collect());
    static NONE: Entries = Entries::new();
    let known = READ.iter().find(|(known, _)| *known == language);
    known.map_or(&NONE, |(language, entries)| entries.get_or_init(|| read(language)))
}

fn read(language: &str) -> Entries {
    let words = |lines: Vec<&'static str>| {
        let words = lines.into_iter().flat_map(|line| line.split([',', '\n'])).map(str::trim);
        words.filter(|word| !word.is_empty()).flat_map(|word| [Some(word), spelled_out(word)]).flatten().collect()
    };
    messages(language, "lexicon.ftl", "lexicon-").into_iter().map(|(id, lines)| (id, words(lines))).collect()
}

/// The phrase without its umlauts, the way it is typed where the keyboard has none: `Loeffel`, `fuer`.
fn spelled_out(phrase: &str) -> Option<&'static str> {
    if phrase.is_ascii() || !phrase.contains(['ä', 'ö', 'ü', 'Ä', 'Ö', 'Ü']) {
        return None;
    }
    let lower = phrase.to_lowercase();
    let spelled = lower.replace('ä', "ae").replace('ö', "oe").replace('ü', "ue");
    (spelled != lower).then(|| kept(spelled))
}

/// The names of the steps as the board shows them, in any region, folded, each with the step's stable name.
pub(super) fn shown_steps(language: &str) -> Vec<(&'static str, &'static str)> {
    let regions = locales::regional().into_iter().filter(|tag| tag.split('-').next() == Some(language));
    let shown = std::iter::once(language).chain(regions).flat_map(|tag| messages(tag, "plan.ftl", "plan-step-"));
    shown
        .map(|(id, lines)| (id, lines.concat()))
        .filter(|(_, name)| !name.trim().is_empty())
        .map(|(id, name)| {
            let step =
                ["thaw", "pack"].into_iter().find(|step| id.strip_prefix(step).is_some_and(|s| s.starts_with('-')));
            (kept(fold(&name).trim().to_owned()), step.unwrap_or(id))
        })
        .collect()
}

/// The messages of one file whose names begin with `group`: the rest of the name, and what stands there in letters, line by line.
fn messages(language: &str, file: &str, group: &str) -> Vec<(&'static str, Vec<&'static str>)> {
    let source = locales::files(language).into_iter().find(|(name, _)| *name == file).map_or("", |(_, text)| text);
    let resource = match fluent_syntax::parser::parse_runtime(source) {
        Ok(resource) | Err((resource, _)) => resource,
    };
    let mut messages = Vec::new();
    for entry in resource.body {
        let Entry::Message(message) = entry else { continue };
        let Some(id) = message.id.name.strip_prefix(group) else { continue };
        let elements = message.value.map(|pattern| pattern.elements).unwrap_or_default();
        let letters = elements.into_iter().filter_map(|element| match element {
            PatternElement::TextElement { value } => Some(value),
            PatternElement::Placeable { .. } => None,
        });
        messages.push((id, letters.collect()));
    }
    messages
}

/// Whether a phrase is written as texts are compared already: small letters, digits and single blanks.
pub(super) fn is_plain(phrase: &str) -> bool {
    let mut before = b' ';
    let plain = phrase.bytes().all(|byte| {
        let blank = byte == b' ' && before != b' ';
        before = byte;
        blank || byte.is_ascii_lowercase() || byte.is_ascii_digit()
    });
    plain && before != b' '
}

/// Words live as long as the program: each is kept once.
pub(super) fn kept(word: String) -> &'static str {
    static POOL: OnceLock<Mutex<FxHashSet<&'static str>>> = OnceLock::new();
    let mut pool = POOL.get_or_init(Default::default).lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(kept) = pool.get(word.as_str()) {
        return kept;
    }
    let kept: &'static str = Box::leak(word.into_boxed_str());
    pool.insert(kept);
    kept
}

#[cfg(test)]
mod tests {
    use super::*;
    use carvetime_core::quantity::{NumberWord, Unit};

    #[test]
    fn every_language_lists_the_same_meanings_and_may_have_words_for_more_numbers() {
        let english: Vec<&str> = of("en").keys().copied().collect();
        for language in locales::languages() {
            let mut own: Vec<&str> = of(language).keys().copied().collect();
            own.retain(|id| english.contains(id) || !id.starts_with("number-"));
            assert_eq!(own, english, "{language}");
        }
    }

    #[test]
    fn units_and_numbers_of_the_tables_are_ones_the_arithmetic_knows() {
        for id in locales::languages().into_iter().flat_map(|language| of(language).keys()) {
            if let Some(unit) = id.strip_prefix("unit-") {
                assert!(Unit::from_name(unit).is_some() || matches!(unit, "week" | "month"), "{unit}");
            }
            if let Some(number) = id.strip_prefix("number-") {
                assert!(NumberWord::from_name(number).is_some(), "{number}");
            }
        }
    }

    #[test]
    fn a_phrase_is_plain_where_folding_it_changes_nothing() {
        for plain in ["turkey", "in the oven", "2 birds"] {
            assert!(is_plain(plain) && fold(plain) == plain, "{plain}");
        }
        for other in ["", " ", "Turkey", "in  the oven", " oven", "oven ", "it's", "half-thawed", "paté"] {
            assert!(!is_plain(other), "{other}");
        }
    }
}
