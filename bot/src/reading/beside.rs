//! Clauses of a first sentence that are not about the dinner's hour or the bird's oven: when it goes on ("bird on wed 9 am", "going in
//! the oven at 11"), when it is bought ("dan buys it tomorrow 8 am") and what else is baked ("rolls at 400 for 20 min").
//!
//! Owns where such a clause begins and ends. What is in it is read by the readers of times and dishes.

use super::dish::names_a_dish;
use super::ground::Ground;
use super::sentence::Sentence;
use super::when::{Lean, When, next_at, read_when, take};
use carvetime_core::plan::Moment;
use carvetime_core::quantity::Measure;
use chrono::NaiveTime;
use std::ops::Range;

/// The pieces between signs.
fn clauses(s: &Sentence) -> Vec<Range<usize>> {
    let ends = |at: &usize| {
        matches!(s.mark(*at), Some(',' | ';' | '!' | '\n')) || s.mark(*at) == Some('.') && !s.glued(*at + 1)
    };
    let mut from = 0;
    let mut clauses = Vec::new();
    for end in (0..s.len()).filter(ends).chain([s.len()]) {
        if from < end {
            clauses.push(from..end);
        }
        from = end + 1;
    }
    clauses
}

/// When the bird goes on, from a clause that says so and names no meal. Its words are no dinner hour any more.
pub(super) fn start(s: &Sentence, taken: &mut [bool], ground: &Ground) -> Option<When> {
    let says = |clause: &Range<usize>, concept: &str| clause.clone().any(|at| s.is(at, concept));
    let of_start = |clause: &Range<usize>| {
        let mut places = clause.clone();
        let meal = places.any(|at| s.of(at, "meal-").is_some());
        !meal && (says(clause, "heat-start") || says(clause, "heat-start-early"))
    };
    let clause = clauses(s).into_iter().find(of_start)?;
    let mut within: Vec<bool> = (0..s.len()).map(|at| !clause.contains(&at) || taken.get(at) == Some(&true)).collect();
    let before = within.clone();
    let when = read_when(s, &mut within, ground, Lean::Start)?;
    // "Turkey on Thursday 5 pm" tells of a dinner.
    let hour = |when: When| match when {
        When::Moment(at) => Some(chrono::Timelike::hour(&at.with_timezone(&ground.zone))),
        When::Hour(hour) => Some(chrono::Timelike::hour(&hour)),
        When::Day(_) => None,
    };
    if !says(&clause, "heat-start") && hour(when).is_none_or(|hour| hour >= 14) {
        return None;
    }
    for at in (0..s.len()).filter(|at| within.get(*at) != before.get(*at)) {
        take(taken, at, at);
    }
    Some(when)
}

/// When the bird is bought, from a clause that says so: "we buy it Monday morning". Its words are no dinner hour any more.
pub(super) fn shop(s: &Sentence, taken: &mut [bool], ground: &Ground) -> Option<Moment> {
    let dated = |at: usize| ["weekday-", "day-", "month-"].iter().any(|group| s.of(at, group).is_some());
    let says = |clause: &Range<usize>, concept: &str| clause.clone().any(|at| s.is(at, concept));
    let weighed = |at: usize| s.amount(at).is_some_and(|amount| amount.measure() == Some(Measure::Mass));
    let range = clauses(s).into_iter().find_map(|clause| {
        // "Pick it up", "get it", may be said of anything.
        let buys = |at: &usize| {
            s.is(*at, "step-buy")
                || s.is(*at, "set-aside")
                || s.is(*at, "shopping") && clause.clone().any(|at| s.of(at, "bird-").is_some())
        };
        let at = clause.clone().find(buys)?;
        let meal = clause.clone().any(|at| s.of(at, "meal-").is_some());
        // "Buy one for Thursday", "for Christmas", is of the day it is eaten.
        let eaten = |at: usize| s.of(at, "holiday-").is_some() || s.is(at, "for") && (at + 1..at + 3).any(dated);
        // "The butcher puts one aside for the 23rd": that day it is fetched.
        let kept = says(&clause, "set-aside");
        let of_dinner = !kept && clause.clone().any(|at| weighed(at) || eaten(at));
        (!of_dinner).then_some(if meal { at..clause.end } else { clause })
    })?;
    let mut within: Vec<bool> = (0..s.len()).map(|at| !range.contains(&at) || taken.get(at) == Some(&true)).collect();
    let before = within.clone();
    let when = read_when(s, &mut within, ground, Lean::Shop)?;
    for at in (0..s.len()).filter(|at| within.get(*at) != before.get(*at)) {
        take(taken, at, at);
    }
    let part = range.clone().find_map(|at| s.of(at, "part-"));
    shopping(when, part, ground)
}

/// The moment of the shopping: a day alone is late in its morning.
fn shopping(when: When, part: Option<&str>, ground: &Ground) -> Option<Moment> {
    let hour = match part {
        Some("morning") => 9,
        Some("afternoon") => 15,
        _ => 11,
    };
    let at = match when {
        When::Moment(at) => at,
        When::Day(day) => ground.moment(day, NaiveTime::from_hms_opt(hour, 0, 0)?),
        When::Hour(hour) => next_at(ground, hour),
    };
    (at > ground.now).then_some(at)
}

/// When a job is done, from a text that is known to be of that: "dan goes tomorrow", "I salt it tomorrow morning".
pub fn read_job_hour(text: &str, ground: &Ground) -> Option<Moment> {
    let s = Sentence::read(text, ground.lexicon);
    let when = read_when(&s, &mut vec![false; s.len()], ground, Lean::Shop)?;
    shopping(when, (0..s.len()).find_map(|at| s.of(at, "part-")), ground)
}

/// The dishes told with a bird, each as it was written.
pub(super) fn dishes(s: &Sentence, taken: &mut [bool], ground: &Ground) -> Vec<String> {
    let mut dishes = Vec::new();
    // "I turned the oven up to 375" tells of no dish, and of no bird.
    if !(0..s.len()).any(|at| s.of(at, "bird-").is_some()) {
        return dishes;
    }
    for clause in clauses(s) {
        // "and rolls at 400"
        let from = clause.start + usize::from(s.is(clause.start, "number-and"));
        let Some(last) = clause.end.checked_sub(1).filter(|last| from <= *last) else { continue };
        let text = s.quote(from, last);
        if names_a_dish(text, ground) {
            take(taken, clause.start, last);
            dishes.push(text.to_owned());
        }
    }
    dishes
}
