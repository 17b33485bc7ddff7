//! Taking back the last change to the plan.
//!
//! A mark that is no slip of the finger any more is asked about by name first: only the mark can go, not what was done to the
//! food. Where something later shows that it was done, it stays, with the reason.

use super::action::Action;
use super::alarms::RAW_OVER;
use super::sitting::{button, name};
use super::state::{Change, JobState, LiveJob, LivePlan};
use super::turn::{How, Say};
use super::{RoomKind, Sitting, What, birds, board, jobs, may, plan_words, proposal};
use crate::reading::Wish;
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use chrono::TimeDelta;

/// A mark taken back within this time was a slip of the finger: nobody need be asked.
const SLIP: TimeDelta = TimeDelta::minutes(10);

/// The key of the question, which is also what is said no to.
pub(super) const KEY: &str = "undo";

/// `/undo`: the newest change.
pub(super) fn last(sitting: &mut Sitting<'_>) {
    let Some(plan) = &sitting.room.plan else {
        sitting.answer(Text::new("room-no-plan"));
        return;
    };
    match plan.history.len().checked_sub(1) {
        Some(index) => back_to(sitting, index),
        None => {
            sitting.answer(Text::new("room-undo-nothing"));
        }
    }
}

/// What the button under the change just made takes back.
pub(super) fn newest(plan: &LivePlan) -> Action {
    Action::Undo(plan.serial, plan.changes)
}

/// The button under one change: it only works while that change is still the newest.
pub(super) fn pressed(sitting: &mut Sitting<'_>, serial: u32, number: u32) {
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.serial == serial) else {
        return sitting.notice(Text::new("room-stale"));
    };
    let stands = plan.history.iter().rposition(|change| number > 0 && change.number == number);
    let Some(index) = stands else { return sitting.notice(Text::new("room-undo-gone")) };
    if is_sure(sitting) {
        return unmark(sitting, index);
    }
    match later(plan, index) {
        _ if index + 1 == plan.history.len() => back_to(sitting, index),
        Some(reason) => sitting.notice(reason),
        None => sitting.notice(Text::new("room-undo-stale")),
    }
}

/// "It isn't on yet", and it was marked so: asked about, or the reason why it stands. `false`: nobody has marked it.
pub(super) fn mistaken(sitting: &mut Sitting<'_>, step: Step) -> bool {
    let Some(plan) = &sitting.room.plan else { return false };
    let marked = plan.facts.iter().any(|fact| fact.done && fact.step == step.name());
    let is_mark = |change: &Change| is_mark_of(change) == Some(step);
    let Some(index) = plan.history.iter().rposition(is_mark).filter(|_| marked) else { return false };
    match later(plan, index) {
        Some(reason) => {
            sitting.answer(reason);
        }
        None => ask(sitting, index),
    }
    true
}

/// The step a change marked as done.
fn is_mark_of(change: &Change) -> Option<Step> {
    change.step.as_deref().filter(|_| change.name == "done").and_then(Step::from_name)
}

/// The press answers the question about the mark.
fn is_sure(sitting: &Sitting<'_>) -> bool {
    matches!(&sitting.heard.what, What::Pressed { on: Some(on), .. } if birds::unmarked(on).0 == KEY)
}

/// Who may not is told whose change it is. `false`: they may.
fn is_refused(sitting: &mut Sitting<'_>, change: &Change) -> bool {
    if change.by.is_some_and(|by| Some(by) == sitting.speaker()) || may::steer(sitting) {
        return false;
    }
    let Some(plan) = &sitting.room.plan else { return true };
    let what = Arg::List(what(plan, change));
    match change.by {
        Some(by) => {
            let text = Text::new("room-undo-theirs").with("name", name(sitting, by)).with("what", what);
            sitting.notice(text);
        }
        None => may::refuse(sitting),
    }
    true
}

/// Was it a mistake? Who marked what, and when.
fn ask(sitting: &mut Sitting<'_>, index: usize) {
    let Some(plan) = &sitting.room.plan else { return };
    let Some(change) = plan.history.get(index) else { return };
    let (Some(step), Some(who)) = (is_mark_of(change), sitting.speaker()) else { return };
    let action = Action::Undo(plan.serial, change.number);
    let text = match change.by.filter(|_| sitting.room.kind == RoomKind::Group) {
        Some(by) => Text::new("room-undo-sure-by").with("name", name(sitting, by)),
        None => Text::new("room-undo-sure"),
    };
    let step = plan_words::step_name(step, nth_of(plan, change));
    let text = text.with("step", Arg::from(step)).with("at", Arg::DayClock(change.at));
    let keep = Action::No(KEY.to_owned(), who);
    sitting
        .answer(text)
        .key(KEY)
        .row([button("room-button-undo-sure", &action), button("room-button-late-keep", &keep)]);
}

/// How far a step is on the way of the food; of what is not on it there is none.
fn stage(step: Step) -> Option<u8> {
    Some(match step {
        Step::Buy => 0,
        Step::Thaw | Step::Water => 1,
        Step::Salt | Step::Rest => 2,
        Step::Temper | Step::Fire => 3,
        Step::On => 4,
        Step::Check => 5,
        Step::Pull => 6,
        Step::Stand | Step::Carve => 7,
        Step::Chill | Step::Pack => 8,
        Step::Travel => 9,
        Step::Reheat => 10,
        Step::Serve | Step::Leftovers => 11,
        Step::Dish => return None,
    })
}

/// What has happened since that could not have without what the change marked as done, as a reason.
fn later(plan: &LivePlan, index: usize) -> Option<Text> {
    let change = plan.history.get(index)?;
    let step = is_mark_of(change)?;
    let (here, since) = (stage(step)?, change.at);
    let rests = |fact: &&super::state::StoredFact| {
        let further = Step::from_name(&fact.step).and_then(stage).is_some_and(|stage| stage > here);
        fact.done && fact.at >= since && further
    };
    let named = |text: Text| text.with("step", Arg::from(plan_words::step_name(step, nth_of(plan, change))));
    if let Some(fact) = plan.facts.iter().rfind(rests) {
        let later = plan_words::step_done(Step::from_name(&fact.step)?, fact.nth);
        return Some(
            named(Text::new("room-undo-rests")).with("later", Arg::from(later)).with("at", Arg::DayClock(fact.at)),
        );
    }
    let in_bird = |reading: &&super::state::StoredReading| {
        reading.at > since && (reading.breast_c.is_some() || reading.thigh_c.is_some())
    };
    let on = stage(Step::On).is_some_and(|on| here <= on);
    let read = plan.readings.iter().rfind(in_bird).filter(|_| on)?;
    Some(named(Text::new("room-undo-rests-read")).with("at", Arg::DayClock(read.at)))
}

/// The mark goes, whatever else was changed since; that stays.
fn unmark(sitting: &mut Sitting<'_>, index: usize) {
    let Some(plan) = &sitting.room.plan else { return };
    let Some(change) = plan.history.get(index).cloned() else { return };
    if is_refused(sitting, &change) {
        return;
    }
    let Some(plan) = &sitting.room.plan else { return };
    if let Some(reason) = later(plan, index) {
        return sitting.notice(reason);
    }
    if index + 1 == plan.history.len() {
        return take_back(sitting, index, &change);
    }
    let (parts, after) = (what(plan, &change), plan.history.get(index + 1).cloned());
    let (now, by, step) = (sitting.now, sitting.speaker(), is_mark_of(&change));
    let (Some(plan), Some(after)) = (sitting.room.plan.as_mut(), after) else { return };
    plan.remember("unmarked", step, by, now);
    plan.facts.retain(|fact| change.facts.contains(fact) || !after.facts.contains(fact));
    for job in &mut plan.jobs {
        let same = |other: &&LiveJob| other.step == job.step && other.nth == job.nth;
        let (Some(before), Some(marked)) = (change.jobs.iter().find(same), after.jobs.iter().find(same)) else {
            continue;
        };
        if before.state == JobState::Waiting && marked.state == job.state && marked.state != before.state {
            job.state = JobState::Waiting;
            job.denied |= Some(&job.step) == change.step.as_ref();
            job.call_at = before.call_at.map(|at| at.max(now));
        }
    }
    tell(sitting, &change, parts);
    if let Err(conflict) = sitting.resolve() {
        jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
}

fn back_to(sitting: &mut Sitting<'_>, index: usize) {
    let Some(change) = sitting.room.plan.as_ref().and_then(|plan| plan.history.get(index)).cloned() else { return };
    if is_refused(sitting, &change) {
        return;
    }
    let Some(plan) = sitting.room.plan.as_ref() else { return };
    if let Some(reason) = later(plan, index) {
        return sitting.notice(reason);
    }
    if is_mark_of(&change).is_some() && sitting.now - change.at > SLIP && sitting.speaker().is_some() {
        return ask(sitting, index);
    }
    take_back(sitting, index, &change);
}

fn take_back(sitting: &mut Sitting<'_>, index: usize, change: &Change) {
    let Some(plan) = sitting.room.plan.as_ref() else { return };
    let (restored, taken) = (restored(plan, change, index, sitting.now), plan.wish.clone());
    let parts = what(plan, change);
    // A dinner hour may be moved back only while it can still be met; what was done, and what an oven is said to be set to,
    // may always be taken back.
    let only_heat = Wish { setting_c: taken.setting_c, ..change.wish.clone() } == taken;
    if change.step.is_none()
        && !only_heat
        && let Some(Err(conflict)) = restored.solve(&sitting.light())
    {
        let lines = proposal::clash(&conflict);
        sitting.answer(Text::new("room-undo-late")).lines(lines);
        return;
    }
    sitting.room.plan = Some(restored);
    let dinner = change.wish.dinner.filter(|dinner| taken.dinner != Some(*dinner));
    let again = dinner.map(|dinner| Text::new("room-undone-dinner").with("when", Arg::DayClock(dinner)));
    tell(sitting, change, parts).lines(again);
    if let Err(conflict) = sitting.resolve() {
        jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
}

/// Says what is taken back, and whose it was; in the place of the question, if it was asked about.
fn tell<'s>(sitting: &'s mut Sitting<'_>, change: &Change, parts: Vec<Text>) -> &'s mut Say {
    let what = Arg::List(parts);
    let text = match change.by.filter(|_| sitting.room.kind == RoomKind::Group) {
        Some(by) => Text::new("room-undone-by")
            .with("what", what)
            .with("name", name(sitting, by))
            .with("at", Arg::DayClock(change.at)),
        None => Text::new("room-undone").with("what", what),
    };
    let sure = is_sure(sitting);
    let say = sitting.answer(text);
    if sure { say.key(KEY).how(How::Edit) } else { say.key("undone") }
}

/// The plan as it stood before the change.
fn restored(plan: &LivePlan, change: &Change, index: usize, now: Moment) -> LivePlan {
    let current = &plan.jobs;
    let mut plan = plan.clone();
    plan.history.truncate(index);
    plan.edition += 1;
    plan.wish = change.wish.clone();
    plan.facts = change.facts.clone();
    plan.readings.truncate(change.readings);
    // What was thrown away for hours without heat had them.
    if change.was_set.as_ref() != Some(&plan.was_set) {
        plan.alarms.retain(|name| name != RAW_OVER);
    }
    match &change.was_set {
        Some(was_set) => plan.was_set.clone_from(was_set),
        None => plan.was_set.retain(|was| was.until < change.at),
    }
    plan.inside = change.inside;
    plan.jobs = change.jobs.clone();
    for job in &mut plan.jobs {
        // What people have been told since, they know.
        if let Some(known) = current.iter().find(|now| now.step == job.step && now.nth == job.nth) {
            job.heard_since(known);
        }
        // Whoever takes "done" back has said that it is not done.
        job.denied |= change.name == "done" && Some(&job.step) == change.step.as_ref();
        // What was due meanwhile is due now; what was called stays called.
        if job.call_at.is_some_and(|at| at < now) {
            job.call_at = Some(now);
        }
    }
    plan
}

/// What is taken back: a job's news, or what the wish said otherwise.
fn what(plan: &LivePlan, change: &Change) -> Vec<Text> {
    if change.name == "mended" {
        let before = proposal::known(&change.wish);
        let said: Vec<Text> = proposal::known(&plan.wish).into_iter().filter(|part| !before.contains(part)).collect();
        if !said.is_empty() {
            return said;
        }
    }
    if change.name == "dish"
        && let Some(dish) = dish_changed(plan, change)
    {
        return vec![dish];
    }
    let text = Text::new("room-undone-what").with("change", Arg::Choice(choice(&change.name)));
    vec![match change.step.as_deref().and_then(Step::from_name) {
        Some(step) => text.with("step", Arg::from(plan_words::step_name(step, nth_of(plan, change)))),
        None => text.with("step", Arg::Verbatim(String::new())),
    }]
}

/// What a change did to the dishes, where it was one of them: the first that stood otherwise after it.
fn dish_changed(plan: &LivePlan, change: &Change) -> Option<Text> {
    let next = plan.history.iter().find(|later| later.number == change.number + 1);
    let (before, after) = (&change.wish.dishes, next.map_or(&plan.wish.dishes, |later| &later.wish.dishes));
    (0..before.len().max(after.len())).find_map(|place| {
        let (was, is) = (before.get(place).cloned().flatten(), after.get(place).cloned().flatten());
        let how = match (&was, &is) {
            _ if was == is => return None,
            (None, _) => "added",
            (_, None) => "gone",
            _ => "changed",
        };
        let name = is.or(was)?.name;
        Some(Text::new("room-undone-dish").with("how", Arg::Choice(how)).with("name", Arg::Verbatim(name)))
    })
}

/// Which of several jobs of its step a change was about: the first that stood otherwise after it.
fn nth_of(plan: &LivePlan, change: &Change) -> u8 {
    let next = plan.history.iter().find(|later| later.number == change.number + 1);
    let after = next.map_or(&plan.jobs, |later| &later.jobs);
    let changed = |job: &&LiveJob| {
        let now = after.iter().find(|now| now.step == job.step && now.nth == job.nth);
        now.is_none_or(|now| now.state != job.state || now.owner != job.owner)
    };
    let same_step = change.jobs.iter().filter(|job| Some(&job.step) == change.step.as_ref());
    same_step.into_iter().find(changed).map_or(0, |job| job.nth)
}

/// The stored name as a word Fluent may select by.
fn choice(name: &str) -> &'static str {
    const NAMES: [&str; 10] =
        ["done", "skipped", "take", "drop", "moved", "mended", "logged", "dish", "unmarked", "back-on"];
    NAMES.into_iter().find(|known| *known == name).unwrap_or("other")
}
