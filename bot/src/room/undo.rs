//! Taking back the last change to the plan.

use super::action::Action;
use super::sitting::name;
use super::state::{Change, LivePlan};
use super::{RoomKind, Sitting, board, jobs, may, plan_words, proposal};
use crate::reading::Wish;
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};

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
    match stands {
        Some(index) if index + 1 == plan.history.len() => back_to(sitting, index),
        Some(_) => sitting.notice(Text::new("room-undo-stale")),
        None => sitting.notice(Text::new("room-undo-gone")),
    }
}

fn back_to(sitting: &mut Sitting<'_>, index: usize) {
    let Some(change) = sitting.room.plan.as_ref().and_then(|plan| plan.history.get(index)).cloned() else { return };
    if change.by.is_none_or(|by| Some(by) != sitting.speaker()) && !may::steer(sitting) {
        return match change.by {
            Some(by) => sitting.notice(Text::new("room-undo-theirs").with("name", name(sitting, by))),
            None => may::refuse(sitting),
        };
    }
    let Some(plan) = sitting.room.plan.as_ref() else { return };
    let (restored, taken) = (restored(plan, &change, index, sitting.now), plan.wish.clone());
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
    let what = Arg::List(what(&change, &taken));
    let text = match change.by.filter(|_| sitting.room.kind == RoomKind::Group) {
        Some(by) => Text::new("room-undone-by")
            .with("what", what)
            .with("name", name(sitting, by))
            .with("at", Arg::DayClock(change.at)),
        None => Text::new("room-undone").with("what", what),
    };
    let dinner = change.wish.dinner.filter(|dinner| taken.dinner != Some(*dinner));
    let again = dinner.map(|dinner| Text::new("room-undone-dinner").with("when", Arg::DayClock(dinner)));
    sitting.answer(text).lines(again).key("undone");
    if let Err(conflict) = sitting.resolve() {
        jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
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
    plan.was_set.retain(|was| was.until < change.at);
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
fn what(change: &Change, taken: &Wish) -> Vec<Text> {
    if change.name == "mended" {
        let before = proposal::known(&change.wish);
        let said: Vec<Text> = proposal::known(taken).into_iter().filter(|part| !before.contains(part)).collect();
        if !said.is_empty() {
            return said;
        }
    }
    let text = Text::new("room-undone-what").with("change", Arg::Choice(choice(&change.name)));
    vec![match change.step.as_deref().and_then(Step::from_name) {
        Some(step) => text.with("step", Arg::from(plan_words::step_name(step, 0))),
        None => text.with("step", Arg::Verbatim(String::new())),
    }]
}

/// The stored name as a word Fluent may select by.
fn choice(name: &str) -> &'static str {
    const NAMES: [&str; 8] = ["done", "skipped", "take", "drop", "moved", "mended", "logged", "dish"];
    NAMES.into_iter().find(|known| *known == name).unwrap_or("other")
}
