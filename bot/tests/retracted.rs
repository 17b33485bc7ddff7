//! A change taken back in words, a plan ended by mistake, and what a bare yes is an answer to.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, To, What};
use chrono::{DateTime, TimeDelta, Utc};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn kitchen(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Dana", "/plan 14 lb fresh turkey, dinner Thursday 4 pm, 9 people, oven at 325");
    kitchen.press("Dana", "Accept");
    kitchen.say("Mike", "/take carve");
    for person in kitchen.scene.people.values_mut() {
        person.reachable = true;
    }
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn dinner(kitchen: &Kitchen) -> DateTime<Utc> {
    kitchen.scene.room.plan.as_ref().unwrap().wish.dinner.unwrap()
}

fn later(kitchen: &mut Kitchen, minutes: i64) {
    kitchen.now += TimeDelta::minutes(minutes);
}

/// Words in reply to a message of the bot's.
fn reply(kitchen: &mut Kitchen, who: &str, text: &str, key: &str) -> String {
    let (text, reply_to) = (text.to_owned(), Some(key.to_owned()));
    kitchen.hear(Some(who), What::Said { text, addressed: true, reply_to, edited: false })
}

#[test]
fn a_yes_to_something_else_cancels_no_dinner() {
    let mut kitchen = kitchen("en-US");
    let ended = |kitchen: &Kitchen| kitchen.scene.room.plan.is_none();
    for between in [&["Josie: mom do we have wine"][..], &["Josie: is there wine?"], &["Dana: hmm"]] {
        kitchen.among("Dana", "cancel dinner");
        for line in between {
            let (who, text) = line.split_once(": ").unwrap();
            kitchen.among(who, text);
        }
        kitchen.among("Dana", "yes");
        assert!(!ended(&kitchen), "{between:?}");
    }
    kitchen.among("Dana", "cancel dinner");
    later(&mut kitchen, 6);
    kitchen.among("Dana", "yes");
    assert!(!ended(&kitchen), "six minutes are long in a family");
    reply(&mut kitchen, "Dana", "yes", "stop");
    assert!(ended(&kitchen), "a reply is to what it replies to");
}

#[test]
fn a_yes_as_the_next_word_still_cancels() {
    let mut kitchen = kitchen("en-US");
    kitchen.among("Dana", "cancel dinner");
    kitchen.among("Josie", "oh no");
    kitchen.among("Dana", "yes");
    assert!(kitchen.scene.room.plan.is_none());
}

#[test]
fn a_yes_to_something_else_moves_no_dinner() {
    let mut kitchen = kitchen("en-US");
    let four = dinner(&kitchen);
    assert!(kitchen.among("Josie", "can we move dinner to 5?") > 0);
    kitchen.among("Mike", "did you feed the dog");
    kitchen.among("Dana", "yes");
    assert_eq!(dinner(&kitchen), four);
    reply(&mut kitchen, "Dana", "yes", "late");
    assert_eq!(dinner(&kitchen), four + TimeDelta::hours(1), "in reply to it");
}

#[test]
fn a_yes_to_something_else_changes_no_plan() {
    let mut kitchen = kitchen("en-US");
    let adults = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().wish.adults;
    assert!(kitchen.among("Mike", "we are 11 people") > 0);
    kitchen.among("Josie", "mom can i have the last cookie?");
    kitchen.among("Dana", "yes");
    assert_eq!(adults(&kitchen), Some(9));
    assert!(kitchen.among("Mike", "we are 11 people") > 0);
    kitchen.among("Dana", "yes");
    assert_eq!(adults(&kitchen), Some(11));
}

#[test]
fn a_dinner_ended_by_mistake_comes_back_whole_in_any_language() {
    let said = [
        ("en-US", "wait no, it's back on"),
        ("en-US", "undo"),
        ("en-US", "dinner's back on"),
        ("es-ES", "espera no, sigue en pie"),
        ("fr-FR", "ah non, ça tient"),
        ("de-DE", "findet doch statt"),
        ("pt-BR", "voltou"),
        ("it-IT", "no aspetta, si fa"),
    ];
    for (language, words) in said {
        let mut kitchen = kitchen(language);
        let before = kitchen.scene.room.plan.clone().unwrap();
        kitchen.say("Dana", "/stop");
        kitchen.among("Dana", if language == "en-US" { "yes" } else { "ok" });
        if kitchen.scene.room.plan.is_some() {
            let yes = kitchen.said.iter().rev().flat_map(|say| say.buttons.iter().flatten()).next().unwrap().clone();
            kitchen.hear(Some("Dana"), What::Pressed { press: "p".into(), data: yes.data, on: Some("stop".into()) });
        }
        assert!(kitchen.scene.room.plan.is_none(), "{language}");
        let told = |kitchen: &Kitchen, id: &str| {
            kitchen.said.iter().filter(|say| matches!(say.to, To::Person(_)) && say.text[0].id == id).count()
        };
        assert_eq!(told(&kitchen, "room-stopped-told"), 1, "{language}: who carves is told, once");
        later(&mut kitchen, 20);
        assert_eq!(kitchen.among("Josie", words), 0, "{language}: not for everyone to say");
        assert!(kitchen.among("Dana", words) > 0, "{language}: {words}");
        let after = kitchen.scene.room.plan.clone().unwrap();
        assert_eq!((after.wish, after.jobs.len()), (before.wish, before.jobs.len()), "{language}");
        assert_eq!(told(&kitchen, "room-back-again"), 1, "{language}");
    }
}

#[test]
fn after_an_hour_an_ended_dinner_is_gone() {
    let mut kitchen = kitchen("en-US");
    let end = |kitchen: &mut Kitchen| {
        kitchen.say("Dana", "/stop");
        kitchen.press("Dana", "Yes");
    };
    end(&mut kitchen);
    kitchen.say("Dana", "/undo");
    assert!(kitchen.scene.room.plan.is_some(), "by command");
    end(&mut kitchen);
    later(&mut kitchen, 61);
    kitchen.say("Dana", "/undo");
    assert!(kitchen.scene.room.plan.is_none());
    assert!(kitchen.scene.room.over.is_none(), "nor is it kept");
}

#[test]
fn who_made_a_change_takes_it_back_in_words() {
    let strong = [
        ("en-US", "undo"),
        ("en-US", "oh wait, undo that"),
        ("en-US", "take that back"),
        ("en-US", "never mind"),
        ("en-US", "wait no"),
        ("en-US", "oops no"),
        ("es-ES", "espera no"),
        ("fr-FR", "oups, annule ça"),
        ("de-DE", "warte nein, mach das rückgängig"),
        ("pt-BR", "ops, desfaz isso"),
        ("it-IT", "no aspetta, torna come prima"),
    ];
    for (language, words) in strong {
        let mut kitchen = kitchen(language);
        let four = dinner(&kitchen);
        kitchen.say("Dana", "/move 5 pm");
        assert_ne!(dinner(&kitchen), four);
        kitchen.among("Mike", words);
        assert_ne!(dinner(&kitchen), four, "{language}: only who made it");
        assert!(kitchen.among("Dana", words) > 0, "{language}: {words}");
        assert_eq!(dinner(&kitchen), four, "{language}: {words}");
    }
}

#[test]
fn later_only_plain_words_undo_and_then_none() {
    let mut kitchen = kitchen("en-US");
    let four = dinner(&kitchen);
    kitchen.say("Dana", "/move 5 pm");
    kitchen.among("Dana", "josie are you up");
    for talk in ["never mind", "wait no", "oops", "no", "hold on", "undo the zipper", "take that back to the store"] {
        assert_eq!(kitchen.among("Dana", talk), 0, "{talk}");
    }
    assert_ne!(dinner(&kitchen), four);
    kitchen.among("Dana", "undo that");
    assert_eq!(dinner(&kitchen), four);
    kitchen.say("Dana", "/move 5 pm");
    later(&mut kitchen, 11);
    assert_eq!(kitchen.among("Dana", "undo that"), 0);
    assert_ne!(dinner(&kitchen), four);
}

#[test]
fn a_no_closes_what_is_open() {
    let said = [
        ("en-US", "no leave it"),
        ("en-US", "nope"),
        ("en-US", "actually never mind"),
        ("en-US", "nah, keep it"),
        ("es-ES", "no, déjalo así"),
        ("fr-FR", "non, laisse"),
        ("de-DE", "nein, lass es"),
        ("pt-BR", "não, deixa assim"),
        ("it-IT", "no, lascia così"),
    ];
    for (language, no) in said {
        let mut kitchen = kitchen("en-US");
        let four = dinner(&kitchen);
        for (who, asked) in [("Mike", "can we move dinner to 5?"), ("Mike", "we are 11 people")] {
            kitchen.scene.room.taste.language = Some("en-US".into());
            assert!(kitchen.among(who, asked) > 0, "{asked}");
            kitchen.scene.room.taste.language = Some(language.into());
            assert_eq!(kitchen.among("Mike", no), 0, "{language}: {no}: not theirs to say");
            assert!(kitchen.among("Dana", no) > 0, "{language}: {no} to {asked}");
            let last = kitchen.said.last().unwrap();
            assert!(last.buttons.is_empty(), "{language}: {no}");
            assert_eq!(kitchen.among("Dana", "ok"), 0, "{language}: it has been answered");
        }
        let wish = &kitchen.scene.room.plan.as_ref().unwrap().wish;
        assert_eq!((wish.dinner, wish.adults), (Some(four), Some(9)), "{language}");
    }
}
