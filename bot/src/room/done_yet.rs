//! "It's done", "looks done to me", "can I take it out?", "can we eat it?": what was read last decides, and no job is marked by it.

use super::action::{Action, JobRef};
use super::sitting::{Sitting, button, labelled};
use super::state::{JobState, LiveJob, LivePlan, StoredReading};
use super::turn::Urgency;
use super::{alarms, forecast, hot_day, jobs, kept_hot, plan_words, questions, readings, reports, spoiled, stood_out};
use crate::ask::{Advice, Habit};
use crate::reading::{self, ReportKind, sentence::Sentence};
use crate::words::{Arg, Text};
use carvetime_core::plan::Step;
use carvetime_core::quantity::in_fahrenheit;
use chrono::TimeDelta;

/// Read so cold, it is not taken for hot on a typed yes. Common practice, no source.
const FAR_BELOW_F: f64 = 150.0;

/// `false`: the words are of something else, or another answer serves as well.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    if is_answered(sitting, text) || is_of_the_pull(sitting, text) {
        return true;
    }
    if reading::says_underdone(text, lexicon) || is_raw_at_the_table(sitting, text) {
        return underdone(sitting);
    }
    let eat = asks_to_eat(sitting, text);
    if readings::cooks(sitting) {
        let says = reading::says_bird_done(text, lexicon) && !is_of_another_job(sitting);
        return (says || reading::asks_to_pull(text, lexicon) || eat) && in_the_heat(sitting, says);
    }
    eat && (spoiled::days_after(sitting, text)
        || stood_out::asked(sitting, text)
        || still_good(sitting, text)
        || off_the_heat(sitting))
}

/// Whether what stands off the heat may be eaten yet, once that is in question: its hours are over, or "still" was asked.
fn still_good(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let asks = stood_out::is_over(sitting) || reading::asks_if_still_good(text, lexicon);
    // "It's 110 now, still ok?" is of the number as well: see `cooled`.
    let numbers = text.contains(|c: char| c.is_ascii_digit());
    asks && !numbers && readings::below(sitting).is_none() && stood_out::to_eat(sitting)
}

/// The same, said to everyone in a group: what is dangerous to leave alone, and whether it is done, once anything was read.
pub(super) fn overheard(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    if is_of_the_pull(sitting, text) {
        return true;
    }
    if reading::says_underdone(text, lexicon) || is_raw_at_the_table(sitting, text) {
        return underdone(sitting);
    }
    // Where its hours are over nobody is left to wonder.
    let numbers = text.contains(|c: char| c.is_ascii_digit());
    let still = || reading::asks_if_still_good(text, lexicon) && spoiled::names_no_other(sitting, text);
    let wonders = stood_out::is_over(sitting) || readings::below(sitting).is_none() && still();
    if !readings::cooks(sitting) && !numbers && wonders && asks_to_eat(sitting, text) {
        return stood_out::to_eat(sitting);
    }
    let asks =
        readings::cooks(sitting) && reading::asks_to_pull(text, lexicon) && !reading::asks_vaguely(text, lexicon);
    // "È pronto" is a question by its mark alone.
    let marked = text.contains(['?', '¿']) || reading::begins_as_question(text, lexicon);
    asks && marked && in_the_heat(sitting, false)
}

/// "The part by the thigh bone looks raw", "its pink. 151 there", of a bird that has come off.
fn is_raw_at_the_table(sitting: &Sitting<'_>, text: &str) -> bool {
    if readings::cooks(sitting) || sitting.room.plan.as_ref().and_then(alarms::off_at).is_none() {
        return false;
    }
    let lexicon = sitting.lexicon();
    let below = if sitting.us_units() { 90..165 } else { 32..74 };
    let reads = |word: &str| {
        let digits = word.trim_matches(|c: char| !c.is_ascii_digit());
        digits.parse::<u16>().is_ok_and(|number| below.contains(&number))
    };
    let cold = || text.split_whitespace().any(reads);
    reading::speaks_of_raw(text, lexicon) || reading::speaks_of_pink(text, lexicon) && cold()
}

/// "This is not cooked": in the heat it stays there, off it goes back. `false`: there is no cooked bird, or not of today.
fn underdone(sitting: &mut Sitting<'_>) -> bool {
    const TODAY: TimeDelta = TimeDelta::hours(8);
    if readings::cooks(sitting) {
        if !is_read(sitting) {
            return in_the_heat(sitting, true);
        }
    } else if sitting.room.plan.as_ref().and_then(alarms::off_at).is_none_or(|off| sitting.now - off >= TODAY) {
        return false;
    }
    questions::advise(sitting, Advice::Habit(Habit::RawInside));
    true
}

/// "Can we serve it", with or without its question mark, of the bird: no dish, no leftovers and no hour are named.
pub(super) fn asks_to_eat(sitting: &Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let sentence = Sentence::read(text, lexicon);
    let other = |at: usize| sentence.of(at, "food-").is_some() || sentence.of(at, "dish-").is_some();
    let numbers = text.contains(|c: char| c.is_ascii_digit());
    let asks = reading::asks_to_eat(text, lexicon)
        || !numbers && reading::asks_if_still_good(text, lexicon) && spoiled::names_no_other(sitting, text)
        || !numbers && reading::begins_as_question(text, lexicon) && reading::speaks_of_eating(text, lexicon);
    asks && !(0..sentence.len()).any(other) && !reading::Told::of(text, lexicon).says("other-food")
}

/// "I pulled it at 160": read, and then off. `false`: no such thing was said, or no bird is on.
pub(super) fn pulled_at(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let said = reading::report_at_reading(text, sitting.lexicon()).filter(|_| readings::cooks(sitting));
    let Some((report, read)) = said else { return false };
    readings::heard(sitting, &read, true, false) && reports::heard(sitting, &report)
}

/// "Yes, it does", "no", typed below "Does it read that now?".
fn is_answered(sitting: &mut Sitting<'_>, text: &str) -> bool {
    const JUST_ASKED: TimeDelta = TimeDelta::minutes(5);
    let now = sitting.now;
    let asked = |plan: &&LivePlan| plan.off_asked.is_some_and(|at| now - at <= JUST_ASKED);
    let Some(it) = sitting.room.plan.as_ref().filter(asked).and_then(|_| jobs::by_step(sitting, Step::Pull, None))
    else {
        return false;
    };
    let lexicon = sitting.lexicon();
    if reading::says_it_reads_so(text, lexicon) {
        // From so far below a word is too little.
        if readings::below(sitting).is_some_and(|(_, read, _)| in_fahrenheit(read) < FAR_BELOW_F) {
            let text = Text::new("cook-done-unread").with("target", Arg::Temperature(super::target()));
            sitting.answer(text).urgency(Urgency::Safety);
        } else {
            jobs::surely_done(sitting, it);
        }
    } else if reading::is_plain_no(text, lexicon) || reading::says_it_reads_less(text, lexicon) {
        sitting.answer(back_in()).urgency(Urgency::Safety);
        jobs::later(sitting, it);
    } else {
        return false;
    }
    true
}

/// "Done", "finished!", when the pull was called last and the look before it is open as well: off, where every spot was read at the target;
/// else it is asked which. `false`: something else is said, or was called.
fn is_of_the_pull(sitting: &mut Sitting<'_>, text: &str) -> bool {
    /// A call is answered within this time, by one it was not for.
    const JUST_CALLED: TimeDelta = TimeDelta::minutes(45);
    let report = reading::read_report(text, sitting.lexicon());
    let bare = report.is_some_and(|report| report.step.is_none() && report.kind == ReportKind::Done);
    if !bare || !readings::cooks(sitting) || is_of_another_job(sitting) {
        return false;
    }
    let Some(plan) = &sitting.room.plan else { return false };
    let called = plan.waiting().filter(|job| job.calls > 0).max_by_key(|job| (job.at, job.step()));
    let newest = called.filter(|job| job.step() == Some(Step::Pull));
    let lately = |job: &LiveJob| sitting.now - job.at <= JUST_CALLED || job.owner == sitting.speaker();
    let look = plan.waiting().find(|job| job.step() == Some(Step::Check) && job.calls > 0);
    if !newest.is_some_and(lately) {
        return false;
    }
    let (serial, look) = (plan.serial, look.map(|job| job.nth));
    let pull = JobRef { serial, step: Step::Pull, nth: 0 };
    if is_read(sitting) && readings::below(sitting).is_none() && !alarms::stood_too_long(plan) {
        jobs::done(sitting, pull);
        return true;
    }
    let ask = Text::new("room-done-which").with("target", Arg::Temperature(super::target()));
    let off = labelled(plan_words::step_done(Step::Pull, 0), &Action::Done(pull));
    let looked = look.map(|nth| JobRef { serial, step: Step::Check, nth });
    let other = match looked {
        Some(look) => button("room-button-looked", &Action::Done(look)),
        None => button("room-button-stays-on", &Action::Later(pull)),
    };
    sitting.answer(ask).key("done-which").urgency(Urgency::Safety).row([off, other]);
    true
}

/// Out of the heat too early, it goes back.
pub(super) fn back_in() -> Text {
    Text::new("cook-back-in").with("target", Arg::Temperature(super::target()))
}

/// "Done" while something else is due is of that.
fn is_of_another_job(sitting: &Sitting<'_>) -> bool {
    jobs::due_now(sitting).is_some_and(|due| !matches!(due.step, Step::Check | Step::Pull))
}

/// Not before every spot has been read at the target; when that will be is told with it.
pub(super) fn in_the_heat(sitting: &mut Sitting<'_>, says: bool) -> bool {
    let target = Arg::Temperature(super::target());
    let verdict = match readings::below(sitting) {
        Some((spot, read, at)) => Text::new("cook-not-done")
            .with("spot", Arg::Choice(spot))
            .with("read", Arg::Temperature(read))
            .with("at", Arg::Clock(at)),
        None if is_read(sitting) => {
            let over = sitting.room.plan.as_ref().is_some_and(alarms::stood_too_long);
            Text::new(if over { "room-log-too-long" } else { "room-log-all" })
        }
        None if !says => return false,
        None => Text::new("cook-done-unread"),
    };
    // Read done everywhere, there is nothing left to foresee.
    let line = if is_read(sitting) { None } else { forecast::foresight(sitting).map(|sight| sight.line()) };
    sitting.answer(verdict.with("target", target)).lines(line).urgency(Urgency::Safety);
    true
}

/// Whole or cut up, and not yet put away.
pub(super) fn off_the_heat(sitting: &mut Sitting<'_>) -> bool {
    let Some(plan) = sitting.room.plan.as_ref() else { return false };
    let waits = plan.job(Step::Chill, 0).is_some_and(|job| job.state == JobState::Waiting);
    let Some(off) = alarms::off_at(plan).filter(|_| waits && !spoiled::is_gone(plan) && !alarms::stood_too_long(plan))
    else {
        return false;
    };
    let by = kept_hot::known(plan).unwrap_or(off) + hot_day::most(plan);
    let over = (by < sitting.now).then(|| kept_hot::over(plan, sitting.now));
    let text = over.or_else(|| readings::under(sitting)).unwrap_or_else(|| {
        let id = match is_read(sitting) {
            true => "cook-eat",
            false => "cook-eat-unread",
        };
        Text::new(id).with("target", Arg::Temperature(super::target())).with("by", Arg::Clock(by))
    });
    sitting.answer(text).urgency(Urgency::Safety);
    true
}

/// Breast, thigh and wing were each read at the target.
pub(super) fn is_read(sitting: &Sitting<'_>) -> bool {
    let Some(plan) = sitting.room.plan.as_ref() else { return false };
    let target = in_fahrenheit(super::target());
    let counted = plan.counted();
    let spots: [fn(&StoredReading) -> Option<f64>; 3] = [|it| it.breast_c, |it| it.thigh_c, |it| it.wing_c];
    let hot = |celsius: f64| celsius * 1.8 + 32.0 >= target - 0.5;
    spots.iter().all(|spot| counted.iter().filter_map(|reading| spot(reading)).any(hot))
}
