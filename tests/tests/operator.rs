//! What whoever runs the program sees and does: service managers, supervisors, a request to stop, a wrong clock, a full disk.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::clock::TestClock;
use carvetime_tests::kitchen::Kitchen;
use carvetime_tests::loopback::{Fault, Loopback, Rule, TOKEN};
use carvetime_tests::program::{Program, carvetime};
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use std::io::{Read, Write};
use std::os::unix::net::UnixDatagram;
use std::path::Path;
use std::process::Command;
use std::sync::Arc;
use std::time::{Duration, Instant};
use tokio_rustls::TlsAcceptor;
use tokio_rustls::rustls;
use tokio_rustls::rustls::pki_types::PrivateKeyDer;

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
        assert!(began.elapsed() < Duration::from_secs(5), "{signal}: {:?}", began.elapsed());
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

/// A server that knows no page.
fn no_pages() -> String {
    let listener = std::net::TcpListener::bind("127.0.0.1:0").unwrap();
    let address = listener.local_addr().unwrap();
    std::thread::spawn(move || {
        for stream in listener.incoming() {
            let mut stream = stream.unwrap();
            let _ = stream.read(&mut [0; 4096]);
            let page = "<html>404 Not Found</html>";
            let _ = write!(stream, "HTTP/1.1 404 Not Found\r\nContent-Length: {}\r\n\r\n{page}", page.len());
        }
    });
    format!("http://cook:{HIDDEN}@{address}/")
}

/// Stands in an address where a password does.
const HIDDEN: &str = "not-to-be-seen";

#[test]
fn an_address_where_there_is_no_bot_api_is_one_line_and_exit_status_1() {
    let folder = tempfile::tempdir().unwrap();
    let mut command = serve(&folder.path().join("data"));
    command.env("TELOXIDE_TOKEN", TOKEN).env("TELOXIDE_API_URL", no_pages()).env("RUST_LOG", "off");
    let ended = command.output().unwrap();
    let said = String::from_utf8(ended.stderr).unwrap();
    assert_eq!((ended.status.code(), said.trim().lines().count()), (Some(1), 1), "{said}");
    assert!(said.contains("http://127.0.0.1:") && said.contains("TELOXIDE_API_URL"), "{said}");
    let secret = TOKEN.split_once(':').unwrap().1;
    assert!(!said.contains(HIDDEN) && !said.contains(secret), "{said}");
}

/// A network that is not there yet is no reason to end: the line says where it was looked for.
#[test]
fn an_address_where_nobody_answers_is_named_and_tried_again() {
    for address in ["http://127.0.0.1:1/", "http://no-such-host.invalid/"] {
        let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
        let data = folder.path().join("data");
        let log = std::fs::File::create(folder.path().join("stderr")).unwrap();
        let mut command = serve(&data);
        command.env("TELOXIDE_TOKEN", TOKEN).env("TELOXIDE_API_URL", address).stderr(log);
        let mut child = command.spawn().unwrap();
        let until = Instant::now() + Duration::from_secs(20);
        let said = || std::fs::read_to_string(folder.path().join("stderr")).unwrap();
        while !said().contains(address) {
            assert!(Instant::now() < until && child.try_wait().unwrap().is_none(), "{address}: {}", said());
            std::thread::sleep(Duration::from_millis(20));
        }
        std::thread::sleep(Duration::from_secs(2));
        assert!(child.try_wait().unwrap().is_none(), "it goes on: {}", said());
        child.kill().unwrap();
        child.wait().unwrap();
        assert_eq!(said().matches("cannot be reached").count(), 1, "{}", said());
        assert!(!said().contains("clock"), "{}", said());
        drop(server);
    }
}

/// A server whose certificate nobody vouches for: its address.
fn distrusted() -> String {
    let own = rcgen::generate_simple_self_signed(["localhost".to_owned()]).unwrap();
    let key = PrivateKeyDer::Pkcs8(own.signing_key.serialize_der().into());
    let provider = Arc::new(rustls::crypto::ring::default_provider());
    let config = rustls::ServerConfig::builder_with_provider(provider).with_safe_default_protocol_versions().unwrap();
    let config = config.with_no_client_auth().with_single_cert(vec![own.cert.der().clone()], key).unwrap();
    let (tell, told) = std::sync::mpsc::channel();
    std::thread::spawn(move || {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
        runtime.block_on(async {
            let listener = tokio::net::TcpListener::bind("127.0.0.1:0").await.unwrap();
            tell.send(listener.local_addr().unwrap().port()).unwrap();
            let acceptor = TlsAcceptor::from(Arc::new(config));
            while let Ok((stream, _)) = listener.accept().await {
                let _ = acceptor.accept(stream).await;
            }
        });
    });
    format!("https://localhost:{}/", told.recv().unwrap())
}

/// Certificates are checked by this machine's clock: one that is out of date refuses every one of them.
#[test]
fn where_the_certificate_is_refused_the_clock_is_named_as_what_may_be_wrong() {
    let (address, folder) = (distrusted(), tempfile::tempdir().unwrap());
    let log = std::fs::File::create(folder.path().join("stderr")).unwrap();
    let mut command = serve(&folder.path().join("data"));
    command.env("TELOXIDE_TOKEN", TOKEN).env("TELOXIDE_API_URL", &address).stderr(log);
    let mut child = command.spawn().unwrap();
    let until = Instant::now() + Duration::from_secs(20);
    let said = || std::fs::read_to_string(folder.path().join("stderr")).unwrap();
    while !said().contains("cannot be reached") && Instant::now() < until {
        std::thread::sleep(Duration::from_millis(20));
    }
    let goes_on = child.try_wait().unwrap().is_none();
    child.kill().unwrap();
    child.wait().unwrap();
    let line = said();
    assert!(goes_on && line.contains(&address) && line.contains("clock is right"), "{line}");
    assert_eq!(line.matches("cannot be reached").count(), 1, "{line}");
}

#[test]
fn a_clock_that_must_be_wrong_is_named_where_the_platform_can_t_be_reached() {
    let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
    server.set_offline(true);
    let clock = TestClock::new(folder.path().join("clock"));
    clock.set(Utc.with_ymd_and_hms(1970, 1, 1, 0, 5, 0).unwrap());
    let program = Program::clocked(&server, &folder.path().join("data"), &clock, "error", None);
    let until = Instant::now() + Duration::from_secs(20);
    while !program.log().contains("clock is wrong") {
        assert!(Instant::now() < until && program.runs(), "{}", program.log());
        std::thread::sleep(Duration::from_millis(20));
    }
    assert!(program.log().contains("1970-01-01 00:05 UTC"), "{}", program.log());
}

#[test]
fn a_token_revoked_while_it_serves_is_one_line_and_exit_status_1() {
    let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
    let data = folder.path().join("data");
    let mut command = serve(&data);
    command.env("RUST_LOG", "off");
    let program = Program::start(command, &server, &data);
    polled(&server);
    server.set_token_good(false);
    server.person("Rosa");
    server.tell("Rosa", QUESTION); // ends the poll under way
    assert_eq!(program.wait(Duration::from_secs(60)).code(), Some(1));
    let log = program.log();
    assert!(log.trim().lines().count() == 1 && log.contains("TELOXIDE_TOKEN"), "{log}");
}

/// The days that have an export.
fn exported(data: &Path) -> Vec<String> {
    let entries = std::fs::read_dir(data.join("exports")).into_iter().flatten();
    let mut names: Vec<String> = entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    names.retain(|name| name.starts_with("daily-") && name.ends_with(".jsonl"));
    names.sort();
    names
}

fn wait_for(what: &str, done: impl Fn() -> bool) {
    let until = Instant::now() + Duration::from_secs(20);
    while !done() {
        assert!(Instant::now() < until, "no {what}");
        std::thread::sleep(Duration::from_millis(20));
    }
}

#[test]
fn every_day_is_exported_and_after_a_failure_it_is_tried_again_the_same_day() {
    let kitchen = Kitchen::loud();
    let day = |day| Utc.with_ymd_and_hms(2027, 11, day, 16, 0, 0).unwrap();
    let data = kitchen.data();
    for today in [21, 22] {
        kitchen.clock.set(day(today));
        wait_for("export", || exported(&data).contains(&format!("daily-2027-11-{today}.jsonl")));
    }
    std::fs::rename(data.join("exports"), data.join("moved")).unwrap();
    std::fs::write(data.join("exports"), "no folder").unwrap();
    kitchen.clock.set(day(23));
    wait_for("failure", || kitchen.program().log().contains("the daily export failed"));
    std::fs::remove_file(data.join("exports")).unwrap();
    std::fs::rename(data.join("moved"), data.join("exports")).unwrap();
    kitchen.clock.set(day(23) + TimeDelta::minutes(5));
    std::thread::sleep(Duration::from_millis(300));
    assert_eq!(exported(&data).last().unwrap(), "daily-2027-11-22.jsonl", "not at every turn");
    kitchen.clock.set(day(23) + TimeDelta::minutes(16));
    wait_for("second try", || exported(&data).contains(&"daily-2027-11-23.jsonl".to_owned()));
}

#[test]
fn the_program_itself_exports_the_day_it_starts_and_says_what_a_damaged_store_has_lost() {
    let (server, folder) = (Loopback::start(), tempfile::tempdir().unwrap());
    let data = folder.path().join("data");
    let program = Program::serve(&server, &data);
    polled(&server);
    wait_for("export", || exported(&data).len() == 1);
    let rosa = server.person("Rosa");
    for _ in 0..3 {
        server.tell("Rosa", QUESTION);
        server.expect(rosa, "flake kosher");
    }
    program.kill();
    std::fs::remove_dir_all(data.join("store")).unwrap();
    let calls = server.call_count();
    let program = Program::serve(&server, &data);
    server.wait_calls("a poll", |all| all.iter().skip(calls).any(|call| call.method == "getUpdates"));
    let log = program.log();
    let line = log.lines().find(|line| line.contains("put aside")).unwrap_or_else(|| panic!("{log}"));
    assert!(line.contains("missing=6") && line.contains("daily-") && line.contains("store.damaged-"), "{line}");
    program.kill();
    // The same in the terminal.
    std::fs::remove_dir_all(data.join("store")).unwrap();
    let exports = data.join("exports").join(&exported(&data)[0]);
    assert!(exports.exists());
    server.tell("Rosa", QUESTION);
    let program = Program::serve(&server, &data);
    server.expect(rosa, "flake kosher");
    program.kill();
    std::fs::remove_dir_all(data.join("store")).unwrap();
    let chat = Command::new(carvetime()).args(["chat", "--locale", "en-US", "--data"]).arg(&data).output().unwrap();
    let said = String::from_utf8(chat.stderr).unwrap();
    assert!(chat.status.success() && said.contains("are missing") && said.contains("store.damaged-"), "{said}");
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
    // The same of the bot.
    let (server, data) = (Loopback::start(), folder.path().join("data"));
    let mut command = serve(&data);
    command.env("TZDIR", "/nowhere").env("TZ", ":/nowhere/at/all");
    let _program = Program::start(command, &server, &data);
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/settings America/Chicago");
    server.expect(rosa, "Chicago");
    let june = Utc::now().date_naive() + TimeDelta::days(200);
    let wish = format!("/plan 13 lb fresh turkey, dinner {june} 4 pm, 8 people, oven at 325");
    server.tell("Rosa", &wish);
    assert!(server.expect(rosa, "On the table").text.contains("4:00"));
}
