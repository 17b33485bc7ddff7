//! Fire, smoke, a smell of gas, carbon monoxide, hot oil, a burn, someone choking: read before anything else a text may mean.
//!
//! Owns no word: see the `peril-` entries of the lexicon. In doubt it is one: an answer too many hurts nobody.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::tells_of_other_years;

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
    /// Someone has burnt themselves.
    Burn,
    /// Smoke where none should be.
    Smoke,
}

/// What else is read, the gravest first.
const OTHERS: [(&str, Peril); 6] = [
    ("peril-gas", Peril::Gas),
    ("peril-carbon-monoxide", Peril::CarbonMonoxide),
    ("peril-hot-oil", Peril::HotOil),
    ("peril-choking", Peril::Choking),
    ("peril-burn", Peril::Burn),
    ("peril-smoke", Peril::Smoke),
];

/// Reads "there are flames in the oven", "it smells of gas". `None` for everything else: coals that are lit, a fire of last year, "no flames".
pub fn read_peril(text: &str, lexicon: &'static Lexicon) -> Option<Peril> {
    let sentence = Sentence::read(text, lexicon);
    let denied = |at: usize| at.checked_sub(1).is_some_and(|before| sentence.is(before, "negation"));
    let said = |concept: &str| (0..sentence.len()).any(|at| sentence.is(at, concept) && !denied(at));
    let fire = said("peril-fire");
    // The alarm behind the word that is a smoker elsewhere.
    let alarm = |at: usize| sentence.is(at, "cooker-smoker") && sentence.is(at + 1, "peril-alarm");
    let other = OTHERS.into_iter().find(|(concept, _)| said(concept)).map(|(_, peril)| peril);
    let other = other.or_else(|| (0..sentence.len()).any(alarm).then_some(Peril::Smoke));
    if !fire && other.is_none() || tells_of_other_years(text, lexicon) {
        return None;
    }
    if fire {
        // Coals are meant to burn.
        let meant = ["fuel-charcoal", "fuel-pellets"].iter().any(|fuel| sentence.has(fuel));
        let oven = (0..sentence.len()).any(|at| {
            ["cooker-oven", "cooker-fan-oven"].iter().any(|oven| sentence.is(at, oven)) || sentence.is(at, "spot-pit")
        });
        return (!meant || oven).then_some(Peril::Fire);
    }
    other
}
