//! A disk in memory that tells what a kill or a power cut leaves of it.
//!
//! Fault model. Commits are all or nothing and reach the disk in their order, as sled's log does. A killed process keeps every commit
//! up to the last sync and any number of those after it; a power cut keeps those up to the last sync that asked for it. A commit
//! or a sync can be refused (full disk, failed write): then nothing has changed. The process can die before or after any commit.
//! Ruled out: bytes that change by themselves, and a sync that lies; the first is tried on real files, the second nobody can help.

use super::witness::{self, Before, Shelves, Undo, Witness};
use crate::fuzz::Chance;
use carvetime::book::{Book, BookError, Changes, Loss, Row, Shelf, UnderWay};
use std::io;
use std::ops::Bound;
use std::sync::{Mutex, MutexGuard, PoisonError};

/// When the process dies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Death {
    /// Before this many more commits are done.
    Before(u32),
    /// Right after this many more commits are done.
    After(u32),
}

/// See the module.
#[derive(Default)]
pub struct Disk(Mutex<State>);

/// What the disk holds, with the witness that watches every commit.
#[derive(Default)]
pub struct State {
    shelves: Shelves,
    /// Commits a power cut could take, oldest first.
    tail: Vec<Step>,
    /// So many of them outlive a kill.
    process_safe: usize,
    death: Option<Death>,
    dead: bool,
    /// The note beside the rows, and whether it stood when the process ended last.
    attempt: UnderWay,
    was_attempting: UnderWay,
    refuse_commits: u32,
    refuse_syncs: u32,
    /// What must be so.
    pub witness: Witness,
}

/// How to take back one commit.
struct Step {
    rows: Vec<Before>,
    facts: Vec<Undo>,
}

impl Disk {
    /// Its inside.
    pub fn state(&self) -> MutexGuard<'_, State> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl State {
    /// The process will die there.
    pub fn die(&mut self, death: Death) {
        self.death = Some(death);
    }

    /// Whether the process has died.
    pub fn is_dead(&self) -> bool {
        self.dead
    }

    /// So many commits and syncs to come are refused.
    pub fn refuse(&mut self, commits: u32, syncs: u32) {
        (self.refuse_commits, self.refuse_syncs) = (commits, syncs);
    }

    /// What is left after the process was killed or the power went; the disk takes writes again.
    pub fn crash(&mut self, loss: Loss, chance: &mut Chance) {
        let safe = if loss == Loss::Process { self.process_safe } else { 0 };
        let keep = safe + chance.below(self.tail.len() - safe + 1);
        while self.tail.len() > keep {
            let Some(step) = self.tail.pop() else { break };
            for (shelf, key, before) in step.rows.into_iter().rev() {
                let rows = self.shelves.entry(shelf).or_default();
                match before {
                    Some(value) => rows.insert(key, value),
                    None => rows.remove(&key),
                };
            }
            self.witness.take_back(step.facts, loss);
        }
        self.tail.clear(); // what is left has been read back from the disk
        self.process_safe = 0;
        (self.dead, self.death) = (false, None);
        self.was_attempting = std::mem::take(&mut self.attempt);
        self.refuse(0, 0);
    }

    /// Whether a power cut could still undo something of that sort.
    pub fn could_lose(&self, sort: impl Fn(&Undo) -> bool) -> bool {
        self.tail.iter().flat_map(|step| &step.facts).any(sort)
    }

    /// The rows of a shelf.
    pub fn shelf(&self, shelf: Shelf) -> impl Iterator<Item = (&Vec<u8>, &Vec<u8>)> {
        self.shelves.get(&shelf).into_iter().flatten()
    }

    fn alive(&self) -> Result<(), BookError> {
        if self.dead { Err(refusal("the process is dead")) } else { Ok(()) }
    }

    fn apply(&mut self, changes: &Changes) {
        let mut decisions = witness::decided();
        let mut step = Step { rows: Vec::new(), facts: Vec::new() };
        for part in changes.parts() {
            // Which turn a part is of shows in what it says: the witness finds everything of the turn in it, or something is wrong.
            let decision = if witness::decides(&part, &self.shelves) { decisions.pop_front() } else { None };
            let mut rows = Vec::new();
            for (shelf, key, value) in part.iter() {
                let at = self.shelves.entry(shelf).or_default();
                let before = match value {
                    Some(value) => at.insert(key.to_vec(), value.to_vec()),
                    None => at.remove(key),
                };
                rows.push((shelf, key.to_vec(), before));
            }
            step.facts.extend(self.witness.committed(&part, &rows, decision, &self.shelves));
            step.rows.extend(rows);
        }
        if !decisions.is_empty() {
            self.witness.wrong.push(format!("{} turns were decided and not written down", decisions.len()));
        }
        self.tail.push(step);
    }
}

fn refusal(what: &str) -> BookError {
    BookError::Disk { path: "simulated".into(), source: io::Error::other(what.to_owned()) }
}

impl Book for Disk {
    fn get(&self, shelf: Shelf, key: &[u8]) -> Result<Option<Vec<u8>>, BookError> {
        let state = self.state();
        state.alive()?;
        Ok(state.shelves.get(&shelf).and_then(|rows| rows.get(key)).cloned())
    }

    fn rows(&self, shelf: Shelf, from: &[u8], below: &[u8], limit: usize) -> Result<Vec<Row>, BookError> {
        let state = self.state();
        state.alive()?;
        let Some(rows) = state.shelves.get(&shelf).filter(|_| from < below) else { return Ok(Vec::new()) };
        let range = rows.range::<[u8], _>((Bound::Included(from), Bound::Excluded(below)));
        Ok(range.take(limit).map(|(key, value)| (key.clone(), value.clone())).collect())
    }

    fn commit(&self, changes: &Changes) -> Result<(), BookError> {
        let mut state = self.state();
        state.alive()?;
        if state.death == Some(Death::Before(0)) {
            state.dead = true;
            return state.alive();
        }
        if state.refuse_commits > 0 {
            state.refuse_commits -= 1;
            drop(witness::decided());
            return Err(refusal("no space left on device"));
        }
        state.apply(changes);
        state.death = match state.death {
            Some(Death::Before(left)) => Some(Death::Before(left - 1)),
            Some(Death::After(0)) => {
                state.dead = true;
                None
            }
            Some(Death::After(left)) => Some(Death::After(left - 1)),
            None => None,
        };
        Ok(())
    }

    fn sync(&self, loss: Loss) -> Result<(), BookError> {
        let mut state = self.state();
        state.alive()?;
        if state.refuse_syncs > 0 {
            state.refuse_syncs -= 1;
            return Err(refusal("input/output error"));
        }
        if loss == Loss::Power {
            state.tail.clear();
        }
        state.process_safe = state.tail.len();
        Ok(())
    }

    fn attempt(&self, under_way: UnderWay) -> Result<(), BookError> {
        let mut state = self.state();
        state.alive()?;
        state.attempt = under_way;
        Ok(())
    }

    fn was_attempting(&self) -> UnderWay {
        self.state().was_attempting
    }
}
