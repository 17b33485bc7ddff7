//! Amounts in other units: mass, volume, temperature, butter.

use super::Asker;
use super::answer::{Answer, amount_text, symbol};
use super::read::NotUnderstood;
use crate::words::{Arg, Text};
use carvetime_core::quantity::{
    Amount, Measure, STICK_G, Temperature, Unit, grams, in_celsius, in_fahrenheit, in_grams, in_milliliters,
    nearest_gas_mark,
};
use carvetime_core::roast::OvenLevel;
use carvetime_core::source;

pub(super) fn units(amount: &Amount, to: Option<Unit>, butter: bool, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let from = amount.unit().ok_or(NotUnderstood::Unknown)?;
    if from == Unit::Degree {
        // "180 degrees in Fahrenheit" are of the other scale; of no scale, they are the asker's own.
        let scale = match to {
            Some(Unit::Fahrenheit) => Unit::Celsius,
            Some(Unit::Celsius) => Unit::Fahrenheit,
            _ if asker.ground.metric => Unit::Celsius,
            _ => Unit::Fahrenheit,
        };
        return units(&Amount::new(amount.value(), Some(scale)), to.filter(|to| *to != Unit::Degree), butter, asker);
    }
    let to = to.filter(|to| *to != from).unwrap_or_else(|| other_half(from));
    let said = |value: f64, unit| Arg::from(amount_text(value, unit, 2));
    let mut answer = Answer::new("unit-convert");
    if butter {
        answer = answer.from(source::STICK);
    }
    if from.measure() == Measure::Temperature {
        let temperature = amount.temperature().ok_or(NotUnderstood::Impossible(Text::new("ask-no-mark")))?;
        return temperatures(answer, amount.value(), from, to, temperature);
    }
    if from.measure() == Measure::Span {
        return spans(answer, amount, to);
    }
    let result = match (to.measure(), from.measure()) {
        (Measure::Mass, Measure::Mass) => amount.mass().and_then(|mass| Some(in_grams(mass) / to.grams()?)),
        (Measure::Volume, Measure::Volume) => {
            amount.volume(asker.spoons).and_then(|volume| Some(in_milliliters(volume) / to.milliliters(asker.spoons)?))
        }
        _ if butter => butter_in(amount, to, asker),
        _ => return Err(NotUnderstood::Impossible(Text::new("ask-no-substance"))),
    };
    let result = result.filter(|value| value.is_finite()).ok_or(NotUnderstood::Unknown)?;
    let name = if matches!(to.measure(), Measure::Mass) { "mass" } else { "volume" };
    let parts = amount.parts().filter_map(|part| Some(amount_text(part.value, part.unit?, 3)));
    Ok(answer
        .say(Text::new("ask-convert").with("given", Arg::List(parts.collect())).with("result", said(result, to)))
        .value(name, result, symbol(to)))
}

/// "How hot is a medium oven": what recipes mean by it.
pub(super) fn oven_level(level: OvenLevel, asker: &Asker) -> Answer {
    let setting = level.setting(asker.ground.metric);
    let (value, unit) = match asker.ground.metric {
        true => (in_celsius(setting), "°C"),
        false => (in_fahrenheit(setting), "°F"),
    };
    let said = Text::new("ask-oven-level").with("level", Arg::Choice(level.name()));
    Answer::new("oven-temp")
        .say(said.with("setting", Arg::Temperature(setting)))
        .value("temperature", value, unit)
        .from(source::OVEN_LEVEL)
}

fn temperatures(
    answer: Answer,
    given: f64,
    from: Unit,
    to: Unit,
    temperature: Temperature,
) -> Result<Answer, NotUnderstood> {
    // Absolute zero is -459.67 °F; nothing hotter than a forge is a kitchen's business.
    if !(-273.15..=2000.0).contains(&in_celsius(temperature)) {
        return Err(NotUnderstood::Impossible(Text::new("ask-no-temperature")));
    }
    let mark = nearest_gas_mark(temperature);
    let (f, c) = (in_fahrenheit(temperature), in_celsius(temperature));
    let say = |unit, value| {
        Text::new("ask-convert")
            .with("given", Arg::List(vec![amount_text(given, from, 2)]))
            .with("result", Arg::from(amount_text(value, unit, 1)))
    };
    Ok(match (to, mark) {
        (Unit::GasMark, Some(mark)) => {
            answer.say(say(Unit::GasMark, mark)).value("temperature", mark, "gas mark").from(source::GAS_MARK)
        }
        (Unit::GasMark, None) => return Err(NotUnderstood::Impossible(Text::new("ask-no-mark"))),
        (Unit::Celsius | Unit::Degree, _) if from == Unit::Thermostat || to == Unit::Celsius => {
            answer.say(say(Unit::Celsius, c)).value("temperature", c, "°C")
        }
        _ => answer.say(say(Unit::Fahrenheit, f)).value("temperature", f, "°F"),
    })
    .map(|answer| match from {
        Unit::GasMark => answer.from(source::GAS_MARK),
        Unit::Thermostat => answer.from(source::THERMOSTAT),
        _ => answer,
    })
}

/// A span of time in another of its units.
fn spans(answer: Answer, amount: &Amount, to: Unit) -> Result<Answer, NotUnderstood> {
    let span = amount.span().ok_or(NotUnderstood::Unknown)?;
    let each = to.seconds().ok_or(NotUnderstood::Unknown)?;
    let result = span.as_seconds_f64() / each;
    let given = Text::new("ask-span").with("span", Arg::Span(span));
    Ok(answer
        .say(
            Text::new("ask-convert")
                .with("given", Arg::List(vec![given]))
                .with("result", Arg::from(amount_text(result, to, 2))),
        )
        .value("time", result, symbol(to)))
}

/// Butter: a stick is 113 g and half a US cup.
fn butter_in(amount: &Amount, to: Unit, asker: &Asker) -> Option<f64> {
    let stick_ml = Unit::Stick.milliliters(asker.spoons)?;
    let mass =
        amount.mass().or_else(|| Some(grams(in_milliliters(amount.volume(asker.spoons)?) / stick_ml * STICK_G)))?;
    match to.measure() {
        Measure::Volume => Some(in_grams(mass) / STICK_G * stick_ml / to.milliliters(asker.spoons)?),
        _ => Some(in_grams(mass) / to.grams()?),
    }
}

/// The unit the other half of the world would use.
fn other_half(unit: Unit) -> Unit {
    match unit {
        Unit::Pound | Unit::MetricPound => Unit::Kilogram,
        Unit::Kilogram => Unit::Pound,
        Unit::Gram | Unit::Milligram => Unit::Ounce,
        Unit::Ounce | Unit::Stick => Unit::Gram,
        Unit::Milliliter | Unit::Liter => Unit::Cup,
        Unit::Fahrenheit | Unit::GasMark | Unit::Thermostat => Unit::Celsius,
        Unit::Celsius => Unit::Fahrenheit,
        _ => Unit::Milliliter,
    }
}
