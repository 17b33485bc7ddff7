//! What people say to each other of other things: "yes, already taken out" behind "has the dog been out?" marks no job.
//!
//! Owns the memory of the last such question. The answer to it is heard as nothing; where a job is due that it would fit, it is asked.

use super::action::Action;
use super::sitting::button;
use super::state::Aside;
use super::{RoomKind, Sitting, jobs, plan_words};
use crate::reading::{self, ReportKind};
use crate::words::{Arg, Text};
use chrono::TimeDelta;

/// An answer comes within this time.
const ANSWERED_WITHIN: TimeDelta = TimeDelta::minutes(5);

/// Remembers a question of other things, and hears the answer to one. `true`: it was an answer, and means no job. `meant`: it was said to
/// the bot, or of a message of its own.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, meant: bool) -> bool {
    let Some(who) = sitting.speaker().filter(|_| sitting.room.kind == RoomKind::Group && !meant) else { return false };
    if sitting.room.plan.is_none() {
        return false;
    }
    let (now, lexicon) = (sitting.now, sitting.lexicon());
    let members = sitting.room.members.clone();
    let names: Vec<String> = members.into_iter().map(|member| sitting.name_of(member)).collect();
    if reading::asks_of_other_things(text, &names, lexicon) {
        sitting.room.aside = Some(Aside { by: who, at: now });
        return false;
    }
    let open = |aside: &Aside| aside.by != who && now - aside.at <= ANSWERED_WITHIN;
    if !sitting.room.aside.as_ref().is_some_and(open) || reading::names_the_bird(text, lexicon) {
        return false;
    }
    let Some(report) = reading::read_report(text, lexicon) else { return false };
    sitting.room.aside = None;
    // Just then the bird's own job falls due: which was meant is not for guessing.
    let due = jobs::due_now(sitting).filter(|it| {
        let fits = report.step.is_none() || [report.step, report.or].into_iter().flatten().any(|step| step == it.step);
        fits && report.kind == ReportKind::Done
    });
    if let Some(it) = due {
        let what = Arg::from(plan_words::step_name(it.step, it.nth));
        sitting
            .answer(Text::new("room-aside-ask").with("what", what))
            .row([button("room-button-done", &Action::Done(it))]);
    }
    true
}
