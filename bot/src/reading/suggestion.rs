//! "Can we move dinner to 4, my shift ends at 3?": another hour is asked for; and how an answer to it begins.
//!
//! Owns no word: see the `talk-` entries of the lexicon. Which hour it is tells [`super::read_shift`].

use super::lexicon::Lexicon;
use super::sentence::Sentence;

/// Longer texts tell a story.
const LONGEST: usize = 120;
/// As many words as an opening has.
const MOST_WORDS: usize = 4;
/// A clause this short says nothing but the hour.
const FEW: usize = 5;

/// The clause that asks for another hour, without what is told beside it.
///
/// What is said to the bot without asking is done and not asked back: "move dinner to 5" is a suggestion only among people.
pub fn suggestion<'t>(text: &'t str, addressed: bool, lexicon: &'static Lexicon) -> Option<&'t str> {
    let short = text.chars().count() <= LONGEST;
    let asks =
        |clause: &&str| opens(clause, "suggest", lexicon) || !addressed && opens(clause, "suggest-move", lexicon);
    short.then(|| clauses(text).find(|clause| asks(clause) && is_of_the_hour(clause, lexicon))).flatten()
}

/// "What about 4:30?", where an hour has been asked for already.
pub fn other_suggestion<'t>(text: &'t str, lexicon: &'static Lexicon) -> Option<&'t str> {
    let few = |clause: &str| clause.split_whitespace().count() <= FEW;
    clauses(text).find(|clause| few(clause) && opens(clause, "suggest", lexicon))
}

/// Whether an answer begins with a yes or a no: "yes ok 4 pm", "no, five stays".
pub fn leaning(text: &str, lexicon: &'static Lexicon) -> Option<bool> {
    let words = lexicon.talk_words(text);
    let says = |word: &String, group| lexicon.talk(word, group);
    // "Hmm, ok": politeness says neither, unless a yes is polite too.
    let word = words.iter().find(|word| says(word, "unwilling") || says(word, "assent") || !says(word, "manners"))?;
    if says(word, "unwilling") {
        return Some(false);
    }
    says(word, "assent").then_some(true)
}

fn clauses(text: &str) -> impl Iterator<Item = &str> {
    text.split([',', ';', '!', '?', '¿', '\n', '…']).flat_map(|part| part.split(". "))
}

/// A phrase one suggests something with stands in it.
fn opens(clause: &str, group: &str, lexicon: &'static Lexicon) -> bool {
    let words = lexicon.talk_words(clause);
    (1..=MOST_WORDS).any(|many| words.windows(many).any(|some| lexicon.talk(&some.join(" "), group)))
}

/// The meal is named, or that something moves.
fn is_of_the_hour(clause: &str, lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(clause, lexicon);
    let meal = (0..sentence.len()).any(|at| sentence.of(at, "meal-").is_some());
    meal || ["later", "earlier", "instead"].iter().any(|concept| sentence.has(concept))
}
