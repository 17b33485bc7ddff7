//! "The leftovers read 48 after the drive", "arrived, they read 48", "3 hours in the car tomorrow, do I take them?": what is left of a dinner
//! on its way home. How long it was too warm decides, and no reading of the bird is made of it.

use super::turn::Urgency;
use super::{Sitting, hot_road, questions, spoiled};
use crate::ask::{Advice, Question};
use crate::reading::{self, Told, sentence::Sentence};
use chrono::TimeDelta;

/// So long after dinner there may be leftovers of it on the road.
const LEFT: TimeDelta = TimeDelta::days(4);

/// `false`: nothing of that dinner is on its way, or the words are of something else.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let (now, lexicon) = (sitting.now, sitting.lexicon());
    let of_it = sitting.room.plan.as_ref().is_some_and(|plan| {
        let eaten = plan.wish.dinner.is_some_and(|dinner| (dinner..dinner + LEFT).contains(&now));
        // Carried hot it is whole, and measured as such.
        eaten && plan.is_off() && !(hot_road::is_hot(plan) && hot_road::is_whole(plan, now))
    });
    let read = questions::read(sitting, text);
    if let Some(question @ Question::LeftoversAt(_)) = read {
        if !of_it && !Told::of(text, lexicon).says("leftovers-plain") {
            return false;
        }
        if !spoiled::says_gone(sitting) {
            questions::tell(sitting, &question, Urgency::Safety);
            if let Some(who) = sitting.speaker() {
                sitting.room.questions.insert(who, text.to_owned());
            }
        }
        return true;
    }
    // "Can we eat them?", behind it: that number answers.
    let eats = reading::asks_to_eat(text, lexicon) || reading::asks_if_still_good(text, lexicon);
    if let Some(question) = measured(sitting).filter(|_| of_it && eats) {
        questions::tell(sitting, &question, Urgency::Safety);
        return true;
    }
    // "They were lukewarm after the 3 hour drive, do we eat them?"
    let left_out = matches!(read, Some(Question::LeftOut { .. }));
    if of_it && left_out && Told::of(text, lexicon).says("lukewarm") {
        if !spoiled::says_gone(sitting) {
            questions::told(sitting, text);
        }
        return true;
    }
    // "3 hours in the car tomorrow, do I take them?": nothing is named, and it can be no other food.
    let sentence = Sentence::read(text, lexicon);
    let drives = sentence.has("drive") || sentence.has("way-home");
    let spans = (0..sentence.len()).any(|at| sentence.amount(at).is_some_and(|amount| amount.span().is_some()));
    let takes = Told::of(text, lexicon).says("takes-them") && text.contains(['?', '¿']);
    if !(of_it && drives && spans && takes && read.is_none()) || spoiled::says_gone(sitting) {
        return false;
    }
    questions::tell(sitting, &Question::Advice(Advice::CarryFood), Urgency::Answer);
    true
}

/// Leftovers that somebody here has measured too warm, and asked nothing since.
fn measured(sitting: &Sitting<'_>) -> Option<Question> {
    let asked = sitting.room.questions.values().filter_map(|text| questions::read(sitting, text));
    asked.into_iter().find(|question| matches!(question, Question::LeftoversAt(_)))
}
