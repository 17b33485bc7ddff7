//! Held up on the way to the other house: whoever drives is called at the hour they said, and a bird carried hot has its limit told.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// Off the heat at 16:24, wrapped at 16:45, to be carried hot to a dinner at six.
fn wrapped(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", Berlin, "2027-12-23 12:00");
    kitchen.say(
        "Jonas",
        "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr bei oma, 10 leute, ofen 180, ohne salz, heiss mitnehmen, \
         15 min fahrt",
    );
    kitchen.press("Jonas", "Annehmen");
    for (at, words) in
        [("13:22", "pute ist drin"), ("16:20", "brust 75 keule 79"), ("16:24", "ist raus"), ("16:45", "eingepackt")]
    {
        kitchen.run_to(&format!("2027-12-25 {at}"));
        kitchen.among("Jonas", words);
    }
    kitchen.run_to("2027-12-25 17:00");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn ids(kitchen: &Kitchen, from: usize) -> Vec<String> {
    kitchen.said[from..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect()
}

#[test]
fn held_up_the_limit_is_told_and_nobody_is_called_meanwhile() {
    let mut wrong = Vec::new();
    for (language, words) in [
        ("de-DE", "auto springt nicht an!!"),
        ("de-DE", "wir stehen im stau"),
        ("de-DE", "stau auf der stadtautobahn"),
        ("en-US", "the car won't start"),
        ("en-US", "stuck in traffic"),
        ("es-ES", "el coche no arranca"),
        ("fr-FR", "la voiture ne démarre pas"),
        ("fr-FR", "on est dans les bouchons"),
        ("it-IT", "la macchina non parte"),
        ("it-IT", "siamo in coda"),
        ("pt-BR", "o carro não pega"),
    ] {
        let mut kitchen = wrapped(language);
        let before = kitchen.said.len();
        kitchen.among("Jonas", words);
        let told = ids(&kitchen, before);
        let job = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Travel, 0).unwrap();
        let waits = job.state == JobState::Waiting && job.call_at.is_some_and(|at| at > kitchen.now);
        if !told.contains(&"room-held-up-hot".to_owned()) || !waits {
            wrong.push(format!("{language}: {words}: {told:?}, {waits}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn the_hour_said_is_the_hour_they_are_called_at() {
    for (language, words) in [
        ("de-DE", "nachbar gibt starthilfe, wir fahren 17:20 los"),
        ("de-DE", "wir fahren um 17:20 los"),
        ("en-US", "we're leaving at 5:20"),
        ("es-ES", "salimos a las 17:20"),
        ("fr-FR", "on part à 17h20"),
        ("it-IT", "stiamo partendo alle 17:20"),
        ("pt-BR", "saímos às 17:20"),
    ] {
        let mut kitchen = wrapped(language);
        kitchen.among("Sabine", words);
        let job = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Travel, 0).unwrap();
        assert_eq!(job.call_at, Some(kitchen.local("2027-12-25 17:20")), "{language}: {words}: {job:?}");
    }
}

#[test]
fn coming_later_than_dinner_is_asked_about_and_other_roads_are_not_ours() {
    let mut kitchen = wrapped("de-DE");
    let before = kitchen.said.len();
    kitchen.among("Sabine", "kommen erst um halb sieben an");
    assert!(
        ids(&kitchen, before).iter().any(|id| id == "room-late" || id == "room-move-clash"),
        "{:?}",
        ids(&kitchen, before)
    );
    // Days before, and once it is eaten, a jam is talk.
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", Berlin, "2027-12-23 12:00");
    kitchen.say("Jonas", "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr bei oma, 10 leute, heiss mitnehmen, 15 min fahrt, ofen");
    kitchen.press("Jonas", "Annehmen");
    assert_eq!(kitchen.among("Sabine", "steh im stau auf der a100"), 0);
    let mut kitchen = wrapped("de-DE");
    kitchen.among("Jonas", "losgefahren");
    kitchen.run_to("2027-12-25 18:00");
    kitchen.among("Jonas", "guten appetit");
    assert_eq!(kitchen.among("Sabine", "im radio sagen sie stau auf der a10"), 0);
}
