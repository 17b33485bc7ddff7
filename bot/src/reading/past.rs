//! A report with the time it happened at: "started thawing 3 hours ago", "bird went in at 11", "3 hours early".
//!
//! Owns what is taken out of the sentence; the rest is read as any report ([`read_report`]).

use super::ground::Ground;
use super::sentence::Sentence;
use super::talk::{Report, ReportKind, read_report};
use super::when::{Lean, When, last_at, read_when, take};
use carvetime_core::plan::Moment;
use chrono::TimeDelta;

/// When it happened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Happened {
    /// Then.
    At(Moment),
    /// So much before it was planned.
    Early(TimeDelta),
}

/// The longest ago for an hour without its day: as far as it is nearer behind than ahead.
const HOUR_AGO: TimeDelta = TimeDelta::hours(5);
/// The longest ago: a bird thaws for days.
const LONGEST: TimeDelta = TimeDelta::days(6);

/// Reads what was done, and when. `None`: nothing was, or no time is told.
pub fn read_report_at(text: &str, ground: &Ground) -> Option<(Report, Happened)> {
    if text.contains(['?', '¿']) {
        return None;
    }
    let sentence = Sentence::read(text, ground.lexicon);
    let mut taken = vec![false; sentence.len()];
    let happened = beside(&sentence, &mut taken, ground).or_else(|| clock(&sentence, &mut taken, ground))?;
    let rest: Vec<&str> = (0..sentence.len())
        .filter(|at| taken.get(*at) == Some(&false) && sentence.mark(*at).is_none())
        .map(|at| sentence.raw(at))
        .collect();
    let report = read_report(&rest.join(" "), ground.lexicon)?;
    (report.kind == ReportKind::Done && report.step.is_some()).then_some((report, happened))
}

/// "3 hours ago", "3 hours early": a length of time and the word beside it.
fn beside(s: &Sentence, taken: &mut [bool], ground: &Ground) -> Option<Happened> {
    (0..s.len()).find_map(|at| {
        let span = s.amount(at)?.span().filter(|span| *span > TimeDelta::zero() && *span <= LONGEST)?;
        let words = [at.checked_sub(1), Some(at + 1)];
        let word = |concept: &str| words.into_iter().flatten().find(|at| s.is(*at, concept));
        let (word, happened) = match (word("ago"), word("earlier")) {
            (Some(word), _) => (word, Happened::At(ground.now - span)),
            (None, Some(word)) => (word, Happened::Early(span)),
            (None, None) => return None,
        };
        take(taken, at.min(word), at.max(word));
        led(s, taken, at.min(word));
        Some(happened)
    })
}

/// "Since 12:45", "at 11", "yesterday at 8 pm".
fn clock(s: &Sentence, taken: &mut [bool], ground: &Ground) -> Option<Happened> {
    let when = read_when(s, taken, ground, Lean::Past)?;
    // "Oven on at 325" is no time of day.
    let free = |at: &usize| taken.get(*at) == Some(&false);
    if (0..s.len()).filter(free).any(|at| s.number(at).is_some() || s.amount(at).is_some()) {
        return None;
    }
    let at = match when {
        When::Moment(at) => at,
        // "Goes in at 11", said at nine, is still to come: an hour without its day was a short while ago, or it is not past.
        When::Hour(hour) => Some(last_at(ground, hour)).filter(|at| ground.now - *at <= HOUR_AGO)?,
        When::Day(_) => return None,
    };
    let first = taken.iter().position(|taken| *taken)?;
    led(s, taken, first);
    (at <= ground.now && ground.now - at <= LONGEST).then_some(Happened::At(at))
}

/// The word that leads in the time goes with it: "since", "at".
fn led(s: &Sentence, taken: &mut [bool], first: usize) {
    if let Some(before) = first.checked_sub(1).filter(|at| s.is(*at, "since") || s.is(*at, "at")) {
        take(taken, before, before);
    }
}
