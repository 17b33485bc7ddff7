//! What begins a plan and what does not, and what is typed while one is being made, in six languages.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::Wish;
use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

fn room(kind: RoomKind, tag: &str) -> Kitchen {
    Kitchen::new(kind, tag, Chicago, "2027-11-22 09:00")
}

fn draft(kitchen: &Kitchen) -> Option<Wish> {
    kitchen.scene.room.drafts.values().next().map(|draft| draft.wish.clone())
}

#[test]
fn a_bird_that_is_to_be_cooked_begins_a_plan() {
    let said: [&[(&str, &str)]; 6] = [
        &[
            ("i want to make a turkey", "turkey"),
            ("so im doing the turkey this year", "turkey"),
            ("im in charge of the turkey", "turkey"),
            ("we're making a goose", "goose"),
        ],
        &[("quiero hacer un pollo", "chicken"), ("este año hago yo el pavo", "turkey")],
        &[("je veux faire une oie", "goose"), ("je fais la dinde cette année", "turkey")],
        &[("ich will eine gans machen", "goose"), ("ich mach dieses jahr die pute", "turkey")],
        &[("quero fazer um pato", "duck"), ("este ano eu faço o peru", "turkey")],
        &[("voglio fare un'oca", "goose"), ("quest'anno faccio il tacchino", "turkey")],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for (text, kind) in said {
            let mut kitchen = room(RoomKind::Private, tag);
            let heard = kitchen.say("Ana", text);
            let kind = Some((*kind).to_owned());
            assert_eq!(draft(&kitchen).and_then(|wish| wish.kind), kind, "{tag}: {text}: {heard}");
        }
    }
}

#[test]
fn what_only_names_a_feast_or_a_food_begins_none() {
    for (tag, text) in [
        ("en-US", "happy thanksgiving!"),
        ("en-US", "i hate thanksgiving"),
        ("en-US", "need 5 lb of potatoes"),
        ("en-US", "i want to make turkey soup"),
        ("en-US", "im making a turkey sandwich"),
        ("en-US", "im doing the turkey trot"),
        ("en-US", "we're flying to turkey for thanksgiving"),
        ("en-US", "breast 104"),
        ("en-US", "breast 104 thigh 118"),
        ("es-ES", "feliz navidad"),
        ("es-ES", "odio la navidad"),
        ("es-ES", "necesito 2 kg de patatas"),
        ("fr-FR", "joyeux noël !"),
        ("fr-FR", "je déteste noël"),
        ("fr-FR", "il me faut 2 kg de carottes"),
        ("de-DE", "frohe weihnachten"),
        ("de-DE", "ich hasse weihnachten"),
        ("pt-BR", "feliz natal"),
        ("pt-BR", "odeio o natal"),
        ("pt-BR", "preciso de 2 kg de cenouras"),
        ("it-IT", "buon natale"),
        ("it-IT", "odio il natale"),
        ("it-IT", "mi servono 2 kg di patate"),
    ] {
        for kind in [RoomKind::Private, RoomKind::Group] {
            let mut kitchen = room(kind, tag);
            let heard = match kind {
                RoomKind::Private => kitchen.say("Ana", text),
                RoomKind::Group => kitchen.among("Ana", text).to_string(),
            };
            assert!(kitchen.scene.room.drafts.is_empty(), "{tag}: {text}: {heard}");
        }
    }
}

#[test]
fn where_the_bird_is_tells_what_it_is_like() {
    let said = [
        (
            "13 lb turkey in the freezer, dinner next sunday 4 pm, 8 people",
            "13 lb fresh turkey in my fridge, dinner wednesday 4 pm, 8 people",
        ),
        ("pavo de 6 kg en el congelador, 8 personas", "pavo fresco de 6 kg en mi nevera, 8 personas"),
        ("dinde de 6 kg dans mon congélateur, 8 personnes", "dinde fraîche de 6 kg dans mon frigo, 8 personnes"),
        ("pute 6 kg in der gefriertruhe, 8 personen", "frische pute 6 kg im kühlschrank, 8 personen"),
        ("peru de 6 kg no meu freezer, 8 pessoas", "peru fresco de 6 kg na minha geladeira, 8 pessoas"),
        ("tacchino di 6 kg nel freezer, 8 persone", "tacchino fresco di 6 kg nel mio frigo, 8 persone"),
    ];
    for (tag, (frozen, fresh)) in TAGS.into_iter().zip(said) {
        for (text, condition) in [(frozen, "frozen"), (fresh, "fresh")] {
            let mut kitchen = room(RoomKind::Private, tag);
            let heard = kitchen.say("Ana", &format!("/plan {text}"));
            let wish = draft(&kitchen).unwrap();
            assert_eq!(wish.condition.as_deref(), Some(condition), "{tag}: {text}: {heard}");
            assert_eq!(wish.at_home, Some(true), "{tag}: {text}: {heard}");
        }
    }
    let mut kitchen = room(RoomKind::Private, "en-US");
    kitchen.say("Ana", "/plan 13 lb turkey, not in the freezer, dinner thursday 4 pm");
    assert_ne!(draft(&kitchen).unwrap().condition.as_deref(), Some("frozen"));
}

#[test]
fn yes_and_no_answer_whether_it_is_frozen() {
    let said = [
        ("yes", "nope", "yeah it is", "no it isn't"),
        ("sí", "no", "sí lo está", "no lo está"),
        ("oui", "non", "oui elle l'est", "non pas du tout"),
        ("ja", "nein", "ja ist sie", "nein ist sie nicht"),
        ("sim", "não", "está sim", "não está"),
        ("sì", "no", "sì lo è", "no non lo è"),
    ];
    for (tag, (yes, no, it_is, it_isnt)) in TAGS.into_iter().zip(said) {
        for kind in [RoomKind::Private, RoomKind::Group] {
            for (text, condition) in [(yes, "frozen"), (no, "fresh"), (it_is, "frozen"), (it_isnt, "fresh")] {
                let mut kitchen = room(kind, "en-US");
                kitchen.say("Ana", "/plan 13 lb turkey, dinner next sunday 4 pm, 8 people");
                kitchen.scene.room.taste.language = Some(tag.to_owned());
                let heard = match kind {
                    RoomKind::Private => kitchen.say("Ana", text),
                    RoomKind::Group => kitchen.among("Ana", text).to_string(),
                };
                let told = draft(&kitchen).unwrap().condition;
                assert_eq!(told.as_deref(), Some(condition), "{tag}: {text}: {heard}");
            }
        }
    }
    let mut kitchen = room(RoomKind::Group, "en-US");
    kitchen.say("Ana", "/plan 13 lb turkey, dinner next sunday 4 pm, 8 people");
    kitchen.among("Ben", "no");
    kitchen.now += chrono::TimeDelta::minutes(20);
    kitchen.among("Ana", "no");
    assert_eq!(draft(&kitchen).unwrap().condition, None, "said to somebody else by then");
}

#[test]
fn a_why_explains_and_a_when_tells() {
    let said = [
        ("why 10 am?", "when?"),
        ("¿por qué a las 10?", "¿cuándo?"),
        ("pourquoi à 10 h ?", "quand ?"),
        ("warum um 10 uhr?", "wann?"),
        ("por que às 10h?", "quando?"),
        ("perché alle 10?", "quando?"),
    ];
    for (tag, (why, when)) in TAGS.into_iter().zip(said) {
        let mut kitchen = room(RoomKind::Private, "en-US");
        kitchen.say("Ana", "/plan 13 lb frozen turkey, dinner next sunday 4 pm, 8 people, oven at 325");
        kitchen.press("Ana", "Accept");
        kitchen.scene.room.taste.language = Some(tag.to_owned());
        let before = kitchen.scene.room.plan.as_ref().unwrap().wish.dinner;
        let heard = kitchen.say("Ana", why);
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().wish.dinner, before, "{tag}: {why}: {heard}");
        assert!(heard.lines().count() > 5, "{tag}: {why}: {heard}");
        let heard = kitchen.say("Ana", when);
        assert!(!heard.is_empty() && heard.contains(['4', '1']), "{tag}: {when}: {heard}");
    }
    let mut kitchen = room(RoomKind::Group, "en-US");
    kitchen.say("Ana", "/plan 13 lb frozen turkey, dinner next sunday 4 pm, 8 people, oven at 325");
    kitchen.press("Ana", "Accept");
    for text in ["when?", "why 10 am", "how do i thaw my windshield"] {
        assert_eq!(kitchen.among("Ana", text), 0, "{text}");
    }
}

#[test]
fn a_plan_being_made_is_shown_and_its_thaw_told() {
    let mut kitchen = room(RoomKind::Private, "en-US");
    kitchen.say("Ana", "/plan 13 lb frozen turkey, dinner next sunday 4 pm, 8 people, oven at 325");
    for text in ["whats the plan", "when?"] {
        let heard = kitchen.say("Ana", text);
        assert!(heard.contains("[Accept]"), "{text}: {heard}");
    }
    let heard = kitchen.say("Ana", "how do I thaw");
    assert!(heard.contains("in the fridge") && heard.contains("13 lb"), "{heard}");
    kitchen.press("Ana", "Accept");
    let heard = kitchen.say("Ana", "how do i thaw it");
    assert!(heard.contains("in the fridge") && heard.contains("13 lb"), "{heard}");
}

#[test]
fn a_dinner_with_all_but_its_hour_is_planned_and_keeps_what_was_told() {
    for text in [
        "12 lb fresh turkey, oven at 325, 8 people, at my sister's in Denver, 3 h drive",
        "12 lb fresh turkey, oven at 325, 8 people",
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 10:00");
        kitchen.say("Rosa", text);
        let said = kitchen.say("Rosa", "dinner Thursday 5 pm");
        assert!(said.contains("12 lb turkey for 8"), "{text}: {said}");
    }
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 10:00");
    kitchen.say("Rosa", "how long does a 12 lb fresh turkey for 8 people take in the oven at 325");
    assert!(kitchen.scene.room.drafts.is_empty(), "a question plans nothing");
}
