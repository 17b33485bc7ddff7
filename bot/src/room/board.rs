//! The board: one message that shows where the dinner stands, edited in place.

use super::action::{Action, JobRef};
use super::live::runs_by_itself;
use super::sitting::button;
use super::state::{JobState, LiveJob, LivePlan};
use super::turn::{Button, How, Say, To, Urgency};
use super::{RoomKind, Sitting, alarms, at_rest, birds, forecast, no_heat, plan_words, proposal, spoiled};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use chrono::TimeDelta;

/// How many jobs ahead the board lists.
const AHEAD: usize = 8;

/// A job this close can be marked done from the board.
const CLOSE: TimeDelta = TimeDelta::hours(12);

/// The board, new at the bottom of the chat.
pub(super) fn repost(sitting: &mut Sitting<'_>) {
    // Asked from afar, it is told there, and the one in the group stays where it is.
    if sitting.routed() {
        let lines = sitting.room.plan.as_ref().map(|plan| text(sitting, plan));
        sitting.answer_all(lines.unwrap_or_default());
        return;
    }
    show(sitting, How::Quiet);
}

/// The board, changed where it stands.
pub(super) fn refresh(sitting: &mut Sitting<'_>) {
    show(sitting, How::Edit);
}

fn show(sitting: &mut Sitting<'_>, how: How) {
    let Some(plan) = &sitting.room.plan else { return };
    let lines = text(sitting, plan);
    let rows = buttons(sitting, plan);
    let mut say = Say::of(To::Room(sitting.room.id), lines);
    say.buttons = rows;
    // One message is pinned: the board of the bird that was planned first.
    say.pin = how == How::Quiet && sitting.room.kind == RoomKind::Group && birds::is_first(sitting);
    say.sole = how == How::Quiet;
    // A board someone asked for is an answer; one that only follows what happened can wait.
    let urgency = if how == How::Quiet { Urgency::Answer } else { Urgency::Board };
    say.key("board").how(how).urgency(urgency);
    sitting.says.retain(|other| other.key.as_deref() != Some("board"));
    sitting.says.push(say);
}

fn text(sitting: &Sitting<'_>, plan: &LivePlan) -> Vec<Text> {
    let mut lines = Vec::new();
    if let Some(order) = plan.order(sitting.zone_or_utc()) {
        lines.push(Text::new("room-board-dinner").with("when", Arg::DayClock(order.dinner)));
        lines.push(
            Text::new("room-board-bird")
                .with("bird", Arg::from(proposal::birds_text(&order)))
                .with("heat", Arg::from(proposal::heat_text(&order.heat))),
        );
    }
    // Eaten, it fitted somehow.
    if plan.clash.is_some() && plan.wish.dinner.is_none_or(|dinner| dinner > sitting.now) {
        lines.push(Text::new("room-board-clash"));
    }
    if let Some(since) = no_heat::since(plan, sitting.now) {
        lines.push(Text::new("room-board-no-heat").with("since", Arg::Clock(since)));
    }
    let ahead: Vec<&LiveJob> = ahead(sitting, plan);
    let steps: Vec<Option<Step>> = ahead.iter().map(|job| job.step()).collect();
    let shown = plan_words::shown(&steps, AHEAD);
    for place in &shown {
        lines.extend(ahead.get(*place).and_then(|job| line(sitting, job, *place == 0)));
    }
    if ahead.len() > AHEAD {
        let count = Arg::Count((ahead.len() - AHEAD) as i64);
        // What is told of the bird is known to come; of a dish nobody would know that it stands there.
        let dishes = (0..).zip(&ahead).filter(|(place, _)| !shown.contains(place)).filter_map(|(_, job)| {
            job.step().filter(|step| *step == Step::Dish).map(|step| plan_words::step_name(step, job.nth))
        });
        let dishes: Vec<Text> = dishes.collect();
        lines.push(if dishes.is_empty() {
            Text::new("room-board-more").with("count", count)
        } else {
            Text::new("room-board-more-dishes").with("count", count).with("dishes", Arg::List(dishes))
        });
    }
    // What is to be thrown away is not done at any hour.
    let thrown = alarms::stood_too_long(plan);
    let out = no_heat::since(plan, sitting.now).is_some();
    let rests = at_rest::is(plan, sitting.zone_or_utc(), sitting.now);
    let over = thrown || out || rests || plan.job(Step::Pull, 0).is_none_or(|job| job.state != JobState::Waiting);
    if let (Some(from), Some(to), false) = (plan.ready_from, plan.ready_to, over) {
        // Only today's hours need no day.
        let zone = sitting.zone_or_utc();
        let clock = |at, beside| forecast::clock(at, beside, zone);
        // How much time is left: not while the heat is out, and what doesn't fit has a line of its own.
        let fails = alarms::loses_heat(plan) || plan.down_since.is_some();
        let order = plan.order(zone).filter(|_| !fails && plan.clash.is_none());
        let pull = plan.job(Step::Pull, 0).map_or(to, |job| job.at);
        let (standing, span) = order.map_or(("no", TimeDelta::zero()), |order| forecast::spare(&order, pull, to));
        let line = Text::new("room-board-ready").with("from", clock(from, sitting.now)).with("to", clock(to, from));
        lines.push(line.with("standing", Arg::Choice(standing)).with("span", Arg::Span(span)));
    }
    let assumed: Vec<Text> =
        plan.assumed(sitting.now).filter_map(|job| Some(plan_words::step_done(job.step()?, job.nth))).collect();
    if !assumed.is_empty() {
        lines.push(Text::new("room-board-assumed").with("jobs", Arg::List(assumed)));
    }
    let done: Vec<Text> = done(sitting, plan);
    if !done.is_empty() {
        lines.push(Text::new("room-board-done").with("jobs", Arg::List(done)));
    }
    let gone = spoiled::is_gone(plan);
    if ahead.is_empty() || gone {
        lines.push(Text::new(if gone { "cook-gone" } else { "room-board-all-done" }));
    }
    lines.extend(birds::beside_line(sitting));
    lines
}

/// Jobs ahead, the many of a kind folded into their next one.
fn ahead<'p>(sitting: &Sitting<'_>, plan: &'p LivePlan) -> Vec<&'p LiveJob> {
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let mut seen = Vec::new();
    let rests = at_rest::is(plan, zone, now);
    plan.ahead(now)
        .filter(|_| !rests)
        .filter(|job| {
            let repeats = matches!(job.step(), Some(Step::Water | Step::Check));
            let first = !seen.contains(&job.step.as_str());
            seen.push(job.step.as_str());
            !repeats || first
        })
        .collect()
}

fn line(sitting: &Sitting<'_>, job: &LiveJob, next: bool) -> Option<Text> {
    let who = match job.owner {
        Some(owner) => Text::new("room-board-who").with("name", super::sitting::short_name(sitting, owner)),
        None => Text::new("room-board-nobody"),
    };
    let late = job.at <= sitting.now;
    Some(
        Text::new(if next || late { "room-board-next" } else { "room-board-then" })
            .with("when", Arg::DayClock(job.at))
            .with("what", Arg::from(plan_words::step_name(job.step()?, job.nth)))
            .with("late", Arg::Choice(if late { "yes" } else { "no" }))
            .with("who", Arg::from(who)),
    )
}

fn done(sitting: &Sitting<'_>, plan: &LivePlan) -> Vec<Text> {
    plan.jobs
        .iter()
        .filter_map(|job| {
            let step =
                job.step().filter(|step| !runs_by_itself(*step) && !matches!(step, Step::Water | Step::Check))?;
            let what = Arg::from(plan_words::step_done(step, job.nth));
            match job.state {
                JobState::Done { by: Some(by), .. } if sitting.room.kind == RoomKind::Group => Some(
                    Text::new("room-board-done-by")
                        .with("what", what)
                        .with("name", super::sitting::short_name(sitting, by)),
                ),
                JobState::Done { .. } => Some(Text::new("room-board-done-one").with("what", what)),
                // What ended because it was thrown away is said below.
                JobState::Skipped { by: None, .. } if spoiled::is_gone(plan) => None,
                JobState::Skipped { .. } => {
                    Some(Text::new("room-board-skipped").with("what", Arg::from(plan_words::step_name(step, job.nth))))
                }
                JobState::Waiting => None,
            }
        })
        .collect()
}

fn buttons(sitting: &Sitting<'_>, plan: &LivePlan) -> Vec<Vec<Button>> {
    let mut rows = Vec::new();
    if let Some((step, job)) = ahead(sitting, plan).into_iter().find_map(|job| Some((job.step()?, job))) {
        let it = JobRef { serial: plan.serial, step, nth: job.nth };
        let mut row = Vec::new();
        if is_close(job, sitting.now) {
            row.push(button("room-button-done", &Action::Done(it)));
        }
        if sitting.room.kind == RoomKind::Group && job.owner.is_none() {
            row.push(button("room-button-take", &Action::Take(it)));
        }
        if !row.is_empty() {
            rows.push(row);
        }
    }
    // A dinner that is over has no jobs to share and no times to ask about.
    if !ahead(sitting, plan).is_empty() {
        let group = sitting.room.kind == RoomKind::Group;
        let jobs = group.then(|| button("room-button-jobs", &Action::Jobs(plan.serial)));
        rows.push(jobs.into_iter().chain([button("room-button-why", &Action::Why(plan.serial))]).collect());
    }
    rows
}

fn is_close(job: &LiveJob, now: Moment) -> bool {
    job.at - now <= CLOSE
}
