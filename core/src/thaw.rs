//! How long a frozen bird thaws, in the fridge and in cold water, and how long it keeps then. Never on the counter.
//!
//! Owns the published thawing table. Knows nothing of the calendar (`plan`). Start at [`fridge`] and [`cold_water`].

use crate::bird::{Bird, Condition, Kind};
use crate::quantity::in_pounds;
use crate::range::Range;
use crate::source::{self, Source};
use chrono::TimeDelta;

/// One line of the thawing table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Pounds, from (not included but for the first line) and to.
    pub pounds: Range<f64>,
    /// In the fridge.
    pub fridge: Range<TimeDelta>,
    /// In cold water.
    pub water: Range<TimeDelta>,
}

const fn row(low_lb: f64, high_lb: f64, fridge_days: (i64, i64), water_hours: (i64, i64)) -> Row {
    Row {
        pounds: Range::new(low_lb, high_lb),
        fridge: Range::new(TimeDelta::days(fridge_days.0), TimeDelta::days(fridge_days.1)),
        water: Range::new(TimeDelta::hours(water_hours.0), TimeDelta::hours(water_hours.1)),
    }
}

/// Turkey, current edition. Source: [`source::TURKEY_THAWING`].
pub const TURKEY: [Row; 4] = [
    row(4.0, 12.0, (1, 3), (2, 6)),
    row(12.0, 16.0, (3, 4), (6, 8)),
    row(16.0, 20.0, (4, 5), (8, 10)),
    row(20.0, 24.0, (5, 6), (10, 12)),
];

/// Change the water so often. Source: [`source::BIG_THAW`].
pub const WATER_CHANGE_EVERY: TimeDelta = TimeDelta::minutes(30);
/// Running or changed water is no warmer than this (°F). Source: [`source::FOOD_CODE`], 3-501.13(B).
pub const WATER_MAX_F: f64 = 70.0;
/// Thawed in the fridge it keeps so long before it is cooked. Source: [`source::TURKEY_THAWING`].
pub const KEEPS_AFTER_FRIDGE: Range<TimeDelta> = Range::new(TimeDelta::days(1), TimeDelta::days(2));
/// Thawed in cold water it is cooked at once. Source: [`source::TURKEY_THAWING`].
pub const KEEPS_AFTER_WATER: TimeDelta = TimeDelta::zero();
/// Cooked from frozen it takes at least so many times as long. Source: [`source::BIG_THAW`].
pub const FROM_FROZEN_FACTOR: f64 = 1.5;
/// Part of the whole thawing time that a part-thawed bird still needs. Common practice, no source.
pub const PART_THAWED_SHARE: Range<f64> = Range::new(0.25, 0.75);

/// What a thawing time rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Basis {
    /// The published table holds this kind and weight.
    Published,
    /// The published rate, for a weight or kind the table leaves out.
    SameRate,
    /// A share of it for a bird already part-thawed: common practice.
    Share,
}

/// How long it thaws.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thaw {
    /// From the soonest to the time to plan with.
    pub time: Range<TimeDelta>,
    /// What the table prints for this weight.
    pub printed: Option<Range<TimeDelta>>,
    /// What it rests on.
    pub basis: Basis,
    /// Where the rate comes from.
    pub source: Source,
}

/// Thawing in cold water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaterThaw {
    /// How long.
    pub thaw: Thaw,
    /// How often the water is changed.
    pub change_every: TimeDelta,
    /// Number of changes on the way (none at the end).
    pub changes: Range<u16>,
}

/// Thawing in the fridge at 40 °F or below; `None` when nothing is frozen.
///
/// Turkey: the table's line; its first line, 4 to 12 lb in 1 to 3 days, is split by its own rate of 24 h for each 4 to
/// 5 lb, never under a day. Duck: two days as printed. Other birds and weights: the same rate; a chicken one to two days.
pub fn fridge(bird: &Bird) -> Option<Thaw> {
    finish(bird, fridge_frozen(bird.kind, in_pounds(bird.mass.get())))
}

/// Thawing in cold water changed every 30 minutes; `None` when nothing is frozen.
///
/// 30 min a pound, up to an hour more, never beyond the printed line. A chicken or duck of 3 to 4 lb: 2 to 3 h as
/// printed; other weights and kinds by the same rate.
pub fn cold_water(bird: &Bird) -> Option<WaterThaw> {
    let thaw = finish(bird, water_frozen(bird.kind, in_pounds(bird.mass.get())))?;
    let changes = Range::new(changes_in(thaw.time.low), changes_in(thaw.time.high));
    Some(WaterThaw { thaw, change_every: WATER_CHANGE_EVERY, changes })
}

fn fridge_frozen(kind: Kind, lb: f64) -> Thaw {
    let by_rate = Range::new(days((lb / 5.0).max(1.0)), days((lb / 4.0).max(1.0)));
    match (kind, turkey_row(lb)) {
        (Kind::Turkey, Some(row)) => {
            let split = row.pounds.low < TURKEY[1].pounds.low;
            let time = if split { Range::new(by_rate.low, by_rate.high) } else { row.fridge };
            Thaw { time, printed: Some(row.fridge), basis: Basis::Published, source: source::TURKEY_THAWING }
        }
        (Kind::Turkey, None) => {
            // Above the table the low end goes on from its last line, so that a heavier bird is never quicker.
            let low = if lb > 24.0 { days(5.0 + (lb - 24.0) / 5.0) } else { by_rate.low };
            same_rate(Range::new(low, by_rate.high), source::TURKEY_THAWING)
        }
        (Kind::Duck, _) => {
            let two = Range::exactly(TimeDelta::days(2));
            let time = Range::new(two.low.max(by_rate.low), two.high.max(by_rate.high));
            let basis = if time == two { Basis::Published } else { Basis::SameRate };
            Thaw { time, printed: Some(two), basis, source: source::DUCK_THAWING }
        }
        (Kind::Chicken | Kind::Capon, _) => {
            same_rate(Range::new(by_rate.low, by_rate.high.max(TimeDelta::days(2))), source::THAWING_BY_RATE)
        }
        (Kind::TurkeyBreast | Kind::Goose, _) => same_rate(by_rate, source::THAWING_BY_RATE),
    }
}

fn water_frozen(kind: Kind, lb: f64) -> Thaw {
    let low = hours(lb / 2.0);
    let by_rate = Range::new(low, low + TimeDelta::hours(1));
    match kind {
        Kind::Turkey => match turkey_row(lb) {
            Some(row) => Thaw {
                time: Range::new(low, by_rate.high.min(row.water.high)),
                printed: Some(row.water),
                basis: Basis::Published,
                source: source::TURKEY_THAWING,
            },
            None => same_rate(by_rate, source::TURKEY_THAWING),
        },
        Kind::Chicken | Kind::Duck if (3.0..=4.0).contains(&lb) => {
            let printed = Range::new(TimeDelta::hours(2), TimeDelta::hours(3));
            let source = if kind == Kind::Duck { source::DUCK_THAWING } else { source::BIG_THAW };
            Thaw { time: printed, printed: Some(printed), basis: Basis::Published, source }
        }
        // Below 3 lb: a pound takes about an hour, 3 lb two to three.
        _ if lb < 3.0 => same_rate(Range::new(hours(lb * 2.0 / 3.0), hours(lb)), source::BIG_THAW),
        _ if lb <= 4.0 => same_rate(Range::new(TimeDelta::hours(2), TimeDelta::hours(3)), source::BIG_THAW),
        _ => same_rate(by_rate, source::BIG_THAW),
    }
}

fn same_rate(time: Range<TimeDelta>, source: Source) -> Thaw {
    Thaw { time, printed: None, basis: Basis::SameRate, source }
}

/// The share a part-thawed bird still needs; nothing for a fresh one.
fn finish(bird: &Bird, whole: Thaw) -> Option<Thaw> {
    match bird.condition {
        Condition::Fresh => None,
        Condition::Frozen => Some(whole),
        Condition::PartThawed => Some(Thaw {
            time: Range::new(
                times(whole.time.low, PART_THAWED_SHARE.low),
                times(whole.time.high, PART_THAWED_SHARE.high),
            ),
            printed: None,
            basis: Basis::Share,
            source: source::PART_THAWED,
        }),
    }
}

/// The line of that weight; a weight on the border belongs to the lighter line.
fn turkey_row(lb: f64) -> Option<&'static Row> {
    (lb >= TURKEY[0].pounds.low - LAST_BIT)
        .then(|| TURKEY.iter().find(|row| lb <= row.pounds.high + LAST_BIT))
        .flatten()
}

/// 12 lb made from kilograms is still 12 lb.
const LAST_BIT: f64 = 1e-9;

/// Changes on the way: one at each half hour before the end.
fn changes_in(time: TimeDelta) -> u16 {
    let every = WATER_CHANGE_EVERY.num_seconds();
    u16::try_from((time.num_seconds() + every - 1) / every - 1).unwrap_or(0)
}

fn days(value: f64) -> TimeDelta {
    hours(value * 24.0)
}

fn hours(value: f64) -> TimeDelta {
    TimeDelta::seconds((value * 3600.0).round() as i64)
}

fn times(span: TimeDelta, factor: f64) -> TimeDelta {
    TimeDelta::seconds((span.num_seconds() as f64 * factor).round() as i64)
}

names!(Basis { Published => "published", SameRate => "same-rate", Share => "share" });
