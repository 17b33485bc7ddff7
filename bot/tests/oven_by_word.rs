//! A dial in °C has 165 and 180, not 163 and 177; and an oven may be set by a word.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::RoomKind;
use chrono_tz::America::Chicago;
use chrono_tz::{America, Europe, Tz};
use kitchen::Kitchen;

fn zone(tag: &str) -> Tz {
    match tag {
        "en-US" => Chicago,
        "pt-BR" => America::Sao_Paulo,
        _ => Europe::Berlin,
    }
}

fn proposed(tag: &str, wish: &str) -> String {
    Kitchen::new(RoomKind::Private, tag, zone(tag), "2027-12-20 09:00").say("Rosa", &format!("/plan {wish}"))
}

#[test]
fn an_oven_nobody_sets_gets_a_mark_of_its_dial() {
    let wishes = [
        ("en-US", "12 lb fresh turkey, dinner Saturday 5 pm, 8 people, oven", "325 °F"),
        ("es-ES", "pavo fresco de 5 kg, cena el sábado a las 17, 8 personas, horno", "165 °C"),
        ("fr-FR", "dinde fraîche 5 kg, repas samedi 17 h, 8 personnes, four", "165 °C"),
        ("de-DE", "frische Pute 5 kg, Essen Samstag 17 Uhr, 8 Personen, Umluft", "165 °C"),
        ("pt-BR", "peru fresco de 5 kg, jantar sábado 17h, 8 pessoas, forno", "165 °C"),
        ("it-IT", "tacchino fresco 5 kg, cena sabato alle 17, 8 persone, forno", "165 °C"),
        ("de-DE", "frisches Huhn 1,8 kg, Essen Samstag 17 Uhr, 4 Personen, Ofen", "180 °C"),
        ("en-US", "4 lb fresh chicken, dinner Saturday 5 pm, 4 people, oven", "350 °F"),
    ];
    for (tag, wish, setting) in wishes {
        let said = proposed(tag, wish).replace('\u{a0}', " ");
        assert!(said.lines().next().unwrap().contains(setting), "{tag}: {wish}: {said}");
    }
}

#[test]
fn an_oven_set_by_a_word_has_its_degrees() {
    let wishes = [
        ("en-US", "12 lb fresh turkey, dinner Saturday 5 pm, 8 people, moderate oven", "350 °F"),
        ("es-ES", "pavo fresco de 5 kg, cena el sábado a las 17, 8 personas, horno medio", "180 °C"),
        ("fr-FR", "dinde fraîche 5 kg, repas samedi 17 h, 8 personnes, au four moyen", "180 °C"),
        ("de-DE", "frische Pute 5 kg, Essen Samstag 17 Uhr, 8 Personen, Ofen mittlere Hitze", "180 °C"),
        ("pt-BR", "peru fresco de 5 kg, jantar sábado 17h, 8 pessoas, no forno alto", "220 °C"),
        ("it-IT", "tacchino fresco 5 kg, cena sabato alle 17, 8 persone, forno medio", "180 °C"),
        // A figure says more than the word.
        ("pt-BR", "peru fresco de 5 kg, jantar sábado 17h, 8 pessoas, forno médio 190 graus", "190 °C"),
    ];
    for (tag, wish, setting) in wishes {
        let said = proposed(tag, wish).replace('\u{a0}', " ");
        assert!(said.lines().next().unwrap().contains(setting), "{tag}: {wish}: {said}");
    }
}

#[test]
fn what_such_a_word_means_is_answered() {
    let asked = [
        ("en-US", "what temp is a moderate oven", "350 °F"),
        ("es-ES", "horno fuerte cuántos grados son", "220 °C"),
        ("fr-FR", "four moyen c'est combien de degrés ?", "180 °C"),
        ("de-DE", "wie viel grad ist mittlere hitze", "180 °C"),
        ("pt-BR", "forno médio é quantos graus", "180 °C"),
        ("it-IT", "forno medio quanti gradi?", "180 °C"),
        // Too cool for a bird, whatever it is called.
        ("pt-BR", "forno baixo serve pro peru?", "163 °C"),
        ("en-US", "is a slow oven ok for the turkey?", "325 °F"),
    ];
    for (tag, question, degrees) in asked {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, zone(tag), "2027-12-20 09:00");
        let said = kitchen.say("Rosa", question).replace('\u{a0}', " ");
        assert!(said.contains(degrees), "{tag}: {question}: {said}");
    }
}

#[test]
fn ways_to_hurry_are_marks_of_the_same_dial() {
    for (tag, wish, accept, on, hotter) in [
        ("en-US", "12 lb fresh turkey, dinner Saturday 5 pm, 8 people, oven", "Accept", "bird is on", "350 °F"),
        ("de-DE", "frische Pute 5,4 kg, Essen Samstag 17 Uhr, 8 Personen, Ofen", "Annehmen", "ist drin", "175 °C"),
    ] {
        let mut kitchen = Kitchen::new(RoomKind::Private, tag, zone(tag), "2027-12-23 09:00");
        kitchen.say("Rosa", &format!("/plan {wish}"));
        kitchen.press("Rosa", accept);
        kitchen.run_to("2027-12-25 13:45");
        kitchen.say("Rosa", on);
        kitchen.run_to("2027-12-25 15:30");
        let reading =
            if tag == "en-US" { "/log breast 75, thigh 80, pit 325" } else { "/log Brust 24, Keule 27, Ofen 165" };
        let said = kitchen.say("Rosa", reading).replace('\u{a0}', " ");
        assert!(said.contains(hotter) || said.contains("375 °F") || said.contains("190 °C"), "{tag}: {said}");
        assert!(!said.contains("177 °C") && !said.contains("191 °C"), "{tag}: {said}");
    }
}
