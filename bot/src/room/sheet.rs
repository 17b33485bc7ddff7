//! The plan on one page, for the fridge's door, without any ink: [`crate::sheet`] draws it.
//!
//! Owns what stands on it and in which order. Words and numbers come later, like any message's.

use super::sitting::Sitting;
use super::state::{JobState, LiveJob, LivePlan};
use super::{PersonId, birds, dose, plan_words, proposal};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Dish, DishHeat, Moment, Order, Step};
use carvetime_core::quantity::fahrenheit;
use carvetime_core::thaw::WATER_CHANGE_EVERY;

/// The page.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// When dinner is.
    pub dinner: Text,
    /// Which bird, how cooked.
    pub bird: Text,
    /// The days with their jobs.
    pub days: Vec<Day>,
    /// Boxes under them: salt, when it is done, what keeps it safe.
    pub boxes: Vec<Note>,
    /// As of when.
    pub made: Text,
}

/// A day.
#[derive(Debug, Clone, PartialEq)]
pub struct Day {
    /// Which.
    pub name: Text,
    /// Its jobs in order.
    pub rows: Vec<Row>,
}

/// A job.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// When.
    pub at: Text,
    /// What.
    pub what: Text,
    /// Who has it; nobody leaves a line to write a name on.
    pub who: Option<Who>,
    /// Nobody need have it: it comes by itself.
    pub by_itself: bool,
    /// Done already: its box is ticked.
    pub done: bool,
}

/// A person, with what to write where the name can't be drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Who {
    /// Untrusted.
    pub name: String,
    /// `@name` without the sign.
    pub username: Option<String>,
    /// "Helper 2".
    pub number: Text,
}

/// A box with a heading.
#[derive(Debug, Clone, PartialEq)]
pub struct Note {
    /// Its heading.
    pub head: Text,
    /// Its paragraphs.
    pub lines: Vec<Text>,
}

impl Sheet {
    /// Every text, to be told by another clock or with other names.
    pub(super) fn texts(&mut self) -> impl Iterator<Item = &mut Text> {
        let days =
            self.days.iter_mut().flat_map(|day| day.rows.iter_mut().flat_map(|row| [&mut row.at, &mut row.what]));
        let notes = self.boxes.iter_mut().flat_map(|note| &mut note.lines);
        [&mut self.dinner, &mut self.bird].into_iter().chain(days).chain(notes)
    }
}

/// The page of the plan in hand; nothing where its order can't be read any more.
pub(super) fn of(sitting: &Sitting<'_>) -> Option<Sheet> {
    let plan = sitting.room.plan.as_ref()?;
    let order = plan.order(sitting.zone_or_utc())?;
    let bird = Text::new("room-board-bird")
        .with("bird", Arg::from(proposal::birds_text(&order)))
        .with("heat", Arg::from(proposal::heat_text(&order.heat)));
    let own = dose::own(sitting, plan);
    let salt = dose::lines(&order, own, dose::strength(&plan.wish), sitting.usual_salt());
    let salt = (!salt.is_empty()).then(|| Note { head: Text::new("sheet-salt"), lines: salt });
    Some(Sheet {
        dinner: Text::new("sheet-dinner").with("when", Arg::DayClock(order.dinner)),
        bird: birds::named(birds::label(sitting, plan), bird),
        days: days(sitting, plan, &order),
        boxes: salt.into_iter().chain([done_when(&order), safe()]).collect(),
        made: Text::new("sheet-made").with("when", Arg::DayClock(sitting.now)),
    })
}

fn done_when(order: &Order) -> Note {
    let id = if order.bird.stuffed { "sheet-target-stuffed" } else { "sheet-target" };
    let line = Text::new(id).with("target", Arg::Temperature(super::target()));
    Note { head: Text::new("sheet-done"), lines: vec![line] }
}

fn safe() -> Note {
    let cold = || Arg::Temperature(fahrenheit(40.0));
    let lines = vec![
        Text::new("sheet-safe-cold").with("cold", cold()),
        Text::new("sheet-safe-hands"),
        Text::new("sheet-safe-out").with("hot", Arg::Temperature(fahrenheit(140.0))),
    ];
    Note { head: Text::new("sheet-safe"), lines }
}

fn days(sitting: &Sitting<'_>, plan: &LivePlan, order: &Order) -> Vec<Day> {
    let zone = sitting.zone_or_utc();
    let mut jobs: Vec<&LiveJob> =
        plan.jobs.iter().filter(|job| !matches!(job.state, JobState::Skipped { .. })).collect();
    jobs.sort_by_key(|job| at(job));
    let mut days: Vec<(chrono::NaiveDate, Day)> = Vec::new();
    let mut seen = Vec::new();
    for job in jobs {
        let Some(step) = job.step() else { continue };
        let many = step == Step::Water;
        if many && seen.contains(&step) || step == Step::Rest || step == Step::Stand {
            continue; // the many of a kind are one line; what lies between two jobs is none
        }
        seen.push(step);
        let date = at(job).with_timezone(&zone).date_naive();
        if days.last().is_none_or(|(last, _)| *last != date) {
            let name = Text::new("sheet-day").with("day", Arg::Day(at(job)));
            days.push((date, Day { name, rows: Vec::new() }));
        }
        if let Some((_, day)) = days.last_mut() {
            day.rows.push(row(sitting, plan, order, step, job));
        }
    }
    days.into_iter().map(|(_, day)| day).collect()
}

fn row(sitting: &Sitting<'_>, plan: &LivePlan, order: &Order, step: Step, job: &LiveJob) -> Row {
    let times = plan.jobs.iter().filter(|other| other.step == job.step).count();
    let what = plan_words::step_name(step, job.nth);
    let what = match step {
        Step::Water if times > 1 => Text::new("sheet-times")
            .with("what", Arg::from(what))
            .with("times", Arg::Count(times as i64))
            .with("every", Arg::Span(WATER_CHANGE_EVERY)),
        Step::Dish => order.dishes.get(job.nth).map_or(what.clone(), |dish| dish_row(dish, what)),
        _ => what,
    };
    let by = match job.state {
        JobState::Done { by, .. } => by.or(job.owner),
        _ => job.owner,
    };
    Row {
        at: Text::new("sheet-at").with("at", Arg::Clock(at(job))),
        what,
        who: by.map(|id| who(sitting, id)),
        by_itself: matches!(step, Step::Serve | Step::Leftovers),
        done: matches!(job.state, JobState::Done { .. }),
    }
}

/// A dish with its heat and how long it takes: who stands before the oven has the page alone.
fn dish_row(dish: Dish, what: Text) -> Text {
    let how = match dish.heat {
        _ if dish.takes.is_zero() => return what,
        DishHeat::Oven(_) => "oven",
        DishHeat::Smoker(_) => "smoker",
        DishHeat::Stove => "stove",
        DishHeat::None => "none",
    };
    let text = Text::new("sheet-dish").with("what", Arg::from(what)).with("how", Arg::Choice(how));
    let text = text.with("takes", Arg::Span(dish.takes));
    let setting = dish.heat.setting();
    text.with("setting", setting.map_or(Arg::Verbatim(String::new()), Arg::Temperature))
}

fn at(job: &LiveJob) -> Moment {
    match job.state {
        JobState::Done { at, .. } => at,
        JobState::Waiting | JobState::Skipped { .. } => job.at,
    }
}

fn who(sitting: &Sitting<'_>, id: PersonId) -> Who {
    let place = sitting.room.members.iter().position(|member| *member == id).unwrap_or_default();
    Who {
        name: sitting.name_of(id),
        username: sitting.people.get(&id).and_then(|person| person.username.clone()),
        number: Text::new("sheet-helper").with("n", Arg::Count(place as i64 + 1)),
    }
}
