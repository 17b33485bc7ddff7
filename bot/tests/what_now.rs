//! Who does not know what this is, what comes next or whether there is time, who arrives, and who is stuck: asked and told in any words.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::state::JobState;
use carvetime::room::{RoomKind, What, is_answered};
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// A frozen bird for Thursday at five, planned on Monday by Ruth in a group with Tom and Ana.
fn shared() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Ruth", "/plan 14 lb frozen turkey, we have it, dinner Thursday 5 pm, 11 people, oven at 325");
    kitchen.press("Ruth", "Accept");
    kitchen.say("Tom", "/take salt");
    kitchen.say("Ana", "/take carve");
    kitchen
}

/// Carried cold to another house in another zone.
fn carried() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-23 09:00");
    kitchen.say(
        "Ruth",
        "/plan 12 lb fresh turkey, we have it, dinner Thursday 5 pm at my sister's in Denver, 3 h drive, 9 people, oven at 325, we carry it cold",
    );
    kitchen.press("Ruth", "Accept");
    kitchen.say("Tom", "/take drive");
    kitchen
}

/// Told to the bot in somebody's private chat; `None`: it is not of the group.
fn privately(kitchen: &mut Kitchen, who: &str, text: &str) -> Option<String> {
    let what = What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
    let person = kitchen.scene.people.values().find(|person| person.name == who)?;
    is_answered(&kitchen.scene.room, person, &what, kitchen.now).then(|| kitchen.hear_privately(who, what))
}

fn answer(tag: &str, text: &str) -> String {
    let now = "2027-11-22T18:00:00Z".parse().unwrap();
    let answer = ask(text, &Asker::new(tag, Chicago, now)).unwrap_or_else(|_| panic!("{tag}: {text}"));
    answer.texts.iter().map(|text| format!("{} ", text.id)).collect()
}

#[test]
fn what_this_is_is_told_in_a_few_lines_and_not_as_a_list_of_commands() {
    let asked = [
        ("en-US", "how does this work"),
        ("en-US", "ok so how do i use this?"),
        ("es-ES", "¿cómo funciona esto?"),
        ("fr-FR", "comment ça marche ?"),
        ("de-DE", "wie geht das?"),
        ("pt-BR", "como funciona isso?"),
        ("it-IT", "come funziona?"),
    ];
    for (tag, text) in asked {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, Chicago, "2027-11-22 09:00");
        kitchen.say("Ruth", text);
        let said = kitchen.said.last().unwrap();
        assert_eq!(said.text[0].id, "room-how", "{tag}: {text}");
        assert_eq!(said.buttons.iter().flatten().count(), 3, "{tag}: {text}");
    }
}

#[test]
fn a_day_and_an_hour_alone_begin_a_plan_where_there_is_none() {
    for text in ["thursday like 4ish", "thursday around 4", "Thursday 4 pm"] {
        let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
        let said = kitchen.say("Ruth", text);
        assert!(said.contains("dinner Thu 4:00 PM"), "{text}: {said}");
    }
    // Among people, or beside other things, it begins none.
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    assert_eq!(kitchen.among("Ruth", "thursday like 4ish"), 0);
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Ruth", "the dentist is thursday at 4");
    assert!(kitchen.scene.room.drafts.is_empty());
}

#[test]
fn whoever_has_lost_the_thread_is_shown_the_board() {
    let asked = [
        ("en-US", "what do i do now"),
        ("en-US", "ok so whats first"),
        ("es-MX", "y ahora q hago"),
        ("fr-FR", "je fais quoi maintenant"),
        ("de-DE", "und was mach ich jetzt?"),
        ("pt-BR", "e agora o que eu faço"),
        ("it-IT", "e adesso cosa faccio"),
    ];
    for (tag, text) in asked {
        let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
        kitchen.say("Ruth", "14 lb frozen turkey, we have it, dinner Thursday 5 pm, 11 people, oven at 325");
        kitchen.press("Ruth", "Accept");
        kitchen.scene.room.taste.language = Some(tag.into());
        kitchen.say("Ruth", text);
        assert_eq!(kitchen.said.last().unwrap().key.as_deref(), Some("board"), "{tag}: {text}");
    }
}

#[test]
fn a_helper_asks_privately_what_is_theirs_on_a_day_and_whether_there_is_time() {
    let mut kitchen = shared();
    let own = privately(&mut kitchen, "Tom", "what do i have to do tomorrow").unwrap();
    assert!(own.contains("Salt the bird") && !own.contains("Carve"), "{own}");
    let thaw = privately(&mut kitchen, "Tom", "is it too late to thaw??").unwrap();
    assert!(thaw.contains("14 lb frozen turkey: 3 to 4 days in the fridge"), "{thaw}");
    assert!(privately(&mut kitchen, "Tom", "is it too late to call you?").is_none());
    for (tag, text) in [
        ("es-MX", "¿ya es tarde para descongelar?"),
        ("fr-FR", "c'est trop tard pour décongeler ?"),
        ("de-DE", "ist es zu spät zum auftauen?"),
        ("pt-BR", "ainda dá tempo de descongelar?"),
        ("it-IT", "è troppo tardi per scongelare?"),
    ] {
        let asked = ask(text, &Asker::new(tag, Chicago, kitchen.now)).unwrap_or_else(|_| panic!("{tag}: {text}"));
        assert!(asked.ask_back.is_some(), "{tag}: {text}: the weight is asked for");
    }
}

#[test]
fn a_job_is_handed_back_with_the_reason_behind_it() {
    let mut kitchen = shared();
    kitchen.among("Ana", "i cant carve my hands shake");
    let owner = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Carve, 0).unwrap().owner;
    assert_eq!(owner, None);
    // What is no reason says something else.
    let mut kitchen = shared();
    kitchen.among("Ana", "i cant carve without a good knife");
    let owner = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Carve, 0).unwrap().owner;
    assert!(owner.is_some());
}

#[test]
fn who_arrives_had_left_in_time() {
    let mut kitchen = carried();
    let travel = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().job(Step::Travel, 0).unwrap().clone();
    assert_eq!(kitchen.among("Tom", "we're here"), 0, "two days before nobody can be there");
    let leave = travel(&kitchen).at;
    kitchen.run_to("2027-11-25 16:50");
    kitchen.among("Tom", "we made it");
    let JobState::Done { at, .. } = travel(&kitchen).state else { panic!("the drive is open") };
    assert!((at - leave).num_minutes().abs() <= 10, "left at {at}, planned for {leave}");
    // A guest's arrival is of another drive.
    let mut kitchen = carried();
    kitchen.among("Ana", "hi");
    kitchen.run_to("2027-11-25 16:50");
    kitchen.among("Ana", "we're here");
    assert_eq!(travel(&kitchen).state, JobState::Waiting);
}

#[test]
fn a_thermometer_that_stands_still_is_explained() {
    let asked = [
        ("en-US", "its been stuck at 138 for an hour"),
        ("en-US", "is that the stall?"),
        ("en-US", "should we wrap it"),
        ("es-MX", "está atorado en 60"),
        ("fr-FR", "elle est bloquée à 62"),
        ("de-DE", "sie hängt bei 62"),
        ("pt-BR", "travou em 60"),
        ("it-IT", "è fermo a 60"),
    ];
    for (tag, text) in asked {
        assert!(answer(tag, text).contains("ask-stall"), "{tag}: {text}: {}", answer(tag, text));
    }
    let mut kitchen = shared();
    assert_eq!(kitchen.among("Tom", "im stuck at the airport"), 0);
    assert_eq!(kitchen.among("Tom", "traffic isnt moving"), 0);
}

#[test]
fn a_question_of_safety_is_answered_among_people_without_its_mark() {
    let mut kitchen = shared();
    assert_eq!(kitchen.among("Tom", "do u rinse the bird"), 1);
    assert_eq!(kitchen.among("Ana", "can i take it off at 160 and let it coast"), 1);
    let said = kitchen.said.last().unwrap();
    assert!(said.text[0].id.starts_with("ask-lethality"), "{:?}", said.text);
    assert_eq!(kitchen.among("Ana", "can i take my kid off the list at 160 elm st"), 0);
}
