//! Quick questions: handed to `ask`, answered where they were asked.

use super::{Sitting, help};
use crate::words::Text;

/// `/salt` with or without words.
pub(super) fn salt(sitting: &mut Sitting<'_>, text: &str) {
    if text.is_empty() {
        sitting.answer(Text::new("room-help-salt"));
        return;
    }
    asked(sitting, text);
}

/// `/ask`.
pub(super) fn asked(sitting: &mut Sitting<'_>, text: &str) {
    if text.is_empty() {
        sitting.answer(Text::new("room-help-safe"));
        return;
    }
    plain(sitting, text);
}

/// Words that may be a question; else one short line of help.
pub(super) fn plain(sitting: &mut Sitting<'_>, _text: &str) {
    help::unread(sitting);
}
