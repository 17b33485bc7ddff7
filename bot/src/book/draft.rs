//! The book as the turns of one batch have left it, before they are committed together.
//!
//! A [`Draft`] stands before a book. While it is open, what is committed to it is only noted, and is read back from the notes;
//! closed, it passes everything on. So turns follow each other as if each were in the book already, and all of them cost one
//! transaction. Owns no rows: what is noted and never handed over is as if it had never been.

use super::{Book, BookError, Changes, Loss, Row, Shelf, UnderWay};
use std::collections::BTreeMap;
use std::ops::Bound;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// See the module.
pub struct Draft {
    book: Arc<dyn Book>,
    notes: Mutex<Option<Notes>>,
}

/// What is noted while it is open.
#[derive(Default)]
struct Notes {
    /// Turn by turn.
    changes: Changes,
    /// Where among them the newest of each row is.
    newest: BTreeMap<(Shelf, Vec<u8>), usize>,
}

impl Notes {
    fn value(&self, at: usize) -> Option<&Vec<u8>> {
        self.changes.list.get(at).and_then(|(.., value)| value.as_ref())
    }
}

impl Draft {
    /// Before `book`, closed.
    pub fn new(book: Arc<dyn Book>) -> Self {
        Self { book, notes: Mutex::default() }
    }

    /// Open until what is returned is done with: [`Open::take`] hands over what was noted, else it is forgotten.
    pub fn open(&self) -> Open<'_> {
        *self.notes() = Some(Notes::default());
        Open(self)
    }

    /// Whether the row is among what is noted.
    pub fn has(&self, shelf: Shelf, key: &[u8]) -> bool {
        self.notes().as_ref().is_some_and(|notes| notes.newest.contains_key(&(shelf, key.to_vec())))
    }

    fn notes(&self) -> MutexGuard<'_, Option<Notes>> {
        self.notes.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// A draft that is being written. Dropped, it is closed and forgotten: also when a turn panics.
pub struct Open<'a>(&'a Draft);

impl Open<'_> {
    /// Everything noted, in order, a part a turn.
    pub fn take(self) -> Changes {
        self.0.notes().take().map(|notes| notes.changes).unwrap_or_default()
    }
}

impl Drop for Open<'_> {
    fn drop(&mut self) {
        *self.0.notes() = None;
    }
}

impl Book for Draft {
    fn get(&self, shelf: Shelf, key: &[u8]) -> Result<Option<Vec<u8>>, BookError> {
        if let Some(notes) = &*self.notes()
            && let Some(at) = notes.newest.get(&(shelf, key.to_vec()))
        {
            return Ok(notes.value(*at).cloned());
        }
        self.book.get(shelf, key)
    }

    fn rows(&self, shelf: Shelf, from: &[u8], below: &[u8], limit: usize) -> Result<Vec<Row>, BookError> {
        let notes = self.notes();
        let Some(notes) = notes.as_ref().filter(|_| from < below) else {
            return self.book.rows(shelf, from, below, limit);
        };
        let range = (Bound::Included((shelf, from.to_vec())), Bound::Excluded((shelf, below.to_vec())));
        let noted: Vec<_> = notes.newest.range(range).collect();
        if noted.is_empty() {
            return self.book.rows(shelf, from, below, limit);
        }
        // Each note hides one row at most.
        let kept = self.book.rows(shelf, from, below, limit.saturating_add(noted.len()))?;
        let mut rows: BTreeMap<Vec<u8>, Vec<u8>> = kept.into_iter().collect();
        for ((_, key), at) in noted {
            match notes.value(*at) {
                Some(value) => drop(rows.insert(key.clone(), value.clone())),
                None => drop(rows.remove(key)),
            }
        }
        Ok(rows.into_iter().take(limit).collect())
    }

    fn commit(&self, changes: &Changes) -> Result<(), BookError> {
        match self.notes().as_mut() {
            None => self.book.commit(changes),
            Some(notes) => {
                let first = notes.changes.list.len();
                for (nth, (shelf, key, _)) in changes.iter().enumerate() {
                    notes.newest.insert((shelf, key.to_vec()), first + nth);
                }
                notes.changes.append(changes.clone());
                Ok(())
            }
        }
    }

    fn sync(&self, loss: Loss) -> Result<(), BookError> {
        self.book.sync(loss)
    }

    fn attempt(&self, under_way: UnderWay) -> Result<(), BookError> {
        self.book.attempt(under_way)
    }

    fn was_attempting(&self) -> UnderWay {
        self.book.was_attempting()
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::super::SledBook;
    use super::*;
    use proptest::prelude::*;

    fn changes(list: &[(u8, Option<u8>)]) -> Changes {
        let mut changes = Changes::default();
        for (key, value) in list {
            match value {
                Some(value) => changes.put(Shelf::Rooms, [*key], vec![*value]),
                None => changes.remove(Shelf::Rooms, [*key]),
            }
        }
        changes
    }

    fn all(book: &dyn Book) -> Vec<Row> {
        book.rows(Shelf::Rooms, &[], &[u8::MAX; 2], usize::MAX).unwrap()
    }

    #[test]
    fn what_is_not_handed_over_never_was() {
        let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
        let draft = Draft::new(Arc::clone(&book));
        drop({
            let open = draft.open();
            draft.commit(&changes(&[(1, Some(1))])).unwrap();
            assert_eq!(draft.get(Shelf::Rooms, &[1]).unwrap(), Some(vec![1]));
            open
        });
        assert_eq!(draft.get(Shelf::Rooms, &[1]).unwrap(), None);
        draft.commit(&changes(&[(2, Some(2))])).unwrap();
        assert_eq!(all(&*book), [(vec![2], vec![2])]);
    }

    type Part = Vec<(u8, Option<u8>)>;

    fn parts() -> impl Strategy<Value = Vec<Part>> {
        let change = (0..12_u8, proptest::option::of(any::<u8>()));
        proptest::collection::vec(proptest::collection::vec(change, 1..5), 1..6)
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        /// An open draft reads like a book that has the same commits, and hands over the same, part by part.
        #[test]
        fn an_open_draft_reads_like_the_book_it_becomes(
            before in parts(), after in parts(), from in 0..12_u8, below in 0..14_u8, limit in 0..6_usize,
        ) {
            let (book, model): (Arc<dyn Book>, _) = (Arc::new(SledBook::temporary().unwrap()), SledBook::temporary().unwrap());
            for part in &before {
                book.commit(&changes(part)).unwrap();
                model.commit(&changes(part)).unwrap();
            }
            let draft = Draft::new(Arc::clone(&book));
            let open = draft.open();
            for part in &after {
                draft.commit(&changes(part)).unwrap();
                model.commit(&changes(part)).unwrap();
                prop_assert_eq!(all(&draft), all(&model));
                let some = |book: &dyn Book| book.rows(Shelf::Rooms, &[from], &[below], limit).unwrap();
                prop_assert_eq!(some(&draft), some(&model));
                prop_assert_eq!(draft.get(Shelf::Rooms, &[from]).unwrap(), model.get(Shelf::Rooms, &[from]).unwrap());
            }
            let taken = open.take();
            let kept: Vec<Changes> = after.iter().map(|part| changes(part)).collect();
            prop_assert_eq!(taken.parts().collect::<Vec<_>>(), kept);
            book.commit(&taken).unwrap();
            prop_assert_eq!(all(&*book), all(&model));
        }
    }
}
