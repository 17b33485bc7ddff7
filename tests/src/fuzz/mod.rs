//! Made-up input for every reader: seeds taken apart and put together wrong, from one number that repeats a case.
//!
//! No coverage guides it, so its strength is the seeds (real sentences, logs, scripts, presses, backups, updates) and their number.
//! A case fails if it panics or if what comes out of it breaks the platform's rules; in the program `fuzz`, which runs as long as it
//! is told, also if a reader takes longer than [`HANG`] for one message. `tests/fuzz.rs` runs a short round.

mod mutate;
mod targets;

pub use mutate::Chance;
pub use targets::{Run, TARGETS, Target};

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::{Duration, Instant};

/// Longest input a person can send at once, in characters.
pub const LONGEST: usize = 4096;

/// Longest time of the processor that a reader may take for one message.
pub const HANG: Duration = Duration::from_millis(50);

/// What a round of one target came to.
#[derive(Debug, Default)]
pub struct Round {
    /// Inputs tried.
    pub tried: u64,
    /// Number of each input that failed, and what happened.
    pub failed: Vec<(u64, String)>,
    /// The slowest reading, tried three times and the fastest counted; processor time where the system tells it, which
    /// Linux counts in steps of a few milliseconds: good for what is too slow, blind below that.
    pub slowest: (u64, Duration),
    /// Number of each input no longer than a message that took a reader longer than [`HANG`], and how long; measured in the same way.
    pub hung: Vec<(u64, Duration)>,
}

/// The readers of one input, each timed by itself.
#[derive(Debug, Default)]
pub struct Reads {
    /// Reading the processor's clock takes longer than reading most inputs: it is asked where the wall's has shown something.
    by_processor: bool,
    /// What the slowest took.
    slowest: Duration,
}

impl Reads {
    /// One reader reads.
    pub fn one<T>(&mut self, read: impl FnOnce() -> T) -> T {
        let began = Clock::now(self.by_processor);
        let read = read();
        self.slowest = self.slowest.max(began.elapsed());
        read
    }
}

/// Processor time of this thread as Linux tells it, else the time on the wall.
struct Clock {
    wall: Instant,
    processor: Option<Duration>,
}

impl Clock {
    fn now(by_processor: bool) -> Self {
        Self { wall: Instant::now(), processor: if by_processor { processor_time() } else { None } }
    }

    fn elapsed(&self) -> Duration {
        let processor = self.processor.and_then(|then| Some(processor_time()?.saturating_sub(then)));
        processor.unwrap_or_else(|| self.wall.elapsed())
    }
}

/// Processor time of this thread so far, where the system tells.
pub fn processor_time() -> Option<Duration> {
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").ok()?;
    Some(Duration::from_nanos(told.split(' ').next()?.parse().ok()?))
}

/// Tries the inputs from `first` on until `enough` says so of the number tried.
pub fn round(target: &Target, first: u64, mut enough: impl FnMut(u64) -> bool) -> Round {
    let mut round = Round::default();
    let mut run = (target.start)();
    while !enough(round.tried) {
        let number = first + round.tried;
        let input = target.input(number);
        let mut read = |by_processor: bool| {
            let mut reads = Reads { by_processor, ..Reads::default() };
            let done = catch_unwind(AssertUnwindSafe(|| run(&input, &mut reads)));
            (done, reads.slowest)
        };
        let (mut done, mut took) = read(false);
        if done.is_ok() && (took > round.slowest.1 || took > HANG && !target.long) {
            // It may have been the machine: by the processor's clock, where there is one.
            for _ in 0..2 {
                let (again, by_processor) = read(true);
                (done, took) = (again, took.min(by_processor));
            }
        }
        if took > HANG && !target.long {
            round.hung.push((number, took));
        }
        if took > round.slowest.1 {
            round.slowest = (number, took);
        }
        let wrong = match done {
            Ok(Ok(())) => None,
            Ok(Err(wrong)) => Some(wrong),
            Err(panic) => {
                run = (target.start)();
                let text = panic.downcast_ref::<String>().cloned();
                Some(text.or_else(|| panic.downcast_ref::<&str>().map(|text| (*text).to_owned())).unwrap_or_default())
            }
        };
        if let Some(wrong) = wrong {
            let shown: String = String::from_utf8_lossy(&input).chars().take(600).collect();
            round.failed.push((number, format!("{wrong}: {shown:?}")));
        }
        round.tried += 1;
    }
    round
}
