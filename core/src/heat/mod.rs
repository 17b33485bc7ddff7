//! Heat on its way into the bird, and what the readings so far say about when it is done.
//!
//! Read in this order: [`composition`] (what meat is to heat), [`surface`] (what the air gives it), [`body`] (conduction, in full),
//! [`spot`] (conduction, fast), [`pit`] (the air), [`prior`] (what is believed before a reading), [`posterior`] (and after it),
//! [`outlook`] (from there to minutes), [`doubt`] (readings that can't be right), and the door to it all: [`forecast()`].

pub mod body;
pub mod composition;
#[cfg(test)]
mod cost;
pub mod doubt;
mod forecast;
mod learned;
pub mod outlook;
pub mod pit;
pub mod posterior;
pub mod prior;
mod small;
pub mod spot;
pub mod surface;

pub use doubt::{Doubt, Pace, Place, Slip, Suspect};
pub use forecast::{
    Cook, LONG_GAP, Outlook, Profile, Reading, STANDS, SpotOutlook, State, Unlit, facts, fit_known, forecast,
    forecast_with, rise, suspects,
};
