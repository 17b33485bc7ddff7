//! Of several birds, the one whose dinner has the dish that is spoken of: "/take rolls", "no rolls after all", "the rolls are in".

use super::which::{about, those};
use super::{Sitting, asked_of_dishes, dish_is_in, dishes, of_dishes};
use crate::reading::command::{Address, read_command};
use crate::reading::{self, DishOrder};

/// Heard of the one plan that has a dish of that name. `false`: none has, or several have, or nothing of a dish is said.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let (command, rest) = match read_command(text, None) {
        Address::Command(command) => (Some(command.name.to_ascii_lowercase()), command.rest),
        Address::Plain(plain) => (None, plain),
        Address::Other => return false,
    };
    let ground = sitting.ground();
    // One more of a name that stands elsewhere goes where any other would.
    if matches!(reading::read_dish(rest, &ground), Some(Ok(DishOrder::Add(..)))) {
        return false;
    }
    let all: Vec<u32> = sitting.room.plans().iter().map(|plan| plan.serial).collect();
    let plain = command.is_none();
    let has = |sitting: &Sitting<'_>| {
        of_dishes::spoken_of(sitting, rest).is_some() || plain && dish_is_in::is_of_own(sitting, rest)
    };
    let [serial] = those(sitting, &all, has)[..] else { return false };
    let hand = sitting.room.plan.as_ref().map(|plan| plan.serial);
    about(sitting, serial);
    let heard = match command.as_deref() {
        Some("take" | "drop") => {
            super::said(sitting, text, addressed, None, false);
            true
        }
        Some("plan") => dishes::of_the_plan(sitting, rest),
        Some(_) => false,
        None => {
            dish_is_in::told(sitting, rest, addressed)
                || asked_of_dishes::told(sitting, rest, addressed)
                || dishes::retold(sitting, rest)
        }
    };
    if !heard {
        sitting.hold(hand);
        sitting.about = false;
    }
    heard
}
