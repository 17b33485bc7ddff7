//! A note beside the store: what is going on that no commit holds yet.
//!
//! A turn that ends the program would otherwise leave no trace, and be told and tried again for ever. A few bytes in a file of their
//! own, always of the same length, so that a full disk takes them too, and without a sync: a killed process leaves them there, and a
//! power cut is nobody's fault.

use super::{BookError, UnderWay};
use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};

/// Name of the file in the data directory.
const NAME: &str = "attempt";

/// See the module.
pub struct Attempt {
    file: File,
    path: PathBuf,
    /// What stood there when it was opened.
    pub stood: UnderWay,
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
        let attempt = Self { file, stood: read(&before), path };
        attempt.note(UnderWay::Nothing)?;
        Ok(attempt)
    }

    /// Says what is under way.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn note(&self, under_way: UnderWay) -> Result<(), BookError> {
        let write = |mut file: &File| -> io::Result<()> {
            file.seek(SeekFrom::Start(0))?;
            file.write_all(text(under_way).as_bytes())
        };
        write(&self.file).map_err(|source| BookError::Disk { path: self.path.clone(), source })
    }
}

fn text(under_way: UnderWay) -> String {
    let (kind, sequence) = match under_way {
        UnderWay::Nothing => (0, 0),
        UnderWay::Hearing => (1, 0),
        UnderWay::Deciding(sequence) => (2, sequence),
    };
    format!("{kind} {sequence:020}\n")
}

/// What can't be read accuses nobody.
fn read(bytes: &[u8]) -> UnderWay {
    let number = || std::str::from_utf8(bytes.get(2..22)?).ok()?.parse().ok();
    match bytes.first() {
        Some(b'1') => UnderWay::Hearing, // all that an earlier version wrote
        Some(b'2') => number().map_or(UnderWay::Nothing, UnderWay::Deciding),
        _ => UnderWay::Nothing,
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_process_that_ends_under_way_leaves_the_note_to_the_next_one_only() {
        let dir = tempfile::tempdir().unwrap();
        for under_way in [UnderWay::Hearing, UnderWay::Deciding(0), UnderWay::Deciding(u64::MAX)] {
            let first = Attempt::open(dir.path()).unwrap();
            first.note(under_way).unwrap();
            drop(first);
            assert_eq!(Attempt::open(dir.path()).unwrap().stood, under_way);
            let third = Attempt::open(dir.path()).unwrap();
            assert_eq!(third.stood, UnderWay::Nothing);
            third.note(under_way).unwrap();
            third.note(UnderWay::Nothing).unwrap();
            drop(third);
            assert_eq!(Attempt::open(dir.path()).unwrap().stood, UnderWay::Nothing);
        }
    }

    #[test]
    fn a_note_of_an_earlier_version_or_half_a_note_is_understood() {
        assert_eq!(read(b"1"), UnderWay::Hearing);
        assert_eq!([&b"0"[..], b"", b"2 0000", b"?"].map(read), [UnderWay::Nothing; 4]);
    }
}
