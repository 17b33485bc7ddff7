//! A setting typed: "10 pm to 7 am" below the quiet hours, "38 °F" below the fridge, or both behind `/settings`.
//!
//! Owns for how long a page is listened for. What a button sets is in `settings` and `own_kitchen`; the zone, which planning asks for
//! too, is a question of the draft.

use super::sitting::Sitting;
use super::state::AskedSetting;
use super::turn::How;
use super::{RoomKind, may, own_kitchen, questions, settings};
use crate::ask;
use crate::reading::sentence::Sentence;
use crate::reading::{self, Quiet};
use carvetime_core::quantity::{Measure, SpoonSystem, Temperature, celsius, fahrenheit};
use carvetime_core::range::Range;
use carvetime_core::roast::Cooker;
use chrono::TimeDelta;

/// A page that was opened so long ago is out of mind.
const LISTENED_FOR: TimeDelta = TimeDelta::minutes(10);

/// The pages that take an answer.
const PAGES: [&str; 8] = ["language", "units", "spoons", "quiet", "salt", "cooker", "fridge", "shelves"];

/// The page stands open for whoever pressed.
pub(super) fn opened(sitting: &mut Sitting<'_>, page: &str) {
    let asked = sitting.speaker().filter(|_| PAGES.contains(&page));
    sitting.room.asked_setting = asked.map(|by| AskedSetting { by, at: sitting.now, page: page.to_owned() });
}

/// No page is open any more.
pub(super) fn closed(sitting: &mut Sitting<'_>) {
    sitting.room.asked_setting = None;
}

/// Takes the text for the answer to the page its speaker has just opened. `false`: none is open, or it is no such answer.
pub(super) fn answered(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let open = sitting.room.asked_setting.clone();
    let Some(asked) = open.filter(|asked| Some(asked.by) == sitting.speaker()) else { return false };
    if sitting.now - asked.at > LISTENED_FOR {
        closed(sitting);
        return false;
    }
    told(sitting, &asked.page, text)
}

/// Takes the text for what that page's setting is to be. `false`: it is none of its values.
pub(super) fn told(sitting: &mut Sitting<'_>, page: &str, text: &str) -> bool {
    let set = |sitting: &mut Sitting<'_>, value: &str| settings::set_told(sitting, page, value);
    let lexicon = sitting.lexicon();
    let sentence = Sentence::read(text, lexicon);
    match page {
        "language" => reading::read_language(text, lexicon).is_some_and(|language| set(sitting, language)),
        "units" => reading::read_unit_system(text, lexicon).is_some_and(|units| set(sitting, units)),
        "spoons" => {
            let told = sentence.of_any("spoons-").filter(|name| SpoonSystem::from_name(name).is_some());
            told.is_some_and(|spoons| set(sitting, spoons))
        }
        "quiet" => match reading::read_quiet_span(text, lexicon) {
            Quiet::Unread => false,
            told => settings::is_quiet(sitting, told),
        },
        "cooker" => {
            let told = sentence.of_any("cooker-").filter(|name| Cooker::from_name(name).is_some());
            told.is_some_and(|cooker| set(sitting, cooker))
        }
        "fridge" => fridge(sitting, &sentence),
        "shelves" => {
            let count = (0..sentence.len()).find_map(|at| sentence.number(at).or(Some(sentence.amount(at)?.value())));
            count.is_some_and(|count| set(sitting, &count.to_string()))
        }
        "salt" => salt(sitting, text),
        _ => false,
    }
}

/// What a fridge's thermometer may show; colder is a freezer, warmer is none.
fn fridges() -> Range<Temperature> {
    Range::new(celsius(-3.0), celsius(20.0))
}

fn fridge(sitting: &mut Sitting<'_>, sentence: &Sentence) -> bool {
    let Some(who) = sitting.speaker().filter(|_| sitting.room.kind == RoomKind::Private) else { return false };
    let places = 0..sentence.len();
    let bare = |value: f64| if sitting.us_units() { fahrenheit(value) } else { celsius(value) };
    let amount = places.clone().find_map(|at| sentence.amount(at));
    let told = match amount {
        Some(amount) if amount.measure() == Some(Measure::Temperature) => {
            Some(amount.temperature().unwrap_or_else(|| bare(amount.value())))
        }
        Some(amount) if amount.unit().is_some() => None,
        _ => places.clone().find_map(|at| sentence.number(at)).map(bare),
    };
    let fits = |at: &Temperature| (fridges().low..=fridges().high).contains(at);
    let Some(at) = told.filter(fits) else { return false };
    own_kitchen::fridge_is(sitting, who, at);
    settings::show(sitting, How::New);
    true
}

/// What a spoon of their salt weighs, as the packet says.
fn salt(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if sitting.room.kind != RoomKind::Private || !may::steer(sitting) {
        return false;
    }
    let Some(question) = ask::read_own_salt(text, &questions::asker(sitting)) else { return false };
    closed(sitting);
    questions::answer_of(sitting, text, &question);
    true
}
