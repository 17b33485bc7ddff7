//! The ways out of a clash as buttons, each with a mark of what it says.
//!
//! A message with such buttons stays in the chat for years, while the ways out there are change with every word and with the clock alone.
//! So a button does not say which place its way had in the list but which way it is: what is not offered any more is not done.

use super::action::{Action, Mark};
use super::plan_words;
use super::proposal::MOST_OFFERS;
use super::sitting::labelled;
use super::turn::Button;
use crate::reading::WishDish;
use crate::words::Text;
use carvetime_core::plan::{Change, Conflict, Offer};

/// What is said of a change, its dish by name: a dish left out has none afterwards.
pub(super) fn said(change: &Change, dishes: &[Option<WishDish>]) -> Text {
    let mut text = plan_words::change(change);
    super::dishes::put_name(&mut text, dishes);
    text
}

/// The mark of a change: of what its button says.
pub(super) fn mark(change: &Change, dishes: &[Option<WishDish>]) -> Mark {
    Mark(crc32fast::hash(format!("{:?}", said(change, dishes)).as_bytes()))
}

/// The button of one way out.
pub(super) fn button(offer: &Offer, dishes: &[Option<WishDish>], action: impl Fn(Mark) -> Action) -> Button {
    labelled(said(&offer.change, dishes), &action(mark(&offer.change, dishes)))
}

/// The buttons of as many ways out as are offered at a time.
pub(super) fn buttons(
    conflict: &Conflict,
    dishes: &[Option<WishDish>],
    action: impl Fn(Mark) -> Action,
) -> Vec<Button> {
    conflict.offers.iter().take(MOST_OFFERS).map(|offer| button(offer, dishes, &action)).collect()
}

/// The ways out for a dish that is told of: as many as are offered at a time, and among them that it is left out.
pub(super) fn of_the_dish(mut conflict: Conflict, place: Option<u8>) -> Conflict {
    let out = conflict.offers.iter().position(|offer| Some(offer.change) == place.map(Change::DishOut));
    if let Some(out) = out.filter(|out| *out >= MOST_OFFERS) {
        conflict.offers.swap(MOST_OFFERS - 1, out);
    }
    conflict.offers.truncate(MOST_OFFERS);
    conflict
}

/// The way out a button means, if it is still one.
pub(super) fn meant<'a>(conflict: &'a Conflict, dishes: &[Option<WishDish>], wanted: Mark) -> Option<&'a Offer> {
    conflict.offers.iter().find(|offer| mark(&offer.change, dishes) == wanted)
}
