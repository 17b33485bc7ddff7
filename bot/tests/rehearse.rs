//! Rehearsals: a script played on a virtual clock.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod doubles;

use carvetime::rehearse::{PlayError, Script, rehearse};
use std::sync::Arc;

fn play(script: &str, json: bool) -> (String, Result<(), PlayError>) {
    let script = Script::parse(script, chrono_tz::America::Chicago, "en-US").unwrap();
    let mut out = Vec::new();
    let end = rehearse(&script, doubles::decide, &Arc::new(doubles::voice()), json, &mut out);
    (String::from_utf8(out).unwrap(), end)
}

fn check(script: &str, json: bool, expected: &str) {
    let (shown, end) = play(script, json);
    assert_eq!(shown, expected);
    end.unwrap();
}

#[test]
fn the_whole_conversation_is_printed_in_order() {
    check(
        "2027-11-25 12:00 Rosa: buttons\n\
         2027-11-25 12:01 Tom > LATER\n\
         2027-11-25 12:02:30 Tom (private): hello\n\
         2027-11-25 12:03 Rosa: close\n",
        false,
        "2027-11-25 12:00 Rosa: buttons\n\
         2027-11-25 12:00 carvetime: Heard buttons from Rosa\n    [Done] [Later]\n\
         2027-11-25 12:01 Tom > LATER\n\
         2027-11-25 12:01 carvetime to Tom (notice): Only you see this\n\
         2027-11-25 12:01 carvetime: Tom pressed later job-salt-0\n\
         2027-11-25 12:02 Tom (private): hello\n\
         2027-11-25 12:02 carvetime to Tom: Heard hello from Tom\n\
         2027-11-25 12:03 Rosa: close\n\
         2027-11-25 12:03 carvetime (edited): Heard buttons from Rosa\n",
    );
}

#[test]
fn the_clock_jumps_from_bell_to_bell_and_stops_where_the_script_ends() {
    check(
        "2027-11-25 12:00 Rosa: bell\n2027-11-25 12:24",
        false,
        "2027-11-25 12:00 Rosa: bell\n\
         2027-11-25 12:00 carvetime: Heard bell from Rosa\n\
         2027-11-25 12:10 carvetime: Ring 1\n",
    );
}

#[test]
fn a_bell_due_at_the_minute_of_a_line_rings_before_it() {
    check(
        "2027-11-25 12:00 Rosa: bell\n2027-11-25 12:10 Rosa: now",
        false,
        "2027-11-25 12:00 Rosa: bell\n\
         2027-11-25 12:00 carvetime: Heard bell from Rosa\n\
         2027-11-25 12:10 carvetime: Ring 1\n\
         2027-11-25 12:10 Rosa: now\n\
         2027-11-25 12:10 carvetime: Heard now from Rosa\n",
    );
}

#[test]
fn json_lines_hold_what_the_bot_said() {
    check(
        "2027-11-25 12:00 Rosa: buttons\n\
         2027-11-25 12:01 Tom > Done\n\
         2027-11-25 12:02 Tom: call\n\
         2027-11-25 12:03 Tom (private) > done\n\
         2027-11-25 12:04 Rosa: close\n\
         2027-11-25 12:05 Rosa: file\n",
        true,
        concat!(
            r#"{"at":"2027-11-25T12:00:00-06:00","kind":"message","to":"group","text":"Heard buttons from Rosa","buttons":["Done","Later"],"step":"salt","id":1}"#,
            "\n",
            r#"{"at":"2027-11-25T12:01:00-06:00","kind":"answer","to":"Tom","text":"Only you see this","buttons":[],"step":null,"id":2}"#,
            "\n",
            r#"{"at":"2027-11-25T12:01:00-06:00","kind":"message","to":"group","text":"Tom pressed done job-salt-0","buttons":[],"step":null,"id":3}"#,
            "\n",
            r#"{"at":"2027-11-25T12:02:00-06:00","kind":"private","to":"Tom","text":"It is your turn","buttons":["Done"],"step":null,"id":4}"#,
            "\n",
            r#"{"at":"2027-11-25T12:03:00-06:00","kind":"answer","to":"Tom","text":"Only you see this","buttons":[],"step":null,"id":5}"#,
            "\n",
            r#"{"at":"2027-11-25T12:03:00-06:00","kind":"message","to":"group","text":"Tom pressed called ","buttons":[],"step":null,"id":6}"#,
            "\n",
            r#"{"at":"2027-11-25T12:04:00-06:00","kind":"edit","to":"group","text":"Heard buttons from Rosa","buttons":[],"step":"salt","id":1}"#,
            "\n",
            r#"{"at":"2027-11-25T12:05:00-06:00","kind":"document","to":"group","text":"Heard file from Rosa","buttons":[],"step":null,"id":7,"file":"../plan.ics"}"#,
            "\n",
        ),
    );
}

#[test]
fn a_private_room_is_called_by_its_person() {
    check(
        "room private\n2027-11-25 12:00 Rosa: hello\n2027-11-25 12:01 rosa (private): again",
        true,
        concat!(
            r#"{"at":"2027-11-25T12:00:00-06:00","kind":"message","to":"Rosa","text":"Heard hello from Rosa","buttons":[],"step":null,"id":1}"#,
            "\n",
            r#"{"at":"2027-11-25T12:01:00-06:00","kind":"message","to":"Rosa","text":"Heard again from Rosa","buttons":[],"step":null,"id":2}"#,
            "\n",
        ),
    );
}

#[test]
fn a_button_that_is_not_there_stops_the_play_and_names_those_that_are() {
    let (shown, end) = play("# cook\n2027-11-25 12:00 Rosa: buttons\n2027-11-25 12:01 Tom > Accept\n", false);
    assert!(shown.ends_with("2027-11-25 12:01 Tom > Accept\n"), "{shown}");
    let Err(PlayError::NoButton { line, label, there }) = end else { panic!("{end:?}") };
    assert_eq!((line, label.as_str(), there), (3, "Accept", vec!["Done".to_owned(), "Later".to_owned()]));
}

#[test]
fn a_button_in_someone_elses_private_chat_is_out_of_reach() {
    let (_, end) = play("2027-11-25 12:00 Tom: call\n2027-11-25 12:01 Rosa (private) > Done\n", false);
    assert!(matches!(&end, Err(PlayError::NoButton { there, .. }) if there.is_empty()), "{end:?}");
}

#[test]
fn the_same_script_gives_the_same_transcript() {
    let script =
        "2027-11-25 12:00 Rosa: bell\n2027-11-25 12:01 Tom: buttons\n2027-11-25 12:02 Ana > Done\n2027-11-26 12:00\n";
    assert_eq!(play(script, true).0, play(script, true).0);
}

/// A cook in the real room, from the wish to the evening.
const COOK: &str = "zone America/Chicago\n\
    locale en-US\n\
    room group                                   # or: room private\n\
    2027-11-22 18:30 Rosa: /plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325\n\
    2027-11-22 18:31 Rosa > Accept               # presses the button\n\
    2027-11-25 11:40 Tom: breast 58, pit 331\n\
    2027-11-25 11:41 Tom (private): /start\n\
    2027-11-25 20:00\n";

#[test]
fn a_cook_in_the_real_room_plays_to_the_evening_and_the_same_twice() {
    let play = || {
        let script = Script::parse(COOK, chrono_tz::UTC, "es-ES").unwrap();
        let mut out = Vec::new();
        let voice = Arc::new(carvetime::words::Voice::new());
        rehearse(&script, carvetime::room::decide, &voice, true, &mut out).unwrap();
        String::from_utf8(out).unwrap()
    };
    let first = play();
    let lines: Vec<serde_json::Value> = first.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    let any = |key: &str, value: &str| lines.iter().any(|line| line[key] == value);
    assert!(any("kind", "private") && any("kind", "edit") && any("step", "thaw") && any("to", "Tom"), "{first}");
    let last = lines.last().unwrap()["at"].as_str().unwrap();
    assert!(last.starts_with("2027-11-25T") && last.ends_with("-06:00"), "{last}");
    assert!(lines.windows(2).all(|pair| pair[0]["at"].as_str() <= pair[1]["at"].as_str()), "{first}");
    assert_eq!(first, play());
}

#[test]
fn a_name_written_from_the_right_is_pressed_and_typed_as_a_script_has_it() {
    let script = "room group
2027-11-22 09:00 Rosa: /plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325
2027-11-22 09:01 Rosa > Accept
2027-11-22 09:02 נועה: /board
2027-11-22 09:03 Rosa > Share the jobs
2027-11-22 09:03 Rosa > Ask someone…
2027-11-22 09:03 Rosa > Carve
2027-11-22 09:03 Rosa > נועה
2027-11-22 09:04 נועה > Yes
";
    let script = Script::parse(script, chrono_tz::America::Chicago, "en-US").unwrap();
    let voice = Arc::new(carvetime::words::Voice::new());
    let mut out = Vec::new();
    rehearse(&script, carvetime::room::decide, &voice, false, &mut out).unwrap();
    let shown = String::from_utf8(out).unwrap();
    assert!(shown.contains("\u{2068}נועה\u{2069} does it: Carve, Thu 4:35 PM."), "{shown}");
}
