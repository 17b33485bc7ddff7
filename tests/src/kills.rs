//! Whole cooks on Telegram with `kill -9` on the way, beside a model that knows what must stand in the chat in the end.
//!
//! The model is the rehearsal: a script of `tests/rehearsals` is played by `carvetime rehearse`, and by people in the loopback
//! server's world who say and press the same at the same times while a real child process is killed. What stands in the chat in the
//! end must be the same, messages and buttons: an update that was lost or applied twice, a bell that did not ring or rang twice
//! would show there. A message may stand there twice if it was the last one to its chat when the program was killed, once a kill.
//! A group's private calls name the group, which a rehearsal does not know: there the model is the same cook on Telegram unkilled.
//! Fault model: the process dies before a call is applied, after it was applied but before its answer arrived, at any moment of a
//! turn or of the next start, and while nobody says anything and something falls due. How often a board was edited on the way may
//! differ. Start at [`Story::told`] and [`Story::play`].

use crate::fuzz::Chance;
use crate::kitchen::Kitchen;
use crate::loopback::{ChatId, Fault, Rule, TOKEN};
use crate::program;
use carvetime::rehearse::{Act, Event, Script};
use chrono::{DateTime, Utc};
use serde_json::Value;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::time::Duration;

/// Scripts with one person in their private chat.
pub const STORIES: [&str; 8] = [
    "fresh-for-eight",
    "moves-twice",
    "cook-late",
    "en-espanol",
    "cook-early",
    "frozen-too-late",
    "cooked-ahead",
    "em-portugues",
];

/// A script with four people in a group, two of them called privately.
pub const SHARED: &str = "four-share";

/// What stands in the chats: whose (the group's is the room's), text and labels of each message, in the order they came.
pub type Standing = Vec<(String, String, Vec<String>)>;

/// The group in [`Standing`].
const GROUP: &str = "group";

/// A script and what must come of it.
pub struct Story {
    script: Script,
    /// The one who speaks.
    cook: String,
    /// What stands in the room at the end; of a group, known once it was played unkilled.
    standing: Standing,
    /// When something was said.
    moments: Vec<DateTime<Utc>>,
    /// What each press was on, in a group; known once it was played unkilled. A message that a kill repeated keeps its buttons, and is
    /// the newest that has them: nobody means that one.
    pressed: Vec<String>,
}

/// When the program is killed.
#[derive(Debug, Clone)]
pub enum Kills {
    /// At rest, just before something falls due; every so many moments.
    AtRest(usize),
    /// At this many moments out of a hundred, in a way drawn from the seed.
    Anywhere {
        /// Of a hundred.
        percent: usize,
        /// Decides all.
        chance: Chance,
        /// The platform delivers instead of being asked.
        by_webhook: bool,
    },
}

/// What a play came to.
#[derive(Debug, Default, Clone, PartialEq, Eq)]
pub struct Tally {
    /// Cooks played.
    pub cooks: usize,
    /// Kills by their moment.
    pub kills: BTreeMap<&'static str, usize>,
    /// Updates people made.
    pub updates: usize,
    /// Messages that stand in the chats.
    pub messages: usize,
    /// Messages that stand there twice, each in the window of a kill.
    pub repeated: usize,
    /// Messages that must stand there and don't.
    pub lost: Vec<String>,
    /// Messages that nobody expected: of an update applied twice, of a bell that rang twice.
    pub unexpected: Vec<String>,
    /// Messages in chats of people who have nothing to do with it.
    pub wrong_room: usize,
    /// Turns that were given up: none was at fault.
    pub set_aside: usize,
    /// Where the token stands in what was written: data, logs.
    pub token: usize,
}

impl Tally {
    /// Both together.
    pub fn add(&mut self, other: Tally) {
        self.cooks += other.cooks;
        self.updates += other.updates;
        self.messages += other.messages;
        self.repeated += other.repeated;
        self.lost.extend(other.lost);
        self.unexpected.extend(other.unexpected);
        self.wrong_room += other.wrong_room;
        self.set_aside += other.set_aside;
        self.token += other.token;
        for (moment, count) in other.kills {
            *self.kills.entry(moment).or_default() += count;
        }
    }

    /// All kills.
    pub fn kills(&self) -> usize {
        self.kills.values().sum()
    }

    /// Whether the promise was kept.
    pub fn is_good(&self) -> bool {
        self.lost.is_empty()
            && self.unexpected.is_empty()
            && self.wrong_room == 0
            && self.set_aside == 0
            && self.token == 0
            && self.repeated <= self.kills()
    }
}

impl Story {
    /// The script of that name, played by the program.
    pub fn told(name: &str) -> Self {
        let path = script_path(name);
        let played = program::run(&["rehearse", "--json", path.to_str().expect("a path in UTF-8")]);
        assert!(played.status.success(), "{}", String::from_utf8_lossy(&played.stderr));
        let mut standing: BTreeMap<i64, (String, String, Vec<String>)> = BTreeMap::new();
        let mut moments = Vec::new();
        for line in String::from_utf8(played.stdout).expect("UTF-8").lines() {
            let line: Value = serde_json::from_str(line).expect("JSON Lines");
            moments.push(line["at"].as_str().and_then(|at| at.parse().ok()).expect("a time"));
            if line["kind"] == "answer" {
                continue;
            }
            let labels = line["buttons"].as_array().into_iter().flatten().filter_map(Value::as_str).map(str::to_owned);
            let word = |key: &str| line[key].as_str().unwrap_or_default().to_owned();
            standing.insert(line["id"].as_i64().expect("an id"), (word("to"), word("text"), labels.collect()));
        }
        let text = std::fs::read_to_string(&path).expect("the script is there");
        let script = Script::parse(&text, chrono_tz::UTC, "en-US").expect("it was just played");
        let cook = script.events.iter().find_map(|event| speaker(&event.act)).expect("somebody speaks").to_owned();
        moments.extend(script.events.iter().map(|event| event.at));
        moments.sort();
        moments.dedup();
        let mut story = Self { script, cook, standing: standing.into_values().collect(), moments, pressed: Vec::new() };
        if story.script.group {
            let played = story.played(Kills::AtRest(usize::MAX), &mut Tally::default());
            (story.standing, story.pressed) = (played.standing, played.pressed);
        }
        story
    }

    /// Plays it on Telegram.
    pub fn play(&self, kills: Kills) -> Tally {
        let mut tally = Tally::default();
        let played = self.played(kills, &mut tally);
        tally.compare(&self.standing, &played.standing, &played.last_words);
        tally
    }

    fn played(&self, kills: Kills, tally: &mut Tally) -> Played {
        let kitchen = match kills {
            Kills::AtRest(_) => Kitchen::open(),
            Kills::Anywhere { by_webhook: true, .. } => Kitchen::by_webhook(),
            Kills::Anywhere { .. } => Kitchen::loud(),
        };
        let telegram = &kitchen.telegram;
        let mut chats: BTreeMap<String, ChatId> = BTreeMap::new();
        for name in self.script.events.iter().filter_map(|event| speaker(&event.act)) {
            chats.entry(name.to_owned()).or_insert_with(|| telegram.stranger(name, &self.script.locale));
        }
        let strangers = [telegram.person("Somebody else"), telegram.person("Nobody")];
        kitchen.wait_until(self.script.events[0].at);
        let zone = format!("/settings zone {}", self.script.zone);
        if self.script.group {
            let names: Vec<&str> = std::iter::once(self.cook.as_str())
                .chain(chats.keys().map(String::as_str).filter(|name| *name != self.cook))
                .collect();
            let group = telegram.group("Dinner", &names);
            chats.insert(GROUP.to_owned(), group);
            telegram.say(&self.cook, group, &zone);
        } else {
            telegram.tell(&self.cook, &zone);
            telegram.expect(chats[&self.cook], "");
        }
        telegram.settle();
        let before: BTreeMap<ChatId, usize> = chats.values().map(|chat| (*chat, telegram.said(*chat).len())).collect();
        let mut play = Play {
            story: self,
            kitchen: &kitchen,
            chats,
            kills,
            tally,
            last_words: Vec::new(),
            pressed: Vec::new(),
            moment: 0,
        };
        let mut events = self.script.events.iter().peekable();
        for moment in &self.moments {
            play.falls_due(*moment);
            while let Some(Event { act, .. }) = events.next_if(|event| event.at <= *moment) {
                play.is_done(act);
            }
        }
        let Play { chats, last_words, pressed, .. } = play;
        tally.cooks += 1;
        let mut seen = Standing::new();
        for (whose, chat) in chats {
            let said = telegram.said(chat).into_iter().skip(before[&chat]);
            seen.extend(said.map(|message| (whose.clone(), message.text.clone(), message.labels())));
        }
        tally.messages += seen.len();
        tally.wrong_room += strangers.iter().map(|stranger| telegram.said(*stranger).len()).sum::<usize>();
        tally.set_aside += kitchen.program().log().matches("a turn failed and was set aside").count();
        tally.token += token_sightings(&kitchen.data()) + token_sightings(&kitchen.data().with_extension("log"));
        Played { standing: seen, last_words, pressed }
    }
}

/// What came of a play.
struct Played {
    /// What stands in the chats.
    standing: Standing,
    /// At each kill.
    last_words: Vec<LastWords>,
    /// What each press was on.
    pressed: Vec<String>,
}

/// The last message to each chat when the program was killed, by whose chat it is. One of them at most was on its way.
type LastWords = BTreeMap<String, String>;

impl Tally {
    /// What must stand and what stands. `last_words`: at each kill.
    fn compare(&mut self, expected: &Standing, seen: &Standing, last_words: &[LastWords]) {
        let mut wanted: Vec<&(String, String, Vec<String>)> = expected.iter().collect();
        // A rehearsal does not show that the buttons of a board go when a newer one comes.
        let same = |one: &(String, String, Vec<String>), other: &(String, String, Vec<String>)| {
            one.0 == other.0 && one.1 == other.1 && (one.2 == other.2 || other.2.is_empty())
        };
        let mut of_kills = OfKills { last_words, explains: vec![None; last_words.len()] };
        for found in seen {
            if let Some(at) = wanted.iter().position(|wanted| same(wanted, found)) {
                wanted.remove(at);
            } else if of_kills.explain(found, &mut vec![false; last_words.len()]) {
                self.repeated += 1;
            } else {
                self.unexpected.push(format!("to {}: {} {:?}", found.0, found.1, found.2));
            }
        }
        self.lost.extend(wanted.into_iter().map(|(whose, text, labels)| format!("to {whose}: {text} {labels:?}")));
    }
}

/// Which kill explains which repeated message: each explains one at most. What was last said in a quiet chat stays so over many
/// kills, so a message takes another kill where one is left, and leaves the first to a message that only that one explains.
struct OfKills<'a> {
    last_words: &'a [LastWords],
    explains: Vec<Option<&'a (String, String, Vec<String>)>>,
}

impl<'a> OfKills<'a> {
    /// Whether a kill can be found for `found` beside all that were explained before. `tried`: kills asked for it already.
    fn explain(&mut self, found: &'a (String, String, Vec<String>), tried: &mut [bool]) -> bool {
        for (at, words) in self.last_words.iter().enumerate() {
            if tried[at] || words.get(&found.0) != Some(&found.1) {
                continue;
            }
            tried[at] = true;
            if self.explains[at].is_none_or(|other| self.explain(other, tried)) {
                self.explains[at] = Some(found);
                return true;
            }
        }
        false
    }
}

struct Play<'a> {
    story: &'a Story,
    kitchen: &'a Kitchen,
    chats: BTreeMap<String, ChatId>,
    kills: Kills,
    tally: &'a mut Tally,
    last_words: Vec<LastWords>,
    /// What each press was on.
    pressed: Vec<String>,
    /// Counts the moments.
    moment: usize,
}

impl Play<'_> {
    /// The clock goes to `moment`, and what is due by then happens.
    fn falls_due(&mut self, moment: DateTime<Utc>) {
        let at_rest = match &mut self.kills {
            Kills::AtRest(every) => {
                self.moment += 1;
                self.moment.is_multiple_of(*every)
            }
            Kills::Anywhere { percent, chance, .. } => chance.below(100) < *percent && chance.below(4) == 0,
        };
        if at_rest {
            self.kitchen.program().kill();
            self.kitchen.clock.set(moment); // it falls due while nobody is there
            self.killed("at rest");
            return self.start_again();
        }
        self.with_a_kill(|kitchen| kitchen.clock.set(moment));
    }

    fn is_done(&mut self, act: &Act) {
        let own = |name: &str, private: bool| {
            let group = self.chats.get(GROUP).filter(|_| !private);
            *group.unwrap_or_else(|| &self.chats[name])
        };
        match act {
            Act::Say { name, private, text } => {
                let chat = own(name, *private);
                self.with_a_kill(|kitchen| _ = kitchen.telegram.say(name, chat, text));
            }
            Act::Press { name, private, label } => {
                let chat = own(name, *private);
                let telegram = &self.kitchen.telegram;
                let meant = self.story.pressed.get(self.pressed.len()).cloned();
                let meant = meant.or_else(|| telegram.to_press(chat, label)).unwrap_or_default();
                self.pressed.push(meant.clone());
                self.with_a_kill(|kitchen| _ = kitchen.telegram.press_on(name, chat, &meant, label));
            }
            Act::Wait => return,
        }
        self.tally.updates += 1;
    }

    /// Does it, and kills the program on the way or not.
    fn with_a_kill(&mut self, deed: impl Fn(&Kitchen)) {
        let kitchen = self.kitchen;
        let telegram = &kitchen.telegram;
        let drawn = match &mut self.kills {
            Kills::Anywhere { percent, chance, .. } => (chance.below(100) < *percent).then_some(chance),
            Kills::AtRest(_) => None,
        };
        let Some(chance) = drawn else {
            deed(kitchen);
            // The program looks at the clock every 10 ms; the rest is for a busy machine.
            std::thread::sleep(Duration::from_millis(100));
            return telegram.settle();
        };
        // The answer to a poll comes with the next update only: a kill after it would strike at another deed.
        let answered = ["sendMessage", "editMessageText", "answerCallbackQuery"];
        let called = ["sendMessage", "editMessageText", "answerCallbackQuery", "getUpdates"];
        let program = kitchen.program().clone();
        let kill = std::sync::Arc::new(move || program.kill());
        let (moment, wait) = match chance.below(3) {
            0 => {
                telegram.fault(Rule::next(called[chance.below(4)], Fault::Before(kill)));
                ("before a call", None)
            }
            1 => {
                telegram.fault(Rule::next(answered[chance.below(3)], Fault::After(kill)));
                ("after a call", None)
            }
            _ => ("at any moment", Some(chance.below(60))),
        };
        let in_start = (chance.below(4) == 0).then(|| chance.below(200));
        deed(kitchen);
        match wait {
            Some(wait) => {
                std::thread::sleep(Duration::from_millis(wait as u64));
                kitchen.program().kill();
            }
            None => {
                // A call that comes late, on a busy machine, may have met it by now: then the kill is on its way.
                if !self.is_killed() && telegram.heal() > 0 {
                    return telegram.settle();
                }
                assert!((0..20).any(|_| self.is_killed()), "a kill that was met comes");
            }
        }
        telegram.heal();
        self.killed(moment);
        if let Some(wait) = in_start {
            kitchen.reopen();
            std::thread::sleep(Duration::from_millis(wait as u64));
            kitchen.program().kill();
            self.killed("while it starts");
        }
        self.start_again();
    }

    /// Waits for the kill that is armed; a program that does not make that call lives.
    fn is_killed(&self) -> bool {
        let program = self.kitchen.program().clone();
        for _ in 0..60 {
            if !program.runs() {
                return true;
            }
            std::thread::sleep(Duration::from_millis(10));
        }
        false
    }

    fn killed(&mut self, moment: &'static str) {
        *self.tally.kills.entry(moment).or_default() += 1;
        // A busy machine may take a message of the dead after its death.
        self.kitchen.telegram.hear_out();
        let last = |chat: &ChatId| Some(self.kitchen.telegram.said(*chat).pop()?.text);
        self.last_words
            .push(self.chats.iter().filter_map(|(whose, chat)| Some((whose.clone(), last(chat)?))).collect());
    }

    fn start_again(&self) {
        let telegram = &self.kitchen.telegram;
        let calls = telegram.call_count();
        self.kitchen.reopen();
        self.kitchen.wait_for_poll(calls);
        telegram.settle();
    }
}

fn script_path(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("rehearsals").join(format!("{name}.cook"))
}

fn speaker(act: &Act) -> Option<&str> {
    match act {
        Act::Say { name, .. } | Act::Press { name, .. } => Some(name),
        Act::Wait => None,
    }
}

/// How often the token's secret half stands in what is written in `path`, be it a file or a folder.
pub fn token_sightings(path: &Path) -> usize {
    if path.is_dir() {
        let inside = std::fs::read_dir(path).into_iter().flatten().flatten();
        return inside.map(|entry| token_sightings(&entry.path())).sum();
    }
    let secret = TOKEN.split_once(':').expect("a token has a colon").1.as_bytes();
    let bytes = std::fs::read(path).unwrap_or_default();
    bytes.windows(secret.len()).filter(|window| *window == secret).count()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(whose: &str, text: &str) -> (String, String, Vec<String>) {
        (whose.to_owned(), text.to_owned(), Vec::new())
    }

    fn at_a_kill(words: &[(&str, &str)]) -> LastWords {
        words.iter().map(|(whose, text)| ((*whose).to_owned(), (*text).to_owned())).collect()
    }

    /// Ana's chat was quiet over both kills, the group's was not: her message takes the second, whichever is met first.
    #[test]
    fn a_repeated_message_takes_the_kill_that_another_can_spare() {
        let once = vec![said("ana", "Salt it."), said("group", "Buy it.")];
        let kills = [
            at_a_kill(&[("ana", "Salt it."), ("group", "Buy it.")]),
            at_a_kill(&[("ana", "Salt it."), ("group", "Board")]),
        ];
        for repeated in [[&once[0], &once[1]], [&once[1], &once[0]]] {
            let mut seen = once.clone();
            seen.extend(repeated.into_iter().cloned());
            let mut tally = Tally::default();
            tally.compare(&once, &seen, &kills);
            assert_eq!((tally.repeated, tally.unexpected, tally.lost), (2, vec![], vec![]));
        }
    }

    #[test]
    fn one_kill_explains_one_message() {
        let once = vec![said("ana", "Salt it."), said("group", "Buy it.")];
        let kills = [at_a_kill(&[("ana", "Salt it."), ("group", "Buy it.")])];
        let seen = [once.clone(), once.clone()].concat();
        let mut tally = Tally::default();
        tally.compare(&once, &seen, &kills);
        assert_eq!((tally.repeated, tally.unexpected.len()), (1, 1));
    }

    #[test]
    fn what_was_not_said_last_is_no_repeat_of_a_kill() {
        let once = vec![said("ana", "Salt it."), said("ana", "Thaw it.")];
        let seen = [once.clone(), vec![once[0].clone()]].concat();
        let mut tally = Tally::default();
        tally.compare(&once, &seen, &[at_a_kill(&[("ana", "Thaw it.")])]);
        assert_eq!((tally.repeated, tally.unexpected.len()), (0, 1));
    }
}
