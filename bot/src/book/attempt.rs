//! A note beside the store: something is being decided that no commit holds yet.
//!
//! A turn that ends the program would otherwise leave no trace, and be told and tried again for ever. One byte in a file of its own,
//! without a sync: a killed process leaves it there, and a power cut is nobody's fault.

use super::BookError;
use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};

/// Name of the file in the data directory.
const NAME: &str = "attempt";

const UNDER_WAY: &[u8] = b"1";
const AT_REST: &[u8] = b"0";

/// See the module.
pub struct Attempt {
    file: File,
    path: PathBuf,
    /// Whether the note stood there when it was opened.
    pub stood: bool,
}

impl Attempt {
    /// The note in the data directory `dir`.
    ///
    /// # Errors
    /// When it cannot be read or written.
    pub fn open(dir: &Path) -> Result<Self, BookError> {
        let path = dir.join(NAME);
        let disk = |source| BookError::Disk { path: path.clone(), source };
        let mut file = File::options().create(true).truncate(false).read(true).write(true).open(&path).map_err(disk)?;
        let mut before = Vec::new();
        file.read_to_end(&mut before).map_err(disk)?;
        let attempt = Self { file, stood: before.starts_with(UNDER_WAY), path };
        attempt.note(false)?;
        Ok(attempt)
    }

    /// Says whether it is under way.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn note(&self, under_way: bool) -> Result<(), BookError> {
        let write = |mut file: &File| -> io::Result<()> {
            file.seek(SeekFrom::Start(0))?;
            file.write_all(if under_way { UNDER_WAY } else { AT_REST })
        };
        write(&self.file).map_err(|source| BookError::Disk { path: self.path.clone(), source })
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_process_that_ends_under_way_leaves_the_note_to_the_next_one_only() {
        let dir = tempfile::tempdir().unwrap();
        let first = Attempt::open(dir.path()).unwrap();
        first.note(true).unwrap();
        drop(first);
        assert!(Attempt::open(dir.path()).unwrap().stood);
        let third = Attempt::open(dir.path()).unwrap();
        assert!(!third.stood);
        third.note(true).unwrap();
        third.note(false).unwrap();
        drop(third);
        assert!(!Attempt::open(dir.path()).unwrap().stood);
    }
}
