//! Finds every amount in a sentence.
//!
//! Start at [`scan`]. Owns the small grammar of amounts; the tokens come from `lex`, the words from [`UnitWords`]. One pass
//! with bounded look-ahead, so time grows with the length of the text alone.
//!
//! Times of day and dates are not amounts: `17:00`, `2027-11-25`, `11/25`, `5 pm`, `25th` and money are passed over. Where a
//! language writes the hour as `17 h`, whoever reads times of day takes them out of the text first.

use super::amount::{Amount, Part};
use super::lex::{Kind, Token, tokens};
use super::words::{NumberWord, UnitWords};
use super::{Measure, SpoonSystem, Unit, in_grams, in_kelvin, in_milliliters};
use std::ops::Range;

/// An amount and where it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// Bytes of the text it covers, ends of a range included.
    pub span: Range<usize>,
    /// The amount; the lower end of a range.
    pub amount: Amount,
    /// The upper end, where a range was written (`2-3 lb`). Same measure and never below `amount`.
    pub to: Option<Amount>,
}

/// Every amount in `text`, in order, without overlap. Bare numbers are found too.
pub fn scan(text: &str, words: &UnitWords) -> Vec<Found> {
    let tokens = tokens(text, words.decimal());
    let scanner = Scanner { text, tokens: &tokens, words };
    let mut found = Vec::new();
    let mut at = 0;
    while at < tokens.len() {
        match scanner.found(at) {
            Some((hit, end)) => {
                found.push(hit);
                at = end.max(at + 1);
            }
            None => at += 1,
        }
    }
    found
}

/// Spans longer than this many tokens are cut: nobody writes them.
const MOST_PARTS: usize = 8;

struct Scanner<'a> {
    text: &'a str,
    tokens: &'a [Token],
    words: &'a UnitWords,
}

/// A number before its unit is known.
#[derive(Debug, Clone, Copy)]
struct Number {
    value: f64,
    /// The other reading of `1,500`.
    other: Option<f64>,
    /// Worth nothing without a unit (`a`, `half`).
    needs_unit: bool,
    /// `of a` may stand before the unit.
    part: bool,
    end: usize,
}

/// One amount before a range is looked for.
struct Single {
    amount: Amount,
    other: Option<f64>,
    end: usize,
}

impl Number {
    fn new(value: f64, end: usize) -> Self {
        Self { value, other: None, needs_unit: false, part: false, end }
    }

    fn settled(self, unit: Option<Unit>) -> f64 {
        settle(self.value, self.other, unit)
    }
}

/// `2.268 kg` is never two thousand kilograms, whatever sign the language uses.
fn settle(value: f64, other: Option<f64>, unit: Option<Unit>) -> f64 {
    match other {
        Some(other) if value >= 1000.0 && unit.is_some_and(Unit::never_thousands) => other,
        _ => value,
    }
}

impl Scanner<'_> {
    fn kind(&self, at: usize) -> Option<&Kind> {
        self.tokens.get(at).map(|t| &t.kind)
    }

    fn word(&self, at: usize) -> Option<&str> {
        match self.kind(at)? {
            Kind::Word(word) => Some(word),
            _ => None,
        }
    }

    fn glued(&self, at: usize) -> bool {
        self.tokens.get(at).is_some_and(|t| !t.gap)
    }

    fn means(&self, at: usize, meaning: NumberWord) -> bool {
        self.word(at).is_some_and(|word| self.words.number(word).contains(&meaning))
    }

    fn part_word(&self, at: usize) -> Option<f64> {
        self.words.number(self.word(at)?).iter().find_map(|m| if let NumberWord::Part(p) = m { Some(*p) } else { None })
    }

    fn whole_word(&self, at: usize) -> Option<f64> {
        self.words
            .number(self.word(at)?)
            .iter()
            .find_map(|m| if let NumberWord::Whole(n) = m { Some(*n) } else { None })
    }

    fn proper_fraction(&self, at: usize) -> Option<f64> {
        match self.kind(at)? {
            Kind::Fraction(f) if *f < 1.0 => Some(*f),
            _ => None,
        }
    }

    /// An amount or a range that starts at `at`.
    fn found(&self, at: usize) -> Option<(Found, usize)> {
        if at > 0 && self.glued(at) && self.word(at - 1).is_some() && self.word(at).is_none() {
            return None; // digits inside a word
        }
        let low = self.single(at, true)?;
        let start = self.tokens.get(at)?.span.start;
        let (low, high) = match self.upper_end(&low) {
            Some((low, high)) => (low, Some(high)),
            None => (low, None),
        };
        let end = high.as_ref().map_or(low.end, |h| h.end);
        let stop = self.tokens.get(end.checked_sub(1)?)?.span.end;
        Some((Found { span: start..stop, amount: low.amount, to: high.map(|h| h.amount) }, end))
    }

    /// `- 3 lb` or `to 3 lb` after `low`: both ends, each with its unit.
    fn upper_end(&self, low: &Single) -> Option<(Single, Single)> {
        let dash = self.kind(low.end) == Some(&Kind::Dash);
        if !dash && !self.means(low.end, NumberWord::To) {
            return None;
        }
        let mut high = self.single(low.end + 1, false)?;
        let mut low = Single { amount: low.amount.clone(), other: low.other, end: low.end };
        match (low.amount.unit(), high.amount.unit()) {
            (None, Some(_)) if far_apart(&low.amount, &high.amount) => return None,
            (None, Some(unit)) => {
                low.amount = Amount::new(settle(low.amount.value(), low.other, Some(unit)), Some(unit))
            }
            (Some(unit), None) if dash && self.glued(low.end) && self.glued(low.end + 1) => {
                high.amount = Amount::new(settle(high.amount.value(), high.other, Some(unit)), Some(unit));
            }
            (Some(_), None) => return None,
            _ => {}
        }
        (low.amount.measure() == high.amount.measure() && size(&low.amount)? <= size(&high.amount)?)
            .then_some((low, high))
    }

    /// One amount, its parts added up, no range.
    fn single(&self, at: usize, signed: bool) -> Option<Single> {
        if let Some(single) = self.gas_mark(at).or_else(|| self.unit_and_a_half(at)) {
            return Some(single);
        }
        let minus = signed && self.is_minus(at);
        let number = self.number(if minus { at + 1 } else { at })?;
        let sign = if minus { -1.0 } else { 1.0 };
        let Some((unit, end)) = self.unit(number.end, number) else {
            if number.needs_unit || self.is_no_amount(number.end) {
                return None;
            }
            let amount = Amount::new(sign * number.value, None);
            return Some(Single { amount, other: number.other.map(|o| sign * o), end: number.end });
        };
        let first = sign * number.settled(Some(unit));
        let (amount, end) =
            if minus { (Amount::new(first, Some(unit)), end) } else { self.further_parts(first, unit, end) };
        Some(Single { amount, other: None, end })
    }

    fn is_minus(&self, at: usize) -> bool {
        let before = at.checked_sub(1).and_then(|b| self.tokens.get(b));
        let free = before.is_none_or(|b| !self.glued(at) || matches!(b.kind, Kind::Sign(_)));
        self.kind(at) == Some(&Kind::Dash) && free && self.glued(at + 1)
    }

    /// What follows makes the number a time of day or an ordinal.
    fn is_no_amount(&self, at: usize) -> bool {
        match self.word(at) {
            Some("am" | "pm") => true,
            Some("st" | "nd" | "rd" | "th" | "ª") => self.glued(at),
            Some("a" | "p") => {
                self.kind(at + 1) == Some(&Kind::Sign('.')) && self.word(at + 2) == Some("m") && self.glued(at + 1)
            }
            _ => false,
        }
    }

    /// `gas mark 3`, `thermostat 6`: the unit stands first.
    fn gas_mark(&self, at: usize) -> Option<Single> {
        let (unit, end) = self.phrase(at, |folded, _| self.words.plain_unit(folded))?;
        if !matches!(unit, Unit::GasMark | Unit::Thermostat) {
            return None;
        }
        let value = match self.kind(end)? {
            Kind::Number { value, .. } => *value,
            Kind::Fraction(f) => *f,
            _ => self.whole_word(end)?,
        };
        Some(Single { amount: Amount::new(value, Some(unit)), other: None, end: end + 1 })
    }

    /// `hour and a half` without its article, as some languages say it.
    fn unit_and_a_half(&self, at: usize) -> Option<Single> {
        let (unit, end) = self.phrase(at, |folded, _| self.words.plain_unit(folded).filter(|_| folded.len() > 2))?;
        if matches!(unit.measure(), Measure::Temperature | Measure::Percent) {
            return None;
        }
        let (part, end) = self.and_a_half(end)?;
        Some(Single { amount: Amount::new(1.0 + part, Some(unit)), other: None, end })
    }

    /// `and a half` that belongs to the unit before, not to one behind.
    fn and_a_half(&self, at: usize) -> Option<(f64, usize)> {
        if !self.means(at, NumberWord::And) {
            return None;
        }
        let number = self.number(at + 1).filter(|n| n.part && n.value < 1.0)?;
        self.unit(number.end, number).is_none().then_some((number.value, number.end))
    }

    /// The rest of `14 lb 6 oz`, `1h30`, `an hour and a half`, `2 tbsp plus 1 tsp`.
    fn further_parts(&self, first: f64, unit: Unit, end: usize) -> (Amount, usize) {
        let summed = |unit: Unit| !matches!(unit.measure(), Measure::Temperature | Measure::Percent);
        let (mut first, mut end) = (first, end);
        if let Some((part, after)) = self.and_a_half(end).filter(|_| summed(unit)) {
            first += part;
            end = after;
        }
        let mut amount = Amount::new(first, Some(unit));
        let mut last = unit;
        for _ in 0..MOST_PARTS {
            let Some((part, unit, after)) = self.next_part(last, end).filter(|_| summed(last)) else { break };
            amount.push(part);
            (last, end) = (unit, after);
        }
        (amount, end)
    }

    fn next_part(&self, last: Unit, at: usize) -> Option<(Part, Unit, usize)> {
        let plus = self.kind(at) == Some(&Kind::Sign('+')) || self.means(at, NumberWord::Plus);
        let linked = plus || self.kind(at) == Some(&Kind::Sign(',')) || self.means(at, NumberWord::And);
        let number = self.number(if linked { at + 1 } else { at })?;
        match self.unit(number.end, number) {
            Some((unit, end)) => {
                let fits = if plus { unit.measure() == last.measure() } else { unit.follows(last) };
                fits.then_some((Part { value: number.settled(Some(unit)), unit: Some(unit) }, unit, end))
            }
            None if last == Unit::Kilogram && !linked && self.glued(at) && number.value.fract() == 0.0 => {
                // "3kg200", "5kg5"
                let grams = match self.tokens.get(at)?.span.len() {
                    1 => number.value * 100.0,
                    3 => number.value,
                    _ => return None,
                };
                Some((Part { value: grams, unit: Some(Unit::Gram) }, Unit::Gram, number.end))
            }
            None => {
                let minutes = last == Unit::Hour && !linked && self.glued(at) && !number.needs_unit;
                let fits = minutes && number.value < 60.0 && number.value.fract() == 0.0;
                fits.then_some((Part { value: number.value, unit: Some(Unit::Minute) }, Unit::Minute, number.end))
            }
        }
    }

    /// A number in digits or words.
    fn number(&self, at: usize) -> Option<Number> {
        match self.kind(at)? {
            Kind::Number { value, other } => {
                let number = Number { other: *other, ..Number::new(*value, at + 1) };
                Some(self.with_fraction(number))
            }
            Kind::Fraction(f) => Some(Number { part: true, ..Number::new(*f, at + 1) }),
            Kind::Word(_) => self.number_in_words(at),
            _ => None,
        }
    }

    /// `1 1/2`, `1½`, `1-1/2`, `1 and a half`, `3 quarters`.
    fn with_fraction(&self, number: Number) -> Number {
        if number.value.fract() != 0.0 {
            return number;
        }
        let at = number.end;
        let hyphen = self.kind(at) == Some(&Kind::Dash) && self.glued(at) && self.glued(at + 1);
        let and = self.means(at, NumberWord::And);
        let behind = if hyphen || and { at + 1 } else { at };
        if let Some(f) = self.proper_fraction(behind) {
            return Number::new(number.value + f, behind + 1);
        }
        if and {
            let article = usize::from(self.means(behind, NumberWord::Article));
            if let Some(part) = self.part_word(behind + article) {
                let end = behind + article + 1;
                if !self.means(end, NumberWord::Article) && !self.means(end, NumberWord::Of) {
                    return Number::new(number.value + part, end);
                }
            }
        }
        match self.part_word(at) {
            Some(part) => Number { needs_unit: true, part: true, ..Number::new(number.value * part, at + 1) },
            None => number,
        }
    }

    fn number_in_words(&self, at: usize) -> Option<Number> {
        if let Some(part) = self.part_word(at) {
            return Some(Number { needs_unit: true, part: true, ..Number::new(part, at + 1) });
        }
        // "une douzaine", where the article is the number one as well
        if let Some(whole) = self.whole_word(at + 1).filter(|n| *n >= 10.0 && self.means(at, NumberWord::Article)) {
            return Some(Number::new(whole, at + 2));
        }
        if let Some(whole) = self.whole_word(at) {
            let (whole, end) = self.tens_and_ones(whole, at + 1);
            let number = self.with_fraction(Number::new(whole, end));
            return Some(Number { needs_unit: number.needs_unit || whole < 2.0, ..number });
        }
        if !self.means(at, NumberWord::Article) {
            return None;
        }
        if let Some(part) = self.part_word(at + 1) {
            return Some(Number { needs_unit: true, part: true, ..Number::new(part, at + 2) });
        }
        let (unit, _) = self.phrase(at + 1, |folded, _| self.words.plain_unit(folded).filter(|_| folded.len() > 2))?;
        let countable = !matches!(unit.measure(), Measure::Temperature | Measure::Percent);
        countable.then_some(Number { needs_unit: true, ..Number::new(1.0, at + 1) })
    }

    /// `twenty-five`, `treinta y cinco`, `dix-sept`, `soixante-quinze`.
    fn tens_and_ones(&self, tens: f64, at: usize) -> (f64, usize) {
        let dash = self.kind(at) == Some(&Kind::Dash);
        let joined = dash || self.means(at, NumberWord::And);
        let ones_at = at + usize::from(joined);
        let ones = match tens {
            10.0 if dash => 7.0..10.0,
            60.0 if joined => 1.0..20.0,
            20.0..100.0 if tens % 10.0 == 0.0 => 1.0..10.0,
            _ => return (tens, at),
        };
        match self.whole_word(ones_at).filter(|n| ones.contains(n)) {
            // "soixante-dix-sept"
            Some(10.0) if joined => {
                let (teens, end) = self.tens_and_ones(10.0, ones_at + 1);
                (tens + teens, end)
            }
            Some(ones) => (tens + ones, ones_at + 1),
            None => (tens, at),
        }
    }

    /// The unit behind a number, with `of a` and a hyphen passed over.
    fn unit(&self, at: usize, number: Number) -> Option<(Unit, usize)> {
        let mut at = at;
        if number.part {
            at += usize::from(self.means(at, NumberWord::Of));
            at += usize::from(self.means(at, NumberWord::Article));
        }
        if self.kind(at) == Some(&Kind::Dash) && self.glued(at) && self.glued(at + 1) {
            at += 1;
        }
        let value = number.value;
        let (unit, end) = self.phrase(at, |folded, written| self.words.unit(folded, written, value))?;
        // "180 th 6"
        if unit == Unit::Thermostat && value > 10.0 {
            return None;
        }
        if unit == Unit::Degree {
            let scale = self.phrase(end, |folded, written| self.words.unit(folded, written, f64::INFINITY));
            if let Some((scale @ (Unit::Fahrenheit | Unit::Celsius), end)) = scale {
                return Some((scale, end));
            }
        }
        Some((unit, end))
    }

    /// The longest run of words at `at` that `look` knows (given folded and as written), dots of abbreviations included.
    fn phrase(&self, at: usize, look: impl Fn(&str, &str) -> Option<Unit>) -> Option<(Unit, usize)> {
        let start = self.tokens.get(at)?.span.start;
        let first = self.word(at)?;
        // A single letter may be one as it is written.
        if first.len() > 1 && !self.words.begins_unit(first) {
            return None;
        }
        let mut folded = first.to_owned();
        let mut next = at + 1;
        let mut best = None;
        for _ in 0..self.words.longest() {
            let stop = self.tokens.get(next - 1)?.span.end;
            let after_dot = next + usize::from(self.kind(next) == Some(&Kind::Sign('.')) && self.glued(next));
            if let Some(unit) = look(&folded, self.text.get(start..stop)?) {
                best = Some((unit, if folded.len() <= 6 { after_dot } else { next }));
            }
            let Some(word) = self.word(after_dot) else { break };
            folded.push(' ');
            folded.push_str(word);
            next = after_dot + 1;
        }
        best
    }
}

/// `para 8 a 163 °C` names eight guests and an oven, no range of temperatures.
fn far_apart(low: &Amount, high: &Amount) -> bool {
    high.measure() == Some(Measure::Temperature) && high.value() > 50.0 && low.value() < high.value() / 3.0
}

/// One number to compare two amounts of the same measure by.
fn size(amount: &Amount) -> Option<f64> {
    match amount.measure() {
        None => amount.bare(),
        Some(Measure::Mass) => amount.mass().map(in_grams),
        Some(Measure::Volume | Measure::Stick) => amount.volume(SpoonSystem::Us).map(in_milliliters),
        Some(Measure::Temperature) => amount.temperature().map(in_kelvin).or(Some(amount.value())),
        Some(Measure::Span) => amount.span().map(|s| s.num_milliseconds() as f64),
        Some(Measure::Percent) => amount.percent(),
    }
}
