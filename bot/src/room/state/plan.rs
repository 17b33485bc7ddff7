//! What is kept of a plan that stands: its wish, its jobs, what was read and told, and how it was before each change.

use super::CookNote;
use crate::reading::Wish;
use crate::room::heard::{PersonId, RoomId};
use carvetime_core::plan::{Moment, Step};
use serde::{Deserialize, Serialize};

impl LivePlan {
    /// What the names of its events in calendars begin with while its chat has that number. The hour it was made stands in it: once all
    /// is forgotten, plans are counted from one again.
    pub fn calendar_name(&self, chat: RoomId) -> String {
        let (chat, serial) = (chat.0, self.serial);
        self.made.map_or_else(|| format!("{chat}-{serial}"), |made| format!("{chat}-{serial}-{}", made.timestamp()))
    }

    pub(super) fn forget_person(&mut self, person: PersonId, heir: Option<PersonId>) {
        if self.host == person {
            self.host = heir.unwrap_or(PersonId(0));
        }
        let nobody = |by: &mut Option<PersonId>| {
            by.take_if(|by| *by == person);
        };
        let wishes = self.history.iter_mut().map(|change| &mut change.wish).chain([&mut self.wish]);
        let dishes = wishes.flat_map(|wish| &mut wish.dishes).chain(self.adding.iter_mut().flatten());
        dishes.flatten().for_each(|dish| nobody(&mut dish.by));
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

/// How the bird was inside as it met the heat, as far as anyone has said.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize)]
pub struct Inside {
    /// There was ice in it.
    #[serde(default)]
    pub icy: bool,
    /// What was read there, °C.
    #[serde(default)]
    pub start_c: Option<f64>,
}

/// An accepted plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LivePlan {
    /// Its number in this room; stands on its buttons.
    pub serial: u32,
    /// It was accepted beside another: its messages, bells and questions are marked with its serial.
    #[serde(default)]
    pub beside: bool,
    /// When it was made; nothing of one from before that was kept.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub made: Option<Moment>,
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
    /// Someone has said that the bird is kept at 140 °F or hotter after the heat: the two hours count from when that was last read.
    #[serde(default)]
    pub held_hot: bool,
    /// Someone has said that it is hotter than 90 °F where the food stands: an hour out, not two.
    #[serde(default, skip_serializing_if = "super::is_false")]
    pub hot_day: bool,
    /// It was, and then read less.
    #[serde(default, skip_serializing_if = "super::is_false")]
    pub was_held: bool,
    /// Its heat goes on without power, as was said: a cut is none of it.
    #[serde(default, skip_serializing_if = "super::is_false")]
    pub burns_on: bool,
    /// Carried hot, it was put into the heat again before its two hours were over: when. Readings decide from then on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub heated_again: Option<Moment>,
    /// It was, after they were over: no reading from then on makes it food.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub heated_late: Option<Moment>,
    /// It was said to be off the heat, with a last reading too low, and whether it really is was asked and not answered: when.
    #[serde(default)]
    pub off_asked: Option<Moment>,
    /// Safety limits already called.
    #[serde(default)]
    pub limits_called: Vec<String>,
    /// What the heat was set to before it was changed with the bird on, in order of time.
    #[serde(default)]
    pub was_set: Vec<WasSet>,
    /// How it was inside as it met the heat.
    #[serde(default)]
    pub inside: Inside,
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
    /// It was said that the raw bird may have to be thrown away: when. Another may come for the same dinner.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub in_doubt: Option<Moment>,
    /// What somebody at its table can't have, by name ([`crate::reading::Allergen`]).
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub allergies: Vec<String>,
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
    /// Something else was said since: a bare yes may be to that.
    #[serde(default, skip_serializing_if = "super::is_false")]
    pub passed: bool,
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
    /// Whoever has it, else who answers for the dinner: whether what was taken for done is done.
    Whether,
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
    /// How the bird was said to have been inside.
    #[serde(default)]
    pub inside: Inside,
}
