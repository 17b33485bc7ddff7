//! What whoever runs the program sees and does: service managers, supervisors, a request to stop, a wrong clock, a full disk.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::kitchen::Kitchen;
use carvetime_tests::loopback::{Fault, Loopback, Rule};
use carvetime_tests::program::{Program, carvetime};
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use std::os::unix::net::UnixDatagram;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

/// Answered in one message, whatever else stands.
const QUESTION: &str = "2 tbsp table salt in flake kosher";

fn serve(data: &Path) -> Command {
    let mut command = Command::new(carvetime());
    command.arg("serve").arg("--data").arg(data);
    command
}

fn polled(server: &Loopback) {
    server.wait_calls("a poll", |calls| calls.iter().any(|call| call.method == "getUpdates"));
}

/// Status and text of an answer.
fn get(url: &str) -> (u16, String) {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    runtime.block_on(async {
        let answer = reqwest::get(url).await.unwrap();
        (answer.status().as_u16(), answer.text().await.unwrap())
    })
}

#[test]
#[cfg(all(target_os = "linux", target_env = "gnu"))]
fn memory_is_bounded_unless_the_operator_has_decided() {
    let heaps_of = |set: Option<&str>| {
        let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
        let data = folder.path().join("data");
        let mut command = serve(&data);
        command.env_remove("MALLOC_ARENA_MAX").env_remove("GLIBC_TUNABLES");
        command.envs(set.map(|set| ("MALLOC_ARENA_MAX", set)));
        let program = Program::start(command, &server, &data);
        polled(&server);
        let of = |what: &str| std::fs::read_to_string(format!("/proc/{}/{what}", program.id())).unwrap();
        // The same process by the same name and arguments: whoever started it still has it.
        assert_eq!(of("comm").trim(), "carvetime");
        let arguments: Vec<String> = of("cmdline").split_terminator('\0').map(str::to_owned).collect();
        assert_eq!(arguments[1..], ["serve", "--data", data.to_str().unwrap()]);
        let heaps = of("environ").split('\0').find_map(|line| Some(line.strip_prefix("MALLOC_ARENA_MAX=")?.to_owned()));
        program.terminate();
        assert!(program.wait(Duration::from_secs(10)).success());
        heaps
    };
    assert_eq!(heaps_of(None).as_deref(), Some("1"));
    assert_eq!(heaps_of(Some("4")).as_deref(), Some("4"));
}

#[test]
fn supervisors_are_told_how_it_goes_and_nothing_about_anybody() {
    let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
    let address = std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap();
    let data = folder.path().join("data");
    let mut command = serve(&data);
    command.arg("--health").arg(address.to_string());
    let program = Program::start(command, &server, &data);
    polled(&server);
    let rosa = server.person("Rosa Quintanilla");
    server.tell("Rosa Quintanilla", QUESTION);
    server.expect(rosa, "flake kosher");
    server.fault(Rule::next("sendMessage", Fault::TooMany(1)));
    server.tell("Rosa Quintanilla", QUESTION);
    server.expect(rosa, "flake kosher");
    server.settle();
    assert_eq!(get(&format!("http://{address}/health")), (200, "ok\n".to_owned()));
    let (status, text) = get(&format!("http://{address}/metrics"));
    assert_eq!(status, 200);
    let value = |name: &str| {
        let line =
            text.lines().find_map(|line| line.strip_prefix(name)).unwrap_or_else(|| panic!("no {name}:\n{text}"));
        line.trim().parse::<i64>().unwrap()
    };
    assert_eq!(value("carvetime_updates_total"), 2);
    assert_eq!(value("carvetime_turns_total"), 2);
    assert_eq!(value("carvetime_messages_total{end=\"sent\"}"), 2);
    assert_eq!(value("carvetime_messages_total{end=\"tried again\"}"), 1);
    assert_eq!(value("carvetime_outbox_waiting"), 0);
    assert_eq!(value("carvetime_reminder_overdue_seconds"), 0);
    assert_eq!(value("carvetime_platform_reachable"), 1);
    assert!(text.trim_end().ends_with("# EOF"), "OpenMetrics ends with it:\n{text}");
    assert!(!text.contains("Rosa") && !text.contains(&rosa.to_string()), "{text}");
    assert_eq!(get(&format!("http://{address}/elsewhere")).0, 404);
    drop(program);
}

#[test]
fn an_address_that_is_taken_is_one_line_and_exit_status_1() {
    let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
    let taken = std::net::TcpListener::bind("127.0.0.1:0").unwrap();
    let address = taken.local_addr().unwrap().to_string();
    let data = folder.path().join("data");
    let mut command = serve(&data);
    command.arg("--health").arg(&address).env("RUST_LOG", "off");
    let program = Program::start(command, &server, &data);
    assert_eq!(program.wait(Duration::from_secs(15)).code(), Some(1));
    assert!(program.log().contains(&address), "{}", program.log());
    assert_eq!(program.log().trim().lines().count(), 1, "one line: {}", program.log());
}

#[test]
fn the_service_manager_hears_that_it_serves_lives_and_stops() {
    let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
    let socket = folder.path().join("notify");
    let manager = UnixDatagram::bind(&socket).unwrap();
    manager.set_read_timeout(Some(Duration::from_secs(15))).unwrap();
    let data = folder.path().join("data");
    let mut command = serve(&data);
    command.env("NOTIFY_SOCKET", &socket).env("WATCHDOG_USEC", "600000");
    let program = Program::start(command, &server, &data);
    let heard = || {
        let mut bytes = [0; 64];
        let length = manager.recv(&mut bytes).expect("a notice");
        String::from_utf8_lossy(&bytes[..length]).trim().to_owned()
    };
    assert_eq!(heard(), "READY=1");
    polled(&server);
    for _ in 0..3 {
        assert_eq!(heard(), "WATCHDOG=1");
    }
    program.terminate();
    let last = (0..100).map(|_| heard()).find(|notice| notice != "WATCHDOG=1");
    assert_eq!(last.as_deref(), Some("STOPPING=1"));
    assert_eq!(program.wait(Duration::from_secs(10)).code(), Some(0));
}

/// Everyone is answered once, by the program that was asked to stop or by the next one.
#[test]
fn asked_to_stop_in_full_swing_it_ends_within_five_seconds_and_loses_nothing() {
    for signal in ["-TERM", "-INT"] {
        let kitchen = Kitchen::open();
        let telegram = &kitchen.telegram;
        let names: Vec<String> = (0..60).map(|nth| format!("Cook {nth}")).collect();
        let chats: Vec<i64> = names.iter().map(|name| telegram.person(name)).collect();
        for method in ["sendMessage", "getUpdates"] {
            telegram.fault(Rule {
                method: Some(method),
                skip: 3,
                times: 1,
                fault: Fault::Delay(Duration::from_millis(300)),
            });
        }
        names.iter().for_each(|name| _ = telegram.tell(name, QUESTION));
        telegram.wait_calls("a first answer", |calls| calls.iter().any(|call| call.method == "sendMessage"));
        let began = Instant::now();
        let id = kitchen.program().id().to_string();
        assert!(Command::new("kill").args([signal, &id]).status().unwrap().success());
        let status = kitchen.program().clone().wait(Duration::from_secs(10));
        assert_eq!(status.code(), Some(0), "{signal}");
        assert!(began.elapsed() < Duration::from_secs(6), "{signal}: {:?}", began.elapsed());
        let calls = telegram.call_count();
        kitchen.reopen();
        kitchen.wait_for_poll(calls);
        telegram.settle();
        for (name, chat) in names.iter().zip(chats) {
            assert_eq!(telegram.said(chat).len(), 1, "{signal}, {name}: {}", telegram.transcript(chat));
        }
    }
}

/// What is said in the first days of a plan, by the platform's clock, on a machine whose clock is `ahead` of it.
fn first_days(ahead: TimeDelta) -> (Vec<(DateTime<Utc>, String)>, String) {
    let kitchen = Kitchen::loud();
    let telegram = &kitchen.telegram;
    let shown = kitchen.clock.clone();
    telegram.set_clock(move || shown.now() - ahead);
    let start = Utc.with_ymd_and_hms(2027, 11, 21, 16, 0, 0).unwrap();
    kitchen.wait_until(start + ahead);
    let rosa = telegram.person("Rosa");
    telegram.tell("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 4 pm, 8 people, oven at 325");
    kitchen.accept("Rosa", rosa);
    for half_hours in 1..=150 {
        kitchen.clock.set(start + ahead + TimeDelta::minutes(30 * half_hours));
        std::thread::sleep(Duration::from_millis(if half_hours > 90 { 60 } else { 20 }));
    }
    telegram.settle();
    (telegram.heard(rosa), kitchen.program().log())
}

#[test]
fn reminders_come_by_the_platform_s_time_on_a_machine_in_1970_or_a_year_ahead() {
    let (right, quiet) = first_days(TimeDelta::zero());
    assert!(right.len() >= 4, "a plan, a board and calls: {right:#?}");
    assert!(!quiet.contains("clock is wrong"));
    for ahead in [TimeDelta::days(-57 * 365), TimeDelta::days(365)] {
        let (heard, log) = first_days(ahead);
        let said = |heard: &[(DateTime<Utc>, String)]| heard.iter().map(|(_, text)| text.clone()).collect::<Vec<_>>();
        assert_eq!(said(&heard), said(&right), "{ahead}");
        for ((at, text), (wanted, _)) in heard.iter().zip(&right) {
            assert!((*at - *wanted).abs() <= TimeDelta::minutes(60), "{ahead}: {at}, not {wanted}: {text}");
        }
        assert!(log.contains("clock is wrong"), "whoever runs it is told");
    }
}

/// With no file to grow beyond `kib` KiB, as on a full disk.
fn cramped(data: &Path, kib: u64) -> Command {
    let mut command = Command::new("bash");
    let script = format!("trap '' XFSZ; ulimit -f {kib}; exec \"$@\"");
    command.args(["-c", &script, "bash"]).arg(carvetime()).arg("serve").arg("--data").arg(data).env("RUST_LOG", "off");
    command
}

#[test]
fn a_disk_that_fills_up_ends_it_with_a_line_and_loses_nothing() {
    let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
    let data = folder.path().join("data");
    let program = Program::start(cramped(&data, 640), &server, &data);
    polled(&server);
    let names: Vec<String> = (0..300).map(|nth| format!("Cook {nth}")).collect();
    let chats: Vec<i64> = names.iter().map(|name| server.person(name)).collect();
    for name in &names {
        server.tell(name, QUESTION);
    }
    let status = program.wait(Duration::from_secs(60));
    let log = program.log();
    assert_eq!((status.code(), log.trim().lines().count()), (Some(1), 1), "one line: {log}");
    assert!(log.contains("File too large") && log.contains("free space"), "{log}");
    assert!(!log.contains("Os {"), "in words: {log}");
    let told = |chat: &i64| server.said(*chat).len();
    let already = chats.iter().filter(|chat| told(chat) > 0).count();
    assert!(already < names.len(), "the disk filled up too late to show anything");

    // Room again: whoever was not answered is; an answer that could not be noted any more may come twice.
    let program = Program::serve(&server, &data);
    for chat in &chats {
        let until = Instant::now() + Duration::from_secs(60);
        while told(chat) == 0 {
            assert!(Instant::now() < until && program.runs(), "{}: {}", program.last_log(), server.transcript(*chat));
            std::thread::sleep(Duration::from_millis(20));
        }
    }
    server.settle();
    let twice = chats.iter().filter(|chat| told(chat) == 2).count();
    assert!(chats.iter().all(|chat| (1..=2).contains(&told(chat))));
    // `AT_ONCE` of `telegram/outbound.rs`: on a busy machine more are under way when the disk is full.
    assert!(twice <= 64, "as many as are under way at a time, not {twice}");
}

#[test]
fn a_folder_that_can_t_be_written_is_one_line_and_exit_status_1() {
    let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
    let file = folder.path().join("file");
    std::fs::write(&file, "no folder").unwrap();
    // Nobody makes folders in /proc, not even root; nor below a file.
    for data in [Path::new("/proc/carvetime").to_owned(), file.join("data")] {
        let mut command = serve(&data);
        command.env("RUST_LOG", "off");
        let program = Program::start(command, &server, &folder.path().join("log-of-it"));
        assert_eq!(program.wait(Duration::from_secs(15)).code(), Some(1));
        let log = program.log();
        let line = log.trim().lines().last().unwrap_or_default();
        assert!(line.contains(data.to_str().unwrap()) && line.contains("permissions"), "{log}");
    }
    assert_eq!(server.call_count(), 0, "nothing is asked of the platform before the data can be kept");
}

#[test]
fn a_machine_without_zone_data_knows_the_zones() {
    let script = "zone America/Chicago\nlocale en-US\nroom private\n\
        2027-11-06 10:00 Rosa: /plan 13 lb fresh turkey, dinner 2027-11-11 4 pm, 8 people, oven at 325\n";
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("autumn.cook");
    std::fs::write(&file, script).unwrap();
    let play = |command: &mut Command| {
        let played = command.args(["rehearse", file.to_str().unwrap()]).output().unwrap();
        assert!(played.status.success(), "{}", String::from_utf8_lossy(&played.stderr));
        String::from_utf8(played.stdout).unwrap()
    };
    let usual = play(&mut Command::new(carvetime()));
    // Six hours behind UTC, not five, as the clocks went back on the 7th.
    assert!(usual.contains("On the table Thu 4:00 PM"), "{usual}");
    let without = play(Command::new(carvetime()).env("TZDIR", "/nowhere").env("TZ", ":/nowhere/at/all"));
    assert_eq!(without, usual);
}
