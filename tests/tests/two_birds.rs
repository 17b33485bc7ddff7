//! Two cooks with a bird each in one group, over the Bot API, through a kill and a move to a supergroup.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::kitchen::Kitchen;
use carvetime_tests::loopback::{ChatId, Message};
use chrono::{TimeDelta, TimeZone, Utc};
use std::time::{Duration, Instant};

/// The newest message in the chat with these words.
fn newest(kitchen: &Kitchen, chat: ChatId, words: &str) -> Message {
    let until = Instant::now() + Duration::from_secs(10);
    loop {
        let said = kitchen.telegram.said(chat);
        if let Some(found) = said.into_iter().rev().find(|message| message.text.contains(words)) {
            kitchen.telegram.settle();
            return found;
        }
        assert!(Instant::now() < until, "no {words:?} in:\n{}", kitchen.telegram.transcript(chat));
        std::thread::sleep(Duration::from_millis(20));
    }
}

#[test]
fn each_bird_keeps_its_own_board_calls_and_readings_through_a_kill_and_a_migration() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    for name in ["Rosa", "Tom", "Ana"] {
        telegram.person(name);
    }
    let mut group = telegram.group("Two birds", &["Rosa", "Tom", "Ana"]);
    telegram.promote_bot(group);
    let eight = Utc.with_ymd_and_hms(2027, 11, 24, 14, 0, 0).unwrap();
    kitchen.wait_until(eight);
    telegram.say("Rosa", group, "/settings zone America/Chicago");
    telegram.settle();
    telegram.say("Rosa", group, "/plan 12 lb fresh turkey, no salt, dinner Thursday 5 pm, 10 people, oven at 325");
    telegram.settle();
    telegram.answer(&telegram.press("Rosa", group, "Accept"));
    newest(&kitchen, group, "Next: Buy the bird");
    telegram.say("Tom", group, "/plan 6 lb fresh duck, no salt, dinner Thursday 5 pm, 4 people, smoker at 325");
    telegram.settle();
    assert!(newest(&kitchen, group, "Planned here already").text.contains("Rosa's turkey"));
    telegram.answer(&telegram.press("Tom", group, "One more bird"));
    newest(&kitchen, group, "Tom's duck: Dinner");
    let pins = telegram.calls().iter().filter(|call| call.method == "pinChatMessage").count();
    assert_eq!(pins, 1, "the first bird's board alone is pinned");

    kitchen.wait_until(eight + TimeDelta::hours(28));
    let board = newest(&kitchen, group, "Tom's duck: Dinner");
    telegram.reply("Ana", group, board.id, "it's on");
    telegram.settle();
    assert!(newest(&kitchen, group, "Tom's duck: Bird is on").text.contains("Ana"));
    assert!(!telegram.transcript(group).contains("Rosa's turkey: Bird is on"));

    kitchen.program().kill();
    let calls = telegram.call_count();
    kitchen.reopen();
    kitchen.wait_for_poll(calls);
    group = telegram.migrate(group);
    telegram.settle();
    kitchen.wait_until(eight + TimeDelta::minutes(28 * 60 + 25));
    telegram.say("Rosa", group, "/log breast 60 thigh 66 turkey");
    telegram.settle();
    newest(&kitchen, group, "Rosa's turkey: Noted: breast 60 °F");
    kitchen.wait_until(eight + TimeDelta::minutes(29 * 60 + 30));
    telegram.say("Tom", group, "/log breast 88 thigh 94");
    telegram.settle();
    let noted = newest(&kitchen, group, "Tom's duck: Noted: breast 88 °F");
    kitchen.wait_until(eight + TimeDelta::minutes(29 * 60 + 50));
    telegram.reply("Ana", group, noted.id, "breast 100, thigh 106");
    telegram.settle();
    newest(&kitchen, group, "Tom's duck: Noted: breast 100 °F");
    telegram.say("Ana", group, "/log breast 75 thigh 82");
    telegram.settle();
    newest(&kitchen, group, "Which bird?");
    telegram.answer(&telegram.press("Ana", group, "Rosa's turkey"));
    newest(&kitchen, group, "Rosa's turkey: Noted: breast 75 °F");
    assert!(newest(&kitchen, group, "Which bird?").labels().is_empty(), "its buttons are gone");
    assert!(telegram.violations().is_empty(), "{:?}", telegram.violations());
}
