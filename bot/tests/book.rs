//! The book on disk: what it keeps over restarts, crashes, damage and a move to another machine.
//!
//! Faults tried: a process that vanishes (its folder copied as it lay), a half-written snapshot, a second process, cut and
//! changed bytes in a backup. Ruled out: a disk that lies about a finished sync.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::{Book, BookError, Changes, Loss, Shelf, SledBook, backup, restore};
use proptest::prelude::*;
use std::collections::BTreeMap;
use std::path::Path;
use tempfile::tempdir;

const END: &[u8] = &[u8::MAX; 40];

/// A value in the stored form: version 1, checksum, JSON.
fn value(number: u32) -> Vec<u8> {
    let json = number.to_string();
    let mut sum = crc32fast::Hasher::new();
    sum.update(&[1]);
    sum.update(json.as_bytes());
    [[1].as_slice(), &sum.finalize().to_be_bytes(), json.as_bytes()].concat()
}

fn key(number: u32) -> [u8; 4] {
    number.to_be_bytes()
}

fn put(book: &dyn Book, shelf: Shelf, key: &[u8], number: u32) {
    let mut changes = Changes::default();
    changes.put(shelf, key, value(number));
    book.commit(&changes).unwrap();
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap() {
        let entry = entry.unwrap();
        let target = to.join(entry.file_name());
        if entry.file_type().unwrap().is_dir() {
            copy(&entry.path(), &target);
        } else {
            std::fs::copy(entry.path(), target).unwrap();
        }
    }
}

#[test]
fn what_was_committed_is_there_after_a_restart() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    put(&book, Shelf::Rooms, b"a", 1);
    drop(book);
    let book = SledBook::open(dir.path()).unwrap();
    assert_eq!(book.get(Shelf::Rooms, b"a").unwrap(), Some(value(1)));
}

#[test]
fn a_synced_batch_is_whole_in_the_folder_of_a_process_that_vanished() {
    let (dir, after) = (tempdir().unwrap(), tempdir().unwrap());
    let book = SledBook::open(dir.path()).unwrap();
    for turn in 0..50 {
        let mut changes = Changes::default();
        changes.remove(Shelf::Inbox, key(turn));
        changes.put(Shelf::Rooms, *b"room", value(turn));
        changes.put(Shelf::Outbox, key(turn), value(turn));
        book.commit(&changes).unwrap();
    }
    book.sync(Loss::Process).unwrap();
    copy(dir.path(), after.path()); // as it lies while the first is still open
    let left = SledBook::open(after.path()).unwrap();
    assert_eq!(left.get(Shelf::Rooms, b"room").unwrap(), Some(value(49)));
    assert_eq!(left.rows(Shelf::Outbox, &[], END, 1000).unwrap().len(), 50);
}

#[test]
fn a_folder_copied_between_commits_never_holds_half_a_turn() {
    let (dir, after) = (tempdir().unwrap(), tempdir().unwrap());
    let book = SledBook::open(dir.path()).unwrap();
    for turn in 0..20 {
        let mut changes = Changes::default();
        changes.put(Shelf::Rooms, *b"room", value(turn));
        changes.put(Shelf::People, *b"person", value(turn));
        changes.put(Shelf::Outbox, key(turn), value(turn));
        book.commit(&changes).unwrap(); // not synced: it may be there or not, but not in part
        if turn % 7 == 3 {
            book.sync(Loss::Process).unwrap();
        }
        let seen = after.path().join(turn.to_string());
        copy(dir.path(), &seen);
        let left = SledBook::open(&seen).unwrap();
        let room = left.get(Shelf::Rooms, b"room").unwrap();
        assert_eq!(room, left.get(Shelf::People, b"person").unwrap());
        let said = left.rows(Shelf::Outbox, &[], END, 1000).unwrap();
        assert_eq!(room, said.last().map(|(_, value)| value.clone()));
    }
}

#[test]
fn a_half_written_snapshot_does_not_keep_the_book_shut() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    put(&book, Shelf::Rooms, b"a", 1);
    drop(book);
    let stray = dir.path().join("store/snap.000000000000FFFF.generating");
    std::fs::write(&stray, b"torn").unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    assert_eq!(book.get(Shelf::Rooms, b"a").unwrap(), Some(value(1)));
    assert!(!stray.exists());
}

#[test]
fn a_second_opening_is_told_that_the_folder_is_in_use() {
    let dir = tempdir().unwrap();
    let _first = SledBook::open(dir.path()).unwrap();
    match SledBook::open(dir.path()) {
        Err(BookError::Locked { dir: told }) => assert_eq!(told, dir.path()),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_store_that_is_no_store_is_refused_and_left_as_it_was() {
    let dir = tempdir().unwrap();
    std::fs::create_dir_all(dir.path().join("store")).unwrap();
    std::fs::write(dir.path().join("store/conf"), b"segment_size: nonsense").unwrap();
    std::fs::write(dir.path().join("store/db"), vec![0x5a; 4096]).unwrap();
    let refused = SledBook::open(dir.path()).unwrap_err();
    assert!(matches!(refused, BookError::Damaged { .. } | BookError::Disk { .. }), "{refused:?}");
    assert_eq!(std::fs::read(dir.path().join("store/db")).unwrap(), vec![0x5a; 4096]);
}

#[test]
fn a_book_of_a_later_program_is_refused_by_name() {
    let dir = tempdir().unwrap();
    let book = SledBook::open(dir.path()).unwrap();
    put(&book, Shelf::Meta, b"schema", 7);
    drop(book);
    assert!(matches!(SledBook::open(dir.path()), Err(BookError::Newer { found: 7, .. })));
}

#[test]
fn a_backup_restores_to_the_same_rows() {
    let (dir, other) = (tempdir().unwrap(), tempdir().unwrap());
    let file = other.path().join("saved");
    let book = SledBook::open(dir.path()).unwrap();
    let mut changes = Changes::default();
    for number in 0..2500_u32 {
        changes.put(Shelf::ALL[1 + number as usize % 10], key(number), value(number));
    }
    book.commit(&changes).unwrap();
    assert_eq!(backup(&book, &file).unwrap(), 2501); // with the schema
    let data = other.path().join("data");
    assert_eq!(restore(&file, &data).unwrap(), 2501);
    let restored = SledBook::open(&data).unwrap();
    for shelf in Shelf::ALL {
        let all = |book: &SledBook| book.rows(shelf, &[], END, 5000).unwrap();
        assert_eq!(all(&restored), all(&book), "{shelf:?}");
    }
}

#[test]
fn neither_a_backup_nor_a_restore_overwrites_anything() {
    let dir = tempdir().unwrap();
    let data = dir.path().join("data");
    let book = SledBook::open(&data).unwrap();
    put(&book, Shelf::Rooms, b"a", 1);
    let file = dir.path().join("saved");
    backup(&book, &file).unwrap();
    assert!(matches!(backup(&book, &file), Err(BookError::FileExists { .. })));
    assert!(matches!(restore(&file, &data), Err(BookError::Locked { .. })));
    put(&book, Shelf::Rooms, b"a", 2);
    drop(book);
    assert!(matches!(restore(&file, &data), Err(BookError::NotEmpty { .. })));
    let book = SledBook::open(&data).unwrap();
    assert_eq!(book.get(Shelf::Rooms, b"a").unwrap(), Some(value(2)));
}

#[test]
fn any_damage_to_a_backup_is_found_before_anything_is_written() {
    let dir = tempdir().unwrap();
    let book = SledBook::temporary().unwrap();
    for number in 0..3 {
        put(&book, Shelf::People, &key(number), number);
    }
    let file = dir.path().join("saved");
    backup(&book, &file).unwrap();
    let good = std::fs::read(&file).unwrap();
    let data = dir.path().join("data");
    let refused = |bad: &[u8], what: &str| {
        std::fs::write(&file, bad).unwrap();
        let told = restore(&file, &data);
        assert!(matches!(told, Err(BookError::BadBackup { .. } | BookError::Newer { .. })), "{what}: {told:?}");
        assert!(!data.join("store").exists(), "{what}");
    };
    for length in 0..good.len() - 1 {
        refused(&good[..length], &format!("cut to {length}"));
    }
    for at in 0..good.len() - 1 {
        let mut bad = good.clone();
        bad[at] ^= 4;
        refused(&bad, &format!("changed at {at}"));
    }
    let lines: Vec<&[u8]> = good.split_inclusive(|byte| *byte == b'\n').collect();
    refused(&[lines[0], lines[1], lines[3], lines[4], lines[5]].concat(), "a line left out");
    refused(&[good.as_slice(), b"{}\n"].concat(), "more after the end");
}

#[test]
fn the_first_of_a_hundred_thousand_rows_is_found_without_reading_the_rest() {
    let book = SledBook::temporary().unwrap();
    let mut changes = Changes::default();
    for bell in (0..100_000_u32).rev() {
        changes.put(Shelf::Bells, key(bell), value(bell));
    }
    book.commit(&changes).unwrap();
    let first = book.rows(Shelf::Bells, &[], END, 1).unwrap();
    assert_eq!(first, [(key(0).to_vec(), value(0))]);
}

/// What can be done with a book.
#[derive(Debug, Clone)]
enum Do {
    Commit(Vec<(usize, u8, Option<u32>)>),
    Get(usize, u8),
    Rows(usize, u8, u8, usize),
    Sync,
    Restart,
    BackupAndRestore,
}

fn doing() -> impl Strategy<Value = Do> {
    let shelf = 1..Shelf::ALL.len();
    let change = (shelf.clone(), 0..12_u8, proptest::option::weighted(0.7, any::<u32>()));
    prop_oneof![
        6 => proptest::collection::vec(change, 0..6).prop_map(Do::Commit),
        3 => (shelf.clone(), 0..12_u8).prop_map(|(shelf, key)| Do::Get(shelf, key)),
        3 => (shelf, any::<u8>(), any::<u8>(), 0..5_usize).prop_map(|(a, b, c, d)| Do::Rows(a, b, c, d)),
        1 => Just(Do::Sync),
        1 => Just(Do::Restart),
        1 => Just(Do::BackupAndRestore),
    ]
}

/// The truth: shelf and key to number.
type Model = BTreeMap<(usize, u8), u32>;

fn rows_of(model: &Model, shelf: usize, keys: std::ops::RangeInclusive<u8>) -> Vec<(Vec<u8>, Vec<u8>)> {
    let wanted = model.iter().filter(|((on, key), _)| *on == shelf && keys.contains(key));
    wanted.map(|((_, key), number)| (vec![*key], value(*number))).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn a_book_does_what_a_map_does_restarts_included(todo in proptest::collection::vec(doing(), 1..25)) {
        let dir = tempdir().unwrap();
        let mut home = dir.path().join("0");
        let mut book = SledBook::open(&home).unwrap();
        let mut model = Model::new();
        for (nth, step) in todo.into_iter().enumerate() {
            match step {
                Do::Commit(list) => {
                    let mut changes = Changes::default();
                    for (shelf, key, new) in list {
                        if let Some(number) = new {
                            changes.put(Shelf::ALL[shelf], [key], value(number));
                            model.insert((shelf, key), number);
                        } else {
                            changes.remove(Shelf::ALL[shelf], [key]);
                            model.remove(&(shelf, key));
                        }
                    }
                    book.commit(&changes).unwrap();
                }
                Do::Get(shelf, key) => {
                    let expected = model.get(&(shelf, key)).map(|number| value(*number));
                    prop_assert_eq!(book.get(Shelf::ALL[shelf], &[key]).unwrap(), expected);
                }
                Do::Rows(shelf, from, below, limit) => {
                    let rows = book.rows(Shelf::ALL[shelf], &[from], &[below], limit).unwrap();
                    let mut expected = below.checked_sub(1).map(|to| rows_of(&model, shelf, from..=to)).unwrap_or_default();
                    expected.truncate(limit);
                    prop_assert_eq!(rows, expected);
                }
                Do::Sync => book.sync(Loss::Power).unwrap(),
                Do::Restart => {
                    drop(book);
                    book = SledBook::open(&home).unwrap();
                }
                Do::BackupAndRestore => {
                    let file = dir.path().join(format!("saved-{nth}"));
                    backup(&book, &file).unwrap();
                    drop(book);
                    home = dir.path().join((nth + 1).to_string());
                    restore(&file, &home).unwrap();
                    book = SledBook::open(&home).unwrap();
                }
            }
        }
        for shelf in 1..Shelf::ALL.len() {
            let rows = book.rows(Shelf::ALL[shelf], &[], END, 1000).unwrap();
            prop_assert_eq!(rows, rows_of(&model, shelf, 0..=u8::MAX));
        }
    }
}

#[test]
fn a_file_that_is_one_endless_line_is_refused_with_bounded_memory() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("endless");
    std::fs::File::create(&file).unwrap().set_len(40 << 30).unwrap(); // holes: no disk is used
    let refused = restore(&file, &dir.path().join("data"));
    assert!(matches!(refused, Err(BookError::BadBackup { line: 1, .. })), "{refused:?}");
}
