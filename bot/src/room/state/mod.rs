//! What a room and a person are between two turns.
//!
//! These types are what the book stores, so they hold plain numbers and stable names, never types of `core`: a change
//! there must not change what is on disk. Every field added later needs a default.

use super::heard::{PersonId, RoomId, RoomKind};
use crate::reading::Wish;
use carvetime_core::plan::Moment;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

mod person;
mod plan;

pub use person::*;
pub use plan::*;

/// Version of the stored form of [`Room`] and [`Person`].
pub const STATE_VERSION: u32 = 1;

/// A chat and what goes on in it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Room {
    /// Id.
    pub id: RoomId,
    /// Private or group.
    pub kind: RoomKind,
    /// How it likes to be spoken to.
    #[serde(default)]
    pub taste: Taste,
    /// Everyone heard here and not gone, in the order they came.
    #[serde(default)]
    pub members: Vec<PersonId>,
    /// Who has left and not spoken here since: a press on an old message, which anyone can make in a public group, does not bring
    /// them back.
    #[serde(default)]
    pub left: Vec<PersonId>,
    /// Who doesn't come after all: not called until they speak of a job again.
    #[serde(default)]
    pub excused: Vec<PersonId>,
    /// Half-told wishes, a person each.
    #[serde(default)]
    pub drafts: BTreeMap<PersonId, Draft>,
    /// The plan that stands.
    #[serde(default)]
    pub plan: Option<LivePlan>,
    /// Further plans beside it, by serial.
    #[serde(default)]
    pub others: Vec<LivePlan>,
    /// What was said of one of several birds, nobody knows which, until the one who said it has told.
    #[serde(default)]
    pub unsure: Vec<Unsure>,
    /// How often it was asked which bird is meant: the next [`Unsure`]'s number.
    #[serde(default)]
    pub unsure_made: u32,
    /// The last question of each person, for what is asked back and for "why?".
    #[serde(default)]
    pub questions: BTreeMap<PersonId, String>,
    /// Who was asked back last, and has not answered.
    #[serde(default)]
    pub asked_back: Option<AskedBack>,
    /// Who was asked whether the plan is to end, and has not answered.
    #[serde(default)]
    pub stop_asked: Option<AskedBack>,
    /// How many plans this room has had: the next plan's serial.
    #[serde(default)]
    pub plans_made: u32,
    /// The bot can't speak here at present (removed, blocked, muted).
    #[serde(default)]
    pub gone: bool,
    /// It was said here that the board can't be pinned.
    #[serde(default)]
    pub pin_told: bool,
    /// What the group is called, where the platform tells. Untrusted text.
    #[serde(default)]
    pub title: Option<String>,
    /// Ways into the private chat that have been handed out.
    #[serde(default)]
    pub invites: Vec<Invite>,
    /// How the last dinner here was, for whoever cooks the next.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub noted: Option<Noted>,
    /// What calendars have of plans that were ended before their time: the next export takes it out of them.
    #[serde(default)]
    pub ended: Vec<KeptCalendar>,
    /// The last question somebody put to the others here that has nothing to do with a plan: the answer to it is of no job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub aside: Option<Aside>,
    /// The dish whose time was asked for last.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub untimed: Option<Untimed>,
    /// What the last message here offers, for a yes in words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub offered: Option<Offered>,
    /// The page of the settings that was opened last, while it may be answered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asked_setting: Option<AskedSetting>,
    /// Who changed the plan last, and has said nothing since that might be of something else.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub changed: Option<AskedBack>,
    /// The plan that was ended last, for as long as that may have been a mistake.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub over: Option<Box<Over>>,
    /// When it was last said here what becomes of a cook who is ill or has cut themselves.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unwell: Option<Moment>,
    /// When something was said to burn indoors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fumes: Option<Moment>,
}

/// A plan that was ended.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Over {
    /// As it stood.
    pub plan: LivePlan,
    /// Who ended it.
    pub by: Option<PersonId>,
    /// When.
    pub at: Moment,
    /// Who was told.
    #[serde(default)]
    pub told: Vec<PersonId>,
}

/// The choices of a message.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Offered {
    /// When it was said.
    pub at: Moment,
    /// Whose words it came of.
    #[serde(default)]
    pub by: Option<PersonId>,
    /// What the message is called.
    #[serde(default)]
    pub key: Option<String>,
    /// The data of its buttons.
    pub choices: Vec<String>,
}

/// A question among people of something else.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Aside {
    /// Who asked.
    pub by: PersonId,
    /// When.
    pub at: Moment,
}

/// A dish nobody has told the time of, until whoever named it does.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Untimed {
    /// Who named it.
    pub by: PersonId,
    /// When.
    pub at: Moment,
    /// What was said of it, the word that adds first. Untrusted text.
    pub text: String,
}

/// A page of the settings that stands open, and may be answered in words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct AskedSetting {
    /// Who opened it.
    pub by: PersonId,
    /// When.
    pub at: Moment,
    /// Which.
    pub page: String,
}

/// Something was missing in a question, and its asker was asked for it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct AskedBack {
    /// Who asked.
    pub by: PersonId,
    /// When they were asked back.
    pub at: Moment,
    /// Something else was said since: a bare yes may be to that.
    #[serde(default, skip_serializing_if = "is_false")]
    pub passed: bool,
    /// The plan it is about, where there are several.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub serial: Option<u32>,
}

/// What is stored only where it holds.
pub(super) fn is_false(it: &bool) -> bool {
    !it
}

/// A link that takes one person from a group to the private chat, once.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Invite {
    /// The hash of what nobody can guess: that stands in the link alone.
    #[serde(rename = "secret", deserialize_with = "super::invites::hashed")]
    pub hash: String,
    /// Good until then.
    pub until: Moment,
    /// Who has come by it.
    pub used: Option<PersonId>,
}

impl Room {
    /// A room nobody has spoken in yet.
    pub fn new(id: RoomId, kind: RoomKind) -> Self {
        Self {
            id,
            kind,
            taste: Taste::default(),
            members: Vec::new(),
            left: Vec::new(),
            excused: Vec::new(),
            drafts: BTreeMap::new(),
            plan: None,
            others: Vec::new(),
            unsure: Vec::new(),
            unsure_made: 0,
            questions: BTreeMap::new(),
            asked_back: None,
            stop_asked: None,
            plans_made: 0,
            gone: false,
            pin_told: false,
            title: None,
            invites: Vec::new(),
            noted: None,
            ended: Vec::new(),
            aside: None,
            untimed: None,
            offered: None,
            asked_setting: None,
            changed: None,
            over: None,
            unwell: None,
            fumes: None,
        }
    }
}

/// As many people as a room remembers: a dinner has fewer, and a large public group must not weigh on every turn.
const MOST_MEMBERS: usize = 200;

/// As many ended plans as calendars are told of.
const MOST_ENDED: usize = 8;

impl Room {
    /// Notes that `person` belongs here; beyond the most that are remembered they are heard and not noted.
    pub fn admit(&mut self, person: PersonId) -> bool {
        let new = !self.members.contains(&person) && self.members.len() < MOST_MEMBERS;
        if new {
            self.members.push(person);
        }
        new
    }

    /// Notes that `person` has left.
    pub fn dismiss(&mut self, person: PersonId) {
        self.excused.retain(|excused| *excused != person);
        self.members.retain(|member| *member != person);
        self.left.retain(|left| *left != person);
        self.left.push(person);
        let surplus = self.left.len().saturating_sub(MOST_MEMBERS);
        self.left.drain(..surplus);
    }

    /// Half-told wishes and questions of no more people than are remembered.
    pub fn keep_few(&mut self) {
        while self.drafts.len() > MOST_MEMBERS {
            self.drafts.pop_first();
        }
        while self.questions.len() > MOST_MEMBERS {
            self.questions.pop_first();
        }
    }

    /// Ends the plan in hand. What calendars have of it and is still to come is cancelled there by the next export; what took
    /// place stays.
    pub fn end_plan(&mut self, now: Moment) -> Option<LivePlan> {
        let plan = self.plan.take()?;
        self.ended.retain(|calendar| calendar.events.iter().any(|event| event.end > now));
        let mut calendar = plan.calendar.clone().unwrap_or_default();
        calendar.events.retain(|event| event.end > now);
        calendar.events.iter_mut().for_each(|event| event.cancelled = true);
        calendar.sequence += 1;
        if !calendar.events.is_empty() {
            self.ended.push(calendar);
        }
        let surplus = self.ended.len().saturating_sub(MOST_ENDED);
        self.ended.drain(..surplus);
        Some(plan)
    }

    /// The chat has this id from now on; what calls stand in it stands under the new one.
    pub fn rename(&mut self, to: RoomId) {
        let from = std::mem::replace(&mut self.id, to);
        let over = self.over.as_mut().map(|over| &mut over.plan);
        for plan in self.plan.iter_mut().chain(&mut self.others).chain(over) {
            // Earlier versions exported plans under the chat's number of the time.
            let uid = plan.calendar_name(from);
            plan.calendar.get_or_insert_with(|| KeptCalendar { uid, ..KeptCalendar::default() });
            let before = plan.history.iter_mut().flat_map(|change| &mut change.jobs);
            for chat in plan.jobs.iter_mut().chain(before).flat_map(|job| &mut job.called_in) {
                if *chat == from {
                    *chat = to;
                }
            }
        }
    }

    /// Takes over what was noted under the new id before it was known to be the same chat. What stands here goes first.
    pub fn absorb(&mut self, other: Option<Room>) {
        let Some(other) = other else { return };
        let new = other.members.into_iter().filter(|member| !self.members.contains(member));
        self.members.extend(new.collect::<Vec<_>>());
        for (who, draft) in other.drafts {
            self.drafts.entry(who).or_insert(draft);
        }
        for (who, question) in other.questions {
            self.questions.entry(who).or_insert(question);
        }
        if self.plan.is_none() {
            (self.plan, self.others) = (other.plan, other.others);
        }
        self.plans_made = self.plans_made.max(other.plans_made);
        self.noted = self.noted.take().or(other.noted);
        self.ended.extend(other.ended);
        self.gone = other.gone;
    }

    /// Takes everything out that says who `person` was: what they did stays done, by nobody. A plan they answered for goes
    /// to whoever came next.
    pub fn forget_person(&mut self, person: PersonId) {
        self.noted.take_if(|noted| noted.by == person);
        self.changed.take_if(|changed| changed.by == person);
        // Whoever had a part in it may be named all over it.
        self.over = None;
        self.members.retain(|member| *member != person);
        self.left.retain(|left| *left != person);
        self.excused.retain(|excused| *excused != person);
        self.invites.retain(|invite| invite.used != Some(person));
        self.drafts.remove(&person);
        self.questions.remove(&person);
        self.asked_back = self.asked_back.filter(|asked| asked.by != person);
        self.stop_asked = self.stop_asked.filter(|asked| asked.by != person);
        self.unsure.retain(|unsure| unsure.by != person);
        self.offered.take_if(|offered| offered.by == Some(person));
        let heir = self.members.first().copied();
        for plan in self.plan.iter_mut().chain(&mut self.others) {
            plan.forget_person(person, heir);
        }
    }
}

/// A dinner half told.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Draft {
    /// What is known.
    pub wish: Wish,
    /// What was asked last: the answer may be a bare word or number.
    pub asked: Option<Question>,
    /// When that was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asked_at: Option<Moment>,
    /// The nearest wish that can be met, shown in place of one that can't: what `Accept` takes.
    pub suggestion: Option<Wish>,
    /// When the proposal was made: what is accepted soon after is what was shown.
    pub proposed_at: Option<Moment>,
    /// How many were to eat before that was told otherwise: "back to 3".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub people_before: Option<u32>,
    /// It is of another bird for the dinner of the plan of that serial, whose bird was thrown away.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub replaces: Option<u32>,
}

/// What a person is being asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Question {
    /// Which zone.
    Zone,
    /// Which day and hour.
    Dinner,
    /// Which hour on the day told.
    DinnerHour,
    /// Which day at the hour told.
    DinnerDay,
    /// How heavy, or how many guests.
    Size,
    /// How heavy the bird is that was bought in place of another.
    Weight,
    /// Fresh or frozen.
    Condition,
    /// Which cooker.
    Cooker,
    /// How long the drive is.
    Drive,
    /// Anything that is to be different.
    Change,
}

/// Words or a log said of one of several birds, nobody knows which.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Unsure {
    /// Its number in this room; stands on its buttons.
    pub number: u32,
    /// Who said it.
    pub by: PersonId,
    /// When: it counts from then.
    pub at: Moment,
    /// The words, or what was in the log.
    pub text: String,
    /// Name of the log, where it was one.
    #[serde(default)]
    pub log: Option<String>,
    /// The words were meant for the bot.
    #[serde(default)]
    pub addressed: bool,
    /// They replaced earlier ones.
    #[serde(default)]
    pub edited: bool,
    /// Something else was said since: a bare yes may be to that.
    #[serde(default, skip_serializing_if = "is_false")]
    pub passed: bool,
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use chrono::{DateTime, Utc};

    #[test]
    fn a_forgotten_person_stands_nowhere_in_the_room() {
        let (who, heir) = (PersonId(777), PersonId(8));
        let at = DateTime::<Utc>::UNIX_EPOCH;
        // From the stored form: fields that came later are open.
        let job = |state| -> LiveJob {
            let job = serde_json::json!({
                "step": "thaw", "nth": 0, "at": at, "earliest": at, "latest": at, "lasts_min": 5, "owner": who, "state": state,
                "called_in": [who.private_room()], "reached": [who],
            });
            serde_json::from_value(job).unwrap()
        };
        let jobs = vec![
            job(JobState::Waiting),
            job(JobState::Done { by: Some(who), at }),
            job(JobState::Skipped { by: Some(who), at }),
        ];
        let facts = vec![StoredFact { step: "thaw".into(), nth: 0, at, done: true, by: Some(who) }];
        let reading: StoredReading =
            serde_json::from_value(serde_json::json!({"at": at, "breast_c": 50.0, "by": who})).unwrap();
        let change = Change {
            number: 1,
            name: "done".into(),
            step: None,
            by: Some(who),
            at,
            wish: Wish::default(),
            jobs: jobs.clone(),
            facts: facts.clone(),
            readings: 0,
            was_set: None,
            inside: Inside::default(),
        };
        let plan = LivePlan {
            serial: 1,
            beside: false,
            made: None,
            host: who,
            wish: Wish::default(),
            jobs,
            facts,
            readings: vec![reading],
            edition: 0,
            changes: 1,
            history: vec![change],
            ready_from: None,
            ready_to: None,
            held_hot: false,
            hot_day: false,
            was_held: false,
            burns_on: false,
            heated_again: None,
            heated_late: None,
            off_asked: None,
            limits_called: Vec::new(),
            was_set: Vec::new(),
            inside: Inside::default(),
            down_since: None,
            told: None,
            doubted: Vec::new(),
            alarms: Vec::new(),
            adding: None,
            feedback: None,
            learned: false,
            wanted: None,
            eve_told: false,
            clash: None,
            calendar: None,
            in_doubt: None,
            allergies: Vec::new(),
        };
        let mut room = Room::new(RoomId(-1), RoomKind::Group);
        room.members = vec![who, heir];
        room.excused = vec![who];
        room.drafts.insert(who, Draft::default());
        room.questions.insert(who, "how much salt?".into());
        let (by, text) = (who, "breast 120".into());
        room.unsure.push(Unsure { number: 1, by, at, text, log: None, addressed: true, edited: false, passed: false });
        room.others = vec![LivePlan { serial: 2, beside: true, ..plan.clone() }];
        room.plan = Some(plan);
        room.forget_person(who);
        assert!(!serde_json::to_string(&room).unwrap().contains("777"));
        assert_eq!(room.plan.unwrap().host, heir);
        assert_eq!(room.others[0].host, heir);
    }
}
