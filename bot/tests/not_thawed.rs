//! "Haven't thawed it yet", said while planning: the bird is frozen, and it is in the house.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TOLD: [(&str, &str, &[&str]); 6] = [
    (
        "en-US",
        "turkey 14 lb, dinner thursday 4 pm, oven",
        &[
            "havent thawed it yet",
            "haven’t thawed it",
            "we haven't thawed the bird yet",
            "still frozen solid",
            "not thawed",
        ],
    ),
    ("de-DE", "truthahn 6,5 kg, donnerstag 16 uhr, ofen", &["hab ihn noch nicht aufgetaut", "noch steinhart gefroren"]),
    ("es-ES", "pavo 6,5 kg, cena jueves 16:00, horno", &["todavía no lo he descongelado", "sigue congelado"]),
    ("fr-FR", "dinde 6,5 kg, dîner jeudi 16 h, four", &["je l'ai pas encore décongelée", "encore congelée"]),
    ("it-IT", "tacchino 6,5 kg, cena giovedì ore 16, forno", &["non l'ho ancora scongelato", "è ancora congelato"]),
    ("pt-BR", "peru 6,5 kg, jantar quinta 16h, forno", &["ainda não descongelei", "ainda está congelado"]),
];

#[test]
fn a_bird_that_is_not_thawed_yet_is_frozen_and_at_home() {
    for (locale, plan, words) in TOLD {
        for words in words {
            for together in [false, true] {
                let mut kitchen = Kitchen::new(RoomKind::Private, locale, Chicago, "2027-11-21 09:00");
                if together {
                    kitchen.say("Rosa", &format!("/plan {plan}, {words}"));
                } else {
                    kitchen.say("Rosa", plan);
                    kitchen.say("Rosa", words);
                }
                let wish = kitchen.scene.room.drafts.values().next().unwrap().wish.clone();
                let told = (wish.condition.as_deref(), wish.at_home);
                assert_eq!(told, (Some("frozen"), Some(true)), "{locale}: {words}, {together}");
            }
        }
    }
}

#[test]
fn a_frozen_bird_still_in_the_shop_is_still_bought() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-21 09:00");
    kitchen.say("Rosa", "/plan turkey 14 lb frozen, dinner thursday 4 pm, oven");
    kitchen.say("Rosa", "we still have to buy it, still frozen there");
    let wish = kitchen.scene.room.drafts.values().next().unwrap().wish.clone();
    assert_eq!((wish.condition.as_deref(), wish.at_home), (Some("frozen"), Some(false)));
}

/// A frozen bird in the oven's plan for Thursday at four, seen from Friday before.
fn planned(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-19 10:00");
    kitchen.say("Dana", "16 lb frozen turkey, have it, dinner November 25 4 pm, 12 people, oven at 325, no salt");
    kitchen.press("Dana", "Accept");
    kitchen.run_to("2027-11-21 15:00");
    kitchen.say("Dana", "it's in the fridge thawing");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    for person in kitchen.scene.people.values_mut() {
        person.taste.language = Some(language.to_owned());
    }
    kitchen
}

#[test]
fn a_bird_that_never_left_the_freezer_thaws_from_now_on() {
    for (language, said) in [
        ("en-US", "i thought i put it in the fridge but it was in the freezer"),
        ("en-US", "it was still in the freezer, crap"),
        ("de", "sie lag noch im Gefrierfach"),
        ("es", "estaba en el congelador"),
        ("fr", "elle était au congélateur"),
        ("it", "era ancora nel congelatore"),
        ("pt", "ainda tava no freezer"),
    ] {
        let mut kitchen = planned(language);
        kitchen.run_to("2027-11-24 09:00");
        kitchen.say("Dana", said);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert_eq!(plan.wish.condition.as_deref(), Some("frozen"), "{language}: {said}");
        let thaw = plan.job(Step::Thaw, 0).unwrap();
        assert!(thaw.state == JobState::Waiting && thaw.at >= kitchen.now, "{said}: it begins anew");
        assert!(
            plan.jobs.iter().any(|job| job.step() == Some(Step::Water)),
            "{said}: a day is too short for the fridge"
        );
    }
}

#[test]
fn before_its_time_a_bird_in_the_freezer_is_as_planned() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-15 10:00");
    kitchen.say("Dana", "16 lb frozen turkey, have it, dinner November 25 4 pm, 12 people, oven at 325, no salt");
    kitchen.press("Dana", "Accept");
    let before = kitchen.scene.room.plan.clone();
    kitchen.say("Dana", "it's still in the freezer");
    assert_eq!(kitchen.scene.room.plan.map(|plan| plan.wish), before.map(|plan| plan.wish));
}

#[test]
fn into_the_oven_frozen_nobody_is_called_to_the_water_any_more() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 20:00");
    kitchen.say("Dana", "12 lb frozen turkey, have it, dinner tomorrow 4 pm, oven at 325, no salt, thaw in cold water");
    kitchen.press("Dana", "Accept");
    kitchen.run_to("2027-11-25 05:00");
    kitchen.say("Dana", "put it in the water");
    kitchen.run_to("2027-11-25 07:05");
    kitchen.say("Dana", "put it in the oven frozen");
    let heard = kitchen.run_to("2027-11-25 10:00");
    assert!(!heard.contains("thawing water"), "{heard}");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert_eq!(plan.wish.thawing.as_deref(), Some("cook-frozen"));
    let lasts = plan.ready_to.unwrap() - kitchen.local("2027-11-25 07:05");
    assert!(lasts > chrono::TimeDelta::hours(5), "half as long again: {lasts}");
}
