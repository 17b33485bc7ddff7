//! The same cook through Telegram and in rehearsal: in the end the same messages must stand in the chat.
//!
//! A script of `tests/rehearsals` is played twice: by `carvetime rehearse`, and by people in the loopback server's world who
//! say and press the same at the same times while the program is killed now and then. How often a board was edited on the
//! way may differ; what stands there in the end may not.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::rehearse::{Act, Event, Script};
use carvetime_tests::kitchen::Kitchen;
use carvetime_tests::program;
use chrono::{DateTime, Utc};
use serde_json::Value;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// What stands in a chat: text and labels of each message, in the order they came.
type Standing = Vec<(String, Vec<String>)>;

fn script_path(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("rehearsals").join(format!("{name}.cook"))
}

/// What stands in the room at the end of the rehearsal, and when something was said.
fn rehearsed(name: &str) -> (Standing, Vec<DateTime<Utc>>) {
    let played = program::run(&["rehearse", "--json", script_path(name).to_str().unwrap()]);
    assert!(played.status.success(), "{}", String::from_utf8_lossy(&played.stderr));
    let mut standing: BTreeMap<i64, (String, Vec<String>)> = BTreeMap::new();
    let mut times = Vec::new();
    for line in String::from_utf8(played.stdout).unwrap().lines() {
        let line: Value = serde_json::from_str(line).unwrap();
        times.push(line["at"].as_str().unwrap().parse::<DateTime<Utc>>().unwrap());
        if line["kind"] == "answer" {
            continue;
        }
        let buttons = line["buttons"].as_array().unwrap().iter().map(|label| label.as_str().unwrap().to_string());
        let message = (line["text"].as_str().unwrap().to_string(), buttons.collect());
        standing.insert(line["id"].as_i64().unwrap(), message);
    }
    times.dedup();
    (standing.into_values().collect(), times)
}

/// Plays the script in the private chat of its one person, with a `kill -9` after every `kill_every` moments.
fn on_telegram(name: &str, times: &[DateTime<Utc>], kill_every: usize) -> Standing {
    let text = std::fs::read_to_string(script_path(name)).unwrap();
    let script = Script::parse(&text, chrono_tz::UTC, "en-US").unwrap();
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let cook = script.events.iter().find_map(|event| speaker(&event.act)).unwrap();
    let chat = telegram.stranger(cook, &script.locale);
    kitchen.wait_until(script.events[0].at);
    telegram.tell(cook, &format!("/settings zone {}", script.zone));
    telegram.settle();
    let before = telegram.said(chat).len();
    let mut events = script.events.iter().peekable();
    let mut moments: Vec<DateTime<Utc>> = times.iter().copied().chain(script.events.iter().map(|e| e.at)).collect();
    moments.sort();
    moments.dedup();
    for (nth, moment) in moments.into_iter().enumerate() {
        if nth % kill_every == kill_every - 1 {
            kitchen.program().kill();
            kitchen.clock.set(moment); // it falls due while nobody is there
            let calls = telegram.call_count();
            kitchen.reopen();
            kitchen.wait_for_poll(calls);
        }
        kitchen.wait_until(moment);
        while let Some(Event { act, .. }) = events.next_if(|event| event.at <= moment) {
            match act {
                Act::Say { name, text, .. } => drop(telegram.tell(name, text)),
                Act::Press { name, label, .. } => drop(telegram.press(name, chat, label)),
                Act::Wait => {}
            }
            telegram.settle();
        }
    }
    let said = telegram.said(chat).into_iter().skip(before);
    said.map(|message| (message.text.clone(), message.labels())).collect()
}

fn speaker(act: &Act) -> Option<&str> {
    match act {
        Act::Say { name, .. } | Act::Press { name, .. } => Some(name),
        Act::Wait => None,
    }
}

fn check(name: &str, kill_every: usize) {
    let (expected, times) = rehearsed(name);
    let seen = on_telegram(name, &times, kill_every);
    for (nth, (expected, seen)) in expected.iter().zip(&seen).enumerate() {
        assert_eq!(seen, expected, "message {nth} of {name}");
    }
    assert_eq!(seen.len(), expected.len(), "{seen:#?}");
}

#[test]
fn a_whole_holiday_goes_on_telegram_as_in_rehearsal_through_kills_and_restarts() {
    check("fresh-for-eight", 7);
}

#[test]
fn a_plan_nobody_answers_goes_on_telegram_as_in_rehearsal() {
    check("cooked-ahead", 11);
}

#[test]
fn a_spanish_plan_goes_on_telegram_as_in_rehearsal() {
    check("en-espanol", 1000);
}
