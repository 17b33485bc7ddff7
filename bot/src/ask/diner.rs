//! What a small child, and who is pregnant, old or ill, may have: tested at 165 °F and hot, or left. A child that swallowed something
//! hard comes first. Their doctor has the last word, and every answer says so.

use super::Asker;
use super::answer::Answer;
use super::emergency::call;
use super::habit::Habit;
use crate::reading::Diner;
use crate::words::{Arg, Text};
use carvetime_core::quantity::fahrenheit;
use carvetime_core::source;

/// The answer.
pub(super) fn answer(what: Diner, asker: &Asker) -> Answer {
    let target = || Arg::Temperature(fahrenheit(165.0));
    let choking = || Text::new("ask-choking").with("call", call(asker, true));
    let leaves = || Text::new("ask-diner-leaves").with("target", target());
    match what {
        Diner::Swallowed => Answer::new("swallowed")
            .say(Text::new("ask-diner-swallowed").with("call", call(asker, true)))
            .say(choking())
            .from(source::CHOKING)
            .from(source::EMERGENCY_NUMBERS),
        Diner::Chokes => Answer::new("little-one")
            .say(Text::new("ask-diner-chokes"))
            .say(choking())
            .from(source::LITTLE_ONES)
            .from(source::CHOKING)
            .from(source::EMERGENCY_NUMBERS),
        Diner::Leaves => Answer::new("fragile").say(leaves()).from(source::NOT_IN_PREGNANCY).from(source::VULNERABLE),
        Diner::LittleOne => Answer::new("little-one")
            .say(Text::new("ask-diner-little").with("target", target()))
            .from(source::LITTLE_ONES)
            .from(source::SAFE_MINIMUM),
        Diner::Frail | Diner::FrailAtAll => {
            let answer = Answer::new("fragile").say(Habit::Fragile.text(asker));
            let answer = Habit::Fragile.sources().iter().fold(answer, |answer, source| answer.from(*source));
            if what == Diner::Frail { answer } else { answer.say(leaves()).from(source::NOT_IN_PREGNANCY) }
        }
    }
}
