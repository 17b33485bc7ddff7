//! The key reports as families in Mexico, Spain, France and Québec type them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::JobState;
use carvetime::room::{RoomKind, What};
use carvetime_core::plan::Step;
use chrono_tz::Europe::Madrid;
use kitchen::Kitchen;

struct Told {
    plan: &'static str,
    accept: &'static str,
    on: &'static str,
    off: &'static str,
}

fn told(tag: &str) -> Told {
    match tag.get(..2) {
        Some("es") => Told {
            plan: "/plan pavo fresco de 5 kg, ya lo tengo, cena el 24 a las 21:30, 8 personas, horno a 180, sin sal",
            accept: "Aceptar",
            on: "el pavo ya esta en el horno",
            off: "he sacado el pavo del horno",
        },
        _ => Told {
            plan: "/plan dinde fraîche de 5 kg, je l'ai déjà, repas le 24 à 21h30, 8 personnes, four à 180, sans sel",
            accept: "Accepter",
            on: "la dinde est dans le four",
            off: "la dinde est sortie du four",
        },
    }
}

/// Everything before `step` is done: it is that job's turn.
fn before(tag: &str, kind: RoomKind, step: Step) -> Kitchen {
    let told = told(tag);
    let mut kitchen = Kitchen::new(kind, tag, Madrid, "2026-12-23 10:00");
    kitchen.say("Ana", told.plan);
    kitchen.press("Ana", told.accept);
    kitchen.run_to("2026-12-24 17:10");
    if step == Step::On {
        return kitchen;
    }
    kitchen.say("Ana", told.on);
    kitchen.run_to("2026-12-24 20:00");
    if step == Step::Pull {
        return kitchen;
    }
    kitchen.say("Ana", told.off);
    kitchen.run_to("2026-12-24 20:40");
    if step == Step::Chill {
        kitchen.say("Ana", if tag.starts_with("es") { "ya está trinchado" } else { "c'est découpé" });
        kitchen.run_to("2026-12-24 21:20");
    }
    kitchen
}

fn is_done(kitchen: &Kitchen, step: Step) -> bool {
    let job = kitchen.scene.room.plan.as_ref().unwrap().jobs.iter().find(|job| job.step() == Some(step)).unwrap();
    matches!(job.state, JobState::Done { .. })
}

const REPORTS: [(&str, Step, &str); 27] = [
    ("es-MX", Step::On, "ya metimos el pavo"),
    ("es-MX", Step::On, "ya lo metimos al horno"),
    ("es-MX", Step::On, "ya metimos el pavo al horno"),
    ("es-ES", Step::On, "hemos metido el pavo"),
    ("fr-CA", Step::On, "jl'ai mise au four"),
    ("fr-FR", Step::On, "jlai mise au four"),
    ("fr-FR", Step::On, "on a mis la dinde"),
    ("es-MX", Step::Pull, "ya lo sacamos del horno"),
    ("es-MX", Step::Pull, "ya lo sacamos"),
    ("es-MX", Step::Pull, "ya sacamos el pavo"),
    ("fr-CA", Step::Pull, "jlai sortie"),
    ("fr-CA", Step::Pull, "jl'ai sortie du four"),
    ("fr-FR", Step::Pull, "on la sortie"),
    ("fr-FR", Step::Pull, "cest sorti du four"),
    ("es-MX", Step::Carve, "ya esta rebanado"),
    ("es-MX", Step::Carve, "ya está partido"),
    ("es-MX", Step::Carve, "ya lo partimos"),
    ("fr-CA", Step::Carve, "c decoupé"),
    ("es-MX", Step::Chill, "ya guarde todo en el refri"),
    ("es-MX", Step::Chill, "ya metimos todo al refri"),
    ("es-ES", Step::Chill, "ya esta todo en la nevera"),
    ("es-ES", Step::Chill, "guardado todo"),
    ("fr-FR", Step::Chill, "tout est au frigo"),
    ("fr-CA", Step::Chill, "les restants sont au frigidaire"),
    ("fr-CA", Step::Chill, "tout est dans le frigidaire"),
    ("fr-FR", Step::Chill, "c'est bon, tout est au frigo"),
    ("fr-FR", Step::Chill, "j'ai mis les restes au frigo"),
];

#[test]
fn the_key_reports_are_heard_alone_and_in_a_group() {
    for (tag, step, text) in REPORTS {
        let mut kitchen = before(tag, RoomKind::Private, step);
        let said = kitchen.say("Ana", text);
        assert!(is_done(&kitchen, step), "{tag}: {text}: {said}");
        let mut kitchen = before(tag, RoomKind::Group, step);
        let what = What::Said { text: text.into(), addressed: false, reply_to: None, edited: false };
        let said = kitchen.hear(Some("Tom"), what);
        assert!(is_done(&kitchen, step), "{tag}: {text}: {said}");
    }
}

#[test]
fn put_away_too_late_is_never_just_fine() {
    for (tag, text, gone) in [
        ("es-MX", "ya guarde todo en el refri", "se tira"),
        ("es-MX", "ya guardamos todo en el refri", "se tira"),
        ("es-ES", "guardado todo", "se tira"),
        ("fr-FR", "tout est au frigo", "poubelle"),
        ("fr-CA", "les restants sont au frigidaire", "poubelle"),
    ] {
        let mut kitchen = before(tag, RoomKind::Private, Step::Chill);
        kitchen.run_to("2026-12-25 00:40");
        let said = kitchen.say("Ana", text);
        assert!(said.contains(gone), "{tag}: {text}: {said}");
    }
}

#[test]
fn a_number_alone_is_a_reading_while_the_bird_cooks() {
    for (tag, text) in [("es-ES", "52"), ("fr-FR", "42"), ("es-MX", "45,5")] {
        let told = told(tag);
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, Madrid, "2026-12-23 10:00");
        kitchen.say("Ana", told.plan);
        kitchen.press("Ana", told.accept);
        kitchen.run_to("2026-12-24 17:10");
        kitchen.say("Ana", told.on);
        kitchen.run_to("2026-12-24 18:20");
        let said = kitchen.say("Ana", text);
        let last = kitchen.scene.room.plan.as_ref().unwrap().readings.last().unwrap_or_else(|| panic!("{said}"));
        assert_eq!(last.breast_c, text.replace(',', ".").parse().ok(), "{said}");
    }
}
