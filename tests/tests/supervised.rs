//! What supervisors hear when it does not go well: the platform away, a turn that hangs, a flood.
#![cfg(unix)]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::clock::{HANG, PANIC, SUPERVISED, TestClock};
use carvetime_tests::loopback::{Loopback, TOKEN};
use carvetime_tests::program::{Program, carvetime};
use carvetime_tests::stage::free_address;
use chrono::{TimeDelta, Utc};
use std::net::SocketAddr;
use std::os::unix::net::UnixDatagram;
use std::path::Path;
use std::process::Command;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

/// Status and text of an answer; nothing where nobody listens.
fn get(address: SocketAddr, page: &str) -> Option<(u16, String)> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    runtime.block_on(async {
        let answer = reqwest::get(format!("http://{address}/{page}")).await.ok()?;
        Some((answer.status().as_u16(), answer.text().await.ok()?))
    })
}

/// Asks until the answer is `wanted`.
fn wait_for(address: SocketAddr, page: &str, wanted: impl Fn(u16, &str) -> bool) {
    let until = Instant::now() + Duration::from_secs(20);
    loop {
        let answer = get(address, page);
        if answer.as_ref().is_some_and(|(status, text)| wanted(*status, text)) {
            return;
        }
        assert!(Instant::now() < until, "{page}: {answer:?}");
        std::thread::sleep(Duration::from_millis(50));
    }
}

/// A service manager that notes what it hears; one that did not listen would hold the program up.
struct Manager(Arc<Mutex<Vec<(Instant, String)>>>);

impl Manager {
    fn listen(folder: &Path, command: &mut Command) -> Self {
        let socket = folder.join("notify");
        let ear = UnixDatagram::bind(&socket).unwrap();
        command.env("NOTIFY_SOCKET", &socket).env("WATCHDOG_USEC", "600000");
        let heard = Arc::new(Mutex::new(Vec::new()));
        let notes = Arc::downgrade(&heard);
        ear.set_read_timeout(Some(Duration::from_secs(1))).unwrap();
        std::thread::spawn(move || {
            let mut bytes = [0; 64];
            while let Some(notes) = notes.upgrade() {
                if let Ok(length) = ear.recv(&mut bytes) {
                    let notice = String::from_utf8_lossy(&bytes[..length]).trim().to_owned();
                    notes.lock().unwrap().push((Instant::now(), notice));
                }
            }
        });
        Self(heard)
    }

    /// What it has heard, and when the last of it.
    fn heard(&self) -> (Vec<String>, Option<Instant>) {
        let notes = self.0.lock().unwrap();
        (notes.iter().map(|(_, notice)| notice.clone()).collect(), notes.last().map(|(at, _)| *at))
    }
}

#[test]
fn while_the_platform_is_away_at_the_start_supervisors_hear_so_and_nothing_counts_as_failed() {
    let (server, folder, address) = (Loopback::start(), tempfile::tempdir().unwrap(), free_address());
    server.set_offline(true);
    let data = folder.path().join("data");
    let mut command = Command::new(carvetime());
    command.arg("serve").arg("--data").arg(&data).arg("--health").arg(address.to_string());
    let manager = Manager::listen(folder.path(), &mut command);
    let program = Program::start(command, &server, &data);
    wait_for(address, "health", |status, text| status == 503 && text.contains("not reachable yet"));
    std::thread::sleep(Duration::from_millis(500));
    assert_eq!(manager.heard().0[..2], ["READY=1", "WATCHDOG=1"]);
    let unreachable = |text: &str| text.contains("carvetime_platform_reachable 0\n");
    wait_for(address, "metrics", |status, text| status == 200 && unreachable(text));
    server.set_offline(false);
    wait_for(address, "health", |status, text| status == 200 && text == "ok\n");
    wait_for(address, "metrics", |_, text| !unreachable(text));
    assert!(program.runs());
}

#[test]
fn a_turn_that_hangs_is_told_and_the_service_manager_hears_no_more_that_it_lives() {
    let (server, folder, address) = (Loopback::start(), tempfile::tempdir().unwrap(), free_address());
    let clock = TestClock::new(folder.path().join("clock"));
    let began = Utc::now() + TimeDelta::minutes(10);
    clock.set(began);
    let data = folder.path().join("data");
    let mut command = Program::clocked_command(&data, &clock, "error", None);
    command.env(SUPERVISED, address.to_string());
    let manager = Manager::listen(folder.path(), &mut command);
    let program = Program::start(command, &server, &data);
    // A loop at rest goes round every half minute only; a clock that moves has it look.
    let ended = Arc::new(AtomicBool::new(false));
    let ticking = {
        let ended = Arc::clone(&ended);
        std::thread::spawn(move || {
            for tick in 0.. {
                clock.set(began + TimeDelta::milliseconds(tick * 100));
                std::thread::sleep(Duration::from_millis(100));
                if ended.load(Ordering::Relaxed) {
                    return;
                }
            }
        })
    };
    wait_for(address, "health", |status, _| status == 200);
    let off =
        |text: &str| text.lines().find_map(|line| line.strip_prefix("carvetime_clock_off_seconds ")?.parse().ok());
    wait_for(address, "metrics", |_, text| off(text).is_some_and(|off: i64| (590..=620).contains(&off)));
    server.person("Rosa");
    server.tell("Rosa", HANG);
    wait_for(address, "health", |status, text| status == 503 && text.contains("has not gone round for"));
    std::thread::sleep(Duration::from_secs(1));
    let (heard, last) = manager.heard();
    assert!(heard.len() > 4, "it lived: {heard:?}");
    assert!(last.unwrap().elapsed() > Duration::from_millis(700), "it lives, as far as it says, though it hangs");
    assert!(program.runs());
    ended.store(true, Ordering::Relaxed);
    ticking.join().unwrap();
}

#[test]
fn what_is_not_listened_to_is_counted() {
    let (server, folder, address) = (Loopback::start(), tempfile::tempdir().unwrap(), free_address());
    let data = folder.path().join("data");
    let mut command = Command::new(carvetime());
    command.arg("serve").arg("--data").arg(&data).arg("--health").arg(address.to_string());
    let _program = Program::start(command, &server, &data);
    let rosa = server.person("Rosa");
    (0..70).for_each(|_| _ = server.tell("Rosa", "/help"));
    server.expect(rosa, "");
    let ignored = |text: &str| text.contains("carvetime_updates_ignored_total 9\n");
    // Sixty are heard, one is answered with a refusal.
    wait_for(address, "metrics", |_, text| ignored(text));
}

#[test]
fn a_panic_is_told_by_its_place_and_not_by_its_words() {
    let (server, folder, address) = (Loopback::start(), tempfile::tempdir().unwrap(), free_address());
    let data = folder.path().join("data");
    let mut command = Program::clocked_command(&data, &TestClock::new(folder.path().join("clock")), "trace", None);
    command.env(SUPERVISED, address.to_string()).env("RUST_BACKTRACE", "full");
    let program = Program::start(command, &server, &data);
    let rosa = server.person("Rosa Quintanilla");
    server.tell("Rosa Quintanilla", PANIC);
    server.expect(rosa, "went wrong on my side");
    let log = program.log();
    assert!(log.contains("a panic") && log.contains("clocked.rs"), "{log}");
    let secret = TOKEN.split_once(':').unwrap().1;
    for word in [secret, "with the token", PANIC] {
        assert!(!log.contains(word), "{word} in {log}");
    }
}

/// By webhook: the end of the program, and the one line it leaves.
fn ends_by_webhook(name: &str, happens: impl Fn(&Loopback)) {
    let (server, folder, address) = (Loopback::start(), tempfile::tempdir().unwrap(), free_address());
    let data = folder.path().join("data");
    let clock = TestClock::new(folder.path().join("clock"));
    let listen = free_address();
    server.deliver_to(&format!("http://{listen}"));
    let mut command = Program::clocked_command(&data, &clock, "off", Some(listen));
    command.env(SUPERVISED, address.to_string());
    let program = Program::start(command, &server, &data);
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/help");
    server.expect(rosa, "");
    happens(&server);
    assert_eq!(program.wait(Duration::from_secs(20)).code(), Some(1), "{name}");
    let log = program.log();
    assert!(log.trim().lines().count() == 1 && log.contains(name), "{name}: {log}");
}

#[test]
fn by_webhook_a_revoked_token_and_a_webhook_taken_end_it_with_a_line_too() {
    ends_by_webhook("the token is not accepted", |server| server.set_token_good(false));
    ends_by_webhook("another process asks for updates", |server| {
        let taken = format!("{}/bot{TOKEN}/deleteWebhook", server.url().trim_end_matches('/'));
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
        runtime.block_on(async { reqwest::Client::new().post(taken).send().await.unwrap() });
    });
}
