//! The witness: watches every commit, keeps a model of its own, and says what is wrong.
//!
//! The model's rooms and people come from the turns alone, never from the store: the store must say the same. A commit that a crash
//! takes back is taken back here too.

use carvetime::book::{BellKey, Changes, Loss, OutboxKey, Shelf};
use carvetime::engine::Message;
use carvetime::room::state::{JobState, LiveJob, LivePlan, Person, Room};
use carvetime::room::turn::Forget;
use carvetime::room::{Bell, BellKind, Heard, How, PersonId, RoomId, Say, Scene, To, Turn, What, decide};
use carvetime_core::plan::Step;
use chrono::{DateTime, Utc};
use serde::de::DeserializeOwned;
use std::cell::{Cell, RefCell};
use std::collections::{BTreeMap, BTreeSet, VecDeque};

/// Bytes of a stored value before its JSON.
const HEAD: usize = 5;

/// Ends of the program in the middle of its turn after which an arrival is set aside; see the engine.
const LAST_START: u8 = 5;

/// A row as it was before a commit.
pub type Before = (Shelf, Vec<u8>, Option<Vec<u8>>);

/// All rows.
pub type Shelves = BTreeMap<Shelf, BTreeMap<Vec<u8>, Vec<u8>>>;

thread_local! {
    static DECISIONS: RefCell<VecDeque<Decision>> = const { RefCell::new(VecDeque::new()) };
    static TURNS: Cell<u64> = const { Cell::new(0) };
}

/// One call of `decide`.
#[derive(Clone)]
pub struct Decision {
    scene: Scene,
    heard: Heard,
    as_of: DateTime<Utc>,
    turn: Turn,
}

impl Decision {
    /// What a message is known by: in a private chat it carries the group it is of.
    fn name_of(&self, say: &Say) -> Option<String> {
        let here = self.turn.room.as_ref().unwrap_or(&self.scene.room).id;
        let afar = matches!(&say.to, To::Person(person) if person.private_room() != here);
        say.key.as_ref().map(|key| if afar { format!("r{}:{key}", here.0) } else { key.clone() })
    }
}

/// [`decide`], with the witness listening. Chance comes from the number of the turn, so that a seed repeats it.
pub fn heard_by_witness(scene: &Scene, heard: &Heard, as_of: DateTime<Utc>) -> Turn {
    let number = TURNS.get() + 1;
    TURNS.set(number);
    let scene = Scene { chance: u128::from(number) << 64 | u128::from(!number), ..scene.clone() };
    let turn = decide(&scene, heard, as_of);
    let decision = Decision { scene, heard: heard.clone(), as_of, turn: turn.clone() };
    DECISIONS.with_borrow_mut(|all| all.push_back(decision));
    turn
}

/// Turns are counted from the start again.
pub fn begin() {
    TURNS.set(0);
    DECISIONS.take();
}

/// The decisions made since the last commit, in order: the next one has to write all of them down.
pub fn decided() -> VecDeque<Decision> {
    DECISIONS.take()
}

/// Whether this part of a commit writes a decision down. Every turn counts on; one that does so without having decided was set
/// aside.
pub fn decides(part: &Changes, shelves: &Shelves) -> bool {
    let starts = |key: &[u8]| {
        let arrival = shelves.get(&Shelf::Inbox).and_then(|rows| rows.get(key));
        arrival.and_then(|arrival| read::<serde_json::Value>(arrival)["starts"].as_u64()).unwrap_or(0)
    };
    let heard = part.iter().find(|(shelf, _, value)| *shelf == Shelf::Inbox && value.is_none());
    let turn = part.iter().any(|(shelf, _, value)| shelf == Shelf::Meta && value.is_some());
    let taken_in = part.iter().any(|(shelf, _, value)| shelf == Shelf::Inbox && value.is_some());
    turn && !taken_in && heard.is_none_or(|(_, key, _)| starts(key) < u64::from(LAST_START))
}

/// A fact of a commit, and how to take it back.
#[derive(Debug)]
pub enum Undo {
    /// An update was taken in.
    Accepted(u64),
    /// An arrival was decided.
    Decided(u64),
    /// A message came into the outbox.
    Put(u64),
    /// A message left it.
    Gone(u64, Waiting),
    /// A turn was written down.
    Turned,
    /// A room, a person, a room's bells, the last words under a name: as they were.
    Was(Was),
}

/// What stood before.
#[derive(Debug)]
pub enum Was {
    /// A room.
    Room(RoomId, Box<Option<Room>>),
    /// A person.
    Person(PersonId, Box<Option<Person>>),
    /// A room's bells.
    Bells(RoomId, Vec<(i64, Bell)>),
    /// Text under a name.
    Words(RoomId, String, Option<(u64, String)>),
}

/// A message that waits.
#[derive(Debug, Clone)]
pub struct Waiting {
    chat: Option<RoomId>,
    name: Option<String>,
    how: How,
}

/// Why the next commit may take a message out of the outbox.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Leave {
    /// It was sent.
    Sent(u64),
    /// The platform will never take it.
    Refused(u64),
    /// Its chat is gone.
    Chat(RoomId),
}

/// How often a message reached its chat, and how often it may have.
#[derive(Debug, Clone, Copy, Default)]
pub struct Delivered {
    times: u32,
    windows: u32,
}

/// See the module.
#[derive(Default)]
pub struct Witness {
    accepted: BTreeMap<u64, u64>,
    decided: BTreeSet<u64>,
    waiting: BTreeMap<u64, Waiting>,
    rooms: BTreeMap<RoomId, Room>,
    people: BTreeMap<PersonId, Person>,
    bells: BTreeMap<RoomId, Vec<(i64, Bell)>>,
    words: BTreeMap<(RoomId, String), (u64, String)>,
    history: Vec<Decision>,
    /// What the driver is doing to a message.
    pub leave: Option<Leave>,
    delivered: BTreeMap<u64, Delivered>,
    /// Updates whose taking was confirmed: never to be lost.
    acknowledged: BTreeSet<u64>,
    /// Arrivals set aside because the program ended in their turn again and again.
    pub set_aside: u64,
    /// Messages that came twice, each within a window.
    pub repeated: u64,
    /// What is wrong.
    pub wrong: Vec<String>,
}

impl Witness {
    /// A turn's part of a commit was done, or a commit that is no turn's. Returns its facts.
    pub fn committed(
        &mut self,
        changes: &Changes,
        rows: &[Before],
        decision: Option<Decision>,
        shelves: &Shelves,
    ) -> Vec<Undo> {
        let mut facts = Vec::new();
        self.inbox(changes, rows, decision.as_ref(), &mut facts);
        if let Some(decision) = &decision {
            self.turned(decision, &mut facts);
            self.all_said(decision, changes);
        }
        self.outbox(changes, rows, decision.as_ref(), &mut facts);
        if let Some(decision) = decision {
            self.history.push(decision);
            facts.push(Undo::Turned);
        }
        self.compare_bells(changes, shelves);
        facts
    }

    fn inbox(&mut self, changes: &Changes, rows: &[Before], decision: Option<&Decision>, facts: &mut Vec<Undo>) {
        for ((shelf, key, value), (.., before)) in changes.iter().zip(rows) {
            if shelf != Shelf::Inbox {
                continue;
            }
            let sequence = number(key);
            match (value, before) {
                (Some(value), None) => {
                    let arrival: serde_json::Value = read(value);
                    let Some(update) = arrival["update"].as_u64() else { continue };
                    if self.accepted.insert(update, sequence).is_some() {
                        self.wrong.push(format!("update {update} was taken in twice"));
                    }
                    facts.push(Undo::Accepted(update));
                }
                (Some(_), Some(_)) => {} // a start was counted
                (None, Some(before)) => {
                    if !self.decided.insert(sequence) {
                        self.wrong.push(format!("arrival {sequence} was decided twice"));
                    }
                    facts.push(Undo::Decided(sequence));
                    if decision.is_none() {
                        let starts = read::<serde_json::Value>(before)["starts"].as_u64().unwrap_or(0);
                        if starts >= u64::from(LAST_START) {
                            self.set_aside += 1;
                        } else {
                            self.wrong.push(format!("arrival {sequence} left the inbox undecided"));
                        }
                    }
                }
                (None, None) => self.wrong.push(format!("arrival {sequence} left an inbox it was not in")),
            }
        }
    }

    /// The model takes the turn over, after comparing the scene it was decided on.
    fn turned(&mut self, decision: &Decision, facts: &mut Vec<Undo>) {
        let Decision { scene, heard, as_of, turn } = decision;
        let here = scene.room.id;
        let known = self.rooms.get(&here).cloned().unwrap_or_else(|| Room::new(here, scene.room.kind));
        if known != scene.room {
            self.wrong.push(format!("room {} is not what its turns made of it", here.0));
        }
        for (id, person) in &scene.people {
            if self.people.get(id) != Some(person) {
                self.wrong.push(format!("person {} is not what the turns made of them", id.0));
            }
        }
        if let What::Rang { bells } = &heard.what {
            self.rang(decision, bells);
        }
        if turn.moved.is_some() || matches!(turn.forget, Some(Forget::Person(_))) {
            self.wrong.push("the witness does not follow groups that move, nor people who are forgotten".into());
        }
        for person in &turn.people {
            let before = self.people.insert(person.id, person.clone());
            facts.push(Undo::Was(Was::Person(person.id, before.into())));
        }
        if turn.forget.is_some() {
            facts.push(Undo::Was(Was::Room(here, self.rooms.remove(&here).into())));
            facts.push(Undo::Was(Was::Bells(here, self.bells.remove(&here).unwrap_or_default())));
            return;
        }
        if let Some(room) = &turn.room {
            facts.push(Undo::Was(Was::Room(here, self.rooms.insert(here, room.clone()).into())));
        }
        let rang = matches!(heard.what, What::Rang { .. });
        let floor = if rang { (*as_of + chrono::TimeDelta::seconds(1)).timestamp_millis() } else { i64::MIN };
        let after = match &turn.bells {
            Some(bells) => bells.iter().map(|bell| (bell.at.timestamp_millis().max(floor), bell.clone())).collect(),
            None => {
                let mut left = self.bells.get(&here).cloned().unwrap_or_default();
                left.retain(|(due, _)| !rang || *due > as_of.timestamp_millis());
                left
            }
        };
        facts.push(Undo::Was(Was::Bells(here, self.bells.insert(here, after).unwrap_or_default())));
    }

    /// All bells that were due, and no other, were rung; and each job that was due is said to each chat once, or folded, or over.
    fn rang(&mut self, decision: &Decision, bells: &[(DateTime<Utc>, BellKind)]) {
        let Decision { scene, as_of, turn, .. } = decision;
        let here = scene.room.id;
        let due = self.bells.get(&here).into_iter().flatten().filter(|(due, _)| *due <= as_of.timestamp_millis());
        let mut due: Vec<String> = due.map(|(_, bell)| format!("{:?}", (bell.at, &bell.kind))).collect();
        let mut rung: Vec<String> = bells.iter().map(|bell| format!("{bell:?}")).collect();
        due.sort();
        rung.sort();
        if due != rung {
            self.wrong.push(format!("room {}: due {due:?}, rung {rung:?}", here.0));
        }
        if !scene.room.others.is_empty() {
            return; // whose bell it is, is another's test
        }
        let Some(before) = &scene.room.plan else { return };
        for job in before.jobs.iter().filter(|job| job.state == JobState::Waiting) {
            let rung = bells.iter().any(
                |(_, kind)| matches!(kind, BellKind::Job { step, nth, .. } if *step == job.step && *nth == job.nth),
            );
            if !rung || job.call_at.is_none_or(|at| at > *as_of) {
                continue;
            }
            let name = format!("job-{}-{}", job.step, job.nth);
            let mut chats = BTreeSet::new();
            let said: Vec<&Say> =
                turn.says.iter().filter(|say| say.step.is_some() && say.key.as_deref() == Some(&name)).collect();
            let once = said.iter().filter(|say| say.how == How::New).all(|say| chats.insert(chat_of(&say.to)));
            let folded = turn.says.iter().any(|say| say.text.iter().any(|text| text.id == "room-missed"));
            let plan = turn.room.as_ref().and_then(|room| room.plan.as_ref());
            // In the minute in which its two hours are over, that is what is said of it.
            let limit = job.step() == Some(Step::Chill) && job.latest <= *as_of;
            let limit = limit && turn.says.iter().any(|say| say.text.iter().any(|text| text.id == "room-limit-chill"));
            let after =
                plan.and_then(|plan| plan.jobs.iter().find(|other| other.step == job.step && other.nth == job.nth));
            let passed = after.is_none_or(|after| after.state != JobState::Waiting);
            let waits = waits_for_heat(plan.unwrap_or(before), job);
            if !once || (said.is_empty() && !folded && !passed && !limit && !waits) {
                self.wrong.push(format!("room {}: {name} was due: said {} times, not folded", here.0, said.len()));
            }
        }
    }

    /// Everything the turn says is in the outbox with it.
    fn all_said(&mut self, decision: &Decision, changes: &Changes) {
        if decision.turn.forget.is_some() {
            return;
        }
        let put: Vec<Message> = changes
            .iter()
            .filter(|(shelf, _, value)| *shelf == Shelf::Outbox && value.is_some())
            .filter_map(|(.., value)| value.map(read))
            .collect();
        let lost_room = matches!(decision.heard.what, What::Removed).then_some(decision.heard.room);
        for say in &decision.turn.says {
            let chat = chat_of(&say.to);
            if chat.is_some() && chat == lost_room {
                continue;
            }
            if !put.iter().any(|message| message.chat() == chat && message.key == decision.name_of(say)) {
                self.wrong.push(format!("a turn said {:?} to {chat:?} and the outbox has it not", say.key));
            }
        }
    }

    fn outbox(&mut self, changes: &Changes, rows: &[Before], decision: Option<&Decision>, facts: &mut Vec<Undo>) {
        // The last change of a row counts; a change of rank is a removal and a new row with the same number.
        let mut last: BTreeMap<&[u8], Option<&[u8]>> = BTreeMap::new();
        for ((shelf, key, value), _) in changes.iter().zip(rows) {
            if shelf == Shelf::Outbox {
                last.insert(key, value);
            }
        }
        let of = |key: &[u8]| OutboxKey::from_bytes(key).map_or(0, |key| key.sequence);
        let put: BTreeSet<u64> = last.iter().filter(|(_, value)| value.is_some()).map(|(key, _)| of(key)).collect();
        for (key, value) in &last {
            let sequence = of(key);
            match value {
                Some(value) => self.put(sequence, read(value), facts),
                None if put.contains(&sequence) => {}
                None => {
                    let Some(waiting) = self.waiting.remove(&sequence) else { continue };
                    if !self.may_leave(sequence, &waiting, decision) {
                        self.wrong.push(format!("message {sequence} vanished: {waiting:?}"));
                    }
                    facts.push(Undo::Gone(sequence, waiting));
                }
            }
        }
    }

    fn put(&mut self, sequence: u64, message: Message, facts: &mut Vec<Undo>) {
        let waiting = Waiting { chat: message.chat(), name: message.key.clone(), how: message.how };
        if let (Some(chat), Some(name)) = (waiting.chat, waiting.name.clone())
            && message.how != How::Close
            && self.words.get(&(chat, name.clone())).is_none_or(|(last, _)| *last <= sequence)
        {
            let before = self.words.insert((chat, name.clone()), (sequence, message.html));
            facts.push(Undo::Was(Was::Words(chat, name, before)));
        }
        if self.waiting.insert(sequence, waiting).is_none() {
            self.delivered.remove(&sequence); // a number that a power cut had set free
            facts.push(Undo::Put(sequence));
        }
    }

    fn may_leave(&self, sequence: u64, waiting: &Waiting, decision: Option<&Decision>) -> bool {
        let told = match self.leave {
            Some(Leave::Sent(sent) | Leave::Refused(sent)) => sent == sequence,
            Some(Leave::Chat(chat)) => waiting.chat == Some(chat),
            None => false,
        };
        let overtaken = decision.is_some_and(|decision| {
            let same = |say: &Say| chat_of(&say.to) == waiting.chat && decision.name_of(say) == waiting.name;
            waiting.name.is_some() && decision.turn.says.iter().any(same)
        });
        let forgotten = decision.is_some_and(|decision| decision.turn.forget.is_some());
        // The buttons of a message that never came.
        told || overtaken || forgotten || waiting.how == How::Close
    }

    fn compare_bells(&mut self, changes: &Changes, shelves: &Shelves) {
        let rooms: BTreeSet<RoomId> = changes
            .iter()
            .filter(|(shelf, ..)| *shelf == Shelf::BellsOf)
            .filter_map(|(_, key, _)| BellKey::from_room(key).ok().map(|key| key.room))
            .collect();
        let none = BTreeMap::new();
        let by_time = shelves.get(&Shelf::Bells).unwrap_or(&none);
        for room in rooms {
            let keys = shelves.get(&Shelf::BellsOf).into_iter().flatten();
            let keys = keys.filter_map(|(key, _)| BellKey::from_room(key).ok()).filter(|key| key.room == room);
            let stored = keys.map(|key| (key.due, by_time.get(&key.by_time()).map(|value| read::<Bell>(value))));
            let mut stored: Vec<String> = stored.map(|bell| format!("{bell:?}")).collect();
            let model = self.bells.get(&room).into_iter().flatten().map(|(due, bell)| (*due, Some(bell)));
            let mut model: Vec<String> = model.map(|bell| format!("{bell:?}")).collect();
            stored.sort();
            model.sort();
            if stored != model {
                self.wrong.push(format!("room {}: bells kept {stored:?}, set {model:?}", room.0));
            }
        }
    }

    /// A crash took a commit back.
    pub fn take_back(&mut self, facts: Vec<Undo>, loss: Loss) {
        for fact in facts.into_iter().rev() {
            match fact {
                Undo::Accepted(update) => drop(self.accepted.remove(&update)),
                Undo::Decided(sequence) => drop(self.decided.remove(&sequence)),
                Undo::Put(sequence) => drop(self.waiting.remove(&sequence)),
                Undo::Gone(sequence, waiting) => {
                    self.waiting.insert(sequence, waiting);
                    if loss == Loss::Power {
                        self.may_repeat(sequence);
                    }
                }
                Undo::Turned => drop(self.history.pop()),
                Undo::Was(was) => match was {
                    Was::Room(id, room) => restore(&mut self.rooms, id, *room),
                    Was::Person(id, person) => restore(&mut self.people, id, *person),
                    Was::Bells(id, bells) => drop(self.bells.insert(id, bells)),
                    Was::Words(chat, name, words) => restore(&mut self.words, (chat, name), words),
                },
            }
        }
    }

    /// The platform was told that this update need not come again.
    pub fn acknowledged(&mut self, update: u64) {
        self.acknowledged.insert(update);
    }

    /// Nothing confirmed is missing.
    pub fn compare_acknowledged(&mut self) {
        for update in &self.acknowledged {
            if !self.accepted.contains_key(update) {
                self.wrong.push(format!("update {update} was confirmed and is lost"));
            }
        }
    }

    /// A message reached its chat.
    pub fn delivered(&mut self, sequence: u64) {
        let delivered = self.delivered.entry(sequence).or_default();
        delivered.times += 1;
        if delivered.times > 1 {
            self.repeated += 1;
        }
        if delivered.times > 1 + delivered.windows {
            self.wrong.push(format!("message {sequence} came {} times", delivered.times));
        }
    }

    /// Something happened after which the message may come once more.
    pub fn may_repeat(&mut self, sequence: u64) {
        if let Some(delivered) = self.delivered.get_mut(&sequence) {
            delivered.windows += 1;
        }
    }

    /// The last words said under a name in a chat.
    pub fn last_words(&self) -> &BTreeMap<(RoomId, String), (u64, String)> {
        &self.words
    }

    /// Number of turns written down.
    pub fn turns(&self) -> usize {
        self.history.len()
    }

    /// At the end, when nothing waits any more: all updates up to `updates` were taken and decided, nothing is in the outbox, every
    /// job whose time has come was called or is over, and the turns played again give the rooms the store holds.
    pub fn end(&mut self, updates: impl Iterator<Item = u64>, now: DateTime<Utc>, stored: &BTreeMap<RoomId, Room>) {
        for update in updates {
            match self.accepted.get(&update) {
                Some(sequence) if self.decided.contains(sequence) => {}
                Some(_) => self.wrong.push(format!("update {update} waits for ever")),
                None => self.wrong.push(format!("update {update} is lost")),
            }
        }
        for (sequence, waiting) in &self.waiting {
            self.wrong.push(format!("message {sequence} waits for ever: {waiting:?}"));
        }
        for room in self.rooms.values().filter(|room| !room.gone) {
            let plans = room.plan.iter().chain(&room.others);
            for (plan, job) in plans.flat_map(|plan| plan.jobs.iter().map(move |job| (plan, job))) {
                let by_itself = job.step().is_none_or(|step| !step.needs_hands() || step == Step::Serve);
                // Past its two hours nobody is called to carve it or put it away: that they are over is what is said.
                let over = plan.limits_called.iter().any(|limit| limit == "chill-0");
                let told = over && matches!(job.step(), Some(Step::Carve | Step::Chill)) || waits_for_heat(plan, job);
                if job.state == JobState::Waiting && job.at < now && job.calls == 0 && !by_itself && !told {
                    self.wrong.push(format!("room {}: {} {} was never called", room.id.0, job.step, job.nth));
                }
            }
        }
        let replayed = self.replayed();
        if replayed != *stored {
            let differ = replayed.iter().filter(|(id, room)| stored.get(id) != Some(room)).map(|(id, _)| id.0);
            self.wrong.push(format!("rooms {:?} differ from their turns played again", differ.collect::<Vec<_>>()));
        }
    }

    /// The rooms, from their turns decided anew.
    fn replayed(&self) -> BTreeMap<RoomId, Room> {
        let mut rooms = BTreeMap::new();
        for Decision { scene, heard, as_of, .. } in &self.history {
            let room = rooms.get(&scene.room.id).cloned();
            let room = room.unwrap_or_else(|| Room::new(scene.room.id, scene.room.kind));
            let turn = decide(&Scene { room, ..scene.clone() }, heard, *as_of);
            if turn.forget.is_some() {
                rooms.remove(&scene.room.id);
            } else if let Some(room) = turn.room {
                rooms.insert(room.id, room);
            }
        }
        rooms
    }
}

fn restore<K: Ord, V>(map: &mut BTreeMap<K, V>, key: K, before: Option<V>) {
    match before {
        Some(value) => map.insert(key, value),
        None => map.remove(&key),
    };
}

fn chat_of(to: &To) -> Option<RoomId> {
    match to {
        To::Room(room) => Some(*room),
        To::Person(person) => Some(person.private_room()),
        To::Press(_) => None,
    }
}

/// A stored value, its checksum not looked at.
pub fn read<T: DeserializeOwned>(value: &[u8]) -> T {
    serde_json::from_slice(value.get(HEAD..).unwrap_or_default()).expect("stored values are JSON behind five bytes")
}

fn number(key: &[u8]) -> u64 {
    key.try_into().map_or(0, u64::from_be_bytes)
}

/// The heat has failed and nobody has said that it is back: what only fits a bird that cooks is put off.
fn waits_for_heat(plan: &LivePlan, job: &LiveJob) -> bool {
    plan.down_since.is_some() && matches!(job.step(), Some(Step::Check | Step::Pull | Step::Carve))
}
