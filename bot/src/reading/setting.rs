//! A setting by its name with what it is to be: "units metric", "fridge 38 °F".
//!
//! Owns no word: see the `talk-setting-` entries of the lexicon.

use super::lexicon::Lexicon;

/// As many words as a setting's name has.
const MOST_WORDS: usize = 4;

/// The page a text begins with the name of, and the rest as it was typed.
pub fn read_setting(text: &str, lexicon: &'static Lexicon) -> Option<(&'static str, String)> {
    let words: Vec<&str> = text.split_whitespace().collect();
    (1..=MOST_WORDS.min(words.len())).rev().find_map(|count| {
        let (name, rest) = words.split_at_checked(count)?;
        let name = lexicon.talk_words(&name.join(" ")).join(" ");
        let page = lexicon.talked(&name, "setting-").next()?;
        Some((page, rest.join(" ").trim_start_matches([':', '=']).trim().to_owned()))
    })
}
