//! One spot read several times, each time something else: the lowest counts, it is said so, and never are they three spots.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::quantity::{fahrenheit, in_celsius};
use kitchen::over_heat;

const TOLD: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        [
            "the thermometer said 140 then 98 then 112",
            "thermometer keeps changing 140 98 112",
            "breast 140 then 98 then 112",
            "probe jumps from 140 to 98 to 112",
            "The thermomter said 140, then 98, then 112",
        ],
    ),
    (
        "es-ES",
        [
            "el termómetro dijo 60 luego 37 luego 45",
            "pechuga 60 luego 37 y ahora 45",
            "el termometro salta, 60, 37, 45",
            "la sonda cambia todo el rato 60 37 45",
            "marcó 60, después 37, ahora 45",
        ],
    ),
    (
        "fr-FR",
        [
            "le thermomètre a dit 60 puis 37 puis 45",
            "le thermometre change tout le temps 60 37 45",
            "blanc 60 puis 37 puis 45",
            "la sonde passe de 60 à 37 puis 45",
            "le thermomètre affichait 60, ensuite 37, puis 45",
        ],
    ),
    (
        "de-DE",
        [
            "das Thermometer sagte 60 dann 37 dann 45",
            "Brust 60 dann 37 dann 45",
            "das thermometer springt 60 37 45",
            "Fühler schwankt: 60, 37, 45",
            "thermometer zeigte 60, danach 37, jetzt 45",
        ],
    ),
    (
        "pt-BR",
        [
            "o termômetro disse 60 depois 37 depois 45",
            "marcou 60, depois 37, agora 45",
            "peito 60 depois 37 depois 45",
            "o termometro fica pulando 60 37 45",
            "a sonda vai de 60 a 37 depois 45",
        ],
    ),
    (
        "it-IT",
        [
            "il termometro diceva 60 poi 37 poi 45",
            "petto 60 poi 37 poi 45",
            "il termometro salta: 60, 37, 45",
            "la sonda cambia ogni volta 60 37 45",
            "segnava 60, poi 37, adesso 45",
        ],
    ),
];

#[test]
fn the_lowest_is_kept_as_one_spot_and_said_so() {
    for (tag, texts) in TOLD {
        let lowest = if tag == "en-US" { in_celsius(fahrenheit(98.0)) } else { 37.0 };
        for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, true), (RoomKind::Group, false)] {
            for late in [false, true] {
                let mut kitchen = over_heat(kind, tag);
                if late {
                    kitchen.run_to("2027-11-25 16:20");
                }
                for text in texts {
                    let mut kitchen_now = over_heat(kind, tag);
                    kitchen_now.scene = kitchen.scene.clone();
                    kitchen_now.now = kitchen.now;
                    let (ids, said) = kitchen_now.ids("Ana", text, addressed);
                    assert!(ids.iter().any(|id| id == "room-wandering"), "{tag} {addressed} {text}: {said}");
                    let plan = kitchen_now.scene.room.plan.as_ref().unwrap();
                    let [read] = &plan.readings[..] else { panic!("{tag} {text}: {said}") };
                    assert!((read.breast_c.unwrap() - lowest).abs() < 0.01, "{tag} {text}: {said}");
                    assert_eq!((read.thigh_c, read.wing_c, read.pit_c), (None, None, None), "{tag} {text}");
                }
            }
        }
    }
}

#[test]
fn what_climbs_is_a_bird_that_cooks_and_several_spots_stay_several() {
    for text in
        ["breast 128 then 141", "breast 130 then thigh 150", "oven 325 then 310 then 320", "breast 150, thigh 139"]
    {
        let mut kitchen = over_heat(RoomKind::Private, "en-US");
        let (ids, said) = kitchen.ids("Ana", text, true);
        assert!(!ids.iter().any(|id| id == "room-wandering"), "{text}: {said}");
    }
}

#[test]
fn numbers_of_something_else_said_among_people_are_left_alone() {
    for text in ["we lost 98 then 87", "140 then 98 then 112", "score jumps 90 then 80", "my pressure was 140 then 98"]
    {
        let mut kitchen = over_heat(RoomKind::Group, "en-US");
        assert_eq!(kitchen.among("Ana", text), 0, "{text}");
        assert!(kitchen.scene.room.plan.unwrap().readings.is_empty(), "{text}");
    }
}
