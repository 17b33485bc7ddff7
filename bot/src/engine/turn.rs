//! One turn: scene, decision, words, and everything that follows from it in one transaction, with other turns or alone.

use super::afar::{self, addressed};
use super::outbox::Staging;
use super::render::Audience;
use super::story::Story;
use super::{Attachment, BREATH, DecideFn, Desk, Engine, Key, Message, Topic, ahead, calendar};
use crate::book::{BellKey, BookError, Writes};
use crate::room::state::{Person, Room};
use crate::room::turn::{File, FileContent, Forget};
use crate::room::{Bell, Button, Heard, How, PersonId, RoomId, RoomKind, Say, Scene, To, Turn, Urgency, What};
use crate::words::Text;
use chrono::{DateTime, Utc};
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Longest button data the platform carries.
const MAX_DATA: usize = 64;

/// What a turn is about.
pub struct Occasion {
    pub heard: Heard,
    /// The platform's number of the message heard.
    pub message: Option<i64>,
    /// The topic of the group it was heard in, where the platform tells.
    pub topic: Option<Topic>,
    /// What the group is called, where the platform tells.
    pub title: Option<String>,
    /// The time it is decided for.
    pub as_of: DateTime<Utc>,
    /// The time it is.
    pub now: DateTime<Utc>,
    /// `None`: this arrival has brought the program down before; it is only apologised for.
    pub decide: Option<DecideFn>,
}

impl Engine {
    /// Takes `occasion` through its turn and commits it together with `writes`, all in one.
    pub(super) fn turn(&self, desk: &mut Desk, occasion: Occasion, writes: Writes) -> Result<(), BookError> {
        let next = desk.next;
        let done = self.try_turn(desk, occasion, writes);
        if done.is_err() {
            // Nothing of it was committed: what is at hand must say the same as the book, with the turns of the batch before it.
            desk.next = next;
            desk.queue = super::outbox::read_queue(&self.drafted, &desk.queue.under_way())?;
        }
        done
    }

    fn try_turn(&self, desk: &mut Desk, occasion: Occasion, mut writes: Writes) -> Result<(), BookError> {
        let Occasion { heard, message, topic, title, as_of, now, decide } = occasion;
        let heard = self.route(heard, now)?;
        let decided = match (self.scene(&heard), decide) {
            (Ok(mut scene), Some(decide)) => {
                let renamed = title.is_some() && title != scene.room.title;
                if renamed {
                    scene.room.title = title;
                }
                let attempt = AssertUnwindSafe(|| {
                    let turn = decide(&scene, &heard, as_of);
                    let (scene, there, mut turn) = match self.otherwise(&heard, &turn, decide, as_of) {
                        Ok(Some((scene, there, turn))) => (scene, Some(there), turn),
                        Err(error @ (BookError::Newer { .. } | BookError::Disk { .. })) => return Err(error),
                        Ok(None) | Err(_) => (scene, None, turn),
                    };
                    ahead::say_the_hour(&mut turn.says, as_of, now);
                    if renamed && turn.room.is_none() {
                        turn.room = Some(scene.room.clone());
                    }
                    let messages = self.messages(&scene, &turn, there.as_ref().unwrap_or(&heard), now);
                    Ok((scene, there, turn, messages))
                });
                catch_unwind(attempt).ok().transpose()?
            }
            (Err(error @ BookError::Newer { .. } | error @ BookError::Disk { .. }), _) => return Err(error),
            (Ok(_) | Err(_), _) => None,
        };
        let (scene, there, turn, mut messages) = decided.unwrap_or_else(|| {
            tracing::error!(heard = name_of(&heard.what), "a turn failed and was set aside");
            let scene = blank_scene(&heard);
            let messages = self.sorry(&scene, &heard, now);
            (scene, None, Turn::default(), messages)
        });
        let heard = there.unwrap_or(heard);
        if let What::Pressed { press, .. } = &heard.what {
            answer_press(&mut messages, press, &scene.room, now);
        }
        for asking in messages.iter_mut().filter(|asking| asking.ask_reply && asking.chat() == Some(heard.room)) {
            asking.reply_to = message; // opens the reply field for the one who spoke, not for all
        }
        if let Some(topic) = topic {
            let here = |message: &&mut Message| message.chat() == Some(heard.room);
            messages.iter_mut().filter(here).for_each(|message| message.topic = Some(topic));
            // Calls come where the plan was made, or where its board was asked for last: not where someone asked something beside it.
            if scene.room.plan.is_none() || messages.iter().any(|it| it.pin && it.chat() == Some(heard.room)) {
                writes.topic(heard.room, topic.thread())?;
            }
        }
        if matches!(heard.what, What::Removed) {
            messages.retain(|message| message.chat() != Some(heard.room));
        }
        let forgotten = match turn.forget {
            Some(Forget::Person(person)) => Some(person),
            _ => None,
        };
        let changed: Vec<PersonId> = turn.people.iter().map(|person| person.id).chain(forgotten).collect();
        let story = Story::of(&scene.room, &turn);
        let mut staging = Staging::new(&self.drafted, desk);
        self.keep(&mut staging, &mut writes, &scene, &heard, turn, &mut messages, now)?;
        for message in messages {
            staging.add(message)?;
        }
        staging.finish(&mut writes)?;
        writes.next_sequence(desk.next)?;
        self.drafted.book().commit(&writes.changes)?;
        desk.unsynced = true;
        self.acquaintances.changed(changed);
        story.log();
        Ok(())
    }

    /// A press on a private message that concerns a group is heard there, and so is a link followed from it. Both are
    /// data anyone can make up: they lead from the speaker's own private chat into a group and nowhere else, never into
    /// someone's private room and never from one group into another. What leads elsewhere is left as it is, and unread.
    fn route(&self, mut heard: Heard, now: DateTime<Utc>) -> Result<Heard, BookError> {
        if let What::Pressed { on: Some(on), .. } = &mut heard.what
            && let Some((_, rest)) = addressed(on)
        {
            *on = rest.to_owned();
        }
        if let What::Pressed { data, .. } = &mut heard.what
            && let Some((room, rest)) = addressed(data)
        {
            let room = self.drafted.now_at(room)?;
            if room == heard.room {
                *data = rest.to_owned(); // a call that could not reach its person privately
            } else if heard.kind == RoomKind::Private && self.kind_of(room) == RoomKind::Group {
                *data = rest.to_owned();
                // The kind stays that of the chat it was pressed in: that is how the room knows to ask for membership.
                heard.room = room;
                // What the platform said of them is true of the private chat only.
                heard.by.iter_mut().for_each(|by| by.admin = false);
            }
        }
        if let What::Said { text, .. } = &heard.what
            && heard.kind == RoomKind::Private
            && let Some((room, _)) = crate::room::payload(text)
            && let Some(room) = self.drafted.room(self.drafted.now_at(room)?)?
            && room.kind == RoomKind::Group
        {
            heard.room = room.id;
        } else if let Some(room) = self.answered_from_afar(&mut heard, now)? {
            heard.room = room;
            heard.by.iter_mut().for_each(|by| by.admin = false);
        }
        Ok(heard)
    }

    pub(super) fn scene(&self, heard: &Heard) -> Result<Scene, BookError> {
        let room = self.drafted.room(heard.room)?.unwrap_or_else(|| Room::new(heard.room, self.kind_of(heard.room)));
        let mut scene = Scene { people: std::collections::BTreeMap::new(), room, chance: chance() };
        for id in scene.room.members.clone() {
            match self.drafted.person(id) {
                Ok(person) => scene.people.extend(person.map(|person| (id, person))),
                Err(BookError::Damaged { .. }) => tracing::error!("a person could not be read back and was left out"),
                Err(error) => return Err(error),
            }
        }
        if let Some(by) = &heard.by
            && !scene.people.contains_key(&by.id)
        {
            // Someone new is left to the room: it notes who it meets.
            scene.people.extend(self.drafted.person(by.id)?.map(|person| (by.id, person)));
        }
        Ok(scene)
    }

    /// Writes down what the turn changed.
    #[allow(clippy::too_many_arguments)] // one caller; a struct would only rename them
    fn keep(
        &self,
        staging: &mut Staging<'_>,
        writes: &mut Writes,
        scene: &Scene,
        heard: &Heard,
        turn: Turn,
        messages: &mut [Message],
        now: DateTime<Utc>,
    ) -> Result<(), BookError> {
        let told = match heard.what {
            What::Migrated { to } => Some(to),
            _ => None,
        };
        let here = scene.room.id;
        let mut room = turn.room;
        let mut id = here;
        if let Some(to) = turn.moved.or(told).filter(|to| *to != here) {
            let moving = room.get_or_insert_with(|| scene.room.clone());
            moving.id = to;
            id = to;
            // The new group may have been heard before anyone said that it is the old one.
            let early = self.drafted.room(to)?;
            let bells_stay = early.as_ref().is_some_and(|early| early.plan.is_some()) && moving.plan.is_none();
            moving.absorb(early);
            self.move_room(staging, writes, here, to, turn.bells.is_none(), bells_stay)?;
            for message in messages.iter_mut().filter(|message| message.to == To::Room(here)) {
                message.to = To::Room(to);
            }
        }
        for person in &turn.people {
            writes.person(person)?;
        }
        let forgotten = turn.forget.map(|forget| match forget {
            Forget::Room(gone) => gone,
            Forget::Person(person) => person.private_room(),
        });
        if forgotten != Some(here) {
            if let Some(bells) = &turn.bells {
                self.set_bells(writes, here, id, bells, matches!(heard.what, What::Rang { .. }).then_some(now))?;
            }
            if let Some(room) = &room {
                writes.room(room)?;
            }
        }
        if let Some(gone) = forgotten {
            self.forget_room(staging, writes, gone, messages)?;
        }
        if let Some(Forget::Person(person)) = turn.forget {
            self.forget_person(writes, person, room.as_ref().unwrap_or(&scene.room))?;
            staging.desk.awaited.said_by(person).into_iter().for_each(|sequence| writes.arrival_done(sequence));
        }
        Ok(())
    }

    /// Replaces all bells of a room, which lives at `id` from now on. `ringing`: it is being rung, at that time.
    fn set_bells(
        &self,
        writes: &mut Writes,
        before: RoomId,
        id: RoomId,
        bells: &[Bell],
        ringing: Option<DateTime<Utc>>,
    ) -> Result<(), BookError> {
        for key in self.drafted.bells_of(before)? {
            writes.no_bell(key);
        }
        let floor = ringing.map_or(DateTime::<Utc>::MIN_UTC, |now| now + BREATH);
        for (nth, bell) in (0..).zip(bells) {
            writes.bell(BellKey::new(bell.at.max(floor), id, nth), bell)?;
        }
        Ok(())
    }

    /// Everything kept under `from` is kept under `to` from now on. The state is the caller's.
    fn move_room(
        &self,
        staging: &mut Staging<'_>,
        writes: &mut Writes,
        from: RoomId,
        to: RoomId,
        with_bells: bool,
        theirs_stay: bool,
    ) -> Result<(), BookError> {
        if !theirs_stay {
            for key in self.drafted.bells_of(to)? {
                writes.no_bell(key);
            }
        }
        writes.alias(from, to)?;
        writes.no_room(from);
        writes.topic(from, None)?;
        writes.nothing_shown(&self.drafted, from)?; // its numbers mean nothing in the new group
        writes.shown_privately(&self.drafted, &afar::mark(from), Some(&afar::mark(to)))?;
        if with_bells {
            for key in self.drafted.bells_of(from)? {
                let bell: Option<Bell> = self.drafted.bell(key)?;
                writes.no_bell(key);
                if let Some(bell) = bell {
                    writes.bell(BellKey { room: to, ..key }, &bell)?;
                }
            }
        }
        staging.redirect(from, to)
    }

    fn forget_room(
        &self,
        staging: &mut Staging<'_>,
        writes: &mut Writes,
        room: RoomId,
        messages: &mut [Message],
    ) -> Result<(), BookError> {
        writes.no_room(room);
        writes.topic(room, None)?;
        writes.nothing_shown(&self.drafted, room)?;
        writes.shown_privately(&self.drafted, &afar::mark(room), None)?;
        for key in self.drafted.bells_of(room)? {
            writes.no_bell(key);
        }
        for former in self.drafted.formerly(room)? {
            writes.no_alias(former);
        }
        staging.desk.awaited.said_in(room).into_iter().for_each(|sequence| writes.arrival_done(sequence));
        staging.drop_chat(room)?;
        for message in messages.iter_mut().filter(|message| message.chat() == Some(room)) {
            // A farewell leaves no trace, but may still take the place of the question before it.
            if let Some(key) = message.key.take().filter(|_| message.how == How::Edit) {
                message.over = self.drafted.shown(room, &key)?;
            }
        }
        Ok(())
    }

    fn forget_person(&self, writes: &mut Writes, person: PersonId, current: &Room) -> Result<(), BookError> {
        writes.no_person(person);
        writes.no_names_with(&self.drafted, person)?;
        for mut room in self.drafted.rooms_naming(person)? {
            if room.id == person.private_room() {
                continue;
            }
            if room.id == current.id {
                room = current.clone();
            }
            room.forget_person(person);
            writes.room(&room)?;
        }
        Ok(())
    }

    /// The turn's messages with their words.
    fn messages(&self, scene: &Scene, turn: &Turn, heard: &Heard, now: DateTime<Utc>) -> Vec<Message> {
        turn.says.iter().map(|say| self.message(scene, turn, heard, say, now)).collect()
    }

    fn message(&self, scene: &Scene, turn: &Turn, heard: &Heard, say: &Say, now: DateTime<Utc>) -> Message {
        let room = turn.room.as_ref().unwrap_or(&scene.room);
        let other = match say.to {
            To::Room(id) if id != room.id && id != scene.room.id => self.drafted.room(id).ok().flatten(),
            _ => None,
        };
        let place = other.as_ref().unwrap_or(room);
        let reader = match &say.to {
            // A private room reads as its person does.
            To::Room(id) => (place.kind == RoomKind::Private).then_some(PersonId(id.0)).or(say.reader),
            To::Person(person) => Some(*person),
            To::Press(_) => heard.by.as_ref().map(|by| by.id),
        };
        let person = reader.and_then(|id| {
            let new = turn.people.iter().find(|person| person.id == id);
            new.or_else(|| scene.people.get(&id)).cloned().or_else(|| self.drafted.person(id).ok().flatten())
        });
        // What was said in another language is answered in it.
        let person = person.map(|mut person| {
            person.taste.language = say.language.clone().or(person.taste.language);
            person
        });
        let spoken = say.language.clone().map(|language| {
            let mut place = place.clone();
            place.taste.language = Some(language);
            place
        });
        let place = spoken.as_ref().unwrap_or(place);
        let audience = person.as_ref().map_or(Audience::Room(place), |person| Audience::Person(person, place));
        let close = say.how == How::Close;
        let html = if close { String::new() } else { self.voice.html(&say.text, audience, now) };
        let buttons = if close { Vec::new() } else { self.buttons(&say.buttons, &say.to, room.id, audience, now) };
        Message {
            to: say.to.clone(),
            room: room.id,
            at: now,
            key: say.key.as_ref().map(|key| afar::called(key, &say.to, room.id)),
            how: say.how,
            html,
            buttons,
            urgency: say.urgency,
            over: None,
            reply_to: None,
            topic: None,
            step: say.step.map(|step| step.name().to_owned()),
            pin: say.pin,
            sole: say.sole,
            file: say.file.as_ref().and_then(|file| self.attachment(file, audience, now)),
            ask_reply: say.ask_reply,
            ask_place: say.ask_place.then(|| self.voice.label(&Text::new("telegram-share-place"), audience, now)),
        }
    }

    fn attachment(&self, file: &File, audience: Audience<'_>, now: DateTime<Utc>) -> Option<Attachment> {
        let bytes = match &file.content {
            FileContent::Bytes(bytes) => bytes.clone(),
            FileContent::Calendar(calendar) => calendar::write(calendar, |text| self.voice.label(text, audience, now)),
            FileContent::Picture(chart) => self.voice.picture(chart, audience, now)?,
            FileContent::Sheet(sheet) => self.voice.sheet(sheet, audience, now)?,
        };
        let print = matches!(file.content, FileContent::Sheet(_));
        Some(Attachment { name: file.name.clone(), bytes, print })
    }

    fn buttons(
        &self,
        rows: &[Vec<Button>],
        to: &To,
        room: RoomId,
        audience: Audience<'_>,
        now: DateTime<Utc>,
    ) -> Vec<Vec<Key>> {
        let key = |button: &Button| {
            let data = afar::called(&button.data, to, room);
            if data.is_empty() || data.len() > MAX_DATA {
                tracing::error!(length = data.len(), "a button was left out: its data does not fit");
                return None;
            }
            Some(Key { label: self.voice.label(&button.label, audience, now), data })
        };
        rows.iter().map(|row| row.iter().filter_map(key).collect::<Vec<_>>()).filter(|row| !row.is_empty()).collect()
    }

    /// What is said when a turn has failed: short, and only to someone who waits or relies on it.
    fn sorry(&self, scene: &Scene, heard: &Heard, now: DateTime<Utc>) -> Vec<Message> {
        let (to, id) = match &heard.what {
            What::Pressed { press, .. } => (To::Press(press.clone()), "telegram-sorry"),
            What::Said { addressed: true, .. } | What::Located { .. } => (To::Room(heard.room), "telegram-sorry"),
            What::Rang { .. } => (To::Room(heard.room), "telegram-sorry-bell"),
            _ => return Vec::new(),
        };
        let turn = Turn { says: vec![Say::new(to, Text::new(id))], ..Turn::default() };
        let words = || self.messages(scene, &turn, heard, now);
        catch_unwind(AssertUnwindSafe(words)).unwrap_or_default()
    }
}

/// What nobody can guess; 0 where the system has none to give.
fn chance() -> u128 {
    let mut bytes = [0; 16];
    match getrandom::fill(&mut bytes) {
        Ok(()) => u128::from_be_bytes(bytes),
        Err(error) => {
            tracing::warn!(%error, "the system gives no chance: no private links");
            0
        }
    }
}

/// Every press is answered, with words or without: the button stops waiting.
fn answer_press(messages: &mut Vec<Message>, press: &str, room: &Room, now: DateTime<Utc>) {
    let to = To::Press(press.to_owned());
    if messages.iter().any(|message| message.to == to) {
        return;
    }
    messages.push(Message {
        to,
        room: room.id,
        at: now,
        key: None,
        how: How::New,
        html: String::new(),
        buttons: Vec::new(),
        over: None,
        reply_to: None,
        topic: None,
        urgency: Urgency::Answer,
        step: None,
        pin: false,
        sole: false,
        file: None,
        ask_reply: false,
        ask_place: None,
    });
}

fn blank_scene(heard: &Heard) -> Scene {
    let people = heard.by.iter().map(|by| (by.id, Person::new(by))).collect();
    Scene { room: Room::new(heard.room, heard.kind), people, chance: 0 }
}

/// For logs: what was heard, without any of it.
fn name_of(what: &What) -> &'static str {
    match what {
        What::Said { .. } => "said",
        What::Pressed { .. } => "pressed",
        What::Located { .. } => "located",
        What::Document { .. } => "document",
        What::Unreadable => "unreadable",
        What::Welcomed => "welcomed",
        What::Removed => "removed",
        What::Came { .. } => "came",
        What::Left { .. } => "left",
        What::NotPinned => "not pinned",
        What::Migrated { .. } => "migrated",
        What::Rang { .. } => "rang",
        What::Flooded { .. } => "flooded",
    }
}
