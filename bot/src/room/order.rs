//! From a wish with gaps to a complete order: what is still to be asked, and what is taken for granted.

use super::state::Question;
use crate::reading::Wish;
use carvetime_core::bird::{self, Bird, BirdMass, BirdMassError, Condition, Diners, Form, Kind};
use carvetime_core::plan::{self, Carry, ColdPlace, DishHeat, Dishes, Order, Salting, Thawing};
use carvetime_core::quantity::{
    Mass, Temperature, celsius, fahrenheit, grams, in_celsius, in_fahrenheit, in_pounds, pounds,
};
use carvetime_core::range::Range;
use carvetime_core::roast::{Cooker, Heat};
use carvetime_core::salt::NO_SALT_FROM_PERCENT;
use chrono::TimeDelta;
use chrono_tz::Tz;

/// A drive nobody has timed.
const USUAL_DRIVE_MIN: u32 = 30;

/// The first thing that must be asked before the wish can be planned.
pub fn gap(wish: &Wish) -> Option<Question> {
    if wish.dinner.is_none() {
        return Some(match (wish.dinner_day, wish.dinner_hour) {
            (Some(_), None) => Question::DinnerHour,
            (None, Some(_)) => Question::DinnerDay,
            _ => Question::Dinner,
        });
    }
    if wish.mass_g.is_none() && guests(wish) == 0 {
        return Some(Question::Size);
    }
    if wish.condition.is_none() {
        return Some(Question::Condition);
    }
    if wish.cooker.is_none() {
        return Some(Question::Cooker);
    }
    if wish.elsewhere == Some(true) && wish.drive_min.is_none() {
        return Some(Question::Drive);
    }
    None
}

/// How many eat, as far as told.
pub fn guests(wish: &Wish) -> u32 {
    u32::from(wish.adults.unwrap_or(0)) + u32::from(wish.children.unwrap_or(0))
}

/// Who eats, as far as told.
pub fn diners(wish: &Wish) -> Diners {
    Diners {
        adults: wish.adults.unwrap_or(0),
        children: wish.children.unwrap_or(0),
        leftovers: wish.leftovers.unwrap_or(false),
    }
}

/// The kind wished, a turkey unless told otherwise.
pub fn kind(wish: &Wish) -> Kind {
    named(&wish.kind, Kind::from_name).unwrap_or(Kind::Turkey)
}

/// The setting a cooker gets when nobody names one: 325 °F, the lowest the authority allows an oven, and where common
/// practice puts a smoker for a whole bird; a small chicken or duck roasts at 350 °F in the published table. A dial in °C
/// has the next mark above.
pub fn usual_setting(wish: &Wish, cooker: Cooker) -> Temperature {
    let celsius_dial = wish.celsius_dial == Some(true);
    match (kind(wish), cooker, celsius_dial) {
        (Kind::Chicken | Kind::Capon | Kind::Duck, Cooker::Oven, false) => fahrenheit(350.0),
        (Kind::Chicken | Kind::Capon | Kind::Duck, Cooker::Oven, true) => celsius(180.0),
        (.., false) => fahrenheit(325.0),
        (.., true) => celsius(165.0),
    }
}

/// Settings a cook may be offered above the one it has, °F and °C marks of a dial, mildest first.
const HOTTER_F: [f64; 3] = [325.0, 350.0, 375.0];
const HOTTER_C: [f64; 3] = [165.0, 175.0, 190.0];

/// The settings above the cooker's own that may be offered, mildest first, as its dial has them.
pub(super) fn hotter_settings(heat: &Heat) -> Vec<Temperature> {
    let top = in_fahrenheit(plan::hottest(heat.cooker));
    let now = in_fahrenheit(heat.setting);
    let marks = if has_celsius_dial(heat.setting) { HOTTER_C.map(celsius) } else { HOTTER_F.map(fahrenheit) };
    marks.into_iter().filter(|mark| (now + 1.0..=top + 0.1).contains(&in_fahrenheit(*mark))).collect()
}

/// Whether a setting is a mark in °C and none in °F.
fn has_celsius_dial(setting: Temperature) -> bool {
    let marked = |degrees: f64| (degrees / 5.0 - (degrees / 5.0).round()).abs() < 0.01;
    marked(in_celsius(setting)) && !marked(in_fahrenheit(setting))
}

/// Why a complete wish is still no order.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum OrderError {
    /// The mass is no bird's.
    Mass(BirdMassError),
    /// More people than any kitchen feeds.
    TooManyGuests(u32),
}

/// The cooker and its setting; the usual ones where none is told.
pub(super) fn heat(wish: &Wish) -> Heat {
    let cooker = named(&wish.cooker, Cooker::from_name).unwrap_or(Cooker::Oven);
    Heat { cooker, setting: wish.setting_c.map_or_else(|| usual_setting(wish, cooker), celsius) }
}

/// The complete order of a wish without gaps; `None` where one is left.
///
/// # Errors
/// [`OrderError`] where the numbers make no dinner.
pub fn order(wish: &Wish, zone: Tz) -> Result<Option<Order>, OrderError> {
    let Some(dinner) = wish.dinner else { return Ok(None) };
    let kind = kind(wish);
    let (mass, birds) = match wish.mass_g {
        Some(mass_g) => (grams(mass_g), u16::from(wish.birds.unwrap_or(1))),
        None if guests(wish) == 0 => return Ok(None),
        None => {
            let bought = bird::mass_for(kind, &diners(wish)).ok_or(OrderError::TooManyGuests(guests(wish)))?;
            (handy(bought.each), bought.birds)
        }
    };
    let form = named(&wish.form, Form::from_name).unwrap_or(Form::Whole);
    let bird = Bird {
        kind,
        mass: BirdMass::new(mass).map_err(OrderError::Mass)?,
        condition: named(&wish.condition, Condition::from_name).unwrap_or(Condition::Fresh),
        form,
        stuffed: wish.stuffed.unwrap_or(false) && form == Form::Whole,
        solution: wish.solution_percent,
    };
    let heat = heat(wish);
    let drive = TimeDelta::minutes(i64::from(wish.drive_min.unwrap_or(USUAL_DRIVE_MIN)));
    let mut dishes = Dishes::default();
    for (place, dish) in (0_u8..).zip(&wish.dishes) {
        dishes.set(place, dish.as_ref().map(|dish| super::dishes::stored(dish, heat)));
    }
    Ok(Some(Order {
        dishes,
        shelves: wish.shelves,
        birds: u8::try_from(birds).map_err(|_| OrderError::TooManyGuests(guests(wish)))?,
        salting: salting(wish),
        short_rest: wish.short_rest.unwrap_or(false),
        thawing: named(&wish.thawing, Thawing::from_name).unwrap_or(Thawing::Fridge),
        carry: wish.elsewhere.unwrap_or(false).then_some(Carry { drive, hot: wish.hot.unwrap_or(false) }),
        ahead: wish.ahead.unwrap_or(false),
        at_home: wish.at_home.unwrap_or(false),
        shop_from: wish.shop,
        use_by: wish.use_by,
        ..Order::new(bird, diners(wish), heat, dinner, zone)
    }))
}

/// Dry unless told otherwise; not at all where the packer's solution is salt enough, whoever wishes it dry or wet.
fn salting(wish: &Wish) -> Salting {
    if is_packer_salted(wish) {
        return Salting::None;
    }
    named(&wish.salting, Salting::from_name).unwrap_or(Salting::Dry)
}

/// Whether the packer has put salt enough into it, as far as anyone has said.
pub fn is_packer_salted(wish: &Wish) -> bool {
    wish.presalted == Some(true) || wish.solution_percent.is_some_and(|percent| percent >= NO_SALT_FROM_PERCENT)
}

/// The middle of what may be bought, in whole pounds.
fn handy(each: Range<Mass>) -> Mass {
    pounds(in_pounds((each.low + each.high) / 2.0).round())
}

/// Writes an order that an offer has changed back into the wish.
pub fn absorb(wish: &mut Wish, order: &Order) {
    wish.kind = Some(order.bird.kind.name().into());
    wish.mass_g = Some(carvetime_core::quantity::in_grams(order.bird.mass.get()));
    wish.condition = Some(order.bird.condition.name().into());
    wish.form = Some(order.bird.form.name().into());
    wish.stuffed = Some(order.bird.stuffed);
    wish.cooker = Some(order.heat.cooker.name().into());
    wish.setting_c = Some(carvetime_core::quantity::in_celsius(order.heat.setting));
    if order.salting != Salting::None {
        wish.salt_last = None;
    } else if salting(wish) != Salting::None {
        wish.salt_last = Some(true); // given up for want of time
    }
    wish.salting = Some(order.salting.name().into());
    wish.thawing = Some(order.thawing.name().into());
    wish.dinner = Some(order.dinner);
    wish.ahead = Some(order.ahead);
    wish.birds = Some(order.birds);
    wish.short_rest = Some(order.short_rest);
    wish.elsewhere = Some(order.carry.is_some());
    if wish.at_home.unwrap_or(false) != order.at_home {
        wish.at_home = Some(order.at_home); // bought later than it was to be
    }
    wish.use_by = order.use_by;
    wish.hot = order.carry.map(|carry| carry.hot && !order.ahead);
    for (place, told) in (0_u8..).zip(&mut wish.dishes) {
        match (order.dishes.get(place), told.as_mut()) {
            (Some(dish), Some(told)) => {
                told.minutes = u32::try_from(dish.takes.num_minutes()).unwrap_or(told.minutes);
                told.ahead = dish.ahead;
                told.early = dish.early;
                if let Some(cold) = dish.cold {
                    told.cold_min = u32::try_from(cold.least.num_minutes()).ok();
                    told.iced = cold.place == ColdPlace::Cooler;
                }
                if let DishHeat::Oven(setting) | DishHeat::Smoker(setting) = dish.heat {
                    told.setting_c = Some(carvetime_core::quantity::in_celsius(setting));
                }
            }
            _ => *told = None,
        }
    }
}

fn named<T>(name: &Option<String>, from_name: fn(&str) -> Option<T>) -> Option<T> {
    from_name(name.as_deref()?)
}
