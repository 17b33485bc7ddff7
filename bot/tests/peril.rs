//! Fire and gas come before all else, in every language, whoever says it and to whom.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, Printed, answer_line, read_question};
use carvetime::room::{RoomKind, What};
use carvetime::words::{Reader, Voice};
use chrono::Utc;
use chrono_tz::{America::Toronto, Europe::Madrid, Tz};
use kitchen::Kitchen;

const FIRES: [(&str, &str); 22] = [
    ("fr-FR", "ca brule dans le four, ya des flammes"),
    ("es-MX", "se derramo grasa y hay fuego en el horno"),
    ("es-ES", "hay llamas en el horno"),
    ("es-ES", "se ha prendido la grasa"),
    ("es-ES", "el horno esta en llamas"),
    ("fr-FR", "y a des flammes dans le four!!"),
    ("fr-CA", "le feu a pris dans le four"),
    ("fr-FR", "la graisse a pris feu"),
    ("en-US", "the oven is on fire"),
    ("en-US", "grease caught fire"),
    ("en-GB", "flames are coming out of the oven"),
    ("en-US", "what do I do if there is a fire in the oven"),
    ("de-DE", "im Ofen brennt es!"),
    ("de-DE", "Flammen im Ofen, was tun"),
    ("de-DE", "das Fett brennt"),
    ("it-IT", "ci sono fiamme nel forno"),
    ("it-IT", "il forno ha preso fuoco"),
    ("pt-BR", "o forno pegou fogo"),
    ("pt-BR", "tem chamas no forno"),
    ("pt-BR", "a gordura pegou fogo"),
    ("it-IT", "il grasso prende fuoco"),
    ("de-DE", "der Backofen brennt"),
];

const GAS: [(&str, &str); 7] = [
    ("es-ES", "huele a gas"),
    ("fr-FR", "ça sent le gaz"),
    ("en-US", "I smell gas"),
    ("de-DE", "hier riecht es nach Gas"),
    ("it-IT", "c'è puzza di gas in cucina"),
    ("pt-BR", "tá cheirando gás"),
    ("fr-CA", "y'a une fuite de gaz"),
];

const OTHERS: [(&str, &str, &str); 37] = [
    ("en-US", "smoke coming from oven", "smoke"),
    ("en-US", "theres smoke pouring out of the oven", "smoke"),
    ("en-US", "the smoke detector is going off", "smoke"),
    ("en-US", "the fire alarm went off", "smoke"),
    ("en-US", "hot oil splashed on jake", "burn"),
    ("en-US", "someone's choking", "choking"),
    ("de-DE", "der Ofen qualmt", "smoke"),
    ("es-ES", "sale humo del horno", "smoke"),
    ("fr-FR", "de la fumée sort du four", "smoke"),
    ("it-IT", "esce fumo dal forno", "smoke"),
    ("pt-BR", "tá saindo fumaça do forno", "smoke"),
    ("en-US", "carbon monoxide alarm is going off", "carbon-monoxide"),
    ("de-DE", "der CO-Melder piept", "carbon-monoxide"),
    ("es-ES", "suena la alarma de monóxido", "carbon-monoxide"),
    ("fr-FR", "le détecteur de monoxyde sonne", "carbon-monoxide"),
    ("it-IT", "è scattato l'allarme monossido", "carbon-monoxide"),
    ("pt-BR", "o alarme de monóxido disparou", "carbon-monoxide"),
    ("en-US", "turkey fryer is boiling over", "hot-oil"),
    ("en-US", "oil is smoking", "hot-oil"),
    ("de-DE", "das Öl läuft über", "hot-oil"),
    ("es-ES", "el aceite se desborda", "hot-oil"),
    ("fr-FR", "l'huile déborde", "hot-oil"),
    ("it-IT", "l'olio trabocca", "hot-oil"),
    ("pt-BR", "o óleo está transbordando", "hot-oil"),
    ("en-US", "i burned my hand", "burn"),
    ("de-DE", "ich hab mir die Hand verbrannt", "burn"),
    ("es-ES", "me quemé la mano", "burn"),
    ("fr-FR", "je me suis brûlé la main", "burn"),
    ("it-IT", "mi sono bruciato la mano", "burn"),
    ("pt-BR", "queimei a mão", "burn"),
    ("en-US", "my kid is choking", "choking"),
    ("de-DE", "er hat sich verschluckt und kriegt keine Luft", "choking"),
    ("es-ES", "se está atragantando", "choking"),
    ("fr-FR", "elle s'étouffe", "choking"),
    ("it-IT", "sta soffocando", "choking"),
    ("pt-BR", "ele tá engasgado", "choking"),
    ("en-US", "he's choking on a bone", "choking"),
];

fn kind(tag: &str, text: &str) -> Option<&'static str> {
    let reader = Reader::new(tag, Tz::UTC, Utc::now());
    read_question(text, &Asker::of_reader(&reader)).ok().map(|question| question.kind())
}

#[test]
fn fire_and_gas_are_known_in_every_language() {
    for (tag, text) in FIRES {
        assert_eq!(kind(tag, text), Some("fire"), "{tag}: {text}");
    }
    for (tag, text) in GAS {
        assert_eq!(kind(tag, text), Some("gas"), "{tag}: {text}");
    }
}

#[test]
fn smoke_monoxide_oil_burns_and_choking_are_known_in_every_language() {
    for (tag, text, what) in OTHERS {
        assert_eq!(kind(tag, text), Some(what), "{tag}: {text}");
    }
    for (tag, text) in [
        ("en-US", "smoke is coming from the smoker"),
        ("en-US", "we smoke it at 250"),
        ("en-US", "i burned the rolls"),
        ("en-US", "last year i burned my hand"),
        ("en-US", "heat the oil to 350"),
        ("de-DE", "der Smoker raucht schön"),
        ("fr-FR", "une brûlure de congélation, c'est grave ?"),
        ("pt-BR", "queimei o arroz"),
        ("en-US", "my alarm is going off at 6"),
    ] {
        let other = ["smoke", "carbon-monoxide", "hot-oil", "burn", "choking"];
        assert!(!kind(tag, text).is_some_and(|kind| other.contains(&kind)), "{tag}: {text}");
    }
}

#[test]
fn whom_to_call_is_named_with_each() {
    let voice = Voice::new();
    for (tag, text, what) in OTHERS {
        let reader = Reader::new(tag, Tz::UTC, Utc::now());
        let Printed::Answer(said) = answer_line(text, &reader, &voice, false) else { panic!("{tag}: {text}") };
        let number = match tag {
            "en-US" => "911",
            "pt-BR" if ["burn", "choking"].contains(&what) => "192",
            "pt-BR" => "193",
            _ => "112",
        };
        assert!(said.contains(number), "{tag}: {what}: {said}");
    }
}

#[test]
fn a_fire_that_is_meant_to_burn_and_one_of_last_year_are_none() {
    for (tag, text) in [
        ("en-US", "coals are lit, fire is going"),
        ("en-US", "the fire is on"),
        ("en-US", "no flames"),
        ("en-US", "last year the oven caught fire"),
        ("es-ES", "¿me llamas luego?"),
        ("es-ES", "el fuego está listo"),
        ("fr-FR", "le feu est allumé"),
        ("de-DE", "die Kohle brennt, der Smoker ist an"),
        ("pt-BR", "o carvão pegou fogo"),
        ("pt-BR", "como te chamas?"),
        ("it-IT", "il fuoco è acceso"),
        ("en-GB", "gas mark 4"),
    ] {
        assert!(!matches!(kind(tag, text), Some("fire" | "gas")), "{tag}: {text}");
    }
}

#[test]
fn the_answer_keeps_the_door_shut_the_water_away_and_names_whom_to_call() {
    let voice = Voice::new();
    for (tag, shut, water, number) in [
        ("en-US", "door shut", "No water", "911"),
        ("en-GB", "door shut", "No water", "999"),
        ("es-ES", "Puerta del horno cerrada", "Nada de agua", "112"),
        ("es-MX", "Puerta del horno cerrada", "Nada de agua", "911"),
        ("fr-FR", "Porte du four fermée", "Pas d’eau", "112"),
        ("fr-CA", "Porte du four fermée", "Pas d’eau", "911"),
        ("de-DE", "Ofentür zulassen", "Kein Wasser", "112"),
        ("it-IT", "Sportello del forno chiuso", "Niente acqua", "112"),
        ("pt-BR", "Porta do forno fechada", "Nada de água", "193"),
        ("en", "door shut", "No water", "fire service"),
    ] {
        let reader = Reader::new(tag, Tz::UTC, Utc::now());
        let text = FIRES.iter().find(|(other, _)| other.get(..2) == tag.get(..2)).unwrap().1;
        let Printed::Answer(said) = answer_line(text, &reader, &voice, false) else { panic!("{tag}: {text}") };
        assert!(said.contains(shut) && said.contains(water) && said.contains(number), "{tag}: {said}");
    }
}

#[test]
fn in_a_group_nobody_has_to_speak_to_the_bot() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "es-ES", Madrid, "2026-12-23 10:00");
    kitchen.say("Ana", "pavo fresco de 5 kg, ya lo tengo, cena el 24 a las 21:00, 8 personas, horno a 180");
    kitchen.press("Ana", "Aceptar");
    kitchen.run_to("2026-12-24 17:00");
    kitchen.say("Ana", "el pavo ya esta en el horno");
    kitchen.run_to("2026-12-24 18:00");
    let before = kitchen.scene.room.plan.clone();
    let aside = |text: &str| What::Said { text: text.into(), addressed: false, reply_to: None, edited: false };
    for text in ["hay llamas en el horno!!", "se ha prendido la grasa", "pechuga 40, y hay fuego en el horno"] {
        let said = kitchen.hear(Some("Luis"), aside(text));
        assert!(said.contains("112") && said.contains("Nada de agua"), "{text}: {said}");
    }
    let said = kitchen.hear(Some("Luis"), aside("oye huele a gas"));
    assert!(said.contains("No toques interruptores"), "{said}");
    assert_eq!(kitchen.scene.room.plan, before, "nothing of the plan changes for it");
}

#[test]
fn while_a_plan_is_being_made_it_is_answered_all_the_same() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "fr-CA", Toronto, "2026-12-23 10:00");
    kitchen.say("Jo", "dinde fraiche de 12 livres, souper le 24 a 6h");
    let said = kitchen.say("Jo", "le feu a pris dans le four");
    assert!(said.contains("911"), "{said}");
}
