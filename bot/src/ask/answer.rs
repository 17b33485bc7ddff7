//! An answer: what was understood and what follows, in messages, numbers and sources.

use super::salt::name_of;
use crate::words::{Arg, Text};
use carvetime_core::bird::{Bird, Condition};
use carvetime_core::quantity::{Unit, in_kilograms, in_pounds};
use carvetime_core::salt::OwnSalt;
use carvetime_core::source::{Source, Standing};
use chrono::TimeDelta;

/// An answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// Stable name of the question's kind.
    pub kind: &'static str,
    /// Paragraphs: the answer, then what to take care of.
    pub texts: Vec<Text>,
    /// Its numbers, for programs.
    pub values: Vec<Value>,
    /// Where they come from, for "why?".
    pub sources: Vec<Source>,
    /// What must be told first. Then `texts` is empty.
    pub ask_back: Option<AskBack>,
    /// A salt to remember for the person.
    pub own_salt: Option<OwnSalt>,
}

/// One number of an answer.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize)]
pub struct Value {
    /// What it is.
    pub name: &'static str,
    /// The number, to two decimals.
    pub value: f64,
    /// Its unit.
    pub unit: &'static str,
}

/// A question back. The old question with the reply behind it is the new question.
#[derive(Debug, Clone, PartialEq)]
pub struct AskBack {
    /// What is asked.
    pub text: Text,
    /// Replies to choose from; empty where a number must be typed.
    pub choices: Vec<Choice>,
}

/// A reply to choose.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// Its label.
    pub label: Text,
    /// What it adds to the question's text, in words every language's reader knows.
    pub adds: &'static str,
}

impl Answer {
    /// An answer of that kind, still empty.
    pub(super) fn new(kind: &'static str) -> Self {
        Self { kind, texts: Vec::new(), values: Vec::new(), sources: Vec::new(), ask_back: None, own_salt: None }
    }

    /// A question back.
    pub(super) fn back(kind: &'static str, text: Text, choices: Vec<Choice>) -> Self {
        Self { ask_back: Some(AskBack { text, choices }), ..Self::new(kind) }
    }

    pub(super) fn say(mut self, text: Text) -> Self {
        self.texts.push(text);
        self
    }

    pub(super) fn say_all(mut self, texts: impl IntoIterator<Item = Text>) -> Self {
        self.texts.extend(texts);
        self
    }

    pub(super) fn say_if(self, condition: bool, text: impl FnOnce() -> Text) -> Self {
        if condition { self.say(text()) } else { self }
    }

    /// Adds a number, rounded to two decimals.
    pub(super) fn value(mut self, name: &'static str, value: f64, unit: &'static str) -> Self {
        self.values.push(Value { name, value: (value * 100.0).round() / 100.0, unit });
        self
    }

    /// Adds a number cut to two decimals: an amount that must not come out larger than it is.
    pub(super) fn value_cut(mut self, name: &'static str, value: f64, unit: &'static str) -> Self {
        self.values.push(Value { name, value: (value * 100.0 + 1e-6).floor() / 100.0, unit });
        self
    }

    pub(super) fn span_value(self, name: &'static str, span: TimeDelta, unit: &'static str) -> Self {
        let seconds = span.as_seconds_f64();
        self.value(name, if unit == "h" { seconds / 3600.0 } else { seconds / 60.0 }, unit)
    }

    pub(super) fn from(mut self, source: Source) -> Self {
        if !self.sources.contains(&source) {
            self.sources.push(source);
        }
        self
    }

    /// Everything to be said: the answer, or what is asked back.
    pub fn lines(&self) -> Vec<Text> {
        match &self.ask_back {
            Some(back) => vec![back.text.clone()],
            None => self.texts.clone(),
        }
    }
}

/// Where a number comes from, in one line. Titles stay in the language they were printed in.
pub fn source_line(source: &Source) -> Text {
    let place: Vec<&str> = [source.edition, source.table].into_iter().filter(|part| !part.is_empty()).collect();
    let line = match source.standing {
        Standing::Seen => Text::new("ask-source-seen"),
        Standing::SeenSecondary => Text::new("ask-source-seen-secondary"),
        Standing::CommonPractice => Text::new("ask-source-common-practice"),
        Standing::FromMemory => Text::new("ask-source-from-memory"),
        Standing::Derived => Text::new("ask-source-derived"),
    };
    let mut title = source.title.to_owned();
    for part in place {
        title.push_str(", ");
        title.push_str(part);
    }
    line.with("publisher", Arg::Verbatim(source.publisher.to_owned())).with("title", Arg::Verbatim(title))
}

/// `14 lb frozen turkey`.
pub(super) fn bird_text(bird: &Bird) -> Text {
    Text::new("ask-bird")
        .with("mass", Arg::Mass(bird.mass.get()))
        .with("kind", Arg::from(Text::named("ask-kind", bird.kind.name())))
        .with("condition", Arg::Choice(bird.condition.name()))
}

/// Asks for the weight of the bird.
pub(super) fn how_heavy(kind: &'static str) -> Answer {
    Answer::back(kind, Text::new("ask-back-mass"), Vec::new())
}

/// The value of a bird's mass in the unit a person of those units reads.
pub(super) fn mass_value(
    answer: Answer,
    name: &'static str,
    mass: carvetime_core::quantity::Mass,
    metric: bool,
) -> Answer {
    if metric { answer.value(name, in_kilograms(mass), "kg") } else { answer.value(name, in_pounds(mass), "lb") }
}

/// A span that a table prints in seconds or tenths of a minute, never shown shorter than it is.
pub(crate) fn exact_span(span: TimeDelta) -> Arg {
    let seconds = span.as_seconds_f64();
    if seconds < 120.0 {
        Arg::from(Text::new("ask-seconds").with("n", Arg::Number((seconds * 10.0 - 1e-6).ceil() / 10.0, 1)))
    } else if seconds < 3600.0 {
        Arg::from(Text::new("ask-minutes").with("n", Arg::Number((seconds / 6.0 - 1e-6).ceil() / 10.0, 1)))
    } else {
        Arg::Span(TimeDelta::minutes((seconds / 60.0 - 1e-6).ceil() as i64))
    }
}

/// The symbol under which a unit stands in values.
pub(super) fn symbol(unit: Unit) -> &'static str {
    match unit {
        Unit::Milligram => "mg",
        Unit::Gram => "g",
        Unit::Kilogram => "kg",
        Unit::Pound => "lb",
        Unit::MetricPound => "500 g",
        Unit::Ounce => "oz",
        Unit::Stick => "stick",
        Unit::Pinch => "pinch",
        Unit::Teaspoon => "tsp",
        Unit::Tablespoon => "tbsp",
        Unit::Cup => "cup",
        Unit::FluidOunce => "fl oz",
        Unit::Pint => "pt",
        Unit::Quart => "qt",
        Unit::Gallon => "gal",
        Unit::Milliliter => "mL",
        Unit::Liter => "L",
        Unit::Fahrenheit => "°F",
        Unit::Celsius => "°C",
        Unit::Degree => "°",
        Unit::GasMark => "gas mark",
        Unit::Thermostat => "thermostat",
        Unit::Second => "s",
        Unit::Minute => "min",
        Unit::Hour => "h",
        Unit::Day => "d",
        Unit::Percent => "%",
    }
}

/// A number with its unit, in words of the language.
pub(super) fn amount_text(value: f64, unit: Unit, decimals: u8) -> Text {
    Text::new("ask-amount").with("n", Arg::Number(value, decimals)).with("unit", Arg::Choice(unit.name()))
}

/// The usual name of a salt, for sentences.
pub(super) fn salt_arg(salt: &carvetime_core::salt::Salt) -> Arg {
    Arg::from(name_of(salt))
}

/// The condition a bird is asked about when none was said.
pub(super) const USUAL: Condition = Condition::Fresh;
