//! The chat in a terminal: what a line does and what is shown.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod doubles;

use carvetime::book::SledBook;
use carvetime::engine::Engine;
use carvetime::room::state::Taste;
use carvetime::terminal::{Chat, Stage, piped};
use carvetime::words::Reader;
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use std::path::Path;
use std::sync::Arc;

fn noon() -> DateTime<Utc> {
    Utc.with_ymd_and_hms(2027, 11, 25, 18, 0, 0).unwrap()
}

fn chat_in(dir: &Path, first_number: i64) -> Chat {
    let voice = Arc::new(doubles::voice());
    let book = Arc::new(SledBook::open(dir).unwrap());
    let engine = Engine::new(book, Arc::clone(&voice) as _, doubles::decide).unwrap();
    let zone = chrono_tz::America::Chicago;
    let taste = Taste { language: Some("en-US".into()), zone: Some(zone.name().to_owned()), ..Taste::default() };
    let stage = Stage::new(engine, taste, None, first_number).unwrap();
    Chat::new(stage, voice, Reader::new("en-US", zone, noon()), dir.join("files"))
}

/// Plays lines in one chat and compares all that is shown.
fn check(lines: &[&str], expected: &str) {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), 1);
    let shown: String = lines.iter().map(|line| chat.line(line, noon()).unwrap()).collect();
    assert_eq!(shown, expected);
}

#[test]
fn a_line_is_answered_in_plain_text() {
    check(&["salt & <pepper>"], "Heard salt & <pepper> from You\n\n");
}

#[test]
fn a_blank_line_says_nothing() {
    check(&["", "   "], "");
}

#[test]
fn anyone_may_be_named() {
    check(&["@Rosa hello", "@rosa again"], "Heard hello from Rosa\n\nHeard again from Rosa\n\n");
}

#[test]
fn buttons_are_numbered_and_pressed_by_number() {
    check(
        &["buttons", "#2", "#1 @Tom"],
        "Heard buttons from You\n[1] Done  [2] Later\n\n\
         (for You) Only you see this\n\nYou pressed later job-salt-0\n\n\
         (for Tom) Only you see this\n\nTom pressed done job-salt-0\n\n",
    );
}

#[test]
fn a_bare_number_presses_as_the_person_who_was_answered() {
    check(
        &["@Rosa buttons", "@Tom hello", "#1"],
        "Heard buttons from Rosa\n[1] Done  [2] Later\n\nHeard hello from Tom\n\n\
         (for Rosa) Only you see this\n\nRosa pressed done job-salt-0\n\n",
    );
}

#[test]
fn pressing_what_is_not_there_gives_a_hint() {
    check(
        &["#1", "buttons", "#3", "#0"],
        "There is nothing to press yet.\n\n\
         Heard buttons from You\n[1] Done  [2] Later\n\n\
         No button has that number. There are: [1] Done  [2] Later\n\n\
         No button has that number. There are: [1] Done  [2] Later\n\n",
    );
}

#[test]
fn a_number_without_its_mark_is_said_and_how_to_press_is_told() {
    check(
        &["buttons", "2", "7"],
        "Heard buttons from You\n[1] Done  [2] Later\n\nHeard 2 from You\n\n#2 presses the button.\n\nHeard 7 from You\n\n",
    );
}

#[test]
fn closed_buttons_cannot_be_pressed() {
    check(
        &["buttons", "close", "#1"],
        "Heard buttons from You\n[1] Done  [2] Later\n\n\
         (changed) Heard buttons from You\n\n\
         There is nothing to press yet.\n\n",
    );
}

#[test]
fn a_private_call_is_marked_and_its_button_presses_as_its_person() {
    check(
        &["@Tom call", "#1 @Rosa", "#1"],
        "(for Tom) It is your turn\n[1] Done\n\n\
         There is nothing to press yet.\n\n\
         (for Tom) Only you see this\n\nTom pressed called \n\n",
    );
}

#[test]
fn words_in_private_are_answered_in_private() {
    check(&["@Tom (private): hello"], "(for Tom) Heard hello from Tom\n\n");
}

#[test]
fn a_message_edited_in_place_is_shown_again_only_when_it_changed() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), 1);
    assert_eq!(chat.line("board", noon()).unwrap(), "Board at 12:00 PM\n\n");
    assert_eq!(chat.line("board", noon()).unwrap(), "");
    assert_eq!(chat.line("board", noon() + TimeDelta::minutes(1)).unwrap(), "(changed) Board at 12:01 PM\n\n");
}

#[test]
fn reminders_appear_when_they_fall_due() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), 1);
    chat.line("bell", noon()).unwrap();
    assert_eq!(chat.next_bell().unwrap(), Some(noon() + TimeDelta::minutes(10)));
    assert_eq!(chat.tick(noon() + TimeDelta::minutes(9)).unwrap(), "");
    assert_eq!(chat.tick(noon() + TimeDelta::minutes(10)).unwrap(), "Ring 1\n\n");
    assert_eq!(chat.next_bell().unwrap(), Some(noon() + TimeDelta::minutes(25)));
}

#[test]
fn the_next_session_goes_on_where_the_last_one_ended() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), 1);
    chat.line("bell", noon()).unwrap();
    chat.line("board", noon()).unwrap();
    drop(chat);
    let mut chat = chat_in(dir.path(), 100);
    assert_eq!(chat.tick(noon() + TimeDelta::hours(1)).unwrap(), "Ring 2\n\n", "what was missed comes together");
    // The board stood in the last session's window; here it has to be shown anew.
    assert_eq!(chat.line("board", noon()).unwrap(), "Board at 12:00 PM\n\n");
}

#[test]
fn a_file_is_kept_in_the_data_folder_and_nowhere_else() {
    let dir = tempfile::tempdir().unwrap();
    let shown = chat_in(dir.path(), 1).line("file", noon()).unwrap();
    let path = dir.path().join("files").join("plan.ics");
    assert_eq!(shown, format!("Heard file from You\nSaved: {}\n\n", path.display()));
    assert_eq!(std::fs::read(path).unwrap(), b"BEGIN");
}

#[test]
fn a_pipe_is_read_to_its_end_and_every_line_answered() {
    let dir = tempfile::tempdir().unwrap();
    let mut out = Vec::new();
    piped(&mut chat_in(dir.path(), 1), noon, &b"one\n\nt\xffwo"[..], &mut out).unwrap();
    assert_eq!(String::from_utf8(out).unwrap(), "Heard one from You\n\nHeard t\u{FFFD}wo from You\n\n");
}
