//! A danger is heard in whatever language it is said, in a private room and among people, and answered in that language; what only sounds
//! like one is not.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, read_question};
use carvetime::room::{RoomKind, What};
use carvetime::words::Reader;
use chrono::Utc;
use chrono_tz::Tz;
use kitchen::{Kitchen, over_heat};

/// What is said, and what the answer to it holds.
const TOLD: [(&str, &str, &str); 48] = [
    ("en", "FIRE", "No water"),
    ("en", "fire!!", "No water"),
    ("en", "omg FIRE help", "No water"),
    ("en", "the oven is on fire", "No water"),
    ("en", "the curtains are on fire", "No water"),
    ("en", "he passed out", "onto their side"),
    ("en", "grandma passed out", "onto their side"),
    ("en", "Dad fainted in the kitchen", "onto their side"),
    ("en", "my tongue is swelling up after the pie", "allergic reaction"),
    ("en", "her lips are swollen and she can't talk", "allergic reaction"),
    ("en", "i burned my hand", "Cool running water"),
    ("en", "someone's choking", "5 blows"),
    ("de", "es brennt!", "Kein Wasser"),
    ("de", "Hilfe, es brennt", "Kein Wasser"),
    ("de", "Fett brennt", "Kein Wasser"),
    ("de", "ich hab mich verbrannt", "Kein Eis"),
    ("de", "Oma ist umgekippt", "auf die Seite"),
    ("de", "Opa ist ohnmächtig", "auf die Seite"),
    ("de", "meine Zunge schwillt an", "allergische Reaktion"),
    ("de", "der CO-Melder piept", "frische Luft"),
    ("es", "fuego", "Nada de agua"),
    ("es", "¡fuego!", "Nada de agua"),
    ("es", "se ha prendido la grasa", "Nada de agua"),
    ("es", "me quemé la mano", "Ni hielo"),
    ("es", "la abuela se desmayó", "de lado"),
    ("es", "se le hinchan los labios", "reacción alérgica"),
    ("es", "se está atragantando", "5 golpes"),
    ("fr", "au feu !", "Pas d’eau"),
    ("fr", "il y a le feu", "Pas d’eau"),
    ("fr", "la graisse a pris feu", "Pas d’eau"),
    ("fr", "mamie s’est évanouie", "sur le côté"),
    ("fr", "sa langue gonfle", "réaction allergique"),
    ("fr", "je me suis brûlé la main", "Ni glace"),
    ("fr", "elle s’étouffe", "5 claques"),
    ("it", "al fuoco!", "Niente acqua"),
    ("it", "il forno ha preso fuoco", "Niente acqua"),
    ("it", "la nonna è svenuta", "sul fianco"),
    ("it", "mi si gonfiano le labbra", "reazione allergica"),
    ("it", "mi sono bruciato la mano", "Niente ghiaccio"),
    ("it", "sta soffocando", "5 colpi"),
    ("pt", "fogo!", "Nada de água"),
    ("pt", "o óleo pegou fogo", "Nada de água"),
    ("pt", "a vó desmaiou", "de lado"),
    ("pt", "tô com a língua inchando", "reação alérgica"),
    ("pt", "queimei a mão", "Nem gelo"),
    ("pt", "ele tá engasgado", "5 pancadas"),
    ("pt", "cozinha cheia de fumaça", "Desligue"),
    ("es", "la cocina está llena de humo", "Apaga"),
];

/// Said among people, each in any of the languages.
const NONE: [&str; 60] = [
    "fire",
    "this is fire",
    "that mac and cheese is fire",
    "that bird is fuego",
    "mahomes is on fire",
    "he's on fire tonight",
    "the chiefs are on fire",
    "the offense is on fire",
    "this chat is on fire",
    "tom is choking on his laughter",
    "they're choking in the fourth quarter",
    "choking up at that toast",
    "grapes are a choking hazard",
    "passed out on the couch",
    "grandpa's passed out in the recliner",
    "i passed out the plates",
    "kids are passed out",
    "everyone passed out after dinner",
    "almost fainted when i saw the bill",
    "the souffle collapsed",
    "my eyes are puffy from crying",
    "my lips are tingling from the hot sauce",
    "is anyone allergic to nuts",
    "she has an epipen in her bag",
    "last year grandma passed out",
    "my uncle fainted last week",
    "knife slipped off the counter",
    "that song is a deep cut",
    "dad is smoking outside",
    "light the candles",
    "fireplace is cozy",
    "Feuer frei",
    "ich brenne für diese Band",
    "Opa ist auf dem Sofa umgekippt",
    "er ist fast umgekippt vor Lachen",
    "das Soufflé ist zusammengebrochen",
    "meine Augen sind geschwollen vom Zwiebeln schneiden",
    "¿me llamas luego?",
    "esto está que arde",
    "mi equipo está en llamas",
    "casi me desmayo con el precio",
    "se me quemó el arroz",
    "el arroz se ha quemado",
    "se ahoga de risa",
    "me arden los ojos con la cebolla",
    "mbappé est en feu",
    "il s’étouffe de rire",
    "j’ai failli m’évanouir",
    "le feu est allumé",
    "le rôti s'est brûlé",
    "il arrosto si è bruciato",
    "la squadra è in fiamme",
    "quasi svenuto dal ridere",
    "il fuoco è acceso",
    "como te chamas?",
    "ele tá pegando fogo hoje",
    "quase desmaiei de rir",
    "queimei o arroz",
    "jogo pegou demais",
    "meu time tá em chamas",
];

fn aside(kitchen: &mut Kitchen, text: &str) -> String {
    kitchen.hear(Some("Tom"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

#[test]
fn a_danger_is_answered_in_the_language_it_was_said_in_whatever_the_rooms() {
    let mut missed = Vec::new();
    for room in ["en-US", "de-DE", "es-ES", "fr-FR", "it-IT", "pt-BR"] {
        let mut group = over_heat(RoomKind::Group, room);
        let mut alone = over_heat(RoomKind::Private, room);
        for (tongue, text, holds) in TOLD {
            for said in [aside(&mut group, text), alone.say("Ana", text)] {
                if !said.contains(holds) {
                    missed.push(format!("{tongue} in {room}: {text}: {said}"));
                }
            }
        }
    }
    assert!(missed.is_empty(), "{}", missed.join("\n"));
}

#[test]
fn what_only_sounds_like_a_danger_is_none_in_any_room() {
    let mut heard = Vec::new();
    let drill = ["911", "Press till", "Presiona", "Drücken"];
    for room in ["en-US", "de-DE", "es-ES", "fr-FR", "it-IT", "pt-BR"] {
        let mut group = over_heat(RoomKind::Group, room);
        for text in NONE {
            let said = aside(&mut group, text);
            if drill.iter().any(|drill| said.contains(drill)) {
                heard.push(format!("{room}: {text}: {said}"));
            }
        }
    }
    assert!(heard.is_empty(), "{}", heard.join("\n"));
}

#[test]
fn smoke_is_a_danger_in_an_oven_and_what_a_smoker_is_for() {
    for (room, text, holds) in [
        ("en-US", "its smoking", "windows open"),
        ("en-US", "is it supposed to be smoking?", "windows open"),
        ("de-DE", "es raucht", "Fenster auf"),
        ("es-ES", "está echando humo", "ventanas abiertas"),
        ("fr-FR", "ça fume beaucoup", "fenêtres ouvertes"),
        ("it-IT", "esce fumo", "finestre aperte"),
        ("pt-BR", "tá saindo muita fumaça", "janelas abertas"),
    ] {
        for kind in [RoomKind::Group, RoomKind::Private] {
            let said = over_heat(kind, room).say("Ana", text);
            assert!(said.contains(holds), "{room}: {text}: {said}");
        }
        assert!(aside(&mut over_heat(RoomKind::Group, room), text).contains(holds), "{room}: {text}");
    }
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", chrono_tz::America::Chicago, "2027-11-24 10:00");
    assert_eq!(kitchen.among("Tom", "its smoking"), 0, "nothing cooks here");
    kitchen.say("Ana", "/plan 12 lb fresh turkey, we have it, no salt, dinner Thursday 5 pm, 10 people, smoker at 275");
    kitchen.press("Ana", "Accept");
    kitchen.run_to("2027-11-25 12:00");
    let said = aside(&mut kitchen, "its smoking");
    assert!(!said.contains("windows open"), "{said}");
}

#[test]
fn a_smoker_that_is_to_be_lit_burns_as_it_should() {
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", chrono_tz::Europe::Berlin, "2027-11-24 10:00");
    kitchen.say(
        "Ana",
        "/plan frische Pute 5 kg, haben wir schon, Essen Donnerstag um 18 Uhr, 8 Personen, Smoker auf 135, kein Salz",
    );
    kitchen.press("Ana", "Annehmen");
    kitchen.run_to("2027-11-25 09:00");
    assert!(!aside(&mut kitchen, "es brennt").contains("Kein Wasser"));
    assert!(aside(&mut kitchen, "es brennt!!").contains("Kein Wasser"), "cried out it is a fire");
}

#[test]
fn a_deep_cut_is_heard_in_every_language() {
    let kind = |tag: &str, text: &str| {
        let reader = Reader::new(tag, Tz::UTC, Utc::now());
        read_question(text, &Asker::of_reader(&reader)).map_or("-", |question| question.kind())
    };
    for (tag, text) in [
        ("en-US", "knife slipped"),
        ("en-US", "knife slipped, deep cut"),
        ("en-US", "it won't stop bleeding"),
        ("de-DE", "mit dem Messer abgerutscht"),
        ("es-ES", "se me fue el cuchillo"),
        ("fr-FR", "le couteau a glissé"),
        ("it-IT", "mi è scivolato il coltello"),
        ("pt-BR", "a faca escorregou"),
    ] {
        assert_eq!(kind(tag, text), "cut", "{tag}: {text}");
    }
    for (tag, text) in [
        ("en-US", "knife slipped off the counter"),
        ("en-US", "that song is a deep cut"),
        ("de-DE", "das Messer ist scharf"),
        ("es-ES", "el cuchillo no corta"),
        ("fr-FR", "le couteau est dans le tiroir"),
    ] {
        assert_eq!(kind(tag, text), "-", "{tag}: {text}");
    }
}
