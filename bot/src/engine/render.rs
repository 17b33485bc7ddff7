//! The seam to the words: whoever can render a [`Text`] for an audience will do. [`Voice`] does.

use crate::picture;
use crate::room::chart::Chart;
use crate::room::sheet::Sheet;
use crate::room::state::{Person, Room};
use crate::sheet;
use crate::words::{Reader, Text, Voice};
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

    /// A chart as a PNG for `audience`. `None`: the message goes without it.
    fn picture(&self, chart: &Chart, audience: Audience<'_>, now: DateTime<Utc>) -> Option<Vec<u8>>;

    /// A page to print as a PNG for `audience`. `None`: the message goes without it.
    fn sheet(&self, sheet: &Sheet, audience: Audience<'_>, now: DateTime<Utc>) -> Option<Vec<u8>>;
}

impl Render for Voice {
    fn html(&self, paragraphs: &[Text], audience: Audience<'_>, now: DateTime<Utc>) -> String {
        self.render(paragraphs, &reader(audience, now))
    }

    fn label(&self, text: &Text, audience: Audience<'_>, now: DateTime<Utc>) -> String {
        Voice::label(self, text, &reader(audience, now))
    }

    fn picture(&self, chart: &Chart, audience: Audience<'_>, now: DateTime<Utc>) -> Option<Vec<u8>> {
        picture::draw(chart, self, &reader(audience, now))
    }

    fn sheet(&self, page: &Sheet, audience: Audience<'_>, now: DateTime<Utc>) -> Option<Vec<u8>> {
        sheet::draw(page, self, &reader(audience, now))
    }
}

/// The reader that an audience amounts to: what a person chose, else what their room did, else what the language has.
pub fn reader(audience: Audience<'_>, now: DateTime<Utc>) -> Reader {
    match audience {
        Audience::Room(room) => room.taste.reader(now),
        Audience::Person(person, room) => person.reader(room, now),
    }
}
