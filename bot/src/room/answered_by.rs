//! "What time is dinner?", asked of whoever is planning in a group, and answered by somebody else at the table.
//!
//! The draft stays its owner's: what others say fills in what was asked and nothing is accepted by it. Only a plain answer counts: short,
//! no question, and of what lies open.

use super::state::Question;
use super::{PersonId, RoomKind, Sitting, amend, planning, stray};
use crate::reading::sentence::{Sentence, What};
use crate::reading::{self, Wish};
use chrono::TimeDelta;

/// A question is open to others as long as it is on people's minds; a reply to it always counts.
const OPEN: TimeDelta = TimeDelta::hours(2);
/// An answer has few words.
const WORDS: usize = 10;
/// A number alone, or with a word for what it counts.
const BARE: usize = 2;

/// Takes the answer to the draft it belongs to. `false`: it answers nothing that somebody else was asked.
pub(super) fn told(sitting: &mut Sitting<'_>, who: PersonId, text: &str, reply_to: Option<&str>) -> bool {
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, sitting.lexicon());
    let words = text.split_whitespace().count();
    if sitting.room.kind != RoomKind::Group || asks || words > WORDS || sitting.room.drafts.contains_key(&who) {
        return false;
    }
    let Some((owner, question)) = open(sitting, reply_to) else { return false };
    let (wish, problems) = planning::read(sitting, text);
    let mut wish = stray::without(sitting, owner, text, wish);
    if words <= BARE {
        planning::bare_answer(sitting, question, text, &mut wish);
    }
    // A bird of its own, and its day, is another plan.
    let plans = wish.kind.is_some() && question != Question::Size && question != Question::Weight;
    if plans || !is_plain(sitting, text) || !answers(question, &wish) || !problems.is_empty() {
        return false;
    }
    planning::told(sitting, owner, wish, &[]);
    true
}

/// Nothing in it but what plans are made of, and whose house it is: "at 6 at grandma Hilde's", and not "I'm home from work at 6".
fn is_plain(sitting: &Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let unknown = |at: &usize| {
        matches!(sentence.item(*at).map(|item| &item.what), Some(What::Word([])))
            && !amend::is_empty(sitting, &reading::fold(sentence.raw(*at)))
    };
    let mut unknown = (0..sentence.len()).filter(unknown);
    unknown.all(|at| at.checked_sub(1).is_some_and(|before| sentence.is(before, "elsewhere")))
}

/// Whose question lies open, the newest: of the message replied to if it is one of them.
fn open(sitting: &Sitting<'_>, reply_to: Option<&str>) -> Option<(PersonId, Question)> {
    let drafts = sitting.room.drafts.iter();
    let mut asked = drafts.filter_map(|(owner, draft)| Some((*owner, draft.asked?, draft.asked_at?)));
    if let Some(key) = reply_to {
        return asked
            .find(|(owner, ..)| planning::draft_key(*owner) == key)
            .map(|(owner, question, _)| (owner, question));
    }
    let lately = asked.filter(|(_, _, at)| sitting.now - *at <= OPEN);
    lately.max_by_key(|(_, _, at)| *at).map(|(owner, question, _)| (owner, question))
}

/// Whether the wish tells what was asked.
fn answers(question: Question, wish: &Wish) -> bool {
    match question {
        Question::Dinner => wish.dinner.is_some() || wish.dinner_day.is_some() || wish.dinner_hour.is_some(),
        Question::DinnerHour => wish.dinner.is_some() || wish.dinner_hour.is_some(),
        Question::DinnerDay => wish.dinner.is_some() || wish.dinner_day.is_some(),
        Question::Size => wish.mass_g.is_some() || wish.adults.is_some() || wish.children.is_some(),
        Question::Weight => wish.mass_g.is_some(),
        Question::Condition => wish.condition.is_some(),
        Question::Cooker => wish.cooker.is_some(),
        Question::Drive => wish.drive_min.is_some(),
        // Where the kitchen is, and what to change, is the planner's to say.
        Question::Zone | Question::Change => false,
    }
}
