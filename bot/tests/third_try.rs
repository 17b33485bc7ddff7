//! What a third family said through a holiday, and was heard wrong or not at all: readings, raw meat at the table, food that is kept.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::{RoomKind, What};
use carvetime_core::plan::Step;
use chrono_tz::America::New_York;
use kitchen::Kitchen;

/// A fresh bird planned for the next day in a group.
fn ahead() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", New_York, "2027-11-24 10:00");
    kitchen.say("Priya", "/plan 13 lb fresh turkey, we have it, 12 people, Thursday 5pm, oven at 325, no salt");
    kitchen.press("Priya", "Accept");
    kitchen.say("Kit", "/board");
    kitchen
}

/// The same, over the heat.
fn cooking() -> Kitchen {
    let mut kitchen = ahead();
    kitchen.run_to("2027-11-25 12:07");
    kitchen.among("Priya", "its in");
    kitchen
}

/// The same, off the heat and read so.
fn off() -> Kitchen {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 16:00");
    kitchen.among("Priya", "breast 168 thigh 175 wing 170");
    kitchen.among("Priya", "its off");
    kitchen.run_to("2027-11-25 16:50");
    kitchen
}

fn said_since(kitchen: &Kitchen, before: usize) -> String {
    kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| format!("{} ", text.id)).collect()
}

fn answer(text: &str) -> String {
    answer_in("en-US", text)
}

fn answer_in(tag: &str, text: &str) -> String {
    // A Sunday.
    let now = "2027-11-28T18:00:00Z".parse().unwrap();
    let answer = ask(text, &Asker::new(tag, New_York, now)).unwrap_or_else(|_| panic!("{tag}: {text}"));
    answer.texts.iter().map(|text| format!("{} ", text.id)).collect()
}

#[test]
fn no_button_makes_a_reading_that_means_done() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 13:50");
    kitchen.among("Kit", "breast 140");
    kitchen.run_to("2027-11-25 14:08");
    let before = kitchen.said.len();
    kitchen.among("Kit", "88 breast");
    let labels: Vec<_> = kitchen.said[before..].iter().flat_map(|say| say.buttons.iter().flatten()).collect();
    assert!(!labels.is_empty(), "it is asked about");
    assert!(labels.iter().all(|button| button.label.id != "cook-suspect-meant"), "{labels:?}");
    // What leaves it in the heat may be meant.
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 13:50");
    kitchen.among("Kit", "breast 100");
    kitchen.run_to("2027-11-25 14:08");
    let before = kitchen.said.len();
    kitchen.among("Kit", "18 breast");
    let mut labels = kitchen.said[before..].iter().flat_map(|say| say.buttons.iter().flatten());
    assert!(labels.any(|button| button.label.id == "cook-suspect-meant"));
}

#[test]
fn three_readings_one_after_another_are_of_one_spot() {
    let mut kitchen = cooking();
    kitchen.run_to("2027-11-25 13:52");
    kitchen.among("Kit", "the thermometer said 140 then 98 then 112");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.readings.iter().all(|reading| reading.thigh_c.is_none() && reading.wing_c.is_none()));
}

#[test]
fn a_reading_is_taken_back_in_any_words() {
    for text in ["ignore that", "ignore those", "scratch that", "disregard that"] {
        let mut kitchen = cooking();
        kitchen.run_to("2027-11-25 13:52");
        kitchen.among("Kit", "breast 88");
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().counted().len(), 1);
        kitchen.among("Kit", text);
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().counted().len(), 0, "{text}");
    }
}

#[test]
fn raw_meat_found_while_it_is_carved_goes_back() {
    for text in ["uh the part by the thigh bone looks raw", "EW its pink. 151 there", "its still bloody at the bone"] {
        let mut kitchen = off();
        let before = kitchen.said.len();
        kitchen.among("Wes", text);
        assert!(said_since(&kitchen, before).contains("ask-raw-inside"), "{text}: {}", said_since(&kitchen, before));
    }
    // Of other food, and of a bird that is not off, it says nothing.
    let mut kitchen = off();
    assert_eq!(kitchen.among("Wes", "dad's steak is raw"), 0);
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", New_York, "2027-11-24 10:00");
    assert_eq!(kitchen.among("Wes", "the chicken looks raw in that photo"), 0);
}

#[test]
fn a_pull_below_the_mark_is_answered_whoever_proposes_it() {
    for text in ["can i pull it at 155 and let it rest", "can we take it off at 150?", "pull it at 155, itll rise"] {
        let mut kitchen = cooking();
        let before = kitchen.said.len();
        kitchen.among("Wes", text);
        assert!(said_since(&kitchen, before).contains("ask-lethality"), "{text}: {}", said_since(&kitchen, before));
    }
}

#[test]
fn food_on_the_road_has_no_age_of_so_many_minutes() {
    for (tag, text) in [
        ("en-US", "can i put warm leftovers in a cooler for a 50 min drive"),
        ("en-US", "I'm off now with the leftovers, it is fifty minutes to get home. Is that all right?"),
        ("es-ES", "¿puedo llevar las sobras, son 50 minutos en coche?"),
        ("de-DE", "kann ich die Reste mitnehmen, 50 Minuten Fahrt?"),
        ("fr-FR", "je peux emporter les restes, 50 minutes de route ?"),
        ("pt-BR", "posso levar as sobras, 50 minutos de carro?"),
        ("it-IT", "posso portare gli avanzi, 50 minuti in macchina?"),
    ] {
        let told = answer_in(tag, text);
        assert!(told.contains("ask-carry-food") && !told.contains("keeps"), "{tag}: {text}: {told}");
    }
}

#[test]
fn a_bird_in_the_fridge_since_a_day_may_be_raw() {
    for text in [
        "my chicken's been in the fridge since thursday is it ok sunday",
        "is it ok monday to thursday in the fridge??",
    ] {
        let asked = ask(text, &Asker::new("en-US", New_York, "2027-11-28T18:00:00Z".parse().unwrap())).unwrap();
        let told: Vec<String> = asked.texts.iter().map(|text| text.id.to_string()).collect();
        assert_eq!(
            told[..2],
            ["ask-keeps-that-over", "ask-keeps-that-still"],
            "{text}: too old raw, not too old cooked"
        );
    }
}

#[test]
fn what_a_new_cook_asks_is_read_as_it_is_meant() {
    for (text, id) in [
        ("Is it safe to put the stuffing inside the turkey?", "ask-stuffing"),
        ("can i leave it on the counter to warm up first, an hour or so", "ask-out-fine"),
        ("can i leave it in the oven off for like an hour", "ask-hold"),
        ("my thermometer says 140 and its been 4 hours", "ask-stall"),
        ("i only have a meat thermometer from like 1990 is that ok", "ask-thermometer-which"),
        ("is it ok if its still pinkish", "ask-colour"),
        ("can i eat the turkey cold", "ask-keeps"),
    ] {
        assert!(answer(text).contains(id), "{text}: {}", answer(text));
    }
}

#[test]
fn a_time_asked_of_the_own_bird_is_over_its_own_heat() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", New_York, "2027-11-24 10:00");
    kitchen.say("Ruth", "4 lb fresh chicken, got it, dinner tomorrow 7 pm, 4 people, oven at 350");
    kitchen.press("Ruth", "Accept");
    assert!(kitchen.say("Ruth", "how long does it take").contains("oven at 350"));
    assert!(kitchen.say("Ruth", "how long does it need at 425").contains("oven at 425"));
    assert!(kitchen.say("Ruth", "do i need a bigger chicken").contains("4 lb chicken feeds"));
}

#[test]
fn a_job_is_taken_in_a_sentence_of_its_own_and_by_what_people_call_it() {
    let owner = |text: &str, step: Step| {
        let mut kitchen = ahead();
        kitchen.hear(Some("Dan"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false });
        kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().owner
    };
    assert!(owner("I'll carve. you need someone with a steady hand", Step::Carve).is_some());
    assert!(owner("i can check temps", Step::Check).is_some());
    assert!(owner("/take fridge", Step::Chill).is_some());
    // What may be of anything is none.
    assert!(owner("i'll check. hang on", Step::Check).is_none());
    let mut kitchen = ahead();
    kitchen.say("Joan", "/take carve");
    assert!(kitchen.say("Dan", "who's on carving again").contains("Joan"));
    assert!(kitchen.say("Dan", "who does leftovers").contains("Into the fridge"));
}

#[test]
fn a_bird_opened_flat_is_planned_so_or_the_host_is_asked() {
    let form = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().wish.form.clone();
    let mut kitchen = ahead();
    kitchen.among("Priya", "i cut the backbone out its flat now");
    assert_eq!(form(&kitchen).as_deref(), Some("flat"));
    let mut kitchen = ahead();
    let before = kitchen.said.len();
    kitchen.among("Wes", "i spatchcocked it");
    assert_ne!(form(&kitchen).as_deref(), Some("flat"), "the host is asked");
    let shown = format!("{:?}", kitchen.said[before..].iter().flat_map(|say| &say.text).collect::<Vec<_>>());
    assert!(shown.contains("room-amend-told") && shown.contains("room-known-form"), "{shown}");
    kitchen.press("Priya", "Change the plan");
    assert_eq!(form(&kitchen).as_deref(), Some("flat"));
    // What is only talked of opens no bird.
    let mut kitchen = ahead();
    for text in ["should we have it spatchcocked", "next year we'll get one spatchcocked", "is it spatchcocked?"] {
        kitchen.among("Wes", text);
        assert_ne!(form(&kitchen).as_deref(), Some("flat"), "{text}");
    }
}
