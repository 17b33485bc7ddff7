//! The exports, and a store damaged in every part of its files: it opens whole, or the newest export takes its place and it is said
//! what is missing.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::{Book, BookError, Changes, Loss, Row, Shelf, SledBook, UnderWay, backup, keeper, restore};
use carvetime::engine::{DecideFn, Engine};
use carvetime::room::{Heard, RoomId, RoomKind, Say, To, Turn, What};
use carvetime::words::{Text, Voice};
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use tempfile::tempdir;

const ROWS: u32 = 400;
/// Rows that come after the export.
const LATER: u32 = 12;

fn morning() -> DateTime<Utc> {
    Utc.with_ymd_and_hms(2027, 11, 25, 9, 0, 0).unwrap()
}

/// A value in the stored form: version 1, checksum, JSON.
fn value(number: u32) -> Vec<u8> {
    stored(format!("\"{}\"", "gravy ".repeat(1 + number as usize % 40)))
}

fn stored(json: String) -> Vec<u8> {
    let mut sum = crc32fast::Hasher::new();
    sum.update(&[1]);
    sum.update(json.as_bytes());
    [[1].as_slice(), &sum.finalize().to_be_bytes(), json.as_bytes()].concat()
}

fn fill(book: &SledBook) {
    for number in 0..ROWS {
        let mut changes = Changes::default();
        let shelf = [Shelf::Rooms, Shelf::People, Shelf::Outbox][number as usize % 3];
        changes.put(shelf, number.to_be_bytes(), value(number));
        changes.put(Shelf::Meta, b"next".to_vec(), stored((number + 1).to_string()));
        book.commit(&changes).unwrap();
    }
    book.sync(Loss::Power).unwrap();
}

/// Keys and values.
type Rows = BTreeMap<Vec<u8>, Vec<u8>>;

fn rows(book: &dyn Book) -> Rows {
    let shelves = [Shelf::Rooms, Shelf::People, Shelf::Outbox];
    shelves.into_iter().flat_map(|shelf| book.rows(shelf, &[], &[255; 64], 10_000).unwrap()).collect()
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap() {
        let entry = entry.unwrap();
        let target = to.join(entry.file_name());
        if entry.file_type().unwrap().is_dir() {
            copy(&entry.path(), &target)
        } else {
            std::fs::copy(entry.path(), target).unwrap();
        }
    }
}

#[test]
fn a_day_has_one_export_and_a_week_of_them_is_kept() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    fill(&book);
    for day in 0..10 {
        let now = morning() + TimeDelta::days(day);
        assert!(keeper::export_daily(&book, dir.path(), now).unwrap().is_some());
        assert!(keeper::export_daily(&book, dir.path(), now + TimeDelta::hours(5)).unwrap().is_none());
    }
    let names: Vec<_> =
        std::fs::read_dir(dir.path().join("exports")).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert_eq!(names.len(), 7, "{names:?}");
    assert!(!names.iter().any(|name| name.to_string_lossy().contains("11-25")), "the oldest went: {names:?}");
}

#[test]
fn a_sound_book_is_left_alone() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    fill(&book);
    keeper::export_daily(&book, dir.path(), morning()).unwrap();
    let mut changes = Changes::default();
    changes.put(Shelf::Rooms, b"after".to_vec(), value(7));
    book.commit(&changes).unwrap();
    book.sync(Loss::Power).unwrap();
    let before = rows(&book);
    drop(book);
    let (book, recovered) = keeper::open(dir.path(), morning()).unwrap();
    assert_eq!((rows(&book), recovered), (before, None));
}

#[test]
fn damage_without_an_export_is_told_and_nothing_is_moved() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    let mut changes = Changes::default();
    changes.put(Shelf::Rooms, b"r".to_vec(), b"no stored form".to_vec());
    book.commit(&changes).unwrap();
    book.sync(Loss::Power).unwrap();
    drop(book);
    let told = keeper::open(dir.path(), morning());
    assert!(matches!(told, Err(BookError::Damaged { .. })));
    assert!(dir.path().join("store").exists());
}

#[test]
fn a_damaged_export_is_passed_over_for_the_one_before() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    fill(&book);
    let whole = rows(&book);
    keeper::export_daily(&book, dir.path(), morning()).unwrap();
    let newer = keeper::export_daily(&book, dir.path(), morning() + TimeDelta::days(1)).unwrap().unwrap();
    let mut changes = Changes::default();
    changes.put(Shelf::Rooms, b"r".to_vec(), b"no stored form".to_vec());
    book.commit(&changes).unwrap();
    drop(book);
    let text = std::fs::read(&newer).unwrap();
    std::fs::write(&newer, &text[..text.len() / 2]).unwrap();
    let (book, recovered) = keeper::open(dir.path(), morning() + TimeDelta::days(2)).unwrap();
    let recovered = recovered.unwrap();
    assert!(recovered.export.ends_with("daily-2027-11-25.jsonl"), "{recovered:?}");
    assert!(recovered.aside.join("db").exists());
    assert_eq!(rows(&book), whole);
}

/// The rows that came after the export, one commit each, and one row too large for sled's log.
fn go_on(book: &SledBook) {
    for number in ROWS..ROWS + LATER {
        let mut changes = Changes::default();
        changes.put(Shelf::Rooms, number.to_be_bytes(), value(number));
        if number == ROWS + 1 {
            changes.put(Shelf::Outbox, b"page".to_vec(), stored(format!("\"{}\"", "ab".repeat(120_000))));
        }
        changes.put(Shelf::Meta, b"next".to_vec(), stored((number + 1).to_string()));
        book.commit(&changes).unwrap();
        book.sync(Loss::Power).unwrap();
    }
}

/// A data directory as a killed process leaves it, what was in its book, and what was in its last export.
fn killed(dir: &Path) -> (Rows, Rows) {
    let home = tempdir().unwrap();
    let book = SledBook::open(home.path()).unwrap();
    fill(&book);
    let exported = rows(&book);
    keeper::export_daily(&book, home.path(), morning()).unwrap();
    drop(book);
    let book = SledBook::open(home.path()).unwrap(); // sled writes a snapshot when it opens
    go_on(&book);
    copy(home.path(), dir);
    (rows(&book), exported)
}

/// Opens the damaged book: it is whole, or the export has taken its place and it is said how much came after. Whether it is whole.
fn is_whole_or_recovered(dir: &Path, whole: &Rows, exported: &Rows, what: &str) -> bool {
    let (book, recovered) = keeper::open(dir, morning()).unwrap_or_else(|error| panic!("{what}: {error}"));
    let there = rows(&book);
    match &recovered {
        None => assert!(there == *whole, "{what}: silently {} rows of {}", there.len(), whole.len()),
        Some(recovered) => {
            assert!(there == *exported, "{what}: {} rows of {}", there.len(), exported.len());
            assert_eq!(recovered.missing, u64::from(LATER), "{what}");
            assert!(recovered.aside.exists(), "{what}");
        }
    }
    drop(book);
    let (book, again) = keeper::open(dir, morning()).unwrap();
    assert!(again.is_none() && rows(&book) == there, "{what}: it goes on from there: {again:?}");
    recovered.is_none()
}

/// Every part of every file in turn: bytes flipped, the file cut there, emptied or gone.
#[test]
fn damage_anywhere_in_the_store_is_never_a_panic_and_never_silent() {
    let sound = tempdir().unwrap();
    let (whole, exported) = killed(sound.path());
    let mut files = vec!["newest".into(), "attempt".into()];
    for folder in ["store", "store/blobs"] {
        let entries = std::fs::read_dir(sound.path().join(folder)).unwrap().map(|entry| entry.unwrap());
        let entries = entries.filter(|entry| entry.file_type().unwrap().is_file());
        files.extend(entries.map(|entry| format!("{folder}/{}", entry.file_name().to_str().unwrap())));
    }
    for kind in ["store/db", "store/conf", "store/snap.", "store/blobs/"] {
        assert!(files.iter().any(|file| file.starts_with(kind)), "{kind}: {files:?}");
    }
    let (mut same, mut recovered) = (0, 0);
    for file in &files {
        let bytes = std::fs::read(sound.path().join(file)).unwrap();
        let places = if file == "store/db" { 20 } else { 3 };
        // The end above all: there is what came last.
        let end = bytes.iter().rposition(|byte| *byte != 0).unwrap_or(0);
        let spread = (0..places).map(|place| bytes.len() * place / places);
        let last = (0..places).map(|place| end.saturating_sub(40 + place * 700));
        for at in spread.chain(last) {
            for cut in [false, true] {
                let dir = tempdir().unwrap();
                copy(sound.path(), dir.path());
                let mut bad = bytes.clone();
                if cut {
                    bad.truncate(at);
                } else {
                    let end = (at + 64).min(bad.len());
                    bad[at..end].iter_mut().for_each(|byte| *byte ^= 0x5a);
                }
                std::fs::write(dir.path().join(file), bad).unwrap();
                let what = format!("{file} {} at {at} of {}", if cut { "cut" } else { "changed" }, bytes.len());
                match is_whole_or_recovered(dir.path(), &whole, &exported, &what) {
                    true => same += 1,
                    false => recovered += 1,
                }
            }
        }
    }
    assert!(recovered > 20 && same > 20, "{recovered} recovered, {same} whole");
}

#[test]
fn a_store_that_is_gone_is_no_new_book() {
    for gone in ["store", "store/db", "store/conf", "store/blobs", "emptied"] {
        let dir = tempdir().unwrap();
        let (whole, exported) = killed(dir.path());
        let path = dir.path().join(gone);
        match gone {
            "emptied" => std::fs::write(dir.path().join("store/db"), b"").unwrap(),
            _ if path.is_dir() => std::fs::remove_dir_all(path).unwrap(),
            _ => std::fs::remove_file(path).unwrap(),
        }
        let is_whole = is_whole_or_recovered(dir.path(), &whole, &exported, gone);
        assert!(!is_whole || gone == "store/conf", "{gone}");
    }
}

/// On the first day the export is that of an empty book.
#[test]
fn what_is_lost_on_the_first_day_is_told_too() {
    let dir = tempdir().unwrap();
    let (book, _) = keeper::open(dir.path(), morning()).unwrap();
    keeper::export_daily(&book, dir.path(), morning()).unwrap();
    fill(&book);
    drop(book);
    std::fs::remove_dir_all(dir.path().join("store")).unwrap();
    let (book, recovered) = keeper::open(dir.path(), morning()).unwrap();
    assert_eq!(recovered.map(|recovered| recovered.missing), Some(u64::from(ROWS)));
    assert!(rows(&book).is_empty());
}

#[test]
fn a_damaged_newer_export_does_not_take_back_what_came_since() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    fill(&book);
    keeper::export_daily(&book, dir.path(), morning()).unwrap();
    go_on(&book);
    let newer = keeper::export_daily(&book, dir.path(), morning() + TimeDelta::days(1)).unwrap().unwrap();
    drop(book);
    let text = std::fs::read(&newer).unwrap();
    std::fs::write(&newer, &text[..text.len() / 2]).unwrap();
    std::fs::write(dir.path().join("store/db"), b"").unwrap();
    let (book, recovered) = keeper::open(dir.path(), morning() + TimeDelta::days(2)).unwrap();
    assert_eq!(recovered.map(|recovered| recovered.missing), Some(u64::from(LATER)));
    go_on(&book);
    let there = rows(&book);
    drop(book);
    let (book, recovered) = keeper::open(dir.path(), morning() + TimeDelta::days(3)).unwrap();
    assert_eq!((rows(&book), recovered), (there, None));
}

#[test]
fn the_newest_export_is_the_one_that_holds_most_whatever_the_clock_said() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    fill(&book);
    for day in 0..7 {
        keeper::export_daily(&book, dir.path(), morning() + TimeDelta::days(365 + day)).unwrap();
    }
    go_on(&book);
    let whole = rows(&book);
    let right = keeper::export_daily(&book, dir.path(), morning()).unwrap().unwrap();
    assert!(right.exists(), "what the wrong clock left is older");
    drop(book);
    std::fs::write(dir.path().join("store/db"), b"").unwrap();
    let (book, recovered) = keeper::open(dir.path(), morning()).unwrap();
    assert_eq!((rows(&book), recovered.map(|recovered| recovered.export)), (whole, Some(right)));
}

#[test]
fn a_backup_is_not_put_beside_exports_that_would_take_its_place() {
    let (dir, other) = (tempdir().unwrap(), tempdir().unwrap());
    let book = SledBook::open(dir.path()).unwrap();
    fill(&book);
    let file = other.path().join("saved");
    backup(&book, &file).unwrap();
    go_on(&book);
    keeper::export_daily(&book, dir.path(), morning()).unwrap();
    drop(book);
    std::fs::remove_dir_all(dir.path().join("store")).unwrap();
    assert!(matches!(restore(&file, dir.path()), Err(BookError::NotEmpty { .. })));
    // Without them it goes on, and nothing is said to be missing.
    std::fs::remove_dir_all(dir.path().join("exports")).unwrap();
    restore(&file, dir.path()).unwrap();
    let (book, recovered) = keeper::open(dir.path(), morning()).unwrap();
    assert_eq!((rows(&book).len(), recovered), (ROWS as usize, None));
}

#[test]
fn a_book_that_lacks_its_end_is_not_backed_up_as_if_it_were_whole() {
    let dir = tempdir().unwrap();
    killed(dir.path());
    keeper::open_sound(dir.path()).unwrap();
    std::fs::write(dir.path().join("store/db"), b"").unwrap();
    assert!(matches!(keeper::open_sound(dir.path()), Err(BookError::Damaged { .. })));
}

/// The exports of a kind.
fn exported(dir: &Path, kind: &str) -> Vec<std::path::PathBuf> {
    let entries = std::fs::read_dir(dir.join("exports")).into_iter().flatten().map(|entry| entry.unwrap().path());
    entries.filter(|path| path.file_name().unwrap().to_str().unwrap().starts_with(kind)).collect()
}

#[test]
fn before_a_program_writes_in_a_newer_form_the_book_is_exported() {
    let dir = tempdir().unwrap();
    let (book, _) = keeper::open(dir.path(), morning()).unwrap();
    assert!(exported(dir.path(), "before-update").is_empty(), "there is nothing in a new book");
    let written = book.get(Shelf::Meta, b"versions").unwrap().unwrap();
    fill(&book);
    let before = rows(&book);
    // As an earlier program left it: each version one lower.
    let mut versions: Vec<u8> = serde_json::from_slice(&written[5..]).unwrap();
    versions.iter_mut().for_each(|version| *version -= 1);
    let mut changes = Changes::default();
    changes.put(Shelf::Meta, b"versions".to_vec(), stored(serde_json::to_string(&versions).unwrap()));
    changes.put(Shelf::Meta, b"schema".to_vec(), stored("1".into()));
    book.commit(&changes).unwrap();
    drop(book);
    let schema = |book: &SledBook| book.get(Shelf::Meta, b"schema").unwrap().unwrap()[5..].to_vec();

    // Where it can't be exported, nothing is changed.
    std::fs::write(dir.path().join("exports"), b"no folder").unwrap();
    assert!(matches!(keeper::open(dir.path(), morning()), Err(BookError::Disk { .. })));
    std::fs::remove_file(dir.path().join("exports")).unwrap();

    for again in 0..2 {
        let (book, recovered) = keeper::open(dir.path(), morning()).unwrap();
        assert_eq!((rows(&book), recovered), (before.clone(), None));
        assert_eq!(book.get(Shelf::Meta, b"versions").unwrap().unwrap(), written);
        assert_eq!(
            schema(&book),
            b"2",
            "a program of the first schema would leave the stock behind: it finds it closed"
        );
        assert_eq!(exported(dir.path(), "before-update").len(), 1, "{again}");
    }
    let restored = tempdir().unwrap();
    let export = &exported(dir.path(), "before-update")[0];
    let head = std::fs::read_to_string(export).unwrap().lines().next().unwrap().to_owned();
    assert!(head.contains("\"schema\":1"), "the program it was written by can read it: {head}");
    restore(export, restored.path()).unwrap();
    let book = SledBook::open(restored.path()).unwrap();
    assert_eq!(rows(&book), before);
    assert_ne!(book.get(Shelf::Meta, b"versions").unwrap().unwrap(), written, "as it was before");
    assert_eq!(schema(&book), b"1");
}

/// A book that has its folder looked at while it is written out.
struct Watched<'a>(&'a SledBook, &'a (dyn Fn() + Sync));

impl Book for Watched<'_> {
    fn get(&self, shelf: Shelf, key: &[u8]) -> Result<Option<Vec<u8>>, BookError> {
        self.0.get(shelf, key)
    }
    fn rows(&self, shelf: Shelf, from: &[u8], below: &[u8], limit: usize) -> Result<Vec<Row>, BookError> {
        self.1();
        self.0.rows(shelf, from, below, limit)
    }
    fn commit(&self, changes: &Changes) -> Result<(), BookError> {
        self.0.commit(changes)
    }
    fn sync(&self, loss: Loss) -> Result<(), BookError> {
        self.0.sync(loss)
    }
    fn attempt(&self, under_way: UnderWay) -> Result<(), BookError> {
        self.0.attempt(under_way)
    }
    fn was_attempting(&self) -> UnderWay {
        self.0.was_attempting()
    }
}

/// Killed at any moment of it, an export is not there; what a killed one leaves is no export.
#[test]
fn an_export_is_there_when_it_is_whole_and_not_before() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    fill(&book);
    let looked = AtomicUsize::new(0);
    let look = || {
        looked.fetch_add(1, Ordering::Relaxed);
        assert!(exported(dir.path(), "daily").iter().all(|path| path.extension().unwrap() == "part"));
    };
    let file = keeper::export_daily(&Watched(&book, &look), dir.path(), morning()).unwrap().unwrap();
    assert!(looked.into_inner() > 10);
    // As one looks whose program was killed in the middle: the newest by its name, and nothing to go on from.
    let whole = std::fs::read(&file).unwrap();
    let tomorrow = morning() + TimeDelta::days(1);
    let half = dir.path().join("exports/daily-2027-11-26.jsonl.part");
    std::fs::write(&half, &whole[..whole.len() / 2]).unwrap();
    let before = rows(&book);
    drop(book);
    std::fs::remove_dir_all(dir.path().join("store")).unwrap();
    let (book, recovered) = keeper::open(dir.path(), morning()).unwrap();
    assert_eq!((rows(&book), recovered.unwrap().export), (before, file));
    let next = keeper::export_daily(&book, dir.path(), tomorrow).unwrap().unwrap();
    assert!(!half.exists() && next.exists());
}

#[test]
#[cfg(target_os = "linux")]
fn an_export_that_finds_no_room_is_said_and_leaves_nothing() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    fill(&book);
    std::fs::create_dir(dir.path().join("exports")).unwrap();
    let half = dir.path().join("exports/daily-2027-11-25.jsonl.part");
    std::os::unix::fs::symlink("/dev/full", &half).unwrap(); // writing there is refused for want of room
    let refused = keeper::export_daily(&book, dir.path(), morning()).unwrap_err();
    assert!(matches!(&refused, BookError::Disk { source, .. } if source.raw_os_error() == Some(28)), "{refused}");
    assert!(exported(dir.path(), "daily").is_empty(), "nor half of one");
    assert!(keeper::export_daily(&book, dir.path(), morning()).unwrap().is_some());
}

/// Killed at any moment of it, a restore has put nothing in the store's place, and can be done again.
#[test]
fn a_restore_cut_off_is_done_again() {
    let (from, dir) = (tempdir().unwrap(), tempdir().unwrap());
    let book = SledBook::open(from.path()).unwrap();
    fill(&book);
    let file = from.path().join("backup");
    backup(&book, &file).unwrap();
    let half = dir.path().join("store.part");
    copy(&from.path().join("store"), &half);
    std::fs::write(half.join("db"), b"half of a store").unwrap();
    // Even where the program was started in between.
    drop(keeper::open(dir.path(), morning()).unwrap());
    restore(&file, dir.path()).unwrap();
    assert!(!half.exists());
    assert_eq!(rows(&SledBook::open(dir.path()).unwrap()), rows(&book));
}

#[test]
fn what_waited_to_be_sent_when_the_export_was_made_is_sent_again_after_a_loss() {
    let dir = tempdir().unwrap();
    let decide: DecideFn = |scene, _, _| Turn {
        room: Some(scene.room.clone()),
        says: vec![Say::new(To::Room(scene.room.id), Text::new("room-unreadable"))],
        ..Turn::default()
    };
    let over = |book: SledBook| Engine::new(Arc::new(book), Arc::new(Voice::new()), decide).unwrap();
    let engine = over(keeper::open(dir.path(), morning()).unwrap().0);
    let heard = Heard { room: RoomId(7), kind: RoomKind::Private, by: None, for_group: false, what: What::Unreadable };
    engine.accept([heard]).unwrap();
    engine.work(morning()).unwrap();
    engine.export_daily(dir.path(), morning()).unwrap();
    let said = engine.claim(|_, _| true).unwrap().unwrap();
    engine.sent(said.id, Some(1)).unwrap();
    assert_eq!(engine.waiting(), 0);
    drop(engine);
    std::fs::remove_dir_all(dir.path().join("store")).unwrap();
    let (book, recovered) = keeper::open(dir.path(), morning()).unwrap();
    assert!(recovered.is_some());
    let again = over(book).claim(|_, _| true).unwrap().unwrap();
    assert_eq!(again.message.html, said.message.html);
}
