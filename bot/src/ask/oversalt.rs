//! "I put 3 tbsp of salt on it, too much?": what is on the bird against what it takes, and what to do about the rest.
//!
//! Owns where much begins. The dose is core's; who knows the bird better (the plan) hands its own in.

use super::Asker;
use super::answer::{Answer, how_heavy, salt_arg};
use super::question::{BirdSaid, Question, SaltSaid};
use super::read::NotUnderstood;
use super::salt::known_or_usual;
use crate::reading::sentence::Sentence;
use crate::words::{Arg, Text};
use carvetime_core::quantity::{Amount, Mass, Measure, in_grams};
use carvetime_core::salt::{Salt, Strength};
use carvetime_core::source;

/// From so many times the dose on it is too much: a strong dose is below. Common practice, no source.
const MUCH: f64 = 1.5;
/// From so many times on it is a little much. Common practice, no source.
const A_LITTLE: f64 = 1.2;
/// Below so much of the dose it is little. Common practice, no source.
const LITTLE: f64 = 0.75;
/// Nobody salts a bird with more, so more is a bird's weight.
const MOST_G: f64 = 600.0;

/// How long the salt has been on the bird.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lain {
    /// Less than an hour, as far as anyone has said.
    Fresh,
    /// Longer: it has gone in.
    Soaked,
    /// Nobody has said.
    Unknown,
}

/// The question, where the words ask whether salt told by its amount is too much, or tell that it was twice as much.
pub(super) fn read(s: &Sentence, bird: BirdSaid, salt: Option<SaltSaid>) -> Option<Question> {
    if s.has("ask-double-salt") {
        return Some(Question::OverSalt { amount: None, enough: false, salt, bird });
    }
    let named = salt.is_some() || ["salt-any", "habit-salted-twice", "habit-salty"].iter().any(|salted| s.has(salted));
    let asked = ["ask-too-much", "habit-salted-twice", "habit-salty"].iter().any(|much| s.has(much));
    let enough = !asked && s.has("ask-plenty");
    if !named || !(asked || enough) {
        return None;
    }
    let amounts = || (0..s.len()).filter_map(|at| s.amount(at));
    let volume = amounts().find(|amount| amount.measure() == Some(Measure::Volume));
    let light = |amount: &&Amount| amount.mass().is_some_and(|mass| in_grams(mass) < MOST_G);
    let amount = volume.or_else(|| amounts().find(light))?.clone();
    Some(Question::OverSalt { amount: Some(amount), enough, salt, bird })
}

/// Whether that is too much for a bird that takes `dose`, of the one told if None.
pub fn over_salt(question: &Question, dose: Option<Mass>, lain: Lain, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let Question::OverSalt { amount, enough, salt, bird } = question else { return Err(NotUnderstood::Unknown) };
    let kind = question.kind();
    let Some(amount) = amount else {
        return Ok(too_much(Answer::new(kind).say(Text::new("ask-oversalt-double")).value("times", 2.0, ""), lain));
    };
    let told =
        || bird.bird(super::answer::USUAL).and_then(|bird| carvetime_core::salt::dose(&bird, Strength::Usual).ok());
    let Some(dose) = dose.or_else(|| told().map(|dose| dose.total)) else { return Ok(how_heavy(kind)) };
    let salt = match known_or_usual(*salt, kind, asker) {
        Ok(salt) => salt,
        Err(back) => return Ok(*back),
    };
    let (mass, salt) = match amount.mass() {
        Some(mass) => (mass, None),
        None => (salt.mass_of(amount.volume(asker.spoons).ok_or(NotUnderstood::Unknown)?), Some(salt)),
    };
    let times = in_grams(mass) / in_grams(dose).max(0.1);
    let id = match times {
        _ if times >= MUCH && *enough => "ask-salt-enough-much",
        _ if times >= MUCH => "ask-oversalt-much",
        _ if times >= A_LITTLE && *enough => "ask-salt-enough-a-little",
        _ if times >= A_LITTLE => "ask-oversalt-a-little",
        _ if times >= LITTLE && *enough => "ask-salt-enough-right",
        _ if times >= LITTLE => "ask-oversalt-right",
        _ => "ask-oversalt-little",
    };
    let text = Text::new(id).with("times", Arg::Number(times, 1)).with("dose", Arg::Grams(dose));
    let answer = Answer::new(kind)
        .say(text.with("given", given(mass, salt.as_ref())))
        .value("times", times, "")
        .value("dose", in_grams(dose), "g")
        .value("mass", in_grams(mass), "g")
        .from(source::DRY_SALTING);
    Ok(if times >= MUCH { too_much(answer, lain) } else { answer })
}

/// "54 g", "3 tbsp of table salt, 54 g": which salt a spoon was taken to be full of.
fn given(mass: Mass, salt: Option<&Salt>) -> Arg {
    match salt {
        None => Arg::Grams(mass),
        Some(salt) => {
            Arg::from(Text::new("ask-oversalt-given").with("mass", Arg::Grams(mass)).with("salt", salt_arg(salt)))
        }
    }
}

/// What is done about it.
fn too_much(answer: Answer, lain: Lain) -> Answer {
    let id = match lain {
        Lain::Fresh => "ask-oversalt-fresh",
        Lain::Soaked => "ask-oversalt-soaked",
        Lain::Unknown => "ask-oversalt-either",
    };
    answer.say(Text::new(id)).say(Text::new("ask-oversalt-beside")).from(source::BRINING_HABITS).from(source::WASHING)
}
