//! The last reading put right in a word: "oops 154". It takes that one's place, at the time of that one.

use super::doubted;
use super::readings;
use super::sitting::button;
use super::state::StoredReading;
use super::{PersonId, Sitting, undo};
use crate::reading::{self, Place, Slip};
use crate::words::Text;
use carvetime_core::quantity::{celsius, in_celsius, in_fahrenheit};
use chrono::TimeDelta;

/// Longer ago it is no slip of the finger any more.
const JUST_TOLD: TimeDelta = TimeDelta::minutes(15);
/// A number farther from what was told is of another spot, °F.
const NEAR_F: f64 = 60.0;
/// Two spots as near as that to the number: nobody knows which is meant, °F.
const AS_NEAR_F: f64 = 4.0;

/// `false`: the words put nothing right, or nothing was just told that they could be about.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(who) = sitting.speaker() else { return false };
    let cooking = sitting.room.plan.as_ref().is_some_and(|plan| !plan.is_off());
    if !cooking {
        return false;
    }
    let Some(slip) = reading::read_slip(text, &sitting.ground()) else { return false };
    let Some(reading) = asked(sitting, who, &slip).or_else(|| last(sitting, who, &slip)) else { return false };
    doubted::judge(sitting, who, reading);
    true
}

/// "That can't be right": the number just read is looked at again, and taken back if it was wrong. `false`: none was.
pub(super) fn doubted(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let cooking = sitting.room.plan.as_ref().filter(|plan| !plan.is_off());
    let last = cooking.and_then(|plan| plan.readings.last()?.told_at);
    let fresh = last.is_some_and(|told| sitting.now - told <= JUST_TOLD);
    if !fresh || !reading::is_doubting(text, sitting.lexicon()) {
        return false;
    }
    let undo = sitting.room.plan.as_ref().map(undo::newest);
    sitting.answer(Text::new("cook-doubting")).row(undo.map(|undo| button("room-button-undo", &undo)));
    true
}

/// What its author was asked about, with the number that was meant.
fn asked(sitting: &Sitting<'_>, who: PersonId, slip: &Slip) -> Option<StoredReading> {
    let plan = sitting.room.plan.as_ref()?;
    let doubted = plan.doubted.iter().find(|doubted| doubted.given.by == Some(who))?;
    mended(&doubted.given, slip, f64::INFINITY).map(|reading| StoredReading { sure: false, ..reading })
}

/// What they told last, with the number that was meant.
fn last(sitting: &Sitting<'_>, who: PersonId, slip: &Slip) -> Option<StoredReading> {
    let plan = sitting.room.plan.as_ref()?;
    let place = readings::last_of(sitting, who)?;
    let last = plan.readings.get(place)?;
    let told = last.told_at.filter(|at| sitting.now - *at <= JUST_TOLD)?;
    let mended = mended(last, slip, NEAR_F)?;
    Some(StoredReading { told_at: Some(told.max(sitting.now)), sure: false, replaces: Some(place), ..mended })
}

/// The reading with that number in the spot named, else in the one whose number is nearest.
fn mended(reading: &StoredReading, slip: &Slip, near: f64) -> Option<StoredReading> {
    let mut mended = reading.clone();
    let meant = in_fahrenheit(slip.meant);
    let far = |read: f64| (in_fahrenheit(celsius(read)) - meant).abs();
    let read = |place: Place| *spot(&mut reading.clone(), place);
    let mut told: Vec<(f64, Place)> =
        Place::ALL.iter().filter_map(|place| Some((far(read(*place)?), *place))).collect();
    told.sort_by(|one, other| one.0.total_cmp(&other.0));
    let place = match (slip.place, &told[..]) {
        (Some(place), _) => told.iter().any(|(_, read)| *read == place).then_some(place)?,
        (None, [(one, _), (other, _), ..]) if other - one < AS_NEAR_F => return None,
        (None, [(far, place), ..]) if *far <= near => *place,
        _ => return None,
    };
    *spot(&mut mended, place) = Some(in_celsius(slip.meant));
    Some(mended)
}

fn spot(reading: &mut StoredReading, place: Place) -> &mut Option<f64> {
    match place {
        Place::Breast => &mut reading.breast_c,
        Place::Thigh => &mut reading.thigh_c,
        Place::Pit => &mut reading.pit_c,
        Place::Stuffing => &mut reading.stuffing_c,
        Place::Wing => &mut reading.wing_c,
    }
}
