//! How dinner was, said the day after: "a bit too salty", "juicy this time", "we ate 20 min late".
//!
//! Owns the grammar only. A clause that says anything else ("the gravy was salty") judges no bird.

use super::lexicon::Lexicon;
use super::sentence::Sentence;
use super::talk::is_question_of;
use chrono::TimeDelta;

/// What was found of salt, meat and hour, by the names the notes are kept under.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Verdict {
    /// `little`, `much`, `right`; with `-a-bit` behind it where it was only that.
    pub salt: Option<&'static str>,
    /// `dry`, `underdone`, `right`.
    pub meat: Option<&'static str>,
    /// `early`, `late`, `right`.
    pub time: Option<&'static str>,
    /// How late, if that was said.
    pub late_by: Option<TimeDelta>,
}

/// Longer texts tell a story.
const LONGEST: usize = 120;
/// As many words as a phrase has.
const MOST_WORDS: usize = 5;
/// Dinner is no later than that.
const LATEST: TimeDelta = TimeDelta::hours(6);
const RIGHT: &str = "right";

/// Reads what is said of a dinner that is over. `None`: nothing is said of it.
pub fn read_verdict(text: &str, lexicon: &'static Lexicon) -> Option<Verdict> {
    if text.chars().count() > LONGEST || text.contains(['?', '¿', '/', ':']) {
        return None;
    }
    let mut verdict = Verdict::default();
    for clause in text.split([',', ';', '.', '!', '\n']) {
        judged(clause, lexicon, &mut verdict);
    }
    (verdict != Verdict::default()).then_some(verdict)
}

/// "How was it last year?", "what did we do last time?".
pub fn asks_of_last_time(text: &str, lexicon: &'static Lexicon) -> bool {
    is_question_of(text, "last-time", lexicon)
}

fn judged(clause: &str, lexicon: &'static Lexicon, verdict: &mut Verdict) {
    let words = lexicon.talk_words(clause);
    let mut found = Verdict::default();
    let mut negated = false;
    let mut at = 0;
    while let Some(word) = words.get(at) {
        let longest = (1..=MOST_WORDS.min(words.len() - at)).rev().find_map(|count| {
            let phrase = words.get(at..at + count)?.join(" ");
            let says = lexicon.talked(&phrase, "verdict-").next()?;
            Some((count, says))
        });
        let number = word.chars().all(|c| c.is_ascii_digit());
        at += match longest {
            // "I'm late" is said of a guest.
            Some((_, "void")) => return,
            Some((count, "not")) => {
                negated = true;
                count
            }
            Some((count, "filler")) => count,
            Some((count, says)) => {
                found.take(says, negated);
                count
            }
            None if number || lexicon.talk(word, "filler") => 1,
            None => return,
        };
    }
    let slightly = |count: usize| words.windows(count).any(|some| lexicon.talk(&some.join(" "), "slightly"));
    if (1..=3).any(slightly) {
        found.salt = found.salt.map(|salt| match salt {
            "much" => "much-a-bit",
            "little" => "little-a-bit",
            salt => salt,
        });
    }
    if found.time == Some("late") {
        let sentence = Sentence::read(clause, lexicon);
        let span = (0..sentence.len()).find_map(|at| sentence.amount(at)?.span());
        found.late_by = span.map(|span| span.abs()).filter(|span| *span <= LATEST);
    }
    verdict.join(found);
}

impl Verdict {
    /// Of what is said the other way round, only that it wasn't so is known.
    fn take(&mut self, says: &'static str, negated: bool) {
        let Some((side, how)) = says.split_once('-') else { return };
        if negated && how == RIGHT {
            return;
        }
        let how = if negated { RIGHT } else { how };
        match side {
            "salt" => self.salt = Some(how),
            "meat" => self.meat = Some(how),
            "time" => self.time = Some(how),
            _ => *self = Self { salt: Some(how), meat: Some(how), time: Some(how), late_by: None },
        }
    }

    /// What was said later counts, beside what was said before.
    fn join(&mut self, later: Self) {
        self.salt = later.salt.or(self.salt);
        self.meat = later.meat.or(self.meat);
        self.time = later.time.or(self.time);
        self.late_by = later.late_by.or(self.late_by);
    }
}
