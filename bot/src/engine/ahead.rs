//! What rings first, and calling ahead of a crowd. On a holiday thousands of kitchens have something due in the same minutes, and a bot may say some thirty
//! things a second. So calls go out before their time, the earliest first, no sooner than the last of the crowd needs, and say the hour
//! they are for. On any other day nothing rings early.
//!
//! Only first calls of jobs that food safety does not hang on go ahead: the others are few, and go before all else at their minute.

use super::{Desk, Engine};
use crate::book::{BellKey, BookError};
use crate::room::{BellKind, How, RoomId, Say, Urgency};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;
use chrono::{DateTime, TimeDelta, Utc};
use std::collections::BTreeSet;

/// Reminders a second that go out for sure while people also want answers and boards. The platform takes about 30 in all.
const A_SECOND: i64 = 20;

/// No call goes out earlier than this before its time.
const EARLIEST: TimeDelta = TimeDelta::minutes(40);

/// How far it is looked ahead for a crowd.
const HORIZON: TimeDelta = TimeDelta::minutes(90);

/// Calls that would come later than this make a crowd. Below it nobody minds, and the hour need not be said.
const LATE: TimeDelta = TimeDelta::seconds(90);

/// Once there is a crowd, it is one until its last is no later than this.
const LATE_STILL: TimeDelta = TimeDelta::seconds(5);

/// How long it is believed that there is a crowd, or none; calls go ahead that much sooner than they have to.
const BELIEVED: TimeDelta = TimeDelta::seconds(10);

/// Whether calls go ahead at present, and when that was found.
#[derive(Debug, Default)]
pub(super) struct Crowd {
    here: bool,
    found: Option<DateTime<Utc>>,
    /// Up to when bells have been looked at as they fell due.
    looked: Option<DateTime<Utc>>,
    /// Due bells that ring before all others.
    first: BTreeSet<BellKey>,
}

impl Crowd {
    /// All that is due is looked at once more.
    pub(super) fn look_again(&mut self) {
        self.looked = None;
    }
}

/// Whether calls have to go ahead now for all to be in time. `waiting`: messages that go first; `due`: when each call is due, in
/// milliseconds, earliest first; `bearable`: by how much the last may be late.
fn is_time(waiting: usize, due: impl Iterator<Item = i64>, bearable: TimeDelta, now: DateTime<Utc>) -> bool {
    let each = 1000 / A_SECOND;
    let now = now.timestamp_millis();
    let waiting = i64::try_from(waiting).unwrap_or(i64::MAX / 2000);
    // When each would go out, called at its time; and when, called from now on.
    let (mut at_its_time, mut from_now) = (now + waiting * each, now + waiting * each);
    let (mut late, mut tight) = (false, false);
    for due in due {
        at_its_time = at_its_time.max(due) + each;
        from_now += each;
        late |= at_its_time - due > bearable.num_milliseconds();
        tight |= from_now > due - BELIEVED.num_milliseconds();
    }
    late && tight
}

impl Engine {
    /// Whether more is due soon than can be said in time.
    pub fn is_crowded(&self) -> bool {
        self.desk().crowd.here
    }

    /// Rings rooms whose call has to go ahead at `now`, at most `most` and no more than can soon be said. Returns how many.
    pub(super) fn ring_ahead(&self, desk: &mut Desk, now: DateTime<Utc>, most: usize) -> Result<usize, BookError> {
        let fresh = desk.crowd.found.is_some_and(|found| (TimeDelta::zero()..BELIEVED).contains(&(now - found)));
        if !fresh {
            let due = self.drafted.bells_between(now, now + HORIZON)?;
            let bearable = if desk.crowd.here { LATE_STILL } else { LATE };
            let here = is_time(desk.queue.pressing(), due.iter().map(|key| key.due), bearable, now);
            (desk.crowd.here, desk.crowd.found) = (here, Some(now));
        }
        let most = most.saturating_sub(desk.queue.pressing());
        if !desk.crowd.here || most == 0 {
            return Ok(0);
        }
        let mut count = 0;
        for key in self.drafted.bells_between(now, now + EARLIEST)? {
            if count == most {
                break;
            }
            if self.may_go_ahead(key)? {
                let as_of = DateTime::from_timestamp_millis(key.due).unwrap_or(now);
                self.ring_room(desk, key.room, as_of, now)?;
                count += 1;
            }
        }
        Ok(count)
    }

    /// At most `most` rooms with something due at `now`: those that food safety hangs on first, then the longest waiting.
    pub(super) fn rooms_to_ring(
        &self,
        desk: &mut Desk,
        now: DateTime<Utc>,
        most: usize,
    ) -> Result<Vec<RoomId>, BookError> {
        // Each bell is looked at once when it falls due: behind a thousand others a call must not wait to be found.
        let looked = desk.crowd.looked.filter(|looked| *looked <= now).unwrap_or(DateTime::<Utc>::MIN_UTC);
        for key in self.drafted.bells_between(looked, now)? {
            if self.is_safety(key) {
                desk.crowd.first.insert(key);
            }
        }
        desk.crowd.looked = Some(now);
        let mut rooms = Vec::new();
        let mut seen = BTreeSet::new();
        while rooms.len() < most
            && let Some(key) = desk.crowd.first.pop_first()
        {
            rooms.extend(seen.insert(key.room).then_some(key.room));
        }
        let rest = self.drafted.rooms_due(now, most)?.into_iter().filter(|room| seen.insert(*room));
        let left = most - rooms.len();
        rooms.extend(rest.take(left));
        Ok(rooms)
    }

    fn is_safety(&self, key: BellKey) -> bool {
        match self.drafted.bell(key).ok().flatten().map(|bell| bell.kind) {
            Some(BellKind::Job { step, .. }) => Step::from_name(&step).is_some_and(Step::is_safety),
            Some(BellKind::Limit { .. }) => true,
            _ => false,
        }
    }

    /// Whether this bell is its room's next, and such that it may ring before its time.
    fn may_go_ahead(&self, key: BellKey) -> Result<bool, BookError> {
        if self.drafted.bells_of(key.room)?.first() != Some(&key) {
            return Ok(false);
        }
        let Some(bell) = self.drafted.bell(key).ok().flatten() else { return Ok(false) };
        let BellKind::Job { step, call: 0, .. } = bell.kind else { return Ok(false) };
        Ok(Step::from_name(&step).is_some_and(|step| !step.is_safety()))
    }
}

/// The calls of a turn that was taken ahead of its time say the hour.
pub(super) fn say_the_hour(says: &mut [Say], as_of: DateTime<Utc>, now: DateTime<Utc>) {
    if as_of - now < LATE {
        return;
    }
    for say in says.iter_mut().filter(|say| say.urgency == Urgency::Due && say.how == How::New) {
        say.text.insert(0, Text::new("room-call-ahead").with("at", Arg::Clock(as_of)));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Whether calls due at these seconds have to go ahead at second `now`.
    fn at(now: i64, waiting: usize, due: impl Iterator<Item = i64>) -> bool {
        let now = DateTime::from_timestamp(now, 0).unwrap_or_default();
        is_time(waiting, due.map(|seconds| seconds * 1000), LATE, now)
    }

    #[test]
    fn what_can_be_said_in_time_does_not_go_ahead() {
        assert!(!at(0, 0, std::iter::empty()));
        assert!(!at(0, 0, (0..100).map(|_| 1)), "a hundred at once are five seconds late at most");
        assert!(!at(0, 0, (0..10_000).map(|n| n / 15)), "fifteen a second, hour after hour");
    }

    #[test]
    fn a_crowd_goes_when_the_time_left_is_what_it_takes() {
        // 20,000 at one minute take 1,000 s.
        let crowd = || (0..20_000).map(|_| 2000);
        assert!(!at(900, 0, crowd()), "there is time yet");
        assert!(at(995, 0, crowd()));
        assert!(at(895, 2000, crowd()), "what waits already goes first");
    }
}
