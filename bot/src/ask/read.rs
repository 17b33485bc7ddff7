//! From words to a [`Question`]: which kind it is by the meanings that occur, then its amounts.
//!
//! The kinds are tried from the most telling to the least: a word such as "rinse" settles it, a bare amount comes last.
//! Order of words matters only for which salt is turned into which.

mod cold;
mod kept;

use super::question::{BirdSaid, Question, SaltSaid};
use super::{Advice, Asker, habit, oversalt, usual_grain};
use crate::reading::sentence::{Sentence, What};
use crate::reading::{
    Lean, Problem, Told, When, Wish, last_at, only_speaks_of_frying, read_off_dial, read_peril, read_pull_ahead,
    read_unwell, read_warm_thaw, read_when, read_wish, shared, sits_somewhere, tells_of_frost, wants_degrees,
};
use crate::words::{Text, UnitSystem};
use carvetime_core::bird::{BirdMass, Condition, Diners, Form, Kind};
use carvetime_core::fuel::Fuel;
use carvetime_core::quantity::{
    Amount, Measure, SpoonSystem, Temperature, Unit, celsius, fahrenheit, grams, in_fahrenheit,
};
use carvetime_core::roast::{Cooker, Heat};
use carvetime_core::safety::Food;
use carvetime_core::salt::{Grain, Strength};
use chrono::{NaiveTime, TimeDelta};

/// Why there is no answer.
#[derive(Debug, Clone, PartialEq)]
pub enum NotUnderstood {
    /// Nothing that can be answered was found.
    Unknown,
    /// It was understood, and a value cannot be right.
    Wrong(Problem),
    /// It was understood, and can't be as described.
    Impossible(Text),
}

impl NotUnderstood {
    /// What is wrong, or what can be asked.
    pub fn text(&self) -> Text {
        match self {
            Self::Unknown => Text::new("ask-unknown"),
            Self::Wrong(problem) => problem.text(),
            Self::Impossible(text) => text.clone(),
        }
    }
}

/// Coldest bare number anyone asks about as a bird's temperature.
const COLDEST_BARE: f64 = 30.0;
/// Hottest bare number that could be °C inside meat: above, only °F makes sense.
const BARE_FAHRENHEIT_FROM: f64 = 110.0;
/// What people with a thermometer in °C ask about without its letter.
const DONE_CELSIUS: std::ops::RangeInclusive<f64> = 55.0..=95.0;
/// The same where they have °F.
const DONE_FAHRENHEIT: std::ops::RangeInclusive<f64> = 130.0..=190.0;
/// Bare numbers from here on are years.
const YEARS: f64 = 1900.0;
/// So long at one temperature is cooking, not holding.
const SLOW: TimeDelta = TimeDelta::hours(2);
/// Longest question read; what comes after is left unread.
const LONGEST: usize = 2000;

/// Reads a question.
///
/// # Errors
/// [`NotUnderstood`].
pub fn read_question(text: &str, asker: &Asker) -> Result<Question, NotUnderstood> {
    Result::clone(&shared(text, asker, read))
}

fn read(text: &str, asker: &Asker) -> Result<Question, NotUnderstood> {
    let text: String = text.chars().take(LONGEST).collect();
    if let Some(peril) = read_peril(&text, asker.ground.lexicon) {
        return Ok(Question::Peril(peril));
    }
    if let Some(health) = read_unwell(&text, asker.ground.lexicon) {
        return Ok(Question::Unwell(health.what));
    }
    if let Some((place, _)) = read_warm_thaw(&text, asker.ground.lexicon) {
        return Ok(Question::WarmThaw(place));
    }
    let sentence = Sentence::read(&text, asker.ground.lexicon);
    let (wish, problems) = read_wish(&text, &asker.ground);
    // "Runs 25 hot, 14 lb bird for 8": a dinner told of comes first.
    let dinner = wish.mass_g.is_some() || wish.adults.is_some();
    if let Some(told) = read_off_dial(&text, asker.ground.metric, asker.ground.lexicon).filter(|_| !dinner) {
        return Ok(Question::OffDial(told));
    }
    let asked = Asked { s: &sentence, wish: &wish, asker };
    if wants_degrees(&text, &asker.ground) && wish.mass_g.is_none() {
        let stuffing = sentence.has("spot-stuffing") && !asked.names_meat_spot();
        return Ok(Question::SafeTemperature { stuffing, colour: false });
    }
    if let Some(at) =
        read_pull_ahead(&text, asker.ground.metric, asker.ground.lexicon).filter(|_| wish.mass_g.is_none())
    {
        let (temperature, kind) = (Some(at), asked.kind());
        return Ok(Question::Lethality { temperature, bare: None, held: None, done: true, stuffing: false, kind });
    }
    let wrong =
        problems.into_iter().find(|p| matches!(p, Problem::Mass(_) | Problem::Guests(_) | Problem::Solution(_)));
    let sits = sits_somewhere(&text, asker.ground.lexicon) && !asked.birdish();
    // "Sat on the couch since 5": no food does.
    let question = asked.question().filter(|question| !(sits && matches!(question, Question::LeftOut { .. })));
    match (question, wrong) {
        // "Is 145 safe for turkey" is no weight.
        (Some(question @ (Question::Lethality { .. } | Question::OvenTemperature { .. })), Some(Problem::Mass(_))) => {
            Ok(question)
        }
        // A mass that is no bird's is fine where no bird is meant.
        (
            Some(question @ (Question::SaltConvert { .. } | Question::SaltWeigh { .. } | Question::OverSalt { .. })),
            _,
        ) => Ok(question),
        (Some(question @ (Question::UnitConvert { .. } | Question::OwnSalt { .. })), _) => Ok(question),
        (_, Some(problem)) => Err(NotUnderstood::Wrong(problem)),
        (Some(question), None) => Ok(question),
        (None, None) => Err(NotUnderstood::Unknown),
    }
}

struct Asked<'a> {
    s: &'a Sentence,
    wish: &'a Wish,
    asker: &'a Asker,
}

impl Asked<'_> {
    fn question(&self) -> Option<Question> {
        self.about_another_bird()
            .or_else(|| self.over_salt())
            .or_else(|| self.bones_left_out())
            .or_else(|| self.about_cold())
            .or_else(|| self.about_habits())
            .or_else(|| self.about_trouble())
            .or_else(|| self.about_salt())
            .or_else(|| self.about_danger())
            .or_else(|| self.about_food())
            .or_else(|| self.about_bird())
            .or_else(|| self.about_units())
    }

    /// All of it.
    fn text(&self) -> &str {
        self.s.quote(0, self.s.len().saturating_sub(1))
    }

    fn has(&self, concept: &str) -> bool {
        self.s.has(concept)
    }

    fn any(&self, concepts: &[&str]) -> bool {
        concepts.iter().any(|concept| self.has(concept))
    }

    fn places(&self) -> std::ops::Range<usize> {
        0..self.s.len()
    }

    fn amounts(&self, measure: Measure) -> impl Iterator<Item = (usize, &Amount)> {
        self.places().filter_map(move |at| Some((at, self.s.amount(at).filter(|a| a.measure() == Some(measure))?)))
    }

    fn span(&self) -> Option<TimeDelta> {
        let said =
            self.amounts(Measure::Span).find_map(|(at, amount)| amount.span().filter(|_| !self.is_hour_of_day(at)));
        said.or_else(|| {
            let weeks = self.places().find_map(|at| self.s.number(at).filter(|_| self.s.is(at + 1, "unit-week")))?;
            TimeDelta::try_days((weeks * 7.0).clamp(0.0, 5000.0) as i64)
        })
    }

    /// Times, weights and salt for a bird there are no times for; how long its leftovers keep is told as of any.
    fn about_another_bird(&self) -> Option<Question> {
        let numbered =
            self.any(&["ask-how-long", "ask-how-big", "ask-how-much", "ask-roast", "ask-thaw", "ask-cook", "salt-any"]);
        let asked = self.wish.mass_g.is_some() || numbered || self.any(&["ask-how", "ask-temperature", "cooker-oven"]);
        let of_any =
            self.any(&["ask-out", "ask-keep", "food-leftovers", "ask-reheat", "ask-smell", "ask-wash", "fryer"]);
        (self.has("other-bird") && self.wish.kind.is_none() && asked && !of_any)
            .then_some(Question::Advice(Advice::OtherBird))
    }

    /// How something is done, where nothing is told that would be answered by a number.
    fn about_habits(&self) -> Option<Question> {
        let wish = self.wish;
        let people = wish.adults.is_some() || wish.children.is_some();
        let told = wish.mass_g.is_some() || wish.dinner.is_some() || wish.dinner_day.is_some() || people;
        let numbers = told || self.places().any(|at| self.s.number(at).is_some() || self.s.amount(at).is_some());
        if self.has("ask-stand") && self.has("habit-must") && !numbers && !self.any(&["salt-any", "place-fridge"]) {
            return Some(Question::Stand);
        }
        habit::asked(|meaning| self.has(meaning), numbers).map(|habit| Question::Advice(Advice::Habit(habit)))
    }

    /// "I put 3 tbsp of salt on it, too much?"
    fn over_salt(&self) -> Option<Question> {
        oversalt::read(self.s, self.bird(), self.salts().first().map(|(_, salt)| *salt))
    }

    // ---- what went wrong

    /// "The bones sat out all night, can I make stock?": no stock is made of them.
    fn bones_left_out(&self) -> Option<Question> {
        let night = self.has("ask-overnight").then(|| TimeDelta::hours(8));
        let span = Some(self.span().or(night)?);
        let out = self.has("habit-carcass") && self.any(&["ask-out", "ask-left"]) && !self.has("place-fridge");
        out.then(|| Question::LeftOut { ahead: false, span, air: self.air() })
    }

    fn about_trouble(&self) -> Option<Question> {
        let frozen = self.any(&["condition-frozen", "condition-part-thawed"]);
        let thawed = self.any(&["ask-thaw", "condition-fresh", "condition-frozen"]);
        let cooking = self.any(&["ask-roast", "cooker-oven", "cooker-smoker"]) || self.birdish();
        let told = if self.has("ask-oven-down") && !self.has("nearly-out") {
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
        } else if self.has("ask-baste") {
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
        } else if self.has("ask-stuff") && self.has("ahead") && self.has("ask-safe") {
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

    /// "Stuck at 138", "is that the stall?", "should we wrap it?": a number, or nothing else is spoken of.
    fn stalls(&self) -> bool {
        let counts = || self.places().any(|at| self.s.number(at).is_some() || self.s.amount(at).is_some());
        // "My thermometer says 140 and it's been 4 hours"
        let long = self.has("ask-thermometer") && self.span().is_some_and(|span| span >= SLOW) && counts();
        let heated = self.any(&["cooker-oven", "cooker-fan-oven", "cooker-smoker", "ask-out"]);
        self.has("ask-stall") && (counts() || self.names_nothing_else()) || long && !heated && !self.has("ask-hold")
    }

    /// "Can the turkey go on the balcony?": asked before it stands there; what thawed or lay there is another matter.
    fn asks_of_a_cold_place(&self) -> bool {
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
    fn fridge_told(&self) -> Option<Temperature> {
        const HOTTEST_F: f64 = 75.0;
        let at = match self.temperature()? {
            Ok(at) => at,
            Err(bare) if self.asker.ground.metric => celsius(bare),
            Err(bare) => fahrenheit(bare),
        };
        (20.0..=HOTTEST_F).contains(&in_fahrenheit(at)).then_some(at)
    }

    /// "Enough for 15?": whom the bird in hand feeds.
    fn enough(&self) -> Option<Question> {
        const MOST: u32 = 200;
        let counts = |at: usize| (at + 1..=at + 2).any(|next| self.s.whole(next, 2..=MOST).is_some());
        let asked = self.places().any(|at| self.s.is(at, "ask-enough") && counts(at));
        let other =
            self.wish.mass_g.is_some() || self.wish.kind.is_some() || self.any(&["food-stuffing", "food-gravy"]);
        (asked && !other && !self.any(&["salt-any", "salting-dry", "salting-wet"]))
            .then(|| Question::PeopleFor { bird: self.bird() })
    }

    /// "Can I cook it from frozen": with a weight it is how long that takes.
    fn asks_to_cook_frozen(&self) -> bool {
        let frozen = self.has("thawing-cook-frozen") || self.has("condition-frozen");
        let heated = self.any(&["thawing-cook-frozen", "ask-cook", "cooker-oven", "cooker-fan-oven", "cooker-smoker"]);
        let other = self.any(&["fryer", "ask-counter", "ask-thaw", "ask-how-long", "food-leftovers", "ask-keep"]);
        let told = self.wish.mass_g.is_some() || self.wish.dinner.is_some() || self.wish.dinner_day.is_some();
        frozen && heated && self.has("ask-safe") && !other && !told
    }

    /// "What thermometer do I need", "I have no thermometer".
    fn asks_which_thermometer(&self) -> bool {
        // "From like 1990": a year, and no degrees.
        let counts = |at: usize| {
            self.s.number(at).is_some_and(|number| number < YEARS)
                || self.s.amount(at).is_some_and(|amount| amount.bare().is_none())
        };
        !self.places().any(counts) && self.any(&["ask-how", "ask-safe", "ask-help", "negation"])
    }

    /// "How do I carry the leftovers", not "my brother will carry it".
    fn asks_how_to_carry(&self) -> bool {
        let food = self.any(&["food-leftovers", "food-gravy", "food-stuffing"]) || self.birdish();
        food && self.any(&["ask-how", "ask-safe"]) && self.wish.dinner.is_none()
    }

    /// How cold a fridge is to be, or whether it is cold enough.
    fn asks_of_fridge(&self) -> bool {
        let told = self.temperature().is_some() && self.span().is_none() && !self.birdish();
        self.has("ask-temperature") || told
    }

    /// `kosher turkey`, `pavo kosher`, with salt or brine in question.
    fn kosher_bird(&self) -> bool {
        let beside = |at: usize| {
            self.s.is(at, "salt-kosher")
                && [at.checked_sub(1), Some(at + 1)].into_iter().flatten().any(|at| self.s.of(at, "bird-").is_some())
        };
        self.places().any(beside) && self.amount_of_salt().is_none()
    }

    /// "It came salted, do I still salt it?"
    fn salted_already(&self) -> bool {
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
    fn is_cold_out(&self) -> bool {
        const COLD_F: f64 = 50.0;
        self.oven_setting().is_some_and(|air| in_fahrenheit(air) <= COLD_F)
    }

    /// "34 outside": of no food.
    fn is_weather(&self) -> bool {
        let food = (0..self.s.len()).any(|at| self.s.of(at, "food-").is_some() || self.s.of(at, "dish-").is_some());
        let asks = self.any(&["ask-safe", "ask-leave", "ask-left", "ask-how", "ask-how-long", "ask-keep", "ask-when"]);
        let marked = self.places().any(|at| self.s.mark(at) == Some('?'));
        self.has("ask-out") && !food && !asks && !marked && !self.birdish()
    }

    /// It smells bad, or it is asked of its smell; "smells so good" is neither.
    fn smells_bad(&self) -> bool {
        let asked = self.birdish() || self.has("ask-safe") || self.has("food-raw");
        self.has("ask-smell-bad") || self.has("ask-smell") && !self.has("ask-smell-good") && asked
    }

    /// `stuffing for 8`, `gravy for 10`.
    fn side(&self) -> Option<Question> {
        let people = self.wish.adults.unwrap_or(0).saturating_add(self.wish.children.unwrap_or(0));
        let stuffing = self.has("food-stuffing");
        let asked = (stuffing || self.has("food-gravy")) && self.wish.mass_g.is_none();
        let bird = self.wish.kind.is_some() && !self.has("ask-how-much");
        (asked && people > 0 && !bird).then_some(Question::Side { stuffing, people })
    }

    fn birdish(&self) -> bool {
        self.wish.kind.is_some() || self.has("bird-any") || self.wish.mass_g.is_some()
    }

    /// "for", and not the word that turns one unit into another (Italian "in 8", "in grammi").
    fn is_for(&self, at: usize) -> bool {
        self.s.is(at, "for") && !self.s.is(at, "ask-into")
    }

    /// The unit behind "per": `per pound`, `por kilo`, `a gallon`.
    fn per_unit(&self) -> Option<Unit> {
        let bare = |at: usize| self.s.of(at, "unit-").and_then(Unit::from_name);
        let one = |at: usize| self.s.amount(at).filter(|amount| amount.value() == 1.0)?.unit();
        self.places().find_map(|at| {
            if self.s.is(at, "label-per") {
                return bare(at + 1).or_else(|| one(at + 1));
            }
            // "sale per chilo"
            self.is_for(at).then(|| bare(at + 1)).flatten()
        })
    }

    // ---- salt

    /// Salts in the order named.
    fn salts(&self) -> Vec<(usize, SaltSaid)> {
        let named = |at: usize| match self.s.of(at, "salt-")? {
            "own" => Some(SaltSaid::Own),
            "kosher" => Some(SaltSaid::Kosher),
            name => Grain::from_name(name).map(SaltSaid::Grain),
        };
        let mut salts: Vec<(usize, SaltSaid)> = self.places().filter_map(|at| Some((at, named(at)?))).collect();
        // "... kosher ... coarse kosher": the reply to which kosher it is.
        let reply = salts.last().map(|(_, salt)| *salt);
        let kosher = salts.iter().position(|(_, salt)| *salt == SaltSaid::Kosher);
        if let (Some(kosher), Some(SaltSaid::Grain(Grain::FlakeKosher | Grain::CoarseKosher))) = (kosher, reply) {
            let enough = if self.amount_of_salt().is_some() && self.has("ask-into") { 3 } else { 2 };
            let told_later = kosher + 1 < salts.len() && salts.len() >= enough;
            if let Some((_, told)) = told_later.then(|| salts.pop()).flatten() {
                salts.iter_mut().skip(kosher).take(1).for_each(|(_, salt)| *salt = told);
            }
        }
        salts
    }

    fn amount_of_salt(&self) -> Option<(usize, &Amount)> {
        self.places().find_map(|at| {
            let amount = self.s.amount(at)?;
            matches!(amount.measure(), Some(Measure::Mass | Measure::Volume)).then_some((at, amount))
        })
    }

    fn about_salt(&self) -> Option<Question> {
        let salts = self.salts();
        let amount = self.amount_of_salt();
        if let Some(own) = self.own_salt(&salts) {
            return Some(own);
        }
        let about_bird = self.wish.kind.is_some() || self.has("bird-any");
        if let [(_, salt)] = salts[..]
            && self.has("ask-only")
            && amount.is_none()
            && self.wish.mass_g.is_none()
            && !self.any(&["ask-how-much", "ask-how-many", "ask-safe"])
            && !self.places().any(|at| self.s.mark(at) == Some('?') || self.s.of(at, "dish-").is_some())
        {
            return Some(Question::OnlySalt { salt });
        }
        let one = salts.first().map(|(_, salt)| *salt);
        if salts.len() >= 2 && !self.has("sodium") {
            // The salt behind the amount is the one at hand; without one there, the first named.
            let from_at = amount.and_then(|(at, _)| salts.iter().position(|(salt, _)| *salt > at)).unwrap_or(0);
            let (_, from) = *salts.get(from_at)?;
            let (_, to) = *salts.iter().enumerate().find(|(n, _)| *n != from_at)?.1;
            let amount = amount.map(|(_, amount)| amount.clone());
            return Some(Question::SaltConvert { amount, from, to });
        }
        let brine = self.has("salting-wet") && !self.has("salting-dry");
        let per = self.per_unit();
        if (self.has("salt-any") || one.is_some()) && !brine && self.wish.solution_percent.is_none() {
            if let Some(unit @ (Unit::Pound | Unit::MetricPound | Unit::Kilogram)) = per {
                return Some(Question::SaltPer { kilogram: unit != Unit::Pound, salt: one });
            }
            // "How many grams is a tablespoon of salt": of which salt was not said.
            let spoon = amount.filter(|(_, amount)| amount.measure() == Some(Measure::Volume) && !about_bird);
            let kosher = one == Some(SaltSaid::Kosher);
            if let Some(volume) =
                spoon.and_then(|(_, a)| a.volume(self.asker.spoons)).filter(|_| kosher || one.is_none())
            {
                return Some(Question::SpoonWeights { volume, kosher });
            }
        }
        if brine && self.has("ask-how-long") && self.wish.mass_g.is_none() && !self.has("ask-deep") {
            return Some(Question::BrineTime);
        }
        if self.has("ask-deep") && (self.has("salt-any") || one.is_some() || brine || self.has("salting-dry")) {
            return Some(Question::SaltDepth { rest: self.span() });
        }
        if self.has("sodium") {
            return Some(Question::Sodium { bird: self.bird(), people: self.wish.adults, salt: one });
        }
        if brine {
            let percent = self.amounts(Measure::Percent).find_map(|(_, amount)| amount.percent());
            // "4 liters of water" says how much water there is, not what the percentage is of.
            let measured = |at: usize| self.amounts(Measure::Volume).any(|(volume, _)| volume + 1 == at);
            let of_water = (0..self.s.len()).any(|at| self.s.is(at, "ask-of-water") && !measured(at));
            let water = self.amounts(Measure::Volume).find_map(|(_, amount)| amount.volume(self.asker.spoons));
            let one_of = |unit: Unit| unit.milliliters(self.asker.spoons).map(carvetime_core::quantity::milliliters);
            let water = water.or_else(|| per.filter(|unit| unit.measure() == Measure::Volume).and_then(one_of));
            return Some(Question::Brine { percent, of_water, water, bird: self.bird(), salt: one });
        }
        let salted = self.any(&["salt-any", "salting-dry"]) || one.is_some();
        if let (None, Some((at, amount)), false, true) = (one, amount, about_bird, self.has("salt-any"))
            && amount.mass().is_some_and(|mass| BirdMass::new(mass).is_err_and(|error| mass < error.low))
            && !at.checked_sub(1).is_some_and(|before| self.is_for(before))
        {
            // "20 g salt": no bird is as light, the salt is meant.
            let own = self.asker.own_salt.is_some();
            let usual = SaltSaid::Grain(usual_grain(self.asker.units == UnitSystem::Us));
            let salt = if own { SaltSaid::Own } else { usual };
            return Some(Question::SaltWeigh { amount: amount.clone(), salt });
        }
        if let (Some(salt), Some((_, amount)), false) = (one, amount, about_bird) {
            // Pounds of salt are a bird's weight told beside a salt.
            let heavy = matches!(amount.unit(), Some(Unit::Pound | Unit::MetricPound | Unit::Kilogram));
            let of_bird = heavy && (self.has("ask-how-much") || self.weighs_a_bird());
            if !of_bird {
                return Some(Question::SaltWeigh { amount: amount.clone(), salt });
            }
        }
        if salted && (about_bird || self.wish.mass_g.is_some() || self.any(&["ask-how-much", "salting-dry"])) {
            let strength = match (self.has("strength-light"), self.has("strength-bold")) {
                (true, false) => Strength::Light,
                (false, true) => Strength::Bold,
                _ => Strength::Usual,
            };
            return Some(Question::SaltDose { bird: self.bird(), salt: one, strength });
        }
        None
    }

    /// "Coarse salt for 5 kg", "salt for 4.5 kg in coarse salt": what the salt is for, and no salt to be measured out.
    fn weighs_a_bird(&self) -> bool {
        const LIGHTEST_G: f64 = 600.0;
        let is_for = |at: usize| at.checked_sub(1).is_some_and(|before| self.is_for(before));
        self.amounts(Measure::Mass).any(|(at, amount)| {
            is_for(at) && amount.mass().is_some_and(|mass| carvetime_core::quantity::in_grams(mass) >= LIGHTEST_G)
        })
    }

    /// `my salt: 1/4 tsp is 0.7 g`, `my salt has 280 mg sodium per 1/4 tsp`.
    fn own_salt(&self, salts: &[(usize, SaltSaid)]) -> Option<Question> {
        if !matches!(salts, [(_, SaltSaid::Own)]) {
            return None;
        }
        let volume = self.amounts(Measure::Volume).find_map(|(_, amount)| amount.volume(self.asker.spoons))?;
        let sodium_at = self.s.find(0, "sodium");
        let masses: Vec<_> =
            self.amounts(Measure::Mass).filter_map(|(at, amount)| Some((at, amount.unit()?, amount.mass()?))).collect();
        let sodium = sodium_at.and_then(|place| {
            let milligrams = masses.iter().find(|(_, unit, _)| *unit == Unit::Milligram);
            milligrams.or_else(|| masses.iter().min_by_key(|(at, _, _)| at.abs_diff(place)))
        });
        let mass = masses.iter().find(|(at, _, _)| sodium.is_none_or(|(sodium, _, _)| at != sodium));
        (sodium.is_some() || mass.is_some()).then(|| Question::OwnSalt {
            volume,
            mass: mass.map(|(_, _, mass)| *mass),
            sodium: sodium.map(|(_, _, mass)| *mass),
        })
    }

    // ---- danger

    fn about_danger(&self) -> Option<Question> {
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
        if thawing && self.has("ask-counter") && !self.has("food-leftovers") && !as_it_should {
            return Some(Question::CounterThaw);
        }
        None
    }

    // ---- safety of food

    fn about_food(&self) -> Option<Question> {
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
        if self.has("ask-keep-hot") || keep && self.has("ask-warm") && !stored && self.span().is_none() {
            return Some(Question::HoldHot);
        }
        // "Leave it on the counter to warm up first": nothing is cooked yet.
        let warms_up = self.has("ask-counter") && self.any(&["ask-leave", "ask-left"]) && !cooked;
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
        let in_it = self.has("stuffed") && safe && self.wish.mass_g.is_none() && self.temperature().is_none();
        if (self.any(&["ask-stuff", "food-stuffing"]) || in_it) && !how_long && !self.has("ask-roast") {
            return Some(Question::Stuffing);
        }
        None
    }

    /// "Can I cook it overnight at 80 degrees", and not "it was left in the oven overnight".
    fn cooks_overnight(&self) -> bool {
        let hot = self.oven_setting().is_some_and(|setting| in_fahrenheit(setting) >= 120.0);
        !self.has("ask-left") && (self.has("ask-cook") || hot)
    }

    /// "Roast it at 90", "at a low temperature": not "cook it to 165", and no spot of the bird.
    fn cooks_at(&self) -> bool {
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

    fn smoked(&self) -> bool {
        self.has("cooker-smoker")
    }

    /// The temperature told, taken for an oven's: °C where ovens have °C.
    fn oven_setting(&self) -> Option<Temperature> {
        Some(match self.temperature()? {
            Ok(temperature) => temperature,
            Err(bare) if self.asker.ground.metric => celsius(bare),
            Err(bare) => fahrenheit(bare),
        })
    }

    /// "Is 70 degrees enough in the breast?", "breast at 68, done?": yes or no is the answer.
    fn asks_done(&self) -> bool {
        let spot = self.places().any(|at| self.s.of(at, "spot-").is_some_and(|spot| spot != "pit"));
        let usual = if self.asker.ground.metric { DONE_CELSIUS } else { DONE_FAHRENHEIT };
        let told = self.temperature().and_then(Result::err).is_some_and(|bare| usual.contains(&bare));
        let scaled = told || self.amounts(Measure::Temperature).next().is_some();
        let asks = self.has("ask-done") && (spot || scaled) || self.has("ask-safe") && spot;
        asks && self.span().is_none() && !self.has("ask-how-long")
    }

    /// A temperature with a time, or with the word safe.
    fn lethality(&self) -> Option<Question> {
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
    fn names_meat_spot(&self) -> bool {
        self.any(&["spot-breast", "spot-thigh", "spot-wing"])
    }

    /// The temperature of meat, where the scale is told or plain.
    fn in_meat(&self, told: Result<Temperature, f64>) -> Result<Temperature, f64> {
        match told {
            Err(bare) if bare >= BARE_FAHRENHEIT_FROM => Ok(fahrenheit(bare)),
            // Where everyone has a thermometer in °C, 68 is 68 °C; nobody asks whether a bird of 68 °F is done.
            Err(bare) if self.asker.ground.metric && self.degrees_said() => Ok(celsius(bare)),
            told => told,
        }
    }

    /// "158 F in the breast and 150 in the thigh": the second has no letter.
    fn of_other_spot(&self, told: usize) -> Option<Temperature> {
        let spots = self.places().filter(|at| self.s.of(*at, "spot-").is_some()).count();
        let meat = |at| self.s.number(at).filter(|n| !self.counted(at) && (100.0..=212.0).contains(n));
        self.places().filter_map(meat).next().filter(|_| told == 1 && spots > 1).map(fahrenheit)
    }

    /// The temperature, of several the coldest: with a scale, or the bare number. A scale alone at the end belongs to the bare number.
    fn temperature(&self) -> Option<Result<Temperature, f64>> {
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
    fn degrees_said(&self) -> bool {
        self.amounts(Measure::Temperature).any(|(_, amount)| amount.unit() == Some(Unit::Degree))
    }

    /// Whether the bare number at `at` counts people or weeks.
    fn counted(&self, at: usize) -> bool {
        ["people", "adults", "children", "unit-week", "unit-month", "age-years"]
            .iter()
            .any(|concept| self.s.is(at + 1, concept))
    }

    /// An amount of hours that a clock shows in the afternoon, or with its part of the day: `14h`, `13h30`, `1h du matin`.
    fn is_clock(&self, at: usize) -> bool {
        const FROM: TimeDelta = TimeDelta::hours(13);
        const TO: TimeDelta = TimeDelta::hours(24);
        let hours = self.s.amount(at).filter(|amount| amount.unit() == Some(Unit::Hour));
        let of_day = self.s.of(at + 1, "part-").is_some();
        hours.and_then(Amount::span).is_some_and(|span| (FROM <= span || of_day) && span < TO)
    }

    /// "Às 12h", "um 12h": a word that only a clock's hour follows, and whole hours.
    fn is_hour_of_day(&self, at: usize) -> bool {
        let told = at.checked_sub(1).is_some_and(|before| self.s.is(before, "at-clock"));
        told && self.s.amount(at).is_some_and(|amount| amount.unit() == Some(Unit::Hour) && amount.value() <= 24.0)
    }

    /// "Since 4:30", "since 9 am": how long that is by now.
    fn since_hour(&self) -> Option<TimeDelta> {
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

    // ---- the bird

    fn about_bird(&self) -> Option<Question> {
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
    fn names_nothing_else(&self) -> bool {
        let empty = |at: usize| {
            let word = crate::reading::fold(self.s.raw(at));
            ["filler", "mine-link", "manners"].iter().any(|group| self.asker.ground.lexicon.talk(&word, group))
        };
        self.places().all(|at| !self.is_unknown_word(at) || empty(at))
    }

    fn kind(&self) -> Kind {
        self.wish.kind.as_deref().and_then(Kind::from_name).unwrap_or(Kind::Turkey)
    }

    fn bird(&self) -> BirdSaid {
        BirdSaid {
            kind: self.kind(),
            mass: self.wish.mass_g.and_then(|g| BirdMass::new(grams(g)).ok()),
            condition: self.wish.condition.as_deref().and_then(Condition::from_name),
            form: self.wish.form.as_deref().and_then(Form::from_name).unwrap_or(Form::Whole),
            stuffed: self.wish.stuffed.unwrap_or(false),
            solution: self.wish.solution_percent,
        }
    }

    fn diners(&self) -> Diners {
        Diners {
            adults: self.wish.adults.unwrap_or(0),
            children: self.wish.children.unwrap_or(0),
            leftovers: self.wish.leftovers.unwrap_or(false),
        }
    }

    /// Cooker and setting; 325 °F where only one of them was said.
    fn heat(&self) -> Option<Heat> {
        let cooker = self.wish.cooker.as_deref().and_then(Cooker::from_name);
        let setting = self.wish.setting_c.or_else(|| self.bare_setting()).map(celsius);
        (cooker.is_some() || setting.is_some())
            .then(|| Heat { cooker: cooker.unwrap_or(Cooker::Oven), setting: setting.unwrap_or(fahrenheit(325.0)) })
    }

    /// "How long per kilo at 180": a weight's unit without its number.
    fn asks_time_by_weight(&self) -> bool {
        let unit = |at: usize| self.s.of(at, "unit-").and_then(Unit::from_name);
        let bare = |at: usize| matches!(unit(at), Some(Unit::Pound | Unit::MetricPound | Unit::Kilogram));
        let other = self.any(&["salt-any", "salting-dry", "salting-wet", "ask-thaw", "step-thaw", "ask-keep"]);
        self.has("ask-how-long") && !other && (self.places().any(bare) || self.per_unit().is_some())
    }

    /// `a 180`, `at 325`: a number behind "at" that no clock shows, in °C. What no oven in °C goes to is °F everywhere.
    fn bare_setting(&self) -> Option<f64> {
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

    // ---- units

    fn is_unknown_word(&self, at: usize) -> bool {
        matches!(self.s.item(at).map(|item| &item.what), Some(What::Word([])))
    }

    fn about_units(&self) -> Option<Question> {
        // "It's 3 degrees outside": nobody asks what that is in °F.
        if self.is_weather() {
            return None;
        }
        let (at, amount) = self.places().find_map(|at| {
            let amount = self.s.amount(at)?;
            let measure = amount.measure()?;
            let measured = matches!(measure, Measure::Mass | Measure::Volume | Measure::Stick | Measure::Temperature);
            (measured || measure == Measure::Span && self.in_spans()).then_some((at, amount))
        })?;
        let to = self.places().rev().find_map(|at| self.s.of(at, "unit-")).and_then(Unit::from_name);
        // A weight that is asked nothing of is news about the bird.
        let asked = self.any(&["ask-how-much", "ask-how-many", "ask-how-big"]);
        if to.is_none() && amount.measure() == Some(Measure::Mass) && !asked {
            return None;
        }
        // Of something unknown a bare amount says nothing.
        if to.is_none() && (at + 1..self.s.len()).any(|at| self.is_unknown_word(at)) {
            return None;
        }
        let butter = self.has("butter") || amount.unit() == Some(Unit::Stick) || to == Some(Unit::Stick);
        let spoons = self.places().find_map(|at| self.s.of(at, "spoons-")).and_then(SpoonSystem::from_name);
        Some(Question::UnitConvert { amount: amount.clone(), to, butter, spoons })
    }

    /// A span is to be said in minutes or hours: a unit of time stands alone at the end.
    fn in_spans(&self) -> bool {
        let named = |at: usize| self.s.of(at, "unit-").and_then(Unit::from_name);
        self.places().rev().find_map(named).is_some_and(|unit| unit.measure() == Measure::Span)
    }
}
