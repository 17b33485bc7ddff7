//! The salt a family takes, and a salting told with its amount.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// A fresh bird for the 25th, salted the evening of the 23rd.
fn planned(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", Berlin, "2027-12-22 12:00");
    kitchen.say("Jonas", "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr, 10 leute, ofen 180");
    kitchen.press("Jonas", "Annehmen");
    kitchen.run_to("2027-12-22 12:10");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn salted(kitchen: &Kitchen) -> bool {
    let job = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Salt, 0).unwrap();
    matches!(job.state, JobState::Done { .. })
}

#[test]
fn the_salt_they_take_is_the_one_the_dose_is_told_in() {
    for (language, words) in [
        ("de-DE", "wir nehmen grobes meersalz"),
        ("de-DE", "ich will trockenpökeln mit grobem meersalz"),
        ("de-DE", "kein tafelsalz, grobes meersalz"),
        ("en-GB", "we're using coarse sea salt"),
        ("es-ES", "vamos a usar sal gruesa"),
        ("fr-FR", "on prend du gros sel"),
        ("it-IT", "usiamo il sale grosso"),
        ("pt-BR", "vamos usar sal grosso"),
    ] {
        let mut kitchen = planned(language);
        kitchen.among("Lukas", words);
        let told = kitchen.scene.people.values().filter(|person| person.own_salt.is_some()).count();
        assert_eq!(told, 1, "{language}: {words}");
        // Nobody has the job: the one salt told of is what it is dosed in.
        let before = kitchen.said.len();
        kitchen.run_to("2027-12-24 20:00");
        let said = format!("{:?}", kitchen.said[before..].iter().map(|say| &say.text).collect::<Vec<_>>());
        let own = "\"room-dose-total\", args: [";
        let dose = said.split(own).nth(1).unwrap_or_default();
        assert!(dose.contains("Choice(\"own\")"), "{language}: {words}: {said}");
    }
    // Asked how much, or of the potatoes, nothing is settled.
    for words in [
        "wie viel grobes meersalz nehmen wir?",
        "sollen wir grobes meersalz nehmen?",
        "für die kartoffeln nehmen wir grobes meersalz",
    ] {
        let mut kitchen = planned("de-DE");
        kitchen.among("Lukas", words);
        assert!(kitchen.scene.people.values().all(|person| person.own_salt.is_none()), "{words}");
    }
}

#[test]
fn salted_with_so_much_is_salted() {
    for (language, words) in [
        ("de-DE", "gesalzen, 1 el und 1 tl"),
        ("de-DE", "habs gesalzen mit 20 g"),
        ("de-DE", "eingepökelt"),
        ("en-GB", "salted it with 20 g"),
        ("en-US", "salted, 1 tbsp and 1 tsp"),
        ("es-ES", "ya lo salé con 20 g"),
        ("fr-FR", "salée avec 20 g"),
        ("it-IT", "salato con 20 g"),
        ("pt-BR", "salguei com 20 g"),
    ] {
        let mut kitchen = planned(language);
        kitchen.run_to("2027-12-24 17:30");
        kitchen.among("Lukas", words);
        assert!(salted(&kitchen), "{language}: {words}");
    }
    let mut kitchen = planned("de-DE");
    kitchen.run_to("2027-12-24 17:30");
    kitchen.among("Lukas", "kartoffelwasser gesalzen, 1 el");
    assert!(!salted(&kitchen));
}
