//! What was said puts right what was taken for granted: when the fire was lit, what rests, what one look found, what is gone.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// A salted bird on Thursday morning, nobody having said anything since.
fn thursday(local: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, we have it, dinner Thursday 4 pm, 12 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-23 18:40");
    kitchen.say("Rosa", "salted");
    kitchen.run_to(local);
    kitchen
}

/// On the heat since 10:35.
fn cooking(local: &str) -> Kitchen {
    let mut kitchen = thursday("2027-11-25 10:05");
    kitchen.say("Rosa", "oven on");
    kitchen.run_to("2027-11-25 10:35");
    kitchen.say("Rosa", "its in");
    kitchen.run_to(local);
    kitchen
}

fn is_done(kitchen: &Kitchen, step: Step) -> bool {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.job(step, 0).is_some_and(|job| matches!(job.state, JobState::Done { .. }))
}

#[test]
fn a_bird_taken_for_on_was_not_on_before_the_fire() {
    let mut kitchen = thursday("2027-11-25 12:00");
    let said = kitchen.say("Rosa", "oven on");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.job(Step::On, 0).unwrap().at >= kitchen.now, "{said}");
    assert!(said.contains("Dinner Thu 5:30 PM"), "a way out is offered: {said}");

    // Measured, it is on, whenever the oven was spoken of.
    let mut kitchen = thursday("2027-11-25 12:00");
    kitchen.say("Rosa", "breast 70");
    kitchen.say("Rosa", "oven on");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.job(Step::On, 0).unwrap().at < kitchen.now);
}

#[test]
fn what_rests_came_off() {
    for words in ["took it out, it's resting", "it's resting", "off and wrapped up"] {
        let mut kitchen = cooking("2027-11-25 14:30");
        kitchen.say("Rosa", "167 breast 175 thigh 170 wing");
        let said = kitchen.say("Rosa", words);
        assert!(is_done(&kitchen, Step::Pull), "{words}: {said}");
    }
    // While it is raw, what rests is the salted bird in the fridge.
    let mut kitchen = thursday("2027-11-24 09:00");
    kitchen.say("Rosa", "it's resting");
    assert!(!is_done(&kitchen, Step::Pull));
}

#[test]
fn spots_read_one_after_the_other_are_one_look() {
    let mut kitchen = cooking("2027-11-25 14:30");
    let said = kitchen.say("Rosa", "166 breast");
    assert!(said.contains("one spot"), "{said}");
    kitchen.now += chrono::TimeDelta::minutes(1);
    let said = kitchen.say("Rosa", "173 thigh 168 wing");
    assert!(said.contains("in breast, thigh and wing"), "{said}");

    // An hour later it is another look.
    let mut kitchen = cooking("2027-11-25 14:00");
    kitchen.say("Rosa", "166 breast");
    kitchen.run_to("2027-11-25 15:00");
    let said = kitchen.say("Rosa", "173 thigh");
    assert!(said.contains("one spot"), "{said}");
}

#[test]
fn back_into_the_heat_takes_the_mark_back() {
    let mut kitchen = cooking("2027-11-25 14:30");
    kitchen.say("Rosa", "breast 166");
    kitchen.say("Rosa", "its out");
    kitchen.say("Rosa", "thigh only 158 tho");
    let said = kitchen.say("Rosa", "back in then");
    assert!(said.contains("Back on. Off only at 165"), "{said}");
    assert!(!is_done(&kitchen, Step::Pull));
}

#[test]
fn a_number_that_is_doubted_is_measured_again_and_no_job_is_denied() {
    let mut kitchen = cooking("2027-11-25 14:00");
    kitchen.say("Rosa", "breast 95");
    let said = kitchen.say("Rosa", "that cant be right");
    assert!(said.contains("second spot") && said.contains("[Undo]"), "{said}");
    // Of no number just read it is talk.
    let mut kitchen = cooking("2027-11-25 13:00");
    assert!(!kitchen.say("Rosa", "that cant be right").contains("second spot"));
}

#[test]
fn what_was_thrown_away_stays_so_whoever_asks() {
    let mut kitchen = cooking("2027-11-25 14:30");
    kitchen.say("Rosa", "167 breast 175 thigh 170 wing");
    kitchen.say("Rosa", "off");
    kitchen.run_to("2027-11-25 18:30");
    kitchen.say("Rosa", "leftovers in the fridge");
    for asked in ["do we rly need to throw it out??", "can we eat the leftovers?", "is the turkey still ok to eat?"] {
        let said = kitchen.say("Rosa", asked);
        assert!(said.contains("gets thrown away"), "{asked}: {said}");
    }
}

#[test]
fn leftovers_have_one_last_day() {
    let mut kitchen = cooking("2027-11-25 14:30");
    kitchen.say("Rosa", "167 breast 175 thigh 170 wing");
    kitchen.say("Rosa", "off");
    kitchen.run_to("2027-11-25 16:00");
    kitchen.say("Rosa", "carved");
    kitchen.say("Rosa", "all in the fridge");
    let said = kitchen.run_to("2027-11-28 13:00");
    assert!(said.contains("last day"), "{said}");
    let said = kitchen.say("Rosa", "are the leftovers still ok?");
    assert!(said.contains("Sun") && !said.contains("have had"), "{said}");
    kitchen.run_to("2027-11-29 09:00");
    let said = kitchen.say("Rosa", "are the leftovers still ok?");
    assert!(said.contains("have had their days"), "{said}");
}

#[test]
fn a_bird_that_stands_is_answered_by_its_two_hours() {
    for asked in ["it's 138 now, is it still ok?", "its 135 now is it ok", "138, still ok to eat?"] {
        let mut kitchen = cooking("2027-11-25 14:30");
        kitchen.say("Rosa", "167 breast 175 thigh 170 wing");
        kitchen.say("Rosa", "off");
        kitchen.run_to("2027-11-25 15:00");
        let said = kitchen.say("Rosa", asked);
        assert!(said.contains("in the fridge by 4:30 PM") && !said.contains("must hold"), "{asked}: {said}");
    }
}

#[test]
fn what_is_packed_warm_is_not_cold_and_its_two_hours_run() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say(
        "Rosa",
        "/plan 14 lb fresh turkey, we have it, dinner Thursday 4 pm, 12 people, oven at 325, no salt, we eat at mom's, 40 min drive, cold",
    );
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-24 15:00");
    kitchen.say("Rosa", "its in");
    kitchen.run_to("2027-11-24 18:30");
    kitchen.say("Rosa", "167 breast 175 thigh 170 wing");
    kitchen.say("Rosa", "its off");
    kitchen.now += chrono::TimeDelta::minutes(20);
    kitchen.say("Rosa", "packed it");
    let said = kitchen.press("Rosa", "Done");
    assert!(said.contains("isn't cold yet") && said.contains("8:30 PM"), "{said}");
}
