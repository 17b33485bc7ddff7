//! Scenes of several people over the loopback server: a script of a cook with stage directions, played by the bot's own
//! code in this process on a virtual clock that stops at every bell.
//!
//! A script is what `carvetime rehearse` reads (`room group`, `TIME NAME: text`, `TIME NAME > Label`, `NAME (private)`), with a
//! line `people Rosa, Tom, Ana, Li:es` (the first made the group; `:es` is the language of the app) and directions:
//!
//! | `TIME * ...` | what happens |
//! |---|---|
//! | `Tom starts` | Tom opens the private chat with the bot |
//! | `Tom leaves` | Tom leaves the group |
//! | `Tom takes the username tom_b` | what he can be mentioned by |
//! | `Tom is called Tomás` | he changes his name; the script goes on calling him Tom |
//! | `Tom blocks`, `Tom unblocks` | the private chat |
//! | `Rosa removes the bot`, `adds the bot`, `mutes the bot`, `unmutes the bot`, `promotes the bot` | as an administrator |
//! | `migrates`, `migrates backwards`, `migrates unseen` | the group becomes a supergroup; which service messages come |
//! | `anonymous: text`, `channel: text`, `other bot: text` | somebody who is nobody writes |
//! | `group hears TEXT`, `Tom hears TEXT` | the bot's next new message there that was not looked at yet has the text |
//! | `group is quiet`, `Tom is quiet` | no new message has come there since the last look |
//! | `Tom is told TEXT` | a notice to him has had the text |
//! | `Tom, Ana > Done` | both press, neither having seen what the other's press did |
//! | `board shows TEXT`, `board hides TEXT` | on the newest board |
//! | `boards show TEXT` | on one of the boards of several birds |
//!
//! Start at [`Scene::play`].

use crate::both;
use crate::loopback::{ChatId, Loopback, Message, TOKEN, Told};
use carvetime::book::SledBook;
use carvetime::engine::Engine;
use carvetime::rehearse::{Act, Script};
use carvetime::room::{RoomId, decide};
use carvetime::telegram::{Options, Pace, Patience, ServeError, Server, Webhook};
use carvetime::words::Voice;
use chrono::{DateTime, TimeDelta, Utc};
use chrono_tz::Tz;
use std::collections::BTreeMap;
use std::net::SocketAddr;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};
use tokio::sync::{Notify, oneshot};

/// How long nothing must happen before a moment counts as over.
const STILL: Duration = Duration::from_millis(25);

/// How long a moment may take.
const PATIENCE: Duration = Duration::from_secs(20);

/// A scene being played, or played to its end.
pub struct Scene {
    /// Telegram.
    pub telegram: Loopback,
    /// The bot.
    pub engine: Arc<Engine>,
    /// The group, by its present id.
    pub group: ChatId,
    /// The kitchen's zone.
    pub zone: Tz,
    /// Where the book is.
    pub data: PathBuf,
    clock: Arc<AtomicI64>,
    set: Arc<Notify>,
    stop: Option<oneshot::Sender<()>>,
    serving: Option<JoinHandle<Result<(), ServeError>>>,
    people: BTreeMap<String, ChatId>,
    /// How many new messages of each chat have been looked at.
    looked: BTreeMap<ChatId, usize>,
    _folder: tempfile::TempDir,
}

/// An address of this machine where nobody listens.
pub fn free_address() -> SocketAddr {
    let listener = std::net::TcpListener::bind((std::net::Ipv4Addr::LOCALHOST, 0)).expect("a free port");
    listener.local_addr().expect("an address")
}

/// `tests/scenes/NAME.cook`.
fn script(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenes").join(format!("{name}.cook"));
    std::fs::read_to_string(&path).expect("the script is there")
}

/// One line: its number, its time, and what is done.
struct Line {
    number: usize,
    at: DateTime<Utc>,
    deed: Deed,
}

enum Deed {
    Act(Act),
    Direction(String),
}

impl Scene {
    /// Plays `tests/scenes/NAME.cook` to its end.
    ///
    /// # Panics
    /// Where the script can't be read, or something it expects does not come: with the line and the transcript.
    pub fn play(name: &str) -> Self {
        Self::play_text(&script(name))
    }

    /// The same with the updates delivered instead of asked for.
    ///
    /// # Panics
    /// See [`Self::play`].
    pub fn play_by_webhook(name: &str) -> Self {
        Self::play_received(&script(name), true)
    }

    /// Plays a script. Updates come as the test wants it, see [`both`].
    ///
    /// # Panics
    /// See [`Self::play`].
    pub fn play_text(text: &str) -> Self {
        Self::play_received(text, both::delivered())
    }

    fn play_received(text: &str, by_webhook: bool) -> Self {
        let (people, zone, lines) = read(text);
        let first = lines.first().expect("something happens").at - TimeDelta::minutes(1);
        let mut scene = Self::open(&people, zone, first, by_webhook);
        for line in lines {
            scene.run_to(line.at);
            let place = format!("line {} of the scene", line.number);
            match line.deed {
                Deed::Act(act) => scene.act(&act),
                Deed::Direction(words) => scene.direct(&words, &place),
            }
            scene.rest();
        }
        scene
    }

    fn open(people: &[(String, String)], zone: Tz, now: DateTime<Utc>, by_webhook: bool) -> Self {
        let telegram = Loopback::start();
        let clock = Arc::new(AtomicI64::new(now.timestamp_millis()));
        let shown = Arc::clone(&clock);
        telegram.set_clock(move || moment(shown.load(Ordering::SeqCst)));
        let folder = tempfile::tempdir().expect("a folder");
        let data = folder.path().join("data");
        let voice = Arc::new(Voice::new());
        let book = Arc::new(SledBook::open(&data).expect("the book opens"));
        let engine = Arc::new(Engine::new(book, Arc::clone(&voice) as _, decide).expect("the book can be read"));
        let bot = Options::new(TOKEN, Some(&telegram.url())).bot().expect("an address");
        let (stop, stopped) = oneshot::channel::<()>();
        let mut server = Server::new(bot, Arc::clone(&engine), voice);
        let shown = Arc::clone(&clock);
        server.clock = Arc::new(move || moment(shown.load(Ordering::SeqCst)));
        server.pace = Pace::unlimited();
        server.patience = Patience::endless();
        if by_webhook {
            let listen = free_address();
            server.webhook = Some(Webhook { url: "https://cook.example/hook".to_owned(), listen });
            telegram.deliver_to(&format!("http://{listen}"));
        }
        let set = Arc::clone(&server.set);
        let serving = std::thread::spawn(move || {
            let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build();
            runtime.expect("a runtime").block_on(server.run(async {
                let _ = stopped.await;
            }))
        });
        let ids: BTreeMap<String, ChatId> =
            people.iter().map(|(name, language)| (name.clone(), telegram.stranger(name, language))).collect();
        let names: Vec<&str> = people.iter().map(|(name, _)| name.as_str()).collect();
        let group = telegram.group("Dinner", &names);
        let (stop, serving) = (Some(stop), Some(serving));
        let mut scene = Self {
            telegram,
            engine,
            group,
            zone,
            data,
            clock,
            set,
            stop,
            serving,
            people: ids,
            looked: BTreeMap::new(),
            _folder: folder,
        };
        scene.rest();
        scene.telegram.say(names[0], group, &format!("/settings {zone}"));
        scene.rest();
        scene.look(group);
        scene
    }

    /// The time.
    pub fn now(&self) -> DateTime<Utc> {
        moment(self.clock.load(Ordering::SeqCst))
    }

    /// Id of a person of the script.
    ///
    /// # Panics
    /// If there is nobody of that name.
    pub fn id(&self, name: &str) -> ChatId {
        *self.people.get(name).unwrap_or_else(|| panic!("nobody in this scene is called {name}"))
    }

    /// What was said to everyone, a line each with its local time; edits and notices included.
    pub fn transcript(&self) -> String {
        self.telegram.transcript(0)
    }

    /// Lets the clock run, stopping at every bell.
    pub fn run_to(&mut self, at: DateTime<Utc>) {
        while let Some(next) = self.engine.next_bell().expect("the book can be read").filter(|next| *next <= at) {
            self.set_clock(next.max(self.now()));
            self.rest();
        }
        self.set_clock(at);
        self.rest();
    }

    fn set_clock(&self, at: DateTime<Utc>) {
        self.clock.store(at.timestamp_millis(), Ordering::SeqCst);
        self.set.notify_one();
    }

    /// Waits until all that this moment brings is done.
    pub fn rest(&self) {
        let until = Instant::now() + PATIENCE;
        let mut still_since: Option<Instant> = None;
        loop {
            let idle = self.telegram.is_at_rest()
                && self.engine.waiting() == 0
                && self.engine.next_bell().is_ok_and(|next| next.is_none_or(|next| next > self.now()));
            match (idle, still_since) {
                (false, _) => still_since = None,
                (true, None) => still_since = Some(Instant::now()),
                (true, Some(since)) if since.elapsed() >= STILL => return,
                (true, Some(_)) => {}
            }
            assert!(Instant::now() < until, "it does not come to rest:\n{}", self.transcript());
            std::thread::sleep(Duration::from_millis(2));
        }
    }

    fn act(&mut self, act: &Act) {
        match act {
            Act::Say { name, private, text } => {
                let chat = if *private { self.id(name) } else { self.group };
                self.telegram.say(&self.known_as(name), chat, text);
            }
            Act::Press { name, private, label } => {
                let chat = if *private { self.id(name) } else { self.group };
                self.telegram.press(&self.known_as(name), chat, label);
            }
            Act::Wait => {}
        }
    }

    /// What the platform calls a person of the script now.
    fn known_as(&self, name: &str) -> String {
        let id = self.id(name);
        self.telegram.people().into_iter().find(|(other, _)| *other == id).map(|(_, name)| name).unwrap_or_default()
    }

    fn direct(&mut self, words: &str, place: &str) {
        let (who, rest) = words.split_once(' ').unwrap_or((words, ""));
        let speaks = ["anonymous: ", "channel: ", "other bot: "];
        if let Some(kind) = speaks.iter().find(|kind| words.starts_with(**kind)) {
            let text = words.strip_prefix(kind).unwrap_or_default();
            return match *kind {
                "anonymous: " => self.telegram.say_as_group(self.group, text),
                "channel: " => self.telegram.say_as_channel(self.group, text),
                _ => self.telegram.say_as_bot(self.group, text),
            };
        }
        match words {
            "migrates" => return self.migrate(Told::InOrder),
            "migrates backwards" => return self.migrate(Told::Backwards),
            "migrates unseen" => return self.migrate(Told::Never),
            _ => {}
        }
        if let Some((names, label)) = words.split_once(" > ") {
            return self.press_at_once(names, label);
        }
        let quoted = |verb: &str| rest.strip_prefix(verb).map(str::trim);
        if who == "board" {
            let board = self.board().unwrap_or_else(|| panic!("{place}: no board:\n{}", self.transcript()));
            if let Some(text) = quoted("shows ") {
                assert!(board.text.contains(text), "{place}: the board lacks {text:?}:\n{}", board.text);
            } else if let Some(text) = quoted("hides ") {
                assert!(!board.text.contains(text), "{place}: the board has {text:?}:\n{}", board.text);
            } else {
                panic!("{place}: unknown direction {words:?}");
            }
            return;
        }
        if let Some(text) = words.strip_prefix("boards show ") {
            let boards = self.boards();
            let shown = boards.iter().any(|board| board.text.contains(text));
            let texts: Vec<&str> = boards.iter().map(|board| board.text.as_str()).collect();
            assert!(shown, "{place}: no board has {text:?}:\n{}", texts.join("\n"));
            return;
        }
        let chat = if who == "group" { self.group } else { self.id(who) };
        if let Some(text) = quoted("hears ") {
            let from = *self.looked.get(&chat).unwrap_or(&0);
            let heard = self.telegram.heard(chat);
            let found = heard.iter().skip(from).position(|(_, said)| said.contains(text));
            let found = found.unwrap_or_else(|| panic!("{place}: {who} did not hear {text:?}:\n{}", self.transcript()));
            self.looked.insert(chat, from + found + 1);
            return;
        }
        if let Some(text) = quoted("is told ") {
            let notice = format!("(notice to {}): ", self.known_as(who));
            let transcript = self.transcript();
            let told =
                transcript.lines().any(|line| line.split_once(&notice).is_some_and(|(_, told)| told.contains(text)));
            assert!(told, "{place}: {who} was not told {text:?}:\n{transcript}");
            return;
        }
        match rest {
            "is quiet" => {
                let from = *self.looked.get(&chat).unwrap_or(&0);
                let heard = self.telegram.heard(chat);
                let new: Vec<_> = heard.iter().skip(from).collect();
                assert!(new.is_empty(), "{place}: {who} heard {new:#?}");
            }
            "ignores the rest" => self.look(chat),
            "starts" => drop(self.telegram.say(&self.known_as(who), chat, "/start")),
            "leaves" => self.telegram.leave(&self.known_as(who), self.group),
            "blocks" => self.telegram.block(&self.known_as(who)),
            "unblocks" => self.telegram.unblock(&self.known_as(who)),
            "removes the bot" => self.telegram.remove_bot(&self.known_as(who), self.group),
            "adds the bot" => self.telegram.add_bot(&self.known_as(who), self.group),
            "mutes the bot" => self.telegram.mute_bot(&self.known_as(who), self.group),
            "unmutes the bot" => self.telegram.unmute_bot(&self.known_as(who), self.group),
            "promotes the bot" => self.telegram.promote_bot(self.group),
            _ => match (quoted("is called "), quoted("renames the group "), quoted("takes the username ")) {
                (Some(name), _, _) => self.telegram.rename(&self.known_as(who), name),
                (_, Some(title), _) => self.telegram.rename_group(self.group, title),
                (_, _, Some(username)) => self.telegram.takes_username(&self.known_as(who), username),
                _ => panic!("{place}: unknown direction {words:?}"),
            },
        }
    }

    fn press_at_once(&self, names: &str, label: &str) {
        let standing = self.telegram.said(self.group);
        let found = standing.iter().rev().find_map(|message| {
            let button = message.buttons.iter().flatten().find(|(shown, _)| shown.eq_ignore_ascii_case(label))?;
            Some((message, button.1.clone()))
        });
        let (message, data) = found.unwrap_or_else(|| panic!("no button {label:?}:\n{}", self.transcript()));
        for name in names.split(", ") {
            self.telegram.press_data(&self.known_as(name), message, &data, label);
        }
    }

    fn migrate(&mut self, told: Told) {
        self.group = self.telegram.migrate_told(self.group, told);
    }

    /// All messages of a chat count as looked at.
    fn look(&mut self, chat: ChatId) {
        let count = self.telegram.heard(chat).len();
        self.looked.insert(chat, count);
    }

    /// The newest board that stands in the group.
    pub fn board(&self) -> Option<Message> {
        let standing = self.telegram.said(self.group);
        standing.into_iter().rev().find(|message| {
            let key = self.engine.key_of(RoomId(self.group), message.id).ok().flatten();
            key.as_deref() == Some("board")
        })
    }
}

impl Scene {
    /// The boards that stand in the group, one a bird.
    fn boards(&self) -> Vec<Message> {
        let standing = self.telegram.said(self.group).into_iter();
        let is_board = |message: &Message| {
            let key = self.engine.key_of(RoomId(self.group), message.id).ok().flatten();
            key.is_some_and(|key| key == "board" || key.starts_with("board@"))
        };
        standing.filter(is_board).collect()
    }
}

impl Drop for Scene {
    fn drop(&mut self) {
        if let Some(stop) = self.stop.take() {
            let _ = stop.send(());
        }
        let served = self.serving.take().map(JoinHandle::join);
        if !std::thread::panicking() {
            assert!(matches!(served, Some(Ok(Ok(())))), "it served to the end");
        }
    }
}

fn moment(millis: i64) -> DateTime<Utc> {
    DateTime::from_timestamp_millis(millis).expect("a time of this century")
}

/// People with their languages, the zone, and the lines in order.
fn read(text: &str) -> (Vec<(String, String)>, Tz, Vec<Line>) {
    let mut people = Vec::new();
    let mut directions = Vec::new();
    let mut plain = String::new();
    for (nth, line) in text.lines().enumerate() {
        let bare = line.split(" #").next().unwrap_or_default().trim();
        if let Some(names) = bare.strip_prefix("people ") {
            people = names
                .split(',')
                .map(|name| {
                    let (name, language) = name.trim().split_once(':').unwrap_or((name.trim(), "en-US"));
                    (name.to_string(), language.to_string())
                })
                .collect();
            plain.push('\n');
        } else if let Some((time, words)) = bare.split_once(" * ") {
            directions.push((nth + 1, words.trim().to_string()));
            plain.push_str(time); // the clock runs to there
            plain.push('\n');
        } else {
            plain.push_str(line);
            plain.push('\n');
        }
    }
    let script = Script::parse(&plain, chrono_tz::UTC, "en-US").unwrap_or_else(|error| panic!("{error}"));
    let deed = |number: usize, act: Act| match directions.iter().find(|(at, _)| *at == number) {
        Some((_, words)) => Deed::Direction(words.clone()),
        None => Deed::Act(act),
    };
    let lines = script.events.into_iter().map(|event| Line {
        number: event.line,
        at: event.at,
        deed: deed(event.line, event.act),
    });
    (people, script.zone, lines.collect())
}
