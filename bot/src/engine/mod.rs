//! The engine: takes what was heard through a turn and into the book, and hands out what is to be sent.
//!
//! Owns the order of things: inbox → [`decide`](crate::room::decide) → one transaction → outbox, and the bells. Turns that wait
//! together are written down together; a transaction holds whole turns, never a part of one. Never decides what to say, never talks to a network, reads no clock (every call is told the time). All calls block; one at
//! a time is inside. Start at [`Engine`]. The turn itself is in `turn`, the way out in `outbox`.
//!
//! Promises: what [`Engine::accept`] or [`Engine::hear`] returned for is never lost and never decided twice; a message leaves the outbox
//! only when its sending is reported, so a crash may repeat the one under way in a chat and loses none.

mod acquaintances;
mod afar;
mod ahead;
mod arrival;
mod awaited;
mod calendar;
mod message;
mod outbox;
mod queue;
mod render;
mod story;
mod turn;

pub use arrival::{Arrival, Topic, UpdateId};
pub use message::{Attachment, Failure, Key, Message, Outgoing};
pub use render::{Audience, Render, reader};

use crate::book::{Book, BookError, Draft, Loss, OutboxKey, Pages, Shelf, UnderWay, Writes, person_of};
use crate::room::{Heard, RoomId, RoomKind, Scene, Turn, What};
use chrono::{DateTime, TimeDelta, Utc};
use queue::Queue;
use std::collections::{BTreeSet, VecDeque};
use std::path::Path;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// What decides: [`crate::room::decide`], or a stand-in in tests.
pub type DecideFn = fn(&Scene, &Heard, DateTime<Utc>) -> Turn;

/// Update ids remembered. The platform repeats only what was not acknowledged: far fewer.
const WINDOW: usize = 4096;

/// Turns that share one commit and one sync.
const BATCH: usize = 128;

/// So often the program may end in the middle of an arrival's turn before that one is tried alone only; see `awaited`.
const MAX_STARTS: u8 = 3;

/// So often altogether. Then it is what ends the program: it is set aside, and whoever said it is told.
const LAST_START: u8 = 5;

/// Arrivals taken in before they are decided after the program ended in deciding. What ended it is told again soon, and is among them.
const CAREFUL: usize = 1000;

/// Something said longer ago than this counts as said when it was said, not when it came (a reading above all).
const STALE: TimeDelta = TimeDelta::seconds(90);

/// A bell set for the past while bells ring rings this much later, lest it ring without end.
const BREATH: TimeDelta = TimeDelta::seconds(1);

/// Rooms that ring at a time.
const AT_ONCE: usize = 200;

/// Update ids as they came together, by sequence.
type Window = VecDeque<(u64, Vec<UpdateId>)>;

fn read_window(pages: &Pages) -> Result<Window, BookError> {
    let together = |updates: Vec<u64>| updates.into_iter().map(UpdateId).collect();
    Ok(pages.handled()?.into_iter().map(|(sequence, updates)| (sequence, together(updates))).collect())
}

fn all_of(window: &Window) -> BTreeSet<UpdateId> {
    window.iter().flat_map(|(_, updates)| updates).copied().collect()
}

/// What became of a batch that was heard.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Taken {
    /// How many of it had not been taken in before.
    pub new: usize,
    /// How many were decided.
    pub turns: usize,
    /// Whether [`Engine::work`] and [`Engine::ring`] may have something to do, sooner than it seemed before.
    pub more: bool,
}

/// See the module.
pub struct Engine {
    /// The book as it is committed.
    pages: Pages,
    /// The same as the turns of the batch under way have left it: for whoever is at the desk.
    drafted: Pages,
    draft: Arc<Draft>,
    voice: Arc<dyn Render>,
    decide: DecideFn,
    desk: Mutex<Desk>,
    /// Held by whoever waits for the desk: so that those who want it get it in turns, and a long row of turns lets the
    /// messages out in between.
    next_in: Mutex<()>,
    acquaintances: acquaintances::Acquaintances,
}

/// What is kept at hand; all of it can be read from the book again.
struct Desk {
    next: u64,
    /// Update ids as they came together, oldest first, by sequence.
    window: Window,
    handled: BTreeSet<UpdateId>,
    queue: Queue,
    /// What is passed over for now.
    awaited: awaited::Awaited,
    /// Something is committed that a power cut could still take.
    unsynced: bool,
    /// What stood in the inbox at the start has lower numbers. As long as any of it is there, turns go one by one, each noted beside
    /// the store: one that ends the program is counted at the next start.
    one_by_one: Option<u64>,
    /// When it was first asked for work.
    up_since: Option<DateTime<Utc>>,
    /// So many arrivals are taken in before they are decided: the program ended while it decided something it had not taken in.
    careful: usize,
    /// Whether calls go ahead of their time.
    crowd: ahead::Crowd,
}

impl Engine {
    /// Over `book`, speaking with `voice`.
    ///
    /// # Errors
    /// When the book cannot be read, or not written where what waits to be sent is out of order.
    pub fn new(book: Arc<dyn Book>, voice: Arc<dyn Render>, decide: DecideFn) -> Result<Self, BookError> {
        let draft = Arc::new(Draft::new(Arc::clone(&book)));
        let (pages, drafted) = (Pages::new(book), Pages::new(Arc::clone(&draft) as _));
        let window = read_window(&pages)?;
        Self::count_end(&pages)?;
        let mut desk = Desk {
            next: pages.next_sequence()?,
            handled: all_of(&window),
            window,
            queue: outbox::read_queue(&pages, &[])?,
            awaited: awaited::Awaited::read(&pages)?,
            unsynced: false,
            one_by_one: None,
            up_since: None,
            careful: if pages.book().was_attempting() == UnderWay::Hearing { CAREFUL } else { 0 },
            crowd: ahead::Crowd::default(),
        };
        desk.one_by_one = desk.inbox(&pages, 1)?.first().map(|_| desk.next);
        outbox::put_in_order(&pages, &mut desk)?;
        Ok(Self {
            pages,
            drafted,
            draft,
            voice,
            decide,
            desk: Mutex::new(desk),
            next_in: Mutex::default(),
            acquaintances: Default::default(),
        })
    }

    /// Takes a batch in. When this returns, it is safe to tell the platform so. Deliveries taken before are dropped.
    /// Returns how many were new.
    ///
    /// # Errors
    /// When the book cannot be written: then nothing was taken.
    pub fn accept<A: Into<Arrival>>(&self, batch: impl IntoIterator<Item = A>) -> Result<usize, BookError> {
        self.hear(batch, None).map(|taken| taken.new)
    }

    /// Takes a batch in and decides it at once, as [`Self::accept`] and [`Self::work`] do one after the other, but waits for the disk once:
    /// so does whoever waits for an answer. Where something older is undecided, or the time is not known for sure, it is
    /// only taken in.
    ///
    /// # Errors
    /// When the book cannot be read or written: what was taken in is decided by [`Self::work`]; what was not is told again.
    pub fn hear<A: Into<Arrival>>(
        &self,
        batch: impl IntoIterator<Item = A>,
        now: Option<DateTime<Utc>>,
    ) -> Result<Taken, BookError> {
        let mut desk = self.desk();
        let first_in_line = desk.one_by_one.is_none() && desk.careful == 0 && desk.inbox(&self.drafted, 1)?.is_empty();
        let taken = match now.filter(|_| first_in_line) {
            Some(now) => self.hear_now(&mut desk, batch, now)?,
            None => {
                let new = self.take_in(&mut desk, batch)?.len();
                desk.careful = desk.careful.saturating_sub(new);
                Taken { new, turns: 0, more: new > 0 }
            }
        };
        if desk.unsynced {
            self.settle(&mut desk)?; // also when told again because the first time could not be promised
        }
        Ok(taken)
    }

    /// Takes in and decides with one commit. Until then only a note says that there was something: when a turn ends the program,
    /// the next start takes everything in before it decides, and counts what it stumbles over.
    fn hear_now<A: Into<Arrival>>(
        &self,
        desk: &mut Desk,
        batch: impl IntoIterator<Item = A>,
        now: DateTime<Utc>,
    ) -> Result<Taken, BookError> {
        self.drafted.book().attempt(UnderWay::Hearing)?;
        let (mut new, mut turns) = (0, 0);
        let heard = self.together(desk, |desk| {
            let taken = self.take_in(desk, batch)?;
            new = taken.len();
            let at_once = taken.into_iter().filter(|(_, arrival)| arrival.file.is_none());
            at_once.into_iter().try_for_each(|(sequence, arrival)| {
                turns += 1;
                self.decided(desk, sequence, arrival, now)
            })
        });
        self.drafted.book().attempt(UnderWay::Nothing)?;
        Ok(Taken { new, turns, more: heard? })
    }

    /// Writes a batch down without waiting for the disk. Returns what was new, with the numbers it got.
    fn take_in<A: Into<Arrival>>(
        &self,
        desk: &mut Desk,
        batch: impl IntoIterator<Item = A>,
    ) -> Result<Vec<(u64, Arrival)>, BookError> {
        let mut writes = Writes::default();
        let first = desk.next;
        let mut next = first;
        let mut new: Vec<UpdateId> = Vec::new();
        let mut taken = Vec::new();
        for arrival in batch {
            let arrival: Arrival = arrival.into();
            if let Some(update) = arrival.update {
                if desk.handled.contains(&update) || new.contains(&update) {
                    continue;
                }
                new.push(update);
            }
            writes.arrival(next, &arrival)?;
            taken.push((next, arrival));
            next += 1;
        }
        if taken.is_empty() {
            return Ok(taken);
        }
        // What came together is remembered in one row, and forgotten together.
        if !new.is_empty() {
            writes.handled(first, &new.iter().map(|update| update.0).collect::<Vec<_>>())?;
        }
        let (mut surplus, mut left) = (0, desk.handled.len() + new.len());
        for (sequence, updates) in &desk.window {
            left = left.saturating_sub(updates.len());
            if left < WINDOW {
                break;
            }
            writes.handled_forgotten(*sequence);
            surplus += 1;
        }
        writes.next_sequence(next)?;
        self.drafted.book().commit(&writes.changes)?;
        desk.unsynced = true;
        desk.next = next;
        taken.iter().for_each(|(sequence, arrival)| desk.awaited.add(*sequence, arrival));
        for (_, updates) in desk.window.drain(..surplus).collect::<Vec<_>>() {
            updates.iter().for_each(|update| _ = desk.handled.remove(update));
        }
        if !new.is_empty() {
            desk.handled.extend(&new);
            desk.window.push_back((first, new));
        }
        Ok(taken)
    }

    /// Decides everything that waits in the inbox, in order, as of `now`. Returns the number of turns.
    ///
    /// # Errors
    /// When the book cannot be read or written; what was not decided waits.
    pub fn work(&self, now: DateTime<Utc>) -> Result<usize, BookError> {
        let mut count = 0;
        loop {
            let mut desk = self.desk();
            let mut alone = desk.one_by_one.is_some() || desk.careful > 0;
            let mut batch = desk.inbox(&self.drafted, if alone { 1 } else { BATCH })?;
            let first = batch.first().map(|(sequence, _)| *sequence);
            desk.one_by_one.take_if(|start| first.is_none_or(|first| first >= *start));
            if batch.is_empty() {
                batch.extend(self.doubted(&mut desk, now)?);
                alone = true;
            }
            let Some((first, _)) = batch.first() else { return Ok(count) };
            let first = *first;
            count += batch.len();
            // A turn that comes to its end, well or with a disk that refuses, is not what ends the program.
            if alone {
                self.drafted.book().attempt(UnderWay::Deciding(first))?;
            }
            let done = self.together(&mut desk, |desk| {
                batch.into_iter().try_for_each(|(sequence, arrival)| match arrival {
                    Ok(arrival) => self.decided(desk, sequence, arrival, now),
                    Err(BookError::Damaged { .. }) => {
                        tracing::error!("something heard could not be read back and was dropped");
                        let mut writes = Writes::default();
                        writes.arrival_done(sequence);
                        self.drafted.book().commit(&writes.changes)
                    }
                    Err(error) => Err(error),
                })
            });
            if alone {
                self.drafted.book().attempt(UnderWay::Nothing)?;
            }
            done?;
            desk.awaited.remove(first);
        }
    }

    /// Takes `turns` and writes them down with one commit and one sync. When one of them fails, those before it are kept. Whether
    /// bells were set or taken back.
    fn together(
        &self,
        desk: &mut Desk,
        turns: impl FnOnce(&mut Desk) -> Result<(), BookError>,
    ) -> Result<bool, BookError> {
        let (next, draft) = (desk.next, self.draft.open());
        let done = turns(desk);
        let changes = draft.take();
        if changes.is_empty() {
            return done.map(|()| false);
        }
        if let Err(error) = self.pages.book().commit(&changes) {
            // Nothing was committed: what is at hand must say the same as the book.
            desk.next = next;
            desk.queue = outbox::read_queue(&self.pages, &desk.queue.under_way())?;
            desk.window = read_window(&self.pages)?;
            desk.handled = all_of(&desk.window);
            desk.awaited = awaited::Awaited::read(&self.pages)?;
            return Err(error);
        }
        desk.unsynced = true;
        let people = changes.iter().filter(|(shelf, ..)| *shelf == Shelf::People);
        self.acquaintances.changed(people.filter_map(|(_, key, _)| person_of(key)));
        let bells = changes.iter().any(|(shelf, ..)| shelf == Shelf::Bells);
        self.settle(desk).and(done).map(|()| bells)
    }

    /// Takes what stands in the inbox under `sequence` through its turn.
    fn decided(&self, desk: &mut Desk, sequence: u64, arrival: Arrival, now: DateTime<Utc>) -> Result<(), BookError> {
        let mut writes = Writes::default();
        writes.arrival_done(sequence);
        let Arrival { mut heard, message, topic, sent, title, starts, .. } = arrival;
        let room = self.drafted.now_at(heard.room)?;
        if matches!(heard.what, What::Migrated { .. }) && room != heard.room {
            return self.drafted.book().commit(&writes.changes); // told twice, moved once
        }
        heard.room = room;
        let as_of = sent.filter(|sent| now - *sent > STALE).unwrap_or(now);
        let decide = (starts < LAST_START).then_some(self.decide);
        self.turn(desk, turn::Occasion { heard, message, topic, title, as_of, now, decide }, writes)
    }

    /// Rings what is due at `now`, a turn a room, and what a crowd makes go ahead of its time; at most `AT_ONCE` rooms, so that
    /// whoever sends and hears need not wait. Returns the number of rooms.
    ///
    /// # Errors
    /// When the book cannot be read or written; what did not ring rings next time.
    pub fn ring(&self, now: DateTime<Utc>) -> Result<usize, BookError> {
        let mut desk = self.desk();
        let rooms = self.rooms_to_ring(&mut desk, now, AT_ONCE)?;
        let mut ahead = 0;
        let rung = self.together(&mut desk, |desk| {
            rooms.iter().try_for_each(|room| self.ring_room(desk, *room, now, now))?;
            ahead = self.ring_ahead(desk, now, AT_ONCE - rooms.len())?;
            Ok(())
        });
        if rung.is_err() {
            desk.crowd.look_again(); // those that did not ring have to be found once more
        }
        rung.map(|_| rooms.len() + ahead)
    }

    /// Rings what is due in `room` by `as_of`, as if it were that time.
    fn ring_room(
        &self,
        desk: &mut Desk,
        room: RoomId,
        as_of: DateTime<Utc>,
        now: DateTime<Utc>,
    ) -> Result<(), BookError> {
        let mut writes = Writes::default();
        let mut bells = Vec::new();
        let due = self.drafted.bells_of(room)?.into_iter().take_while(|key| key.due <= as_of.timestamp_millis());
        for key in due {
            writes.no_bell(key);
            match self.drafted.bell(key) {
                Ok(Some(bell)) => bells.push((bell.at, bell.kind)),
                Ok(None) => {}
                Err(BookError::Damaged { .. }) => tracing::error!("a bell could not be read back and was dropped"),
                Err(error) => return Err(error),
            }
        }
        if bells.is_empty() && writes.changes.is_empty() {
            return Ok(()); // a turn of this round has taken it back
        }
        let heard = Heard { room, kind: self.kind_of(room), by: None, for_group: false, what: What::Rang { bells } };
        self.turn(
            desk,
            turn::Occasion { heard, message: None, topic: None, title: None, as_of, now, decide: Some(self.decide) },
            writes,
        )
    }

    /// Whether there is nothing to decide, to ring or to send at `now`.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn is_at_rest(&self, now: DateTime<Utc>) -> Result<bool, BookError> {
        let desk = self.desk();
        let rings = self.next_bell()?.is_some_and(|due| due <= now);
        let heard = desk.awaited.files().next().is_none() && desk.inbox(&self.drafted, 1)?.is_empty();
        Ok(desk.queue.len() == 0 && !rings && heard)
    }

    /// When the next bell is due.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn next_bell(&self) -> Result<Option<DateTime<Utc>>, BookError> {
        let first = self.pages.first_bell()?;
        Ok(first.and_then(|key| DateTime::from_timestamp_millis(key.due)))
    }

    /// What the room's message with this platform number is called, if it is the newest of that name.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn key_of(&self, room: RoomId, message: i64) -> Result<Option<String>, BookError> {
        self.pages.key_of(self.pages.now_at(room)?, message)
    }

    /// Whether the bot of this id may go on with the book: one that nobody has kept yet is its own from now on. Another
    /// bot's people have not let this one write to them, and its update numbers mean other things.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn is_kept_by(&self, bot: i64) -> Result<bool, BookError> {
        let mut desk = self.desk();
        if let Some(keeper) = self.drafted.bot()? {
            return Ok(keeper == bot);
        }
        let mut writes = Writes::default();
        writes.bot(bot)?;
        self.drafted.book().commit(&writes.changes)?;
        self.settle(&mut desk)?;
        Ok(true)
    }

    /// What the book holds: for reading.
    pub fn pages(&self) -> &Pages {
        &self.pages
    }

    /// Writes the day's export into the data directory `dir` while nothing changes, once a day. Whether it is new.
    ///
    /// # Errors
    /// As [`keeper::export_daily`](crate::book::keeper::export_daily).
    pub fn export_daily(&self, dir: &Path, now: DateTime<Utc>) -> Result<bool, BookError> {
        let _still = self.desk();
        Ok(crate::book::keeper::export_daily(self.drafted.book(), dir, now)?.is_some())
    }

    /// Writes a backup while nothing changes. Returns the number of rows.
    ///
    /// # Errors
    /// See [`crate::book::backup`].
    pub fn backup(&self, file: &Path) -> Result<u64, BookError> {
        let _still = self.desk();
        crate::book::backup(self.drafted.book(), file)
    }

    /// Private or group, as the book knows it or as the number tells.
    fn kind_of(&self, room: RoomId) -> RoomKind {
        let known = self.drafted.room(room).ok().flatten().map(|room| room.kind);
        known.unwrap_or(if room.0 > 0 { RoomKind::Private } else { RoomKind::Group })
    }

    fn desk(&self) -> MutexGuard<'_, Desk> {
        // A panic inside is caught where it can happen; the desk is only changed after a commit.
        let _next = self.next_in.lock().unwrap_or_else(PoisonError::into_inner);
        self.desk.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Makes everything so far outlive a power cut, before anything outside learns of it.
    fn settle(&self, desk: &mut Desk) -> Result<(), BookError> {
        desk.unsynced = true;
        self.drafted.book().sync(Loss::Power)?;
        desk.unsynced = false;
        Ok(())
    }
}

impl std::fmt::Debug for Engine {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.debug_struct("Engine").finish_non_exhaustive()
    }
}

impl Desk {
    fn number(&mut self) -> u64 {
        let number = self.next;
        self.next += 1;
        number
    }

    fn outbox_key(&mut self, message: &Message) -> OutboxKey {
        OutboxKey { rank: message.rank(), sequence: self.number() }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::book::MockBook;
    use crate::words::Voice;

    fn said() -> (Option<UpdateId>, Heard) {
        let heard =
            Heard { room: RoomId(1), kind: RoomKind::Private, by: None, for_group: false, what: What::Unreadable };
        (Some(UpdateId(1)), heard)
    }

    #[test]
    fn nothing_is_promised_until_the_disk_has_it() {
        let mut book = MockBook::new();
        book.expect_get().returning(|_, _| Ok(None));
        book.expect_rows().returning(|_, _, _, _| Ok(Vec::new()));
        book.expect_was_attempting().return_const(UnderWay::Nothing);
        book.expect_commit().times(1).returning(|_| Ok(()));
        let mut refusals = 1;
        book.expect_sync().times(2).returning(move |_| {
            refusals -= 1;
            if refusals < 0 { Ok(()) } else { Err(BookError::Damaged { detail: "full".into() }) }
        });
        let engine = Engine::new(Arc::new(book), Arc::new(Voice::new()), crate::room::decide).unwrap();
        engine.accept([said()]).unwrap_err();
        // Told again: it is in the inbox already, but only now is it safe to say so.
        assert_eq!(engine.accept([said()]).unwrap(), 0);
    }
}
