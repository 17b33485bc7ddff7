//! Dishes told with "put", with the word that adds behind the name, or with none; their hours; several at once of which one doesn't fit.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime_core::quantity::{celsius, in_fahrenheit};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn dinner(kind: RoomKind, tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-22 18:00");
    kitchen.say("Rosa", "/plan 12 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    kitchen.press("Rosa", "Accept");
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen.scene.room.taste.us_units = Some(tag == "en-US");
    kitchen
}

fn dishes(kitchen: &Kitchen) -> Vec<String> {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    plan.wish.dishes.iter().flatten().map(|dish| dish.name.clone()).collect()
}

/// What the bird's heat is set to, °F.
fn heat(kitchen: &Kitchen) -> f64 {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    in_fahrenheit(celsius(plan.wish.setting_c.unwrap())).round()
}

#[test]
fn a_food_with_its_minutes_is_a_dish_and_sets_no_heat_of_the_bird() {
    let table: [(&str, &[(&str, &str)]); 6] = [
        (
            "en-US",
            &[
                ("/plan put potatoes in the oven 40 min at 375", "potatoes"),
                ("put the carrots in the oven 40 min at 375", "carrots"),
                ("/plan sprouts in the oven 30 min at 400", "sprouts"),
                ("throw some leeks in the oven 30 min at 400", "leeks"),
            ],
        ),
        (
            "es-ES",
            &[
                ("/plan pon patatas en el horno 40 min a 190", "patatas"),
                ("/plan mete verduras en el horno 40 min a 190 °C", "verduras"),
                ("meto boniatos al horno 40 min a 190 grados", "boniatos"),
                ("/plan añade sopa al fuego 30 min", "sopa"),
            ],
        ),
        (
            "fr-FR",
            &[
                ("/plan mets des pommes de terre au four 40 min à 190", "pommes de terre"),
                ("je mets des carottes au four 40 min à 190 degrés", "carottes"),
            ],
        ),
        (
            "de-DE",
            &[
                ("/plan Füllung hinzufügen im Ofen 45 min bei 190", "Füllung"),
                ("/plan Kartoffeln dazu, 30 min auf dem Herd", "Kartoffeln"),
                ("/plan Brötchen in den Ofen, 15 Minuten bei 200 Grad", "Brötchen"),
                ("stell das Gratin in den Ofen 40 min bei 190", "Gratin"),
            ],
        ),
        (
            "pt-BR",
            &[
                ("/plan põe batata no forno 40 min a 190", "batata"),
                ("/plan coloca arroz no fogo 20 min", "arroz"),
                ("/plan bota rabanada no fogão 20 min", "rabanada"),
            ],
        ),
        (
            "it-IT",
            &[("metto le patate in forno 40 min a 190", "patate"), ("/plan aggiungi sugo sul gas 30 min", "sugo")],
        ),
    ];
    for (tag, told) in table {
        for (said, name) in told {
            let mut kitchen = dinner(RoomKind::Private, tag);
            let heard = kitchen.say("Rosa", said);
            assert_eq!(dishes(&kitchen), [*name], "{said}: {heard}");
            assert_eq!(heat(&kitchen), 325.0, "{said}: {heard}");
            assert!(kitchen.scene.room.drafts.is_empty(), "{said}: {heard}");
        }
    }
}

#[test]
fn a_heat_by_itself_and_what_is_of_the_bird_are_no_dish() {
    for (tag, said, sets) in [
        ("en-US", "/plan set the oven to 350", Some(350.0)),
        ("es-ES", "pon el horno a 180", Some(356.0)),
        ("fr-FR", "mets le four à 180", Some(356.0)),
        ("it-IT", "metti il forno a 180", Some(356.0)),
        ("en-US", "put it in the oven 40 min at 375", None),
        ("en-US", "we had it in the oven 40 min at 350", None),
        ("en-US", "throw the roast in the oven 3 h at 325", None),
        ("de-DE", "nimm die Pute raus", None),
        ("pt-BR", "retira o peru do forno", None),
    ] {
        let mut kitchen = dinner(RoomKind::Private, tag);
        let heard = kitchen.say("Rosa", said);
        assert!(dishes(&kitchen).is_empty() && !heard.contains("Added"), "{said}: {heard}");
        assert_eq!(heat(&kitchen), sets.unwrap_or(325.0), "{said}: {heard}");
    }
    // What may be said to somebody in the kitchen is no order to the plan.
    let mut kitchen = dinner(RoomKind::Group, "en-US");
    kitchen.among("Rosa", "put the rolls in the oven 15 min at 375");
    assert!(dishes(&kitchen).is_empty());
}

#[test]
fn a_dish_goes_by_the_verb_that_stands_last_or_around_it() {
    for (tag, name, said) in [
        ("de-DE", "Rotkohl", "/plan Rotkohl streichen"),
        ("de-DE", "Rotkohl", "/plan nimm den Rotkohl raus"),
        ("en-US", "carrots", "/plan take the carrots out"),
        ("pt-BR", "arroz", "/plan retira o arroz"),
        ("es-ES", "arroz", "/plan retira el arroz"),
    ] {
        let mut kitchen = dinner(RoomKind::Private, "en-US");
        kitchen.say("Rosa", &format!("/plan add {name} on the stove 40 min"));
        assert_eq!(dishes(&kitchen), [name]);
        kitchen.scene.room.taste.language = Some(tag.to_owned());
        let heard = kitchen.say("Rosa", said);
        assert!(dishes(&kitchen).is_empty(), "{said}: {heard}");
    }
}

#[test]
fn how_long_it_takes_is_told_when_it_was_asked() {
    for (tag, said, time) in [
        ("en-US", "/plan add soup", "40 min on the stove"),
        ("es-ES", "/plan añade sopa", "40 min al fuego"),
        ("fr-FR", "/plan ajoute soupe", "40 min sur le feu"),
        ("de-DE", "/plan dazu Suppe", "40 min auf dem Herd"),
        ("pt-BR", "/plan inclui sopa", "40 min no fogão"),
        ("it-IT", "/plan aggiungi zuppa", "40 min sul fornello"),
    ] {
        let mut kitchen = dinner(RoomKind::Group, tag);
        kitchen.say("Tom", said);
        assert!(dishes(&kitchen).is_empty());
        kitchen.among("Rosa", time);
        assert!(dishes(&kitchen).is_empty(), "{time}: said by somebody else");
        kitchen.among("Tom", time);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        let dish = plan.wish.dishes[0].as_ref().expect(said);
        assert_eq!((dish.minutes, dish.heat.as_deref()), (40, Some("stove")), "{said}, {time}");
    }
    let mut kitchen = dinner(RoomKind::Group, "en-US");
    kitchen.say("Tom", "/plan add soup");
    kitchen.run_to("2027-11-22 18:15");
    kitchen.among("Tom", "40 min on the stove");
    assert!(dishes(&kitchen).is_empty(), "a quarter of an hour later it is of something else");
}

#[test]
fn an_hour_by_which_it_is_ready_and_a_day_are_answered() {
    let mut kitchen = dinner(RoomKind::Private, "en-US");
    let said = kitchen.say("Rosa", "/plan add casserole in the oven at 350 for 1 hour, ready by 4 pm");
    assert!(said.contains("You said ready by Thu 4:00 PM. For this dinner it’s ready Thu 4:55 PM."), "{said}");
    let said = kitchen.say("Rosa", "/plan add soup on the stove 30 min, ready by 5 pm");
    assert!(said.contains("Added: soup") && !said.contains("You said"), "{said}");
    kitchen.say("Rosa", "/plan add bread in the oven 30 min at 350");
    let said = kitchen.say("Rosa", "/plan add pie in the oven 50 min at 375 Wednesday evening");
    assert!(said.contains("[Without pie]") && said.contains("You said Wednesday, November 24: pick"), "{said}");
    let said = kitchen.say("Rosa", "/plan add pumpkin pie in the oven 50 min at 375, done by 2 pm");
    assert!(said.contains("[Without pumpkin pie]") && said.contains("You said Thu 2:00 PM: pick"), "{said}");
}

#[test]
fn a_setting_no_oven_has_is_named_with_its_range_and_an_example() {
    let mut kitchen = dinner(RoomKind::Private, "en-US");
    for (said, told) in [("at 1000", "1,000 °F"), ("at 20", "20 °F"), ("at 100", "100 °F")] {
        let heard = kitchen.say("Rosa", &format!("/plan add bread in the oven 30 min {said}"));
        assert!(dishes(&kitchen).is_empty(), "{heard}");
        assert!(heard.contains(told) && heard.contains("150 °F to 550 °F. Like this: in the oven 45 min"), "{heard}");
    }
    // An hour is none.
    let said = kitchen.say("Rosa", "/plan add bread in the oven 30 min at 350 at 4 pm");
    assert_eq!(dishes(&kitchen), ["bread"], "{said}");
}

#[test]
fn of_several_at_once_the_one_that_does_not_fit_is_named_and_can_be_left_out() {
    let mut kitchen = dinner(RoomKind::Private, "en-US");
    for dish in ["peas", "corn"] {
        kitchen.say("Rosa", &format!("/plan add {dish} in the oven 45 min at 375"));
    }
    let said = kitchen.say("Rosa", "/plan add rolls, oven 45 min 375, gravy stove 20 min");
    assert!(said.contains("Added: gravy") && said.contains("rolls is one too many"), "{said}");
    assert!(said.contains("[Without rolls]") && !said.contains("Without gravy"), "{said}");
    assert_eq!(dishes(&kitchen), ["peas", "corn", "gravy"]);
    let said = kitchen.press("Rosa", "Without rolls");
    assert!(said.contains("Without rolls") && dishes(&kitchen) == ["peas", "corn", "gravy"], "{said}");
    // Two that don't fit: one way out after the other.
    let said = kitchen.say("Rosa", "/plan add kale, oven 45 min 375, yams, oven 45 min 375");
    assert!(said.contains("kale is one too many") && said.contains("“yams” isn’t on the plan yet"), "{said}");
}

#[test]
fn of_two_birds_a_dish_s_name_picks_its_dinner() {
    let two = || {
        let mut kitchen = dinner(RoomKind::Group, "en-US");
        kitchen.say("Lena", "/plan 6 lb fresh duck, dinner Thursday 5 pm, 4 people, smoker at 325");
        kitchen.press("Lena", "One more bird");
        kitchen.say("Lena", "/plan add rolls in the smoker 20 min at 325");
        kitchen
    };
    for said in ["/take rolls", "rolls take 30 min", "who has the rolls?", "when do the rolls go in?"] {
        let mut kitchen = two();
        let heard = kitchen.say("Lena", said);
        assert!(
            heard.contains("Lena's duck") && heard.contains("rolls") && !heard.contains("Which bird"),
            "{said}: {heard}"
        );
    }
    for said in ["/plan remove rolls", "no rolls after all"] {
        let mut kitchen = two();
        let heard = kitchen.say("Lena", said);
        assert!(heard.contains("rolls is off the plan"), "{said}: {heard}");
    }
    // One more of that name is no word of the one that stands.
    let mut kitchen = two();
    let heard = kitchen.say("Rosa", "/plan add rolls in the oven 20 min at 375");
    assert!(heard.contains("Added: rolls"), "{heard}");
}
