//! The book's keeper: opens it whatever state it is in, and exports it once a day.
//!
//! A store that can't be made sense of is put aside, never deleted, and the newest whole export takes its place; the program says
//! so. Start at [`open`].

use super::backup::{backup, next_of, restore};
use super::pages::next_in;
use super::sled_book::STORE;
use super::stored::unwrap;
use super::{Book, BookError, Shelf, SledBook};
use chrono::{DateTime, Utc};
use std::path::{Path, PathBuf};

/// Folder of the daily exports within the data directory.
const EXPORTS: &str = "exports";
/// As many daily exports as are kept.
const KEPT: usize = 7;
/// Rows checked at a time.
const CHUNK: usize = 1000;

/// What became of a damaged store.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Recovered {
    /// The damaged store, put aside.
    pub aside: PathBuf,
    /// The export that took its place.
    pub export: PathBuf,
}

/// Opens the book in the data directory `dir`. A damaged one is put aside and the newest whole export takes its place.
///
/// # Errors
/// As [`SledBook::open`]; [`BookError::Damaged`] only where there is no export to go on from, and then nothing was moved.
pub fn open(dir: &Path, now: DateTime<Utc>) -> Result<(SledBook, Option<Recovered>), BookError> {
    let damaged = match SledBook::open(dir) {
        Ok(book) => match check(&book, dir) {
            Ok(()) => return Ok((book, None)),
            Err(error) => error,
        },
        Err(error) => error,
    };
    let BookError::Damaged { .. } = damaged else { return Err(damaged) };
    for export in exports(dir)?.into_iter().rev() {
        match replaced(dir, &export, now) {
            Ok(recovered) => return Ok((SledBook::open(dir)?, Some(recovered))),
            // An export may be damaged as well: the one before it, then.
            Err(BookError::BadBackup { .. }) => {}
            Err(error) => return Err(error),
        }
    }
    Err(damaged)
}

/// Reads every row but the bells, which follow from the rooms, and checks its sum. A store may also open as if nothing were wrong and
/// have lost its end, or all it held: then it is older than its own last export.
fn check(book: &dyn Book, dir: &Path) -> Result<(), BookError> {
    let exported = exports(dir)?.iter().map(|export| next_of(export)).max().unwrap_or(0);
    if next_in(book)? < exported {
        return Err(BookError::Damaged { detail: "older than its last export".into() });
    }
    for shelf in Shelf::ALL.into_iter().filter(|shelf| !matches!(shelf, Shelf::Bells | Shelf::BellsOf)) {
        let mut from = Vec::new();
        loop {
            let rows = book.rows(shelf, &from, &[u8::MAX; 64], CHUNK)?;
            let Some((last, _)) = rows.last() else { break };
            from = [last.as_slice(), &[0]].concat();
            if rows.iter().any(|(_, value)| unwrap(value).is_none()) {
                return Err(BookError::Damaged { detail: format!("a row of {}", shelf.name()) });
            }
        }
    }
    Ok(())
}

/// Puts the store aside and the export in its place.
fn replaced(dir: &Path, export: &Path, now: DateTime<Utc>) -> Result<Recovered, BookError> {
    let disk = |path: &Path, source| BookError::Disk { path: path.into(), source };
    let store = dir.join(STORE);
    let aside = free_name(dir, &format!("{STORE}.damaged-{}", now.format("%Y-%m-%d-%H%M%S")));
    std::fs::rename(&store, &aside).map_err(|source| disk(&store, source))?;
    match restore(export, dir) {
        Ok(_) => Ok(Recovered { aside, export: export.into() }),
        Err(error) => {
            // As it was: the next export, or a person, has to look at the same store.
            std::fs::rename(&aside, &store).map_err(|source| disk(&aside, source))?;
            Err(error)
        }
    }
}

fn free_name(dir: &Path, name: &str) -> PathBuf {
    let numbered = (1..).map(|n| dir.join(if n == 1 { name.to_owned() } else { format!("{name}-{n}") }));
    numbered.into_iter().find(|path| !path.exists()).unwrap_or_else(|| dir.join(name))
}

/// The daily exports there are, oldest first.
fn exports(dir: &Path) -> Result<Vec<PathBuf>, BookError> {
    let folder = dir.join(EXPORTS);
    let entries = match std::fs::read_dir(&folder) {
        Ok(entries) => entries,
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(source) => return Err(BookError::Disk { path: folder, source }),
    };
    let is_ours = |path: &PathBuf| {
        let name = path.file_name().and_then(|name| name.to_str()).unwrap_or_default();
        name.starts_with("daily-") && name.ends_with(".jsonl")
    };
    let mut found: Vec<PathBuf> = entries.flatten().map(|entry| entry.path()).filter(is_ours).collect();
    found.sort();
    Ok(found)
}

/// Exports the book once a day; a week of them is kept. Nobody may commit meanwhile. `None`: today's is there.
///
/// # Errors
/// As [`backup`].
pub fn export_daily(book: &dyn Book, dir: &Path, now: DateTime<Utc>) -> Result<Option<PathBuf>, BookError> {
    let folder = dir.join(EXPORTS);
    let file = folder.join(format!("daily-{}.jsonl", now.format("%Y-%m-%d")));
    if file.exists() {
        return Ok(None);
    }
    std::fs::create_dir_all(&folder).map_err(|source| BookError::Disk { path: folder, source })?;
    backup(book, &file)?;
    let all = exports(dir)?;
    for old in all.iter().take(all.len().saturating_sub(KEPT)) {
        std::fs::remove_file(old).map_err(|source| BookError::Disk { path: old.clone(), source })?;
    }
    Ok(Some(file))
}
