//! Which words mean which unit or number. International symbols are built in; words of a language come from outside.

use super::Unit;
use std::collections::{HashMap, HashSet};

/// What a word means inside an amount.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NumberWord {
    /// `two`, `twenty`, `dozen`: a number.
    Whole(f64),
    /// `half`, `quarter`: a part of the unit that follows or stood before.
    Part(f64),
    /// `a`, `an`: one, before a unit or a part.
    Article,
    /// `and`: joins `an hour and a half`, `2 and 1/2`.
    And,
    /// `plus`: adds what follows.
    Plus,
    /// `to`: between the ends of a range.
    To,
    /// `of`: filler as in `three quarters of a cup`.
    Of,
}

impl NumberWord {
    /// The meaning of that name: `article`, `and`, `plus`, `to`, `of`, `half`, `third`, `quarter`, `eighth`, or a whole
    /// number in ASCII digits up to 1000 (`12` for the word `twelve`), `1-half` for the word that means 1.5.
    pub fn from_name(name: &str) -> Option<Self> {
        Some(match name {
            "article" => Self::Article,
            "and" => Self::And,
            "plus" => Self::Plus,
            "to" => Self::To,
            "of" => Self::Of,
            "half" => Self::Part(0.5),
            "third" => Self::Part(1.0 / 3.0),
            "quarter" => Self::Part(0.25),
            "eighth" => Self::Part(0.125),
            digits => {
                let (digits, more) = digits.strip_suffix("-half").map_or((digits, 0.0), |digits| (digits, 0.5));
                Self::Whole(f64::from(digits.parse::<u16>().ok().filter(|n| *n <= 1000)?) + more)
            }
        })
    }
}

/// The words of one language (or several), folded to lower case without accents.
#[derive(Debug, Clone)]
pub struct UnitWords {
    units: HashMap<String, Unit>,
    numbers: HashMap<String, Vec<NumberWord>>,
    decimal: char,
    longest: usize,
    /// First words of the units.
    begins: HashSet<String>,
}

/// Symbols and abbreviations understood everywhere. Single letters whose case matters are in [`UnitWords::unit`].
const SYMBOLS: &[(&str, Unit)] = &[
    ("mg", Unit::Milligram),
    ("g", Unit::Gram),
    ("gr", Unit::Gram),
    ("kg", Unit::Kilogram),
    ("kgs", Unit::Kilogram),
    ("lb", Unit::Pound),
    ("lbs", Unit::Pound),
    ("oz", Unit::Ounce),
    ("tsp", Unit::Teaspoon),
    ("tsps", Unit::Teaspoon),
    ("tbsp", Unit::Tablespoon),
    ("tbsps", Unit::Tablespoon),
    ("tbs", Unit::Tablespoon),
    ("fl oz", Unit::FluidOunce),
    ("floz", Unit::FluidOunce),
    ("pt", Unit::Pint),
    ("qt", Unit::Quart),
    ("qts", Unit::Quart),
    ("gal", Unit::Gallon),
    ("ml", Unit::Milliliter),
    ("l", Unit::Liter),
    ("lt", Unit::Liter),
    ("°f", Unit::Fahrenheit),
    ("f", Unit::Fahrenheit),
    ("℉", Unit::Fahrenheit),
    ("°c", Unit::Celsius),
    ("℃", Unit::Celsius),
    ("°", Unit::Degree),
    ("s", Unit::Second),
    ("sec", Unit::Second),
    ("m", Unit::Minute),
    ("min", Unit::Minute),
    ("mins", Unit::Minute),
    ("h", Unit::Hour),
    ("hr", Unit::Hour),
    ("hrs", Unit::Hour),
    ("d", Unit::Day),
    ("%", Unit::Percent),
];

/// Below this a small `c` is read as cups, from here as Celsius.
const CUPS_BELOW: f64 = 20.0;

impl UnitWords {
    /// Symbols alone, with `.` as the decimal sign.
    pub fn international() -> Self {
        Self::new([], [], '.')
    }

    /// Symbols plus the words of a language. `decimal` is the sign the person writes, `.` or `,`: it decides only where a
    /// single separator before three digits could be either (`1,500 g`). Words may have several parts (`fluid ounces`).
    pub fn new(
        units: impl IntoIterator<Item = (String, Unit)>,
        numbers: impl IntoIterator<Item = (String, NumberWord)>,
        decimal: char,
    ) -> Self {
        let mut words = Self {
            units: SYMBOLS.iter().map(|(word, unit)| ((*word).to_owned(), *unit)).collect(),
            numbers: HashMap::new(),
            decimal,
            longest: 2,
            begins: HashSet::new(),
        };
        for (word, unit) in units {
            let key = fold_phrase(&word);
            words.longest = words.longest.max(key.split(' ').count());
            words.units.insert(key, unit);
        }
        let first = |unit: &String| unit.split(' ').next().map(str::to_owned);
        words.begins = words.units.keys().filter_map(first).collect();
        for (word, meaning) in numbers {
            words.numbers.entry(fold_phrase(&word)).or_default().push(meaning);
        }
        words
    }

    /// The person's decimal sign.
    pub(super) fn decimal(&self) -> char {
        self.decimal
    }

    /// How many words the longest unit has.
    pub(super) fn longest(&self) -> usize {
        self.longest
    }

    /// The unit of a folded phrase. `written` is the phrase as typed, `value` the number before it: both decide only the
    /// single letters of recipes (`T` tablespoon, `t` teaspoon, `C` Celsius, `c` cup).
    pub(super) fn unit(&self, folded: &str, written: &str, value: f64) -> Option<Unit> {
        self.units.get(folded).copied().or(match written {
            "T" => Some(Unit::Tablespoon),
            "t" => Some(Unit::Teaspoon),
            "c" if value < CUPS_BELOW => Some(Unit::Cup),
            "C" | "c" => Some(Unit::Celsius),
            _ => None,
        })
    }

    /// Whether any unit has that folded word first.
    pub(super) fn begins_unit(&self, folded: &str) -> bool {
        self.begins.contains(folded)
    }

    /// The unit of a folded phrase, whatever stands before it.
    pub(super) fn plain_unit(&self, folded: &str) -> Option<Unit> {
        self.units.get(folded).copied()
    }

    /// What a folded word means among numbers.
    pub(super) fn number(&self, folded: &str) -> &[NumberWord] {
        self.numbers.get(folded).map_or(&[], Vec::as_slice)
    }
}

/// Lower case, accents off, single spaces, no dots.
fn fold_phrase(phrase: &str) -> String {
    let folded = fold(phrase).replace('.', " ");
    folded.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Lower case without the accents of Latin letters, so that `galon` finds `galón`.
pub(super) fn fold(text: &str) -> String {
    if text.is_ascii() {
        return text.to_ascii_lowercase();
    }
    text.chars().filter(|c| !is_mark(*c)).flat_map(char::to_lowercase).map(bare_letter).collect()
}

/// Combining accents.
pub(super) fn is_mark(c: char) -> bool {
    ('\u{300}'..='\u{36f}').contains(&c)
}

fn bare_letter(c: char) -> char {
    match c {
        'à'..='å' => 'a',
        'ç' => 'c',
        'è'..='ë' => 'e',
        'ì'..='ï' => 'i',
        'ñ' => 'n',
        'ò'..='ö' => 'o',
        'ù'..='ü' => 'u',
        'º' | '˚' => '°',
        c => c,
    }
}
