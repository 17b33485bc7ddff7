//! Questions about the jobs: "what's my job?", "what's left to do?", "what's next?", "did someone salt it?".
//!
//! Asked of the bot they are always answered; among people where they can only be meant for the plan.

use super::action::Action;
use super::sitting::{button, name};
use super::state::{JobState, LiveJob, LivePlan};
use super::{RoomKind, Sitting, action, birds, board, invites, jobs, plan_words};
use crate::reading;
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use chrono::TimeDelta;

/// Who has just done something, or has something to do so soon, asks for the next job of the plan.
const AT_HAND: TimeDelta = TimeDelta::hours(1);

/// `false`: nothing of the kind is asked.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let now = sitting.now;
    let standing = sitting.room.plan.as_ref().is_some_and(|plan| !birds::is_past(plan, now));
    if !standing || !(addressed || sitting.room.kind == RoomKind::Group) {
        return false;
    }
    let lexicon = sitting.lexicon();
    if sitting.routed() && reading::asks_for_the_oven(text, lexicon) && oven_is_free(sitting) {
        return true;
    }
    // "Show us the plan" is asked of nobody else, once there is one.
    if (addressed || is_in_hand(sitting)) && reading::asks_for_the_plan(text, lexicon) {
        board::repost(sitting);
        return true;
    }
    if let Some(sure) = reading::asks_own_jobs(text, lexicon) {
        return own(sitting, addressed, sure);
    }
    if reading::asks_what_is_left(text, lexicon) {
        board::repost(sitting);
        return true;
    }
    if !addressed && reading::asks_what_is_next(text, lexicon) && (is_busy(sitting) || cooks_today(sitting)) {
        return next(sitting);
    }
    match reading::asks_whether_done(text, lexicon) {
        Some((step, plain)) if addressed || plain => whether(sitting, step, addressed),
        _ => false,
    }
}

/// A guest wants the oven: when the bird is out of it, and who says. `false`: the plan has no such hours ahead.
fn oven_is_free(sitting: &mut Sitting<'_>) -> bool {
    let Some(plan) = &sitting.room.plan else { return false };
    let at = |step: Step| plan.job(step, 0).filter(|job| job.state == JobState::Waiting).map(|job| job.at);
    let (Some(off), Some(carve)) = (at(Step::Pull), at(Step::Carve)) else { return false };
    let text = Text::new("room-oven-free").with("off", Arg::DayClock(off)).with("carve", Arg::Clock(carve));
    sitting.answer(text.with("host", name(sitting, plan.host)));
    true
}

/// "Who's doing what tomorrow?": the jobs of that day, and whose they are. `false`: nothing of the kind is asked.
pub(super) fn on_a_day(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(day) = reading::asks_who_does_what_on(text, sitting.lexicon()) else { return false };
    let told = reading::read_wish(day, &sitting.ground()).0;
    let zone = sitting.zone_or_utc();
    let date = |at: Moment| at.with_timezone(&zone).date_naive();
    let meant = told.dinner_day.or(told.dinner.map(date));
    let Some(plan) = sitting.room.plan.as_ref().filter(|_| addressed || sitting.room.kind == RoomKind::Group) else {
        return false;
    };
    let Some(meant) = meant else { return false };
    // Changes of water and looks at the thermometer go together.
    let mut seen = Vec::new();
    let jobs: Vec<(action::JobRef, LiveJob)> = plan
        .waiting()
        .filter(|job| date(job.at) == meant)
        .filter_map(|job| {
            let step = job.step().filter(|step| *step == Step::Dish || !seen.contains(&(*step, job.owner)))?;
            seen.push((step, job.owner));
            Some((action::JobRef { serial: plan.serial, step, nth: job.nth }, job.clone()))
        })
        .collect();
    let lines: Vec<Text> = jobs.iter().map(|(it, job)| jobs::whose(sitting, *it, job)).collect();
    if lines.is_empty() {
        sitting.answer(Text::new("room-day-free"));
        return true;
    }
    let free = jobs.iter().any(|(_, job)| job.owner.is_none()) && sitting.room.kind == RoomKind::Group;
    let serial = plan_serial(sitting).filter(|_| free);
    let all = serial.map(|serial| button("room-button-jobs", &Action::Jobs(serial)));
    sitting.answer_all(lines).row(all);
    true
}

fn plan_serial(sitting: &Sitting<'_>) -> Option<u32> {
    sitting.room.plan.as_ref().map(|plan| plan.serial)
}

/// What the speaker has taken on. Among people "what do I have to do?" is of the plan only from one who has a job in it.
fn own(sitting: &mut Sitting<'_>, addressed: bool, sure: bool) -> bool {
    let Some(who) = sitting.speaker() else { return false };
    if sitting.room.kind == RoomKind::Private {
        // All of it is theirs.
        board::repost(sitting);
        return true;
    }
    let lines = invites::own_jobs(sitting, who);
    if lines.is_empty() {
        if addressed || sure {
            sitting.notice(Text::new("sharing-out-none"));
        }
        return addressed || sure;
    }
    let mut text = vec![Text::new("sharing-mine").with("name", name(sitting, who))];
    text.extend(lines);
    sitting.notice_all(text);
    true
}

/// Something is still to be done of the plan.
fn is_in_hand(sitting: &Sitting<'_>) -> bool {
    sitting.room.plan.as_ref().is_some_and(|plan| plan.ahead(sitting.now).next().is_some())
}

/// The bird goes on or is eaten within the day: whoever asks what comes next asks for that.
fn cooks_today(sitting: &Sitting<'_>) -> bool {
    const TODAY: TimeDelta = TimeDelta::hours(16);
    let dinner = sitting.room.plan.as_ref().and_then(|plan| plan.wish.dinner);
    dinner.is_some_and(|dinner| dinner > sitting.now && dinner - sitting.now <= TODAY)
}

/// A job was done just now, or one is near.
fn is_busy(sitting: &Sitting<'_>) -> bool {
    let now = sitting.now;
    sitting.room.plan.as_ref().is_some_and(|plan| {
        let near = plan.ahead(now).next().is_some_and(|job| job.at - now <= AT_HAND);
        near || plan.facts.iter().any(|fact| fact.at <= now && now - fact.at <= AT_HAND)
    })
}

/// The next job, and whose it is.
fn next(sitting: &mut Sitting<'_>) -> bool {
    let Some(it) = sitting.room.plan.as_ref().and_then(|plan| {
        let job = plan.ahead(sitting.now).next()?;
        Some(super::action::JobRef { serial: plan.serial, step: job.step()?, nth: job.nth })
    }) else {
        return false;
    };
    jobs::who_has(sitting, it)
}

/// Whether a job is done: by whom and when, or that nobody has said so. What is only taken for done is not said to be.
fn whether(sitting: &mut Sitting<'_>, step: Step, addressed: bool) -> bool {
    let Some(plan) = &sitting.room.plan else { return false };
    let serial = plan.serial;
    let open = |plan: &LivePlan| plan.waiting().find(|job| job.step() == Some(step)).cloned();
    let job = open(plan).or_else(|| plan.jobs.iter().rev().find(|job| job.step() == Some(step)).cloned());
    let Some(job) = job else {
        if addressed {
            sitting.answer(Text::new("room-when-none").with("what", Arg::from(plan_words::step_name(step, 0))));
        }
        return addressed;
    };
    let done = Arg::from(plan_words::step_done(step, job.nth));
    let what = Arg::from(plan_words::step_name(step, job.nth));
    match job.state {
        JobState::Done { by, at } => {
            let text = match by.filter(|_| sitting.room.kind == RoomKind::Group) {
                Some(by) => Text::new("room-done-by").with("name", name(sitting, by)),
                None => Text::new("room-done"),
            };
            sitting.answer(text.with("what", done).with("at", Arg::DayClock(at)));
        }
        JobState::Skipped { .. } => {
            sitting.answer(Text::new("room-skipped").with("what", what));
        }
        JobState::Waiting => {
            let it = super::action::JobRef { serial, step, nth: job.nth };
            let whose = jobs::whose(sitting, it, &job);
            let free = job.owner.is_none() && sitting.room.kind == RoomKind::Group;
            let take = free.then(|| button("room-button-take", &Action::Take(it)));
            sitting.answer(Text::new("room-unsaid")).lines([whose]).row(take);
        }
    }
    true
}
