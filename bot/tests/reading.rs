//! What people type, and what it is read as. Times are told from Monday, 22 November 2027, 18:30 in Chicago.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::reading::{
    Answer, Ground, Lean, Lexicon, Place, Problem, Reading, ReportKind, Scale, Shift, When, Wish, Zones, easter,
    is_assent, is_greeting, is_thanks, is_undo, read_answer, read_dinner_time, read_log, read_report, read_shift,
    read_step, read_wish, read_zone, report_beside, settle, zone_at,
};
use carvetime_core::plan::{Moment, Step};
use chrono::{NaiveDate, NaiveDateTime, TimeDelta, TimeZone, Utc};
use chrono_tz::Tz;
use proptest::prelude::*;

const CHICAGO: Tz = chrono_tz::America::Chicago;

fn ground(tag: &str) -> Ground {
    let now = CHICAGO.with_ymd_and_hms(2027, 11, 22, 18, 30, 0).unwrap().with_timezone(&Utc);
    Ground::new(tag, tag != "en-US", CHICAGO, now)
}

fn at(local: &str) -> Moment {
    settle(CHICAGO, NaiveDateTime::parse_from_str(local, "%Y-%m-%d %H:%M").unwrap())
}

/// The wish as `name=value`, and what was found wrong.
fn told(tag: &str, text: &str) -> String {
    let (wish, problems) = read_wish(text, &ground(tag));
    let json = serde_json::to_value(&wish).unwrap();
    let mut parts: Vec<String> = Vec::new();
    for (name, value) in json.as_object().unwrap() {
        match value {
            serde_json::Value::Null => {}
            serde_json::Value::Number(n) if n.is_f64() => parts.push(format!("{name}={:.0}", n.as_f64().unwrap())),
            serde_json::Value::String(s) if name == "dinner" => {
                let moment: Moment = s.parse().unwrap();
                parts.push(format!("dinner={}", moment.with_timezone(&CHICAGO).format("%m-%d %H:%M")));
            }
            serde_json::Value::String(s) => parts.push(format!("{name}={s}")),
            other => parts.push(format!("{name}={other}")),
        }
    }
    parts.extend(problems.iter().map(|p| match p {
        Problem::Mass(kg) => format!("!Mass({kg:.1})"),
        other => format!("!{other:?}"),
    }));
    parts.sort();
    parts.join(" ")
}

fn check_wishes(tag: &str, table: &[(&str, &str)]) {
    let mut wrong = Vec::new();
    for (text, wanted) in table {
        let mut wanted: Vec<&str> = wanted.split(' ').filter(|part| !part.is_empty()).collect();
        // A moment has a blank in it.
        let mut joined: Vec<String> = Vec::new();
        wanted.reverse();
        while let Some(part) = wanted.pop() {
            match joined.last_mut() {
                Some(last) if last.starts_with("dinner=") && part.contains(':') => *last = format!("{last} {part}"),
                _ => joined.push(part.to_owned()),
            }
        }
        joined.sort();
        let got = told(tag, text);
        if got != joined.join(" ") {
            wrong.push(format!("{text}\n   got {got}\nwanted {}", joined.join(" ")));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

#[test]
fn english_plan_sentences_are_read() {
    check_wishes(
        "en-US",
        &[
            (
                "14.5 lb frozen turkey, dinner Thursday 5 pm, 11 people, smoker at 325",
                "mass_g=6577 condition=frozen kind=turkey dinner=11-25 17:00 adults=11 cooker=smoker setting_c=163",
            ),
            (
                "I have a 14 lb frozen bird and 10 guests on Sunday at 5",
                "at_home=true mass_g=6350 condition=frozen adults=10 dinner=11-28 17:00",
            ),
            ("Turkey 12 lb 8 oz already thawed, spatchcocked", "kind=turkey mass_g=5670 condition=fresh form=flat"),
            ("stuffed 18 pound turkey, no salt", "kind=turkey mass_g=8165 stuffed=true salting=none"),
            ("dry brine, 4 adults 3 kids, with leftovers", "salting=dry adults=4 children=3 leftovers=true"),
            ("wet brine it, table of 8", "salting=wet adults=8"),
            ("turkey contains up to 8% solution", "kind=turkey solution_percent=8"),
            ("15lb self-basting turkey", "kind=turkey mass_g=6804 solution_percent=3"),
            ("cook it the day before, at my sister's, 40 min drive", "ahead=true elsewhere=true drive_min=40"),
            ("fan oven 160C", "cooker=fan-oven setting_c=160"),
            ("gas mark 3", "cooker=oven setting_c=163"),
            ("oven at 350", "cooker=oven setting_c=177"),
            ("smoke a 12 lb turkey at 275", "cooker=smoker mass_g=5443 kind=turkey setting_c=135"),
            ("roast chicken for 6 on 25 Nov at 5pm", "kind=chicken adults=6 dinner=11-25 17:00"),
            ("Thanksgiving at 4, turkey breast 6 lb", "dinner=11-25 16:00 kind=turkey-breast mass_g=2722"),
            ("tomorrow at noon", "dinner=11-23 12:00"),
            ("dinner on Sunday", "dinner_day=2027-11-28"),
            ("dinner at half past five", "dinner_hour=17:30:00"),
            ("2027-11-25 17:00", "dinner=11-25 17:00"),
            ("Thu 5.30pm", "dinner=11-25 17:30"),
            ("Nov 25th, 2027 at 6 p.m.", "dinner=11-25 18:00"),
            ("11/25 at 5", "dinner=11-25 17:00"),
            ("lunch Saturday at 11:30", "dinner=11-27 11:30"),
            ("Monday 6 pm", "dinner=11-29 18:00"),
            ("Monday 7 pm", "dinner=11-22 19:00"),
            ("for 11, Thursday at 17:00", "adults=11 dinner=11-25 17:00"),
            (
                "trukey 14 lbs frozn, thursady 5pm, eleven poeple",
                "kind=turkey mass_g=6350 condition=frozen dinner=11-25 17:00 adults=11",
            ),
            ("14 pounder, part-thawed, 10-12 people", "mass_g=6350 condition=part-thawed adults=12"),
            ("cook from frozen", "thawing=cook-frozen condition=frozen"),
            ("frozen turkey 14", "condition=frozen kind=turkey mass_g=6350"),
            ("5.8\u{a0}kg goose in 3 days at 18h", "kind=goose mass_g=5800 dinner=11-25 18:00"),
            ("Christmas eve at seven, duck", "dinner=12-24 19:00 kind=duck"),
            ("hello there", ""),
            ("\u{202e}🦃🦃🦃", ""),
            ("", ""),
        ],
    );
}

#[test]
fn spanish_plan_sentences_are_read() {
    check_wishes(
        "es",
        &[
            (
                "pavo congelado de 6,5 kg, cena el jueves a las 17, 11 personas, horno a 165",
                "kind=turkey condition=frozen mass_g=6500 dinner=11-25 17:00 adults=11 cooker=oven setting_c=165",
            ),
            ("el jueves a las 5 de la tarde", "dinner=11-25 17:00"),
            ("mañana a las 17", "dinner=11-23 17:00"),
            ("mañana por la mañana a las 10", "dinner=11-23 10:00"),
            ("pasado mañana al mediodía, somos 8", "dinner=11-24 12:00 adults=8"),
            ("domingo", "dinner_day=2027-11-28"),
            ("cena a las cinco y media", "dinner_hour=17:30:00"),
            ("cena a las seis menos cuarto", "dinner_hour=17:45:00"),
            ("el 25 de noviembre a las 17:30", "dinner=11-25 17:30"),
            ("25/11 a las 17", "dinner=11-25 17:00"),
            (
                "pollo fresco, sin sal, 4 adultos y 3 niños, con sobras",
                "kind=chicken condition=fresh salting=none adults=4 children=3 leftovers=true",
            ),
            (
                "cocinarlo el día antes, en casa de mi hermana, 40 min en coche",
                "ahead=true elsewhere=true drive_min=40",
            ),
            ("horno con ventilador a 150 °C, pavo relleno", "cooker=fan-oven setting_c=150 kind=turkey stuffed=true"),
            ("ahumador a 325 F, pavo abierto", "cooker=smoker setting_c=163 kind=turkey form=flat"),
            ("Nochebuena a las 9 de la noche", "dinner=12-24 21:00"),
            ("contiene hasta 8 % de solución", "solution_percent=8"),
            ("frozen turkey 14 lb", "condition=frozen kind=turkey mass_g=6350"),
            ("PAVO CONGELAOD, JUEVES 17:00", "kind=turkey condition=frozen dinner=11-25 17:00"),
        ],
    );
}

#[test]
fn what_cannot_be_right_is_told_with_its_value_and_the_rest_is_kept() {
    check_wishes(
        "en-US",
        &[
            ("-5 lb turkey for 8", "!Mass(-2.3) kind=turkey adults=8"),
            ("900 lb turkey", "!Mass(408.2) kind=turkey"),
            ("minus 5 lb", "!Mass(-2.3)"),
            ("14 lb turkey, 0 guests", "!Guests(0.0) kind=turkey mass_g=6350"),
            ("5000 people", "!Guests(5000.0)"),
            ("-3 people", "!Guests(-3.0)"),
            ("2.5 people", "!Guests(2.5)"),
            ("oven at 400C", "!Setting(400.0) cooker=oven"),
            ("deep fried turkey", "!Fryer kind=turkey"),
            ("90% solution", "!Solution(90.0)"),
        ],
    );
    let (_, problems) = read_wish("dinner 2027-11-20 17:00", &ground("en-US"));
    assert_eq!(problems, [Problem::Past(at("2027-11-20 17:00"))]);
    let (_, problems) = read_wish("dinner today at 5 pm", &ground("en-US"));
    assert_eq!(problems, [Problem::Past(at("2027-11-22 17:00"))]);
    let (_, problems) = read_wish("dinner 2035-11-20 17:00", &ground("en-US"));
    assert_eq!(problems, [Problem::Far(at("2035-11-20 17:00"))]);
}

#[test]
fn a_later_sentence_changes_only_what_it_says() {
    let ground = ground("en-US");
    let (mut wish, _) = read_wish("14 lb frozen turkey, Thursday 5 pm, 11 people", &ground);
    for (text, dinner, adults) in [
        ("make it 12 people", "2027-11-25 17:00", 12),
        ("at 6", "2027-11-25 18:00", 12),
        ("on Friday", "2027-11-26 18:00", 12),
        ("Saturday at 1 pm", "2027-11-27 13:00", 12),
    ] {
        wish.merge(read_wish(text, &ground).0);
        wish.settle(&ground);
        assert_eq!((wish.dinner, wish.adults), (Some(at(dinner)), Some(adults)), "{text}");
        assert_eq!(wish.condition.as_deref(), Some("frozen"));
    }
    let mut halves = Wish::default();
    halves.merge(read_wish("Sunday", &ground).0);
    halves.merge(read_dinner_time("6", &ground).0);
    halves.settle(&ground);
    assert_eq!(halves.dinner, Some(at("2027-11-28 18:00")));
}

#[test]
fn readings_are_read_with_place_scale_and_time() {
    let en = ground("en-US");
    let read = |text: &str| read_log(text, &en).map(|log| log.map(|log| (log.readings, log.at)));
    let spot = |place, value, scale| Reading { place, value, scale };
    let (b, t, p) = (Some(Place::Breast), Some(Place::Thigh), Some(Place::Pit));
    assert_eq!(
        read("breast 128, thigh 141, pit 335 at 14:05"),
        Ok(Some((
            vec![spot(b, 128.0, None), spot(t, 141.0, None), spot(p, 335.0, None)],
            Some(at("2027-11-22 14:05"))
        )))
    );
    let c = Some(Scale::Celsius);
    assert_eq!(read("58/64/165C"), Ok(Some((vec![spot(b, 58.0, c), spot(t, 64.0, c), spot(p, 165.0, c)], None))));
    assert_eq!(read("58 / 64"), Ok(Some((vec![spot(b, 58.0, None), spot(t, 64.0, None)], None))));
    assert_eq!(read("breast 58, pit 331"), Ok(Some((vec![spot(b, 58.0, None), spot(p, 331.0, None)], None))));
    assert_eq!(read("128 breast 141 thigh"), Ok(Some((vec![spot(b, 128.0, None), spot(t, 141.0, None)], None))));
    assert_eq!(read("128°F"), Ok(Some((vec![spot(None, 128.0, Some(Scale::Fahrenheit))], None))));
    assert_eq!(read("141"), Ok(Some((vec![spot(None, 141.0, None)], None))));
    assert_eq!(read("thigh 60.5 C 10 minutes ago"), Ok(Some((vec![spot(t, 60.5, c)], Some(at("2027-11-22 18:20"))))));
    assert_eq!(read("breast 128 at 2:05"), Ok(Some((vec![spot(b, 128.0, None)], Some(at("2027-11-22 14:05"))))));
    assert_eq!(read("how is it going"), Ok(None));
    assert_eq!(read("breast 2000"), Err(Problem::Reading { value: 2000.0, scale: None }));
    assert_eq!(read("breast 128 breast 130"), Ok(Some((vec![spot(b, 128.0, None), spot(b, 130.0, None)], None))));
    assert_eq!(read("wing 160"), Ok(Some((vec![spot(Some(Place::Wing), 160.0, None)], None))));
    let es = ground("es");
    let log = read_log("pechuga 58,5, muslo 64 a las 18:10", &es).unwrap().unwrap();
    assert_eq!((log.readings, log.at), (vec![spot(b, 58.5, None), spot(t, 64.0, None)], Some(at("2027-11-22 18:10"))));
}

#[test]
fn the_name_before_all_numbers_is_no_reading_of_the_air() {
    let readings = |tag: &str, text: &str| {
        let log = read_log(text, &ground(tag)).unwrap().unwrap();
        log.readings.into_iter().map(|it| (it.place.unwrap(), it.value)).collect::<Vec<_>>()
    };
    let cold = vec![(Place::Breast, 152.0), (Place::Thigh, 165.0), (Place::Wing, 166.0)];
    for text in [
        "smoker bird 152 breast, 165 thigh, 166 wing",
        "oven: 152 breast, 165 thigh, 166 wing",
        "oven bird 152 breast 165 thigh 166 wing",
        "oven: breast 152, thigh 165, wing 166",
    ] {
        assert_eq!(readings("en-US", text), cold, "{text}");
    }
    for (tag, text) in [
        ("de", "Ofen: 62 Brust, 74 Keule"),
        ("es", "horno: 62 pechuga, 74 muslo"),
        ("fr", "four : 62 blanc, 74 cuisse"),
        ("it", "forno: 62 petto, 74 coscia"),
        ("pt", "forno: 62 peito, 74 coxa"),
    ] {
        assert_eq!(readings(tag, text), [(Place::Breast, 62.0), (Place::Thigh, 74.0)], "{text}");
    }
    let hot = [(Place::Pit, 350.0), (Place::Breast, 152.0), (Place::Thigh, 165.0)];
    for text in
        ["oven 350, 152 breast, 165 thigh", "oven at 350, breast 152, thigh 165", "350 pit 152 breast 165 thigh"]
    {
        assert_eq!(readings("en-US", text), hot, "{text}");
    }
    // An air too hot for meat is the air's, and the last place has no number yet.
    assert_eq!(readings("en-US", "pit 225 breast 150 thigh")[0], (Place::Pit, 225.0));
    assert_eq!(readings("en-US", "breast 150 thigh 160 wing")[0], (Place::Breast, 150.0));
}

#[test]
fn what_is_said_behind_the_numbers_is_heard() {
    let lexicon = Lexicon::of("en");
    for text in ["166 174 wing 171 its off", "breast 166, thigh 174 pulled it", "166/175F took it out"] {
        let report = report_beside(text, lexicon).unwrap();
        assert!([report.step, report.or].contains(&Some(Step::Pull)), "{text}");
    }
    for text in ["breast 130 thigh 140 in the oven", "130 140 not off yet", "166 174", "130 its hot"] {
        assert_eq!(report_beside(text, lexicon), None, "{text}");
    }
}

#[test]
fn dinner_moves_by_a_span_or_to_an_hour() {
    let dinner = at("2027-11-25 17:00");
    for (tag, text, wanted) in [
        ("en-US", "6 pm", "2027-11-25 18:00"),
        ("en-US", "to 6", "2027-11-25 18:00"),
        ("en-US", "6", "2027-11-25 18:00"),
        ("en-US", "+45 min", "2027-11-25 17:45"),
        ("en-US", "an hour later", "2027-11-25 18:00"),
        ("en-US", "half an hour earlier", "2027-11-25 16:30"),
        ("en-US", "-30 min", "2027-11-25 16:30"),
        ("en-US", "Friday", "2027-11-26 17:00"),
        ("en-US", "Friday at 1 pm", "2027-11-26 13:00"),
        ("es", "una hora más tarde", "2027-11-25 18:00"),
        ("es", "media hora antes", "2027-11-25 16:30"),
        ("es", "a las 18", "2027-11-25 18:00"),
        ("es", "a las 18 h", "2027-11-25 18:00"),
        ("es", "el viernes", "2027-11-26 17:00"),
    ] {
        let shift = read_shift(text, dinner, &ground(tag));
        assert_eq!(shift.and_then(|s| s.applied(dinner)), Some(at(wanted)), "{text}: {shift:?}");
    }
    assert_eq!(read_shift("45 min", dinner, &ground("en-US")), Some(Shift::By(TimeDelta::minutes(45))));
    for text in ["", "whenever", "🦃", "900 years later"] {
        assert_eq!(read_shift(text, dinner, &ground("en-US")), None, "{text}");
    }
}

#[test]
fn zones_are_found_by_name_city_and_place() {
    for (text, zone) in [
        ("America/Chicago", "America/Chicago"),
        ("america/chicago", "America/Chicago"),
        ("america/argentina/buenos aires", "America/Argentina/Buenos_Aires"),
        ("Dallas", "America/Chicago"),
        ("dallas, texas", "America/Chicago"),
        ("MADRID", "Europe/Madrid"),
        ("Sydney", "Australia/Sydney"),
        ("são paulo", "America/Sao_Paulo"),
        ("Ciudad de México", "America/Mexico_City"),
        ("new york", "America/New_York"),
        ("Portland, Maine", "America/New_York"),
        ("Cordoba, Spain", "Europe/Madrid"),
        ("Pacific time", "America/Los_Angeles"),
        ("Tucumán", "America/Argentina/Tucuman"),
    ] {
        assert_eq!(read_zone(text), Zones::One(zone.parse().unwrap()), "{text}");
    }
    for (text, zones) in [
        ("Portland", vec!["America/Los_Angeles", "America/New_York"]),
        ("Birmingham", vec!["America/Chicago", "Europe/London"]),
        ("Chcago", vec!["America/Chicago"]),
    ] {
        let wanted = zones.iter().map(|zone| zone.parse().unwrap()).collect();
        assert_eq!(read_zone(text), Zones::Several(wanted), "{text}");
    }
    for text in ["", "Xanadu", "x", "<b>", &"a".repeat(5000)] {
        assert_eq!(read_zone(text), Zones::None, "{text}");
    }
    assert_eq!(zone_at(32.78, -96.8), Some(CHICAGO));
    assert_eq!(zone_at(-33.87, 151.21), Some(chrono_tz::Australia::Sydney));
    assert_eq!(zone_at(f64::NAN, 0.0), None);
    assert_eq!(zone_at(32.78, 400.0), None);
}

#[test]
fn steps_and_answers_are_read_in_both_languages() {
    for (tag, text, wanted) in [
        ("en", "thaw", Some((Step::Thaw, None))),
        ("en", "THAWING", Some((Step::Thaw, None))),
        ("en", "check 2", Some((Step::Check, Some(1)))),
        ("en", "the carving", Some((Step::Carve, None))),
        ("es", "trinchar", Some((Step::Carve, None))),
        ("es", "carve", Some((Step::Carve, None))),
        ("es", "cambio de agua 3", Some((Step::Water, Some(2)))),
        ("en", "dance", None),
    ] {
        assert_eq!(read_step(text, ground(tag).lexicon), wanted, "{text}");
    }
    for step in Step::ALL {
        assert_eq!(read_step(step.name(), ground("es").lexicon), Some((*step, None)), "{step:?}");
    }
    assert_eq!(read_answer("Sí", ground("es").lexicon), Some(Answer::Yes));
    assert_eq!(read_answer("nope!", ground("en").lexicon), Some(Answer::No));
    assert_eq!(read_answer("yes but 12 people", ground("en").lexicon), None);
}

#[test]
fn clock_changes_are_read_with_the_offset_from_before() {
    let table = include_str!("../../tests/tables/timezone_gap_fold_cases.csv");
    let mut rows = 0;
    for line in table.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let (zone, local, before): (Tz, NaiveDateTime, Moment) =
            (cells[1].parse().unwrap(), cells[2].parse().unwrap(), cells[4].parse().unwrap());
        assert_eq!(settle(zone, local), before, "{line}");
        rows += 1;
    }
    assert!(rows >= 6);
}

#[test]
fn feasts_fall_on_the_days_of_the_printed_calendar() {
    let table = include_str!("../../tests/tables/holiday_dates.csv");
    for line in table.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let year: i32 = cells[0].parse().unwrap();
        let day = |cell: usize| cells[cell].parse::<NaiveDate>().unwrap();
        assert_eq!(easter(year), Some(day(1)), "{year}");
        let new_year = Utc.with_ymd_and_hms(year, 1, 2, 12, 0, 0).unwrap();
        for (zone, cell) in [(CHICAGO, 4), (chrono_tz::America::Toronto, 5)] {
            let (wish, _) = read_wish("Thanksgiving", &Ground::new("en", false, zone, new_year));
            assert_eq!(wish.dinner_day, Some(day(cell)), "{year} {zone}");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn no_text_brings_a_reader_down(text in "\\PC{0,400}", tag in prop::sample::select(vec!["en-US", "en-GB", "es"])) {
        let ground = ground(tag);
        let _ = read_wish(&text, &ground);
        let _ = read_log(&text, &ground);
        let _ = read_shift(&text, ground.now, &ground);
        let _ = read_dinner_time(&text, &ground);
        let _ = read_step(&text, ground.lexicon);
        let _ = read_zone(&text);
    }

    #[test]
    fn words_and_numbers_in_any_order_bring_no_reader_down(
        words in prop::collection::vec(
            prop::sample::select(vec![
                "14", "lb", "5", "pm", "at", ":", "/", "-", "25", "nov", "half", "past", "to", "a", "hour", "turkey", "2027",
                "31", "feb", "thursday", "in", "days", "900000", "quarter", "of", "for", "people", "breast", "°", "c", "17h30",
                "1/2", "½", "gas mark", "\n", ".", "th", "y media", "menos", "a las",
            ]),
            0..40,
        )
    ) {
        let text = words.join(" ");
        for tag in ["en-US", "es"] {
            let ground = ground(tag);
            let (wish, _) = read_wish(&text, &ground);
            prop_assert!(wish.dinner.is_none_or(|at| at > ground.now));
            prop_assert!(wish.mass_g.is_none_or(|g| (200.0..=25_000.0).contains(&g)));
            let _ = read_log(&text, &ground);
            let _ = read_shift(&text, ground.now, &ground);
        }
    }

    #[test]
    fn an_hour_read_is_the_hour_written(day in 1u32..28, hour in 0u32..24, minute in 0u32..60) {
        let text = format!("2028-03-{day:02} {hour:02}:{minute:02}");
        let ground = ground("en-US");
        let wanted = at(&text);
        let sentence = carvetime::reading::sentence::Sentence::read(&text, ground.lexicon);
        let mut taken = vec![false; sentence.len()];
        let read = carvetime::reading::read_when(&sentence, &mut taken, &ground, Lean::Meal);
        prop_assert_eq!(read, Some(When::Moment(wanted)));
    }
}

#[test]
fn five_thousand_characters_are_read_through() {
    for text in
        ["trukey ".repeat(700), "1/2 ".repeat(1250), "a".repeat(5000), "5 pm thursday ".repeat(350), "🦃".repeat(1250)]
    {
        let (wish, _) = read_wish(&text, &ground("en-US"));
        assert!(wish.mass_g.is_none(), "{}", &text[..4]);
    }
}

fn report(tag: &str, text: &str) -> String {
    let told = read_report(text, ground(tag).lexicon);
    told.map_or_else(String::new, |report| {
        let not = if report.kind == ReportKind::NotDone { "not " } else { "" };
        let or = report.or.map_or_else(String::new, |or| format!(" or {}", or.name()));
        format!("{not}{}{or}", report.step.map_or("due", Step::name))
    })
}

fn check_reports(tag: &str, table: &[(&str, &str)]) {
    let wrong: Vec<String> = table
        .iter()
        .map(|(text, wanted)| (text, report(tag, text), wanted))
        .filter(|(_, got, wanted)| got != *wanted)
        .map(|(text, got, wanted)| format!("{text}: got “{got}”, wanted “{wanted}”"))
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn a_short_text_reports_a_job_done_or_not() {
    check_reports(
        "en-US",
        &[
            ("done", "due"),
            ("Ok, done!", "due"),
            ("all done", "due"),
            ("it's on", "fire or on"),
            ("bird's on", "on"),
            ("The bird is on.", "on"),
            ("its in the oven", "on"),
            ("its thawing", "thaw"),
            ("i put it in the fridge", "thaw or chill"),
            ("salted it just now", "salt"),
            ("ive salted the bird", "salt"),
            ("salting done", "salt"),
            ("put them away", "chill"),
            ("leftovers are in the fridge", "chill"),
            ("we carved it", "carve"),
            ("took it off", "pull"),
            ("it's out", "temper or pull"),
            ("it's out of the oven", "pull"),
            ("lit the fire", "fire"),
            ("The oven's on", "fire"),
            ("water changed", "water"),
            ("bought it", "buy"),
            ("we're on our way", "travel"),
            ("it’s resting", "rest or stand"),
            ("still frozen solid", "not thaw"),
            ("it's still frozen", "not thaw"),
            ("i forgot to salt it", "not salt"),
            ("i forgot", "not due"),
            ("not yet", "not due"),
            ("its not on yet", "not on"),
            ("we didn't change the water", "not water"),
            ("I haven't salted it yet", "not salt"),
        ],
    );
    check_reports(
        "es-ES",
        &[
            ("hecho", "due"),
            ("ya está", "due"),
            ("ya está en el horno", "on"),
            ("el pavo está al calor", "on"),
            ("la he salado", "salt"),
            ("ya lo he salado", "salt"),
            ("cambiada el agua", "water"),
            ("he cambiado el agua", "water"),
            ("lo he metido en la nevera", "thaw or chill"),
            ("ya está fuera del horno", "pull"),
            ("lo hemos trinchado", "carve"),
            ("he encendido el horno", "fire"),
            ("ya lo he comprado", "buy"),
            ("sobras guardadas", "chill"),
            ("se está descongelando", "thaw"),
            ("se me olvidó salarla", "not salt"),
            ("me olvidé de salarlo", "not salt"),
            ("sigue congelado", "not thaw"),
            ("todavía está congelado", "not thaw"),
            ("aún no la he salado", "not salt"),
            ("aún no", "not due"),
            ("done", "due"),
        ],
    );
}

#[test]
fn a_question_a_plan_or_a_story_is_no_report() {
    for text in [
        "is it on?",
        "how long does thawing take",
        "14 lb frozen turkey, dinner Sunday 5 pm",
        "frozen turkey for Sunday",
        "frozen turkey",
        "frozen",
        "did anyone see the game",
        "my sister bought a new car and the old one is on sale",
        "what time is it done",
        "hi",
        "thanks",
        "undo",
        "oven",
        "smoker",
        "no",
        "",
    ] {
        assert_eq!(report("en-US", text), "", "{text}");
    }
    for text in ["¿está en el horno?", "cuánto tarda en el horno", "pavo congelado de 6 kg", "hola", "gracias", "horno"]
    {
        assert_eq!(report("es-ES", text), "", "{text}");
    }
}

#[test]
fn greetings_thanks_assent_and_undo_are_told_apart() {
    type Reader = fn(&str, &'static carvetime::reading::Lexicon) -> bool;
    let readers: [(&str, Reader); 4] =
        [("undo", is_undo), ("greeting", is_greeting), ("assent", is_assent), ("thanks", is_thanks)];
    for (tag, text, wanted) in [
        ("en-US", "undo", "undo"),
        ("en-US", "Take that back!", "undo"),
        ("es-ES", "deshacer", "undo"),
        ("en-US", "hi", "greeting"),
        ("en-US", "Good morning everyone", "greeting"),
        ("en-US", "hello", "greeting"),
        ("es-ES", "Hola", "greeting"),
        ("es-ES", "¡Buenas!", "greeting"),
        ("en-US", "ok", "assent"),
        ("en-US", "Sounds good.", "assent"),
        ("en-US", "yes please", "assent"),
        ("es-ES", "vale", "assent"),
        ("es-ES", "De acuerdo", "assent"),
        ("en-US", "thank you so much!", "thanks"),
        ("es-ES", "muchas gracias", "thanks"),
        ("en-US", "ok but make it six", ""),
        ("en-US", "good oven", ""),
        ("en-US", "is it ok?", ""),
        ("es-ES", "hola, un pavo de 6 kg", ""),
    ] {
        let lexicon = ground(tag).lexicon;
        let read: Vec<&str> = readers.iter().filter(|(_, is)| is(text, lexicon)).map(|(name, _)| *name).collect();
        assert_eq!(read.join(" "), wanted, "{text}");
    }
}

#[test]
fn a_day_that_is_over_and_a_cooker_that_is_refused_are_not_taken() {
    let ground = ground("en-US");
    let (wish, problems) = carvetime::reading::read_wish("14 lb turkey, dinner last Tuesday at 5 pm", &ground);
    assert!(matches!(problems.as_slice(), [Problem::Past(_)]), "{problems:?}");
    assert!(wish.dinner.is_none() && wish.dinner_day.is_none(), "{wish:?}");
    for text in ["forget the smoker", "no smoker", "not in the smoker"] {
        assert_eq!(carvetime::reading::read_wish(text, &ground).0.cooker, None, "{text}");
    }
    assert_eq!(
        carvetime::reading::read_wish("forget the smoker, use the oven", &ground).0.cooker.as_deref(),
        Some("oven")
    );
}

#[test]
fn a_reading_of_an_hour_still_to_come_is_asked_about() {
    // It is half past six in the evening: eleven at night is not yesterday's.
    let ground = ground("en-US");
    assert!(matches!(read_log("breast 128 at 23:00", &ground), Err(Problem::Future(_))));
    assert!(matches!(read_log("breast 128 at 17:00", &ground), Ok(Some(_))));
}

#[test]
fn a_weekday_moves_dinner_to_the_one_nearest_it() {
    let ground = ground("en-US");
    let dinner = at("2027-12-05 16:00"); // a Sunday nearly two weeks off
    let moved = carvetime::reading::read_shift("saturday", dinner, &ground).unwrap().applied(dinner).unwrap();
    assert_eq!(moved, at("2027-12-04 16:00"));
    let tuesday = carvetime::reading::read_shift("tuesday 5 pm", dinner, &ground).unwrap().applied(dinner).unwrap();
    assert_eq!(tuesday, at("2027-12-07 17:00"));
}

#[test]
fn a_dinner_in_another_city_is_at_that_city_s_hour() {
    let ground = |tag| Ground::new(tag, tag != "en", chrono_tz::America::Chicago, at_noon());
    let table = [
        (
            "en",
            "14 lb fresh turkey, dinner Thursday 5 pm at my sister's in Denver, 3 h drive",
            Some(("Denver", "America/Denver")),
        ),
        ("en", "dinner Thursday 5 pm, 40 min drive to San Diego", Some(("San Diego", "America/Los_Angeles"))),
        ("en", "dinner Thursday 5 pm at my sister's, 40 min drive", None),
        ("en", "dinner Thursday 5 pm in the oven", None),
        (
            "es",
            "cena el jueves a las 17:00 en casa de mi hermana en Denver, 3 h en coche",
            Some(("Denver", "America/Denver")),
        ),
    ];
    for (tag, text, expected) in table {
        let (wish, problems) = read_wish(text, &ground(tag));
        let there = wish.there.as_ref().map(|there| (there.place.as_str(), there.zone.as_str()));
        assert_eq!(there, expected, "{text} {problems:?}");
        let zone = wish.there.as_ref().and_then(|there| there.zone()).unwrap_or(chrono_tz::America::Chicago);
        let hour = wish.dinner.unwrap().with_timezone(&zone).format("%H:%M").to_string();
        assert_eq!(hour, "17:00", "{text}");
    }
}

fn at_noon() -> chrono::DateTime<chrono::Utc> {
    chrono::TimeZone::with_ymd_and_hms(&chrono::Utc, 2027, 11, 20, 18, 0, 0).unwrap()
}
