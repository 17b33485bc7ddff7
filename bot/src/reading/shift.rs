//! How dinner moves: `6 pm`, `+45 min`, `an hour later`, `Friday`.

use super::ground::Ground;
use super::sentence::Sentence;
use super::when::{Lean, When, hour_of_amount, read_when};
use carvetime_core::plan::Moment;
use carvetime_core::quantity::Unit;
use chrono::{NaiveTime, TimeDelta, Timelike};

/// Behind "at", hours from here on are a time of day.
const LONGEST_MOVE: TimeDelta = TimeDelta::hours(5);

/// A move of the dinner.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shift {
    /// By so much; negative is earlier.
    By(TimeDelta),
    /// To that moment.
    To(Moment),
}

impl Shift {
    /// The new time of a dinner that was at `dinner`.
    pub fn applied(self, dinner: Moment) -> Option<Moment> {
        match self {
            Self::By(span) => dinner.checked_add_signed(span),
            Self::To(at) => Some(at),
        }
    }
}

/// Reads a move of the dinner at `dinner`: an hour alone keeps its day, a day alone its hour. Whether the new time is still
/// to come is for the room to check.
pub fn read_shift(text: &str, dinner: Moment, ground: &Ground) -> Option<Shift> {
    let sentence = Sentence::read(text, ground.lexicon);
    if let Some(span) = from_now(&sentence, ground) {
        return Some(Shift::To(ground.now + span));
    }
    if let Some(by) = by(&sentence) {
        return Some(Shift::By(by));
    }
    let mut taken = vec![false; sentence.len()];
    let local = dinner.with_timezone(&ground.zone).naive_local();
    // "Saturday" is the one nearest the dinner that moves, not the next in the calendar.
    let weekday = (0..sentence.len()).any(|at| sentence.of(at, "weekday-").is_some());
    let near = Ground { now: ground.now.max(dinner - TimeDelta::days(4)), ..*ground };
    let ground = if weekday { &near } else { ground };
    let when = read_when(&sentence, &mut taken, ground, Lean::Meal).or_else(|| bare_hour(&sentence));
    Some(Shift::To(match when? {
        When::Moment(at) => at,
        When::Day(day) => ground.moment(day, local.time()),
        // Midnight is the end of the evening that dinner is on.
        When::Hour(hour) if hour.hour() == 0 && local.hour() >= 12 => {
            ground.moment(local.date().succ_opt().unwrap_or(local.date()), hour)
        }
        When::Hour(hour) => ground.moment(local.date(), hour),
    }))
}

/// Whether a text moves a dinner by so much, or names a day or an hour that is plainly one: "17h", "at 6", no "6" alone.
pub fn says_an_hour(text: &str, ground: &Ground) -> bool {
    let sentence = Sentence::read(text, ground.lexicon);
    let mut taken = vec![false; sentence.len()];
    let told = by(&sentence).is_some() || read_when(&sentence, &mut taken, ground, Lean::Meal).is_some();
    told || hour_of_amount(&sentence, 0).is_some() || hour_told(&sentence).is_some()
}

/// "We eat in an hour and a half": so long from now, and no delay.
fn from_now(s: &Sentence, ground: &Ground) -> Option<TimeDelta> {
    let (at, span) = (0..s.len()).find_map(|at| Some((at, s.amount(at)?.span()?)))?;
    // "In almost two hours"
    let before = |back: usize| {
        let at = at.checked_sub(back)?;
        Some(ground.lexicon.talk(&ground.lexicon.talk_words(s.raw(at)).join(" "), "from-now"))
    };
    let said = [1, 2].into_iter().any(|back| before(back) == Some(true));
    (said && !s.has("later") && !s.has("earlier") && span > TimeDelta::zero() && span < LONGEST_MOVE).then_some(span)
}

/// A span with a direction, or with a sign.
fn by(s: &Sentence) -> Option<TimeDelta> {
    let (at, span) = (0..s.len()).find_map(|at| Some((at, s.amount(at)?.span()?)))?;
    let said_at = at > 0 && s.is(at - 1, "at");
    let later = s.has("later") || at > 0 && s.mark(at - 1) == Some('+') || (at > 0 && s.is(at - 1, "number-plus"));
    let earlier = s.has("earlier") || at > 0 && s.is(at - 1, "minus") || span < TimeDelta::zero();
    let span = span.abs();
    (span <= TimeDelta::days(30)).then_some(())?;
    // "décale à 18 h" names an hour; nobody moves a dinner by so much.
    (!said_at || span < LONGEST_MOVE || s.amount(at)?.unit() != Some(Unit::Hour)).then_some(())?;
    match (earlier, later) {
        (true, _) => Some(-span),
        (false, true) => Some(span),
        // "45 min" alone can only be a delay; "17 h" is an hour of the day.
        (false, false) if !said_at && span < TimeDelta::hours(12) => Some(span),
        (false, false) => None,
    }
}

/// An hour written as hours, at the beginning or the one amount of a text: "18h", "19h au lieu de 17h", "jantar 22h então". A short one
/// only where nothing else is said.
fn hour_told(s: &Sentence) -> Option<(u32, u32)> {
    let counts = |at: &usize| s.number(*at).is_some() || s.amount(*at).is_some();
    let mut counted = (0..s.len()).filter(counts);
    let at = counted.next().filter(|at| *at == 0 || counted.next().is_none())?;
    hour_of_amount(s, at).filter(|(hour, _)| s.len() == 1 || *hour >= 12)
}

/// `6`, `at 6` or `18h`, nothing else: the evening.
fn bare_hour(s: &Sentence) -> Option<When> {
    // "18h, please": so many hours are no delay.
    if let Some((hour, minute)) = hour_told(s) {
        // "5.30": the evening, as of a bare "5".
        let hour = if (1..=11).contains(&hour) { hour + 12 } else { hour % 24 };
        return NaiveTime::from_hms_opt(hour, minute, 0).map(When::Hour);
    }
    let at = (0..s.len()).find(|at| s.number(*at).is_some())?;
    let hour = s.whole(at, 0..=24)?;
    let hour = if (1..=11).contains(&hour) { hour + 12 } else { hour % 24 };
    let alone = (0..s.len()).all(|other| other == at || s.number(other).is_none() && s.amount(other).is_none());
    alone.then(|| NaiveTime::from_hms_opt(hour, 0, 0).map(When::Hour)).flatten()
}
