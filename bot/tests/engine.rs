//! The engine around a stand-in for the room: what arrives is decided once, kept whole, and sent in order.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::{Book, BookError, Changes, Loss, Row, Shelf, SledBook, UnderWay};
use carvetime::engine::{Arrival, Audience, Engine, Failure, Outgoing, Render, Taken, Topic, UpdateId};
use carvetime::room::chart::Chart;
use carvetime::room::sheet::Sheet;
use carvetime::room::state::{Person, Room};
use carvetime::room::turn::Forget;
use carvetime::room::{
    Bell, BellKind, Button, Document, Heard, How, PersonId, RoomId, RoomKind, Say, Scene, Speaker, To, Turn, Urgency,
    What,
};
use carvetime::words::{Arg, Text};
use chrono::{DateTime, Utc};
use proptest::prelude::*;
use std::collections::BTreeMap;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};

const GROUP: RoomId = RoomId(-100);
const OTHER: RoomId = RoomId(-200);
const ROSA: PersonId = PersonId(7);

/// Shows the verbatim argument of each text; a text without one shows its id.
struct Plain;

impl Render for Plain {
    fn html(&self, paragraphs: &[Text], audience: Audience<'_>, now: DateTime<Utc>) -> String {
        let lines: Vec<String> = paragraphs.iter().map(|text| self.label(text, audience, now)).collect();
        lines.join("\n")
    }

    fn label(&self, text: &Text, _: Audience<'_>, _: DateTime<Utc>) -> String {
        match text.args.as_slice() {
            [(_, Arg::Verbatim(words))] => words.clone(),
            _ => text.id.to_string(),
        }
    }

    fn picture(&self, _: &Chart, _: Audience<'_>, _: DateTime<Utc>) -> Option<Vec<u8>> {
        Some(b"ink".to_vec())
    }

    fn sheet(&self, _: &Sheet, _: Audience<'_>, _: DateTime<Utc>) -> Option<Vec<u8>> {
        Some(b"page".to_vec())
    }
}

fn words(text: &str) -> Text {
    Text::new("room-test").with("words", Arg::Verbatim(text.to_owned()))
}

/// The stand-in room. Each line of what was said is an instruction; `plans_made` counts the turns of a room.
fn obey(scene: &Scene, heard: &Heard, now: DateTime<Utc>) -> Turn {
    let mut room = scene.room.clone();
    room.plans_made += 1;
    let mut turn = Turn::default();
    let said = |key: Option<&str>, how, urgency, text: &str| Say {
        key: key.map(str::to_owned),
        how,
        urgency,
        buttons: vec![vec![Button { label: words("Done"), data: "d".into() }]],
        ..Say::new(To::Room(scene.room.id), words(text))
    };
    match &heard.what {
        What::Said { text, .. } => {
            for line in text.lines() {
                let (verb, rest) = line.split_once(' ').unwrap_or((line, ""));
                match verb {
                    "panic" => panic!("told to"),
                    "join" => room.members.extend(heard.by.iter().map(|by| by.id)),
                    "know" => turn.people.extend(heard.by.iter().map(Person::new)),
                    "say" => turn.says.push(said(None, How::New, Urgency::Answer, rest)),
                    "due" => turn.says.push(said(Some("job"), How::New, Urgency::Due, rest)),
                    "board" => turn.says.push(said(Some("board"), How::New, Urgency::Board, rest)),
                    "edit" => turn.says.push(said(Some("board"), How::Edit, Urgency::Board, rest)),
                    "edit-now" => turn.says.push(said(Some("board"), How::Edit, Urgency::Answer, rest)),
                    "close" => turn.says.push(said(Some("board"), How::Close, Urgency::Board, "")),
                    "alarm" => turn.says.push(said(None, How::New, Urgency::Safety, rest)),
                    "tell" => {
                        turn.says.push(Say { to: To::Person(ROSA), ..said(Some("job"), How::New, Urgency::Due, rest) })
                    }
                    "job" => {
                        let (step, due) = rest.split_once(' ').unwrap();
                        let kind = BellKind::Job { step: step.into(), nth: 0, call: 0 };
                        turn.bells = Some(vec![Bell { at: at(due.parse().unwrap()), kind }]);
                    }
                    "bells" => turn.bells = Some(rest.split_whitespace().map(|at| bell(at.parse().unwrap())).collect()),
                    "farewell" => turn.says.push(said(Some("sure"), How::Edit, Urgency::Answer, rest)),
                    "forget" => turn.forget = Some(Forget::Room(scene.room.id)),
                    "forget-me" => turn.forget = heard.by.as_ref().map(|by| Forget::Person(by.id)),
                    "time" => turn.says.push(said(None, How::New, Urgency::Answer, &now.timestamp().to_string())),
                    other => panic!("{other}"),
                }
            }
        }
        What::Pressed { data, on, .. } => {
            let text = format!("{data} on {}", on.as_deref().unwrap_or("nothing"));
            turn.says.push(said(None, How::New, Urgency::Answer, &text));
        }
        What::Rang { bells } => {
            let rung: Vec<String> = bells.iter().map(|(at, _)| at.timestamp().to_string()).collect();
            if rung.contains(&"13".to_owned()) {
                panic!("unlucky");
            }
            if rung.contains(&"99".to_owned()) {
                turn.bells = Some(vec![bell(99)]); // a room that asks for the past again and again
            }
            turn.says.push(said(None, How::New, Urgency::Due, &format!("rang {}", rung.join(" "))));
        }
        What::Document { content: Document::Text(text), .. } => {
            turn.says.push(said(None, How::New, Urgency::Answer, text));
        }
        What::Removed => {
            room.gone = true;
            turn.says.push(said(None, How::New, Urgency::Answer, "nobody hears this"));
        }
        _ => {}
    }
    turn.room = Some(room);
    turn
}

fn at(second: i64) -> DateTime<Utc> {
    DateTime::from_timestamp(second, 0).unwrap()
}

fn bell(second: i64) -> Bell {
    Bell { at: at(second), kind: BellKind::Note { name: second.to_string() } }
}

fn rosa() -> Speaker {
    Speaker { id: ROSA, name: "Rosa".into(), username: None, language: Some("en".into()), admin: true, inside: None }
}

fn heard(room: RoomId, what: What) -> Heard {
    let kind = if room.0 > 0 { RoomKind::Private } else { RoomKind::Group };
    Heard { room, kind, by: Some(rosa()), for_group: false, what }
}

fn said(room: RoomId, text: &str) -> Heard {
    heard(room, What::Said { text: text.into(), addressed: true, reply_to: None, edited: false })
}

fn pressed(room: RoomId, data: &str) -> Heard {
    heard(room, What::Pressed { press: "p1".into(), data: data.into(), on: Some("job".into()) })
}

fn engine_over(book: Arc<dyn Book>) -> Engine {
    Engine::new(book, Arc::new(Plain), obey).unwrap()
}

fn engine() -> Engine {
    engine_over(Arc::new(SledBook::temporary().unwrap()))
}

fn hear(engine: &Engine, heard: Heard) {
    engine.accept([heard]).unwrap();
    engine.work(at(0)).unwrap();
}

/// Sends everything, numbering messages from `first`; what was sent: chat, text.
fn drain_from(engine: &Engine, first: i64) -> Vec<(i64, String)> {
    let mut sent = Vec::new();
    while let Some(next) = engine.claim(|_, _| true).unwrap() {
        let number = next.shown.filter(|_| next.message.how == How::Edit).unwrap_or(first + sent.len() as i64);
        engine.sent(next.id, Some(number)).unwrap();
        sent.push((next.message.chat().map_or(0, |chat| chat.0), next.message.html));
    }
    sent
}

fn texts(engine: &Engine) -> Vec<String> {
    drain_from(engine, 1000).into_iter().map(|(_, text)| text).collect()
}

fn claim(engine: &Engine) -> Outgoing {
    engine.claim(|_, _| true).unwrap().unwrap()
}

#[test]
fn a_delivery_that_comes_twice_is_decided_once() {
    let engine = engine();
    let batch = [(Some(UpdateId(5)), said(GROUP, "say a")), (Some(UpdateId(5)), said(GROUP, "say a"))];
    assert_eq!(engine.accept(batch).unwrap(), 1);
    engine.work(at(0)).unwrap();
    assert_eq!(engine.accept([(Some(UpdateId(5)), said(GROUP, "say a"))]).unwrap(), 0);
    assert_eq!(engine.accept([(Some(UpdateId(4)), said(GROUP, "say b"))]).unwrap(), 1); // out of order, but new
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["a", "b"]);
}

#[test]
fn what_was_accepted_decided_or_claimed_before_a_restart_goes_on_after_it() {
    let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
    let engine = engine_over(Arc::clone(&book));
    engine.accept([(Some(UpdateId(1)), said(GROUP, "say one"))]).unwrap();
    engine.work(at(0)).unwrap();
    claim(&engine);
    engine.accept([(Some(UpdateId(2)), said(GROUP, "say two"))]).unwrap();
    drop(engine);
    let engine = engine_over(book);
    assert_eq!(engine.accept([(Some(UpdateId(2)), said(GROUP, "say two"))]).unwrap(), 0);
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["one", "two"]);
    assert_eq!(engine.pages().room(GROUP).unwrap().unwrap().plans_made, 2);
}

#[test]
fn a_panic_costs_one_short_apology_and_nothing_else() {
    let engine = engine();
    engine.accept([said(GROUP, "panic"), said(GROUP, "say next")]).unwrap();
    assert_eq!(engine.work(at(0)).unwrap(), 2);
    assert_eq!(texts(&engine), ["telegram-sorry", "next"]);
    assert_eq!(engine.work(at(0)).unwrap(), 0);
}

/// Started over `book`, and ended in the middle of the first turn, `times` in a row; the time it was `now`.
fn ended_in_its_turn(book: &Arc<dyn Book>, note: &Note, times: usize, now: i64) {
    for _ in 0..times {
        let counted = usize::from(*note.lock().unwrap() != UnderWay::Nothing);
        engine_over(Dying::over(book, counted, note)).work(at(now)).unwrap_err();
    }
}

/// A calm program after what happened.
fn go_on(book: &Arc<dyn Book>, note: &Note) -> Engine {
    engine_over(Dying::over(book, usize::MAX, note))
}

#[test]
fn what_was_cut_off_in_its_turn_again_and_again_is_tried_alone_when_all_is_calm() {
    let (book, note): (Arc<dyn Book>, Note) = (Arc::new(SledBook::temporary().unwrap()), Note::default());
    engine_over(Arc::clone(&book)).accept([said(GROUP, "say sound"), said(GROUP, "say next")]).unwrap();
    ended_in_its_turn(&book, &note, 3, 0);
    let engine = go_on(&book, &note);
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["next"], "nobody waits for it");
    engine.work(at(59)).unwrap();
    assert_eq!(texts(&engine), [""; 0]);
    // And again it is cut off, with nothing else to do.
    drop(engine);
    let engine = engine_over(Dying::over(&book, 0, &note));
    engine.work(at(100)).unwrap();
    engine.work(at(160)).unwrap_err();
    let engine = go_on(&book, &note);
    assert_eq!(engine.work(at(200)).unwrap(), 0);
    assert_eq!(engine.hear([said(GROUP, "say more")], Some(at(201))).unwrap().turns, 1);
    assert_eq!(engine.work(at(260)).unwrap(), 1);
    assert_eq!(texts(&engine), ["more", "sound"]);
}

#[test]
fn what_ends_the_program_even_alone_is_set_aside() {
    let (book, note): (Arc<dyn Book>, Note) = (Arc::new(SledBook::temporary().unwrap()), Note::default());
    engine_over(Arc::clone(&book)).accept([said(GROUP, "say bomb"), said(GROUP, "say next")]).unwrap();
    ended_in_its_turn(&book, &note, 3, 0);
    go_on(&book, &note).work(at(0)).unwrap();
    for _ in 0..2 {
        let counted = usize::from(*note.lock().unwrap() != UnderWay::Nothing);
        let engine = engine_over(Dying::over(&book, counted, &note));
        engine.work(at(100)).unwrap();
        engine.work(at(160)).unwrap_err();
    }
    let engine = go_on(&book, &note);
    engine.work(at(200)).unwrap();
    assert_eq!(texts(&engine), ["next", "telegram-sorry"]);
}

#[test]
fn a_program_that_ends_before_its_turn_or_a_disk_that_refuses_says_nothing_against_what_waits() {
    let inner = SledBook::temporary().unwrap();
    let book = Arc::new(Failing { inner, refuse: false.into(), committed: Mutex::default() });
    let (rows, note): (Arc<dyn Book>, Note) = (book.clone(), Note::default());
    go_on(&rows, &note).accept([said(GROUP, "say sound"), said(GROUP, "say next")]).unwrap();
    for _ in 0..20 {
        drop(go_on(&rows, &note)); // killed while it greets the platform
        book.refuse.store(true, Ordering::SeqCst);
        go_on(&rows, &note).work(at(0)).unwrap_err();
        book.refuse.store(false, Ordering::SeqCst);
    }
    let engine = go_on(&rows, &note);
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["sound", "next"]);
}

#[test]
fn what_ends_the_program_as_it_is_heard_is_taken_in_first_the_next_time_and_waits_in_the_end() {
    let (book, note): (Arc<dyn Book>, Note) = (Arc::new(SledBook::temporary().unwrap()), Note::default());
    let told = || [(Some(UpdateId(1)), said(GROUP, "say bomb")), (Some(UpdateId(2)), said(GROUP, "say next"))];
    // Heard, and ended in the middle of the turn: nothing is taken in, and the platform tells it again.
    engine_over(Dying::over(&book, 0, &note)).hear(told(), Some(at(0))).unwrap_err();
    let again = engine_over(Dying::over(&book, 1, &note));
    assert_eq!(again.hear(told(), Some(at(0))).unwrap(), Taken { new: 2, turns: 0, more: true });
    again.work(at(0)).unwrap_err();
    ended_in_its_turn(&book, &note, 2, 0);
    let engine = go_on(&book, &note);
    // What is told now waits for what was heard before.
    assert_eq!(engine.hear([said(GROUP, "say late")], Some(at(0))).unwrap().turns, 0);
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["next", "late"]);
}

#[test]
fn a_refused_commit_of_what_is_heard_takes_nothing_in() {
    let book =
        Arc::new(Failing { inner: SledBook::temporary().unwrap(), refuse: true.into(), committed: Mutex::default() });
    let engine = engine_over(book.clone());
    let told = || [(Some(UpdateId(1)), said(GROUP, "say one").into()), (Some(UpdateId(2)), file(GROUP, "a"))];
    let told = || told().map(|(update, arrival): (_, Arrival)| Arrival { update, ..arrival });
    engine.hear(told(), Some(at(0))).unwrap_err();
    assert!(engine.files_wanted().is_empty());
    book.refuse.store(false, Ordering::SeqCst);
    assert_eq!(engine.hear(told(), Some(at(0))).unwrap(), Taken { new: 2, turns: 1, more: false });
    assert_eq!(engine.files_wanted().len(), 1);
    assert_eq!(texts(&engine), ["one"]);
}

#[test]
fn hearing_is_taking_in_and_deciding_and_tells_whether_there_is_more_to_do() {
    let engine = engine();
    let twice = [(Some(UpdateId(1)), said(GROUP, "say one")), (Some(UpdateId(1)), said(GROUP, "say one"))];
    assert_eq!(engine.hear(twice, Some(at(0))).unwrap(), Taken { new: 1, turns: 1, more: false });
    let again = [(Some(UpdateId(1)), said(GROUP, "say one"))];
    assert_eq!(engine.hear(again, Some(at(0))).unwrap(), Taken { new: 0, turns: 0, more: false });
    assert_eq!(
        engine.hear([said(GROUP, "job carve 10")], Some(at(0))).unwrap(),
        Taken { new: 1, turns: 1, more: true } // it set a bell
    );
    assert_eq!(engine.hear([said(GROUP, "say two")], None).unwrap(), Taken { new: 1, turns: 0, more: true });
    assert_eq!(engine.work(at(0)).unwrap(), 1);
    assert_eq!(texts(&engine)[0], "one");
}

#[test]
fn a_start_that_ends_before_the_turn_is_tried_holds_nothing_against_it() {
    let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
    engine_over(Arc::clone(&book)).accept([said(GROUP, "say patience")]).unwrap();
    for _ in 0..10 {
        engine_over(Arc::clone(&book));
    }
    let engine = engine_over(book);
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["patience"]);
}

/// A file sent to `room`, not fetched yet.
fn file(room: RoomId, id: &str) -> Arrival {
    let what = What::Document { name: "cook.csv".into(), content: Document::Lost };
    Arrival { file: Some(id.to_owned()), ..Arrival::from(heard(room, what)) }
}

#[test]
fn what_came_with_a_file_waits_for_it_alone_and_survives_a_restart() {
    let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
    let mut engine = engine_over(Arc::clone(&book));
    engine.accept([file(GROUP, "a"), file(OTHER, "b"), said(GROUP, "say at once").into()]).unwrap();
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["at once"]);
    assert!(!engine.is_at_rest(at(0)).unwrap());
    for _ in 0..5 {
        engine = engine_over(Arc::clone(&book)); // each start would count against something undecided
        engine.work(at(0)).unwrap();
    }
    let wanted = engine.files_wanted();
    assert_eq!(wanted.iter().map(|(_, file)| file.as_str()).collect::<Vec<_>>(), ["a", "b"]);
    engine.file_is_there(wanted[1].0, Document::Text("second".into())).unwrap();
    engine = engine_over(book);
    assert_eq!(engine.files_wanted(), [wanted[0].clone()], "what is there is not fetched again");
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["second"]);
    engine.file_is_there(wanted[0].0, Document::Text("first".into())).unwrap();
    engine.file_is_there(wanted[0].0, Document::Text("twice".into())).unwrap();
    engine.work(at(0)).unwrap();
    engine.work(at(0)).unwrap();
    assert_eq!(texts(&engine), ["twice"], "told before its turn, decided once");
    assert!(engine.is_at_rest(at(0)).unwrap());
}

#[test]
fn a_file_on_its_way_brings_nobody_back_who_asked_to_be_forgotten() {
    for farewell in ["forget", "forget-me"] {
        let engine = engine();
        engine.accept([file(GROUP, "a"), said(GROUP, farewell).into()]).unwrap();
        engine.work(at(0)).unwrap();
        let wanted = engine.files_wanted();
        engine.file_is_there(wanted[0].0, Document::Text("late".into())).unwrap();
        engine.work(at(0)).unwrap();
        assert!(texts(&engine).is_empty(), "{farewell}");
        assert!(engine.is_at_rest(at(0)).unwrap(), "{farewell}");
    }
}

#[test]
fn several_messages_are_claimed_and_reported_together_one_a_chat() {
    let book = Arc::new(SledBook::temporary().unwrap());
    let engine = engine_over(Arc::clone(&book) as Arc<dyn Book>);
    for room in [GROUP, OTHER] {
        hear(&engine, said(room, "due first\nsay second"));
    }
    let claimed = engine.claim_up_to(10, |_, _| true).unwrap();
    let words = |claimed: &[Outgoing]| claimed.iter().map(|out| out.message.html.clone()).collect::<Vec<_>>();
    assert_eq!(words(&claimed), ["second", "second"], "the most urgent of each chat");
    assert!(engine.claim_up_to(10, |_, _| true).unwrap().is_empty(), "both chats wait");
    engine.all_sent(&[(claimed[0].id, Some(1)), (claimed[1].id, Some(2))]).unwrap();
    let claimed = engine.claim_up_to(1, |_, _| true).unwrap();
    assert_eq!(words(&claimed), ["first"]);
    engine.all_sent(&[(claimed[0].id, Some(3))]).unwrap();
    assert_eq!(engine.key_of(claimed[0].message.chat().unwrap(), 3).unwrap().as_deref(), Some("job"));
    assert_eq!(texts(&engine), ["first"], "the other chat's");
    drop(engine);
    assert!(texts(&engine_over(book)).is_empty(), "nothing of it comes back");
}

#[test]
fn a_change_written_down_while_its_message_is_under_way_never_passes_it() {
    for restart in [false, true] {
        let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
        let mut engine = engine_over(Arc::clone(&book));
        hear(&engine, said(GROUP, "board call"));
        let under_way = claim(&engine);
        hear(&engine, said(GROUP, "edit-now answered")); // more urgent than what it changes
        if restart {
            engine = engine_over(book);
        } else {
            engine.failed(under_way.id, Failure::Later, at(0)).unwrap();
        }
        assert_eq!(texts(&engine), ["call", "answered"], "restart: {restart}");
    }
}

#[test]
fn bells_are_replaced_as_a_whole_and_ring_together_oldest_first() {
    let engine = engine();
    hear(&engine, said(GROUP, "bells 500 30 10"));
    hear(&engine, said(OTHER, "bells 20"));
    hear(&engine, said(GROUP, "bells 40 12 600"));
    assert_eq!(engine.next_bell().unwrap(), Some(at(12)));
    assert_eq!(engine.ring(at(11)).unwrap(), 0);
    assert_eq!(engine.ring(at(50)).unwrap(), 2);
    assert_eq!(texts(&engine), ["rang 12 40", "rang 20"]);
    assert_eq!(engine.next_bell().unwrap(), Some(at(600)));
    assert_eq!(engine.ring(at(50)).unwrap(), 0);
}

#[test]
fn a_crowd_of_calls_goes_ahead_of_its_time_earliest_first_and_says_the_hour() {
    let engine = engine();
    // 3,000 are due at one minute, and take 150 s. Food safety hangs on one of them, another is due a little earlier.
    let ask = |room: i64, text: &str| said(RoomId(room), text);
    let crowd = (1..=3000).map(|room| ask(room, if room == 7 { "job pull 1000" } else { "job carve 1000" }));
    engine.accept(crowd.chain([ask(9000, "job carve 990")])).unwrap();
    engine.work(at(0)).unwrap();
    assert_eq!(engine.ring(at(800)).unwrap(), 0, "200 s are enough");
    assert!(!engine.is_crowded());
    assert_eq!(engine.ring(at(845)).unwrap(), 200, "155 s are just enough");
    assert!(engine.is_crowded());
    assert_eq!(engine.ring(at(846)).unwrap(), 0, "no more than can soon be said");
    let first = claim(&engine);
    assert_eq!((first.message.chat(), first.message.html.as_str()), (Some(RoomId(9000)), "room-call-ahead\nrang 990"));
    engine.sent(first.id, Some(1)).unwrap();
    let mut rung = 200;
    while rung < 3000 {
        drain_from(&engine, 1);
        let more = engine.ring(at(847)).unwrap();
        assert!(more > 0, "{rung}");
        rung += more;
    }
    assert_eq!(rung, 3000, "all but one");
    drain_from(&engine, 1);
    assert_eq!(engine.ring(at(847)).unwrap(), 0);
    assert_eq!(engine.next_bell().unwrap(), Some(at(1000)));
    assert_eq!(engine.ring(at(1000)).unwrap(), 1);
    let told = drain_from(&engine, 1);
    let late = told.iter().find(|(chat, _)| *chat == 7).unwrap();
    assert_eq!(late.1, "rang 1000", "at its minute nothing needs the hour");
}

#[test]
fn without_a_crowd_nothing_rings_before_its_time() {
    let engine = engine();
    engine.accept((1..=1500).map(|room| said(RoomId(room), "job carve 1000"))).unwrap();
    engine.work(at(0)).unwrap();
    for now in [0, 500, 900, 999] {
        assert_eq!(engine.ring(at(now)).unwrap(), 0, "at {now}");
    }
    assert_eq!(engine.ring(at(1000)).unwrap(), 200, "in batches, so that nobody waits for the last");
}

#[test]
fn what_food_safety_hangs_on_rings_before_all_that_is_due_with_it() {
    let engine = engine();
    let job = |room: i64| if room == 599 { "job pull 1000" } else { "job carve 1000" };
    engine.accept((1..=600).map(|room| said(RoomId(room), job(room)))).unwrap();
    engine.work(at(0)).unwrap();
    assert_eq!(engine.ring(at(1000)).unwrap(), 200);
    let first = claim(&engine);
    assert_eq!(first.message.chat(), Some(RoomId(599)));
    assert_eq!(
        (engine.ring(at(1000)).unwrap(), engine.ring(at(1001)).unwrap(), engine.ring(at(1001)).unwrap()),
        (200, 200, 0)
    );
}

#[test]
fn a_bell_whose_turn_fails_says_so_and_does_not_ring_again() {
    let engine = engine();
    hear(&engine, said(GROUP, "bells 13"));
    engine.ring(at(20)).unwrap();
    assert_eq!(texts(&engine), ["telegram-sorry-bell"]);
    assert_eq!(engine.next_bell().unwrap(), None);
}

#[test]
fn a_room_that_sets_bells_in_the_past_does_not_ring_without_end() {
    let engine = engine();
    hear(&engine, said(GROUP, "bells 99"));
    assert_eq!(engine.ring(at(200)).unwrap(), 1);
    assert_eq!(engine.ring(at(200)).unwrap(), 0);
    assert_eq!(engine.next_bell().unwrap(), Some(at(201)));
}

#[test]
fn the_most_urgent_goes_first_and_chats_take_turns() {
    let engine = engine();
    hear(&engine, said(GROUP, "say g1\nsay g2\nsay g3\nalarm fire"));
    hear(&engine, said(OTHER, "say o1\ndue o2"));
    let order: Vec<_> = drain_from(&engine, 1).into_iter().map(|(_, text)| text).collect();
    assert_eq!(order, ["fire", "o1", "g1", "g2", "g3", "o2"]);
}

#[test]
fn one_chat_that_may_not_be_written_to_does_not_hold_up_another() {
    let engine = engine();
    hear(&engine, said(GROUP, "alarm g"));
    hear(&engine, said(OTHER, "board o"));
    let next = engine.claim(|room, _| room != GROUP).unwrap().unwrap();
    assert_eq!(next.message.html, "o");
    assert!(engine.claim(|room, _| room == OTHER).unwrap().is_none(), "one at a time in a chat");
    engine.failed(next.id, Failure::Later, at(0)).unwrap();
    assert_eq!(engine.claim(|room, _| room == OTHER).unwrap().unwrap().message.html, "o");
}

#[test]
fn edits_of_one_board_collapse_into_the_newest() {
    let engine = engine();
    hear(&engine, said(GROUP, "board first"));
    assert_eq!(drain_from(&engine, 42).len(), 1);
    for n in 0..20 {
        hear(&engine, said(GROUP, &format!("edit {n}")));
    }
    assert_eq!(engine.waiting(), 1);
    let next = claim(&engine);
    assert_eq!((next.message.html.as_str(), next.shown), ("19", Some(42)));
    // One that comes while the last is under way waits for it.
    hear(&engine, said(GROUP, "edit 20"));
    assert!(engine.claim(|_, _| true).unwrap().is_none());
    engine.sent(next.id, Some(42)).unwrap();
    assert_eq!(texts(&engine), ["20"]);
}

#[test]
fn a_message_still_waiting_goes_out_with_its_newest_words() {
    let engine = engine();
    hear(&engine, said(GROUP, "board old\nedit-now new\nclose"));
    let next = claim(&engine);
    assert_eq!((next.message.how, next.message.html.as_str()), (How::New, "new"));
    assert!(next.message.buttons.is_empty(), "closed before it was sent");
    engine.sent(next.id, Some(1)).unwrap();
    assert_eq!(engine.waiting(), 0);
}

#[test]
fn a_new_message_overtakes_edits_of_the_old_one() {
    let engine = engine();
    hear(&engine, said(GROUP, "board first"));
    drain_from(&engine, 1);
    hear(&engine, said(GROUP, "edit stale\nboard second"));
    assert_eq!(drain_from(&engine, 2), [(GROUP.0, "second".to_owned())]);
    hear(&engine, said(GROUP, "edit third"));
    assert_eq!(claim(&engine).shown, Some(2));
}

#[test]
fn an_edit_that_someone_waits_for_does_not_pass_what_it_edits() {
    let engine = engine();
    hear(&engine, said(GROUP, "board one\nboard two\nsay hello\nedit-now three"));
    assert_eq!(texts(&engine), ["one", "three", "hello"]);
}

#[test]
fn an_edit_whose_message_is_gone_goes_as_new() {
    let engine = engine();
    hear(&engine, said(GROUP, "board first"));
    drain_from(&engine, 9);
    assert_eq!(engine.key_of(GROUP, 9).unwrap().as_deref(), Some("board"));
    hear(&engine, said(GROUP, "edit second"));
    engine.failed(claim(&engine).id, Failure::Vanished, at(0)).unwrap();
    assert_eq!(engine.key_of(GROUP, 9).unwrap(), None);
    let next = claim(&engine);
    assert_eq!((next.message.html.as_str(), next.shown), ("second", None));
}

#[test]
fn closing_what_was_never_shown_sends_nothing() {
    let engine = engine();
    hear(&engine, said(GROUP, "close"));
    assert!(engine.claim(|_, _| true).unwrap().is_none());
    assert_eq!(engine.waiting(), 0);
}

#[test]
fn a_refused_message_does_not_come_back() {
    let engine = engine();
    hear(&engine, said(GROUP, "say a\nsay b"));
    engine.failed(claim(&engine).id, Failure::Refused, at(0)).unwrap();
    assert_eq!(texts(&engine), ["b"]);
}

#[test]
fn every_press_is_answered_first_even_without_words() {
    let engine = engine();
    hear(&engine, said(GROUP, "alarm fire"));
    hear(&engine, pressed(GROUP, "done"));
    let next = claim(&engine);
    assert_eq!((next.message.to, next.message.html.as_str()), (To::Press("p1".into()), ""));
}

#[test]
fn a_private_press_about_a_group_is_heard_in_the_group_without_a_crown() {
    let engine = Engine::new(Arc::new(SledBook::temporary().unwrap()), Arc::new(Plain), |scene, heard, _| {
        assert!(!heard.by.as_ref().unwrap().admin);
        let What::Pressed { data, on, .. } = &heard.what else { panic!() };
        let text = format!("{} {:?} {data} {on:?}", scene.room.id.0, heard.kind);
        Turn { says: vec![Say::new(To::Room(scene.room.id), words(&text))], ..Turn::default() }
    })
    .unwrap();
    hear(&engine, pressed(ROSA.private_room(), "r-100:job:done"));
    assert_eq!(texts(&engine), ["", "-100 Private job:done Some(\"job\")"]);
}

#[test]
fn data_and_links_lead_from_one_s_own_private_chat_into_a_group_and_nowhere_else() {
    let engine = Engine::new(Arc::new(SledBook::temporary().unwrap()), Arc::new(Plain), |scene, heard, _| {
        let what = match &heard.what {
            What::Pressed { data, .. } => data,
            What::Said { text, .. } => text,
            _ => panic!(),
        };
        let text = format!("{} {what}", scene.room.id.0);
        let room = Room { plans_made: 1, ..scene.room.clone() };
        Turn { room: Some(room), says: vec![Say::new(To::Room(scene.room.id), words(&text))], ..Turn::default() }
    })
    .unwrap();
    let tom = RoomId(8);
    for room in [GROUP, OTHER, tom, ROSA.private_room()] {
        hear(&engine, said(room, "known from now on"));
    }
    drain_from(&engine, 1);
    let link = |room: RoomId| format!("/start {:016x}{}", room.0.cast_unsigned(), "0".repeat(32));
    let table = [
        (pressed(ROSA.private_room(), "r-100:x"), "-100 x"),
        (pressed(ROSA.private_room(), "r-100:r-200:x"), "-100 r-200:x"), // one step, and the rest means nothing
        (pressed(ROSA.private_room(), "r7:x"), "7 x"),
        (pressed(ROSA.private_room(), "r8:x"), "7 r8:x"),
        (pressed(ROSA.private_room(), "r9223372036854775808:x"), "7 r9223372036854775808:x"),
        (pressed(OTHER, "r-100:x"), "-200 r-100:x"),
        (pressed(OTHER, "r-200:x"), "-200 x"),
        (pressed(OTHER, "r8:x"), "-200 r8:x"),
    ];
    for (heard, expected) in table {
        hear(&engine, heard);
        assert_eq!(texts(&engine), ["", expected]);
    }
    for (from, to, expected) in
        [(ROSA.private_room(), GROUP, GROUP), (ROSA.private_room(), tom, RoomId(7)), (OTHER, GROUP, OTHER)]
    {
        hear(&engine, said(from, &link(to)));
        assert_eq!(texts(&engine), [format!("{} {}", expected.0, link(to))]);
    }
}

#[test]
fn a_book_is_kept_by_one_bot() {
    let dir = tempfile::tempdir().unwrap();
    let book = Arc::new(SledBook::open(&dir.path().join("one")).unwrap());
    let engine = engine_over(book.clone());
    assert!(engine.is_kept_by(4242).unwrap() && engine.is_kept_by(4242).unwrap());
    assert!(!engine.is_kept_by(5151).unwrap());
    let file = dir.path().join("backup");
    engine.backup(&file).unwrap();
    carvetime::book::restore(&file, &dir.path().join("two")).unwrap();
    let restored = engine_over(Arc::new(SledBook::open(&dir.path().join("two")).unwrap()));
    assert!(!restored.is_kept_by(5151).unwrap());
    assert!(restored.is_kept_by(4242).unwrap());
}

#[test]
fn buttons_sent_privately_about_a_group_say_which_group() {
    let engine = engine();
    hear(&engine, said(GROUP, "tell come here"));
    let next = claim(&engine);
    assert_eq!(next.message.chat(), Some(ROSA.private_room()));
    assert_eq!(next.message.buttons[0][0].data, "r-100:d");
}

#[test]
fn a_group_that_moves_takes_everything_along_at_once_and_once() {
    let engine = engine();
    hear(&engine, said(GROUP, "board shown"));
    drain_from(&engine, 1);
    hear(&engine, said(GROUP, "bells 10 20\nsay waiting"));
    let new = RoomId(-1000);
    let moved = || heard(GROUP, What::Migrated { to: new });
    engine.accept([moved(), moved(), said(GROUP, "edit late")]).unwrap();
    engine.work(at(0)).unwrap();
    assert_eq!(engine.pages().room(GROUP).unwrap(), None);
    let room = engine.pages().room(new).unwrap().unwrap();
    assert_eq!((room.id, room.plans_made), (new, 4));
    assert_eq!(engine.key_of(new, 1).unwrap(), None, "numbers of the old group mean nothing in the new");
    assert_eq!(drain_from(&engine, 2), [(new.0, "waiting".to_owned()), (new.0, "late".to_owned())]);
    engine.ring(at(15)).unwrap();
    assert_eq!(drain_from(&engine, 3), [(new.0, "rang 10".to_owned())]);
    assert_eq!(engine.next_bell().unwrap(), Some(at(20)));
}

#[test]
fn a_message_refused_because_the_group_moved_follows_it() {
    let engine = engine();
    hear(&engine, said(GROUP, "say a\nsay b"));
    engine.failed(claim(&engine).id, Failure::Migrated(RoomId(-1000)), at(0)).unwrap();
    assert_eq!(drain_from(&engine, 1), [(-1000, "a".to_owned()), (-1000, "b".to_owned())]);
}

#[test]
fn a_message_under_way_when_the_group_moved_takes_nothing_with_it_when_it_comes_back() {
    let engine = engine();
    hear(&engine, said(GROUP, "join\nsay a\nsay b\nbells 10"));
    let (to, under_way) = (RoomId(-1000), claim(&engine));
    hear(&engine, heard(GROUP, What::Migrated { to }));
    engine.failed(under_way.id, Failure::Migrated(to), at(0)).unwrap();
    let room = engine.pages().room(to).unwrap().unwrap();
    assert_eq!((room.members.as_slice(), room.plans_made), ([ROSA].as_slice(), 2), "the room stands as it was");
    let sent = drain_from(&engine, 1);
    assert_eq!(sent, [(to.0, "a".to_owned()), (to.0, "b".to_owned())]);
    assert_eq!(engine.next_bell().unwrap(), Some(at(10)));
}

#[test]
fn what_was_said_in_the_new_group_before_the_move_was_known_is_kept() {
    let engine = engine();
    let to = RoomId(-1000);
    hear(&engine, said(GROUP, "bells 10"));
    hear(&engine, said(to, "join\nbells 5"));
    hear(&engine, heard(GROUP, What::Migrated { to }));
    let room = engine.pages().room(to).unwrap().unwrap();
    assert_eq!(room.members, [ROSA]);
    assert_eq!(engine.next_bell().unwrap(), Some(at(10)), "one plan, one set of bells");
}

#[test]
fn a_lost_chat_is_told_to_the_room_and_its_messages_vanish() {
    let engine = engine();
    hear(&engine, said(GROUP, "say a\nsay b"));
    engine.failed(claim(&engine).id, Failure::Gone, at(0)).unwrap();
    assert_eq!(engine.waiting(), 0);
    assert!(engine.pages().room(GROUP).unwrap().unwrap().gone);
}

#[test]
fn a_call_that_cannot_reach_a_person_privately_is_made_in_the_room() {
    let engine = engine();
    hear(&engine, said(GROUP, "know\ntell your turn"));
    engine.failed(claim(&engine).id, Failure::Gone, at(0)).unwrap();
    assert_eq!(drain_from(&engine, 1), [(GROUP.0, "telegram-unreachable\nyour turn".to_owned())]);
}

#[test]
fn a_forgotten_room_leaves_no_row() {
    let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
    let engine = engine_over(Arc::clone(&book));
    let topic = |text| Arrival { topic: Some(Topic::Thread(3)), ..Arrival::from(said(GROUP, text)) };
    engine.accept([topic("board shown")]).unwrap();
    engine.work(at(0)).unwrap();
    drain_from(&engine, 1);
    engine.accept([topic("bells 10\nsay waiting"), topic("say bye\nforget")]).unwrap();
    engine.work(at(0)).unwrap();
    assert_eq!(drain_from(&engine, 2), [(GROUP.0, "bye".to_owned())]);
    for shelf in Shelf::ALL.into_iter().filter(|shelf| *shelf != Shelf::Meta) {
        assert_eq!(book.rows(shelf, &[], &[u8::MAX; 40], 10).unwrap(), [], "{shelf:?}");
    }
}

#[test]
fn a_farewell_takes_the_place_of_the_question_before_it() {
    let engine = engine();
    hear(&engine, said(GROUP, "farewell sure?"));
    drain_from(&engine, 40);
    hear(&engine, said(GROUP, "bells 10\nfarewell bye\nforget"));
    let next = claim(&engine);
    assert_eq!((next.message.html.as_str(), next.shown), ("bye", Some(40)));
    engine.sent(next.id, Some(40)).unwrap();
    assert_eq!(engine.key_of(GROUP, 40).unwrap(), None);
    assert_eq!(engine.next_bell().unwrap(), None, "no bell outlives its room");
}

#[test]
fn a_question_that_opens_a_reply_field_replies_to_who_spoke() {
    let engine = Engine::new(Arc::new(SledBook::temporary().unwrap()), Arc::new(Plain), |_, _, _| {
        let asked = Say { ask_reply: true, ..Say::new(To::Room(GROUP), words("how heavy?")) };
        Turn { says: vec![asked, Say::new(To::Room(GROUP), words("and more"))], ..Turn::default() }
    })
    .unwrap();
    engine.accept([Arrival { message: Some(31), ..Arrival::from(said(GROUP, "x")) }]).unwrap();
    engine.work(at(0)).unwrap();
    let first = claim(&engine);
    assert_eq!(first.message.reply_to, Some(31));
    engine.sent(first.id, None).unwrap();
    assert_eq!(claim(&engine).message.reply_to, None);
}

#[test]
fn a_forgotten_person_is_out_of_every_room() {
    let engine = engine();
    hear(&engine, said(GROUP, "join\nknow"));
    hear(&engine, said(OTHER, "join"));
    hear(&engine, said(ROSA.private_room(), "say hi\nforget-me"));
    assert_eq!(engine.pages().person(ROSA).unwrap(), None);
    assert_eq!(engine.pages().room(ROSA.private_room()).unwrap(), None);
    for room in [GROUP, OTHER] {
        assert!(engine.pages().room(room).unwrap().unwrap().members.is_empty());
    }
}

#[test]
fn answers_go_to_the_topic_they_were_asked_in_and_else_where_the_plan_is_at_home() {
    let engine = engine();
    let hear_in = |topic| {
        engine.accept([Arrival { topic, ..Arrival::from(said(GROUP, "say a")) }]).unwrap();
        engine.work(at(0)).unwrap();
        let next = claim(&engine);
        engine.sent(next.id, None).unwrap();
        next.topic
    };
    assert_eq!(hear_in(Some(Topic::Thread(7))), Some(7));
    assert_eq!(hear_in(None), Some(7));
    assert_eq!(hear_in(Some(Topic::General)), None);
}

#[test]
fn what_was_said_during_an_outage_counts_from_when_it_was_said() {
    let engine = engine();
    let arrival = |sent| Arrival { sent: Some(at(sent)), ..Arrival::from(said(GROUP, "time")) };
    engine.accept([arrival(100), arrival(3550)]).unwrap();
    engine.work(at(3600)).unwrap();
    assert_eq!(texts(&engine), ["100", "3600"]);
}

/// A book that can be told to refuse writing.
struct Failing {
    inner: SledBook,
    refuse: AtomicBool,
    committed: Mutex<Vec<Changes>>,
}

impl Book for Failing {
    fn get(&self, shelf: Shelf, key: &[u8]) -> Result<Option<Vec<u8>>, BookError> {
        self.inner.get(shelf, key)
    }
    fn rows(&self, shelf: Shelf, from: &[u8], below: &[u8], limit: usize) -> Result<Vec<Row>, BookError> {
        self.inner.rows(shelf, from, below, limit)
    }
    fn commit(&self, changes: &Changes) -> Result<(), BookError> {
        if self.refuse.load(Ordering::SeqCst) {
            return Err(BookError::Damaged { detail: "told to".into() });
        }
        self.committed.lock().unwrap().push(changes.clone());
        self.inner.commit(changes)
    }
    fn sync(&self, loss: Loss) -> Result<(), BookError> {
        self.inner.sync(loss)
    }
    fn attempt(&self, under_way: UnderWay) -> Result<(), BookError> {
        self.inner.attempt(under_way)
    }
    fn was_attempting(&self) -> UnderWay {
        self.inner.was_attempting()
    }
}

/// The note beside the rows.
type Note = Arc<Mutex<UnderWay>>;

/// A book of a program that ends after so many commits: the next one never comes.
struct Dying {
    inner: Arc<dyn Book>,
    commits_left: Mutex<usize>,
    ended: AtomicBool,
    /// The note beside the rows, which the next program finds.
    note: Note,
    stood: UnderWay,
}

impl Dying {
    fn over(inner: &Arc<dyn Book>, commits: usize, note: &Note) -> Arc<Self> {
        let stood = std::mem::take(&mut *note.lock().unwrap());
        let (inner, note) = (Arc::clone(inner), Arc::clone(note));
        Arc::new(Self { inner, commits_left: Mutex::new(commits), ended: AtomicBool::new(false), note, stood })
    }
}

impl Book for Dying {
    fn get(&self, shelf: Shelf, key: &[u8]) -> Result<Option<Vec<u8>>, BookError> {
        self.inner.get(shelf, key)
    }
    fn rows(&self, shelf: Shelf, from: &[u8], below: &[u8], limit: usize) -> Result<Vec<Row>, BookError> {
        self.inner.rows(shelf, from, below, limit)
    }
    fn commit(&self, changes: &Changes) -> Result<(), BookError> {
        let mut left = self.commits_left.lock().unwrap();
        *left = left.checked_sub(1).ok_or_else(|| {
            self.ended.store(true, Ordering::SeqCst);
            BookError::Damaged { detail: "ended".into() }
        })?;
        self.inner.commit(changes)
    }
    fn sync(&self, loss: Loss) -> Result<(), BookError> {
        self.inner.sync(loss)
    }
    fn attempt(&self, under_way: UnderWay) -> Result<(), BookError> {
        if !self.ended.load(Ordering::SeqCst) {
            *self.note.lock().unwrap() = under_way;
        }
        Ok(())
    }
    fn was_attempting(&self) -> UnderWay {
        self.stood
    }
}

#[test]
fn a_refused_commit_changes_nothing_and_can_be_tried_again() {
    let book =
        Arc::new(Failing { inner: SledBook::temporary().unwrap(), refuse: false.into(), committed: Mutex::default() });
    let engine = engine_over(book.clone());
    hear(&engine, said(GROUP, "board one"));
    drain_from(&engine, 1);
    engine.accept([(Some(UpdateId(1)), said(GROUP, "edit two\nsay hello"))]).unwrap();
    book.refuse.store(true, Ordering::SeqCst);
    engine.work(at(0)).unwrap_err();
    engine.accept([(Some(UpdateId(2)), said(GROUP, "say lost"))]).unwrap_err();
    assert_eq!(engine.waiting(), 0);
    book.refuse.store(false, Ordering::SeqCst);
    assert_eq!(engine.accept([(Some(UpdateId(2)), said(GROUP, "say found"))]).unwrap(), 1);
    assert_eq!(engine.work(at(0)).unwrap(), 2);
    assert_eq!(texts(&engine), ["hello", "found", "two"]);
}

/// Rooms and things said in them, and what stands in a commit of each turn.
fn crowd_of_turns(engine: &Engine) -> usize {
    let say = |room, n: i64| (Some(UpdateId(n as u64)), said(RoomId(room), &format!("join\nknow\nbells {n}\nsay {n}")));
    engine.accept([say(-1, 101), say(-2, 102), say(-1, 103), say(-3, 104), say(-1, 105)]).unwrap()
}

#[test]
fn turns_that_wait_together_are_one_commit_of_whole_turns() {
    let book =
        Arc::new(Failing { inner: SledBook::temporary().unwrap(), refuse: false.into(), committed: Mutex::default() });
    let engine = engine_over(book.clone());
    let turns = crowd_of_turns(&engine);
    let before = book.committed.lock().unwrap().len();
    assert_eq!(engine.work(at(0)).unwrap(), turns);
    let committed = book.committed.lock().unwrap();
    assert_eq!(committed.len(), before + 1);
    let parts: Vec<Changes> = committed.last().unwrap().parts().collect();
    assert_eq!(parts.len(), turns);
    for part in parts {
        // All of a turn stands in one part: it leaves the inbox, and its room, bell and message are there with it.
        let rows = |shelf, put| part.iter().filter(|(at, _, value)| *at == shelf && value.is_some() == put).count();
        let all = [(Shelf::Inbox, false), (Shelf::Rooms, true), (Shelf::Bells, true), (Shelf::Outbox, true)];
        assert_eq!(all.map(|(shelf, put)| rows(shelf, put)), [1; 4], "{part:?}");
    }
}

#[test]
fn of_turns_committed_together_a_refused_disk_takes_none() {
    let book =
        Arc::new(Failing { inner: SledBook::temporary().unwrap(), refuse: false.into(), committed: Mutex::default() });
    let engine = engine_over(book.clone());
    let turns = crowd_of_turns(&engine);
    book.refuse.store(true, Ordering::SeqCst);
    engine.work(at(0)).unwrap_err();
    assert_eq!((engine.waiting(), engine.next_bell().unwrap()), (0, None));
    assert_eq!(engine.pages().room(RoomId(-1)).unwrap(), None);
    book.refuse.store(false, Ordering::SeqCst);
    assert_eq!(engine.work(at(0)).unwrap(), turns);
    assert_eq!(engine.waiting(), turns);
    // The bells of each room are those its last turn set.
    assert_eq!(engine.next_bell().unwrap(), Some(at(102)));
}

#[test]
fn a_turn_finds_what_the_one_before_it_in_the_batch_has_made() {
    let (one_by_one, together) = (engine(), engine());
    let texts_of: Vec<String> = (1..6).map(|n| format!("join\nknow\nbells {n}\nboard {n}\nsay {n}")).collect();
    for text in &texts_of {
        hear(&one_by_one, said(GROUP, text));
    }
    together.accept(texts_of.iter().map(|text| said(GROUP, text))).unwrap();
    together.work(at(0)).unwrap();
    assert_eq!(together.pages().room(GROUP).unwrap(), one_by_one.pages().room(GROUP).unwrap());
    assert_eq!(together.next_bell().unwrap(), one_by_one.next_bell().unwrap());
    assert_eq!(texts(&together), texts(&one_by_one));
}

#[test]
fn what_waits_at_the_start_is_decided_one_by_one_and_then_together() {
    let book =
        Arc::new(Failing { inner: SledBook::temporary().unwrap(), refuse: false.into(), committed: Mutex::default() });
    crowd_of_turns(&engine_over(book.clone()));
    let engine = engine_over(book.clone());
    let late = (200..203).map(|n| (Some(UpdateId(n)), said(GROUP, "say late")));
    engine.accept(late).unwrap();
    book.committed.lock().unwrap().clear();
    assert_eq!(engine.work(at(0)).unwrap(), 8);
    let parts: Vec<usize> = book.committed.lock().unwrap().iter().map(|changes| changes.parts().count()).collect();
    // After the last that was there it is seen that there are no more.
    assert_eq!(parts, [1, 1, 1, 1, 1, 1, 2]);
}

#[test]
fn what_came_together_is_known_again_and_forgotten_when_it_is_old() {
    let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
    let told = |engine: &Engine, updates: std::ops::Range<u64>| {
        engine.accept(updates.map(|update| (Some(UpdateId(update)), said(GROUP, "say more")))).unwrap()
    };
    let engine = engine_over(Arc::clone(&book));
    let batch = |n: u64| n * 100..n * 100 + 100;
    (0..60).for_each(|n| assert_eq!(told(&engine, batch(n)), 100));
    let rows = book.rows(Shelf::Handled, &[], &[u8::MAX; 9], usize::MAX).unwrap().len();
    assert_eq!(rows, 41, "whole batches, no fewer than 4,096 numbers");
    let engine = engine_over(Arc::clone(&book));
    (60 - 40..60).for_each(|n| assert_eq!(told(&engine, batch(n)), 0));
    assert_eq!(told(&engine, 5_990..6_010), 10);
}

#[test]
fn numbers_kept_by_an_earlier_version_still_count() {
    let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
    let mut changes = Changes::default();
    for (sequence, update) in [(0_u64, 71), (1, 72)] {
        // A row a number, as the first version kept them.
        let json = update.to_string();
        let mut sum = crc32fast::Hasher::new();
        sum.update(&[1]);
        sum.update(json.as_bytes());
        let row = [[1].as_slice(), &sum.finalize().to_be_bytes(), json.as_bytes()].concat();
        changes.put(Shelf::Handled, sequence.to_be_bytes(), row);
    }
    book.commit(&changes).unwrap();
    let engine = engine_over(book);
    assert_eq!(engine.accept((70..74).map(|n| (Some(UpdateId(n)), said(GROUP, "say more")))).unwrap(), 2);
}

/// What can happen to an engine.
#[derive(Debug, Clone)]
enum Do {
    Hear { update: u64, room: i64, bells: Vec<i64> },
    Ring(i64),
    Send { fails: bool },
    Restart,
}

fn doing() -> impl Strategy<Value = Do> {
    prop_oneof![
        4 => (0..30_u64, -3..0_i64, proptest::collection::vec(14..90_i64, 0..3))
            .prop_map(|(update, room, bells)| Do::Hear { update, room, bells }),
        2 => (0..100_i64).prop_map(Do::Ring),
        4 => any::<bool>().prop_map(|fails| Do::Send { fails }),
        1 => Just(Do::Restart),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    /// The model: update ids seen, bells of each room, and the texts each chat still has to get, in order.
    #[test]
    fn nothing_is_lost_or_doubled_whatever_happens_in_between(todo in proptest::collection::vec(doing(), 1..40)) {
        let book: Arc<dyn Book> = Arc::new(SledBook::temporary().unwrap());
        let mut engine = engine_over(Arc::clone(&book));
        let mut seen = std::collections::BTreeSet::new();
        let mut bells: BTreeMap<i64, Vec<i64>> = BTreeMap::new();
        let mut owed: BTreeMap<i64, Vec<(u8, String)>> = BTreeMap::new();
        for step in todo {
            match step {
                Do::Hear { update, room, bells: mut set } => {
                    let list: Vec<String> = set.iter().map(ToString::to_string).collect();
                    let text = format!("bells {}\nsay {update}", list.join(" "));
                    engine.accept([(Some(UpdateId(update)), said(RoomId(room), &text))]).unwrap();
                    engine.work(at(0)).unwrap();
                    if seen.insert(update) {
                        set.sort_unstable();
                        bells.insert(room, set);
                        owed.entry(room).or_default().push((2, update.to_string()));
                    }
                }
                Do::Ring(now) => {
                    engine.ring(at(now)).unwrap();
                    for (room, set) in &mut bells {
                        let (due, later): (Vec<i64>, Vec<i64>) = set.iter().partition(|at| **at <= now);
                        if !due.is_empty() {
                            let rung: Vec<String> = due.iter().map(ToString::to_string).collect();
                            owed.entry(*room).or_default().push((3, format!("rang {}", rung.join(" "))));
                        }
                        *set = later;
                    }
                }
                Do::Send { fails } => {
                    let Some(next) = engine.claim(|_, _| true).unwrap() else { continue };
                    let chat = owed.get_mut(&next.message.chat().unwrap().0).unwrap();
                    chat.sort_by_key(|(rank, _)| *rank); // stable: the order said, within an urgency
                    prop_assert_eq!(&chat[0].1, &next.message.html);
                    if fails {
                        engine.failed(next.id, Failure::Later, at(0)).unwrap();
                    } else {
                        engine.sent(next.id, Some(1)).unwrap();
                        chat.remove(0);
                    }
                }
                Do::Restart => {
                    drop(engine);
                    engine = engine_over(Arc::clone(&book));
                }
            }
            let first = bells.values().flatten().min().map(|second| at(*second));
            prop_assert_eq!(engine.next_bell().unwrap(), first);
            prop_assert_eq!(engine.waiting(), owed.values().map(Vec::len).sum::<usize>());
        }
    }
}

#[test]
fn a_room_nobody_knows_comes_as_new_and_whom_nobody_knows_is_left_to_it() {
    let engine = Engine::new(Arc::new(SledBook::temporary().unwrap()), Arc::new(Plain), |scene, _, _| {
        assert_eq!(scene.room, Room::new(GROUP, RoomKind::Group));
        assert!(scene.people.is_empty(), "else the room would think her kept already");
        Turn { says: vec![Say::new(To::Room(GROUP), words("ok"))], ..Turn::default() }
    })
    .unwrap();
    hear(&engine, said(GROUP, "anything"));
    assert_eq!(texts(&engine), ["ok"]);
}
