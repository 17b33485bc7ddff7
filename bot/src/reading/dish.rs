//! Dishes beside the bird: "add stuffing in the oven 45 min at 375", "add trifle in the fridge overnight", "remove the gravy".
//!
//! Owns the reading of what follows the word that adds or removes. What a dish is called is the text before the first heat,
//! fridge, number or time. How many shelves a fridge has is read here too.

use super::put_on::read_put_on;
use super::sentence::Sentence;
use super::when::{Lean, When, read_when};
use super::{Ground, Lexicon};
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};
use serde::{Deserialize, Serialize};
use std::ops::RangeInclusive;

/// Longest name kept, in characters.
const LONGEST_NAME: usize = 40;
/// Shortest and longest time over which a dish is planned, minutes.
pub const DISH_MINUTES: RangeInclusive<i64> = 1..=720;
/// Shortest and longest time a dish is planned to wait in the fridge, minutes: cooked, it keeps three days.
const COLD_MINUTES: RangeInclusive<i64> = 15..=2880;
/// Shelves a fridge may have.
pub const SHELVES: RangeInclusive<u32> = 1..=12;
/// Settings, °F: a warming drawer to a pizza oven.
const SETTING_F: RangeInclusive<f64> = 150.0..=550.0;
/// A bare number from here on is °F, whatever the room's units.
const SURELY_F: f64 = 290.0;

/// A dish as it was told and is stored.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WishDish {
    /// What it is called. Untrusted text.
    pub name: String,
    /// `oven`, `smoker`, `stove`; nothing: it is only made.
    pub heat: Option<String>,
    /// Setting, °C.
    pub setting_c: Option<f64>,
    /// From the first move to ready.
    pub minutes: u32,
    /// Made ahead.
    pub ahead: bool,
    /// It must be 165 °F inside, as stuffing must.
    #[serde(default)]
    pub hot_through: bool,
    /// It waits cold for the table, at least so many minutes.
    #[serde(default)]
    pub cold_min: Option<u32>,
    /// Room it takes in the fridge, in halves of a shelf, where that was said.
    #[serde(default)]
    pub halves: Option<u8>,
    /// It waits in a cooler with ice, not in the fridge.
    #[serde(default)]
    pub iced: bool,
    /// It may be made early and is kept hot.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub early: bool,
    /// When it is to be made, as far as somebody said so. The plan says when it has to be.
    #[serde(skip)]
    pub start: Option<When>,
    /// That was the hour by which it is ready.
    #[serde(skip)]
    pub ready: bool,
    /// Who added it, where that is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<crate::room::PersonId>,
}

/// What is wanted of a dish.
#[derive(Debug, Clone, PartialEq)]
pub enum DishOrder {
    /// A dish more, and since when it is to be in the fridge, where an hour or a day was said for that.
    Add(WishDish, Option<When>),
    /// The dish of that name goes.
    Remove(String),
}

/// Why a dish can't be read.
#[derive(Debug, Clone, PartialEq)]
pub enum DishProblem {
    /// Nothing says what it is.
    NoName,
    /// Nothing says how long it takes; what it is called is known.
    NoTime(String),
    /// No dish takes so long.
    Time(String),
    /// Nothing waits so long in the fridge, or so short.
    Cold(String),
    /// No oven is set so.
    Setting(Temperature),
}

/// Reads what a text says of a dish. `None`: it neither adds nor removes one.
pub fn read_dish(text: &str, ground: &Ground) -> Option<Result<DishOrder, DishProblem>> {
    let text = text.trim();
    let (verb, rest) = text.split_once(char::is_whitespace).unwrap_or((text, ""));
    let verb = super::fold(verb.trim_matches([':', ',']));
    let rest = rest.trim();
    if ground.lexicon.talk(&verb, "dish-remove") {
        let name = clip(without_article(rest, ground));
        return Some(if name.is_empty() { Err(DishProblem::NoName) } else { Ok(DishOrder::Remove(name)) });
    }
    if ground.lexicon.talk(&verb, "dish-add") {
        // "Metti il forno a 180" sets the oven.
        return Some(read_added(rest, ground))
            .filter(|read| !matches!(read, Err(DishProblem::NoName) if is_heat_only(rest, ground)));
    }
    framed(text, ground).or_else(|| {
        let told = beside(&verb, rest, ground).or_else(|| super::read_brought(text, ground));
        told.or_else(|| read_put_on(text, ground)).map(Ok)
    })
}

/// "Füge Füllung im Ofen 45 min bei 190 hinzu", "rolls in the oven 15 min at 350 too": the word that adds comes last. Without one before
/// it, only what is a whole dish is one.
fn framed(text: &str, ground: &Ground) -> Option<Result<DishOrder, DishProblem>> {
    let talks = |word: &str, group: &str| ground.lexicon.talk(&super::fold(word), group);
    let (head, last) = text.trim_end_matches(['.', '!']).rsplit_once(char::is_whitespace)?;
    if text.contains(['?', '¿']) || !talks(last, "dish-add-last") {
        return None;
    }
    let mut rest = head.trim_end_matches([',', ' ']);
    let mut led = false;
    while let Some((first, behind)) = rest.split_once(char::is_whitespace) {
        if !talks(first, "dish-add-first") {
            break;
        }
        (rest, led) = (behind, true);
    }
    if led { Some(read_added(rest, ground)) } else { told_whole(rest, ground).map(Ok) }
}

/// A heat and its setting, and no time that a dish would take.
fn is_heat_only(text: &str, ground: &Ground) -> bool {
    let s = Sentence::read(text, ground.lexicon);
    let timed = (0..s.len()).any(|at| s.amount(at).is_some_and(|amount| amount.span().is_some()));
    !timed && (0..s.len()).any(|at| heat(&s, at).is_some())
}

/// "Add stuffing 45 min at 375, sweet potatoes 1 hr at 400 and green beans 30 min": a text for each, where each has its own time.
pub fn each_dish(text: &str, ground: &Ground) -> Vec<String> {
    let Some((verb, rest)) = text.trim().split_once(char::is_whitespace) else { return Vec::new() };
    let folded = super::fold(verb.trim_matches([':', ',']));
    if !["dish-add", "dish-and", "dish-put"].iter().any(|group| ground.lexicon.talk(&folded, group)) {
        return Vec::new();
    }
    let s = Sentence::read(rest, ground.lexicon);
    let cuts = |at: usize| matches!(s.mark(at), Some(',' | ';' | '\n')) || s.is(at, "number-and");
    let timed =
        |from: usize, to: usize| (from..to).any(|at| s.amount(at).is_some_and(|amount| amount.span().is_some()));
    let mut parts = Vec::new();
    let mut from = 0;
    for at in (0..s.len()).filter(|at| cuts(*at)) {
        // "Mac and cheese 1 hr": what has no time yet goes on behind the word.
        let named = || at + 1 < s.len() && read_added(s.quote(at + 1, s.len() - 1), ground).is_ok();
        if timed(from, at) && timed(at + 1, s.len()) && named() {
            parts.push(s.quote(from, at - 1));
            from = at + 1;
        }
    }
    if from < s.len() {
        parts.push(s.quote(from, s.len() - 1));
    }
    parts.into_iter().map(|part| format!("{verb} {part}")).collect()
}

/// Whether a text tells of one more dish without a word that adds one: "and rolls 15 min at 375", "I'll bring rolls, 15 min at 375".
pub fn is_dish_beside(text: &str, ground: &Ground) -> bool {
    let Some((verb, rest)) = text.trim().split_once(char::is_whitespace) else { return false };
    beside(&super::fold(verb.trim_matches([':', ','])), rest, ground).is_some()
        || super::read_brought(text, ground).is_some()
        || read_put_on(text, ground).is_some()
}

/// Whether a text adds a dish with its heat and its time, and says so: "add rolls in the oven 15 min at 375".
///
/// What may as well be said to somebody in the kitchen, "put the rolls in 15 min at 375", is none.
pub fn is_dish_order(text: &str, ground: &Ground) -> bool {
    read_put_on(text, ground).is_none()
        && matches!(read_dish(text, ground), Some(Ok(DishOrder::Add(dish, _))) if dish.heat.is_some())
}

/// It is one only with its heat and its time, and where nothing of the bird is named and nothing asked.
fn beside(verb: &str, rest: &str, ground: &Ground) -> Option<DishOrder> {
    if !ground.lexicon.talk(verb, "dish-and") || rest.contains('?') {
        return None;
    }
    told_whole(rest, ground)
}

/// A dish with its heat and its time, where nothing of the bird is named.
pub(super) fn told_whole(rest: &str, ground: &Ground) -> Option<DishOrder> {
    let s = Sentence::read(rest, ground.lexicon);
    // Stuffing with an oven named is a dish of its own.
    let heated = (0..s.len()).any(|at| heat(&s, at).is_some());
    let dish = |spot: &str| spot == "pit" || spot == "stuffing" && heated;
    let of_bird = |at: usize| s.of(at, "bird-").is_some() || s.of(at, "spot-").is_some_and(|spot| !dish(spot));
    let of_table = |at: usize| s.of(at, "meal-").is_some() || s.is(at, "people");
    if (0..s.len()).any(|at| of_bird(at) || of_table(at)) {
        return None;
    }
    read_added(rest, ground).ok().filter(|order| matches!(order, DishOrder::Add(dish, _) if dish.heat.is_some()))
}

/// Whether a clause beside a bird is a dish with its own heat: what it is called is no word of the plan, and it has a temperature.
pub(super) fn names_a_dish(text: &str, ground: &Ground) -> bool {
    const OF_FOOD: [&str; 3] = ["food-", "ask-stuff", "number-and"];
    let s = Sentence::read(text, ground.lexicon);
    let of_table = |at: usize| s.is(at, "people") || s.of(at, "bird-").is_some() || s.of(at, "meal-").is_some();
    let has_heat = (0..s.len()).any(|at| setting(&s, at, ground).is_some());
    if !has_heat || (0..s.len()).any(of_table) {
        return false;
    }
    let stops = |at: &usize| s.number(*at).is_some() || s.amount(*at).is_some() || heat(&s, *at).is_some();
    let end = (0..s.len()).find(stops).unwrap_or(s.len());
    let link = |at: &usize| ground.lexicon.talk(&super::fold(s.raw(*at)), "dish-link") || s.is(*at, "at");
    let of_food = |at: usize| {
        let stuffing = s.is(at, "spot-stuffing") || s.is(at, "food-stuffing");
        let meanings = s.meanings(at);
        stuffing || meanings.iter().all(|meaning| OF_FOOD.iter().any(|group| meaning.starts_with(group)))
    };
    // "We'll have the oven at 350" is the bird's: a dish in an oven has its minutes, or is known for food.
    let timed = (0..s.len()).any(|at| s.amount(at).is_some_and(|amount| amount.span().is_some()));
    let known = (0..end).any(|at| s.of(at, "food-").is_some() || s.is(at, "spot-stuffing"));
    let in_oven = (0..s.len()).any(|at| heat(&s, at).is_some());
    let mut name = (0..end).filter(|at| !link(at)).peekable();
    let named = name.peek().is_some() && name.all(|at| s.mark(at).is_none() && of_food(at));
    named && (timed || known || !in_oven)
}

fn read_added(text: &str, ground: &Ground) -> Result<DishOrder, DishProblem> {
    let text = without_article(text, ground);
    let s = Sentence::read(text, ground.lexicon);
    let is_heat = |at: usize| heat(&s, at).is_some();
    let says_when = |at: usize| s.is(at, "ahead") || s.is(at, FRIDGE) || at > 0 && s.is(at, "ask-overnight");
    let stops = |at: usize| is_heat(at) || s.number(at).is_some() || s.amount(at).is_some() || says_when(at);
    let before = (0..s.len()).find(|at| says_before(&s, *at, ground));
    let mut end = (0..s.len())
        .find(|at| stops(*at) || Some(*at) == before || matches!(s.mark(*at), Some(',' | ';' | ':')))
        .unwrap_or(s.len());
    let links = |at: usize| ground.lexicon.talk(&super::fold(s.raw(at)), "dish-link");
    while end > 0 && links(end - 1) {
        end -= 1;
    }
    let name = if end == 0 { led_name(&s, ground) } else { as_written(text, s.quote(0, end - 1), ground) };
    if name.is_empty() {
        return Err(DishProblem::NoName);
    }
    // "Before the bird": it is out of the way by then, and waits cold.
    let ahead = before.is_some() || (end..s.len()).any(|at| s.is(at, "ahead") || s.is(at, "ask-overnight"));
    let (takes, cold, from) = times(&s, ground, ahead);
    let fridge = (end..s.len()).any(|at| s.is(at, FRIDGE));
    let start = (!fridge).then(|| start(&s, end, ground)).flatten();
    // What is only put in the fridge takes no time to speak of.
    let takes = takes.or(fridge.then_some(0)).ok_or_else(|| DishProblem::NoTime(name.clone()))?;
    if !(DISH_MINUTES.contains(&takes) || fridge && takes == 0) {
        return Err(DishProblem::Time(name));
    }
    if cold.is_some_and(|cold| !COLD_MINUTES.contains(&cold)) {
        return Err(DishProblem::Cold(name));
    }
    // In the fridge, and nobody says how long: overnight.
    let ahead = ahead || fridge && cold.is_none() && from.is_none();
    let setting = (end..s.len()).find_map(|at| setting(&s, at, ground)).or_else(|| no_setting(&s, end, ground));
    if let Some(setting) = setting.filter(|setting| !SETTING_F.contains(&in_fahrenheit(*setting))) {
        return Err(DishProblem::Setting(setting));
    }
    let heat = (end..s.len()).find_map(|at| heat(&s, at)).or(setting.map(|_| "oven"));
    let dish = WishDish {
        name,
        heat: heat.map(str::to_owned),
        setting_c: setting.map(in_celsius),
        minutes: u32::try_from(takes).unwrap_or(60),
        ahead,
        hot_through: (0..end).any(|at| s.is(at, "food-stuffing") || s.is(at, "spot-stuffing")),
        cold_min: cold.and_then(|cold| u32::try_from(cold).ok()),
        halves: (end..s.len()).find_map(|at| halves(&s, at)),
        iced: false,
        early: false,
        start,
        ready: super::Told::of(text, ground.lexicon).says("dish-ready-by"),
        by: None,
    };
    Ok(DishOrder::Add(dish, from))
}

/// "Before the turkey", of when a dish is made.
fn says_before(s: &Sentence, at: usize, ground: &Ground) -> bool {
    let last = |many: usize| Some(at + many).filter(|last| *last < s.len());
    (1..=3).filter_map(last).any(|last| ground.lexicon.talk(&super::fold(s.quote(at, last)), "dish-before"))
}

/// The hour or the day behind its name: "at 9 am". Times it takes and settings are none.
fn start(s: &Sentence, end: usize, ground: &Ground) -> Option<When> {
    let measured = |at: usize| s.amount(at).is_some() || setting(s, at, ground).is_some();
    let mut taken: Vec<bool> = (0..s.len()).map(|at| at < end || measured(at)).collect();
    read_when(s, &mut taken, ground, Lean::Meal)
}

/// What the fridge is called among the meanings.
const FRIDGE: &str = "place-fridge";

/// Minutes to make it, minutes in the fridge, and since when it is to be there. A time behind the fridge is the fridge's, one before
/// it the dish's; a single one before it is the fridge's too, unless a night says how long that is.
fn times(s: &Sentence, ground: &Ground, ahead: bool) -> (Option<i64>, Option<i64>, Option<When>) {
    let minutes = |at: usize| Some((at, s.amount(at)?.span()?.num_minutes()));
    let spans: Vec<(usize, i64)> = (0..s.len()).filter_map(minutes).collect();
    let Some(fridge) = s.find(0, FRIDGE) else { return (spans.first().map(|(_, span)| *span), None, None) };
    let behind = spans.iter().find(|(at, _)| *at > fridge);
    let before = spans.iter().rev().find(|(at, _)| *at < fridge);
    let mut taken = vec![false; s.len()];
    taken.iter_mut().take(fridge + 1).for_each(|taken| *taken = true);
    let from = if behind.is_none() { read_when(s, &mut taken, ground, Lean::Meal) } else { None };
    let alone = spans.len() == 1 && !ahead && from.is_none();
    let cold = behind.or(before.filter(|_| alone || spans.len() > 1 && from.is_none() && !ahead));
    let takes = spans.iter().find(|span| Some(*span) != cold);
    (takes.map(|(_, span)| *span), cold.map(|(_, span)| *span), from)
}

/// Room in halves of a shelf: "one shelf", "half a shelf".
fn halves(s: &Sentence, at: usize) -> Option<u8> {
    if !s.is(at, "shelf") {
        return None;
    }
    let half = (at.saturating_sub(2)..at).any(|before| s.is(before, "number-half"));
    let told = if half { 0.5 } else { count(s, at).unwrap_or(1.0) };
    Some((told * 2.0).round().clamp(1.0, f64::from(*SHELVES.end()) * 2.0) as u8)
}

/// The number before a word: "3 shelves", "three free shelves".
fn count(s: &Sentence, at: usize) -> Option<f64> {
    (at.saturating_sub(2)..at).rev().find_map(|before| s.number(before))
}

/// "My fridge has 3 shelves": how many there are for a dinner. `None`: the text says nothing of it, or asks.
pub fn read_shelves(text: &str, lexicon: &'static Lexicon) -> Option<u8> {
    let s = Sentence::read(text, lexicon);
    let shelf = s.find(0, "shelf").filter(|_| s.find(0, FRIDGE).is_some() && !text.contains('?'))?;
    let told = count(&s, shelf).filter(|told| told.fract() == 0.0)?;
    SHELVES.contains(&(told as u32)).then_some(told as u8)
}

/// What a dish is called that these words name.
pub(super) fn name(text: &str, ground: &Ground) -> String {
    clip(without_article(text.trim(), ground))
}

/// "the gravy" is gravy, "de la purée" purée, "l'ail" ail.
fn without_article<'a>(text: &'a str, ground: &Ground) -> &'a str {
    let mut text = text;
    loop {
        let elided = text.split_once(['\'', '’']).filter(|(first, _)| ground.lexicon.elides(first));
        let (first, rest) = match elided {
            Some((first, rest)) => (format!("{first}'"), rest),
            None => match text.split_once(char::is_whitespace) {
                Some((first, rest)) => (first.to_owned(), rest.trim_start()),
                None => return text,
            },
        };
        let first = super::fold(&first);
        let leads = ["dish-link", "dish-doing"].iter().any(|group| ground.lexicon.talk(&first, group));
        if rest.is_empty() || !leads {
            return text;
        }
        text = rest;
    }
}

pub(super) fn heat(s: &Sentence, at: usize) -> Option<&'static str> {
    if s.is(at, "heat-stove") {
        return Some("stove");
    }
    Some(if s.of(at, "cooker-")? == "smoker" { "smoker" } else { "oven" })
}

/// Whether an oven is set so for a dish.
pub fn is_dish_setting(setting: Temperature) -> bool {
    SETTING_F.contains(&in_fahrenheit(setting))
}

/// A temperature, or a bare number that can only be one.
pub(super) fn setting(s: &Sentence, at: usize, ground: &Ground) -> Option<Temperature> {
    if let Some(temperature) = s.amount(at).and_then(|amount| amount.temperature()) {
        return Some(temperature);
    }
    let degrees = || s.amount_in(at, carvetime_core::quantity::Unit::Degree);
    let number = s.number(at).or_else(degrees).filter(|number| (65.0..=600.0).contains(number))?;
    let metric = ground.metric && number < SURELY_F;
    Some(if metric { celsius(number) } else { fahrenheit(number) })
}

/// What the cook wrote for the words of a sentence's beginning, where slips were mended: leeks are no leaks. Without the words that lead on.
fn as_written(text: &str, mended: &str, ground: &Ground) -> String {
    let same = |(own, told): &(&str, &str)| {
        let own = super::fold(own);
        own == super::fold(told) || ground.lexicon.corrected(&own) == Some(*told)
    };
    let told: Vec<&str> = words(mended).collect();
    let own: Vec<&str> = words(text).take(told.len()).collect();
    let end = own.last().map(|last| last.as_ptr() as usize - text.as_ptr() as usize + last.len());
    let own = end.filter(|_| own.len() == told.len() && own.iter().copied().zip(told).all(|pair| same(&pair)));
    clip(without_tail(own.and_then(|end| text.get(..end)).unwrap_or(mended), ground))
}

fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !(c.is_alphabetic() || super::fold::is_mark(c))).filter(|word| !word.is_empty())
}

/// "Pie that" is pie, "turkey in" turkey.
fn without_tail<'t>(mut text: &'t str, ground: &Ground) -> &'t str {
    while let Some((before, last)) = text.trim_end().rsplit_once(char::is_whitespace) {
        let last = super::fold(last.trim_matches(','));
        if !["dish-link", "dish-tail"].iter().any(|group| ground.lexicon.talk(&last, group)) {
            break;
        }
        text = before;
    }
    text
}

/// A bird in a phrase of its heat, as one more dish: "peru no forno" is peru.
fn led_name(s: &Sentence, ground: &Ground) -> String {
    let Some((first, _)) = s.raw(0).split_once(char::is_whitespace) else { return String::new() };
    let bird = Sentence::read(first, ground.lexicon).of(0, "bird-").is_some();
    if bird && heat(s, 0).is_some() { clip(first) } else { String::new() }
}

/// "At 1000", "at 20": a number said of an oven that no oven has, and no hour.
fn no_setting(s: &Sentence, end: usize, ground: &Ground) -> Option<Temperature> {
    let in_oven = (end..s.len()).any(|at| heat(s, at) == Some("oven"));
    let hours = if ground.metric { 24.0 } else { 12.0 };
    let said = |at: usize| {
        let number = s.number(at).filter(|_| s.is(at - 1, "at") || talks_link(s, at - 1, ground))?;
        let clock = s.mark(at + 1) == Some(':') || s.of(at + 1, "part-").is_some() || s.is(at + 1, "oclock");
        (number > hours && !clock).then_some(number)
    };
    let number = (end.max(1)..s.len()).filter(|_| in_oven).find_map(said)?;
    Some(if ground.metric { celsius(number) } else { fahrenheit(number) })
}

fn talks_link(s: &Sentence, at: usize, ground: &Ground) -> bool {
    ground.lexicon.talk(&super::fold(s.raw(at)), "dish-link")
}

fn clip(text: &str) -> String {
    text.trim_matches(|c: char| c.is_whitespace() || ",;:.".contains(c)).chars().take(LONGEST_NAME).collect()
}

#[cfg(test)]
#[allow(clippy::panic)]
mod tests {
    use super::*;
    use chrono::{TimeZone, Utc};
    use chrono_tz::America::Chicago;

    fn read(tag: &str, text: &str) -> Option<Result<DishOrder, DishProblem>> {
        let now = Utc.with_ymd_and_hms(2027, 11, 20, 12, 0, 0).single().unwrap_or_default();
        read_dish(text, &Ground::new(tag, tag != "en", Chicago, now))
    }

    #[test]
    fn dishes_are_read_as_people_tell_them() {
        let table = [
            ("en", "add stuffing in the oven 45 min at 375", "stuffing", Some("oven"), Some(375.0), 45, false),
            ("en", "add mashed potatoes on the stove 40 min", "mashed potatoes", Some("stove"), None, 40, false),
            ("en", "add mac and cheese, oven 350F, 1 h", "mac and cheese", Some("oven"), Some(350.0), 60, false),
            ("en", "add cranberry sauce 20 min the day before", "cranberry sauce", None, None, 20, true),
            ("en", "add corn in the smoker for 30 minutes", "corn", Some("smoker"), None, 30, false),
            ("es", "añade relleno al horno 45 min a 190", "relleno", Some("oven"), Some(374.0), 45, false),
            ("es", "añadir puré 30 min", "puré", None, None, 30, false),
        ];
        for (tag, text, name, heat, setting_f, minutes, ahead) in table {
            let Some(Ok(DishOrder::Add(dish, None))) = read(tag, text) else { panic!("{text}: {:?}", read(tag, text)) };
            let f = dish.setting_c.map(|c| in_fahrenheit(celsius(c)).round());
            let read = (dish.name.as_str(), dish.heat.as_deref(), f, dish.minutes, dish.ahead);
            assert_eq!(read, (name, heat, setting_f, minutes, ahead), "{text}");
        }
    }

    #[test]
    fn stuffing_is_known_to_need_heat_through() {
        let hot = |text| matches!(read("en", text), Some(Ok(DishOrder::Add(dish, _))) if dish.hot_through);
        assert!(hot("add stuffing in the oven 45 min at 375") && !hot("add rolls in the oven 10 min"));
    }

    #[test]
    fn what_waits_in_the_fridge_is_read_with_its_time_and_its_room() {
        // Minutes to make it, in the fridge, overnight, halves of a shelf.
        for (tag, text, name, minutes, cold, ahead, halves) in [
            ("en", "add cranberry sauce in the fridge overnight", "cranberry sauce", 0, None, true, None),
            ("en", "add trifle in the fridge 6 h before dinner, one shelf", "trifle", 0, Some(360), false, Some(2)),
            ("en", "add trifle, 6 h in the fridge, two shelves", "trifle", 0, Some(360), false, Some(4)),
            ("en", "add jello 20 min on the stove, 4 h in the fridge", "jello", 20, Some(240), false, None),
            ("en", "add pie 40 min the day before, in the fridge, half a shelf", "pie", 40, None, true, Some(1)),
            ("en", "add beer in the fridge", "beer", 0, None, true, None),
            ("es", "añade flan en la nevera 5 horas, media balda", "flan", 0, Some(300), false, Some(1)),
            ("de", "dazu Tiramisu im Kühlschrank über Nacht, ein Fach", "Tiramisu", 0, None, true, Some(2)),
            ("fr", "ajoute mousse au frigo 3 h, une étagère", "mousse", 0, Some(180), false, Some(2)),
            ("pt", "inclui pavê na geladeira 6 horas", "pavê", 0, Some(360), false, None),
            ("it", "aggiungi tiramisù in frigo tutta la notte, due ripiani", "tiramisù", 0, None, true, Some(4)),
        ] {
            let Some(Ok(DishOrder::Add(dish, None))) = read(tag, text) else { panic!("{text}: {:?}", read(tag, text)) };
            let read = (dish.name.as_str(), dish.minutes, dish.cold_min, dish.ahead, dish.halves);
            assert_eq!(read, (name, minutes, cold, ahead, halves), "{text}");
        }
    }

    #[test]
    fn an_hour_since_when_it_is_in_the_fridge_is_kept_for_the_dinner_to_settle() {
        for text in ["add trifle in the fridge from wednesday 8 pm", "add trifle 30 min, in the fridge from noon"] {
            let Some(Ok(DishOrder::Add(dish, Some(_)))) = read("en", text) else { panic!("{:?}", read("en", text)) };
            assert!(!dish.ahead && dish.cold_min.is_none(), "{text}");
        }
        assert_eq!(read("en", "add ham in the fridge 9 days"), Some(Err(DishProblem::Cold("ham".into()))));
    }

    #[test]
    fn the_shelves_of_a_fridge_are_read() {
        for (tag, text, shelves) in [
            ("en", "my fridge has 3 shelves", Some(3)),
            ("en", "two shelves free in the fridge", Some(2)),
            ("en", "does a turkey fit on 2 shelves of my fridge?", None),
            ("en", "my fridge has shelves", None),
            ("es", "mi nevera tiene 3 baldas", Some(3)),
            ("de", "mein Kühlschrank hat 3 Fächer", Some(3)),
            ("fr", "mon frigo a 3 étagères", Some(3)),
            ("pt", "minha geladeira tem 3 prateleiras", Some(3)),
            ("it", "il mio frigo ha 3 ripiani", Some(3)),
        ] {
            assert_eq!(read_shelves(text, Lexicon::of(tag)), shelves, "{text}");
        }
    }

    #[test]
    fn what_is_missing_or_wrong_is_named() {
        assert_eq!(read("en", "add"), Some(Err(DishProblem::NoName)));
        assert_eq!(read("en", "add 45 min"), Some(Err(DishProblem::NoName)));
        assert_eq!(read("en", "add gravy"), Some(Err(DishProblem::NoTime("gravy".into()))));
        assert_eq!(read("en", "add gravy 20 hours"), Some(Err(DishProblem::Time("gravy".into()))));
        assert!(matches!(read("en", "add rolls oven 10 min at 600F"), Some(Err(DishProblem::Setting(_)))));
        assert_eq!(read("en", "remove the gravy"), Some(Ok(DishOrder::Remove("gravy".into()))));
        assert_eq!(read("en", "14 lb turkey thursday 5 pm"), None);
    }
}
