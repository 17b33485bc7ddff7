//! "Can Gabin, 14 months, have some of the chicken?", "foie gras and pregnant?", said to anyone: answered. A child that swallowed a
//! chestnut is heard before all else, whoever says it.
//!
//! Of a bird that stood out too long it is nobody's to eat: that is said instead.

use super::turn::Urgency;
use super::{Sitting, questions, spoiled};
use crate::ask::Question;
use crate::reading::{self, Diner, sentence::Sentence};

/// A child that may choke. `false`: they tell of something else.
pub(super) fn swallowed(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let heard = reading::read_diner(text, sitting.lexicon()) == Some(Diner::Swallowed);
    if heard {
        questions::tell(sitting, &Question::Diner(Diner::Swallowed), Urgency::Safety);
    }
    heard
}

/// "Is it ok for me, pregnant, if the stuffing read 74.5?": asked, and no reading of now.
fn of_a_number(sitting: &mut Sitting<'_>, text: &str) -> bool {
    let sentence = Sentence::read(text, sitting.lexicon());
    let frail = sentence.has("habit-fragile") || sentence.has("frail-person");
    let asks = frail && text.contains(['?', '¿']) && sentence.has("ask-safe");
    let told = asks && matches!(questions::read(sitting, text), Some(Question::Lethality { .. }));
    if told {
        questions::told(sitting, text);
    }
    told
}

/// What somebody at more risk may have. `false`: nobody asks so.
pub(super) fn asked(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let lexicon = sitting.lexicon();
    let Some(what) = reading::read_diner(text, lexicon) else { return of_a_number(sitting, text) };
    let asks = text.contains(['?', '¿'])
        || reading::begins_as_question(text, lexicon)
        || reading::opens_as_question(text, lexicon);
    if !addressed && !asks {
        return false;
    }
    let of_the_bird = matches!(what, Diner::LittleOne | Diner::Frail) && !reading::names_what_is_beside(text, lexicon);
    if !of_the_bird || !spoiled::is_over(sitting) {
        questions::told(sitting, text);
    }
    true
}
