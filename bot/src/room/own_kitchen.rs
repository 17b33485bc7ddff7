//! A person's own kitchen among their settings: their salt, their cooker, how cold their fridge is and how many shelves it has.
//!
//! Owns what is shown and picked. The salt is told in words (`ask`) and can only be dropped here; the cooker stands in for one
//! that a wish does not name (`planning`); a fridge too warm is said wherever an answer counts on it.

use super::PersonId;
use super::action::Action;
use super::sitting::{Sitting, button, labelled};
use super::state::Person;
use super::turn::Button;
use crate::reading::Wish;
use crate::words::{Arg, Text};
use carvetime_core::quantity::{SpoonSystem, Temperature, Unit, celsius, in_celsius};
use carvetime_core::roast::Cooker;

/// What a fridge's thermometer may show, °C by the value of its button: whole degrees in both scales' steps.
const FRIDGES: [(&str, f64); 6] = [("1", 1.0), ("3", 3.0), ("4", 4.0), ("6", 6.0), ("8", 8.0), ("10", 10.0)];

/// As many shelves as there are buttons for; more can be told in words.
const MOST_SHELVES: u8 = 6;

/// The lines of the settings.
pub(super) fn lines(person: &Person, spoons: SpoonSystem) -> Vec<Text> {
    let teaspoon_ml = Unit::Teaspoon.milliliters(spoons).unwrap_or(5.0);
    let salt = match person.own_salt {
        Some(salt) => Text::new("room-settings-salt").with("weighs", Arg::Number(salt.grams_per_ml * teaspoon_ml, 1)),
        None => Text::new("room-settings-salt-none"),
    };
    let cooker = match cooker(person) {
        Some(cooker) => {
            Text::new("room-settings-cooker").with("cooker", Arg::from(Text::named("room-cooker", cooker.name())))
        }
        None => Text::new("room-settings-cooker-none"),
    };
    let fridge = match fridge(person) {
        Some(at) => Text::new("room-settings-fridge").with("at", Arg::Temperature(at)),
        None => Text::new("room-settings-fridge-none"),
    };
    let shelves = match person.fridge_shelves {
        Some(shelves) => Text::new("room-settings-shelves").with("count", Arg::Count(shelves.into())),
        None => Text::new("room-settings-shelves-none"),
    };
    [salt, cooker, fridge, shelves].into_iter().chain(too_warm(person)).collect()
}

/// The buttons under them.
pub(super) fn rows() -> Vec<Vec<Button>> {
    let page = |label: &'static str, page: &str| button(label, &Action::Settings(page.to_owned()));
    vec![
        vec![page("room-settings-button-salt", "salt"), page("room-settings-button-cooker", "cooker")],
        vec![page("room-settings-button-fridge", "fridge"), page("room-settings-button-shelves", "shelves")],
    ]
}

/// The page of one of them: what is asked, and the choices.
pub(super) fn page(sitting: &Sitting<'_>, page: &str) -> Option<(Text, Vec<Vec<Button>>)> {
    let choice = |value: &str, label: Text| labelled(label, &Action::Set(page.to_owned(), value.to_owned()));
    let none = |id: &'static str| vec![choice("none", Text::new(id))];
    let own = sitting.speaker().and_then(|id| sitting.people.get(&id));
    Some(match page {
        "salt" => {
            let told = own.is_some_and(|person| person.own_salt.is_some());
            let rows = told.then(|| none("room-settings-salt-drop")).into_iter().collect();
            (Text::new("room-settings-pick-salt"), rows)
        }
        "cooker" => {
            let label = |cooker: &Cooker| Text::named("room-cooker", cooker.name());
            let cookers = vec![Cooker::ALL.iter().map(|cooker| choice(cooker.name(), label(cooker))).collect()];
            (Text::new("room-settings-pick-cooker"), with(cookers, none("room-settings-cooker-any")))
        }
        "fridge" => {
            let label = |at: f64| Text::new("cook-chart-number").with("number", Arg::Temperature(celsius(at)));
            let fridges: Vec<Button> = FRIDGES.iter().map(|(value, at)| choice(value, label(*at))).collect();
            let rows = fridges.chunks(3).map(<[Button]>::to_vec).collect();
            (Text::new("room-settings-pick-fridge"), with(rows, none("room-settings-fridge-unknown")))
        }
        "shelves" => {
            let label = |shelves: u8| Text::new("cook-chart-number").with("number", Arg::Count(shelves.into()));
            let all: Vec<Button> =
                (1..=MOST_SHELVES).map(|shelves| choice(&shelves.to_string(), label(shelves))).collect();
            let rows = all.chunks(3).map(<[Button]>::to_vec).collect();
            (Text::new("room-settings-pick-shelves"), with(rows, none("room-settings-shelves-unknown")))
        }
        _ => return None,
    })
}

fn with(mut rows: Vec<Vec<Button>>, last: Vec<Button>) -> Vec<Vec<Button>> {
    rows.push(last);
    rows
}

/// A value was picked. `false`: it is none of these, or no such value.
pub(super) fn set(sitting: &mut Sitting<'_>, who: PersonId, setting: &str, value: &str) -> bool {
    let none = value == "none";
    match setting {
        "salt" if none => sitting.change_person(who, |person| person.own_salt = None),
        "cooker" if none || Cooker::from_name(value).is_some() => {
            let value = (!none).then(|| value.to_owned());
            sitting.change_person(who, |person| person.cooker = value);
        }
        "fridge" => {
            let known = FRIDGES.iter().find(|(name, _)| *name == value).map(|(_, at)| *at);
            if known.is_none() && !none {
                return false;
            }
            sitting.change_person(who, |person| person.fridge_c = known);
        }
        "shelves" => {
            let told = value.parse().ok().filter(|shelves| (1..=MOST_SHELVES).contains(shelves));
            if told.is_none() && !none {
                return false;
            }
            sitting.change_person(who, |person| person.fridge_shelves = told);
        }
        _ => return false,
    }
    true
}

/// The fridge's thermometer shows that.
pub(super) fn fridge_is(sitting: &mut Sitting<'_>, who: PersonId, at: Temperature) {
    sitting.change_person(who, |person| person.fridge_c = Some(in_celsius(at)));
}

/// A wish that names no cooker means the person's own.
pub(super) fn fill(sitting: &Sitting<'_>, who: PersonId, wish: &mut Wish) {
    if wish.cooker.is_none() {
        wish.cooker = sitting.people.get(&who).and_then(cooker).map(|cooker| cooker.name().to_owned());
    }
}

/// How cold the person's fridge is, if they told.
pub(crate) fn fridge(person: &Person) -> Option<Temperature> {
    person.fridge_c.map(celsius)
}

/// What is to be said of a fridge that is not cold enough.
pub(super) fn too_warm(person: &Person) -> Option<Text> {
    crate::ask::fridge_too_warm(fridge(person))
}

fn cooker(person: &Person) -> Option<Cooker> {
    person.cooker.as_deref().and_then(Cooker::from_name)
}
