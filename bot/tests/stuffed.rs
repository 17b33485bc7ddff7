//! That the bird is stuffed, or goes without salt for someone's heart, said after the plan stands, in any language and among people.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn planned(tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Ruth", "/plan 12 lb fresh turkey, we have it, dinner Thursday 5 pm, 9 people, oven at 325");
    kitchen.press("Ruth", "Accept");
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen
}

fn among(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn is_stuffed(kitchen: &Kitchen) -> bool {
    kitchen.scene.room.plan.as_ref().unwrap().wish.stuffed == Some(true)
}

#[test]
fn stuffed_it_is_planned_anew_and_the_middle_has_a_mark() {
    let goes_on = |kitchen: &Kitchen| {
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        plan.jobs.iter().find(|job| job.step == "on").unwrap().at
    };
    for text in ["its stuffed", "the stuffing goes inside", "i'm putting the stuffing in", "we're stuffing it"] {
        let mut kitchen = planned("en-US");
        let before = goes_on(&kitchen);
        let heard = among(&mut kitchen, "Ruth", text);
        assert!(is_stuffed(&kitchen), "{text}: {heard}");
        assert!(goes_on(&kitchen) < before && heard.contains("stuffing must reach 165 °F"), "{text}: {heard}");
    }
}

#[test]
fn in_every_language() {
    for (tag, text) in [
        ("es-ES", "va relleno"),
        ("fr-FR", "la farce sera dedans"),
        ("fr-FR", "la dinde est farcie"),
        ("de-DE", "die füllung kommt rein"),
        ("pt-BR", "vai recheado"),
        ("it-IT", "il tacchino è ripieno"),
    ] {
        let mut kitchen = planned(tag);
        let heard = among(&mut kitchen, "Ruth", text);
        assert!(is_stuffed(&kitchen), "{tag} {text}: {heard}");
    }
}

#[test]
fn of_a_helper_the_host_is_asked_and_what_is_asked_changes_nothing() {
    let mut kitchen = planned("en-US");
    let heard = among(&mut kitchen, "Tom", "its stuffed");
    assert!(!is_stuffed(&kitchen) && heard.contains("Ruth"), "{heard}");
    for text in ["is it stuffed?", "no stuffing in the bird", "the stuffing is in the oven"] {
        let mut kitchen = planned("en-US");
        among(&mut kitchen, "Ruth", text);
        assert!(!is_stuffed(&kitchen), "{text}");
    }
}

#[test]
fn without_salt_for_a_reason() {
    for (tag, text) in
        [("en-US", "no salt, my dad has a heart condition"), ("fr-FR", "pas de sel, mon père est cardiaque")]
    {
        let mut kitchen = planned(tag);
        let heard = among(&mut kitchen, "Ruth", text);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert_eq!(plan.wish.salting.as_deref(), Some("none"), "{tag} {text}: {heard}");
    }
}

#[test]
fn while_the_proposal_is_open_they_count_as_well() {
    for (text, told) in [("je mets une farce dedans", true), ("sans sel", false), ("pas de sel", false)] {
        let mut kitchen = Kitchen::new(RoomKind::Group, "fr-FR", chrono_tz::Europe::Paris, "2027-12-22 18:00");
        kitchen.say(
            "Sophie",
            "/plan chapon frais de 3,8 kg, repas vendredi 24 à 20h30, 6 personnes, four à 165, acheté aujourd'hui",
        );
        among(&mut kitchen, "Sophie", text);
        let draft = kitchen.scene.room.drafts.values().next().unwrap();
        assert_eq!(draft.wish.stuffed == Some(true), told, "{text}");
        assert_eq!(draft.wish.salting.as_deref() == Some("none"), !told, "{text}");
    }
}
