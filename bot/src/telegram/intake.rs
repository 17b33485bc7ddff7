//! What both ways of receiving share: an update becomes durable here, and only then may it be confirmed. It is decided on the way
//! where nothing older waits, so that the disk is waited for once.

use super::hear::{self, Identity, Lookup, Membership};
use super::patience::Verdict;
use super::pulse::Pulse;
use super::{ServeError, Serving, blocking, inline};
use crate::clock::Clock;
use crate::engine::{Arrival, Engine};
use crate::room::state::Room;
use crate::room::{PersonId, RoomId, RoomKind};
use chrono::{DateTime, Utc};
use std::collections::{BTreeSet, HashMap, HashSet};
use std::sync::Arc;
use std::time::Duration;
use teloxide::requests::Requester;
use teloxide::types::{AllowedUpdate, ChatId, Update, UserId};
use tokio::task::JoinSet;
use tokio::time::{Instant, sleep, timeout};

/// The kinds of updates asked for.
pub const WANTED: [AllowedUpdate; 5] = [
    AllowedUpdate::Message,
    AllowedUpdate::EditedMessage,
    AllowedUpdate::CallbackQuery,
    AllowedUpdate::MyChatMember,
    AllowedUpdate::InlineQuery,
];

/// How long a list of administrators is believed.
const ADMINS_KEPT: Duration = Duration::from_secs(300);

/// How long to wait for what is asked of a group: a press must be answered soon.
const ANSWER_WAIT: Duration = Duration::from_secs(3);

/// How long to wait for the number of a message that is pressed on already.
const NUMBER_WAIT: Duration = Duration::from_millis(300);

/// Administrators of each group, and when that was learned.
type Admins = HashMap<RoomId, (Instant, HashSet<PersonId>)>;

/// Whether those who follow a link are in the group it leads into.
type Inside = HashMap<(RoomId, PersonId), bool>;

/// Takes updates in.
pub struct Intake {
    serving: Serving,
    me: Identity,
    admins: Arc<Admins>,
}

impl Intake {
    /// With nothing learned yet.
    pub fn new(serving: Serving, me: Identity) -> Self {
        Self { serving, me, admins: Arc::default() }
    }

    /// What takes updates in, for those that need not wait their turn.
    pub fn serving(&self) -> Serving {
        self.serving.clone()
    }

    /// What an operator can watch.
    pub fn pulse(&self) -> &Pulse {
        &self.serving.pulse
    }

    /// The time.
    pub fn now(&self) -> DateTime<Utc> {
        self.serving.clock.now()
    }

    /// Makes `updates` durable. When this returns, they may be confirmed.
    pub async fn take(&mut self, updates: Vec<Update>) -> Result<(), ServeError> {
        let updates = inline::take(&self.serving, updates);
        let mut flooded = HashSet::new();
        let updates = self.listened_to(updates, &mut flooded);
        if updates.is_empty() {
            return Ok(());
        }
        self.learn_admins(&updates).await;
        self.learn_numbers(&updates).await;
        let inside = self.learn_inside(&updates).await;
        let (engine, admins, me) = (Arc::clone(&self.serving.engine), Arc::clone(&self.admins), self.me.clone());
        // By a clock that may be wrong nothing is decided: whoever takes the turns has it set right first.
        let now = (!self.serving.clock.jumped()).then(|| self.serving.clock.now());
        let (taken, fetch) = blocking(move || {
            let known = Known { engine: &engine, admins: &admins, inside: &inside };
            let arrivals: Vec<Arrival> = updates
                .iter()
                .filter_map(|update| {
                    let arrival = hear::hear(update, &me, &known)?;
                    if flooded.contains(&update.id.0) { hear::flooded(arrival) } else { Some(arrival) }
                })
                .collect();
            let fetch = arrivals.iter().any(|arrival| arrival.file.is_some());
            Ok((engine.hear(arrivals, now)?, fetch))
        })
        .await?;
        self.serving.pulse.updates.inc_by(taken.new as u64);
        self.serving.pulse.turns.inc_by(taken.turns as u64);
        if taken.turns > 0 {
            self.serving.outbound.notify_one();
        }
        if fetch {
            self.serving.files.notify_one();
        }
        if taken.more {
            self.serving.turns.notify_one();
        }
        Ok(())
    }

    /// What is within the limits of whoever said it; what goes beyond is left out, and `flooded` notes where that has to
    /// be said.
    fn listened_to(&self, updates: Vec<Update>, flooded: &mut HashSet<u32>) -> Vec<Update> {
        let mut heard = Vec::new();
        for update in updates {
            let verdict = hear::speech(&update).map_or(Verdict::Listen, |(person, room, file)| {
                self.serving.patience.of(PersonId(person), RoomId(room), file)
            });
            match verdict {
                Verdict::Listen => heard.push(update),
                Verdict::Refuse => {
                    flooded.insert(update.id.0);
                    heard.push(update);
                }
                Verdict::Ignore => {
                    self.serving.pulse.ignored.inc();
                }
            }
        }
        heard
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

    /// Asks whether those who follow a link, or press in public, are in the group, all at once. Nothing of it is kept: people come and
    /// go. Of a group the book does not know nothing is asked, whatever number someone makes up, nor of whom it knows to be there.
    async fn learn_inside(&self, updates: &[Update]) -> Inside {
        let wanted: BTreeSet<Membership> = updates.iter().filter_map(hear::needs_member).collect();
        let mut asked = JoinSet::new();
        for Membership { room, person, pressed } in wanted {
            let pages = self.serving.engine.pages();
            let Ok(now_at) = pages.now_at(room) else { continue };
            let open = |known: Room| known.kind == RoomKind::Group && !(pressed && known.members.contains(&person));
            if !pages.room(now_at).is_ok_and(|known| known.is_some_and(open)) {
                continue;
            }
            let (bot, user) = (self.serving.bot.clone(), UserId(person.0.cast_unsigned()));
            asked.spawn(async move {
                let member = timeout(ANSWER_WAIT, bot.get_chat_member(ChatId(now_at.0), user)).await;
                ((room, person), member.ok().and_then(Result::ok))
            });
        }
        let mut inside = Inside::new();
        while let Some(answer) = asked.join_next().await {
            // No answer: it stays open, and whoever is not known to be in the group is not let in.
            if let Ok((who, Some(member))) = answer {
                inside.insert(who, member.is_present());
            }
        }
        inside
    }

    /// Asks who administers the groups where it matters, all at once.
    async fn learn_admins(&mut self, updates: &[Update]) {
        let wanted: BTreeSet<RoomId> = updates.iter().filter_map(hear::needs_admins).collect();
        let old = |room: &RoomId| self.admins.get(room).is_none_or(|(learned, _)| learned.elapsed() > ADMINS_KEPT);
        let mut asked = JoinSet::new();
        for room in wanted.into_iter().filter(old) {
            let bot = self.serving.bot.clone();
            asked.spawn(async move {
                let admins = timeout(ANSWER_WAIT, bot.get_chat_administrators(ChatId(room.0))).await;
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

struct Known<'a> {
    engine: &'a Engine,
    admins: &'a Admins,
    inside: &'a Inside,
}

impl Lookup for Known<'_> {
    fn key_of(&self, room: RoomId, message: i64) -> Option<String> {
        self.engine.key_of(room, message).ok().flatten()
    }

    fn is_admin(&self, room: RoomId, person: PersonId) -> bool {
        self.admins.get(&room).is_some_and(|(_, ids)| ids.contains(&person))
    }

    fn is_inside(&self, room: RoomId, person: PersonId) -> Option<bool> {
        self.inside.get(&(room, person)).copied()
    }
}

/// Nothing can be looked up.
pub struct Nothing;

impl Lookup for Nothing {
    fn key_of(&self, _: RoomId, _: i64) -> Option<String> {
        None
    }

    fn is_admin(&self, _: RoomId, _: PersonId) -> bool {
        false
    }

    fn is_inside(&self, _: RoomId, _: PersonId) -> Option<bool> {
        None
    }
}
