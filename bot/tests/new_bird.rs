//! A raw bird that has to be thrown away: nothing more is due with it, whoever says "bought a new one" has the same dinner planned with that,
//! and nothing said of the old one is answered as if it were fine.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

/// Language, plan, `Accept`, what was done to it.
const LOST: [(&str, &str, &str, &str); 6] = [
    (
        "en-US",
        "/plan 14 lb frozen turkey, have it, dinner November 25 5 pm, 11 people, oven at 325",
        "Accept",
        "i left it in the sink to thaw overnight",
    ),
    (
        "es-ES",
        "/plan pavo congelado de 6 kg, ya lo tengo, cena el 25 de noviembre a las 17:00, 11 personas, horno a 170",
        "Aceptar",
        "lo dejé descongelando en el fregadero toda la noche",
    ),
    (
        "fr-FR",
        "/plan dinde surgelée de 6 kg, je l'ai déjà, repas le 25 novembre à 17h, 11 personnes, four à 170",
        "Accepter",
        "je l'ai laissée décongeler dans l'évier toute la nuit",
    ),
    (
        "de-DE",
        "/plan gefrorene Pute 6 kg, haben wir schon, Essen am 25. November um 17 Uhr, 11 Personen, Ofen auf 170",
        "Annehmen",
        "hab sie über Nacht in der Spüle auftauen lassen",
    ),
    (
        "pt-BR",
        "/plan peru congelado de 6 kg, já temos, ceia 25 de novembro às 17h, 11 pessoas, forno a 170",
        "Aceitar",
        "deixei descongelando na pia a noite toda",
    ),
    (
        "it-IT",
        "/plan tacchino congelato 6 kg, ce l'abbiamo, cena il 25 novembre alle 17, 11 persone, forno a 170",
        "Accetta",
        "l'ho lasciato scongelare nel lavandino tutta la notte",
    ),
];

/// In each language: a new one and nothing more; one with weight and condition; one found, with weight and condition; that the old one is
/// still frozen inside.
const SAID: [[&str; 4]; 6] = [
    [
        "bought a new one",
        "got a new turkey, 12 lb fresh",
        "found a fresh 13 lb one at the store",
        "it's still frozen in the middle",
    ],
    [
        "compré otro",
        "tengo un pavo nuevo, 5,5 kg fresco",
        "encontré uno fresco de 6 kg en la tienda",
        "sigue congelado por dentro",
    ],
    [
        "j'en ai racheté une",
        "j'ai acheté une nouvelle dinde, 5,5 kg fraîche",
        "trouvé une fraîche de 6 kg au magasin",
        "elle est encore congelée au milieu",
    ],
    [
        "hab eine neue gekauft",
        "neue Pute besorgt, 5,5 kg frisch",
        "eine frische mit 6 kg gefunden",
        "sie ist innen noch gefroren",
    ],
    [
        "comprei outro",
        "comprei um peru novo, 5,5 kg fresco",
        "achei um fresco de 6 kg no mercado",
        "ainda está congelado no meio",
    ],
    [
        "ne ho comprato un altro",
        "preso un tacchino nuovo, 5,5 kg fresco",
        "trovato uno fresco di 6 kg al negozio",
        "è ancora congelato in mezzo",
    ],
];

/// A frozen bird planned for Thursday, thawed in the warm on Tuesday night.
fn lost(at: usize, kind: RoomKind) -> Kitchen {
    let (tag, plan, accept, how) = LOST[at];
    let mut kitchen = Kitchen::new(kind, tag, Chicago, "2027-11-19 10:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen.run_to("2027-11-24 08:00");
    kitchen.say("Ana", how);
    kitchen
}

fn ids(kitchen: &Kitchen, from: usize) -> Vec<String> {
    kitchen.said[from..].iter().flat_map(|say| say.text.iter().map(|text| text.id.to_string())).collect()
}

#[test]
fn nobody_is_called_for_a_bird_that_is_to_be_thrown_away() {
    let mut kitchen = lost(0, RoomKind::Group);
    assert!(ids(&kitchen, 0).iter().any(|id| id == "cook-tossed-raw"));
    let heard = kitchen.run_to("2027-11-25 18:00");
    assert_eq!(heard, "", "nothing is due with it");
    // Said by mistake, it is taken back.
    let mut kitchen = lost(0, RoomKind::Group);
    kitchen.press("Ana", "Undo");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.waiting().any(|job| job.step() == Some(Step::On)), "{:?}", plan.jobs);
}

#[test]
fn a_new_one_is_heard_in_every_language_and_has_the_same_dinner() {
    for (at, said) in SAID.iter().enumerate() {
        for text in &said[..3] {
            for addressed in [true, false] {
                let mut kitchen = lost(at, RoomKind::Group);
                let old = kitchen.scene.room.plan.clone().unwrap();
                if addressed {
                    kitchen.say("Ana", text);
                } else {
                    kitchen.among("Ana", text);
                }
                let draft = kitchen.scene.room.drafts.values().next();
                let wish = draft.unwrap_or_else(|| panic!("{}: {text}", LOST[at].0)).wish.clone();
                let same = (old.wish.dinner, old.wish.adults, old.wish.cooker, old.wish.setting_c);
                assert_eq!((wish.dinner, wish.adults, wish.cooker, wish.setting_c), same, "{text}");
                let told = *text != said[0];
                assert_eq!(wish.mass_g.is_some(), told, "{text}");
                assert_eq!(wish.condition.as_deref(), told.then_some("fresh"), "{text}");
            }
        }
    }
}

#[test]
fn a_weight_that_is_not_told_is_asked_for_whatever_would_feed_as_many() {
    let mut kitchen = lost(0, RoomKind::Group);
    let said = kitchen.say("Ana", "bought a new one");
    assert!(said.contains("How heavy is the new one?"), "{said}");
    let said = kitchen.say("Ana", "12");
    assert!(said.contains("Is the bird frozen?"), "{said}");
    let said = kitchen.say("Ana", "fresh");
    assert!(said.contains("12 lb turkey for 11, oven at 325"), "{said}");
    assert!(said.contains("On the table Thu 5:00 PM"), "{said}");
    assert!(!said.contains("Instead of"), "the old one stands in nobody's way: {said}");
    kitchen.press("Ana", "Accept");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(kitchen.scene.room.others.is_empty() && kitchen.scene.room.drafts.is_empty());
    assert_eq!(plan.wish.condition.as_deref(), Some("fresh"));
    assert!(plan.job(Step::On, 0).is_some_and(|job| job.state == JobState::Waiting));
    assert!(plan.job(Step::Thaw, 0).is_none(), "a fresh one is not thawed");
    assert!(plan.job(Step::Buy, 0).is_none(), "it is bought");
}

#[test]
fn a_helper_who_has_a_new_one_plans_it_for_the_host_and_the_jobs_stay_theirs() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-19 10:00");
    kitchen.say("Ana", LOST[0].1);
    kitchen.press("Ana", "Accept");
    kitchen.say("Bob", "/take carve");
    kitchen.run_to("2027-11-24 08:00");
    kitchen.among("Bob", LOST[0].3);
    let host = kitchen.scene.room.plan.as_ref().unwrap().host;
    let carver = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Carve, 0).unwrap().owner;
    assert!(carver.is_some());
    kitchen.among("Bob", "got a new turkey, 12 lb fresh");
    kitchen.press("Bob", "Accept");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert_eq!((plan.host, plan.job(Step::Carve, 0).unwrap().owner), (host, carver));
    assert_eq!(plan.serial, 2);
}

#[test]
fn what_is_said_of_the_old_one_is_never_answered_as_if_it_were_fine() {
    for (at, said) in SAID.iter().enumerate() {
        let mut kitchen = lost(at, RoomKind::Group);
        for addressed in [true, false] {
            let from = kitchen.said.len();
            if addressed {
                kitchen.say("Ana", said[3]);
            } else {
                kitchen.among("Ana", said[3]);
            }
            let ids = ids(&kitchen, from);
            assert_eq!(ids.first().map(String::as_str), Some("cook-gone"), "{}: {ids:?}", said[3]);
        }
    }
    let mut kitchen = lost(0, RoomKind::Group);
    for text in
        ["it's thawed now", "salted it", "it's in the oven", "put it in frozen", "when will it be done?", "/when"]
    {
        let said = kitchen.say("Ana", text);
        assert!(said.contains("gets thrown away"), "{text}: {said}");
    }
}

#[test]
fn the_weight_and_how_it_is_alone_answer_what_was_asked_for() {
    for text in ["12 lb fresh", "12 lb", "fresh, 12 lb"] {
        let mut kitchen = lost(0, RoomKind::Private);
        kitchen.say("Ana", text);
        let draft = kitchen.scene.room.drafts.values().next().unwrap_or_else(|| panic!("{text}"));
        assert!(draft.wish.mass_g.is_some_and(|grams| (grams - 5443.0).abs() < 1.0), "{text}");
        assert!(draft.replaces.is_some());
    }
    let mut kitchen = lost(0, RoomKind::Group);
    let said = kitchen.say("Ana", "/plan 12 lb fresh turkey");
    assert!(said.contains("On the table Thu 5:00 PM"), "{said}");
}

#[test]
fn nobody_has_a_new_one_by_looking_for_it_nor_is_any_other_thing_a_bird() {
    for text in [
        "couldn't find a new one",
        "need a new one",
        "got 10 lb of potatoes",
        "bought beer",
        "got fresh sage",
        "we had a new turkey last year",
    ] {
        let mut kitchen = lost(0, RoomKind::Group);
        kitchen.among("Ana", text);
        assert!(kitchen.scene.room.drafts.is_empty(), "{text}");
    }
    let mut kitchen = lost(0, RoomKind::Group);
    let said = kitchen.say("Ana", "do we need a new one?");
    assert!(said.contains("tell me its weight"), "{said}");
}

#[test]
fn where_no_bird_was_lost_a_new_one_takes_nothings_place() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-19 10:00");
    kitchen.say("Ana", LOST[0].1);
    kitchen.press("Ana", "Accept");
    kitchen.run_to("2027-11-24 08:00");
    kitchen.among("Ana", "bought a new one");
    assert!(kitchen.scene.room.drafts.is_empty());
    let said = kitchen.say("Ana", "it's still frozen in the middle");
    assert!(!said.contains("thrown away"), "{said}");
}

#[test]
fn raw_and_out_for_hours_it_is_lost_and_other_food_is_not_it() {
    let stood = |text: &str| {
        let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-19 10:00");
        kitchen.say("Ana", "/plan 12 lb fresh turkey, have it, dinner November 21 5 pm, 11 people, oven at 325");
        kitchen.press("Ana", "Accept");
        kitchen.run_to("2027-11-20 08:00");
        kitchen.say("Ana", text);
        let waits = kitchen.scene.room.plan.as_ref().unwrap().job(Step::On, 0).unwrap().state == JobState::Waiting;
        (waits, kitchen)
    };
    let (waits, mut kitchen) = stood("the turkey was left out on the counter for 5 hours");
    assert!(!waits);
    let said = kitchen.say("Ana", "got a new turkey, 12 lb fresh");
    assert!(said.contains("On the table Sun 5:00 PM"), "{said}");
    assert!(stood("the potato salad was left out for 5 hours").0);
    assert!(stood("can I leave the turkey out for 5 hours?").0);
    assert!(stood("/ask turkey left out for 5 hours").0);
    // Where it may have to go, another is heard, and this one stays planned.
    let (waits, mut kitchen) = stood("the turkey smells bad");
    assert!(waits);
    kitchen.say("Ana", "got a new turkey, 12 lb fresh");
    assert!(kitchen.scene.room.drafts.values().any(|draft| draft.replaces.is_some()));
}

#[test]
fn thrown_away_over_the_heat_a_new_one_has_what_time_is_left() {
    let mut kitchen = over_heat(RoomKind::Group, "en-US");
    kitchen.say("Ana", "threw it all away");
    let said = kitchen.say("Ana", "got a new turkey, 12 lb fresh");
    assert!(said.contains("12 lb"), "{said}");
    assert!(kitchen.scene.room.drafts.values().any(|draft| draft.replaces.is_some()));
}

#[test]
fn the_packers_salt_goes_with_the_old_one_and_a_wish_for_none_stays() {
    let salting = |told: &str| {
        let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-19 10:00");
        kitchen.say("Ana", &format!("{}{told}", LOST[0].1));
        kitchen.press("Ana", "Accept");
        kitchen.run_to("2027-11-24 08:00");
        kitchen.say("Ana", LOST[0].3);
        kitchen.say("Ana", "got a new turkey, 12 lb fresh");
        let wish = kitchen.scene.room.drafts.values().next().unwrap().wish.clone();
        (wish.salting.unwrap_or_else(|| "dry".to_owned()), wish.solution_percent, wish.presalted)
    };
    assert_eq!(salting(""), ("dry".to_owned(), None, None));
    assert_eq!(salting(", no salt"), ("none".to_owned(), None, None));
    assert_eq!(salting(", already brined"), ("dry".to_owned(), None, None));
    assert_eq!(salting(", 8 % solution"), ("dry".to_owned(), None, None));
}
