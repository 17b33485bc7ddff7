//! Dishes on the board: among the next jobs each stands there, and what is cut off is named.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

#[test]
fn a_dish_among_the_next_jobs_is_on_the_board_and_a_later_one_is_named() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 18:00");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    for dish in ["rice on the stove 20 min", "peas on the stove 25 min", "corn on the stove 30 min"] {
        kitchen.say("Tom", &format!("/plan add {dish}"));
    }
    let board = kitchen.say("Rosa", "/board");
    for dish in ["rice", "peas", "corn"] {
        assert!(board.contains(dish), "{dish}: {board}");
    }
    assert!(board.lines().count() < 20, "{board}");
    // On the day they are next.
    kitchen.run_to("2027-11-25 12:25");
    kitchen.say("Rosa", "it's in");
    kitchen.run_to("2027-11-25 14:30");
    let board = kitchen.say("Rosa", "/board");
    let (shown, _) = board.split_once("… and").unwrap_or((&board, ""));
    for dish in ["rice", "peas", "corn"] {
        assert!(shown.contains(dish), "{dish}: {board}");
    }
}
