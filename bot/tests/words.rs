//! What a reader sees: numbers, units, times and people, in each language; and that the languages are complete.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::room::PersonId;
use carvetime::words::{Arg, Reader, Text, UnitSystem, Voice, locales};
use carvetime_core::quantity::{celsius, fahrenheit, grams, hotter_by, kilograms, milliliters, pounds};
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use chrono_tz::{America, Europe, Tz};

/// One message with one place for an argument, the same in every language.
fn voice() -> Voice {
    let sources = locales::languages().into_iter().map(|language| {
        let mut files: Vec<String> = locales::files(language).into_iter().map(|(_, text)| text.to_owned()).collect();
        files.push("probe = { $x }\n".to_owned());
        (language.to_owned(), files)
    });
    Voice::of_sources(sources)
}

/// A Monday noon before a Thursday dinner.
fn monday() -> DateTime<Utc> {
    Utc.with_ymd_and_hms(2027, 11, 22, 18, 0, 0).unwrap()
}

fn thursday_five_pm(zone: Tz) -> DateTime<Utc> {
    zone.with_ymd_and_hms(2027, 11, 25, 17, 0, 0).unwrap().to_utc()
}

fn shown(arg: Arg, tag: &str) -> String {
    let zone = if tag.starts_with("es") { Europe::Madrid } else { America::Chicago };
    voice().render(&[Text::new("probe").with("x", arg)], &Reader::new(tag, zone, monday()))
}

fn check(arg: Arg, expected: &[(&str, &str)]) {
    for (tag, text) in expected {
        assert_eq!(shown(arg.clone(), tag), *text, "{tag}: {arg:?}");
    }
}

#[test]
fn a_birds_mass_is_written_in_pounds_and_ounces_or_in_kilograms() {
    check(Arg::Mass(pounds(14.375)), &[("en-US", "14 lb 6 oz"), ("en-GB", "6.5 kg"), ("es-ES", "6,5 kg")]);
    check(Arg::Mass(kilograms(14.5)), &[("es-ES", "14,5 kg"), ("es-MX", "14.5 kg"), ("en-US", "31 lb 15 oz")]);
    check(Arg::Mass(kilograms(1.85)), &[("es-ES", "1,85 kg")]);
    check(Arg::Mass(pounds(14.0)), &[("en-US", "14 lb")]);
    check(Arg::Mass(pounds(0.5)), &[("en-US", "8 oz"), ("es-ES", "227 g")]);
    // Rounding must not give "13 lb 16 oz".
    check(Arg::Mass(pounds(13.99)), &[("en-US", "14 lb")]);
    check(Arg::Mass(kilograms(0.9996)), &[("es-ES", "1 kg")]);
}

#[test]
fn salt_is_weighed_in_grams_everywhere() {
    check(Arg::Grams(grams(4.25)), &[("en-US", "4.3 g"), ("es-ES", "4,3 g")]);
    check(Arg::Grams(grams(64.6)), &[("en-US", "65 g"), ("es-ES", "65 g")]);
}

#[test]
fn salt_is_spooned_in_the_readers_own_spoons() {
    let teaspoons = |n: f64| Arg::Spoons(milliliters(n * 4.928_921_593_75));
    check(teaspoons(0.25), &[("en-US", "¼ tsp"), ("es-ES", "¼ cdta")]);
    check(teaspoons(1.5), &[("en-US", "1½ tsp"), ("es-ES", "1½ cdtas")]);
    check(teaspoons(7.25), &[("en-US", "2 tbsp + 1¼ tsp")]);
    check(teaspoons(24.0), &[("en-US", "½ cup")]);
    check(teaspoons(0.0), &[("en-US", "a pinch"), ("es-ES", "una pizca")]);
    check(
        Arg::Spoons(milliliters(20.0)),
        &[("en-AU", "1 tbsp"), ("en-GB", "1 tbsp + 1 tsp"), ("es-ES", "1 cda + 1 cdta")],
    );
}

#[test]
fn water_is_measured_in_quarts_or_litres() {
    check(Arg::Liquid(milliliters(3785.4)), &[("en-US", "4 qt"), ("es-ES", "3,8 l")]);
    check(Arg::Liquid(milliliters(236.588)), &[("en-US", "1 cup"), ("en-GB", "240 mL"), ("es-ES", "240 ml")]);
    check(Arg::Liquid(milliliters(354.9)), &[("en-US", "1½ cups")]);
    // Just under a quart is a quart, not four cups.
    check(Arg::Liquid(milliliters(468.0)), &[("en-US", "2 cups")]);
    check(Arg::Liquid(milliliters(940.0)), &[("en-US", "1 qt")]);
}

#[test]
fn temperatures_follow_the_readers_units() {
    check(Arg::Temperature(fahrenheit(165.0)), &[("en-US", "165 °F"), ("en-GB", "74 °C"), ("es-ES", "74 °C")]);
    check(Arg::Temperature(celsius(-0.2)), &[("es-ES", "0 °C")]);
    check(Arg::Degrees(hotter_by(fahrenheit(165.0), fahrenheit(155.0))), &[("en-US", "10 °F"), ("es-ES", "6 °C")]);
}

#[test]
fn spans_use_the_largest_units_that_help() {
    let span = |minutes| Arg::Span(TimeDelta::minutes(minutes));
    check(Arg::Span(TimeDelta::seconds(20)), &[("en-US", "a moment"), ("es-ES", "un momento")]);
    check(span(45), &[("en-US", "45 min"), ("es-ES", "45 min")]);
    check(span(150), &[("en-US", "2 h 30 min"), ("es-ES", "2 h 30 min")]);
    check(span(36 * 60), &[("en-US", "36 h")]);
    check(span(3 * 24 * 60), &[("en-US", "3 days"), ("es-ES", "3 días")]);
    check(span(54 * 60), &[("en-US", "2 days 6 h"), ("es-ES", "2 días 6 h")]);
    check(span(-150), &[("en-US", "2 h 30 min")]);
}

#[test]
fn a_range_of_spans_says_the_unit_once_where_it_can() {
    let range = |a, b| Arg::SpanRange(TimeDelta::minutes(a), TimeDelta::minutes(b));
    check(range(20, 25), &[("en-US", "20–25 min"), ("es-ES", "20–25 min")]);
    check(range(24 * 60, 36 * 60), &[("en-US", "24–36 h")]);
    check(range(150, 180), &[("en-US", "2 h 30 min to 3 h"), ("es-ES", "de 2 h 30 min a 3 h")]);
    check(range(90, 90), &[("en-US", "1 h 30 min")]);
}

#[test]
fn clocks_and_days_follow_the_locale_with_ordinary_spaces() {
    let us = thursday_five_pm(America::Chicago);
    let es = thursday_five_pm(Europe::Madrid);
    check(Arg::Clock(us), &[("en-US", "5:00 PM"), ("en-GB", "17:00")]);
    check(Arg::Clock(es), &[("es-ES", "17:00"), ("es-MX", "5:00 p.m.")]);
    check(Arg::Clock(us), &[("fr-FR", "17:00"), ("fr-CA", "17 h 00")]);
    // No nought before the hour where letters stand beside it, and none lost that belongs to it.
    let at = |zone: Tz, hour, minute| zone.with_ymd_and_hms(2027, 11, 25, hour, minute, 0).unwrap().to_utc();
    check(Arg::Clock(at(America::Chicago, 9, 30)), &[("en-US", "9:30 AM"), ("en-GB", "09:30"), ("fr-CA", "9 h 30")]);
    check(Arg::Clock(at(Europe::Madrid, 9, 30)), &[("es-MX", "9:30 a.m."), ("es-ES", "09:30")]);
    check(Arg::Clock(at(Europe::Madrid, 12, 30)), &[("es-MX", "12:30 p.m.")]);
    check(Arg::DayClock(us), &[("en-US", "Thu 5:00 PM"), ("en-GB", "Thu 17:00")]);
    check(Arg::DayClock(es), &[("es-ES", "jue 17:00")]);
    check(Arg::Day(us), &[("en-US", "Thursday, November 25"), ("en-GB", "Thursday 25 November")]);
    check(Arg::Day(es), &[("es-ES", "jueves, 25 de noviembre")]);
}

#[test]
fn a_day_more_than_six_days_away_brings_its_date_and_another_year_brings_the_year() {
    let later = |zone: Tz, y, m, d| zone.with_ymd_and_hms(y, m, d, 17, 0, 0).unwrap().to_utc();
    check(Arg::DayClock(later(America::Chicago, 2027, 11, 28)), &[("en-US", "Sun 5:00 PM")]);
    check(Arg::DayClock(later(America::Chicago, 2027, 11, 29)), &[("en-US", "Mon, Nov 29 5:00 PM")]);
    check(Arg::DayClock(later(Europe::Madrid, 2027, 11, 29)), &[("es-ES", "lun, 29 nov 17:00")]);
    check(Arg::Day(later(America::Chicago, 2028, 1, 2)), &[("en-US", "Sunday, January 2")]);
    check(Arg::Day(later(America::Chicago, 2028, 11, 23)), &[("en-US", "Thursday, November 23, 2028")]);
}

#[test]
fn numbers_inside_sentences_are_the_locales_own() {
    check(Arg::Number(14.46, 1), &[("en-US", "14.5"), ("es-ES", "14,5"), ("es-MX", "14.5")]);
    check(Arg::Number(2.0, 2), &[("en-US", "2"), ("es-ES", "2")]);
    check(Arg::Number(f64::NAN, 1), &[("en-US", "–")]);
    check(Arg::Count(12_345), &[("en-US", "12,345"), ("es-ES", "12.345")]);
}

#[test]
fn lists_are_joined_by_the_rules_of_the_language() {
    let list = |names: &[&'static str]| {
        let items = names.iter().map(|n| Text::new("probe").with("x", Arg::Verbatim((*n).to_owned())));
        Arg::List(items.collect())
    };
    check(list(&["Rosa", "Tom"]), &[("en-US", "Rosa and Tom"), ("es-ES", "Rosa y Tom")]);
    check(list(&["Rosa", "Inés"]), &[("es-ES", "Rosa e Inés")]);
    check(list(&["Rosa", "Tom", "Ana"]), &[("en-US", "Rosa, Tom, and Ana"), ("es-ES", "Rosa, Tom y Ana")]);
    check(list(&[]), &[("en-US", "")]);
}

#[test]
fn a_name_is_text_and_never_markup() {
    check(Arg::Verbatim("<b>&".into()), &[("en-US", "&lt;b&gt;&amp;")]);
    let mention = Arg::Mention { person: PersonId(7), name: "Rosa <3".into() };
    check(mention.clone(), &[("en-US", "<a href=\"tg://user?id=7\">Rosa &lt;3</a>")]);
    let reader = Reader::new("en-US", America::Chicago, monday());
    assert_eq!(voice().label(&Text::new("probe").with("x", mention), &reader), "Rosa <3");
}

#[test]
fn a_name_written_from_the_right_is_isolated_and_a_plain_one_bears_no_marks() {
    let mention = |name: &str| Arg::Mention { person: PersonId(7), name: name.into() };
    for (name, shown) in [
        ("Rosa", "Rosa"),
        ("Zoë \u{1F468}\u{200D}\u{1F373}", "Zoë \u{1F468}\u{200D}\u{1F373}"),
        ("נועה לוי", "\u{2068}נועה לוי\u{2069}"),
        ("محمد (2)", "\u{2068}محمد (2)\u{2069}"),
        ("\u{202E}evil", "evil"),
        ("\u{2066}נועה\n\u{200B}לוי\u{202C}", "\u{2068}נועה לוי\u{2069}"),
        ("\u{2069}\u{2069}Tom\u{2067}", "Tom"),
    ] {
        check(Arg::Verbatim(name.into()), &[("en-US", shown), ("es-ES", shown)]);
        let reader = Reader::new("en-US", America::Chicago, monday());
        assert_eq!(voice().label(&Text::new("probe").with("x", mention(name)), &reader), shown);
    }
    // The link is the name alone: the platform counts it in UTF-16, and nothing of the marks is in it.
    check(mention("נועה"), &[("en-US", "\u{2068}<a href=\"tg://user?id=7\">נועה</a>\u{2069}")]);
}

proptest::proptest! {
    #[test]
    fn no_name_leaves_an_isolate_open_or_turns_a_message(
        name in "[\u{200E}\u{200F}\u{202A}-\u{202E}\u{2028}\u{2029}\u{2066}-\u{2069}\u{61C}נa٣<&\n \u{1F468}\u{200D}]{0,24}",
        limit in 8..40_usize,
    ) {
        static VOICE: std::sync::LazyLock<Voice> = std::sync::LazyLock::new(Voice::new);
        let name = || Arg::Verbatim(name.clone());
        let who = Text::new("room-board-who").with("name", name());
        let texts = [
            Text::new("room-done-by")
                .with("what", name())
                .with("name", Arg::Mention { person: PersonId(7), name: "\u{5D0}\u{202B}".into() })
                .with("at", Arg::Clock(monday())),
            Text::new("room-board-then").with("when", Arg::DayClock(monday())).with("what", name()).with("who", who.into()),
        ];
        for language in VOICE.languages() {
            let reader = Reader::new(language, America::Chicago, monday());
            let whole = VOICE.render(&texts, &reader);
            let label = VOICE.label(&texts[1], &reader);
            let parts = carvetime::telegram::split::split(&whole, limit);
            let short = carvetime::telegram::split::shorten(&label, limit);
            for line in parts.iter().flat_map(|part| part.lines()).chain(whole.lines()).chain([label.as_str(), &short]) {
                let mut open = 0;
                for c in line.chars() {
                    match c {
                        '\u{2068}' => open += 1,
                        '\u{2069}' => open -= 1,
                        c => proptest::prop_assert!(
                            !matches!(c, '\u{200E}' | '\u{200F}' | '\u{61C}' | '\u{2028}'..='\u{202E}' | '\u{2066}' | '\u{2067}'),
                            "{line:?}"
                        ),
                    }
                    proptest::prop_assert!((0..=1).contains(&open), "{line:?}");
                }
                proptest::prop_assert_eq!(open, 0, "{:?}", line);
            }
        }
    }
}

#[test]
fn units_can_differ_from_what_is_usual_in_the_language() {
    let reader = Reader { units: UnitSystem::Us, ..Reader::new("es-MX", America::Chicago, monday()) };
    let text = Text::new("probe").with("x", Arg::Mass(pounds(14.5)));
    assert_eq!(voice().render(&[text], &reader), "14 lb 8 oz");
}

#[test]
fn a_language_we_do_not_speak_is_answered_in_english_with_its_own_numbers() {
    check(Arg::Number(14.5, 1), &[("da-DK", "14,5")]);
    check(
        Arg::Span(TimeDelta::days(3)),
        &[("da-DK", "3 days"), ("", "3 days"), ("☃", "3 days"), ("en_US.UTF-8", "3 days")],
    );
}

#[test]
fn a_message_missing_in_one_language_is_said_in_english() {
    let sources = [("en", "greet = Hello { $name }\n"), ("es", "other = Otra\n")];
    let voice = Voice::of_sources(sources.map(|(tag, text)| (tag.to_owned(), vec![text.to_owned()])));
    let reader = Reader::new("es-MX", America::Chicago, monday());
    let text = Text::new("greet").with("name", Arg::Verbatim("Rosa".into()));
    assert_eq!(voice.render(&[text], &reader), "Hello Rosa");
}

#[test]
fn a_message_that_cannot_be_written_gives_a_safe_sentence() {
    let reader = Reader::new("en-US", America::Chicago, monday());
    let unsaid = Voice::new().label(&Text::new("units-unsaid"), &reader);
    assert_eq!(Voice::new().render(&[Text::new("nowhere")], &reader), unsaid);
    assert_eq!(Voice::new().render(&[Text::new("units-kg")], &reader), unsaid, "argument missing");
    assert_eq!(Voice::of_sources([]).render(&[Text::new("nowhere")], &reader), "…");
}

#[test]
fn paragraphs_stand_on_lines_of_their_own() {
    let line = |n| Text::new("probe").with("x", Arg::Count(n));
    let reader = Reader::new("en-US", America::Chicago, monday());
    assert_eq!(voice().render(&[line(1), line(2)], &reader), "1\n2");
    check(Arg::Lines(vec![line(1), line(2)]), &[("en-US", "1\n2")]);
}
