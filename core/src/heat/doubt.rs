//! Readings that can't be right, and reasons to trust the forecast less.
//!
//! Owns the sifting of readings before they count. Knows the last readings and the physics' bounds, not the fit. Start at [`sift`].
//!
//! A reading that can't be right is asked about, never believed and never silently dropped; one that is only odd counts, widens the
//! forecast and is named.

use super::posterior::Seen;
use crate::quantity::{Temperature, TemperatureInterval, celsius, fahrenheit, in_celsius, in_fahrenheit};
use chrono::TimeDelta;

/// Where a thermometer sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// In the air.
    Pit,
    /// In the breast.
    Breast,
    /// In the thigh.
    Thigh,
}
names!(Place { Pit => "pit", Breast => "breast", Thigh => "thigh" });

/// What a suspect reading probably was.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Slip {
    /// Degrees Celsius taken for Fahrenheit.
    WasCelsius,
    /// Degrees Fahrenheit taken for Celsius.
    WasFahrenheit,
    /// A digit is missing or too much: 18 for 118.
    Digit,
    /// No reading of this kind is possible here.
    Impossible,
}
names!(Slip { WasCelsius => "was-celsius", WasFahrenheit => "was-fahrenheit", Digit => "digit", Impossible => "impossible" });

/// A reading to ask about. It has not been counted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Suspect {
    /// Since the bird met the heat.
    pub at: TimeDelta,
    /// Which thermometer.
    pub place: Place,
    /// As given.
    pub given: Temperature,
    /// What was probably meant.
    pub meant: Option<Temperature>,
    /// What probably went wrong.
    pub slip: Slip,
}

/// How a bird is out of step with its heat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Pace {
    /// Far colder than it should be by now.
    Behind,
    /// Far hotter.
    Ahead,
}
names!(Pace { Behind => "behind", Ahead => "ahead" });

/// Why the forecast is less sure than it could be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Doubt {
    /// Nothing has been read at a spot: only what is usual speaks.
    NoReadings,
    /// Nothing has been read at this spot.
    Unread(Place),
    /// Nothing reads the pit: the setting is taken.
    PitUnread,
    /// A long time without readings of the bird.
    Gap(TimeDelta),
    /// The pit sinks and does not recover.
    FireDying(Temperature),
    /// The thermometer was moved, or rests on bone or in the cavity.
    ProbeMoved(Place),
    /// The two spots are further apart than is usual.
    ProbesDisagree(TemperatureInterval),
    /// The bird warms faster or slower than it did: foil, an opened lid, a moved bird.
    Changed(Place),
    /// The bird is far colder (else hotter) there than this heat makes it in the time: an oven that was off, or a thermometer in the
    /// wrong place.
    OutOfStep(Place, Pace),
    /// It went on with ice inside.
    PartFrozen,
    /// A kind or form of bird the forecast has little experience with.
    Unusual,
    /// At this heat the target may never be reached.
    Endless,
}

impl Doubt {
    /// Its stable name, for locale keys.
    pub fn name(&self) -> &'static str {
        match self {
            Self::NoReadings => "no-readings",
            Self::Unread(_) => "unread",
            Self::PitUnread => "pit-unread",
            Self::Gap(_) => "gap",
            Self::FireDying(_) => "fire-dying",
            Self::ProbeMoved(_) => "probe-moved",
            Self::ProbesDisagree(_) => "probes-disagree",
            Self::Changed(_) => "changed",
            Self::OutOfStep(_, Pace::Behind) => "behind",
            Self::OutOfStep(_, Pace::Ahead) => "ahead",
            Self::PartFrozen => "part-frozen",
            Self::Unusual => "unusual",
            Self::Endless => "endless",
        }
    }

    /// By how much the interval is widened for it, where the fit doesn't do so by itself.
    pub fn widens(&self) -> f64 {
        match self {
            Self::NoReadings | Self::Unread(_) | Self::PitUnread | Self::Endless => 1.0,
            Self::Gap(length) => 1.0 + (length.num_minutes() as f64 / 120.0).min(1.0) * 0.6,
            Self::FireDying(_) => 1.3,
            Self::ProbeMoved(_) => 1.4,
            Self::ProbesDisagree(_) | Self::PartFrozen => 1.2,
            Self::Changed(_) | Self::OutOfStep(_, Pace::Behind) => 1.5,
            // The fit knows a tip at the bone.
            Self::OutOfStep(_, Pace::Ahead) => 1.0,
            Self::Unusual => 1.5,
        }
    }
}

/// °C a minute a spot can rise at most; the fastest flat bird of the logs does 1.4.
const FASTEST: f64 = 2.0;
/// °C a minute a spot usually rises in the middle of a cook.
const USUAL: f64 = 0.45;
/// °C at which a bird is about done: hotter, a first reading is not expected to be.
const EXPECTED: f64 = 74.0;
/// °C a spot can rise beyond that by another placing of the thermometer.
const SCATTER: f64 = 8.0;
/// °C by which a reading may fall below the last one before the thermometer must have been moved. Instant thermometers scatter as much.
pub(super) const FALL: f64 = 8.0;
/// °C above what is usual by then that a slip may have been meant as.
const LIKELY: f64 = 30.0;
/// °C no meat that is wet passes.
const BOILING: f64 = 100.0;
/// A spot hotter than this, °C, is not in a bird.
const HOTTEST_SPOT: f64 = 105.0;

/// What stood before a reading, to judge it by.
#[derive(Debug, Clone, Copy)]
pub struct Before {
    /// Last reading that counted at this place.
    pub last: Option<Seen>,
    /// Start temperature, °C.
    pub start: f64,
    /// Setting, °C.
    pub setting: f64,
    /// The bird was read colder than before: then a cold pit is no slip.
    pub cooling: bool,
}

/// Judges a reading: as it counts, or as it is to be asked about.
pub fn sift(
    place: Place,
    minutes: f64,
    given: Temperature,
    before: &Before,
) -> Result<Seen, (Slip, Option<Temperature>)> {
    let value = in_celsius(given);
    if !value.is_finite() {
        return Err((Slip::Impossible, None));
    }
    let (low, high) = match place {
        Place::Pit => pit_bounds(before),
        Place::Breast | Place::Thigh => spot_bounds(minutes, before),
    };
    if (low..=high).contains(&value) {
        return Ok(Seen { minutes, celsius: value, moved: false });
    }
    let middle = match (place, before.last) {
        (Place::Pit, None) => before.setting,
        (Place::Pit, Some(last)) => last.celsius,
        (_, Some(last)) => last.celsius + USUAL * (minutes - last.minutes).max(0.0),
        (_, None) => (before.start + USUAL * minutes).min(EXPECTED),
    };
    // Nobody is offered a number for meat that the cook so far rules out.
    let likely = if place == Place::Pit { high } else { high.min(middle + LIKELY).min(BOILING) };
    let meant = slips(given)
        .into_iter()
        .filter(|(_, meant)| (low..=likely).contains(&in_celsius(*meant)))
        .min_by(|a, b| (in_celsius(a.1) - middle).abs().total_cmp(&(in_celsius(b.1) - middle).abs()));
    if let Some((slip, meant)) = meant {
        return Err((slip, Some(meant)));
    }
    let possible = match place {
        Place::Pit => (20.0..=330.0).contains(&value),
        Place::Breast | Place::Thigh => (-30.0..=HOTTEST_SPOT).contains(&value),
    };
    if possible { Ok(Seen { minutes, celsius: value, moved: true }) } else { Err((Slip::Impossible, None)) }
}

fn spot_bounds(minutes: f64, before: &Before) -> (f64, f64) {
    match before.last {
        Some(last) => {
            let gone = (minutes - last.minutes).max(0.0);
            (last.celsius - FALL, (last.celsius + SCATTER + FASTEST * gone).min(HOTTEST_SPOT))
        }
        None => (before.start - 8.0, (before.start + 18.0 + FASTEST * minutes).min(HOTTEST_SPOT)),
    }
}

/// A pit may sink to the kitchen's warmth with a dead fire, but a reading far under the setting that fits it in the other unit is asked about.
fn pit_bounds(before: &Before) -> (f64, f64) {
    let sinking = before.cooling || before.last.is_some_and(|last| last.celsius < before.setting - 50.0);
    (if sinking { 20.0 } else { before.setting - 75.0 }, before.setting + 110.0)
}

fn slips(given: Temperature) -> [(Slip, Temperature); 6] {
    let f = in_fahrenheit(given);
    [
        (Slip::WasCelsius, celsius(f)),
        (Slip::WasFahrenheit, fahrenheit(in_celsius(given))),
        (Slip::Digit, fahrenheit(f + 100.0)),
        (Slip::Digit, fahrenheit(f + 200.0)),
        (Slip::Digit, fahrenheit(f - 100.0)),
        (Slip::Digit, fahrenheit(f / 10.0)),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What a first thigh reading was probably meant as, in whole °C.
    fn meant(minutes: f64, given: Temperature) -> Option<(Slip, f64)> {
        let before = Before { last: None, start: 4.0, setting: 165.0, cooling: false };
        let (slip, meant) = sift(Place::Thigh, minutes, given, &before).err()?;
        Some((slip, in_celsius(meant?).round()))
    }

    #[test]
    fn a_first_reading_in_the_other_scale_is_taken_for_that_and_not_for_a_lost_digit() {
        // Two hours in, 172 and 158 typed where degrees are Celsius.
        assert_eq!(meant(120.0, celsius(172.0)), Some((Slip::WasFahrenheit, 78.0)));
        assert_eq!(meant(120.0, celsius(158.0)), Some((Slip::WasFahrenheit, 70.0)));
        // 14 for 114.
        assert_eq!(meant(120.0, fahrenheit(14.0)), Some((Slip::Digit, 46.0)));
    }

    #[test]
    fn a_cold_pit_over_a_cooling_bird_is_believed() {
        let last = Some(Seen { minutes: 60.0, celsius: 150.0, moved: false });
        let pit =
            |cooling| sift(Place::Pit, 90.0, fahrenheit(90.0), &Before { last, start: 4.0, setting: 150.0, cooling });
        assert!(pit(false).is_err(), "290 with a digit lost, perhaps");
        assert!(pit(true).is_ok());
    }

    #[test]
    fn an_ordinary_first_reading_is_taken_as_it_is() {
        for (minutes, given) in [(5.0, celsius(5.0)), (60.0, celsius(31.0)), (150.0, celsius(70.0))] {
            assert_eq!(meant(minutes, given), None);
        }
    }
}
