//! The air was otherwise than everyone thought: hotter or colder all along, off for a while, a fire that ran out.
//!
//! The forecast is told what the bird has had since it was last known; what it has not had is never counted as cooking. Start at
//! [`was_otherwise`].

use super::alarms::{LOWEST_PIT_F, RAW_OVER};
use super::sitting::button;
use super::state::{LivePlan, StoredReading, WasSet};
use super::turn::Urgency;
use super::{Sitting, board, burns_on, no_heat, questions, readings, undo};
use crate::ask::Advice;
use crate::reading::sentence::Sentence;
use crate::reading::{self, Air, HeatBack, Since};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, spans};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};
use carvetime_core::roast::{self, Cooker};
use chrono::TimeDelta;

/// The air without heat: a warm kitchen, °C.
const OFF_C: f64 = 21.0;
/// One setting in two scales, °C.
const SAME_C: f64 = 1.0;
/// Nobody speaks of a failure longer ago without saying so.
const LONGEST_DOWN: TimeDelta = TimeDelta::hours(12);

/// "Oven was on 425 this whole time", "oven has been off for 30 min". `false`: nothing of the kind, or nothing over the heat.
pub(super) fn was_otherwise(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if is_elsewhere(sitting, text) && goes_on_elsewhere(sitting, text).is_none() {
        return false;
    }
    if burns_on::told(sitting, text) {
        return true;
    }
    if burns_on::is_none_of_it(sitting, text) {
        return false;
    }
    let air = reading::read_air(text, &sitting.ground());
    let back = if air.is_some() { None } else { reading::read_heat_back(text, &sitting.ground()) };
    let back = back.or_else(|| goes_on_elsewhere(sitting, text));
    let air = match (air, back) {
        (Some(air), _) => air,
        (None, Some(back)) => {
            let Some(since) = sitting.room.plan.as_mut().and_then(|plan| plan.down_since.take()) else { return false };
            if sitting.now - since > LONGEST_DOWN {
                return false;
            }
            Air { was_c: None, since: Since::At(since), until: back.at, still: false, now_c: back.now_c }
        }
        (None, None) => {
            fails(sitting, text);
            return false;
        }
    };
    told(sitting, air)
}

/// "Bob's oven just died": of no kitchen here.
pub(super) fn is_elsewhere(sitting: &Sitting<'_>, text: &str) -> bool {
    let names: Vec<String> = sitting.room.members.iter().map(|member| sitting.name_of(*member)).collect();
    reading::names_another_kitchen(text, &names, sitting.lexicon())
}

/// "Oven just died": from then on it has no heat, until someone says that it is back. What to do is answered as a question.
fn fails(sitting: &mut Sitting<'_>, text: &str) {
    let now = sitting.now;
    if !reading::says_heat_failed(text, &sitting.ground()) {
        return;
    }
    let cooking = |plan: &&mut LivePlan| !plan.is_off() && plan.on_since(now).is_some();
    if let Some(plan) = sitting.room.plan.as_mut().filter(cooking) {
        plan.down_since.get_or_insert(now);
        board::refresh(sitting);
        // Beside another bird it is said which has no heat.
        if !sitting.room.others.is_empty() {
            sitting.answer(no_heat::clock(now, now)).urgency(Urgency::Safety);
        }
    }
}

/// "It's in the neighbors' oven now, 350", while its own is dead: heat again, and what it is set to, °C.
fn goes_on_elsewhere(sitting: &Sitting<'_>, text: &str) -> Option<HeatBack> {
    no_heat::since(sitting.room.plan.as_ref()?, sitting.now)?;
    let sentence = Sentence::read(text, sitting.lexicon());
    let moved = ["heat-elsewhere", "heat-moved"].iter().any(|concept| sentence.has(concept));
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, sitting.lexicon());
    let ahead = sentence.has("heat-later");
    let set = || reading::read_wish(text, &sitting.ground()).0.setting_c;
    (moved && !asks && !ahead).then(|| HeatBack { now_c: set(), at: None })
}

/// Notes what the air has been. `false`: no bird is on, or it was known.
pub(super) fn told(sitting: &mut Sitting<'_>, air: Air) -> bool {
    let (light, by, now) = (sitting.light(), sitting.speaker(), sitting.now);
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| !plan.is_off()) else { return false };
    let Some((on, order)) = plan.on_since(now).zip(plan.order(light.zone)) else { return false };
    let from = match air.since {
        Since::On => on,
        Since::At(at) => at.clamp(on, now),
        Since::Known => last_known(plan, on),
    };
    let dial = in_celsius(order.heat.setting);
    let settings = order.heat.cooker.settings();
    // A fire that has sunk is not set to that.
    let burns = air.since != Since::Known;
    let told = air.now_c.or(air.was_c.filter(|_| burns)).filter(|c| settings.holds(celsius(*c)));
    let (set, was) = (told.unwrap_or(dial), air.was_c.unwrap_or(OFF_C));
    if (was - dial).abs() < SAME_C && (set - dial).abs() < SAME_C && plan.was_set.is_empty() {
        return false;
    }
    if air.still {
        return still_down(sitting, from);
    }
    let until = air.until.map_or(now, |until| until.clamp(from, now));
    plan.remember("mended", None, by, now);
    plan.down_since = None;
    had(plan, (from, was), (until, set), (on, dial));
    if !burns && let Some(pit_c) = air.was_c {
        plan.readings.push(StoredReading { sure: true, ..readings::of_air(pit_c, by, now) });
    }
    let caution = caution(order.heat.cooker, celsius(was));
    let none = air.was_c.is_none();
    let raw = none && (from == on && until - on >= spans::HOT_MOST || no_heat::was_cold_too_long(plan, from, until));
    let noted = noted(air.was_c, from, on);
    if raw {
        return thrown_away(sitting, noted);
    }
    let back = (air.was_c.is_none() || !burns) && air.now_c.is_none();
    let dial = Text::new(if back { "cook-air-back" } else { "cook-air-now" });
    let lines = [noted, dial.with("setting", Arg::Temperature(celsius(set)))];
    readings::answer(sitting, lines.into_iter().chain(caution), &readings::Spots::default());
    true
}

/// "Dead since three": it is without heat from then on, until someone says that it is back.
fn still_down(sitting: &mut Sitting<'_>, from: Moment) -> bool {
    let (now, by) = (sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut() else { return false };
    plan.remember("mended", None, by, now);
    plan.down_since = Some(from);
    if no_heat::was_cold_too_long(plan, from, now) {
        plan.alarms.push(RAW_OVER.to_owned());
    }
    let undo = button("room-button-undo", &undo::newest(plan));
    sitting.answer(no_heat::clock(from, now)).urgency(Urgency::Safety).row([undo]);
    questions::advise(sitting, Advice::OvenDown);
    board::refresh(sitting);
    true
}

/// A pit read hot while it is known to be without heat: it has it again. What is noted of that.
pub(super) fn burns_again(sitting: &mut Sitting<'_>, pit: Option<Temperature>) -> Option<Text> {
    pit.filter(|pit| in_fahrenheit(*pit) >= LOWEST_PIT_F)?;
    let (light, now) = (sitting.light(), sitting.now);
    let plan = sitting.room.plan.as_mut()?;
    let since = no_heat::since(plan, now)?;
    let (on, order) = plan.on_since(now).zip(plan.order(light.zone))?;
    let (from, dial) = (since.clamp(on, now), in_celsius(order.heat.setting));
    plan.down_since = None;
    had(plan, (from, OFF_C), (now, dial), (on, dial));
    if no_heat::was_cold_too_long(plan, from, now) {
        plan.alarms.push(RAW_OVER.to_owned());
    }
    Some(noted(None, from, on))
}

/// What was understood.
fn noted(was_c: Option<f64>, from: Moment, on: Moment) -> Text {
    Text::new(if was_c.is_some() { "cook-air-was" } else { "cook-air-off" })
        .with("was", Arg::Temperature(celsius(was_c.unwrap_or(OFF_C))))
        .with("since", Arg::Choice(if from == on { "on" } else { "at" }))
        .with("from", Arg::Clock(from))
}

/// A raw bird without heat for two hours: no hour is told for it.
fn thrown_away(sitting: &mut Sitting<'_>, noted: Text) -> bool {
    let _no_hour = sitting.solve_again();
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.alarms.push(RAW_OVER.to_owned());
    }
    let undo = sitting.room.plan.as_ref().map(|plan| button("room-button-undo", &undo::newest(plan)));
    let raw = Text::new("cook-air-raw").with("limit", Arg::Span(spans::HOT_MOST));
    sitting.answer_all(vec![noted, raw]).urgency(Urgency::Safety).row(undo);
    board::refresh(sitting);
    true
}

/// Air too cold to cook a bird safely in: measure now.
fn caution(cooker: Cooker, was: Temperature) -> Option<Text> {
    let below = |limit: f64| in_fahrenheit(was) < limit - 0.5;
    if below(LOWEST_PIT_F) {
        let text = Text::new("cook-air-cold").with("hot", Arg::Temperature(fahrenheit(140.0)));
        return Some(text.with("limit", Arg::Span(spans::HOT_MOST)));
    }
    let authority = roast::OVEN_AUTHORITY_F;
    let low = cooker != Cooker::Smoker && below(authority);
    low.then(|| Text::new("cook-air-low").with("limit", Arg::Temperature(fahrenheit(authority))))
}

/// When the air was last known to be as it was set: a reading of it, a change of the dial, or the bird going on.
fn last_known(plan: &LivePlan, on: Moment) -> Moment {
    let read = plan.counted().into_iter().filter(|reading| reading.pit_c.is_some()).map(|reading| reading.at);
    let turned = plan.was_set.iter().map(|was| was.until);
    read.chain(turned).max().map_or(on, |at| at.max(on))
}

/// Writes down that the air was `was` from then until now, and is set to `set` from now on.
fn had(plan: &mut LivePlan, (from, was): (Moment, f64), (now, set): (Moment, f64), (on, dial): (Moment, f64)) {
    let last = plan.was_set.iter().find(|was| was.until > from);
    let (before, elsewhere) = last.map_or((dial, false), |was| (was.setting_c, was.elsewhere));
    plan.was_set.retain(|was| was.until < from);
    if from > on {
        plan.was_set.push(WasSet { until: from, setting_c: before, elsewhere });
    }
    if (was - set).abs() >= SAME_C {
        plan.was_set.push(WasSet { until: now, setting_c: was, elsewhere: false });
    }
    plan.wish.setting_c = Some(set);
}
