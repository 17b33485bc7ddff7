//! "The guests come 40 min late", "Aunt Lu is late, 6 pm": what that would mean, and the choice. `/move` asks the same where it costs
//! something or can't be done.
//!
//! Anyone may say it; nothing moves until the host or an administrator has chosen.

use super::action::{Action, Mark};
use super::sitting::{button, labelled, name};
use super::state::Wanted;
use super::turn::Urgency;
use super::turn::{How, Say, To};
use super::{
    Sitting, What, birds, board, done_yet, hot_day, hot_road, jobs, kept_hot, live, may, moves, proposal, readings,
    spoiled, stood_out, undo, way_out,
};
use crate::reading::{self, Wish, fold};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Caution, Change, Conflict, Moment, Step};
use chrono::TimeDelta;

/// The message's key.
pub(super) const KEY: &str = "late";
/// Longer texts tell a story.
const LONGEST: usize = 80;
/// As many words as a way to say "late" has.
const MOST_WORDS: usize = 3;

/// Whoever comes later than this comes another day.
const LATEST: TimeDelta = TimeDelta::hours(6);

/// `false`: the words are of nobody who is late.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some((serial, host, dinner)) =
        sitting.room.plan.as_ref().and_then(|plan| Some((plan.serial, plan.host, plan.wish.dinner?)))
    else {
        return false;
    };
    if text.chars().count() > LONGEST || dinner <= sitting.now || !is_late(sitting, text) {
        return false;
    }
    // "Start without me": nothing moves for them.
    if reading::Told::of(text, sitting.lexicon()).says("start-without") {
        if sitting.room.kind == super::RoomKind::Private {
            sitting.answer(Text::new("room-ok"));
        }
        return true;
    }
    let shift = reading::read_shift(text, dinner, &sitting.table_ground());
    // "Morgen, bin spät dran": nobody is late by a day.
    let late = |to: &Moment| *to > dinner && *to - dinner <= LATEST;
    let Some(to) = shift.and_then(|shift| shift.applied(dinner)).filter(late) else { return false };
    if spoiled::says_gone(sitting) {
        return true;
    }
    // It has stood too long to wait for anyone.
    if stood_out::is_over(sitting) {
        kept_hot::say_over(sitting);
        return true;
    }
    let Some(outlook) = outlook(sitting, to) else { return false };
    let others = (!may::steer(sitting)).then(|| Text::new("room-late-host").with("name", name(sitting, host)));
    let head = Text::new("room-late").with("when", Arg::DayClock(to)).with("dinner", Arg::Clock(dinner));
    ask(sitting, head, (serial, to, dinner), &outlook).lines(others);
    true
}

/// "The guests are an hour late", "my in-laws are running late": of whoever comes to eat, and of no bird that cooks too slowly. Where no hour
/// is told, a bird that is done already is held hot, and else it is asked how late. `false`: nobody who eats here is late.
pub(super) fn guests(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    /// Earlier nothing is done about it.
    const SOON: TimeDelta = TimeDelta::hours(12);
    let (now, lexicon) = (sitting.now, sitting.lexicon());
    let sentence = reading::sentence::Sentence::read(text, lexicon);
    let told_of = lexicon.talk_words(text);
    let kin = told_of.iter().any(|word| lexicon.talk(word, "kin") || lexicon.talk(word, "kin-two"));
    let spot = (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some());
    let comes = (kin || sentence.has("people") || reading::Told::of(text, lexicon).says("late-guests")) && !spot;
    if sitting.speaker().is_none() || !comes || !(addressed || may_mean(sitting)) || !is_late(sitting, text) {
        return false;
    }
    if told(sitting, text) {
        return true;
    }
    let ahead = sitting.room.plan.as_ref().and_then(|plan| plan.wish.dinner);
    let ahead = ahead.is_some_and(|dinner| dinner > now && dinner - now <= SOON);
    if !ahead || text.chars().count() > LONGEST || spoiled::is_gone_here(sitting) {
        return false;
    }
    if stood_out::is_over(sitting) {
        kept_hot::say_over(sitting);
    } else if let Some(stands) = waits_done(sitting) {
        sitting.answer(stands).urgency(Urgency::Safety);
    } else if addressed {
        sitting.answer(Text::new("room-late-how"));
    } else {
        return false;
    }
    true
}

/// What to do with a bird that is done, whole, and has to wait for dinner. `None`: it is not done, or cut up.
fn waits_done(sitting: &Sitting<'_>) -> Option<Text> {
    let plan = sitting.room.plan.as_ref()?;
    plan.job(Step::Carve, 0).filter(|job| job.state == super::state::JobState::Waiting)?;
    let done = readings::cooks(sitting) && done_yet::is_read(sitting) && readings::below(sitting).is_none();
    let off = kept_hot::known(plan).filter(|_| plan.is_off());
    let from = off.or(done.then_some(sitting.now))?;
    let text = Text::new("room-late-stands")
        .with("stands", Arg::Choice(if off.is_some() { "off" } else { "done" }))
        .with("hot", Arg::Temperature(kept_hot::holds()))
        .with("until", Arg::Clock(from + hot_day::most(plan)))
        .with("target", Arg::Temperature(super::target()));
    Some(text)
}

/// Said to everyone by one who cooks, or who comes: it may well be meant for the plan, and no more than a choice comes of it.
pub(super) fn may_mean(sitting: &Sitting<'_>) -> bool {
    /// On the day itself anyone may be the one who is late.
    const SOON: TimeDelta = TimeDelta::hours(12);
    let who = sitting.speaker();
    let today = |plan: &super::state::LivePlan| plan.wish.dinner.is_some_and(|dinner| dinner - sitting.now <= SOON);
    let cooks = |plan: &super::state::LivePlan| {
        Some(plan.host) == who || today(plan) || plan.waiting().any(|job| job.owner == who)
    };
    who.is_some() && sitting.room.kind == super::RoomKind::Group && sitting.room.plan.as_ref().is_some_and(cooks)
}

/// What dinner at another hour would mean.
pub(super) enum Outlook {
    /// It can be done.
    Works {
        /// What it costs and what moves.
        lines: Vec<Text>,
        /// It costs nothing: times move, and that is all.
        free: bool,
    },
    /// It can't be done as things stand.
    Clash(Box<Conflict>),
}

impl Outlook {
    /// Nobody need be asked.
    pub(super) fn is_free(&self) -> bool {
        matches!(self, Self::Works { free: true, .. })
    }
}

/// `/move` to an hour that costs something or can't be met: the choice.
pub(super) fn ask_first(sitting: &mut Sitting<'_>, to: Moment, dinner: Moment, outlook: &Outlook) {
    let Some(serial) = sitting.room.plan.as_ref().map(|plan| plan.serial) else { return };
    let head = match outlook {
        Outlook::Works { .. } => {
            Text::new("room-late").with("when", Arg::DayClock(to)).with("dinner", Arg::Clock(dinner))
        }
        Outlook::Clash(_) => Text::new("room-move-clash").with("when", Arg::DayClock(to)),
    };
    ask(sitting, head, (serial, to, dinner), outlook);
}

/// The ways out without the hour that stands: it is kept by a button of its own.
fn elsewhen(conflict: &Conflict, dinner: Moment) -> Conflict {
    let mut conflict = conflict.clone();
    conflict.offers.retain(|offer| offer.change != Change::Dinner(dinner));
    conflict
}

/// One message: what moves, what can't, what it costs, and the choices.
pub(super) fn ask<'s>(
    sitting: &'s mut Sitting<'_>,
    head: Text,
    (serial, to, dinner): (u32, Moment, Moment),
    outlook: &Outlook,
) -> &'s mut Say {
    let keep = button("room-button-late-keep", &Action::Stay(serial, minute(dinner)));
    let plan = sitting.room.plan.as_ref();
    let (edition, dishes) = plan.map_or((0, Vec::new()), |plan| (plan.edition, plan.wish.dishes.clone()));
    // One question of the hour stands at a time: the older is closed by the newer.
    if stands_open(sitting) {
        shut(sitting);
    }
    // A yes in words is an answer as well.
    let wanted = Wanted { to, at: sitting.now, answered: false, passed: false };
    if let Some(plan) = sitting.room.plan.as_mut().filter(|_| matches!(outlook, Outlook::Works { .. })) {
        plan.wanted = Some(wanted);
    }
    let say = sitting.answer(head).key(KEY);
    match outlook {
        Outlook::Works { lines, .. } => {
            let action = Action::Dinner(serial, minute(to));
            let move_it = labelled(Text::new("cook-button-dinner").with("at", Arg::Clock(to)), &action);
            say.lines(lines.iter().cloned()).row([move_it, keep]);
        }
        Outlook::Clash(conflict) => {
            let known = conflict;
            let conflict = &elsewhen(known, dinner);
            say.lines(proposal::clash(known)).lines(proposal::all_offers(conflict));
            for offer in conflict.offers.iter().take(proposal::MOST_OFFERS) {
                say.row([way_out::button(offer, &dishes, |way| match offer.change {
                    Change::Dinner(at) => Action::Dinner(serial, minute(at)),
                    _ => Action::Shift(serial, minute(to), way, edition),
                })]);
            }
            if !known.offers.is_empty() {
                say.row([keep]);
            }
        }
    }
    say
}

pub(super) fn minute(moment: Moment) -> i64 {
    moment.timestamp().div_euclid(60)
}

/// A way out by which dinner can be at that hour is picked.
pub(super) fn shift(sitting: &mut Sitting<'_>, serial: u32, minute: i64, way: Mark, edition: u32) {
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let to = minute.checked_mul(60).and_then(|seconds| Moment::from_timestamp(seconds, 0));
    let (light, now, by) = (sitting.light(), sitting.now, sitting.speaker());
    // What has happened since may have put another way out in this place.
    let plan = sitting.room.plan.as_mut().filter(|plan| plan.serial == serial && plan.edition == edition);
    let (Some(plan), Some(to)) = (plan, to.filter(|to| *to > now)) else {
        return sitting.notice(Text::new("room-stale"));
    };
    let (wish, before) = (Wish { dinner: Some(to), ..plan.wish.clone() }, plan.jobs.clone());
    let Some(change) = jobs::take_way_out(plan, wish, way, &light, by) else {
        return sitting.notice(Text::new("room-stale"));
    };
    let (shifts, undo) = (live::shifts(&before, plan), undo::newest(plan));
    close(sitting);
    let say = sitting.answer(Text::new("room-moved").with("when", Arg::DayClock(to)));
    say.line(Text::new("room-mended").with("change", Arg::from(change))).lines(jobs::shift_lines(&shifts));
    say.key("moved").row([button("room-button-undo", &undo)]);
    board::refresh(sitting);
}

/// `Leave it`: dinner stays, if it is still where it was.
pub(super) fn stay(sitting: &mut Sitting<'_>, serial: u32, minute: i64) {
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let Some(dinner) =
        sitting.room.plan.as_ref().filter(|plan| plan.serial == serial).and_then(|plan| plan.wish.dinner)
    else {
        return sitting.notice(Text::new("room-stale"));
    };
    if self::minute(dinner) != minute {
        return moves::already(sitting, dinner);
    }
    sitting.answer(Text::new("room-late-kept").with("when", Arg::DayClock(dinner))).key(KEY).how(How::Edit);
}

/// The press answers the question, which says what it costs and moves.
pub(super) fn was_asked(sitting: &Sitting<'_>) -> bool {
    matches!(&sitting.heard.what, What::Pressed { on: Some(on), .. } if birds::unmarked(on).0 == KEY)
}

/// The choice has been made: its buttons go.
pub(super) fn close(sitting: &mut Sitting<'_>) {
    if was_asked(sitting) {
        shut(sitting);
    }
}

/// Another hour was asked about before, and nobody has chosen.
fn stands_open(sitting: &Sitting<'_>) -> bool {
    let plan = sitting.room.plan.as_ref();
    let unanswered = plan.and_then(|plan| plan.wanted).is_some_and(|wanted| !wanted.answered);
    let last = sitting.room.offered.as_ref().and_then(|offered| offered.key.as_deref());
    unanswered || last.is_some_and(|key| birds::unmarked(key).0 == KEY)
}

/// The question's buttons go.
pub(super) fn shut(sitting: &mut Sitting<'_>) {
    let room = To::Room(sitting.room.id);
    sitting.say(Say::of(room, Vec::new())).key(KEY).how(How::Close);
}

/// What dinner at that hour would cost and move, or why it can't be.
pub(super) fn outlook(sitting: &Sitting<'_>, to: Moment) -> Option<Outlook> {
    let (plan, light) = (sitting.room.plan.as_ref()?, sitting.light());
    let mut moved = plan.clone();
    moved.wish.dinner = Some(to);
    let schedule = match moved.solve(&light)? {
        Ok(schedule) => schedule,
        Err(conflict) => return Some(Outlook::Clash(Box::new(conflict))),
    };
    let stands = plan.solve(&light).and_then(Result::ok).map(|schedule| schedule.cautions).unwrap_or_default();
    let is_on = plan.on_since(sitting.now).is_some() && !plan.is_off();
    moved.adopt(&schedule, sitting.now);
    let too_late = hot_road::dinner_too_late(&moved);
    let free = !is_on && too_late.is_none() && !schedule.cautions.iter().any(|caution| is_cost(caution, &stands));
    let stays = is_on.then(|| Text::new("room-late-on"));
    let shifts = live::shifts(&plan.jobs, &moved);
    if let Some(stands) = waits_done(sitting) {
        // It waits as it is: when it is cut up moves, and its hours don't.
        let carved: Vec<_> = shifts.into_iter().filter(|(step, ..)| *step == Step::Carve).collect();
        let lines = std::iter::once(stands).chain(too_late).chain(jobs::shift_lines(&carved));
        return Some(Outlook::Works { lines: lines.collect(), free: false });
    }
    let lines =
        stays.into_iter().chain(too_late).chain(proposal::cautions(&schedule)).chain(jobs::shift_lines(&shifts));
    Some(Outlook::Works { lines: lines.collect(), free })
}

/// Whether a caution is one more than those of the hour that stands. Up at seven for a bird is no news.
fn is_cost(caution: &Caution, stands: &[Caution]) -> bool {
    !stands.iter().any(|stood| match (caution, stood) {
        (Caution::ShortRest(left), Caution::ShortRest(before)) => left >= before,
        (Caution::KeepHot(wait), Caution::KeepHot(before))
        | (Caution::HotTillPacked(wait), Caution::HotTillPacked(before)) => wait <= before,
        _ => caution == stood,
    }) && !matches!(caution, Caution::OddHours(_))
}

fn is_late(sitting: &Sitting<'_>, text: &str) -> bool {
    let (lexicon, folded) = (sitting.lexicon(), fold(text));
    // "20 min late to the movie": for something else than the table.
    let sentence = reading::sentence::Sentence::read(text, lexicon);
    let meal = (0..sentence.len()).any(|at| sentence.of(at, "meal-").is_some());
    let told = lexicon.talk_words(text);
    if !meal && is_of_a_thing(sitting, text) {
        return false;
    }
    if !meal && told.windows(2).any(|two| lexicon.talk(&two.join(" "), "late-elsewhere")) {
        return false;
    }
    let words: Vec<&str> = folded.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
    (1..=MOST_WORDS).any(|many| words.windows(many).any(|some| lexicon.talk(&some.join(" "), "late")))
}

/// "Kickoff is 20 min late", "late flight": nobody who eats here, unless it is somebody's own flight.
pub(super) fn is_of_a_thing(sitting: &Sitting<'_>, text: &str) -> bool {
    let lexicon = sitting.lexicon();
    let told = lexicon.talk_words(text);
    let kin = told.iter().any(|word| lexicon.talk(word, "kin") || lexicon.talk(word, "kin-two"));
    let own = told.iter().zip(told.iter().skip(1)).any(|(of, _)| lexicon.talk(of, "own-word"));
    let thing = (1..=2).any(|many| told.windows(many).any(|some| lexicon.talk(&some.join(" "), "late-thing")));
    thing && !kin && !own
}
