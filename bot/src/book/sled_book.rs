//! All of sled (0.34).
//!
//! What sled does not do itself is done here: a lock with a clear message, removal of half-written snapshots before
//! opening (sled refuses to open over one), and an fsync (`Db::flush` hands the data to the system, which is enough for
//! a killed process and not for a power cut), of the files beside the log as well (`blobs`). sled drops the end of a damaged log, and
//! pages it can't read, without a word: what should be there is kept in the store (`stock`), what was synced beside it (`mark`).
//! Network file systems are ruled out: their locks do not hold.

use super::attempt::Attempt;
use super::blobs::Blobs;
use super::mark::Mark;
use super::pages::{BOOK_SCHEMA, check_schema, next_in};
use super::stock::Stock;
use super::{Book, BookError, Changes, Loss, Row, Shelf, UnderWay};
use sled::transaction::{ConflictableTransactionError, TransactionError, Transactional, TransactionalTree};
use std::collections::BTreeMap;
use std::fs::{File, TryLockError};
use std::io::ErrorKind;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::time::Duration;

/// sled's own default is 1 GB.
const CACHE_BYTES: u64 = 32 * 1024 * 1024;

/// Folder of the store within the data directory.
pub const STORE: &str = "store";

/// Name of the tree with the [`Stock`], and of its only row.
const STOCK: &str = "stock";

/// A book on disk.
pub struct SledBook {
    db: sled::Db,
    trees: Vec<sled::Tree>,
    /// What the trees should hold.
    kept_stock: sled::Tree,
    /// What has to be synced; none in a temporary book.
    files: Option<Files>,
    path: PathBuf,
    /// None in a temporary book.
    attempt: Option<Attempt>,
    /// None in a temporary book and in a store by itself.
    mark: Option<Mark>,
    /// Commits come one at a time: sled's transactions then never have to be repeated. What the trees hold; not known in a store
    /// that was kept without, until it is counted.
    stock: Mutex<Option<Stock>>,
    /// Held as long as the book is open. Declared last: released after sled is closed.
    _lock: Option<File>,
}

/// The files of a store.
struct Files {
    log: File,
    blobs: Blobs,
}

impl Files {
    /// Makes what was flushed outlive a power cut. The log last: what it speaks of is there then.
    fn sync(&self) -> std::io::Result<()> {
        self.blobs.sync()?;
        self.log.sync_data()
    }
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
        book.mark = Some(Mark::open(dir)?);
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
        let log = path.join("db");
        let log = File::open(&log).map_err(|source| BookError::Disk { path: log, source })?;
        book.files = Some(Files { log, blobs: Blobs::new(path.join("blobs")) });
        // A new store has to be found again, too.
        for dir in [Some(path), path.parent()].into_iter().flatten() {
            let synced = File::open(dir).and_then(|dir| dir.sync_all());
            synced.map_err(|source| BookError::Disk { path: dir.into(), source })?;
        }
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
            let kept_stock = db.open_tree(STOCK)?;
            let stock = match kept_stock.get(STOCK)? {
                Some(bytes) => Stock::read(&bytes),
                None => trees.iter().all(sled::Tree::is_empty).then(Stock::default),
            };
            Ok((db, trees, kept_stock, stock))
        }));
        let (db, trees, kept_stock, stock) = match opened {
            Ok(Ok(opened)) => opened,
            Ok(Err(error)) => return Err(told(error, &path)),
            Err(_) => return Err(BookError::Damaged { detail: path.display().to_string() }),
        };
        let stock = Mutex::new(stock);
        Ok(Self { db, trees, kept_stock, files: None, path, attempt: None, mark: None, stock, _lock: None })
    }

    fn tree(&self, shelf: Shelf) -> &sled::Tree {
        &self.trees[shelf as usize]
    }

    /// The next sequence number that the book must have reached, as far as the mark beside the store knows.
    pub(super) fn promised(&self) -> Option<u64> {
        self.mark.as_ref().and_then(Mark::newest)
    }

    /// What the book should hold; `None` in one that was kept without until now.
    pub(super) fn stock(&self) -> Option<Stock> {
        *self.held_stock()
    }

    /// From now on it is known that it holds this.
    pub(super) fn keep_stock(&self, counted: Stock) -> Result<(), BookError> {
        let mut stock = self.held_stock();
        self.kept_stock.insert(STOCK, counted.bytes()).map_err(|error| told(error, &self.path))?;
        *stock = Some(counted);
        Ok(())
    }

    /// Hands over every row of a shelf as it lies, without a copy.
    pub(super) fn visit(
        &self,
        shelf: Shelf,
        mut take: impl FnMut(&[u8], &[u8]) -> Result<(), BookError>,
    ) -> Result<(), BookError> {
        for row in self.tree(shelf) {
            let (key, value) = row.map_err(|error| told(error, &self.path))?;
            take(&key, &value)?;
        }
        Ok(())
    }

    fn held_stock(&self) -> MutexGuard<'_, Option<Stock>> {
        self.stock.lock().unwrap_or_else(PoisonError::into_inner)
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
        let trees: Vec<&sled::Tree> = touched.keys().map(|shelf| self.tree(*shelf)).chain([&self.kept_stock]).collect();
        let mut stock = self.held_stock();
        let before = *stock;
        let apply = |views: &Vec<TransactionalTree>| -> Result<Option<Stock>, ConflictableTransactionError<()>> {
            let mut stock = before.unwrap_or_default();
            for (view, (shelf, rows)) in views.iter().zip(&touched) {
                for (key, value) in rows {
                    let old = match value {
                        Some(value) => view.insert(*key, *value)?,
                        None => view.remove(*key)?,
                    };
                    old.iter().for_each(|old| stock.take(*shelf, key, old));
                    value.iter().for_each(|value| stock.add(*shelf, key, value));
                }
            }
            if let (Some(view), Some(_)) = (views.last(), before) {
                view.insert(STOCK, stock.bytes())?;
            }
            Ok(before.map(|_| stock))
        };
        *stock = trees.as_slice().transaction(apply).map_err(|error| match error {
            TransactionError::Storage(error) => told(error, &self.path),
            TransactionError::Abort(()) => BookError::Damaged { detail: "a transaction was given up".into() },
        })?;
        Ok(())
    }

    fn sync(&self, loss: Loss) -> Result<(), BookError> {
        let Some(files) = &self.files else { return Ok(()) };
        let next = next_in(self)?; // before the flush: the mark must not promise what a later commit brought
        self.db.flush().map_err(|error| told(error, &self.path))?;
        if loss == Loss::Process {
            return Ok(());
        }
        files.sync().map_err(|source| BookError::Disk { path: self.path.clone(), source })?;
        match &self.mark {
            Some(mark) if self.stock().is_some() => mark.note(next),
            _ => Ok(()),
        }
    }

    fn attempt(&self, under_way: UnderWay) -> Result<(), BookError> {
        self.attempt.as_ref().map_or(Ok(()), |attempt| attempt.note(under_way))
    }

    fn was_attempting(&self) -> UnderWay {
        self.attempt.as_ref().map_or(UnderWay::Nothing, |attempt| attempt.stood)
    }
}

fn told(error: sled::Error, path: &Path) -> BookError {
    match error {
        // sled reports a folder held by another handle as a plain I/O error.
        sled::Error::Io(source) if source.to_string().contains("could not acquire lock") => {
            BookError::Locked { dir: path.into() }
        }
        // Files that are gone or end too early are damage; all else is the disk's word.
        sled::Error::Io(source) if !matches!(source.kind(), ErrorKind::NotFound | ErrorKind::UnexpectedEof) => {
            BookError::Disk { path: path.into(), source }
        }
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

#[cfg(test)]
#[cfg(target_os = "linux")]
#[allow(clippy::unwrap_used, clippy::panic)]
mod tests {
    use super::*;
    use std::os::unix::fs::symlink;

    /// A device that can be opened and can't be synced stands where the file should: whoever syncs it is refused.
    const NO_SYNC: &str = "/dev/null";

    fn large() -> Changes {
        let mut changes = Changes::default();
        changes.put(Shelf::Rooms, b"large", vec![7; 300_000]);
        changes
    }

    fn blobs(dir: &Path) -> Vec<PathBuf> {
        std::fs::read_dir(dir.join(STORE).join("blobs")).unwrap().map(|entry| entry.unwrap().path()).collect()
    }

    #[test]
    fn the_log_is_synced_against_a_power_cut_and_not_against_a_kill() {
        let dir = tempfile::tempdir().unwrap();
        let mut book = SledBook::open(dir.path()).unwrap();
        book.sync(Loss::Power).unwrap();
        book.files.as_mut().unwrap().log = File::open(NO_SYNC).unwrap();
        book.sync(Loss::Process).unwrap();
        assert!(matches!(book.sync(Loss::Power), Err(BookError::Disk { .. })));
    }

    #[test]
    fn what_is_too_large_for_the_log_is_synced_too_and_once() {
        let dir = tempfile::tempdir().unwrap();
        let book = SledBook::open(dir.path()).unwrap();
        book.commit(&large()).unwrap();
        let [blob] = &blobs(dir.path())[..] else { panic!("one file: {:?}", blobs(dir.path())) };
        let elsewhere = dir.path().join("elsewhere");
        let swap = |to: &Path| {
            std::fs::rename(blob, &elsewhere).unwrap();
            symlink(to, blob).unwrap();
        };
        swap(Path::new(NO_SYNC));
        assert!(matches!(book.sync(Loss::Power), Err(BookError::Disk { .. })), "it is synced where sled has put it");
        std::fs::rename(&elsewhere, blob).unwrap();
        book.sync(Loss::Power).unwrap();
        swap(Path::new(NO_SYNC));
        book.sync(Loss::Power).unwrap();
        std::fs::rename(&elsewhere, blob).unwrap();
    }

    #[test]
    fn the_mark_follows_what_is_synced_and_never_runs_ahead() {
        let dir = tempfile::tempdir().unwrap();
        let mut book = SledBook::open(dir.path()).unwrap();
        let next = |next: u64| {
            let mut writes = super::super::Writes::default();
            writes.next_sequence(next).unwrap();
            writes.changes
        };
        book.commit(&next(5)).unwrap();
        assert_eq!(book.promised(), None);
        book.sync(Loss::Power).unwrap();
        assert_eq!(book.promised(), Some(5));
        book.commit(&next(9)).unwrap();
        book.files.as_mut().unwrap().log = File::open(NO_SYNC).unwrap();
        book.sync(Loss::Power).unwrap_err();
        assert_eq!(book.promised(), Some(5));
    }
}
