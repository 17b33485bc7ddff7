//! With the look and the pull both called, "it's out" is the pull, and a bare "done" asks which, unless every spot was read at the target.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

/// A bird over the heat, its last look and the pull both called and not answered.
fn called(kind: RoomKind) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, dinner Thursday 5 pm, 9 people");
    kitchen.press("Rosa", "Accept");
    if kind == RoomKind::Group {
        kitchen.say("Ben", "/take check");
    }
    kitchen.run_to("2027-11-25 12:05");
    kitchen.say("Rosa", "bird is on");
    let heard = kitchen.run_to("2027-11-25 15:53");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let open =
        |step| plan.jobs.iter().any(|job| job.step() == Some(step) && job.state == JobState::Waiting && job.calls > 0);
    assert!(open(Step::Check) && open(Step::Pull), "{heard}");
    kitchen
}

fn is_off(kitchen: &Kitchen) -> bool {
    kitchen.scene.room.plan.as_ref().unwrap().is_off()
}

fn say(kitchen: &mut Kitchen, text: &str, addressed: bool) -> Vec<String> {
    let from = kitchen.said.len();
    if addressed {
        kitchen.say("Rosa", text);
    } else {
        kitchen.among("Rosa", text);
    }
    kitchen.said[from..].iter().flat_map(|say| say.text.iter().map(|text| text.id.to_string())).collect()
}

#[test]
fn it_is_out_is_the_pull_whatever_look_is_open() {
    for text in ["it's out", "pulled it", "took it off", "took it out", "it's off"] {
        for addressed in [true, false] {
            let mut kitchen = called(RoomKind::Group);
            kitchen.say("Rosa", "breast 168, thigh 177, wing 170");
            say(&mut kitchen, text, addressed);
            assert!(is_off(&kitchen), "{text}, {addressed}");
        }
    }
}

#[test]
fn a_bare_done_with_nothing_read_asks_which_and_marks_nothing() {
    for text in ["done", "Done!", "done 👍"] {
        for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, false)] {
            let mut kitchen = called(kind);
            let before = kitchen.scene.room.plan.as_ref().unwrap().facts.clone();
            let ids = say(&mut kitchen, text, addressed);
            assert_eq!(ids.first().map(String::as_str), Some("room-done-which"), "{text} {kind:?}: {ids:?}");
            assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().facts, before, "{text}");
            kitchen.press("Rosa", "Only looked");
            assert!(!is_off(&kitchen));
            let look = kitchen.scene.room.plan.as_ref().unwrap().facts.last().cloned();
            assert_eq!(look.map(|fact| fact.step), Some("check".into()));
        }
    }
    // Off, and nothing read: what it read is asked for.
    let mut kitchen = called(RoomKind::Group);
    say(&mut kitchen, "done", false);
    let off = kitchen.press("Rosa", "Off the heat");
    assert!(is_off(&kitchen) && off.contains("165 °F"), "{off}");
}

#[test]
fn read_too_low_done_is_never_off_by_a_word() {
    let mut kitchen = called(RoomKind::Group);
    kitchen.say("Rosa", "breast 150, thigh 158, wing 151");
    kitchen.run_to("2027-11-25 16:20");
    let ids = say(&mut kitchen, "done", false);
    assert!(!is_off(&kitchen), "{ids:?}");
    if ids.iter().any(|id| id == "room-done-which") {
        let sure = kitchen.press("Rosa", "Off the heat");
        assert!(!is_off(&kitchen) && sure.contains("Does it read that now?"), "{sure}");
    }
}

#[test]
fn read_at_the_target_everywhere_done_is_off() {
    for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, false)] {
        let mut kitchen = called(kind);
        kitchen.say("Rosa", "breast 168, thigh 177, wing 170");
        say(&mut kitchen, "done", addressed);
        assert!(is_off(&kitchen), "{kind:?}");
    }
}

#[test]
fn while_only_the_look_is_called_done_is_the_look() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, dinner Thursday 5 pm, 9 people");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 12:05");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 14:35");
    say(&mut kitchen, "done", false);
    assert!(!is_off(&kitchen));
    let facts = &kitchen.scene.room.plan.as_ref().unwrap().facts;
    assert_eq!(facts.last().map(|fact| fact.step.as_str()), Some("check"));
}

#[test]
fn it_is_asked_in_every_language() {
    for (tag, done) in [
        ("en-US", "done"),
        ("es-ES", "hecho"),
        ("fr-FR", "fait"),
        ("de-DE", "erledigt"),
        ("pt-BR", "feito"),
        ("it-IT", "fatto"),
    ] {
        let mut kitchen = over_heat(RoomKind::Private, tag);
        let pull = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Pull, 0).unwrap().at;
        let local = (pull + chrono::TimeDelta::minutes(3)).with_timezone(&Chicago).format("%Y-%m-%d %H:%M").to_string();
        kitchen.run_to(&local);
        let from = kitchen.said.len();
        let said = kitchen.say("Ana", done);
        let first = kitchen.said.get(from).and_then(|say| say.text.first()).map(|text| text.id.to_string());
        assert_eq!(first.as_deref(), Some("room-done-which"), "{tag}: {said}");
    }
}
