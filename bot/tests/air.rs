//! The oven was otherwise than everyone thought: the forecast is told what the bird has had, once, and nothing is counted as cooked
//! that was not.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::plan::Moment;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// How a plan is told, accepted and begun in that language: dinner on Thursday at six, an oven at 165 °C or 325 °F.
fn words(tag: &str) -> [&'static str; 3] {
    match tag {
        "es-ES" => [
            "/plan pavo fresco de 6 kg, ya lo tenemos, cena mañana a las 18, 8 personas, horno a 165, sin sal",
            "Aceptar",
            "el pavo está dentro",
        ],
        "fr-FR" => [
            "/plan dinde fraîche 6 kg, on l'a déjà, dîner demain à 18h, 8 personnes, four à 165, sans sel",
            "Accepter",
            "la dinde est au four",
        ],
        "de-DE" => [
            "/plan frische Pute 6 kg, haben wir schon, Essen morgen um 18 Uhr, 8 Personen, Ofen auf 165, kein Salz",
            "Annehmen",
            "Vogel ist drin",
        ],
        "pt-BR" => [
            "/plan peru fresco de 6 kg, já temos, jantar amanhã às 18h, 8 pessoas, forno a 165, sem sal",
            "Aceitar",
            "o peru está no forno",
        ],
        "it-IT" => [
            "/plan tacchino fresco 6 kg, ce l'abbiamo, cena domani alle 18, 8 persone, forno a 165, senza sale",
            "Accetta",
            "il tacchino è in forno",
        ],
        _ => [
            "14 lb fresh turkey, we have it, dinner Thursday 6 pm, 11 people, oven at 325, no salt",
            "Accept",
            "it's in the oven",
        ],
    }
}

/// A bird in the oven since Thursday, 1 pm; it is half past two.
fn cooking(tag: &str) -> Kitchen {
    let [plan, accept, on] = words(tag);
    let mut kitchen = Kitchen::new(RoomKind::Private, tag, Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", accept);
    kitchen.run_to("2027-11-25 13:00");
    kitchen.say("Rosa", on);
    kitchen.run_to("2027-11-25 14:30");
    kitchen
}

fn off(kitchen: &Kitchen) -> (Moment, Moment) {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    (plan.ready_from.unwrap(), plan.ready_to.unwrap())
}

fn setting_f(kitchen: &Kitchen) -> f64 {
    kitchen.scene.room.plan.as_ref().unwrap().wish.setting_c.unwrap() * 1.8 + 32.0
}

#[test]
fn an_oven_that_was_wrong_all_along_moves_the_hour_and_the_dial() {
    let cases = [
        ("en-US", "oven was on 425 this whole time", 425.0),
        ("en-US", "i had the oven at 250 the whole time", 250.0),
        ("en-US", "oven was set to 250 the whole time", 250.0),
        ("es-ES", "el horno estaba a 220 todo el tiempo", 428.0),
        ("fr-FR", "le four était à 120 depuis le début", 248.0),
        ("de-DE", "der Ofen war die ganze Zeit auf 220", 428.0),
        ("pt-BR", "o forno estava a 120 o tempo todo", 248.0),
        ("it-IT", "il forno era a 220 tutto il tempo", 428.0),
    ];
    for (tag, text, set) in cases {
        let mut kitchen = cooking(tag);
        let before = off(&kitchen);
        let said = kitchen.say("Rosa", text);
        let after = off(&kitchen);
        assert_eq!(after.1 < before.1, set > 325.0, "{text}: {said}");
        assert!((setting_f(&kitchen) - set).abs() < 0.5, "{text}: {said}");
        assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty(), "{text} is no reading: {said}");
    }
    let mut kitchen = cooking("en-US");
    let said = kitchen.say("Rosa", "oven was at 250 the whole time, turned it up to 325");
    assert!(said.contains("250 °F ever since") && said.contains("Read the breast now"), "{said}");
    assert!((setting_f(&kitchen) - 325.0).abs() < 0.5, "{said}");
    let before = cooking("en-US");
    kitchen.press("Rosa", "Undo");
    assert_eq!(off(&kitchen), off(&before), "undone, it is as if it had not been said");
}

#[test]
fn time_without_heat_is_no_cooking_and_the_breast_is_to_be_read() {
    let half_hour = chrono::TimeDelta::minutes(30);
    for (tag, text) in [
        ("en-US", "oven has been off for 30 min"),
        ("es-ES", "el horno ha estado apagado 30 min"),
        ("fr-FR", "le four est éteint depuis 30 min"),
        ("de-DE", "der Ofen war 30 Minuten aus"),
        ("pt-BR", "o forno ficou desligado 30 min"),
        ("it-IT", "il forno è stato spento per 30 min"),
    ] {
        let mut kitchen = cooking(tag);
        let before = off(&kitchen);
        let said = kitchen.say("Rosa", text);
        let late = off(&kitchen).1 - before.1 - half_hour;
        assert!(late.abs() < chrono::TimeDelta::minutes(2), "{text}: {said}");
        assert!(said.contains("140 °F") || said.contains("60 °C"), "{text}: {said}");
    }
    for (tag, text) in [
        ("en-US", "i forgot to turn the oven on!"),
        ("es-ES", "no encendí el horno"),
        ("fr-FR", "j'ai oublié d'allumer le four"),
        ("de-DE", "ich hab vergessen den Ofen anzumachen"),
        ("pt-BR", "esqueci de ligar o forno"),
        ("it-IT", "ho dimenticato di accendere il forno"),
    ] {
        let mut kitchen = cooking(tag);
        let before = off(&kitchen);
        let said = kitchen.say("Rosa", text);
        assert!(off(&kitchen).1 - before.1 > half_hour * 2, "{text}: {said}");
    }
}

#[test]
fn raw_for_two_hours_without_heat_is_thrown_away_and_has_no_hour() {
    let mut kitchen = cooking("en-US");
    kitchen.run_to("2027-11-25 15:05");
    let said = kitchen.say("Rosa", "the oven was off the whole time");
    assert!(said.contains("Throw it away") && !said.contains("Off the heat between"), "{said}");
}

#[test]
fn a_fire_that_ran_out_counts_as_cold_since_it_was_last_known() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "10 lb fresh turkey, we have it, dinner Thursday 8 pm, 8 people, smoker at 250, no salt");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 11:00");
    kitchen.say("Rosa", "it's on the smoker");
    kitchen.run_to("2027-11-25 12:00");
    kitchen.say("Rosa", "pit 251");
    kitchen.run_to("2027-11-25 12:40");
    let before = off(&kitchen);
    let said = kitchen.say("Rosa", "smoker ran out of charcoal, its at 200");
    assert!(said.contains("200 °F since 12:00 PM") && said.contains("back to 250 °F"), "{said}");
    assert!(said.contains("Read the breast now"), "{said}");
    assert!(off(&kitchen).1 > before.1, "{said}");
}

#[test]
fn what_asks_or_is_said_of_something_else_moves_nothing() {
    for text in [
        "was the oven off the whole time?",
        "oven is at 300",
        "bird was out of the oven for 30 min",
        "should the oven be at 425 the whole time",
        "oven was at 325 the whole time",
    ] {
        let mut kitchen = cooking("en-US");
        let before = (off(&kitchen), setting_f(&kitchen));
        let said = kitchen.say("Rosa", text);
        assert_eq!((off(&kitchen), setting_f(&kitchen)), before, "{text}: {said}");
    }
}

#[test]
fn turned_up_or_down_without_a_word_of_the_oven_is_its_setting_and_what_it_is_down_to_a_reading() {
    let turned = [
        ("en-US", "turned it up to 375", 375.0),
        ("de-DE", "hab ihn auf 190 hochgedreht", 374.0),
        ("es-ES", "lo he subido a 190", 374.0),
        ("fr-FR", "je l'ai monté à 190", 374.0),
        ("it-IT", "l'ho alzato a 190", 374.0),
        ("pt-BR", "aumentei para 190", 374.0),
    ];
    for (tag, text, to) in turned {
        let mut kitchen = cooking(tag);
        kitchen.say("Rosa", text);
        assert!((setting_f(&kitchen) - to).abs() < 0.6, "{tag}: {}", setting_f(&kitchen));
    }
    let mut kitchen = cooking("en-US");
    let before = setting_f(&kitchen);
    kitchen.say("Rosa", "its down to 300");
    assert_eq!(setting_f(&kitchen), before);
}

#[test]
fn a_bird_far_colder_than_its_heat_makes_it_is_asked_after_once_and_hours_away() {
    let mut kitchen = cooking("en-US");
    kitchen.run_to("2027-11-25 16:30");
    let said = kitchen.say("Rosa", "breast 60");
    assert!(said.contains("far colder than 325 °F"), "{said}");
    let (_, latest) = off(&kitchen);
    assert!(latest > kitchen.local("2027-11-25 18:30"), "{latest}");
    kitchen.run_to("2027-11-25 16:50");
    let said = kitchen.say("Rosa", "breast 68");
    assert!(!said.contains("far colder"), "said once: {said}");
}
