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

// ---- the oven is cold

/// Fresh, in the house, the clock just before it goes on.
fn about_to_go_on(tag: &str, plan: &str, accept: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, New_York, "2027-11-24 18:30");
    kitchen.say("Priya", plan);
    kitchen.press("Priya", accept);
    kitchen.run_to("2027-11-25 11:00");
    let on = at(&kitchen, Step::On).with_timezone(&New_York).naive_local() - chrono::TimeDelta::minutes(5);
    kitchen.run_to(&on.format("%Y-%m-%d %H:%M").to_string());
    kitchen
}

fn cold(tag: &str) -> Kitchen {
    match tag {
        "es-ES" => about_to_go_on(
            tag,
            "/plan pavo fresco de 6 kg, ya lo tengo, 12 personas, jueves 17:00, horno, sin sal",
            "Aceptar",
        ),
        "fr-FR" => about_to_go_on(
            tag,
            "/plan dinde fraîche 6 kg, je l'ai déjà, 12 personnes, jeudi 17h, four, sans sel",
            "Accepter",
        ),
        "de-DE" => about_to_go_on(
            tag,
            "/plan frische Pute 6 kg, haben wir schon, 12 Personen, Donnerstag 17 Uhr, Ofen, kein Salz",
            "Annehmen",
        ),
        "pt-BR" => about_to_go_on(
            tag,
            "/plan peru fresco de 6 kg, já temos, 12 pessoas, quinta 17h, forno, sem sal",
            "Aceitar",
        ),
        "it-IT" => about_to_go_on(
            tag,
            "/plan tacchino fresco 6 kg, ce l'abbiamo, 12 persone, giovedì alle 17, forno, senza sale",
            "Accetta",
        ),
        _ => about_to_go_on(
            tag,
            "/plan 13 lb fresh turkey, we have it, 12 people, thursday 5pm, oven, no salt",
            "Accept",
        ),
    }
}

#[test]
fn a_forgotten_oven_is_due_now_and_the_bird_waits_for_it() {
    let mut kitchen = cold("en-US");
    let planned = at(&kitchen, Step::On);
    let before = kitchen.said.len();
    kitchen.among("Priya", "oh no i forgot to turn the oven on");
    assert!(since(&kitchen, before).contains(&"room-unlit".to_owned()));
    assert!(at(&kitchen, Step::On) > planned && at(&kitchen, Step::Fire) >= kitchen.now);
    // Nobody has said that it is on: the bird isn't called for, the oven is.
    let until = (kitchen.now + chrono::TimeDelta::minutes(40)).with_timezone(&New_York);
    let called = kitchen.run_to(&until.format("%Y-%m-%d %H:%M").to_string());
    assert!(called.contains("Preheat") && !called.contains("Bird on.") && waits(&kitchen, Step::Fire), "{called}");
    kitchen.among("Priya", "turning it on now");
    assert!(!waits(&kitchen, Step::Fire));
    assert!(kitchen.run_to("2027-11-25 14:30").contains("Bird on"));
}

#[test]
fn a_cold_oven_is_heard_in_every_language_and_only_when_it_is_due() {
    for (tag, words) in [
        ("en-US", "wes isnt here and the ovens cold!!"),
        ("es-ES", "ay no, se me olvidó encender el horno"),
        ("fr-FR", "mince, j'ai oublié d'allumer le four"),
        ("de-DE", "oh nein, keiner hat den Ofen angemacht"),
        ("pt-BR", "nossa, esqueci de ligar o forno"),
        ("it-IT", "oddio, ho dimenticato di accendere il forno"),
    ] {
        let mut kitchen = cold(tag);
        let before = kitchen.said.len();
        kitchen.among("Priya", words);
        assert!(since(&kitchen, before).contains(&"room-unlit".to_owned()), "{tag}: {words}");
    }
    let mut kitchen =
        planned("2027-11-24 18:30", "13 lb fresh turkey, we have it, 12 people, thursday 5pm, oven, no salt");
    kitchen.run_to("2027-11-25 08:00");
    assert_eq!(kitchen.among("Priya", "brr the oven is cold"), 0);
}

// ---- eaten, moved, and how many

#[test]
fn eating_closes_the_carving_and_the_board_says_no_more_that_it_does_not_fit() {
    for (tag, words) in [
        ("en-US", "we're eating!!!"),
        ("en-US", "foods on"),
        ("es-ES", "ya estamos comiendo"),
        ("fr-FR", "on mange !"),
        ("de-DE", "wir essen!"),
        ("pt-BR", "estamos jantando"),
        ("it-IT", "siamo a tavola"),
    ] {
        let mut kitchen = kitchen::over_heat(RoomKind::Group, tag);
        kitchen.run_to("2027-11-25 17:05");
        kitchen.say("Ana", "/log breast 168F, thigh 176F, wing 172F");
        let it = kitchen.scene.room.plan.as_ref().unwrap().serial;
        kitchen.hear(
            Some("Ana"),
            carvetime::room::What::Pressed { press: "p".into(), data: format!("done.{it}.pull.0"), on: None },
        );
        assert!(!waits(&kitchen, Step::Pull), "{tag}");
        kitchen.run_to("2027-11-25 17:50");
        kitchen.among("Ana", words);
        assert!(!waits(&kitchen, Step::Carve), "{tag}: {words}");
        assert!(waits(&kitchen, Step::Chill), "{tag}: the two hours go on");
    }
}

#[test]
fn another_day_is_told_in_a_few_words_alone_with_the_bot() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", New_York, "2027-11-24 18:30");
    kitchen.say("Priya", "roast chicken friday at 7 pm for 3, 4 lb fresh, oven");
    kitchen.press("Priya", "Accept");
    kitchen.say("Priya", "lets do saturday instead");
    assert_eq!(wish(&kitchen).dinner, Some(kitchen.local("2027-11-27 19:00")));
    kitchen.say("Priya", "no sorry, friday after all");
    assert_eq!(wish(&kitchen).dinner, Some(kitchen.local("2027-11-26 19:00")));
    // Of a draft as well.
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", New_York, "2027-11-24 18:30");
    kitchen.say("Priya", "roast chicken friday at 7 pm for 3, 4 lb fresh, oven");
    kitchen.say("Priya", "wait actually lets do saturday instead");
    let said = kitchen.say("Priya", "no sorry friday after all");
    assert!(said.contains("Fri 7:00 PM · Dinner"), "{said}");
}

#[test]
fn back_to_three_is_of_the_people_that_were_told_last() {
    for drafted in [false, true] {
        let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", New_York, "2027-11-24 18:30");
        kitchen.say("Priya", "roast chicken friday at 7 pm for 3, 4 lb fresh, oven");
        if !drafted {
            kitchen.press("Priya", "Accept");
        }
        kitchen.say("Priya", "make it 6 people");
        let said = kitchen.say("Priya", "wait no back to 3");
        assert!(!said.contains("I don't know") && !said.contains("3:00 PM"), "{said}");
        kitchen.run_to("2027-11-24 18:31");
        if drafted {
            kitchen.press("Priya", "Accept");
        }
        assert_eq!((wish(&kitchen).adults, wish(&kitchen).dinner), (Some(3), Some(kitchen.local("2027-11-26 19:00"))));
    }
    for (tag, plan, accept, more, back) in [
        (
            "es-ES",
            "/plan pollo fresco 2 kg, 3 personas, viernes 19:00, horno",
            "Aceptar",
            "que sean 6 personas",
            "no espera, volvamos a 3",
        ),
        (
            "fr-FR",
            "/plan poulet frais 2 kg, 3 personnes, vendredi 19h, four",
            "Accepter",
            "on sera 6 finalement",
            "non attends, on revient à 3",
        ),
        (
            "de-DE",
            "/plan frisches Hähnchen 2 kg, 3 Personen, Freitag 19 Uhr, Ofen",
            "Annehmen",
            "wir sind 6 Personen",
            "nein warte, zurück auf 3",
        ),
        (
            "pt-BR",
            "/plan frango fresco 2 kg, 3 pessoas, sexta 19h, forno",
            "Aceitar",
            "somos 6 pessoas",
            "não, espera, volta para 3",
        ),
        (
            "it-IT",
            "/plan pollo fresco 2 kg, 3 persone, venerdì alle 19, forno",
            "Accetta",
            "siamo 6 persone",
            "no aspetta, torniamo a 3",
        ),
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Group, tag, New_York, "2027-11-24 12:30");
        kitchen.say("Priya", plan);
        kitchen.press("Priya", accept);
        kitchen.say("Priya", more);
        assert_eq!(wish(&kitchen).adults, Some(6), "{tag}: {more}");
        let said = kitchen.say("Priya", back);
        assert_eq!(wish(&kitchen).adults, Some(3), "{tag}: {back}: {said}");
    }
}

// ---- a guest's private chat

/// Whether what Dan says in his private chat is of the group's dinner.
fn leads_there(kitchen: &Kitchen, text: &str) -> bool {
    let dan = kitchen.scene.people.values().find(|person| person.name == "Dan").unwrap();
    let said = carvetime::room::What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
    carvetime::room::is_answered(&kitchen.scene.room, dan, &said, kitchen.now)
}

#[test]
fn a_guest_who_asks_after_the_dinner_is_told_of_the_one_they_share() {
    let mut kitchen = planned("2027-11-22 09:00", "13 lb fresh turkey for 12 thursday 5pm, oven, no salt");
    for (words, answer) in [
        ("At what time should I arrive if dinner is at five?", "room-when"),
        ("Is dinner still at half past five?", "room-when"),
        ("I am leaving in twenty-five minutes. Is the turkey on time?", "room-when"),
        ("When is the turkey ready on Thursday?", "room-when"),
        ("Where can I see the plan?", "room-board-dinner"),
        ("May I heat the potatoes in Priya's oven while the bird rests?", "room-oven-free"),
    ] {
        assert!(leads_there(&kitchen, words), "{words}");
        let said = carvetime::room::What::Said { text: words.into(), addressed: true, reply_to: None, edited: false };
        let before = kitchen.said.len();
        kitchen.hear_privately("Dan", said);
        let ids = since(&kitchen, before);
        assert!(ids.iter().any(|id| id == answer), "{words}: {ids:?}");
        assert!(kitchen.scene.room.drafts.is_empty(), "{words}");
    }
    for words in ["when should I salt a 4 lb chicken", "can I heat the turkey in the oven", "what a plan"] {
        assert!(!leads_there(&kitchen, words), "{words}");
    }
}

#[test]
fn a_guest_is_understood_in_every_language() {
    for (tag, plan, accept, asks) in [
        (
            "es-ES",
            "/plan pavo fresco 6 kg, 12 personas, jueves 17:00, horno, sin sal",
            "Aceptar",
            ["¿a qué hora tengo que llegar?", "¿dónde está el plan?", "¿puedo calentar las patatas en el horno?"],
        ),
        (
            "fr-FR",
            "/plan dinde fraîche 6 kg, 12 personnes, jeudi 17h, four, sans sel",
            "Accepter",
            ["à quelle heure je dois arriver ?", "où est le plan ?", "je peux réchauffer mon gratin dans le four ?"],
        ),
        (
            "de-DE",
            "/plan frische Pute 6 kg, 12 Personen, Donnerstag 17 Uhr, Ofen, kein Salz",
            "Annehmen",
            ["Wann soll ich da sein?", "Wo ist der Plan?", "Darf ich die Kartoffeln im Ofen aufwärmen?"],
        ),
        (
            "pt-BR",
            "/plan peru fresco 6 kg, 12 pessoas, quinta 17h, forno, sem sal",
            "Aceitar",
            ["que horas eu chego?", "onde está o plano?", "posso esquentar as batatas no forno?"],
        ),
        (
            "it-IT",
            "/plan tacchino fresco 6 kg, 12 persone, giovedì alle 17, forno, senza sale",
            "Accetta",
            ["a che ora devo arrivare?", "dov'è il piano?", "posso scaldare le patate in forno?"],
        ),
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Group, tag, New_York, "2027-11-22 09:00");
        kitchen.say("Priya", plan);
        kitchen.press("Priya", accept);
        kitchen.say("Dan", "/board");
        for (words, answer) in asks.into_iter().zip(["room-when", "room-board-dinner", "room-oven-free"]) {
            assert!(leads_there(&kitchen, words), "{tag}: {words}");
            let said =
                carvetime::room::What::Said { text: words.into(), addressed: true, reply_to: None, edited: false };
            let before = kitchen.said.len();
            kitchen.hear_privately("Dan", said);
            let ids = since(&kitchen, before);
            assert!(ids.iter().any(|id| id == answer), "{tag}: {words}: {ids:?}");
        }
    }
}
