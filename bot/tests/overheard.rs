//! A group talks among itself: what can only be meant for the plan is heard, and nothing else is.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const LANGUAGES: [&str; 6] = ["en-US", "de-DE", "es-ES", "fr-FR", "it-IT", "pt-BR"];

fn planned(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.say("Tom", "/board");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn ids(kitchen: &Kitchen) -> Vec<String> {
    kitchen.said.last().unwrap().text.iter().map(|text| text.id.to_string()).collect()
}

#[test]
fn a_proposal_is_accepted_by_a_word_of_whose_it_is() {
    for yes in ["looks good", "ok go", "yes", "perfect"] {
        let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
        kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
        kitchen.among("Tom", yes);
        assert!(kitchen.scene.room.plan.is_none(), "{yes}, by another");
        kitchen.among("Rosa", yes);
        assert!(kitchen.scene.room.plan.is_some(), "{yes}");
    }
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.now += chrono::TimeDelta::minutes(30);
    kitchen.among("Rosa", "yes");
    assert!(kitchen.scene.room.plan.is_none(), "half an hour later it may be to anything");
}

#[test]
fn who_has_a_job_is_told_in_every_language() {
    let asked =
        ["who's salting?", "wer salzt?", "¿quién sala?", "qui sale la dinde ?", "chi sala?", "quem salga o peru?"];
    for (language, question) in LANGUAGES.into_iter().zip(asked) {
        let mut kitchen = planned(language);
        assert_eq!(kitchen.among("Tom", question), 1, "{language}: {question}");
        assert_eq!(ids(&kitchen), ["room-who-nobody"], "{language}");
    }
    let mut kitchen = planned("en-US");
    kitchen.say("Tom", "/take salt");
    assert_eq!(kitchen.among("Rosa", "who is salting the bird?"), 1);
    assert_eq!(ids(&kitchen), ["room-who-has"]);
}

#[test]
fn hours_of_the_plan_are_told_to_whoever_asks() {
    let mut kitchen = planned("en-US");
    for question in ["when's dinner?", "when does the bird go in?", "what time do we eat", "when do we eat?"] {
        assert!(kitchen.among("Tom", question) > 0, "{question}");
    }
}

#[test]
fn a_dish_with_its_heat_and_its_time_is_added_by_the_host() {
    let mut kitchen = planned("en-US");
    let dish = "add mac and cheese in the oven 45 min at 350";
    assert_eq!(kitchen.among("Tom", dish), 0);
    assert!(kitchen.among("Rosa", dish) > 0);
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(plan.jobs.iter().any(|job| job.step() == Some(Step::Dish)));
}

#[test]
fn the_bird_goes_in_whatever_the_air_reads() {
    let mut kitchen = planned("en-US");
    kitchen.run_to("2027-11-25 11:30");
    kitchen.among("Tom", "its in, at 325");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert!(matches!(plan.job(Step::On, 0).unwrap().state, JobState::Done { .. }));
}

#[test]
fn a_plan_is_cancelled_in_words_and_only_after_a_yes() {
    let cancels = [
        ["dinner's off, everyone's sick", "yes"],
        ["das essen fällt aus", "ja"],
        ["cancela el plan", "sí"],
        ["on annule tout", "oui"],
        ["annulla tutto", "sì"],
        ["cancela o jantar", "sim"],
    ];
    for (language, [words, yes]) in LANGUAGES.into_iter().zip(cancels) {
        let mut kitchen = planned(language);
        assert_eq!(kitchen.among("Tom", words), 0, "{language}: not his to end");
        assert!(kitchen.among("Rosa", words) > 0, "{language}: {words}");
        assert!(kitchen.scene.room.plan.is_some(), "{language}: asked first");
        kitchen.among("Tom", yes);
        assert!(kitchen.scene.room.plan.is_some(), "{language}");
        kitchen.among("Rosa", yes);
        assert!(kitchen.scene.room.plan.is_none(), "{language}: {yes}");
    }
    let mut kitchen = planned("en-US");
    kitchen.say("Rosa", "/stop");
    kitchen.among("Rosa", "no");
    assert!(kitchen.scene.room.plan.is_some());
    assert_eq!(kitchen.among("Rosa", "yes"), 0, "it has been answered");
}

#[test]
fn what_people_say_to_each_other_stays_between_them() {
    let mut kitchen = planned("en-US");
    for talk in [
        "who's driving tomorrow?",
        "whos bringing wine",
        "when does the game start?",
        "add me to the list",
        "cancel my subscription lol",
        "its in the mail",
        "whats next",
        "who wants pie",
        "looks good",
    ] {
        assert_eq!(kitchen.among("Tom", talk), 0, "{talk}");
        assert_eq!(kitchen.among("Rosa", talk), 0, "{talk}");
    }
}

/// A bird in the oven since half past eleven; it is one.
fn cooking() -> Kitchen {
    let mut kitchen = planned("en-US");
    kitchen.run_to("2027-11-25 11:30");
    kitchen.say("Rosa", "bird is in");
    kitchen.run_to("2027-11-25 13:00");
    kitchen
}

#[test]
fn while_it_cooks_scores_weather_and_trains_stay_between_people() {
    for talk in [
        "28-24 final",
        "touchdown!!! 21-7",
        "he ran for 90, threw for 160",
        "it's 28 out",
        "I'm 20 minutes out",
        "we're 20 min out",
        "it's 74 in the house",
        "8 people in the cab",
        "we'll be 20 min late to the movie",
        "put it in the fridge",
        "finished!",
        "I'm done",
        "what's the score?",
        "two kids are sick",
        "how hot is it outside?",
        "the stuffing is coming out of the couch",
        "reheat my coffee please",
        "nobody eats my pie",
        "forgot it at home",
        "the chicken place on 5th closed",
    ] {
        let mut kitchen = cooking();
        let before = kitchen.scene.room.plan.clone();
        assert_eq!(kitchen.among("Tom", talk), 0, "{talk}");
        assert_eq!(kitchen.scene.room.plan, before, "{talk}");
    }
}

#[test]
fn what_is_off_long_before_it_can_be_done_is_asked_first() {
    for words in ["he's out", "took it out", "it's out"] {
        let mut kitchen = cooking();
        assert!(kitchen.among("Tom", words) > 0, "{words}");
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert!(matches!(plan.job(Step::Pull, 0).unwrap().state, JobState::Waiting), "{words}");
    }
}

#[test]
fn i_cant_frees_a_job_only_where_one_was_just_called_for() {
    let mut kitchen = planned("en-US");
    kitchen.say("Tom", "/take carve");
    assert_eq!(kitchen.among("Tom", "I can't do it"), 0);
    let owner = |kitchen: &Kitchen| kitchen.scene.room.plan.as_ref().unwrap().job(Step::Carve, 0).unwrap().owner;
    assert!(owner(&kitchen).is_some());
    kitchen.say("Tom", "I can't do it");
    assert!(owner(&kitchen).is_none(), "said to it, it counts");
}

#[test]
fn no_slip_is_taken_for_a_bird_that_is_done_before_its_time() {
    let mut kitchen = planned("en-US");
    kitchen.run_to("2027-11-25 11:30");
    kitchen.say("Rosa", "bird is in");
    kitchen.run_to("2027-11-25 11:56");
    let said = kitchen.say("Rosa", "breast 74");
    assert!(!said.contains("165"), "{said}");
}
