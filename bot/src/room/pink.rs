//! "The juice runs pink", "Grandma says pink juice means raw", of a bird over the heat or just off it: what was read decides, and where
//! nothing was, it is measured before anyone eats.
//!
//! Meat that reads too little, or was seen raw, goes back into the heat: see `done_yet`.

use super::turn::Urgency;
use super::{Sitting, done_yet, kept_hot, questions, readings, reports};
use crate::reading;
use crate::words::{Arg, Text};

/// `false`: the words are of something else, of a number, or of a bird that is far from the table.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str) -> bool {
    // "It's pink. 151 there"
    let numbers = text.contains(|c: char| c.is_ascii_digit());
    let lexicon = sitting.lexicon();
    if numbers || !reading::speaks_of_pink(text, lexicon) || !questions::near_the_table(sitting) {
        return false;
    }
    // "Pulled it. its kinda pink tho": what was done counts as well.
    if let Some(report) = reading::report_beside(text, lexicon) {
        reports::heard(sitting, &report);
    }
    if questions::stands_too_long(sitting) {
        kept_hot::say_over(sitting);
        return true;
    }
    if readings::below(sitting).is_some() {
        // What reads too little is sent on by its number; else the color alone says nothing.
        return readings::cooks(sitting) && done_yet::in_the_heat(sitting, false);
    }
    let read = done_yet::is_read(sitting);
    if !read && readings::cooks(sitting) {
        return false;
    }
    let text = Text::new(if read { "cook-pink-read" } else { "cook-pink-unread" });
    sitting.answer(text.with("target", Arg::Temperature(super::target()))).urgency(Urgency::Safety);
    true
}
