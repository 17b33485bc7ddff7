//! The time zone of a kitchen: by its database name, by a city, or by a point on the map.
//!
//! City names come from the time zone database and from `locales/cities.txt`. A name several zones have is never guessed.

use super::fold::fold;
use chrono_tz::{TZ_VARIANTS, Tz};
use std::collections::HashMap;
use std::sync::LazyLock;

/// Zones a text may mean.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Zones {
    /// That one.
    One(Tz),
    /// Several places have this name, or it is a slip of one of these: ask. At most six.
    Several(Vec<Tz>),
    /// None known.
    None,
}

/// Most candidates worth offering.
const MOST: usize = 6;

static NAMES: LazyLock<HashMap<String, Vec<Tz>>> = LazyLock::new(|| {
    let mut names: HashMap<String, Vec<Tz>> = HashMap::new();
    let mut add = |name: &str, zone: Tz| {
        let zones = names.entry(key(name)).or_default();
        if !zones.contains(&zone) {
            zones.push(zone);
        }
    };
    let cities = include_str!("../../../locales/cities.txt").lines();
    for (zone, line) in cities.filter(|line| !line.starts_with('#')).filter_map(|line| line.split_once(':')) {
        if let Ok(zone) = zone.trim().parse::<Tz>() {
            line.split([',', '|']).filter(|name| !name.trim().is_empty()).for_each(|name| add(name, zone));
        }
    }
    // The database's own cities, where the table has no say: old link names would only add doubles.
    for zone in TZ_VARIANTS {
        let (area, city) = zone.name().rsplit_once('/').unwrap_or(("", zone.name()));
        let real = ["Africa", "America", "Antarctica", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific"];
        if real.iter().any(|name| area.starts_with(name)) {
            names.entry(key(city)).or_insert_with(|| vec![zone]);
        }
    }
    names
});

/// Reads a zone from its name (`america/chicago`) or from a city (`Dallas`, `sao paulo`, `Madrid, Spain`).
pub fn read_zone(text: &str) -> Zones {
    let text = text.trim();
    if text.len() > 100 {
        return Zones::None;
    }
    let by_name = text.replace(' ', "_");
    if let Some(zone) =
        TZ_VARIANTS.iter().find(|zone| zone.name().contains('/') && zone.name().eq_ignore_ascii_case(&by_name))
    {
        return Zones::One(*zone);
    }
    let whole = key(text);
    // "Portland, Maine": the second part settles which.
    let parts: Vec<String> = text.split(',').map(key).filter(|part| !part.is_empty()).collect();
    if let [city, wider, ..] = parts.as_slice() {
        let inside = NAMES.get(wider);
        let zones = NAMES.get(city).map(|zones| {
            let both = zones.iter().filter(|zone| inside.is_some_and(|inside| inside.contains(zone)));
            let both: Vec<Tz> = both.copied().collect();
            if both.is_empty() { zones.clone() } else { both }
        });
        if let Some(zones) = zones {
            return several(zones);
        }
    }
    if let Some(zones) = NAMES.get(&whole) {
        return several(zones.clone());
    }
    near(&whole)
}

/// The one zone of that very name, in a sentence of which most words name none.
pub(super) fn zone_named(text: &str) -> Option<Tz> {
    match NAMES.get(&key(text))?.as_slice() {
        [one] => Some(*one),
        _ => None,
    }
}

/// A slip is offered for confirmation, never taken: a wrong zone moves every bell.
fn near(name: &str) -> Zones {
    let length = name.chars().count();
    if length < 4 {
        return Zones::None;
    }
    let allowed = if length >= 8 { 2 } else { 1 };
    let mut found: Vec<(usize, &str, Tz)> = Vec::new();
    for (known, zones) in NAMES.iter().filter(|(known, _)| known.chars().count().abs_diff(length) <= allowed) {
        let slips = strsim::damerau_levenshtein(name, known);
        if slips <= allowed {
            found.extend(zones.iter().map(|zone| (slips, known.as_str(), *zone)));
        }
    }
    found.sort_by_key(|(slips, known, zone)| (*slips, *known, zone.name()));
    let mut zones: Vec<Tz> = Vec::new();
    for (_, _, zone) in found {
        if !zones.contains(&zone) {
            zones.push(zone);
        }
    }
    zones.truncate(MOST);
    if zones.is_empty() { Zones::None } else { Zones::Several(zones) }
}

fn several(mut zones: Vec<Tz>) -> Zones {
    zones.truncate(MOST);
    match zones.as_slice() {
        [] => Zones::None,
        [one] => Zones::One(*one),
        _ => Zones::Several(zones),
    }
}

/// Letters only, folded: `St. John's` and `st johns` are one.
fn key(name: &str) -> String {
    let folded = fold(name).replace(['_', '-'], " ");
    let kept: String = folded.chars().filter(|c| c.is_alphanumeric() || *c == ' ').collect();
    kept.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The zone at a point; `None` for a point that is none (not finite, out of range).
pub fn zone_at(latitude: f64, longitude: f64) -> Option<Tz> {
    static MAP: LazyLock<tzf_rs::EmbeddedFinder> = LazyLock::new(tzf_rs::EmbeddedFinder::new);
    let on_earth = (-90.0..=90.0).contains(&latitude) && (-180.0..=180.0).contains(&longitude);
    // The finder takes longitude first.
    on_earth.then(|| MAP.get_tz_name(longitude, latitude).parse().ok()).flatten()
}
