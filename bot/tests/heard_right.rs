//! Jobs, numbers and hours in a few words, each beside what only sounds like it, in six languages.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::{JobState, LiveJob};
use carvetime::room::{PersonId, RoomKind};
use carvetime_core::plan::Step;
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

/// Thursday at four for eight, planned on Tuesday by Rosa, the bird at home; in a group with Tom.
fn planned(kind: RoomKind, tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-23 18:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, we have it, dinner Thursday 4 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    if kind == RoomKind::Group {
        kitchen.say("Tom", "/board");
    }
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen
}

fn job(kitchen: &Kitchen, step: Step) -> LiveJob {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().clone()
}

fn is_done(kitchen: &Kitchen, step: Step) -> bool {
    matches!(job(kitchen, step).state, JobState::Done { .. })
}

#[test]
fn salted_and_back_in_the_fridge_is_salted() {
    let said: [&[&str]; 6] = [
        &["salted it, it's back in the fridge", "salted and back in the fridge"],
        &["ya lo salé, está otra vez en la nevera"],
        &["je l'ai salée, elle est remise au frigo"],
        &["gesalzen, ist wieder im kühlschrank", "hab sie gesalzen, steht wieder im kühlschrank"],
        &["já salguei, está de volta na geladeira"],
        &["l'ho salato, è di nuovo in frigo"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for text in said {
            let mut kitchen = planned(RoomKind::Group, tag);
            kitchen.run_to("2027-11-23 20:00");
            kitchen.among("Rosa", text);
            assert!(is_done(&kitchen, Step::Salt), "{tag}: {text}");
            let later = kitchen.run_to("2027-11-23 21:30");
            assert!(!later.contains("New:"), "{tag}: {text}: nobody is called again: {later}");
        }
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    kitchen.run_to("2027-11-23 20:00");
    for text in ["it's back in the fridge", "the beer is back in the fridge", "salted the road, it's back to normal"] {
        kitchen.among("Rosa", text);
        assert!(!is_done(&kitchen, Step::Salt), "{text}");
    }
}

#[test]
fn who_comes_late_is_a_guest_and_no_game() {
    let said = [
        ("aunt carol is 20 min late", "kickoff is 20 min late"),
        ("la tía carol llega 20 minutos tarde", "el vuelo llega 20 minutos tarde"),
        ("tante carol a 20 minutes de retard", "le match a 20 minutes de retard"),
        ("tante carol kommt 20 minuten zu spät", "der zug kommt 20 minuten zu spät"),
        ("a tia carol vai atrasar 20 minutos", "o jogo vai atrasar 20 minutos"),
        ("zia carol arriva 20 minuti in ritardo", "il treno arriva 20 minuti in ritardo"),
    ];
    for (tag, (guest, thing)) in TAGS.into_iter().zip(said) {
        let mut kitchen = planned(RoomKind::Group, tag);
        assert_eq!(kitchen.among("Rosa", guest), 1, "{tag}: {guest}");
        let mut kitchen = planned(RoomKind::Group, tag);
        assert_eq!(kitchen.among("Rosa", thing), 0, "{tag}: {thing}");
    }
    for text in ["late flight", "flight is delayed an hour", "school is delayed 2 hours", "my package is 2 hours late"]
    {
        let mut kitchen = planned(RoomKind::Group, "en-US");
        let heard = kitchen.among("Rosa", text);
        assert!(heard == 0 || text.starts_with("my"), "{text}");
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    assert_eq!(kitchen.among("Rosa", "carol's flight is an hour late, dinner too"), 1, "the meal is named");
}

#[test]
fn who_does_what_on_a_day_is_listed_with_its_hours() {
    let said = [
        "who's doing what thursday?",
        "¿quién hace qué el jueves?",
        "qui fait quoi jeudi ?",
        "wer macht was am donnerstag?",
        "quem faz o quê na quinta?",
        "chi fa cosa giovedì?",
    ];
    for (tag, text) in TAGS.into_iter().zip(said) {
        let mut kitchen = planned(RoomKind::Group, "en-US");
        kitchen.say("Tom", "/take carve");
        kitchen.scene.room.taste.language = Some(tag.to_owned());
        let before = kitchen.said.len();
        assert_eq!(kitchen.among("Rosa", text), 1, "{tag}: {text}");
        let lines = kitchen.said[before].text.len();
        assert_eq!(lines, 7, "{tag}: {text}: Thursday's jobs, and no other day's");
        let heard = kitchen.say("Rosa", text);
        assert!(heard.contains("Tom"), "{tag}: {text}: {heard}");
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    assert!(kitchen.say("Rosa", "who's doing what tomorrow").contains("Nothing left to do that day."));
    for text in ["who's doing what at work", "who has what it takes", "who is doing what they love tomorrow"] {
        assert_eq!(kitchen.among("Rosa", text), 0, "{text}");
    }
}

#[test]
fn when_the_bird_goes_in_is_the_plans_own_hour() {
    let mut kitchen = planned(RoomKind::Group, "en-US");
    let before = kitchen.said.len();
    assert_eq!(kitchen.among("Tom", "what time does the bird go in"), 1);
    assert!(format!("{:?}", kitchen.said[before].text).contains("room-when-step"));
    for text in ["what time does the game start", "when do you go in to work", "when does the store close"] {
        assert_eq!(kitchen.among("Tom", text), 0, "{text}");
    }
}

#[test]
fn carving_has_begun_and_is_not_done() {
    let said = [
        "carving now",
        "lo estoy trinchando",
        "je découpe maintenant",
        "tranchiere jetzt",
        "cortando agora",
        "sto tagliando",
    ];
    for (tag, text) in TAGS.into_iter().zip(said) {
        let mut kitchen = over_heat(RoomKind::Group, tag);
        kitchen.run_to("2027-11-25 17:20");
        kitchen.say("Ana", "/log 75/80/180C");
        let log = kitchen.say("Ana", "/log 170/178/350F, wing 172F");
        let off = ["it's out", "ya lo saqué", "sortie du four", "ist draußen", "saiu do forno", "sfornato"];
        let at = TAGS.iter().position(|other| *other == tag).unwrap();
        let out = kitchen.say("Ana", off[at]);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().is_off(), "{tag}: {log}{out}");
        kitchen.run_to("2027-11-25 17:40");
        kitchen.among("Ana", text);
        assert!(!is_done(&kitchen, Step::Carve), "{tag}: {text}");
        assert_eq!(job(&kitchen, Step::Carve).owner, Some(PersonId(1)), "{tag}: {text}");
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    assert_eq!(kitchen.among("Rosa", "carving pumpkins"), 0);
    assert_eq!(kitchen.among("Rosa", "carving now"), 0, "nothing is off the heat");
}

#[test]
fn white_and_dark_meat_are_read_and_a_leg_of_a_flight_is_not() {
    let mut kitchen = over_heat(RoomKind::Group, "en-US");
    kitchen.among("Ana", "white meat 112 dark 121");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let last = plan.readings.last().unwrap();
    assert_eq!((last.breast_c.map(f64::round), last.thigh_c.map(f64::round)), (Some(44.0), Some(49.0)));
    let count = plan.readings.len();
    for text in ["leg 2 of the flight is 140 min", "it's dark by 5", "2 white 1 dark for me please"] {
        assert_eq!(kitchen.among("Ana", text), 0, "{text}");
    }
    assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().readings.len(), count);
}

#[test]
fn a_country_is_no_bird() {
    for text in ["we're flying to turkey", "flying to turkey next week", "our trip to turkey is on friday"] {
        let mut kitchen = planned(RoomKind::Group, "en-US");
        assert_eq!(kitchen.among("Rosa", text), 0, "{text}");
        let mut alone = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
        let heard = alone.say("Rosa", text);
        assert!(alone.scene.room.drafts.is_empty() && !heard.contains("Frying"), "{text}: {heard}");
    }
}

#[test]
fn talk_that_asks_nothing_gets_no_lesson() {
    let said: [&[&str]; 6] = [
        &["good to know", "makes sense", "you're the best", "hmm ok", "awesome thanks", "got it thanks", "so excited"],
        &["bueno saberlo", "tiene sentido", "eres lo máximo", "ah ok", "qué bien"],
        &["bon à savoir", "intéressant", "trop bien"],
        &["gut zu wissen", "macht sinn", "ach so", "kein problem"],
        &["bom saber", "faz sentido", "entendi", "interessante"],
        &["buono a sapersi", "ha senso", "ho capito", "che buono"],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for text in said {
            let mut kitchen = planned(RoomKind::Private, tag);
            let before = kitchen.scene.room.plan.as_ref().unwrap().wish.clone();
            let heard = kitchen.say("Rosa", text);
            assert!(heard.lines().count() <= 1 && heard.len() < 60, "{tag}: {text}: {heard}");
            assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish, before, "{tag}: {text}");
        }
    }
    let mut kitchen = planned(RoomKind::Private, "en-US");
    for text in ["purple monkey", "what is this", "is that awesome or what?"] {
        assert!(kitchen.say("Rosa", text).contains("I didn't get that"), "{text}");
    }
}
