//! The daily export, and a store damaged in every part of its file: it opens whole, or the export takes its place.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::{Book, BookError, Changes, Loss, Shelf, SledBook, keeper};
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use std::collections::BTreeMap;
use std::path::Path;
use tempfile::tempdir;

const ROWS: u32 = 400;

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

fn rows(book: &dyn Book) -> BTreeMap<Vec<u8>, Vec<u8>> {
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

/// Every part of the store's file in turn: bytes flipped, or the file cut there.
#[test]
fn damage_anywhere_in_the_store_is_never_a_panic_and_never_silent() {
    let sound = tempdir().unwrap();
    let book = SledBook::open(sound.path()).unwrap();
    fill(&book);
    let whole = rows(&book);
    keeper::export_daily(&book, sound.path(), morning()).unwrap();
    drop(book);
    let length = std::fs::metadata(sound.path().join("store/db")).unwrap().len() as usize;
    let (mut same, mut recovered_from) = (0, 0);
    let places = 24;
    for place in 0..places {
        for cut in [false, true] {
            let dir = tempdir().unwrap();
            copy(sound.path(), dir.path());
            let db = dir.path().join("store/db");
            let mut bytes = std::fs::read(&db).unwrap();
            let at = length * place / places;
            if cut {
                bytes.truncate(at);
            } else {
                let end = (at + 64).min(bytes.len());
                bytes[at..end].iter_mut().for_each(|byte| *byte ^= 0x5a);
            }
            std::fs::write(&db, bytes).unwrap();
            let (book, recovered) = keeper::open(dir.path(), morning()).unwrap();
            assert!(rows(&book) == whole, "place {place}, cut {cut}: {recovered:?}, {} rows", rows(&book).len());
            match recovered {
                Some(recovered) => {
                    assert!(recovered.aside.exists());
                    recovered_from += 1;
                }
                None => same += 1,
            }
        }
    }
    assert!(recovered_from > 0 && same + recovered_from == 2 * places, "{recovered_from} recovered, {same} whole");
}
