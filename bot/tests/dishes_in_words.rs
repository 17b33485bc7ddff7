//! Dishes without a word that adds one first: brought by whoever says so, dropped, and changed by their name.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::WishDish;
use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];
/// What stuffing is called there.
const STUFFING: [&str; 6] = ["stuffing", "relleno", "farce", "Füllung", "recheio", "ripieno"];

/// Thursday at five for eight, planned on Monday by Rosa; in a group with Tom.
fn planned(kind: RoomKind, tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    if kind == RoomKind::Group {
        kitchen.say("Tom", "/board");
    }
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen.scene.room.taste.us_units = Some(tag == "en-US");
    kitchen
}

/// With stuffing on the plan, 45 minutes in the oven.
fn stuffed(kind: RoomKind, language: usize) -> Kitchen {
    let mut kitchen = planned(kind, "en-US");
    kitchen.say("Rosa", &format!("/plan add {} in the oven 45 min at 375", STUFFING[language]));
    kitchen.scene.room.taste.language = Some(TAGS[language].to_owned());
    kitchen.scene.room.taste.us_units = Some(language == 0);
    assert_eq!(dishes(&kitchen).len(), 1);
    kitchen
}

fn dishes(kitchen: &Kitchen) -> Vec<WishDish> {
    kitchen.scene.room.plan.as_ref().unwrap().wish.dishes.iter().flatten().cloned().collect()
}

#[test]
fn what_is_brought_with_its_heat_and_its_time_is_on_the_plan() {
    let said: [&[(&str, &str)]; 6] = [
        &[
            ("I'll bring green bean casserole, needs 30 min at 350", "green bean casserole"),
            ("can you add green bean casserole 40 min at 375?", "green bean casserole"),
            ("im making rolls, 15 min at 375", "rolls"),
        ],
        &[("yo traigo lasaña, necesita 40 min a 180", "lasaña"), ("¿puedes añadir lasaña 40 min a 180?", "lasaña")],
        &[("j'apporte un gratin, 40 min à 180", "gratin"), ("tu peux ajouter gratin au four 40 min à 180 ?", "gratin")],
        &[
            ("ich bringe gratin mit, 40 min bei 180", "gratin"),
            ("ich mache gratin, braucht 40 min bei 180 grad", "gratin"),
        ],
        &[("eu levo lasanha, precisa de 40 min a 180", "lasanha"), ("pode incluir lasanha 40 min a 180?", "lasanha")],
        &[
            ("porto io la parmigiana, 40 min a 180", "parmigiana"),
            ("puoi aggiungere parmigiana 40 min a 180?", "parmigiana"),
        ],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for (text, name) in said {
            for who in ["Rosa", "Tom"] {
                let mut kitchen = planned(RoomKind::Group, tag);
                assert!(kitchen.among(who, text) > 0, "{tag}: {who}: {text}");
                let names: Vec<String> = dishes(&kitchen).into_iter().map(|dish| dish.name).collect();
                assert_eq!(names, [*name], "{tag}: {who}: {text}");
            }
            let mut alone = planned(RoomKind::Private, tag);
            let heard = alone.say("Rosa", text);
            assert_eq!(dishes(&alone).len(), 1, "{tag}: {text}: {heard}");
        }
    }
}

#[test]
fn what_is_brought_without_it_stays_between_people() {
    let mut kitchen = planned(RoomKind::Group, "en-US");
    for text in [
        "i'll bring the wine",
        "ill bring pie",
        "I'll bring rolls at 4",
        "im bringing 10 lb potatoes",
        "ill be there in 30 min",
        "can you add milk to the list",
        "no stuffing after all",
        "stuffing takes 60 min",
    ] {
        for who in ["Rosa", "Tom"] {
            assert_eq!(kitchen.among(who, text), 0, "{who}: {text}");
        }
    }
    assert!(dishes(&kitchen).is_empty());
}

#[test]
fn a_dish_is_dropped_by_its_name() {
    let said: [&[&str]; 6] = [
        &["remove the stuffing", "no stuffing after all", "skip the stuffing", "stuffing is off the menu"],
        &["sin relleno al final", "quita el relleno"],
        &["finalement pas de farce", "enlève la farce"],
        &["doch keine füllung", "die füllung lassen wir weg"],
        &["sem recheio no fim", "tira o recheio"],
        &["niente ripieno alla fine", "togli il ripieno"],
    ];
    for (language, said) in said.into_iter().enumerate() {
        for text in said {
            let mut kitchen = stuffed(RoomKind::Group, language);
            assert_eq!(kitchen.among("Tom", text), 0, "{text}: not his to drop");
            assert!(kitchen.among("Rosa", text) > 0, "{text}");
            assert!(dishes(&kitchen).is_empty(), "{text}");
            let mut alone = stuffed(RoomKind::Private, language);
            let heard = alone.say("Rosa", text);
            assert!(dishes(&alone).is_empty(), "{text}: {heard}");
        }
    }
    let mut kitchen = stuffed(RoomKind::Group, 0);
    for text in ["no stuffing for me", "no stuffing for the dog", "no stuffing?", "no gravy after all", "forget it"] {
        assert_eq!(kitchen.among("Rosa", text), 0, "{text}");
    }
    assert_eq!(dishes(&kitchen).len(), 1);
}

#[test]
fn a_dish_changes_by_its_name() {
    let said: [&[(&str, u32, Option<f64>)]; 6] = [
        &[("stuffing takes 60 min", 60, None), ("the stuffing needs 400 instead", 45, Some(204.4))],
        &[("el relleno tarda 60 min", 60, None), ("el relleno necesita el horno a 200", 45, Some(200.0))],
        &[("la farce prend 60 min", 60, None), ("la farce à 200 plutôt", 45, Some(200.0))],
        &[("die füllung braucht 60 min", 60, None), ("die füllung muss auf 200 grad", 45, Some(200.0))],
        &[("o recheio leva 60 min", 60, None), ("o recheio precisa do forno a 200", 45, Some(200.0))],
        &[("il ripieno vuole 60 min", 60, None), ("il ripieno a 200 invece", 45, Some(200.0))],
    ];
    for (language, said) in said.into_iter().enumerate() {
        for (text, minutes, setting) in said {
            for kind in [RoomKind::Group, RoomKind::Private] {
                let mut kitchen = stuffed(kind, language);
                match kind {
                    RoomKind::Group => assert!(kitchen.among("Rosa", text) > 0, "{text}"),
                    RoomKind::Private => drop(kitchen.say("Rosa", text)),
                }
                let dish = dishes(&kitchen).remove(0);
                assert_eq!(dish.minutes, *minutes, "{text}");
                let set = dish.setting_c.unwrap();
                assert!((set - setting.unwrap_or(190.6)).abs() < 0.5, "{text}: {set}");
                assert!(language > 0 || dish.hot_through, "{text}: it must be hot through whatever is said of it");
            }
        }
    }
}

#[test]
fn what_is_said_of_a_dish_in_passing_changes_nothing() {
    let mut kitchen = stuffed(RoomKind::Group, 0);
    let before = dishes(&kitchen);
    for text in [
        "stuffing smells amazing",
        "stuffing is at 160",
        "stuffing needs 20 more min",
        "stuffing 165",
        "stuffing 20 min",
    ] {
        for who in ["Rosa", "Tom"] {
            assert_eq!(kitchen.among(who, text), 0, "{who}: {text}");
        }
    }
    let heard = kitchen.say("Rosa", "the stuffing needs the oven at 4");
    assert!(heard.contains("4:15 PM"), "when it goes in is the plan's to find: {heard}");
    assert_eq!(dishes(&kitchen), before);
}

#[test]
fn an_oven_that_is_set_and_a_smoker_of_a_kind_are_no_dishes() {
    for (tag, text, cooker, celsius) in
        [("it-IT", "metti il forno a 180", "oven", 180.0), ("en-US", "offset at 275", "smoker", 135.0)]
    {
        let mut alone = planned(RoomKind::Private, tag);
        let heard = alone.say("Rosa", text);
        let wish = alone.scene.room.plan.as_ref().unwrap().wish.clone();
        assert!(dishes(&alone).is_empty(), "{text}: {heard}");
        assert_eq!(wish.cooker.as_deref(), Some(cooker), "{text}: {heard}");
        assert!((wish.setting_c.unwrap() - celsius).abs() < 0.5, "{text}: {heard}");
    }
    let mut first = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    first.say("Rosa", "13 lb fresh turkey, dinner Thursday 5 pm, 8 people, offset at 275");
    first.press("Rosa", "Accept");
    let wish = first.scene.room.plan.as_ref().unwrap().wish.clone();
    assert!(wish.dishes.is_empty() && wish.cooker.as_deref() == Some("smoker"));
}
