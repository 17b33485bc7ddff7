//! "Left it in the sink to thaw overnight", "it's been in the garage since Saturday": told, it gets the authority's answer; the beer in the
//! garage none.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, read_question};
use carvetime::room::state::{JobState, LiveJob};
use carvetime::room::{RoomKind, What};
use carvetime::words::Reader;
use chrono::Utc;
use chrono_tz::{America::Chicago, Tz};
use kitchen::{Kitchen, over_heat};

const WARM: [(&str, &str); 14] = [
    ("en-US", "i left it in the sink to thaw overnight"),
    ("en-US", "thawed on the counter all day"),
    ("en-US", "left the turkey on the counter all night to thaw"),
    ("en-US", "it's been thawing on the counter for 6 hours"),
    ("es-ES", "lo dejé descongelando en el fregadero toda la noche"),
    ("es-MX", "lo descongelé en la mesa todo el día"),
    ("fr-FR", "je l'ai laissée décongeler dans l'évier toute la nuit"),
    ("fr-FR", "décongelée sur le plan de travail toute la journée"),
    ("de-DE", "hab sie über Nacht in der Spüle auftauen lassen"),
    ("de-DE", "den ganzen Tag auf der Arbeitsplatte aufgetaut"),
    ("pt-BR", "deixei descongelando na pia a noite toda"),
    ("pt-BR", "descongelei na bancada o dia todo"),
    ("it-IT", "l'ho lasciato scongelare nel lavandino tutta la notte"),
    ("it-IT", "scongelato sul bancone tutto il giorno"),
];

const GARAGE: [(&str, &str); 7] = [
    ("en-US", "it's been in the garage since saturday"),
    ("en-US", "the turkey was thawing on the porch for two days"),
    ("es-ES", "está en el garaje desde el sábado"),
    ("fr-FR", "elle est dans le garage depuis samedi"),
    ("de-DE", "steht seit Samstag in der Garage"),
    ("pt-BR", "está na garagem desde sábado"),
    ("it-IT", "è in garage da sabato"),
];

const NEITHER: [(&str, &str); 14] = [
    ("en-US", "the beer's been in the garage since saturday"),
    ("en-US", "car's been in the garage since saturday"),
    ("en-US", "dishes sat in the sink all night"),
    ("en-US", "can i thaw it on the counter overnight"),
    ("en-US", "thawed on the counter all day last week"),
    ("en-US", "thawing on the counter for an hour"),
    ("en-US", "put it in the sink"),
    ("en-US", "it's been in the fridge since saturday"),
    ("de-DE", "das Bier steht seit Samstag in der Garage"),
    ("es-ES", "las bebidas están en el garaje desde el sábado"),
    ("fr-FR", "les bières sont dans le garage depuis samedi"),
    ("it-IT", "la macchina è in garage da sabato"),
    ("pt-BR", "o carro está na garagem desde sábado"),
    ("fr-FR", "la voiture est dehors depuis samedi"),
];

fn kind(tag: &str, text: &str) -> &'static str {
    let reader = Reader::new(tag, Tz::UTC, Utc::now());
    read_question(text, &Asker::of_reader(&reader)).map_or("-", |question| question.kind())
}

fn frozen(tag: &str) -> Kitchen {
    let (plan, accept) = match tag.get(..2).unwrap() {
        "es" => (
            "/plan pavo congelado de 5 kg, ya lo tengo, cena el jueves a las 18:00, 8 personas, horno a 180",
            "Aceptar",
        ),
        "fr" => ("/plan dinde surgelée de 5 kg, je l'ai déjà, repas jeudi à 18h, 8 personnes, four à 180", "Accepter"),
        "de" => (
            "/plan gefrorene Pute 5 kg, haben wir schon, Essen Donnerstag um 18 Uhr, 8 Personen, Ofen auf 180",
            "Annehmen",
        ),
        "it" => {
            ("/plan tacchino congelato 5 kg, ce l'abbiamo, cena giovedì alle 18, 8 persone, forno a 180", "Accetta")
        }
        "pt" => ("/plan peru congelado de 5 kg, já temos, ceia quinta às 18h, 8 pessoas, forno a 180", "Aceitar"),
        _ => ("/plan 11 lb frozen turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 350", "Accept"),
    };
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, Chicago, "2027-11-19 10:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen.run_to("2027-11-22 09:30");
    kitchen
}

fn told(kitchen: &mut Kitchen, text: &str) -> Option<String> {
    let before = kitchen.said.len();
    kitchen.hear(Some("Bob"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false });
    kitchen.said.get(before).and_then(|say| say.text.first()).map(|text| text.id.to_string())
}

#[test]
fn what_thawed_in_the_warm_is_thrown_away_and_a_garage_is_measured() {
    for (tag, text) in WARM {
        assert_eq!(kind(tag, text), "warm-thaw", "{tag}: {text}");
        assert_eq!(told(&mut frozen(tag), text).as_deref(), Some("ask-warm-thaw"), "{tag}: {text}");
    }
    for (tag, text) in GARAGE {
        assert_eq!(kind(tag, text), "garage-thaw", "{tag}: {text}");
        assert_eq!(told(&mut frozen(tag), text).as_deref(), Some("ask-garage-thaw"), "{tag}: {text}");
    }
}

#[test]
fn what_is_asked_ahead_and_what_is_no_bird_is_neither() {
    for (tag, text) in NEITHER {
        assert_ne!(kind(tag, text), "warm-thaw", "{tag}: {text}");
        let said = told(&mut frozen(tag), text);
        assert!(!matches!(said.as_deref(), Some("ask-warm-thaw" | "ask-garage-thaw")), "{tag}: {text}: {said:?}");
    }
}

#[test]
fn nothing_thaws_any_more_over_the_heat_nor_where_nothing_is_planned() {
    let mut cooking = over_heat(RoomKind::Group, "en-US");
    assert_eq!(told(&mut cooking, "it's been in the garage since saturday"), None);
    let mut nothing = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-19 10:00");
    assert_eq!(told(&mut nothing, "it's been in the garage since saturday"), None);
}

#[test]
fn told_privately_it_is_answered_and_nothing_is_marked_thawed() {
    let mut kitchen = frozen("en-US");
    let said = kitchen.say("Ana", "thawed on the counter all day");
    assert!(said.contains("Throw it away"), "{said}");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let done = |job: &LiveJob| matches!(job.state, JobState::Done { .. });
    assert!(!plan.jobs.iter().any(done), "{:?}", plan.jobs);
    assert_eq!(plan.waiting().count(), 0, "nor is anybody called for it");
}
