//! Books filled beforehand, through the program's own engine.

use carvetime::book::keeper;
use carvetime::engine::Engine;
use carvetime::room::state::Room;
use carvetime::room::{Bell, BellKind, Heard, RoomId, RoomKind, Scene, Speaker, Turn, What};
use carvetime::words::Voice;
use chrono::{DateTime, TimeDelta, Utc};
use std::path::Path;
use std::sync::Arc;

/// Bells in each room: about what one long plan has.
const EACH: usize = 20;

/// A book in `data` with `count` bells pending, far ahead, in rooms of 20.
pub fn bells(data: &Path, count: usize) {
    // As a server opens it: else its first start takes the book for an earlier program's, and exports it.
    let (book, _) = keeper::open(data, Utc::now()).expect("an empty folder");
    let engine = Engine::new(Arc::new(book), Arc::new(Voice::new()), far_bells).expect("an empty book");
    let rooms: Vec<Heard> = (1..=count.div_ceil(EACH) as i64).map(hello).collect();
    for batch in rooms.chunks(500) {
        engine.accept(batch.iter().cloned()).expect("the book takes it");
        engine.work(Utc::now()).expect("the book takes it");
    }
}

fn hello(id: i64) -> Heard {
    let id = RoomId(id);
    let by = Speaker {
        id: carvetime::room::PersonId(id.0),
        name: "Rosa".to_string(),
        username: None,
        language: None,
        admin: false,
        inside: None,
    };
    let what = What::Said { text: "hello".to_string(), addressed: true, reply_to: None, edited: false };
    Heard { room: id, kind: RoomKind::Private, by: Some(by), for_group: false, what }
}

fn far_bells(_: &Scene, heard: &Heard, now: DateTime<Utc>) -> Turn {
    let bell = |nth: usize| Bell {
        at: now + TimeDelta::days(300) + TimeDelta::minutes(nth as i64 * 37),
        kind: BellKind::Job { step: "water".to_string(), nth: nth as u8, call: 0 },
    };
    let bells = Some((0..EACH).map(bell).collect());
    Turn { room: Some(Room::new(heard.room, heard.kind)), bells, ..Turn::default() }
}
