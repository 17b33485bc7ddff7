//! The book: everything the bot remembers, on disk.
//!
//! [`Book`] is the narrow door (read, list, commit, sync) behind which all of sled sits in one module, so that another
//! store means another module. [`Pages`] writes and reads the typed rows through it. Owns keys, stored forms and their
//! versions, the backup. Never decides anything, never sends anything, holds no secret. Start at [`Book`].
//!
//! Durability: a commit is all or nothing. It outlives a killed process after [`Book::sync`] with [`Loss::Process`], and
//! a power cut after [`Loss::Power`]; callers sync once for a batch, before anything outside learns of it.

mod attempt;
mod backup;
mod blobs;
mod draft;
mod error;
pub mod keeper;
mod keys;
mod mark;
mod pages;
mod sled_book;
mod stock;
mod stored;

pub use backup::{backup, restore};
pub(crate) use draft::Draft;
pub use error::BookError;
pub use keys::{BellKey, OutboxKey};
pub(crate) use keys::{person_key, person_of};
pub use pages::Pages;
pub(crate) use pages::{Readable, Writes};
pub use sled_book::SledBook;
pub(crate) use stored::hex_bytes;

/// One kind of row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Shelf {
    /// Schema version, next sequence number.
    Meta,
    /// What was heard and is not decided yet, by sequence.
    Inbox,
    /// The newest update ids, by sequence.
    Handled,
    /// Rooms by id.
    Rooms,
    /// People by id.
    People,
    /// Bells by due time, room and number.
    Bells,
    /// The same bells by room, due time and number.
    BellsOf,
    /// Rendered messages that wait to be sent, by rank and sequence.
    Outbox,
    /// Which platform message carries a key, and back.
    Shown,
    /// The topic a group last spoke in.
    Topics,
    /// Groups that became another one.
    Aliases,
}

impl Shelf {
    /// All shelves.
    pub const ALL: [Self; 11] = [
        Self::Meta,
        Self::Inbox,
        Self::Handled,
        Self::Rooms,
        Self::People,
        Self::Bells,
        Self::BellsOf,
        Self::Outbox,
        Self::Shown,
        Self::Topics,
        Self::Aliases,
    ];

    /// The name in the store and in backups.
    pub fn name(self) -> &'static str {
        match self {
            Self::Meta => "meta",
            Self::Inbox => "inbox",
            Self::Handled => "handled",
            Self::Rooms => "rooms",
            Self::People => "people",
            Self::Bells => "bells",
            Self::BellsOf => "bells-of",
            Self::Outbox => "outbox",
            Self::Shown => "shown",
            Self::Topics => "topics",
            Self::Aliases => "aliases",
        }
    }

    /// The shelf of that name.
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|shelf| shelf.name() == name)
    }
}

/// A row: key and stored value.
pub type Row = (Vec<u8>, Vec<u8>);

/// Rows to put and remove, all or none. A later change of the same row wins.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Changes {
    list: Vec<(Shelf, Vec<u8>, Option<Vec<u8>>)>,
    /// Where each part that was added with [`Self::append`] ends.
    ends: Vec<usize>,
}

impl Changes {
    /// Writes a row.
    pub fn put(&mut self, shelf: Shelf, key: impl Into<Vec<u8>>, value: Vec<u8>) {
        self.list.push((shelf, key.into(), Some(value)));
    }

    /// Removes a row; one that is not there is no error.
    pub fn remove(&mut self, shelf: Shelf, key: impl Into<Vec<u8>>) {
        self.list.push((shelf, key.into(), None));
    }

    /// Whether there is nothing to do.
    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// Adds everything of `part`, which belongs together: a turn.
    pub fn append(&mut self, part: Self) {
        self.list.extend(part.list);
        self.ends.push(self.list.len());
    }

    /// What was added together, in order; all of it as one part where nothing was appended. It changes nothing for the store,
    /// which takes all parts or none; whoever checks a commit sees in it which turns it holds.
    pub fn parts(&self) -> impl Iterator<Item = Self> {
        let ends = if self.ends.is_empty() { vec![self.list.len()] } else { self.ends.clone() };
        let starts = std::iter::once(0).chain(ends.clone());
        starts.zip(ends).map(|(from, to)| Self { list: self.list[from..to].to_vec(), ends: Vec::new() })
    }

    /// The changes in order: shelf, key, new value (`None`: remove).
    pub fn iter(&self) -> impl Iterator<Item = (Shelf, &[u8], Option<&[u8]>)> {
        self.list.iter().map(|(shelf, key, value)| (*shelf, key.as_slice(), value.as_deref()))
    }
}

/// What a commit must outlive.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Loss {
    /// The process is killed; the system lives.
    Process,
    /// The power goes.
    Power,
}

/// What is going on that no commit holds yet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum UnderWay {
    /// Nothing.
    #[default]
    Nothing,
    /// Something is being heard and decided; the platform will tell it again.
    Hearing,
    /// This, by its sequence in the inbox, is being decided.
    Deciding(u64),
}

/// A store of rows. Blocking: call it from a blocking thread.
#[cfg_attr(test, mockall::automock)]
pub trait Book: Send + Sync {
    /// The value of a row.
    ///
    /// # Errors
    /// When the store cannot be read.
    fn get(&self, shelf: Shelf, key: &[u8]) -> Result<Option<Vec<u8>>, BookError>;

    /// Rows with `from <= key < below` in order of their keys, at most `limit`.
    ///
    /// # Errors
    /// When the store cannot be read.
    fn rows(&self, shelf: Shelf, from: &[u8], below: &[u8], limit: usize) -> Result<Vec<Row>, BookError>;

    /// Applies all changes or none.
    ///
    /// # Errors
    /// When the store cannot be written; nothing has changed then.
    fn commit(&self, changes: &Changes) -> Result<(), BookError>;

    /// Makes every commit so far outlive `loss`.
    ///
    /// # Errors
    /// When the disk refuses.
    fn sync(&self, loss: Loss) -> Result<(), BookError>;

    /// Notes beside all rows what is going on that no commit holds yet. A killed process leaves the note standing.
    ///
    /// # Errors
    /// When the disk refuses.
    fn attempt(&self, under_way: UnderWay) -> Result<(), BookError>;

    /// What the note said when the book was opened.
    fn was_attempting(&self) -> UnderWay;
}
