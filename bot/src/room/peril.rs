//! Fire or gas in someone's kitchen: answered at once, whoever says it and whatever else is going on.

use super::Sitting;
use super::questions;
use super::turn::Urgency;
use crate::ask::Question;
use crate::reading;

/// Words that tell of danger to people. `false`: they tell of something else.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let Some(peril) = reading::read_peril(text, sitting.lexicon()) else { return false };
    questions::tell(sitting, &Question::Peril(peril), Urgency::Safety);
    true
}
