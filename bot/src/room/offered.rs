//! What lies open in the last message to a group: "yes" of whoever may decide takes the one thing offered.
//!
//! Owns the memory of that message's choices. What becomes of the dinner's hour is `wanted`, what was just said of the plan is
//! `which`; where several things are offered, it is said which. Nothing food safety hangs on is taken by a word in passing.

use super::action::Action;
use super::state::{LivePlan, Offered};
use super::turn::{How, Say, To};
use super::{RoomKind, Sitting, may, way_out};
use crate::reading::{self, Willing, Wish};
use crate::words::Text;
use carvetime_core::plan::Conflict;
use chrono::TimeDelta;

/// A yes is one to what was offered within this time.
const LATELY: TimeDelta = TimeDelta::minutes(10);

/// Notes what the last message of the turn offers to the group. What only changes a message counts where it is the one noted.
pub(super) fn note(sitting: &mut Sitting<'_>) {
    let here = To::Room(sitting.room.id);
    if sitting.room.kind != RoomKind::Group {
        return;
    }
    let noted = sitting.room.offered.as_ref().and_then(|offered| offered.key.clone());
    let news = |say: &&Say| say.how == How::New || say.key.is_some() && say.key == noted;
    let Some(say) = sitting.says.iter().rev().filter(|say| say.to == here).find(news) else { return };
    let choices: Vec<String> =
        say.buttons.iter().flatten().map(|button| button.data.clone()).filter(|data| is_choice(data)).collect();
    // A list to pick from is no offer.
    let of_jobs = |data: &String| matches!(Action::read(data), Some(Action::Take(_) | Action::Done(_)));
    let choices = if choices.len() > 1 && choices.iter().any(of_jobs) { Vec::new() } else { choices };
    let (by, at, key) = (sitting.speaker(), sitting.now, say.key.clone());
    sitting.room.offered = (!choices.is_empty()).then_some(Offered { at, by, key, choices });
}

/// "Yes", "on it", to what was offered last. `false`: nothing is open, or it is not for them to say.
pub(super) fn answered(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(who) = sitting.speaker().filter(|who| !sitting.room.drafts.contains_key(who)) else { return false };
    let now = sitting.now;
    // Beside another bird it may be of that one.
    let open = sitting.room.offered.clone().filter(|open| now - open.at <= LATELY && sitting.room.others.is_empty());
    let (Some(open), Some(willing)) = (open, reading::read_willing(text, sitting.lexicon())) else { return false };
    let actions: Vec<Action> = open.choices.iter().filter_map(|data| Action::read(data)).collect();
    let meant = match actions.as_slice() {
        // Agreeing is to much; "on it" is of the job.
        [Action::Take(_)] => willing == Willing::DoesIt,
        [Action::Done(_)] => open.by == Some(who),
        _ => may::steer(sitting),
    };
    if !meant {
        return false;
    }
    sitting.room.offered = None;
    match open.choices.as_slice() {
        [one] => super::pressed(sitting, one),
        _ => say_which(sitting, &actions),
    }
    true
}

/// What a yes in words can be to.
fn is_choice(data: &str) -> bool {
    matches!(
        Action::read(data),
        Some(
            Action::Mend(..)
                | Action::Seat(..)
                | Action::Hotter(..)
                | Action::Dinner(..)
                | Action::Shift(..)
                | Action::Take(_)
                | Action::Done(_)
        )
    )
}

/// Several ways out: which there are.
fn say_which(sitting: &mut Sitting<'_>, actions: &[Action]) {
    let light = sitting.light();
    let (Some(plan), Some(first)) = (&sitting.room.plan, actions.first()) else { return };
    let serial = plan.serial;
    let against = |plan: &LivePlan| -> Option<Conflict> { plan.solve(&light)?.err() };
    let (conflict, seats) = match first {
        Action::Mend(..) => (against(plan), false),
        Action::Seat(..) => {
            let added = plan.adding.clone().map(|dishes| Wish { dishes, ..plan.wish.clone() });
            (added.and_then(|wish| against(&LivePlan { wish, ..plan.clone() })), true)
        }
        _ => (None, false),
    };
    let dishes = plan.adding.as_deref().filter(|_| seats).unwrap_or(&plan.wish.dishes);
    let action = |way| if seats { Action::Seat(serial, way) } else { Action::Mend(serial, way) };
    let rows = conflict.as_ref().map(|conflict| way_out::buttons(conflict, dishes, action)).unwrap_or_default();
    let say = sitting.answer(Text::new("room-ok-which"));
    for row in rows {
        say.row([row]);
    }
}
