//! Questions of danger and of food: fire indoors, hot oil, left out, kept, reheated, cooled, stuffed.

use super::Asked;
use crate::ask::question::Question;
use crate::ask::{Advice, Habit};
use crate::reading::{Told, only_speaks_of_frying, puts_into_warm_water};
use carvetime_core::quantity::Measure;
use carvetime_core::safety::Food;
use chrono::TimeDelta;

impl Asked<'_> {
    pub(super) fn about_danger(&self) -> Option<Question> {
        let burning = self.any(&["fuel-charcoal", "cooker-smoker", "fuel-propane", "fuel-pellets"]);
        if burning && self.has("ask-indoors") {
            return Some(Question::CharcoalIndoors);
        }
        if self.has("fryer") && !only_speaks_of_frying(self.text(), self.asker.ground.lexicon) {
            let frozen = self.any(&["condition-frozen", "condition-part-thawed", "thawing-cook-frozen"]);
            return Some(Question::Fry { bird: self.bird(), frozen });
        }
        if self.has("ask-wash") {
            return Some(Question::Wash);
        }
        let thawing = self.any(&["ask-thaw", "thawing-cold-water"]) || self.has("condition-frozen");
        // "Put it in cold water in the sink", told: that is how it is done.
        let asks = self.any(&["ask-safe", "ask-how", "ask-leave", "ask-help"])
            || self.places().any(|at| self.s.mark(at) == Some('?'));
        let as_it_should = self.has("thawing-cold-water") && !self.has("ask-hot-water") && !asks;
        // "Shall I put it in the warm water?", and nothing else that water is for.
        let asks_mark = self.places().any(|at| self.s.mark(at) == Some('?'));
        let salting = self.any(&["salting-wet", "salting-dry", "salt-any", "food-gravy", "food-soup"]);
        if asks_mark && !salting && puts_into_warm_water(self.text(), self.asker.ground.lexicon) {
            return Some(Question::CounterThaw);
        }
        if thawing && self.has("ask-counter") && !self.has("food-leftovers") && !as_it_should {
            return Some(Question::CounterThaw);
        }
        None
    }

    /// "Can I make broth of them?": of the bones, what else.
    pub(super) fn about_broth(&self) -> Option<Question> {
        let told = Told::of(self.text(), self.asker.ground.lexicon);
        let asks = self.places().any(|at| self.s.mark(at) == Some('?')) || told.opens_with("ask-may");
        let numbers = self.places().any(|at| self.s.number(at).is_some() || self.s.amount(at).is_some());
        let other = told.says("other-food") || self.any(&["ask-keep", "place-fridge", "place-freezer", "food-giblets"]);
        (asks && told.says("makes-broth") && !numbers && !other)
            .then_some(Question::Advice(Advice::Habit(Habit::Carcass)))
    }

    pub(super) fn about_food(&self) -> Option<Question> {
        let safe = self.has("ask-safe");
        let out = self.has("ask-out");
        let how_long = self.any(&["ask-how-long", "ask-how-many", "ask-how-much"]);
        let cooked = self.any(&["food-leftovers", "food-gravy", "food-stuffing", "food-soup"]);
        // "Quanto tempo fica no forno": what stays in the oven is not kept.
        let cooking = (self.has("cooker-oven") || self.has("ask-roast")) && !cooked;
        let stored = self.any(&["place-fridge", "place-freezer"]);
        let inner = self.has("ask-temperature") && !cooked && !stored;
        // "Can I still eat the pizza": how long that keeps nobody told us.
        let other = || Told::of(self.text(), self.asker.ground.lexicon).says("other-food");
        let keep = self.any(&["ask-keep", "ask-past-date"]) && !cooking && !inner;
        let keep = keep && (cooked || self.birdish() || !other());
        // "How long in the fridge after cooking": nothing roasts there.
        if stored && how_long && Told::of(self.text(), self.asker.ground.lexicon).says("after-cooking") {
            let food = if cooked { self.food() } else { Food::Leftovers };
            return Some(Question::Keeps { food, raw_too: false, place: self.kept_at(), age: None });
        }
        // "How do I keep the goose warm"
        if self.any(&["ask-keep-hot", "habit-cools"])
            || keep && self.has("ask-warm") && !stored && self.span().is_none()
        {
            return Some(Question::HoldHot);
        }
        // "Leave it on the counter to warm up first": nothing is cooked yet.
        let warms_up = self.has("ask-counter") && self.any(&["ask-leave", "ask-left"]) && !cooked;
        if self.has("ask-reheat") && Told::of(self.text(), self.asker.ground.lexicon).says("twice") {
            return Some(Question::Advice(Advice::Habit(Habit::ReheatTwice)));
        }
        // "They were lukewarm after the 3 hour drive"
        let driven = self.any(&["drive", "way-home"])
            && Told::of(self.text(), self.asker.ground.lexicon).says("lukewarm")
            && self.span().is_some();
        if driven && !stored {
            return Some(Question::LeftOut { ahead: false, span: self.span(), air: self.air() });
        }
        if self.has("ask-reheat") && !warms_up {
            return Some(Question::Reheat { food: self.food() });
        }
        if self.has("ask-refreeze") {
            return Some(Question::Refreeze);
        }
        let overnight = self.has("ask-overnight").then(|| TimeDelta::hours(8));
        if overnight.is_some() && !out && !cooked && self.cooks_overnight() {
            return Some(Question::OvenTemperature { setting: self.oven_setting(), smoker: self.smoked() });
        }
        let out = out || overnight.is_some() && safe;
        if out && self.has("ask-thaw") && !cooked && !self.has("ago") {
            return Some(Question::CounterThaw);
        }
        // "Sortie à 10h40" says when, not for how long.
        let out_since = if out { self.since_hour() } else { None };
        // "Depuis 13h30": nobody counts thirteen hours and a half.
        let hour = |at: usize| {
            at.checked_sub(1)
                .is_some_and(|before| self.s.is(before, "number-to") || self.s.is(before, "since") && self.is_clock(at))
        };
        let only_hours = self.amounts(Measure::Span).all(|(at, _)| hour(at));
        // "Depuis 1h du matin, il est 8h": beside an hour since when, another is the clock's as well.
        let since =
            self.amounts(Measure::Span).any(|(at, _)| at > 0 && self.s.is(at - 1, "since") && self.is_clock(at));
        let span = self.span().filter(|_| !only_hours && !since).or(out_since).or(overnight);
        if out && how_long && span.is_none() {
            return Some(Question::LeftOut { ahead: false, span: Some(TimeDelta::zero()), air: None });
        }
        if out && (span.is_some() || safe || how_long || keep) && !self.has("ask-deep") {
            let ahead = self.has("ask-leave") && !self.any(&["ask-left", "ago", "since"]);
            // "Can I just leave it on the counter?": for however long, the rule is the answer.
            let span = span.or(ahead.then(TimeDelta::zero));
            return Some(Question::LeftOut { ahead, span, air: self.air() });
        }
        if let Some(lethality) = self.lethality() {
            return Some(lethality);
        }
        let aged = !self.has("ask-roast") || self.any(&["ago", "at-home"]);
        let age_of_food = safe && self.span().is_some_and(|span| span >= TimeDelta::days(1)) && aged;
        let giblets = self.has("food-giblets") && (how_long || stored || safe);
        let since = self.has("since")
            && (stored || self.any(&["ask-thaw", "condition-fresh"]))
            && (safe || self.since_a_day().is_some());
        let still_good = self.has("food-leftovers") && safe && self.temperature().is_none() && !self.birdish();
        // "A ceia fica pras 23h": a meal is set, and nothing is kept.
        let meal = self.places().any(|at| self.s.of(at, "meal-").is_some() && !self.s.is(at, "food-leftovers"));
        let sets_hour = meal && self.amounts(Measure::Span).any(|(at, _)| self.is_hour_of_day(at)) && !cooked;
        let keep = keep && !sets_hour;
        if keep || age_of_food || giblets || still_good || since || cooked && stored && (how_long || safe) {
            let (food, raw_too) = self.food_and_doubt();
            let age = self.span().or_else(|| self.day_to_day()).or_else(|| self.since_a_day());
            return Some(Question::Keeps { food, raw_too, place: self.kept_at(), age });
        }
        // "Is it ok Monday to Thursday in the fridge?": raw or not was not said.
        if let Some(age) = self.day_to_day().filter(|_| stored && safe) {
            let (food, raw_too) = (self.food(), self.food() == carvetime_core::safety::Food::Leftovers && !cooked);
            return Some(Question::Keeps { food, raw_too, place: self.kept_at(), age: Some(age) });
        }
        if self.has("ask-cool") && !self.has("place-freezer") && (cooked || how_long || safe || self.s.len() <= 6) {
            return Some(Question::Cooling);
        }
        if self.has("ask-temperature") && self.temperature().is_none() && self.wish.mass_g.is_none() {
            let oven = self.any(&["cooker-oven", "cooker-fan-oven", "cooker-smoker"]);
            return Some(if oven {
                Question::OvenTemperature { setting: None, smoker: self.smoked() }
            } else {
                Question::SafeTemperature { stuffing: self.has("ask-stuff"), colour: false }
            });
        }
        if self.has("ask-colour") && self.wish.mass_g.is_none() && !self.has("habit-inject") {
            return Some(Question::SafeTemperature { stuffing: false, colour: true });
        }
        if self.has("ask-stand") && how_long && !self.has("salt-any") {
            return Some(Question::Stand);
        }
        // "Can I freeze them?", and nothing else is named.
        let freezes = self.has("place-freezer") && !self.any(&["condition-frozen", "ask-thaw"]) && !self.birdish();
        let bare = self.s.len() <= 6 && !self.places().any(|at| self.s.number(at).is_some());
        if freezes && bare && Told::of(self.text(), self.asker.ground.lexicon).opens_with("ask-may") {
            return Some(Question::Keeps { food: self.food(), raw_too: false, place: self.kept_at(), age: None });
        }
        let in_it = self.has("stuffed") && safe && self.wish.mass_g.is_none() && self.temperature().is_none();
        if (self.any(&["ask-stuff", "food-stuffing"]) || in_it) && !how_long && !self.has("ask-roast") {
            return Some(Question::Stuffing);
        }
        None
    }
}
