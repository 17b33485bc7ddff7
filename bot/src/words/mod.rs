//! Every word a person reads: languages, numbers, dates, units.
//!
//! [`Text`] names a message; [`Voice`] renders it for a [`Reader`]. The sentences stand in `locales/`, embedded at build
//! time; a language is present when it has a folder there. Owns no decision: which message is said is up to the room.
//! Start at [`Voice::render`].

mod argument;
mod dose;
pub mod foreign;
mod formats;
mod html;
pub mod locales;
mod reader;
mod text;
mod voice;

pub use dose::share;
pub use html::plain;
pub use reader::{Reader, UnitSystem};
pub use text::{Arg, Text};
pub use voice::Voice;
