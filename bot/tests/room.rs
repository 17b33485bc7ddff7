//! The conversation, turn by turn.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

#[test]
fn peek() {
    let mut k = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 18:30");
    println!("{}", k.say("Rosa", "/start"));
    println!("{}", k.say("Rosa", "/plan 14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325"));
    println!("{}", k.press("Rosa", "Why these times?"));
    println!("{}", k.press("Rosa", "Accept"));
    println!("{}", k.run_to("2027-11-24 20:00"));
    println!("{}", k.press("Tom", "Done"));
    println!("{}", k.run_to("2027-11-25 20:00"));
}
