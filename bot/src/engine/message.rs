//! A message with its words, ready for a front end.

use super::Topic;
use crate::book::{OutboxKey, hex_bytes};
use crate::room::{How, RoomId, To, Urgency};
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};

/// A rendered message in the outbox.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Message {
    /// For whom.
    pub to: To,
    /// The room whose turn said it.
    pub room: RoomId,
    /// When it was said.
    pub at: DateTime<Utc>,
    /// Logical name within its chat.
    pub key: Option<String>,
    /// New or edit.
    pub how: How,
    /// Text with only `<b>`, `<i>` and mention links. Empty for [`How::Close`] and for an answer without words.
    pub html: String,
    /// Rows of buttons.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub buttons: Vec<Vec<Key>>,
    /// The platform's number of the message it changes, where its name is not kept.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub over: Option<i64>,
    /// The platform's number of the message it replies to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reply_to: Option<i64>,
    /// Where in the group it was asked for, and is answered. `None`: where the plan is at home.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub topic: Option<Topic>,
    /// Order of sending.
    pub urgency: Urgency,
    /// The job it is about, by the contract's name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<String>,
    /// Pin it where possible.
    #[serde(default)]
    pub pin: bool,
    /// The older message of its name goes: deleted, or at least without its buttons.
    #[serde(default)]
    pub sole: bool,
    /// A file to go with it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub file: Option<Attachment>,
    /// Open a reply field for the person it is for.
    #[serde(default)]
    pub ask_reply: bool,
    /// A keyboard button with this label shares the place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ask_place: Option<String>,
}

/// A button with its words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Key {
    /// What stands on it.
    pub label: String,
    /// What comes back: at most 64 bytes.
    pub data: String,
}

/// A file, as stored.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Attachment {
    /// Name with ending.
    pub name: String,
    /// Content.
    #[serde(with = "hex_bytes")]
    pub bytes: Vec<u8>,
    /// To be printed: it goes as it is, not as a picture made small.
    #[serde(default)]
    pub print: bool,
}

impl Message {
    /// The chat it goes to; none for the answer to a press.
    pub fn chat(&self) -> Option<RoomId> {
        match &self.to {
            To::Room(room) => Some(*room),
            To::Person(person) => Some(person.private_room()),
            To::Press(_) => None,
        }
    }

    /// Its place in the order of sending.
    pub(super) fn rank(&self) -> u8 {
        match self.to {
            To::Press(_) => OutboxKey::PRESS,
            To::Room(_) | To::Person(_) => OutboxKey::rank(self.urgency),
        }
    }
}

/// A message taken from the outbox to be sent. It stays in the book until its end is reported.
#[derive(Debug, Clone, PartialEq)]
pub struct Outgoing {
    /// What to report with.
    pub id: OutboxKey,
    /// The message.
    pub message: Message,
    /// The platform's number of the newest message with this key: what an edit changes. An edit without it goes as new.
    pub shown: Option<i64>,
    /// The topic to send it to.
    pub topic: Option<i32>,
}

/// Why a message was not sent.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Failure {
    /// It may go later.
    Later,
    /// This message will never go; others may.
    Refused,
    /// The message to be edited is gone: send it as new.
    Vanished,
    /// The topic is gone or closed: send it to the room itself.
    NoTopic,
    /// The chat cannot be written to any more.
    Gone,
    /// The group has become another.
    Migrated(RoomId),
}
