//! Weather, people and hours of the day are no food: nothing of them is called fit to eat or fit for the bin.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use chrono::Utc;
use chrono_tz::Europe::Berlin;
use chrono_tz::UTC;
use kitchen::Kitchen;

#[test]
fn weather_people_and_hours_are_no_question_of_food() {
    for (language, words) in [
        ("pt-BR", "todo mundo fora às 12h pra foto"),
        ("pt-BR", "a ceia fica pras 23h"),
        ("pt-BR", "bom dia! 28 graus já"),
        ("de-DE", "es sind 3 grad draussen"),
        ("de-DE", "guten morgen, 28 grad schon"),
        ("en-US", "34 outside"),
        ("en-US", "everyone outside at 12 for the photo"),
        ("it-IT", "siamo tutti fuori alle 12h per la foto"),
        ("es-ES", "todo el mundo fuera a las 12h para la foto"),
        ("fr-FR", "tout le monde dehors à 12h pour la photo"),
    ] {
        let answer = ask(words, &Asker::new(language, UTC, Utc::now()));
        assert!(answer.is_err(), "{language}: {words}: {answer:?}");
    }
}

#[test]
fn food_that_stood_out_is_still_food() {
    for (language, words) in [
        ("pt-BR", "o peru ficou 3h fora"),
        ("de-DE", "die pute stand 3h draußen"),
        ("en-US", "the turkey was left outside for 3 hours"),
    ] {
        let answer = ask(words, &Asker::new(language, UTC, Utc::now())).unwrap();
        assert_eq!(answer.texts[0].id, "ask-out-discard", "{language}: {words}");
    }
    let cold = ask("can i leave the turkey outside, it's 34", &Asker::new("en-US", UTC, Utc::now())).unwrap();
    assert_eq!(cold.kind, "cold-place", "{cold:?}");
}

#[test]
fn bones_that_stood_out_make_no_stock() {
    for (language, words) in [
        ("en-US", "bones sat out all night, can i still make stock?"),
        ("de-DE", "knochen vom braten standen die ganze nacht draußen, brühe noch möglich?"),
        ("es-ES", "los huesos se quedaron fuera toda la noche, ¿puedo hacer caldo?"),
        ("fr-FR", "les os sont restés dehors toute la nuit, on peut faire un bouillon ?"),
        ("it-IT", "le ossa sono rimaste fuori tutta la notte, brodo si o no?"),
        ("pt-BR", "os ossos ficaram fora a noite toda, dá caldo?"),
    ] {
        let answer = ask(words, &Asker::new(language, UTC, Utc::now())).unwrap();
        assert_eq!(answer.texts[0].id, "ask-bones-out", "{language}: {words}");
    }
}

#[test]
fn leftovers_that_were_condemned_are_neither_kept_nor_warmed_nor_boiled() {
    for words in ["how long do the leftovers keep?", "can i make stock from the bones?", "can we reheat the leftovers?"]
    {
        let mut kitchen = Kitchen::new(RoomKind::Group, "en-GB", Berlin, "2027-12-20 09:00");
        kitchen.say("Ada", "/plan 5 kg fresh turkey, dinner 24 December 7 pm, 8 people, oven at 180");
        kitchen.press("Ada", "Accept");
        kitchen.run_to("2027-12-24 18:10");
        kitchen.say("Ada", "breast 80, thigh 82");
        kitchen.say("Ada", "it's out");
        kitchen.now += chrono::TimeDelta::hours(4);
        kitchen.say("Ada", "threw it all away");
        kitchen.among("Ben", words);
        let said: Vec<_> = kitchen.said.last().unwrap().text.iter().map(|text| text.id.to_string()).collect();
        assert_eq!(said, ["cook-gone"], "{words}");
    }
}

#[test]
fn a_temperature_with_done_is_answered_yes_or_no() {
    for (language, words) in [
        ("de-DE", "reichen 70 grad in der brust"),
        ("de-DE", "ist die gans bei 70 grad gar"),
        ("de-DE", "reichen 72 grad in der keule?"),
        ("it-IT", "70 gradi nel petto bastano?"),
        ("pt-BR", "peito a 68 tá pronto?"),
        ("es-ES", "¿bastan 70 grados en la pechuga?"),
        ("fr-FR", "70 degrés dans la poitrine ça suffit ?"),
        ("en-GB", "is 70 C in the breast done?"),
        ("en-US", "is 160 enough in the breast"),
    ] {
        let answer = ask(words, &Asker::new(language, UTC, Utc::now())).unwrap();
        assert_eq!(answer.texts[0].id, "ask-lethality-go-on", "{language}: {words}");
    }
    let enough = ask("75 gradi bastano?", &Asker::new("it-IT", UTC, Utc::now())).unwrap();
    assert_eq!(enough.texts[0].id, "ask-lethality-instant");
    // How long it must hold is still told to whoever asks that.
    let long = ask("how long at 150 F", &Asker::new("en-US", UTC, Utc::now())).unwrap();
    assert_eq!(long.texts[0].id, "ask-lethality-time");
    let units = ask("70 C in F", &Asker::new("en-US", UTC, Utc::now())).unwrap();
    assert_eq!(units.kind, "unit-convert");
}
