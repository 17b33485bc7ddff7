//! Whole cooks with many rooms, through the real engine and the real room, on a disk and a platform made up for it: one seed decides
//! everything, and a seed that fails is printed and fails again.
//!
//! Fault model. The clock jumps forward, back and sleeps; updates come late, twice and out of order; calls are answered late, with
//! 429, with 5xx, with a reset before or after they were applied; a message to be changed is gone; people can't be written to;
//! the disk is full or fails for a while; the process dies between any two commits or calls; the power goes. Ruled out here: damaged
//! bytes (`bot/tests/keeper.rs`) and real processes (`crate::kills`). No threads, no sleeping, a virtual clock.
//!
//! What must be so is in `witness.rs`, looked at after each step. Start at [`play`].

mod cook;
mod disk;
mod platform;
mod witness;

use crate::fuzz::Chance;
use crate::words::Words;
use carvetime::book::{Book, BookError, Loss, Shelf};
use carvetime::engine::{Arrival, Engine, Failure, Outgoing, Render, UpdateId};
use carvetime::room::state::Room;
use carvetime::room::{Heard, How, PersonId, RoomId, Speaker, What};
use carvetime::words::Voice;
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use cook::Cook;
use disk::{Death, Disk, State};
use platform::{Act, Deed, Platform, cook_of};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, OnceLock, PoisonError};
use witness::{Leave, Undo};

/// Cooks that share a world.
const COOKS: usize = 4;

/// Messages under way at a time.
const AT_ONCE: usize = 16;

/// What a world, or many, came to.
#[derive(Debug, Default, Clone, PartialEq, Eq)]
pub struct Tally {
    /// Cooks played to their end.
    pub cooks: u64,
    /// Updates people made.
    pub updates: u64,
    /// Turns written down.
    pub turns: u64,
    /// Messages and changes of messages that arrived.
    pub messages: u64,
    /// Faults by name.
    pub faults: BTreeMap<&'static str, u64>,
    /// Messages that came twice, each within a window.
    pub repeated: u64,
    /// Arrivals set aside because the program ended in their turn again and again.
    pub set_aside: u64,
    /// Stands for everything that was said and when.
    pub digest: u64,
}

impl Tally {
    /// Both together.
    pub fn add(&mut self, other: &Tally) {
        self.cooks += other.cooks;
        self.updates += other.updates;
        self.turns += other.turns;
        self.messages += other.messages;
        self.repeated += other.repeated;
        self.set_aside += other.set_aside;
        self.digest ^= other.digest;
        for (name, count) in &other.faults {
            *self.faults.entry(name).or_default() += count;
        }
    }

    /// All faults.
    pub fn faults(&self) -> u64 {
        self.faults.values().sum()
    }
}

/// Plays the world of `seed`.
///
/// # Errors
/// What was wrong, and when in the world's time.
pub fn play(seed: u64) -> Result<Tally, String> {
    witness::begin();
    let mut world = World::new(seed);
    let played = world.run();
    let mut tally = std::mem::take(&mut world.tally);
    let state = world.disk.state();
    (tally.repeated, tally.set_aside) = (state.witness.repeated, state.witness.set_aside);
    tally.turns = state.witness.turns() as u64;
    tally.updates = world.platform.next;
    tally.cooks = world.cooks.len() as u64;
    played.map(|()| tally)
}

fn words() -> Arc<dyn Render> {
    static WORDS: OnceLock<Arc<Words>> = OnceLock::new();
    Arc::clone(WORDS.get_or_init(|| Arc::new(Words(Voice::new())))) as _
}

/// A message under way, and what will become of it.
struct Flight {
    out: Outgoing,
    lands: DateTime<Utc>,
    fate: Fate,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Fate {
    Taken,
    /// Taken, and the answer is lost.
    AnswerLost,
    /// Not taken; later it may be.
    Later,
    /// Not taken, and never will be.
    Refused,
    /// What it changes is gone.
    Vanished,
    /// The chat can't be written to.
    Gone,
}

struct World {
    chance: Chance,
    /// The real time; people and platform go by it.
    now: DateTime<Utc>,
    /// How far the machine's clock is off.
    skew: TimeDelta,
    disk: Arc<Disk>,
    engine: Option<Engine>,
    platform: Platform,
    cooks: Vec<Cook>,
    flights: Vec<Flight>,
    paused: BTreeMap<RoomId, DateTime<Utc>>,
    offline_until: Option<DateTime<Utc>>,
    /// Faults still happen.
    wild: bool,
    tally: Tally,
}

impl World {
    fn new(seed: u64) -> Self {
        let mut chance = Chance::new(seed);
        // An evening in autumn; the change of the clocks is among the weeks.
        let days = chance.below(30) as i64;
        let start = Utc.with_ymd_and_hms(2027, 10, 25, 18, 0, 0).single().expect("a time") + TimeDelta::days(days);
        let cooks = (1..=COOKS as i64).map(|number| Cook::new(number, start, &mut chance)).collect();
        Self {
            chance,
            now: start,
            skew: TimeDelta::zero(),
            disk: Arc::default(),
            engine: None,
            platform: Platform { next: 1, ..Platform::default() },
            cooks,
            flights: Vec::new(),
            paused: BTreeMap::new(),
            offline_until: None,
            wild: true,
            tally: Tally::default(),
        }
    }

    fn run(&mut self) -> Result<(), String> {
        while self.cooks.iter().any(|cook| cook.next().is_some()) || !self.platform.queue.is_empty() {
            self.pass_time();
            self.step()?;
        }
        self.calm_down()?;
        self.end()
    }

    /// One round of everything, in an order of its own.
    fn step(&mut self) -> Result<(), String> {
        for nth in 0..6 {
            match (nth + self.chance.below(6)) % 6 {
                0 => self.people(),
                1 => self.poll(),
                2 => self.turns(),
                3 => self.send(),
                4 => self.land(),
                _ if self.wild => self.mishap(),
                _ => {}
            }
            if self.state().is_dead() {
                self.crash(Loss::Process);
            }
            self.look()?;
        }
        Ok(())
    }

    /// Whether everything is as it must be.
    fn look(&self) -> Result<(), String> {
        match self.state().witness.wrong.first() {
            Some(wrong) => Err(format!("{}: {wrong}", self.now)),
            None => Ok(()),
        }
    }

    fn state(&self) -> MutexGuard<'_, State> {
        self.disk.state()
    }

    /// What the machine takes for the time.
    fn clock(&self) -> DateTime<Utc> {
        self.now + self.skew
    }

    fn fault(&mut self, name: &'static str) {
        *self.tally.faults.entry(name).or_default() += 1;
    }

    fn one_in(&mut self, many: usize) -> bool {
        self.wild && self.chance.below(many) == 0
    }

    /// To when something happens next.
    fn pass_time(&mut self) {
        let bell = self.engine().and_then(|engine| engine.next_bell().ok().flatten()).map(|bell| bell - self.skew);
        let deed = self.cooks.iter().filter_map(Cook::next).min();
        let landing = self.flights.iter().map(|flight| flight.lands).min();
        let busy = !self.platform.queue.is_empty() || self.engine().is_some_and(|engine| engine.waiting() > 0);
        let soon = busy.then(|| self.now + TimeDelta::milliseconds(200 + self.chance.below(2000) as i64));
        let next = [bell, deed, landing, soon].into_iter().flatten().min();
        self.now = next.unwrap_or(self.now + TimeDelta::minutes(1)).max(self.now + TimeDelta::milliseconds(1));
    }

    /// The running engine, started if need be.
    fn engine(&mut self) -> Option<&Engine> {
        if self.engine.is_none() {
            let book: Arc<dyn Book> = Arc::clone(&self.disk) as _;
            self.engine = Engine::new(book, words(), witness::heard_by_witness).ok();
        }
        self.engine.as_ref()
    }

    fn people(&mut self) {
        for cook in &mut self.cooks {
            cook.act(self.now, &mut self.platform, &mut self.chance);
        }
    }

    fn poll(&mut self) {
        if self.offline_until.is_some_and(|until| until > self.now) || self.platform.queue.is_empty() {
            return;
        }
        let most = 1 + self.chance.below(100);
        let mut batch: Vec<(u64, Deed)> = self.platform.queue.iter().take(most).cloned().collect();
        if self.one_in(20) && batch.len() > 1 {
            let (a, b) = (self.chance.below(batch.len()), self.chance.below(batch.len()));
            batch.swap(a, b);
            self.fault("updates out of order");
        }
        if self.one_in(15) && !self.platform.confirmed.is_empty() {
            let again = self.chance.below(self.platform.confirmed.len());
            batch.extend(self.platform.confirmed.get(again).cloned());
            self.fault("update told twice");
        }
        let told: BTreeSet<u64> = batch.iter().map(|(id, _)| *id).collect();
        let now = (!self.one_in(2)).then(|| self.clock());
        let Some(engine) = self.engine() else { return };
        let arrivals: Vec<Arrival> = batch.iter().map(|(id, deed)| arrival(engine, *id, deed)).collect();
        let taken = engine.hear(arrivals, now);
        if taken.is_err() || self.state().is_dead() {
            return self.failed(taken.err());
        }
        let mut state = self.state();
        if state.could_lose(|fact| matches!(fact, Undo::Accepted(_))) {
            state.witness.wrong.push("updates are confirmed that a power cut could take".into());
        }
        drop(state);
        if self.one_in(12) {
            return self.fault("confirmation lost"); // the same batch comes again
        }
        told.iter().for_each(|update| self.state().witness.acknowledged(*update));
        self.platform.confirm(&told);
    }

    fn turns(&mut self) {
        let now = self.clock();
        let Some(engine) = self.engine() else { return };
        let done = engine.work(now).and_then(|_| engine.ring(now));
        if done.is_err() {
            self.failed(done.err());
        }
    }

    /// The program ends at an error of the book, and is started again; an engine that goes on must do as well.
    fn failed(&mut self, error: Option<BookError>) {
        if error.is_some() && !self.state().is_dead() && self.chance.below(2) == 0 {
            self.restart();
        }
    }

    fn send(&mut self) {
        if self.offline_until.is_some_and(|until| until > self.now) {
            return;
        }
        let now = self.now;
        while self.flights.len() < AT_ONCE {
            let paused = self.paused.clone();
            let may = |room: RoomId, _| paused.get(&room).is_none_or(|until| *until <= now);
            let Some(engine) = self.engine() else { return };
            let claimed = engine.claim(may);
            let out = match claimed {
                Ok(Some(out)) => out,
                Ok(None) => return,
                Err(error) => return self.failed(Some(error)),
            };
            if self.state().is_dead() {
                return;
            }
            let sequence = out.id.sequence;
            let mut state = self.state();
            if state.could_lose(|fact| matches!(fact, Undo::Put(put) if *put == sequence)) {
                state.witness.wrong.push(format!("message {sequence} leaves and a power cut could take its turn"));
            }
            drop(state);
            let fate = self.fate(&out);
            let lands =
                now + TimeDelta::milliseconds(20 + self.chance.below(if self.wild { 4000 } else { 100 }) as i64);
            self.flights.push(Flight { out, lands, fate });
        }
    }

    fn fate(&mut self, out: &Outgoing) -> Fate {
        let chat = out.message.chat();
        let closed =
            chat.is_some_and(|chat| chat.0 > 0 && !self.platform.chats.get(&chat).is_some_and(|chat| chat.open));
        if closed {
            self.fault("chat closed");
            return Fate::Gone;
        }
        if let (Some(chat), Some(number), How::Edit | How::Close) = (chat, out.shown, out.message.how)
            && self.platform.is_deleted(chat, number)
        {
            return if out.message.how == How::Edit { Fate::Vanished } else { Fate::Refused };
        }
        if self.one_in(25) {
            self.fault("answer lost");
            return Fate::AnswerLost;
        }
        if self.one_in(25) {
            self.fault("429 or 5xx");
            let wait = TimeDelta::seconds(1 + self.chance.below(20) as i64);
            if let Some(chat) = chat {
                self.paused.insert(chat, self.now + wait);
                return Fate::Later;
            }
            return Fate::Refused; // nobody waits for the answer to a press that long
        }
        if out.message.how == How::Edit && out.shown.is_some() && self.one_in(40) {
            self.fault("message deleted");
            return Fate::Vanished;
        }
        Fate::Taken
    }

    /// Calls are answered.
    fn land(&mut self) {
        let now = self.now;
        while let Some(at) = self.flights.iter().position(|flight| flight.lands <= now) {
            let Flight { out, fate, .. } = self.flights.swap_remove(at);
            let number = self.arrive(&out, fate);
            let (sequence, clock) = (out.id.sequence, self.clock());
            let leave = match fate {
                Fate::Taken => Some(Leave::Sent(sequence)),
                Fate::Refused => Some(Leave::Refused(sequence)),
                Fate::Gone => out.message.chat().map(Leave::Chat),
                _ => None,
            };
            self.state().witness.leave = leave;
            let Some(engine) = self.engine() else { return };
            let done = match fate {
                Fate::Taken => engine.sent(out.id, number),
                Fate::AnswerLost | Fate::Later => engine.failed(out.id, Failure::Later, clock),
                Fate::Refused => engine.failed(out.id, Failure::Refused, clock),
                Fate::Vanished => engine.failed(out.id, Failure::Vanished, clock),
                Fate::Gone => engine.failed(out.id, Failure::Gone, clock),
            };
            self.state().witness.leave = None;
            let dead = self.state().is_dead();
            if (done.is_err() || dead) && fate == Fate::Taken {
                self.state().witness.may_repeat(sequence); // it came, and that could not be noted
            }
            if dead {
                return;
            }
            if done.is_err() {
                return self.restart(); // as the program does
            }
        }
    }

    /// What a call does to the platform.
    fn arrive(&mut self, out: &Outgoing, fate: Fate) -> Option<i64> {
        let chat = out.message.chat();
        match fate {
            Fate::Taken | Fate::AnswerLost => {
                let own = cook_of(out.message.room);
                let others = self.cooks.iter().filter(|cook| cook_of(cook.room) != own);
                let strangers: Vec<String> =
                    others.flat_map(|cook| &cook.people).map(|(_, name)| name.clone()).collect();
                let disk = Arc::clone(&self.disk);
                let mut state = disk.state();
                let number = self.platform.take(out, &strangers, &mut state.witness);
                if fate == Fate::AnswerLost {
                    state.witness.may_repeat(out.id.sequence);
                }
                self.tally.messages += 1;
                let said = crc32fast::hash(out.message.html.as_bytes());
                let when = self.now.timestamp_millis().cast_unsigned();
                self.tally.digest = self.tally.digest.rotate_left(7) ^ u64::from(said) ^ when;
                number
            }
            Fate::Vanished => {
                let shown = chat.zip(out.shown);
                if let Some((chat, number)) = shown {
                    self.platform.delete(chat, number);
                }
                None
            }
            Fate::Later | Fate::Refused | Fate::Gone => None,
        }
    }

    /// Something goes wrong.
    fn mishap(&mut self) {
        match self.chance.below(400) {
            0..3 => {
                self.fault("kill between calls");
                self.crash(Loss::Process);
            }
            3..9 => {
                self.fault("kill at a commit");
                let nth = self.chance.below(4) as u32;
                let death = if self.chance.below(2) == 0 { Death::Before(nth) } else { Death::After(nth) };
                self.state().die(death);
            }
            9..12 => {
                self.fault("power cut");
                self.crash(Loss::Power);
            }
            12..16 => {
                self.fault("disk full");
                let commits = 1 + self.chance.below(5) as u32;
                self.state().refuse(commits, 0);
            }
            16..20 => {
                self.fault("failed sync");
                let syncs = 1 + self.chance.below(3) as u32;
                self.state().refuse(0, syncs);
            }
            20 => {
                self.fault("clock back");
                self.skew -= TimeDelta::minutes(1 + self.chance.below(180) as i64);
            }
            21 => {
                self.fault("clock forward");
                self.skew += TimeDelta::minutes(1 + self.chance.below(180) as i64);
            }
            22..26 => self.skew = TimeDelta::zero(),
            26 => {
                self.fault("suspended");
                self.now += TimeDelta::minutes(1 + self.chance.below(600) as i64);
            }
            27 => {
                self.fault("network down");
                self.offline_until = Some(self.now + TimeDelta::minutes(1 + self.chance.below(120) as i64));
            }
            _ => {}
        }
    }

    /// The process or the power is gone. What was under way may have arrived or not.
    fn crash(&mut self, loss: Loss) {
        self.engine = None;
        for flight in std::mem::take(&mut self.flights) {
            if flight.fate == Fate::Taken && self.chance.below(2) == 0 {
                self.arrive(&flight.out, Fate::AnswerLost);
            }
        }
        let disk = Arc::clone(&self.disk);
        let mut state = disk.state();
        state.witness.leave = None;
        drop(witness::decided());
        state.crash(loss, &mut self.chance);
        state.witness.compare_acknowledged();
    }

    /// The process ends by itself and is started again: the system has all it wrote.
    fn restart(&mut self) {
        self.crash(Loss::Process);
    }

    /// No more faults: everything that waits is done, and the bells ring to the last one.
    fn calm_down(&mut self) -> Result<(), String> {
        self.wild = false;
        (self.skew, self.offline_until) = (TimeDelta::zero(), None);
        self.state().refuse(0, 0);
        self.restart();
        let last = self.cooks.iter().map(|cook| cook.dinner).max().unwrap_or(self.now) + TimeDelta::days(30);
        loop {
            self.pass_time();
            self.step()?;
            let bell = self.engine().and_then(|engine| engine.next_bell().ok().flatten());
            let idle = self.platform.queue.is_empty()
                && self.state().shelf(Shelf::Inbox).next().is_none()
                && self.flights.is_empty()
                && self.engine().is_some_and(|engine| engine.waiting() == 0);
            if idle && bell.is_none_or(|bell| bell > last) {
                return Ok(());
            }
            if self.now > last + TimeDelta::days(30) {
                return Err(format!("{}: it does not come to rest", self.now));
            }
        }
    }

    fn end(&mut self) -> Result<(), String> {
        let disk = Arc::clone(&self.disk);
        let mut state = disk.state();
        let stored: BTreeMap<RoomId, Room> = state
            .shelf(Shelf::Rooms)
            .map(|(_, value)| witness::read::<Room>(value))
            .map(|room| (room.id, room))
            .collect();
        state.witness.end(1..self.platform.next, self.now, &stored);
        for ((chat, name), (_, words)) in state.witness.last_words().clone() {
            let there = self.platform.chats.get(&chat).filter(|chat_| chat_.open || chat.0 < 0);
            let Some(there) = there else { continue };
            let shown = there.names.get(&name).and_then(|number| there.messages.get(number));
            if shown.is_none_or(|shown| shown.html != words) {
                let shown = shown.map(|shown| &shown.html);
                state.witness.wrong.push(format!("{name} of {} shows {shown:?}, last said {words:?}", chat.0));
            }
        }
        drop(state);
        self.look()
    }
}

fn arrival(engine: &Engine, id: u64, deed: &Deed) -> Arrival {
    let (person, name) = &deed.by;
    let by = Speaker {
        id: PersonId(*person),
        name: name.clone(),
        username: None,
        language: Some("en".into()),
        admin: person % 100 == 0,
        inside: Some(true),
    };
    let what = match &deed.act {
        Act::Say(text) => What::Said { text: text.clone(), addressed: true, reply_to: None, edited: false },
        Act::Press { data, message } => {
            let on = engine.key_of(deed.room, *message).ok().flatten();
            What::Pressed { press: format!("press-{id}"), data: data.clone(), on }
        }
    };
    let heard = Heard { room: deed.room, kind: deed.kind, by: Some(by), for_group: false, what };
    Arrival { sent: Some(deed.at), ..Arrival::from((Some(UpdateId(id)), heard)) }
}

/// Plays as many worlds as hold `cooks` cooks, the first from the seed `first`, on `threads` threads.
///
/// # Errors
/// The seed of a world that went wrong, and what was wrong in it.
pub fn play_many(first: u64, cooks: u64, threads: usize) -> Result<Tally, (u64, String)> {
    let end = first + cooks.div_ceil(COOKS as u64);
    let (next, all) = (AtomicU64::new(first), Mutex::new(Ok(Tally::default())));
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                loop {
                    let seed = next.fetch_add(1, Ordering::Relaxed);
                    if seed >= end {
                        return;
                    }
                    let played = play(seed);
                    let mut all = all.lock().unwrap_or_else(PoisonError::into_inner);
                    match (all.as_mut(), played) {
                        (Ok(all), Ok(tally)) => all.add(&tally),
                        (Ok(_), Err(wrong)) => *all = Err((seed, wrong)),
                        (Err(_), _) => return, // one seed that fails is enough
                    }
                }
            });
        }
    });
    all.into_inner().unwrap_or_else(PoisonError::into_inner)
}
