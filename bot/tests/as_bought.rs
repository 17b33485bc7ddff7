//! The bird as it came from the shop, in plain words: its weight with the purchase, and that the packer has salted it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::{JobState, LivePlan};
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

/// A fresh bird of 13 lb for Thursday, to be bought and salted on Tuesday; Tuesday afternoon, in a group with Tom.
fn planned(kind: RoomKind, tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    if kind == RoomKind::Group {
        kitchen.say("Tom", "/board");
    }
    kitchen.run_to("2027-11-23 15:10");
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen
}

fn plan(kitchen: &Kitchen) -> &LivePlan {
    kitchen.scene.room.plan.as_ref().unwrap()
}

fn is_bought(kitchen: &Kitchen) -> bool {
    matches!(plan(kitchen).job(Step::Buy, 0).unwrap().state, JobState::Done { .. })
}

/// Presses the one button of the newest message that has any.
fn agree(kitchen: &mut Kitchen, who: &str) {
    let say = kitchen.said.iter().rev().find(|say| !say.buttons.is_empty()).unwrap();
    let (data, on) = (say.buttons[0][0].data.clone(), say.key.clone());
    kitchen.hear(Some(who), carvetime::room::What::Pressed { press: "p".into(), data, on });
}

#[test]
fn the_weight_told_with_the_purchase_is_the_plans() {
    let said: [&[(&str, f64)]; 6] = [
        &[
            ("bought it, it's 15 lb", 6803.9),
            ("got the bird, 7.2 kg", 7200.0),
            ("bought a 15 lb turkey", 6803.9),
            ("picked it up! weighs 15 lb", 6803.9),
        ],
        &[("comprado, pesa 6,4 kg", 6400.0)],
        &[("dinde achetée, 6,4 kg", 6400.0)],
        &[("gekauft, 6,4 kilo", 6400.0)],
        &[("comprei, 6,4 kg", 6400.0)],
        &[("comprato, pesa 6,4 kg", 6400.0)],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for (text, grams) in said {
            for (kind, who) in [(RoomKind::Private, "Rosa"), (RoomKind::Group, "Tom")] {
                let mut kitchen = planned(kind, tag);
                let on = plan(&kitchen).job(Step::On, 0).unwrap().at;
                match kind {
                    RoomKind::Private => assert!(!kitchen.say(who, text).is_empty()),
                    RoomKind::Group => assert!(kitchen.among(who, text) > 0, "{tag}: {text}"),
                }
                assert!(is_bought(&kitchen), "{tag}: {text}");
                let mass = plan(&kitchen).wish.mass_g.unwrap();
                assert!((mass - grams).abs() < 1.0, "{tag}: {text}: {mass}");
                assert!(plan(&kitchen).job(Step::On, 0).unwrap().at < on, "{tag}: a heavier bird goes on earlier");
            }
        }
    }
}

#[test]
fn what_else_is_bought_is_no_bird() {
    let mut kitchen = planned(RoomKind::Group, "en-US");
    for text in [
        "picked up 10 lb of potatoes",
        "bought 5 lb butter",
        "got the wine, 3 bottles",
        "should i get the 15 lb one",
        "did you buy the 15 lb one?",
        "the ham is 15 lb",
    ] {
        assert_eq!(kitchen.among("Tom", text), 0, "{text}");
    }
    assert!(!is_bought(&kitchen));
    assert!(kitchen.among("Tom", "bought it") > 0, "without a weight it is bought too");
    assert!(is_bought(&kitchen));
}

#[test]
fn what_the_packer_has_salted_is_salted_no_more() {
    let said: [&[&str]; 6] = [
        &[
            "dont salt it, its pre brined",
            "it's already brined",
            "it's injected",
            "label says it's injected",
            "it came brined",
        ],
        &["no lo sales, ya viene salado", "ya viene en salmuera", "viene inyectado"],
        &["pas besoin de la saler, elle est déjà saumurée", "elle est présalée", "elle est injectée"],
        &["nicht salzen, ist schon vorgesalzen", "ist schon gespritzt", "die pute ist schon mariniert"],
        &["não precisa salgar, já vem temperado", "já vem salgado", "é injetado"],
        &["non salarlo, è già in salamoia", "è iniettato", "è già condito"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for text in said {
            let mut alone = planned(RoomKind::Private, tag);
            let heard = alone.say("Rosa", text);
            assert!(plan(&alone).job(Step::Salt, 0).is_none(), "{tag}: {text}: {heard}");
            let mut kitchen = planned(RoomKind::Group, tag);
            assert!(kitchen.among("Tom", text) > 0, "{tag}: {text}");
            assert!(plan(&kitchen).job(Step::Salt, 0).is_some(), "{tag}: {text}: the host is asked first");
            agree(&mut kitchen, "Rosa");
            assert!(plan(&kitchen).job(Step::Salt, 0).is_none(), "{tag}: {text}");
            let mut kitchen = planned(RoomKind::Group, tag);
            kitchen.among("Rosa", text);
            assert!(plan(&kitchen).job(Step::Salt, 0).is_none(), "{tag}: {text}: the host's word");
        }
    }
}

#[test]
fn other_salt_and_salt_that_is_on_change_no_plan() {
    let mut kitchen = planned(RoomKind::Group, "en-US");
    for text in ["the chips are already salted", "the pork is already brined", "he injected it with butter last year"] {
        assert_eq!(kitchen.among("Rosa", text), 0, "{text}");
    }
    kitchen.among("Rosa", "is it injected?");
    assert!(plan(&kitchen).job(Step::Salt, 0).is_some(), "a question changes nothing");
    kitchen.run_to("2027-11-23 18:35");
    kitchen.among("Rosa", "it's already brined");
    let state = plan(&kitchen).job(Step::Salt, 0).unwrap().state;
    assert!(matches!(state, JobState::Done { .. }), "called for, it is an answer: {state:?}");
}

#[test]
fn a_marinade_with_salt_in_it_is_salt_enough_even_when_its_hour_has_come() {
    let said: [&[&str]; 6] = [
        &[
            "I injected it with my marinade, dont put more salt",
            "the bird comes pre-salted",
            "label says it's injected",
        ],
        &["ya lo inyecté con mi adobo salado, no le pongan más sal", "viene inyectado"],
        &["je l'ai injectée avec ma marinade, ne rajoutez pas de sel"],
        &["ich hab sie schon mariniert mit Salz, bitte nicht mehr salzen"],
        &["injetei minha marinada com sal, não coloquem mais sal"],
        &["l'ho siringato con la mia marinata, non metteteci sale"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for text in said {
            for at in ["2027-11-23 15:12", "2027-11-23 18:50"] {
                let mut kitchen = planned(RoomKind::Group, tag);
                kitchen.run_to(at);
                kitchen.among("Rosa", text);
                assert!(plan(&kitchen).job(Step::Salt, 0).is_none(), "{tag}: {text}, {at}");
            }
        }
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    for text in
        ["last year I injected it with my marinade, no more salt", "dont salt the marinade?", "I made a marinade"]
    {
        kitchen.among("Rosa", text);
        assert!(plan(&kitchen).job(Step::Salt, 0).is_some(), "{text}");
    }
}

#[test]
fn the_day_it_is_set_aside_for_is_the_shoppings() {
    for (tag, zone, told, aside) in [
        (
            "fr-FR",
            chrono_tz::Europe::Paris,
            "/plan repas vendredi 24 à 20h30, 6 personnes, four à 165",
            "chapon de 3,8 kg, le boucher m'en met un de cote pour le 23, frais",
        ),
        (
            "en-US",
            chrono_tz::America::Chicago,
            "/plan dinner Friday 6 pm, 8 people, oven at 325",
            "12 lb turkey, the butcher puts one aside for the 23rd, fresh",
        ),
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, zone, "2027-12-20 09:00");
        kitchen.say("Ruth", told);
        kitchen.say("Ruth", aside);
        let draft = kitchen.scene.room.drafts.values().next().unwrap();
        let day = |at: Option<carvetime_core::plan::Moment>| at.unwrap().with_timezone(&zone).date_naive().to_string();
        assert_eq!(day(draft.wish.dinner), "2027-12-24", "{tag}: {:?}", draft.wish);
        assert_eq!(day(draft.wish.shop), "2027-12-23", "{tag}: {:?}", draft.wish);
    }
}

#[test]
fn a_weight_told_later_is_the_planned_birds() {
    for (tag, text, grams) in [
        ("en-US", "it weighs 15 lb", 6803.9),
        ("en-US", "the turkey weighs 15 lb after all", 6803.9),
        ("es-ES", "al final pesa 6,4 kg", 6400.0),
        ("fr-FR", "elle pèse 6,4 kg", 6400.0),
        ("de-DE", "sie wiegt 6,4 kg", 6400.0),
        ("pt-BR", "pesa 6,4 kg", 6400.0),
        ("it-IT", "alla fine pesa 6,4 kg", 6400.0),
    ] {
        for kind in [RoomKind::Private, RoomKind::Group] {
            let mut kitchen = planned(kind, tag);
            let said = match kind {
                RoomKind::Private => kitchen.say("Rosa", text),
                RoomKind::Group => kitchen.ids("Rosa", text, false).1,
            };
            let told = plan(&kitchen).wish.mass_g.unwrap();
            assert!((told - grams).abs() < 1.0, "{tag}: {text}: {told}: {said}");
        }
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    assert_eq!(kitchen.among("Tom", "my suitcase weighs 15 lb"), 0);
}
