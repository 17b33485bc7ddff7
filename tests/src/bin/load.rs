//! A load on the real program: updates at a fixed rate, whatever the answers do (an open loop), durable writes on.
//!
//! ```text
//! cargo run --release -p carvetime-tests --bin load -- [--rate 100] [--seconds 30] [--chats 200] [--say [--unpaced]] [--bells N]
//! ```
//!
//! Reported: reply latency from the moment the platform has the update until the call that answers it arrives, the rate
//! reached, resident memory, and the time from start to the first poll. `--say` sends words instead of button presses; the
//! platform lets a bot send about 30 messages a second, and the program keeps to that, so a rate above it measures
//! the program's patience; `--unpaced` takes the same code without the limit (`clocked`). Presses are answered by notices,
//! which have none. `--bells N` fills a book with N pending reminders first, and only starts the program.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::clock::TestClock;
use carvetime_tests::loopback::{Call, Loopback};
use carvetime_tests::program::Program;
use std::collections::BTreeMap;
use std::path::Path;
use std::time::{Duration, Instant};

struct Wish {
    rate: f64,
    seconds: f64,
    chats: usize,
    say: bool,
    unpaced: bool,
    bells: usize,
}

fn main() {
    let wish = read_args();
    carvetime_tests::program::carvetime();
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    if wish.bells > 0 {
        carvetime_tests::fill::bells(&data, wish.bells);
        start(&wish, &data, "with bells");
    } else {
        start(&wish, &data, "empty");
        load(&wish, &folder.path().join("loaded"));
    }
}

fn read_args() -> Wish {
    let mut wish = Wish { rate: 100.0, seconds: 30.0, chats: 200, say: false, unpaced: false, bells: 0 };
    let mut args = std::env::args().skip(1);
    while let Some(arg) = args.next() {
        let mut number = || args.next().and_then(|text| text.parse::<f64>().ok()).expect("a number after the option");
        match arg.as_str() {
            "--rate" => wish.rate = number(),
            "--seconds" => wish.seconds = number(),
            "--chats" => wish.chats = number() as usize,
            "--bells" => wish.bells = number() as usize,
            "--say" => wish.say = true,
            "--unpaced" => wish.unpaced = true,
            other => panic!("unknown option {other}"),
        }
    }
    wish
}

/// Start to first poll, and memory at rest.
fn start(wish: &Wish, data: &Path, what: &str) {
    for _ in 0..3 {
        let server = Loopback::start();
        let began = Instant::now();
        let program = Program::serve(&server, data);
        server.wait_calls("the first poll", |calls| calls.iter().any(|call| call.method == "getUpdates"));
        let first = first_poll(&server).duration_since(began);
        std::thread::sleep(Duration::from_secs(2));
        let (now, high) = program.memory().expect("Linux tells");
        println!(
            "start ({what}, {} bells): first poll after {:.0} ms; memory at rest {:.1} MB, highest {:.1} MB",
            wish.bells,
            first.as_secs_f64() * 1e3,
            now as f64 / 1e6,
            high as f64 / 1e6
        );
    }
}

fn first_poll(server: &Loopback) -> Instant {
    server.calls().iter().find(|call| call.method == "getUpdates").map(|call| call.at).expect("it polled")
}

fn load(wish: &Wish, data: &Path) {
    let server = Loopback::start();
    let names: Vec<String> = (0..wish.chats).map(|n| format!("Cook {n}")).collect();
    let chats: Vec<i64> = names.iter().map(|name| server.person(name)).collect();
    let program = match wish.unpaced {
        true => Program::clocked(&server, data, &TestClock::new(data.with_extension("clock")), "off"),
        false => Program::serve(&server, data),
    };
    server.wait_calls("the first poll", |calls| calls.iter().any(|call| call.method == "getUpdates"));
    // Everybody is known and has a message with buttons, at a rate the platform allows.
    for name in &names {
        server.tell(name, "2 tbsp table salt in flake kosher");
        std::thread::sleep(Duration::from_millis(45));
    }
    server.settle();
    let shown: Vec<_> = chats.iter().map(|chat| server.said(*chat).pop().expect("an answer")).collect();

    let before = server.call_count();
    let count = (wish.rate * wish.seconds) as usize;
    let began = Instant::now();
    let mut sent: BTreeMap<String, Instant> = BTreeMap::new();
    let mut waiting: BTreeMap<i64, Vec<Instant>> = BTreeMap::new();
    for n in 0..count {
        let due = began + Duration::from_secs_f64(n as f64 / wish.rate);
        std::thread::sleep(due.saturating_duration_since(Instant::now()));
        let at = n % wish.chats;
        if wish.say {
            waiting.entry(chats[at]).or_default().push(Instant::now());
            server.tell(&names[at], "2 tbsp table salt in flake kosher");
        } else {
            let when = Instant::now();
            sent.insert(server.press_data(&names[at], &shown[at], "no such button", "(old)"), when);
        }
    }
    let calls = collect(&server, before, count, wish.say);
    let mut latencies: Vec<f64> = calls
        .iter()
        .map(|call| {
            let asked = match wish.say {
                true => waiting.get_mut(&call.args["chat_id"].as_i64().unwrap()).map(|all| all.remove(0)),
                false => sent.get(call.args["callback_query_id"].as_str().unwrap()).copied(),
            };
            call.at.duration_since(asked.expect("somebody asked")).as_secs_f64() * 1e3
        })
        .collect();
    latencies.sort_by(f64::total_cmp);
    let took = calls.last().map_or(0.0, |call| call.at.duration_since(began).as_secs_f64());
    let at = |part: f64| latencies[((latencies.len() - 1) as f64 * part) as usize];
    let (now, high) = program.memory().expect("Linux tells");
    println!(
        "{} {} at {}/s over {} chats: answered {:.1}/s; p50 {:.2} ms, p90 {:.2} ms, p99 {:.2} ms, longest {:.1} ms; memory {:.1} MB, highest {:.1} MB",
        count,
        if wish.say { "messages" } else { "presses" },
        wish.rate,
        wish.chats,
        calls.len() as f64 / took,
        at(0.5),
        at(0.9),
        at(0.99),
        at(1.0),
        now as f64 / 1e6,
        high as f64 / 1e6
    );
}

/// The calls that answer, once there are `count` of them.
fn collect(server: &Loopback, before: usize, count: usize, say: bool) -> Vec<Call> {
    let wanted = if say { "sendMessage" } else { "answerCallbackQuery" };
    let mut last = 0;
    let mut since = Instant::now();
    loop {
        let calls = server.calls_from(before);
        let answers: Vec<Call> = calls.into_iter().filter(|call| call.method == wanted).collect();
        if answers.len() >= count {
            return answers;
        }
        if answers.len() > last {
            (last, since) = (answers.len(), Instant::now());
        }
        assert!(since.elapsed() < Duration::from_secs(20), "only {last} of {count} were answered");
        std::thread::sleep(Duration::from_millis(200));
    }
}
