//! A power cut with a gas oven: the heat goes on, and readings that rise say so as well.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use kitchen::over_heat;

#[test]
fn a_gas_oven_stays_hot_in_every_language() {
    for (tag, cut, gas, both, failed) in [
        (
            "en-US",
            "the power went out",
            "the oven is gas, it's still on",
            "power is out but it's a gas oven",
            "we ran out of gas, gas oven",
        ),
        (
            "es-ES",
            "se fue la luz",
            "el horno es de gas, sigue encendido",
            "se fue la luz pero el horno es de gas",
            "se acabó el gas del horno de gas",
        ),
        (
            "fr-FR",
            "panne de courant",
            "le four est au gaz, ça continue",
            "panne de courant, mais c'est un four à gaz",
            "plus de gaz, four à gaz",
        ),
        (
            "de-DE",
            "Stromausfall",
            "der Ofen läuft mit Gas",
            "Strom ist weg, aber ist ein Gasofen",
            "Gas ist leer, Gasofen",
        ),
        (
            "pt-BR",
            "acabou a luz!!",
            "o forno é a gas, continua",
            "acabou a luz, mas meu forno é a gas",
            "acabou o gás, forno a gás",
        ),
        (
            "it-IT",
            "è andata via la luce",
            "il forno è a gas",
            "è andata via la luce ma il forno è a gas",
            "finito il gas, forno a gas",
        ),
    ] {
        let mut kitchen = over_heat(RoomKind::Group, tag);
        kitchen.among("Ana", cut);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_some(), "{tag}: {cut}");
        kitchen.among("Ana", gas);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_none(), "{tag}: {gas}");
        kitchen.among("Ana", cut);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_none(), "{tag}: it needs no power");
        let mut kitchen = over_heat(RoomKind::Group, tag);
        kitchen.among("Ana", both);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_none(), "{tag}: {both}");
        let ids: Vec<_> = kitchen.said.iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect();
        assert!(ids.contains(&"cook-air-burns-on".to_owned()), "{tag}: {ids:?}");
        let mut kitchen = over_heat(RoomKind::Group, tag);
        kitchen.among("Ana", failed);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_some(), "{tag}: {failed}");
    }
}

#[test]
fn readings_that_rise_tell_once_that_it_has_heat() {
    let mut kitchen = over_heat(RoomKind::Private, "de-DE");
    kitchen.say("Ana", "Brust 40, Keule 44");
    kitchen.say("Ana", "Strom ist weg");
    kitchen.run_to("2027-11-25 15:45");
    let first = kitchen.say("Ana", "Brust 44, Keule 48");
    assert!(!first.contains("hat er Hitze"), "an oven that goes cold still warms it: {first}");
    kitchen.run_to("2027-11-25 16:05");
    let rises = kitchen.say("Ana", "Brust 58, Keule 62");
    assert!(rises.contains("Es steigt, also hat er Hitze"), "{rises}");
    kitchen.run_to("2027-11-25 16:25");
    let again = kitchen.say("Ana", "Brust 68, Keule 71");
    assert!(!again.contains("Es steigt") && !again.contains("Ohne Hitze"), "{again}");
}

#[test]
fn five_minutes_of_looking_and_it_is_on_again() {
    let mut kitchen = over_heat(RoomKind::Group, "de-DE");
    kitchen.among("Ana", "Strom ist weg");
    kitchen.among("Ana", "5 min gesucht, is wieder an");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_none());
}
