//! From the timetable to a distribution for this bird in this cooker.
//!
//! How it is built, in order:
//! 1. p50 is the timetable read at the bird's weight ([`table::Table::hours`]); beyond the printed weights time goes with
//!    mass^(2/3). p10 and p90 lie a stated distance around it and always take in the whole printed line.
//! 2. Another setting: time from 40 to 165 °F in air at T goes with ln((T − 40) / (T − 165)): the lumped body's law, whose
//!    level comes from the timetable. The further from the timetable's setting, the wider.
//! 3. Cooker, form and condition are factors from common practice, each with its own width.
//!
//! Widths are logarithms (0.17: 16 % less, 19 % more), chosen by looking at sixty *synthetic* cooks
//! ([`source::SYNTHETIC_COOKS`]); real birds were not measured. Of those sixty, 55 lie within p10..p90 (four in five
//! would do: the ranges are a little wide on purpose, they are fitted to these very cooks), and the median of true time
//! over p50 is 0.99: 1.01 in ovens, 0.94 in hot smokers, 1.3 stuffed (four cooks: there p50 stays with the published
//! table and only p90 gives way).

use super::table::{self, Table};
use super::{Cooker, CookingTime, Heat, Spread};
use crate::bird::{Bird, BirdError, Condition, Form, Kind};
use crate::quantity::{Temperature, fahrenheit, in_fahrenheit, in_pounds};
use crate::source::{self, Source};
use crate::thaw::FROM_FROZEN_FACTOR;
use chrono::TimeDelta;

/// The authority's lowest oven setting for poultry, °F. Source: [`source::ROASTING_CHARTS`].
pub const OVEN_AUTHORITY_F: f64 = 325.0;
/// The authority's range for smokers, °F. Source: [`source::SMOKER_RANGE`].
const SMOKER_AUTHORITY_F: (f64, f64) = (225.0, 300.0);
/// From here down a smoker is a low one: evaporation holds the bird back longer than the law says.
const LOW_SMOKER_BELOW_F: f64 = 325.0;
/// Exponent on the setting's factor in a low smoker, so that 12 lb take about 25 min a pound at 250 °F.
const LOW_SMOKER_POWER: f64 = 1.4;

/// Start and end of the setting's law, °F.
const LAW_START_F: f64 = 40.0;
const LAW_END_F: f64 = 165.0;

/// What an estimate rests on: the weakest link.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Basis {
    /// The published timetable at its own setting and weights.
    Published,
    /// The timetable carried beyond its weights by the mass law.
    Extended,
    /// The timetable carried to another setting by the setting's law.
    Scaled,
    /// A factor of the trade: cooker, form, or condition.
    Practice,
}

/// What to tell the cook with the time. The bot has a line for each.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Caution {
    /// The oven is below 325 °F: the authority says never.
    OvenBelowAuthority,
    /// The smoker is below the published 225 °F.
    SmokerBelowAuthority,
    /// The smoker is above the published 300 °F: common practice only.
    SmokerAbovePublished,
    /// Low and slow: the bird stays long between 40 and 140 °F, and the time is most uncertain.
    LongInDangerZone,
    /// Bigger or smaller than anything in the timetable.
    OutsideTable,
    /// The stuffing's centre must reach 165 °F too, often last; safest baked outside.
    StuffingLast,
    /// From frozen: check early and late; take the giblets out as soon as they come loose; never smoke or fry it so.
    FromFrozen,
    /// Part-thawed: anything between thawed and frozen.
    PartThawed,
    /// Pieces finish one by one: each is measured.
    PiecesDiffer,
}

/// Why there is no estimate.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum RoastError {
    /// The setting is outside what the cooker takes.
    #[error("{cooker:?} at {given:?}, taken {low:?} to {high:?}")]
    Setting {
        /// Which cooker.
        cooker: Cooker,
        /// What was given.
        given: Temperature,
        /// Lowest setting taken.
        low: Temperature,
        /// Highest setting taken.
        high: Temperature,
    },
    /// A smoker needs a bird thawed through ([`source::SMOKING`]).
    #[error("thaw completely before smoking")]
    ThawBeforeSmoking,
    /// The bird itself makes no sense.
    #[error(transparent)]
    Bird(#[from] BirdError),
}

/// A cooking time with what it rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Estimate {
    /// From on to pull.
    pub spread: Spread,
    /// Weakest link.
    pub basis: Basis,
    /// What to say with it, in order, none twice.
    pub cautions: Vec<Caution>,
    /// Source of the weakest link.
    pub source: Source,
    /// The timetable it starts from.
    pub table: Source,
}

/// Cooking times from the timetable, before there is any reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Timetable;

impl CookingTime for Timetable {
    fn cooking_time(&self, bird: &Bird, heat: &Heat, start: Condition) -> Result<Spread, RoastError> {
        estimate(bird, heat, start).map(|estimate| estimate.spread)
    }
}

/// How long `bird` takes in `heat`, going on in the condition `start` (whatever it was at the shop).
///
/// Never quicker for a heavier bird, never slower for a hotter setting.
///
/// # Errors
/// [`RoastError`]: setting out of range, a frozen or part-thawed bird in a smoker, or a bird that can't be.
pub fn estimate(bird: &Bird, heat: &Heat, start: Condition) -> Result<Estimate, RoastError> {
    bird.check_for_heat(start)?;
    let settings = heat.cooker.settings();
    if !settings.holds(heat.setting) {
        return Err(RoastError::Setting {
            cooker: heat.cooker,
            given: heat.setting,
            low: settings.low,
            high: settings.high,
        });
    }
    if heat.cooker == Cooker::Smoker && start != Condition::Fresh {
        return Err(RoastError::ThawBeforeSmoking);
    }
    let mut draft = Draft::from_table(bird, start);
    draft.form(bird);
    draft.start(bird, start);
    draft.setting(heat);
    draft.cooker(heat);
    Ok(draft.finish())
}

/// Time at the setting over time at 325 °F, by the setting's law.
pub fn setting_factor(setting: Temperature) -> f64 {
    law(in_fahrenheit(setting)) / law(OVEN_AUTHORITY_F)
}

fn law(oven_f: f64) -> f64 {
    ((oven_f - LAW_START_F) / (oven_f - LAW_END_F)).ln()
}

/// Hours and widths while they are put together.
struct Draft {
    p10: f64,
    p50: f64,
    p90: f64,
    oven_f: f64,
    basis: Basis,
    source: Source,
    table: Source,
    cautions: Vec<Caution>,
}

impl Draft {
    fn from_table(bird: &Bird, start: Condition) -> Self {
        let lb = in_pounds(bird.mass.get());
        let whole_frozen_turkey = bird.kind == Kind::Turkey && bird.form == Form::Whole && start == Condition::Frozen;
        let printed =
            if whole_frozen_turkey { Some(table::TURKEY_FROZEN) } else { table::thawed(bird.kind, bird.stuffed) };
        match printed {
            Some(table) => Self::read(&table, lb, bird.stuffed),
            None => Self::stuffed_unprinted(bird.kind, lb),
        }
    }

    fn read(table: &Table, lb: f64, stuffed: bool) -> Self {
        // Stuffed birds of the synthetic cooks took up to 1.38 times the printed time: late is likelier than early.
        let (early, late) = if stuffed { (0.15, 0.34) } else { (0.17, 0.17) };
        let hours = table.hours(lb);
        let line = table.printed(lb);
        let mut draft = Self {
            p10: line.low.min(hours * f64::exp(-early)),
            p50: hours,
            p90: line.high.max(hours * f64::exp(late)),
            oven_f: table.oven_f,
            basis: Basis::Published,
            source: table.source,
            table: table.source,
            cautions: Vec::new(),
        };
        if !table.holds(lb) {
            let far = table.below_or_above(lb);
            draft.widen(0.1 * far, 0.1 * far);
            draft.rests_on(Basis::Extended, source::MASS_LAW);
            draft.cautions.push(Caution::OutsideTable);
        }
        if stuffed {
            draft.cautions.push(Caution::StuffingLast);
        }
        draft
    }

    /// Chicken, capon, goose with stuffing: 15 to 30 minutes more (from memory).
    fn stuffed_unprinted(kind: Kind, lb: f64) -> Self {
        let table = table::thawed(kind, false).unwrap_or(table::CHICKEN);
        let mut draft = Self::read(&table, lb, false);
        draft.p10 += 0.25;
        draft.p50 += 0.375;
        draft.p90 += 0.5;
        draft.widen(0.0, 0.15);
        draft.rests_on(Basis::Practice, source::STUFFED_OTHER);
        draft.cautions.push(Caution::StuffingLast);
        draft
    }

    fn form(&mut self, bird: &Bird) {
        match (bird.form, bird.kind) {
            (Form::Whole, _) => {}
            (Form::Flat, _) => {
                self.times(0.65);
                self.widen(0.0, 0.03);
                self.rests_on(Basis::Practice, source::FLAT_BIRD);
            }
            (Form::Pieces, Kind::Duck) => self.printed_pieces(table::DUCK_LEGS.low, table::DUCK_LEGS.high),
            (Form::Pieces, Kind::Goose) => self.printed_pieces(table::GOOSE_PIECES.low, table::GOOSE_PIECES.high),
            (Form::Pieces, _) => {
                self.times(0.55);
                self.widen(0.15, 0.15);
                self.rests_on(Basis::Practice, source::PIECES);
                self.cautions.push(Caution::PiecesDiffer);
            }
        }
    }

    fn printed_pieces(&mut self, low: f64, high: f64) {
        *self = Self {
            p10: low * f64::exp(-0.17),
            p50: (low + high) / 2.0,
            p90: high * f64::exp(0.17),
            oven_f: OVEN_AUTHORITY_F,
            basis: Basis::Published,
            source: source::POULTRY_TIMETABLE,
            table: source::POULTRY_TIMETABLE,
            cautions: vec![Caution::PiecesDiffer],
        };
    }

    fn start(&mut self, bird: &Bird, start: Condition) {
        match start {
            Condition::Fresh => {}
            Condition::Frozen => {
                // The whole turkey was read from its own table; others take half as long again, at least.
                if bird.kind != Kind::Turkey || bird.form != Form::Whole {
                    self.times(FROM_FROZEN_FACTOR);
                    self.rests_on(Basis::Practice, source::BIG_THAW);
                }
                self.widen(0.0, 0.1);
                self.cautions.push(Caution::FromFrozen);
            }
            Condition::PartThawed => {
                self.times((1.0 + FROM_FROZEN_FACTOR) / 2.0);
                self.widen(0.1, 0.2);
                self.rests_on(Basis::Practice, source::PART_THAWED);
                self.cautions.push(Caution::PartThawed);
            }
        }
    }

    fn setting(&mut self, heat: &Heat) {
        let setting_f = in_fahrenheit(heat.setting);
        let low_smoker = heat.cooker == Cooker::Smoker && setting_f < LOW_SMOKER_BELOW_F;
        let mut log = (law(setting_f) / law(self.oven_f)).ln();
        if low_smoker {
            // Only the part below 325 °F is stretched, so that the curve has no step there.
            let below = setting_factor(heat.setting).ln();
            log += (LOW_SMOKER_POWER - 1.0) * below;
            self.widen(0.0, 0.35 * below);
        }
        self.times(log.exp());
        if (setting_f - self.oven_f).abs() > 0.5 {
            // Less than the whole factor, so that a hotter setting is never slower at any quantile.
            self.widen(0.2 * log.abs(), 0.2 * log.abs());
            self.rests_on(Basis::Scaled, source::SETTING_LAW);
        }
        match heat.cooker {
            Cooker::Oven | Cooker::FanOven => {
                if heat.setting < fahrenheit(OVEN_AUTHORITY_F - SETTING_SLACK_F) {
                    self.cautions.push(Caution::OvenBelowAuthority);
                }
            }
            Cooker::Smoker => {
                if heat.setting < fahrenheit(SMOKER_AUTHORITY_F.0 - SETTING_SLACK_F) {
                    self.cautions.push(Caution::SmokerBelowAuthority);
                } else if heat.setting > fahrenheit(SMOKER_AUTHORITY_F.1 + SETTING_SLACK_F) {
                    self.cautions.push(Caution::SmokerAbovePublished);
                }
                if low_smoker && setting_f < 275.0 {
                    self.cautions.push(Caution::LongInDangerZone);
                }
            }
        }
    }

    fn cooker(&mut self, heat: &Heat) {
        match heat.cooker {
            Cooker::Oven => {}
            Cooker::FanOven => {
                self.times(0.875);
                self.widen(0.05, 0.0);
                self.rests_on(Basis::Practice, source::FAN_OVEN);
            }
            Cooker::Smoker => {
                self.times(0.88);
                let low = in_fahrenheit(heat.setting) < LOW_SMOKER_BELOW_F;
                self.rests_on(Basis::Practice, if low { source::LOW_SMOKER } else { source::HOT_SMOKER });
            }
        }
    }

    fn times(&mut self, factor: f64) {
        self.p10 *= factor;
        self.p50 *= factor;
        self.p90 *= factor;
    }

    /// Wider by these logarithms below and above the middle.
    fn widen(&mut self, early: f64, late: f64) {
        self.p10 *= f64::exp(-early);
        self.p90 *= f64::exp(late);
    }

    fn rests_on(&mut self, basis: Basis, source: Source) {
        if basis >= self.basis {
            self.basis = basis;
            self.source = source;
        }
    }

    fn finish(mut self) -> Estimate {
        self.cautions.sort_unstable();
        self.cautions.dedup();
        let minutes = |hours: f64| TimeDelta::minutes((hours * 60.0).round() as i64);
        Estimate {
            spread: Spread { p10: minutes(self.p10), p50: minutes(self.p50), p90: minutes(self.p90) },
            basis: self.basis,
            cautions: self.cautions,
            source: self.source,
            table: self.table,
        }
    }
}

/// 325 °F typed as 163 °C (325.4) or 162 °C (323.6) is still 325 °F.
const SETTING_SLACK_F: f64 = 1.5;

names!(Basis { Published => "published", Extended => "extended", Scaled => "scaled", Practice => "practice" });
names!(Caution {
    OvenBelowAuthority => "oven-below-authority",
    SmokerBelowAuthority => "smoker-below-authority",
    SmokerAbovePublished => "smoker-above-published",
    LongInDangerZone => "long-in-danger-zone",
    OutsideTable => "outside-table",
    StuffingLast => "stuffing-last",
    FromFrozen => "from-frozen",
    PartThawed => "part-thawed",
    PiecesDiffer => "pieces-differ",
});
