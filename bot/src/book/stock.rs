//! What the store should hold: how many rows, and the sum of their checksums.
//!
//! It is kept in the store and changes with every commit, in the same transaction. sled drops a page it can't read when it opens, and
//! goes on as if its rows had never been, or had never changed; a count at the start knows better.

use super::{BookError, Shelf, SledBook, stored};
use std::thread;

/// See the module.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Stock {
    rows: u64,
    sum: u64,
}

impl Stock {
    /// A row more.
    pub fn add(&mut self, shelf: Shelf, key: &[u8], value: &[u8]) {
        self.rows = self.rows.wrapping_add(1);
        self.sum = self.sum.wrapping_add(sum(shelf, key, value));
    }

    /// A row less.
    pub fn take(&mut self, shelf: Shelf, key: &[u8], value: &[u8]) {
        self.rows = self.rows.wrapping_sub(1);
        self.sum = self.sum.wrapping_sub(sum(shelf, key, value));
    }

    /// As it is stored.
    pub fn bytes(self) -> Vec<u8> {
        [self.rows.to_be_bytes(), self.sum.to_be_bytes()].concat()
    }

    /// The stock behind [`Self::bytes`].
    pub fn read(bytes: &[u8]) -> Option<Self> {
        let (rows, sum) = bytes.split_first_chunk::<8>()?;
        Some(Self { rows: u64::from_be_bytes(*rows), sum: u64::from_be_bytes(sum.try_into().ok()?) })
    }

    /// Counts what is in `book`, and checks every row's own checksum.
    ///
    /// # Errors
    /// [`BookError::Damaged`] where a row can't be read, and those of the book.
    pub fn count(book: &SledBook) -> Result<Self, BookError> {
        // Bells are most of the rows where there are many; no shelf depends on another.
        thread::scope(|scope| {
            let counts = Shelf::ALL.map(|shelf| scope.spawn(move || count(book, shelf)));
            counts.into_iter().try_fold(Self::default(), |mut all, counted| {
                let panicked = |_| BookError::Damaged { detail: "the rows can't be counted".into() };
                let shelf = counted.join().map_err(panicked)??;
                all.rows = all.rows.wrapping_add(shelf.rows);
                all.sum = all.sum.wrapping_add(shelf.sum);
                Ok(all)
            })
        })
    }
}

fn count(book: &SledBook, shelf: Shelf) -> Result<Stock, BookError> {
    let mut stock = Stock::default();
    book.visit(shelf, |key, value| match stored::unwrap(value) {
        Some(_) => {
            stock.add(shelf, key, value);
            Ok(())
        }
        None => Err(BookError::Damaged { detail: format!("a row of {}", shelf.name()) }),
    })?;
    Ok(stock)
}

fn sum(shelf: Shelf, key: &[u8], value: &[u8]) -> u64 {
    let mut sum = crc32fast::Hasher::new();
    sum.update(shelf.name().as_bytes());
    sum.update(key);
    sum.update(value);
    u64::from(sum.finalize())
}
