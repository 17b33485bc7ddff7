//! Food that went into the fridge too late, or that someone says was thrown away: what was planned for it ends.

use super::sitting::button;
use super::state::{JobState, LiveJob, LivePlan};
use super::turn::Urgency;
use super::{Moment, Sitting, alarms, board, new_bird, plan_words, questions, undo};
use crate::ask::{Advice, Habit, Question};
use crate::reading::{self, sentence::Sentence};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;
use carvetime_core::safety::Food;
use chrono::TimeDelta;

/// Later it is another day's question.
const TODAY: TimeDelta = TimeDelta::hours(8);
/// What is done with the whole bird from the heat on.
const WITH_THE_BIRD: [Step; 10] = [
    Step::Check,
    Step::Pull,
    Step::Stand,
    Step::Carve,
    Step::Pack,
    Step::Travel,
    Step::Reheat,
    Step::Serve,
    Step::Chill,
    Step::Leftovers,
];
/// What is done with it before that.
const BEFORE_THE_HEAT: [Step; 8] =
    [Step::Buy, Step::Thaw, Step::Water, Step::Salt, Step::Rest, Step::Temper, Step::Fire, Step::On];
/// What is done with leftovers.
const WITH_LEFTOVERS: [Step; 1] = [Step::Leftovers];

/// Ends the jobs for what `chilled` put away too late; says which. A bird cooked ahead was all of it, and so is one that nobody has
/// eaten of yet; else it was what was left over.
pub(super) fn end(plan: &mut LivePlan, chilled: u8, now: Moment) -> Option<Text> {
    let uneaten = plan.wish.dinner.is_some_and(|dinner| dinner > now);
    let whole = chilled == 0 && (uneaten || plan.job(Step::Reheat, 0).is_some());
    let ended = end_jobs(plan, if whole { &WITH_THE_BIRD } else { &WITH_LEFTOVERS }, now);
    (!ended.is_empty()).then(|| Text::new("room-chill-ended").with("jobs", Arg::List(ended)))
}

/// Nobody is called for these any more; which they were, as people know them.
fn end_jobs(plan: &mut LivePlan, over: &[Step], now: Moment) -> Vec<Text> {
    let mut ended: Vec<Step> = Vec::new();
    let mut named = Vec::new();
    for job in plan.jobs.iter_mut().filter(|job| job.state == JobState::Waiting) {
        let Some(step) = job.step().filter(|step| over.contains(step)) else { continue };
        job.state = JobState::Skipped { by: None, at: now };
        job.call_at = None;
        let known = ended.contains(&step) || !step.needs_hands() || step == Step::Serve;
        if !known {
            named.push(plan_words::step_name(step, job.nth));
        }
        ended.push(step);
    }
    named
}

/// "Threw it all away", from the heat on: it ends here. `false`: the words say nothing of it, or there is nothing cooked to throw away.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let (now, by) = (sitting.now, sitting.speaker());
    if !reading::is_thrown_away(text, sitting.lexicon()) {
        return false;
    }
    if sitting.room.plan.as_ref().is_some_and(is_gone) {
        return says_gone(sitting);
    }
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| plan.is_off() || plan.on_since(now).is_some()) else {
        return new_bird::tossed(sitting, text);
    };
    plan.remember("tossed", None, by, now);
    let waits = |job: &LiveJob| job.state == JobState::Waiting;
    let fed = plan.job(Step::Serve, 0).is_none_or(|job| !waits(job)) && plan.wish.dinner.is_some_and(|at| at <= now);
    end_bird(plan, now);
    let undo = undo::newest(plan);
    let text = Text::new(if fed { "cook-tossed-rest" } else { "cook-tossed" });
    let hint = if fed { None } else { new_bird::hint(sitting) };
    sitting.answer(text).lines(hint).row([button("room-button-undo", &undo)]);
    board::refresh(sitting);
    true
}

/// Nobody is called for anything with that bird any more.
pub(super) fn end_bird(plan: &mut LivePlan, now: Moment) {
    end_jobs(plan, &BEFORE_THE_HEAT, now);
    end_jobs(plan, &WITH_THE_BIRD, now);
    // Its last day over already, it is gone all the same.
    if let Some(last) = plan.job_mut(Step::Leftovers, 0) {
        last.state = JobState::Skipped { by: None, at: now };
    }
}

/// "It's still frozen in the middle", "salted it", "it's in the oven", of a bird that was thrown away: that it was. `false`: something else is
/// said, or it wasn't.
pub(super) fn of_gone(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if !sitting.room.plan.as_ref().is_some_and(is_gone) {
        return false;
    }
    let lexicon = sitting.lexicon();
    let of_bird = |step: Option<Step>| step.is_some_and(|step| !matches!(step, Step::Buy | Step::Fire | Step::Dish));
    let at = reading::read_report_at(text, &sitting.ground()).map(|(report, _)| report);
    let report = reading::read_report(text, lexicon).or(at).or_else(|| reading::report_beside(text, lexicon));
    let told = report.is_some_and(|report| of_bird(report.step))
        || reading::read_put_frozen(text, lexicon).is_some()
        || reading::read_warm_thaw(text, lexicon).is_some()
        || reading::says_thawed(text, lexicon)
        || reading::says_never_thawed(text, lexicon);
    told && says_gone(sitting)
}

/// "Do we really need to throw it out?", "can we eat it?", of what was thrown away: it was. `false`: nobody asks so, or it wasn't.
pub(super) fn asked(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let freezes = freezes(sitting, text);
    let lexicon = sitting.lexicon();
    let eats = reading::asks_to_eat(text, lexicon) || reading::asks_if_still_good(text, lexicon);
    if is_of_the_rest(sitting, text) && is_over(sitting) {
        return true;
    }
    if !freezes && (!eats || names_other_food(text, lexicon)) {
        return false;
    }
    if says_gone(sitting) {
        return true;
    }
    // Stood out too long, as it was told, and nobody has thrown it away yet.
    freezes && is_over(sitting) || !freezes && (last_day(sitting, text) || days_after(sitting, text))
}

/// "How do we warm up the rest?", "good until when?", "her plate has been out since eight, can she eat it?".
fn is_of_the_rest(sitting: &Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, lexicon);
    if !asks || names_other_food(text, lexicon) {
        return false;
    }
    let rest = |food| matches!(food, Food::Leftovers | Food::CookedInGravy | Food::Soup | Food::Stuffing);
    match questions::read(sitting, text) {
        Some(Question::Keeps { food, .. } | Question::Reheat { food }) => rest(food),
        // "How do we warm it up, for her who is pregnant?"
        Some(Question::Diner(_) | Question::Advice(Advice::Habit(Habit::Fragile))) => {
            let sentence = Sentence::read(text, lexicon);
            sentence.has("ask-reheat") || sentence.has("food-leftovers")
        }
        Some(Question::LeftOut { ahead: false, .. }) => reading::speaks_of_a_meal(text, lexicon),
        _ => false,
    }
}

/// It was thrown away, or stood out too long today, as it was told: says so. `false`: neither.
pub(super) fn is_over(sitting: &mut Sitting<'_>) -> bool {
    if says_gone(sitting) {
        return true;
    }
    let now = sitting.now;
    let today = |plan: &LivePlan| alarms::off_at(plan).is_some_and(|off| now - off <= TODAY);
    let condemned = sitting.room.plan.as_ref().is_some_and(|plan| today(plan) && is_condemned(plan, now));
    if condemned {
        sitting.answer(Text::new("room-limit-chill")).urgency(Urgency::Safety);
    }
    condemned
}

/// "Is the turkey still good?" of what was put away: its last day. `false`: it wasn't, or other food is named.
fn last_day(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let chilled = |job: &LiveJob| matches!(job.state, JobState::Done { .. });
    let away = sitting.room.plan.as_ref().and_then(|plan| plan.job(Step::Chill, 0)).is_some_and(chilled);
    let Some(day) = questions::leftovers_of(sitting).filter(|_| away && names_no_other(sitting, text)) else {
        return false;
    };
    sitting.answer(day).urgency(Urgency::Safety);
    true
}

/// Every word is known here, and none is of another dish or a drink.
pub(super) fn names_no_other(sitting: &Sitting<'_>, text: &str) -> bool {
    let (lexicon, sentence) = (sitting.lexicon(), Sentence::read(text, sitting.lexicon()));
    let dish = (0..sentence.len()).any(|at| sentence.of(at, "dish-").is_some());
    let counts = |word: &String| word.contains(|c: char| c.is_ascii_digit());
    let known = lexicon.talk_words(text).iter().all(|word| counts(word) || lexicon.knows(word));
    // "Is the pizza ok, it's from yesterday": a word that is known, and no bird's.
    known && !dish && !sentence.has("aside-drink") && !names_other_food(text, lexicon)
}

fn names_other_food(text: &str, lexicon: &'static reading::Lexicon) -> bool {
    reading::names_what_is_beside(text, lexicon)
}

/// "Can we still eat the turkey?", days after it came off, and nobody said whether it was put away in time: its last day, and what that
/// holds for. `false`: it was put away, stood too long as it was told, came off today, or other food is named.
pub(super) fn days_after(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_ref() else { return false };
    let waits = plan.job(Step::Chill, 0).is_some_and(|job| job.state == JobState::Waiting);
    let later = alarms::off_at(plan).is_some_and(|off| now - off > TODAY);
    if !waits || !later || alarms::stood_too_long(plan) || !names_no_other(sitting, text) {
        return false;
    }
    let Some(day) = questions::leftovers_of(sitting) else { return false };
    sitting.answer_all(vec![day, Text::new("room-leftovers-if")]).urgency(Urgency::Safety);
    true
}

/// Its two hours were over, as it was told, or its hour for the fridge is.
fn is_condemned(plan: &LivePlan, now: Moment) -> bool {
    let late = |job: &LiveJob| job.step() == Some(Step::Chill) && job.state == JobState::Waiting && now > job.latest;
    alarms::stood_too_long(plan) || plan.is_off() && plan.jobs.iter().any(late)
}

/// "Can we freeze it?", and nothing else is named.
fn freezes(sitting: &Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let cold = sentence.has("place-freezer") || sentence.has("ask-refreeze");
    cold && text.contains(['?', '¿']) && names_no_other(sitting, text)
}

/// Whether what is planned here was thrown away.
pub(super) fn is_gone_here(sitting: &Sitting<'_>) -> bool {
    sitting.room.plan.as_ref().is_some_and(is_gone)
}

/// What was thrown away is neither moved nor asked for again: says so. `false`: it wasn't.
pub(super) fn says_gone(sitting: &mut Sitting<'_>) -> bool {
    let gone = sitting.room.plan.as_ref().is_some_and(is_gone);
    if gone {
        let hint = new_bird::hint(sitting);
        sitting.answer(Text::new("cook-gone")).lines(hint);
    }
    gone
}

/// "Packed", "reheated it", of what was to be thrown away: says so again. `false`: nothing is served of it.
pub(super) fn is_of_gone(sitting: &mut Sitting<'_>, step: Option<Step>) -> bool {
    let serves = step.is_some_and(|step| {
        matches!(step, Step::Carve | Step::Pack | Step::Travel | Step::Reheat | Step::Serve | Step::Chill)
    });
    serves && says_gone(sitting)
}

/// Whether it was thrown away: its last day was called off, and nobody was told to do so.
pub(super) fn is_gone(plan: &LivePlan) -> bool {
    let last = plan.job(Step::Leftovers, 0);
    last.is_some_and(|job| matches!(job.state, JobState::Skipped { by: None, .. }))
}
