//! The evening before the bird goes on, for one who cooks alone: what tomorrow holds and how early it begins, said once.
//!
//! In a group the free jobs are offered then ([`super::offering`]) and the board is pinned.

use super::live::runs_by_itself;
use super::state::{JobState, LiveJob, LivePlan, Room};
use super::turn::{Bell, BellKind, Urgency};
use super::{RoomKind, Sitting, plan_words};
use crate::words::{Arg, Text};
use carvetime_core::plan::clock::{at_hour, date};
use carvetime_core::plan::{Moment, Step};
use chrono::{Days, TimeDelta, Timelike};
use chrono_tz::Tz;

/// The bell's name.
const BELL: &str = "eve";
/// The evening hour: after work, and before anyone who rises early is in bed.
const HOUR: u32 = 19;
/// A plan made or an evening missed by less than this has just been read, or can still be of use.
const NEAR: TimeDelta = TimeDelta::hours(3);
/// A phone may be silent at an earlier hour than this: an alarm is worth setting.
const EARLY: u32 = 7;
/// As many jobs as are named.
const MOST: usize = 8;

/// The bell, if that evening is still to come.
pub(super) fn bell(room: &Room, plan: &LivePlan, now: Moment) -> Option<Bell> {
    let at = at(room, plan).filter(|at| *at > now - NEAR)?;
    Some(Bell { at, kind: BellKind::Note { name: BELL.into() } })
}

fn at(room: &Room, plan: &LivePlan) -> Option<Moment> {
    let zone = room.taste.zone().filter(|_| room.kind == RoomKind::Private && !plan.eve_told)?;
    let on = plan.job(Step::On, 0)?.at;
    Some(at_hour(zone, date(zone, on).checked_sub_days(Days::new(1))?, HOUR, 0))
}

/// A plan has begun: one that was made that evening, or later, has just been read.
pub(super) fn begin(sitting: &mut Sitting<'_>) {
    let now = sitting.now;
    let Some(plan) = &sitting.room.plan else { return };
    let told = at(&sitting.room, plan).is_some_and(|at| at < now + NEAR);
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.eve_told = told;
    }
}

/// The bell rang.
pub(super) fn rang(sitting: &mut Sitting<'_>, kind: &BellKind) {
    if !matches!(kind, BellKind::Note { name } if name == BELL) {
        return;
    }
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| !plan.eve_told) else { return };
    plan.eve_told = true;
    let Some(on) = plan.job(Step::On, 0).map(|job| job.at).filter(|on| *on > now) else { return };
    let Some(end) = date(zone, on).checked_add_days(Days::new(1)).map(|day| at_hour(zone, day, 0, 0)) else { return };
    let ahead = |job: &&LiveJob| job.state == JobState::Waiting && job.at > now && job.at < end && is_worth_it(job);
    let mut jobs: Vec<&LiveJob> = plan.jobs.iter().filter(ahead).collect();
    jobs.sort_by_key(|job| job.at);
    let Some(first) = jobs.first() else { return };
    let mut lines: Vec<Text> = jobs.iter().filter_map(|job| line(job, on, zone)).take(MOST).collect();
    if first.at.with_timezone(&zone).hour() < EARLY {
        lines.push(Text::new("room-eve-early").with("at", Arg::Clock(first.at)));
    }
    sitting.answer(Text::new("room-eve")).urgency(Urgency::Due).lines(lines);
}

/// Has an hour one arranges the day by: looks, water and what follows the meal come by themselves.
fn is_worth_it(job: &LiveJob) -> bool {
    let Some(step) = job.step() else { return false };
    step == Step::Serve
        || !runs_by_itself(step)
            && !matches!(step, Step::Check | Step::Chill | Step::Leftovers)
            && (step != Step::Water || job.nth == 0)
}

fn line(job: &LiveJob, on: Moment, zone: Tz) -> Option<Text> {
    let tomorrow = date(zone, job.at) == date(zone, on);
    let when = if tomorrow { Arg::Clock(job.at) } else { Arg::DayClock(job.at) };
    let what = Arg::from(plan_words::step_name(job.step()?, job.nth));
    Some(Text::new("room-eve-job").with("when", when).with("what", what))
}
