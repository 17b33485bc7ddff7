//! Doing what the plan says is no fault: cold water in the sink, a bird wrapped hot; and words as people shorten them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::plan::Step;
use chrono_tz::Tz;
use kitchen::Kitchen;

#[test]
fn cold_water_in_the_sink_is_how_it_is_done() {
    for (tag, zone, plan, accept, told, warm) in [
        (
            "en-US",
            "America/Chicago",
            "/plan frozen 11 lb turkey, we have it, dinner 12/24 8 pm, oven at 325, 6 people, no salt",
            "Accept",
            "put it in cold water in the sink",
            "can I thaw it in the sink in hot water?",
        ),
        (
            "pt-BR",
            "America/Sao_Paulo",
            "/plan peru congelado de 5kg ja temperado, ja comprei, ceia dia 24/12 as 20h, 6 pessoas, forno a 180",
            "Aceitar",
            "pus na agua fria na pia",
            "posso descongelar na pia com água quente?",
        ),
    ] {
        let zone: Tz = zone.parse().unwrap();
        let mut kitchen = Kitchen::new(RoomKind::Group, tag, zone, "2027-12-23 10:00");
        kitchen.say("Lu", plan);
        kitchen.press("Lu", accept);
        kitchen.run_to("2027-12-23 20:30");
        let before = kitchen.said.len();
        let _ = kitchen.among("Lu", told);
        let ids: Vec<_> =
            kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect();
        assert!(!ids.iter().any(|id| id.starts_with("ask-thaw-counter") || id == "ask-counter-thaw"), "{tag}: {ids:?}");
        let asked = kitchen.say("Lu", warm);
        assert!(asked.contains("30 min"), "{tag}: {asked}");
    }
}

#[test]
fn wrapped_hot_is_a_job_done_and_no_question_of_foil() {
    for said in ["embrulhei quente", "enrolei no papel aluminio e toalhas e pus na caixa termica"] {
        let zone: Tz = "America/Sao_Paulo".parse().unwrap();
        let mut kitchen = Kitchen::new(RoomKind::Group, "pt-BR", zone, "2027-12-23 10:00");
        let plan = "/plan peru fresco de 5kg, ja comprei, ceia dia 24/12 as 20h na casa da tia, 30 min de carro, levamos quente, \
                    forno a 180, 6 pessoas, sem sal";
        kitchen.say("Lu", plan);
        kitchen.press("Lu", "Aceitar");
        kitchen.run_to("2027-12-24 15:10");
        kitchen.say("Lu", "o peru está no forno");
        kitchen.run_to("2027-12-24 18:00");
        kitchen.say("Lu", "peito 75, coxa 80, asa 82");
        kitchen.say("Lu", "tirei do forno");
        kitchen.run_to("2027-12-24 18:40");
        kitchen.among("Lu", said);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert!(plan.facts.iter().any(|fact| fact.step == Step::Pack.name() && fact.done), "{said}: {:?}", plan.facts);
    }
}

#[test]
fn a_helper_asks_in_private_as_people_type() {
    let zone: Tz = "America/Sao_Paulo".parse().unwrap();
    let mut kitchen = Kitchen::new(RoomKind::Group, "pt-BR", zone, "2027-12-18 10:00");
    kitchen.say(
        "Lu",
        "/plan peru congelado de 5kg ja temperado, ja comprei, ceia dia 24/12 as 22h30, 6 pessoas, forno a 180",
    );
    kitchen.press("Lu", "Aceitar");
    kitchen.say("Ju", "eu ponho no forno");
    let hour = kitchen.say("Ju", "q horas eu ponho o peru no forno?");
    assert!(hour.contains("Colocar a ave: sex."), "{hour}");
    let part = kitchen.say("Ju", "q q eu tenho q fazer?");
    assert!(part.contains("Com você"), "{part}");
    let who = kitchen.say("Ju", "quem ta com o q");
    assert!(who.contains("Colocar a ave"), "{who}");
}
