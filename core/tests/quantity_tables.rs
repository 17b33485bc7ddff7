//! Amounts as people write them, and units against their published definitions.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod table;

use carvetime_core::quantity::{
    Amount, LABEL_CUP_ML, LABEL_TABLESPOON_ML, LABEL_TEASPOON_ML, NumberWord, SpoonSystem, Unit, UnitWords, celsius,
    fahrenheit, gas_mark, grams, in_celsius, in_fahrenheit, in_grams, in_milliliters, milliliters, nearest_gas_mark,
    ounces, pounds, round_grams, round_spoons, scan, setting_celsius, setting_fahrenheit, thermostat,
};
use proptest::prelude::*;
use table::Table;

fn close(got: f64, printed: f64, tolerance: f64) -> bool {
    (got - printed).abs() <= tolerance
}

fn words(units: &[(&str, Unit)], numbers: &[(&str, &str)], decimal: char) -> UnitWords {
    UnitWords::new(
        units.iter().map(|(w, u)| ((*w).to_owned(), *u)),
        numbers.iter().map(|(w, n)| ((*w).to_owned(), NumberWord::from_name(n).expect(n))),
        decimal,
    )
}

fn english() -> UnitWords {
    words(
        &[
            ("pounds", Unit::Pound),
            ("pound", Unit::Pound),
            ("ounces", Unit::Ounce),
            ("teaspoon", Unit::Teaspoon),
            ("teaspoons", Unit::Teaspoon),
            ("tablespoon", Unit::Tablespoon),
            ("tablespoons", Unit::Tablespoon),
            ("cup", Unit::Cup),
            ("cups", Unit::Cup),
            ("sticks", Unit::Stick),
            ("fluid ounces", Unit::FluidOunce),
            ("gallon", Unit::Gallon),
            ("gas mark", Unit::GasMark),
            ("degrees", Unit::Degree),
            ("fahrenheit", Unit::Fahrenheit),
            ("hour", Unit::Hour),
            ("hours", Unit::Hour),
            ("minutes", Unit::Minute),
            ("days", Unit::Day),
            ("percent", Unit::Percent),
        ],
        &[
            ("a", "article"),
            ("an", "article"),
            ("and", "and"),
            ("plus", "plus"),
            ("to", "to"),
            ("of", "of"),
            ("half", "half"),
            ("quarter", "quarter"),
            ("quarters", "quarter"),
            ("one", "1"),
            ("two", "2"),
            ("five", "5"),
            ("twelve", "12"),
            ("dozen", "12"),
            ("twenty", "20"),
        ],
        '.',
    )
}

fn spanish() -> UnitWords {
    words(
        &[
            ("kilo", Unit::Kilogram),
            ("kilos", Unit::Kilogram),
            ("taza", Unit::Cup),
            ("hora", Unit::Hour),
            ("horas", Unit::Hour),
            ("galón", Unit::Gallon),
            ("grados", Unit::Degree),
            ("cucharadita", Unit::Teaspoon),
        ],
        &[
            ("un", "article"),
            ("una", "article"),
            ("y", "and"),
            ("a", "to"),
            ("de", "of"),
            ("media", "half"),
            ("medio", "half"),
            ("cuarto", "quarter"),
            ("cuartos", "quarter"),
            ("tres", "3"),
            ("treinta", "30"),
            ("cinco", "5"),
        ],
        ',',
    )
}

/// Prints what was found as `value unit + value unit .. value unit @text`.
fn shown(text: &str, words: &UnitWords) -> Vec<String> {
    let parts = |amount: &Amount| {
        let part = |p: carvetime_core::quantity::Part| {
            let value = (p.value * 1e6).round() / 1e6;
            p.unit.map_or(format!("{value}"), |u| format!("{value} {}", u.name()))
        };
        amount.parts().map(part).collect::<Vec<_>>().join(" + ")
    };
    scan(text, words)
        .iter()
        .map(|f| f.to.as_ref().map_or(parts(&f.amount), |to| format!("{} .. {}", parts(&f.amount), parts(to))))
        .collect()
}

fn check(words: &UnitWords, cases: &[(&str, &[&str])]) {
    for (text, expected) in cases {
        assert_eq!(shown(text, words), *expected, "in {text:?}");
    }
}

#[test]
fn what_english_speakers_write_is_read() {
    check(
        &english(),
        &[
            ("14 lb 6 oz", &["14 pound + 6 ounce"]),
            ("14 lbs., 6 oz.", &["14 pound + 6 ounce"]),
            ("14lb6oz", &["14 pound + 6 ounce"]),
            ("14.5lb", &["14.5 pound"]),
            ("a 14-lb turkey and a 12-pound one", &["14 pound", "12 pound"]),
            ("6,5 kg", &["6.5 kilogram"]),
            ("2.268 kg", &["2.268 kilogram"]),
            ("2,268 kg", &["2.268 kilogram"]),
            ("1½ tsp", &["1.5 teaspoon"]),
            ("1 ½ tsp.", &["1.5 teaspoon"]),
            ("1 1/2 tablespoons", &["1.5 tablespoon"]),
            ("1-1/2 tbsp", &["1.5 tablespoon"]),
            ("1 and 1/2 cups", &["1.5 cup"]),
            ("1/4 tsp is 0.7 g", &["0.25 teaspoon", "0.7 gram"]),
            ("1⁄4 tsp (1.5g) has 280 mg sodium", &["0.25 teaspoon", "1.5 gram", "280 milligram"]),
            (".5 oz", &["0.5 ounce"]),
            ("325", &["325"]),
            ("325F", &["325 fahrenheit"]),
            ("at 325°", &["325 degree"]),
            ("325 degrees F", &["325 fahrenheit"]),
            ("325° Fahrenheit", &["325 fahrenheit"]),
            ("163 °C", &["163 celsius"]),
            ("163ºC", &["163 celsius"]),
            ("163℃", &["163 celsius"]),
            ("163c", &["163 celsius"]),
            ("2 c flour", &["2 cup"]),
            ("2 T or 2 t", &["2 tablespoon", "2 teaspoon"]),
            ("gas mark 3", &["3 gas-mark"]),
            ("Gas Mark ½", &["0.5 gas-mark"]),
            ("2 sticks butter", &["2 stick"]),
            ("1h30", &["1 hour + 30 minute"]),
            ("1h30m", &["1 hour + 30 minute"]),
            ("1 h 30 min", &["1 hour + 30 minute"]),
            ("1 hour and 15 minutes", &["1 hour + 15 minute"]),
            ("90 min", &["90 minute"]),
            ("an hour and a half", &["1.5 hour"]),
            ("three and an hour", &["1 hour"]),
            ("2 hours and a quarter", &["2.25 hour"]),
            ("one and a half hours", &["1.5 hour"]),
            ("a quarter of an hour", &["0.25 hour"]),
            ("three quarters of an hour, 3 quarters of an hour", &["0.25 hour", "0.75 hour"]),
            ("2 tbsp plus 1 tsp", &["2 tablespoon + 1 teaspoon"]),
            ("1 tsp + 2 tbsp", &["1 teaspoon + 2 tablespoon"]),
            ("2 tbsp and 1 tsp", &["2 tablespoon + 1 teaspoon"]),
            ("1 cup and half a cup", &["1 cup", "0.5 cup"]),
            ("half a cup", &["0.5 cup"]),
            ("3/4 of a cup", &["0.75 cup"]),
            ("a cup", &["1 cup"]),
            ("8 fl. oz. or 8 fluid ounces", &["8 fluid-ounce", "8 fluid-ounce"]),
            ("2-3 lb", &["2 pound .. 3 pound"]),
            ("2 to 3 lb", &["2 pound .. 3 pound"]),
            ("2 lb–3 lb", &["2 pound .. 3 pound"]),
            ("300F-325", &["300 fahrenheit .. 325 fahrenheit"]),
            ("8-10 people", &["8 .. 10"]),
            ("2½ - 3 h", &["2.5 hour .. 3 hour"]),
            ("10-8", &["10", "8"]),
            ("turn it up from 300 to 325", &["300 .. 325"]),
            ("-5 lb", &["-5 pound"]),
            ("it is −5 °C", &["-5 celsius"]),
            ("1,500 g", &["1500 gram"]),
            ("1,500.5 g", &["1500.5 gram"]),
            ("1.500,5 g", &["1500.5 gram"]),
            ("1\u{202f}500 g", &["1500 gram"]),
            ("1'500 g", &["1500 gram"]),
            ("0.125 tsp", &["0.125 teaspoon"]),
            ("14\u{a0}lb", &["14 pound"]),
            ("\u{2068}14.5\u{2069} lb", &["14.5 pound"]),
            ("١٤٫٥ kg", &["14.5 kilogram"]),
            ("१४ kg", &["14 kilogram"]),
            ("１４ kg", &["14 kilogram"]),
            ("8%", &["8 percent"]),
            ("up to 8 percent solution", &["8 percent"]),
            ("breast 128, thigh 141, pit 335", &["128", "141", "335"]),
            ("breast 128 F, 141 F", &["128 fahrenheit", "141 fahrenheit"]),
            ("twenty five minutes", &["25 minute"]),
            ("twenty-five minutes", &["25 minute"]),
            ("two dozen eggs for twelve", &["2", "12", "12"]),
            ("14.5 lb frozen turkey, 11 people.", &["14.5 pound", "11"]),
            ("/move +45 min", &["45 minute"]),
            ("is 158 for 2 minutes safe?", &["158", "2 minute"]),
            ("14 lb, 8 people, 1 h, 30 chairs", &["14 pound", "8", "1 hour", "30"]),
            ("2 tbsp of nothing", &["2 tablespoon"]),
        ],
    );
}

#[test]
fn what_spanish_speakers_write_is_read() {
    check(
        &spanish(),
        &[
            ("pavo de 6,5 kg a 163 °C", &["6.5 kilogram", "163 celsius"]),
            ("1.500 g", &["1500 gram"]),
            ("2.268 kg", &["2.268 kilogram"]),
            ("1,500 g", &["1.5 gram"]),
            ("un kilo y medio", &["1.5 kilogram"]),
            ("medio kilo", &["0.5 kilogram"]),
            ("media taza", &["0.5 cup"]),
            ("hora y media", &["1.5 hour"]),
            ("dos horas y 3 horas y media", &["3.5 hour"]),
            ("tres cuartos de hora", &["0.75 hour"]),
            ("treinta y cinco min", &["35 minute"]),
            ("2 a 3 kg", &["2 kilogram .. 3 kilogram"]),
            ("de 160 a 170 °C", &["160 celsius .. 170 celsius"]),
            ("para 8 a 163 °C", &["8", "163 celsius"]),
            ("1 GALON", &["1 gallon"]),
            ("163 grados C", &["163 celsius"]),
        ],
    );
}

#[test]
fn what_french_speakers_write_is_read() {
    let french = words(
        &[
            ("kilos", Unit::Kilogram),
            ("heure", Unit::Hour),
            ("heures", Unit::Hour),
            ("cuillères à soupe", Unit::Tablespoon),
            ("c à soupe", Unit::Tablespoon),
            ("thermostat", Unit::Thermostat),
            ("th", Unit::Thermostat),
        ],
        &[
            ("un", "1"),
            ("une", "1"),
            ("un", "article"),
            ("une", "article"),
            ("et", "and"),
            ("de", "of"),
            ("d'", "of"),
            ("demi", "half"),
            ("demie", "half"),
            ("quart", "quarter"),
            ("quarts", "quarter"),
            ("trois", "3"),
            ("sept", "7"),
            ("dix", "10"),
            ("douzaine", "12"),
            ("quinze", "15"),
            ("vingt", "20"),
            ("soixante", "60"),
        ],
        ',',
    );
    check(
        &french,
        &[
            ("d'1,8 kg", &["1.8 kilogram"]),
            ("3kg200", &["3 kilogram + 200 gram"]),
            ("5kg5", &["5 kilogram + 500 gram"]),
            ("3 kg 12 personnes", &["3 kilogram", "12"]),
            ("trois quarts d'heure", &["0.75 hour"]),
            ("une demi-heure", &["0.5 hour"]),
            ("une heure et demie", &["1.5 hour"]),
            ("dix-sept heures", &["17 hour"]),
            ("vingt et une", &["21"]),
            ("soixante-quinze", &["75"]),
            ("soixante-dix-sept", &["77"]),
            ("une douzaine", &["12"]),
            ("8 s'il te plaît", &["8"]),
            ("4 l d’eau", &["4 liter"]),
            ("2 c. à soupe", &["2 tablespoon"]),
            ("four th. 6", &["6 thermostat"]),
            ("180 th 6", &["180", "6 thermostat"]),
        ],
    );
}

#[test]
fn times_dates_ordinals_and_money_are_no_amounts() {
    for text in [
        "dinner at 17:00",
        "5 pm",
        "5pm",
        "at 5 p.m.",
        "2027-11-25",
        "11/25",
        "11/25/2027",
        "Nov 25th",
        "$30",
        "x3",
        "v1.2.3",
    ] {
        assert_eq!(shown(text, &english()), Vec::<String>::new(), "in {text:?}");
    }
}

#[test]
fn text_without_an_amount_gives_none() {
    for text in ["", "salt?", "half", "cut in half", "a", "—", "🦃🦃", "1/0 tsp", "a F"] {
        let found = shown(text, &english());
        assert!(found.is_empty(), "in {text:?}: {found:?}");
    }
}

#[test]
fn a_span_covers_the_amount_and_nothing_else() {
    let text = "Para 8: pavo de ½ kg, más 14 lb 6 oz. Ya";
    let spans: Vec<&str> = scan(text, &spanish()).iter().map(|f| &text[f.span.clone()]).collect();
    assert_eq!(spans, ["8", "½ kg", "14 lb 6 oz."]);
}

#[test]
fn amounts_add_up_in_the_persons_own_spoons() {
    let words = english();
    let amount = scan("2 tbsp plus 1 tsp", &words).remove(0).amount;
    assert!(close(in_milliliters(amount.volume(SpoonSystem::Metric).unwrap()), 35.0, 1e-9));
    assert!(close(in_milliliters(amount.volume(SpoonSystem::Australia).unwrap()), 45.0, 1e-9));
    assert_eq!(amount.mass(), None);
    let bird = scan("14 lb 6 oz", &words).remove(0).amount;
    assert!(close(in_grams(bird.mass().unwrap()), 14.375 * 453.592_37, 1e-9));
    let span = scan("1h30", &words).remove(0).amount.span().unwrap();
    assert_eq!(span.num_minutes(), 90);
    let butter = scan("2 sticks butter", &words).remove(0).amount;
    assert!(close(in_grams(butter.mass().unwrap()), 226.0, 1e-9));
    assert!(close(in_milliliters(butter.volume(SpoonSystem::Metric).unwrap()), 236.588_236_5, 1e-9));
    let gas = scan("gas mark 3", &words).remove(0).amount;
    assert!(close(in_fahrenheit(gas.temperature().unwrap()), 325.0, 1e-9));
    assert_eq!(scan("325°", &words).remove(0).amount.temperature(), None);
}

#[test]
fn volumes_match_the_legal_definitions() {
    use SpoonSystem as S;
    let mut seen = 0;
    for row in Table::read("volume_units.csv").rows() {
        let label = row.text("unit");
        let got = match label {
            "US teaspoon" => Unit::Teaspoon.milliliters(S::Us),
            "US tablespoon" => Unit::Tablespoon.milliliters(S::Us),
            "US fluid ounce" => Unit::FluidOunce.milliliters(S::Us),
            "US cup" => Unit::Cup.milliliters(S::Us),
            "US pint (liquid)" => Unit::Pint.milliliters(S::Us),
            "US quart (liquid)" => Unit::Quart.milliliters(S::Us),
            "US gallon" => Unit::Gallon.milliliters(S::Us),
            "metric teaspoon" => Unit::Teaspoon.milliliters(S::Metric),
            "metric tablespoon" => Unit::Tablespoon.milliliters(S::Metric),
            "Australian tablespoon" => Unit::Tablespoon.milliliters(S::Australia),
            "metric cup" => Unit::Cup.milliliters(S::Australia),
            "US label teaspoon" => Some(LABEL_TEASPOON_ML),
            "US label tablespoon" => Some(LABEL_TABLESPOON_ML),
            "US label cup" => Some(LABEL_CUP_ML),
            "imperial fluid ounce" => Unit::FluidOunce.milliliters(S::Uk),
            "imperial pint" => Unit::Pint.milliliters(S::Uk),
            "imperial gallon" => Unit::Gallon.milliliters(S::Uk),
            old if old.contains("5/8 fl oz") || old.contains("5/24 fl oz") => continue, // long out of use
            other => panic!("no unit for {other}"),
        };
        let printed = row.number("ml");
        assert!(close(got.unwrap(), printed, printed * 1e-12), "{label}: {got:?}, printed {printed}");
        seen += 1;
    }
    assert_eq!(seen, 17);
}

#[test]
fn masses_and_degrees_match_their_definitions() {
    let units = Table::read("mass_temperature_units.csv");
    let printed: Vec<f64> = units.rows().take(2).map(|row| row.number("value")).collect();
    let [pound, ounce] = printed[..] else { panic!("{printed:?}") };
    assert!(close(in_grams(pounds(1.0)), pound, 1e-12) && close(Unit::Pound.grams().unwrap(), pound, 1e-12));
    assert!(close(in_grams(ounces(1.0)), ounce, 1e-12) && close(Unit::Ounce.grams().unwrap(), ounce, 1e-12));
    for f in [-40.0, 32.0, 40.0, 140.0, 165.0, 212.0, 325.0] {
        assert!(close(in_celsius(fahrenheit(f)), (f - 32.0) / 1.8, 1e-9), "{f} °F");
    }
}

#[test]
fn gas_marks_go_there_and_back() {
    for mark in [0.25, 0.5, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0] {
        assert_eq!(nearest_gas_mark(gas_mark(mark).unwrap()), Some(mark));
    }
    assert_eq!(setting_fahrenheit(gas_mark(3.0).unwrap()), 325.0);
    assert_eq!(setting_celsius(gas_mark(3.0).unwrap()), 163.0);
    assert_eq!(gas_mark(3.5), None);
    assert_eq!(gas_mark(f64::NAN), None);
    assert_eq!(nearest_gas_mark(celsius(20.0)), None);
    assert_eq!(setting_celsius(thermostat(6.0).unwrap()), 180.0);
    assert_eq!(setting_celsius(thermostat(5.5).unwrap()), 165.0);
    assert_eq!(thermostat(0.5), None);
    assert_eq!(thermostat(f64::NAN), None);
}

#[test]
fn spoons_are_rounded_to_what_hangs_in_the_kitchen() {
    let us = |tsp: f64| round_spoons(milliliters(tsp * 4.928_921_593_75), SpoonSystem::Us);
    let shape = |tsp| {
        let s = us(tsp);
        (s.quarter_cups, s.tablespoons, s.eighth_teaspoons)
    };
    assert_eq!(shape(8.0), (0, 2, 16));
    assert_eq!(us(8.0).teaspoons(), 8.0);
    assert_eq!(shape(0.13), (0, 0, 1));
    assert_eq!(shape(0.37), (0, 0, 3));
    assert_eq!(shape(0.6), (0, 0, 4));
    assert_eq!(shape(0.7), (0, 0, 6));
    assert_eq!(shape(12.0), (1, 0, 0));
    assert_eq!(shape(16.2), (0, 5, 8));
    assert_eq!(shape(26.4), (2, 0, 16));
    assert_eq!(shape(-3.0), (0, 0, 0));
    assert_eq!(shape(f64::NAN), (0, 0, 0));
    let au = round_spoons(milliliters(45.0), SpoonSystem::Australia);
    assert_eq!((au.tablespoons, au.eighth_teaspoons), (2, 8));
    assert_eq!(au.exact, milliliters(45.0));
}

#[test]
fn grams_are_rounded_to_the_scale() {
    for (exact, shown) in [(0.66, 0.7), (2.4, 2.0), (17.6, 18.0), (67.0, 65.0), (1502.6, 1505.0)] {
        assert_eq!(round_grams(exact), shown, "{exact} g");
    }
}

#[test]
fn five_thousand_characters_of_anything_are_read_to_the_end() {
    let words = english();
    for piece in [
        "1",
        "1/",
        "1-",
        "1 lb ",
        "and a half ",
        "1,",
        "a ",
        "gas mark ",
        "1 and ",
        "-",
        "½",
        "1h",
        "+1 tsp",
        "é",
        "1'",
        ".",
    ] {
        let text = piece.repeat(5000 / piece.len());
        for found in scan(&text, &words) {
            assert!(text.get(found.span).is_some(), "{piece:?}");
        }
    }
}

proptest! {
    #[test]
    fn scanning_never_panics_and_spans_are_ordered(text in "(?s).{0,80}") {
        let mut last = 0;
        for found in scan(&text, &english()) {
            prop_assert!(found.span.start >= last && found.span.end > found.span.start);
            prop_assert!(text.get(found.span.clone()).is_some());
            prop_assert!(found.amount.parts().all(|p| p.value.is_finite()));
            last = found.span.end;
        }
    }

    #[test]
    fn scanning_kitchen_soup_never_panics(
        pieces in proptest::collection::vec(prop_oneof![
            Just("1"), Just("1/2"), Just("½"), Just(" "), Just("-"), Just("lb"), Just(" oz"), Just("and"), Just(" a "),
            Just("half"), Just(" of "), Just("°"), Just("F"), Just("."), Just(","), Just("gas mark"), Just("h"), Just("30"),
            Just(" to "), Just("plus"), Just("\u{202f}"), Just("º"), Just("٣"), Just(":"), Just("twenty"),
        ], 0..40),
    ) {
        let text = pieces.concat();
        for found in scan(&text, &english()) {
            prop_assert!(text.get(found.span.clone()).is_some(), "{text:?}");
            if let Some(to) = found.to {
                prop_assert_eq!(to.measure(), found.amount.measure());
            }
        }
    }

    #[test]
    fn what_is_printed_is_read_again(hundredths in 1u32..99_999, unit in 0usize..6) {
        let (symbol, unit) = [("g", Unit::Gram), ("lb", Unit::Pound), ("tsp", Unit::Teaspoon), ("°C", Unit::Celsius),
            ("min", Unit::Minute), ("ml", Unit::Milliliter)][unit];
        let value = f64::from(hundredths) / 100.0;
        let point = format!("{value:.2} {symbol}");
        for (text, words) in [(point.clone(), english()), (point.replace('.', ","), spanish())] {
            let found = scan(&text, &words);
            prop_assert_eq!(found.len(), 1, "{}", text);
            prop_assert_eq!(&found[0].amount, &Amount::new(value, Some(unit)));
        }
    }

    #[test]
    fn rounded_spoons_stay_within_half_a_step(tsp in 0.0f64..400.0, system in 0usize..4) {
        let system = SpoonSystem::ALL[system];
        let one = Unit::Teaspoon.milliliters(system).unwrap();
        let count = round_spoons(milliliters(tsp * one), system);
        let step = if tsp < 0.5 { 0.125 } else if tsp < 12.5 { 0.25 } else if tsp < 200.0 { 1.0 } else { 4.0 };
        let limit = if (12.0..12.5).contains(&tsp) { 0.5 } else if (192.0..200.0).contains(&tsp) { 2.0 } else { step / 2.0 };
        prop_assert!((count.teaspoons() - tsp).abs() <= limit + 1e-9, "{tsp}: {count:?}");
        let cup = Unit::Cup.milliliters(system).unwrap();
        let tablespoon = Unit::Tablespoon.milliliters(system).unwrap();
        let sum = f64::from(count.quarter_cups) * cup / 4.0 + f64::from(count.tablespoons) * tablespoon
            + f64::from(count.eighth_teaspoons) * one / 8.0;
        prop_assert!((sum - in_milliliters(count.volume())).abs() < 1e-6);
    }

    #[test]
    fn a_mass_reads_the_same_in_pounds_and_grams(lb in 0.1f64..50.0) {
        let text = format!("{lb:.3} lb");
        let found = scan(&text, &english());
        let typed: f64 = format!("{lb:.3}").parse().unwrap();
        prop_assert!((in_grams(found[0].amount.mass().unwrap()) - in_grams(grams(typed * 453.592_37))).abs() < 1e-9);
    }
}
