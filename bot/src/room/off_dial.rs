//! "My oven runs 25 degrees hot": answered before its number can be taken for what the pit or the bird reads.
//!
//! Nothing is kept of it: whoever sets the dial so has the heat of the plan, and what the air was is learned from its readings.

use super::{Sitting, What, air, order, questions};
use crate::ask::Question;
use carvetime_core::roast::Heat;

/// `false`: the words say nothing of it, or among people nobody cooks by a plan here.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(Question::OffDial(said)) = questions::read(sitting, text) else { return false };
    let ours = said.named && sitting.room.plan.as_ref().is_some_and(|plan| !plan.is_off());
    if !addressed && (!ours || air::is_elsewhere(sitting, text)) {
        // Of no bird here, and still no reading.
        return true;
    }
    questions::told(sitting, text);
    true
}

/// What the bird in hand is roasted at: the plan's, until it is off the heat, else that of the proposal in front of the speaker.
pub(super) fn heat(sitting: &Sitting<'_>) -> Option<Heat> {
    // "Bob's oven runs hot": it is not the one that is planned with.
    if let What::Said { text, .. } = &sitting.heard.what
        && air::is_elsewhere(sitting, text)
    {
        return None;
    }
    let draft = sitting.speaker().and_then(|who| sitting.room.drafts.get(&who));
    let proposed = draft.filter(|draft| draft.proposed_at.is_some()).map(|draft| order::heat(&draft.wish));
    let plan = sitting.room.plan.as_ref().filter(|plan| !plan.is_off());
    proposed.or_else(|| Some(plan?.order(sitting.zone_or_utc())?.heat))
}
