//! What was heard and waits for its file. It is in the inbox like all else and is passed over until the file is there.
//!
//! Others do not wait for it, not even in its own chat: a log of readings is as good a moment later.

use super::{Arrival, Desk, Engine};
use crate::book::{BookError, Loss, Pages, Readable, Writes};
use crate::room::{Document, PersonId, RoomId, What};
use std::collections::BTreeMap;

/// By sequence in the inbox.
#[derive(Default)]
pub struct Awaited(BTreeMap<u64, Wanted>);

struct Wanted {
    room: RoomId,
    by: Option<PersonId>,
    file: String,
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

    /// Notes `arrival`, if it waits for a file.
    pub fn add(&mut self, sequence: u64, arrival: &Arrival) {
        if let Some(file) = arrival.file.clone() {
            let by = arrival.heard.by.as_ref().map(|by| by.id);
            self.0.insert(sequence, Wanted { room: arrival.heard.room, by, file });
        }
    }

    /// Whether this is passed over.
    pub fn has(&self, sequence: u64) -> bool {
        self.0.contains_key(&sequence)
    }

    /// Whether nothing waits.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
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
        self.desk().awaited.0.iter().map(|(sequence, wanted)| (*sequence, wanted.file.clone())).collect()
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
        desk.awaited.0.remove(&sequence);
        Ok(())
    }
}

impl Desk {
    /// The oldest things in the inbox that can be decided.
    pub(super) fn inbox(&self, pages: &Pages, limit: usize) -> Result<Vec<(u64, Readable)>, BookError> {
        pages.inbox(limit, |sequence| self.awaited.has(sequence))
    }
}
