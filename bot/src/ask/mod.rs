//! Quick questions: what people ask in a chat beside the plan, and the answers, from core's numbers.
//!
//! Owns the questions' grammar and the choice of words; no number of its own. Pure. Start at [`ask`]; [`read_question`]
//! reads, [`answer`] answers. An answer carries its sources, so that "why?" can be answered, and asks back where a missing
//! unit or weight would change it.

mod advice;
mod allergy;
mod answer;
mod bird;
mod convert;
mod diner;
mod emergency;
mod habit;
mod line;
mod off_dial;
mod oversalt;
mod question;
mod read;
mod safety;
mod salt;

pub use advice::Advice;
pub(crate) use answer::exact_span;
pub use answer::{Answer, AskBack, Choice, Value, source_line};
pub use emergency::Numbers;
pub use habit::Habit;
pub use line::{Printed, answer_line};
pub use oversalt::{Lain, over_salt};
pub use question::{BirdSaid, Question, SaltSaid};
pub use read::{NotUnderstood, read_own_salt, read_question};
pub use safety::fridge_too_warm;
pub use salt::usual_grain;

use crate::reading::sentence::Sentence;
use crate::reading::{Ground, WarmThaw};
use crate::words::{Reader, UnitSystem};
use carvetime_core::plan::Moment;
use carvetime_core::quantity::{SpoonSystem, Temperature};
use carvetime_core::roast::Heat;
use carvetime_core::safety::Jurisdiction;
use carvetime_core::salt::OwnSalt;
use carvetime_core::source;
use chrono_tz::Tz;

/// Who asks: what a number without a unit means, whose spoons, whose salt, whose rules.
#[derive(Debug, Clone, PartialEq)]
pub struct Asker {
    /// Language, scale, zone, present.
    pub ground: Ground,
    /// Pounds or kilograms.
    pub units: UnitSystem,
    /// Whose spoons.
    pub spoons: SpoonSystem,
    /// The salt they told of once.
    pub own_salt: Option<OwnSalt>,
    /// What their fridge's thermometer shows, where they told.
    pub fridge: Option<Temperature>,
    /// What the bird is roasted at, where that is planned.
    pub heat: Option<Heat>,
    /// Whose food-safety rules.
    pub jurisdiction: Jurisdiction,
    /// Whom to call, where it is known.
    pub emergency: Option<Numbers>,
}

impl Asker {
    /// A person with the units, spoons and rules usual where `tag` is spoken.
    pub fn new(tag: &str, zone: Tz, now: Moment) -> Self {
        let reader = Reader::new(tag, zone, now);
        Self::of_reader(&reader)
    }

    /// A person who reads so.
    pub fn of_reader(reader: &Reader) -> Self {
        let metric = reader.units == UnitSystem::Metric;
        Self {
            ground: Ground::new(&reader.locale, metric, reader.zone, reader.now),
            units: reader.units,
            spoons: reader.spoons,
            own_salt: None,
            fridge: None,
            heat: None,
            jurisdiction: jurisdiction(&reader.locale),
            emergency: emergency::numbers(reader.zone, &reader.locale),
        }
    }
}

/// Whose rules hold where `tag` is spoken: those of the US unless it names a country with its own.
fn jurisdiction(tag: &str) -> Jurisdiction {
    match tag.split(['-', '_', '.', '@']).find(|part| part.len() == 2 && part.bytes().all(|b| b.is_ascii_uppercase())) {
        Some("GB") => Jurisdiction::Uk,
        Some("CA") => Jurisdiction::Ca,
        _ => Jurisdiction::Us,
    }
}

/// Reads a question and answers it.
///
/// # Errors
/// [`NotUnderstood`]: nothing that can be answered, or a value that cannot be right.
pub fn ask(text: &str, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let question = read_question(text, asker)?;
    let answer = answer(&question, asker)?;
    let of_heat = matches!(question, Question::Lethality { .. } | Question::SafeTemperature { .. });
    let frail = of_heat && answer.ask_back.is_none() && names_the_frail(text, asker);
    Ok(if frail { answer.say(Habit::Fragile.text(asker)).from(source::VULNERABLE) } else { answer })
}

/// "Grandma is 84, is 165 enough?": somebody at more risk eats with them.
fn names_the_frail(text: &str, asker: &Asker) -> bool {
    let sentence = Sentence::read(text, asker.ground.lexicon);
    sentence.has("frail-person") || sentence.has("habit-fragile")
}

/// Answers a question.
///
/// # Errors
/// [`NotUnderstood::Wrong`] for a value that cannot be right.
pub fn answer(question: &Question, asker: &Asker) -> Result<Answer, NotUnderstood> {
    match question {
        Question::SaltConvert { amount, from, to } => salt::convert(amount.as_ref(), *from, *to, asker),
        Question::SaltWeigh { amount, salt } => salt::weigh(amount, *salt, asker),
        Question::SaltDose { bird, salt, strength } => salt::dose(bird, *salt, *strength, asker),
        Question::OverSalt { .. } => over_salt(question, None, Lain::Unknown, asker),
        Question::Brine { percent, of_water, water, bird, salt } => {
            salt::brine(percent.map(|percent| (percent, *of_water)), *water, bird, *salt, asker)
        }
        Question::SaltDepth { rest } => salt::depth(*rest),
        Question::Sodium { bird, people, salt } => salt::sodium(bird, *people, *salt, asker),
        Question::OwnSalt { volume, mass, sodium } => salt::own(*volume, *mass, *sodium, asker),
        Question::OnlySalt { salt } => salt::only(*salt, asker),
        Question::ThawTime { bird } => bird::thaw(bird, asker),
        Question::RoastTime { bird, heat } => bird::roast(bird, *heat),
        Question::BirdFor { kind, diners } => bird::bird_for(*kind, diners),
        Question::PeopleFor { bird } => bird::people_for(bird),
        Question::Fuel { fuel, span } => bird::fuel(*fuel, *span),
        Question::ComeUp { span, temperature } => safety::come_up(*span, *temperature),
        Question::Lethality { temperature: Some(temperature), stuffing: true, .. } => safety::stuffing_at(*temperature),
        Question::Lethality { temperature, bare, held, done, kind, .. } => {
            safety::lethality(*temperature, *bare, *held, *done, *kind)
        }
        Question::SafeTemperature { stuffing, colour } => safety::safe_temperature(*stuffing, *colour, asker),
        Question::OvenTemperature { setting, smoker } => safety::oven(*setting, *smoker),
        Question::OvenLevel(level) => Ok(convert::oven_level(*level, asker)),
        Question::OffDial(told) => off_dial::answer(told, asker),
        Question::Stand => safety::stand(),
        Question::Refreeze => safety::refreeze(),
        Question::LeftOut { ahead, span, air } => safety::left_out(*ahead, *span, *air),
        Question::Keeps { food, raw_too, place, age } => safety::keeps(*food, *raw_too, *place, *age, asker),
        Question::Cooling => safety::cooling(),
        Question::Reheat { food } => safety::reheat(*food, asker),
        Question::HoldHot => safety::hold_hot(asker),
        Question::Wash => safety::wash(),
        Question::CounterThaw => safety::counter_thaw(),
        Question::WarmThaw(WarmThaw::Kitchen) => safety::warm_thaw(),
        Question::WarmThaw(WarmThaw::Outside) => advice::advice(Advice::GarageThaw, asker),
        Question::Stuffing => safety::stuffing(),
        Question::Fry { bird, frozen } => advice::fry(bird, *frozen),
        Question::Advice(about) => advice::advice(*about, asker),
        Question::FridgeAt(at) => advice::fridge_at(*at, asker),
        Question::FridgeOff(span) => Ok(safety::fridge_off(*span, asker)),
        Question::LeftoversAt(at) => Ok(safety::leftovers_at(*at, asker)),
        Question::ColdAt(at) => Ok(safety::cold_at(*at, asker)),
        Question::Side { stuffing, people } => advice::side(*stuffing, *people, asker),
        Question::SpoonWeights { volume, kosher } => salt::spoon_weights(*volume, *kosher, asker),
        Question::SaltPer { kilogram, salt } => salt::per(*kilogram, *salt, asker),
        Question::BrineTime => salt::brine_time(),
        Question::CharcoalIndoors => safety::charcoal_indoors(),
        Question::Peril(peril) => Ok(emergency::peril(*peril, asker)),
        Question::Allergies(allergens) => Ok(allergy::answer(allergens)),
        Question::Diner(what) => Ok(diner::answer(*what, asker)),
        Question::Unwell(what) => Ok(emergency::unwell(*what, asker)),
        Question::UnitConvert { amount, to, butter, spoons } => {
            let spoons = spoons.unwrap_or(asker.spoons);
            convert::units(amount, *to, *butter, &Asker { spoons, ..asker.clone() })
        }
    }
}
