//! Said among people in a group, to no one in particular or by name: what it means for the plan, and what means nothing.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{PersonId, RoomKind, What};
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

fn group(tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Ben", "/board");
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen
}

fn among(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn owner(kitchen: &Kitchen, step: Step) -> Option<PersonId> {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().owner
}

#[test]
fn who_is_asked_by_name_answers_with_a_word() {
    let said = [
        ("can you salt it, Ben?", "sure"),
        ("Ben, ¿puedes salarlo?", "claro"),
        ("Ben, tu peux la saler ?", "oui"),
        ("Ben, kannst du ihn salzen?", "klar"),
        ("Ben, você pode salgar?", "claro"),
        ("Ben, puoi salarlo?", "certo"),
    ];
    for (tag, (asked, yes)) in TAGS.into_iter().zip(said) {
        let mut kitchen = group(tag);
        among(&mut kitchen, "Rosa", asked);
        assert_eq!(owner(&kitchen, Step::Salt), None, "{tag}: nothing changes before the answer");
        among(&mut kitchen, "Ben", yes);
        assert_eq!(owner(&kitchen, Step::Salt), Some(PersonId(2)), "{tag}: {asked} {yes}");
    }
}

#[test]
fn whoever_says_to_buy_the_bird_buys_it() {
    let said = [
        "I'll buy the bird",
        "yo compro el pavo",
        "je vais acheter la dinde",
        "ich kaufe den Truthahn",
        "eu compro o peru",
        "io compro il tacchino",
    ];
    for (tag, words) in TAGS.into_iter().zip(said) {
        let mut kitchen = group(tag);
        let answer = among(&mut kitchen, "Ben", words);
        assert_eq!(owner(&kitchen, Step::Buy), Some(PersonId(2)), "{tag}: {words}: {answer}");
    }
    let mut kitchen = group("en-US");
    among(&mut kitchen, "Ben", "I'll buy the wine");
    assert_eq!(owner(&kitchen, Step::Buy), None);
}

#[test]
fn a_yes_takes_the_change_just_offered() {
    let said = [
        ("14 people now", "yes"),
        ("ahora somos 14", "sí"),
        ("on est 14 maintenant", "oui"),
        ("wir sind jetzt 14", "ja"),
        ("agora somos 14", "sim"),
        ("adesso siamo in 14", "sì"),
    ];
    for (tag, (change, yes)) in TAGS.into_iter().zip(said) {
        let mut kitchen = group(tag);
        let offered = among(&mut kitchen, "Ben", change);
        among(&mut kitchen, "Ben", yes);
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.adults, Some(8), "{tag}: not Ben's to answer");
        among(&mut kitchen, "Rosa", yes);
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.adults, Some(14), "{tag}: {change}: {offered}");
    }
}

#[test]
fn earlier_years_are_talk() {
    let said = [
        "we had 14 people last year",
        "el año pasado tuvimos muchas sobras",
        "l'année dernière on avait plein de restes",
        "letztes Jahr hatten wir so viele Reste",
        "ano passado tivemos muitas sobras",
        "l'anno scorso avevamo tanti avanzi",
    ];
    for (tag, words) in TAGS.into_iter().zip(said) {
        let mut kitchen = group(tag);
        assert_eq!(among(&mut kitchen, "Rosa", words), "", "{tag}: {words}");
    }
}

#[test]
fn an_hour_for_the_day_that_is_planned_moves_that_dinner() {
    let mut kitchen = group("en-US");
    let said = kitchen.say("Rosa", "/plan dinner Thursday 6 pm");
    assert!(said.contains("dinner Thu 6:00 PM") && said.contains("[Undo]"), "{said}");
    assert!(kitchen.scene.room.drafts.is_empty());
    let said = kitchen.say("Rosa", "/plan dinner Thursday 6 pm");
    assert!(said.contains("already") && kitchen.scene.room.drafts.is_empty(), "{said}");
}

#[test]
fn guests_said_to_be_late_are_a_choice() {
    let said = [
        "guests come 1 hour late",
        "la abuela llega una hora tarde",
        "mamie arrive en retard d'une heure",
        "oma kommt ne stunde später",
        "a vovó chega uma hora atrasada",
        "la nonna arriva con un'ora di ritardo",
    ];
    for (tag, words) in TAGS.into_iter().zip(said) {
        let mut kitchen = group(tag);
        let dinner = kitchen.scene.room.plan.as_ref().unwrap().wish.dinner;
        let answer = among(&mut kitchen, "Rosa", words);
        assert!(answer.contains('['), "{tag}: {words}: {answer}");
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.dinner, dinner, "{tag}: no more than offered");
    }
}

/// Ice found when a thaw in the fridge should be over: the water it takes now is the thawer's to change.
#[test]
fn water_that_comes_in_later_is_the_thawers() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-20 09:30");
    kitchen.say("Rosa", "/plan 14 lb frozen turkey, we have it, dinner Thursday 6 pm, 11 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Ben", "/take thaw");
    kitchen.say("Ben", "in the fridge, thawing");
    kitchen.run_to("2027-11-24 20:00");
    let said = kitchen.say("Ben", "there is still ice inside the cavity");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let water: Vec<_> = plan.jobs.iter().filter(|job| job.step() == Some(Step::Water)).collect();
    assert!(!water.is_empty(), "{said}");
    assert!(water.iter().all(|job| job.owner == Some(PersonId(2))), "{said}");
}
