//! The two hours off the heat: what they end, and from when they run where nobody said it in so many words.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::{Moment, Step};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// A plan accepted the day before, its bird on the heat since `on`.
fn cooking(plan: &str, on: &str) -> Kitchen {
    let begun = if on.starts_with("2027-11-24") { "2027-11-23 09:00" } else { "2027-11-24 09:00" };
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, begun);
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", "Accept");
    kitchen.run_to(on);
    kitchen.say("Rosa", "bird is on");
    kitchen
}

fn is_open(kitchen: &Kitchen, step: Step) -> bool {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.jobs.iter().any(|job| job.step() == Some(step) && job.state == JobState::Waiting)
}

fn latest(kitchen: &Kitchen) -> (Moment, Moment) {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let job = plan.jobs.iter().find(|job| job.step() == Some(Step::Chill) && job.state == JobState::Waiting).unwrap();
    (job.at, job.latest)
}

const AHEAD: &str = "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, cook it the day before and take it to my \
                     sister's, 40 minutes away, dinner Thursday 5 pm, 9 people";
const AT_HOME: &str = "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, dinner Thursday 5 pm, 9 people";
const HOT: &str = "/plan fresh 14 lb turkey, we have it, oven at 325, no salt, carry it hot to my sister's, 30 minutes away, \
                   dinner Thursday 5 pm, 9 people";

#[test]
fn a_bird_chilled_too_late_is_neither_packed_nor_reheated() {
    let mut kitchen = cooking(AHEAD, "2027-11-24 16:00");
    kitchen.run_to("2027-11-24 19:00");
    kitchen.say("Rosa", "breast 168, thigh 175");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-24 19:40");
    kitchen.say("Rosa", "carved");
    kitchen.run_to("2027-11-24 22:40");
    let said = kitchen.say("Rosa", "put away");
    assert!(said.contains("gets thrown away") && said.contains("Pack it cold, Leave, Reheat"), "{said}");
    for step in [Step::Pack, Step::Travel, Step::Reheat, Step::Serve, Step::Chill, Step::Leftovers] {
        assert!(!is_open(&kitchen, step), "{step:?}");
    }
    let later = kitchen.run_to("2027-11-28 20:00");
    assert!(!later.contains("Reheat it covered") && !later.contains("How was it"), "{later}");
}

#[test]
fn chilled_in_time_everything_goes_on_and_a_mistake_is_taken_back() {
    let mut kitchen = cooking(AHEAD, "2027-11-24 16:00");
    kitchen.run_to("2027-11-24 19:00");
    kitchen.say("Rosa", "breast 168, thigh 175");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-24 19:40");
    kitchen.say("Rosa", "carved");
    kitchen.run_to("2027-11-24 20:20");
    kitchen.say("Rosa", "put away");
    assert!(is_open(&kitchen, Step::Reheat));

    let mut late = cooking(AT_HOME, "2027-11-25 11:00");
    late.run_to("2027-11-25 14:50");
    late.say("Rosa", "breast 168, thigh 175");
    late.say("Rosa", "pulled it");
    late.run_to("2027-11-25 16:30");
    late.say("Rosa", "carved");
    late.run_to("2027-11-25 20:00");
    let said = late.say("Rosa", "leftovers are put away");
    assert!(said.contains("Leftovers’ last day") && !is_open(&late, Step::Leftovers), "{said}");
    late.say("Rosa", "undo");
    assert!(is_open(&late, Step::Leftovers), "it was a mistake");
}

#[test]
fn a_pull_asked_about_and_not_answered_counts_from_when_it_was_said() {
    let mut kitchen = cooking(AT_HOME, "2027-11-25 11:00");
    kitchen.run_to("2027-11-25 14:50");
    kitchen.say("Rosa", "breast 150, thigh 160");
    let asked = kitchen.say("Rosa", "pulled it");
    assert!(asked.contains("Does it read that now?"), "{asked}");
    kitchen.run_to("2027-11-25 16:10");
    kitchen.say("Rosa", "carved");
    assert_eq!(latest(&kitchen).1, kitchen.local("2027-11-25 16:50"));

    // Answered, or read hot in a hot oven since: nothing is left of it.
    for answer in ["still in the oven", "breast 166, thigh 172", "oven 330"] {
        let mut kitchen = cooking(AT_HOME, "2027-11-25 11:00");
        kitchen.run_to("2027-11-25 14:50");
        kitchen.say("Rosa", "breast 150, thigh 160");
        kitchen.say("Rosa", "pulled it");
        kitchen.run_to("2027-11-25 15:10");
        kitchen.say("Rosa", answer);
        kitchen.run_to("2027-11-25 16:10");
        kitchen.say("Rosa", "carved");
        assert!(latest(&kitchen).1 >= kitchen.local("2027-11-25 17:40"), "{answer}");
    }

    let mut late = cooking(AT_HOME, "2027-11-25 11:00");
    late.run_to("2027-11-25 14:20");
    late.say("Rosa", "breast 150, thigh 160");
    late.say("Rosa", "pulled it");
    late.run_to("2027-11-25 16:30");
    let said = late.say("Rosa", "carved");
    assert!(said.contains("two hours are over") && !said.contains("back into the heat"), "{said}");
}

#[test]
fn carried_hot_a_dinner_that_moves_does_not_move_the_two_hours() {
    let mut kitchen = cooking(HOT, "2027-11-25 11:00");
    kitchen.run_to("2027-11-25 15:30");
    kitchen.say("Rosa", "breast 168, thigh 175");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-25 15:40");
    kitchen.say("Rosa", "packed it");
    let said = kitchen.say("Rosa", "/move 6:30 pm");
    assert!(said.contains("two hours end at 5:30 PM"), "{said}");
    kitchen.press("Rosa", "Dinner 6:30 PM");
    let limit = kitchen.local("2027-11-25 17:30");
    assert_eq!(latest(&kitchen), (limit, limit));
}

/// Said to be off at 7:47 pm: the two hours end at 9:47 pm.
fn off_late() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-25 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, we have it, no salt, oven at 325, dinner today 7 pm, 11 people");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 15:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 19:47");
    kitchen.say("Rosa", "breast 166, thigh 182, wing 170");
    kitchen.say("Rosa", "pulled it");
    kitchen
}

#[test]
fn a_later_dinner_moves_no_call_past_its_own_limit() {
    let mut kitchen = off_late();
    let limit = kitchen.local("2027-11-25 21:47");
    let moved = kitchen.say("Rosa", "/move 10 pm");
    assert!(moved.contains("Into the fridge: Thu 9:47 PM") && !moved.contains("11:00 PM"), "{moved}");
    kitchen.press("Rosa", "Dinner 10:00 PM");
    assert_eq!(latest(&kitchen), (limit, limit));
    kitchen.run_to("2027-11-25 21:46");
    let over = kitchen.run_to("2027-11-25 21:48");
    assert!(over.contains("two hours are over"), "{over}");
    let after = kitchen.run_to("2027-11-26 10:00");
    assert!(!after.contains("Leftovers into the fridge by") && !after.contains("Time to carve"), "{after}");
    assert!(!after.contains("Still open"), "{after}");
}

#[test]
fn carved_after_the_two_hours_it_is_said_that_they_are_over() {
    let mut kitchen = off_late();
    kitchen.say("Rosa", "/move 10 pm");
    kitchen.press("Rosa", "Dinner 10:00 PM");
    kitchen.run_to("2027-11-25 22:00");
    let said = kitchen.say("Rosa", "carved");
    assert!(said.contains("two hours are over"), "{said}");
}

#[test]
fn cooked_ahead_the_limit_stays_where_it_was_however_late_it_is_carved() {
    let mut kitchen = cooking(AHEAD, "2027-11-24 12:00");
    kitchen.run_to("2027-11-24 15:30");
    kitchen.say("Rosa", "breast 168, thigh 175");
    kitchen.say("Rosa", "pulled it");
    let limit = kitchen.local("2027-11-24 17:30");
    kitchen.run_to("2027-11-24 19:00");
    kitchen.say("Rosa", "carved");
    assert_eq!(latest(&kitchen).1, limit);
    let said = kitchen.say("Rosa", "in the fridge");
    assert!(said.contains("gets thrown away") && !is_open(&kitchen, Step::Reheat), "{said}");
}

/// Same day, off at 3:30 pm, carved, and put away an hour too late.
fn spoiled() -> Kitchen {
    let mut kitchen = cooking(AT_HOME, "2027-11-25 12:00");
    kitchen.run_to("2027-11-25 15:30");
    kitchen.say("Rosa", "breast 168, thigh 175");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-25 18:30");
    kitchen.say("Rosa", "leftovers are in the fridge");
    kitchen
}

#[test]
fn after_food_is_thrown_away_nothing_contradicts_it() {
    let mut kitchen = spoiled();
    for said in ["how long do leftovers keep", "breast 45", "/move +1 h"] {
        let answer = kitchen.say("Rosa", said);
        assert!(answer.contains("gets thrown away"), "{said}: {answer}");
        assert!(!answer.contains("eaten or frozen by") && !answer.contains("Dinner is now"), "{said}: {answer}");
    }
    let board = kitchen.say("Rosa", "/board");
    assert!(board.contains("gets thrown away") && !board.contains("Enjoy"), "{board}");
    let later = kitchen.run_to("2027-11-30 20:00");
    assert!(!later.contains("Leftovers"), "{later}");
}

#[test]
fn a_bird_put_away_too_late_before_dinner_is_neither_carved_nor_served() {
    let mut kitchen = off_late();
    kitchen.say("Rosa", "/move 10:30 pm");
    kitchen.press("Rosa", "Dinner 10:30 PM");
    kitchen.run_to("2027-11-25 22:00");
    kitchen.say("Rosa", "in the fridge");
    for step in [Step::Carve, Step::Serve, Step::Leftovers] {
        assert!(!is_open(&kitchen, step), "{step:?}");
    }
    let later = kitchen.run_to("2027-11-28 20:00");
    assert!(!later.contains("carve") && !later.contains("How was it") && !later.contains("Leftovers"), "{later}");
}

#[test]
fn said_to_be_thrown_away_it_ends_in_every_language_and_can_be_taken_back() {
    let cases = [
        ("en-US", "threw it all away"),
        ("en-US", "we had to toss it"),
        ("es-ES", "lo tiramos todo"),
        ("fr-FR", "on a tout jeté"),
        ("de-DE", "alles weggeworfen"),
        ("pt-BR", "jogamos tudo fora"),
        ("it-IT", "l'abbiamo buttato"),
    ];
    for (locale, said) in cases {
        let mut kitchen = off_late();
        kitchen.scene.room.taste.language = Some(locale.into());
        let answer = kitchen.say("Rosa", said);
        for step in [Step::Carve, Step::Chill, Step::Leftovers] {
            assert!(!is_open(&kitchen, step), "{said}, {step:?}: {answer}");
        }
        kitchen.say("Rosa", "/undo");
        assert!(is_open(&kitchen, Step::Chill), "{said}");
        kitchen.say("Rosa", said);
        let later = kitchen.run_to("2027-11-28 20:00");
        assert!(later.is_empty(), "{said}: {later}");
    }
}

#[test]
fn carved_before_anyone_said_that_it_came_off_is_both_and_no_clash() {
    let carved = |reading: Option<&str>, at: &str| {
        let mut kitchen = cooking(AT_HOME, "2027-11-25 12:00");
        kitchen.run_to(at);
        if let Some(reading) = reading {
            kitchen.say("Rosa", reading);
        }
        let said = kitchen.say("Rosa", "carved it");
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert!(matches!(plan.job(Step::Pull, 0).unwrap().state, JobState::Done { .. }), "{said}");
        assert!(!said.contains("There isn't time") && plan.clash.is_none(), "{said}");
        (said, latest(&kitchen).1, kitchen)
    };
    let (unread, limit, kitchen) = carved(None, "2027-11-25 14:00");
    assert!(unread.contains("Did it read 165 °F in breast, thigh and wing?"), "{unread}");
    assert!(limit <= kitchen.local("2027-11-25 16:00"));
    let (under, ..) = carved(Some("breast 150, thigh 162"), "2027-11-25 15:00");
    assert!(under.contains("goes back into the heat") && !under.contains("Did it read"), "{under}");
    let (hot, limit, kitchen) = carved(Some("breast 168, thigh 178, wing 170"), "2027-11-25 15:20");
    assert!(!hot.contains("back into the heat"), "{hot}");
    assert_eq!(limit, kitchen.local("2027-11-25 17:20"));
}

#[test]
fn once_the_two_hours_are_said_to_be_over_nothing_more_is_called_for_the_fridge() {
    for (carved, held) in [("2027-11-25 16:39", false), ("2027-11-25 16:49", false), ("2027-11-25 17:05", true)] {
        let mut kitchen = cooking(AT_HOME, "2027-11-25 11:00");
        kitchen.run_to("2027-11-25 14:50");
        kitchen.say("Rosa", "breast 168, thigh 175");
        kitchen.say("Rosa", "pulled it");
        if held {
            kitchen.press("Rosa", "Kept hot");
            kitchen.run_to("2027-11-25 16:00");
            kitchen.say("Rosa", "breast 151, thigh 155");
        }
        let before = kitchen.run_to(carved);
        kitchen.say("Rosa", "carved");
        let mut all = before;
        all += &kitchen.run_to("2027-11-25 22:00");
        let (calls, after) = all.split_once("The two hours are over").unwrap_or_else(|| panic!("{carved}: {all}"));
        assert!(!after.contains("Still open") && !after.contains("Leftovers into the fridge"), "{carved}: {after}");
        assert!(!held || calls.contains("Leftovers into the fridge"), "{calls}");
    }
}

#[test]
fn what_is_told_to_be_reheated_takes_no_more_time() {
    for (at, words) in [("2027-11-25 16:50", "it's reheated"), ("2027-11-25 17:25", "reheated")] {
        let mut kitchen = cooking(AHEAD, "2027-11-24 16:00");
        kitchen.run_to("2027-11-24 19:00");
        kitchen.say("Rosa", "breast 168, thigh 175");
        kitchen.say("Rosa", "pulled it");
        kitchen.run_to("2027-11-24 19:40");
        kitchen.say("Rosa", "carved");
        kitchen.run_to("2027-11-24 20:20");
        kitchen.say("Rosa", "put away");
        kitchen.run_to("2027-11-25 15:00");
        kitchen.say("Rosa", "packed");
        kitchen.run_to(at);
        let said = kitchen.say("Rosa", words);
        assert!(said.contains("Reheated") && !said.contains("isn't time") && !said.contains("50 min"), "{said}");
        assert!(!is_open(&kitchen, Step::Reheat) && is_open(&kitchen, Step::Chill));
    }
}
