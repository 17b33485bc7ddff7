//! "The guests come 40 min late", "Aunt Lu is late, 6 pm": what that would mean, and the choice.
//!
//! Anyone may say it; nothing moves until the host or an administrator has chosen.

use super::action::Action;
use super::sitting::{button, labelled, name};
use super::turn::{How, Say, To};
use super::{Sitting, What, jobs, live, may, moves, proposal};
use crate::reading::{self, fold};
use crate::words::{Arg, Text};
use carvetime_core::plan::Moment;

/// The message's key.
const KEY: &str = "late";
/// Longer texts tell a story.
const LONGEST: usize = 80;
/// As many words as a way to say "late" has.
const MOST_WORDS: usize = 3;

/// `false`: the words are of nobody who is late.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some((serial, host, dinner)) =
        sitting.room.plan.as_ref().and_then(|plan| Some((plan.serial, plan.host, plan.wish.dinner?)))
    else {
        return false;
    };
    if text.chars().count() > LONGEST || dinner <= sitting.now || !is_late(sitting, text) {
        return false;
    }
    let shift = reading::read_shift(text, dinner, &sitting.table_ground());
    let Some(to) = shift.and_then(|shift| shift.applied(dinner)).filter(|to| *to > dinner) else { return false };
    let (lines, works) = outlook(sitting, to);
    let others = (!may::steer(sitting)).then(|| Text::new("room-late-host").with("name", name(sitting, host)));
    let minute = |moment: Moment| moment.timestamp().div_euclid(60);
    let say = sitting.answer(Text::new("room-late").with("when", Arg::DayClock(to)).with("dinner", Arg::Clock(dinner)));
    say.key(KEY).lines(lines).lines(others);
    if works {
        say.row([
            labelled(Text::new("cook-button-dinner").with("at", Arg::Clock(to)), &Action::Dinner(serial, minute(to))),
            button("room-button-late-keep", &Action::Stay(serial, minute(dinner))),
        ]);
    }
    true
}

/// `Leave it`: dinner stays, if it is still where it was.
pub(super) fn stay(sitting: &mut Sitting<'_>, serial: u32, minute: i64) {
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let Some(dinner) =
        sitting.room.plan.as_ref().filter(|plan| plan.serial == serial).and_then(|plan| plan.wish.dinner)
    else {
        return sitting.notice(Text::new("room-stale"));
    };
    if dinner.timestamp().div_euclid(60) != minute {
        return moves::already(sitting, dinner);
    }
    sitting.answer(Text::new("room-late-kept").with("when", Arg::DayClock(dinner))).key(KEY).how(How::Edit);
}

/// The choice has been made: its buttons go.
pub(super) fn close(sitting: &mut Sitting<'_>) {
    if matches!(&sitting.heard.what, What::Pressed { on: Some(on), .. } if on == KEY) {
        let room = To::Room(sitting.room.id);
        sitting.say(Say::of(room, Vec::new())).key(KEY).how(How::Close);
    }
}

/// What dinner at that hour would cost and move, and whether it can be.
fn outlook(sitting: &Sitting<'_>, to: Moment) -> (Vec<Text>, bool) {
    let Some(plan) = &sitting.room.plan else { return (Vec::new(), false) };
    let mut moved = plan.clone();
    moved.wish.dinner = Some(to);
    match moved.solve(&sitting.light()) {
        Some(Ok(schedule)) => {
            let before = plan.jobs.clone();
            moved.adopt(&schedule, sitting.now);
            let is_on = plan.on_since(sitting.now).is_some();
            let stays = is_on.then(|| Text::new("room-late-on"));
            let shifts = live::shifts(&before, &moved);
            let lines = stays.into_iter().chain(proposal::cautions(&schedule)).chain(jobs::shift_lines(&shifts));
            (lines.collect(), true)
        }
        Some(Err(conflict)) => (proposal::clash(&conflict), false),
        None => (Vec::new(), false),
    }
}

fn is_late(sitting: &Sitting<'_>, text: &str) -> bool {
    let (lexicon, folded) = (sitting.lexicon(), fold(text));
    let words: Vec<&str> = folded.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
    (1..=MOST_WORDS).any(|many| words.windows(many).any(|some| lexicon.talk(&some.join(" "), "late")))
}
