//! No power, and the heat goes on: a gas oven said to work, or readings that rise.

use super::state::{LivePlan, StoredReading};
use super::turn::Urgency;
use super::{Sitting, board, no_heat};
use crate::ask::{self, Advice, Asker, Habit, Question};
use crate::reading::{self, sentence::Sentence};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, spans};
use carvetime_core::quantity::{celsius, in_fahrenheit};
use chrono::TimeDelta;

/// An oven that goes cold still warms meat a little; more than this, °C, and it has heat. Common practice, no source.
const RISES_C: f64 = 5.0;
/// The same from before the failure on, so long after it.
const RISES_SINCE_C: f64 = 10.0;
const WHILE: TimeDelta = TimeDelta::minutes(30);

/// "The power's out, but the oven is gas": nothing failed. `false`: nothing is over the heat, or the words say nothing of it.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let now = sitting.now;
    if !reading::says_burns_on(text, &sitting.ground()) {
        return false;
    }
    let cut = reading::is_of_power(text, sitting.lexicon());
    let cooks = |plan: &&mut LivePlan| !plan.is_off() && plan.on_since(now).is_some();
    let Some(plan) = sitting.room.plan.as_mut().filter(cooks).filter(|plan| cut || plan.down_since.is_some()) else {
        return false;
    };
    plan.down_since = None;
    plan.burns_on = true;
    let fridge = Sentence::read(text, sitting.lexicon()).has("habit-fridge-down");
    let asker = Asker::of_reader(&sitting.reader());
    let shut = fridge.then(|| ask::answer(&Question::Advice(Advice::Habit(Habit::FridgeDown)), &asker).ok()).flatten();
    let shut = shut.map(|answer| answer.lines()).unwrap_or_default();
    sitting.answer(Text::new("cook-air-burns-on")).lines(shut).urgency(Urgency::Safety);
    board::refresh(sitting);
    true
}

/// "Still no power", of a heat that goes on without it.
pub(super) fn is_none_of_it(sitting: &Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let sentence = Sentence::read(text, lexicon);
    let heat = (0..sentence.len()).any(|at| sentence.of(at, "cooker-").is_some() || sentence.is(at, "spot-pit"));
    sitting.room.plan.as_ref().is_some_and(|plan| plan.burns_on) && !heat && reading::is_of_power(text, lexicon)
}

/// Readings that rise where no heat was known of: it has some. What is noted of that.
pub(super) fn rises(sitting: &mut Sitting<'_>) -> Option<Text> {
    let now = sitting.now;
    let light = sitting.light();
    let plan = sitting.room.plan.as_mut()?;
    let since = no_heat::since(plan, now)?;
    let setting = plan.order(light.zone)?.heat.setting;
    let from = [|it: &StoredReading| it.breast_c, |it: &StoredReading| it.thigh_c]
        .into_iter()
        .find_map(|of| risen(plan, of, since))?;
    // So long without heat, and never hot before: what warms it now does not make up for that.
    if from - since >= spans::HOT_MOST && cold_at(plan, from) {
        return None;
    }
    plan.down_since = None;
    Some(Text::new("cook-air-rising").with("setting", Arg::Temperature(setting)))
}

/// From when on the newest reading of a spot shows that it was warmed.
fn risen(plan: &LivePlan, of: fn(&StoredReading) -> Option<f64>, since: Moment) -> Option<Moment> {
    let counted = plan.counted();
    let mut told = counted.iter().rev().filter_map(|reading| Some((reading.at, of(reading)?)));
    let (at, last) = told.next()?;
    told.find_map(|(earlier, was)| {
        let (least, after) = if earlier >= since { (RISES_C, earlier) } else { (RISES_SINCE_C, since + WHILE) };
        (last - was >= least && at >= after).then_some(earlier.max(since))
    })
}

fn cold_at(plan: &LivePlan, at: Moment) -> bool {
    let cold = |spot: f64| in_fahrenheit(celsius(spot)) < 140.0;
    let read = plan.counted().into_iter().rev().filter(|reading| reading.at <= at);
    let coldest = |it: &StoredReading| [it.breast_c, it.thigh_c].into_iter().flatten().reduce(f64::min);
    read.into_iter().find_map(coldest).is_some_and(cold)
}
