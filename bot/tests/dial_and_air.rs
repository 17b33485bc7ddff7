//! An oven's dial against a thermometer in it: the thermometer's figure is the air's, the other what it is set to.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Lexicon, read_dial_and_air};
use carvetime::room::RoomKind;
use carvetime_core::quantity::{celsius, fahrenheit, in_celsius};
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

const TOLD: [(&str, &[&str]); 6] = [
    (
        "en-US",
        &[
            "oven thermometer says 375 but i set 350",
            "dial says 350 thermometer says 375",
            "oven thermometer reads 375, set to 350",
            "thermometer in the oven says 375 but its set at 350",
            "i set it to 350 but the oven thermometer reads 375",
            "oven set to 350 but its actually 375",
            "dial 350, actual 375",
        ],
    ),
    (
        "es-ES",
        &[
            "el termómetro del horno marca 200 pero lo puse a 180",
            "puse el horno a 180 pero el termómetro dice 200",
            "el dial dice 180 y el termómetro 200",
            "termometro de horno 200, puesto a 180",
            "en realidad está a 200 aunque puse 180",
        ],
    ),
    (
        "fr-FR",
        &[
            "le thermomètre du four indique 200 mais j'ai mis 180",
            "j'ai réglé sur 180 mais le thermomètre de four affiche 200",
            "thermomètre de four 200, réglé sur 180",
            "le four est réglé à 180 mais il fait 200 en vrai",
            "le bouton dit 180, le thermomètre dit 200",
        ],
    ),
    (
        "de-DE",
        &[
            "Ofenthermometer zeigt 200, eingestellt sind 180",
            "ich habe 180 eingestellt aber das Ofenthermometer sagt 200",
            "Das Thermometer im Ofen zeigt 200, gestellt auf 180",
            "Regler steht auf 180, Thermometer sagt 200",
            "eingestellt 180, tatsächlich 200",
        ],
    ),
    (
        "pt-BR",
        &[
            "o termômetro do forno marca 200 mas coloquei em 180",
            "coloquei em 180 mas o termômetro do forno diz 200",
            "termometro de forno 200, botão em 180",
            "o botão diz 180, o termômetro diz 200",
            "ajustei 180 mas na verdade está 200",
        ],
    ),
    (
        "it-IT",
        &[
            "il termometro del forno segna 200 ma ho messo 180",
            "ho impostato 180 ma il termometro da forno dice 200",
            "termometro forno 200, impostato 180",
            "la manopola dice 180, il termometro 200",
            "ho messo a 180 ma in realtà è a 200",
        ],
    ),
];

#[test]
fn the_thermometers_figure_is_noted_as_the_air_and_the_setting_stays() {
    for (tag, texts) in TOLD {
        let (air, dial) = if tag == "en-US" { (fahrenheit(375.0), "325 °F") } else { (celsius(200.0), "160 °C") };
        for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, true), (RoomKind::Group, false)] {
            for text in texts {
                let mut kitchen = over_heat(kind, tag);
                let set = kitchen.scene.room.plan.as_ref().unwrap().wish.setting_c;
                let (ids, said) = kitchen.ids("Ana", text, addressed);
                let plan = kitchen.scene.room.plan.as_ref().unwrap();
                let [read] = &plan.readings[..] else { panic!("{tag} {text}: {said}") };
                assert!((read.pit_c.unwrap() - in_celsius(air)).abs() < 0.01, "{tag} {text}: {said}");
                assert_eq!((read.breast_c, read.thigh_c), (None, None), "{tag} {text}");
                assert_eq!(plan.wish.setting_c, set, "{tag} {text}: {said}");
                assert_eq!(&ids[..2], ["room-log-noted", "ask-off-dial-at"], "{tag} {text}: {said}");
                assert!(said.contains(dial), "{tag} {text}: {said}");
            }
        }
    }
}

#[test]
fn before_the_bird_is_on_the_plan_keeps_its_heat_and_the_dial_is_told() {
    for (tag, texts) in TOLD {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, Chicago, "2027-11-24 10:00");
        for text in texts {
            let (ids, said) = kitchen.ids("Ana", text, true);
            assert_eq!(ids, ["ask-off-dial-at"], "{tag} {text}: {said}");
        }
        assert!(kitchen.scene.room.drafts.is_empty(), "{tag}");
    }
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 10:00");
    kitchen.say("Ana", "/plan 11 lb fresh turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 350, no salt");
    kitchen.press("Ana", "Accept");
    let plan = kitchen.scene.room.plan.clone().unwrap();
    kitchen.say("Ana", "oven thermometer says 375 but i set 350");
    assert_eq!(kitchen.scene.room.plan.unwrap().wish, plan.wish);
}

#[test]
fn what_the_dial_was_turned_to_counts_from_now_on() {
    let mut kitchen = over_heat(RoomKind::Private, "en-US");
    let said = kitchen.say("Ana", "turned it up to 400 but the thermometer says 375");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!((plan.wish.setting_c.unwrap() - in_celsius(fahrenheit(400.0))).abs() < 0.01, "{said}");
    assert!((plan.readings[0].pit_c.unwrap() - in_celsius(fahrenheit(375.0))).abs() < 0.01, "{said}");
}

#[test]
fn two_figures_near_each_other_are_an_oven_that_swings() {
    let mut kitchen = over_heat(RoomKind::Private, "en-US");
    let (ids, said) = kitchen.ids("Ana", "oven thermometer says 352 but i set 350", true);
    assert!(!ids.iter().any(|id| id.starts_with("ask-off-dial")), "{said}");
    assert!(kitchen.scene.room.plan.unwrap().readings[0].pit_c.is_some(), "{said}");
}

#[test]
fn meat_one_figure_and_a_change_of_the_dial_are_none_of_it() {
    for text in [
        "set to 350, thermometer says 160",
        "breast 155, oven set to 350",
        "turned it up to 375",
        "oven 350",
        "oven at 350 then 375",
        "thermometer says 140 then 98",
    ] {
        assert_eq!(read_dial_and_air(text, false, Lexicon::of("en-US")), None, "{text}");
    }
}
