//! A region's own kitchen words: the sentences are those of its language, what stands on the counter has the name it has there.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "common/kitchen.rs"]
mod kitchen;

use carvetime::words::{Arg, Reader, Text, Voice};
use chrono::{TimeZone, Utc};
use chrono_tz::{America, Europe, Tz};
use std::sync::LazyLock;

static VOICE: LazyLock<Voice> = LazyLock::new(Voice::new);

fn said(tag: &str, zone: Tz, text: &Text) -> String {
    let now = Utc.with_ymd_and_hms(2027, 11, 23, 15, 0, 0).unwrap();
    VOICE.label(text, &Reader::new(tag, zone, now))
}

fn thawing() -> Text {
    Text::new("plan-call-thaw-fridge").with("cold", Arg::Verbatim("4 °C".into()))
}

#[test]
fn mexico_puts_it_in_the_refri_on_a_charola_and_spain_does_not() {
    let mexican = said("es-MX", America::Mexico_City, &thawing());
    assert_eq!(
        mexican,
        "El ave al refri a descongelar, en su envoltorio, en una charola abajo. El refri a 4 °C o menos; nunca en la barra de \
         la cocina."
    );
    let spanish = said("es-ES", Europe::Madrid, &thawing());
    assert!(
        spanish.contains("a la nevera") && spanish.contains("bandeja") && spanish.contains("encimera"),
        "{spanish}"
    );
}

#[test]
fn who_says_spanish_alone_is_spoken_to_as_where_the_kitchen_is() {
    let mexican = said("es-MX", America::Mexico_City, &thawing());
    assert_eq!(said("es", America::Monterrey, &thawing()), mexican);
    assert_eq!(said("es-US", America::Chicago, &thawing()), mexican);
    assert_eq!(said("es", Europe::Madrid, &thawing()), said("es-ES", Europe::Madrid, &thawing()));
    assert_eq!(said("es-AR", America::Argentina::Buenos_Aires, &thawing()), said("es-ES", Europe::Madrid, &thawing()));
}

#[test]
fn a_thigh_is_a_thigh_and_a_drumstick_a_drumstick_in_both() {
    let place = |tag, place: &'static str| {
        let text = Text::new("ask-dose-share")
            .with("place", Arg::Choice(place))
            .with("volume", Arg::Verbatim("1 cda".into()))
            .with("count", Arg::Count(2));
        said(tag, America::Mexico_City, &text)
    };
    assert_eq!(place("es-MX", "thigh"), "1 cda en cada muslo");
    assert_eq!(place("es-MX", "drumstick"), "1 cda en cada pierna");
    assert_eq!(place("es-ES", "thigh"), "1 cda en cada contramuslo");
    assert_eq!(place("es-ES", "drumstick"), "1 cda en cada muslo");
}

#[test]
fn quebec_has_its_comptoir_its_poudre_a_pate_and_its_spoons() {
    for (tag, zone, counter, powder) in [
        ("fr-CA", America::Toronto, "comptoir", "poudre à pâte"),
        ("fr", America::Montreal, "comptoir", "poudre à pâte"),
        ("fr-FR", Europe::Paris, "plan de travail", "levure chimique"),
        ("fr", Europe::Paris, "plan de travail", "levure chimique"),
    ] {
        assert!(said(tag, zone, &thawing()).contains(counter), "{tag}");
        assert!(said(tag, zone, &Text::new("ask-dose-skin")).contains(powder), "{tag}");
    }
}

#[test]
fn one_oclock_is_one_hour_in_spanish() {
    let at = |hour| Arg::Clock(America::Mexico_City.with_ymd_and_hms(2027, 11, 25, hour, 10, 0).unwrap().to_utc());
    let later = |tag, hour| said(tag, America::Mexico_City, &Text::new("room-later").with("when", at(hour)));
    assert_eq!(later("es-MX", 13), "De acuerdo, otra vez a la 1:10 p.m.");
    assert_eq!(later("es-MX", 11), "De acuerdo, otra vez a las 11:10 a.m.");
    assert_eq!(later("es-ES", 1), "De acuerdo, otra vez a la 01:10.");
    let moved = Text::new("room-moved").with("when", at(13));
    assert_eq!(said("es-MX", America::Mexico_City, &moved), "Ahora en la mesa 1:10 p.m.");
    assert_eq!(later("es-ES", 21), "De acuerdo, otra vez a las 21:10.");
}

/// Telegram knows one Spanish for its menus and profile: nothing there may be rude or strange on one side of the ocean.
#[test]
fn spanish_for_all_says_nothing_that_half_its_speakers_would_not() {
    let half =
        regex::Regex::new(r"(?i)\b(coger|coge|sois|vuestr[oa]s?|vosotros|queréis|hacedme|empezad|apuntado)\b").unwrap();
    for (file, text) in carvetime::words::locales::files("es") {
        for line in text.lines().filter(|line| file != "lexicon.ftl" && !line.starts_with('#')) {
            assert!(!half.is_match(line), "{file}: {line}");
        }
    }
}

/// A colon at the head of a line, a question mark alone on the next: French sets a space before both that does not break.
#[test]
fn french_marks_stay_with_their_word() {
    let loose = regex::Regex::new(r"\S [:;?!»](\s|$|[.,)<])|« ").unwrap();
    for tag in ["fr", "fr-CA"] {
        for (file, text) in carvetime::words::locales::files(tag) {
            let inline = |line: &&str| !line.starts_with('#') && !line.starts_with("telegram-inline");
            for line in text.lines().filter(|_| file != "lexicon.ftl").filter(inline) {
                assert!(!loose.is_match(line), "{tag}/{file}: {line}");
            }
        }
    }
}

/// What is told of a bird without times goes into no plan: the next words would make a turkey of it.
#[test]
fn a_guinea_fowl_is_refused_and_nothing_of_it_is_kept() {
    let mut kitchen =
        kitchen::Kitchen::new(carvetime::room::RoomKind::Private, "fr-FR", Europe::Paris, "2027-11-23 09:00");
    let said = kitchen.say("Rosa", "/plan pintade de 1,5 kg, dîner jeudi 19 h, 4 personnes");
    assert!(said.contains("pas pour celle-là") && !said.contains("congelée ?"), "{said}");
    assert!(kitchen.scene.room.drafts.is_empty(), "{said}");
    let said = kitchen.say("Rosa", "/plan poularde de 2 kg fraîche, dîner jeudi 19 h, 4 personnes, four");
    assert!(said.contains("poulet de 2 kg"), "{said}");
}
