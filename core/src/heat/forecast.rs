//! When the bird is done, from what is known now: the door to everything else here.
//!
//! Owns the public types of a forecast and puts the parts together. Start at [`forecast`].

use super::doubt::{Before, Doubt, FALL, Pace, Place, Suspect, sift};
use super::learned::SHIPPED;
use super::outlook::{Crossing, LONGEST, crossing, later, soonest};
use super::pit::{Air, Dial};
use super::posterior::{
    Evidence, Noise, Posterior, STEP, Seen, between_values, curve_of, curve_with_slopes, spot_of, through,
};
use super::prior::{AHEAD, BREAST, Facts, Learned, PIT, Prior, RATE, START, THIGH};
use super::spot::Course;
use crate::bird::{Bird, Condition, Form, Kind};
use crate::lethality::log_reduction;
use crate::quantity::{Temperature, TemperatureInterval, celsius, hotter_by, in_celsius, in_kilograms};
use crate::roast::{Cooker, CookingTime, Heat, RoastError, Spread, Timetable, estimate};
use chrono::TimeDelta;
use uom::si::temperature_interval::kelvin;

/// A cook as it was begun.
#[derive(Debug, Clone, PartialEq)]
pub struct Cook {
    /// The bird.
    pub bird: Bird,
    /// Cooker and setting.
    pub heat: Heat,
    /// The bird's temperature as it met the heat, if it was measured.
    pub start: Option<Temperature>,
    /// Target of the breast; `None` where none is required.
    pub breast: Option<Temperature>,
    /// Target of the thigh; `None` where none is required.
    pub thigh: Option<Temperature>,
    /// What earlier cooks on this cooker taught.
    pub profile: Profile,
    /// Settings before the one in `heat`: since it met the heat until then, in order of time.
    pub was_set: Vec<(TimeDelta, Temperature)>,
}

/// What earlier cooks on a cooker taught, as plain numbers. [`Profile::default`] has learned nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Profile {
    /// °C by which the air at the bird is hotter than usual for what the pit's thermometer or the setting says.
    pub pit_offset: f64,
    /// How fast birds warm here: 1 as usual, 1.1 a tenth faster.
    pub speed: f64,
    /// Cooks it was learned from.
    pub cooks: u16,
}

impl Default for Profile {
    fn default() -> Self {
        Self { pit_offset: 0.0, speed: 1.0, cooks: 0 }
    }
}

/// What was read at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Since the bird met the heat.
    pub at: TimeDelta,
    /// Air.
    pub pit: Option<Temperature>,
    /// Breast.
    pub breast: Option<Temperature>,
    /// Thigh.
    pub thigh: Option<Temperature>,
    /// The cook was asked and stands by it: never suspected.
    pub sure: bool,
}

/// How far the cook is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum State {
    /// Something required is still below its target.
    Cooking,
    /// Every required spot has been read at its target.
    Done,
}
names!(State { Cooking => "cooking", Done => "done" });

/// What is expected of one spot. Times are since the bird met the heat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpotOutlook {
    /// When it reaches its target.
    pub spread: Spread,
    /// Temperature now, by all readings.
    pub now: Temperature,
    /// Read at its target already.
    pub reached: bool,
    /// Hottest after the pull, if pulled at the later of now and the median time.
    pub peak: Temperature,
    /// How long after the pull that is.
    pub peak_after: TimeDelta,
}

/// A forecast. Times are since the bird met the heat.
#[derive(Debug, Clone, PartialEq)]
pub struct Outlook {
    /// When the last required spot reaches its target.
    pub done: Spread,
    /// Breast, where one is required.
    pub breast: Option<SpotOutlook>,
    /// Thigh, where one is required.
    pub thigh: Option<SpotOutlook>,
    /// Salmonella reduction at the coldest plausible spot up to the last reading, in decades: 0 unless readings carry it.
    pub log_reduction: f64,
    /// The same if the bird came off at the last reading and stood uncarved for [`STANDS`]: what it gains and loses then is foretold,
    /// not read.
    pub log_reduction_off: f64,
    /// How far the cook is.
    pub state: State,
    /// Why the interval is as wide as it is.
    pub doubts: Vec<Doubt>,
    /// Readings to ask about; none of them counted.
    pub suspects: Vec<Suspect>,
    /// When a look will tell most.
    pub next_look: TimeDelta,
}

/// The time without a reading of the bird after which the forecast says so.
pub const LONG_GAP: TimeDelta = TimeDelta::hours(1);
/// The same in minutes.
const LONG: f64 = LONG_GAP.num_minutes() as f64;
/// Biot number off the heat over that in it. Still air alone would make it less than one; fitted to the synthetic logs' carry-over it
/// is more, for it also stands for what steams off a hot bird and for the cold inner side of a muscle, which a sphere has not.
const OFF_THE_HEAT: f64 = 1.6;
/// °C of the kitchen the bird stands in.
const KITCHEN: f64 = 22.0;
/// As long as any bird is left to stand before it is carved.
/// Source: common practice, no source.
pub const STANDS: TimeDelta = TimeDelta::minutes(20);
/// °C by which muscle elsewhere may be colder than the colder thermometer. Derived: nine of ten synthetic birds are within it.
const COLDER: f64 = 4.0;
/// °C between the spots that is no longer usual.
const APART: f64 = 25.0;

/// What is to be expected at `now`, given what was read. `readings` in order of time; later ones than `now` are left out.
pub fn forecast(cook: &Cook, readings: &[Reading], now: TimeDelta) -> Outlook {
    forecast_with(&SHIPPED, cook, readings, now)
}

/// The same with another prior: for learning one, and for scoring it on cooks it has not seen.
pub fn forecast_with(learned: &Learned, cook: &Cook, readings: &[Reading], now: TimeDelta) -> Outlook {
    let outlook = as_begun(learned, cook, readings, now);
    if cook.bird.condition != Condition::PartThawed || cook.start.is_some() {
        return outlook;
    }
    // Nobody has measured how much ice there was. A cold spot may be cold by it, and then the rest is soon done; or there was little, and
    // the bird is a slow one: it is never told sooner than that.
    let thawed = Cook { bird: Bird { condition: Condition::Fresh, ..cook.bird }, ..cook.clone() };
    outlook.no_sooner_than(&as_begun(learned, &thawed, readings, now))
}

fn as_begun(learned: &Learned, cook: &Cook, readings: &[Reading], now: TimeDelta) -> Outlook {
    let sifted = Sifted::of(cook, readings, minutes(now));
    let fit = Fit::of(learned, cook, &sifted);
    match fit.disbelieved(&sifted.evidence) {
        // Too hot too early is a tip at the bone or under the skin, which the fit knows.
        Some((place, off)) if off > 0.0 => fit.outlook_with(cook, &sifted, vec![Doubt::OutOfStep(place, Pace::Ahead)]),
        Some((place, _)) => lost_time(learned, cook, &sifted, place),
        None => fit.outlook(cook, &sifted),
    }
}

/// The forecast of a bird far colder than this heat would have made it: part of the time it got none, be it that the oven was off or that
/// it went on later than was said. How long is found by trying; what is left to go is that of a bird so far along, and unsure.
fn lost_time(learned: &Learned, cook: &Cook, sifted: &Sifted, place: Place) -> Outlook {
    let spots = [&sifted.evidence.breast, &sifted.evidence.thigh];
    let first = spots.iter().filter_map(|seen| seen.first()).map(|seen| seen.minutes).fold(f64::INFINITY, f64::min);
    let tries = (0..LOST_TRIES).map(|n| {
        let lost = first * f64::from(n) / f64::from(LOST_TRIES);
        let (cook, sifted) = (begun_later(cook, lost), sifted.begun_later(lost));
        let fit = Fit::of(learned, &cook, &sifted);
        // Two hours lost are believed as a bird a deviation off its prior is; a reading that is still not believed, never.
        let worth = fit.posterior.worth + (lost / 120.0).powi(2);
        let worth = if fit.disbelieved(&sifted.evidence).is_some() { f64::INFINITY } else { worth };
        (lost, cook, sifted, fit, worth)
    });
    let best = tries.min_by(|a, b| a.4.total_cmp(&b.4));
    let Some((lost, cook, sifted, fit, _)) = best else { return Fit::of(learned, cook, sifted).outlook(cook, sifted) };
    let mut outlook = fit.outlook_with(&cook, &sifted, vec![Doubt::OutOfStep(place, Pace::Behind)]);
    outlook.later_by(span(lost));
    outlook
}

/// As many lengths of lost time are tried.
const LOST_TRIES: i32 = 12;

/// The same cook, begun so many minutes later.
fn begun_later(cook: &Cook, lost: f64) -> Cook {
    let was = cook.was_set.iter().map(|(until, setting)| (*until - span(lost), *setting));
    Cook { was_set: was.filter(|(until, _)| *until > TimeDelta::zero()).collect(), ..cook.clone() }
}

/// The fit to a whole log whose true minutes are known: what a prior is learned from.
pub fn fit_known(learned: &Learned, cook: &Cook, readings: &[Reading], truth: [f64; 2]) -> (Facts, Prior, Posterior) {
    let end = readings.last().map_or(0.0, |r| minutes(r.at));
    let mut sifted = Sifted::of(cook, readings, end);
    sifted.evidence.truth = [(cook.breast, truth[0]), (cook.thigh, truth[1])]
        .map(|(target, minutes)| target.map(|t| Seen { minutes, celsius: in_celsius(t), moved: false }));
    let fit = Fit::of(learned, cook, &sifted);
    (facts(cook, !sifted.evidence.pit.is_empty()), fit.prior, fit.posterior)
}

/// Readings of `new` that can't be right after `readings`: to be asked about before they are kept.
pub fn suspects(cook: &Cook, readings: &[Reading], new: &Reading) -> Vec<Suspect> {
    let mut all = readings.to_vec();
    all.push(*new);
    let mut suspects = Sifted::of(cook, &all, f64::INFINITY).suspects;
    suspects.retain(|s| s.at == new.at);
    suspects
}

impl Profile {
    /// What is known after one more cook whose readings these are.
    #[must_use]
    pub fn after(self, cook: &Cook, readings: &[Reading]) -> Self {
        let Some(last) = readings.last() else { return self };
        let sifted = Sifted::of(cook, readings, minutes(last.at));
        if sifted.evidence.breast.len() + sifted.evidence.thigh.len() < 4 {
            return self;
        }
        let plain = Cook { profile: Self::default(), ..cook.clone() };
        let fit = Fit::of(&SHIPPED, &plain, &sifted);
        let pit_offset = fit.posterior.mean[PIT] - fit.prior.mean[PIT];
        // What would have been expected of this pit, had nobody read the bird: the rest is the cooker's and the bird's pace.
        let unread = Evidence { pit: sifted.evidence.pit.clone(), now: sifted.evidence.now, ..Evidence::default() };
        let blind = Sifted { evidence: unread, suspects: Vec::new(), moved: Vec::new(), longest_gap: 0.0 };
        let expected = Cook { profile: Self { pit_offset, ..Self::default() }, ..plain.clone() };
        let expected = Fit::of(&SHIPPED, &expected, &blind).latest(cook, 0.0);
        let speed = expected / fit.latest(cook, 0.0).max(1.0);
        // The first cook counts half: one bird is not yet a cooker.
        let weight = 1.0 / (f64::from(self.cooks) + 2.0);
        Self {
            pit_offset: self.pit_offset + weight * (pit_offset - self.pit_offset),
            speed: self.speed + weight * (speed.clamp(0.5, 2.0) - self.speed),
            cooks: self.cooks.saturating_add(1),
        }
    }
}

/// The forecast without a reading, as a plan asks for it before the fire is lit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unlit {
    /// Target of the breast.
    pub breast: Option<Temperature>,
    /// Target of the thigh.
    pub thigh: Option<Temperature>,
    /// What earlier cooks taught.
    pub profile: Profile,
}

impl CookingTime for Unlit {
    fn cooking_time(&self, bird: &Bird, heat: &Heat, start: Condition) -> Result<Spread, RoastError> {
        if start == Condition::Frozen {
            return Timetable.cooking_time(bird, heat, start);
        }
        estimate(bird, heat, start)?;
        let icy = (start == Condition::PartThawed).then(|| celsius(-1.5));
        let cook = Cook {
            bird: *bird,
            heat: *heat,
            start: icy,
            breast: self.breast,
            thigh: self.thigh,
            profile: self.profile,
            was_set: Vec::new(),
        };
        Ok(forecast(&cook, &[], TimeDelta::zero()).done)
    }
}

impl Outlook {
    /// Counted from a beginning that was so much later.
    fn later_by(&mut self, lost: TimeDelta) {
        let later = |spread: &mut Spread| {
            for at in [&mut spread.p10, &mut spread.p50, &mut spread.p90] {
                *at += lost;
            }
        };
        later(&mut self.done);
        [&mut self.breast, &mut self.thigh].into_iter().flatten().for_each(|spot| later(&mut spot.spread));
        self.next_look += lost;
    }

    /// Of a bird with ice in it, as late as the other says where that is later. That it is behind its heat is no wonder then.
    fn no_sooner_than(mut self, other: &Self) -> Self {
        let later = |one: Spread, other: Spread| Spread {
            p10: one.p10.max(other.p10),
            p50: one.p50.max(other.p50),
            p90: one.p90.max(other.p90),
        };
        self.done = later(self.done, other.done);
        for (spot, other) in [(&mut self.breast, other.breast), (&mut self.thigh, other.thigh)] {
            if let (Some(spot), Some(other)) = (spot, other) {
                spot.spread = later(spot.spread, other.spread);
            }
        }
        self.next_look = self.next_look.min(other.next_look);
        self.doubts.retain(|doubt| !matches!(doubt, Doubt::PartFrozen | Doubt::OutOfStep(_, Pace::Behind)));
        self.doubts.insert(0, Doubt::PartFrozen);
        self
    }
}

/// The readings that count, and what was odd about them.
struct Sifted {
    evidence: Evidence,
    suspects: Vec<Suspect>,
    moved: Vec<Place>,
    longest_gap: f64,
}

/// Whether a spot reads colder now than it did last, by no more than a bird can cool between two looks: beyond that it is the reading that
/// is in doubt.
fn is_cooling(evidence: &Evidence, reading: &Reading) -> bool {
    // °C; less is the thermometer's scatter.
    const SURELY: f64 = 1.5;
    let spots = [(&evidence.breast, reading.breast), (&evidence.thigh, reading.thigh)];
    spots.into_iter().any(|(kept, given)| {
        kept.last()
            .zip(given)
            .is_some_and(|(last, given)| (SURELY..=FALL).contains(&(last.celsius - in_celsius(given))))
    })
}

impl Sifted {
    fn of(cook: &Cook, readings: &[Reading], now: f64) -> Self {
        let setting = in_celsius(cook.heat.setting);
        let start = cook.start.filter(|_| !cook.bird.stuffed).map_or(6.0, in_celsius);
        let mut evidence = Evidence { now: if now.is_finite() { now } else { 0.0 }, ..Evidence::default() };
        let (mut suspects, mut moved) = (Vec::new(), Vec::new());
        let (mut seen_at, mut longest_gap) = (0.0, 0.0_f64);
        for reading in readings.iter().filter(|r| minutes(r.at) <= now && minutes(r.at) >= 0.0) {
            let at = minutes(reading.at);
            for (place, given) in
                [(Place::Pit, reading.pit), (Place::Breast, reading.breast), (Place::Thigh, reading.thigh)]
            {
                let Some(given) = given else { continue };
                let cooling = is_cooling(&evidence, reading);
                let kept = match place {
                    Place::Pit => &mut evidence.pit,
                    Place::Breast => &mut evidence.breast,
                    Place::Thigh => &mut evidence.thigh,
                };
                // Out of order: the earlier readings stand, this one can't be placed on the curve.
                if kept.last().is_some_and(|last| last.minutes > at) {
                    continue;
                }
                let before = Before { last: kept.last().copied(), start, setting, cooling };
                match sift(place, at, given, &before) {
                    Ok(seen) => {
                        if seen.moved && place != Place::Pit && !moved.contains(&place) {
                            moved.push(place);
                        }
                        kept.push(seen);
                    }
                    Err(_) if reading.sure && in_celsius(given).is_finite() => {
                        kept.push(Seen { minutes: at, celsius: in_celsius(given), moved: true });
                    }
                    Err((slip, meant)) => suspects.push(Suspect { at: reading.at, place, given, meant, slip }),
                }
            }
            if evidence.breast.last().into_iter().chain(evidence.thigh.last()).any(|s| s.minutes == at) {
                // What was missed an hour ago no longer matters once the curve has been followed for as long.
                longest_gap =
                    if at - seen_at > LONG { at - seen_at } else { longest_gap - (at - seen_at).min(longest_gap) };
                seen_at = at;
            }
        }
        if now.is_finite() {
            longest_gap = longest_gap.max(now - seen_at);
        }
        Self { evidence, suspects, moved, longest_gap }
    }

    /// The same readings, counted from a beginning so many minutes later.
    fn begun_later(&self, lost: f64) -> Self {
        let shifted = |seen: &[Seen]| -> Vec<Seen> {
            let shifted = seen.iter().map(|seen| Seen { minutes: seen.minutes - lost, ..*seen });
            shifted.filter(|seen| seen.minutes >= 0.0).collect()
        };
        let Evidence { breast, thigh, pit, now, truth } = &self.evidence;
        let evidence = Evidence {
            breast: shifted(breast),
            thigh: shifted(thigh),
            pit: shifted(pit),
            now: now - lost,
            truth: *truth,
        };
        Self { evidence, suspects: self.suspects.clone(), moved: self.moved.clone(), longest_gap: self.longest_gap }
    }
}

/// The fit and what it was made from.
struct Fit {
    prior: Prior,
    posterior: Posterior,
    air: Air,
    noise: Noise,
}

impl Fit {
    fn of(learned: &Learned, cook: &Cook, sifted: &Sifted) -> Self {
        let evidence = &sifted.evidence;
        let facts = facts(cook, !evidence.pit.is_empty());
        let was = cook.was_set.iter().map(|(until, setting)| (minutes(*until), in_celsius(*setting)));
        let dial = Dial { now: in_celsius(cook.heat.setting), was: was.collect() };
        let air = Air::of(&evidence.pit, &dial, evidence.now);
        let mut prior = Prior::of(&facts, learned);
        prior.covariance[AHEAD][AHEAD] = air.doubt * air.doubt;
        prior.mean[PIT] += cook.profile.pit_offset;
        for spot in [BREAST, THIGH] {
            prior.mean[spot + RATE] += cook.profile.speed.max(0.2).ln();
        }
        let noise = Noise::of(evidence);
        let posterior = Posterior::fit(&prior, evidence, &air, &noise);
        Self { prior, posterior, air, noise }
    }

    /// The spot whose last reading is far from what the fit makes of everything, and by how much, °C: the fit has not believed it.
    fn disbelieved(&self, evidence: &Evidence) -> Option<(Place, f64)> {
        let spots = [(Place::Breast, BREAST, &evidence.breast), (Place::Thigh, THIGH, &evidence.thigh)];
        spots.into_iter().find_map(|(place, spot, seen)| {
            let last = seen.last()?;
            let curve = curve_of(&self.posterior.mean, spot, &self.air, (last.minutes / STEP) as usize + 2);
            let off = last.celsius - between_values(&curve, last.minutes);
            (off.abs() > DISBELIEVED).then_some((place, off))
        })
    }

    fn outlook(&self, cook: &Cook, sifted: &Sifted) -> Outlook {
        self.outlook_with(cook, sifted, Vec::new())
    }

    fn outlook_with(&self, cook: &Cook, sifted: &Sifted, mut doubts: Vec<Doubt>) -> Outlook {
        let evidence = &sifted.evidence;
        let now = evidence.now;
        doubts.extend(self.doubts(cook, sifted));
        let wider: f64 = doubts.iter().map(Doubt::widens).product();
        let required = [(0, cook.breast, &evidence.breast), (1, cook.thigh, &evidence.thigh)];
        let crossings: [Option<Crossing>; 2] = required.map(|(which, target, _)| {
            Some(crossing(&self.posterior, &self.air, which, in_celsius(target?), now, &self.noise, wider))
        });
        let both: Vec<Crossing> = crossings.iter().flatten().copied().collect();
        let done = later(&both, &self.posterior, now);
        if done[2] >= LONGEST {
            doubts.push(Doubt::Endless);
        }
        let pull = done[1].max(now);
        let spots = required.map(|(which, target, seen)| {
            let crossing = crossings[which]?;
            let target = target?;
            let reached = seen.last().is_some_and(|s| s.celsius >= in_celsius(target) - 0.05);
            let spread = spread_of(soonest(&crossing, if reached { 0.0 } else { now }));
            let (at, peak, after) = self.carry_over(which, pull, now);
            Some(SpotOutlook { spread, now: celsius(at), reached, peak: celsius(peak), peak_after: span(after) })
        });
        let state =
            if !both.is_empty() && spots.iter().flatten().all(|s| s.reached) { State::Done } else { State::Cooking };
        let (log_reduction, log_reduction_off) = self.decades(cook, sifted);
        Outlook {
            done: spread_of(done),
            breast: spots[0],
            thigh: spots[1],
            log_reduction,
            log_reduction_off,
            state,
            next_look: next_look(state, now, done, &doubts),
            doubts,
            suspects: sifted.suspects.clone(),
        }
    }

    /// The most probable minute at which the last required spot reaches its target.
    fn latest(&self, cook: &Cook, now: f64) -> f64 {
        let targets = [(0, cook.breast), (1, cook.thigh)];
        let at = |(which, target): (usize, Option<Temperature>)| {
            Some(crossing(&self.posterior, &self.air, which, in_celsius(target?), now, &self.noise, 1.0).at[2])
        };
        targets.into_iter().filter_map(at).fold(0.0, f64::max)
    }

    fn doubts(&self, cook: &Cook, sifted: &Sifted) -> Vec<Doubt> {
        let evidence = &sifted.evidence;
        let mut doubts = Vec::new();
        let spots = [(Place::Breast, cook.breast, &evidence.breast), (Place::Thigh, cook.thigh, &evidence.thigh)];
        let unread = spots.iter().filter(|(_, target, seen)| target.is_some() && seen.is_empty());
        if evidence.breast.is_empty() && evidence.thigh.is_empty() {
            doubts.push(Doubt::NoReadings);
        } else {
            doubts.extend(unread.map(|(place, ..)| Doubt::Unread(*place)));
            if sifted.longest_gap > LONG {
                doubts.push(Doubt::Gap(span(sifted.longest_gap)));
            }
        }
        if evidence.pit.is_empty() && evidence.now > 0.0 {
            doubts.push(Doubt::PitUnread);
        }
        doubts.extend(self.air.dying.map(|pit| Doubt::FireDying(celsius(pit))));
        doubts.extend(sifted.moved.iter().map(|place| Doubt::ProbeMoved(*place)));
        if let (Some(breast), Some(thigh)) = (evidence.breast.last(), evidence.thigh.last())
            && (breast.minutes - thigh.minutes).abs() < 10.0
            && (breast.celsius - thigh.celsius).abs() > APART
        {
            let (hot, cold) = (breast.celsius.max(thigh.celsius), breast.celsius.min(thigh.celsius));
            doubts.push(Doubt::ProbesDisagree(hotter_by(celsius(hot), celsius(cold))));
        }
        doubts.extend(self.changed(evidence).map(Doubt::Changed));
        if self.posterior.mean[START] < -3.0 {
            doubts.push(Doubt::PartFrozen);
        }
        if cook.bird.kind != Kind::Turkey || cook.bird.form == Form::Pieces {
            doubts.push(Doubt::Unusual);
        }
        doubts
    }

    /// The spot whose last readings are not what the earlier ones led to expect.
    fn changed(&self, evidence: &Evidence) -> Option<Place> {
        let split = evidence.now - RECENT;
        let old = |seen: &[Seen]| seen.iter().copied().filter(|s| s.minutes < split).collect::<Vec<_>>();
        let earlier =
            Evidence { breast: old(&evidence.breast), thigh: old(&evidence.thigh), now: split, ..Evidence::default() };
        if earlier.breast.len() + earlier.thigh.len() < 8 {
            return None;
        }
        let fit = Posterior::fit_from(self.posterior.mean, &self.prior, &earlier, &self.air, &self.noise);
        let spots = [(Place::Breast, BREAST, &evidence.breast), (Place::Thigh, THIGH, &evidence.thigh)];
        spots.into_iter().enumerate().find_map(|(which, (place, spot, seen))| {
            let last = seen.last().filter(|s| s.minutes > split)?;
            let curve = curve_with_slopes(&fit.mean, spot, &self.air, (last.minutes / STEP) as usize + 2);
            let (shown, slope) = curve.shown(last.minutes, &self.air, &fit.mean, spot);
            let (left, _) = fit.left[which];
            let wander = self.noise.wander * fit.scale.sqrt().max(0.7);
            let expected = through(&fit.covariance, &slope, &slope) + wander * wander + self.noise.reading.powi(2);
            let off = last.celsius - shown - left * (-RECENT / self.noise.memory).exp();
            (off * off > SURPRISE * SURPRISE * expected).then_some(place)
        })
    }

    /// Temperature now; the hottest after a pull at `pull`, and how many minutes after it that is.
    fn carry_over(&self, which: usize, pull: f64, now: f64) -> (f64, f64, f64) {
        const STANDING: f64 = 90.0;
        let (over_heat, standing) = self.pulled(which, pull, STANDING);
        let at_now = over_heat.get((now / STEP) as usize).or(over_heat.last()).copied().unwrap_or(KITCHEN);
        let (mut peak, mut after) = (f64::NEG_INFINITY, 0.0);
        for (i, reached) in standing.into_iter().enumerate() {
            if reached > peak {
                (peak, after) = (reached, i as f64 * STEP);
            }
        }
        let (left, _) = self.posterior.left[which];
        let fade = (-(pull - now).max(0.0) / self.noise.memory).exp();
        (at_now + left, peak + left * fade, after)
    }

    /// What a spot has at each step until a pull at `pull`, and at each from then on while the bird stands for `standing` minutes.
    fn pulled(&self, which: usize, pull: f64, standing: f64) -> (Vec<f64>, Vec<f64>) {
        let spot = [BREAST, THIGH][which];
        let unknowns = &self.posterior.mean;
        let steps = (pull.min(LONGEST) / STEP).round() as usize;
        let air = |i: usize| [self.air.at(i, unknowns[PIT], unknowns[AHEAD])];
        let mut course = Course::new([spot_of(unknowns, spot)], [unknowns[START]], STEP);
        let celsius = |course: &Course<1>| course.reached()[0].celsius;
        let mut over_heat = vec![celsius(&course)];
        for i in 0..steps {
            course.step(&air(i), &air(i + 1));
            over_heat.push(celsius(&course));
        }
        course.change_air(OFF_THE_HEAT);
        let mut off = vec![celsius(&course)];
        for _ in 0..(standing / STEP) as usize {
            course.step(&[KITCHEN], &[KITCHEN]);
            off.push(celsius(&course));
        }
        (over_heat, off)
    }

    /// Decades at the coldest plausible spot along the fitted curve, as far as readings carry it; and with the standing after it.
    fn decades(&self, cook: &Cook, sifted: &Sifted) -> (f64, f64) {
        let seen = [&sifted.evidence.breast, &sifted.evidence.thigh];
        // A breast alone has no thigh to be colder; a whole bird must be read at both.
        let whole = cook.bird.kind != Kind::TurkeyBreast;
        if seen[0].is_empty() || (whole && seen[1].is_empty()) {
            return (0.0, 0.0);
        }
        let of = |curve: &[_]| log_reduction(curve, cook.bird.kind, None).unwrap_or(0.0);
        let (mut lowest, mut lowest_off) = (f64::INFINITY, f64::INFINITY);
        for (which, seen) in seen.into_iter().enumerate() {
            let Some(last) = seen.last() else { continue };
            let (over_heat, standing) = self.pulled(which, last.minutes, minutes(STANDS));
            let left = self.posterior.left[which].0.min(0.0);
            let coldest = |minute: f64, at: f64| (span(minute), celsius(at + left - COLDER));
            let mut next = 0;
            let mut kept: Vec<(TimeDelta, Temperature)> = Vec::new();
            for (i, at) in over_heat.iter().enumerate().take_while(|(i, _)| *i as f64 * STEP <= last.minutes) {
                let minute = i as f64 * STEP;
                while next < seen.len() && seen[next].minutes < minute {
                    next += 1;
                }
                // Where nobody looked for long, what was last read is all that is sure.
                let before = next.checked_sub(1).and_then(|k| seen.get(k));
                let unwatched = before.is_none_or(|b| seen.get(next).is_some_and(|n| n.minutes - b.minutes > LONG));
                kept.push(coldest(minute, if unwatched { before.map_or(*at, |b| b.celsius.min(*at)) } else { *at }));
            }
            lowest = lowest.min(of(&kept));
            let off = standing.iter().enumerate().map(|(i, at)| coldest(last.minutes + i as f64 * STEP, *at));
            kept.extend(off);
            lowest_off = lowest_off.min(of(&kept));
        }
        if lowest.is_finite() { (lowest, lowest_off) } else { (0.0, 0.0) }
    }
}

/// °C by which a reading lies off what the fit makes of it where the fit has not believed it.
const DISBELIEVED: f64 = 8.0;
/// Minutes that are recent when a change is looked for.
const RECENT: f64 = 35.0;
/// Standard deviations off that are a change.
const SURPRISE: f64 = 2.5;

/// When to look again: rarely while it is far, every ten to fifteen minutes near the end.
fn next_look(state: State, now: f64, done: [f64; 3], doubts: &[Doubt]) -> TimeDelta {
    let nearest = (done[0] - now).max(0.0);
    let nothing = doubts.contains(&Doubt::NoReadings);
    let urgent = doubts
        .iter()
        .any(|d| matches!(d, Doubt::FireDying(_) | Doubt::ProbeMoved(_) | Doubt::Changed(_) | Doubt::OutOfStep(..)));
    let mut wait = match state {
        State::Done => 10.0,
        State::Cooking => (0.5 * nearest).clamp(10.0, if nothing { 60.0 } else { 45.0 }),
    };
    if urgent {
        wait = wait.min(15.0);
    }
    span(now + (wait / 5.0).round() * 5.0)
}

/// What a forecast is told of a cook, as plain numbers.
pub fn facts(cook: &Cook, pit_read: bool) -> Facts {
    Facts {
        mass: in_kilograms(cook.bird.mass.get()) * likeness(cook.bird.kind, cook.bird.form),
        flat: cook.bird.form != Form::Whole,
        stuffed: cook.bird.stuffed,
        smoker: cook.heat.cooker == Cooker::Smoker,
        fan: cook.heat.cooker == Cooker::FanOven,
        // What is expected of a bird hangs on how it began to cook; in an oven that is off it doesn't.
        setting: in_celsius(cook.was_set.iter().map(|(_, setting)| *setting).find(cooks).unwrap_or(cook.heat.setting)),
        start: cook.start.map(in_celsius).or((cook.bird.condition == Condition::PartThawed).then_some(-1.5)),
        pit_read,
    }
}

/// Air that any cooker is set to.
fn cooks(setting: &Temperature) -> bool {
    in_celsius(*setting) >= 90.0
}

/// Mass of the turkey that takes as long as a kilogram of this bird. Derived from the government timetable.
fn likeness(kind: Kind, form: Form) -> f64 {
    let kind = match kind {
        Kind::Turkey | Kind::Capon | Kind::Goose => 1.0,
        Kind::TurkeyBreast => 1.1,
        Kind::Chicken => 0.9,
        Kind::Duck => 1.8,
    };
    if form == Form::Pieces { 0.5 * kind } else { kind }
}

fn minutes(span: TimeDelta) -> f64 {
    span.num_milliseconds() as f64 / 60_000.0
}

fn span(minutes: f64) -> TimeDelta {
    TimeDelta::milliseconds((minutes.clamp(0.0, 1e6) * 60_000.0).round() as i64)
}

fn spread_of(minutes: [f64; 3]) -> Spread {
    Spread { p10: span(minutes[0]), p50: span(minutes[1]), p90: span(minutes[2]) }
}

/// The rise after the pull.
pub fn rise(spot: &SpotOutlook, target: Temperature) -> TemperatureInterval {
    let rise = hotter_by(spot.peak, target);
    TemperatureInterval::new::<kelvin>(rise.get::<kelvin>().max(0.0))
}
