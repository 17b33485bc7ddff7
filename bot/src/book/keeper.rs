//! The book's keeper: opens it whatever state it is in, and exports it once a day and before a program writes in a newer form.
//!
//! A store that can't be made sense of, or lacks what was promised to be kept, is put aside, never deleted, and the newest whole export
//! takes its place; the program says so. Start at [`open`].

use super::backup::{backup, is_whole, next_of, put_back};
use super::mark::Mark;
use super::pages::{is_older, next_in, note_versions};
use super::sled_book::STORE;
use super::stock::Stock;
use super::{Book, BookError, Loss, SledBook};
use chrono::{DateTime, Utc};
use std::path::{Path, PathBuf};

/// Folder of the exports within the data directory.
const EXPORTS: &str = "exports";
/// How the names of daily exports begin, and how many are kept.
const DAILY: (&str, usize) = ("daily-", 7);
/// The same for those made before something is written in a newer form.
const BEFORE: (&str, usize) = ("before-update-", 2);

/// What became of a damaged store.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Recovered {
    /// The damaged store, put aside.
    pub aside: PathBuf,
    /// The export that took its place.
    pub export: PathBuf,
    /// How many things that were heard or said after it and promised to be kept are missing, as far as it is known.
    pub missing: u64,
}

/// Opens the book in the data directory `dir`. A damaged one is put aside and the newest whole export takes its place.
///
/// # Errors
/// As [`SledBook::open`]; [`BookError::Damaged`] only where there is no export to go on from, and then nothing was moved.
pub fn open(dir: &Path, now: DateTime<Utc>) -> Result<(SledBook, Option<Recovered>), BookError> {
    let (book, recovered) = open_whole(dir, now)?;
    bring_up_to_date(&book, dir, now)?;
    Ok((book, recovered))
}

/// When the book in the data directory `dir` was last written, by the clock of then. To be asked before it is opened.
pub fn written(dir: &Path) -> Option<DateTime<Utc>> {
    let written = std::fs::metadata(dir.join(STORE).join("db")).and_then(|file| file.modified()).ok();
    written.map(DateTime::from)
}

/// Opens the book in the data directory `dir` as it is, to be read.
///
/// # Errors
/// As [`SledBook::open`]; [`BookError::Damaged`] also where it opens and lacks something.
pub fn open_sound(dir: &Path) -> Result<SledBook, BookError> {
    let book = SledBook::open(dir)?;
    check(&book, promised(book.promised(), dir)?)?;
    Ok(book)
}

fn open_whole(dir: &Path, now: DateTime<Utc>) -> Result<(SledBook, Option<Recovered>), BookError> {
    let (damaged, promised) = match SledBook::open(dir) {
        Ok(book) => {
            let promised = promised(book.promised(), dir)?;
            match check(&book, promised) {
                Ok(()) => return Ok((book, None)),
                Err(error) => (error, promised),
            }
        }
        Err(error @ BookError::Damaged { .. }) => (error, promised(Mark::open(dir)?.newest(), dir)?),
        Err(error) => return Err(error),
    };
    let BookError::Damaged { .. } = damaged else { return Err(damaged) };
    for export in exports(dir)?.into_iter().rev() {
        match replaced(dir, &export, now) {
            Ok(aside) => {
                let missing = promised.saturating_sub(next_of(&export));
                let book = SledBook::open(dir)?;
                book.sync(Loss::Power)?; // from now on the mark speaks of this store
                return Ok((book, Some(Recovered { aside, export, missing })));
            }
            // An export may be damaged as well: the one before it, then.
            Err(BookError::BadBackup { .. }) => {}
            Err(error) => return Err(error),
        }
    }
    Err(damaged)
}

/// The next sequence number that the book must have reached: what the mark says, else the newest whole export.
fn promised(marked: Option<u64>, dir: &Path) -> Result<u64, BookError> {
    match marked {
        Some(next) => Ok(next),
        None => Ok(exports(dir)?.iter().rev().find(|export| is_whole(export)).map_or(0, |export| next_of(export))),
    }
}

/// Reads every row. A store may also open as if nothing were wrong and lack its end, or all it held: then it has not reached the number
/// that was `promised`; or rows from its middle: then it does not hold what it should.
fn check(book: &SledBook, promised: u64) -> Result<(), BookError> {
    let damaged = |detail: &str| Err(BookError::Damaged { detail: detail.into() });
    if next_in(book)? < promised {
        return damaged("its end is missing");
    }
    let counted = Stock::count(book)?;
    match book.stock() {
        Some(kept) if kept != counted => damaged("rows are missing"),
        None if book.promised().is_some() => damaged("what it should hold is missing"),
        _ => Ok(()),
    }
}

/// Exports a book that programs with older forms have written, before this one writes into it.
fn bring_up_to_date(book: &SledBook, dir: &Path, now: DateTime<Utc>) -> Result<(), BookError> {
    let (counted, older) = (book.stock().is_some(), is_older(book)?);
    if counted && !older {
        return Ok(());
    }
    if older && !book.is_blank() {
        let folder = dir.join(EXPORTS);
        std::fs::create_dir_all(&folder).map_err(|source| BookError::Disk { path: folder.clone(), source })?;
        backup(book, &free_name(&folder, &format!("{}{}", BEFORE.0, now.format("%Y-%m-%d-%H%M%S")), ".jsonl"))?;
        keep(dir, BEFORE)?;
    }
    // A change of the schema as a whole goes here: what it was before is exported.
    if !counted {
        book.keep_stock(Stock::count(book)?)?; // schema 1
    }
    note_versions(book)?;
    book.sync(Loss::Power)
}

/// Puts the store aside and the export in its place. Where the store is kept now.
fn replaced(dir: &Path, export: &Path, now: DateTime<Utc>) -> Result<PathBuf, BookError> {
    let disk = |path: &Path, source| BookError::Disk { path: path.into(), source };
    let store = dir.join(STORE);
    let aside = free_name(dir, &format!("{STORE}.damaged-{}", now.format("%Y-%m-%d-%H%M%S")), "");
    std::fs::rename(&store, &aside).map_err(|source| disk(&store, source))?;
    match put_back(export, dir) {
        Ok(_) => Ok(aside),
        Err(error) => {
            // As it was: the next export, or a person, has to look at the same store.
            std::fs::rename(&aside, &store).map_err(|source| disk(&aside, source))?;
            Err(error)
        }
    }
}

fn free_name(dir: &Path, name: &str, ending: &str) -> PathBuf {
    let numbered =
        (1..).map(|n| dir.join(if n == 1 { format!("{name}{ending}") } else { format!("{name}-{n}{ending}") }));
    numbered.into_iter().find(|path| !path.exists()).unwrap_or_else(|| dir.join(name))
}

/// The exports there are, what holds least first: the names go by a clock that may have been wrong.
pub(super) fn exports(dir: &Path) -> Result<Vec<PathBuf>, BookError> {
    let folder = dir.join(EXPORTS);
    let entries = match std::fs::read_dir(&folder) {
        Ok(entries) => entries,
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(source) => return Err(BookError::Disk { path: folder, source }),
    };
    let found = entries.flatten().map(|entry| entry.path());
    let mut found: Vec<PathBuf> = found.filter(|path| is_of(path, DAILY.0) || is_of(path, BEFORE.0)).collect();
    found.sort_by_cached_key(|path| (next_of(path), path.clone()));
    Ok(found)
}

fn is_of(path: &Path, kind: &str) -> bool {
    let name = path.file_name().and_then(|name| name.to_str()).unwrap_or_default();
    name.starts_with(kind) && name.ends_with(".jsonl")
}

/// Removes all exports of a kind but the newest.
fn keep(dir: &Path, (kind, kept): (&str, usize)) -> Result<(), BookError> {
    let all: Vec<PathBuf> = exports(dir)?.into_iter().filter(|path| is_of(path, kind)).collect();
    for old in all.iter().take(all.len().saturating_sub(kept)) {
        std::fs::remove_file(old).map_err(|source| BookError::Disk { path: old.clone(), source })?;
    }
    Ok(())
}

/// Exports the book once a day; a week of them is kept. Nobody may commit meanwhile. `None`: today's is there.
///
/// # Errors
/// As [`backup`].
pub fn export_daily(book: &dyn Book, dir: &Path, now: DateTime<Utc>) -> Result<Option<PathBuf>, BookError> {
    let folder = dir.join(EXPORTS);
    let file = folder.join(format!("{}{}.jsonl", DAILY.0, now.format("%Y-%m-%d")));
    if file.exists() {
        return Ok(None);
    }
    std::fs::create_dir_all(&folder).map_err(|source| BookError::Disk { path: folder, source })?;
    backup(book, &file)?;
    keep(dir, DAILY)?;
    Ok(Some(file))
}
