//! What the heat was when the bird went in is of the air, and what a spot has to reach is no reading and no turkey breast.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Ground, Lexicon, read_went_in_at, wants_degrees};
use carvetime::room::RoomKind;
use carvetime_core::quantity::{fahrenheit, in_celsius};
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

const WENT_IN: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        ["it went in at 325", "went in at 325", "put it in at 325 degrees", "Started it at 325", "stuck it in at 325"],
    ),
    ("es-ES", ["entró a 170", "lo metí a 170", "Lo metimos a 170 grados", "empezó a 170", "entro con 170"]),
    (
        "fr-FR",
        [
            "elle est entrée à 170",
            "je l'ai mise à 170",
            "enfournée à 170 degrés",
            "On l'a mise à 170",
            "j'ai démarré à 170",
        ],
    ),
    (
        "de-DE",
        [
            "sie ist bei 170 rein",
            "kam bei 170 Grad rein",
            "mit 170 angefangen",
            "Bei 170 reingeschoben",
            "bei 170 in den Ofen",
        ],
    ),
    ("pt-BR", ["entrou a 170", "coloquei a 170", "Comecei com 170 graus", "entrou com 170", "botei a 170"]),
    (
        "it-IT",
        ["è entrato a 170", "l'ho infornato a 170", "Ho iniziato a 170 gradi", "l'ho messo a 170", "e entrato a 170"],
    ),
];

const WANTED: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        [
            "breast should be 165",
            "the breast has to hit 165",
            "Breast needs to be 165 right",
            "thigh needs 165",
            "breast gotta hit 165",
        ],
    ),
    (
        "es-ES",
        [
            "la pechuga debe estar a 74",
            "la pechuga tiene que llegar a 74",
            "Pechuga debería llegar a 74",
            "el muslo debe marcar 74",
            "la pechuga debe llegar a 74 grados",
        ],
    ),
    (
        "fr-FR",
        [
            "le blanc doit atteindre 74",
            "la poitrine doit être à 74",
            "Le blanc devrait faire 74",
            "la cuisse doit afficher 74",
            "le blanc doit monter à 74 degrés",
        ],
    ),
    (
        "de-DE",
        [
            "Brust muss auf 74",
            "die brust soll auf 74",
            "Brust sollte mindestens 74",
            "die Keule muss auf 74 Grad",
            "Brust braucht 74",
        ],
    ),
    (
        "pt-BR",
        [
            "o peito tem que chegar a 74",
            "peito deve estar a 74",
            "O peito precisa chegar a 74",
            "a coxa tem que marcar 74",
            "peito tem que estar em 74 graus",
        ],
    ),
    (
        "it-IT",
        [
            "il petto deve arrivare a 74",
            "petto deve essere a 74",
            "Il petto dovrebbe segnare 74",
            "la coscia deve raggiungere 74",
            "petto deve raggiungere i 74 gradi",
        ],
    ),
];

#[test]
fn it_is_what_the_heat_has_been_set_to_since_whether_or_not_a_look_is_due() {
    for (tag, texts) in WENT_IN {
        let set = if tag == "en-US" { in_celsius(fahrenheit(325.0)) } else { 170.0 };
        for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, true), (RoomKind::Group, false)] {
            for text in texts {
                let mut kitchen = over_heat(kind, tag);
                kitchen.run_to("2027-11-25 16:20");
                let (ids, said) = kitchen.ids("Ana", text, addressed);
                assert_eq!(ids.first().map(String::as_str), Some("cook-air-was"), "{tag} {text}: {said}");
                let plan = kitchen.scene.room.plan.as_ref().unwrap();
                assert!(plan.readings.is_empty() && plan.doubted.is_empty(), "{tag} {text}: {said}");
                assert!((plan.wish.setting_c.unwrap() - set).abs() < 0.01, "{tag} {text}: {said}");
            }
        }
    }
}

#[test]
fn as_planned_nothing_changes() {
    let mut kitchen = over_heat(RoomKind::Private, "en-US");
    let plan = kitchen.scene.room.plan.clone().unwrap();
    let (ids, said) = kitchen.ids("Ana", "it went in at 350", true);
    assert_eq!(ids, ["cook-setting"], "{said}");
    let after = kitchen.scene.room.plan.unwrap();
    assert!(after.wish == plan.wish && after.was_set == plan.was_set && after.readings == plan.readings);
}

#[test]
fn an_hour_a_spot_and_a_pie_are_none_of_it() {
    for text in [
        "it went in at 2",
        "went in at 2:30",
        "breast went in at 38",
        "the pie went in at 350",
        "should it have went in at 325?",
    ] {
        assert_eq!(read_went_in_at(text, false, Lexicon::of("en-US")), None, "{text}");
    }
}

#[test]
fn what_a_spot_has_to_reach_is_answered_wherever_it_is_said() {
    for (tag, texts) in WANTED {
        for text in texts {
            let mut none = Kitchen::new(RoomKind::Private, tag, Chicago, "2027-11-24 10:00");
            none.say("Ana", "/plan");
            let mut heat = over_heat(RoomKind::Private, tag);
            for kitchen in [&mut none, &mut heat] {
                let (ids, said) = kitchen.ids("Ana", text, true);
                assert_eq!(ids.first().map(String::as_str), Some("ask-safe"), "{tag} {text}: {said}");
            }
            assert!(none.scene.room.drafts.values().all(|draft| draft.wish.kind.is_none()), "{tag} {text}");
            assert!(heat.scene.room.plan.unwrap().readings.is_empty(), "{tag} {text}");
        }
    }
}

#[test]
fn readings_and_weights_are_not_wanted_degrees() {
    let ground = Ground::new("en-US", false, Chicago, chrono::Utc::now());
    for text in [
        "breast 165",
        "turkey breast for 6",
        "the wings need 20 more",
        "breast is 150, should be 165",
        "oven should be 325",
    ] {
        assert!(!wants_degrees(text, &ground), "{text}");
    }
}
