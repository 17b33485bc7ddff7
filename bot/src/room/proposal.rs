//! What a proposed plan looks like: the bird, the times that matter, what is needed, the first thing to do.

use super::{Sitting, dose, order, plan_words};
use crate::reading::Wish;
use crate::reading::sentence::Sentence;
use crate::words::{Arg, Text};
use carvetime_core::bird::{self, Bird, Condition, Form};
use carvetime_core::plan::{Caution, Conflict, Job, Need, Offer, Order, Reason, Salting, Schedule, Step, spans};
use carvetime_core::quantity::{celsius, fahrenheit, grams};
use carvetime_core::roast::{Cooker, Heat};
use carvetime_core::safety::US_ONE_HOUR_RULE_AIR;
use carvetime_core::salt::{Grain, Strength};
use chrono::TimeDelta;

/// Steps whose times matter enough to stand in a proposal.
const WORTH_SHOWING: [Step; 14] = [
    Step::Buy,
    Step::Thaw,
    Step::Salt,
    Step::Temper,
    Step::Fire,
    Step::On,
    Step::Pull,
    Step::Carve,
    Step::Chill,
    Step::Pack,
    Step::Travel,
    Step::Reheat,
    Step::Serve,
    Step::Leftovers,
];

/// The whole proposal, a line each; its salt in the `usual` one.
pub(super) fn text(order: &Order, wish: &Wish, schedule: &Schedule, usual: Grain) -> Vec<Text> {
    let mut lines = vec![head(order)];
    if wish.mass_g.is_none() {
        lines.push(Text::new("room-proposal-size").with("mass", Arg::Mass(order.bird.mass.get())));
    } else {
        lines.extend(size_doubt(order));
    }
    lines.extend(carried(order, wish));
    lines.extend(schedule.jobs.iter().filter(|job| is_told(job) && WORTH_SHOWING.contains(&job.step)).map(line));
    lines.push(
        Text::new("room-proposal-ready")
            .with("from", Arg::DayClock(schedule.finish.p10))
            .with("to", Arg::Clock(schedule.finish.p90)),
    );
    lines.extend(order.use_by.map(|until| Text::new("room-proposal-use-by").with("day", Arg::Day(until))));
    lines.extend(cautions(schedule));
    lines.extend(dose::by_the_packer(order, wish));
    lines.push(Text::new("room-proposal-need").with("things", Arg::List(needs(order, wish, schedule, usual))));
    if let Some(first) = schedule.jobs.first() {
        lines.push(
            Text::new("room-proposal-first")
                .with("what", Arg::from(plan_words::step_name(first.step, first.nth)))
                .with("when", Arg::DayClock(first.at)),
        );
    }
    lines
}

/// How it gets to the other house, and the other way to do it where there is one.
fn carried(order: &Order, wish: &Wish) -> Vec<Text> {
    let Some(carry) = order.carry else { return Vec::new() };
    let hot = Arg::Temperature(super::kept_hot::holds());
    if order.carries_hot() {
        let text = Text::new("room-proposal-hot")
            .with("most", Arg::Span(spans::HOT_ROAD))
            .with("hour", Arg::Span(spans::HOT_ROAD_IN_HEAT))
            .with("air", Arg::Temperature(US_ONE_HOUR_RULE_AIR.temperature().unwrap_or(fahrenheit(90.0))))
            .with("hot", hot);
        return vec![text];
    }
    let mut lines = vec![Text::new("room-proposal-carry")];
    if wish.hot == Some(true) {
        // Cooked the day before and carried hot: the one rules the other out.
        lines.push(Text::new("room-proposal-not-hot"));
    } else if carry.drive <= spans::HOT_DRIVE_MOST && wish.hot.is_none() && !order.ahead {
        lines.push(Text::new("room-proposal-or-hot"));
    }
    lines
}

/// The first of each kind; of thawing also the move into the water.
fn is_told(job: &Job) -> bool {
    job.nth == 0 || matches!(job.step, Step::Thaw | Step::Pack)
}

/// One line: the bird, the cooker, the hour.
pub(super) fn head(order: &Order) -> Text {
    Text::new("room-proposal-head")
        .with("bird", Arg::from(birds_text(order)))
        .with("guests", Arg::Count(i64::from(order.diners.adults) + i64::from(order.diners.children)))
        .with("heat", Arg::from(heat_text(&order.heat)))
        .with("when", Arg::DayClock(order.dinner))
}

/// `14.5 lb frozen turkey`, `2 × 12 lb turkey`.
pub(super) fn birds_text(order: &Order) -> Text {
    let bird = bird_text(&order.bird);
    if order.birds < 2 {
        return bird;
    }
    Text::new("room-birds").with("count", Arg::Count(order.birds.into())).with("bird", Arg::from(bird))
}

/// `14.5 lb frozen turkey`.
fn bird_text(bird: &Bird) -> Text {
    Text::new("room-bird")
        .with("mass", Arg::Mass(bird.mass.get()))
        .with("condition", Arg::Choice(bird.condition.name()))
        .with("kind", Arg::Choice(bird.kind.name()))
        .with("form", Arg::Choice(if bird.stuffed { "stuffed" } else { bird.form.name() }))
}

/// `smoker at 325 °F`.
pub(super) fn heat_text(heat: &Heat) -> Text {
    Text::new("room-heat")
        .with("cooker", Arg::Choice(heat.cooker.name()))
        .with("setting", Arg::Temperature(heat.setting))
}

/// `Wed 6:00 PM  Salt it`.
pub(super) fn line(job: &Job) -> Text {
    Text::new("room-line")
        .with("when", Arg::DayClock(job.at))
        .with("what", Arg::from(plan_words::step_name(job.step, job.nth)))
}

/// Says when the bird is small for the table.
pub(super) fn size_doubt(order: &Order) -> Option<Text> {
    let guests = u32::from(order.diners.adults) + u32::from(order.diners.children);
    if guests == 0 {
        return None;
    }
    let advice = bird::mass_for(order.bird.kind, &order.diners)?.mass;
    let bought = order.bird.mass.get() * f64::from(order.birds);
    (bought < advice.low).then(|| {
        Text::new("room-proposal-small").with("guests", Arg::Count(guests.into())).with("mass", Arg::Mass(advice.low))
    })
}

/// What the host should know; the jobs at night in one line.
pub(super) fn cautions(schedule: &Schedule) -> Vec<Text> {
    let at_night = |caution: &Caution| match caution {
        Caution::AtNight(step) => Some(plan_words::step_name(*step, 0)),
        _ => None,
    };
    let night: Vec<Text> = schedule.cautions.iter().filter_map(at_night).collect();
    // Up at seven for a bird is no news.
    let odd = |caution: &&Caution| matches!(caution, Caution::OddHours(_) | Caution::AtNight(_));
    let other = schedule.cautions.iter().filter(|caution| !odd(caution)).map(plan_words::caution);
    let night_line =
        (!night.is_empty()).then(|| Text::new("room-proposal-night").with("jobs", Arg::List(night.clone())));
    other.chain(night_line).collect()
}

/// "What do I need to buy?": what the plan that stands, or the one proposed, needs in the house. `false`: nobody asked, or no plan holds.
pub(super) fn asked_needs(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if !Sentence::read(text, sitting.lexicon()).has("ask-shopping") {
        return false;
    }
    let (light, usual) = (sitting.light(), sitting.usual_salt());
    let proposed = sitting.speaker().and_then(|who| super::planning::proposed(sitting, who));
    let standing = || {
        let plan = sitting.room.plan.as_ref().filter(|plan| plan.on_since(sitting.now).is_none() && !plan.is_off())?;
        let (order, schedule) = plan.order(light.zone).zip(plan.solve(&light)?.ok())?;
        Some((order, plan.wish.clone(), schedule))
    };
    let Some((order, wish, schedule)) = proposed.or_else(standing) else { return false };
    let things = needs(&order, &wish, &schedule, usual);
    if things.is_empty() {
        return false;
    }
    sitting.answer(Text::new("room-proposal-need").with("things", Arg::List(things)));
    true
}

/// What must be in the house; the salt with its amount.
fn needs(order: &Order, wish: &Wish, schedule: &Schedule, usual: Grain) -> Vec<Text> {
    schedule
        .needs
        .iter()
        .map(|need| match need {
            Need::Salt => dose::needed(order, dose::strength(wish), usual).unwrap_or_else(|| plan_words::need(*need)),
            _ => plan_words::need(*need),
        })
        .collect()
}

/// Why each time stands where it does.
pub(super) fn reasons(schedule: &Schedule) -> Vec<Text> {
    schedule.jobs.iter().filter(|job| is_told(job) && !job.reasons.is_empty()).map(reason_line).collect()
}

fn reason_line(job: &Job) -> Text {
    Text::new("room-why-line")
        .with("what", Arg::from(plan_words::step_name(job.step, job.nth)))
        .with("when", Arg::DayClock(job.at))
        .with("reasons", Arg::List(job.reasons.iter().map(plan_words::reason).collect()))
}

/// As many reasons as can be read at once.
const MOST_REASONS: usize = 3;

/// As many other ways as fit a phone.
pub(super) const MOST_OFFERS: usize = 4;

/// What stands against a wish.
pub(super) fn clash(conflict: &Conflict) -> Vec<Text> {
    clash_as(conflict, "room-clash-short")
}

/// The same of a plan that stood until now, which nobody asked to change.
pub(super) fn clash_now(conflict: &Conflict) -> Vec<Text> {
    clash_as(conflict, "room-clash-now")
}

fn clash_as(conflict: &Conflict, short: &'static str) -> Vec<Text> {
    let because = telling(&conflict.because).into_iter().map(plan_words::reason).collect();
    let id = match conflict.short_by > TimeDelta::zero() {
        true if conflict.because.iter().any(is_keeping) => "room-clash-keeps",
        true => short,
        false => "room-clash",
    };
    let mut lines =
        vec![Text::new(id).with("short", Arg::Span(about(conflict.short_by))).with("because", Arg::List(because))];
    if conflict.because.iter().any(|why| matches!(why, Reason::RawKeeps { .. })) {
        lines.push(Text::new("room-clash-use-by"));
    }
    if conflict.offers.is_empty() {
        lines.push(Text::new("room-clash-hopeless"));
    }
    lines
}

/// It keeps only so long: what is in the way is not too little time, but too much.
fn is_keeping(reason: &Reason) -> bool {
    matches!(reason, Reason::RawKeeps { .. } | Reason::UseBy { .. } | Reason::ThawedKeeps { .. })
}

/// The reasons that tell something: that dinner is at dinner time, and that carving takes a while, go without saying.
fn telling(because: &[Reason]) -> Vec<&Reason> {
    let plain = |reason: &&Reason| {
        !matches!(
            reason,
            Reason::Dinner
                | Reason::Now
                | Reason::Done
                | Reason::Follows { .. }
                | Reason::Sociable
                | Reason::Stand { .. }
                | Reason::Carving { .. }
                | Reason::Temper { .. }
                | Reason::Preheat { .. }
        )
    };
    // What doesn't keep till the day of the dinner needs no word on the last hours before it.
    let keeping = because.iter().any(is_keeping);
    let late = |reason: &&Reason| keeping && matches!(reason, Reason::HotHold { .. } | Reason::CookingTime { .. });
    let told: Vec<&Reason> = because.iter().filter(plain).filter(|reason| !late(reason)).take(MOST_REASONS).collect();
    // Where nothing else stands against it, carving and standing are worth a word; "it is done" never is.
    let spoken = |reason: &&Reason| {
        !matches!(reason, Reason::Dinner | Reason::Now | Reason::Done | Reason::Follows { .. } | Reason::Sociable)
    };
    let some: Vec<&Reason> = because.iter().filter(spoken).take(MOST_REASONS).collect();
    match (told.is_empty(), some.is_empty()) {
        (false, _) => told,
        (true, false) => some,
        (true, true) => because.iter().take(MOST_REASONS).collect(),
    }
}

/// As exactly as anyone wants to know: quarters of an hour, from six hours on whole ones.
fn about(span: TimeDelta) -> TimeDelta {
    let minutes = span.num_minutes();
    let step = if minutes >= 6 * 60 { 60 } else { 15 };
    TimeDelta::minutes(((minutes + step / 2) / step).max(1) * step)
}

/// The nearest plan that works, in a word.
pub(super) fn instead(offer: &Offer) -> Text {
    Text::new("room-clash-instead")
        .with("change", Arg::from(plan_words::change(&offer.change)))
        .with("cost", Arg::from(plan_words::offer_cost(offer)))
}

/// The other ways, a line each.
pub(super) fn other_offers(conflict: &Conflict) -> Vec<Text> {
    offers(conflict, 1, "room-clash-others")
}

/// All ways there are, a line each.
pub(super) fn all_offers(conflict: &Conflict) -> Vec<Text> {
    offers(conflict, 0, "room-clash-offers")
}

fn offers(conflict: &Conflict, from: usize, head: &'static str) -> Vec<Text> {
    let line = |offer: &Offer| {
        Text::new("room-clash-offer")
            .with("change", Arg::from(plan_words::change(&offer.change)))
            .with("cost", Arg::from(plan_words::offer_cost(offer)))
    };
    let lines: Vec<Text> = conflict.offers.iter().skip(from).take(MOST_OFFERS).map(line).collect();
    if lines.is_empty() { lines } else { std::iter::once(Text::new(head)).chain(lines).collect() }
}

/// Whoever said when it goes on is told when it has to, where that is another hour.
pub(super) fn start(wish: &Wish, schedule: &Schedule) -> Option<Text> {
    const SAME: TimeDelta = TimeDelta::minutes(30);
    let on = schedule.jobs.iter().find(|job| job.step == Step::On)?.at;
    let start = wish.start.filter(|start| (*start - on).abs() >= SAME)?;
    Some(Text::new("room-proposal-start").with("start", Arg::DayClock(start)).with("on", Arg::DayClock(on)))
}

/// Whoever said when it is bought is told when it has to be, where that is another hour.
pub(super) fn shop(wish: &Wish, schedule: &Schedule) -> Option<Text> {
    const SAME: TimeDelta = TimeDelta::minutes(30);
    let buy = schedule.jobs.iter().find(|job| job.step == Step::Buy && !job.done)?.at;
    let said = wish.shop.filter(|said| (*said - buy).abs() >= SAME)?;
    Some(Text::new("room-shop-not").with("said", Arg::DayClock(said)).with("when", Arg::DayClock(buy)))
}

/// The dishes told with the bird.
pub(super) fn beside(wish: &Wish) -> Option<Text> {
    let dishes =
        wish.beside.iter().map(|dish| Text::new("room-proposal-dish").with("dish", Arg::Verbatim(dish.clone())));
    let dishes: Vec<Text> = dishes.collect();
    (!dishes.is_empty()).then(|| Text::new("room-proposal-beside").with("dishes", Arg::List(dishes)))
}

/// What has been understood of a wish so far, in a few words; nothing where nothing is.
pub(super) fn understood(wish: &Wish) -> Option<Text> {
    let parts = known(wish);
    (!parts.is_empty()).then(|| Text::new("room-known").with("parts", Arg::List(parts)))
}

/// The same, part by part.
pub(super) fn known(wish: &Wish) -> Vec<Text> {
    let mut parts = Vec::new();
    if let Some(mass_g) = wish.mass_g {
        let mass = Text::new("room-known-mass").with("mass", Arg::Mass(grams(mass_g)));
        parts.push(match wish.birds {
            Some(count @ 2..) => {
                Text::new("room-birds").with("count", Arg::Count(count.into())).with("bird", Arg::from(mass))
            }
            _ => mass,
        });
    }
    if wish.kind.is_some() || wish.condition.is_some() {
        parts.push(Text::new("room-known-bird").with("kind", Arg::Choice(order::kind(wish).name())).with(
            "condition",
            Arg::Choice(wish.condition.as_deref().and_then(Condition::from_name).map_or("unknown", Condition::name)),
        ));
    }
    let form = wish.form.as_deref().and_then(Form::from_name);
    if let Some(form) = form.filter(|form| matches!(form, Form::Flat | Form::Pieces)) {
        parts.push(Text::new("room-known-form").with("form", Arg::Choice(form.name())));
    }
    let guests = order::guests(wish);
    if guests > 0 {
        parts.push(Text::new("room-known-guests").with("guests", Arg::Count(guests.into())));
    }
    if let Some(cooker) = wish.cooker.as_deref().and_then(Cooker::from_name) {
        let heat = Heat { cooker, setting: wish.setting_c.map_or_else(|| order::usual_setting(wish, cooker), celsius) };
        parts.push(heat_text(&heat));
    }
    let unsalted = wish.salting.as_deref() == Some(Salting::None.name()) || order::is_packer_salted(wish);
    let strength = Some(dose::strength(wish)).filter(|strength| *strength != Strength::Usual);
    if let Some(how) = unsalted.then_some("none").or(strength.map(Strength::name)) {
        parts.push(Text::new("room-known-salt").with("how", Arg::Choice(how)));
    }
    if let Some(until) = wish.use_by {
        parts.push(Text::new("room-known-use-by").with("day", Arg::Day(until)));
    }
    if let Some(start) = wish.start {
        parts.push(Text::new("room-known-start").with("when", Arg::DayClock(start)));
    }
    if let Some(shop) = wish.shop {
        parts.push(Text::new("room-known-shop").with("when", Arg::DayClock(shop)));
    }
    if let Some(dinner) = wish.dinner {
        parts.push(Text::new("room-known-dinner").with("when", Arg::DayClock(dinner)));
    }
    if let Some(drive) = wish.drive_min.filter(|_| wish.elsewhere == Some(true)) {
        parts.push(Text::new("room-known-drive").with("drive", Arg::Span(TimeDelta::minutes(drive.into()))));
    }
    parts
}
