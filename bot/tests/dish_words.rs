//! Dishes as they are told in each language: the verbs that add, the heats, the settings.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::reading::{DishOrder, Ground, read_dish};
use carvetime_core::quantity::{celsius, in_fahrenheit};
use chrono::{TimeZone, Utc};
use chrono_tz::America::Chicago;

fn ground(tag: &str) -> Ground {
    Ground::new(tag, tag != "en", Chicago, Utc.with_ymd_and_hms(2027, 11, 20, 12, 0, 0).unwrap())
}

#[test]
fn every_verb_and_every_heat_is_heard_in_every_language() {
    let oven = |f: f64| (Some("oven"), Some(f));
    let stove = (Some("stove"), None);
    let table = [
        ("en", "add mash on the cooker 40 min", "mash", stove, 40),
        ("en", "add mash on the hob 40 min", "mash", stove, 40),
        ("en", "include mash on the stovetop 40 min", "mash", stove, 40),
        ("en", "rolls in the oven 15 min at 350 too", "rolls", oven(350.0), 15),
        ("es", "añade puré en la estufa 40 min", "puré", stove, 40),
        ("es", "agrega puré en el fuego 40 min", "puré", stove, 40),
        ("es", "agregar puré en la hornilla 40 min", "puré", stove, 40),
        ("es", "incluye puré a fuego lento 40 min", "puré", stove, 40),
        ("es", "añade relleno al horno 45 min a 190", "relleno", oven(374.0), 45),
        ("fr", "ajoute purée sur la plaque 40 min", "purée", stove, 40),
        ("fr", "rajoute purée sur le feu 40 min", "purée", stove, 40),
        ("fr", "ajouter purée à feu doux 40 min", "purée", stove, 40),
        ("fr", "inclus farce au four 45 min à 190", "farce", oven(374.0), 45),
        ("fr", "farce au four 45 min à 190 aussi", "farce", oven(374.0), 45),
        ("de", "dazu Püree auf dem Herd 40 min", "Püree", stove, 40),
        ("de", "ergänze Püree am Herd 40 min", "Püree", stove, 40),
        ("de", "füge Füllung im Ofen 45 min bei 190 hinzu", "Füllung", oven(374.0), 45),
        ("de", "bitte füg Füllung im Ofen 45 min bei 190 hinzu", "Füllung", oven(374.0), 45),
        ("de", "nimm Püree auf dem Kochfeld 40 min dazu", "Püree", stove, 40),
        ("de", "Füllung im Ofen 45 min bei 190 hinzufügen", "Füllung", oven(374.0), 45),
        ("pt", "inclui purê no fogão 40 min", "purê", stove, 40),
        ("pt", "adicione purê no fogo 40 min", "purê", stove, 40),
        ("pt", "acrescenta purê na boca do fogão 40 min", "purê", stove, 40),
        ("pt", "inclui recheio no forno 45 min a 190", "recheio", oven(374.0), 45),
        ("it", "aggiungi patate sul piano cottura 40 min", "patate", stove, 40),
        ("it", "aggiungi patate ai fornelli 40 min", "patate", stove, 40),
        ("it", "metti patate sul fornello 40 min", "patate", stove, 40),
        ("it", "aggiungi ripieno in forno 45 min a 190", "ripieno", oven(374.0), 45),
    ];
    let mut wrong = Vec::new();
    for (tag, text, name, (heat, setting_f), minutes) in table {
        let Some(Ok(DishOrder::Add(dish, None))) = read_dish(text, &ground(tag)) else {
            wrong.push(format!("{text}: {:?}", read_dish(text, &ground(tag))));
            continue;
        };
        let f = dish.setting_c.map(|c| in_fahrenheit(celsius(c)).round());
        let read = (dish.name.as_str(), dish.heat.as_deref(), f, dish.minutes);
        if read != (name, heat, setting_f, minutes) {
            wrong.push(format!("{text}: {read:?}"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn what_only_ends_like_that_adds_nothing() {
    for (tag, text) in [
        ("en", "I love rolls too"),
        ("en", "the turkey is in the oven 3 h at 325 too"),
        ("en", "can rolls go in the oven 15 min at 350 too?"),
        ("de", "der Truthahn ist seit 3 h im Ofen bei 160, Gäste kommen dazu"),
        ("de", "ich komme gern dazu"),
        ("es", "yo también"),
        ("it", "vengo anche"),
    ] {
        assert_eq!(read_dish(text, &ground(tag)), None, "{text}");
    }
}
