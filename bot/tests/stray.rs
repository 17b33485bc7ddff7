//! What sounds like a part of a dinner and is none: nothing begins with it, and no draft or plan moves by it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::Wish;
use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn kitchen() -> Kitchen {
    Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00")
}

fn drafted() -> Kitchen {
    let mut kitchen = kitchen();
    kitchen.say("Ann", "14 lb fresh turkey, dinner Thursday 4 pm, oven at 325, 9 people");
    kitchen
}

fn wish(kitchen: &Kitchen) -> Wish {
    let draft = kitchen.scene.room.drafts.values().next().map(|draft| draft.wish.clone());
    draft.or_else(|| kitchen.scene.room.plan.as_ref().map(|plan| plan.wish.clone())).unwrap()
}

#[test]
fn no_plan_begins_with_a_story_a_question_or_a_mishap() {
    for text in [
        "turkey sat on counter 3 hours thawed is it ok",
        "the turkey was in my car for 4 hours, still cold",
        "turkey meat looks gray",
        "my turkey is still frozen inside on thanksgiving morning help",
        "kid licked the raw turkey spoon",
        "i washed the turkey in the sink",
        "i don't have a thermometer",
        "the whole street is dark",
        "smoke is coming from the smoker",
    ] {
        let mut kitchen = kitchen();
        kitchen.say("Ann", text);
        assert!(kitchen.scene.room.drafts.is_empty(), "{text}");
    }
}

#[test]
fn a_plan_still_begins_as_people_begin_one() {
    for text in [
        "got a frozen turkey from my boss",
        "my in-laws are coming thanksgiving at 5 so i need a turkey for 11",
        "14 lb turkey",
        "frozen turkey",
        "smoker",
        "dinner thursday 4 pm",
        "turkey for thursday",
        "doing a 12 lb bird on the smoker saturday",
    ] {
        let mut kitchen = kitchen();
        kitchen.say("Ann", text);
        assert_eq!(kitchen.scene.room.drafts.len(), 1, "{text}");
    }
}

#[test]
fn other_peoples_hours_and_days_move_no_draft() {
    let stands = wish(&drafted());
    for text in [
        "i need to work wednesday",
        "ill be home at 6",
        "in laws land at 11",
        "about 20 bucks",
        "parade starts at 9",
        "the breast is 175 did i ruin it",
        "turkey meat looks gray",
        "whole street is dark",
        "turkeys are 1.89 a pound now, robbery",
    ] {
        let mut kitchen = drafted();
        kitchen.say("Ann", text);
        assert_eq!(wish(&kitchen), stands, "{text}");
    }
    for (text, people) in [("about 11 maybe 12 people", 12), ("about 11 people", 11)] {
        let mut kitchen = drafted();
        kitchen.say("Ann", text);
        assert_eq!((wish(&kitchen).dinner, wish(&kitchen).adults), (stands.dinner, Some(people)), "{text}");
    }
}

#[test]
fn what_is_of_the_dinner_still_changes_the_draft() {
    let stands = wish(&drafted());
    for text in
        ["make it 5", "dinner at 5 instead, grandma needs a nap", "10 people", "at 350", "smoker instead", "no salt"]
    {
        let mut kitchen = drafted();
        kitchen.say("Ann", text);
        assert_ne!(wish(&kitchen), stands, "{text}");
    }
}

#[test]
fn nor_do_they_move_a_plan() {
    let mut kitchen = drafted();
    kitchen.press("Ann", "Accept");
    let stands = wish(&kitchen);
    for text in [
        "kids nap at 1",
        "football is at 12:30",
        "parade starts at 9",
        "mom arrives at 2",
        "grandpa arrives at 5",
        "game starts at 3:30",
        "about 20 bucks",
        "i don't have a thermometer",
        "the whole street is dark",
    ] {
        kitchen.say("Ann", text);
        assert_eq!(wish(&kitchen), stands, "{text}");
    }
}
