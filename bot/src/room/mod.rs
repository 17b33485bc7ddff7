//! The conversation as a pure function: what was heard, the state it concerns and the time give a [`Turn`].

pub mod heard;
pub mod plan_words;
pub mod state;
pub mod turn;

pub use heard::{Heard, PersonId, RoomId, RoomKind, Speaker, What};
pub use turn::{Bell, BellKind, Button, How, Say, To, Turn, Urgency};

use carvetime_core::plan::Moment;
use state::{Person, Room};
use std::collections::BTreeMap;

/// The state a turn concerns: the room, and what is known of the people in it (the speaker included).
#[derive(Debug, Clone, PartialEq)]
pub struct Scene {
    /// The room. A room nobody has spoken in yet comes as [`Room::new`].
    pub room: Room,
    /// Its people.
    pub people: BTreeMap<PersonId, Person>,
}

/// What the room does about `heard`. Reads no clock, opens no file, sends nothing.
pub fn decide(_scene: &Scene, _heard: &Heard, _now: Moment) -> Turn {
    Turn::default()
}
