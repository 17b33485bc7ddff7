//! Text that others wrote (names, titles, quotations), made fit to stand inside a sentence of ours.
//!
//! Owns which characters of it are left out, and the marks around what is written from the right: by the Unicode
//! Bidirectional Algorithm (UAX #9) the times, numbers and signs after a Hebrew name would else change their places.
//! Knows nothing of markup. Start at `cleaned`.

use icu::properties::CodePointMapData;
use icu::properties::props::BidiClass;

/// FIRST STRONG ISOLATE: what follows is laid out by itself, in its own direction, up to [`ISOLATE_END`].
pub const ISOLATE: char = '\u{2068}';
/// POP DIRECTIONAL ISOLATE.
pub const ISOLATE_END: char = '\u{2069}';

/// A character without ink: joiners, marks of direction, what only hints at line breaks. An emoji's selector is not among
/// them.
pub fn is_unseen(c: char) -> bool {
    matches!(
        c,
        '\u{AD}' | '\u{61C}' | '\u{180E}' | '\u{200B}'..='\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{206F}'
            | '\u{FEFF}' | '\u{FFF9}'..='\u{FFFB}'
    )
}

/// Whether any of it can be seen. Some people are called nothing but blanks.
pub fn is_visible(text: &str) -> bool {
    // Letters by name, blanks by look: the fillers of Hangul and an empty cell of Braille.
    let blank = |c: char| matches!(c, '\u{115F}' | '\u{1160}' | '\u{3164}' | '\u{FFA0}' | '\u{2800}' | '\u{FE0F}');
    text.chars().any(|c| !(c.is_whitespace() || c.is_control() || is_unseen(c) || blank(c)))
}

/// The text in one line, without controls and without marks that turn the direction of what follows it.
pub(super) fn cleaned(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut chars = text.chars().peekable();
    while let Some(c) = chars.next() {
        match c {
            // Families of emoji and Persian words are held together by joiners; elsewhere they do nothing good.
            '\u{200C}' | '\u{200D}' => {
                let inked = |c: &char| !c.is_whitespace() && !c.is_control() && !is_unseen(*c);
                if out.chars().next_back().is_some_and(|c| inked(&c)) && chars.peek().is_some_and(inked) {
                    out.push(c);
                }
            }
            // Breaks of lines and paragraphs: an isolate would end there.
            c if c.is_whitespace() && (c.is_control() || matches!(c, '\u{2028}' | '\u{2029}')) => out.push(' '),
            c if c.is_control() || is_unseen(c) => {}
            c => out.push(c),
        }
    }
    out
}

/// `shown`, which shows the cleaned `text`: between isolates if any of the text is written from the right.
pub(super) fn isolated(text: &str, shown: String) -> String {
    if from_the_right(text) { format!("{ISOLATE}{shown}{ISOLATE_END}") } else { shown }
}

fn from_the_right(text: &str) -> bool {
    let classes = CodePointMapData::<BidiClass>::new();
    let right =
        |c| matches!(classes.get(c), BidiClass::RightToLeft | BidiClass::ArabicLetter | BidiClass::ArabicNumber);
    !text.is_ascii() && text.chars().any(right)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn tame(text: &str) -> String {
        let kept = cleaned(text);
        isolated(&kept, kept.clone())
    }

    #[test]
    fn what_is_written_from_the_right_is_isolated_and_nothing_else_is() {
        for (given, wanted) in [
            ("Rosa", "Rosa"),
            ("Inés Ñandú", "Inés Ñandú"),
            ("田中", "田中"),
            ("נועה", "\u{2068}נועה\u{2069}"),
            ("Noa נועה (2)", "\u{2068}Noa נועה (2)\u{2069}"),
            ("محمد", "\u{2068}محمد\u{2069}"),
            ("٢٠", "\u{2068}٢٠\u{2069}"),
            ("", ""),
        ] {
            assert_eq!(tame(given), wanted);
        }
    }

    #[test]
    fn controls_and_marks_of_direction_are_left_out() {
        for (given, wanted) in [
            ("\u{202E}evil", "evil"),
            ("a\u{2067}b\u{2069}\u{2069}c", "abc"),
            ("a\u{200F}\u{61C}\u{200E}b", "ab"),
            ("Ro\u{200B}sa\u{FEFF}\u{AD}", "Rosa"),
            ("a\nb\r\nc\u{2028}d\u{2029}e\u{85}f", "a b  c d e f"),
            ("a\u{0}\u{1B}[31mb", "a[31mb"),
            ("\u{202B}נועה", "\u{2068}נועה\u{2069}"),
        ] {
            assert_eq!(tame(given), wanted, "{given:?}");
        }
    }

    #[test]
    fn joiners_stay_where_they_join() {
        for whole in ["👨‍👩‍👧‍👦", "👩🏽‍🍳", "❤️‍🔥"] {
            assert_eq!(tame(whole), whole);
        }
        assert_eq!(tame("می‌خواهم"), "\u{2068}می‌خواهم\u{2069}");
        assert_eq!(tame("\u{200D}Ana\u{200D} \u{200C}"), "Ana ");
    }

    #[test]
    fn a_name_of_blanks_is_not_visible() {
        for blank in ["", " \u{A0}", "\u{3164}", "\u{200B}\u{202E}", "\u{2800}\u{2800}", "\n"] {
            assert!(!is_visible(blank), "{blank:?}");
        }
        for seen in ["Rosa", "👤", "נ", "."] {
            assert!(is_visible(seen), "{seen:?}");
        }
    }

    proptest! {
        #[test]
        fn no_text_turns_the_line_or_leaves_an_isolate_open(text in any::<String>(), marks in "[\u{202A}-\u{202E}\u{2066}-\u{2069}\u{5D0}\u{627}a\u{2029}]{0,12}") {
            for text in [text.clone(), format!("{marks}{text}{marks}")] {
                let tame = tame(&text);
                let inside = tame.strip_prefix(ISOLATE).and_then(|rest| rest.strip_suffix(ISOLATE_END)).unwrap_or(&tame);
                let turns = |c| matches!(c, '\u{200E}' | '\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' | '\u{2029}');
                prop_assert!(!inside.contains(turns), "{tame:?}");
                prop_assert_eq!(inside.len() != tame.len(), from_the_right(inside));
            }
        }
    }
}
