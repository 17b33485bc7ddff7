//! The first sentence of a dinner: when it goes on is no dinner hour, and a dish's heat is not the bird's.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::reading::{Ground, read_wish};
use carvetime::room::RoomKind;
use chrono::{TimeZone, Utc};
use chrono_tz::{America::Chicago, Europe::Madrid};
use kitchen::Kitchen;

/// From Monday, 22 November 2027, 9:00 in Chicago: start, dinner, and what is baked beside it.
fn read(tag: &str, text: &str) -> (String, String, Vec<String>, Option<i64>) {
    let now = Chicago.with_ymd_and_hms(2027, 11, 22, 9, 0, 0).unwrap().with_timezone(&Utc);
    let (wish, _) = read_wish(text, &Ground::new(tag, tag != "en", Chicago, now));
    let said = |at: Option<chrono::DateTime<Utc>>| {
        at.map_or("-".to_owned(), |at| at.with_timezone(&Chicago).format("%a %H:%M").to_string())
    };
    let setting = wish.setting_c.map(|c| c.round() as i64);
    (said(wish.start), said(wish.dinner), wish.beside, setting)
}

#[test]
fn when_it_goes_on_is_not_when_it_is_eaten() {
    for (tag, text, start, dinner) in [
        ("en", "14 lb turkey, bird on wed 9 am", "Wed 09:00", "-"),
        ("en", "14 lb turkey, going in the oven at 11 thursday", "Thu 11:00", "-"),
        ("en", "14 lb turkey, going in the oven thursday at 11, dinner thursday at 4", "Thu 11:00", "Thu 16:00"),
        ("en", "14 lb turkey, start cooking wednesday morning", "-", "-"),
        ("en", "14 lb turkey, dinner thursday at 5", "-", "Thu 17:00"),
        ("es", "pavo de 6 kg, lo meto al horno el jueves a las 11", "Thu 11:00", "-"),
        ("fr", "dinde de 6 kg, on l'enfourne jeudi à 11h", "Thu 11:00", "-"),
        ("de", "Pute 6 kg, kommt Donnerstag um 11 in den Ofen", "Thu 11:00", "-"),
        ("pt", "peru de 6 kg, vai ao forno quinta às 11h", "Thu 11:00", "-"),
        ("it", "tacchino 6 kg, va in forno giovedì alle 11", "Thu 11:00", "-"),
    ] {
        let (read_start, read_dinner, ..) = read(tag, text);
        assert_eq!((read_start.as_str(), read_dinner.as_str()), (start, dinner), "{text}");
    }
}

#[test]
fn dinner_is_asked_for_and_checked_against_the_start() {
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    let asked =
        kitchen.say("Rosa", "14 lb fresh turkey, 8 people, need to buy it, oven, going in the oven at 11 thursday");
    assert!(asked.contains("on at Thu 11:00 AM") && asked.contains("When is dinner?"), "{asked}");
    let planned = kitchen.say("Rosa", "dinner at 1");
    assert!(planned.contains("On the table Thu 1:00 PM"), "{planned}");
    assert!(planned.contains("You said on at Thu 11:00 AM. For this dinner it goes on at Thu 7:35 AM"), "{planned}");
}

#[test]
fn a_dish_has_its_own_heat_and_joins_the_plan() {
    let en = "14 lb turkey oven at 325, rolls at 400 for 20 min, stuffing at 375";
    assert_eq!(read("en", en).2, ["rolls at 400 for 20 min", "stuffing at 375"]);
    assert_eq!(read("en", en).3, Some(163));
    let before = "stuffing 45 min at 375, 14 lb turkey in the oven at 325, dinner thursday 5 pm";
    assert_eq!((read("en", before).2.len(), read("en", before).3), (1, Some(163)));
    assert_eq!(read("es", "pavo 6 kg en el horno a 165, patatas 40 min a 200").2, ["patatas 40 min a 200"]);
    assert_eq!(read("de", "Pute 6 kg, Ofen 165, Kartoffeln 40 min bei 200 Grad").2, ["Kartoffeln 40 min bei 200 Grad"]);
    for oven in ["we'll roast it in the oven at 350", "I'd like the oven at 350", "roast it at 350 °F"] {
        let text = format!("14 lb turkey, dinner thursday at 5, {oven}");
        assert_eq!((read("en", &text).2.len(), read("en", &text).3), (0, Some(177)), "{text}");
    }
    for alone in ["14 lb turkey, oven at 325", "14 lb turkey, fan oven at 325, 8 people", "14 lb turkey, smoker, 250"] {
        assert_eq!((read("en", alone).2.len(), read("en", alone).3.is_some()), (0, true), "{alone}");
    }
    let mut kitchen = Kitchen::new(RoomKind::Private, "en-US", Chicago, "2027-11-22 09:00");
    kitchen.say("Rosa", &format!("{en}, fresh, need to buy it, dinner thursday 5pm, 8 people, no salt"));
    let said = kitchen.press("Rosa", "Accept");
    assert!(said.contains("Added: rolls") && said.contains("How long does stuffing take?"), "{said}");
}

#[test]
fn a_date_says_more_than_the_name_of_the_feast() {
    for (tag, text, wanted) in [
        (
            "es-MX",
            "guajolote de 6 kg congelado, cena de navidad el 24 a las 10 de la noche, 14 personas",
            "12-24 22:00",
        ),
        ("es-ES", "pavo de 5 kg, cena de navidad el 24 a las 21:00", "12-24 21:00"),
        ("es-ES", "pavo de 5 kg, comida de navidad el 26 a las 14:30", "12-26 14:30"),
        ("es-ES", "pavo de 5 kg, cena de navidad, el 24 a las 21:00", "12-24 21:00"),
        ("fr-FR", "dinde de 5 kg, repas de noel le 24 au soir a 20h", "12-24 20:00"),
        ("fr-FR", "dinde de 5 kg, repas de noël le 26 à 13h", "12-26 13:00"),
        ("en-US", "14 lb turkey, christmas dinner on the 24th at 6 pm", "12-24 18:00"),
        ("en-US", "14 lb turkey, christmas dinner on December 26 at 2 pm", "12-26 14:00"),
        ("de-DE", "Pute 5 kg, Weihnachtsessen am 24. um 19 Uhr", "12-24 19:00"),
        ("it-IT", "tacchino 5 kg, cena di natale il 24 alle 20", "12-24 20:00"),
        ("pt-BR", "peru de 5 kg, ceia de natal dia 24 às 22h", "12-24 22:00"),
        ("es-ES", "pavo de 5 kg, comida de navidad a las 14:30", "12-25 14:30"),
        ("en-US", "14 lb turkey, I buy it on the 20th, christmas dinner at 6 pm", "12-25 18:00"),
    ] {
        let now = Madrid.with_ymd_and_hms(2026, 12, 18, 10, 0, 0).unwrap().with_timezone(&Utc);
        let (wish, _) = read_wish(text, &Ground::new(tag, true, Madrid, now));
        let dinner = wish.dinner.map(|at| at.with_timezone(&Madrid).format("%m-%d %H:%M").to_string());
        assert_eq!(dinner.as_deref(), Some(wanted), "{tag}: {text}");
    }
}
