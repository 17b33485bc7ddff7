//! What a turn of the conversation results in: state, bells, and messages still without words.

use super::chart::Chart;
use super::heard::{PersonId, RoomId};
use super::sheet::Sheet;
use super::state::{Person, Room};
use crate::words::Text;
use carvetime_core::plan::Step;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};

/// Everything one turn decided. The engine stores it in one transaction.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Turn {
    /// The room's new state; `None` leaves it as it was.
    pub room: Option<Room>,
    /// People whose own settings changed.
    pub people: Vec<Person>,
    /// All bells of this room from now on; `None` leaves them as they were.
    pub bells: Option<Vec<Bell>>,
    /// What to say, in this order.
    pub says: Vec<Say>,
    /// The room's data move to this id, or (with `forget`) vanish.
    pub moved: Option<RoomId>,
    /// Delete what is kept about the room or the person.
    pub forget: Option<Forget>,
}

/// What `/forget` deletes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Forget {
    /// The room: state, bells, outbox.
    Room(RoomId),
    /// A person: settings, private room.
    Person(PersonId),
}

/// Something to wake up for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Bell {
    /// When.
    pub at: DateTime<Utc>,
    /// What for.
    pub kind: BellKind,
}

/// What a bell is for.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum BellKind {
    /// A job is due or to be called again. `step` is the contract's name, `nth` counts from 0.
    Job {
        /// Step name.
        step: String,
        /// Which of several.
        nth: u8,
        /// First call, second, ...
        call: u8,
    },
    /// A free job is offered ahead of time.
    Offer {
        /// Step name.
        step: String,
        /// Which of several.
        nth: u8,
    },
    /// A safety limit runs out (the two hours after the heat).
    Limit {
        /// Name of the limit, as in `locales` (`limit-NAME`).
        name: String,
    },
    /// A bell of a plan that was accepted beside another.
    Beside {
        /// Serial of the plan.
        serial: u32,
        /// The bell.
        kind: Box<BellKind>,
    },
    /// A follow-up that is not a job (feedback, the board's refresh).
    Note {
        /// Name.
        name: String,
    },
}

/// Whom a message is for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum To {
    /// The room of the turn, or another.
    Room(RoomId),
    /// One person privately.
    Person(PersonId),
    /// The person who pressed: a notice only they see. Always text without buttons.
    Press(String),
}

/// New message or change of an old one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum How {
    /// A new message (people are notified).
    New,
    /// Change the newest message with this key in place; if there is none, send a new one.
    Edit,
    /// A new message that people are not notified of.
    Quiet,
    /// Take the buttons off the newest message with this key and leave its text.
    Close,
}

/// What goes first when much waits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Urgency {
    /// Someone may get hurt.
    Safety,
    /// Someone waits for an answer.
    Answer,
    /// A reminder.
    Due,
    /// The board.
    Board,
}

/// One message, still without words.
#[derive(Debug, Clone, PartialEq)]
pub struct Say {
    /// For whom.
    pub to: To,
    /// Logical name of the message in its chat (`board`, `job-thaw-0`): later edits and presses refer to it.
    pub key: Option<String>,
    /// New or edit.
    pub how: How,
    /// Paragraphs; each is rendered and they are joined by line breaks.
    pub text: Vec<Text>,
    /// Rows of buttons.
    pub buttons: Vec<Vec<Button>>,
    /// Order of sending.
    pub urgency: Urgency,
    /// The job it is about.
    pub step: Option<Step>,
    /// Pin it where the bot may.
    pub pin: bool,
    /// A new message under its key takes the older one's place: that one goes.
    pub sole: bool,
    /// A file to go with it.
    pub file: Option<File>,
    /// Asks the platform to open a reply field for the person it is for.
    pub ask_reply: bool,
    /// A keyboard button that shares the place (private chats only).
    pub ask_place: bool,
    /// Said in a room to one of many: in the words they read.
    pub reader: Option<PersonId>,
    /// In this language, by its IETF tag, whatever who reads it has: it answers what was said in it.
    pub language: Option<String>,
}

/// A file made by a turn.
#[derive(Debug, Clone, PartialEq)]
pub struct File {
    /// Name with ending.
    pub name: String,
    /// Content.
    pub content: FileContent,
}

/// What is in a file.
#[derive(Debug, Clone, PartialEq)]
pub enum FileContent {
    /// Finished.
    Bytes(Vec<u8>),
    /// A calendar, still without words.
    Calendar(Calendar),
    /// A picture, still to be drawn.
    Picture(Box<Chart>),
    /// A page to print, still to be drawn.
    Sheet(Box<Sheet>),
}

/// A calendar, still without words.
#[derive(Debug, Clone, PartialEq)]
pub struct Calendar {
    /// When it was made.
    pub at: DateTime<Utc>,
    /// Its events.
    pub events: Vec<Event>,
}

/// An event of a calendar.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// The same for the same job in every export.
    pub uid: String,
    /// Grows with every change.
    pub sequence: u32,
    /// From.
    pub start: DateTime<Utc>,
    /// To; later than `start`.
    pub end: DateTime<Utc>,
    /// In a few words.
    pub summary: Text,
    /// Paragraphs.
    pub description: Vec<Text>,
    /// It was exported before and takes place no more.
    pub cancelled: bool,
}

/// A button.
#[derive(Debug, Clone, PartialEq)]
pub struct Button {
    /// Its label.
    pub label: Text,
    /// What comes back when it is pressed: at most 64 bytes.
    pub data: String,
}

impl Say {
    /// A new answer to `to`.
    pub fn new(to: To, text: Text) -> Self {
        Self::of(to, vec![text])
    }

    /// A new answer of several paragraphs.
    pub fn of(to: To, text: Vec<Text>) -> Self {
        Self {
            to,
            key: None,
            how: How::New,
            text,
            buttons: Vec::new(),
            urgency: Urgency::Answer,
            step: None,
            pin: false,
            sole: false,
            file: None,
            ask_reply: false,
            ask_place: false,
            reader: None,
            language: None,
        }
    }
}
