//! Languages as people type them: plans, times, moves, readings, reports, short talk, questions. What a meaning
//! is worth is tested in `reading.rs` and `ask.rs`; here it is that it is read in other languages as well. Times are told
//! from Monday, 22 November 2027, 18:30 in Chicago.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod french;
mod german;
mod italian;
mod portuguese;
mod same;
mod spanish;

use carvetime::ask::{Asker, NotUnderstood, ask};
use carvetime::reading::{
    DishOrder, Ground, Lexicon, ReportKind, Scale, Shift, asks_when, asks_who_does_what, is_assent, is_greeting,
    is_help, is_thanks, is_undo, read_dinner_time, read_dish, read_language, read_log, read_report, read_shift,
    read_step, read_takings, read_wish,
};
use carvetime::words::{Arg, Reader, Text, Voice};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{fahrenheit, grams, kilograms, milliliters};
use chrono::{TimeDelta, TimeZone, Utc};
use chrono_tz::Tz;

const CHICAGO: Tz = chrono_tz::America::Chicago;

fn ground(tag: &str) -> Ground {
    let now = CHICAGO.with_ymd_and_hms(2027, 11, 22, 18, 30, 0).unwrap().with_timezone(&Utc);
    Ground::new(tag, true, CHICAGO, now)
}

fn local(at: Moment) -> String {
    at.with_timezone(&CHICAGO).format("%d.%m.@%H:%M").to_string()
}

/// What is read from a sentence of a plan: `name=value`, and what was found wrong.
fn plan(tag: &str, text: &str) -> String {
    let (wish, problems) = read_wish(text, &ground(tag));
    let json = serde_json::to_value(&wish).unwrap();
    let fields = json.as_object().unwrap().iter().filter(|(_, value)| !value.is_null());
    let fields = fields.map(|(name, value)| match value {
        serde_json::Value::Number(n) if n.is_f64() => format!("{name}={:.0}", n.as_f64().unwrap()),
        serde_json::Value::String(s) if name == "dinner" => format!("dinner={}", local(s.parse().unwrap())),
        serde_json::Value::String(s) => format!("{name}={s}"),
        other => format!("{name}={other}"),
    });
    let mut parts: Vec<String> = fields.chain(problems.iter().map(|p| format!("!{p:?}"))).collect();
    parts.sort();
    parts.join(" ")
}

/// Where dinner of Thursday, 17:00, goes.
fn moved(tag: &str, text: &str) -> String {
    let dinner = CHICAGO.with_ymd_and_hms(2027, 11, 25, 17, 0, 0).unwrap().with_timezone(&Utc);
    let shift: Option<Shift> = read_shift(text, dinner, &ground(tag));
    shift.and_then(|shift| shift.applied(dinner)).map_or("-".to_owned(), local)
}

/// The hour of dinner, from a text that says nothing else.
fn hour(tag: &str, text: &str) -> String {
    read_dinner_time(text, &ground(tag)).0.dinner_hour.map_or("-".to_owned(), |hour| hour.format("%H:%M").to_string())
}

/// A dish added or taken away: its name, heat, °C and minutes.
fn dish(tag: &str, text: &str) -> String {
    match read_dish(text, &ground(tag)) {
        None => "-".to_owned(),
        Some(Err(problem)) => format!("!{problem:?}"),
        Some(Ok(DishOrder::Remove(name))) => format!("without {name}"),
        Some(Ok(DishOrder::Add(dish, _))) => {
            let heat = dish.heat.as_deref().unwrap_or("made");
            let setting = dish.setting_c.map_or(String::new(), |setting| format!(" {setting:.0}"));
            format!("{}: {heat}{setting} {}{}", dish.name, dish.minutes, if dish.ahead { " ahead" } else { "" })
        }
    }
}

fn log(tag: &str, text: &str) -> String {
    match read_log(text, &ground(tag)) {
        Ok(None) => "-".to_owned(),
        Err(problem) => format!("!{problem:?}"),
        Ok(Some(log)) => {
            let readings = log.readings.iter().map(|r| {
                let place = r.place.map_or("?", carvetime::reading::Place::name);
                let scale = match r.scale {
                    Some(Scale::Celsius) => "C",
                    Some(Scale::Fahrenheit) => "F",
                    None => "",
                };
                format!("{place}={}{scale}", r.value)
            });
            readings.chain(log.at.map(local)).collect::<Vec<_>>().join(" ")
        }
    }
}

fn report(tag: &str, text: &str) -> String {
    let Some(report) = read_report(text, ground(tag).lexicon) else { return "-".to_owned() };
    let steps: Vec<&str> = report.step.iter().chain(report.or.iter()).map(|step| step.name()).collect();
    let steps = if steps.is_empty() { "due".to_owned() } else { steps.join("|") };
    if report.kind == ReportKind::NotDone { format!("not {steps}") } else { steps }
}

fn talk(tag: &str, text: &str) -> String {
    let lexicon = ground(tag).lexicon;
    type Is = fn(&str, &'static Lexicon) -> bool;
    let all: [(&str, Is); 6] = [
        ("undo", is_undo),
        ("greeting", is_greeting),
        ("assent", is_assent),
        ("thanks", is_thanks),
        ("help", is_help),
        ("when", asks_when),
    ];
    let said: Vec<&str> = all.iter().filter(|(_, is)| is(text, lexicon)).map(|(name, _)| *name).collect();
    said.join("|")
}

fn step(tag: &str, text: &str) -> String {
    read_step(text, ground(tag).lexicon).map_or("-".to_owned(), |(step, nth)| match nth {
        Some(nth) => format!("{} {}", step.name(), nth + 1),
        None => step.name().to_owned(),
    })
}

/// The kind of question and the first value told.
fn question(tag: &str, text: &str) -> String {
    let now = CHICAGO.with_ymd_and_hms(2027, 11, 22, 18, 30, 0).unwrap().with_timezone(&Utc);
    match ask(text, &Asker::new(tag, CHICAGO, now)) {
        Err(NotUnderstood::Unknown) => "!".to_owned(),
        Err(NotUnderstood::Wrong(problem)) => format!("!{problem:?}"),
        Err(NotUnderstood::Impossible(text)) => format!("!{}", text.id),
        Ok(answer) if answer.ask_back.is_some() => format!("{} ? {}", answer.kind, answer.lines()[0].id),
        Ok(answer) => {
            let first = answer.values.iter().take(2).map(|v| format!(" {}={}{}", v.name, v.value, v.unit));
            format!("{}{}", answer.kind, first.collect::<String>())
        }
    }
}

/// All rows of a table that are read otherwise than wanted. A wanted value may be the beginning of what is read, up to a blank.
fn check(tag: &str, read: fn(&str, &str) -> String, table: &[(&str, &str)]) {
    let wrong: Vec<String> = table
        .iter()
        .map(|(text, wanted)| (text, wanted, read(tag, text)))
        .filter(|(_, wanted, got)| got != *wanted && !got.starts_with(&format!("{wanted} ")))
        .map(|(text, wanted, got)| format!("{text}\n   got {got}\nwanted {wanted}"))
        .collect();
    assert!(wrong.is_empty(), "{tag}, {} of {}:\n{}", wrong.len(), table.len(), wrong.join("\n\n"));
}

#[test]
fn amounts_and_times_are_written_as_the_language_does() {
    let voice = Voice::new();
    let at = CHICAGO.with_ymd_and_hms(2027, 11, 25, 17, 0, 0).unwrap().with_timezone(&Utc);
    let later = CHICAGO.with_ymd_and_hms(2027, 12, 24, 18, 30, 0).unwrap().with_timezone(&Utc);
    let spoons = |teaspoons: f64| Arg::Spoons(milliliters(5.0 * teaspoons));
    let span = |minutes| Arg::Span(TimeDelta::minutes(minutes));
    for (arg, german, portuguese, french, italian) in [
        (Arg::Mass(kilograms(14.5)), "14,5 kg", "14,5 kg", "14,5 kg", "14,5 kg"),
        (Arg::Grams(grams(4.25)), "4,3 g", "4,3 g", "4,3 g", "4,3 g"),
        (Arg::Temperature(fahrenheit(165.0)), "74 °C", "74 °C", "74 °C", "74 °C"),
        (spoons(1.0), "1 TL", "1 colher (chá)", "1 c. à café", "1 cucchiaino"),
        (
            spoons(7.5),
            "2 EL + 1½ TL",
            "2 colheres (sopa) + 1½ colheres (chá)",
            "2 c. à soupe + 1½ c. à café",
            "2 cucchiai + 1½ cucchiaini",
        ),
        (span(150), "2 h 30 min", "2 h 30 min", "2 h 30 min", "2 h 30 min"),
        (span(24 * 60 * 3), "3 Tage", "3 dias", "3 jours", "3 giorni"),
        (
            Arg::SpanRange(TimeDelta::days(3), TimeDelta::days(4)),
            "3 bis 4 Tage",
            "de 3 a 4 dias",
            "3 à 4 jours",
            "3–4 giorni",
        ),
        (Arg::Clock(at), "17:00", "17:00", "17:00", "17:00"),
        (Arg::DayClock(at), "Do 17:00", "qui. 17:00", "jeu. 17:00", "gio 17:00"),
        (
            Arg::DayClock(later),
            "Fr., 24. Dez. 18:30",
            "sex., 24 de dez. 18:30",
            "ven. 24 déc. 18:30",
            "ven 24 dic 18:30",
        ),
        (
            Arg::Day(at),
            "Donnerstag, 25. November",
            "quinta-feira, 25 de novembro",
            "jeudi 25 novembre",
            "giovedì 25 novembre",
        ),
        (Arg::Count(12_345), "12.345", "12.345", "12 345", "12.345"),
    ] {
        for (tag, wanted) in [("de-DE", german), ("pt-BR", portuguese), ("fr-FR", french), ("it-IT", italian)] {
            let reader = Reader::new(tag, CHICAGO, ground(tag).now);
            let text = Text::new("ask-span").with("span", arg.clone());
            assert_eq!(voice.label(&text, &reader), wanted, "{tag}");
        }
    }
}

#[test]
fn a_language_is_named_in_any_other() {
    for (tag, text, wanted) in [
        ("en", "german", "de"),
        ("en", "language deutsch", "de"),
        ("es", "portugués", "pt"),
        ("de", "Englisch", "en"),
        ("de", "Sprache Portugiesisch", "pt"),
        ("pt", "alemão", "de"),
        ("pt", "english", "en"),
        ("fr", "anglais", "en"),
        ("fr", "Langue : portugais", "pt"),
        ("fr", "english", "en"),
        ("en", "french", "fr"),
        ("de", "Französisch", "fr"),
        ("it", "tedesco", "de"),
        ("it", "lingua inglese", "en"),
        ("it", "francese", "fr"),
        ("en", "italian", "it"),
    ] {
        assert_eq!(read_language(text, Lexicon::of(tag)), Some(wanted), "{tag} {text}");
    }
}

#[test]
fn a_step_is_known_by_its_name_on_the_board() {
    let voice = Voice::new();
    let mut wrong = Vec::new();
    for tag in ["en", "es", "de", "pt", "fr", "it", "es-MX", "fr-CA"] {
        let reader = Reader::new(tag, CHICAGO, ground(tag).now);
        // A dish is called what its cook calls it.
        let own = Step::ALL.iter().filter(|step| **step != Step::Dish).map(|step| (*step, step.name()));
        for (known, name) in own.chain([(Step::Thaw, "thaw-finish"), (Step::Pack, "pack-hot")]) {
            let shown = voice.label(&Text::named("plan-step", name), &reader);
            // As it stands, and as it is typed in haste.
            for typed in [shown.clone(), shown.to_lowercase()] {
                let read = read_step(&typed, ground(tag).lexicon).map(|(step, _)| step);
                if read != Some(known) {
                    wrong.push(format!("{tag} {typed:?}: {read:?}, not {known:?}"));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert_eq!(read_step("dry", ground("en").lexicon), Some((Step::Temper, None)));
}

#[test]
fn a_bird_carried_hot_or_cold_is_read_in_every_language() {
    let read = |tag: &str, text: &str| {
        let (wish, _) = read_wish(text, &ground(tag));
        (wish.hot, wish.elsewhere, wish.drive_min)
    };
    let hot = (Some(true), Some(true), Some(40));
    let cold = (Some(false), Some(true), Some(40));
    let plain = (None, Some(true), Some(40));
    for (tag, text, expected) in [
        ("en-US", "we bring it hot, 40 min drive", hot),
        ("en-US", "14 lb turkey at my sister's, 40 min drive, and we want it hot", hot),
        ("en-US", "bring the turkey over hot, 40 min drive", hot),
        ("en-US", "40 min drive, carry it cold", cold),
        ("en-US", "bringing it chilled, 40 min drive", cold),
        ("en-US", "at my sister's, 40 min drive", plain),
        ("en-US", "at my sister's, 40 min drive, with hot gravy", plain),
        ("en-US", "hot smoked, at my sister's, 40 min drive", plain),
        ("en-US", "thaw in cold water, at my sister's, 40 min drive", plain),
        ("es-ES", "en casa de mi hermana, a 40 min en coche, lo llevamos caliente", hot),
        ("es-ES", "la llevo caliente, 40 min de camino", hot),
        ("es-ES", "lo llevamos frío, 40 min de camino", cold),
        ("es-ES", "en casa de mi hermana, 40 min de camino, descongelar en agua fría", plain),
        ("fr-FR", "on l'apporte chaude, 40 min de route", hot),
        ("fr-FR", "chez ma sœur, 40 min de route, on l'amène chaude", hot),
        ("fr-FR", "on l'emporte froide, 40 min de route", cold),
        ("fr-FR", "chez ma sœur, 40 min de route", plain),
        ("de-DE", "wir bringen ihn heiß mit, 40 min Fahrt", hot),
        ("de-DE", "heiß mitnehmen, 40 min Fahrt", hot),
        ("de-DE", "bei meiner Schwester, 40 min Fahrt, kalt mitnehmen", cold),
        ("de-DE", "bei meiner Schwester, 40 min Fahrt", plain),
        ("pt-BR", "vamos levar quente, 40 min de carro", hot),
        ("pt-BR", "na casa da minha irmã, 40 min de carro, levamos quente", hot),
        ("pt-BR", "levamos frio, 40 min de carro", cold),
        ("pt-BR", "na casa da minha irmã, 40 min de carro", plain),
        ("it-IT", "lo portiamo caldo, 40 min di macchina", hot),
        ("it-IT", "da mia sorella, 40 min di macchina, la portiamo calda", hot),
        ("it-IT", "lo portiamo freddo, 40 min di macchina", cold),
        ("it-IT", "da mia sorella, 40 min di macchina", plain),
    ] {
        assert_eq!(read(tag, text), expected, "{tag}: {text}");
    }
}

#[test]
fn who_says_they_will_do_a_job_is_understood_and_a_story_is_not() {
    for (tag, text, expected) in [
        ("en-US", "I'll carve", Some(Step::Carve)),
        ("en-US", "I'll do the salting", Some(Step::Salt)),
        ("en-US", "I'll salt it tonight", Some(Step::Salt)),
        ("en-US", "i can take care of the carving", None),
        ("en-US", "carving is mine", Some(Step::Carve)),
        ("en-US", "I'll carve out some time for you", None),
        ("en-US", "I'll salt the road, it's icy", None),
        ("en-US", "carved", None),
        ("en-US", "I carved it", None),
        ("en-US", "can I carve now?", None),
        ("en-US", "we should carve", None),
        ("en-US", "I'll bring the wine", None),
        ("es-ES", "yo trincho", Some(Step::Carve)),
        ("es-ES", "yo me encargo de salar", Some(Step::Salt)),
        ("es-ES", "lo he salado", None),
        ("es-ES", "yo llevo el vino", None),
        ("fr-FR", "je vais découper", Some(Step::Carve)),
        ("fr-FR", "je m'occupe du salage", Some(Step::Salt)),
        ("fr-FR", "j'ai salé", None),
        ("fr-FR", "je m'occupe du vin", None),
        ("de-DE", "ich tranchiere", Some(Step::Carve)),
        ("de-DE", "ich übernehme das Salzen", Some(Step::Salt)),
        ("de-DE", "ich hab ihn gesalzen", None),
        ("de-DE", "ich bringe den Wein", None),
        ("pt-BR", "eu cuido do corte", Some(Step::Carve)),
        ("pt-BR", "eu salgo", Some(Step::Salt)),
        ("pt-BR", "já salguei", None),
        ("pt-BR", "eu levo o vinho", None),
        ("it-IT", "ci penso io alla salatura", Some(Step::Salt)),
        ("it-IT", "taglio io", Some(Step::Carve)),
        ("it-IT", "l'ho salato", None),
        ("it-IT", "io porto il vino", None),
    ] {
        assert_eq!(read_takings(text, ground(tag).lexicon).first().map(|(step, _)| *step), expected, "{tag}: {text}");
    }
    for (tag, text) in [
        ("en-US", "who's doing what?"),
        ("es-ES", "¿quién hace qué?"),
        ("fr-FR", "qui fait quoi ?"),
        ("de-DE", "Wer macht was?"),
        ("pt-BR", "quem faz o quê?"),
        ("it-IT", "chi fa cosa?"),
    ] {
        assert!(asks_who_does_what(text, ground(tag).lexicon), "{tag}: {text}");
    }
}
