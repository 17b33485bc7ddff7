//! The wall clock, behind a seam: everything else is told the time.

use chrono::{DateTime, TimeDelta, Utc};
use std::time::Duration;

/// Longest sleep without looking at the clock again: it can be set, and the machine can have slept.
const LOOK_AGAIN: Duration = Duration::from_secs(30);

/// Tells the time.
pub trait Clock: Send + Sync {
    /// The present.
    fn now(&self) -> DateTime<Utc>;
}

/// The system's clock.
#[derive(Debug, Clone, Copy, Default)]
pub struct SystemClock;

impl Clock for SystemClock {
    fn now(&self) -> DateTime<Utc> {
        Utc::now()
    }
}

impl<F: Fn() -> DateTime<Utc> + Send + Sync> Clock for F {
    fn now(&self) -> DateTime<Utc> {
        self()
    }
}

/// How long to sleep until `due`, at most half a minute at a time.
pub fn sleep_until(due: Option<DateTime<Utc>>, now: DateTime<Utc>) -> Duration {
    let Some(due) = due else { return LOOK_AGAIN };
    let left = due - now;
    if left <= TimeDelta::zero() {
        return Duration::ZERO;
    }
    // Bells are kept to the millisecond: half of one more, lest it wake just before.
    left.to_std().map_or(LOOK_AGAIN, |left| (left + Duration::from_micros(500)).min(LOOK_AGAIN))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sleep_ends_at_the_bell_or_after_half_a_minute() {
        let now = DateTime::UNIX_EPOCH;
        let at = |seconds| Some(now + TimeDelta::seconds(seconds));
        assert_eq!(sleep_until(None, now), LOOK_AGAIN);
        assert_eq!(sleep_until(at(-5), now), Duration::ZERO);
        assert_eq!(sleep_until(at(7), now).as_secs(), 7);
        assert_eq!(sleep_until(at(86_400), now), LOOK_AGAIN);
        assert_eq!(sleep_until(Some(DateTime::<Utc>::MAX_UTC), now), LOOK_AGAIN);
    }
}
