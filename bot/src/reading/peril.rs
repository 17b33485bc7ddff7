//! Fire, smoke, a smell of gas, carbon monoxide, hot oil, a burn, someone choking, fainting or swelling up: read before anything else a
//! text may mean, in the room's language or any other.
//!
//! Owns no word: see the `peril-` and `talk-peril-` entries of the lexicon. In doubt it is one: an answer too many hurts nobody. A player
//! who is on fire and an uncle choking on his laughter are in no danger.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::{tells_of_other_years, tells_of_past_weeks};
use super::told::Told;
use crate::words::locales;
use std::rc::Rc;

/// What is dangerous now, to everyone in the house.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Peril {
    /// Something burns that should not.
    Fire,
    /// It smells of gas.
    Gas,
    /// The alarm for carbon monoxide.
    CarbonMonoxide,
    /// Oil that boils over or smokes.
    HotOil,
    /// Someone chokes on something.
    Choking,
    /// Someone has passed out.
    Fainted,
    /// Someone's tongue, lips or throat swell.
    Allergy,
    /// Someone has burnt themselves.
    Burn,
    /// Smoke where none should be.
    Smoke,
}

impl Peril {
    /// Someone is in danger, and no house: it is the ambulance that is called.
    pub fn is_of_a_person(self) -> bool {
        matches!(self, Self::Choking | Self::Fainted | Self::Allergy | Self::Burn)
    }
}

/// What else is read, the gravest first.
const OTHERS: [(&str, Peril); 6] = [
    ("gas", Peril::Gas),
    ("carbon-monoxide", Peril::CarbonMonoxide),
    ("hot-oil", Peril::HotOil),
    ("choking", Peril::Choking),
    ("burn", Peril::Burn),
    ("smoke", Peril::Smoke),
];
/// Longer texts in another language than the room's tell a story.
const LONGEST_ABROAD: usize = 200;
/// As many words as a phrase has.
const MOST_WORDS: usize = 7;
/// So near to each other stand what swells and that it does.
const SWELLS_WITHIN: usize = 4;
/// Shortest cry in capitals: "OK" is none.
const SHORTEST_CRY: usize = 4;

/// Reads "there are flames in the oven", "it smells of gas". `None` for everything else: coals that are lit, a fire of last year, "no flames".
pub fn read_peril(text: &str, lexicon: &'static Lexicon) -> Option<Peril> {
    let told = Dangers::of(text, lexicon);
    checked(&told, text, by_meaning(text, lexicon).into_iter().chain(told.perils()))
}

/// The same by the words of that language and no others: every lexicon knows English besides its own.
pub fn says_peril(text: &str, lexicon: &'static Lexicon) -> Option<Peril> {
    let told = Dangers::of(text, lexicon);
    if told.0.perils().is_empty() {
        return None;
    }
    checked(&told, text, told.perils())
}

/// A danger told in another language than `here`, and which: `first` before the others.
pub fn read_peril_abroad(text: &str, here: &str, first: Option<&str>) -> Option<(Peril, &'static str)> {
    if text.len() > LONGEST_ABROAD {
        return None;
    }
    let mut languages = locales::languages();
    languages.sort_by_key(|language| Some(*language) != first);
    let others = languages.into_iter().filter(|language| *language != here);
    others.filter_map(|language| Some((says_peril(text, Lexicon::of(language))?, language))).next()
}

/// "My head hurts", "he won't wake up": what carbon monoxide does, and much else.
pub fn feels_fumes(text: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).says("fumes-felt")
}

/// "The grill is in the living room", "charcoal with the window open": what makes carbon monoxide, where it gathers.
pub fn burns_indoors(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Told::of(text, lexicon);
    // The grill of an oven is meant to be in a kitchen.
    let oven = || {
        let sentence = Sentence::read(text, lexicon);
        ["cooker-oven", "cooker-fan-oven"].iter().any(|oven| sentence.has(oven)) && !sentence.has("fuel-charcoal")
    };
    told.says("fumes-from") && told.says("fumes-indoors") && !oven()
}

/// "Fire", and no cry: said of a song as well.
pub fn is_bare_fire(text: &str, lexicon: &'static Lexicon) -> bool {
    !is_loud(text) && Dangers::of(text, lexicon).whole("cry-loud")
}

/// "It's smoking", whatever does: a smoker is meant to.
pub fn only_smokes(text: &str, lexicon: &'static Lexicon) -> bool {
    let told = Dangers::of(text, lexicon);
    told.whole("smoking") && !told.has("smoke")
}

/// Cried out.
pub fn is_loud(text: &str) -> bool {
    let capitals = |word: &str| word.chars().count() >= SHORTEST_CRY && word.chars().all(char::is_uppercase);
    text.contains(['!', '¡']) || text.split(|c: char| !c.is_alphabetic()).any(capitals)
}

/// The words of a text, and its phrases for what is dangerous in the language it is read by.
struct Dangers(Rc<Told>);

impl Dangers {
    fn of(text: &str, lexicon: &'static Lexicon) -> Self {
        Self(Told::of(text, lexicon))
    }

    /// Where the phrases of that group stand, each with its end: the longest at each place.
    fn places<'a>(&'a self, group: &'a str) -> impl Iterator<Item = (usize, usize)> + 'a {
        let longest_first = self.0.perils().iter().rev();
        let of_group = longest_first.filter(move |phrase| phrase.groups.contains(&group));
        let mut last = None;
        let longest = of_group.filter(move |phrase| last.replace(phrase.from) != Some(phrase.from));
        longest.map(|phrase| (phrase.from, phrase.to))
    }

    fn has(&self, group: &str) -> bool {
        self.places(group).next().is_some()
    }

    /// Whether it says nothing else, but for calls for help.
    fn whole(&self, group: &str) -> bool {
        if self.0.perils().is_empty() {
            return false;
        }
        let is = |from: usize, to: usize, group: &str| {
            self.0.perils().iter().any(|found| (found.from, found.to) == (from, to) && found.groups.contains(&group))
        };
        let (mut from, mut to) = (0, self.0.words().len());
        while !is(from, to, group) {
            let shorter = (1..=MOST_WORDS.min(to - from)).rev().find_map(|count| {
                let (first, last) = (from + count, to - count);
                is(from, first, "cry-lead")
                    .then_some((first, to))
                    .or_else(|| is(last, to, "cry-lead").then_some((from, last)))
            });
            match shorter {
                Some(rest) if rest.0 < rest.1 => (from, to) = rest,
                _ => return false,
            }
        }
        true
    }

    /// What it tells of, the gravest first.
    fn perils(&self) -> impl Iterator<Item = Peril> + '_ {
        let denied = |at: usize| {
            let before = at.checked_sub(1).and_then(|before| self.0.words().get(before));
            before.is_some_and(|word| Sentence::read(word, self.0.lexicon()).is(0, "negation"))
        };
        let says = move |group: &str| self.places(group).any(|(from, _)| !denied(from));
        let cries = move || self.whole("cry") || self.whole("cry-loud");
        let fire = (says("fire") || cries()).then_some(Peril::Fire);
        let others = OTHERS.into_iter().filter(move |(group, _)| says(group)).map(|(_, peril)| peril);
        let fainted = (says("out") && !self.has("out-other")).then_some(Peril::Fainted);
        let allergy = (!self.has("allergy-other") && (says("allergy") || self.swells())).then_some(Peril::Allergy);
        let smokes = self.whole("smoking").then_some(Peril::Smoke);
        // Coals, and someone whose head aches: whatever else it may be, it is that until it is known not to be.
        let fumes = (self.0.says("fumes-felt") && self.0.says("fumes-from")).then_some(Peril::CarbonMonoxide);
        fire.into_iter().chain(fumes).chain(fainted).chain(allergy).chain(others).chain(smokes)
    }

    /// "My tongue is swelling up".
    fn swells(&self) -> bool {
        let near = |part: usize, (from, to): (usize, usize)| {
            part.abs_diff(from) <= SWELLS_WITHIN && !(from..to).contains(&part)
        };
        self.places("swelling-part").any(|(part, _)| self.places("swelling").any(|swelling| near(part, swelling)))
    }

    /// "Mahomes is on fire", "he's on fire": it is said of who plays well.
    fn is_of_a_player(&self) -> bool {
        let lexicon = self.0.lexicon();
        let of_a_player = |from: usize| {
            let link = |word: &&String| lexicon.peril(word, "figure-link");
            let before = self.0.words().get(..from).unwrap_or_default();
            let linked = before.iter().rev().take_while(link).count();
            let Some(who) = before.len().checked_sub(linked + 1).and_then(|at| Some((at, before.get(at)?))) else {
                return false;
            };
            let (at, who) = who;
            let is = |group: &str| {
                let short = who.strip_suffix('s').filter(|_| linked == 0);
                lexicon.peril(who, group) || short.is_some_and(|short| lexicon.peril(short, group))
            };
            let named =
                at.checked_sub(1).and_then(|at| before.get(at)).is_none_or(|word| !lexicon.talk(word, "article"));
            // A name, or that of a team, as nothing that burns has one.
            let name = || linked > 0 && (named || who.ends_with('s')) && !lexicon.means(who);
            !is("figure-thing") && (is("figure-who") || name())
        };
        let mut said = self.places("figure-fire").peekable();
        said.peek().is_some() && said.all(|(from, _)| of_a_player(from))
    }
}

/// The first of these that is no figure of speech, no fire that is meant to burn and of no other time.
fn checked(told: &Dangers, text: &str, perils: impl Iterator<Item = Peril>) -> Option<Peril> {
    let mut perils = perils.peekable();
    perils.peek()?;
    if tells_of_other_years(text, told.0.lexicon()) {
        return None;
    }
    let sentence = Sentence::read(text, told.0.lexicon());
    // Coals are meant to burn.
    let meant = || {
        let oven = |at: usize| {
            ["cooker-oven", "cooker-fan-oven"].iter().any(|oven| sentence.is(at, oven)) || sentence.is(at, "spot-pit")
        };
        ["fuel-charcoal", "fuel-pellets"].iter().any(|fuel| sentence.has(fuel)) && !(0..sentence.len()).any(oven)
    };
    let over = || tells_of_past_weeks(text, told.0.lexicon());
    // Said in whichever language: with its slips mended a word may be another's.
    let figure = |is: fn(&Dangers) -> bool| {
        locales::languages().into_iter().any(|language| is(&Dangers::of(text, Lexicon::of(language))))
    };
    perils.find(|peril| match peril {
        Peril::Fire => !meant() && !figure(Dangers::is_of_a_player) && !figure(|told| told.has("figure-team")),
        Peril::Choking => !figure(|told| told.has("figure-choking")),
        Peril::Burn => !figure(|told| {
            told.has("burnt-food") && (told.has("burnt-other") || names_food(told.0.words(), told.0.lexicon()))
        }),
        Peril::Fainted | Peril::Allergy => !over(),
        _ => true,
    })
}

/// "El arroz se ha quemado": where a cook would burn himself in the same words.
fn names_food(words: &[String], lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(&words.join(" "), lexicon);
    let groups = ["food-", "dish-", "bird-"];
    (0..sentence.len()).any(|at| groups.iter().any(|group| sentence.of(at, group).is_some()))
}

/// What it tells of by the meanings of its words, slips mended.
fn by_meaning(text: &str, lexicon: &'static Lexicon) -> Vec<Peril> {
    let sentence = Sentence::read(text, lexicon);
    let denied = |at: usize| at.checked_sub(1).is_some_and(|before| sentence.is(before, "negation"));
    let said = |concept: &str| (0..sentence.len()).any(|at| sentence.of(at, "peril-") == Some(concept) && !denied(at));
    // The alarm behind the word that is a smoker elsewhere.
    let alarm = |at: usize| sentence.is(at, "cooker-smoker") && sentence.is(at + 1, "peril-alarm");
    let fire = said("fire").then_some(Peril::Fire);
    let others = OTHERS.into_iter().filter(|(concept, _)| said(concept)).map(|(_, peril)| peril);
    let alarm = (0..sentence.len()).any(alarm).then_some(Peril::Smoke);
    fire.into_iter().chain(others).chain(alarm).collect()
}
