//! What is fed, and what must hold of what comes out.

use super::{Reads, mutate};
use crate::loopback::parse_html;
use carvetime::ask::{Asker, ask};
use carvetime::book::{SledBook, restore};
use carvetime::engine::{Audience, Engine, Render};
use carvetime::reading::{
    Ground, Lexicon, decode, fold, read_answer, read_command, read_dinner_time, read_dish, read_language, read_log,
    read_report, read_shift, read_step, read_table, read_wish, read_zone,
};
use carvetime::rehearse::Script;
use carvetime::room::state::Room;
use carvetime::room::{Document, Heard, PersonId, RoomId, RoomKind, Scene, Speaker, To, Turn, What, decide};
use carvetime::telegram::overhear;
use carvetime::words::{Reader, Voice, plain};
use chrono::{DateTime, TimeDelta, Utc};
use std::collections::BTreeMap;
use std::sync::Arc;

const ZONE: chrono_tz::Tz = chrono_tz::America::Chicago;

/// What one input comes to: what is wrong with it. Each reader reads it through [`Reads::one`].
pub type Run = Box<dyn FnMut(&[u8], &mut Reads) -> Result<(), String>>;

/// Something that reads.
pub struct Target {
    /// Its name.
    pub name: &'static str,
    /// Ready to be fed.
    pub start: fn() -> Run,
    /// What its inputs are made of.
    pub seeds: fn() -> Vec<Vec<u8>>,
    /// Inputs may be longer than a message.
    pub long: bool,
    /// Inputs a short round tries.
    pub short: u64,
}

impl Target {
    /// The input of that number.
    pub fn input(&self, number: u64) -> Vec<u8> {
        thread_local! {
            static SEEDS: std::cell::RefCell<BTreeMap<&'static str, Vec<Vec<u8>>>> = const { std::cell::RefCell::new(BTreeMap::new()) };
        }
        SEEDS.with_borrow_mut(|all| mutate::input(all.entry(self.name).or_insert_with(self.seeds), number, self.long))
    }
}

/// All of them.
pub const TARGETS: [Target; 9] = [
    Target { name: "ask", start: asking, seeds: sentences, long: false, short: 150 },
    Target { name: "quantities", start: quantities, seeds: sentences, long: false, short: 500 },
    Target { name: "sentences", start: reading, seeds: sentences, long: false, short: 80 },
    Target { name: "csv", start: csv, seeds: logs, long: true, short: 500 },
    Target { name: "script", start: scripts, seeds: playable, long: true, short: 100 },
    Target { name: "presses", start: presses, seeds: data, long: false, short: 300 },
    Target { name: "talk", start: talk, seeds: sentences, long: false, short: 60 },
    Target { name: "updates", start: updates, seeds: deliveries, long: true, short: 1000 },
    Target { name: "backup", start: backups, seeds: backup_files, long: true, short: 10 },
];

fn now() -> DateTime<Utc> {
    DateTime::from_timestamp(1_826_929_800, 0).unwrap_or_default() // a Tuesday in November 2027
}

/// Who reads: every language, and with it whether they count in grams.
const READERS: [(&str, &str, bool); 6] = [
    ("en", "en-US", false),
    ("es", "es-MX", true),
    ("fr", "fr-FR", true),
    ("de", "de-DE", true),
    ("pt", "pt-BR", true),
    ("it", "it-IT", true),
];

fn text_of(bytes: &[u8]) -> std::borrow::Cow<'_, str> {
    String::from_utf8_lossy(bytes)
}

// ---- what is fed

fn asking() -> Run {
    let voice = Voice::new();
    let all = READERS.map(|(_, tag, _)| (Asker::new(tag, ZONE, now()), Reader::new(tag, ZONE, now())));
    Box::new(move |bytes, reads| {
        for (asker, reader) in &all {
            let said = reads.one(|| match ask(&text_of(bytes), asker) {
                Ok(answer) => voice.render(&answer.lines(), reader),
                Err(error) => voice.render(&[error.text()], reader),
            });
            sound(&said)?;
        }
        Ok(())
    })
}

fn quantities() -> Run {
    Box::new(|bytes, reads| {
        let text = text_of(bytes);
        for (tag, ..) in READERS {
            for found in reads.one(|| carvetime_core::quantity::scan(&text, Lexicon::of(tag).units())) {
                let amount = found.amount;
                let values = [
                    amount.mass().map(carvetime_core::quantity::in_grams),
                    amount.temperature().map(carvetime_core::quantity::in_kelvin),
                    amount.percent(),
                    amount.bare(),
                ];
                let _ = amount.span();
                if let Some(odd) = values.into_iter().flatten().find(|value| value.is_nan()) {
                    return Err(format!("{odd} was read"));
                }
            }
        }
        Ok(())
    })
}

fn reading() -> Run {
    let grounds = READERS.map(|(language, tag, metric)| (Lexicon::of(language), Ground::new(tag, metric, ZONE, now())));
    Box::new(move |bytes, reads| {
        let text = text_of(bytes);
        for (lexicon, ground) in &grounds {
            reads.one(|| {
                let (mut wish, problems) = read_wish(&text, ground);
                problems.iter().for_each(|problem| drop(problem.text()));
                wish.settle(ground);
            });
            reads.one(|| read_dinner_time(&text, ground));
            reads.one(|| read_log(&text, ground).is_ok());
            reads.one(|| read_dish(&text, ground));
            reads.one(|| read_shift(&text, now(), ground).and_then(|shift| shift.applied(now())));
            reads.one(|| read_report(&text, lexicon));
            reads.one(|| read_step(&text, lexicon));
            reads.one(|| read_answer(&text, lexicon));
            reads.one(|| read_language(&text, lexicon));
        }
        reads.one(|| read_zone(&text));
        reads.one(|| read_command(&text, Some("carve_bot")));
        reads.one(|| fold(&text));
        Ok(())
    })
}

fn csv() -> Run {
    Box::new(|bytes, reads| {
        let Ok(table) = reads.one(|| read_table(&decode(bytes))) else { return Ok(()) };
        let again =
            read_table(&table.to_text()).map_err(|problem| format!("what was kept is not read: {problem:?}"))?;
        if again.readings.len() == table.thinned().count() { Ok(()) } else { Err("a line was lost".to_owned()) }
    })
}

fn scripts() -> Run {
    Box::new(|bytes, reads| {
        if let Err(error) = reads.one(|| Script::parse(&text_of(bytes), ZONE, "en-US")) {
            drop(error.reason.text());
        }
        Ok(())
    })
}

fn presses() -> Run {
    let mut table = Table::laid();
    Box::new(move |bytes, reads| {
        let data = text_of(bytes).into_owned();
        let outside =
            table.heard(RoomKind::Private, 99, What::Pressed { press: "p".into(), data: data.clone(), on: None });
        let outside = reads.one(|| table.turn(outside));
        if outside.room.is_some() || outside.says.iter().any(|say| !matches!(say.to, To::Press(_))) {
            return Err("a press from outside did something".to_owned());
        }
        let press = What::Pressed { press: "p".into(), data, on: Some("board".into()) };
        reads.one(|| table.hear(RoomKind::Group, press))
    })
}

fn talk() -> Run {
    let mut table = Table::laid();
    Box::new(move |bytes, reads| {
        let text = text_of(bytes).into_owned();
        let what = if text.starts_with("minutes") || text.starts_with("time") {
            What::Document { name: text.clone(), content: Document::Text(text) }
        } else {
            table.name = text.chars().rev().take(64).collect();
            What::Said { text, addressed: true, reply_to: None, edited: false }
        };
        reads.one(|| table.hear(RoomKind::Group, what))
    })
}

fn updates() -> Run {
    Box::new(|bytes, reads| {
        reads.one(|| drop(overhear(bytes, 4242, "carve_bot")));
        Ok(())
    })
}

fn backups() -> Run {
    Box::new(|bytes, reads| {
        let folder = tempfile::tempdir().map_err(|error| error.to_string())?;
        let (file, data) = (folder.path().join("backup"), folder.path().join("data"));
        std::fs::write(&file, with_checksum(bytes)).map_err(|error| error.to_string())?;
        if reads.one(|| restore(&file, &data)).is_err() {
            return Ok(());
        }
        let Ok(book) = SledBook::open(&data) else { return Ok(()) };
        let Ok(engine) = Engine::new(Arc::new(book), Arc::new(Voice::new()), decide) else { return Ok(()) };
        let _ =
            (engine.work(now()).is_ok(), engine.ring(now() + TimeDelta::days(30)).is_ok(), engine.next_bell().is_ok());
        Ok(())
    })
}

/// The file with the checksum that fits it: what is damaged inside must be found inside.
fn with_checksum(bytes: &[u8]) -> Vec<u8> {
    let text = text_of(bytes);
    let lines: Vec<&str> = text.lines().filter(|line| !line.contains("\"end\"")).collect();
    let body: String = lines.iter().map(|line| format!("{line}\n")).collect();
    let rows = lines.len().saturating_sub(1);
    let sum = crc32fast::hash(body.as_bytes());
    format!("{body}{{\"end\":{{\"rows\":{rows},\"crc32\":{sum}}}}}\n").into_bytes()
}

/// What the platform asks of a text.
fn sound(html: &str) -> Result<(), String> {
    let (shown, _) = parse_html(html).map_err(|error| format!("{error} in {html:?}"))?;
    if shown == plain(html) { Ok(()) } else { Err(format!("not what is meant: {html:?}")) }
}

/// A room with a dinner in it.
struct Table {
    scene: Scene,
    laid: Scene,
    now: DateTime<Utc>,
    turns: u32,
    voice: Voice,
    name: String,
}

impl Table {
    fn laid() -> Self {
        let mut room = Room::new(RoomId(-100), RoomKind::Group);
        room.taste.zone = Some(ZONE.name().to_owned());
        let scene = Scene { room, people: BTreeMap::new(), chance: 1 };
        let (voice, name) = (Voice::new(), "Rosa".to_owned());
        let mut table = Self { laid: scene.clone(), scene, now: now(), turns: 0, voice, name };
        let said = |text: &str| What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
        let press = |data: &str| What::Pressed { press: "p".into(), data: data.into(), on: None };
        for what in
            [said("/plan 14.5 lb fresh turkey, dinner Thursday 5 pm, 11 people, smoker at 325"), press("accept.1")]
        {
            let turn = table.turn(table.heard(RoomKind::Group, 1, what));
            table.keep(turn);
        }
        assert!(table.scene.room.plan.is_some(), "the dinner of the fuzzer is planned");
        table.laid = table.scene.clone();
        table
    }

    fn heard(&self, kind: RoomKind, who: i64, what: What) -> Heard {
        let by = Speaker {
            id: PersonId(who),
            name: self.name.clone(),
            username: None,
            language: Some("en".into()),
            admin: false,
            inside: None,
        };
        Heard { room: self.scene.room.id, kind, by: Some(by), for_group: false, what }
    }

    fn turn(&self, heard: Heard) -> Turn {
        decide(&self.scene, &heard, self.now)
    }

    /// A turn whose state is kept; after some, the table is laid anew.
    fn hear(&mut self, kind: RoomKind, what: What) -> Result<(), String> {
        self.turns += 1;
        if self.turns.is_multiple_of(50) {
            (self.scene, self.now) = (self.laid.clone(), now());
        }
        self.now += TimeDelta::hours(i64::from(self.turns % 7));
        let who = 1 + i64::from(self.turns % 2);
        let turn = self.turn(self.heard(kind, who, what));
        for say in &turn.says {
            let room = turn.room.as_ref().unwrap_or(&self.scene.room);
            sound(&self.voice.html(&say.text, Audience::Room(room), self.now))?;
            for button in say.buttons.iter().flatten() {
                let routed = !matches!(say.to, To::Person(_)) || button.data.starts_with(carvetime::room::LINK);
                // The longest prefix of a routed press that the platform's numbers need: r-1002003004005678:
                let longest = if routed { 64 } else { 64 + 6 };
                let label = Render::label(&self.voice, &button.label, Audience::Room(room), self.now);
                if button.data.len() > longest || button.data.is_empty() || label.trim().is_empty() {
                    return Err(format!("a button {label:?} with {:?}", button.data));
                }
            }
        }
        serde_json::to_string(&turn.room).map_err(|error| error.to_string())?;
        self.keep(turn);
        Ok(())
    }

    fn keep(&mut self, turn: Turn) {
        if let Some(room) = turn.room {
            self.scene.room = room;
        }
        for person in turn.people {
            self.scene.people.insert(person.id, person);
        }
    }
}

// ---- what it is made of

fn lines(text: &str) -> Vec<Vec<u8>> {
    text.lines().map(|line| line.trim().as_bytes().to_vec()).filter(|line| !line.is_empty()).collect()
}

/// What people type: what is said in the rehearsals, and every kind of question.
fn sentences() -> Vec<Vec<u8>> {
    let mut all = lines(include_str!("sentences.txt"));
    for script in playable() {
        for line in text_of(&script).lines() {
            if let Some((_, said)) = line.split_once(": ").filter(|_| line.starts_with("20")) {
                all.push(said.as_bytes().to_vec());
            }
        }
    }
    all
}

fn logs() -> Vec<Vec<u8>> {
    let utf16 = "minutes,breast_c\n5,4.5\n".encode_utf16().flat_map(u16::to_le_bytes);
    vec![
        b"minutes,pit_f,breast_f,thigh_f\n0,325,40,41\n1.5,,41,42\n90,330,118,\n".to_vec(),
        "\u{feff}Time;Breast (°C);Pit\n23:50;4,5;160\n00:10:30;5,0;\n".as_bytes().to_vec(),
        b"time\tthigh\tnote\n2027-11-25 10:00\t\"58\"\tturned, basted\n2027-11-25T12:00\t60\t\n".to_vec(),
        [0xff, 0xfe].into_iter().chain(utf16).collect(),
    ]
}

fn playable() -> Vec<Vec<u8>> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/rehearsals");
    let mut names: Vec<_> =
        std::fs::read_dir(folder).into_iter().flatten().flatten().map(|entry| entry.path()).collect();
    names.retain(|path| path.extension().is_some_and(|end| end == "cook"));
    names.sort();
    names.iter().filter_map(|path| std::fs::read(path).ok()).collect()
}

/// Data of buttons, one of each verb.
fn data() -> Vec<Vec<u8>> {
    let mut all = lines(
        "accept.1\nbeside.1\ninstead.1.1\nbird.1.1.1\nchange.1\nback.1\nreasons.1\ndiscard.1\npick.1.condition.frozen\npick.1.drive.30
        offer.1.00000001\nmend.1.0000000a\nheld.1\ngiving.1\nundo.1.0\njobs.1\nwhy.1\nreply.1.0\nsources.1\nyes.stop.1\nyes.forget.1\nyes.reading.1
        no.stop.1\nmeant.1\ndinner.1.30448800\nhotter.1.350\nsettings.language\nset.zone.Europe/Madrid\nset.language.es\nset.units.metric
        help.plan\naskfor.1.carve.0.2\nr-100:done.1.thaw.0\njobs.1@1\nyes.stop.1@2",
    );
    for verb in ["done", "sure", "later", "skip", "take", "drop", "give", "willing", "unwilling"] {
        for step in ["buy", "thaw", "salt", "fire", "on", "check", "pull", "carve", "chill", "serve", "leftovers"] {
            all.push(format!("{verb}.1.{step}.0").into_bytes());
        }
    }
    all
}

fn deliveries() -> Vec<Vec<u8>> {
    lines(include_str!("updates.txt"))
}

/// A backup of a room with a plan, something heard, bells and messages waiting.
fn backup_files() -> Vec<Vec<u8>> {
    let folder = tempfile::tempdir().expect("a folder");
    let book = Arc::new(SledBook::temporary().expect("a book"));
    let engine = Engine::new(book, Arc::new(Voice::new()), decide).expect("an engine");
    let table = Table::laid();
    let said = |text: &str| What::Said { text: text.into(), addressed: true, reply_to: None, edited: false };
    let press = |data: &str| What::Pressed { press: "p".into(), data: data.into(), on: None };
    let plan = "/plan 14.5 lb fresh turkey, dinner Thursday 5 pm, 11 people, smoker at 325";
    for what in [said("/settings Chicago"), said(plan), press("accept.1"), said("/take carve"), said("/start")] {
        engine.accept([table.heard(RoomKind::Group, 1, what)]).expect("accepted");
        engine.work(now()).expect("decided");
    }
    engine.accept([table.heard(RoomKind::Group, 1, said("/board"))]).expect("accepted");
    let file = folder.path().join("backup");
    engine.backup(&file).expect("a backup");
    vec![std::fs::read(&file).expect("a file")]
}
