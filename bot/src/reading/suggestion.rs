//! "Can we move dinner to 4, my shift ends at 3?": another hour is asked for; "5 works better", "dinner's pushed to 4:30": it is
//! settled; and how an answer to it begins.
//!
//! Owns no word: see the `talk-` entries of the lexicon. Which hour it is tells [`super::read_shift`].

use super::lexicon::Lexicon;
use super::party;
use super::sentence::{Sentence, What};
use super::told::Told;

/// Longer texts tell a story.
const LONGEST: usize = 120;
/// As many words as an opening has.
const MOST_WORDS: usize = 4;
/// A clause this short says nothing but the hour.
const FEW: usize = 5;
/// Longer texts say more than an hour.
const BRIEF: usize = 60;

/// An hour told as settled.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Settled {
    /// The meal is named, or that something moves; else it may be the hour of anything.
    pub of_meal: bool,
}

/// The clause that asks for another hour, without what is told beside it.
///
/// What is said to the bot without asking is done and not asked back: "move dinner to 5" is a suggestion only among people.
pub fn suggestion<'t>(text: &'t str, addressed: bool, lexicon: &'static Lexicon) -> Option<&'t str> {
    let short = text.chars().count() <= LONGEST;
    let asks =
        |clause: &&str| opens(clause, "suggest", lexicon) || !addressed && opens(clause, "suggest-move", lexicon);
    let wants = |clause: &&str| !addressed && is_wish(clause, lexicon);
    short
        .then(|| clauses(text).find(|clause| asks(clause) && is_of_the_hour(clause, lexicon) || wants(clause)))
        .flatten()
}

/// "Grandma wants to eat at 4:30": who wishes it is named, and behind it nothing is told but the meal and its hour.
fn is_wish(clause: &str, lexicon: &'static Lexicon) -> bool {
    const MOST: usize = 3;
    let words: Vec<&str> = clause.split_whitespace().collect();
    let folded = |words: &[&str]| lexicon.talk_words(&words.join(" "));
    (1..words.len()).any(|from| {
        let many = (1..=MOST.min(words.len() - from)).rev();
        let verb = many.into_iter().find(|many| {
            words.get(from..from + many).is_some_and(|verb| lexicon.talk(&folded(verb).join(" "), "wants"))
        });
        let Some((who, told)) = verb.and_then(|many| Some((words.get(..from)?, words.get(from + many..)?))) else {
            return false;
        };
        let who = folded(who);
        let wishes = lexicon.talk(&who.join(" "), "wishers") || party::counted(&who, clause, lexicon).is_some();
        wishes && settled(&told.join(" "), lexicon).is_some_and(|told| told.of_meal)
    })
}

/// "What about 4:30?", where an hour has been asked for already.
pub fn other_suggestion<'t>(text: &'t str, lexicon: &'static Lexicon) -> Option<&'t str> {
    let few = |clause: &str| clause.split_whitespace().count() <= FEW;
    clauses(text).find(|clause| few(clause) && opens(clause, "suggest", lexicon))
}

/// [`settled`], of the whole text; or, where the meal is named, of its last clause ("mass is at 9, so we eat at 11") or of what goes before
/// a reason ("change of plans, we eat at 8 because of mass"). Which words it is.
pub fn settled_in<'t>(text: &'t str, lexicon: &'static Lexicon) -> Option<(&'t str, Settled)> {
    let whole = || Some((text, settled(text, lexicon)?));
    let last = || {
        let short = text.chars().count() <= LONGEST && !text.contains(['?', '¿']);
        let clause = clauses(text).last().filter(|clause| short && clause.len() < text.len())?;
        Some((clause, settled(clause, lexicon).filter(|told| told.of_meal)?))
    };
    let before_a_reason = || {
        let short = text.chars().count() <= LONGEST && !text.contains(['?', '¿']);
        let because = |word: &str| lexicon.talk(&lexicon.talk_words(word).join(" "), "hour-because");
        let words = text.match_indices(char::is_whitespace).map(|(at, _)| at);
        let mut told = words.filter_map(|at| {
            let (told, reason) = text.split_at_checked(at)?;
            reason.split_whitespace().next().is_some_and(because).then_some(told)
        });
        let told = told.rfind(|_| short)?;
        Some((told, settled(told, lexicon).filter(|told| told.of_meal)?))
    };
    whole().or_else(last).or_else(before_a_reason)
}

/// "5 works better", "make it 5", "4 pm it is", "wir essen doch erst um 20 Uhr": the text tells an hour, that it is the one from now on,
/// and nothing else. A word that means anything else ("pizza tonight at 7") makes it no such text.
pub fn settled(text: &str, lexicon: &'static Lexicon) -> Option<Settled> {
    if text.len() > BRIEF || text.contains(['?', '¿', '/']) {
        return None;
    }
    let s = Sentence::read(text, lexicon);
    let (mut counted, mut settles, mut of_meal) = (false, false, false);
    let mut at = 0;
    while at < s.len() {
        if let Some((many, group)) = said(&s, at, lexicon) {
            // "It is 4 pm" tells the time.
            settles |= matches!(group, "hour-settles" | "hour-stays") || group == "hour-settles-last" && counted;
            at += many;
            continue;
        }
        match s.item(at).map(|item| &item.what) {
            Some(What::Word(_)) => {
                of_meal |= s.of(at, "meal-").is_some() || s.is(at, "later") || s.is(at, "earlier");
                settles |= s.is(at, "instead");
                is_of_a_clock(&s, at).then_some(())?;
                counted |= s.is(at, "noon") || s.is(at, "midnight");
            }
            Some(What::Mark(_)) | None => {}
            // "Table for 6", "+2 for dinner": people.
            Some(What::Amount(..) | What::Digits(_)) if of_people(&s, at) => return None,
            Some(What::Amount(..) | What::Digits(_)) => counted = true,
        }
        at += 1;
    }
    (counted && (settles || of_meal)).then_some(Settled { of_meal })
}

/// A bare number behind a word for people, or behind a sign.
fn of_people(s: &Sentence, at: usize) -> bool {
    let before = |concept: &str| at > 0 && s.is(at - 1, concept);
    let signed = at > 0 && matches!(s.mark(at - 1), Some('+' | '-')) || before("number-plus") || before("minus");
    s.number(at).is_some() && (before("for") || signed)
}

/// The longest phrase that begins there and settles an hour, or says nothing by itself.
fn said(s: &Sentence, at: usize, lexicon: &'static Lexicon) -> Option<(usize, &'static str)> {
    const GROUPS: [&str; 7] =
        ["hour-settles", "hour-stays", "hour-settles-last", "hour-link", "manners", "mine-link", "filler"];
    (1..=MOST_WORDS.min(s.len() - at)).rev().find_map(|many| {
        // What is a number is no word.
        if (at..at + many).any(|at| s.number(at).is_some() || s.amount(at).is_some()) {
            return None;
        }
        let phrase = lexicon.talk_words(s.quote(at, at + many - 1)).join(" ");
        let meant = (at..at + many).any(|at| is_of_a_clock(s, at)) && many == 1;
        let group = GROUPS.into_iter().find(|group| lexicon.talk(&phrase, group))?;
        (!meant || group.starts_with("hour-s")).then_some((many, group))
    })
}

/// A word of hours, days, meals and moving.
fn is_of_a_clock(s: &Sentence, at: usize) -> bool {
    const GROUPS: [&str; 7] = ["meal-", "part-", "number-", "day-", "weekday-", "holiday-", "unit-"];
    const WORDS: [&str; 12] =
        ["later", "earlier", "instead", "now", "at", "to", "on", "oclock", "past", "noon", "midnight", "minus"];
    GROUPS.iter().any(|group| s.of(at, group).is_some()) || WORDS.iter().any(|word| s.is(at, word))
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
    Told::of(clause, lexicon).says(group)
}

/// The meal is named, or that something moves.
fn is_of_the_hour(clause: &str, lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(clause, lexicon);
    let meal = (0..sentence.len()).any(|at| sentence.of(at, "meal-").is_some());
    meal || ["later", "earlier", "instead"].iter().any(|concept| sentence.has(concept))
}
