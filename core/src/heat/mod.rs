//! Heat on its way into the bird, and what the readings so far say about when it is done.
//!
//! Read in this order: [`composition`] (what meat is to heat), [`surface`] (what the air gives it), [`body`] (conduction, in full).

pub mod body;
pub mod composition;
pub mod surface;
