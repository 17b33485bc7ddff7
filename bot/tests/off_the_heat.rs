//! Off the heat without proof, back on, and numbers of other people's birds.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// Thursday, the bird in since 10:36.
fn cooking() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Dana", "/plan 14 lb fresh turkey, dinner Thursday 4 pm, 9 people, oven at 325");
    kitchen.press("Dana", "Accept");
    kitchen.say("Josie", "/board");
    kitchen.run_to("2027-11-23 18:40");
    kitchen.among("Dana", "salted it");
    kitchen.run_to("2027-11-25 10:06");
    kitchen.among("Dana", "it's on");
    assert!(is_done(&kitchen, Step::Fire) && !is_done(&kitchen, Step::On), "the oven is on, not yet the bird");
    kitchen.run_to("2027-11-25 10:36");
    kitchen.among("Dana", "it's on");
    assert!(is_done(&kitchen, Step::On));
    kitchen
}

fn is_done(kitchen: &Kitchen, step: Step) -> bool {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.facts.iter().any(|fact| fact.step == step.name() && fact.done)
}

fn heard_last(kitchen: &Kitchen, before: usize) -> String {
    kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| format!("{} ", text.id)).collect()
}

#[test]
fn taken_off_unmeasured_it_is_asked_what_it_read() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 14:20");
    let before = kitchen.said.len();
    kitchen.among("Dana", "it's off");
    let said = heard_last(&kitchen, before);
    assert!(said.contains("room-carve-unread") && said.contains("room-hold"), "{said}");
    // Whoever measured before is not asked.
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 14:00");
    kitchen.among("Dana", "breast 167, thigh 176, wing 170");
    let before = kitchen.said.len();
    kitchen.among("Dana", "it's off");
    assert!(!heard_last(&kitchen, before).contains("unread"));
}

#[test]
fn less_right_after_the_heat_means_it_was_never_hotter_there() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 14:00");
    kitchen.among("Dana", "breast 167, thigh 176, wing 170");
    kitchen.among("Dana", "it's off");
    kitchen.run_to("2027-11-25 14:05");
    let before = kitchen.said.len();
    kitchen.among("Dana", "actually thigh is 158");
    assert!(heard_last(&kitchen, before).contains("room-carve-under"));
    // An hour later it has cooled, and that says nothing of how hot it was.
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 14:00");
    kitchen.among("Dana", "breast 167, thigh 176, wing 170");
    kitchen.among("Dana", "it's off");
    kitchen.run_to("2027-11-25 14:50");
    let before = kitchen.said.len();
    kitchen.among("Dana", "thigh is 158");
    assert!(!heard_last(&kitchen, before).contains("room-carve-under"));
}

#[test]
fn what_goes_back_in_is_called_for_again() {
    for words in ["put it back in the oven", "back in it goes", "back in the oven"] {
        let mut kitchen = cooking();
        kitchen.run_to("2027-11-25 14:20");
        kitchen.among("Dana", "it's off");
        kitchen.run_to("2027-11-25 14:31");
        kitchen.among("Dana", words);
        kitchen.press("Dana", "Undo");
        assert!(is_done(&kitchen, Step::Pull), "{words}");
        let before = kitchen.said.len();
        kitchen.among("Dana", words);
        assert!(heard_last(&kitchen, before).contains("room-back-on"), "{words}");
        assert!(!is_done(&kitchen, Step::Pull), "{words}");
        let later = kitchen.run_to("2027-11-25 14:50");
        assert!(later.contains("Time for a look"), "{words}: {later}");
    }
}

#[test]
fn other_peoples_birds_and_prices_are_no_readings_of_ours() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 12:30");
    for talk in [
        "kellys turkey is 166 in the breast 175 thigh 170 wing",
        "kelly's thigh read 172",
        "bobs smoker is at 250",
        "leg is 150 dollars",
        "breast 120 lol thats a chicken at work",
        "100 90 suns",
    ] {
        assert_eq!(kitchen.among("Josie", talk), 0, "{talk}");
    }
    assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty());
    // Ours, and said to the bot: heard as before.
    assert!(kitchen.among("Josie", "left breast 88 right breast 90") > 0);
    assert!(kitchen.say("Josie", "Dana's thigh is 92").contains("thigh 92"));
    assert!(kitchen.say("Josie", "thigh 93").contains("Noted"));
}

#[test]
fn a_number_asked_about_is_no_reading() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 13:00");
    let said = kitchen.say("Dana", "is 160 enough in the breast?");
    assert!(!said.contains("Noted") && said.contains("165 °F"), "{said}");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty());
    assert!(kitchen.say("Dana", "breast 118, is that ok?").contains("Noted"));
}
