//! Letters as they are compared: lower case, accents off, compatibility forms undone.

use crate::words::foreign::is_unseen;
use icu::normalizer::DecomposingNormalizerBorrowed;

/// `text` in lower case without accents and without what can't be seen: `Miércoles` and `miercoles` are one word, and so are
/// a name and the name copied from a message with isolates around it. Keeps order, not length.
pub fn fold(text: &str) -> String {
    if text.is_ascii() {
        return text.to_ascii_lowercase();
    }
    let decomposed = DecomposingNormalizerBorrowed::new_nfkd().normalize(text);
    decomposed
        .chars()
        .filter(|c| !is_mark(*c) && !is_unseen(*c))
        .map(|c| if matches!(c, '’' | '‘' | 'ʼ' | '`' | '´') { '\'' } else { c })
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
    use super::fold;

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
}
