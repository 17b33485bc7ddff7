//! What is asked at the table and hours after it: answered by what is known, and never called fine on too little.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// A language, and how a look at the bird is told in it.
const LOOKS: [(&str, &str); 6] = [
    ("en-GB", "breast 75 thigh 79 wing 76"),
    ("es-ES", "pechuga 75 muslo 79 ala 76"),
    ("fr-FR", "poitrine 75 cuisse 79 aile 76"),
    ("de-DE", "brust 75 keule 79 flügel 76"),
    ("it-IT", "petto 75 coscia 79 ala 76"),
    ("pt-BR", "peito 75 coxa 79 asa 76"),
];

/// A fresh bird for the 25th at six, in the oven since 13:45.
fn in_the_oven(kind: RoomKind) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "de-DE", Berlin, "2027-12-24 12:00");
    kitchen.say("Jonas", "/plan frische pute 5,5 kg, haben wir, essen am 25. um 18 uhr, 10 leute, ofen 180, ohne salz");
    kitchen.press("Jonas", "Annehmen");
    kitchen.run_to("2027-12-25 13:45");
    kitchen.say("Jonas", "pute ist drin");
    kitchen
}

/// The same, read as that language reads it at 16:30.
fn read(kind: RoomKind, language: &str) -> Kitchen {
    let mut kitchen = in_the_oven(kind);
    kitchen.run_to("2027-12-25 16:30");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    let look = LOOKS.iter().find(|(known, _)| *known == language).map(|(_, look)| *look).unwrap();
    kitchen.say("Jonas", look);
    kitchen
}

/// Read, and off the heat since 16:32.
fn off(kind: RoomKind, language: &str) -> Kitchen {
    let mut kitchen = read(kind, language);
    kitchen.run_to("2027-12-25 16:32");
    kitchen.scene.room.taste.language = Some("de-DE".to_owned());
    kitchen.say("Jonas", "ist raus");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

/// The ids of what is said to `words`, among people or to the bot.
fn ids(kitchen: &mut Kitchen, kind: RoomKind, words: &str) -> Vec<String> {
    let before = kitchen.said.len();
    match kind {
        RoomKind::Group => {
            kitchen.among("Jonas", words);
        }
        RoomKind::Private => {
            kitchen.say("Jonas", words);
        }
    }
    kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect()
}

const KINDS: [RoomKind; 2] = [RoomKind::Group, RoomKind::Private];

#[test]
fn a_bird_nobody_said_was_off_is_judged_by_its_planned_hours() {
    for kind in KINDS {
        for (language, words) in [
            ("en-GB", "do I throw it out?"),
            ("en-GB", "is it still good?"),
            ("en-GB", "can we still eat it?"),
            ("es-ES", "lo guardo o lo tiro?"),
            ("es-ES", "todavía sirve?"),
            ("fr-FR", "c'est encore bon ?"),
            ("fr-FR", "je la jette ?"),
            ("de-DE", "ist die noch gut?"),
            ("de-DE", "muss ich die wegwerfen?"),
            ("it-IT", "lo butto?"),
            ("it-IT", "è ancora buono?"),
            ("pt-BR", "jogo fora?"),
            ("pt-BR", "ainda serve?"),
        ] {
            let mut kitchen = read(kind, language);
            kitchen.run_to("2027-12-25 21:30");
            assert_eq!(ids(&mut kitchen, kind, words), ["room-never-off-over"], "{kind:?} {language}: {words}");
        }
    }
}

#[test]
fn never_read_either_it_is_said_not_to_be_safe() {
    let mut kitchen = in_the_oven(RoomKind::Private);
    kitchen.run_to("2027-12-25 21:30");
    let said = kitchen.say("Jonas", "ist die noch gut?");
    assert!(said.contains("18:") && said.contains("nicht sicher"), "{said}");
}

#[test]
fn said_to_be_off_it_is_judged_by_its_own_clock_in_a_group_as_well() {
    for (at, id) in [("17:30", "room-out-clock"), ("21:30", "room-out-clock-over")] {
        for (language, words) in [
            ("en-GB", "is it still good?"),
            ("es-ES", "todavía sirve?"),
            ("fr-FR", "c'est encore bon ?"),
            ("de-DE", "ist die noch gut?"),
            ("it-IT", "è ancora buono?"),
            ("pt-BR", "ainda serve?"),
        ] {
            for kind in KINDS {
                let mut kitchen = off(kind, language);
                kitchen.run_to(&format!("2027-12-25 {at}"));
                let said = ids(&mut kitchen, kind, words);
                assert_eq!(said.first().map(String::as_str), Some(id), "{kind:?} {language} {at}: {words}");
            }
        }
    }
    // Of something else nobody asked the bot.
    let mut kitchen = read(RoomKind::Group, "en-GB");
    kitchen.run_to("2027-12-25 21:30");
    assert_eq!(ids(&mut kitchen, RoomKind::Group, "are the potatoes still good?"), [""; 0]);
}

#[test]
fn within_its_two_hours_their_end_is_told() {
    let mut kitchen = read(RoomKind::Private, "en-GB");
    kitchen.run_to("2027-12-25 18:05");
    assert_eq!(ids(&mut kitchen, RoomKind::Private, "is it still good?"), ["room-never-off"]);
    // Measured a moment ago it still cooks, whatever the hour.
    let mut late = in_the_oven(RoomKind::Private);
    late.run_to("2027-12-25 19:20");
    late.say("Jonas", "brust 60 keule 64");
    let said = late.say("Jonas", "kann man die essen?");
    assert!(said.contains("Noch nicht"), "{said}");
}

#[test]
fn pink_juice_is_judged_by_what_was_read() {
    for kind in KINDS {
        for (language, words) in [
            ("en-GB", "the juice runs pink"),
            ("en-GB", "grandma says if the juice is pink it's raw"),
            ("es-ES", "el jugo sale rosa"),
            ("es-ES", "la abuela dice que si el jugo sale rosa está crudo"),
            ("fr-FR", "le jus est rose"),
            ("fr-FR", "mamie dit que si le jus est rose c'est cru"),
            ("de-DE", "der saft ist rosa"),
            ("de-DE", "oma sagt wenn der saft rosa ist, ist sie noch roh"),
            ("it-IT", "esce sugo rosa"),
            ("it-IT", "mia suocera dice che se esce il sugo rosa è crudo"),
            ("pt-BR", "o suco saiu rosado"),
            ("pt-BR", "minha sogra diz que se o suco sai rosa está cru"),
        ] {
            let mut kitchen = off(kind, language);
            kitchen.run_to("2027-12-25 18:05");
            assert_eq!(ids(&mut kitchen, kind, words), ["cook-pink-read"], "{kind:?} {language}: {words}");
        }
    }
}

#[test]
fn pink_and_never_read_it_is_measured_before_anyone_eats() {
    for (language, words) in [
        ("en-GB", "the juice runs pink"),
        ("es-ES", "sale jugo rosado"),
        ("fr-FR", "le jus est rose"),
        ("de-DE", "der saft ist rosa"),
        ("it-IT", "esce sugo rosa"),
        ("pt-BR", "o suco saiu rosa"),
    ] {
        let mut kitchen = in_the_oven(RoomKind::Group);
        kitchen.run_to("2027-12-25 16:40");
        kitchen.say("Jonas", "ist raus");
        kitchen.run_to("2027-12-25 16:41");
        kitchen.scene.room.plan.as_mut().unwrap().record(carvetime_core::plan::Step::Pull, 0, kitchen.now, true, None);
        kitchen.scene.room.taste.language = Some(language.to_owned());
        assert_eq!(ids(&mut kitchen, RoomKind::Group, words), ["cook-pink-unread"], "{language}: {words}");
    }
}

#[test]
fn seen_raw_at_the_bone_it_goes_back_in_all_the_same() {
    let mut kitchen = off(RoomKind::Group, "en-GB");
    assert_eq!(ids(&mut kitchen, RoomKind::Group, "the thigh is raw at the bone"), ["ask-raw-inside"]);
    // What is pink and no bird's.
    assert_eq!(ids(&mut kitchen, RoomKind::Group, "kids want the pink juice box"), [""; 0]);
}

#[test]
fn late_guests_find_a_bird_that_is_done_held_hot() {
    for kind in KINDS {
        for (language, hour, plain) in [
            ("en-GB", "the guests are an hour late", "the guests are running late"),
            ("es-ES", "los invitados llegan una hora tarde", "mis suegros llegan tarde"),
            ("fr-FR", "les invités ont une heure de retard", "mes beaux-parents sont en retard"),
            ("de-DE", "die gäste kommen eine stunde später", "die schwiegereltern kommen zu spät"),
            ("it-IT", "gli ospiti sono in ritardo di un'ora", "i suoceri arrivano in ritardo"),
            ("pt-BR", "os convidados vão atrasar uma hora", "meus sogros estão atrasados"),
        ] {
            for words in [hour, plain] {
                let mut kitchen = off(kind, language);
                kitchen.run_to("2027-12-25 17:15");
                let said = ids(&mut kitchen, kind, words);
                assert!(said.iter().any(|id| id == "room-late-stands"), "{kind:?} {language}: {words}: {said:?}");
                assert_eq!(
                    said.iter().any(|id| id == "room-late"),
                    words == hour,
                    "{kind:?} {language}: {words}: {said:?}"
                );
                assert!(!said.iter().any(|id| id == "ask-too-slow"), "{language}: {words}");
            }
            // Read done and still in the oven.
            let mut kitchen = read(kind, language);
            let said = ids(&mut kitchen, kind, plain);
            assert_eq!(said, ["room-late-stands"], "{kind:?} {language}: {plain}");
        }
    }
}

#[test]
fn late_guests_of_a_bird_that_cooks_are_asked_how_late() {
    let mut kitchen = in_the_oven(RoomKind::Private);
    kitchen.run_to("2027-12-25 15:00");
    kitchen.scene.room.taste.language = Some("it-IT".to_owned());
    assert_eq!(ids(&mut kitchen, RoomKind::Private, "i suoceri arrivano in ritardo"), ["room-late-how"]);
    // Too long out, nothing is held for anyone.
    let mut over = off(RoomKind::Private, "it-IT");
    over.run_to("2027-12-25 17:58");
    over.scene.room.plan.as_mut().unwrap().wish.dinner = Some(over.local("2027-12-25 20:00"));
    over.run_to("2027-12-25 18:50");
    let said = ids(&mut over, RoomKind::Private, "gli ospiti sono in ritardo di un'ora");
    assert_eq!(said, ["room-limit-chill"]);
}
