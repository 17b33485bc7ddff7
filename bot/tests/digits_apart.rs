//! Digits of a reading that stand apart: one number, asked about before it counts.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use carvetime_core::quantity::{celsius, fahrenheit, in_celsius};
use kitchen::{Kitchen, over_heat};

const TOLD: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        ["breast 1 5 8", "breast one fifty eight", "breast 1 58", "Breast one five eight", "breast 1 5 8 degrees"],
    ),
    ("es-ES", ["pechuga 5 8", "pechuga cinco ocho", "Pechuga 5 8 grados", "pechuga 5 8 c", "pechuga  5  8"]),
    ("fr-FR", ["blanc 5 8", "poitrine cinq huit", "Blanc 5 8 degrés", "filet 5 8", "blanc 5 8 c"]),
    ("de-DE", ["Brust 5 8", "brust fünf acht", "Brust 5 8 Grad", "Brust 5 8 c", "brust fuenf acht"]),
    ("pt-BR", ["peito 5 8", "peito cinco oito", "Peito 5 8 graus", "peito 5 8 c", "peito  5 8"]),
    ("it-IT", ["petto 5 8", "petto cinque otto", "Petto 5 8 gradi", "petto 5 8 c", "petto  5 8"]),
];

fn hear(kitchen: &mut Kitchen, text: &str, addressed: bool) -> String {
    kitchen.hear(Some("Ana"), What::Said { text: text.into(), addressed, reply_to: None, edited: false })
}

fn breast(kitchen: &Kitchen) -> Option<f64> {
    kitchen.scene.room.plan.as_ref().unwrap().readings.last().and_then(|reading| reading.breast_c)
}

#[test]
fn it_is_asked_and_counts_once_it_is_said_so() {
    for (tag, texts) in TOLD {
        let meant = if tag == "en-US" { fahrenheit(158.0) } else { celsius(58.0) };
        let shown = if tag == "en-US" { "158 °F" } else { "58 °C" };
        for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, true), (RoomKind::Group, false)] {
            for late in [false, true] {
                let mut kitchen = over_heat(kind, tag);
                if late {
                    kitchen.run_to("2027-11-25 16:20");
                }
                for text in texts {
                    let said = hear(&mut kitchen, text, addressed);
                    assert!(said.contains(shown), "{tag} {text}: {said}");
                    assert_eq!(breast(&kitchen), None, "{tag} {text}: {said}");
                }
                let label = kitchen.said.last().unwrap().buttons[0][0].data.clone();
                kitchen.hear(Some("Ana"), What::Pressed { press: "p".into(), data: label, on: Some("reading".into()) });
                let read = breast(&kitchen).unwrap_or_else(|| panic!("{tag}"));
                assert!((read - in_celsius(meant)).abs() < 0.01, "{tag}: {read}");
            }
        }
    }
}

#[test]
fn several_spots_are_asked_together_and_a_no_leaves_them_out() {
    let mut kitchen = over_heat(RoomKind::Private, "en-US");
    let said = kitchen.say("Ana", "breast 1 5 8 thigh 1 6 4");
    assert!(said.contains("158 °F") && said.contains("164 °F"), "{said}");
    kitchen.press("Ana", "No");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty());
    kitchen.say("Ana", "breast 1 5 8 thigh 1 6 4");
    kitchen.press("Ana", "Yes");
    let read = kitchen.scene.room.plan.as_ref().unwrap().readings.last().cloned().unwrap();
    let f = |c: Option<f64>| (c.unwrap() * 1.8 + 32.0).round();
    assert_eq!((f(read.breast_c), f(read.thigh_c)), (158.0, 164.0));
}

#[test]
fn numbers_that_stand_together_are_read_as_ever() {
    for (tag, text, read) in [
        ("en-US", "breast 128", 128.0),
        ("en-US", "breast 128 at 3:25", 128.0),
        ("es-ES", "pechuga 58", 58.0),
        ("de-DE", "Brust 58, Keule 64", 58.0),
    ] {
        let mut kitchen = over_heat(RoomKind::Private, tag);
        let said = kitchen.say("Ana", text);
        let wanted = if tag == "en-US" { in_celsius(fahrenheit(read)) } else { read };
        assert!((breast(&kitchen).unwrap_or_else(|| panic!("{text}: {said}")) - wanted).abs() < 0.01, "{text}: {said}");
    }
    // Pieces for the plates, and what is no spot.
    for text in ["2 thighs 3 wings for me", "dinner for 5 8 of us"] {
        let mut kitchen = over_heat(RoomKind::Group, "en-US");
        kitchen.among("Ana", text);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().doubted.is_empty(), "{text}");
    }
}
