//! "I forgot to take it out, it's still in the freezer": the thaw that was taken for begun has not begun, in whatever words.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use carvetime::room::state::JobState;
use carvetime_core::plan::Step;
use chrono_tz::Europe::Berlin;
use kitchen::Kitchen;

/// A frozen bird for the 25th at six in the evening, planned a week ahead; `said` thawing, by one in the house, or taken for it.
fn planned(language: &str, kind: RoomKind, said: bool) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "de-DE", Berlin, "2027-12-18 18:30");
    kitchen.say("Jonas", "/plan gefrorene pute 5,5 kg, haben wir, essen am 25. um 18 uhr, 10 leute, ofen 180");
    kitchen.press("Jonas", "Annehmen");
    if said {
        kitchen.run_to("2027-12-21 20:00");
        kitchen.say("Jonas", "sie liegt im kühlschrank zum auftauen");
    }
    kitchen.run_to("2027-12-24 09:00");
    kitchen.scene.room.taste.language = Some(language.to_owned());
    for person in kitchen.scene.people.values_mut() {
        person.taste.language = Some(language.to_owned());
    }
    kitchen
}

/// Whether the thaw begins anew, with a bird frozen through.
fn begins_anew(kitchen: &Kitchen) -> bool {
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let thaw = plan.job(Step::Thaw, 0);
    let roasts = plan.wish.thawing.as_deref() == Some("cook-frozen");
    plan.wish.condition.as_deref() == Some("frozen")
        && (roasts || thaw.is_some_and(|thaw| thaw.state == JobState::Waiting && thaw.at >= kitchen.now))
}

#[test]
fn what_nobody_has_said_thaws_and_is_still_in_the_freezer_begins_anew() {
    let mut wrong = Vec::new();
    for (language, words) in [
        ("de-DE", "ich hab vergessen sie rauszuholen!!! sie ist noch in der truhe"),
        ("de-DE", "ich hab vergessen sie rauszuholen"),
        ("de-DE", "sie ist noch in der truhe"),
        ("de-DE", "die pute ist noch tiefgefroren"),
        ("de-DE", "ich hab vergessen sie aus der truhe zu holen"),
        ("de-DE", "die pute ist ein eisklotz"),
        ("de-DE", "hab vergessen sie rauszuholen, sie ist noch gefroren"),
        ("de-DE", "liegt noch im gefrierfach"),
        ("de-DE", "mist, sie liegt noch in der gefriertruhe"),
        ("en-US", "it's still in the freezer"),
        ("en-US", "I forgot to take it out"),
        ("en-US", "crap, we forgot to take the turkey out of the freezer"),
        ("en-US", "it's a block of ice"),
        ("es-ES", "se me olvidó sacarlo del congelador"),
        ("es-ES", "olvidé sacarlo del congelador"),
        ("es-ES", "el pavo sigue en el congelador"),
        ("es-ES", "se me olvidó sacarlo"),
        ("es-ES", "es un bloque de hielo"),
        ("fr-FR", "j'ai oublié de la sortir du congélateur"),
        ("fr-FR", "j'ai oublié de la sortir"),
        ("fr-FR", "elle est encore au congélo"),
        ("fr-FR", "la dinde est toujours au congélateur"),
        ("fr-FR", "c'est un bloc de glace"),
        ("it-IT", "mi sono dimenticato di tirarlo fuori dal freezer"),
        ("it-IT", "è ancora nel freezer"),
        ("it-IT", "è un blocco di ghiaccio"),
        ("pt-BR", "esqueci de tirar do freezer"),
        ("pt-BR", "o peru ainda está no freezer"),
        ("pt-BR", "é um bloco de gelo"),
    ] {
        let mut kitchen = planned(language, RoomKind::Private, false);
        let said = kitchen.say("Jonas", words);
        if !begins_anew(&kitchen) {
            wrong.push(format!("{language}: {words}: {said}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn to_the_others_it_counts_as_well() {
    for words in ["ich hab vergessen sie rauszuholen, sie ist noch in der truhe", "die pute ist noch tiefgefroren"] {
        let mut kitchen = planned("de-DE", RoomKind::Group, false);
        assert!(kitchen.among("Sabine", words) > 0, "{words}");
        assert!(begins_anew(&kitchen), "{words}");
    }
}

#[test]
fn what_was_said_to_thaw_has_thawed_for_as_long() {
    for words in ["die pute ist ein eisklotz", "sie ist innen noch gefroren"] {
        let mut kitchen = planned("de-DE", RoomKind::Private, true);
        kitchen.say("Jonas", words);
        let plan = kitchen.scene.room.plan.as_ref().unwrap();
        assert_ne!(plan.wish.thawing.as_deref(), Some("cook-frozen"), "{words}");
    }
    let mut kitchen = planned("de-DE", RoomKind::Private, true);
    kitchen.say("Jonas", "sie ist noch in der truhe");
    assert!(begins_anew(&kitchen), "whoever looked knows better");
}
