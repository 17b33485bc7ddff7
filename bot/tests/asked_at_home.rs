//! What a family asks each other of the plan, and who does what, said by any of them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{PersonId, RoomKind};
use carvetime_core::plan::Step;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// Jonas hosts; Sabine, Lukas and Mia are in the group.
fn family(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", Berlin, "2027-12-22 12:00");
    kitchen.say(
        "Jonas",
        "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr bei oma, 10 leute, ofen 180, heiss mitnehmen, 15 min fahrt",
    );
    kitchen.press("Jonas", "Annehmen");
    for who in ["Sabine", "Lukas", "Mia"] {
        kitchen.among(who, "hi");
    }
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn ids(kitchen: &Kitchen, from: usize) -> Vec<String> {
    kitchen.said[from..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect()
}

#[test]
fn the_hours_of_the_plan_are_asked_for_among_people() {
    let mut wrong = Vec::new();
    for (language, words) in [
        ("de-DE", "wann müssen wir los?"),
        ("de-DE", "wann fahren wir los?"),
        ("de-DE", "wann wird gegessen?"),
        ("de-DE", "was ist als nächstes dran?"),
        ("de-DE", "wie sieht der plan aus?"),
        ("de-DE", "zeig mal den plan"),
        ("en-GB", "when do we leave?"),
        ("en-GB", "show us the plan"),
        ("es-ES", "¿a qué hora salimos?"),
        ("es-ES", "¿a qué hora se cena?"),
        ("fr-FR", "on part à quelle heure ?"),
        ("fr-FR", "montre le plan"),
        ("it-IT", "a che ora partiamo?"),
        ("it-IT", "a che ora si cena?"),
        ("pt-BR", "que horas a gente sai?"),
        ("pt-BR", "mostra o plano"),
    ] {
        let mut kitchen = family(language);
        kitchen.run_to("2027-12-25 09:00");
        let before = kitchen.said.len();
        kitchen.among("Mia", words);
        if kitchen.said.len() == before {
            wrong.push(format!("{language}: {words}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn a_job_nobody_has_is_given_by_anyone_and_the_one_named_is_asked() {
    let mut wrong = Vec::new();
    for (language, words, step, whose) in [
        ("de-DE", "jonas fährt", Step::Travel, 1),
        ("de-DE", "lukas schneidet auf", Step::Carve, 3),
        ("de-DE", "mia heizt vor", Step::Fire, 4),
        ("de-DE", "lukas macht das salz", Step::Salt, 3),
        ("en-GB", "lukas carves", Step::Carve, 3),
        ("es-ES", "lukas trincha el pavo", Step::Carve, 3),
        ("fr-FR", "lukas découpe la dinde", Step::Carve, 3),
        ("it-IT", "lukas taglia il tacchino", Step::Carve, 3),
        ("pt-BR", "lukas corta o peru", Step::Carve, 3),
    ] {
        let mut kitchen = family(language);
        kitchen.among("Sabine", words);
        let job = kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap();
        if job.asked.map(|asked| asked.of) != Some(PersonId(whose)) {
            wrong.push(format!("{language}: {words}: {:?}", job.asked));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    // What somebody has is theirs.
    let mut kitchen = family("de-DE");
    kitchen.say("Lukas", "/take carve");
    let before = kitchen.said.len();
    kitchen.among("Sabine", "mia schneidet auf");
    assert!(ids(&kitchen, before).iter().all(|id| !id.starts_with("sharing-give-ask")), "{:?}", ids(&kitchen, before));
}

#[test]
fn whoever_does_it_says_so() {
    for (words, step) in
        [("ich fahr", Step::Travel), ("ich schneid die auf", Step::Carve), ("ich schneide auf", Step::Carve)]
    {
        let mut kitchen = family("de-DE");
        kitchen.among("Lukas", words);
        let job = kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap();
        assert_eq!(job.owner, Some(PersonId(3)), "{words}");
    }
}
