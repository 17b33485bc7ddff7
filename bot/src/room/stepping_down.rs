//! Whoever can't after all: their jobs are free again and offered in one message. Who doesn't come isn't called any more, until they
//! speak of a job again.

use super::action::{Action, JobRef};
use super::sitting::{button, labelled, name};
use super::state::{JobState, LiveJob, LivePlan, Room, Rung};
use super::turn::{Say, To, Urgency};
use super::{PersonId, RoomKind, Sitting, birds, board, hands, offering, plan_words, undo};
use crate::reading::sentence::Sentence;
use crate::reading::{self, Lexicon, Refusal};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Step};
use chrono::TimeDelta;

/// As many jobs as one message offers.
const MOST: usize = 6;
/// A job so long past its hour is not what "I can't" is about.
const JUST_CALLED: TimeDelta = TimeDelta::minutes(45);
/// The message counts as the call of a job that is due; the next follows as after a call.
const NEXT_CALL: TimeDelta = TimeDelta::minutes(8);

/// "Guys I'm out", "I can't do it", "can't carve after all". `on`: the job whose call was replied to. `false`: the words say nothing of
/// the kind, or of nothing the speaker has or was called for.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool, on: Option<JobRef>) -> bool {
    let Some(who) = sitting.speaker().filter(|_| sitting.room.kind == RoomKind::Group) else { return false };
    if sitting.room.plan.is_none() {
        return false;
    }
    if is_of_another_day(&sitting.room, text, sitting.lexicon()) {
        return false;
    }
    match reading::read_refusal(text, sitting.lexicon()) {
        None => false,
        Some(Refusal::All) => {
            excuse(sitting, who);
            let head = Text::new("sharing-out").with("name", name(sitting, who));
            let any = give_up_all(sitting, who, &head);
            if !any && addressed {
                sitting.notice(Text::new(if sitting.routed() { "sharing-out-none" } else { "room-ok" }));
            }
            true
        }
        Some(Refusal::Job(step)) => let_go(sitting, who, step) || has_none(sitting),
        Some(Refusal::This) => this(sitting, who, addressed, on) || has_none(sitting),
    }
}

/// Who tells the bot alone that they can't, and has no such job.
fn has_none(sitting: &mut Sitting<'_>) -> bool {
    let alone = sitting.routed();
    if alone {
        sitting.notice(Text::new("sharing-out-none"));
    }
    alone
}

/// "Can't make it Friday", of a dinner on Thursday: the day named is none that is planned here.
pub(super) fn is_of_another_day(room: &Room, text: &str, lexicon: &'static Lexicon) -> bool {
    let sentence = Sentence::read(text, lexicon);
    let named: Vec<&str> = (0..sentence.len()).filter_map(|at| sentence.of(at, "weekday-")).collect();
    let zone = room.taste.zone().unwrap_or(chrono_tz::Tz::UTC);
    let day = |at: Moment| at.with_timezone(&zone).format("%a").to_string().to_lowercase();
    let plans = room.plans();
    let dinners: Vec<String> = plans.iter().filter_map(|plan| plan.wish.dinner).map(day).collect();
    !named.is_empty() && !named.iter().any(|named| dinners.iter().any(|dinner| dinner == named))
}

/// `/drop all`.
pub(super) fn everything(sitting: &mut Sitting<'_>) {
    let Some(who) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    let head = cant(sitting, who);
    if !give_up_all(sitting, who, &head) {
        sitting.notice(Text::new("sharing-out-none"));
    }
}

/// Someone else is to do that job of theirs: it is free again, and offered. `false`: they don't have it.
pub(super) fn let_go(sitting: &mut Sitting<'_>, who: PersonId, step: Step) -> bool {
    give_up(sitting, who, &cant(sitting, who), |job| job.owner == Some(who) && job.step() == Some(step))
}

fn cant(sitting: &Sitting<'_>, who: PersonId) -> Text {
    Text::new("sharing-cant").with("name", name(sitting, who))
}

fn excuse(sitting: &mut Sitting<'_>, who: PersonId) {
    if !sitting.room.excused.contains(&who) {
        sitting.room.excused.push(who);
    }
    let open = |job: &&mut LiveJob| job.asked.is_some_and(|asked| asked.of == who);
    let plans = sitting.room.plan.iter_mut().chain(&mut sitting.room.others);
    plans.flat_map(|plan| &mut plan.jobs).filter(open).for_each(|job| job.asked = None);
}

/// All that `who` has is free again, and offered under `head`. `false`: they have nothing.
pub(super) fn give_up_all(sitting: &mut Sitting<'_>, who: PersonId, head: &Text) -> bool {
    let mut any = false;
    birds::each(sitting, |sitting| any |= give_up(sitting, who, head, |job| job.owner == Some(who)));
    any
}

/// "I can't do it": what they were asked for, else what they are called for, else what they have next.
fn this(sitting: &mut Sitting<'_>, who: PersonId, addressed: bool, on: Option<JobRef>) -> bool {
    if let Some(it) = hands::pending(sitting) {
        hands::answered(sitting, it, false);
        return true;
    }
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut() else { return false };
    let called = |job: &LiveJob| job.state == JobState::Waiting && job.calls > 0 && now - job.at <= JUST_CALLED;
    let fits = |job: &LiveJob| on.is_none_or(|it| job.step() == Some(it.step) && job.nth == it.nth);
    let own = |job: &&LiveJob| job.owner == Some(who) && fits(job);
    // Said to the others, it is of a job only where one was just called for, or taken over.
    let next = || plan.waiting().find(own).filter(|_| addressed || on.is_some());
    let due = plan.jobs.iter().find(|job| own(job) && called(job)).or_else(next);
    if let Some((step, nth)) = due.map(|job| (job.step.clone(), job.nth)) {
        return give_up(sitting, who, &cant(sitting, who), |job| {
            job.owner == Some(who) && job.step == step && job.nth == nth
        });
    }
    // Nobody's job, and the call reached them too.
    let mut heard = false;
    for job in plan.jobs.iter_mut().filter(|job| job.owner.is_none() && called(job) && fits(job)) {
        heard = true;
        if !job.reached.contains(&who) {
            job.reached.push(who);
        }
    }
    if heard && addressed {
        sitting.notice(Text::new("sharing-cant-noted"));
    }
    heard
}

/// Frees those of their jobs, and offers them. `false`: there are none.
fn give_up(sitting: &mut Sitting<'_>, who: PersonId, head: &Text, which: impl Fn(&LiveJob) -> bool) -> bool {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut() else { return false };
    let open = |job: &LiveJob| job.state == JobState::Waiting && which(job);
    let Some(first) = plan.jobs.iter().find(|job| open(job)).and_then(LiveJob::step) else { return false };
    plan.remember("drop", Some(first), Some(who), now);
    let free = release(plan, now, who, open);
    // The message below offers them: it keeps to what is left.
    for it in &free {
        plan.job_mut(it.step, it.nth).into_iter().for_each(|job| job.offered = 1);
    }
    let undo = undo::newest(plan);
    offer(sitting, head.clone(), &free, Some(&undo));
    if sitting.routed() {
        sitting.say(Say::new(To::Person(who), Text::new("sharing-out-noted")));
    }
    board::refresh(sitting);
    true
}

/// Makes those jobs nobody's: a call in the private chat of who had them is none of theirs any more. A job that is due goes on to the
/// others. Which are open, the many of a kind once.
pub(super) fn release(
    plan: &mut LivePlan,
    now: Moment,
    who: PersonId,
    which: impl Fn(&LiveJob) -> bool,
) -> Vec<JobRef> {
    let serial = plan.serial;
    let mut free: Vec<JobRef> = Vec::new();
    for job in plan.jobs.iter_mut().filter(|job| which(job)) {
        (job.owner, job.taken_for, job.offered) = (None, None, 0);
        job.called_in.retain(|chat| *chat != who.private_room());
        let Some(step) = job.step().filter(|_| job.state == JobState::Waiting) else { continue };
        if job.calls > 0 {
            job.calls = 1;
            job.rungs = vec![Rung::Room];
            job.call_at = Some(now + NEXT_CALL);
        }
        let repeats = matches!(step, Step::Water | Step::Check);
        if !(repeats && free.iter().any(|it| it.step == step)) {
            free.push(JobRef { serial, step, nth: job.nth });
        }
    }
    free
}

/// One message for all that is free again, with a button each.
fn offer(sitting: &mut Sitting<'_>, head: Text, free: &[JobRef], undo: Option<&Action>) {
    let Some(plan) = &sitting.room.plan else { return };
    let what = |it: &JobRef| Arg::from(plan_words::step_name(it.step, it.nth));
    let at = |it: &JobRef| plan.job(it.step, it.nth).map(|job| job.at);
    let line =
        |it: &JobRef| Some(Text::new("sharing-offer-job").with("when", Arg::DayClock(at(it)?)).with("what", what(it)));
    let lines: Vec<Text> = free.iter().take(MOST).filter_map(line).collect();
    let take = |it: &JobRef| labelled(Text::new("sharing-offer-take").with("what", what(it)), &Action::Take(*it));
    let buttons: Vec<_> = free.iter().take(MOST).map(take).collect();
    let say = sitting.answer(head).key(offering::KEY).urgency(Urgency::Due);
    say.lines(lines);
    for button in buttons {
        say.row([button]);
    }
    say.row(undo.map(|undo| button("room-button-undo", undo)));
}

/// They speak of a job again: they are called like everyone else.
pub(super) fn is_back(sitting: &mut Sitting<'_>, who: PersonId) {
    sitting.room.excused.retain(|excused| *excused != who);
}
