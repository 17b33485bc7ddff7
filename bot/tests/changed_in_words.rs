//! A dinner that stands is changed by what families say: how many come, who stays away, the hour it is now.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::LivePlan;
use chrono::TimeDelta;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

/// Thursday at seven in the evening for eight, planned on Monday by Rosa; in a group with Tom.
fn planned(kind: RoomKind, tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", "/plan 13 lb fresh turkey, dinner Thursday 7 pm, 8 people, oven at 325");
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

/// Presses the one button of the newest message that has any.
fn agree(kitchen: &mut Kitchen, who: &str) {
    let say = kitchen.said.iter().rev().find(|say| !say.buttons.is_empty()).unwrap();
    let (data, on) = (say.buttons[0][0].data.clone(), say.key.clone());
    kitchen.hear(Some(who), carvetime::room::What::Pressed { press: "p".into(), data, on });
}

#[test]
fn the_host_alone_changes_how_many_come() {
    let said: [&[(&str, u16)]; 6] = [
        &[
            ("4 less people", 4),
            ("3 fewer", 5),
            ("two people dropped out", 6),
            ("2 more people are coming", 10),
            ("aunt carol isnt coming", 7),
            ("mark can't make it", 7),
            ("carol and rick are coming too", 10),
            ("carol and rick are coming too so 11 now", 11),
            ("carol and rick are coming too so we're 11 now", 11),
            ("we're 12 now", 12),
            ("2 kids arent coming", 6),
            ("2 of us are sick and can't come", 6),
            ("my sister and her 2 kids aren't coming", 5),
            ("one more person is coming", 9),
            ("+2 for dinner", 10),
            ("dinner for 6", 6),
        ],
        &[
            ("4 personas menos", 4),
            ("somos 2 menos", 6),
            ("la tía carol no viene", 7),
            ("mark no puede venir", 7),
            ("vienen 2 personas más", 10),
            ("carol y rick vienen también, así que 10 en total", 10),
        ],
        &[
            ("4 personnes de moins", 4),
            ("on est 2 de moins", 6),
            ("tante carol ne vient pas", 7),
            ("mark peut pas venir", 7),
            ("2 personnes de plus viennent", 10),
            ("carol et rick viennent aussi, donc 10 en tout", 10),
        ],
        &[
            ("4 leute weniger", 4),
            ("wir sind 2 weniger", 6),
            ("tante carol kommt nicht", 7),
            ("mark kann nicht kommen", 7),
            ("es kommen noch 2 leute", 10),
            ("carol und rick kommen auch, also 10 insgesamt", 10),
        ],
        &[
            ("4 pessoas a menos", 4),
            ("somos 2 a menos", 6),
            ("a tia carol não vem", 7),
            ("mark não vai poder vir", 7),
            ("vêm mais 2 pessoas", 10),
            ("carol e rick vêm também, então são 10", 10),
        ],
        &[
            ("4 persone in meno", 4),
            ("siamo 2 in meno", 6),
            ("zia carol non viene", 7),
            ("mark non può venire", 7),
            ("vengono altre 2 persone", 10),
            ("vengono anche carol e rick, così 10 in tutto", 10),
        ],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for (text, people) in said {
            let mut kitchen = planned(RoomKind::Private, tag);
            let heard = kitchen.say("Rosa", text);
            assert_eq!(plan(&kitchen).wish.adults, Some(*people), "{tag}: {text}: {heard}");
        }
    }
}

#[test]
fn said_to_everyone_the_hosts_word_counts_and_of_others_the_host_is_asked() {
    let said = [
        "2 more people are coming",
        "vienen 2 personas más",
        "2 personnes de plus viennent",
        "es kommen noch 2 leute",
        "vêm mais 2 pessoas",
        "vengono altre 2 persone",
    ];
    for (tag, text) in TAGS.into_iter().zip(said) {
        let mut kitchen = planned(RoomKind::Group, tag);
        assert_eq!(kitchen.among("Tom", text), 1, "{tag}: {text}");
        agree(&mut kitchen, "Tom");
        assert_eq!(plan(&kitchen).wish.adults, Some(8), "{tag}: not Tom's to say");
        agree(&mut kitchen, "Rosa");
        assert_eq!(plan(&kitchen).wish.adults, Some(10), "{tag}: {text}");
        let mut kitchen = planned(RoomKind::Group, tag);
        kitchen.among("Rosa", text);
        assert_eq!(plan(&kitchen).wish.adults, Some(10), "{tag}: {text}");
        kitchen.scene.room.taste.language = Some("en-US".to_owned());
        kitchen.press("Rosa", "Undo");
        assert_eq!(plan(&kitchen).wish.adults, Some(8), "{tag}: {text}: taken back");
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    kitchen.among("Tom", "aunt carol and uncle bob can't make it after all");
    kitchen.among("Rosa", "yes");
    assert_eq!(plan(&kitchen).wish.adults, Some(6), "a yes in words will do");
}

#[test]
fn who_else_does_not_come_is_nothing_of_the_table() {
    for text in [
        "the plumber isnt coming",
        "rain isn't coming",
        "the courier can't make it today",
        "mark can't make it friday",
        "mark can't make it to the game",
        "is carol coming too",
        "if carol isn't coming i'll make less",
        "not coming til 6",
        "he isnt coming",
        "2 more packages coming today",
        "3 more chairs coming",
        "2 more people are coming tomorrow",
        "next year we'll be 15",
        "can't make it by 5, traffic",
        "less salt next time",
        "two kids are sick",
    ] {
        for who in ["Rosa", "Tom"] {
            let mut kitchen = planned(RoomKind::Group, "en-US");
            assert_eq!(kitchen.among(who, text), 0, "{who}: {text}");
        }
    }
    for (tag, text) in [
        ("es-ES", "el fontanero no viene"),
        ("es-ES", "a las 8 menos 10"),
        ("fr-FR", "le plombier ne vient pas"),
        ("de-DE", "der klempner kommt nicht"),
        ("pt-BR", "o encanador não vem"),
        ("it-IT", "il corriere non viene"),
    ] {
        let mut kitchen = planned(RoomKind::Group, tag);
        assert_eq!(kitchen.among("Rosa", text), 0, "{tag}: {text}");
    }
}

#[test]
fn the_hour_it_is_now_is_heard_as_people_say_it() {
    let minutes = |kitchen: &Kitchen| {
        let local = plan(kitchen).wish.dinner.unwrap().with_timezone(&Chicago).naive_local();
        (local - kitchen.local("2027-11-25 19:00").with_timezone(&Chicago).naive_local()).num_minutes()
    };
    let said: [&[(&str, i64)]; 6] = [
        &[
            ("8 works better", 60),
            ("make it 6", -60),
            ("dinner's pushed to 7:30", 30),
            ("hold dinner for half an hour", 30),
            ("6 pm it is", -60),
            ("can we eat at 6 instead", -60),
        ],
        &[("al final cenamos a las 8", 60), ("mejor a las 20", 60), ("la cena se retrasa a las 20:30", 90)],
        &[("finalement on mange à 20h", 60), ("plutôt 20h", 60), ("le repas est décalé à 20h", 60)],
        &[("wir essen doch erst um 20 uhr", 60), ("lieber um 20 uhr", 60), ("das essen ist auf 20 uhr verschoben", 60)],
        &[("vamos jantar 20h então", 60), ("melhor às 20h", 60), ("o jantar foi adiado para as 20h", 60)],
        &[("mangiamo alle 20 allora", 60), ("meglio alle 20", 60), ("la cena è spostata alle 20", 60)],
    ];
    for (tag, said) in TAGS.into_iter().zip(said) {
        for (text, by) in said {
            let mut kitchen = planned(RoomKind::Group, tag);
            assert!(kitchen.among("Rosa", text) > 0, "{tag}: {text}");
            // Where the meal is named it is done, and can be taken back; else it is asked first.
            if minutes(&kitchen) == 0 {
                agree(&mut kitchen, "Rosa");
            }
            assert_eq!(minutes(&kitchen), *by, "{tag}: {text}");
            let mut alone = planned(RoomKind::Private, tag);
            let heard = alone.say("Rosa", text);
            if minutes(&alone) == 0 {
                agree(&mut alone, "Rosa");
            }
            assert_eq!(minutes(&alone), *by, "{tag}: {text}: {heard}");
        }
    }
}

#[test]
fn other_meals_and_other_hours_move_nothing() {
    for (tag, text) in [
        ("en-US", "pizza tonight at 7"),
        ("en-US", "next year let's eat at 3"),
        ("en-US", "dinner with the neighbours on friday"),
        ("en-US", "dinner with mom at 6 on friday"),
        ("en-US", "the game moved to 6"),
        ("en-US", "my train is at 6"),
        ("es-ES", "el año que viene cenamos a las 8"),
        ("fr-FR", "l'an prochain on mange à 20h"),
        ("de-DE", "nächstes jahr essen wir um 20 uhr"),
        ("de-DE", "pizza heute um 20 uhr"),
        ("pt-BR", "ano que vem vamos jantar às 20h"),
        ("it-IT", "l'anno prossimo mangiamo alle 20"),
        ("it-IT", "pizza stasera alle 20"),
    ] {
        let mut alone = planned(RoomKind::Private, tag);
        let before = plan(&alone).wish.dinner;
        let heard = alone.say("Rosa", text);
        assert_eq!(plan(&alone).wish.dinner, before, "{tag}: {text}: {heard}");
        for who in ["Rosa", "Tom"] {
            let mut kitchen = planned(RoomKind::Group, tag);
            assert_eq!(kitchen.among(who, text), 0, "{tag}: {who}: {text}");
        }
    }
    let mut kitchen = planned(RoomKind::Group, "en-US");
    for text in [
        "it is 6 pm",
        "it's 6 now",
        "7 works better",
        "game is at 6",
        "6 pm",
        "set the table at 6",
        "make it 6 dozen rolls",
    ] {
        assert_eq!(kitchen.among("Rosa", text), 0, "{text}");
    }
    assert_eq!(kitchen.among("Tom", "6 works better"), 0, "of whatever that is");
    let before = plan(&kitchen).wish.dinner;
    for text in ["table for 6", "dinner for 6 people", "+6 for dinner"] {
        kitchen.among("Rosa", text);
        agree(&mut kitchen, "Rosa");
        assert_eq!(plan(&kitchen).wish.dinner, before, "{text}: people, and no hour");
    }
}

#[test]
fn a_newer_question_of_the_hour_closes_the_older() {
    use carvetime::room::How;
    let mut kitchen = planned(RoomKind::Group, "en-US");
    assert_eq!(kitchen.among("Tom", "can we eat at 6 instead?"), 1);
    assert_eq!(kitchen.among("Tom", "can we eat at 8 instead?"), 2);
    let closes = kitchen.said.iter().filter(|say| say.how == How::Close && say.key.as_deref() == Some("late")).count();
    assert_eq!(closes, 1);
    kitchen.among("Rosa", "yes");
    let dinner = plan(&kitchen).wish.dinner.unwrap();
    assert_eq!(dinner - kitchen.local("2027-11-25 19:00"), TimeDelta::hours(1));
}
