//! `/settings`: language, units, spoons, zone, quiet hours, in one message that changes in place.
//!
//! In a private chat they are the person's own; in a group they are the room's, and the host's to change.

use super::action::Action;
use super::sitting::{button, labelled};
use super::state::{Question, Taste};
use super::turn::{Button, How};
use super::{RoomKind, Sitting, asked_setting, dishes, may, own_kitchen};
use crate::reading::{self, Quiet, Zones};
use crate::words::{Arg, Text, UnitSystem};
use carvetime_core::quantity::SpoonSystem;
use chrono::{NaiveDate, NaiveTime};

/// Quiet hours on offer: from, to.
const QUIET: [(&str, u32, u32); 3] = [("21-7", 21, 7), ("22-7", 22, 7), ("23-8", 23, 8)];

/// `/settings`, with a setting or a place behind it or without.
pub(super) fn ordered(sitting: &mut Sitting<'_>, rest: &str) {
    let place = rest.split_once(char::is_whitespace).map_or(rest, |(first, place)| {
        if matches!(reading::read_zone(rest), Zones::None) && !first.contains('/') { place } else { rest }
    });
    if rest.is_empty() {
        return show(sitting, How::New);
    }
    if quiet_told(sitting, rest) || dishes::shelves_told(sitting, rest) {
        return;
    }
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    // "Salt Lake City" is a place.
    let named = reading::read_setting(rest, sitting.lexicon());
    if let Some((page, value)) = named.filter(|_| matches!(reading::read_zone(rest), Zones::None)) {
        return typed(sitting, page, &value);
    }
    match reading::read_language(rest, sitting.lexicon()) {
        Some(language) => {
            change(sitting, |taste| taste.language = Some(language.to_owned()));
            show(sitting, How::New);
        }
        None => zone_told(sitting, place),
    }
}

/// "units metric", "fridge 38 °F" behind the command; what can't be read opens the page, which shows what can.
fn typed(sitting: &mut Sitting<'_>, setting: &str, value: &str) {
    if setting == "zone" && !value.is_empty() {
        return zone_told(sitting, value);
    }
    let private = sitting.room.kind == RoomKind::Private;
    let own = ["salt", "cooker", "fridge", "shelves"].contains(&setting);
    let told = !value.is_empty() && (private || !own) && asked_setting::told(sitting, setting, value);
    if !told {
        page(sitting, setting);
    }
}

/// The speaker's quiet hours, told in words; they are their own, whoever may change the rest.
pub(super) fn quiet_told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(told) = reading::read_quiet(text, sitting.lexicon()) else { return false };
    if sitting.speaker().is_none() {
        return false;
    }
    if told == Quiet::Unread {
        sitting.answer(Text::new("room-settings-quiet-unread"));
        return true;
    }
    is_quiet(sitting, told)
}

/// Sets the speaker's quiet hours to what was told, and says so. `false`: nothing that can be set was told.
pub(super) fn is_quiet(sitting: &mut Sitting<'_>, told: Quiet) -> bool {
    let hours = match told {
        Quiet::Hours(from, to) => Some((from, to)),
        Quiet::Off => None,
        Quiet::Unread => return false,
    };
    let Some(who) = sitting.speaker() else { return false };
    asked_setting::closed(sitting);
    sitting.change_person(who, |person| person.quiet = hours);
    let line = quiet_line(sitting, hours);
    sitting.answer(line);
    true
}

fn quiet_line(sitting: &Sitting<'_>, hours: Option<(NaiveTime, NaiveTime)>) -> Text {
    match hours {
        Some((from, to)) => {
            let line = Text::new("room-settings-quiet");
            line.with("from", on_the_wall(sitting, from)).with("to", on_the_wall(sitting, to))
        }
        None => Text::new("room-settings-quiet-none"),
    }
}

/// A time of day, as the reader's clocks show it.
fn on_the_wall(sitting: &Sitting<'_>, time: NaiveTime) -> Arg {
    /// A day on which no clock is changed anywhere.
    const ANY: Option<NaiveDate> = NaiveDate::from_ymd_opt(2027, 1, 12);
    ANY.map_or(Arg::Verbatim(time.format("%H:%M").to_string()), |day| Arg::Clock(sitting.ground().moment(day, time)))
}

/// The first page.
pub(super) fn show(sitting: &mut Sitting<'_>, how: How) {
    asked_setting::closed(sitting);
    let taste = sitting.taste();
    let reader = sitting.reader();
    let quiet = sitting.speaker().and_then(|id| sitting.people.get(&id)).and_then(|person| person.quiet);
    let private = sitting.room.kind == RoomKind::Private;
    let page = |label: &'static str, page: &str| button(label, &Action::Settings(page.to_owned()));
    let mut lines = vec![
        Text::new("room-settings-language").with("language", Arg::from(Text::named("room-language", language(&taste)))),
        Text::new("room-settings-units").with("chosen", Arg::from(Text::named("room-units", reader.units.name()))),
        Text::new("room-settings-spoons").with("spoons", Arg::from(Text::named("room-spoons", reader.spoons.name()))),
        match &taste.zone {
            Some(zone) => Text::new("room-settings-zone")
                .with("zone", Arg::Verbatim(zone.clone()))
                .with("now", Arg::DayClock(sitting.now)),
            None => Text::new("room-settings-zone-unset"),
        },
    ];
    if private {
        lines.push(quiet_line(sitting, quiet));
    }
    if let Some(person) = sitting.speaker().and_then(|id| sitting.people.get(&id)).filter(|_| private) {
        lines.extend(own_kitchen::lines(person, reader.spoons));
    }
    let say = sitting.answer(Text::new(if private { "room-settings-yours" } else { "room-settings-rooms" }));
    say.key("settings").how(how).lines(lines);
    say.row([page("room-settings-button-language", "language"), page("room-settings-button-units", "units")])
        .row([page("room-settings-button-spoons", "spoons"), page("room-settings-button-zone", "zone")]);
    if private {
        for row in own_kitchen::rows() {
            say.row(row);
        }
        say.row([page("room-settings-button-quiet", "quiet")]);
    }
}

/// A page of the settings.
pub(super) fn page(sitting: &mut Sitting<'_>, page: &str) {
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    let choice = |setting: &str, value: &str, label: Text| labelled(label, &Action::Set(setting.into(), value.into()));
    let back = button("room-button-back", &Action::Settings("all".into()));
    let (title, rows): (Text, Vec<Vec<Button>>) = match page {
        "language" => (
            Text::new("room-settings-pick-language"),
            crate::words::locales::languages()
                .iter()
                .map(|tag| vec![choice("language", tag, Text::named("room-language", tag))])
                .collect(),
        ),
        "units" => (
            Text::new("room-settings-pick-units"),
            UnitSystem::ALL
                .iter()
                .map(|units| vec![choice("units", units.name(), Text::named("room-units", units.name()))])
                .collect(),
        ),
        "spoons" => (
            Text::new("room-settings-pick-spoons"),
            SpoonSystem::ALL
                .iter()
                .map(|spoons| vec![choice("spoons", spoons.name(), Text::named("room-spoons", spoons.name()))])
                .collect(),
        ),
        "quiet" => (
            Text::new("room-settings-pick-quiet"),
            QUIET
                .iter()
                .filter_map(|(value, from, to)| {
                    let time = |hour| Some(on_the_wall(sitting, NaiveTime::from_hms_opt(hour, 0, 0)?));
                    let label = Text::new("room-quiet-span").with("from", time(*from)?).with("to", time(*to)?);
                    Some(vec![choice("quiet", value, label)])
                })
                .chain([vec![choice("quiet", "none", Text::new("room-quiet-none"))]])
                .collect(),
        ),
        "zone" => return ask_zone(sitting),
        other => match own_kitchen::page(sitting, other).filter(|_| sitting.room.kind == RoomKind::Private) {
            Some(page) => page,
            None => {
                forget_question(sitting);
                return show(sitting, How::Edit);
            }
        },
    };
    asked_setting::opened(sitting, page);
    let say = sitting.answer(title).key("settings").how(How::Edit);
    for row in rows {
        say.row(row);
    }
    say.row([back]);
}

fn ask_zone(sitting: &mut Sitting<'_>) {
    let Some(who) = sitting.speaker() else { return };
    sitting.room.drafts.entry(who).or_default().asked = Some(Question::Zone);
    let back = button("room-button-back", &Action::Settings("all".into()));
    let id = if sitting.room.kind == RoomKind::Private {
        "room-settings-pick-zone"
    } else {
        "room-settings-pick-zone-group"
    };
    sitting.answer(Text::new(id)).key("settings").how(How::Edit).row([back]);
}

/// Back from a question that the settings asked: what is said next is no answer to it.
fn forget_question(sitting: &mut Sitting<'_>) {
    let Some(who) = sitting.speaker() else { return };
    let zone_known = sitting.zone().is_some();
    let Some(draft) = sitting.room.drafts.get_mut(&who) else { return };
    if draft.wish == reading::Wish::default() {
        sitting.room.drafts.remove(&who);
    } else if draft.asked == Some(Question::Zone) && zone_known {
        draft.asked = super::planning::missing(draft);
    }
}

/// A value was picked.
pub(super) fn set(sitting: &mut Sitting<'_>, setting: &str, value: &str) {
    if !may::steer(sitting) {
        return may::refuse(sitting);
    }
    if setting == "zone" {
        if value.parse::<chrono_tz::Tz>().is_ok() {
            zone_is(sitting, value);
        }
    } else if keep(sitting, setting, value) {
        show(sitting, How::Edit);
    }
}

/// A value was typed below its page. `false`: it is none, or not the speaker's to set.
pub(super) fn set_told(sitting: &mut Sitting<'_>, setting: &str, value: &str) -> bool {
    let kept = may::steer(sitting) && keep(sitting, setting, value);
    if kept {
        show(sitting, How::New);
    }
    kept
}

/// `false`: there is no such setting, or no such value of it.
fn keep(sitting: &mut Sitting<'_>, setting: &str, value: &str) -> bool {
    match setting {
        "language" if crate::words::locales::languages().contains(&value) => {
            let value = value.to_owned();
            change(sitting, move |taste| taste.language = Some(value.clone()));
        }
        "units" => {
            let Some(units) = UnitSystem::from_name(value) else { return false };
            change(sitting, move |taste| taste.us_units = Some(units == UnitSystem::Us));
        }
        "spoons" => {
            let Some(spoons) = SpoonSystem::from_name(value) else { return false };
            change(sitting, move |taste| taste.spoons = Some(spoons.name().into()));
        }
        "quiet" => {
            let hours = QUIET.iter().find(|(name, _, _)| *name == value).and_then(|(_, from, to)| {
                Some((NaiveTime::from_hms_opt(*from, 0, 0)?, NaiveTime::from_hms_opt(*to, 0, 0)?))
            });
            if let Some(who) = sitting.speaker() {
                sitting.change_person(who, |person| person.quiet = hours);
            }
        }
        _ => {
            let own = sitting.speaker().filter(|_| sitting.room.kind == RoomKind::Private);
            return own.is_some_and(|who| own_kitchen::set(sitting, who, setting, value));
        }
    }
    true
}

/// Changes the room's taste, and in a private chat the person's with it.
fn change(sitting: &mut Sitting<'_>, change: impl Fn(&mut Taste)) {
    change(&mut sitting.room.taste);
    let own = (sitting.room.kind == RoomKind::Private).then(|| sitting.speaker()).flatten();
    if let Some(who) = own {
        sitting.change_person(who, |person| change(&mut person.taste));
    }
}

/// A zone or a city in words.
pub(super) fn zone_told(sitting: &mut Sitting<'_>, text: &str) {
    match reading::read_zone(text) {
        Zones::One(zone) => {
            zone_is(sitting, zone.name());
        }
        Zones::Several(zones) => {
            let rows: Vec<Button> = zones
                .iter()
                .take(6)
                .map(|zone| {
                    let label = Text::new("room-zone-choice").with("zone", Arg::Verbatim(zone.name().into()));
                    labelled(label, &Action::Set("zone".into(), zone.name().into()))
                })
                .collect();
            let say = sitting.answer(Text::new("room-zone-which")).key("settings");
            for row in rows {
                say.row([row]);
            }
        }
        Zones::None => {
            let text = Text::new("room-zone-unknown").with("text", Arg::Verbatim(super::moves::clip(text)));
            sitting.answer(text);
        }
    }
}

/// A place on the map: its zone is kept, the point is not.
pub(super) fn located(sitting: &mut Sitting<'_>, latitude: f64, longitude: f64) {
    if sitting.room.taste.zone.is_some() && !may::steer(sitting) {
        return may::refuse(sitting);
    }
    match reading::zone_at(latitude, longitude) {
        Some(zone) => zone_is(sitting, zone.name()),
        None => {
            sitting.answer(Text::new("room-zone-nowhere"));
        }
    }
}

/// By which clock the room goes from now on.
pub(super) fn clock_kept(sitting: &mut Sitting<'_>) {
    let zone = sitting.room.taste.zone.clone().unwrap_or_default();
    let text = Text::new("room-zone-set").with("zone", Arg::Verbatim(zone)).with("now", Arg::DayClock(sitting.now));
    sitting.answer(text);
}

/// The zone is known now: plans already standing keep their instants, and their times read by the new clock.
fn zone_is(sitting: &mut Sitting<'_>, zone: &str) {
    let name = zone.to_owned();
    change(sitting, move |taste| taste.zone = Some(name.clone()));
    let Some(who) = sitting.speaker() else { return };
    let planning = sitting.room.drafts.get(&who).is_some_and(|draft| draft.wish != crate::reading::Wish::default());
    if let Some(draft) = sitting.room.drafts.get_mut(&who) {
        draft.asked = None;
    }
    clock_kept(sitting);
    if planning {
        super::planning::go_on(sitting, who, How::New);
    } else {
        sitting.room.drafts.remove(&who);
    }
}

/// The language shown as chosen: the nearest one present.
fn language(taste: &Taste) -> &'static str {
    let tag = taste.language.as_deref().unwrap_or("en");
    crate::words::locales::nearest(tag)
}
