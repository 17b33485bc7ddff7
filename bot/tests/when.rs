//! `/when`: what is told of the bird as it is now, of its targets, of dinner and of the time to spare, in words.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::turn::FileContent;
use carvetime::words::{Reader, Voice, plain};
use carvetime_core::quantity::in_fahrenheit;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// A fresh 14 lb bird in the oven since 11:35, dinner at five.
fn on() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 18:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, we have it, dinner Thursday 5 pm, 11 people, oven at 325, no salt");
    kitchen.press("Rosa", "Accept");
    at(&mut kitchen, "11:35", "it's on");
    kitchen
}

fn at(kitchen: &mut Kitchen, time: &str, text: &str) -> String {
    kitchen.run_to(&format!("2027-11-25 {time}"));
    kitchen.say("Rosa", text)
}

/// °F told as now of breast and thigh in the words.
fn now_of(said: &str, spot: &str) -> i32 {
    let line = said.lines().find(|line| line.starts_with(spot)).unwrap_or_else(|| panic!("no {spot} in {said}"));
    line.split("now ").nth(1).unwrap().split(' ').next().unwrap().parse().unwrap()
}

#[test]
fn what_is_told_as_now_is_what_was_just_read() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, oven 325");
    at(&mut kitchen, "13:25", "breast 101, thigh 121, oven 325");
    at(&mut kitchen, "13:55", "breast 102, thigh 140, oven 325");
    at(&mut kitchen, "14:25", "breast 102, thigh 155, oven 325");
    let said = at(&mut kitchen, "14:27", "/when");
    assert_eq!((now_of(&said, "Breast"), now_of(&said, "Thigh")), (102, 155), "{said}");
    let file = kitchen.said.last().unwrap().file.clone().unwrap();
    let FileContent::Picture(chart) = &file.content else { panic!("{file:?}") };
    let drawn: Vec<_> = chart.spots.iter().map(|spot| in_fahrenheit(spot.at_now).round()).collect();
    assert_eq!(drawn, [102.0, 155.0], "the picture says the same");
    // A while later it may have warmed, by no more than a bird does.
    let said = at(&mut kitchen, "14:50", "/when");
    assert!((103..=123).contains(&now_of(&said, "Breast")), "{said}");
    // And that it is at its target is not told before it was read there.
    assert!((156..=164).contains(&now_of(&said, "Thigh")), "{said}");
}

#[test]
fn now_is_no_less_than_was_read_either() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, oven 325");
    at(&mut kitchen, "13:25", "breast 100, thigh 121, oven 325");
    at(&mut kitchen, "13:45", "breast 145, thigh 139, oven 325");
    let said = at(&mut kitchen, "13:46", "/when");
    assert_eq!(now_of(&said, "Breast"), 145, "{said}");
}

#[test]
fn the_words_say_all_that_the_picture_shows() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 319");
    at(&mut kitchen, "13:55", "breast 125, thigh 142, pit 322");
    let said = at(&mut kitchen, "13:58", "/when");
    let wanted = [
        "About ",
        " to spare; look again at ",
        "Breast: now 125 °F, 165 °F about ",
        "Thigh: now 142 °F, 165 °F about ",
        "Oven: 322 °F at 1:55 PM, set to 325 °F.",
        "Dinner Thu 5:00 PM.",
    ];
    for words in wanted {
        assert!(said.contains(words), "{words:?} is not in {said}");
    }
    // In every language: each spot's target, dinner's hour, the air.
    let say = kitchen.said.last().unwrap();
    let voice = Voice::new();
    for language in voice.languages() {
        let text = plain(&voice.render(&say.text, &Reader::new(language, Chicago, kitchen.now)));
        let (target, hour) = if text.contains("°F") { ("165 °F", "5:00") } else { ("74 °C", "17:00") };
        assert!(text.replace('\u{a0}', " ").matches(target).count() >= 2, "{language}: {text}");
        assert!(text.contains(hour), "{language}: {text}");
        assert!(text.lines().count() >= 5, "{language}: {text}");
    }
}

#[test]
fn nothing_read_of_the_air_is_told_as_set() {
    let mut kitchen = on();
    at(&mut kitchen, "12:25", "breast 54, thigh 72");
    let said = at(&mut kitchen, "12:30", "/when");
    assert!(said.contains("Oven: set to 325 °F."), "{said}");
}

#[test]
fn the_board_tells_the_time_to_spare_before_the_bird_is_on_and_after() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 18:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, we have it, dinner Thursday 5 pm, 11 people, oven at 325, no salt");
    let before = kitchen.press("Rosa", "Accept");
    let planned = before.lines().find(|line| line.contains("Off the heat ") && line.contains(" to ")).unwrap();
    assert!(planned.ends_with(" min to spare"), "{before}");
    at(&mut kitchen, "11:35", "it's on");
    at(&mut kitchen, "12:25", "breast 54, thigh 72, pit 325");
    let answer = at(&mut kitchen, "13:55", "breast 125, thigh 142, pit 325");
    let board = kitchen.say("Rosa", "/board");
    let line = board.lines().find(|line| line.starts_with("Off the heat")).unwrap();
    let spare = line.split(", ").nth(1).unwrap();
    assert!(spare.ends_with(" to spare") && answer.contains(spare), "{line}: {answer}");
    // Too late is said there too, and not as spare time.
    let late = at(&mut kitchen, "16:40", "breast 140, thigh 152, pit 325");
    assert!(late.contains("too late for dinner"), "{late}");
    let board = kitchen.say("Rosa", "/board");
    assert!(!board.contains("to spare"), "{board}");
}
