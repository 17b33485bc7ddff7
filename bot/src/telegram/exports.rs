//! The export of the day: once by the clock, and after a failure again and again.

use super::{ServeError, Serving, blocking};
use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use std::path::PathBuf;
use std::sync::Arc;

/// How long after a failure it is tried again.
const AGAIN: TimeDelta = TimeDelta::minutes(15);

/// See the module.
pub struct Exports {
    /// Without it there are none.
    data: Option<PathBuf>,
    /// The last day that has one.
    done: Option<NaiveDate>,
    /// When the last one failed.
    failed: Option<DateTime<Utc>>,
}

impl Exports {
    /// Into the data directory `data`.
    pub fn new(data: Option<PathBuf>) -> Self {
        Self { data, done: None, failed: None }
    }

    /// When it is to be looked after next.
    pub fn due(&self) -> Option<DateTime<Utc>> {
        self.failed.map(|failed| failed + AGAIN)
    }

    /// Exports what there is, if it is time.
    pub async fn look_after(&mut self, serving: &Serving, now: DateTime<Utc>) {
        let (today, resting) = (now.date_naive(), self.failed.is_some_and(|failed| (now - failed).abs() < AGAIN));
        let Some(data) = self.data.clone().filter(|_| self.done != Some(today) && !resting) else { return };
        let engine = Arc::clone(&serving.engine);
        let exported: Result<bool, ServeError> = blocking(move || engine.export_daily(&data, now)).await;
        match exported {
            Ok(new) => {
                (self.done, self.failed) = (Some(today), None);
                if new {
                    tracing::info!("the day's export is made");
                }
            }
            Err(error) => {
                // The day goes on without it.
                self.failed = Some(now);
                tracing::error!(%error, "the daily export failed; it is tried again in a quarter of an hour");
            }
        }
    }
}
