//! What the settings ask for may be typed: below its page a bare answer is enough, and it is no dinner and no sum.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::Person;
use carvetime::room::{PersonId, RoomKind};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const ROSA: PersonId = PersonId(1);

/// The page is opened and the answer typed below it; what was said.
fn typed(kind: RoomKind, page: &str, text: &str) -> (Kitchen, String) {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/settings");
    kitchen.press("Rosa", page);
    let said = kitchen.say("Rosa", text);
    assert!(kitchen.scene.room.drafts.is_empty(), "{page}: {text}: {said}");
    (kitchen, said)
}

fn rosa(kitchen: &Kitchen) -> &Person {
    &kitchen.scene.people[&ROSA]
}

#[test]
fn a_bare_answer_below_its_page_is_set() {
    let (kitchen, said) = typed(RoomKind::Private, "Quiet hours", "10 pm to 7 am");
    let quiet = rosa(&kitchen).quiet.unwrap();
    assert_eq!((quiet.0.to_string(), quiet.1.to_string()), ("22:00:00".into(), "07:00:00".into()));
    assert!(said.replace('\u{202f}', " ").contains("10:00 PM to 7:00 AM"), "as her clock shows it: {said}");

    for (text, c) in [("38 °F", 3.33), ("41", 5.0), ("4 C", 4.0)] {
        let (kitchen, _) = typed(RoomKind::Private, "My fridge", text);
        assert!((rosa(&kitchen).fridge_c.unwrap() - c).abs() < 0.01, "{text}");
    }
    let (kitchen, _) = typed(RoomKind::Private, "My salt", "1/4 tsp is 0.7 g");
    assert!((rosa(&kitchen).own_salt.unwrap().grams_per_ml - 0.7 / (4.92892 / 4.0)).abs() < 1e-3);
    let (kitchen, _) = typed(RoomKind::Private, "My cooker", "smoker");
    assert_eq!(rosa(&kitchen).cooker.as_deref(), Some("smoker"));
    let (kitchen, _) = typed(RoomKind::Private, "Fridge shelves", "3");
    assert_eq!(rosa(&kitchen).fridge_shelves, Some(3));
}

#[test]
fn a_group_sets_what_is_the_rooms() {
    for kind in [RoomKind::Private, RoomKind::Group] {
        let (kitchen, _) = typed(kind, "Units", "metric");
        assert_eq!(kitchen.scene.room.taste.us_units, Some(false));
        let (kitchen, _) = typed(kind, "Spoons", "australian");
        assert_eq!(kitchen.scene.room.taste.spoons.as_deref(), Some("australia"));
        let (kitchen, said) = typed(kind, "Language", "German");
        assert_eq!(kitchen.scene.room.taste.language.as_deref(), Some("de"));
        assert!(said.contains("Einheiten"), "{said}");
    }
}

#[test]
fn what_is_no_answer_is_what_it_was() {
    // A question in between is answered, and the page goes on listening.
    let (mut kitchen, said) = typed(RoomKind::Private, "Quiet hours", "325 F in C");
    assert!(said.contains("162.8 °C"), "{said}");
    kitchen.say("Rosa", "none");
    assert_eq!(rosa(&kitchen).quiet, None);
    // A fridge is not that warm.
    let (kitchen, said) = typed(RoomKind::Private, "My fridge", "325 F");
    assert!(rosa(&kitchen).fridge_c.is_none() && said.contains("162.8 °C"), "{said}");
    // Back, or later, nothing is asked any more.
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/settings");
    kitchen.press("Rosa", "My cooker");
    kitchen.press("Rosa", "Back");
    kitchen.say("Rosa", "smoker");
    assert_eq!(rosa(&kitchen).cooker, None);
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/settings");
    kitchen.press("Rosa", "My cooker");
    kitchen.run_to("2027-11-22 09:11");
    kitchen.say("Rosa", "smoker");
    assert_eq!(rosa(&kitchen).cooker, None);
    // Another's word sets nothing of hers.
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/settings");
    kitchen.press("Rosa", "Units");
    kitchen.say("Tom", "metric");
    assert_eq!(kitchen.scene.room.taste.us_units, None);
}
