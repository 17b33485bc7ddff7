//! Temperatures told of meat that is off the heat: how far the plan is decides what they mean.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// Dinner at five, in the oven since noon: 3:24 pm.
fn at_the_end() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-25 08:00");
    kitchen.say("Rosa", "/plan 14 lb fresh turkey, we have it, no salt, oven at 325, dinner today 5 pm, 11 people");
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 12:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 15:24");
    kitchen
}

/// Dinner at five, carved at 4:40 pm and never said to be in the fridge; the two hours end at 5:24 pm.
fn carved() -> Kitchen {
    let mut kitchen = at_the_end();
    kitchen.say("Rosa", "breast 168, thigh 180, wing 170");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-25 16:40");
    kitchen.say("Rosa", "carved");
    kitchen
}

/// Cooked the day before, carved, and in the fridge at 5 pm.
fn ahead() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-23 09:00");
    let plan = "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, cook it the day before and take it to my \
                sister's, 40 minutes away, dinner Thursday 5 pm, 9 people";
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-24 12:30");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-24 15:30");
    kitchen.say("Rosa", "breast 168, thigh 180, wing 170");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-24 16:00");
    kitchen.say("Rosa", "carved");
    kitchen.run_to("2027-11-24 17:00");
    kitchen
}

fn readings(kitchen: &Kitchen) -> usize {
    kitchen.scene.room.plan.as_ref().unwrap().readings.len()
}

fn is_done(kitchen: &Kitchen, step: Step) -> bool {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.jobs.iter().any(|job| job.step() == Some(step) && matches!(job.state, JobState::Done { .. }))
}

#[test]
fn on_the_counter_the_clock_answers_and_nothing_is_kept() {
    let mut kitchen = carved();
    let before = readings(&kitchen);
    for said in
        ["meat is 150", "its 140", "145", "temp is 144 now", "breast 139", "it's 130 now, is it still ok to eat"]
    {
        let answer = kitchen.say("Rosa", said);
        assert!(answer.contains("into the fridge by 5:24 PM") && answer.contains("44 min left"), "{said}: {answer}");
    }
    kitchen.run_to("2027-11-25 17:50");
    for said in ["its 120 now", "118", "it's 110 now, is it still ok to eat?", "it's 70 now is it still good to eat"] {
        let answer = kitchen.say("Rosa", said);
        assert!(answer.contains("two hours are over") && answer.contains("thrown away"), "{said}: {answer}");
    }
    let cold = kitchen.say("Rosa", "its 38");
    assert!(cold.contains("only if it was in the fridge by"), "{cold}");
    assert_eq!(readings(&kitchen), before);
}

#[test]
fn in_the_fridge_with_its_temperature_is_both_heard() {
    let mut kitchen = ahead();
    let said = kitchen.say("Rosa", "in the fridge. its 80");
    assert!(is_done(&kitchen, Step::Chill), "{said}");
    assert!(said.contains("still cooling") && said.contains("9:00 PM") && said.contains("40 °F or colder"), "{said}");
    kitchen.run_to("2027-11-24 19:30");
    let warm = kitchen.say("Rosa", "meat is 75");
    assert!(warm.contains("too warm"), "over 70 °F after two hours: {warm}");
    kitchen.run_to("2027-11-24 20:30");
    let cooling = kitchen.say("Rosa", "48");
    assert!(cooling.contains("still cooling"), "{cooling}");
    let cold = kitchen.say("Rosa", "temp is 39");
    assert!(cold.contains("cold enough"), "{cold}");
    kitchen.run_to("2027-11-25 09:00");
    let warm = kitchen.say("Rosa", "48");
    assert!(warm.contains("too warm") && warm.contains("throw it out"), "{warm}");
}

#[test]
fn a_fridge_s_own_temperature_is_still_asked_about() {
    let mut kitchen = carved();
    let said = kitchen.say("Rosa", "fridge is at 45");
    assert!(said.contains("Your fridge is at 45 °F"), "{said}");
}

#[test]
fn reheated_is_done_at_its_target_and_no_sooner() {
    let mut kitchen = ahead();
    kitchen.say("Rosa", "in the fridge");
    kitchen.run_to("2027-11-25 14:50");
    kitchen.say("Rosa", "packed");
    kitchen.run_to("2027-11-25 15:40");
    let road = kitchen.say("Rosa", "46");
    assert!(road.contains("over 40 °F") && road.contains("thrown away"), "{road}");
    kitchen.run_to("2027-11-25 16:30");
    for said in ["120", "its 150", "reheated, 160", "reheated to 164"] {
        let answer = kitchen.say("Rosa", said);
        assert!(answer.contains("on it goes, until it’s 165 °F"), "{said}: {answer}");
        assert!(!is_done(&kitchen, Step::Reheat), "{said}");
    }
    let there = kitchen.say("Rosa", "167");
    assert!(there.contains("then serve") && there.contains("[Reheated]"), "{there}");
    kitchen.say("Rosa", "reheated, 167");
    assert!(is_done(&kitchen, Step::Reheat));
}

#[test]
fn leftovers_reheated_the_next_day_have_their_target_as_well() {
    let mut kitchen = carved();
    kitchen.run_to("2027-11-25 17:20");
    kitchen.say("Rosa", "leftovers in the fridge");
    kitchen.run_to("2027-11-26 12:00");
    let on = kitchen.say("Rosa", "reheating, its 140");
    assert!(on.contains("until it’s 165 °F"), "{on}");
    let there = kitchen.say("Rosa", "167");
    assert!(there.contains("then serve"), "{there}");
}

#[test]
fn reheated_without_a_word_of_the_fridge_is_not_called_good() {
    let mut kitchen = ahead();
    kitchen.run_to("2027-11-25 16:30");
    let said = kitchen.say("Rosa", "167");
    assert!(said.contains("only if it was in the fridge by") && !said.contains("[Reheated]"), "{said}");
}

#[test]
fn a_bird_that_was_hot_enough_and_cools_is_not_sent_back_into_the_heat() {
    let mut kitchen = at_the_end();
    kitchen.say("Rosa", "breast 166, thigh 180");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-25 15:50");
    let standing = kitchen.say("Rosa", "breast 158");
    assert!(standing.contains("in the fridge by 5:24 PM"), "{standing}");
    let carved = kitchen.say("Rosa", "carved");
    assert!(!carved.contains("back into the heat"), "{carved}");
    assert!(!kitchen.say("Rosa", "its 140").contains("back into the heat"));
}

#[test]
fn a_bird_never_read_hot_enough_goes_back_however_it_was_carved() {
    let mut kitchen = at_the_end();
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-25 15:30");
    assert!(kitchen.say("Rosa", "its 158").contains("goes back into the heat"));
    assert!(kitchen.say("Rosa", "carved").contains("goes back into the heat"));
    assert!(kitchen.say("Rosa", "its 150").contains("goes back into the heat"));
    let hot = kitchen.say("Rosa", "breast 167");
    assert!(hot.contains("Noted") && !hot.contains("back into the heat"), "{hot}");
}

#[test]
fn every_language_is_heard() {
    let cases = [
        ("es-ES", "la carne está a 60 grados", "está a 45, ¿todavía se puede comer?", "en la nevera. está a 27"),
        ("fr-FR", "la viande est à 60", "elle est à 45 maintenant, c'est encore bon ?", "au frigo, elle est à 27"),
        ("de-DE", "das Fleisch hat 60 Grad", "jetzt 45 Grad, kann man das noch essen?", "im Kühlschrank, hat 27 Grad"),
        ("pt-BR", "a carne está a 60 graus", "está a 45 agora, ainda dá pra comer?", "na geladeira, está a 27"),
        ("it-IT", "la carne è a 60 gradi", "ora è a 45, si può ancora mangiare?", "in frigo, è a 27"),
    ];
    for (locale, meat, question, both) in cases {
        let mut kitchen = carved();
        kitchen.scene.room.taste.language = Some(locale.into());
        for said in [meat, question, "48"] {
            let answer = kitchen.say("Rosa", said);
            assert!(answer.contains("17:24"), "{said}: {answer}");
        }
        let answer = kitchen.say("Rosa", both);
        assert!(is_done(&kitchen, Step::Chill) && answer.contains("27"), "{both}: {answer}");
    }
}

#[test]
fn whether_it_may_still_be_eaten_is_answered_by_the_clock_in_every_language() {
    let cases: [(&str, &[&str]); 6] = [
        (
            "en-US",
            &[
                "its 70, can we still eat this?",
                "70 now, still good?",
                "it's 120 should we toss it",
                "is it still ok to eat, its 70",
            ],
        ),
        (
            "es-ES",
            &[
                "está a 21, ¿sigue bueno?",
                "ya está a 21, se puede comer?",
                "21 grados, ¿lo tiro?",
                "está a 21, demasiado tarde?",
            ],
        ),
        (
            "fr-FR",
            &[
                "elle est à 21, on peut encore manger ?",
                "21 degrés, c'est encore mangeable ?",
                "elle est à 21, trop tard ?",
            ],
        ),
        (
            "de-DE",
            &[
                "hat nur noch 21 Grad, ist das noch gut?",
                "21 Grad, geht das noch?",
                "jetzt 21, noch essbar?",
                "21 Grad, zu spät?",
            ],
        ),
        ("pt-BR", &["está a 21, ainda dá pra comer?", "21 graus, ainda presta?", "tá a 21, jogo fora?"]),
        (
            "it-IT",
            &["è a 21, è ancora buono?", "21 gradi, si può mangiare?", "è a 21, lo buttiamo?", "ora 21, troppo tardi?"],
        ),
    ];
    for (locale, questions) in cases {
        let mut kitchen = carved();
        kitchen.scene.room.taste.language = Some(locale.into());
        let clock = if locale == "en-US" { "5:24 PM" } else { "17:24" };
        for said in questions {
            let answer = kitchen.say("Rosa", said);
            assert!(answer.contains(clock), "{said}: {answer}");
        }
    }
}
