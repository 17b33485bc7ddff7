//! End-to-end runs, published tables, fault and crash runs, load.
//!
//! [`loopback`] is a Bot API server on 127.0.0.1 with a world of people and chats behind it; `tests/` drive the program
//! against it. Only tests use this crate, so it may panic: a panic here is a failed test.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

pub mod both;
pub mod clock;
pub mod fill;
pub mod fuzz;
pub mod kills;
pub mod kitchen;
pub mod loopback;
pub mod morning;
pub mod program;
pub mod sim;
pub mod stage;
pub mod words;
