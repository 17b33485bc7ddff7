//! Who reads: language, units, zone. A property of a room or a person, never of the process.

use super::locales::FIRST;
use carvetime_core::plan::Moment;
use carvetime_core::quantity::SpoonSystem;
use chrono_tz::Tz;
use std::borrow::Cow;
use unic_langid::LanguageIdentifier;
use unic_langid::subtags::Region;

/// Pounds and °F, or kilograms and °C.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum UnitSystem {
    /// Pounds, ounces, quarts, °F.
    Us,
    /// Kilograms, litres, °C.
    Metric,
}

impl UnitSystem {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Us, Self::Metric];

    /// The stable name: used in stored data and locale keys.
    pub fn name(self) -> &'static str {
        match self {
            Self::Us => "us",
            Self::Metric => "metric",
        }
    }

    /// The system of that name.
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|system| system.name() == name)
    }

    /// What kitchens use where `tag` is spoken.
    pub fn of_locale(tag: &str) -> Self {
        Self::of_region(region(tag))
    }

    fn of_region(region: Option<Region>) -> Self {
        match region.as_ref().map(Region::as_str) {
            Some("US" | "PR" | "LR") => Self::Us,
            _ => Self::Metric,
        }
    }
}

/// Zones of Mexico.
const MEXICO: &str = "Mexico_City Monterrey Merida Cancun Matamoros Chihuahua Ciudad_Juarez Ojinaga Mazatlan Bahia_Banderas \
    Hermosillo Tijuana";
/// Zones where Canadian kitchens speak French.
const CANADA: &str = "Toronto Montreal Moncton Halifax Winnipeg Blanc-Sablon Edmonton Regina Vancouver";

/// For whom a message is rendered.
#[derive(Debug, Clone, PartialEq)]
pub struct Reader {
    /// IETF tag (`en-US`). Anything may stand here; what cannot be read is English.
    pub locale: String,
    /// Pounds or kilograms.
    pub units: UnitSystem,
    /// Whose spoons.
    pub spoons: SpoonSystem,
    /// Clock of the kitchen.
    pub zone: Tz,
    /// The present: decides whether a day needs its date.
    pub now: Moment,
}

impl Reader {
    /// A reader with the units and spoons usual where `tag` is spoken.
    pub fn new(tag: &str, zone: Tz, now: Moment) -> Self {
        let region = region(tag);
        let (units, spoons) = (UnitSystem::of_region(region), spoons_of_region(region));
        Self { locale: tag.to_owned(), units, spoons, zone, now }
    }

    /// The tag to speak by: phones often name the language alone (`es`), and then the kitchen's clock tells the region.
    pub(super) fn tag(&self) -> Cow<'_, str> {
        let Some(id) = identifier(&self.locale).filter(|id| id.region.is_none()) else {
            return self.locale.as_str().into();
        };
        let city = self.zone.name().strip_prefix("America/").unwrap_or_default();
        let within = |zones: &str| zones.split_whitespace().any(|known| known == city);
        match id.language.as_str() {
            "es" if within(MEXICO) => "es-MX".into(),
            "fr" if within(CANADA) => "fr-CA".into(),
            _ => self.locale.as_str().into(),
        }
    }
}

/// The spoons usual in a region.
fn spoons_of_region(region: Option<Region>) -> SpoonSystem {
    match region.as_ref().map(Region::as_str) {
        Some("US" | "PR" | "LR") => SpoonSystem::Us,
        Some("GB" | "IE") => SpoonSystem::Uk,
        Some("AU") => SpoonSystem::Australia,
        _ => SpoonSystem::Metric,
    }
}

/// Region of a tag; a bare language stands for where most of its speakers' kitchens are.
fn region(tag: &str) -> Option<Region> {
    let id = identifier(tag)?;
    id.region.or_else(|| if id.language.as_str() == FIRST { "US".parse().ok() } else { None })
}

/// Language and region of a tag, tolerant of what systems write (`en_US.UTF-8`, `es-MX-u-hc-h23`).
pub(super) fn identifier(tag: &str) -> Option<LanguageIdentifier> {
    let mut parts = tag.split(['.', '@']).next()?.split(['-', '_']).filter(|part| !part.is_empty());
    let language = parts.next()?.parse().ok()?;
    // A single letter opens an extension: nothing after it is a region.
    let region = parts
        .take_while(|part| part.len() > 1)
        .filter(|part| part.len() == 2 || part.len() == 3)
        .find_map(|part| part.parse().ok());
    Some(LanguageIdentifier::from_parts(language, None, region, &[]))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_follow_the_region_of_the_tag() {
        for (tag, units, spoons) in [
            ("en-US", UnitSystem::Us, SpoonSystem::Us),
            ("en", UnitSystem::Us, SpoonSystem::Us),
            ("en_US.UTF-8", UnitSystem::Us, SpoonSystem::Us),
            ("es-US", UnitSystem::Us, SpoonSystem::Us),
            ("en-GB", UnitSystem::Metric, SpoonSystem::Uk),
            ("en-AU", UnitSystem::Metric, SpoonSystem::Australia),
            ("es-ES", UnitSystem::Metric, SpoonSystem::Metric),
            ("es", UnitSystem::Metric, SpoonSystem::Metric),
            ("zh-Hant-TW", UnitSystem::Metric, SpoonSystem::Metric),
            ("", UnitSystem::Metric, SpoonSystem::Metric),
        ] {
            let zone = chrono_tz::UTC;
            let reader = Reader::new(tag, zone, Moment::UNIX_EPOCH);
            assert_eq!((reader.units, reader.spoons), (units, spoons), "{tag:?}");
        }
    }

    #[test]
    fn a_bare_language_takes_the_region_of_the_clock() {
        use chrono_tz::{America, Europe};
        for (tag, zone, spoken) in [
            ("es", America::Mexico_City, "es-MX"),
            ("es", Europe::Madrid, "es"),
            ("es-ES", America::Monterrey, "es-ES"),
            ("fr", America::Toronto, "fr-CA"),
            ("fr-FR", America::Toronto, "fr-FR"),
            ("en", America::Toronto, "en"),
            ("", America::Toronto, ""),
        ] {
            assert_eq!(Reader::new(tag, zone, Moment::UNIX_EPOCH).tag(), spoken, "{tag} {zone}");
        }
    }

    #[test]
    fn an_extension_is_no_region() {
        assert_eq!(identifier("es-MX-u-hc-h23").map(|id| id.to_string()).as_deref(), Some("es-MX"));
        assert_eq!(identifier("es-u-hc-h23").map(|id| id.to_string()).as_deref(), Some("es"));
    }
}
