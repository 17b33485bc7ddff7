//! What a room and a person are between two turns. These types are what the book stores: change them with a version.

use super::heard::{PersonId, RoomId, RoomKind};
use serde::{Deserialize, Serialize};

/// A room.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Room {
    /// Id.
    pub id: RoomId,
    /// Private or group.
    pub kind: RoomKind,
}

/// A person.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Person {
    /// Id.
    pub id: PersonId,
    /// Name to show.
    pub name: String,
}
