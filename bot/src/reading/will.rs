//! Whether someone will do a job, can't, or can't come at all.
//!
//! A clause counts as a whole, with nothing but politeness around it: "Aunt Lu can't come" is of somebody else. Owns no word: see
//! the `talk-` entries of the lexicon. Start at [`read_refusal`].

use super::lexicon::Lexicon;
use super::talk;
use carvetime_core::plan::Step;

/// Longer texts tell a story.
const LONGEST: usize = 120;
/// As many words as a phrase has.
const MOST_WORDS: usize = 7;

/// What someone can't do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refusal {
    /// Anything: they are ill, or don't come.
    All,
    /// What they have been called for, or have.
    This,
    /// That job.
    Job(Step),
}

/// How someone says yes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Willing {
    /// "Sure", "yes": to a question.
    Agrees,
    /// "On it", "I'll do it": to a call as well.
    DoesIt,
}

/// What a clause says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Said {
    Polite,
    Gone,
    /// The same without a word of who: it is theirs only if nobody else is spoken of.
    GoneShort,
    Cant(Option<Step>),
    Else,
}

/// Reads "guys I'm out", "sorry I'm sick, can't come", "I can't do it", "can't carve after all". `None` for everything else.
pub fn read_refusal(text: &str, lexicon: &'static Lexicon) -> Option<Refusal> {
    let clauses: Vec<Said> = clauses(text)?.map(|clause| said(clause, lexicon)).collect();
    let whole = !clauses.contains(&Said::Else);
    if clauses.contains(&Said::Gone) || whole && clauses.contains(&Said::GoneShort) {
        return Some(Refusal::All);
    }
    clauses.iter().find_map(|clause| match clause {
        Said::Cant(Some(step)) => Some(Refusal::Job(*step)),
        Said::Cant(None) => Some(Refusal::This),
        _ => None,
    })
}

/// Reads "sure", "yes I will", "on it". `None` for everything else.
pub fn read_willing(text: &str, lexicon: &'static Lexicon) -> Option<Willing> {
    if is_thumb_up(text) {
        return Some(Willing::Agrees);
    }
    let parts = || clauses(text).into_iter().flatten().map(|clause| lexicon.talk_words(clause));
    let all = |groups: &[&str]| parts().all(|words| made_of(&words, groups, lexicon).is_some());
    if !all(&["willing", "assent", "manners"]) {
        return None;
    }
    let says = |group: &str| {
        parts().any(|words| {
            made_of(&words, &["willing", "assent", "manners"], lexicon).is_some_and(|found| found.contains(&group))
        })
    };
    if says("willing") {
        return Some(Willing::DoesIt);
    }
    says("assent").then_some(Willing::Agrees)
}

/// A thumb up and nothing else, of whatever colour.
fn is_thumb_up(text: &str) -> bool {
    const YES: [char; 4] = ['\u{1F44D}', '\u{1F44C}', '\u{2705}', '\u{1F197}'];
    let nothing = |c: char| c.is_whitespace() || matches!(c, '\u{1F3FB}'..='\u{1F3FF}' | '\u{FE0F}' | '!' | '.');
    text.contains(YES) && text.chars().all(|c| YES.contains(&c) || nothing(c))
}

/// Reads "no", "no, sorry", "I can't": the no to a question.
pub fn is_unwilling(text: &str, lexicon: &'static Lexicon) -> bool {
    let whole = |clause: &str| made_of(&lexicon.talk_words(clause), &["unwilling", "manners"], lexicon);
    let no = clauses(text).is_some_and(|mut clauses| {
        let all: Option<Vec<Vec<&str>>> = clauses.by_ref().map(whole).collect();
        all.is_some_and(|all| all.iter().flatten().any(|group| *group == "unwilling"))
    });
    no || read_refusal(text, lexicon).is_some()
}

/// "No", "nah, not really", and nothing that says what can't be done.
pub fn is_plain_no(text: &str, lexicon: &'static Lexicon) -> bool {
    is_unwilling(text, lexicon) && read_refusal(text, lexicon).is_none()
}

/// "All", "everything": whatever the speaker has.
pub fn is_everything(text: &str, lexicon: &'static Lexicon) -> bool {
    lexicon.talk(&lexicon.talk_words(text).join(" "), "everything")
}

/// The kind of job named: "temps", "the oven", "driving". Looser than a job's name, and looked for only where a job is taken.
pub fn read_kind(text: &str, lexicon: &'static Lexicon) -> Option<Step> {
    let words = lexicon.talk_words(text);
    (1..=MOST_WORDS).rev().find_map(|count| {
        words.windows(count).find_map(|some| lexicon.talked(&some.join(" "), "kind-").find_map(Step::from_name))
    })
}

fn clauses(text: &str) -> Option<impl Iterator<Item = &str>> {
    let short = text.len() <= LONGEST && !text.contains(['?', '¿']) && !text.starts_with('/');
    let has_words = |clause: &&str| clause.chars().any(char::is_alphanumeric);
    short.then(|| text.split([',', '.', ';', '!', '\n', '…']).filter(has_words))
}

fn said(clause: &str, lexicon: &'static Lexicon) -> Said {
    let words = lexicon.talk_words(clause);
    let groups = ["gone", "gone-short", "gone-day", "cant", "manners"];
    // "Bin leider raus": politeness inside a phrase.
    let rude = || words.iter().filter(|word| !lexicon.talk(word, "manners")).cloned().collect::<Vec<String>>();
    // "Ich kann am Donnerstag nicht kommen": so is the day.
    let any_day = || without_day(rude(), lexicon);
    let found = made_of(&words, &groups, lexicon).or_else(|| made_of(&rude(), &groups, lexicon));
    if let Some(found) = found.or_else(|| made_of(&any_day(), &groups, lexicon)) {
        let says = |group: &str| found.contains(&group);
        return match () {
            () if says("gone") => Said::Gone,
            () if says("gone-short") => Said::GoneShort,
            () if says("cant") => Said::Cant(None),
            () => Said::Polite,
        };
    }
    cant_do(&words, lexicon).map_or(Said::Else, |step| Said::Cant(Some(step)))
}

/// The words without the day they name.
fn without_day(mut words: Vec<String>, lexicon: &Lexicon) -> Vec<String> {
    const MOST: usize = 3;
    let is = |some: &[String]| lexicon.talk(&some.join(" "), "gone-day");
    let found = (1..=MOST).rev().find_map(|count| Some((words.windows(count).position(is)?, count)));
    if let Some((from, count)) = found {
        words.drain(from..from + count);
    }
    words
}

/// "Ich kann nicht salzen, kannst du?": the job that someone can't do, in a clause of a question as well.
pub fn read_cant(text: &str, lexicon: &'static Lexicon) -> Option<Step> {
    let short = text.len() <= LONGEST;
    let mut clauses = text.split([',', '.', ';', '!', '?', '\n']).filter(|_| short);
    clauses.find_map(|clause| cant_do(&lexicon.talk_words(clause), lexicon))
}

/// "Can't do the salting after all": the job named behind it.
fn cant_do(words: &[String], lexicon: &'static Lexicon) -> Option<Step> {
    let from = (0..words.len()).find(|at| words.get(*at).is_some_and(|word| !lexicon.talk(word, "manners")))?;
    let told = words.get(from..)?;
    let most = MOST_WORDS.min(told.len().saturating_sub(1));
    (1..=most).rev().find_map(|count| {
        let (lead, rest) = told.split_at(count);
        let rest = lexicon.talk(&lead.join(" "), "cant").then_some(rest)?;
        let polite =
            |at: &usize| rest.get(*at..).is_some_and(|tail| made_of(tail, &["manners", "gone-day"], lexicon).is_some());
        // "I can't carve my hands shake": a reason behind it.
        let reason = |at: &usize| {
            let begins = |count: usize| rest.get(*at..*at + count).map(|some| some.join(" "));
            (1..=3).filter_map(begins).any(|some| lexicon.talk(&some, "cant-because"))
        };
        let end = (1..=rest.len()).find(|at| *at == rest.len() || polite(at) || reason(at))?;
        talk::only_step(rest.get(..end)?, lexicon).map(|(step, _)| step)
    })
}

/// The groups of phrases the words are made of, one behind the other, if they are made of nothing else. The longest phrase goes first.
pub(crate) fn made_of<'g>(words: &[String], groups: &[&'g str], lexicon: &Lexicon) -> Option<Vec<&'g str>> {
    let mut found = Vec::new();
    let mut at = 0;
    let mut phrase = String::new();
    while at < words.len() {
        phrase.clear();
        let mut ends = [0; MOST_WORDS];
        let mut most = 0;
        for (word, end) in words.iter().skip(at).zip(&mut ends) {
            if most > 0 {
                phrase.push(' ');
            }
            phrase.push_str(word);
            (*end, most) = (phrase.len(), most + 1);
        }
        let (count, group) = (1..=most).rev().find_map(|count| {
            let own = lexicon.groups(phrase.get(..*ends.get(count - 1)?)?);
            groups.iter().find(|group| own.contains(group)).map(|group| (count, *group))
        })?;
        found.push(group);
        at += count;
    }
    (!found.is_empty()).then_some(found)
}
