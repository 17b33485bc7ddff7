//! Seeds taken apart and put together wrong.

use super::LONGEST;

/// Chance from a number: the same number, the same chance.
#[derive(Debug, Clone)]
pub struct Chance(u64);

impl Chance {
    /// From this number.
    pub fn new(number: u64) -> Self {
        Self(number.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x5eed)
    }

    /// Any number.
    pub fn number(&mut self) -> u64 {
        // splitmix64, Steele, Lea and Flood, 2014 (from memory).
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number below `end`, 0 if there is none.
    pub fn below(&mut self, end: usize) -> usize {
        if end == 0 { 0 } else { (self.number() % end as u64) as usize }
    }

    /// One of them.
    pub fn pick<'a, T>(&mut self, from: &'a [T]) -> &'a T {
        &from[self.below(from.len())]
    }
}

/// What tends to be read wrong.
const ODD: &[&str] = &[
    "0",
    "-0",
    "-1",
    "1e308",
    "1e999",
    "-1e-320",
    "NaN",
    "inf",
    "99999999999999999999",
    "18446744073709551616",
    "2147483648",
    "1/0",
    "½",
    "1½",
    "⅞",
    "0x1F",
    "1,5",
    "1.5.5",
    "1,234,567.89",
    "٣",
    "１２",
    "°",
    "°F",
    "℃",
    "165°",
    "-459.68F",
    "-273.16 C",
    "gas 99",
    "\u{0}",
    "\u{feff}",
    "\u{202e}",
    "\u{200d}",
    "🦃",
    "👨\u{200d}👩\u{200d}👧",
    "İ",
    "ß",
    "ﬁ",
    "e\u{301}",
    "\u{a0}",
    "\u{202f}",
    "\r\n",
    "\t",
    "\u{2028}",
    "<b>",
    "</b>",
    "&amp;",
    "&",
    "<",
    "\"",
    "'",
    "{ $x }",
    "@",
    "/",
    "//",
    "#1",
    "..",
    ":",
    "25:61",
    "24:00",
    "00:00",
    "2027-02-30",
    "0000-00-00",
    "9999-12-31",
    "Feb 29",
    "31/31/31",
    "in 99999999 days",
    "+99999999999 h",
    "-1 min",
    "tomorrow yesterday",
    "noon midnight",
    " lb",
    " kg",
    " g",
    " tbsp",
    " cup",
    " %",
    " people",
    " F",
    " C",
    " hours",
    "to",
    "at",
    "x",
    "[",
    "]",
    "{",
    "}",
    ",",
    ";",
    "\\",
    "\n",
    "null",
    "true",
    "-",
];

/// An input from `seeds`, never longer than [`LONGEST`] characters unless `long`.
pub fn input(seeds: &[Vec<u8>], number: u64, long: bool) -> Vec<u8> {
    let chance = &mut Chance::new(number);
    let mut bytes = chance.pick(seeds).clone();
    for _ in 0..=chance.below(6) {
        change(&mut bytes, seeds, chance);
    }
    if chance.below(40) == 0 && !bytes.is_empty() {
        // As long as it gets.
        while bytes.len() < LONGEST {
            bytes.extend_from_within(..bytes.len().min(LONGEST));
        }
    }
    if !long && bytes.len() > LONGEST {
        bytes = String::from_utf8_lossy(&bytes).chars().take(LONGEST).collect::<String>().into_bytes();
    }
    bytes
}

fn change(bytes: &mut Vec<u8>, seeds: &[Vec<u8>], chance: &mut Chance) {
    let at = chance.below(bytes.len() + 1);
    let span = at..(at + 1 + chance.below(12)).min(bytes.len()).max(at);
    match chance.below(12) {
        0 => drop(bytes.drain(span)),
        1 => {
            let again = bytes[span].repeat(1 + chance.below(5));
            bytes.splice(at..at, again);
        }
        2 => bytes.truncate(at),
        3 => {
            let other = chance.pick(seeds);
            let from = chance.below(other.len());
            bytes.truncate(at);
            bytes.extend_from_slice(&other[from..]);
        }
        4 => {
            let other = chance.pick(seeds);
            let from = chance.below(other.len());
            let part = other[from..(from + chance.below(30)).min(other.len())].to_vec();
            bytes.splice(at..at, part);
        }
        5 if at < bytes.len() => bytes[at] = chance.number().to_le_bytes()[0],
        6 => {
            // A number becomes another.
            let digits = |byte: &u8| byte.is_ascii_digit();
            if let Some(from) = bytes.iter().skip(at).position(digits).map(|from| from + at) {
                let end = bytes[from..].iter().position(|byte| !digits(byte)).map_or(bytes.len(), |end| from + end);
                let other = if chance.below(2) == 0 {
                    (chance.number() >> chance.below(64)).to_string()
                } else {
                    (*chance.pick(ODD)).to_owned()
                };
                bytes.splice(from..end, other.into_bytes());
            }
        }
        7 => {
            // A word becomes another seed's.
            let text = String::from_utf8_lossy(chance.pick::<Vec<u8>>(seeds)).into_owned();
            let words: Vec<&str> = text.split_whitespace().collect();
            if !words.is_empty() {
                let word = format!(" {} ", chance.pick(&words));
                bytes.splice(at..at, word.into_bytes());
            }
        }
        _ => {
            let odd = *chance.pick(ODD);
            bytes.splice(at..at, odd.bytes());
        }
    }
}
