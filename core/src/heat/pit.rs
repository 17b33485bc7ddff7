//! The air of the cooker: what the pit's thermometer said, and what it is likely to say from now on.
//!
//! Owns the pit's past and future as a curve. Knows nothing of the bird. Start at [`Air::of`]. °C, minutes.

use super::posterior::{STEP, Seen};
use super::prior::{AHEAD, PIT};
use super::small::Vector;

/// A setting is not kept: birds, doors and fires hold the air this much below it on average. Derived from the synthetic logs.
const BELOW_SETTING: f64 = 5.5;
/// Minutes over which past readings of the pit lose their say on its future.
const MEMORY: f64 = 45.0;
/// Minutes of readings that weigh as much as the setting does.
const SETTING_WORTH: f64 = 30.0;
/// A fire that has sunk this far and goes on sinking is dying.
const SUNK: f64 = 22.0;
/// Standard deviation of the future mean of a pit that is kept, and of one that is dying.
const STEADY: f64 = 6.0;
const DYING: f64 = 20.0;
/// Share of what a dying fire has sunk that it wins back on average: most are fed in time. Derived from the synthetic logs.
const FED: f64 = 0.5;

/// Air at the bird, a value a [`STEP`].
#[derive(Debug, Clone)]
pub struct Air {
    /// °C by the pit's thermometer; the last value holds for ever.
    pub pit: Vec<f64>,
    /// First point of the future.
    pub ahead: usize,
    /// Standard deviation of the future's mean, °C.
    pub doubt: f64,
    /// The last reading where the fire seems to be dying.
    pub dying: Option<f64>,
}

impl Air {
    /// Past by the readings, straight between them; where there are none, as the cooker was set. Future at the level that
    /// the setting and what was read since it was last changed suggest.
    pub fn of(readings: &[Seen], dial: &Dial, now: f64) -> Self {
        let ahead = (now / STEP) as usize + 1;
        let mut pit = Vec::with_capacity(ahead + 1);
        let mut next = 0;
        for i in 0..ahead {
            let minutes = i as f64 * STEP;
            while next < readings.len() && readings[next].minutes < minutes {
                next += 1;
            }
            // Across a change of the dial a reading tells nothing.
            let before = next.checked_sub(1).and_then(|k| readings.get(k));
            let before = before.filter(|a| !dial.turned(|at| a.minutes < at && at <= minutes));
            let after = readings.get(next).filter(|b| !dial.turned(|at| minutes < at && at < b.minutes));
            pit.push(match (before, after) {
                (Some(a), Some(b)) => {
                    let part = (minutes - a.minutes) / (b.minutes - a.minutes).max(1e-9);
                    a.celsius + part * (b.celsius - a.celsius)
                }
                (Some(one), None) | (None, Some(one)) => one.celsius,
                (None, None) => dial.at(minutes),
            });
        }
        let setting = dial.now;
        let readings =
            readings.get(readings.partition_point(|seen| seen.minutes < dial.changed())..).unwrap_or_default();
        let dying = dying(readings, setting, now);
        pit.push(
            dying.map_or_else(|| level(readings, setting, now), |fire| fire.last + FED * (fire.usual - fire.last)),
        );
        Self { pit, ahead, doubt: if dying.is_some() { DYING } else { STEADY }, dying: dying.map(|fire| fire.last) }
    }

    /// °C at the bird at a point, for these shifts of the pit and of its future.
    pub fn at(&self, point: usize, pit: f64, ahead: f64) -> f64 {
        let at = self.pit[point.min(self.pit.len() - 1)] + pit;
        if point >= self.ahead { at + ahead } else { at }
    }

    /// The same at any minute of the past, for these unknowns.
    pub fn at_minute(&self, minutes: f64, unknowns: &Vector) -> f64 {
        let place = (minutes / STEP).max(0.0);
        let (below, part) = (place as usize, place.fract());
        let at = |point| self.at(point, unknowns[PIT], unknowns[AHEAD]);
        at(below) + part * (at(below + 1) - at(below))
    }
}

/// What the cooker is set to, and was before.
#[derive(Debug, Clone, PartialEq)]
pub struct Dial {
    /// °C from the last change on.
    pub now: f64,
    /// Minutes until which it was set to so many °C, in order of time.
    pub was: Vec<(f64, f64)>,
}

impl Dial {
    /// Minutes at which it was changed last; before all time where it never was.
    fn changed(&self) -> f64 {
        self.was.last().map_or(f64::NEG_INFINITY, |(until, _)| *until)
    }

    /// Whether it was changed at such a minute.
    fn turned(&self, when: impl Fn(f64) -> bool) -> bool {
        self.was.iter().any(|(until, _)| when(*until))
    }

    fn at(&self, minutes: f64) -> f64 {
        self.was.iter().find(|(until, _)| minutes < *until).map_or(self.now, |(_, celsius)| *celsius)
    }
}

fn level(readings: &[Seen], setting: f64, now: f64) -> f64 {
    if readings.is_empty() {
        return setting;
    }
    let (mut sum, mut weight, mut before) = (SETTING_WORTH * (setting - BELOW_SETTING), SETTING_WORTH, None);
    for reading in readings {
        let gap = before.map_or(5.0, |b: f64| reading.minutes - b);
        before = Some(reading.minutes);
        let worth = gap.min(30.0) * (-(now - reading.minutes) / MEMORY).exp();
        sum += worth * reading.celsius;
        weight += worth;
    }
    sum / weight
}

/// A fire that goes down: what it gives now and what it gave before, °C.
#[derive(Debug, Clone, Copy)]
struct Sunk {
    last: f64,
    usual: f64,
}

/// The fire as it was and is, if the pit has been far under its level for a quarter of an hour and is still not rising. An opened door recovers sooner.
fn dying(readings: &[Seen], setting: f64, now: f64) -> Option<Sunk> {
    const LASTING: f64 = 15.0;
    let last = readings.last().filter(|r| now - r.minutes <= 45.0)?;
    let recent: Vec<&Seen> = readings.iter().filter(|r| r.minutes >= last.minutes - 2.0 * LASTING).collect();
    let earlier: Vec<f64> =
        readings.iter().filter(|r| r.minutes < last.minutes - 2.0 * LASTING).map(|r| r.celsius).collect();
    let usual =
        if earlier.is_empty() { setting - BELOW_SETTING } else { earlier.iter().sum::<f64>() / earlier.len() as f64 };
    // A pit that ran hotter than it is set was turned down, or is running away: at its setting no fire is dying.
    let usual = usual.min(setting);
    let low = |r: &&&Seen| r.celsius < usual - SUNK;
    let sunk_since = recent.iter().rev().take_while(low).last()?;
    let lowest = recent.iter().map(|r| r.celsius).fold(last.celsius, f64::min);
    let falling = last.celsius <= sunk_since.celsius + 3.0 && last.celsius < lowest + 8.0;
    (last.minutes - sunk_since.minutes >= LASTING && falling).then_some(Sunk { last: last.celsius, usual })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn last_of(pit_f: &[(f64, f64)], setting_f: f64) -> Option<f64> {
        let celsius = |f: f64| (f - 32.0) / 1.8;
        let seen: Vec<Seen> =
            pit_f.iter().map(|(minutes, f)| Seen { minutes: *minutes, celsius: celsius(*f), moved: false }).collect();
        let dial = Dial { now: celsius(setting_f), was: Vec::new() };
        Air::of(&seen, &dial, seen.last()?.minutes).dying.map(|c| (c * 1.8 + 32.0).round())
    }

    #[test]
    fn an_oven_that_ran_too_hot_and_was_turned_down_is_not_dying() {
        assert_eq!(last_of(&[(50.0, 390.0), (80.0, 395.0), (140.0, 325.0), (165.0, 325.0)], 325.0), None);
        let swinging = [(50.0, 390.0), (80.0, 395.0), (140.0, 329.0), (165.0, 318.0), (190.0, 312.0)];
        assert_eq!(last_of(&swinging, 325.0), None);
        // Once it is far under what it is set to, it is, however hot it was before.
        let sinking = [(50.0, 390.0), (80.0, 395.0), (140.0, 290.0), (160.0, 270.0), (180.0, 262.0)];
        assert_eq!(last_of(&sinking, 325.0), Some(262.0));
    }

    #[test]
    fn a_reading_before_the_heat_failed_tells_nothing_of_the_time_without_it() {
        // Read at 30 and at 90 minutes, off from 45 to 75.
        let seen = [
            Seen { minutes: 30.0, celsius: 165.0, moved: false },
            Seen { minutes: 90.0, celsius: 150.0, moved: false },
        ];
        let dial = Dial { now: 160.0, was: vec![(45.0, 160.0), (75.0, 21.0)] };
        let place = |minutes: f64| (minutes / STEP) as usize;
        for readings in [&seen[..1], &seen[..]] {
            let air = Air::of(readings, &dial, 100.0);
            let at = |minutes: f64| air.at(place(minutes), 0.0, 0.0);
            assert_eq!((at(20.0), at(40.0), at(60.0)), (165.0, 165.0, 21.0));
            assert_eq!(at(80.0), if readings.len() == 1 { 160.0 } else { 150.0 });
        }
    }
}
