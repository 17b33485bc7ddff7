//! A button of a way out does what it says or nothing, however old its message is.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn planned() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen
}

fn dishes(kitchen: &Kitchen) -> Vec<String> {
    let dishes = &kitchen.scene.room.plan.as_ref().unwrap().wish.dishes;
    dishes.iter().flatten().map(|dish| dish.name.clone()).collect()
}

#[test]
fn the_way_out_of_another_dish_is_not_taken_for_the_newest() {
    let mut kitchen = planned();
    kitchen.say("Rosa", "/plan add gratin in the oven 60 min at 450");
    let bread = kitchen.say("Rosa", "/plan add bread in the oven 60 min at 250");
    assert!(bread.contains("bread wants 250 °F while gratin wants 450 °F there"), "{bread}");
    let ham = kitchen.say("Rosa", "/plan add ham in the oven 4 h at 250");
    assert!(ham.contains("ham wants 250 °F while the bird wants 325 °F there"), "{ham}");
    let stale = kitchen.press("Tom", "bread earlier");
    assert!(stale.contains("(notice)") && stale.contains("earlier plan") && !stale.contains("] New: "), "{stale}");
    assert_eq!(dishes(&kitchen), ["gratin"]);
    let taken = kitchen.press("Tom", "ham ahead");
    assert!(taken.contains("All right: ham ahead"), "{taken}");
    assert_eq!(dishes(&kitchen), ["gratin", "ham"]);
}

#[test]
fn a_way_out_that_time_has_closed_leads_to_no_other() {
    let mut kitchen = planned();
    for (at, words) in [("2027-11-23 15:10", "bought it"), ("2027-11-23 18:35", "salted")] {
        kitchen.run_to(at);
        kitchen.say("Rosa", words);
    }
    kitchen.run_to("2027-11-25 12:20");
    kitchen.say("Rosa", "oven's on");
    kitchen.run_to("2027-11-25 12:45");
    let late = kitchen.say("Tom", "not yet");
    assert!(late.contains("[375 °F instead]"), "{late}");
    kitchen.run_to("2027-11-25 13:10");
    let now = kitchen.say("Rosa", "it's in");
    assert!(!now.contains("[375 °F instead]") && now.contains("[Dinner Thu 6:00 PM]"), "{now}");
    let dinner = kitchen.scene.room.plan.as_ref().unwrap().wish.dinner;
    let stale = kitchen.press("Rosa", "375 °F instead");
    assert!(stale.contains("earlier plan") && !stale.contains("All right"), "{stale}");
    assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.dinner, dinner);
    assert!(kitchen.press("Rosa", "Dinner Thu 6:00 PM").contains("All right: Dinner Thu 6:00 PM"));
}

#[test]
fn a_way_out_of_an_earlier_wish_does_nothing_for_the_draft_there_is() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-23 09:00");
    let frozen = kitchen.say("Rosa", "/plan 16 lb frozen turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    assert!(frozen.contains("[Thaw in cold water]"), "{frozen}");
    kitchen.say("Rosa", "/plan it's fresh, dinner today 8 pm");
    let draft = kitchen.scene.room.drafts.clone();
    let stale = kitchen.press("Rosa", "Thaw in cold water");
    assert!(stale.contains("earlier plan"), "{stale}");
    let wish = |drafts: &std::collections::BTreeMap<_, carvetime::room::state::Draft>| {
        drafts.values().map(|draft| draft.wish.clone()).collect::<Vec<_>>()
    };
    assert_eq!(wish(&kitchen.scene.room.drafts), wish(&draft));
}

#[test]
fn a_dish_told_while_the_dinner_is_in_doubt_is_answered() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 13:10");
    let clash = kitchen.say("Rosa", "it's in");
    assert!(clash.contains("no longer fits"), "{clash}");
    let said = kitchen.say("Tom", "/plan add rice on the stove 20 min");
    assert!(said.contains("New: “rice” isn’t on the plan yet") && said.contains("[Dinner Thu 6:00 PM]"), "{said}");
    assert!(dishes(&kitchen).is_empty());
    kitchen.press("Rosa", "Dinner Thu 6:00 PM");
    kitchen.say("Tom", "/plan add rice on the stove 20 min");
    assert_eq!(dishes(&kitchen), ["rice"]);
    let undone = kitchen.say("Tom", "/undo");
    assert!(undone.contains("adding “rice”"), "{undone}");
}
