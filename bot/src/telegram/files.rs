//! Fetches the files that were sent to be read, beside everything else: a slow one keeps nobody waiting.
//!
//! What came with a file is durable and confirmed already and waits in the engine until its text is there. A program that ends
//! meanwhile fetches it anew at its next start.

use super::hear::LARGEST;
use super::{ServeError, Serving, blocking};
use crate::room::Document;
use std::collections::HashMap;
use std::io;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};
use std::time::Duration;
use teloxide::Bot;
use teloxide::net::Download;
use teloxide::requests::Requester;
use teloxide::types::FileId;
use tokio::io::AsyncWrite;
use tokio::sync::watch;
use tokio::task::{Id, JoinSet};
use tokio::time::timeout;

/// Files fetched at a time.
const AT_ONCE: usize = 8;

/// How long to wait for one.
const WAIT: Duration = Duration::from_secs(20);

/// Fetches until `ending` turns true.
pub async fn run(serving: Serving, mut ending: watch::Receiver<bool>) -> Result<(), ServeError> {
    let mut tasks: JoinSet<Document> = JoinSet::new();
    let mut begun: HashMap<Id, u64> = HashMap::new();
    loop {
        let engine = Arc::clone(&serving.engine);
        let mut wanted = blocking(move || Ok(engine.files_wanted())).await?;
        wanted.retain(|(sequence, _)| !begun.values().any(|other| other == sequence));
        for (sequence, file) in wanted.into_iter().take(AT_ONCE.saturating_sub(tasks.len())) {
            let bot = serving.bot.clone();
            let task = tasks.spawn(async move {
                let fetched = timeout(WAIT, fetch(&bot, &file)).await;
                fetched.ok().flatten().unwrap_or(Document::Lost)
            });
            begun.insert(task.id(), sequence);
        }
        let (id, document) = tokio::select! {
            Some(ended) = tasks.join_next_with_id() => match ended {
                Ok(ended) => ended,
                Err(error) => (error.id(), Document::Lost),
            },
            () = serving.files.notified() => continue,
            _ = ending.wait_for(|ending| *ending) => return Ok(()),
        };
        if let Some(sequence) = begun.remove(&id) {
            let engine = Arc::clone(&serving.engine);
            blocking(move || engine.file_is_there(sequence, document)).await?;
            serving.turns.notify_one();
        }
    }
}

/// The text of a file.
async fn fetch(bot: &Bot, id: &str) -> Option<Document> {
    let file = bot.get_file(FileId(id.to_owned())).await.ok()?;
    if file.size > LARGEST {
        return Some(Document::TooLarge); // the size told is not always the size kept
    }
    let mut bytes = Bounded::default();
    let fetched = bot.download_file(&file.path, &mut bytes).await;
    if bytes.is_full {
        return Some(Document::TooLarge);
    }
    fetched.ok()?;
    Some(Document::Text(crate::reading::decode(&bytes.taken)))
}

/// What is fetched, up to [`LARGEST`] bytes, whatever was told.
#[derive(Default)]
struct Bounded {
    taken: Vec<u8>,
    /// There was more; it is not taken.
    is_full: bool,
}

impl AsyncWrite for Bounded {
    fn poll_write(mut self: Pin<&mut Self>, _: &mut Context<'_>, more: &[u8]) -> Poll<io::Result<usize>> {
        if self.taken.len() + more.len() > LARGEST as usize {
            self.is_full = true;
            return Poll::Ready(Err(io::ErrorKind::FileTooLarge.into()));
        }
        self.taken.extend_from_slice(more);
        Poll::Ready(Ok(more.len()))
    }

    fn poll_flush(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<io::Result<()>> {
        Poll::Ready(Ok(()))
    }

    fn poll_shutdown(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<io::Result<()>> {
        Poll::Ready(Ok(()))
    }
}
