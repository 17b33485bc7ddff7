//! Fire, gas and what else is dangerous at once: what to do, and whom to call where the kitchen is. A cook who is ill or bleeds.
//!
//! Owns the numbers to call, by zone and else by the country of a locale. Where neither tells, the words name the service.

use super::Asker;
use super::answer::Answer;
use crate::reading::{Peril, Unwell};
use crate::words::{Arg, Text};
use carvetime_core::quantity::fahrenheit;
use carvetime_core::source;
use chrono_tz::Tz;

const UK: [&str; 6] =
    ["Europe/London", "Europe/Belfast", "Europe/Jersey", "Europe/Guernsey", "Europe/Isle_of_Man", "GB"];
const EUROPEAN: [&str; 8] = [
    "Atlantic/Canary",
    "Atlantic/Madeira",
    "Atlantic/Azores",
    "Atlantic/Reykjavik",
    "Atlantic/Faroe",
    "Africa/Ceuta",
    "Asia/Nicosia",
    "Arctic/Longyearbyen",
];
const BRAZIL: &str = "Sao_Paulo Bahia Fortaleza Recife Manaus Belem Cuiaba Campo_Grande Porto_Velho Rio_Branco Boa_Vista Maceio \
    Araguaina Santarem Noronha Eirunepe";
/// The United States, Canada and Mexico.
const NORTH: &str = "New_York Detroit Kentucky Indiana Chicago Menominee North_Dakota Denver Boise Phoenix Los_Angeles Anchorage \
    Juneau Sitka Metlakatla Yakutat Nome Adak Puerto_Rico St_Johns Halifax Glace_Bay Moncton Goose_Bay Toronto Montreal Iqaluit \
    Winnipeg Resolute Rankin_Inlet Regina Swift_Current Edmonton Cambridge_Bay Inuvik Creston Dawson_Creek Fort_Nelson \
    Whitehorse Dawson Vancouver Mexico_City Cancun Merida Monterrey Matamoros Chihuahua Ciudad_Juarez Ojinaga Mazatlan \
    Bahia_Banderas Hermosillo Tijuana";

/// The number of the fire service, where it is known. See [`source::EMERGENCY_NUMBERS`].
pub(super) fn number(zone: Tz, locale: &str) -> Option<&'static str> {
    by_zone(zone.name()).or_else(|| by_country(locale))
}

fn by_zone(zone: &str) -> Option<&'static str> {
    if UK.contains(&zone) {
        return Some("999");
    }
    if EUROPEAN.contains(&zone) {
        return Some("112");
    }
    let (area, rest) = zone.split_once('/')?;
    let city = rest.split('/').next().unwrap_or_default();
    match area {
        "Europe" => Some("112"),
        "Brazil" => Some("193"),
        "US" | "Canada" | "Mexico" => Some("911"),
        "Australia" => Some("000"),
        "Pacific" if city == "Honolulu" => Some("911"),
        "Pacific" if city == "Auckland" => Some("111"),
        "America" if BRAZIL.split_whitespace().any(|known| known == city) => Some("193"),
        "America" if NORTH.split_whitespace().any(|known| known == city) => Some("911"),
        _ => None,
    }
}

fn by_country(locale: &str) -> Option<&'static str> {
    let country = locale
        .split(['-', '_', '.', '@'])
        .skip(1)
        .find(|part| part.len() == 2 && part.bytes().all(|b| b.is_ascii_uppercase()))?;
    match country {
        "US" | "CA" | "MX" | "PR" => Some("911"),
        "GB" => Some("999"),
        "BR" => Some("193"),
        "AU" => Some("000"),
        "NZ" => Some("111"),
        "ES" | "FR" | "DE" | "IT" | "PT" | "AT" | "CH" | "BE" | "LU" | "NL" | "IE" => Some("112"),
        _ => None,
    }
}

/// What to do at once.
pub(super) fn peril(peril: Peril, asker: &Asker) -> Answer {
    let call = Arg::Choice(asker.emergency.unwrap_or("none"));
    let (kind, text, source) = match peril {
        Peril::Fire => ("fire", Text::new("ask-fire").with("call", call), source::OVEN_FIRE),
        Peril::Gas => ("gas", Text::new("ask-gas").with("call", call), source::GAS_SMELL),
        Peril::CarbonMonoxide => {
            ("carbon-monoxide", Text::new("ask-carbon-monoxide").with("call", call), source::CARBON_MONOXIDE)
        }
        Peril::HotOil => ("hot-oil", Text::new("ask-hot-oil").with("call", call), source::FRYING),
        Peril::Choking => ("choking", Text::new("ask-choking").with("call", call), source::CHOKING),
        Peril::Fainted => ("fainted", Text::new("ask-fainted").with("call", call), source::UNCONSCIOUS),
        Peril::Allergy => ("allergy", Text::new("ask-allergy").with("call", call), source::ANAPHYLAXIS),
        Peril::Burn => ("burn", Text::new("ask-burn").with("call", call), source::BURN),
        Peril::Smoke => ("smoke", Text::new("ask-kitchen-smoke").with("call", call), source::OVEN_FIRE),
    };
    let elsewhere = peril == Peril::Fire;
    Answer::new(kind)
        .say(text)
        .say_if(elsewhere, || Text::new("ask-fire-elsewhere"))
        .from(source)
        .from(source::EMERGENCY_NUMBERS)
}

/// Who keeps away from food, what is done about a cut, and about what was eaten.
pub(super) fn unwell(what: Unwell, asker: &Asker) -> Answer {
    match what {
        Unwell::Ate => Answer::new("ate-sick")
            .say(
                Text::new("ask-ate-sick")
                    .with("call", Arg::Choice(asker.emergency.unwrap_or("none")))
                    .with("fever", Arg::Temperature(fahrenheit(102.0))),
            )
            .say(Text::new("ask-ate-sick-rest"))
            .from(source::FOOD_POISONING)
            .from(source::EMERGENCY_NUMBERS),
        Unwell::Sick => Answer::new("sick")
            .say(Text::new("ask-sick"))
            .say(Text::new("ask-sick-made"))
            .value("away", 48.0, "h")
            .from(source::SICK_COOK)
            .from(source::HANDS),
        Unwell::Cut => {
            Answer::new("cut").say(Text::new("ask-cut")).say(Text::new("ask-cut-doctor")).from(source::CUT_HAND)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono_tz::{America, Asia, Europe};

    #[test]
    fn the_zone_tells_the_number_and_else_the_country() {
        assert_eq!(number(Europe::Madrid, "es"), Some("112"));
        assert_eq!(number(Europe::London, "en-US"), Some("999"));
        assert_eq!(number(America::Mexico_City, "es"), Some("911"));
        assert_eq!(number(America::Indiana::Knox, "en"), Some("911"));
        assert_eq!(number(America::Sao_Paulo, "pt-BR"), Some("193"));
        assert_eq!(number(Tz::UTC, "fr-CA"), Some("911"));
        assert_eq!(number(Tz::UTC, "fr-FR"), Some("112"));
        assert_eq!(number(Asia::Tokyo, "en"), None);
        assert_eq!(number(America::Lima, "es"), None);
    }
}
