//! Plays a script: the clock jumps from event to event and from bell to bell.
//!
//! The engine and the room are those that serve; only the clock and the front end are others.

use super::script::{Act, Event, Script};
use super::transcript::Transcript;
use crate::book::{BookError, SledBook};
use crate::engine::{DecideFn, Engine};
use crate::reading::fold;
use crate::room::state::Taste;
use crate::terminal::{Shown, Stage};
use crate::words::{Arg, Text, Voice};
use carvetime_core::plan::Moment;
use std::io;
use std::sync::Arc;

/// Rings in a row that do not move the clock before it is called a fault.
const STANDSTILL: usize = 1000;

/// Why a play stopped.
#[derive(Debug, thiserror::Error)]
pub enum PlayError {
    /// The book failed.
    #[error(transparent)]
    Book(#[from] BookError),
    /// The transcript could not be written.
    #[error(transparent)]
    Out(#[from] io::Error),
    /// A button that is not there.
    #[error("line {line}: no button {label:?}, only {there:?}")]
    NoButton {
        /// Line in the script.
        line: usize,
        /// What was to be pressed.
        label: String,
        /// What could have been.
        there: Vec<String>,
    },
    /// Bells kept ringing at one moment.
    #[error("bells do not stop ringing at {at}")]
    Standstill {
        /// When.
        at: Moment,
    },
}

impl PlayError {
    /// For a person; the book's and the system's own errors are the caller's to tell.
    pub fn text(&self) -> Option<Text> {
        let line = |line: &usize| Arg::Count(i64::try_from(*line).unwrap_or(i64::MAX));
        match self {
            Self::NoButton { line: at, label, there } => {
                let text = if there.is_empty() {
                    Text::new("cli-no-buttons")
                } else {
                    Text::new("cli-no-button").with("there", Arg::Verbatim(there.join(", ")))
                };
                let reason = text.with("label", Arg::Verbatim(label.clone()));
                Some(Text::new("cli-script-line").with("line", line(at)).with("reason", reason.into()))
            }
            Self::Standstill { .. } => Some(Text::new("cli-standstill")),
            Self::Book(_) | Self::Out(_) => None,
        }
    }
}

/// Plays `script` into `out`, over a book that is gone afterwards.
///
/// # Errors
/// See [`PlayError`]. What was played before stands in `out`.
pub fn play(script: &Script, decide: DecideFn, voice: &Arc<Voice>, out: &mut Transcript<'_>) -> Result<(), PlayError> {
    let book = Arc::new(SledBook::temporary()?);
    let engine = Engine::new(book, Arc::clone(voice) as _, decide)?;
    let taste =
        Taste { language: Some(script.locale.clone()), zone: Some(script.zone.name().to_owned()), ..Taste::default() };
    let alone = if script.group { None } else { script.first_name() };
    let mut stage = Stage::new(engine, taste, alone, 1)?.overhearing();
    for event in &script.events {
        run_to(&mut stage, event.at, out)?;
        happen(&mut stage, event, out)?;
        tell(&mut stage, out)?;
    }
    Ok(())
}

/// Rings every bell up to `end`, each at its own time.
fn run_to(stage: &mut Stage, end: Moment, out: &mut Transcript<'_>) -> Result<(), PlayError> {
    let (mut last, mut rings) = (None, 0);
    while let Some(at) = stage.next_bell()?.filter(|at| *at <= end) {
        rings = if last == Some(at) { rings + 1 } else { 0 };
        last = Some(at);
        if rings > STANDSTILL {
            return Err(PlayError::Standstill { at });
        }
        stage.ring(at)?;
        tell(stage, out)?;
    }
    Ok(())
}

fn happen(stage: &mut Stage, event: &Event, out: &mut Transcript<'_>) -> Result<(), PlayError> {
    out.event(event)?;
    match &event.act {
        Act::Say { name, private, text } => stage.say(name, *private, text, event.at)?,
        Act::Press { name, private, label } => {
            let (on, place) = find(stage, name, *private, label).ok_or_else(|| PlayError::NoButton {
                line: event.line,
                label: label.clone(),
                there: labels(stage, name, *private),
            })?;
            if let Some(button) = on.buttons.get(place) {
                stage.press(name, &on, button, event.at)?;
            }
        }
        Act::Wait => {}
    }
    Ok(())
}

/// The newest message that has the button, and the button's place there.
fn find(stage: &Stage, name: &str, private: bool, label: &str) -> Option<(Shown, usize)> {
    let wanted = fold(label);
    stage.pressable(name, private).find_map(|shown| {
        let place = shown.buttons.iter().position(|button| fold(&button.label) == wanted)?;
        Some((shown.clone(), place))
    })
}

/// The labels someone sees, newest message first, each once.
fn labels(stage: &Stage, name: &str, private: bool) -> Vec<String> {
    let mut labels: Vec<String> = Vec::new();
    for button in stage.pressable(name, private).flat_map(|shown| &shown.buttons) {
        if !labels.contains(&button.label) {
            labels.push(button.label.clone());
        }
    }
    labels
}

fn tell(stage: &mut Stage, out: &mut Transcript<'_>) -> Result<(), PlayError> {
    for spoken in stage.listen()? {
        out.spoken(&spoken)?;
    }
    Ok(())
}
