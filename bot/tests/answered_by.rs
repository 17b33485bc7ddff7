//! A question asked of the group while somebody plans: anyone's plain answer counts, and the plan stays its owner's.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::Question;
use carvetime::room::{PersonId, RoomKind};
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

const JONAS: PersonId = PersonId(1);

fn asked(kitchen: &Kitchen) -> Option<Question> {
    kitchen.scene.room.drafts.get(&JONAS).unwrap().asked
}

fn begun(tag: &str, first: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, Berlin, "2027-12-18 18:30");
    kitchen.among("Jonas", first);
    assert_eq!(asked(&kitchen), Some(Question::DinnerHour), "{tag}: {first}");
    kitchen
}

#[test]
fn whoever_answers_is_heard_and_whoever_planned_accepts() {
    for (tag, first, hour) in [
        ("de-DE", "wir machen weihnachten pute, 10 leute", "18 uhr"),
        ("en-GB", "let's do a turkey for christmas, 10 people", "6pm"),
        ("es-ES", "para navidad hacemos pavo, somos 10", "a las 18:00"),
        ("fr-FR", "à noël on fait une dinde, 10 personnes", "à 18h"),
        ("it-IT", "a natale facciamo il tacchino, siamo in 10", "alle 18"),
        ("pt-BR", "no natal vamos fazer peru, 10 pessoas", "às 18h"),
    ] {
        let mut kitchen = begun(tag, first);
        assert!(kitchen.among("Sabine", hour) > 0, "{tag}: {hour}");
        let draft = kitchen.scene.room.drafts.get(&JONAS).unwrap();
        let dinner = draft.wish.dinner.unwrap().with_timezone(&Berlin);
        assert_eq!(dinner.format("%m-%d %H:%M").to_string(), "12-25 18:00", "{tag}");
        assert_eq!(kitchen.scene.room.drafts.len(), 1, "{tag}: one plan");
    }
}

#[test]
fn each_answer_may_come_from_another() {
    let mut kitchen = begun("de-DE", "wir machen weihnachten pute, 10 leute");
    kitchen.among("Sabine", "am 25. um 18 uhr bei oma hilde");
    assert_eq!(asked(&kitchen), Some(Question::Condition));
    kitchen.among("Mia", "gefroren");
    kitchen.among("Sabine", "umluft");
    assert_eq!(asked(&kitchen), Some(Question::Drive));
    kitchen.among("Lukas", "15 min");
    let draft = kitchen.scene.room.drafts.get(&JONAS).unwrap();
    assert_eq!((draft.asked, draft.wish.drive_min), (None, Some(15)), "{draft:?}");
    assert!(kitchen.scene.room.plan.is_none(), "nobody has accepted it");
    kitchen.press("Jonas", "Annehmen");
    assert!(kitchen.scene.room.plan.is_some());
}

#[test]
fn what_answers_nothing_is_left_alone() {
    for words in ["ich komm um 18 uhr von der arbeit heim", "mathe 4", "fussball 2:1", "3 kilo kartoffeln", "18 uhr?"] {
        let mut kitchen = begun("de-DE", "wir machen weihnachten pute, 10 leute");
        let before = kitchen.scene.room.drafts.clone();
        kitchen.among("Sabine", words);
        assert_eq!(kitchen.scene.room.drafts, before, "{words}");
    }
    // Long after, an hour is of something else.
    let mut kitchen = begun("de-DE", "wir machen weihnachten pute, 10 leute");
    kitchen.run_to("2027-12-19 09:00");
    assert_eq!(kitchen.among("Sabine", "18 uhr"), 0);
}
