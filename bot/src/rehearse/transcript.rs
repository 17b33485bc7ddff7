//! The conversation as it is printed: for people in the form of a script, for programs as JSON Lines.

use super::script::{Act, Event};
use crate::terminal::{Kind, Spoken};
use crate::words::{Arg, Reader, Text, Voice};
use carvetime_core::plan::Moment;
use serde::Serialize;
use std::io::{self, Write};

/// Where a play is written.
pub struct Transcript<'a> {
    /// The page.
    pub out: &'a mut dyn Write,
    /// Words for the marks.
    pub voice: &'a Voice,
    /// Whose language the marks are in, and whose clock the times.
    pub reader: Reader,
    /// JSON Lines of what the bot said instead of the whole conversation.
    pub json: bool,
    /// What the room is called in JSON: `group`, or the person's name.
    pub room: String,
}

/// A line for programs: the contract's.
#[derive(Serialize)]
struct Line<'a> {
    at: String,
    kind: &'static str,
    to: &'a str,
    text: &'a str,
    buttons: &'a [String],
    step: Option<&'a str>,
    id: i64,
    #[serde(skip_serializing_if = "Option::is_none")]
    file: Option<&'a str>,
}

impl Transcript<'_> {
    /// What a person said or pressed, as the script has it.
    pub(super) fn event(&mut self, event: &Event) -> io::Result<()> {
        let (name, private, mark, words) = match &event.act {
            _ if self.json => return Ok(()),
            Act::Say { name, private, text } => (name, private, ":", text),
            Act::Press { name, private, label } => (name, private, " >", label),
            Act::Wait => return Ok(()),
        };
        let at = self.local(event.at);
        let private = if *private { " (private)" } else { "" };
        writeln!(self.out, "{at} {name}{private}{mark} {words}")
    }

    /// What the bot said.
    pub(super) fn spoken(&mut self, spoken: &Spoken) -> io::Result<()> {
        if self.json {
            return self.line(spoken);
        }
        let who = Text::named(
            "cli-said",
            match (spoken.kind, &spoken.only_for) {
                (Kind::Message, None) => "to-all",
                (Kind::Message, Some(_)) => "to-one",
                (Kind::Edit, None) => "edit-to-all",
                (Kind::Edit, Some(_)) => "edit-to-one",
                (Kind::Answer, _) => "notice",
            },
        );
        let name = spoken.only_for.clone().unwrap_or_default();
        let who = self.voice.label(&who.with("name", Arg::Verbatim(name)), &self.reader);
        let at = self.local(spoken.at);
        writeln!(self.out, "{at} {who}: {}", spoken.text.replace('\n', "\n    "))?;
        if let Some(file) = &spoken.file {
            writeln!(self.out, "    <{}>", file.name)?;
        }
        if !spoken.buttons.is_empty() {
            let row: Vec<String> = spoken.buttons.iter().map(|label| format!("[{label}]")).collect();
            writeln!(self.out, "    {}", row.join(" "))?;
        }
        Ok(())
    }

    fn line(&mut self, spoken: &Spoken) -> io::Result<()> {
        let file = spoken.file.as_ref().map(|file| file.name.as_str());
        let kind = match (spoken.kind, file, &spoken.only_for) {
            (Kind::Answer, ..) => "answer",
            (Kind::Edit, ..) => "edit",
            (Kind::Message, Some(name), _) if name.ends_with(".png") => "photo",
            (Kind::Message, Some(_), _) => "document",
            (Kind::Message, None, Some(_)) => "private",
            (Kind::Message, None, None) => "message",
        };
        let line = Line {
            at: spoken.at.with_timezone(&self.reader.zone).to_rfc3339_opts(chrono::SecondsFormat::Secs, false),
            kind,
            to: spoken.only_for.as_deref().unwrap_or(&self.room),
            text: &spoken.text,
            buttons: &spoken.buttons,
            step: spoken.step.as_deref(),
            id: spoken.number,
            file,
        };
        serde_json::to_writer(&mut *self.out, &line)?;
        writeln!(self.out)
    }

    fn local(&self, at: Moment) -> String {
        at.with_timezone(&self.reader.zone).format("%Y-%m-%d %H:%M").to_string()
    }
}
