//! Dinner moves: `/move 6 pm`, `/move +45 min`.
//!
//! What costs nothing is done at once and can be taken back; the rest is asked first (`late.rs`).

use super::sitting::button;
use super::{Sitting, board, jobs, late, live, may, planning, proposal, spoiled, undo, wanted};
use crate::reading;
use crate::words::{Arg, Text};
use carvetime_core::plan::Moment;

/// `/move` with words.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) {
    let Some(plan) = &sitting.room.plan else {
        let drafted = sitting.speaker().is_some_and(|who| planning::moved(sitting, who, text));
        if !drafted {
            sitting.answer(Text::new("room-no-plan"));
        }
        return;
    };
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let Some(dinner) = plan.wish.dinner else { return };
    if spoiled::says_gone(sitting) {
        return;
    }
    if text.trim().is_empty() {
        sitting.answer(Text::new("room-move-how").with("dinner", Arg::DayClock(dinner)));
        return;
    }
    match target(sitting, text, dinner) {
        Some(to) if to <= sitting.now => {
            sitting.answer(
                Text::new("room-move-past")
                    .with("when", Arg::DayClock(to))
                    .with("now", Arg::DayClock(sitting.now))
                    .with("dinner", Arg::DayClock(dinner)),
            );
        }
        Some(to) => settled(sitting, to, dinner),
        None => {
            sitting.answer(
                Text::new("room-move-unread")
                    .with("text", Arg::Verbatim(clip(text)))
                    .with("dinner", Arg::DayClock(dinner)),
            );
        }
    }
}

/// Whoever may decide says so: at once where it costs nothing, else asked first.
pub(super) fn settled(sitting: &mut Sitting<'_>, to: Moment, dinner: Moment) {
    if to == dinner {
        return already(sitting, to);
    }
    match late::outlook(sitting, to) {
        Some(outlook) if !outlook.is_free() => late::ask_first(sitting, to, dinner, &outlook),
        _ => to_then(sitting, to),
    }
}

fn target(sitting: &Sitting<'_>, text: &str, dinner: Moment) -> Option<Moment> {
    reading::read_shift(text, dinner, &sitting.table_ground())?.applied(dinner)
}

/// Dinner at that hour from now on, whatever it costs.
pub(super) fn to_then(sitting: &mut Sitting<'_>, to: Moment) {
    if sitting.room.plan.as_ref().is_some_and(|plan| plan.wish.dinner == Some(to)) {
        return already(sitting, to);
    }
    let (light, now, by) = (sitting.light(), sitting.now, sitting.speaker());
    let asked = late::was_asked(sitting) || wanted::is_asked(sitting, to);
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let mut moved = plan.clone();
    moved.wish.dinner = Some(to);
    match moved.solve(&light) {
        Some(Ok(schedule)) => {
            plan.remember("moved", None, by, now);
            plan.wish.dinner = Some(to);
            let before = plan.jobs.clone();
            plan.adopt(&schedule, now);
            let shifts = live::shifts(&before, plan);
            let undo = undo::newest(plan);
            // The question above has said it.
            let lines = proposal::cautions(&schedule).into_iter().chain(jobs::shift_lines(&shifts));
            let lines: Vec<Text> = lines.filter(|_| !asked).collect();
            let say = sitting.answer(Text::new("room-moved").with("when", Arg::DayClock(to))).lines(lines);
            say.key("moved").row([button("room-button-undo", &undo)]);
            board::refresh(sitting);
        }
        Some(Err(conflict)) => {
            // It could be done when it was offered.
            let dinner = plan.wish.dinner.unwrap_or(to);
            late::ask_first(sitting, to, dinner, &late::Outlook::Clash(Box::new(conflict)));
        }
        None => {}
    }
}

/// Dinner is at that hour as it is: a second press, or two people at once.
pub(super) fn already(sitting: &mut Sitting<'_>, at: Moment) {
    let newest = sitting.room.plan.as_ref().and_then(|plan| plan.history.last());
    let other = newest.filter(|change| change.name == "moved").and_then(|change| change.by);
    let text = match other.filter(|by| Some(*by) != sitting.speaker()) {
        Some(by) => Text::new("room-move-already-by").with("name", super::sitting::name(sitting, by)),
        None => Text::new("room-move-already"),
    };
    sitting.notice(text.with("when", Arg::DayClock(at)));
}

/// A quotation short enough for an answer.
pub(super) fn clip(text: &str) -> String {
    const LONGEST: usize = 40;
    let text = text.trim();
    if text.chars().count() <= LONGEST {
        return text.to_owned();
    }
    text.chars().take(LONGEST).chain(['…']).collect()
}
