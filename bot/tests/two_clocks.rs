//! The dinner's hour where it is eaten in another zone, told in any order; and what it was, by the clock it was told by.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Ground, Wish, read_wish};
use carvetime::room::{RoomKind, What};
use chrono_tz::America::{Chicago, New_York};
use kitchen::Kitchen;

const BIRD: &str = "/plan 12 lb fresh turkey, oven at 325, 8 people, dinner Thursday 5 pm";
const AWAY: &str = "dinner is at my sister's in Denver, 3 h drive";

fn new_york(kind: RoomKind) -> Kitchen {
    Kitchen::new(kind, "en-US", New_York, "2027-11-20 10:00")
}

fn among(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

#[test]
fn a_place_told_after_the_hour_makes_it_the_place_s_hour_in_a_draft() {
    let mut kitchen = new_york(RoomKind::Private);
    kitchen.say("Rosa", BIRD);
    let said = kitchen.say("Rosa", AWAY);
    assert!(said.contains("On the table Thu 5:00 PM (Denver)"), "{said}");
    // Whoever meant home's clock is told how to say so, and may say just that.
    assert!(said.contains("say “dinner Thu 3:00 PM (Denver)”"), "{said}");
    let said = kitchen.say("Rosa", "dinner Thu 3:00 PM (Denver)");
    assert!(said.contains("On the table Thu 3:00 PM (Denver)") && !said.contains("If you meant"), "{said}");
    let said = kitchen.say("Rosa", "dinner 6 pm");
    assert!(said.contains("On the table Thu 6:00 PM (Denver)"), "an hour told later is the table's too: {said}");
    let said = kitchen.say("Rosa", "dinner 5 pm New York time");
    assert!(said.contains("On the table Thu 3:00 PM (Denver)"), "home's clock, and said so: {said}");
}

#[test]
fn a_place_told_of_a_standing_plan_is_answered_with_its_hour() {
    for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, true), (RoomKind::Group, false)] {
        let mut kitchen = new_york(kind);
        kitchen.say("Rosa", BIRD);
        kitchen.press("Rosa", "Accept");
        let said = if addressed { kitchen.say("Rosa", AWAY) } else { among(&mut kitchen, "Rosa", AWAY) };
        assert!(said.contains("dinner Thu 5:00 PM (Denver) and 3 h away"), "{kind:?} {addressed}: {said}");
        assert!(said.contains("say “dinner Thu 3:00 PM (Denver)”"), "{said}");
        let said = kitchen.say("Rosa", "/board");
        assert!(said.contains("Dinner Thu 5:00 PM (Denver)"), "{said}");
        let said = kitchen.say("Rosa", "/undo");
        assert!(said.contains("Taken back: dinner Thu 5:00 PM (Denver)"), "{said}");
    }
}

#[test]
fn in_a_group_a_helper_s_word_of_the_place_is_the_host_s_to_take() {
    let mut kitchen = new_york(RoomKind::Group);
    kitchen.say("Rosa", BIRD);
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    let said = among(&mut kitchen, "Tom", AWAY);
    assert!(said.contains("dinner Thu 5:00 PM (Denver) and 3 h away. For the plan too, Rosa?"), "{said}");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.wish.there.is_none(), "{:?}", plan.wish);
    for idle in ["the dinner at my sister's in Denver was great", "is dinner in Denver, 3 h drive?", "we drive 3 h"] {
        let said = among(&mut kitchen, "Rosa", idle);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert!(plan.wish.there.is_none(), "{idle}: {said}");
    }
}

#[test]
fn an_hour_by_a_named_clock_is_that_clock_s_in_every_language() {
    let now = chrono::TimeZone::with_ymd_and_hms(&chrono::Utc, 2027, 11, 20, 18, 0, 0).unwrap();
    for (tag, text) in [
        ("en", "dinner Thursday 5 pm Denver time"),
        ("en", "dinner Thursday 5 pm (Denver)"),
        ("es", "cena el jueves a las 17:00, hora de Denver"),
        ("fr", "repas jeudi à 17 h, heure de Denver"),
        ("de", "Essen Donnerstag 17 Uhr Denver-Zeit"),
        ("de", "Essen Donnerstag 17 Uhr Ortszeit Denver"),
        ("pt", "jantar quinta às 17h, hora de Denver"),
        ("it", "cena giovedì alle 17, ora di Denver"),
    ] {
        let ground = Ground::new(tag, tag != "en", Chicago, now);
        let (told, problems) = read_wish(text, &ground);
        let zone = told.there.as_ref().and_then(|there| there.zone());
        assert_eq!(zone, Some(chrono_tz::America::Denver), "{text} {problems:?}");
        let mut wish = Wish::default();
        wish.merge_at(told, &ground);
        wish.settle(&ground);
        let hour = wish.dinner.unwrap().with_timezone(&chrono_tz::America::Denver).format("%a %H:%M").to_string();
        assert_eq!(hour, "Thu 17:00", "{text}");
    }
    let ground = Ground::new("en", false, Chicago, now);
    for text in ["dinner Thursday 5 pm, what time to start", "it's dinner time at 5 on Thursday"] {
        assert_eq!(read_wish(text, &ground).0.there, None, "{text}");
    }
}

#[test]
fn what_was_is_told_by_the_clock_it_stood_in() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 10:00");
    let plan =
        "/plan 14 lb fresh turkey, dinner Thursday 12:00 at my sister's in Denver, 3 h drive, 10 people, oven at 325";
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", "Accept");
    let said = kitchen.say("Rosa", "/move 6 pm");
    // Noon there, 50 min before: ten past eleven by the clock of that house, which then stood from the drive on.
    assert!(said.contains("Reheat: Thu 5:10 PM (Denver) (was Thu 11:10 AM (Denver))"), "{said}");
    let said = kitchen.say("Rosa", "/move 30 min earlier");
    for line in
        ["Leave: Thu 2:25 PM (was Thu 2:55 PM)\n", "Into the fridge: Thu 6:30 PM (Denver) (was Thu 7:00 PM (Denver))\n"]
    {
        assert!(said.contains(line), "{line} {said}");
    }
    // From home to Denver: it was home's clock then.
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 10:00");
    kitchen.say("Rosa", BIRD);
    kitchen.press("Rosa", "Accept");
    let said = kitchen.say("Rosa", AWAY);
    assert!(said.contains("(was Thu 4:35 PM)"), "{said}");
    assert!(!said.contains("(Denver))"), "nothing was in Denver before: {said}");
}

#[test]
fn a_group_goes_by_the_clock_of_whoever_plans_in_it_where_it_has_none() {
    let mut kitchen = new_york(RoomKind::Group);
    kitchen.scene.room.taste.zone = None;
    kitchen.say("Rosa", "/help");
    for person in kitchen.scene.people.values_mut() {
        person.taste.zone = Some("America/Denver".to_owned());
    }
    let said = kitchen.say("Rosa", BIRD);
    assert!(said.contains("America/Denver it is"), "{said}");
    assert!(said.contains("On the table Thu 5:00 PM"), "{said}");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    assert_eq!(kitchen.scene.room.taste.zone.as_deref(), Some("America/Denver"));
    // What rings with nobody speaking goes by it too.
    let said = kitchen.run_to("2027-11-26 20:00");
    assert!(said.contains("Nobody has these yet") && said.contains("How was it?"), "{said}");
    assert!(!said.contains("it is: "), "said once: {said}");
    // A plan from before it was kept.
    let mut kitchen = new_york(RoomKind::Group);
    kitchen.say("Rosa", BIRD);
    kitchen.press("Rosa", "Accept");
    kitchen.scene.room.taste.zone = None;
    for person in kitchen.scene.people.values_mut() {
        person.taste.zone = Some("America/New_York".to_owned());
    }
    let said = kitchen.say("Tom", "/board");
    assert!(said.contains("Dinner Thu 5:00 PM"), "{said}");
}

#[test]
fn at_home_after_all_there_is_no_drive_and_the_hour_is_the_kitchens() {
    let said = [
        ("en-US", "dinner is at home after all"),
        ("en-US", "no drive, we stay home"),
        ("es-MX", "al final cenamos en casa"),
        ("fr-FR", "finalement on mange à la maison"),
        ("de-DE", "wir essen doch zu Hause"),
        ("de-DE", "wir essen jetzt doch daheim"),
        ("pt-BR", "no fim vamos comer em casa"),
        ("it-IT", "alla fine si mangia a casa"),
    ];
    for (tag, text) in said {
        for kind in [RoomKind::Private, RoomKind::Group] {
            let mut kitchen = new_york(kind);
            kitchen.say("Rosa", &format!("{BIRD} at my sister's in Denver, 3 h drive"));
            kitchen.press("Rosa", "Accept");
            kitchen.scene.room.taste.language = Some(tag.to_owned());
            let told =
                if kind == RoomKind::Group { among(&mut kitchen, "Rosa", text) } else { kitchen.say("Rosa", text) };
            let plan = kitchen.scene.room.plan.as_ref().unwrap();
            let hour = plan.wish.dinner.unwrap().with_timezone(&New_York).format("%a %H:%M").to_string();
            assert_eq!(hour, "Thu 17:00", "{tag}: {text}: {told}");
            let travels = plan.jobs.iter().any(|job| job.step() == Some(carvetime_core::plan::Step::Travel));
            assert!(!travels && plan.wish.there.is_none(), "{tag}: {text}: {told}");
        }
    }
    // Somebody else's evening, and what is asked, change nothing.
    let mut kitchen = new_york(RoomKind::Group);
    kitchen.say("Rosa", &format!("{BIRD} at my sister's in Denver, 3 h drive"));
    kitchen.press("Rosa", "Accept");
    for text in
        ["do we eat at home?", "my brother stays home this year", "should we stay home", "let's eat at home on Friday"]
    {
        among(&mut kitchen, "Rosa", text);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().wish.there.is_some(), "{text}");
    }
}

#[test]
fn at_home_where_it_is_eaten_there_anyway_says_nothing_of_shopping() {
    let mut kitchen = new_york(RoomKind::Group);
    kitchen.say("Rosa", BIRD);
    kitchen.press("Rosa", "Accept");
    kitchen.scene.room.taste.language = Some("fr-FR".to_owned());
    let before = kitchen.scene.room.plan.clone();
    for who in ["Rosa", "Li"] {
        among(&mut kitchen, who, "finalement on mange à la maison");
        assert_eq!(kitchen.scene.room.plan, before, "{who}");
    }
}
