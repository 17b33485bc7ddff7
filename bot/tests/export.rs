//! `/export`: the plan as a calendar, everything as JSON, the readings as CSV.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::SledBook;
use carvetime::engine::Engine;
use carvetime::rehearse::{Script, rehearse};
use carvetime::room::decide;
use carvetime::room::state::Taste;
use carvetime::terminal::{Chat, Stage};
use carvetime::words::{Reader, Voice};
use chrono::{DateTime, NaiveDateTime, TimeZone, Utc};
use chrono_tz::America;
use serde_json::Value;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

const PLAN: &str = "/plan 12 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325";

/// A group in Chicago, its files in `dir`.
fn chat_in(dir: &Path, language: &str) -> Chat {
    let voice = Arc::new(Voice::new());
    let book = Arc::new(SledBook::open(dir).unwrap());
    let engine = Engine::new(book, Arc::clone(&voice) as _, decide).unwrap();
    let zone = America::Chicago;
    let taste = Taste { language: Some(language.into()), zone: Some(zone.name().to_owned()), ..Taste::default() };
    let stage = Stage::new(engine, taste, None, 1).unwrap();
    Chat::new(stage, voice, Reader::new(language, zone, at("2027-11-20 18:30")), dir.join("files"))
}

fn at(local: &str) -> DateTime<Utc> {
    let local = NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").unwrap();
    America::Chicago.from_local_datetime(&local).unwrap().to_utc()
}

fn file(dir: &Path, name: &str) -> String {
    std::fs::read_to_string(dir.join("files").join(name)).unwrap()
}

/// The events of a calendar by their UID, unfolded; fails where a line breaks RFC 5545.
fn events(ics: &str) -> BTreeMap<String, BTreeMap<String, String>> {
    assert!(ics.ends_with("\r\n"));
    for line in ics.trim_end_matches("\r\n").split("\r\n") {
        assert!(line.len() <= 75 && !line.contains(['\r', '\n']), "{line:?}");
    }
    let unfolded = ics.replace("\r\n ", "");
    let lines: Vec<&str> = unfolded.split_terminator("\r\n").collect();
    assert_eq!(lines[..2], ["BEGIN:VCALENDAR", "VERSION:2.0"]);
    assert!(lines[2].starts_with("PRODID:"));
    assert_eq!(lines.last(), Some(&"END:VCALENDAR"));
    let mut events = BTreeMap::new();
    let mut event: BTreeMap<String, String> = BTreeMap::new();
    for line in lines {
        let (name, value) = line.split_once(':').unwrap();
        match (name, value) {
            ("BEGIN", "VEVENT") => event.clear(),
            ("END", "VEVENT") => {
                for needed in ["UID", "DTSTAMP", "SEQUENCE", "DTSTART", "DTEND", "SUMMARY"] {
                    assert!(event.contains_key(needed), "no {needed} in {event:?}");
                }
                assert!(event["DTSTART"] < event["DTEND"], "{event:?}");
                assert!(event["DTSTART"].ends_with('Z') && event["DTSTART"].len() == 16);
                assert!(events.insert(event["UID"].clone(), std::mem::take(&mut event)).is_none(), "a UID twice");
            }
            _ => drop(event.insert(name.to_owned(), value.to_owned())),
        }
    }
    events
}

/// Rosa's dinner as a calendar got it first.
fn planned_and_exported(chat: &mut Chat, dir: &Path) -> BTreeMap<String, BTreeMap<String, String>> {
    let told = format!("@Rosa {PLAN}");
    for (line, when) in [(told.as_str(), "18:30"), ("#1 @Rosa", "18:31"), ("/export", "18:32")] {
        chat.line(line, at(&format!("2027-11-20 {when}"))).unwrap();
    }
    events(&file(dir, "carvetime.ics"))
}

fn sequence(event: &BTreeMap<String, String>) -> u32 {
    event["SEQUENCE"].parse().unwrap()
}

#[test]
fn the_calendar_has_every_job_at_its_time_and_takes_over_changes() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), "en-US");
    let mut say = |line: &str, when: &str| chat.line(line, at(when)).unwrap();
    say(&format!("@Rosa {PLAN}"), "2027-11-20 18:30");
    let accepted = say("#1 @Rosa", "2027-11-20 18:31");
    let shown = say("@Tom /export", "2027-11-20 18:32");
    assert!(shown.contains("carvetime.ics") && shown.contains("carvetime.json"), "{accepted}{shown}");
    assert!(!shown.contains(".csv"), "nothing was read yet: {shown}");
    let first = events(&file(dir.path(), "carvetime.ics"));
    let serve = first.keys().find(|uid| uid.contains("-serve-0@carvetime")).unwrap().clone();
    // Thursday 5 pm in Chicago in November.
    assert_eq!(first[&serve]["DTSTART"], "20271125T230000Z");
    assert_eq!(first[&serve]["DTSTAMP"], "20271121T003200Z");
    assert!(first.keys().any(|uid| uid.contains("-salt-0@")) && first.keys().any(|uid| uid.contains("-pull-0@")));

    say("/export", "2027-11-20 18:33");
    let again = events(&file(dir.path(), "carvetime.ics"));
    assert!(first.keys().eq(again.keys()), "the same jobs under the same names");
    assert_eq!(sequence(&first[&serve]), sequence(&again[&serve]), "nothing has changed");

    say("@Rosa /move 6 pm", "2027-11-20 18:34");
    say("/export", "2027-11-20 18:35");
    let moved = events(&file(dir.path(), "carvetime.ics"));
    assert_eq!(moved[&serve]["DTSTART"], "20271126T000000Z");
    assert!(sequence(&moved[&serve]) > sequence(&again[&serve]));

    // Taken back it is a newer version still, or calendars would keep the move.
    say("@Rosa /undo", "2027-11-20 18:36");
    say("/export", "2027-11-20 18:37");
    let back = events(&file(dir.path(), "carvetime.ics"));
    assert_eq!(back[&serve]["DTSTART"], "20271125T230000Z");
    assert!(sequence(&back[&serve]) > sequence(&moved[&serve]));
}

#[test]
fn what_takes_place_no_more_is_cancelled_in_calendars_that_have_it() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), "en-US");
    let mut say = |line: &str, when: &str| chat.line(line, at(when)).unwrap();
    say(&format!("@Rosa {PLAN}"), "2027-11-20 18:30");
    say("#1 @Rosa", "2027-11-20 18:31");
    say("@Rosa /plan add rice on the stove 20 min", "2027-11-20 18:32");
    say("/export", "2027-11-20 18:33");
    let first = events(&file(dir.path(), "carvetime.ics"));
    let rice = first.iter().find(|(_, event)| event["SUMMARY"] == "rice").unwrap().0.clone();
    let buy = first.keys().find(|uid| uid.contains("-buy-0@")).unwrap().clone();
    assert!(!first[&rice].contains_key("STATUS"));
    say("@Rosa /plan remove rice", "2027-11-20 18:34");
    say("@Rosa bought it", "2027-11-23 14:06");
    say("#2", "2027-11-23 18:31"); // the salting is put off
    say("/export", "2027-11-23 18:32");
    let second = events(&file(dir.path(), "carvetime.ics"));
    assert_eq!(second[&rice]["STATUS"], "CANCELLED");
    assert_eq!(second[&rice]["SUMMARY"], "rice", "it is still known by its name");
    assert!(sequence(&second[&rice]) > sequence(&first[&rice]));
    assert!(!second[&buy].contains_key("STATUS"), "done is not cancelled");
    say("#3", "2027-11-23 18:33"); // skipped
    say("/export", "2027-11-23 18:34");
    let third = events(&file(dir.path(), "carvetime.ics"));
    let salt = third.keys().find(|uid| uid.contains("-salt-0@")).unwrap();
    assert_eq!(third[salt]["STATUS"], "CANCELLED", "{:?}", third[salt]);
    assert!(sequence(&third[salt]) > sequence(&second[salt]));
    say("@Rosa /plan add rice on the stove 20 min", "2027-11-23 18:35");
    say("/export", "2027-11-23 18:36");
    let back = events(&file(dir.path(), "carvetime.ics"));
    assert!(!back[&rice].contains_key("STATUS") && sequence(&back[&rice]) > sequence(&third[&rice]));
}

#[test]
fn an_ended_plan_goes_from_the_calendars_that_have_it() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), "en-US");
    let first = planned_and_exported(&mut chat, dir.path());
    let mut say = |line: &str, when: &str| chat.line(line, at(when)).unwrap();
    say("@Rosa /stop", "2027-11-24 09:00");
    let ended = say("#1 @Rosa", "2027-11-24 09:01");
    assert!(ended.contains("/export"), "who has it in a calendar is told: {ended}");
    let shown = say("/export", "2027-11-24 09:02");
    assert!(shown.contains("carvetime.ics"), "{shown}");
    let last = events(&file(dir.path(), "carvetime.ics"));
    // What was over when the plan ended stays what it was: the shopping, the salt.
    let to_come = first.iter().filter(|(_, event)| event["DTEND"].as_str() > "20271124T150100Z");
    assert!(last.keys().eq(to_come.map(|(uid, _)| uid)), "{first:?} {last:?}");
    assert_eq!(first.len() - last.len(), 2);
    for (uid, event) in &last {
        assert_eq!(event["STATUS"], "CANCELLED", "{event:?}");
        assert!(sequence(event) > sequence(&first[uid]), "{event:?}");
    }
    let serve = first.keys().find(|uid| uid.contains("-serve-0@")).unwrap();
    assert!(last.contains_key(serve));

    // A new plan stands beside what is cancelled, under names of its own.
    say(&format!("@Rosa {PLAN}"), "2027-11-24 09:03");
    say("#1 @Rosa", "2027-11-24 09:04");
    say("/export", "2027-11-24 09:05");
    let both = events(&file(dir.path(), "carvetime.ics"));
    let cancelled = both.values().filter(|event| event.get("STATUS").is_some_and(|status| status == "CANCELLED"));
    assert_eq!(cancelled.count(), last.len());
    assert!(both.len() > last.len());
}

#[test]
fn a_plan_made_after_everything_was_forgotten_has_names_of_its_own() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), "en-US");
    let first = planned_and_exported(&mut chat, dir.path());
    let mut say = |line: &str, when: &str| chat.line(line, at(when)).unwrap();
    say("@Rosa /forget", "2027-11-20 18:40");
    let gone = say("#1 @Rosa", "2027-11-20 18:41");
    say(&format!("@Rosa {PLAN}"), "2027-11-20 18:42");
    say("#1 @Rosa", "2027-11-20 18:43");
    say("/export", "2027-11-20 18:44");
    let second = events(&file(dir.path(), "carvetime.ics"));
    // An old calendar takes no event with a lower number for news of its own.
    assert!(!second.is_empty() && second.keys().all(|uid| !first.contains_key(uid)), "{gone} {first:?} {second:?}");
}

#[test]
fn the_calendar_speaks_the_language_of_the_room() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), "es");
    chat.line("@Rosa /plan pavo fresco de 5,5 kg, cena jueves 17:00, 8 personas, horno", at("2027-11-20 18:30"))
        .unwrap();
    chat.line("#1 @Rosa", at("2027-11-20 18:31")).unwrap();
    chat.line("/export", at("2027-11-20 18:32")).unwrap();
    let events = events(&file(dir.path(), "carvetime.ics"));
    let salt = events.iter().find(|(uid, _)| uid.contains("-salt-0@")).unwrap().1;
    assert_eq!(salt["SUMMARY"], "Salar el ave");
    assert!(
        salt["DESCRIPTION"].starts_with("Sala el ave: fuera cuello y menudillos\\, sécala\\, no la laves"),
        "{}",
        salt["DESCRIPTION"]
    );
}

#[test]
fn readings_come_in_the_format_the_forecast_reads() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), "en-US");
    let mut say = |line: &str, when: &str| chat.line(line, at(when)).unwrap();
    say(&format!("@Rosa {PLAN}"), "2027-11-20 18:30");
    say("#1 @Rosa", "2027-11-20 18:31");
    say("/log breast 50, pit 320", "2027-11-25 12:30");
    say("/log breast 61.5, thigh 70, pit 331", "2027-11-25 13:00");
    say("/export", "2027-11-25 13:01");
    let csv = file(dir.path(), "carvetime-readings.csv");
    let rows: Vec<&str> = csv.lines().collect();
    // Nobody said when it went on: minutes since the first reading.
    assert_eq!(rows, ["minutes,pit_f,breast_f,thigh_f", "0,320,50,", "30,331,61.5,70"]);
}

#[test]
fn everything_kept_about_the_room_and_nothing_of_one_person_alone() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), "en-US");
    let mut say = |line: &str, when: &str| chat.line(line, at(when)).unwrap();
    say("@Tom my salt: 1/4 tsp is 0.7 g", "2027-11-20 18:29");
    say(&format!("@Rosa {PLAN}"), "2027-11-20 18:30");
    say("#1 @Rosa", "2027-11-20 18:31");
    say("@Rosa /take salt", "2027-11-20 18:32");
    say("@Tom /export", "2027-11-20 18:33");
    let text = file(dir.path(), "carvetime.json");
    let all: Value = serde_json::from_str(&text).unwrap();
    assert_eq!(all["version"], 1);
    assert_eq!(all["made_at"], "2027-11-21T00:33:00Z");
    assert_eq!(all["chat"]["kind"], "group");
    assert_eq!(all["plan"]["host"], "Rosa");
    assert_eq!(all["plan"]["wish"]["dinner"], "2027-11-25T23:00:00Z");
    let jobs = all["plan"]["jobs"].as_array().unwrap();
    let salt = jobs.iter().find(|job| job["step"] == "salt").unwrap();
    assert_eq!((&salt["owner"], &salt["state"]), (&"Rosa".into(), &"waiting".into()));
    assert!(!text.contains("own_salt") && all.get("you").is_none(), "a person's own is not for the group");
}

#[test]
fn in_private_the_export_has_the_persons_settings_and_without_a_plan_only_that() {
    let dir = tempfile::tempdir().unwrap();
    let mut chat = chat_in(dir.path(), "en-US");
    let now = at("2027-11-20 18:30");
    let shown = chat.line("@Tom (private): /export", now).unwrap();
    assert!(shown.contains("carvetime.json") && !shown.contains(".ics"), "{shown}");
    let all: Value = serde_json::from_str(&file(dir.path(), "carvetime.json")).unwrap();
    assert_eq!(all["you"]["name"], "Tom");
    assert_eq!(all["you"]["settings"]["zone"], "America/Chicago");
    assert_eq!(all["plan"], Value::Null);
}

#[test]
fn a_rehearsal_shows_the_files() {
    let script =
        format!("2027-11-20 18:30 Rosa: {PLAN}\n2027-11-20 18:31 Rosa > Accept\n2027-11-20 18:32 Rosa: /export\n");
    let script = Script::parse(&script, America::Chicago, "en-US").unwrap();
    let mut out = Vec::new();
    rehearse(&script, decide, &Arc::new(Voice::new()), true, &mut out).unwrap();
    let out = String::from_utf8(out).unwrap();
    let lines: Vec<Value> = out.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    let files: Vec<&Value> = lines.iter().filter(|line| line["kind"] == "document").map(|line| &line["file"]).collect();
    assert_eq!(files, ["carvetime.ics", "carvetime.json"]);
}
