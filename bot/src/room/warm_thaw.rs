//! A bird that thawed on the counter or in the garage: said at once, before anyone marks it thawed.

use super::turn::Urgency;
use super::{Sitting, new_bird, questions};
use crate::ask::Question;
use crate::reading;

/// `false`: they tell of something else, or among people of no bird that is still to be cooked.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some((place, named)) = reading::read_warm_thaw(text, sitting.lexicon()) else { return false };
    let plan = sitting.room.plan.as_ref();
    let raw = plan.is_some_and(|plan| !plan.is_off() && plan.on_since(sitting.now).is_none());
    // With no plan, or a cooked bird, only what is said to thaw, and said to the bot, is one.
    let alone = plan.is_none() && addressed && named;
    if !raw && !alone {
        return false;
    }
    let question = Question::WarmThaw(place);
    questions::tell(sitting, &question, Urgency::Safety);
    new_bird::condemned(sitting, text, &question, place == reading::WarmThaw::Kitchen);
    true
}
