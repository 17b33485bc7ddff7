//! What can be asked. Gaps are open fields: the answer asks for what matters.

use super::{Advice, Habit};
use crate::reading::{Allergen, Diner, OffDial, Peril, Unwell, WarmThaw};
use carvetime_core::bird::{Bird, BirdMass, Condition, Diners, Form, Kind};
use carvetime_core::fuel::Fuel;
use carvetime_core::quantity::{Amount, Mass, SpoonSystem, Temperature, Unit, Volume};
use carvetime_core::roast::{Heat, OvenLevel};
use carvetime_core::safety::{Food, Place};
use carvetime_core::salt::{Grain, Strength};
use chrono::TimeDelta;

/// A question.
#[derive(Debug, Clone, PartialEq)]
pub enum Question {
    /// An amount of one salt in another.
    SaltConvert {
        /// How much; `None` was not said.
        amount: Option<Amount>,
        /// Of which.
        from: SaltSaid,
        /// In which.
        to: SaltSaid,
    },
    /// What spoons of a salt weigh, or how many spoons a weight is.
    SaltWeigh {
        /// How much.
        amount: Amount,
        /// Of which.
        salt: SaltSaid,
    },
    /// Whether salt that is on a bird is too much.
    OverSalt {
        /// How much it is; `None`: twice what was meant.
        amount: Option<Amount>,
        /// Asked whether it is enough, and not whether it is too much.
        enough: bool,
        /// Salt, where named.
        salt: Option<SaltSaid>,
        /// Bird.
        bird: BirdSaid,
    },
    /// Salt for a bird.
    SaltDose {
        /// The bird.
        bird: BirdSaid,
        /// Which salt, if one was named.
        salt: Option<SaltSaid>,
        /// How strong.
        strength: Strength,
    },
    /// A wet brine.
    Brine {
        /// Percent, if one was named.
        percent: Option<f64>,
        /// The percentage is of the water, not of the whole brine.
        of_water: bool,
        /// Water, if said.
        water: Option<Volume>,
        /// The bird.
        bird: BirdSaid,
        /// Which salt, if one was named.
        salt: Option<SaltSaid>,
    },
    /// How deep salt gets.
    SaltDepth {
        /// In how long; `None` for the usual rest.
        rest: Option<TimeDelta>,
    },
    /// Sodium of a serving.
    Sodium {
        /// The bird.
        bird: BirdSaid,
        /// Servings.
        people: Option<u16>,
        /// Which salt.
        salt: Option<SaltSaid>,
    },
    /// A person's own salt, from its packet.
    OwnSalt {
        /// Spoon.
        volume: Volume,
        /// What it weighs.
        mass: Option<Mass>,
        /// Its sodium.
        sodium: Option<Mass>,
    },
    /// The only salt in the house.
    OnlySalt {
        /// Which.
        salt: SaltSaid,
    },
    /// How long it thaws.
    ThawTime {
        /// The bird.
        bird: BirdSaid,
    },
    /// How long it cooks.
    RoastTime {
        /// The bird.
        bird: BirdSaid,
        /// The heat, if said.
        heat: Option<Heat>,
    },
    /// How big a bird for so many.
    BirdFor {
        /// Kind.
        kind: Kind,
        /// Who eats; nobody asks for one portion.
        diners: Diners,
    },
    /// How many a bird feeds.
    PeopleFor {
        /// The bird.
        bird: BirdSaid,
    },
    /// Fuel for so long.
    Fuel {
        /// Which.
        fuel: Fuel,
        /// How long.
        span: Option<TimeDelta>,
    },
    /// Whether a bird is safe that took so long to get so warm.
    ComeUp {
        /// How long it took.
        span: TimeDelta,
        /// What it reads now.
        temperature: Temperature,
    },
    /// Whether a temperature held for a time is safe.
    Lethality {
        /// The temperature, where its scale is known.
        temperature: Option<Temperature>,
        /// The number, where it is not.
        bare: Option<f64>,
        /// For how long; `None` asks how long it takes.
        held: Option<TimeDelta>,
        /// Asked whether a bird that reads it is done: yes or no is the answer, and not how long it takes.
        done: bool,
        /// Of stuffing, which the tables are not for.
        stuffing: bool,
        /// Kind.
        kind: Kind,
    },
    /// What temperature is safe.
    SafeTemperature {
        /// Of stuffing.
        stuffing: bool,
        /// Asked by its colour.
        colour: bool,
    },
    /// How hot the oven is set.
    OvenTemperature {
        /// The setting asked about.
        setting: Option<Temperature>,
        /// A smoker was spoken of.
        smoker: bool,
    },
    /// What to do about an oven that is off its dial.
    OffDial(OffDial),
    /// How long it stands before carving.
    Stand,
    /// Whether it may be frozen again.
    Refreeze,
    /// Food that stood out.
    LeftOut {
        /// It is still to be done: "can I leave it out".
        ahead: bool,
        /// How long; zero asks for the limit.
        span: Option<TimeDelta>,
        /// In what air.
        air: Option<Temperature>,
    },
    /// How long food keeps.
    Keeps {
        /// What.
        food: Food,
        /// Nobody said whether it is cooked: a raw bird's time is told as well.
        raw_too: bool,
        /// Where.
        place: Place,
        /// How old it is, if asked of a certain one.
        age: Option<TimeDelta>,
    },
    /// How fast to cool.
    Cooling,
    /// How hot to reheat.
    Reheat {
        /// What.
        food: Food,
    },
    /// How to keep hot.
    HoldHot,
    /// Whether to wash the bird.
    Wash,
    /// Whether to thaw on the counter.
    CounterThaw,
    /// It has thawed where it should not.
    WarmThaw(WarmThaw),
    /// Whether and how to stuff.
    Stuffing,
    /// Whether and how to fry.
    Fry {
        /// The bird.
        bird: BirdSaid,
        /// It was called frozen.
        frozen: bool,
    },
    /// Something answered in one short text.
    Advice(Advice),
    /// Whether a fridge this warm is cold enough.
    FridgeAt(Temperature),
    /// A fridge that was without power for longer than it stays cold.
    FridgeOff(TimeDelta),
    /// Whether food that is to stay cold is all right at that.
    ColdAt(Temperature),
    /// Leftovers that are so warm, on the road or behind it.
    LeftoversAt(Temperature),
    /// Stuffing (else gravy) for so many.
    Side {
        /// Stuffing.
        stuffing: bool,
        /// Who eats.
        people: u16,
    },
    /// What a spoon weighs of each salt it may be.
    SpoonWeights {
        /// The spoon.
        volume: Volume,
        /// Kosher was said: flake or coarse.
        kosher: bool,
    },
    /// The dose for a pound or a kilogram of bird.
    SaltPer {
        /// A kilogram; else a pound.
        kilogram: bool,
        /// Which salt.
        salt: Option<SaltSaid>,
    },
    /// How long a usual bird stays in brine.
    BrineTime,
    /// Charcoal in the house.
    CharcoalIndoors,
    /// Fire or gas, now.
    Peril(Peril),
    /// How hot an oven set by a word is.
    OvenLevel(OvenLevel),
    /// A cook who is ill, or has cut themselves.
    Unwell(Unwell),
    /// What somebody leaves who is allergic.
    Allergies(Vec<Allergen>),
    /// What a small child, or somebody at more risk, may have.
    Diner(Diner),
    /// An amount in other units.
    UnitConvert {
        /// How much.
        amount: Amount,
        /// In which; `None` for what the other half of the world uses.
        to: Option<Unit>,
        /// It is butter, so mass and volume are one.
        butter: bool,
        /// Whose spoons, where they were named.
        spoons: Option<SpoonSystem>,
    },
}

impl Question {
    /// Whether somebody may be hurt where it goes unheard: answered wherever it is said.
    pub fn is_of_danger(&self) -> bool {
        matches!(
            self,
            Self::Peril(_)
                | Self::Diner(Diner::Swallowed)
                | Self::CharcoalIndoors
                | Self::Fry { .. }
                | Self::CounterThaw
                | Self::FridgeOff(_)
                | Self::ColdAt(_)
                | Self::LeftoversAt(_)
        )
    }

    /// The stable name of its kind, as `--json` prints it.
    pub fn kind(&self) -> &'static str {
        match self {
            Self::SaltConvert { .. } | Self::SaltWeigh { .. } => "salt-convert",
            Self::SaltDose { .. } | Self::OverSalt { .. } => "salt-dose",
            Self::Brine { .. } => "brine",
            Self::SaltDepth { .. } => "salt-depth",
            Self::Sodium { .. } => "sodium",
            Self::OwnSalt { .. } | Self::OnlySalt { .. } => "own-salt",
            Self::ThawTime { .. } => "thaw-time",
            Self::RoastTime { .. } => "roast-time",
            Self::BirdFor { .. } | Self::PeopleFor { .. } => "portions",
            Self::Fuel { .. } => "fuel",
            Self::ComeUp { .. } => "come-up",
            Self::Lethality { .. } => "lethality",
            Self::SafeTemperature { .. } => "safe-temp",
            Self::OvenTemperature { .. } | Self::OvenLevel(_) | Self::OffDial(_) => "oven-temp",
            Self::Stand => "stand",
            Self::Refreeze => "refreeze",
            Self::LeftOut { .. } => "left-out",
            Self::Keeps { .. } => "keeps",
            Self::Cooling => "cooling",
            Self::Reheat { .. } => "reheat",
            Self::HoldHot => "hold",
            Self::Wash => "wash",
            Self::CounterThaw => "counter-thaw",
            Self::WarmThaw(WarmThaw::Kitchen) => "warm-thaw",
            Self::WarmThaw(WarmThaw::Outside) => Advice::GarageThaw.kind(),
            Self::Stuffing => "stuffing",
            Self::Fry { .. } => "fry",
            Self::Advice(about) => about.kind(),
            Self::LeftoversAt(_) => "left-out",
            Self::FridgeAt(_) | Self::ColdAt(_) => Advice::Fridge.kind(),
            Self::FridgeOff(_) => Advice::Habit(Habit::FridgeDown).kind(),
            Self::Side { .. } => "sides",
            Self::SpoonWeights { .. } => "salt-convert",
            Self::SaltPer { .. } => "salt-dose",
            Self::BrineTime => "brine",
            Self::CharcoalIndoors => "charcoal-indoors",
            Self::Peril(Peril::Fire) => "fire",
            Self::Peril(Peril::Gas) => "gas",
            Self::Peril(Peril::CarbonMonoxide) => "carbon-monoxide",
            Self::Peril(Peril::HotOil) => "hot-oil",
            Self::Peril(Peril::Choking) => "choking",
            Self::Peril(Peril::Fainted) => "fainted",
            Self::Peril(Peril::Allergy) => "allergy",
            Self::Peril(Peril::Burn) => "burn",
            Self::Peril(Peril::Smoke) => "smoke",
            Self::Unwell(Unwell::Sick) => "sick",
            Self::Unwell(Unwell::Ate) => "ate-sick",
            Self::Unwell(Unwell::Cut) => "cut",
            Self::Allergies(_) => "allergies",
            Self::Diner(Diner::Swallowed) => "swallowed",
            Self::Diner(Diner::Chokes | Diner::LittleOne) => "little-one",
            Self::Diner(Diner::Leaves | Diner::Frail | Diner::FrailAtAll) => Habit::Fragile.name(),
            Self::UnitConvert { .. } => "unit-convert",
        }
    }
}

/// A salt as it was named.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SaltSaid {
    /// By its grain.
    Grain(Grain),
    /// "Kosher": flake or coarse was not said, and it matters.
    Kosher,
    /// "My salt".
    Own,
}

/// A bird as far as it was described.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BirdSaid {
    /// Kind; a turkey where none was named.
    pub kind: Kind,
    /// Mass.
    pub mass: Option<BirdMass>,
    /// Condition, if said.
    pub condition: Option<Condition>,
    /// Form.
    pub form: Form,
    /// Stuffed.
    pub stuffed: bool,
    /// Percent of solution.
    pub solution: Option<f64>,
}

impl BirdSaid {
    /// The bird, in that condition unless another was said; `None` without a mass.
    pub fn bird(&self, condition: Condition) -> Option<Bird> {
        Some(Bird {
            kind: self.kind,
            mass: self.mass?,
            condition: self.condition.unwrap_or(condition),
            form: self.form,
            stuffed: self.stuffed,
            solution: self.solution,
        })
    }
}
