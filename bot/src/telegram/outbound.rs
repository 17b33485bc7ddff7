//! The sender: drains the outbox within the platform's limits and reports what became of each message.

use super::pace::Pace;
use super::pulse::Round;
use super::refusal::Refusal;
use super::send::{self, deliver};
use super::{ServeError, Serving, blocking};
use crate::clock::Clock;
use crate::engine::{Failure, Outgoing};
use crate::room::{How, LINK, RoomId, To};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;
use tokio::sync::watch;
use tokio::task::{JoinError, JoinSet};
use tokio::time::{Instant, sleep, timeout_at};

/// Calls under way at a time, each in another chat.
const AT_ONCE: usize = 64;

/// How many of them may wait for the limit over all chats: what is claimed, nothing more urgent overtakes.
const HELD_BACK: usize = 16;

/// How long a delivery that ended waits for others to be reported with, if any are under way.
const MOMENT: Duration = Duration::from_millis(2);

/// Deliveries reported together at most.
const SHARED: usize = 32;

/// How often chats that must wait are looked at again.
const LOOK_AGAIN: Duration = Duration::from_millis(50);

/// How long it rests at most, so that others see that it lives.
const REST: Duration = Duration::from_secs(30);

type Delivered = (Outgoing, Result<send::Delivered, Refusal>);

/// Sends as the bot called `home` until `ending` names a time, then what can go until then.
pub async fn run(
    serving: Serving,
    home: String,
    pace: Pace,
    mut ending: watch::Receiver<Option<Instant>>,
) -> Result<(), ServeError> {
    let sender = Sender { serving, held_back: Arc::default(), home, pace: Arc::new(Mutex::new(pace)) };
    let mut tasks: JoinSet<Delivered> = JoinSet::new();
    let mut ended = Vec::new();
    let mut deadline = None;
    loop {
        sender.serving.pulse.beat(Round::Outbound);
        let (waiting, more) = sender.go_on(std::mem::take(&mut ended), &mut tasks).await?;
        if deadline.is_some_and(|deadline| waiting == 0 || Instant::now() >= deadline) {
            return Ok(()); // what is under way stays in the outbox
        }
        if more {
            continue; // nothing holds the next ones back
        }
        tokio::select! {
            Some(first) = tasks.join_next() => {
                ended.push(first);
                gather(&mut tasks, &mut ended).await;
            }
            () = sender.serving.outbound.notified() => {}
            () = sleep(LOOK_AGAIN), if deadline.is_some() || waiting > tasks.len() => {}
            () = sleep(REST) => {}
            () = until_set(&mut ending), if deadline.is_none() => deadline = Some(ending.borrow().unwrap_or_else(Instant::now)),
        }
    }
}

/// Adds to those that ended the ones that end at about the same time: they share one write.
async fn gather(tasks: &mut JoinSet<Delivered>, ended: &mut Vec<Result<Delivered, JoinError>>) {
    let until = Instant::now() + MOMENT;
    while ended.len() < SHARED
        && let Ok(Some(next)) = timeout_at(until, tasks.join_next()).await
    {
        ended.push(next);
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

async fn until_set(ending: &mut watch::Receiver<Option<Instant>>) {
    let _ = ending.wait_for(Option::is_some).await; // the other end is gone: that is an ending too
}

struct Sender {
    serving: Serving,
    /// Calls that wait for the limit over all chats.
    held_back: Arc<AtomicUsize>,
    home: String,
    pace: Arc<Mutex<Pace>>,
}

impl Sender {
    fn pace(&self) -> MutexGuard<'_, Pace> {
        self.pace.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Reports the deliveries that ended, and starts some that may go now. How many messages wait or are being sent, and whether
    /// more of them may go at once.
    async fn go_on(
        &self,
        ended: Vec<Result<Delivered, JoinError>>,
        tasks: &mut JoinSet<Delivered>,
    ) -> Result<(usize, bool), ServeError> {
        let (mut sent, mut not_pinned, mut failed) = (Vec::new(), Vec::new(), Vec::new());
        for ended in ended {
            let Ok((out, done)) = ended else {
                tracing::error!("sending a message ended in a panic; it stays in the outbox");
                continue;
            };
            match done {
                Ok(done) => {
                    self.pace().up();
                    self.serving.pulse.reachable(true);
                    sent.push((out.id, done.number));
                    not_pinned.extend(out.message.chat().filter(|_| done.not_pinned));
                }
                Err(Refusal::Taken(number)) => sent.push((out.id, number.or(out.shown))),
                Err(refusal) => failed.push((out, refusal)),
            }
        }
        sent.iter().for_each(|_| self.serving.pulse.message("sent"));
        if !failed.is_empty() {
            // First of all what must not be said again, whatever comes of the rest.
            let (engine, sent) = (Arc::clone(&self.serving.engine), std::mem::take(&mut sent));
            blocking(move || engine.all_sent(&sent)).await?;
            for (out, refusal) in failed {
                self.failed(out, refusal).await?;
            }
        }
        let most = match self.pace().is_down() {
            true => 0,
            false => (AT_ONCE - tasks.len()).min(HELD_BACK.saturating_sub(self.held_back.load(Ordering::Relaxed))),
        };
        let (engine, pace, now) = (Arc::clone(&self.serving.engine), Arc::clone(&self.pace), self.serving.clock.now());
        let (claimed, waiting) = blocking(move || {
            engine.all_sent(&sent)?;
            not_pinned.into_iter().try_for_each(|chat| engine.not_pinned(chat, now))?;
            let pace = pace.lock().unwrap_or_else(PoisonError::into_inner);
            Ok((engine.claim_up_to(most, |room, board| pace.may(room, board))?, engine.waiting()))
        })
        .await?;
        let more = most > 0 && claimed.len() == most;
        claimed.into_iter().for_each(|out| self.start(out, tasks));
        Ok((waiting, more))
    }

    /// Starts a delivery.
    fn start(&self, mut out: Outgoing, tasks: &mut JoinSet<Delivered>) {
        lead_home(&mut out, &self.home);
        if let Some(chat) = out.message.chat().filter(|_| out.message.key.as_deref().is_some_and(is_board)) {
            self.pace().board(chat);
        }
        let bot = self.serving.bot.clone();
        let (overall, held_back) = (self.pace().overall(), Arc::clone(&self.held_back));
        let waits = !matches!(out.message.to, To::Press(_)) && overall.check().is_err();
        held_back.fetch_add(usize::from(waits), Ordering::Relaxed);
        tasks.spawn(async move {
            if waits {
                overall.until_ready().await;
                held_back.fetch_sub(1, Ordering::Relaxed);
            }
            let done = deliver(&bot, &out).await;
            (out, done)
        });
    }

    /// The platform has not taken it.
    async fn failed(&self, out: Outgoing, refusal: Refusal) -> Result<(), ServeError> {
        let chat = out.message.chat();
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
}
