//! A load on the real program: updates at a fixed rate, whatever the answers do (an open loop), durable writes on.
//!
//! ```text
//! cargo run --release -p carvetime-tests --bin load -- [--rate 100] [--seconds 30] [--chats 200] [--say [--unpaced]] [--bells N] [--updates N]
//! ```
//!
//! Reported: reply latency from the moment the platform has the update until the call that answers it arrives, the rate
//! reached, resident memory, and the time from start to the first poll. `--say` sends words instead of button presses; the
//! platform lets a bot send about 30 messages a second, and the program keeps to that, so a rate above it measures
//! the program's patience; `--unpaced` takes the same code without the limit (`clocked`). Presses are answered by notices,
//! which have none. `--bells N` fills a book with N pending reminders first, and only starts the program.
//!
//! `--updates N` sends that many messages as fast as they are answered, without the platform's limit, and tells at every tenth what
//! memory the program has and how large its store is: neither may grow with what was said.
//!
//! `--beside` takes the same words through three programs in turn: an echo that keeps nothing, an echo that flushes each message to
//! sled, and this one without the platform's limit. For each a burst of `rate` x `seconds` messages that wait when it starts (throughput, and the time of the processor a message), then
//! the open loop at `rate` (latency), and between them what one `fdatasync` takes on the same disk.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::clock::TestClock;
use carvetime_tests::loopback::{Call, Loopback};
use carvetime_tests::program::Program;
use std::collections::BTreeMap;
use std::path::Path;
use std::time::{Duration, Instant};

/// What everybody says.
const SAID: &str = "2 tbsp table salt in flake kosher";

struct Wish {
    rate: f64,
    seconds: f64,
    chats: usize,
    say: bool,
    unpaced: bool,
    bells: usize,
    updates: usize,
    beside: bool,
}

fn main() {
    let wish = read_args();
    carvetime_tests::program::carvetime();
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    if wish.beside {
        beside(&Wish { say: true, unpaced: true, ..wish }, folder.path());
    } else if wish.updates > 0 {
        endure(&wish, &data);
    } else if wish.bells > 0 {
        carvetime_tests::fill::bells(&data, wish.bells);
        start(&wish, &data, "with bells");
    } else {
        start(&wish, &data, "empty");
        let data = folder.path().join("loaded");
        let told = load(&wish, &data, |server| match wish.unpaced {
            true => Program::clocked(server, &data, &TestClock::new(data.with_extension("clock")), "off", None),
            false => Program::serve(server, &data),
        });
        println!("{}", told.line(&wish));
    }
}

fn read_args() -> Wish {
    let mut wish = Wish {
        rate: 100.0,
        seconds: 30.0,
        chats: 200,
        say: false,
        unpaced: false,
        bells: 0,
        updates: 0,
        beside: false,
    };
    let mut args = std::env::args().skip(1);
    while let Some(arg) = args.next() {
        let mut number = || args.next().and_then(|text| text.parse::<f64>().ok()).expect("a number after the option");
        match arg.as_str() {
            "--rate" => wish.rate = number(),
            "--seconds" => wish.seconds = number(),
            "--chats" => wish.chats = number() as usize,
            "--bells" => wish.bells = number() as usize,
            "--updates" => wish.updates = number() as usize,
            "--beside" => wish.beside = true,
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

/// Many updates, and what they leave behind.
fn endure(wish: &Wish, data: &Path) {
    const AT_A_TIME: usize = 5_000;
    let server = Loopback::start();
    let names: Vec<String> = (0..wish.chats).map(|n| format!("Cook {n}")).collect();
    names.iter().for_each(|name| _ = server.person(name));
    let program = Program::clocked(&server, data, &TestClock::new(data.with_extension("clock")), "off", None);
    let (began, mut told) = (Instant::now(), 0);
    println!("{:>10} {:>10} {:>10} {:>10} {:>10}", "updates", "seconds", "memory MB", "highest MB", "store MB");
    while told < wish.updates {
        let count = AT_A_TIME.min(wish.updates - told);
        (told..told + count).for_each(|n| _ = server.tell(&names[n % wish.chats], SAID));
        let since = Instant::now();
        while server.calls_of("sendMessage") < count {
            assert!(since.elapsed() < Duration::from_secs(120), "{} answers", server.calls_of("sendMessage"));
            std::thread::sleep(Duration::from_millis(50));
        }
        server.forget();
        let tenths = |n: usize| n * 10 / wish.updates;
        if tenths(told + count) > tenths(told) {
            let (now, high) = program.memory().expect("Linux tells");
            println!(
                "{:>10} {:>10.0} {:>10.1} {:>10.1} {:>10.1}",
                told + count,
                began.elapsed().as_secs_f64(),
                now as f64 / 1e6,
                high as f64 / 1e6,
                size_of(data) as f64 / 1e6
            );
        }
        told += count;
    }
}

/// Bytes of all files in a folder, as they are told.
fn size_of(folder: &Path) -> u64 {
    let entries = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let size = |path: &Path| path.metadata().map_or(0, |meta| meta.len());
    entries.map(|entry| entry.path()).map(|path| if path.is_dir() { size_of(&path) } else { size(&path) }).sum()
}

/// What a load came to.
struct Told {
    answered_a_second: f64,
    /// Milliseconds, sorted.
    latencies: Vec<f64>,
    memory: (u64, u64),
}

impl Told {
    fn at(&self, part: f64) -> f64 {
        self.latencies[((self.latencies.len() - 1) as f64 * part) as usize]
    }

    fn line(&self, wish: &Wish) -> String {
        format!(
            "{} {} at {}/s over {} chats: answered {:.1}/s; p50 {:.2} ms, p90 {:.2} ms, p99 {:.2} ms, longest {:.1} ms; memory {:.1} MB, highest {:.1} MB",
            self.latencies.len(),
            if wish.say { "messages" } else { "presses" },
            wish.rate,
            wish.chats,
            self.answered_a_second,
            self.at(0.5),
            self.at(0.9),
            self.at(0.99),
            self.at(1.0),
            self.memory.0 as f64 / 1e6,
            self.memory.1 as f64 / 1e6
        )
    }
}

/// The three programs, and what a careful write costs here.
fn beside(wish: &Wish, folder: &Path) {
    type Start<'a> = Box<dyn Fn(&Loopback, &Path) -> Program + 'a>;
    let programs: [(&str, Start<'_>); 3] = [
        ("echo", Box::new(|server, data| Program::echo(server, data, None))),
        ("echo, flushing", Box::new(|server, data| Program::echo(server, data, Some(data)))),
        (
            "carvetime",
            Box::new(|server, data| {
                Program::clocked(server, data, &TestClock::new(data.with_extension("clock")), "off", None)
            }),
        ),
    ];
    println!(
        "{:<16} {:>10} {:>10} {:>9} {:>9} {:>9} {:>10}",
        "", "updates/s", "cpu ms", "p50 ms", "p99 ms", "max ms", "memory MB"
    );
    for (nth, (name, start)) in programs.iter().enumerate() {
        let (bulk, paced) = (folder.join(format!("burst-{nth}")), folder.join(format!("paced-{nth}")));
        let (a_second, cost) = burst(wish, |server| start(server, &bulk));
        let told = load(wish, &paced, |server| start(server, &paced));
        println!(
            "{name:<16} {a_second:>10.0} {cost:>10.3} {:>9.2} {:>9.2} {:>9.1} {:>10.1}",
            told.at(0.5),
            told.at(0.99),
            told.at(1.0),
            told.memory.1 as f64 / 1e6
        );
        println!("                 fdatasync beside it: {:.2} ms", fdatasync(folder));
    }
}

/// Messages a second when many wait at the start, from the first poll to the last answer; and the milliseconds of the processor that
/// each took of the program: that holds on a machine that does other things, too.
fn burst(wish: &Wish, start: impl Fn(&Loopback) -> Program) -> (f64, f64) {
    let server = Loopback::start();
    let names: Vec<String> = (0..wish.chats).map(|n| format!("Cook {n}")).collect();
    names.iter().for_each(|name| _ = server.person(name));
    let count = (wish.rate * wish.seconds) as usize;
    (0..count).for_each(|n| _ = server.tell(&names[n % wish.chats], SAID));
    let program = start(&server);
    server.wait_calls("the first poll", |calls| calls.iter().any(|call| call.method == "getUpdates"));
    let (began, before) = (first_poll(&server), program.processor().unwrap_or_default());
    let calls = collect(&server, 0, count, true);
    let cost = program.processor().unwrap_or_default().saturating_sub(before).as_secs_f64() * 1e3 / count as f64;
    (count as f64 / calls[count - 1].at.duration_since(began).as_secs_f64(), cost)
}

/// Median time of a small write with `fdatasync`, in milliseconds.
fn fdatasync(folder: &Path) -> f64 {
    use std::io::Write;
    let mut file = std::fs::File::create(folder.join("sync")).expect("the folder is there");
    let mut took: Vec<f64> = (0..200)
        .map(|_| {
            let began = Instant::now();
            file.write_all(&[7; 512]).and_then(|()| file.sync_data()).expect("the disk takes it");
            began.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    took.sort_by(f64::total_cmp);
    took[took.len() / 2]
}

fn load(wish: &Wish, data: &Path, start: impl Fn(&Loopback) -> Program) -> Told {
    let server = Loopback::start();
    let names: Vec<String> = (0..wish.chats).map(|n| format!("Cook {n}")).collect();
    let chats: Vec<i64> = names.iter().map(|name| server.person(name)).collect();
    std::fs::create_dir_all(data.parent().expect("a folder")).expect("a folder");
    let program = start(&server);
    server.wait_calls("the first poll", |calls| calls.iter().any(|call| call.method == "getUpdates"));
    // Everybody is known and has a message with buttons, at a rate the platform allows.
    for name in &names {
        server.tell(name, SAID);
        std::thread::sleep(Duration::from_millis(if wish.unpaced { 2 } else { 45 }));
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
            server.tell(&names[at], SAID);
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
    let memory = program.memory().expect("Linux tells");
    Told { answered_a_second: calls.len() as f64 / took, latencies, memory }
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
