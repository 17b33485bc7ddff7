//! The rules, each with the place it comes from.
//!
//! One constant a rule and [`RULES`], so that a number can be traced by its id. Values as printed, in the printed unit.

use super::Jurisdiction::{self, Ca, Uk, Us};
use crate::quantity::{Temperature, celsius, fahrenheit};
use crate::range::Range;
use crate::source::*;
use chrono::TimeDelta;

/// Whom a rule is written for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Audience {
    /// People at home.
    Kitchen,
    /// Shops and restaurants.
    Business,
    /// Plants under inspection.
    Plant,
}
use Audience::{Business, Kitchen, Plant};

/// Unit a rule is printed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[allow(missing_docs)] // the names say it
pub enum Unit {
    Fahrenheit,
    Celsius,
    Seconds,
    Minutes,
    Hours,
    Days,
    Log10,
    Percent,
    Count,
    /// 1 yes, 0 no.
    Flag,
    Inches,
    Feet,
    Pounds,
    Ratio,
    MinutesPerPound,
    PoundsPerDay,
    HoursPerKilogram,
    CupsPerPound,
}

/// A published rule: at least `low`, at most `high`, whichever are printed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rule {
    /// Stable id.
    pub id: &'static str,
    /// Where it holds.
    pub jurisdiction: Jurisdiction,
    /// Whom it is written for.
    pub audience: Audience,
    /// At least.
    pub low: Option<f64>,
    /// At most.
    pub high: Option<f64>,
    /// Unit of both.
    pub unit: Unit,
    /// Where it stands.
    pub source: Source,
}

impl Rule {
    /// The temperature it prints (the lower one of a range); `None` when it is none.
    pub fn temperature(&self) -> Option<Temperature> {
        let value = self.low.or(self.high)?;
        match self.unit {
            Unit::Fahrenheit => Some(fahrenheit(value)),
            Unit::Celsius => Some(celsius(value)),
            _ => None,
        }
    }

    /// The span of time it prints: both ends the same where one is printed; `None` when it is none.
    pub fn time(&self) -> Option<Range<TimeDelta>> {
        let seconds = match self.unit {
            Unit::Seconds => 1.0,
            Unit::Minutes => 60.0,
            Unit::Hours => 3_600.0,
            Unit::Days => 86_400.0,
            _ => return None,
        };
        let span = |value: f64| TimeDelta::milliseconds((value * seconds * 1e3).round() as i64);
        let low = self.low.or(self.high)?;
        let high = self.high.unwrap_or(low);
        Some(Range::new(span(low), span(high)))
    }
}

/// The rule of that id.
pub fn rule(id: &str) -> Option<&'static Rule> {
    RULES.iter().find(|rule| rule.id == id)
}

/// Declares constants and the list of them, so that none can be left out of it.
macro_rules! rules {
    ($($(#[$doc:meta])* $name:ident = $id:literal, $where:ident, $whom:ident, $low:expr, $high:expr, $unit:ident, $source:ident;)+) => {
        $($(#[$doc])* pub const $name: Rule = Rule {
            id: $id,
            jurisdiction: $where,
            audience: $whom,
            low: $low,
            high: $high,
            unit: Unit::$unit,
            source: $source,
        };)+

        /// All rules.
        pub static RULES: &[Rule] = &[$($name),+];
    };
}

rules! {
    // temperature_rules.csv
    /// Fully cooked poultry; Salmonella reduction, minimum.
    US_LETHALITY_POULTRY_LOG10 = "us_lethality_poultry_log10", Us, Plant, Some(7.0), None, Log10, CFR_381_150;
    /// Fully cooked poultry; C. perfringens multiplication, maximum.
    US_STABILIZATION_CPERF_LOG10 = "us_stabilization_cperf_log10", Us, Plant, None, Some(1.0), Log10, CFR_381_150;
    /// Cooked poultry rolls and other poultry, uncured, any fat or species; internal temperature, instantaneous, minimum.
    US_ROLLS_UNCURED = "us_rolls_uncured", Us, Plant, Some(160.0), None, Fahrenheit, LETHALITY_RULES;
    /// Cured and smoked poultry rolls and other poultry; internal temperature, instantaneous, minimum.
    US_ROLLS_CURED = "us_rolls_cured", Us, Plant, Some(155.0), None, Fahrenheit, LETHALITY_RULES;
    /// Product while heating; time between 50 and 130 F, maximum.
    US_COME_UP_TIME = "us_come_up_time", Us, Plant, None, Some(6.0), Hours, LETHALITY_RULES;
    /// Poultry of more than 12 % fat or of unknown fat; use the 12 % fat column.
    US_FAT_ABOVE_12 = "us_fat_above_12", Us, Plant, Some(12.0), None, Percent, LETHALITY_RULES;
    /// Other species or a mix of species; use the longer of the chicken and turkey times at the same temperature and fat.
    US_OTHER_SPECIES = "us_other_species", Us, Plant, None, None, Count, LETHALITY_RULES;
    /// All poultry: whole bird, breast, leg, thigh, wing, ground, giblets, stuffing in the bird; internal temperature, minimum.
    US_CONSUMER_POULTRY = "us_consumer_poultry", Us, Kitchen, Some(165.0), None, Fahrenheit, SAFE_MINIMUM;
    /// Whole bird: where to measure; spots: innermost thigh, innermost wing, thickest breast (count).
    US_MEASURE_WHOLE_BIRD = "us_measure_whole_bird", Us, Kitchen, Some(3.0), None, Count, ROASTING_CHARTS;
    /// Leftovers, casseroles; reheat to, minimum.
    US_CONSUMER_LEFTOVERS = "us_consumer_leftovers", Us, Kitchen, Some(165.0), None, Fahrenheit, SAFE_MINIMUM;
    /// Oven when roasting meat or poultry; air temperature, minimum.
    US_OVEN_MINIMUM = "us_oven_minimum", Us, Kitchen, Some(325.0), None, Fahrenheit, ROASTING_CHARTS;
    /// Growth range; temperature range.
    US_DANGER_ZONE = "us_danger_zone", Us, Kitchen, Some(40.0), Some(140.0), Fahrenheit, DANGER_ZONE;
    /// Bacteria in the growth range; doubling time, as little as.
    US_DOUBLING_TIME = "us_doubling_time", Us, Kitchen, Some(20.0), None, Minutes, DANGER_ZONE;
    /// Perishable food out of refrigeration; time, maximum.
    US_TWO_HOUR_RULE = "us_two_hour_rule", Us, Kitchen, None, Some(2.0), Hours, DANGER_ZONE;
    /// Perishable food out of refrigeration, air above 90 F; time, maximum.
    US_ONE_HOUR_RULE = "us_one_hour_rule", Us, Kitchen, None, Some(1.0), Hours, DANGER_ZONE;
    /// Air temperature above which one hour applies; air temperature.
    US_ONE_HOUR_RULE_AIR = "us_one_hour_rule_air", Us, Kitchen, Some(90.0), None, Fahrenheit, DANGER_ZONE;
    /// Hot holding; food temperature, minimum.
    US_HOT_HOLD_CONSUMER = "us_hot_hold_consumer", Us, Kitchen, Some(140.0), None, Fahrenheit, DANGER_ZONE;
    /// Refrigerator; temperature, maximum.
    US_FRIDGE_CONSUMER = "us_fridge_consumer", Us, Kitchen, None, Some(40.0), Fahrenheit, FOUR_STEPS;
    /// Freezer; temperature, maximum.
    US_FREEZER_CONSUMER = "us_freezer_consumer", Us, Kitchen, None, Some(0.0), Fahrenheit, FOUR_STEPS;
    /// Hot food may go straight into the refrigerator, in shallow containers; allowed.
    US_HOT_FOOD_DIRECT_FRIDGE = "us_hot_food_direct_fridge", Us, Kitchen, Some(1.0), None, Flag, LEFTOVERS;
    /// Leftovers reheated to 165 F may be refrozen; allowed.
    US_REFREEZE_REHEATED = "us_refreeze_reheated", Us, Kitchen, Some(1.0), None, Flag, LEFTOVERS;
    /// Sauces, soups, gravies; reheat to a rolling boil.
    US_GRAVY_REHEAT = "us_gravy_reheat", Us, Kitchen, Some(1.0), None, Flag, LEFTOVERS;
    /// Whole turkey before carving (for quality); standing time.
    US_STAND_TIME = "us_stand_time", Us, Kitchen, Some(20.0), None, Minutes, TURKEY_ROASTING;
    /// Poultry; stuffed poultry; stuffing with meat; internal temperature, instantaneous (<1 s), minimum.
    FC_POULTRY = "fc_poultry", Us, Business, Some(165.0), None, Fahrenheit, FOOD_CODE;
    /// Cooling, stage 1: from; .
    FC_COOL_STAGE1_FROM = "fc_cool_stage1_from", Us, Business, Some(135.0), None, Fahrenheit, FOOD_CODE;
    /// Cooling, stage 1: to; .
    FC_COOL_STAGE1_TO = "fc_cool_stage1_to", Us, Business, Some(70.0), None, Fahrenheit, FOOD_CODE;
    /// Cooling, stage 1: within; time, maximum.
    FC_COOL_STAGE1_TIME = "fc_cool_stage1_time", Us, Business, None, Some(2.0), Hours, FOOD_CODE;
    /// Cooling, end: to; .
    FC_COOL_STAGE2_TO = "fc_cool_stage2_to", Us, Business, Some(41.0), None, Fahrenheit, FOOD_CODE;
    /// Cooling, 135 F to 41 F: within a total of; time, maximum.
    FC_COOL_TOTAL_TIME = "fc_cool_total_time", Us, Business, None, Some(6.0), Hours, FOOD_CODE;
    /// Hot holding; food temperature, minimum.
    FC_HOT_HOLD = "fc_hot_hold", Us, Business, Some(135.0), None, Fahrenheit, FOOD_CODE;
    /// Cold holding; food temperature, maximum.
    FC_COLD_HOLD = "fc_cold_hold", Us, Business, None, Some(41.0), Fahrenheit, FOOD_CODE;
    /// Reheating for hot holding: all parts at least, for 15 s; temperature, minimum.
    FC_REHEAT = "fc_reheat", Us, Business, Some(165.0), None, Fahrenheit, FOOD_CODE;
    /// Reheating for hot holding; time at temperature.
    FC_REHEAT_HOLD = "fc_reheat_hold", Us, Business, Some(15.0), None, Seconds, FOOD_CODE;
    /// Reheating: time between 41 F and 165 F; time, maximum.
    FC_REHEAT_TIME = "fc_reheat_time", Us, Business, None, Some(2.0), Hours, FOOD_CODE;
    /// Thawing under running water; water temperature, maximum.
    FC_THAW_WATER = "fc_thaw_water", Us, Business, None, Some(70.0), Fahrenheit, FOOD_CODE;
    /// Cooling in layers (new in 2026); depth, maximum.
    FC_COOL_DEPTH_2026 = "fc_cool_depth_2026", Us, Business, None, Some(2.0), Inches, FOOD_CODE;
    /// Middle of the food at 60 C; time at temperature, minimum.
    UK_CORE_60C = "uk_core_60c", Uk, Kitchen, Some(2700.0), None, Seconds, UK_COOKING;
    /// Middle of the food at 65 C; time at temperature, minimum.
    UK_CORE_65C = "uk_core_65c", Uk, Kitchen, Some(600.0), None, Seconds, UK_COOKING;
    /// Middle of the food at 70 C; time at temperature, minimum.
    UK_CORE_70C = "uk_core_70c", Uk, Kitchen, Some(120.0), None, Seconds, UK_COOKING;
    /// Middle of the food at 75 C; time at temperature, minimum.
    UK_CORE_75C = "uk_core_75c", Uk, Kitchen, Some(30.0), None, Seconds, UK_COOKING;
    /// Middle of the food at 80 C; time at temperature, minimum.
    UK_CORE_80C = "uk_core_80c", Uk, Kitchen, Some(6.0), None, Seconds, UK_COOKING;
    /// Growth range; temperature range.
    UK_DANGER_ZONE = "uk_danger_zone", Uk, Kitchen, Some(8.0), Some(63.0), Celsius, UK_COOKING;
    /// Refrigerator; temperature range.
    UK_FRIDGE = "uk_fridge", Uk, Kitchen, Some(0.0), Some(5.0), Celsius, UK_CHILLING;
    /// Freezer, about; temperature.
    UK_FREEZER = "uk_freezer", Uk, Kitchen, Some(-18.0), Some(-18.0), Celsius, UK_CHILLING;
    /// Hot holding; food temperature, minimum.
    UK_HOT_HOLD_LEGAL = "uk_hot_hold_legal", Uk, Business, Some(63.0), None, Celsius, UK_LAW;
    /// Chill holding (England, Wales, NI); food temperature, maximum.
    UK_CHILL_LEGAL = "uk_chill_legal", Uk, Business, None, Some(8.0), Celsius, UK_TEMPERATURE;
    /// Hot food on display below 63 C, one period; time, maximum.
    UK_HOT_DISPLAY_TOLERANCE = "uk_hot_display_tolerance", Uk, Business, None, Some(2.0), Hours, UK_TEMPERATURE;
    /// Cold food on display above 8 C, one period; time, maximum.
    UK_COLD_DISPLAY_TOLERANCE = "uk_cold_display_tolerance", Uk, Business, None, Some(4.0), Hours, UK_TEMPERATURE;
    /// Cool at room temperature, then refrigerate (hot food not put in the fridge); time.
    UK_COOL_WITHIN = "uk_cool_within", Uk, Kitchen, Some(1.0), Some(2.0), Hours, UK_CHILLING;
    /// Reheating; times, maximum.
    UK_REHEAT_ONCE = "uk_reheat_once", Uk, Kitchen, None, Some(1.0), Count, UK_COOKING;
    /// Leftovers in the fridge; time, maximum.
    UK_LEFTOVERS = "uk_leftovers", Uk, Kitchen, None, Some(48.0), Hours, UK_COOKING;
    /// Poultry, whole; internal temperature, minimum.
    CA_POULTRY_WHOLE = "ca_poultry_whole", Ca, Kitchen, Some(180.0), None, Fahrenheit, CANADA_COOKING;
    /// Poultry, pieces; ground poultry; internal temperature, minimum.
    CA_POULTRY_PIECES = "ca_poultry_pieces", Ca, Kitchen, Some(165.0), None, Fahrenheit, CANADA_COOKING;
    /// Stuffing, leftovers; internal temperature, minimum.
    CA_STUFFING = "ca_stuffing", Ca, Kitchen, Some(165.0), None, Fahrenheit, CANADA_COOKING;
    /// Wild turkey, duck, goose, pheasant, whole; internal temperature, minimum.
    CA_GAMEBIRD_WHOLE = "ca_gamebird_whole", Ca, Kitchen, Some(180.0), None, Fahrenheit, CANADA_COOKING;
    /// Cooked poultry ready for consumption: cold, at or below; temperature, maximum.
    CA_BBQ_POULTRY_COLD = "ca_bbq_poultry_cold", Ca, Business, None, Some(40.0), Fahrenheit, CANADA_LAW;
    /// Cooked poultry ready for consumption: hot, at or above; temperature, minimum.
    CA_BBQ_POULTRY_HOT = "ca_bbq_poultry_hot", Ca, Business, Some(140.0), None, Fahrenheit, CANADA_LAW;
    // thawing_rules.csv
    /// Refrigerator thawing of a turkey: lb per 24 h (turkey table).
    THAW_US_FRIDGE_RATE = "thaw_us_fridge_rate", Us, Kitchen, Some(4.0), Some(5.0), PoundsPerDay, TURKEY_THAWING;
    /// Refrigerator thawing of a turkey: at least 24 h for every ... lb.
    THAW_US_FRIDGE_RATE_BIGTHAW = "thaw_us_fridge_rate_bigthaw", Us, Kitchen, Some(5.0), Some(5.0), PoundsPerDay, BIG_THAW;
    /// Cold water thawing.
    THAW_US_WATER_RATE = "thaw_us_water_rate", Us, Kitchen, Some(30.0), Some(30.0), MinutesPerPound, BIG_THAW;
    /// Change the water every.
    THAW_US_WATER_CHANGE = "thaw_us_water_change", Us, Kitchen, Some(30.0), Some(30.0), Minutes, BIG_THAW;
    /// Whole turkey or poultry thawed in the refrigerator keeps, before cooking.
    THAW_US_KEEP_AFTER_FRIDGE_THAW = "thaw_us_keep_after_fridge_thaw", Us, Kitchen, Some(1.0), Some(2.0), Days, TURKEY_THAWING;
    /// Thawed in cold water: cook at once.
    THAW_US_COOK_AFTER_WATER_THAW = "thaw_us_cook_after_water_thaw", Us, Kitchen, Some(0.0), Some(0.0), Hours, TURKEY_THAWING;
    /// Thawed in a microwave: cook at once.
    THAW_US_COOK_AFTER_MICROWAVE = "thaw_us_cook_after_microwave", Us, Kitchen, Some(0.0), Some(0.0), Hours, TURKEY_THAWING;
    /// Thawed in the refrigerator: may be refrozen uncooked (1 = yes).
    THAW_US_REFREEZE_FRIDGE = "thaw_us_refreeze_fridge", Us, Kitchen, Some(1.0), Some(1.0), Flag, BIG_THAW;
    /// Thawed in cold water: may be refrozen uncooked (0 = no, cook first).
    THAW_US_REFREEZE_WATER = "thaw_us_refreeze_water", Us, Kitchen, Some(0.0), Some(0.0), Flag, BIG_THAW;
    /// Thawing on the counter or in hot water allowed (0 = no).
    THAW_US_COUNTER = "thaw_us_counter", Us, Kitchen, Some(0.0), Some(0.0), Flag, BIG_THAW;
    /// Frozen pre-stuffed turkey with inspection mark: thaw first (0 = no, cook from frozen).
    THAW_US_PRESTUFFED_FROZEN = "thaw_us_prestuffed_frozen", Us, Kitchen, Some(0.0), Some(0.0), Flag, TURKEY_BUYING;
    /// Refrigerator (4 C) thawing of a turkey.
    THAW_UK_FRIDGE_RATE = "thaw_uk_fridge_rate", Uk, Kitchen, Some(10.0), Some(12.0), HoursPerKilogram, UK_THAWING;
    /// Cool room (below 17.5 C) thawing of a turkey; no longer on the current page.
    THAW_UK_COOL_ROOM_RATE = "thaw_uk_cool_room_rate", Uk, Kitchen, Some(3.0), Some(4.0), HoursPerKilogram, UK_THAWING;
    /// 6-7 kg turkey in the refrigerator, up to.
    THAW_UK_LARGE_TURKEY = "thaw_uk_large_turkey", Uk, Kitchen, None, Some(4.0), Days, UK_THAWING;
    /// Use after fully defrosted, within.
    THAW_UK_KEEP_AFTER_THAW = "thaw_uk_keep_after_thaw", Uk, Kitchen, None, Some(24.0), Hours, UK_CHILLING;
    // roasting_rules.csv
    /// Cooking from frozen: time multiplier, about (FSIS: about 50 % longer; turkey page: at least 50 %).
    ROAST_FROM_FROZEN_FACTOR = "roast_from_frozen_factor", Us, Kitchen, Some(1.5), None, Ratio, BIG_THAW;
    /// Lowest oven setting for poultry.
    ROAST_OVEN_MIN = "roast_oven_min", Us, Kitchen, Some(325.0), None, Fahrenheit, ROASTING_CHARTS;
    /// Smoker air temperature.
    ROAST_SMOKER_RANGE = "roast_smoker_range", Us, Kitchen, Some(225.0), Some(300.0), Fahrenheit, SMOKER_RANGE;
    /// Smoker air temperature, older FSIS wording.
    ROAST_SMOKER_RANGE_OLDER = "roast_smoker_range_older", Us, Kitchen, Some(250.0), Some(300.0), Fahrenheit, SMOKER_RANGE;
    /// Thaw completely before smoking.
    ROAST_SMOKER_THAWED = "roast_smoker_thawed", Us, Kitchen, Some(1.0), None, Flag, SMOKING;
    /// Oil temperature for a whole turkey.
    ROAST_FRY_OIL = "roast_fry_oil", Us, Kitchen, Some(350.0), Some(350.0), Fahrenheit, FRYING;
    /// Frying time.
    ROAST_FRY_TIME = "roast_fry_time", Us, Kitchen, Some(3.0), Some(5.0), MinutesPerPound, FRYING;
    /// Whole bird for frying, at most.
    ROAST_FRY_MAX_WEIGHT = "roast_fry_max_weight", Us, Kitchen, None, Some(12.0), Pounds, FRYING;
    /// Oil above the bird.
    ROAST_FRY_OIL_COVER = "roast_fry_oil_cover", Us, Kitchen, Some(1.0), Some(2.0), Inches, FRYING;
    /// Fryer to the house, at least.
    ROAST_FRY_DISTANCE = "roast_fry_distance", Us, Kitchen, Some(10.0), None, Feet, FRYING;
    /// Stand before carving (quality; stuffing goes on warming).
    ROAST_STAND_TIME = "roast_stand_time", Us, Kitchen, Some(20.0), None, Minutes, TURKEY_STUFFING;
    /// Stuffing per pound of bird.
    ROAST_STUFFING_AMOUNT = "roast_stuffing_amount", Us, Kitchen, Some(0.5), Some(0.75), CupsPerPound, STUFFING_SAFELY;
}

names!(Audience { Kitchen => "kitchen", Business => "business", Plant => "plant" });
