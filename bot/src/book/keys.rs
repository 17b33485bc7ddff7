//! Keys of rows. Big-endian, so that the order of keys is the order of what they mean.

use super::BookError;
use crate::room::{PersonId, RoomId, Urgency};
use chrono::{DateTime, Utc};

/// Puts negative numbers before positive ones in byte order.
pub fn signed(number: i64) -> [u8; 8] {
    (number.cast_unsigned() ^ (1 << 63)).to_be_bytes()
}

/// The number behind [`signed`].
pub fn unsigned(bytes: &[u8]) -> Result<i64, BookError> {
    Ok((sequence_of(bytes)? ^ (1 << 63)).cast_signed())
}

/// Key of a sequence number.
pub fn sequence(number: u64) -> [u8; 8] {
    number.to_be_bytes()
}

/// The sequence number behind a key.
pub fn sequence_of(bytes: &[u8]) -> Result<u64, BookError> {
    let bytes = bytes.try_into().map_err(|_| BookError::Damaged { detail: "a key of the wrong length".into() })?;
    Ok(u64::from_be_bytes(bytes))
}

/// Key of a person.
pub fn person_key(person: PersonId) -> [u8; 8] {
    signed(person.0)
}

/// The person behind [`person_key`].
pub fn person_of(key: &[u8]) -> Option<PersonId> {
    unsigned(key).ok().map(PersonId)
}

/// The first key after every key that starts with `prefix`.
pub fn after(prefix: &[u8]) -> Vec<u8> {
    let mut end = prefix.to_vec();
    while let Some(last) = end.pop() {
        if last < u8::MAX {
            end.push(last + 1);
            return end;
        }
    }
    vec![u8::MAX; prefix.len() + 1]
}

/// A bell: when it is due, whose it is, and which of those due at that time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct BellKey {
    /// Milliseconds since 1970.
    pub due: i64,
    /// Whose.
    pub room: RoomId,
    /// Number within the room.
    pub nth: u32,
}

impl BellKey {
    /// For a bell due at `due`.
    pub fn new(due: DateTime<Utc>, room: RoomId, nth: u32) -> Self {
        Self { due: due.timestamp_millis(), room, nth }
    }

    /// Key by time.
    pub fn by_time(self) -> Vec<u8> {
        [signed(self.due).as_slice(), &signed(self.room.0), &self.nth.to_be_bytes()].concat()
    }

    /// Key by room.
    pub fn by_room(self) -> Vec<u8> {
        [signed(self.room.0).as_slice(), &signed(self.due), &self.nth.to_be_bytes()].concat()
    }

    /// Reads a key by time.
    pub fn from_time(bytes: &[u8]) -> Result<Self, BookError> {
        let (due, room, nth) = three(bytes)?;
        Ok(Self { due, room: RoomId(room), nth })
    }

    /// Reads a key by room.
    pub fn from_room(bytes: &[u8]) -> Result<Self, BookError> {
        let (room, due, nth) = three(bytes)?;
        Ok(Self { due, room: RoomId(room), nth })
    }
}

fn three(bytes: &[u8]) -> Result<(i64, i64, u32), BookError> {
    let wrong = || BookError::Damaged { detail: "a bell's key of the wrong length".into() };
    let (first, rest) = bytes.split_at_checked(8).ok_or_else(wrong)?;
    let (second, nth) = rest.split_at_checked(8).ok_or_else(wrong)?;
    let nth = u32::from_be_bytes(nth.try_into().map_err(|_| wrong())?);
    Ok((unsigned(first)?, unsigned(second)?, nth))
}

/// A row of the outbox; the smallest goes first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct OutboxKey {
    /// 0: the answer to a press, then by [`Urgency`].
    pub rank: u8,
    /// In the order said.
    pub sequence: u64,
}

impl OutboxKey {
    /// Rank of the answer to a press: the person looks at a button that waits.
    pub const PRESS: u8 = 0;

    /// Rank of everything else.
    pub fn rank(urgency: Urgency) -> u8 {
        match urgency {
            Urgency::Safety => 1,
            Urgency::Answer => 2,
            Urgency::Due => 3,
            Urgency::Board => 4,
        }
    }

    /// The key.
    pub fn bytes(self) -> Vec<u8> {
        [[self.rank].as_slice(), &sequence(self.sequence)].concat()
    }

    /// Reads the key.
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, BookError> {
        let (rank, rest) =
            bytes.split_first().ok_or_else(|| BookError::Damaged { detail: "an empty outbox key".into() })?;
        Ok(Self { rank: *rank, sequence: sequence_of(rest)? })
    }
}

/// Key from a logical message name to the platform's number.
pub fn shown_by_key(room: RoomId, key: &str) -> Vec<u8> {
    [signed(room.0).as_slice(), b"k", key.as_bytes()].concat()
}

/// The room and the logical name in a key of [`shown_by_key`].
pub fn shown_name(key: &[u8]) -> Option<(RoomId, &str)> {
    let (room, rest) = key.split_first_chunk::<8>()?;
    let name = std::str::from_utf8(rest.strip_prefix(b"k")?).ok()?;
    Some((RoomId(unsigned(room).ok()?), name))
}

/// Key from the platform's number to the logical message name.
pub fn shown_by_message(room: RoomId, message: i64) -> Vec<u8> {
    [signed(room.0).as_slice(), b"m", &signed(message)].concat()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn the_order_of_bell_keys_is_the_order_of_due_times(a: i64, b: i64, room: i64, nth: u32) {
            let key = |due| BellKey { due, room: RoomId(room), nth };
            prop_assert_eq!(a.cmp(&b), key(a).by_time().cmp(&key(b).by_time()));
        }

        #[test]
        fn a_bell_key_reads_back_both_ways(due: i64, room: i64, nth: u32) {
            let key = BellKey { due, room: RoomId(room), nth };
            prop_assert_eq!(BellKey::from_time(&key.by_time()).unwrap(), key);
            prop_assert_eq!(BellKey::from_room(&key.by_room()).unwrap(), key);
        }

        #[test]
        fn everything_with_a_prefix_lies_below_its_end(prefix: Vec<u8>, rest: Vec<u8>) {
            prop_assume!(prefix.iter().any(|byte| *byte < u8::MAX));
            let row = [prefix.clone(), rest].concat();
            prop_assert!(row < after(&prefix));
        }
    }
}
