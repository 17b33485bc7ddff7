//! What a reader stands on: language, scale, present, zone; and how a local time becomes a moment.

use super::lexicon::Lexicon;
use carvetime_core::plan::Moment;
use chrono::{DateTime, LocalResult, NaiveDate, NaiveDateTime, NaiveTime, TimeDelta, TimeZone, Utc};
use chrono_tz::Tz;

/// The circumstances of a text.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ground {
    /// Words of the person's language. English ones are understood besides.
    pub lexicon: &'static Lexicon,
    /// Whether a number without a unit is metric (kilograms, °C) where it could be either.
    pub metric: bool,
    /// Zone of the kitchen.
    pub zone: Tz,
    /// The present.
    pub now: Moment,
}

impl Ground {
    /// The ground for a language tag.
    pub fn new(tag: &str, metric: bool, zone: Tz, now: Moment) -> Self {
        let lexicon = Lexicon::of(tag);
        // A Pfund is 500 g, a livre too; where people weigh in pounds, and in French in Canada, it is a pound.
        let pounds = !metric || lexicon.language() == "fr" && super::when::in_canada(zone);
        let lexicon = Lexicon::in_pounds(lexicon.language()).filter(|_| pounds).unwrap_or(lexicon);
        Self { lexicon, metric, zone, now }
    }

    /// The kitchen's date.
    pub fn today(&self) -> NaiveDate {
        self.now.with_timezone(&self.zone).date_naive()
    }

    /// The kitchen's date and time.
    pub fn local_now(&self) -> NaiveDateTime {
        self.now.with_timezone(&self.zone).naive_local()
    }

    /// The moment of a local day and hour, by [`settle`].
    pub fn moment(&self, day: NaiveDate, hour: NaiveTime) -> Moment {
        settle(self.zone, day.and_time(hour))
    }
}

/// The moment of a local time. Policy "as before the change": where the clock jumps over the time it is read with the
/// offset from before (2:30 becomes 3:30), where the time comes twice the first is meant.
pub fn settle(zone: Tz, local: NaiveDateTime) -> Moment {
    match zone.from_local_datetime(&local) {
        LocalResult::Single(at) | LocalResult::Ambiguous(at, _) => at.with_timezone(&Utc),
        LocalResult::None => before_the_gap(zone, local),
    }
}

fn before_the_gap(zone: Tz, local: NaiveDateTime) -> Moment {
    // No zone has ever jumped by more than a day.
    let earlier = local.checked_sub_signed(TimeDelta::days(1)).unwrap_or(local);
    match zone.from_local_datetime(&earlier).earliest() {
        Some(at) => at.with_timezone(&Utc) + TimeDelta::days(1),
        None => DateTime::from_naive_utc_and_offset(local, Utc),
    }
}
