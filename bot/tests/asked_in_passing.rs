//! Questions beside a plan: each has its own answer, and nothing changes for it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, Printed, answer_line, read_question};
use carvetime::room::RoomKind;
use carvetime::words::{Reader, Voice};
use chrono::{TimeZone, Utc};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn reader(tag: &str) -> Reader {
    let now = Chicago.with_ymd_and_hms(2027, 11, 22, 18, 30, 0).unwrap().with_timezone(&Utc);
    Reader::new(tag, Chicago, now)
}

/// The answer in words.
fn answer(tag: &str, text: &str) -> String {
    let voice = Voice::new();
    match answer_line(text, &reader(tag), &voice, false) {
        Printed::Answer(said) => said,
        Printed::NotUnderstood(said) => panic!("{text}: {said}"),
    }
}

/// A fresh bird for eight, on the table on Thursday.
fn planned() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, we have it, dinner Thursday 4 pm, 8 people, oven at 325, no salt");
    kitchen.press("Rosa", "Accept");
    kitchen
}

#[test]
fn each_question_has_its_own_answer() {
    for (tag, text, kind) in [
        ("en-US", "can i cook it from frozen", "from-frozen"),
        ("de-DE", "kann ich sie gefroren braten", "from-frozen"),
        ("es-ES", "puedo cocinar congelado el pavo", "from-frozen"),
        ("en-US", "how do i know its thawed", "is-thawed"),
        ("es-ES", "cómo sé si está descongelado", "is-thawed"),
        ("fr-FR", "comment savoir si elle est décongelée", "is-thawed"),
        ("de-DE", "woher weiß ich ob sie aufgetaut ist", "is-thawed"),
        ("pt-BR", "como sei se está descongelado", "is-thawed"),
        ("it-IT", "come faccio a sapere se è scongelato", "is-thawed"),
        ("en-US", "how do i know it's done", "safe-temp"),
        ("es-ES", "cuanto tarda en agua fria", "thaw-time"),
        ("en-US", "is 250 safe?", "oven-temp"),
        ("en-US", "is 158 safe?", "lethality"),
        ("en-US", "enough for 15?", "portions"),
        ("es-ES", "alcanza para 15?", "portions"),
        ("fr-FR", "assez pour 15 ?", "portions"),
        ("de-DE", "reicht das für 15?", "portions"),
        ("pt-BR", "dá para 15?", "portions"),
        ("it-IT", "basta per 15?", "portions"),
    ] {
        let reader = reader(tag);
        let question = read_question(text, &Asker::of_reader(&reader)).unwrap_or_else(|e| panic!("{text}: {e:?}"));
        assert_eq!(question.kind(), kind, "{text}");
    }
}

#[test]
fn what_is_still_to_be_left_out_is_not_thrown_away() {
    for (tag, text, dont) in [
        ("en-US", "can i leave it on the counter overnight", "Don’t"),
        ("es-ES", "puedo dejarlo en la encimera toda la noche", "No lo hagas"),
    ] {
        let said = answer(tag, text);
        assert!(said.contains(dont), "{said}");
    }
    let said = answer("en-US", "it was left out on the counter overnight, is it ok");
    assert!(said.contains("Throw it away"), "{said}");
}

#[test]
fn seventy_degrees_and_the_plan_s_figure_are_told_as_one() {
    let said = answer("en-GB", "what's a safe temp");
    assert!(said.contains("70 °C for 2 min") && said.contains("74 °C, what I plan for"), "{said}");
}

#[test]
fn a_question_beside_a_plan_changes_nothing() {
    for text in [
        "can i cook it from frozen",
        "how do i know its thawed",
        "can i leave it on the counter overnight",
        "enough for 15?",
        "is 250 safe?",
    ] {
        let mut kitchen = planned();
        let before = kitchen.scene.room.plan.clone();
        let said = kitchen.say("Rosa", text);
        assert!(!said.contains("I didn't get that"), "{text}: {said}");
        assert_eq!(kitchen.scene.room.plan, before, "{text}");
    }
    // As many as without a plan, to the last ounce.
    let feeds = planned().say("Rosa", "enough for 15?");
    assert!(feeds.contains("14 lb turkey feeds 14 to 18"), "{feeds}");
}

#[test]
fn an_oven_asked_about_is_not_read() {
    for text in ["is 250 safe?", "is the oven at 250 ok", "is 250 ok for the oven", "oven at 250 ok?"] {
        let mut kitchen = planned();
        kitchen.run_to("2027-11-25 11:00");
        kitchen.say("Rosa", "bird is on");
        kitchen.run_to("2027-11-25 12:50");
        let said = kitchen.say("Rosa", text);
        assert!(said.contains("325 °F or hotter"), "{text}: {said}");
        assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty(), "{text}");
    }
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 11:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 12:50");
    let said = kitchen.say("Rosa", "oven is at 330");
    assert!(said.contains("oven 330 °F"), "{said}");
}

#[test]
fn the_right_number_after_a_slip_is_believed() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 11:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 12:50");
    assert!(kitchen.say("Rosa", "breast 18").contains("118 °F would fit"));
    let said = kitchen.say("Rosa", "breast 118");
    assert!(said.contains("Noted: breast 118 °F"), "{said}");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().doubted.is_empty(), "the slip is answered");
    // And where the slip had been confirmed.
    kitchen.run_to("2027-11-25 13:50");
    kitchen.say("Rosa", "breast 13");
    kitchen.press("Rosa", "Yes");
    let said = kitchen.say("Rosa", "breast 138");
    assert!(said.contains("Noted: breast 138 °F"), "{said}");
    let counted = kitchen.scene.room.plan.as_ref().unwrap().counted().len();
    assert_eq!(counted, 2, "the slip counts no more");
}

#[test]
fn a_bird_on_the_floor_is_spoken_to_and_a_glass_is_not() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, dinner Thursday 6 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    assert_eq!(kitchen.ids("Rosa", "omg i dropped the turkey on the floor", false).0, ["ask-dropped"]);
    assert_eq!(kitchen.among("Rosa", "my glass fell on the floor"), 0);
    assert_eq!(kitchen.among("Rosa", "the meat fell off the bone"), 0);
}
