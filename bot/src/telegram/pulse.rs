//! What an operator can watch: counters, and whether the loops still go round.
//!
//! Nothing here names a person, a chat or a plan. The names follow the OpenMetrics specification (Prometheus project, version 1.0):
//! base units, `_total` for what only grows.

use crate::engine::Engine;
use prometheus_client::encoding::text::encode;
use prometheus_client::metrics::counter::Counter;
use prometheus_client::metrics::family::Family;
use prometheus_client::metrics::gauge::Gauge;
use prometheus_client::registry::Registry;
use std::fmt;
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::time::{Duration, Instant};

/// A loop at rest goes round within 30 s; one that has not for so long hangs.
pub const STUCK: Duration = Duration::from_secs(120);

/// The loops whose standing still would leave people without their calls.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Round {
    /// Inbox and bells.
    Turns,
    /// Sending.
    Outbound,
    /// The first word with the platform, before the others begin.
    Greeting,
}

/// What became of a message.
type Ends = Family<[(&'static str, &'static str); 1], Counter>;

/// See the module.
pub struct Pulse {
    registry: Registry,
    started: Instant,
    /// Milliseconds after `started` at which each loop went round last.
    rounds: [AtomicU64; 3],
    /// Whether the platform has said who we are: from then on people are served.
    serves: AtomicBool,
    /// After which silence a loop counts as hanging.
    patience: Duration,
    /// Updates made durable.
    pub updates: Counter,
    /// Updates beyond what is listened to.
    pub ignored: Counter,
    /// Turns taken, for updates and for bells.
    pub turns: Counter,
    /// Messages and changes of messages, by what became of them.
    messages: Ends,
    /// Whether the platform answered last time.
    reachable: Gauge,
    waiting: Gauge,
    overdue: Gauge,
    clock_off: Gauge,
}

impl Default for Pulse {
    fn default() -> Self {
        let mut registry = Registry::with_prefix("carvetime");
        let (updates, ignored, turns) = (Counter::default(), Counter::default(), Counter::default());
        let messages = Ends::default();
        let gauges: [Gauge; 4] = Default::default();
        let [reachable, waiting, overdue, clock_off] = gauges;
        registry.register("updates", "Updates made durable", updates.clone());
        registry.register("updates_ignored", "Updates beyond the limits of a person or a chat", ignored.clone());
        registry.register("turns", "Turns taken, for updates and for reminders", turns.clone());
        registry.register("messages", "Messages and changes of messages by what became of them", messages.clone());
        registry.register("platform_reachable", "1 if the platform answered last time", reachable.clone());
        registry.register("outbox_waiting", "Messages waiting or being sent", waiting.clone());
        registry.register("reminder_overdue_seconds", "By how much the next reminder is late", overdue.clone());
        registry.register(
            "clock_off_seconds",
            "By how much this machine's clock is ahead of the platform's",
            clock_off.clone(),
        );
        let rounds = Default::default();
        Self {
            registry,
            started: Instant::now(),
            rounds,
            serves: AtomicBool::new(false),
            patience: STUCK,
            updates,
            ignored,
            turns,
            messages,
            reachable,
            waiting,
            overdue,
            clock_off,
        }
    }
}

impl Pulse {
    /// This loop goes round.
    pub fn beat(&self, round: Round) {
        let now = u64::try_from(self.started.elapsed().as_millis()).unwrap_or(u64::MAX);
        self.rounds[round as usize].store(now, Ordering::Relaxed);
    }

    /// The same with another patience than [`STUCK`].
    pub fn with_patience(patience: Duration) -> Self {
        Self { patience, ..Self::default() }
    }

    /// The platform has said who we are: the loops begin.
    pub fn begin(&self) {
        self.beat(Round::Turns);
        self.beat(Round::Outbound);
        self.serves.store(true, Ordering::Relaxed);
    }

    /// Whether people are served.
    pub fn serves(&self) -> bool {
        self.serves.load(Ordering::Relaxed)
    }

    /// A pause of this loop, which lives on meanwhile.
    pub async fn rest(&self, round: Round, mut pause: Duration) {
        while !pause.is_zero() {
            self.beat(round);
            let step = pause.min(self.patience / 4);
            tokio::time::sleep(step).await;
            pause -= step;
        }
    }

    /// The loop that hangs, and for how long; `None` if all is well.
    pub fn stuck(&self) -> Option<(Round, Duration)> {
        let rounds: &[Round] = if self.serves() { &[Round::Turns, Round::Outbound] } else { &[Round::Greeting] };
        rounds.iter().find_map(|&round| {
            let last = Duration::from_millis(self.rounds[round as usize].load(Ordering::Relaxed));
            let silent = self.started.elapsed().saturating_sub(last);
            (silent > self.patience).then_some((round, silent))
        })
    }

    /// A message ended like this.
    pub fn message(&self, end: &'static str) {
        self.messages.get_or_create(&[("end", end)]).inc();
    }

    /// The platform answered, or did not.
    pub fn reachable(&self, yes: bool) {
        self.reachable.set(i64::from(yes));
    }

    /// This machine's clock is so far ahead of the platform's.
    pub fn clock_off(&self, ahead: chrono::TimeDelta) {
        self.clock_off.set(ahead.num_seconds());
    }

    /// Everything in the OpenMetrics text format, as of `now`.
    ///
    /// # Errors
    /// Never in practice: text is written into memory.
    pub fn text(&self, engine: &Engine, now: chrono::DateTime<chrono::Utc>) -> Result<String, fmt::Error> {
        self.waiting.set(i64::try_from(engine.waiting()).unwrap_or(i64::MAX));
        let late = engine.next_bell().ok().flatten().map_or(0, |due| (now - due).num_seconds().max(0));
        self.overdue.set(late);
        let mut text = String::new();
        encode(&mut text, &self.registry)?;
        Ok(text)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::book::SledBook;
    use crate::room::{Bell, BellKind, Heard, RoomId, RoomKind, Say, To, Turn, What};
    use crate::words::{Text, Voice};
    use chrono::{TimeDelta, Utc};
    use std::sync::Arc;

    impl Pulse {
        /// One whose loops began long ago and have stood still since.
        pub fn long_ago() -> Self {
            let pulse = Self::default();
            pulse.begin();
            let started = Instant::now().checked_sub(STUCK + Duration::from_secs(5));
            Self { started: started.unwrap_or_else(Instant::now), ..pulse }
        }
    }

    #[test]
    fn what_waits_and_what_is_late_is_counted_and_what_the_clock_is_off_by() {
        let now = Utc::now();
        let decide: crate::engine::DecideFn = |scene, _, now| {
            let mut turn = Turn { room: Some(scene.room.clone()), ..Turn::default() };
            turn.says.push(Say::new(To::Room(scene.room.id), Text::new("room-unreadable")));
            turn.bells = Some(vec![Bell {
                at: now + TimeDelta::seconds(10),
                kind: BellKind::Offer { step: "carve".into(), nth: 0 },
            }]);
            turn
        };
        let book = Arc::new(SledBook::temporary().unwrap());
        let engine = Engine::new(book, Arc::new(Voice::new()), decide).unwrap();
        let heard =
            Heard { room: RoomId(1), kind: RoomKind::Private, by: None, for_group: false, what: What::Unreadable };
        engine.accept([heard]).unwrap();
        engine.work(now).unwrap();
        let pulse = Pulse::default();
        pulse.clock_off(TimeDelta::seconds(-400));
        let text = pulse.text(&engine, now + TimeDelta::seconds(25)).unwrap();
        for line in
            ["outbox_waiting 1", "reminder_overdue_seconds 15", "clock_off_seconds -400", "platform_reachable 0"]
        {
            assert!(text.contains(&format!("\ncarvetime_{line}\n")), "{line} in {text}");
        }
    }

    #[test]
    fn a_loop_that_stands_still_is_named() {
        assert_eq!(Pulse::default().stuck(), None);
        let pulse = Pulse::long_ago();
        pulse.beat(Round::Turns);
        assert!(matches!(pulse.stuck(), Some((Round::Outbound, silent)) if silent > STUCK));
        pulse.beat(Round::Outbound);
        assert_eq!(pulse.stuck(), None);
        pulse.serves.store(false, Ordering::Relaxed);
        assert!(matches!(pulse.stuck(), Some((Round::Greeting, _))), "nor does one that never began");
    }
}
