//! What is said as a bird is cut up, eaten and put away: heard, and nobody is called for it any more.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// A fresh bird at home for the 25th at six, off the heat since 17:00, in that language.
fn off(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", Berlin, "2027-12-24 12:00");
    kitchen.say("Jonas", "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr, 10 leute, ofen 180, ohne salz");
    kitchen.press("Jonas", "Annehmen");
    for (at, words) in [("13:45", "pute ist drin"), ("16:50", "brust 75 keule 79"), ("17:00", "ist raus")] {
        kitchen.run_to(&format!("2027-12-25 {at}"));
        kitchen.among("Jonas", words);
    }
    kitchen.run_to("2027-12-25 17:36");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn is_done(kitchen: &Kitchen, step: Step) -> bool {
    let job = kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap();
    matches!(job.state, JobState::Done { .. })
}

fn check(step: Step, at: &str, table: &[(&str, &str)]) {
    let mut wrong = Vec::new();
    for (language, words) in table {
        let mut kitchen = off(language);
        if step != Step::Carve {
            kitchen.run_to(at);
        }
        kitchen.among("Sabine", words);
        // Whoever cuts it up has the job, and is left alone with it for a while.
        let job = kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap();
        let begun = step == Step::Carve && job.call_at.is_some_and(|at| at > kitchen.now) && job.owner.is_some();
        if !begun && !is_done(&kitchen, step) {
            wrong.push(format!("{language}: {words}"));
        }
    }
    assert!(wrong.is_empty(), "{step:?}:\n{}", wrong.join("\n"));
}

#[test]
fn whoever_cuts_it_up_says_so() {
    check(
        Step::Carve,
        "",
        &[
            ("de-DE", "schneid jetz"),
            ("de-DE", "ich schneid jetzt"),
            ("de-DE", "schneide auf"),
            ("de-DE", "guten appetit"),
            ("de-DE", "wir sitzen am tisch"),
            ("en-US", "cutting it up now"),
            ("en-GB", "tuck in!"),
            ("es-ES", "lo trincho ya"),
            ("es-ES", "buen provecho"),
            ("fr-FR", "je coupe"),
            ("fr-FR", "bon appétit"),
            ("it-IT", "lo taglio adesso"),
            ("it-IT", "buon appetito"),
            ("pt-BR", "tô fatiando"),
            ("pt-BR", "bom apetite"),
        ],
    );
}

#[test]
fn what_is_left_and_put_away_is_said_too() {
    check(
        Step::Chill,
        "2027-12-25 18:55",
        &[
            ("de-DE", "is alles eingepackt im kühlschrank"),
            ("de-DE", "alles verpackt und im kühlschrank"),
            ("de-DE", "reste sind im kühlschrank"),
            ("en-US", "it's all packed up in the fridge"),
            ("es-ES", "ya está todo guardado en la nevera"),
            ("fr-FR", "tout est emballé au frigo"),
            ("it-IT", "tutto impacchettato in frigo"),
            ("pt-BR", "tá tudo embalado na geladeira"),
        ],
    );
}

#[test]
fn eating_nobody_is_called_to_carve() {
    let mut kitchen = off("de-DE");
    kitchen.among("Sabine", "guten appetit");
    let before = kitchen.said.len();
    kitchen.run_to("2027-12-25 18:20");
    let called = kitchen.said[before..].iter().flat_map(|say| &say.text).any(|text| text.id.contains("carve"));
    assert!(!called, "{:?}", kitchen.said[before..].iter().map(|say| &say.text).collect::<Vec<_>>());
}

#[test]
fn another_meal_is_wished_well_in_peace() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", Berlin, "2027-12-23 12:00");
    kitchen.say("Jonas", "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr, 10 leute, ofen 180, ohne salz");
    kitchen.press("Jonas", "Annehmen");
    kitchen.run_to("2027-12-24 12:30");
    for words in ["guten appetit", "mahlzeit", "wir sind am essen"] {
        assert_eq!(kitchen.among("Mia", words), 0, "{words}");
    }
}
