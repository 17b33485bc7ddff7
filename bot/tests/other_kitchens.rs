//! "Bob's oven just died", "power went out at the cabin", "my oven broke in March", "sat on the couch since 5": of no kitchen and no food
//! here. A dead freezer is one's own unless another's is named.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use kitchen::{Kitchen, over_heat};

const THEIRS: [(&str, &str); 22] = [
    ("en-US", "my oven broke in march"),
    ("en-US", "bob's oven just died"),
    ("en-US", "bobs oven died lol"),
    ("en-US", "power went out at the cabin"),
    ("en-US", "their power is out"),
    ("en-US", "bob's freezer died"),
    ("en-US", "sat on the couch since 5"),
    ("de-DE", "Bobs Ofen ist kaputt"),
    ("de-DE", "bei den Nachbarn ist Stromausfall"),
    ("de-DE", "der Ofen ist im März kaputt gegangen, Ofen kaputt im März"),
    ("es-ES", "se rompió el horno de Bob"),
    ("es-ES", "se fue la luz en la oficina"),
    ("es-ES", "se rompió el horno en marzo"),
    ("fr-FR", "le four de Bob est en panne, four de Bob mort"),
    ("fr-FR", "panne de courant au chalet"),
    ("fr-FR", "le four est mort en mars"),
    ("it-IT", "si è rotto il forno di Bob"),
    ("it-IT", "è andata via la luce in ufficio"),
    ("it-IT", "il forno si è rotto a marzo"),
    ("pt-BR", "o forno do Bob quebrou, forno quebrou do Bob"),
    ("pt-BR", "acabou a luz no escritório"),
    ("pt-BR", "o forno quebrou em março"),
];

fn aside(kitchen: &mut Kitchen, text: &str) -> String {
    kitchen.hear(Some("Tom"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn is_down(kitchen: &Kitchen) -> bool {
    kitchen.scene.room.plan.as_ref().unwrap().down_since.is_some()
}

#[test]
fn anothers_oven_and_one_of_long_ago_are_not_ours() {
    let mut heard = Vec::new();
    for (room, text) in THEIRS {
        let mut kitchen = over_heat(RoomKind::Group, room);
        let said = aside(&mut kitchen, text);
        if !said.is_empty() || is_down(&kitchen) {
            heard.push(format!("{room}: {text}: {said}"));
        }
    }
    assert!(heard.is_empty(), "{}", heard.join("\n"));
}

#[test]
fn our_own_oven_is_heard_whoever_says_it_and_from_where() {
    for (room, text) in [
        ("en-US", "oven just died"),
        ("en-US", "ana's oven just died"),
        ("en-US", "mom's oven died"),
        ("en-US", "im at work, oven died"),
        ("en-US", "power is out"),
        ("de-DE", "der Ofen ist kaputt"),
        ("es-ES", "se fue la luz"),
        ("fr-FR", "le four est en panne"),
        ("it-IT", "si è rotto il forno"),
        ("pt-BR", "o forno quebrou"),
    ] {
        let mut kitchen = over_heat(RoomKind::Group, room);
        let said = aside(&mut kitchen, text);
        assert!(is_down(&kitchen) && !said.is_empty(), "{room}: {text}: {said}");
    }
}

#[test]
fn a_dead_freezer_is_answered_in_every_language() {
    let mut missed = Vec::new();
    for (room, text, holds) in [
        ("en-US", "freezer died", "ice in it"),
        ("en-US", "freezer was off all night, is the bird ok?", "ice in it"),
        ("de-DE", "Gefriertruhe war die ganze Nacht aus, Gefriertruhe war aus", "Eis im Vogel"),
        ("de-DE", "der Gefrierschrank ist ausgefallen", "Eis im Vogel"),
        ("es-ES", "se rompió el congelador", "tiene hielo"),
        ("fr-FR", "le congélateur est en panne", "de la glace"),
        ("it-IT", "si è rotto il congelatore", "ghiaccio"),
        ("pt-BR", "o freezer pifou", "com gelo"),
    ] {
        let mut group = over_heat(RoomKind::Group, room);
        let mut alone = over_heat(RoomKind::Private, room);
        for said in [aside(&mut group, text), alone.say("Ana", text)] {
            if !said.contains(holds) {
                missed.push(format!("{room}: {text}: {said}"));
            }
        }
    }
    assert!(missed.is_empty(), "{}", missed.join("\n"));
    for text in ["putting it in the freezer", "freezer is full", "freezer pops for the kids"] {
        assert!(!aside(&mut over_heat(RoomKind::Group, "en-US"), text).contains("ice in it"), "{text}");
    }
}

#[test]
fn how_long_it_keeps_is_the_raw_birds_until_it_is_cooked() {
    let raw = [
        ("en-US", "how long can I keep it in the fridge?", "A raw bird", "Cooked bird"),
        ("de-DE", "wie lange kann ich sie im Kühlschrank aufbewahren?", "roh", "Reste"),
        ("es-ES", "¿cuánto tiempo puedo guardarlo en la nevera?", "crud", "sobras"),
        ("fr-FR", "combien de temps je peux la garder au frigo ?", "cru", "restes"),
        ("it-IT", "quanto posso tenerlo in frigo?", "crud", "avanzi"),
        ("pt-BR", "quanto tempo posso guardar na geladeira?", "cru", "sobras"),
    ];
    let mut wrong = Vec::new();
    for (room, text, holds, cooked) in raw {
        let mut before = Kitchen::new(RoomKind::Private, room, chrono_tz::America::Chicago, "2027-11-24 10:00");
        before.scene.room.plan = over_heat(RoomKind::Private, room).scene.room.plan;
        let plan = before.scene.room.plan.as_mut().unwrap();
        let first = plan.history.first().unwrap().clone();
        (plan.jobs, plan.facts) = (first.jobs, first.facts);
        let said = before.say("Ana", text);
        if !said.to_lowercase().contains(&holds.to_lowercase()) {
            wrong.push(format!("{room}, raw: {said}"));
        }
        let said = over_heat(RoomKind::Private, room).say("Ana", text);
        if !said.to_lowercase().contains(&cooked.to_lowercase()) {
            wrong.push(format!("{room}, over the heat: {said}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
