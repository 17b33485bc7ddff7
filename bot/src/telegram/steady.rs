//! The right time on a machine that has the wrong one.
//!
//! A small computer without a battery starts in 1970; a slip of a hand sets a year ahead. Reminders by such a clock would never come, or
//! all at once. So the platform is asked for its time (the `Date` of an HTTP answer, RFC 9110, 6.6.1) before anything rings, and again
//! whenever this machine's clock has jumped; from five minutes off, the platform's time counts.

use super::pace;
use super::pulse::{Pulse, Round};
use crate::clock::Clock;
use chrono::{DateTime, TimeDelta, Utc};
use std::sync::atomic::{AtomicI64, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};
use teloxide::Bot;

/// A clock so far off is wrong. Below that it may be the platform's cache, or the way there.
const OFF: TimeDelta = TimeDelta::minutes(5);

/// A difference to the steady clock that no drift explains.
const JUMP: TimeDelta = TimeDelta::minutes(1);

/// How long to wait for an answer.
const WAIT: Duration = Duration::from_secs(10);

/// This machine's clock, set right.
pub struct Steady {
    clock: Arc<dyn Clock>,
    /// What to take off this machine's time, in milliseconds.
    ahead: AtomicI64,
    /// Both clocks when the platform was asked last.
    asked: Mutex<Option<(Instant, DateTime<Utc>)>>,
}

impl Clock for Steady {
    fn now(&self) -> DateTime<Utc> {
        let now = self.clock.now();
        now.checked_sub_signed(TimeDelta::milliseconds(self.ahead.load(Ordering::Relaxed))).unwrap_or(now)
    }
}

impl Steady {
    /// By `clock`, until the platform says otherwise.
    pub fn new(clock: Arc<dyn Clock>) -> Self {
        Self { clock, ahead: AtomicI64::new(0), asked: Mutex::new(None) }
    }

    /// Whether the clock was set, or the machine slept, since the platform was asked; or it was never asked.
    pub fn jumped(&self) -> bool {
        let asked = *self.asked.lock().unwrap_or_else(PoisonError::into_inner);
        asked.is_none_or(|(steady, wall)| differ(steady.elapsed(), self.clock.now() - wall))
    }

    /// Asks the platform until it answers.
    pub async fn ask(&self, bot: &Bot, pulse: &Pulse) {
        let mut failures = 0;
        let (steady, wall, theirs) = loop {
            pulse.beat(Round::Turns); // it is well, and waits
            let (began, before) = (Instant::now(), self.clock.now());
            match bot.client().head(bot.api_url()).timeout(WAIT).send().await {
                Ok(answer) => {
                    let date = answer.headers().get("date").and_then(|date| date.to_str().ok()).and_then(read);
                    let (steady, wall) = (Instant::now(), self.clock.now());
                    // Set while the question was under way: then the two times say nothing about each other.
                    if !differ(steady - began, wall - before) {
                        break (steady, wall, date);
                    }
                }
                Err(_) => {
                    pulse.reachable(false);
                    pulse.rest(Round::Turns, pace::backoff(failures)).await;
                    failures = failures.saturating_add(1);
                }
            }
        };
        *self.asked.lock().unwrap_or_else(PoisonError::into_inner) = Some((steady, wall));
        let ahead = theirs.map_or(TimeDelta::zero(), |theirs| wall - theirs);
        pulse.clock_off(ahead);
        let ahead = if ahead.abs() >= OFF { ahead } else { TimeDelta::zero() };
        let before = self.ahead.swap(ahead.num_milliseconds(), Ordering::Relaxed);
        if ahead != TimeDelta::zero() && (before - ahead.num_milliseconds()).abs() > JUMP.num_milliseconds() {
            tracing::error!(
                minutes_ahead = ahead.num_minutes(),
                "this machine's clock is wrong; the platform's time counts until it is set"
            );
        }
    }
}

/// Whether a span by this machine's clock is not the span that passed.
fn differ(passed: Duration, by_clock: TimeDelta) -> bool {
    (by_clock - TimeDelta::from_std(passed).unwrap_or(TimeDelta::MAX)).abs() > JUMP
}

fn read(date: &str) -> Option<DateTime<Utc>> {
    DateTime::parse_from_rfc2822(date).ok().map(|date| date.to_utc())
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[tokio::test]
    async fn whoever_waits_for_the_time_is_not_taken_for_hanging() {
        let steady = Steady::new(Arc::new(|| Utc::now() + TimeDelta::hours(1)));
        let pulse = Pulse::long_ago();
        assert_eq!(pulse.stuck().map(|(round, _)| round), Some(Round::Turns));
        let nobody = Bot::new("42:nobody").set_api_url("http://127.0.0.1:9".parse().unwrap());
        let asking = tokio::time::timeout(Duration::from_millis(100), steady.ask(&nobody, &pulse));
        assert!(asking.await.is_err(), "nobody answers there");
        assert_eq!(pulse.stuck().map(|(round, _)| round), Some(Round::Outbound));
    }

    #[test]
    fn the_date_of_the_specification_s_example_is_read() {
        // RFC 9110, section 5.6.7.
        assert_eq!(read("Sun, 06 Nov 1994 08:49:37 GMT").unwrap().timestamp(), 784_111_777);
        assert_eq!(read("yesterday"), None);
    }

    #[test]
    fn a_clock_that_is_set_has_jumped_and_one_that_goes_has_not() {
        let shown = Arc::new(Mutex::new(Utc::now()));
        let clock = Arc::clone(&shown);
        let steady = Steady::new(Arc::new(move || *clock.lock().unwrap()));
        assert!(steady.jumped(), "it was never compared");
        *steady.asked.lock().unwrap() = Some((Instant::now(), *shown.lock().unwrap()));
        assert!(!steady.jumped());
        *shown.lock().unwrap() += TimeDelta::days(365);
        assert!(steady.jumped());
    }
}
