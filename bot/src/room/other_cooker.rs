//! "It will rain, let's do it in the oven": a bird that is not on yet is cooked in something else, at what that is usually set to.
//!
//! Of the host at once, with a way back; of anyone else the host is asked.

use super::state::LivePlan;
use super::{Sitting, amend};
use crate::reading::{self, Wish};

/// Longer texts tell a story.
const LONGEST: usize = 100;

/// `false`: no other cooker is named, the heat is told as well, or it is too late for it.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let now = sitting.now;
    let raw = |plan: &&LivePlan| {
        let ahead = plan.wish.dinner.is_some_and(|dinner| dinner > now);
        ahead && plan.on_since(now).is_none() && !plan.is_off()
    };
    let Some(plan) = sitting.room.plan.as_ref().filter(raw).filter(|_| text.chars().count() <= LONGEST) else {
        return false;
    };
    let drafting = sitting.speaker().is_some_and(|who| sitting.room.drafts.contains_key(&who));
    let Some(cooker) = reading::read_other_cooker(text, sitting.lexicon()).filter(|_| !drafting) else { return false };
    let stands = plan.wish.cooker.as_deref().unwrap_or("oven");
    let asks = text.contains(['?', '¿']) && !addressed;
    if cooker == stands || asks || reading::speaks_of_another_year(text, sitting.lexicon()) {
        return false;
    }
    let wish = Wish { cooker: Some(cooker.to_owned()), setting_c: None, ..plan.wish.clone() };
    amend::to(sitting, text, wish, addressed)
}
