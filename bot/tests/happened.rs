//! What was done earlier than planned, or some time ago: the plan goes on from when it happened.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::{Moment, Step};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn planned(tag: &str, begun: &str, plan: &str, accept: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, tag, Chicago, begun);
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", accept);
    kitchen
}

fn at(kitchen: &Kitchen, step: Step) -> Moment {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().at
}

/// When the job was done.
fn done(kitchen: &Kitchen, step: Step) -> Option<Moment> {
    match kitchen.scene.room.plan.as_ref().unwrap().job(step, 0)?.state {
        JobState::Done { at, .. } => Some(at),
        _ => None,
    }
}

const FROZEN: &str = "/plan 10 lb frozen turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 325";
const FRESH: &str = "/plan 14 lb fresh turkey, we have it, dinner Thursday 4 pm, 8 people, oven at 325, no salt";

#[test]
fn thawing_begun_half_a_day_early_is_no_clash() {
    for hour in ["2027-11-21 01:00", "2027-11-20 22:00", "2027-11-20 18:00"] {
        let mut kitchen = planned("en-US", "2027-11-19 12:00", FROZEN, "Accept");
        let dinner = kitchen.scene.room.plan.as_ref().unwrap().wish.dinner;
        kitchen.run_to(hour);
        let said = kitchen.say("Rosa", "i started thawing already");
        assert!(!said.contains("There isn't time"), "{hour}: {said}");
        assert_eq!(done(&kitchen, Step::Thaw), Some(kitchen.now), "{said}");
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.dinner, dinner, "{said}");
    }
    let mut kitchen = planned("en-US", "2027-11-19 12:00", FROZEN, "Accept");
    kitchen.run_to("2027-11-21 06:30");
    let planned_at = at(&kitchen, Step::Thaw);
    kitchen.say("Rosa", "started thawing 3 hours early");
    assert_eq!(done(&kitchen, Step::Thaw), Some(planned_at - chrono::TimeDelta::hours(3)));
}

#[test]
fn what_happened_a_while_ago_is_done_since_then() {
    for (tag, plan, accept, text) in [
        ("en-US", FRESH, "Accept", "bird went in an hour ago"),
        ("en-US", FRESH, "Accept", "bird has been on since 10:30"),
        ("en-US", FRESH, "Accept", "bird went in at 10:30"),
        (
            "es-ES",
            "/plan pavo fresco de 6 kg, ya lo tenemos, cena mañana a las 16, 8 personas, horno a 165, sin sal",
            "Aceptar",
            "el pavo está dentro desde hace 1 hora",
        ),
        (
            "de-DE",
            "/plan frische Pute 6 kg, haben wir schon, Essen morgen um 16 Uhr, 8 Personen, Ofen auf 165, kein Salz",
            "Annehmen",
            "Vogel ist seit 10:30 drin",
        ),
    ] {
        let mut kitchen = planned(tag, "2027-11-24 09:00", plan, accept);
        kitchen.run_to("2027-11-25 11:30");
        let said = kitchen.say("Rosa", text);
        assert_eq!(done(&kitchen, Step::On), Some(kitchen.local("2027-11-25 10:30")), "{text}: {said}");
    }
    let mut kitchen = planned("en-US", "2027-11-24 09:00", FRESH, "Accept");
    kitchen.run_to("2027-11-25 11:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 14:50");
    kitchen.say("Rosa", "breast 168, thigh 175");
    kitchen.say("Rosa", "took it out");
    kitchen.run_to("2027-11-25 18:00");
    let said = kitchen.say("Rosa", "leftovers put away 2 hours ago");
    assert!(!said.contains("thrown away"), "it was in time: {said}");
}

#[test]
fn what_is_still_to_come_is_not_done() {
    for text in ["bird goes in at 11", "taking it out at 3", "it goes on at 10:30", "putting it in at 11"] {
        let mut kitchen = planned("en-US", "2027-11-24 09:00", FRESH, "Accept");
        kitchen.run_to("2027-11-25 09:00");
        kitchen.say("Rosa", text);
        assert_eq!((done(&kitchen, Step::On), done(&kitchen, Step::Pull)), (None, None), "{text}");
    }
}

#[test]
fn thawed_is_thawed_and_nothing_is_cooked_for_it() {
    for (tag, plan, accept, text) in [
        (
            "en-US",
            "/plan 14 lb frozen turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 325, thaw in cold water, no salt",
            "Accept",
            "its thawed",
        ),
        (
            "es-ES",
            "/plan pavo congelado de 6 kg, ya lo tenemos, cena el jueves a las 18, 8 personas, horno a 165, descongelar en agua fría, sin sal",
            "Aceptar",
            "ya está descongelado",
        ),
        (
            "de-DE",
            "/plan gefrorene Pute 6 kg, haben wir schon, Essen Donnerstag 18 Uhr, 8 Personen, Ofen auf 165, in kaltem Wasser auftauen, kein Salz",
            "Annehmen",
            "ist aufgetaut",
        ),
    ] {
        let mut kitchen = planned(tag, "2027-11-23 09:00", plan, accept);
        let on = at(&kitchen, Step::On);
        kitchen.run_to("2027-11-24 21:30");
        let said = kitchen.say("Rosa", text);
        assert!(done(&kitchen, Step::Thaw).is_some(), "{said}");
        assert_eq!(at(&kitchen, Step::On), on, "it goes on when it was to go on: {said}");
        assert!(done(&kitchen, Step::On).is_none(), "{said}");
        let later = kitchen.run_to("2027-11-25 09:00");
        assert!(!later.contains("water ("), "the water is not changed any more: {later}");
    }
}

#[test]
fn thawed_sooner_in_water_it_is_cooked_at_once_and_salted_where_there_is_a_night() {
    let plan = "/plan 14 lb frozen turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 325, thaw in cold water, no salt";
    let mut kitchen = planned("en-US", "2027-11-23 09:00", plan, "Accept");
    kitchen.run_to("2027-11-25 04:05");
    kitchen.say("Rosa", "started thawing");
    kitchen.run_to("2027-11-25 10:00");
    let on = at(&kitchen, Step::On);
    let said = kitchen.say("Rosa", "its thawed");
    assert!(at(&kitchen, Step::On) < on, "{said}");

    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 18:00");
    kitchen.say("Rosa", "/plan 14 lb frozen turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Fridge, then cold water");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-24 19:30");
    let said = kitchen.say("Rosa", "its thawed");
    assert!(!said.contains("There isn't time"), "{said}");
    let back = kitchen.say("Rosa", "theres still ice inside");
    assert!(back.contains("cold water") || back.contains("Leave it in the fridge"), "{back}");
}
