//! Plays a script of a cook on a virtual clock and prints the whole conversation.
//!
//! The script is read in `script`, played in `play`, printed in `transcript`. Start at [`rehearse`].

mod play;
mod script;
mod transcript;

pub use play::PlayError;
pub use script::{Act, Event, Reason, Script, ScriptError};

use crate::engine::DecideFn;
use crate::words::{Reader, Voice};
use std::io::Write;
use std::sync::Arc;
use transcript::Transcript;

/// Plays `script` before a room that decides by `decide`, and writes the conversation to `out`: as text, or as JSON Lines
/// of what the bot said.
///
/// # Errors
/// See [`PlayError`]. What was played before stands in `out`.
pub fn rehearse(
    script: &Script,
    decide: DecideFn,
    voice: &Arc<Voice>,
    json: bool,
    out: &mut dyn Write,
) -> Result<(), PlayError> {
    let first = script.events.first().map_or_else(Default::default, |event| event.at);
    let room = if script.group { "group" } else { script.first_name().unwrap_or("private") };
    let mut transcript =
        Transcript { out, voice, reader: Reader::new(&script.locale, script.zone, first), json, room: room.to_owned() };
    play::play(script, decide, voice, &mut transcript)
}
