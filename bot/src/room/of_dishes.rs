//! Which dish on the plan words are of, and what they say beside its name.
//!
//! A dish is known by its name, and by one word of it that nothing else on the table has: "cabbage" is the red cabbage. A bird, a cooker
//! or a spot of meat is no such word: "the turkey is done" is of no turkey gravy.

use super::Sitting;
use super::action::JobRef;
use super::state::{JobState, LiveJob};
use crate::reading::sentence::Sentence;
use crate::reading::{Lexicon, WishDish};
use carvetime_core::plan::Step;

/// Shorter words link others.
const SHORTEST: usize = 4;

/// A dish that is spoken of.
pub(super) struct Spoken {
    /// Its place on the plan.
    pub place: u8,
    /// The folded words beside its name, in order.
    pub rest: Vec<String>,
}

/// The dish of the plan in hand that the text names. `None`: none, or more than one.
pub(super) fn spoken_of(sitting: &Sitting<'_>, text: &str) -> Option<Spoken> {
    let lexicon = sitting.lexicon();
    let dishes = &sitting.room.plan.as_ref()?.wish.dishes;
    let told = lexicon.talk_words(text);
    let known = || (0_u8..).zip(dishes).filter_map(|(place, dish)| Some((place, dish.as_ref()?)));
    let whole = known().filter_map(|(place, dish)| {
        let name = lexicon.talk_words(&dish.name);
        let from = (0..told.len()).find(|from| stands(&told, *from, &name))?;
        // A bird by itself is the bird.
        name.iter().any(|word| !is_of_the_bird(word, lexicon)).then_some((place, from, name.len()))
    });
    let by_word = || {
        let mut found = known().flat_map(|(place, dish)| {
            let name = lexicon.talk_words(&dish.name);
            let fits = |at: &usize| told.get(*at).is_some_and(|word| is_own_word(word, dish, dishes, lexicon));
            let several = name.len() > 1;
            (0..told.len()).filter(move |_| several).filter(fits).map(move |at| (place, at, 1)).collect::<Vec<_>>()
        });
        found.next().filter(|_| found.next().is_none())
    };
    let (place, from, count) = whole.max_by_key(|(_, _, count)| *count).or_else(by_word)?;
    let mut rest = told.to_vec();
    rest.drain(from..from + count);
    Some(Spoken { place, rest })
}

/// The job of the dish of that place.
pub(super) fn job(sitting: &Sitting<'_>, place: u8) -> Option<(JobRef, LiveJob)> {
    let plan = sitting.room.plan.as_ref()?;
    let job = plan.job(Step::Dish, place)?;
    Some((JobRef { serial: plan.serial, step: Step::Dish, nth: place }, job.clone()))
}

/// Whether it waits to be made.
pub(super) fn waits(job: &LiveJob) -> bool {
    job.step() == Some(Step::Dish) && job.state == JobState::Waiting
}

/// The words of a name one behind the other; "pie's" and "pies" are the pie.
fn stands(told: &[String], from: usize, name: &[String]) -> bool {
    let words = told.get(from..from + name.len()).filter(|_| !name.is_empty());
    words.is_some_and(|words| {
        let last = name.len() - 1;
        words.iter().zip(name).enumerate().all(|(at, (word, own))| word == own || at == last && is_form(word, own))
    })
}

/// With or without the "s" of a plural or of "is".
fn is_form(word: &str, own: &str) -> bool {
    let (short, long) = if word.len() < own.len() { (word, own) } else { (own, word) };
    long.strip_suffix('s') == Some(short)
}

/// A word of this dish's name and of no other's, that means no bird and no heat.
fn is_own_word(word: &str, dish: &WishDish, dishes: &[Option<WishDish>], lexicon: &'static Lexicon) -> bool {
    let has = |dish: &WishDish| lexicon.talk_words(&dish.name).iter().any(|own| own == word || is_form(word, own));
    word.chars().count() >= SHORTEST
        && has(dish)
        && !dishes.iter().flatten().any(|other| other.name != dish.name && has(other))
        && !is_of_the_bird(word, lexicon)
        && !["dish-link", "dish-verb", "dish-soft", "dish-in", "dish-out"].iter().any(|group| lexicon.talk(word, group))
}

fn is_of_the_bird(word: &str, lexicon: &'static Lexicon) -> bool {
    const GROUPS: [&str; 7] = ["bird-", "spot-", "cooker-", "heat-", "condition-", "step-", "ask-"];
    // As it stands: what a slip may have been is in no name.
    let s = Sentence::read(word, lexicon);
    lexicon.means(word)
        && (0..s.len()).any(|at| {
            !s.is(at, "spot-stuffing") && !s.is(at, "ask-stuff") && GROUPS.iter().any(|group| s.of(at, group).is_some())
        })
}
