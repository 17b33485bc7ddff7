//! People whose own language is not their group's: what they ask is read and answered in it, and what is for all stays the group's.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{PersonId, RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// A group with a bird planned by Rosa, the speech of whose room is `room`, and Tom's app in `own`.
fn group(room: &str, own: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    kitchen.scene.room.taste.language = Some(room.to_owned());
    kitchen.scene.people.get_mut(&PersonId(2)).unwrap().taste.language = Some(own.to_owned());
    kitchen
}

/// Whom the last thing said in the room is put into words for.
fn read_by(kitchen: &mut Kitchen, text: &str) -> Option<PersonId> {
    let before = kitchen.said.len();
    let what = What::Said { text: text.into(), addressed: false, reply_to: None, edited: false };
    kitchen.hear(Some("Tom"), what);
    let said = kitchen.said.get(before..).unwrap();
    assert!(!said.is_empty(), "{text}: nothing was said");
    said[0].reader
}

#[test]
fn a_question_is_answered_in_the_language_it_came_in() {
    let asked = [
        ("en-US", "how long do leftovers keep in the fridge?"),
        ("de-DE", "Wie lange halten Reste im Kühlschrank?"),
        ("es-ES", "¿cuánto tiempo aguantan las sobras en la nevera?"),
        ("fr-FR", "combien de temps se gardent les restes au frigo ?"),
        ("pt-BR", "quanto tempo duram as sobras na geladeira?"),
        ("it-IT", "quanto durano gli avanzi in frigo?"),
    ];
    for (own, question) in asked {
        for (room, rooms) in asked {
            if room == own {
                continue;
            }
            let mut kitchen = group(room, own);
            assert_eq!(read_by(&mut kitchen, question), Some(PersonId(2)), "{own} in {room}");
            assert_eq!(read_by(&mut kitchen, rooms), None, "{own} speaking {room}");
        }
    }
}

#[test]
fn a_report_counts_in_the_language_it_came_in() {
    for (own, report) in
        [("de-DE", "gekauft"), ("es-ES", "comprado"), ("fr-FR", "achetée"), ("pt-BR", "comprei"), ("it-IT", "comprato")]
    {
        let mut kitchen = group("en-US", own);
        let what = What::Said { text: report.into(), addressed: false, reply_to: None, edited: false };
        kitchen.hear(Some("Tom"), what);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert!(plan.facts.iter().any(|fact| fact.done && fact.step == "buy"), "{own}: {report}");
    }
}
