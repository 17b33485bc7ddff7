//! What is kept of a person: their taste, their kitchen, what earlier cooks taught.

use super::Room;
use crate::room::heard::{PersonId, RoomId, Speaker};
use crate::words::{Reader, UnitSystem};
use carvetime_core::plan::Moment;
use carvetime_core::quantity::SpoonSystem;
use chrono::NaiveTime;
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

impl Person {
    /// This person as a reader of what a room has to say: their own language and units, the kitchen's clock.
    pub fn reader(&self, room: &Room, now: Moment) -> Reader {
        let mut reader = self.taste.or(&room.taste).reader(now);
        if let Some(zone) = room.taste.zone() {
            reader.zone = zone;
        }
        reader
    }
}

/// Language, units, spoons, place: a room's or a person's. `None` leaves it to the language or to the room.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Taste {
    /// IETF tag chosen, or told by the person's app.
    pub language: Option<String>,
    /// `true`: pounds and °F; `false`: kilograms and °C.
    pub us_units: Option<bool>,
    /// [`SpoonSystem`] by name.
    pub spoons: Option<String>,
    /// IANA zone name.
    pub zone: Option<String>,
}

impl Taste {
    /// The zone, if one is set and known.
    pub fn zone(&self) -> Option<Tz> {
        self.zone.as_deref()?.parse().ok()
    }

    /// This taste, its gaps filled from another.
    #[must_use]
    pub fn or(&self, other: &Taste) -> Taste {
        Taste {
            language: self.language.clone().or_else(|| other.language.clone()),
            us_units: self.us_units.or(other.us_units),
            spoons: self.spoons.clone().or_else(|| other.spoons.clone()),
            zone: self.zone.clone().or_else(|| other.zone.clone()),
        }
    }

    /// The reader with this taste; what is open follows the language, and the zone is UTC.
    pub fn reader(&self, now: Moment) -> Reader {
        self.reader_before(None, self.language.as_deref(), now)
    }

    /// The reader with this taste, its gaps filled from another, who reads that language.
    pub fn reader_before(&self, other: Option<&Taste>, language: Option<&str>, now: Moment) -> Reader {
        let zone = self.zone.as_deref().or_else(|| other?.zone.as_deref());
        let zone = zone.and_then(|zone| zone.parse().ok()).unwrap_or(Tz::UTC);
        let mut reader = Reader::new(language.unwrap_or("en"), zone, now);
        if let Some(us) = self.us_units.or_else(|| other?.us_units) {
            reader.units = if us { UnitSystem::Us } else { UnitSystem::Metric };
        }
        let spoons = self.spoons.as_deref().or_else(|| other?.spoons.as_deref());
        if let Some(spoons) = spoons.and_then(SpoonSystem::from_name) {
            reader.spoons = spoons;
        }
        reader
    }

    /// The spoons, if set.
    pub fn spoons(&self) -> Option<SpoonSystem> {
        SpoonSystem::from_name(self.spoons.as_deref()?)
    }
}

/// A person, across all rooms.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Person {
    /// Id.
    pub id: PersonId,
    /// Name to show. Untrusted text.
    pub name: String,
    /// `@name` without the sign.
    #[serde(default)]
    pub username: Option<String>,
    /// For private messages.
    #[serde(default)]
    pub taste: Taste,
    /// Salt from their own packet.
    #[serde(default)]
    pub own_salt: Option<OwnSalt>,
    /// [`carvetime_core::roast::Cooker`] by name: what a plan that names none is for.
    #[serde(default)]
    pub cooker: Option<String>,
    /// What their fridge's thermometer shows, °C.
    #[serde(default)]
    pub fridge_c: Option<f64>,
    /// Shelves of their fridge that are free for a dinner.
    #[serde(default)]
    pub fridge_shelves: Option<u8>,
    /// No calls between these local times, except safety and what they took at that hour.
    #[serde(default)]
    pub quiet: Option<(NaiveTime, NaiveTime)>,
    /// They have opened the private chat, so it can be written to.
    #[serde(default)]
    pub reachable: bool,
    /// The group that called them privately last: what they answer there is heard in it.
    #[serde(default)]
    pub called_from: Option<RoomId>,
    /// The group with a dinner planned that they spoke in last: what they ask of it privately is heard there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shares_in: Option<RoomId>,
    /// What the cooks they were host of taught about their cookers, by [`carvetime_core::roast::Cooker`] name.
    #[serde(default)]
    pub profiles: BTreeMap<String, StoredProfile>,
    /// How their dinners were, oldest first.
    #[serde(default)]
    pub notes: Vec<CookNote>,
}

impl Person {
    /// Someone heard for the first time.
    pub fn new(speaker: &Speaker) -> Self {
        Self {
            id: speaker.id,
            name: speaker.name.clone(),
            username: speaker.username.clone(),
            taste: Taste { language: speaker.language.clone(), ..Taste::default() },
            own_salt: None,
            cooker: None,
            fridge_c: None,
            fridge_shelves: None,
            quiet: None,
            reachable: false,
            called_from: None,
            shares_in: None,
            profiles: BTreeMap::new(),
            notes: Vec::new(),
        }
    }
}

/// What earlier cooks on a cooker taught.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct StoredProfile {
    /// °C by which the air at the bird is hotter than usual for what is read or set.
    pub pit_offset_c: f64,
    /// How fast birds warm here: 1 as usual.
    pub speed: f64,
    /// Cooks it was learned from.
    pub cooks: u16,
}

/// A person's own salt.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct OwnSalt {
    /// Grams of salt per millilitre, spooned.
    pub grams_per_ml: f64,
}

/// The note of the last dinner of a group, and whose it is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Noted {
    /// The host who said how it was.
    pub by: super::super::PersonId,
    /// What they said.
    pub note: CookNote,
}

/// How a dinner was, in the host's words by name; nothing where it was not said.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CookNote {
    /// Of which dinner.
    pub dinner: Moment,
    /// `little`, `right`, `much`; with `-a-bit` behind it where it was only that.
    pub salt: Option<String>,
    /// `dry`, `right`, `underdone`.
    pub meat: Option<String>,
    /// `early`, `right`, `late`.
    pub time: Option<String>,
    /// How late it was, in minutes, where that is known.
    #[serde(default)]
    pub late_min: Option<u16>,
}
