//! Questions of temperatures and of hours: whether it is done, how long it is held, what the oven is set to.

use super::{Asked, SLOW};
use crate::ask::question::Question;
use crate::reading::{Lean, When, last_at, read_when};
use carvetime_core::quantity::{Amount, Measure, Temperature, Unit, celsius, fahrenheit, in_fahrenheit};
use chrono::{NaiveTime, TimeDelta};

/// Coldest bare number anyone asks about as a bird's temperature.
const COLDEST_BARE: f64 = 30.0;
/// Hottest bare number that could be °C inside meat: above, only °F makes sense.
const BARE_FAHRENHEIT_FROM: f64 = 110.0;
/// What people with a thermometer in °C ask about without its letter.
const DONE_CELSIUS: std::ops::RangeInclusive<f64> = 55.0..=95.0;
/// The same where they have °F.
const DONE_FAHRENHEIT: std::ops::RangeInclusive<f64> = 130.0..=190.0;

impl Asked<'_> {
    /// "Can I cook it overnight at 80 degrees", and not "it was left in the oven overnight".
    pub(super) fn cooks_overnight(&self) -> bool {
        let hot = self.oven_setting().is_some_and(|setting| in_fahrenheit(setting) >= 120.0);
        !self.has("ask-left") && (self.has("ask-cook") || hot)
    }

    /// "Roast it at 90", "at a low temperature": not "cook it to 165", and no spot of the bird.
    pub(super) fn cooks_at(&self) -> bool {
        const WARM_F: f64 = 120.0;
        let spot = self.places().any(|at| self.s.of(at, "spot-").is_some_and(|spot| spot != "pit"));
        let warm = self.oven_setting().is_some_and(|setting| in_fahrenheit(setting) >= WARM_F);
        let number = |at: usize| {
            let degrees = self.s.amount(at).is_some_and(|amount| amount.measure() == Some(Measure::Temperature));
            degrees || self.s.number(at).is_some() && !self.counted(at)
        };
        let at = self.places().any(|at| number(at) && at > 0 && self.s.is(at - 1, "at"));
        warm && !spot && (self.has("ask-low-heat") || self.has("ask-cook") && at)
    }

    pub(super) fn smoked(&self) -> bool {
        self.has("cooker-smoker")
    }

    /// The temperature told, taken for an oven's: °C where ovens have °C.
    pub(super) fn oven_setting(&self) -> Option<Temperature> {
        Some(match self.temperature()? {
            Ok(temperature) => temperature,
            Err(bare) if self.asker.ground.metric => celsius(bare),
            Err(bare) => fahrenheit(bare),
        })
    }

    /// "Is 70 degrees enough in the breast?", "breast at 68, done?": yes or no is the answer.
    pub(super) fn asks_done(&self) -> bool {
        let spot = self.places().any(|at| self.s.of(at, "spot-").is_some_and(|spot| spot != "pit"));
        let usual = if self.asker.ground.metric { DONE_CELSIUS } else { DONE_FAHRENHEIT };
        let told = self.temperature().and_then(Result::err).is_some_and(|bare| usual.contains(&bare));
        let scaled = told || self.amounts(Measure::Temperature).next().is_some();
        let asks = self.has("ask-done") && (spot || scaled) || self.has("ask-safe") && spot;
        asks && self.span().is_none() && !self.has("ask-how-long")
    }

    /// A temperature with a time, or with the word safe.
    pub(super) fn lethality(&self) -> Option<Question> {
        // "Is 70 dollars enough?"
        if self.asks_time_by_weight() || self.has("money") {
            return None;
        }
        let turned = self.has("ask-into") && !self.has("ask-safe") && !self.asks_done();
        if self.wish.mass_g.is_some() || turned && self.span().is_none() {
            return None;
        }
        let temperature = self.temperature()?;
        let held = self.span();
        let done = self.asks_done();
        // "Pull it at 155, it'll rise": whether it may come off so.
        let asked = self.any(&["ask-safe", "ask-how-long", "ask-pull"]) || done;
        let oven = self.any(&["cooker-oven", "cooker-fan-oven", "cooker-smoker"]);
        // "62 in the breast after 3 hours in the oven": of the meat, and not held for three hours.
        let (oven, held, done) = match oven && self.names_meat_spot() {
            true => (false, None, true),
            false => (oven, held, done),
        };
        let asked = asked || done;
        if !(asked || held.is_some()) {
            return None;
        }
        // "25 December, 17 h" answers when dinner is.
        let dated = self.wish.dinner.is_some() || self.wish.dinner_day.is_some() || self.wish.dinner_hour.is_some();
        if dated && !asked && temperature.is_err() {
            return None;
        }
        // "Ok then dinner at 5:30": a number this small is an hour, or people.
        if temperature.is_err_and(|bare| bare < COLDEST_BARE) && !self.degrees_said() {
            return None;
        }
        // "It took 8 hours to get to 140": on the way up is not held.
        if let (Some(span), true, Ok(temperature)) = (held, self.has("ask-come-up"), self.in_meat(temperature)) {
            return Some(Question::ComeUp { span, temperature });
        }
        // "Can I roast it at 90 degrees": the oven's, and too cool a one.
        if let Some(setting) = self.oven_setting().filter(|_| asked && self.cooks_at()) {
            return Some(Question::OvenTemperature { setting: Some(setting), smoker: self.smoked() });
        }
        let slow = held.is_some_and(|held| held >= SLOW) && !self.has("place-cold") && !self.names_meat_spot();
        // "Can I raise it to 190?", "are 4 hours at 180 enough?", where ovens have °C.
        if let Err(bare) = temperature
            && self.asker.ground.metric
            && (asked || slow)
            && (100.0..=290.0).contains(&bare)
        {
            return Some(Question::OvenTemperature { setting: Some(celsius(bare)), smoker: self.smoked() });
        }
        // Nobody holds a bird at one temperature for hours: that is an oven, and too cool a one.
        let warm = |t: &Temperature| in_fahrenheit(*t) >= 139.5;
        if let Some(setting) = self.in_meat(temperature).ok().filter(|t| slow && warm(t)) {
            return Some(Question::OvenTemperature { setting: Some(setting), smoker: self.smoked() });
        }
        // Hotter than boiling water it can only be the air, whatever is said of cooking.
        let air = match temperature {
            Ok(temperature) => Some(temperature).filter(|t| in_fahrenheit(*t) > 212.0),
            // "Oven at 120 degrees", where ovens have °C.
            Err(bare) if self.asker.ground.metric && self.degrees_said() && (100.0..=290.0).contains(&bare) => {
                Some(celsius(bare))
            }
            Err(bare) => Some(fahrenheit(bare)).filter(|_| bare > 212.0),
        };
        if let Some(air) = air.filter(|_| held.is_none() && (oven || self.has("ask-roast")) && self.has("ask-safe")) {
            return Some(Question::OvenTemperature { setting: Some(air), smoker: self.smoked() });
        }
        // "How long does it need at 425": in the oven.
        if air.is_some() && held.is_none() && self.has("ask-how-long") && !self.has("ask-safe") {
            return None;
        }
        // "Is 250 safe?": no bird on a table is that hot. Which cooker was not said.
        if let Some(air) = air.filter(|_| held.is_none() && !oven && self.has("ask-safe")) {
            return Some(Question::OvenTemperature { setting: Some(air), smoker: true });
        }
        if oven {
            return None;
        }
        // "C'est bon à 68 ?", where everyone's thermometer is in °C. With minutes told it is no matter of taste which scale it is.
        let temperature = match temperature {
            Err(bare) if self.asker.ground.metric && held.is_none() && DONE_CELSIUS.contains(&bare) => {
                Ok(celsius(bare))
            }
            told => told,
        };
        let (temperature, bare) = match self.in_meat(temperature) {
            Ok(temperature) => (Some(temperature), None),
            Err(bare) => (None, Some(bare)),
        };
        // Whoever asks whether it is safe wants a yes or a no as well, and no minutes.
        let done = done || held.is_none() && self.any(&["ask-safe", "ask-pull"]) && !self.has("ask-how-long");
        let stuffing = self.any(&["food-stuffing", "ask-stuff"]) && !self.names_meat_spot();
        Some(Question::Lethality { temperature, bare, held, done, stuffing, kind: self.kind() })
    }

    /// Breast, thigh or wing: where the bird is measured, not its stuffing.
    pub(super) fn names_meat_spot(&self) -> bool {
        self.any(&["spot-breast", "spot-thigh", "spot-wing"])
    }

    /// The temperature of meat, where the scale is told or plain.
    pub(super) fn in_meat(&self, told: Result<Temperature, f64>) -> Result<Temperature, f64> {
        match told {
            Err(bare) if bare >= BARE_FAHRENHEIT_FROM => Ok(fahrenheit(bare)),
            // Where everyone has a thermometer in °C, 68 is 68 °C; nobody asks whether a bird of 68 °F is done.
            Err(bare) if self.asker.ground.metric && self.degrees_said() => Ok(celsius(bare)),
            told => told,
        }
    }

    /// "158 F in the breast and 150 in the thigh": the second has no letter.
    pub(super) fn of_other_spot(&self, told: usize) -> Option<Temperature> {
        let spots = self.places().filter(|at| self.s.of(*at, "spot-").is_some()).count();
        let meat = |at| self.s.number(at).filter(|n| !self.counted(at) && (100.0..=212.0).contains(n));
        self.places().filter_map(meat).next().filter(|_| told == 1 && spots > 1).map(fahrenheit)
    }

    /// The temperature, of several the coldest: with a scale, or the bare number. A scale alone at the end belongs to the bare number.
    pub(super) fn temperature(&self) -> Option<Result<Temperature, f64>> {
        // Of several the coldest spot counts.
        let told: Vec<Temperature> =
            self.amounts(Measure::Temperature).filter_map(|(_, amount)| amount.temperature()).collect();
        let colder =
            |one: Temperature, other: Temperature| if in_fahrenheit(other) < in_fahrenheit(one) { other } else { one };
        if let Some(coldest) = told.iter().copied().reduce(colder) {
            return Some(Ok(self.of_other_spot(told.len()).map_or(coldest, |other| colder(coldest, other))));
        }
        let degrees = self.amounts(Measure::Temperature).map(|(_, amount)| amount.value()).next();
        let spots = self.places().filter(|at| self.s.of(*at, "spot-").is_some()).count();
        let mut numbers = self.places().filter_map(|at| self.s.number(at).filter(|_| !self.counted(at)));
        // "The breast is 165 but the thigh is 150"
        let mut number = || if spots > 1 { numbers.by_ref().reduce(f64::min) } else { numbers.next() };
        let bare = degrees.or_else(&mut number)?;
        let scale = self.places().rev().find_map(|at| match self.s.of(at, "unit-")? {
            "fahrenheit" => Some(fahrenheit(bare)),
            "celsius" => Some(celsius(bare)),
            _ => None,
        });
        Some(scale.ok_or(bare))
    }

    /// Whether a number was written with "degrees" and no scale.
    pub(super) fn degrees_said(&self) -> bool {
        self.amounts(Measure::Temperature).any(|(_, amount)| amount.unit() == Some(Unit::Degree))
    }

    /// Whether the bare number at `at` counts people or weeks.
    pub(super) fn counted(&self, at: usize) -> bool {
        ["people", "adults", "children", "unit-week", "unit-month", "age-years"]
            .iter()
            .any(|concept| self.s.is(at + 1, concept))
    }

    /// An amount of hours that a clock shows in the afternoon, or with its part of the day: `14h`, `13h30`, `1h du matin`.
    pub(super) fn is_clock(&self, at: usize) -> bool {
        const FROM: TimeDelta = TimeDelta::hours(13);
        const TO: TimeDelta = TimeDelta::hours(24);
        let hours = self.s.amount(at).filter(|amount| amount.unit() == Some(Unit::Hour));
        let of_day = self.s.of(at + 1, "part-").is_some();
        hours.and_then(Amount::span).is_some_and(|span| (FROM <= span || of_day) && span < TO)
    }

    /// "Às 12h", "um 12h": a word that only a clock's hour follows, and whole hours.
    pub(super) fn is_hour_of_day(&self, at: usize) -> bool {
        let told = at.checked_sub(1).is_some_and(|before| self.s.is(before, "at-clock"));
        told && self.s.amount(at).is_some_and(|amount| amount.unit() == Some(Unit::Hour) && amount.value() <= 24.0)
    }

    /// "From 9 until 1 in the morning": so many hours, however long ago that was.
    fn hour_to_hour(&self) -> Option<TimeDelta> {
        /// Words between a link and its hour: "hasta la 1".
        const NEAR: usize = 2;
        let lexicon = self.asker.ground.lexicon;
        let says = |at: usize, group: &str| lexicon.talk(&lexicon.talk_words(self.s.raw(at)).join(" "), group);
        let hour = |link: usize| (link + 1..=link + NEAR).find_map(|at| Some((at, self.s.whole(at, 0..=24)?)));
        let starts = |at: &usize| self.s.is(*at, "since") || says(*at, "from");
        let (at, from) = self.places().filter(starts).find_map(hour)?;
        let (_, to) = (at + 1..=at + 3).filter(|at| says(*at, "until")).find_map(hour)?;
        let day = if from > 12 || to > 12 { 24 } else { 12 };
        let hours = (to + day - from) % day;
        Some(TimeDelta::hours(if hours == 0 { day } else { hours }.into()))
    }

    /// "Since 4:30", "since 9 am": how long that is by now.
    pub(super) fn since_hour(&self) -> Option<TimeDelta> {
        if let Some(span) = self.hour_to_hour() {
            return Some(span);
        }
        let from = self.s.find(0, "since")? + 1;
        if let Some(span) = self.s.amount(from).and_then(Amount::span).filter(|_| self.is_clock(from)) {
            // "8h du soir"
            let later = self.s.is(from + 1, "part-afternoon") && span < TimeDelta::hours(12);
            let span = if later { span + TimeDelta::hours(12) } else { span };
            let hour = NaiveTime::MIN.overflowing_add_signed(span).0;
            return Some(self.asker.ground.now - last_at(&self.asker.ground, hour));
        }
        let mut taken = vec![false; self.s.len()];
        taken.iter_mut().take(from).for_each(|taken| *taken = true);
        let ground = &self.asker.ground;
        match read_when(self.s, &mut taken, ground, Lean::Past) {
            Some(When::Hour(hour)) => Some(ground.now - last_at(ground, hour)),
            Some(When::Moment(at)) => Some(ground.now - at),
            Some(When::Day(_)) => None,
            // "Since 1": the last time a clock's hand stood there.
            None => {
                let article = self.s.is(from, "on") && self.s.number(from).is_none();
                let hour = self.s.whole(from + usize::from(article), 1..=12)?;
                let hands = [hour % 12, hour % 12 + 12].into_iter();
                let last =
                    hands.filter_map(|hour| NaiveTime::from_hms_opt(hour, 0, 0)).map(|hour| last_at(ground, hour));
                last.max().map(|at| ground.now - at)
            }
        }
        .filter(|span| *span > TimeDelta::zero() && *span < TimeDelta::days(3))
    }
}
