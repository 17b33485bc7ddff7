//! What small children, and those at more risk, may have; and a child that swallowed something hard, whoever says so.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, Question, ask, read_question};
use carvetime::room::RoomKind;
use chrono_tz::Europe::Paris;
use kitchen::over_heat;

fn asker(tag: &str) -> Asker {
    Asker::new(tag, Paris, "2027-12-18T18:00:00Z".parse().unwrap())
}

fn ids(tag: &str, text: &str) -> Vec<String> {
    let answer = ask(text, &asker(tag)).unwrap_or_else(|_| panic!("{tag}: {text}"));
    answer.texts.iter().map(|text| text.id.to_string()).collect()
}

fn check(id: &str, asked: &[(&str, &[&str])]) {
    for (tag, texts) in asked {
        for text in *texts {
            assert_eq!(ids(tag, text).first().map(String::as_str), Some(id), "{tag}: {text}");
        }
    }
}

#[test]
fn a_small_child_has_well_cooked_scraps_without_salt() {
    check(
        "ask-diner-little",
        &[
            ("fr-FR", &["je peux donner du chapon a gabin, 14 mois ?", "le bebe peut manger la farce ?"]),
            ("fr-FR", &["et le bebe de 14 mois, la farce c'est non ?", "gabin 14 mois il a le droit a quoi ?"]),
            ("en-US", &["can I give the baby some turkey?", "is turkey ok for a 14 month old?"]),
            ("de-DE", &["darf das Baby Pute essen?", "mein Sohn, 14 Monate, darf er Ente essen?"]),
            ("es-ES", &["¿puedo dar pavo al bebé?", "mi hija de 2 años puede comer pavo?"]),
            ("it-IT", &["posso dare il tacchino al bebè?", "mio figlio di 14 mesi può mangiare il cappone?"]),
            ("pt-BR", &["posso dar peru para o bebê?", "meu filho de 2 anos pode comer peru?"]),
        ],
    );
}

#[test]
fn what_is_raw_or_eaten_cold_is_left() {
    check(
        "ask-diner-leaves",
        &[
            (
                "fr-FR",
                &["foie gras et enceinte ?", "elle peut manger du foie gras enceinte ?", "mayonnaise maison enceinte"],
            ),
            ("en-US", &["can my pregnant sister eat the smoked salmon?", "raw milk cheese and pregnant?"]),
            ("de-DE", &["Schwangere und Räucherlachs?", "darf meine schwangere Cousine Gänseleber essen?"]),
            ("es-ES", &["¿puede comer foie una embarazada?", "¿embarazada y salmón ahumado?"]),
            ("it-IT", &["una donna incinta può mangiare il salmone affumicato?"]),
            ("pt-BR", &["grávida pode comer salmão defumado?"]),
        ],
    );
    // And the bird is theirs, at 165 °F everywhere it is measured.
    check(
        "ask-fragile",
        &[
            ("fr-FR", &["ma cousine enceinte peut manger du chapon ?", "mamie peut manger la farce ?"]),
            ("en-US", &["can pregnant women eat turkey?"]),
            ("de-DE", &["darf Oma die Füllung essen?"]),
            ("es-ES", &["¿la abuela puede comer el relleno?"]),
            ("it-IT", &["una donna incinta può mangiare il tacchino?"]),
            ("pt-BR", &["grávida pode comer peru?"]),
        ],
    );
    let both = ids("fr-FR", "ma cousine est enceinte, qu'est ce qu'elle peut manger");
    assert_eq!(both, ["ask-fragile", "ask-diner-leaves"]);
}

#[test]
fn nuts_and_grapes_are_no_small_childs_and_one_swallowed_comes_before_all_else() {
    check(
        "ask-diner-chokes",
        &[
            ("fr-FR", &["les marrons il peut s'etouffer non ?", "le bébé peut manger des marrons ?"]),
            ("en-US", &["can the kids have chestnuts?"]),
            ("de-DE", &["dürfen die Kinder Maronen essen?"]),
            ("es-ES", &["¿los niños pueden comer castañas?"]),
            ("it-IT", &["i bambini possono mangiare le castagne?"]),
            ("pt-BR", &["as crianças podem comer castanhas?"]),
        ],
    );
    for (tag, text, number) in [
        ("fr-FR", "le bebe a mangé un marron entier", "911"),
        ("en-US", "the baby swallowed a whole grape", "911"),
        ("de-DE", "das Baby hat eine ganze Marone verschluckt", "911"),
        ("es-ES", "el bebé se ha tragado una castaña entera", "911"),
        ("it-IT", "il bimbo ha ingoiato una castagna intera", "911"),
        ("pt-BR", "o bebê engoliu uma castanha inteira", "911"),
    ] {
        // Said to each other; the kitchen is in Chicago.
        let mut kitchen = over_heat(RoomKind::Group, tag);
        let (ids, said) = kitchen.ids("Ben", text, false);
        assert_eq!(ids, ["ask-diner-swallowed", "ask-choking"], "{tag}: {said}");
        assert!(said.contains(number), "{tag}: {said}");
    }
}

#[test]
fn in_a_group_it_is_answered_where_it_is_asked_and_a_dinner_is_no_child() {
    let mut kitchen = over_heat(RoomKind::Group, "fr-FR");
    let (ids, _) = kitchen.ids("Ben", "je peux donner un peu de dinde à Gabin, 14 mois ?", false);
    assert_eq!(ids, ["ask-diner-little"]);
    for text in
        ["Inès est enceinte, elle mange pas de foie gras", "un foie gras enceinte lui aussi", "le bébé dort enfin"]
    {
        assert_eq!(kitchen.among("Ben", text), 0, "{text}");
    }
    for (tag, text) in [
        ("fr-FR", "on peut manger plus tôt, pour le bébé ?"),
        ("fr-FR", "combien de chapon pour 6 adultes et un bébé"),
        ("en-US", "can we eat earlier because of the baby?"),
        ("en-US", "turkey for 6 and a baby, how big?"),
        ("en-US", "can we have dinner at 6pm, the baby goes to bed at 7pm"),
        ("de-DE", "können wir früher essen, wegen dem Baby?"),
    ] {
        assert!(!matches!(read_question(text, &asker(tag)), Ok(Question::Diner(_))), "{tag}: {text}");
    }
}
