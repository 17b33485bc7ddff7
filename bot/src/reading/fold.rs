//! Letters as they are compared: lower case, accents off, compatibility forms undone.

use crate::words::foreign::is_unseen;
use icu::normalizer::DecomposingNormalizerBorrowed;
use std::sync::LazyLock;

/// `text` in lower case without accents and without what can't be seen: `Miércoles` and `miercoles` are one word, and so are
/// a name and the name copied from a message with isolates around it. Keeps order, not length.
pub fn fold(text: &str) -> String {
    if text.is_ascii() {
        return text.to_ascii_lowercase();
    }
    let mut folded = String::with_capacity(text.len());
    for c in text.chars() {
        let is_latin = LATIN.get(c as usize).map(|latin| folded.push_str(latin)).is_some();
        if !is_latin && !is_quote(c) {
            return fold_any(text);
        }
        if !is_latin {
            folded.push('\'');
        }
    }
    folded
}

/// What the letters of Western languages become, each by itself: no mark follows them that would have to be put in order.
static LATIN: LazyLock<Vec<String>> =
    LazyLock::new(|| ('\0'..'\u{180}').map(|c| fold_any(c.encode_utf8(&mut [0; 4]))).collect());

fn is_quote(c: char) -> bool {
    matches!(c, '’' | '‘' | 'ʼ' | '`' | '´')
}

fn fold_any(text: &str) -> String {
    let decomposed = DecomposingNormalizerBorrowed::new_nfkd().normalize(text);
    decomposed
        .chars()
        .filter(|c| !is_mark(*c) && !is_unseen(*c))
        .map(|c| if is_quote(c) { '\'' } else { c })
        .flat_map(char::to_lowercase)
        .flat_map(|c| {
            let (first, second) = match c {
                'ß' => ('s', Some('s')),
                'œ' => ('o', Some('e')),
                'æ' => ('a', Some('e')),
                c => (c, None),
            };
            std::iter::once(first).chain(second)
        })
        .collect()
}

/// Combining accents.
pub(super) fn is_mark(c: char) -> bool {
    ('\u{300}'..='\u{36f}').contains(&c)
}

#[cfg(test)]
mod tests {
    use super::{fold, fold_any};

    #[test]
    fn accents_case_and_typographic_quotes_fall_away() {
        for (written, folded) in [
            ("MIÉRCOLES", "miercoles"),
            ("mañana", "manana"),
            ("São Paulo", "sao paulo"),
            ("Zürich", "zurich"),
            ("heiße Soße", "heisse sosse"),
            ("o’clock", "o'clock"),
            ("CŒUR, nævus", "coeur, naevus"),
            ("Turkey", "turkey"),
            ("\u{2068}נועה\u{2069}", "נועה"),
            ("\u{202E}Ro\u{200B}sa", "rosa"),
        ] {
            assert_eq!(fold(written), folded);
        }
    }
    #[test]
    fn western_letters_are_folded_the_same_one_by_one() {
        for text in
            ["¿Está el horno a 350 °F?", "Äpfel, Maß; l’œuf ‘cuit’", "½ ﬁ", "ĳ ŀ ŉ ſ ´a` ¨", "İstanbul", "e\u{301}té"]
        {
            assert_eq!(fold(text), fold_any(text), "{text}");
        }
        for (c, d) in ('\0'..'\u{180}').zip(('\0'..'\u{180}').rev()) {
            let text = format!("{c}{d}");
            assert_eq!(fold(&text), fold_any(&text), "{c:?} {d:?}");
        }
    }
}
