//! The sender: drains the outbox within the platform's limits and reports what became of each message.

use super::pace::Pace;
use super::pulse::Round;
use super::refusal::Refusal;
use super::send::{self, deliver};
use super::{ServeError, Serving, blocking};
use crate::clock::Clock;
use crate::engine::{Failure, Outgoing};
use crate::room::{How, LINK, RoomId, To};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;
use tokio::sync::watch;
use tokio::task::JoinSet;
use tokio::time::{Instant, sleep};

/// Calls under way at a time, each in another chat.
const AT_ONCE: usize = 16;

/// How often chats that must wait are looked at again.
const LOOK_AGAIN: Duration = Duration::from_millis(50);

/// How long it rests at most, so that others see that it lives.
const REST: Duration = Duration::from_secs(30);

/// How long a shutdown waits for the outbox.
const LAST_CALL: Duration = Duration::from_secs(5);

type Delivered = (Outgoing, Result<send::Delivered, Refusal>);

/// Sends as the bot called `home` until `ending` turns true, then what can go within [`LAST_CALL`].
pub async fn run(
    serving: Serving,
    home: String,
    pace: Pace,
    mut ending: watch::Receiver<bool>,
) -> Result<(), ServeError> {
    let sender = Sender { serving, home, pace: Arc::new(Mutex::new(pace)) };
    let mut tasks: JoinSet<Delivered> = JoinSet::new();
    let mut deadline = None;
    loop {
        sender.serving.pulse.beat(Round::Outbound);
        sender.fill(&mut tasks).await?;
        let waiting = sender.serving.engine.waiting();
        if deadline.is_some_and(|deadline| waiting == 0 || Instant::now() >= deadline) {
            return Ok(()); // what is under way stays in the outbox
        }
        tokio::select! {
            Some(done) = tasks.join_next() => match done {
                Ok(done) => sender.report(done).await?,
                Err(_) => tracing::error!("sending a message ended in a panic; it stays in the outbox"),
            },
            () = sender.serving.outbound.notified() => {}
            () = sleep(LOOK_AGAIN), if deadline.is_some() || waiting > tasks.len() => {}
            () = sleep(REST) => {}
            () = until_true(&mut ending), if deadline.is_none() => deadline = Some(Instant::now() + LAST_CALL),
        }
    }
}

/// The name of a board; a chat with two birds has two.
fn is_board(key: &str) -> bool {
    key == "board" || key.starts_with("board@")
}

/// Buttons that open the private chat get their address.
fn lead_home(out: &mut Outgoing, home: &str) {
    for key in out.message.buttons.iter_mut().flatten() {
        if let Some(payload) = key.data.strip_prefix(LINK) {
            key.data = format!("https://t.me/{home}?start={payload}");
        }
    }
}

async fn until_true(ending: &mut watch::Receiver<bool>) {
    let _ = ending.wait_for(|ending| *ending).await; // the other end is gone: that is an ending too
}

struct Sender {
    serving: Serving,
    home: String,
    pace: Arc<Mutex<Pace>>,
}

impl Sender {
    fn pace(&self) -> MutexGuard<'_, Pace> {
        self.pace.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Starts as many deliveries as may go now.
    async fn fill(&self, tasks: &mut JoinSet<Delivered>) -> Result<(), ServeError> {
        while tasks.len() < AT_ONCE && !self.pace().is_down() {
            let (engine, pace) = (Arc::clone(&self.serving.engine), Arc::clone(&self.pace));
            let claim = move || {
                let pace = pace.lock().unwrap_or_else(PoisonError::into_inner);
                engine.claim(|room, board| pace.may(room, board))
            };
            let Some(mut out) = blocking(claim).await? else { break };
            lead_home(&mut out, &self.home);
            if let Some(chat) = out.message.chat().filter(|_| out.message.key.as_deref().is_some_and(is_board)) {
                self.pace().board(chat);
            }
            let bot = self.serving.bot.clone();
            let overall = self.pace().overall();
            tasks.spawn(async move {
                if !matches!(out.message.to, To::Press(_)) {
                    overall.until_ready().await;
                }
                let done = deliver(&bot, &out).await;
                (out, done)
            });
        }
        Ok(())
    }

    async fn report(&self, (out, done): Delivered) -> Result<(), ServeError> {
        let chat = out.message.chat();
        let refusal = match done {
            Ok(done) => {
                self.pace().up();
                self.serving.pulse.reachable(true);
                self.sent(&out, done.number).await?;
                return match chat.filter(|_| done.not_pinned) {
                    Some(chat) => self.not_pinned(chat).await,
                    None => Ok(()),
                };
            }
            Err(Refusal::Taken(number)) => return self.sent(&out, number.or(out.shown)).await,
            Err(refusal) => refusal,
        };
        let failure = match refusal {
            Refusal::Wait(wait) => self.wait(chat, wait),
            Refusal::Down => {
                self.pace().down();
                self.serving.pulse.reachable(false);
                Failure::Later
            }
            Refusal::Migrated(to) => Failure::Migrated(to),
            Refusal::Gone => Failure::Gone,
            Refusal::Vanished if out.message.how == How::Edit && out.shown.is_some() => Failure::Vanished,
            Refusal::NoTopic if out.topic.is_some() => Failure::NoTopic,
            Refusal::BadToken => return Err(ServeError::BadToken),
            Refusal::Late => Failure::Refused,
            _ => {
                tracing::error!(?refusal, "the platform refused a message");
                Failure::Refused
            }
        };
        self.serving.pulse.message(match &failure {
            Failure::Later => "tried again",
            Failure::Gone => "chat closed",
            Failure::Refused => "refused",
            Failure::Vanished | Failure::Migrated(_) | Failure::NoTopic => "sent elsewhere",
        });
        let (engine, id, now) = (Arc::clone(&self.serving.engine), out.id, self.serving.clock.now());
        blocking(move || engine.failed(id, failure, now)).await?;
        self.serving.turns.notify_one(); // the failure may have been a turn, with bells
        Ok(())
    }

    /// Told to wait: the chat does. An answer to a press is not worth waiting.
    fn wait(&self, chat: Option<RoomId>, wait: Duration) -> Failure {
        let Some(chat) = chat else { return Failure::Refused };
        self.pace().pause(chat, wait);
        Failure::Later
    }

    async fn not_pinned(&self, chat: RoomId) -> Result<(), ServeError> {
        let (engine, now) = (Arc::clone(&self.serving.engine), self.serving.clock.now());
        blocking(move || engine.not_pinned(chat, now)).await
    }

    async fn sent(&self, out: &Outgoing, number: Option<i64>) -> Result<(), ServeError> {
        self.serving.pulse.message("sent");
        let (engine, id) = (Arc::clone(&self.serving.engine), out.id);
        blocking(move || engine.sent(id, number)).await
    }
}
