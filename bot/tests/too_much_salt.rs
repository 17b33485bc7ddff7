//! "I put 3 tbsp on it, too much?": judged by what the bird takes, never just weighed.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use chrono::Utc;
use chrono_tz::America::Chicago;
use chrono_tz::UTC;
use kitchen::Kitchen;

const LANGUAGES: [&str; 6] = ["en-US", "de-DE", "es-ES", "fr-FR", "it-IT", "pt-BR"];

fn planned(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn ids(kitchen: &Kitchen) -> Vec<String> {
    kitchen.said.last().unwrap().text.iter().map(|text| text.id.to_string()).collect()
}

#[test]
fn spoons_on_the_planned_bird_are_held_against_its_dose_in_every_language() {
    let asked = [
        "i put 4 tbsp of table salt, too much?",
        "hab ich zu viel salz dran? waren 4 el",
        "puse 4 cucharadas de sal de mesa, ¿es demasiado?",
        "j'ai mis 4 cuillères à soupe de sel fin, c'est trop ?",
        "ho messo 4 cucchiai di sale fino, troppo?",
        "pus 4 colheres de sopa de sal de mesa, é muito?",
    ];
    for (language, words) in LANGUAGES.into_iter().zip(asked) {
        let mut kitchen = planned(language);
        assert_eq!(kitchen.among("Tom", words), 1, "{language}: {words}");
        assert_eq!(
            ids(&kitchen),
            ["ask-oversalt-much", "ask-oversalt-either", "ask-oversalt-beside"],
            "{language}: {words}"
        );
    }
}

#[test]
fn how_long_it_has_lain_decides_what_is_done_about_it() {
    let mut kitchen = planned("en-US");
    kitchen.run_to("2027-11-23 19:00");
    kitchen.say("Rosa", "salted it");
    kitchen.now += chrono::TimeDelta::minutes(20);
    kitchen.say("Rosa", "i put 4 tbsp of table salt, too much?");
    assert_eq!(ids(&kitchen)[1], "ask-oversalt-fresh");
    kitchen.now += chrono::TimeDelta::minutes(60);
    kitchen.say("Rosa", "i put 4 tbsp of table salt, too much?");
    assert_eq!(ids(&kitchen)[1], "ask-oversalt-soaked");
}

#[test]
fn less_than_the_dose_or_about_it_is_no_alarm() {
    let mut kitchen = planned("en-US");
    for (words, id) in [
        ("i put 22 g of salt on it, too much?", "ask-oversalt-right"),
        ("i put 28 g of salt on it, too much?", "ask-oversalt-a-little"),
        ("i put 1 tsp of table salt on it, is that too much?", "ask-oversalt-little"),
    ] {
        kitchen.say("Rosa", words);
        assert_eq!(ids(&kitchen)[0], id, "{words}: {:?}", kitchen.said.last().unwrap().text);
        assert_eq!(ids(&kitchen).len(), 1, "{words}");
    }
}

#[test]
fn twice_the_salt_is_too_much_whatever_the_bird_weighs() {
    let told = [
        "i put double the salt on it by accident",
        "hab aus versehen doppelt so viel salz genommen",
        "puse el doble de sal",
        "j'ai mis le double de sel",
        "ho messo il doppio del sale",
        "coloquei sal em dobro",
    ];
    for (language, words) in LANGUAGES.into_iter().zip(told) {
        let mut kitchen = planned(language);
        assert_eq!(kitchen.among("Tom", words), 1, "{language}: {words}");
        assert_eq!(ids(&kitchen)[0], "ask-oversalt-double", "{language}");
        let answer = ask(words, &Asker::new(language, UTC, Utc::now())).unwrap();
        assert_eq!(answer.values[0].value, 2.0, "{language}");
    }
}

#[test]
fn without_a_plan_the_weight_is_told_or_asked_for() {
    let asker = Asker::new("de-DE", UTC, Utc::now());
    let answer = ask("sind 3 el zu viel salz für 5 kilo?", &asker).unwrap();
    assert_eq!(answer.texts[0].id, "ask-oversalt-much");
    // 3 × 15 mL of table salt at 6.1 g a teaspoon, against 3.85 g a kilo.
    assert!((answer.values[0].value - 2.8).abs() < 0.2, "{:?}", answer.values);
    assert!(ask("hab ich zu viel salz dran? waren 3 el", &asker).unwrap().ask_back.is_some());
    // Where nothing of too much is asked, it is weighed as ever.
    assert_eq!(ask("3 el tafelsalz", &asker).unwrap().texts[0].id, "ask-salt-weighs");
}
