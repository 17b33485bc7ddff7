//! "It'll rise 10 degrees resting. Pull it at 155": answered as the plain "pull it at 155" is, and no number of it is read.

use super::{Sitting, questions};
use crate::reading;

/// `false`: the words say nothing of it, or among people no bird is planned.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let ours = sitting.room.plan.as_ref().is_some_and(|plan| !plan.is_off());
    let said = reading::read_pull_ahead(text, !sitting.us_units(), sitting.lexicon()).is_some();
    if !said || !addressed && !ours {
        return false;
    }
    questions::told(sitting, text);
    true
}
