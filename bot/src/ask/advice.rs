//! Advice that is one short text: what to do when something goes wrong, and habits people ask about.
//!
//! Owns the choice of words and sources. Which text of a person asks for which advice is read in [`super::read`].

use super::Asker;
use super::answer::Answer;
use super::habit::Habit;
use super::read::NotUnderstood;
use super::safety::fridge_too_warm;
use crate::words::{Arg, Text};
use carvetime_core::quantity::{Mass, Temperature, fahrenheit, grams, in_fahrenheit, in_grams, in_pounds, milliliters};
use carvetime_core::safety::{self as rules, Food};
use carvetime_core::source::{self, Source};
use carvetime_core::thaw::WATER_CHANGE_EVERY;
use chrono::TimeDelta;

/// What is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Advice {
    /// How cold the fridge is kept.
    Fridge,
    /// Whether to baste.
    Baste,
    /// Salt for a bird that was koshered, and so salted.
    KosherBird,
    /// A bird nobody published times for.
    OtherBird,
    /// Where the thermometer goes.
    Thermometer,
    /// A bird that thawed in a garage, on a porch, in a car.
    GarageThaw,
    /// Whether food may be kept in a garage, on a balcony.
    ColdPlace,
    /// The oven is dead.
    OvenDown,
    /// It ought to be thawed and is not.
    StillFrozen,
    /// Cooking it frozen.
    FromFrozen,
    /// How to tell that it is thawed.
    IsThawed,
    /// It cooks too fast.
    TooFast,
    /// It cooks too slowly.
    TooSlow,
    /// The thermometer shows the same for long.
    Stall,
    /// Stuffing it long before it goes on.
    StuffAhead,
    /// The meat is done and the stuffing is not.
    StuffingSlow,
    /// A raw bird past the date on its label.
    PastDate,
    /// It smells, or feels slimy.
    Smell,
    /// Which thermometer, or none at all.
    WhichThermometer,
    /// The fridge is full.
    NoRoom,
    /// Food on the road.
    CarryFood,
    /// Someone at the table may not have salt.
    LowSalt,
    /// The skin is dark enough.
    Foil,
    /// How something is done.
    Habit(Habit),
}

impl Advice {
    /// The stable name of the question's kind.
    pub fn kind(self) -> &'static str {
        match self {
            Self::Fridge => "fridge-temp",
            Self::Baste => "baste",
            Self::KosherBird => "kosher-bird",
            Self::OtherBird => "other-bird",
            Self::Thermometer => "thermometer",
            Self::GarageThaw => "garage-thaw",
            Self::ColdPlace => "cold-place",
            Self::OvenDown => "oven-down",
            Self::StillFrozen => "still-frozen",
            Self::FromFrozen => "from-frozen",
            Self::IsThawed => "is-thawed",
            Self::TooFast => "too-fast",
            Self::TooSlow => "too-slow",
            Self::Stall => "stall",
            Self::StuffAhead => "stuff-ahead",
            Self::StuffingSlow => "stuffing-slow",
            Self::PastDate => "past-date",
            Self::Smell => "smell",
            Self::WhichThermometer => "which-thermometer",
            Self::NoRoom => "no-room",
            Self::CarryFood => "carry-food",
            Self::LowSalt => "low-salt",
            Self::Foil => "foil",
            Self::Habit(habit) => habit.name(),
        }
    }
}

/// Whether a fridge at `at` is cold enough.
pub(super) fn fridge_at(at: Temperature, asker: &Asker) -> Result<Answer, NotUnderstood> {
    Ok(advice(Advice::Fridge, asker)?.say_all(fridge_too_warm(Some(at))))
}

/// The advice, with its caution.
pub(super) fn advice(about: Advice, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let degrees = |f: f64| Arg::Temperature(fahrenheit(f));
    let fridge = rules::fridge(asker.jurisdiction);
    let cold = fridge.temperature().unwrap_or(fahrenheit(40.0));
    let hold = rules::hold_hot(asker.jurisdiction);
    let hot = Arg::Temperature(hold.temperature().unwrap_or(fahrenheit(140.0)));
    let end = rules::end_point(carvetime_core::bird::Form::Whole, asker.jurisdiction);
    // Seventy degrees are enough for two minutes only: what needs no minutes is told.
    let done = if end.hold > TimeDelta::zero() { fahrenheit(165.0) } else { end.temperature };
    let done = Arg::Temperature(done);
    let answer = Answer::new(about.kind());
    let say = |text: Text, sources: &[Source]| {
        sources.iter().fold(answer.clone().say(text), |answer, source| answer.from(*source))
    };
    Ok(match about {
        Advice::Fridge => say(Text::new("ask-fridge").with("cold", Arg::Temperature(cold)), &[fridge.source]).value(
            "temperature",
            in_fahrenheit(cold),
            "°F",
        ),
        Advice::Baste => say(Text::new("ask-baste"), &[source::BASTING]),
        Advice::KosherBird => say(Text::new("ask-kosher-bird"), &[source::KOSHERING]),
        Advice::OtherBird => say(Text::new("ask-other-bird").with("target", done), &[source::SAFE_MINIMUM]),
        Advice::Thermometer => say(Text::new("ask-thermometer").with("target", done), &[source::ROASTING_CHARTS]),
        Advice::GarageThaw => say(
            Text::new("ask-garage-thaw").with("cold", Arg::Temperature(cold)),
            &[rules::US_TWO_HOUR_RULE.source, source::BIG_THAW],
        ),
        Advice::ColdPlace => {
            say(Text::new("ask-cold-place").with("cold", Arg::Temperature(cold)), &[fridge.source, source::COOLER])
        }
        Advice::OvenDown => {
            let care = Text::new("ask-oven-down-care").with("limit", Arg::Span(TimeDelta::hours(2))).with("hot", hot);
            say(Text::new("ask-oven-down"), &[rules::US_TWO_HOUR_RULE.source]).say(care)
        }
        Advice::StillFrozen => {
            let water = Text::new("ask-still-frozen").with("every", Arg::Span(WATER_CHANGE_EVERY));
            say(water, &[source::BIG_THAW]).say(Text::new("ask-still-frozen-cook").with("target", done))
        }
        Advice::FromFrozen => say(
            Text::new("ask-from-frozen")
                .with("oven", degrees(carvetime_core::roast::OVEN_AUTHORITY_F))
                .with("target", degrees(165.0)),
            &[source::BIG_THAW],
        ),
        Advice::IsThawed => say(Text::new("ask-is-thawed").with("cold", Arg::Temperature(cold)), &[source::BIG_THAW]),
        Advice::TooFast => say(
            Text::new("ask-too-fast")
                .with("oven", degrees(carvetime_core::roast::OVEN_AUTHORITY_F))
                .with("target", done)
                .with("hot", hot),
            &[rules::US_OVEN_MINIMUM.source, hold.source],
        ),
        Advice::TooSlow => {
            say(Text::new("ask-too-slow").with("oven", degrees(350.0)).with("target", done), &[source::SAFE_MINIMUM])
        }
        Advice::Stall => say(Text::new("ask-stall").with("target", done), &[source::STALL]),
        Advice::StuffAhead => {
            say(Text::new("ask-stuff-ahead").with("target", degrees(165.0)), &[source::TURKEY_STUFFING])
        }
        Advice::StuffingSlow => {
            say(Text::new("ask-stuffing-slow").with("target", degrees(165.0)), &[source::TURKEY_STUFFING])
        }
        Advice::PastDate => {
            let days = super::safety::days_of(Food::RawWhole, asker);
            let sources = &[source::USE_BY, source::SELL_BY, source::COLD_STORAGE];
            say(Text::new("ask-past-date").with("days", days), sources).say(Text::new("ask-past-date-care"))
        }
        Advice::Foil => say(Text::new("ask-foil"), &[source::BASTING]),
        Advice::LowSalt => say(Text::new("ask-low-salt"), &[source::ADDED_SOLUTION]),
        Advice::Smell => say(Text::new("ask-smell"), &[source::SPOILED]),
        Advice::WhichThermometer => {
            say(Text::new("ask-thermometer-which").with("ice", degrees(32.0)), &[source::THERMOMETERS])
        }
        Advice::NoRoom => {
            say(Text::new("ask-no-room").with("cold", Arg::Temperature(cold)), &[fridge.source, source::COOLER])
        }
        Advice::Habit(habit) => say(habit.text(asker), habit.sources()),
        Advice::CarryFood => say(
            Text::new("ask-carry-food")
                .with("cold", Arg::Temperature(cold))
                .with("hot", hot)
                .with("limit", Arg::Span(TimeDelta::hours(2)))
                .with("short", Arg::Span(TimeDelta::hours(1)))
                .with("air", degrees(90.0)),
            &[rules::US_TWO_HOUR_RULE.source, hold.source, fridge.source],
        ),
    })
}

/// Stuffing or gravy for so many, between two amounts each.
pub(super) fn side(stuffing: bool, people: u16, asker: &Asker) -> Result<Answer, NotUnderstood> {
    let people_f = f64::from(people);
    // Half a cup to three quarters of stuffing, a third to half of gravy.
    let (low_ml, high_ml) = if stuffing { (118.0, 177.0) } else { (79.0, 118.0) };
    let amount = |ml: f64| match (asker.units, stuffing) {
        (crate::words::UnitSystem::Us, _) => Arg::Spoons(milliliters(ml * people_f)),
        // Bread stuffing weighs about 0.85 g a millilitre.
        (_, true) => Arg::Mass(round_mass(ml * people_f * 0.85)),
        (_, false) => Arg::Liquid(milliliters(ml * people_f)),
    };
    let id = if stuffing { "ask-stuffing-for" } else { "ask-gravy-for" };
    let mut answer = Answer::new("sides").say(
        Text::new(id)
            .with("people", Arg::Count(i64::from(people)))
            .with("low", amount(low_ml))
            .with("high", amount(high_ml)),
    );
    answer = answer.value("volume-low", low_ml * people_f, "mL").value("volume-high", high_ml * people_f, "mL");
    Ok(answer.from(source::SIDES))
}

/// To 50 g: nobody weighs stuffing closer.
fn round_mass(g: f64) -> Mass {
    grams((g / 50.0).round().max(1.0) * 50.0)
}

/// Whether and how to fry; "no" first where the bird is frozen or stuffed, and the time where its mass is known.
pub(super) fn fry(said: &super::BirdSaid, frozen: bool) -> Result<Answer, NotUnderstood> {
    let mut answer = Answer::new("fry").from(source::FRYING);
    if frozen {
        answer = answer.say(Text::new("ask-fry-frozen"));
    } else if said.stuffed {
        answer = answer.say(Text::new("ask-fry-stuffed"));
    }
    if let Some(mass) = said.mass.map(|mass| mass.get()) {
        if in_pounds(mass) > 12.01 {
            answer = answer.say(Text::new("ask-fry-heavy").with("given", Arg::Mass(mass)));
        } else if !frozen && !said.stuffed {
            let minutes = |each: f64| TimeDelta::minutes((in_pounds(mass) * each).round() as i64);
            answer = answer
                .say(
                    Text::new("ask-fry-time")
                        .with("mass", Arg::Mass(grams(in_grams(mass))))
                        .with("time", Arg::SpanRange(minutes(3.0), minutes(5.0)))
                        .with("target", Arg::Temperature(fahrenheit(165.0))),
                )
                .span_value("low", minutes(3.0), "min")
                .span_value("high", minutes(5.0), "min");
        }
    }
    Ok(answer.say(Text::new("ask-fry")).say(Text::new("ask-fry-care")))
}
