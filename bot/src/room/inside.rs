//! How the bird was inside as it met the heat: ice that was still in it, or what a thermometer read there. The forecast starts from it.
//!
//! Start at [`told`] and [`frozen`].

use super::state::Inside;
use super::turn::Urgency;
use super::{RoomKind, Sitting, readings};
use crate::reading;
use crate::reading::sentence::Sentence;
use crate::words::{Arg, Text};
use carvetime_core::quantity::{Temperature, celsius, in_celsius};

/// Colder than that no bird goes on that is called thawed, °C, and warmer than that none is raw.
const COLDEST_C: f64 = -8.0;
const WARMEST_C: f64 = 21.0;
/// A number below that, without a scale, may be the hour.
const LAST_HOUR: f64 = 25.0;
/// Shorter words are no nouns.
const SHORT: usize = 4;
/// The longest phrase that says "when it went in".
const MOST_WORDS: usize = 6;

/// "It went in at 38 °F", "breast was 4 when I put it in", with the bird on. `false`: nothing of the kind.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    let by = sitting.speaker();
    let Some(start) = read(sitting, text, addressed).filter(|_| by.is_some() && readings::cooks(sitting)) else {
        return false;
    };
    begun(sitting, |inside| inside.start_c = Some(in_celsius(start)));
    let noted = Text::new("cook-start").with("at", Arg::Temperature(start));
    readings::answer(sitting, [noted], &readings::Spots::default());
    true
}

/// The bird on the heat turns out to have been frozen inside: `said` tells what to do, and the hour follows.
pub(super) fn frozen(sitting: &mut Sitting<'_>, said: Text) {
    if sitting.room.plan.as_ref().is_some_and(|plan| plan.inside.icy) {
        sitting.answer(said).urgency(Urgency::Safety);
        return;
    }
    begun(sitting, |inside| inside.icy = true);
    let id = said.id.clone();
    readings::answer(sitting, [said], &readings::Spots::default());
    let answer = sitting.says.iter_mut().find(|say| say.text.first().is_some_and(|text| text.id == id));
    if let Some(answer) = answer {
        answer.urgency(Urgency::Safety);
    }
}

/// Notes how it was, as one change that can be taken back.
fn begun(sitting: &mut Sitting<'_>, how: impl FnOnce(&mut Inside)) {
    let (now, by) = (sitting.now, sitting.speaker());
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    plan.remember("mended", None, by, now);
    how(&mut plan.inside);
}

/// What the bird read inside as it went on, if that is what the words say.
fn read(sitting: &Sitting<'_>, text: &str, addressed: bool) -> Option<Temperature> {
    let lexicon = sitting.lexicon();
    let words = lexicon.talk_words(text);
    let phrase = (1..=MOST_WORDS).rev().find_map(|count| {
        let at = words.windows(count).position(|some| lexicon.talk(&some.join(" "), "at-start"))?;
        Some(at..at + count)
    })?;
    // "The rolls went in at 38": what no lexicon knows is another dish, or no food.
    let letters = |word: &String| word.chars().all(char::is_alphabetic) && word.chars().count() >= SHORT;
    let beside = |at: usize| !phrase.contains(&at);
    let other = words.iter().enumerate().any(|(at, word)| beside(at) && letters(word) && !lexicon.knows(word));
    let asks = text.contains(['?', '¿']) || reading::begins_as_question(text, lexicon);
    let sentence = Sentence::read(text, lexicon);
    let dish = (0..sentence.len()).any(|at| sentence.of(at, "dish-").is_some());
    if other || asks || dish || !addressed && sitting.room.kind == RoomKind::Group && readings::is_talk(sitting, text) {
        return None;
    }
    let log = reading::read_log(text, &sitting.ground()).ok().flatten().filter(|log| log.at.is_none())?;
    let spots = readings::spots(sitting, &log);
    let hour = log.readings.iter().any(|it| it.place.is_none() && it.scale.is_none() && it.value < LAST_HOUR);
    let named = log.readings.iter().any(|it| it.place.is_some() || it.scale.is_some());
    // In a group a number alone may be anything.
    if spots.pit.is_some() || hour || !named && !addressed {
        return None;
    }
    let (breast, thigh) = spots.meat();
    let coldest = breast.into_iter().chain(thigh).reduce(Temperature::min)?;
    (COLDEST_C..=WARMEST_C).contains(&in_celsius(coldest)).then_some(coldest)
}

impl Inside {
    /// What was read, if anything.
    pub fn start(&self) -> Option<Temperature> {
        self.start_c.map(celsius)
    }
}
