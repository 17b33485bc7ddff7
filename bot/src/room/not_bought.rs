//! What everything hangs on and nobody has said: whether the bird is bought, and thawing. "Nobody bought it yet, Dan goes tomorrow".
//!
//! The plan goes on as if it were, for a cook with full hands presses no buttons, but it is asked about, the next morning and evening and
//! again. Said not to be, it is open again and never taken for done any more: the rest moves with it, or what no longer works is said.

use super::action::JobRef;
use super::ladder::Next;
use super::sitting::button;
use super::state::{JobState, LiveJob, LivePlan, Rung};
use super::{RoomKind, Sitting, amend, board, ice, jobs, live, planning, swap, undo};
use crate::reading::sentence::{Sentence, What};
use crate::reading::{self, ReportKind, Wish};
use crate::words::{Arg, Text};
use carvetime_core::plan::clock::{at_hour, date};
use carvetime_core::plan::{Moment, Step};
use chrono::{Days, TimeDelta, Timelike};
use chrono_tz::Tz;

/// The hours at which it is asked: before work, and after it.
const HOURS: [u32; 2] = [9, 18];
/// As often as that: once in the evening, once in the morning.
const MOST: usize = 2;
/// Between the last call and the first question.
const AFTER: TimeDelta = TimeDelta::hours(2);
/// From here on nobody buys or thaws a bird that goes on today.
const BEFORE_ON: TimeDelta = TimeDelta::hours(3);
/// A yes within this time of the question is one to it.
const LATELY: TimeDelta = TimeDelta::hours(2);

/// Whether it is done is asked next, of whom and when. `None`: of no other step, and not for ever.
pub(super) fn whether(sitting: &Sitting<'_>, job: &LiveJob, step: Step, from: Moment) -> Option<Next> {
    let asked = job.rungs.iter().filter(|rung| **rung == Rung::Whether).count();
    let plan = sitting.room.plan.as_ref().filter(|_| is_of_bird(job, step) && asked < MOST)?;
    // Not of the thaw as long as nobody knows whether there is a bird.
    let unbought = plan.job(Step::Buy, 0).is_some_and(|buy| buy.state == JobState::Waiting);
    if step == Step::Thaw && unbought {
        return None;
    }
    let at = next_hour(sitting.zone_or_utc(), from + AFTER)?;
    let on = plan.job(Step::On, 0).filter(|on| on.state == JobState::Waiting)?;
    let people = vec![job.owner.unwrap_or(plan.host)];
    (at + BEFORE_ON < on.at).then_some(Next { rung: Rung::Whether, people, at })
}

/// The question at its hour, where none comes after it.
pub(super) fn last(sitting: &Sitting<'_>, job: &LiveJob, step: Step) -> Option<Next> {
    let plan = sitting.room.plan.as_ref().filter(|_| is_of_bird(job, step) && !job.rungs.is_empty())?;
    let people = vec![job.owner.unwrap_or(plan.host)];
    Some(Next { rung: Rung::Whether, people, at: sitting.now })
}

fn is_of_bird(job: &LiveJob, step: Step) -> bool {
    matches!(step, Step::Buy | Step::Thaw) && job.nth == 0 && job.state == JobState::Waiting
}

/// The next of the hours.
fn next_hour(zone: Tz, from: Moment) -> Option<Moment> {
    let today = date(zone, from);
    let days = [Some(today), today.checked_add_days(Days::new(1))];
    let hours = days.into_iter().flatten().flat_map(|day| HOURS.map(|hour| at_hour(zone, day, hour, 0)));
    hours.into_iter().find(|at| *at >= from)
}

/// The question.
pub(super) fn question(step: Step, since: Moment) -> Text {
    match step {
        Step::Buy => Text::new("room-whether-bought"),
        _ => Text::new("room-whether-thawing").with("since", Arg::DayClock(since)),
    }
}

/// "Yes" to it: it was done when it was planned.
pub(super) fn as_planned(sitting: &mut Sitting<'_>, it: JobRef) {
    let now = sitting.now;
    let plan = sitting.room.plan.as_ref().filter(|plan| plan.serial == it.serial);
    let at = plan.and_then(|plan| plan.job(it.step, it.nth)).map_or(now, |job| job.at.min(now));
    jobs::done_at(sitting, it, at);
}

/// Of a bird that is bought it is asked at once whether it thaws, where that was only taken for done.
pub(super) fn bought(plan: &mut LivePlan, now: Moment) {
    let taken = plan.assumed(now).any(|job| job.step() == Some(Step::Thaw) && job.nth == 0);
    if let Some(thaw) = plan.job_mut(Step::Thaw, 0).filter(|thaw| taken && thaw.call_at.is_none()) {
        thaw.call_at = Some(now);
    }
}

/// "Not yet".
pub(super) fn not_yet(sitting: &mut Sitting<'_>, it: JobRef) {
    let Some(job) = jobs::standing(sitting, it) else { return };
    match job.state {
        JobState::Done { by, .. } | JobState::Skipped { by, .. } => jobs::already(sitting, by, &job),
        // The fridge has no time left for it: another way is planned at once.
        JobState::Waiting
            if it.step == Step::Thaw && ice::is_too_late_for_the_fridge(sitting) && ice::never(sitting) => {}
        JobState::Waiting => open_again(sitting, it.step, None),
    }
}

/// "Yes", "not yet", in words: in reply to the question, or alone with the bot soon after it. `false`: to nothing of the kind.
pub(super) fn answered(sitting: &mut Sitting<'_>, text: &str, on: Option<JobRef>) -> bool {
    let (now, zone) = (sitting.now, sitting.zone_or_utc());
    let Some(plan) = &sitting.room.plan else { return false };
    let serial = plan.serial;
    let asked = |job: &&LiveJob| job.rungs.last() == Some(&Rung::Whether) && job.state == JobState::Waiting;
    let lately = || sitting.room.kind == RoomKind::Private && next_hour(zone, now - LATELY).is_some_and(|at| at <= now);
    let job = match on {
        Some(it) => plan.job(it.step, it.nth).filter(asked),
        None if lately() => plan.jobs.iter().find(asked),
        None => None,
    };
    let Some(it) = job.and_then(|job| Some(JobRef { serial, step: job.step()?, nth: job.nth })) else { return false };
    let lexicon = sitting.lexicon();
    let report = reading::read_report(text, lexicon).map(|report| report.kind);
    if reading::is_plain_no(text, lexicon) || reading::is_not_so(text, lexicon) || report == Some(ReportKind::NotDone) {
        not_yet(sitting, it);
    } else if reading::is_plain_yes(text, lexicon) || reading::is_so(text, lexicon) {
        as_planned(sitting, it);
    } else {
        return false;
    }
    true
}

/// "Nobody bought anything yet, Dan goes tomorrow"; "Dan buys it tomorrow 8 am". `false`: nothing of the shopping is told, or it is over.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let now = sitting.now;
    let raw = |plan: &&LivePlan| plan.on_since(now).is_none() && !plan.is_off();
    let Some(plan) = sitting.room.plan.as_ref().filter(raw) else { return false };
    let Some(buy) = plan.job(Step::Buy, 0).filter(|job| job.state == JobState::Waiting) else { return false };
    let due = buy.calls > 0 || buy.at <= now;
    if !reading::says_not_bought(text, sitting.lexicon()) {
        return !addressed && shops(sitting, text);
    }
    let shop = reading::read_job_hour(text, &sitting.ground());
    match (due, shop) {
        (true, shop) => open_again(sitting, Step::Buy, shop),
        (false, Some(_)) => {
            let wish = Wish { shop, ..plan.wish.clone() };
            return amend::to(sitting, text, wish, addressed);
        }
        // It is not to be bought yet: among people that is no news.
        (false, None) => return !addressed,
    }
    true
}

/// "We buy it Monday morning", to everyone: the hour is the plan's. Only of the bird: what is bought, where it is named, stands behind.
fn shops(sitting: &mut Sitting<'_>, text: &str) -> bool {
    const LONGEST: usize = 80;
    let lexicon = sitting.lexicon();
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, lexicon);
    if sitting.room.kind != RoomKind::Group || text.len() > LONGEST || asks {
        return false;
    }
    let (Wish { shop: Some(shop), .. }, _) = planning::read(sitting, text) else { return false };
    let sentence = Sentence::read(text, lexicon);
    let places = 0..sentence.len();
    let Some(word) = places.clone().find(|at| sentence.is(*at, "step-buy") || sentence.is(*at, "shopping")) else {
        return false;
    };
    let other = |at: usize| {
        let food = ["food-", "dish-"].iter().any(|group| sentence.of(at, group).is_some());
        let unknown = matches!(sentence.item(at).map(|item| &item.what), Some(What::Word([])));
        food || sentence.is(at, "aside-drink")
            || at > word && unknown && !amend::is_empty(sitting, &reading::fold(sentence.raw(at)))
    };
    let Some(plan) = sitting.room.plan.as_ref().filter(|_| !places.clone().any(other)) else { return false };
    let wish = Wish { shop: Some(shop), ..plan.wish.clone() };
    amend::to(sitting, text, wish, false)
}

/// It is still to be done, and the thaw with it: from now on, or when somebody goes shopping. The rest is planned again.
fn open_again(sitting: &mut Sitting<'_>, step: Step, shop: Option<Moment>) {
    let (now, by, zone) = (sitting.now, sitting.speaker(), sitting.zone_or_utc());
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    plan.remember("mended", None, by, now);
    let before = plan.jobs.clone();
    let open = |job: &&mut LiveJob| {
        let later = matches!(job.step(), Some(Step::Thaw | Step::Water | Step::Salt | Step::Temper));
        job.state == JobState::Waiting && (job.step() == Some(step) || later)
    };
    for job in plan.jobs.iter_mut().filter(open) {
        swap::uncall(job);
        // Whoever says so once is not overruled by silence.
        job.denied |= job.step() == Some(step);
    }
    if step == Step::Buy {
        plan.wish.shop = shop.or_else(|| shopping_hour(zone, now));
    }
    let undo = undo::newest(plan);
    let solved = sitting.resolve();
    let Some(plan) = &sitting.room.plan else { return };
    let at = plan.job(step, 0).map_or(now, |job| job.at);
    let id = if step == Step::Buy { "room-unbought" } else { "room-unthawed" };
    let mut shifts = live::shifts(&before, plan);
    shifts.retain(|(moved, ..)| *moved != step);
    let moved = jobs::shift_lines(&shifts).into_iter().filter(|_| solved.is_ok());
    let text = Text::new(id).with("when", Arg::DayClock(at));
    sitting.answer(text).lines(moved).key("bought").row([button("room-button-undo", &undo)]);
    if let Err(conflict) = solved {
        jobs::tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
}

/// When somebody may go, nobody having said when: now, or in the evening the next morning.
fn shopping_hour(zone: Tz, now: Moment) -> Option<Moment> {
    let hour = now.with_timezone(&zone).hour();
    let morning = |days: u64| Some(at_hour(zone, date(zone, now).checked_add_days(Days::new(days))?, HOURS[0], 0));
    match hour {
        ..8 => morning(0),
        8..19 => None,
        _ => morning(1),
    }
}
