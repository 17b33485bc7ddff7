//! A message by name: which Fluent message, with which arguments. No language yet.

use carvetime_core::quantity::{Mass, Temperature, TemperatureInterval, Volume};
use chrono::{DateTime, TimeDelta, Utc};
use std::borrow::Cow;

/// A message of `locales/` with its arguments.
#[derive(Debug, Clone, PartialEq)]
pub struct Text {
    /// Fluent id.
    pub id: Cow<'static, str>,
    /// Arguments by name.
    pub args: Vec<(&'static str, Arg)>,
}

/// An argument, rendered for the reader's locale, units and zone.
#[derive(Debug, Clone, PartialEq)]
pub enum Arg {
    /// Foreign text (a name, a quotation): escaped, never interpreted.
    Verbatim(String),
    /// A word used by Fluent's own selector (`[breast]`), never shown raw.
    Choice(&'static str),
    /// A whole number; also selects the plural.
    Count(i64),
    /// A number with this many decimals at most.
    Number(f64, u8),
    /// A mass of a bird: pounds or kilograms by the reader's units.
    Mass(Mass),
    /// A small mass: grams (ounces are useless for salt).
    Grams(Mass),
    /// A volume of salt or spice in the reader's spoons, rounded to what can be measured.
    Spoons(Volume),
    /// What is left of a total for one place when the others have had their spoons, so that what is measured adds up.
    SpoonsLeft {
        /// All of it.
        total: Volume,
        /// The other places: how many of each, and how much each gets.
        others: Vec<(u8, Volume)>,
    },
    /// A temperature: °F or °C, rounded as a cook reads it.
    Temperature(Temperature),
    /// A difference of temperatures: `10 °F`, `6 °C`.
    Degrees(TemperatureInterval),
    /// An amount of water or broth: quarts and cups, or litres.
    Liquid(Volume),
    /// A span of time: `2 h 30 min`. Its sign is dropped.
    Span(TimeDelta),
    /// From this span to that one.
    SpanRange(TimeDelta, TimeDelta),
    /// A time of day: `5:00 PM`, `17:00`.
    Clock(DateTime<Utc>),
    /// A day and a time of day: `Thu 5:00 PM`; the date too when more than six days away.
    DayClock(DateTime<Utc>),
    /// A day and a time of day by the clock of another place, with its name: `Thu 5:00 PM (Denver)`.
    There(DateTime<Utc>, chrono_tz::Tz, String),
    /// A day: `Thursday, November 25`.
    Day(DateTime<Utc>),
    /// The name of the dish at that place of the plan; put in before a message leaves the room.
    Dish(u8),
    /// Another message.
    Text(Box<Text>),
    /// Several messages, joined by the locale's list rules (`a, b and c`).
    List(Vec<Text>),
    /// Several messages, each on its own line.
    Lines(Vec<Text>),
    /// A person to be notified by the platform.
    Mention {
        /// Whom.
        person: crate::room::PersonId,
        /// Name to show.
        name: String,
    },
}

impl Text {
    /// The message `id`, still without arguments.
    pub fn new(id: &'static str) -> Self {
        Self { id: Cow::Borrowed(id), args: Vec::new() }
    }

    /// The message `FAMILY-NAME`: one of a family of messages, told apart by a stable name (`Text::named("step", "thaw")`
    /// is `step-thaw`). Every message of `locales/` that begins with `FAMILY-` counts as used.
    pub fn named(family: &'static str, name: &str) -> Self {
        Self { id: Cow::Owned(format!("{family}-{name}")), args: Vec::new() }
    }

    /// With an argument more.
    #[must_use]
    pub fn with(mut self, name: &'static str, arg: Arg) -> Self {
        self.args.push((name, arg));
        self
    }
}

impl From<Text> for Arg {
    fn from(text: Text) -> Self {
        Arg::Text(Box::new(text))
    }
}
