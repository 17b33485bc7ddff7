//! How long things take and may take: the numbers of the plan, each with where it comes from.
//!
//! "Practice" stands for: common practice, no source. Numbers of thawing, cooking and safety belong to those modules.

use chrono::TimeDelta;

const fn minutes(n: i64) -> TimeDelta {
    TimeDelta::minutes(n)
}

const fn hours(n: i64) -> TimeDelta {
    TimeDelta::hours(n)
}

/// From the shop into the fridge. Practice.
pub const BRING_HOME: TimeDelta = minutes(30);
/// A raw bird in the fridge: 1 to 2 days. Countdown to the Thanksgiving Holiday; Cold Food Storage Chart.
pub const RAW_KEEPS: TimeDelta = TimeDelta::days(2);
/// A fresh bird that is frozen at home is left there so long before it thaws: sooner it is not frozen through. Practice.
pub const FREEZING: TimeDelta = hours(36);
/// A bird still to be bought is bought so much later than it might be, lest an hour's delay cost the dinner. Practice.
pub const RAW_SLACK: TimeDelta = hours(3);
/// Thawed in the fridge: 1 to 2 days. Turkey thawing table.
pub const THAWED_KEEPS: TimeDelta = TimeDelta::days(2);
/// The table counts in days: thawing begun half a day before it was planned is no reason to change the dinner. Practice.
pub const THAWED_SLACK: TimeDelta = hours(12);
/// Cold-water thawing says "cook at once": drying, seasoning and the way to the heat take this long at most. Practice.
pub const AT_ONCE: TimeDelta = minutes(60);
/// Thawed in water so long before it is wanted on, it waits in the fridge: sooner than that it is cooked at once, and kept hot. Practice.
pub const THAWED_EARLY: TimeDelta = hours(4);
/// One change of water. Practice.
pub const WATER_TAKES: TimeDelta = minutes(10);
/// Salting. Practice.
pub const SALTING: TimeDelta = minutes(20);
/// Dry salt: wanted. Practice.
pub const DRY_WANTED: TimeDelta = hours(24);
/// Dry salt: overnight at least. Practice.
pub const DRY_SHORTEST: TimeDelta = hours(12);
/// Brine: wanted. Practice.
pub const WET_WANTED: TimeDelta = hours(12);
/// Brine: at least. Practice.
pub const WET_SHORTEST: TimeDelta = hours(6);
/// Salted or brined: at most. USDA FSIS (video transcript).
pub const SALTED_MOST: TimeDelta = hours(48);
/// Out of the fridge before the heat, preferred. Practice (30 to 60 minutes).
pub const TEMPER: TimeDelta = minutes(45);
/// Time it takes to dry, pierce and butter. Practice.
pub const TEMPER_LEAST: TimeDelta = minutes(15);
/// At room temperature: at most two hours. Danger Zone.
pub const ROOM_MOST: TimeDelta = hours(2);
/// Oven: preferred and least time to heat. Practice.
pub const OVEN_HEATS: (TimeDelta, TimeDelta) = (minutes(30), minutes(20));
/// Smoker: preferred and least time to a steady fire. Practice.
pub const SMOKER_HEATS: (TimeDelta, TimeDelta) = (minutes(60), minutes(45));
/// A fire is not lit sooner than this before the bird. Practice.
pub const FIRE_MOST: TimeDelta = hours(3);
/// Off the heat and measured. Practice.
pub const PULLING: TimeDelta = minutes(10);
/// One look at the thermometers. Practice.
pub const CHECKING: TimeDelta = minutes(5);
/// Stand: 20 minutes by the hotline's text; 30 preferred. Practice.
pub const STAND: TimeDelta = minutes(30);
/// Stand: least.
pub const STAND_LEAST: TimeDelta = minutes(20);
/// From the heat to carving at most, when not kept hot at 140 °F. Danger Zone.
pub const HOT_MOST: TimeDelta = hours(2);
/// Carving, preferred. Practice (20 to 30 minutes).
pub const CARVING: TimeDelta = minutes(25);
/// Carving, least.
pub const CARVING_LEAST: TimeDelta = minutes(20);
/// Carved meat does not wait longer for the table. Practice.
pub const CARVED_MOST: TimeDelta = minutes(60);
/// From the heat, or from carving, into the fridge. Danger Zone.
pub const FRIDGE_WITHIN: TimeDelta = hours(2);
/// Dinner before the leftovers are put away. Practice.
pub const DINNER: TimeDelta = minutes(60);
/// Into the fridge: shallow dishes. Practice.
pub const CHILLING: TimeDelta = minutes(15);
/// Cold through to 41 °F: the Food Code gives six hours from 135 °F, two of them to 70 °F; four more in the fridge.
pub const COLD_THROUGH: TimeDelta = hours(4);
/// Packing. Practice.
pub const PACKING: TimeDelta = minutes(15);
/// Packed in the cooler before leaving: at most. Practice.
pub const PACKED_MOST: TimeDelta = hours(2);
/// Unpacking at the other house. Practice.
pub const UNPACKING: TimeDelta = minutes(15);
/// The longest drive we trust a cooler with ice for. Practice.
pub const DRIVE_MOST: TimeDelta = hours(12);
/// Unpacking, least. Practice.
pub const UNPACKING_LEAST: TimeDelta = minutes(5);
/// Carried hot, it is eaten within this time of leaving the heat, the drive included: nobody can promise that it stays at
/// 140 °F. In air above 90 °F it is one hour. Danger Zone.
pub const HOT_ROAD: TimeDelta = hours(2);
/// The longest drive that leaves time to wrap, unwrap and carve it within that.
pub const HOT_DRIVE_MOST: TimeDelta =
    minutes(HOT_ROAD.num_minutes() - PACKING.num_minutes() - UNPACKING.num_minutes() - CARVING_LEAST.num_minutes());
/// The same in air above 90 °F. Danger Zone.
pub const HOT_ROAD_IN_HEAT: TimeDelta = hours(1);
/// Reheating, covered, with a little broth, at 325 to 350 °F. Practice (30 to 60 minutes).
pub const REHEATING: TimeDelta = minutes(50);
/// Reheating, least.
pub const REHEATING_LEAST: TimeDelta = minutes(40);
/// Between 41 and 165 °F: at most. Food Code 3-403.11(D).
pub const REHEAT_MOST: TimeDelta = hours(2);
/// Cooked poultry in the fridge: 3 to 4 days; a plan counts on 3. Leftovers and Food Safety.
pub const COOKED_PLANNED: TimeDelta = TimeDelta::days(3);
/// The end of it.
pub const COOKED_KEEPS: TimeDelta = TimeDelta::days(4);
/// A hot dish waits this long for the table, covered. Practice.
pub const DISH_WAITS: TimeDelta = minutes(30);
/// One that is made early is kept hot so long at most. Practice, within the two hours food may be out even where the keeping fails.
pub const DISH_KEPT_HOT: TimeDelta = minutes(120);
/// An oven from one setting to another. Practice.
pub const CHANGE_SETTING: TimeDelta = minutes(10);
/// The dinner may be this far ahead.
pub const FARTHEST: TimeDelta = TimeDelta::days(366);
