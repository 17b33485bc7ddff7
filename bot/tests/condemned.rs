//! What stood out too long stays thrown away, whatever is asked of it days later and for whom.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use kitchen::{Kitchen, over_heat};

/// Off the heat at five, eaten at six, in the fridge at half past eight: too late.
fn put_away_late(tag: &str) -> Kitchen {
    let (read, out, away) = match tag {
        "es-ES" => ("pechuga 76, muslo 81, ala 77", "lo saqué del horno", "las sobras están en la nevera"),
        "fr-FR" => ("blanc 76, cuisse 81, aile 77", "je l'ai sortie du four", "les restes sont au frigo"),
        "de-DE" => ("Brust 76, Keule 81, Flügel 77", "habe sie aus dem Ofen genommen", "die Reste sind im Kühlschrank"),
        "pt-BR" => ("peito 76, coxa 81, asa 77", "tirei do forno", "as sobras estão na geladeira"),
        "it-IT" => ("petto 76, coscia 81, ala 77", "l'ho tolto dal forno", "gli avanzi sono in frigo"),
        _ => ("breast 168, thigh 178, wing 170", "took it out", "leftovers are in the fridge"),
    };
    let mut kitchen = over_heat(RoomKind::Group, tag);
    kitchen.run_to("2027-11-25 17:00");
    kitchen.say("Ana", read);
    kitchen.say("Ana", out);
    kitchen.run_to("2027-11-25 20:30");
    let said = kitchen.say("Ana", away);
    assert!(kitchen.said.iter().any(|say| say.text.iter().any(|text| text.id == "room-chill-ended")), "{tag}: {said}");
    kitchen
}

#[test]
fn asked_how_to_warm_it_for_whom_and_until_when_it_is_thrown_away() {
    for (tag, texts) in [
        (
            "fr-FR",
            [
                "les restes de dinde on les réchauffe comment, pour le petit et la cousine enceinte ?",
                "on peut donner de la dinde froide au bébé ?",
                "on a encore de la dinde, elle est bonne jusqu'à quand ?",
                "l'assiette de Julie est dehors depuis 18h, elle peut manger ?",
            ],
        ),
        (
            "en-US",
            [
                "how do we reheat the leftovers for my pregnant cousin?",
                "can the baby have some cold turkey?",
                "we still have turkey, it's good until when?",
                "Julie's plate has been out since 6 pm, can she eat it?",
            ],
        ),
        (
            "de-DE",
            [
                "wie wärmen wir die Reste auf, für die schwangere Cousine?",
                "darf das Baby kalte Pute essen?",
                "die Pute ist bis wann haltbar?",
                "Julias Teller steht seit 18 Uhr draußen, kann sie das essen?",
            ],
        ),
        (
            "es-ES",
            [
                "¿cómo recalentamos las sobras para la prima embarazada?",
                "¿puedo dar pavo frío al bebé?",
                "el pavo, ¿hasta cuándo se puede comer?",
                "el plato de Julia está fuera desde las 18h, ¿puede comerlo?",
            ],
        ),
        (
            "it-IT",
            [
                "come riscaldiamo gli avanzi per la cugina incinta?",
                "posso dare il tacchino freddo al bebè?",
                "il tacchino fino a quando si può mangiare?",
                "il piatto di Giulia è fuori dalle 18, può mangiarlo?",
            ],
        ),
        (
            "pt-BR",
            [
                "como a gente reaquece as sobras para a prima grávida?",
                "posso dar peru frio para o bebê?",
                "o peru, até quando dá pra comer?",
                "o prato da Júlia está fora desde as 18h, ela pode comer?",
            ],
        ),
    ] {
        let mut kitchen = put_away_late(tag);
        kitchen.run_to("2027-11-25 21:00");
        let [warm, baby, until, plate] = texts;
        let (ids, said) = kitchen.ids("Ben", plate, false);
        assert_eq!(ids.first().map(String::as_str), Some("cook-gone"), "{tag}: {plate}: {said}");
        kitchen.run_to("2027-11-26 19:00");
        for text in [warm, baby, until] {
            let (ids, said) = kitchen.ids("Ben", text, false);
            assert_eq!(ids.first().map(String::as_str), Some("cook-gone"), "{tag}: {text}: {said}");
        }
        // What goes beside it has its own rule.
        let (ids, _) = kitchen.ids("Ben", "foie gras ?", false);
        assert!(!ids.contains(&"cook-gone".to_owned()), "{tag}");
    }
}

#[test]
fn over_and_not_put_away_yet_the_rest_is_told_so_and_days_later_its_last_day() {
    let mut kitchen = over_heat(RoomKind::Group, "fr-FR");
    kitchen.run_to("2027-11-25 17:00");
    kitchen.say("Ana", "blanc 76, cuisse 81, aile 77");
    kitchen.say("Ana", "je l'ai sortie du four");
    kitchen.run_to("2027-11-25 19:20");
    let asked = "on a fini, on met la farce et la dinde au frigo, on peut la laisser dedans ?";
    let (ids, said) = kitchen.ids("Ana", asked, false);
    assert_eq!(ids, ["room-limit-chill"], "{said}");
    kitchen.run_to("2027-11-27 12:30");
    let (ids, said) = kitchen.ids("Ana", "la dinde est encore bonne ?", false);
    assert_eq!(ids, ["room-leftovers-until", "room-leftovers-if"], "{said}");
}
