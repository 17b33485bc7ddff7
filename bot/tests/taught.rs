//! What a message tells people to say is heard when they say it to everyone in the group, in every language.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use carvetime::words::locales;
use chrono_tz::Tz;
use kitchen::{Kitchen, over_heat};
use regex::Regex;

const LANGUAGES: [&str; 6] = ["en-US", "es-ES", "fr-FR", "de-DE", "pt-BR", "it-IT"];

/// The phrases quoted in a message, as they stand in its language's file; those with a variable in them are left out.
fn taught(tag: &str, id: &str) -> Vec<String> {
    let language = tag.split('-').next().unwrap();
    let files = locales::files(language);
    let text = files.iter().find(|(name, _)| *name == "room.ftl").map(|(_, text)| *text).unwrap();
    let message = Regex::new(&format!(r"(?m)^{id} = (.*(?:\n[ }}].*)*)")).unwrap();
    let message = &message.captures(text).unwrap_or_else(|| panic!("{tag}: {id}"))[1];
    let quoted = Regex::new("[“«„]\\s*([^“”«»„{}]+?)\\s*[”»“]").unwrap();
    quoted.captures_iter(message).map(|found| found[1].replace(['\u{a0}', '\u{202f}'], " ")).collect()
}

fn planned(tag: &str, accept: bool) -> Kitchen {
    let (zone, plan, button) = match tag {
        "en-US" => (
            "America/Chicago",
            "/plan fresh 11 lb turkey, we have it, dinner 12/24 6 pm at my aunt's, 30 minutes away, oven at 350, 6 people, no salt",
            "Accept",
        ),
        "es-ES" => (
            "Europe/Madrid",
            "/plan pavo fresco de 5 kg, ya lo tengo, cena el 24/12 a las 20:00 en casa de mi tía, 30 min de viaje, horno a 180, 6 personas, sin sal",
            "Aceptar",
        ),
        "fr-FR" => (
            "Europe/Paris",
            "/plan dinde fraîche de 5 kg, on l'a déjà, repas le 24/12 à 20h chez ma tante, 30 minutes de route, four à 180, 6 personnes, sans sel",
            "Accepter",
        ),
        "de-DE" => (
            "Europe/Berlin",
            "/plan frische Pute 5 kg, haben wir schon, Essen am 24.12. um 20 Uhr bei meiner Tante, 30 Minuten Fahrt, Ofen 180, 6 Personen, ohne Salz",
            "Annehmen",
        ),
        "it-IT" => (
            "Europe/Rome",
            "/plan tacchino fresco 5 kg, ce l'abbiamo, cena il 24/12 alle 20 da mia zia, 30 min di macchina, forno a 180, 6 persone, senza sale",
            "Accetta",
        ),
        _ => (
            "America/Sao_Paulo",
            "/plan peru fresco de 5kg, ja comprei, ceia dia 24/12 as 20h na casa da tia neide, 30 min de carro, forno a 180, 6 pessoas, sem sal",
            "Aceitar",
        ),
    };
    let zone: Tz = zone.parse().unwrap();
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, zone, "2027-12-23 10:00");
    kitchen.say("Lu", plan);
    if accept {
        kitchen.press("Lu", button);
    }
    kitchen
}

#[test]
fn how_it_is_carried_is_heard_of_a_proposal_and_of_a_plan() {
    for tag in LANGUAGES {
        for accept in [false, true] {
            let mut kitchen = planned(tag, accept);
            let hot = taught(tag, "room-proposal-or-hot");
            let (cold, there) = (taught(tag, "room-proposal-hot"), taught(tag, "room-proposal-carry"));
            assert_eq!(hot, taught(tag, "room-proposal-not-hot"), "{tag}");
            for phrase in hot.iter().chain(&cold).chain(&hot).chain(&there) {
                assert!(kitchen.among("Lu", phrase) > 0, "{tag}, accepted {accept}: “{phrase}” does nothing");
            }
            let wish = match accept {
                true => kitchen.scene.room.plan.as_ref().unwrap().wish.clone(),
                false => kitchen.scene.room.drafts.values().next().unwrap().wish.clone(),
            };
            assert_eq!(wish.elsewhere, Some(false), "{tag}, accepted {accept}: {there:?}");
        }
    }
}

/// The phrases of one choice of the short help.
fn of_stage(tag: &str, stage: &str) -> Vec<String> {
    let language = tag.split('-').next().unwrap();
    let files = locales::files(language);
    let text = files.iter().find(|(name, _)| *name == "room.ftl").map(|(_, text)| *text).unwrap();
    let line = text.lines().find(|line| line.trim_start().starts_with(&format!("[{stage}]"))).unwrap();
    let quoted = Regex::new("[“«„]\\s*([^“”«»„{}]+?)\\s*[”»“]").unwrap();
    quoted.captures_iter(line).map(|found| found[1].replace(['\u{a0}', '\u{202f}'], " ")).collect()
}

#[test]
fn what_the_short_help_teaches_is_heard_while_it_cooks() {
    for tag in LANGUAGES {
        // "Done" and "when?" alone may be said of anything among people.
        let of_the_plan = |phrase: &&String| !phrase.contains('?');
        for phrase in of_stage(tag, "ahead").iter().skip(1).chain(&of_stage(tag, "cooking")) {
            if !of_the_plan(&phrase) {
                continue;
            }
            let mut kitchen = over_heat(RoomKind::Group, tag);
            assert!(kitchen.among("Ana", phrase) > 0, "{tag}: “{phrase}” does nothing");
        }
    }
}

#[test]
fn a_dinner_that_was_called_off_comes_back_by_the_words_it_teaches() {
    for tag in LANGUAGES {
        let mut kitchen = planned(tag, true);
        kitchen.say("Lu", "/stop");
        let yes = kitchen.said.iter().rev().flat_map(|say| say.buttons.iter().flatten());
        let data = yes.map(|button| button.data.clone()).find(|data| data.starts_with("yes.")).unwrap();
        kitchen.hear(Some("Lu"), What::Pressed { press: "p".into(), data, on: None });
        assert!(kitchen.scene.room.plan.is_none(), "{tag}");
        let back = taught(tag, "room-stopped-back");
        assert!(kitchen.among("Lu", &back[0]) > 0 && kitchen.scene.room.plan.is_some(), "{tag}: {back:?}");
    }
}

#[test]
fn the_date_on_a_pack_is_heard_where_it_is_asked_for() {
    for tag in LANGUAGES {
        let mut kitchen = planned(tag, false);
        let date = taught(tag, "room-clash-use-by");
        let heard = kitchen.among("Lu", &date[0]);
        let draft = kitchen.scene.room.drafts.values().next().unwrap();
        assert!(
            heard > 0 && draft.wish.use_by.is_some(),
            "{tag}: {date:?} {:?}",
            kitchen.said.last().map(|say| &say.text)
        );
    }
}
