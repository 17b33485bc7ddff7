//! "Is it still good?", "keep it or toss it?", hours after dinner, of a bird nobody said came off: by the hours it was planned for, and that
//! this is all that is known.

use super::turn::Urgency;
use super::{Sitting, done_yet, hot_day, kept_hot, spoiled};
use crate::reading;
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;
use chrono::TimeDelta;

/// Read since, it is still being cooked and measured.
const JUST_READ: TimeDelta = TimeDelta::hours(1);
/// Never read done, it may be late: so long after its dinner it is taken for eaten.
const EATEN: TimeDelta = TimeDelta::hours(1);
/// Later nobody asks of that dinner.
const LATEST: TimeDelta = TimeDelta::days(4);

/// `false`: something else is asked, it was said to be off, or its dinner is still to come.
pub(super) fn asked(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let (now, lexicon) = (sitting.now, sitting.lexicon());
    // "It's 110 now, still ok?" is of the number as well.
    let numbers = text.contains(|c: char| c.is_ascii_digit());
    let asks = done_yet::asks_to_eat(sitting, text) || reading::asks_if_still_good(text, lexicon);
    // "Are the potatoes still good?"
    let asks = asks && spoiled::names_no_other(sitting, text);
    let read = done_yet::is_read(sitting);
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| asks && !numbers && !plan.is_off()) else { return false };
    let Some(dinner) = plan.wish.dinner.filter(|_| plan.on_since(now).is_some() && !spoiled::is_gone(plan)) else {
        return false;
    };
    let looked = plan.counted().iter().map(|reading| reading.at).max();
    let after = if read { TimeDelta::zero() } else { EATEN };
    if looked.is_some_and(|at| now - at < JUST_READ) || !(dinner + after..dinner + LATEST).contains(&now) {
        return false;
    }
    let planned = plan.job(Step::Pull, 0).map_or(dinner, |job| job.at.min(dinner));
    // Read done and never again, it was off by then at the latest as far as anyone knows.
    let off = looked.filter(|_| read).map_or(planned, |at| at.max(planned).min(dinner));
    let by = off + hot_day::most(plan);
    let text = Text::new(if by < now { "room-never-off-over" } else { "room-never-off" })
        .with("when", Arg::DayClock(off))
        .with("by", Arg::Clock(by))
        .with("hot", Arg::Temperature(kept_hot::holds()));
    let unread = (!read).then(|| Text::new("room-never-off-unread").with("target", Arg::Temperature(super::target())));
    sitting.answer(text).lines(unread).urgency(Urgency::Safety);
    true
}
