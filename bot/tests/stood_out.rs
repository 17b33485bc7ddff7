//! "It's been out since 11, is it still ok": the clock from the heat and what is said of it are one answer, the stricter.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::{Moment, Step};
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

/// Off the heat at 10:40, carved at 11:20, eaten at noon.
fn eaten(kind: RoomKind) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, dinner Thursday noon, 9 people");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 07:30");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 10:40");
    kitchen.say("Rosa", "breast 168, thigh 177, wing 170");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-25 11:20");
    kitchen.say("Rosa", "carved");
    kitchen.run_to("2027-11-25 12:10");
    kitchen
}

fn limit(kitchen: &Kitchen) -> Moment {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.jobs.iter().find(|job| job.step() == Some(Step::Chill) && job.state == JobState::Waiting).unwrap().latest
}

#[test]
fn said_to_be_out_for_less_it_counts_from_the_heat_all_the_same() {
    for (text, kind, addressed) in [
        ("it's been out since 11, is it still ok", RoomKind::Private, true),
        ("it's been out since 11, is it still ok?", RoomKind::Group, false),
        ("it's been out since 11, is it still ok", RoomKind::Group, false),
        ("turkey has been out for an hour, still ok?", RoomKind::Group, true),
        ("the leftovers have been out for 30 minutes, is that safe?", RoomKind::Private, true),
    ] {
        let mut kitchen = eaten(kind);
        let from = kitchen.said.len();
        if addressed {
            kitchen.say("Rosa", text);
        } else {
            kitchen.among("Rosa", text);
        }
        let say = kitchen.said.get(from).unwrap_or_else(|| panic!("{text}: unheard"));
        assert_eq!(say.text.first().map(|text| text.id.as_ref()), Some("room-out-clock"), "{text}");
        assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 12:40"), "{text}");
    }
    let mut kitchen = eaten(RoomKind::Private);
    let said = kitchen.say("Rosa", "it's been out since 11, is it still ok");
    assert!(
        said.contains("I count from 10:40 AM, when it came off the heat: eaten or in the fridge by 12:40 PM"),
        "{said}"
    );
    assert!(said.contains("90 °F"), "hotter it is one hour: {said}");
    // In the heat of a summer's day it has one hour, from the same moment.
    let said = kitchen.say("Rosa", "the turkey has been out for 30 min at 95°F, is that safe?");
    assert!(said.contains("the time was up at 11:40 AM") && !said.contains("fine"), "{said}");
}

#[test]
fn over_by_its_clock_nothing_said_of_it_makes_it_fine() {
    let mut kitchen = eaten(RoomKind::Private);
    kitchen.run_to("2027-11-25 13:10");
    let said = kitchen.say("Rosa", "been out since 12:30, still good?");
    assert!(said.contains("from 10:40 AM") && said.contains("the time was up at 12:40 PM"), "{said}");
    assert!(said.contains("gets thrown away") && !said.contains("fine"), "{said}");
}

#[test]
fn said_to_be_out_for_longer_the_clock_follows_and_can_be_put_back() {
    let mut kitchen = eaten(RoomKind::Private);
    let said = kitchen.say("Rosa", "it's been out since 10:15, is it still ok");
    assert!(said.contains("Out since 10:15 AM is before 10:40 AM"), "{said}");
    assert!(said.contains("in the fridge by 12:15 PM"), "{said}");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 12:15"));
    kitchen.press("Rosa", "Undo");
    assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 12:40"));

    let mut kitchen = eaten(RoomKind::Private);
    let said = kitchen.say("Rosa", "been out 3 hours is it safe?");
    assert!(said.contains("Throw it away: out since 9:10 AM"), "{said}");
    let later = kitchen.run_to("2027-11-25 14:00");
    assert!(!later.contains("The two hours are over") && !later.contains("Leftovers into the fridge by"), "{later}");
}

#[test]
fn other_food_has_the_rule_and_not_the_birds_clock() {
    for text in [
        "the potato salad has been out since 11:50, is it still ok?",
        "the pie has been out for 20 minutes, is it still ok?",
        "how long can it sit out?",
    ] {
        let mut kitchen = eaten(RoomKind::Private);
        let from = kitchen.said.len();
        kitchen.say("Rosa", text);
        let ids: Vec<_> = kitchen.said[from..].iter().flat_map(|say| say.text.iter().map(|text| &text.id)).collect();
        assert!(!ids.iter().any(|id| id.starts_with("room-out-")), "{text}: {ids:?}");
        assert_eq!(limit(&kitchen), kitchen.local("2027-11-25 12:40"));
    }
    // Over the heat it has no such clock.
    let mut kitchen = over_heat(RoomKind::Private, "en-US");
    let said = kitchen.say("Ana", "the butter has been out since 2, is it ok?");
    assert!(!said.contains("I count from"), "{said}");
}

#[test]
fn the_one_answer_is_given_in_every_language() {
    for (tag, off, asks) in [
        ("en-US", "pulled it", "it's been out for an hour, is it still ok?"),
        ("es-ES", "ya lo saqué del horno", "lleva fuera una hora, ¿todavía está bien?"),
        ("fr-FR", "je l'ai sortie du four", "elle est dehors depuis une heure, c'est encore bon ?"),
        ("de-DE", "ist aus dem Ofen", "sie steht seit einer Stunde draußen, geht das noch?"),
        ("pt-BR", "tirei do forno", "está fora há uma hora, ainda está bom?"),
        ("it-IT", "tirato fuori dal forno", "è fuori da un'ora, va ancora bene?"),
    ] {
        let mut kitchen = over_heat(RoomKind::Private, tag);
        kitchen.run_to("2027-11-25 17:10");
        kitchen.say("Ana", off);
        kitchen.run_to("2027-11-25 18:40");
        let from = kitchen.said.len();
        let said = kitchen.say("Ana", asks);
        let ids: Vec<_> = kitchen.said[from..].iter().flat_map(|say| say.text.iter().map(|text| &text.id)).collect();
        assert!(ids.iter().any(|id| *id == "room-out-clock"), "{tag}: {ids:?} {said}");
        assert!(!said.contains('$') && !said.contains('{'), "{tag}: {said}");
    }
}
