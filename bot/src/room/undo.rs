//! Taking back the last change to the plan.

use super::state::{Change, LivePlan};
use super::{Sitting, board, jobs, may, plan_words, proposal};
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

/// The button under one change: it only works while that change is still the newest.
pub(super) fn pressed(sitting: &mut Sitting<'_>, serial: u32, index: u16) {
    let newest = sitting.room.plan.as_ref().filter(|plan| plan.serial == serial).map(|plan| plan.history.len());
    if newest == Some(usize::from(index) + 1) {
        back_to(sitting, usize::from(index));
    } else {
        sitting.notice(Text::new("room-undo-stale"));
    }
}

fn back_to(sitting: &mut Sitting<'_>, index: usize) {
    let Some(change) = sitting.room.plan.as_ref().and_then(|plan| plan.history.get(index)).cloned() else { return };
    if change.by.is_none_or(|by| Some(by) != sitting.speaker()) && !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let Some(restored) = sitting.room.plan.as_ref().map(|plan| restored(plan, &change, index, sitting.now)) else {
        return;
    };
    // A dinner hour may be moved back only while it can still be met; what was done may always be taken back.
    if change.step.is_none()
        && let Some(Err(conflict)) = restored.solve(&sitting.light())
    {
        let lines = proposal::clash(&conflict);
        sitting.answer(Text::new("room-undo-late")).lines(lines);
        return;
    }
    sitting.room.plan = Some(restored);
    let text = Text::new("room-undone").with("what", Arg::from(what(sitting, &change)));
    let dinner = change.wish.dinner.filter(|_| change.step.is_none() && change.name != "logged");
    let again = dinner.map(|dinner| Text::new("room-undone-dinner").with("when", Arg::DayClock(dinner)));
    sitting.answer(text).lines(again).key("undone");
    if let Err(conflict) = sitting.resolve() {
        jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
}

/// The plan as it stood before the change.
fn restored(plan: &LivePlan, change: &Change, index: usize, now: Moment) -> LivePlan {
    let mut plan = plan.clone();
    plan.history.truncate(index);
    plan.edition += 1;
    plan.wish = change.wish.clone();
    plan.facts = change.facts.clone();
    plan.readings.truncate(change.readings);
    plan.jobs = change.jobs.clone();
    for job in &mut plan.jobs {
        // Whoever takes "done" back has said that it is not done.
        job.denied |= change.name == "done" && Some(&job.step) == change.step.as_ref();
        // What was due meanwhile is due now; what was called stays called.
        if job.call_at.is_some_and(|at| at < now) {
            job.call_at = Some(now);
        }
    }
    plan
}

fn what(sitting: &Sitting<'_>, change: &Change) -> Text {
    let step = change.step.as_deref().and_then(Step::from_name);
    let by = change.by.map(|by| sitting.name_of(by)).unwrap_or_default();
    let mut text = Text::new("room-undone-what").with("change", Arg::Choice(choice(&change.name)));
    text = text.with("name", Arg::Verbatim(by));
    match step {
        Some(step) => text.with("step", Arg::from(plan_words::step_name(step, 0))),
        None => text.with("step", Arg::Verbatim(String::new())),
    }
}

/// The stored name as a word Fluent may select by.
fn choice(name: &str) -> &'static str {
    const NAMES: [&str; 8] = ["done", "skipped", "take", "drop", "moved", "mended", "logged", "dish"];
    NAMES.into_iter().find(|known| *known == name).unwrap_or("other")
}
