//! A number by itself, shortly before the look that was announced, or told of a thermometer: what it shows.
//!
//! Once a look is called any number answers it; before that "40" among people may be anything, unless somebody is about to look.

use super::state::JobState;
use super::{Sitting, amend, readings};
use crate::reading::{self, Told, sentence::Sentence};
use carvetime_core::plan::Step;
use carvetime_core::quantity::in_fahrenheit;
use chrono::TimeDelta;

/// Whoever looks a little sooner looks for the same.
const SOON: TimeDelta = TimeDelta::minutes(15);
/// Of a bird that cooks nothing colder is read than what was: so much a thermometer may be off, °F.
const LESS_F: f64 = 10.0;
/// What a thermometer in a bird over the heat may show, °F.
const MEAT_F: std::ops::RangeInclusive<f64> = 28.0..=215.0;

/// Whether the text is no more than a number that such a look gives.
pub(super) fn is_reading(sitting: &Sitting<'_>, text: &str) -> bool {
    if !readings::cooks(sitting) || text.contains(['?', '¿', ':', '/']) {
        return false;
    }
    let sentence = Sentence::read(text, sitting.lexicon());
    let numbers = (0..sentence.len()).filter(|at| sentence.number(*at).is_some() || sentence.amount(*at).is_some());
    let named = || Told::of(text, sitting.lexicon()).says("thermometer");
    // "Oops 114" puts right what was told before, or nothing.
    let slips = Told::of(text, sitting.lexicon()).says("slip");
    if slips || numbers.count() != 1 || !says_nothing_else(sitting, text) || !(is_soon(sitting) || named()) {
        return false;
    }
    let Ok(Some(log)) = reading::read_log(text, &sitting.ground()) else { return false };
    let told = readings::spots(sitting, &log);
    let Some(meat) = told.meat().0.or(told.meat().1).map(in_fahrenheit) else { return false };
    let last = readings::Spots::last_of(sitting.room.plan.as_ref().map_or(&[][..], |plan| &plan.readings));
    let colder = last.breast.into_iter().chain(last.thigh).map(in_fahrenheit).reduce(f64::min);
    MEAT_F.contains(&meat) && colder.is_none_or(|colder| meat >= colder - LESS_F)
}

/// "Only 36", and not "maths 40": each word as it is written, for a slip of one letter makes any word one of these.
fn says_nothing_else(sitting: &Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let counts = |word: &str| word.contains(|c: char| c.is_ascii_digit());
    let empty = |word: &str| {
        amend::is_empty(sitting, word) || lexicon.talk(word, "thermometer") || lexicon.talk(word, "meat-tells")
    };
    lexicon.talk_words(text).iter().all(|word| counts(word) || empty(word))
}

/// A look is at hand that nobody has been called to yet.
fn is_soon(sitting: &Sitting<'_>) -> bool {
    let plan = sitting.room.plan.as_ref();
    plan.is_some_and(|plan| {
        plan.jobs.iter().any(|job| {
            let near = (job.at - sitting.now).abs() <= SOON;
            job.step() == Some(Step::Check) && job.state == JobState::Waiting && near
        })
    })
}
