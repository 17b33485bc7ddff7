//! What people do with jobs: done, later, skip, take, drop.
//!
//! Presses are checked against the plan that stands; a second press of the same button changes nothing and says so.

use super::action::{Action, JobRef, Mark};
use super::live::{Light, Shift};
use super::sitting::{button, name, short_name};
use super::state::{JobState, LiveJob, LivePlan, Rung, ToldClash};
use super::turn::{How, Say, To, Urgency};
use super::{
    PersonId, RoomKind, Sitting, after, bells, board, calls, hot_day, hot_road, ice, kept_hot, may, not_bought,
    plan_words, proposal, readings, spoiled, way_out,
};
use crate::reading::{self, Wish};
use crate::words::{Arg, Text};
use carvetime_core::plan::clock::date;
use carvetime_core::plan::{Conflict, Moment, Step, spans};
use carvetime_core::quantity::{Temperature, fahrenheit};
use chrono::TimeDelta;

/// How long `Later` puts a job off.
const LATER: TimeDelta = TimeDelta::minutes(15);
/// The same for what food safety hangs on.
const LATER_SAFETY: TimeDelta = TimeDelta::minutes(5);

/// A bare "done" means a job that falls due within this time.
const NEARLY_DUE: TimeDelta = TimeDelta::minutes(30);
/// Between the dish in the fridge and the word of it.
pub(super) const CHILL_GRACE: TimeDelta = TimeDelta::minutes(10);
/// A job called so often without a word from the one who has it may be taken by another.
const SILENT: u8 = 2;
/// As many moved jobs as anyone reads.
const MOST_SHIFTS: usize = 6;

/// `Done`.
pub(super) fn done(sitting: &mut Sitting<'_>, it: JobRef) {
    done_at(sitting, it, sitting.now);
}

/// The same, of a moment that is past.
pub(super) fn done_at(sitting: &mut Sitting<'_>, it: JobRef, at: Moment) {
    let job =
        sitting.room.plan.as_ref().filter(|plan| plan.serial == it.serial).and_then(|plan| plan.job(it.step, it.nth));
    let open = it.step == Step::Pull && job.is_some_and(|job| job.state == JobState::Waiting);
    match readings::below(sitting).filter(|_| open) {
        Some((spot, read, read_at)) => {
            if let Some(plan) = sitting.room.plan.as_mut() {
                plan.off_asked.get_or_insert(at);
            }
            ask_first(sitting, it, spot, read, read_at);
        }
        None => settle(sitting, it, true, at),
    }
}

/// `Yes, it reads that now`: done, whatever the last reading was.
pub(super) fn surely_done(sitting: &mut Sitting<'_>, it: JobRef) {
    settle(sitting, it, true, sitting.now);
}

/// Off the heat with a last reading below the authority's figure: asked once, not taken.
fn ask_first(sitting: &mut Sitting<'_>, it: JobRef, spot: &'static str, read: Temperature, at: Moment) {
    let text = Text::new("room-pull-sure")
        .with("spot", Arg::Choice(spot))
        .with("read", Arg::Temperature(read))
        .with("at", Arg::Clock(at))
        .with("target", Arg::Temperature(super::target()));
    let say = sitting.answer(text).key("pull-sure").urgency(Urgency::Safety);
    say.row([button("room-button-reads-now", &Action::Sure(it)), button("room-button-stays-on", &Action::Later(it))]);
}

/// `Skip`.
pub(super) fn skip(sitting: &mut Sitting<'_>, it: JobRef) {
    let Some(job) = standing(sitting, it) else { return };
    let other = job.owner.filter(|owner| Some(*owner) != sitting.speaker() && job.calls < SILENT);
    if let Some(owner) = other.filter(|_| job.state == JobState::Waiting && !may::steer(sitting)) {
        return sitting.notice(Text::new("room-skip-theirs").with("name", name(sitting, owner)));
    }
    settle(sitting, it, false, sitting.now);
}

fn settle(sitting: &mut Sitting<'_>, it: JobRef, done: bool, when: Moment) {
    let Some(job) = standing(sitting, it) else { return };
    if let JobState::Done { by, .. } | JobState::Skipped { by, .. } = job.state {
        return already(sitting, by, &job);
    }
    let (now, by) = (sitting.now, sitting.speaker());
    if let Some(who) = by {
        super::stepping_down::is_back(sitting, who);
    }
    let (lexicon, zone) = (sitting.lexicon(), sitting.zone_or_utc());
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    plan.remember(if done { "done" } else { "skipped" }, Some(it.step), by, now);
    if done && it.step == Step::Thaw {
        ice::in_water(plan, zone, &sitting.heard.what, lexicon);
    }
    // Measured already, so it went on as planned, however late that is said.
    let at = if it.step == Step::On && plan.is_read_since(job.at) { job.at.min(when) } else { when };
    // Carved when its two hours were over, whether its coming off was said before or is only counted now.
    let unsaid = off_as_carved(plan, it.step, done, when);
    let off = unsaid.or_else(|| carved_from(plan, it.step, done));
    let over = off.is_some_and(|off| when - off >= hot_day::most(plan));
    let at = if it.step == Step::Pull { plan.off_asked.take().map_or(at, |asked| asked.min(at)) } else { at };
    if done && it.step == Step::Fire {
        not_before_the_fire(plan, now);
    }
    if done && it.step == Step::On {
        let says = |text: &str| crate::reading::read_put_frozen(text, lexicon) == Some(true);
        let said = matches!(&sitting.heard.what, super::What::Said { text, .. } if says(text));
        ice::goes_on_frozen(plan, sitting.before.room.taste.zone(), said, now);
    }
    plan.record(it.step, it.nth, at, done, by);
    let too_late = done && it.step == Step::Chill && when > job.latest + CHILL_GRACE;
    let ended = if too_late { spoiled::end(plan, it.nth, now) } else { None };
    let undo = super::undo::newest(plan);
    let warm = packed_warm(sitting, it.step, done, when);
    let outcome = sitting.resolve();
    let held = done && it.step == Step::Pull && tell_hold(sitting);
    // Carved without a word that it came off: what was read last is not enough.
    if over {
        tell_over(sitting);
    } else if done
        && (it.step == Step::Carve || it.step == Step::Chill && unsaid.is_some())
        && let Some(text) = readings::under(sitting).or_else(|| unsaid.and_then(|_| readings::unread(sitting)))
    {
        sitting.answer(text).urgency(Urgency::Safety);
    }
    if done && it.step == Step::Pull && !over {
        unmeasured(sitting);
    }
    if done && it.step == Step::Thaw {
        ice::told_early(sitting, &job);
    }
    if let Some(plan) = sitting.room.plan.as_mut().filter(|_| done && it.step == Step::Buy) {
        not_bought::bought(plan, now);
    }
    if let Some(text) = warm {
        sitting.answer(text).urgency(Urgency::Safety);
    }
    if too_late {
        let late = Text::new("room-chill-late").with("by", Arg::DayClock(job.latest));
        sitting.answer(late).lines(ended).urgency(Urgency::Safety);
    }
    // A group sees on the board what moves, and whoever has a moved job is told: no message more.
    let group = sitting.room.kind == RoomKind::Group;
    let mut outcome = outcome;
    if let Ok(shifts) = &mut outcome {
        // By when it is in the fridge has just been said.
        shifts.retain(|(step, ..)| !held || *step != Step::Chill);
    }
    let shifts = outcome.as_deref().unwrap_or_default().to_vec();
    close_calls(sitting, it, &job, done, &undo, if group { &shifts } else { &[] });
    match outcome {
        Ok(shifts) if !group => tell_shifts(sitting, &shifts),
        Ok(_) => {}
        Err(conflict) => tell_conflict(sitting, &conflict),
    }
    board::refresh(sitting);
}

/// Off the heat without a single number told: asked for, while it can still go back.
fn unmeasured(sitting: &mut Sitting<'_>) {
    let Some(text) = readings::unread(sitting) else { return };
    match sitting.says.iter_mut().rfind(|say| say.key.as_deref() == Some("hold")) {
        Some(hold) => hold.text.insert(0, text),
        None => {
            sitting.answer(text).urgency(Urgency::Safety);
        }
    }
}

/// The heat was only lit now: a bird that was taken for on, nobody having said so, was not, nor was it out of the fridge for that.
fn not_before_the_fire(plan: &mut LivePlan, now: Moment) {
    let taken: Vec<(Step, u8, Moment)> =
        plan.assumed(now).filter_map(|job| Some((job.step()?, job.nth, job.at))).collect();
    let on = taken.iter().find(|(step, ..)| *step == Step::On);
    if on.is_none_or(|(.., at)| plan.is_read_since(*at)) {
        return;
    }
    for (step, nth, _) in taken.into_iter().filter(|(step, ..)| matches!(step, Step::Temper | Step::On)) {
        let Some(job) = plan.job_mut(step, nth) else { continue };
        job.denied = true;
        // Where the rest can't be planned again before someone has chosen, it is called all the same.
        job.call_at = Some(now + TimeDelta::minutes(if step == Step::On { 40 } else { 20 }));
        job.calls = 0;
        job.rungs.clear();
        job.reached.clear();
    }
}

/// Carved or put away, so it is off the heat: from when that was said and asked about, else, nobody having said so, as planned, but not before it
/// was last measured, nor longer ago than it stands before carving.
fn off_as_carved(plan: &mut LivePlan, step: Step, done: bool, now: Moment) -> Option<Moment> {
    let after = done && matches!(step, Step::Carve | Step::Chill);
    let pull = plan.job(Step::Pull, 0).filter(|job| job.state == JobState::Waiting && after)?;
    let read = plan.counted().last().map(|reading| reading.at);
    let planned = [Some(pull.at), read, Some(now - spans::STAND)].into_iter().flatten().max().unwrap_or(now).min(now);
    let off = plan.off_asked.take().unwrap_or(planned);
    plan.record(Step::Pull, 0, off, true, None);
    Some(off)
}

/// Packed to be carried cold, and off the heat for less than it takes to be so: its two hours run in the car.
fn packed_warm(sitting: &Sitting<'_>, step: Step, done: bool, when: Moment) -> Option<Text> {
    let plan = sitting.room.plan.as_ref().filter(|plan| done && step == Step::Pack && !hot_road::is_hot(plan))?;
    let off = super::alarms::off_at(plan).filter(|off| when - *off < spans::FRIDGE_WITHIN + hot_day::most(plan))?;
    let chilled = plan.job(Step::Chill, 0).and_then(|job| match job.state {
        JobState::Done { at, .. } => Some(at),
        JobState::Waiting | JobState::Skipped { .. } => None,
    });
    let cold = chilled.is_some_and(|at| when - at >= spans::HOT_MOST);
    let text =
        Text::new("room-pack-warm").with("off", Arg::Clock(off)).with("by", Arg::Clock(off + hot_day::most(plan)));
    (!cold).then(|| text.with("hot", Arg::Temperature(kept_hot::holds())))
}

/// Carved: from when its two hours run.
fn carved_from(plan: &LivePlan, step: Step, done: bool) -> Option<Moment> {
    let counts = done && step == Step::Carve && (!hot_road::is_hot(plan) || plan.heated_late.is_some());
    kept_hot::known(plan).filter(|_| counts)
}

/// The two hours were over before it was carved.
fn tell_over(sitting: &mut Sitting<'_>) {
    if let Some(plan) = sitting.room.plan.as_mut() {
        let named: Vec<String> = plan.jobs.iter().filter_map(bells::limit).collect();
        plan.limits_called.extend(named);
    }
    kept_hot::say_over(sitting);
}

/// A bird that waits long before it is carved is kept hot, or carved by then. Whether that had to be said.
fn tell_hold(sitting: &mut Sitting<'_>) -> bool {
    const SOON: TimeDelta = TimeDelta::minutes(45);
    let now = sitting.now;
    let Some(plan) = &sitting.room.plan else { return false };
    let Some(carve) = plan.job(Step::Carve, 0).filter(|job| job.at - now > SOON) else { return false };
    let held = Action::Held(plan.serial);
    let packed = plan.job(hot_road::PACK.0, hot_road::PACK.1).filter(|job| job.state == JobState::Waiting);
    if let Some(pack) = packed {
        // Eaten within the two hours from now, it needs nothing but its wrapping.
        if plan.wish.dinner.is_none_or(|dinner| dinner - now <= hot_day::most(plan)) {
            return false;
        }
        let text = Text::new("room-hold-packed")
            .with("hot", Arg::Temperature(kept_hot::holds()))
            .with("pack", Arg::Clock(pack.at))
            .with("by", Arg::Clock(now + hot_day::most(plan)));
        sitting.answer(text).key("hold").urgency(Urgency::Safety).row([button("room-button-held", &held)]);
        return true;
    }
    let text = Text::new("room-hold")
        .with("hot", Arg::Temperature(fahrenheit(140.0)))
        .with("carve", Arg::Clock(carve.at))
        .with("by", Arg::Clock(now + hot_day::most(plan)));
    sitting.answer(text).key("hold").urgency(Urgency::Safety).row([button("room-button-held", &held)]);
    true
}

/// The bird is kept at 140 °F or hotter, it is said: a reading is asked for, and the two hours count from the last one.
pub(super) fn held(sitting: &mut Sitting<'_>, serial: u32) {
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| plan.serial == serial) else {
        return sitting.notice(Text::new("room-stale"));
    };
    plan.held_hot = true;
    let text = kept_hot::asked_for(plan, sitting.now);
    sitting.answer(text).key("hold").how(How::Edit);
    if let Err(conflict) = sitting.resolve() {
        tell_conflict(sitting, &conflict);
    }
    board::refresh(sitting);
}

/// The call messages of a settled job lose their buttons and say who did it, and what it moves.
fn close_calls(sitting: &mut Sitting<'_>, it: JobRef, job: &LiveJob, done: bool, undo: &Action, shifts: &[Shift]) {
    let serial = it.serial;
    let key = calls::key(it.step, it.nth);
    let text = settled_text(sitting, it, done);
    let mut next: Vec<Text> = next_line(sitting).into_iter().collect();
    if let Some(plan) = sitting.room.plan.as_ref().filter(|_| done && it.step == Step::Pull) {
        next.extend(after::lines(plan, sitting.now));
    }
    // Whoever takes the leftovers home is told of their last day.
    let leftovers = sitting.room.plan.as_ref().filter(|_| done && it.step == Step::Chill).and_then(|plan| {
        let job = plan.job(Step::Leftovers, 0).filter(|job| job.owner.is_none() && job.state == JobState::Waiting)?;
        let last =
            plan.jobs.iter().filter(|job| job.step() == Some(Step::Chill)).all(|job| job.state != JobState::Waiting);
        let group = sitting.room.kind == RoomKind::Group && last;
        let take = Action::Take(JobRef { serial, step: Step::Leftovers, nth: job.nth });
        group.then(|| button("feedback-button-leftovers", &take))
    });
    let mut chats = job.called_in.clone();
    if chats.is_empty() {
        // Marked from the board or in words: nothing stands to be changed. A group sees it on the board.
        if sitting.room.kind == RoomKind::Group && it.step != Step::Pull {
            return sitting.notice(text);
        }
        chats.push(sitting.room.id);
    }
    for chat in chats {
        let to = if chat == sitting.room.id { To::Room(chat) } else { To::Person(PersonId(chat.0)) };
        let say = sitting.say(Say::new(to, text.clone())).key(key.clone()).how(How::Edit);
        say.lines(next.clone());
        if !shifts.is_empty() {
            say.line(Text::new("room-shifts")).lines(shift_lines(shifts));
        }
        say.row([button("room-button-undo", undo)]);
        say.row(leftovers.clone());
    }
}

fn settled_text(sitting: &Sitting<'_>, it: JobRef, done: bool) -> Text {
    let by = sitting.speaker().filter(|_| sitting.room.kind == RoomKind::Group);
    let id = match (done, by.is_some()) {
        (true, true) => "room-done-by",
        (true, false) => "room-done",
        (false, true) => "room-skipped-by",
        (false, false) => "room-skipped",
    };
    let job = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth));
    let at = match job.map(|job| job.state) {
        Some(JobState::Done { at, .. }) => at,
        _ => sitting.now,
    };
    let what = if done { plan_words::step_done(it.step, it.nth) } else { plan_words::step_name(it.step, it.nth) };
    // "Salted it last night": the day stands there where it is another.
    let zone = sitting.zone_or_utc();
    let today = date(zone, at) == date(zone, sitting.now);
    let at = if today { Arg::Clock(at) } else { Arg::DayClock(at) };
    let mut text = Text::new(id).with("what", Arg::from(what)).with("at", at);
    if let Some(by) = by {
        text = text.with("name", name(sitting, by));
    }
    text
}

/// What comes next, for the one who has just finished something.
fn next_line(sitting: &Sitting<'_>) -> Option<Text> {
    let plan = sitting.room.plan.as_ref()?;
    let job = plan.ahead(sitting.now).next()?;
    Some(
        Text::new("room-next")
            .with("what", Arg::from(plan_words::step_name(job.step()?, job.nth)))
            .with("when", Arg::DayClock(job.at)),
    )
}

/// `Later`.
pub(super) fn later(sitting: &mut Sitting<'_>, it: JobRef) {
    let Some(job) = standing(sitting, it) else { return };
    if let JobState::Done { by, .. } | JobState::Skipped { by, .. } = job.state {
        return already(sitting, by, &job);
    }
    if sitting.room.plan.as_ref().is_some_and(|plan| bells::is_over(plan, &job, sitting.now)) {
        return sitting.notice(Text::new("room-limit-chill"));
    }
    let wait = if it.step.is_safety() { LATER_SAFETY } else { LATER };
    let again = sitting.now + wait;
    // "It stays on."
    if let Some(plan) = sitting.room.plan.as_mut().filter(|_| it.step == Step::Pull) {
        plan.off_asked = None;
    }
    if let Some(job) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(it.step, it.nth)) {
        job.call_at = Some(again);
        job.calls = job.calls.max(1);
        // Whoever asks for it later is called once more before anyone else is.
        job.rungs.pop_if(|last| *last == Rung::Again);
    }
    sitting.notice(Text::new("room-later").with("when", Arg::Clock(again)));
}

/// `Take`, or `/take`.
pub(super) fn take(sitting: &mut Sitting<'_>, it: JobRef) {
    let Some(job) = standing(sitting, it) else { return };
    let Some(who) = sitting.speaker() else { return sitting.notice(Text::new("room-need-person")) };
    if job.state != JobState::Waiting {
        return already(sitting, None, &job);
    }
    match job.owner {
        Some(owner) if owner == who => {
            // Theirs, and theirs at the hour at which it stands by now.
            let news = job.taken_for.is_some_and(|taken| taken != job.at);
            if let Some(live) = sitting.room.plan.as_mut().and_then(|plan| plan.job_mut(it.step, it.nth)) {
                live.taken_for = Some(job.at);
            }
            sitting.notice(if news { taken(it, &job) } else { Text::new("room-take-yours") });
        }
        // Called twice and not heard of: someone else may.
        Some(_) if job.calls >= SILENT => {
            own(sitting, it, Some(who), "take");
            sitting.notice(taken(it, &job));
        }
        Some(owner) => {
            let text = Text::new("room-take-theirs").with("name", name(sitting, owner));
            sitting.notice(text);
        }
        None => {
            own(sitting, it, Some(who), "take");
            tell_taken(sitting, it, &job, who);
        }
    }
}

/// Says that it is theirs, with the way into the private chat where calls can't reach them yet.
fn tell_taken(sitting: &mut Sitting<'_>, it: JobRef, job: &LiveJob, who: PersonId) {
    let pressed = matches!(sitting.heard.what, super::What::Pressed { .. });
    let reachable = sitting.people.get(&who).is_some_and(|person| person.reachable);
    let text = with_water(sitting, it, who).unwrap_or_else(|| taken(it, job));
    if pressed || reachable {
        return sitting.notice(text);
    }
    let link = super::invites::button(sitting);
    sitting.answer(text).row(link);
}

/// Thawing comes with its changes of water, where they are theirs.
fn with_water(sitting: &Sitting<'_>, it: JobRef, who: PersonId) -> Option<Text> {
    let plan = sitting.room.plan.as_ref().filter(|_| it.step == Step::Thaw)?;
    let own = |job: &&LiveJob| job.step() == Some(Step::Water) && job.owner == Some(who);
    let count = plan.waiting().filter(own).count();
    let job = plan.job(it.step, it.nth).filter(|_| count > 0)?;
    let text = Text::new("room-taken-water").with("count", Arg::Count(i64::try_from(count).ok()?));
    Some(text.with("what", Arg::from(plan_words::step_name(it.step, it.nth))).with("when", Arg::DayClock(job.at)))
}

fn taken(it: JobRef, job: &LiveJob) -> Text {
    Text::new("room-taken")
        .with("what", Arg::from(plan_words::step_name(it.step, it.nth)))
        .with("when", Arg::DayClock(job.at))
}

/// `Drop`, or `/drop`.
pub(super) fn drop(sitting: &mut Sitting<'_>, it: JobRef) {
    let Some(job) = standing(sitting, it) else { return };
    let Some(owner) = job.owner else { return sitting.notice(Text::new("room-drop-free")) };
    if sitting.speaker() != Some(owner) && !may::steer(sitting) {
        let text = Text::new("room-drop-theirs").with("name", name(sitting, owner));
        return sitting.notice(text);
    }
    own(sitting, it, None, "drop");
    sitting.notice(Text::new("room-dropped").with("what", Arg::from(plan_words::step_name(it.step, it.nth))));
}

/// The job is `owner`'s from now on, or nobody's.
pub(super) fn own(sitting: &mut Sitting<'_>, it: JobRef, owner: Option<PersonId>, change: &str) {
    let (now, by) = (sitting.now, sitting.speaker());
    if let Some(owner) = owner {
        super::stepping_down::is_back(sitting, owner);
    }
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    plan.remember(change, Some(it.step), by, now);
    // Water changes and checks of one plan go together: nobody wants to take fourteen jobs one by one.
    let together = matches!(it.step, Step::Water | Step::Check);
    let before = plan.job(it.step, it.nth).and_then(|job| job.owner);
    // Whoever thaws in water changes it, unless someone else has that.
    let follows = |job: &LiveJob| {
        it.step == Step::Thaw && job.step() == Some(Step::Water) && (job.owner.is_none() || job.owner == before)
    };
    for job in &mut plan.jobs {
        let same = job.step == it.step.name() && (together || job.nth == it.nth);
        if (same || follows(job)) && job.state == JobState::Waiting {
            job.owner = owner;
            job.asked = None;
            job.taken_for = owner.map(|_| job.at);
            if job.calls > 0 {
                // Due already: who takes it has heard of it, and one it is handed back by calls the others again.
                let wait = if it.step.is_safety() { LATER_SAFETY } else { LATER };
                job.calls = u8::from(owner.is_some());
                job.rungs = owner.map(|_| Rung::Owner).into_iter().collect();
                job.reached.extend(owner.filter(|who| !job.reached.contains(who)));
                job.call_at = Some(if owner.is_some() { now + wait } else { now });
            }
        }
    }
    super::offering::refresh(sitting, it);
    board::refresh(sitting);
}

/// `/take step` and `/drop step`: the one of that number, else the next waiting one.
pub(super) fn by_step(sitting: &Sitting<'_>, step: Step, nth: Option<u8>) -> Option<JobRef> {
    let plan = sitting.room.plan.as_ref()?;
    let fits = |job: &&LiveJob| job.step() == Some(step) && nth.is_none_or(|nth| job.nth == nth);
    let job = plan.waiting().find(fits)?;
    Some(JobRef { serial: plan.serial, step, nth: job.nth })
}

/// "Who's salting?": who has it, or that nobody has. `false`: nobody is asked for.
pub(super) fn who(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let step = reading::asks_who(text, sitting.lexicon());
    step.and_then(|step| by_step(sitting, step, None)).is_some_and(|it| who_has(sitting, it))
}

/// Says who has the job, or that nobody has, and offers it then. `false`: there is no such job.
pub(super) fn who_has(sitting: &mut Sitting<'_>, it: JobRef) -> bool {
    let Some(job) = sitting.room.plan.as_ref().and_then(|plan| plan.job(it.step, it.nth)).cloned() else {
        return false;
    };
    let text = whose(sitting, it, &job);
    let take = job.owner.is_none().then(|| button("room-button-take", &Action::Take(it)));
    sitting.answer(text).row(take);
    true
}

/// Whose the job is, in a line.
pub(super) fn whose(sitting: &Sitting<'_>, it: JobRef, job: &LiveJob) -> Text {
    let what = Arg::from(plan_words::step_name(it.step, it.nth));
    let id = match job.owner {
        Some(_) => "room-who-has",
        None if sitting.room.kind == RoomKind::Private => "room-when-step",
        None => "room-who-nobody",
    };
    let text = Text::new(id).with("what", what).with("when", Arg::DayClock(job.at));
    match job.owner {
        Some(owner) => text.with("name", name(sitting, owner)),
        None => text,
    }
}

/// The jobs still ahead, each with a button to take it or hand it back.
pub(super) fn list(sitting: &mut Sitting<'_>, serial: u32) {
    // From a page of its own it is a way back.
    let back = matches!(&sitting.heard.what, super::What::Pressed { on: Some(on), .. } if on == "jobs");
    show_list(sitting, serial, if back { How::Edit } else { How::New });
}

/// The same, in the place of the page that was shown.
pub(super) fn list_again(sitting: &mut Sitting<'_>, serial: u32) {
    show_list(sitting, serial, How::Edit);
}

fn show_list(sitting: &mut Sitting<'_>, serial: u32, how: How) {
    let Some(plan) = sitting.room.plan.as_ref().filter(|plan| plan.serial == serial) else {
        return sitting.notice(Text::new("room-stale"));
    };
    let mut rows = Vec::new();
    let mut seen = Vec::new();
    for job in plan.waiting() {
        let Some(step) = job.step().filter(|step| *step == Step::Dish || !seen.contains(step)) else { continue };
        seen.push(step);
        let it = JobRef { serial, step, nth: job.nth };
        let label = match job.owner {
            Some(owner) => Text::new("room-jobs-drop").with("name", short_name(sitting, owner)),
            None => Text::new("room-jobs-take"),
        }
        .with("what", Arg::from(plan_words::step_name(step, job.nth)));
        let action = if job.owner.is_some() { Action::Drop(it) } else { Action::Take(it) };
        rows.push(super::sitting::labelled(label, &action));
    }
    let group = sitting.room.kind == RoomKind::Group && sitting.room.members.len() > 1;
    let say = sitting.answer(Text::new("room-jobs")).key("jobs").how(how);
    for label in rows {
        say.row([label]);
    }
    if group {
        say.row([button("sharing-button-give", &Action::Giving(serial))]);
    }
}

/// Why the times of the live plan are what they are.
pub(super) fn why(sitting: &mut Sitting<'_>, serial: u32) {
    let light = sitting.light();
    let plan = sitting.room.plan.as_ref().filter(|plan| plan.serial == serial && plan.waiting().next().is_some());
    match plan.map(|plan| plan.solve(&light)) {
        Some(Some(Ok(schedule))) => {
            let text = proposal::reasons(&schedule);
            sitting.answer(Text::new("room-why")).lines(text);
        }
        Some(Some(Err(conflict))) => tell_conflict(sitting, &conflict),
        _ => sitting.notice(Text::new("room-stale")),
    }
}

/// An offer against a conflict of the live plan is taken.
pub(super) fn mend(sitting: &mut Sitting<'_>, serial: u32, way: Mark) {
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let (light, by) = (sitting.light(), sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| plan.serial == serial) else {
        return sitting.notice(Text::new("room-stale"));
    };
    let wish = plan.wish.clone();
    let Some(change) = take_way_out(plan, wish, way, &light, by) else {
        return outdated(sitting);
    };
    let text = Text::new("room-mended").with("change", Arg::from(change));
    sitting.answer(text).key("conflict").how(How::Edit);
    board::refresh(sitting);
}

/// The button offers what is no way out any more: said, and where something is still in the way its message shows what would do now.
fn outdated(sitting: &mut Sitting<'_>) {
    sitting.notice(Text::new("room-stale"));
    let light = sitting.light();
    if let Some(Some(Err(conflict))) = sitting.room.plan.as_ref().map(|plan| plan.solve(&light)) {
        tell_conflict(sitting, &conflict);
    }
}

/// Gives the plan that wish with that way out, and says what changes. `None`, the plan untouched: nothing stands against the
/// wish any more, or there is no such way.
pub(super) fn take_way_out(
    plan: &mut LivePlan,
    wish: Wish,
    way: Mark,
    light: &Light,
    by: Option<PersonId>,
) -> Option<Text> {
    let wished = LivePlan { wish, ..plan.clone() };
    let order = wished.order(light.zone)?;
    let conflict = wished.solve(light)?.err()?;
    let offer = way_out::meant(&conflict, &wished.wish.dishes, way)?;
    plan.remember("mended", None, by, light.now);
    let change = way_out::said(&offer.change, &wished.wish.dishes);
    plan.wish = wished.wish;
    super::order::absorb(&mut plan.wish, &offer.change.apply(&order));
    plan.forget(|step| !offer.change.keeps(step));
    plan.adopt(&offer.schedule, light.now);
    Some(change)
}

/// Says once what moved, where it matters.
pub(super) fn tell_shifts(sitting: &mut Sitting<'_>, shifts: &[Shift]) {
    if shifts.is_empty() {
        return;
    }
    let lines = shift_lines(shifts);
    sitting.answer(Text::new("room-shifts")).lines(lines).how(How::Quiet).urgency(Urgency::Due);
}

/// A line for each job that moved, the last ones in one.
pub(super) fn shift_lines(shifts: &[Shift]) -> Vec<Text> {
    let line = |(step, nth, was, is): &Shift| {
        Text::new("room-shift")
            .with("what", Arg::from(plan_words::step_name(*step, *nth)))
            .with("was", Arg::DayClock(*was))
            .with("is", Arg::DayClock(*is))
    };
    let more = shifts.len().saturating_sub(MOST_SHIFTS);
    let rest = (more > 0).then(|| Text::new("room-shift-more").with("count", Arg::Count(more as i64)));
    let steps: Vec<Option<Step>> = shifts.iter().map(|(step, ..)| Some(*step)).collect();
    let shown = plan_words::shown(&steps, MOST_SHIFTS);
    shown.into_iter().filter_map(|at| shifts.get(at)).map(line).chain(rest).collect()
}

/// Says what the dinner is up against, with what would mend it.
pub(super) fn tell_conflict(sitting: &mut Sitting<'_>, conflict: &Conflict) {
    let _ = said_conflict(sitting, conflict);
}

/// The same; the message, for more to be said in it.
pub(super) fn said_conflict<'s>(sitting: &'s mut Sitting<'_>, conflict: &Conflict) -> Option<&'s mut Say> {
    /// So much more time missing is news.
    const NEWS_MIN: i64 = 15;
    let plan = sitting.room.plan.as_mut()?;
    let serial = plan.serial;
    let because = conflict.because.iter().map(|reason| plan_words::reason(reason).id.into_owned());
    let clash = ToldClash { short_min: conflict.short_by.num_minutes(), because: because.collect() };
    let known = plan
        .clash
        .as_ref()
        .is_some_and(|told| told.because == clash.because && clash.short_min < told.short_min.saturating_add(NEWS_MIN));
    if !known {
        plan.clash = Some(clash);
    }
    let mut text = proposal::clash_now(conflict);
    text.extend(proposal::all_offers(conflict));
    let offers = way_out::buttons(conflict, &plan.wish.dishes, |way| Action::Mend(serial, way));
    // Told once; while it stands, its message keeps to what holds.
    let how = if known { How::Edit } else { How::New };
    let say = sitting.answer_all(text).key("conflict").how(how).urgency(Urgency::Due);
    for offer in offers {
        say.row([offer]);
    }
    Some(say)
}

/// The job, if the press speaks of the plan that stands.
pub(super) fn standing(sitting: &mut Sitting<'_>, it: JobRef) -> Option<LiveJob> {
    let plan = sitting.room.plan.as_ref().filter(|plan| plan.serial == it.serial);
    let job = plan.and_then(|plan| plan.job(it.step, it.nth)).cloned();
    if job.is_none() {
        sitting.notice(Text::new("room-stale"));
    }
    job
}

pub(super) fn already(sitting: &mut Sitting<'_>, by: Option<PersonId>, job: &LiveJob) {
    let at = match job.state {
        JobState::Done { at, .. } | JobState::Skipped { at, .. } => at,
        JobState::Waiting => job.at,
    };
    let text = match by {
        Some(by) if Some(by) == sitting.speaker() => Text::new("room-already-you"),
        Some(by) => Text::new("room-already-by").with("name", name(sitting, by)),
        None => Text::new("room-already"),
    };
    sitting.notice(text.with("at", Arg::DayClock(at)));
}

/// A check has been called and not answered: a number alone is its answer.
pub(super) fn is_asked_for_readings(sitting: &Sitting<'_>) -> bool {
    const ASKED_LATELY: TimeDelta = TimeDelta::minutes(45);
    sitting.room.plan.as_ref().is_some_and(|plan| {
        plan.waiting()
            .any(|job| job.step() == Some(Step::Check) && job.calls > 0 && sitting.now - job.at <= ASKED_LATELY)
    })
}

/// The first waiting job that is due, for a bare "done".
pub(super) fn due_now(sitting: &Sitting<'_>) -> Option<JobRef> {
    let plan = sitting.room.plan.as_ref()?;
    let job = plan.ahead(sitting.now).next().filter(|job| job.at <= sitting.now + NEARLY_DUE)?;
    Some(JobRef { serial: plan.serial, step: job.step()?, nth: job.nth })
}
