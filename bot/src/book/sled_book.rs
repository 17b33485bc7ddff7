//! All of sled (0.34).
//!
//! What sled does not do itself is done here: a lock with a clear message, removal of half-written snapshots before
//! opening (sled refuses to open over one), and an fsync (`Db::flush` hands the data to the system, which is enough for
//! a killed process and not for a power cut). Network file systems are ruled out: their locks do not hold.

use super::attempt::Attempt;
use super::pages::{BOOK_SCHEMA, check_schema};
use super::{Book, BookError, Changes, Loss, Row, Shelf};
use sled::transaction::{ConflictableTransactionError, TransactionError, Transactional, TransactionalTree};
use std::collections::BTreeMap;
use std::fs::{File, TryLockError};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::Mutex;
use std::time::Duration;

/// sled's own default is 1 GB.
const CACHE_BYTES: u64 = 32 * 1024 * 1024;

/// Folder of the store within the data directory.
pub const STORE: &str = "store";

/// A book on disk.
pub struct SledBook {
    db: sled::Db,
    trees: Vec<sled::Tree>,
    /// sled's file, to be synced; none in a temporary book.
    file: Option<File>,
    path: PathBuf,
    /// None in a temporary book.
    attempt: Option<Attempt>,
    /// Commits come one at a time: sled's transactions then never have to be repeated.
    writer: Mutex<()>,
    /// Held as long as the book is open. Declared last: released after sled is closed.
    _lock: Option<File>,
}

impl SledBook {
    /// Opens the book in the data directory `dir`, which is made if need be.
    ///
    /// # Errors
    /// [`BookError::Locked`] when another process has it, [`BookError::Damaged`] when it cannot be read,
    /// [`BookError::Newer`] when a later program wrote it, [`BookError::Disk`] otherwise.
    pub fn open(dir: &Path) -> Result<Self, BookError> {
        let lock = lock(dir)?;
        let mut book = Self::open_store(&dir.join(STORE))?;
        book._lock = Some(lock);
        book.attempt = Some(Attempt::open(dir)?);
        check_schema(&book)?;
        Ok(book)
    }

    /// A book that vanishes when it is dropped and never waits for a disk: for rehearsals and tests.
    ///
    /// # Errors
    /// When there is no place for temporary files.
    pub fn temporary() -> Result<Self, BookError> {
        let config = sled::Config::new().temporary(true).cache_capacity(CACHE_BYTES).flush_every_ms(None);
        let book = Self::with(config, PathBuf::from("temporary"))?;
        check_schema(&book)?;
        Ok(book)
    }

    /// Opens the store's own folder, without the lock.
    pub(super) fn open_store(path: &Path) -> Result<Self, BookError> {
        std::fs::create_dir_all(path).map_err(|source| BookError::Disk { path: path.into(), source })?;
        remove_half_snapshots(path)?;
        let config = sled::Config::new().path(path).cache_capacity(CACHE_BYTES);
        let mut book = Self::with_patience(&config, path)?;
        let file = path.join("db");
        book.file = Some(File::open(&file).map_err(|source| BookError::Disk { path: file, source })?);
        Ok(book)
    }

    /// Our own lock is held here already, so a store that is still locked is one just closed in this process: sled's
    /// background threads let go of the file a moment after the last handle is dropped.
    fn with_patience(config: &sled::Config, path: &Path) -> Result<Self, BookError> {
        const TRIES: u32 = 40;
        const PAUSE: Duration = Duration::from_millis(50);
        for _ in 1..TRIES {
            match Self::with(config.clone(), path.into()) {
                Err(BookError::Locked { .. }) => std::thread::sleep(PAUSE),
                outcome => return outcome,
            }
        }
        Self::with(config.clone(), path.into())
    }

    fn with(config: sled::Config, path: PathBuf) -> Result<Self, BookError> {
        // sled answers some damage with a panic instead of an error.
        let opened = catch_unwind(AssertUnwindSafe(|| {
            let db = config.open()?;
            let trees = Shelf::ALL.iter().map(|shelf| db.open_tree(shelf.name())).collect::<Result<Vec<_>, _>>()?;
            Ok((db, trees))
        }));
        let (db, trees) = match opened {
            Ok(Ok(opened)) => opened,
            Ok(Err(error)) => return Err(told(error, &path)),
            Err(_) => return Err(BookError::Damaged { detail: path.display().to_string() }),
        };
        Ok(Self { db, trees, file: None, path, attempt: None, writer: Mutex::new(()), _lock: None })
    }

    fn tree(&self, shelf: Shelf) -> &sled::Tree {
        &self.trees[shelf as usize]
    }

    /// Whether nothing was ever written to it but its schema.
    pub fn is_blank(&self) -> bool {
        Shelf::ALL.into_iter().filter(|shelf| *shelf != Shelf::Meta).all(|shelf| self.tree(shelf).is_empty())
    }
}

impl std::fmt::Debug for SledBook {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.debug_struct("SledBook").field("path", &self.path).field("schema", &BOOK_SCHEMA).finish_non_exhaustive()
    }
}

impl Book for SledBook {
    fn get(&self, shelf: Shelf, key: &[u8]) -> Result<Option<Vec<u8>>, BookError> {
        let value = self.tree(shelf).get(key).map_err(|error| told(error, &self.path))?;
        Ok(value.map(|value| value.to_vec()))
    }

    fn rows(&self, shelf: Shelf, from: &[u8], below: &[u8], limit: usize) -> Result<Vec<Row>, BookError> {
        if from >= below {
            return Ok(Vec::new()); // sled panics on a range that runs backwards
        }
        let rows = self.tree(shelf).range(from..below).take(limit);
        rows.map(|row| row.map(|(key, value)| (key.to_vec(), value.to_vec())))
            .collect::<Result<_, _>>()
            .map_err(|error| told(error, &self.path))
    }

    fn commit(&self, changes: &Changes) -> Result<(), BookError> {
        // One batch a tree, only for the trees concerned; a later change of a row replaces an earlier one.
        let mut touched: BTreeMap<Shelf, BTreeMap<&[u8], Option<&[u8]>>> = BTreeMap::new();
        for (shelf, key, value) in changes.iter() {
            touched.entry(shelf).or_default().insert(key, value);
        }
        if touched.is_empty() {
            return Ok(());
        }
        let trees: Vec<&sled::Tree> = touched.keys().map(|shelf| self.tree(*shelf)).collect();
        let apply = |views: &Vec<TransactionalTree>| -> Result<(), ConflictableTransactionError<()>> {
            for (view, rows) in views.iter().zip(touched.values()) {
                for (key, value) in rows {
                    match value {
                        Some(value) => view.insert(*key, *value)?,
                        None => view.remove(*key)?,
                    };
                }
            }
            Ok(())
        };
        let _one_at_a_time = self.writer.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        trees.as_slice().transaction(apply).map_err(|error| match error {
            TransactionError::Storage(error) => told(error, &self.path),
            TransactionError::Abort(()) => BookError::Damaged { detail: "a transaction was given up".into() },
        })
    }

    fn sync(&self, loss: Loss) -> Result<(), BookError> {
        let Some(file) = &self.file else { return Ok(()) };
        self.db.flush().map_err(|error| told(error, &self.path))?;
        if loss == Loss::Power {
            file.sync_data().map_err(|source| BookError::Disk { path: self.path.clone(), source })?;
        }
        Ok(())
    }

    fn attempt(&self, under_way: bool) -> Result<(), BookError> {
        self.attempt.as_ref().map_or(Ok(()), |attempt| attempt.note(under_way))
    }

    fn was_attempting(&self) -> bool {
        self.attempt.as_ref().is_some_and(|attempt| attempt.stood)
    }
}

fn told(error: sled::Error, path: &Path) -> BookError {
    match error {
        // sled reports a folder held by another handle as a plain I/O error.
        sled::Error::Io(source) if source.to_string().contains("could not acquire lock") => {
            BookError::Locked { dir: path.into() }
        }
        sled::Error::Io(source) => BookError::Disk { path: path.into(), source },
        other => BookError::Damaged { detail: format!("{}: {other}", path.display()) },
    }
}

/// The data directory's lock: taken before anything in it is touched.
pub(super) fn lock(dir: &Path) -> Result<File, BookError> {
    std::fs::create_dir_all(dir).map_err(|source| BookError::Disk { path: dir.into(), source })?;
    let path = dir.join("lock");
    let file = File::options().create(true).truncate(false).write(true).open(&path);
    let file = file.map_err(|source| BookError::Disk { path: path.clone(), source })?;
    match file.try_lock() {
        Ok(()) => Ok(file),
        Err(TryLockError::WouldBlock) => Err(BookError::Locked { dir: dir.into() }),
        Err(TryLockError::Error(source)) => Err(BookError::Disk { path, source }),
    }
}

/// A crash can leave `snap.*.generating` behind; sled would take it for a snapshot and refuse to open.
fn remove_half_snapshots(path: &Path) -> Result<(), BookError> {
    let disk = |source| BookError::Disk { path: path.into(), source };
    for entry in std::fs::read_dir(path).map_err(disk)? {
        let entry = entry.map_err(disk)?;
        let name = entry.file_name();
        let name = name.to_string_lossy();
        if name.starts_with("snap.") && name.ends_with(".generating") {
            std::fs::remove_file(entry.path()).map_err(disk)?;
        }
    }
    Ok(())
}
