//! "That's the score lol", "not our bird", "I meant the pit": a number that was heard as a reading is taken back by whoever told it or made
//! the plan, and asked about where somebody else says so.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Lexicon, Misread, read_misread};
use carvetime::room::{RoomKind, What};
use kitchen::{Kitchen, over_heat};

fn aside(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn readings(kitchen: &Kitchen) -> usize {
    kitchen.scene.room.plan.as_ref().unwrap().readings.len()
}

#[test]
fn who_told_the_number_takes_it_back_in_words() {
    for (room, told, back) in [
        ("en-US", "breast 150 thigh 160", "that's the score lol"),
        ("en-US", "breast 150 thigh 160", "no thats the score"),
        ("en-US", "breast 150 thigh 160", "not our bird"),
        ("en-US", "breast 150 thigh 160", "ours is fine"),
        ("en-US", "breast 150", "oops, wrong number"),
        ("de-DE", "Brust 65 Keule 70", "das war der Spielstand"),
        ("de-DE", "Brust 65 Keule 70", "nein, das ist nicht unsere"),
        ("es-ES", "pechuga 65 muslo 70", "es el marcador jaja"),
        ("es-ES", "pechuga 65 muslo 70", "no es el nuestro"),
        ("fr-FR", "poitrine 65 cuisse 70", "c’est le score mdr"),
        ("fr-FR", "poitrine 65 cuisse 70", "mauvais chiffre"),
        ("it-IT", "petto 65 coscia 70", "era il punteggio"),
        ("it-IT", "petto 65 coscia 70", "numero sbagliato"),
        ("pt-BR", "peito 65 coxa 70", "era o placar kkk"),
        ("pt-BR", "peito 65 coxa 70", "número errado"),
    ] {
        for kind in [RoomKind::Group, RoomKind::Private] {
            let who = if kind == RoomKind::Group { "Tom" } else { "Ana" };
            let mut kitchen = over_heat(kind, room);
            aside_or_say(&mut kitchen, who, told);
            assert_eq!(readings(&kitchen), 1, "{room}: {told}");
            let said = aside_or_say(&mut kitchen, who, back);
            assert_eq!(readings(&kitchen), 0, "{room}: {back}: {said}");
            assert!(!said.is_empty(), "{room}: {back}: it is said");
        }
    }
}

fn aside_or_say(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    match kitchen.scene.room.kind {
        RoomKind::Group => aside(kitchen, who, text),
        RoomKind::Private => kitchen.say(who, text),
    }
}

#[test]
fn the_host_takes_it_back_and_anybody_else_is_asked() {
    let mut kitchen = over_heat(RoomKind::Group, "en-US");
    aside(&mut kitchen, "Tom", "breast 150 thigh 160");
    let said = aside(&mut kitchen, "Jake", "not our bird");
    assert!(said.contains("Take breast 150 °F and thigh 160 °F back?") && said.contains("[Undo]"), "{said}");
    assert_eq!(readings(&kitchen), 1);
    kitchen.press("Tom", "Undo");
    assert_eq!(readings(&kitchen), 0);
    aside(&mut kitchen, "Tom", "breast 150 thigh 160");
    aside(&mut kitchen, "Ana", "not our bird");
    assert_eq!(readings(&kitchen), 0, "it is her dinner");
}

#[test]
fn the_one_number_was_the_pits() {
    for (room, told, back) in [
        ("en-US", "breast 150", "i meant the oven"),
        ("de-DE", "Brust 65", "ich meinte den Ofen"),
        ("es-ES", "pechuga 65", "era el horno"),
        ("fr-FR", "poitrine 65", "c’était le four"),
        ("it-IT", "petto 65", "era il forno"),
        ("pt-BR", "peito 65", "era o forno"),
    ] {
        let mut kitchen = over_heat(RoomKind::Group, room);
        aside(&mut kitchen, "Tom", told);
        aside(&mut kitchen, "Tom", back);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert!(plan.readings.iter().all(|reading| reading.breast_c.is_none()), "{room}: {back}");
        let air = plan.readings.iter().chain(plan.doubted.iter().map(|doubted| &doubted.given));
        assert!(air.into_iter().any(|reading| reading.pit_c.is_some()), "{room}: {back}: counted or asked about");
    }
}

#[test]
fn what_was_asked_about_is_dropped() {
    let mut kitchen = over_heat(RoomKind::Private, "en-US");
    kitchen.say("Ana", "21-17");
    assert!(!kitchen.scene.room.plan.as_ref().unwrap().doubted.is_empty());
    kitchen.say("Ana", "that's the score lol");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().doubted.is_empty());
}

#[test]
fn later_or_of_nothing_told_the_same_words_change_nothing() {
    let mut kitchen = over_heat(RoomKind::Group, "en-US");
    assert_eq!(kitchen.among("Tom", "not our bird"), 0, "no number was told");
    assert_eq!(kitchen.among("Tom", "that's the score"), 0);
    aside(&mut kitchen, "Tom", "breast 150 thigh 160");
    kitchen.run_to("2027-11-25 15:50");
    assert_eq!(kitchen.among("Tom", "ours is fine"), 0, "long ago");
    assert_eq!(readings(&kitchen), 1);
    let english = Lexicon::of("en");
    for text in
        ["the score is 21 to 17", "what's the score?", "wrong number of chairs", "he meant the pit crew", "ours is in"]
    {
        assert_eq!(read_misread(text, english), None, "{text}");
    }
    assert_eq!(read_misread("sorry, I meant the pit", english), Some(Misread::Air));
}
