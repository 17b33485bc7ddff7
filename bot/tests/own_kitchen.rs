//! A person's own kitchen in their settings, and what it changes; ways back from every page.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::{CookNote, OwnSalt, StoredProfile};
use carvetime::room::{How, PersonId, RoomKind};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn private() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", chrono_tz::America::Chicago, "2027-11-20 18:00");
    kitchen.say("Rosa", "/start");
    kitchen
}

#[test]
fn a_cooker_told_once_is_what_a_plan_is_for() {
    let mut kitchen = private();
    kitchen.say("Rosa", "/settings");
    assert!(kitchen.press("Rosa", "My cooker").contains("usually cook"));
    assert!(kitchen.press("Rosa", "Smoker").contains("Your cooker: Smoker"));
    let proposal = kitchen.say("Rosa", "14 lb fresh turkey, dinner Thursday 5 pm, 10 people");
    assert!(proposal.contains("smoker at") && proposal.contains("[Accept]"), "{proposal}");
    let other = kitchen.say("Rosa", "/plan oven");
    assert!(other.contains("oven at"), "what is said counts more: {other}");
}

#[test]
fn a_fridge_too_warm_is_said_where_a_fridge_is_counted_on() {
    let mut kitchen = private();
    kitchen.say("Rosa", "/settings");
    kitchen.press("Rosa", "My fridge");
    let settings = kitchen.press("Rosa", "43 °F");
    assert!(settings.contains("Your fridge: 43 °F") && settings.contains("above 40 °F"), "{settings}");
    for question in ["how long to thaw a 14 lb turkey?", "how long do leftovers keep?"] {
        let answer = kitchen.say("Rosa", question);
        assert!(answer.contains("Your fridge is at 43 °F"), "{question}: {answer}");
    }
    let plan = kitchen.say("Rosa", "14 lb frozen turkey, dinner Friday 5 pm, 10 people, oven");
    assert!(plan.contains("Your fridge is at 43 °F"), "{plan}");
    // Cold enough, or kept elsewhere: nothing to say.
    assert!(!kitchen.say("Rosa", "how long does a turkey keep in the freezer?").contains("Your fridge"));
    kitchen.say("Rosa", "/settings");
    kitchen.press("Rosa", "My fridge");
    assert!(!kitchen.press("Rosa", "39 °F").contains("above 40"));
    assert!(!kitchen.say("Rosa", "how long do leftovers keep?").contains("Your fridge"));
}

#[test]
fn a_salt_told_is_shown_and_can_be_dropped() {
    let mut kitchen = private();
    kitchen.say("Rosa", "my salt: 1/4 tsp is 0.7 g");
    assert!(kitchen.say("Rosa", "/settings").contains("Your salt: 2.8 g a teaspoon"));
    kitchen.press("Rosa", "My salt");
    assert!(kitchen.press("Rosa", "Forget my salt").contains("not told yet"));
    assert!(!kitchen.say("Rosa", "salt for a 12 lb turkey").contains("your own salt"));
}

#[test]
fn every_page_of_menus_changes_in_place_and_leads_back() {
    let mut kitchen = private();
    let menus = [
        (
            "/settings",
            vec!["Language", "Units", "Spoons", "Time zone", "My salt", "My cooker", "My fridge", "Quiet hours"],
        ),
        ("/start", vec!["Plan a dinner", "How much salt?", "Is it safe?"]),
    ];
    for (command, labels) in menus {
        let first = kitchen.say("Rosa", command);
        for label in labels {
            kitchen.press("Rosa", label);
            assert_eq!(kitchen.said.last().unwrap().how, How::Edit, "{label}");
            let back = kitchen.press("Rosa", "Back");
            assert_eq!(kitchen.said.last().unwrap().how, How::Edit, "back from {label}");
            let body = |text: &str| text.split_once(": ").map(|(_, body)| body.to_owned()).unwrap();
            assert_eq!(body(&back), body(&first), "back from {label}");
        }
    }
    // What is typed after the way back is no answer to the page's question.
    kitchen.say("Rosa", "/settings");
    kitchen.press("Rosa", "Time zone");
    kitchen.press("Rosa", "Back");
    assert!(!kitchen.say("Rosa", "Madrid").contains("Europe/Madrid"));
    kitchen.say("Rosa", "/settings");
    kitchen.press("Rosa", "Time zone");
    assert!(kitchen.say("Rosa", "Madrid").contains("Europe/Madrid"));
}

#[test]
fn questions_of_a_plan_can_be_left() {
    let mut kitchen = private();
    assert!(kitchen.say("Rosa", "/plan").contains("[Never mind]"));
    let asked = kitchen.say("Rosa", "14 lb turkey, dinner Thursday 5 pm");
    assert!(asked.contains("frozen?") && asked.contains("[Never mind]"), "{asked}");
    assert!(kitchen.press("Rosa", "Never mind").contains("dropped"));
    assert!(kitchen.scene.room.drafts.is_empty());
}

#[test]
fn what_is_kept_is_listed_before_it_is_forgotten_and_nothing_that_is_not() {
    let mut kitchen = private();
    let bare = kitchen.say("Rosa", "/forget");
    assert!(bare.contains("I keep your name, your settings, and your jobs, readings and links in groups."), "{bare}");
    kitchen.press("Rosa", "No");
    let rosa = kitchen.scene.people.get_mut(&PersonId(1)).unwrap();
    rosa.own_salt = Some(OwnSalt { grams_per_ml: 0.6 });
    rosa.cooker = Some("smoker".into());
    rosa.fridge_c = Some(5.0);
    rosa.profiles.insert("smoker".into(), StoredProfile { pit_offset_c: 3.0, speed: 1.1, cooks: 2 });
    rosa.notes.push(CookNote::new(kitchen.now));
    kitchen.say("Rosa", "how much salt for a 12 lb turkey?");
    kitchen.say("Rosa", "14 lb fresh turkey, dinner Thursday 5 pm, 10 people");
    let all = kitchen.say("Rosa", "/forget");
    for thing in [
        "your salt",
        "your cooker",
        "your fridge: shelves and temperature",
        "how your cooker cooks",
        "notes on past dinners",
        "what you plan here with me",
        "what you asked last",
    ] {
        assert!(all.contains(thing), "{thing}: {all}");
    }
}

/// The pages behind the buttons of a group's menus.
const PAGES: [(&str, &[&str]); 3] = [
    ("/start", &["Plan a dinner", "How much salt?", "Is it safe?"]),
    ("/settings", &["Language", "Units", "Spoons", "Time zone"]),
    ("/take", &["Ask someone…"]),
];

#[test]
fn every_page_of_a_group_leads_back_where_it_came_from() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", chrono_tz::America::Chicago, "2027-11-20 18:00");
    kitchen.say("Tom", "/board");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 10 people, oven");
    // A wish half told: what can be changed, and back to the proposal.
    kitchen.press("Rosa", "Change");
    assert!(kitchen.press("Rosa", "Back").contains("[Accept]"));
    kitchen.press("Rosa", "Accept");
    for (command, pages) in PAGES {
        let first = kitchen.say("Rosa", command);
        let shown = first.split_once(": ").unwrap().1.to_owned();
        for page in pages {
            let second = kitchen.press("Rosa", page);
            assert!(second.contains(" Edit: ") && second.contains("[Back]"), "{command} > {page}: {second}");
            if *page == "Ask someone…" {
                let third = kitchen.press("Rosa", "Carve");
                assert!(third.contains(" Edit: ") && third.contains("[Tom]") && third.contains("[Back]"), "{third}");
                assert_eq!(
                    kitchen.press("Rosa", "Back").split_once(": ").unwrap().1,
                    second.split_once(": ").unwrap().1
                );
            }
            let back = kitchen.press("Rosa", "Back");
            assert!(back.contains(" Edit: "), "{command} > {page} > Back: {back}");
            assert_eq!(back.split_once(": ").unwrap().1, shown, "{command} > {page}");
        }
    }
}

#[test]
fn the_units_chosen_are_named_in_words() {
    for (locale, shown) in
        [("en-US", "Units: pounds, °F"), ("en-GB", "Units: kilograms, °C"), ("de-DE", "Einheiten: Kilogramm, °C")]
    {
        let mut kitchen = Kitchen::new(RoomKind::Private, locale, Chicago, "2027-11-20 09:30");
        let said = kitchen.say("Rosa", "/settings");
        assert!(said.contains(shown), "{said}");
    }
}
