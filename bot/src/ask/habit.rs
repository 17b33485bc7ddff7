//! How things are done in a kitchen, where no weight or time of anyone's bird is needed: carving, which side up, a wet fridge shelf.
//!
//! Owns which words ask for which habit ([`asked`]) and where each comes from; what is said stands in `ask.ftl` under `ask-` and the
//! habit's name.

use super::Asker;
use super::safety::days_of;
use crate::words::{Arg, Text};
use carvetime_core::quantity::fahrenheit;
use carvetime_core::roast::OVEN_AUTHORITY_F;
use carvetime_core::safety::{self as rules, Food};
use carvetime_core::source::{self, Source};
use carvetime_core::thaw::WATER_CHANGE_EVERY;
use chrono::TimeDelta;

/// Lists the habits: what is said, and sources.
macro_rules! habits {
    ($($(#[$doc:meta])* $habit:ident = $name:literal: $($source:ident),+;)+) => {
        /// Something people ask how to do, or whether.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum Habit { $($(#[$doc])* $habit),+ }

        impl Habit {
            /// All of them.
            pub const ALL: &[Self] = &[$(Self::$habit),+];

            /// The message that says it.
            fn id(self) -> &'static str {
                match self { $(Self::$habit => $name),+ }
            }

            /// Where it comes from.
            pub fn sources(self) -> &'static [Source] {
                match self { $(Self::$habit => &[$(source::$source),+]),+ }
            }
        }
    };
}

habits! {
    /// Cutting it up.
    Carve = "ask-carve": CARVING;
    /// The timer that came in the bird.
    PopUp = "ask-pop-up": POP_UP_TIMERS, SAFE_MINIMUM;
    /// The giblets were roasted in their bag.
    BagInside = "ask-bag-inside": GIBLET_BAG;
    /// The probe is out, or broken.
    ProbeOut = "ask-probe-out": THERMOMETERS;
    /// Raw juice where it should not be.
    Mess = "ask-mess": HANDS, LOWEST_SHELF;
    /// Bones for a dog.
    Dog = "ask-dog": BONES_FOR_PETS;
    /// Someone at the table is at higher risk.
    Fragile = "ask-fragile": VULNERABLE, SAFE_MINIMUM;
    /// Neck and giblets.
    Neck = "ask-neck": COLD_STORAGE_COUNTY, SAFE_MINIMUM;
    /// From the smoker into the oven.
    FinishOven = "ask-finish-oven": SMOKING, ROASTING_CHARTS;
    /// Breast up or down.
    SideUp = "ask-side-up": ROASTING_HABITS;
    /// Where in the fridge.
    FridgeShelf = "ask-fridge-shelf": LOWEST_SHELF;
    /// Covered in the fridge, or not.
    FridgeCover = "ask-fridge-cover": SKIN_HABITS, LOWEST_SHELF;
    /// Rinsing the salt off.
    RinseSalt = "ask-rinse-salt": WASHING, BRINING_HABITS;
    /// Salted by two people.
    SaltedTwice = "ask-salted-twice": BRINING_HABITS, WASHING;
    /// Salting ice.
    BrineFrozen = "ask-brine-frozen": BRINING_HABITS, FOUR_STEPS;
    /// Whether to brine at all.
    BrineOrNot = "ask-brine-or-not": BRINING_HABITS, ADDED_SOLUTION, KOSHERING;
    /// A rack, and which shelf.
    Rack = "ask-rack": ROASTING_HABITS;
    /// Tying the legs.
    Truss = "ask-truss": ROASTING_HABITS;
    /// Water in the roasting pan.
    PanWater = "ask-pan-water": ROASTING_HABITS;
    /// Table salt or flakes.
    WhichSalt = "ask-which-salt": TABLE_SALT, KOSHER_SALT;
    /// Too big for oven or pan.
    Fits = "ask-fits": ROASTING_HABITS;
    /// In a pot instead.
    Boil = "ask-boil": SAFE_MINIMUM, GRAVY_HABITS;
    /// Cooking in a bag.
    OvenBag = "ask-oven-bag": OVEN_BAGS;
    /// Out of the fridge before it goes on.
    Temper = "ask-temper": DANGER_ZONE, SKIN_HABITS;
    /// Wind, rain, frost.
    Weather = "ask-weather": SMOKE_HABITS, CHARCOAL;
    /// A grill.
    Grill = "ask-grill": SMOKE_HABITS, CHARCOAL;
    /// Which wood, what smoke.
    Smoke = "ask-smoke": SMOKE_HABITS, CHARCOAL;
    /// Gravy.
    Gravy = "ask-gravy-how": GRAVY_HABITS, LEFTOVERS;
    /// Broth from the bones.
    Carcass = "ask-carcass": GRAVY_HABITS, COLD_STORAGE;
    /// Bones that stood out.
    BonesOut = "ask-bones-out": DANGER_ZONE, LEFTOVERS;
    /// Warmed up more than once.
    ReheatTwice = "ask-reheat-twice": LEFTOVERS, DANGER_ZONE;
    /// Crisp skin.
    Crisp = "ask-crisp": SKIN_HABITS;
    /// Butter or oil.
    Fat = "ask-fat": SKIN_HABITS;
    /// What stands in for butter.
    NoButter = "ask-no-butter": SKIN_HABITS;
    /// Heating the oven first.
    Preheat = "ask-preheat": ROASTING_HABITS;
    /// Done long before dinner.
    Early = "ask-early": SAFE_MINIMUM, DANGER_ZONE, LEFTOVERS;
    /// An oven whose knob has numbers instead of degrees.
    Dial = "ask-dial": ROASTING_HABITS, ROASTING_CHARTS;
    /// With the fan.
    Fan = "ask-fan": FAN_OVEN, ROASTING_CHARTS;
    /// Cooked or carved the day before.
    Ahead = "ask-ahead": LEFTOVERS, COLD_STORAGE;
    /// Opening it flat.
    Flat = "ask-flat": FLAT_BIRD;
    /// Which to buy, and when.
    FreshOrFrozen = "ask-fresh-or-frozen": COUNTDOWN, COLD_STORAGE;
    /// Thawing in a microwave.
    ThawMicrowave = "ask-thaw-microwave": BIG_THAW;
    /// Thawing under water.
    ThawSink = "ask-thaw-sink": BIG_THAW;
    /// Cut open and raw inside.
    RawInside = "ask-raw-inside": SAFE_MINIMUM, COLOUR, HANDS;
    /// Raw meat was eaten.
    AteRaw = "ask-ate-raw": FOOD_POISONING, SAFE_MINIMUM;
    /// Half cooked now, the rest later.
    HalfCook = "ask-half-cook": PART_COOKED, SAFE_MINIMUM;
    /// A fridge without power.
    FridgeDown = "ask-fridge-down": POWER_OUTAGE;
    /// A freezer without power.
    FreezerDown = "ask-freezer-down": POWER_OUTAGE;
    /// What is eaten raw met raw juice.
    Crossed = "ask-crossed": HANDS;
    /// What heat kills, and what it does not mend.
    Kills = "ask-kills": SAFE_MINIMUM, DANGER_ZONE;
    /// Liquid into the meat with a needle.
    Inject = "ask-inject": SAFE_MINIMUM, BRINING_HABITS;
    /// It fell on the floor.
    Dropped = "ask-dropped": HANDS, WASHING, SAFE_MINIMUM;
    /// Pricking the skin.
    Prick = "ask-prick": SKIN_HABITS;
    /// Someone is afraid of making the guests ill.
    Worry = "ask-worry": FOUR_STEPS, SAFE_MINIMUM, DANGER_ZONE;
    /// It may not be done at the hour of dinner.
    NotInTime = "ask-not-in-time": SAFE_MINIMUM, ROASTING_HABITS;
}

impl Habit {
    /// The stable name.
    pub fn name(self) -> &'static str {
        self.id().trim_start_matches("ask-")
    }

    /// Whether it is said even where people only talk to each other of it: someone could be hurt.
    pub fn is_of_safety(self) -> bool {
        matches!(
            self,
            Self::PopUp
                | Self::BagInside
                | Self::ProbeOut
                | Self::OvenBag
                | Self::RawInside
                | Self::AteRaw
                | Self::HalfCook
                | Self::FridgeDown
                | Self::FreezerDown
                | Self::Crossed
                | Self::BonesOut
        )
    }

    /// How it is done, as `asker` is told it.
    pub(in crate::ask) fn text(self, asker: &Asker) -> Text {
        let degrees = |f: f64| Arg::Temperature(fahrenheit(f));
        let ruled = |rule: rules::Rule, f: f64| Arg::Temperature(rule.temperature().unwrap_or(fahrenheit(f)));
        Text::new(self.id())
            .with("target", degrees(165.0))
            .with("oven", degrees(OVEN_AUTHORITY_F))
            .with("crisp", degrees(425.0))
            .with("ice", degrees(32.0))
            .with("cold", ruled(rules::fridge(asker.jurisdiction), 40.0))
            .with("hot", ruled(rules::hold_hot(asker.jurisdiction), 140.0))
            .with("limit", Arg::Span(TimeDelta::hours(2)))
            .with("unopened", Arg::Span(TimeDelta::hours(4)))
            .with("full", Arg::Span(TimeDelta::hours(48)))
            .with("wash", Arg::Span(TimeDelta::seconds(20)))
            .with("half", Arg::Span(TimeDelta::hours(24)))
            .with("every", Arg::Span(WATER_CHANGE_EVERY))
            .with("days", days_of(Food::Leftovers, asker))
            .with("raw", days_of(Food::RawWhole, asker))
            .with("giblets", days_of(Food::Giblets, asker))
    }
}

/// What else than the roast may be done the day before.
const NOT_THE_ROAST: [&str; 6] = ["ask-stuff", "food-stuffing", "food-gravy", "salt-any", "step-salt", "step-buy"];

/// The habit that is asked about. What names one thing only is enough by itself: nobody types "how" with greasy fingers. `has` tells of a meaning whether it occurs; `numbers`: there is more to it than a habit.
pub(super) fn asked(has: impl Fn(&str) -> bool, numbers: bool) -> Option<Habit> {
    let any = |meanings: &[&str]| meanings.iter().any(|meaning| has(meaning));
    let asks = any(&["ask-how", "ask-safe", "ask-help", "ask-tell", "ask-where", "habit-must"]);
    let for_how_long = any(&["ask-how-long", "ask-keep", "ask-when"]);
    let salting = any(&["salting-dry", "salting-wet"]);
    let thaws = any(&["ask-thaw", "step-thaw"]);
    let frozen = any(&["condition-frozen", "condition-part-thawed"]);
    let which = frozen && any(&["habit-must", "ask-how", "habit-or"]) && !has("ask-thaw");
    // What can kill has an answer of its own.
    if has("fryer") || has("ask-indoors") && any(&["fuel-charcoal", "fuel-propane", "fuel-pellets", "cooker-smoker"]) {
        return None;
    }
    // The most telling first: what names one thing only, then what is told by two meanings together.
    let habit = if has("habit-ate-raw") {
        Habit::AteRaw
    } else if has("habit-half-cook") {
        Habit::HalfCook
    } else if has("habit-raw-inside") && !numbers {
        Habit::RawInside
    } else if has("habit-freezer-down") {
        Habit::FreezerDown
    } else if has("habit-kills") && !numbers {
        Habit::Kills
    } else if has("habit-inject") && !numbers {
        Habit::Inject
    } else if any(&["habit-dropped", "habit-fell"]) {
        Habit::Dropped
    } else if has("habit-prick") && !numbers {
        Habit::Prick
    } else if has("habit-worry") && !numbers {
        Habit::Worry
    } else if has("habit-not-in-time") {
        Habit::NotInTime
    } else if has("habit-bag-inside") {
        Habit::BagInside
    } else if has("habit-pop-up") {
        Habit::PopUp
    } else if has("habit-probe-out") {
        Habit::ProbeOut
    } else if has("habit-crossed") {
        Habit::Crossed
    } else if has("habit-mess") {
        Habit::Mess
    } else if has("habit-dog") && (asks || has("habit-carcass")) {
        Habit::Dog
    } else if has("habit-fragile") && !numbers {
        Habit::Fragile
    } else if has("habit-salted-twice") {
        Habit::SaltedTwice
    } else if has("habit-temper") {
        Habit::Temper
    } else if has("habit-finish-oven") && asks {
        Habit::FinishOven
    } else if has("habit-early") || any(&["earlier", "ask-too-fast"]) && has("done") {
        Habit::Early
    } else if has("habit-dial") {
        Habit::Dial
    } else if has("habit-weather") {
        Habit::Weather
    } else if numbers {
        return None;
    } else if any(&["food-giblets", "habit-neck"]) && any(&["ask-how", "ask-help"]) && !for_how_long {
        Habit::Neck
    } else if has("habit-side-up") {
        Habit::SideUp
    } else if any(&["place-fridge", "step-chill"]) && has("ask-where") && !any(&["ask-thermometer", "ask-temperature"])
    {
        Habit::FridgeShelf
    } else if has("place-fridge") && any(&["habit-cover", "ask-foil"]) && (asks || has("habit-or")) {
        Habit::FridgeCover
    } else if has("ask-wash") && (salting || has("salt-any")) {
        Habit::RinseSalt
    } else if salting && frozen && asks && !for_how_long {
        Habit::BrineFrozen
    } else if (salting && has("habit-must") || has("salting-dry") && has("salting-wet")) && !for_how_long {
        Habit::BrineOrNot
    } else if has("habit-rack") && (asks || any(&["negation", "ask-roast", "salting-none"])) {
        Habit::Rack
    } else if has("habit-truss") {
        Habit::Truss
    } else if has("habit-pan-water") {
        Habit::PanWater
    } else if has("habit-which-salt") {
        Habit::WhichSalt
    } else if has("habit-fits") {
        Habit::Fits
    } else if has("habit-boil") {
        Habit::Boil
    } else if has("habit-oven-bag") && asks {
        Habit::OvenBag
    } else if has("habit-smoke") {
        Habit::Smoke
    } else if has("habit-grill") && asks && !has("ask-temperature") && !for_how_long {
        Habit::Grill
    } else if has("habit-gravy") || has("food-gravy") && any(&["habit-salty", "ask-help"]) {
        Habit::Gravy
    } else if has("habit-carcass") && (asks || any(&["food-soup", "food-gravy"])) && !for_how_long {
        Habit::Carcass
    } else if has("habit-crisp") {
        Habit::Crisp
    } else if has("habit-no-butter") {
        Habit::NoButter
    } else if has("habit-fat") {
        Habit::Fat
    } else if (has("habit-preheat") && asks || has("step-fire") && has("habit-must")) && !for_how_long {
        Habit::Preheat
    } else if has("cooker-fan-oven") && any(&["ask-how", "habit-must", "ask-safe", "habit-or"]) && !for_how_long {
        Habit::Fan
    } else if thaws && has("habit-microwave") {
        Habit::ThawMicrowave
    } else if has("thawing-cold-water") && asks && !for_how_long && !any(&["ask-wash", "ask-counter"]) {
        Habit::ThawSink
    } else if has("ahead") && asks && !salting && !thaws && !any(&NOT_THE_ROAST) {
        Habit::Ahead
    } else if has("form-flat") && asks && !for_how_long {
        Habit::Flat
    } else if has("condition-fresh") && (which || has("step-buy") && has("ask-when")) {
        Habit::FreshOrFrozen
    } else if has("step-carve") && any(&["ask-how", "ask-help", "ask-tell"]) && !for_how_long && !has("ask-temperature")
    {
        Habit::Carve
    } else {
        return None;
    };
    Some(habit)
}
