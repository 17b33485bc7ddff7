//! "Is the turkey done?", asked in a group with the bird named: answered by what was read last, before, while and after it cooks.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

fn planned() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, dinner Thursday 6 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    kitchen
}

fn asked(kitchen: &mut Kitchen, tag: &str, text: &str) -> Vec<String> {
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen.ids("Tom", text, false).0
}

#[test]
fn the_bird_asked_after_by_name_is_the_plans() {
    let questions: [&[&str]; 6] = [
        &["is the turkey done?", "turkey ready?", "how's the turkey?", "is the bird cooked yet"],
        &["¿ya está listo el pavo?", "el pavo ya está?", "cómo va el pavo?"],
        &["elle est cuite la dinde ?", "la dinde est prête ?", "elle en est où la dinde ?"],
        &["ist die pute fertig?", "ist die pute schon gar?", "wie weit ist die pute?"],
        &["o peru ja ta pronto?", "o peru já assou?", "o peru está pronto?"],
        &["il tacchino è pronto?", "è cotto il tacchino?", "a che punto è il tacchino?"],
    ];
    for (tag, questions) in TAGS.into_iter().zip(questions) {
        for text in questions {
            let mut kitchen = planned();
            kitchen.run_to("2027-11-25 13:10");
            kitchen.say("Rosa", "the bird is on");
            kitchen.run_to("2027-11-25 14:00");
            assert_eq!(asked(&mut kitchen, tag, text), ["room-when"], "{tag}: {text}");
        }
    }
}

#[test]
fn once_it_is_off_it_is_told_since_when() {
    let mut kitchen = planned();
    kitchen.run_to("2027-11-25 13:10");
    kitchen.say("Rosa", "the bird is on");
    kitchen.run_to("2027-11-25 16:20");
    kitchen.say("Tom", "167 breast 176 thigh 170 wing");
    let (ids, said) = kitchen.ids("Tom", "is the turkey done?", false);
    assert_eq!(ids, ["room-log-all"], "nothing is left to foresee: {said}");
    kitchen.say("Rosa", "it's out");
    kitchen.run_to("2027-11-25 16:50");
    let (ids, said) = kitchen.ids("Tom", "is the turkey ready?", false);
    assert_eq!(ids, ["room-when-off", "room-line"], "{said}");
    assert!(said.contains("4:20") && said.contains("Carve"), "{said}");
}

#[test]
fn the_same_words_without_a_mark_and_talk_of_other_things_ask_nothing() {
    let mut kitchen = planned();
    for (tag, text) in [
        ("en-US", "turkey ready"),
        ("de-DE", "die pute fertig"),
        ("pt-BR", "comprei 2kg de sal grosso pro churrasco"),
        ("en-US", "got 2 kg of coarse salt for the barbecue"),
        ("pt-BR", "o voo da Bia é 19h30 dia 23"),
        ("en-US", "how's the car?"),
    ] {
        assert!(
            !asked(&mut kitchen, tag, text).iter().any(|id| id == "room-when" || id == "ask-convert"),
            "{tag}: {text}"
        );
    }
}

#[test]
fn a_greeting_beside_it_takes_nothing_from_what_was_done() {
    for (tag, text) in [
        ("en-US", "dinner is served! merry christmas"),
        ("pt-BR", "servido! feliz natal"),
        ("de-DE", "serviert! frohe weihnachten"),
        ("fr-FR", "c'est servi ! joyeux noël"),
        ("es-ES", "¡servido! feliz navidad"),
        ("it-IT", "servito! buon natale"),
    ] {
        let mut kitchen = planned();
        kitchen.run_to("2027-11-25 13:10");
        kitchen.say("Rosa", "the bird is on");
        kitchen.run_to("2027-11-25 16:20");
        kitchen.say("Tom", "167 breast 176 thigh 170 wing");
        kitchen.say("Rosa", "it's out");
        kitchen.run_to("2027-11-25 17:50");
        asked(&mut kitchen, tag, text);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        let carved = plan.job(carvetime_core::plan::Step::Carve, 0).unwrap();
        assert!(matches!(carved.state, carvetime::room::state::JobState::Done { .. }), "{tag}: {text}");
    }
}
