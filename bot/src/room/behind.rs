//! "The breast is done but the thigh isn't": without numbers, and the answer is the same as with them.

use super::{Sitting, readings};
use crate::reading::sentence::Sentence;
use crate::words::{Arg, Text};

/// Which spot is said to be behind the other while the bird cooks. `false`: the words say nothing of it.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let places = || 0..sentence.len();
    let numbers = places().any(|at| sentence.number(at).is_some() || sentence.amount(at).is_some());
    let find = |concept: &str| places().find(|at| sentence.is(*at, concept));
    if numbers
        || text.contains(['?', '¿'])
        || !(sentence.has("habit-cooked-said") || sentence.has("done"))
        || !readings::cooks(sitting)
    {
        return false;
    }
    let breast = find("spot-breast").or_else(|| find("bird-turkey-breast"));
    let (Some(breast), Some(thigh), Some(not)) =
        (breast, find("spot-thigh"), find("habit-not-there").or_else(|| find("negation")))
    else {
        return false;
    };
    // The spot that stands nearer to the no.
    let thigh_behind = thigh.abs_diff(not) < breast.abs_diff(not);
    let id = if thigh_behind { Text::new("room-log-thigh-behind") } else { Text::new("room-log-breast-behind") };
    sitting.answer(id.with("target", Arg::Temperature(super::target())));
    true
}
