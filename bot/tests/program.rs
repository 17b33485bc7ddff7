//! The program from outside: exit status, what goes to stdout and what to stderr.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use std::io::Write;
use std::path::Path;
use std::process::{Command, Output, Stdio};

fn command(data: &Path, args: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_carvetime"));
    command.args(args).env("CARVETIME_DATA", data).env_remove("RUST_LOG").env_remove("TELOXIDE_TOKEN");
    command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    command
}

fn run(data: &Path, args: &[&str], input: &str) -> Output {
    let mut child = command(data, args).spawn().unwrap();
    // A program that needs no input may be gone before it is written.
    let _ = child.stdin.take().unwrap().write_all(input.as_bytes());
    child.wait_with_output().unwrap()
}

/// Status, stdout, stderr.
fn told(output: &Output) -> (Option<i32>, String, String) {
    let text = |bytes: &[u8]| String::from_utf8(bytes.to_vec()).unwrap();
    (output.status.code(), text(&output.stdout), text(&output.stderr))
}

/// A run that fails: its status, nothing on stdout, one line on stderr, which holds `part`.
fn fails(args: &[&str], status: i32, part: &str) {
    let dir = tempfile::tempdir().unwrap();
    let (code, out, err) = told(&run(dir.path(), args, ""));
    assert_eq!((code, out.as_str()), (Some(status), ""), "{args:?}: {err}");
    assert!(err.contains(part) && err.lines().count() == 1 && err.ends_with('\n'), "{args:?}: {err:?}");
}

#[test]
fn a_pipe_is_answered_to_its_end_with_status_0() {
    let dir = tempfile::tempdir().unwrap();
    for args in [&["--locale", "en-US"][..], &["--locale", "en-US", "chat"], &["chat", "--locale", "en-US"]] {
        let (code, out, err) = told(&run(dir.path(), args, "#1\n#2"));
        let expected = "There is nothing to press yet.\n\n".repeat(2);
        assert_eq!((code, out, err), (Some(0), expected, String::new()), "{args:?}");
    }
}

#[test]
fn the_kitchens_zone_is_the_one_the_environment_names() {
    let told_with = |tz: &str, flags: &[&str]| {
        let dir = tempfile::tempdir().unwrap();
        let args = [&["--locale", "en-US"], flags, &["chat"]].concat();
        let mut child = command(dir.path(), &args).env("TZ", tz).spawn().unwrap();
        let _ = child.stdin.take().unwrap().write_all(b"/settings\n");
        told(&child.wait_with_output().unwrap()).1
    };
    assert!(told_with("Asia/Tokyo", &[]).contains("Asia/Tokyo"));
    assert!(told_with(":America/Lima", &[]).contains("America/Lima"));
    assert!(told_with("Asia/Tokyo", &["--zone", "Europe/Rome"]).contains("Europe/Rome"), "the flag goes first");
    assert!(told_with("CST6CDT,M3.2.0,M11.1.0", &[]).contains("Time zone"), "a rule is no name");
}

#[test]
fn a_question_is_answered_as_text_or_as_one_line_of_json() {
    let dir = tempfile::tempdir().unwrap();
    let ask = |more: &[&str]| {
        let args = ["ask", "--locale", "en-US", "2 tbsp table salt in flake kosher"];
        told(&run(dir.path(), &[&args[..], more].concat(), ""))
    };
    let (code, out, err) = ask(&[]);
    assert_eq!((code, err.as_str()), (Some(0), ""));
    assert!(out.contains("4 tbsp + 1 tsp of flake kosher"), "{out}");
    let (code, out, _) = ask(&["--json"]);
    let line: serde_json::Value = serde_json::from_str(&out).unwrap();
    assert_eq!((code, out.lines().count()), (Some(0), 1));
    assert_eq!((&line["kind"], &line["values"][0]["unit"]), (&"salt-convert".into(), &"tbsp".into()));
    fails(&["--locale", "en-US", "ask", "how tall is the moon"], 1, "2 tbsp table salt in flake kosher");
    assert!(!dir.path().join("store").exists(), "a question needs no data folder");
}

#[test]
fn failures_are_one_line_on_stderr_and_status_1() {
    let locale = ["--locale", "en-US"];
    fails(&[&locale[..], &["rehearse", "no/such/file"]].concat(), 1, "no/such/file");
    fails(&[&locale[..], &["restore", "no/such/file"]].concat(), 1, "no/such/file");
    fails(&[&locale[..], &["serve"]].concat(), 1, "TELOXIDE_TOKEN");
    let dir = tempfile::tempdir().unwrap();
    let script = dir.path().join("script.txt");
    std::fs::write(&script, "room group\nhello\n").unwrap();
    fails(&[&locale[..], &["rehearse", script.to_str().unwrap()]].concat(), 1, "Line 2: \"hello\"");
    std::fs::write(&script, "2027-11-25 12:00 Rosa > Accept\n").unwrap();
    let (code, _, err) = told(&run(dir.path(), &["--locale", "en-US", "rehearse", script.to_str().unwrap()], ""));
    assert_eq!(code, Some(1));
    assert_eq!(err, "Line 1: There is no button \"Accept\", nor any other.\n");
}

#[test]
fn wrong_usage_is_status_2() {
    fails(&["--zone", "Mars/Olympus", "chat"], 2, "Mars/Olympus");
    fails(&["--locale", "!", "chat"], 2, "\"!\"");
    let dir = tempfile::tempdir().unwrap();
    for args in [&["simmer"][..], &["--nonsense"], &["rehearse"], &["rehearse", "a", "b"], &["chat", "--json"]] {
        let (code, out, err) = told(&run(dir.path(), args, ""));
        assert_eq!((code, out.as_str()), (Some(2), ""), "{args:?}");
        assert!(!err.is_empty(), "{args:?}");
    }
}

#[test]
fn help_comes_in_the_readers_language_with_status_0() {
    let dir = tempfile::tempdir().unwrap();
    for (tag, sentence) in [("en-US", "Talk to it in this terminal"), ("es-MX", "Hablar en este terminal")] {
        for args in [["--locale", tag, "--help"], ["--help", "--locale", tag]] {
            let (code, out, err) = told(&run(dir.path(), &args, ""));
            assert_eq!((code, err.as_str()), (Some(0), ""));
            assert!(out.contains(sentence), "{out}");
        }
    }
}

#[test]
fn a_reader_who_has_heard_enough_is_no_error() {
    let dir = tempfile::tempdir().unwrap();
    let mut child = command(dir.path(), &["--locale", "en-US", "chat"]).spawn().unwrap();
    drop(child.stdout.take());
    let _ = child.stdin.take().unwrap().write_all(b"#1\n#1\n#1\n"); // it may stop before it has read all
    let (code, _, err) = told(&child.wait_with_output().unwrap());
    assert_eq!((code, err.as_str()), (Some(0), ""));
}

#[test]
fn a_backup_comes_back_in_an_empty_folder_and_nowhere_else() {
    let dir = tempfile::tempdir().unwrap();
    let (from, to, file) = (dir.path().join("a"), dir.path().join("b"), dir.path().join("backup"));
    let file = file.to_str().unwrap();
    run(&from, &["--locale", "en-US"], "hello\n");
    let (code, out, err) = told(&run(&from, &["--locale", "en-US", "backup", file], ""));
    assert_eq!((code, err.as_str()), (Some(0), ""));
    assert!(out.starts_with("Wrote ") && out.contains(file), "{out}");
    let restore = || run(&to, &["--locale", "en-US", "restore", file], "");
    assert_eq!(told(&restore()).0, Some(0));
    let (code, out, err) = told(&restore());
    assert_eq!((code, out.as_str(), err.lines().count()), (Some(1), "", 1));
}

#[test]
fn two_programs_do_not_share_one_folder() {
    let dir = tempfile::tempdir().unwrap();
    let mut first = command(dir.path(), &["--locale", "en-US"]).spawn().unwrap();
    let mut input = first.stdin.take().unwrap();
    input.write_all(b"#1\n").unwrap();
    // Its answer is the sign that it has the folder.
    let mut output = first.stdout.take().unwrap();
    std::io::Read::read_exact(&mut output, &mut [0]).unwrap();
    let (code, out, err) = told(&run(dir.path(), &["--locale", "en-US"], "#1\n"));
    assert_eq!((code, out.as_str(), err.lines().count()), (Some(1), "", 1), "{err}");
    drop(input);
    assert!(first.wait().unwrap().success());
}

#[test]
fn a_log_is_replayed_as_lines_or_as_json() {
    let dir = tempfile::tempdir().unwrap();
    let log = dir.path().join("log.csv");
    std::fs::write(&log, "minutes,pit_f,breast_f,thigh_f\n0,320,40,41\n60,325,62,66\n90,330,88,94\n120,,18,126\n")
        .unwrap();
    let path = log.to_str().unwrap();
    let args = ["--locale", "en-US", "forecast", path, "--mass", "14.2 lb", "--pit", "325 F", "--thigh", "175 F"];
    let (code, out, err) = told(&run(dir.path(), &args, ""));
    assert_eq!((code, err.as_str(), out.lines().count()), (Some(0), "", 4), "{out}");
    assert!(out.lines().nth(3).unwrap().contains("Breast 18 °F? Or"), "{out}");
    let (code, out, _) = told(&run(dir.path(), &[&args[..], &["--json"]].concat(), ""));
    let lines: Vec<serde_json::Value> = out.lines().map(|l| serde_json::from_str(l).unwrap()).collect();
    assert_eq!((code, lines.len()), (Some(0), 4));
    let number = |line: &serde_json::Value, key: &str| line[key].as_f64().unwrap();
    for line in &lines {
        assert!(number(line, "minutes") <= number(line, "p10") && number(line, "p10") <= number(line, "p50"), "{line}");
        assert!(number(line, "p50") <= number(line, "p90") && line["breast"]["p50"].is_f64(), "{line}");
        assert_eq!((&line["state"], number(line, "log_reduction")), (&"cooking".into(), 0.0));
    }
    assert_eq!(lines[3]["suspects"][0]["slip"], "digit");

    std::fs::write(&log, "minutes,breast_f\n0,40\n5,cold\n").unwrap();
    fails(&["--locale", "en-US", "forecast", path], 1, "Line 3: \"cold\"");
    fails(&["--locale", "en-US", "forecast", path, "--pit", "5 lb"], 2, "--pit");
    fails(&["--locale", "en-US", "forecast", "no/such/file"], 1, "no/such/file");
}

#[test]
fn a_long_log_tells_how_far_it_is_and_never_among_its_lines() {
    let dir = tempfile::tempdir().unwrap();
    let log = dir.path().join("log.csv");
    let lines: String = (0..520).map(|n| format!("{:.1},320,40,41\n", f64::from(n) / 10.0)).collect();
    std::fs::write(&log, format!("minutes,pit_f,breast_f,thigh_f\n{lines}")).unwrap();
    let args =
        ["--locale", "en-US", "forecast", log.to_str().unwrap(), "--mass", "14.2 lb", "--pit", "325 F", "--json"];
    let (code, out, err) = told(&run(dir.path(), &args, ""));
    assert_eq!((code, out.lines().count()), (Some(0), 520), "{err}");
    assert_eq!(err.trim(), "500 of 520 readings");
    assert!(!out.contains(" of 520"), "what is piped on holds forecasts alone");
}
