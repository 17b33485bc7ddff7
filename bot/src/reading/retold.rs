//! "Make it 11", "no wait, 12", "make it 5 not 4", "+2", "it's actually frozen, just checked": something told otherwise in a few words.
//!
//! A text counts as a whole: "make it 6 dozen rolls" and "the pipes are actually frozen" tell nothing. Owns no word: see the `talk-`
//! entries of the lexicon. What the number is of, people or the hour, is for the room to say.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::will::made_of;

/// Longer texts say more than that.
const LONGEST: usize = 60;
/// As many words as a phrase has.
const MOST_WORDS: usize = 5;
/// More than this are no guests, and no hour.
const MOST: u32 = 200;

/// How a number is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Telling {
    /// "Make it 11": from now on.
    Sets,
    /// "No wait, 12": what was just told was wrong.
    Corrects,
    /// "+2": besides those there are.
    Adds,
}

/// A number told for another.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Retold {
    /// How.
    pub telling: Telling,
    /// What is told, in the words it was told in: "5:30" is an hour, "12" may be one.
    pub words: String,
    /// The same as a bare whole number.
    pub number: Option<u16>,
    /// It counts people, in so many words.
    pub of_people: bool,
    /// "Not 4": the number it takes the place of.
    pub before: Option<u16>,
}

/// Reads a number told for another. `None`: the text says something else, or more.
pub fn read_retold(text: &str, lexicon: &'static Lexicon) -> Option<Retold> {
    if text.chars().count() > LONGEST || text.contains(['?', '¿', '/', '%', '$', '€', '°', '=']) {
        return None;
    }
    if let Some(number) = added(text, lexicon) {
        let words = number.to_string();
        return Some(Retold { telling: Telling::Adds, words, number: Some(number), of_people: true, before: None });
    }
    let words: Vec<&str> = text.split_whitespace().collect();
    let (from, telling) = lead(&words, lexicon);
    let (to, corrects) = tail(&words, from, lexicon);
    let telling = if corrects { Some(Telling::Corrects) } else { telling };
    let told = words.get(from..to).filter(|told| !told.is_empty())?;
    let apart = (1..told.len()).find_map(|at| {
        let many = (1..=MOST_WORDS.min(told.len() - at)).rev();
        many.map(|many| (at, many)).find(|(at, many)| is(told.get(*at..at + many), "instead-of", lexicon))
    });
    let (told, before) = match apart {
        Some((at, many)) => (told.get(..at)?, Some(number(told.get(at + many..)?, lexicon)?.0)),
        None => (told, None),
    };
    let counted = number(told, lexicon);
    Some(Retold {
        telling: telling?,
        words: told.join(" "),
        number: counted.map(|(number, _)| number),
        of_people: counted.is_some_and(|(_, people)| people),
        before,
    })
}

/// How many words stand before what is told, and how they tell it.
fn lead(words: &[&str], lexicon: &'static Lexicon) -> (usize, Option<Telling>) {
    let (mut at, mut telling) = (0, None);
    while let Some((many, group)) = phrase(words, at, &["correcting", "make-it", "manners"], lexicon) {
        telling = match group {
            "correcting" => Some(Telling::Corrects),
            "make-it" => telling.or(Some(Telling::Sets)),
            _ => telling,
        };
        at += many;
    }
    (at, telling)
}

/// Where the words end that tell something, and whether what stands behind them corrects: "12 i mean".
fn tail(words: &[&str], from: usize, lexicon: &'static Lexicon) -> (usize, bool) {
    const GROUPS: [&str; 5] = ["correcting", "manners", "filler", "party-tail", "hour-settles-last"];
    let (mut end, mut corrects) = (words.len(), false);
    while end > from + 1 {
        let many = (1..=MOST_WORDS.min(end - from - 1)).rev();
        let found = many.into_iter().find_map(|many| {
            let group = GROUPS.into_iter().find(|group| is(words.get(end - many..end), group, lexicon))?;
            Some((many, group))
        });
        let Some((many, group)) = found else { break };
        corrects |= group == "correcting";
        end -= many;
    }
    (end, corrects)
}

/// A number and nothing behind it but those it counts.
fn number(words: &[&str], lexicon: &'static Lexicon) -> Option<(u16, bool)> {
    let sentence = Sentence::read(&words.join(" "), lexicon);
    let number = u16::try_from(sentence.whole(0, 1..=MOST)?).ok()?;
    let people = |at: usize| ["people", "in-all", "now"].iter().any(|word| sentence.is(at, word));
    let rest = || (1..sentence.len()).filter(|at| !matches!(sentence.mark(*at), Some(',' | '.' | '!')));
    rest().all(people).then(|| (number, rest().next().is_some()))
}

/// "+2", "plus 2 please".
fn added(text: &str, lexicon: &'static Lexicon) -> Option<u16> {
    let sentence = Sentence::read(text, lexicon);
    let plus = sentence.mark(0) == Some('+') || sentence.is(0, "number-plus");
    let number = u16::try_from(sentence.whole(1, 1..=MOST).filter(|_| plus)?).ok()?;
    let empty = |at: usize| {
        let word = super::fold(sentence.raw(at));
        let polite = ["manners", "party-tail"].iter().any(|group| lexicon.talk(&word, group));
        polite || sentence.is(at, "people") || matches!(sentence.mark(at), Some(',' | '.' | '!'))
    };
    (2..sentence.len()).all(empty).then_some(number)
}

/// The longest phrase of one of the groups that begins there.
fn phrase<'g>(words: &[&str], at: usize, groups: &[&'g str], lexicon: &'static Lexicon) -> Option<(usize, &'g str)> {
    let most = MOST_WORDS.min(words.len().saturating_sub(at));
    (1..=most).rev().find_map(|many| {
        let group = groups.iter().find(|group| is(words.get(at..at + many), group, lexicon))?;
        Some((many, *group))
    })
}

fn is(words: Option<&[&str]>, group: &str, lexicon: &'static Lexicon) -> bool {
    let digits = |word: &&str| word.contains(|c: char| c.is_ascii_digit());
    words.is_some_and(|words| {
        !words.iter().any(digits) && lexicon.talk(&lexicon.talk_words(&words.join(" ")).join(" "), group)
    })
}

/// "It's actually frozen, just checked", "turns out it's fresh": what the bird is like after all, and nothing else.
pub fn read_turned_out(text: &str, lexicon: &'static Lexicon) -> Option<&'static str> {
    if text.chars().count() > LONGEST || text.contains(['?', '¿', '/']) {
        return None;
    }
    let words: Vec<&str> = text.split_whitespace().collect();
    let (mut at, mut turned, mut condition) = (0, false, None);
    while at < words.len() {
        if let Some((many, told)) = condition_at(&words, at, lexicon) {
            condition = condition.or(Some(told)).filter(|known| *known == told);
            condition?;
            at += many;
            continue;
        }
        let (many, group) = phrase(&words, at, &["turned-out", "just-checked", "manners", "filler"], lexicon)?;
        turned |= matches!(group, "turned-out" | "just-checked");
        at += many;
    }
    condition.filter(|_| turned)
}

/// The longest phrase there that says what a bird is like.
fn condition_at(words: &[&str], at: usize, lexicon: &'static Lexicon) -> Option<(usize, &'static str)> {
    const MOST_WORDS: usize = 3;
    (1..=MOST_WORDS.min(words.len() - at)).rev().find_map(|many| {
        let phrase = lexicon.talk_words(&words.get(at..at + many)?.join(" "));
        let sentence = Sentence::read(&phrase.join(" "), lexicon);
        sentence.of(0, "condition-").filter(|_| sentence.len() == 1).map(|condition| (many, condition))
    })
}

/// "No salt please, my father-in-law has high blood pressure": the clause that asks for no salt, where nothing but the reason is told
/// beside it. "No salt please, on the rim" is of a glass.
pub fn read_unsalted<'t>(text: &'t str, lexicon: &'static Lexicon) -> Option<&'t str> {
    const LONGEST: usize = 120;
    if text.chars().count() > LONGEST || text.contains(['?', '¿']) {
        return None;
    }
    let (clause, reason) = text.split_once([',', ';', '.', '!', ':', '\n'])?;
    let sentence = Sentence::read(clause, lexicon);
    let unsalted = |at: &usize| sentence.of(*at, "salting-") == Some("none");
    let rest: Vec<&str> = (0..sentence.len()).filter(|at| !unsalted(at)).map(|at| sentence.raw(at)).collect();
    let rest = lexicon.talk_words(&rest.join(" "));
    let plain = rest.is_empty() || made_of(&rest, &["manners", "filler"], lexicon).is_some();
    let asked = (0..sentence.len()).any(|at| unsalted(&at));
    let told = asked && plain && Sentence::read(reason, lexicon).has("ask-low-salt");
    told.then_some(clause)
}
