//! Answers about salt: conversions, doses, brine, depth, sodium, a person's own packet.

use super::Asker;
use super::answer::{Answer, Choice, USUAL, amount_text, bird_text, how_heavy, salt_arg, symbol};
use super::question::{BirdSaid, SaltSaid};
use super::read::NotUnderstood;
use crate::reading::Problem;
use crate::words::{Arg, Text, UnitSystem};
use carvetime_core::brine::{BrineError, BrineStrength, wet_brine};
use carvetime_core::quantity::{Amount, Mass, Measure, Unit, Volume, in_grams, in_milliliters};
use carvetime_core::salt::{
    Dose, DoseError, Grain, HeldBack, Measured, OwnSalt, PacketError, Place, Salt, Serving, Strength, depth_after,
    rule_of_thumb, sodium_per_serving,
};
use carvetime_core::source;
use chrono::TimeDelta;

/// What a salt is called.
pub(super) fn name_of(salt: &Salt) -> Text {
    match salt {
        Salt::Grain(grain) => Text::named("ask-salt", grain.name()),
        Salt::Own(_) => Text::new("ask-salt-own"),
    }
}

/// The salt that was named, or what must be asked first.
fn known(said: SaltSaid, kind: &'static str, asker: &Asker) -> Result<Salt, Box<Answer>> {
    match said {
        SaltSaid::Grain(grain) => Ok(Salt::Grain(grain)),
        SaltSaid::Own => asker
            .own_salt
            .clone()
            .map(Salt::Own)
            .ok_or_else(|| Box::new(Answer::back(kind, Text::new("ask-back-own-salt"), Vec::new()))),
        SaltSaid::Kosher => {
            let choice = |grain: Grain, adds| Choice { label: Text::named("ask-salt", grain.name()), adds };
            let choices =
                vec![choice(Grain::FlakeKosher, "flake kosher"), choice(Grain::CoarseKosher, "coarse kosher")];
            Err(Box::new(Answer::back(kind, Text::new("ask-back-kosher"), choices)))
        }
    }
}

/// The salt cooks use where there are spoons and pounds, or where there are not.
pub fn usual_grain(us_units: bool) -> Grain {
    if us_units { Grain::FlakeKosher } else { Grain::Table }
}

/// The salt named, else the person's own, else the usual one.
pub(super) fn known_or_usual(said: Option<SaltSaid>, kind: &'static str, asker: &Asker) -> Result<Salt, Box<Answer>> {
    match (said, &asker.own_salt) {
        (Some(said), _) => known(said, kind, asker),
        (None, Some(own)) => Ok(Salt::Own(own.clone())),
        (None, None) => Ok(Salt::Grain(usual_grain(asker.units == UnitSystem::Us))),
    }
}

/// Unwraps a salt or gives the question back.
macro_rules! salt_or_ask {
    ($salt:expr) => {
        match $salt {
            Ok(salt) => salt,
            Err(back) => return Ok(*back),
        }
    };
}

fn with_salt_source(answer: Answer, salt: &Salt) -> Answer {
    match salt.source() {
        Some(source) => answer.from(source),
        None => answer,
    }
}

fn measured(amount: &Amount, asker: &Asker) -> Option<Measured> {
    match amount.measure()? {
        Measure::Mass => amount.mass().map(Measured::Mass),
        Measure::Volume => amount.volume(asker.spoons).map(Measured::Volume),
        _ => None,
    }
}

pub(super) fn convert(
    amount: Option<&Amount>,
    from: SaltSaid,
    to: SaltSaid,
    asker: &Asker,
) -> Result<Answer, NotUnderstood> {
    let kind = "salt-convert";
    let from = salt_or_ask!(known(from, kind, asker));
    let to = salt_or_ask!(known(to, kind, asker));
    let Some((amount, given)) = amount.and_then(|amount| Some((amount, measured(amount, asker)?))) else {
        return Ok(Answer::back(kind, Text::new("ask-back-how-much").with("salt", salt_arg(&from)), Vec::new()));
    };
    let converted = carvetime_core::salt::convert(given, &from, &to);
    positive(in_grams(converted.mass))?;
    let given_text = match given {
        Measured::Mass(mass) => Arg::Grams(mass),
        Measured::Volume(volume) => Arg::Spoons(volume),
    };
    let unit = amount.unit().filter(|unit| unit.measure() == Measure::Volume).unwrap_or(Unit::Teaspoon);
    let in_unit = in_milliliters(converted.to) / unit.milliliters(asker.spoons).unwrap_or(1.0);
    let answer = Answer::new(kind)
        .say(
            Text::new("ask-salt-convert")
                .with("given", given_text)
                .with("from", salt_arg(&from))
                .with("volume", Arg::Spoons(converted.to))
                .with("to", salt_arg(&to))
                .with("mass", Arg::Grams(converted.mass)),
        )
        // A dose of salt is never told larger than it is.
        .value_cut("volume", in_unit, symbol(unit));
    let rule = match (&from, &to) {
        (Salt::Grain(from), Salt::Grain(to)) => rule_of_thumb(*from, *to),
        _ => None,
    };
    let answer = with_salt_source(with_salt_source(answer, &from), &to);
    Ok(match rule {
        Some(rule) => {
            let text = if rule.holds() { Text::new("ask-salt-rule-holds") } else { Text::new("ask-salt-rule-fails") };
            answer
                .say(
                    text.with("rule", Arg::Number(rule.spoons * 100.0, 0))
                        .with("mass", Arg::Number(rule.spoons_by_mass() * 100.0, 0)),
                )
                .from(rule.source)
        }
        None => answer,
    })
}

fn positive(grams: f64) -> Result<(), NotUnderstood> {
    if grams > 0.0 && grams <= 1e6 { Ok(()) } else { Err(NotUnderstood::Impossible(Text::new("ask-no-amount"))) }
}

pub(super) fn weigh(amount: &Amount, salt: SaltSaid, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let kind = "salt-convert";
    let salt = salt_or_ask!(known(salt, kind, asker));
    let Some(given) = measured(amount, asker) else { return Err(NotUnderstood::Unknown) };
    let (mass, volume) = match given {
        Measured::Mass(mass) => (mass, salt.volume_of(mass)),
        Measured::Volume(volume) => (salt.mass_of(volume), volume),
    };
    positive(in_grams(mass))?;
    let answer = Answer::new(kind).say(
        Text::new("ask-salt-weighs")
            .with("volume", Arg::Spoons(volume))
            .with("salt", salt_arg(&salt))
            .with("mass", Arg::Grams(mass)),
    );
    let answer = match given {
        Measured::Mass(_) => {
            let teaspoon = Unit::Teaspoon.milliliters(asker.spoons).unwrap_or(5.0);
            answer.value_cut("volume", in_milliliters(volume) / teaspoon, "tsp")
        }
        Measured::Volume(_) => answer.value("mass", in_grams(mass), "g"),
    };
    Ok(with_salt_source(answer, &salt))
}

/// A spoon of each salt it may be: "a tablespoon of kosher salt", "a tablespoon of salt".
pub(super) fn spoon_weights(volume: Volume, kosher: bool, asker: &Asker) -> Result<Answer, NotUnderstood> {
    positive(in_milliliters(volume))?;
    let grains: &[Grain] = if kosher {
        &[Grain::FlakeKosher, Grain::CoarseKosher]
    } else {
        &[Grain::Table, Grain::FlakeKosher, Grain::CoarseKosher]
    };
    let mut answer = Answer::new("salt-convert");
    let mut weights = Vec::new();
    for grain in grains {
        let salt = Salt::Grain(*grain);
        let mass = salt.mass_of(volume);
        weights.push(Text::new("ask-spoon-weight").with("salt", salt_arg(&salt)).with("mass", Arg::Grams(mass)));
        answer = with_salt_source(answer.value(grain.name(), in_grams(mass), "g"), &salt);
    }
    if let Some(own) = asker.own_salt.clone().filter(|_| !kosher).map(Salt::Own) {
        let mass = Arg::Grams(own.mass_of(volume));
        weights.push(Text::new("ask-spoon-weight").with("salt", salt_arg(&own)).with("mass", mass));
    }
    Ok(answer
        .say(Text::new("ask-spoon-weights").with("volume", Arg::Spoons(volume)).with("weights", Arg::List(weights))))
}

/// The usual dose for one pound or kilogram.
pub(super) fn per(kilogram: bool, salt: Option<SaltSaid>, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let salt = match salt {
        Some(SaltSaid::Kosher) => Salt::Grain(Grain::FlakeKosher),
        said => salt_or_ask!(known_or_usual(said, "salt-dose", asker)),
    };
    let mass =
        carvetime_core::quantity::grams(Strength::Usual.grams_per_kg() * if kilogram { 1.0 } else { 0.453_592_37 });
    let id = if kilogram { "ask-dose-per-kg" } else { "ask-dose-per-lb" };
    let teaspoon = Unit::Teaspoon.milliliters(asker.spoons).unwrap_or(5.0);
    let answer = Answer::new("salt-dose")
        .say(
            Text::new(id)
                .with("volume", Arg::Spoons(salt.volume_of(mass)))
                .with("salt", salt_arg(&salt))
                .with("mass", Arg::Grams(mass)),
        )
        .say(Text::new("ask-dose-rest").with("longest", Arg::Span(Dose::longest_rest())))
        .value("mass", in_grams(mass), "g")
        .value_cut("volume", in_milliliters(salt.volume_of(mass)) / teaspoon, "tsp")
        .from(source::DRY_SALTING);
    Ok(with_salt_source(answer, &salt))
}

/// How long birds of the usual sizes stay in brine.
pub(super) fn brine_time() -> Result<Answer, NotUnderstood> {
    let usual = |pounds: f64| {
        let bird = carvetime_core::bird::Bird {
            kind: carvetime_core::bird::Kind::Turkey,
            mass: carvetime_core::bird::BirdMass::new(carvetime_core::quantity::pounds(pounds)).ok()?,
            condition: USUAL,
            form: carvetime_core::bird::Form::Whole,
            stuffed: false,
            solution: None,
        };
        wet_brine(&bird, BrineStrength::usual()).ok()
    };
    let (Some(small), Some(large)) = (usual(10.0), usual(16.0)) else { return Err(NotUnderstood::Unknown) };
    let cold = carvetime_core::brine::warmest_allowed();
    Ok(Answer::new("brine")
        .say(
            Text::new("ask-brine-usual")
                .with("low", Arg::Mass(carvetime_core::quantity::pounds(10.0)))
                .with("high", Arg::Mass(carvetime_core::quantity::pounds(16.0)))
                .with("time", Arg::SpanRange(small.time.low, large.time.high)),
        )
        .say(Text::new("ask-brine-cold").with("cold", Arg::Temperature(cold)))
        .span_value("time-low", small.time.low, "h")
        .span_value("time-high", large.time.high, "h")
        .from(source::BRINE_TIME))
}

pub(super) fn dose(
    said: &BirdSaid,
    salt: Option<SaltSaid>,
    strength: Strength,
    asker: &Asker,
) -> Result<Answer, NotUnderstood> {
    let kind = "salt-dose";
    let Some(bird) = said.bird(USUAL) else { return Ok(how_heavy(kind)) };
    let salt = salt_or_ask!(known_or_usual(salt, kind, asker));
    let dose = carvetime_core::salt::dose(&bird, strength)
        .map_err(|DoseError::Solution { given, .. }| NotUnderstood::Wrong(Problem::Solution(given)))?;
    if let Some(HeldBack::Nothing { percent }) = dose.held_back {
        return Ok(Answer::new(kind)
            .say(Text::new("ask-dose-none").with("percent", Arg::Number(percent, 1)))
            .value("mass", 0.0, "g")
            .from(source::SALTED_BY_THE_PACKER));
    }
    let shares = dose.shares.iter().map(|share| {
        Text::new("ask-dose-share")
            .with("place", Arg::Choice(share.place.name()))
            .with("count", Arg::Count(i64::from(share.count)))
            .with("volume", crate::words::share(&dose, share, &salt))
    });
    let answer = Answer::new(kind)
        .say(
            Text::new("ask-dose")
                .with("bird", Arg::from(bird_text(&bird)))
                .with("volume", Arg::Spoons(salt.volume_of(dose.total)))
                .with("salt", salt_arg(&salt))
                .with("mass", Arg::Grams(dose.total))
                .with("strength", Arg::Choice(dose.strength.name())),
        )
        .say(Text::new("ask-dose-shares").with("shares", Arg::List(shares.collect())))
        .say_if(dose.each(Place::Skin).is_some(), || Text::new("ask-dose-skin"))
        .say(Text::new("ask-dose-rest").with("longest", Arg::Span(Dose::longest_rest())));
    let answer = match dose.held_back {
        Some(HeldBack::Light { percent }) => answer
            .say(Text::new("ask-dose-light").with("percent", Arg::Number(percent, 1)))
            .from(source::SALTED_BY_THE_PACKER),
        _ => answer,
    };
    let teaspoon = Unit::Teaspoon.milliliters(asker.spoons).unwrap_or(5.0);
    let answer = answer
        .value("mass", in_grams(dose.total), "g")
        .value_cut("volume", in_milliliters(salt.volume_of(dose.total)) / teaspoon, "tsp")
        .from(source::DRY_SALTING)
        .from(source::SALTING_GUIDANCE);
    Ok(with_salt_source(answer, &salt))
}

pub(super) fn brine(
    percent: Option<(f64, bool)>,
    water: Option<Volume>,
    said: &BirdSaid,
    salt: Option<SaltSaid>,
    asker: &Asker,
) -> Result<Answer, NotUnderstood> {
    let kind = "brine";
    let salt = salt_or_ask!(known_or_usual(salt, kind, asker));
    let wrong = |error: BrineError| {
        NotUnderstood::Impossible(match error {
            BrineError::Strength { given, high, .. } => {
                Text::new("ask-brine-strength").with("given", Arg::Number(given, 1)).with("high", Arg::Number(high, 0))
            }
            BrineError::Water { .. } => Text::new("ask-no-amount"),
            BrineError::AlreadySalted { percent } => {
                Text::new("ask-dose-none").with("percent", Arg::Number(percent, 1))
            }
        })
    };
    let strength = match percent {
        Some((percent, true)) => BrineStrength::of_water(percent).map_err(wrong)?,
        Some((percent, false)) => BrineStrength::of_solution(percent).map_err(wrong)?,
        None => BrineStrength::usual(),
    };
    let bird = said.bird(USUAL);
    let wet = bird.map(|bird| wet_brine(&bird, strength)).transpose().map_err(wrong)?;
    let Some(water) = water.or(wet.map(|wet| wet.water)) else {
        return Ok(Answer::back(kind, Text::new("ask-back-water"), Vec::new()));
    };
    positive(in_milliliters(water))?;
    let mass = strength.salt_for(water);
    let mut answer = Answer::new(kind)
        .say(
            Text::new("ask-brine")
                .with("percent", Arg::Number(strength.percent_of_solution(), 1))
                .with("water", Arg::Liquid(water))
                .with("mass", Arg::Grams(mass))
                .with("volume", Arg::Spoons(salt.volume_of(mass)))
                .with("salt", salt_arg(&salt)),
        )
        .say(Text::new("ask-brine-other").with("percent", Arg::Number(strength.percent_of_water(), 1)))
        .value("salt", in_grams(mass), "g")
        .value("water", in_milliliters(water) / 1000.0, "L")
        .value("strength", strength.percent_of_solution(), "%")
        .from(source::SALTING_GUIDANCE);
    if let Some(wet) = wet {
        answer = answer
            .say(
                Text::new("ask-brine-time")
                    .with("time", Arg::SpanRange(wet.time.low, wet.time.high))
                    .with("vessel", Arg::Liquid(wet.vessel)),
            )
            .from(source::BRINE_VOLUME)
            .from(source::BRINE_TIME);
    }
    let cold = carvetime_core::brine::warmest_allowed();
    let answer = answer.say(Text::new("ask-brine-cold").with("cold", Arg::Temperature(cold)));
    Ok(with_salt_source(answer, &salt))
}

pub(super) fn depth(rest: Option<TimeDelta>) -> Result<Answer, NotUnderstood> {
    let asked = rest.unwrap_or(TimeDelta::hours(24));
    if asked <= TimeDelta::zero() || asked > TimeDelta::days(30) {
        return Err(NotUnderstood::Impossible(Text::new("ask-no-span")));
    }
    let depth = depth_after(asked);
    Ok(Answer::new("salt-depth")
        .say(
            Text::new("ask-depth")
                .with("rest", Arg::Span(asked))
                .with("depth", Arg::Number(depth.expected_mm, 0))
                .with("low", Arg::Number(depth.mm.low, 0))
                .with("high", Arg::Number(depth.mm.high, 0)),
        )
        .say(Text::new("ask-depth-pork"))
        .value("depth", depth.expected_mm, "mm")
        .from(depth.source))
}

pub(super) fn sodium(
    said: &BirdSaid,
    people: Option<u16>,
    salt: Option<SaltSaid>,
    asker: &Asker,
) -> Result<Answer, NotUnderstood> {
    let kind = "sodium";
    let Some(bird) = said.bird(USUAL) else { return Ok(how_heavy(kind)) };
    let salt = salt_or_ask!(known_or_usual(salt, kind, asker));
    let dose = carvetime_core::salt::dose(&bird, Strength::Usual)
        .map_err(|DoseError::Solution { given, .. }| NotUnderstood::Wrong(Problem::Solution(given)))?;
    let serving = match people {
        Some(people) => Serving::OneOf(f64::from(people)),
        None => Serving::Mass(carvetime_core::quantity::grams(SERVING_G)),
    };
    let Ok(estimate) = sodium_per_serving(&bird, Some((&dose, &salt)), serving) else {
        return Err(NotUnderstood::Impossible(Text::new("ask-no-serving")));
    };
    let day = estimate.total.percent_of_day();
    let who = match people {
        Some(people) => Text::new("ask-sodium-one-of").with("people", Arg::Count(i64::from(people))),
        None => Text::new("ask-sodium-grams").with("mass", Arg::Grams(carvetime_core::quantity::grams(SERVING_G))),
    };
    Ok(Answer::new(kind)
        .say(
            Text::new("ask-sodium")
                .with("bird", Arg::from(bird_text(&bird)))
                .with("who", Arg::from(who))
                .with("expected", Arg::Number((estimate.total.expected_mg / 10.0).round() * 10.0, 0))
                .with("low", Arg::Number((estimate.total.low_mg / 10.0).round() * 10.0, 0))
                .with("high", Arg::Number((estimate.total.high_mg / 10.0).round() * 10.0, 0)),
        )
        .say(
            Text::new("ask-sodium-day")
                .with("low", Arg::Number(day.low, 0))
                .with("high", Arg::Number(day.high, 0))
                .with("daily", Arg::Number(carvetime_core::salt::DAILY_SODIUM_MG, 0)),
        )
        .say(Text::new("ask-sodium-care"))
        .value("sodium", estimate.total.expected_mg, "mg")
        .value("sodium-low", estimate.total.low_mg, "mg")
        .value("sodium-high", estimate.total.high_mg, "mg")
        .from(source::SALT_THAT_STAYS)
        .from(source::NATURAL_SODIUM)
        .from(source::SODIUM_DAILY_VALUE))
}

/// A serving of cooked meat where no number of people was told: 3 oz, as US labels have it.
const SERVING_G: f64 = 85.0;

pub(super) fn own(
    volume: Volume,
    mass: Option<Mass>,
    sodium: Option<Mass>,
    asker: &Asker,
) -> Result<Answer, NotUnderstood> {
    let own = match (mass, sodium) {
        (mass, Some(sodium)) => OwnSalt::from_label(None, volume, sodium, mass),
        (Some(mass), None) => OwnSalt::from_weight(None, volume, mass),
        (None, None) => return Err(NotUnderstood::Unknown),
    };
    let own = own.map_err(|error| {
        NotUnderstood::Impossible(match error {
            PacketError::Volume { .. } | PacketError::Mass { .. } => Text::new("ask-no-amount"),
            PacketError::NotPlainSalt { .. } => Text::new("ask-own-not-plain"),
            PacketError::Density { .. } => Text::new("ask-own-density"),
        })
    })?;
    Ok(reckoned_with(own, asker))
}

/// The only salt in the house: reckoned with from now on, as a salt of their own.
pub(super) fn only(said: SaltSaid, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let salt = salt_or_ask!(known(said, "own-salt", asker));
    let own = OwnSalt::new(None, salt.grams_per_ml()).map_err(|_| NotUnderstood::Unknown)?;
    Ok(with_salt_source(reckoned_with(own, asker), &salt))
}

fn reckoned_with(own: OwnSalt, asker: &Asker) -> Answer {
    let salt = Salt::Own(own.clone());
    let teaspoon = salt.grams_per_teaspoon(asker.spoons);
    let mut answer = Answer::new("own-salt")
        .say(
            Text::new("ask-own")
                .with("teaspoon", Arg::from(amount_text(teaspoon, Unit::Gram, 1)))
                .with("tablespoon", Arg::from(amount_text(tablespoon(&salt, asker), Unit::Gram, 1))),
        )
        .value("teaspoon", teaspoon, "g");
    answer.own_salt = Some(own);
    answer
}

fn tablespoon(salt: &Salt, asker: &Asker) -> f64 {
    salt.grams_per_ml() * Unit::Tablespoon.milliliters(asker.spoons).unwrap_or(15.0)
}
