//! A plan told otherwise in a few words: "make it 11", "no wait, 12", "+2", "it's actually frozen", in six languages.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::LivePlan;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

/// Thursday at four in the afternoon for eight, planned on Monday by Rosa; in a group with Tom.
fn planned(kind: RoomKind, tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 4 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    if kind == RoomKind::Group {
        kitchen.say("Tom", "/board");
    }
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen
}

fn plan(kitchen: &Kitchen) -> &LivePlan {
    kitchen.scene.room.plan.as_ref().unwrap()
}

fn people(kitchen: &Kitchen) -> Option<u16> {
    plan(kitchen).wish.adults
}

fn hour(kitchen: &Kitchen) -> String {
    plan(kitchen).wish.dinner.unwrap().with_timezone(&Chicago).format("%H:%M").to_string()
}

/// Presses the first button of the newest message that has any.
fn agree(kitchen: &mut Kitchen, who: &str) {
    let say = kitchen.said.iter().rev().find(|say| !say.buttons.is_empty()).unwrap();
    let (data, on) = (say.buttons[0][0].data.clone(), say.key.clone());
    kitchen.hear(Some(who), carvetime::room::What::Pressed { press: "p".into(), data, on });
}

#[test]
fn a_number_told_for_another_counts_people_where_no_dinner_is_at_such_an_hour() {
    let said: [&[(&str, u16)]; 6] = [
        &[
            ("make it 11", 11),
            ("ok make it 11 then", 11),
            ("+2", 10),
            ("plus 2", 10),
            ("make it 9 not 8", 9),
            ("the millers aren't coming so 6 of us", 6),
            ("aunt carol isn't coming so 7", 7),
        ],
        &[("mejor 11", 11), ("+2", 10), ("más 2", 10), ("que sean 9 no 8", 9), ("la tía carol no viene así que 7", 7)],
        &[
            ("mets 11", 11),
            ("+2", 10),
            ("plus 2", 10),
            ("mets 9 au lieu de 8", 9),
            ("tante carol ne vient pas donc 7", 7),
        ],
        &[("mach 11", 11), ("+2", 10), ("plus 2", 10), ("mach 9 statt 8", 9), ("tante carol kommt nicht also 7", 7)],
        &[
            ("coloca 11", 11),
            ("+2", 10),
            ("mais 2", 10),
            ("coloca 9 em vez de 8", 9),
            ("a tia carol não vem então 7", 7),
        ],
        &[
            ("facciamo 11", 11),
            ("+2", 10),
            ("più 2", 10),
            ("facciamo 9 invece di 8", 9),
            ("zia carol non viene quindi 7", 7),
        ],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for (text, count) in said {
            let mut kitchen = planned(RoomKind::Group, tag);
            assert_eq!(kitchen.among("Rosa", text), 2, "{tag}: {text}: the change, and the board");
            assert_eq!(people(&kitchen), Some(*count), "{tag}: {text}");
            let mut alone = planned(RoomKind::Private, tag);
            let heard = alone.say("Rosa", text);
            assert_eq!(people(&alone), Some(*count), "{tag}: {text}: {heard}");
        }
    }
}

#[test]
fn what_was_just_told_is_put_right_in_a_word() {
    let said = [
        ("we're 14 now", "no wait, 12", "2 more people are coming", "no wait, 3"),
        ("somos 14 ahora", "no espera, 12", "vienen 2 personas más", "no, perdón, 3"),
        ("on est 14 maintenant", "non attends, 12", "2 personnes de plus viennent", "non pardon, 3"),
        ("wir sind jetzt 14", "nein warte, 12", "es kommen noch 2 leute", "nein warte, 3"),
        ("agora somos 14", "não, espera, 12", "vêm mais 2 pessoas", "não, peraí, 3"),
        ("adesso siamo 14", "no aspetta, 12", "vengono altre 2 persone", "anzi, 3"),
    ];
    for (tag, (first, then, more, rather)) in TAGS.into_iter().zip(said) {
        for kind in [RoomKind::Group, RoomKind::Private] {
            let say = |kitchen: &mut Kitchen, text: &str| match kind {
                RoomKind::Group => drop(kitchen.among("Rosa", text)),
                RoomKind::Private => drop(kitchen.say("Rosa", text)),
            };
            let mut kitchen = planned(kind, tag);
            say(&mut kitchen, first);
            assert_eq!(people(&kitchen), Some(14), "{tag}: {first}");
            say(&mut kitchen, then);
            assert_eq!(people(&kitchen), Some(12), "{tag}: {then}");
            let mut kitchen = planned(kind, tag);
            say(&mut kitchen, more);
            assert_eq!(people(&kitchen), Some(10), "{tag}: {more}");
            say(&mut kitchen, rather);
            assert_eq!(people(&kitchen), Some(11), "{tag}: {rather}: three more, and not three");
        }
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    kitchen.among("Rosa", "we're 14 now");
    kitchen.now += chrono::TimeDelta::minutes(20);
    assert_eq!(kitchen.among("Rosa", "no wait, 12"), 0, "of something else by now");
    assert!(kitchen.among("Rosa", "make it 5") > 0, "people were the last topic");
    assert_eq!((people(&kitchen), hour(&kitchen).as_str()), (Some(5), "16:00"));
}

#[test]
fn an_hour_told_for_another_is_the_question_what_it_would_mean() {
    for (tag, text) in [
        ("en-US", "make it 5 not 4"),
        ("en-US", "grandma wants to eat at 5"),
        ("es-ES", "la abuela quiere cenar a las 17"),
        ("fr-FR", "mamie veut manger à 17h"),
        ("de-DE", "Oma will um 17 Uhr essen"),
        ("pt-BR", "a vovó quer jantar às 17h"),
        ("it-IT", "la nonna vuole mangiare alle 17"),
    ] {
        for who in ["Rosa", "Tom"] {
            let mut kitchen = planned(RoomKind::Group, tag);
            assert_eq!(kitchen.among(who, text), 1, "{tag}: {who}: {text}");
            assert_eq!(hour(&kitchen), "16:00", "{tag}: {text}: asked first");
            agree(&mut kitchen, "Rosa");
            assert_eq!(hour(&kitchen), "17:00", "{tag}: {text}");
        }
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    kitchen.among("Rosa", "can we eat at 5 instead?");
    kitchen.among("Rosa", "no wait, 5:30");
    agree(&mut kitchen, "Rosa");
    assert_eq!(hour(&kitchen), "17:30");
}

#[test]
fn of_a_helper_the_host_is_asked() {
    for (text, count) in [("+2", 10), ("the millers aren't coming so 6 of us", 6)] {
        let mut kitchen = planned(RoomKind::Group, "en-US");
        assert_eq!(kitchen.among("Tom", text), 1, "{text}");
        assert_eq!(people(&kitchen), Some(8), "{text}");
        agree(&mut kitchen, "Rosa");
        assert_eq!(people(&kitchen), Some(count), "{text}");
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    kitchen.among("Tom", "2 more people are coming");
    kitchen.among("Tom", "no wait, 3");
    agree(&mut kitchen, "Rosa");
    assert_eq!(people(&kitchen), Some(11));
    for text in ["no salt please, my father in law has high blood pressure", "it's actually frozen, just checked"] {
        let mut kitchen = planned(RoomKind::Group, "en-US");
        let before = plan(&kitchen).wish.clone();
        assert_eq!(kitchen.among("Tom", text), 1, "{text}");
        assert_eq!(plan(&kitchen).wish, before, "{text}");
        agree(&mut kitchen, "Rosa");
        assert_ne!(plan(&kitchen).wish, before, "{text}");
    }
}

#[test]
fn the_bird_is_what_it_turned_out_to_be() {
    for (tag, text) in [
        ("en-US", "it's actually frozen, just checked"),
        ("en-US", "turns out its frozen"),
        ("es-ES", "en realidad está congelado, acabo de mirar"),
        ("fr-FR", "en fait elle est congelée, je viens de vérifier"),
        ("de-DE", "die ist tatsächlich gefroren, hab gerade nachgesehen"),
        ("pt-BR", "na verdade está congelado, acabei de ver"),
        ("it-IT", "in realtà è congelato, ho appena controllato"),
    ] {
        for kind in [RoomKind::Group, RoomKind::Private] {
            let mut kitchen = planned(kind, tag);
            match kind {
                RoomKind::Group => drop(kitchen.among("Rosa", text)),
                RoomKind::Private => drop(kitchen.say("Rosa", text)),
            }
            assert_eq!(plan(&kitchen).wish.condition.as_deref(), Some("frozen"), "{tag}: {text}");
            assert!(plan(&kitchen).jobs.iter().any(|job| job.step == "thaw"), "{tag}: {text}");
        }
    }
}

#[test]
fn no_salt_is_a_change_with_its_reason_beside_it() {
    for (tag, text) in [
        ("en-US", "no salt please, my father in law has high blood pressure"),
        ("es-ES", "sin sal por favor, mi suegro tiene la tensión alta"),
        ("fr-FR", "pas de sel svp, mon beau-père fait de la tension"),
        ("de-DE", "kein salz bitte, mein schwiegervater hat bluthochdruck"),
        ("pt-BR", "sem sal por favor, meu sogro tem pressão alta"),
        ("it-IT", "niente sale per favore, mio suocero ha la pressione alta"),
    ] {
        for kind in [RoomKind::Group, RoomKind::Private] {
            let mut kitchen = planned(kind, tag);
            match kind {
                RoomKind::Group => drop(kitchen.among("Rosa", text)),
                RoomKind::Private => drop(kitchen.say("Rosa", text)),
            }
            assert_eq!(plan(&kitchen).wish.salting.as_deref(), Some("none"), "{tag}: {text}");
        }
    }
}

#[test]
fn what_sounds_like_it_changes_nothing() {
    for (tag, text) in [
        ("en-US", "no wait, 12"),
        ("en-US", "no 12"),
        ("en-US", "+1"),
        ("en-US", "+2 lbs of potatoes"),
        ("en-US", "make it 6 dozen rolls"),
        ("en-US", "make it 350"),
        ("en-US", "make it 2 pies"),
        ("en-US", "make it 5 not 3"),
        ("en-US", "the pipes are actually frozen, just checked"),
        ("en-US", "the pie is actually frozen"),
        ("en-US", "no salt please, on the rim"),
        ("en-US", "no salt please on my fries"),
        ("en-US", "kids want to eat pizza at 6"),
        ("en-US", "the dog wants to eat at 5"),
        ("en-US", "the dogs eat at 5"),
        ("en-US", "my plumber wants to come at 5"),
        ("en-US", "who wants to eat at the new place"),
        ("en-US", "grandma wants to eat"),
        ("en-US", "grandma wants to leave at 5"),
        ("en-US", "so 6 of us are going to the game"),
        ("es-ES", "las tuberías están congeladas en realidad"),
        ("es-ES", "no espera, 12"),
        ("es-ES", "el perro quiere comer a las 5"),
        ("fr-FR", "le lac est gelé en fait"),
        ("fr-FR", "non attends, 12"),
        ("de-DE", "der see ist tatsächlich gefroren"),
        ("de-DE", "nein warte, 12"),
        ("de-DE", "oma will um 5 gehen"),
        ("pt-BR", "o lago está congelado na verdade"),
        ("pt-BR", "não, espera, 12"),
        ("it-IT", "il lago è ghiacciato in realtà"),
        ("it-IT", "no aspetta, 12"),
    ] {
        for who in ["Rosa", "Tom"] {
            let mut kitchen = planned(RoomKind::Group, tag);
            assert_eq!(kitchen.among(who, text), 0, "{tag}: {who}: {text}");
        }
    }
    // What is told to the bot alone is of the dinner, unless it can't be.
    for text in ["no wait, 12", "make it 6 dozen rolls", "make it 2 pies", "the pie is actually frozen"] {
        let mut alone = planned(RoomKind::Private, "en-US");
        let before = plan(&alone).wish.clone();
        let heard = alone.say("Rosa", text);
        assert_eq!(plan(&alone).wish, before, "{text}: {heard}");
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    assert_eq!(kitchen.among("Tom", "make it 11"), 0, "of whatever he speaks of");
}
