//! Questions of food that is kept: which food, where, for how long; and of food on the road.

use super::Asked;
use carvetime_core::bird::Kind;
use carvetime_core::quantity::Measure;
use carvetime_core::safety::{Food, Place};
use chrono::{Datelike, TimeDelta, Weekday};

impl Asked<'_> {
    /// The food, and whether it may as well be a raw bird: "turkey, three days in the fridge".
    pub(super) fn food_and_doubt(&self) -> (Food, bool) {
        let food = self.food();
        let told = self.any(&["food-leftovers", "food-gravy", "food-soup", "food-stuffing", "form-pieces"]);
        (food, food == Food::Leftovers && !told && self.birdish())
    }

    pub(super) fn food(&self) -> Food {
        let cooked = self.any(&["food-leftovers"]);
        if self.has("food-giblets") {
            Food::Giblets
        } else if self.has("food-gravy") {
            if cooked { Food::CookedInGravy } else { Food::Gravy }
        } else if self.has("food-soup") {
            Food::Soup
        } else if self.has("food-stuffing") && !cooked {
            Food::Stuffing
        } else if cooked {
            Food::Leftovers
        } else if matches!(self.kind(), Kind::Duck | Kind::Goose) {
            Food::RawDuckOrGoose
        } else if self.has("form-pieces") {
            Food::RawPieces
        } else if self.any(&["food-raw", "condition-frozen", "condition-fresh", "ask-thaw", "ask-cook", "at-home"]) {
            Food::RawWhole
        } else {
            Food::Leftovers
        }
    }

    pub(super) fn kept_at(&self) -> Place {
        if self.has("place-fridge") || !self.has("place-freezer") { Place::Fridge } else { Place::Freezer }
    }

    /// "Is it fifty minutes home with the leftovers, is that all right?": on the road, and no age of theirs.
    pub(super) fn is_on_the_road(&self) -> bool {
        let food = self.any(&["food-leftovers", "food-gravy", "food-stuffing", "leftovers"]) || self.birdish();
        let spans = self.amounts(Measure::Span).next().is_some();
        food && spans && self.any(&["drive", "way-home"]) && self.wish.dinner.is_none() && !self.has("ask-thaw")
    }

    /// "In my fridge since Thursday": so many days up to now.
    pub(super) fn since_a_day(&self) -> Option<TimeDelta> {
        let since = self.s.find(0, "since")?;
        let day = (since + 1..=since + 2).find_map(|at| self.s.of(at, "weekday-")?.parse::<Weekday>().ok())?;
        Some(TimeDelta::days(i64::from(self.asker.ground.today().weekday().days_since(day))))
    }

    /// "Monday to Thursday in the fridge": so many days.
    pub(super) fn day_to_day(&self) -> Option<TimeDelta> {
        let days = self.places().filter_map(|at| self.s.of(at, "weekday-")?.parse::<Weekday>().ok());
        match days.collect::<Vec<_>>()[..] {
            [from, to] if from != to => Some(TimeDelta::days(i64::from(to.days_since(from)))),
            _ => None,
        }
    }
}
