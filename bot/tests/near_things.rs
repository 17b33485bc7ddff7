//! While a bird cooks: portions, football, the road, the weather and an oven of last week are no readings and no calls for help; a bird
//! taken off in a story is asked about, and what was condemned is not frozen.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use carvetime_core::plan::Step;
use kitchen::{Kitchen, over_heat};

fn ids(kitchen: &mut Kitchen, text: &str) -> Vec<String> {
    let before = kitchen.said.len();
    kitchen.hear(Some("Bob"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false });
    kitchen.said.iter().skip(before).flat_map(|say| &say.text).map(|text| text.id.to_string()).collect()
}

#[test]
fn of_something_else_nothing_is_heard() {
    for (tag, text) in [
        ("en-US", "2 thighs for me"),
        ("en-US", "1 wing and a leg please"),
        ("en-US", "3rd and 15 at the 35"),
        ("en-US", "pit stop at exit 165"),
        ("en-US", "is it raining?"),
        ("en-US", "my oven died last week"),
        ("en-US", "chicken in the fryer"),
        ("en-US", "its out, the new movie"),
        ("en-US", "trash is out"),
        ("en-US", "dad's resting"),
        ("en-US", "bought it, the new tv"),
        ("en-US", "took the pie out of the oven, so pretty"),
        ("en-US", "we took it out of the oven last week"),
        ("es-ES", "dos muslos para mí"),
        ("es-ES", "¿está lloviendo?"),
        ("es-ES", "mi horno se rompió la semana pasada"),
        ("fr-FR", "deux cuisses pour moi"),
        ("fr-FR", "il pleut ?"),
        ("fr-FR", "mon four est tombé en panne la semaine dernière"),
        ("de-DE", "zwei Keulen für mich"),
        ("de-DE", "regnet es?"),
        ("de-DE", "mein Ofen ist letzte Woche kaputtgegangen"),
        ("pt-BR", "duas coxas pra mim"),
        ("pt-BR", "tá chovendo?"),
        ("pt-BR", "meu forno quebrou semana passada"),
        ("it-IT", "due cosce per me"),
        ("it-IT", "piove?"),
        ("it-IT", "il mio forno si è rotto la settimana scorsa"),
        ("fr-FR", "moi mon coeur est a 37 degres ca va"),
        ("fr-FR", "un foie gras de 74 degres au coeur c du paté"),
        ("fr-FR", "le tgv est bloqué a valence"),
        ("fr-FR", "mon tgv a 40 min de retard, commencez sans moi"),
        ("en-US", "my heart is at 98 degrees, all fine"),
        ("en-US", "the train is stuck in Valence"),
        ("en-US", "I'm 40 min late, start without me"),
        ("de-DE", "mein Herz ist bei 37 Grad, alles ok"),
        ("de-DE", "ich bin 40 min zu spät, fangt ohne mich an"),
        ("es-ES", "mi corazón está a 37 grados, todo bien"),
        ("es-ES", "llego 40 min tarde, empezad sin mí"),
        ("it-IT", "il mio cuore è a 37 gradi, va bene"),
        ("it-IT", "ho 40 min di ritardo, iniziate senza di me"),
        ("pt-BR", "meu coração está a 37 graus, tudo bem"),
        ("pt-BR", "estou 40 min atrasado, comecem sem mim"),
    ] {
        let mut kitchen = over_heat(RoomKind::Group, tag);
        assert_eq!(ids(&mut kitchen, text), [""; 0], "{tag}: {text}");
        assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty(), "{tag}: {text}");
    }
}

#[test]
fn what_is_of_this_bird_still_is() {
    for (text, id) in [
        ("my oven died", "no-heat"),
        ("frozen turkey in the fryer", "ask-fry-frozen"),
        ("thigh 150", "room-log-noted"),
        ("thighs 150 and 152", "room-log-noted"),
        ("it's raining on the smoker, what do i do?", "ask-weather"),
    ] {
        let said = ids(&mut over_heat(RoomKind::Group, "en-US"), text);
        assert!(said.iter().any(|said| said.contains(id)), "{text}: {said:?}");
    }
}

#[test]
fn the_new_couch_is_no_bird_privately_either() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", chrono_tz::America::Chicago, "2027-11-23 10:00");
    kitchen.say("Ana", "/plan 11 lb fresh turkey, dinner Thursday 6 pm, 8 people, oven at 350, no salt");
    kitchen.press("Ana", "Accept");
    kitchen.say("Ana", "bought it, the new couch");
    let waits = |kitchen: &Kitchen| {
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        plan.waiting().any(|job| job.step() == Some(Step::Buy))
    };
    assert!(waits(&kitchen));
    kitchen.say("Ana", "bought it, the turkey");
    assert!(!waits(&kitchen));
}

#[test]
fn taken_off_in_a_story_is_asked_about() {
    for (tag, text) in [
        ("en-US", "i took it out of the oven cause it was so dark"),
        ("de-DE", "hab sie raus genommen"),
        ("de-DE", "hab sie jetzt einfach raus genommen weil sie so braun war"),
        ("it-IT", "l'ho tirato fuori perché era già scuro"),
        ("pt-BR", "tirei do forno porque já tava bem dourado"),
        ("pt-BR", "tiramos do forno"),
        ("fr-FR", "je l'ai sortie parce qu'elle était bien dorée"),
        ("es-ES", "lo saqué del horno porque ya estaba dorado"),
    ] {
        let said = ids(&mut over_heat(RoomKind::Group, tag), text);
        assert_eq!(said, ["room-report-early"], "{tag}: {text}");
    }
}

#[test]
fn what_was_condemned_is_not_frozen() {
    for (tag, off, text) in [
        ("en-US", "took it out", "can we freeze it?"),
        ("de-DE", "aus dem Ofen geholt", "kann man die einfrieren?"),
        ("es-ES", "lo saqué del horno", "¿se puede congelar?"),
        ("fr-FR", "sortie du four", "on peut la congeler ?"),
        ("it-IT", "sfornato", "si può congelare?"),
        ("pt-BR", "tirei do forno", "dá pra congelar?"),
    ] {
        let mut kitchen = over_heat(RoomKind::Group, tag);
        kitchen.run_to("2027-11-25 16:45");
        kitchen.say("Ana", off);
        kitchen.run_to("2027-11-25 21:30");
        assert_eq!(ids(&mut kitchen, text), ["room-limit-chill"], "{tag}: {text}");
    }
    let mut kitchen = over_heat(RoomKind::Group, "en-US");
    kitchen.run_to("2027-11-25 16:45");
    kitchen.say("Ana", "took it out");
    kitchen.run_to("2027-11-25 21:30");
    assert_ne!(ids(&mut kitchen, "can we freeze the pie?"), ["room-limit-chill"]);
}

#[test]
fn a_number_alone_is_of_the_spot_its_teller_read_before() {
    for (tag, first) in [
        ("fr-FR", "45 dans la cuisse"),
        ("en-US", "113 in the thigh"),
        ("de-DE", "45 in der Keule"),
        ("es-ES", "45 en el muslo"),
        ("it-IT", "45 nella coscia"),
        ("pt-BR", "45 na coxa"),
    ] {
        let mut kitchen = over_heat(RoomKind::Private, tag);
        kitchen.say("Ana", first);
        kitchen.run_to("2027-11-25 16:00");
        kitchen.say("Ana", if tag == "en-US" { "130" } else { "54" });
        let last = kitchen.scene.room.plan.as_ref().unwrap().readings.last().cloned().unwrap();
        assert_eq!((last.thigh_c.is_some(), last.breast_c), (true, None), "{tag}: {first}");
    }
    let mut kitchen = over_heat(RoomKind::Private, "fr-FR");
    kitchen.say("Ana", "54");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().readings[0].breast_c.is_some());
}

#[test]
fn what_is_asked_of_a_number_is_answered_and_not_noted() {
    for (tag, text) in [
        ("fr-FR", "c'est bon pour moi enceinte si le blanc a fait 74,5 ?"),
        ("en-US", "is it ok for me, pregnant, if the breast read 166?"),
        ("de-DE", "ist das ok für mich als Schwangere, wenn die Brust 74,5 hatte?"),
    ] {
        let mut kitchen = over_heat(RoomKind::Group, tag);
        let (said, words) = kitchen.ids("Ines", text, false);
        assert!(said.contains(&"ask-fragile".to_owned()), "{tag}: {words}");
        assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty(), "{tag}: {words}");
    }
    let mut kitchen = over_heat(RoomKind::Group, "fr-FR");
    kitchen.say("Ana", "cuisse 45, blanc 41");
    kitchen.run_to("2027-11-25 16:40");
    let (said, words) = kitchen.ids("Ana", "pas cuit à 18h on fait quoi", false);
    assert!(!words.contains("pas encore arrivé"), "{said:?}: {words}");
}
