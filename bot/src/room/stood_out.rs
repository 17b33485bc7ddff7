//! "It's been out since 11, is it still ok": what is said and the clock kept from the heat may differ. The stricter counts, and is named.
//!
//! Start at [`told`]. Other food, and a bird that is raw, has its own rule: see [`crate::ask`].

use super::alarms::off_at;
use super::sitting::button;
use super::state::{JobState, LiveJob, LivePlan};
use super::turn::Urgency;
use super::{Sitting, bells, board, hot_day, kept_hot, planning, questions, spoiled, undo};
use crate::ask::Question;
use crate::reading::sentence::Sentence;
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{Temperature, fahrenheit};
use carvetime_core::safety::{US_ONE_HOUR_RULE_AIR, Verdict, left_out};
use chrono::TimeDelta;

/// Said and kept so near each other they are one.
const SAME: TimeDelta = TimeDelta::minutes(15);
/// Said a moment ago, it is not called for.
const AT_ONCE: TimeDelta = TimeDelta::minutes(5);
/// Later it is another meal that is asked about.
const TODAY: TimeDelta = TimeDelta::hours(8);
/// So much earlier than was told then, it is of another bird, or of yesterday.
const LONGEST_UNSAID: TimeDelta = TimeDelta::hours(4);

/// The same, where nobody has read the question yet.
pub(super) fn asked(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let stands = sitting.room.plan.as_ref().is_some_and(stands);
    stands && questions::read(sitting, text).is_some_and(|question| told(sitting, text, &question))
}

/// "Can we still eat it?", of what is off the heat and not put away: by its own clock. `false`: there is nothing of the kind.
pub(super) fn to_eat(sitting: &mut Sitting<'_>) -> bool {
    let now = sitting.now;
    let Some(kept) = sitting.room.plan.as_ref().and_then(clock).filter(|kept| now - kept.from <= TODAY) else {
        return false;
    };
    answer(sitting, &kept, kept.from, None);
    true
}

/// Whether that clock has run out.
pub(super) fn is_over(sitting: &Sitting<'_>) -> bool {
    let kept = sitting.room.plan.as_ref().and_then(clock);
    kept.is_some_and(|kept| matches!(left_out(None, sitting.now - kept.from), Verdict::Discard { .. }))
}

/// Answers how long it may stand yet, where the question is of this plan's bird off the heat. `false`: it is of something else.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, question: &Question) -> bool {
    let Question::LeftOut { ahead: false, span: Some(span), air } = question else { return false };
    let now = sitting.now;
    if *span <= TimeDelta::zero() || !is_of_it(sitting, text) {
        return false;
    }
    let Some(kept) = sitting.room.plan.as_ref().and_then(clock) else { return false };
    let said = now - *span;
    // By its own clock, unless it stood out before that.
    if said >= kept.from - SAME {
        answer(sitting, &kept, kept.from.min(said), *air);
        return true;
    }
    earlier(sitting, &kept, said, *air);
    true
}

/// Whether a question of hours out is of this plan's bird, cooked and not put away yet.
pub(super) fn is_of_it(sitting: &Sitting<'_>, text: &str) -> bool {
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| clock(plan).is_some()) else { return false };
    let sentence = Sentence::read(text, sitting.lexicon());
    let dish = (0..sentence.len()).any(|at| sentence.of(at, "dish-").is_some());
    let raw = sentence.has("ask-thaw") || (0..sentence.len()).any(|at| sentence.of(at, "condition-").is_some());
    let other_food = (0..sentence.len()).any(|at| !matches!(sentence.of(at, "food-"), None | Some("leftovers")));
    let kind = planning::read(sitting, text).0.kind;
    let other_bird = kind.as_ref().is_some_and(|kind| *kind != super::order::kind(&plan.wish).name());
    let named = kind.is_some() || sentence.has("bird-any");
    !(dish || raw || other_food || other_bird) && (named || spoiled::names_no_other(sitting, text))
}

/// The clock of what is off the heat and not in the fridge.
struct Kept {
    from: Moment,
    /// What it counts from, as the messages select by it.
    what: &'static str,
    /// It is still the heat's, and not that of a meal warmed up elsewhere.
    of_heat: bool,
}

/// Whether it is off the heat and not in the fridge.
pub(super) fn stands(plan: &LivePlan) -> bool {
    clock(plan).is_some()
}

fn clock(plan: &LivePlan) -> Option<Kept> {
    let waits = |job: &&LiveJob| job.step() == Some(Step::Chill) && job.state == JobState::Waiting;
    let job = plan.jobs.iter().find(waits).filter(|_| plan.is_off())?;
    let (off, known) = (off_at(plan)?, kept_hot::known(plan)?);
    let of_heat = job.latest <= known + hot_day::most(plan);
    let what = match of_heat {
        true if known > off => "read",
        true => "heat",
        false => "other",
    };
    Some(Kept { from: job.latest - hot_day::most(plan), what, of_heat })
}

/// By its own clock.
fn answer(sitting: &mut Sitting<'_>, kept: &Kept, from: Moment, air: Option<Temperature>) {
    let now = sitting.now;
    let (id, by) = match left_out(air, now - from) {
        Verdict::Fine { left, .. } => ("room-out-clock", now + left),
        Verdict::Discard { over, .. } => ("room-out-clock-over", now - over),
    };
    let unread = sitting.room.plan.as_ref().and_then(|plan| kept_hot::unread(plan, now));
    let text = Text::new(id)
        .with("since", Arg::Clock(from))
        .with("from", Arg::Choice(if from == kept.from { kept.what } else { "other" }))
        .with("by", Arg::Clock(by))
        .with("hot", Arg::Temperature(kept_hot::holds()));
    let fine = id == "room-out-clock";
    let lines = if_cool(air).filter(|_| fine);
    sitting.answer(unread.filter(|_| !fine).unwrap_or(text)).lines(lines);
}

/// It was out before it was said to be off: from then on its clock counts from there.
fn earlier(sitting: &mut Sitting<'_>, kept: &Kept, said: Moment, air: Option<Temperature>) {
    let (now, by) = (sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let on = plan.on_since(now);
    let counts = kept.of_heat && kept.what == "heat" && kept.from - said <= LONGEST_UNSAID;
    let undo = (counts && on.is_some_and(|on| said > on)).then(|| {
        plan.remember("mended", Some(Step::Pull), by, now);
        for fact in plan.facts.iter_mut().filter(|fact| fact.done && fact.step == Step::Pull.name()) {
            fact.at = said;
        }
        if let Some(job) = plan.job_mut(Step::Pull, 0)
            && let JobState::Done { at, .. } = &mut job.state
        {
            *at = said;
        }
        undo::newest(plan)
    });
    let (id, until) = match left_out(air, now - said) {
        Verdict::Fine { left, .. } => ("room-out-earlier", now + left),
        Verdict::Discard { over, .. } => ("room-out-earlier-over", now - over),
    };
    if undo.is_some() {
        // What it moves is the fridge's hour, which is said here: nobody is called for that at once.
        let _told = sitting.resolve();
        let over = id == "room-out-earlier-over";
        if let Some(plan) = sitting.room.plan.as_mut() {
            let limits: Vec<String> = plan.jobs.iter().filter_map(bells::limit).filter(|_| over).collect();
            plan.limits_called.extend(limits);
            for job in plan.jobs.iter_mut().filter(|job| job.step() == Some(Step::Chill)) {
                job.call_at = job.call_at.map(|at| at.max(now + AT_ONCE));
            }
        }
    }
    let text =
        Text::new(id).with("since", Arg::Clock(said)).with("off", Arg::Clock(kept.from)).with("by", Arg::Clock(until));
    let lines = if_cool(air).filter(|_| id == "room-out-earlier");
    let row = undo.as_ref().map(|undo| button("room-button-undo", undo));
    sitting.answer(text).lines(lines).urgency(Urgency::Safety).row(row);
    if undo.is_some() {
        board::refresh(sitting);
    }
}

/// Two hours hold in a room that is no hotter than summer.
fn if_cool(air: Option<Temperature>) -> Option<Text> {
    let most = US_ONE_HOUR_RULE_AIR.temperature().unwrap_or(fahrenheit(90.0));
    air.is_none().then(|| Text::new("ask-out-if-cool").with("air", Arg::Temperature(most)))
}
