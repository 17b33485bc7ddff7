//! From the smoker into the oven, and a heat that fails and comes back: the forecast is told what the bird has had.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::LivePlan;
use carvetime::room::{RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const SMOKED: &str = "/plan fresh 14 lb turkey, we have it, dinner Thursday 4 pm, 8 people, smoker at 250, no salt";
const OVEN: &str = "/plan fresh 14 lb turkey, we have it, dinner Thursday 4 pm, 8 people, oven at 325, no salt";

fn cooking(kind: RoomKind, locale: &str, plan: &str, accept: &str, on: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, locale, Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", accept);
    kitchen.run_to("2027-11-25 09:00");
    kitchen.say("Rosa", on);
    kitchen.run_to("2027-11-25 11:30");
    kitchen
}

fn plan(kitchen: &Kitchen) -> &LivePlan {
    kitchen.scene.room.plan.as_ref().unwrap()
}

fn passing(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

/// °F it is set to, as near as a setting is told.
fn set_f(kitchen: &Kitchen) -> i64 {
    (plan(kitchen).wish.setting_c.unwrap() * 1.8 + 32.0).round() as i64
}

#[test]
fn moved_into_the_oven_it_is_an_oven_from_then_on() {
    let told = [
        ("moved it to the oven at 325", 325),
        ("finishing it in the oven at 350", 350),
        ("moved to oven, 340", 340),
        ("fire is useless, moved the bird to the oven", 325),
    ];
    for (words, f) in told {
        let mut kitchen = cooking(RoomKind::Group, "en-US", SMOKED, "Accept", "bird is on");
        kitchen.say("Rosa", "breast 95, thigh 100, pit 240");
        let before = plan(&kitchen).ready_to.unwrap();
        let said = passing(&mut kitchen, "Ben", words);
        assert!(said.contains(&format!("in the oven at {f} °F")), "{words}: {said}");
        assert_eq!((plan(&kitchen).wish.cooker.as_deref(), set_f(&kitchen)), (Some("oven"), f), "{words}");
        assert!(plan(&kitchen).ready_to.unwrap() < before, "{words}: hotter, it is done sooner");
        let was = plan(&kitchen).was_set.last().unwrap();
        assert!(was.until == kitchen.now && (was.setting_c - 121.1).abs() < 0.2 && was.elsewhere, "{was:?}");
        kitchen.say("Rosa", "undo");
        assert_eq!(plan(&kitchen).wish.cooker.as_deref(), Some("smoker"), "{words}");
        assert!(plan(&kitchen).was_set.is_empty());
    }
}

#[test]
fn what_is_only_meant_asked_or_of_something_else_moves_nothing() {
    let mut kitchen = cooking(RoomKind::Group, "en-US", SMOKED, "Accept", "bird is on");
    for words in [
        "should i move it to the oven at 325?",
        "gonna move it to the oven at 325 later",
        "we moved the pies into the oven at grandma's",
        "they moved it to Friday",
        "is the oven free",
    ] {
        passing(&mut kitchen, "Ben", words);
        assert_eq!((plan(&kitchen).wish.cooker.as_deref(), set_f(&kitchen)), (Some("smoker"), 250), "{words}");
    }
}

#[test]
fn heat_that_failed_and_is_back_was_off_from_the_one_to_the_other() {
    let told = [
        ("oven just died", "it's back"),
        ("power is out", "power's back"),
        ("power went out", "oven is back on"),
        ("oven just died, what do i do?", "oven works again"),
    ];
    for (down, back) in told {
        let mut kitchen = cooking(RoomKind::Group, "en-US", OVEN, "Accept", "bird is on");
        kitchen.say("Rosa", "breast 95, thigh 100, oven 325");
        let before = plan(&kitchen).ready_to.unwrap();
        kitchen.run_to("2027-11-25 11:45");
        let advice = passing(&mut kitchen, "Rosa", down);
        assert!(advice.contains("Keep the door shut"), "{down}: {advice}");
        kitchen.run_to("2027-11-25 12:15");
        let said = passing(&mut kitchen, "Ben", back);
        assert!(said.contains("no heat since 11:45 AM"), "{back}: {said}");
        assert!(plan(&kitchen).ready_to.unwrap() > before, "{back}: it takes longer");
        assert_eq!(set_f(&kitchen), 325);
        // Said again it is only talk.
        assert_eq!(passing(&mut kitchen, "Ben", back), "");
    }
    // Nothing had failed.
    let mut kitchen = cooking(RoomKind::Group, "en-US", OVEN, "Accept", "bird is on");
    assert_eq!(passing(&mut kitchen, "Ben", "it's back"), "");
    assert!(plan(&kitchen).was_set.is_empty());
}

/// Locale, plan, accept, on; moved, failed, back; what is said of the first and the last.
type Told = ([&'static str; 4], [&'static str; 3], [&'static str; 2]);

#[test]
fn the_same_in_every_language() {
    let told: [Told; 5] = [
        (
            [
                "de-DE",
                "/plan frische Pute 6,5 kg, haben wir schon, Essen Donnerstag 16 Uhr, 8 Personen, Smoker auf 120, kein Salz",
                "Annehmen",
                "vogel ist drauf",
            ],
            ["hab ihn in den ofen umgesetzt, 165 grad", "ofen ist gerade ausgegangen", "ofen geht wieder"],
            ["ab jetzt im Ofen bei 165 °C", "keine Hitze seit 11:45"],
        ),
        (
            [
                "es-ES",
                "/plan pavo fresco de 6,5 kg, ya lo tenemos, cena el jueves a las 16, 8 personas, ahumador a 120, sin sal",
                "Aceptar",
                "el pavo está en el ahumador",
            ],
            ["lo pasé al horno a 165", "se fue la luz", "ya volvió la luz"],
            ["en el horno a 165 °C", "sin calor desde las 11:45"],
        ),
        (
            [
                "fr-FR",
                "/plan dinde fraîche 6,5 kg, on l'a déjà, dîner jeudi 16 h, 8 personnes, fumoir à 120, sans sel",
                "Accepter",
                "la dinde est dans le fumoir",
            ],
            ["je l'ai passée au four à 165", "panne de courant", "le courant est revenu"],
            ["au four à 165 °C", "pas de chaleur depuis 11:45"],
        ),
        (
            [
                "it-IT",
                "/plan tacchino fresco 6,5 kg, ce l'abbiamo, cena giovedì ore 16, 8 persone, affumicatore a 120, senza sale",
                "Accetta",
                "il tacchino è nell'affumicatore",
            ],
            ["l'ho spostato in forno a 165", "è andata via la luce", "è tornata la luce"],
            ["in forno a 165 °C", "senza calore dalle 11:45"],
        ),
        (
            [
                "pt-BR",
                "/plan peru fresco 6,5 kg, já temos, jantar quinta 16h, 8 pessoas, defumador a 120, sem sal",
                "Aceitar",
                "o peru está no defumador",
            ],
            ["passei o peru pro forno a 165", "acabou a luz", "a luz voltou"],
            ["no forno a 165 °C", "sem calor desde 11:45"],
        ),
    ];
    for ([locale, plan_of, accept, on], [moved, down, back], [oven, off]) in told {
        let mut kitchen = cooking(RoomKind::Private, locale, plan_of, accept, on);
        let said = kitchen.say("Rosa", moved);
        assert!(said.contains(oven), "{locale}: {said}");
        kitchen.run_to("2027-11-25 11:45");
        kitchen.say("Rosa", down);
        kitchen.run_to("2027-11-25 12:10");
        let said = kitchen.say("Rosa", back);
        assert!(said.contains(off), "{locale}: {said}");
    }
}
