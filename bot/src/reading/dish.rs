//! Dishes beside the bird: "add stuffing in the oven 45 min at 375", "remove the gravy".
//!
//! Owns the reading of what follows the word that adds or removes. What a dish is called is the text before the first heat,
//! number or time.

use super::Ground;
use super::sentence::Sentence;
use carvetime_core::quantity::{Temperature, celsius, fahrenheit, in_celsius, in_fahrenheit};
use serde::{Deserialize, Serialize};

/// Longest name kept, in characters.
const LONGEST_NAME: usize = 40;
/// Shortest and longest time over which a dish is planned, minutes.
const MINUTES: std::ops::RangeInclusive<i64> = 1..=720;
/// Settings, °F: a warming drawer to a pizza oven.
const SETTING_F: std::ops::RangeInclusive<f64> = 150.0..=550.0;
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
}

/// What is wanted of a dish.
#[derive(Debug, Clone, PartialEq)]
pub enum DishOrder {
    /// A dish more.
    Add(WishDish),
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
    ground.lexicon.talk(&verb, "dish-add").then(|| read_added(rest, ground).map(DishOrder::Add))
}

fn read_added(text: &str, ground: &Ground) -> Result<WishDish, DishProblem> {
    let s = Sentence::read(without_article(text, ground), ground.lexicon);
    let is_heat = |at: usize| heat(&s, at).is_some();
    let stops = |at: usize| is_heat(at) || s.number(at).is_some() || s.amount(at).is_some() || s.is(at, "ahead");
    let mut end = (0..s.len()).find(|at| stops(*at) || matches!(s.mark(*at), Some(',' | ';' | ':'))).unwrap_or(s.len());
    let links = |at: usize| ground.lexicon.talk(&super::fold(s.raw(at)), "dish-link");
    while end > 0 && links(end - 1) {
        end -= 1;
    }
    let name = if end == 0 { String::new() } else { clip(s.quote(0, end - 1)) };
    if name.is_empty() {
        return Err(DishProblem::NoName);
    }
    let span = (0..s.len()).find_map(|at| s.amount(at)?.span());
    let minutes = span.ok_or_else(|| DishProblem::NoTime(name.clone()))?.num_minutes();
    if !MINUTES.contains(&minutes) {
        return Err(DishProblem::Time(name));
    }
    let setting = (end..s.len()).find_map(|at| setting(&s, at, ground));
    if let Some(setting) = setting.filter(|setting| !SETTING_F.contains(&in_fahrenheit(*setting))) {
        return Err(DishProblem::Setting(setting));
    }
    let heat = (end..s.len()).find_map(|at| heat(&s, at)).or(setting.map(|_| "oven"));
    Ok(WishDish {
        name,
        heat: heat.map(str::to_owned),
        setting_c: setting.map(in_celsius),
        minutes: u32::try_from(minutes).unwrap_or(60),
        ahead: (end..s.len()).any(|at| s.is(at, "ahead")),
        hot_through: (0..end).any(|at| s.is(at, "food-stuffing") || s.is(at, "spot-stuffing")),
    })
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
        if rest.is_empty() || !ground.lexicon.talk(&super::fold(&first), "dish-link") {
            return text;
        }
        text = rest;
    }
}

fn heat(s: &Sentence, at: usize) -> Option<&'static str> {
    if s.is(at, "heat-stove") {
        return Some("stove");
    }
    Some(if s.of(at, "cooker-")? == "smoker" { "smoker" } else { "oven" })
}

/// A temperature, or a bare number that can only be one.
fn setting(s: &Sentence, at: usize, ground: &Ground) -> Option<Temperature> {
    if let Some(temperature) = s.amount(at).and_then(|amount| amount.temperature()) {
        return Some(temperature);
    }
    let number = s.number(at).filter(|number| (65.0..=600.0).contains(number))?;
    let metric = ground.metric && number < SURELY_F;
    Some(if metric { celsius(number) } else { fahrenheit(number) })
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
            let Some(Ok(DishOrder::Add(dish))) = read(tag, text) else { panic!("{text}: {:?}", read(tag, text)) };
            let f = dish.setting_c.map(|c| in_fahrenheit(celsius(c)).round());
            let read = (dish.name.as_str(), dish.heat.as_deref(), f, dish.minutes, dish.ahead);
            assert_eq!(read, (name, heat, setting_f, minutes, ahead), "{text}");
        }
    }

    #[test]
    fn stuffing_is_known_to_need_heat_through() {
        let hot = |text| matches!(read("en", text), Some(Ok(DishOrder::Add(dish))) if dish.hot_through);
        assert!(hot("add stuffing in the oven 45 min at 375") && !hot("add rolls in the oven 10 min"));
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
