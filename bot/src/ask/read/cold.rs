//! What is to stay cold and does not: a fridge without power, a raw bird measured too warm. And who it is for: the old and the very young.

use super::Asked;
use crate::ask::{Advice, Habit, Question};
use crate::reading::Told;
use carvetime_core::quantity::{Measure, Temperature, celsius, fahrenheit, in_fahrenheit};
use carvetime_core::safety as rules;
use chrono::TimeDelta;

/// A fridge that stays shut is cold for about so long. Source: [`carvetime_core::source`], `power-outage`.
const UNOPENED: TimeDelta = TimeDelta::hours(4);
/// What a fridge keeps at most, °F. Source: `danger-zone`.
const COLD_F: f64 = 40.0;
/// The air of no kitchen is hotter, °F: more is an oven's, or the meat's.
const HOTTEST_AIR_F: f64 = 130.0;
/// Young and old enough to be at risk, in years. Source: `food-poisoning`.
const YOUNG: f64 = 5.0;
const OLD: f64 = 65.0;

impl Asked<'_> {
    pub(super) fn about_cold(&self) -> Option<Question> {
        self.about_power()
            .or_else(|| self.about_leftovers_at())
            .or_else(|| self.about_raw_at())
            .or_else(|| self.about_the_frail())
    }

    /// "Power was out 5 hours, the raw turkey in the fridge, ok?"
    fn about_power(&self) -> Option<Question> {
        let heated = self.any(&["cooker-oven", "cooker-fan-oven", "cooker-smoker", "ask-roast", "ask-cook"]);
        let cold = self.any(&["place-fridge", "food-raw"]);
        let off =
            self.has("habit-fridge-down") || self.has("power-cut") && cold && !heated && !self.has("place-freezer");
        off.then(|| match self.span() {
            Some(span) if span > UNOPENED => Question::FridgeOff(span),
            _ => Question::Advice(Advice::Habit(Habit::FridgeDown)),
        })
    }

    /// "The turkey in the fridge is at 48": above what keeps it.
    fn about_raw_at(&self) -> Option<Question> {
        const HOTTEST_F: f64 = 75.0;
        // "Thaw it in the garage at 46?"
        let thaws = self.any(&["ask-thaw", "condition-frozen"]) && self.has("ask-garage");
        let kept = self.has("place-fridge") || self.has("food-raw") || thaws;
        let heated = self.any(&["cooker-oven", "cooker-fan-oven", "cooker-smoker", "ask-out"])
            || !thaws && self.any(&["ask-thaw", "ask-garage"]);
        if !kept || heated || !self.birdish() || self.wish.mass_g.is_some() || self.span().is_some() {
            return None;
        }
        let at = self.own_scale()?;
        let warm = in_fahrenheit(at) > COLD_F && in_fahrenheit(at) <= HOTTEST_F;
        (warm && (self.degrees_said() || self.scaled())).then_some(Question::ColdAt(at))
    }

    /// "The leftovers read 48 after the drive", "arrived, they read 48": above what keeps them, and not kept hot.
    fn about_leftovers_at(&self) -> Option<Question> {
        let told = Told::of(self.text(), self.asker.ground.lexicon);
        // "Arrived, they read 48", and nothing else in it.
        let lexicon = self.asker.ground.lexicon;
        let known = |word: &String| word.contains(|c: char| c.is_ascii_digit()) || lexicon.knows(word);
        let here = told.says("arrived") && told.says("they-read") && told.words().iter().all(known);
        let other = ["cooker-oven", "cooker-fan-oven", "cooker-smoker", "ask-reheat", "ask-cool", "place-fridge"];
        let other = self.any(&other) || self.any(&["place-freezer", "food-raw", "ask-thaw", "condition-frozen"]);
        let weather = self.is_weather() || self.has("ask-garage") && !self.has("drive") && self.span().is_none();
        if !(here || told.says("leftovers-plain")) || other || weather || self.wish.mass_g.is_some() {
            return None;
        }
        let at = self.own_scale()?;
        let hot = rules::US_HOT_HOLD_CONSUMER.temperature().map_or(140.0, in_fahrenheit);
        let warm = in_fahrenheit(at) > COLD_F && in_fahrenheit(at) < hot;
        let read = self.degrees_said() || self.scaled() || told.says("they-read");
        (warm && read).then_some(Question::LeftoversAt(at))
    }

    /// "My grandma is 82, can she eat it?"
    fn about_the_frail(&self) -> Option<Question> {
        let of_risk = |at: usize| self.s.number(at).filter(|_| self.s.is(at + 1, "age-years"));
        let frail = self.places().filter_map(of_risk).any(|years| years <= YOUNG || years >= OLD);
        let dinner = self.wish.dinner.is_some() || self.wish.dinner_day.is_some() || self.wish.mass_g.is_some();
        (frail && self.any(&["ask-safe", "may-eat"]) && !dinner && self.span().is_none())
            .then_some(Question::Advice(Advice::Habit(Habit::Fragile)))
    }

    /// How hot it is where something stands out, where that was told: "in the sun, 34 degrees".
    pub(super) fn air(&self) -> Option<Temperature> {
        let told = self.degrees_said() || self.scaled();
        self.own_scale().filter(|at| told && in_fahrenheit(*at) <= HOTTEST_AIR_F)
    }

    /// The temperature told, in the asker's scale where none is named.
    fn own_scale(&self) -> Option<Temperature> {
        Some(match self.temperature()? {
            Ok(at) => at,
            Err(bare) if self.asker.ground.metric => celsius(bare),
            Err(bare) => fahrenheit(bare),
        })
    }

    /// A temperature was written with its scale.
    fn scaled(&self) -> bool {
        self.amounts(Measure::Temperature).any(|(_, amount)| amount.temperature().is_some())
    }
}
