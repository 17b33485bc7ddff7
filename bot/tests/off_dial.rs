//! An oven that is not as hot as its dial says: the number is a difference, the answer says what to set, and nothing is read of it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Lexicon, Scale, Side, read_off_dial};
use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

const TOO_HOT: [(&str, [&str; 6]); 6] = [
    (
        "en-US",
        [
            "my oven runs 15 degrees hot",
            "our oven is 15° too hot",
            "The ovens about 15 degres too hot",
            "fyi my oven runs like 15 degrees hot always",
            "oven overheats by 15",
            "my oven is 15 hotter than it says",
        ],
    ),
    (
        "es-ES",
        [
            "mi horno calienta 15 grados de más",
            "mi horno calienta unos 15 grados de mas",
            "el horno se pasa 15 grados",
            "nuestro horno está 15° por encima",
            "el horno es 15 grados más caliente de lo que marca",
            "Mi horno calienta 15 grados mas",
        ],
    ),
    (
        "fr-FR",
        [
            "mon four chauffe trop de 15 degrés",
            "notre four est 15° trop chaud",
            "le four chauffe 15 degres de trop",
            "mon four est trop chaud de 15 degrés",
            "le four surchauffe de 15 degrés",
            "le four chauffe environ 15 degrés de plus",
        ],
    ),
    (
        "de-DE",
        [
            "unser Ofen heizt 15 Grad zu heiß",
            "der ofen ist 15 grad zu heiss",
            "mein backofen heizt ca. 15° zu heiß",
            "der Ofen wird 15 Grad zu heiß",
            "unser Ofen ist immer etwa 15 Grad heißer",
            "ofen liegt 15 grad drüber",
        ],
    ),
    (
        "pt-BR",
        [
            "meu forno esquenta 15 graus a mais",
            "meu forno passa 15 graus",
            "o forno fica 15 graus mais quente",
            "o forno esquenta uns 15 graus a mais",
            "nosso forno esquenta 15° a mais",
            "o forno tá 15 graus acima",
        ],
    ),
    (
        "it-IT",
        [
            "il mio forno scalda 15 gradi di troppo",
            "forno troppo caldo di 15 gradi",
            "il forno scalda 15 gradi in piu",
            "il nostro forno è 15° più caldo",
            "il forno va 15 gradi sopra",
            "il forno scalda circa 15 gradi di troppo",
        ],
    ),
];

/// What the dial has to stand at for the plan's 350 °F, or 180 °C.
fn dial(tag: &str) -> &'static str {
    if tag == "en-US" { "335 °F" } else { "165 °C" }
}

fn ids(kitchen: &mut Kitchen, text: &str, addressed: bool) -> (Vec<String>, String) {
    let from = kitchen.said.len();
    let words = if addressed {
        kitchen.say("Ana", text)
    } else {
        kitchen.hear(
            Some("Ana"),
            carvetime::room::What::Said { text: text.into(), addressed: false, reply_to: None, edited: false },
        )
    };
    (kitchen.said[from..].iter().flat_map(|say| say.text.iter().map(|text| text.id.to_string())).collect(), words)
}

#[test]
fn with_the_bird_on_the_heat_it_is_answered_with_the_dials_figure_and_nothing_is_read() {
    for (tag, texts) in TOO_HOT {
        for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, true), (RoomKind::Group, false)] {
            let mut kitchen = over_heat(kind, tag);
            for text in texts {
                let (ids, said) = ids(&mut kitchen, text, addressed);
                assert_eq!(ids, ["ask-off-dial-at", "ask-off-dial-thermometer"], "{tag} {text}: {said}");
                assert!(said.contains(dial(tag)) && !said.contains("59"), "{tag} {text}: {said}");
            }
            let plan = kitchen.scene.room.plan.as_ref().unwrap();
            assert!(plan.readings.is_empty() && plan.doubted.is_empty(), "{tag}");
        }
    }
}

#[test]
fn before_any_plan_it_is_set_that_much_lower_and_no_plan_begins() {
    for (tag, texts) in TOO_HOT {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, Chicago, "2027-11-24 10:00");
        for text in texts {
            let (ids, said) = ids(&mut kitchen, text, true);
            assert_eq!(ids, ["ask-off-dial-by", "ask-off-dial-thermometer"], "{tag} {text}: {said}");
            assert!(said.contains(if tag == "en-US" { "15 °F" } else { "15 °C" }), "{tag} {text}: {said}");
        }
        assert!(kitchen.scene.room.drafts.is_empty() && kitchen.scene.room.plan.is_none(), "{tag}");
        let mut group = Kitchen::new(RoomKind::Group, tag, Chicago, "2027-11-24 10:00");
        assert!(texts.iter().all(|text| group.among("Ana", text) == 0), "{tag}: nobody asked");
    }
}

#[test]
fn in_a_draft_the_setting_stays_and_the_dial_is_told() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 10:00");
    kitchen.say("Ana", "/plan 11 lb fresh turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 350, no salt");
    let draft = kitchen.scene.room.drafts.values().next().unwrap().wish.clone();
    let said = kitchen.say("Ana", "my oven runs 25 degrees hot");
    assert!(said.contains("for 350 °F, set the dial to 325 °F"), "{said}");
    assert_eq!(kitchen.scene.room.drafts.values().next().unwrap().wish, draft);
    kitchen.press("Ana", "Accept");
    let said = kitchen.say("Ana", "my oven runs cold by 20");
    assert!(said.contains("for 350 °F, set the dial to 370 °F"), "{said}");
}

#[test]
fn a_difference_of_temperatures_is_no_temperature() {
    let mut kitchen = over_heat(RoomKind::Private, "de-DE");
    let said = kitchen.say("Ana", "unser Ofen heizt 25 °F zu heiß");
    assert!(said.contains("14 °C") && said.contains("166 °C"), "{said}");
    let mut kitchen = over_heat(RoomKind::Private, "en-US");
    let said = kitchen.say("Ana", "my oven is 10°C too cold");
    assert!(said.contains("18 °F") && said.contains("368 °F"), "{said}");
}

#[test]
fn without_degrees_or_a_side_it_is_told_what_to_do_either_way() {
    let read =
        |tag: &str, text: &str| read_off_dial(text, tag != "en-US", Lexicon::of(tag)).map(|told| (told.side, told.by));
    for (tag, text, side) in [
        ("en-US", "my oven runs hot", Side::Hot),
        ("en-US", "oven runs cold", Side::Cold),
        ("en-US", "does my oven run hot?", Side::Unsaid),
        ("es-ES", "mi horno calienta de más", Side::Hot),
        ("es-ES", "el horno calienta poco", Side::Cold),
        ("fr-FR", "le four chauffe trop", Side::Hot),
        ("fr-FR", "mon four ne chauffe pas assez", Side::Cold),
        ("de-DE", "mein ofen wird zu heiss", Side::Hot),
        ("de-DE", "Der Ofen heizt zu wenig", Side::Cold),
        ("pt-BR", "o forno esquenta demais", Side::Hot),
        ("pt-BR", "meu forno esquenta pouco", Side::Cold),
        ("it-IT", "il forno scalda troppo", Side::Hot),
        ("it-IT", "il forno scalda poco", Side::Cold),
    ] {
        assert_eq!(read(tag, text), Some((side, None)), "{text}");
    }
    for (tag, text) in [
        ("en-US", "it's off by 25"),
        ("en-US", "oven is 25 degrees off"),
        ("es-ES", "mi horno está desajustado 25 grados"),
        ("fr-FR", "le four est décalé de 25 degrés"),
        ("de-DE", "der Ofen weicht um 25 Grad ab"),
        ("pt-BR", "o forno tá desregulado uns 25 graus"),
        ("it-IT", "il forno e starato di 25 gradi"),
    ] {
        assert_eq!(read(tag, text), Some((Side::Unsaid, Some((25.0, None)))), "{text}");
    }
    assert_eq!(read("en-US", "my oven is 10°C too cold"), Some((Side::Cold, Some((10.0, Some(Scale::Celsius))))));
}

#[test]
fn readings_settings_and_an_oven_without_heat_are_none_of_it() {
    for (tag, text) in [
        ("en-US", "oven runs hot so i set it at 300"),
        ("en-US", "oven at 325"),
        ("en-US", "oven is off"),
        ("en-US", "oven has been off for 25 min"),
        ("en-US", "oven thermometer is off by 10"),
        ("en-US", "breast is 15 too hot"),
        ("en-US", "it's 25 degrees out"),
        ("en-US", "put the pie in, oven is hot"),
        ("de-DE", "Ofen 180"),
        ("de-DE", "der Ofen ist heiß"),
        ("fr-FR", "four à 180"),
        ("es-ES", "el horno está caliente"),
        ("it-IT", "forno 10 minuti di troppo"),
        ("pt-BR", "o forno tá a 180"),
    ] {
        assert_eq!(read_off_dial(text, tag != "en-US", Lexicon::of(tag)), None, "{tag} {text}");
    }
}

#[test]
fn anothers_oven_is_answered_without_this_plans_dial() {
    let mut kitchen = over_heat(RoomKind::Group, "en-US");
    assert_eq!(kitchen.among("Ana", "Bob's oven runs 25 hot"), 0);
    let said = kitchen.say("Ana", "Bob's oven runs 25 hot");
    assert!(said.contains("25 °F") && !said.contains("325"), "{said}");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().doubted.is_empty());
}
