//! The words of a language by what they mean, from `locales/LANG/lexicon.ftl`.
//!
//! Owns no word itself. The names of the meanings are the ids of the English file, which every other language is compared
//! with. Start at [`Lexicon::of`]; [`super::sentence`] uses it to take a text apart.

use super::entries::{self, Entries};
use super::fold::fold;
use super::once;
use super::phrases::{Phrase as Found, Phrases};
use super::told::Told;
use crate::words::locales;
use carvetime_core::quantity::{NumberWord, Unit, UnitWords};
use rustc_hash::{FxHashMap, FxHashSet};
use std::borrow::Cow;
use std::rc::Rc;
use std::sync::{LazyLock, OnceLock};

/// Name of a meaning: `bird-turkey`, `weekday-thu`.
pub type Concept = &'static str;

/// Shortest word in which one slip is forgiven, and in which two are.
const ONE_SLIP_FROM: usize = 5;
const TWO_SLIPS_FROM: usize = 8;
/// Shortest word an ending is taken off, in bytes: `die` is no plural of `Di`.
const SHORTEST_STEM: usize = 3;

/// What the words of one language mean.
#[derive(Debug)]
pub struct Lexicon {
    words: &'static Words,
    meanings: &'static Meanings,
    day_first: bool,
}

/// What is the same wherever a language is spoken.
#[derive(Debug)]
struct Words {
    language: &'static str,
    /// Words open to correction, by first letter.
    vocabulary: FxHashMap<char, Vec<Open>>,
    known: FxHashSet<&'static str>,
    /// Whole texts of the `talk-` entries, with the rest of each entry's name. See [`super::talk`].
    talk: Phrases,
    /// What is said of danger in this language and no other, with the rest of each entry's name. See [`super::peril`].
    perils: Phrases,
    /// Names of spots in one word, folded, with their stable names, in the order listed.
    spots: Vec<(&'static str, &'static str)>,
    /// Names of steps as the board shows them, with their stable names.
    shown: Vec<(&'static str, &'static str)>,
    /// What a word may have at its end and still be the same word: plurals, cases.
    endings: Vec<&'static str>,
    /// Whether a half before an hour lies before it: `halb sechs` is 5:30.
    half_before: bool,
    /// Words that lose their end before a vowel and cling to the next: the `l` of `l'eau`.
    elisions: Vec<&'static str>,
    /// Words as they are shortened, and in full: `q` is `que`.
    spelled: FxHashMap<&'static str, &'static str>,
}

/// What words and phrases mean in a sentence, by what weighs a pound.
#[derive(Debug)]
struct Meanings {
    /// By their first word, longest first.
    phrases: FxHashMap<&'static str, Vec<Phrase>>,
    units: UnitWords,
}

/// Entries that say how a language is read, and are no words.
const SETTINGS: [&str; 6] = ["date-order", "decimal-comma", "elisions", "endings", "half-hour", "spelled"];

/// Talk of what is in no kitchen: its words are no more known for it.
const ELSEWHERE: [&str; 7] =
    ["misread", "other-kitchen", "sits-people", "unwell-after", "unwell-frail", "unwell-overate", "unwell-queasy"];

/// A phrase without its first word.
#[derive(Debug)]
struct Phrase {
    rest: Vec<&'static str>,
    concepts: Vec<Concept>,
}

/// A word open to correction, with what shows at a glance that another is too far from it.
#[derive(Debug)]
struct Open {
    word: &'static str,
    length: usize,
    letters: u32,
}

impl Open {
    fn new(word: &'static str) -> Self {
        Self { word, length: word.chars().count(), letters: letters(word) }
    }

    /// Whether a word of that length and those letters may be this one with so many slips: each changes the length by
    /// one at most, and the set of letters by two.
    fn may_be(&self, length: usize, letters: u32, slips: usize) -> bool {
        self.length.abs_diff(length) <= slips && (self.letters ^ letters).count_ones() as usize <= 2 * slips
    }
}

/// Which letters occur, some of them sharing a place.
fn letters(word: &str) -> u32 {
    word.chars().fold(0, |set, c| set | 1 << (u32::from(c) % u32::BITS))
}

/// Each language has one, and keeps it.
impl PartialEq for Lexicon {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}

impl Lexicon {
    /// The lexicon for an IETF tag. A language without one gets English; `en` outside the US reads dates day first.
    pub fn of(tag: &str) -> &'static Self {
        static EN: LazyLock<Lexicon> = LazyLock::new(|| Lexicon::read(locales::FIRST));
        static EN_DAY_FIRST: LazyLock<Lexicon> = LazyLock::new(|| Lexicon { day_first: true, ..*EN });
        static OTHERS: LazyLock<Vec<(&'static str, OnceLock<Lexicon>)>> = LazyLock::new(|| {
            let others = locales::languages().into_iter().filter(|language| *language != locales::FIRST);
            others.map(|language| (language, OnceLock::new())).collect()
        });
        let mut parts = tag.split(['-', '_', '.', '@']);
        let language = parts.next().unwrap_or_default();
        // Asked for by every reader: the commonest first.
        if language.eq_ignore_ascii_case(locales::FIRST) {
            let month_first = |region: &str| ["US", "PH"].iter().any(|known| known.eq_ignore_ascii_case(region));
            let abroad = parts.find(|part| part.len() == 2).is_some_and(|region| !month_first(region));
            return if abroad { &EN_DAY_FIRST } else { &EN };
        }
        if language.eq_ignore_ascii_case("fr") && parts.any(|part| part.eq_ignore_ascii_case("ca")) {
            return Self::in_pounds("fr").unwrap_or(&EN);
        }
        let own = OTHERS.iter().find(|(known, _)| known.eq_ignore_ascii_case(language));
        own.map_or(&EN, |(known, lexicon)| lexicon.get_or_init(|| Self::read(known)))
    }

    /// The lexicon of a language whose own pound is elsewhere 500 g, for those who mean the avoirdupois pound by it.
    pub(super) fn in_pounds(language: &str) -> Option<&'static Self> {
        static DE: LazyLock<Lexicon> = LazyLock::new(|| Lexicon::of("de").weighing_in_pounds());
        static FR: LazyLock<Lexicon> = LazyLock::new(|| Lexicon::of("fr").weighing_in_pounds());
        match language {
            "de" => Some(&DE),
            "fr" => Some(&FR),
            _ => None,
        }
    }

    /// Reads the words of every language before a text asks for them.
    pub fn read_all() {
        for language in locales::languages() {
            let _ = (Self::of(language), Self::in_pounds(language));
        }
    }

    /// Two-letter language the words are in.
    pub fn language(&self) -> &'static str {
        self.words.language
    }

    /// Units and number words for [`carvetime_core::quantity::scan`].
    pub fn units(&self) -> &UnitWords {
        &self.meanings.units
    }

    /// Whether `5/11` is a day before a month.
    pub fn day_first(&self) -> bool {
        self.day_first
    }

    /// Whether "half six" is half an hour before six.
    pub(super) fn half_before(&self) -> bool {
        self.words.half_before
    }

    /// Lexicons live as long as the program.
    fn read(language: &'static str) -> Self {
        let own = entries::of(language);
        let (mut words, day_first) = Words::read(language, own);
        let mut open = FxHashSet::default();
        let meanings = Meanings::read(own, &words.endings, &words.elisions, language, |word, is_own| {
            words.known.insert(word);
            // English words are not looked for behind another language's slips.
            if is_own {
                open.insert(word);
            }
        });
        for word in open.into_iter().filter(|word| word.chars().count() >= ONE_SLIP_FROM) {
            if let Some(first) = word.chars().next() {
                words.vocabulary.entry(first).or_default().push(Open::new(word));
            }
        }
        words.vocabulary.values_mut().for_each(|words| words.sort_unstable_by_key(|open| open.word));
        Self { words: Box::leak(Box::new(words)), meanings: Box::leak(Box::new(meanings)), day_first }
    }

    /// The same for those to whom its own word for a pound is the avoirdupois pound.
    fn weighing_in_pounds(&self) -> Self {
        let words = self.words;
        let mut own = entries::of(words.language).clone();
        let pounds = own.remove("unit-metric-pound").unwrap_or_default();
        own.entry("unit-pound").or_default().extend(pounds);
        let meanings = Meanings::read(&own, &words.endings, &words.elisions, words.language, |_, _| {});
        Self { meanings: Box::leak(Box::new(meanings)), ..*self }
    }

    /// The step of that name on the board: the whole name goes before its beginning, which must be one step's alone.
    pub(super) fn shown_step(&self, text: &str, whole: bool) -> Option<&'static str> {
        let text = fold(text);
        let text = text.trim().trim_end_matches(|c: char| c.is_ascii_digit() || c == ' ');
        if text.chars().count() < SHORTEST_STEM {
            return None;
        }
        let begins =
            |name: &str| name.strip_prefix(text).is_some_and(|rest| rest.is_empty() || !whole && rest.starts_with(' '));
        let mut found: Vec<&'static str> =
            self.words.shown.iter().filter(|(name, _)| begins(name)).map(|(_, step)| *step).collect();
        found.dedup();
        match found.as_slice() {
            [step] => Some(step),
            _ => None,
        }
    }

    /// Whether the word before an apostrophe stands by itself, as the `l` of `l'eau`.
    pub(super) fn elides(&self, word: &str) -> bool {
        !self.words.elisions.is_empty() && self.words.elisions.contains(&fold(word).as_str())
    }

    /// The words of short talk: elided ones by themselves (`l'`, `eau`), other apostrophes dropped.
    pub fn talk_words(&'static self, text: &str) -> Rc<[String]> {
        Rc::clone(Told::of(text, self).words())
    }

    /// The text with the words in full that people shorten.
    pub(super) fn in_full<'t>(&self, text: &'t str) -> Cow<'t, str> {
        if self.words.spelled.is_empty() {
            return text.into();
        }
        let short = |word: &str| match entries::is_plain(word) {
            true => self.words.spelled.get(word).copied(),
            false => self.words.spelled.get(fold(word).as_str()).copied(),
        };
        let words = || text.split(|c: char| !c.is_alphanumeric());
        if !words().any(|word| short(word).is_some()) {
            return text.into();
        }
        let mut full = String::with_capacity(text.len() + 8);
        for part in text.split_inclusive(|c: char| !c.is_alphanumeric()) {
            let word = part.trim_end_matches(|c: char| !c.is_alphanumeric());
            full.push_str(short(word).unwrap_or(word));
            full.push_str(part.get(word.len()..).unwrap_or_default());
        }
        full.into()
    }

    /// The same, cut anew for each language that takes this text apart in its own way.
    pub(super) fn cut(&'static self, text: &str) -> Rc<[String]> {
        let text = &self.in_full(text);
        let clings = !text.is_ascii() || text.contains('\'');
        let elisions: &'static [&'static str] = if clings { &self.words.elisions } else { &[] };
        let words = once::shared(text, &elisions, |text, elisions| Rc::<[String]>::from(talk_words(text, elisions)));
        Rc::clone(&words)
    }

    /// The longest phrase that `words` begin with: how many words it has and what it means.
    pub(super) fn longest(&self, words: &[&str]) -> Option<(usize, &[Concept])> {
        let first = words.first()?;
        let is = |word: &str, own: &str| word.starts_with(own) && self.stems(word).any(|stem| stem == own);
        let stands = |Phrase { rest, .. }: &&Phrase| {
            rest.len() < words.len() && rest.iter().zip(words.iter().skip(1)).all(|(own, word)| is(word, own))
        };
        self.stems(first)
            .filter_map(|first| self.meanings.phrases.get(first)?.iter().find(stands))
            // Of phrases as long, the word as it stands goes before what it may come from.
            .reduce(|best, phrase| if phrase.rest.len() > best.rest.len() { phrase } else { best })
            .map(|phrase| (phrase.rest.len() + 1, phrase.concepts.as_slice()))
    }

    /// Whether the folded words are, as a whole, a phrase of that `talk-` entry.
    pub(crate) fn talk(&self, words: &str, name: &str) -> bool {
        self.groups(words).contains(&name)
    }

    /// The `talk-` entries that the folded words are, as a whole, a phrase of.
    pub(super) fn groups(&self, words: &str) -> &[&'static str] {
        self.words.talk.groups(words)
    }

    /// The phrases of `talk-` entries that stand among the folded words.
    pub(super) fn talk_among(&'static self, words: &[String]) -> Vec<Found> {
        self.words.talk.among(words)
    }

    /// Whether the folded words are, as a whole, a phrase of that `peril-` or `talk-peril-` entry.
    pub(super) fn peril(&self, words: &str, name: &str) -> bool {
        self.words.perils.groups(words).contains(&name)
    }

    /// The phrases of those that stand among the folded words.
    pub(super) fn perils_among(&'static self, words: &[String]) -> Vec<Found> {
        self.words.perils.among(words)
    }

    /// What the folded words are as a whole: the rest of the names of the `talk-` entries that begin with `group`.
    pub(super) fn talked(&self, words: &str, group: &str) -> impl Iterator<Item = &'static str> {
        let names = self.groups(words).iter();
        names.filter_map(move |name| name.strip_prefix(group)).collect::<Vec<_>>().into_iter()
    }

    /// The word this folded word is a slip of: one slip from five letters, two from eight, the first letter right, and
    /// only where a single word is that near.
    pub(super) fn corrected(&self, word: &str) -> Option<&'static str> {
        let length = word.chars().count();
        if !(ONE_SLIP_FROM..=24).contains(&length) || self.stems(word).any(|w| self.words.known.contains(w)) {
            return None;
        }
        let forgiven = |length: usize| if length >= TWO_SLIPS_FROM { 2 } else { 1 };
        let (allowed, letters) = (forgiven(length), letters(word));
        let mut best: Option<(usize, &'static str)> = None;
        let mut tied = false;
        for open in self.words.vocabulary.get(&word.chars().next()?)? {
            let allowed = allowed.min(forgiven(open.length));
            if !open.may_be(length, letters, allowed) {
                continue;
            }
            let candidate = open.word;
            let slips = strsim::damerau_levenshtein(word, candidate);
            if slips > allowed {
                continue;
            }
            match best {
                Some((least, _)) if slips > least => {}
                Some((least, kept)) if slips == least => {
                    tied |= !self.stems(candidate).any(|w| w == kept) && !self.stems(kept).any(|w| w == candidate);
                }
                _ => {
                    best = Some((slips, candidate));
                    tied = false;
                }
            }
        }
        best.filter(|_| !tied).map(|(_, word)| word)
    }

    /// Whether the folded word, or what it is a slip of, occurs in any table.
    pub(crate) fn knows(&self, word: &str) -> bool {
        self.stems(word).any(|stem| self.words.known.contains(stem)) || self.corrected(word).is_some()
    }

    /// Whether the folded word occurs in any table as it stands.
    pub(crate) fn means(&self, word: &str) -> bool {
        self.stems(word).any(|stem| self.words.known.contains(stem))
    }

    /// The first name of a spot that a thermometer reads.
    pub(super) fn spot(&self, place: super::log::Place) -> Option<&'static str> {
        self.words.spots.iter().find(|(_, name)| *name == place.name()).map(|(word, _)| *word)
    }

    /// The spot of meat whose name this folded word misses by one slip; `None` where it may be two.
    pub(super) fn near_spot(&self, word: &str) -> Option<&'static str> {
        const SHORTEST: usize = 4;
        let first = word.chars().next().filter(|_| word.chars().count() >= SHORTEST)?;
        let near = |spot: &str| {
            spot.chars().count() >= SHORTEST && spot.starts_with(first) && strsim::damerau_levenshtein(word, spot) <= 1
        };
        let mut found: Vec<&str> =
            self.words.spots.iter().filter(|(spot, _)| near(spot)).map(|(_, name)| *name).collect();
        found.dedup();
        match found[..] {
            [name] if name != "pit" => Some(name),
            _ => None,
        }
    }

    /// The word and what it may be a plural or a case of.
    fn stems<'a>(&'a self, word: &'a str) -> impl Iterator<Item = &'a str> {
        let short = move |end: &&str| word.strip_suffix(*end).filter(|stem| stem.len() >= SHORTEST_STEM);
        std::iter::once(word).chain(self.words.endings.iter().filter_map(short))
    }
}

impl Words {
    /// The words of the entries that mean nothing in a sentence, how the others are cut; and whether a day is written before its month.
    fn read(language: &'static str, own: &'static Entries) -> (Self, bool) {
        let words_of = |id: &str| own.get(id).into_iter().flatten().copied();
        let one = |id: &str| words_of(id).next().unwrap_or_default();
        let spelled = words_of("spelled").filter_map(|pair| pair.split_once(' '));
        let mut words = Self {
            language,
            vocabulary: FxHashMap::default(),
            known: words_of("plain").map(folded).collect(),
            talk: if language == locales::FIRST { Phrases::default() } else { Phrases::before(english_talk()) },
            perils: Phrases::default(),
            spots: spots(own),
            shown: entries::shown_steps(language),
            endings: words_of("endings").collect(),
            half_before: one("half-hour") == "to",
            elisions: words_of("elisions").map(folded).collect(),
            spelled: spelled.map(|(short, full)| (folded(short), full)).collect(),
        };
        for (id, phrases) in own {
            let phrases = || phrases.iter().map(|phrase| bare(phrase, &words.elisions));
            let danger = id.strip_prefix("talk-peril-");
            if let Some(name) = danger.or_else(|| id.strip_prefix("peril-")) {
                phrases().for_each(|phrase| words.perils.add(phrase, name));
            }
            // "The new couch" is no more a thing of the kitchen for one that burns.
            let Some(name) = id.strip_prefix("talk-").filter(|_| danger.is_none()) else { continue };
            for phrase in phrases() {
                if !ELSEWHERE.contains(&name) {
                    words.known.extend(phrase.split(' '));
                }
                words.talk.add(phrase, name);
            }
        }
        (words, one("date-order") == "dmy")
    }
}

/// Names of spots in one word.
fn spots(own: &'static Entries) -> Vec<(&'static str, &'static str)> {
    let named = own.iter().filter_map(|(id, words)| Some((id.strip_prefix("spot-")?, words)));
    let spots = named.flat_map(|(name, words)| words.iter().map(move |word| (folded(word), name)));
    spots.filter(|(word, _)| !word.contains([' ', '-'])).collect()
}

impl Meanings {
    /// What the entries mean, and English words that mean nothing else in this language. `learn` is told each word, and whether it is the
    /// language's own.
    fn read(
        own: &Entries,
        endings: &[&str],
        elisions: &[&str],
        language: &str,
        mut learn: impl FnMut(&'static str, bool),
    ) -> Self {
        let comma = own.get("decimal-comma").is_some_and(|words| words.first() == Some(&"yes"));
        let means = |id: &str| !id.starts_with("talk-") && id != "plain" && !SETTINGS.contains(&id);
        let mut meanings: FxHashMap<&'static str, Vec<Concept>> = FxHashMap::default();
        let mut unit_words = Vec::new();
        let mut number_words = Vec::new();
        for (id, words) in own.iter().filter(|(id, _)| means(id)) {
            let unit = id.strip_prefix("unit-").and_then(Unit::from_name);
            let number = id.strip_prefix("number-").and_then(NumberWord::from_name);
            for phrase in words {
                if let Some(unit) = unit {
                    unit_words.push(((*phrase).to_owned(), unit));
                    unit_words.extend(plurals(phrase, endings).map(|plural| (plural, unit)));
                }
                number_words.extend(number.map(|number| ((*phrase).to_owned(), number)));
                let phrase = cut(phrase, elisions);
                phrase.split(' ').for_each(|word| learn(word, true));
                meanings.entry(phrase).or_default().push(id);
            }
        }
        let english = entries::of(locales::FIRST).iter().filter(|(id, _)| language != locales::FIRST && means(id));
        for (id, words) in english {
            let unit = id.strip_prefix("unit-").and_then(Unit::from_name);
            for phrase in words {
                let key = cut(phrase, elisions);
                if !meanings.get(key).is_none_or(|own| own.iter().all(|concept| concept == id)) {
                    continue;
                }
                if let Some(unit) = unit {
                    unit_words.extend(plurals(phrase, &["s", "es"]).map(|plural| (plural, unit)));
                    unit_words.push(((*phrase).to_owned(), unit));
                }
                key.split(' ').for_each(|word| learn(word, false));
                meanings.entry(key).or_insert_with(|| vec![id]);
            }
        }
        let mut phrases: FxHashMap<&'static str, Vec<Phrase>> = FxHashMap::default();
        for (phrase, concepts) in meanings {
            let mut words = phrase.split(' ');
            if let Some(first) = words.next() {
                phrases.entry(first).or_default().push(Phrase { rest: words.collect(), concepts });
            }
        }
        for list in phrases.values_mut() {
            // No hash order: of two as long the same one is found always.
            list.sort_unstable_by(|one, other| {
                other.rest.len().cmp(&one.rest.len()).then_with(|| one.rest.cmp(&other.rest))
            });
        }
        Self { phrases, units: UnitWords::new(unit_words, number_words, if comma { ',' } else { '.' }) }
    }
}

fn plurals(word: &str, endings: &[&str]) -> impl Iterator<Item = String> {
    endings.iter().map(move |end| format!("{word}{end}")).filter(|plural| plural.chars().count() > 3)
}

/// What English says in talk: understood in every language that does not say it itself.
fn english_talk() -> &'static Phrases {
    static ENGLISH: LazyLock<Phrases> = LazyLock::new(|| {
        let mut talk = Phrases::default();
        let names = entries::of(locales::FIRST).iter().filter(|(id, _)| !id.starts_with("talk-peril-"));
        let names = names.filter_map(|(id, words)| Some((id.strip_prefix("talk-")?, words)));
        // A word that says nothing in English may say something elsewhere.
        for (name, words) in names.filter(|(name, _)| *name != "filler") {
            words.iter().for_each(|phrase| talk.add(bare(phrase, &[]), name));
        }
        talk
    });
    &ENGLISH
}

/// A word as texts are compared.
fn folded(word: &'static str) -> &'static str {
    if entries::is_plain(word) { word } else { entries::kept(fold(word)) }
}

/// A phrase of short talk.
fn bare(phrase: &'static str, elisions: &[&str]) -> &'static str {
    if entries::is_plain(phrase) { phrase } else { entries::kept(talk_words(phrase, elisions).join(" ")) }
}

fn talk_words(text: &str, elisions: &[&str]) -> Vec<String> {
    let folded = fold(text);
    let apart = apart(&folded, elisions);
    let words = apart.split(|c: char| !c.is_alphanumeric() && c != '\'').map(|word| match word.strip_suffix('\'') {
        Some(elided) if elisions.contains(&elided) => word.to_owned(),
        _ => word.replace('\'', ""),
    });
    words.filter(|word| !word.is_empty()).collect()
}

/// A phrase as folded words with a blank between them, cut like a sentence is.
fn cut(phrase: &'static str, elisions: &[&str]) -> &'static str {
    if entries::is_plain(phrase) {
        return phrase;
    }
    let folded = fold(phrase);
    let apart = apart(&folded, elisions);
    let words: Vec<&str> = apart.split([' ', '-']).filter(|word| !word.is_empty()).collect();
    entries::kept(words.join(" "))
}

/// Folded text with a blank behind every elided word: `l' eau`.
fn apart<'t>(folded: &'t str, elisions: &[&str]) -> Cow<'t, str> {
    if elisions.is_empty() || !folded.contains('\'') {
        return folded.into();
    }
    let mut apart = String::with_capacity(folded.len());
    let mut word = 0;
    for (at, c) in folded.char_indices() {
        apart.push(c);
        if c == '\'' && folded.get(word..at).is_some_and(|word| elisions.contains(&word)) {
            apart.push(' ');
        }
        if !c.is_alphanumeric() {
            word = at + c.len_utf8();
        }
    }
    apart.into()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_english_says_in_talk_is_cut_alike_by_every_language() {
        for language in locales::languages() {
            let elisions = &Lexicon::of(language).words.elisions;
            for phrase in
                entries::of("en").iter().filter(|(id, _)| id.starts_with("talk-")).flat_map(|(_, words)| words)
            {
                assert_eq!(bare(phrase, elisions), bare(phrase, &[]), "{language}");
            }
        }
    }

    #[test]
    fn a_slip_of_the_finger_is_read_and_a_name_is_left_alone() {
        let english = Lexicon::of("en-US");
        for (slip, word) in
            [("trukey", "turkey"), ("thrusday", "thursday"), ("tablespon", "tablespoon"), ("frozn", "frozen")]
        {
            assert_eq!(english.corrected(word), None, "{word} is right");
            assert_eq!(english.corrected(slip), Some(word));
        }
        for name in ["rosa", "martin", "theresa", "thea", "hugh", "brennan", "augustus", "three", "house", "toast"] {
            assert_eq!(english.corrected(name), None, "{name}");
        }
        assert_eq!(Lexicon::of("es").corrected("congelaod"), Some("congelado"));
    }
}
