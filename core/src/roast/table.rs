//! The published roasting timetables, cell by cell.
//!
//! Pounds and hours as printed. Tested against the tables in `tests/tables`.

use crate::bird::Kind;
use crate::range::Range;
use crate::source::{self, Source};

/// One line: a bracket of weights and its range of hours.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Pounds.
    pub pounds: Range<f64>,
    /// Hours.
    pub hours: Range<f64>,
}

/// A timetable at one oven setting.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Table {
    /// Oven, °F.
    pub oven_f: f64,
    /// Lines by weight, in order.
    pub rows: &'static [Row],
    /// Where it is printed.
    pub source: Source,
}

const fn row(low_lb: f64, high_lb: f64, low_h: f64, high_h: f64) -> Row {
    Row { pounds: Range::new(low_lb, high_lb), hours: Range::new(low_h, high_h) }
}

/// Whole turkey, thawed, not stuffed.
pub const TURKEY: Table = Table {
    oven_f: 325.0,
    rows: &[
        row(8.0, 12.0, 2.75, 3.0),
        row(12.0, 14.0, 3.0, 3.75),
        row(14.0, 18.0, 3.75, 4.25),
        row(18.0, 20.0, 4.25, 4.5),
        row(20.0, 24.0, 4.5, 5.0),
    ],
    source: source::TURKEY_TIMETABLE,
};

/// Whole turkey, thawed, stuffed.
pub const TURKEY_STUFFED: Table = Table {
    oven_f: 325.0,
    rows: &[
        row(8.0, 12.0, 3.0, 3.5),
        row(12.0, 14.0, 3.5, 4.0),
        row(14.0, 18.0, 4.0, 4.25),
        row(18.0, 20.0, 4.25, 4.75),
        row(20.0, 24.0, 4.75, 5.25),
    ],
    source: source::TURKEY_TIMETABLE,
};

/// Whole turkey from frozen, not stuffed. Seen only in a copy.
pub const TURKEY_FROZEN: Table = Table {
    oven_f: 325.0,
    rows: &[
        row(8.0, 12.0, 4.0, 4.5),
        row(12.0, 14.0, 4.5, 5.75),
        row(14.0, 18.0, 5.75, 6.25),
        row(18.0, 20.0, 6.25, 6.75),
        row(20.0, 24.0, 6.75, 7.5),
    ],
    source: source::FROZEN_TIMETABLE,
};

/// Turkey breast, bone in, not stuffed.
pub const BREAST: Table = Table {
    oven_f: 325.0,
    rows: &[row(4.0, 6.0, 1.5, 2.25), row(6.0, 8.0, 2.25, 3.25)],
    source: source::TURKEY_TIMETABLE,
};

/// Turkey breast, stuffed.
pub const BREAST_STUFFED: Table =
    Table { oven_f: 325.0, rows: &[row(6.0, 8.0, 2.5, 3.5)], source: source::TURKEY_TIMETABLE };

/// Whole chicken. Nothing is printed between 4 and 5 lb.
pub const CHICKEN: Table = Table {
    oven_f: 350.0,
    rows: &[row(3.0, 4.0, 1.25, 1.5), row(5.0, 7.0, 2.0, 2.25)],
    source: source::POULTRY_TIMETABLE,
};

/// Whole capon.
pub const CAPON: Table = Table { oven_f: 350.0, rows: &[row(4.0, 8.0, 2.0, 3.0)], source: source::POULTRY_TIMETABLE };

/// Whole duck: printed as minutes a pound.
pub const DUCK_MINUTES_A_POUND: Range<f64> = Range::new(30.0, 35.0);

/// Whole duck, the minutes a pound at the ends of the printed bracket.
pub const DUCK: Table = Table {
    oven_f: 350.0,
    rows: &[row(4.0, 6.0, 4.0 * 30.0 / 60.0, 6.0 * 35.0 / 60.0)],
    source: source::POULTRY_TIMETABLE,
};

/// Whole young goose.
pub const GOOSE: Table = Table { oven_f: 325.0, rows: &[row(8.0, 12.0, 2.5, 3.0)], source: source::POULTRY_TIMETABLE };

/// Legs or thighs of a duck at 325 °F, hours.
pub const DUCK_LEGS: Range<f64> = Range::new(1.25, 1.5);

/// A young goose in pieces at 325 °F, hours.
pub const GOOSE_PIECES: Range<f64> = Range::new(2.0, 2.0);

/// Time goes with mass to this power outside the printed weights. Source: [`source::MASS_LAW`].
pub const MASS_POWER: f64 = 2.0 / 3.0;

/// Table of a whole, thawed bird; `None` for a stuffed one where none is printed.
pub fn thawed(kind: Kind, stuffed: bool) -> Option<Table> {
    match (kind, stuffed) {
        (Kind::Turkey, false) => Some(TURKEY),
        (Kind::Turkey, true) => Some(TURKEY_STUFFED),
        (Kind::TurkeyBreast, false) => Some(BREAST),
        (Kind::TurkeyBreast, true) => Some(BREAST_STUFFED),
        (Kind::Chicken, false) => Some(CHICKEN),
        (Kind::Capon, false) => Some(CAPON),
        (Kind::Duck, false) => Some(DUCK),
        (Kind::Goose, false) => Some(GOOSE),
        (_, true) => None,
    }
}

impl Table {
    /// Whether the weight lies between the least and the most printed.
    pub fn holds(&self, lb: f64) -> bool {
        self.below_or_above(lb) <= 1e-9
    }

    /// How far outside the printed weights, as a logarithm; 0 inside.
    pub fn below_or_above(&self, lb: f64) -> f64 {
        let (Some(first), Some(last)) = (self.rows.first(), self.rows.last()) else { return 0.0 };
        (lb / last.pounds.high).ln().max((first.pounds.low / lb).ln()).max(0.0)
    }

    /// Hours at that weight: read along the straight lines between the printed corners (least hours at the least weight
    /// of a line, most at the most: neighbouring lines meet there), and by the mass law beyond the ends.
    pub fn hours(&self, lb: f64) -> f64 {
        let (Some(first), Some(last)) = (self.rows.first(), self.rows.last()) else { return 0.0 };
        if lb < first.pounds.low {
            return first.hours.low * (lb / first.pounds.low).powf(MASS_POWER);
        }
        if lb > last.pounds.high {
            return last.hours.high * (lb / last.pounds.high).powf(MASS_POWER);
        }
        let corners = self.rows.iter().flat_map(|r| [(r.pounds.low, r.hours.low), (r.pounds.high, r.hours.high)]);
        let mut before = (first.pounds.low, first.hours.low);
        for corner in corners {
            if lb <= corner.0 {
                let run = corner.0 - before.0;
                let part = if run > 0.0 { (lb - before.0) / run } else { 1.0 };
                return before.1 + part * (corner.1 - before.1);
            }
            before = corner;
        }
        before.1
    }

    /// The printed range at that weight, over both lines where two meet; beyond the printed weights just [`Table::hours`].
    pub fn printed(&self, lb: f64) -> Range<f64> {
        let hours = self.hours(lb);
        self.rows_at(lb).fold(Range::exactly(hours), |range, row| {
            Range::new(range.low.min(row.hours.low), range.high.max(row.hours.high))
        })
    }

    fn rows_at(&self, lb: f64) -> impl Iterator<Item = &Row> {
        // 12 lb made from kilograms is still 12 lb.
        self.rows.iter().filter(move |row| row.pounds.low - 1e-9 <= lb && lb <= row.pounds.high + 1e-9)
    }
}
