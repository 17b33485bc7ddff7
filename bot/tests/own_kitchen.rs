//! A person's own kitchen in their settings, and what it changes; ways back from every page.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{How, RoomKind};
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
