//! German and Portuguese as people type them: plans, times, moves, readings, reports, short talk, questions. What a meaning
//! is worth is tested in `reading.rs` and `ask.rs`; here it is that it is read in another language as well. Times are told
//! from Monday, 22 November 2027, 18:30 in Chicago.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::ask::{Asker, NotUnderstood, ask};
use carvetime::reading::{
    DishOrder, Ground, Lexicon, ReportKind, Scale, Shift, is_assent, is_greeting, is_help, is_thanks, is_undo,
    read_dinner_time, read_dish, read_language, read_log, read_report, read_shift, read_step, read_wish,
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
        Some(Ok(DishOrder::Add(dish))) => {
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
    let all: [(&str, Is); 5] =
        [("undo", is_undo), ("greeting", is_greeting), ("assent", is_assent), ("thanks", is_thanks), ("help", is_help)];
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
fn german_plans_are_read() {
    check(
        "de-DE",
        plan,
        &[
            (
                "gefrorene Pute 6,5 kg, Essen Donnerstag 17 Uhr, 11 Personen, Smoker auf 163",
                "adults=11 condition=frozen cooker=smoker dinner=25.11.@17:00 kind=turkey mass_g=6500 setting_c=163",
            ),
            (
                "Wir haben einen gefrorenen Truthahn von 7 Kilo, am Samstag um 18 Uhr kommen 12 Gäste",
                "adults=12 at_home=true condition=frozen dinner=27.11.@18:00 kind=turkey mass_g=7000",
            ),
            (
                "frische Gans, 5,2 kg, Sonntag halb sieben, für 8, Umluft 160 Grad",
                "adults=8 condition=fresh cooker=fan-oven dinner=28.11.@18:30 kind=goose mass_g=5200 setting_c=160",
            ),
            ("Do 17.30 Uhr", "dinner=25.11.@17:30"),
            ("Donnerstag 17 Uhr 30", "dinner=25.11.@17:30"),
            ("am 25. November um 17:30", "dinner=25.11.@17:30"),
            ("25.11. um 18 Uhr", "dinner=25.11.@18:00"),
            ("am 25.11 18 Uhr", "dinner=25.11.@18:00"),
            ("Sa., 27.11.2027, 18 Uhr", "dinner=27.11.@18:00"),
            ("übermorgen mittag", "dinner=24.11.@12:00"),
            ("uebermorgen um 18h", "dinner=24.11.@18:00"),
            ("morgen abend um sechs", "dinner=23.11.@18:00"),
            ("Viertel vor sechs", "dinner_hour=17:45:00"),
            ("viertel nach fünf", "dinner_hour=17:15:00"),
            ("Heiligabend um 19 Uhr", "dinner=24.12.@19:00"),
            ("erster Weihnachtstag 13 Uhr", "dinner=25.12.@13:00"),
            ("in 3 Tagen um 18 Uhr", "dinner=25.11.@18:00"),
            ("Mittagessen Samstag um 11:30", "dinner=27.11.@11:30"),
            ("halb aufgetaute Ente, 2,4 kg", "condition=part-thawed kind=duck mass_g=2400"),
            ("tiefgefrorenes Hähnchen mit 1,8 kg", "condition=frozen kind=chicken mass_g=1800"),
            ("Haehnchen 1800 g", "kind=chicken mass_g=1800"),
            ("Putenbrust 3 kg, gefüllt", "kind=turkey-breast mass_g=3000 stuffed=true"),
            ("4 Erwachsene und 3 Kinder, mit Resten", "adults=4 children=3 leftovers=true"),
            ("wir sind 9, ohne Salz", "adults=9 salting=none"),
            ("Pute enthält bis zu 8 % Salzlake", "kind=turkey solution_percent=8"),
            ("am Vortag, bei meiner Schwester, 40 min Fahrt", "ahead=true drive_min=40 elsewhere=true"),
            ("Ofen 165", "cooker=oven setting_c=165"),
            ("Ober-/Unterhitze 170 Grad", "cooker=oven setting_c=170"),
            ("Kugelgrill bei 160 °C", "cooker=smoker setting_c=160"),
            ("trocken salzen, Backofen", "cooker=oven salting=dry"),
            ("nasse Lake", "salting=wet"),
            ("im Kühlschrank auftauen", "thawing=fridge"),
            ("muss ich noch kaufen", "at_home=false"),
            ("elf Leute", "adults=11"),
            ("vierundzwanzig Gäste", "adults=24"),
            (
                "Truthan gefrorn 6 Kilo, Donerstag 17 Uhr",
                "condition=frozen dinner=25.11.@17:00 kind=turkey mass_g=6000",
            ),
        ],
    );
    check(
        "de-DE",
        moved,
        &[
            ("18 Uhr", "25.11.@18:00"),
            ("um 18.30 Uhr", "25.11.@18:30"),
            ("eine Stunde später", "25.11.@18:00"),
            ("eine halbe Stunde früher", "25.11.@16:30"),
            ("anderthalb Stunden später", "25.11.@18:30"),
            ("auf Freitag", "26.11.@17:00"),
            ("+45 min", "25.11.@17:45"),
            ("45 Minuten nach hinten", "25.11.@17:45"),
        ],
    );
    check(
        "de",
        dish,
        &[
            ("dazu Füllung im Ofen 45 min bei 190", "Füllung: oven 190 45"),
            ("noch Kartoffelpüree auf dem Herd, 40 Minuten", "Kartoffelpüree: stove 40"),
            ("dazu Rotkohl 1 Stunde am Vortag", "Rotkohl: made 60 ahead"),
            ("ohne den Rotkohl", "without Rotkohl"),
            ("dazu Soße", "!NoTime(\"Soße\")"),
        ],
    );
    check("de", hour, &[("17 Uhr", "17:00"), ("halb sechs", "17:30"), ("17.30 Uhr", "17:30"), ("6", "18:00")]);
}

#[test]
fn german_readings_and_reports_are_read() {
    check(
        "de",
        log,
        &[
            ("Brust 53, Keule 61, Garraum 168", "breast=53 thigh=61 pit=168"),
            ("Brust 53 Keule 61 Ofen 165 um 14:05", "breast=53 thigh=61 pit=165 22.11.@14:05"),
            ("53 in der Brust", "breast=53"),
            ("Oberschenkel 61,5 °C", "thigh=61.5C"),
            ("vor 10 Minuten Brust 60", "breast=60 22.11.@18:20"),
            ("Brust 60 um halb sechs", "breast=60 22.11.@17:30"),
            ("Putenbrust 58 Grad", "breast=58"),
            ("58/64/165C", "breast=58C thigh=64C pit=165C"),
        ],
    );
    check(
        "de",
        report,
        &[
            ("erledigt", "due"),
            ("Fertig!", "due"),
            ("hab ich gemacht", "due"),
            ("ist drin", "on"),
            ("Die Pute ist im Ofen", "on"),
            ("ist jetzt auf dem Grill", "on"),
            ("habe sie gesalzen", "salt"),
            ("Wasser gewechselt", "water"),
            ("hab das Wasser gerade gewechselt", "water"),
            ("liegt im Kühlschrank", "thaw|chill"),
            ("ist aus dem Ofen raus", "-"),
            ("aus dem Ofen geholt", "pull"),
            ("Ofen ist an", "fire"),
            ("Kohle glüht", "fire"),
            ("tranchiert", "carve"),
            ("Reste sind im Kühlschrank", "chill"),
            ("wir sind unterwegs", "travel"),
            ("Vogel ist gekauft", "buy"),
            ("noch nicht", "not due"),
            ("hab vergessen", "not due"),
            ("noch gefroren", "not thaw"),
            ("Ist innen noch gefroren", "not thaw"),
            ("sie ist immer noch steinhart", "not thaw"),
            ("noch nicht gesalzen", "not salt"),
            ("noch nicht im Ofen", "not on"),
            ("done", "due"),
            ("ist sie im Ofen?", "-"),
            ("gefrorene Pute", "-"),
            ("Ofen", "-"),
        ],
    );
    check(
        "de",
        talk,
        &[
            ("rückgängig", "undo"),
            ("rueckgaengig machen", "undo"),
            ("falscher Knopf", "undo"),
            ("Moin", "greeting"),
            ("Guten Abend zusammen", "-"),
            ("Grüß Gott", "greeting"),
            ("klingt gut", "assent"),
            ("ja bitte", "assent"),
            ("Passt so", "assent"),
            ("vielen Dank!", "thanks"),
            ("Hilfe", "help"),
            ("wie geht das", "help"),
        ]
        .map(|(text, wanted)| if wanted == "-" { (text, "") } else { (text, wanted) }),
    );
    check(
        "de",
        step,
        &[
            ("tranchieren", "carve"),
            ("Wasserwechsel 3", "water 3"),
            ("auftauen", "thaw"),
            ("carve", "carve"),
            ("Ofen vorheizen", "fire"),
            ("Vogel salzen", "salt"),
            ("Temperaturen prüfen", "check"),
        ],
    );
}

#[test]
fn german_questions_are_answered() {
    check(
        "de-DE",
        question,
        &[
            ("2 EL Tafelsalz in koscheres Flockensalz", "salt-convert volume=4.28tbsp"),
            ("2 Esslöffel Kochsalz in Salzflocken", "salt-convert volume=4.28tbsp"),
            ("4 TL Flockensalz in grobes koscheres Salz", "salt-convert volume=2.33tsp"),
            ("1 Teelöffel Tafelsalz in Gramm", "salt-convert mass=6.09g"),
            ("wieviel Salz für 6 kg", "salt-dose mass=23.33g"),
            ("Wie viel Salz für eine Pute mit 5,76 kg?", "salt-dose mass=22.4g"),
            ("Salz für eine Pute mit 5,5 kg", "salt-dose mass=21.39g"),
            ("wie viel Salz pro Kilo", "salt-dose mass=3.89g"),
            ("Wie viel Salz für Pute", "salt-dose ? ask-back-mass"),
            ("6 % Lake für 4 l", "brine salt=255.32g water=4L"),
            ("mein Salz: 1/4 TL sind 0,7 g", "own-salt"),
            ("wie tief dringt Salz in 24 Stunden ein", "salt-depth depth=9.42mm"),
            ("Natrium in einer Pute mit 6,5 kg für 11 Personen", "sodium"),
            ("wie lange auftauen", "thaw-time"),
            ("wie lange taut eine Pute mit 6,5 kg", "thaw-time fridge-low=72h fridge-high=96h"),
            ("Wie lange braucht eine Pute mit 6 kg im Ofen bei 165?", "roast-time"),
            ("Garzeit Gans 5 kg Umluft 160 Grad", "roast-time"),
            ("wie groß für 11 Personen", "portions"),
            ("wieviel kg Pute für 11 Leute", "portions"),
            ("reicht eine Pute mit 6 kg für 12 Personen", "portions"),
            ("sind 70 °C für 2 Minuten sicher", "lethality needed=40.9s"),
            ("sind 70 für 2 Minuten sicher?", "lethality ? ask-back-scale"),
            ("Ist Pute bei 68 Grad sicher?", "lethality"),
            ("welche Kerntemperatur", "safe-temp temperature=165°F"),
            ("wie heiß muss die Pute innen sein", "safe-temp temperature=165°F"),
            ("Ist rosa Fleisch ok?", "safe-temp temperature=165°F"),
            ("Pute stand 3 Stunden draußen, ok?", "left-out over=60min discard=1"),
            ("Pute stand über Nacht auf der Arbeitsplatte, noch gut?", "left-out over=360min discard=1"),
            ("wie lange darf sie draußen stehen", "left-out limit=2h"),
            ("wie lange halten sich Reste", "keeps days-low=3d days-high=4d"),
            ("wie lange halten sich Reste im Gefrierfach", "keeps months-low=3month"),
            ("Reste aufwärmen", "reheat temperature=165°F"),
            ("muss ich die Pute waschen", "wash"),
            ("darf ich auf der Arbeitsplatte auftauen", "counter-thaw"),
            ("darf ich wieder einfrieren", "refreeze"),
            ("gefrorene Pute frittieren", "fry"),
            ("Holzkohle in der Garage", "charcoal-indoors"),
            ("wie viel Holzkohle für 4 Stunden", "fuel"),
            ("wie lange ruhen lassen", "stand least=20min"),
            ("Pute bis zum Essen warm halten", "hold temperature=140°F"),
            ("auf wie viel Grad der Ofen", "oven-temp temperature=325°F"),
            ("Ist Füllung sicher?", "stuffing"),
            ("325 °F in °C", "unit-convert"),
            ("Gasstufe 3 in Grad C", "unit-convert"),
            ("die Pute ist noch gefroren, was jetzt", "still-frozen"),
            ("der Ofen ist kaputt", "oven-down"),
            ("die Pute wird zu schnell gar", "too-fast"),
            ("muss ich die Pute begießen", "baste"),
            ("wo kommt das Thermometer hin", "thermometer"),
            ("Soße für 10", "sides volume-low=790mL"),
            ("wie kalt muss der Kühlschrank sein", "fridge-temp"),
            ("Quatsch mit Sahne", "!"),
        ],
    );
}

#[test]
fn portuguese_plans_are_read() {
    check(
        "pt-BR",
        plan,
        &[
            (
                "peru congelado de 6,5 kg, jantar quinta às 17h, 11 pessoas, defumador a 163",
                "adults=11 condition=frozen cooker=smoker dinner=25.11.@17:00 kind=turkey mass_g=6500 setting_c=163",
            ),
            (
                "tenho um peru congelado de 7 quilos e 12 convidados no sábado às 18h",
                "adults=12 at_home=true condition=frozen dinner=27.11.@18:00 kind=turkey mass_g=7000",
            ),
            (
                "ganso fresco, 5,2 kg, domingo às seis e meia, para 8, forno com ventilador a 160 graus",
                "adults=8 condition=fresh cooker=fan-oven dinner=28.11.@18:30 kind=goose mass_g=5200 setting_c=160",
            ),
            ("quinta-feira às 17h30", "dinner=25.11.@17:30"),
            ("quinta 17:30", "dinner=25.11.@17:30"),
            ("dia 25 de novembro às 17:30", "dinner=25.11.@17:30"),
            ("25/11 às 18h", "dinner=25.11.@18:00"),
            ("depois de amanhã ao meio-dia", "dinner=24.11.@12:00"),
            ("amanhã às 6 da tarde", "dinner=23.11.@18:00"),
            ("amanhã às 18 horas", "dinner=23.11.@18:00"),
            ("às sete da noite", "dinner_hour=19:00:00"),
            ("véspera de Natal às 21h", "dinner=24.12.@21:00"),
            ("Natal às 13h", "dinner=25.12.@13:00"),
            ("daqui a 3 dias às 18h", "dinner=25.11.@18:00"),
            ("almoço sábado às 11:30", "dinner=27.11.@11:30"),
            ("pato meio descongelado, 2,4 kg", "condition=part-thawed kind=duck mass_g=2400"),
            ("frango de 1800 g", "kind=chicken mass_g=1800"),
            ("peito de peru 3 kg, recheado", "kind=turkey-breast mass_g=3000 stuffed=true"),
            ("4 adultos e 3 crianças, com sobras", "adults=4 children=3 leftovers=true"),
            ("somos 9, sem sal", "adults=9 salting=none"),
            ("peru contém até 8 % de solução", "kind=turkey solution_percent=8"),
            ("assar na véspera, na casa da minha irmã, 40 min de carro", "ahead=true drive_min=40 elsewhere=true"),
            ("forno a 165", "cooker=oven setting_c=165"),
            ("churrasqueira a 160 °C", "cooker=smoker setting_c=160"),
            ("salmoura seca, forno", "cooker=oven salting=dry"),
            ("na salmoura", "salting=wet"),
            ("descongelar na geladeira", "thawing=fridge"),
            ("ainda tenho que comprar", "at_home=false"),
            ("onze pessoas", "adults=11"),
            ("vinte e quatro pessoas", "adults=24"),
            ("peru congeldo 6 quilos, quinta às 17h", "condition=frozen dinner=25.11.@17:00 kind=turkey mass_g=6000"),
        ],
    );
    check(
        "pt-BR",
        moved,
        &[
            ("18h", "25.11.@18:00"),
            ("às 18:30", "25.11.@18:30"),
            ("para as 18h", "25.11.@18:00"),
            ("uma hora mais tarde", "25.11.@18:00"),
            ("meia hora antes", "25.11.@16:30"),
            ("uma hora e meia mais tarde", "25.11.@18:30"),
            ("sexta", "26.11.@17:00"),
            ("+45 min", "25.11.@17:45"),
        ],
    );
    check(
        "pt",
        dish,
        &[
            ("inclui recheio no forno 45 min a 190", "recheio: oven 190 45"),
            ("adiciona purê no fogão, 40 minutos", "purê: stove 40"),
            ("inclui farofa 30 min na véspera", "farofa: made 30 ahead"),
            ("tira a farofa", "without farofa"),
            ("inclui molho", "!NoTime(\"molho\")"),
        ],
    );
    check("pt", hour, &[("17h", "17:00"), ("17h30", "17:30"), ("às 17h", "17:00"), ("cinco e meia", "17:30")]);
}

#[test]
fn portuguese_readings_and_reports_are_read() {
    check(
        "pt",
        log,
        &[
            ("peito 53, coxa 61, ar 168", "breast=53 thigh=61 pit=168"),
            ("peito 53 sobrecoxa 61 forno 165 às 14:05", "breast=53 thigh=61 pit=165 22.11.@14:05"),
            ("53 no peito", "breast=53"),
            ("coxa 61,5 °C", "thigh=61.5C"),
            ("há 10 minutos peito 60", "breast=60 22.11.@18:20"),
            ("peito 60 às cinco e meia", "breast=60 22.11.@17:30"),
            ("peito de peru 58 graus", "breast=58"),
            ("58/64/165C", "breast=58C thigh=64C pit=165C"),
        ],
    );
    check(
        "pt",
        report,
        &[
            ("feito", "due"),
            ("Pronto!", "due"),
            ("já fiz", "due"),
            ("já está no forno", "on"),
            ("O peru está no forno", "on"),
            ("coloquei no forno agora", "on"),
            ("já salguei", "salt"),
            ("troquei a água", "water"),
            ("água trocada", "water"),
            ("coloquei na geladeira", "thaw|chill"),
            ("tirei do forno", "pull"),
            ("forno ligado", "fire"),
            ("carvão aceso", "fire"),
            ("cortei", "carve"),
            ("as sobras estão na geladeira", "chill"),
            ("estamos a caminho", "travel"),
            ("já comprei", "buy"),
            ("ainda não", "not due"),
            ("esqueci", "not due"),
            ("ainda está congelado", "not thaw"),
            ("continua duro feito pedra", "not thaw"),
            ("ainda tem gelo dentro", "not thaw"),
            ("não salguei", "not salt"),
            ("ainda não está no forno", "not on"),
            ("done", "due"),
            ("está no forno?", "-"),
            ("peru congelado de 6 kg", "-"),
            ("forno", "-"),
        ],
    );
    check(
        "pt",
        talk,
        &[
            ("desfazer", "undo"),
            ("me enganei", "undo"),
            ("botão errado", "undo"),
            ("Bom dia", "greeting"),
            ("oi pessoal", "greeting"),
            ("beleza", "assent"),
            ("pode ser", "assent"),
            ("Muito obrigada!", "thanks"),
            ("valeu", "thanks"),
            ("ajuda", "help"),
        ],
    );
    check(
        "pt",
        step,
        &[
            ("cortar", "carve"),
            ("troca de água 3", "water 3"),
            ("descongelar", "thaw"),
            ("carve", "carve"),
            ("ligar o forno", "fire"),
            ("salgar a ave", "salt"),
            ("medir temperaturas", "check"),
        ],
    );
}

#[test]
fn portuguese_questions_are_answered() {
    check(
        "pt-BR",
        question,
        &[
            ("2 colheres de sopa de sal de mesa em kosher em flocos", "salt-convert volume=4.28tbsp"),
            ("4 colheres de chá de sal kosher em flocos em kosher grosso", "salt-convert volume=2.33tsp"),
            ("1 colher de chá de sal de mesa em gramas", "salt-convert mass=6.09g"),
            ("quanto sal para 6 kg", "salt-dose mass=23.33g"),
            ("Quanto sal para um peru de 5,76 kg?", "salt-dose mass=22.4g"),
            ("sal para um peru de 5,5 kg", "salt-dose mass=21.39g"),
            ("quanto sal por quilo", "salt-dose mass=3.89g"),
            ("quanto sal para peru", "salt-dose ? ask-back-mass"),
            ("salmoura a 6 % para 4 litros", "brine salt=255.32g water=4L"),
            ("meu sal: 1/4 colher de chá são 0,7 g", "own-salt"),
            ("até onde o sal penetra em 24 horas", "salt-depth depth=9.42mm"),
            ("sódio num peru de 6,5 kg para 11 pessoas", "sodium"),
            ("quanto tempo descongelar", "thaw-time"),
            ("quanto tempo descongela um peru de 6,5 kg", "thaw-time fridge-low=72h fridge-high=96h"),
            ("quanto tempo assa um peru de 6 kg no forno a 165?", "roast-time"),
            ("ganso de 5 kg forno com ventilador a 160 graus quanto tempo", "roast-time"),
            ("que tamanho para 11 pessoas", "portions"),
            ("quantos quilos de peru para 11 pessoas", "portions"),
            ("um peru de 6 kg dá para quantas pessoas", "portions"),
            ("70 °C por 2 minutos é seguro", "lethality needed=40.9s"),
            ("70 por 2 minutos é seguro?", "lethality ? ask-back-scale"),
            ("peru a 68 graus é seguro?", "lethality"),
            ("a que temperatura está pronto o peru", "safe-temp temperature=165°F"),
            ("peru rosado tudo bem?", "safe-temp temperature=165°F"),
            ("peru fora 3 horas, tudo bem?", "left-out over=60min discard=1"),
            ("deixei o peru fora a noite toda, ainda dá?", "left-out over=360min discard=1"),
            ("quanto tempo pode ficar fora", "left-out limit=2h"),
            ("quanto tempo duram as sobras", "keeps days-low=3d days-high=4d"),
            ("quanto tempo duram as sobras no freezer", "keeps months-low=3month"),
            ("reaquecer as sobras", "reheat temperature=165°F"),
            ("tenho que lavar o peru", "wash"),
            ("posso descongelar na bancada", "counter-thaw"),
            ("posso congelar de novo", "refreeze"),
            ("fritar peru congelado", "fry"),
            ("carvão na garagem", "charcoal-indoors"),
            ("quanto carvão para 4 horas", "fuel"),
            ("quanto tempo de descanso", "stand least=20min"),
            ("como manter quente", "hold temperature=140°F"),
            ("a quantos graus o forno", "oven-temp temperature=325°F"),
            ("recheio é seguro?", "stuffing"),
            ("325 °F em °C", "unit-convert"),
            ("o peru ainda está congelado, o que faço", "still-frozen"),
            ("meu forno quebrou", "oven-down"),
            ("o peru está assando rápido demais", "too-fast"),
            ("preciso regar o peru", "baste"),
            ("onde coloco o termômetro", "thermometer"),
            ("molho para 10", "sides volume-low=790mL"),
            ("a que temperatura fica a geladeira", "fridge-temp"),
            ("bobagem com creme", "!"),
        ],
    );
}

#[test]
fn amounts_and_times_are_written_as_the_language_does() {
    let voice = Voice::new();
    let at = CHICAGO.with_ymd_and_hms(2027, 11, 25, 17, 0, 0).unwrap().with_timezone(&Utc);
    let later = CHICAGO.with_ymd_and_hms(2027, 12, 24, 18, 30, 0).unwrap().with_timezone(&Utc);
    let spoons = |teaspoons: f64| Arg::Spoons(milliliters(5.0 * teaspoons));
    let span = |minutes| Arg::Span(TimeDelta::minutes(minutes));
    for (arg, german, portuguese) in [
        (Arg::Mass(kilograms(14.5)), "14,5 kg", "14,5 kg"),
        (Arg::Grams(grams(4.25)), "4,3 g", "4,3 g"),
        (Arg::Temperature(fahrenheit(165.0)), "74 °C", "74 °C"),
        (spoons(1.0), "1 TL", "1 colher (chá)"),
        (spoons(7.5), "2 EL + 1½ TL", "2 colheres (sopa) + 1½ colheres (chá)"),
        (span(150), "2 h 30 min", "2 h 30 min"),
        (span(24 * 60 * 3), "3 Tage", "3 dias"),
        (Arg::SpanRange(TimeDelta::days(3), TimeDelta::days(4)), "3 bis 4 Tage", "de 3 a 4 dias"),
        (Arg::Clock(at), "17:00", "17:00"),
        (Arg::DayClock(at), "Do 17:00", "qui. 17:00"),
        (Arg::DayClock(later), "Fr., 24. Dez. 18:30", "sex., 24 de dez. 18:30"),
        (Arg::Day(at), "Donnerstag, 25. November", "quinta-feira, 25 de novembro"),
        (Arg::Count(12_345), "12.345", "12.345"),
    ] {
        for (tag, wanted) in [("de-DE", german), ("pt-BR", portuguese)] {
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
    ] {
        assert_eq!(read_language(text, Lexicon::of(tag)), Some(wanted), "{tag} {text}");
    }
}

#[test]
fn a_step_is_known_by_its_name_on_the_board() {
    let voice = Voice::new();
    for tag in ["de", "pt"] {
        let reader = Reader::new(tag, CHICAGO, ground(tag).now);
        // A dish is called what its cook calls it.
        for known in Step::ALL.iter().filter(|step| **step != Step::Dish) {
            let name = voice.label(&Text::named("plan-step", known.name()), &reader);
            let read = read_step(&name, ground(tag).lexicon).map(|(step, _)| step);
            assert_eq!(read, Some(*known), "{tag} {name}");
        }
    }
}
