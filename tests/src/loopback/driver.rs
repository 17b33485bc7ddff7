//! What a test does and sees: people say and press, and look at what came.
//!
//! All calls block; the server runs on a thread of its own. Waiting ends in a panic that shows the chat.

use super::fault::{Fault, Rule};
use super::http::{self, Shared};
use super::schema::Upload;
use super::wire::{Counting, Open};
use super::world::{Answer, BOT, BOT_USERNAME, Call, Chat, ChatId, Event, Inline, Message, Press, User, World};
use chrono::{DateTime, Utc};
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet};
use std::io::{Read as _, Write as _};
use std::net::{Ipv4Addr, SocketAddr};
use std::sync::atomic::Ordering;
use std::sync::{Arc, Condvar, Mutex, MutexGuard, OnceLock};
use std::time::{Duration, Instant};
use tokio::sync::{Notify, oneshot};

/// The token the server knows.
pub const TOKEN: &str = "4242:loopback-token-for-tests_only";

/// A running server. Dropping it stops it and, if the test is not failing already, fails it for any violation.
pub struct Loopback {
    pub(super) shared: Arc<Shared>,
    address: SocketAddr,
    handle: tokio::runtime::Handle,
    stop: Option<oneshot::Sender<()>>,
    /// Connections to it.
    open: Open,
    /// How far each chat's events have been looked at.
    seen: Mutex<BTreeMap<ChatId, usize>>,
    /// See [`Loopback::set_rest`].
    rest: OnceLock<Box<dyn Fn() -> bool + Send + Sync>>,
    /// How long to wait for what is expected.
    pub patience: Duration,
}

impl Loopback {
    /// A server on a free port with an empty world.
    pub fn start() -> Self {
        let shared = Arc::new(Shared {
            token: TOKEN.to_string(),
            world: Mutex::new(World::new()),
            news: Notify::new(),
            changed: Condvar::new(),
        });
        let (stop, stopped) = oneshot::channel();
        let (tell, told) = std::sync::mpsc::channel();
        let router = http::router(shared.clone());
        let open = Open::default();
        let counter = open.clone();
        std::thread::spawn(move || {
            let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
            runtime.block_on(async move {
                let listener = tokio::net::TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).await.expect("a free port");
                let address = listener.local_addr().expect("an address");
                tell.send((address, tokio::runtime::Handle::current())).expect("the test waits");
                let listener = Counting { listener, open: counter };
                tokio::select! {
                    served = async { axum::serve(listener, router).await } => served.expect("the server runs"),
                    _ = stopped => {}
                }
            });
            runtime.shutdown_background();
        });
        let (address, handle) = told.recv().expect("the server starts");
        let (seen, patience) = (Mutex::default(), Duration::from_secs(20));
        Self { shared, address, handle, stop: Some(stop), open, seen, rest: OnceLock::new(), patience }
    }

    /// Base URL, for `TELOXIDE_API_URL`.
    pub fn url(&self) -> String {
        format!("http://{}", self.address)
    }

    pub(super) fn world(&self) -> MutexGuard<'_, World> {
        self.shared.world()
    }

    pub(super) fn changed(&self) {
        self.shared.news.notify_waiters();
        self.shared.changed.notify_all();
    }

    // The world.

    /// Dates messages by `clock` from now on.
    pub fn set_clock(&self, clock: impl Fn() -> DateTime<Utc> + Send + Sync + 'static) {
        self.world().clock = Arc::new(clock);
    }

    /// A person who has not started the bot yet; their id is also their private chat's.
    pub fn stranger(&self, name: &str, language: &str) -> ChatId {
        let mut world = self.world();
        let id = 100_000 + world.fresh_id();
        let language = (!language.is_empty()).then(|| language.to_string());
        world
            .users
            .insert(id, User { id, name: name.into(), username: None, language, started: false, blocked: false });
        let members = BTreeSet::from([id]);
        world.chats.insert(id, chat(id, "private", name, members));
        id
    }

    /// A person takes a username, without `@`.
    pub fn takes_username(&self, name: &str, username: &str) {
        let id = self.id(name);
        if let Some(user) = self.world().users.get_mut(&id) {
            user.username = Some(username.to_string());
        }
    }

    /// A person with an English app who may be written to.
    pub fn person(&self, name: &str) -> ChatId {
        let id = self.stranger(name, "en");
        if let Some(user) = self.world().users.get_mut(&id) {
            user.started = true;
        }
        id
    }

    /// A group of these people (made if new, not started) and the bot; the first owns it. The bot hears of being added.
    pub fn group(&self, title: &str, people: &[&str]) -> ChatId {
        for name in people {
            if self.find(name).is_none() {
                self.stranger(name, "en");
            }
        }
        let ids: Vec<i64> = people.iter().map(|name| self.id(name)).collect();
        let id = {
            let mut world = self.world();
            let id = -100_000 - world.fresh_id();
            let mut chat = chat(id, "group", title, ids.iter().copied().collect());
            chat.admins.extend(ids.first());
            world.chats.insert(id, chat);
            id
        };
        self.add_bot(people[0], id);
        id
    }

    /// A group with topics; ids of topics are chosen by the caller.
    pub fn forum(&self, title: &str, people: &[&str]) -> ChatId {
        let old = self.group(title, people);
        let mut world = self.world();
        if let Some(chat) = world.chats.get_mut(&old) {
            chat.kind = "supergroup";
            chat.forum = true;
        }
        old
    }

    /// The bot is added to a group by `name`.
    pub fn add_bot(&self, name: &str, chat: ChatId) {
        self.membership(name, chat, "left", "member");
    }

    /// The bot is removed from a group by `name`.
    pub fn remove_bot(&self, name: &str, chat: ChatId) {
        self.membership(name, chat, "member", "kicked");
    }

    /// `name` blocks the bot.
    pub fn block(&self, name: &str) {
        let id = self.id(name);
        self.membership(name, id, "member", "kicked");
    }

    pub(super) fn membership(&self, name: &str, chat: ChatId, from: &str, to: &str) {
        let by = self.id(name);
        let mut world = self.world();
        let (inside, muted) = (to != "kicked" && to != "left", to == "restricted");
        if let Some(chat) = world.chats.get_mut(&chat) {
            chat.bot_in = inside;
            chat.bot_muted = muted;
        }
        if let Some(user) = world.users.get_mut(&chat) {
            user.blocked = !inside;
        }
        let member = |status: &str| {
            let mut json = json!({"status": status, "user": world.user_json(BOT)});
            if status == "kicked" {
                json["until_date"] = json!(0);
            }
            if status == "restricted" {
                json["until_date"] = json!(0);
                json["is_member"] = json!(true);
                for right in RIGHTS {
                    json[*right] = json!(false);
                }
            }
            json
        };
        let update = json!({
            "chat": world.chat_json(chat), "from": world.user_json(by), "date": world.now().timestamp(),
            "old_chat_member": member(from), "new_chat_member": member(to),
        });
        world.push("my_chat_member", update);
        let verb = match (from, to) {
            (_, "restricted") => "muted",
            ("restricted", _) => "unmuted",
            _ if inside => "added",
            _ => "removed",
        };
        world.event(chat, false, None, format!("{name} {verb} carvetime"), String::new());
        drop(world);
        self.changed();
    }

    /// The bot becomes an administrator (sees everything, may pin).
    pub fn promote_bot(&self, chat: ChatId) {
        if let Some(chat) = self.world().chats.get_mut(&chat) {
            chat.bot_admin = true;
        }
    }

    /// Switches the bot's privacy mode (on at first).
    pub fn set_privacy(&self, on: bool) {
        self.world().privacy = on;
    }

    // What people do.

    /// `name` writes `text` into `chat`; the message's id.
    pub fn say(&self, name: &str, chat: ChatId, text: &str) -> i64 {
        self.write(name, chat, |message| message.text = text.to_string())
    }

    /// `name` writes `text` to the bot in private.
    pub fn tell(&self, name: &str, text: &str) -> i64 {
        self.say(name, self.id(name), text)
    }

    /// `name` replies to message `to`.
    pub fn reply(&self, name: &str, chat: ChatId, to: i64, text: &str) -> i64 {
        self.write(name, chat, |message| {
            message.text = text.to_string();
            message.reply_to = Some(to);
        })
    }

    /// `name` writes into a topic.
    pub fn say_in(&self, name: &str, chat: ChatId, thread: i64, text: &str) -> i64 {
        self.write(name, chat, |message| {
            message.text = text.to_string();
            message.thread = Some(thread);
        })
    }

    /// `name` shares a place.
    pub fn locate(&self, name: &str, chat: ChatId, latitude: f64, longitude: f64) -> i64 {
        self.write(name, chat, |message| message.location = Some((latitude, longitude)))
    }

    /// `name` sends a file.
    pub fn upload(&self, name: &str, chat: ChatId, file: &str, bytes: &[u8]) -> i64 {
        let upload = Upload { name: file.to_string(), mime: String::new(), bytes: bytes.to_vec() };
        let id = {
            let mut world = self.world();
            let id = format!("file-{}", world.fresh_id());
            world.files.insert(id.clone(), upload.clone());
            id
        };
        self.write(name, chat, |message| {
            message.file = Some(upload);
            message.file_id = Some(id);
        })
    }

    /// `name` corrects their own message.
    pub fn correct(&self, name: &str, chat: ChatId, id: i64, text: &str) {
        let mut world = self.world();
        let now = world.now();
        let here = world.chats.get_mut(&chat).expect("the chat exists");
        let message = here.messages.get_mut(&id).expect("the message exists");
        message.text = text.to_string();
        message.entities = World::typed_entities(text);
        message.edited = Some(now);
        let message = message.clone();
        world.event(chat, false, Some(id), format!("{name} (edit of {id}): {text}"), text.to_string());
        if world.bot_sees(&message) {
            let json = world.message_json(&message);
            world.push("edited_message", json);
        }
        drop(world);
        self.changed();
    }

    fn write(&self, name: &str, chat: ChatId, fill: impl FnOnce(&mut Message)) -> i64 {
        let from = self.id(name);
        let mut world = self.world();
        let mut message = Message::new(chat, from, "", world.now());
        fill(&mut message);
        message.entities = World::typed_entities(&message.text);
        let message = world.put(message);
        if let Some(user) = world.users.get_mut(&chat) {
            user.started = true;
        }
        let what = match (&message.location, &message.file) {
            (Some(_), _) => "(a place)".to_string(),
            (_, Some(file)) => format!("({}) {}", file.name, message.text),
            _ => message.text.clone(),
        };
        world.event(chat, false, Some(message.id), format!("{name}: {what}"), message.text.clone());
        if world.bot_sees(&message) {
            let json = world.message_json(&message);
            world.push("message", json);
        }
        drop(world);
        self.changed();
        message.id
    }

    /// `name` presses the button labelled `label` (ignoring case) of the newest message in `chat` that has it, waiting for
    /// it to come. The id of the press.
    pub fn press(&self, name: &str, chat: ChatId, label: &str) -> String {
        let (message, data) =
            self.wait(&format!("a button {label:?}"), chat, |world| button(world, chat, label, |_| true));
        self.press_data(name, &message, &data, label)
    }

    /// What the message says whose button `press` would find now.
    pub fn to_press(&self, chat: ChatId, label: &str) -> Option<String> {
        button(&self.world(), chat, label, |_| true).map(|(message, _)| message.text)
    }

    /// As `press`, on the newest message with that text; on the newest that has the button where none says so.
    pub fn press_on(&self, name: &str, chat: ChatId, text: &str, label: &str) -> String {
        let found = button(&self.world(), chat, label, |message| message.text == text);
        match found {
            Some((message, data)) => self.press_data(name, &message, &data, label),
            None => self.press(name, chat, label),
        }
    }

    /// `name` sends `data` as if a button of `message` held it; anything can be forged.
    pub fn press_data(&self, name: &str, message: &Message, data: &str, label: &str) -> String {
        let by = self.id(name);
        let mut world = self.world();
        let id = format!("press-{}", world.fresh_id());
        let at = world.now();
        world.presses.insert(id.clone(), Press { by, chat: message.chat, at, answer: None });
        world.event(message.chat, false, Some(message.id), format!("{name} > {label}"), String::new());
        let update = json!({
            "id": id, "from": world.user_json(by), "chat_instance": "1", "data": data,
            "message": world.message_json(message),
        });
        world.push("callback_query", update);
        drop(world);
        self.changed();
        id
    }

    /// `name` types an inline query; its id.
    pub fn inline(&self, name: &str, query: &str) -> String {
        let by = self.id(name);
        let mut world = self.world();
        let id = format!("inline-{}", world.fresh_id());
        let at = world.now();
        world.inline.insert(id.clone(), Inline { at, asked: Instant::now(), answer: None });
        let update = json!({"id": id, "from": world.user_json(by), "query": query, "offset": ""});
        world.push("inline_query", update);
        drop(world);
        self.changed();
        id
    }

    // What is seen.

    /// Waits for the bot to send or edit a message, or to show a notice, in `chat` that contains `text`, later than what
    /// was expected there before. The message as it stands then (a notice comes as a message with id 0).
    pub fn expect(&self, chat: ChatId, text: &str) -> Message {
        let from = *self.seen.lock().expect("one test").get(&chat).unwrap_or(&0);
        let (at, message) = self.wait(&format!("{text:?}"), chat, |world| {
            let found = world.events.iter().enumerate().skip(from);
            let mut found = found.filter(|(_, event)| event.chat == chat && event.by_bot);
            let (at, event) = found.find(|(_, event)| event.text.contains(text))?;
            let stored = event.message.and_then(|id| world.chats.get(&chat)?.messages.get(&id)).cloned();
            Some((at, stored.unwrap_or_else(|| Message::new(chat, BOT, &event.text, event_time(world)))))
        });
        self.seen.lock().expect("one test").insert(chat, at + 1);
        message
    }

    /// Everything so far in `chat` counts as seen.
    pub fn skip(&self, chat: ChatId) {
        let at = self.world().events.len();
        self.seen.lock().expect("one test").insert(chat, at);
    }

    /// Waits until the press is answered.
    pub fn answer(&self, press: &str) -> Answer {
        let chat = self.world().presses.get(press).map_or(0, |press| press.chat);
        self.wait("the answer to a press", chat, |world| world.presses.get(press)?.answer.clone())
    }

    /// Waits until the inline query is answered; the parameters of the answer, and how long it took from the moment the
    /// platform had the query.
    pub fn inline_answer(&self, id: &str) -> (Value, Duration) {
        self.wait("an inline answer", 0, |world| world.inline.get(id)?.answer.clone())
    }

    /// Waits until all updates are confirmed, all presses answered, nothing has happened for a while, and the program says
    /// that it is at rest, where it can be asked ([`Self::set_rest`]).
    pub fn settle(&self) {
        let until = Instant::now() + self.patience;
        loop {
            self.wait("rest", 0, |world| {
                let presses = world.presses.values().all(|press| press.answer.is_some());
                let quiet = world.last_deed.elapsed() > Duration::from_millis(250) && world.in_flight == 0;
                (world.updates.is_empty() && presses && quiet).then_some(())
            });
            if (self.rest.get().is_none_or(|rest| rest()) && self.is_at_rest()) || Instant::now() > until {
                return;
            }
        }
    }

    /// Waits until nothing comes any more from a program that was killed: what was on its way has arrived or never will.
    pub fn hear_out(&self) {
        // Connections are accepted in their order: once this one is answered, all that came before it are counted.
        let answered = std::net::TcpStream::connect(self.address).and_then(|mut own| {
            own.set_read_timeout(Some(self.patience))?;
            own.write_all(b"HEAD / HTTP/1.0\r\n\r\n")?;
            own.read(&mut [0; 1])
        });
        answered.expect("the server runs");
        self.wait("the last words of the dead", 0, |_| (self.open.load(Ordering::SeqCst) == 0).then_some(()));
    }

    /// How the program is asked whether it is at rest.
    pub fn set_rest(&self, rest: impl Fn() -> bool + Send + Sync + 'static) {
        assert!(self.rest.set(Box::new(rest)).is_ok(), "one program a server");
    }

    fn wait<T>(&self, what: &str, chat: ChatId, mut look: impl FnMut(&World) -> Option<T>) -> T {
        let until = Instant::now() + self.patience;
        let mut world = self.world();
        loop {
            if let Some(found) = look(&world) {
                return found;
            }
            if Instant::now() > until {
                let (seen, transcript) = (world.violations.clone(), transcript(&world, chat));
                drop(world);
                panic!("waited {:?} for {what}; violations {seen:?}; the chat:\n{transcript}", self.patience);
            }
            let waited = self.shared.changed.wait_timeout(world, Duration::from_millis(50));
            world = waited.unwrap_or_else(std::sync::PoisonError::into_inner).0;
        }
    }

    /// Waits until `done` of the calls so far holds.
    pub fn wait_calls(&self, what: &str, mut done: impl FnMut(&[Call]) -> bool) {
        self.wait(what, 0, |world| done(&world.calls).then_some(()));
    }

    /// The chat as text: a line a message, edits and notices included. Chat 0 is all of them.
    pub fn transcript(&self, chat: ChatId) -> String {
        transcript(&self.world(), chat)
    }

    /// The bot's new messages in `chat` so far, with their times; edits and notices don't count.
    pub fn heard(&self, chat: ChatId) -> Vec<(DateTime<Utc>, String)> {
        let world = self.world();
        let new = |event: &&Event| event.chat == chat && event.by_bot && event.line.starts_with("carvetime: ");
        world.events.iter().filter(new).map(|event| (event.at, event.text.clone())).collect()
    }

    /// When each message with that id in `chat` was changed.
    pub fn edits(&self, chat: ChatId, id: i64) -> Vec<Instant> {
        let world = self.world();
        let of = |call: &&Call| {
            call.method == "editMessageText"
                && call.args.get("chat_id") == Some(&json!(chat))
                && call.args.get("message_id") == Some(&json!(id))
        };
        world.calls.iter().filter(of).map(|call| call.at).collect()
    }

    /// Whether nothing is delivered, answered or called for at this moment.
    pub fn is_at_rest(&self) -> bool {
        let world = self.world();
        world.updates.is_empty() && world.in_flight == 0 && world.presses.values().all(|press| press.answer.is_some())
    }

    /// The messages that stand in `chat` now.
    pub fn messages(&self, chat: ChatId) -> Vec<Message> {
        self.world().chats.get(&chat).map(|chat| chat.messages.values().cloned().collect()).unwrap_or_default()
    }

    /// The bot's messages that stand in `chat` now.
    pub fn said(&self, chat: ChatId) -> Vec<Message> {
        self.messages(chat).into_iter().filter(|message| message.from == BOT).collect()
    }

    /// All calls so far.
    pub fn calls(&self) -> Vec<Call> {
        self.world().calls.clone()
    }

    /// The calls after the first `from`.
    pub fn calls_from(&self, from: usize) -> Vec<Call> {
        self.world().calls.get(from..).unwrap_or_default().to_vec()
    }

    /// How many calls so far.
    pub fn call_count(&self) -> usize {
        self.world().calls.len()
    }

    /// How many calls of `method` so far.
    pub fn calls_of(&self, method: &str) -> usize {
        self.world().calls.iter().filter(|call| call.method == method).count()
    }

    /// Forgets what was said and called so far, for runs so long that it would not fit in memory.
    pub fn forget(&self) {
        let mut world = self.world();
        world.calls.clear();
        world.events.clear();
        world.confirmed.clear();
        world.chats.values_mut().for_each(|chat| chat.messages.clear());
        self.seen.lock().expect("one test").clear();
    }

    /// Commands as set, by scope and language.
    pub fn commands(&self) -> BTreeMap<(String, String), Vec<(String, String)>> {
        self.world().commands.clone()
    }

    /// Updates not yet confirmed.
    pub fn pending(&self) -> usize {
        self.world().updates.len()
    }

    /// Calls the platform would not have taken.
    pub fn violations(&self) -> Vec<String> {
        self.world().violations.clone()
    }

    /// Forgets the violations so far: for tests of the server itself.
    pub fn clear_violations(&self) {
        self.world().violations.clear();
    }

    // What goes wrong.

    /// A rule more.
    pub fn fault(&self, rule: Rule) {
        self.world().faults.add(rule);
    }

    /// Runs `hook` before the `nth` call from now on is applied; the call is not.
    pub fn before_call(&self, nth: usize, hook: impl Fn() + Send + Sync + 'static) {
        self.fault(Rule::nth(nth, Fault::Before(Arc::new(hook))));
    }

    /// Runs `hook` after the `nth` call from now on is applied; its reply is lost.
    pub fn after_call(&self, nth: usize, hook: impl Fn() + Send + Sync + 'static) {
        self.fault(Rule::nth(nth, Fault::After(Arc::new(hook))));
    }

    /// No rules. How many were still waiting for their call: what one that was met does may be under way.
    pub fn heal(&self) -> usize {
        self.world().faults.clear()
    }

    /// The server answers nothing but 401 (`false`), or works again.
    pub fn set_token_good(&self, good: bool) {
        self.world().token_good = good;
    }

    /// The server knows the token as another bot's.
    pub fn set_bot(&self, id: i64) {
        self.world().me = id;
    }

    /// Closes every connection at once until told otherwise.
    pub fn set_offline(&self, offline: bool) {
        self.world().offline = offline;
    }

    /// The next poll brings the last `count` confirmed updates again.
    pub fn deliver_again(&self, count: usize) {
        self.world().replay = count;
        self.changed();
    }

    /// Every batch comes in an order drawn from `seed`.
    pub fn shuffle(&self, seed: Option<u64>) {
        self.world().shuffle = seed;
    }

    /// Tells of every file that it has ten bytes.
    pub fn understate_files(&self) {
        self.world().understates = true;
    }

    /// Answers 429 beyond 20 messages a minute in a group or 30 a second in all.
    pub fn enforce_limits(&self) {
        self.world().limits = true;
    }

    /// Delivers to the program's own listener (`http://127.0.0.1:PORT`) while a webhook is set.
    pub fn deliver_to(&self, listener: &str) {
        self.handle.spawn(http::deliver(self.shared.clone(), listener.to_string()));
    }

    /// The bot's username.
    pub fn username(&self) -> &'static str {
        BOT_USERNAME
    }

    /// Id of a person.
    ///
    /// # Panics
    /// If there is nobody of that name.
    pub fn id(&self, name: &str) -> i64 {
        self.find(name).unwrap_or_else(|| panic!("nobody is called {name}"))
    }

    pub(super) fn find(&self, name: &str) -> Option<i64> {
        self.world().users.values().find(|user| user.name == name).map(|user| user.id)
    }
}

impl Drop for Loopback {
    fn drop(&mut self) {
        if let Some(stop) = self.stop.take() {
            let _ = stop.send(());
        }
        let violations = self.violations();
        if !std::thread::panicking() {
            assert!(violations.is_empty(), "calls Telegram would not have taken: {violations:#?}");
        }
    }
}

/// What a muted member may not.
const RIGHTS: &[&str] = &[
    "can_send_messages",
    "can_send_audios",
    "can_send_documents",
    "can_send_photos",
    "can_send_videos",
    "can_send_video_notes",
    "can_send_voice_notes",
    "can_send_polls",
    "can_send_other_messages",
    "can_add_web_page_previews",
    "can_react_to_messages",
    "can_edit_tag",
    "can_change_info",
    "can_invite_users",
    "can_pin_messages",
    "can_manage_topics",
];

fn chat(id: ChatId, kind: &'static str, title: &str, members: BTreeSet<i64>) -> Chat {
    Chat {
        id,
        kind,
        title: title.to_string(),
        public: None,
        members,
        admins: BTreeSet::new(),
        bot_in: kind == "private",
        bot_muted: false,
        bot_admin: false,
        closed: BTreeSet::new(),
        forum: false,
        migrated_to: None,
        messages: BTreeMap::new(),
        next_message: 1,
    }
}

fn event_time(world: &World) -> DateTime<Utc> {
    world.now()
}

fn transcript(world: &World, chat: ChatId) -> String {
    let events = world.events.iter().filter(|event| chat == 0 || event.chat == chat);
    let line = |event: &Event| {
        let private = world.users.get(&event.chat).filter(|_| chat == 0).map(|user| format!("[{}] ", user.name));
        let at = event.at.format("%m-%d %H:%M");
        format!("{at} {}{}\n", private.unwrap_or_default(), event.line)
    };
    events.map(line).collect()
}

/// The newest message of the chat that has a button with that label and is `wanted`, and what the button holds.
fn button(world: &World, chat: ChatId, label: &str, wanted: impl Fn(&Message) -> bool) -> Option<(Message, String)> {
    world.chats.get(&chat)?.messages.values().rev().filter(|message| wanted(message)).find_map(|message| {
        // A script need not have the isolates around a name.
        let bare = |label: &str| label.to_lowercase().replace(['\u{2068}', '\u{2069}'], "");
        let same = |button: &&(String, String)| bare(&button.0) == bare(label);
        let button = message.buttons.iter().flatten().find(same)?;
        Some((message.clone(), button.1.clone()))
    })
}
