//! Numbers that no thermometer of this bird shows: what it is not at yet, almost is, or has in a recipe and at the restaurant. And questions of a
//! proposal that change nothing in it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Ground, read_log};
use carvetime::room::RoomKind;
use chrono_tz::Europe::Rome;
use kitchen::Kitchen;

fn values(tag: &str, text: &str) -> Vec<f64> {
    let ground = Ground::new(tag, true, Rome, "2027-12-25T10:00:00Z".parse().unwrap());
    read_log(text, &ground).unwrap().map(|log| log.readings.iter().map(|it| it.value).collect()).unwrap_or_default()
}

#[test]
fn what_it_is_not_at_is_not_read() {
    for (tag, text, read) in [
        ("en-GB", "the breast is not at 74 yet", &[] as &[f64]),
        ("en-GB", "breast almost 74", &[]),
        ("en-GB", "breast almost 60", &[60.0]),
        ("en-GB", "breast stays in until 74", &[]),
        ("en-GB", "breast is 60 now, not at 74 yet", &[60.0]),
        ("en-GB", "breast isn't 74 its 64", &[64.0]),
        ("en-GB", "thigh 70 breast 62, almost there", &[70.0, 62.0]),
        ("it-IT", "il petto non è ancora a 74", &[]),
        ("it-IT", "petto quasi 74", &[]),
        ("it-IT", "petto quasi 60", &[60.0]),
        ("it-IT", "petto non 74, 64", &[64.0]),
        ("de-DE", "die Brust ist noch nicht bei 74", &[]),
        ("de-DE", "Brust fast 74", &[]),
        ("fr-FR", "le blanc n'est pas encore à 74", &[]),
        ("fr-FR", "blanc presque 74", &[]),
        ("es-ES", "la pechuga todavía no está a 74", &[]),
        ("es-ES", "pechuga casi 74", &[]),
        ("pt-BR", "o peito ainda não tá em 74", &[]),
        ("pt-BR", "peito quase 74", &[]),
    ] {
        assert_eq!(values(tag, text), read, "{tag}: {text}");
    }
}

#[test]
fn a_recipe_and_a_restaurant_have_no_thermometer_in_this_bird() {
    for (tag, text) in [
        ("en-GB", "the recipe says breast 74 thigh 80 wing 74"),
        ("en-GB", "my husband says yesterday at the restaurant the breast was 75, thigh 78 and wing 76"),
        ("it-IT", "la ricetta dice petto 74 coscia 80 ala 74"),
        ("it-IT", "mio marito dice che ieri al ristorante il petto era a 75, coscia 78 e ala 76"),
        ("de-DE", "laut Rezept Brust 74 Keule 80"),
        ("fr-FR", "la recette dit blanc 74 cuisse 80"),
        ("es-ES", "la receta dice pechuga 74 muslo 80"),
        ("pt-BR", "a receita diz peito 74 coxa 80"),
    ] {
        assert_eq!(values(tag, text), [0.0; 0], "{tag}: {text}");
    }
}

#[test]
fn a_question_of_the_proposal_changes_nothing_in_it() {
    let questions = [
        (
            "en-GB",
            "/plan fresh capon 3.2 kg, dinner on the 25th at 1 pm, 5 people, oven",
            ["doesn't the breast dry out?", "do I take it out of the fridge the night before?"],
        ),
        (
            "it-IT",
            "/plan cappone fresco da 3,2 chili, mangiamo il 25 alle 13, siamo in 5, forno statico",
            ["il petto non si secca?", "lo tiro fuori dal frigo la sera prima?"],
        ),
        (
            "de-DE",
            "/plan frischer Kapaun 3,2 kg, Essen am 25. um 13 Uhr, 5 Personen, Ofen",
            ["wird die Brust nicht trocken?", "soll ich ihn am Abend vorher aus dem Kühlschrank nehmen?"],
        ),
        (
            "fr-FR",
            "/plan chapon frais 3,2 kg, repas le 25 à 13 h, 5 personnes, four",
            ["le blanc ne sèche pas ?", "je le sors du frigo la veille ?"],
        ),
        (
            "es-ES",
            "/plan capón fresco 3,2 kg, comida el 25 a las 13, 5 personas, horno",
            ["¿no se seca la pechuga?", "¿lo saco de la nevera la noche antes?"],
        ),
        (
            "pt-BR",
            "/plan capão fresco 3,2 kg, almoço dia 25 às 13h, 5 pessoas, forno",
            ["o peito não resseca?", "tiro da geladeira um dia antes?"],
        ),
    ];
    for (tag, plan, asked) in questions {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, Rome, "2027-12-22 21:00");
        kitchen.say("Rosa", plan);
        let before: Vec<_> = kitchen.scene.room.drafts.values().map(|draft| draft.wish.clone()).collect();
        assert_eq!(before.len(), 1, "{tag}");
        for text in asked {
            let said = kitchen.say("Rosa", text);
            let after: Vec<_> = kitchen.scene.room.drafts.values().map(|draft| draft.wish.clone()).collect();
            assert_eq!(before, after, "{tag}: {text}: {said}");
        }
        let (ids, said) = kitchen.ids("Rosa", asked[1], true);
        assert!(ids.iter().any(|id| id == "ask-temper"), "{tag}: {said}");
    }
}

#[test]
fn from_one_hour_to_another_is_so_long() {
    use carvetime::ask::{Asker, Question, read_question};
    let now = "2027-12-25T10:50:00Z".parse().unwrap();
    for (tag, text, hours) in [
        ("es-MX", "el pavo se quedo en la mesa desde las 9 hasta la 1 de la mañana sirve?", 4),
        ("en-US", "the turkey sat out from 9 to 1, is it ok?", 4),
        ("en-US", "turkey was on the table from 6 until 7, still good?", 1),
    ] {
        let read = read_question(text, &Asker::new(tag, Rome, now)).ok();
        let span = match read {
            Some(Question::LeftOut { span, .. }) => span,
            _ => None,
        };
        assert_eq!(span, Some(chrono::TimeDelta::hours(hours)), "{tag}: {text}: {read:?}");
    }
}

#[test]
fn an_ovens_knob_is_no_heat_and_350_is_fahrenheit() {
    let pit = |tag: &str, text: &str| {
        let ground = Ground::new(tag, true, Rome, "2027-12-25T10:00:00Z".parse().unwrap());
        let log = read_log(text, &ground).unwrap().unwrap();
        log.readings.iter().map(|it| (it.value, it.scale)).collect::<Vec<_>>()
    };
    assert_eq!(pit("it-IT", "ora il forno sta a 200 sul 6"), [(200.0, None)]);
    assert_eq!(pit("en-GB", "the oven is at 200 on 6"), [(200.0, None)]);
    assert_eq!(pit("es-MX", "horno a 350"), [(350.0, Some(carvetime::reading::Scale::Fahrenheit))]);
    assert_eq!(pit("es-MX", "horno a 180"), [(180.0, None)]);
}

#[test]
fn eaten_in_so_long_is_from_now() {
    use carvetime::reading::{Shift, read_shift};
    let now = "2027-12-25T10:00:00Z".parse().unwrap();
    let dinner = "2027-12-25T12:00:00Z".parse().unwrap();
    for (tag, text, minutes) in [
        ("en-GB", "we eat in an hour and a half", 90),
        ("it-IT", "si mangia tra un'ora e mezza", 90),
        ("it-IT", "si mangia tra quasi due ore", 120),
        ("de-DE", "wir essen in einer Stunde", 60),
        ("fr-FR", "on mange dans une heure", 60),
        ("es-ES", "comemos en una hora", 60),
        ("pt-BR", "a gente come em uma hora", 60),
    ] {
        let shift = read_shift(text, dinner, &Ground::new(tag, true, Rome, now));
        assert_eq!(shift, Some(Shift::To(now + chrono::TimeDelta::minutes(minutes))), "{tag}: {text}");
    }
    // A delay stays one.
    let shift = read_shift("dinner an hour later", dinner, &Ground::new("en-GB", true, Rome, now));
    assert_eq!(shift, Some(Shift::By(chrono::TimeDelta::hours(1))));
}
