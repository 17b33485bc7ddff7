//! Thermometer readings: noted, answered with what they mean, never taken for more than they are.

use super::action::{Action, JobRef};
use super::sitting::{button, labelled};
use super::state::{JobState, StoredReading};
use super::{PersonId, Sitting, board, plan_words};
use crate::reading::{self, Log, Place, Problem, Scale};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};
use chrono::TimeDelta;
use std::ops::RangeInclusive;

/// Meat: anything outside is a slip of the finger or the wrong scale.
const MEAT_F: RangeInclusive<f64> = 15.0..=212.0;
/// Air in an oven or a smoker.
const PIT_F: RangeInclusive<f64> = 32.0..=750.0;
/// Meat over heat does not cool by as much: a probe moved, or a digit is missing.
const FALL_F: f64 = 25.0;

/// A set of readings, each in its place.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Spots {
    pit: Option<Temperature>,
    breast: Option<Temperature>,
    thigh: Option<Temperature>,
    stuffing: Option<Temperature>,
}

impl Spots {
    fn named(&self) -> [(&'static str, Option<Temperature>); 4] {
        [("breast", self.breast), ("thigh", self.thigh), ("stuffing", self.stuffing), ("pit", self.pit)]
    }
}

/// `/log` with words.
pub(super) fn ordered(sitting: &mut Sitting<'_>, text: &str) {
    match reading::read_log(text, &sitting.ground()) {
        Ok(Some(log)) => told(sitting, &log),
        Ok(None) => {
            sitting.answer(Text::new("room-log-how"));
        }
        Err(problem) => {
            sitting.answer(problem.text());
        }
    }
}

/// Plain words while something is over the heat. `false`: no readings in them.
pub(super) fn heard(sitting: &mut Sitting<'_>, text: &str, asked: bool) -> bool {
    match reading::read_log(text, &sitting.ground()) {
        // A number alone only answers a question; `41` in a chat may mean anything.
        Ok(Some(log)) if asked || log.readings.iter().any(|reading| reading.place.is_some()) => {
            told(sitting, &log);
            true
        }
        Err(problem @ (Problem::Reading(_) | Problem::Future(_) | Problem::TooManyReadings)) if asked => {
            sitting.answer(problem.text());
            true
        }
        _ => false,
    }
}

fn told(sitting: &mut Sitting<'_>, log: &Log) {
    let Some(who) = sitting.speaker() else { return };
    if sitting.room.plan.is_none() {
        sitting.answer(Text::new("room-no-plan"));
        return;
    }
    let spots = spots(sitting, log);
    if let Some(doubt) = doubt(sitting, &spots).or_else(|| fallen(sitting, &spots)) {
        sitting.answer(doubt);
        return;
    }
    note(sitting, who, &spots, log.at.unwrap_or(sitting.now));
}

/// Puts each number in its place and on its scale. A number alone is the breast's.
fn spots(sitting: &Sitting<'_>, log: &Log) -> Spots {
    let usual = if sitting.us_units() { Scale::Fahrenheit } else { Scale::Celsius };
    // `58/64/165C`: one letter speaks for all of them.
    let written = log.readings.iter().find_map(|reading| reading.scale);
    let mut spots = Spots::default();
    for reading in &log.readings {
        let temperature = reading.temperature(written.unwrap_or(usual));
        match reading.place {
            Some(Place::Pit) => spots.pit = Some(temperature),
            Some(Place::Thigh) => spots.thigh = Some(temperature),
            Some(Place::Stuffing) => spots.stuffing = Some(temperature),
            Some(Place::Breast) | None => spots.breast = Some(temperature),
        }
    }
    spots
}

fn note(sitting: &mut Sitting<'_>, who: PersonId, spots: &Spots, at: Moment) {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    plan.remember("logged", None, Some(who), now);
    plan.readings.push(StoredReading {
        at,
        pit_c: spots.pit.map(in_celsius),
        breast_c: spots.breast.map(in_celsius),
        thigh_c: spots.thigh.map(in_celsius),
        stuffing_c: spots.stuffing.map(in_celsius),
        by: Some(who),
    });
    plan.readings.sort_by_key(|reading| reading.at);
    // A reading answers the checks that asked for it.
    let due: Vec<u8> = plan
        .jobs
        .iter()
        .filter(|job| {
            let open = job.state == JobState::Waiting && job.at <= now + TimeDelta::minutes(15);
            open && job.step() == Some(Step::Check)
        })
        .map(|job| job.nth)
        .collect();
    for nth in due {
        plan.record(Step::Check, nth, at, true, Some(who));
    }
    let undo = Action::Undo(plan.serial, u16::try_from(plan.history.len().saturating_sub(1)).unwrap_or(u16::MAX));
    let lines: Vec<Text> = meaning(sitting, spots).into_iter().chain(outlook(sitting)).collect();
    let noted = noted(spots);
    let on = on_unsaid(sitting);
    let say = sitting.answer(noted).lines(lines);
    say.row([button("room-button-undo", &undo)]);
    if let Some(on) = on {
        say.line(Text::new("room-log-on-unsaid")).row([labelled(plan_words::step_done(Step::On, 0), &on)]);
    }
    board::refresh(sitting);
}

/// Readings come, and nobody has said that the bird is on.
fn on_unsaid(sitting: &Sitting<'_>) -> Option<Action> {
    let plan = sitting.room.plan.as_ref()?;
    let on = plan.job(Step::On, 0).filter(|job| job.state == JobState::Waiting)?;
    Some(Action::Done(JobRef { serial: plan.serial, step: Step::On, nth: on.nth }))
}

/// What was understood.
fn noted(spots: &Spots) -> Text {
    let part = |(spot, temperature): (&'static str, Option<Temperature>)| {
        Some(
            Text::new("room-log-spot")
                .with("spot", Arg::Choice(spot))
                .with("temperature", Arg::Temperature(temperature?)),
        )
    };
    Text::new("room-log-noted").with("parts", Arg::List(spots.named().into_iter().filter_map(part).collect()))
}

/// What the numbers mean for safety: 165 °F in every spot, by the authority; one spot alone proves nothing.
fn meaning(sitting: &Sitting<'_>, spots: &Spots) -> Option<Text> {
    let target = super::target();
    let there = |spot: Option<Temperature>| spot.map(|spot| in_fahrenheit(spot) >= in_fahrenheit(target));
    let over = sitting.room.plan.as_ref()?.job(Step::Pull, 0).is_some_and(|job| job.state != JobState::Waiting);
    let id = match (there(spots.breast), there(spots.thigh)) {
        _ if over => return None,
        (Some(true), Some(true)) if there(spots.stuffing) == Some(false) => "room-log-stuffing-behind",
        (Some(true), Some(true)) => "room-log-both",
        (Some(true), Some(false)) => "room-log-thigh-behind",
        (Some(false), Some(true)) => "room-log-breast-behind",
        (Some(true), None) | (None, Some(true)) => "room-log-one-spot",
        _ => return None,
    };
    Some(Text::new(id).with("target", Arg::Temperature(target)))
}

/// A number that can't be: asked about, not believed.
fn doubt(sitting: &Sitting<'_>, spots: &Spots) -> Option<Text> {
    spots.named().into_iter().find_map(|(spot, given)| {
        let range = if spot == "pit" { PIT_F } else { MEAT_F };
        let given = given.filter(|given| !range.contains(&in_fahrenheit(*given)))?;
        // 58 in a kitchen of °F may be frozen, or may be °C: only the second makes sense of a number this low.
        let celsius = sitting.us_units() && spot != "pit" && in_fahrenheit(given) < *range.start();
        Some(
            Text::new("room-log-doubt")
                .with("spot", Arg::Choice(spot))
                .with("given", Arg::Temperature(given))
                .with("low", Arg::Temperature(fahrenheit(*range.start())))
                .with("high", Arg::Temperature(fahrenheit(*range.end())))
                .with("celsius", Arg::Choice(if celsius { "yes" } else { "no" })),
        )
    })
}

/// Meat over heat does not cool by a lot.
fn fallen(sitting: &Sitting<'_>, spots: &Spots) -> Option<Text> {
    let plan = sitting.room.plan.as_ref()?;
    let pulled = plan.job(Step::Pull, 0).is_some_and(|job| job.state != JobState::Waiting);
    if pulled {
        return None;
    }
    let last = |of: fn(&StoredReading) -> Option<f64>| plan.readings.iter().rev().find_map(of).map(celsius);
    let before = [
        ("breast", spots.breast, last(|reading| reading.breast_c)),
        ("thigh", spots.thigh, last(|reading| reading.thigh_c)),
    ];
    before.into_iter().find_map(|(spot, given, last)| {
        let (given, last) = (given?, last?);
        (in_fahrenheit(last) - in_fahrenheit(given) > FALL_F).then(|| {
            Text::new("room-log-fell")
                .with("spot", Arg::Choice(spot))
                .with("given", Arg::Temperature(given))
                .with("last", Arg::Temperature(last))
        })
    })
}

/// A spot that read below the authority's figure within the last half hour: which, what, when.
pub(super) fn below(sitting: &Sitting<'_>) -> Option<(&'static str, Temperature, Moment)> {
    const LATELY: TimeDelta = TimeDelta::minutes(30);
    let plan = sitting.room.plan.as_ref()?;
    let last = |of: fn(&StoredReading) -> Option<f64>| {
        let (at, value) = plan.readings.iter().rev().find_map(|reading| Some((reading.at, of(reading)?)))?;
        (sitting.now - at <= LATELY).then(|| (celsius(value), at))
    };
    let spots = [("breast", last(|reading| reading.breast_c)), ("thigh", last(|reading| reading.thigh_c))];
    spots.into_iter().find_map(|(spot, read)| {
        let (read, at) = read?;
        (in_fahrenheit(read) < in_fahrenheit(super::target()) - 0.5).then_some((spot, read, at))
    })
}

/// `/when`.
pub(super) fn when(sitting: &mut Sitting<'_>) {
    let Some(plan) = &sitting.room.plan else {
        sitting.answer(Text::new("room-no-plan"));
        return;
    };
    let dinner = plan.wish.dinner;
    match outlook(sitting) {
        Some(text) => sitting.answer(text),
        None => sitting.answer(
            Text::new("room-when-dinner").with("dinner", dinner.map_or(Arg::Verbatim(String::new()), Arg::DayClock)),
        ),
    };
}

/// When the bird comes off, by what is known now.
pub(super) fn outlook(sitting: &Sitting<'_>) -> Option<Text> {
    let plan = sitting.room.plan.as_ref()?;
    let pulled = plan.job(Step::Pull, 0).is_none_or(|job| job.state != JobState::Waiting);
    if pulled {
        return None;
    }
    let (from, to, dinner) = (plan.ready_from?, plan.ready_to?, plan.wish.dinner?);
    Some(
        Text::new("room-when")
            .with("from", Arg::DayClock(from))
            .with("to", Arg::Clock(to))
            .with("dinner", Arg::DayClock(dinner)),
    )
}

/// Whether words in the room may be readings: from the fire on, until dinner is long over.
pub(super) fn expected(sitting: &Sitting<'_>) -> bool {
    const BEFORE: TimeDelta = TimeDelta::hours(6);
    const AFTER: TimeDelta = TimeDelta::hours(6);
    sitting.room.plan.as_ref().is_some_and(|plan| {
        let on =
            plan.job(Step::On, 0).is_some_and(|job| job.state != JobState::Waiting || job.at <= sitting.now + BEFORE);
        on && plan.job(Step::Serve, 0).is_none_or(|job| job.at + AFTER > sitting.now)
    })
}
