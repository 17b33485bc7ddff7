//! Ice in the middle, warm water, and a bird that came out of cold water: told among people, asked in the same breath.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::ask::{Asker, ask};
use carvetime::room::RoomKind;
use chrono_tz::Europe::Paris;
use kitchen::Kitchen;

/// Frozen, bought, and in the fridge to thaw since Saturday; dinner is on Friday the 24th at half past eight.
fn thawing(tag: &str) -> Kitchen {
    let (plan, accept, begun) = match tag {
        "en-GB" => (
            "/plan frozen turkey 4.2 kg, we have it, dinner on December 24 at 8:30 pm, 6 people, fan oven, no salt",
            "Accept",
            "it's in the fridge thawing",
        ),
        "de-DE" => (
            "/plan gefrorene Pute 4,2 kg, haben wir schon, Essen am 24. Dezember um 20:30 Uhr, 6 Personen, Umluft, kein Salz",
            "Annehmen",
            "sie taut im Kühlschrank auf",
        ),
        "es-ES" => (
            "/plan pavo congelado de 4,2 kg, ya lo tengo, cena el 24 de diciembre a las 20:30, 6 personas, horno con ventilador, sin sal",
            "Aceptar",
            "está descongelándose en la nevera",
        ),
        "it-IT" => (
            "/plan tacchino congelato 4,2 kg, ce l'abbiamo, cena il 24 dicembre alle 20:30, 6 persone, forno ventilato, senza sale",
            "Accetta",
            "sta scongelando in frigo",
        ),
        "pt-BR" => (
            "/plan peru congelado de 4,2 kg, já temos, ceia dia 24 de dezembro às 20:30, 6 pessoas, forno com ventilador, sem sal",
            "Aceitar",
            "está descongelando na geladeira",
        ),
        _ => (
            "/plan dinde surgelée de 4,2 kg, je l'ai déjà, repas le 24 décembre à 20h30, 6 personnes, four à chaleur tournante, sans sel",
            "Accepter",
            "elle décongèle au frigo",
        ),
    };
    let mut kitchen = Kitchen::new(RoomKind::Group, tag, Paris, "2027-12-20 18:00");
    kitchen.say("Ana", plan);
    kitchen.press("Ana", accept);
    kitchen.run_to("2027-12-21 12:50");
    kitchen.say("Ana", begun);
    kitchen.run_to("2027-12-24 08:00");
    kitchen
}

#[test]
fn ice_is_heard_with_a_question_behind_it_and_however_little_it_is() {
    for (tag, texts) in [
        ("fr-FR", ["elle est encore dure au milieu, c'est grave ?", "toujours un peu glacée dedans"]),
        ("en-GB", ["it's still hard in the middle, is that bad?", "still a bit icy inside"]),
        ("de-DE", ["sie ist in der Mitte noch hart, ist das schlimm?", "innen noch etwas gefroren"]),
        ("es-ES", ["sigue duro por dentro, ¿es grave?", "todavía un poco congelado por dentro"]),
        ("it-IT", ["è ancora duro dentro, è grave?", "ancora un po' congelato dentro"]),
        ("pt-BR", ["ainda está duro no meio, é grave?", "ainda um pouco congelado por dentro"]),
    ] {
        for text in texts {
            let mut kitchen = thawing(tag);
            let (ids, said) = kitchen.ids("Ben", text, false);
            let first = ids.first().map(String::as_str).unwrap_or_default();
            assert!(first == "room-ice" || first == "room-ice-now", "{tag}: {text}: {said}");
        }
    }
}

#[test]
fn warm_water_is_refused_whoever_asks_or_says_so() {
    for (tag, texts) in [
        ("fr-FR", ["je la mets dans l'eau tiede ?", "on la met dans l'eau chaude, ca ira plus vite"]),
        ("en-GB", ["shall I put it in warm water?", "we'll put it in hot water, it's quicker"]),
        ("de-DE", ["soll ich sie in warmes Wasser legen?", "wir legen sie in heißes Wasser, das geht schneller"]),
        ("es-ES", ["¿lo meto en agua tibia?", "lo metemos en agua caliente, va más rápido"]),
        ("it-IT", ["lo metto in acqua tiepida?", "lo mettiamo nell'acqua calda, fa prima"]),
        ("pt-BR", ["coloco na água morna?", "a gente coloca em água quente, é mais rápido"]),
    ] {
        for text in texts {
            let mut kitchen = thawing(tag);
            let (ids, said) = kitchen.ids("Ben", text, false);
            assert_eq!(ids, ["ask-counter-thaw"], "{tag}: {text}: {said}");
        }
    }
    let mut kitchen = thawing("fr-FR");
    for text in ["il n'y a plus d'eau chaude", "lave les verres à l'eau chaude", "on fait couler un bain ?"] {
        assert_eq!(kitchen.among("Ben", text), 0, "{text}");
    }
    let answer = ask("je la mets dans l'eau tiède ?", &Asker::new("fr-FR", Paris, kitchen.now)).unwrap();
    assert_eq!(answer.texts[0].id, "ask-counter-thaw");
}

#[test]
fn moved_from_the_fridge_into_water_its_changes_are_called_and_out_of_it_it_is_cooked() {
    for (tag, water, thawed) in [
        ("fr-FR", "elle est dans l'eau froide", "c'est bon elle est décongelée"),
        ("en-GB", "it's in cold water now", "it's thawed"),
        ("de-DE", "sie liegt in kaltem Wasser", "sie ist aufgetaut"),
        ("es-ES", "está en agua fría", "ya está descongelado"),
        ("it-IT", "è in acqua fredda", "è scongelato"),
        ("pt-BR", "está na água fria", "já descongelou"),
    ] {
        let mut kitchen = thawing(tag);
        kitchen.run_to("2027-12-24 08:10");
        let (ids, said) = kitchen.ids("Ana", water, false);
        assert!(!ids.contains(&"room-ok".to_owned()), "{tag}: {said}");
        let from = kitchen.said.len();
        kitchen.run_to("2027-12-24 10:30");
        let calls =
            kitchen.said[from..].iter().filter(|say| say.key.as_deref().is_some_and(|key| key.contains("water")));
        assert!(calls.count() >= 1, "{tag}: nobody is called to change the water");
        let (ids, said) = kitchen.ids("Ana", thawed, false);
        assert_eq!(ids.first().map(String::as_str), Some("room-thawed-water"), "{tag}: {said}");
    }
}
