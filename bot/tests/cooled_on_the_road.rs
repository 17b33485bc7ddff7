//! A bird carried hot that has cooled at the other table: said at every reading and to whoever asks, and no reading lengthens its hours.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// Off at 16:24, packed, on the road by 17:05, dinner at six.
fn carried() -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "de-DE", Berlin, "2027-12-23 09:00");
    kitchen.say("Jonas", "/plan frische Pute 5,5 kg, haben wir, Essen Samstag 18 Uhr bei Oma, 15 min Fahrt, wir nehmen sie heiß mit, 10 Leute, Ofen 165");
    kitchen.press("Jonas", "Annehmen");
    for (at, text) in [
        ("2027-12-25 13:22", "ist drin"),
        ("2027-12-25 16:22", "brust 75 keule 79 flügel 77"),
        ("2027-12-25 16:24", "ist raus"),
        ("2027-12-25 16:45", "eingepackt"),
        ("2027-12-25 17:05", "losgefahren"),
    ] {
        kitchen.run_to(at);
        kitchen.say("Jonas", text);
    }
    kitchen
}

fn among(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

#[test]
fn a_cold_reading_is_warned_of_after_the_hour_of_dinner_too() {
    for (at, text, limit) in [
        ("2027-12-25 17:35", "brust 58 keule 57", "18:24"),
        ("2027-12-25 18:05", "brust 52", "18:24"),
        ("2027-12-25 18:12", "58 grad brust noch", "18:24"),
    ] {
        let mut kitchen = carried();
        kitchen.run_to(at);
        let heard = kitchen.say("Jonas", text);
        assert!(heard.contains(limit) && !heard.contains("18:45"), "{at} {text}: {heard}");
    }
    let mut kitchen = carried();
    kitchen.run_to("2027-12-25 18:40");
    let heard = kitchen.say("Jonas", "brust 48 keule 50");
    assert!(heard.contains("weg"), "{heard}");
}

#[test]
fn whoever_asks_whether_it_may_be_eaten_hears_that_its_hours_are_over() {
    for text in ["kann man die noch essen?", "ist die noch gut?", "ist die noch sicher?"] {
        let mut kitchen = carried();
        kitchen.run_to("2027-12-25 19:10");
        kitchen.say("Jonas", "brust 48 keule 50");
        let heard = among(&mut kitchen, "Sabine", text);
        assert!(heard.contains("weg") && !heard.contains("3 bis 4"), "{text}: {heard}");
    }
}

#[test]
fn in_time_it_is_told_until_when() {
    let mut kitchen = carried();
    kitchen.run_to("2027-12-25 17:40");
    let heard = kitchen.say("Sabine", "ist die noch gut?");
    assert!(heard.contains("18:24"), "{heard}");
}
