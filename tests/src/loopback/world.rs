//! The world behind the server: people, chats, messages, updates not yet confirmed.
//!
//! Plain data and the rules of who sees what. No HTTP, no waiting.

use super::fault::Faults;
use super::html::{self, Entity};
use super::schema::{self, Upload};
use chrono::{DateTime, TimeDelta, Utc};
use serde_json::{Map, Value, json};
use std::collections::{BTreeMap, BTreeSet, VecDeque};
use std::sync::Arc;
use std::time::{Duration, Instant};

/// A chat's id: positive for a private chat (the person's own id), negative for a group.
pub type ChatId = i64;

/// Id of the bot.
pub(super) const BOT: i64 = 4242;
/// Username of the bot.
pub(super) const BOT_USERNAME: &str = "carvetime_test_bot";
/// How long a press can be answered and delivered.
pub(super) const PRESS_LIVES: TimeDelta = TimeDelta::seconds(150);
/// How long a message can be deleted.
pub(super) const DELETABLE: TimeDelta = TimeDelta::hours(48);
/// How long an inline query is delivered and can be answered.
pub(super) const INLINE_LIVES: TimeDelta = TimeDelta::seconds(30);
/// How long any other update is kept.
const UPDATE_LIVES: TimeDelta = TimeDelta::hours(24);

/// One call as it arrived.
#[derive(Debug, Clone)]
pub struct Call {
    /// Proper name of the method.
    pub method: String,
    /// Its parameters.
    pub args: Map<String, Value>,
    /// Files that came with it.
    pub files: BTreeMap<String, Upload>,
    /// When it arrived.
    pub at: Instant,
    /// `None` until answered; then whether it was applied and the reply sent.
    pub ok: Option<bool>,
}

/// A message as it stands now.
#[derive(Debug, Clone)]
pub struct Message {
    /// Id, unique within the chat.
    pub id: i64,
    /// Where.
    pub chat: ChatId,
    /// Topic.
    pub thread: Option<i64>,
    /// Who wrote it.
    pub from: i64,
    /// Plain text or caption.
    pub text: String,
    /// Its formatting.
    pub entities: Vec<Entity>,
    /// Inline buttons: label and data.
    pub buttons: Vec<Vec<(String, String)>>,
    /// Anything else in `reply_markup` (a reply keyboard, `force_reply`).
    pub markup: Option<Value>,
    /// A file that came with it.
    pub file: Option<Upload>,
    /// Id of that file.
    pub file_id: Option<String>,
    /// Sent as a photo.
    pub photo: bool,
    /// A place.
    pub location: Option<(f64, f64)>,
    /// The message it replies to.
    pub reply_to: Option<i64>,
    /// Pinned.
    pub pinned: bool,
    /// Sent without a sound.
    pub silent: bool,
    /// When.
    pub date: DateTime<Utc>,
    /// When it was last changed.
    pub edited: Option<DateTime<Utc>>,
}

impl Message {
    pub(super) fn new(chat: ChatId, from: i64, text: &str, date: DateTime<Utc>) -> Self {
        Self {
            id: 0,
            chat,
            thread: None,
            from,
            text: text.to_string(),
            entities: Vec::new(),
            buttons: Vec::new(),
            markup: None,
            file: None,
            file_id: None,
            photo: false,
            location: None,
            reply_to: None,
            pinned: false,
            silent: false,
            date,
            edited: None,
        }
    }

    /// Labels of the buttons, row after row.
    pub fn labels(&self) -> Vec<String> {
        self.buttons.iter().flatten().map(|(label, _)| label.clone()).collect()
    }
}

/// What a person saw after pressing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Answer {
    /// The notice; empty for a silent answer.
    pub text: String,
    /// Shown as an alert.
    pub alert: bool,
}

#[derive(Debug, Clone)]
pub(super) struct User {
    pub id: i64,
    pub name: String,
    /// What they can be mentioned by, without `@`.
    pub username: Option<String>,
    pub language: Option<String>,
    pub started: bool,
    pub blocked: bool,
}

#[derive(Debug, Clone)]
pub(super) struct Chat {
    pub id: ChatId,
    pub kind: &'static str,
    pub title: String,
    /// A public group's name: everyone sees it, and can press in it.
    pub public: Option<String>,
    pub members: BTreeSet<i64>,
    pub admins: BTreeSet<i64>,
    pub bot_in: bool,
    pub bot_muted: bool,
    pub bot_admin: bool,
    /// Topics closed for writing.
    pub closed: BTreeSet<i64>,
    pub forum: bool,
    pub migrated_to: Option<ChatId>,
    pub messages: BTreeMap<i64, Message>,
    pub next_message: i64,
}

pub(super) struct Press {
    pub by: i64,
    pub chat: ChatId,
    pub at: DateTime<Utc>,
    pub answer: Option<Answer>,
}

/// What somebody typed behind the bot's name, and what came of it.
pub(super) struct Inline {
    pub at: DateTime<Utc>,
    pub asked: Instant,
    /// Parameters of the answer, and how long it took.
    pub answer: Option<(Value, Duration)>,
}

/// What happened in a chat, in order.
#[derive(Debug, Clone)]
pub(super) struct Event {
    pub at: DateTime<Utc>,
    pub chat: ChatId,
    pub by_bot: bool,
    pub message: Option<i64>,
    pub line: String,
    /// The text of the message or notice alone.
    pub text: String,
}

/// A refusal as the platform words it.
#[derive(Debug)]
pub(super) struct Refusal {
    pub code: u16,
    pub description: String,
    pub parameters: Option<Value>,
}

impl Refusal {
    pub(super) fn new(code: u16, description: impl Into<String>) -> Self {
        Self { code, description: description.into(), parameters: None }
    }
    pub(super) fn bad(what: impl AsRef<str>) -> Self {
        Self::new(400, format!("Bad Request: {}", what.as_ref()))
    }
}

pub(super) struct Update {
    pub id: i64,
    pub kind: &'static str,
    pub at: DateTime<Utc>,
    pub json: Value,
}

pub(super) struct World {
    pub clock: Arc<dyn Fn() -> DateTime<Utc> + Send + Sync>,
    pub users: BTreeMap<i64, User>,
    pub chats: BTreeMap<ChatId, Chat>,
    pub updates: VecDeque<Update>,
    /// Confirmed already; delivered again on demand.
    pub confirmed: VecDeque<Update>,
    pub next_update: i64,
    pub replay: usize,
    pub shuffle: Option<u64>,
    pub allowed: Option<Vec<String>>,
    pub poller: u64,
    pub webhook: Option<(String, Option<String>)>,
    pub presses: BTreeMap<String, Press>,
    pub inline: BTreeMap<String, Inline>,
    pub next_id: i64,
    pub files: BTreeMap<String, Upload>,
    pub commands: BTreeMap<(String, String), Vec<(String, String)>>,
    pub texts: BTreeMap<(String, String), String>,
    pub calls: Vec<Call>,
    pub in_flight: usize,
    /// When something was last done to the world by anybody.
    pub last_deed: Instant,
    pub events: Vec<Event>,
    pub violations: Vec<String>,
    pub faults: Faults,
    pub privacy: bool,
    pub limits: bool,
    /// Files are told to be smaller than they are.
    pub understates: bool,
    pub sent_at: VecDeque<(Instant, ChatId)>,
    /// Who it says the bot is.
    pub me: i64,
    pub token_good: bool,
    pub offline: bool,
}

impl World {
    /// How many bytes a file is told to have.
    pub fn told_size(&self, size: usize) -> usize {
        if self.understates { size.min(10) } else { size }
    }

    pub(super) fn new() -> Self {
        Self {
            clock: Arc::new(Utc::now),
            users: BTreeMap::new(),
            chats: BTreeMap::new(),
            updates: VecDeque::new(),
            confirmed: VecDeque::new(),
            next_update: 1000,
            replay: 0,
            shuffle: None,
            allowed: None,
            poller: 0,
            webhook: None,
            presses: BTreeMap::new(),
            inline: BTreeMap::new(),
            next_id: 1,
            files: BTreeMap::new(),
            commands: BTreeMap::new(),
            texts: BTreeMap::new(),
            calls: Vec::new(),
            in_flight: 0,
            last_deed: Instant::now(),
            events: Vec::new(),
            violations: Vec::new(),
            faults: Faults::default(),
            privacy: true,
            limits: false,
            understates: false,
            sent_at: VecDeque::new(),
            me: BOT,
            token_good: true,
            offline: false,
        }
    }

    pub(super) fn now(&self) -> DateTime<Utc> {
        (self.clock)()
    }

    pub(super) fn fresh_id(&mut self) -> i64 {
        self.next_id += 1;
        self.next_id
    }

    // People and chats as the Bot API shows them.

    pub(super) fn bot_json(&self) -> Value {
        json!({
            "id": self.me, "is_bot": true, "first_name": "Carvetime", "username": BOT_USERNAME,
            "can_join_groups": true, "can_read_all_group_messages": !self.privacy, "supports_inline_queries": true,
            "can_connect_to_business": false, "has_main_web_app": false, "has_topics_enabled": false,
            "allows_users_to_create_topics": false, "can_manage_bots": false, "supports_guest_queries": false,
            "supports_join_request_queries": false,
        })
    }

    pub(super) fn user_json(&self, id: i64) -> Value {
        if id == BOT {
            return json!({"id": BOT, "is_bot": true, "first_name": "Carvetime", "username": BOT_USERNAME});
        }
        let Some(user) = self.users.get(&id) else {
            return json!({"id": id, "is_bot": false, "first_name": "?"});
        };
        let mut json = json!({"id": id, "is_bot": false, "first_name": user.name});
        if let Some(username) = &user.username {
            json["username"] = json!(username);
        }
        if let Some(language) = &user.language {
            json["language_code"] = json!(language);
        }
        json
    }

    pub(super) fn chat_json(&self, id: ChatId) -> Value {
        match self.chats.get(&id) {
            Some(chat) if chat.kind == "private" => {
                let mut json = json!({"id": id, "type": "private", "first_name": chat.title});
                if let Some(username) = self.users.get(&id).and_then(|user| user.username.as_ref()) {
                    json["username"] = json!(username);
                }
                json
            }
            Some(chat) => {
                let mut json = json!({"id": id, "type": chat.kind, "title": chat.title});
                if let Some(name) = &chat.public {
                    json["username"] = json!(name);
                }
                if chat.forum {
                    json["is_forum"] = json!(true);
                }
                json
            }
            None => json!({"id": id, "type": "private", "first_name": "?"}),
        }
    }

    pub(super) fn message_json(&self, message: &Message) -> Value {
        let mut json = json!({
            "message_id": message.id, "from": self.user_json(message.from), "chat": self.chat_json(message.chat),
            "date": message.date.timestamp(),
        });
        let entities: Vec<Value> = message
            .entities
            .iter()
            .map(|entity| entity.to_json(|id| self.users.contains_key(&id).then(|| self.user_json(id))))
            .collect();
        let (text_key, entity_key) =
            if message.file.is_some() { ("caption", "caption_entities") } else { ("text", "entities") };
        if let Some((latitude, longitude)) = message.location {
            json["location"] = json!({"latitude": latitude, "longitude": longitude});
        } else if message.file.is_none() || !message.text.is_empty() {
            json[text_key] = json!(message.text);
            if !entities.is_empty() {
                json[entity_key] = json!(entities);
            }
        }
        if let (Some(file), Some(id)) = (&message.file, &message.file_id) {
            let file_json = json!({"file_id": id, "file_unique_id": id, "file_size": self.told_size(file.bytes.len())});
            if message.photo {
                let mut photo = file_json;
                photo["width"] = json!(800);
                photo["height"] = json!(600);
                json["photo"] = json!([photo]);
            } else {
                json["document"] = file_json;
                json["document"]["file_name"] = json!(file.name);
            }
        }
        if !message.buttons.is_empty() {
            json["reply_markup"] = json!({"inline_keyboard": message.buttons.iter().map(|row| {
                row.iter().map(|(label, data)| json!({"text": label, "callback_data": data})).collect::<Vec<_>>()
            }).collect::<Vec<_>>()});
        }
        if let Some(edited) = message.edited {
            json["edit_date"] = json!(edited.timestamp());
        }
        if let Some(thread) = message.thread {
            json["message_thread_id"] = json!(thread);
            json["is_topic_message"] = json!(true);
        }
        if let Some(replied) = message.reply_to.and_then(|id| self.chats.get(&message.chat)?.messages.get(&id)) {
            json["reply_to_message"] = self.message_json(&Message { reply_to: None, ..replied.clone() });
        }
        json
    }

    // What happens.

    /// Puts a message into its chat and gives it an id.
    pub(super) fn put(&mut self, mut message: Message) -> Message {
        let chat = self.chats.get_mut(&message.chat).expect("the chat exists");
        message.id = chat.next_message;
        chat.next_message += 1;
        chat.messages.insert(message.id, message.clone());
        message
    }

    pub(super) fn push(&mut self, kind: &'static str, content: Value) -> i64 {
        let default_off = ["chat_member", "message_reaction", "message_reaction_count"];
        let wanted = match &self.allowed {
            Some(kinds) if !kinds.is_empty() => kinds.iter().any(|allowed| allowed == kind),
            _ => !default_off.contains(&kind),
        };
        let id = self.next_update;
        self.last_deed = Instant::now();
        if wanted {
            self.next_update += 1;
            let json = json!({"update_id": id, kind: content});
            let wrong = schema::check_type("Update", &json);
            assert!(wrong.is_empty(), "the server made a false update: {wrong:?} in {json}");
            let at = self.now();
            self.updates.push_back(Update { id, kind, at, json });
        }
        id
    }

    /// Whether the bot is shown this message of a person.
    pub(super) fn bot_sees(&self, message: &Message) -> bool {
        let Some(chat) = self.chats.get(&message.chat) else { return false };
        if chat.kind == "private" || !self.privacy || chat.bot_admin {
            return chat.bot_in;
        }
        let replied = message.reply_to.and_then(|id| chat.messages.get(&id));
        chat.bot_in && (message.text.starts_with('/') || replied.is_some_and(|replied| replied.from == BOT))
    }

    /// Entities that clients attach to what a person types.
    pub(super) fn typed_entities(text: &str) -> Vec<Entity> {
        let mut entities = Vec::new();
        let mut offset = 0;
        for word in text.split_inclusive(char::is_whitespace) {
            let bare = word.trim_end();
            let kind = match bare.chars().next() {
                Some('/') if bare.len() > 1 => "bot_command",
                Some('@') if bare.len() > 5 => "mention",
                _ => "",
            };
            if !kind.is_empty() {
                entities.push(Entity { kind: kind.into(), offset, length: html::utf16(bare), url: None });
            }
            offset += html::utf16(word);
        }
        entities
    }

    pub(super) fn event(&mut self, chat: ChatId, by_bot: bool, message: Option<i64>, line: String, text: String) {
        let at = self.now();
        self.events.push(Event { at, chat, by_bot, message, line, text });
    }

    /// Drops what the platform would have given up on.
    pub(super) fn expire(&mut self) {
        let now = self.now();
        self.updates.retain(|update| {
            let lives = match update.kind {
                "callback_query" => PRESS_LIVES,
                "inline_query" => INLINE_LIVES,
                _ => UPDATE_LIVES,
            };
            now - update.at <= lives
        });
    }

    /// Whether the bot may write into a chat.
    pub(super) fn may_write(&self, id: ChatId) -> Result<(), Refusal> {
        let chat = self.chats.get(&id).ok_or_else(|| Refusal::bad("chat not found"))?;
        if let Some(to) = chat.migrated_to {
            let mut refusal = Refusal::bad("group chat was upgraded to a supergroup chat");
            refusal.parameters = Some(json!({"migrate_to_chat_id": to}));
            return Err(refusal);
        }
        match self.users.get(&id) {
            Some(user) if user.blocked => Err(Refusal::new(403, "Forbidden: bot was blocked by the user")),
            Some(user) if !user.started => {
                Err(Refusal::new(403, "Forbidden: bot can't initiate conversation with a user"))
            }
            None if !chat.bot_in => {
                Err(Refusal::new(403, format!("Forbidden: bot was kicked from the {} chat", chat.kind)))
            }
            None if chat.bot_muted => Err(Refusal::bad("not enough rights to send text messages to the chat")),
            _ => Ok(()),
        }
    }

    /// The platform's flood limits as its FAQ gives them: 20 messages a minute in a group, 30 a second in all.
    pub(super) fn within_limits(&mut self, chat: ChatId) -> Result<(), Refusal> {
        let now = Instant::now();
        while self.sent_at.front().is_some_and(|(at, _)| now.duration_since(*at).as_secs() >= 60) {
            self.sent_at.pop_front();
        }
        let here = self.sent_at.iter().filter(|(_, to)| *to == chat).count();
        let last_second = self.sent_at.iter().filter(|(at, _)| now.duration_since(*at).as_millis() < 1000).count();
        if self.limits && ((chat < 0 && here >= 20) || last_second >= 30) {
            let mut refusal = Refusal::new(429, "Too Many Requests: retry after 1");
            refusal.parameters = Some(json!({"retry_after": 1}));
            return Err(refusal);
        }
        self.sent_at.push_back((now, chat));
        Ok(())
    }
}
