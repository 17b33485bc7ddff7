//! How it was: three taps by the host the day after, or the same in words, kept as notes and offered when the next dinner is planned.

use super::action::Action;
use super::sitting::{button, labelled};
use super::state::{CookNote, JobState, LivePlan, Noted, Room};
use super::turn::{Bell, BellKind, Button, How, Say, To, Urgency};
use super::{PersonId, RoomKind, Sitting, calls};
use crate::reading::{self, Verdict};
use crate::words::{Arg, Text};
use carvetime_core::plan::clock::{at_hour, date};
use carvetime_core::plan::{Moment, Step};
use chrono::{Days, TimeDelta};
use chrono_tz::Tz;

/// The bell's name.
const BELL: &str = "feedback";
/// Hour of the next day at which the host is asked.
const HOUR: u32 = 11;
/// What is judged where it is asked how late it was.
const LATE_BY: &str = "late";
/// As many dinners as are remembered.
const MOST_NOTES: usize = 5;

/// What is asked, and what can be answered: the last of each is as it should be.
const ASKED: [(&str, [&str; 3]); 3] = [
    ("salt", ["little", "much", "right"]),
    ("meat", ["dry", "underdone", "right"]),
    ("time", ["early", "late", "right"]),
];

/// Minutes to pick from where nobody marked when it was carved.
const LATE: [u16; 4] = [10, 20, 40, 60];

/// When the host is asked, if that is still to come.
pub(super) fn bell(room: &Room, plan: &LivePlan) -> Option<Bell> {
    let zone = room.taste.zone().filter(|_| plan.feedback.is_none())?;
    let served = plan.job(Step::Serve, 0).filter(|job| matches!(job.state, JobState::Done { .. }))?;
    Some(Bell { at: day_after(served.at, zone)?, kind: BellKind::Note { name: BELL.into() } })
}

fn day_after(served: Moment, zone: Tz) -> Option<Moment> {
    Some(at_hour(zone, date(zone, served).checked_add_days(Days::new(1))?, HOUR, 0))
}

/// The bell rang.
pub(super) fn rang(sitting: &mut Sitting<'_>, kind: &BellKind) {
    if !matches!(kind, BellKind::Note { name } if name == BELL) {
        return;
    }
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| plan.feedback.is_none()) else { return };
    plan.feedback = Some(CookNote::new(plan.wish.dinner.unwrap_or(sitting.now)));
    show(sitting, How::New);
}

/// The question with what has been answered so far.
fn show(sitting: &mut Sitting<'_>, how: How) {
    let Some(plan) = &sitting.room.plan else { return };
    let (serial, host) = (plan.serial, plan.host);
    let Some(note) = plan.feedback.clone() else { return };
    let rows: Vec<Vec<Button>> = ASKED
        .iter()
        .filter(|(what, _)| note.get(what).is_none())
        .map(|(what, answers)| {
            let [one, other, right] = *answers;
            let label = |answer: &'static str| {
                let action = Action::Rate(serial, (*what).to_owned(), answer.to_owned());
                labelled(Text::named("feedback-button", &format!("{what}-{answer}")), &action)
            };
            vec![label(one), label(right), label(other)]
        })
        .collect();
    let how_late = note.is_late_unknown().then(|| {
        LATE.map(|minutes| {
            let action = Action::Rate(serial, LATE_BY.to_owned(), minutes.to_string());
            labelled(Text::new("feedback-button-late").with("span", span(minutes)), &action)
        })
    });
    let only_that = rows.is_empty() && how_late.is_some();
    let rows: Vec<Vec<Button>> = rows.into_iter().chain(how_late.map(Vec::from)).collect();
    let private = sitting.room.kind == RoomKind::Group && sitting.people.get(&host).is_some_and(|host| host.reachable);
    let to = if private { To::Person(host) } else { To::Room(sitting.room.id) };
    let mut lines = Vec::new();
    if private {
        lines.extend(calls::from(sitting));
    } else if sitting.room.kind == RoomKind::Group {
        lines.push(Text::new("room-call-name").with("name", calls::mention_of(sitting, host)));
    }
    if rows.is_empty() {
        lines.push(Text::new("feedback-noted").with("notes", Arg::List(words(&note))));
    } else {
        lines.push(Text::new(if only_that { "feedback-how-late" } else { "feedback-ask" }));
    }
    let mut say = Say::of(to, lines);
    say.key("feedback").how(how).urgency(Urgency::Board);
    for row in rows {
        say.row(row);
    }
    sitting.say(say);
}

/// A tap of the host.
pub(super) fn rate(sitting: &mut Sitting<'_>, serial: u32, what: &str, answer: &str) {
    let minutes = answer.parse().ok().filter(|minutes| what == LATE_BY && LATE.contains(minutes));
    let known = minutes.is_some() || ASKED.iter().any(|(name, answers)| *name == what && answers.contains(&answer));
    let speaker = sitting.speaker();
    let Some(plan) = sitting.room.plan.as_mut().filter(|plan| known && plan.serial == serial) else {
        return sitting.notice(Text::new("room-stale"));
    };
    if speaker != Some(plan.host) {
        return super::may::refuse(sitting);
    }
    note(sitting, |note, late| match minutes {
        Some(_) => note.late_min = minutes,
        None => note.set(what, answer, late),
    });
    show(sitting, How::Edit);
}

/// "A bit too salty, and we ate 20 min late", once it was asked; "how was it last year?" at any time. `false`: neither.
pub(super) fn told(sitting: &mut Sitting<'_>, text: &str, addressed: bool) -> bool {
    if reading::asks_of_last_time(text, sitting.lexicon()) {
        return recalled(sitting, addressed);
    }
    let speaker = sitting.speaker();
    let asked = |plan: &&LivePlan| plan.feedback.is_some() && Some(plan.host) == speaker;
    if sitting.room.plan.as_ref().filter(asked).is_none() {
        return false;
    }
    let Some(verdict) = reading::read_verdict(text, sitting.lexicon()) else { return false };
    let Verdict { salt, meat, time, late_by } = verdict;
    note(sitting, |note, late| {
        for (what, answer) in [("salt", salt), ("meat", meat), ("time", time)] {
            if let Some(answer) = answer {
                note.set(what, answer, late);
            }
        }
        note.late_min = late_by.and_then(|by| u16::try_from(by.num_minutes()).ok()).or(note.late_min);
    });
    // What was tapped shows where it was asked; what was typed to the bot alone is answered below it.
    show(sitting, if addressed { How::New } else { How::Edit });
    true
}

/// What is kept of the last dinner; among people only where there is something.
fn recalled(sitting: &mut Sitting<'_>, addressed: bool) -> bool {
    let host = sitting.room.plan.as_ref().map(|plan| plan.host);
    let found = sitting.speaker().into_iter().chain(host).find_map(|who| last_time(sitting, who).0);
    let known = found.is_some();
    if known || addressed {
        sitting.answer(found.unwrap_or_else(|| Text::new("feedback-no-notes")));
    }
    known || addressed
}

/// Changes the host's note of the plan in hand; `change` is told how late it was marked.
fn note(sitting: &mut Sitting<'_>, change: impl FnOnce(&mut CookNote, Option<u16>)) {
    let now = sitting.now;
    let Some(plan) = sitting.room.plan.as_mut() else { return };
    let (host, late) = (plan.host, late_by(plan));
    let note = plan.feedback.get_or_insert_with(|| CookNote::new(now));
    change(note, late);
    let note = note.clone();
    if sitting.room.kind == RoomKind::Group {
        sitting.room.noted = Some(Noted { by: host, note: note.clone() });
    }
    sitting.change_person(host, |person| {
        person.notes.retain(|other| other.dinner != note.dinner);
        person.notes.push(note);
        let beyond = person.notes.len().saturating_sub(MOST_NOTES);
        person.notes.drain(..beyond);
    });
}

/// How long after the hour told it was ready to eat, as far as somebody marked that; to five minutes.
fn late_by(plan: &LivePlan) -> Option<u16> {
    const LONGEST: TimeDelta = TimeDelta::hours(6);
    let dinner = plan.wish.dinner?;
    let ends = [Step::Carve, Step::Reheat].map(Step::name);
    let ready =
        plan.facts.iter().filter(|fact| fact.done && ends.contains(&fact.step.as_str())).map(|fact| fact.at).max();
    let late = ready? - dinner;
    let minutes = u16::try_from((late.num_minutes() + 2) / 5 * 5).ok()?;
    (minutes > 0 && late <= LONGEST).then_some(minutes)
}

fn span(minutes: u16) -> Arg {
    Arg::Span(TimeDelta::minutes(minutes.into()))
}

/// What was not as it should be.
fn words(note: &CookNote) -> Vec<Text> {
    let told: Vec<Text> = ASKED
        .iter()
        .filter_map(|(what, _)| Some((what, note.get(what).filter(|answer| *answer != "right")?)))
        .map(|(what, answer)| match note.late_min.filter(|_| answer == "late") {
            Some(minutes) => Text::new("feedback-word-time-late-by").with("span", span(minutes)),
            None => Text::named("feedback-word", &format!("{what}-{answer}")),
        })
        .collect();
    if told.is_empty() { vec![Text::new("feedback-word-all-right")] } else { told }
}

/// The line and the button for the next plan of `who`: what was wrong last time, and what would change it.
pub(super) fn last_time(sitting: &Sitting<'_>, who: PersonId) -> (Option<Text>, Option<Button>) {
    // Whoever cooked for this table last: the next cook had it on the plate.
    let own = sitting.people.get(&who).and_then(|person| person.notes.last());
    let here = sitting.room.noted.as_ref().map(|noted| &noted.note);
    let Some(note) = own.into_iter().chain(here).max_by_key(|note| note.dinner) else { return (None, None) };
    let line = Text::new("feedback-last-time").with("notes", Arg::List(words(note)));
    let strength = match note.get("salt") {
        Some("much" | "much-a-bit") => Some(("light", "feedback-button-less-salt")),
        Some("little" | "little-a-bit") => Some(("bold", "feedback-button-more-salt")),
        _ => None,
    };
    let wish = sitting.room.drafts.get(&who).map(|draft| &draft.wish);
    let open = wish.is_none_or(|wish| wish.strength.is_none());
    let change = strength
        .filter(|_| open)
        .map(|(strength, label)| button(label, &Action::Pick(who, "strength".to_owned(), strength.to_owned())));
    (Some(line), change)
}

impl CookNote {
    /// Nothing said yet of the dinner at that hour.
    pub fn new(dinner: Moment) -> Self {
        Self { dinner, salt: None, meat: None, time: None, late_min: None }
    }

    /// Late, and nobody knows by how much.
    fn is_late_unknown(&self) -> bool {
        self.time.as_deref() == Some("late") && self.late_min.is_none()
    }

    fn get(&self, what: &str) -> Option<&str> {
        match what {
            "salt" => self.salt.as_deref(),
            "meat" => self.meat.as_deref(),
            _ => self.time.as_deref(),
        }
    }

    /// `late` by how many minutes it was marked.
    fn set(&mut self, what: &str, answer: &str, late: Option<u16>) {
        let slot = match what {
            "salt" => &mut self.salt,
            "meat" => &mut self.meat,
            _ => &mut self.time,
        };
        *slot = Some(answer.to_owned());
        if what == "time" {
            self.late_min = late.filter(|_| answer == "late");
        }
    }
}
