//! What else is on the table: dishes that want a heat of their own or the bird's, or a shelf in its fridge, as data.

use super::spans;
use crate::quantity::{Temperature, in_fahrenheit};
use chrono::TimeDelta;

/// As many dishes as a plan holds.
pub const MOST_DISHES: usize = 8;

/// °F between two settings at which things still go into one oven together: both are then set to the bird's or to the middle.
/// Common practice, no source.
const TOGETHER_F: f64 = 25.0;

/// °F at which a dish's middle is about to be hot: a dish takes as long as the oven is above this. Common practice, no source.
const MIDDLE_F: f64 = 140.0;

/// What a dish is heated on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DishHeat {
    /// The oven, at this setting.
    Oven(Temperature),
    /// The smoker, at this setting.
    Smoker(Temperature),
    /// A burner.
    Stove,
    /// Nothing: it is only made.
    None,
}

/// Where a dish is kept cold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ColdPlace {
    /// In the fridge, where it needs room.
    Fridge,
    /// In a cooler with ice, a thermometer in it.
    Cooler,
}

/// How a dish waits in the cold for the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Cold {
    /// At least so long.
    pub least: TimeDelta,
    /// Room it takes, in halves of a shelf.
    pub halves: u8,
    /// Where.
    pub place: ColdPlace,
}

/// Room a dish takes when nobody has said more: half a shelf. Common practice, no source.
pub const DISH_HALVES: u8 = 1;

/// A dish as a timed job.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dish {
    /// What it is heated on.
    pub heat: DishHeat,
    /// From the first move to ready.
    pub takes: TimeDelta,
    /// Made ahead and cold, or warmed at the table: it needs the fridge and not the last hour.
    pub ahead: bool,
    /// It may be made some time before it is eaten, and is kept hot.
    pub early: bool,
    /// It waits cold for the table.
    pub cold: Option<Cold>,
}

/// The dishes of an order. A dish keeps its place when another goes, for its place is its name.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Dishes([Option<Dish>; MOST_DISHES]);

impl Dishes {
    /// Puts a dish at a place. `false`: there is no such place.
    pub fn set(&mut self, place: u8, dish: Option<Dish>) -> bool {
        self.0.get_mut(usize::from(place)).map(|slot| *slot = dish).is_some()
    }

    /// The dish at a place.
    pub fn get(&self, place: u8) -> Option<Dish> {
        self.0.get(usize::from(place)).copied().flatten()
    }

    /// All of them, each with its place.
    pub fn iter(&self) -> impl Iterator<Item = (u8, Dish)> + '_ {
        (0_u8..).zip(&self.0).filter_map(|(place, dish)| Some((place, (*dish)?)))
    }

    /// Whether there is none.
    pub fn is_empty(&self) -> bool {
        self.iter().next().is_none()
    }
}

impl DishHeat {
    /// The setting, where it has one.
    pub fn setting(self) -> Option<Temperature> {
        match self {
            Self::Oven(setting) | Self::Smoker(setting) => Some(setting),
            Self::Stove | Self::None => None,
        }
    }

    /// Both want the same thing in the kitchen.
    pub(super) fn is_same_place(self, other: Self) -> bool {
        matches!(
            (self, other),
            (Self::Oven(_), Self::Oven(_)) | (Self::Smoker(_), Self::Smoker(_)) | (Self::Stove, Self::Stove)
        )
    }

    /// The same place can be at a setting that suits both.
    pub(super) fn agrees(self, other: Self) -> bool {
        match (self.setting(), other.setting()) {
            (Some(one), Some(other)) => (in_fahrenheit(one) - in_fahrenheit(other)).abs() <= TOGETHER_F + 1e-9,
            _ => true,
        }
    }

    /// How many such dishes go at once: two racks, four burners. Common practice, no source.
    pub fn room(self) -> usize {
        match self {
            Self::Oven(_) | Self::Smoker(_) => 2,
            Self::Stove => 4,
            Self::None => MOST_DISHES,
        }
    }
}

impl Dish {
    /// How long it waits hot for the table at most.
    pub fn waits(self) -> TimeDelta {
        if self.early { spans::DISH_KEPT_HOT } else { spans::DISH_WAITS }
    }

    /// A dish that comes to the table straight from its heat.
    pub fn new(heat: DishHeat, takes: TimeDelta) -> Self {
        Self { heat, takes, ahead: false, early: false, cold: None }
    }

    /// How it waits in the cold, said or following from its being made ahead; `None`: it comes to the table when it is made.
    pub fn cold(self) -> Option<Cold> {
        let usual = Cold { least: spans::COLD_THROUGH, halves: DISH_HALVES, place: ColdPlace::Fridge };
        self.cold.or(self.ahead.then_some(usual))
    }

    /// Room it takes in the fridge, in halves of a shelf.
    pub fn in_fridge(self) -> u8 {
        self.cold().filter(|cold| cold.place == ColdPlace::Fridge).map_or(0, |cold| cold.halves)
    }

    /// The same dish beside the bird at its setting: longer where that is lower, to five minutes. Common practice, no source.
    #[must_use]
    pub fn beside(self, setting: Temperature) -> Self {
        let Some(own) = self.heat.setting() else { return self };
        let above = |at: Temperature| (in_fahrenheit(at) - MIDDLE_F).max(20.0);
        let minutes = self.takes.num_minutes() as f64 * above(own) / above(setting);
        let takes = TimeDelta::minutes((minutes / 5.0).ceil() as i64 * 5);
        let heat = match self.heat {
            DishHeat::Oven(_) => DishHeat::Oven(setting),
            DishHeat::Smoker(_) => DishHeat::Smoker(setting),
            other => other,
        };
        Self { heat, takes, ..self }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::fahrenheit;

    #[test]
    fn a_cooler_oven_takes_longer_and_a_hotter_one_less() {
        let dish = Dish::new(DishHeat::Oven(fahrenheit(375.0)), TimeDelta::minutes(45));
        assert_eq!(dish.beside(fahrenheit(325.0)).takes, TimeDelta::minutes(60));
        assert_eq!(dish.beside(fahrenheit(375.0)).takes, TimeDelta::minutes(45));
        assert!(dish.beside(fahrenheit(425.0)).takes < TimeDelta::minutes(45));
        assert_eq!(dish.beside(fahrenheit(325.0)).heat, DishHeat::Oven(fahrenheit(325.0)));
    }

    #[test]
    fn twenty_five_degrees_apart_still_share() {
        let oven = |f| DishHeat::Oven(fahrenheit(f));
        assert!(oven(350.0).agrees(oven(325.0)) && !oven(375.0).agrees(oven(325.0)));
        assert!(
            !oven(350.0).is_same_place(DishHeat::Stove)
                && !oven(350.0).is_same_place(DishHeat::Smoker(fahrenheit(350.0)))
        );
    }

    #[test]
    fn a_dish_keeps_its_place() {
        let dish = |minutes| Dish::new(DishHeat::Stove, TimeDelta::minutes(minutes));
        let mut dishes = Dishes::default();
        assert!(dishes.is_empty() && dishes.set(0, Some(dish(10))) && dishes.set(1, Some(dish(20))));
        assert!(dishes.set(0, None));
        assert_eq!(dishes.iter().collect::<Vec<_>>(), [(1, dish(20))]);
        assert!(!dishes.set(MOST_DISHES as u8, Some(dish(1))));
    }
}

names!(ColdPlace { Fridge => "fridge", Cooler => "cooler" });
