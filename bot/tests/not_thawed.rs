//! "Haven't thawed it yet", said while planning: the bird is frozen, and it is in the house.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TOLD: [(&str, &str, &[&str]); 6] = [
    (
        "en-US",
        "turkey 14 lb, dinner thursday 4 pm, oven",
        &[
            "havent thawed it yet",
            "haven’t thawed it",
            "we haven't thawed the bird yet",
            "still frozen solid",
            "not thawed",
        ],
    ),
    ("de-DE", "truthahn 6,5 kg, donnerstag 16 uhr, ofen", &["hab ihn noch nicht aufgetaut", "noch steinhart gefroren"]),
    ("es-ES", "pavo 6,5 kg, cena jueves 16:00, horno", &["todavía no lo he descongelado", "sigue congelado"]),
    ("fr-FR", "dinde 6,5 kg, dîner jeudi 16 h, four", &["je l'ai pas encore décongelée", "encore congelée"]),
    ("it-IT", "tacchino 6,5 kg, cena giovedì ore 16, forno", &["non l'ho ancora scongelato", "è ancora congelato"]),
    ("pt-BR", "peru 6,5 kg, jantar quinta 16h, forno", &["ainda não descongelei", "ainda está congelado"]),
];

#[test]
fn a_bird_that_is_not_thawed_yet_is_frozen_and_at_home() {
    for (locale, plan, words) in TOLD {
        for words in words {
            for together in [false, true] {
                let mut kitchen = Kitchen::new(RoomKind::Private, locale, Chicago, "2027-11-21 09:00");
                if together {
                    kitchen.say("Rosa", &format!("/plan {plan}, {words}"));
                } else {
                    kitchen.say("Rosa", plan);
                    kitchen.say("Rosa", words);
                }
                let wish = kitchen.scene.room.drafts.values().next().unwrap().wish.clone();
                let told = (wish.condition.as_deref(), wish.at_home);
                assert_eq!(told, (Some("frozen"), Some(true)), "{locale}: {words}, {together}");
            }
        }
    }
}

#[test]
fn a_frozen_bird_still_in_the_shop_is_still_bought() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-21 09:00");
    kitchen.say("Rosa", "/plan turkey 14 lb frozen, dinner thursday 4 pm, oven");
    kitchen.say("Rosa", "we still have to buy it, still frozen there");
    let wish = kitchen.scene.room.drafts.values().next().unwrap().wish.clone();
    assert_eq!((wish.condition.as_deref(), wish.at_home), (Some("frozen"), Some(false)));
}
