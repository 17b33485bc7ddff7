//! Fire and ambulance apart where a country has a number for each: nobody who can't breathe is sent to the fire brigade.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::{Chicago, Sao_Paulo};
use kitchen::Kitchen;

#[test]
fn brazil_has_one_number_for_flames_and_another_for_people() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "pt-BR", Sao_Paulo, "2027-12-24 21:00");
    for (said, call, other) in [
        ("meu tio está engasgado, não consegue respirar", "192", "193"),
        ("reação alérgica, a garganta tá fechando", "192", "193"),
        ("meu pai desmaiou", "192", "193"),
        ("queimei a mão", "192", "193"),
        ("minha tia tá vomitando depois da ceia", "192", "193"),
        ("o forno pegou fogo", "193", "192"),
        ("cheiro de gás na cozinha", "193", "192"),
        ("alarme de monóxido tocando", "193", "192"),
        ("a fritadeira tá transbordando, óleo transbordando", "193", "192"),
    ] {
        let answer = kitchen.say("Lu", said);
        assert!(answer.contains(call) && !answer.contains(other), "{said}: {answer}");
    }
}

#[test]
fn one_number_serves_both_elsewhere() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-25 17:00");
    for said in ["he's choking", "the oven is on fire", "she passed out"] {
        let answer = kitchen.say("Rosa", said);
        assert!(answer.contains("911"), "{said}: {answer}");
    }
}
