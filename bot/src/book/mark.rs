//! A mark beside the store: the number of the newest thing that was made durable.
//!
//! A store may lose its end, or all it held, and open as if nothing were wrong; the mark knows better. It is written after each sync of
//! the store and without one of its own, so it never runs ahead and costs the disk nothing: a killed process leaves it as it was
//! written, a power cut may leave an older one. Closing the book and every start sync it.

use super::BookError;
use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// Name of the file in the data directory.
const NAME: &str = "newest";

/// See the module.
pub struct Mark {
    file: File,
    path: PathBuf,
    newest: Mutex<Option<u64>>,
}

impl Mark {
    /// The mark in the data directory `dir`, made if need be. One that can't be read counts as none: it says nothing about the store.
    ///
    /// # Errors
    /// When the disk refuses.
    pub fn open(dir: &Path) -> Result<Self, BookError> {
        let path = dir.join(NAME);
        let disk = |source| BookError::Disk { path: path.clone(), source };
        let mut file = File::options().create(true).truncate(false).read(true).write(true).open(&path).map_err(disk)?;
        let mut text = Vec::new();
        file.read_to_end(&mut text).map_err(disk)?;
        file.sync_all().map_err(disk)?;
        Ok(Self { file, path, newest: Mutex::new(read(&text)) })
    }

    /// The next number at the time of the last promise; nothing where there was none.
    pub fn newest(&self) -> Option<u64> {
        *self.held()
    }

    fn held(&self) -> MutexGuard<'_, Option<u64>> {
        self.newest.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Everything below `next` is durable now.
    ///
    /// # Errors
    /// When the disk refuses.
    pub fn note(&self, next: u64) -> Result<(), BookError> {
        let mut newest = self.held();
        if newest.is_some_and(|newest| next <= newest) {
            return Ok(());
        }
        let write = |mut file: &File| -> io::Result<()> {
            file.seek(SeekFrom::Start(0))?;
            file.write_all(text(next).as_bytes())
        };
        write(&self.file).map_err(|source| BookError::Disk { path: self.path.clone(), source })?;
        *newest = Some(next);
        Ok(())
    }

    /// Takes the mark of `dir` away: another store takes the place of the one it speaks of.
    ///
    /// # Errors
    /// When the disk refuses.
    pub fn forget(dir: &Path) -> Result<(), BookError> {
        let path = dir.join(NAME);
        match std::fs::remove_file(&path) {
            Err(error) if error.kind() != io::ErrorKind::NotFound => Err(BookError::Disk { path, source: error }),
            _ => Ok(()),
        }
    }
}

impl Drop for Mark {
    fn drop(&mut self) {
        let _ = self.file.sync_data(); // the store itself is synced
    }
}

/// Always of the same length, in one sector.
fn text(next: u64) -> String {
    let number = format!("{next:020}");
    format!("{number} {:08x}\n", crc32fast::hash(number.as_bytes()))
}

fn read(bytes: &[u8]) -> Option<u64> {
    let next = std::str::from_utf8(bytes.get(..20)?).ok()?.parse().ok()?;
    (bytes == text(next).as_bytes()).then_some(next)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_mark_only_grows_and_one_that_is_damaged_says_nothing() {
        let dir = tempfile::tempdir().unwrap();
        let mark = Mark::open(dir.path()).unwrap();
        assert_eq!(mark.newest(), None);
        for next in [7, 1_000_000, 9] {
            mark.note(next).unwrap();
        }
        drop(mark);
        assert_eq!(Mark::open(dir.path()).unwrap().newest(), Some(1_000_000));
        let path = dir.path().join(NAME);
        let good = std::fs::read(&path).unwrap();
        for at in 0..good.len() {
            let mut bad = good.clone();
            bad[at] ^= 1;
            assert_eq!(read(&bad), None, "{at}");
            assert_eq!(read(&good[..at]), None, "{at}");
        }
        Mark::forget(dir.path()).unwrap();
        Mark::forget(dir.path()).unwrap();
        assert_eq!(Mark::open(dir.path()).unwrap().newest(), None);
    }
}
