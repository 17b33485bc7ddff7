//! `carvetime serve` with the clock of a test: the same engine, the same room, the same loops, another `Clock`, and no
//! limit to how fast messages go (a group hears 15 a minute otherwise, and a test would sleep most of the time).
//!
//! Usage: `clocked DATA_DIR`, with `TELOXIDE_TOKEN`, `TELOXIDE_API_URL`, and in `CARVETIME_TEST_CLOCK` the file of a
//! [`carvetime_tests::clock::TestClock`]. `CARVETIME_TEST_LISTEN` has the updates delivered there instead of asked for;
//! `CARVETIME_TEST_SUPERVISED` answers supervisors there.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::keeper;
use carvetime::engine::Engine;
use carvetime::reading::Lexicon;
use carvetime::room::{Heard, Scene, Turn, What, decide};
use carvetime::telegram::{self, Options, Pace, Patience, Server, Webhook, asked_to_stop};
use carvetime::words::Voice;
use carvetime_tests::clock::{CLOCK_FILE, HANG, LISTEN, PANIC, SUPERVISED, answer, read};
use chrono::{DateTime, Utc};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;
use tokio::sync::Notify;

#[tokio::main]
async fn main() {
    carvetime::redact::log("off");
    let data = std::env::args().nth(1).expect("a data directory");
    let file = PathBuf::from(std::env::var_os(CLOCK_FILE).expect("a clock"));
    std::thread::spawn(Lexicon::read_all); // as `serve` does
    let voice = Arc::new(Voice::new());
    // As `serve` does, with everything it checks. No test that damages a store uses this program: whatever it was killed in, it
    // must never be taken for damaged.
    let (book, recovered) =
        keeper::open(Path::new(&data), read(&file).unwrap_or_else(Utc::now)).expect("the book opens");
    assert_eq!(recovered, None, "a store that is whole was put aside");
    let supervised = std::env::var(SUPERVISED).ok().map(|address| address.parse().expect("an address"));
    let decide = if supervised.is_some() { failing } else { decide };
    let engine = Arc::new(Engine::new(Arc::new(book), Arc::clone(&voice) as _, decide).expect("the book can be read"));
    let set = Arc::new(Notify::new());
    tokio::spawn(watch(file.clone(), Arc::clone(&set), Arc::clone(&engine)));
    let bot = Options::from_env().and_then(|options| options.bot()).expect("a token and an address");
    let mut server = Server::new(bot, engine, voice);
    server.clock = Arc::new(move || read(&file).unwrap_or_else(Utc::now));
    server.set = set;
    server.data = Some(PathBuf::from(&data));
    server.webhook = std::env::var(LISTEN).ok().map(|listen| Webhook {
        url: "https://cook.example/hook".to_owned(),
        listen: listen.parse().expect("an address"),
    });
    server.health = supervised;
    if supervised.is_some() {
        telegram::quiet_panics(); // as `serve` does; elsewhere a test wants to see them
        server.hangs_after = Duration::from_secs(3);
        server.ask_every = Duration::from_millis(200);
    }
    server.pace = Pace::unlimited();
    server.patience = Patience::endless();
    let served = server.run(asked_to_stop().expect("signals can be heard")).await;
    if let Err(error) = served {
        eprintln!("{error}");
        std::process::exit(1);
    }
}

fn failing(scene: &Scene, heard: &Heard, now: DateTime<Utc>) -> Turn {
    if matches!(&heard.what, What::Said { text, .. } if text == HANG) {
        std::thread::sleep(Duration::from_secs(60));
    }
    if matches!(&heard.what, What::Said { text, .. } if text == PANIC) {
        let token = std::env::var("TELOXIDE_TOKEN").unwrap_or_default();
        panic!("with the token {token} and what was said: {heard:?}");
    }
    decide(scene, heard, now)
}

/// Tells the program when the clock has been set, and the test whether the program is at rest.
async fn watch(file: PathBuf, set: Arc<Notify>, engine: Arc<Engine>) {
    let (mut last, mut asked) = (read(&file), String::new());
    loop {
        tokio::time::sleep(Duration::from_millis(10)).await;
        let now = read(&file);
        let shown = now.unwrap_or_else(Utc::now);
        tokio::task::block_in_place(|| {
            answer(&file, &mut asked, || engine.is_at_rest(shown).expect("the book can be read"));
        });
        if now != last {
            last = now;
            set.notify_one();
        }
    }
}
