//! A text taken apart: amounts, words with their meanings, digits and signs, in order.
//!
//! Everything that reads people's words starts here. Amounts come from [`carvetime_core::quantity::scan`], meanings from
//! the [`Lexicon`]; this module only lays them side by side. Time grows with the length of the text alone.

use super::fold::{fold, is_mark};
use super::glance::Glance;
use super::lexicon::{Concept, Lexicon};
use super::once;
use crate::words::foreign::is_unseen;
use carvetime_core::quantity::{Amount, Found, Unit, scan};
use std::ops::Range;
use std::sync::Arc;

/// A text taken apart.
#[derive(Debug, Clone)]
pub struct Sentence {
    text: Arc<str>,
    items: Arc<[Item]>,
    /// The meanings of its words at a glance, whole and by their beginnings.
    names: Glance,
    groups: Glance,
}

/// One piece of a text.
#[derive(Debug, Clone)]
pub struct Item {
    /// Bytes of the tidied text.
    pub span: Range<usize>,
    /// Whether blank space stands before it.
    pub gap: bool,
    /// What it is.
    pub what: What,
}

/// What a piece is.
#[derive(Debug, Clone)]
pub enum What {
    /// An amount, with the upper end where a range was written.
    Amount(Amount, Option<Amount>),
    /// Digits that are no amount: parts of times, dates, readings.
    Digits(f64),
    /// A word or a phrase, and what it may mean.
    Word(&'static [Concept]),
    /// Any other sign; a line break is `\n`.
    Mark(char),
}

/// Longest phrase of the lexicon, in words.
const LONGEST_PHRASE: usize = 7;

impl Sentence {
    /// Takes `text` apart.
    pub fn read(text: &str, lexicon: &'static Lexicon) -> Self {
        Self::clone(&once::shared(text, &lexicon, |text, lexicon| Self::take_apart(text, lexicon)))
    }

    fn take_apart(text: &str, lexicon: &'static Lexicon) -> Self {
        let text = tidy(&lexicon.in_full(text), lexicon);
        let pieces = pieces(&text, lexicon);
        let found = scan(&text, lexicon.units());
        let mut found: std::iter::Peekable<std::vec::IntoIter<Found>> = found.into_iter().peekable();
        let mut items = Vec::with_capacity(pieces.len());
        let mut at = 0;
        while let Some(piece) = pieces.get(at) {
            while found.next_if(|f| f.span.start < piece.span.start).is_some() {}
            let starts_here = found.peek().is_some_and(|f| f.span.start == piece.span.start);
            let phrase = phrase_at(&pieces, at, lexicon);
            let longer = |count: usize, concepts: &[Concept]| {
                count > 1 && !concepts.iter().all(|c| c.starts_with("unit-") || c.starts_with("number-"))
            };
            let (what, span) = match phrase {
                Some((count, concepts, end)) if !starts_here || longer(count, concepts) => {
                    (What::Word(concepts), piece.span.start..end)
                }
                _ if starts_here => match found.next() {
                    Some(hit) => (What::Amount(hit.amount, hit.to), hit.span),
                    None => (What::Word(&[]), piece.span.clone()),
                },
                _ => match &piece.kind {
                    Kind::Word(_) => (What::Word(&[]), piece.span.clone()),
                    Kind::Digits(value) => (What::Digits(*value), piece.span.clone()),
                    Kind::Mark(c) => (What::Mark(*c), piece.span.clone()),
                },
            };
            let end = span.end;
            // "Sul gas 30 min": what a phrase has of an amount is none of it, and the rest is read by itself.
            let cut = found.peek().is_some_and(|f| (piece.span.start..end).contains(&f.span.start) && f.span.end > end);
            if cut && matches!(what, What::Word(_)) {
                let rest = scan(text.get(end..).unwrap_or_default(), lexicon.units());
                let shifted = rest.into_iter().map(|f| Found { span: f.span.start + end..f.span.end + end, ..f });
                found = shifted.collect::<Vec<_>>().into_iter().peekable();
            }
            items.push(Item { span, gap: piece.gap, what });
            at += 1;
            while pieces.get(at).is_some_and(|piece| piece.span.start < end) {
                at += 1;
            }
        }
        let (mut names, mut groups) = (Glance::default(), Glance::default());
        for item in &items {
            if let What::Word(concepts) = item.what {
                concepts.iter().for_each(|concept| names.add(concept));
                concepts.iter().for_each(|concept| groups.add_beginning(concept));
            }
        }
        Self { text: text.into(), items: items.into(), names, groups }
    }

    /// How many pieces there are.
    pub fn len(&self) -> usize {
        self.items.len()
    }

    /// Whether nothing was written.
    pub fn is_empty(&self) -> bool {
        self.items.is_empty()
    }

    /// The piece at `at`.
    pub fn item(&self, at: usize) -> Option<&Item> {
        self.items.get(at)
    }

    /// The text of the piece, as tidied.
    pub fn raw(&self, at: usize) -> &str {
        self.item(at).and_then(|item| self.text.get(item.span.clone())).unwrap_or_default()
    }

    /// The tidied text from one piece to another, both included.
    pub fn quote(&self, from: usize, to: usize) -> &str {
        match (self.item(from), self.item(to)) {
            (Some(from), Some(to)) => self.text.get(from.span.start..to.span.end).unwrap_or_default(),
            _ => "",
        }
    }

    /// Whether no blank stands before the piece.
    pub fn glued(&self, at: usize) -> bool {
        self.item(at).is_some_and(|item| !item.gap)
    }

    /// The meanings of the piece, if it is a word.
    pub fn meanings(&self, at: usize) -> &'static [Concept] {
        match self.item(at).map(|item| &item.what) {
            Some(What::Word(concepts)) => concepts,
            _ => &[],
        }
    }

    /// Whether the piece may mean `concept`.
    pub fn is(&self, at: usize, concept: &str) -> bool {
        self.names.may_have(concept) && self.meanings(at).contains(&concept)
    }

    /// The rest of the first meaning that begins with `group` (`bird-` gives `turkey`).
    pub fn of(&self, at: usize, group: &str) -> Option<&'static str> {
        let meanings = if self.groups.may_begin(group) { self.meanings(at) } else { &[] };
        meanings.iter().find_map(|concept| concept.strip_prefix(group))
    }

    /// The first meaning of that group in it, without the group's name.
    pub fn of_any(&self, group: &str) -> Option<&'static str> {
        (0..self.len()).find_map(|at| self.of(at, group))
    }

    /// The first place from `from` on that may mean `concept`.
    pub fn find(&self, from: usize, concept: &str) -> Option<usize> {
        if !self.names.may_have(concept) {
            return None;
        }
        (from..self.len()).find(|at| self.meanings(*at).contains(&concept))
    }

    /// Whether any piece may mean `concept`.
    pub fn has(&self, concept: &str) -> bool {
        self.find(0, concept).is_some()
    }

    /// The sign at `at`.
    pub fn mark(&self, at: usize) -> Option<char> {
        match self.item(at)?.what {
            What::Mark(c) => Some(c),
            _ => None,
        }
    }

    /// The amount at `at`.
    pub fn amount(&self, at: usize) -> Option<&Amount> {
        match &self.item(at)?.what {
            What::Amount(amount, _) => Some(amount),
            _ => None,
        }
    }

    /// The upper end of the range at `at`.
    pub fn upper(&self, at: usize) -> Option<&Amount> {
        match &self.item(at)?.what {
            What::Amount(_, upper) => upper.as_ref(),
            _ => None,
        }
    }

    /// The amount at `at` if it has that unit.
    pub fn amount_in(&self, at: usize, unit: Unit) -> Option<f64> {
        self.amount(at).filter(|amount| amount.unit() == Some(unit)).map(Amount::value)
    }

    /// A number without a unit: a bare amount or digits.
    pub fn number(&self, at: usize) -> Option<f64> {
        match &self.item(at)?.what {
            What::Amount(amount, _) => amount.bare(),
            What::Digits(value) => Some(*value),
            _ => None,
        }
    }

    /// A whole number without a unit in `range`.
    pub fn whole(&self, at: usize, range: std::ops::RangeInclusive<u32>) -> Option<u32> {
        let value = self.number(at)?;
        let whole = value as u32;
        (f64::from(whole) == value && range.contains(&whole)).then_some(whole)
    }
}

/// A piece before amounts are laid over it.
struct Piece {
    span: Range<usize>,
    gap: bool,
    kind: Kind,
}

enum Kind {
    Word(String),
    Digits(f64),
    Mark(char),
}

fn phrase_at(pieces: &[Piece], at: usize, lexicon: &'static Lexicon) -> Option<(usize, &'static [Concept], usize)> {
    let (mut words, mut ends) = ([""; LONGEST_PHRASE], [0; LONGEST_PHRASE]);
    let (mut many, mut next) = (0, at);
    for (own, end) in words.iter_mut().zip(&mut ends) {
        let Some(Piece { kind: Kind::Word(word), span, .. }) = pieces.get(next) else { break };
        (*own, *end) = (word, span.end);
        many += 1;
        next += 1;
        let hyphen = matches!(pieces.get(next), Some(Piece { kind: Kind::Mark('-'), gap: false, .. }));
        if hyphen && pieces.get(next + 1).is_some_and(|piece| !piece.gap) {
            next += 1;
        }
    }
    let (count, concepts) = lexicon.longest(words.get(..many)?)?;
    Some((count, concepts, *ends.get(count - 1)?))
}

fn pieces(text: &str, lexicon: &Lexicon) -> Vec<Piece> {
    let mut pieces: Vec<Piece> = Vec::new();
    let mut chars = text.char_indices().peekable();
    let mut gap = false;
    while let Some((start, c)) = chars.next() {
        if c == '\n' {
            pieces.push(Piece { span: start..start + 1, gap, kind: Kind::Mark('\n') });
            continue;
        }
        if c.is_whitespace() {
            gap = true;
            continue;
        }
        let mut end = start + c.len_utf8();
        let mut take = |end: &mut usize, wanted: &dyn Fn(usize, char, Option<char>) -> bool| {
            while let Some((_, next)) = chars.peek().copied() {
                let after = text.get(*end + next.len_utf8()..).and_then(|rest| rest.chars().next());
                if !wanted(*end, next, after) {
                    break;
                }
                *end += next.len_utf8();
                chars.next();
            }
        };
        let kind = if c.is_ascii_digit() {
            take(&mut end, &|_, next, after| {
                next.is_ascii_digit() || (matches!(next, '.' | ',') && after.is_some_and(|a| a.is_ascii_digit()))
            });
            let digits = text.get(start..end).unwrap_or_default().replace(',', ".");
            digits.parse::<f64>().map_or(Kind::Mark('#'), Kind::Digits)
        } else if c.is_alphabetic() || matches!(c, '°' | '%') {
            let word = |end: usize| text.get(start..end).unwrap_or_default();
            take(&mut end, &|end, next, after| {
                next.is_alphabetic()
                    || is_mark(next)
                    || is_apostrophe(next) && after.is_some_and(char::is_alphabetic) && !lexicon.elides(word(end))
            });
            // "l'eau": the article is a word of its own.
            let elided = lexicon.elides(word(end)).then_some(end);
            take(&mut end, &|end, next, after| {
                elided == Some(end) && is_apostrophe(next) && after.is_some_and(char::is_alphanumeric)
            });
            // A plural's apostrophe belongs to it: "parents'".
            if text.get(start..end).is_some_and(|word| word.ends_with('s')) {
                take(&mut end, &|_, next, after| matches!(next, '\'' | '’') && after.is_none_or(char::is_whitespace));
            }
            Kind::Word(fold(text.get(start..end).unwrap_or_default()))
        } else {
            Kind::Mark(match c {
                '\u{2010}'..='\u{2015}' | '\u{2212}' => '-',
                '\u{2044}' | '\u{2215}' => '/',
                other => other,
            })
        };
        pieces.push(Piece { span: start..end, gap, kind });
        gap = false;
    }
    pieces
}

/// Blanks made plain, `p.m.` joined, slips in common words mended.
fn tidy(text: &str, lexicon: &Lexicon) -> String {
    let mut tidy = String::with_capacity(text.len());
    let mut word = String::new();
    let flush = |word: &mut String, tidy: &mut String| {
        if !word.is_empty() {
            let folded = fold(word);
            tidy.push_str(lexicon.corrected(&folded).unwrap_or(word));
            word.clear();
        }
    };
    for c in text.chars() {
        if c.is_alphabetic() || is_mark(c) {
            word.push(c);
            continue;
        }
        flush(&mut word, &mut tidy);
        match c {
            '\r' => {}
            'º' | '˚' => tidy.push('°'),
            '\n' => tidy.push('\n'),
            c if is_unseen(c) || c == '\u{FE0F}' => {}
            c => tidy.push(c),
        }
    }
    flush(&mut word, &mut tidy);
    join_day_halves(mend_zeros(tidy))
}

/// `15o` and `1o8` become `150` and `108`: a letter where a thumb meant the nought. `1o` alone is an ordinal.
fn mend_zeros(text: String) -> String {
    if !text.contains(['o', 'O']) || !text.contains(|c: char| c.is_numeric()) {
        return text;
    }
    static NOUGHT: std::sync::LazyLock<Option<regex::Regex>> =
        std::sync::LazyLock::new(|| regex::Regex::new(r"\b(\d)[oO](\d)\b|\b(1\d)[oO]($|[\s,;/])").ok());
    match NOUGHT.as_ref() {
        Some(pattern) => pattern.replace_all(&text, "${1}${3}0${2}${4}").into_owned(),
        None => text,
    }
}

/// `5 p.m.`, `5 p. m.` become `5 pm`.
fn join_day_halves(text: String) -> String {
    if !text.contains('.') {
        return text;
    }
    static DAY_HALF: std::sync::LazyLock<Option<regex::Regex>> =
        std::sync::LazyLock::new(|| regex::Regex::new(r"(?i)(^|[\s\d])([ap])\.\s?m\b\.?").ok());
    match DAY_HALF.as_ref() {
        Some(pattern) => pattern.replace_all(&text, "${1}${2}m").into_owned(),
        None => text,
    }
}

fn is_apostrophe(c: char) -> bool {
    matches!(c, '\'' | '’' | '´' | '`')
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shape(text: &str, tag: &str) -> String {
        let sentence = Sentence::read(text, Lexicon::of(tag));
        let items = (0..sentence.len()).map(|at| match &sentence.item(at).map(|item| &item.what) {
            Some(What::Amount(..)) => format!("<{}>", sentence.raw(at)),
            Some(What::Word([])) => format!("?{}", sentence.raw(at)),
            Some(What::Word(concepts)) => concepts.first().map_or_else(String::new, ToString::to_string),
            _ => sentence.raw(at).to_owned(),
        });
        items.collect::<Vec<_>>().join(" ")
    }

    #[test]
    fn a_sentence_falls_into_amounts_meanings_and_signs() {
        for (tag, text, wanted) in [
            (
                "en",
                "14.5 lb Frozen turkeys, dinner Thrusday 5 p.m.",
                "<14.5 lb> condition-frozen bird-turkey , meal-dinner weekday-thu 5 part-afternoon",
            ),
            ("en", "the day before", "ahead"),
            ("en", "a day before", "ahead"),
            ("en", "part-thawed duck\u{a0}breast", "condition-part-thawed bird-duck spot-breast"),
            ("en", "58/64/165C", "58 / 64 / 165 unit-celsius"),
            (
                "es",
                "PAVO congelado de 6,5 kg, 11 personas",
                "bird-turkey condition-frozen number-of <6,5 kg> , <11> people",
            ),
            ("es", "pasado mañana al mediodía", "day-after-tomorrow noon"),
        ] {
            assert_eq!(shape(text, tag), wanted, "{text}");
        }
    }
}
