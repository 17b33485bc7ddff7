//! A helper's private chat is about the dinner they share in: readings, the dead oven, what was done, and how to do it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, To, What, is_answered};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn cooking() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Dana", "/plan 14 lb fresh turkey, dinner Thursday 4 pm, 9 people, oven at 325");
    kitchen.press("Dana", "Accept");
    kitchen.say("Josie", "/board");
    kitchen.run_to("2027-11-25 10:36");
    kitchen.among("Dana", "bird's in");
    kitchen.run_to("2027-11-25 14:00");
    kitchen
}

fn leads_there(kitchen: &Kitchen, text: &str) -> bool {
    let josie = kitchen.scene.people.values().find(|person| person.name == "Josie").unwrap();
    let said = carvetime::room::What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
    is_answered(&kitchen.scene.room, josie, &said, kitchen.now)
}

#[test]
fn what_she_reads_does_and_asks_is_of_the_bird_they_share() {
    let kitchen = cooking();
    for text in [
        "breast 166 thigh 176 wing 170",
        "took it out",
        "the oven wont turn on",
        "can we eat it yet?",
        "how do i salt it?",
        "its still frozen inside",
    ] {
        assert!(leads_there(&kitchen, text), "{text}");
    }
    // Her own affairs stay hers.
    for text in ["how much salt for a 4 lb chicken", "i have a stomach bug", "i use coarse salt", "lol", "166"] {
        assert!(!leads_there(&kitchen, text), "{text}");
    }
}

#[test]
fn what_one_has_begins_no_plan() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Josie", "i have a stomach bug");
    assert!(kitchen.scene.room.drafts.is_empty());
    kitchen.say("Josie", "i have a 14 lb turkey");
    assert!(!kitchen.scene.room.drafts.is_empty());
}

#[test]
fn a_bird_sold_as_fresh_may_be_icy_days_before() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Dana", "/plan 14 lb fresh turkey, dinner Thursday 4 pm, 9 people, oven at 325");
    kitchen.press("Dana", "Accept");
    kitchen.run_to("2027-11-23 18:42");
    let said = kitchen.say("Dana", "its still frozen inside");
    assert!(said.contains("Leave it in the fridge and look again Thu"), "{said}");
    kitchen.run_to("2027-11-25 08:00");
    assert!(kitchen.say("Dana", "its still frozen inside").contains("cold water"));
}

#[test]
fn who_never_said_that_it_came_off_is_asked_at_the_hour_of_carving() {
    let mut kitchen = cooking();
    let said = kitchen.run_to("2027-11-25 15:36");
    let carve = said.find("Time to carve").unwrap();
    assert!(said[..carve].contains("Is it off the heat? Nobody has told me."), "{said}");
    let mut kitchen = cooking();
    kitchen.among("Dana", "breast 167, thigh 176, wing 170");
    kitchen.among("Dana", "it's off");
    assert!(!kitchen.run_to("2027-11-25 15:36").contains("Is it off the heat"));
}

#[test]
fn what_she_reads_is_everyones_news_where_dinner_hangs_on_it() {
    let mut kitchen = cooking();
    let before = kitchen.said.len();
    let what = |text: &str| What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
    kitchen.hear_privately("Josie", what("breast 98 thigh 108 oven 320"));
    let told = |kitchen: &Kitchen, from: usize| {
        let room = To::Room(kitchen.scene.room.id);
        let read = kitchen.said.iter().skip(from).filter(|say| say.to == room);
        read.filter(|say| say.text.iter().any(|text| text.id == "cook-read-by")).cloned().collect::<Vec<_>>()
    };
    let said = told(&kitchen, before);
    let all: Vec<_> = kitchen
        .said
        .iter()
        .skip(before)
        .map(|say| (&say.to, say.text.iter().map(|t| t.id.as_ref()).collect::<Vec<_>>()))
        .collect();
    assert_eq!(said.len(), 1, "{all:?}");
    assert!(said[0].text.iter().any(|text| text.id == "cook-late-choices"), "{said:?}");
    assert!(!said[0].buttons.is_empty());
    // The same again a minute later is no news.
    let before = kitchen.said.len();
    kitchen.run_to("2027-11-25 14:02");
    kitchen.hear_privately("Josie", what("breast 99 thigh 109"));
    assert!(told(&kitchen, before).is_empty());
}
