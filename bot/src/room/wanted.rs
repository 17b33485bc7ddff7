//! "Can we move dinner to 4?": what that would mean, as a choice; and the yes or no in words of whoever may decide.
//!
//! Anyone may ask. Nothing moves until the host or an administrator has said so, by a button or in words soon after.

use super::late;
use super::sitting::name;
use super::state::Wanted;
use super::{PersonId, Sitting, may, moves, spoiled};
use crate::reading::{self, Retraction, Shift};
use crate::words::{Arg, Text};
use carvetime_core::plan::Moment;
use chrono::TimeDelta;

/// "Yes" is an answer to what was asked within this time; one that names the hour, within the longer one.
const LATELY: TimeDelta = TimeDelta::minutes(5);
const TODAY: TimeDelta = TimeDelta::hours(6);
/// Whoever asks for an hour farther away speaks of another meal.
const FARTHEST: TimeDelta = TimeDelta::hours(6);

/// `false`: the words ask for no other hour.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some((serial, host, dinner)) = standing(sitting) else { return false };
    let lexicon = sitting.lexicon();
    if reading::speaks_of_another_year(text, lexicon) {
        return false;
    }
    let spoken_of = sitting.room.plan.as_ref().and_then(|plan| plan.wanted);
    let open = spoken_of.is_some_and(|wanted| sitting.now - wanted.at <= TODAY);
    let clause = reading::suggestion(text, addressed, lexicon)
        .or_else(|| reading::other_suggestion(text, lexicon).filter(|clause| open && says_an_hour(sitting, clause)));
    let asked = clause.and_then(|clause| hour(sitting, clause, dinner));
    let settled = if asked.is_none() && !addressed { settled(sitting, text, dinner, open) } else { None };
    match (asked, settled) {
        _ if asked.is_none() && settled.is_none() => false,
        _ if spoiled::says_gone(sitting) => true,
        // "No, we stay at half past eight": it was moved a moment ago, and goes back at once.
        (None, Some((to, _))) if may::steer(sitting) && was_moved_from(sitting, to) => {
            moves::to_then(sitting, to);
            true
        }
        (None, Some((to, true))) if may::steer(sitting) => {
            moves::settled(sitting, to, dinner);
            true
        }
        (to, settled) => {
            let to = to.or(settled.map(|(to, _)| to));
            to.is_some_and(|to| offer(sitting, to, (serial, host, dinner)))
        }
    }
}

/// Whether the last thing that was changed is the dinner's hour, and it was that before.
fn was_moved_from(sitting: &Sitting<'_>, to: Moment) -> bool {
    let last = sitting.room.plan.as_ref().and_then(|plan| plan.history.last());
    last.is_some_and(|change| {
        change.name == "moved" && change.wish.dinner == Some(to) && sitting.now - change.at <= TODAY
    })
}

/// "5 works better", "dinner's pushed to 4:30", said to everyone. Where the meal is not named, only by whoever may decide, or where an hour
/// has been asked for; and only of an hour near the dinner's. The hour that stands is no news. Beside it: whether the meal is named.
fn settled(sitting: &Sitting<'_>, text: &str, dinner: Moment, open: bool) -> Option<(Moment, bool)> {
    const NEAR: TimeDelta = TimeDelta::hours(3);
    let (text, told) = reading::settled_in(text, sitting.lexicon())?;
    let to = hour(sitting, text, dinner).filter(|to| *to != dinner)?;
    // "We stay for two hours": by no clock.
    let spans = || matches!(reading::read_shift(text, dinner, &sitting.table_ground()), Some(Shift::By(_)));
    if reading::Told::of(text, sitting.lexicon()).says("hour-stays") && spans() {
        return None;
    }
    let meant = told.of_meal || (open || may::steer(sitting)) && (to - dinner).abs() <= NEAR;
    meant.then_some((to, told.of_meal))
}

/// An hour told otherwise to everyone: the same question.
pub(super) fn offered(sitting: &mut Sitting<'_>, to: Moment) -> bool {
    standing(sitting).is_some_and(|standing| offer(sitting, to, standing))
}

/// What dinner at that hour would mean, as a choice.
fn offer(sitting: &mut Sitting<'_>, to: Moment, (serial, host, dinner): (u32, PersonId, Moment)) -> bool {
    if to == dinner {
        moves::already(sitting, to);
        return true;
    }
    let Some(outlook) = late::outlook(sitting, to) else { return false };
    let by = sitting.speaker();
    let steers = may::steer(sitting);
    let head = match by.filter(|_| !steers) {
        Some(by) => Text::new("room-wanted").with("name", name(sitting, by)),
        None => Text::new("room-late"),
    };
    let others = (!steers).then(|| Text::new("room-late-host").with("name", name(sitting, host)));
    let head = head.with("when", Arg::DayClock(to)).with("dinner", Arg::Clock(dinner));
    late::ask(sitting, head, (serial, to, dinner), &outlook).lines(others);
    true
}

/// The answer of one who may decide. `false`: the words are no answer.
pub(super) fn answered(sitting: &mut Sitting<'_>, text: &str, reply_to: Option<&str>) -> bool {
    let Some((serial, host, dinner)) = standing(sitting) else { return false };
    let (Some(wanted), true) = (lately(sitting, TODAY), may::steer(sitting)) else { return false };
    let lexicon = sitting.lexicon();
    if sitting.speaker().is_some_and(|who| sitting.room.drafts.contains_key(&who)) || text.contains(['?', '¿']) {
        return false;
    }
    let named = says_an_hour(sitting, text).then(|| hour(sitting, text, dinner)).flatten();
    let fresh = lately(sitting, LATELY).is_some_and(|wanted| !wanted.passed) || reply_to == Some(late::KEY);
    let plain = || {
        let yes = reading::read_willing(text, lexicon).map(|_| true);
        let leaves = || matches!(reading::read_retraction(text, lexicon), Some(Retraction::Leave | Retraction::Never));
        yes.or_else(|| (reading::is_unwilling(text, lexicon) || leaves()).then_some(false))
    };
    let yes = match named {
        Some(to) if to == wanted.to => reading::leaning(text, lexicon),
        // "We stay at half past eight" is a no without one.
        Some(to) if to == dinner => {
            (reading::leaning(text, lexicon).is_some() || reading::settled_in(text, lexicon).is_some()).then_some(false)
        }
        // "No, half past": another hour than was asked for is offered like the first.
        Some(to) if reading::leaning(text, lexicon).is_some() => return offer(sitting, to, (serial, host, dinner)),
        Some(_) => None,
        None if fresh => plain(),
        None => None,
    };
    let Some(yes) = yes else { return false };
    match yes {
        true => {
            moves::to_then(sitting, wanted.to);
            late::shut(sitting);
        }
        false => late::stay(sitting, serial, late::minute(dinner)),
    }
    if let Some(wanted) = sitting.room.plan.as_mut().and_then(|plan| plan.wanted.as_mut()) {
        wanted.answered = true;
    }
    true
}

/// Whether that hour has been asked for, and what it means stands above.
pub(super) fn is_asked(sitting: &Sitting<'_>, to: Moment) -> bool {
    lately(sitting, TODAY).is_some_and(|wanted| wanted.to == to)
}

fn standing(sitting: &Sitting<'_>) -> Option<(u32, PersonId, Moment)> {
    let plan = sitting.room.plan.as_ref()?;
    let dinner = plan.wish.dinner.filter(|dinner| *dinner > sitting.now)?;
    Some((plan.serial, plan.host, dinner))
}

/// What was asked for within that time, unless it was answered or dinner is then by now.
fn lately(sitting: &Sitting<'_>, within: TimeDelta) -> Option<Wanted> {
    let plan = sitting.room.plan.as_ref()?;
    let open = |wanted: &Wanted| !wanted.answered && sitting.now - wanted.at <= within && wanted.to > sitting.now;
    plan.wanted.filter(|wanted| open(wanted) && plan.wish.dinner != Some(wanted.to))
}

fn says_an_hour(sitting: &Sitting<'_>, text: &str) -> bool {
    reading::read_shift(text, sitting.now, &sitting.table_ground()).is_some()
}

/// The hour asked for, on the day of the dinner.
fn hour(sitting: &Sitting<'_>, text: &str, dinner: Moment) -> Option<Moment> {
    if is_of_degrees(text) {
        return None;
    }
    let to = reading::read_shift(text, dinner, &sitting.table_ground())?.applied(dinner)?;
    (to > sitting.now && (to - dinner).abs() <= FARTHEST).then_some(to)
}

/// "Can you eat it at 150?": digits that are a thermometer's sooner than ten to two.
fn is_of_degrees(text: &str) -> bool {
    let digits = |word: &str| word.trim_matches(|c: char| !c.is_alphanumeric()).parse::<u16>().ok();
    text.split_whitespace().filter_map(digits).any(|number| (141..=199).contains(&number))
}
