//! Readings as they are typed at the probe, and the ones put right a moment later.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Ground, read_log};
use carvetime::room::RoomKind;
use carvetime::room::state::StoredReading;
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

fn planned(plan: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-25 08:00");
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 11:30");
    kitchen
}

const PLAN: &str = "/plan 14 lb fresh turkey, we have it, no salt, oven at 325, dinner today 5 pm, 11 people";

/// On since noon.
fn cooking() -> Kitchen {
    let mut kitchen = planned(PLAN);
    kitchen.run_to("2027-11-25 12:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 13:45");
    kitchen
}

/// Breast, thigh and wing of what counts last, °F, and how many readings count.
fn last(kitchen: &Kitchen) -> ([Option<i64>; 3], usize) {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let counted = plan.counted();
    let read = |reading: &StoredReading| [reading.breast_c, reading.thigh_c, reading.wing_c];
    let told = counted.last().map_or([None; 3], |reading| read(reading));
    (told.map(|spot| spot.map(|c| (c * 1.8 + 32.0).round() as i64)), counted.len())
}

#[test]
fn initials_are_readings_and_no_spoons() {
    let mut kitchen = cooking();
    let said = kitchen.say("Rosa", "b 118 t 136 wing 130");
    assert_eq!(last(&kitchen), ([Some(118), Some(136), Some(130)], 1), "{said}");
    let said = kitchen.say("Rosa", "back up to 280. br 119");
    assert!(said.contains("breast 119 °F and oven 280 °F"), "{said}");
}

#[test]
fn a_slip_put_right_takes_the_place_of_what_was_told() {
    for right in
        ["oops 120", "120 lol", "no 120", "120 i mean", "sorry, breast 120", "*120", "120, not 112", "oops, b 120"]
    {
        let mut kitchen = cooking();
        kitchen.say("Rosa", "breast 112, thigh 136");
        kitchen.run_to("2027-11-25 13:50");
        let said = kitchen.say("Rosa", right);
        assert_eq!(last(&kitchen), ([Some(120), Some(136), None], 1), "{right}: {said}");
    }
    let slips = [
        ("es-ES", "perdón, 49"),
        ("es-ES", "quise decir 49"),
        ("fr-FR", "oups 49"),
        ("fr-FR", "non, 49"),
        ("de-DE", "ups, 49"),
        ("de-DE", "49 meinte ich"),
        ("pt-BR", "ops, 49"),
        ("pt-BR", "49, quis dizer"),
        ("it-IT", "scusa, 49"),
        ("it-IT", "volevo dire 49"),
    ];
    for (locale, right) in slips {
        let mut kitchen = cooking();
        kitchen.say("Rosa", "breast 112, thigh 136");
        kitchen.scene.room.taste.language = Some(locale.into());
        let said = kitchen.say("Rosa", right);
        assert_eq!(last(&kitchen), ([Some(120), Some(136), None], 1), "{right}: {said}");
    }
}

#[test]
fn a_number_long_after_or_between_two_spots_puts_nothing_right() {
    let mut kitchen = cooking();
    kitchen.say("Rosa", "breast 112, thigh 136");
    kitchen.say("Rosa", "oops 124");
    assert_eq!(last(&kitchen).0, [Some(112), Some(136), None], "as near to one as to the other");
    kitchen.run_to("2027-11-25 14:10");
    kitchen.say("Rosa", "oops 114");
    assert_eq!(last(&kitchen).0, [Some(112), Some(136), None], "told long ago");
}

#[test]
fn an_hour_for_dinner_puts_no_reading_right() {
    let mut kitchen = cooking();
    kitchen.say("Rosa", "breast 52, thigh 66");
    kitchen.say("Rosa", "make it 6");
    assert_eq!(last(&kitchen), ([Some(52), Some(66), None], 1));
}

#[test]
fn an_oven_said_to_be_on_with_its_number_is_no_reading() {
    let mut kitchen = planned(PLAN);
    let said = kitchen.say("Rosa", "ovens on, 325 right");
    assert!(said.contains("Heat is on") && said.contains("The plan has 325 °F"), "{said}");
    assert_eq!(last(&kitchen).1, 0);
}

#[test]
fn a_stuffed_bird_is_not_done_before_its_stuffing_was_read() {
    let mut kitchen =
        planned("/plan 14 lb fresh turkey, stuffed, we have it, no salt, oven at 325, dinner today 5 pm, 11 people");
    kitchen.run_to("2027-11-25 12:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 15:50");
    let said = kitchen.say("Rosa", "168 everywhere");
    assert!(said.contains("middle of the stuffing") && !said.contains("off it comes"), "{said}");
}

#[test]
fn everywhere_but_in_the_stuffing_is_read_as_said() {
    for (tag, text) in [
        ("fr-FR", "74,5 partout sauf la farce 69"),
        ("fr-FR", "partout 74,5 sauf la farce 69"),
        ("en-GB", "74.5 everywhere except the stuffing 69"),
        ("de-DE", "überall 74,5 außer in der Füllung 69"),
        ("es-ES", "74,5 en todas partes menos el relleno 69"),
        ("it-IT", "74,5 ovunque tranne il ripieno 69"),
        ("pt-BR", "74,5 em toda parte menos o recheio 69"),
    ] {
        let ground = Ground::new(tag, true, chrono_tz::Europe::Paris, "2027-12-24T18:40:00Z".parse().unwrap());
        let log = read_log(text, &ground).unwrap_or_else(|problem| panic!("{tag}: {text}: {problem:?}"));
        let log = log.unwrap_or_else(|| panic!("{tag}: {text}: nothing read"));
        let read: Vec<_> = log.readings.iter().map(|reading| (reading.place.unwrap().name(), reading.value)).collect();
        assert_eq!(read, [("breast", 74.5), ("thigh", 74.5), ("wing", 74.5), ("stuffing", 69.0)], "{tag}: {text}");
    }
}
