//! Thermometer readings: `breast 128, thigh 141, pit 335 at 14:05`, `58/64/165C`, a number alone.
//!
//! Owns the grammar only. Whether a reading is plausible, and the scale of a number without one, is for the room to say: it
//! knows the plan.

use super::ground::Ground;
use super::lexicon::Lexicon;
use super::problem::{Problem, READING_C};
use super::sentence::Sentence;
use super::shorthand::spelled_out;
use super::told::Told;
use super::when::{Lean, When, last_at, next_at, read_when};
use carvetime_core::plan::Moment;
use carvetime_core::quantity::{Temperature, Unit, celsius, fahrenheit};
use chrono::{NaiveTime, TimeDelta};
use serde::{Deserialize, Serialize};

/// Where a thermometer reads.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Place {
    /// Thickest part of the breast.
    Breast,
    /// Innermost thigh.
    Thigh,
    /// The air around the bird.
    Pit,
    /// Middle of the stuffing.
    Stuffing,
    /// Innermost part of a wing.
    Wing,
}

impl Place {
    /// All of them, in the order of a reading without words.
    pub const ALL: &'static [Self] = &[Self::Breast, Self::Thigh, Self::Pit, Self::Stuffing, Self::Wing];

    /// The stable name.
    pub fn name(self) -> &'static str {
        match self {
            Self::Breast => "breast",
            Self::Thigh => "thigh",
            Self::Pit => "pit",
            Self::Stuffing => "stuffing",
            Self::Wing => "wing",
        }
    }

    /// The place of that name.
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|place| place.name() == name)
    }
}

/// A scale of temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Scale {
    /// °F
    Fahrenheit,
    /// °C
    Celsius,
}

/// No oven that is on is cooler, on either scale.
const COOLEST_OVEN: f64 = 80.0;
/// Knobs go no further.
const HIGHEST_MARK: f64 = 12.0;
/// No oven in °C goes hotter.
const HOTTEST_CELSIUS_OVEN: f64 = 290.0;

/// One reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// Where; `None` for a number alone, which means whatever was asked for.
    pub place: Option<Place>,
    /// The number, finite.
    pub value: f64,
    /// Its scale, where it was written.
    pub scale: Option<Scale>,
}

impl Reading {
    /// The temperature, with `usual` for a number without a scale.
    pub fn temperature(&self, usual: Scale) -> Temperature {
        match self.scale.unwrap_or(usual) {
            Scale::Fahrenheit => fahrenheit(self.value),
            Scale::Celsius => celsius(self.value),
        }
    }
}

/// What was read, and when.
#[derive(Debug, Clone, PartialEq)]
pub struct Log {
    /// In the order told.
    pub readings: Vec<Reading>,
    /// When it was read; `None` means now.
    pub at: Option<Moment>,
}

/// Reads thermometer readings. `Ok(None)`: the text holds none.
///
/// # Errors
/// [`Problem`] for readings no thermometer gives, more numbers than places, or a time still to come.
pub fn read_log(text: &str, ground: &Ground) -> Result<Option<Log>, Problem> {
    // "The recipe says breast 165", "at the restaurant yesterday": no thermometer of this bird.
    if Told::of(text, ground.lexicon).says("read-elsewhere") {
        return Ok(None);
    }
    let spelled_out = spelled_out(text, ground.lexicon);
    let sentence = Sentence::read(spelled_out.as_deref().unwrap_or(text), ground.lexicon);
    // "Leg 2 of the flight is 140 min"
    let counted = |at: usize| sentence.of(at, "spot-").is_some() && sentence.whole(at + 1, 1..=9).is_some();
    if (0..sentence.len()).any(|at| counted(at) && sentence.is(at + 2, "number-of")) {
        return Ok(None);
    }
    let mut taken = vec![false; sentence.len()];
    let mut numbers = numbers(&sentence);
    let slashed = slashed(&sentence);
    let when = if slashed { None } else { read_when(&sentence, &mut taken, ground, Lean::Past) };
    let at = match when {
        Some(When::Moment(at)) => Some(at),
        Some(When::Hour(hour)) => Some(lately(ground, hour)?),
        Some(When::Day(_)) | None => ago(&sentence, ground, &mut taken),
    };
    let is_read = |n: &Number| !is_wanted(&sentence, n.at, ground.lexicon) && !is_denied(&sentence, n, ground);
    numbers.retain(|n| taken.get(n.at) == Some(&false) && is_read(n));
    // "140 then 98 then 112": one spot, and the last is what it reads.
    let in_turn =
        |two: &[Number]| matches!(two, [one, other] if (one.at..other.at).any(|at| sentence.is(at, "in-turn")));
    if !has_place(&sentence) && numbers.windows(2).any(in_turn) {
        numbers.drain(..numbers.len() - 1);
    }
    // "The oven is at 200 on 6": what the knob shows is no heat.
    let of_air = (0..sentence.len()).any(|at| place(&sentence, at) == Some(Place::Pit));
    let of_meat = (0..sentence.len()).any(|at| place(&sentence, at).is_some_and(|place| place != Place::Pit));
    if of_air && !of_meat && numbers.iter().any(|number| number.value >= COOLEST_OVEN) {
        numbers.retain(|number| number.value > HIGHEST_MARK || number.scale.is_some());
    }
    let readings = if !has_place(&sentence) {
        in_order(&numbers, ground.metric)
    } else {
        placed(&sentence, &numbers, ground.metric)
    };
    let mut readings = readings.ok_or(Problem::TooManyReadings)?;
    // "I set the oven to 350", wherever they have °C: that dial is the other one.
    let hot = |it: &&mut Reading| it.place == Some(Place::Pit) && it.scale.is_none() && it.value > HOTTEST_CELSIUS_OVEN;
    readings.iter_mut().filter(hot).filter(|_| ground.metric).for_each(|it| it.scale = Some(Scale::Fahrenheit));
    if readings.is_empty() {
        return Ok(None);
    }
    for reading in &readings {
        let in_celsius = match reading.scale {
            Some(Scale::Fahrenheit) => (reading.value - 32.0) / 1.8,
            _ => reading.value,
        };
        // Without a scale the number may be Fahrenheit: 900 is too much on either.
        let high = if reading.scale.is_none() { READING_C.1 * 1.8 + 32.0 } else { READING_C.1 };
        if !(READING_C.0..=high).contains(&in_celsius) {
            return Err(Problem::Reading { value: reading.value, scale: reading.scale });
        }
    }
    if let Some(at) = at.filter(|at| *at > ground.now + TimeDelta::minutes(10)) {
        return Err(Problem::Future(at));
    }
    Ok(Some(Log { readings, at: at.map(|at| at.min(ground.now)) }))
}

/// "Breast should be 165": what it has to reach is no reading of it.
fn is_wanted(s: &Sentence, at: usize, lexicon: &'static Lexicon) -> bool {
    is_led_by("wanted-degrees", s, at, lexicon)
}

/// "The breast is not at 165 yet", "until 165": it does not read that. "Almost 165" is no 165, though "almost 120" tells enough.
fn is_denied(s: &Sentence, number: &Number, ground: &Ground) -> bool {
    /// From here on almost is not there.
    const DONE_C: f64 = 73.5;
    let fahrenheit = number.scale.map_or(!ground.metric, |scale| scale == Scale::Fahrenheit);
    let celsius = if fahrenheit { (number.value - 32.0) / 1.8 } else { number.value };
    is_led_by("read-not", s, number.at, ground.lexicon)
        || celsius >= DONE_C && is_led_by("read-almost", s, number.at, ground.lexicon)
}

/// A phrase of that group ends right before it.
fn is_led_by(group: &str, s: &Sentence, at: usize, lexicon: &'static Lexicon) -> bool {
    const MOST_WORDS: usize = 5;
    (1..=MOST_WORDS.min(at)).any(|many| lexicon.talk(&lexicon.talk_words(s.quote(at - many, at - 1)).join(" "), group))
}

/// "Breast should be 165": a spot of meat, and every number is what it has to reach.
pub fn wants_degrees(text: &str, ground: &Ground) -> bool {
    // "The wings need 20 more" are no degrees of either scale, "die Füllung muss auf 200 Grad" is of an oven.
    const HOT: f64 = 50.0;
    const HOTTEST: [f64; 2] = [195.0, 95.0];
    let lexicon = ground.lexicon;
    let sentence = Sentence::read(text, lexicon);
    let celsius = |number: &Number| number.scale.map_or(ground.metric, |scale| scale == Scale::Celsius);
    let most = |number: &Number| HOTTEST[usize::from(celsius(number))];
    let numbers = numbers(&sentence);
    let meat = (0..sentence.len()).any(|at| place(&sentence, at).is_some_and(|place| place != Place::Pit));
    let hot =
        |number: &Number| (HOT..=most(number)).contains(&number.value) && is_wanted(&sentence, number.at, lexicon);
    meat && !numbers.is_empty() && numbers.iter().all(hot)
}

/// The moment of an hour that was read: within the last half day, else it is still to come.
fn lately(ground: &Ground, hour: NaiveTime) -> Result<Moment, Problem> {
    const HALF_A_DAY: TimeDelta = TimeDelta::hours(12);
    let at = last_at(ground, hour);
    if ground.now - at > HALF_A_DAY { Err(Problem::Future(next_at(ground, hour))) } else { Ok(at) }
}

/// A number that may be a temperature.
pub(super) struct Number {
    pub(super) at: usize,
    pub(super) value: f64,
    pub(super) scale: Option<Scale>,
}

pub(super) fn numbers(s: &Sentence) -> Vec<Number> {
    let mut numbers = Vec::new();
    for at in 0..s.len() {
        // "Oven is 275, not 325"
        if at.checked_sub(1).is_some_and(|before| s.is(before, "negation")) {
            continue;
        }
        // "30 mph gusts"
        if s.is(at + 1, "speed") {
            continue;
        }
        let (value, scale) = match s.amount(at).map(|amount| (amount.value(), amount.unit())) {
            Some((value, Some(Unit::Fahrenheit))) => (value, Some(Scale::Fahrenheit)),
            // A cold number with a small `c` was taken for cups.
            Some((value, Some(Unit::Celsius))) | Some((value, Some(Unit::Cup))) => (value, Some(Scale::Celsius)),
            Some((value, Some(Unit::Degree))) => (value, None),
            Some((_, Some(_))) => continue,
            _ => match s.number(at) {
                Some(value) => (value, scale_word(s, at + 1)),
                None => continue,
            },
        };
        numbers.push(Number { at, value, scale });
    }
    numbers
}

fn scale_word(s: &Sentence, at: usize) -> Option<Scale> {
    match s.of(at, "unit-")? {
        "fahrenheit" => Some(Scale::Fahrenheit),
        "celsius" => Some(Scale::Celsius),
        _ => None,
    }
}

/// `58/64/165C`: numbers with strokes between them and nothing else before.
fn slashed(s: &Sentence) -> bool {
    s.number(0).is_some() && s.mark(1) == Some('/')
        || s.raw(0).contains('/') && s.raw(0).bytes().all(|b| b.is_ascii_digit() || b == b'/')
}

fn has_place(s: &Sentence) -> bool {
    (0..s.len()).any(|at| place(s, at).is_some())
}

fn place(s: &Sentence, at: usize) -> Option<Place> {
    if s.is(at, "bird-turkey-breast") {
        return Some(Place::Breast);
    }
    s.of(at, "spot-").and_then(Place::from_name)
}

/// Breast, thigh, pit or wing in that order; one number alone stands for whatever was asked. A scale behind the last holds for all.
fn in_order(numbers: &[Number], metric: bool) -> Option<Vec<Reading>> {
    let last = numbers.last().and_then(|n| n.scale);
    let reading = |place, n: &Number| Reading { place, value: n.value, scale: n.scale.or(last) };
    match numbers {
        [] => Some(Vec::new()),
        [one] => Some(vec![reading(None, one)]),
        some if some.len() <= 3 => {
            let mut all: Vec<Reading> =
                some.iter().zip(Place::ALL).map(|(n, place)| reading(Some(*place), n)).collect();
            // No air that cooks is cooler than boiling water: the third spot is then the wing. And meat is about as warm in one place as in another: 47/55/143 are °C, the last of the air.
            let thigh = all.get(1).map_or(0.0, |thigh| thigh.value);
            let like = |third: &&mut Reading| {
                third.value <= boiling(third.scale, metric) && (third.value - thigh).abs() <= 30.0
            };
            if let Some(third) = all.get_mut(2).filter(like) {
                third.place = Some(Place::Wing);
            }
            Some(all)
        }
        _ => None,
    }
}

/// No air that cooks is cooler than boiling water, and no meat is hotter.
fn boiling(scale: Option<Scale>, metric: bool) -> f64 {
    match scale {
        Some(Scale::Celsius) => 100.0,
        None if metric => 100.0,
        _ => 212.0,
    }
}

/// Each number with the place beside it: in pairs where there is one for each, whichever of the two comes first; else behind the place
/// if the sentence starts with one, else before it.
fn placed(s: &Sentence, numbers: &[Number], metric: bool) -> Option<Vec<Reading>> {
    let last = numbers.last().and_then(|n| n.scale);
    let places: Vec<(usize, Place)> = (0..s.len()).filter_map(|at| Some((at, place(s, at)?))).collect();
    let places = if is_headed(s, numbers, &places, metric) { places.get(1..)? } else { &places[..] };
    let first_place = places.first().map(|(at, _)| *at)?;
    let reading = |place, n: &Number| Reading { place: Some(place), value: n.value, scale: n.scale.or(last) };
    let unnamed = numbers.iter().take_while(|n| n.at < first_place).count();
    let all_but_breast = places.iter().all(|(_, place)| *place != Place::Breast);
    let (mut readings, numbers, place_first) = match numbers {
        // "160 and 171, wing 168": the two that everyone reads need no names.
        [breast, thigh, rest @ ..] if unnamed == 2 && rest.len() == places.len() => {
            (vec![reading(Place::Breast, breast), reading(Place::Thigh, thigh)], rest, true)
        }
        // "166 and 174 thigh, wing 170": the one without a name is the breast's.
        [breast, rest @ ..] if unnamed == 2 && rest.len() == places.len() && all_but_breast => {
            (vec![reading(Place::Breast, breast)], rest, false)
        }
        all => (Vec::new(), all, unnamed == 0),
    };
    if let Some(pairs) = pairs(numbers, places) {
        readings.extend(pairs.into_iter().map(|(place, n)| reading(place, n)));
        return Some(readings);
    }
    for n in numbers {
        let beside = if place_first {
            places.iter().rev().find(|(at, _)| *at < n.at)
        } else {
            places.iter().find(|(at, _)| *at > n.at)
        };
        let (_, place) = beside?;
        readings.push(reading(*place, n));
    }
    Some(readings)
}

/// "Smoker bird: 152 breast, 165 thigh": what stands before everything is whose numbers they are, and the first is no air's. Were it
/// read as one, each number would slide to the next place, and the cold breast be the hot thigh.
fn is_headed(s: &Sentence, numbers: &[Number], places: &[(usize, Place)], metric: bool) -> bool {
    let ([first, ..], [(head, Place::Pit), rest @ ..]) = (numbers, places) else { return false };
    let before = |n: &Number, at: usize| n.at < at && !(n.at..at).any(|at| s.mark(at).is_some());
    numbers.len() == rest.len()
        && *head < first.at
        && first.value <= boiling(first.scale, metric)
        && numbers.iter().zip(rest).all(|(n, (at, _))| before(n, *at))
        && pairs(numbers, rest).is_some()
}

/// Numbers and places two by two, in the order written. `None`: not every two of them are one of each.
fn pairs<'n>(numbers: &'n [Number], places: &[(usize, Place)]) -> Option<Vec<(Place, &'n Number)>> {
    if numbers.len() != places.len() {
        return None;
    }
    let both = numbers.iter().zip(places);
    // The n-th number and the n-th place are a pair where neither stands behind the next pair.
    let ends: Vec<(usize, usize)> = both.clone().map(|(n, (at, _))| (n.at.min(*at), n.at.max(*at))).collect();
    let apart = ends.windows(2).all(|two| matches!(two, [one, other] if one.1 < other.0));
    apart.then(|| both.map(|(n, (_, place))| (*place, n)).collect())
}

/// `10 minutes ago`.
fn ago(s: &Sentence, ground: &Ground, taken: &mut [bool]) -> Option<Moment> {
    let beside = |at: usize| s.is(at + 1, "ago") || at.checked_sub(1).is_some_and(|before| s.is(before, "ago"));
    let (at, span) = (0..s.len()).filter(|at| beside(*at)).find_map(|at| Some((at, s.amount(at)?.span()?)))?;
    let span = Some(span).filter(|span| *span >= TimeDelta::zero() && *span < TimeDelta::days(2))?;
    super::when::take(taken, at, at);
    Some(ground.now - span)
}
