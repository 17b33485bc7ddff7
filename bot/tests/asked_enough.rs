//! "Stuffing is at 150 ok?", "reicht das bei 71", "pink at the bone": a number or a colour asked about is answered yes or no first.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Printed, answer_line};
use carvetime::room::{RoomKind, What};
use carvetime::words::{Reader, Voice};
use chrono::Utc;
use chrono_tz::Tz;
use kitchen::{Kitchen, over_heat};

fn answer(tag: &str, text: &str) -> String {
    let reader = Reader::new(tag, Tz::UTC, Utc::now());
    match answer_line(text, &reader, &Voice::new(), false) {
        Printed::Answer(said) => said,
        Printed::NotUnderstood(said) => panic!("{tag}: {text}: {said}"),
    }
}

fn among(kitchen: &mut Kitchen, text: &str) -> String {
    let said =
        kitchen.hear(Some("Ben"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false });
    // The newest line begins behind the stamp and how it is sent.
    said.split_once("New: ").map_or(said.clone(), |(_, said)| said.to_owned())
}

/// How a no begins, and how hot it has to be.
fn no(tag: &str) -> (&'static [&'static str], &'static str) {
    match tag {
        "en-US" => (&["No:", "Not yet:"], "165 °F"),
        "es-ES" => (&["No:", "Aún no:"], "74 °C"),
        "fr-FR" => (&["Non", "Pas encore"], "74 °C"),
        "de-DE" => (&["Nein:", "Noch nicht:"], "74 °C"),
        "pt-BR" => (&["Não:", "Ainda não:"], "74 °C"),
        _ => (&["No:", "Non ancora:"], "74 °C"),
    }
}

fn is_no(tag: &str, said: &str) -> bool {
    let (begins, target) = no(tag);
    let first = said.lines().next().unwrap_or_default();
    begins.iter().any(|no| first.starts_with(no)) && first.contains(target)
}

const TOO_COLD: [(&str, &str); 24] = [
    ("en-US", "stuffing is at 150 ok?"),
    ("en-US", "stuffing 158, good?"),
    ("en-US", "breast is 160 is that ok"),
    ("en-US", "160 is that ok"),
    ("en-US", "thermometer reads 155, done?"),
    ("es-ES", "el relleno está a 65 ¿vale?"),
    ("es-ES", "pechuga 70 ¿ya está?"),
    ("es-ES", "está a 70, ¿vale?"),
    ("es-ES", "¿está listo a 70?"),
    ("fr-FR", "la farce est à 68, ça suffit ?"),
    ("fr-FR", "blanc à 70, c’est bon ?"),
    ("fr-FR", "c’est à 70, ça suffit ?"),
    ("de-DE", "Füllung bei 65 reicht das"),
    ("de-DE", "Brust 70 reicht das?"),
    ("de-DE", "reicht das bei 71"),
    ("de-DE", "ist sie bei 70 durch"),
    ("pt-BR", "recheio a 65 tá bom?"),
    ("pt-BR", "peito 70 tá bom?"),
    ("pt-BR", "70 chega?"),
    ("pt-BR", "tá pronto com 70?"),
    ("it-IT", "il ripieno è a 68 va bene?"),
    ("it-IT", "petto 70 basta?"),
    ("it-IT", "è pronto a 70?"),
    ("it-IT", "è cotto a 68"),
];

#[test]
fn too_cold_is_a_no_first_with_the_figure() {
    for (tag, text) in TOO_COLD {
        let said = answer(tag, text);
        assert!(is_no(tag, &said), "{tag}: {text}: {said}");
    }
}

#[test]
fn so_it_is_while_the_bird_cooks_whoever_asks() {
    for (tag, text) in TOO_COLD {
        let mut kitchen = over_heat(RoomKind::Group, tag);
        let said = among(&mut kitchen, text);
        assert!(is_no(tag, &said), "{tag}: {text}: {said}");
    }
}

#[test]
fn minutes_are_for_meat_and_for_whoever_asks_for_them() {
    assert!(answer("en-US", "is 158 for 2 minutes safe").starts_with("Yes, by the table"));
    assert!(answer("en-US", "how long at 150").starts_with("150 °F must hold"));
    assert!(answer("en-US", "stuffing at 158 for 2 minutes safe?").starts_with("No: stuffing has to reach 165 °F"));
    assert!(answer("en-US", "stuffing 170 ok?").starts_with("Yes, if that is its middle"));
}

#[test]
fn a_number_told_and_not_asked_about_gets_no_no() {
    for (tag, text) in [("en-US", "ok breast 150"), ("en-US", "stuffing 150"), ("de-DE", "Brust 60, gut gemacht!")] {
        let said = among(&mut over_heat(RoomKind::Group, tag), text);
        assert!(!said.is_empty() && !is_no(tag, &said), "{text}: {said}");
    }
}

#[test]
fn pink_is_no_sign_while_a_bird_cooks() {
    for (tag, text, told) in [
        ("en-US", "pink at the bone", "165 °F"),
        ("en-US", "the juices are still pink", "165 °F"),
        ("es-ES", "sigue rosa por dentro", "74 °C"),
        ("fr-FR", "c’est encore rosé à l’os", "74 °C"),
        ("de-DE", "innen noch rosa", "74 °C"),
        ("pt-BR", "ainda tá rosado perto do osso", "74 °C"),
        ("it-IT", "è ancora rosa vicino all’osso", "74 °C"),
    ] {
        let said = among(&mut over_heat(RoomKind::Group, tag), text);
        assert!(said.contains(told), "{tag}: {text}: {said}");
    }
}

#[test]
fn other_pink_things_and_other_numbers_are_left_alone() {
    for (tag, text) in [
        ("en-US", "the ham is still pink"),
        ("en-US", "she wore pink"),
        ("en-US", "its pink, the tablecloth"),
        ("en-US", "is 150 chairs enough"),
        ("en-US", "is 70 dollars enough"),
        ("es-ES", "el jamón está rosado"),
        ("es-ES", "¿70 euros es suficiente?"),
        ("fr-FR", "le gigot est encore rose"),
        ("fr-FR", "la nappe est un peu rose"),
        ("de-DE", "das Roastbeef ist innen rosa"),
        ("de-DE", "das Kleid ist rosa"),
        ("pt-BR", "a toalha é rosa"),
        ("pt-BR", "a picanha ainda tá rosada"),
        ("it-IT", "la tovaglia è rosa"),
        ("it-IT", "la bistecca è ancora rosa"),
    ] {
        assert_eq!(over_heat(RoomKind::Group, tag).among("Ben", text), 0, "{tag}: {text}");
    }
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Tz::America__Chicago, "2027-11-24 08:00");
    assert_eq!(kitchen.among("Ben", "pink at the bone"), 0, "no bird is planned");
}
