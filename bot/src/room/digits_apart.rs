//! "Pechuga 5 8": asked whether it is 58, and not believed before that is said.

use super::{Sitting, doubted, readings};
use crate::reading;

/// `false`: no digits stand apart, or no bird is over the heat.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    if !readings::cooks(sitting) {
        return false;
    }
    let meant = reading::read_digits_apart(text, &sitting.ground());
    let Some((log, who)) = meant.zip(sitting.speaker()) else { return false };
    let reading = readings::stored(sitting, &log, who);
    doubted::ask_whether(sitting, who, reading);
    true
}
