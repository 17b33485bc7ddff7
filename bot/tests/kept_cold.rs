//! Questions of food that did not stay cold, of who may eat, and of what heat does not mend: asked in any language, never waved through.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use chrono_tz::America::{Chicago, Sao_Paulo};
use kitchen::Kitchen;

/// The ids of the answer to `text`; empty: not understood.
fn ids(tag: &str, text: &str) -> String {
    // A Saturday.
    let now = "2026-11-28T18:00:00Z".parse().unwrap();
    let answer = ask(text, &Asker::new(tag, Chicago, now));
    answer.map(|answer| answer.texts.iter().map(|text| format!("{} ", text.id)).collect()).unwrap_or_default()
}

#[test]
fn a_fridge_without_power_keeps_for_four_hours() {
    let long = [
        ("en-US", "power was out 5 hours, raw turkey in the fridge, ok?"),
        ("es-MX", "se fue la luz 6 horas, el pavo crudo en el refri está bien?"),
        ("fr-FR", "panne de courant 6 heures, la dinde crue au frigo, c'est bon ?"),
        ("de-DE", "kühlschrank war 6 stunden ohne strom, pute noch gut?"),
        ("pt-BR", "voltou a luz, ficou 5 horas sem, o peru estava na geladeira"),
        ("pt-BR", "4h30 sem luz, o peru cru ta bom?"),
        ("it-IT", "senza corrente per 6 ore, il tacchino crudo in frigo va bene?"),
    ];
    for (tag, text) in long {
        assert_eq!(ids(tag, text).trim(), "ask-fridge-off", "{tag} {text}");
    }
    let short = [
        ("en-US", "power is out, what about the turkey in the fridge"),
        ("pt-BR", "acabou a luz faz 3 horas, o peru cru na geladeira ainda serve?"),
        ("pt-BR", "a luz ainda nao voltou faz 2 horas, como guardo na geladeira?"),
        ("pt-BR", "o peru ficou na geladeira desligada"),
        ("de-DE", "strom ist weg, die rohe pute liegt im kühlschrank"),
    ];
    for (tag, text) in short {
        assert!(ids(tag, text).contains("ask-fridge-down"), "{tag} {text}: {}", ids(tag, text));
    }
    // The oven's outage stays one of the oven.
    assert!(!ids("en-US", "power's out and the oven is dead").contains("fridge"));
}

#[test]
fn a_raw_bird_measured_too_warm_is_said_to_be() {
    let warm = [
        ("en-US", "the turkey in the fridge is at 48 degrees"),
        ("pt-BR", "o peru na geladeira ta a 9 graus"),
        ("de-DE", "pute im keller bei 8 grad auftauen"),
        ("es-ES", "el pavo crudo está a 9 grados en la nevera"),
    ];
    for (tag, text) in warm {
        assert!(ids(tag, text).starts_with("ask-cold-at"), "{tag} {text}: {}", ids(tag, text));
    }
    for text in ["the turkey in the fridge is at 38 degrees", "my fridge is at 46"] {
        assert!(!ids("en-US", text).contains("ask-cold-at"), "{text}");
    }
}

#[test]
fn above_ninety_degrees_an_hour_is_the_limit() {
    let hot = [("en-US", "turkey sat out 1h30 at 95 degrees"), ("pt-BR", "o peru ficou 1h30 na pia com 34 graus")];
    for (tag, text) in hot {
        assert!(ids(tag, text).contains("ask-out-discard"), "{tag} {text}: {}", ids(tag, text));
    }
    assert!(!ids("en-US", "turkey sat out 1h30 at 70 degrees").contains("ask-out-discard"));
}

#[test]
fn since_an_hour_of_the_clock_is_no_number_of_hours() {
    // It is noon in Chicago.
    for text in [
        "le chapon cuit est dehors depuis 1h du matin, je peux le garder ?",
        "dehors depuis 1h du matin, il est 8h, c'est bon ?",
    ] {
        assert!(ids("fr-FR", text).contains("ask-out-discard"), "{text}: {}", ids("fr-FR", text));
    }
}

#[test]
fn hours_in_the_oven_are_no_hours_held() {
    for (tag, text) in [
        ("de-DE", "62 grad brust, 70 keule, sie ist seit 3 stunden im ofen"),
        ("en-US", "144 breast, 158 thigh, it's been in the oven for 3 hours"),
    ] {
        let said = ids(tag, text);
        assert!(said.contains("ask-lethality-go-on"), "{tag} {text}: {said}");
    }
}

#[test]
fn an_age_is_no_temperature() {
    for (tag, text) in [
        ("en-US", "my grandma is 82 years old can she eat it?"),
        ("en-US", "can my 2 year old eat it"),
        ("pt-BR", "minha vo de 82 anos pode comer?"),
        ("de-DE", "darf meine oma mit 82 jahren das essen?"),
        ("it-IT", "mia nonna ha 82 anni, può mangiarlo?"),
    ] {
        assert!(ids(tag, text).contains("ask-fragile"), "{tag} {text}: {}", ids(tag, text));
    }
}

#[test]
fn thawed_for_days_is_told_apart_from_frozen() {
    for (tag, text) in [
        ("en-US", "turkey's been thawed since monday, is it still safe"),
        ("pt-BR", "o peru ta descongelado desde segunda, e seguro?"),
    ] {
        assert!(ids(tag, text).contains("ask-keeps-over"), "{tag} {text}: {}", ids(tag, text));
    }
    let weighed = ids("en-US", "took my 12 lb turkey out of the freezer on monday, can i roast it friday");
    assert!(weighed.contains("thaw"), "{weighed}");
}

#[test]
fn what_heat_does_not_mend_and_what_juice_touched() {
    for (tag, text, id) in [
        ("en-US", "if i cook it well does that kill the bacteria", "ask-kills"),
        ("pt-BR", "se eu assar bem mata as bacterias?", "ask-kills"),
        ("de-DE", "tötet das braten die bakterien?", "ask-kills"),
        ("en-US", "i cut the salad with the raw chicken knife", "ask-crossed"),
        ("pt-BR", "passei a faca do frango cru na salada", "ask-crossed"),
        ("de-DE", "hab den salat mit dem selben messer geschnitten wie das rohe huhn", "ask-crossed"),
        ("pt-BR", "esqueci de tirar o saquinho dos miudos do peru", "ask-bag-inside"),
        ("es-ES", "se me olvidó sacar la bolsa de los menudos", "ask-bag-inside"),
        ("pt-BR", "o caldo saiu claro ta pronto?", "colour"),
        ("de-DE", "ist rosa am knochen schlimm", "colour"),
    ] {
        assert!(ids(tag, text).contains(id), "{tag} {text}: {}", ids(tag, text));
    }
}

#[test]
fn among_people_it_is_heard_as_well() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "pt-BR", Sao_Paulo, "2026-12-23 09:00");
    kitchen.say("Lu", "/plan peru fresco de 5 kg, já comprei, ceia quinta 22:30, 6 pessoas, forno a 180");
    kitchen.press("Lu", "Aceitar");
    for text in [
        "voltou a luz, ficou 5 horas sem, o peru estava na geladeira",
        "o peru na geladeira ta a 9 graus",
        "o peru ficou na geladeira desligada",
        "esqueci de tirar o saquinho dos miudos do peru",
        "passei a faca do frango cru na salada",
    ] {
        assert!(kitchen.among("Lu", text) > 0, "{text}");
    }
}
