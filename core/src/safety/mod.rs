//! When food is safe and how long: rules as data, and small questions answered from them.
//!
//! Never calls anything safe on too little evidence: what isn't known counts as the worse case. US rules by default;
//! where another authority says otherwise, [`Jurisdiction`] picks its own. Says nothing in words. Start at [`left_out`],
//! [`keeps`], [`end_point`]; every number is in [`RULES`] or [`KEEPING`], and what has none is a [`Hazard`].

mod hazard;
mod keep;
mod rule;

pub use hazard::{HAZARDS, Hazard, HazardFact};
pub use keep::{Food, KEEPING, Keep, Keeping, Place, keeps};
pub use rule::*;

use crate::bird::Form;
use crate::quantity::{Temperature, celsius, fahrenheit, in_fahrenheit};
use chrono::TimeDelta;
use chrono_tz::Tz;

/// Whose rules.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Jurisdiction {
    /// United States.
    #[default]
    Us,
    /// United Kingdom.
    Uk,
    /// Canada.
    Ca,
}

impl Jurisdiction {
    /// Whose rules hold in a kitchen that keeps this time: Britain's where its clocks are, those of the US elsewhere.
    pub fn of_zone(zone: Tz) -> Self {
        match zone {
            Tz::Europe__London
            | Tz::Europe__Belfast
            | Tz::Europe__Jersey
            | Tz::Europe__Guernsey
            | Tz::Europe__Isle_of_Man
            | Tz::GB
            | Tz::GBEire => Self::Uk,
            _ => Self::Us,
        }
    }
}

/// Where the thermometer goes: the thickest part, away from bone, fat and gristle.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Spot {
    /// Innermost part of the thigh.
    Thigh,
    /// Innermost part of the wing.
    Wing,
    /// Thickest part of the breast.
    Breast,
    /// Centre of the stuffing.
    Stuffing,
}

/// What the coldest spot must reach.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EndPoint {
    /// So hot at least.
    pub temperature: Temperature,
    /// For so long at least; zero where reaching it is enough.
    pub hold: TimeDelta,
    /// The rule.
    pub rule: Rule,
}

/// What becomes of food that stood out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Verdict {
    /// Fine for so much longer; then eat it hot, chill it or throw it away.
    Fine {
        /// Time left.
        left: TimeDelta,
        /// The rule that set the limit.
        rule: Rule,
        /// The air was not given: it holds only where that is no hotter than 90 °F.
        if_cool: bool,
    },
    /// Throw it away.
    Discard {
        /// How long past the limit.
        over: TimeDelta,
        /// The rule that set the limit.
        rule: Rule,
    },
}

/// How a chilling of cooked food went.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Cooling {
    /// Within the rule so far.
    OnTrack {
        /// Time left to the next mark.
        left: TimeDelta,
        /// That mark.
        mark: Temperature,
    },
    /// At 41 °F or below in time.
    Done,
    /// Past a limit.
    TooSlow {
        /// How long past it.
        over: TimeDelta,
    },
}

/// Time perishable food may stand out: two hours, one above 90 °F. Without the air it is two, the rule for rooms.
pub fn two_hour_limit(air: Option<Temperature>) -> Rule {
    let cool_f = US_ONE_HOUR_RULE_AIR.low.unwrap_or(90.0);
    // A figure that is no number is no evidence of a cool day.
    let hot = air.is_some_and(|air| in_fahrenheit(air).is_nan() || in_fahrenheit(air) > cool_f + 1e-9);
    if hot { US_ONE_HOUR_RULE } else { US_TWO_HOUR_RULE }
}

/// Food that stood out in the danger zone for `out`, all stretches together. A negative time counts as none.
pub fn left_out(air: Option<Temperature>, out: TimeDelta) -> Verdict {
    let rule = two_hour_limit(air);
    let limit = rule.time().map_or(TimeDelta::zero(), |time| time.high);
    let out = out.max(TimeDelta::zero());
    if out < limit {
        Verdict::Fine { left: limit - out, rule, if_cool: air.is_none() }
    } else {
        Verdict::Discard { over: out - limit, rule }
    }
}

/// Whether bacteria grow quickly at that temperature of the food: 40 to 140 °F (8 to 63 °C in the UK).
pub fn in_danger_zone(food: Temperature, jurisdiction: Jurisdiction) -> bool {
    let (low, high) = match jurisdiction {
        Jurisdiction::Us | Jurisdiction::Ca => (40.0, 140.0),
        // The stricter low end of the two: a fridge at 7 °C is legal in a UK shop but not advised.
        Jurisdiction::Uk => (41.0, 145.4),
    };
    let f = in_fahrenheit(food);
    // Not a number: assume the worse.
    !(f <= low || f >= high)
}

/// As long as a bird that is whole may take over low heat to pass from 40 to 140 °F. Practice and no authority's figure: to be told as such, and
/// no reason to throw it away. Source: [`crate::source::SLOW_WARMING`].
pub const WARMING_MOST: TimeDelta = TimeDelta::hours(4);

/// Lowest end point for a bird of that form: 165 °F; in Canada 180 °F for a whole one; in the UK 70 °C for two minutes.
pub fn end_point(form: Form, jurisdiction: Jurisdiction) -> EndPoint {
    let (rule, temperature) = match (jurisdiction, form) {
        (Jurisdiction::Us, _) => (US_CONSUMER_POULTRY, fahrenheit(165.0)),
        (Jurisdiction::Ca, Form::Pieces) => (CA_POULTRY_PIECES, fahrenheit(165.0)),
        (Jurisdiction::Ca, _) => (CA_POULTRY_WHOLE, fahrenheit(180.0)),
        (Jurisdiction::Uk, _) => (UK_CORE_70C, celsius(70.0)),
    };
    let hold = rule.time().map_or(TimeDelta::zero(), |time| time.low);
    EndPoint { temperature, hold, rule }
}

/// Where a bird is measured; stuffing on top when it is stuffed.
pub fn spots(stuffed: bool) -> &'static [Spot] {
    const ALL: [Spot; 4] = [Spot::Thigh, Spot::Wing, Spot::Breast, Spot::Stuffing];
    if stuffed { &ALL } else { ALL.split_last().map_or(&ALL, |(_, rest)| rest) }
}

/// Lowest temperature of food kept hot: 140 °F; 63 °C in the UK.
pub fn hold_hot(jurisdiction: Jurisdiction) -> Rule {
    match jurisdiction {
        Jurisdiction::Us => US_HOT_HOLD_CONSUMER,
        Jurisdiction::Ca => CA_BBQ_POULTRY_HOT,
        Jurisdiction::Uk => UK_HOT_HOLD_LEGAL,
    }
}

/// Highest temperature of a fridge: 40 °F; 5 °C in the UK.
pub fn fridge(jurisdiction: Jurisdiction) -> Rule {
    match jurisdiction {
        Jurisdiction::Us => US_FRIDGE_CONSUMER,
        Jurisdiction::Ca => CA_BBQ_POULTRY_COLD,
        Jurisdiction::Uk => UK_FRIDGE,
    }
}

/// What leftovers are reheated to: 165 °F; gravy to a rolling boil.
pub fn reheat(food: Food) -> Rule {
    match food {
        Food::Gravy => US_GRAVY_REHEAT,
        _ => US_CONSUMER_LEFTOVERS,
    }
}

/// How cooling goes, `since` the food was at 135 °F and now at `food`: to 70 °F within 2 h, to 41 °F within 6 h of the
/// start. Source: Food Code 3-501.14(A).
///
/// Food still above 70 °F after two hours is too slow, whatever it reads later; `met_first` says whether it was at 70 °F
/// in time (`None`: not known, taken as no once two hours are over).
pub fn cooling(food: Temperature, since: TimeDelta, met_first: Option<bool>) -> Cooling {
    let first_limit = FC_COOL_STAGE1_TIME.time().map_or(TimeDelta::zero(), |time| time.high);
    let last_limit = FC_COOL_TOTAL_TIME.time().map_or(TimeDelta::zero(), |time| time.high);
    let (Some(first), Some(last)) = (FC_COOL_STAGE1_TO.temperature(), FC_COOL_STAGE2_TO.temperature()) else {
        return Cooling::TooSlow { over: since };
    };
    let since = since.max(TimeDelta::zero());
    let met_first = met_first.unwrap_or(false) || (since <= first_limit && food <= first);
    if !met_first {
        return if since < first_limit {
            Cooling::OnTrack { left: first_limit - since, mark: first }
        } else {
            Cooling::TooSlow { over: since - first_limit }
        };
    }
    match (food <= last, since <= last_limit) {
        (true, true) => Cooling::Done,
        (false, true) => Cooling::OnTrack { left: last_limit - since, mark: last },
        (_, false) => Cooling::TooSlow { over: since - last_limit },
    }
}

names!(Jurisdiction { Us => "us", Uk => "uk", Ca => "ca" });
names!(Spot { Thigh => "thigh", Wing => "wing", Breast => "breast", Stuffing => "stuffing" });
