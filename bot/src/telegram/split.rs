//! Cuts a message that is longer than the platform takes, never inside a tag, an entity or a character; a name between
//! isolates that must be cut is isolated in both parts.

use crate::words::foreign::{ISOLATE, ISOLATE_END};
use crate::words::plain;

/// Longest text of a message, in UTF-16 units after the markup is read.
pub const MAX_TEXT: usize = 4096;

/// Longest text under a file.
pub const MAX_CAPTION: usize = 1024;

/// Longest answer to a press.
pub const MAX_NOTICE: usize = 200;

/// A piece of rendered text that must not be cut. An isolate is opened and closed like a tag.
#[derive(Clone, Copy)]
enum Piece<'a> {
    Open(&'a str),
    Close(&'a str),
    Text(&'a str),
}

/// `html` in parts of at most `limit` visible UTF-16 units each; tags open at a cut are closed and opened again.
pub fn split(html: &str, limit: usize) -> Vec<String> {
    let mut parts = Vec::new();
    let mut part = Part::default();
    for piece in pieces(html) {
        match piece {
            Piece::Open(tag) => {
                let units = reserved(tag);
                if part.units + units > limit {
                    parts.extend(part.cut());
                }
                part.units += units;
                part.text.push_str(tag);
                part.open.push(tag);
            }
            Piece::Close(tag) => {
                part.text.push_str(tag);
                part.open.pop();
            }
            Piece::Text(text) => {
                let units = if text.starts_with('&') { 1 } else { units_of(text) };
                if part.units + units > limit {
                    parts.extend(part.cut());
                }
                part.text.push_str(text);
                part.units += units;
                if text == "\n" || text == " " {
                    part.break_at = Some((part.text.len(), part.units, part.open.clone()));
                }
            }
        }
    }
    parts.extend(part.end());
    parts
}

#[derive(Default)]
struct Part<'a> {
    text: String,
    units: usize,
    open: Vec<&'a str>,
    /// After the last space: bytes, units and open tags there.
    break_at: Option<(usize, usize, Vec<&'a str>)>,
}

impl Part<'_> {
    /// Ends this part, at the last space unless that is far back, and goes on with the rest.
    fn cut(&mut self) -> Option<String> {
        let (at, units, open) = match self.break_at.take() {
            Some((at, units, open)) if units * 2 > self.units => (at, units, open),
            _ => (self.text.len(), self.units, self.open.clone()),
        };
        let rest = self.text.split_off(at);
        let mut done = std::mem::take(&mut self.text);
        for tag in open.iter().rev() {
            done.push_str(closing(tag));
        }
        self.text = open.concat() + &rest;
        self.units = self.units - units + open.iter().map(|tag| reserved(tag)).sum::<usize>();
        shown(done)
    }

    fn end(self) -> Option<String> {
        shown(self.text)
    }
}

/// The part, unless there is nothing to see in it.
fn shown(part: String) -> Option<String> {
    (!plain(&part).trim().is_empty()).then(|| part.trim_end().to_owned())
}

/// Length as the platform counts.
pub fn units_of(text: &str) -> usize {
    text.encode_utf16().count()
}

/// An isolate is seen by nobody and counts, and so does its end, which may come with a cut.
fn reserved(tag: &str) -> usize {
    if tag.starts_with(ISOLATE) { 2 } else { 0 }
}

fn closing(tag: &str) -> &'static str {
    match tag.as_bytes().get(1) {
        _ if tag.starts_with(ISOLATE) => "\u{2069}",
        Some(b'b') => "</b>",
        Some(b'i') => "</i>",
        _ => "</a>",
    }
}

/// Tags and isolates, entities, and text by the character.
fn pieces(html: &str) -> impl Iterator<Item = Piece<'_>> {
    let mut rest = html;
    std::iter::from_fn(move || {
        let first = rest.chars().next()?;
        let end = match first {
            '<' => rest.find('>').map(|at| at + 1),
            '&' => rest.find(';').map(|at| at + 1),
            _ => None,
        };
        let (piece, after) = rest.split_at(end.unwrap_or(first.len_utf8()));
        rest = after;
        Some(match first {
            '<' if piece.starts_with("</") => Piece::Close(piece),
            '<' if end.is_some() => Piece::Open(piece),
            ISOLATE => Piece::Open(piece),
            ISOLATE_END => Piece::Close(piece),
            _ => Piece::Text(piece),
        })
    })
}

/// The start of a plain text, at most `limit` UTF-16 units, with an ellipsis if it was cut.
pub fn shorten(text: &str, limit: usize) -> String {
    if units_of(text) <= limit {
        return text.to_owned();
    }
    let mut out = String::new();
    let mut units = 1; // the ellipsis
    let mut open = false;
    for c in text.chars() {
        // With an isolate its end is counted.
        units += match c {
            ISOLATE => 2,
            ISOLATE_END => 0,
            c => c.len_utf16(),
        };
        if units > limit {
            break;
        }
        open = c == ISOLATE || open && c != ISOLATE_END;
        out.push(c);
    }
    out.push('…');
    out.extend(open.then_some(ISOLATE_END));
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_short_text_stays_whole() {
        assert_eq!(split("<b>11</b> people &amp; a bird", 4096), ["<b>11</b> people &amp; a bird"]);
    }

    #[test]
    fn a_cut_falls_on_a_space_and_carries_its_tags_over() {
        assert_eq!(split("<b>aaaa bbbb cccc</b>", 10), ["<b>aaaa bbbb </b>", "<b>cccc</b>"]);
        assert_eq!(split("aaaa <i>bbbb</i> cccc", 6), ["aaaa", "<i>bbbb</i>", "cccc"]);
    }

    #[test]
    fn an_entity_counts_as_one_character_and_is_not_cut() {
        assert_eq!(split("&amp;&amp;&amp;", 2), ["&amp;&amp;", "&amp;"]);
    }

    #[test]
    fn an_isolate_that_is_cut_is_whole_in_both_parts() {
        let html = "Ask \u{2068}<a href=\"x\">aa bb cc dd</a>\u{2069} now";
        let parts = ["Ask \u{2068}<a href=\"x\">aa </a>\u{2069}", "\u{2068}<a href=\"x\">bb cc </a>\u{2069}"];
        let parts = parts.into_iter().chain(["\u{2068}<a href=\"x\">dd</a>\u{2069} now"]);
        assert_eq!(split(html, 10), parts.collect::<Vec<_>>());
        assert_eq!(shorten("to \u{2068}abcdef\u{2069}, 5:00", 9), "to \u{2068}abc…\u{2069}");
        assert_eq!(shorten("\u{2068}ab\u{2069}, 5:00", 7), "\u{2068}ab\u{2069}, …");
    }

    #[test]
    fn a_character_of_two_units_is_not_cut() {
        assert_eq!(split("🦃🦃🦃", 4), ["🦃🦃", "🦃"]);
        assert_eq!(shorten("🦃🦃🦃", 4), "🦃…");
    }

    proptest! {
        #[test]
        fn no_part_is_too_long_and_no_word_is_lost(words in proptest::collection::vec("[a-z🦃]{1,9}", 1..60), limit in 12..40_usize) {
            let html: Vec<String> = words
                .iter()
                .enumerate()
                .map(|(n, word)| match n % 3 {
                    0 => format!("<b>{word}</b> &lt;"),
                    1 => format!("\u{2068}<b>{word} {word}</b>\u{2069}"),
                    _ => word.clone(),
                })
                .collect();
            let html = html.join(" ");
            let parts = split(&html, limit);
            let mut said = String::new();
            for part in &parts {
                prop_assert!(units_of(&plain(part)) <= limit, "{part}");
                prop_assert_eq!(part.matches("<b>").count(), part.matches("</b>").count());
                prop_assert_eq!(part.matches('\u{2068}').count(), part.matches('\u{2069}').count());
                said.push_str(&plain(part));
            }
            let letters = |text: &str| -> String {
                text.chars().filter(|c| !c.is_whitespace() && !matches!(c, '\u{2068}' | '\u{2069}')).collect()
            };
            prop_assert_eq!(letters(&said), letters(&plain(&html)));
        }
    }
}
