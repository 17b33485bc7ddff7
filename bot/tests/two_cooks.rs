//! Two cooks with a bird each in one chat: one fridge, whose dish it is, and what a file is of.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn rosa() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 10:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 10 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen
}

const TOMS: &str = "/plan 12 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325";

fn both() -> Kitchen {
    let mut kitchen = rosa();
    kitchen.say("Tom", TOMS);
    kitchen.press("Tom", "One more bird");
    kitchen
}

#[test]
fn one_shelf_and_two_birds_is_told_whichever_comes_first() {
    let few = "one shelf is too few";
    let mut kitchen = rosa();
    kitchen.say("Rosa", "my fridge has 1 shelf");
    let said = kitchen.say("Tom", TOMS);
    assert!(said.contains("Rosa's turkey") && said.contains(few), "{said}");
    let mut kitchen = both();
    let said = kitchen.say("Rosa", "my fridge has 1 shelf");
    assert!(said.contains("In the fridge then too: Tom's turkey") && said.contains(few), "{said}");
    let said = kitchen.say("Rosa", "my fridge has 3 shelves");
    assert!(!said.contains("too few"), "{said}");
    let said = rosa().say("Rosa", "my fridge has 1 shelf");
    assert!(!said.contains("too few"), "one bird has its shelf: {said}");
}

#[test]
fn small_birds_share_a_shelf_and_cold_dishes_count() {
    let few = "too few";
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 10:00");
    kitchen.say("Rosa", "/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Rosa", "my fridge has 1 shelf");
    let said = kitchen.say("Tom", "/plan 5 lb fresh duck, dinner Thursday 5 pm, 4 people, oven at 325");
    assert!(!said.contains(few), "half a shelf each: {said}");
    let mut kitchen = both();
    let said = kitchen.say("Rosa", "my fridge has 2 shelves");
    assert!(!said.contains(few), "{said}");
    let said = kitchen.say("Tom", "/plan add slaw in the fridge, 1 shelf");
    assert!(
        said.contains("In the fridge then too: Rosa's turkey.") && said.contains("2 shelves are too few"),
        "{said}"
    );
    assert!(!said.contains("my fridge has 3 shelves"), "the shelves are known: {said}");
}

#[test]
fn a_dish_of_somebody_without_a_bird_says_which_dinner_it_joins() {
    let mut kitchen = both();
    kitchen.say("Li", "/board");
    let said = kitchen.say("Li", "/plan add gravy on the stove 20 min");
    assert!(said.contains("'s turkey") && said.contains("gravy"), "{said}");
    let line = said.lines().find(|line| line.contains("Added: gravy")).unwrap_or_default();
    assert!(line.contains("Rosa's turkey") || said.contains("Which"), "{said}");
}

#[test]
fn a_file_of_both_birds_names_both() {
    let mut kitchen = both();
    kitchen.say("Li", "/export");
    let mut captions = Vec::new();
    for say in &kitchen.said {
        if let Some(file) = &say.file {
            captions.push((file.name.clone(), format!("{:?}", say.text)));
        }
    }
    for name in ["carvetime.ics", "carvetime.json"] {
        let (_, caption) = captions.iter().find(|(file, _)| file == name).expect("a file");
        assert!(caption.contains("Rosa") && caption.contains("Tom"), "{name}: {caption}");
    }
    let pages: Vec<&String> =
        captions.iter().filter(|(file, _)| file.contains("page")).map(|(_, caption)| caption).collect();
    assert!(pages.iter().any(|it| it.contains("Rosa")) && pages.iter().any(|it| it.contains("Tom")), "{pages:?}");
    // One bird alone needs no name.
    let mut kitchen = rosa();
    kitchen.say("Rosa", "/export");
    let all = kitchen.said.iter().filter(|say| say.file.is_some());
    assert!(all.into_iter().all(|say| !format!("{:?}", say.text).contains("birds-all")));
}
