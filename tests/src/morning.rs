//! The morning of a holiday: many kitchens with something due in the same minutes, under the platform's limits.
//!
//! The real engine and the real room over a book on this disk, by a virtual clock. Each room is a private chat with a plan of its own;
//! in most a job falls due within the window; in one of a hundred a call that food safety hangs on, spread over five times
//! as long. Meanwhile people ask things. The
//! platform takes [`A_SECOND`] messages a second, as `telegram::Pace` lets out; a message takes no time on the way. What is measured is
//! by how much each call comes after its time, and how long the engine holds up everyone else while it rings.

use crate::words::Words;
use carvetime::book::SledBook;
use carvetime::engine::Engine;
use carvetime::room::state::{Person, Room};
use carvetime::room::{Bell, BellKind, Heard, PersonId, RoomId, RoomKind, Scene, Speaker, Turn, Urgency, What, decide};
use carvetime::words::Voice;
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};
use std::time::{Duration, Instant};

/// Messages the platform takes a second.
pub const A_SECOND: i64 = 25;

/// Questions asked a second.
const ASKED: i64 = 2;

/// One room of so many has a call due that food safety hangs on.
const SAFETY: usize = 100;

/// Stands for the id of a room and its person in a template.
const ID: i64 = 987_654_321_012;

/// Lateness in seconds by class; negative: ahead of its time.
#[derive(Debug, Default)]
pub struct Lateness {
    /// Calls that food safety hangs on.
    pub safety: Vec<f64>,
    /// Answers, from the question.
    pub answers: Vec<f64>,
    /// First calls of the other jobs.
    pub due: Vec<f64>,
    /// Calls sent ahead of their time that do not say the hour.
    pub silent: usize,
    /// Rooms whose call never came.
    pub missing: usize,
    /// Longest time one round of ringing kept everyone else waiting.
    pub longest_ring: Duration,
}

/// `rooms` kitchens whose calls fall due within `window`.
pub fn run(rooms: usize, window: TimeDelta) -> Lateness {
    let opening = Utc.with_ymd_and_hms(2027, 11, 25, 20, 0, 0).single().expect("a time");
    let mut late = Lateness::default();
    let folder = tempfile::tempdir().expect("a folder");
    let mut due = fill(folder.path(), rooms, opening, window);
    let book = SledBook::open(folder.path()).expect("it was just filled");
    let engine = Engine::new(Arc::new(book), Arc::new(Words(Voice::new())), decide).expect("it was just filled");

    let end = opening + window + TimeDelta::minutes(90);
    // Nothing goes ahead before it has to: nobody rings earlier than this.
    let mut now = opening - TimeDelta::seconds(rooms as i64 / 15 + 60).min(TimeDelta::minutes(45));
    let mut asked: BTreeMap<RoomId, DateTime<Utc>> = BTreeMap::new();
    let mut number = 0;
    while now < end && !(due.is_empty() && engine.waiting() == 0) {
        for nth in 0..ASKED {
            number += 1;
            let room = RoomId(5_000_000_000 + number * ASKED + nth);
            asked.insert(room, now);
            engine.accept([said(room, "2 tbsp table salt in flake kosher")]).expect("the book takes it");
        }
        engine.work(now).expect("the book takes it");
        let began = Instant::now();
        engine.ring(now).expect("the book takes it");
        late.longest_ring = late.longest_ring.max(began.elapsed());
        for nth in 0..A_SECOND {
            let sent = now + TimeDelta::milliseconds(1000 * nth / A_SECOND);
            let Some(out) = engine.claim(|_, _| true).expect("the book can be read") else { break };
            number += 1;
            engine.sent(out.id, Some(number)).expect("the book takes it");
            let room = out.message.chat().expect("no press was made");
            let seconds = |from: DateTime<Utc>| (sent - from).num_milliseconds() as f64 / 1000.0;
            match (out.message.urgency, due.get(&room)) {
                (Urgency::Answer, _) => late.answers.extend(asked.get(&room).map(|at| seconds(*at))),
                (Urgency::Safety, Some(at)) if out.message.step.as_deref() == Some("pull") => {
                    late.safety.push(seconds(*at));
                    due.remove(&room);
                }
                (Urgency::Due, Some(at)) if out.message.step.as_deref() == Some("buy") => {
                    let ahead = *at - sent > TimeDelta::seconds(120);
                    late.silent += usize::from(ahead && !out.message.html.starts_with("For "));
                    late.due.push(seconds(*at));
                    due.remove(&room);
                }
                _ => {}
            }
        }
        now += TimeDelta::seconds(1);
    }
    late.missing = due.len();
    late
}

/// Of sorted values, the one below which `share` of them lie.
pub fn quantile(values: &mut [f64], share: f64) -> f64 {
    values.sort_by(f64::total_cmp);
    let at = ((values.len().saturating_sub(1)) as f64 * share).round() as usize;
    values.get(at).copied().unwrap_or(f64::NAN)
}

/// A room as it stands before its call, ready to be copied.
struct Template {
    room: String,
    person: String,
    bells: Vec<Bell>,
    due: DateTime<Utc>,
}

/// The templates, for those who can't be handed them: what decides a turn is a plain function.
static TEMPLATES: OnceLock<Mutex<Vec<Template>>> = OnceLock::new();

fn templates() -> &'static Mutex<Vec<Template>> {
    TEMPLATES.get_or_init(Mutex::default)
}

/// Fills a book with rooms; when each one's call is due.
fn fill(data: &Path, rooms: usize, opening: DateTime<Utc>, window: TimeDelta) -> BTreeMap<RoomId, DateTime<Utc>> {
    let minutes = window.num_minutes().max(1);
    let mut made: Vec<Template> = (0..minutes).map(|minute| shopping(opening + TimeDelta::minutes(minute))).collect();
    let before = opening - TimeDelta::minutes(46);
    // Times of pulling are rounded: a few minutes apart would be one.
    made.extend((0..minutes).map(|nth| pulling(opening + TimeDelta::minutes(5 * nth), before)));
    let half = made.len() / 2;
    let due: Vec<DateTime<Utc>> = made.iter().map(|template| template.due).collect();
    *templates().lock().unwrap_or_else(PoisonError::into_inner) = made;
    let book = SledBook::open(data).expect("an empty folder");
    let engine = Engine::new(Arc::new(book), Arc::new(Words(Voice::new())), copied).expect("an empty book");
    let mut all = BTreeMap::new();
    for batch in (1..=rooms).collect::<Vec<_>>().chunks(500) {
        let heard = batch.iter().map(|nth| {
            let at = if nth % SAFETY == 0 { half + nth / SAFETY % half } else { nth % half };
            let room = RoomId(*nth as i64);
            all.insert(room, due[at]);
            let mut heard = said(room, "hello");
            // Says which template it is, to `copied` below.
            heard.by.iter_mut().for_each(|by| by.name = at.to_string());
            heard
        });
        engine.accept(heard.collect::<Vec<_>>()).expect("the book takes it");
        engine.work(before).expect("the book takes it");
        while let Some(out) = engine.claim(|_, _| true).expect("the book can be read") {
            engine.sent(out.id, Some(1)).expect("the book takes it");
        }
    }
    all
}

/// The room of the template named in what was said takes the place of an empty one, bells and all.
fn copied(_: &Scene, heard: &Heard, _: DateTime<Utc>) -> Turn {
    let at: usize = heard.by.as_ref().and_then(|by| by.name.parse().ok()).expect("a number");
    let templates = templates().lock().unwrap_or_else(PoisonError::into_inner);
    let id = heard.room.0.to_string();
    let copy = |json: &str| json.replace(&ID.to_string(), &id);
    let room: Room = serde_json::from_str(&copy(&templates[at].room)).expect("it was just written");
    let person: Person = serde_json::from_str(&copy(&templates[at].person)).expect("it was just written");
    let bells = Some(templates[at].bells.clone());
    Turn { room: Some(room), people: vec![person], bells, ..Turn::default() }
}

/// A plan whose bird is to be bought at `due` or soon after.
fn shopping(due: DateTime<Utc>) -> Template {
    let dinner = due + TimeDelta::minutes(115) + TimeDelta::days(2);
    let mut cook = Cook::new(due - TimeDelta::days(1));
    cook.plan(dinner);
    cook.template(|kind| matches!(kind, BellKind::Job { call: 0, .. }))
}

/// A bird that is to come off the heat at `due` or soon after, as it stands `before` that.
fn pulling(due: DateTime<Utc>, before: DateTime<Utc>) -> Template {
    let mut cook = Cook::new(due - TimeDelta::days(3));
    cook.plan(due + TimeDelta::minutes(95));
    cook.live_until(before);
    cook.template(|kind| matches!(kind, BellKind::Job { step, call: 0, .. } if step == "pull"))
}

/// A conversation without an engine.
struct Cook {
    scene: Scene,
    now: DateTime<Utc>,
    bells: Vec<Bell>,
    accept: Option<String>,
}

impl Cook {
    fn new(now: DateTime<Utc>) -> Self {
        let scene = Scene { room: Room::new(RoomId(ID), RoomKind::Private), people: BTreeMap::new(), chance: 1 };
        let mut cook = Self { scene, now, bells: Vec::new(), accept: None };
        cook.say("/settings zone America/Chicago");
        cook
    }

    fn hear(&mut self, heard: &Heard) {
        let turn = decide(&self.scene, heard, self.now);
        for person in turn.people {
            self.scene.people.insert(person.id, person);
        }
        self.scene.room = turn.room.unwrap_or_else(|| self.scene.room.clone());
        self.bells = turn.bells.unwrap_or_else(|| std::mem::take(&mut self.bells));
        let buttons = turn.says.iter().flat_map(|say| say.buttons.iter().flatten());
        let mut accept =
            buttons.filter(|button| button.label.id == "room-button-accept").map(|button| button.data.clone());
        self.accept = accept.next_back().or(self.accept.take());
    }

    fn say(&mut self, text: &str) {
        self.hear(&said(RoomId(ID), text));
    }

    fn plan(&mut self, dinner: DateTime<Utc>) {
        let dinner = dinner.with_timezone(&chrono_tz::America::Chicago).format("%Y-%m-%d %H:%M");
        self.say(&format!("/plan 13 lb fresh turkey, dinner {dinner}, 8 people, oven at 325"));
        let data = self.accept.clone().expect("a proposal");
        let pressed = What::Pressed { press: "1".into(), data, on: None };
        self.hear(&Heard { what: pressed, ..said(RoomId(ID), "") });
    }

    fn live_until(&mut self, until: DateTime<Utc>) {
        while let Some(at) = self.bells.iter().map(|bell| bell.at).min().filter(|at| *at <= until) {
            self.now = at;
            let (due, rest): (Vec<Bell>, Vec<Bell>) = self.bells.drain(..).partition(|bell| bell.at <= at);
            self.bells = rest;
            let what = What::Rang { bells: due.into_iter().map(|bell| (bell.at, bell.kind)).collect() };
            self.hear(&Heard { by: None, what, ..said(RoomId(ID), "") });
        }
        self.now = until;
    }

    fn template(self, wanted: impl Fn(&BellKind) -> bool) -> Template {
        let due = self.bells.iter().filter(|bell| wanted(&bell.kind)).map(|bell| bell.at).min().expect("its call");
        let person = self.scene.people.get(&PersonId(ID)).expect("whoever planned");
        Template {
            room: serde_json::to_string(&self.scene.room).expect("plain data"),
            person: serde_json::to_string(person).expect("plain data"),
            bells: self.bells,
            due,
        }
    }
}

fn said(room: RoomId, text: &str) -> Heard {
    let by = Speaker {
        id: PersonId(room.0),
        name: "Rosa".into(),
        username: None,
        language: Some("en".into()),
        admin: false,
        inside: None,
    };
    let what = What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
    Heard { room, kind: RoomKind::Private, by: Some(by), for_group: false, what }
}
