//! Every number that came from outside the project: who published it, where it stands, and how sure we are of it.
//!
//! A person sees this behind "why?". Knows nothing of how the numbers are used.

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
