//! What can go wrong with the book, and what a person is told about it.

use crate::words::{Arg, Text};
use std::path::PathBuf;

/// Why the book cannot be opened, read or written.
#[derive(Debug, thiserror::Error)]
pub enum BookError {
    /// Another process has it open.
    #[error("{dir:?} is in use by another process")]
    Locked {
        /// The data directory.
        dir: PathBuf,
    },
    /// The disk refused.
    #[error("{path:?}: {source}")]
    Disk {
        /// What was touched.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// The content cannot be made sense of.
    #[error("damaged: {detail}")]
    Damaged {
        /// Where and how, without content.
        detail: String,
    },
    /// A later version of the program wrote it.
    #[error("written by a later version: {found}, known up to {known}")]
    Newer {
        /// Version found.
        found: u32,
        /// Newest version this program knows.
        known: u32,
    },
    /// A backup would overwrite a file.
    #[error("{file:?} exists already")]
    FileExists {
        /// The file.
        file: PathBuf,
    },
    /// A restore would overwrite data.
    #[error("{dir:?} holds data already")]
    NotEmpty {
        /// The data directory.
        dir: PathBuf,
    },
    /// The backup file is not one, or is damaged.
    #[error("{file:?} line {line}: {detail}")]
    BadBackup {
        /// The file.
        file: PathBuf,
        /// Line, from 1.
        line: usize,
        /// What is wrong with it.
        detail: &'static str,
    },
}

/// What the system said, without the debug print that the store wraps around it.
fn in_words(source: &std::io::Error) -> String {
    let text = source.to_string();
    let inner = text.split_once("message: \"").and_then(|(_, rest)| rest.split_once('"'));
    inner.map_or_else(|| text.clone(), |(message, _)| message.to_owned())
}

impl BookError {
    /// For a person: what happened, and what to do.
    pub fn texts(&self) -> (Text, Text) {
        let path = |path: &PathBuf| Arg::Verbatim(path.display().to_string());
        match self {
            Self::Locked { dir } => (Text::new("book-locked").with("path", path(dir)), Text::new("book-locked-do")),
            Self::Disk { path: at, source } => (
                Text::new("book-disk").with("path", path(at)).with("reason", Arg::Verbatim(in_words(source))),
                Text::new("book-disk-do"),
            ),
            Self::Damaged { detail } => {
                (Text::new("book-damaged").with("detail", Arg::Verbatim(detail.clone())), Text::new("book-damaged-do"))
            }
            Self::Newer { .. } => (Text::new("book-newer"), Text::new("book-newer-do")),
            Self::FileExists { file } => {
                (Text::new("book-file-exists").with("path", path(file)), Text::new("book-file-exists-do"))
            }
            Self::NotEmpty { dir } => {
                (Text::new("book-not-empty").with("path", path(dir)), Text::new("book-not-empty-do"))
            }
            Self::BadBackup { file, line, detail: _ } => (
                Text::new("book-bad-backup")
                    .with("path", path(file))
                    .with("line", Arg::Count(i64::try_from(*line).unwrap_or(i64::MAX))),
                Text::new("book-bad-backup-do"),
            ),
        }
    }
}
