//! A fresh bird bought days before its dinner: nobody is called to another day, ways out are offered, and the pack's date counts.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::plan::Step;
use chrono::{DateTime, Utc};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// Saturday; dinner is on Thursday.
fn bought(kind: RoomKind) -> (Kitchen, String) {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-20 10:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 10 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    let told = kitchen.say("Rosa", "I already bought it");
    (kitchen, told)
}

fn on(kitchen: &Kitchen) -> DateTime<Utc> {
    kitchen.scene.room.plan.as_ref().unwrap().job(Step::On, 0).unwrap().at
}

#[test]
fn the_jobs_stay_on_the_day_of_the_dinner_until_a_way_out_is_picked() {
    let (mut kitchen, told) = bought(RoomKind::Group);
    assert!(told.contains("won't keep until dinner") && told.contains("use by Friday"), "{told}");
    assert_eq!(on(&kitchen).to_rfc3339(), "2027-11-25T17:35:00+00:00");
    let board = kitchen.say("Rosa", "/board");
    assert!(board.contains("doesn't fit like this"), "{board}");
    assert!(!board.contains("Mon "), "{board}");

    // Sunday evening and Monday at the end of its two days: said once each.
    let said = kitchen.run_to("2027-11-21 18:30");
    assert!(said.contains("in the freezer by Mon 10:00") && said.contains("Dinner is Thu"), "{said}");
    let over = kitchen.run_to("2027-11-22 10:05");
    assert_eq!(over.matches("time in the fridge is up").count(), 1, "{over}");
    assert!(!kitchen.run_to("2027-11-23 09:00").contains("fresh bird"));
}

#[test]
fn bought_in_time_it_has_no_clock_of_its_own_whatever_else_does_not_fit() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 10:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 10 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-23 14:35");
    kitchen.say("Rosa", "bought it");
    let plan = kitchen.scene.room.plan.as_mut().unwrap();
    // A dish that finds no room, say: the bird still goes on before its two days are over.
    plan.clash = Some(carvetime::room::state::ToldClash { short_min: 10, because: Vec::new() });
    kitchen.say("Rosa", "/board");
    let said = kitchen.run_to("2027-11-25 16:00");
    assert!(!said.contains("fresh bird"), "{said}");
}

#[test]
fn another_bird_is_still_to_be_bought() {
    let (mut kitchen, _) = bought(RoomKind::Group);
    kitchen.press("Rosa", "Buy a fresh one later");
    let board = kitchen.say("Rosa", "/board");
    assert!(board.contains("Next: Buy the bird, Tue") && !board.contains("doesn't fit"), "{board}");
    let said = kitchen.run_to("2027-11-22 11:00");
    assert!(!said.contains("fresh bird"), "nothing runs out for a bird that is not bought: {said}");
    kitchen.say("Rosa", "/undo");
    assert!(kitchen.say("Rosa", "/board").contains("doesn't fit like this"));
}

#[test]
fn the_date_on_its_pack_settles_it() {
    let (mut kitchen, _) = bought(RoomKind::Private);
    let told = kitchen.say("Rosa", "the pack says use by Nov 26");
    assert!(told.contains("use by Friday, November 26"), "{told}");
    let board = kitchen.say("Rosa", "/board");
    assert!(!board.contains("doesn't fit") && board.contains("Salt the bird, Tue 6:30 PM"), "{board}");
    // Asked, it is answered; told too late, it is said.
    assert!(kitchen.say("Rosa", "use by was Nov 12, still ok?").contains("past it, don't eat it"));
    let over = kitchen.say("Rosa", "use by Nov 12");
    assert!(over.contains("isn't for eating"), "{over}");
    assert_eq!(on(&kitchen).to_rfc3339(), "2027-11-25T17:35:00+00:00");
}

#[test]
fn the_date_is_read_in_every_language() {
    let told = [
        ("de-DE", "zu verbrauchen bis 26.11."),
        ("es-ES", "caduca el 26 de noviembre"),
        ("fr-FR", "à consommer jusqu'au 26 novembre"),
        ("pt-BR", "validade 26/11"),
        ("it-IT", "da consumare entro il 26 novembre"),
    ];
    for (language, text) in told {
        let (mut kitchen, _) = bought(RoomKind::Private);
        kitchen.scene.room.taste.language = Some(language.to_owned());
        let answer = kitchen.say("Rosa", text);
        let wish = &kitchen.scene.room.plan.as_ref().unwrap().wish;
        let day = wish.use_by.map(|until| until.with_timezone(&Chicago).date_naive().to_string());
        assert_eq!(day.as_deref(), Some("2027-11-26"), "{language}: {text} -> {answer}");
    }
}
