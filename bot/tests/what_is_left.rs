//! Bones, broth, leftovers on the road, warmed up twice, frozen: what is asked once dinner is over.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// A bird that was read done and came off at 16:32 for dinner at six; nobody has said that anything was put away.
fn eaten(kind: RoomKind, language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "de-DE", Berlin, "2027-12-24 12:00");
    kitchen.say("Jonas", "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr, 10 leute, ofen 180, ohne salz");
    kitchen.press("Jonas", "Annehmen");
    for (at, words) in [("13:45", "pute ist drin"), ("16:30", "brust 75 keule 79 flügel 76"), ("16:32", "ist raus")] {
        kitchen.run_to(&format!("2027-12-25 {at}"));
        kitchen.say("Jonas", words);
    }
    kitchen.run_to("2027-12-26 09:00");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

/// The ids of what is said to `words`, among people or to the bot.
fn ids(kitchen: &mut Kitchen, kind: RoomKind, words: &str) -> Vec<String> {
    let before = kitchen.said.len();
    match kind {
        RoomKind::Group => drop(kitchen.among("Jonas", words)),
        RoomKind::Private => drop(kitchen.say("Jonas", words)),
    }
    kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect()
}

fn check(id: &str, asked: &[(&str, &str)]) {
    for kind in [RoomKind::Group, RoomKind::Private] {
        for (language, words) in asked {
            let said = ids(&mut eaten(kind, language), kind, words);
            assert_eq!(said.first().map(String::as_str), Some(id), "{kind:?} {language}: {words}");
        }
    }
}

#[test]
fn no_broth_is_made_of_bones_that_stood_out() {
    check(
        "ask-bones-out",
        &[
            ("en-US", "the carcass sat out all night, can I make broth of it?"),
            ("en-US", "the bones have been on the table until now, can I make broth?"),
            ("en-US", "if I boil the bones that sat out overnight is that ok?"),
            ("es-ES", "los huesos se quedaron fuera toda la noche, ¿puedo hacer caldo?"),
            ("es-ES", "los huesos los dejé en la mesa hasta ahora, ¿hago caldo?"),
            ("fr-FR", "la carcasse est restée dehors toute la nuit, je peux faire un bouillon ?"),
            ("fr-FR", "j'ai laissé les os sur la table jusqu'à maintenant, je fais un bouillon ?"),
            ("de-DE", "die Knochen standen die ganze Nacht draußen, kann ich Brühe daraus kochen?"),
            ("de-DE", "die Knochen standen bis jetzt auf dem Tisch, kann ich Brühe machen?"),
            ("it-IT", "la carcassa è rimasta fuori tutta la notte, posso fare il brodo?"),
            ("it-IT", "le ossa le ho lasciate sul tavolo fino ad adesso, faccio il brodo?"),
            ("pt-BR", "a carcaça ficou fora a noite toda, posso fazer caldo?"),
            ("pt-BR", "deixei os ossos na mesa até agora, faço caldo?"),
        ],
    );
}

#[test]
fn asked_right_behind_it_is_of_the_same_bones() {
    for (language, told, asked) in [
        ("en-US", "the bones were out overnight", "can I make broth of them?"),
        ("es-ES", "los huesos estuvieron fuera toda la noche", "¿puedo hacer caldo con ellos?"),
        ("fr-FR", "les os sont restés dehors toute la nuit", "je peux faire un bouillon avec ?"),
        ("de-DE", "die Knochen standen über Nacht draußen", "kann ich Brühe daraus kochen?"),
        ("it-IT", "le ossa sono rimaste fuori tutta la notte", "posso farci il brodo?"),
        ("pt-BR", "os ossos ficaram fora a noite toda", "posso fazer caldo com eles?"),
    ] {
        for kind in [RoomKind::Group, RoomKind::Private] {
            let mut kitchen = eaten(kind, language);
            for words in [told, asked] {
                assert_eq!(ids(&mut kitchen, kind, words), ["ask-bones-out"], "{kind:?} {language}: {words}");
            }
        }
    }
}

#[test]
fn broth_is_told_with_the_hour_they_had_to_be_put_away_by() {
    let mut kitchen = eaten(RoomKind::Private, "en-US");
    let said = ids(&mut kitchen, RoomKind::Private, "can I make soup from the carcass?");
    assert_eq!(said, ["ask-carcass", "cook-reheat-only"]);
    // Out for an hour they are food.
    let now = "2027-12-18T18:00:00Z".parse().unwrap();
    let asker = Asker::new("en-US", Berlin, now);
    let answer = ask("the bones sat out for an hour, can I make stock?", &asker).unwrap();
    assert_ne!(answer.texts.first().unwrap().id, "ask-bones-out");
}

#[test]
fn leftovers_measured_too_warm_are_never_silently_fine() {
    let warm = [
        ("en-US", "the leftovers read 48 after the drive"),
        ("en-US", "leftovers are at 48 degrees after 3 hours in the car, ok?"),
        ("en-US", "arrived, they read 48"),
        ("es-ES", "las sobras marcan 9 grados"),
        ("es-ES", "las sobras están a 9 grados después de 3 horas de coche, ¿valen?"),
        ("fr-FR", "les restes sont à 9 degrés après la route"),
        ("fr-FR", "les restes affichent 9 °C après 3 h de voiture, c'est bon ?"),
        ("de-DE", "die Reste haben 9 Grad nach der Fahrt"),
        ("de-DE", "die Reste sind bei 9 Grad nach 3 Stunden Auto, geht das noch?"),
        ("it-IT", "segnano 9 gradi gli avanzi"),
        ("it-IT", "arrivati, segnano 9 gradi"),
        ("pt-BR", "as sobras estão a 9 graus depois da viagem"),
        ("pt-BR", "as sobras chegaram com 9 graus, pode comer?"),
    ];
    check("ask-leftovers-at", &warm);
    for kind in [RoomKind::Group, RoomKind::Private] {
        let mut kitchen = eaten(kind, "en-US");
        let readings = kitchen.scene.room.plan.as_ref().unwrap().readings.len();
        ids(&mut kitchen, kind, "the leftovers read 48 after the drive");
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().readings.len(), readings);
        assert_eq!(ids(&mut kitchen, kind, "can we eat them?"), ["ask-leftovers-at"]);
        for words in ["arrived, it's 45 degrees outside brr", "got home, thermostat reads 62"] {
            let mut other = eaten(kind, "en-US");
            assert!(!ids(&mut other, kind, words).contains(&"ask-leftovers-at".to_owned()), "{words}");
        }
        // Cold enough it is no news.
        assert!(!ids(&mut kitchen, kind, "the leftovers read 38").contains(&"ask-leftovers-at".to_owned()));
    }
}

#[test]
fn leftovers_on_a_long_road_are_warned_of() {
    check(
        "ask-carry-food",
        &[
            ("it-IT", "partiamo, 3 ore di macchina con gli avanzi"),
            ("it-IT", "domani 3 ore di macchina, li porto?"),
            ("es-ES", "mañana son 3 horas de coche, ¿las llevo?"),
        ],
    );
    for kind in [RoomKind::Group, RoomKind::Private] {
        for (language, words) in [
            ("en-US", "they were lukewarm after the 3 hour drive, can I eat them?"),
            ("it-IT", "dopo 3 ore di macchina erano tiepidi, li mangio?"),
            ("de-DE", "nach 3 Stunden Fahrt waren sie lauwarm, kann man die noch essen?"),
        ] {
            let said = ids(&mut eaten(kind, language), kind, words);
            let no = ["room-out-clock-over", "ask-out-discard"];
            assert!(no.iter().any(|id| said.first().is_some_and(|first| first == id)), "{language} {words}: {said:?}");
        }
    }
}

#[test]
fn warmed_up_twice_is_no_temperature() {
    check(
        "ask-reheat-twice",
        &[
            ("en-US", "can I reheat the leftovers twice?"),
            ("en-US", "is it ok to reheat it again tomorrow?"),
            ("es-ES", "¿puedo recalentar las sobras dos veces?"),
            ("fr-FR", "on peut réchauffer les restes deux fois ?"),
            ("de-DE", "kann ich die Reste zweimal aufwärmen?"),
            ("it-IT", "posso riscaldare gli avanzi due volte?"),
            ("pt-BR", "posso requentar as sobras duas vezes?"),
        ],
    );
}

#[test]
fn gravy_and_freezing_are_answered_by_their_own_rule() {
    check("ask-reheat-gravy", &[("de-DE", "wie wärme ich die Soße auf?"), ("it-IT", "come riscaldo il sugo?")]);
    let asker = |tag| Asker::new(tag, Berlin, "2027-12-18T18:00:00Z".parse().unwrap());
    for (tag, words) in [
        ("it-IT", "posso congelarli?"),
        ("en-US", "can I freeze them?"),
        ("es-ES", "¿puedo congelarlas?"),
        ("pt-BR", "posso congelar elas?"),
    ] {
        let answer = ask(words, &asker(tag)).unwrap_or_else(|_| panic!("{tag}: {words}"));
        assert_eq!(answer.kind, "keeps", "{tag}: {words}");
    }
}
