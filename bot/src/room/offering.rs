//! Jobs nobody has: offered together the evening before, and again when they come near.
//!
//! One message for all of them, with a button each. A job someone takes is gone from it. Changes of water and looks are one job: they
//! are taken together.

use super::action::{Action, JobRef};
use super::live::runs_by_itself;
use super::sitting::labelled;
use super::state::{JobState, LiveJob, LivePlan, Room};
use super::turn::{Bell, BellKind, Button, How, Urgency};
use super::{RoomKind, Sitting, jobs, plan_words};
use crate::words::{Arg, Text};
use carvetime_core::plan::clock::at_hour;
use carvetime_core::plan::{Moment, Step};
use chrono::{Days, TimeDelta, Timelike};
use chrono_tz::Tz;

/// The evening hour at which the next day's free jobs are offered, when people look at their phones and are not yet in bed.
const EVENING: u32 = 18;
/// How long before its time a free job is offered again.
const NEAR: TimeDelta = TimeDelta::hours(2);
/// Nobody is asked for a free job outside these hours; a job of the early morning is offered late the evening before.
const AWAKE: std::ops::Range<u32> = 8..21;
/// Jobs within this time of the nearest go into the same message.
const TOGETHER: TimeDelta = TimeDelta::hours(5);
/// A job handed back when it was due is still to be done for so long.
const HANDED_BACK: TimeDelta = TimeDelta::minutes(45);
/// As many as one message lists.
const MOST: usize = 8;
/// The message's key.
pub(super) const KEY: &str = "offer";

/// The bells for free jobs still to be offered.
pub(super) fn bells(room: &Room, plan: &LivePlan, now: Moment) -> Vec<Bell> {
    let Some(zone) = room.taste.zone().filter(|_| room.kind == RoomKind::Group && room.members.len() > 1) else {
        return Vec::new();
    };
    let bell = |job: &LiveJob| {
        let at = due(job, zone).into_iter().skip(usize::from(job.offered)).find(|at| *at > now)?;
        Some(Bell { at, kind: BellKind::Offer { step: job.step.clone(), nth: job.nth } })
    };
    plan.jobs.iter().filter(|job| is_free(plan, job)).filter_map(bell).collect()
}

/// When a job is offered: the evening before, and near its time.
fn due(job: &LiveJob, zone: Tz) -> [Moment; 2] {
    let evening = |hour: u32, minute: u32| {
        let day = job.at.with_timezone(&zone).date_naive().checked_sub_days(Days::new(1));
        day.map_or(job.at - NEAR, |day| at_hour(zone, day, hour, minute))
    };
    let near = job.at - NEAR;
    let awake = AWAKE.contains(&near.with_timezone(&zone).hour());
    [evening(EVENING, 0), if awake { near } else { evening(AWAKE.end - 1, 30) }]
}

/// Ahead, and nobody has it. Leftovers are offered once they are in the fridge, to whoever takes them home.
fn is_free(plan: &LivePlan, job: &LiveJob) -> bool {
    let alone = job.step().is_some_and(|step| !runs_by_itself(step) && step != Step::Leftovers);
    let free = job.state == JobState::Waiting && job.owner.is_none() && job.calls == 0;
    alone && free && stands_for_series(plan, job) && !is_under_way(plan, job)
}

/// Not a further one of a series: fourteen changes of water are offered as one job.
fn stands_for_series(plan: &LivePlan, job: &LiveJob) -> bool {
    let first = plan.waiting().find(|other| other.step == job.step).map(|first| first.nth);
    !is_series(job) || first == Some(job.nth)
}

/// One of a series that was called for already goes with what is going on.
fn is_under_way(plan: &LivePlan, job: &LiveJob) -> bool {
    is_series(job) && plan.jobs.iter().any(|other| other.step == job.step && other.calls > 0)
}

/// What is taken with all that follow of its kind.
fn is_series(job: &LiveJob) -> bool {
    matches!(job.step(), Some(Step::Water | Step::Check))
}

/// Bells rang for free jobs.
pub(super) fn rang(sitting: &mut Sitting<'_>) {
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let tomorrow = now.with_timezone(&zone).date_naive().checked_add_days(Days::new(1));
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let (mut any, mut news) = (false, false);
    let free: Vec<usize> =
        plan.jobs.iter().enumerate().filter(|(_, job)| is_free(plan, job) && job.at > now).map(|(at, _)| at).collect();
    for at in free {
        let Some(job) = plan.jobs.get_mut(at) else { continue };
        let [ahead, near] = due(job, zone);
        let soon = job.offered < 2 && (near <= now || job.at - now <= TOGETHER);
        let day = Some(job.at.with_timezone(&zone).date_naive()) <= tomorrow;
        let first = job.offered < 1;
        if soon {
            job.offered = 2;
        } else if first && (ahead <= now || day) {
            job.offered = 1;
        } else {
            continue;
        }
        any = true;
        news |= first;
    }
    if any {
        show(sitting, How::New, if news { "sharing-offer" } else { "sharing-offer-again" });
    }
}

/// A job has been taken or handed back: the offer that stands shows what is left.
pub(super) fn refresh(sitting: &mut Sitting<'_>, it: JobRef) {
    let stands =
        sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)).is_some_and(|job| job.offered > 0);
    if stands {
        show(sitting, How::Edit, "sharing-offer");
    }
}

/// "I can", in reply to what is offered: the one job there is, else the list to pick from.
pub(super) fn pick(sitting: &mut Sitting<'_>) {
    let Some(plan) = &sitting.room.plan else { return };
    let serial = plan.serial;
    let free: Vec<JobRef> =
        offered(plan).filter_map(|job| Some(JobRef { serial, step: job.step()?, nth: job.nth })).collect();
    match free.as_slice() {
        [one] => jobs::take(sitting, *one),
        _ => jobs::list(sitting, serial),
    }
}

/// What was offered and nobody has, a series once.
fn offered(plan: &LivePlan) -> impl Iterator<Item = &LiveJob> {
    plan.waiting().filter(|job| job.owner.is_none() && job.offered > 0 && stands_for_series(plan, job))
}

fn show(sitting: &mut Sitting<'_>, how: How, head: &'static str) {
    let Some(plan) = &sitting.room.plan else { return };
    let serial = plan.serial;
    // What is due has a call of its own; one that was handed back then is shown until someone has it.
    let now = sitting.now;
    let listed = |job: &&LiveJob| match how {
        How::Edit => job.calls == 0 || now - job.at <= HANDED_BACK,
        _ => job.calls == 0 && job.at > now,
    };
    let free: Vec<&LiveJob> = offered(plan).filter(listed).take(MOST).collect();
    let line = |job: &&LiveJob| {
        let what = Arg::from(plan_words::step_name(job.step()?, job.nth));
        let changes = plan.waiting().filter(|other| other.step() == Some(Step::Water)).count();
        let text = match i64::try_from(changes) {
            Ok(changes) if job.step() == Some(Step::Water) && changes > 1 => {
                Text::new("sharing-offer-series").with("times", Arg::Count(changes))
            }
            _ => Text::new("sharing-offer-job"),
        };
        Some(text.with("when", Arg::DayClock(job.at)).with("what", what))
    };
    let take = |job: &&LiveJob| {
        let step = job.step()?;
        let label = Text::new("sharing-offer-take").with("what", Arg::from(plan_words::step_name(step, job.nth)));
        Some(labelled(label, &Action::Take(JobRef { serial, step, nth: job.nth })))
    };
    let lines: Vec<Text> = free.iter().filter_map(line).collect();
    let buttons: Vec<Button> = free.iter().filter_map(take).collect();
    // Others may be free that were not offered here.
    let others = plan.jobs.iter().any(|job| is_free(plan, job) && job.at > now);
    let none = if others { "sharing-offer-these" } else { "sharing-offer-none" };
    let head = Text::new(if lines.is_empty() { none } else { head });
    let say = sitting.answer(head).key(KEY).how(how).urgency(Urgency::Due);
    say.lines(lines);
    for button in buttons {
        say.row([button]);
    }
}
