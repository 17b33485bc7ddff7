//! A raw bird that has to be thrown away, and the one bought in its place: the same dinner is planned anew with it.
//!
//! Owns when that is heard, and what of the old plan the new one takes over: people, hour, cooker, dishes, and who has which job. What the
//! bird itself is like (weight, condition, salt, thaw) is told and planned anew. Start at [`told`] and [`condemned`].

use super::sitting::button;
use super::state::{Draft, JobState, LiveJob, LivePlan};
use super::turn::Urgency;
use super::{PersonId, Sitting, alarms, board, planning, spoiled, undo};
use crate::ask::{Advice, Question};
use crate::reading::{self, NewBird, Wish, sentence::Sentence};
use crate::words::Text;
use carvetime_core::plan::{Fact, Moment, Salting, Step};

/// Whether another bird may take the place of the planned one: it was thrown away, or may have to be, and dinner is ahead.
fn is_awaited(plan: &LivePlan, now: Moment) -> bool {
    let lost = plan.in_doubt.is_some() || spoiled::is_gone(plan) || alarms::stood_too_long(plan);
    lost && plan.wish.dinner.is_some_and(|dinner| dinner > now)
}

/// What to tell of another bird, while one may come.
pub(super) fn hint(sitting: &Sitting<'_>) -> Option<Text> {
    let plan = sitting.room.plan.as_ref().filter(|plan| is_awaited(plan, sitting.now))?;
    plan.wish.dinner.map(|_| Text::new("cook-new-bird"))
}

/// "Got a new turkey, 12 lb fresh", after the first had to go. `false`: nothing of another bird is said, or none is awaited.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(who) = sitting.speaker() else { return false };
    match reading::read_new_bird(text, sitting.lexicon(), addressed) {
        Some(NewBird::Is) => plan_anew(sitting, who, text),
        Some(NewBird::Wanted) if addressed => {
            let Some(hint) = hint(sitting) else { return false };
            sitting.answer(hint);
            true
        }
        _ => false,
    }
}

/// "/plan 12 lb fresh turkey", after the first had to go: for the dinner that stands, unless another is told. `false`: none is awaited.
pub(super) fn planned(sitting: &mut Sitting<'_>, who: PersonId, text: &str) -> bool {
    let (wish, _) = planning::read(sitting, text);
    let bird = wish.mass_g.is_some() || wish.kind.is_some();
    let dinner = wish.dinner.is_some() || wish.dinner_day.is_some() || wish.dinner_hour.is_some();
    bird && !dinner && !sitting.room.drafts.contains_key(&who) && plan_anew(sitting, who, text)
}

fn plan_anew(sitting: &mut Sitting<'_>, who: PersonId, text: &str) -> bool {
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| is_awaited(plan, sitting.now)) else { return false };
    let (serial, wish) = (plan.serial, same_dinner(plan));
    let (told, problems) = planning::read(sitting, text);
    let begun = sitting.room.drafts.get(&who).is_some_and(|draft| draft.replaces == Some(serial));
    if !begun {
        sitting.room.drafts.insert(who, Draft { wish, replaces: Some(serial), ..Draft::default() });
    }
    planning::told(sitting, who, told, &problems);
    true
}

/// What stays of a wish when its bird goes.
fn same_dinner(plan: &LivePlan) -> Wish {
    let before = &plan.wish;
    // Left out because the packer had salted it, or for want of time: of this bird that is not known.
    let unsalted = before.salting.as_deref() == Some(Salting::None.name());
    let by_the_packer = before.solution_percent.is_some() || before.presalted == Some(true);
    let of_the_bird = by_the_packer || before.salt_last == Some(true);
    let was_salted = plan.history.iter().any(|change| change.jobs.iter().any(|job| job.step() == Some(Step::Salt)));
    let salting = before.salting.clone().filter(|_| !unsalted || !of_the_bird && !was_salted);
    Wish {
        mass_g: None,
        condition: None,
        solution_percent: None,
        presalted: None,
        use_by: None,
        at_home: None,
        thawing: None,
        short_rest: None,
        salt_last: None,
        start: None,
        salting,
        ..before.clone()
    }
}

// ---- thrown away

/// What an answer on food that is no longer safe, or may not be, means for the raw bird that is planned; `discard`: it told to throw it away.
pub(super) fn condemned(sitting: &mut Sitting<'_>, text: &str, question: &Question, discard: bool) {
    let now = sitting.now;
    let surely = match question {
        Question::WarmThaw(reading::WarmThaw::Kitchen) => true,
        Question::LeftOut { ahead: false, .. } if discard => true,
        Question::WarmThaw(_) | Question::Advice(Advice::GarageThaw | Advice::Smell) => false,
        Question::Keeps { .. } if discard => false,
        _ => return,
    };
    let raw = |plan: &&LivePlan| plan.on_since(now).is_none() && !plan.is_off() && !spoiled::is_gone(plan);
    let Some(plan) = sitting.room.plan.as_ref().filter(raw) else { return };
    let in_house = plan.job(Step::Buy, 0).is_none_or(|job| job.state != JobState::Waiting || job.calls > 0);
    let kind = planning::read(sitting, text).0.kind;
    let of_other = kind.as_ref().is_some_and(|kind| *kind != super::order::kind(&plan.wish).name());
    let sentence = Sentence::read(text, sitting.lexicon());
    let dish = (0..sentence.len()).any(|at| sentence.of(at, "dish-").is_some());
    let of_it = !dish && (kind.is_some() || sentence.has("bird-any") || spoiled::names_no_other(sitting, text));
    let thaw = matches!(question, Question::WarmThaw(_));
    if of_other || !(thaw || in_house && of_it) {
        return;
    }
    if surely {
        ended(sitting, Some(Text::new("cook-tossed-raw")));
        return;
    }
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.in_doubt = Some(now);
    }
    let hint = hint(sitting);
    if let Some(say) = sitting.says.last_mut() {
        say.lines(hint);
    }
}

/// Nothing more is due with it: said with the message that said so.
pub(super) fn ended(sitting: &mut Sitting<'_>, said: Option<Text>) {
    let (now, by) = (sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    plan.remember("tossed", None, by, now);
    spoiled::end_bird(plan, now);
    let undo = undo::newest(plan);
    let hint = hint(sitting);
    if let Some(say) = sitting.says.last_mut() {
        say.lines(said).lines(hint).urgency(Urgency::Safety);
        say.row([button("room-button-undo", &undo)]);
    }
    board::refresh(sitting);
}

/// "Threw it out", "took it back to the store", of a raw bird. `false`: it is not sure that the bird is meant.
pub(super) fn tossed(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let now = sitting.now;
    let raw = |plan: &&LivePlan| plan.on_since(now).is_none() && !plan.is_off() && !spoiled::is_gone(plan);
    let Some(plan) = sitting.room.plan.as_ref().filter(raw) else { return false };
    let sentence = Sentence::read(text, sitting.lexicon());
    let named = (0..sentence.len()).any(|at| sentence.of(at, "bird-").is_some());
    if plan.in_doubt.is_none() && !named {
        return false;
    }
    sitting.answer(Text::new("cook-tossed"));
    ended(sitting, None);
    true
}

// ---- in its place

/// The dishes that are done already, for the solver of a draft in place of that plan.
pub(super) fn done_dishes(sitting: &Sitting<'_>, replaces: Option<u32>) -> Vec<Fact> {
    let plans = sitting.room.plans();
    let old = plans.iter().find(|plan| Some(plan.serial) == replaces);
    let dish = |fact: &&super::state::StoredFact| fact.step == Step::Dish.name();
    let facts = old.map(|plan| plan.facts.iter().filter(dish).collect::<Vec<_>>()).unwrap_or_default();
    facts.into_iter().map(|fact| Fact { step: Step::Dish, nth: fact.nth, at: fact.at, done: fact.done }).collect()
}

/// The plan a draft takes the place of, if that one still stands.
pub(super) fn replaced(sitting: &Sitting<'_>, draft: &Draft) -> Option<u32> {
    let serial = draft.replaces?;
    sitting.room.plans().iter().any(|plan| plan.serial == serial).then_some(serial)
}

/// `Accept` of a draft in place of the plan in hand: its host, its place in the room, its dishes and who has which job go on.
pub(super) fn in_place(old: LivePlan, plan: LivePlan) -> LivePlan {
    let mut plan = LivePlan { beside: old.beside, host: old.host, ..plan };
    plan.facts = old.facts.iter().filter(|fact| fact.step == Step::Dish.name()).cloned().collect();
    for job in &mut plan.jobs {
        let Some(before) = old.jobs.iter().find(|before| before.step == job.step && before.nth == job.nth) else {
            continue;
        };
        job.owner = job.owner.or(before.owner);
        if job.step() == Some(Step::Dish) {
            let LiveJob { state, calls, call_at, .. } = before.clone();
            (job.state, job.calls) = (state, calls);
            job.call_at = if state == JobState::Waiting { job.call_at } else { call_at };
        }
    }
    plan
}
