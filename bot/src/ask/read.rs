//! From words to a [`Question`]: which kind it is by the meanings that occur, then its amounts.
//!
//! The kinds are tried from the most telling to the least: a word such as "rinse" settles it, a bare amount comes last.
//! Order of words matters only for which salt is turned into which.

mod bird;
mod cold;
mod food;
mod heat;
mod kept;
mod salt;
mod trouble;

use super::question::Question;
use super::{Advice, Asker, Habit, habit, oversalt};
use crate::reading::sentence::{Sentence, What};
use crate::reading::{
    Diner, Problem, Told, Wish, burns_indoors, read_allergies, read_diner, read_off_dial, read_peril, read_pull_ahead,
    read_unwell, read_warm_thaw, read_wish, shared, sits_somewhere, wants_degrees,
};
use crate::words::Text;
use carvetime_core::quantity::{Amount, Measure, SpoonSystem, Unit};
use carvetime_core::roast::OvenLevel;
use chrono::TimeDelta;

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

/// "How many degrees is a medium oven?", and whether such an oven will do.
fn of_level(level: OvenLevel, sentence: &Sentence, text: &str, asker: &Asker) -> Option<Question> {
    if Told::of(text, asker.ground.lexicon).says("level-asked") {
        return Some(Question::OvenLevel(level));
    }
    let fits = (text.contains('?') || sentence.has("ask-safe")) && !sentence.has("ask-how-long");
    let setting = level.setting(asker.ground.metric);
    fits.then_some(Question::OvenTemperature { setting: Some(setting), smoker: false })
}

/// `1/4 tsp is 0.7 g`, where a packet of salt was asked about and it need not be named.
pub fn read_own_salt(text: &str, asker: &Asker) -> Option<Question> {
    let text: String = text.chars().take(LONGEST).collect();
    let sentence = Sentence::read(&text, asker.ground.lexicon);
    let wish = Wish::default();
    Asked { s: &sentence, wish: &wish, asker }.spoon_weighed()
}

fn read(text: &str, asker: &Asker) -> Result<Question, NotUnderstood> {
    let text: String = text.chars().take(LONGEST).collect();
    if let Some(peril) = read_peril(&text, asker.ground.lexicon) {
        return Ok(Question::Peril(peril));
    }
    if burns_indoors(&text, asker.ground.lexicon) {
        return Ok(Question::CharcoalIndoors);
    }
    // "Do I take it out of the fridge the night before?": raw, and no wish to cook it then.
    let told = Told::of(&text, asker.ground.lexicon);
    if told.says("out-of-fridge") && told.says("night-before") && text.contains(['?', '¿']) {
        return Ok(Question::Advice(Advice::Habit(Habit::Temper)));
    }
    if let Some(health) = read_unwell(&text, asker.ground.lexicon) {
        return Ok(Question::Unwell(health.what));
    }
    if let Some((place, _)) = read_warm_thaw(&text, asker.ground.lexicon) {
        return Ok(Question::WarmThaw(place));
    }
    let allergens = read_allergies(&text, asker.ground.lexicon);
    if !allergens.is_empty() && !Sentence::read(&text, asker.ground.lexicon).has("ask-how-big") {
        return Ok(Question::Allergies(allergens));
    }
    match read_diner(&text, asker.ground.lexicon) {
        Some(Diner::Frail) => return Ok(Question::Advice(Advice::Habit(Habit::Fragile))),
        Some(what) => return Ok(Question::Diner(what)),
        None => {}
    }
    let sentence = Sentence::read(&text, asker.ground.lexicon);
    let (wish, problems) = read_wish(&text, &asker.ground);
    // "Runs 25 hot, 14 lb bird for 8": a dinner told of comes first.
    let dinner = wish.mass_g.is_some() || wish.adults.is_some();
    if let Some(told) = read_off_dial(&text, asker.ground.metric, asker.ground.lexicon).filter(|_| !dinner) {
        return Ok(Question::OffDial(told));
    }
    if let Some(level) = sentence.of_any("oven-level-").and_then(OvenLevel::from_name).filter(|_| wish.mass_g.is_none())
        && let Some(question) = of_level(level, &sentence, &text, asker)
    {
        return Ok(question);
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
    // "Salt for a capon, for a heart patient": how much, their doctor says, and no usual dose.
    let question = match question {
        Some(Question::SaltDose { .. }) if Told::of(&text, asker.ground.lexicon).says("salt-reason") => {
            Some(Question::Advice(Advice::LowSalt))
        }
        question => question,
    };
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
            .or_else(|| self.about_broth())
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
