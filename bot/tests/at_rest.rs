//! A dinner that is over, leftovers and all: nothing is offered any more.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{How, RoomKind};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

#[test]
fn after_the_leftovers_last_day_the_board_is_at_rest_and_their_call_as_well() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, dinner Thursday 5 pm, 9 people");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 15:45");
    kitchen.say("Rosa", "breast 168, thigh 177, wing 170");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-25 16:40");
    kitchen.say("Rosa", "carved");
    kitchen.run_to("2027-11-25 17:20");
    kitchen.say("Rosa", "leftovers are in the fridge");
    let day = kitchen.run_to("2027-11-28 18:00");
    assert!(day.contains("eat or freeze them today"), "{day}");
    let board = kitchen.say("Rosa", "/board");
    assert!(board.contains("[Done]"), "all of that day they can be marked: {board}");
    let from = kitchen.said.len();
    let night = kitchen.run_to("2027-11-29 12:00");
    assert!(kitchen.said[from..].iter().all(|say| say.how == How::Edit), "nothing is said of it: {night}");
    assert!(kitchen.said[from..].iter().all(|say| say.buttons.is_empty()), "{night}");
    assert!(night.contains("throw out what isn’t frozen"), "the call is closed: {night}");
    assert!(night.contains("(Sun 12:00 PM)"), "{night}");
    let board = kitchen.say("Rosa", "/board");
    assert!(board.contains("All done"), "{board}");
    assert!(kitchen.said.last().is_some_and(|say| say.buttons.is_empty()), "{board}");
    let asked = kitchen.say("Rosa", "how long do leftovers keep?");
    assert!(asked.contains("have had their days"), "{asked}");
}

#[test]
fn a_dinner_nobody_said_a_word_of_is_at_rest_then_as_well() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, dinner Thursday 5 pm, 9 people");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-30 12:00");
    let board = kitchen.say("Rosa", "/board");
    assert!(!board.contains("Due:") && !board.contains("Off the heat"), "{board}");
    assert!(kitchen.said.last().is_some_and(|say| say.buttons.is_empty()), "{board}");
}
