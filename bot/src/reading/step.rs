//! Names of steps as people type them, and plain yes and no.

use super::beside::read_job_hour;
use super::fold::fold;
use super::ground::Ground;
use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::essence;
use super::told::Told;
use carvetime_core::plan::{Moment, Step};

/// Yes or no.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Answer {
    /// Yes.
    Yes,
    /// No.
    No,
}

/// The step named by `text`: its stable name, its name on the board or the beginning of it, or what people call it in their
/// language. A number behind it says which of
/// several, counted from one (`check 2`); the answer counts from zero.
pub fn read_step(text: &str, lexicon: &'static Lexicon) -> Option<(Step, Option<u8>)> {
    let sentence = Sentence::read(text, lexicon);
    let first = fold(text.split_whitespace().next().unwrap_or_default());
    let shown = |whole| lexicon.shown_step(text, whole).and_then(Step::from_name);
    let salts = || (0..sentence.len()).any(|at| sentence.of(at, "salting-").is_some_and(|how| how != "none"));
    let named = shown(true)
        .or_else(|| Step::from_name(&first))
        .or_else(|| (0..sentence.len()).find_map(|at| sentence.of(at, "step-").and_then(Step::from_name)))
        .or_else(|| shown(false))
        .or_else(|| salts().then_some(Step::Salt))?;
    let nth = (0..sentence.len()).find_map(|at| sentence.whole(at, 1..=99)).and_then(|n| u8::try_from(n - 1).ok());
    Some((named, nth))
}

/// The jobs whose hour is asked for: "when do I salt it?", "what time does it go in". Nothing else is counted or measured.
pub fn asks_when_step(text: &str, lexicon: &'static Lexicon) -> Vec<Step> {
    /// Words that may stand before the question.
    const LEAD: usize = 2;
    let sentence = Sentence::read(text, lexicon);
    let places = || 0..sentence.len();
    // "On le met au four à quelle heure ?"
    let last = || (0..sentence.len()).rev().find(|at| sentence.mark(*at).is_none());
    let asked = sentence.find(0, "ask-when").is_some_and(|at| at <= LEAD)
        || last().is_some_and(|last| last > 0 && sentence.is(last, "ask-when"));
    if !asked || places().any(|at| sentence.number(at).is_some() || sentence.amount(at).is_some()) {
        return Vec::new();
    }
    places().flat_map(|at| named_at(&sentence, at)).collect()
}

/// The job of which another hour is asked for, and that hour: "can I salt it tomorrow morning instead?". Only the jobs of the bird.
pub fn asks_another_hour(text: &str, ground: &Ground) -> Option<(Step, Moment)> {
    const OF_THE_BIRD: [Step; 7] = [Step::Buy, Step::Thaw, Step::Salt, Step::Temper, Step::Fire, Step::On, Step::Carve];
    let lexicon = ground.lexicon;
    if !Told::of(text, lexicon).opens_with("ask-may") {
        return None;
    }
    let sentence = Sentence::read(text, lexicon);
    let places = || 0..sentence.len();
    // "Can I thaw it on the counter overnight?" asks for something else.
    if places().any(|at| sentence.amount(at).is_some()) || sentence.has("ask-counter") {
        return None;
    }
    let step = places().flat_map(|at| named_at(&sentence, at)).find(|step| OF_THE_BIRD.contains(step))?;
    Some((step, read_job_hour(text, ground)?))
}

/// Whether a bird is named: "what time does the bird go on".
pub fn names_a_bird(text: &str, lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(text, lexicon);
    (0..sentence.len()).any(|at| sentence.of(at, "bird-").is_some())
}

/// The jobs that what stands there is a name of. "Salt it" is a way to salt as well.
fn named_at(sentence: &Sentence, at: usize) -> Vec<Step> {
    let named = |meaning: &&str| Step::from_name(meaning.strip_prefix("step-")?);
    let salts = sentence.of(at, "salting-").is_some_and(|how| how != "none").then_some(Step::Salt);
    sentence.meanings(at).iter().filter_map(named).chain(salts).collect()
}

/// The job whose owner is asked for: "who's salting?", "who carves". Nothing else is said.
pub fn asks_who(text: &str, lexicon: &'static Lexicon) -> Option<Step> {
    /// As many words as asking for someone takes.
    const MOST: usize = 3;
    let words = lexicon.talk_words(text);
    let rest = (1..=MOST.min(words.len())).rev().find_map(|count| {
        let (lead, rest) = words.split_at(count);
        lexicon.talk(&lead.join(" "), "who").then(|| rest.join(" "))
    })?;
    // "Who's on carving again"
    let told = || essence(&lexicon.talk_words(&rest), lexicon).join(" ");
    let named = |rest: &str| lexicon.talked(rest, "asked-").find_map(Step::from_name);
    named(&rest).or_else(|| named(&told())).or_else(|| read_step(&rest, lexicon).map(|(step, _)| step))
}

/// A text that is nothing but yes or no.
pub fn read_answer(text: &str, lexicon: &'static Lexicon) -> Option<Answer> {
    let sentence = Sentence::read(text, lexicon);
    let word = (0..sentence.len()).all(|at| sentence.mark(at).is_some() || at == 0);
    if !word {
        return None;
    }
    if sentence.is(0, "yes") { Some(Answer::Yes) } else { sentence.is(0, "no").then_some(Answer::No) }
}

/// A short text that says a job is done.
pub fn is_done(text: &str, lexicon: &'static Lexicon) -> bool {
    /// Longer texts tell a story.
    const LONGEST: usize = 40;
    text.len() <= LONGEST && Sentence::read(text, lexicon).is(0, "done")
}
