//! Who does which of the jobs, as people tell each other: "ben salts, dee carves", "I'll do salt and carving", "can someone else
//! carve?", "did anyone salt it?".
//!
//! A sentence counts where all of it is of that: "ben salts his food too much" gives nobody a job. Owns no word: see the `talk-`
//! entries of the lexicon. Start at [`read_shares`].

use super::lexicon::Lexicon;
use super::step::read_step;
use super::talk::{self, only_step, words};
use super::will::{made_of, read_kind};
use carvetime_core::plan::Step;

/// Longer texts tell a story.
const LONGEST: usize = 120;
/// As many words as a phrase looked for has.
const MOST_WORDS: usize = 8;

/// Whose a job is said to be.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Whose {
    /// The speaker's.
    Mine,
    /// That of the person at this place among the names.
    Named(usize),
    /// That of somebody of another name.
    Stranger(String),
}

/// A job and whose it is said to be.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Share {
    /// Whose.
    pub whose: Whose,
    /// The job.
    pub step: Step,
    /// No other thing people do can be meant by it.
    pub plain: bool,
    /// Said with a verb: "ben carves", and not "ben: carving".
    pub does: bool,
}

/// "Ben salts, dee carves", "I'll salt and Dee does the carving". `names`: what each of them goes by, folded. `None`: the text says
/// something else as well, or gives nobody by name a job.
pub fn read_shares(text: &str, names: &[Vec<String>], lexicon: &'static Lexicon) -> Option<Vec<Share>> {
    let mut shares: Vec<Share> = Vec::new();
    for part in parts(text, lexicon)? {
        if made_of(&part, &["manners", "assent"], lexicon).is_some() {
            continue;
        }
        let before = shares.last().map(|share| share.whose.clone());
        shares.push(share(&part, names, before, lexicon)?);
    }
    shares.iter().any(|share| matches!(share.whose, Whose::Named(_))).then_some(shares)
}

/// The jobs someone says they will do: "I'll carve", "i'll do salt and carving", "ok, put me down for carving". Beside each: whether
/// only that job can be meant.
pub fn read_takings(text: &str, lexicon: &'static Lexicon) -> Vec<(Step, bool)> {
    if let Some(less) = without_always(text, lexicon) {
        return read_takings(&less, lexicon);
    }
    if let Some(one) = talk::read_taking(text, lexicon) {
        return vec![one];
    }
    takings(text, lexicon).or_else(|| first_takings(text, lexicon)).unwrap_or_default()
}

/// "I'll carve like every year": what stands before that.
fn without_always(text: &str, lexicon: &'static Lexicon) -> Option<String> {
    let told = lexicon.talk_words(text);
    let most = MOST_WORDS.min(told.len().saturating_sub(1));
    let is_always =
        |count: &usize| told.get(told.len() - count..).is_some_and(|tail| lexicon.talk(&tail.join(" "), "as-always"));
    let count = (1..=most).rev().find(is_always).filter(|_| !text.contains(['?', '¿', '/']))?;
    told.get(..told.len() - count).map(|less| less.join(" "))
}

/// "I'll carve. you need someone with a steady hand": told in a sentence of its own, and only a job can be meant.
fn first_takings(text: &str, lexicon: &'static Lexicon) -> Option<Vec<(Step, bool)>> {
    let (first, rest) = text.split_once(['.', '!', '\n'])?;
    let told = rest.chars().any(char::is_alphabetic) && !text.contains(['?', '¿']);
    takings(first, lexicon).filter(|takings| told && takings.iter().all(|(_, plain)| *plain))
}

fn takings(text: &str, lexicon: &'static Lexicon) -> Option<Vec<(Step, bool)>> {
    words(text, lexicon).filter(|_| talk::read_report(text, lexicon).is_none())?;
    let mut parts = parts(text, lexicon)?;
    // "Sure, I'll do salt and carving".
    while parts.first().is_some_and(|part| made_of(part, &["manners", "assent"], lexicon).is_some()) {
        parts.remove(0);
    }
    if let Some(first) = parts.first_mut() {
        *first = polite(first, lexicon).to_vec();
    }
    let is = |words: &[String], group: &str| lexicon.talk(&words.join(" "), group);
    let lead = |part: &[String]| longest(part, |lead| is(lead, "mine").then_some(())).map(|(count, ())| count);
    let tail = |part: &[String]| {
        let most = MOST_WORDS.min(part.len().saturating_sub(1));
        (1..=most).rev().find(|count| is(part.get(part.len() - count..).unwrap_or_default(), "mine-last"))
    };
    let first = parts.first().and_then(|part| lead(part));
    let last = parts.last().and_then(|part| tail(part)).filter(|_| first.is_none());
    first.or(last)?;
    let count = parts.len();
    let job = |(at, part): (usize, &Vec<String>)| {
        let from = lead(part).unwrap_or(0);
        let to = part.len() - last.filter(|_| at + 1 == count).unwrap_or(0);
        only_step(part.get(from..to)?, lexicon)
    };
    parts.iter().enumerate().map(job).collect()
}

/// "Can someone else carve?", "sorry, could anyone do the salting": the job, and whether only that can be meant.
pub fn asks_for_another(text: &str, lexicon: &'static Lexicon) -> Option<(Step, bool)> {
    clauses(text)?.find_map(|clause| {
        let told = lexicon.talk_words(clause);
        let told = polite(&told, lexicon);
        let is = |words: &[String], group: &str| lexicon.talk(&words.join(" "), group);
        let (count, ()) = longest(told, |lead| is(lead, "other").then_some(()))?;
        only_step(told.get(count..)?, lexicon)
    })
}

/// "Did someone salt it?", "is it salted yet?", "did anyone buy the bird": the job asked after, and whether only that can be meant.
pub fn asks_whether_done(text: &str, lexicon: &'static Lexicon) -> Option<(Step, bool)> {
    if text.chars().count() > LONGEST || text.chars().any(|c| c.is_ascii_digit()) {
        return None;
    }
    let told = lexicon.talk_words(text);
    let told = polite(&told, lexicon);
    let is = |words: &[String], group: &str| lexicon.talk(&words.join(" "), group);
    // "La dinde est salée" is no question without its mark.
    let group = if text.contains(['?', '¿']) { "whether" } else { "whether-unmarked" };
    let (count, ()) = longest(told, |lead| is(lead, group).then_some(()))?;
    let rest: Vec<String> =
        told.get(count..)?.iter().filter(|word| !lexicon.talk(word, "whether-link")).cloned().collect();
    let done = || {
        let report = talk::read_report(&rest.join(" "), lexicon)?;
        let step = report.step.filter(|_| report.or.is_none() && report.kind == talk::ReportKind::Done)?;
        Some((step, matches!(step, Step::Salt | Step::Carve)))
    };
    // Whether it is thawed is for whoever looks at it to say: that thawing was begun says nothing of it.
    let asked = if rest.is_empty() { None } else { only_step(&rest, lexicon).or_else(done) };
    asked.filter(|(step, _)| *step != Step::Thaw)
}

/// "What's my job?", "what do I have to do tomorrow?". Beside it: whether nothing but a job of the plan can be meant.
pub fn asks_own_jobs(text: &str, lexicon: &'static Lexicon) -> Option<bool> {
    let asks = |group: &'static str| {
        let group = move |asked: &str| talk::is_question_of(asked, group, lexicon);
        group(text) || talk::of_a_day(text, lexicon, group).is_some()
    };
    if asks("my-jobs") { Some(true) } else { asks("my-part").then_some(false) }
}

/// "What's left to do?".
pub fn asks_what_is_left(text: &str, lexicon: &'static Lexicon) -> bool {
    talk::is_question_of(text, "left", lexicon)
}

/// "On Cal", behind `/take`: the word that is no word of a job, with which the rest still names one. `own`: folded words that mean
/// something here.
pub fn stranger<'t>(text: &'t str, own: &[String], lexicon: &'static Lexicon) -> Option<&'t str> {
    if lexicon.shown_step(text, true).is_some() {
        return None;
    }
    let words = || text.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty());
    let names_job = |text: &str| read_step(text, lexicon).is_some() || read_kind(text, lexicon).is_some();
    words().find(|word| {
        let folded = super::fold(word);
        let letters = word.chars().all(char::is_alphabetic);
        // A capital letter makes a name of what may be a slip.
        let capital = word.chars().next().is_some_and(char::is_uppercase);
        let meant = own.contains(&folded) || lexicon.means(&folded) || !capital && lexicon.knows(&folded);
        let rest = || words().filter(|other| other != word).collect::<Vec<_>>().join(" ");
        letters && !meant && names_job(&rest())
    })
}

/// The clauses of a short text, cut where somebody else is spoken of as well.
fn parts(text: &str, lexicon: &'static Lexicon) -> Option<Vec<Vec<String>>> {
    if text.contains(['?', '¿', '/']) || text.chars().any(|c| c.is_ascii_digit()) {
        return None;
    }
    let mut parts = Vec::new();
    for clause in clauses(text)? {
        let told = lexicon.talk_words(clause);
        let joint = |word: &String| lexicon.talk(word, "joint");
        let mut part: Vec<String> = Vec::new();
        for word in told.iter() {
            if joint(word) {
                parts.push(std::mem::take(&mut part));
            } else {
                part.push(word.clone());
            }
        }
        parts.push(part);
    }
    parts.retain(|part| !part.is_empty());
    Some(parts)
}

fn share(part: &[String], names: &[Vec<String>], before: Option<Whose>, lexicon: &'static Lexicon) -> Option<Share> {
    let from = (0..part.len()).find(|at| part.get(*at).is_some_and(|word| !lexicon.talk(word, "manners")))?;
    let told = part.get(from..)?;
    let first = told.first()?;
    let named = names.iter().position(|own| own.contains(first));
    if let Some(at) = named {
        return job(told.get(1..)?, Whose::Named(at), lexicon);
    }
    let mine = longest(told, |lead| lexicon.talk(&lead.join(" "), "mine").then_some(()));
    if let Some((count, ())) = mine
        && let Some(share) = job(told.get(count..)?, Whose::Mine, lexicon)
    {
        return Some(share);
    }
    // "Ben salts and carves".
    let same = before.and_then(|whose| job(told, whose, lexicon)).filter(|share| share.does);
    let stranger = || job(told.get(1..)?, Whose::Stranger(first.clone()), lexicon);
    same.or_else(|| stranger().filter(|share| share.does && !lexicon.knows(first)))
}

/// What is said that someone does, behind their name.
fn job(told: &[String], whose: Whose, lexicon: &'static Lexicon) -> Option<Share> {
    let told: Vec<String> =
        told.iter().map(|word| lexicon.corrected(word).map_or_else(|| word.clone(), str::to_owned)).collect();
    let empty = |word: &String| ["filler", "mine-link", "ahead", "manners"].iter().any(|g| lexicon.talk(word, g));
    let verb = (1..=MOST_WORDS.min(told.len())).rev().find_map(|count| {
        let (lead, rest) = told.split_at(count);
        let step = lexicon.talked(&lead.join(" "), "asked-").find_map(Step::from_name)?;
        rest.iter().all(empty).then_some(step)
    });
    let is_plain = |step| matches!(step, Step::Thaw | Step::Salt | Step::Temper | Step::Carve | Step::Reheat);
    if let Some(step) = verb {
        return Some(Share { whose, step, plain: is_plain(step), does: true });
    }
    let does = longest(&told, |lead| lexicon.talk(&lead.join(" "), "does").then_some(()));
    let from = does.map_or(0, |(count, ())| count);
    let (step, plain) = only_step(told.get(from..)?, lexicon)?;
    Some(Share { whose, step, plain: plain && step != Step::Travel, does: does.is_some() })
}

/// The longest beginning, with something behind it, for which `of` has an answer: how many words it has, and the answer.
fn longest<T>(told: &[String], of: impl Fn(&[String]) -> Option<T>) -> Option<(usize, T)> {
    let most = MOST_WORDS.min(told.len().saturating_sub(1));
    (1..=most).rev().find_map(|count| Some((count, of(told.get(..count)?)?)))
}

/// The words behind "sorry", "ok".
fn polite<'w>(told: &'w [String], lexicon: &Lexicon) -> &'w [String] {
    let empty = |word: &String| lexicon.talk(word, "manners") || lexicon.talk(word, "assent");
    let from = told.iter().position(|word| !empty(word)).unwrap_or(told.len());
    told.get(from..).unwrap_or_default()
}

fn clauses(text: &str) -> Option<impl Iterator<Item = &str>> {
    let has_words = |clause: &&str| clause.chars().any(char::is_alphanumeric);
    let short = text.chars().count() <= LONGEST;
    short.then(|| text.split([',', '.', ';', '!', '?', '¿', '&', '+', '\n', '…']).filter(has_words))
}
