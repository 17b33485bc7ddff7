//! A thermometer's log as CSV: columns found by name and unit, times as minutes or times of day.
//!
//! Owns the format (the contract's, and what thermometers write). Whether a reading is plausible is for the forecast to say. Start
//! at [`read_csv`].

use crate::words::{Arg, Text};
use carvetime_core::heat::Reading;
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius};
use chrono::{NaiveTime, TimeDelta};

/// Why a log can't be read: where and what.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CsvProblem {
    /// Line of the file, from 1.
    pub line: usize,
    /// What is wrong there.
    pub fault: CsvFault,
}

/// What is wrong with a line.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CsvFault {
    /// Nothing is in it.
    Empty,
    /// No column holds the time.
    NoTime,
    /// No column holds a temperature with its unit.
    NoSpot,
    /// The same column twice.
    Twice(String),
    /// A cell that should be a number.
    NoNumber(String),
    /// A cell that should be a time.
    NoClock(String),
    /// An earlier time than on the line before.
    Earlier(String),
    /// More lines than any cook has.
    TooLong,
}

/// Lines taken at most: a reading a second for a day.
const LONGEST: usize = 86_400;

/// Columns looked at: no thermometer writes more, and a file of nothing but commas has a million.
const WIDEST: usize = 64;

/// As many readings as a log is thinned to: a forecast gains nothing from more.
pub const MOST: usize = 240;

impl CsvProblem {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        let line = Arg::Count(i64::try_from(self.line).unwrap_or(i64::MAX));
        let given = |id: &'static str, cell: &str| Text::new(id).with("given", Arg::Verbatim(shown(cell)));
        match &self.fault {
            CsvFault::Empty => Text::new("forecast-csv-empty"),
            CsvFault::NoTime => Text::new("forecast-csv-no-time"),
            CsvFault::NoSpot => Text::new("forecast-csv-no-spot"),
            CsvFault::Twice(name) => given("forecast-csv-twice", name),
            CsvFault::NoNumber(cell) => given("forecast-csv-no-number", cell),
            CsvFault::NoClock(cell) => given("forecast-csv-no-clock", cell),
            CsvFault::Earlier(cell) => given("forecast-csv-earlier", cell),
            CsvFault::TooLong => Text::new("forecast-csv-too-long"),
        }
        .with("line", line)
    }
}

/// The start of a cell, without what no screen can show.
fn shown(cell: &str) -> String {
    cell.chars().filter(|c| !c.is_control()).take(40).collect()
}

/// The text of a file: UTF-8, or UTF-16 where its mark stands first, as some spreadsheets write it. Bytes that are neither
/// show as marks and are refused where they stand.
pub fn decode(bytes: &[u8]) -> String {
    let units = |of: fn([u8; 2]) -> u16| -> Vec<u16> {
        bytes.chunks_exact(2).skip(1).filter_map(|pair| Some(of(pair.try_into().ok()?))).collect()
    };
    match bytes {
        [0xff, 0xfe, ..] => String::from_utf16_lossy(&units(u16::from_le_bytes)),
        [0xfe, 0xff, ..] => String::from_utf16_lossy(&units(u16::from_be_bytes)),
        _ => String::from_utf8_lossy(bytes).into_owned(),
    }
}

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Column {
    Minutes,
    Clock,
    Spot(Spot, bool),
    Other,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Spot {
    Pit,
    Breast,
    Thigh,
}

/// A log as read.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// Its readings, in order; times since the bird met the heat, or since the first line where they are times of day.
    pub readings: Vec<Reading>,
    /// The time of day of the first line, where times of day stand in it.
    pub first: Option<NaiveTime>,
}

impl Table {
    /// Evenly less of a long log, its last line kept.
    pub fn thinned(&self) -> impl Iterator<Item = &Reading> {
        let step = self.readings.len().div_ceil(MOST).max(1);
        let last = self.readings.len().saturating_sub(1);
        self.readings
            .iter()
            .enumerate()
            .filter(move |(place, _)| (last - place).is_multiple_of(step))
            .map(|(_, reading)| reading)
    }

    /// The log thinned, in the same form whatever it came in: what is kept while someone is asked about it.
    pub fn to_text(&self) -> String {
        let mut text = String::from(if self.first.is_some() { "time" } else { "minutes" });
        text.push_str(",pit_c,breast_c,thigh_c\n");
        for reading in self.thinned() {
            match self.first {
                Some(first) => text.push_str(&(first + reading.at).format("%H:%M:%S").to_string()),
                None => text.push_str(&(reading.at.num_milliseconds() as f64 / 60_000.0).to_string()),
            }
            for spot in [reading.pit, reading.breast, reading.thigh] {
                text.push(',');
                text.push_str(&spot.map(|spot| format!("{:.2}", in_celsius(spot))).unwrap_or_default());
            }
            text.push('\n');
        }
        text
    }
}

/// Reads a log. Minutes count from the bird meeting the heat; with times of day the first line does.
///
/// # Errors
/// [`CsvProblem`] with the line.
pub fn read_csv(text: &str) -> Result<Vec<Reading>, CsvProblem> {
    read_table(text).map(|table| table.readings)
}

/// As [`read_csv`], with the time of day at which it begins.
///
/// # Errors
/// [`CsvProblem`] with the line.
pub fn read_table(text: &str) -> Result<Table, CsvProblem> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut lines = text.lines().enumerate().filter(|(_, l)| !l.trim().is_empty());
    let Some((first, header)) = lines.next() else { return Err(CsvProblem { line: 1, fault: CsvFault::Empty }) };
    let separator = [';', '\t'].into_iter().find(|s| header.contains(*s)).unwrap_or(',');
    let columns = columns(header, separator).map_err(|fault| CsvProblem { line: first + 1, fault })?;
    let mut readings: Vec<Reading> = Vec::new();
    let mut clock = Clock::default();
    for (index, line) in lines {
        let fail = |fault| CsvProblem { line: index + 1, fault };
        if readings.len() >= LONGEST {
            return Err(fail(CsvFault::TooLong));
        }
        let mut reading = Reading { at: TimeDelta::zero(), pit: None, breast: None, thigh: None, sure: false };
        let cells: Vec<&str> = line.split(separator).take(WIDEST).map(|c| c.trim().trim_matches('"').trim()).collect();
        for (column, cell) in columns.iter().zip(cells.iter().copied().chain(std::iter::repeat(""))) {
            match column {
                Column::Minutes => {
                    let minutes = number(cell, separator).filter(|m| (0.0..=2880.0).contains(m));
                    let minutes = minutes.ok_or_else(|| fail(CsvFault::NoNumber(cell.to_owned())))?;
                    reading.at = TimeDelta::milliseconds((minutes * 60_000.0).round() as i64);
                }
                Column::Clock => {
                    reading.at = clock.since_first(cell).ok_or_else(|| fail(CsvFault::NoClock(cell.to_owned())))?
                }
                Column::Spot(spot, fahrenheit) if !cell.is_empty() => {
                    let value = number(cell, separator).ok_or_else(|| fail(CsvFault::NoNumber(cell.to_owned())))?;
                    *spot.of(&mut reading) = Some(temperature(value, *fahrenheit));
                }
                Column::Spot(..) | Column::Other => {}
            }
        }
        if readings.last().is_some_and(|last| reading.at < last.at) {
            let time =
                columns.iter().position(|c| matches!(c, Column::Minutes | Column::Clock)).and_then(|i| cells.get(i));
            return Err(fail(CsvFault::Earlier(time.copied().unwrap_or_default().to_owned())));
        }
        readings.push(reading);
    }
    if readings.is_empty() {
        return Err(CsvProblem { line: first + 1, fault: CsvFault::Empty });
    }
    let seconds = clock.first.and_then(|seconds| u32::try_from(seconds).ok());
    let first = seconds.and_then(|seconds| NaiveTime::from_num_seconds_from_midnight_opt(seconds, 0));
    Ok(Table { readings, first })
}

impl Spot {
    fn of(self, reading: &mut Reading) -> &mut Option<Temperature> {
        match self {
            Self::Pit => &mut reading.pit,
            Self::Breast => &mut reading.breast,
            Self::Thigh => &mut reading.thigh,
        }
    }
}

fn columns(header: &str, separator: char) -> Result<Vec<Column>, CsvFault> {
    let mut columns = Vec::new();
    for name in header.split(separator).take(WIDEST) {
        let name = name.trim().trim_matches('"').trim().to_lowercase();
        let column = column(&name);
        let twin = |c: &Column| match (c, &column) {
            (Column::Spot(a, _), Column::Spot(b, _)) => a == b,
            (Column::Minutes | Column::Clock, Column::Minutes | Column::Clock) => true,
            _ => false,
        };
        if columns.iter().any(twin) {
            return Err(CsvFault::Twice(name));
        }
        columns.push(column);
    }
    if !columns.iter().any(|c| matches!(c, Column::Minutes | Column::Clock)) {
        return Err(CsvFault::NoTime);
    }
    if !columns.iter().any(|c| matches!(c, Column::Spot(..))) {
        return Err(CsvFault::NoSpot);
    }
    Ok(columns)
}

/// `breast_f`, `Thigh (°C)`, `pit`: the place and its unit; without a unit Fahrenheit, as in the contract's first form.
fn column(name: &str) -> Column {
    let words: Vec<&str> = name.split(|c: char| !c.is_alphanumeric()).filter(|w| !w.is_empty()).collect();
    let is = |list: &[&str]| words.iter().any(|w| list.contains(w));
    if is(&["minutes", "minute", "min"]) {
        return Column::Minutes;
    }
    if is(&["time", "clock", "hora"]) {
        return Column::Clock;
    }
    let in_f = !is(&["c", "celsius"]);
    if is(&["pit", "oven", "smoker", "air", "horno"]) {
        Column::Spot(Spot::Pit, in_f)
    } else if is(&["breast", "pechuga"]) {
        Column::Spot(Spot::Breast, in_f)
    } else if is(&["thigh", "muslo"]) {
        Column::Spot(Spot::Thigh, in_f)
    } else {
        Column::Other
    }
}

fn number(cell: &str, separator: char) -> Option<f64> {
    let cell = if separator == ',' { cell.to_owned() } else { cell.replace(',', ".") };
    cell.parse().ok().filter(|v: &f64| v.is_finite())
}

fn temperature(value: f64, in_f: bool) -> Temperature {
    if in_f { fahrenheit(value) } else { celsius(value) }
}

/// Times of day, which may pass midnight once or twice.
#[derive(Default)]
struct Clock {
    first: Option<i64>,
    before: i64,
}

impl Clock {
    fn since_first(&mut self, cell: &str) -> Option<TimeDelta> {
        const DAY: i64 = 86_400;
        let time = cell.rsplit([' ', 'T']).next()?;
        let mut parts = time.split(':').map(|p| p.parse::<i64>().ok().filter(|v| (0..60).contains(v)));
        let (hour, minute, second) = (parts.next()??, parts.next()??, parts.next().unwrap_or(Some(0))?);
        if hour > 23 || parts.next().is_some() {
            return None;
        }
        let mut seconds = hour * 3600 + minute * 60 + second;
        let first = *self.first.get_or_insert(seconds);
        // Half a day back is midnight passed; less is a line out of order, left for the caller to see.
        while seconds + DAY / 2 < self.before {
            seconds += DAY;
        }
        self.before = seconds;
        Some(TimeDelta::seconds(seconds - first))
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]
    use super::*;
    use carvetime_core::quantity::in_fahrenheit;

    /// Seconds, then pit, breast and thigh in °F.
    type Row = (i64, Option<f64>, Option<f64>, Option<f64>);

    fn check(text: &str, expected: Result<&[Row], (usize, CsvFault)>) {
        let got = read_csv(text).map_err(|p| (p.line, p.fault));
        let f = |t: Option<Temperature>| t.map(|t| (in_fahrenheit(t) * 10.0).round() / 10.0);
        let got = got.map(|rows| {
            rows.iter().map(|r| (r.at.num_seconds(), f(r.pit), f(r.breast), f(r.thigh))).collect::<Vec<_>>()
        });
        assert_eq!(got, expected.map(<[_]>::to_vec), "{text:?}");
    }

    #[test]
    fn columns_are_found_by_name_and_unit() {
        check(
            "minutes,pit_f,breast_f,thigh_f\n0,325,40,\n1.5,,41,42\n",
            Ok(&[(0, Some(325.0), Some(40.0), None), (90, None, Some(41.0), Some(42.0))]),
        );
        check("thigh_c,minutes,note,breast_c\r\n60,10,turned,50\r\n", Ok(&[(600, None, Some(122.0), Some(140.0))]));
        check(
            "\u{feff}Time;Breast (°C)\n23:50;4,5\n00:10;5,0\n",
            Ok(&[(0, None, Some(40.1), None), (1200, None, Some(41.0), None)]),
        );
    }

    #[test]
    fn a_file_is_read_in_either_encoding() {
        let text = "minutes,breast_c\n5,4.5\n";
        let (mut little, mut big) = (vec![0xff, 0xfe], vec![0xfe, 0xff]);
        little.extend(text.encode_utf16().flat_map(u16::to_le_bytes));
        big.extend(text.encode_utf16().flat_map(u16::to_be_bytes));
        for bytes in [text.as_bytes(), &little, &big] {
            assert_eq!(decode(bytes), text);
        }
        // Without its mark, or cut in two, it is refused where it stands.
        check(&decode(&little[2..]), Err((1, CsvFault::NoTime)));
        little.pop();
        assert_eq!(decode(&little), text[..text.len() - 1]);
    }

    #[test]
    fn a_log_written_down_reads_back_thinned() {
        let long: String = (0..5000)
            .map(|n| format!("{}:{:02}:{:02},{},\n", 22 + n / 3600, n / 60 % 60, n % 60, 40 + n / 100))
            .collect();
        for (header, body) in
            [("minutes,breast_f,thigh_f\n", "0,40,\n2.5,41,42\n".to_owned()), ("time,breast_f,thigh_f\n", long)]
        {
            let table = read_table(&format!("{header}{body}")).unwrap();
            let text = table.to_text();
            let again = read_table(&text).unwrap();
            assert!(again.readings.len() <= MOST && text.len() < 10_000, "{}", text.len());
            let last = |table: &Table| *table.readings.last().unwrap();
            let (was, is) = (last(&table), last(&again));
            let shift = table.readings.len() as i64; // thinned from its end: the first kept line is a little later
            assert!((was.at - is.at).num_seconds().abs() <= shift, "{was:?} {is:?}");
            assert!((in_fahrenheit(was.breast.unwrap()) - in_fahrenheit(is.breast.unwrap())).abs() < 0.02);
        }
    }

    #[test]
    fn what_no_thermometer_writes_is_refused_and_costs_little() {
        check("minutes,breast_f\n\u{0},40\n", Err((2, CsvFault::NoNumber("\u{0}".into()))));
        assert!(!format!("{:?}", read_csv("minutes,breast_f\n\u{0}\u{7}x,40").unwrap_err().text()).contains("\\0"));
        let commas = ",".repeat(2 << 20);
        check(&commas, Err((1, CsvFault::NoTime)));
        check(&format!("minutes,breast_f{commas}\n1,40{commas}\n"), Ok(&[(60, None, Some(40.0), None)]));
        check(&"[".repeat(2 << 20), Err((1, CsvFault::NoTime)));
        let rows = format!("minutes,breast_f\n{}", "1,40\n".repeat(1_000_000));
        check(&rows, Err((86_402, CsvFault::TooLong)));
    }

    #[test]
    fn a_line_that_cannot_be_read_is_named() {
        check("", Err((1, CsvFault::Empty)));
        check("minutes,breast_f\n", Err((1, CsvFault::Empty)));
        check("when,breast_f\n1,2\n", Err((1, CsvFault::NoTime)));
        check("minutes,note\n1,2\n", Err((1, CsvFault::NoSpot)));
        check("minutes,breast_f,breast_c\n1,2,3\n", Err((1, CsvFault::Twice("breast_c".into()))));
        check("minutes,breast_f\n\n1,cold\n", Err((3, CsvFault::NoNumber("cold".into()))));
        check("minutes,breast_f\nNaN,40\n", Err((2, CsvFault::NoNumber("NaN".into()))));
        check("minutes,breast_f\n5,40\n4,41\n", Err((3, CsvFault::Earlier("4".into()))));
        check("time,breast_f\n25:00,40\n", Err((2, CsvFault::NoClock("25:00".into()))));
    }
}
