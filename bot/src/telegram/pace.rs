//! How fast messages may go, overall and to each chat. A chat that was told to wait waits alone.
//!
//! The platform publishes no exact numbers: about 30 a second over all, one a second in a chat with short bursts, 20 a
//! minute in a group. Burst plus refill stay at or below them over any such span.

use crate::room::RoomId;
use governor::{DefaultDirectRateLimiter, DefaultKeyedRateLimiter, Quota, RateLimiter};
use std::collections::HashMap;
use std::num::NonZeroU32;
use std::sync::Arc;
use std::time::{Duration, Instant};

/// A number for a limit.
pub const fn count(number: u32) -> NonZeroU32 {
    match NonZeroU32::new(number) {
        Some(number) => number,
        None => NonZeroU32::MIN,
    }
}

/// Over all: 5 at once, then 25 a second.
const OVERALL: Quota = Quota::per_second(count(25)).allow_burst(count(5));

/// A chat: 3 at once, then one a second.
const CHAT: Quota = Quota::per_second(count(1)).allow_burst(count(3));

/// A group: 5 at once, then 15 a minute.
const GROUP: Quota = Quota::per_minute(count(15)).allow_burst(count(5));

/// Between two changes of one chat's board: people read it, they don't watch it.
pub const BOARD_EVERY: Duration = Duration::from_secs(4);

/// No limit that could be met.
const NONE: Quota = Quota::per_second(count(1_000_000));

/// Chats remembered before those that are at rest are forgotten.
const MANY: usize = 10_000;

/// Limits and pauses.
pub struct Pace {
    overall: Arc<DefaultDirectRateLimiter>,
    chats: DefaultKeyedRateLimiter<RoomId>,
    groups: DefaultKeyedRateLimiter<RoomId>,
    /// When a board may be changed again, where one was changed lately.
    boards: HashMap<RoomId, Instant>,
    board_every: Duration,
    paused: HashMap<RoomId, Instant>,
    all_paused: Option<Instant>,
    failures: u32,
}

impl Default for Pace {
    fn default() -> Self {
        Self::new(OVERALL, CHAT, GROUP, BOARD_EVERY)
    }
}

impl Pace {
    /// As fast as it goes; the platform's own refusals still count. For a server of one's own, and for measuring.
    pub fn unlimited() -> Self {
        Self::new(NONE, NONE, NONE, Duration::ZERO)
    }

    /// The same, with so long between two changes of a board.
    #[must_use]
    pub fn boards_every(self, board_every: Duration) -> Self {
        Self { board_every, ..self }
    }

    fn new(overall: Quota, chat: Quota, group: Quota, board_every: Duration) -> Self {
        Self {
            overall: Arc::new(RateLimiter::direct(overall)),
            chats: RateLimiter::keyed(chat),
            groups: RateLimiter::keyed(group),
            boards: HashMap::new(),
            board_every,
            paused: HashMap::new(),
            all_paused: None,
            failures: 0,
        }
    }

    /// Whether the platform cannot be reached at present.
    pub fn is_down(&self) -> bool {
        self.all_paused.is_some_and(|until| Instant::now() < until)
    }

    /// The limit over all chats: to be waited for just before a call.
    pub fn overall(&self) -> Arc<DefaultDirectRateLimiter> {
        Arc::clone(&self.overall)
    }

    /// Whether a message may go to `chat` now; `board`: it only brings the board up to date. Uses up one of its allowance.
    pub fn may(&self, chat: RoomId, board: bool) -> bool {
        if board && self.boards.get(&chat).is_some_and(|again| Instant::now() < *again) {
            return false;
        }
        self.paused.get(&chat).is_none_or(|until| Instant::now() >= *until)
            && self.chats.check_key(&chat).is_ok()
            && (chat.0 > 0 || self.groups.check_key(&chat).is_ok())
    }

    /// The board of `chat` is being sent or changed.
    pub fn board(&mut self, chat: RoomId) {
        let now = Instant::now();
        self.boards.retain(|_, again| *again > now);
        self.boards.insert(chat, now + self.board_every);
    }

    /// `chat` waits this long.
    pub fn pause(&mut self, chat: RoomId, wait: Duration) {
        let now = Instant::now();
        self.paused.retain(|_, until| *until > now);
        self.paused.insert(chat, now + wait);
        if self.chats.len() > MANY {
            self.chats.retain_recent();
            self.groups.retain_recent();
        }
    }

    /// The platform cannot be reached: everything waits, longer each time.
    pub fn down(&mut self) {
        self.all_paused = Some(Instant::now() + backoff(self.failures));
        self.failures = self.failures.saturating_add(1);
    }

    /// The platform answers.
    pub fn up(&mut self) {
        self.failures = 0;
        self.all_paused = None;
    }
}

/// How long to wait after this many failures before: 1, 2, 4 ... 60 s.
pub fn backoff(failures: u32) -> Duration {
    Duration::from_secs(1 << failures.min(6)).min(Duration::from_secs(60))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn waiting_grows_to_a_minute() {
        let waits: Vec<u64> = (0..9).map(|failures| backoff(failures).as_secs()).collect();
        assert_eq!(waits, [1, 2, 4, 8, 16, 32, 60, 60, 60]);
    }

    #[test]
    fn a_burst_is_cut_off_in_that_chat_alone() {
        let pace = Pace::default();
        let taken = |chat| (0..50).filter(|_| pace.may(RoomId(chat), false)).count();
        assert_eq!((taken(7), taken(-7)), (3, 3));
        assert_eq!(taken(8), 3);
    }

    #[test]
    fn after_a_burst_a_chat_has_one_a_second() {
        let (pace, began) = (Pace::default(), Instant::now());
        let mut taken = 0;
        while began.elapsed() < Duration::from_millis(2200) {
            taken += u64::from(pace.may(RoomId(7), false));
            std::thread::sleep(Duration::from_millis(5));
        }
        let most = 3 + began.elapsed().as_secs();
        assert!((5..=most).contains(&taken), "{taken} of {most}");
    }

    #[test]
    fn a_board_just_changed_waits_and_holds_up_nothing_else() {
        let mut pace = Pace::default();
        pace.board(RoomId(-7));
        assert!(!pace.may(RoomId(-7), true));
        assert!(pace.may(RoomId(-7), false));
        assert!(pace.may(RoomId(-8), true));
    }

    #[test]
    fn one_chats_pause_is_its_own() {
        let mut pace = Pace::default();
        pace.pause(RoomId(7), Duration::from_secs(3600));
        assert!(!pace.may(RoomId(7), false));
        assert!(pace.may(RoomId(8), false));
        pace.down();
        assert!(pace.is_down());
        pace.up();
        assert!(!pace.is_down());
    }
}
