//! Called by name in a group, the bot answers as to its username; and what the packer and the family did with the salt is heard there.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::command::beside_our_name;
use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

#[test]
fn our_name_at_the_start_or_called_at_the_end_is_a_call() {
    for (text, rest) in [
        ("carvetime, what's next?", Some("what's next?")),
        ("Carvetime que sigue", Some("que sigue")),
        ("@carvetime: 128 breast", Some("128 breast")),
        ("carvetime", None),
        ("carvetime!", None),
        ("is carvetime on?", None),
        ("carvetimes are over", None),
        ("how are we doing, carvetime", Some("how are we doing")),
        ("how are we doing carvetime?", Some("how are we doing")),
        ("I asked carvetime", None),
    ] {
        assert_eq!(beside_our_name(text), rest, "{text}");
    }
}

fn planned(tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, bought, dinner Thursday 5 pm, 10 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen
}

#[test]
fn a_label_that_says_injected_takes_the_salt_off_the_plan() {
    for (tag, text) in [
        ("en-US", "the turkey is already injected with a solution, says the label"),
        ("es-MX", "el pavo ya viene inyectado con solucion, dice la etiqueta"),
        ("de-DE", "die Pute ist schon gespritzt, laut Packung"),
        ("pt-BR", "o peru já vem temperado, diz o rótulo"),
    ] {
        let mut kitchen = planned(tag);
        kitchen.among("Rosa", text);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert!(plan.job(Step::Salt, 0).is_none_or(|job| job.state != JobState::Waiting), "{tag}: {text}");
    }
}

#[test]
fn salt_told_in_other_words_ticks_the_job_and_twice_is_answered() {
    let mut kitchen = planned("es-MX");
    kitchen.run_to("2027-11-24 18:00");
    kitchen.among("Rosa", "ya le eche sal al pavo");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(matches!(plan.job(Step::Salt, 0).unwrap().state, JobState::Done { .. }));
    let mut kitchen = planned("es-MX");
    assert_eq!(kitchen.ids("Rosa", "le pusimos sal dos veces, que hago", false).0, ["ask-salted-twice"]);
}

#[test]
fn how_it_goes_is_answered_with_the_board_where_the_bot_is_asked() {
    for (tag, text) in [
        ("en-US", "how are we doing"),
        ("en-US", "what do we need to do"),
        ("es-MX", "cómo vamos"),
        ("fr-FR", "on en est où ?"),
        ("de-DE", "wie sieht's aus"),
        ("pt-BR", "como estamos"),
        ("it-IT", "a che punto siamo"),
    ] {
        let mut kitchen = planned(tag);
        kitchen.say("Rosa", text);
        let board = kitchen.said.iter().any(|say| say.text.iter().any(|text| text.id == "room-board-next"));
        assert!(board, "{tag}: {text}: {:?}", kitchen.said);
        // People ask each other that of anything.
        assert_eq!(kitchen.among("Tom", text), 0, "{tag}: {text}");
    }
}
