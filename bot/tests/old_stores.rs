//! Stores that earlier versions of the program wrote go on: their plan stands, and what was done can be taken back.
//!
//! `stores/first` was written when the conversation first worked (7c6297e), `stores/shared` when jobs were first shared (615845f): a
//! turkey for eleven on 3 December 2026, accepted, the carving taken, dinner moved from five to six in Chicago. Each by
//! `carvetime chat` with those five lines. `stores/counted` (5401a8d) is the last of the first schema and holds its stock.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::keeper;
use carvetime::engine::Engine;
use carvetime::room::{Heard, PersonId, RoomId, RoomKind, Speaker, What, decide};
use carvetime::words::Voice;
use chrono::{DateTime, TimeZone, Utc};
use std::path::Path;
use std::sync::Arc;

const STORES: [&str; 3] = ["first", "shared", "counted"];

/// The room of a terminal.
const ROOM: RoomId = RoomId(-1);

fn noon() -> DateTime<Utc> {
    Utc.with_ymd_and_hms(2026, 11, 27, 18, 0, 0).unwrap()
}

/// An engine over a copy of that store.
fn engine_over(store: &str, data: &Path) -> Engine {
    let from = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/stores").join(store);
    let to = data.join("store");
    std::fs::create_dir_all(&to).unwrap();
    for file in ["conf", "db"] {
        std::fs::copy(from.join(file), to.join(file)).unwrap();
    }
    let mark = from.join("newest");
    if mark.exists() {
        std::fs::copy(mark, data.join("newest")).unwrap();
    }
    let (book, recovered) = keeper::open(data, noon()).unwrap();
    assert_eq!(recovered, None, "nothing about it is damaged");
    let exports: Vec<_> = std::fs::read_dir(data.join("exports")).unwrap().collect();
    assert_eq!(exports.len(), 1, "what it was before is exported");
    Engine::new(Arc::new(book), Arc::new(Voice::new()), decide).unwrap()
}

/// What is said to these words over a copy of that store.
fn told(store: &str, texts: &[&str]) -> Vec<String> {
    let data = tempfile::tempdir().unwrap();
    let engine = engine_over(store, data.path());
    let by = Speaker {
        id: PersonId(1),
        name: "You".into(),
        username: None,
        language: Some("en-US".into()),
        admin: true,
        inside: None,
    };
    let mut said = Vec::new();
    while let Some(out) = engine.claim(|_, _| true).unwrap() {
        engine.sent(out.id, Some(1)).unwrap(); // what the terminal had not shown yet
    }
    for (nth, text) in texts.iter().enumerate() {
        let what = What::Said { text: (*text).to_owned(), addressed: true, reply_to: None, edited: false };
        engine
            .accept([Heard { room: ROOM, kind: RoomKind::Group, by: Some(by.clone()), for_group: false, what }])
            .unwrap();
        engine.work(noon()).unwrap();
        while let Some(out) = engine.claim(|_, _| true).unwrap() {
            engine.sent(out.id, Some(100 + nth as i64)).unwrap();
            said.push(out.message.html.replace('\u{202f}', " "));
        }
    }
    said
}

#[test]
fn the_plan_of_an_old_store_stands_and_its_last_change_can_be_taken_back() {
    for store in STORES {
        let said = told(store, &["/board", "/undo", "/board"]).join("\n---\n");
        assert!(
            said.contains("Dinner Thu 6:00 PM") && said.contains("14 lb") && said.contains("turkey"),
            "{store}: {said}"
        );
        assert!(said.contains("Carve") && said.contains("You"), "{store}, who carves: {said}");
        assert!(said.contains("Taken back: the new dinner hour"), "{store}: {said}");
        assert!(said.contains("Dinner Thu 5:00 PM"), "{store}: {said}");
    }
}

#[test]
fn the_bells_of_an_old_store_ring() {
    for store in STORES {
        let data = tempfile::tempdir().unwrap();
        let engine = engine_over(store, data.path());
        let mut calls = 0;
        while let Some(bell) = engine.next_bell().unwrap().filter(|bell| *bell < noon() + chrono::TimeDelta::days(10)) {
            calls += engine.ring(bell).unwrap();
        }
        assert!(calls > 8, "{store}: {calls}");
    }
}
