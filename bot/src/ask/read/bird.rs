//! Questions of the bird: how big, for how many, how long it thaws and roasts.

use super::Asked;
use crate::ask::question::{BirdSaid, Question};
use carvetime_core::bird::{BirdMass, Condition, Diners, Form, Kind};
use carvetime_core::fuel::Fuel;
use carvetime_core::quantity::{Amount, Unit, celsius, fahrenheit, grams, in_fahrenheit};
use carvetime_core::roast::{Cooker, Heat};

impl Asked<'_> {
    pub(super) fn about_bird(&self) -> Option<Question> {
        let bird = self.bird();
        let birdish = self.wish.kind.is_some() || self.has("bird-any") || self.wish.mass_g.is_some();
        let each = self.has("label-per") && self.has("people");
        let people = each || self.wish.adults.is_some() || self.wish.children.is_some();
        if let Some(fuel) = self.places().find_map(|at| self.s.of(at, "fuel-")).and_then(Fuel::from_name) {
            return Some(Question::Fuel { fuel, span: self.span() });
        }
        let in_water = self.has("thawing-cold-water") && self.has("ask-how-long");
        // "How long in the fridge for 6 kg": nothing roasts there.
        let heated = self.any(&["ask-roast", "ask-cook", "cooker-oven", "cooker-fan-oven", "cooker-smoker"]);
        let in_fridge = self.has("place-fridge") && self.has("ask-how-long") && self.wish.mass_g.is_some() && !heated;
        let how = self.has("ask-how") && self.names_nothing_else();
        // "Is it too late to thaw?"
        let in_time = self.has("ask-in-time");
        // "Took it out of the freezer on Monday, can I roast it Friday?"
        let from_to = self.day_to_day().is_some();
        if in_water
            || in_fridge
            || self.has("ask-thaw") && (birdish || self.has("ask-how-long") || how || in_time || from_to)
        {
            return Some(Question::ThawTime { bird });
        }
        let how_big = self.any(&["ask-how-big", "ask-how-much"]);
        let told_only = self.wish.mass_g.is_none() && self.wish.dinner.is_none() && self.wish.dinner_day.is_none();
        if people && told_only && self.wish.children.is_some() && !self.has("ask-how-long") {
            return Some(Question::BirdFor { kind: self.kind(), diners: self.diners() });
        }
        if people && (how_big || birdish && self.wish.mass_g.is_none()) && !self.has("ask-how-long") {
            return Some(Question::BirdFor { kind: self.kind(), diners: self.diners() });
        }
        let told = self.wish.adults.is_some() || self.has("ask-safe");
        let feeds = self.any(&["ask-how-many", "people"]) || self.places().any(|at| self.is_for(at)) && told;
        if feeds && self.wish.mass_g.is_some() && !self.has("ask-how-long") {
            return Some(Question::PeopleFor { bird });
        }
        if self.has("ask-bigger") && !self.has("ask-how-long") {
            return Some(Question::PeopleFor { bird });
        }
        let heat = self.heat();
        let cooking = self.any(&["ask-roast", "cooker-oven", "cooker-fan-oven", "cooker-smoker"]) || heat.is_some();
        if birdish && (cooking || self.has("ask-how-long")) {
            let frozen_only = self.has("condition-frozen") && !cooking;
            return Some(if frozen_only { Question::ThawTime { bird } } else { Question::RoastTime { bird, heat } });
        }
        // "How long does it need at 425": no meat is that hot.
        let hot = self.oven_setting().is_some_and(|setting| in_fahrenheit(setting) > 212.0);
        if (cooking || hot) && self.has("ask-how-long") || self.asks_time_by_weight() {
            return Some(Question::RoastTime { bird, heat });
        }
        if birdish && self.has("thawing-cook-frozen") && self.wish.dinner.is_none() {
            return Some(Question::RoastTime { bird, heat });
        }
        // "Roast at 300": of the setting alone it can be said whether it will do.
        let said = self.wish.setting_c.or_else(|| self.bare_setting()).is_some();
        let setting = heat.filter(|_| said && self.has("ask-roast") && !birdish && !people).map(|heat| heat.setting);
        setting.map(|setting| Question::OvenTemperature { setting: Some(setting), smoker: self.smoked() })
    }

    /// "How do I thaw it": no word of it names anything of its own. A windshield thaws as well.
    pub(super) fn names_nothing_else(&self) -> bool {
        let empty = |at: usize| {
            let word = crate::reading::fold(self.s.raw(at));
            ["filler", "mine-link", "manners"].iter().any(|group| self.asker.ground.lexicon.talk(&word, group))
        };
        self.places().all(|at| !self.is_unknown_word(at) || empty(at))
    }

    pub(super) fn kind(&self) -> Kind {
        self.wish.kind.as_deref().and_then(Kind::from_name).unwrap_or(Kind::Turkey)
    }

    pub(super) fn bird(&self) -> BirdSaid {
        BirdSaid {
            kind: self.kind(),
            mass: self.wish.mass_g.and_then(|g| BirdMass::new(grams(g)).ok()),
            condition: self.wish.condition.as_deref().and_then(Condition::from_name),
            form: self.wish.form.as_deref().and_then(Form::from_name).unwrap_or(Form::Whole),
            stuffed: self.wish.stuffed.unwrap_or(false),
            solution: self.wish.solution_percent,
        }
    }

    pub(super) fn diners(&self) -> Diners {
        Diners {
            adults: self.wish.adults.unwrap_or(0),
            children: self.wish.children.unwrap_or(0),
            leftovers: self.wish.leftovers.unwrap_or(false),
        }
    }

    /// Cooker and setting; 325 °F where only one of them was said.
    pub(super) fn heat(&self) -> Option<Heat> {
        let cooker = self.wish.cooker.as_deref().and_then(Cooker::from_name);
        let setting = self.wish.setting_c.or_else(|| self.bare_setting()).map(celsius);
        (cooker.is_some() || setting.is_some())
            .then(|| Heat { cooker: cooker.unwrap_or(Cooker::Oven), setting: setting.unwrap_or(fahrenheit(325.0)) })
    }

    /// "How long per kilo at 180": a weight's unit without its number.
    pub(super) fn asks_time_by_weight(&self) -> bool {
        let unit = |at: usize| self.s.of(at, "unit-").and_then(Unit::from_name);
        let bare = |at: usize| matches!(unit(at), Some(Unit::Pound | Unit::MetricPound | Unit::Kilogram));
        let other = self.any(&["salt-any", "salting-dry", "salting-wet", "ask-thaw", "step-thaw", "ask-keep"]);
        self.has("ask-how-long") && !other && (self.places().any(bare) || self.per_unit().is_some())
    }

    /// `a 180`, `at 325`: a number behind "at" that no clock shows, in °C. What no oven in °C goes to is °F everywhere.
    pub(super) fn bare_setting(&self) -> Option<f64> {
        let metric = self.asker.ground.metric;
        let range = if metric { 100.0..=600.0 } else { 200.0..=600.0 };
        let said = |at: usize| {
            let before = at.checked_sub(1)?;
            let joined = self.s.is(before, "at") || self.s.is(before, "number-to");
            let degrees = || self.s.amount(at).filter(|a| a.unit() == Some(Unit::Degree)).map(Amount::value);
            let value = self.s.number(at).or_else(degrees);
            value.filter(|value| joined && range.contains(value) && !self.counted(at))
        };
        let value = self.places().find_map(said)?;
        Some(if metric && value <= 290.0 { value } else { (value - 32.0) / 1.8 })
    }
}
