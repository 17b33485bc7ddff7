//! What a family says of its bird, its shopping and its oven through a whole week, and was not heard or heard wrong.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::America::New_York;
use kitchen::Kitchen;

/// A bird planned for Thursday by Priya in a group with Dan, the clock at `at`.
fn planned(at: &str, wish: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(RoomKind::Group, "en-US", New_York, at);
    kitchen.say("Priya", &format!("/plan {wish}"));
    kitchen.press("Priya", "Accept");
    kitchen.say("Dan", "/board");
    kitchen
}

fn waits(kitchen: &Kitchen, step: Step) -> bool {
    let job = kitchen.scene.room.plan.as_ref().unwrap().job(step, 0).unwrap();
    job.state == JobState::Waiting
}

/// What was said of all that came from `before` on.
fn since(kitchen: &Kitchen, before: usize) -> Vec<String> {
    kitchen.said[before..].iter().flat_map(|say| &say.text).map(|text| text.id.to_string()).collect()
}

fn kind(tag: &str, text: &str) -> String {
    let now = "2027-11-24T18:00:00Z".parse().unwrap();
    ask(text, &Asker::new(tag, New_York, now)).map_or_else(|_| "unread".into(), |answer| answer.kind.into())
}

// ---- a question marks nothing done

#[test]
fn a_balcony_asked_for_is_answered_and_dries_no_bird() {
    for words in [
        "can the turkey go on the balcony? its 38 out",
        "can the turkey go on the balcony",
        "can the turkey go on the balcony its 38 out",
        "is it ok to keep the turkey in the garage",
    ] {
        let mut kitchen =
            planned("2027-11-24 18:30", "13 lb fresh turkey, we have it, 12 people, thursday 5pm, oven, no salt");
        kitchen.run_to("2027-11-24 19:10");
        let before = kitchen.said.len();
        kitchen.among("Priya", words);
        assert_eq!(since(&kitchen, before), ["ask-cold-place"], "{words}");
        assert!(waits(&kitchen, Step::Temper), "{words}");
    }
}

#[test]
fn a_cold_place_asked_for_is_answered_in_every_language() {
    for (tag, text) in [
        ("en-US", "could it go on the porch? it's 3 C outside"),
        ("en-US", "can i keep the leftovers in the garage overnight"),
        ("es-ES", "¿puedo dejar el pavo en el balcón?"),
        ("es-MX", "puede el pavo quedarse en la terraza"),
        ("fr-FR", "est-ce que la dinde peut aller sur le balcon ?"),
        ("de-DE", "kann die Pute auf den Balkon?"),
        ("de-DE", "darf der Puter in die Garage"),
        ("pt-BR", "posso deixar o peru na varanda?"),
        ("it-IT", "posso lasciare il tacchino sul balcone?"),
    ] {
        assert_eq!(kind(tag, text), "cold-place", "{tag}: {text}");
    }
    for (tag, text) in [
        ("en-US", "can I use the smoker on the porch"),
        ("en-US", "can i still eat it, the turkey was left on the porch overnight"),
        ("en-US", "can i put the chairs on the balcony"),
    ] {
        assert_ne!(kind(tag, text), "cold-place", "{tag}: {text}");
    }
}
