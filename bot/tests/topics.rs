//! A group with topics: what is asked is answered where it was asked; calls and the board stay where the plan was made.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::SledBook;
use carvetime::engine::{Arrival, Engine, Failure, Outgoing, Topic};
use carvetime::room::{Heard, PersonId, RoomId, RoomKind, Speaker, What, decide};
use carvetime::words::Voice;
use chrono::{DateTime, TimeDelta, Utc};
use std::sync::Arc;

const FORUM: RoomId = RoomId(-1009);

struct Forum {
    engine: Engine,
    now: DateTime<Utc>,
    number: i64,
}

impl Forum {
    fn new() -> Self {
        let engine = Engine::new(Arc::new(SledBook::temporary().unwrap()), Arc::new(Voice::new()), decide).unwrap();
        Self { engine, now: "2027-11-22T15:00:00Z".parse().unwrap(), number: 100 }
    }

    fn hear(&mut self, topic: Option<Topic>, what: What) -> Vec<Outgoing> {
        let rosa = Speaker {
            id: PersonId(1),
            name: "Rosa".into(),
            username: None,
            language: Some("en".into()),
            admin: true,
            inside: None,
        };
        let heard = Heard { room: FORUM, kind: RoomKind::Group, by: Some(rosa), for_group: false, what };
        self.now += TimeDelta::minutes(1);
        self.engine.accept([Arrival { topic, ..Arrival::from(heard) }]).unwrap();
        self.engine.work(self.now).unwrap();
        self.sent()
    }

    fn say(&mut self, topic: Option<Topic>, text: &str) -> Vec<Outgoing> {
        self.hear(topic, What::Said { text: text.into(), addressed: true, reply_to: None, edited: false })
    }

    fn press(&mut self, topic: Option<Topic>, among: &[Outgoing], label: &str) -> Vec<Outgoing> {
        let keys = || among.iter().flat_map(|out| out.message.buttons.iter().flatten().map(move |key| (out, key)));
        let (out, key) = keys().find(|(_, key)| key.label == label).unwrap();
        self.hear(topic, What::Pressed { press: "p".into(), data: key.data.clone(), on: out.message.key.clone() })
    }

    /// Everything that waits goes out.
    fn sent(&mut self) -> Vec<Outgoing> {
        let mut all = Vec::new();
        while let Some(out) = self.engine.claim(|_, _| true).unwrap() {
            self.number += 1;
            self.engine.sent(out.id, Some(self.number)).unwrap();
            all.push(out);
        }
        all.retain(|out| out.message.chat() == Some(FORUM));
        all
    }

    fn ring_at(&mut self, at: &str) -> Vec<Outgoing> {
        self.now = at.parse().unwrap();
        self.engine.ring(self.now).unwrap();
        self.sent()
    }
}

fn threads(sent: &[Outgoing]) -> Vec<Option<i32>> {
    let mut threads: Vec<Option<i32>> = sent.iter().map(|out| out.topic).collect();
    threads.dedup();
    threads
}

/// A plan made in topic 44, its zone told first.
fn planned() -> (Forum, Vec<Outgoing>) {
    let mut forum = Forum::new();
    let dinner = Some(Topic::Thread(44));
    forum.say(dinner, "/settings America/Chicago");
    let proposal = forum.say(dinner, "/plan 13 lb fresh turkey, dinner Thursday 5 pm, 8 people, oven at 325");
    let board = forum.press(dinner, &proposal, "Accept");
    assert_eq!(threads(&board), [Some(44)]);
    (forum, board)
}

#[test]
fn who_asks_elsewhere_is_answered_there_and_the_calls_stay() {
    let (mut forum, _) = planned();
    let answer = forum.say(Some(Topic::Thread(45)), "/ask how long do leftovers keep?");
    assert_eq!(threads(&answer), [Some(45)]);
    let answer = forum.say(Some(Topic::General), "/ask 325 F in C");
    assert_eq!(threads(&answer), [None]);
    let calls = forum.ring_at("2027-11-23T21:30:00Z");
    assert!(calls.iter().any(|out| out.message.step.as_deref() == Some("buy")), "{calls:?}");
    assert_eq!(threads(&calls), [Some(44)]);
}

#[test]
fn the_board_asked_for_elsewhere_takes_the_calls_along() {
    let (mut forum, _) = planned();
    assert_eq!(threads(&forum.say(Some(Topic::Thread(45)), "/board")), [Some(45)]);
    assert_eq!(threads(&forum.ring_at("2027-11-23T21:30:00Z")), [Some(45)]);
}

#[test]
fn an_answer_whose_topic_was_closed_goes_to_the_general_one_and_the_calls_stay() {
    let (mut forum, _) = planned();
    let ask = What::Said { text: "/ask 325 F in C".into(), addressed: true, reply_to: None, edited: false };
    let heard = Heard { room: FORUM, kind: RoomKind::Group, by: None, for_group: false, what: ask };
    forum.engine.accept([Arrival { topic: Some(Topic::Thread(45)), ..Arrival::from(heard) }]).unwrap();
    forum.engine.work(forum.now).unwrap();
    let out = forum.engine.claim(|_, _| true).unwrap().unwrap();
    assert_eq!(out.topic, Some(45));
    forum.engine.failed(out.id, Failure::NoTopic, forum.now).unwrap();
    assert_eq!(threads(&forum.sent()), [None]);
    assert_eq!(threads(&forum.ring_at("2027-11-23T21:30:00Z")), [Some(44)]);
}
