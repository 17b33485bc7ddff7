//! The air the bird has had: "oven was on 425 this whole time", "oven has been off for 30 min", "ran out of charcoal, it's at 200".
//!
//! Owns the grammar only. What it does to the forecast is for the room to say.

use super::ground::Ground;
use super::lexicon::Lexicon;
use super::log::{Scale, numbers};
use super::sentence::Sentence;
use super::talk::{begins_as_question, tells_of_past_weeks};
use super::told::Told;
use super::when::{Lean, When, last_at, read_when};
use carvetime_core::plan::Moment;
use carvetime_core::quantity::{Unit, celsius, fahrenheit, in_celsius};
use chrono::{NaiveTime, TimeDelta};

/// What someone says the air has been, otherwise than was thought.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// What it was, °C; `None`: there was no heat.
    pub was_c: Option<f64>,
    /// From when on.
    pub since: Since,
    /// Until when, where that is past: "it was back at 3:40".
    pub until: Option<Moment>,
    /// It is so still: "dead since three".
    pub still: bool,
    /// What it is set to now, °C, where that was said.
    pub now_c: Option<f64>,
}

/// Heat again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatBack {
    /// What it is set to, °C, where that was said.
    pub now_c: Option<f64>,
    /// Since when, where that was said.
    pub at: Option<Moment>,
}

/// From when on the air was so.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Since {
    /// All the time that the bird has been in it.
    On,
    /// From then on.
    At(Moment),
    /// Since it was last known to be otherwise.
    Known,
}

/// Longer ago it was another cook.
const LONGEST: TimeDelta = TimeDelta::hours(24);

/// Reads what the air has been. `None`: the text doesn't say that it was otherwise than set.
pub fn read_air(text: &str, ground: &Ground) -> Option<Air> {
    let sentence = Sentence::read(text, ground.lexicon);
    let has = |concept| sentence.has(concept);
    // What nobody lit was never on, whatever else the sentence says.
    let never = has("heat-never");
    if text.contains(['?', '¿']) || begins_as_question(text, ground.lexicon) || of_food(&sentence)
        // "Almost out of pellets, maybe an hour left": it burns.
        || has("nearly-out")
    {
        return None;
    }
    let (all, down) = (has("heat-all-along") || never, has("ask-oven-down"));
    let heat = (0..sentence.len()).find(|at| is_heat(&sentence, *at));
    // "Off the smoker for half an hour" is said of the bird.
    let off = heat.and_then(|heat| sentence.find(heat, "heat-off")).is_some();
    if heat.is_none() && !never && !down {
        return None;
    }
    let mut taken = vec![false; sentence.len()];
    let told = since(&sentence, &mut taken, ground);
    let temperatures = temperatures(&sentence, &taken, ground);
    let now = |(at, _): &&(usize, f64)| is_now(&sentence, *at);
    let now_c = temperatures.iter().find(now).map(|(_, c)| *c);
    let was_c = temperatures.iter().find(|it| !now(it)).map(|(_, c)| *c);
    let since = match told {
        _ if all => Since::On,
        Some(at) => Since::At(at),
        None => Since::Known,
    };
    let was = has("heat-was");
    // "Off for 30 min" is over when it is noticed; "dead since three" is not.
    let spanned = clock_since(&sentence).is_none() && (0..sentence.len()).any(|at| has_span(&sentence, at));
    let still = down && !all && has("since") && !spanned && !has("heat-returned") && now_c.is_none() && was_c.is_none();
    let air = |was_c, now_c| Some(Air { was_c, since, until: None, still, now_c });
    match was_c {
        // "It's at 200" of a fire that is out is how far it has fallen.
        _ if never => air(None, now_c.or(was_c)),
        Some(_) if down => air(was_c, now_c),
        Some(_) if all || was && told.is_some() && !off => air(was_c, now_c),
        None if (down || off) && since != Since::Known || off && was => air(None, now_c),
        _ => None,
    }
}

/// "Oven just died": the heat is gone from now on. What only asks, or of a fire that still burns, tells nothing.
pub fn says_heat_failed(text: &str, ground: &Ground) -> bool {
    let sentence = Sentence::read(text, ground.lexicon);
    let asks = begins_as_question(text, ground.lexicon) || text.contains('¿');
    let over = tells_of_past_weeks(text, ground.lexicon);
    sentence.has("ask-oven-down") && !sentence.has("nearly-out") && !asks && !over
}

/// "Power's out but the oven is gas", "it's still on": no power, and the heat goes on. What only asks, or tells that the gas is out, says nothing.
pub fn says_burns_on(text: &str, ground: &Ground) -> bool {
    const LONGEST: usize = 100;
    let sentence = Sentence::read(text, ground.lexicon);
    let asks = begins_as_question(text, ground.lexicon) || text.contains(['?', '¿']);
    let out = sentence.has("heat-off") || sentence.has("heat-never");
    let down = out || sentence.has("ask-oven-down") && !is_of_power(text, ground.lexicon);
    let of_food = of_food(&sentence) || (0..sentence.len()).any(|at| sentence.of(at, "dish-").is_some());
    text.chars().count() <= LONGEST && Told::of(text, ground.lexicon).says("burns-on") && !asks && !down && !of_food
}

/// Whether it is the power that is spoken of.
pub fn is_of_power(text: &str, lexicon: &'static Lexicon) -> bool {
    Told::of(text, lexicon).says("power")
}

/// "It's back", "power came back at 3:40": heat again. Longer texts tell a story.
pub fn read_heat_back(text: &str, ground: &Ground) -> Option<HeatBack> {
    const LONGEST: usize = 60;
    let sentence = Sentence::read(text, ground.lexicon);
    let asks = text.contains(['?', '¿']) || begins_as_question(text, ground.lexicon);
    if asks || text.chars().count() > LONGEST || !sentence.has("heat-returned") || of_food(&sentence) {
        return None;
    }
    let (untaken, mut taken) = (vec![false; sentence.len()], vec![false; sentence.len()]);
    let when = read_when(&sentence, &mut taken, ground, Lean::Past);
    // "Back at 350" is no hour of a clock.
    let clock = when.is_some() && (text.contains(':') || sentence.has("since"));
    let taken = if clock { taken } else { untaken };
    let now_c = temperatures(&sentence, &taken, ground).first().map(|(_, c)| *c);
    let at = match when.filter(|_| now_c.is_none()) {
        Some(When::Moment(at)) => Some(at),
        Some(When::Hour(hour)) => Some(last_at(ground, hour)),
        Some(When::Day(_)) | None => None,
    };
    Some(HeatBack { now_c, at: at.filter(|at| *at <= ground.now && ground.now - *at < TimeDelta::hours(24)) })
}

fn is_heat(s: &Sentence, at: usize) -> bool {
    s.is(at, "heat-returned") || s.is(at, "spot-pit") || s.of(at, "cooker-").is_some() || s.is(at, "step-fire")
}

/// A dish or the meat is spoken of.
fn of_food(s: &Sentence) -> bool {
    ["spot-breast", "spot-thigh", "spot-wing", "spot-stuffing"].iter().any(|spot| s.has(spot))
}

/// "For 30 min", "an hour ago", "since 11".
fn since(s: &Sentence, taken: &mut [bool], ground: &Ground) -> Option<Moment> {
    // "Depuis 15h": the hour of a clock, and not fifteen of them.
    if let Some(hour) = clock_since(s) {
        return Some(last_at(ground, hour));
    }
    let span = (0..s.len()).find_map(|at| s.amount(at)?.span());
    if let Some(span) = span.filter(|span| *span > TimeDelta::zero() && *span < LONGEST) {
        return Some(ground.now - span);
    }
    s.find(0, "since")?;
    match read_when(s, taken, ground, Lean::Past)? {
        When::Moment(at) if at <= ground.now && ground.now - at < LONGEST => Some(at),
        When::Hour(hour) => Some(last_at(ground, hour)),
        _ => None,
    }
}

fn has_span(s: &Sentence, at: usize) -> bool {
    s.amount(at).is_some_and(|amount| amount.span().is_some())
}

/// The hour behind "since" where people write both alike: nobody counts an oven's thirteen hours.
fn clock_since(s: &Sentence) -> Option<NaiveTime> {
    const FROM: TimeDelta = TimeDelta::hours(13);
    const TO: TimeDelta = TimeDelta::hours(24);
    let since = s.find(0, "since")?;
    // "Desde as 13h"
    let hours = |at: usize| s.amount(at).filter(|amount| amount.unit() == Some(Unit::Hour));
    let amount = hours(since + 1).or_else(|| hours(since + 2))?;
    let span = amount.span().filter(|span| (FROM..TO).contains(span))?;
    Some(NaiveTime::MIN.overflowing_add_signed(span).0)
}

/// Numbers that an oven may be at, each in its place, °C.
fn temperatures(s: &Sentence, taken: &[bool], ground: &Ground) -> Vec<(usize, f64)> {
    const AIR_C: std::ops::RangeInclusive<f64> = 30.0..=320.0;
    let usual = if ground.metric { Scale::Celsius } else { Scale::Fahrenheit };
    let read = |value, scale: Option<Scale>| match scale.unwrap_or(usual) {
        Scale::Fahrenheit => in_celsius(fahrenheit(value)),
        Scale::Celsius => in_celsius(celsius(value)),
    };
    numbers(s)
        .into_iter()
        .filter(|number| taken.get(number.at) == Some(&false))
        .map(|number| (number.at, read(number.value, number.scale)))
        .filter(|(_, c)| AIR_C.contains(c))
        .collect()
}

/// The number is what it is turned to now: "turned it up to 325", "now 325". "Was set to 250 the whole time" is not.
fn is_now(s: &Sentence, at: usize) -> bool {
    let clause = (0..at).rev().take_while(|before| s.mark(*before).is_none_or(|mark| !matches!(mark, ',' | ';' | '.')));
    let all = |at: usize| s.is(at, "heat-all-along") || s.is(at, "heat-was");
    let words: Vec<usize> = clause.collect();
    let turned = words.iter().any(|at| s.is(*at, "heat-set") || s.is(*at, "now") || s.is(*at, "heat-back"));
    turned && !words.iter().any(|at| all(*at)) && !s.is(at + 1, "heat-all-along")
}
