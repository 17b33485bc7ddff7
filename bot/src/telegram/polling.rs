//! Receiving by asking: updates are made durable, and only then the next request confirms them.

use super::greeting::complain;
use super::intake::{Intake, WANTED};
use super::pace::backoff;
use super::refusal::{self, Refusal};
use super::{SHORT, ServeError};
use std::time::Duration;
use teloxide::payloads::GetUpdatesSetters;
use teloxide::requests::Requester;
use teloxide::{Bot, RequestError};
use tokio::sync::watch;
use tokio::time::{Instant, sleep};

/// How long the platform holds a request open when there is nothing to tell.
const LONG_POLL: Duration = Duration::from_secs(30);

/// How long the client must be able to wait.
pub const LONGEST: Duration = LONG_POLL.saturating_add(SHORT);

/// After this long without updates their numbers may start anew anywhere.
const QUIET: Duration = Duration::from_secs(6 * 24 * 3600);

/// Receives with `bot`, whose client waits [`LONGEST`], until `ending` turns true.
pub async fn run(bot: Bot, intake: Intake, mut ending: watch::Receiver<bool>) -> Result<(), ServeError> {
    let mut receiver = Receiver { bot, intake, offset: None, failures: 0 };
    tokio::select! {
        ended = receiver.run() => ended,
        _ = ending.wait_for(|ending| *ending) => Ok(()),
    }
}

struct Receiver {
    bot: Bot,
    intake: Intake,
    offset: Option<i32>,
    failures: u32,
}

impl Receiver {
    async fn run(&mut self) -> Result<(), ServeError> {
        let mut last = Instant::now();
        loop {
            if last.elapsed() > QUIET {
                self.offset = None; // anything told again is known by its number
            }
            let mut request = self.bot.get_updates().limit(100).timeout(seconds(LONG_POLL)).allowed_updates(WANTED);
            if let Some(offset) = self.offset {
                request = request.offset(offset);
            }
            match request.await {
                Ok(updates) => {
                    self.intake.pulse().reachable(true);
                    if std::mem::take(&mut self.failures) > 0 {
                        tracing::info!("the Bot API answers again");
                    }
                    if !updates.is_empty() {
                        last = Instant::now();
                        let next = updates.last().map(|update| update.id.as_offset());
                        self.intake.take(updates).await?;
                        self.offset = next;
                    }
                }
                Err(error) => self.failed(&error).await?,
            }
        }
    }

    async fn failed(&mut self, error: &RequestError) -> Result<(), ServeError> {
        let wait = match refusal::read(error) {
            Refusal::BadToken => return Err(ServeError::BadToken),
            Refusal::Conflict => return Err(ServeError::Conflict),
            Refusal::Webhook if self.failures == 0 => {
                tracing::warn!("a webhook was set; it is removed, since updates are asked for here");
                let _ = self.bot.delete_webhook().await; // seen at the next request
                Duration::ZERO
            }
            Refusal::Wait(wait) => wait,
            _ => backoff(self.failures),
        };
        self.intake.pulse().reachable(false);
        if self.failures == 0 {
            complain(&self.bot, error, self.intake.now(), None);
        }
        self.failures = self.failures.saturating_add(1);
        sleep(wait).await;
        Ok(())
    }
}

fn seconds(span: Duration) -> u32 {
    u32::try_from(span.as_secs()).unwrap_or(u32::MAX)
}
