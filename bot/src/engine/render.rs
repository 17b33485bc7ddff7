//! The seam to the words: whoever can render a [`Text`] for an audience will do. [`Voice`] does.

use crate::room::state::{Person, Room, Taste};
use crate::words::{Reader, Text, UnitSystem, Voice};
use chrono::{DateTime, Utc};

/// Who will read a message: it decides the language, the units and the zone.
#[derive(Debug, Clone, Copy)]
pub enum Audience<'a> {
    /// Everyone in a room.
    Room(&'a Room),
    /// One person, about a room.
    Person(&'a Person, &'a Room),
}

/// Renders messages.
pub trait Render: Send + Sync {
    /// Paragraphs for `audience` as HTML with only `<b>`, `<i>` and mention links; arguments are escaped.
    fn html(&self, paragraphs: &[Text], audience: Audience<'_>, now: DateTime<Utc>) -> String;

    /// A message for a button: no markup.
    fn label(&self, text: &Text, audience: Audience<'_>, now: DateTime<Utc>) -> String;
}

impl Render for Voice {
    fn html(&self, paragraphs: &[Text], audience: Audience<'_>, now: DateTime<Utc>) -> String {
        self.render(paragraphs, &reader(audience, now))
    }

    fn label(&self, text: &Text, audience: Audience<'_>, now: DateTime<Utc>) -> String {
        Voice::label(self, text, &reader(audience, now))
    }
}

/// The reader that an audience amounts to: what a person chose, else what their room did, else what the language has.
pub fn reader(audience: Audience<'_>, now: DateTime<Utc>) -> Reader {
    let nothing = Taste::default();
    let (own, room) = match audience {
        Audience::Room(room) => (&nothing, &room.taste),
        Audience::Person(person, room) => (&person.taste, &room.taste),
    };
    let language = own.language.as_deref().or(room.language.as_deref()).unwrap_or("en");
    let zone = own.zone().or(room.zone()).unwrap_or(chrono_tz::UTC);
    let mut reader = Reader::new(language, zone, now);
    if let Some(us) = own.us_units.or(room.us_units) {
        reader.units = if us { UnitSystem::Us } else { UnitSystem::Metric };
    }
    if let Some(spoons) = own.spoons().or(room.spoons()) {
        reader.spoons = spoons;
    }
    reader
}
