//! Time at a temperature that makes poultry safe: seven decades fewer Salmonella, by the published tables.
//!
//! The tables hold for the **coldest spot** of the meat, not for stuffing. Never read between rows in the unsafe
//! direction: the temperature goes down to its row, the fat to the slower of its two columns (the print dips here and
//! there), unknown fat to the slowest cell of the row, ducks and geese to the slower of turkey and chicken. The
//! authority's advice to a kitchen stays 165 °F; every [`Verdict`] carries it. Start at [`is_enough`].

pub mod table;

use crate::bird::Kind;
use crate::quantity::{Temperature, fahrenheit, in_fahrenheit};
use crate::source::{self, Source};
use chrono::TimeDelta;
use table::{CHICKEN, COLUMNS, FIRST_F, ROWS, TURKEY, Table};

/// Decades of Salmonella the tables stand for.
pub const LOG_TARGET: f64 = 7.0;
/// The authority's temperature for a kitchen, °F. Source: [`source::SAFE_MINIMUM`].
pub const KITCHEN_F: f64 = 165.0;
/// A longer gap between two readings says nothing about what went on in it.
pub const LONGEST_GAP: TimeDelta = TimeDelta::minutes(60);

/// How long the meat must stay at a temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hold {
    /// Below the table's first row, 136 °F: no time is enough.
    BelowTable,
    /// So long.
    For(TimeDelta),
    /// Reached is enough.
    Instant,
}

/// Answer of the table to a temperature held for a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Answer {
    /// By the table, at the coldest spot.
    Enough,
    /// So much longer.
    NotYet {
        /// What is missing.
        missing: TimeDelta,
    },
    /// No time is enough at that temperature.
    Never,
}

/// Whether a temperature held for a time is enough, and what the authority says anyway.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Verdict {
    /// By the table.
    pub answer: Answer,
    /// The time needed at that temperature.
    pub needed: Hold,
    /// The row read, °F; `None` below the table.
    pub row_f: Option<i32>,
    /// What the authority tells a kitchen: 165 °F.
    pub kitchen: Temperature,
    /// The table read.
    pub source: Source,
}

/// Why a curve can't be judged.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum CurveError {
    /// A reading is older than the one before it.
    #[error("reading at {later:?} stands after the one at {earlier:?}")]
    OutOfOrder {
        /// Time of the reading before.
        earlier: TimeDelta,
        /// Time of the reading that is out of order.
        later: TimeDelta,
    },
    /// A temperature is not a number.
    #[error("no temperature at {at:?}")]
    NoTemperature {
        /// When.
        at: TimeDelta,
    },
}

/// The time needed at `temperature` for seven decades. `fat` in percent, `None` when unknown.
pub fn hold_time(temperature: Temperature, kind: Kind, fat: Option<f64>) -> Hold {
    match row_at(temperature) {
        None => Hold::BelowTable,
        Some(row) => {
            let seconds = seconds_at(row, kind, fat);
            if seconds <= 0.0 {
                Hold::Instant
            } else {
                Hold::For(TimeDelta::milliseconds((seconds * 1e3).ceil() as i64))
            }
        }
    }
}

/// Whether the coldest spot, held at `temperature` for `held`, is safe by the table.
pub fn is_enough(temperature: Temperature, held: TimeDelta, kind: Kind, fat: Option<f64>) -> Verdict {
    let needed = hold_time(temperature, kind, fat);
    let answer = match needed {
        Hold::BelowTable => Answer::Never,
        Hold::Instant => Answer::Enough,
        Hold::For(time) if held >= time => Answer::Enough,
        Hold::For(time) => Answer::NotYet { missing: time - held.max(TimeDelta::zero()) },
    };
    Verdict {
        answer,
        needed,
        row_f: row_at(temperature).map(|row| FIRST_F + row as i32),
        kitchen: fahrenheit(KITCHEN_F),
        source: source_of(kind),
    }
}

/// Reduction of Salmonella at one spot along `readings` (time, temperature), in decades; 7.0 is the table's target.
///
/// Each stretch counts at the colder of its two ends, nothing below 136 °F, and nothing over a gap longer than
/// [`LONGEST_GAP`]. Where the table says "instantaneous" the stretch counts at the hottest row that has a time. So the
/// figure is a lower bound, and never falls as readings come in. A spot at 165 °F is safe by itself ([`is_enough`]).
///
/// # Errors
/// [`CurveError::OutOfOrder`] with both times, so that the cook can be asked which is right;
/// [`CurveError::NoTemperature`].
pub fn log_reduction(readings: &[(TimeDelta, Temperature)], kind: Kind, fat: Option<f64>) -> Result<f64, CurveError> {
    for (at, temperature) in readings {
        if !in_fahrenheit(*temperature).is_finite() {
            return Err(CurveError::NoTemperature { at: *at });
        }
    }
    let mut decades = 0.0;
    for pair in readings.windows(2) {
        let [(start, from), (end, to)] = pair else { continue };
        if end < start {
            return Err(CurveError::OutOfOrder { earlier: *start, later: *end });
        }
        let stretch = *end - *start;
        if stretch > LONGEST_GAP {
            continue;
        }
        let colder = if from < to { *from } else { *to };
        if let Some(row) = row_at(colder) {
            decades += LOG_TARGET * stretch.as_seconds_f64() / timed_seconds(row, kind, fat);
        }
    }
    Ok(decades)
}

/// Row at or below the temperature; `None` below the table, or when it is no number.
fn row_at(temperature: Temperature) -> Option<usize> {
    // 70 °C is 158 °F, whatever the last bit says.
    let f = (in_fahrenheit(temperature) + 1e-6).floor();
    (f >= f64::from(FIRST_F)).then(|| ((f - f64::from(FIRST_F)) as usize).min(ROWS - 1))
}

fn seconds_at(row: usize, kind: Kind, fat: Option<f64>) -> f64 {
    let (one, other) = tables(kind);
    cell(one, row, fat).max(cell(other, row, fat))
}

/// As [`seconds_at`], but from the hottest row at or below that has a time.
fn timed_seconds(row: usize, kind: Kind, fat: Option<f64>) -> f64 {
    (0..=row).rev().map(|row| seconds_at(row, kind, fat)).find(|&seconds| seconds > 0.0).unwrap_or(f64::INFINITY)
}

/// The slower of the two columns around the fat; the slowest of all when it is unknown or above the table.
fn cell(table: &Table, row: usize, fat: Option<f64>) -> f64 {
    let Some(cells) = table.get(row) else { return f64::INFINITY };
    let slowest = |cells: &[f64]| cells.iter().copied().fold(0.0, f64::max);
    match fat {
        Some(fat) if (0.0..=COLUMNS as f64).contains(&fat) => {
            let first = (fat.floor().max(1.0) as usize) - 1;
            let last = (fat.ceil().max(1.0) as usize) - 1;
            cells.get(first..=last).map_or_else(|| slowest(cells), slowest)
        }
        _ => slowest(cells),
    }
}

fn tables(kind: Kind) -> (&'static Table, &'static Table) {
    match kind {
        Kind::Turkey | Kind::TurkeyBreast => (&TURKEY, &TURKEY),
        Kind::Chicken | Kind::Capon => (&CHICKEN, &CHICKEN),
        Kind::Duck | Kind::Goose => (&TURKEY, &CHICKEN),
    }
}

fn source_of(kind: Kind) -> Source {
    match kind {
        Kind::Turkey | Kind::TurkeyBreast => source::LETHALITY_TURKEY,
        Kind::Chicken | Kind::Capon => source::LETHALITY_CHICKEN,
        Kind::Duck | Kind::Goose => source::LETHALITY_RULES,
    }
}
