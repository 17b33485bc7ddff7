//! "It went in at 325", with the bird over the heat: what it has been set to since, whatever the plan had.

use super::{Sitting, air, readings};
use crate::reading::{self, Air, Since};
use crate::words::{Arg, Text};

/// `false`: nothing is said of it, no bird is on, or it is another oven.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let set = reading::read_went_in_at(text, !sitting.us_units(), sitting.lexicon());
    let Some(set) = set.filter(|_| readings::cooks(sitting) && !air::is_elsewhere(sitting, text)) else { return false };
    let Some(plan) = &sitting.room.plan else { return false };
    // Turned since, the dial is known better.
    let turned = !plan.was_set.is_empty();
    if !turned
        && air::told(sitting, Air { was_c: Some(set), since: Since::On, until: None, still: false, now_c: Some(set) })
    {
        return true;
    }
    let Some(order) = sitting.room.plan.as_ref().and_then(|plan| plan.order(sitting.zone_or_utc())) else {
        return false;
    };
    sitting.answer(Text::new("cook-setting").with("setting", Arg::Temperature(order.heat.setting)));
    true
}
