//! What a room and a person are between two turns.
//!
//! These types are what the book stores, so they hold plain numbers and stable names, never types of `core`: a change
//! there must not change what is on disk. Every field added later needs a default.

use super::heard::{PersonId, RoomId, RoomKind, Speaker};
use crate::reading::Wish;
use crate::words::{Reader, UnitSystem};
use carvetime_core::plan::{Moment, Step};
use carvetime_core::quantity::SpoonSystem;
use chrono::NaiveTime;
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

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
    /// What calendars have of plans that were ended before their time: the next export takes it out of them.
    #[serde(default)]
    pub ended: Vec<KeptCalendar>,
    /// The last question somebody put to the others here that has nothing to do with a plan: the answer to it is of no job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub aside: Option<Aside>,
}

/// A question among people of something else.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Aside {
    /// Who asked.
    pub by: PersonId,
    /// When.
    pub at: Moment,
}

/// Something was missing in a question, and its asker was asked for it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct AskedBack {
    /// Who asked.
    pub by: PersonId,
    /// When they were asked back.
    pub at: Moment,
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
            ended: Vec::new(),
            aside: None,
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
        for plan in self.plan.iter_mut().chain(&mut self.others) {
            // Earlier versions exported plans under the chat's number of the time.
            let uid = format!("{}-{}", from.0, plan.serial);
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
        self.ended.extend(other.ended);
        self.gone = other.gone;
    }

    /// Takes everything out that says who `person` was: what they did stays done, by nobody. A plan they answered for goes
    /// to whoever came next.
    pub fn forget_person(&mut self, person: PersonId) {
        self.members.retain(|member| *member != person);
        self.left.retain(|left| *left != person);
        self.excused.retain(|excused| *excused != person);
        self.invites.retain(|invite| invite.used != Some(person));
        self.drafts.remove(&person);
        self.questions.remove(&person);
        self.asked_back = self.asked_back.filter(|asked| asked.by != person);
        self.stop_asked = self.stop_asked.filter(|asked| asked.by != person);
        self.unsure.retain(|unsure| unsure.by != person);
        let heir = self.members.first().copied();
        for plan in self.plan.iter_mut().chain(&mut self.others) {
            plan.forget_person(person, heir);
        }
    }
}

impl LivePlan {
    fn forget_person(&mut self, person: PersonId, heir: Option<PersonId>) {
        if self.host == person {
            self.host = heir.unwrap_or(PersonId(0));
        }
        let nobody = |by: &mut Option<PersonId>| {
            by.take_if(|by| *by == person);
        };
        let changes = self.history.iter_mut();
        let (mut jobs, mut facts) = (vec![&mut self.jobs], vec![&mut self.facts]);
        for change in changes {
            nobody(&mut change.by);
            jobs.push(&mut change.jobs);
            facts.push(&mut change.facts);
        }
        for job in jobs.into_iter().flatten() {
            nobody(&mut job.owner);
            job.called_in.retain(|chat| *chat != person.private_room());
            job.reached.retain(|reached| *reached != person);
            job.asked.take_if(|asked| asked.by == person || asked.of == person);
            if let JobState::Done { by, .. } | JobState::Skipped { by, .. } = &mut job.state {
                nobody(by);
            }
        }
        facts.into_iter().flatten().for_each(|fact| nobody(&mut fact.by));
        self.readings.iter_mut().for_each(|reading| nobody(&mut reading.by));
        self.doubted.retain(|doubted| doubted.given.by != Some(person));
    }
}

impl Person {
    /// This person as a reader of what a room has to say: their own language and units, the kitchen's clock.
    pub fn reader(&self, room: &Room, now: Moment) -> Reader {
        let mut reader = self.taste.or(&room.taste).reader(now);
        if let Some(zone) = room.taste.zone() {
            reader.zone = zone;
        }
        reader
    }
}

/// Language, units, spoons, place: a room's or a person's. `None` leaves it to the language or to the room.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Taste {
    /// IETF tag chosen, or told by the person's app.
    pub language: Option<String>,
    /// `true`: pounds and °F; `false`: kilograms and °C.
    pub us_units: Option<bool>,
    /// [`SpoonSystem`] by name.
    pub spoons: Option<String>,
    /// IANA zone name.
    pub zone: Option<String>,
}

impl Taste {
    /// The zone, if one is set and known.
    pub fn zone(&self) -> Option<Tz> {
        self.zone.as_deref()?.parse().ok()
    }

    /// This taste, its gaps filled from another.
    #[must_use]
    pub fn or(&self, other: &Taste) -> Taste {
        Taste {
            language: self.language.clone().or_else(|| other.language.clone()),
            us_units: self.us_units.or(other.us_units),
            spoons: self.spoons.clone().or_else(|| other.spoons.clone()),
            zone: self.zone.clone().or_else(|| other.zone.clone()),
        }
    }

    /// The reader with this taste; what is open follows the language, and the zone is UTC.
    pub fn reader(&self, now: Moment) -> Reader {
        let language = self.language.as_deref().unwrap_or("en");
        let mut reader = Reader::new(language, self.zone().unwrap_or(Tz::UTC), now);
        if let Some(us) = self.us_units {
            reader.units = if us { UnitSystem::Us } else { UnitSystem::Metric };
        }
        if let Some(spoons) = self.spoons() {
            reader.spoons = spoons;
        }
        reader
    }

    /// The spoons, if set.
    pub fn spoons(&self) -> Option<SpoonSystem> {
        SpoonSystem::from_name(self.spoons.as_deref()?)
    }
}

/// A person, across all rooms.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Person {
    /// Id.
    pub id: PersonId,
    /// Name to show. Untrusted text.
    pub name: String,
    /// `@name` without the sign.
    #[serde(default)]
    pub username: Option<String>,
    /// For private messages.
    #[serde(default)]
    pub taste: Taste,
    /// Salt from their own packet.
    #[serde(default)]
    pub own_salt: Option<OwnSalt>,
    /// [`carvetime_core::roast::Cooker`] by name: what a plan that names none is for.
    #[serde(default)]
    pub cooker: Option<String>,
    /// What their fridge's thermometer shows, °C.
    #[serde(default)]
    pub fridge_c: Option<f64>,
    /// Shelves of their fridge that are free for a dinner.
    #[serde(default)]
    pub fridge_shelves: Option<u8>,
    /// No calls between these local times, except safety and what they took at that hour.
    #[serde(default)]
    pub quiet: Option<(NaiveTime, NaiveTime)>,
    /// They have opened the private chat, so it can be written to.
    #[serde(default)]
    pub reachable: bool,
    /// The group that called them privately last: what they answer there is heard in it.
    #[serde(default)]
    pub called_from: Option<RoomId>,
    /// What the cooks they were host of taught about their cookers, by [`carvetime_core::roast::Cooker`] name.
    #[serde(default)]
    pub profiles: BTreeMap<String, StoredProfile>,
    /// How their dinners were, oldest first.
    #[serde(default)]
    pub notes: Vec<CookNote>,
}

impl Person {
    /// Someone heard for the first time.
    pub fn new(speaker: &Speaker) -> Self {
        Self {
            id: speaker.id,
            name: speaker.name.clone(),
            username: speaker.username.clone(),
            taste: Taste { language: speaker.language.clone(), ..Taste::default() },
            own_salt: None,
            cooker: None,
            fridge_c: None,
            fridge_shelves: None,
            quiet: None,
            reachable: false,
            called_from: None,
            profiles: BTreeMap::new(),
            notes: Vec::new(),
        }
    }
}

/// What earlier cooks on a cooker taught.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct StoredProfile {
    /// °C by which the air at the bird is hotter than usual for what is read or set.
    pub pit_offset_c: f64,
    /// How fast birds warm here: 1 as usual.
    pub speed: f64,
    /// Cooks it was learned from.
    pub cooks: u16,
}

/// A person's own salt.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct OwnSalt {
    /// Grams of salt per millilitre, spooned.
    pub grams_per_ml: f64,
}

/// A dinner half told.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Draft {
    /// What is known.
    pub wish: Wish,
    /// What was asked last: the answer may be a bare word or number.
    pub asked: Option<Question>,
    /// The nearest wish that can be met, shown in place of one that can't: what `Accept` takes.
    pub suggestion: Option<Wish>,
    /// When the proposal was made: what is accepted soon after is what was shown.
    pub proposed_at: Option<Moment>,
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
    /// Fresh or frozen.
    Condition,
    /// Which cooker.
    Cooker,
    /// How long the drive is.
    Drive,
    /// Anything that is to be different.
    Change,
}

/// A setting the heat had until then.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct WasSet {
    /// Until when.
    pub until: Moment,
    /// °C.
    pub setting_c: f64,
    /// In another cooker than the one it is in since.
    #[serde(default)]
    pub elsewhere: bool,
}

/// An accepted plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LivePlan {
    /// Its number in this room; stands on its buttons.
    pub serial: u32,
    /// It was accepted beside another: its messages, bells and questions are marked with its serial.
    #[serde(default)]
    pub beside: bool,
    /// Who answers for it.
    pub host: PersonId,
    /// The complete wish it was made from.
    pub wish: Wish,
    /// The jobs, in order of time.
    pub jobs: Vec<LiveJob>,
    /// What has happened.
    #[serde(default)]
    pub facts: Vec<StoredFact>,
    /// Thermometer readings.
    #[serde(default)]
    pub readings: Vec<StoredReading>,
    /// How often its jobs have changed. Never falls, not even when a change is taken back.
    #[serde(default)]
    pub edition: u32,
    /// How many changes there ever were: the number of the newest. Taking one back does not lower it.
    #[serde(default)]
    pub changes: u32,
    /// Changes that can be taken back, oldest first.
    #[serde(default)]
    pub history: Vec<Change>,
    /// Earliest (one in ten) time off the heat.
    pub ready_from: Option<Moment>,
    /// Latest (nine in ten) time off the heat.
    pub ready_to: Option<Moment>,
    /// Someone has said that the bird is kept at 140 °F or hotter after the heat: the two hours count from carving.
    #[serde(default)]
    pub held_hot: bool,
    /// It was said to be off the heat, with a last reading too low, and whether it really is was asked and not answered: when.
    #[serde(default)]
    pub off_asked: Option<Moment>,
    /// Safety limits already called.
    #[serde(default)]
    pub limits_called: Vec<String>,
    /// What the heat was set to before it was changed with the bird on, in order of time.
    #[serde(default)]
    pub was_set: Vec<WasSet>,
    /// The heat failed then, and nobody has said that it is back.
    #[serde(default)]
    pub down_since: Option<Moment>,
    /// What was first and what was last said of the end of cooking, from readings.
    #[serde(default)]
    pub told: Option<(Told, Told)>,
    /// Readings that can't be right, until those who sent them have been asked.
    #[serde(default)]
    pub doubted: Vec<Doubted>,
    /// Alarms raised and not over, by name.
    #[serde(default)]
    pub alarms: Vec<String>,
    /// What the host said of it afterwards; there from when they were asked.
    #[serde(default)]
    pub feedback: Option<CookNote>,
    /// The dishes with one more that does not fit, until a way out is picked.
    #[serde(default)]
    pub adding: Option<Vec<Option<crate::reading::WishDish>>>,
    /// The cooker's profile has learned from this cook.
    #[serde(default)]
    pub learned: bool,
    /// Another hour somebody asked for last.
    #[serde(default)]
    pub wanted: Option<Wanted>,
    /// What the day over the heat holds was told the evening before, or as the plan began.
    #[serde(default)]
    pub eve_told: bool,
    /// What stands against the plan, as it was told last; nothing while it works.
    #[serde(default)]
    pub clash: Option<ToldClash>,
    /// What calendars that took this plan over have of it, from the first export on.
    #[serde(default)]
    pub calendar: Option<KeptCalendar>,
}

/// Another hour of the dinner that somebody asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Wanted {
    /// The hour.
    pub to: Moment,
    /// When it was asked for.
    pub at: Moment,
    /// One who may decide has said yes or no.
    pub answered: bool,
}

/// A clash as it was told.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ToldClash {
    /// Minutes that are missing.
    pub short_min: i64,
    /// The reasons, by the names of their words, in order.
    pub because: Vec<String>,
}

/// What was exported to calendars: they know it again by its names, wherever the chat has moved.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct KeptCalendar {
    /// What the names of its events begin with.
    pub uid: String,
    /// The number of the last export that said something new.
    pub sequence: u32,
    /// The events as they were exported last.
    pub events: Vec<KeptEvent>,
}

/// An event as it was exported.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct KeptEvent {
    /// [`Step`] by name.
    pub step: String,
    /// Which of several.
    pub nth: u8,
    /// What a dish was called.
    #[serde(default)]
    pub dish: Option<String>,
    /// From.
    pub start: Moment,
    /// To.
    pub end: Moment,
    /// The job has vanished or was left out.
    #[serde(default)]
    pub cancelled: bool,
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
}

/// How a dinner was, in the host's words by name; nothing where it was not said.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CookNote {
    /// Of which dinner.
    pub dinner: Moment,
    /// `little`, `right`, `much`.
    pub salt: Option<String>,
    /// `dry`, `right`, `underdone`.
    pub meat: Option<String>,
    /// `early`, `right`, `late`.
    pub time: Option<String>,
    /// How late it was, in minutes, where that is known.
    #[serde(default)]
    pub late_min: Option<u16>,
}

/// A forecast as it was told.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Told {
    /// When it was told.
    pub at: Moment,
    /// One in ten is sooner.
    pub p10: Moment,
    /// Half are sooner.
    pub p50: Moment,
    /// Nine in ten are sooner.
    pub p90: Moment,
    /// How it stood to dinner, by name.
    pub standing: String,
}

/// A reading that can't be right, and what was probably meant.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Doubted {
    /// As it was given.
    pub given: StoredReading,
    /// As it was probably meant.
    pub meant: Option<StoredReading>,
}

/// A job of a live plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LiveJob {
    /// [`Step`] by name.
    pub step: String,
    /// Which of several.
    pub nth: u8,
    /// When.
    pub at: Moment,
    /// No sooner than.
    pub earliest: Moment,
    /// No later than.
    pub latest: Moment,
    /// How long, in minutes.
    pub lasts_min: i64,
    /// Who took it.
    #[serde(default)]
    pub owner: Option<PersonId>,
    /// Where it stands.
    #[serde(default)]
    pub state: JobState,
    /// When its people are called next.
    #[serde(default)]
    pub call_at: Option<Moment>,
    /// How often they were called.
    #[serde(default)]
    pub calls: u8,
    /// Someone has said that it is not done: never taken for done.
    #[serde(default)]
    pub denied: bool,
    /// The rungs it was called on, in order.
    #[serde(default)]
    pub rungs: Vec<Rung>,
    /// Whom those calls were for.
    #[serde(default)]
    pub reached: Vec<PersonId>,
    /// Chats in which a call stands.
    #[serde(default)]
    pub called_in: Vec<RoomId>,
    /// Someone has been asked to take it and has not answered.
    #[serde(default)]
    pub asked: Option<Asked>,
    /// How often it was offered while nobody had it.
    #[serde(default)]
    pub offered: u8,
    /// The hour its owner knows of.
    #[serde(default)]
    pub told: Option<Moment>,
    /// The hour its owner has agreed to.
    #[serde(default)]
    pub taken_for: Option<Moment>,
}

/// Whom a call of a job goes to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Rung {
    /// Whoever has the job.
    Owner,
    /// The room.
    Room,
    /// The one who has it, or the room, once more.
    Again,
    /// The other people in the room.
    Helpers,
    /// Who answers for the dinner.
    Host,
}

/// A question to one person whether they take a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Asked {
    /// Who asks.
    pub by: PersonId,
    /// Who is asked.
    pub of: PersonId,
    /// When.
    #[serde(default)]
    pub at: Option<Moment>,
}

impl LiveJob {
    /// Takes over what people have heard of it since, in a state brought back.
    pub fn heard_since(&mut self, now: &LiveJob) {
        if self.rungs.len() < now.rungs.len() {
            self.rungs.clone_from(&now.rungs);
        }
        self.reached.extend(now.reached.iter().filter(|who| !self.reached.contains(who)).copied().collect::<Vec<_>>());
        if self.owner == now.owner {
            self.told = now.told;
        }
    }

    /// The step; stored names are only ever written from [`Step::name`].
    pub fn step(&self) -> Option<Step> {
        Step::from_name(&self.step)
    }
}

/// Where a job stands.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub enum JobState {
    /// Ahead.
    #[default]
    Waiting,
    /// Done.
    Done {
        /// By whom (nobody: it followed from another job).
        by: Option<PersonId>,
        /// When.
        at: Moment,
    },
    /// Left out on purpose.
    Skipped {
        /// By whom.
        by: Option<PersonId>,
        /// When.
        at: Moment,
    },
}

/// What happened, as stored.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct StoredFact {
    /// [`Step`] by name.
    pub step: String,
    /// Which of several.
    pub nth: u8,
    /// When.
    pub at: Moment,
    /// Done, or left out.
    pub done: bool,
    /// By whom.
    pub by: Option<PersonId>,
}

/// A thermometer reading, as stored.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct StoredReading {
    /// When.
    pub at: Moment,
    /// Air, °C.
    pub pit_c: Option<f64>,
    /// Breast, °C.
    pub breast_c: Option<f64>,
    /// Thigh, °C.
    pub thigh_c: Option<f64>,
    /// Stuffing, °C.
    #[serde(default)]
    pub stuffing_c: Option<f64>,
    /// Innermost part of a wing, °C.
    #[serde(default)]
    pub wing_c: Option<f64>,
    /// By whom.
    pub by: Option<PersonId>,
    /// When it was told.
    #[serde(default)]
    pub told_at: Option<Moment>,
    /// The cook was asked and stands by it.
    #[serde(default)]
    pub sure: bool,
    /// The reading of that place in the list no longer counts.
    #[serde(default)]
    pub replaces: Option<usize>,
}

/// A change that can be taken back: what stood before it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// Its number in the plan, from 1; stands on its button. 0: from before changes had one.
    #[serde(default)]
    pub number: u32,
    /// What it was, as in `locales` (`room-change-NAME`).
    pub name: String,
    /// The step it concerned.
    pub step: Option<String>,
    /// By whom.
    pub by: Option<PersonId>,
    /// When.
    pub at: Moment,
    /// The wish before.
    pub wish: Wish,
    /// The jobs before.
    pub jobs: Vec<LiveJob>,
    /// The facts before.
    pub facts: Vec<StoredFact>,
    /// How many readings there were.
    pub readings: usize,
    /// What the heat had been set to before; `None` in what was stored before this was kept.
    #[serde(default)]
    pub was_set: Option<Vec<WasSet>>,
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
        };
        let plan = LivePlan {
            serial: 1,
            beside: false,
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
            off_asked: None,
            limits_called: Vec::new(),
            was_set: Vec::new(),
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
        };
        let mut room = Room::new(RoomId(-1), RoomKind::Group);
        room.members = vec![who, heir];
        room.excused = vec![who];
        room.drafts.insert(who, Draft::default());
        room.questions.insert(who, "how much salt?".into());
        let (by, text) = (who, "breast 120".into());
        room.unsure.push(Unsure { number: 1, by, at, text, log: None, addressed: true, edited: false });
        room.others = vec![LivePlan { serial: 2, beside: true, ..plan.clone() }];
        room.plan = Some(plan);
        room.forget_person(who);
        assert!(!serde_json::to_string(&room).unwrap().contains("777"));
        assert_eq!(room.plan.unwrap().host, heir);
        assert_eq!(room.others[0].host, heir);
    }
}
