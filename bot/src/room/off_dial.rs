//! "My oven runs 25 degrees hot": answered before its number can be taken for what the pit or the bird reads.
//!
//! Nothing is kept of it: whoever sets the dial so has the heat of the plan, and what the air was is learned from its readings.

use super::{Sitting, What, air, doubted, heat, order, questions, readings};
use crate::ask::Question;
use crate::reading::{self, Scale};
use carvetime_core::quantity::{celsius, fahrenheit, in_celsius};
use carvetime_core::roast::Heat;

/// Settings this near are one setting, °C.
const SAME_C: f64 = 3.0;

/// `false`: the words say nothing of it, or among people nobody cooks by a plan here.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    if measured(sitting, text) {
        return true;
    }
    let Some(Question::OffDial(said)) = questions::read(sitting, text) else { return false };
    let ours = said.named && sitting.room.plan.as_ref().is_some_and(|plan| !plan.is_off());
    if !addressed && (!ours || air::is_elsewhere(sitting, text)) {
        // Of no bird here, and still no reading.
        return true;
    }
    questions::told(sitting, text);
    true
}

/// "Oven thermometer says 375 but I set 350", with the bird in it: the thermometer's figure is what the air reads, the other what it is set
/// to. `false`: there are no two such figures, no bird is on, or it is another oven.
fn measured(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let light = sitting.light();
    let metric = !sitting.us_units();
    let figures = reading::read_dial_and_air(text, metric, sitting.lexicon());
    let Some((figures, who)) = figures.zip(sitting.speaker()).filter(|_| readings::cooks(sitting)) else {
        return false;
    };
    if air::is_elsewhere(sitting, text) {
        return false;
    }
    let us = figures.scale.map_or(!metric, |scale| scale == Scale::Fahrenheit);
    let in_c = |value: f64| if us { in_celsius(fahrenheit(value)) } else { value };
    let (dial, pit) = (in_c(figures.dial), in_c(figures.air));
    let Some(plan) = sitting.room.plan.as_mut() else { return false };
    let Some(order) = plan.order(light.zone) else { return false };
    let turned =
        order.heat.cooker.settings().holds(celsius(dial)) && (in_celsius(order.heat.setting) - dial).abs() >= SAME_C;
    if turned {
        plan.remember("mended", None, Some(who), light.now);
        heat::turn(plan, dial, &light);
    }
    let answer = questions::read(sitting, text).map(|question| questions::lines(sitting, &question));
    let before = sitting.says.len();
    doubted::judge(sitting, who, readings::of_air(pit, Some(who), light.now));
    // What was asked about is not known yet.
    let noted =
        sitting.room.plan.as_ref().is_some_and(|plan| plan.doubted.iter().all(|doubted| doubted.given.by != Some(who)));
    if let Some(say) = sitting.says.get_mut(before).filter(|_| noted) {
        let at = say.text.len().min(1);
        say.text.splice(at..at, answer.into_iter().flatten());
    }
    true
}

/// What the bird in hand is roasted at: the plan's, until it is off the heat, else that of the proposal in front of the speaker.
pub(super) fn heat(sitting: &Sitting<'_>) -> Option<Heat> {
    let draft = sitting.speaker().and_then(|who| sitting.room.drafts.get(&who));
    let proposed = draft.filter(|draft| draft.proposed_at.is_some());
    let plan = sitting.room.plan.as_ref().filter(|plan| !plan.is_off());
    if proposed.is_none() && plan.is_none() {
        return None;
    }
    // "Bob's oven runs hot": it is not the one that is planned with.
    if let What::Said { text, .. } = &sitting.heard.what
        && air::is_elsewhere(sitting, text)
    {
        return None;
    }
    proposed.map(|draft| order::heat(&draft.wish)).or_else(|| Some(plan?.order(sitting.zone_or_utc())?.heat))
}
