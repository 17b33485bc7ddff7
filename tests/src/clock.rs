//! A clock that a test sets and another process reads. It shows the system's time until it is set; then it stands still,
//! so that what is due at a minute is due at that minute on the dot.

use chrono::{DateTime, Utc};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

/// Environment variable that names the clock's file to the program `clocked`.
pub const CLOCK_FILE: &str = "CARVETIME_TEST_CLOCK";

/// Environment variable that tells the program `clocked` where updates are delivered.
pub const LISTEN: &str = "CARVETIME_TEST_LISTEN";

/// Environment variable that tells the program `clocked` where supervisors may ask. Its turns then hang on hearing [`HANG`] and panic on
/// hearing [`PANIC`], three seconds count as hanging, and the platform is asked five times a second whether it delivers.
pub const SUPERVISED: &str = "CARVETIME_TEST_SUPERVISED";

/// See [`SUPERVISED`].
pub const HANG: &str = "please hang";

/// See [`SUPERVISED`].
pub const PANIC: &str = "please panic";

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
        replace(&self.file, &now.timestamp_millis().to_string());
    }

    /// Asks the program that goes by this clock whether it is at rest, and waits for its answer as long as `runs` holds.
    pub fn is_at_rest(&self, runs: impl Fn() -> bool) -> bool {
        static QUESTION: AtomicU64 = AtomicU64::new(1);
        let question = format!("{}-{}", std::process::id(), QUESTION.fetch_add(1, Ordering::Relaxed));
        replace(&self.file.with_extension("ask"), &question);
        loop {
            let answer = std::fs::read_to_string(self.file.with_extension("rest")).unwrap_or_default();
            if let Some((of, rest)) = answer.split_once(' ')
                && of == question
            {
                return rest == "yes";
            }
            if !runs() {
                return true; // nothing moves
            }
            std::thread::sleep(Duration::from_millis(5));
        }
    }
}

/// Answers a question of [`TestClock::is_at_rest`] that is newer than `last`.
pub fn answer(file: &Path, last: &mut String, is_at_rest: impl FnOnce() -> bool) {
    let question = std::fs::read_to_string(file.with_extension("ask")).unwrap_or_default();
    if !question.is_empty() && question != *last {
        let rest = if is_at_rest() { "yes" } else { "no" };
        replace(&file.with_extension("rest"), &format!("{question} {rest}"));
        *last = question;
    }
}

fn replace(file: &Path, text: &str) {
    let fresh = file.with_extension(format!("{}.new", file.extension().and_then(|end| end.to_str()).unwrap_or("")));
    std::fs::write(&fresh, text).expect("the folder is there");
    std::fs::rename(&fresh, file).expect("the folder is there");
}

/// The time in `file`, if it was set.
pub fn read(file: &Path) -> Option<DateTime<Utc>> {
    DateTime::from_timestamp_millis(std::fs::read_to_string(file).ok()?.parse().ok()?)
}
