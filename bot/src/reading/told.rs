//! The words of a text, and every phrase of short talk in it: looked for once, however many readers ask.
//!
//! Owns no word: see the `talk-` and `peril-` entries of the lexicon. Start at [`Told::of`].

use super::glance::Glance;
use super::lexicon::Lexicon;
use super::once;
use super::phrases::Phrase;
use super::talk::essence;
use std::cell::OnceCell;
use std::cmp::Reverse;
use std::ops::Range;
use std::rc::Rc;

/// Names of `talk-` entries, without their beginning.
type Groups = &'static [&'static str];

/// See the module.
#[derive(Debug)]
pub struct Told {
    text: String,
    lexicon: &'static Lexicon,
    words: Rc<[String]>,
    phrases: OnceCell<Found>,
    perils: OnceCell<Vec<Phrase>>,
    short: OnceCell<Option<Short>>,
}

/// The phrases of short talk that stand in it, the shortest first, and their groups at a glance.
#[derive(Debug)]
struct Found {
    phrases: Vec<Phrase>,
    groups: Glance,
}

/// A short text as a whole.
#[derive(Debug)]
struct Short {
    /// Its words, slips mended.
    words: Vec<String>,
    /// What all of them are a phrase of, and what those are that say something.
    groups: [Groups; 2],
}

impl Told {
    /// The words of `text`.
    pub fn of(text: &str, lexicon: &'static Lexicon) -> Rc<Self> {
        once::shared(text, &lexicon, |text, lexicon| Self {
            text: text.to_owned(),
            lexicon,
            words: lexicon.cut(text),
            phrases: OnceCell::new(),
            perils: OnceCell::new(),
            short: OnceCell::new(),
        })
    }

    /// What it is read by.
    pub(super) fn lexicon(&self) -> &'static Lexicon {
        self.lexicon
    }

    /// Its words.
    pub fn words(&self) -> &Rc<[String]> {
        &self.words
    }

    /// Whether a phrase of that group stands in it.
    pub fn says(&self, group: &str) -> bool {
        self.of_group(group).next().is_some()
    }

    /// The words of each phrase of that group, the shortest first.
    pub fn all<'a>(&'a self, group: &'a str) -> impl Iterator<Item = &'a [String]> {
        self.places(group).filter_map(|place| self.words.get(place))
    }

    /// Whether it begins with a phrase of that group.
    pub fn opens_with(&self, group: &str) -> bool {
        self.places(group).any(|place| place.start == 0)
    }

    /// Where phrases of that group stand.
    pub fn places<'a>(&'a self, group: &'a str) -> impl Iterator<Item = Range<usize>> + 'a {
        self.of_group(group).map(|phrase| phrase.from..phrase.to)
    }

    /// Whether the words there are a phrase of that group.
    pub fn is(&self, place: Range<usize>, group: &str) -> bool {
        self.places(group).any(|own| own == place)
    }

    /// The longest phrase of any of these groups, of those as long the first: from, to, the group.
    pub fn longest<'g>(&self, groups: &[&'g str]) -> Option<(usize, usize, &'g str)> {
        let found = self.found().phrases.iter().filter_map(|phrase| {
            let group = groups.iter().find(|group| phrase.groups.contains(group))?;
            Some((phrase.from, phrase.to, *group))
        });
        found.min_by_key(|(from, to, _)| (Reverse(to - from), *from))
    }

    /// The end of the longest phrase of that group that begins there.
    pub fn end(&self, from: usize, group: &str) -> Option<usize> {
        self.places(group).filter(|place| place.start == from).map(|place| place.end).max()
    }

    /// Whether it is short and, but for what says nothing, a phrase of that group as a whole.
    pub(super) fn is_all(&self, group: &str) -> bool {
        self.whole().is_some_and(|short| short.groups.iter().any(|groups| groups.contains(&group)))
    }

    /// The words of a short text that asks nothing and counts nothing, slips mended.
    pub(super) fn short(&self) -> Option<&[String]> {
        self.whole().map(|short| short.words.as_slice())
    }

    fn whole(&self) -> Option<&Short> {
        /// Longer texts tell a story.
        const LONGEST: usize = 80;
        let new = || {
            let long = self.text.len() > LONGEST || self.text.contains(['?', '¿', '/']);
            if long || self.words.is_empty() || self.text.chars().any(|c| c.is_ascii_digit()) {
                return None;
            }
            let mended = |word: &String| self.lexicon.corrected(word).map_or_else(|| word.clone(), str::to_owned);
            let words: Vec<String> = self.words.iter().map(mended).collect();
            let groups = [&words, &essence(&words, self.lexicon)].map(|words| self.lexicon.groups(&words.join(" ")));
            Some(Short { words, groups })
        };
        self.short.get_or_init(new).as_ref()
    }

    /// Its phrases of that group, the shortest first.
    fn of_group<'a>(&'a self, group: &'a str) -> impl Iterator<Item = &'a Phrase> {
        let found = self.found();
        let phrases = if found.groups.may_have(group) { found.phrases.as_slice() } else { &[] };
        phrases.iter().filter(move |phrase| phrase.groups.contains(&group))
    }

    fn found(&self) -> &Found {
        self.phrases.get_or_init(|| {
            let mut phrases = self.lexicon.talk_among(&self.words);
            phrases.sort_by_key(|phrase| phrase.to - phrase.from);
            let mut groups = Glance::default();
            phrases.iter().flat_map(|phrase| phrase.groups).for_each(|group| groups.add(group));
            Found { phrases, groups }
        })
    }

    /// What stands in it of danger, by its beginning, the shortest first: see [`super::peril`].
    pub(super) fn perils(&self) -> &[Phrase] {
        self.perils.get_or_init(|| self.lexicon.perils_among(&self.words))
    }
}
