//! The board's buttons at each stage of a dinner: what can be done now, and nothing that is over or not due yet.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use kitchen::Kitchen;

/// The verbs of the buttons of the newest message called so, with the step they are about: a word a button.
fn buttons(kitchen: &Kitchen, key: &str) -> String {
    let newest = kitchen.said.iter().rev().find(|say| say.key.as_deref().is_some_and(|known| known.starts_with(key)));
    let data = newest.into_iter().flat_map(|say| say.buttons.iter().flatten()).map(|button| button.data.as_str());
    let words: Vec<String> = data
        .map(|data| {
            let mut parts = data.split('.');
            let verb = parts.next().unwrap_or_default();
            match parts.nth(1).filter(|part| part.chars().all(|c| c.is_ascii_lowercase())) {
                Some(step) => format!("{verb}:{step}"),
                None => verb.to_owned(),
            }
        })
        .collect();
    words.join(" ")
}

/// Where a dinner stands, the time, what is said then, and the buttons after it. A job and a verb; `jobs`: to share them; `why`: the sums.
const STAGES: [(&str, &str, &str, &str); 19] = [
    ("to be bought", "2027-11-19 11:00", "", "done:buy take:buy jobs why"),
    ("bought", "2027-11-19 11:05", "bought it", "done:thaw take:thaw jobs why"),
    ("to be thawed", "2027-11-19 15:00", "", "done:thaw take:thaw jobs why"),
    ("thawing", "2027-11-19 15:05", "it's in the fridge", "take:salt jobs why"),
    ("to be salted", "2027-11-23 18:30", "", "done:salt take:salt jobs why"),
    ("salted", "2027-11-23 18:40", "salted it", "take:temper jobs why"),
    ("to be dried", "2027-11-25 10:50", "", "done:temper take:temper jobs why"),
    ("before the fire", "2027-11-25 11:00", "it's dry", "done:fire take:fire jobs why"),
    ("the fire is due", "2027-11-25 11:05", "", "done:fire take:fire jobs why"),
    ("the fire burns", "2027-11-25 11:10", "oven is on", "done:on take:on jobs why"),
    ("on the heat", "2027-11-25 11:35", "it's on", "done:check take:check jobs why"),
    ("a look is due", "2027-11-25 14:05", "", "done:check take:check jobs why"),
    ("looked at", "2027-11-25 14:10", "/log breast 128, thigh 135", "done:check take:check jobs why"),
    ("about done", "2027-11-25 15:20", "", "done:check take:check jobs why"),
    ("it stands", "2027-11-25 15:25", "it's off, breast 167, thigh 178", "done:carve take:carve jobs why"),
    ("to be carved", "2027-11-25 16:35", "", "done:carve take:carve jobs why"),
    ("carved", "2027-11-25 16:50", "carved", "done:chill take:chill jobs why"),
    ("put away", "2027-11-25 17:30", "leftovers are in the fridge", "take:leftovers jobs why"),
    ("the leftovers' last day", "2027-11-28 12:00", "", "done:leftovers take:leftovers jobs why"),
];

#[test]
fn the_boards_buttons_are_those_of_the_moment() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", chrono_tz::America::Chicago, "2027-11-19 09:00");
    kitchen.say("Rosa", "/plan 14 lb frozen turkey, dinner 2027-11-25 17:00, 8 people, oven at 325");
    assert_eq!(buttons(&kitchen, "draft"), "accept change reasons");
    kitchen.press("Rosa", "Accept");
    assert_eq!(buttons(&kitchen, "board"), "done:buy take:buy jobs why", "ahead of everything");
    let mut wrong = Vec::new();
    for (stage, at, said, expected) in STAGES {
        kitchen.run_to(at);
        if !said.is_empty() {
            kitchen.say("Rosa", said);
        }
        let found = buttons(&kitchen, "board");
        if found != expected {
            wrong.push(format!("{stage}: {found}, not {expected}"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    let why = kitchen.said.iter().rev().flat_map(|say| say.buttons.iter().flatten());
    let why = why.map(|button| button.data.clone()).find(|data| data.starts_with("why.")).unwrap();
    kitchen.press("Rosa", "Done");
    assert_eq!(buttons(&kitchen, "board"), "", "over");
    let told = kitchen.hear(Some("Tom"), What::Pressed { press: "p".into(), data: why, on: None });
    assert!(told.starts_with('[') && told.contains("(notice)"), "an old button says so to the one who pressed: {told}");
}

#[test]
fn a_job_somebody_has_is_not_for_the_taking() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", chrono_tz::America::Chicago, "2027-11-19 09:00");
    kitchen.say("Rosa", "/plan 14 lb frozen turkey, dinner 2027-11-25 17:00, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/take buy");
    assert_eq!(buttons(&kitchen, "board"), "done:buy jobs why");
    let alone = |language| {
        let mut kitchen = Kitchen::new(RoomKind::Private, language, chrono_tz::America::Chicago, "2027-11-19 09:00");
        kitchen.say("Rosa", "/plan 14 lb frozen turkey, dinner 2027-11-25 17:00, 8 people, oven at 325");
        kitchen.press("Rosa", "Accept");
        buttons(&kitchen, "board")
    };
    assert_eq!(alone("en-US"), "done:buy why", "who cooks alone shares nothing");
}
