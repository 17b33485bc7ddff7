//! Several birds in one room: which plan is in hand, what each is called, how its messages and bells are told apart.
//!
//! Everything else here works on one plan, [`Room::plan`]: the one in hand. [`which`](super::which) puts the right one
//! there; between turns it is the first. A plan accepted beside another marks its message keys, its bells and the questions
//! it asks with its serial, for as long as it stands; a plan alone in its room leaves no mark anywhere.

use super::action::Action;
use super::sitting::{Sitting, labelled};
use super::state::{JobState, LivePlan, Room};
use super::turn::{Bell, BellKind, Button, How, Say, To};
use super::{PersonId, RoomKind, bells, board, dishes, heat, late, may, order, owners};
use crate::words::{Arg, Text};
use carvetime_core::plan::{Moment, Order, Schedule, Step};
use carvetime_core::quantity::{grams, in_celsius};
use carvetime_core::roast::Cooker;
use chrono::TimeDelta;

/// A dinner so long ago is past.
const AFTER: TimeDelta = TimeDelta::hours(6);

/// Settings so near each other are one, °C.
const SAME_SETTING_C: f64 = 3.0;

/// As many plans as a room holds: more boards than that nobody reads.
pub(super) const MOST: usize = 4;

/// What a message is called that is worth a reply and has no name of its own.
pub(super) const REPLIED: &str = "said";

/// How the messages of the plan in hand are marked.
#[derive(Debug, Clone, Default)]
pub(super) struct Hand {
    /// Its serial, if it was accepted beside another.
    beside: Option<u32>,
    /// What it is called, if there are others.
    label: Option<Text>,
}

impl Room {
    /// Every plan, the first one first: the one without marks, then those beside it as they came.
    pub fn plans(&self) -> Vec<&LivePlan> {
        let mut plans: Vec<&LivePlan> = self.plan.iter().chain(&self.others).collect();
        plans.sort_by_key(|plan| (plan.beside, plan.serial));
        plans
    }

    /// Between turns the first plan is the one in hand.
    pub(super) fn put_in_order(&mut self) {
        if self.others.is_empty() {
            return;
        }
        self.others.extend(self.plan.take());
        self.others.sort_by_key(|plan| (plan.beside, plan.serial));
        self.plan = Some(self.others.remove(0));
    }
}

impl Sitting<'_> {
    /// Takes the plan of that serial in hand; with `None`, or where there is no such plan, none.
    pub(super) fn hold(&mut self, serial: Option<u32>) {
        if self.room.plan.as_ref().map(|plan| plan.serial) == serial {
            return;
        }
        self.seal();
        self.room.others.extend(self.room.plan.take());
        let place = self.room.others.iter().position(|plan| Some(plan.serial) == serial);
        self.room.plan = place.map(|place| self.room.others.remove(place));
        self.look_at_hand();
    }

    /// Notes how messages of the plan in hand are marked.
    pub(super) fn look_at_hand(&mut self) {
        self.hand = match &self.room.plan {
            Some(plan) => Hand { beside: plan.beside.then_some(plan.serial), label: label(self, plan) },
            None => Hand::default(),
        };
    }

    /// Marks what was said of the plan in hand and lays it aside.
    pub(super) fn seal(&mut self) {
        owners::tell(self);
        let mut says = std::mem::take(&mut self.says);
        says.iter_mut().for_each(|say| self.mark(say));
        self.sealed.append(&mut says);
    }

    fn mark(&self, say: &mut Say) {
        self.tell_by_the_table(say);
        if let Some(plan) = &self.room.plan {
            let pending = plan.adding.as_ref().filter(|_| say.key.as_deref() == Some("dish"));
            dishes::put_names(say, pending.unwrap_or(&plan.wish.dishes));
            heat::put_name(say, plan);
        }
        let key = say.key.as_deref().unwrap_or_default();
        if !self.about && !is_of_the_plan(say) || is_of_no_plan(key) {
            return;
        }
        // With a name it can be replied to.
        let replied_to = self.hand.label.is_some() && matches!(say.to, To::Room(_)) && say.how == How::New;
        if say.key.is_none() && replied_to {
            say.key = Some(REPLIED.into());
        }
        if let Some(serial) = self.hand.beside {
            say.key = say.key.take().map(|key| marked(&key, serial));
            for button in say.buttons.iter_mut().flatten().filter(|button| asks_of_a_plan(&button.data)) {
                button.data = marked(&button.data, serial);
            }
        }
        // A name called stands alone, before the bird.
        let called = say.text.first().is_some_and(|text| {
            ["room-call-name", "room-call-from", "sharing-call-from-titled"].contains(&text.id.as_ref())
        });
        if let Some(first) = say.text.get_mut(usize::from(called)) {
            *first = named(self.hand.label.clone(), first.clone());
        }
    }
}

/// Messages that belong to a person or to the room whatever is planned.
fn is_of_no_plan(key: &str) -> bool {
    ["draft-", "question-", "which-", "start", "settings", "forget"].iter().any(|own| key.starts_with(own))
}

/// What is of the plan in hand whatever was heard: its board, its dinner's other hour.
fn is_of_the_plan(say: &Say) -> bool {
    matches!(say.key.as_deref(), Some("board" | late::KEY | "stop" | "hotter"))
}

/// Buttons that answer a question and name no plan themselves.
fn asks_of_a_plan(data: &str) -> bool {
    ["yes.", "no.", "meant."].iter().any(|verb| data.starts_with(verb))
}

fn marked(name: &str, serial: u32) -> String {
    format!("{name}@{serial}")
}

/// A key or a button's data without its mark, and the serial in it.
pub(super) fn unmarked(name: &str) -> (&str, Option<u32>) {
    match name.rsplit_once('@') {
        Some((bare, serial)) => match serial.parse() {
            Ok(serial) => (bare, Some(serial)),
            Err(_) => (name, None),
        },
        None => (name, None),
    }
}

/// The plan a message with that key is of.
pub(super) fn of_key(room: &Room, key: &str) -> Option<u32> {
    let (bare, serial) = unmarked(key);
    if is_of_no_plan(bare) {
        return None;
    }
    let meant = |plan: &&&LivePlan| if plan.beside { Some(plan.serial) == serial } else { serial.is_none() };
    room.plans().iter().find(meant).map(|plan| plan.serial)
}

// ---- what a bird is called

/// What the bird of a plan is called; nothing while it is the only one.
pub(super) fn label(sitting: &Sitting<'_>, plan: &LivePlan) -> Option<Text> {
    let plans = sitting.room.plans();
    if plans.len() < 2 {
        return None;
    }
    // As short as tells it from the others.
    let ways = [whose, where_to, how_heavy];
    let unlike = |way: &&fn(&Sitting<'_>, &LivePlan) -> Text| {
        let name = way(sitting, plan);
        plans.iter().all(|other| other.serial == plan.serial || way(sitting, other) != name)
    };
    Some(match ways.iter().find(unlike) {
        Some(way) => way(sitting, plan),
        None => Text::new("birds-number")
            .with("bird", Arg::from(whose(sitting, plan)))
            .with("number", Arg::Count(plan.serial.into())),
    })
}

/// "Rosa's turkey"; alone with the bot, "the turkey".
fn whose(sitting: &Sitting<'_>, plan: &LivePlan) -> Text {
    let host = sitting.name_of(plan.host);
    let own = sitting.room.kind == RoomKind::Private || host.is_empty();
    Text::new("birds-whose")
        .with("own", Arg::Choice(if own { "yes" } else { "no" }))
        .with("kind", Arg::Choice(order::kind(&plan.wish).name()))
        .with("name", Arg::Verbatim(if own { String::new() } else { host }))
}

/// "Rosa's turkey, in the smoker".
fn where_to(sitting: &Sitting<'_>, plan: &LivePlan) -> Text {
    let cooker = plan.wish.cooker.as_deref().and_then(Cooker::from_name).map_or("oven", Cooker::name);
    Text::new("birds-where").with("bird", Arg::from(whose(sitting, plan))).with("cooker", Arg::Choice(cooker))
}

/// "Rosa's turkey, 14 lb".
fn how_heavy(sitting: &Sitting<'_>, plan: &LivePlan) -> Text {
    let text = Text::new("birds-heavy").with("bird", Arg::from(whose(sitting, plan)));
    text.with("mass", plan.wish.mass_g.map_or(Arg::Verbatim("?".into()), |mass| Arg::Mass(grams(mass))))
}

/// A sentence with the bird it is about before it.
pub(super) fn named(bird: Option<Text>, what: Text) -> Text {
    match bird {
        Some(bird) => Text::new("birds-of").with("bird", Arg::from(bird)).with("what", Arg::from(what)),
        None => what,
    }
}

// ---- planning one more

/// Its dinner is past; leftovers may still be called for.
pub(super) fn is_past(plan: &LivePlan, now: Moment) -> bool {
    plan.wish.dinner.is_some_and(|dinner| dinner + AFTER < now)
}

/// Nothing more will come of it.
fn is_over(plan: &LivePlan, now: Moment) -> bool {
    is_past(plan, now) && plan.jobs.iter().all(|job| job.at < now && job.call_at.is_none_or(|at| at < now))
}

/// The plans that stand.
pub(super) fn standing(sitting: &Sitting<'_>) -> Vec<u32> {
    sitting.room.plans().iter().filter(|plan| !is_over(plan, sitting.now)).map(|plan| plan.serial).collect()
}

/// Plans that are over make room for the next.
pub(super) fn drop_over(sitting: &mut Sitting<'_>) {
    let now = sitting.now;
    sitting.room.plan.take_if(|plan| is_over(plan, now));
    sitting.room.others.retain(|plan| !is_over(plan, now));
}

/// Something is planned already: what to say of it, and a button to join it or take its place.
pub(super) fn choice(sitting: &mut Sitting<'_>, who: PersonId) -> Option<(Text, Vec<Button>)> {
    let serials = standing(sitting);
    if serials.is_empty() {
        return None;
    }
    let full = serials.len() >= MOST;
    let mut replaces = "no";
    let hand = sitting.room.plan.as_ref().map(|plan| plan.serial);
    let mut buttons = Vec::new();
    if !full {
        buttons.push(labelled(Text::new("birds-button-beside"), &Action::Beside(who)));
    }
    let mut standing = Vec::new();
    for serial in serials {
        sitting.hold(Some(serial));
        let Some(plan) = &sitting.room.plan else { continue };
        let bird = label(sitting, plan).unwrap_or_else(|| whose(sitting, plan));
        standing.push(bird.clone());
        if may::steer(sitting) {
            let label = Text::new("birds-button-instead").with("bird", Arg::from(bird));
            buttons.push(labelled(label, &Action::Instead(who, serial)));
            replaces = "yes";
        }
    }
    sitting.hold(hand);
    let id = if full { "birds-full" } else { "birds-standing" };
    Some((Text::new(id).with("birds", Arg::List(standing)).with("replaces", Arg::Choice(replaces)), buttons))
}

/// What is said with more heat that is offered, while another bird is in an oven: it may be the same one.
pub(super) fn hotter_too(sitting: &Sitting<'_>) -> Option<Text> {
    let hand = sitting.room.plan.as_ref()?;
    let oven = |plan: &LivePlan| plan.wish.cooker.as_deref() != Some(Cooker::Smoker.name());
    let on = |plan: &LivePlan| plan.on_since(sitting.now).is_some() && !plan.is_off();
    let beside = sitting.room.others.iter().filter(|plan| oven(hand) && oven(plan) && on(plan));
    let birds: Vec<Text> = beside.filter_map(|plan| label(sitting, plan)).collect();
    (!birds.is_empty()).then(|| Text::new("birds-hotter").with("birds", Arg::List(birds)))
}

/// What is to be said where another bird of theirs has the same cooker at the time, or one of somebody else's an oven at another setting.
pub(super) fn same_heat(sitting: &Sitting<'_>, who: PersonId, order: &Order, schedule: &Schedule) -> Vec<Text> {
    let new = |step: Step| schedule.jobs.iter().find(|job| job.step == step).map(|job| job.at);
    let (Some(on), Some(off)) = (new(Step::On), new(Step::Pull)) else { return Vec::new() };
    let shares = |plan: &LivePlan| -> Option<Text> {
        let other = plan.order(order.zone)?;
        let times = (plan.job(Step::On, 0)?.at, plan.job(Step::Pull, 0)?.at);
        let waits = plan.job(Step::Pull, 0)?.state == JobState::Waiting;
        let apart = (in_celsius(other.heat.setting) - in_celsius(order.heat.setting)).abs();
        let oven = |cooker: Cooker| cooker != Cooker::Smoker;
        if !waits || times.1 <= on || off <= times.0 {
            return None;
        }
        // Two people may have an oven each, or one between them.
        if plan.host != who && oven(other.heat.cooker) && oven(order.heat.cooker) && apart >= SAME_SETTING_C {
            let text = Text::new("birds-one-oven").with("setting", Arg::Temperature(other.heat.setting));
            return Some(text.with("bird", Arg::from(label(sitting, plan).unwrap_or_else(|| whose(sitting, plan)))));
        }
        if plan.host != who || other.heat.cooker != order.heat.cooker {
            return None;
        }
        let mass = Arg::Mass(other.bird.mass.get());
        Some(if apart < SAME_SETTING_C {
            Text::new("birds-same-heat").with("mass", mass)
        } else {
            Text::new("birds-other-heat").with("mass", mass).with("setting", Arg::Temperature(other.heat.setting))
        })
    };
    sitting.room.plans().into_iter().filter_map(shares).collect()
}

/// What is to be said where a bird beside those that are planned needs a shelf that the fridge hasn't got.
pub(super) fn same_fridge(sitting: &Sitting<'_>, who: PersonId, order: &Order, schedule: &Schedule) -> Option<Text> {
    let plans = sitting.room.plans();
    let own = sitting.people.get(&who).and_then(|person| person.fridge_shelves);
    let shelves = order.shelves.or(own).or_else(|| plans.iter().find_map(|plan| plan.wish.shelves))?;
    let new = chilled(schedule.jobs.iter().map(|job| (job.step, job.at)))?;
    let others: Vec<&LivePlan> =
        plans.into_iter().filter(|plan| chilled_in(plan).is_some_and(|span| overlap(span, new))).collect();
    full(sitting, shelves, order.fridge_halves(), &others)
}

/// The same of the birds that are planned, once somebody has told of the shelves.
pub(super) fn in_the_fridge(sitting: &Sitting<'_>, shelves: u8) -> Option<Text> {
    let mut plans: Vec<&LivePlan> = sitting.room.plans();
    plans.retain(|plan| chilled_in(plan).is_some());
    let (first, others) = plans.split_first()?;
    let span = chilled_in(first)?;
    let others: Vec<&LivePlan> =
        others.iter().copied().filter(|plan| chilled_in(plan).is_some_and(|other| overlap(span, other))).collect();
    let halves = first.order(sitting.zone_or_utc()).map_or(0, |order| order.fridge_halves());
    full(sitting, shelves, halves, &others)
}

/// The same once a dish that waits in the fridge has come to the plan in hand.
pub(super) fn dish_in_the_fridge(sitting: &Sitting<'_>) -> Option<Text> {
    let hand = sitting.room.plan.as_ref()?;
    let span = chilled_in(hand)?;
    let mut others = sitting.room.plans();
    others.retain(|plan| plan.serial != hand.serial && chilled_in(plan).is_some_and(|other| overlap(span, other)));
    let halves = hand.order(sitting.zone_or_utc()).map_or(0, |order| order.fridge_halves());
    full(sitting, told_shelves(sitting)?, halves, &others)
}

/// The shelves that any of them has told of.
pub(super) fn told_shelves(sitting: &Sitting<'_>) -> Option<u8> {
    let told = |plan: &LivePlan| {
        let host = sitting.people.get(&plan.host).and_then(|host| host.fridge_shelves);
        plan.wish.shelves.or(host)
    };
    sitting.room.plans().into_iter().find_map(told)
}

/// `halves`: of a shelf, for the bird that is not among the others.
fn full(sitting: &Sitting<'_>, shelves: u8, halves: u8, others: &[&LivePlan]) -> Option<Text> {
    let orders: Vec<Order> = others.iter().filter_map(|plan| plan.order(sitting.zone_or_utc())).collect();
    let taken = orders.iter().fold(halves, |sum, order| sum.saturating_add(order.fridge_halves()));
    (!others.is_empty() && taken > shelves.saturating_mul(2)).then(|| {
        let dishes = |plan: &LivePlan, order: &Order| {
            let cold = |(place, _): &(u8, _)| order.dishes.get(*place).is_some_and(|dish| dish.in_fridge() > 0);
            let dishes = (0_u8..).zip(plan.wish.dishes.clone()).filter(cold).filter_map(|(_, dish)| dish);
            dishes.map(|dish| Text::new("dish-name").with("name", Arg::Verbatim(dish.name))).collect::<Vec<_>>()
        };
        let named = others.iter().zip(&orders).flat_map(|(plan, order)| {
            let bird = label(sitting, plan).unwrap_or_else(|| whose(sitting, plan));
            [bird].into_iter().chain(dishes(plan, order))
        });
        Text::new("birds-one-fridge")
            .with("birds", Arg::List(named.collect()))
            .with("shelves", Arg::Count(shelves.into()))
            .with("cold", Arg::Temperature(carvetime_core::quantity::fahrenheit(40.0)))
    })
}

/// From when a bird is in the fridge until it goes on; nothing of one that is on already.
fn chilled(jobs: impl Iterator<Item = (Step, Moment)>) -> Option<(Moment, Moment)> {
    let mut span = (None, None);
    for (step, at) in jobs {
        match step {
            Step::Buy | Step::Thaw | Step::Salt if span.0.is_none_or(|from| at < from) => span.0 = Some(at),
            Step::Temper | Step::On if span.1.is_none_or(|to| at < to) => span.1 = Some(at),
            _ => {}
        }
    }
    span.0.zip(span.1)
}

fn chilled_in(plan: &LivePlan) -> Option<(Moment, Moment)> {
    let raw = plan.job(Step::On, 0).is_some_and(|job| job.state == JobState::Waiting);
    let jobs = plan.jobs.iter().filter_map(|job| Some((job.step()?, job.at)));
    chilled(jobs).filter(|_| raw)
}

fn overlap(one: (Moment, Moment), other: (Moment, Moment)) -> bool {
    one.0 < other.1 && other.0 < one.1
}

/// Which birds there are, where there are several.
pub(super) fn all_labels(sitting: &Sitting<'_>) -> Option<Text> {
    let plans = sitting.room.plans();
    let labels: Vec<Text> = plans.iter().filter_map(|plan| label(sitting, plan)).collect();
    (labels.len() > 1).then(|| Text::new("birds-all").with("birds", Arg::List(labels)))
}

/// The room holds no more.
pub(super) fn too_many() -> Text {
    Text::new("birds-most").with("most", Arg::Count(MOST as i64))
}

// ---- boards and bells

/// Whether the plan in hand is the one planned first.
pub(super) fn is_first(sitting: &Sitting<'_>) -> bool {
    sitting.room.plans().first().map(|plan| plan.serial) == sitting.room.plan.as_ref().map(|plan| plan.serial)
}

/// The other birds, for the board of one.
pub(super) fn beside_line(sitting: &Sitting<'_>) -> Option<Text> {
    let hand = sitting.room.plan.as_ref()?.serial;
    let plans = sitting.room.plans();
    let others: Vec<Text> =
        plans.iter().filter(|plan| plan.serial != hand).filter_map(|plan| label(sitting, plan)).collect();
    (!others.is_empty()).then(|| Text::new("birds-beside").with("birds", Arg::List(others)))
}

/// Does it for each plan, first to last, in hand.
pub(super) fn each(sitting: &mut Sitting<'_>, mut act: impl FnMut(&mut Sitting<'_>)) {
    let hand = sitting.room.plan.as_ref().map(|plan| plan.serial);
    let serials: Vec<u32> = sitting.room.plans().iter().map(|plan| plan.serial).collect();
    for serial in serials {
        sitting.hold(Some(serial));
        sitting.about = true;
        act(sitting);
    }
    sitting.hold(hand);
}

/// A bird has come or gone: what the boards of the others say of it changes.
pub(super) fn refresh_others(sitting: &mut Sitting<'_>) {
    let hand = sitting.room.plan.as_ref().map(|plan| plan.serial);
    let others: Vec<u32> = sitting.room.others.iter().map(|plan| plan.serial).collect();
    for serial in others {
        sitting.hold(Some(serial));
        board::refresh(sitting);
    }
    sitting.hold(hand);
}

/// Every bell of the room, those of plans beside the first marked.
pub(super) fn bells(room: &Room, now: Moment) -> Vec<Bell> {
    let of = |plan: Option<&LivePlan>| {
        let alone = Room { plan: plan.cloned(), others: Vec::new(), ..room.clone() };
        bells::of(&alone, now)
    };
    let mut bells = Vec::new();
    for plan in room.plans() {
        let beside = |bell: Bell| match plan.beside {
            true => Bell { kind: BellKind::Beside { serial: plan.serial, kind: Box::new(bell.kind) }, ..bell },
            false => bell,
        };
        bells.extend(of(Some(plan)).into_iter().map(beside));
    }
    if room.plans().is_empty() {
        bells.extend(of(None));
    }
    bells
}
