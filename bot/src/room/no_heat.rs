//! The heat has failed with the bird in it, and nobody has said that it is back: nothing is called as if it cooked, and the clock of a bird
//! without heat is told.

use super::state::LivePlan;
use super::turn::{Bell, BellKind, Urgency};
use super::{Sitting, done_yet, questions, readings};
use crate::ask::Advice;
use crate::reading::{self, sentence::Sentence};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step, spans};
use carvetime_core::quantity::{celsius, fahrenheit, in_fahrenheit};
use chrono::TimeDelta;

/// What the names of its bells begin with.
const BELL: &str = "no-heat-";
/// When it is asked after, from the failure on; at last its two hours are over.
const ASKED: [TimeDelta; 2] = [TimeDelta::minutes(45), spans::HOT_MOST];
/// A job that only fits a bird that cooks waits so long until it is thought of again.
pub(super) const WAITS: TimeDelta = TimeDelta::minutes(30);
/// "What now?" this long after the failure is about it.
const FRESH: TimeDelta = TimeDelta::hours(2);

/// Since when the bird over the heat has none.
pub(super) fn since(plan: &LivePlan, now: Moment) -> Option<Moment> {
    /// A failure longer ago was never told to be over, and is.
    const LONGEST: TimeDelta = TimeDelta::hours(12);
    plan.down_since.filter(|since| now - *since <= LONGEST && plan.on_since(now).is_some() && !plan.is_off())
}

/// A job that makes no sense before the heat is back.
pub(super) fn holds(plan: &LivePlan, step: Step, now: Moment) -> bool {
    let cooks = plan.down_since.is_some() && plan.on_since(now).is_some() && !plan.is_off();
    cooks && matches!(step, Step::Check | Step::Pull | Step::Carve)
}

/// The bells still to ring.
pub(super) fn bells(plan: &LivePlan, now: Moment) -> impl Iterator<Item = Bell> {
    let since = since(plan, now);
    let bell = move |after: TimeDelta| {
        let since = since?;
        let name = format!("{BELL}{}-{}", after.num_minutes(), since.timestamp());
        let open = !plan.limits_called.contains(&name);
        open.then_some(Bell { at: since + after, kind: BellKind::Limit { name } })
    };
    ASKED.into_iter().filter_map(bell)
}

/// One of its bells rang.
pub(super) fn rang(sitting: &mut Sitting<'_>, kind: &BellKind) {
    let BellKind::Limit { name } = kind else { return };
    let now = sitting.now;
    let open = |plan: &&mut LivePlan| name.starts_with(BELL) && !plan.limits_called.contains(name);
    let Some(plan) = sitting.room.plan.as_mut().filter(open) else { return };
    let Some(since) = since(plan, now) else { return };
    plan.limits_called.push(name.clone());
    sitting.answer(clock(since, now)).urgency(Urgency::Safety);
}

/// How long it has been without heat, and what follows.
pub(super) fn clock(since: Moment, now: Moment) -> Text {
    let over = now - since >= spans::HOT_MOST;
    Text::new(if over { "room-no-heat-over" } else { "room-no-heat" })
        .with("since", Arg::Clock(since))
        .with("until", Arg::Clock(since + spans::HOT_MOST))
        .with("hot", Arg::Temperature(fahrenheit(140.0)))
        .with("target", Arg::Temperature(super::target()))
}

/// "Can we still eat it?", "what now?", while it is over the heat, or was when that failed. `false`: something else was asked.
pub(super) fn asked(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.on_since(now).is_some() && !plan.is_off()) else {
        return false;
    };
    let down = since(plan, now);
    let lexicon = sitting.lexicon();
    let plain: String = text.chars().filter(|c| !matches!(c, '?' | '¿')).collect();
    let told = lexicon.talk_words(&plain).join(" ");
    if down.is_some_and(|since| now - since < FRESH) && lexicon.talk(&told, "what-now") {
        questions::advise(sitting, Advice::OvenDown);
        return true;
    }
    if let Some(since) = down
        && ["what-now", "still-down"].iter().any(|group| lexicon.talk(&told, group))
    {
        sitting.answer(clock(since, now)).urgency(Urgency::Safety);
        return true;
    }
    let sentence = Sentence::read(text, lexicon);
    let other = |at: usize| sentence.of(at, "food-").is_some() || sentence.of(at, "dish-").is_some();
    if !reading::asks_to_eat(text, lexicon) || (0..sentence.len()).any(other) {
        return false;
    }
    eaten(sitting)
}

/// "Is bens bird safe?": a bird and its safety, and nothing measured.
pub(super) fn asks_if_safe(sitting: &Sitting<'_>, text: &str) -> bool {
    let numbers = text.contains(|c: char| c.is_ascii_digit());
    let lexicon = sitting.lexicon();
    let sentence = Sentence::read(text, lexicon);
    let asks = text.contains(['?', '¿']) || reading::opens_as_question(text, lexicon);
    let of_food = |at: usize| ["food-", "dish-", "place-"].iter().any(|group| sentence.of(at, group).is_some());
    !numbers && asks && sentence.has("ask-safe") && !(0..sentence.len()).any(of_food)
}

/// Whether the bird in hand can be eaten: not while it cooks; off the heat, by when. `false`: neither.
pub(super) fn eaten(sitting: &mut Sitting<'_>) -> bool {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.on_since(now).is_some() && !plan.is_off()) else {
        return done_yet::off_the_heat(sitting);
    };
    let down = since(plan, now);
    if down.is_none() && done_yet::is_read(sitting) && readings::below(sitting).is_none() {
        return done_yet::in_the_heat(sitting, true);
    }
    let not_yet = Text::new("room-eat-cooking").with("target", Arg::Temperature(super::target()));
    let why = down.map(|since| clock(since, now)).or_else(|| readings::under(sitting));
    sitting.answer(not_yet).lines(why).urgency(Urgency::Safety);
    true
}

/// It was under 140 °F when it was last measured before the heat went, and the two hours are over since: no hour is told for it.
pub(super) fn was_cold_too_long(plan: &LivePlan, from: Moment, now: Moment) -> bool {
    let hot = |c: f64| in_fahrenheit(celsius(c)) >= 140.0;
    let last = |at: &dyn Fn(Moment) -> bool| {
        let read = plan.counted().into_iter().rev().filter(|reading| at(reading.at));
        let coldest = |reading: &super::state::StoredReading| {
            [reading.breast_c, reading.thigh_c].into_iter().flatten().reduce(f64::min)
        };
        read.into_iter().find_map(coldest)
    };
    let since = last(&|at| at > from);
    let cold = since.or_else(|| last(&|at| at <= from)).is_some_and(|coldest| !hot(coldest));
    cold && now - from >= spans::HOT_MOST
}
