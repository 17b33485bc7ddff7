//! What people say of the jobs in passing: "it's on", "salted it", "still frozen", "ok".
//!
//! Words count as much as buttons: a cook with wet hands types "done".

use super::action::{Action, JobRef};
use super::sitting::button;
use super::state::{JobState, StoredReading};
use super::turn::{How, Urgency};
use super::{
    PersonId, Sitting, back_on, board, ice, inside, jobs, plan_words, planning, questions, salted, spoiled, undo,
};
use crate::ask::{Advice, Habit};
use crate::reading::{self, Happened, Report, ReportKind};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Step, spans};
use carvetime_core::quantity::fahrenheit;
use carvetime_core::roast::{Cooker, OVEN_AUTHORITY_F};
use chrono::TimeDelta;

/// A bird that is to go on or come off so much later has not.
const FAR: TimeDelta = TimeDelta::hours(8);

/// Words that report on a job. `false`: they do not, or there is no plan.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if sitting.room.plan.is_none() {
        return false;
    }
    let frozen_through = ice::is_taken_to_thaw(sitting) && reading::says_frozen_through(text, sitting.lexicon());
    if (frozen_through || reading::says_never_thawed(text, sitting.lexicon())) && ice::never(sitting) {
        return true;
    }
    if reading::says_thawed(text, sitting.lexicon()) && ice::gone(sitting) {
        return true;
    }
    if reading::says_carving(text, sitting.lexicon()) && carving(sitting) {
        return true;
    }
    if reading::says_arrived(text, sitting.lexicon()) && arrived(sitting) {
        return true;
    }
    let dosed = || reading::read_dosed(text, sitting.lexicon());
    match reading::read_report(text, sitting.lexicon()).or_else(dosed) {
        // "Forgot it out of the fridge last night" is no job forgotten: it is a bird to throw away.
        Some(report) if report.kind == ReportKind::NotDone && questions::tells_of_hours_out(sitting, text) => false,
        Some(report) => heard(sitting, &report),
        None => happened(sitting, text) || off_in_a_story(sitting, text),
    }
}

/// "We're here", of the drive to the other house, by whoever drives or hosts: they left that much earlier, and nobody had said so. `false`:
/// nobody can be there yet, or it is of another drive.
fn arrived(sitting: &mut Sitting<'_>) -> bool {
    let Some(plan) = &sitting.room.plan else { return false };
    let drive = plan.wish.drive_min.map_or(TimeDelta::zero(), |minutes| TimeDelta::minutes(i64::from(minutes)));
    let Some(job) = plan.job(Step::Travel, 0).filter(|job| job.state == JobState::Waiting) else { return false };
    let own = job.owner.is_none() || job.owner == sitting.speaker() || Some(plan.host) == sitting.speaker();
    let it = JobRef { serial: plan.serial, step: Step::Travel, nth: 0 };
    let there = own && sitting.now >= job.at + drive / 2;
    if there {
        jobs::done_at(sitting, it, sitting.now - drive);
    }
    there
}

/// "Carving now": whoever says so has it, and nobody is called meanwhile. `false`: nothing is to be carved yet.
fn carving(sitting: &mut Sitting<'_>) -> bool {
    const TAKES: TimeDelta = TimeDelta::minutes(30);
    let off = sitting.room.plan.as_ref().is_some_and(|plan| plan.is_off());
    let it = jobs::by_step(sitting, Step::Carve, None).filter(|it| off && is_near(sitting, *it));
    let Some(it) = it else { return false };
    let (group, who) = (sitting.room.kind == super::RoomKind::Group, sitting.speaker());
    let job = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth));
    if job.is_some_and(|job| job.owner.is_none()) && group && who.is_some() {
        jobs::own(sitting, it, who, "take");
    }
    let again = sitting.now + TAKES;
    if let Some(job) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(it.step, it.nth)) {
        job.call_at = Some(again);
        job.calls = job.calls.max(1);
    }
    if !group {
        sitting.answer(Text::new("room-ok-due").with("what", Arg::from(plan_words::step_name(it.step, it.nth))));
    }
    true
}

/// "Took it out of the oven, it was so brown", with a bird on as far as anyone has said: asked about. `false`: it tells of nothing like it,
/// or of what else was in the oven.
fn off_in_a_story(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let sentence = reading::sentence::Sentence::read(text, sitting.lexicon());
    let dish = (0..sentence.len()).any(|at| sentence.of(at, "dish-").is_some());
    let other = dish || ["habit-dog", "aside-drink"].iter().any(|thing| sentence.has(thing));
    if other || !super::readings::cooks(sitting) || !reading::tells_of_pulling(text, sitting.lexicon()) {
        return false;
    }
    early(sitting, &Report { step: Some(Step::Pull), or: None, kind: ReportKind::Done, partly: false })
}

/// "Started thawing 3 hours ago", "bird went in at 11": done then. `false`: no job of this plan, or no time.
fn happened(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some((report, when)) = reading::read_report_at(text, &sitting.ground()) else { return false };
    let near = job(sitting, &report);
    let Some(it) = near.or_else(|| report.step.and_then(|step| jobs::by_step(sitting, step, None))) else {
        return heard(sitting, &report);
    };
    let Some(planned) = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)).map(|job| job.at) else {
        return false;
    };
    let at = match when {
        Happened::At(at) => at,
        Happened::Early(span) => planned - span,
    };
    // On Monday no bird of Thursday's is on, whatever was said of an hour.
    let cooks = matches!(it.step, Step::On | Step::Pull | Step::Carve);
    if cooks && near.is_none() && planned - sitting.now > FAR && early(sitting, &report) {
        return true;
    }
    jobs::done_at(sitting, it, at.min(sitting.now));
    true
}

/// What was reported is done. `true`, for whoever hands it on.
pub(super) fn heard(sitting: &mut Sitting<'_>, report: &Report) -> bool {
    let report = &rests(sitting, report).unwrap_or(*report);
    if is_of_something_else(sitting, report) {
        return false;
    }
    if let Some(it) = carved_as_served(sitting, report) {
        jobs::done(sitting, it);
        return true;
    }
    let ice = report.kind == ReportKind::NotDone && report.step == Some(Step::Thaw);
    if ice && (report.partly || !thaw_is_open(sitting)) {
        // Thawed, as far as anyone had said, and it is not.
        if frozen_over_the_heat(sitting) {
            return true;
        }
        // Cooked and cut up, no water helps it: it goes back.
        let off = sitting.room.plan.as_ref().and_then(super::alarms::off_at);
        if off.is_some_and(|off| sitting.now - off < FAR) {
            questions::advise(sitting, Advice::Habit(Habit::RawInside));
            return true;
        }
        if !ice::found(sitting) {
            questions::advise(sitting, Advice::StillFrozen);
        }
        return true;
    }
    if report.kind == ReportKind::Done && report.step == Some(Step::Thaw) && ice::into_water(sitting) {
        return true;
    }
    if report.kind == ReportKind::NotDone && report.step == Some(Step::Pull) && back_on::told(sitting) {
        return true;
    }
    match (job(sitting, report), report.kind) {
        (Some(it), ReportKind::Done) if is_too_soon(sitting, it) && early(sitting, report) => {}
        (Some(it), ReportKind::Done) => jobs::done(sitting, it),
        (Some(it), ReportKind::NotDone) => not_done(sitting, it),
        (None, ReportKind::Done) if early(sitting, report) || salted::twice(sitting, report) => {}
        (None, ReportKind::NotDone) if marked(sitting, report) => {}
        (None, ReportKind::NotDone) => {
            sitting.answer(Text::new("room-not-yet"));
        }
        (None, ReportKind::Done) if spoiled::is_of_gone(sitting, report.step) => {}
        // Settled already, or no job of this plan: no more than a nod.
        (None, ReportKind::Done) => {
            sitting.answer(Text::new("room-ok"));
        }
    }
    true
}

/// "We're eating", with the bird off the heat or the dinner near: it is carved, and nobody is called to.
fn carved_as_served(sitting: &Sitting<'_>, report: &Report) -> Option<JobRef> {
    const NEAR: TimeDelta = TimeDelta::minutes(90);
    let served = report.kind == ReportKind::Done && report.step == Some(Step::Serve);
    let plan = sitting.room.plan.as_ref().filter(|_| served)?;
    let near = plan.wish.dinner.is_some_and(|dinner| (dinner - NEAR..dinner + FAR).contains(&sitting.now));
    let off = plan.is_off() || near && plan.on_since(sitting.now).is_some();
    jobs::by_step(sitting, Step::Carve, None).filter(|_| off && near)
}

/// Ice in the middle of a bird that is over the heat: it stays there, for no cold water takes a bird that is half cooked. `false`: it is not
/// on. Source: [`carvetime_core::source::BIG_THAW`].
fn frozen_over_the_heat(sitting: &mut Sitting<'_>) -> bool {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.on_since(now).is_some() && !plan.is_off()) else {
        return false;
    };
    let smoked = plan.wish.cooker.as_deref() == Some(Cooker::Smoker.name());
    let text = Text::new("room-frozen-on")
        .with("smoker", Arg::Choice(if smoked { "yes" } else { "no" }))
        .with("oven", Arg::Temperature(fahrenheit(OVEN_AUTHORITY_F)))
        .with("target", Arg::Temperature(super::target()));
    inside::frozen(sitting, text);
    true
}

/// "Done", "finished!", said to everyone in a group by one who was not called, nor has the job; "put it in the fridge" while the bird is
/// still in the heat.
fn is_of_something_else(sitting: &Sitting<'_>, report: &Report) -> bool {
    const JUST_CALLED: TimeDelta = TimeDelta::minutes(45);
    let among = matches!(&sitting.heard.what, super::What::Said { addressed: false, reply_to: None, .. });
    if sitting.room.kind != super::RoomKind::Group || !among {
        return false;
    }
    let Some(plan) = &sitting.room.plan else { return false };
    let who = sitting.speaker();
    // "Forgot it at home", with the bird in the oven.
    if report.kind == ReportKind::NotDone && report.step == Some(Step::Buy) && plan.on_since(sitting.now).is_some() {
        return true;
    }
    // "Enjoy your meal!", of a lunch the day before.
    let raw = plan.on_since(sitting.now).is_none() && !plan.is_off();
    let dined = report.kind == ReportKind::Done && report.step == Some(Step::Serve);
    if dined && raw && plan.wish.dinner.is_none_or(|dinner| dinner - sitting.now > FAR) {
        return true;
    }
    match job(sitting, report) {
        Some(it) if report.step.is_none() => plan.job(it.step, it.nth).is_some_and(|job| {
            let called = job.calls > 0 && sitting.now - job.at <= JUST_CALLED;
            let theirs = job.owner.is_some() && job.owner == who;
            !theirs && !called
        }),
        Some(it) => it.step == Step::Chill && !plan.is_off() && plan.on_since(sitting.now).is_some(),
        None => report.step.is_none(),
    }
}

/// "It's resting", of a bird that is on as far as anyone has said: it came off.
fn rests(sitting: &Sitting<'_>, report: &Report) -> Option<Report> {
    let plan = sitting.room.plan.as_ref()?;
    let stands = report.kind == ReportKind::Done && [report.step, report.or].contains(&Some(Step::Stand));
    let on = plan.on_since(sitting.now).is_some();
    let waits = plan.job(Step::Pull, 0).is_some_and(|job| job.state == JobState::Waiting);
    (stands && on && waits).then_some(Report { step: Some(Step::Pull), or: None, ..*report })
}

/// "He's out", long before it can be done, and nobody has measured: asked first.
fn is_too_soon(sitting: &Sitting<'_>, it: JobRef) -> bool {
    const SOON: TimeDelta = TimeDelta::minutes(30);
    sitting.room.plan.as_ref().is_some_and(|plan| {
        let unread = plan.on_since(sitting.now).is_none_or(|on| !plan.is_read_since(on));
        it.step == Step::Pull && unread && plan.ready_from.is_some_and(|from| sitting.now + SOON < from)
    })
}

/// A job said not to be done that was marked so: asked about. `false`: it was not.
fn marked(sitting: &mut Sitting<'_>, report: &Report) -> bool {
    [report.step, report.or].into_iter().flatten().any(|step| undo::mistaken(sitting, step))
}

/// Thawing is still called for, or yet to be; or nobody has said that it began, and nothing after it is taken for done.
fn thaw_is_open(sitting: &Sitting<'_>) -> bool {
    let Some(plan) = &sitting.room.plan else { return false };
    let ahead = |step: Step| plan.ahead(sitting.now).any(|job| job.step() == Some(step));
    let unsaid = plan.jobs.iter().any(|job| job.step() == Some(Step::Thaw) && job.state == JobState::Waiting);
    ahead(Step::Thaw) || unsaid && (ahead(Step::Salt) || plan.job(Step::Salt, 0).is_none() && ahead(Step::Temper))
}

/// Whether the plan in hand has the job the words report on.
pub(super) fn means(sitting: &Sitting<'_>, report: &Report) -> bool {
    job(sitting, report).is_some()
}

/// The job meant: the one named, else the one that is due.
fn job(sitting: &Sitting<'_>, report: &Report) -> Option<JobRef> {
    let due = jobs::due_now(sitting);
    let Some(step) = report.step else { return due };
    // "It's on" answers the call to heat the oven, and else it is said of the bird.
    if (step, report.or) == (Step::Fire, Some(Step::On)) {
        let called = is_just_called(sitting, Step::Fire);
        return jobs::by_step(sitting, if called { Step::Fire } else { Step::On }, None)
            .filter(|it| is_near(sitting, *it));
    }
    // "It's all in the fridge", with the bird off the heat: nothing thaws any more, what is left is put away.
    let off = sitting.room.plan.as_ref().is_some_and(|plan| plan.is_off());
    if step == Step::Thaw && off && report.kind == ReportKind::Done {
        let waits = |it: &JobRef| {
            let plan = sitting.room.plan.as_ref();
            plan.and_then(|plan| plan.job(it.step, it.nth)).is_some_and(|job| job.state == JobState::Waiting)
        };
        if let Some(it) = jobs::by_step(sitting, Step::Chill, None).filter(waits) {
            return Some(it);
        }
    }
    // "In the fridge" may be the thaw or the leftovers: the one that is due is meant.
    // "It's out" of a bird that has been read hot is no bird out of the fridge.
    let cooked = is_cooked(sitting);
    let meant = [Some(step), report.or].into_iter().flatten().filter(|step| !cooked || *step != Step::Temper);
    let named = || meant.clone().find_map(|step| jobs::by_step(sitting, step, None)).filter(|it| is_near(sitting, *it));
    due.filter(|it| meant.clone().any(|step| step == it.step)).or_else(named)
}

/// It waits, and was called a few minutes ago.
fn is_just_called(sitting: &Sitting<'_>, step: Step) -> bool {
    const JUST: TimeDelta = TimeDelta::minutes(12);
    let job = sitting.room.plan.as_ref().and_then(|plan| plan.job(step, 0));
    job.is_some_and(|job| job.state == JobState::Waiting && job.calls > 0 && sitting.now - job.at <= JUST)
}

/// Whether the meat has been read hotter than any kitchen is.
fn is_cooked(sitting: &Sitting<'_>) -> bool {
    const COOKED_C: f64 = 60.0;
    sitting.room.plan.as_ref().is_some_and(|plan| {
        let meat =
            |it: &StoredReading| [it.breast_c, it.thigh_c, it.wing_c].into_iter().flatten().any(|at| at >= COOKED_C);
        plan.counted().iter().any(|it| meat(it))
    })
}

/// A job said to be done long before its time: asked about. `false`: the plan has no such job ahead.
fn early(sitting: &mut Sitting<'_>, report: &Report) -> bool {
    let of_report = || report.step.and_then(|step| jobs::by_step(sitting, step, None));
    let Some(it) = job(sitting, report).or_else(of_report) else { return false };
    if salted::early(sitting, it) {
        return true;
    }
    let Some(at) = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)).map(|job| job.at) else {
        return false;
    };
    let text = Text::new("room-report-early")
        .with("what", Arg::from(plan_words::step_name(it.step, it.nth)))
        .with("when", Arg::DayClock(at));
    sitting.answer(text).row([button("room-button-done", &Action::Done(it))]);
    true
}

/// A job is only settled in passing when it is at hand: "in the fridge" on Monday is not Thursday's leftovers.
fn is_near(sitting: &Sitting<'_>, it: JobRef) -> bool {
    const AT_HAND: TimeDelta = TimeDelta::hours(8);
    let Some(plan) = &sitting.room.plan else { return false };
    // Whatever the plan was put off to meanwhile: on the evening of the dinner people cook.
    let dinner = plan.wish.dinner.is_some_and(|dinner| dinner - AT_HAND <= sitting.now && sitting.now <= dinner);
    if dinner && matches!(it.step, Step::Temper | Step::Fire | Step::On | Step::Pull | Step::Carve) {
        return true;
    }
    let next = plan.ahead(sitting.now).next().is_some_and(|job| job.step() == Some(it.step) && job.nth == it.nth);
    next || plan.job(it.step, it.nth).is_some_and(|job| job.at <= sitting.now + AT_HAND)
}

/// Someone says that it is not done: it is never taken for done, and the rest is planned again.
fn not_done(sitting: &mut Sitting<'_>, it: JobRef) {
    let now = sitting.now;
    let limit = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)).map(|job| job.latest);
    if it.step == Step::Chill && limit.is_some_and(|limit| now > limit) {
        sitting.answer(Text::new("room-limit-chill")).urgency(Urgency::Safety);
        return;
    }
    if let Some(plan) = sitting.room.plan.as_mut().filter(|_| it.step == Step::Pull) {
        plan.off_asked = None;
    }
    if let Some(job) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(it.step, it.nth)) {
        job.denied = true;
        if job.at <= now && job.state == JobState::Waiting {
            job.call_at = None;
        }
    }
    let cooks = sitting.room.plan.as_ref().is_some_and(|plan| plan.on_since(now).is_some() && !plan.is_off());
    let still = match it.step {
        Step::Pull if cooks => Text::new("room-stays-on"),
        step => Text::new("room-not-done").with("what", Arg::from(plan_words::step_name(step, it.nth))),
    };
    let water = Text::new("room-water-not")
        .with("cold", Arg::Temperature(fahrenheit(40.0)))
        .with("limit", Arg::Span(spans::HOT_MOST));
    sitting.answer_all(std::iter::once(still).chain((it.step == Step::Water).then_some(water)).collect());
    match sitting.resolve() {
        Ok(shifts) => jobs::tell_shifts(sitting, &shifts),
        Err(conflict) => jobs::tell_conflict(sitting, &conflict),
    }
    board::refresh(sitting);
}

/// "ok": yes to a proposal that lies open, else no more than a nod.
pub(super) fn agreed(sitting: &mut Sitting<'_>, who: PersonId, text: &str) {
    if planning::is_proposed(sitting, who) {
        return planning::accept(sitting, who);
    }
    if planning::is_asked(sitting, who) {
        return planning::go_on(sitting, who, How::New);
    }
    if sitting.room.plan.as_ref().is_some_and(|plan| plan.clash.is_some()) {
        sitting.answer(Text::new("room-ok-which"));
        return;
    }
    let due = jobs::due_now(sitting).filter(|it| it.step != Step::Check);
    sitting.answer(match due {
        Some(it) => Text::new("room-ok-due").with("what", Arg::from(plan_words::step_name(it.step, it.nth))),
        // Nothing was asked, and whoever says yes believes that something was done.
        None if reading::is_plain_yes(text, sitting.lexicon()) => Text::new("room-yes-what"),
        None => Text::new("room-ok"),
    });
}
