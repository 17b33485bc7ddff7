//! "Can we move dinner to 4?": anyone may ask, what it means is shown, and whoever may decide answers in words.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono::{DateTime, Utc};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// Thursday, five in the afternoon in Chicago.
const FIVE: &str = "2027-11-25T23:00:00Z";

fn kitchen(kind: RoomKind, language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    if kind == RoomKind::Group {
        kitchen.say("Tom", "/board");
    }
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn dinner(kitchen: &Kitchen) -> DateTime<Utc> {
    kitchen.scene.room.plan.as_ref().unwrap().wish.dinner.unwrap()
}

fn at(rfc: &str) -> DateTime<Utc> {
    rfc.parse().unwrap()
}

#[test]
fn a_helper_asks_and_the_host_says_yes_in_any_language() {
    let said = [
        ("en-US", "can we move dinner to 4, my shift ends at 3", "yes ok 4pm"),
        ("de-DE", "Können wir um 16 Uhr essen?", "ja klar"),
        ("es-ES", "¿podemos cenar a las 16:00?", "sí, vale"),
        ("fr-FR", "on peut dîner à 16h ?", "oui d'accord"),
        ("it-IT", "possiamo cenare alle 16?", "va bene"),
        ("pt-BR", "podemos jantar às 16h?", "sim, pode ser"),
    ];
    for (language, wish, yes) in said {
        let mut kitchen = kitchen(RoomKind::Group, language);
        assert!(kitchen.among("Tom", wish) > 0, "{language}: {wish}");
        assert_eq!(dinner(&kitchen), at(FIVE), "{language}: nothing moves before the host has said so");
        kitchen.among("Tom", yes);
        assert_eq!(dinner(&kitchen), at(FIVE), "{language}: who asked can't say yes to it");
        kitchen.among("Rosa", yes);
        assert_eq!(dinner(&kitchen), at("2027-11-25T22:00:00Z"), "{language}: {yes}");
    }
}

#[test]
fn a_no_leaves_dinner_where_it_is_and_another_hour_is_offered() {
    let mut kitchen = kitchen(RoomKind::Group, "en-US");
    kitchen.among("Tom", "could we eat at 6 instead?");
    assert!(kitchen.among("Rosa", "no 5 stays") > 0);
    assert_eq!(dinner(&kitchen), at(FIVE));
    assert_eq!(kitchen.among("Rosa", "sure"), 0, "it has been answered");
    kitchen.among("Tom", "what about 5:30");
    kitchen.among("Rosa", "no, 15 min later ok");
    assert_eq!(dinner(&kitchen), at(FIVE));
    kitchen.among("Rosa", "yes");
    assert_eq!(dinner(&kitchen), at("2027-11-25T23:15:00Z"));
}

#[test]
fn a_late_yes_names_the_hour() {
    let mut kitchen = kitchen(RoomKind::Group, "en-US");
    kitchen.among("Tom", "can we have dinner at 6 instead");
    kitchen.now += chrono::TimeDelta::hours(2);
    assert_eq!(kitchen.among("Rosa", "yes"), 0, "who knows what that was said to");
    kitchen.among("Rosa", "ok 6 it is");
    assert_eq!(dinner(&kitchen), at("2027-11-26T00:00:00Z"));
}

#[test]
fn what_people_ask_each_other_of_other_things_moves_nothing() {
    let mut kitchen = kitchen(RoomKind::Group, "en-US");
    for talk in [
        "can you pick up rolls at 4",
        "can we eat the pie at 3 on friday",
        "what about 4:30",
        "could you call mom at 6",
        "yes ok 4pm",
        "no 5 stays",
        "maybe we should get a second pie",
    ] {
        assert_eq!(kitchen.among("Tom", talk), 0, "{talk}");
        assert_eq!(kitchen.among("Rosa", "sure"), 0, "{talk}");
    }
    assert_eq!(dinner(&kitchen), at(FIVE));
}

#[test]
fn alone_it_is_a_choice_too() {
    let mut kitchen = kitchen(RoomKind::Private, "en-US");
    kitchen.say("Rosa", "can we move dinner to 4?");
    assert_eq!(dinner(&kitchen), at(FIVE));
    kitchen.press("Rosa", "Dinner 4:00 PM");
    assert_eq!(dinner(&kitchen), at("2027-11-25T22:00:00Z"));
}

#[test]
fn the_hosts_own_hmm_ok_then_is_offered() {
    let mut kitchen = kitchen(RoomKind::Group, "en-US");
    assert!(kitchen.among("Rosa", "hmm ok then dinner at 5:30") > 0);
    assert_eq!(dinner(&kitchen), at(FIVE));
    kitchen.among("Rosa", "yes");
    assert_eq!(dinner(&kitchen), at("2027-11-25T23:30:00Z"));
}

#[test]
fn we_stay_where_we_were_takes_the_hour_back_at_once() {
    for (language, moved, stays) in [
        ("fr-FR", "on mange plutôt à 18h finalement", "bon on reste à 17h"),
        ("en-US", "dinner is at 6 pm after all", "ok let's stay at 5 pm"),
        ("de-DE", "wir essen doch erst um 18 Uhr", "ok wir bleiben bei 17 Uhr"),
        ("es-ES", "cenamos mejor a las 18:00", "bueno, nos quedamos a las 17:00"),
        ("it-IT", "ceniamo alle 18 invece", "ok restiamo alle 17"),
        ("pt-BR", "o jantar fica para as 18h", "ok ficamos nas 17h"),
    ] {
        let mut kitchen = kitchen(RoomKind::Group, language);
        kitchen.say("Rosa", "/move 18:00");
        assert_eq!(dinner(&kitchen), at("2027-11-26T00:00:00Z"), "{language}: {moved}");
        assert!(kitchen.among("Rosa", stays) > 0, "{language}: {stays}");
        assert_eq!(dinner(&kitchen), at(FIVE), "{language}: {stays}");
    }
    // Asked for by a helper, it is the host's no.
    let mut kitchen = kitchen(RoomKind::Group, "fr-FR");
    kitchen.among("Tom", "on peut dîner à 18h ?");
    assert!(kitchen.among("Rosa", "non on reste à 17h") > 0);
    assert_eq!(dinner(&kitchen), at(FIVE));
    assert_eq!(kitchen.among("Tom", "on reste 2h de plus à la plage"), 0);
}
