//! What the readings say of the time left: from the stored plan to `heat`, and from there to words.
//!
//! Owns the forecast of a live plan, how it stands to dinner, and its sentences. The computation is `core::heat`'s, the plan
//! that follows from it is solved in `live`. Start at [`Foresight::of`].

use super::Sitting;
use super::live::Light;
use super::no_heat;
use super::state::{LivePlan, StoredProfile, StoredReading};
use crate::ask::exact_span;
use crate::reading::shared;
use crate::words::{Arg, Text};
use carvetime_core::bird::{Condition, Kind};
use carvetime_core::heat::{self, Cook, Doubt, Outlook, Place, Profile, Reading, SpotOutlook};
use carvetime_core::lethality::{Hold, LOG_TARGET, hold_time};
use carvetime_core::plan::{Finish, Moment, Order, Step, Thawing, spans};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_fahrenheit};
use carvetime_core::roast::{self, Heat, Spread};
use chrono::TimeDelta;
use chrono_tz::Tz;

/// Spare time, even at the slow end, from which on the bird counts as early and has to be kept hot or chilled.
const EARLY: TimeDelta = TimeDelta::minutes(60);
/// Nearer than this, minutes are said as they are; further away to five.
pub(super) const NEAR: TimeDelta = TimeDelta::minutes(30);
/// Read below this, a pull is not spoken of, whatever would come of it by the forecast.
/// Source: common practice, no source.
const LOWEST_PULL_F: f64 = 160.0;
/// As many reasons for doubt as anyone reads.
const MOST_DOUBTS: usize = 3;

/// A forecast of the bird that is over the heat.
#[derive(Debug, Clone)]
pub struct Foresight {
    /// When it met the heat.
    pub on: Moment,
    /// The cook.
    pub cook: Cook,
    /// What was read, in order of time.
    pub readings: Vec<Reading>,
    /// What comes of it.
    pub outlook: Outlook,
    order: Order,
    now: Moment,
    /// Since when there has been no heat, as far as told: then no hour is foretold.
    down: Option<Moment>,
}

/// A spot that cools over the heat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Falling {
    /// `breast` or `thigh`.
    pub spot: &'static str,
    /// Where the fall began.
    pub from: Temperature,
    /// Where it is.
    pub to: Temperature,
    /// How long it took.
    pub span: TimeDelta,
}

/// How the forecast stands to dinner.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// It fits, even at the slow end.
    InTime,
    /// It fits by the middle of the forecast only.
    Tight,
    /// It doesn't fit.
    Late,
    /// Done long before.
    Early,
    /// Nothing hangs on it today: it is cooked ahead.
    Ahead,
}

impl Standing {
    /// The stable name.
    pub fn name(self) -> &'static str {
        match self {
            Self::InTime => "in-time",
            Self::Tight => "tight",
            Self::Late => "late",
            Self::Early => "early",
            Self::Ahead => "ahead",
        }
    }
}

impl Foresight {
    /// The forecast, once the bird is on and something has been read in it. None from frozen: the model has no ice of that
    /// size, so the thermometer alone speaks.
    pub fn of(plan: &LivePlan, light: &Light) -> Option<Self> {
        if plan.is_off() {
            return None;
        }
        let (on, cook, order) = cook_of(plan, light)?;
        let readings = plan.readings_since(on);
        if readings.iter().all(|reading| reading.breast.is_none() && reading.thigh.is_none()) {
            return None;
        }
        // A turn looks at the same forecast from many sides: board, calls, alarms.
        let asked = (cook.clone(), readings.clone(), (light.now - on).max(TimeDelta::zero()));
        let outlook = shared("", &asked, |_, (cook, readings, now)| heat::forecast(cook, readings, *now));
        let outlook = Outlook::clone(&outlook);
        Some(Self { on, cook, readings, outlook, order, now: light.now, down: no_heat::since(plan, light.now) })
    }

    /// When it comes off.
    pub fn finish(&self) -> Finish {
        let Outlook { done, .. } = &self.outlook;
        let at = |span: TimeDelta| (self.on + span).max(self.now);
        Finish { p10: at(done.p10), p50: at(done.p50), p90: at(done.p90) }
    }

    /// The latest time off the heat that still makes dinner.
    pub fn latest(&self) -> Option<Moment> {
        latest(&self.order)
    }

    /// When dinner is.
    pub fn dinner(&self) -> Moment {
        self.order.dinner
    }

    /// When a look will tell most, never at once.
    pub fn next_look(&self) -> Moment {
        (self.on + self.outlook.next_look).max(self.now + TimeDelta::minutes(5))
    }

    /// Every required spot has been read at its target.
    pub fn is_done(&self) -> bool {
        self.outlook.state == heat::State::Done
    }

    /// How it stands to dinner.
    pub fn standing(&self) -> Standing {
        let Some(latest) = self.latest() else { return Standing::Ahead };
        let finish = self.finish();
        if finish.p50 > latest {
            Standing::Late
        } else if finish.p90 > latest {
            Standing::Tight
        } else if latest - finish.p90 >= EARLY {
            Standing::Early
        } else {
            Standing::InTime
        }
    }

    /// About when a pit at `setting` from now on would have it done: what is left goes with ln((T − t) / (T − 165 °F)), the
    /// lumped body's law from the coldest spot t in air at T, and never in less than half the time. A rough guide; the next readings
    /// tell.
    pub fn hotter(&self, setting: Temperature) -> Option<Moment> {
        let spots = [self.outlook.breast, self.outlook.thigh];
        let coldest = spots.iter().flatten().map(|spot| in_fahrenheit(spot.now)).fold(f64::INFINITY, f64::min);
        let target = in_fahrenheit(super::target());
        let law = |air: f64| ((air - coldest) / (air - target)).ln();
        let before = self.air();
        let after = before + in_fahrenheit(setting) - in_fahrenheit(self.cook.heat.setting);
        if coldest >= target || before <= target + 20.0 || after <= before {
            return None;
        }
        let left = (self.finish().p50 - self.now).num_seconds() as f64;
        Some(self.now + TimeDelta::seconds((left * (law(after) / law(before)).max(0.5)) as i64))
    }

    /// The last reading of the pit, else what it is set to, °F.
    fn air(&self) -> f64 {
        let read = self.readings.iter().rev().find_map(|reading| reading.pit);
        in_fahrenheit(read.unwrap_or(self.cook.heat.setting))
    }

    /// A spot that cools over the heat, in three readings or with a pit that is out: which, from what, to what, and for how long.
    /// The colder one, if both do.
    pub fn falling(&self) -> Option<Falling> {
        // Instant thermometers scatter by a few degrees. Common practice, no source.
        const FALL_F: f64 = 5.0;
        const PIT_OUT_F: f64 = 200.0;
        type Of = fn(&Reading) -> Option<Temperature>;
        let spots: [(&'static str, Of); 2] = [("breast", |reading| reading.breast), ("thigh", |reading| reading.thigh)];
        let pit_out = self
            .readings
            .iter()
            .rev()
            .find_map(|reading| reading.pit)
            .is_some_and(|pit| in_fahrenheit(pit) < PIT_OUT_F);
        let falling = spots.into_iter().filter_map(|(spot, of)| {
            let read: Vec<_> = self.readings.iter().filter_map(|reading| Some((reading.at, of(reading)?))).collect();
            let (last_at, last) = *read.last().filter(|(_, last)| *last < super::target())?;
            // Back to where it began to fall.
            let run = read.windows(2).rev().take_while(|pair| pair[1].1 < pair[0].1).count();
            let (first_at, first) = *read.get(read.len().checked_sub(run + 1)?)?;
            let enough = in_fahrenheit(first) - in_fahrenheit(last) >= FALL_F;
            let sure = run >= 2 || run == 1 && pit_out;
            (enough && sure).then_some(Falling { spot, from: first, to: last, span: last_at - first_at })
        });
        falling.min_by(|one, other| in_fahrenheit(one.to).total_cmp(&in_fahrenheit(other.to)))
    }

    /// Whether it cooks, so that an hour can be named.
    pub fn cooks(&self) -> bool {
        self.falling().is_none() && self.down.is_none()
    }

    /// The forecast in one line.
    pub fn line(&self) -> Text {
        if let Some(since) = self.down {
            return no_heat::clock(since, self.now);
        }
        if self.falling().is_some() {
            return Text::new("cook-falling");
        }
        if self.is_done() {
            return Text::new("cook-done").with("target", Arg::Temperature(super::target()));
        }
        let finish = self.finish();
        let near = finish.p50 - self.now < NEAR;
        let about = rounded(finish.p50, near);
        let beside = |at| clock(rounded(at, near), about, self.order.zone);
        let latest = self.latest().unwrap_or(finish.p90);
        let (standing, span) = match self.standing() {
            Standing::Ahead => ("ahead", TimeDelta::zero()),
            Standing::Late => ("late", finish.p50 - latest),
            Standing::Tight => ("tight", TimeDelta::zero()),
            Standing::InTime | Standing::Early => ("spare", latest - finish.p90),
        };
        let id = if self.outlook.doubts.contains(&Doubt::Endless) { "cook-endless" } else { "cook-line" };
        Text::new(id)
            .with("about", self.clock(about))
            .with("from", beside(finish.p10))
            .with("to", beside(finish.p90))
            .with("standing", Arg::Choice(standing))
            .with("span", Arg::Span(to_five(span)))
            .with("latest", beside(latest))
            .with("look", self.clock(rounded(self.next_look(), near)))
    }

    /// An hour, with its day where that is not today.
    pub fn clock(&self, at: Moment) -> Arg {
        clock(at, self.now, self.order.zone)
    }

    /// The whole answer to "when?": all that its picture shows.
    pub fn lines(&self) -> Vec<Text> {
        let mut lines = vec![self.line()];
        if !self.is_done() && self.cooks() {
            let spots = [("breast", self.outlook.breast), ("thigh", self.outlook.thigh)];
            lines.extend(spots.into_iter().filter_map(|(name, spot)| Some(self.spot_line(name, &spot?))));
        }
        lines.extend(self.down.is_none().then(|| self.air_line()));
        lines.push(Text::new("cook-dinner").with("dinner", Arg::DayClock(self.dinner())));
        lines.extend(self.doubts().take(MOST_DOUBTS));
        lines.extend(self.decades());
        lines
    }

    /// What the published tables say of the heat so far, or of a pull now: a fact, no leave to pull. Of stuffing they say nothing.
    fn decades(&self) -> Option<Text> {
        if self.is_done() || self.cook.bird.stuffed || !self.cooks() {
            return None;
        }
        if self.outlook.log_reduction >= LOG_TARGET {
            return Some(Text::new("cook-decades").with("target", Arg::Temperature(super::target())));
        }
        let last = |of: fn(&Reading) -> Option<Temperature>| self.readings.iter().rev().find_map(of);
        let read = [last(|reading| reading.breast), last(|reading| reading.thigh)];
        let low = read.into_iter().flatten().reduce(|one, other| if one < other { one } else { other })?;
        if self.outlook.log_reduction_off < LOG_TARGET || low < fahrenheit(LOWEST_PULL_F) {
            return None;
        }
        let Hold::For(hold) = hold_time(low, self.cook.bird.kind, None) else { return None };
        let decades = Text::new("cook-decades-off")
            .with("stand", Arg::Span(heat::STANDS))
            .with("low", Arg::Temperature(low))
            .with("hold", exact_span(hold));
        Some(decades.with("target", Arg::Temperature(super::target())))
    }

    /// What the air was read at last, and what it is set to.
    fn air_line(&self) -> Text {
        let read = self.readings.iter().rev().find_map(|reading| Some((reading.at, reading.pit?)));
        let setting = self.cook.heat.setting;
        let (at, pit) = read.unwrap_or((TimeDelta::zero(), setting));
        Text::new("cook-air-read")
            .with("air", Arg::Choice(super::heat::air(self.cook.heat.cooker)))
            .with("seen", Arg::Choice(if read.is_some() { "yes" } else { "no" }))
            .with("read", Arg::Temperature(pit))
            .with("at", self.clock(self.on + at))
            .with("setting", Arg::Temperature(setting))
    }

    fn spot_line(&self, name: &'static str, spot: &SpotOutlook) -> Text {
        let clock = |span: TimeDelta| {
            let at = (self.on + span).max(self.now);
            rounded(at, at - self.now < NEAR)
        };
        let about = clock(spot.spread.p50);
        let beside = |span| self::clock(clock(span), about, self.order.zone);
        Text::new("cook-spot")
            .with("spot", Arg::Choice(name))
            .with("reached", Arg::Choice(if spot.reached { "yes" } else { "no" }))
            .with("now", Arg::Temperature(self.now_at(name, spot.now)))
            .with("target", Arg::Temperature(super::target()))
            .with("about", self.clock(about))
            .with("from", beside(spot.spread.p10))
            .with("to", beside(spot.spread.p90))
    }

    /// What a spot is at by now, never against what was read there a while ago: over the heat it warms, at no more than a bird can, and
    /// whoever typed it knows.
    pub fn now_at(&self, name: &str, now: Temperature) -> Temperature {
        const LATELY: TimeDelta = TimeDelta::hours(1);
        // A look takes its minutes: what was read within them is what it is now.
        const ONE_LOOK: TimeDelta = TimeDelta::minutes(5);
        // °F a minute: a little more than what a spot rises by in the middle of a cook. Derived from the synthetic logs.
        const QUICK_F: f64 = 1.0;
        let of = |reading: &Reading| if name == Place::Breast.name() { reading.breast } else { reading.thigh };
        let counts = |reading: &Reading| {
            let suspects = &self.outlook.suspects;
            !suspects.iter().any(|suspect| suspect.at == reading.at && suspect.place.name() == name)
        };
        let last =
            self.readings.iter().rev().find_map(|reading| Some((reading, of(reading).filter(|_| counts(reading))?)));
        let since = |reading: &Reading| self.now - (self.on + reading.at);
        let below = in_fahrenheit(super::target()) - 1.0;
        let Some((reading, read)) = last.filter(|(reading, _)| since(reading) <= LATELY) else {
            let most = last.map_or(below, |(_, read)| below.max(in_fahrenheit(read)));
            return fahrenheit(in_fahrenheit(now).min(most));
        };
        let (read, may) = (in_fahrenheit(read), QUICK_F * (since(reading) - ONE_LOOK).as_seconds_f64().max(0.0) / 60.0);
        let least = if self.falling().is_some() { read - may } else { read };
        // That it is at its target nobody knows before it was read there.
        let most = (read + may).min(below.max(read));
        fahrenheit(in_fahrenheit(now).clamp(least, most))
    }

    /// Why the interval is as wide as it is.
    fn doubts(&self) -> impl Iterator<Item = Text> + '_ {
        // Before the first reading nobody has missed one, and what an older gap leaves of itself behind newer readings is no news.
        let read = self.readings.iter().filter(|reading| reading.breast.or(reading.thigh).is_some());
        let read: Vec<TimeDelta> = read.map(|reading| reading.at).chain([self.now - self.on]).collect();
        let newest = read.windows(2).rev().take(2).filter_map(|pair| Some(*pair.get(1)? - *pair.first()?));
        let missed = newest.max().filter(|gap| *gap > heat::LONG_GAP);
        let told = move |doubt: &&Doubt| match doubt {
            Doubt::NoReadings | Doubt::Endless => false,
            Doubt::Gap(_) => missed.is_some(),
            _ => true,
        };
        self.outlook.doubts.iter().filter(told).map(move |doubt| match (doubt, missed) {
            (Doubt::Gap(_), Some(gap)) => why_wide(&Doubt::Gap(gap)),
            _ => why_wide(doubt),
        })
    }
}

/// Says why the interval is wide.
pub fn why_wide(doubt: &Doubt) -> Text {
    let text = Text::named("forecast-doubt", doubt.name());
    match doubt {
        Doubt::Unread(place) | Doubt::ProbeMoved(place) | Doubt::Changed(place) | Doubt::OutOfStep(place, _) => {
            text.with("place", Arg::Choice(place.name()))
        }
        Doubt::Gap(length) => text.with("span", Arg::Span(to_five(*length))),
        Doubt::FireDying(pit) => text.with("pit", Arg::Temperature(*pit)),
        Doubt::ProbesDisagree(by) => text.with("by", Arg::Degrees(*by)),
        Doubt::NoReadings | Doubt::PitUnread | Doubt::PartFrozen | Doubt::Unusual | Doubt::Endless => text,
    }
}

/// How a bird that comes off at `pull`, nine times in ten by `to`, stands to dinner, as a line says it: `spare` and how long, `tight`,
/// `late`, or `no` where nothing is to be said.
pub fn spare(order: &Order, pull: Moment, to: Moment) -> (&'static str, TimeDelta) {
    match latest(order) {
        Some(latest) if pull > latest => ("late", TimeDelta::zero()),
        Some(latest) if latest - to < TimeDelta::minutes(1) => ("tight", TimeDelta::zero()),
        Some(latest) => ("spare", to_five(latest - to)),
        None => ("no", TimeDelta::zero()),
    }
}

/// The latest time off the heat at which `order` still makes dinner; none where it is cooked ahead.
fn latest(order: &Order) -> Option<Moment> {
    let stands = match order.carry.filter(|_| order.carries_hot()) {
        Some(carry) => spans::PACKING + carry.drive + spans::UNPACKING,
        None => spans::STAND_LEAST,
    };
    (!order.cooks_ahead()).then(|| order.dinner - stands - spans::CARVING_LEAST)
}

/// `finish` with its slow end cut to what dinner allows, where its middle fits and its end does not: then the hour stands,
/// and people are told that it is tight.
pub fn tightened(finish: &Finish, order: &Order) -> Option<Finish> {
    let latest = latest(order)?;
    (finish.p50 <= latest && finish.p90 > latest).then_some(Finish { p90: latest, ..*finish })
}

/// The cook behind a plan, from the moment the bird met the heat.
pub fn cook_of(plan: &LivePlan, light: &Light) -> Option<(Moment, Cook, Order)> {
    let on = plan.on_since(light.now)?;
    let order = plan.order(light.zone)?;
    let mut bird = order.bird;
    if bird.condition != Condition::Fresh && order.thawing == Thawing::CookFrozen {
        return None;
    }
    // It is thawed when it goes on, unless somebody has found ice in it.
    bird.condition = if plan.inside.icy { Condition::PartThawed } else { Condition::Fresh };
    let target = Some(super::target());
    let thigh = if bird.kind == Kind::TurkeyBreast { None } else { target };
    let was_set = plan.was_set.iter().filter(|was| was.until > on).map(|was| (was.until - on, celsius(was.setting_c)));
    let (was_set, profile) = (was_set.collect(), light.profile);
    let start = plan.inside.start();
    Some((on, Cook { bird, heat: order.heat, start, breast: target, thigh, profile, was_set }, order))
}

/// When it comes off by the timetable, the heat having been set otherwise for a while or the bird not being thawed inside: what was done
/// at the old setting is done. `None` where neither was.
pub fn turned(plan: &LivePlan, light: &Light) -> Option<Finish> {
    let (on, cook, _) = cook_of(plan, light).filter(|_| !plan.is_off())?;
    let spread = |setting| {
        let heat = Heat { setting, ..cook.heat };
        roast::estimate(&cook.bird, &heat, cook.bird.condition).ok().map(|estimate| estimate.spread)
    };
    // Shares of the whole cooking that went by at each earlier setting.
    let (mut from, mut shares) = (TimeDelta::zero(), [0.0; 3]);
    let each = |spread: Spread| [spread.p10, spread.p50, spread.p90].map(|span| span.as_seconds_f64().max(1.0));
    let settings = cook.heat.cooker.settings();
    for (until, setting) in &cook.was_set {
        // Colder than anyone cooks in: nothing is counted as done. Hotter: as much as in the hottest.
        if *setting >= settings.low {
            let whole = each(spread((*setting).min(settings.high))?);
            let passed = (*until - from).as_seconds_f64();
            for (share, whole) in shares.iter_mut().zip(whole) {
                *share += passed / whole;
            }
        }
        from = *until;
    }
    let whole = each(spread(cook.heat.setting)?);
    let ends: Vec<Moment> = shares
        .iter()
        .zip(whole)
        .map(|(share, whole)| on + from + TimeDelta::seconds(((1.0 - share).max(0.0) * whole).round() as i64))
        .collect();
    let [p10, p50, p90] = ends[..] else { return None };
    (from > TimeDelta::zero() || plan.inside.icy).then_some(Finish { p10, p50, p90 })
}

impl LivePlan {
    /// When the bird met the heat: told, or taken for done.
    pub fn on_since(&self, now: Moment) -> Option<Moment> {
        self.facts(now).iter().rev().find(|fact| fact.step == Step::On && fact.done).map(|fact| fact.at)
    }

    /// It is off the heat.
    pub fn is_off(&self) -> bool {
        self.job(Step::Pull, 0).is_none_or(|job| job.state != super::state::JobState::Waiting)
    }

    /// The readings that count, in order of time: what was replaced by a correction doesn't.
    pub fn counted(&self) -> Vec<&StoredReading> {
        let replaced: Vec<usize> = self.readings.iter().filter_map(|reading| reading.replaces).collect();
        let kept = self.readings.iter().enumerate().filter(|(place, _)| !replaced.contains(place));
        let mut counted: Vec<&StoredReading> = kept.map(|(_, reading)| reading).collect();
        counted.sort_by_key(|reading| reading.at);
        counted
    }

    /// The same, as the forecast takes them.
    pub fn readings_since(&self, on: Moment) -> Vec<Reading> {
        self.counted().into_iter().filter(|reading| reading.at >= on).map(|reading| reading.since(on)).collect()
    }
}

impl StoredReading {
    /// As the forecast takes it.
    pub fn since(&self, on: Moment) -> Reading {
        Reading {
            at: self.at - on,
            pit: self.pit_c.map(celsius),
            breast: self.breast_c.map(celsius),
            thigh: self.thigh_c.map(celsius),
            sure: self.sure,
        }
    }
}

impl From<StoredProfile> for Profile {
    fn from(stored: StoredProfile) -> Self {
        Self { pit_offset: stored.pit_offset_c, speed: stored.speed, cooks: stored.cooks }
    }
}

/// What the host's earlier cooks on this plan's cooker taught.
pub(super) fn profile(sitting: &Sitting<'_>) -> Profile {
    let learned = sitting.room.plan.as_ref().and_then(|plan| {
        let host = sitting.people.get(&plan.host)?;
        host.profiles.get(plan.wish.cooker.as_deref()?).copied()
    });
    learned.map(Profile::from).unwrap_or_default()
}

/// The forecast of this sitting's plan.
pub(super) fn foresight(sitting: &Sitting<'_>) -> Option<Foresight> {
    Foresight::of(sitting.room.plan.as_ref()?, &sitting.light())
}

/// An hour, with its day where that is another than the one it is said beside: "2:30 AM" in the evening is tomorrow's.
pub(super) fn clock(at: Moment, beside: Moment, zone: Tz) -> Arg {
    let day = |at: Moment| at.with_timezone(&zone).date_naive();
    if day(at) == day(beside) { Arg::Clock(at) } else { Arg::DayClock(at) }
}

/// To the minute near the end, else to five.
pub(super) fn rounded(at: Moment, near: bool) -> Moment {
    let step = if near { 60 } else { 300 };
    let seconds = (at.timestamp() + step / 2).div_euclid(step) * step;
    Moment::from_timestamp(seconds, 0).unwrap_or(at)
}

/// Down to five minutes, where it is that long.
fn to_five(span: TimeDelta) -> TimeDelta {
    let minutes = span.num_minutes();
    TimeDelta::minutes(if minutes >= 15 { minutes / 5 * 5 } else { minutes })
}
