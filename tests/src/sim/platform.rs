//! The platform of the simulation: chats with their messages, updates that are told until they are confirmed, and what goes wrong
//! on the way to it.

use super::witness::Witness;
use carvetime::engine::{Key, Outgoing};
use carvetime::room::{How, RoomId, RoomKind};
use chrono::{DateTime, Utc};
use std::collections::{BTreeMap, BTreeSet, VecDeque};

/// What a person did.
#[derive(Debug, Clone)]
pub struct Deed {
    /// Where.
    pub room: RoomId,
    /// What sort of chat.
    pub kind: RoomKind,
    /// Id and name.
    pub by: (i64, String),
    /// When.
    pub at: DateTime<Utc>,
    /// What.
    pub act: Act,
}

/// See [`Deed`].
#[derive(Debug, Clone)]
pub enum Act {
    /// Writes.
    Say(String),
    /// Presses a button of a message.
    Press {
        /// Data behind the button.
        data: String,
        /// Number of the message.
        message: i64,
    },
}

/// A message as it stands.
#[derive(Debug, Clone)]
pub struct Shown {
    /// Its text.
    pub html: String,
    /// Its buttons.
    pub buttons: Vec<Key>,
}

/// A chat.
#[derive(Debug, Default)]
pub struct Chat {
    /// Messages by number.
    pub messages: BTreeMap<i64, Shown>,
    /// Newest message by logical name.
    pub names: BTreeMap<String, i64>,
    next: i64,
    deleted: BTreeSet<i64>,
    /// Whether the bot may write here.
    pub open: bool,
}

/// See the module.
#[derive(Debug, Default)]
pub struct Platform {
    /// By id.
    pub chats: BTreeMap<RoomId, Chat>,
    /// Not confirmed yet, oldest first.
    pub queue: VecDeque<(u64, Deed)>,
    /// Confirmed lately; may be told again all the same.
    pub confirmed: VecDeque<(u64, Deed)>,
    /// Number of the next update.
    pub next: u64,
}

impl Platform {
    /// Somebody did something.
    pub fn hear(&mut self, deed: Deed) {
        self.queue.push_back((self.next, deed));
        self.next += 1;
    }

    /// These need not come again.
    pub fn confirm(&mut self, updates: &BTreeSet<u64>) {
        let (done, left) = self.queue.drain(..).partition(|(id, _)| updates.contains(id));
        self.queue = left;
        let done: VecDeque<(u64, Deed)> = done;
        self.confirmed.extend(done);
        while self.confirmed.len() > 100 {
            self.confirmed.pop_front();
        }
    }

    /// Somebody deletes a message.
    pub fn delete(&mut self, chat: RoomId, number: i64) {
        if let Some(chat) = self.chats.get_mut(&chat)
            && chat.messages.remove(&number).is_some()
        {
            chat.deleted.insert(number);
        }
    }

    /// Whether somebody has deleted it.
    pub fn is_deleted(&self, chat: RoomId, number: i64) -> bool {
        self.chats.get(&chat).is_some_and(|chat| chat.deleted.contains(&number))
    }

    /// A message arrives: it is written down, or changes one that is. Returns its number.
    pub fn take(&mut self, out: &Outgoing, strangers: &[String], witness: &mut Witness) -> Option<i64> {
        let message = &out.message;
        let Some(chat) = message.chat() else {
            witness.delivered(out.id.sequence);
            return None; // the answer to a press
        };
        if cook_of(chat) != cook_of(message.room) {
            witness.wrong.push(format!("a message of room {} came to {}", message.room.0, chat.0));
        }
        if let Some(name) = strangers.iter().find(|name| message.html.contains(name.as_str())) {
            witness.wrong.push(format!("{name} is named in {}", chat.0));
        }
        let here = self.chats.entry(chat).or_default();
        let shown = Shown { html: message.html.clone(), buttons: message.buttons.iter().flatten().cloned().collect() };
        let edits = matches!(message.how, How::Edit | How::Close);
        if let Some(number) = out.shown.filter(|_| edits) {
            match here.messages.get_mut(&number) {
                Some(there) if message.how == How::Close => there.buttons.clear(),
                Some(there) => *there = shown,
                None => witness.wrong.push(format!("message {number} of {} is changed and never was", chat.0)),
            }
            return Some(number);
        }
        witness.delivered(out.id.sequence);
        here.next += 1;
        here.messages.insert(here.next, shown);
        if let Some(name) = &message.key {
            here.names.insert(name.clone(), here.next);
        }
        Some(here.next)
    }
}

/// Which cook a chat belongs to: a cook's people and group have numbers of their own.
pub fn cook_of(room: RoomId) -> i64 {
    room.0.abs() / 100
}
