//! A pit that sags: clearly under what it is set to and still falling, or far under it, while there is time to feed it.
//!
//! A fire that dies, or a bird that stands in the danger zone for it, is said by [`super::alarms`] in its own words. Common practice, no
//! source: no authority says how far a pit may swing. Start at [`sags`].

use carvetime_core::heat::{Cook, Reading};
use carvetime_core::quantity::{Temperature, in_fahrenheit};
use carvetime_core::roast::Cooker;
use chrono::TimeDelta;

/// So far under the setting in two readings, the second lower, it sags, °F.
const CLEARLY_F: f64 = 25.0;
/// So far under it, one reading is enough in a smoker; an oven's door may just have been open, and it takes two, °F.
const FAR_F: f64 = 40.0;
/// The second reading is lower by so much, °F.
const FALLING_F: f64 = 5.0;
/// It is back when it reads no further under the setting than this, °F.
const BACK_F: f64 = 15.0;
/// Two readings of one sag: a lid that was open for the first is shut, and the fire is the same.
const APART: std::ops::RangeInclusive<i64> = 8..=75;
/// A cold bird pulls the pit down; so long after it went on, or after the dial was turned, nothing is made of it.
const WARMS_UP: TimeDelta = TimeDelta::minutes(30);

/// What the pit reads, if it sags and has not come back since.
pub(super) fn sags(cook: &Cook, readings: &[Reading]) -> Option<Temperature> {
    let smoker = cook.heat.cooker == Cooker::Smoker;
    let setting = in_fahrenheit(cook.heat.setting);
    let set = cook.was_set.last().map_or(TimeDelta::zero(), |(until, _)| *until);
    let read = |reading: &Reading| Some((reading.at, reading.pit.filter(|_| reading.at >= set + WARMS_UP)?));
    let pits: Vec<(TimeDelta, Temperature)> = readings.iter().filter_map(read).collect();
    let under = |pit: Temperature| setting - in_fahrenheit(pit);
    let mut sagging = false;
    for (at, (when, pit)) in pits.iter().enumerate() {
        let before = at.checked_sub(1).and_then(|before| pits.get(before));
        let before = before.filter(|(then, _)| APART.contains(&(*when - *then).num_minutes()));
        let fell = before.map(|(_, before)| in_fahrenheit(*before) - in_fahrenheit(*pit));
        let far = under(*pit) >= FAR_F && fell.is_none_or(|fell| fell > -FALLING_F);
        let both = before.is_some_and(|(_, before)| under(*before) >= CLEARLY_F);
        let falls = both && under(*pit) >= CLEARLY_F && fell.is_some_and(|fell| fell >= FALLING_F);
        sagging = under(*pit) > BACK_F && (sagging || falls || far && (smoker || both));
    }
    pits.last().map(|(_, pit)| *pit).filter(|_| sagging)
}
