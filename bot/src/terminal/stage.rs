//! A room played on this machine: people by name, messages by number, buttons by label.
//!
//! What Telegram is to the bot there, this is here, for the terminal and for rehearsals. Owns who is who, what stands on
//! the screen and what can be pressed. Decides nothing, prints nothing, reads no clock. Start at [`Stage`].

use crate::book::{BookError, Writes};
use crate::engine::{Arrival, Attachment, Engine, Key, Message};
use crate::reading::command::beside_our_name;
use crate::room::state::{Person, Room, Taste};
use crate::room::{Heard, How, LINK, PersonId, RoomId, RoomKind, Speaker, To, What};
use crate::words::plain;
use carvetime_core::plan::Moment;
use std::collections::BTreeMap;

/// The number of the group; private rooms have the (positive) numbers of their people.
const GROUP: RoomId = RoomId(-1);

/// One room with its people.
pub struct Stage {
    engine: Engine,
    taste: Taste,
    /// The one person of a private room; nobody in a group.
    alone: Option<PersonId>,
    names: BTreeMap<PersonId, String>,
    screen: Vec<Shown>,
    next_number: i64,
    /// Who pressed last: the answer to a press is for them.
    pressed: Option<(String, PersonId)>,
    /// Who is being answered.
    answering: Option<PersonId>,
    /// People talk among themselves: what is said in the room is not meant for the bot.
    overhears: bool,
}

/// A message on the screen.
#[derive(Debug, Clone, PartialEq)]
pub struct Shown {
    /// Its number.
    pub number: i64,
    /// Where it stands.
    pub chat: RoomId,
    /// Its text, plain.
    pub text: String,
    /// What can be pressed.
    pub buttons: Vec<Key>,
    step: Option<String>,
    /// Whose words it answers; nobody's if the clock brought it.
    answers: Option<PersonId>,
}

/// One thing the bot said.
#[derive(Debug, Clone, PartialEq)]
pub struct Spoken {
    /// When.
    pub at: Moment,
    /// New, changed, or a notice.
    pub kind: Kind,
    /// Whom it is for by name; nobody: the room.
    pub only_for: Option<String>,
    /// The number of the message.
    pub number: i64,
    /// Plain text.
    pub text: String,
    /// Labels.
    pub buttons: Vec<String>,
    /// The job it is about.
    pub step: Option<String>,
    /// A file that came with it.
    pub file: Option<Attachment>,
    /// It is the board.
    pub is_board: bool,
}

/// What sort of thing was said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A new message.
    Message,
    /// A message changed in place.
    Edit,
    /// The answer to a press, seen only by who pressed.
    Answer,
}

impl Stage {
    /// A group, or (with a name) the private room of one person. `taste` is what rooms and people begin with; numbers of
    /// messages begin at `first_number`.
    ///
    /// # Errors
    /// When the book cannot be written.
    pub fn new(engine: Engine, taste: Taste, alone: Option<&str>, first_number: i64) -> Result<Self, BookError> {
        let mut stage = Self {
            engine,
            taste,
            alone: alone.map(id_of),
            names: BTreeMap::new(),
            screen: Vec::new(),
            next_number: first_number,
            pressed: None,
            answering: None,
            overhears: false,
        };
        match alone {
            Some(name) => drop(stage.enter(name)?),
            None => stage.furnish(GROUP, RoomKind::Group)?,
        }
        Ok(stage)
    }

    /// A group whose people talk among themselves, the bot hearing all of it.
    #[must_use]
    pub fn overhearing(mut self) -> Self {
        self.overhears = true;
        self
    }

    /// Gives the room the taste it was opened with, where that says something.
    ///
    /// # Errors
    /// When the book cannot be written.
    pub fn impose(&mut self, taste: &Taste) -> Result<(), BookError> {
        let Some(mut room) = self.engine.pages().room(self.room())? else { return Ok(()) };
        room.taste.language = taste.language.clone().or(room.taste.language);
        room.taste.zone = taste.zone.clone().or(room.taste.zone);
        self.write(|writes| writes.room(&room))
    }

    /// `name` says `text`, in the room or in their private room.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn say(&mut self, name: &str, private: bool, text: &str, now: Moment) -> Result<(), BookError> {
        let by = self.enter(name)?;
        let room = if private { by.private_room() } else { self.room() };
        let called = beside_our_name(text);
        let addressed = private || self.alone.is_some() || !self.overhears || called.is_some();
        let text = called.unwrap_or(text).to_owned();
        self.hear(by, room, What::Said { text, addressed, reply_to: None, edited: false }, now)
    }

    /// `name` presses a button of a message on the screen.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn press(&mut self, name: &str, on: &Shown, button: &Key, now: Moment) -> Result<(), BookError> {
        let by = self.enter(name)?;
        let press = format!("press-{}", self.next_number);
        self.pressed = Some((press.clone(), by));
        if let Some(payload) = button.data.strip_prefix(LINK) {
            // On a phone it opens the private chat, which says this.
            let text = format!("/start {payload}");
            let what = What::Said { text, addressed: true, reply_to: None, edited: false };
            return self.hear(by, by.private_room(), what, now);
        }
        let key = self.engine.key_of(on.chat, on.number)?;
        self.hear(by, on.chat, What::Pressed { press, data: button.data.clone(), on: key }, now)
    }

    /// Rings what is due at `now`.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn ring(&mut self, now: Moment) -> Result<(), BookError> {
        self.answering = None;
        self.engine.work(now)?;
        self.engine.ring(now).map(drop)
    }

    /// When the next bell is due.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn next_bell(&self) -> Result<Option<Moment>, BookError> {
        self.engine.next_bell()
    }

    /// What has been said since this was last asked, in the order it would have been seen.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn listen(&mut self) -> Result<Vec<Spoken>, BookError> {
        let mut said = Vec::new();
        while let Some(outgoing) = self.engine.claim(|_, _| true)? {
            let (number, spoken) = self.show(outgoing.message, outgoing.shown);
            self.engine.sent(outgoing.id, number)?;
            said.extend(spoken);
        }
        Ok(said)
    }

    /// Messages with buttons that `name` sees in the room, or in their private room; the newest first.
    pub fn pressable(&self, name: &str, private: bool) -> impl Iterator<Item = &Shown> {
        let chat = if private { id_of(name).private_room() } else { self.room() };
        self.screen.iter().rev().filter(move |shown| shown.chat == chat && !shown.buttons.is_empty())
    }

    /// The newest message with buttons that `name` sees anywhere; without a name, that anyone sees.
    pub fn newest_pressable(&self, name: Option<&str>) -> Option<&Shown> {
        let own = name.map(|name| id_of(name).private_room());
        let seen = |shown: &&Shown| shown.chat == self.room() || own.is_none_or(|own| shown.chat == own);
        self.screen.iter().rev().filter(|shown| !shown.buttons.is_empty()).find(seen)
    }

    /// Whom a message is for: the person whose private room it stands in, else the one it answers.
    pub fn meant_for(&self, shown: &Shown) -> Option<&str> {
        let answered = || self.names.get(shown.answers.as_ref()?).map(String::as_str);
        self.only_for(shown.chat).or_else(answered)
    }

    fn room(&self) -> RoomId {
        self.alone.map_or(GROUP, PersonId::private_room)
    }

    fn only_for(&self, chat: RoomId) -> Option<&str> {
        let other = chat != self.room();
        other.then(|| self.names.get(&PersonId(chat.0)).map(String::as_str)).flatten()
    }

    fn hear(&mut self, by: PersonId, room: RoomId, what: What, now: Moment) -> Result<(), BookError> {
        self.answering = Some(by);
        let name = self.names.get(&by).cloned().unwrap_or_default();
        // Whoever is named here is in the group.
        let inside = Some(true);
        let by = Speaker { id: by, name, username: None, language: self.taste.language.clone(), admin: false, inside };
        let kind = if room == GROUP { RoomKind::Group } else { RoomKind::Private };
        self.engine.accept([Arrival::from(Heard { room, kind, by: Some(by), for_group: false, what })])?;
        self.engine.work(now).map(drop)
    }

    /// Lets a person in: from then on they and their private room are known.
    fn enter(&mut self, name: &str) -> Result<PersonId, BookError> {
        let id = id_of(name);
        if self.names.contains_key(&id) {
            return Ok(id);
        }
        self.names.insert(id, name.to_owned());
        if self.engine.pages().person(id)?.is_none() {
            let by = Speaker { id, name: name.to_owned(), username: None, language: None, admin: false, inside: None };
            let person = Person { taste: self.taste.clone(), ..Person::new(&by) };
            self.write(|writes| writes.person(&person))?;
        }
        self.furnish(id.private_room(), RoomKind::Private)?;
        Ok(id)
    }

    /// Tells a new room where and in what language it is; on Telegram it would have to ask.
    fn furnish(&self, id: RoomId, kind: RoomKind) -> Result<(), BookError> {
        if self.engine.pages().room(id)?.is_some() {
            return Ok(());
        }
        let room = Room { taste: self.taste.clone(), ..Room::new(id, kind) };
        self.write(|writes| writes.room(&room))
    }

    fn write(&self, change: impl FnOnce(&mut Writes) -> Result<(), BookError>) -> Result<(), BookError> {
        let mut writes = Writes::default();
        change(&mut writes)?;
        self.engine.pages().book().commit(&writes.changes)
    }

    /// Puts a message on the screen. Gives its number, and what was seen of it (a silent answer is not).
    fn show(&mut self, message: Message, shown: Option<i64>) -> (Option<i64>, Option<Spoken>) {
        let text = plain(&message.html);
        let Some(chat) = message.chat() else {
            return (None, self.answer(&message, text));
        };
        let buttons: Vec<Key> = message.buttons.into_iter().flatten().collect();
        let before = match message.how {
            How::Edit | How::Close => self.screen.iter().position(|old| Some(old.number) == shown && old.chat == chat),
            How::New | How::Quiet => None,
        };
        let (kind, place) = match before {
            Some(place) => (Kind::Edit, place),
            None => {
                let number = match message.how {
                    // From an earlier session: its number stays, but here it is new.
                    How::Edit | How::Close => shown,
                    How::New | How::Quiet => None,
                };
                let number = number.unwrap_or_else(|| self.number());
                let (text, buttons) = (String::new(), Vec::new());
                self.screen.push(Shown { number, chat, text, buttons, step: None, answers: self.answering });
                (Kind::Message, self.screen.len() - 1)
            }
        };
        let only_for = self.only_for(chat).map(str::to_owned);
        let Some(entry) = self.screen.get_mut(place) else { return (None, None) };
        let unchanged = kind == Kind::Edit && entry.text == text && entry.buttons == buttons;
        entry.buttons = buttons;
        if message.how != How::Close {
            (entry.text, entry.step) = (text, message.step);
        }
        let spoken = Spoken {
            at: message.at,
            kind,
            only_for,
            number: entry.number,
            text: entry.text.clone(),
            buttons: entry.buttons.iter().map(|key| key.label.clone()).collect(),
            step: entry.step.clone(),
            file: message.file,
            is_board: message.key.as_deref().is_some_and(|key| key == "board" || key.starts_with("board@")),
        };
        // Taking buttons off a message from an earlier session leaves nothing to see.
        let seen = !(unchanged || message.how == How::Close && kind == Kind::Message);
        (Some(spoken.number), seen.then_some(spoken))
    }

    fn answer(&mut self, message: &Message, text: String) -> Option<Spoken> {
        let To::Press(press) = &message.to else { return None };
        let (_, by) = self.pressed.as_ref().filter(|(id, _)| id == press)?;
        let only_for = self.names.get(by).cloned();
        (!text.is_empty()).then(|| Spoken {
            at: message.at,
            kind: Kind::Answer,
            only_for,
            number: self.number(),
            text,
            buttons: Vec::new(),
            step: message.step.clone(),
            file: None,
            is_board: false,
        })
    }

    fn number(&mut self) -> i64 {
        let number = self.next_number;
        self.next_number += 1;
        number
    }
}

/// The number of a person: made from the name, so that it is the same in the next session. Case does not count.
fn id_of(name: &str) -> PersonId {
    // FNV-1a; 52 bits are what Telegram's ids may have, so all code has room for them.
    let hash = name
        .to_lowercase()
        .bytes()
        .fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3));
    PersonId(i64::try_from(hash >> 12).unwrap_or(1).max(1))
}
