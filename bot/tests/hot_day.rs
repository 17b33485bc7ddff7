//! A day above 90 °F: an hour out, not two, once somebody has said how hot it is, in any language; and what is no weather.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use chrono_tz::America::Sao_Paulo;
use kitchen::Kitchen;

/// A fresh bird for the 24th at half past ten, on at 18:30.
fn planned(tag: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, Sao_Paulo, "2026-12-23 09:00");
    kitchen.say("Lu", "/plan 5 kg fresh turkey, we have it, dinner Thursday 10:30 pm, 6 people, oven at 170 C");
    kitchen.press("Lu", "Accept");
    kitchen.run_to("2026-12-24 18:30");
    kitchen.say("Lu", "bird is on");
    kitchen
}

fn off(tag: &str) -> Kitchen {
    let mut kitchen = planned(tag);
    kitchen.run_to("2026-12-24 21:30");
    kitchen.say("Lu", "breast 168F thigh 176F wing 175F");
    kitchen.say("Lu", "it's off");
    kitchen
}

fn among(kitchen: &mut Kitchen, text: &str) -> String {
    kitchen.hear(Some("Lu"), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

#[test]
fn off_the_heat_the_hour_is_told_and_called() {
    let mut kitchen = off("en-US");
    let heard = among(&mut kitchen, "its 95 degrees out here");
    assert!(heard.contains("one hour, not two") && heard.contains("10:30 PM"), "{heard}");
    let heard = kitchen.say("Lu", "how long can it stay out now? its been out for half an hour");
    assert!(!heard.contains("11:30"), "{heard}");
    let called = kitchen.run_to("2026-12-24 22:45");
    assert!(called.contains("The hour is over"), "{called}");
}

#[test]
fn without_a_word_two_hours_count() {
    let mut kitchen = off("en-US");
    let called = kitchen.run_to("2026-12-24 22:45");
    assert!(!called.contains("is over") && !called.contains("are over"), "{called}");
}

#[test]
fn before_it_is_off_it_is_kept_in_mind() {
    let mut kitchen = planned("en-US");
    let heard = among(&mut kitchen, "it's 98 in the kitchen");
    assert!(heard.contains("one hour"), "{heard}");
    assert!(kitchen.scene.room.plan.as_ref().unwrap().hot_day);
    assert!(kitchen.scene.room.plan.as_ref().unwrap().readings.is_empty());
}

#[test]
fn in_every_language() {
    for (tag, text) in [
        ("es-ES", "hay 36 grados en la cocina"),
        ("fr-FR", "il fait 35 degrés ici"),
        ("de-DE", "hier sind 34 grad"),
        ("pt-BR", "ta 34 graus la fora"),
        ("pt-BR", "aqui ta 34 graus"),
        ("it-IT", "qui ci sono 35 gradi"),
    ] {
        let mut kitchen = planned("en-US");
        kitchen.scene.room.taste.language = Some(tag.to_owned());
        kitchen.scene.room.taste.us_units = Some(false);
        among(&mut kitchen, text);
        assert!(kitchen.scene.room.plan.as_ref().unwrap().hot_day, "{tag} {text}");
    }
}

#[test]
fn neither_a_mild_day_nor_meat_nor_an_oven_is_a_hot_day() {
    for text in
        ["it's 75 in the kitchen", "breast 95", "the oven is at 100 in here", "we are 98 people here", "bus 95 is here"]
    {
        let mut kitchen = planned("en-US");
        among(&mut kitchen, text);
        assert!(!kitchen.scene.room.plan.as_ref().unwrap().hot_day, "{text}");
    }
}
