//! `/export`: the plan as a calendar and as a page to print, everything as JSON, the readings as CSV.
//!
//! Owns what goes into each file and its keys, which stay as they are. The calendar's words come later, like any message's.
//! What is a person's own (settings, a wish half told) is only in the export of their private chat.

use super::live::runs_by_itself;
use super::sitting::Sitting;
use super::state::{Draft, JobState, KeptCalendar, KeptEvent, LiveJob, LivePlan, OwnSalt, Person, Taste};
use super::turn::{Calendar, Event, File, FileContent};
use super::{PersonId, RoomKind, birds, plan_words, sheet};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Order, Step};
use carvetime_core::quantity::{celsius, in_celsius, in_fahrenheit};
use chrono::TimeDelta;
use serde_json::{Value, json};

/// Version of the keys of the JSON file.
const VERSION: u32 = 1;

/// In a calendar a job of some days or hours takes as long as its hands do.
const START: TimeDelta = TimeDelta::minutes(15);
/// No event is shorter: some calendars leave out what lasts no time.
const SHORTEST: TimeDelta = TimeDelta::minutes(5);

/// `/export`: sends what there is.
pub(super) fn all(sitting: &mut Sitting<'_>) {
    if let Some(calendar) = calendar(sitting) {
        let id = if sitting.room.plan.is_some() { "room-export-calendar" } else { "room-export-calendar-ended" };
        of_all(sitting, id, "carvetime.ics", FileContent::Calendar(calendar));
    }
    pages(sitting);
    for (serial, csv, name) in all_readings(sitting) {
        let hand = sitting.room.plan.as_ref().map(|plan| plan.serial);
        sitting.hold(Some(serial));
        sitting.about = true;
        send(sitting, "room-export-readings", &name, FileContent::Bytes(csv.into_bytes()));
        sitting.hold(hand);
    }
    let mut bytes = format!("{:#}", everything(sitting)).into_bytes();
    bytes.push(b'\n');
    of_all(sitting, "room-export-everything", "carvetime.json", FileContent::Bytes(bytes));
}

/// A file with every bird in it is none's alone: it names them all.
fn of_all(sitting: &mut Sitting<'_>, id: &'static str, name: &str, content: FileContent) {
    let about = std::mem::replace(&mut sitting.about, true);
    sitting.seal();
    sitting.about = false;
    let text = birds::named(birds::all_labels(sitting), Text::new(id));
    sitting.answer(text).file = Some(File { name: name.to_owned(), content });
    sitting.seal();
    sitting.about = about;
}

fn send(sitting: &mut Sitting<'_>, id: &'static str, name: &str, content: FileContent) {
    sitting.answer(Text::new(id)).file = Some(File { name: name.to_owned(), content });
}

/// A page to print for each bird.
fn pages(sitting: &mut Sitting<'_>) {
    birds::each(sitting, |sitting| {
        let Some(page) = sheet::of(sitting) else { return };
        let beside = sitting.room.plan.as_ref().filter(|plan| plan.beside).map(|plan| plan.serial);
        let name =
            beside.map_or_else(|| "carvetime-page.png".to_owned(), |serial| format!("carvetime-page-{serial}.png"));
        send(sitting, "room-export-page", &name, FileContent::Sheet(Box::new(page)));
    });
}

// ---- the calendar

/// Every bird's jobs in one calendar, and those that calendars have from an earlier export and that take place no more, be it
/// that their plan was ended. What was exported is kept with its plan.
fn calendar(sitting: &mut Sitting<'_>) -> Option<Calendar> {
    let kept: Vec<(u32, KeptCalendar)> =
        sitting.room.plans().iter().map(|plan| (plan.serial, kept(sitting, plan))).collect();
    let plans = sitting.room.plan.iter_mut().chain(&mut sitting.room.others);
    for plan in plans {
        let mine = kept.iter().find(|(serial, _)| *serial == plan.serial);
        plan.calendar = mine.map(|(_, kept)| kept.clone());
    }
    let plans = sitting.room.plans();
    let events = plans.iter().flat_map(|plan| {
        let order = plan.order(sitting.zone_or_utc());
        let bird = birds::label(sitting, plan);
        let kept = plan.calendar.iter().flat_map(|kept| kept.events.iter().map(move |event| (kept, event)));
        let events: Vec<Event> =
            kept.filter_map(|(kept, event)| self::event(plan, order.as_ref(), kept, event)).collect();
        events.into_iter().map(move |event| Event { summary: birds::named(bird.clone(), event.summary), ..event })
    });
    let ended = sitting.room.ended.iter();
    let ended = ended.flat_map(|kept| kept.events.iter().filter_map(move |event| bare_event(kept, event)));
    let events: Vec<Event> = events.chain(ended).collect();
    (!events.is_empty()).then_some(Calendar { at: sitting.now, events })
}

/// What calendars have of a plan after this export.
fn kept(sitting: &Sitting<'_>, plan: &LivePlan) -> KeptCalendar {
    let before = plan.calendar.clone().unwrap_or_else(|| KeptCalendar {
        // The chat's number now: it stays the plan's when the chat gets another.
        uid: plan.calendar_name(sitting.room.id),
        ..KeptCalendar::default()
    });
    let takes_place = plan.jobs.iter().filter(|job| !matches!(job.state, JobState::Skipped { .. }));
    let mut events: Vec<KeptEvent> = takes_place.filter_map(|job| kept_event(plan, job)).collect();
    for old in &before.events {
        if !events.iter().any(|event| event.step == old.step && event.nth == old.nth) {
            events.push(KeptEvent { cancelled: true, ..old.clone() });
        }
    }
    // Calendars take over only what has a higher number; a plan taken back to what it was is news as well.
    let news = events != before.events && !before.events.is_empty();
    let sequence = plan.edition.max(before.sequence + u32::from(news));
    KeptCalendar { events, sequence, ..before }
}

fn kept_event(plan: &LivePlan, job: &LiveJob) -> Option<KeptEvent> {
    let step = job.step()?;
    let start = match job.state {
        JobState::Done { at, .. } => at,
        JobState::Waiting | JobState::Skipped { .. } => job.at,
    };
    let dish = plan.wish.dishes.get(usize::from(job.nth)).filter(|_| step == Step::Dish).cloned().flatten();
    Some(KeptEvent {
        step: job.step.clone(),
        nth: job.nth,
        dish: dish.map(|dish| dish.name),
        start,
        end: start + takes(step, TimeDelta::minutes(job.lasts_min)),
        cancelled: false,
    })
}

fn event(plan: &LivePlan, order: Option<&Order>, kept: &KeptCalendar, event: &KeptEvent) -> Option<Event> {
    let bare = bare_event(kept, event)?;
    let step = Step::from_name(&event.step)?;
    let Some(job) = plan.job(step, event.nth).filter(|_| !event.cancelled) else { return Some(bare) };
    let of = plan.jobs.iter().filter(|other| other.step == event.step).count();
    Some(Event { description: plan_words::step_call(step, event.nth, of, order, job.latest), ..bare })
}

/// An event without what is to be done.
fn bare_event(kept: &KeptCalendar, event: &KeptEvent) -> Option<Event> {
    let step = Step::from_name(&event.step)?;
    let mut summary = plan_words::step_name(step, event.nth);
    if let Some(name) = &event.dish {
        summary = Text::named("plan-step", step.name()).with("name", Arg::Verbatim(name.clone()));
    }
    Some(Event {
        uid: format!("{}-{}-{}@carvetime", kept.uid, event.step, event.nth),
        sequence: kept.sequence,
        start: event.start,
        end: event.end,
        summary,
        description: Vec::new(),
        cancelled: event.cancelled,
    })
}

/// How long it stands in a calendar: what goes on by itself as long as it goes on, what is only started its start.
fn takes(step: Step, lasts: TimeDelta) -> TimeDelta {
    let starts = matches!(step, Step::Thaw | Step::Fire | Step::On | Step::Temper | Step::Reheat | Step::Leftovers);
    let long = runs_by_itself(step) || !starts;
    (if long { lasts } else { lasts.min(START) }).max(SHORTEST)
}

// ---- the readings

/// The readings of each bird there are some of, and the name of their file.
fn all_readings(sitting: &Sitting<'_>) -> Vec<(u32, String, String)> {
    let us = sitting.us_units();
    let file = |plan: &LivePlan| match plan.beside {
        true => format!("carvetime-readings-{}.csv", plan.serial),
        false => "carvetime-readings.csv".to_owned(),
    };
    sitting.room.plans().into_iter().filter_map(|plan| Some((plan.serial, readings(plan, us)?, file(plan)))).collect()
}

/// The forecast's format, minutes since the bird went on, or since the first reading if nobody said when that was.
fn readings(plan: &LivePlan, us: bool) -> Option<String> {
    let sorted = plan.counted();
    let on = plan.facts.iter().rev().find(|fact| fact.done && fact.step == Step::On.name()).map(|fact| fact.at);
    let start = on.or_else(|| sorted.first().map(|reading| reading.at))?;
    let unit = if us { "f" } else { "c" };
    let mut csv = format!("minutes,pit_{unit},breast_{unit},thigh_{unit}\n");
    let before = csv.len();
    for reading in sorted.into_iter().filter(|reading| reading.at >= start) {
        let minutes = tenth((reading.at - start).num_seconds() as f64 / 60.0);
        let cell = |value: Option<f64>| value.map(|value| degrees(value, us)).unwrap_or_default();
        let cells = [cell(reading.pit_c), cell(reading.breast_c), cell(reading.thigh_c)];
        csv.push_str(&format!("{minutes},{}\n", cells.join(",")));
    }
    (csv.len() > before).then_some(csv)
}

fn degrees(value_c: f64, us: bool) -> String {
    let temperature = celsius(value_c);
    tenth(if us { in_fahrenheit(temperature) } else { in_celsius(temperature) })
}

fn tenth(value: f64) -> String {
    ((value * 10.0).round() / 10.0 + 0.0).to_string()
}

// ---- everything

fn everything(sitting: &Sitting<'_>) -> Value {
    let room = &sitting.room;
    let own = sitting.speaker().filter(|_| room.kind == RoomKind::Private);
    let members: Vec<String> = room.members.iter().map(|member| sitting.name_of(*member)).collect();
    let mut plans = room.plans().into_iter();
    let mut all = json!({
        "version": VERSION,
        "made_at": stamp(sitting.now),
        "chat": {
            "kind": match room.kind { RoomKind::Private => "private", RoomKind::Group => "group" },
            "settings": taste(&room.taste),
            "people": members,
            "plans_made": room.plans_made,
        },
        "plan": plans.next().map(|plan| self::plan(sitting, plan)),
        "plans_beside": plans.map(|plan| self::plan(sitting, plan)).collect::<Vec<_>>(),
    });
    if let Some(person) = own.and_then(|id| sitting.people.get(&id)) {
        all["you"] = you(person);
        all["draft"] = json!(room.drafts.get(&person.id).map(|draft: &Draft| &draft.wish));
        all["said_of_some_bird"] = json!(room.unsure.iter().map(|unsure| &unsure.text).collect::<Vec<_>>());
        all["last_question"] = json!(room.questions.get(&person.id));
    }
    all
}

fn you(person: &Person) -> Value {
    json!({
        "name": person.name,
        "username": person.username,
        "settings": taste(&person.taste),
        "own_salt_grams_per_ml": person.own_salt.map(|OwnSalt { grams_per_ml }| grams_per_ml),
        "cooker": person.cooker,
        "fridge_c": person.fridge_c,
        "fridge_shelves": person.fridge_shelves,
        "cookers_learned": person.profiles,
        "past_dinners": person.notes,
        "quiet": person.quiet.map(|(from, to)| json!({ "from": from, "to": to })),
    })
}

fn taste(taste: &Taste) -> Value {
    json!({
        "language": taste.language,
        "units": taste.us_units.map(|us| if us { "us" } else { "metric" }),
        "spoons": taste.spoons,
        "zone": taste.zone,
    })
}

fn plan(sitting: &Sitting<'_>, plan: &LivePlan) -> Value {
    let name = |person: Option<PersonId>| person.map(|person| sitting.name_of(person));
    let jobs = plan.jobs.iter().map(|job| {
        let (state, by, at) = match job.state {
            JobState::Waiting => ("waiting", None, None),
            JobState::Done { by, at } => ("done", by, Some(at)),
            JobState::Skipped { by, at } => ("skipped", by, Some(at)),
        };
        json!({
            "step": job.step,
            "nth": job.nth,
            "at": stamp(job.at),
            "earliest": stamp(job.earliest),
            "latest": stamp(job.latest),
            "lasts_minutes": job.lasts_min,
            "owner": name(job.owner),
            "state": state,
            "settled_by": name(by),
            "settled_at": at.map(stamp),
        })
    });
    let facts = plan.facts.iter().map(|fact| {
        json!({ "step": fact.step, "nth": fact.nth, "at": stamp(fact.at), "done": fact.done, "by": name(fact.by) })
    });
    let readings = plan.readings.iter().map(|reading| {
        json!({
            "at": stamp(reading.at),
            "pit_c": reading.pit_c,
            "breast_c": reading.breast_c,
            "thigh_c": reading.thigh_c,
            "stuffing_c": reading.stuffing_c,
            "wing_c": reading.wing_c,
            "by": name(reading.by),
        })
    });
    let changes = plan.history.iter().map(
        |change| json!({ "what": change.name, "step": change.step, "at": stamp(change.at), "by": name(change.by) }),
    );
    json!({
        "number": plan.serial,
        "edition": plan.edition,
        "host": sitting.name_of(plan.host),
        "wish": plan.wish,
        "jobs": jobs.collect::<Vec<_>>(),
        "facts": facts.collect::<Vec<_>>(),
        "readings": readings.collect::<Vec<_>>(),
        "changes": changes.collect::<Vec<_>>(),
        "ready_from": plan.ready_from.map(stamp),
        "ready_to": plan.ready_to.map(stamp),
    })
}

/// RFC 3339 in UTC, whole seconds.
fn stamp(at: Moment) -> String {
    at.to_rfc3339_opts(chrono::SecondsFormat::Secs, true)
}
