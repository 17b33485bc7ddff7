//! Days and times of day as people write them, and the moments they mean.
//!
//! Owns the calendar's feasts and the guesses behind `at 6`. Start at [`read_when`]. Policy for clock changes:
//! [`super::settle`].

use super::ground::Ground;
use super::sentence::Sentence;
use carvetime_core::plan::Moment;
use carvetime_core::quantity::Unit;
use chrono::{Datelike, NaiveDate, NaiveTime, TimeDelta, Weekday};

/// What was said about a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum When {
    /// Day and hour.
    Moment(Moment),
    /// The day only.
    Day(NaiveDate),
    /// The hour only.
    Hour(NaiveTime),
}

/// How an hour without am or pm is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lean {
    /// Of a meal: the afternoon.
    Meal,
    /// Of a bird that goes on: from five in the morning to four in the afternoon.
    Start,
    /// Of the shopping: the same.
    Shop,
    /// Of something that has just happened: the nearest hour behind us.
    Past,
}

/// A day as far as it is said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct DaySaid {
    day: NaiveDate,
    /// Said by weekday: if its hour is over, next week's is meant.
    weekly: bool,
}

/// An hour as far as it is said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct HourSaid {
    hour: u32,
    minute: u32,
    half: Half,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Half {
    Morning,
    Afternoon,
    Open,
    /// Written on the clock of 24 hours.
    Exact,
}

/// A piece of time found in a sentence: first and last item.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Spot<T> {
    what: T,
    from: usize,
    to: usize,
}

/// Reads day and hour from a sentence and marks what it used in `taken`.
pub fn read_when(sentence: &Sentence, taken: &mut [bool], ground: &Ground, lean: Lean) -> Option<When> {
    let clock = Clock { s: sentence, ground };
    let day = clock.best_day(taken, lean);
    if let Some(spot) = &day {
        take(taken, spot.from, spot.to);
    }
    let hour = clock.best_hour(taken, day.as_ref());
    // The day of the shopping, and the same day said twice ("Christmas Eve, the 24th"), are no numbers left over.
    for other in (0..sentence.len()).filter_map(|at| clock.day_at(at)) {
        let free = (other.from..=other.to).all(|at| free(taken, at));
        let of_hour = hour.as_ref().is_some_and(|hour| other.from <= hour.to && hour.from <= other.to);
        if day.is_some() && free && !of_hour {
            take(taken, other.from, other.to);
        }
    }
    if let Some(spot) = &hour {
        take(taken, spot.from, spot.to);
    }
    let part = clock.loose_half(taken);
    let hour = hour.map(|spot| {
        let half = if spot.what.half == Half::Open { part.unwrap_or(Half::Open) } else { spot.what.half };
        HourSaid { half, ..spot.what }
    });
    match (day, hour) {
        (Some(day), Some(hour)) => Some(When::Moment(clock.moment(day.what, hour, lean))),
        (Some(day), None) => Some(When::Day(day.what.day)),
        (None, Some(hour)) => Some(When::Hour(clock.time(hour, lean))),
        (None, None) => None,
    }
}

/// The moment next to now at which the clock shows `hour`: today if it is still to come, else tomorrow.
pub fn next_at(ground: &Ground, hour: NaiveTime) -> Moment {
    let today = ground.moment(ground.today(), hour);
    if today > ground.now { today } else { ground.moment(later(ground.today(), 1), hour) }
}

/// The last moment up to now at which the clock showed `hour`.
pub fn last_at(ground: &Ground, hour: NaiveTime) -> Moment {
    let today = ground.moment(ground.today(), hour);
    // A clock in another hand may be a few minutes ahead.
    if today <= ground.now + TimeDelta::minutes(10) { today } else { ground.moment(later(ground.today(), -1), hour) }
}

/// An amount read as a time of day: `17h`, `17h30`, `17.30`.
pub(super) fn hour_of_amount(sentence: &Sentence, at: usize) -> Option<(u32, u32)> {
    if let Some((hour, minute)) = sentence.raw(at).split_once('.').filter(|(_, minute)| minute.len() == 2) {
        let (hour, minute): (u32, u32) = (hour.parse().ok()?, minute.parse().ok()?);
        return (hour <= 24 && minute < 60 && sentence.number(at).is_some()).then_some((hour, minute));
    }
    let amount = sentence.amount(at).filter(|amount| amount.unit() == Some(Unit::Hour))?;
    let minutes = u32::try_from(amount.span()?.num_minutes()).ok().filter(|minutes| *minutes < 24 * 60)?;
    Some((minutes / 60, minutes % 60))
}

pub(super) fn take(taken: &mut [bool], from: usize, to: usize) {
    for at in from..=to {
        if let Some(flag) = taken.get_mut(at) {
            *flag = true;
        }
    }
}

fn later(day: NaiveDate, days: i64) -> NaiveDate {
    TimeDelta::try_days(days).and_then(|days| day.checked_add_signed(days)).unwrap_or(day)
}

struct Clock<'a> {
    s: &'a Sentence,
    ground: &'a Ground,
}

impl Clock<'_> {
    fn best_day(&self, taken: &[bool], lean: Lean) -> Option<Spot<DaySaid>> {
        let days = (0..self.s.len()).filter(|at| free(taken, *at)).filter_map(|at| self.day_at(at));
        let days: Vec<_> =
            days.filter(|day| (lean == Lean::Shop || !self.is_for_the_shop(day)) && !self.is_since(day)).collect();
        // "It's Tuesday, dinner is on Thursday": the day told with the meal.
        let of_meal = |day: &&Spot<DaySaid>| self.clause(day).any(|at| self.s.of(at, "meal-").is_some());
        let best = *days.iter().find(of_meal).or(days.first())?;
        // "Christmas dinner on the 24th": a feast names the meal, the date its day.
        let dated = |day: &&Spot<DaySaid>| !self.is_feast(day) && self.belongs(day, &best);
        let date = days.iter().find(dated).filter(|_| self.is_feast(&best)).copied();
        Some(date.map_or(best, |date| self.beside_feast(date, &best)))
    }

    /// "Christmas Eve, the 24th": a day without its month is in the feast's.
    fn beside_feast(&self, date: Spot<DaySaid>, feast: &Spot<DaySaid>) -> Spot<DaySaid> {
        let words = ["month-", "weekday-", "day-"];
        let told = |at: usize| words.iter().any(|group| self.s.of(at, group).is_some_and(|name| name != "of-month"));
        let numbers = (date.from..=date.to).filter(|at| self.s.number(*at).is_some()).count();
        let bare = numbers == 1 && !(date.from..=date.to).any(told);
        let day = feast.what.day.with_day(date.what.day.day()).filter(|day| bare && *day >= self.ground.today());
        Spot { what: DaySaid { day: day.unwrap_or(date.what.day), ..date.what }, ..date }
    }

    /// Said by the name of a feast.
    fn is_feast(&self, day: &Spot<DaySaid>) -> bool {
        (day.from..=day.to).any(|at| self.s.of(at, "holiday-").is_some())
    }

    /// In the same clause, or at the beginning of the next: "Christmas dinner, the 24th at 8".
    fn belongs(&self, day: &Spot<DaySaid>, to: &Spot<DaySaid>) -> bool {
        let clause = self.clause(to);
        clause.contains(&day.to) || day.from == clause.end + 1
    }

    /// The places between the signs around a day; of four thousand dates in a row no more than a clause has.
    fn clause(&self, day: &Spot<DaySaid>) -> std::ops::Range<usize> {
        const LONGEST: usize = 80;
        let ends = |at: &usize| matches!(self.s.mark(*at), Some(',' | ';' | '.' | '!' | '\n'));
        let least = day.from.saturating_sub(LONGEST);
        let from = (least..day.from).rev().find(ends).map_or(least, |at| at + 1);
        // "am 23. kaufe ich sie": the dot is the number's.
        let number = self.s.number(day.to).is_some() && self.ground.lexicon.day_first();
        let dot = usize::from(number && self.s.mark(day.to + 1) == Some('.') && self.s.glued(day.to + 1));
        let most = self.s.len().min(day.to + LONGEST);
        from..(day.to + 1 + dot..most).find(ends).unwrap_or(most)
    }

    /// "In the fridge since Saturday".
    fn is_since(&self, day: &Spot<DaySaid>) -> bool {
        day.from.checked_sub(1).is_some_and(|before| self.s.is(before, "since"))
    }

    /// "I buy it tomorrow, dinner is on Sunday": tomorrow is no day of a meal.
    fn is_for_the_shop(&self, day: &Spot<DaySaid>) -> bool {
        let says = |group: &str| self.clause(day).any(|at| self.s.of(at, group).is_some());
        let shops = self.clause(day).any(|at| self.s.is(at, "shopping") || self.s.is(at, "to-buy"));
        shops && !says("meal-") && !says("holiday-")
    }

    /// The hour behind the word for the meal if there is one, else the first.
    fn best_hour(&self, taken: &[bool], day: Option<&Spot<DaySaid>>) -> Option<Spot<HourSaid>> {
        let mut found = Vec::new();
        let mut at = 0;
        while at < self.s.len() {
            // "25 nov. 19h", "jeudi, 20h": of what stands behind a sign only hours written as such.
            let sign = |at: usize| matches!(self.s.mark(at), Some('.' | ',' | '-'));
            let hours = self.s.amount(at).is_some_and(|amount| amount.unit() == Some(Unit::Hour));
            let beside_day = day.is_some_and(|day| at == day.to + 1 || hours && at == day.to + 2 && sign(day.to + 1));
            // Who writes 2027-11-25 writes the hours of the whole day.
            let written_out = beside_day && day.is_some_and(|day| self.s.mark(day.to.saturating_sub(1)) == Some('-'));
            match self
                .hour_at(at, beside_day, written_out)
                .filter(|spot| (spot.from..=spot.to).all(|at| free(taken, at)))
            {
                Some(spot) => {
                    at = spot.to + 1;
                    found.push(spot);
                }
                None => at += 1,
            }
        }
        let meal = |spot: &&Spot<HourSaid>| {
            (spot.from.saturating_sub(4)..spot.from).any(|at| self.s.of(at, "meal-").is_some())
        };
        // "Mittags um halb eins": an hour told by its number says more than the word for the time of day.
        let named = |spot: &Spot<HourSaid>| {
            let mut words = spot.from..=(spot.from + 1).min(spot.to);
            spot.what.minute == 0 && words.any(|at| self.s.is(at, "noon") || self.s.is(at, "midnight"))
        };
        let told: Vec<_> = found.iter().filter(|spot| !named(spot)).collect();
        let of_meal = told.iter().copied().find(|spot| meal(spot)).or_else(|| found.iter().find(meal));
        of_meal.or(told.first().copied()).or(found.first()).copied()
    }

    /// `in the evening` somewhere in the sentence.
    fn loose_half(&self, taken: &[bool]) -> Option<Half> {
        (0..self.s.len()).find_map(|at| {
            if self.s.is(at, "day-tonight") {
                return Some(Half::Afternoon);
            }
            if !free(taken, at) {
                return None;
            }
            match self.s.of(at, "part-")? {
                "morning" => Some(Half::Morning),
                _ => Some(Half::Afternoon),
            }
        })
    }

    fn day_at(&self, at: usize) -> Option<Spot<DaySaid>> {
        let start = if at > 0 && (self.s.is(at - 1, "on") || self.s.is(at - 1, "next")) { at - 1 } else { at };
        let spot = |day, to| Some(Spot { what: DaySaid { day, weekly: false }, from: start, to });
        let today = self.ground.today();
        if let Some(name) = self.s.of(at, "day-") {
            // In some languages one word is both "tomorrow" and "morning".
            return match name {
                "today" | "tonight" => spot(today, at),
                "tomorrow" => spot(later(today, 1), at),
                "after-tomorrow" => spot(later(today, 2), at),
                "yesterday" => spot(later(today, -1), at),
                _ => None,
            };
        }
        if let Some(weekday) = self.s.of(at, "weekday-").and_then(|name| name.parse::<Weekday>().ok()) {
            let ahead = weekday.days_since(today.weekday());
            let what = DaySaid { day: later(today, i64::from(ahead)), weekly: true };
            // A date beside the weekday says more.
            let beside = (at + 1..=at + 3).find_map(|next| self.date_at(next, start));
            let beside = beside.or_else(|| self.numbered(what.day, at, start));
            return beside.or(Some(Spot { what, from: start, to: at }));
        }
        let feast = |name: &str| {
            let year = today.year();
            [year, year + 1].into_iter().filter_map(|y| self.feast(name, y)).find(|day| *day >= today)
        };
        // "1. Feiertag", "2. Weihnachtstag", "2nd day of Christmas"
        let sign = usize::from(self.s.mark(at + 1) == Some('.') || self.s.is(at + 1, "ordinal"));
        if let Some(number) = self.s.whole(at, 1..=2).filter(|_| self.s.is(at + 1 + sign, "holiday-numbered-day")) {
            return spot(feast(if number == 1 { "christmas" } else { "boxing-day" })?, at + 1 + sign);
        }
        // "The day after Thanksgiving", "na véspera do Natal"
        let beside = if self.s.is(at, "feast-eve") { Some(-1) } else { self.s.is(at, "feast-after").then_some(1) };
        if let Some(days) = beside {
            let article = usize::from(self.s.is(at + 1, "on") || self.s.is(at + 1, "number-of"));
            let name = self.s.of(at + 1 + article, "holiday-")?;
            // The feast itself may be today, and the day after it still to come.
            let year = today.year();
            let mut days = (year - 1..=year + 1).filter_map(|y| Some(later(self.feast(name, y)?, days)));
            return spot(days.find(|day| *day >= today)?, at + 1 + article);
        }
        if let Some(name) = self.s.of(at, "holiday-") {
            return spot(feast(name)?, at);
        }
        if self.s.is(at, "in") {
            let days = self.s.amount_in(at + 1, Unit::Day).filter(|days| (0.0..=400.0).contains(days));
            if let Some(days) = days {
                return Some(Spot { from: at, ..spot(later(today, days as i64), at + 1)? });
            }
            let one = || self.s.is(at + 1, "number-article").then_some(1);
            let weeks = self.s.whole(at + 1, 1..=52).or_else(one).filter(|_| self.s.is(at + 2, "unit-week"))?;
            return Some(Spot { from: at, ..spot(later(today, 7 * i64::from(weeks)), at + 2)? });
        }
        self.date_at(at, start)
    }

    /// `2027-11-25`, `25 Nov`, `Nov 25th 2027`, `25/11`, `the 25th`.
    fn date_at(&self, at: usize, start: usize) -> Option<Spot<DaySaid>> {
        let s = self.s;
        if let Some(year) = s.whole(at, 1900..=2999).filter(|_| s.mark(at + 1) == Some('-') && s.glued(at + 1)) {
            let month = s.whole(at + 2, 1..=12)?;
            let day = s.whole(at + 4, 1..=31).filter(|_| s.mark(at + 3) == Some('-'))?;
            let day = NaiveDate::from_ymd_opt(year as i32, month, day)?;
            return Some(Spot { what: DaySaid { day, weekly: false }, from: start, to: at + 4 });
        }
        if let Some(found) = self.slashed(at, start).or_else(|| self.dotted(at, start)) {
            return Some(found);
        }
        if let Some(month) = s.of(at, "month-").and_then(|m| m.parse().ok()) {
            let day = s.whole(at + 1, 1..=31)?;
            if s.amount(at + 1).is_some_and(|amount| amount.unit().is_some()) || s.mark(at + 2) == Some(':') {
                return None;
            }
            let to = if s.is(at + 2, "ordinal") && s.glued(at + 2) { at + 2 } else { at + 1 };
            return self.dated(day, month, start, to);
        }
        // "primo gennaio", "1° gennaio"
        let first = s.is(at, "number-1") || s.amount_in(at, Unit::Degree) == Some(1.0);
        if let Some(month) = s.of(at + 1, "month-").filter(|_| first).and_then(|m| m.parse().ok()) {
            return self.dated(1, month, start, at + 1);
        }
        let day = s.whole(at, 1..=31)?;
        // `25th`, `25.`
        let dot = self.ground.lexicon.day_first() && s.mark(at + 1) == Some('.');
        let ordinal = (s.is(at + 1, "ordinal") || dot) && s.glued(at + 1);
        let mut next = at + 1 + usize::from(ordinal);
        if s.is(next, "on") || s.is(next, "number-of") {
            next += 1;
        }
        if let Some(month) = s.of(next, "month-").and_then(|m| m.parse().ok()) {
            return self.dated(day, month, start, next);
        }
        // "le 24 au soir"
        let named = at > 0 && self.s.is(at - 1, "day-of-month") && self.bare_day(at);
        if ordinal && !dot || named {
            let today = self.ground.today();
            let this = today.with_day(day).filter(|d| *d >= today);
            let next_month = || later(today.with_day(1)?, 32).with_day(day);
            let day = this.or_else(next_month)?;
            let to = if named { at } else { at + 1 };
            return Some(Spot { what: DaySaid { day, weekly: false }, from: start, to });
        }
        None
    }

    /// A number at `at` that may be the day of a month: it counts nothing and is no part of an hour.
    fn bare_day(&self, at: usize) -> bool {
        let s = self.s;
        let dot = s.mark(at + 1) == Some('.') && s.glued(at + 2) && s.number(at + 2).is_some();
        let clock = (dot || matches!(s.mark(at + 1), Some(':' | '/'))) && s.glued(at + 1);
        s.whole(at, 1..=31).is_some() && s.upper(at).is_none() && !clock && self.nothing_counted(at + 1)
    }

    /// `Thursday 25`, `jeudi 25 à 17 h`: the day of the month behind a weekday, where it is no hour.
    fn numbered(&self, next: NaiveDate, at: usize, start: usize) -> Option<Spot<DaySaid>> {
        let number = self.s.whole(at + 1, 1..=31).filter(|_| self.bare_day(at + 1))?;
        let day = (0..=5).map(|week| later(next, 7 * week)).find(|day| day.day() == number)?;
        let hour_told = || (at + 2..self.s.len()).any(|at| self.hour_at(at, false, false).is_some());
        let what = DaySaid { day, weekly: false };
        (number > 24 || hour_told()).then_some(Spot { what, from: start, to: at + 1 })
    }

    /// `25.11.`, `25.11.2027`, `am 25.11`: a dot that is no decimal sign, where the day comes first.
    fn dotted(&self, at: usize, start: usize) -> Option<Spot<DaySaid>> {
        let s = self.s;
        if !self.ground.lexicon.day_first() || s.amount(at).is_some_and(|amount| amount.unit().is_some()) {
            return None;
        }
        let mut parts = s.raw(at).split('.');
        let (day, month) = (parts.next()?.parse().ok()?, parts.next()?.parse().ok()?);
        let year = parts.next();
        let end = s.mark(at + 1) == Some('.') && s.glued(at + 1);
        // "de 6.5" is a weight, "am 25.11" a day.
        let led = start < at && s.raw(at).len() - s.raw(at).find('.').unwrap_or_default() == 3;
        if !(1..=31).contains(&day) || !(1..=12).contains(&month) || s.is(at + 1, "oclock") || parts.next().is_some() {
            return None;
        }
        match year {
            Some(year) => {
                let year: i32 = year.parse().ok()?;
                let day = NaiveDate::from_ymd_opt(if year < 100 { 2000 + year } else { year }, month, day)?;
                Some(Spot { what: DaySaid { day, weekly: false }, from: start, to: at })
            }
            None if end || led => self.dated(day, month, start, if end { at + 1 } else { at }),
            None => None,
        }
    }

    /// `25/11`, `11/25/2027`, in the order of the language unless only the other is a date.
    fn slashed(&self, at: usize, start: usize) -> Option<Spot<DaySaid>> {
        let s = self.s;
        // Halves and quarters are amounts; the scanner has taken `11/5` for a fraction.
        let (first, second, to) = match s.raw(at).split_once('/') {
            Some((a, b)) => (a.parse().ok()?, b.parse().ok()?, at),
            None => {
                let first = s.whole(at, 1..=31)?;
                if s.mark(at + 1) != Some('/') || !s.glued(at + 1) || !s.glued(at + 2) {
                    return None;
                }
                (first, s.whole(at + 2, 1..=31)?, at + 2)
            }
        };
        if first <= second && to == at {
            return None;
        }
        let (day, month) = match (first, second) {
            (1..=12, 1..=12) if self.ground.lexicon.day_first() => (first, second),
            (1..=12, 1..=12) => (second, first),
            (13..=31, 1..=12) => (first, second),
            (1..=12, 13..=31) => (second, first),
            _ => return None,
        };
        let third = (s.mark(to + 1) == Some('/') && s.glued(to + 1)).then(|| s.whole(to + 2, 0..=2999)).flatten();
        match third {
            Some(year) => {
                let year = if year < 100 { 2000 + year } else { year };
                let day = NaiveDate::from_ymd_opt(year as i32, month, day)?;
                Some(Spot { what: DaySaid { day, weekly: false }, from: start, to: to + 2 })
            }
            None if s.mark(to + 1) == Some('/') => None,
            None => self.dated(day, month, start, to),
        }
    }

    /// A day and month, with the year behind it if one stands there, else the next such date.
    fn dated(&self, day: u32, month: u32, from: usize, to: usize) -> Option<Spot<DaySaid>> {
        let s = self.s;
        let filler = usize::from(s.mark(to + 1) == Some(',') || s.is(to + 1, "on") || s.is(to + 1, "number-of"));
        let year = s.whole(to + 1 + filler, 2000..=2999).filter(|_| s.mark(to + 2 + filler) != Some('-'));
        if let Some(year) = year {
            let day = NaiveDate::from_ymd_opt(year as i32, month, day)?;
            return Some(Spot { what: DaySaid { day, weekly: false }, from, to: to + 1 + filler });
        }
        let today = self.ground.today();
        // 29 February may be years away.
        let day = (0..9).filter_map(|n| NaiveDate::from_ymd_opt(today.year() + n, month, day)).find(|d| *d >= today)?;
        Some(Spot { what: DaySaid { day, weekly: false }, from, to })
    }

    fn feast(&self, name: &str, year: i32) -> Option<NaiveDate> {
        match name {
            "thanksgiving" if in_canada(self.ground.zone) => {
                NaiveDate::from_weekday_of_month_opt(year, 10, Weekday::Mon, 2)
            }
            "thanksgiving" => NaiveDate::from_weekday_of_month_opt(year, 11, Weekday::Thu, 4),
            "christmas" => NaiveDate::from_ymd_opt(year, 12, 25),
            "boxing-day" => NaiveDate::from_ymd_opt(year, 12, 26),
            "christmas-eve" => NaiveDate::from_ymd_opt(year, 12, 24),
            "before-christmas-eve" => NaiveDate::from_ymd_opt(year, 12, 23),
            "new-year" => NaiveDate::from_ymd_opt(year, 1, 1),
            "new-year-eve" => NaiveDate::from_ymd_opt(year, 12, 31),
            "easter" => easter(year),
            "easter-monday" => easter(year).map(|sunday| later(sunday, 1)),
            "epiphany" => NaiveDate::from_ymd_opt(year, 1, 6),
            "martin" => NaiveDate::from_ymd_opt(year, 11, 11),
            _ => None,
        }
    }

    /// An hour at `at`. `beside_day` lets a bare number count, as in `Thursday 5`; `exact` rules out a missing pm.
    fn hour_at(&self, at: usize, beside_day: bool, exact: bool) -> Option<Spot<HourSaid>> {
        let s = self.s;
        let said = s.is(at, "at") || s.mark(at) == Some('@');
        let first = at + usize::from(said);
        let spot = |hour, minute, half, to| Some(Spot { what: HourSaid { hour, minute, half }, from: at, to });
        // Midnight ends a day: an hour 24.
        let whole_hour = if s.is(first, "noon") { Some(12) } else { s.is(first, "midnight").then_some(24) };
        if let Some(hour) = whole_hour {
            // "midi et demi", "mezzogiorno e un quarto"
            let (hour, minute, last) = self.beyond(hour, first + 1).unwrap_or((hour, 0, first));
            return spot(hour, minute, Half::Exact, last);
        }
        if let Some(found) = self.spoken_hour(at, first) {
            return Some(found);
        }
        // "For 4 hours" is no hour of the clock, "about 20 bucks" no evening.
        let loosely = s.is(at, "at-loosely");
        let spelled = loosely && s.amount(first).is_some_and(|amount| amount.unit() == Some(Unit::Hour));
        let (hour, mut minute, last, written) = self.digits_of_hour(first, said && !spelled, beside_day)?;
        let (half, mut last) = match s.of(last + 1, "part-") {
            Some("morning") => (Half::Morning, last + 1),
            Some(_) => (Half::Afternoon, last + 1),
            None if s.is(last + 1, "oclock") => (Half::Open, last + 1),
            None if hour > 12 || hour == 0 || written == Written::Padded || exact => (Half::Exact, last),
            None => (Half::Open, last),
        };
        let sure = said && written != Written::Decimal
            || half == Half::Morning
            || half == Half::Afternoon
            || last > first && s.is(last, "oclock")
            || matches!(written, Written::Clock | Written::Padded)
            || beside_day && written == Written::Bare && self.nothing_counted(last + 1)
            // "Nochebuena 22h horno": an oven behind it makes no temperature of hours.
            || beside_day && s.amount(first).is_some_and(|amount| amount.unit() == Some(Unit::Hour));
        // `17 Uhr 30`
        let minutes = last > first && s.is(last, "oclock") && minute == 0 && s.raw(last + 1).len() == 2;
        // "Essen Samstag 18 Uhr 10, Umluft": nobody lays a table for ten past, but many for ten.
        let likely = |more: &u32| said || more.is_multiple_of(15);
        let more = s.whole(last + 1, 1..=59).filter(|_| minutes && self.nothing_counted(last + 2)).filter(likely);
        if let Some(more) = more {
            (minute, last) = (more, last + 1);
        }
        let counted = said && half == Half::Open && written == Written::Bare && !self.nothing_counted(last + 1);
        let meal = || (0..s.len()).any(|at| s.of(at, "meal-").is_some());
        let open = matches!(half, Half::Open | Half::Exact);
        let vague = loosely && open && written == Written::Bare && !self.hour_may_end(last + 1) && !meal();
        if !sure || counted || vague { None } else { spot(hour, minute, half, last) }
    }

    /// Nothing that a bare number would count stands at `at`.
    fn nothing_counted(&self, at: usize) -> bool {
        !["people", "adults", "children", "unit-", "spot-", "bird-", "condition-"]
            .iter()
            .any(|group| self.s.meanings(at).iter().any(|m| m.starts_with(group)))
    }

    /// "Dinner at 530", "out since 430": three digits that no oven is meant by, a meal or a beginning being named.
    fn run_together(&self, at: usize) -> Option<(u32, u32)> {
        let s = self.s;
        let digits = s.whole(at, 100..=959).filter(|_| s.raw(at).len() == 3)?;
        let before = |back: usize| at.checked_sub(back);
        let near =
            |concept: &str| (1..=3).filter_map(before).any(|at| s.of(at, concept).is_some() || s.is(at, concept));
        let led = before(1).is_some_and(|at| s.is(at, "at") || s.is(at, "to") || s.is(at, "number-to"));
        let since = before(1).is_some_and(|at| s.is(at, "since"));
        let (hour, minute) = (digits / 100, digits % 100);
        (minute < 60 && minute % 5 == 0 && (since || led && near("meal-"))).then_some((hour, minute))
    }

    /// `17:00`, `5.30`, `17h30`, `1700`, `5`: hour, minute, last item, and how it was written.
    fn digits_of_hour(&self, at: usize, said: bool, beside_day: bool) -> Option<(u32, u32, usize, Written)> {
        let s = self.s;
        if let Some((hour, minute)) = self.run_together(at) {
            return Some((hour, minute, at, Written::Clock));
        }
        let raw = s.raw(at);
        if s.mark(at + 1) == Some(':') && s.glued(at + 1) && s.glued(at + 2) && s.raw(at + 2).len() == 2 {
            let hour = s.whole(at, 0..=24)?;
            let minute = s.whole(at + 2, 0..=59)?;
            let seconds = s.mark(at + 3) == Some(':') && s.glued(at + 3) && s.whole(at + 4, 0..=59).is_some();
            let last = if seconds { at + 4 } else { at + 2 };
            return Some((
                hour % 24,
                minute,
                last,
                if raw.len() == 2 && hour < 10 { Written::Padded } else { Written::Clock },
            ));
        }
        if let Some(amount) =
            s.amount(at).filter(|amount| amount.unit() == Some(Unit::Hour) && (said || raw.contains('h')))
        {
            // `17 h`, `17h30`: an hour only where it is said to be one, or too long to be a span beside a day.
            let minutes = amount.span()?.num_minutes();
            let (hour, minute) = (u32::try_from(minutes / 60).ok()?, u32::try_from(minutes % 60).ok()?);
            let beyond = Some(at + 1).filter(|_| minute == 0).and_then(|behind| self.beyond(hour, behind));
            // "sept heures moins le quart", "8 h du soir" are no spans, whatever stands before them.
            let said = said || beyond.is_some() && s.is(at + 1, "minus") || s.of(at + 1, "part-").is_some();
            let least = if beside_day { 10 * 60 } else { 13 * 60 };
            // "For half an hour" is no hour of any clock.
            if minutes < 60 && !raw.starts_with(|c: char| c.is_ascii_digit()) {
                return None;
            }
            if !said && (minutes < least || !beside_day && !raw.starts_with(|c: char| c.is_ascii_digit())) {
                return None;
            }
            let (hour, minute, last) = beyond.unwrap_or((hour, minute, at));
            let written = if last > at { Written::Clock } else { Written::Bare };
            return (hour <= 24).then_some((hour % 24, minute, last, written));
        }
        if let Some((hour, minute)) = raw.split_once('.').filter(|(_, m)| m.len() == 2) {
            let (hour, minute): (u32, u32) = (hour.parse().ok()?, minute.parse().ok()?);
            // "giovedì 17.30" is no amount of anything.
            let marked = s.of(at + 1, "part-").is_some()
                || s.is(at + 1, "oclock")
                || beside_day && self.nothing_counted(at + 1) && s.number(at + 1).is_none();
            let written = if marked || said { Written::Clock } else { Written::Decimal };
            return (hour <= 24 && minute < 60 && s.number(at).is_some()).then_some((hour % 24, minute, at, written));
        }
        if said && s.is(at, "number-1") && self.hour_may_end(at + 1) {
            // "all'una e mezza", "at one": one is an amount only beside a unit.
            let (hour, minute, last) = self.beyond(1, at + 1).unwrap_or((1, 0, at));
            return Some((hour, minute, last, if last > at { Written::Clock } else { Written::Bare }));
        }
        let value = s.number(at)?;
        if s.upper(at).is_some() || s.mark(at + 1) == Some('/') {
            return None;
        }
        if raw.len() == 4 && raw.bytes().all(|b| b.is_ascii_digit()) && said {
            let (hour, minute) = (value as u32 / 100, value as u32 % 100);
            return (hour < 24 && minute < 60).then_some((hour, minute, at, Written::Clock));
        }
        if !(0.0..=24.0).contains(&value) {
            return None;
        }
        let hour = value.trunc() as u32 % 24;
        let in_words = raw.contains(char::is_alphabetic);
        if value.fract() != 0.0 {
            // "las cinco y media"
            let minute = (value.fract() * 60.0).round() as u32;
            return (in_words && minute < 60).then_some((hour, minute, at, Written::Clock));
        }
        if said {
            // "at five thirty", "a las cinco y veinte", "a las seis menos cuarto"
            let joined = usize::from(s.is(at + 1, "number-and"));
            let minute = s.whole(at + 1 + joined, 10..=59).filter(|_| {
                s.item(at + 1 + joined).is_some_and(|item| matches!(item.what, super::sentence::What::Amount(..)))
                    && (joined == 1 || s.raw(at + 1).contains(char::is_alphabetic) && in_words)
                    && self.nothing_counted(at + 2 + joined)
            });
            if let Some(minute) = minute {
                return Some((hour, minute, at + 1 + joined, Written::Clock));
            }
            if let Some((hour, minute, last)) = self.beyond(hour, at + 1).filter(|_| s.is(at + 1, "minus")) {
                return Some((hour, minute, last, Written::Clock));
            }
        }
        Some((hour, 0, at, Written::Bare))
    }

    /// What stands at `at` can follow an hour: nothing, a sign, or what is said of hours and days.
    fn hour_may_end(&self, at: usize) -> bool {
        let s = self.s;
        let words = ["number-and", "minus", "oclock", "on", "for"].iter().any(|word| s.is(at, word));
        let groups = ["part-", "day-", "weekday-", "holiday-", "meal-"].iter().any(|group| s.of(at, group).is_some());
        at >= s.len() || s.mark(at).is_some() || words || groups
    }

    /// What stands behind a whole hour and makes it another minute: `17 h 30`, `midi et demi`, `six heures moins le quart`.
    fn beyond(&self, hour: u32, at: usize) -> Option<(u32, u32, usize)> {
        let s = self.s;
        let minus = s.is(at, "minus");
        let joined = minus || s.is(at, "number-and");
        let mut last = at + usize::from(joined);
        last += usize::from(joined && (s.is(last, "on") || s.is(last, "number-article")));
        let minutes = if joined && s.is(last, "number-quarter") {
            15
        } else if joined && !minus && s.is(last, "number-half") {
            30
        } else {
            let written = s.raw(last).len() == 2 || s.raw(last).contains(char::is_alphabetic);
            s.whole(last, 1..=59).filter(|_| (joined || written) && self.nothing_counted(last + 1))?
        };
        Some(if minus { ((hour + 23) % 24, 60 - minutes, last) } else { (hour, minutes, last) })
    }

    /// `half past five`, `quarter to six`, `ten past five`, `halb sechs`.
    fn spoken_hour(&self, from: usize, first: usize) -> Option<Spot<HourSaid>> {
        let s = self.s;
        let article = usize::from(s.is(first, "number-article"));
        let at = first + article;
        let minutes = if s.is(at, "number-half") {
            30
        } else if s.is(at, "number-quarter") {
            15
        } else {
            s.whole(at, 1..=29)?
        };
        // "halb sechs"
        let bare = minutes == 30 && article == 0 && s.is(at, "number-half") && self.ground.lexicon.half_before();
        // "half two", as the British say it: half past
        let short = minutes == 30 && article == 0 && !bare && s.whole(at + 1, 1..=12).is_some();
        if short && !(s.is(at.wrapping_sub(1), "at") && self.nothing_counted(at + 2)) {
            return None;
        }
        let before = s.is(at + 1, "to") || bare;
        if !before && !short && !s.is(at + 1, "past") {
            return None;
        }
        let hour_at = if bare || short { at + 1 } else { at + 2 };
        // "One" alone is more often an article than a number, and is read as a word.
        let hour = s.whole(hour_at, 1..=12).or_else(|| s.is(hour_at, "number-1").then_some(1))?;
        let (hour, minute) = if before { ((hour + 11) % 12, 60 - minutes) } else { (hour, minutes) };
        let (half, to) = match s.of(hour_at + 1, "part-") {
            Some("morning") => (Half::Morning, hour_at + 1),
            Some(_) => (Half::Afternoon, hour_at + 1),
            None => (Half::Open, hour_at),
        };
        Some(Spot { what: HourSaid { hour: if hour == 0 { 12 } else { hour }, minute, half }, from, to })
    }

    fn moment(&self, said: DaySaid, hour: HourSaid, lean: Lean) -> Moment {
        let time = self.time(hour, lean);
        // A meal at midnight of the 24th ends that day: nobody means the night before.
        let night = lean == Lean::Meal && hour.hour == 24;
        let said = DaySaid { day: if night { later(said.day, 1) } else { said.day }, ..said };
        let at = self.ground.moment(said.day, time);
        let over = at <= self.ground.now && lean != Lean::Past;
        if over && said.weekly {
            return self.ground.moment(later(said.day, 7), time);
        }
        at
    }

    fn time(&self, said: HourSaid, lean: Lean) -> NaiveTime {
        let hour = match (said.half, said.hour) {
            (Half::Exact, hour) | (Half::Afternoon | Half::Open, hour @ 12..) => hour,
            (Half::Morning, 12) => 0,
            (Half::Morning, hour) => hour,
            (Half::Afternoon, hour) => hour + 12,
            (Half::Open, hour) => match lean {
                Lean::Meal if hour >= 10 && self.s.has("meal-lunch") => hour,
                Lean::Meal => hour + 12,
                Lean::Start | Lean::Shop => hour + if hour < 5 { 12 } else { 0 },
                Lean::Past => self.behind_us(hour, said.minute),
            },
        };
        NaiveTime::from_hms_opt(hour % 24, said.minute, 0).unwrap_or(NaiveTime::MIN)
    }

    /// Of `2:05` and `14:05`, the one that was last.
    fn behind_us(&self, hour: u32, minute: u32) -> u32 {
        let candidates = [hour, hour + 12].map(|hour| {
            let time = NaiveTime::from_hms_opt(hour % 24, minute, 0).unwrap_or(NaiveTime::MIN);
            (last_at(self.ground, time), hour)
        });
        candidates.into_iter().max().map_or(hour, |(_, hour)| hour)
    }
}

/// How an hour was written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Written {
    /// `5`, `17`
    Bare,
    /// `17:00`
    Clock,
    /// `05:00`
    Padded,
    /// `5.30`, which may be a number.
    Decimal,
}

fn free(taken: &[bool], at: usize) -> bool {
    !taken.get(at).copied().unwrap_or(false)
}

/// Zones whose Thanksgiving is the second Monday of October.
pub(super) fn in_canada(zone: chrono_tz::Tz) -> bool {
    const ZONES: [&str; 14] = [
        "America/Toronto",
        "America/Vancouver",
        "America/Montreal",
        "America/Winnipeg",
        "America/Edmonton",
        "America/Regina",
        "America/Halifax",
        "America/St_Johns",
        "America/Moncton",
        "America/Whitehorse",
        "America/Yellowknife",
        "America/Iqaluit",
        "America/Glace_Bay",
        "America/Thunder_Bay",
    ];
    ZONES.contains(&zone.name()) || zone.name().starts_with("Canada/")
}

/// Western Easter Sunday, by the anonymous Gregorian algorithm.
pub fn easter(year: i32) -> Option<NaiveDate> {
    let (a, b, c) = (year % 19, year / 100, year % 100);
    let (d, e) = (b / 4, b % 4);
    let g = (8 * b + 13) / 25;
    let h = (19 * a + b - d - g + 15) % 30;
    let (i, k) = (c / 4, c % 4);
    let l = (32 + 2 * e + 2 * i - h - k) % 7;
    let m = (a + 11 * h + 19 * l) / 433;
    let month = (h + l - 7 * m + 90) / 25;
    let day = (h + l - 7 * m + 33 * month + 19) % 32;
    NaiveDate::from_ymd_opt(year, u32::try_from(month).ok()?, u32::try_from(day).ok()?)
}
