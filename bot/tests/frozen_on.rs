//! "I'm putting it in frozen", "it went in frozen": the answer for a frozen bird, and a plan that reckons with one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Lexicon, read_put_frozen};
use carvetime::room::{RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// A frozen bird planned for five, its thaw over as planned, the clock at ten that morning.
fn thawed(kind: RoomKind, tag: &str) -> Kitchen {
    let (plan, accept) = match tag {
        "de-DE" => {
            ("/plan gefrorene Pute 5 kg, Essen Donnerstag um 17 Uhr, 8 Personen, Ofen auf 180, kein Salz", "Annehmen")
        }
        "es-ES" => {
            ("/plan pavo congelado de 5 kg, cena el jueves a las 17:00, 8 personas, horno a 180, sin sal", "Aceptar")
        }
        "fr-FR" => ("/plan dinde congelée de 5 kg, repas jeudi à 17h, 8 personnes, four à 180, sans sel", "Accepter"),
        "it-IT" => {
            ("/plan tacchino congelato 5 kg, cena giovedì alle 17, 8 persone, forno a 180, senza sale", "Accetta")
        }
        "pt-BR" => ("/plan peru congelado de 5 kg, ceia quinta às 17h, 8 pessoas, forno a 180, sem sal", "Aceitar"),
        _ => ("/plan 12 lb frozen turkey, no salt, dinner Thursday 5 pm, 10 people, oven at 325", "Accept"),
    };
    let mut kitchen = Kitchen::new(kind, tag, Chicago, "2027-11-20 09:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen.run_to("2027-11-25 10:00");
    kitchen
}

const AHEAD: [(&str, &str); 14] = [
    ("en-US", "i'm putting it in frozen"),
    ("en-US", "gonna cook it frozen"),
    ("de-DE", "ich schieb sie gefroren rein"),
    ("de-DE", "die Pute kommt gefroren in den Ofen"),
    ("es-ES", "lo meto congelado"),
    ("es-ES", "lo voy a meter congelado"),
    ("es-ES", "va congelado al horno"),
    ("fr-FR", "je la mets congelée"),
    ("fr-FR", "je l’enfourne congelée"),
    ("it-IT", "lo metto congelato"),
    ("it-IT", "lo inforno congelato"),
    ("pt-BR", "coloco congelado"),
    ("pt-BR", "vou colocar congelado no forno"),
    ("pt-BR", "vou assar congelado"),
];

const DONE: [(&str, &str); 7] = [
    ("en-US", "put it in frozen"),
    ("en-US", "it went in frozen"),
    ("de-DE", "hab sie gefroren reingeschoben"),
    ("es-ES", "lo metí congelado"),
    ("fr-FR", "je l’ai mise congelée"),
    ("it-IT", "l’ho messo congelato"),
    ("pt-BR", "coloquei congelado no forno"),
];

fn aside(kitchen: &mut Kitchen, text: &str) -> String {
    kitchen.hear(Some("Ana"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn degrees(tag: &str) -> &'static str {
    if tag == "en-US" { "325 °F" } else { "163" }
}

#[test]
fn who_means_to_is_told_how_a_frozen_bird_is_roasted() {
    for (tag, text) in AHEAD {
        let mut kitchen = thawed(RoomKind::Group, tag);
        let said = aside(&mut kitchen, text);
        assert!(said.contains(degrees(tag)), "{tag}: {text}: {said}");
        let on = kitchen.scene.room.plan.as_ref().unwrap().on_since(kitchen.now);
        assert!(on.is_none(), "{tag}: {text}: it is not in yet");
        let said = thawed(RoomKind::Private, tag).say("Ana", text);
        assert!(said.contains(degrees(tag)), "{tag}: {text}: {said}");
    }
}

#[test]
fn what_went_in_frozen_takes_as_long_as_a_frozen_bird_does() {
    for (tag, text) in DONE {
        let mut kitchen = thawed(RoomKind::Group, tag);
        let said = aside(&mut kitchen, text);
        assert!(said.contains(degrees(tag)), "{tag}: {text}: {said}");
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert!(plan.on_since(kitchen.now).is_some(), "{tag}: {text}: {said}");
        assert_eq!(plan.wish.thawing.as_deref(), Some("cook-frozen"), "{tag}: {text}");
    }
}

#[test]
fn the_freezer_the_pizza_and_a_question_are_none() {
    for (tag, text) in [
        ("en", "putting it in the freezer"),
        ("en", "frozen pizza is going in"),
        ("en", "is it still frozen?"),
        ("en", "it's frozen"),
        ("de", "die Pizza ist gefroren"),
        ("de", "ich friere den Rest ein"),
        ("es", "está congelado"),
        ("es", "lo meto al congelador"),
        ("fr", "je la mets au congélateur"),
        ("it", "lo metto in congelatore"),
        ("pt", "coloco no congelador"),
    ] {
        assert_eq!(read_put_frozen(text, Lexicon::of(tag)), None, "{tag}: {text}");
    }
}
