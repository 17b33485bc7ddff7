//! The seam to the words: whoever can render a [`Text`] for an audience will do.

use crate::room::state::{Person, Room};
use crate::words::Text;
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
    /// `text` for `audience` as HTML with only `<b>`, `<i>` and mention links; arguments are escaped.
    fn html(&self, text: &Text, audience: Audience<'_>, now: DateTime<Utc>) -> String;

    /// `text` for a button: no markup.
    fn label(&self, text: &Text, audience: Audience<'_>, now: DateTime<Utc>) -> String;
}
