//! What `/export` sends, as it comes over the wire: the calendar as a reader that is not ours takes it in, and the page to print.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::loopback::{Message, Upload};
use carvetime_tests::stage::Scene;
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use chrono_tz::America::Chicago;
use icalendar::{Calendar, CalendarDateTime, Component, DatePerhapsTime, Event, EventStatus};
use std::collections::BTreeMap;

/// A dinner in Chicago on Thursday the 25th at five.
const PLANNED: &str = "zone America/Chicago
locale en-US
room group
people Rosa, Tom
2027-11-22 09:00 Rosa: /plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325
2027-11-22 09:01 Rosa > Accept
2027-11-22 09:02 Tom: /export
";

/// The newest message with a file whose name ends so.
fn sent(scene: &Scene, ending: &str) -> (Message, Upload) {
    let said = scene.telegram.said(scene.group);
    let of =
        |message: Message| message.file.clone().filter(|file| file.name.ends_with(ending)).map(|file| (message, file));
    said.into_iter().rev().find_map(of).unwrap_or_else(|| panic!("no {ending}:\n{}", scene.transcript()))
}

/// The newest calendar's events by their UID.
fn events(scene: &Scene) -> BTreeMap<String, Event> {
    let (_, file) = sent(scene, ".ics");
    let text = String::from_utf8(file.bytes).unwrap();
    for line in text.split("\r\n") {
        assert!(line.len() <= 75 && !line.contains(['\r', '\n']), "a line is folded at 75 octets: {line:?}");
    }
    let calendar: Calendar = text.parse().unwrap_or_else(|error| panic!("{error}\n{text}"));
    let events: Vec<Event> = calendar.events().cloned().collect();
    let count = events.len();
    let named: BTreeMap<String, Event> =
        events.into_iter().map(|event| (event.get_uid().expect("a UID").to_owned(), event)).collect();
    assert_eq!(named.len(), count, "each has a UID of its own");
    named
}

/// The moment a calendar app would show in whatever zone it is in.
fn moment(told: Option<DatePerhapsTime>) -> DateTime<Utc> {
    match told {
        Some(DatePerhapsTime::DateTime(CalendarDateTime::Utc(at))) => at,
        other => panic!("no instant: {other:?}"),
    }
}

fn of<'a>(events: &'a BTreeMap<String, Event>, step: &str) -> (&'a str, &'a Event) {
    let found = events.iter().find(|(uid, _)| uid.contains(&format!("-{step}-0@")));
    found.map(|(uid, event)| (uid.as_str(), event)).unwrap_or_else(|| panic!("no {step}: {events:#?}"))
}

#[test]
fn a_calendar_app_reads_every_job_at_its_moment_and_knows_it_again_after_a_change() {
    let first = Scene::play_text(PLANNED);
    let events_of_it = events(&first);
    let dinner = Chicago.with_ymd_and_hms(2027, 11, 25, 17, 0, 0).unwrap().to_utc();
    let (_, serve) = of(&events_of_it, "serve");
    assert_eq!(moment(serve.get_start()), dinner);
    for event in events_of_it.values() {
        let (start, end) = (moment(event.get_start()), moment(event.get_end()));
        assert!(start < end && end - start < TimeDelta::days(4), "{event:?}");
        assert_eq!(event.get_timestamp(), Some(Chicago.with_ymd_and_hms(2027, 11, 22, 9, 2, 0).unwrap().to_utc()));
        assert!(event.get_sequence().is_some() && !event.get_summary().unwrap_or_default().is_empty(), "{event:?}");
    }
    // What is escaped and folded for the wire is whole again.
    let (_, salt) = of(&events_of_it, "salt");
    let told = salt.get_description().expect("what to do").replace("\\,", ",");
    assert!(told.contains("neck and giblets out, pat it dry, don’t wash it"), "{told}");

    let moved =
        Scene::play_text(&format!("{PLANNED}2027-11-22 09:03 Rosa: /move 6 pm\n2027-11-22 09:05 Tom: /export\n"));
    let later = events(&moved);
    assert!(events_of_it.keys().eq(later.keys()), "the same jobs under the same names");
    let (uid, serve_later) = of(&later, "serve");
    assert_eq!(moment(serve_later.get_start()), dinner + TimeDelta::hours(1));
    assert!(serve_later.get_sequence() > events_of_it[uid].get_sequence());
    assert!(serve_later.get_timestamp() > events_of_it[uid].get_timestamp());

    let ended = Scene::play_text(&format!(
        "{PLANNED}2027-11-22 09:03 Rosa: /stop\n2027-11-22 09:03 Rosa > Yes\n2027-11-22 09:05 Tom: /export\n"
    ));
    let gone = events(&ended);
    let (uid, serve_gone) = of(&gone, "serve");
    assert_eq!(serve_gone.get_status(), Some(EventStatus::Cancelled));
    assert!(serve_gone.get_sequence() > events_of_it[uid].get_sequence());
}

#[test]
fn the_page_to_print_comes_as_a_file_and_not_as_a_photo_in_the_rooms_words() {
    let pages = [
        (
            "en-US",
            "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325",
            "Accept",
            "One page for the fridge door.",
        ),
        (
            "es-MX",
            "/plan pavo fresco de 6 kg, cena el jueves a las 17:00, 8 personas, horno a 165",
            "Aceptar",
            "Una página para la puerta del refri",
        ),
        (
            "fr-FR",
            "/plan dinde fraîche de 6 kg, repas jeudi à 17h, 8 personnes, four à 165",
            "Accepter",
            "Une page pour la porte du frigo.",
        ),
        (
            "de-DE",
            "/plan frische Pute 6 kg, Essen Donnerstag um 17 Uhr, 8 Personen, Ofen auf 165",
            "Annehmen",
            "Eine Seite für die Kühlschranktür.",
        ),
        (
            "it-IT",
            "/plan tacchino fresco 6 kg, cena giovedì alle 17, 8 persone, forno a 165",
            "Accetta",
            "Una pagina per lo sportello del frigo.",
        ),
        (
            "pt-BR",
            "/plan peru fresco de 6 kg, ceia quinta às 17h, 8 pessoas, forno a 165",
            "Aceitar",
            "Uma página para a porta da geladeira.",
        ),
    ];
    for (language, plan, accept, caption) in pages {
        let scene = Scene::play_text(&format!(
            "zone America/Chicago
             locale {language}
             room group
             people Rosa:{language}, Tom:{language}
             2027-11-22 09:00 Rosa: {plan}
             2027-11-22 09:01 Rosa > {accept}
             2027-11-22 09:02 Tom: /export\n"
        ));
        let (message, page) = sent(&scene, ".png");
        assert_eq!(page.name, "carvetime-page.png", "{language}");
        assert!(page.bytes.starts_with(b"\x89PNG\r\n\x1a\n"), "{language}: {:?}", page.bytes.get(..8));
        // Left open, the platform goes by the name.
        assert!(["", "image/png"].contains(&page.mime.as_str()), "{language}: {}", page.mime);
        assert!(!message.photo, "{language}: a photo would be shrunk");
        let documents = scene.telegram.calls().into_iter().filter(|call| call.method == "sendDocument");
        let sent = documents.filter(|call| call.files.values().any(|file| file.name == page.name)).count();
        assert_eq!(sent, 1, "{language}");
        assert!(message.text.starts_with(caption), "{language}: {}", message.text);
    }
}
