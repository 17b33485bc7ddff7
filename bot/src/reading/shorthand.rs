//! Readings as they are typed at the probe: "b 167 t 173 wing 171", "thig 139", "165 everywhere".
//!
//! Such letters mean a spot only where the message is nothing else but readings; there they are spelled out for [`super::read_log`].
//! Initials of each language are its `talk-short-` entries.

use super::fold::fold;
use super::lexicon::Lexicon;
use super::log::Place;
use super::meat::clauses;
use super::sentence::Sentence;
use super::told::Told;
use std::ops::Range;

/// Longer messages tell more than readings.
const LONGEST: usize = 80;

/// A run of letters or of digits.
struct Piece {
    span: Range<usize>,
    digits: bool,
}

/// The message with its spots spelled out. `None`: there is nothing to spell out, or it is more than readings.
pub(super) fn spelled_out(text: &str, lexicon: &'static Lexicon) -> Option<String> {
    if text.len() > LONGEST || text.contains(['?', '¿']) {
        return None;
    }
    let pieces = pieces(text);
    if !pieces.iter().any(|piece| piece.digits) {
        return None;
    }
    if let Some(text) = everywhere(text, &pieces, lexicon) {
        return Some(text);
    }
    let clauses: Option<Vec<Clause>> = clauses(text).into_iter().map(|clause| told(clause, lexicon)).collect();
    let clauses = clauses?;
    if !clauses.iter().any(|clause| matches!(clause, Clause::SpelledOut(_))) {
        return None;
    }
    let said: Vec<&str> = clauses
        .iter()
        .map(|clause| match clause {
            Clause::SpelledOut(text) => text.as_str(),
            Clause::Plain(text) => text,
        })
        .collect();
    Some(said.join(", "))
}

/// A clause of a message of readings.
enum Clause<'t> {
    /// It needs no change.
    Plain(&'t str),
    SpelledOut(String),
}

/// A clause with its spots spelled out. `None`: it says more than readings.
fn told<'t>(clause: &'t str, lexicon: &'static Lexicon) -> Option<Clause<'t>> {
    let pieces = pieces(clause);
    if let Some(air) = air(clause, &pieces, lexicon) {
        return Some(Clause::SpelledOut(air));
    }
    let mut out = String::with_capacity(clause.len() + 20);
    let mut from = 0;
    for (at, piece) in pieces.iter().enumerate().filter(|(_, piece)| !piece.digits) {
        let word = clause.get(piece.span.clone()).unwrap_or_default();
        let beside = |at: Option<usize>| at.and_then(|at| pieces.get(at)).is_some_and(|piece| piece.digits);
        let number = beside(at.checked_sub(1)) || beside(Some(at + 1));
        match short(word, lexicon).filter(|_| number) {
            Some(place) => {
                out.push_str(clause.get(from..piece.span.start)?);
                out.push_str(&format!(" {} ", lexicon.spot(place)?));
                from = piece.span.end;
            }
            None if says_no_more(word, lexicon) => {}
            None => return None,
        }
    }
    if from == 0 {
        return Some(Clause::Plain(clause));
    }
    out.push_str(clause.get(from..)?);
    Some(Clause::SpelledOut(out))
}

/// "Back up to 280" is said of the air.
fn air(clause: &str, pieces: &[Piece], lexicon: &'static Lexicon) -> Option<String> {
    let sentence = Sentence::read(clause, lexicon);
    let turned = sentence.has("heat-back") || sentence.has("heat-set");
    let named = (0..sentence.len()).any(|at| sentence.of(at, "spot-").is_some());
    let mut numbers = pieces.iter().filter(|piece| piece.digits);
    let number = numbers.next().filter(|_| turned && !named && numbers.next().is_none())?;
    Some(format!("{} {}", lexicon.spot(Place::Pit)?, clause.get(number.span.start..)?))
}

/// "165 everywhere" is read in every spot that has to be there: breast, thigh and wing. "... but the stuffing 156": that one is not.
fn everywhere(text: &str, pieces: &[Piece], lexicon: &'static Lexicon) -> Option<String> {
    let but = pieces.iter().find(|piece| {
        let word = text.get(piece.span.clone()).unwrap_or_default();
        !piece.digits && lexicon.talk(&fold(word), "but-for")
    });
    let Some(but) = but else { return in_each(text, pieces, &[], lexicon) };
    let (all, one) = (text.get(..but.span.start)?, text.get(but.span.end..)?);
    let sentence = Sentence::read(one, lexicon);
    let named: Vec<Place> = (0..sentence.len()).filter_map(|at| Place::from_name(sentence.of(at, "spot-")?)).collect();
    let more = |piece: &Piece| !piece.digits && !says_no_more(one.get(piece.span.clone()).unwrap_or_default(), lexicon);
    let own = self::pieces(one);
    // "But the stuffing is done" counts nothing.
    if named.is_empty() || !own.iter().any(|piece| piece.digits) || own.iter().any(more) {
        return None;
    }
    Some(format!("{}, {}", in_each(all, &self::pieces(all), &named, lexicon)?, one.trim()))
}

/// One number, read in every spot but those.
fn in_each(text: &str, pieces: &[Piece], but: &[Place], lexicon: &'static Lexicon) -> Option<String> {
    let told = Told::of(text, lexicon);
    let (words, mut all) = (told.words(), told.all("everywhere"));
    let mut numbers: Vec<Range<usize>> = Vec::new();
    for piece in pieces.iter().filter(|piece| piece.digits) {
        // "74,5" is one.
        match numbers.last_mut().filter(|last| matches!(text.get(last.end..piece.span.start), Some("," | "."))) {
            Some(last) => last.end = piece.span.end,
            None => numbers.push(piece.span.clone()),
        }
    }
    let [number] = &numbers[..] else { return None };
    let part = all.next()?;
    let more = |word: &String| !part.contains(word) && !says_no_more(word, lexicon);
    if words.iter().any(|word| !word.contains(|c: char| c.is_ascii_digit()) && more(word)) {
        return None;
    }
    let number = text.get(number.clone())?;
    let last = number.rsplit([',', '.']).next().unwrap_or(number);
    let unit = words.iter().find(|word| ["f", "c"].iter().any(|unit| word.trim_start_matches(last) == *unit));
    let unit = unit.map_or("", |word| word.trim_start_matches(last));
    let spots = [Place::Breast, Place::Thigh, Place::Wing].into_iter().filter(|place| !but.contains(place));
    let read: Option<Vec<String>> =
        spots.map(|place| Some(format!("{} {number}{unit}", lexicon.spot(place)?))).collect();
    read.map(|read| read.join(", "))
}

/// The spot that a few letters beside a number stand for: initials, or its name with a slip.
fn short(word: &str, lexicon: &'static Lexicon) -> Option<Place> {
    let folded = fold(word);
    let groups = lexicon.groups(&folded);
    let initials = |place: &Place| groups.iter().any(|group| group.strip_prefix("short-") == Some(place.name()));
    let initials = Place::ALL.iter().copied().find(initials);
    let whole = || Sentence::read(word, lexicon).of(0, "spot-").is_some();
    initials.or_else(|| if whole() { None } else { lexicon.near_spot(&folded).and_then(Place::from_name) })
}

/// A spot by its name, or a word that adds nothing to a reading.
pub(super) fn says_no_more(word: &str, lexicon: &'static Lexicon) -> bool {
    let folded = fold(word);
    ["filler", "meat", "meat-reads"].iter().any(|group| lexicon.talk(&folded, group))
        || Sentence::read(word, lexicon).of(0, "spot-").is_some()
}

fn pieces(text: &str) -> Vec<Piece> {
    let mut pieces: Vec<Piece> = Vec::new();
    for (at, c) in text.char_indices().filter(|(_, c)| c.is_alphanumeric() || matches!(c, '\'' | '’')) {
        let (digits, end) = (c.is_ascii_digit(), at + c.len_utf8());
        match pieces.last_mut().filter(|last| last.span.end == at && last.digits == digits) {
            Some(last) => last.span.end = end,
            None => pieces.push(Piece { span: at..end, digits }),
        }
    }
    pieces
}
