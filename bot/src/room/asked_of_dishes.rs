//! Questions of the dishes on the plan: "when do the rolls go in?", "how long does the stuffing take?", "who has the pie?", "what dishes
//! are there?", "does it all fit in the oven?"; and "I'll take the red cabbage".
//!
//! Asked of the bot they are answered; among people the same, for a dish is called by its name. Owns no word: see the `talk-dish-` entries
//! of the lexicon.

use super::state::{JobState, LiveJob, LivePlan};
use super::{RoomKind, Sitting, birds, dishes, jobs, of_dishes, plan_words};
use crate::reading;
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;
use carvetime_core::quantity::celsius;
use chrono::TimeDelta;

/// Longer texts tell a story.
const LONGEST: usize = 100;

/// `false`: nothing of the kind is asked or said.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let now = sitting.now;
    let standing = sitting.room.plan.as_ref().is_some_and(|plan| !birds::is_past(plan, now));
    let number = text.contains(|c: char| c.is_ascii_digit());
    if !standing || number || text.starts_with('/') || text.chars().count() > LONGEST {
        return false;
    }
    if reading::is_question_of(text, "dishes-asked", sitting.lexicon()) {
        return list(sitting, addressed);
    }
    if reading::is_question_of(text, "dishes-fit", sitting.lexicon()) {
        return fits(sitting);
    }
    named(sitting, text)
}

/// "When do the rolls go in?", "who has the stuffing?", "I'll take the pie".
fn named(sitting: &mut Sitting<'_>, text: &str) -> bool {
    const ASKED: [&str; 4] = ["dish-when", "dish-long", "dish-hot", "dish-who"];
    const BESIDE: [&str; 4] = ["dish-verb", "dish-link", "manners", "filler"];
    let Some(spoken) = of_dishes::spoken_of(sitting, text) else { return false };
    let Some((it, job)) = of_dishes::job(sitting, spoken.place) else { return false };
    let lexicon = sitting.lexicon();
    let of = |groups: &[&'static str]| reading::made_of(&spoken.rest, groups, lexicon).unwrap_or_default();
    let asked = of(&[ASKED.as_slice(), BESIDE.as_slice()].concat());
    let Some(asked) = ASKED.iter().find(|group| asked.contains(group)) else {
        let mine = of(&["mine", "mine-last", "mine-link", "dish-verb", "dish-link", "manners", "assent"]);
        let takes = mine.contains(&"mine") || mine.contains(&"mine-last");
        // "I'll have pie" is said by who eats it.
        let takes = takes && !reading::Told::of(text, lexicon).says("eats-it");
        let takes = takes && sitting.room.kind == RoomKind::Group && !text.contains(['?', '¿']);
        if takes {
            jobs::take(sitting, it);
        }
        return takes;
    };
    match job.state {
        JobState::Done { at, .. } => {
            let what = Arg::from(plan_words::step_done(it.step, it.nth));
            sitting.answer(Text::new("room-done").with("what", what).with("at", Arg::DayClock(at)));
        }
        JobState::Skipped { .. } => {
            sitting.answer(Text::new("room-skipped").with("what", Arg::from(plan_words::step_name(it.step, it.nth))));
        }
        JobState::Waiting if *asked == "dish-who" && sitting.room.kind == RoomKind::Group => {
            return jobs::who_has(sitting, it);
        }
        JobState::Waiting => {
            let line = sitting.room.plan.as_ref().map(|plan| line(plan, &job));
            sitting.answer_all(line.into_iter().collect());
        }
    }
    true
}

/// When it is begun, how long it takes and at what heat.
fn line(plan: &LivePlan, job: &LiveJob) -> Text {
    let dish = plan.wish.dishes.get(usize::from(job.nth)).and_then(Option::as_ref);
    let setting = dish.and_then(|dish| dish.setting_c);
    let text = Text::new(if setting.is_some() { "dish-told-at" } else { "dish-told" })
        .with("what", Arg::from(plan_words::step_name(Step::Dish, job.nth)))
        .with("when", Arg::DayClock(job.at))
        .with("takes", Arg::Span(TimeDelta::minutes(job.lasts_min)));
    match setting {
        Some(setting) => text.with("setting", Arg::Temperature(celsius(setting))),
        None => text,
    }
}

/// A line for each that is still to be made.
fn lines(plan: &LivePlan) -> Vec<Text> {
    plan.jobs.iter().filter(|job| of_dishes::waits(job)).map(|job| line(plan, job)).collect()
}

/// Among people "what dishes do we have?" is of the plan where it has some.
fn list(sitting: &mut Sitting<'_>, addressed: bool) -> bool {
    let lines = sitting.room.plan.as_ref().map(lines).unwrap_or_default();
    let known = !lines.is_empty();
    if known {
        sitting.answer_all(lines);
    } else if addressed {
        sitting.answer(Text::new("dish-none"));
    }
    known || addressed
}

/// Whether all of it has its place: the plan says, or what stands against it. `false`: there is no dish.
fn fits(sitting: &mut Sitting<'_>) -> bool {
    let light = sitting.light();
    let Some(plan) = &sitting.room.plan else { return false };
    let lines = lines(plan);
    if lines.is_empty() && plan.adding.is_none() {
        return false;
    }
    if dishes::still_clashes(sitting) {
        return true;
    }
    match sitting.room.plan.as_ref().and_then(|plan| plan.solve(&light)) {
        Some(Ok(_)) => {
            sitting.answer(Text::new("dish-all-fit")).lines(lines);
        }
        Some(Err(conflict)) => jobs::tell_conflict(sitting, &conflict),
        None => return false,
    }
    true
}
