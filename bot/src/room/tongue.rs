//! A group of several languages: a question or a report is read in the speaker's own language first, then in the room's, and what answers
//! it alone is in the language it came in. What is for all stays in the room's.

use super::sitting::Sitting;
use super::turn::{How, Say, To, Urgency};
use super::{PersonId, RoomKind, offering};
use crate::ask::{self, Asker};
use crate::reading::command::{Address, read_command};
use crate::reading::sentence::Sentence;
use crate::reading::{self, Lexicon};

/// Words of a sentence in English that another language has too: "do", "in".
const BY_CHANCE: usize = 1;

/// The language this turn's words came in, where it is not the room's.
#[derive(Debug, Clone)]
pub(super) struct Tongue {
    /// IETF tag.
    pub language: String,
    /// They asked or reported: what is said in return is for them.
    answers: bool,
}

/// Hears `text` in the speaker's own language, if it means something there and no less than in the room's.
pub(super) fn hear(sitting: &mut Sitting<'_>, who: PersonId, text: &str) {
    if sitting.room.kind != RoomKind::Group || sitting.routed() {
        return;
    }
    let text = match read_command(text, None) {
        Address::Command(command) if matches!(command.name, "ask" | "salt") => command.rest,
        Address::Plain(plain) => plain,
        _ => return,
    };
    let own = sitting.people.get(&who).and_then(|person| person.taste.language.clone());
    let Some(language) = own.filter(|own| Lexicon::of(own).language() != sitting.lexicon().language()) else { return };
    let Some((theirs, answers)) = sense(sitting, text, &language) else { return };
    let rooms = sitting.taste().language.and_then(|rooms| sense(sitting, text, &rooms));
    let english = |tag: &str| Lexicon::of(tag).language() == "en";
    // Every lexicon knows English words besides its own, and a short one by chance: they make no sentence that language's. And
    // "165?" is the same in both.
    let own = rooms.is_none_or(|(words, _)| match () {
        () if english(&language) => theirs + BY_CHANCE >= words,
        () if sitting.lexicon().language() == "en" => theirs > words + BY_CHANCE,
        () => theirs > words,
    });
    if own {
        sitting.tongue = Some(Tongue { language, answers });
    }
}

/// How many words of it `language` knows, and whether it asks or reports. `None`: it does neither there, nor says who does what.
fn sense(sitting: &Sitting<'_>, text: &str, language: &str) -> Option<(usize, bool)> {
    let lexicon = Lexicon::of(language);
    let asker = Asker::new(language, sitting.zone_or_utc(), sitting.now);
    let plans = sitting.room.plan.is_some();
    let answers = ask::read_question(text, &asker).is_ok()
        || plans
            && (reading::read_report(text, lexicon).is_some()
                || reading::read_report_at(text, &asker.ground).is_some()
                || reading::asks_when(text, lexicon)
                || reading::asks_what_is_next(text, lexicon)
                || reading::asks_who_does_what(text, lexicon)
                || !reading::asks_when_step(text, lexicon).is_empty());
    let will = || {
        plans
            && (reading::read_refusal(text, lexicon).is_some()
                || reading::read_willing(text, lexicon).is_some()
                || !reading::read_takings(text, lexicon).is_empty())
    };
    let sentence = Sentence::read(text, lexicon);
    let known = (0..sentence.len()).filter(|at| !sentence.meanings(*at).is_empty());
    // A phrase counts with all its words.
    let known = known.map(|at| sentence.raw(at).split_whitespace().count()).sum();
    (answers || will()).then_some((known, answers))
}

/// Marks what answers the speaker alone: new, unpinned, and nothing that is offered or shown to all.
pub(super) fn mark(sitting: &mut Sitting<'_>) {
    let who = sitting.tongue.as_ref().filter(|tongue| tongue.answers).and(sitting.speaker());
    let here = To::Room(sitting.room.id);
    let for_all = |say: &Say| {
        let key = say.key.as_deref().map(|key| super::birds::unmarked(key).0);
        say.pin || key.is_some_and(|key| key == "board" || key == offering::KEY || key.starts_with("job-"))
    };
    let alone = |say: &Say| say.to == here && say.how != How::Close && say.urgency == Urgency::Answer && !for_all(say);
    sitting.says.iter_mut().filter(|say| alone(say)).for_each(|say| say.reader = who);
}
