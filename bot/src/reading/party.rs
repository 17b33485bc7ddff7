//! "Aunt Carol isn't coming", "Mark can't make it", "Carol and Rick are coming too": who comes or stays away, told by name.
//!
//! A text counts where all of it is of that: "if Carol isn't coming I'll make less" says nothing yet, and things come as well. Owns no
//! word: see the `talk-` entries of the lexicon. Start at [`named`].

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk;
use super::told::Told;
use super::will::made_of;

/// Longer texts tell a story.
const LONGEST: usize = 80;
/// As many words as a way to say it has.
const MOST_WORDS: usize = 7;
/// More people than this are counted by a number.
const MOST_NAMES: u16 = 8;

/// Whether people come besides those told before, or are missing from them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Turn {
    /// They come too.
    More,
    /// They don't come.
    Fewer,
}

/// How many people a text names, and whether they come too or stay away. `None`: it says something else as well.
pub(super) fn named(text: &str, lexicon: &'static Lexicon) -> Option<(u16, Turn)> {
    let asks = text.contains(['?', '¿', '/']) || talk::begins_as_question(text, lexicon);
    if asks || text.chars().count() > LONGEST {
        return None;
    }
    let told = Told::of(text, lexicon);
    let (from, to, group) = told.longest(&["party-leaves", "party-joins"])?;
    let turn = if group == "party-leaves" { Turn::Fewer } else { Turn::More };
    let words = told.words();
    let (before, behind) = (words.get(..from)?, words.get(to..)?);
    let before = after_lead(before, lexicon);
    // "Vienen también Carol y Rick": the names stand behind it.
    let (names, rest) = if before.is_empty() { until_tail(behind, lexicon) } else { (before, behind) };
    let polite = rest.is_empty() || made_of(rest, &["party-tail", "manners", "gone-day"], lexicon).is_some();
    let count = count(names, text, lexicon).filter(|_| polite)?;
    (count <= MOST_NAMES).then_some((count, turn))
}

/// The words behind "ok guys, looks like"; a word for kin is nobody addressed.
fn after_lead<'w>(words: &'w [String], lexicon: &Lexicon) -> &'w [String] {
    let mut at = 0;
    while at < words.len() {
        let lead = |many: &usize| {
            let phrase = words.get(at..at + many).unwrap_or_default().join(" ");
            let says = |group| lexicon.talk(&phrase, group);
            says("party-lead") || says("manners") && !says("kin") && !says("kin-two")
        };
        match (1..=MOST_WORDS.min(words.len() - at)).rev().find(lead) {
            Some(many) => at += many,
            None => break,
        }
    }
    words.get(at..).unwrap_or_default()
}

/// The words up to those that say nothing any more, and these.
fn until_tail<'w>(words: &'w [String], lexicon: &Lexicon) -> (&'w [String], &'w [String]) {
    let polite = |at: &usize| {
        words.get(*at..).is_some_and(|tail| made_of(tail, &["party-tail", "gone-day", "manners"], lexicon).is_some())
    };
    let kin = |at: &usize| words.get(*at).is_some_and(|word| lexicon.talk(word, "kin"));
    let end = (1..words.len()).find(|at| polite(at) && !kin(at)).unwrap_or(words.len());
    words.split_at(end)
}

/// The same behind "ok guys, looks like".
pub(super) fn counted(words: &[String], text: &str, lexicon: &'static Lexicon) -> Option<u16> {
    count(after_lead(words, lexicon), text, lexicon)
}

/// How many people the words name, if they name nothing else: "aunt Carol and my sister".
fn count(words: &[String], text: &str, lexicon: &'static Lexicon) -> Option<u16> {
    let parts = words.split(|word| lexicon.talk(word, "party-and"));
    let counts: Option<Vec<u16>> = parts.map(|part| person(part, text, lexicon)).collect();
    counts.map(|counts| counts.iter().sum()).filter(|count| *count > 0)
}

/// "My sister", "aunt Carol", "Carol", "the parents".
fn person(words: &[String], text: &str, lexicon: &'static Lexicon) -> Option<u16> {
    let (led, words) = match words.split_first() {
        Some((first, rest)) if !rest.is_empty() && lexicon.talk(first, "party-my") => (true, rest),
        _ => (false, words),
    };
    let kin = |word: &String| lexicon.talk(word, "kin");
    match words {
        [both] if lexicon.talk(both, "kin-two") => Some(2),
        [one] if kin(one) => Some(1),
        [one, name] if kin(one) && (is_name(name, lexicon) || kin(name)) => Some(1),
        // "The plumber isn't coming", "o Marcos não vem": behind an article only what is written as a name is one.
        [name] if (!led || is_capital(name, text)) && is_name(name, lexicon) => Some(1),
        _ => None,
    }
}

/// Whether the folded word is written with a capital letter in the text.
fn is_capital(word: &str, text: &str) -> bool {
    let mut words = text.split(|c: char| !c.is_alphabetic());
    words.any(|written| written.starts_with(char::is_uppercase) && super::fold(written) == word)
}

/// A word that means nothing here, nor anything that comes without being asked to dinner. Some names are words as well: Mark, May.
fn is_name(word: &str, lexicon: &'static Lexicon) -> bool {
    const SHORTEST: usize = 2;
    let sentence = Sentence::read(word, lexicon);
    let meanings = sentence.meanings(0);
    let foreign = meanings.iter().all(|meaning| meaning.starts_with("unit-") || meaning.starts_with("month-"));
    let empty =
        ["filler", "mine-link", "manners", "party-thing", "party-my"].iter().any(|group| lexicon.talk(word, group));
    word.chars().count() >= SHORTEST && word.chars().all(char::is_alphabetic) && foreign && !empty
}
