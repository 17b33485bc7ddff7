//! "Make it 11", "no wait, 12", "make it 5 not 4", "+2", "it's actually frozen": the plan told otherwise in a few words.
//!
//! A number counts people where they were spoken of last, or where no dinner is at such an hour; else it is the hour. Of whoever may
//! decide it is a change that can be taken back, of anyone else the host is asked.

use super::state::{JobState, LivePlan};
use super::{PersonId, RoomKind, Sitting, amend, ice, may, moves, planning, readings, wanted};
use crate::reading::{self, Retold, Telling, Wish};
use crate::words::Text;
use carvetime_core::bird::Condition;
use carvetime_core::plan::{Moment, Salting, Step};
use chrono::{TimeDelta, Timelike};

/// What was told so long ago is no longer what people speak of.
const SPOKEN_OF: TimeDelta = TimeDelta::minutes(30);
/// "No wait" is of what was told a moment ago.
const JUST_TOLD: TimeDelta = TimeDelta::minutes(5);
/// No dinner moves farther by a bare number.
const NEAR: TimeDelta = TimeDelta::hours(3);
/// More guests than this don't sit down at once; more than this at once are told in so many words.
const MOST: u16 = 60;
const MOST_MORE: u16 = 12;

/// `false`: nothing is told otherwise.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(who) = sitting.speaker().filter(|who| !sitting.room.drafts.contains_key(who)) else { return false };
    let ahead = |plan: &&LivePlan| plan.wish.dinner.is_some_and(|dinner| dinner > sitting.now);
    let Some(plan) = sitting.room.plan.as_ref().filter(ahead).cloned() else { return false };
    if !addressed && sitting.room.kind != RoomKind::Group {
        return false;
    }
    let retold = reading::read_retold(text, sitting.lexicon());
    if retold.is_some_and(|retold| number(sitting, &plan, who, &retold, addressed)) {
        return true;
    }
    let raw = plan.on_since(sitting.now).is_none() && !plan.is_off();
    raw && (turned_out(sitting, &plan, text, addressed) || unsalted(sitting, &plan, text, addressed))
}

/// What was spoken of last: people, with the table before it was, or the hour.
struct Topic {
    at: Moment,
    by: Option<PersonId>,
    people: Option<(u16, u16)>,
}

/// The last thing told of the plan in hand, be it done or offered.
fn topic(sitting: &Sitting<'_>, plan: &LivePlan) -> Option<Topic> {
    let last = plan.history.last().and_then(|change| {
        let people = (total(&change.wish), total(&plan.wish));
        let hour = change.wish.dinner != plan.wish.dinner;
        let topic = Topic { at: change.at, by: change.by, people: (people.0 != people.1).then_some(people) };
        (topic.people.is_some() || hour).then_some(topic)
    });
    let offered = sitting.room.unsure.iter().rev().find_map(|unsure| {
        let mut wish = plan.wish.clone();
        wish.merge(planning::read(sitting, &unsure.text).0);
        let people = (total(&plan.wish), total(&wish));
        (people.0 != people.1).then_some(Topic { at: unsure.at, by: None, people: Some(people) })
    });
    let wanted = plan.wanted.filter(|wanted| !wanted.answered);
    let wanted = wanted.map(|wanted| Topic { at: wanted.at, by: None, people: None });
    let newest = [last, offered, wanted].into_iter().flatten().max_by_key(|topic| topic.at);
    newest.filter(|topic| sitting.now - topic.at <= SPOKEN_OF)
}

fn total(wish: &Wish) -> u16 {
    wish.adults.unwrap_or(0).saturating_add(wish.children.unwrap_or(0))
}

fn number(sitting: &mut Sitting<'_>, plan: &LivePlan, who: PersonId, retold: &Retold, addressed: bool) -> bool {
    let topic = topic(sitting, plan);
    let of_people = retold.of_people || topic.as_ref().is_some_and(|topic| topic.people.is_some());
    let now = total(&plan.wish);
    match retold.telling {
        // "+1" is what people say who think so too, and a number beside a bird that cooks may be a reading's.
        Telling::Adds => {
            let spoken_of = topic.is_some_and(|topic| topic.people.is_some());
            let plain = addressed || spoken_of || retold.number != Some(1) && !readings::cooks(sitting);
            let more = retold.number.filter(|more| plain && *more <= MOST_MORE);
            more.is_some_and(|more| people(sitting, plan, now.saturating_add(more), addressed))
        }
        Telling::Corrects => {
            let just = |topic: &Topic| sitting.now - topic.at <= JUST_TOLD && topic.by.is_none_or(|by| by == who);
            let Some(topic) = topic.filter(just) else { return false };
            match (topic.people, retold.number) {
                // Two more, no, three: as many besides those there were before.
                (Some((before, after)), Some(number)) => {
                    let more = after.saturating_sub(before);
                    // "Back to 3" is how many there were.
                    let beside = after > before && number != before && number.abs_diff(more) < number.abs_diff(after);
                    people(sitting, plan, if beside { before.saturating_add(number) } else { number }, addressed)
                }
                (Some(_), None) => false,
                (None, _) => hour(sitting, plan, &retold.words, addressed),
            }
        }
        Telling::Sets => {
            let Some(number) = retold.number else { return false };
            let stands = plan.wish.dinner.map(|dinner| dinner.with_timezone(&sitting.zone_or_utc()).hour12().1);
            let of_hour = stands.is_some() && retold.before.map(u32::from) == stands;
            match retold.before {
                Some(before) if before == now && (of_people || !of_hour) => people(sitting, plan, number, addressed),
                Some(_) if of_hour => hour(sitting, plan, &retold.words, addressed),
                Some(_) => false,
                None if of_people && (topic.is_some() || addressed) => people(sitting, plan, number, addressed),
                // An hour near the dinner's is heard elsewhere; of one who may not decide it is of whatever they speak of.
                None if fits_hour(sitting, plan, &retold.words) || !may::steer(sitting) => false,
                None if number.abs_diff(now) <= now.max(4) => people(sitting, plan, number, addressed),
                None => false,
            }
        }
    }
}

fn fits_hour(sitting: &Sitting<'_>, plan: &LivePlan, words: &str) -> bool {
    let to = at(sitting, plan, words);
    to.is_some_and(|to| plan.wish.dinner.is_some_and(|dinner| (to - dinner).abs() <= NEAR))
}

fn at(sitting: &Sitting<'_>, plan: &LivePlan, words: &str) -> Option<Moment> {
    let dinner = plan.wish.dinner?;
    reading::read_shift(words, dinner, &sitting.table_ground())?.applied(dinner).filter(|to| *to > sitting.now)
}

/// So many at the table, children among them.
fn people(sitting: &mut Sitting<'_>, plan: &LivePlan, all: u16, addressed: bool) -> bool {
    if all == 0 || all > MOST {
        return false;
    }
    if all == total(&plan.wish) {
        // It is so already.
        if addressed || may::steer(sitting) {
            sitting.answer(Text::new("room-ok"));
        }
        return true;
    }
    let children = plan.wish.children.filter(|children| *children < all);
    let adults = all - children.unwrap_or(0);
    let wish = Wish { adults: Some(adults), children, ..plan.wish.clone() };
    // Words that count so many wherever they are read again, should the host be asked.
    amend::to(sitting, &format!("{adults} people"), wish, addressed)
}

/// Dinner at that hour: at once where whoever may decide says so to the bot, else the question what it would mean.
fn hour(sitting: &mut Sitting<'_>, plan: &LivePlan, words: &str, addressed: bool) -> bool {
    let Some(to) = at(sitting, plan, words).filter(|_| fits_hour(sitting, plan, words)) else { return false };
    if addressed && may::steer(sitting) {
        moves::told(sitting, words);
        return true;
    }
    wanted::offered(sitting, to)
}

/// "It's actually frozen", of a bird planned as fresh, or the other way about before its thaw.
fn turned_out(sitting: &mut Sitting<'_>, plan: &LivePlan, text: &str, addressed: bool) -> bool {
    let lexicon = sitting.lexicon();
    let Some(told) = reading::read_turned_out(text, lexicon).filter(|_| !reading::says_thawed(text, lexicon)) else {
        return false;
    };
    let known = plan.wish.condition.as_deref();
    let thaws = plan.jobs.iter().any(|job| job.step() == Some(Step::Thaw) && job.state != JobState::Waiting);
    let (frozen, fresh) = (Condition::Frozen.name(), Condition::Fresh.name());
    if !(told == frozen && known == Some(fresh) || told == fresh && known == Some(frozen) && !thaws) {
        return false;
    }
    // What it is like is no wish: whatever the plan can make of it is told.
    if told == frozen && may::steer(sitting) {
        return ice::after_all(sitting);
    }
    let wish = Wish { condition: Some(told.to_owned()), at_home: Some(true), ..plan.wish.clone() };
    amend::to(sitting, text, wish, addressed)
}

/// "No salt please, my father-in-law has high blood pressure", before it is salted.
fn unsalted(sitting: &mut Sitting<'_>, plan: &LivePlan, text: &str, addressed: bool) -> bool {
    let waits = plan.job(Step::Salt, 0).is_some_and(|job| job.state == JobState::Waiting);
    let Some(clause) = reading::read_unsalted(text, sitting.lexicon()).filter(|_| waits) else { return false };
    let clause = clause.to_owned();
    let wish = Wish { salting: Some(Salting::None.name().to_owned()), ..plan.wish.clone() };
    amend::to(sitting, &clause, wish, addressed)
}
