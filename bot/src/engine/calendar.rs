//! A calendar with its words: text of iCalendar (RFC 5545).
//!
//! Owns escaping, folding and the form of dates. Knows nothing of plans; the words come from whoever renders. Written out
//! here rather than by a crate: the one at hand folds to 76 octets where 75 are allowed. Start at [`write`].

use crate::room::turn::{Calendar, Event};
use crate::words::Text;
use chrono::{DateTime, Utc};

/// Octets in a line, its break not counted. RFC 5545, 3.1.
const LONGEST: usize = 75;

/// The calendar as a file; `say` gives a text its words.
pub(super) fn write(calendar: &Calendar, say: impl Fn(&Text) -> String) -> Vec<u8> {
    let mut out = String::new();
    line(&mut out, "BEGIN:VCALENDAR");
    line(&mut out, "VERSION:2.0");
    line(&mut out, "PRODID:-//carvetime//plan//EN");
    line(&mut out, "CALSCALE:GREGORIAN");
    line(&mut out, "METHOD:PUBLISH");
    for event in &calendar.events {
        self::event(&mut out, event, calendar.at, &say);
    }
    line(&mut out, "END:VCALENDAR");
    out.into_bytes()
}

fn event(out: &mut String, event: &Event, stamp: DateTime<Utc>, say: &impl Fn(&Text) -> String) {
    let description: Vec<String> = event.description.iter().map(say).collect();
    line(out, "BEGIN:VEVENT");
    line(out, &format!("UID:{}", escaped(&event.uid)));
    line(out, &format!("DTSTAMP:{}", utc(stamp)));
    line(out, &format!("SEQUENCE:{}", event.sequence));
    line(out, &format!("DTSTART:{}", utc(event.start)));
    line(out, &format!("DTEND:{}", utc(event.end)));
    line(out, &format!("SUMMARY:{}", escaped(&say(&event.summary))));
    if !description.is_empty() {
        line(out, &format!("DESCRIPTION:{}", escaped(&description.join("\n"))));
    }
    if event.cancelled {
        line(out, "STATUS:CANCELLED");
    }
    line(out, "TRANSP:TRANSPARENT");
    line(out, "END:VEVENT");
}

fn utc(at: DateTime<Utc>) -> String {
    at.format("%Y%m%dT%H%M%SZ").to_string()
}

/// TEXT of RFC 5545, 3.3.11.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\\' | ';' | ',' => out.extend(['\\', c]),
            '\n' => out.push_str("\\n"),
            c if c.is_control() => {}
            c => out.push(c),
        }
    }
    out
}

/// A line folded so that no part is too long and no character is cut.
fn line(out: &mut String, text: &str) {
    let mut length = 0;
    for c in text.chars() {
        if length + c.len_utf8() > LONGEST {
            out.push_str("\r\n ");
            length = 1;
        }
        out.push(c);
        length += c.len_utf8();
    }
    out.push_str("\r\n");
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn commas_semicolons_backslashes_and_breaks_are_escaped() {
        assert_eq!(escaped("salt, pepper; a\\b\r\nthen"), "salt\\, pepper\\; a\\\\b\\nthen");
        // A calendar lays its lines out by the same rules as a chat: isolates stay.
        assert_eq!(escaped("\u{2068}קוגל\u{2069}, 5"), "\u{2068}קוגל\u{2069}\\, 5");
    }

    proptest! {
        #[test]
        fn folded_lines_are_short_and_unfold_to_what_they_were(text in "[^\\p{Cc}]{0,300}") {
            let mut out = String::new();
            line(&mut out, &text);
            for part in out.trim_end_matches("\r\n").split("\r\n") {
                prop_assert!(part.len() <= LONGEST, "{} octets", part.len());
            }
            prop_assert_eq!(out.replace("\r\n ", ""), text + "\r\n");
        }
    }
}
