//! Questions in the middle of planning: answered as questions, and the plan being made stays as it was.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::Wish;
use carvetime::room::{RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

/// Locale and what is planned; fan or not, hot water, microwave; what each is answered with.
type Told = ([&'static str; 2], [&'static str; 3], [&'static str; 3]);

const TOLD: [Told; 6] = [
    (
        ["en-US", "turkey 14 lb frozen, dinner thursday 4 pm"],
        ["convection or regular bake?", "i can do hot water right?", "microwave it?"],
        ["Either works", "nor in warm water", "only if it fits"],
    ),
    (
        ["de-DE", "truthahn 6,5 kg gefroren, donnerstag 16 uhr"],
        ["umluft oder ober-unterhitze?", "heißes wasser geht doch oder?", "in die mikrowelle?"],
        ["Beides geht", "nicht in warmem Wasser", "Auftauen nur, wenn"],
    ),
    (
        ["es-ES", "pavo 6,5 kg congelado, cena jueves 16:00"],
        ["¿convección o normal?", "con agua caliente se puede, no?", "¿al microondas?"],
        ["Valen los dos", "ni en agua tibia", "solo si cabe"],
    ),
    (
        ["fr-FR", "dinde 6,5 kg congelée, dîner jeudi 16 h"],
        ["chaleur tournante ou normal ?", "l'eau chaude ça va ?", "au micro-ondes ?"],
        ["Les deux conviennent", "ni dans l’eau tiède", "seulement si elle y tient"],
    ),
    (
        ["it-IT", "tacchino 6,5 kg congelato, cena giovedì ore 16"],
        ["ventilato o statico?", "posso con acqua calda, no?", "al microonde?"],
        ["Vanno bene tutti e due", "né in acqua calda", "solo se ci sta"],
    ),
    (
        ["pt-BR", "peru 6,5 kg congelado, jantar quinta 16h"],
        ["convecção ou normal?", "posso usar água quente, né?", "no micro-ondas?"],
        ["Os dois servem", "nem em água morna", "só se couber"],
    ),
];

fn drafted(kitchen: &Kitchen) -> Wish {
    kitchen.scene.room.drafts.values().next().unwrap().wish.clone()
}

#[test]
fn fan_hot_water_and_microwave_are_questions_to_the_one_who_plans() {
    for ([locale, plan], asked, said) in TOLD {
        for kind in [RoomKind::Private, RoomKind::Group] {
            let mut kitchen = Kitchen::new(kind, locale, Chicago, "2027-11-23 09:00");
            kitchen.say("Rosa", &format!("/plan {plan}"));
            let before = drafted(&kitchen);
            for (words, expected) in asked.into_iter().zip(said) {
                let answer = kitchen.say("Rosa", words);
                assert!(answer.contains(expected), "{locale}, {words}: {answer}");
                assert_eq!(drafted(&kitchen), before, "{locale}, {words}");
            }
        }
    }
}

#[test]
fn nobody_is_warned_of_water_and_a_microwave_that_have_nothing_to_do_with_the_bird() {
    let mut group = Kitchen::new(RoomKind::Group, "en-US", Chicago, "2027-11-23 09:00");
    group.say("Rosa", "/plan turkey 14 lb frozen, dinner thursday 4 pm, oven");
    for words in ["we have no hot water at the house", "is your microwave any good?", "do you have hot water?"] {
        let what = What::Said { text: words.into(), addressed: false, reply_to: None, edited: false };
        assert_eq!(group.hear(Some("Ben"), what), "", "{words}");
    }
    // Bought fresh there is nothing to thaw.
    let mut fresh = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-23 09:00");
    fresh.say("Rosa", "turkey 14 lb fresh, dinner thursday 4 pm");
    let said = fresh.say("Rosa", "microwave it?");
    assert!(!said.contains("To thaw it"), "{said}");
}
