//! A bird carried hot that is put into the oven of the other house: in time, readings decide; too late, nothing makes it food again.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{How, RoomKind};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const HOT: &str = "/plan fresh 14 lb turkey, we have it, oven at 325, no salt, carry it hot to my sister's, 30 minutes away, \
                   dinner Thursday 6 pm, 9 people";

/// Off the heat at half past three, at the other house by the given hour; what the group hears is in that language.
fn arrived(tag: &str, at: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", HOT);
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 12:00");
    kitchen.say("Rosa", "bird is on");
    kitchen.run_to("2027-11-25 15:29");
    kitchen.say("Rosa", "breast 168, thigh 177, wing 170");
    kitchen.run_to("2027-11-25 15:30");
    kitchen.say("Rosa", "pulled it");
    kitchen.run_to("2027-11-25 16:40");
    kitchen.say("Rosa", "packed it");
    kitchen.say("Rosa", "we are on our way");
    kitchen.scene.room.taste.language = Some(tag.into());
    kitchen.run_to(at);
    kitchen
}

/// Words said to everyone, and what they are answered with.
fn among(kitchen: &mut Kitchen, text: &str) -> Vec<String> {
    let before = kitchen.said.len();
    kitchen.among("Rosa", text);
    let new = kitchen.said[before..].iter().filter(|say| say.how == How::New);
    new.flat_map(|say| say.text.iter().map(|text| text.id.to_string())).collect()
}

#[test]
fn in_time_the_clock_stops_and_readings_decide() {
    let mut kitchen = arrived("en-US", "2027-11-25 17:20");
    kitchen.say("Rosa", "breast 136, thigh 138");
    assert_eq!(among(&mut kitchen, "put it in my sister's oven"), ["cook-hot-in"]);
    let quiet = kitchen.run_to("2027-11-25 17:50");
    assert!(!quiet.contains("two hours are over"), "{quiet}");
    assert!(among(&mut kitchen, "158").contains(&"cook-hot-in-more".to_owned()));
    let asked = kitchen.say("Rosa", "do we need to reheat it?");
    assert!(asked.contains("once breast and thigh read 165"), "{asked}");
    kitchen.run_to("2027-11-25 18:05");
    let there = kitchen.say("Rosa", "breast 166, thigh 171");
    assert!(there.contains("165 °F in both: carve it and eat") && there.contains("by 8:05 PM"), "{there}");
    let carved = kitchen.say("Rosa", "carved");
    assert!(!carved.contains("thrown away"), "{carved}");
}

#[test]
fn too_late_it_stays_thrown_away_whatever_it_reads() {
    let mut kitchen = arrived("en-US", "2027-11-25 17:20");
    kitchen.say("Rosa", "breast 136, thigh 138");
    kitchen.run_to("2027-11-25 17:40");
    assert_eq!(among(&mut kitchen, "it's in the oven"), ["cook-hot-too-late"]);
    kitchen.run_to("2027-11-25 18:10");
    let read = kitchen.say("Rosa", "breast 167, thigh 171");
    assert!(read.contains("Heat doesn’t make that safe again") && !read.contains("change"), "{read}");
    let carved = kitchen.say("Rosa", "carved");
    assert!(carved.contains("don’t serve it"), "{carved}");
}

#[test]
fn hot_numbers_after_cold_ones_show_that_it_was_warmed_up() {
    let mut kitchen = arrived("en-US", "2027-11-25 17:10");
    kitchen.say("Rosa", "breast 136, thigh 138");
    kitchen.run_to("2027-11-25 17:25");
    let warm = kitchen.say("Rosa", "breast 149, thigh 151");
    assert!(warm.contains("Not yet: it stays in"), "{warm}");
    kitchen.run_to("2027-11-25 18:00");
    let late = kitchen.say("Rosa", "breast 168, thigh 172");
    assert!(late.contains("Heat doesn’t make that safe again"), "{late}");
}

#[test]
fn a_box_that_kept_it_hot_needs_no_oven() {
    let mut kitchen = arrived("en-US", "2027-11-25 17:15");
    let one = kitchen.say("Rosa", "breast 150");
    assert!(one.contains("That spot is hot enough"), "{one}");
    let asked = kitchen.say("Rosa", "do we need to reheat it?");
    assert!(asked.contains("Breast and thigh at 140 °F or more: no, carve it as it is"), "{asked}");
    kitchen.say("Rosa", "thigh 152");
    let asked = kitchen.say("Rosa", "do we need to reheat it?");
    assert!(asked.contains("No: both read 140 °F or more"), "{asked}");
}

#[test]
fn it_is_heard_in_every_language_and_of_no_plate() {
    for (tag, said, asks, other) in [
        ("en-US", "put it in grandma's oven", "should we warm it up in the oven?", "the plates are in the oven"),
        (
            "es-ES",
            "lo metí en el horno de mi tía",
            "¿hay que recalentarlo en el horno?",
            "los platos están en el horno",
        ),
        ("fr-FR", "je l'ai mise au four de ma tante", "il faut la réchauffer au four ?", "les assiettes sont au four"),
        ("de-DE", "ist bei Tante im Ofen", "müssen wir ihn aufwärmen?", "die Teller sind im Ofen"),
        ("pt-BR", "pus no forno da tia", "precisa esquentar?", "os pratos estão no forno"),
        ("it-IT", "l'ho messo nel forno della zia", "bisogna riscaldarlo in forno?", "i piatti sono in forno"),
    ] {
        let mut kitchen = arrived(tag, "2027-11-25 17:15");
        assert!(among(&mut kitchen, other).is_empty(), "{tag}");
        assert_eq!(among(&mut kitchen, asks), ["cook-hot-needs"], "{tag}");
        assert_eq!(among(&mut kitchen, said), ["cook-hot-in"], "{tag}");
    }
}
