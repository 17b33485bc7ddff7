//! A person at the terminal: line editing, history, and reminders that appear above the line being typed.

use super::chat::{Chat, ChatError};
use carvetime_core::plan::Moment;
use rustyline::error::ReadlineError;
use rustyline::history::DefaultHistory;
use rustyline::{DefaultEditor, ExternalPrinter as _};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::time::Duration;

/// The wall clock can jump: look at it at least this often.
const LOOK: Duration = Duration::from_secs(30);

/// A reminder set for right now still leaves time to type.
const PAUSE: Duration = Duration::from_millis(200);

/// Talks until the end of input (Ctrl-D) or an interrupt (Ctrl-C). `history` remembers lines between sessions.
///
/// # Errors
/// See [`ChatError`].
pub fn live(chat: &mut Chat, clock: fn() -> Moment, history: PathBuf, out: &mut dyn Write) -> Result<(), ChatError> {
    let mut editor = DefaultEditor::new()?;
    let mut printer = editor.create_external_printer()?;
    let (go, may_type) = channel();
    let (typed, lines) = channel();
    // The keyboard has a thread of its own: reading a line blocks, and reminders do not wait for the next line.
    std::thread::spawn(move || keyboard(editor, &history, &may_type, &typed));
    let first = chat.hello() + &chat.tick(clock())?;
    out.write_all(first.as_bytes())?;
    out.flush()?;
    while go.send(()).is_ok() {
        let line = loop {
            match lines.recv_timeout(until_next(chat, clock)?) {
                Ok(line) => break line?,
                Err(RecvTimeoutError::Timeout) => {
                    let text = chat.tick(clock())?;
                    if !text.is_empty() {
                        printer.print(text)?;
                    }
                }
                Err(RecvTimeoutError::Disconnected) => return Ok(()),
            }
        };
        let Some(line) = line else { return Ok(()) };
        out.write_all(chat.line(&line, clock())?.as_bytes())?;
        out.flush()?;
    }
    Ok(())
}

fn until_next(chat: &Chat, clock: fn() -> Moment) -> Result<Duration, ChatError> {
    let next = chat.next_bell()?.map_or(LOOK, |at| (at - clock()).to_std().unwrap_or(PAUSE));
    Ok(next.clamp(PAUSE, LOOK))
}

/// Sends each line typed, and nothing (`None`) at the end. A new line is read only when the last one has been answered.
fn keyboard(
    mut editor: rustyline::Editor<(), DefaultHistory>,
    history: &Path,
    may_type: &Receiver<()>,
    typed: &Sender<Result<Option<String>, ReadlineError>>,
) {
    let _ = editor.load_history(history); // none yet: the first session
    while may_type.recv().is_ok() {
        let line = match editor.readline("> ") {
            Ok(line) => {
                let _ = editor.add_history_entry(&line); // lost history is no reason to stop
                Ok(Some(line))
            }
            Err(ReadlineError::Eof | ReadlineError::Interrupted) => Ok(None),
            Err(error) => Err(error),
        };
        let end = !matches!(line, Ok(Some(_)));
        if end {
            let _ = editor.save_history(history);
        }
        if typed.send(line).is_err() || end {
            return;
        }
    }
}
