//! Alarms while it cooks: what the readings show that can't wait for the next look, each once an event.
//!
//! Owns which alarms there are. An alarm stands in the plan by name until what raised it is over; then it may ring again.
//! Start at [`raise`].

use super::forecast::Foresight;
use super::kept_hot;
use super::state::{JobState, LivePlan};
use super::turn::{Say, To, Urgency};
use super::{Sitting, What, forecast, hot_day, sag};
use crate::reading::Told;
use crate::words::{Arg, Text};
use carvetime_core::heat::{Cook, Doubt, Pace, Reading};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::{Temperature, fahrenheit, in_fahrenheit};
use carvetime_core::roast::Cooker;
use carvetime_core::safety::{Jurisdiction, Verdict, WARMING_MOST, in_danger_zone, left_out};
use chrono::TimeDelta;

/// A pit this much above its setting in two readings runs away, °F. Common practice, no source.
const RUNAWAY_F: f64 = 50.0;
/// A thermometer that shows the same for so long stalls. Common practice, no source.
const STALLED: TimeDelta = TimeDelta::minutes(45);
/// "The same", °F.
const SAME_F: f64 = 1.5;
/// The lowest published pit of a smoker, °F. Source: [`carvetime_core::source::SMOKER_RANGE`].
pub(super) const LOWEST_PIT_F: f64 = 225.0;
/// Air below this is low heat, °F: as hot as smokers are run by [`carvetime_core::source::SMOKER_RANGE`].
const LOW_HEAT_F: f64 = 300.0;
/// An oven this hot warms any bird through in time, °F. Source: [`carvetime_core::source::LOW_OVEN`].
const HOT_OVEN_F: f64 = 325.0;
/// A pit too low for so long, over a bird in the danger zone, is said. Half of the two hours: there is time to act.
const TOO_LOW: TimeDelta = TimeDelta::minutes(60);
/// A bird off the heat is asked about this long before its two hours are over.
const BEFORE_LIMIT: TimeDelta = TimeDelta::minutes(20);

/// The name of a pit that sags.
const SAG: &str = "sag";
/// The name of the limit after the heat.
pub(super) const HOLD: &str = "hold";

/// One thermometer of a reading.
type Of = fn(&Reading) -> Option<Temperature>;

struct Alarm {
    name: String,
    text: Text,
    urgency: Urgency,
}

/// Says what the readings show and was not said before.
pub(super) fn raise(sitting: &mut Sitting<'_>, sight: &Foresight) {
    let lid = says_lid(sitting);
    let mut active = active(sight);
    // Just opened, it reads low whatever the fire does.
    active.retain(|alarm| alarm.name != SAG || !lid);
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let standing = std::mem::take(&mut plan.alarms);
    plan.alarms = active.iter().map(|alarm| alarm.name.clone()).collect();
    let room = To::Room(sitting.room.id);
    // A fire that dies, and what it does to the bird, is said in its own words.
    let graver = loses_heat(plan);
    let said = |alarm: &Alarm| standing.contains(&alarm.name) || graver && alarm.name == SAG;
    for alarm in active.into_iter().filter(|alarm| !said(alarm)) {
        let say = sitting.say(Say::new(room.clone(), alarm.text));
        say.key(format!("alarm-{}", alarm.name)).urgency(alarm.urgency);
    }
}

/// "Just opened the lid", said with the number.
fn says_lid(sitting: &Sitting<'_>) -> bool {
    let What::Said { text, .. } = &sitting.heard.what else { return false };
    Told::of(text, sitting.lexicon()).says("lid-open")
}

fn active(sight: &Foresight) -> Vec<Alarm> {
    let mut alarms = Vec::new();
    let setting = sight.cook.heat.setting;
    let smoker = sight.cook.heat.cooker == Cooker::Smoker;
    let cooker = || Arg::Choice(if smoker { "smoker" } else { "oven" });
    if let Some((span, reading)) = low_pit(sight) {
        let verdict = left_out(None, span);
        let id = if matches!(verdict, Verdict::Discard { .. }) { "cook-alarm-zone-over" } else { "cook-alarm-zone" };
        let text = Text::new(id)
            .with("span", Arg::Span(span))
            .with("low", Arg::Temperature(fahrenheit(LOWEST_PIT_F)))
            .with("spot", Arg::Temperature(reading))
            .with("hot", Arg::Temperature(fahrenheit(140.0)));
        alarms.push(Alarm { name: id.trim_start_matches("cook-alarm-").into(), text, urgency: Urgency::Safety });
    }
    if let Some(falling) = sight.falling() {
        let over = in_danger_zone(falling.to, Jurisdiction::Us)
            && matches!(left_out(None, falling.span), Verdict::Discard { .. });
        let text = Text::new(if over { "cook-alarm-falling-over" } else { "cook-alarm-falling" })
            .with("cooker", cooker())
            .with("spot", Arg::Choice(falling.spot))
            .with("from", Arg::Temperature(falling.from))
            .with("to", Arg::Temperature(falling.to))
            .with("span", Arg::Span(falling.span))
            .with("hot", Arg::Temperature(fahrenheit(140.0)));
        let name = if over { "falling-over" } else { "falling" };
        alarms.push(Alarm { name: name.into(), text, urgency: Urgency::Safety });
    }
    if let Some(slow) = warms_slowly(sight).filter(|_| alarms.is_empty()) {
        let text = Text::new("cook-alarm-long")
            .with("spot", Arg::Choice(slow.spot))
            .with("at", Arg::Temperature(slow.at))
            .with("span", Arg::Span(slow.span))
            .with("hot", Arg::Temperature(fahrenheit(140.0)))
            .with("most", Arg::Span(WARMING_MOST))
            .with("oven", Arg::Temperature(fahrenheit(HOT_OVEN_F)));
        alarms.push(Alarm { name: "long".into(), text, urgency: Urgency::Due });
    }
    for doubt in &sight.outlook.doubts {
        match doubt {
            Doubt::FireDying(pit) => alarms.push(Alarm {
                name: "fire".into(),
                text: Text::new("cook-alarm-fire")
                    .with("cooker", cooker())
                    .with("pit", Arg::Temperature(*pit))
                    .with("setting", Arg::Temperature(setting)),
                urgency: Urgency::Safety,
            }),
            Doubt::ProbeMoved(place) => alarms.push(Alarm {
                name: format!("moved-{}", place.name()),
                text: Text::new("cook-alarm-moved").with("spot", Arg::Choice(place.name())),
                urgency: Urgency::Due,
            }),
            // What is done is not too cold for its hour.
            Doubt::OutOfStep(place, Pace::Behind) if is_there(sight, place.name()) => {}
            Doubt::OutOfStep(place, step) => alarms.push(Alarm {
                name: format!("{}-{}", step.name(), place.name()),
                text: Text::new(match step {
                    Pace::Behind => "cook-alarm-behind",
                    Pace::Ahead => "cook-alarm-ahead",
                })
                .with("spot", Arg::Choice(place.name()))
                .with("cooker", cooker())
                .with("setting", Arg::Temperature(setting)),
                urgency: Urgency::Due,
            }),
            Doubt::ProbesDisagree(apart) => alarms.push(Alarm {
                name: "apart".into(),
                text: Text::new("cook-alarm-apart").with("apart", Arg::Degrees(*apart)),
                urgency: Urgency::Due,
            }),
            _ => {}
        }
    }
    alarms.extend(sag_of(&sight.cook, &sight.readings));
    if let Some(pit) = runaway(&sight.readings, setting) {
        let text = Text::new("cook-alarm-hot")
            .with("cooker", cooker())
            .with("pit", Arg::Temperature(pit))
            .with("setting", Arg::Temperature(setting));
        alarms.push(Alarm { name: "hot".into(), text, urgency: Urgency::Due });
    }
    let spots: [(&'static str, Of); 2] = [("breast", |reading| reading.breast), ("thigh", |reading| reading.thigh)];
    for (spot, of) in spots {
        let Some((since, at)) = stalled(&sight.readings, of) else { continue };
        let text = Text::new("cook-alarm-stalled")
            .with("spot", Arg::Choice(spot))
            .with("at", Arg::Temperature(at))
            .with("since", Arg::Span(since))
            .with("low", Arg::Choice(if smoker && in_fahrenheit(setting) < 300.0 { "yes" } else { "no" }));
        alarms.push(Alarm { name: format!("stalled-{spot}"), text, urgency: Urgency::Due });
    }
    alarms
}

/// Whether that spot was last read at what it is cooked to.
fn is_there(sight: &Foresight, spot: &str) -> bool {
    let of = |reading: &Reading| match spot {
        "breast" => reading.breast,
        "thigh" => reading.thigh,
        _ => None,
    };
    sight.readings.iter().rev().find_map(of).is_some_and(|read| read >= super::target())
}

fn sag_of(cook: &Cook, readings: &[Reading]) -> Option<Alarm> {
    let pit = sag::sags(cook, readings)?;
    let text = Text::new("cook-alarm-sag")
        .with("cooker", Arg::Choice(if cook.heat.cooker == Cooker::Smoker { "smoker" } else { "oven" }))
        .with("pit", Arg::Temperature(pit))
        .with("setting", Arg::Temperature(cook.heat.setting));
    Some(Alarm { name: SAG.into(), text, urgency: Urgency::Due })
}

/// The same where nothing has been read in the bird yet, and so nothing is foretold: a pit that sags.
pub(super) fn raise_unread(sitting: &mut Sitting<'_>) {
    let (light, lid) = (sitting.light(), says_lid(sitting));
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| !plan.is_off()) else { return };
    let Some((on, cook, _)) = forecast::cook_of(plan, &light) else { return };
    let sag = sag_of(&cook, &plan.readings_since(on)).filter(|_| !lid);
    let standing = plan.alarms.iter().any(|name| name == SAG);
    plan.alarms.retain(|name| name != SAG);
    plan.alarms.extend(sag.iter().map(|alarm| alarm.name.clone()));
    let room = To::Room(sitting.room.id);
    if let Some(alarm) = sag.filter(|_| !standing) {
        sitting.say(Say::new(room, alarm.text)).key(format!("alarm-{SAG}")).urgency(alarm.urgency);
    }
}

/// The pit as last read, if the last two readings of it stand far above the setting.
fn runaway(readings: &[Reading], setting: Temperature) -> Option<Temperature> {
    let mut pit = readings.iter().rev().filter_map(|reading| reading.pit);
    let (last, before) = (pit.next()?, pit.next()?);
    let over = |at: Temperature| in_fahrenheit(at) - in_fahrenheit(setting) >= RUNAWAY_F;
    (over(last) && over(before)).then_some(last)
}

/// How long a spot has shown the same, below its target, in three readings or more.
fn stalled(readings: &[Reading], of: Of) -> Option<(TimeDelta, Temperature)> {
    let mut newest = readings.iter().rev().filter_map(|reading| Some((reading.at, of(reading)?)));
    let (last_at, last) = newest.next().filter(|(_, last)| *last < super::target())?;
    let same = |(_, at): &(TimeDelta, Temperature)| (in_fahrenheit(*at) - in_fahrenheit(last)).abs() <= SAME_F;
    let run: Vec<_> = newest.take_while(same).collect();
    let (first_at, _) = run.last().filter(|_| run.len() >= 2)?;
    (last_at - *first_at >= STALLED).then_some((last_at - *first_at, last))
}

/// How long the pit was read too low to count as cooking while the colder spot stood in the danger zone, and that spot. A run past the
/// limit stands, whatever the pit has reached since: heat does not undo it.
fn low_pit(sight: &Foresight) -> Option<(TimeDelta, Temperature)> {
    let setting = sight.cook.heat.setting;
    let too_low = |pit: Temperature| is_too_low(pit, setting);
    let runs = low_runs(&sight.readings, too_low);
    let over = runs.iter().flatten().find(|(span, _)| matches!(left_out(None, *span), Verdict::Discard { .. }));
    let pit = sight.readings.iter().rev().find_map(|reading| reading.pit);
    let now = runs.last().and_then(Option::as_ref).filter(|_| pit.is_some_and(too_low));
    over.or(now).copied().filter(|(span, _)| *span >= TOO_LOW)
}

/// A spot that has been on its way to 140 °F for too long.
struct Slow {
    spot: &'static str,
    at: Temperature,
    span: TimeDelta,
}

/// The colder spot of the last look, if low heat has not brought it past 140 °F in the time that is usual. One that was there before is not
/// told again.
fn warms_slowly(sight: &Foresight) -> Option<Slow> {
    let pits: Vec<f64> = sight.readings.iter().filter_map(|reading| reading.pit).map(in_fahrenheit).collect();
    let mean = pits.iter().sum::<f64>() / pits.len() as f64;
    let air = if pits.is_empty() { in_fahrenheit(sight.cook.heat.setting) } else { mean };
    if air >= LOW_HEAT_F {
        return None;
    }
    let spots: [(&'static str, Of); 2] = [("breast", |reading| reading.breast), ("thigh", |reading| reading.thigh)];
    let slow = spots.into_iter().filter_map(|(spot, of)| {
        let read: Vec<_> = sight.readings.iter().filter_map(|reading| Some((reading.at, of(reading)?))).collect();
        let (last_at, at) = *read.last()?;
        let through = read.iter().any(|(_, at)| in_fahrenheit(*at) >= 140.0);
        // Colder than a fridge nothing grows in it yet.
        let cold = read.iter().rev().find(|(_, at)| !in_danger_zone(*at, Jurisdiction::Us)).map(|(at, _)| *at);
        let span = last_at - cold.unwrap_or(TimeDelta::zero());
        (!through && in_danger_zone(at, Jurisdiction::Us) && span > WARMING_MOST).then_some(Slow { spot, at, span })
    });
    slow.min_by(|one, other| in_fahrenheit(one.at).total_cmp(&in_fahrenheit(other.at)))
}

/// A smoker that was set low swings about its setting: that is no dead fire.
fn is_too_low(pit: Temperature, setting: Temperature) -> bool {
    const SWING_F: f64 = 15.0;
    in_fahrenheit(pit) < LOWEST_PIT_F && in_fahrenheit(setting) - in_fahrenheit(pit) > SWING_F
}

/// Each run of low readings of the pit, to the last reading of anything before the pit was read hot again: how long the meat stood in the
/// danger zone then, if it did.
fn low_runs(readings: &[Reading], too_low: impl Fn(Temperature) -> bool) -> Vec<Option<(TimeDelta, Temperature)>> {
    let mut runs = Vec::new();
    let mut since: Option<TimeDelta> = None;
    let mut coldest: Option<Temperature> = None;
    for reading in readings {
        let spot = [reading.breast, reading.thigh].into_iter().flatten().reduce(Temperature::min);
        let low = reading.pit.map(&too_low);
        if low == Some(true) && since.is_none() {
            since = Some(reading.at);
            runs.push(None);
        } else if low == Some(false) {
            since = None;
        }
        coldest = spot.or(coldest);
        let cold = coldest.filter(|at| in_danger_zone(*at, Jurisdiction::Us));
        if let (Some(since), Some(cold), Some(run)) = (since, cold, runs.last_mut()) {
            *run = Some((reading.at - since, cold));
        }
    }
    runs
}

/// It stood raw without heat for its two hours, and was said to be thrown away.
pub(super) const RAW_OVER: &str = "raw-over";

/// Whether the meat stood without heat for longer than is safe.
pub(super) fn stood_too_long(plan: &LivePlan) -> bool {
    plan.alarms.iter().any(|name| ["zone-over", "falling-over", RAW_OVER].contains(&name.as_str()))
}

/// Whether the fire was last seen dying, the pit too low or the bird cooling: no hour holds then.
pub(super) fn loses_heat(plan: &LivePlan) -> bool {
    plan.alarms.iter().any(|name| name == "fire" || name.starts_with("zone") || name.starts_with("falling"))
}

/// When to ask about a bird that waits off the heat: before its two hours are over, if it is still to be carved.
pub(super) fn limit_at(plan: &LivePlan) -> Option<Moment> {
    let off = kept_hot::known(plan)?;
    let at = off + hot_day::most(plan) - BEFORE_LIMIT;
    let carve = plan.job(Step::Carve, 0).filter(|job| job.state == JobState::Waiting)?;
    let called = plan.limits_called.iter().any(|name| name == HOLD);
    (carve.at > at && !called).then_some(at)
}

/// When it came off.
pub(super) fn off_at(plan: &LivePlan) -> Option<Moment> {
    plan.facts.iter().rev().find(|fact| fact.step == Step::Pull.name() && fact.done).map(|fact| fact.at)
}

/// The limit's bell rang.
pub(super) fn limit(sitting: &mut Sitting<'_>) {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| limit_at(plan).is_some_and(|at| at <= now)) else {
        return;
    };
    let Some(off) = kept_hot::known(plan) else { return };
    plan.limits_called.push(HOLD.into());
    let read = off_at(plan).is_some_and(|heat| heat < off);
    let text = Text::new(if read { "cook-alarm-hold-read" } else { "cook-alarm-hold" })
        .with("off", Arg::Clock(off))
        .with("hot", Arg::Temperature(fahrenheit(140.0)))
        .with("until", Arg::Clock(off + hot_day::most(plan)));
    let room = To::Room(sitting.room.id);
    sitting.say(Say::new(room, text)).key("alarm-hold").urgency(Urgency::Safety);
}
