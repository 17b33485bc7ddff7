//! Days after the dinner: how long it keeps once cooked, and whether it may still be eaten, by its last day and never called safe.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

/// Read done and taken off at five on Thursday, eaten at six; nobody said what became of the rest.
fn eaten(tag: &str) -> Kitchen {
    let (read, out) = match tag {
        "es-ES" => ("pechuga 76, muslo 81, ala 77", "lo saqué del horno"),
        "fr-FR" => ("blanc 76, cuisse 81, aile 77", "je l'ai sortie du four"),
        "de-DE" => ("Brust 76, Keule 81, Flügel 77", "habe sie aus dem Ofen genommen"),
        "pt-BR" => ("peito 76, coxa 81, asa 77", "tirei do forno"),
        "it-IT" => ("petto 76, coscia 81, ala 77", "l'ho tolto dal forno"),
        _ => ("breast 168, thigh 178, wing 170", "took it out"),
    };
    let mut kitchen = over_heat(RoomKind::Private, tag);
    kitchen.run_to("2027-11-25 17:00");
    kitchen.say("Ana", read);
    kitchen.say("Ana", out);
    kitchen
}

fn ids(kitchen: &mut Kitchen, text: &str) -> (Vec<String>, String) {
    let from = kitchen.said.len();
    let words = kitchen.say("Ana", text);
    (kitchen.said[from..].iter().flat_map(|say| say.text.iter().map(|text| text.id.to_string())).collect(), words)
}

#[test]
fn how_long_in_the_fridge_after_cooking_is_of_leftovers() {
    for (tag, texts) in [
        (
            "en-US",
            [
                "how long in the fridge after cooking",
                "how long can it stay in the fridge once its cooked",
                "How long in fridge after its cooked",
            ],
        ),
        (
            "es-ES",
            [
                "cuánto dura en la nevera después de cocinarlo",
                "cuanto tiempo en la nevera una vez cocinado",
                "cuánto en la nevera después de asado, cuánto tiempo",
            ],
        ),
        (
            "fr-FR",
            [
                "combien de temps au frigo après cuisson",
                "Combien de temps au frigo une fois cuite",
                "combien de temps au frigo apres la cuisson",
            ],
        ),
        (
            "de-DE",
            [
                "wie lange im Kühlschrank nach dem Braten",
                "wie lange im kühlschrank wenn sie gebraten ist",
                "Wie lange im Kühlschrank nach dem Garen",
            ],
        ),
        (
            "pt-BR",
            [
                "quanto tempo na geladeira depois de assado",
                "quanto tempo na geladeira depois de pronto",
                "Quanto tempo na geladeira depois de cozido",
            ],
        ),
        (
            "it-IT",
            [
                "quanto dura in frigo dopo la cottura",
                "quanto tempo in frigo una volta cotto",
                "Quanto tempo in frigo dopo cotto",
            ],
        ),
    ] {
        for text in texts {
            let mut none = Kitchen::new(RoomKind::Private, tag, Chicago, "2027-11-24 10:00");
            for kitchen in [&mut none, &mut over_heat(RoomKind::Private, tag), &mut eaten(tag)] {
                let (ids, said) = ids(kitchen, text);
                assert_eq!(ids.first().map(String::as_str), Some("ask-keeps"), "{tag} {text}: {said}");
                assert!(!ids.iter().any(|id| id == "ask-roast"), "{tag} {text}: {said}");
            }
        }
    }
}

#[test]
fn two_days_later_it_has_its_last_day_if_it_was_put_away_in_time() {
    for (tag, texts) in [
        (
            "en-US",
            [
                "can i still eat the turkey",
                "is it still ok today sat",
                "is the turkey still good",
                "can we eat it today?",
                "are the leftovers still ok",
            ]
            .as_slice(),
        ),
        ("es-ES", &["¿todavía se puede comer el pavo?"]),
        ("fr-FR", &["on peut encore manger la dinde ?"]),
        ("de-DE", &["kann man die Pute noch essen?"]),
        ("pt-BR", &["ainda dá pra comer o peru?"]),
        ("it-IT", &["si può ancora mangiare il tacchino?"]),
    ] {
        let mut kitchen = eaten(tag);
        kitchen.run_to("2027-11-27 12:00");
        for text in texts {
            let (ids, said) = ids(&mut kitchen, text);
            assert_eq!(ids, ["room-leftovers-until", "room-leftovers-if"], "{tag} {text}: {said}");
        }
    }
    // The same evening the two hours count, and a week later its days are over.
    let mut kitchen = eaten("en-US");
    kitchen.run_to("2027-11-25 19:30");
    let said = kitchen.say("Ana", "can i still eat the turkey");
    assert!(said.contains("7:00 PM"), "{said}");
    kitchen.run_to("2027-12-01 12:00");
    let (ids, said) = ids(&mut kitchen, "can i still eat the turkey");
    assert_eq!(ids.first().map(String::as_str), Some("room-leftovers-over"), "{said}");
}

#[test]
fn a_pizza_is_not_given_the_birds_last_day() {
    for (tag, texts) in [
        (
            "en-US",
            [
                "is the pizza ok it's from yesterday",
                "is the pizza still ok",
                "can i still eat the pizza",
                "is the sushi still good?",
                "can we still eat the pizza?",
            ]
            .as_slice(),
        ),
        ("es-ES", &["¿la pizza todavía está buena?", "¿todavía se puede comer la pizza?"]),
        ("fr-FR", &["la pizza est encore bonne ?", "on peut encore manger la pizza ?"]),
        ("de-DE", &["ist die Pizza noch gut?", "kann man die Pizza noch essen?"]),
        ("pt-BR", &["a pizza ainda tá boa?", "ainda dá pra comer a pizza?"]),
        ("it-IT", &["la pizza è ancora buona?", "si può ancora mangiare la pizza?"]),
    ] {
        for late in ["2027-11-25 19:30", "2027-11-27 12:00"] {
            let mut kitchen = eaten(tag);
            kitchen.run_to(late);
            for text in texts {
                let (ids, said) = ids(&mut kitchen, text);
                let of_bird = |id: &String| {
                    id.starts_with("room-leftovers")
                        || id.starts_with("room-out")
                        || id == "cook-gone"
                        || id == "ask-keeps"
                };
                assert!(!ids.iter().any(of_bird), "{tag} {text}: {said}");
            }
        }
    }
}
