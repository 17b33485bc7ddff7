//! What a turn did, for the log: a day can be followed there, and nobody can be found.
//!
//! A room has a name of its own in the log, made anew with each start. Names, words, readings, hours and the platform's numbers stay out.

use crate::room::state::{JobState, LiveJob, Room};
use crate::room::turn::Forget;
use crate::room::{How, RoomId, Say, To, Turn, Urgency};
use std::hash::{BuildHasher, RandomState};
use std::sync::OnceLock;

/// One line of the log.
#[derive(Debug, Clone, PartialEq, Eq)]
enum Line {
    Begun(u32),
    Ended(u32),
    Moved(u32),
    Done(u32, String, u8),
    Skipped(u32, String, u8),
    Open(u32, String, u8),
    Called(&'static str, bool),
    Alarm,
    Forgotten,
}

/// What one turn did.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Story {
    room: RoomId,
    lines: Vec<Line>,
}

impl Story {
    /// What `turn` does to `before`.
    pub(super) fn of(before: &Room, turn: &Turn) -> Self {
        let mut lines = Vec::new();
        if let Some(after) = &turn.room {
            plans(before, after, &mut lines);
        }
        lines.extend(turn.says.iter().filter_map(said));
        lines.extend(matches!(turn.forget, Some(Forget::Room(_) | Forget::Person(_))).then_some(Line::Forgotten));
        Self { room: before.id, lines }
    }

    /// Writes it, once it stands in the book.
    pub(super) fn log(self) {
        let room = alias(self.room);
        for line in self.lines {
            match line {
                Line::Begun(plan) => tracing::info!(room, plan, "a plan begins"),
                Line::Ended(plan) => tracing::info!(room, plan, "a plan is over"),
                Line::Moved(plan) => tracing::info!(room, plan, "dinner moves"),
                Line::Done(plan, step, nth) => tracing::info!(room, plan, step, nth, "done"),
                Line::Skipped(plan, step, nth) => tracing::info!(room, plan, step, nth, "left out"),
                Line::Open(plan, step, nth) => tracing::info!(room, plan, step, nth, "to be done after all"),
                Line::Called(step, private) => tracing::info!(room, step, private, "called"),
                Line::Alarm => tracing::info!(room, "a warning for safety"),
                Line::Forgotten => tracing::info!(room, "forgotten as asked"),
            }
        }
    }
}

/// What became of the plans.
fn plans(before: &Room, after: &Room, lines: &mut Vec<Line>) {
    let (before, after) = (before.plans(), after.plans());
    for old in before.iter().filter(|old| after.iter().all(|new| new.serial != old.serial)) {
        lines.push(Line::Ended(old.serial));
    }
    for new in &after {
        let Some(old) = before.iter().find(|old| old.serial == new.serial) else {
            lines.push(Line::Begun(new.serial));
            continue;
        };
        if old.wish.dinner != new.wish.dinner {
            lines.push(Line::Moved(new.serial));
        }
        for job in &new.jobs {
            let was = old.jobs.iter().find(|old| old.step == job.step && old.nth == job.nth);
            lines.extend(marked(new.serial, was, job));
        }
    }
}

/// A job that stands otherwise than before.
fn marked(plan: u32, was: Option<&LiveJob>, job: &LiveJob) -> Option<Line> {
    let open = |state| matches!(state, JobState::Waiting);
    let was_open = was.is_none_or(|was| open(was.state));
    match job.state {
        JobState::Done { .. } if was_open => Some(Line::Done(plan, job.step.clone(), job.nth)),
        JobState::Skipped { .. } if was_open => Some(Line::Skipped(plan, job.step.clone(), job.nth)),
        JobState::Waiting if !was_open => Some(Line::Open(plan, job.step.clone(), job.nth)),
        _ => None,
    }
}

/// A call for a job, or a warning.
fn said(say: &Say) -> Option<Line> {
    let news = matches!(say.how, How::New | How::Quiet);
    match say.step {
        Some(step) if news => Some(Line::Called(step.name(), matches!(say.to, To::Person(_)))),
        None if news && say.urgency == Urgency::Safety => Some(Line::Alarm),
        _ => None,
    }
}

/// What a room is called in the log of this start.
fn alias(room: RoomId) -> String {
    static CHANCE: OnceLock<RandomState> = OnceLock::new();
    let number = CHANCE.get_or_init(RandomState::new).hash_one(room.0);
    format!("{:06x}", number & 0x00ff_ffff)
}
