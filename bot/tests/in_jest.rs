//! Scores, frost, who likes a bird and frying that nobody does: no reading, no hour, no fire drill, no plan and no caution.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Lexicon, read_peril, tells_a_score, tells_of_frost};
use carvetime::room::{RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::{Kitchen, over_heat};

const SCORES: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        ["score 21 to 17", "flames won 4-2", "at half time it's 14 to 10", "we're up 24-17", "cowboys 21 eagles 17"],
    ),
    (
        "es-ES",
        ["el marcador va 21 a 17", "ganaron 4-2", "van ganando 2 a 1", "al descanso 14 a 10", "los Flames ganaron 4-2"],
    ),
    (
        "fr-FR",
        [
            "le score est de 21 à 17",
            "ils ont gagné 4-2",
            "on mène 2 à 1",
            "14 à 10 à la mi-temps",
            "les Flames ont gagné 4-2",
        ],
    ),
    (
        "de-DE",
        [
            "es steht 21 zu 17",
            "die Flames haben 4:2 gewonnen",
            "wir führen 2:1",
            "zur Halbzeit 14 zu 10",
            "haben 4-2 gewonnen",
        ],
    ),
    (
        "pt-BR",
        [
            "o placar tá 21 a 17",
            "o jogo tá 2 a 1",
            "ganharam de 4 x 2",
            "no intervalo 14 a 10",
            "os Flames ganharam 4-2",
        ],
    ),
    (
        "it-IT",
        [
            "il punteggio è 21 a 17",
            "hanno vinto 4 a 2",
            "stanno vincendo 2-1",
            "all'intervallo 14 a 10",
            "i Flames hanno vinto 4-2",
        ],
    ),
];

const FROST: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        [
            "its frozen outside",
            "everything is frozen outside",
            "the roads are frozen",
            "It's freezing outside",
            "the ground is frozen",
        ],
    ),
    (
        "es-ES",
        [
            "está helado afuera",
            "fuera está todo congelado",
            "la carretera congelada",
            "Está congelado afuera",
            "está helado fuera",
        ],
    ),
    ("fr-FR", ["c'est gelé dehors", "tout est gelé dehors", "route gelée", "dehors tout est gelé", "le lac gelé"]),
    (
        "de-DE",
        [
            "draußen ist alles gefroren",
            "draussen gefroren",
            "die Straße ist gefroren",
            "Der See ist gefroren",
            "alles gefroren draußen",
        ],
    ),
    (
        "pt-BR",
        [
            "tá gelado lá fora",
            "tudo congelado lá fora",
            "lá fora tá congelado",
            "estrada congelada",
            "O lago congelado",
        ],
    ),
    (
        "it-IT",
        [
            "fuori è tutto ghiacciato",
            "è gelato fuori",
            "strada ghiacciata",
            "fuori e tutto congelato",
            "Il lago ghiacciato",
        ],
    ),
];

const LIKED: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        ["i like turkey", "i love turkey", "everyone likes turkey", "I hate turkey tbh", "turkey is my favorite"],
    ),
    (
        "es-ES",
        ["me gusta el pavo", "me encanta el pavo", "a todos les gusta el pavo", "Odio el pavo", "nos gusta el pavo"],
    ),
    (
        "fr-FR",
        [
            "j'aime la dinde",
            "on adore la dinde",
            "j'adore la dinde",
            "tout le monde aime la dinde",
            "Je déteste la dinde",
        ],
    ),
    ("de-DE", ["ich mag Pute", "wir lieben pute", "ich esse gern Pute", "Ich hasse Pute", "alle mögen Pute"]),
    ("pt-BR", ["eu gosto de peru", "adoro peru", "a gente adora peru", "todo mundo gosta de peru", "Odeio peru"]),
    (
        "it-IT",
        [
            "mi piace il tacchino",
            "adoro il tacchino",
            "ci piace il tacchino",
            "piace a tutti il tacchino",
            "Odio il tacchino",
        ],
    ),
];

const FRIED: [(&str, [&str; 5]); 6] = [
    (
        "en-US",
        [
            "still shouldve fried it lol",
            "should have fried it",
            "We should have deep fried it haha",
            "next year were frying it",
            "fried onions on top",
        ],
    ),
    (
        "es-ES",
        [
            "deberíamos haberlo frito jaja",
            "tendríamos que haberlo frito",
            "debimos freírlo",
            "el año que viene lo freímos",
            "hay patatas fritas",
        ],
    ),
    (
        "fr-FR",
        [
            "on aurait dû la frire lol",
            "fallait la frire",
            "On aurait dû la faire frire",
            "l'an prochain on la fait frire",
            "des oignons frits",
        ],
    ),
    (
        "de-DE",
        [
            "hätten wir frittieren sollen haha",
            "wir hätten sie frittieren sollen",
            "nächstes jahr frittieren wir",
            "besser frittiert",
            "frittierte Zwiebeln",
        ],
    ),
    (
        "pt-BR",
        [
            "devia ter fritado kkk",
            "era pra ter fritado",
            "ano que vem vou fritar",
            "tem batata frita",
            "Devíamos ter fritado",
        ],
    ),
    (
        "it-IT",
        [
            "dovevamo friggerlo lol",
            "avremmo dovuto friggerlo",
            "era meglio friggerlo",
            "l'anno prossimo lo friggo",
            "ci sono le patate fritte",
        ],
    ),
];

const FRIES: [(&str, [&str; 3]); 6] = [
    ("en-US", ["can i fry a turkey", "im frying a turkey this year", "lets deep fry it"]),
    ("es-ES", ["quiero freír el pavo", "¿puedo freír el pavo?", "voy a freírlo"]),
    ("fr-FR", ["on fait frire la dinde", "je peux frire la dinde ?", "je veux faire frire la dinde"]),
    ("de-DE", ["ich frittiere die pute", "kann ich die Pute frittieren?", "wir wollen sie frittieren"]),
    ("pt-BR", ["vou fritar o peru", "posso fritar o peru?", "quero fritar"]),
    ("it-IT", ["friggo il tacchino", "posso friggere il tacchino?", "voglio friggerlo"]),
];

fn ids(kitchen: &mut Kitchen, text: &str, addressed: bool) -> Vec<String> {
    let from = kitchen.said.len();
    let what = What::Said { text: text.into(), addressed, reply_to: None, edited: false };
    kitchen.hear(Some("Ana"), what);
    kitchen.said[from..].iter().flat_map(|say| say.text.iter().map(|text| text.id.to_string())).collect()
}

/// Before a plan, with one being made, and with the bird on the heat and a look due.
fn rooms(kind: RoomKind, tag: &str) -> [Kitchen; 3] {
    let none = Kitchen::new(kind, tag, Chicago, "2027-11-24 10:00");
    let mut draft = Kitchen::new(kind, tag, Chicago, "2027-11-24 10:00");
    draft.say("Ana", "/plan");
    let mut heat = over_heat(kind, tag);
    heat.run_to("2027-11-25 16:20");
    [none, draft, heat]
}

/// To the bot a line of help, among people nothing; and nothing in the room is another.
fn passes_by(tag: &str, texts: &[&str]) {
    for (kind, addressed) in [(RoomKind::Private, true), (RoomKind::Group, false)] {
        for mut kitchen in rooms(kind, tag) {
            let before = kitchen.scene.room.clone();
            for text in texts {
                let ids = ids(&mut kitchen, text, addressed);
                let wanted: &[&str] = if addressed { &["room-unread"] } else { &[] };
                assert_eq!(ids, wanted, "{tag} {kind:?} {text}");
            }
            let wish = |room: &carvetime::room::state::Room| {
                let drafts: Vec<_> = room.drafts.values().map(|draft| draft.wish.clone()).collect();
                let plan = room.plan.as_ref();
                (
                    drafts,
                    plan.map(|plan| {
                        (plan.wish.clone(), plan.readings.clone(), plan.doubted.clone(), plan.facts.clone())
                    }),
                )
            };
            assert!(wish(&kitchen.scene.room) == wish(&before), "{tag} {kind:?}");
        }
    }
}

#[test]
fn a_score_is_no_reading_no_hour_and_no_fire() {
    for (tag, texts) in SCORES {
        passes_by(tag, &texts);
    }
}

#[test]
fn frost_outside_is_no_bird_and_no_garage() {
    for (tag, texts) in FROST {
        passes_by(tag, &texts);
    }
}

#[test]
fn who_likes_turkey_plans_none() {
    for (tag, texts) in LIKED {
        passes_by(tag, &texts);
    }
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-24 10:00");
    kitchen.say("Ana", "i'd like a 12 lb turkey for thursday");
    assert_eq!(kitchen.scene.room.drafts.len(), 1, "a wish is one still");
}

#[test]
fn the_cautions_are_for_who_fries() {
    for (tag, texts) in FRIED {
        for mut kitchen in rooms(RoomKind::Private, tag).into_iter().chain(rooms(RoomKind::Group, tag)) {
            let addressed = kitchen.scene.room.kind == RoomKind::Private;
            for text in texts {
                let ids = ids(&mut kitchen, text, addressed);
                let fry = |id: &String| id.starts_with("ask-fry") || id == "reading-fryer";
                assert!(!ids.iter().any(fry), "{tag} {addressed} {text}: {ids:?}");
            }
        }
    }
    for (tag, texts) in FRIES {
        for text in texts {
            let mut kitchen = Kitchen::new(RoomKind::Group, tag, Chicago, "2027-11-24 10:00");
            let ids = ids(&mut kitchen, text, false);
            assert_eq!(ids.first().map(String::as_str), Some("ask-fry"), "{tag} {text}: {ids:?}");
        }
    }
}

#[test]
fn readings_hours_counts_fires_and_a_bird_that_is_frozen_still_are_heard() {
    let english = Lexicon::of("en-US");
    for text in [
        "breast 150, thigh 160",
        "we're up to 15 people",
        "dinner moved from 5 to 6",
        "5-6 people are coming",
        "oven went from 325 to 310",
        "158-162 on the thermometer",
    ] {
        assert!(!tells_a_score(text, english), "{text}");
    }
    for text in [
        "there are flames in the oven",
        "flames!",
        "the flames won't go out",
        "the oven is on fire",
        "flames are coming out of the fryer",
    ] {
        assert!(read_peril(text, english).is_some(), "{text}");
    }
    for text in [
        "the turkey is frozen outside and raw inside",
        "still frozen outside",
        "it's still frozen",
        "bird is frozen outside",
    ] {
        assert!(!tells_of_frost(text, english), "{text}");
    }
}
