//! The heat has failed with the bird in it: nothing is called as if it cooked, its clock is told, and what was cold too long is said to be.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// Thursday at 13:40, breast 118 °F, and the oven has just died.
fn dead(language: &str, words: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Dana", "/plan 12 lb fresh turkey, dinner Thursday 4 pm, 9 people, oven at 325");
    kitchen.press("Dana", "Accept");
    kitchen.say("Josie", "/board");
    kitchen.run_to("2027-11-25 11:30");
    kitchen.among("Dana", "bird is in");
    kitchen.run_to("2027-11-25 13:35");
    kitchen.among("Dana", "breast 118, thigh 126");
    kitchen.run_to("2027-11-25 13:40");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen.among("Josie", words);
    assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_some(), "{words}");
    kitchen
}

fn ids(kitchen: &Kitchen, before: usize) -> String {
    kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| format!("{} ", text.id)).collect()
}

#[test]
fn nobody_is_called_to_a_bird_that_has_no_heat_and_its_clock_is_told() {
    let mut kitchen = dead("en-US", "oven just died");
    let said = kitchen.run_to("2027-11-25 15:39");
    assert!(!said.contains("should be about done") && !said.contains("Time to carve"), "{said}");
    assert!(!said.contains("Time for a look"), "{said}");
    assert_eq!(said.matches("New: No heat since 1:40 PM?").count(), 1, "{said}");
    let said = kitchen.run_to("2027-11-25 15:45");
    assert!(said.contains("Two hours without heat, since 1:40 PM"), "{said}");
    assert!(kitchen.say("Dana", "/board").contains("No heat since 1:40 PM."));
}

#[test]
fn what_was_cold_when_the_heat_went_is_thrown_away_after_two_hours() {
    let mut kitchen = dead("en-US", "oven just died");
    kitchen.run_to("2027-11-25 16:10");
    let back = kitchen.say("Josie", "oven is back");
    assert!(back.contains("Throw it away") && !back.contains("too late for dinner"), "{back}");
    // Within the two hours it goes on, with the hour that follows.
    let mut kitchen = dead("en-US", "oven just died");
    kitchen.run_to("2027-11-25 14:10");
    let back = kitchen.say("Josie", "oven is back");
    assert!(!back.contains("Throw it away") && back.contains("too late for dinner"), "{back}");
    assert!(kitchen.run_to("2027-11-25 14:50").contains("Time for a look"));
}

#[test]
fn in_every_language_what_now_still_out_and_can_we_eat_it_are_about_the_bird() {
    let said = [
        (
            "en-US",
            "oven just died",
            "what now?",
            "the oven is still out",
            "can we still eat it?",
            "its in the neighbors oven now, 350",
        ),
        (
            "de-DE",
            "ofen ist ausgefallen",
            "was jetzt",
            "der ofen ist immer noch aus",
            "kann man die noch essen?",
            "ist jetzt bei den nachbarn im ofen, 180 grad",
        ),
        (
            "es-ES",
            "se rompió el horno",
            "¿y ahora qué?",
            "el horno sigue apagado",
            "¿todavía se puede comer?",
            "está en el horno de la vecina a 180",
        ),
        (
            "fr-FR",
            "le four est en panne",
            "et maintenant ?",
            "le four est toujours éteint",
            "on peut encore la manger ?",
            "elle est chez les voisins, four à 180",
        ),
        (
            "pt-BR",
            "o forno quebrou",
            "e agora?",
            "o forno continua apagado",
            "ainda dá pra comer?",
            "tá no forno da vizinha a 180",
        ),
        (
            "it-IT",
            "si è rotto il forno",
            "e adesso?",
            "il forno è ancora spento",
            "si può ancora mangiare?",
            "è nel forno della vicina a 180",
        ),
    ];
    for (language, failed, what_now, still, eat, moved) in said {
        let mut kitchen = dead(language, failed);
        let before = kitchen.said.len();
        kitchen.among("Josie", what_now);
        assert!(ids(&kitchen, before).contains("ask-oven-down"), "{language}: {what_now}: {}", ids(&kitchen, before));
        let before = kitchen.said.len();
        kitchen.among("Josie", still);
        assert!(ids(&kitchen, before).contains("room-no-heat"), "{language}: {still}: {}", ids(&kitchen, before));
        let before = kitchen.said.len();
        kitchen.among("Josie", eat);
        assert!(ids(&kitchen, before).contains("room-eat-cooking"), "{language}: {eat}: {}", ids(&kitchen, before));
        kitchen.run_to("2027-11-25 14:10");
        kitchen.among("Josie", moved);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_none(), "{language}: {moved}");
    }
    // With nothing out of order, "what now" among people is theirs.
    let mut kitchen = dead("en-US", "oven just died");
    kitchen.run_to("2027-11-25 13:50");
    kitchen.among("Josie", "oven is back");
    assert_eq!(kitchen.among("Josie", "what now?"), 0);
}

#[test]
fn without_heat_no_hour_is_foretold_until_it_is_back() {
    let mut kitchen = dead("en-US", "oven just died");
    kitchen.run_to("2027-11-25 14:00");
    let read = kitchen.say("Dana", "breast 116, thigh 125");
    assert!(read.contains("No heat since 1:40 PM?") && !read.contains("About "), "{read}");
    let when = kitchen.say("Dana", "/when");
    assert!(when.contains("No heat since 1:40 PM?") && !when.contains("set to"), "{when}");
    assert!(!kitchen.say("Dana", "/board").contains("Off the heat "), "no hour on the board");
    // A hot pit says it as well as words do, and undo of the reading takes that back.
    kitchen.run_to("2027-11-25 14:10");
    let read = kitchen.say("Dana", "oven 310");
    assert!(read.contains("no heat since 1:40 PM") && read.contains("About "), "{read}");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_none());
    let mut cold = dead("en-US", "oven just died");
    cold.run_to("2027-11-25 14:10");
    cold.say("Dana", "oven 140");
    assert!(cold.scene.room.plan.as_ref().unwrap().down_since.is_some(), "that is none");
}

#[test]
fn gas_that_is_back_is_heard_in_every_language() {
    let said: [(&str, &str, &[&str]); 6] = [
        ("en-US", "we ran out of gas!!!", &["gas is back", "gas is here its lit again"]),
        (
            "es-MX",
            "se acabo el gas!!!",
            &["ya llego el gas ya esta prendido otra vez", "ya hay gas", "ya regresó el gas", "ya lo prendi otra vez"],
        ),
        ("fr-FR", "plus de gaz !", &["le gaz est revenu"]),
        ("de-DE", "gas ist leer", &["gas ist wieder da"]),
        ("pt-BR", "acabou o gás", &["o gás voltou", "já chegou o gás"]),
        ("it-IT", "è finito il gas", &["è tornato il gas"]),
    ];
    for (tag, out, back) in said {
        for words in back {
            let mut kitchen = dead(tag, out);
            kitchen.run_to("2027-11-25 14:10");
            kitchen.among("Josie", words);
            assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_none(), "{tag}: {words}");
        }
    }
    // Another's, and no gas at all.
    for words in ["gas is so expensive", "we need gas for the car"] {
        let mut kitchen = dead("en-US", "we ran out of gas!!!");
        kitchen.run_to("2027-11-25 14:10");
        kitchen.among("Josie", words);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_some(), "{words}");
    }
}

#[test]
fn dead_since_an_hour_of_the_clock_it_is_without_heat_from_then_until_the_hour_it_was_back() {
    for (tag, dead, back) in [
        ("fr-FR", "le four est mort depuis 13h", "c'est revenu à 13h40"),
        ("en-US", "the oven has been dead since 1 pm", "it's back since 1:40 pm"),
        ("de-DE", "der Ofen ist tot seit 13 Uhr", "er geht wieder seit 13:40"),
        ("es-ES", "el horno está muerto desde las 13:00", "volvió a las 13:40"),
        ("it-IT", "il forno è morto dalle 13:00", "è tornato alle 13:40"),
        ("pt-BR", "o forno morreu desde as 13h", "voltou às 13:40"),
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
        kitchen.say("Dana", "/plan 12 lb fresh turkey, dinner Thursday 4 pm, 9 people, oven at 325");
        kitchen.press("Dana", "Accept");
        kitchen.run_to("2027-11-25 12:00");
        kitchen.among("Dana", "bird is in");
        kitchen.run_to("2027-11-25 13:30");
        kitchen.scene.room.taste.language = Some(tag.to_owned());
        let (ids, said) = kitchen.ids("Josie", dead, false);
        assert_eq!(ids.first().map(String::as_str), Some("room-no-heat"), "{tag}: {said}");
        let since = kitchen.scene.room.plan.as_ref().unwrap().down_since;
        assert_eq!(since, Some(kitchen.local("2027-11-25 13:00")), "{tag}");
        kitchen.run_to("2027-11-25 13:45");
        kitchen.among("Josie", back);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert_eq!(plan.down_since, None, "{tag}: {back}");
        let until: Vec<_> = plan.was_set.iter().map(|was| was.until).collect();
        assert_eq!(until, [kitchen.local("2027-11-25 13:00"), kitchen.local("2027-11-25 13:40")], "{tag}: {back}");
    }
}

#[test]
fn gas_that_is_gone_and_a_flame_that_is_out_are_no_heat() {
    for (tag, said) in [
        ("en-US", &["the gas is out", "the propane is empty", "the flame went out", "there's no gas"][..]),
        ("es-MX", &["se apagó la flama", "se acabó el tanque"]),
        ("fr-FR", &["le gaz est coupé", "la bouteille de gaz est vide"]),
        ("de-DE", &["die Gasflasche ist leer", "der Ofen ist plötzlich aus"]),
        ("pt-BR", &["o gás acabou", "a chama apagou"]),
        ("it-IT", &["è andato via il gas", "la fiamma si è spenta", "manca il gas"]),
    ] {
        for words in said {
            dead(tag, words);
        }
    }
    // Somebody else's gas is none of the bird's.
    let mut kitchen = dead("en-US", "oven just died");
    kitchen.among("Josie", "oven is back");
    kitchen.among("Josie", "the water has no gas in it, is that ok with you guys");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().down_since.is_none());
}
