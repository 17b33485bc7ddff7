//! The order of sending: which waiting message goes next. In memory; the messages themselves are in the book.
//!
//! A lane is a chat, or one answer to a press. In a lane one message is under way at a time. Between lanes the most
//! urgent goes first, and of equals the lane that has waited longest: one chat never delays another.

use crate::book::OutboxKey;
use crate::room::{How, RoomId, Urgency};
use std::collections::{BTreeMap, BTreeSet};

/// One line of messages that keep their order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum LaneId {
    Press(u64),
    Chat(RoomId),
}

/// A lane's place among those that could send: rank of its next message, when it was served, when that was said.
type Place = (u8, u64, u64, LaneId);

#[derive(Debug, Default)]
struct Lane {
    waiting: BTreeSet<OutboxKey>,
    under_way: Option<OutboxKey>,
    /// Tick at which it was last served, or came.
    served: u64,
}

impl Lane {
    fn place(&self, id: LaneId) -> Option<Place> {
        let head = self.waiting.first().filter(|_| self.under_way.is_none())?;
        Some((head.rank, self.served, head.sequence, id))
    }
}

/// What waits.
#[derive(Debug, Default)]
pub struct Queue {
    /// Chat and logical name of every message, and how it goes.
    known: BTreeMap<OutboxKey, (Option<RoomId>, Option<String>, How)>,
    lanes: BTreeMap<LaneId, Lane>,
    /// Lanes that could send now, in the order they should.
    ready: BTreeSet<Place>,
    /// Waiting messages by chat and logical name.
    named: BTreeMap<(RoomId, String), BTreeSet<OutboxKey>>,
    tick: u64,
}

impl Queue {
    /// How many messages wait or are under way.
    pub fn len(&self) -> usize {
        self.known.len()
    }

    /// How many of them people wait for: boards apart.
    pub fn pressing(&self) -> usize {
        let boards = OutboxKey { rank: OutboxKey::rank(Urgency::Board), sequence: 0 };
        self.known.range(..boards).count()
    }

    /// The chat and logical name of a message, if it has one.
    pub fn called(&self, key: OutboxKey) -> Option<(RoomId, &str)> {
        let (chat, name, _) = self.known.get(&key)?;
        chat.zip(name.as_deref())
    }

    /// How a message goes, if it is known.
    pub fn how(&self, key: OutboxKey) -> Option<How> {
        self.known.get(&key).map(|(.., how)| *how)
    }

    /// Adds a message.
    pub fn add(&mut self, key: OutboxKey, chat: Option<RoomId>, name: Option<&str>, how: How) {
        self.known.insert(key, (chat, name.map(str::to_owned), how));
        self.name(key);
        self.change(key, |lane| {
            lane.waiting.insert(key);
        });
    }

    /// Forgets a message, waiting or under way.
    pub fn remove(&mut self, key: OutboxKey) {
        self.unname(key);
        self.change(key, |lane| {
            lane.waiting.remove(&key);
            lane.under_way.take_if(|under_way| *under_way == key);
        });
        self.known.remove(&key);
    }

    /// Puts a message that was under way back in line.
    pub fn put_back(&mut self, key: OutboxKey) {
        self.name(key);
        self.change(key, |lane| {
            if lane.under_way.take_if(|under_way| *under_way == key).is_some() {
                lane.waiting.insert(key);
            }
        });
    }

    /// The next message whose chat may be written to now (answers to presses always may).
    pub fn next(&self, may: &mut dyn FnMut(RoomId, bool) -> bool) -> Option<OutboxKey> {
        let (.., id) = self.ready.iter().find(|(rank, .., id)| match id {
            LaneId::Press(_) => true,
            LaneId::Chat(room) => may(*room, *rank == OutboxKey::rank(Urgency::Board)),
        })?;
        self.lanes.get(id)?.waiting.first().copied()
    }

    /// The message is under way: its lane waits, and nothing changes it any more.
    pub fn start(&mut self, key: OutboxKey) {
        self.unname(key);
        self.tick += 1;
        let tick = self.tick;
        self.change(key, |lane| {
            lane.waiting.remove(&key);
            lane.under_way = Some(key);
            lane.served = tick;
        });
    }

    /// Messages called `name` that wait in `chat`, first to be sent first.
    pub fn named(&self, chat: RoomId, name: &str) -> Vec<OutboxKey> {
        let found = self.named.get(&(chat, name.to_owned()));
        found.map(|keys| keys.iter().copied().collect()).unwrap_or_default()
    }

    /// Names under which more than one message waits in a chat.
    pub fn shared_names(&self) -> Vec<(RoomId, String)> {
        self.named.iter().filter(|(_, keys)| keys.len() > 1).map(|(called, _)| called.clone()).collect()
    }

    /// What waits in `chat`, first to be sent first.
    pub fn waiting_in(&self, chat: RoomId) -> Vec<OutboxKey> {
        let lane = self.lanes.get(&LaneId::Chat(chat));
        lane.map(|lane| lane.waiting.iter().copied().collect()).unwrap_or_default()
    }

    /// Whether something is under way to `chat`.
    pub fn is_sending_to(&self, chat: RoomId) -> bool {
        self.lanes.get(&LaneId::Chat(chat)).is_some_and(|lane| lane.under_way.is_some())
    }

    /// What is under way anywhere.
    pub fn under_way(&self) -> Vec<OutboxKey> {
        self.lanes.values().filter_map(|lane| lane.under_way).collect()
    }

    fn name(&mut self, key: OutboxKey) {
        if let Some((Some(chat), Some(name), _)) = self.known.get(&key) {
            self.named.entry((*chat, name.clone())).or_default().insert(key);
        }
    }

    fn unname(&mut self, key: OutboxKey) {
        let Some((Some(chat), Some(name), _)) = self.known.get(&key) else { return };
        let called = (*chat, name.clone());
        if let Some(keys) = self.named.get_mut(&called) {
            keys.remove(&key);
            if keys.is_empty() {
                self.named.remove(&called);
            }
        }
    }

    fn change(&mut self, key: OutboxKey, change: impl FnOnce(&mut Lane)) {
        let Some((chat, ..)) = self.known.get(&key) else { return };
        let id = chat.map_or(LaneId::Press(key.sequence), LaneId::Chat);
        let tick = self.tick;
        let lane = self.lanes.entry(id).or_insert_with(|| Lane { served: tick, ..Lane::default() });
        let before = lane.place(id);
        change(lane);
        let after = lane.place(id);
        if lane.waiting.is_empty() && lane.under_way.is_none() {
            self.lanes.remove(&id);
        }
        if let Some(before) = before {
            self.ready.remove(&before);
        }
        self.ready.extend(after);
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    const ANY: fn(RoomId, bool) -> bool = |_, _| true;

    fn key(rank: u8, sequence: u64) -> OutboxKey {
        OutboxKey { rank, sequence }
    }

    #[test]
    fn the_most_urgent_goes_first_and_equals_take_turns() {
        let mut queue = Queue::default();
        for sequence in 0..3 {
            queue.add(key(4, sequence), Some(RoomId(1)), None, How::New);
        }
        queue.add(key(4, 3), Some(RoomId(2)), None, How::New);
        queue.add(key(1, 4), Some(RoomId(3)), None, How::New);
        queue.add(key(0, 5), None, None, How::New);
        let mut order = Vec::new();
        while let Some(next) = queue.next(&mut { ANY }) {
            queue.start(next);
            queue.remove(next);
            order.push(next.sequence);
        }
        assert_eq!(order, [5, 4, 0, 3, 1, 2]);
        assert_eq!(queue.len(), 0);
    }

    #[test]
    fn a_chat_with_one_under_way_or_not_allowed_is_passed_over() {
        let mut queue = Queue::default();
        queue.add(key(2, 0), Some(RoomId(1)), None, How::New);
        queue.add(key(2, 1), Some(RoomId(1)), None, How::New);
        queue.add(key(3, 2), Some(RoomId(2)), None, How::New);
        queue.start(key(2, 0));
        assert_eq!(queue.next(&mut { ANY }), Some(key(3, 2)));
        assert_eq!(queue.next(&mut |room, _| room != RoomId(2)), None);
        queue.put_back(key(2, 0));
        assert_eq!(queue.next(&mut { ANY }), Some(key(2, 0)));
    }
}
