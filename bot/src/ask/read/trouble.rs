//! Questions of what went wrong, or might: an outage, a stall, a bird still frozen, a smell, a fridge that is full.

use super::{Asked, SLOW};
use crate::ask::question::Question;
use crate::ask::{Advice, Habit};
use crate::reading::{Told, tells_of_frost};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_fahrenheit};
use carvetime_core::safety::{Verdict, left_out};
use chrono::TimeDelta;

/// Bare numbers from here on are years.
const YEARS: f64 = 1900.0;

impl Asked<'_> {
    /// "The bones sat out all night, can I make stock?": no stock is made of them.
    pub(super) fn bones_left_out(&self) -> Option<Question> {
        let night = self.has("ask-overnight").then(|| TimeDelta::hours(8));
        let span = self.span().or(night);
        let stood = self.any(&["ask-out", "ask-left", "ask-counter"]) && !self.has("place-fridge");
        if !self.has("habit-carcass") || !stood {
            return None;
        }
        let broth = self.any(&["food-soup", "food-gravy"])
            || Told::of(self.text(), self.asker.ground.lexicon).says("makes-broth");
        match span {
            Some(span) if matches!(left_out(self.air(), span), Verdict::Fine { .. }) => {
                Some(Question::LeftOut { ahead: false, span: Some(span), air: self.air() })
            }
            None if !broth => None,
            _ => Some(Question::Advice(Advice::Habit(Habit::BonesOut))),
        }
    }

    pub(super) fn about_trouble(&self) -> Option<Question> {
        let frozen = self.any(&["condition-frozen", "condition-part-thawed"]);
        let thawed = self.any(&["ask-thaw", "condition-fresh", "condition-frozen"]);
        let cooking = self.any(&["ask-roast", "cooker-oven", "cooker-smoker"]) || self.birdish();
        let told = if self.stuffing_is_slow() {
            Advice::StuffingSlow
        } else if self.has("ask-oven-down") && !self.has("nearly-out") {
            Advice::OvenDown
        } else if self.has("ask-too-fast") && cooking {
            Advice::TooFast
        } else if self.stalls() {
            Advice::Stall
        } else if self.has("ask-too-slow") && thawed {
            Advice::StillFrozen
        } else if self.has("ask-too-slow") {
            Advice::TooSlow
        } else if self.asks_to_cook_frozen() {
            Advice::FromFrozen
        } else if self.has("ask-tell") && self.any(&["ask-thaw", "condition-fresh"]) && self.temperature().is_none() {
            Advice::IsThawed
        } else if frozen && self.has("ask-help") && !self.has("ask-hot-water") {
            Advice::StillFrozen
        } else if self.asks_of_a_cold_place() {
            Advice::ColdPlace
        } else if self.has("ask-garage")
            && (thawed && !tells_of_frost(self.text(), self.asker.ground.lexicon)
                || self.has("ask-leave") && self.has("ask-safe")
                || self.is_cold_out() && !self.is_weather())
            && !self.any(&["fuel-charcoal", "fuel-propane", "fryer"])
            && !self.has("food-leftovers")
        {
            Advice::GarageThaw
        } else if self.has("ask-baste") && !Told::of(self.text(), self.asker.ground.lexicon).says("fell") {
            Advice::Baste
        } else if self.has("ask-foil") {
            Advice::Foil
        } else if self.has("ask-past-date") && !self.any(&["food-leftovers", "food-gravy", "food-soup"]) {
            Advice::PastDate
        } else if self.smells_bad() {
            Advice::Smell
        } else if self.has("ask-where") && self.has("ask-thermometer") {
            Advice::Thermometer
        } else if self.has("ask-no-thermometer") || self.has("ask-thermometer") && self.asks_which_thermometer() {
            Advice::WhichThermometer
        } else if self.has("place-fridge") && self.has("ask-no-room") {
            Advice::NoRoom
        } else if self.is_on_the_road()
            || self.has("ask-carry-hot")
            || self.has("hot") && self.has("bring") && self.has("ask-safe") && self.span().is_none()
            || self.has("ask-carry") && self.asks_how_to_carry()
        {
            Advice::CarryFood
        } else if self.has("place-fridge") && !self.has("ask-out") && self.asks_of_fridge() {
            Advice::Fridge
        } else if self.stuffs_ahead() {
            Advice::StuffAhead
        } else if (self.kosher_bird() || self.salted_already()) && !self.has("ask-out") {
            Advice::KosherBird
        } else if self.has("ask-low-salt") && self.wish.mass_g.is_none() {
            Advice::LowSalt
        } else {
            return self.enough().or_else(|| self.side());
        };
        Some(match self.fridge_told().filter(|_| told == Advice::Fridge) {
            Some(at) => Question::FridgeAt(at),
            None => Question::Advice(told),
        })
    }

    /// "The stuffing won't get there, what do we do", "shall we take it out and finish it in a pan?"; with its number it is measured.
    pub(super) fn stuffing_is_slow(&self) -> bool {
        let told = Told::of(self.text(), self.asker.ground.lexicon);
        let asks = self.places().any(|at| self.s.mark(at) == Some('?')) || self.any(&["ask-help", "ask-how"]);
        let asks = asks || told.says("what-now");
        told.says("stuffing-slow") && asks && self.temperature().is_none()
    }

    /// "Can I stuff it the night before?", "keep the raw stuffing in the fridge overnight"; what is cooked keeps as leftovers do.
    pub(super) fn stuffs_ahead(&self) -> bool {
        let cooked = self.any(&["food-leftovers", "ask-reheat"]);
        let raw = Told::of(self.text(), self.asker.ground.lexicon).says("stuffing-raw");
        let asks = self.any(&["ask-safe", "ask-keep", "ask-how", "place-fridge"])
            || self.places().any(|at| self.s.mark(at) == Some('?'));
        let ahead = self.any(&["ahead", "ask-keep", "ask-how-long"]) || self.has("place-fridge") && asks;
        let stuffing = self.any(&["ask-stuff", "food-stuffing"]);
        raw && ahead && !self.has("ask-reheat") || stuffing && self.has("ahead") && asks && !cooked
    }

    /// "Stuck at 138", "is that the stall?", "should we wrap it?": a number, or nothing else is spoken of.
    pub(super) fn stalls(&self) -> bool {
        // "The train is stuck, I won't be there before 22h": by the clock.
        let measured = |at: usize| self.s.amount(at).is_some_and(|amount| amount.span().is_none());
        let counts = || self.places().any(|at| self.s.number(at).is_some() || measured(at));
        // "My thermometer says 140 and it's been 4 hours"
        let long = self.has("ask-thermometer") && self.span().is_some_and(|span| span >= SLOW) && counts();
        let heated = self.any(&["cooker-oven", "cooker-fan-oven", "cooker-smoker", "ask-out"]);
        self.has("ask-stall") && (counts() || self.names_nothing_else()) || long && !heated && !self.has("ask-hold")
    }

    /// "Can the turkey go on the balcony?": asked before it stands there; what thawed or lay there is another matter.
    pub(super) fn asks_of_a_cold_place(&self) -> bool {
        if !self.has("ask-garage") {
            return false;
        }
        let lead = self.s.quote(0, self.s.len().saturating_sub(1));
        let asks = Told::of(lead, self.asker.ground.lexicon).opens_with("ask-may");
        let food = self.birdish() || self.any(&["food-leftovers", "food-raw", "food-gravy", "food-stuffing"]);
        let cold = self.is_cold_out() && !self.is_weather();
        let past = self.any(&["ask-left", "heat-was", "ask-thaw", "condition-fresh", "condition-frozen", "ask-cook"]);
        let other =
            self.any(&["fuel-charcoal", "fuel-propane", "fryer", "cooker-smoker", "ask-carry", "bring", "drive"]);
        asks && (food || cold) && !past && !other && self.span().is_none()
    }

    /// What a fridge is said to be at, in the asker's scale where none is named.
    pub(super) fn fridge_told(&self) -> Option<Temperature> {
        const HOTTEST_F: f64 = 75.0;
        let at = match self.temperature()? {
            Ok(at) => at,
            Err(bare) if self.asker.ground.metric => celsius(bare),
            Err(bare) => fahrenheit(bare),
        };
        (20.0..=HOTTEST_F).contains(&in_fahrenheit(at)).then_some(at)
    }

    /// "Enough for 15?": whom the bird in hand feeds.
    pub(super) fn enough(&self) -> Option<Question> {
        const MOST: u32 = 200;
        let counts = |at: usize| (at + 1..=at + 2).any(|next| self.s.whole(next, 2..=MOST).is_some());
        let asked = self.places().any(|at| self.s.is(at, "ask-enough") && counts(at));
        let other =
            self.wish.mass_g.is_some() || self.wish.kind.is_some() || self.any(&["food-stuffing", "food-gravy"]);
        (asked && !other && !self.any(&["salt-any", "salting-dry", "salting-wet"]))
            .then(|| Question::PeopleFor { bird: self.bird() })
    }

    /// "Can I cook it from frozen": with a weight it is how long that takes.
    pub(super) fn asks_to_cook_frozen(&self) -> bool {
        let frozen = self.has("thawing-cook-frozen") || self.has("condition-frozen");
        let heated = self.any(&["thawing-cook-frozen", "ask-cook", "cooker-oven", "cooker-fan-oven", "cooker-smoker"]);
        let other = self.any(&["fryer", "ask-counter", "ask-thaw", "ask-how-long", "food-leftovers", "ask-keep"]);
        let told = self.wish.mass_g.is_some() || self.wish.dinner.is_some() || self.wish.dinner_day.is_some();
        frozen && heated && self.has("ask-safe") && !other && !told
    }

    /// "What thermometer do I need", "I have no thermometer".
    pub(super) fn asks_which_thermometer(&self) -> bool {
        // "From like 1990": a year, and no degrees.
        let counts = |at: usize| {
            self.s.number(at).is_some_and(|number| number < YEARS)
                || self.s.amount(at).is_some_and(|amount| amount.bare().is_none())
        };
        !self.places().any(counts) && self.any(&["ask-how", "ask-safe", "ask-help", "negation"])
    }

    /// "How do I carry the leftovers", not "my brother will carry it".
    pub(super) fn asks_how_to_carry(&self) -> bool {
        let food = self.any(&["food-leftovers", "food-gravy", "food-stuffing"]) || self.birdish();
        food && self.any(&["ask-how", "ask-safe"]) && self.wish.dinner.is_none()
    }

    /// How cold a fridge is to be, or whether it is cold enough.
    pub(super) fn asks_of_fridge(&self) -> bool {
        let told = self.temperature().is_some() && self.span().is_none() && !self.birdish();
        self.has("ask-temperature") || told
    }

    /// `kosher turkey`, `pavo kosher`, with salt or brine in question.
    pub(super) fn kosher_bird(&self) -> bool {
        let beside = |at: usize| {
            self.s.is(at, "salt-kosher")
                && [at.checked_sub(1), Some(at + 1)].into_iter().flatten().any(|at| self.s.of(at, "bird-").is_some())
        };
        self.places().any(beside) && self.amount_of_salt().is_none()
    }

    /// "It came salted, do I still salt it?"
    pub(super) fn salted_already(&self) -> bool {
        let comes = self.any(&["salted-already", "habit-comes-salted"]);
        let asks =
            self.any(&["ask-safe", "ask-how-much", "ask-how", "habit-must", "salt-any", "step-salt", "ask-help"]);
        let asked = asks || self.places().any(|at| self.s.mark(at) == Some('?'));
        let told = self.wish.mass_g.is_some() || self.wish.dinner.is_some() || self.wish.dinner_day.is_some();
        // "8 % solution, do I salt it?": how much it has is told, how heavy it is not.
        let labelled = self.wish.solution_percent.is_some() && self.any(&["salt-any", "step-salt"]);
        (labelled && !self.has("ask-how-much") || comes && self.wish.solution_percent.is_none()) && asked && !told
    }

    /// "On the balcony, it's 3 degrees": the air is told, and it is a fridge's or colder.
    pub(super) fn is_cold_out(&self) -> bool {
        const COLD_F: f64 = 50.0;
        self.oven_setting().is_some_and(|air| in_fahrenheit(air) <= COLD_F)
    }

    /// "34 outside": of no food.
    pub(super) fn is_weather(&self) -> bool {
        let food = (0..self.s.len()).any(|at| self.s.of(at, "food-").is_some() || self.s.of(at, "dish-").is_some());
        let asks = self.any(&["ask-safe", "ask-leave", "ask-left", "ask-how", "ask-how-long", "ask-keep", "ask-when"]);
        let marked = self.places().any(|at| self.s.mark(at) == Some('?'));
        self.has("ask-out") && !food && !asks && !marked && !self.birdish()
    }

    /// It smells bad, or it is asked of its smell; "smells so good" is neither.
    pub(super) fn smells_bad(&self) -> bool {
        let asked = self.birdish() || self.has("ask-safe") || self.has("food-raw");
        self.has("ask-smell-bad") || self.has("ask-smell") && !self.has("ask-smell-good") && asked
    }

    /// `stuffing for 8`, `gravy for 10`.
    pub(super) fn side(&self) -> Option<Question> {
        let people = self.wish.adults.unwrap_or(0).saturating_add(self.wish.children.unwrap_or(0));
        let stuffing = self.has("food-stuffing");
        let asked = (stuffing || self.has("food-gravy")) && self.wish.mass_g.is_none();
        let bird = self.wish.kind.is_some() && !self.has("ask-how-much");
        (asked && people > 0 && !bird).then_some(Question::Side { stuffing, people })
    }
}
