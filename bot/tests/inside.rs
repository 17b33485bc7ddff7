//! How the bird was inside as it went on: ice that was found too late, a start that was measured. The hour follows.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn on(locale: &str, kind: RoomKind, plan: &str, said: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, locale, Chicago, "2027-11-24 18:00");
    kitchen.say("Rosa", &format!("/plan {plan}"));
    let press = kitchen.said.last().unwrap().buttons.iter().flatten().find(|b| b.data.starts_with("accept")).unwrap();
    let data = press.data.clone();
    kitchen.hear(Some("Rosa"), carvetime::room::What::Pressed { press: "p".into(), data, on: None });
    at(&mut kitchen, "11:35", said);
    assert!(kitchen.scene.room.plan.as_ref().unwrap().on_since(kitchen.now).is_some(), "{locale}: {said}");
    kitchen
}

fn english(kind: RoomKind) -> Kitchen {
    on(
        "en-US",
        kind,
        "14 lb fresh turkey, we have it, dinner Thursday 5 pm, 11 people, oven at 325, no salt",
        "it's on",
    )
}

fn at(kitchen: &mut Kitchen, time: &str, text: &str) -> String {
    kitchen.run_to(&format!("2027-11-25 {time}"));
    kitchen.say("Rosa", text)
}

fn start(kitchen: &Kitchen) -> Option<f64> {
    kitchen.scene.room.plan.as_ref().unwrap().inside.start_c.map(|c| (c * 10.0).round() / 10.0)
}

#[test]
fn ice_found_in_a_bird_that_is_on_moves_its_hour() {
    let mut kitchen = english(RoomKind::Private);
    let before = kitchen.scene.room.plan.as_ref().unwrap().ready_to.unwrap();
    let said = at(&mut kitchen, "11:40", "it was still frozen inside");
    assert!(said.contains("up to half as long again") && said.contains("Off the heat between"), "{said}");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.inside.icy && plan.ready_to.unwrap() > before, "{said}");
    let read = at(&mut kitchen, "12:25", "breast 40, thigh 46, oven 325");
    assert!(read.contains("About ") && !read.contains("Was it off?"), "{read}");
    let when = at(&mut kitchen, "12:26", "/when");
    assert!(when.contains("It went on with ice inside"), "{when}");
}

#[test]
fn ice_can_be_taken_back() {
    let mut kitchen = english(RoomKind::Private);
    at(&mut kitchen, "11:40", "it was still frozen inside");
    kitchen.press("Rosa", "Undo");
    assert!(!kitchen.scene.room.plan.as_ref().unwrap().inside.icy);
}

#[test]
fn a_measured_start_is_no_reading_of_now() {
    for text in ["it went in at 38 °F", "breast was 38 when I put it in", "start temp 38", "it went in at 38F"] {
        let mut kitchen = english(RoomKind::Private);
        let said = at(&mut kitchen, "12:40", text);
        assert!(said.contains("Noted: 38 °F inside when it went on."), "{text}: {said}");
        assert_eq!(
            (start(&kitchen), kitchen.scene.room.plan.as_ref().unwrap().readings.len()),
            (Some(3.3), 0),
            "{text}"
        );
    }
}

#[test]
fn it_is_heard_in_every_language() {
    let told = [
        (
            "de-DE",
            "Truthahn 6,5 kg frisch, ist da, Donnerstag 17 Uhr, 11 Leute, Ofen 165, ohne Salz",
            "ist drin",
            "Brust hatte 4 Grad beim Start",
        ),
        (
            "es-ES",
            "pavo 6,5 kg fresco, lo tenemos, cena jueves 17:00, 11 personas, horno a 165, sin sal",
            "ya está en el horno",
            "la pechuga estaba a 4 °C cuando entró",
        ),
        (
            "fr-FR",
            "dinde 6,5 kg fraîche, on l’a, repas jeudi 17 h, 11 personnes, four à 165, sans sel",
            "elle est au four",
            "4 °C au départ",
        ),
        (
            "it-IT",
            "tacchino 6,5 kg fresco, ce l’abbiamo, cena giovedì 17:00, 11 persone, forno a 165, senza sale",
            "è in forno",
            "petto 4 °C all’inizio",
        ),
        (
            "pt-BR",
            "peru 6,5 kg fresco, já temos, jantar quinta 17h, 11 pessoas, forno a 165, sem sal",
            "está no forno",
            "peito a 4 °C quando entrou",
        ),
    ];
    for (locale, plan, on_words, text) in told {
        let mut kitchen = on(locale, RoomKind::Private, plan, on_words);
        let said = at(&mut kitchen, "12:40", text);
        assert_eq!(
            (start(&kitchen), kitchen.scene.room.plan.as_ref().unwrap().readings.len()),
            (Some(4.0), 0),
            "{locale}: {said}"
        );
    }
}

#[test]
fn what_only_sounds_like_a_start_is_none() {
    for text in [
        "it went in at 11:30",
        "went in at 4",
        "the rolls went in at 38 °F",
        "it went in at 325",
        "breast 128 now",
        "did it go in at 38 °F?",
    ] {
        let mut kitchen = english(RoomKind::Private);
        at(&mut kitchen, "12:40", text);
        assert_eq!(start(&kitchen), None, "{text}");
    }
    for text in ["he went in at 38", "we started at 35 and it got worse", "the game was 38 at the start"] {
        let mut kitchen = english(RoomKind::Group);
        kitchen.run_to("2027-11-25 12:40");
        assert_eq!(kitchen.among("Tom", text), 0, "{text}");
        assert_eq!(start(&kitchen), None, "{text}");
    }
}
