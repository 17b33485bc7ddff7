//! A number read on the other scale than the room's: asked about before a bird is taken for done that is not.
//!
//! Owns what is doubted where degrees are Celsius, beside what the physics' bounds ask about: meat at its target long before any bird
//! is, and numbers from a household whose oven is marked in °F. No fix is offered that nobody can have typed.

use super::Sitting;
use super::state::LivePlan;
use crate::reading::sentence::Sentence;
use crate::words::{Arg, Text};
use carvetime_core::heat::{self, Cook, Place, Slip, Suspect};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};

/// Meat that hot counts as done.
const DONE_C: f64 = 74.0;
/// Of the time the bird is planned to be over the heat: earlier, none is done.
const EARLY: f64 = 0.6;
/// The same where the oven's dial is in °F and the room's degrees are not.
const EARLY_BY_DIAL: f64 = 0.85;
/// °C above what is usual by then, from which on a number may be in °F there.
const ABOVE_USUAL: f64 = 20.0;
/// °C a minute a spot usually rises, from fridge to done.
const USUAL: f64 = 0.45;

/// What is doubted of a reading in a room with degrees Celsius; `suspects` are those the physics asks about.
pub(super) fn doubted(
    plan: &LivePlan,
    on: Moment,
    cook: &Cook,
    before: &[heat::Reading],
    new: &heat::Reading,
    suspects: Vec<Suspect>,
) -> Vec<Suspect> {
    let mut doubted: Vec<Suspect> =
        suspects.into_iter().filter_map(|suspect| typed(suspect, cook, before, new)).collect();
    if new.sure {
        return doubted;
    }
    let planned = plan.job(Step::Pull, 0).map(|job| (job.at - on).as_seconds_f64()).filter(|planned| *planned > 0.0);
    let gone = new.at.as_seconds_f64();
    let dial = is_marked_in_fahrenheit(cook.heat.setting);
    let early = planned.is_some_and(|planned| gone < planned * if dial { EARLY_BY_DIAL } else { EARLY });
    let first = !before.iter().any(|reading| reading.breast.is_some() || reading.thigh.is_some());
    for (place, given) in [(Place::Breast, new.breast), (Place::Thigh, new.thigh)] {
        let Some(given) = given.filter(|_| doubted.iter().all(|suspect| suspect.place != place)) else { continue };
        let value = in_celsius(given);
        let meant = in_other_scale(given);
        let fits = fits(cook, before, new, place, meant);
        let hot = early && value >= DONE_C;
        let odd = dial && first && fits && value > 4.0 + USUAL * gone / 60.0 + ABOVE_USUAL;
        if hot || odd {
            doubted.push(Suspect {
                at: new.at,
                place,
                given,
                meant: Some(meant).filter(|_| fits),
                slip: if fits { Slip::WasFahrenheit } else { Slip::Impossible },
            });
        }
    }
    doubted
}

/// The suspect with a fix somebody can have meant. A digit lost is lost in °C here. `None`: there is nothing to ask of it.
fn typed(suspect: Suspect, cook: &Cook, before: &[heat::Reading], new: &heat::Reading) -> Option<Suspect> {
    if suspect.slip == Slip::WasFahrenheit || suspect.slip == Slip::Impossible {
        return Some(suspect);
    }
    // "18" for 180, "162" for 62; an oven a hundred degrees too cold is no slip.
    let value = in_celsius(suspect.given);
    let other = (Slip::WasFahrenheit, in_other_scale(suspect.given));
    let hundred = (suspect.place != Place::Pit).then_some(value - 100.0);
    let digits = hundred.into_iter().chain([value * 10.0, value / 10.0]).map(|value| (Slip::Digit, celsius(value)));
    let mut all = std::iter::once(other).chain(digits);
    match all.find(|(_, meant)| fits(cook, before, new, suspect.place, *meant)) {
        Some((slip, meant)) => Some(Suspect { meant: Some(meant), slip, ..suspect }),
        // An oven may be as cold as it reads.
        None if suspect.place == Place::Pit => None,
        None => Some(Suspect { meant: None, slip: Slip::Impossible, ..suspect }),
    }
}

fn in_other_scale(given: Temperature) -> Temperature {
    fahrenheit(in_celsius(given))
}

/// Whether nothing would be asked about that spot if it read so.
fn fits(cook: &Cook, before: &[heat::Reading], new: &heat::Reading, place: Place, meant: Temperature) -> bool {
    let alone = heat::Reading { at: new.at, pit: None, breast: None, thigh: None, sure: false };
    let only = match place {
        Place::Pit => heat::Reading { pit: Some(meant), ..alone },
        Place::Breast => heat::Reading { breast: Some(meant), ..alone },
        Place::Thigh => heat::Reading { thigh: Some(meant), ..alone },
    };
    heat::suspects(cook, before, &only).is_empty()
}

/// "One thermometer says 60, the other 70": which is right nobody knows, and no spot was named. The lower counts. `false`: the words say
/// something else.
pub(super) fn disagree(sitting: &mut Sitting<'_>, text: &str) -> bool {
    const COLDEST: f64 = 20.0;
    let sentence = Sentence::read(text, sitting.lexicon());
    let places = || 0..sentence.len();
    let named = places().any(|at| sentence.of(at, "spot-").is_some_and(|spot| spot != "pit"));
    if !sentence.has("habit-two-probes") || named {
        return false;
    }
    let us = sitting.us_units();
    let bare = |value: f64| if us { fahrenheit(value) } else { celsius(value) };
    let told = |at: usize| {
        let scaled = || sentence.amount(at).and_then(|amount| amount.temperature());
        scaled().or_else(|| sentence.number(at).filter(|value| *value >= COLDEST).map(bare))
    };
    let told: Vec<Temperature> = places().filter_map(told).collect();
    let [first, rest @ ..] = &told[..] else { return false };
    if rest.is_empty() {
        return false;
    }
    let lower =
        rest.iter().fold(*first, |lower, other| if in_celsius(*other) < in_celsius(lower) { *other } else { lower });
    sitting.answer(
        Text::new("room-two-thermometers")
            .with("low", Arg::Temperature(lower))
            .with("ice", Arg::Temperature(fahrenheit(32.0))),
    );
    true
}

/// Whether the setting is one of a dial in °F: round there, and not in °C.
fn is_marked_in_fahrenheit(setting: Temperature) -> bool {
    let round = |value: f64| (value / 5.0 - (value / 5.0).round()).abs() < 0.01;
    round(in_fahrenheit(setting)) && !round(in_celsius(setting))
}
