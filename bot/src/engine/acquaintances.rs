//! People as last written, kept in memory for what must not wait for the disk: an inline query comes with every keystroke.

use super::Engine;
use crate::book::BookError;
use crate::room::PersonId;
use crate::room::state::Person;
use std::collections::HashMap;
use std::sync::{Mutex, MutexGuard, PoisonError};

/// People kept before all are read anew.
const MANY: usize = 10_000;

/// Who was asked about before; `None` for someone the book does not know.
#[derive(Default)]
pub(super) struct Acquaintances(Mutex<HashMap<PersonId, Option<Person>>>);

impl Acquaintances {
    fn known(&self) -> MutexGuard<'_, HashMap<PersonId, Option<Person>>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// What is kept of these people is old. To be called after the commit.
    pub fn changed(&self, people: impl IntoIterator<Item = PersonId>) {
        let mut known = self.known();
        for person in people {
            known.remove(&person);
        }
    }
}

impl Engine {
    /// The person as they are committed, read from the book once.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn acquaintance(&self, id: PersonId) -> Result<Option<Person>, BookError> {
        // Held while reading: a change committed meanwhile then takes out what was read before it.
        let mut known = self.acquaintances.known();
        if let Some(person) = known.get(&id) {
            return Ok(person.clone());
        }
        let person = self.pages.person(id)?;
        if known.len() >= MANY {
            known.clear();
        }
        known.insert(id, person.clone());
        Ok(person)
    }
}
