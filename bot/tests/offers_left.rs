//! What is offered says what holds: a job taken is not every job, and the hour that stands is no other hour.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

#[test]
fn the_one_job_offered_is_taken_while_others_are_free() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 17:30");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/take salt");
    let said = kitchen.run_to("2027-11-22 18:05");
    assert!(said.contains("Nobody has these yet"), "{said}");
    let offered: Vec<String> = said
        .lines()
        .filter_map(|line| line.split("[Take: ").nth(1))
        .map(|it| it.trim_end_matches(']').to_owned())
        .collect();
    let mut last = String::new();
    for job in &offered {
        last = kitchen.press("Tom", &format!("Take: {job}"));
    }
    let free = kitchen.say("Rosa", "/take");
    assert!(free.contains("[Carve]"), "others are free: {free}");
    assert!(last.contains("Taken.") && !last.contains("Everything is taken"), "{offered:?} {last}");
}

#[test]
fn an_hour_that_does_not_work_is_not_answered_with_the_hour_that_stands() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 10:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 10 people, oven at 325, we have it");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 11:00");
    kitchen.say("Rosa", "oven on");
    kitchen.run_to("2027-11-25 11:40");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 12:01");
    let mut asked = 0;
    for hour in ["4 pm", "4:15 pm", "4:30 pm", "4:45 pm", "3 pm"] {
        let said = kitchen.say("Rosa", &format!("/move {hour}"));
        if said.contains("doesn't work") {
            asked += 1;
            assert!(!said.contains("[Dinner Thu 5:00 PM]") && !said.contains("• Dinner Thu 5:00 PM"), "{said}");
            assert!(said.contains("[Leave it]"), "{said}");
        }
    }
    assert!(asked > 0);
}
