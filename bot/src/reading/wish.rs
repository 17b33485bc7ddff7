//! A dinner as far as it has been told: every field may still be open.

use serde::{Deserialize, Serialize};

/// What a person wants, with gaps. Kept in drafts, so numbers are plain and enums go by their stable names
/// (`carvetime_core`'s `name`/`from_name`).
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Wish {
    /// Kind of bird ([`carvetime_core::bird::Kind`]).
    pub kind: Option<String>,
    /// Mass in grams.
    pub mass_g: Option<f64>,
    /// [`carvetime_core::bird::Condition`].
    pub condition: Option<String>,
    /// [`carvetime_core::bird::Form`].
    pub form: Option<String>,
    /// Stuffed.
    pub stuffed: Option<bool>,
    /// Percent of added solution on the label.
    pub solution_percent: Option<f64>,
    /// Adults (plain "11 people" counts as adults).
    pub adults: Option<u16>,
    /// Children.
    pub children: Option<u16>,
    /// Leftovers wanted.
    pub leftovers: Option<bool>,
    /// [`carvetime_core::roast::Cooker`].
    pub cooker: Option<String>,
    /// Setting in degrees Celsius.
    pub setting_c: Option<f64>,
    /// [`carvetime_core::plan::Salting`].
    pub salting: Option<String>,
    /// [`carvetime_core::plan::Thawing`].
    pub thawing: Option<String>,
    /// When it is on the table, UTC.
    pub dinner: Option<chrono::DateTime<chrono::Utc>>,
    /// Only the day is known, not the hour (local date).
    pub dinner_day: Option<chrono::NaiveDate>,
    /// Only the hour is known, not the day (local time).
    pub dinner_hour: Option<chrono::NaiveTime>,
    /// Eaten at another house.
    pub elsewhere: Option<bool>,
    /// Drive, minutes.
    pub drive_min: Option<u32>,
    /// Cooked the day before.
    pub ahead: Option<bool>,
    /// The bird is already in the house.
    pub at_home: Option<bool>,
}
