//! A bird off the heat that people speak of in passing: what its thermometer reads, how long the food may stand, and what was read
//! some time ago.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::room::{RoomKind, What};
use chrono_tz::America::Chicago;
use kitchen::Kitchen;

const AT_HOME: &str = "/plan fresh 14 lb turkey, we have it, dinner Thursday 5 pm, 8 people, oven at 325, no salt";
const AHEAD: &str = "/plan fresh 14 lb turkey, we have it, no salt, oven at 325, cook it the day before and take it to my \
                     sister's, 40 minutes away, dinner Friday 5 pm, 9 people";

fn passing(kitchen: &mut Kitchen, who: &str, text: &str) -> String {
    kitchen.hear(Some(who), What::Said { text: text.into(), addressed: false, reply_to: None, edited: false })
}

fn on(kind: RoomKind, plan: &str) -> Kitchen {
    let mut kitchen = Kitchen::new(kind, "en-US", Chicago, "2027-11-24 09:00");
    kitchen.say("Rosa", plan);
    kitchen.press("Rosa", "Accept");
    kitchen.run_to("2027-11-25 11:00");
    kitchen.say("Rosa", "bird is on");
    kitchen
}

fn pulled(kind: RoomKind, plan: &str) -> Kitchen {
    let mut kitchen = on(kind, plan);
    kitchen.run_to("2027-11-25 14:30");
    kitchen.say("Rosa", "breast 168, thigh 176");
    kitchen.say("Rosa", "pulled it");
    kitchen
}

fn read(kitchen: &Kitchen) -> usize {
    kitchen.scene.room.plan.as_ref().unwrap().readings.len()
}

#[test]
fn what_a_resting_bird_reads_is_heard_among_people() {
    let mut kitchen = pulled(RoomKind::Group, AT_HOME);
    kitchen.press("Rosa", "Kept hot");
    kitchen.run_to("2027-11-25 15:00");
    for words in ["reads 160", "its at 152 in the cooler", "now 145"] {
        let said = passing(&mut kitchen, "Ben", words);
        assert!(said.contains("Noted: breast"), "{words}: {said}");
    }
    let said = passing(&mut kitchen, "Ben", "now 139");
    assert!(said.contains("139 °F") && said.contains("4:30 PM"), "{said}");
    let before = read(&kitchen);
    for words in ["142", "its 4 now", "we're at 142 main street", "now 145 miles to go", "still 3 of us"] {
        assert_eq!(passing(&mut kitchen, "Ben", words), "", "{words}");
    }
    assert_eq!(read(&kitchen), before);
}

#[test]
fn over_the_heat_and_before_it_a_number_in_passing_stays_talk() {
    let mut kitchen = on(RoomKind::Group, AT_HOME);
    for words in ["now 145", "its at 142 in the cooler"] {
        assert_eq!(passing(&mut kitchen, "Ben", words), "", "{words}");
    }
}

#[test]
fn what_is_chilled_for_the_road_is_heard_among_people() {
    let mut kitchen = pulled(RoomKind::Group, AHEAD);
    kitchen.run_to("2027-11-25 15:10");
    kitchen.say("Rosa", "carved");
    kitchen.run_to("2027-11-25 15:40");
    kitchen.say("Rosa", "put away");
    kitchen.run_to("2027-11-25 17:40");
    let said = passing(&mut kitchen, "Ben", "reads 60");
    assert!(said.contains("60 °F"), "{said}");
}

#[test]
fn how_long_the_food_may_stand_counts_from_the_heat() {
    let asked = [
        "food still on the table is it ok",
        "how long may this stand on the table",
        "is the turkey on the table still ok?",
        "how long can it sit out?",
    ];
    for words in asked {
        let mut kitchen = pulled(RoomKind::Private, AT_HOME);
        kitchen.run_to("2027-11-25 15:30");
        kitchen.say("Rosa", "carved");
        let said = kitchen.say("Rosa", words);
        assert!(said.contains("by 4:30 PM"), "{words}: {said}");
        kitchen.run_to("2027-11-25 16:45");
        let said = kitchen.say("Rosa", words);
        assert!(
            said.contains("The two hours are over") || said.contains("the time was up at 4:30 PM"),
            "{words}: {said}"
        );
    }
    // Nothing of it is known before.
    let mut kitchen = on(RoomKind::Private, AT_HOME);
    let said = kitchen.say("Rosa", "how long may this stand on the table");
    assert!(said.contains("Two hours out of the fridge in all"), "{said}");
}

#[test]
fn the_same_in_every_language() {
    let told = [
        (
            "de-DE",
            "/plan frische Pute 6,5 kg, haben wir schon, Essen Donnerstag 17 Uhr, 8 Personen, Ofen auf 165, kein Salz",
            ["Annehmen", "vogel ist im ofen", "brust 76, keule 80", "ist raus"],
            ["essen steht noch auf dem tisch, geht das noch?", "wie lange darf das auf dem tisch stehen"],
            ("zeigt 62", "62 °C"),
        ),
        (
            "es-ES",
            "/plan pavo fresco de 6,5 kg, ya lo tenemos, cena el jueves a las 17, 8 personas, horno a 165, sin sal",
            ["Aceptar", "el pavo está en el horno", "pechuga 76, muslo 80", "lo saqué del horno"],
            ["la comida sigue en la mesa, ¿está bien?", "cuánto tiempo puede estar en la mesa"],
            ("marca 62", "62 °C"),
        ),
        (
            "fr-FR",
            "/plan dinde fraîche 6,5 kg, on l'a déjà, dîner jeudi 17 h, 8 personnes, four à 165, sans sel",
            ["Accepter", "la dinde est au four", "blanc 76, cuisse 80", "elle est sortie du four"],
            ["le repas est encore sur la table, c'est bon ?", "combien de temps ça peut rester sur la table"],
            ("affiche 62", "62 °C"),
        ),
        (
            "it-IT",
            "/plan tacchino fresco 6,5 kg, ce l'abbiamo, cena giovedì ore 17, 8 persone, forno a 165, senza sale",
            ["Accetta", "il tacchino è in forno", "petto 76, coscia 80", "l'ho tolto dal forno"],
            ["il cibo è ancora sul tavolo, va bene?", "quanto tempo può stare sul tavolo"],
            ("segna 62", "62 °C"),
        ),
        (
            "pt-BR",
            "/plan peru fresco 6,5 kg, já temos, jantar quinta 17h, 8 pessoas, forno a 165, sem sal",
            ["Aceitar", "o peru está no forno", "peito 76, coxa 80", "tirei do forno"],
            ["a comida ainda está na mesa, tudo bem?", "quanto tempo pode ficar na mesa"],
            ("marca 62", "62 °C"),
        ),
    ];
    for (locale, plan, [accept, on, hot, off], asked, (reads, noted)) in told {
        let mut kitchen = Kitchen::new(RoomKind::Group, locale, Chicago, "2027-11-24 09:00");
        kitchen.say("Rosa", plan);
        kitchen.press("Rosa", accept);
        kitchen.run_to("2027-11-25 11:00");
        kitchen.say("Rosa", on);
        kitchen.run_to("2027-11-25 14:30");
        kitchen.say("Rosa", hot);
        kitchen.say("Rosa", off);
        kitchen.run_to("2027-11-25 15:00");
        let said = passing(&mut kitchen, "Ben", reads);
        assert!(said.contains(noted), "{locale}, {reads}: {said}");
        for words in asked {
            let said = kitchen.say("Rosa", words);
            assert!(said.contains("16:30"), "{locale}, {words}: {said}");
        }
    }
}

#[test]
fn an_older_reading_counts_for_its_hour_and_without_one_it_is_asked_for() {
    let mut kitchen = on(RoomKind::Private, AT_HOME);
    kitchen.run_to("2027-11-25 12:30");
    kitchen.say("Rosa", "breast 75, thigh 80");
    kitchen.run_to("2027-11-25 14:00");
    kitchen.say("Rosa", "breast 120, thigh 125");
    let before = read(&kitchen);
    for words in ["thermometer said 95 before that", "breast was 95 earlier", "it read 95 a while ago"] {
        let said = kitchen.say("Rosa", words);
        assert!(said.contains("When was that?"), "{words}: {said}");
        assert_eq!(read(&kitchen), before, "{words}");
    }
    let said = kitchen.say("Rosa", "at 1:30 it said 95");
    assert!(said.contains("Noted: breast 95 °F"), "{said}");
    let plan = kitchen.scene.room.plan.as_ref().unwrap();
    let last = plan.readings.last().unwrap();
    assert_eq!((last.at, plan.readings.len()), (kitchen.local("2027-11-25 13:30"), before + 1));
}

#[test]
fn an_older_reading_is_none_of_now_in_any_language() {
    let told = [
        (
            "de-DE",
            "/plan frische Pute 6,5 kg, haben wir schon, Essen Donnerstag 17 Uhr, 8 Personen, Ofen auf 165, kein Salz",
            ["Annehmen", "vogel ist im ofen", "brust 48, keule 50", "brust war vorhin 35", "Wann war das?"],
        ),
        (
            "es-ES",
            "/plan pavo fresco de 6,5 kg, ya lo tenemos, cena el jueves a las 17, 8 personas, horno a 165, sin sal",
            [
                "Aceptar",
                "el pavo está en el horno",
                "pechuga 48, muslo 50",
                "antes de eso la pechuga marcaba 35",
                "¿A qué hora fue?",
            ],
        ),
        (
            "fr-FR",
            "/plan dinde fraîche 6,5 kg, on l'a déjà, dîner jeudi 17 h, 8 personnes, four à 165, sans sel",
            [
                "Accepter",
                "la dinde est au four",
                "blanc 48, cuisse 50",
                "avant ça le blanc indiquait 35",
                "C’était quand",
            ],
        ),
        (
            "it-IT",
            "/plan tacchino fresco 6,5 kg, ce l'abbiamo, cena giovedì ore 17, 8 persone, forno a 165, senza sale",
            [
                "Accetta",
                "il tacchino è in forno",
                "petto 48, coscia 50",
                "poco fa il petto segnava 35",
                "Quando è stato?",
            ],
        ),
        (
            "pt-BR",
            "/plan peru fresco 6,5 kg, já temos, jantar quinta 17h, 8 pessoas, forno a 165, sem sal",
            [
                "Aceitar",
                "o peru está no forno",
                "peito 48, coxa 50",
                "antes disso o peito marcava 35",
                "Quando foi isso?",
            ],
        ),
    ];
    for (locale, plan, [accept, on, now, before, when]) in told {
        let mut kitchen = Kitchen::new(RoomKind::Private, locale, Chicago, "2027-11-24 09:00");
        kitchen.say("Rosa", plan);
        kitchen.press("Rosa", accept);
        kitchen.run_to("2027-11-25 11:00");
        kitchen.say("Rosa", on);
        kitchen.run_to("2027-11-25 14:00");
        kitchen.say("Rosa", now);
        let kept = read(&kitchen);
        let said = kitchen.say("Rosa", before);
        assert!(said.contains(when), "{locale}: {said}");
        assert_eq!(read(&kitchen), kept, "{locale}");
    }
}
