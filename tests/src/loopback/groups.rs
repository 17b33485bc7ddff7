//! What happens to a group: it moves, is renamed, has its topics closed; people leave, and speak as nobody.

use super::driver::Loopback;
use super::fault::{Fault, Rule};
use super::world::{BOT, ChatId, Message, User, World};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

/// How the bot learns that a group has become another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Told {
    /// By both service messages, the old group's first.
    InOrder,
    /// By both, the new group's first.
    Backwards,
    /// By neither: only a call to the old group shows it.
    Never,
}

impl Loopback {
    /// The group becomes a supergroup with another id. Both service messages are delivered.
    pub fn migrate(&self, old: ChatId) -> ChatId {
        self.migrate_told(old, Told::InOrder)
    }

    /// The group becomes a supergroup with another id.
    pub fn migrate_told(&self, old: ChatId, told: Told) -> ChatId {
        let new = move_group(&mut self.world(), old, told);
        self.changed();
        new
    }

    /// The group becomes a supergroup just before the next call of `method` is applied; the call is not, and its reply is
    /// lost. Its new id, once it has one.
    pub fn migrate_before(&self, method: &'static str, old: ChatId) -> Arc<Mutex<Option<ChatId>>> {
        let moved = Arc::new(Mutex::new(None));
        let (shared, tell) = (Arc::clone(&self.shared), Arc::clone(&moved));
        let hook = move || {
            let new = move_group(&mut shared.world(), old, Told::InOrder);
            *tell.lock().unwrap_or_else(PoisonError::into_inner) = Some(new);
        };
        self.fault(Rule::next(method, Fault::Before(Arc::new(hook))));
        moved
    }

    /// `name` leaves the group.
    ///
    /// # Panics
    /// If there is nobody of that name.
    pub fn leave(&self, name: &str, chat: ChatId) {
        let id = self.id(name);
        let mut world = self.world();
        if let Some(chat) = world.chats.get_mut(&chat) {
            chat.members.remove(&id);
            chat.admins.remove(&id);
        }
        world.event(chat, false, None, format!("{name} leaves"), String::new());
        let user = world.user_json(id);
        service(&mut world, chat, Some(id), "left_chat_member", user);
        drop(world);
        self.changed();
    }

    /// The group is called `title` from now on.
    pub fn rename_group(&self, chat: ChatId, title: &str) {
        let mut world = self.world();
        if let Some(chat) = world.chats.get_mut(&chat) {
            chat.title = title.to_string();
        }
        service(&mut world, chat, None, "new_chat_title", json!(title));
        drop(world);
        self.changed();
    }

    /// The group is public from now on: whoever finds it sees what stands there, and presses.
    pub fn open_to_all(&self, chat: ChatId, name: &str) {
        if let Some(chat) = self.world().chats.get_mut(&chat) {
            chat.kind = "supergroup";
            chat.public = Some(name.to_string());
        }
    }

    /// `name` calls themselves `new` from now on.
    pub fn rename(&self, name: &str, new: &str) {
        let id = self.id(name);
        if let Some(user) = self.world().users.get_mut(&id) {
            user.name = new.to_string();
        }
    }

    /// An administrator takes the bot's leave to write.
    pub fn mute_bot(&self, name: &str, chat: ChatId) {
        self.membership(name, chat, "member", "restricted");
    }

    /// An administrator gives it back.
    pub fn unmute_bot(&self, name: &str, chat: ChatId) {
        self.membership(name, chat, "restricted", "member");
    }

    /// `name` lets the bot write to them again.
    pub fn unblock(&self, name: &str) {
        self.membership(name, self.id(name), "kicked", "member");
    }

    /// Nobody may write into this topic any more.
    pub fn close_topic(&self, chat: ChatId, thread: i64) {
        if let Some(chat) = self.world().chats.get_mut(&chat) {
            chat.closed.insert(thread);
        }
    }

    /// Someone writes as the group itself: an anonymous administrator.
    pub fn say_as_group(&self, chat: ChatId, text: &str) {
        let fake = json!({"id": 1_087_968_824, "is_bot": true, "first_name": "Group", "username": "GroupAnonymousBot"});
        self.say_as(chat, fake, Some(chat), text);
    }

    /// A channel's post appears in its discussion group.
    pub fn say_as_channel(&self, chat: ChatId, text: &str) {
        let fake = json!({"id": 777_000, "is_bot": false, "first_name": "Telegram"});
        self.say_as(chat, fake, Some(-1_000_000_000_555), text);
    }

    /// Another bot writes.
    pub fn say_as_bot(&self, chat: ChatId, text: &str) {
        let other = json!({"id": 5555, "is_bot": true, "first_name": "Other", "username": "other_test_bot"});
        self.say_as(chat, other, None, text);
    }

    fn say_as(&self, chat: ChatId, from: Value, sender: Option<ChatId>, text: &str) {
        let mut world = self.world();
        let mut message = Message::new(chat, 0, text, world.now());
        message.entities = World::typed_entities(text);
        let message = world.put(message);
        let name = from["first_name"].as_str().unwrap_or_default().to_string();
        world.event(chat, false, Some(message.id), format!("({name}): {text}"), text.to_string());
        let mut json = world.message_json(&message);
        json["from"] = from;
        if let Some(sender) = sender {
            json["sender_chat"] = match world.chats.contains_key(&sender) {
                true => world.chat_json(sender),
                false => json!({"id": sender, "type": "channel", "title": "Kitchen news"}),
            };
        }
        world.push("message", json);
        drop(world);
        self.changed();
    }

    /// A person of another language who may be written to.
    pub fn speaker_of(&self, name: &str, language: &str) -> ChatId {
        let id = self.find(name).unwrap_or_else(|| self.stranger(name, language));
        if let Some(user) = self.world().users.get_mut(&id) {
            user.started = true;
        }
        id
    }

    /// Everyone there is, by id.
    pub fn people(&self) -> Vec<(i64, String)> {
        self.world().users.values().map(|User { id, name, .. }| (*id, name.clone())).collect()
    }
}

fn move_group(world: &mut World, old: ChatId, told: Told) -> ChatId {
    let new = -1_000_000_000_000 - world.fresh_id();
    let mut chat = world.chats.get(&old).expect("the group exists").clone();
    chat.id = new;
    chat.kind = "supergroup";
    chat.messages = BTreeMap::new();
    world.chats.insert(new, chat);
    if let Some(chat) = world.chats.get_mut(&old) {
        chat.migrated_to = Some(new);
    }
    let line = "the group becomes a supergroup".to_string();
    world.event(old, false, None, line, String::new());
    let mut tellings = vec![(old, "migrate_to_chat_id", new), (new, "migrate_from_chat_id", old)];
    match told {
        Told::InOrder => {}
        Told::Backwards => tellings.reverse(),
        Told::Never => tellings.clear(),
    }
    for (chat, key, other) in tellings {
        service(world, chat, None, key, json!(other));
    }
    new
}

/// A service message of `chat`, by its owner if not by somebody else.
fn service(world: &mut World, chat: ChatId, by: Option<i64>, key: &str, content: Value) {
    let owner = world.chats.get(&chat).and_then(|chat| chat.admins.first().copied()).unwrap_or(BOT);
    let message = Message::new(chat, by.unwrap_or(owner), "", world.now());
    let message = world.put(message);
    let mut json = world.message_json(&message);
    if let Some(json) = json.as_object_mut() {
        json.remove("text");
    }
    json[key] = content;
    world.push("message", json);
}
