//! How hot an oven may be, how long by weight, and which number is the oven's: asked as people ask.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::ask::{Asker, Printed, answer_line, read_question};
use carvetime::words::{Reader, Voice};
use chrono::Utc;
use chrono_tz::Tz;

fn kind(tag: &str, text: &str) -> &'static str {
    let reader = Reader::new(tag, Tz::UTC, Utc::now());
    read_question(text, &Asker::of_reader(&reader)).unwrap_or_else(|e| panic!("{tag}: {text}: {e:?}")).kind()
}

fn answer(tag: &str, text: &str) -> String {
    match answer_line(text, &Reader::new(tag, Tz::UTC, Utc::now()), &Voice::new(), false) {
        Printed::Answer(said) => said,
        Printed::NotUnderstood(said) => panic!("{text}: {said}"),
    }
}

#[test]
fn an_oven_too_cool_for_poultry_is_never_safe() {
    for (tag, text, no) in [
        ("es-ES", "puedo asarlo de noche a 90 grados", "No:"),
        ("es-ES", "se puede hacer a baja temperatura a 90 grados?", "No:"),
        ("es-ES", "¿puedo asarlo de noche a 90 °C?", "No:"),
        ("es-ES", "lo puedo asar a 100 grados?", "No:"),
        ("fr-FR", "puis-je la rôtir la nuit à 90 degrés", "Non"),
        ("fr-FR", "on peut la cuire à basse température à 90 degrés ?", "Non"),
        ("de-DE", "kann ich sie nachts bei 90 Grad braten", "Nein:"),
        ("de-DE", "kann man den Truthahn bei 80 Grad Niedertemperatur garen?", "Nein:"),
        ("it-IT", "posso cuocerlo di notte a 90 gradi", "No:"),
        ("it-IT", "si può cuocere a bassa temperatura a 90 gradi?", "No:"),
        ("pt-BR", "posso assar de noite a 90 graus", "Não:"),
        ("en-GB", "can I slow cook it at 90 C", "No:"),
        ("en-US", "can I roast it overnight at 200 F", "No:"),
    ] {
        let said = answer(tag, text);
        assert!(said.starts_with(no) && (said.contains("163") || said.contains("325")), "{tag}: {text}: {said}");
    }
}

#[test]
fn what_the_meat_reads_is_still_the_meat_s() {
    for (tag, text) in [
        ("en-US", "is it safe to cook it to 165 F"),
        ("en-US", "is 158 °F for 2 minutes safe"),
        ("fr-FR", "elle est cuite à 80 degrés ?"),
        ("es-ES", "¿es seguro a 74 °C?"),
    ] {
        assert_eq!(kind(tag, text), "lethality", "{tag}: {text}");
    }
}

#[test]
fn an_oven_hot_enough_is_told_so() {
    for (tag, text, yes) in [
        ("es-ES", "subo el horno a 200?", "Sí, 200 °C"),
        ("fr-FR", "je monte le four à 200 ?", "Oui, 200 °C"),
        ("de-DE", "kann ich den Ofen auf 200 hochdrehen?", "Ja, 200 °C"),
        ("it-IT", "alzo il forno a 200?", "Sì, 200 °C"),
        ("pt-BR", "posso subir o forno para 200?", "Sim, 200 °C"),
        ("en-US", "can i turn the oven up to 375", "Yes, 375 °F"),
    ] {
        let said = answer(tag, text);
        assert!(said.starts_with(yes), "{tag}: {text}: {said}");
    }
}

#[test]
fn time_by_the_kilo_asks_for_the_weight() {
    for (tag, text) in [
        ("fr-FR", "combien de temps au kilo a 180"),
        ("fr-FR", "combien de minutes par kilo à 200 degrés"),
        ("es-ES", "cuantos minutos por kilo a 180"),
        ("de-DE", "wie lange pro Kilo bei 180 Grad"),
        ("it-IT", "quanto tempo al chilo a 180"),
        ("pt-BR", "quanto tempo por quilo a 180"),
        ("en-US", "how long per pound at 350"),
    ] {
        assert_eq!(kind(tag, text), "roast-time", "{tag}: {text}");
    }
}

#[test]
fn what_no_oven_in_celsius_goes_to_is_fahrenheit() {
    for (tag, text) in [
        ("fr-CA", "combien de temps pour 12 lb a 350"),
        ("fr-CA", "une dinde de 15 livres à 350"),
        ("es-MX", "cuantas horas para un pavo de 12 libras a 350"),
    ] {
        let said = answer(tag, text);
        assert!(said.contains("177 °C"), "{tag}: {text}: {said}");
    }
    assert!(answer("fr-FR", "combien de temps pour une dinde de 5 kg à 180").contains("180 °C"));
}

#[test]
fn coarse_salt_for_a_weight_is_for_a_bird_of_that_weight() {
    for (tag, text, grams) in [
        ("fr-FR", "sel pour 4,5 kg en gros sel", "17 g"),
        ("fr-FR", "gros sel de Guérande pour 4 kg", "16 g"),
        ("es-ES", "sal gorda para 5 kg", "19 g"),
        ("de-DE", "grobes Salz für 5 kg", "19 g"),
        ("it-IT", "sale grosso per 5 kg", "19 g"),
        ("pt-BR", "sal grosso para 5 kg", "19 g"),
        ("en-US", "coarse sea salt for 12 lb", "21 g"),
    ] {
        let said = answer(tag, text);
        assert!(said.contains(grams), "{tag}: {text}: {said}");
    }
    assert_eq!(kind("en-US", "1 lb table salt in cups"), "salt-convert");
    assert_eq!(kind("fr-FR", "500 g de gros sel en tasses"), "salt-convert");
}

#[test]
fn where_the_authority_asks_for_more_than_the_plan_both_are_told() {
    for (tag, text) in [("fr-CA", "a combien de degres cest cuit"), ("fr-CA", "jus rose c tu correct?")] {
        let said = answer(tag, text);
        assert!(said.contains("74 °C") && said.contains("82 °C"), "{text}: {said}");
    }
}
