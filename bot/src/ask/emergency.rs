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

/// Whom to call: one number for both, or one each.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Numbers {
    /// The fire service: flames, gas, smoke, carbon monoxide.
    pub fire: &'static str,
    /// The ambulance: someone who can't breathe, is burnt, has fainted or is ill.
    pub medical: &'static str,
}

/// Brazil has the fire service at one number and the ambulance (SAMU) at another.
const BRAZILS: Numbers = Numbers { fire: "193", medical: "192" };

const fn one(number: &'static str) -> Option<Numbers> {
    Some(Numbers { fire: number, medical: number })
}

/// The numbers to call, where they are known. See [`source::EMERGENCY_NUMBERS`].
pub(super) fn numbers(zone: Tz, locale: &str) -> Option<Numbers> {
    by_zone(zone.name()).or_else(|| by_country(locale))
}

fn by_zone(zone: &str) -> Option<Numbers> {
    if UK.contains(&zone) {
        return one("999");
    }
    if EUROPEAN.contains(&zone) {
        return one("112");
    }
    let (area, rest) = zone.split_once('/')?;
    let city = rest.split('/').next().unwrap_or_default();
    match area {
        "Europe" => one("112"),
        "Brazil" => Some(BRAZILS),
        "US" | "Canada" | "Mexico" => one("911"),
        "Australia" => one("000"),
        "Pacific" if city == "Honolulu" => one("911"),
        "Pacific" if city == "Auckland" => one("111"),
        "America" if BRAZIL.split_whitespace().any(|known| known == city) => Some(BRAZILS),
        "America" if NORTH.split_whitespace().any(|known| known == city) => one("911"),
        _ => None,
    }
}

fn by_country(locale: &str) -> Option<Numbers> {
    let country = locale
        .split(['-', '_', '.', '@'])
        .skip(1)
        .find(|part| part.len() == 2 && part.bytes().all(|b| b.is_ascii_uppercase()))?;
    match country {
        "US" | "CA" | "MX" | "PR" => one("911"),
        "GB" => one("999"),
        "BR" => Some(BRAZILS),
        "AU" => one("000"),
        "NZ" => one("111"),
        "ES" | "FR" | "DE" | "IT" | "PT" | "AT" | "CH" | "BE" | "LU" | "NL" | "IE" => one("112"),
        _ => None,
    }
}

/// The number to call, as messages select by it: of the ambulance, else of the fire service.
pub(super) fn call(asker: &Asker, person: bool) -> Arg {
    let number = asker.emergency.map(|numbers| if person { numbers.medical } else { numbers.fire });
    Arg::Choice(number.unwrap_or("none"))
}

/// What to do at once.
pub(super) fn peril(peril: Peril, asker: &Asker) -> Answer {
    let call = call(asker, peril.is_of_a_person());
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
                    .with("call", call(asker, true))
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
    fn the_zone_tells_the_numbers_and_else_the_country() {
        assert_eq!(numbers(Europe::Madrid, "es"), one("112"));
        assert_eq!(numbers(Europe::London, "en-US"), one("999"));
        assert_eq!(numbers(America::Mexico_City, "es"), one("911"));
        assert_eq!(numbers(America::Indiana::Knox, "en"), one("911"));
        assert_eq!(numbers(America::Sao_Paulo, "pt-BR"), Some(BRAZILS));
        assert_eq!(numbers(Tz::UTC, "fr-CA"), one("911"));
        assert_eq!(numbers(Tz::UTC, "fr-FR"), one("112"));
        assert_eq!(numbers(Asia::Tokyo, "en"), None);
        assert_eq!(numbers(America::Lima, "es"), None);
    }
}
