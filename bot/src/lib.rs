//! Carvetime's conversation, store, reminders and front ends.
//!
//! [`room`] decides and is pure; everything else is a thin shell around it.

pub mod ask;
pub mod book;
pub mod cli;
pub mod clock;
pub mod engine;
pub mod forecast_cli;
pub mod memory;
pub mod picture;
pub mod reading;
pub mod redact;
pub mod rehearse;
pub mod room;
pub mod sheet;
pub mod telegram;
pub mod terminal;
pub mod words;
