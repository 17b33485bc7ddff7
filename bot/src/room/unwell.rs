//! Somebody who cooks is ill or has cut themselves: said at once, and what the ill one had to do is free again.
//!
//! Among people only while a dinner is planned, and not again for every word of it.

use super::sitting::name;
use super::turn::Urgency;
use super::{PersonId, RoomKind, Sitting, birds, may, questions, stepping_down};
use crate::ask::Question;
use crate::reading::{self, Unwell};
use crate::words::Text;
use chrono::TimeDelta;

/// Who goes on talking of it has been told.
const TOLD_FOR: TimeDelta = TimeDelta::hours(6);
/// The same of those who have eaten: more may fall ill.
const EATERS_TOLD_FOR: TimeDelta = TimeDelta::minutes(30);

/// `false`: they tell of something else, or to each other of somebody who cooks nothing here.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let Some(health) = reading::read_unwell(text, sitting.lexicon()) else { return false };
    let now = sitting.now;
    let stands = sitting.room.plans().iter().any(|plan| !birds::is_past(plan, now));
    let for_long = if health.what == Unwell::Ate { EATERS_TOLD_FOR } else { TOLD_FOR };
    let told = sitting.room.unwell.is_some_and(|at| now - at < for_long);
    if !addressed && (!stands || told) {
        return false;
    }
    sitting.room.unwell = Some(now);
    // Told to the bot alone it is answered there; among people before all else.
    let urgency = if sitting.routed() { Urgency::Answer } else { Urgency::Safety };
    questions::tell(sitting, &Question::Unwell(health.what), urgency);
    if health.what == Unwell::Sick && sitting.room.kind == RoomKind::Group {
        // "Stomach bug, I can't come": they aren't called any more either.
        if reading::read_refusal(text, sitting.lexicon()).is_some() && stepping_down::told(sitting, text, false, None) {
            return true;
        }
        let who = match named(sitting, text) {
            // Whoever may hand back others' jobs.
            Some(who) => may::steer(sitting).then_some(who),
            None => sitting.speaker().filter(|_| health.own),
        };
        if let Some(who) = who {
            let head = Text::new("sharing-cant").with("name", name(sitting, who));
            stepping_down::give_up_all(sitting, who, &head);
        }
    }
    true
}

/// The one of the people here whose name stands in the text.
fn named(sitting: &Sitting<'_>, text: &str) -> Option<PersonId> {
    let words = sitting.lexicon().talk_words(text);
    let is = |person: &PersonId| {
        let own = sitting.lexicon().talk_words(&sitting.name_of(*person));
        own.first().is_some_and(|first| words.contains(first))
    };
    sitting.room.members.iter().copied().find(is)
}
