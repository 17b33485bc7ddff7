//! A Bot API server on 127.0.0.1: real HTTP, a world of people and chats behind it, and faults on demand.
//!
//! Owns what Telegram would: who is in which chat, which messages stand there, which updates are unconfirmed. Knows
//! nothing of Carvetime. Every call is checked against `tests/bot-api.json` (Bot API 10.1); a call Telegram would not
//! take is answered as Telegram answers and kept in [`Loopback::violations`]. Start at [`Loopback::start`].
//!
//! | file | what |
//! |---|---|
//! | `driver` | what a test does and sees: say, press, expect, transcript |
//! | `groups` | what happens to a group and its members |
//! | `world` | people, chats, messages, updates |
//! | `http` | routing, the four ways to pass parameters, faults of the wire |
//! | `methods` | what each Bot API method does to the world |
//! | `wire` | connections that are counted |
//! | `schema` | parameters and nested objects against the published reference |
//! | `limits` | lengths and counts that stand only in the reference's prose |
//! | `html` | HTML parse mode: tags, entities, plain text |
//! | `fault` | what goes wrong, where and how often |
//!
//! # Fault model
//! Injected: 401, 403, 409, 429 with `retry_after`, 5xx; a connection closed before the call is applied or after it (the
//! reply is lost); delays; updates delivered twice or out of order; a hook before or after any call, from which a test
//! kills the program. Not injected: half a TCP segment, TLS, a server that changes its mind about a message id. They
//! would exercise the HTTP library, not this project. The flood limits of the platform are enforced only on demand
//! ([`Loopback::enforce_limits`]), since their exact numbers are not published.

mod driver;
mod fault;
mod groups;
mod html;
mod http;
mod limits;
mod methods;
mod schema;
mod wire;
mod world;

pub use driver::{Loopback, TOKEN};
pub use fault::{Fault, Rule};
pub use groups::Told;
pub use html::{Entity, parse as parse_html};
pub use schema::{Upload, check_type};
pub use world::{Answer, Call, ChatId, Message};
