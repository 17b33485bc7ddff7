//! A line in, text out: what the terminal shows, whether someone sits at it or a pipe feeds it.

use super::line::Line;
use super::stage::{Kind, Spoken, Stage};
use crate::book::BookError;
use crate::engine::Attachment;
use crate::words::{Arg, Reader, Text, Voice};
use carvetime_core::plan::Moment;
use std::fmt::Write as _;
use std::io::{self, BufRead, Write};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Why a chat ended early.
#[derive(Debug, thiserror::Error)]
pub enum ChatError {
    /// The book failed.
    #[error(transparent)]
    Book(#[from] BookError),
    /// Reading or writing failed.
    #[error(transparent)]
    Io(#[from] io::Error),
    /// The terminal failed.
    #[error(transparent)]
    Editor(#[from] rustyline::error::ReadlineError),
}

/// A chat in a terminal.
pub struct Chat {
    stage: Stage,
    voice: Arc<Voice>,
    reader: Reader,
    /// Where files that come with a message are put.
    files: PathBuf,
    /// What the person at the keyboard is called.
    you: String,
}

impl Chat {
    /// A chat on `stage`, its marks in `reader`'s language.
    pub fn new(stage: Stage, voice: Arc<Voice>, reader: Reader, files: PathBuf) -> Self {
        let you = voice.label(&Text::new("cli-you"), &reader);
        Self { stage, voice, reader, files, you }
    }

    /// What to show for a line typed at `now`.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn line(&mut self, line: &str, now: Moment) -> Result<String, BookError> {
        let due = self.tick(now)?;
        Ok(due + &self.act(line, now)?)
    }

    fn act(&mut self, line: &str, now: Moment) -> Result<String, BookError> {
        match Line::read(line) {
            Line::Blank => {}
            Line::Say { name, private, text } => {
                let hint = self
                    .means_a_button(text)
                    .then(|| Text::new("cli-press").with("number", Arg::Verbatim(text.to_owned())));
                let name = name.unwrap_or(&self.you).to_owned();
                self.stage.say(&name, private, text, now)?;
                let hint = hint.map(|hint| self.mark(&hint) + "\n\n");
                return Ok(self.heard()? + &hint.unwrap_or_default());
            }
            Line::Press { name, number } => {
                if let Some(hint) = self.press(name, number, now)? {
                    return Ok(hint);
                }
            }
        }
        self.heard()
    }

    /// What to show because the clock has come to `now`; mostly nothing.
    ///
    /// # Errors
    /// When the book cannot be read or written.
    pub fn tick(&mut self, now: Moment) -> Result<String, BookError> {
        self.stage.ring(now)?;
        self.heard()
    }

    /// When the next reminder is due.
    ///
    /// # Errors
    /// When the book cannot be read.
    pub fn next_bell(&self) -> Result<Option<Moment>, BookError> {
        self.stage.next_bell()
    }

    /// What is shown first to someone who sits at the terminal.
    pub(super) fn hello(&self) -> String {
        self.mark(&Text::new("cli-hello")) + "\n\n"
    }

    /// A bare number is said as it stands, as a temperature or a count would be; where a button has it, that may have been meant.
    fn means_a_button(&self, text: &str) -> bool {
        let buttons = self.stage.newest_pressable(None).map_or(0, |shown| shown.buttons.len());
        text.parse::<usize>().is_ok_and(|number| (1..=buttons).contains(&number))
    }

    /// Presses the button, or gives the hint why not.
    fn press(&mut self, name: Option<&str>, number: usize, now: Moment) -> Result<Option<String>, BookError> {
        let Some(shown) = self.stage.newest_pressable(name).cloned() else {
            return Ok(Some(self.mark(&Text::new("cli-nothing-to-press")) + "\n\n"));
        };
        let Some(button) = number.checked_sub(1).and_then(|place| shown.buttons.get(place)) else {
            let there = Arg::Verbatim(numbered(shown.buttons.iter().map(|button| &button.label)));
            return Ok(Some(self.mark(&Text::new("cli-no-number").with("there", there)) + "\n\n"));
        };
        let name = name.or_else(|| self.stage.meant_for(&shown)).unwrap_or(&self.you).to_owned();
        self.stage.press(&name, &shown, button, now)?;
        Ok(None)
    }

    fn heard(&mut self) -> Result<String, BookError> {
        let mut said = self.stage.listen()?;
        if said.len() > 1 {
            // A screen can't edit what has scrolled away: the board would be printed again after every press.
            said.retain(|spoken| spoken.kind != Kind::Edit || !spoken.is_board);
        }
        let newest = self.stage.newest_pressable(None).map(|shown| shown.number);
        // Only the buttons that a bare number would press carry numbers, and only where they stand last.
        let numbered = said.iter().rposition(|spoken| Some(spoken.number) == newest);
        Ok(said.iter().enumerate().map(|(i, spoken)| self.written(spoken, numbered == Some(i))).collect())
    }

    fn written(&self, spoken: &Spoken, with_numbers: bool) -> String {
        let mut out = String::new();
        let name = Arg::Verbatim(spoken.only_for.clone().unwrap_or_default());
        if spoken.only_for.is_some() {
            out += &self.mark(&Text::new("cli-only-for").with("name", name));
            out.push(' ');
        }
        if spoken.kind == Kind::Edit {
            out += &self.mark(&Text::new("cli-changed"));
            out.push(' ');
        }
        out += &spoken.text;
        out.push('\n');
        if let Some(file) = &spoken.file {
            out += &self.kept(file);
            out.push('\n');
        }
        if with_numbers {
            out += &numbered(&spoken.buttons);
            out.push('\n');
        } else if !spoken.buttons.is_empty() {
            out += &spoken.buttons.iter().map(|label| format!("[{label}]")).collect::<Vec<_>>().join("  ");
            out.push('\n');
        }
        out.push('\n');
        out
    }

    /// Keeps a file and says where.
    fn kept(&self, file: &Attachment) -> String {
        // The name comes from a turn, but a path must never lead out of the folder.
        let path = self.files.join(Path::new(&file.name).file_name().unwrap_or("file".as_ref()));
        let kept = std::fs::create_dir_all(&self.files).and_then(|()| std::fs::write(&path, &file.bytes));
        let text = if kept.is_ok() { Text::new("cli-file-kept") } else { Text::new("cli-file-lost") };
        self.mark(&text.with("path", Arg::Verbatim(path.display().to_string())))
    }

    fn mark(&self, text: &Text) -> String {
        self.voice.label(text, &self.reader)
    }
}

/// `[1] Done  [2] Later`
fn numbered<S: AsRef<str>>(labels: impl IntoIterator<Item = S>) -> String {
    let mut out = String::new();
    for (i, label) in labels.into_iter().enumerate() {
        let gap = if i == 0 { "" } else { "  " };
        let _ = write!(out, "{gap}[{}] {}", i + 1, label.as_ref()); // a String takes everything
    }
    out
}

/// Answers every line of `input` until it ends.
///
/// # Errors
/// See [`ChatError`].
pub fn piped(
    chat: &mut Chat,
    clock: fn() -> Moment,
    mut input: impl BufRead,
    out: &mut dyn Write,
) -> Result<(), ChatError> {
    out.write_all(chat.tick(clock())?.as_bytes())?;
    let mut bytes = Vec::new();
    while input.read_until(b'\n', &mut bytes)? > 0 {
        let answer = chat.line(&String::from_utf8_lossy(&bytes), clock())?;
        out.write_all(answer.as_bytes())?;
        out.flush()?;
        bytes.clear();
    }
    Ok(())
}
