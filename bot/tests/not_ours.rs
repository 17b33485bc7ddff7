//! Numbers and hours said among people that are of no bird here: scores, blood pressure, another kitchen, a car.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn family(language: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 18:00");
    kitchen.say("Ann", "/plan 14 lb fresh turkey, we have it, no salt, dinner tomorrow 4 pm, 9 people, oven at 325");
    kitchen.press("Ann", "Accept");
    kitchen.say("Mike", "/board");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    kitchen
}

fn cooking(language: &str) -> Kitchen {
    let mut kitchen = family(language);
    kitchen.run_to("2027-11-25 10:40");
    kitchen.say("Ann", "/done on");
    kitchen.run_to("2027-11-25 12:30");
    kitchen.say("Ann", "/log 110/125");
    kitchen
}

#[test]
fn the_evening_before_no_bird_goes_on_by_a_word_of_the_road() {
    for text in ["we pulled in at 5", "pulled in around 6"] {
        let mut kitchen = family("en-US");
        kitchen.run_to("2027-11-24 18:20");
        kitchen.among("Mike", text);
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().on_since(kitchen.now), None, "{text}");
    }
}

#[test]
fn scores_blood_pressure_and_other_kitchens_are_no_readings() {
    for (language, text) in [
        ("en-US", "141-138"),
        ("en-US", "17-14"),
        ("en-US", "102/98"),
        ("en-US", "mine is 142 over 90"),
        ("en-US", "my blood pressure was 142 over 90"),
        ("en-US", "bob says breast 155 thigh 165 at his place"),
        ("en-US", "my sister texted: breast 161 thigh 170, she's winning"),
        ("de", "bei ihr Brust 68 Keule 74"),
        ("es", "en su casa pechuga 68, muslo 74"),
        ("fr", "chez elle blanc 68, cuisse 74"),
        ("it", "a casa sua petto 68, coscia 74"),
        ("pt", "na casa dela peito 68, coxa 74"),
    ] {
        let mut kitchen = cooking(language);
        let before = kitchen.scene.room.plan.as_ref().unwrap().readings.len();
        kitchen.among("Mike", text);
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().readings.len(), before, "{language}: {text}");
    }
}

#[test]
fn ours_are_read_all_the_same() {
    for text in ["125/138", "breast 125 thigh 138", "thermometer says breast 125"] {
        let mut kitchen = cooking("en-US");
        let before = kitchen.scene.room.plan.as_ref().unwrap().readings.len();
        kitchen.among("Ann", text);
        assert_eq!(kitchen.scene.room.plan.as_ref().unwrap().readings.len(), before + 1, "{text}");
    }
}
