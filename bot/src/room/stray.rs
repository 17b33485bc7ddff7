//! "I need to work Wednesday", "the in-laws land at 11", "turkey meat looks gray": what sounds like a part of a dinner being planned and is
//! none.
//!
//! Words that plans are made of count wherever they stand. Beside others an hour counts with the meal, a feast or a bird of some size, and
//! what a bird or a kitchen is like only where it was asked for, or where enough of it is told to begin with.

use super::state::Question;
use super::{PersonId, Sitting, amend, questions};
use crate::reading::sentence::Sentence;
use crate::reading::{self, Told, Wish};
use carvetime_core::bird::Kind;

/// What of `wish`, read from `text`, is of the dinner that `who` plans. Empty: nothing is.
pub(super) fn without(sitting: &Sitting<'_>, who: PersonId, text: &str, mut wish: Wish) -> Wish {
    let sentence = Sentence::read(text, sitting.lexicon());
    let sized = wish.mass_g.is_some() || wish.adults.is_some() || wish.children.is_some();
    // "I like turkey" plans none.
    let dated = wish.dinner.is_some() || wish.dinner_day.is_some() || wish.dinner_hour.is_some();
    if !sized && !dated && wish.kind.is_some() && Told::of(text, sitting.lexicon()).says("fancies") {
        return Wish::default();
    }
    let draft = sitting.room.drafts.get(&who);
    // "The breast is 175" is said of a part of the bird that is planned.
    let counts = (0..sentence.len()).any(|at| sentence.number(at).is_some());
    let breast = wish.kind.as_deref() == Some(Kind::TurkeyBreast.name());
    if breast && counts && !sized && draft.is_some_and(|draft| draft.wish.kind.is_some()) {
        wish.kind = None;
    }
    if amend::is_plain(sitting, &sentence) {
        return wish;
    }
    let says = |group: &str| (0..sentence.len()).any(|at| sentence.of(at, group).is_some());
    let asked = draft.and_then(|draft| draft.asked);
    // "I hate Thanksgiving" plans none.
    let feast = says("holiday-") && (draft.is_some() || wish.kind.is_some() || wish.dinner.is_some() || sized);
    let of_meal = says("meal-") || feast || ["later", "earlier", "instead"].iter().any(|it| sentence.has(it));
    let of_meal = of_meal || draft.is_some() && reading::settles_a_day(text, sitting.lexicon());
    let asked_when = matches!(asked, Some(Question::Dinner | Question::DinnerHour | Question::DinnerDay));
    if !(of_meal || asked_when || sized && says("bird-")) {
        (wish.dinner, wish.dinner_day, wish.dinner_hour) = (None, None, None);
    }
    let dated = wish.dinner.is_some() || wish.dinner_day.is_some() || wish.dinner_hour.is_some();
    if sized || dated && !questions::is_answerable(sitting, text) || asked == Some(Question::Change) {
        return wish;
    }
    let answers = match asked {
        Some(Question::Condition) => wish.condition.is_some(),
        Some(Question::Cooker) => wish.cooker.is_some(),
        Some(Question::Drive) => wish.drive_min.is_some(),
        _ => false,
    };
    if answers {
        return wish;
    }
    let said = [wish.kind.is_some(), wish.condition.is_some(), wish.cooker.is_some(), wish.setting_c.is_some()];
    let told = said.into_iter().filter(|said| *said).count();
    let begins = draft.is_none() && told < 2 && !intends(sitting, text);
    if begins || questions::is_answerable(sitting, text) || draft.is_some_and(|draft| adds_nothing(&draft.wish, &wish))
    {
        return Wish::default();
    }
    wish
}

/// "I want to make a turkey", "so I'm doing the turkey this year": a bird is to be cooked, and nothing else is said.
fn intends(sitting: &Sitting<'_>, text: &str) -> bool {
    const MOST: usize = 5;
    let lexicon = sitting.lexicon();
    let words = lexicon.talk_words(text);
    let found = (1..=MOST.min(words.len())).rev().find_map(|many| {
        let at = words.windows(many).position(|some| lexicon.talk(&some.join(" "), "intends"))?;
        Some((at, many))
    });
    let Some((at, many)) = found.filter(|_| !text.contains(['?', '¿'])) else { return false };
    let mut rest: Vec<String> = words.iter().take(at).chain(words.iter().skip(at + many)).cloned().collect();
    // "This year", "after all": politeness of several words.
    while let Some((at, many)) = (2..=MOST.min(rest.len())).rev().find_map(|many| {
        let polite = |some: &[String]| {
            let phrase = some.join(" ");
            ["manners", "party-tail"].iter().any(|group| lexicon.talk(&phrase, group))
        };
        Some((rest.windows(many).position(polite)?, many))
    }) {
        rest.drain(at..at + many);
    }
    let rest = Sentence::read(&rest.join(" "), lexicon);
    let bird = (0..rest.len()).any(|at| rest.of(at, "bird-").is_some());
    let dish = (0..rest.len()).any(|at| rest.of(at, "dish-").is_some() || rest.of(at, "food-").is_some());
    bird && !dish && amend::is_plain(sitting, &rest)
}

/// Whether all of it is known already.
fn adds_nothing(before: &Wish, wish: &Wish) -> bool {
    let mut after = before.clone();
    after.merge(wish.clone());
    after == *before
}
