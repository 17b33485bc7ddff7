//! Numbers, times, days and lists the way one locale writes them: Unicode's locale data, cached a locale.
//!
//! Loading a formatter takes longer than a whole turn, so each is made once and kept.

use super::html::ordinary_spaces;
use chrono::{Datelike, NaiveDate, NaiveDateTime, NaiveTime, Timelike};
use fixed_decimal::{Decimal, FloatPrecision};
use icu::calendar::{Date, Iso};
use icu::datetime::fieldsets::{E, MDE, T, YMDE};
use icu::datetime::{DateTimeFormatter, NoCalendarFormatter};
use icu::decimal::DecimalFormatter;
use icu::list::ListFormatter;
use icu::list::options::ListFormatterOptions;
use icu::locale::Locale;
use icu::time::Time;

/// The formatters of one locale. Each may be missing if the data has no such locale: then the plain international form
/// (`2027-11-25`, `17:00`, `14.5`) is written.
pub(super) struct Formats {
    numbers: Numbers,
    clock: Option<NoCalendarFormatter<T>>,
    weekday: Option<DateTimeFormatter<E>>,
    short_day: Option<DateTimeFormatter<MDE>>,
    day: Option<DateTimeFormatter<MDE>>,
    day_of_year: Option<DateTimeFormatter<YMDE>>,
    list: Option<ListFormatter>,
}

impl Formats {
    /// Loads the formatters for a tag that has been checked (`en-GB`).
    pub(super) fn new(tag: &str) -> Self {
        let locale: Locale = tag.parse().unwrap_or(Locale::UNKNOWN);
        let list = ListFormatterOptions::default();
        Self {
            numbers: Numbers::new(&locale),
            clock: NoCalendarFormatter::try_new((&locale).into(), T::hm()).ok(),
            weekday: DateTimeFormatter::try_new((&locale).into(), E::short()).ok(),
            short_day: DateTimeFormatter::try_new((&locale).into(), MDE::medium()).ok(),
            day: DateTimeFormatter::try_new((&locale).into(), MDE::long()).ok(),
            day_of_year: DateTimeFormatter::try_new((&locale).into(), YMDE::long()).ok(),
            list: ListFormatter::try_new_and((&locale).into(), list).ok(),
        }
    }

    /// A number, with as many decimals as it has. Not a number: a dash.
    pub(super) fn number(&self, value: f64) -> String {
        self.numbers.write(value)
    }

    /// A time of day: `5:00 PM`.
    pub(super) fn clock(&self, at: NaiveTime) -> String {
        let time = u8::try_from(at.hour())
            .ok()
            .zip(u8::try_from(at.minute()).ok())
            .and_then(|(hour, minute)| Time::try_new(hour, minute, 0, 0).ok());
        match self.clock.as_ref().zip(time) {
            Some((format, time)) => as_written(&ordinary_spaces(&format.format(&time).to_string())).to_owned(),
            None => at.format("%H:%M").to_string(),
        }
    }

    /// A short day of the week: `Thu`.
    pub(super) fn weekday(&self, day: NaiveDate) -> String {
        match self.weekday.as_ref().zip(iso(day)) {
            Some((format, date)) => ordinary_spaces(&format.format(&date).to_string()).into_owned(),
            None => day.to_string(),
        }
    }

    /// A short day with its date: `Thu, Nov 25`.
    pub(super) fn short_day(&self, day: NaiveDate) -> String {
        match self.short_day.as_ref().zip(iso(day)) {
            Some((format, date)) => ordinary_spaces(&format.format(&date).to_string()).into_owned(),
            None => day.to_string(),
        }
    }

    /// A day in full, with the year where it is not this one: `Thursday, November 25`.
    pub(super) fn day(&self, day: NaiveDate, with_year: bool) -> String {
        let text = match (iso(day), with_year) {
            (Some(date), true) => self.day_of_year.as_ref().map(|format| format.format(&date).to_string()),
            (Some(date), false) => self.day.as_ref().map(|format| format.format(&date).to_string()),
            (None, _) => None,
        };
        text.map_or_else(|| day.to_string(), |text| ordinary_spaces(&text).into_owned())
    }

    /// `a, b and c`.
    pub(super) fn list(&self, items: &[String]) -> String {
        match &self.list {
            Some(format) => format.format_to_string(items.iter()),
            None => items.join(", "),
        }
    }
}

/// How a locale writes numbers.
pub(super) struct Numbers(Option<DecimalFormatter>);

impl Numbers {
    pub(super) fn new(locale: &Locale) -> Self {
        Self(DecimalFormatter::try_new(locale.into(), Default::default()).ok())
    }

    pub(super) fn write(&self, value: f64) -> String {
        let Ok(decimal) = Decimal::try_from_f64(value, FloatPrecision::RoundTrip) else { return "–".to_owned() };
        match &self.0 {
            Some(format) => ordinary_spaces(&format.format_to_string(&decimal)).into_owned(),
            None => decimal.to_string(),
        }
    }
}

/// Some locales' data pad for columns what stands in a sentence: "04:35 p.m." and "09 h 30" are written without the nought.
/// "17 h 00" keeps its own: "depuis 17 h" would be a span of time.
fn as_written(clock: &str) -> &str {
    if !clock.contains(char::is_alphabetic) {
        return clock;
    }
    clock.strip_prefix('0').filter(|rest| rest.starts_with(|c: char| c.is_ascii_digit())).unwrap_or(clock)
}

fn iso(day: NaiveDate) -> Option<Date<Iso>> {
    Date::try_new_iso(day.year(), u8::try_from(day.month()).ok()?, u8::try_from(day.day()).ok()?).ok()
}

/// Whole days between two local times, by the calendar.
pub(super) fn days_apart(a: NaiveDateTime, b: NaiveDateTime) -> i64 {
    (a.date() - b.date()).num_days().abs()
}
