//! A clock that a test sets and another process reads: the offset from the system's clock, in a file.

use chrono::{DateTime, TimeDelta, Utc};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

/// Environment variable that names the file to the program `clocked`.
pub const CLOCK_FILE: &str = "CARVETIME_TEST_CLOCK";

/// The test's end: sets the time.
#[derive(Debug, Clone)]
pub struct TestClock {
    file: PathBuf,
    offset_ms: Arc<AtomicI64>,
}

impl TestClock {
    /// Keeps its offset in `file`; shows the system's time at first.
    pub fn new(file: PathBuf) -> Self {
        let clock = Self { file, offset_ms: Arc::default() };
        clock.write(0);
        clock
    }

    /// The file.
    pub fn file(&self) -> &Path {
        &self.file
    }

    /// The time it shows.
    pub fn now(&self) -> DateTime<Utc> {
        Utc::now() + TimeDelta::milliseconds(self.offset_ms.load(Ordering::SeqCst))
    }

    /// It shows `now`, and goes on from there.
    pub fn set(&self, now: DateTime<Utc>) {
        self.write((now - Utc::now()).num_milliseconds());
    }

    fn write(&self, offset_ms: i64) {
        self.offset_ms.store(offset_ms, Ordering::SeqCst);
        let fresh = self.file.with_extension("new");
        std::fs::write(&fresh, offset_ms.to_string()).expect("the folder is there");
        std::fs::rename(&fresh, &self.file).expect("the folder is there");
    }
}

/// The offset that stands in `file`.
pub fn offset(file: &Path) -> TimeDelta {
    let text = std::fs::read_to_string(file).unwrap_or_default();
    TimeDelta::milliseconds(text.trim().parse().unwrap_or_default())
}
