//! The stuffing: raw it is not kept overnight; "stuffed and in" is both; when it lags behind the meat it is finished by itself.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use carvetime_core::plan::Step;
use chrono_tz::Europe::Paris;
use kitchen::Kitchen;

fn first(tag: &str, text: &str) -> String {
    let answer = ask(text, &Asker::new(tag, Paris, "2027-12-18T18:00:00Z".parse().unwrap()));
    answer.map_or_else(|_| "none".into(), |answer| answer.texts[0].id.to_string())
}

/// A fresh stuffed bird for Thursday evening, and its hour to go on.
fn stuffed(tag: &str) -> Kitchen {
    let (plan, accept) = match tag {
        "es-ES" => (
            "/plan pavo fresco relleno de 5 kg, ya lo tengo, cena el jueves a las 18:00, 8 personas, horno a 180, sin sal",
            "Aceptar",
        ),
        "fr-FR" => (
            "/plan dinde fraîche farcie de 5 kg, je l'ai déjà, repas jeudi à 18h, 8 personnes, four à 180, sans sel",
            "Accepter",
        ),
        "de-DE" => (
            "/plan frische gefüllte Pute 5 kg, haben wir schon, Essen Donnerstag um 18 Uhr, 8 Personen, Ofen auf 180, kein Salz",
            "Annehmen",
        ),
        "it-IT" => (
            "/plan tacchino fresco ripieno 5 kg, ce l'abbiamo, cena giovedì alle 18, 8 persone, forno a 180, senza sale",
            "Accetta",
        ),
        "pt-BR" => (
            "/plan peru fresco recheado de 5 kg, já temos, ceia quinta às 18h, 8 pessoas, forno a 180, sem sal",
            "Aceitar",
        ),
        _ => (
            "/plan 11 lb fresh stuffed turkey, we have it, dinner Thursday 6 pm, 8 people, oven at 350, no salt",
            "Accept",
        ),
    };
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, chrono_tz::America::Chicago, "2027-11-24 10:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.stuffed, Some(true), "{tag}");
    kitchen.run_to("2027-11-25 13:00");
    kitchen
}

fn is_on(kitchen: &Kitchen) -> bool {
    kitchen.scene.room.plan.as_ref().unwrap().on_since(kitchen.now).is_some()
}

#[test]
fn raw_stuffing_waits_for_the_oven_in_two_bowls() {
    for (tag, text) in [
        ("fr-FR", "garder la farce crue au frigo la veille"),
        ("fr-FR", "je prépare la farce la veille ?"),
        ("fr-FR", "la farce crue se garde combien de temps au frigo ?"),
        ("en-US", "can I keep raw stuffing in the fridge overnight?"),
        ("en-US", "can I make the stuffing the night before?"),
        ("de-DE", "rohe Füllung über Nacht im Kühlschrank aufbewahren?"),
        ("de-DE", "darf ich die Füllung am Vortag machen?"),
        ("es-ES", "¿guardo el relleno crudo en la nevera la víspera?"),
        ("it-IT", "posso tenere il ripieno crudo in frigo la sera prima?"),
        ("pt-BR", "posso guardar o recheio cru na geladeira de véspera?"),
    ] {
        assert_eq!(first(tag, text), "ask-stuff-ahead", "{tag}: {text}");
    }
    // Cooked it keeps as it did.
    for (tag, text) in [
        ("fr-FR", "la farce cuite se garde combien de temps au frigo ?"),
        ("en-US", "how long does cooked stuffing keep in the fridge"),
        ("de-DE", "wie lange hält gegarte Füllung im Kühlschrank?"),
    ] {
        assert_eq!(first(tag, text), "ask-keeps", "{tag}: {text}");
    }
}

#[test]
fn a_heart_patient_is_told_no_usual_dose() {
    for (tag, text) in [
        ("fr-FR", "sel pour un chapon pour un cardiaque"),
        ("fr-FR", "combien de sel pour 4 kg, mon père est cardiaque"),
        ("en-US", "how much salt for a 12 lb turkey, dad has a heart condition"),
        ("de-DE", "wie viel Salz für 4 kg Pute, mein Vater ist herzkrank"),
        ("es-ES", "cuánta sal para 4 kg, mi padre es cardíaco"),
        ("it-IT", "quanto sale per 4 kg, mio padre è cardiopatico"),
        ("pt-BR", "quanto sal para 4 kg, meu pai é cardíaco"),
    ] {
        assert_eq!(first(tag, text), "ask-low-salt", "{tag}: {text}");
    }
    assert_ne!(first("fr-FR", "combien de sel pour 4 kg"), "ask-low-salt");
}

#[test]
fn stuffed_and_in_is_in() {
    for (tag, texts) in [
        ("fr-FR", ["farci et enfourné", "farcie et au four", "je lai enfourné"]),
        ("en-US", ["stuffed and in the oven", "stuffed it and it's in", "it's in and stuffed"]),
        ("de-DE", ["gefüllt und im Ofen", "gefüllt und reingeschoben", "im Ofen und gefüllt"]),
        ("es-ES", ["relleno y al horno", "relleno y en el horno", "en el horno y relleno"]),
        ("it-IT", ["farcito e infornato", "farcito e in forno", "infornato e farcito"]),
        ("pt-BR", ["recheado e no forno", "recheada e no forno", "no forno e recheado"]),
    ] {
        for text in texts {
            let mut kitchen = stuffed(tag);
            kitchen.among("Ana", text);
            assert!(is_on(&kitchen), "{tag}: {text}");
        }
    }
    // Planned without, it is stuffed from then on.
    let mut kitchen = stuffed("fr-FR");
    kitchen.scene.room.plan.as_mut().unwrap().wish.stuffed = Some(false);
    kitchen.among("Ana", "farcie et enfournée");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    assert_eq!((plan.wish.stuffed, plan.on_since(kitchen.now).is_some()), (Some(true), true));
}

#[test]
fn behind_the_meat_it_is_finished_by_itself_and_the_bird_goes_by_its_spots() {
    for (tag, texts, out) in [
        (
            "fr-FR",
            ["la farce monte pas, on fait quoi", "on sort la farce et on la finit à la poêle ?"],
            "j'ai sorti la farce, elle finit dans un plat au four",
        ),
        (
            "en-US",
            [
                "the stuffing isn't getting there, what do we do",
                "should we take the stuffing out and finish it in a pan?",
            ],
            "I took the stuffing out, it's in a dish in the oven",
        ),
        (
            "de-DE",
            [
                "die Füllung wird nicht heiß, was tun?",
                "sollen wir die Füllung rausnehmen und in der Pfanne fertig braten?",
            ],
            "hab die Füllung rausgenommen",
        ),
        (
            "es-ES",
            ["el relleno no sube, ¿qué hacemos?", "¿sacamos el relleno y lo terminamos en la sartén?"],
            "he sacado el relleno",
        ),
        (
            "it-IT",
            ["il ripieno non sale, che facciamo?", "tiriamo fuori il ripieno e lo finiamo in padella?"],
            "ho tolto il ripieno",
        ),
        ("pt-BR", ["o recheio não sobe, o que a gente faz?", "terminamos o recheio na frigideira?"], "tirei o recheio"),
    ] {
        let mut kitchen = stuffed(tag);
        let on = match tag {
            "fr-FR" => "enfournée",
            "de-DE" => "die Pute ist im Ofen",
            "es-ES" => "el pavo ya está en el horno",
            "it-IT" => "il tacchino è in forno",
            "pt-BR" => "o peru está no forno",
            _ => "the turkey is in the oven",
        };
        kitchen.among("Ana", on);
        assert!(is_on(&kitchen), "{tag}");
        kitchen.run_to("2027-11-25 16:30");
        for text in texts {
            let (ids, said) = kitchen.ids("Ben", text, false);
            assert_eq!(ids, ["ask-stuffing-slow"], "{tag}: {text}: {said}");
        }
        let (ids, said) = kitchen.ids("Ben", out, false);
        assert_eq!(ids.first().map(String::as_str), Some("room-stuffing-out"), "{tag}: {out}: {said}");
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert_eq!(plan.wish.stuffed, Some(false), "{tag}");
        assert!(plan.job(Step::Pull, 0).is_some());
    }
    // What it read in the bird holds nothing up, and told back it does.
    let mut kitchen = stuffed("fr-FR");
    kitchen.among("Ana", "enfournée");
    kitchen.run_to("2027-11-25 16:30");
    kitchen.among("Ana", "blanc 76, cuisse 81, aile 77, farce 68");
    kitchen.among("Ana", "j'ai sorti la farce");
    kitchen.among("Ana", "sortie du four");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().is_off());
    let mut kitchen = stuffed("fr-FR");
    kitchen.among("Ana", "enfournée");
    kitchen.run_to("2027-11-25 16:30");
    kitchen.among("Ana", "blanc 76, cuisse 81, aile 77, farce 68");
    kitchen.among("Ana", "j'ai sorti la farce");
    kitchen.press("Ana", "Annuler");
    kitchen.among("Ana", "sortie du four");
    assert!(!kitchen.scene.room.plan.as_ref().unwrap().is_off());
}
