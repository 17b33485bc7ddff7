//! Every number that came from outside the project: who published it, where it stands, and how sure we are of it.
//!
//! A person sees this behind "why?". Knows nothing of how the numbers are used. One file an area, each with its `LIST`;
//! [`all`] walks through every one of them.

/// Declares constants and the list of them, so that none can be left out of it.
macro_rules! sources {
    ($($(#[$doc:meta])* $name:ident = $id:literal, $publisher:literal, $title:literal, $edition:literal, $table:literal, $standing:ident;)+) => {
        $($(#[$doc])* pub const $name: Source = Source {
            id: $id,
            publisher: $publisher,
            title: $title,
            edition: $edition,
            table: $table,
            standing: Standing::$standing,
        };)+

        /// All of them.
        pub(super) const LIST: &[Source] = &[$($name),+];
    };
}

mod heat;
mod poultry;
mod salt;

pub use heat::*;
pub use poultry::*;
pub use salt::*;

/// How a value was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Standing {
    /// Read in the source itself or a copy of it.
    Seen,
    /// Read in a text that quotes the source.
    SeenSecondary,
    /// A rule of the trade; nobody publishes it with authority.
    CommonPractice,
    /// Known, but not found in print.
    FromMemory,
    /// Computed by us from other sources; the title says how.
    Derived,
}

/// Where a number comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Source {
    /// Stable short name, for look-ups and tests.
    pub id: &'static str,
    /// Who published it.
    pub publisher: &'static str,
    /// Title of the document.
    pub title: &'static str,
    /// Edition, date or version.
    pub edition: &'static str,
    /// Table, section or page.
    pub table: &'static str,
    /// How it was found.
    pub standing: Standing,
}

names!(Standing {
    Seen => "seen",
    SeenSecondary => "seen-secondary",
    CommonPractice => "common-practice",
    FromMemory => "from-memory",
    Derived => "derived",
});

/// The lists of every area.
const LISTS: &[&[Source]] = &[heat::LIST, poultry::LIST, salt::LIST];

/// Every source of the project, for "where do the numbers come from".
pub fn all() -> impl Iterator<Item = Source> {
    LISTS.iter().flat_map(|list| list.iter().copied())
}

/// The source of that id.
pub fn find(id: &str) -> Option<Source> {
    all().find(|source| source.id == id)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_source_has_its_own_id_and_is_found_by_it() {
        for source in all() {
            assert_eq!(find(source.id), Some(source));
            assert_eq!(all().filter(|other| other.id == source.id).count(), 1, "{}", source.id);
            assert!(
                source.id.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-'),
                "{}",
                source.id
            );
        }
    }

    #[test]
    fn every_source_says_who_and_what() {
        for source in all() {
            assert!(!source.publisher.is_empty() && !source.title.is_empty(), "{source:?}");
        }
    }
}
