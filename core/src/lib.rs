//! The kitchen's arithmetic: no I/O, no clock, no locale, no async, no sentence for a person.
//!
//! Read in this order: [`quantity`](mod@quantity) (what a cook writes down), [`bird`] (what is cooked, for whom), [`salt`] and
//! [`brine`], [`thaw`], [`roast`] (how long it takes), [`safety`] and [`lethality`] (when it may be eaten), [`plan`]
//! (all of it on a clock). Every number that came from outside stands in [`source`].
#[macro_use]
extern crate uom;

#[macro_use]
mod names;

pub mod quantity;
pub mod range;
pub mod source;

pub mod bird;
pub mod brine;
pub mod fuel;
pub mod heat;
pub mod lethality;
pub mod plan;
pub mod roast;
pub mod safety;
pub mod salt;
pub mod thaw;
