//! The conversation in a terminal: no account, no network.
//!
//! One line in, one message; the room is a group in which anyone may be named. Owns the screen and the keyboard; what is
//! said comes from the same engine that serves Telegram. Start at [`Chat`]. Rehearsals share [`Stage`].

mod chat;
mod line;
mod live;
mod stage;

pub use chat::{Chat, ChatError, piped};
pub use line::Line;
pub use live::live;
pub use stage::{Kind, Shown, Spoken, Stage};
