//! The salt of the planned bird: said early it is on, twice is warned of, and what it takes goes by the plan.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::JobState;
use carvetime::room::{RoomKind, What};
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const LANGUAGES: [&str; 6] = ["en-US", "de-DE", "es-ES", "fr-FR", "it-IT", "pt-BR"];

fn planned(kind: RoomKind, plan: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 10:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", "Accept");
    kitchen
}

const FRESH: &str = "/plan 12 lb fresh turkey, dinner Thursday 6 pm, 8 people, oven at 350";
const UNSALTED: &str = "/plan 11 lb fresh turkey, dinner Thursday 6 pm, 8 people, oven at 350, no salt";
const FROZEN: &str = "/plan 12 lb frozen turkey, we have it, dinner Friday 6 pm, 8 people, oven at 350";

fn aside(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn is_salted(kitchen: &Kitchen) -> bool {
    matches!(kitchen.scene.room.plan.as_ref().unwrap().job(Step::Salt, 0).unwrap().state, JobState::Done { .. })
}

fn ids(kitchen: &Kitchen) -> Vec<String> {
    kitchen.said.last().unwrap().text.iter().map(|text| text.id.to_string()).collect()
}

#[test]
fn salted_before_its_hour_is_salted_and_nobody_is_called_for_it() {
    for kind in [RoomKind::Private, RoomKind::Group] {
        let mut kitchen = planned(kind, FRESH);
        kitchen.run_to("2027-11-23 08:00");
        let said = aside(&mut kitchen, "Ana", "salted it");
        assert!(is_salted(&kitchen), "{said}");
        assert!(!kitchen.say("Ana", "did someone salt it?").contains("Nobody has said so"));
        let called = kitchen.run_to("2027-11-24 08:00");
        assert!(!called.contains("Salt the bird: neck"), "{called}");
    }
}

#[test]
fn a_bird_that_is_still_ice_is_asked_about() {
    let mut kitchen = planned(RoomKind::Group, FROZEN);
    let said = aside(&mut kitchen, "Bob", "salted it");
    assert!(said.contains("Really done already?") && !is_salted(&kitchen), "{said}");
}

#[test]
fn salt_twice_is_warned_of() {
    let mut kitchen = planned(RoomKind::Group, FRESH);
    kitchen.run_to("2027-11-23 19:00");
    aside(&mut kitchen, "Bob", "salted it");
    let again = aside(&mut kitchen, "Bob", "salted it");
    assert!(!again.contains("Brush off"), "the same thing said twice: {again}");
    kitchen.run_to("2027-11-23 20:00");
    let said = aside(&mut kitchen, "Cy", "salted it");
    assert!(said.contains("Bob salted it already") && said.contains("Brush off"), "{said}");
    kitchen.run_to("2027-11-25 14:00");
    kitchen.say("Ana", "bird is on");
    let later = aside(&mut kitchen, "Cy", "salted it");
    assert!(!later.contains("Brush off"), "over the heat it is of the vegetables: {later}");
}

#[test]
fn how_much_salt_goes_by_the_plan() {
    let mut kitchen = planned(RoomKind::Private, FRESH);
    let said = kitchen.say("Ana", "how much salt");
    assert!(said.contains("Salt it Tue 6:30 PM") && !said.contains("24 h or more"), "{said}");
    let per = kitchen.say("Ana", "how much salt per pound");
    assert!(per.contains("Salt it Tue 6:30 PM") && !per.contains("24 h or more"), "{per}");
    kitchen.run_to("2027-11-23 19:00");
    kitchen.say("Ana", "salted it");
    let said = kitchen.say("Ana", "how much salt");
    assert!(said.contains("It’s salted already, since Tue 7:00 PM") && !said.contains("24 h or more"), "{said}");
    let mut kitchen = planned(RoomKind::Private, UNSALTED);
    let said = kitchen.say("Ana", "how much salt");
    assert!(said.contains("no salted rest") && !said.contains("24 h or more"), "{said}");
    let other = kitchen.say("Ana", "how much salt for a 4 lb chicken");
    assert!(other.contains("4 lb chicken") && other.contains("24 h or more"), "another bird's: {other}");
    let unknown = kitchen.say("Ana", "how much salt for a chicken");
    assert!(unknown.contains("How heavy"), "its weight is not the turkey's: {unknown}");
}

#[test]
fn enough_salt_is_judged_by_the_bird_that_is_planned() {
    let asked = [
        "25 g of salt, is that enough",
        "25 g Salz, reicht das?",
        "25 g de sal, ¿es suficiente?",
        "25 g de sel, ça suffit ?",
        "25 g di sale, basta?",
        "25 g de sal, chega?",
    ];
    for plan in [FRESH, UNSALTED] {
        for (language, words) in LANGUAGES.into_iter().zip(asked) {
            let mut kitchen = planned(RoomKind::Group, plan);
            kitchen.scene.room.taste.language = Some(language.to_owned());
            let said = aside(&mut kitchen, "Bob", words);
            let id = if plan == FRESH { "ask-salt-enough-right" } else { "ask-salt-enough-a-little" };
            assert_eq!(ids(&kitchen), [id], "{language}: {words}: {said}");
        }
    }
    let mut kitchen = planned(RoomKind::Private, FRESH);
    for (words, id) in [
        ("i used 5 g of salt, enough?", "ask-oversalt-little"),
        ("60 g of salt, is that enough", "ask-salt-enough-much"),
        ("i put 4 tbsp of table salt on it, too much?", "ask-oversalt-much"),
    ] {
        kitchen.say("Ana", words);
        assert_eq!(ids(&kitchen)[0], id, "{words}");
    }
}
