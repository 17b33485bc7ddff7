//! Every word a person reads: languages, numbers, dates, units.
//!
//! [`Text`] names a message; [`Voice`] renders it for a [`Reader`]. The sentences stand in `locales/`, embedded at build time.

mod text;

pub use text::{Arg, Text};
