//! Phrases of whole words, the groups each is of, and those that stand among the words of a text.
//!
//! Owns no word: a [`Lexicon`](super::lexicon::Lexicon) fills it. Start at [`Phrases::among`].

use rustc_hash::FxHashMap;

/// As many words as a phrase has that is looked for among others.
const MOST_WORDS: usize = 7;

/// The phrases of one language, folded.
#[derive(Debug, Default)]
pub(super) struct Phrases {
    groups: FxHashMap<&'static str, Groups>,
    /// How many words the longest has that begins with that one.
    longest: FxHashMap<&'static str, usize>,
    /// What is asked where these don't know a phrase.
    behind: Option<&'static Phrases>,
}

/// The groups of a phrase: mostly one.
#[derive(Debug)]
enum Groups {
    One(&'static str),
    Several(Vec<&'static str>),
}

impl Groups {
    fn add(&mut self, group: &'static str) {
        match self {
            Self::One(one) => *self = Self::Several(vec![one, group]),
            Self::Several(all) => all.push(group),
        }
    }

    fn as_slice(&self) -> &[&'static str] {
        match self {
            Self::One(one) => std::slice::from_ref(one),
            Self::Several(all) => all,
        }
    }
}

/// Where a phrase begins and ends, and the groups it is of.
#[derive(Debug, Clone, Copy)]
pub(super) struct Phrase {
    pub from: usize,
    pub to: usize,
    pub groups: &'static [&'static str],
}

impl Phrases {
    /// None yet, before those of another language.
    pub fn before(behind: &'static Phrases) -> Self {
        Self { behind: Some(behind), ..Self::default() }
    }

    /// Adds a phrase to a group.
    pub fn add(&mut self, phrase: &'static str, group: &'static str) {
        let mut words = phrase.split(' ');
        if let Some(first) = words.next() {
            let count = 1 + words.count();
            let longest = self.longest.entry(first).or_default();
            *longest = count.max(*longest);
        }
        self.groups.entry(phrase).and_modify(|groups| groups.add(group)).or_insert(Groups::One(group));
    }

    /// The groups that the words are, as a whole, a phrase of.
    pub fn groups(&self, words: &str) -> &[&'static str] {
        match (self.groups.get(words), self.behind) {
            (Some(groups), _) => groups.as_slice(),
            (None, Some(behind)) => behind.groups(words),
            (None, None) => &[],
        }
    }

    /// How many words the longest has that begins with that one.
    fn longest(&self, first: &str) -> usize {
        let own = self.longest.get(first).copied().unwrap_or_default();
        self.behind.map_or(own, |behind| behind.longest(first).max(own))
    }

    /// Those that stand among `words`, by their beginning, the shortest first.
    pub fn among(&'static self, words: &[String]) -> Vec<Phrase> {
        let mut found = Vec::new();
        let mut phrase = String::new();
        for (from, first) in words.iter().enumerate() {
            let longest = self.longest(first);
            phrase.clear();
            for (at, word) in words.iter().enumerate().skip(from).take(longest.min(MOST_WORDS)) {
                if at > from {
                    phrase.push(' ');
                }
                phrase.push_str(word);
                let groups = self.groups(&phrase);
                if !groups.is_empty() {
                    found.push(Phrase { from, to: at + 1, groups });
                }
            }
        }
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn phrases_are_found_wherever_they_stand_among_words() {
        let phrases: &'static mut Phrases = Box::leak(Box::default());
        for (phrase, group) in [("not yet", "not"), ("yet", "time"), ("not", "no"), ("not yet", "later")] {
            phrases.add(phrase, group);
        }
        let words = |text: &str| -> Vec<String> { text.split(' ').map(str::to_owned).collect() };
        let found: Vec<_> =
            phrases.among(&words("no not yet is not")).into_iter().map(|p| (p.from, p.to, p.groups)).collect();
        let wanted: [(usize, usize, &[&str]); 4] =
            [(1, 2, &["no"]), (1, 3, &["not", "later"]), (2, 3, &["time"]), (4, 5, &["no"])];
        assert_eq!(found, wanted);
        assert!(phrases.among(&words("nothing known")).is_empty());
    }
    #[test]
    fn another_languages_phrases_count_where_its_own_are_none() {
        let english: &'static mut Phrases = Box::leak(Box::default());
        for (phrase, group) in [("no", "not"), ("no", "refuse"), ("of course not", "refuse")] {
            english.add(phrase, group);
        }
        let own: &'static mut Phrases = Box::leak(Box::new(Phrases::before(english)));
        own.add("no", "own");
        let words = ["of", "course", "not", "no"].map(str::to_owned);
        let found: Vec<_> = own.among(&words).into_iter().map(|p| (p.from, p.to, p.groups)).collect();
        assert_eq!(found, [(0, 3, ["refuse"].as_slice()), (3, 4, ["own"].as_slice())]);
    }
}
