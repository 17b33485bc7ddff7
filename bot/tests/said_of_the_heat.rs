//! "Change the oven to 350", "it's frozen, not fresh", "/plan 16 lb": said of the dinner that is planned, they change that one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::quantity::{celsius, in_fahrenheit};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn planned(kind: RoomKind) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Dana", "/plan 14 lb fresh turkey, dinner Thursday 4 pm, 9 people, oven at 325");
    kitchen.press("Dana", "Accept");
    kitchen
}

fn wish(kitchen: &Kitchen) -> &carvetime::reading::Wish {
    &kitchen.scene.room.plan.as_ref().unwrap().wish
}

fn setting_f(kitchen: &Kitchen) -> f64 {
    in_fahrenheit(celsius(wish(kitchen).setting_c.unwrap())).round()
}

#[test]
fn the_oven_is_changed_before_the_bird_is_on() {
    for (language, text, wanted) in [
        ("en-US", "change the oven to 350", 350.0),
        ("en-US", "set the oven to 375", 375.0),
        ("de-DE", "stell den ofen auf 180 grad", 356.0),
        ("es-ES", "pon el horno a 180", 356.0),
        ("fr-FR", "mets le four à 180", 356.0),
        ("pt-BR", "põe o forno a 180", 356.0),
        ("it-IT", "cambiamo, forno a 180", 356.0),
    ] {
        let mut kitchen = planned(RoomKind::Private);
        kitchen.scene.room.taste.language = Some(language.to_owned());
        kitchen.say("Dana", text);
        assert_eq!(setting_f(&kitchen), wanted, "{language}: {text}");
    }
    // Among people as well; asked, it is answered and nothing changes.
    let mut kitchen = planned(RoomKind::Group);
    assert!(kitchen.among("Dana", "change the oven to 350") > 0);
    assert_eq!(setting_f(&kitchen), 350.0);
    kitchen.say("Dana", "is 375 ok for the oven?");
    assert_eq!(setting_f(&kitchen), 350.0);
    // The pie's oven is the pie's.
    kitchen.among("Dana", "set the oven to 375 for the pie");
    assert_eq!(setting_f(&kitchen), 350.0);
}

#[test]
fn the_bird_is_another_than_was_thought() {
    let mut kitchen = planned(RoomKind::Group);
    assert!(kitchen.among("Dana", "the turkey is 18 lb not 14") > 0);
    assert_eq!((wish(&kitchen).mass_g.unwrap() / 453.592_37).round(), 18.0);
    kitchen.say("Dana", "/plan 16 lb");
    assert_eq!((wish(&kitchen).mass_g.unwrap() / 453.592_37).round(), 16.0);
    assert!(kitchen.scene.room.drafts.is_empty(), "no second dinner was begun");
    assert_eq!(kitchen.among("Josie", "the dog is 18 lb not 14"), 0);
}
