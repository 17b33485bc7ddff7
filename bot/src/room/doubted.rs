//! Readings that can't be right: asked about before they count, put right by the next number, refused where nothing fits.

use super::action::Action;
use super::forecast;
use super::readings::{Spots, last_of, note, parts, spots_of};
use super::sitting::{button, labelled};
use super::state::{Doubted, JobState, StoredReading};
use super::turn::{How, Say, To};
use super::{PersonId, Sitting, scales};
use crate::words::{Arg, Text};
use carvetime_core::heat::{self, Suspect};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{celsius, fahrenheit, in_celsius, in_fahrenheit};
use chrono::TimeDelta;
use std::ops::RangeInclusive;

/// What the buttons under a doubted reading answer.
pub(super) const ASKED: &str = "reading";
/// Meat: anything outside is a slip of the finger or the wrong scale.
const MEAT_F: RangeInclusive<f64> = 15.0..=212.0;
/// Air in an oven or a smoker.
const PIT_F: RangeInclusive<f64> = 32.0..=750.0;
/// Meat over heat does not cool by as much: a probe moved, or a digit is missing.
const FALL_F: f64 = 25.0;

/// Keeps a reading, or asks about it, or refuses it.
pub(super) fn judge(sitting: &mut Sitting<'_>, who: PersonId, reading: StoredReading) {
    match ask_about(sitting, &reading, &spots_of(&reading)) {
        Asked::Believed => note(sitting, who, &reading),
        Asked::Refused(text) => {
            sitting.answer(text);
        }
        Asked::Doubted(suspects) => ask(sitting, who, reading, &suspects),
    }
}

/// A reading sent right after one of the same spots that can't be right: it takes that one's place. `None`: the one before is no slip,
/// or this one is no better.
pub(super) fn mends(sitting: &Sitting<'_>, who: PersonId, reading: &StoredReading) -> Option<StoredReading> {
    const RIGHT_AFTER: TimeDelta = TimeDelta::minutes(15);
    let plan = sitting.room.plan.as_ref().filter(|plan| !plan.is_off() && reading.replaces.is_none())?;
    let place = last_of(sitting, who)?;
    let last =
        plan.readings.get(place).filter(|last| reading.at - last.at <= RIGHT_AFTER && same_spots(last, reading))?;
    let (on, cook, _) = forecast::cook_of(plan, &sitting.light())?;
    let without = |at: Moment| {
        let others =
            plan.readings.iter().enumerate().filter(|(other, it)| *other != place && it.at >= on && it.at <= at);
        let mut others: Vec<heat::Reading> = others.map(|(_, it)| it.since(on)).collect();
        others.sort_by_key(|it| it.at);
        others
    };
    let asked_again = heat::Reading { sure: false, ..last.since(on) };
    let slip = !heat::suspects(&cook, &without(last.at), &asked_again).is_empty();
    let right = heat::suspects(&cook, &without(reading.at), &reading.since(on)).is_empty();
    // A cold spot somebody stands by counts, unless nothing over heat is as cold or as hot.
    (slip && right && (!last.sure || never_over_heat(last)))
        .then(|| StoredReading { replaces: Some(place), ..reading.clone() })
}

/// Colder than any fridge after a while over heat, or near boiling.
fn never_over_heat(reading: &StoredReading) -> bool {
    const MEAT: RangeInclusive<f64> = 40.0..=205.0;
    [reading.breast_c, reading.thigh_c].into_iter().flatten().any(|spot| !MEAT.contains(&in_fahrenheit(celsius(spot))))
}

/// Both tell of the same spots.
pub(super) fn same_spots(one: &StoredReading, other: &StoredReading) -> bool {
    let told = |it: &StoredReading| [it.pit_c, it.breast_c, it.thigh_c].map(|spot| spot.is_some());
    told(one).iter().zip(told(other)).all(|(one, other)| !*one || other)
}

/// What is thought of a reading before it is kept.
enum Asked {
    Believed,
    /// Not kept; to be sent again.
    Refused(Text),
    /// Some of it is to be asked about.
    Doubted(Vec<Suspect>),
}

fn ask_about(sitting: &Sitting<'_>, reading: &StoredReading, spots: &Spots) -> Asked {
    let Some(plan) = &sitting.room.plan else { return Asked::Believed };
    let over = plan.is_off();
    match forecast::cook_of(plan, &sitting.light()).filter(|(on, ..)| !over && reading.at >= *on) {
        Some((on, cook, _)) => {
            // What it corrects is no evidence against it.
            let at = reading.at - on;
            let replaced = reading.replaces.and_then(|place| plan.readings.get(place)).map(|it| it.at - on);
            let earlier = |other: &heat::Reading| {
                (other.at < at || other.at == at && reading.replaces.is_none()) && Some(other.at) != replaced
            };
            let before: Vec<_> = plan.readings_since(on).into_iter().filter(earlier).collect();
            let mut suspects = heat::suspects(&cook, &before, &reading.since(on));
            // Nobody reads the other scale off a thermometer and then puts it into ours.
            let never = if sitting.us_units() { heat::Slip::WasFahrenheit } else { heat::Slip::WasCelsius };
            for suspect in suspects.iter_mut().filter(|suspect| suspect.slip == never) {
                (suspect.slip, suspect.meant) = (heat::Slip::Impossible, None);
            }
            if !sitting.us_units() {
                suspects = scales::doubted(plan, on, &cook, &before, &reading.since(on), suspects);
            }
            // No digit set by a guess makes it done: who read that sends it.
            let done = |suspect: &&mut Suspect| {
                suspect.slip == heat::Slip::Digit
                    && suspect.place != heat::Place::Pit
                    && suspect.meant.is_some_and(|meant| meant >= super::target())
            };
            for suspect in suspects.iter_mut().filter(done) {
                (suspect.slip, suspect.meant) = (heat::Slip::Impossible, None);
            }
            let stuffing = Spots { stuffing: spots.stuffing, wing: spots.wing, ..Spots::default() };
            match doubt(sitting, &stuffing) {
                Some(text) => Asked::Refused(text),
                None if suspects.is_empty() => Asked::Believed,
                None => Asked::Doubted(suspects),
            }
        }
        None => doubt(sitting, spots).or_else(|| fallen(sitting, spots)).map_or(Asked::Believed, Asked::Refused),
    }
}

/// Keeps what is plausible, and asks about the rest.
fn ask(sitting: &mut Sitting<'_>, who: PersonId, reading: StoredReading, suspects: &[Suspect]) {
    let (mut kept, mut given) = (reading.clone(), reading);
    let mut meant = given.clone();
    let mut is_meant = false;
    (given.stuffing_c, meant.stuffing_c) = (None, None);
    (given.wing_c, meant.wing_c) = (None, None);
    for place in [heat::Place::Pit, heat::Place::Breast, heat::Place::Thigh] {
        match suspects.iter().find(|suspect| suspect.place == place) {
            Some(suspect) => {
                *spot_of(&mut kept, place) = None;
                *spot_of(&mut meant, place) = suspect.meant.map(in_celsius);
                is_meant |= suspect.meant.is_some();
            }
            None => {
                *spot_of(&mut given, place) = None;
                *spot_of(&mut meant, place) = None;
            }
        }
    }
    let rest = [kept.pit_c, kept.breast_c, kept.thigh_c, kept.stuffing_c, kept.wing_c].iter().any(Option::is_some);
    if rest {
        // The rest takes the place of what is corrected; what was doubted joins it.
        (given.replaces, meant.replaces) = (None, None);
        note(sitting, who, &kept);
    }
    let meant = is_meant.then_some(meant);
    // Several would not fit on a button; the lines above say which.
    let several = suspects.iter().filter(|suspect| suspect.meant.is_some()).count() > 1;
    let label = meant.as_ref().map(|meant| match several {
        true => Text::new("cook-suspect-meant-all"),
        false => Text::new("cook-suspect-meant").with("parts", parts(&spots_of(meant))),
    });
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.doubted.retain(|doubted| doubted.given.by != Some(who));
        plan.doubted.push(Doubted { given, meant });
    }
    let mut lines: Vec<Text> = suspects.iter().map(suspect_line).collect();
    lines.push(Text::new("cook-suspect-ask"));
    let say = sitting.answer_all(lines).key("reading");
    if let Some(label) = label {
        say.row([labelled(label, &Action::Meant(who))]);
    }
    say.row([
        button("room-button-yes", &Action::Yes(ASKED.into(), who)),
        button("room-button-no", &Action::No(ASKED.into(), who)),
    ]);
}

/// Asks whether this is what was meant by words that say it badly; nothing of it counts before.
pub(super) fn ask_whether(sitting: &mut Sitting<'_>, who: PersonId, meant: StoredReading) {
    let parts_of = |reading: &StoredReading| parts(&spots_of(reading));
    let ask = Text::new("room-digits-apart").with("parts", parts_of(&meant));
    let several = spots_of(&meant).named().iter().filter(|(_, read)| read.is_some()).count() > 1;
    let label = match several {
        true => Text::new("room-button-yes"),
        false => Text::new("cook-suspect-meant").with("parts", parts_of(&meant)),
    };
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.doubted.retain(|doubted| doubted.given.by != Some(who));
        plan.doubted.push(Doubted { given: meant.clone(), meant: Some(meant) });
    }
    sitting
        .answer(ask)
        .key("reading")
        .row([labelled(label, &Action::Meant(who)), button("room-button-no", &Action::No(ASKED.into(), who))]);
}

fn suspect_line(suspect: &Suspect) -> Text {
    let text = Text::new(match suspect.meant {
        Some(_) => "cook-suspect-odd",
        None => "cook-suspect-impossible",
    });
    text.with("spot", Arg::Choice(suspect.place.name()))
        .with("given", Arg::Temperature(suspect.given))
        .with("meant", Arg::Temperature(suspect.meant.unwrap_or(suspect.given)))
        .with("slip", Arg::Choice(suspect.slip.name()))
}

fn spot_of(reading: &mut StoredReading, place: heat::Place) -> &mut Option<f64> {
    match place {
        heat::Place::Pit => &mut reading.pit_c,
        heat::Place::Breast => &mut reading.breast_c,
        heat::Place::Thigh => &mut reading.thigh_c,
    }
}

/// The doubted reading of the one who was asked, taken out of the waiting.
fn doubted(sitting: &mut Sitting<'_>, who: PersonId) -> Option<Doubted> {
    if sitting.speaker() != Some(who) {
        sitting.notice(Text::new("room-not-yours"));
        return None;
    }
    let plan = sitting.room.plan.as_mut();
    let found = plan.and_then(|plan| {
        let place = plan.doubted.iter().position(|doubted| doubted.given.by == Some(who))?;
        Some(plan.doubted.remove(place))
    });
    if found.is_none() {
        sitting.notice(Text::new("room-stale"));
    }
    found
}

/// `Yes`: the thermometer really says so.
pub(super) fn stands(sitting: &mut Sitting<'_>, who: PersonId) {
    let Some(Doubted { mut given, .. }) = doubted(sitting, who) else { return };
    given.sure = true;
    close_question(sitting);
    note(sitting, who, &given);
}

/// It was meant as guessed.
pub(super) fn meant(sitting: &mut Sitting<'_>, who: PersonId) {
    let Some(Doubted { meant: Some(meant), .. }) = doubted(sitting, who) else { return };
    close_question(sitting);
    note(sitting, who, &meant);
}

/// `No`: a slip.
pub(super) fn taken_back(sitting: &mut Sitting<'_>, who: PersonId) {
    if doubted(sitting, who).is_some() {
        sitting.answer(Text::new("cook-suspect-dropped")).key("reading").how(How::Edit);
    }
}

fn close_question(sitting: &mut Sitting<'_>) {
    let room = To::Room(sitting.room.id);
    sitting.say(Say::of(room, Vec::new())).key("reading").how(How::Close);
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
    let last = |of: fn(&StoredReading) -> Option<f64>| plan.counted().into_iter().rev().find_map(of).map(celsius);
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
