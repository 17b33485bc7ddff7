//! The hour of a job, and whether another hour would do: asked privately and among people, in every language.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use chrono_tz::Tz;
use kitchen::Kitchen;

/// A fresh bird for Friday at six, planned on Tuesday evening.
fn planned(kind: RoomKind, tag: &str, zone: Tz, wish: &str, yes: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, tag, zone, "2026-12-22 20:00");
    kitchen.say("Ruth", wish);
    kitchen.press("Ruth", yes);
    kitchen
}

fn english(kind: RoomKind) -> Kitchen {
    planned(
        kind,
        "en-US",
        chrono_tz::America::Chicago,
        "/plan 12 lb fresh turkey, we have it, dinner Friday 6 pm, 8 people, oven at 325",
        "Accept",
    )
}

/// Privately to the bot; in a group to everyone.
fn said(kitchen: &mut Kitchen, kind: RoomKind, text: &str) -> String {
    let addressed = kind == RoomKind::Private;
    kitchen.hear(Some("Ruth"), What::Said { text: text.into(), addressed, reply_to: None, edited: false })
}

#[test]
fn the_hour_of_a_job_is_one_line_wherever_it_is_asked() {
    let asked = [
        ("when do i salt it", "Salt the bird: Wed"),
        ("when do we salt it?", "Salt the bird: Wed"),
        ("when does it get salted", "Salt the bird: Wed"),
        ("what time do we carve", "Carve: Fri"),
        ("when should i take it out of the fridge", "Dry the bird: Fri"),
        ("when do i start the oven", "Preheat: Fri"),
        ("when do i turn the oven on?", "Preheat: Fri"),
        ("what time does the bird go on", "Bird on: Fri"),
    ];
    for kind in [RoomKind::Group, RoomKind::Private] {
        for (text, start) in asked {
            let mut kitchen = english(kind);
            let heard = said(&mut kitchen, kind, text);
            assert!(heard.contains(start) && heard.trim().lines().count() == 1, "{kind:?} {text}: {heard}");
        }
    }
}

#[test]
fn in_every_language() {
    let asked = [
        (
            "es-ES",
            chrono_tz::Europe::Madrid,
            "/plan pavo fresco de 5 kg, cena viernes 18:00, 8 personas, horno a 165",
            "Aceptar",
            ["¿cuándo lo salo?", "cuándo salamos el pavo", "¿a qué hora se sala?"],
            "Salar",
        ),
        (
            "fr-FR",
            chrono_tz::Europe::Paris,
            "/plan dinde fraîche de 5 kg, dîner vendredi 18 h, 8 personnes, four à 165",
            "Accepter",
            ["quand est-ce que je la sale ?", "quand on sale la dinde", "à quelle heure je sale ?"],
            "Saler",
        ),
        (
            "de-DE",
            chrono_tz::Europe::Berlin,
            "/plan frische Pute 5 kg, Essen Freitag 18 Uhr, 8 Personen, Ofen 165",
            "Annehmen",
            ["wann salze ich?", "wann müssen wir salzen", "um wie viel uhr salzen wir die pute"],
            "Vogel salzen",
        ),
        (
            "pt-BR",
            chrono_tz::America::Sao_Paulo,
            "/plan peru fresco de 5 kg, jantar sexta 18h, 8 pessoas, forno a 165",
            "Aceitar",
            ["quando eu salgo?", "que horas salgamos o peru", "quando é pra salgar"],
            "Salgar",
        ),
        (
            "it-IT",
            chrono_tz::Europe::Rome,
            "/plan tacchino fresco di 5 kg, cena venerdì alle 18, 8 persone, forno a 165",
            "Accetta",
            ["quando lo salo?", "quando saliamo il tacchino", "a che ora si sala"],
            "Sala",
        ),
    ];
    for (tag, zone, wish, yes, questions, start) in asked {
        for text in questions {
            let mut kitchen = planned(RoomKind::Group, tag, zone, wish, yes);
            let heard = said(&mut kitchen, RoomKind::Group, text);
            assert!(heard.contains(start) && heard.trim().lines().count() == 1, "{tag} {text}: {heard}");
        }
    }
}

#[test]
fn another_hour_is_held_against_the_plan() {
    let asked = [
        ("can i salt it thursday morning instead", "works"),
        ("can i salt it tomorrow morning instead", "too early"),
        ("could we salt it tomorrow at 9 pm?", "works"),
        ("can i salt it friday at noon", "too late"),
        ("can i start the oven at 8 am on thursday", "too early"),
        ("is it ok to salt it thursday 10 am", "works"),
        ("can we carve at 3 pm friday", "too early"),
    ];
    for kind in [RoomKind::Group, RoomKind::Private] {
        for (text, verdict) in asked {
            let mut kitchen = english(kind);
            let heard = said(&mut kitchen, kind, text);
            assert!(heard.contains(verdict) && heard.trim().lines().count() == 1, "{kind:?} {text}: {heard}");
        }
    }
}

#[test]
fn people_who_speak_of_something_else_are_left_alone() {
    for text in [
        "when are you coming mom",
        "when do we go in",
        "when do you buy the tickets",
        "can i go tomorrow morning",
        "can we take off at 5",
    ] {
        let mut kitchen = english(RoomKind::Group);
        assert_eq!(kitchen.among("Ruth", text), 0, "{text}");
    }
}

#[test]
fn hot_water_on_a_frozen_bird_is_never_the_way() {
    for text in ["what if i put hot water on it", "can i just run hot water over it?", "should i use warm water"] {
        let mut kitchen = planned(
            RoomKind::Group,
            "en-US",
            chrono_tz::America::Chicago,
            "/plan 12 lb frozen turkey, dinner Friday 6 pm, 8 people, oven at 325",
            "Accept",
        );
        let heard = kitchen.say("Ruth", text);
        assert!(heard.contains("Never on the counter"), "{text}: {heard}");
    }
}

#[test]
fn salted_out_of_the_water_it_has_no_rest_in_the_fridge() {
    let mut kitchen = planned(
        RoomKind::Group,
        "en-US",
        chrono_tz::America::Chicago,
        "/plan 12 lb frozen turkey, dinner Thursday 6 pm, 8 people, oven at 325, thaw it in cold water",
        "Accept",
    );
    let heard = kitchen.say("Ruth", "how much salt?");
    assert!(heard.contains("out of the water") && !heard.contains("uncovered in the fridge till"), "{heard}");
}

#[test]
fn an_old_gap_is_no_news_once_readings_have_come() {
    let mut kitchen = planned(
        RoomKind::Private,
        "en-US",
        chrono_tz::America::Chicago,
        "/plan 12 lb fresh turkey, we have it, no salt, dinner Wednesday 6 pm, 8 people, oven at 325",
        "Accept",
    );
    kitchen.run_to("2026-12-23 13:20");
    kitchen.say("Ruth", "bird's on");
    kitchen.run_to("2026-12-23 15:20");
    kitchen.say("Ruth", "breast 118 thigh 131 oven 330");
    kitchen.run_to("2026-12-23 15:50");
    kitchen.say("Ruth", "breast 132 thigh 145");
    let heard = kitchen.say("Ruth", "/when");
    assert!(heard.contains("Breast") && !heard.contains("without a reading"), "{heard}");
    kitchen.run_to("2026-12-23 17:10");
    let heard = kitchen.say("Ruth", "/when");
    assert!(heard.contains("1 h 20 min without a reading"), "{heard}");
}

#[test]
fn where_the_planned_birds_dose_comes_from_is_told() {
    let mut kitchen = english(RoomKind::Private);
    kitchen.say("Ruth", "how much salt?");
    let heard = kitchen.press("Ruth", "Where from?");
    assert!(heard.contains("USDA FSIS") && heard.contains("Common practice"), "{heard}");
}

#[test]
fn into_the_oven_is_asked_in_whatever_order_and_with_its_day() {
    for text in
        ["quelle heure on met au four vendredi ?", "on le met au four à quelle heure ?", "on enfourne à quelle heure ?"]
    {
        let mut kitchen = planned(
            RoomKind::Group,
            "fr-FR",
            chrono_tz::Europe::Paris,
            "/plan chapon frais de 3,8 kg, je l'ai déjà, repas vendredi à 18h, 6 personnes, four à chaleur tournante, sans sel",
            "Accepter",
        );
        let heard = said(&mut kitchen, RoomKind::Group, text);
        assert!(heard.contains("Mettre à cuire"), "{text}: {heard}");
    }
}
