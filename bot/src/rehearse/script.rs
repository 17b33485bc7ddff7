//! A script of a cook: settings, then lines of who says or presses what, and when.
//!
//! Read whole before anything is played. Owns the grammar and the policy for local times; knows nothing of the engine.
//! Start at [`Script::parse`].

use crate::cli::is_tag;
use crate::words::{Arg, Text};
use carvetime_core::plan::Moment;
use chrono::{LocalResult, NaiveDateTime, TimeZone};
use chrono_tz::{GapInfo, Tz};

/// A script that has been read.
#[derive(Debug, Clone, PartialEq)]
pub struct Script {
    /// Clock of the kitchen.
    pub zone: Tz,
    /// Language tag of everyone in it.
    pub locale: String,
    /// Whether several people share the room.
    pub group: bool,
    /// What happens, in order of time.
    pub events: Vec<Event>,
}

/// One line that plays.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// Its line in the script, from 1.
    pub line: usize,
    /// When.
    pub at: Moment,
    /// What.
    pub act: Act,
}

/// What happens on a line.
#[derive(Debug, Clone, PartialEq)]
pub enum Act {
    /// Someone says something.
    Say {
        /// Who.
        name: String,
        /// In the private chat with the bot.
        private: bool,
        /// The words.
        text: String,
    },
    /// Someone presses a button.
    Press {
        /// Who.
        name: String,
        /// On a message in the private chat with the bot.
        private: bool,
        /// Its label, in any case, accents or none, with plain blanks and apostrophes.
        label: String,
    },
    /// Nothing: the clock runs to here.
    Wait,
}

/// A line that cannot be read.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("line {line}: {reason}")]
pub struct ScriptError {
    /// Its number, from 1.
    pub line: usize,
    /// What is wrong with it.
    pub reason: Reason,
}

/// What is wrong with a line.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Reason {
    /// It starts neither with a time nor with a setting.
    #[error("unknown: {0:?}")]
    Unknown(String),
    /// No such zone.
    #[error("no zone: {0:?}")]
    Zone(String),
    /// No language tag.
    #[error("no locale: {0:?}")]
    Locale(String),
    /// Neither `group` nor `private`.
    #[error("no kind of room: {0:?}")]
    Room(String),
    /// A setting after the first time, or a second time.
    #[error("too late for: {0:?}")]
    Late(String),
    /// No such time, or none that can be reached.
    #[error("no time: {0:?}")]
    Time(String),
    /// Earlier than the line before.
    #[error("earlier than the line before: {0:?}")]
    Earlier(String),
    /// Neither `NAME: text` nor `NAME > label`.
    #[error("nobody says or presses anything: {0:?}")]
    Act(String),
    /// A name with nothing said or pressed.
    #[error("nothing said or pressed by {0:?}")]
    Empty(String),
    /// A second person in a private room.
    #[error("a private room has one person, not also {0:?}")]
    Crowd(String),
}

impl Reason {
    /// For a person.
    pub fn text(&self) -> Text {
        let with = |id, given: &String| Text::new(id).with("given", Arg::Verbatim(given.clone()));
        match self {
            Self::Unknown(given) => with("cli-script-unknown", given),
            Self::Zone(given) => with("cli-no-zone", given),
            Self::Locale(given) => with("cli-no-locale", given),
            Self::Room(given) => with("cli-script-room", given),
            Self::Late(given) => with("cli-script-late", given),
            Self::Time(given) => with("cli-script-time", given),
            Self::Earlier(given) => with("cli-script-earlier", given),
            Self::Act(given) => with("cli-script-act", given),
            Self::Empty(given) => with("cli-script-empty", given),
            Self::Crowd(given) => with("cli-script-crowd", given),
        }
    }
}

impl Script {
    /// Reads a script. `zone` and `locale` stand where the script does not say.
    ///
    /// # Errors
    /// [`ScriptError`] with the number of the first line that cannot be read.
    pub fn parse(text: &str, zone: Tz, locale: &str) -> Result<Self, ScriptError> {
        let mut reader = Reading {
            script: Self { zone, locale: locale.to_owned(), group: true, events: Vec::new() },
            settings: Vec::new(),
            only: None,
        };
        // Editors on some systems begin a file with a byte order mark.
        let text = text.strip_prefix('\u{FEFF}').unwrap_or(text);
        for (i, line) in text.lines().enumerate() {
            let content = without_comment(line).trim();
            if !content.is_empty() {
                reader.line(i + 1, content).map_err(|reason| ScriptError { line: i + 1, reason })?;
            }
        }
        Ok(reader.script)
    }

    /// The first person who does anything.
    pub fn first_name(&self) -> Option<&str> {
        self.events.iter().find_map(|event| match &event.act {
            Act::Say { name, .. } | Act::Press { name, .. } => Some(name.as_str()),
            Act::Wait => None,
        })
    }
}

struct Reading {
    script: Script,
    /// Settings seen so far: each may stand once.
    settings: Vec<String>,
    /// The one person of a private room.
    only: Option<String>,
}

impl Reading {
    fn line(&mut self, number: usize, content: &str) -> Result<(), Reason> {
        if content.starts_with(|c: char| c.is_ascii_digit()) {
            return self.event(number, content);
        }
        let (word, value) = content.split_once(char::is_whitespace).unwrap_or((content, ""));
        let value = value.trim();
        match word {
            "zone" => self.script.zone = value.parse().map_err(|_| Reason::Zone(value.to_owned()))?,
            "locale" if is_tag(value) => self.script.locale = value.to_owned(),
            "locale" => return Err(Reason::Locale(value.to_owned())),
            "room" => match value {
                "group" => self.script.group = true,
                "private" => self.script.group = false,
                _ => return Err(Reason::Room(value.to_owned())),
            },
            _ => return Err(Reason::Unknown(content.to_owned())),
        }
        // Times before it would have been read with another zone.
        if !self.script.events.is_empty() || self.settings.iter().any(|seen| seen == word) {
            return Err(Reason::Late(content.to_owned()));
        }
        self.settings.push(word.to_owned());
        Ok(())
    }

    fn event(&mut self, number: usize, content: &str) -> Result<(), Reason> {
        let (local, rest) = time_and_rest(content)?;
        let no_time = || Reason::Time(content.to_owned());
        let at = moment(local, self.script.zone).ok_or_else(no_time)?;
        if self.script.events.last().is_some_and(|before| before.at > at) {
            return Err(Reason::Earlier(content.to_owned()));
        }
        let act = act(rest)?;
        if let (false, Act::Say { name, .. } | Act::Press { name, .. }) = (self.script.group, &act) {
            let only = self.only.get_or_insert_with(|| name.clone());
            if only.to_lowercase() != name.to_lowercase() {
                return Err(Reason::Crowd(name.clone()));
            }
        }
        self.script.events.push(Event { line: number, at, act });
        Ok(())
    }
}

/// Cuts a comment off: `#` at the start of a line or after a space.
fn without_comment(line: &str) -> &str {
    let starts = line.char_indices().find(|(at, c)| {
        *c == '#' && line.get(..*at).is_none_or(|before| before.is_empty() || before.ends_with([' ', '\t']))
    });
    starts.and_then(|(at, _)| line.get(..at)).unwrap_or(line)
}

/// `2027-11-22 18:30` (with seconds or without), and what follows it.
fn time_and_rest(content: &str) -> Result<(NaiveDateTime, &str), Reason> {
    let mut words = content.splitn(3, char::is_whitespace);
    let (date, clock) = (words.next().unwrap_or_default(), words.next().unwrap_or_default());
    let written = format!("{date} {clock}");
    let time = NaiveDateTime::parse_from_str(&written, "%Y-%m-%d %H:%M:%S")
        .or_else(|_| NaiveDateTime::parse_from_str(&written, "%Y-%m-%d %H:%M"));
    match time {
        Ok(time) => Ok((time, words.next().unwrap_or_default().trim())),
        Err(_) => Err(Reason::Time(written)),
    }
}

/// The instant of a local time: in a fold the earlier one, in a gap the first that exists after it.
fn moment(local: NaiveDateTime, zone: Tz) -> Option<Moment> {
    match zone.from_local_datetime(&local) {
        LocalResult::Single(at) | LocalResult::Ambiguous(at, _) => Some(at.to_utc()),
        LocalResult::None => GapInfo::new(&local, &zone)?.end.map(|end| end.to_utc()),
    }
}

fn act(rest: &str) -> Result<Act, Reason> {
    if rest.is_empty() {
        return Ok(Act::Wait);
    }
    let no_act = || Reason::Act(rest.to_owned());
    // A name may hold a `>`; one that presses stands after a space.
    let mark = rest.find(':').into_iter().chain(rest.find(" >").map(|at| at + 1)).min().ok_or_else(no_act)?;
    let (who, what) = rest.split_at(mark);
    let (press, what) = (what.starts_with('>'), what.get(1..).unwrap_or_default().trim());
    let (name, private) = match who.trim().strip_suffix("(private)") {
        Some(name) => (name.trim(), true),
        None => (who.trim(), false),
    };
    if name.is_empty() {
        return Err(no_act());
    }
    if what.is_empty() {
        return Err(Reason::Empty(name.to_owned()));
    }
    let (name, what) = (name.to_owned(), what.to_owned());
    Ok(if press { Act::Press { name, private, label: what } } else { Act::Say { name, private, text: what } })
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]
mod tests {
    use super::*;
    use chrono_tz::{America, UTC};
    use proptest::prelude::*;

    fn parse(text: &str) -> Result<Script, ScriptError> {
        Script::parse(text, UTC, "en-US")
    }

    fn acts(text: &str) -> Vec<Act> {
        parse(text).unwrap().events.into_iter().map(|event| event.act).collect()
    }

    fn fails(text: &str, line: usize, reason: Reason) {
        assert_eq!(parse(text), Err(ScriptError { line, reason }), "{text:?}");
    }

    #[test]
    fn every_kind_of_line_is_read() {
        let script = parse(
            "\u{FEFF}# a comment\n\nzone America/Chicago\nlocale es-MX\nroom group     # or: room private\n\
             2027-11-22 18:30 Rosa: /plan 14.5 lb, dinner Thursday 5 pm # said\n\
             2027-11-22 18:31:30 Rosa > Accept\n\
             2027-11-25 11:41 Aunt May (private): /start\n\
             2027-11-25 11:42 Aunt May (private) > Done\r\n\
             2027-11-25 11:43 <b>Bob</b>: hello\n\
             2027-11-25 20:00",
        )
        .unwrap();
        assert_eq!((script.zone, script.locale.as_str(), script.group), (America::Chicago, "es-MX", true));
        let (rosa, may) = ("Rosa".to_owned(), "Aunt May".to_owned());
        let expected = [
            Act::Say { name: rosa.clone(), private: false, text: "/plan 14.5 lb, dinner Thursday 5 pm".into() },
            Act::Press { name: rosa, private: false, label: "Accept".into() },
            Act::Say { name: may.clone(), private: true, text: "/start".into() },
            Act::Press { name: may, private: true, label: "Done".into() },
            Act::Say { name: "<b>Bob</b>".into(), private: false, text: "hello".into() },
            Act::Wait,
        ];
        assert_eq!(script.events.iter().map(|event| event.act.clone()).collect::<Vec<_>>(), expected);
        assert_eq!(script.events.iter().map(|event| event.line).collect::<Vec<_>>(), [6, 7, 8, 9, 10, 11]);
        assert_eq!(script.events[1].at.to_rfc3339(), "2027-11-23T00:31:30+00:00");
    }

    #[test]
    fn the_first_mark_decides_between_saying_and_pressing() {
        let say = |text: &str| Act::Say { name: "Tom".into(), private: false, text: text.into() };
        assert_eq!(acts("2027-11-25 12:00 Tom: pit > 300"), [say("pit > 300")]);
        assert_eq!(acts("2027-11-25 12:00 Tom: at 14:05"), [say("at 14:05")]);
        assert_eq!(acts("2027-11-25 12:00 Tom: room#3"), [say("room#3")]);
        let press = Act::Press { name: "Tom".into(), private: false, label: "5:00 PM".into() };
        assert_eq!(acts("2027-11-25 12:00 Tom > 5:00 PM"), [press]);
    }

    #[test]
    fn a_line_that_cannot_be_read_is_named_with_its_reason() {
        let t = "2027-11-25 12:00";
        fails("\n# x\nhello", 3, Reason::Unknown("hello".into()));
        fails("zone Mars/Olympus", 1, Reason::Zone("Mars/Olympus".into()));
        fails("locale !", 1, Reason::Locale("!".into()));
        fails("locale", 1, Reason::Locale(String::new()));
        fails("room kitchen", 1, Reason::Room("kitchen".into()));
        fails("room group\nroom private", 2, Reason::Late("room private".into()));
        fails(&format!("{t}\nzone UTC"), 2, Reason::Late("zone UTC".into()));
        fails("2027-11-31 12:00 Tom: x", 1, Reason::Time("2027-11-31 12:00".into()));
        fails("2027-11-25 Tom: x", 1, Reason::Time("2027-11-25 Tom:".into()));
        fails(&format!("{t}\n2027-11-25 11:59"), 2, Reason::Earlier("2027-11-25 11:59".into()));
        fails(&format!("{t} Tom"), 1, Reason::Act("Tom".into()));
        fails(&format!("{t} : x"), 1, Reason::Act(": x".into()));
        fails(&format!("{t} Tom:"), 1, Reason::Empty("Tom".into()));
        fails(&format!("{t} Tom > # Done"), 1, Reason::Empty("Tom".into()));
        fails(&format!("room private\n{t} Tom: x\n{t} Rosa: y"), 3, Reason::Crowd("Rosa".into()));
    }

    #[test]
    fn a_time_in_a_gap_is_the_first_after_it_and_one_in_a_fold_the_earlier() {
        let at = |line: &str| {
            let script = Script::parse(line, America::New_York, "en").unwrap();
            script.events[0].at.with_timezone(&America::New_York).to_rfc3339()
        };
        assert_eq!(at("2026-03-08 02:30"), "2026-03-08T03:00:00-04:00");
        assert_eq!(at("2026-11-01 01:30"), "2026-11-01T01:30:00-04:00");
    }

    proptest! {
        #[test]
        fn no_text_makes_it_panic(text in "(?s)(room|zone|locale|2027-11-2[0-9] 1[0-9]:00|[ -~\n#:>é]){0,12}") {
            let _ = parse(&text);
        }
    }
}
