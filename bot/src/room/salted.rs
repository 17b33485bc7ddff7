//! The salt of the planned bird: on it before its hour, on it twice, and how much it takes, as its own plan has it.

use super::action::JobRef;
use super::sitting::name;
use super::state::{JobState, LiveJob};
use super::turn::Urgency;
use super::{Sitting, dose, jobs};
use crate::ask::{self, Answer, Asker, BirdSaid, Habit, Question};
use crate::reading::sentence::Sentence;
use crate::reading::{Report, ReportKind, Told};
use crate::words::{Arg, Text};
use carvetime_core::bird::{Form, Kind};
use carvetime_core::plan::{Salting, Step};
use carvetime_core::salt::Strength;
use chrono::TimeDelta;

/// A salting this close to the heat has no rest behind it.
const STRAIGHT: TimeDelta = TimeDelta::hours(2);

/// "Salted it", before its hour: done, or the next one salts it again. `false`: the bird is still ice, or not the one that is planned.
pub(super) fn early(sitting: &mut Sitting<'_>, it: JobRef) -> bool {
    let (now, by) = (sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut().filter(|_| it.step == Step::Salt) else { return false };
    let waits = |job: &&LiveJob, step: Step| job.step() == Some(step) && job.state == JobState::Waiting;
    let unthawed = plan.ahead(now).any(|job| job.step() == Some(Step::Thaw));
    let to_buy = plan.jobs.iter().any(|job| waits(&job, Step::Buy));
    // A bird at home where one is still to be bought is another one.
    if unthawed || to_buy && plan.wish.at_home == Some(true) {
        return false;
    }
    if to_buy {
        plan.remember("done", Some(Step::Buy), by, now);
        plan.record(Step::Buy, 0, now, true, by);
    }
    jobs::done(sitting, it);
    true
}

/// "Salted it", of a bird that is: by whom and when, and what is done if it is on it twice. `false`: it isn't.
pub(super) fn twice(sitting: &mut Sitting<'_>, report: &Report) -> bool {
    // Two ways to say one thing.
    const AT_ONCE: TimeDelta = TimeDelta::minutes(10);
    if report.step != Some(Step::Salt) || report.kind != ReportKind::Done {
        return false;
    }
    let now = sitting.now;
    let plan = sitting.room.plan.as_ref().filter(|plan| plan.on_since(now).is_none() && !plan.is_off());
    let Some(JobState::Done { by, at }) = plan.and_then(|plan| plan.job(Step::Salt, 0)).map(|job| job.state) else {
        return false;
    };
    let same = by == sitting.speaker();
    if same && now - at <= AT_ONCE {
        return false;
    }
    let first = match by.filter(|_| !same) {
        Some(by) => Text::new("room-salted-by").with("name", name(sitting, by)),
        None => Text::new("room-salted"),
    };
    let advice = Question::Advice(ask::Advice::Habit(Habit::SaltedTwice));
    let lines = ask::answer(&advice, &Asker::of_reader(&sitting.reader())).map(|answer| answer.lines());
    sitting.answer(first.with("at", Arg::DayClock(at))).lines(lines.unwrap_or_default()).urgency(Urgency::Due);
    true
}

/// "How much salt?" of the planned bird: its dose, and when, by the plan; brined, what its water takes; salted already, that it is. `None`: of
/// another bird, or there is no plan.
pub(super) fn asked(sitting: &Sitting<'_>, question: &Question, asker: &Asker) -> Option<Answer> {
    let Question::SaltDose { bird, salt, strength } = question else { return by_weight(sitting, question, asker) };
    let plan = sitting.room.plan.as_ref().filter(|plan| bird.mass.is_none() && !plan.is_off())?;
    let order = plan.order(sitting.zone_or_utc())?;
    if bird.kind != order.bird.kind && bird.kind != Kind::Turkey {
        return None;
    }
    let own = order.bird;
    let solution = own.solution.or(bird.solution).or(plan.wish.solution_percent);
    let whole = BirdSaid {
        kind: own.kind,
        mass: Some(own.mass),
        condition: None,
        form: own.form,
        stuffed: own.stuffed,
        solution,
    };
    if order.salting == Salting::Wet {
        let brine = Question::Brine { percent: None, of_water: false, water: None, bird: whole, salt: *salt };
        return ask::answer(&brine, asker).ok();
    }
    let strength = if *strength == Strength::Usual { dose::strength(&plan.wish) } else { *strength };
    let mut answer = ask::answer(&Question::SaltDose { bird: whole, salt: *salt, strength }, asker).ok()?;
    by_plan(sitting, &mut answer);
    Some(answer)
}

/// "How much salt per pound?" while a bird is planned: when it goes on hangs on the plan as well.
fn by_weight(sitting: &Sitting<'_>, question: &Question, asker: &Asker) -> Option<Answer> {
    let plan =
        sitting.room.plan.as_ref().filter(|plan| matches!(question, Question::SaltPer { .. }) && !plan.is_off())?;
    plan.order(sitting.zone_or_utc()).filter(|order| order.salting != Salting::Wet)?;
    let mut answer = ask::answer(question, asker).ok()?;
    by_plan(sitting, &mut answer);
    Some(answer)
}

/// "24 h or more in the fridge" gives way to what this plan has.
fn by_plan(sitting: &Sitting<'_>, answer: &mut Answer) {
    let Some(plan) = &sitting.room.plan else { return };
    let on = plan.job(Step::On, 0).map(|job| job.at);
    let salt = plan.job(Step::Salt, 0);
    let when = match salt.map(|job| (&job.state, job.at)) {
        Some((JobState::Done { at, .. }, _)) => {
            let text = Text::new("room-salted").with("at", Arg::DayClock(*at));
            // Asked of a bird that is salted, that comes first.
            answer.texts.retain(|text| text.id != "ask-dose-rest");
            answer.texts.insert(0, text);
            return;
        }
        Some((JobState::Waiting, at)) => {
            on.map(|on| {
                // Thawed in water it goes straight on.
                let id = if on - at < STRAIGHT { "room-salt-straight" } else { "room-salt-then" };
                Text::new(id).with("salt", Arg::DayClock(at)).with("on", Arg::DayClock(on))
            })
        }
        Some((JobState::Skipped { .. }, _)) | None => {
            on.map(|on| Text::new("room-salt-no-rest").with("on", Arg::DayClock(on)))
        }
    };
    let Some(when) = when else { return };
    for text in answer.texts.iter_mut().filter(|text| text.id == "ask-dose-rest") {
        *text = when.clone();
    }
}

/// "Put 3 tbsp of coarse salt on it", of the planned bird before the heat: that amount as a question, to be held against its dose. "Is that a
/// lot of salt?" is of the amount told last.
pub(super) fn put_on(sitting: &Sitting<'_>, text: &str, asker: &Asker) -> Option<Question> {
    const SHORT: usize = 80;
    let lexicon = sitting.lexicon();
    let plan = sitting.room.plan.as_ref().filter(|plan| plan.on_since(sitting.now).is_none() && !plan.is_off())?;
    plan.order(sitting.zone_or_utc()).filter(|order| order.salting == Salting::Dry)?;
    let over = |told: &str| match ask::read_question(told, asker).ok()? {
        Question::SaltWeigh { amount, salt } => {
            let (kind, form) = (Kind::Turkey, Form::Whole);
            let bird = BirdSaid { kind, mass: None, condition: None, form, stuffed: false, solution: None };
            Some(Question::OverSalt { amount: Some(amount), enough: false, salt: Some(salt), bird })
        }
        question @ Question::OverSalt { amount: Some(_), .. } => Some(question),
        _ => None,
    };
    let short = text.chars().count() <= SHORT;
    if short && !text.contains(['?', '¿']) && Told::of(text, lexicon).opens_with("put-on") {
        return over(text);
    }
    let sentence = Sentence::read(text, lexicon);
    let salty = sentence.has("salt-any") && sentence.has("ask-too-much");
    let amounts = (0..sentence.len()).any(|at| sentence.amount(at).is_some() || sentence.number(at).is_some());
    let asks = short && text.contains(['?', '¿']) && salty && !amounts;
    let own = sitting.speaker().and_then(|who| sitting.room.questions.get(&who));
    let told = || own.into_iter().chain(sitting.room.questions.values()).find_map(|told| over(told));
    asks.then(told).flatten()
}
