//! How much is listened to: so many messages and presses a minute from one person, so many in one chat, fewer files.
//!
//! Whoever goes beyond is told once a minute; the rest is left out before anything is fetched, stored or decided for it, so a
//! flood costs the others nothing. Kept in memory: a restart forgives. Far beyond what a cook with a thermometer types.

use crate::room::{PersonId, RoomId};
use governor::{DefaultKeyedRateLimiter, Quota, RateLimiter};
use std::num::NonZeroU32;

const fn a_minute(count: u32) -> Quota {
    Quota::per_minute(match NonZeroU32::new(count) {
        Some(count) => count,
        None => NonZeroU32::MIN,
    })
}

/// Messages and presses of one person, in all chats: 60 at once, then one a second.
const PERSON: Quota = a_minute(60);

/// Messages and presses in one chat, of everybody.
const ROOM: Quota = a_minute(240);

/// Files of one person.
const FILES: Quota = a_minute(6);

/// Inline queries of one person: one comes with every keystroke.
const QUERIES: Quota = a_minute(240);

/// Refusals to one person.
const REFUSALS: Quota = a_minute(1);

/// No limit that could be met.
const NONE: Quota = a_minute(u32::MAX);

/// People and chats remembered before those that have been quiet are forgotten.
const MANY: usize = 10_000;

/// What becomes of something said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// It is heard.
    Listen,
    /// It is not, and that is said.
    Refuse,
    /// It is not.
    Ignore,
}

/// See the module.
pub struct Patience {
    people: DefaultKeyedRateLimiter<PersonId>,
    rooms: DefaultKeyedRateLimiter<RoomId>,
    files: DefaultKeyedRateLimiter<PersonId>,
    queries: DefaultKeyedRateLimiter<PersonId>,
    refusals: DefaultKeyedRateLimiter<PersonId>,
}

impl Default for Patience {
    fn default() -> Self {
        Self::new(PERSON, ROOM, FILES, QUERIES)
    }
}

impl Patience {
    /// Listens to everything: for tests by another clock, and for measuring.
    pub fn endless() -> Self {
        Self::new(NONE, NONE, NONE, NONE)
    }

    fn new(person: Quota, room: Quota, files: Quota, queries: Quota) -> Self {
        Self {
            people: RateLimiter::keyed(person),
            rooms: RateLimiter::keyed(room),
            files: RateLimiter::keyed(files),
            queries: RateLimiter::keyed(queries),
            refusals: RateLimiter::keyed(REFUSALS),
        }
    }

    /// What becomes of something that `person` says in `room`; `file`: a file comes with it.
    pub fn of(&self, person: PersonId, room: RoomId, file: bool) -> Verdict {
        self.forget_the_quiet();
        let heard = self.people.check_key(&person).is_ok()
            && (!file || self.files.check_key(&person).is_ok())
            && self.rooms.check_key(&room).is_ok();
        match heard {
            true => Verdict::Listen,
            false if self.refusals.check_key(&person).is_ok() => Verdict::Refuse,
            false => Verdict::Ignore,
        }
    }

    /// Whether an inline query of `person` is answered.
    pub fn answers(&self, person: PersonId) -> bool {
        self.queries.check_key(&person).is_ok()
    }

    fn forget_the_quiet(&self) {
        if self.people.len() > MANY || self.queries.len() > MANY {
            self.people.retain_recent();
            self.rooms.retain_recent();
            self.files.retain_recent();
            self.queries.retain_recent();
            self.refusals.retain_recent();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ROSA: PersonId = PersonId(1);
    const TOM: PersonId = PersonId(2);
    const TABLE: RoomId = RoomId(-9);

    fn heard(patience: &Patience, who: PersonId, count: usize, file: bool) -> [usize; 3] {
        let mut of = [0; 3];
        for _ in 0..count {
            of[match patience.of(who, TABLE, file) {
                Verdict::Listen => 0,
                Verdict::Refuse => 1,
                Verdict::Ignore => 2,
            }] += 1;
        }
        of
    }

    #[test]
    fn whoever_floods_is_told_once_and_costs_the_others_nothing() {
        let patience = Patience::default();
        let [listened, refused, ignored] = heard(&patience, ROSA, 1000, false);
        // A slow machine refills one a second meanwhile.
        assert!((60..70).contains(&listened) && refused == 1 && ignored > 900, "{listened} {refused} {ignored}");
        assert_eq!(heard(&patience, TOM, 30, false), [30, 0, 0]);
    }

    #[test]
    fn files_are_fewer_and_words_still_heard_beside_them() {
        let patience = Patience::default();
        assert_eq!(heard(&patience, ROSA, 10, true), [6, 1, 3]);
        assert_eq!(heard(&patience, ROSA, 5, false), [5, 0, 0]);
    }

    #[test]
    fn a_crowd_in_one_chat_meets_that_chat_s_limit() {
        let patience = Patience::default();
        let listened: usize = (0..20).map(|who| heard(&patience, PersonId(who), 40, false)[0]).sum();
        assert!((240..280).contains(&listened), "{listened}");
        assert_eq!(patience.of(ROSA, RoomId(1), false), Verdict::Listen);
    }

    #[test]
    fn those_who_are_quiet_are_forgotten() {
        let patience = Patience::new(NONE, NONE, NONE, NONE);
        for who in 0..50_000 {
            patience.of(PersonId(who), RoomId(who), false);
        }
        assert!(patience.people.len() <= MANY + 1, "{}", patience.people.len());
    }
}
