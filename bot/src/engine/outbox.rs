//! The way out: what waits to be sent, what of it is overtaken, and what became of it.

use super::queue::Queue;
use super::{Audience, Desk, Engine, Failure, Message, Outgoing, Topic, turn::Occasion};
use crate::book::{BookError, Loss, OutboxKey, Pages, Writes};
use crate::room::{Heard, How, RoomId, To, Urgency, What};
use crate::words::{Arg, Text};
use chrono::{DateTime, Utc};
use std::cmp::Reverse;
use std::collections::BTreeMap;

/// The order of sending as the book has it, with `under_way` being sent.
pub fn read_queue(pages: &Pages, under_way: &[OutboxKey]) -> Result<Queue, BookError> {
    let mut queue = Queue::default();
    pages.outbox(|key, message| match message {
        Ok(message) => queue.add(key, message.chat(), message.key.as_deref(), message.how),
        Err(_) => queue.add(key, None, None, How::New), // dropped when its turn comes
    })?;
    for key in under_way {
        queue.start(*key);
    }
    Ok(queue)
}

/// Brings messages of one name back in order that a crash has left out of it: one was being sent while a more urgent change of it
/// was written down.
pub fn put_in_order(pages: &Pages, desk: &mut Desk) -> Result<(), BookError> {
    let mut writes = Writes::default();
    let names = desk.queue.shared_names();
    let mut staging = Staging::new(pages, desk);
    names.iter().try_for_each(|(chat, name)| staging.keep_order(*chat, name))?;
    staging.finish(&mut writes)?;
    if writes.changes.is_empty() { Ok(()) } else { pages.book().commit(&writes.changes) }
}

impl Engine {
    /// How many messages wait or are being sent.
    pub fn waiting(&self) -> usize {
        self.desk().queue.len()
    }

    /// Whether a message to `room` is being sent: its number is not known yet.
    pub fn is_sending_to(&self, room: RoomId) -> bool {
        self.desk().queue.is_sending_to(room)
    }

    /// Takes the next message to send among chats that `may` be written to now: the most urgent, and of equals the chat
    /// that has waited longest. `may` is also told whether it is only a board that wants to be brought up to date. Report its end with [`Self::sent`] or [`Self::failed`]; until then its chat waits.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn claim(&self, may: impl FnMut(RoomId, bool) -> bool) -> Result<Option<Outgoing>, BookError> {
        Ok(self.claim_up_to(1, may)?.pop())
    }

    /// The same for up to `most` messages, each to another chat.
    ///
    /// # Errors
    /// When the book cannot be read; then none is taken.
    pub fn claim_up_to(
        &self,
        most: usize,
        mut may: impl FnMut(RoomId, bool) -> bool,
    ) -> Result<Vec<Outgoing>, BookError> {
        let mut desk = self.desk();
        if desk.unsynced {
            self.settle(&mut desk)?;
        }
        let mut claimed: Vec<Outgoing> = Vec::new();
        while claimed.len() < most
            && let Some(id) = desk.queue.next(&mut may)
        {
            match self.take(&mut desk, id) {
                Ok(taken) => claimed.extend(taken),
                Err(error) => {
                    claimed.iter().for_each(|out| desk.queue.put_back(out.id));
                    return Err(error);
                }
            }
        }
        Ok(claimed)
    }

    /// Takes the message `id`, if it is worth sending; else it is dropped.
    fn take(&self, desk: &mut Desk, id: OutboxKey) -> Result<Option<Outgoing>, BookError> {
        let message = match self.drafted.message(id) {
            Ok(Some(message)) => message,
            Ok(None) | Err(BookError::Damaged { .. }) => {
                tracing::error!("a message could not be read back and was dropped");
                self.drop_message(desk, id)?;
                return Ok(None);
            }
            Err(error) => return Err(error),
        };
        let (mut shown, mut topic) = (message.over, None);
        if let Some(chat) = message.chat() {
            topic = match message.topic {
                Some(asked) => asked.thread(),
                None => self.drafted.topic(chat)?,
            };
            if let Some(key) = &message.key {
                shown = self.drafted.shown(chat, key)?;
            }
        }
        if message.how == How::Close && shown.is_none() {
            self.drop_message(desk, id)?; // nothing to take buttons off
            return Ok(None);
        }
        desk.queue.start(id);
        Ok(Some(Outgoing { id, message, shown, topic }))
    }

    fn drop_message(&self, desk: &mut Desk, id: OutboxKey) -> Result<(), BookError> {
        let mut writes = Writes::default();
        writes.no_message(id);
        self.drafted.book().commit(&writes.changes)?;
        desk.queue.remove(id);
        Ok(())
    }

    /// The platform has taken the message, and gave it this number.
    ///
    /// # Errors
    /// When the book cannot be written: the message will be sent again.
    pub fn sent(&self, id: OutboxKey, number: Option<i64>) -> Result<(), BookError> {
        self.all_sent(&[(id, number)])
    }

    /// The same for several messages, with one write.
    ///
    /// # Errors
    /// As [`Self::sent`].
    pub fn all_sent(&self, messages: &[(OutboxKey, Option<i64>)]) -> Result<(), BookError> {
        if messages.is_empty() {
            return Ok(());
        }
        let mut desk = self.desk();
        let mut writes = Writes::default();
        for (id, number) in messages {
            writes.no_message(*id);
            if let (Some(number), Some((chat, key))) = (*number, desk.queue.called(*id))
                && self.drafted.now_at(chat)? == chat
            {
                let before = self.drafted.shown(chat, key)?;
                if before != Some(number) {
                    writes.shown(chat, key, before, number)?;
                }
            }
        }
        self.drafted.book().commit(&writes.changes)?;
        messages.iter().for_each(|(id, _)| desk.queue.remove(*id));
        self.drafted.book().sync(Loss::Process)
    }

    /// The platform has not taken the message.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn failed(&self, id: OutboxKey, failure: Failure, now: DateTime<Utc>) -> Result<(), BookError> {
        let mut desk = self.desk();
        let Some(message) = self.drafted.message(id)? else {
            desk.queue.remove(id);
            return Ok(());
        };
        let (Some(chat), false) = (message.chat(), failure == Failure::Refused) else {
            return match failure {
                Failure::Later => self.put_back(&mut desk, id, None),
                _ => self.drop_message(&mut desk, id),
            };
        };
        let name = message.key.clone();
        let called = name.as_deref().map(|name| (chat, name));
        match failure {
            Failure::Later | Failure::Refused => self.put_back(&mut desk, id, called)?,
            Failure::Vanished => {
                let mut writes = Writes::default();
                if let Some(key) = &message.key
                    && let Some(number) = self.drafted.shown(chat, key)?
                {
                    writes.not_shown(chat, key, number);
                }
                writes.message(id, &Message { over: None, ..message })?;
                self.drafted.book().commit(&writes.changes)?;
                self.put_back(&mut desk, id, called)?;
            }
            Failure::NoTopic => {
                let mut writes = Writes::default();
                let gone = message.topic.and_then(Topic::thread);
                if gone.is_none() || gone == self.drafted.topic(chat)? {
                    writes.topic(chat, None)?;
                }
                writes.message(id, &Message { topic: Some(Topic::General), ..message })?;
                self.drafted.book().commit(&writes.changes)?;
                self.put_back(&mut desk, id, called)?;
            }
            Failure::Gone => self.gone(&mut desk, id, chat, now)?,
            Failure::Migrated(to) => {
                desk.queue.put_back(id);
                if self.drafted.now_at(chat)? == chat {
                    let what = What::Migrated { to };
                    self.tell(&mut desk, chat, what, Writes::default(), now)?;
                } else {
                    self.follow(&mut desk, chat)?; // it was on its way when the group moved
                }
            }
        }
        Ok(())
    }

    /// A message that was under way waits again. A more urgent one of its name, written down meanwhile, must not pass it.
    fn put_back(&self, desk: &mut Desk, id: OutboxKey, called: Option<(RoomId, &str)>) -> Result<(), BookError> {
        desk.queue.put_back(id);
        let Some((chat, name)) = called else { return Ok(()) };
        let mut writes = Writes::default();
        let under_way = desk.queue.under_way();
        let mut staging = Staging::new(&self.drafted, desk);
        let done = staging.keep_order(chat, name).and_then(|()| staging.finish(&mut writes));
        let done = done.and_then(|()| match writes.changes.is_empty() {
            true => Ok(()),
            false => self.drafted.book().commit(&writes.changes),
        });
        if done.is_err() {
            desk.queue = read_queue(&self.drafted, &under_way)?;
        }
        done
    }

    /// What waits for a chat that has moved goes after it.
    fn follow(&self, desk: &mut Desk, from: RoomId) -> Result<(), BookError> {
        let (mut writes, to) = (Writes::default(), self.drafted.now_at(from)?);
        let under_way = desk.queue.under_way();
        let mut staging = Staging::new(&self.drafted, desk);
        let done = staging.redirect(from, to).and_then(|()| staging.finish(&mut writes));
        let done = done.and_then(|()| self.drafted.book().commit(&writes.changes));
        if done.is_err() {
            desk.queue = read_queue(&self.drafted, &under_way)?;
        }
        done
    }

    /// The board was sent, and may not be pinned.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn not_pinned(&self, chat: RoomId, now: DateTime<Utc>) -> Result<(), BookError> {
        let room = self.drafted.now_at(chat)?;
        self.tell(&mut self.desk(), room, What::NotPinned, Writes::default(), now)
    }

    /// The chat is lost. What a person had to be told there goes to the room that said it; the rest is dropped.
    fn gone(&self, desk: &mut Desk, id: OutboxKey, chat: RoomId, now: DateTime<Utc>) -> Result<(), BookError> {
        desk.queue.put_back(id);
        let mut writes = Writes::default();
        let mut staging = Staging::new(&self.drafted, desk);
        let mut instead = Vec::new();
        for key in staging.desk.queue.waiting_in(chat) {
            if let Ok(message) = staging.message(key) {
                instead.extend(self.instead(message, now));
            }
        }
        staging.drop_chat(chat)?;
        for message in instead {
            staging.add(message)?;
        }
        staging.finish(&mut writes)?;
        self.tell(desk, chat, What::Removed, writes, now)
    }

    /// The message for the room, in place of one that a person could not be told privately.
    fn instead(&self, message: Message, now: DateTime<Utc>) -> Option<Message> {
        let To::Person(id) = message.to else { return None };
        let matters = matches!(message.urgency, Urgency::Safety | Urgency::Due)
            && matches!(message.how, How::New | How::Quiet)
            && message.room != id.private_room();
        let room = self.drafted.room(message.room).ok().flatten().filter(|room| matters && !room.gone)?;
        let name = self.drafted.person(id).ok().flatten().map(|person| person.name)?;
        let text = Text::new("telegram-unreachable").with("person", Arg::Mention { person: id, name });
        let head = self.voice.html(&[text], Audience::Room(&room), now);
        Some(Message {
            to: To::Room(message.room),
            html: format!("{head}\n{}", message.html),
            how: How::New,
            key: None,
            reply_to: None,
            topic: None,
            ask_place: None,
            ..message
        })
    }

    /// A turn about what the platform told of a chat.
    fn tell(
        &self,
        desk: &mut Desk,
        room: RoomId,
        what: What,
        writes: Writes,
        now: DateTime<Utc>,
    ) -> Result<(), BookError> {
        let heard = Heard { room, kind: self.kind_of(room), by: None, for_group: false, what };
        self.turn(
            desk,
            Occasion { heard, message: None, topic: None, title: None, as_of: now, now, decide: Some(self.decide) },
            writes,
        )
    }
}

/// Changes of the outbox within one transaction.
///
/// The queue is changed at once and the book at [`Staging::finish`]; when the commit fails, the queue is read again.
pub struct Staging<'a> {
    pages: &'a Pages,
    pub desk: &'a mut Desk,
    /// New content, or `None` for removed.
    changed: BTreeMap<OutboxKey, Option<Message>>,
}

impl<'a> Staging<'a> {
    pub fn new(pages: &'a Pages, desk: &'a mut Desk) -> Self {
        Self { pages, desk, changed: BTreeMap::new() }
    }

    fn message(&self, key: OutboxKey) -> Result<Message, BookError> {
        let missing = || BookError::Damaged { detail: "a row of outbox".into() };
        match self.changed.get(&key) {
            Some(changed) => changed.clone().ok_or_else(missing),
            None => self.pages.message(key)?.ok_or_else(missing),
        }
    }

    fn put(&mut self, key: OutboxKey, message: Message) {
        self.desk.queue.add(key, message.chat(), message.key.as_deref(), message.how);
        self.changed.insert(key, Some(message));
    }

    fn remove(&mut self, key: OutboxKey) {
        self.desk.queue.remove(key);
        self.changed.insert(key, None);
    }

    /// Adds a message. One that waits under the same name in the same chat may be overtaken by it.
    pub fn add(&mut self, mut message: Message) -> Result<(), BookError> {
        if let To::Room(room) = &mut message.to {
            *room = self.pages.now_at(*room)?;
        }
        if let (Some(chat), Some(name)) = (message.chat(), message.key.clone())
            && self.overtake(chat, &name, &message)?
        {
            return Ok(());
        }
        let key = self.desk.outbox_key(&message);
        self.put(key, message);
        Ok(())
    }

    /// Those of one name keep their order: none of the earlier may be less urgent than a later one.
    fn keep_order(&mut self, chat: RoomId, name: &str) -> Result<(), BookError> {
        let mut keys = self.desk.queue.named(chat, name);
        keys.sort_by_key(|key| Reverse(key.sequence));
        let mut later: Option<(u8, Urgency)> = None;
        for key in keys {
            let message = self.message(key)?;
            match later {
                Some((rank, urgency)) if key.rank > rank => {
                    self.remove(key);
                    self.put(OutboxKey { rank, ..key }, Message { urgency, ..message });
                }
                _ => later = Some((key.rank, message.urgency)),
            }
        }
        Ok(())
    }

    /// Makes room for `message` among those that wait under its name. Whether it is taken care of by that.
    fn overtake(&mut self, chat: RoomId, name: &str, message: &Message) -> Result<bool, BookError> {
        let rank = message.rank();
        let is_new = matches!(message.how, How::New | How::Quiet);
        // Those of one name keep their order: none of the earlier may be less urgent than the newest. Most stay as they are, and
        // are not read for it: many may wait.
        for key in self.desk.queue.named(chat, name) {
            if is_new && self.desk.queue.how(key) == Some(How::Edit) {
                self.remove(key); // outdated
            } else if key.rank > rank {
                let earlier = self.message(key)?;
                self.remove(key);
                self.put(OutboxKey { rank, ..key }, Message { urgency: message.urgency, ..earlier });
            }
        }
        if is_new {
            return Ok(false);
        }
        let Some(last) = self.desk.queue.named(chat, name).into_iter().max_by_key(|key| key.sequence) else {
            return Ok(false);
        };
        let earlier = self.message(last)?;
        let merged = match (earlier.how, message.how) {
            (How::Close, How::Close) => earlier,
            (_, How::New | How::Quiet) | (How::Close, How::Edit) => return Ok(false),
            (_, How::Close) => Message { buttons: Vec::new(), ask_place: None, ..earlier },
            (how, How::Edit) => Message {
                how,
                urgency: earlier.urgency,
                pin: earlier.pin || message.pin,
                sole: earlier.sole || message.sole,
                file: message.file.clone().or(earlier.file),
                ..message.clone()
            },
        };
        self.remove(last);
        self.put(last, merged);
        Ok(true)
    }

    /// What waits for `from` goes to `to`.
    pub fn redirect(&mut self, from: RoomId, to: RoomId) -> Result<(), BookError> {
        for key in self.desk.queue.waiting_in(from) {
            let message = self.message(key)?;
            self.remove(key);
            self.put(key, Message { to: To::Room(to), over: None, reply_to: None, topic: None, ..message });
        }
        Ok(())
    }

    /// What waits for `chat` is dropped.
    pub fn drop_chat(&mut self, chat: RoomId) -> Result<(), BookError> {
        for key in self.desk.queue.waiting_in(chat) {
            self.remove(key);
        }
        Ok(())
    }

    /// Writes it all down.
    pub fn finish(self, writes: &mut Writes) -> Result<(), BookError> {
        for (key, message) in self.changed {
            match message {
                Some(message) => writes.message(key, &message)?,
                None => writes.no_message(key),
            }
        }
        Ok(())
    }
}
