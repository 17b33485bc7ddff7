//! Put into cold water where the fridge was to thaw it: the water is changed every half hour, in every language. And ice found inside.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn frozen(tag: &str) -> Kitchen {
    let (plan, accept) = match tag {
        "es-ES" => (
            "/plan pavo congelado de 5 kg, ya lo tengo, cena el jueves a las 18:00, 8 personas, horno a 180, sin sal",
            "Aceptar",
        ),
        "fr-FR" => (
            "/plan dinde surgelée de 5 kg, je l'ai déjà, repas jeudi à 18h, 8 personnes, four à 180, sans sel",
            "Accepter",
        ),
        "de-DE" => (
            "/plan gefrorene Pute 5 kg, haben wir schon, Essen Donnerstag um 18 Uhr, 8 Personen, Ofen auf 180, kein Salz",
            "Annehmen",
        ),
        "it-IT" => (
            "/plan tacchino congelato 5 kg, ce l'abbiamo, cena giovedì alle 18, 8 persone, forno a 180, senza sale",
            "Accetta",
        ),
        "pt-BR" => {
            ("/plan peru congelado de 5 kg, já temos, ceia quinta às 18h, 8 pessoas, forno a 180, sem sal", "Aceitar")
        }
        _ => ("/plan 11 lb frozen turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 350, no salt", "Accept"),
    };
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, Chicago, "2027-11-19 10:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen
}

fn aside(kitchen: &mut Kitchen, text: &str) -> String {
    kitchen.hear(Some("Bob"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn ids(kitchen: &Kitchen, from: usize) -> Vec<String> {
    kitchen.said.iter().skip(from).flat_map(|say| &say.text).map(|text| text.id.to_string()).collect()
}

#[test]
fn the_evening_before_its_water_is_called_every_half_hour() {
    for (tag, text) in [
        ("en-US", "put it in cold water"),
        ("es-ES", "lo puse en agua fría"),
        ("fr-FR", "mise dans l'eau froide"),
        ("de-DE", "liegt im kalten Wasser"),
        ("it-IT", "messo in acqua fredda"),
        ("pt-BR", "coloquei na água fria"),
    ] {
        let mut kitchen = frozen(tag);
        kitchen.run_to("2027-11-24 20:00");
        let said = aside(&mut kitchen, text);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        let first = plan.job(Step::Water, 0).map(|job| job.at);
        assert_eq!(first, Some(kitchen.local("2027-11-24 20:30")), "{tag}: {text}: {said}");
    }
}

#[test]
fn days_before_it_is_told_when_it_is_thawed_and_how_often_the_water_is_changed() {
    let mut kitchen = frozen("en-US");
    kitchen.run_to("2027-11-22 09:30");
    let said = aside(&mut kitchen, "put it in cold water");
    assert!(said.contains("thawed by Mon 3:30 PM: change the water every 30 min"), "{said}");
    kitchen.say("Bob", "undo");
    let thawing = kitchen.scene.room.plan.as_ref().unwrap().wish.thawing.clone();
    assert_ne!(thawing.as_deref(), Some("cold-water"), "taken back it is the fridge's again");
}

#[test]
fn in_the_fridge_it_stays_the_fridge_s() {
    let mut kitchen = frozen("en-US");
    kitchen.run_to("2027-11-22 09:30");
    aside(&mut kitchen, "put it in the fridge to thaw");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.wish.thawing.as_deref() != Some("cold-water") && plan.job(Step::Water, 0).is_none());
}

#[test]
fn ice_inside_is_heard_as_italians_and_brazilians_say_it() {
    for (tag, text) in [
        ("it-IT", "dentro è ancora gelato"),
        ("it-IT", "è ancora gelato al centro"),
        ("pt-BR", "ainda está congelado por dentro"),
        ("pt-BR", "por dentro ainda tá congelado"),
    ] {
        let mut kitchen = frozen(tag);
        kitchen.run_to("2027-11-24 12:00");
        let before = kitchen.said.len();
        aside(&mut kitchen, text);
        assert!(ids(&kitchen, before).iter().any(|id| id.starts_with("room-ice")), "{tag}: {text}");
    }
    let mut kitchen = frozen("it-IT");
    kitchen.run_to("2027-11-24 12:00");
    for text in ["c'è ancora gelato", "chi vuole il gelato?", "il gelato è in freezer"] {
        assert_eq!(kitchen.among("Bob", text), 0, "ice cream is none: {text}");
    }
}
