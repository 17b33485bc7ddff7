//! A kitchen under test: the server, the program by a clock that can be set, and the folder it keeps its data in.

use crate::both;
use crate::clock::TestClock;
use crate::loopback::{ChatId, Loopback, Message};
use crate::program::Program;
use crate::stage::free_address;
use chrono::{DateTime, Utc};
use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

/// See the module.
pub struct Kitchen {
    /// Telegram.
    pub telegram: Loopback,
    /// The time there; sets it for the server's dates too.
    pub clock: TestClock,
    program: Arc<Mutex<Program>>,
    /// What it logs, as in `RUST_LOG`.
    log: &'static str,
    /// Where updates are delivered to it; without it, it asks for them.
    listen: Option<SocketAddr>,
    folder: tempfile::TempDir,
}

impl Kitchen {
    /// The program, started and polling.
    pub fn open() -> Self {
        let kitchen = Self::with(Loopback::start());
        kitchen.wait_for_poll(0);
        kitchen
    }

    /// The same with every log there is.
    pub fn loud() -> Self {
        let kitchen = Self::start(Loopback::start(), "trace", None);
        kitchen.wait_for_poll(0);
        kitchen
    }

    /// The same as [`Self::loud`] with the updates delivered instead of asked for.
    pub fn by_webhook() -> Self {
        let telegram = Loopback::start();
        let listen = free_address();
        telegram.deliver_to(&format!("http://{listen}"));
        let kitchen = Self::start(telegram, "trace", Some(listen));
        kitchen.wait_for_poll(0);
        kitchen
    }

    /// The program, just started. It receives as the test wants it, see [`both`].
    pub fn with(telegram: Loopback) -> Self {
        let listen = both::delivered().then(free_address);
        if let Some(listen) = listen {
            telegram.deliver_to(&format!("http://{listen}"));
        }
        Self::start(telegram, "error", listen)
    }

    fn start(telegram: Loopback, log: &'static str, listen: Option<SocketAddr>) -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        let clock = TestClock::new(folder.path().join("clock"));
        let shown = clock.clone();
        telegram.set_clock(move || shown.now());
        let program = Program::clocked(&telegram, &folder.path().join("data"), &clock, log, listen);
        let program = Arc::new(Mutex::new(program));
        let (asked, running) = (clock.clone(), Arc::clone(&program));
        telegram.set_rest(move || {
            let program = running.lock().unwrap_or_else(PoisonError::into_inner).clone();
            asked.is_at_rest(|| program.runs())
        });
        Self { telegram, clock, program, log, listen, folder }
    }

    /// Lets the clock jump to `now`, and what falls due happen.
    pub fn wait_until(&self, now: DateTime<Utc>) {
        self.clock.set(now);
        // The program looks at the clock every 10 ms; the rest is for a busy machine.
        std::thread::sleep(Duration::from_millis(100));
        self.telegram.settle();
    }

    /// Where the program keeps its data.
    pub fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    /// The running program.
    pub fn program(&self) -> MutexGuard<'_, Program> {
        self.program.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Starts the program again, after whatever ended it.
    pub fn reopen(&self) {
        let mut program = self.program();
        program.kill();
        *program = Program::clocked(&self.telegram, &self.data(), &self.clock, self.log, self.listen);
    }

    /// Waits until it receives: for a poll, or for the webhook to be set, later than the first `calls` calls.
    pub fn wait_for_poll(&self, calls: usize) {
        let program = self.program().clone();
        let method = if self.listen.is_some() { "setWebhook" } else { "getUpdates" };
        self.telegram.wait_calls("a poll", |all| {
            assert!(program.runs(), "the program ended; its log:\n{}", program.last_log());
            all.iter().skip(calls).any(|call| call.method == method)
        });
    }

    /// Has `name` plan a bird in `chat` and accepts it: dinner in a week, whatever has to be answered on the way. The
    /// message that stands when the plan does.
    pub fn plan(&self, name: &str, chat: ChatId) -> Message {
        let dinner = (chrono::Utc::now() + chrono::TimeDelta::days(8)).format("%Y-%m-%d");
        let wish = format!("/plan 13 lb fresh turkey, dinner {dinner} 16:00, 8 people, oven at 325");
        self.telegram.say(name, chat, &wish);
        self.accept(name, chat)
    }

    /// Answers the question for the zone, if it comes, and accepts the proposal.
    pub fn accept(&self, name: &str, chat: ChatId) -> Message {
        let until = Instant::now() + Duration::from_secs(15);
        let mut zone_told = false;
        loop {
            let newest = self.telegram.said(chat).pop();
            match newest {
                Some(message) if message.labels().iter().any(|label| label == "Accept") => {
                    self.telegram.skip(chat);
                    let press = self.telegram.press(name, chat, "Accept");
                    self.telegram.answer(&press);
                    self.telegram.settle();
                    let boards = self.telegram.said(chat).into_iter().rev().find(|message| !message.buttons.is_empty());
                    return boards.expect("a plan was accepted");
                }
                Some(message) if !zone_told => {
                    zone_told = true;
                    self.telegram.reply(name, chat, message.id, "America/Chicago");
                }
                _ => {}
            }
            assert!(Instant::now() < until, "no proposal came:\n{}", self.telegram.transcript(chat));
            std::thread::sleep(Duration::from_millis(50));
        }
    }
}
