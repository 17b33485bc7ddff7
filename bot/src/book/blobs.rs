//! The files into which sled puts what is too large for its log (rooms with many readings, pictures that wait to be sent): it writes
//! them and never syncs them, so after a power cut the log would speak of files that are empty.

use std::collections::BTreeSet;
use std::ffi::OsString;
use std::fs::File;
use std::io::{self, ErrorKind};
use std::path::PathBuf;
use std::sync::{Mutex, PoisonError};

/// See the module.
pub struct Blobs {
    dir: PathBuf,
    /// Names are never given twice, and what they name never changes.
    synced: Mutex<BTreeSet<OsString>>,
}

impl Blobs {
    /// Those of the store in `dir`, none of them synced yet as far as anyone knows.
    pub fn new(dir: PathBuf) -> Self {
        Self { dir, synced: Mutex::default() }
    }

    /// Makes all of them outlive a power cut.
    pub fn sync(&self) -> io::Result<()> {
        let mut synced = self.synced.lock().unwrap_or_else(PoisonError::into_inner);
        let mut there = BTreeSet::new();
        let mut new = false;
        for entry in std::fs::read_dir(&self.dir)? {
            let entry = entry?;
            let name = entry.file_name();
            if !synced.contains(&name) {
                match File::open(entry.path()) {
                    Ok(file) => file.sync_all()?,
                    Err(error) if error.kind() == ErrorKind::NotFound => continue, // sled has done with it
                    Err(error) => return Err(error),
                }
                new = true;
            }
            there.insert(name);
        }
        if new {
            File::open(&self.dir)?.sync_all()?;
        }
        *synced = there;
        Ok(())
    }
}
