//! A reading told of the wrong bird, and then of the right one: "sorry, that was the duck".

use super::state::{LivePlan, StoredReading};
use super::{Sitting, birds, board, naming, readings};
use crate::words::{Arg, Text};
use chrono::TimeDelta;

/// "Sorry, that was the big one", of what the speaker has just read: it goes to that bird. `false`: nothing of the kind.
pub(super) fn moved(sitting: &mut Sitting<'_>, text: &str) -> bool {
    const LATELY: TimeDelta = TimeDelta::minutes(10);
    let Some(who) = sitting.speaker() else { return false };
    let lexicon = sitting.lexicon();
    let wrong = lexicon.talk_words(text).iter().any(|word| lexicon.talk(word, "which-wrong"));
    // "Sorry Tom" is said to Tom.
    let words: Vec<&str> = text.split_whitespace().collect();
    let bird = wrong && naming::mentions(sitting, &words).iter().any(|mention| mention.sure);
    let Some(to) = naming::answer(sitting, text).filter(|_| bird) else { return false };
    let last = |plan: &&LivePlan| {
        let told = plan.readings.iter().enumerate().rfind(|(_, it)| it.by == Some(who) && it.told_at.is_some());
        told.map(|(at, reading)| (plan.serial, at, reading.clone()))
    };
    let newest = sitting.room.plans().iter().filter_map(last).max_by_key(|(.., reading)| reading.told_at);
    let Some((from, place, reading)) = newest else { return false };
    let lately = reading.told_at.is_some_and(|at| sitting.now - at <= LATELY);
    let empty = [reading.pit_c, reading.breast_c, reading.thigh_c, reading.stuffing_c, reading.wing_c];
    if from == to || !lately || empty.iter().all(Option::is_none) {
        return false;
    }
    let taken_from = sitting.room.plans().into_iter().find(|plan| plan.serial == from);
    let label = taken_from.and_then(|plan| birds::label(sitting, plan));
    sitting.hold(Some(from));
    let now = sitting.now;
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.remember("logged", None, Some(who), now);
        let none = StoredReading {
            pit_c: None,
            breast_c: None,
            thigh_c: None,
            stuffing_c: None,
            wing_c: None,
            ..reading.clone()
        };
        plan.readings.push(StoredReading { replaces: Some(place), ..none });
    }
    if sitting.solve_again().outcome.is_ok() {
        board::refresh(sitting);
    }
    sitting.hold(Some(to));
    sitting.about = true;
    readings::keep(sitting, who, [StoredReading { replaces: None, ..reading.clone() }]);
    let spots = readings::spots_of(&reading);
    let noted = Text::new("birds-moved")
        .with("parts", readings::parts(&spots))
        .with("bird", label.map_or(Arg::Verbatim(String::new()), Arg::from));
    readings::answer(sitting, [noted], &spots);
    true
}
