//! A clock that a test sets and another process reads. It shows the system's time until it is set; then it stands still,
//! so that what is due at a minute is due at that minute on the dot.

use chrono::{DateTime, Utc};
use std::path::{Path, PathBuf};

/// Environment variable that names the clock's file to the program `clocked`.
pub const CLOCK_FILE: &str = "CARVETIME_TEST_CLOCK";

/// The test's end: sets the time.
#[derive(Debug, Clone)]
pub struct TestClock {
    file: PathBuf,
}

impl TestClock {
    /// Keeps its time in `file`.
    pub fn new(file: PathBuf) -> Self {
        Self { file }
    }

    /// The file.
    pub fn file(&self) -> &Path {
        &self.file
    }

    /// The time it shows.
    pub fn now(&self) -> DateTime<Utc> {
        read(&self.file).unwrap_or_else(Utc::now)
    }

    /// It stands at `now`.
    pub fn set(&self, now: DateTime<Utc>) {
        let fresh = self.file.with_extension("new");
        std::fs::write(&fresh, now.timestamp_millis().to_string()).expect("the folder is there");
        std::fs::rename(&fresh, &self.file).expect("the folder is there");
    }
}

/// The time in `file`, if it was set.
pub fn read(file: &Path) -> Option<DateTime<Utc>> {
    DateTime::from_timestamp_millis(std::fs::read_to_string(file).ok()?.parse().ok()?)
}
