//! How many eat: people counted behind an hour, and a number told in all with whoever comes or goes.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Ground, read_wish};
use carvetime::room::RoomKind;
use chrono::{TimeZone, Utc};
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

fn told(tag: &str, text: &str) -> (String, Option<u16>) {
    let now = Berlin.with_ymd_and_hms(2027, 12, 18, 18, 30, 0).unwrap().with_timezone(&Utc);
    let (wish, _) = read_wish(text, &Ground::new(tag, tag != "en-US", Berlin, now));
    let dinner = wish.dinner.map(|at| at.with_timezone(&Berlin).format("%H:%M").to_string());
    (dinner.unwrap_or_default(), wish.adults)
}

#[test]
fn people_behind_an_hour_are_no_minutes() {
    for (tag, text, hour) in [
        ("de-DE", "pute 5 kg tk, essen samstag 18uhr 10 pers.", "18:00"),
        ("de-DE", "pute 5 kg tk, essen samstag 18 uhr 10 Pers", "18:00"),
        ("de-DE", "pute 5 kg tk, essen samstag 18 uhr 10 leute", "18:00"),
        ("de-DE", "pute 5 kg tk, essen samstag 18 uhr, 10 pax", "18:00"),
        ("fr-FR", "dinde surgelée 5 kg, dîner samedi 18h 10 pers", "18:00"),
        ("fr-FR", "dinde surgelée 5 kg, dîner samedi 18 h 10 personnes", "18:00"),
        ("fr-FR", "dinde surgelée 5 kg, dîner samedi à 18 h 10 pers.", "18:00"),
        ("es-ES", "pavo congelado 5 kg, cena el sábado 21h 10 pers", "21:00"),
        ("es-ES", "pavo congelado 5 kg, cena el sábado a las 21 10 personas", "21:00"),
        ("pt-BR", "peru congelado 5 kg, ceia sábado 21h 10 pessoas", "21:00"),
        ("pt-BR", "peru congelado 5 kg, ceia sábado 21 h 10 pax", "21:00"),
        ("it-IT", "tacchino congelato 5 kg, cena sabato ore 20 10 pers", "20:00"),
        ("it-IT", "tacchino congelato 5 kg, cena sabato alle 20 10 persone", "20:00"),
        ("en-US", "12 lb frozen turkey, dinner saturday 6 pm 10 ppl", "18:00"),
        ("en-GB", "5 kg frozen turkey, dinner saturday 18:00 10 pers", "18:00"),
    ] {
        assert_eq!(told(tag, text), (hour.to_owned(), Some(10)), "{tag}: {text}");
    }
    // Minutes are still minutes.
    assert_eq!(told("de-DE", "pute 5 kg tk, essen samstag 18 uhr 30, 10 leute").0, "18:30");
    assert_eq!(told("de-DE", "pute 5 kg tk, essen samstag um 18 uhr 10, 9 leute").0, "18:10");
    let (hour, people) = told("de-DE", "pute 5 kg tk, essen samstag 18 uhr 10, umluft");
    assert_eq!(hour, "18:00", "{people:?}");
}

#[test]
fn a_number_told_with_a_newcomer_is_of_all() {
    let plans = [
        ("de-DE", "/plan 5,5 kg pute, frisch, haben wir, essen samstag 18 uhr, 10 leute, umluft", "Annehmen"),
        ("fr-FR", "/plan dinde fraîche 5,5 kg, on l'a, dîner samedi 18h, 10 personnes, four", "Accepter"),
        ("en-US", "/plan 12 lb fresh turkey, we have it, dinner Saturday 6 pm, 10 people, oven", "Accept"),
        ("es-ES", "/plan pavo fresco 5,5 kg, lo tenemos, cena sábado 21:00, 10 personas, horno", "Aceptar"),
        ("it-IT", "/plan tacchino fresco 5,5 kg, ce l'abbiamo, cena sabato alle 20, 10 persone, forno", "Accetta"),
        ("pt-BR", "/plan peru fresco 5,5 kg, já temos, ceia sábado 21h, 10 pessoas, forno", "Aceitar"),
    ];
    let mut wrong = Vec::new();
    for (tag, text, wanted) in [
        ("de-DE", "ja gabi kommt mit, 11 leute", 11),
        ("de-DE", "gabi kommt nicht, 9 leute", 9),
        ("de-DE", "gabi und lukas kommen mit, 12 personen", 12),
        ("de-DE", "gabi und lukas kommen mit, 2 leute", 12),
        ("de-DE", "3 leute kommen mit", 13),
        ("fr-FR", "Gabi vient aussi, 11 personnes", 11),
        ("en-US", "Gabi is coming too, 11 people", 11),
        ("es-ES", "Gabi viene también, 11 personas", 11),
        ("it-IT", "viene anche Gabi, 11 persone", 11),
        ("pt-BR", "Gabi vem também, 11 pessoas", 11),
    ] {
        let (_, plan, accept) = plans.iter().find(|(of, ..)| *of == tag).unwrap();
        let mut kitchen = Kitchen::new(RoomKind::Group, tag, Berlin, "2027-12-18 18:30");
        kitchen.say("Jonas", plan);
        kitchen.press("Jonas", accept);
        kitchen.say("Jonas", text);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        if plan.wish.adults != Some(wanted) {
            wrong.push(format!("{tag}: {text}: {:?}", plan.wish.adults));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
