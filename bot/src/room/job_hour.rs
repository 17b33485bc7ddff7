//! The hour of a job asked for: "when do I salt it?", and whether another would do: "can I salt it tomorrow morning instead?".

use super::action::JobRef;
use super::state::{JobState, LiveJob};
use super::{RoomKind, Sitting, jobs, plan_words};
use crate::reading;
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use chrono::TimeDelta;

/// A job with less room than this has but one hour.
const ROOM: TimeDelta = TimeDelta::minutes(15);

/// Jobs that nothing but a bird has.
const OF_A_BIRD: [Step; 5] = [Step::Thaw, Step::Salt, Step::Temper, Step::Fire, Step::Carve];

/// The hour of the job in the plan in hand, or whether the one told fits it. `false`: no such job is asked for, or none is ahead.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    if sitting.room.plan.is_none() || !(addressed || sitting.room.kind == RoomKind::Group) {
        return false;
    }
    another(sitting, text, addressed) || when(sitting, text, addressed)
}

/// "When do I salt it?"
fn when(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let asked = reading::asks_when_step(text, sitting.lexicon());
    if !addressed && !is_of_the_plan(sitting, text, &asked) {
        return false;
    }
    let Some((it, job)) = asked.iter().find_map(|step| open(sitting, *step)) else { return never(sitting, &asked) };
    let text = Text::new("room-when-step")
        .with("what", Arg::from(plan_words::step_name(it.step, it.nth)))
        .with("when", Arg::DayClock(job.at));
    sitting.answer(text);
    true
}

/// Among people: it is asked with its mark, the bird is named, or the job is one that nothing else has.
fn is_of_the_plan(sitting: &Sitting<'_>, text: &str, asked: &[Step]) -> bool {
    text.contains(['?', '¿'])
        || asked.iter().any(|step| OF_A_BIRD.contains(step))
        || reading::names_a_bird(text, sitting.lexicon())
}

/// "Can I salt it tomorrow morning instead?": the hours between which the plan works.
fn another(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some((step, at)) = reading::asks_another_hour(text, &sitting.ground()) else { return false };
    if !addressed && !is_of_the_plan(sitting, text, &[step]) {
        return false;
    }
    let Some((it, job)) = open(sitting, step) else { return false };
    let (from, to) = (job.earliest.max(sitting.now), job.latest);
    let id = if to - from < ROOM {
        "room-hour-only"
    } else if at < from {
        "room-hour-early"
    } else if at > to {
        "room-hour-late"
    } else {
        "room-hour-fits"
    };
    let clock = |at: Moment| Arg::DayClock(at);
    let text = Text::new(id)
        .with("what", Arg::from(plan_words::step_name(it.step, it.nth)))
        .with("asked", clock(at))
        .with("planned", clock(job.at));
    sitting.answer(text.with("from", clock(from)).with("to", clock(to)));
    true
}

/// The next one of that job that waits.
fn open(sitting: &Sitting<'_>, step: Step) -> Option<(JobRef, LiveJob)> {
    let it = jobs::by_step(sitting, step, None)?;
    let job = sitting.room.plan.as_ref()?.job(it.step, it.nth)?;
    (job.state == JobState::Waiting).then(|| (it, job.clone()))
}

/// A job asked for that this plan does not have: salting where nothing is salted. `false`: it was there and is over.
fn never(sitting: &mut Sitting<'_>, asked: &[Step]) -> bool {
    let Some(plan) = &sitting.room.plan else { return false };
    let Some(step) = asked.first().copied().filter(|_| asked.iter().all(|step| plan.job(*step, 0).is_none())) else {
        return false;
    };
    sitting.answer(Text::new("room-when-none").with("what", Arg::from(plan_words::step_name(step, 0))));
    true
}
