//! What was heard and is passed over for now, though it is in the inbox like all else: it waits for its file, or the program ended
//! in the middle of its turn too often.
//!
//! Others do not wait for it, not even in its own chat: a log of readings is as good a moment later, and what may end the program
//! must not keep everyone else waiting. Whose fault such an end was nobody can know (a turn that hangs, a machine without memory, a
//! hand with `kill -9` all look alike from here), so nothing is given up that may be sound: it is tried again, alone, once the program has
//! gone on for [`CALM`] with nothing else to do.

use super::{Arrival, Desk, Engine, LAST_START, MAX_STARTS};
use crate::book::{BookError, Loss, Pages, Readable, UnderWay, Writes};
use crate::room::{Document, PersonId, RoomId, What};
use chrono::{DateTime, TimeDelta, Utc};
use std::collections::BTreeMap;

/// How long the program must have gone on before it tries what may have ended it.
pub const CALM: TimeDelta = TimeDelta::minutes(1);

/// By sequence in the inbox.
#[derive(Default)]
pub struct Awaited(BTreeMap<u64, Wanted>);

struct Wanted {
    room: RoomId,
    by: Option<PersonId>,
    until: Until,
}

/// What it waits for.
enum Until {
    /// The platform's id of a file.
    File(String),
    /// A calm moment, alone.
    Calm,
}

impl Awaited {
    /// As the book has it.
    pub fn read(pages: &Pages) -> Result<Self, BookError> {
        let mut awaited = Self::default();
        pages.all_inbox(|sequence, arrival| {
            // One that cannot be read is dropped when its turn comes.
            if let Ok(arrival) = arrival {
                awaited.add(sequence, &arrival);
            }
        })?;
        Ok(awaited)
    }

    /// Notes `arrival`, if it has to wait.
    pub fn add(&mut self, sequence: u64, arrival: &Arrival) {
        let doubted = (MAX_STARTS..LAST_START).contains(&arrival.starts).then_some(Until::Calm);
        if let Some(until) = arrival.file.clone().map(Until::File).or(doubted) {
            let by = arrival.heard.by.as_ref().map(|by| by.id);
            self.0.insert(sequence, Wanted { room: arrival.heard.room, by, until });
        }
    }

    /// It waits no longer.
    pub fn remove(&mut self, sequence: u64) {
        self.0.remove(&sequence);
    }

    /// The first that waits for a calm moment.
    pub fn doubted(&self) -> Option<u64> {
        self.0.iter().find(|(_, wanted)| matches!(wanted.until, Until::Calm)).map(|(sequence, _)| *sequence)
    }

    /// Whether this is passed over.
    pub fn has(&self, sequence: u64) -> bool {
        self.0.contains_key(&sequence)
    }

    /// Those that wait for a file.
    pub fn files(&self) -> impl Iterator<Item = (u64, &String)> {
        self.0.iter().filter_map(|(sequence, wanted)| match &wanted.until {
            Until::File(file) => Some((*sequence, file)),
            Until::Calm => None,
        })
    }

    /// What was said in `room`.
    pub fn said_in(&self, room: RoomId) -> Vec<u64> {
        self.0.iter().filter(|(_, wanted)| wanted.room == room).map(|(sequence, _)| *sequence).collect()
    }

    /// What `person` said, anywhere.
    pub fn said_by(&self, person: PersonId) -> Vec<u64> {
        self.0.iter().filter(|(_, wanted)| wanted.by == Some(person)).map(|(sequence, _)| *sequence).collect()
    }
}

impl Engine {
    /// The files to fetch, oldest first: by what they are reported under to [`Self::file_is_there`], and the platform's id.
    pub fn files_wanted(&self) -> Vec<(u64, String)> {
        self.desk().awaited.files().map(|(sequence, file)| (sequence, file.clone())).collect()
    }

    /// What became of a file. Whatever came with it can be decided now.
    ///
    /// # Errors
    /// When the book cannot be read or written: the file is wanted still.
    pub fn file_is_there(&self, sequence: u64, document: Document) -> Result<(), BookError> {
        let mut desk = self.desk();
        match self.drafted.arrival(sequence) {
            Ok(Some(mut arrival)) => {
                arrival.file = None;
                if let What::Document { content, .. } = &mut arrival.heard.what {
                    *content = document;
                }
                let mut writes = Writes::default();
                writes.arrival(sequence, &arrival)?;
                self.drafted.book().commit(&writes.changes)?;
                // Else a file whose turn ends the program would be fetched at every start, and never count as what ended it.
                self.drafted.book().sync(Loss::Process)?;
            }
            Ok(None) | Err(BookError::Damaged { .. }) => {} // forgotten meanwhile, or dropped when its turn comes
            Err(error) => return Err(error),
        }
        desk.awaited.remove(sequence);
        Ok(())
    }

    /// Counts against what was being decided when the program ended that it did. It is made durable by itself: whatever this run comes
    /// to, it counts.
    pub(super) fn count_end(pages: &Pages) -> Result<(), BookError> {
        let UnderWay::Deciding(sequence) = pages.book().was_attempting() else { return Ok(()) };
        // Decided after all, where it is gone; dropped when its turn comes, where it can't be read.
        if let Ok(Some(mut arrival)) = pages.arrival(sequence) {
            arrival.starts = arrival.starts.saturating_add(1);
            if arrival.starts == MAX_STARTS {
                tracing::error!(
                    "the program ended {MAX_STARTS} times while it decided the same thing; it is tried again later, alone"
                );
            }
            let mut writes = Writes::default();
            writes.arrival(sequence, &arrival)?;
            pages.book().commit(&writes.changes)?;
            pages.book().sync(Loss::Process)?;
        }
        Ok(())
    }

    /// What may have ended the program and can be tried at `now`.
    pub(super) fn doubted(&self, desk: &mut Desk, now: DateTime<Utc>) -> Result<Option<(u64, Readable)>, BookError> {
        let Some(sequence) = desk.awaited.doubted() else { return Ok(None) };
        let since = *desk.up_since.get_or_insert(now);
        if now < since {
            desk.up_since = Some(now); // the clock was set back
        }
        if now - since < CALM {
            return Ok(None);
        }
        Ok(match self.drafted.arrival(sequence) {
            Ok(Some(arrival)) => Some((sequence, Ok(arrival))),
            Ok(None) => None,
            Err(error @ BookError::Damaged { .. }) => Some((sequence, Err(error))),
            Err(error) => return Err(error),
        })
    }
}

impl Desk {
    /// The oldest things in the inbox that can be decided.
    pub(super) fn inbox(&self, pages: &Pages, limit: usize) -> Result<Vec<(u64, Readable)>, BookError> {
        pages.inbox(limit, |sequence| self.awaited.has(sequence))
    }
}
