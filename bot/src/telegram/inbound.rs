//! The receiver: asks for updates, makes them durable, and only then asks for the next.

use super::hear::{self, Identity, Lookup};
use super::pace::backoff;
use super::refusal::{self, Refusal};
use super::{ServeError, Serving, blocking};
use crate::engine::{Arrival, Engine};
use crate::room::{PersonId, RoomId};
use std::collections::{BTreeSet, HashMap, HashSet};
use std::sync::Arc;
use std::time::Duration;
use teloxide::Bot;
use teloxide::payloads::GetUpdatesSetters;
use teloxide::requests::Requester;
use teloxide::types::{AllowedUpdate, ChatId, Update};
use tokio::sync::watch;
use tokio::task::JoinSet;
use tokio::time::{Instant, sleep, timeout};

/// How long the platform holds a request open when there is nothing to tell.
pub const LONG_POLL: Duration = Duration::from_secs(30);

/// After this long without updates their numbers may start anew anywhere.
const QUIET: Duration = Duration::from_secs(6 * 24 * 3600);

/// How long a list of administrators is believed.
const ADMINS_KEPT: Duration = Duration::from_secs(300);

/// How long to wait for one: a press must be answered soon.
const ADMINS_WAIT: Duration = Duration::from_secs(3);

/// How long to wait for the number of a message that is pressed on already.
const NUMBER_WAIT: Duration = Duration::from_millis(300);

/// Receives until `ending` turns true.
pub async fn run(
    serving: Serving,
    polling: Bot,
    me: Identity,
    mut ending: watch::Receiver<bool>,
) -> Result<(), ServeError> {
    let mut receiver = Receiver { serving, polling, me, admins: Arc::default(), offset: None, failures: 0 };
    tokio::select! {
        ended = receiver.run() => ended,
        _ = ending.wait_for(|ending| *ending) => Ok(()),
    }
}

/// Administrators of each group, and when that was learned.
type Admins = HashMap<RoomId, (Instant, HashSet<PersonId>)>;

struct Receiver {
    serving: Serving,
    polling: Bot,
    me: Identity,
    admins: Arc<Admins>,
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
            let mut request = self.polling.get_updates().limit(100).timeout(seconds(LONG_POLL)).allowed_updates([
                AllowedUpdate::Message,
                AllowedUpdate::EditedMessage,
                AllowedUpdate::CallbackQuery,
                AllowedUpdate::MyChatMember,
            ]);
            if let Some(offset) = self.offset {
                request = request.offset(offset);
            }
            match request.await {
                Ok(updates) => {
                    if std::mem::take(&mut self.failures) > 0 {
                        tracing::info!("the Bot API answers again");
                    }
                    if !updates.is_empty() {
                        last = Instant::now();
                        self.take(updates).await?;
                    }
                }
                Err(error) => self.failed(refusal::read(&error)).await?,
            }
        }
    }

    async fn failed(&mut self, refusal: Refusal) -> Result<(), ServeError> {
        let wait = match refusal {
            Refusal::BadToken => return Err(ServeError::BadToken),
            Refusal::Conflict => return Err(ServeError::Conflict),
            Refusal::Webhook if self.failures == 0 => {
                tracing::warn!("a webhook was set; it is removed, since updates are asked for here");
                let _ = self.polling.delete_webhook().await; // seen at the next request
                Duration::ZERO
            }
            Refusal::Wait(wait) => wait,
            _ => backoff(self.failures),
        };
        if self.failures == 0 {
            tracing::error!("the Bot API cannot be reached; trying again until it can");
        }
        self.failures = self.failures.saturating_add(1);
        sleep(wait).await;
        Ok(())
    }

    /// Makes `updates` durable; the next request then confirms them.
    async fn take(&mut self, updates: Vec<Update>) -> Result<(), ServeError> {
        let next = updates.last().map(|update| update.id.as_offset());
        self.learn_admins(&updates).await;
        self.learn_numbers(&updates).await;
        let (engine, admins, me) = (Arc::clone(&self.serving.engine), Arc::clone(&self.admins), self.me.clone());
        blocking(move || {
            let known = Known { engine: &engine, admins: &admins };
            let arrivals: Vec<Arrival> = updates.iter().filter_map(|update| hear::hear(update, &me, &known)).collect();
            engine.accept(arrivals)
        })
        .await?;
        self.offset = next.or(self.offset);
        self.serving.turns.notify_one();
        Ok(())
    }

    /// A quick finger presses before the platform has told us the number of the message: that is worth a moment.
    async fn learn_numbers(&self, updates: &[Update]) {
        let until = Instant::now() + NUMBER_WAIT;
        for (room, message) in updates.iter().filter_map(hear::needs_key) {
            let engine = &self.serving.engine;
            while engine.is_sending_to(room)
                && engine.key_of(room, message).is_ok_and(|key| key.is_none())
                && Instant::now() < until
            {
                sleep(Duration::from_millis(5)).await;
            }
        }
    }

    /// Asks who administers the groups where it matters, all at once.
    async fn learn_admins(&mut self, updates: &[Update]) {
        let wanted: BTreeSet<RoomId> = updates.iter().filter_map(hear::needs_admins).collect();
        let old = |room: &RoomId| self.admins.get(room).is_none_or(|(learned, _)| learned.elapsed() > ADMINS_KEPT);
        let mut asked = JoinSet::new();
        for room in wanted.into_iter().filter(old) {
            let bot = self.serving.bot.clone();
            asked.spawn(async move {
                let admins = timeout(ADMINS_WAIT, bot.get_chat_administrators(ChatId(room.0))).await;
                (room, admins.ok().and_then(Result::ok))
            });
        }
        let known = Arc::make_mut(&mut self.admins);
        while let Some(answer) = asked.join_next().await {
            // No answer: nobody is trusted with more than before, and the next message asks again.
            if let Ok((room, Some(members))) = answer {
                let ids = members.iter().map(|member| PersonId(member.user.id.0.cast_signed())).collect();
                known.insert(room, (Instant::now(), ids));
            }
        }
        known.retain(|_, (learned, _)| learned.elapsed() <= ADMINS_KEPT);
    }
}

fn seconds(span: Duration) -> u32 {
    u32::try_from(span.as_secs()).unwrap_or(u32::MAX)
}

struct Known<'a> {
    engine: &'a Engine,
    admins: &'a Admins,
}

impl Lookup for Known<'_> {
    fn key_of(&self, room: RoomId, message: i64) -> Option<String> {
        self.engine.key_of(room, message).ok().flatten()
    }

    fn is_admin(&self, room: RoomId, person: PersonId) -> bool {
        self.admins.get(&room).is_some_and(|(_, ids)| ids.contains(&person))
    }
}
