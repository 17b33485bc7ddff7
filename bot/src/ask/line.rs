//! `carvetime ask`: one question, one answer on a line or as JSON.

use super::answer::Value;
use super::{Asker, ask};
use crate::words::{Reader, Voice, plain};
use serde::Serialize;

/// What the command line prints.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Printed {
    /// The answer, without a line break at the end.
    Answer(String),
    /// No answer: what is wrong, or what can be asked.
    NotUnderstood(String),
}

#[derive(Serialize)]
struct Json<'a> {
    question: &'a str,
    kind: &'a str,
    answer: &'a str,
    values: &'a [Value],
}

/// Answers `text` for a person who reads so, as text or as a line of JSON.
pub fn answer_line(text: &str, reader: &Reader, voice: &Voice, json: bool) -> Printed {
    match ask(text, &Asker::of_reader(reader)) {
        Ok(answer) => {
            let said = plain(&voice.render(&answer.lines(), reader));
            if !json {
                return Printed::Answer(said);
            }
            let line = Json { question: text, kind: answer.kind, answer: &said, values: &answer.values };
            match serde_json::to_string(&line) {
                Ok(line) => Printed::Answer(line),
                Err(error) => Printed::NotUnderstood(error.to_string()),
            }
        }
        Err(error) => Printed::NotUnderstood(voice.label(&error.text(), reader)),
    }
}
