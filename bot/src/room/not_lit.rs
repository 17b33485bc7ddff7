//! Nobody turned the oven on, and the bird is to go in: the heat is due now, the bird waits for it, and is not called for before.

use super::action::JobRef;
use super::live::{self, TAKEN_FOR_DONE};
use super::sitting::button;
use super::state::{JobState, LivePlan};
use super::{Sitting, air, board, jobs, swap, undo};
use crate::reading;
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;
use chrono::TimeDelta;

/// Longer texts tell a story.
const LONGEST: usize = 120;
/// Whoever looks at a cold oven sooner than that before it is due finds it as it should be.
const SOON: TimeDelta = TimeDelta::minutes(15);
/// Whether it is lit by now is asked after this, and so is a bird held back.
const AGAIN: TimeDelta = TimeDelta::minutes(10);

/// "Oh no I forgot to turn the oven on"; then "turning it on now". `false`: nothing of it, or no bird is to go in about now.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let (now, lexicon) = (sitting.now, sitting.lexicon());
    if text.len() > LONGEST {
        return false;
    }
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| !plan.is_off()) else { return false };
    let Some(fire) = plan.job(Step::Fire, 0) else { return false };
    if fire.denied && fire.state == JobState::Waiting && reading::says_lights_it(text, lexicon) {
        jobs::done(sitting, JobRef { serial: plan.serial, step: Step::Fire, nth: 0 });
        return true;
    }
    // Taken for on for so long, it may lie in a cold oven: that is told of the air it had.
    let raw = plan.job(Step::On, 0).is_some_and(|on| {
        let taken = on.calls > 0 && now - on.at > TAKEN_FOR_DONE;
        on.state == JobState::Waiting && !taken && !plan.is_read_since(on.at)
    });
    let due = fire.at <= now + SOON || fire.state != JobState::Waiting;
    if !raw || !due || !reading::says_oven_cold(text, lexicon) || air::is_elsewhere(sitting, text) {
        return false;
    }
    lit_now(sitting);
    true
}

/// The bird is not called for while it is known that nothing is hot.
pub(super) fn holds(plan: &LivePlan, step: Step) -> bool {
    let cold = |job: &super::state::LiveJob| job.denied && job.state == JobState::Waiting;
    step == Step::On && plan.job(Step::Fire, 0).is_some_and(cold)
}

/// It is called for a little later.
pub(super) fn put_off(sitting: &mut Sitting<'_>, step: Step, nth: u8) {
    let again = sitting.now + AGAIN;
    if let Some(job) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(step, nth)) {
        job.call_at = Some(again);
    }
}

fn lit_now(sitting: &mut Sitting<'_>) {
    let (now, by) = (sitting.now, sitting.speaker());
    let setting =
        sitting.room.plan.as_ref().and_then(|plan| plan.order(sitting.zone_or_utc())).map(|order| order.heat.setting);
    let (Some(plan), Some(setting)) = (sitting.room.plan.as_mut(), setting) else { return };
    let known = plan.job(Step::Fire, 0).is_some_and(|fire| fire.denied && fire.state == JobState::Waiting);
    if !known {
        plan.remember("mended", None, by, now);
    }
    let before = plan.jobs.clone();
    plan.facts.retain(|fact| fact.step != Step::Fire.name());
    if let Some(fire) = plan.job_mut(Step::Fire, 0) {
        (fire.state, fire.denied) = (JobState::Waiting, true);
        swap::uncall(fire);
    }
    if let Some(on) = plan.job_mut(Step::On, 0) {
        swap::uncall(on);
    }
    let undo = undo::newest(plan);
    let solved = sitting.resolve();
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    if let Some(fire) = plan.job_mut(Step::Fire, 0) {
        // Whoever says so has heard of it.
        (fire.calls, fire.call_at) = (1, Some(now + AGAIN));
    }
    let when = plan.job(Step::On, 0).map_or(now, |job| job.at.max(now));
    let mut shifts = live::shifts(&before, plan);
    shifts.retain(|(step, ..)| !matches!(step, Step::Fire | Step::On));
    let moved = jobs::shift_lines(&shifts).into_iter().filter(|_| solved.is_ok() && !known);
    let text = Text::new("room-unlit").with("setting", Arg::Temperature(setting)).with("when", Arg::Clock(when));
    sitting.answer(text).lines(moved).key("unlit").row([button("room-button-undo", &undo)]);
    if let Err(conflict) = solved {
        jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
}
