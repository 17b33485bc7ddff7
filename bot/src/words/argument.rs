//! Each kind of argument written out: masses, spoons, temperatures, spans, times, people.
//!
//! Unit names are messages of `locales/*/units.ftl` like any other; this module decides which of them and how a number is
//! rounded. Rounds for reading only: a number to act on has been rounded by core before.

use super::formats::{Formats, days_apart};
use super::html::{escape, link};
use super::reader::{Reader, UnitSystem};
use super::text::{Arg, Text};
use super::voice::Tongue;
use carvetime_core::quantity::{
    Mass, SpoonSystem, Temperature, TemperatureInterval, Volume, fahrenheit, in_celsius, in_fahrenheit, in_grams,
    in_kilograms, in_milliliters, in_pounds, round_spoons,
};
use chrono::{DateTime, TimeDelta, Utc};
use chrono_tz::Tz;
use fluent_bundle::FluentValue;
use uom::si::temperature_interval::{degree_celsius, degree_fahrenheit};

/// The value Fluent gets for an argument: numbers stay numbers (for the plural), the rest is finished text.
pub(super) fn value<'a>(tongue: &Tongue, arg: &'a Arg, reader: &Reader) -> FluentValue<'a> {
    match arg {
        Arg::Choice(word) => FluentValue::from(*word),
        Arg::Count(n) => FluentValue::from(*n),
        Arg::Number(value, decimals) => FluentValue::from(round_to(*value, *decimals)),
        other => FluentValue::from(written(tongue, other, reader)),
    }
}

fn written(tongue: &Tongue, arg: &Arg, reader: &Reader) -> String {
    let say = |text: Text| tongue.say(&text, reader);
    let formats = tongue.formats();
    match arg {
        Arg::Verbatim(text) => escape(text),
        Arg::Choice(word) => (*word).to_owned(),
        Arg::Count(n) => formats.number(*n as f64),
        Arg::Number(value, decimals) => formats.number(round_to(*value, *decimals)),
        Arg::Mass(mass) => say(bird_mass(*mass, reader.units)),
        Arg::Grams(mass) => say(small_mass(*mass)),
        Arg::Spoons(volume) => spoons(*volume, reader.spoons).into_iter().map(say).collect::<Vec<_>>().join(" + "),
        Arg::SpoonsLeft { total, others } => {
            let left = spoons_left(*total, others, reader.spoons);
            spoons(left, reader.spoons).into_iter().map(say).collect::<Vec<_>>().join(" + ")
        }
        Arg::Liquid(volume) => say(liquid(*volume, reader.units)),
        Arg::Temperature(temperature) => say(degrees(*temperature, reader.units)),
        Arg::Degrees(interval) => say(degrees_apart(*interval, reader.units)),
        Arg::Span(span) => say(self::span(*span)),
        Arg::SpanRange(from, to) => say(span_range(*from, *to)),
        Arg::Clock(at) => formats.clock(at.with_timezone(&reader.zone).time()),
        Arg::DayClock(at) => say(day_clock(*at, reader.zone, reader, formats)),
        Arg::There(at, zone, place) => say(Text::new("units-there")
            .with("when", Arg::from(day_clock(*at, *zone, reader, formats)))
            .with("place", Arg::Verbatim(place.clone()))),
        Arg::Day(at) => {
            let local = at.with_timezone(&reader.zone).date_naive();
            let now = reader.now.with_timezone(&reader.zone).date_naive();
            // A year is said only where it could be mistaken: January is near to December.
            formats.day(local, (local - now).num_days().abs() > 300)
        }
        // Nobody has put its name in: better a gap than a number that means nothing to anyone.
        Arg::Dish(_) => String::new(),
        Arg::Text(text) => tongue.say(text, reader),
        Arg::List(texts) => formats.list(&texts.iter().map(|text| tongue.say(text, reader)).collect::<Vec<_>>()),
        Arg::Lines(texts) => texts.iter().map(|text| tongue.say(text, reader)).collect::<Vec<_>>().join("\n"),
        Arg::Mention { person, name } => link(person.0, name),
    }
}

/// A day and a time of day by a zone's clock.
fn day_clock(at: DateTime<Utc>, zone: Tz, reader: &Reader, formats: &Formats) -> Text {
    let local = at.with_timezone(&zone).naive_local();
    let now = reader.now.with_timezone(&zone).naive_local();
    let day = if days_apart(local, now) > 6 { formats.short_day(local.date()) } else { formats.weekday(local.date()) };
    let clock = formats.clock(local.time());
    Text::new("units-day-clock").with("day", Arg::Verbatim(day)).with("clock", Arg::Verbatim(clock))
}

/// `value` with at most `decimals` decimals; never minus zero.
fn round_to(value: f64, decimals: u8) -> f64 {
    let scale = 10f64.powi(i32::from(decimals.min(9)));
    (value * scale).round() / scale + 0.0
}

/// `14 lb 6 oz`, `6.5 kg`; a small bird to ten grams.
fn bird_mass(mass: Mass, units: UnitSystem) -> Text {
    match units {
        UnitSystem::Us => {
            let ounces = (in_pounds(mass) * 16.0).round() as i64;
            match (ounces / 16, ounces % 16) {
                (0, oz) => Text::new("units-oz").with("oz", Arg::Count(oz)),
                (lb, 0) => Text::new("units-lb").with("lb", Arg::Count(lb)),
                (lb, oz) => Text::new("units-lb-oz").with("lb", Arg::Count(lb)).with("oz", Arg::Count(oz)),
            }
        }
        UnitSystem::Metric => {
            let kg = in_kilograms(mass);
            match kg {
                kg if kg < 0.9995 => Text::new("units-g").with("g", Arg::Number(in_grams(mass), 0)),
                kg if kg < 3.0 => Text::new("units-kg").with("kg", Arg::Number(kg, 2)),
                kg => Text::new("units-kg").with("kg", Arg::Number(kg, 1)),
            }
        }
    }
}

/// Grams: tenths below ten.
fn small_mass(mass: Mass) -> Text {
    let g = in_grams(mass);
    Text::new("units-g").with("g", Arg::Number(g, if g < 9.95 { 1 } else { 0 }))
}

/// Cups, tablespoons and teaspoons as core rounds them.
fn spoons(volume: Volume, system: SpoonSystem) -> Vec<Text> {
    let count = round_spoons(volume, system);
    let parts = [
        ("units-cup", count.quarter_cups * 2),
        ("units-tbsp", count.tablespoons * 8),
        ("units-tsp", count.eighth_teaspoons),
    ];
    let texts: Vec<Text> = parts.into_iter().filter(|(_, n)| *n > 0).map(|(id, n)| spoon(id, n)).collect();
    if texts.is_empty() { vec![Text::new("units-pinch")] } else { texts }
}

/// Eighths as people write them.
const EIGHTHS: [&str; 8] = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];

/// A number of eighths as `1¼`, and `many` to tell one spoon (or part of one) from several.
fn spoon(id: &'static str, eighths: u32) -> Text {
    let whole = eighths / 8;
    let fraction = EIGHTHS.get((eighths % 8) as usize).copied().unwrap_or_default();
    let n = if whole == 0 { fraction.to_owned() } else { format!("{whole}{fraction}") };
    Text::new(id).with("n", Arg::Verbatim(n)).with("many", Arg::Count(if eighths > 8 { 2 } else { 1 }))
}

/// US fluid: 1 quart = 0.946 352 946 L, a quarter of a US gallon of 231 cubic inches.
const QUART_ML: f64 = 946.352_946;

/// Quarts to a half (cups to a quarter below one), or litres.
fn liquid(volume: Volume, units: UnitSystem) -> Text {
    let ml = in_milliliters(volume);
    match units {
        UnitSystem::Us if ml / QUART_ML * 8.0 < 7.5 => spoon("units-cup", (ml / QUART_ML * 16.0).round() as u32 * 2),
        UnitSystem::Us => spoon("units-qt", (ml / QUART_ML * 2.0).round() as u32 * 4),
        UnitSystem::Metric if ml < 995.0 => {
            Text::new("units-ml").with("ml", Arg::Number((ml / 10.0).round() * 10.0, 0))
        }
        UnitSystem::Metric => Text::new("units-l").with("l", Arg::Number(ml / 1000.0, 1)),
    }
}

fn degrees(temperature: Temperature, units: UnitSystem) -> Text {
    let (id, n, whole): (_, _, fn(Temperature) -> f64) = match units {
        UnitSystem::Us => ("units-fahrenheit", in_fahrenheit(temperature), in_fahrenheit),
        UnitSystem::Metric => ("units-celsius", in_celsius(temperature), in_celsius),
    };
    // Nothing below a mark is ever shown as the mark: 73.6 °C is not 74.
    let short = |mark: f64| {
        let shown = n.round() >= whole(fahrenheit(mark)).round();
        in_fahrenheit(temperature) < mark - SAME_F && shown
    };
    let number = match MARKS_F.into_iter().any(short) {
        true => Arg::Number((n * 10.0).floor() / 10.0, 1),
        false => Arg::Number(n, 0),
    };
    Text::new(id).with("n", number)
}

/// What a spot has to reach, and what it has to keep, °F.
const MARKS_F: [f64; 2] = [165.0, 140.0];
/// Told in one scale and kept in the other, a reading comes back this much lower at most.
const SAME_F: f64 = 0.04;

fn degrees_apart(interval: TemperatureInterval, units: UnitSystem) -> Text {
    match units {
        UnitSystem::Us => Text::new("units-fahrenheit").with("n", Arg::Number(interval.get::<degree_fahrenheit>(), 0)),
        UnitSystem::Metric => Text::new("units-celsius").with("n", Arg::Number(interval.get::<degree_celsius>(), 0)),
    }
}

/// Minutes, then hours and minutes, then (from two days on) days and hours.
fn span(span: TimeDelta) -> Text {
    let minutes = (span.abs().num_seconds() + 30) / 60;
    // From a day on nobody counts minutes.
    let minutes = if minutes >= 24 * 60 { (minutes + 30) / 60 * 60 } else { minutes };
    let (h, min) = (minutes / 60, minutes % 60);
    match (h, min) {
        (0, 0) => Text::new("units-moment"),
        (0, min) => Text::new("units-min").with("min", Arg::Count(min)),
        (h, _) if h >= 48 => {
            let days = Text::new("units-days").with("days", Arg::Count(h / 24));
            match h % 24 {
                0 => days,
                h => Text::new("units-days-h").with("days", days.into()).with("h", Arg::Count(h)),
            }
        }
        (h, 0) => Text::new("units-h").with("h", Arg::Count(h)),
        (h, min) => Text::new("units-h-min").with("h", Arg::Count(h)).with("min", Arg::Count(min)),
    }
}

/// The total as it is measured, less the other places as they are measured; cut where no spoons make just that, so that all of them
/// together are never more than the total.
fn spoons_left(total: Volume, others: &[(u8, Volume)], system: SpoonSystem) -> Volume {
    let measured = |volume| round_spoons(volume, system).volume();
    let left = others.iter().fold(measured(total), |left, (count, each)| left - measured(*each) * f64::from(*count));
    let above = measured(left) - left;
    if above > left * 1e-6 { left - above } else { left }
}

/// `20–25 min`, `24–36 h`, `2 h 30 min to 3 h`; two equal ends are one span.
fn span_range(from: TimeDelta, to: TimeDelta) -> Text {
    let minutes = |span: TimeDelta| (span.abs().num_seconds() + 30) / 60;
    let (a, b) = (minutes(from), minutes(to));
    if a == b {
        span(from)
    } else if a > 0 && b < 60 {
        Text::new("units-range-min").with("from", Arg::Count(a)).with("to", Arg::Count(b))
    } else if a > 0 && a % 60 == 0 && b % 60 == 0 && b < 48 * 60 {
        Text::new("units-range-h").with("from", Arg::Count(a / 60)).with("to", Arg::Count(b / 60))
    } else if b >= 48 * 60 && a >= 24 * 60 && a % (24 * 60) == 0 && b % (24 * 60) == 0 {
        Text::new("units-range-days").with("from", Arg::Count(a / (24 * 60))).with("to", Arg::Count(b / (24 * 60)))
    } else {
        Text::new("units-range").with("from", span(from).into()).with("to", span(to).into())
    }
}
