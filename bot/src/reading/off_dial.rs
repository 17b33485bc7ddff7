//! An oven that is not as hot as its dial says: "my oven runs 25 degrees hot", "unser Ofen heizt 15 Grad zu heiß", "it's off by 25".
//!
//! The number is a difference of temperatures, and none of a pit or of meat. Owns no word: see the `talk-off-dial-` entries of the lexicon.

use super::dial_and_air::{DialAndAir, read_dial_and_air};
use super::lexicon::Lexicon;
use super::log::{Scale, numbers};
use super::sentence::Sentence;
use super::talk::begins_as_question;
use super::told::Told;
use super::will::made_of;

/// Longer texts tell a story.
const LONGEST: usize = 140;
/// Where the degrees stood.
const DEGREES: &str = "n";
/// What an oven may be off by, in degrees of either scale: more is a temperature.
const APART: std::ops::RangeInclusive<f64> = 1.0..=100.0;

/// To which side an oven is off.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Hotter than it is set.
    Hot,
    /// Colder.
    Cold,
    /// Nobody said which.
    Unsaid,
}

impl Side {
    /// The stable name.
    pub fn name(self) -> &'static str {
        match self {
            Self::Hot => "hot",
            Self::Cold => "cold",
            Self::Unsaid => "some",
        }
    }
}

/// How far an oven is off its dial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OffDial {
    /// To which side.
    pub side: Side,
    /// By how many degrees, and of which scale where that was written.
    pub by: Option<(f64, Option<Scale>)>,
    /// What heats was named; else nothing but this was said.
    pub named: bool,
    /// What it is set to and what it has, where both were told.
    pub figures: Option<DialAndAir>,
}

impl OffDial {
    /// By what an oven is off whose two figures were told. `None`: it swings, as every oven does.
    fn between(figures: DialAndAir) -> Option<Self> {
        const SWINGS: f64 = 5.0;
        let apart = figures.air - figures.dial;
        let side = if apart > 0.0 { Side::Hot } else { Side::Cold };
        let by = Some((apart.abs(), figures.scale));
        (apart.abs() >= SWINGS).then_some(Self { side, by, named: true, figures: Some(figures) })
    }
}

/// Reads it. `None`: the text is of something else, or names a temperature beside it.
pub fn read_off_dial(text: &str, metric: bool, lexicon: &'static Lexicon) -> Option<OffDial> {
    if let Some(figures) = read_dial_and_air(text, metric, lexicon) {
        return OffDial::between(figures);
    }
    if text.chars().count() > LONGEST {
        return None;
    }
    let sentence = Sentence::read(text, lexicon);
    let numbers = numbers(&sentence);
    let by = match &numbers[..] {
        [] => None,
        [one] if APART.contains(&one.value) => Some((one.value, one.scale)),
        _ => return None,
    };
    let food = |at: usize| ["food-", "dish-"].iter().any(|group| sentence.of(at, group).is_some());
    let of_meat = ["spot-breast", "spot-thigh", "spot-wing", "spot-stuffing", "place-fridge", "place-freezer"];
    if of_meat.iter().any(|spot| sentence.has(spot)) || (0..sentence.len()).any(food) {
        return None;
    }
    // Hedges stand between the words of a phrase: "runs about 25 degrees too hot".
    let degrees = |at: usize| numbers.iter().any(|number| number.at == at);
    let raw: Vec<&str> = (0..sentence.len())
        .filter(|at| !(sentence.of(*at, "unit-").is_some() && at.checked_sub(1).is_some_and(degrees)))
        .map(|at| if degrees(at) { DEGREES } else { sentence.raw(at) })
        .collect();
    let words = without_hedges(&Told::of(&raw.join(" "), lexicon));
    let told = Told::of(&words.join(" "), lexicon);
    let group = told.longest(&["off-dial-hot", "off-dial-cold", "off-dial-some"])?.2;
    let asks = text.contains(['?', '¿']) || begins_as_question(text, lexicon);
    let side = match group {
        // "Does my oven run hot?"
        _ if asks && by.is_none() => Side::Unsaid,
        "off-dial-hot" => Side::Hot,
        "off-dial-cold" => Side::Cold,
        _ => Side::Unsaid,
    };
    // "The oven thermometer is off by 10": the thermometer is.
    let probe = |at: usize| sentence.is(at, "ask-thermometer");
    let heats = |at: usize| {
        // "Four ne chauffe pas" stands before "assez".
        let cooker = ["spot-pit", "ask-oven-down"].iter().any(|heat| sentence.is(at, heat));
        (cooker || sentence.of(at, "cooker-").is_some()) && !probe(at) && !probe(at + 1)
    };
    let named = (0..sentence.len()).any(heats);
    let measured = side == Side::Unsaid && (0..sentence.len()).any(probe);
    let alone = || made_of(&words, &[group, "filler"], lexicon).is_some();
    (!measured && (named || alone())).then_some(OffDial { side, by, named, figures: None })
}

/// The words but for those that say "about", "a bit", "always".
fn without_hedges(told: &Told) -> Vec<String> {
    let mut words: Vec<Option<&String>> = told.words().iter().map(Some).collect();
    for place in told.places("off-dial-word") {
        words.iter_mut().take(place.end).skip(place.start).for_each(|word| *word = None);
    }
    words.into_iter().flatten().cloned().collect()
}
