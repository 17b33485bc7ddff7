//! A dish that doesn't fit: why, ways out that fit it, and a way back.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn dinner() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 18:00");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen
}

fn dishes(kitchen: &Kitchen) -> Vec<String> {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.wish.dishes.iter().flatten().map(|dish| dish.name.clone()).collect()
}

#[test]
fn a_third_dish_in_one_oven_is_one_too_many_and_can_be_left_again() {
    let mut kitchen = dinner();
    for dish in ["peas", "corn"] {
        kitchen.say("Tom", &format!("/plan add {dish} in the oven 45 min at 375"));
    }
    let third = "/plan add beans in the oven 45 min at 375";
    let said = kitchen.say("Tom", third);
    for part in ["only 2 dishes go on that heat at once, and beans is one too many", "[Without beans]", "[Leave it]"] {
        assert!(said.contains(part), "{part}: {said}");
    }
    let said = kitchen.press("Tom", "Leave it");
    assert!(said.contains("Left as it was") && dishes(&kitchen) == ["peas", "corn"], "{said}");
    let said = kitchen.press("Tom", "Without beans");
    assert!(said.contains("button is old") || !said.contains("All right"), "its question is answered: {said}");
    kitchen.say("Tom", third);
    let said = kitchen.press("Tom", "Without beans");
    assert!(said.contains("Without beans") && dishes(&kitchen) == ["peas", "corn"], "{said}");
    // Said of the one that waits: it is left out.
    kitchen.say("Tom", third);
    let said = kitchen.say("Tom", "/plan remove beans");
    assert!(said.contains("beans is off the plan") && dishes(&kitchen) == ["peas", "corn"], "{said}");
    // One of the others makes room for it.
    kitchen.say("Tom", third);
    let said = kitchen.say("Tom", "/plan remove corn");
    assert!(said.contains("corn is off the plan") && said.contains("Added: beans"), "{said}");
    assert_eq!(dishes(&kitchen), ["peas", "beans"]);
}

#[test]
fn a_fifth_pot_starts_earlier_and_is_kept_hot() {
    let mut kitchen = dinner();
    for dish in ["rice", "mash", "greens", "sprouts"] {
        kitchen.say("Tom", &format!("/plan add {dish} on the stove 40 min"));
    }
    let said = kitchen.say("Tom", "/plan add gravy on the stove 40 min");
    assert!(said.contains("only 4 dishes go on that heat"), "{said}");
    assert!(said.contains("gravy earlier: Thu 3:35 PM, then kept covered at 140 °F or hotter"), "{said}");
    kitchen.press("Tom", "gravy earlier");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let job = plan.jobs.iter().find(|job| job.step == "dish" && job.nth == 4).expect("gravy");
    assert_eq!(job.at, kitchen.local("2027-11-25 15:35"));
    let said = kitchen.run_to("2027-11-25 15:36");
    assert!(said.contains("Then keep it covered and hot, 140 °F or more, until dinner."), "{said}");
}

#[test]
fn a_dish_less_is_always_possible_and_what_stands_against_the_rest_is_told() {
    let mut kitchen = dinner();
    kitchen.say("Rosa", "/plan add stuffing in the oven 45 min at 375");
    kitchen.say("Rosa", "/plan add salsa in the fridge, 1 shelf");
    let said = kitchen.say("Rosa", "my fridge has 1 shelf");
    assert!(said.contains("no room for salsa"), "{said}");
    let said = kitchen.say("Rosa", "/plan remove stuffing");
    assert!(said.contains("stuffing is off the plan") && said.contains("no room for salsa"), "{said}");
    assert_eq!(dishes(&kitchen), ["salsa"]);
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(!plan.jobs.iter().any(|job| job.step == "dish" && job.nth == 0), "nobody is called for it");
    let said = kitchen.say("Rosa", "/plan remove salsa");
    assert!(said.contains("salsa is off the plan") && !said.contains("no room"), "{said}");
    assert!(dishes(&kitchen).is_empty());
}

#[test]
fn an_hour_in_a_dish_s_sentence_is_answered_and_before_the_bird_is_heard() {
    let mut kitchen = dinner();
    let said = kitchen.say("Tom", "/plan add kale at 9 am on the stove 20 min");
    assert!(said.contains("You said Thu 9:00 AM. For this dinner it’s Thu 4:35 PM."), "{said}");
    let said = kitchen.say("Tom", "/plan add rolls in the oven 20 min at 350 on Wednesday");
    assert!(said.contains("You said Wednesday, November 24. For this dinner it’s Thu"), "{said}");
    let said = kitchen.say("Tom", "/plan add peas in the oven 20 min at 350");
    assert!(!said.contains("You said"), "{said}");
    let said = kitchen.say("Tom", "/plan add meringue in the oven 3 h at 200 before the bird");
    assert!(said.contains("Added: meringue, Wed") && said.contains("In the fridge from"), "{said}");
    assert_eq!(dishes(&kitchen), ["kale", "rolls", "peas", "meringue"]);
}
