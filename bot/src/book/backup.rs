//! One file with everything in the book: JSON lines, a header first, a count and a checksum last.
//!
//! Plain on purpose: it can be read without this program, and outlives a change of the store.

use super::keeper::exports;
use super::mark::Mark;
use super::pages::{BOOK_SCHEMA, NEXT, schema_of};
use super::sled_book::{STORE, lock};
use super::stored::{hex_bytes, unwrap, wrap};
use super::{Book, BookError, Changes, Loss, Shelf, SledBook};
use serde::{Deserialize, Serialize};
use std::fs::File;
use std::io::{BufRead, BufReader, BufWriter, Read, Write};
use std::path::{Path, PathBuf};

/// Version of the backup's form.
const VERSION: u32 = 1;

/// Longest line read: more than any row, pictures that wait to be sent included.
const LONGEST_LINE: u64 = 64 << 20;

/// Rows read or written at a time.
const CHUNK: usize = 1000;

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
enum Line {
    Backup { version: u32, schema: u32 },
    Row { shelf: String, key: String, version: u8, json: String },
    End { rows: u64, crc32: u32 },
}

/// Writes everything in `book` to `file`. Nobody may commit meanwhile. Returns the number of rows.
///
/// # Errors
/// [`BookError::FileExists`] rather than overwriting; [`BookError::Damaged`] when a row is; [`BookError::Disk`].
pub fn backup(book: &dyn Book, file: &Path) -> Result<u64, BookError> {
    if file.exists() {
        return Err(BookError::FileExists { file: file.into() });
    }
    let disk = |source| BookError::Disk { path: file.into(), source };
    let half = beside(file);
    let rows = write_all(book, &half).inspect_err(|_| {
        let _ = std::fs::remove_file(&half); // the first error is the one to tell
    })?;
    std::fs::rename(&half, file).map_err(disk)?;
    if let Some(dir) = file.parent().filter(|dir| !dir.as_os_str().is_empty()) {
        File::open(dir).and_then(|dir| dir.sync_all()).map_err(disk)?;
    }
    Ok(rows)
}

fn beside(file: &Path) -> PathBuf {
    let mut name = file.file_name().unwrap_or_default().to_os_string();
    name.push(".part");
    file.with_file_name(name)
}

fn write_all(book: &dyn Book, path: &Path) -> Result<u64, BookError> {
    let disk = |source| BookError::Disk { path: path.into(), source };
    let mut out = Summed { to: BufWriter::new(File::create(path).map_err(disk)?), sum: crc32fast::Hasher::new() };
    out.line(&Line::Backup { version: VERSION, schema: schema_of(book)? }).map_err(disk)?;
    let mut count = 0;
    for shelf in Shelf::ALL {
        let mut from = Vec::new();
        loop {
            let rows = book.rows(shelf, &from, &[u8::MAX; 64], CHUNK)?;
            let Some((last, _)) = rows.last() else { break };
            from = [last.as_slice(), &[0]].concat();
            for (key, value) in rows {
                let (version, json) = unwrap(&value)
                    .ok_or_else(|| BookError::Damaged { detail: format!("a row of {}", shelf.name()) })?;
                let (key, json) = (hex_bytes::encode(&key), json.to_owned());
                out.line(&Line::Row { shelf: shelf.name().to_owned(), key, version, json }).map_err(disk)?;
                count += 1;
            }
        }
    }
    let crc32 = out.sum.clone().finalize();
    out.line(&Line::End { rows: count, crc32 }).map_err(disk)?;
    let file = out.to.into_inner().map_err(|error| disk(error.into_error()))?;
    file.sync_all().map_err(disk)?;
    Ok(count)
}

struct Summed<W> {
    to: W,
    sum: crc32fast::Hasher,
}

impl<W: Write> Summed<W> {
    fn line(&mut self, line: &Line) -> std::io::Result<()> {
        let mut text = serde_json::to_string(line)?;
        text.push('\n');
        self.sum.update(text.as_bytes());
        self.to.write_all(text.as_bytes())
    }
}

/// Puts the backup `file` into the data directory `dir`, which must hold nothing yet, daily exports neither: the next start would take a
/// newer one for what was lost. Returns the number of rows.
///
/// The file is checked to its end before anything is written, and the new store takes its place in one step.
///
/// # Errors
/// [`BookError::NotEmpty`], [`BookError::BadBackup`] with the line, [`BookError::Newer`], [`BookError::Locked`],
/// [`BookError::Disk`].
pub fn restore(file: &Path, dir: &Path) -> Result<u64, BookError> {
    if !exports(dir)?.is_empty() {
        return Err(BookError::NotEmpty { dir: dir.into() });
    }
    put_back(file, dir)
}

/// The same beside exports.
pub(super) fn put_back(file: &Path, dir: &Path) -> Result<u64, BookError> {
    let disk = |path: &Path, source| BookError::Disk { path: path.into(), source };
    let rows = read_all(file, &mut |_| Ok(()))?;
    let _lock = lock(dir)?;
    let store = dir.join(STORE);
    if store.exists() {
        if !SledBook::open_store(&store)?.is_blank() {
            return Err(BookError::NotEmpty { dir: dir.into() });
        }
        std::fs::remove_dir_all(&store).map_err(|source| disk(&store, source))?;
    }
    let half = dir.join("store.part");
    if half.exists() {
        std::fs::remove_dir_all(&half).map_err(|source| disk(&half, source))?;
    }
    let book = SledBook::open_store(&half)?;
    read_all(file, &mut |changes| book.commit(changes))?;
    book.sync(Loss::Power)?;
    drop(book);
    Mark::forget(dir)?; // it speaks of another store
    std::fs::rename(&half, &store).map_err(|source| disk(&store, source))?;
    File::open(dir).and_then(|dir| dir.sync_all()).map_err(|source| disk(dir, source))?;
    Ok(rows)
}

/// The next sequence number of the book that was backed up; 0 where the file doesn't tell.
pub(super) fn next_of(file: &Path) -> u64 {
    let Ok(file) = File::open(file) else { return 0 };
    let key = hex_bytes::encode(NEXT);
    let lines = BufReader::new(file).lines().map_while(Result::ok).skip(1);
    // The shelf it stands on is the first in the file.
    let rows = lines.map_while(|line| match serde_json::from_str(&line) {
        Ok(Line::Row { shelf, key, json, .. }) if shelf == Shelf::Meta.name() => Some((key, json)),
        _ => None,
    });
    rows.filter(|(found, _)| *found == key).find_map(|(_, json)| json.parse().ok()).unwrap_or(0)
}

/// Whether the file is a backup to its end.
pub(super) fn is_whole(file: &Path) -> bool {
    read_all(file, &mut |_| Ok(())).is_ok()
}

/// Reads a backup to its end, handing over its rows in chunks.
fn read_all(file: &Path, take: &mut dyn FnMut(&Changes) -> Result<(), BookError>) -> Result<u64, BookError> {
    let disk = |source| BookError::Disk { path: file.into(), source };
    let mut reader = BufReader::new(File::open(file).map_err(disk)?);
    let (mut number, mut count, mut waiting) = (0, 0, 0);
    let mut sum = crc32fast::Hasher::new();
    let mut changes = Changes::default();
    let mut bytes = Vec::new();
    loop {
        bytes.clear();
        number += 1;
        let bad = |detail| BookError::BadBackup { file: file.into(), line: number, detail };
        if reader.by_ref().take(LONGEST_LINE).read_until(b'\n', &mut bytes).map_err(disk)? == 0 {
            return Err(bad("it ends early"));
        }
        let line = serde_json::from_slice(&bytes).map_err(|_| bad("not a line of a backup"))?;
        match (number, line) {
            (1, Line::Backup { version, schema }) if version > VERSION || schema > BOOK_SCHEMA => {
                return Err(BookError::Newer { found: version.max(schema), known: VERSION.max(BOOK_SCHEMA) });
            }
            (1, Line::Backup { .. }) => {}
            (1, _) => return Err(bad("not a backup")),
            (_, Line::Backup { .. }) => return Err(bad("a second header")),
            (_, Line::Row { shelf, key, version, json }) => {
                let shelf = Shelf::from_name(&shelf).ok_or_else(|| bad("an unknown shelf"))?;
                let key = hex_bytes::decode(&key).ok_or_else(|| bad("an unreadable key"))?;
                changes.put(shelf, key, wrap(version, &json));
                count += 1;
                waiting += 1;
            }
            (_, Line::End { rows, crc32 }) => {
                if rows != count || crc32 != sum.clone().finalize() {
                    return Err(bad("the checksum does not fit"));
                }
                if !reader.fill_buf().map_err(disk)?.is_empty() {
                    return Err(bad("more after the end"));
                }
                take(&changes)?;
                return Ok(count);
            }
        }
        sum.update(&bytes);
        if waiting == CHUNK {
            take(&std::mem::take(&mut changes))?;
            waiting = 0;
        }
    }
}
