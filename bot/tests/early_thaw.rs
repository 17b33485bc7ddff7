//! A bird put into cold water hours before its time: what is said, how often the water is called, and that it waits in the fridge.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use chrono_tz::Tz;
use kitchen::Kitchen;

const PLAN: &str =
    "/plan 14 lb frozen turkey, we have it, no salt, oven at 325, thaw in cold water, dinner Thursday 4 pm, 9 people";

fn planned(locale: &str, plan: &str, accept: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, locale, Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", accept);
    kitchen
}

fn on(kitchen: &Kitchen) -> String {
    let job = kitchen.scene.room.plan.as_ref().unwrap().job(Step::On, 0).unwrap().at;
    job.with_timezone::<Tz>(&Chicago).format("%d %H:%M").to_string()
}

#[test]
fn water_the_day_before_is_warned_of_and_the_bird_waits_in_the_fridge() {
    for words in ["started the water thaw", "its thawing in the sink", "bird is in the water"] {
        let mut kitchen = planned("en-US", PLAN, "Accept");
        let before = on(&kitchen);
        kitchen.run_to("2027-11-24 12:00");
        let said = kitchen.say("Rosa", words);
        assert!(said.contains("That’s early") && said.contains("thawed by Wed 8:00 PM"), "{words}: {said}");
        assert!(said.contains("into the fridge at 40 °F or less") && said.contains("water from Thu"), "{said}");
        assert_eq!(on(&kitchen), before, "{words}");
        let called = kitchen.run_to("2027-11-24 20:00");
        assert!(called.contains("(15 of 15)") && !called.contains("of 16"), "{called}");
        assert!(called.contains("out of the water and into the fridge"), "{called}");
        let later = kitchen.run_to("2027-11-25 10:10");
        assert!(!later.contains("thawing water (") && !later.contains("out of the water"), "{later}");
        assert!(later.contains("Bird out of the fridge"), "{later}");
    }
}

#[test]
fn stopped_at_once_it_is_called_for_again_at_its_hour() {
    let mut kitchen = planned("en-US", PLAN, "Accept");
    kitchen.run_to("2027-11-24 12:00");
    kitchen.say("Rosa", "started the water thaw");
    kitchen.press("Rosa", "Undo");
    let later = kitchen.run_to("2027-11-25 03:00");
    assert!(later.contains("under cold water"), "{later}");
    // In time nothing is said of it.
    let said = kitchen.say("Rosa", "its in the water");
    assert!(!said.contains("early") && !said.contains("thawed"), "{said}");
}

#[test]
fn told_when_it_is_long_thawed_the_water_is_asked_about() {
    let mut kitchen = planned("en-US", PLAN, "Accept");
    kitchen.run_to("2027-11-24 23:00");
    let said = kitchen.say("Rosa", "started thawing it in the water 10 hours ago");
    assert!(said.contains("thawed since") && said.contains("throw the bird away"), "{said}");
}

#[test]
fn the_same_is_said_in_every_language() {
    let told = [
        (
            "de-DE",
            "/plan 6,5 kg gefrorener Truthahn, ist da, kein Salz, Ofen 165 Grad, in kaltem Wasser auftauen, Donnerstag 16 Uhr, 9 Personen",
            "Annehmen",
            "taut im kalten Wasser",
            "Das ist früh",
        ),
        (
            "es-ES",
            "/plan pavo de 6,5 kg congelado, ya lo tengo, sin sal, horno a 165, descongelar en agua fría, jueves 16:00, 9 personas",
            "Aceptar",
            "está descongelándose en agua",
            "Es pronto",
        ),
        (
            "fr-FR",
            "/plan dinde 6,5 kg congelée, on l'a déjà, sans sel, four à 165, décongeler dans l'eau froide, jeudi 16 h, 9 personnes",
            "Accepter",
            "on l'a mise dans l'eau froide",
            "C’est tôt",
        ),
        (
            "it-IT",
            "/plan tacchino 6,5 kg congelato, ce l'abbiamo, senza sale, forno a 165, scongelare in acqua fredda, giovedì ore 16, 9 persone",
            "Accetta",
            "si sta scongelando in acqua",
            "È presto",
        ),
        (
            "pt-BR",
            "/plan peru 6,5 kg congelado, já temos, sem sal, forno a 165, descongelar em água fria, quinta 16h, 9 pessoas",
            "Aceitar",
            "está descongelando na água",
            "É cedo",
        ),
    ];
    for (locale, plan, accept, words, early) in told {
        let mut kitchen = planned(locale, plan, accept);
        kitchen.run_to("2027-11-24 12:00");
        let said = kitchen.say("Rosa", words);
        assert!(said.contains(early), "{locale}: {said}");
    }
}

/// "Elle décongèle" is under way: written without its accents it is "décongelé", and is not taken for that.
#[test]
fn what_is_thawing_in_water_is_not_taken_for_thawed() {
    let french = "/plan dinde 6,5 kg congelée, on l'a déjà, sans sel, four à 165, décongeler dans l'eau froide, jeudi 16 h, 9 personnes";
    let spanish = "/plan pavo de 6,5 kg congelado, ya lo tengo, sin sal, horno a 165, descongelar en agua fría, jueves 16:00, 9 personas";
    for (locale, plan, accept, words, early, thawed) in [
        ("fr-FR", french, "Accepter", "elle décongèle dans l'eau", "C’est tôt", "pas de glace à l’intérieur"),
        (
            "fr-CA",
            french,
            "Accepter",
            "la dinde décongèle dans l'eau froide",
            "C’est tôt",
            "pas de glace à l’intérieur",
        ),
        ("fr-FR", french, "Accepter", "je la décongèle dans l'eau", "C’est tôt", "pas de glace à l’intérieur"),
        ("es-MX", spanish, "Aceptar", "ya la estoy descongelando en agua", "Es pronto", "sin hielo en la cavidad"),
        ("es-MX", spanish, "Aceptar", "ya lo tengo en agua fría", "Es pronto", "sin hielo en la cavidad"),
    ] {
        let mut kitchen = planned(locale, plan, accept);
        kitchen.run_to("2027-11-24 12:00");
        let said = kitchen.say("Rosa", words);
        assert!(said.contains(early) && !said.contains(thawed), "{locale}, {words}: {said}");
    }
    let mut kitchen = planned("fr-FR", french, "Accepter");
    kitchen.run_to("2027-11-24 12:00");
    let said = kitchen.say("Rosa", "elle est décongelée");
    assert!(said.contains("pas de glace à l’intérieur"), "{said}");
}
