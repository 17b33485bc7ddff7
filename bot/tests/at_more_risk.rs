//! Whom it may hurt more is told with the temperature they ask about; and carried hot, asked whether it is safe.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::ask::{Asker, ask};
use carvetime::reading::{Ground, read_wish};
use chrono_tz::Europe::Berlin;

fn ids(tag: &str, text: &str) -> Vec<String> {
    let now = "2027-12-18T18:00:00Z".parse().unwrap();
    let answer = ask(text, &Asker::new(tag, Berlin, now)).unwrap_or_else(|_| panic!("{tag}: {text}"));
    answer.texts.iter().map(|text| text.id.to_string()).collect()
}

#[test]
fn older_people_are_named_with_the_temperature_throughout() {
    for (tag, text) in [
        ("de-DE", "oma ist 84, reichen da 74 grad?"),
        ("de-DE", "reichen 74 grad für schwangere"),
        ("en-GB", "grandma is 84, is 74 degrees enough?"),
        ("es-ES", "la abuela tiene 84, ¿bastan 74 grados?"),
        ("fr-FR", "mamie a 84 ans, 74 degrés ça suffit ?"),
        ("it-IT", "la nonna ha 84 anni, bastano 74 gradi?"),
        ("pt-BR", "a vovó tem 84 anos, 74 graus basta?"),
    ] {
        assert!(ids(tag, text).contains(&"ask-fragile".to_owned()), "{tag}: {text}: {:?}", ids(tag, text));
    }
    let plain = ids("de-DE", "reichen 74 grad?");
    assert!(!plain.contains(&"ask-fragile".to_owned()), "{plain:?}");
}

#[test]
fn whether_carrying_it_hot_is_safe_is_answered_and_no_plan_reads_otherwise() {
    for (tag, text) in [
        ("de-DE", "ist das sicher mit dem heiss mitnehmen?"),
        ("de-DE", "mit dem heiss mitnehmen sicher?"),
        ("en-GB", "is it safe to bring it hot?"),
        ("es-ES", "¿es seguro llevarlo caliente?"),
        ("it-IT", "è sicuro portarlo caldo?"),
        ("pt-BR", "é seguro levar quente?"),
    ] {
        assert!(ids(tag, text).contains(&"ask-carry-food".to_owned()), "{tag}: {text}: {:?}", ids(tag, text));
    }
    let now = "2027-12-18T18:00:00Z".parse().unwrap();
    let ground = Ground::new("de-DE", true, Berlin, now);
    let (wish, _) =
        read_wish("pute 5,5 kg tk, essen am 25. um 18 uhr bei oma, 10 leute, heiss mitnehmen, 15 min fahrt", &ground);
    assert_eq!((wish.hot, wish.elsewhere, wish.drive_min), (Some(true), Some(true), Some(15)));
}
