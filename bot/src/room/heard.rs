//! What a room can hear: words, presses, places, bells, and what the platform says of itself.
//!
//! Front ends translate into these types and nothing else reaches [`super::decide`]. They are stored in the inbox, so a
//! change of shape is a change of [`HEARD_VERSION`].

use super::turn::BellKind;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};

/// Version of the stored form of [`Heard`].
pub const HEARD_VERSION: u32 = 1;

/// A chat. Telegram's chat id; fixed small ids in the terminal and in rehearsals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub struct RoomId(pub i64);

/// A person. Telegram's user id; also the id of the person's private room.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub struct PersonId(pub i64);

impl PersonId {
    /// The private room of this person (on Telegram both have the same number).
    pub fn private_room(self) -> RoomId {
        RoomId(self.0)
    }
}

/// Private chat or group.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum RoomKind {
    /// One person and the bot.
    Private,
    /// Several people.
    Group,
}

/// Who spoke, as the platform tells it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Speaker {
    /// Id.
    pub id: PersonId,
    /// Name to show. Untrusted text.
    pub name: String,
    /// `@name` without the sign, if there is one.
    pub username: Option<String>,
    /// IETF tag of the person's app.
    pub language: Option<String>,
    /// Whether the platform says that they administer the chat.
    pub admin: bool,
    /// Whether the platform says that they are in the group: the one a link they follow leads into, or the public one they press in;
    /// open where nobody asked, or it did not answer.
    #[serde(default)]
    pub inside: Option<bool>,
}

/// One thing heard in one room.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Heard {
    /// Where.
    pub room: RoomId,
    /// What sort of room.
    pub kind: RoomKind,
    /// Who, if a person did it (an anonymous admin and a bell are nobody).
    pub by: Option<Speaker>,
    /// Said in the group's own name, which only its administrators can.
    #[serde(default)]
    pub for_group: bool,
    /// What.
    pub what: What,
}

/// What was heard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum What {
    /// Words.
    Said {
        /// The text as typed, command included. Untrusted.
        text: String,
        /// Meant for the bot: private chat, command, reply to the bot, or its name in the text.
        addressed: bool,
        /// Key of the bot's message replied to, where known.
        reply_to: Option<String>,
        /// The text replaces an earlier one.
        edited: bool,
    },
    /// A button.
    Pressed {
        /// Id to answer to.
        press: String,
        /// The data behind the button. Forgeable.
        data: String,
        /// Key of the message it stood on, where known.
        on: Option<String>,
    },
    /// A place on the map; the point is used once and not kept.
    Located {
        /// Degrees north.
        latitude: f64,
        /// Degrees east.
        longitude: f64,
    },
    /// A table was sent as a file: a thermometer's log.
    Document {
        /// The file's name. Untrusted.
        name: String,
        /// What was in it.
        content: Document,
    },
    /// Something came that cannot be read (a picture, a voice message).
    Unreadable,
    /// Someone says more than is listened to; what they said was left out.
    Flooded {
        /// Id to answer to, where it was a press.
        press: Option<String>,
    },
    /// The bot was added to the room or let in again.
    Welcomed,
    /// The bot was removed from the room or blocked.
    Removed,
    /// Someone has come into the group, or back into it.
    Came {
        /// Who.
        who: PersonId,
    },
    /// Someone has left the group or was removed from it.
    Left {
        /// Who.
        who: PersonId,
    },
    /// The board could not be pinned: the bot may not.
    NotPinned,
    /// The group has become another one; everything moves there.
    Migrated {
        /// Its new id.
        to: RoomId,
    },
    /// Bells that are due, oldest first. After a downtime there may be many.
    Rang {
        /// Each with the time it was set for.
        bells: Vec<(DateTime<Utc>, BellKind)>,
    },
}

/// What became of a file that was sent.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum Document {
    /// Its text. Untrusted.
    Text(String),
    /// Larger than what is fetched.
    TooLarge,
    /// It could not be fetched.
    Lost,
}
