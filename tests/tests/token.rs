//! The token stays where it is: with every log switched on and everything going wrong, it stands in nothing the program wrote.
//!
//! Faults tried: refusals, lost connections, pages instead of JSON that quote the address asked for (token included), a server that
//! is gone, a token that is revoked. Looked through: stderr, the whole data folder, a backup, an export, every file and text sent,
//! the command line as other users of the machine see it. Ruled out: the environment, which whoever runs the program may read.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::kitchen::Kitchen;
use carvetime_tests::loopback::{Fault, Loopback, Rule, TOKEN};
use carvetime_tests::program::{Program, carvetime};
use std::path::Path;
use std::process::Command;
use std::time::Duration;

/// Bytes of `text` that are the token or its secret half, however its colon is written.
fn sightings(bytes: &[u8]) -> usize {
    let secret = TOKEN.split_once(':').unwrap().1.as_bytes();
    bytes.windows(secret.len()).filter(|window| *window == secret).count()
}

/// Every file under `dir`, with its sightings.
fn in_folder(dir: &Path) -> Vec<(String, usize)> {
    let mut found = Vec::new();
    let mut waiting = vec![dir.to_path_buf()];
    while let Some(path) = waiting.pop() {
        if path.is_dir() {
            waiting.extend(std::fs::read_dir(&path).unwrap().map(|entry| entry.unwrap().path()));
        } else if let Ok(bytes) = std::fs::read(&path) {
            found.push((path.display().to_string(), sightings(&bytes)));
        }
    }
    found
}

fn loud(data: &Path, server: &Loopback) -> Program {
    let mut command = Command::new(carvetime());
    command.arg("serve").arg("--data").arg(data).env("RUST_LOG", "trace").env("RUST_BACKTRACE", "full");
    Program::start(command, server, data)
}

#[test]
fn the_token_is_in_nothing_that_is_written() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let telegram = Loopback::start();
    let rosa = telegram.person("Rosa");
    telegram.fault(Rule::next("setMyCommands", Fault::Page(403)));
    telegram.fault(Rule::next("setMyCommands", Fault::Refuse(500, "Internal Server Error")));
    let program = loud(&data, &telegram);
    telegram.wait_calls("a poll", |calls| calls.iter().any(|call| call.method == "getUpdates"));
    for (method, fault) in [
        ("sendMessage", Fault::Page(200)),
        ("sendMessage", Fault::Reset),
        ("sendMessage", Fault::Refuse(400, "Bad Request: something new")),
        ("getUpdates", Fault::Page(200)),
        ("getUpdates", Fault::Page(404)),
        ("getFile", Fault::Page(404)),
        ("sendDocument", Fault::Page(200)),
        ("answerInlineQuery", Fault::Page(200)),
    ] {
        telegram.fault(Rule::next(method, fault));
    }
    for _ in 0..4 {
        telegram.tell("Rosa", "2 tbsp table salt in flake kosher");
    }
    telegram.inline("Rosa", "2 tbsp table");
    telegram.upload("Rosa", rosa, "log.csv", b"minutes,breast_f\n1,40\n");
    telegram.tell("Rosa", "/export");
    telegram.wait_calls("answers", |calls| {
        let count = |method: &str| calls.iter().filter(|call| call.method == method).count();
        count("sendMessage") >= 7
            && count("answerInlineQuery") >= 1
            && count("getFile") >= 1
            && count("sendDocument") >= 1
    });
    let proc = Path::new("/proc").join(program.id().to_string());
    let shown = std::fs::read(proc.join("cmdline")).unwrap();
    assert!(!shown.is_empty() && sightings(&shown) == 0, "the command line shows the token");
    let tasks = std::fs::read_dir(proc.join("task")).unwrap();
    let children =
        |task: std::io::Result<std::fs::DirEntry>| std::fs::read_to_string(task.unwrap().path().join("children"));
    assert!(tasks.map(children).all(|children| children.unwrap_or_default().is_empty()), "its children could tell");
    let calls = telegram.calls();
    let said = calls.iter().map(|call| format!("{call:?}")).collect::<String>();
    assert!(said.len() > 1000 && sightings(said.as_bytes()) == 0, "the token was sent to someone");
    let files: usize = calls.iter().flat_map(|call| call.files.values()).map(|file| sightings(&file.bytes)).sum();
    assert_eq!(files, 0);

    telegram.set_offline(true);
    std::thread::sleep(Duration::from_millis(300));
    telegram.clear_violations();
    drop(telegram); // refused connections from now on
    std::thread::sleep(Duration::from_millis(1500));
    program.terminate();
    program.wait(Duration::from_secs(20));

    // Revoked, at the start.
    let revoked = Loopback::start();
    revoked.set_token_good(false);
    let program = loud(&data, &revoked);
    assert_eq!(program.wait(Duration::from_secs(20)).code(), Some(1));
    // The token where an address belongs: what is said of the address does not show it.
    let mut command = Command::new(carvetime());
    let url = format!("ftp://localhost/bot{TOKEN}");
    command.args(["serve", "--data"]).arg(&data).env("TELOXIDE_TOKEN", TOKEN).env("TELOXIDE_API_URL", url);
    let told = command.output().unwrap();
    assert_eq!(told.status.code(), Some(1));
    assert!(!told.stderr.is_empty() && sightings(&told.stderr) == 0, "{}", String::from_utf8_lossy(&told.stderr));
    let mut command = Command::new(carvetime());
    command.args(["backup", "--data"]).arg(&data).arg(folder.path().join("backup")).env("TELOXIDE_TOKEN", TOKEN);
    assert!(command.status().unwrap().success());

    let log = program.log();
    assert!(log.len() > 10_000 && log.contains("TRACE"), "the log is loud: {} bytes", log.len());
    let files = in_folder(folder.path());
    assert!(files.iter().any(|(name, _)| name.ends_with("backup")) && files.len() >= 4, "{files:?}");
    let seen: Vec<_> = files.iter().filter(|(_, count)| *count > 0).collect();
    assert!(seen.is_empty(), "{seen:?}");
}

#[test]
fn another_bot_does_not_go_on_with_this_bot_s_data() {
    let kitchen = Kitchen::open();
    kitchen.telegram.person("Rosa");
    kitchen.telegram.tell("Rosa", "/start");
    kitchen.telegram.settle();
    kitchen.program().kill();
    let other = Loopback::start();
    other.set_bot(5151);
    let program = Program::serve(&other, &kitchen.data());
    assert_eq!(program.wait(Duration::from_secs(20)).code(), Some(1));
    assert!(program.log().contains("belongs to another bot"), "{}", program.log());
    assert!(other.calls().iter().all(|call| call.method == "getMe"), "nothing was asked for or sent");
}
