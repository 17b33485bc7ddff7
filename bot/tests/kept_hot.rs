//! "Kept hot" off the heat is a word: its two hours run until a thermometer has said so, and every answer counts from the same moment.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::{Moment, Step};
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

const HOME: &str = "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, dinner Thursday 6 pm, 9 people";
const HOT: &str = "/plan fresh 14 lb turkey, we have it, oven at 325, no salt, carry it hot to my sister's, 30 minutes away, \
                   dinner Thursday 6 pm, 9 people";

/// Off the heat at 2:30 pm for a dinner at six, and said to be kept hot.
fn held(plan: &str) -> (Kitchen, String) {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 11:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 14:29");
    kitchen.say("Rosa", "breast 168, thigh 177, wing 170");
    kitchen.run_to("2027-11-25 14:30");
    kitchen.say("Rosa", "pulled it");
    let said = kitchen.press("Rosa", "Kept hot");
    (kitchen, said)
}

fn limit(kitchen: &Kitchen) -> Moment {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.jobs.iter().find(|job| job.step() == Some(Step::Chill) && job.state == JobState::Waiting).unwrap().latest
}

#[test]
fn unread_the_two_hours_run_from_the_heat_and_every_word_says_so() {
    let (mut kitchen, asked) = held(HOME);
    assert!(asked.contains("Tell me what breast and thigh read: at 140 °F or more"), "{asked}");
    assert!(asked.contains("count from 2:30 PM, until 4:30 PM"), "{asked}");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 16:30"));
    let eat = kitchen.say("Rosa", "can we eat it?");
    assert!(eat.contains("by 4:30 PM"), "{eat}");
    let alarm = kitchen.run_to("2027-11-25 16:15");
    assert!(alarm.contains("Off the heat since 2:30 PM. Measure it") && alarm.contains("by 4:30 PM"), "{alarm}");
    let over = kitchen.run_to("2027-11-25 16:35");
    assert!(over.contains("no reading of that since 2:30 PM. Measure breast and thigh now"), "{over}");
    let eat = kitchen.say("Rosa", "can we eat it?");
    assert!(eat.contains("Measure breast and thigh now") && !eat.contains("Yes"), "{eat}");
    let carved = kitchen.say("Rosa", "carved");
    assert!(carved.contains("Less, and it gets thrown away"), "{carved}");
}

#[test]
fn a_reading_of_both_begins_them_anew_as_often_as_it_is_told() {
    let (mut kitchen, _) = held(HOME);
    kitchen.run_to("2027-11-25 16:15");
    let one = kitchen.say("Rosa", "breast 152");
    assert!(one.contains("measure the other too"), "{one}");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 16:30"), "one spot proves nothing of the other");
    kitchen.run_to("2027-11-25 16:18");
    let both = kitchen.say("Rosa", "thigh 149");
    assert!(both.contains("Still 140 °F or more in both"), "{both}");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 18:15"));
    let eat = kitchen.say("Rosa", "can we eat it?");
    assert!(eat.contains("by 6:15 PM"), "{eat}");
    let quiet = kitchen.run_to("2027-11-25 17:30");
    assert!(!quiet.contains("The two hours are over") && !quiet.contains("Measure"), "{quiet}");
    // Put off once more, it is asked after again.
    kitchen.say("Rosa", "/move 8 pm");
    let dinner = kitchen.said.iter().rev().flat_map(|say| say.buttons.iter().flatten());
    assert!(dinner.into_iter().any(|button| button.data.starts_with("dinner.") || button.data.starts_with("shift.")));
    kitchen.press("Rosa", "Dinner 8:00 PM");
    let again = kitchen.run_to("2027-11-25 18:00");
    assert!(again.contains("Last read hot at 4:15 PM. Measure it again") && again.contains("by 6:15 PM"), "{again}");
    kitchen.say("Rosa", "breast 149, thigh 151");
    let later = kitchen.run_to("2027-11-25 19:30");
    assert!(!later.contains("The two hours are over"), "{later}");
}

#[test]
fn less_than_hot_they_run_from_the_last_hot_reading() {
    let (mut kitchen, _) = held(HOME);
    kitchen.run_to("2027-11-25 15:30");
    kitchen.say("Rosa", "breast 152, thigh 150");
    kitchen.run_to("2027-11-25 16:40");
    let less = kitchen.say("Rosa", "breast 131, thigh 138");
    assert!(less.contains("131 °F is under 140 °F") && less.contains("by 5:30 PM"), "{less}");
    assert!(less.contains("when it last read that"), "{less}");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 17:30"));
    let over = kitchen.run_to("2027-11-25 17:35");
    assert!(over.contains("The two hours are over"), "{over}");
}

#[test]
fn hot_again_on_the_thermometer_it_was_hot_all_the_while() {
    let (mut kitchen, _) = held(HOME);
    kitchen.run_to("2027-11-25 16:40");
    kitchen.say("Rosa", "breast 151, thigh 150");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 18:40"));
    let called = kitchen.run_to("2027-11-25 17:40");
    assert!(called.contains("Time to carve"), "{called}");
}

#[test]
fn carried_hot_nobody_counts_it_hot_until_it_is_wrapped() {
    let (mut kitchen, asked) = held(HOT);
    assert!(asked.contains("until 4:30 PM"), "{asked}");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 16:30"));
    let call = kitchen.run_to("2027-11-25 16:36");
    assert!(call.contains("Measure breast and thigh first and tell me"), "{call}");
    assert!(call.contains("else from 2:30 PM"), "{call}");
    let (mut kitchen, _) = held(HOT);
    kitchen.run_to("2027-11-25 16:20");
    kitchen.say("Rosa", "breast 150, thigh 152");
    kitchen.say("Rosa", "packed it");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 18:20"));
}

#[test]
fn it_is_asked_for_in_every_language() {
    for (tag, off, button) in [
        ("en-US", "pulled it", "Kept hot"),
        ("es-ES", "ya lo saqué del horno", "Se mantiene caliente"),
        ("fr-FR", "je l'ai sortie du four", "Gardée au chaud"),
        ("de-DE", "ist aus dem Ofen", "Bleibt heiß"),
        ("pt-BR", "tirei do forno", "Fica quente"),
        ("it-IT", "tirato fuori dal forno", "Resta caldo"),
    ] {
        let mut kitchen = over_heat(RoomKind::Private, tag);
        kitchen.run_to("2027-11-25 15:40");
        kitchen.say("Ana", off);
        let at = kitchen.said.len();
        let _ = button;
        let held = kitchen.said.iter().rev().flat_map(|say| say.buttons.iter().flatten());
        let data = held.map(|button| button.data.clone()).find(|data| data.starts_with("held."));
        let Some(data) = data else { panic!("{tag}: no way to say so") };
        let press = carvetime::room::What::Pressed { press: "p".into(), data, on: Some("hold".into()) };
        let said = kitchen.hear(Some("Ana"), press);
        assert!(
            kitchen.said[at..].iter().any(|say| say.text.iter().any(|text| text.id == "room-held")),
            "{tag}: {said}"
        );
        assert!(!said.contains('$') && !said.contains('{'), "{tag}: {said}");
    }
}
