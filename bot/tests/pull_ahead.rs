//! Meaning to pull early and to count on the rise, in one sentence or two: answered, and none of its numbers is a reading.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Lexicon, read_pull_ahead};
use carvetime::room::RoomKind;
use carvetime_core::quantity::{celsius, fahrenheit};
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

const TOLD: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        [
            "it'll rise 10 deg resting. pull it at 155",
            "it'll climb to 165 while it rests so ill pull at 155",
            "carryover takes it to 165, im pulling at 155",
            "i pull mine at 155 it coasts up 10 degrees",
            "It goes up 10 degrees while resting. We take it out at 155",
        ],
    ),
    (
        "es-ES",
        [
            "sube 5 grados en el reposo. lo saco a 69",
            "lo saco a 69 que luego sube a 74",
            "Sube unos 5 grados reposando. lo sacamos a 69",
            "lo saco a 69 y que suba reposando",
            "luego sube a 74, así que lo saco a los 69",
        ],
    ),
    (
        "fr-FR",
        [
            "elle monte de 5 degrés au repos. on la sort à 69",
            "je la sors à 69, elle montera à 74 en reposant",
            "ça monte de 5 degrés. je sors la dinde à 69",
            "Elle monte à 74 toute seule, je la sors à 69",
            "on la sort à 69 et elle finit au repos",
        ],
    ),
    (
        "de-DE",
        [
            "sie zieht noch 5 Grad nach. Ich hole sie bei 69 raus",
            "die steigt beim Ruhen auf 74, ich nehm sie bei 69 raus",
            "zieht 5 grad nach, ich nehme sie bei 69 raus",
            "wir holen sie bei 69 raus, sie zieht noch nach",
            "steigt noch auf 74. bei 69 rausnehmen",
        ],
    ),
    (
        "pt-BR",
        [
            "sobe 5 graus no descanso. vou tirar com 69",
            "tiro com 69 que depois sobe pra 74",
            "Depois sobe 5 graus, tiro com 69",
            "vai subir pra 74 descansando, entao tiro a 69",
            "tiro aos 69 e sobe no descanso",
        ],
    ),
    (
        "it-IT",
        [
            "sale di 5 gradi a riposo. lo tolgo a 69",
            "lo tolgo a 69 tanto poi sale a 74",
            "Sale ancora di 5 gradi, lo tiro fuori a 69",
            "poi sale a 74 riposando, quindi lo tolgo a 69",
            "lo sforno a 69, finisce a riposo",
        ],
    ),
];

#[test]
fn with_the_bird_on_it_is_answered_and_nothing_is_read_or_marked() {
    for (tag, texts) in TOLD {
        for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, true), (RoomKind::Group, false)] {
            for late in [false, true] {
                let mut kitchen = over_heat(kind, tag);
                if late {
                    kitchen.run_to("2027-11-25 16:20");
                }
                let facts = kitchen.scene.room.plan.as_ref().unwrap().facts.clone();
                for text in texts {
                    let (ids, said) = kitchen.ids("Ana", text, addressed);
                    assert_eq!(ids, ["ask-lethality-go-on"], "{tag} {addressed} {late} {text}: {said}");
                    assert!(said.contains(if tag == "en-US" { "165 °F" } else { "74 °C" }), "{said}");
                }
                let plan = kitchen.scene.room.plan.as_ref().unwrap();
                assert!(plan.readings.is_empty() && plan.doubted.is_empty() && plan.facts == facts, "{tag}");
            }
        }
    }
}

#[test]
fn before_any_plan_it_is_answered_to_the_one_who_says_it() {
    for (tag, texts) in TOLD {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, Chicago, "2027-11-24 10:00");
        for text in texts {
            let (ids, said) = kitchen.ids("Ana", text, true);
            assert_eq!(ids, ["ask-lethality-go-on"], "{tag} {text}: {said}");
        }
        assert!(kitchen.scene.room.drafts.is_empty(), "{tag}");
    }
}

#[test]
fn what_was_done_an_hour_and_a_reading_are_none_of_it() {
    for (tag, text) in [
        ("en-US", "i pulled it at 155"),
        ("en-US", "pull it at 4"),
        ("en-US", "can i pull it at 155?"),
        ("en-US", "breast 155, pull it at 160"),
        ("en-US", "pull it at 5:30"),
        ("de-DE", "hab sie bei 69 rausgeholt"),
        ("es-ES", "lo saqué a 69"),
        ("fr-FR", "je l'ai sortie à 69"),
        ("it-IT", "l'ho tolto a 69"),
        ("pt-BR", "tirei com 69"),
        ("es-ES", "lo saco a las 18"),
    ] {
        assert_eq!(read_pull_ahead(text, tag != "en-US", Lexicon::of(tag)), None, "{text}");
    }
    assert_eq!(read_pull_ahead("ill pull at 155", false, Lexicon::of("en-US")), Some(fahrenheit(155.0)));
    assert_eq!(read_pull_ahead("lo saco a 69", true, Lexicon::of("es-ES")), Some(celsius(69.0)));
}

#[test]
fn pulled_at_is_still_read_and_taken_off() {
    let mut kitchen = over_heat(RoomKind::Private, "en-US");
    kitchen.say("Ana", "i pulled it at 155");
    assert!(kitchen.scene.room.plan.unwrap().readings.last().is_some_and(|read| read.breast_c.is_some()));
}
