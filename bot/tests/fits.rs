//! What is said fits where it is shown: every message of every rehearsal, in every language and in one stretched by two
//! fifths, whatever language it was rehearsed in.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/stretched.rs"]
mod stretched;

use carvetime::rehearse::{Script, rehearse};
use carvetime::room::{Heard, Say, Scene, To, Turn, decide};
use carvetime::telegram::rows::READABLE;
use carvetime::telegram::split::{MAX_CAPTION, MAX_NOTICE, MAX_TEXT, split};
use carvetime::words::{Arg, Reader, Text, Voice, locales, plain};
use chrono::{DateTime, Utc};
use regex::Regex;
use std::collections::BTreeSet;
use std::path::Path;
use std::sync::{Arc, LazyLock, Mutex};
use stretched::STRETCHED;

/// What the room has said, and when; `decide` is a plain function and has nowhere else to put it.
static SAID: Mutex<Vec<(DateTime<Utc>, Say)>> = Mutex::new(Vec::new());

fn overheard(scene: &Scene, heard: &Heard, now: DateTime<Utc>) -> Turn {
    let turn = decide(scene, heard, now);
    SAID.lock().unwrap().extend(turn.says.iter().map(|say| (now, say.clone())));
    turn
}

static ALL: LazyLock<Vec<(DateTime<Utc>, Say)>> = LazyLock::new(|| {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/rehearsals");
    let mut paths: Vec<_> = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.retain(|path| path.extension().is_some_and(|ending| ending == "cook"));
    paths.sort();
    let voice = Arc::new(Voice::new());
    for path in paths {
        let script = Script::parse(&std::fs::read_to_string(&path).unwrap(), chrono_tz::UTC, "en-US").unwrap();
        rehearse(&script, overheard, &voice, false, &mut std::io::sink()).unwrap();
    }
    SAID.lock().unwrap().clone()
});

static VOICE: LazyLock<Voice> = LazyLock::new(stretched::voice);

/// Every message in every language: when, what, and for whom.
fn each(check: impl Fn(&Say, &Reader, &str)) {
    assert!(ALL.len() > 1000, "the rehearsals say much");
    for (now, say) in ALL.iter() {
        for language in VOICE.languages().into_iter().chain(locales::regional()) {
            let reader = Reader::new(language, chrono_tz::America::Chicago, *now);
            let text = plain(&VOICE.render(&say.text, &reader));
            check(say, &reader, &text);
        }
    }
}

fn length(text: &str) -> usize {
    text.chars().count()
}

/// A stretched label within another is stretched twice.
fn allowed(limit: usize, reader: &Reader) -> usize {
    if reader.locale == STRETCHED { limit * 7 / 5 } else { limit }
}

#[test]
fn a_label_can_be_read_on_a_button_of_its_own() {
    each(|say, reader, _| {
        for button in say.buttons.iter().flatten() {
            let label = VOICE.label(&button.label, reader);
            assert!(length(&label) <= allowed(READABLE[0], reader), "{}: {label}", reader.locale);
            assert!(length(&label) >= 2, "{}: {label:?}", reader.locale);
        }
    });
}

/// Rows that come with every call or again and again: they stay one row in the languages there are. Rows that come once may
/// become more (`telegram/rows.rs`).
#[test]
fn the_rows_under_calls_stay_rows() {
    let often = |id: &str| {
        id.starts_with("feedback-button")
            || ["done", "later", "skip", "take", "yes", "no"].iter().any(|name| id == format!("room-button-{name}"))
    };
    each(|say, reader, _| {
        for row in say.buttons.iter().filter(|row| row.iter().all(|button| often(&button.label.id))) {
            for button in row {
                let label = VOICE.label(&button.label, reader);
                let limit = READABLE[row.len().min(READABLE.len()) - 1];
                assert!(
                    reader.locale == STRETCHED || length(&label) <= limit,
                    "{}, {} abreast: {label}",
                    reader.locale,
                    row.len()
                );
            }
        }
    });
}

#[test]
fn notices_are_not_cut() {
    each(|say, reader, text| {
        if matches!(say.to, To::Press(_)) {
            assert!(text.encode_utf16().count() <= MAX_NOTICE, "{}: {text}", reader.locale);
        }
    });
}

/// Every message that may be a notice, its names as long as names are: what was not rehearsed is looked at here.
#[test]
fn what_may_be_a_notice_is_short_enough_for_one() {
    let notice = Regex::new(r#"notice\(\s*Text::new\(\s*"([^"]+)""#).unwrap();
    let variable = Regex::new(r"\$([a-z]+)").unwrap();
    let sources = walk(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src/room"));
    let ids: BTreeSet<String> = notice.captures_iter(&sources).map(|found| found[1].to_owned()).collect();
    assert!(ids.len() > 15, "{ids:?}");
    let now = ALL[0].0;
    for id in &ids {
        let files = locales::files(locales::FIRST);
        let message = files.iter().find_map(|(_, text)| text.split(&format!("\n{id} = ")).nth(1)).unwrap();
        let message = message.split("\n\n").next().unwrap().lines().take_while(|line| !line.starts_with('#'));
        let message: String = message.collect::<Vec<_>>().join("\n");
        let names: BTreeSet<String> = variable.captures_iter(&message).map(|found| found[1].to_owned()).collect();
        let mut text = Text { id: id.clone().into(), args: Vec::new() };
        for name in names {
            // A name of 64 letters, a job's or a time's of fewer.
            let long = if name == "name" { "x".repeat(64) } else { "x".repeat(30) };
            text.args.push((Box::leak(name.into_boxed_str()), Arg::Verbatim(long)));
        }
        for language in VOICE.languages().into_iter().chain(locales::regional()) {
            let said = VOICE.label(&text, &Reader::new(language, chrono_tz::UTC, now));
            let limit = if language == STRETCHED { MAX_NOTICE * 6 / 5 } else { MAX_NOTICE };
            assert!(
                said.encode_utf16().count() <= limit,
                "{language} {id}: {} units: {said}",
                said.encode_utf16().count()
            );
        }
    }
}

fn walk(folder: &Path) -> String {
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).filter(|path| path.is_file());
    files.map(|path| std::fs::read_to_string(path).unwrap()).collect()
}

#[test]
fn captions_go_with_their_file_and_messages_are_one() {
    each(|say, reader, text| {
        let limit = if say.file.is_some() { MAX_CAPTION } else { MAX_TEXT };
        assert!(text.encode_utf16().count() <= limit, "{}: {text}", reader.locale);
        let html = VOICE.render(&say.text, reader);
        for part in split(&html, 300) {
            assert!(plain(&part).encode_utf16().count() <= 300, "{}: {part}", reader.locale);
        }
    });
}

/// A phone held upright shows about forty letters in a line. A job takes two lines of it at most, whoever has it.
#[test]
fn the_boards_lines_are_short() {
    let jobs = ["room-board-next", "room-board-then", "room-board-dinner", "room-board-ready", "room-board-more"];
    each(|say, reader, text| {
        if !say.key.as_deref().is_some_and(|key| key.starts_with("board")) {
            return;
        }
        assert!(text.lines().count() < 20, "{}:\n{text}", reader.locale);
        for line in say.text.iter().filter(|line| jobs.contains(&line.id.as_ref())) {
            let line = plain(&VOICE.render(std::slice::from_ref(line), reader));
            assert!(length(&line) <= allowed(80, reader), "{}: {line}", reader.locale);
        }
    });
}

#[test]
fn the_menu_and_the_profile_fit() {
    let files = locales::files(locales::FIRST);
    let ids =
        files.iter().flat_map(|(_, text)| text.lines()).filter_map(|line| line.split_once(" = ")).map(|(id, _)| id);
    let commands: Vec<&str> = ids.filter(|id| id.starts_with("telegram-command-")).collect();
    assert_eq!(commands.len(), 15);
    for language in VOICE.languages() {
        let reader = Reader::new(language, chrono_tz::UTC, ALL[0].0);
        let units = |id: &str| {
            let text = Text { id: id.to_owned().into(), args: Vec::new() };
            VOICE.label(&text, &reader).encode_utf16().count()
        };
        assert!(commands.iter().all(|id| units(id) <= allowed(60, &reader)), "{language}");
        assert!(units("telegram-description") <= 512, "{language}");
        assert!(units("telegram-short-description") <= 120, "{language}");
    }
}
