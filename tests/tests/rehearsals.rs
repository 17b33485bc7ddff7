//! Whole cooks as readable scripts with the conversation that must come of them.
//!
//! `tests/rehearsals/NAME.cook` is played by the program; its output must equal `NAME.txt` beside it. A script's first
//! comment says what happens. After a change that is meant, `CARVETIME_BLESS=1 cargo test -p carvetime-tests --test
//! rehearsals` writes the transcripts anew: read every word before you commit them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::program;
use std::path::{Path, PathBuf};

fn scripts() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("rehearsals");
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let mut scripts: Vec<PathBuf> = files.filter(|path| path.extension().is_some_and(|end| end == "cook")).collect();
    scripts.sort();
    scripts
}

fn play(script: &Path) -> String {
    let played = program::run(&["rehearse", script.to_str().unwrap()]);
    let complaint = String::from_utf8_lossy(&played.stderr).into_owned();
    let told = String::from_utf8(played.stdout).unwrap();
    assert!(played.status.success(), "{}: {complaint}\n{told}", script.display());
    assert_eq!(complaint, "", "{} says something on stderr", script.display());
    told
}

/// The first line that differs, with its neighbours.
fn difference(expected: &str, told: &str) -> Option<String> {
    let (mut left, mut right) = (expected.lines(), told.lines());
    for number in 1.. {
        match (left.next(), right.next()) {
            (None, None) => return None,
            (expected, told) if expected == told => {}
            (expected, told) => {
                let show = |line: Option<&str>| line.unwrap_or("(the end)").to_string();
                return Some(format!("line {number}\n  expected {}\n  but was  {}", show(expected), show(told)));
            }
        }
    }
    None
}

#[test]
fn every_rehearsal_goes_as_written() {
    let bless = std::env::var_os("CARVETIME_BLESS").is_some();
    let mut failures = Vec::new();
    for script in scripts() {
        let told = play(&script);
        let page = script.with_extension("txt");
        if bless {
            std::fs::write(&page, &told).unwrap();
        }
        let expected = std::fs::read_to_string(&page).unwrap_or_default();
        if let Some(difference) = difference(&expected, &told) {
            failures.push(format!("{}: {difference}", page.display()));
        }
    }
    assert!(failures.is_empty(), "{}", failures.join("\n"));
}

#[test]
fn a_rehearsal_played_twice_is_the_same() {
    for script in scripts() {
        assert_eq!(play(&script), play(&script), "{}", script.display());
    }
}

#[test]
fn every_transcript_has_a_script() {
    let scripts = scripts();
    assert!(scripts.len() >= 8, "{scripts:?}");
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("rehearsals");
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        assert!(scripts.contains(&path.with_extension("cook")), "{} has no script", path.display());
    }
}
