//! A temperature told of meat that is off the heat: how far the plan is decides what it means.
//!
//! Nothing told here is kept: the roast's forecast is over, and a number proves nothing of the hours before it. Start at [`told`].

use super::action::{Action, JobRef};
use super::sitting::labelled;
use super::state::{JobState, LiveJob, LivePlan};
use super::{Sitting, forecast, hot_road, plan_words, questions, readings, reports, spoiled};
use crate::reading::{self, Meat, ReportKind};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step, spans};
use carvetime_core::quantity::{Temperature, fahrenheit, in_fahrenheit};
use carvetime_core::safety::{FC_COOL_STAGE1_TO, FC_COOL_TOTAL_TIME, US_FRIDGE_CONSUMER};
use chrono::TimeDelta;

/// How far the meat is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Stage {
    /// Off the heat and whole.
    Standing,
    /// Cut up and not in the fridge, as far as anyone has said: by when it is to be.
    Counter(Moment),
    /// In the fridge since then.
    Fridge(Moment),
    /// On the way, on ice.
    Packed,
    /// In the heat again; by when it had to be in the fridge, where nobody has said that it was.
    Reheating(Option<Moment>),
    /// Thrown away.
    Gone,
}

/// Words with a temperature of meat off the heat. `false`: they are none, or it is not off yet.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool, edited: bool) -> bool {
    // "Can I reheat them two times?": the word counts no degrees.
    if !text.contains(|c: char| c.is_ascii_digit()) && reading::reheats_again(text, sitting.lexicon()) {
        return false;
    }
    let Some(meat) = reading::read_meat(text, &sitting.ground()) else { return false };
    // A number alone in a group may be anything, and so it may from someone who is asked something.
    let drafting = sitting.speaker().is_some_and(|who| sitting.room.drafts.contains_key(&who));
    // "70 now, still good?": any question beside it that has no answer of its own is about that number.
    let of_that = |rest: &String| {
        reading::speaks_of_eating(rest, sitting.lexicon())
            || text.contains(['?', '¿']) && !questions::is_question(sitting, rest)
    };
    let whole = meat.rest.as_ref().is_none_or(of_that);
    let rests = meat.tells
        && meat.rest.is_none()
        && sitting.room.plan.as_ref().is_some_and(|plan| rests(plan, &meat, sitting.now));
    let heard = whole && (meat.plain || meat.asks || (addressed || rests) && !drafting);
    let before = sitting.room.plan.as_ref().and_then(|plan| stage(plan, &meat, sitting.now));
    if !heard || before.is_none() {
        return false;
    }
    // What was done comes first: "in the fridge, 80" is no longer on the counter.
    if let Some(report) = meat.report.filter(|report| !edited && counts(report.step, report.kind, &meat)) {
        reports::heard(sitting, &report);
    }
    let Some(stage) = sitting.room.plan.as_ref().and_then(|plan| stage(plan, &meat, sitting.now)) else { return true };
    // Too late, and that has just been said.
    if stage == Stage::Gone && before != Some(Stage::Gone) {
        return true;
    }
    // "It's 138 now, is it still ok?", of a bird that stands: its two hours answer, and no table of how long it would have to be held.
    let asks = meat.asks || text.contains(['?', '¿']) || meat.rest.is_some();
    if let Some(text) = readings::standing(sitting).filter(|_| stage == Stage::Standing && asks) {
        sitting.answer(text);
        return true;
    }
    // Whole, or never hot enough: a reading of the bird as any other.
    let done_again = meat.spot && is_target(meat.coldest) && readings::below(sitting).is_some();
    if stage == Stage::Standing || done_again && matches!(stage, Stage::Counter(_)) {
        return readings::heard(sitting, text, true, edited);
    }
    let lines = lines(sitting, stage, &meat);
    let reheated = matches!(stage, Stage::Reheating(None)) && is_target(meat.coldest);
    let row = sitting.room.plan.as_ref().filter(|_| reheated).and_then(served);
    let say = sitting.answer_all(lines);
    if let Some(button) = row {
        say.row([button]);
    }
    true
}

/// Whether [`told`] hears the words of the plan in hand.
pub(super) fn would(sitting: &Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(meat) = reading::read_meat(text, &sitting.ground()) else { return false };
    let Some(plan) = &sitting.room.plan else { return false };
    let rests = meat.tells && rests(plan, &meat, sitting.now);
    stage(plan, &meat, sitting.now).is_some() && meat.rest.is_none() && (meat.plain || meat.asks || addressed || rests)
}

/// It rests off the heat, is carried, or cools in the fridge, and that is what a number so hot or cold is likely of.
fn rests(plan: &LivePlan, meat: &Meat, now: Moment) -> bool {
    /// Longer ago people talk of something else.
    const LATELY: TimeDelta = TimeDelta::hours(8);
    /// Off the heat, whole, °F.
    const WHOLE_F: std::ops::RangeInclusive<f64> = 100.0..=200.0;
    /// Cut up, chilled or packed, °F.
    const COLD_F: std::ops::RangeInclusive<f64> = 32.0..=140.0;
    let done = plan.facts.iter().filter(|fact| fact.done).map(|fact| fact.at).max();
    if done.is_none_or(|at| now - at > LATELY) {
        return false;
    }
    let within = |range: std::ops::RangeInclusive<f64>| {
        range.contains(&in_fahrenheit(meat.coldest)) && range.contains(&in_fahrenheit(meat.hottest))
    };
    match stage(plan, meat, now) {
        Some(Stage::Standing) => within(WHOLE_F),
        Some(Stage::Fridge(_) | Stage::Packed) => within(COLD_F),
        Some(Stage::Reheating(_)) => within(*COLD_F.start()..=*WHOLE_F.end()),
        Some(Stage::Counter(_) | Stage::Gone) | None => false,
    }
}

/// Reheated is done at its target and no sooner; whatever else is said to be done is.
fn counts(step: Option<Step>, kind: ReportKind, meat: &Meat) -> bool {
    let reheated = step == Some(Step::Reheat);
    kind == ReportKind::Done && step.is_some() && (!reheated || is_target(meat.coldest))
}

fn is_target(at: Temperature) -> bool {
    in_fahrenheit(at) >= in_fahrenheit(super::target()) - 1e-6
}

fn is_cold(at: Temperature) -> bool {
    in_fahrenheit(at) <= in_fahrenheit(cold()) + 1e-6
}

/// Cold enough to keep. Source: [`US_FRIDGE_CONSUMER`].
fn cold() -> Temperature {
    US_FRIDGE_CONSUMER.temperature().unwrap_or(fahrenheit(40.0))
}

fn stage(plan: &LivePlan, meat: &Meat, now: Moment) -> Option<Stage> {
    let done = |step: Step, nth: u8| match plan.job(step, nth).map(|job| job.state) {
        Some(JobState::Done { at, .. }) => Some(at),
        _ => None,
    };
    let carved = done(Step::Carve, 0).is_some();
    if !plan.is_off() && !carved {
        return None;
    }
    if spoiled::is_gone(plan) {
        return Some(Stage::Gone);
    }
    let again = plan.job(Step::Reheat, 0);
    let waits = |job: &LiveJob| job.state == JobState::Waiting;
    let eaten = again.is_some_and(|job| !waits(job));
    let nth = u8::from(eaten);
    let chill = plan.job(Step::Chill, nth)?;
    let unsaid = plan.job(Step::Chill, 0).filter(|job| waits(job) && job.latest < now).map(|job| job.latest);
    // Nothing is that warm after hours in a fridge: it has been in the heat.
    const WARM_F: f64 = 100.0;
    let hot_again = |since: Moment| now - since > spans::FRIDGE_WITHIN && in_fahrenheit(meat.hottest) > WARM_F;
    let called = again.is_some_and(|job| waits(job) && (job.calls > 0 || job.at <= now));
    if meat.reheated || called {
        return Some(Stage::Reheating(unsaid));
    }
    match chill.state {
        JobState::Done { at, .. } if hot_again(at) => Some(Stage::Reheating(None)),
        JobState::Done { .. } if nth == 0 && again.is_some() && done(Step::Pack, 0).is_some() => Some(Stage::Packed),
        JobState::Done { at, .. } => Some(Stage::Fridge(at)),
        // Past the hour of dinner nobody is called to carve: it is taken for carved. Carried hot it is whole until someone has said so.
        JobState::Waiting if plan.job(Step::Carve, 0).is_some_and(waits) => Some(Stage::Standing),
        JobState::Waiting if hot_road::is_hot(plan) && hot_road::is_whole(plan, now) => Some(Stage::Standing),
        JobState::Waiting => Some(Stage::Counter(chill.latest)),
        JobState::Skipped { .. } => None,
    }
}

fn lines(sitting: &Sitting<'_>, stage: Stage, meat: &Meat) -> Vec<Text> {
    let now = sitting.now;
    let clock = |at| forecast::clock(at, now, sitting.zone_or_utc());
    let (coldest, hottest) = (Arg::Temperature(meat.coldest), Arg::Temperature(meat.hottest));
    match stage {
        Stage::Gone => vec![Text::new("cook-gone")],
        // Until it is carved the reading is one of the bird.
        Stage::Standing => Vec::new(),
        Stage::Counter(by) if now > by && is_cold(meat.hottest) => {
            let text = Text::new("cook-cooled-unsaid").with("at", hottest).with("by", clock(by));
            vec![text]
        }
        Stage::Counter(by) if now > by => vec![Text::new("room-limit-chill")],
        Stage::Counter(by) => {
            let text = Text::new("cook-cooled-counter")
                .with("at", hottest)
                .with("by", clock(by))
                .with("left", Arg::Span(by - now));
            std::iter::once(text).chain(readings::under(sitting)).collect()
        }
        Stage::Fridge(_) | Stage::Packed if is_cold(meat.hottest) => {
            vec![Text::new("cook-cooled-cold").with("at", hottest).with("cold", Arg::Temperature(cold()))]
        }
        Stage::Fridge(since) => vec![in_fridge(meat.hottest, since, now, clock)],
        Stage::Packed => {
            let text = Text::new("cook-cooled-packed").with("at", hottest).with("cold", Arg::Temperature(cold()));
            vec![text.with("most", Arg::Span(spans::PACKED_MOST)).with("target", Arg::Temperature(super::target()))]
        }
        Stage::Reheating(unsaid) => {
            let id = if is_target(meat.coldest) { "cook-reheat-there" } else { "cook-reheat-on" };
            let text = Text::new(id).with("at", coldest).with("target", Arg::Temperature(super::target()));
            let only = |by| Text::new("cook-reheat-only").with("by", clock(by));
            std::iter::once(text).chain(unsaid.map(only)).collect()
        }
    }
}

/// Too warm for a fridge: still cooling, or longer than it may. Source: [`FC_COOL_TOTAL_TIME`], of which two hours are over at the latest
/// when it goes in.
fn in_fridge(at: Temperature, since: Moment, now: Moment, clock: impl Fn(Moment) -> Arg) -> Text {
    let whole = FC_COOL_TOTAL_TIME.time().map_or(TimeDelta::hours(6), |time| time.high);
    let by = since + whole - spans::FRIDGE_WITHIN;
    let half_way = FC_COOL_STAGE1_TO.temperature().unwrap_or(fahrenheit(70.0));
    let warm = at > half_way && now - since > spans::FRIDGE_WITHIN;
    let id = if warm || now > by { "cook-cooled-warm" } else { "cook-cooled-fridge" };
    Text::new(id)
        .with("at", Arg::Temperature(at))
        .with("cold", Arg::Temperature(cold()))
        .with("by", clock(by))
        .with("span", Arg::Span(now - since))
}

/// The button that says it is reheated.
fn served(plan: &LivePlan) -> Option<super::turn::Button> {
    plan.job(Step::Reheat, 0).filter(|job| job.state == JobState::Waiting)?;
    let it = JobRef { serial: plan.serial, step: Step::Reheat, nth: 0 };
    Some(labelled(plan_words::step_done(Step::Reheat, 0), &Action::Done(it)))
}
