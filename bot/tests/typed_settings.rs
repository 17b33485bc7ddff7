//! Each setting by its name behind `/settings`, in every language.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::state::Person;
use carvetime::room::{PersonId, RoomKind};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const TAGS: [&str; 6] = ["en-US", "es-MX", "fr-FR", "de-DE", "pt-BR", "it-IT"];

fn after(tag: &str, text: &str) -> (Person, String) {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-20 10:00");
    kitchen.say("Rosa", "/help");
    kitchen.scene.room.taste.language = Some(tag.to_owned());
    kitchen.scene.people.get_mut(&PersonId(1)).unwrap().taste.language = Some(tag.to_owned());
    let said = kitchen.say("Rosa", text);
    assert!(kitchen.scene.room.drafts.is_empty(), "{tag}: {text}: {said}");
    assert_ne!(kitchen.scene.room.taste.zone.as_deref(), Some("Europe/London"), "{tag}: {text}: {said}");
    (kitchen.scene.people[&PersonId(1)].clone(), said)
}

#[test]
fn every_setting_is_set_by_its_name() {
    let units = [
        "units metric",
        "unidades métrico",
        "unités métrique",
        "Einheiten metrisch",
        "unidades métrico",
        "unità metrico",
    ];
    let spoons = [
        "spoons UK",
        "cucharas británica",
        "cuillères britannique",
        "Löffel britisch",
        "colheres britânica",
        "cucchiai britannici",
    ];
    let fridge = ["fridge 38 F", "mi refri 3 C", "frigo 3 C", "Kühlschrank 3 C", "geladeira 3 C", "frigo 3 C"];
    let shelves = ["shelves 3", "repisas tres", "clayettes trois", "Fächer drei", "prateleiras três", "ripiani tre"];
    let cooker = [
        "cooker smoker",
        "aparato ahumador",
        "appareil fumoir",
        "Gerät Smoker",
        "aparelho defumador",
        "apparecchio affumicatore",
    ];
    for (at, tag) in TAGS.into_iter().enumerate() {
        let set = |text: &str| after(tag, &format!("/settings {text}"));
        let (rosa, said) = set(units[at]);
        assert_eq!(rosa.taste.us_units, Some(false), "{tag}: {said}");
        let (rosa, said) = set(spoons[at]);
        assert_eq!(rosa.taste.spoons.as_deref(), Some("uk"), "{tag}: {said}");
        let (rosa, said) = set(fridge[at]);
        assert!(rosa.fridge_c.is_some_and(|at| (2.9..3.5).contains(&at)), "{tag}: {:?}: {said}", rosa.fridge_c);
        let (rosa, said) = set(shelves[at]);
        assert_eq!(rosa.fridge_shelves, Some(3), "{tag}: {said}");
        let (rosa, said) = set(cooker[at]);
        assert_eq!(rosa.cooker.as_deref(), Some("smoker"), "{tag}: {said}");
    }
    let (rosa, said) = after("en-US", "/settings my salt 1/4 tsp is 0.7 g");
    assert!(rosa.own_salt.is_some(), "{said}");
    let (rosa, said) = after("en-US", "/settings quiet hours 9 pm to 6 am");
    assert!(rosa.quiet.is_some(), "{said}");
}

#[test]
fn a_name_alone_or_with_what_is_no_value_opens_its_page_and_a_city_is_a_city() {
    let (_, said) = after("en-US", "/settings units");
    assert!(said.contains("Which units?"), "{said}");
    let (rosa, said) = after("en-US", "/settings fridge 200 F");
    assert!(said.contains("thermometer in your fridge") && rosa.fridge_c.is_none(), "{said}");
    let (rosa, said) = after("en-US", "/settings Salt Lake City");
    assert_eq!(rosa.taste.zone.as_deref(), Some("America/Denver"), "{said}");
    let (rosa, said) = after("en-US", "/settings city Chicago");
    assert_eq!(rosa.taste.zone.as_deref(), Some("America/Chicago"), "{said}");
}

#[test]
fn ones_own_quiet_hours_are_told_in_a_sentence() {
    let said = [
        "my quiet hours are 9 pm to 6 am",
        "mis horas de silencio son de 21 a 6",
        "mes heures calmes sont de 21 h à 6 h",
        "meine Ruhezeit ist 21 bis 6 Uhr",
        "minhas horas de silêncio são das 21 às 6",
        "le mie ore di silenzio sono dalle 21 alle 6",
    ];
    for (tag, text) in TAGS.into_iter().zip(said) {
        let (rosa, said) = after(tag, text);
        let hours = rosa.quiet.map(|(from, to)| (from.to_string(), to.to_string()));
        assert_eq!(hours, Some(("21:00:00".to_owned(), "06:00:00".to_owned())), "{tag}: {said}");
    }
}
