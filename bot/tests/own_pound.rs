//! A pound in a language that has its own: 500 g for a German Pfund and a French livre, the avoirdupois pound where people
//! weigh in those, and in French in Canada.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::ask::{Asker, ask};
use carvetime::reading::{Ground, read_wish};
use chrono_tz::Tz;
use chrono_tz::{America::Chicago, America::Toronto, Europe::Berlin, Europe::Paris};

fn now() -> chrono::DateTime<chrono::Utc> {
    "2027-12-18T18:00:00Z".parse().unwrap()
}

fn grams(tag: &str, zone: Tz, metric: bool, text: &str) -> f64 {
    let (wish, _) = read_wish(text, &Ground::new(tag, metric, zone, now()));
    wish.mass_g.unwrap_or_else(|| panic!("{tag}: no mass in {text}"))
}

#[test]
fn a_pfund_and_a_livre_are_half_a_kilo_and_lb_never_is() {
    for (tag, zone, metric, text, wanted) in [
        ("de-DE", Berlin, true, "gefrorene pute 12 pfund", 6000.0),
        ("de-DE", Berlin, true, "gefrorene pute 12 Pfd", 6000.0),
        ("de-DE", Berlin, true, "gefrorene pute, 9 pfund 200 g", 4700.0),
        ("de-DE", Berlin, true, "gefrorene pute 12 lb", 12.0 * 453.59237),
        ("de-DE", Chicago, false, "gefrorene pute 12 pfund", 12.0 * 453.59237),
        ("fr-FR", Paris, true, "dinde surgelée de 12 livres", 6000.0),
        ("fr", Paris, true, "dinde surgelée de 12 livres", 6000.0),
        ("fr-FR", Paris, true, "dinde surgelée 12 lbs", 12.0 * 453.59237),
        ("fr-CA", Toronto, true, "dinde surgelée de 12 livres", 12.0 * 453.59237),
        ("fr-CA", Paris, true, "dinde surgelée de 12 livres", 12.0 * 453.59237),
        ("fr", Toronto, true, "dinde surgelée de 12 livres", 12.0 * 453.59237),
        ("es-MX", Chicago, true, "pavo congelado de 12 libras", 12.0 * 453.59237),
    ] {
        let got = grams(tag, zone, metric, text);
        assert!((got - wanted).abs() < 1.0, "{tag} {zone}: {text}: {got}, wanted {wanted}");
    }
}

#[test]
fn asked_in_kilos_it_is_a_half() {
    for (tag, zone, text) in
        [("de-DE", Berlin, "wieviel ist ein pfund in kilo"), ("fr-FR", Paris, "1 livre en kg c'est combien")]
    {
        let answer = ask(text, &Asker::new(tag, zone, now())).unwrap_or_else(|_| panic!("{text}"));
        let value = answer.values.iter().find(|value| value.name == "mass").unwrap_or_else(|| panic!("{answer:?}"));
        assert!((value.value - 0.5).abs() < 1e-9, "{text}: {value:?}");
    }
}
