//! What a family says of its bird, its shopping and its oven through a whole week, and was not heard or heard wrong.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::New_York;
use kitchen::Kitchen;

/// A bird planned for Thursday by Priya in a group with Dan, the clock at `at`.
fn planned(at: &str, wish: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", New_York, at);
    kitchen.say("Priya", &format!("/plan {wish}"));
    kitchen.press("Priya", "Accept");
    kitchen.say("Dan", "/board");
    kitchen
}

fn waits(kitchen: &Kitchen, step: Step) -> bool {
    let job = kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap();
    job.state == JobState::Waiting
}

/// What was said of all that came from `before` on.
fn since(kitchen: &Kitchen, before: usize) -> Vec<String> {
    kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect()
}

fn kind(tag: &str, text: &str) -> String {
    let now = "2027-11-24T18:00:00Z".parse().unwrap();
    ask(text, &Asker::new(tag, New_York, now)).map_or_else(|_| "unread".into(), |answer| answer.kind.into())
}

// ---- a question marks nothing done

#[test]
fn a_balcony_asked_for_is_answered_and_dries_no_bird() {
    for words in [
        "can the turkey go on the balcony? its 38 out",
        "can the turkey go on the balcony",
        "can the turkey go on the balcony its 38 out",
        "is it ok to keep the turkey in the garage",
    ] {
        let mut kitchen =
            planned("2027-11-24 18:30", "13 lb fresh turkey, we have it, 12 people, thursday 5pm, oven, no salt");
        kitchen.run_to("2027-11-24 19:10");
        let before = kitchen.said.len();
        kitchen.among("Priya", words);
        assert_eq!(since(&kitchen, before), ["ask-cold-place"], "{words}");
        assert!(waits(&kitchen, Step::Temper), "{words}");
    }
}

#[test]
fn a_cold_place_asked_for_is_answered_in_every_language() {
    for (tag, text) in [
        ("en-US", "could it go on the porch? it's 3 C outside"),
        ("en-US", "can i keep the leftovers in the garage overnight"),
        ("es-ES", "¿puedo dejar el pavo en el balcón?"),
        ("es-MX", "puede el pavo quedarse en la terraza"),
        ("fr-FR", "est-ce que la dinde peut aller sur le balcon ?"),
        ("de-DE", "kann die Pute auf den Balkon?"),
        ("de-DE", "darf der Puter in die Garage"),
        ("pt-BR", "posso deixar o peru na varanda?"),
        ("it-IT", "posso lasciare il tacchino sul balcone?"),
    ] {
        assert_eq!(kind(tag, text), "cold-place", "{tag}: {text}");
    }
    for (tag, text) in [
        ("en-US", "can I use the smoker on the porch"),
        ("en-US", "can i still eat it, the turkey was left on the porch overnight"),
        ("en-US", "can i put the chairs on the balcony"),
    ] {
        assert_ne!(kind(tag, text), "cold-place", "{tag}: {text}");
    }
}

// ---- the bird is another one

/// Frozen, planned on Sunday evening, and nobody has said that it is bought.
fn frozen() -> Kitchen {
    let mut kitchen = planned("2027-11-21 18:30", "16 lb frozen turkey for 12 thursday 4pm, oven");
    kitchen.run_to("2027-11-22 08:51");
    kitchen
}

fn wish(kitchen: &Kitchen) -> carvetime::reading::Wish {
    kitchen.scene.room.plan.as_ref().unwrap().wish.clone()
}

fn has(kitchen: &Kitchen, step: Step) -> bool {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).is_some()
}

#[test]
fn another_bird_than_planned_is_heard_with_all_that_is_said_of_it() {
    let swap = |kitchen: &mut Kitchen, words: &str| match words.starts_with('/') {
        true => kitchen.say("Priya", words),
        false => {
            let before = kitchen.said.len();
            kitchen.among("Priya", words);
            since(kitchen, before).join(" ")
        }
    };
    for words in ["/plan its a fresh 13 lb one, already brined", "its a fresh 13 lb one, already brined"] {
        let mut kitchen = frozen();
        let said = swap(&mut kitchen, words);
        assert!(said.contains("two days at most") || said.contains("room-swap-keeps"), "{words}: {said}");
        let wish = wish(&kitchen);
        assert_eq!((wish.condition.as_deref(), wish.presalted), (Some("fresh"), Some(true)), "{words}");
        assert!(wish.mass_g.is_some_and(|mass| (mass - 5897.0).abs() < 2.0), "{words}: {wish:?}");
        assert!(!has(&kitchen, Step::Salt) && !has(&kitchen, Step::Thaw), "{words}");
        // Bought was taken for done of the other one.
        assert!(
            waits(&kitchen, Step::Buy) && kitchen.scene.room.plan.as_ref().unwrap().assumed(kitchen.now).count() == 0
        );
        let said = kitchen.press("Priya", "We have it");
        assert!(said.contains("It won't keep until dinner") && said.contains("use-by date"), "{said}");
    }
}

#[test]
fn another_bird_is_heard_in_every_language() {
    for (tag, plan, accept, words) in [
        (
            "es-ES",
            "/plan pavo congelado de 7 kg, 12 personas, jueves 16:00, horno",
            "Aceptar",
            "/plan es fresco, de 6 kg, ya viene salado",
        ),
        (
            "fr-FR",
            "/plan dinde surgelée de 7 kg, 12 personnes, jeudi 16h, four",
            "Accepter",
            "/plan elle est fraîche, 6 kg, déjà salée",
        ),
        (
            "de-DE",
            "/plan gefrorene Pute 7 kg, 12 Personen, Donnerstag 16 Uhr, Ofen",
            "Annehmen",
            "/plan sie ist frisch, 6 kg, schon gesalzen",
        ),
        (
            "pt-BR",
            "/plan peru congelado de 7 kg, 12 pessoas, quinta 16h, forno",
            "Aceitar",
            "/plan é fresco, de 6 kg, já vem salgado",
        ),
        (
            "it-IT",
            "/plan tacchino congelato 7 kg, 12 persone, giovedì alle 16, forno",
            "Accetta",
            "/plan è fresco, da 6 kg, già salato",
        ),
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Group, tag, New_York, "2027-11-21 18:30");
        kitchen.say("Priya", plan);
        kitchen.press("Priya", accept);
        kitchen.run_to("2027-11-22 08:51");
        let said = kitchen.say("Priya", words);
        let wish = wish(&kitchen);
        assert_eq!((wish.condition.as_deref(), wish.mass_g), (Some("fresh"), Some(6000.0)), "{tag}: {said}");
        assert!(!has(&kitchen, Step::Salt) && waits(&kitchen, Step::Buy), "{tag}: {said}");
    }
}

#[test]
fn a_bird_said_to_be_salted_by_the_packer_is_never_dosed() {
    for words in ["/plan already brined", "/plan it says contains up to 12% solution"] {
        let mut kitchen = frozen();
        let said = kitchen.say("Priya", words);
        assert!(said.contains("no salt"), "{words}: {said}");
        // The plan that takes its place a little later keeps that.
        let said = kitchen.say("Priya", "/plan 13 lb fresh turkey thursday 4pm 12 people oven");
        assert!(said.contains("No salt on this one") && !said.contains("Salt the bird"), "{words}: {said}");
        kitchen.press("Priya", "Replace: Priya's turkey");
        assert!(!has(&kitchen, Step::Salt), "{words}");
    }
    // Another bird is another matter, and so is one whose host wants it salted.
    for words in [
        "/plan another 13 lb fresh turkey thursday 4pm 12 people oven",
        "/plan 13 lb fresh turkey thursday 4pm 12 people oven, dry brine",
    ] {
        let mut kitchen = frozen();
        kitchen.say("Priya", "/plan already brined");
        let said = kitchen.say("Priya", words);
        assert!(said.contains("Salt the bird"), "{words}: {said}");
    }
}

#[test]
fn the_label_is_heard_among_people() {
    let mut kitchen = frozen();
    kitchen.among("Priya", "says contains up to 12% solution");
    assert!(!has(&kitchen, Step::Salt));
    // Of a helper the host is asked; wine contains something else.
    for (words, said) in [("it says contains up to 12% solution", true), ("this wine contains 12% alcohol", false)] {
        let mut kitchen = frozen();
        assert_eq!(kitchen.among("Dan", words) > 0, said, "{words}");
        assert!(has(&kitchen, Step::Salt), "{words}");
    }
}

// ---- bought or not

fn at(kitchen: &Kitchen, step: Step) -> chrono::DateTime<chrono::Utc> {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().at
}

#[test]
fn nobody_bought_it_yet_opens_the_shopping_again_and_the_rest_moves() {
    let mut kitchen = planned("2027-11-21 18:30", "16 lb frozen turkey for 12 thursday 4pm, oven");
    kitchen.run_to("2027-11-21 19:50");
    let before = kitchen.said.len();
    kitchen.among("Priya", "omg stop. nobody bought anything yet dan goes tomorrow");
    assert!(since(&kitchen, before).contains(&"room-unbought".to_owned()));
    assert_eq!(at(&kitchen, Step::Buy), kitchen.local("2027-11-22 11:00"));
    assert!(at(&kitchen, Step::Thaw) > at(&kitchen, Step::Buy));
    // Called again then, and never taken for done any more.
    let called = kitchen.run_to("2027-11-22 14:00");
    assert!(called.contains("Time to buy the bird"), "{called}");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.assumed(kitchen.now).all(|job| job.step() != Some(Step::Buy)));
}

#[test]
fn not_bought_too_late_says_what_no_longer_works() {
    let mut kitchen = planned("2027-11-21 18:30", "16 lb frozen turkey for 12 thursday 4pm, oven");
    kitchen.run_to("2027-11-24 12:00");
    let before = kitchen.said.len();
    kitchen.among("Dan", "we haven't bought the turkey yet, I can go tomorrow");
    let said = since(&kitchen, before);
    assert!(
        said.iter().any(|id| id == "room-unbought") && said.iter().any(|id| id.starts_with("room-clash")),
        "{said:?}"
    );
}

#[test]
fn nobody_bought_it_is_heard_in_every_language() {
    for (tag, plan, accept, words) in [
        (
            "es-ES",
            "/plan pavo congelado de 7 kg, 12 personas, jueves 16:00, horno",
            "Aceptar",
            "oye nadie ha comprado nada todavía, Luis va mañana",
        ),
        (
            "fr-FR",
            "/plan dinde surgelée de 7 kg, 12 personnes, jeudi 16h, four",
            "Accepter",
            "personne n'a rien acheté, Luc y va demain",
        ),
        (
            "de-DE",
            "/plan gefrorene Pute 7 kg, 12 Personen, Donnerstag 16 Uhr, Ofen",
            "Annehmen",
            "halt, keiner hat was gekauft, Uli geht morgen",
        ),
        (
            "pt-BR",
            "/plan peru congelado de 7 kg, 12 pessoas, quinta 16h, forno",
            "Aceitar",
            "gente ninguém comprou nada ainda, o Léo vai amanhã",
        ),
        (
            "it-IT",
            "/plan tacchino congelato 7 kg, 12 persone, giovedì alle 16, forno",
            "Accetta",
            "nessuno ha ancora comprato niente, Leo va domani",
        ),
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Group, tag, New_York, "2027-11-21 18:30");
        kitchen.say("Priya", plan);
        kitchen.press("Priya", accept);
        kitchen.run_to("2027-11-21 19:50");
        let before = kitchen.said.len();
        kitchen.among("Priya", words);
        assert!(since(&kitchen, before).contains(&"room-unbought".to_owned()), "{tag}");
        assert_eq!(at(&kitchen, Step::Buy), kitchen.local("2027-11-22 11:00"), "{tag}");
    }
}

#[test]
fn what_nobody_has_said_is_asked_about_the_next_day() {
    let mut kitchen = planned("2027-11-21 18:30", "16 lb frozen turkey for 12 thursday 4pm, oven");
    let asked = kitchen.run_to("2027-11-22 09:00");
    assert!(asked.contains("Nobody has said so: is the bird bought?") && !asked.contains("thawing since"), "{asked}");
    // It is taken for done meanwhile, and asked again in the evening.
    assert!(kitchen.scene.room.plan.as_ref().unwrap().assumed(kitchen.now).count() > 0);
    let asked = kitchen.run_to("2027-11-22 18:00");
    assert!(asked.contains("is the bird bought?"), "{asked}");
    kitchen.press("Priya", "Yes");
    let asked = kitchen.run_to("2027-11-22 18:02");
    assert!(asked.contains("has the bird been thawing since Sun 7:00 PM?"), "{asked}");
    let said = kitchen.press("Priya", "Not yet");
    assert!(said.contains("Not thawing yet") && !waits(&kitchen, Step::Buy), "{said}");
    assert!(at(&kitchen, Step::Thaw) >= kitchen.local("2027-11-22 18:02"));
    // Alone with the bot a word will do.
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", New_York, "2027-11-21 18:30");
    kitchen.say("Priya", "/plan 16 lb frozen turkey for 12 thursday 4pm, oven");
    kitchen.press("Priya", "Accept");
    kitchen.run_to("2027-11-22 09:05");
    let said = kitchen.say("Priya", "not yet");
    assert!(said.contains("Not bought yet"), "{said}");
}

#[test]
fn the_hour_of_the_shopping_is_kept_where_it_can_be() {
    let fresh = "13 lb fresh turkey for 12 thursday 4pm, oven";
    for words in ["/plan we buy it wednesday morning", "/plan dan buys it wed at 9am"] {
        let mut kitchen = planned("2027-11-21 18:30", fresh);
        kitchen.say("Priya", words);
        assert_eq!(at(&kitchen, Step::Buy), kitchen.local("2027-11-24 09:00"), "{words}");
    }
    let mut kitchen = planned("2027-11-21 18:30", fresh);
    kitchen.among("Priya", "dan buys the bird wednesday morning");
    assert_eq!(at(&kitchen, Step::Buy), kitchen.local("2027-11-24 09:00"));
    assert_eq!(kitchen.among("Priya", "buying chairs monday"), 0);
    // A fresh one doesn't keep from Monday on.
    let said = kitchen.say("Priya", "/plan dan buys it tomorrow 8am");
    assert!(said.contains("Shopping Mon 8:00 AM doesn't fit: buy it Tue") && !said.contains("I don't know"), "{said}");
    // In a first sentence.
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", New_York, "2027-11-21 18:30");
    let said =
        kitchen.say("Priya", "/plan 16 lb frozen turkey for 12, dinner thursday 4pm, oven, dan buys it tomorrow 8am");
    assert!(said.contains("Mon 8:00 AM · Buy the bird") && !said.contains("I don't know"), "{said}");
}
