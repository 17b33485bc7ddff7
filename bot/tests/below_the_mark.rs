//! A reading below its mark is never shown as the mark.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use kitchen::over_heat;

#[test]
fn what_is_just_short_keeps_its_decimal() {
    let mut kitchen = over_heat(RoomKind::Private, "pt-BR");
    kitchen.run_to("2027-11-25 17:20");
    let said = kitchen.say("Ana", "peito 73,6 coxa 78");
    assert!(said.contains("peito 73,6 °C") && said.contains("78 °C"), "{said}");
    let there = kitchen.say("Ana", "peito 73,9 coxa 78");
    assert!(there.contains("peito 74 °C"), "{there}");
}

#[test]
fn how_much_salt_a_planned_brine_takes_is_no_dry_dose() {
    use chrono_tz::America::Sao_Paulo;
    let mut kitchen = kitchen::Kitchen::new(RoomKind::Group, "pt-BR", Sao_Paulo, "2027-12-18 10:00");
    kitchen
        .say("Lu", "/plan peru congelado 5kg, ceia 24/12 22h30, 6 pessoas, forno 180 graus, salmoura com sal grosso");
    kitchen.press("Lu", "Aceitar");
    let said = kitchen.say("Lu", "quanto de sal grosso eu ponho?");
    assert!(said.contains("salmoura a") || said.contains("Salmoura a"), "{said}");
    assert!(!said.contains(" 19 g"), "{said}");
}

#[test]
fn salt_said_to_be_on_it_is_held_against_the_plan() {
    use chrono_tz::America::Sao_Paulo;
    let mut kitchen = kitchen::Kitchen::new(RoomKind::Group, "pt-BR", Sao_Paulo, "2027-12-20 10:00");
    let plan = "/plan peru congelado de 5kg, ja comprei, ceia dia 24/12 as 22h30, 6 pessoas, forno a 180, sal grosso";
    kitchen.say("Lu", plan);
    kitchen.press("Lu", "Aceitar");
    let before = kitchen.said.len();
    kitchen.among("Ju", "pus 3 colheres de sopa de sal grosso");
    let ids: Vec<_> = kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect();
    assert!(ids.contains(&"ask-oversalt-much".to_owned()), "{ids:?}");
    let before = kitchen.said.len();
    kitchen.among("Mae", "é muito sal?");
    let ids: Vec<_> = kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect();
    assert!(ids.contains(&"ask-oversalt-much".to_owned()), "{ids:?}");
}

#[test]
fn a_bird_that_comes_in_brine_is_salted_no_more() {
    for (tag, zone, plan) in [
        (
            "en-US",
            "America/Chicago",
            "/plan frozen 11 lb turkey that comes brined, dinner 12/24 6 pm, oven at 325, 6 people",
        ),
        (
            "es-ES",
            "Europe/Madrid",
            "/plan pavo congelado de 5 kg que ya viene en salmuera, cena el 24/12 a las 20:00, horno a 180, 6 personas",
        ),
        (
            "fr-FR",
            "Europe/Paris",
            "/plan dinde congelée de 5 kg déjà en saumure, repas le 24/12 à 20h, four à 180, 6 personnes",
        ),
        (
            "de-DE",
            "Europe/Berlin",
            "/plan gefrorene Pute 5 kg, schon in Lake, Essen am 24.12. um 20 Uhr, Ofen 180, 6 Personen",
        ),
        (
            "pt-BR",
            "America/Sao_Paulo",
            "/plan peru congelado de 5kg que ja vem na salmoura, ceia dia 24/12 as 20h, forno a 180, 6 pessoas",
        ),
        (
            "it-IT",
            "Europe/Rome",
            "/plan tacchino congelato da 5 kg che viene già in salamoia, cena il 24/12 alle 20, forno a 180, 6 persone",
        ),
    ] {
        let zone: chrono_tz::Tz = zone.parse().unwrap();
        let mut kitchen = kitchen::Kitchen::new(RoomKind::Group, tag, zone, "2027-12-18 10:00");
        kitchen.say("Lu", plan);
        let wish = &kitchen.scene.room.drafts.values().next().unwrap().wish;
        assert_eq!(wish.salting.as_deref(), Some("none"), "{tag}: {wish:?}");
    }
}
