//! A number told shortly before the announced look, or of a thermometer, is what it shows; else `41` in a chat may be anything.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::plan::Step;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// In since 13:22, read at 14:30; the next look `before` minutes away.
fn cooking(language: &str, before: i64) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", Berlin, "2027-12-24 12:00");
    kitchen.say("Jonas", "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr, 10 leute, ofen 180, ohne salz");
    kitchen.press("Jonas", "Annehmen");
    kitchen.run_to("2027-12-25 13:22");
    kitchen.among("Jonas", "pute ist drin");
    kitchen.run_to("2027-12-25 14:30");
    kitchen.among("Jonas", "brust 30, keule 34");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let look = plan.waiting().find(|job| job.step() == Some(Step::Check)).unwrap().at;
    let at = (look - chrono::TimeDelta::minutes(before)).with_timezone(&Berlin);
    kitchen.run_to(&at.format("%Y-%m-%d %H:%M").to_string());
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn read(kitchen: &Kitchen) -> usize {
    kitchen.scene.room.plan.as_ref().unwrap().counted().len()
}

#[test]
fn shortly_before_the_look_a_number_is_read() {
    let mut wrong = Vec::new();
    for (language, words) in [
        ("de-DE", "40"),
        ("de-DE", "erst 36"),
        ("de-DE", "jetzt 40"),
        ("de-DE", "thermometer sagt 41"),
        ("de-DE", "41 grad"),
        ("en-GB", "only 36"),
        ("en-GB", "40 now"),
        ("es-ES", "solo 36"),
        ("fr-FR", "seulement 36"),
        ("it-IT", "solo 36"),
        ("pt-BR", "só 36"),
    ] {
        let mut kitchen = cooking(language, 8);
        kitchen.among("Sabine", words);
        if read(&kitchen) != 2 {
            wrong.push(format!("{language}: {words}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn a_thermometer_named_is_one_at_any_time() {
    for (language, words) in [
        ("de-DE", "thermometer sagt 41"),
        ("en-GB", "thermometer says 41"),
        ("es-ES", "el termómetro marca 41"),
        ("fr-FR", "le thermomètre affiche 41"),
        ("it-IT", "il termometro segna 41"),
        ("pt-BR", "o termômetro marca 41"),
    ] {
        let mut kitchen = cooking(language, 22);
        kitchen.among("Sabine", words);
        assert_eq!(read(&kitchen), 2, "{language}: {words}");
    }
}

#[test]
fn what_may_be_anything_is_left_alone() {
    for (words, before) in [
        ("40", 22),
        ("mathe 40", 5),
        ("fussball 2:1", 5),
        ("4", 5),
        ("17 uhr", 5),
        ("3 kilo", 5),
        ("zu 40 % sicher", 5),
    ] {
        let mut kitchen = cooking("de-DE", before);
        assert_eq!(kitchen.among("Mia", words), 0, "{words}");
        assert_eq!(read(&kitchen), 1, "{words}");
    }
}
