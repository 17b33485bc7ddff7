//! Numbers in °F where degrees are Celsius: asked about, and never booked as a bird that is done.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::{America::Mexico_City, America::Toronto, Europe::Madrid, Europe::Paris, Tz};
use kitchen::Kitchen;

/// A bird in the oven since 4 pm.
fn cooking(tag: &str, zone: Tz, plan: &str, accept: &str, on: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, tag, zone, "2026-12-24 08:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen.run_to("2026-12-24 16:00");
    kitchen.say("Ana", on);
    kitchen
}

fn mexican() -> Kitchen {
    let plan = "/plan pavo fresco de 12 lb, ya lo tengo, cena hoy a las 9 pm, 10 personas, horno a 350, sin sal";
    cooking("es-MX", Mexico_City, plan, "Aceptar", "ya metí el pavo al horno")
}

fn spanish() -> Kitchen {
    let plan = "/plan pavo fresco de 5 kg, ya lo tengo, cena hoy a las 20:00, 8 personas, horno a 180, sin sal";
    cooking("es-ES", Madrid, plan, "Aceptar", "el pavo ya está en el horno")
}

fn breast(kitchen: &Kitchen) -> Option<f64> {
    kitchen.scene.room.plan.as_ref().unwrap().readings.iter().rev().find_map(|reading| reading.breast_c)
}

#[test]
fn a_bird_at_ninety_eight_after_an_hour_is_at_thirty_seven() {
    let canadian = || {
        let plan =
            "/plan dinde fraîche de 12 livres, on l'a déjà, souper ce soir à 9 h, 10 personnes, four à 325, sans sel";
        cooking("fr-CA", Toronto, plan, "Accepter", "la dinde est dans le four")
    };
    let french = || {
        let plan = "/plan dinde fraîche de 5 kg, on l'a déjà, dîner ce soir à 20h, 8 personnes, four à 180, sans sel";
        cooking("fr-FR", Paris, plan, "Accepter", "la dinde est dans le four")
    };
    for (mut kitchen, told, taken) in [
        (mexican(), "pechuga 98 muslo 99", "Usar las corregidas"),
        (spanish(), "pechuga 98 muslo 99", "Usar las corregidas"),
        (canadian(), "blanc 98 cuisse 100", "Prendre les corrigées"),
        (french(), "blanc 98 cuisse 100", "Prendre les corrigées"),
    ] {
        kitchen.run_to("2026-12-24 17:00");
        let said = kitchen.say("Ana", told);
        assert!(said.contains("98 °C") && said.contains("37 °C"), "{said}");
        assert_eq!(breast(&kitchen), None, "asked about, not booked");
        kitchen.press("Ana", taken);
        assert!((breast(&kitchen).unwrap() - 36.67).abs() < 0.1);
    }
}

#[test]
fn what_is_offered_instead_is_what_somebody_can_have_typed() {
    let mut kitchen = mexican();
    kitchen.run_to("2026-12-24 17:00");
    kitchen.say("Ana", "pechuga 98 muslo 99");
    kitchen.press("Ana", "Usar las corregidas");
    kitchen.run_to("2026-12-24 18:30");
    let said = kitchen.say("Ana", "pechuga 158 muslo 165");
    assert!(said.contains("70 °C") && said.contains("74 °C") && !said.contains("102"), "{said}");
    let mut kitchen = mexican();
    kitchen.run_to("2026-12-24 18:30");
    let said = kitchen.say("Ana", "muslo 110");
    assert!(said.contains("43 °C") && !said.contains("54"), "{said}");
}

#[test]
fn a_cold_oven_is_believed_and_no_hotter_one_made_up() {
    let mut kitchen = spanish();
    kitchen.run_to("2026-12-24 17:00");
    let said = kitchen.say("Ana", "horno 100");
    assert!(!said.contains("156") && !said.contains("200 °C"), "{said}");
    assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().readings.last().unwrap().pit_c, Some(100.0));
}

#[test]
fn a_bird_that_is_done_in_time_is_taken_at_its_word() {
    let mut kitchen = spanish();
    kitchen.run_to("2026-12-24 17:15");
    kitchen.say("Ana", "pechuga 45 muslo 42");
    kitchen.run_to("2026-12-24 18:40");
    let said = kitchen.say("Ana", "pechuga 76 muslo 78");
    assert!(!said.contains("¿Pechuga"), "{said}");
    assert_eq!(breast(&kitchen), Some(76.0));
}
