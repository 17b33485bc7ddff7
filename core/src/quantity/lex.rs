//! Cuts a sentence into numbers, words and signs. Linear in its length; reads any script's digits.

use super::words::{fold, is_mark};
use std::ops::Range;

/// A piece of a sentence.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Token {
    /// Bytes it covers.
    pub span: Range<usize>,
    /// Whether blank space stands before it.
    pub gap: bool,
    /// What it is.
    pub kind: Kind,
}

/// Kind of token.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Kind {
    /// A decimal number, and how else it could be read (`1,500`).
    Number { value: f64, other: Option<f64> },
    /// A fraction: `1/2`, `½`.
    Fraction(f64),
    /// A word, folded, or a sign that works as one (`°F`, `%`).
    Word(String),
    /// A minus, hyphen or dash.
    Dash,
    /// Digits that are no amount: times of day, dates, versions, money.
    Junk,
    /// Any other sign.
    Sign(char),
}

/// Denominators that kitchens have; `11/22` is a date.
const DENOMINATORS: [u32; 8] = [2, 3, 4, 5, 6, 8, 10, 16];

/// The tokens of `text`. `decimal` settles what `1,500` is.
pub(super) fn tokens(text: &str, decimal: char) -> Vec<Token> {
    let chars: Vec<(usize, char)> = text.char_indices().collect();
    let mut lexer = Lexer { text, chars, at: 0, decimal };
    let mut found = Vec::new();
    let mut gap = false;
    while let Some(c) = lexer.peek(0) {
        if c.is_whitespace() {
            gap = true;
            lexer.at += 1;
        } else if is_invisible(c) {
            lexer.at += 1;
        } else {
            let start = lexer.byte();
            let kind = lexer.token(c);
            found.push(Token { span: start..lexer.byte(), gap, kind });
            gap = false;
        }
    }
    found
}

struct Lexer<'a> {
    text: &'a str,
    chars: Vec<(usize, char)>,
    at: usize,
    decimal: char,
}

impl Lexer<'_> {
    fn peek(&self, ahead: usize) -> Option<char> {
        self.chars.get(self.at + ahead).map(|(_, c)| *c)
    }

    fn digit_at(&self, ahead: usize) -> bool {
        self.peek(ahead).is_some_and(|c| digit(c).is_some())
    }

    fn byte(&self) -> usize {
        self.chars.get(self.at).map_or(self.text.len(), |(byte, _)| *byte)
    }

    fn token(&mut self, c: char) -> Kind {
        let leading_point = matches!(c, '.' | ',') && self.digit_at(1) && !self.after_digit();
        if digit(c).is_some() || leading_point {
            return self.number();
        }
        if let Some(value) = vulgar(c) {
            self.at += 1;
            return Kind::Fraction(value);
        }
        if c.is_alphabetic() || matches!(c, '°' | '˚' | '%' | '٪' | '℃' | '℉') {
            return self.word(c);
        }
        self.at += 1;
        match c {
            '$' | '€' | '£' | '¥' => {
                while self.digit_at(0) || matches!(self.peek(0), Some('.' | ',')) && self.digit_at(1) {
                    self.at += 1;
                }
                Kind::Junk
            }
            '-' | '\u{2010}'..='\u{2015}' | '\u{2212}' => Kind::Dash,
            other => Kind::Sign(other),
        }
    }

    fn after_digit(&self) -> bool {
        self.at > 0 && self.chars.get(self.at - 1).is_some_and(|(_, c)| digit(*c).is_some())
    }

    fn word(&mut self, first: char) -> Kind {
        let start = self.byte();
        self.at += 1;
        if matches!(first, '%' | '٪') {
            return Kind::Word("%".to_owned());
        }
        if !matches!(first, '℃' | '℉') {
            while self.peek(0).is_some_and(|c| (c.is_alphabetic() && c != 'º') || is_mark(c)) {
                self.at += 1;
            }
        }
        let mut word = fold(self.text.get(start..self.byte()).unwrap_or_default());
        let letter = |ahead: usize| self.peek(ahead).is_some_and(char::is_alphabetic);
        let clings = matches!(self.peek(0), Some('\'' | '’')) && letter(1);
        if clings && word.chars().count() == 1 {
            // A lone letter is no unit where it clings to a word: "8 s'il te plaît", "trois quarts d'heure".
            word.push('\'');
            self.at += 1;
        } else if clings && letter(2) {
            // "un'ora"
            self.at += 1;
        }
        Kind::Word(word)
    }

    /// A number with its separators, a fraction, or digits that are none of these.
    fn number(&mut self) -> Kind {
        let whole = self.decimal_text();
        match self.peek(0) {
            Some(':') if self.digit_at(1) => {
                self.skip_chain();
                Kind::Junk
            }
            Some('/' | '\u{2044}' | '\u{2215}') if self.digit_at(1) => self.fraction(&whole),
            Some('-') if self.is_date() => {
                self.skip_chain();
                Kind::Junk
            }
            _ => read_decimal(&whole, self.decimal).map_or(Kind::Junk, |(value, other)| Kind::Number { value, other }),
        }
    }

    /// Digits and separators in ASCII; `'` and narrow blanks between groups of three are dropped.
    fn decimal_text(&mut self) -> String {
        let mut ascii = String::new();
        while let Some(c) = self.peek(0) {
            if let Some(d) = digit(c) {
                ascii.push(d);
            } else if matches!(c, '.' | ',' | '\u{66b}') && self.digit_at(1) {
                ascii.push(if c == '\u{66b}' { 'd' } else { c });
            } else if is_group_sign(c) && !ascii.is_empty() && (1..=3).all(|n| self.digit_at(n)) && !self.digit_at(4) {
                // dropped
            } else {
                break;
            }
            self.at += 1;
        }
        ascii
    }

    fn fraction(&mut self, over: &str) -> Kind {
        self.at += 1;
        let under = self.decimal_text();
        if matches!(self.peek(0), Some('/' | '-' | ':')) && self.digit_at(1) {
            self.skip_chain();
            return Kind::Junk;
        }
        match (over.parse::<u32>(), under.parse::<u32>()) {
            (Ok(over), Ok(under)) if over < 1000 && DENOMINATORS.contains(&under) => {
                Kind::Fraction(f64::from(over) / f64::from(under))
            }
            _ => Kind::Junk,
        }
    }

    /// `-11-22` ahead.
    fn is_date(&self) -> bool {
        let mut ahead = 1;
        while ahead < 6 && self.digit_at(ahead) {
            ahead += 1;
        }
        ahead > 1 && self.peek(ahead) == Some('-') && self.digit_at(ahead + 1)
    }

    fn skip_chain(&mut self) {
        while self.digit_at(0)
            || matches!(self.peek(0), Some(':' | '/' | '-' | '.' | ',' | '\u{2044}' | '\u{2215}')) && self.digit_at(1)
        {
            self.at += 1;
        }
    }
}

/// The value of digits with separators, and the other reading where there are two. `d` is a sure decimal sign.
fn read_decimal(ascii: &str, decimal: char) -> Option<(f64, Option<f64>)> {
    let parse = |text: &str| text.parse::<f64>().ok().filter(|v| v.is_finite());
    let plain = |point: Option<char>| {
        let text: String = ascii
            .chars()
            .filter_map(|c| if Some(c) == point { Some('.') } else { c.is_ascii_digit().then_some(c) })
            .collect();
        parse(&text)
    };
    if ascii.contains('d') {
        return Some((plain(Some('d'))?, None));
    }
    let signs: Vec<char> = ascii.chars().filter(|c| !c.is_ascii_digit()).collect();
    let (Some(first), Some(last)) = (signs.first(), signs.last()) else {
        return Some((parse(ascii)?, None));
    };
    let groups: Vec<usize> = ascii.split(['.', ',']).skip(1).map(str::len).collect();
    let (last_group, inner) = groups.split_last()?;
    let lead = ascii.find(['.', ','])?;
    if signs.len() == 1 {
        let either = *last_group == 3 && (1..=3).contains(&lead) && !ascii.starts_with('0');
        let as_decimal = plain(Some(*last))?;
        return if !either {
            Some((as_decimal, None))
        } else if *last == decimal {
            Some((as_decimal, plain(None)))
        } else {
            Some((plain(None)?, Some(as_decimal)))
        };
    }
    let same = signs.iter().all(|s| s == first);
    let grouped = (1..=3).contains(&lead) && inner.iter().all(|n| *n == 3);
    if same && grouped && *last_group == 3 {
        return Some((plain(None)?, None));
    }
    let one_point = first != last && signs.iter().filter(|s| *s == last).count() == 1;
    if one_point && grouped { Some((plain(Some(*last))?, None)) } else { None }
}

fn is_group_sign(c: char) -> bool {
    matches!(c, '\'' | '’' | '\u{a0}' | '\u{202f}' | '\u{2009}' | '\u{66c}')
}

/// Marks that set direction or join, and print nothing.
fn is_invisible(c: char) -> bool {
    matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}' | '\u{2066}'..='\u{2069}' | '\u{feff}' | '\u{fe0f}')
}

/// Zeros of the scripts whose digits run from zero to nine.
const ZEROS: [u32; 20] = [
    0x30, 0x660, 0x6f0, 0x7c0, 0x966, 0x9e6, 0xa66, 0xae6, 0xb66, 0xbe6, 0xc66, 0xce6, 0xd66, 0xe50, 0xed0, 0xf20,
    0x1040, 0x17e0, 0x1810, 0xff10,
];

/// The ASCII digit of a decimal digit of any common script.
fn digit(c: char) -> Option<char> {
    if c.is_ascii() {
        return c.is_ascii_digit().then_some(c);
    }
    let code = u32::from(c);
    let zero = ZEROS.iter().find(|zero| (**zero..**zero + 10).contains(&code))?;
    char::from_digit(code - zero, 10)
}

fn vulgar(c: char) -> Option<f64> {
    Some(match c {
        '½' => 0.5,
        '⅓' => 1.0 / 3.0,
        '⅔' => 2.0 / 3.0,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅕' => 0.2,
        '⅖' => 0.4,
        '⅗' => 0.6,
        '⅘' => 0.8,
        '⅙' => 1.0 / 6.0,
        '⅚' => 5.0 / 6.0,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => return None,
    })
}
