//! What people call one of two birds: whose it is, "mine", "not the duck", the smoker's, the one that is kept hot.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::{JobState, LivePlan};
use carvetime::room::{PersonId, RoomKind};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const ROSA: PersonId = PersonId(1);
const TOM: PersonId = PersonId(2);

/// Rosa's turkey in the oven since half past twelve, Tom's duck in the smoker since two; it is half past two.
fn both_on(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, smoker at 325");
    kitchen.press("Tom", "One more bird");
    kitchen.say("Li", "hi");
    kitchen.run_to("2027-11-25 12:30");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 14:00");
    kitchen.say("Tom", "the duck is on");
    kitchen.run_to("2027-11-25 14:30");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

/// Tom's duck off the heat and kept hot.
fn one_kept() -> Kitchen {
    let mut kitchen = both_on("en-US");
    kitchen.run_to("2027-11-25 15:30");
    kitchen.say("Tom", "breast 167 thigh 175 wing 170");
    kitchen.say("Tom", "the duck is off");
    kitchen.press("Tom", "Kept hot");
    assert!(plan(&kitchen, TOM).held_hot && plan(&kitchen, TOM).is_off());
    kitchen
}

fn plan(kitchen: &Kitchen, host: PersonId) -> LivePlan {
    let plans = kitchen.scene.room.plans();
    (*plans.iter().find(|plan| plan.host == host).unwrap()).clone()
}

fn breast(kitchen: &Kitchen, host: PersonId) -> Vec<f64> {
    let fahrenheit = |c: f64| (c * 1.8 + 32.0).round();
    plan(kitchen, host).counted().iter().filter_map(|reading| reading.breast_c.map(fahrenheit)).collect()
}

fn is_done(plan: &LivePlan, step: &str) -> bool {
    plan.jobs.iter().any(|job| job.step == step && matches!(job.state, JobState::Done { by: Some(_), .. }))
}

#[test]
fn a_bird_that_is_kept_hot_is_the_one_its_owner_reads() {
    for text in ["mine dropped to 138", "breast 138", "hold temp 138", "the duck is at 138", "my bird is down to 138"] {
        let mut kitchen = one_kept();
        let said = kitchen.say("Tom", text);
        assert!(said.contains("Tom's duck: ") && said.contains("that isn’t kept hot"), "{text}: {said}");
        assert_eq!(breast(&kitchen, ROSA), Vec::<f64>::new(), "{text}");
    }
    let mut kitchen = one_kept();
    assert!(kitchen.say("Li", "breast 138").contains("Which bird?"), "there is a thermometer in each");
    kitchen.say("Rosa", "breast 138");
    assert_eq!(breast(&kitchen, ROSA), vec![138.0]);
    let mut kitchen = one_kept();
    kitchen.say("Li", "the cooler one: breast 138, holding");
    assert_eq!(breast(&kitchen, ROSA), Vec::<f64>::new());
    for text in ["mine is almost dead, 20 percent", "im down to 138 lol", "138", "my mom lands at 4"] {
        let mut kitchen = one_kept();
        let before = kitchen.scene.room.clone();
        assert_eq!(kitchen.among("Tom", text), 0, "{text}");
        assert_eq!(kitchen.scene.room.plans(), before.plans(), "{text}");
    }
}

#[test]
fn not_the_duck_is_the_other() {
    let said = [
        ("en-US", "breast 104, thigh 110", "not the duck"),
        ("en-US", "breast 104, thigh 110", "not Toms"),
        ("de-DE", "Brust 40, Keule 43", "nicht die Ente"),
        ("es-ES", "pechuga 40, muslo 43", "no el pato"),
        ("fr-FR", "blanc 40, cuisse 43", "pas le canard"),
        ("it-IT", "petto 40, coscia 43", "non l'anatra"),
        ("pt-BR", "peito 40, coxa 43", "não o pato"),
    ];
    for (language, read, answer) in said {
        let mut kitchen = both_on(language);
        kitchen.say("Li", read);
        assert_eq!(kitchen.scene.room.unsure.len(), 1, "{read}");
        kitchen.say("Li", answer);
        assert_eq!(breast(&kitchen, TOM), Vec::<f64>::new(), "{answer}");
        assert_eq!(breast(&kitchen, ROSA), vec![104.0], "{answer}");
    }
    let mut kitchen = both_on("en-US");
    kitchen.say("Li", "breast 104, thigh 110");
    kitchen.say("Li", "no, the duck");
    assert_eq!(breast(&kitchen, TOM), vec![104.0]);
}

#[test]
fn what_says_more_than_a_name_answers_no_question() {
    for text in ["is Toms bird safe?", "Toms is cold", "thanks Tom", "Tom?", "the duck smells great", "both"] {
        let mut kitchen = both_on("en-US");
        kitchen.say("Li", "breast 104, thigh 110");
        kitchen.say("Li", text);
        assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![], vec![]), "{text}");
        kitchen.say("Li", "the duck");
        assert_eq!(breast(&kitchen, TOM), vec![104.0], "{text}: what was read is not lost");
    }
    let mut kitchen = both_on("en-US");
    kitchen.say("Li", "carved");
    kitchen.say("Li", "the duck is at 104");
    assert!(!is_done(&plan(&kitchen, TOM), "carve"));
    assert_eq!(breast(&kitchen, TOM), vec![104.0]);
    // Long after it was asked a name is one said of something else; the button still answers.
    let mut kitchen = both_on("en-US");
    kitchen.say("Li", "breast 104, thigh 110");
    kitchen.run_to("2027-11-25 14:45");
    kitchen.say("Li", "the duck");
    assert_eq!(breast(&kitchen, TOM), Vec::<f64>::new());
    kitchen.press("Li", "Tom's duck");
    assert_eq!(breast(&kitchen, TOM), vec![104.0]);
}

#[test]
fn a_fire_that_is_out_is_the_smokers() {
    let said = [
        ("en-US", "smoker went out"),
        ("en-US", "the fire went out"),
        ("de-DE", "der Smoker ist ausgegangen"),
        ("de-DE", "das Feuer ist aus"),
        ("es-ES", "el ahumador se apagó"),
        ("es-ES", "el fuego se ha apagado"),
        ("fr-FR", "le fumoir s'est éteint"),
        ("it-IT", "l'affumicatore si è spento"),
        ("pt-BR", "o defumador apagou"),
    ];
    for (language, text) in said {
        let mut kitchen = both_on(language);
        kitchen.say("Li", text);
        assert!(plan(&kitchen, TOM).down_since.is_some(), "{text}");
        assert!(plan(&kitchen, ROSA).down_since.is_none(), "{text}");
    }
    let mut kitchen = both_on("en-US");
    let said = kitchen.say("Li", "smoker went out 20 min ago");
    assert!(said.contains("Tom's duck: Noted: no heat since 2:10 PM"), "{said}");
    let mut kitchen = both_on("en-US");
    kitchen.say("Li", "the oven died");
    assert!(plan(&kitchen, ROSA).down_since.is_some() && plan(&kitchen, TOM).down_since.is_none());
}

#[test]
fn what_is_cancelled_is_the_bird_named() {
    let said = [
        ("en-US", "cancel my duck", "yes"),
        ("en-US", "mine is cancelled", "yes"),
        ("de-DE", "meine Ente absagen", "ja"),
        ("es-ES", "cancela mi pato", "sí"),
        ("fr-FR", "annule mon canard", "oui"),
        ("it-IT", "annulla la mia anatra", "sì"),
        ("pt-BR", "cancela o meu pato", "sim"),
    ];
    for (language, text, yes) in said {
        let mut kitchen = both_on(language);
        let asked = kitchen.say("Tom", text);
        assert!(asked.contains("Tom"), "{text}: {asked}");
        kitchen.say("Tom", yes);
        let hosts: Vec<PersonId> = kitchen.scene.room.plans().iter().map(|plan| plan.host).collect();
        assert_eq!(hosts, vec![ROSA], "{text}");
    }
    let mut kitchen = both_on("en-US");
    kitchen.say("Tom", "cancel the turkey");
    kitchen.say("Tom", "yes");
    assert_eq!(kitchen.scene.room.plans().len(), 2, "it is Rosa's to end");
}

#[test]
fn ones_own_bird_is_mine() {
    let said = [
        ("en-US", "mine is at 104"),
        ("de-DE", "meine hat 40"),
        ("es-ES", "el mío está a 40"),
        ("fr-FR", "le mien est à 40"),
        ("it-IT", "il mio è a 40"),
        ("pt-BR", "o meu está a 40"),
    ];
    for (language, text) in said {
        let mut kitchen = both_on(language);
        kitchen.run_to("2027-11-25 15:10");
        kitchen.say("Tom", text);
        assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![], vec![104.0]), "{text}");
    }
    let mut kitchen = both_on("en-US");
    kitchen.say("Tom", "Tom's duck breast 104");
    kitchen.say("Rosa", "Rosa's turkey breast 120");
    kitchen.say("Rosa", "other one breast 106");
    assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![120.0], vec![104.0, 106.0]));
    assert_eq!(kitchen.among("Li", "mine is at 104"), 0, "Li has no bird");
}

#[test]
fn a_reading_told_of_the_wrong_bird_moves() {
    let said = [
        ("en-US", "breast 104", "sorry that was the duck"),
        ("en-US", "breast 104", "oops, thats Toms"),
        ("de-DE", "Brust 40", "sorry, das war die Ente"),
        ("es-ES", "pechuga 40", "perdón, era el pato"),
        ("fr-FR", "blanc 40", "pardon, c'était le canard"),
        ("it-IT", "petto 40", "scusa, era l'anatra"),
        ("pt-BR", "peito 40", "desculpa, era o pato"),
    ];
    for (language, read, moved) in said {
        let mut kitchen = both_on(language);
        kitchen.say("Rosa", read);
        assert_eq!(breast(&kitchen, ROSA), vec![104.0], "{read}");
        kitchen.say("Rosa", moved);
        assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![], vec![104.0]), "{moved}");
    }
    let mut kitchen = both_on("en-US");
    kitchen.say("Rosa", "breast 104");
    for text in ["sorry Tom", "sorry, was that the duck?", "sorry the duck smells so good"] {
        kitchen.say("Rosa", text);
        assert_eq!((breast(&kitchen, ROSA), breast(&kitchen, TOM)), (vec![104.0], vec![]), "{text}");
    }
}

#[test]
fn a_bird_half_cooked_and_frozen_inside_stays_in_the_heat() {
    let mut kitchen = both_on("en-US");
    let said = kitchen.say("Tom", "mine is still frozen in the middle");
    assert!(said.contains("Tom's duck: Leave it in the heat") && said.contains("325 °F"), "{said}");
    assert!(!said.contains("water"), "{said}");
    let said = kitchen.say("Rosa", "the turkey is still frozen inside");
    assert!(said.contains("Rosa's turkey: Leave it in the heat") && !said.contains("smoker"), "{said}");
}

#[test]
fn what_is_offered_or_ready_is_not_done() {
    for text in ["i do the carving", "ready to carve the duck", "ready to carve"] {
        let mut kitchen = both_on("en-US");
        kitchen.say("Tom", text);
        assert!(!is_done(&plan(&kitchen, TOM), "carve"), "{text}");
    }
    let mut kitchen = both_on("en-US");
    let said = kitchen.say("Li", "Toms is done");
    assert!(said.contains("Tom's duck: ") && said.contains("165 °F"), "{said}");
    assert!(!is_done(&plan(&kitchen, TOM), "check"));
    assert_eq!(kitchen.among("Li", "Tom is done with work"), 0);
}

#[test]
fn whose_job_is_asked_where_two_have_one() {
    let mut kitchen = both_on("en-US");
    let asked = kitchen.say("Li", "I'll take carving");
    assert!(asked.contains("Which bird?"), "{asked}");
    let taken = kitchen.say("Li", "the duck");
    assert!(taken.contains("Tom's duck: Yours: Carve"), "{taken}");
    let who = kitchen.say("Rosa", "who carves?");
    assert!(who.contains("Rosa's turkey: Nobody has it yet") && who.contains("Tom's duck: Carve, "), "{who}");
    assert_eq!(kitchen.among("Li", "I'll check"), 0, "that may be of anything");
    let when = kitchen.say("Li", "when is it done?");
    assert!(when.contains("Tom's duck: "), "{when}");
}

#[test]
fn both_are_in_counts_for_each() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, smoker at 325");
    kitchen.press("Tom", "One more bird");
    kitchen.run_to("2027-11-25 13:00");
    kitchen.say("Li", "both are in");
    assert!(is_done(&plan(&kitchen, ROSA), "on") && is_done(&plan(&kitchen, TOM), "on"));
    kitchen.run_to("2027-11-25 14:00");
    kitchen.say("Li", "both are off");
    assert!(!is_done(&plan(&kitchen, ROSA), "pull") && !is_done(&plan(&kitchen, TOM), "pull"));
}

#[test]
fn how_long_a_bird_takes_is_told_of_the_one_that_is_planned() {
    for text in ["how long does the duck take?", "when's Tom's done?", "how long does Toms bird need"] {
        let mut kitchen = both_on("en-US");
        let said = kitchen.say("Li", text);
        assert!(said.contains("Tom's duck: ") && !said.contains("oven at 325"), "{text}: {said}");
    }
    let mut kitchen = both_on("en-US");
    let said = kitchen.say("Li", "how long does a 12 lb turkey take at 350?");
    assert!(said.contains("350 °F"), "{said}");
}

#[test]
fn the_weather_asks_for_no_bird() {
    let mut kitchen = both_on("en-US");
    kitchen.run_to("2027-11-25 15:20");
    for text in ["its 40 degrees out", "both are great", "Toms car is in the driveway", "the other one is better"] {
        assert_eq!(kitchen.among("Li", text), 0, "{text}");
    }
}

#[test]
fn one_oven_has_one_setting() {
    let second = |wish: &str| {
        let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 08:00");
        kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 11 people, oven at 325");
        kitchen.press("Rosa", "Accept");
        kitchen.say("Tom", wish)
    };
    let said = second("/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, oven at 350");
    assert!(said.contains("Rosa's turkey is in an oven at 325 °F then. If it’s the same one"), "{said}");
    let said = second("/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, oven at 325");
    assert!(!said.contains("same one"), "{said}");
    let said = second("/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, smoker at 300");
    assert!(!said.contains("same one"), "{said}");
}

#[test]
fn more_heat_for_one_is_more_for_what_shares_its_oven() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, oven at 325");
    kitchen.press("Tom", "One more bird");
    kitchen.run_to("2027-11-25 12:30");
    kitchen.say("Rosa", "it's on");
    kitchen.run_to("2027-11-25 14:00");
    kitchen.say("Tom", "the duck is on");
    kitchen.run_to("2027-11-25 15:30");
    let said = kitchen.say("Rosa", "breast 95 thigh 100");
    assert!(said.contains("[Heat to") && said.contains("In the same oven as Tom's duck?"), "{said}");
}
