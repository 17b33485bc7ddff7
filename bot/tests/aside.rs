//! What people say to each other of other things marks no job of the bird; who offers to do one has not done it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::JobState;
use carvetime::room::{RoomKind, What};
use carvetime_core::plan::Step;
use chrono_tz::Europe::Madrid;
use kitchen::Kitchen;

/// A bird in the oven since five.
fn cooking(tag: &str) -> Kitchen {
    let (plan, accept, on) = match tag {
        "es-ES" => (
            "/plan pavo fresco de 5 kg, ya lo tengo, cena el 24 a las 21:00, 8 personas, horno a 180",
            "Aceptar",
            "el pavo ya esta en el horno",
        ),
        "fr-FR" => (
            "/plan dinde fraîche de 5 kg, je l'ai déjà, repas le 24 à 21h, 8 personnes, four à 180",
            "Accepter",
            "la dinde est dans le four",
        ),
        "de-DE" => (
            "/plan frische Pute 5 kg, haben wir schon, Essen am 24. um 21 Uhr, 8 Personen, Ofen auf 180",
            "Annehmen",
            "die Pute ist im Ofen",
        ),
        "it-IT" => (
            "/plan tacchino fresco 5 kg, ce l'abbiamo, cena il 24 alle 21, 8 persone, forno a 180",
            "Accetta",
            "il tacchino è in forno",
        ),
        "pt-BR" => (
            "/plan peru fresco de 5 kg, já temos, ceia dia 24 às 21h, 8 pessoas, forno a 180",
            "Aceitar",
            "o peru está no forno",
        ),
        _ => (
            "/plan 11 lb fresh turkey, we have it, dinner on the 24th at 9 pm, 8 people, oven at 350",
            "Accept",
            "the turkey is in the oven",
        ),
    };
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, Madrid, "2026-12-23 10:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen.run_to("2026-12-24 17:00");
    kitchen.say("Ana", on);
    kitchen.run_to("2026-12-24 17:11");
    kitchen
}

fn aside(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn waits(kitchen: &Kitchen, step: Step) -> bool {
    kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap().state == JobState::Waiting
}

#[test]
fn an_answer_about_the_dog_takes_no_bird_out() {
    for (tag, question, answer) in [
        ("es-ES", "Ana, has sacado al perro?", "si, ya lo he sacado"),
        ("es-ES", "Ana, traes tu el vino?", "si, ya lo he comprado"),
        ("es-ES", "Ana, has comprado el cava?", "si, ya esta en la nevera"),
        ("es-ES", "Ana, compraste los refrescos?", "si ya esta listo"),
        ("fr-FR", "Ana, t'as sorti le chien ?", "oui je l'ai sorti"),
        ("fr-FR", "Ana, tu as mis le champagne au frais ?", "oui, c'est fait"),
        ("de-DE", "Ana, hast du den Hund rausgebracht?", "ja, ist draußen"),
        ("de-DE", "Ana, hast du den Sekt gekauft?", "ja, gekauft"),
        ("it-IT", "Ana, hai portato fuori il cane?", "sì, fatto"),
        ("it-IT", "Ana, hai preso lo spumante?", "sì, è in frigo"),
        ("pt-BR", "Ana, você levou o cachorro?", "sim, já tirei"),
        ("pt-BR", "Ana, comprou o espumante?", "sim, já está na geladeira"),
        ("en-US", "Ana, did you take the dog out?", "yes, took it out"),
        ("en-US", "Ana, did you get the champagne?", "yes, it's in the fridge"),
    ] {
        let mut kitchen = cooking(tag);
        let before = kitchen.scene.room.plan.clone();
        assert_eq!(aside(&mut kitchen, "Luis", question), "", "{tag}: {question}");
        assert_eq!(aside(&mut kitchen, "Ana", answer), "", "{tag}: {answer}");
        assert_eq!(kitchen.scene.room.plan, before, "{tag}: {answer}");
    }
}

#[test]
fn an_answer_about_the_bird_is_heard_as_ever() {
    for (question, answer) in [
        ("has sacado el pavo?", "si, ya lo he sacado"),
        ("lo has sacado ya del horno?", "si, ya lo he sacado"),
        ("Ana, has sacado al perro?", "si, y ya he sacado el pavo"),
    ] {
        let mut kitchen = cooking("es-ES");
        aside(&mut kitchen, "Luis", question);
        // Long before it can be done, and unmeasured, it is asked first.
        assert!(aside(&mut kitchen, "Ana", answer).contains("[Hecho]"), "{question} {answer}");
        kitchen.press("Ana", "Hecho");
        assert!(!waits(&kitchen, Step::Pull), "{question} {answer}");
    }
    // The one who asked, one who speaks to the bot, and one who says it much later speak of the bird.
    let mut kitchen = cooking("es-ES");
    aside(&mut kitchen, "Luis", "Ana, has sacado al perro?");
    aside(&mut kitchen, "Luis", "ya lo he sacado");
    kitchen.press("Luis", "Hecho");
    assert!(!waits(&kitchen, Step::Pull));
    let mut kitchen = cooking("es-ES");
    aside(&mut kitchen, "Luis", "Ana, has sacado al perro?");
    kitchen.say("Ana", "ya lo he sacado");
    kitchen.press("Ana", "Hecho");
    assert!(!waits(&kitchen, Step::Pull));
    let mut kitchen = cooking("es-ES");
    aside(&mut kitchen, "Luis", "Ana, has sacado al perro?");
    kitchen.run_to("2026-12-24 17:20");
    aside(&mut kitchen, "Ana", "ya lo he sacado");
    kitchen.press("Ana", "Hecho");
    assert!(!waits(&kitchen, Step::Pull));
}

#[test]
fn where_the_bird_s_job_is_due_it_is_asked_which_was_meant() {
    let mut kitchen = cooking("es-ES");
    let pull = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Pull, 0).unwrap().at;
    let local = pull.with_timezone(&Madrid).format("%Y-%m-%d %H:%M").to_string();
    kitchen.run_to(&local);
    kitchen.say("Ana", "pechuga 76, muslo 78");
    aside(&mut kitchen, "Luis", "Ana, has sacado al perro?");
    let said = aside(&mut kitchen, "Ana", "si, ya lo he sacado");
    assert!(said.contains("¿Es por el ave?"), "{said}");
    assert!(waits(&kitchen, Step::Pull));
    kitchen.press("Ana", "Hecho");
    assert!(!waits(&kitchen, Step::Pull));
}

#[test]
fn who_offers_to_carve_has_not_carved() {
    for text in ["moi je découpe", "je découpe", "moi je la découpe", "c'est moi qui découpe", "je vais découper"]
    {
        let mut kitchen = cooking("fr-FR");
        let said = aside(&mut kitchen, "Tom", text);
        assert!(waits(&kitchen, Step::Carve), "{text}: {said}");
        let owner = kitchen.scene.room.plan.as_ref().unwrap().job(Step::Carve, 0).unwrap().owner;
        assert!(owner.is_some(), "{text}: {said}");
    }
    for text in ["moi je découpe", "je découpe"] {
        let mut kitchen = cooking("fr-FR");
        kitchen.say("Tom", text);
        assert!(waits(&kitchen, Step::Carve), "{text}");
    }
    let mut kitchen = cooking("fr-FR");
    kitchen.say("Tom", "j'ai sorti la dinde");
    kitchen.say("Tom", "j'ai découpé");
    assert!(!waits(&kitchen, Step::Carve));
}
