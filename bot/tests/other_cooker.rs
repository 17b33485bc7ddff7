//! The bird is cooked in something else after all: told in plain words, without a temperature, before it is on.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-MX", "fr-FR", "de-DE", "pt-BR", "it-IT"];

fn planned(kind: RoomKind, tag: &str, cooker: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", &format!("/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, {cooker} at 325"));
    kitchen.press("Rosa", "Accept");
    if kind == RoomKind::Group {
        kitchen.say("Tom", "/board");
    }
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen
}

fn cooker(kitchen: &Kitchen) -> String {
    kitchen.scene.room.plan.as_ref().unwrap().wish.cooker.clone().unwrap()
}

#[test]
fn another_cooker_needs_no_temperature() {
    let said: [&[&str]; 6] = [
        &[
            "it's going to rain, let's do it in the oven instead",
            "in the oven instead",
            "cook it in the oven not the smoker",
            "we have to use the gas oven",
        ],
        &["mejor en el horno de gas", "hay que hacerlo en el horno"],
        &["on la fait plutôt au four"],
        &["lieber im Ofen", "dann machen wir sie im Ofen"],
        &["melhor no forno"],
        &["facciamolo in forno invece", "meglio in forno"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for text in said {
            for kind in [RoomKind::Private, RoomKind::Group] {
                let mut kitchen = planned(kind, tag, "smoker");
                let heard = if kind == RoomKind::Group {
                    kitchen.among("Rosa", text);
                    String::new()
                } else {
                    kitchen.say("Rosa", text)
                };
                assert_eq!(cooker(&kitchen), "oven", "{tag}: {text}, {kind:?}: {heard}");
            }
        }
    }
}

#[test]
fn of_anyone_else_the_host_is_asked_and_other_words_of_a_cooker_change_nothing() {
    let mut kitchen = planned(RoomKind::Group, "en-US", "smoker");
    assert!(kitchen.among("Tom", "let's rather do it in the oven") > 0);
    assert_eq!(cooker(&kitchen), "smoker", "the host is asked first");
    for text in [
        "use the oven for the ribs",
        "I have to clean the oven",
        "put the oven mitts away then",
        "is the oven better instead?",
        "let's have the pie in the oven then",
        "not in the oven, the smoker is better",
        "last year we had to do it in the oven instead",
    ] {
        kitchen.among("Rosa", text);
        assert_eq!(cooker(&kitchen), "smoker", "{text}");
    }
    kitchen.run_to("2027-11-25 11:30");
    kitchen.among("Rosa", "bird is on");
    kitchen.among("Rosa", "let's do it in the oven instead");
    assert_eq!(cooker(&kitchen), "smoker", "it is on");
}
