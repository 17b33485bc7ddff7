//! How much a room takes from people who say too much: one clear answer, and a state that stays small.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::StoredReading;
use carvetime::room::{Document, RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// What a turn carries along, as stored.
fn weight(kitchen: &Kitchen) -> usize {
    serde_json::to_string(&kitchen.scene.room).unwrap().len()
}

/// Two birds on the heat.
fn cooking() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, smoker at 325");
    kitchen.press("Tom", "One more bird");
    kitchen.run_to("2027-11-25 12:30");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 14:00");
    kitchen.say("Tom", "the duck is on");
    kitchen.run_to("2027-11-25 14:30");
    kitchen
}

#[test]
fn a_large_group_weighs_no_more_than_a_table_and_everyone_in_it_is_answered() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    let mut last = String::new();
    for n in 0..700 {
        last = kitchen.say(&format!("Guest {n}"), "2 tbsp table salt");
        kitchen.say(&format!("Guest {n}"), "/plan turkey");
    }
    assert!(last.contains("2 tbsp"), "{last}");
    let room = &kitchen.scene.room;
    assert_eq!((room.members.len(), room.drafts.len().max(room.questions.len())), (200, 200));
    assert!(weight(&kitchen) < 200_000, "{}", weight(&kitchen));
}

#[test]
fn four_thousand_characters_are_refused_once_in_a_line() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 09:30");
    for word in ["a", "½ ", "14 lb ", "🦃", "\u{0}", "(((((", "/plan "] {
        let text: String = word.chars().cycle().take(4096).collect();
        let said = kitchen.say("Rosa", &text);
        assert!(said.contains("4,096 characters") && said.lines().count() == 1, "{said}");
    }
    assert!(weight(&kitchen) < 1000);
}

#[test]
fn readings_have_a_most_and_the_refusal_says_what_to_go_by() {
    let mut kitchen = cooking();
    let at = kitchen.now;
    let reading = |minute: i64| StoredReading {
        at: at - chrono::TimeDelta::seconds(5 * minute),
        pit_c: Some(160.0),
        breast_c: None,
        thigh_c: None,
        stuffing_c: None,
        wing_c: None,
        by: None,
        told_at: None,
        sure: false,
        replaces: None,
    };
    let plan = kitchen.scene.room.plan.as_mut().unwrap();
    plan.readings = (0..999).rev().map(reading).collect();
    let noted = kitchen.say("Rosa", "turkey breast 95");
    assert!(noted.contains("Noted"), "{noted}");
    let full = kitchen.say("Rosa", "turkey breast 96");
    assert!(full.contains("1,000 readings") && full.contains("165 °F"), "{full}");
    assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().readings.len(), 1000);
}

#[test]
fn a_log_that_waits_for_an_answer_is_kept_small() {
    let mut kitchen = cooking();
    let rows: String =
        (0..80_000).map(|n| format!("{:.3},325.000000,{:.6}\n", n as f64 / 700.0, 40.0 + n as f64 / 2000.0)).collect();
    let text = format!("minutes,pit_f,breast_f\n{rows}");
    assert!(text.len() > 1 << 20);
    for _ in 0..9 {
        let content = Document::Text(text.clone());
        let asked = kitchen.hear(Some("Lena"), What::Document { name: "probe.csv".into(), content });
        assert!(asked.contains("probe.csv"), "{asked}");
    }
    let room = &kitchen.scene.room;
    assert_eq!(room.unsure.len(), 8);
    assert!(room.unsure.iter().all(|unsure| unsure.text.len() < 8_000), "{}", room.unsure[0].text.len());
}

#[test]
fn changes_that_can_be_taken_back_are_the_newest_few() {
    let mut kitchen = cooking();
    for n in 0..60 {
        let step = if n % 2 == 0 { "/take carve" } else { "/drop carve" };
        kitchen.say("Rosa", step);
    }
    let plans = kitchen.scene.room.plans();
    assert!(plans.iter().all(|plan| plan.history.len() <= 20));
}

#[test]
fn a_ninth_dish_is_refused_with_a_way_out_and_nothing_else_changes() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-23 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    let dishes = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().wish.dishes.iter().flatten().count();
    for n in 1..=8 {
        kitchen.say("Rosa", &format!("/plan add dish {} 10 min on the stove", "abcdefgh".chars().nth(n - 1).unwrap()));
    }
    assert_eq!(dishes(&kitchen), 8);
    let refused = kitchen.say("Rosa", "/plan add gravy 10 min on the stove");
    assert!(refused.contains("8 dishes already") && refused.contains("/plan remove"), "{refused}");
    assert_eq!(dishes(&kitchen), 8);
}
