//! Typed rows over a [`Book`]: what stands on which shelf, under which key, in which version.

use super::keys::{self, BellKey, OutboxKey};
use super::stored::{pack, unpack};
use super::{Book, BookError, Changes, Shelf};
use crate::engine::{Arrival, Message};
use crate::room::heard::HEARD_VERSION;
use crate::room::state::{Person, Room, STATE_VERSION};
use crate::room::{Bell, PersonId, RoomId};
use chrono::{DateTime, Utc};
use std::sync::Arc;

/// Version of the shelves and keys as a whole; each value carries its own besides. 1: without a stock. A program that keeps none would
/// leave a stock behind that no longer fits, so it must find the book closed.
pub const BOOK_SCHEMA: u32 = 2;

/// Versions of the values.
mod version {
    pub const META: u8 = 1;
    /// 1: one number a row.
    pub const HANDLED: u8 = 2;
    pub const BELL: u8 = 1;
    pub const MESSAGE: u8 = 1;
    pub const SHOWN: u8 = 1;
    pub const TOPIC: u8 = 1;
    pub const ALIAS: u8 = 1;
    pub const HEARD: u8 = super::small(super::HEARD_VERSION);
    pub const STATE: u8 = super::small(super::STATE_VERSION);
}

/// A version as stored; more than 255 does not compile.
const fn small(version: u32) -> u8 {
    assert!(version < 256);
    version.to_le_bytes()[0]
}

const SCHEMA: &[u8] = b"schema";
pub(super) const NEXT: &[u8] = b"next";
const BOT: &[u8] = b"bot";
const VERSIONS: &[u8] = b"versions";

/// The version of everything that is stored, as this program writes it. Each only grows; a new one goes to the end.
const WRITTEN: [u8; 10] = [
    small(BOOK_SCHEMA),
    version::META,
    version::HANDLED,
    version::BELL,
    version::MESSAGE,
    version::SHOWN,
    version::TOPIC,
    version::ALIAS,
    version::HEARD,
    version::STATE,
];

/// Rows read at a time where all are wanted.
const CHUNK: usize = 500;

/// Notes the schema in a new book; refuses one from a later program. An older one is the keeper's to bring up to date.
pub fn check_schema(book: &dyn Book) -> Result<(), BookError> {
    match book.get(Shelf::Meta, SCHEMA)? {
        None => {
            let mut changes = Changes::default();
            changes.put(Shelf::Meta, SCHEMA, pack(version::META, &BOOK_SCHEMA)?);
            book.commit(&changes)
        }
        Some(bytes) => match unpack(version::META, "meta", &bytes)? {
            1..=BOOK_SCHEMA => Ok(()),
            found if found > BOOK_SCHEMA => Err(BookError::Newer { found, known: BOOK_SCHEMA }),
            found => Err(BookError::Damaged { detail: format!("schema {found} was never released") }),
        },
    }
}

/// The schema the book is kept in.
pub(super) fn schema_of(book: &dyn Book) -> Result<u32, BookError> {
    book.get(Shelf::Meta, SCHEMA)?.map_or(Ok(BOOK_SCHEMA), |bytes| unpack(version::META, "meta", &bytes))
}

/// Whether all that is in the book was written by programs that wrote something in an older form than this one.
pub(super) fn is_older(book: &dyn Book) -> Result<bool, BookError> {
    if schema_of(book)? < BOOK_SCHEMA {
        return Ok(true);
    }
    let Some(bytes) = book.get(Shelf::Meta, VERSIONS)? else { return Ok(true) };
    let noted: Vec<u8> = unpack(version::META, "meta", &bytes)?;
    Ok((0..WRITTEN.len()).any(|at| noted.get(at).is_none_or(|noted| *noted < WRITTEN[at])))
}

/// Notes that from now on this program writes.
pub(super) fn note_versions(book: &dyn Book) -> Result<(), BookError> {
    let mut changes = Changes::default();
    changes.put(Shelf::Meta, SCHEMA, pack(version::META, &BOOK_SCHEMA)?);
    changes.put(Shelf::Meta, VERSIONS, pack(version::META, &WRITTEN)?);
    book.commit(&changes)
}

/// The next sequence number: it only grows, so of two states of a book it tells the older.
pub(super) fn next_in(book: &dyn Book) -> Result<u64, BookError> {
    match book.get(Shelf::Meta, NEXT)? {
        Some(bytes) => unpack(version::META, "meta", &bytes),
        None => Ok(0),
    }
}

/// Update ids of a row, in either version.
#[derive(serde::Deserialize)]
#[serde(untagged)]
enum Handled {
    One(u64),
    Together(Vec<u64>),
}

/// Something heard, or why that row cannot be read.
pub(crate) type Readable = Result<Arrival, BookError>;

/// Reads typed rows.
#[derive(Clone)]
pub struct Pages {
    book: Arc<dyn Book>,
}

impl Pages {
    /// Over `book`.
    pub fn new(book: Arc<dyn Book>) -> Self {
        Self { book }
    }

    /// The book itself.
    pub fn book(&self) -> &dyn Book {
        self.book.as_ref()
    }

    /// Id of the bot the book is kept by, if one has kept it.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn bot(&self) -> Result<Option<i64>, BookError> {
        let bytes = self.book.get(Shelf::Meta, BOT)?;
        bytes.map(|bytes| unpack(version::META, "meta", &bytes)).transpose()
    }

    /// The room, if it is known.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn room(&self, id: RoomId) -> Result<Option<Room>, BookError> {
        let bytes = self.book.get(Shelf::Rooms, &keys::signed(id.0))?;
        bytes.map(|bytes| unpack(version::STATE, "rooms", &bytes)).transpose()
    }

    /// The person, if they are known.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn person(&self, id: PersonId) -> Result<Option<Person>, BookError> {
        let bytes = self.book.get(Shelf::People, &keys::person_key(id))?;
        bytes.map(|bytes| unpack(version::STATE, "people", &bytes)).transpose()
    }

    /// All rooms in which something says who `person` is, also after they have left.
    pub(crate) fn rooms_naming(&self, person: PersonId) -> Result<Vec<Room>, BookError> {
        let mut found = Vec::new();
        self.each(Shelf::Rooms, |_, value| {
            let room: Room = unpack(version::STATE, "rooms", value)?;
            let mut without = room.clone();
            without.forget_person(person);
            if without != room {
                found.push(room);
            }
            Ok(())
        })?;
        Ok(found)
    }

    /// Where `room` lives now: groups can become other groups.
    pub(crate) fn now_at(&self, room: RoomId) -> Result<RoomId, BookError> {
        let mut at = room;
        for _ in 0..8 {
            // A chain this long never happens; a ring must not hang.
            match self.book.get(Shelf::Aliases, &keys::signed(at.0))? {
                Some(bytes) => at = unpack(version::ALIAS, "aliases", &bytes)?,
                None => break,
            }
        }
        Ok(at)
    }

    /// The ids `room` had before.
    pub(crate) fn formerly(&self, room: RoomId) -> Result<Vec<RoomId>, BookError> {
        let mut former = Vec::new();
        self.each(Shelf::Aliases, |key, value| {
            if unpack::<RoomId>(version::ALIAS, "aliases", value)? == room {
                former.push(RoomId(keys::unsigned(key)?));
            }
            Ok(())
        })?;
        Ok(former)
    }

    /// The topic `room` last spoke in.
    pub(crate) fn topic(&self, room: RoomId) -> Result<Option<i32>, BookError> {
        let bytes = self.book.get(Shelf::Topics, &keys::signed(room.0))?;
        bytes.map(|bytes| unpack(version::TOPIC, "topics", &bytes)).transpose()
    }

    /// The platform's number of the newest message called `key`.
    pub(crate) fn shown(&self, room: RoomId, key: &str) -> Result<Option<i64>, BookError> {
        let bytes = self.book.get(Shelf::Shown, &keys::shown_by_key(room, key))?;
        bytes.map(|bytes| unpack(version::SHOWN, "shown", &bytes)).transpose()
    }

    /// What the message with this platform number is called, if it is the newest of that name.
    pub(crate) fn key_of(&self, room: RoomId, message: i64) -> Result<Option<String>, BookError> {
        let bytes = self.book.get(Shelf::Shown, &keys::shown_by_message(room, message))?;
        bytes.map(|bytes| unpack(version::SHOWN, "shown", &bytes)).transpose()
    }

    /// The next sequence number.
    pub(crate) fn next_sequence(&self) -> Result<u64, BookError> {
        next_in(&*self.book)
    }

    /// The update ids of the window, oldest first, those that came together under one sequence number.
    pub(crate) fn handled(&self) -> Result<Vec<(u64, Vec<u64>)>, BookError> {
        let mut all = Vec::new();
        self.each(Shelf::Handled, |key, value| {
            let updates = match unpack(version::HANDLED, "handled", value)? {
                Handled::One(update) => vec![update],
                Handled::Together(updates) => updates,
            };
            all.push((keys::sequence_of(key)?, updates));
            Ok(())
        })?;
        Ok(all)
    }

    /// The oldest things heard and not decided that do not `wait` for something. A row that cannot be read comes as an error of its own.
    pub(crate) fn inbox(&self, limit: usize, waits: impl Fn(u64) -> bool) -> Result<Vec<(u64, Readable)>, BookError> {
        let (mut found, mut from) = (Vec::new(), Vec::new());
        while found.len() < limit {
            let rows = self.book.rows(Shelf::Inbox, &from, &[u8::MAX; 9], limit)?;
            let Some((last, _)) = rows.last() else { break };
            from = [last.as_slice(), &[0]].concat();
            let ended = rows.len() < limit;
            for (key, value) in rows {
                let sequence = keys::sequence_of(&key)?;
                if found.len() < limit && !waits(sequence) {
                    found.push((sequence, unpack(version::HEARD, "inbox", &value)));
                }
            }
            if ended {
                break;
            }
        }
        Ok(found)
    }

    /// Something heard and not decided.
    pub(crate) fn arrival(&self, sequence: u64) -> Result<Option<Arrival>, BookError> {
        let bytes = self.book.get(Shelf::Inbox, &keys::sequence(sequence))?;
        bytes.map(|bytes| unpack(version::HEARD, "inbox", &bytes)).transpose()
    }

    /// Everything heard and not decided, oldest first.
    pub(crate) fn all_inbox(&self, mut take: impl FnMut(u64, Readable)) -> Result<(), BookError> {
        self.each(Shelf::Inbox, |key, value| {
            take(keys::sequence_of(key)?, unpack(version::HEARD, "inbox", value));
            Ok(())
        })
    }

    /// The earliest bell.
    pub(crate) fn first_bell(&self) -> Result<Option<BellKey>, BookError> {
        let rows = self.book.rows(Shelf::Bells, &[], &[u8::MAX; 21], 1)?;
        rows.first().map(|(key, _)| BellKey::from_time(key)).transpose()
    }

    /// At most `most` rooms with a bell due at `now`, the longest waiting first.
    pub(crate) fn rooms_due(&self, now: DateTime<Utc>, most: usize) -> Result<Vec<RoomId>, BookError> {
        let below = keys::signed(now.timestamp_millis().saturating_add(1));
        let (mut rooms, mut seen) = (Vec::new(), std::collections::BTreeSet::new());
        let mut from = Vec::new();
        while rooms.len() < most {
            let rows = self.book.rows(Shelf::Bells, &from, &below, most)?;
            let Some((last, _)) = rows.last() else { break };
            from = [last.as_slice(), &[0]].concat();
            for (key, _) in &rows {
                let room = BellKey::from_time(key)?.room;
                if rooms.len() < most && seen.insert(room) {
                    rooms.push(room);
                }
            }
        }
        Ok(rooms)
    }

    /// Keys of the bells due after `after` and not after `until`, earliest first.
    pub(crate) fn bells_between(&self, after: DateTime<Utc>, until: DateTime<Utc>) -> Result<Vec<BellKey>, BookError> {
        let from = keys::signed(after.timestamp_millis().saturating_add(1));
        let below = keys::signed(until.timestamp_millis().saturating_add(1));
        let mut all = Vec::new();
        self.each_between(Shelf::Bells, &from, &below, |key, _| {
            all.push(BellKey::from_time(key)?);
            Ok(())
        })?;
        Ok(all)
    }

    /// Keys of the bells of `room`, earliest first.
    pub(crate) fn bells_of(&self, room: RoomId) -> Result<Vec<BellKey>, BookError> {
        let prefix = keys::signed(room.0);
        let mut all = Vec::new();
        self.each_between(Shelf::BellsOf, &prefix, &keys::after(&prefix), |key, _| {
            all.push(BellKey::from_room(key)?);
            Ok(())
        })?;
        Ok(all)
    }

    /// The bell under a key.
    pub(crate) fn bell(&self, key: BellKey) -> Result<Option<Bell>, BookError> {
        let bytes = self.book.get(Shelf::Bells, &key.by_time())?;
        bytes.map(|bytes| unpack(version::BELL, "bells", &bytes)).transpose()
    }

    /// Every message that waits, in order. One that cannot be read comes as an error of its own.
    pub(crate) fn outbox(&self, mut take: impl FnMut(OutboxKey, Result<Message, BookError>)) -> Result<(), BookError> {
        self.each(Shelf::Outbox, |key, value| {
            take(OutboxKey::from_bytes(key)?, unpack(version::MESSAGE, "outbox", value));
            Ok(())
        })
    }

    /// A message that waits.
    pub(crate) fn message(&self, key: OutboxKey) -> Result<Option<Message>, BookError> {
        let bytes = self.book.get(Shelf::Outbox, &key.bytes())?;
        bytes.map(|bytes| unpack(version::MESSAGE, "outbox", &bytes)).transpose()
    }

    fn each(&self, shelf: Shelf, take: impl FnMut(&[u8], &[u8]) -> Result<(), BookError>) -> Result<(), BookError> {
        self.each_between(shelf, &[], &[u8::MAX; 32], take)
    }

    fn each_between(
        &self,
        shelf: Shelf,
        from: &[u8],
        below: &[u8],
        mut take: impl FnMut(&[u8], &[u8]) -> Result<(), BookError>,
    ) -> Result<(), BookError> {
        let mut from = from.to_vec();
        loop {
            let rows = self.book.rows(shelf, &from, below, CHUNK)?;
            let Some((last, _)) = rows.last() else { return Ok(()) };
            from = [last.as_slice(), &[0]].concat();
            for (key, value) in &rows {
                take(key, value)?;
            }
        }
    }
}

/// Typed changes, to be committed together.
#[derive(Default)]
pub struct Writes {
    /// The rows.
    pub changes: Changes,
}

impl Writes {
    pub fn next_sequence(&mut self, next: u64) -> Result<(), BookError> {
        self.changes.put(Shelf::Meta, NEXT, pack(version::META, &next)?);
        Ok(())
    }

    pub fn arrival(&mut self, sequence: u64, arrival: &Arrival) -> Result<(), BookError> {
        self.changes.put(Shelf::Inbox, keys::sequence(sequence), pack(version::HEARD, arrival)?);
        Ok(())
    }

    pub fn arrival_done(&mut self, sequence: u64) {
        self.changes.remove(Shelf::Inbox, keys::sequence(sequence));
    }

    pub fn handled(&mut self, sequence: u64, updates: &[u64]) -> Result<(), BookError> {
        self.changes.put(Shelf::Handled, keys::sequence(sequence), pack(version::HANDLED, &updates)?);
        Ok(())
    }

    pub fn handled_forgotten(&mut self, sequence: u64) {
        self.changes.remove(Shelf::Handled, keys::sequence(sequence));
    }

    pub fn room(&mut self, room: &Room) -> Result<(), BookError> {
        self.changes.put(Shelf::Rooms, keys::signed(room.id.0), pack(version::STATE, room)?);
        Ok(())
    }

    pub fn no_room(&mut self, id: RoomId) {
        self.changes.remove(Shelf::Rooms, keys::signed(id.0));
    }

    pub fn person(&mut self, person: &Person) -> Result<(), BookError> {
        self.changes.put(Shelf::People, keys::person_key(person.id), pack(version::STATE, person)?);
        Ok(())
    }

    pub fn no_person(&mut self, id: PersonId) {
        self.changes.remove(Shelf::People, keys::person_key(id));
    }

    pub fn alias(&mut self, from: RoomId, to: RoomId) -> Result<(), BookError> {
        self.changes.put(Shelf::Aliases, keys::signed(from.0), pack(version::ALIAS, &to)?);
        Ok(())
    }

    pub fn no_alias(&mut self, from: RoomId) {
        self.changes.remove(Shelf::Aliases, keys::signed(from.0));
    }

    pub fn topic(&mut self, room: RoomId, topic: Option<i32>) -> Result<(), BookError> {
        match topic {
            Some(topic) => self.changes.put(Shelf::Topics, keys::signed(room.0), pack(version::TOPIC, &topic)?),
            None => self.changes.remove(Shelf::Topics, keys::signed(room.0)),
        }
        Ok(())
    }

    /// The book is kept by this bot.
    pub fn bot(&mut self, bot: i64) -> Result<(), BookError> {
        self.changes.put(Shelf::Meta, BOT, pack(version::META, &bot)?);
        Ok(())
    }

    pub fn bell(&mut self, key: BellKey, bell: &Bell) -> Result<(), BookError> {
        self.changes.put(Shelf::Bells, key.by_time(), pack(version::BELL, bell)?);
        self.changes.put(Shelf::BellsOf, key.by_room(), pack(version::BELL, &())?);
        Ok(())
    }

    pub fn no_bell(&mut self, key: BellKey) {
        self.changes.remove(Shelf::Bells, key.by_time());
        self.changes.remove(Shelf::BellsOf, key.by_room());
    }

    pub fn message(&mut self, key: OutboxKey, message: &Message) -> Result<(), BookError> {
        self.changes.put(Shelf::Outbox, key.bytes(), pack(version::MESSAGE, message)?);
        Ok(())
    }

    pub fn no_message(&mut self, key: OutboxKey) {
        self.changes.remove(Shelf::Outbox, key.bytes());
    }

    /// `message` is now the newest called `key`, in place of `before`.
    pub fn shown(&mut self, room: RoomId, key: &str, before: Option<i64>, message: i64) -> Result<(), BookError> {
        if let Some(before) = before {
            self.changes.remove(Shelf::Shown, keys::shown_by_message(room, before));
        }
        self.changes.put(Shelf::Shown, keys::shown_by_key(room, key), pack(version::SHOWN, &message)?);
        self.changes.put(Shelf::Shown, keys::shown_by_message(room, message), pack(version::SHOWN, &key)?);
        Ok(())
    }

    /// The message called `key` is gone.
    pub fn not_shown(&mut self, room: RoomId, key: &str, message: i64) {
        self.changes.remove(Shelf::Shown, keys::shown_by_key(room, key));
        self.changes.remove(Shelf::Shown, keys::shown_by_message(room, message));
    }

    /// No message is known any more by a name that has this person's number in it, in any room.
    pub fn no_names_with(&mut self, pages: &Pages, person: PersonId) -> Result<(), BookError> {
        let number = person.0.to_string();
        pages.each(Shelf::Shown, |key, value| {
            let Some((room, name)) = keys::shown_name(key) else { return Ok(()) };
            if name.split(|c: char| !c.is_ascii_digit()).any(|part| part == number) {
                self.not_shown(room, name, unpack(version::SHOWN, "shown", value)?);
            }
            Ok(())
        })
    }

    /// The messages in private chats whose names begin with `mark` are known by `instead` of it from now on, or no more.
    pub fn shown_privately(&mut self, pages: &Pages, mark: &str, instead: Option<&str>) -> Result<(), BookError> {
        pages.each(Shelf::Shown, |key, value| {
            let Some((room, name)) = keys::shown_name(key) else { return Ok(()) };
            let Some(rest) = name.strip_prefix(mark) else { return Ok(()) };
            let message = unpack(version::SHOWN, "shown", value)?;
            self.not_shown(room, name, message);
            match instead {
                Some(instead) => self.shown(room, &format!("{instead}{rest}"), None, message),
                None => Ok(()),
            }
        })
    }

    /// None of the messages of `room` is known any more.
    pub fn nothing_shown(&mut self, pages: &Pages, room: RoomId) -> Result<(), BookError> {
        let prefix = keys::signed(room.0);
        pages.each_between(Shelf::Shown, &prefix, &keys::after(&prefix), |key, _| {
            self.changes.remove(Shelf::Shown, key);
            Ok(())
        })
    }
}
