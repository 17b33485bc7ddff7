//! The day a feast is meant by: with an ordinal, its eve, the day after it, in every language.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::reading::{Ground, read_wish};
use chrono::{TimeZone, Utc};
use chrono_tz::Europe::Berlin;

/// `12-25 18:00`, told on 1 November 2027; and whether anything was left unclear.
fn dinner(tag: &str, text: &str) -> (String, bool) {
    let now = Berlin.with_ymd_and_hms(2027, 11, 1, 9, 0, 0).unwrap().with_timezone(&Utc);
    let (wish, problems) = read_wish(text, &Ground::new(tag, tag != "en-US", Berlin, now));
    let dinner = wish.dinner.map(|at| at.with_timezone(&Berlin).format("%m-%d %H:%M").to_string());
    (dinner.unwrap_or_default(), problems.is_empty())
}

#[test]
fn a_feast_with_an_ordinal_an_eve_or_a_day_after_is_the_day_it_names() {
    let table = [
        ("de-DE", "gans 5 kg frisch, essen am 1. weihnachtstag um 18.30 uhr", "12-25 18:30"),
        ("de-DE", "gans 5 kg frisch, essen am 1.weihnachtstag 18 uhr", "12-25 18:00"),
        ("de-DE", "gans 5 kg frisch, essen am 2. weihnachtstag um 13 uhr", "12-26 13:00"),
        ("de-DE", "gans 5 kg frisch, essen 2. weihnachtsfeiertag 13 uhr", "12-26 13:00"),
        ("de-DE", "gans 5 kg frisch, essen am 2ten weihnachtstag 13 uhr", "12-26 13:00"),
        ("de-DE", "gans 5 kg frisch, essen am zweiten weihnachtstag 13 uhr", "12-26 13:00"),
        ("de-DE", "der erste weihnachtstag 18 uhr, gans 5 kg frisch", "12-25 18:00"),
        ("de-DE", "gans 5 kg frisch, essen heiligabend 18 uhr", "12-24 18:00"),
        ("de-DE", "gans 5 kg frisch, essen am heiligen abend um 19 uhr", "12-24 19:00"),
        ("de-AT", "gans 5 kg frisch, essen am christtag um 12 uhr", "12-25 12:00"),
        ("de-DE", "gans 5 kg frisch, essen ostermontag 13 uhr", "04-17 13:00"),
        ("de-DE", "gans 5 kg frisch, essen martinstag 18 uhr", "11-11 18:00"),
        ("de-DE", "gans 5 kg frisch, essen am tag nach weihnachten 18 uhr", "12-26 18:00"),
        ("en-US", "12 lb fresh turkey, dinner christmas eve 7 pm", "12-24 19:00"),
        ("en-US", "12 lb fresh turkey, dinner on the eve of christmas 7 pm", "12-24 19:00"),
        ("en-US", "12 lb fresh turkey, dinner the day after thanksgiving 5 pm", "11-26 17:00"),
        ("en-US", "12 lb fresh turkey, dinner day after thanksgiving at 5 pm", "11-26 17:00"),
        ("en-GB", "5 kg fresh turkey, dinner boxing day 2 pm", "12-26 14:00"),
        ("en-GB", "5 kg fresh turkey, dinner on the 2nd day of christmas 2 pm", "12-26 14:00"),
        ("en-GB", "5 kg fresh turkey, dinner easter monday 2 pm", "04-17 14:00"),
        ("en-US", "12 lb fresh turkey, dinner new years eve 7 pm", "12-31 19:00"),
        ("es-ES", "pavo fresco 5 kg, cena víspera de navidad 22:00", "12-24 22:00"),
        ("es-ES", "pavo fresco 5 kg, cena en la víspera de navidad a las 22:00", "12-24 22:00"),
        ("es-ES", "pavo fresco 5 kg, cena de nochebuena 22:00", "12-24 22:00"),
        ("es-ES", "pavo fresco 5 kg, comida el día después de navidad 14:00", "12-26 14:00"),
        ("es-ES", "pavo fresco 5 kg, comida el día de reyes a las 14:00", "01-06 14:00"),
        ("fr-FR", "dinde fraîche 5 kg, dîner la veille de Noël 20h", "12-24 20:00"),
        ("fr-FR", "dinde fraîche 5 kg, réveillon 20h30", "12-24 20:30"),
        ("fr-FR", "dinde fraîche 5 kg, dîner du réveillon de noël à 20h30", "12-24 20:30"),
        ("fr-FR", "dinde fraîche 5 kg, déjeuner le 2e jour de noël 13h", "12-26 13:00"),
        ("fr-FR", "dinde fraîche 5 kg, déjeuner le lendemain de noël 13h", "12-26 13:00"),
        ("fr-FR", "dinde fraîche 5 kg, déjeuner lundi de pâques 13h", "04-17 13:00"),
        ("fr-FR", "dinde fraîche 5 kg, dîner l'avant-veille de noël 20h", "12-23 20:00"),
        ("it-IT", "tacchino fresco 5 kg, cena della vigilia ore 20", "12-24 20:00"),
        ("it-IT", "tacchino fresco 5 kg, cena la vigilia di natale alle 20", "12-24 20:00"),
        ("it-IT", "tacchino fresco 5 kg, cena antivigilia alle 20", "12-23 20:00"),
        ("it-IT", "tacchino fresco 5 kg, pranzo di santo stefano alle 13", "12-26 13:00"),
        ("it-IT", "tacchino fresco 5 kg, pranzo a pasquetta alle 13", "04-17 13:00"),
        ("pt-BR", "peru fresco 5 kg, ceia na vespera de natal 22:30", "12-24 22:30"),
        ("pt-BR", "peru fresco 5 kg, ceia na véspera do natal às 22h30", "12-24 22:30"),
        ("pt-BR", "peru fresco 5 kg, ceia de natal 22:30", "12-24 22:30"),
        ("pt-BR", "peru fresco 5 kg, almoço no dia de natal 13h", "12-25 13:00"),
        ("pt-BR", "peru fresco 5 kg, almoço um dia depois do natal às 13h", "12-26 13:00"),
    ];
    let wrong: Vec<String> = table
        .iter()
        .filter_map(|(tag, text, wanted)| {
            let (got, clear) = dinner(tag, text);
            (got != *wanted || !clear).then(|| format!("{tag}: {text}: {got}, wanted {wanted}, clear {clear}"))
        })
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
