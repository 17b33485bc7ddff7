//! How dinner was, in words: noted from the host once it was asked, and from nobody else; asked after a year later.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Lexicon, Verdict, asks_of_last_time, read_verdict};
use carvetime::room::RoomKind;
use carvetime::room::state::CookNote;
use chrono::TimeDelta;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// What was noted as salt, meat, time and minutes late.
type Noted = (Option<&'static str>, Option<&'static str>, Option<&'static str>, Option<i64>);

fn judged(language: &str, text: &str) -> Option<Noted> {
    let of = |it: Verdict| (it.salt, it.meat, it.time, it.late_by.map(|by| by.num_minutes()));
    read_verdict(text, Lexicon::of(language)).map(of)
}

const SALTY: Noted = (Some("much"), None, None, None);
const A_BIT_SALTY: Noted = (Some("much-a-bit"), None, None, None);
const DRY: Noted = (None, Some("dry"), None, None);
const RIGHT: Noted = (Some("right"), Some("right"), Some("right"), None);

#[test]
fn a_dinner_is_judged_in_every_language() {
    let said: [(&str, &str, Noted); 32] = [
        ("en", "a bit too salty", A_BIT_SALTY),
        ("en", "next time less salt", SALTY),
        ("en", "a little salty", A_BIT_SALTY),
        ("en", "a bit more salt next time", (Some("little-a-bit"), None, None, None)),
        ("en", "kinda dry tbh", DRY),
        ("en", "honestly a little dry", DRY),
        ("en", "wasn't dry, but needed more salt", (Some("little"), Some("right"), None, None)),
        ("en", "too salty, and we ate 20 min late", (Some("much"), None, Some("late"), Some(20))),
        ("en", "we ate half an hour late", (None, None, Some("late"), Some(30))),
        ("en", "it was perfect!!", RIGHT),
        ("en", "juicy, well seasoned, right on time", RIGHT),
        ("de", "etwas zu salzig", A_BIT_SALTY),
        ("de", "die Brust war ein bisschen trocken", DRY),
        ("de", "war nicht trocken, aber 20 Minuten zu spät", (None, Some("right"), Some("late"), Some(20))),
        ("de", "alles perfekt", RIGHT),
        ("es", "quedó un poco salado", A_BIT_SALTY),
        ("es", "la pechuga quedó seca", DRY),
        ("es", "cenamos 20 minutos tarde", (None, None, Some("late"), Some(20))),
        ("es", "todo perfecto", RIGHT),
        ("fr", "c'était un peu trop salé", A_BIT_SALTY),
        ("fr", "la viande était un peu sèche", DRY),
        ("fr", "on a mangé avec 20 min de retard", (None, None, Some("late"), Some(20))),
        ("fr", "tout était parfait", RIGHT),
        ("it", "un po' troppo salato", A_BIT_SALTY),
        ("it", "il petto era un po' asciutto", DRY),
        ("it", "abbiamo mangiato con 20 minuti di ritardo", (None, None, Some("late"), Some(20))),
        ("it", "tutto perfetto", RIGHT),
        ("pt", "ficou um pouco salgado", A_BIT_SALTY),
        ("pt", "o peito ficou um pouco seco", DRY),
        ("pt", "jantamos com 20 minutos de atraso", (None, None, Some("late"), Some(20))),
        ("pt", "tudo perfeito", RIGHT),
        ("pt", "não ficou seco, faltou sal", (Some("little"), Some("right"), None, None)),
    ];
    for (language, text, noted) in said {
        assert_eq!(judged(language, text), Some(noted), "{language}: {text}");
    }
}

#[test]
fn other_things_are_not_judged_as_the_bird() {
    for text in [
        "the gravy was too salty",
        "mashed potatoes were dry",
        "sorry i'm late",
        "is it too salty?",
        "my mouth is so dry",
        "the dog ate it",
        "it's raw outside",
        "thanks everyone",
        "ham was perfect",
    ] {
        assert_eq!(judged("en", text), None, "{text}");
    }
    for (language, text) in [
        ("de", "die Soße war zu salzig"),
        ("de", "bin zu spät"),
        ("es", "la salsa quedó salada"),
        ("es", "llego tarde"),
        ("fr", "la sauce était trop salée"),
        ("fr", "je suis en retard"),
        ("it", "il sugo era troppo salato"),
        ("it", "sono in ritardo"),
        ("pt", "o molho ficou salgado"),
        ("pt", "estou atrasado"),
    ] {
        assert_eq!(judged(language, text), None, "{language}: {text}");
    }
}

fn eaten() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-25 10:00");
    kitchen.say("Dana", "/plan 14 lb fresh turkey, we have it, no salt, dinner Thursday 4 pm, 9 people, oven at 325");
    kitchen.press("Dana", "Accept");
    kitchen.say("Mike", "/board");
    kitchen.run_to("2027-11-25 10:30");
    kitchen.say("Dana", "it's in");
    kitchen.run_to("2027-11-25 14:30");
    kitchen.say("Dana", "breast 166, thigh 178");
    kitchen.say("Dana", "it's off");
    kitchen.run_to("2027-11-25 16:10");
    kitchen.say("Dana", "carved");
    kitchen.say("Dana", "in the fridge");
    kitchen
}

fn notes(kitchen: &Kitchen) -> Option<CookNote> {
    let host = kitchen.scene.room.plan.as_ref().unwrap().host;
    kitchen.scene.people.get(&host).unwrap().notes.last().cloned()
}

#[test]
fn the_host_may_say_it_instead_of_tapping() {
    let mut kitchen = eaten();
    kitchen.among("Dana", "a bit too salty");
    assert_eq!(notes(&kitchen), None, "nobody was asked yet");
    kitchen.run_to("2027-11-26 11:30");
    assert_eq!(kitchen.among("Mike", "it was dry"), 0);
    assert_eq!(notes(&kitchen), None, "the notes are the host's");
    kitchen.among("Dana", "a bit too salty, and we ate 20 min late");
    let note = notes(&kitchen).unwrap();
    assert_eq!((note.salt.as_deref(), note.meat.as_deref()), (Some("much-a-bit"), None));
    assert_eq!((note.time.as_deref(), note.late_min), (Some("late"), Some(20)));
    assert_eq!(kitchen.among("Dana", "the gravy was too salty tho"), 0);
    kitchen.press("Dana", "Just right");
    let note = notes(&kitchen).unwrap();
    assert_eq!((note.meat.as_deref(), note.late_min), (Some("right"), Some(20)), "a tap leaves the rest");
}

#[test]
fn last_years_notes_are_told_when_asked_for() {
    let mut kitchen = eaten();
    assert_eq!(kitchen.among("Mike", "how was it last year?"), 0, "nothing is known, and nobody asked the bot");
    assert!(kitchen.say("Dana", "how was it last year?").contains("No notes"));
    kitchen.run_to("2027-11-26 11:30");
    kitchen.among("Dana", "too salty");
    kitchen.now += TimeDelta::days(360);
    assert!(kitchen.say("Dana", "how was it last year?").contains("too salty"));
    for (language, text) in [
        ("en", "what did we do last year"),
        ("de", "wie war es letztes Jahr?"),
        ("es", "¿cómo salió el año pasado?"),
        ("fr", "c'était comment l'année dernière ?"),
        ("it", "com'è andata l'anno scorso?"),
        ("pt", "como foi no ano passado?"),
    ] {
        assert!(asks_of_last_time(text, Lexicon::of(language)), "{language}: {text}");
    }
}

#[test]
fn how_it_was_is_told_to_whoever_plans_the_group_s_next_dinner() {
    let mut kitchen = eaten();
    kitchen.run_to("2027-11-26 12:00");
    kitchen.say("Dana", "a little salty, 20 min late");
    kitchen.run_to("2027-12-02 12:00");
    kitchen.run_to("2028-11-20 10:00");
    let plan = "/plan 14 lb fresh turkey, dinner Thursday 5 pm, 10 people, oven at 325";
    let said = kitchen.say("Mike", plan);
    assert!(said.contains("Last time: a little salty and 20 min late."), "{said}");
    // What Dana takes out of the chat is told to nobody.
    let dana = carvetime::room::PersonId(1);
    kitchen.scene.room.forget_person(dana);
    let said = kitchen.say("Mike", plan);
    assert!(!said.contains("Last time"), "{said}");
}
