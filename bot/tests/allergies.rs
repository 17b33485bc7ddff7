//! Who at the table can't have what: heard, and what of the plan touches it is told, with the label and their doctor.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

fn planned(kind: RoomKind, language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "de-DE", Berlin, "2027-12-23 12:00");
    kitchen.say("Jonas", "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr, 10 leute, ofen 180, ohne salz");
    kitchen.press("Jonas", "Annehmen");
    kitchen.run_to("2027-12-24 12:00");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

const TOLD: [(&str, &str, &str); 26] = [
    ("en-US", "aunt May can't have dairy, no butter please", "ask-allergy-milk"),
    ("de-DE", "Opa verträgt keine Milch", "ask-allergy-milk"),
    ("en-US", "my niece is allergic to milk", "ask-allergy-milk"),
    ("en-US", "Leo is lactose intolerant", "ask-allergy-milk"),
    ("en-US", "Tom is celiac", "ask-allergy-gluten"),
    ("en-US", "one guest has a nut allergy", "ask-allergy-nuts"),
    ("en-US", "the kid has an egg allergy", "ask-allergy-egg"),
    ("es-ES", "mi sobrina es alérgica a la leche", "ask-allergy-milk"),
    ("es-ES", "Tomás es celíaco", "ask-allergy-gluten"),
    ("es-ES", "mi primo es alérgico a los frutos secos", "ask-allergy-nuts"),
    ("es-ES", "Ana es alérgica al huevo", "ask-allergy-egg"),
    ("fr-FR", "ma nièce est allergique au lait", "ask-allergy-milk"),
    ("fr-FR", "Paul est cœliaque", "ask-allergy-gluten"),
    ("fr-FR", "mon cousin est allergique aux noix", "ask-allergy-nuts"),
    ("fr-FR", "Léa est allergique aux œufs", "ask-allergy-egg"),
    ("de-DE", "meine Nichte hat eine Milchallergie", "ask-allergy-milk"),
    ("de-DE", "Tom hat Zöliakie", "ask-allergy-gluten"),
    ("de-DE", "Mia ist allergisch gegen Nüsse", "ask-allergy-nuts"),
    ("de-DE", "Ben verträgt keine Eier", "ask-allergy-egg"),
    ("it-IT", "mia suocera è allergica al latte", "ask-allergy-milk"),
    ("it-IT", "Marco è celiaco", "ask-allergy-gluten"),
    ("it-IT", "il cognato è allergico alle noci", "ask-allergy-nuts"),
    ("pt-BR", "minha sobrinha tem alergia a leite", "ask-allergy-milk"),
    ("pt-BR", "o Tom é celíaco", "ask-allergy-gluten"),
    ("pt-BR", "minha tia é alérgica a castanhas", "ask-allergy-nuts"),
    ("pt-BR", "a Bia é alérgica a ovo", "ask-allergy-egg"),
];

#[test]
fn an_allergy_is_heard_wherever_it_is_said_and_once_for_all() {
    for kind in [RoomKind::Group, RoomKind::Private] {
        for (language, words, id) in TOLD {
            let mut kitchen = planned(kind, language);
            let before = kitchen.said.len();
            match kind {
                RoomKind::Group => drop(kitchen.among("Mia", words)),
                RoomKind::Private => drop(kitchen.say("Jonas", words)),
            }
            let ids: Vec<_> =
                kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect();
            assert_eq!(ids, [id, "ask-allergy-label"], "{kind:?} {language}: {words}");
            if kind == RoomKind::Group {
                assert_eq!(kitchen.among("Mia", words), 0, "again: {language}: {words}");
            }
        }
    }
}

#[test]
fn the_call_to_butter_the_bird_says_no_butter() {
    let call = |milk: bool| {
        let mut kitchen = planned(RoomKind::Group, "en-US");
        if milk {
            kitchen.among("Mia", "my niece is allergic to milk");
        }
        kitchen.run_to("2027-12-25 18:00")
    };
    assert!(call(true).contains("oil, no butter"));
    let without = call(false);
    assert!(without.contains("butter it") && !without.contains("oil, no butter"), "{without}");
}

#[test]
fn nobody_who_is_allergic_to_cats_is_answered_and_a_swelling_tongue_comes_first() {
    let mut kitchen = planned(RoomKind::Group, "en-US");
    for words in [
        "my brother is allergic to cats",
        "nobody is allergic to nuts",
        "bring milk and eggs please",
        "Bo can't eat butter chicken lol",
        "the tire is flat, we can't have that, get flour",
        "we used to be allergic to Mondays",
    ] {
        assert_eq!(kitchen.among("Mia", words), 0, "{words}");
    }
    kitchen.among("Mia", "my tongue is swelling, I'm allergic to nuts");
    let said = kitchen.said.last().unwrap();
    assert_eq!(said.text.first().unwrap().id, "ask-allergy");
    // Nor is anyone counted by it.
    let mut private = planned(RoomKind::Private, "en-US");
    let said = private.say("Jonas", "nobody is allergic to anything");
    assert!(!said.contains("at the table"), "{said}");
}

#[test]
fn a_dinner_told_with_it_is_planned_all_the_same() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Berlin, "2027-12-23 12:00");
    let said = kitchen.say("Jonas", "fresh 12 lb turkey, Saturday at 6 pm for 8, oven, one of us is celiac");
    assert!(said.contains("12 lb") && said.contains("cornstarch"), "{said}");
}

#[test]
fn what_stands_in_for_butter_is_oil() {
    let now = "2027-12-18T18:00:00Z".parse().unwrap();
    for (tag, words) in [
        ("en-US", "what can I use instead of butter?"),
        ("es-ES", "¿qué uso en vez de mantequilla?"),
        ("fr-FR", "je mets quoi à la place du beurre ?"),
        ("de-DE", "was nehme ich statt Butter?"),
        ("it-IT", "cosa uso al posto del burro?"),
        ("pt-BR", "o que uso no lugar da manteiga?"),
    ] {
        let answer = ask(words, &Asker::new(tag, Berlin, now)).unwrap_or_else(|_| panic!("{tag}: {words}"));
        assert_eq!(answer.texts.first().unwrap().id, "ask-no-butter", "{tag}: {words}");
    }
}
