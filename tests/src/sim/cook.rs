//! What the people of one cook do: a plan, a week of words, presses and readings, none of it tidy.

use super::platform::{Act, Deed, Platform};
use crate::fuzz::Chance;
use carvetime::room::{LINK, RoomId, RoomKind};
use chrono::{DateTime, TimeDelta, Utc};
use std::collections::VecDeque;

const NAMES: [&str; 4] = ["Rosa", "Tom", "Lena", "Ida"];

const STEPS: [&str; 8] = ["salt", "fire", "temper", "on", "carve", "thaw", "chill", "water"];

/// Words that may come at any time.
const WORDS: [&str; 14] = [
    "/board",
    "/when",
    "/undo",
    "/take",
    "/help",
    "/settings",
    "salted it",
    "thanks",
    "2 tbsp table salt in flake kosher",
    "is 158 for 2 minutes safe?",
    "fire went out",
    "guests come 40 min late",
    "/plan add stuffing in the oven 45 min at 375",
    "what is left to do?",
];

/// What comes next.
#[derive(Debug, Clone, Copy)]
enum Next {
    Start(usize),
    /// Blocks the bot, which learns of it only when it writes.
    Block(usize),
    Zone,
    Plan,
    Accept,
    Anything,
}

/// The people of one cook, and when they do something.
pub struct Cook {
    /// The group, or the host's own chat.
    pub room: RoomId,
    /// Private or group.
    pub kind: RoomKind,
    /// Id and name of each.
    pub people: Vec<(i64, String)>,
    /// When dinner is meant to be.
    pub dinner: DateTime<Utc>,
    agenda: VecDeque<(DateTime<Utc>, Next)>,
}

impl Cook {
    /// Number `number`, planned from `start` on.
    pub fn new(number: i64, start: DateTime<Utc>, chance: &mut Chance) -> Self {
        let count = 1 + chance.below(NAMES.len());
        let kind = if count == 1 { RoomKind::Private } else { RoomKind::Group };
        let people: Vec<(i64, String)> =
            (0..).zip(NAMES).take(count).map(|(nth, name)| (number * 100 + nth, format!("{name}x{number}x"))).collect();
        let room = RoomId(if kind == RoomKind::Private { number * 100 } else { -number * 100 });
        // Noon to six in Chicago.
        let days = 1 + chance.below(6) as i64;
        let dinner = start + TimeDelta::days(days) + TimeDelta::minutes(15 * chance.below(24) as i64);
        let mut agenda = vec![(start, Next::Zone)];
        let minute = |minutes: i64| start + TimeDelta::minutes(minutes);
        for nth in 0..count {
            if chance.below(3) > 0 {
                let at = 1 + chance.below(4000) as i64;
                agenda.push((minute(at), Next::Start(nth)));
                if nth > 0 && chance.below(3) == 0 {
                    agenda.push((minute(at + chance.below(4000) as i64), Next::Block(nth)));
                }
            }
        }
        agenda.push((minute(2), Next::Plan));
        agenda.extend([5, 8, 15].map(|minutes| (minute(minutes), Next::Accept)));
        for _ in 0..10 + chance.below(15) {
            let span = (dinner + TimeDelta::days(2) - start).num_minutes() as usize;
            agenda.push((minute(chance.below(span) as i64), Next::Anything));
        }
        for _ in 0..10 + chance.below(15) {
            let before = TimeDelta::minutes(chance.below(480) as i64 - 120);
            agenda.push((dinner - before, Next::Anything));
        }
        agenda.sort_by_key(|(at, _)| *at);
        Self { room, kind, people, dinner, agenda: agenda.into() }
    }

    /// When the next deed is.
    pub fn next(&self) -> Option<DateTime<Utc>> {
        self.agenda.front().map(|(at, _)| *at)
    }

    /// Does what has come up by `now`.
    pub fn act(&mut self, now: DateTime<Utc>, platform: &mut Platform, chance: &mut Chance) {
        while self.next().is_some_and(|at| at <= now) {
            let Some((_, next)) = self.agenda.pop_front() else { return };
            if let Some(deed) = self.deed(next, now, platform, chance) {
                platform.hear(deed);
            }
        }
    }

    fn deed(&self, next: Next, at: DateTime<Utc>, platform: &mut Platform, chance: &mut Chance) -> Option<Deed> {
        let host = self.people[0].clone();
        let by = chance.pick(&self.people).clone();
        let here = |by, text: String| Some(Deed { room: self.room, kind: self.kind, by, at, act: Act::Say(text) });
        match next {
            Next::Start(nth) => {
                let by = self.people[nth].clone();
                let room = RoomId(by.0);
                platform.chats.entry(room).or_default().open = true;
                Some(Deed { room, kind: RoomKind::Private, by, at, act: Act::Say("/start".into()) })
            }
            Next::Block(nth) => {
                platform.chats.entry(RoomId(self.people[nth].0)).or_default().open = false;
                None
            }
            Next::Zone => {
                platform.chats.entry(self.room).or_default().open = true;
                here(host, "/settings zone America/Chicago".into())
            }
            Next::Plan => here(host, self.wish(chance)),
            Next::Accept => self.press(host, self.room, at, platform, |label, _| label == "Accept", chance),
            Next::Anything => match chance.below(20) {
                0..9 => self.press_any(by, at, platform, chance),
                9..12 if (self.dinner - at).num_hours().abs() < 8 => {
                    let mut degrees = |low, span| low + chance.below(span);
                    let (breast, thigh, pit) = (degrees(60, 115), degrees(60, 120), degrees(280, 80));
                    here(by, format!("/log breast {breast}, thigh {thigh}, pit {pit}"))
                }
                9..12 => here(by, "/board".into()),
                12 | 13 => here(by, format!("/take {}", chance.pick(&STEPS))),
                14 => here(by, format!("/drop {}", chance.pick(&STEPS))),
                15 => here(by, format!("/move {} min", ["+30", "-20", "+10", "+75"][chance.below(4)])),
                16 if chance.below(6) == 0 => here(by, "/stop".into()),
                16 if chance.below(4) == 0 => here(by, self.wish(chance)),
                _ => here(by, (*chance.pick(&WORDS)).into()),
            },
        }
    }

    fn wish(&self, chance: &mut Chance) -> String {
        let local = self.dinner.with_timezone(&chrono_tz::America::Chicago);
        let state = chance.pick(&["fresh", "frozen", "fresh"]);
        let heat = chance.pick(&["oven", "smoker", "oven"]);
        let pounds = 8 + chance.below(14);
        let people = 4 + chance.below(12);
        let dinner = local.format("%Y-%m-%d %H:%M");
        format!("/plan {pounds} lb {state} turkey, dinner {dinner}, {people} people, {heat} at 325")
    }

    /// Presses a button of one of the newest messages here or in one's own chat; most often the one that says Done.
    fn press_any(
        &self,
        by: (i64, String),
        at: DateTime<Utc>,
        platform: &mut Platform,
        chance: &mut Chance,
    ) -> Option<Deed> {
        let own = RoomId(by.0);
        let room = if self.kind == RoomKind::Group && chance.below(3) == 0 { own } else { self.room };
        let favourite = *chance.pick(&["Done", "Done", "Take", "Later", "Undo", "Skip", ""]);
        let first = self.press(by.clone(), room, at, platform, |label, _| label == favourite, chance);
        first.or_else(|| self.press(by, room, at, platform, |_, data| !data.starts_with(LINK), chance))
    }

    fn press(
        &self,
        by: (i64, String),
        room: RoomId,
        at: DateTime<Utc>,
        platform: &Platform,
        wanted: impl Fn(&str, &str) -> bool,
        chance: &mut Chance,
    ) -> Option<Deed> {
        let chat = platform.chats.get(&room)?;
        let with = chat.messages.iter().rev().take(12).flat_map(|(number, shown)| {
            shown.buttons.iter().filter(|key| wanted(&key.label, &key.data)).map(|key| (*number, key.data.clone()))
        });
        let found: Vec<(i64, String)> = with.take(6).collect();
        if found.is_empty() {
            return None;
        }
        let (message, data) = chance.pick(&found).clone();
        let kind = if room == self.room { self.kind } else { RoomKind::Private };
        Some(Deed { room, kind, by, at, act: Act::Press { data, message } })
    }
}
