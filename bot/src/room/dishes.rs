//! What else is on the table: dishes added to the plan and taken from it, in the one solver with the bird.
//!
//! Anyone here may add a dish: it is a job more. Where it doesn't fit, nothing changes until someone picks a way out.

use super::action::{Action, JobRef, Mark};
use super::live;
use super::sitting::{button, name};
use super::state::{JobState, LiveJob, LivePlan, Untimed};
use super::turn::{FileContent, How, Say};
use super::{RoomKind, Sitting, birds, board, dish_hour, jobs, may, plan_words, proposal, way_out};
use crate::reading::{
    self, DishChange, DishOrder, DishProblem, Ground, When, WishDish, each_dish, fold, read_dish, read_shelves,
};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Cold, ColdPlace, Conflict, DISH_HALVES, MOST_DISHES, Moment, Schedule, Step, clock, spans};
use carvetime_core::quantity::{celsius, fahrenheit, in_celsius};
use chrono::{NaiveTime, TimeDelta};

/// Hour from which a dish is in the fridge on a day that was told alone.
const EVENING: (u32, u32) = (18, 0);
/// How long a dish takes is told within this time of being asked.
const ANSWERED_WITHIN: TimeDelta = TimeDelta::minutes(10);
/// The shortest stay in a fridge that is planned.
const COLD_LEAST: TimeDelta = TimeDelta::minutes(15);

/// Words that add a dish or take one away. `false`: they do neither.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let heard = told_each(sitting, text);
    // Of several dinners the answer says which it joined.
    sitting.about |= heard && !sitting.room.others.is_empty();
    heard
}

/// What is said behind `/plan`: a dish more, one less, or another time or heat of one.
pub(super) fn of_the_plan(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if told(sitting, text) || retold(sitting, text) {
        return true;
    }
    let off = reading::read_taken_off(text, &sitting.ground()).filter(|name| named(sitting, name).is_some());
    off.inspect(|name| remove(sitting, name)).is_some()
}

fn told_each(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let each = each_dish(text, &sitting.ground());
    if sitting.room.plan.is_none() || each.len() < 2 {
        return told_one(sitting, text);
    }
    // What fits is put on first, so that a way out is picked for what stands then; one at a time waits for it.
    let mut clashing = Vec::new();
    for text in &each {
        let (from, before) = (sitting.says.len(), waiting(sitting));
        told_one(sitting, text);
        if waiting(sitting).is_some_and(|dishes| before.as_ref() != Some(&dishes)) {
            sitting.says.truncate(from);
            sitting.room.plan.iter_mut().for_each(|plan| plan.adding = None);
            clashing.push(text);
        }
    }
    let mut clashing = clashing.into_iter();
    for text in clashing.by_ref() {
        let before = waiting(sitting);
        told_one(sitting, text);
        if waiting(sitting) != before {
            break;
        }
    }
    let ground = sitting.ground();
    for text in clashing {
        if let Some(Ok(DishOrder::Add(dish, _))) = read_dish(text, &ground) {
            sitting.answer(Text::new("dish-not-yet").with("name", Arg::Verbatim(dish.name)));
        }
    }
    true
}

/// The dishes with the one that waits for a way out.
fn waiting(sitting: &Sitting<'_>) -> Option<Vec<Option<WishDish>>> {
    sitting.room.plan.as_ref()?.adding.clone()
}

fn told_one(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(read) = read_dish(text, &sitting.ground()) else { return false };
    let Some(plan) = &sitting.room.plan else {
        sitting.answer(Text::new("dish-no-plan"));
        return true;
    };
    match read {
        Ok(DishOrder::Add(mut dish, from)) => {
            let dishes = plan.wish.dishes.clone();
            if let Some(from) = from {
                let Some(minutes) = plan.wish.dinner.and_then(|dinner| stay(from, dinner, &sitting.ground())) else {
                    sitting.answer(complaint(DishProblem::Cold(dish.name)));
                    return true;
                };
                dish.cold_min = Some(minutes);
            }
            // Said twice, or by two people: one more only if that is wanted.
            let start = dish.start.take();
            let ready = std::mem::take(&mut dish.ready);
            let same = |other: &WishDish| WishDish { name: dish.name.clone(), by: dish.by, ..other.clone() } == dish;
            let named = |other: &WishDish| fold(&other.name) == fold(&dish.name);
            let standing =
                (0_u8..).zip(&dishes).find(|(_, other)| other.as_ref().is_some_and(|it| named(it) && same(it)));
            match standing {
                Some((place, _)) => there_already(sitting, place),
                None => {
                    let from = sitting.says.len();
                    put(sitting, dishes, dish);
                    dish_hour::said(sitting, from, start, ready);
                }
            }
        }
        // "Retira o peru do forno" is of the bird in the heat.
        Ok(DishOrder::Remove(name))
            if named(sitting, &name).is_none() && reading::names_a_bird(&name, sitting.lexicon()) =>
        {
            return false;
        }
        Ok(DishOrder::Remove(name)) => remove(sitting, &name),
        Err(problem) => {
            if let (DishProblem::NoTime(_), Some(by)) = (&problem, sitting.speaker()) {
                sitting.room.untimed = Some(Untimed { by, at: sitting.now, text: text.to_owned() });
            }
            sitting.answer(complaint(problem));
        }
    }
    true
}

/// "40 min on the stove", below "How long does soup take?", by whoever was asked. `false`: it says something else.
pub(super) fn timed(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let (now, who) = (sitting.now, sitting.speaker());
    let open = |it: &&Untimed| Some(it.by) == who && now - it.at <= ANSWERED_WITHIN;
    let Some(it) = sitting.room.untimed.as_ref().filter(open) else { return false };
    if !reading::tells_only_time(text, &sitting.ground()) {
        return false;
    }
    let whole = format!("{}, {text}", it.text);
    sitting.room.untimed = None;
    told(sitting, &whole)
}

/// "I'll bring green bean casserole, needs 30 min at 350": anyone may, and says it to everyone. `false`: no dish with its heat and its time.
pub(super) fn brought(sitting: &mut Sitting<'_>, text: &str) -> bool {
    reading::read_brought(text, &sitting.ground()).is_some() && told_one(sitting, text)
}

/// "No stuffing after all", "stuffing takes 60 min": of a dish that stands by that very name. `false`: the words are of none.
pub(super) fn retold(sitting: &mut Sitting<'_>, text: &str) -> bool {
    // "No more rolls", at the table, is said by who is full.
    let ahead = sitting.room.plan.as_ref().and_then(|plan| plan.wish.dinner).is_some_and(|dinner| sitting.now < dinner);
    let dropped = reading::read_dropped(text, &sitting.ground()).filter(|_| ahead);
    if let Some(name) = dropped.filter(|name| names(sitting).iter().any(|known| fold(known) == fold(name)))
        && named(sitting, &name).is_some_and(|place| theirs(sitting, place).is_none())
    {
        remove(sitting, &name);
        return true;
    }
    let Some(place) = named(sitting, text) else { return false };
    let dishes = sitting.room.plan.as_ref().map(|plan| plan.wish.dishes.clone()).unwrap_or_default();
    let Some(dish) = dishes.get(usize::from(place)).cloned().flatten() else { return false };
    let rest = fold(text).replacen(&fold(&dish.name), "", 1);
    let Some(change) = reading::read_dish_change(&rest, &sitting.ground()) else { return false };
    let waits = |job: &LiveJob| job.step() == Some(Step::Dish) && job.nth == place && job.state == JobState::Waiting;
    let plan = sitting.room.plan.as_ref();
    let Some(at) = plan.and_then(|plan| plan.jobs.iter().find(|job| waits(job))).map(|job| job.at) else {
        return false;
    };
    let among = matches!(&sitting.heard.what, super::What::Said { addressed: false, reply_to: None, .. });
    if among && sitting.room.kind == RoomKind::Group && !change.said {
        return false;
    }
    changed(sitting, dishes, (place, dish), &change, at)
}

/// The dish with what is told of it, in the one solver; an hour is the plan's to find, and told.
fn changed(
    sitting: &mut Sitting<'_>,
    mut dishes: Vec<Option<WishDish>>,
    (place, dish): (u8, WishDish),
    change: &DishChange,
    at: Moment,
) -> bool {
    let mut told = dish.clone();
    told.minutes = change.minutes.unwrap_or(dish.minutes);
    told.setting_c = change.setting.map(in_celsius).or(dish.setting_c);
    let set = change.setting.and(Some("oven")).filter(|_| dish.heat.is_none() || dish.heat.as_deref() == Some("stove"));
    told.heat = change.heat.or(set).map(str::to_owned).or(dish.heat.clone());
    let nothing = told == dish;
    if nothing && change.hour {
        let what = Arg::from(plan_words::step_name(Step::Dish, place));
        sitting.answer(Text::new("room-when-step").with("what", what).with("when", Arg::DayClock(at)));
        return true;
    }
    if let Some(refusal) = theirs(sitting, place).filter(|_| !nothing) {
        sitting.notice(refusal);
        return true;
    }
    let takes = i64::from(told.minutes);
    if !reading::DISH_MINUTES.contains(&takes) {
        sitting.answer(complaint(DishProblem::Time(told.name)));
        return true;
    }
    if let Some(setting) = change.setting.filter(|setting| !reading::is_dish_setting(*setting)) {
        sitting.answer(complaint(DishProblem::Setting(setting)));
        return true;
    }
    if let Some(slot) = dishes.get_mut(usize::from(place)) {
        *slot = Some(told);
    }
    let id = if change.setting.is_some() { "dish-changed-at" } else { "dish-changed" };
    add(sitting, dishes, usize::from(place), id);
    true
}

/// Puts a dish where there is a place for it, under a name nothing else on the table has.
fn put(sitting: &mut Sitting<'_>, mut dishes: Vec<Option<WishDish>>, mut dish: WishDish) {
    let free = dishes.iter().position(Option::is_none).unwrap_or(dishes.len());
    if free >= MOST_DISHES {
        sitting.answer(Text::new("dish-too-many").with("most", Arg::Count(MOST_DISHES as i64)));
        return;
    }
    dish.name = own_name(&dish.name, &dishes);
    dish.by = sitting.speaker();
    if free == dishes.len() {
        dishes.push(None);
    }
    if let Some(slot) = dishes.get_mut(free) {
        *slot = Some(dish);
    }
    add(sitting, dishes, free, "dish-added");
}

/// The name itself, or with the first number that makes it one of its own: "rice 2".
fn own_name(name: &str, dishes: &[Option<WishDish>]) -> String {
    let taken = |name: &str| dishes.iter().flatten().any(|dish| fold(&dish.name) == fold(name));
    let numbered = (2..=MOST_DISHES + 1).map(|number| format!("{name} {number}"));
    std::iter::once(name.to_owned()).chain(numbered).find(|name| !taken(name)).unwrap_or_else(|| name.to_owned())
}

/// The very dish is on the plan.
fn there_already(sitting: &mut Sitting<'_>, place: u8) {
    let Some(plan) = &sitting.room.plan else { return };
    let action = Action::Another(plan.serial, place);
    let Some(job) = plan.job(Step::Dish, place) else { return };
    let text = Text::new("dish-there")
        .with("name", Arg::from(plan_words::step_name(Step::Dish, place)))
        .with("when", Arg::DayClock(job.at));
    sitting.answer(text).key("dish").row([button("dish-button-another", &action)]);
}

/// One more of the dish of that place.
pub(super) fn another(sitting: &mut Sitting<'_>, serial: u32, place: u8) {
    let plan = sitting.room.plan.as_ref().filter(|plan| plan.serial == serial);
    let dishes = plan.map(|plan| plan.wish.dishes.clone()).unwrap_or_default();
    let Some(dish) = dishes.get(usize::from(place)).cloned().flatten() else {
        return sitting.notice(Text::new("room-stale"));
    };
    // Of "rice 2" one more is "rice 3".
    let stem =
        dish.name.rsplit_once(' ').filter(|(_, number)| number.parse::<u8>().is_ok()).map(|(stem, _)| stem.to_owned());
    let name = stem.unwrap_or_else(|| dish.name.clone());
    put(sitting, dishes, WishDish { name, ..dish });
}

fn complaint(problem: DishProblem) -> Text {
    match problem {
        DishProblem::NoName => Text::new("dish-no-name"),
        DishProblem::NoTime(name) => Text::new("dish-no-time").with("name", Arg::Verbatim(name)),
        DishProblem::Cold(name) => Text::new("dish-stay").with("name", Arg::Verbatim(name)),
        DishProblem::Time(name) => Text::new("dish-time").with("name", Arg::Verbatim(name)),
        DishProblem::Setting(setting) => Text::new("dish-setting")
            .with("setting", Arg::Temperature(setting))
            .with("low", Arg::Temperature(fahrenheit(150.0)))
            .with("high", Arg::Temperature(fahrenheit(550.0))),
    }
}

/// Minutes from then to dinner: an hour alone is the last such hour before it, a day alone its evening.
fn stay(from: When, dinner: Moment, ground: &Ground) -> Option<u32> {
    let evening = NaiveTime::from_hms_opt(EVENING.0, EVENING.1, 0).unwrap_or(NaiveTime::MIN);
    let from = match from {
        When::Moment(at) => at,
        When::Day(day) => ground.moment(day, evening),
        When::Hour(hour) => {
            let day = clock::date(ground.zone, dinner);
            let on_the_day = ground.moment(day, hour);
            if on_the_day < dinner { on_the_day } else { ground.moment(day.pred_opt()?, hour) }
        }
    };
    let stay = dinner - from;
    let planned = (COLD_LEAST..=spans::COOKED_PLANNED - TimeDelta::days(1)).contains(&stay);
    planned.then(|| u32::try_from(stay.num_minutes()).ok()).flatten()
}

/// "My fridge has 3 shelves": noted for the speaker's dinners and the plan in hand. `false`: the words say nothing of it.
pub(super) fn shelves_told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(shelves) = read_shelves(text, sitting.lexicon()) else { return false };
    let Some(who) = sitting.speaker() else { return false };
    sitting.change_person(who, |person| person.fridge_shelves = Some(shelves));
    let crowded = birds::in_the_fridge(sitting, shelves);
    sitting.answer(Text::new("dish-shelves").with("count", Arg::Count(shelves.into()))).lines(crowded);
    let (now, by) = (sitting.now, sitting.speaker());
    if let Some(plan) = sitting.room.plan.as_mut() {
        plan.remember("dish", None, by, now);
        plan.wish.shelves = Some(shelves);
        match sitting.resolve() {
            Ok(shifts) => jobs::tell_shifts(sitting, &shifts),
            Err(conflict) => jobs::tell_conflict(sitting, &conflict),
        }
        board::refresh(sitting);
    }
    true
}

/// `id`: how it is said.
fn add(sitting: &mut Sitting<'_>, dishes: Vec<Option<WishDish>>, place: usize, id: &'static str) {
    let light = sitting.light();
    let standing = sitting.room.plan.as_ref().and_then(|plan| plan.solve(&light));
    if let Some(Err(conflict)) = standing {
        // One thing after the other: with the dinner in doubt no dish can be placed.
        let name = dishes.get(place).and_then(Option::as_ref).map(|dish| dish.name.clone()).unwrap_or_default();
        sitting.room.plan.iter_mut().for_each(|plan| plan.clash = None);
        if let Some(say) = jobs::said_conflict(sitting, &conflict) {
            say.text.insert(0, Text::new("dish-not-yet").with("name", Arg::Verbatim(name)));
        }
        return;
    }
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let changed =
        LivePlan { wish: crate::reading::Wish { dishes: dishes.clone(), ..plan.wish.clone() }, ..plan.clone() };
    match changed.solve(&light) {
        Some(Ok(schedule)) => {
            let shifts = adopt(sitting, dishes, &schedule);
            let nth = u8::try_from(place).unwrap_or(0);
            say_added(sitting, nth, &schedule, &shifts, id);
        }
        Some(Err(conflict)) => {
            plan.adding = Some(dishes);
            clash(sitting, &conflict, How::New);
        }
        None => {}
    }
}

/// It does not fit as it stands: why, and what would do.
fn clash(sitting: &mut Sitting<'_>, conflict: &Conflict, how: How) {
    let Some(plan) = &sitting.room.plan else { return };
    let (serial, dishes) = (plan.serial, plan.adding.as_deref().unwrap_or_default());
    let conflict = &way_out::of_the_dish(conflict.clone(), told_of(plan));
    let mut lines = proposal::clash(conflict);
    lines.extend(proposal::all_offers(conflict));
    let offers = way_out::buttons(conflict, dishes, |way| Action::Seat(serial, way));
    let say = sitting.answer_all(lines).key("dish").how(how);
    for offer in offers {
        say.row([offer]);
    }
    say.row([button("room-button-late-keep", &Action::Leave(serial))]);
}

/// What the dish that waits for a way out is up against, once more. `false`: none waits, or it fits by now.
pub(super) fn still_clashes(sitting: &mut Sitting<'_>) -> bool {
    let light = sitting.light();
    let Some(plan) = &sitting.room.plan else { return false };
    let Some(dishes) = plan.adding.clone() else { return false };
    let changed = LivePlan { wish: crate::reading::Wish { dishes, ..plan.wish.clone() }, ..plan.clone() };
    let Some(Err(conflict)) = changed.solve(&light) else { return false };
    clash(sitting, &conflict, How::New);
    true
}

/// The place of the dish that waits for a way out.
fn told_of(plan: &LivePlan) -> Option<u8> {
    let told = plan.adding.as_deref()?.iter().zip(0_u8..);
    let mut changed = told.filter(|(dish, place)| plan.wish.dishes.get(usize::from(*place)) != Some(dish));
    changed.next().map(|(_, place)| place)
}

/// The dish that did not fit stays as it was: off the plan, if it was not on it.
pub(super) fn leave(sitting: &mut Sitting<'_>, serial: u32) {
    let plan = sitting.room.plan.as_mut().filter(|plan| plan.serial == serial);
    if plan.and_then(|plan| plan.adding.take()).is_none() {
        return sitting.notice(Text::new("room-stale"));
    }
    sitting.answer(Text::new("dish-left")).key("dish").how(How::Edit);
}

/// A way out is picked for the dish that did not fit.
pub(super) fn seat(sitting: &mut Sitting<'_>, serial: u32, way: Mark) {
    let light = sitting.light();
    let pending = sitting.room.plan.as_mut().filter(|plan| plan.serial == serial);
    let Some((plan, dishes)) = pending.and_then(|plan| plan.adding.clone().map(|dishes| (plan, dishes))) else {
        return sitting.notice(Text::new("room-stale"));
    };
    let changed = LivePlan { wish: crate::reading::Wish { dishes, ..plan.wish.clone() }, ..plan.clone() };
    let (Some(order), Some(Err(conflict))) = (changed.order(light.zone), changed.solve(&light)) else {
        return sitting.notice(Text::new("room-stale"));
    };
    let Some(offer) = way_out::meant(&conflict, &changed.wish.dishes, way) else {
        // It was offered for another dish, or things have moved: the newest message shows what would do now.
        sitting.notice(Text::new("room-stale"));
        return clash(sitting, &conflict, How::Edit);
    };
    if moves_the_dinner(&offer.change) && !super::may::steer(sitting) {
        return super::may::refuse(sitting);
    }
    if let carvetime_core::plan::Change::DishOut(place) = offer.change
        && let Some(refusal) = theirs(sitting, place)
    {
        return sitting.notice(refusal);
    }
    let change = way_out::said(&offer.change, &changed.wish.dishes);
    let mut wish = changed.wish.clone();
    super::order::absorb(&mut wish, &offer.change.apply(&order));
    let (now, by) = (sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    plan.remember("dish", None, by, now);
    plan.wish = wish;
    plan.adding = None;
    plan.adopt(&offer.schedule, now);
    let text = Text::new("room-mended").with("change", Arg::from(change));
    sitting.answer(text).key("dish").how(How::Edit);
    board::refresh(sitting);
}

fn moves_the_dinner(change: &carvetime_core::plan::Change) -> bool {
    use carvetime_core::plan::Change;
    !matches!(
        change,
        Change::DishBeside(_)
            | Change::DishAhead(_)
            | Change::DishEarly(_)
            | Change::DishOut(_)
            | Change::DishLater(..)
            | Change::DishCooler(_)
    )
}

/// Takes over a schedule with other dishes; which jobs moved.
fn adopt(sitting: &mut Sitting<'_>, dishes: Vec<Option<WishDish>>, schedule: &Schedule) -> Vec<live::Shift> {
    let (now, by) = (sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut() else { return Vec::new() };
    plan.remember("dish", None, by, now);
    let before = plan.jobs.clone();
    plan.wish.dishes = dishes;
    plan.adding = None;
    plan.adopt(schedule, now);
    let shifts = live::shifts(&before, plan);
    board::refresh(sitting);
    shifts
}

/// What it moves, under what is said of the dish.
fn moved(shifts: &[live::Shift]) -> Vec<Text> {
    let head = (!shifts.is_empty()).then(|| Text::new("room-shifts"));
    head.into_iter().chain(jobs::shift_lines(shifts)).collect()
}

fn say_added(sitting: &mut Sitting<'_>, nth: u8, schedule: &Schedule, shifts: &[live::Shift], id: &'static str) {
    let Some(plan) = &sitting.room.plan else { return };
    let undo = super::undo::newest(plan);
    let hot = plan.wish.dishes.get(usize::from(nth)).and_then(Option::as_ref).is_some_and(|dish| dish.hot_through);
    let Some(job) = schedule.job(Step::Dish, nth) else { return };
    let mut text = Text::new(id)
        .with("what", Arg::from(plan_words::step_name(Step::Dish, nth)))
        .with("when", Arg::DayClock(job.at));
    if id != "dish-added" {
        text = text.with("takes", Arg::Span(job.lasts));
    }
    let dish = plan.wish.dishes.get(usize::from(nth)).and_then(Option::as_ref);
    if let Some(setting) = dish.and_then(|dish| dish.setting_c).filter(|_| id == "dish-changed-at") {
        text = text.with("setting", Arg::Temperature(celsius(setting)));
    }
    let mut lines: Vec<Text> = Vec::new();
    lines.extend(hot.then(|| Text::new("dish-hot-through").with("target", Arg::Temperature(super::target()))));
    if let Some(order) = plan.order(sitting.zone_or_utc())
        && let Some(cold) = order.dishes.get(nth).and_then(|dish| dish.cold())
    {
        lines.push(in_the_cold(cold, job.at + job.lasts));
        let first = order.dishes.iter().filter(|(_, dish)| dish.in_fridge() > 0).count() == 1;
        let unknown = order.shelves.or(sitting.light().shelves).or(birds::told_shelves(sitting)).is_none();
        lines.extend((first && unknown).then(|| Text::new("dish-shelves-hint")));
        lines.extend(birds::dish_in_the_fridge(sitting));
    }
    lines.extend(moved(shifts));
    sitting.answer(text).lines(lines).key("dish").row([button("room-button-undo", &undo)]);
}

/// Where it waits for the table, and since when.
fn in_the_cold(cold: Cold, from: Moment) -> Text {
    match cold.place {
        ColdPlace::Fridge => Text::new("dish-cold")
            .with("when", Arg::DayClock(from))
            .with(
                "room",
                Arg::Choice(match cold.halves {
                    1 => "half",
                    2 => "whole",
                    _ => "more",
                }),
            )
            .with("shelves", Arg::Number(f64::from(cold.halves) / 2.0, 1)),
        ColdPlace::Cooler => {
            Text::new("dish-iced").with("when", Arg::DayClock(from)).with("cold", Arg::Temperature(fahrenheit(40.0)))
        }
    }
}

fn remove(sitting: &mut Sitting<'_>, name: &str) {
    let Some(place) = named(sitting, name) else {
        // It waits for a way out: then it is left out.
        let waiting = sitting.room.plan.as_mut().filter(|plan| {
            let dish = told_of(plan).and_then(|place| plan.adding.as_ref()?.get(usize::from(place))?.as_ref());
            dish.is_some_and(|dish| fold(&dish.name) == fold(name))
        });
        if waiting.and_then(|plan| plan.adding.take()).is_some() {
            sitting.answer(Text::new("dish-removed").with("name", Arg::Verbatim(name.to_owned())));
            return;
        }
        let known = names(sitting).into_iter().map(|name| Text::new("dish-name").with("name", Arg::Verbatim(name)));
        let known: Vec<Text> = known.collect();
        let text = if known.is_empty() {
            Text::new("dish-none")
        } else {
            Text::new("dish-unknown").with("known", Arg::List(known))
        };
        sitting.answer(text.with("name", Arg::Verbatim(name.to_owned())));
        return;
    };
    if let Some(refusal) = theirs(sitting, place) {
        return sitting.notice(refusal);
    }
    let light = sitting.light();
    let Some(plan) = &sitting.room.plan else { return };
    let mut dishes = plan.wish.dishes.clone();
    let gone = dishes.get_mut(usize::from(place)).and_then(Option::take);
    let changed =
        LivePlan { wish: crate::reading::Wish { dishes: dishes.clone(), ..plan.wish.clone() }, ..plan.clone() };
    let Some(gone) = gone else { return };
    let told = Text::new("dish-removed").with("name", Arg::Verbatim(gone.name));
    let waiting = told_of(plan).filter(|waiting| *waiting != place).zip(plan.adding.clone());
    match changed.solve(&light) {
        Some(Ok(schedule)) => {
            let shifts = adopt(sitting, dishes, &schedule);
            sitting.answer(told).lines(moved(&shifts));
        }
        // It did not fit before either: one dish less makes it no worse, and what still stands against it is told.
        Some(Err(conflict)) if !matches!(plan.solve(&light), Some(Ok(_))) => {
            let (now, by) = (sitting.now, sitting.speaker());
            let Some(plan) = sitting.room.plan.as_mut() else { return };
            plan.remember("dish", None, by, now);
            plan.wish.dishes = dishes;
            plan.adding = None;
            plan.jobs.retain(|job| job.step() != Some(Step::Dish) || job.nth != place);
            plan.clash = None;
            if let Some(say) = jobs::said_conflict(sitting, &conflict) {
                say.text.insert(0, told);
            }
            return board::refresh(sitting);
        }
        Some(Err(conflict)) => {
            sitting.answer(Text::new("dish-stays")).lines(proposal::clash(&conflict));
        }
        None => {}
    }
    // What had no place for it may have one now.
    if let Some((waiting, mut dishes)) = waiting {
        if let Some(slot) = dishes.get_mut(usize::from(place)) {
            *slot = None;
        }
        add(sitting, dishes, usize::from(waiting), "dish-added");
    }
}

/// Who changes a dish or takes it from the plan has its job, added it or leads the plan. `Some`: the speaker may not, and whose it is. What is not on the
/// plan yet is nobody's.
fn theirs(sitting: &Sitting<'_>, place: u8) -> Option<Text> {
    let plan = sitting.room.plan.as_ref()?;
    let dish = plan.wish.dishes.get(usize::from(place))?.as_ref()?;
    let job = plan.jobs.iter().find(|job| job.step() == Some(Step::Dish) && job.nth == place);
    let owner = job.and_then(|job| job.owner);
    if may::steer(sitting) || sitting.speaker().is_some_and(|who| [owner, dish.by].contains(&Some(who))) {
        return None;
    }
    let whose = owner.or(dish.by).unwrap_or(plan.host);
    Some(Text::new("dish-theirs").with("name", name(sitting, whose)))
}

fn names(sitting: &Sitting<'_>) -> Vec<String> {
    let dishes = sitting.room.plan.iter().flat_map(|plan| plan.wish.dishes.iter().flatten());
    dishes.map(|dish| dish.name.clone()).collect()
}

/// The dish these words name; of "rice" and "rice 2" the longer name that fits.
pub(super) fn named(sitting: &Sitting<'_>, text: &str) -> Option<u8> {
    let text = format!(" {} ", fold(text));
    let dishes = (0_u8..).zip(sitting.room.plan.as_ref()?.wish.dishes.iter());
    dishes
        .filter_map(|(place, dish)| Some((place, dish.as_ref()?)))
        .filter(|(_, dish)| text.contains(&format!(" {} ", fold(&dish.name))))
        .max_by_key(|(place, dish)| (dish.name.chars().count(), std::cmp::Reverse(*place)))
        .map(|(place, _)| place)
}

/// The dish's job these words name, if it is still to be done.
pub(super) fn job(sitting: &Sitting<'_>, text: &str) -> Option<JobRef> {
    jobs::by_step(sitting, Step::Dish, Some(named(sitting, text)?))
}

/// How the stored dishes go into an order.
pub(super) fn stored(dish: &WishDish, bird: carvetime_core::roast::Heat) -> carvetime_core::plan::Dish {
    use carvetime_core::plan::{Dish, DishHeat};
    let heat = match dish.heat.as_deref() {
        Some("oven") => DishHeat::Oven(dish.setting_c.map_or_else(|| fahrenheit(350.0), celsius)),
        Some("smoker") => DishHeat::Smoker(dish.setting_c.map_or(bird.setting, celsius)),
        Some("stove") => DishHeat::Stove,
        _ => DishHeat::None,
    };
    let least = match dish.cold_min {
        Some(minutes) => Some(TimeDelta::minutes(i64::from(minutes))),
        // What nobody has timed is cold through after as long as anything hot.
        None => (dish.ahead || dish.iced || dish.halves.is_some()).then_some(spans::COLD_THROUGH),
    };
    let place = if dish.iced { ColdPlace::Cooler } else { ColdPlace::Fridge };
    let cold = least.map(|least| Cold { least, halves: dish.halves.unwrap_or(DISH_HALVES), place });
    Dish { heat, takes: TimeDelta::minutes(i64::from(dish.minutes)), ahead: dish.ahead, early: dish.early, cold }
}

// ---- names

/// Puts the names of dishes where a text only has their place in the plan.
pub(super) fn put_names(say: &mut Say, dishes: &[Option<WishDish>]) {
    if dishes.is_empty() {
        return;
    }
    let labels = say.buttons.iter_mut().flatten().map(|button| &mut button.label);
    for text in say.text.iter_mut().chain(labels) {
        put_name(text, dishes);
    }
    if let Some(FileContent::Calendar(calendar)) = say.file.as_mut().map(|file| &mut file.content) {
        for event in &mut calendar.events {
            put_name(&mut event.summary, dishes);
            event.description.iter_mut().for_each(|text| put_name(text, dishes));
        }
    }
    if let Some(FileContent::Sheet(sheet)) = say.file.as_mut().map(|file| &mut file.content) {
        sheet.texts().for_each(|text| put_name(text, dishes));
    }
}

/// The same in one text.
pub(super) fn put_name(text: &mut Text, dishes: &[Option<WishDish>]) {
    for (_, arg) in &mut text.args {
        match arg {
            Arg::Dish(place) => {
                let dish = dishes.get(usize::from(*place)).and_then(Option::as_ref);
                *arg = Arg::Verbatim(dish.map(|dish| dish.name.clone()).unwrap_or_default());
            }
            Arg::Text(text) => put_name(text, dishes),
            Arg::List(texts) | Arg::Lines(texts) => texts.iter_mut().for_each(|text| put_name(text, dishes)),
            _ => {}
        }
    }
}
