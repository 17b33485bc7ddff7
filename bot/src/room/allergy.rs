//! "My niece is allergic to milk", "Tom is celiac": what of the plan touches it, the label, and that they or their doctor know best.
//!
//! Heard wherever it is said while a dinner is planned, once for each; the call to butter the bird says "no butter" from then on.

use super::state::LivePlan;
use super::turn::Urgency;
use super::{Moment, Sitting, planning, questions};
use crate::ask::Question;
use crate::reading::{self, Allergen};
use crate::words::Text;
use carvetime_core::bird::Kind;
use carvetime_core::plan::Step;
use chrono::TimeDelta;

/// So long after a dinner what is said at its table may still be of it.
const AFTER: TimeDelta = TimeDelta::hours(12);

/// `false`: nobody has any, it was said before among people, or a dinner is told beside it.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let lexicon = sitting.lexicon();
    // "Nobody is allergic to anything" counts no guests.
    let numbers = text.contains(|c: char| c.is_ascii_digit());
    if addressed && !numbers && !text.contains(['?', '¿']) && reading::Told::of(text, lexicon).says("allergic-not") {
        sitting.answer(Text::new("room-ok"));
        return true;
    }
    let allergens = reading::read_allergies(text, lexicon);
    if allergens.is_empty() || tells_a_dinner(sitting, text, addressed) {
        return false;
    }
    let now = sitting.now;
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, lexicon);
    let new = keep(sitting.room.plan.as_mut().filter(|plan| stands(plan, now)), &allergens);
    let wanted = asks && sitting.room.plan.as_ref().is_some_and(|plan| stands(plan, now));
    if !(addressed || new || wanted) {
        return false;
    }
    questions::tell(sitting, &Question::Allergies(allergens), Urgency::Answer);
    true
}

/// "12 lb turkey Thursday at 5 for 8, one is celiac": said with what the wish came to.
pub(super) fn beside(sitting: &mut Sitting<'_>, text: &str) {
    let allergens = reading::read_allergies(text, sitting.lexicon());
    if allergens.is_empty() {
        return;
    }
    let now = sitting.now;
    keep(sitting.room.plan.as_mut().filter(|plan| stands(plan, now)), &allergens);
    let lines = questions::lines(sitting, &Question::Allergies(allergens));
    if let Some(say) = sitting.says.last_mut() {
        say.text.extend(lines);
    }
}

/// What the call to dry the bird and butter it adds.
pub(super) fn no_butter(plan: &LivePlan, step: Step, kind: Option<Kind>) -> Option<Text> {
    let butters = step == Step::Temper && !matches!(kind, Some(Kind::Duck | Kind::Goose));
    let milk = plan.allergies.iter().any(|name| name == Allergen::Milk.name());
    (butters && milk).then(|| Text::new("cook-no-butter"))
}

/// Kept for the plan, where there is one; whether any of them is news.
fn keep(plan: Option<&mut LivePlan>, allergens: &[Allergen]) -> bool {
    let Some(plan) = plan else { return false };
    let before = plan.allergies.len();
    for allergen in allergens {
        if !plan.allergies.iter().any(|name| name == allergen.name()) {
            plan.allergies.push(allergen.name().to_owned());
        }
    }
    plan.allergies.len() > before
}

fn stands(plan: &LivePlan, now: Moment) -> bool {
    plan.wish.dinner.is_some_and(|dinner| now < dinner + AFTER)
}

/// The rest of it is a wish.
fn tells_a_dinner(sitting: &Sitting<'_>, text: &str, addressed: bool) -> bool {
    let (wish, _) = planning::read(sitting, text);
    let table = wish.adults.is_some() || wish.mass_g.is_some() || wish.dinner.is_some();
    table && (addressed || planning::is_wish(sitting, text, addressed))
}
