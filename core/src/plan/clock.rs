//! Wall-clock preferences: the local hour as an instant, and hours at which people are up.
//!
//! Owns what a clock change does to a wish like "about 18:30". Hard windows never go through here: those are elapsed
//! time and live in the network.

use super::Moment;
use chrono::{DateTime, LocalResult, NaiveDate, NaiveDateTime, NaiveTime, TimeDelta, TimeZone, Timelike, Utc};
use chrono_tz::Tz;

/// First full hour at which a job may be called without waking anyone. Common practice, no source.
pub const DAY_STARTS: u32 = 8;
/// Hour at which those who cook get up on the day. Common practice, no source.
const EARLIEST_RISERS: u32 = 6;
/// Hour from which people want to be left in peace. Common practice, no source.
pub const DAY_ENDS: u32 = 22;

/// The instant of a local time. A time skipped by a clock change gives the first instant after the gap, one that
/// comes twice the earlier of the two.
pub fn instant(zone: Tz, local: NaiveDateTime) -> Moment {
    const QUARTER: i64 = 15 * 60;
    // The longest gap on record is the day left out at the date line; clocks change on quarter hours.
    const LONGEST: i64 = 26 * 3600 / QUARTER;
    match zone.from_local_datetime(&local) {
        LocalResult::Single(at) | LocalResult::Ambiguous(at, _) => return at.with_timezone(&Utc),
        LocalResult::None => {}
    }
    let quarter = local.and_utc().timestamp().div_euclid(QUARTER) + 1;
    (quarter..=quarter + LONGEST)
        .filter_map(|quarter| DateTime::from_timestamp(quarter * QUARTER, 0))
        .find_map(|local| zone.from_local_datetime(&local.naive_utc()).earliest())
        .map_or_else(|| local.and_utc(), |at| at.with_timezone(&Utc))
}

/// `hour:minute` on a local date.
pub fn at_hour(zone: Tz, date: NaiveDate, hour: u32, minute: u32) -> Moment {
    let time = NaiveTime::from_hms_opt(hour, minute, 0).unwrap_or(NaiveTime::MIN);
    instant(zone, date.and_time(time))
}

/// The local date of an instant.
pub fn date(zone: Tz, at: Moment) -> NaiveDate {
    at.with_timezone(&zone).date_naive()
}

/// Whether most people are up.
pub fn is_sociable(zone: Tz, at: Moment) -> bool {
    let local = at.with_timezone(&zone).time();
    (DAY_STARTS..DAY_ENDS).contains(&local.hour()) || (local.hour() == DAY_ENDS && local.minute() == 0)
}

/// Whether most people are asleep: later than they like to be up, and before anyone gets up for a bird.
pub fn is_night(zone: Tz, at: Moment) -> bool {
    let hour = at.with_timezone(&zone).time().hour();
    !is_sociable(zone, at) && !(EARLIEST_RISERS..DAY_STARTS).contains(&hour)
}

/// `wanted`, or the nearest time within `earliest..=latest` at which people are up; the nearest at all if there is none.
pub fn sociable(zone: Tz, wanted: Moment, earliest: Moment, latest: Moment) -> Moment {
    let wanted = wanted.min(latest).max(earliest);
    if is_sociable(zone, wanted) {
        return wanted;
    }
    let today = date(zone, wanted);
    [today.pred_opt(), Some(today), today.succ_opt()]
        .into_iter()
        .flatten()
        .flat_map(|day| [at_hour(zone, day, DAY_STARTS, 0), at_hour(zone, day, DAY_ENDS, 0)])
        .filter(|at| (earliest..=latest).contains(at))
        .min_by_key(|at| (*at - wanted).abs())
        .unwrap_or(wanted)
}

/// The latest `hour:minute` on any day within `earliest..=latest`.
pub fn last_hour_within(zone: Tz, hour: u32, minute: u32, earliest: Moment, latest: Moment) -> Option<Moment> {
    let mut day = date(zone, latest);
    // A window of a plan is at most some days wide; beyond that the hour is the same anyway.
    for _ in 0..8 {
        let at = at_hour(zone, day, hour, minute);
        if at < earliest {
            return None;
        }
        if at <= latest {
            return Some(at);
        }
        day = day.pred_opt()?;
    }
    None
}

/// Down to a multiple of `step`.
pub fn floor(at: Moment, step: TimeDelta) -> Moment {
    let seconds = step.num_seconds().max(1);
    at - TimeDelta::seconds(at.timestamp().rem_euclid(seconds))
        - TimeDelta::nanoseconds(i64::from(at.timestamp_subsec_nanos()))
}

/// Up to a multiple of `step`.
pub fn ceil(at: Moment, step: TimeDelta) -> Moment {
    let down = floor(at, step);
    if down == at { at } else { down + step }
}
