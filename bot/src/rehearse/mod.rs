//! Plays a script of a cook on a virtual clock and prints the whole conversation.

mod script;

pub use script::{Act, Event, Reason, Script, ScriptError};
