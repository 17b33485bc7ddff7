//! `kill -9` at every call the program makes and at random moments: nothing heard is lost, nothing is decided twice.
//!
//! The witness is dinner itself. Each message moves it by one minute, so where it stands at the end counts the turns: too
//! early, and one was lost; too late, and one was decided twice.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::kitchen::Kitchen;
use carvetime_tests::loopback::{Fault, Rule};
use std::sync::Arc;
use std::time::{Duration, Instant};

/// Dinner in the board that `/board` puts up now, in minutes after midnight.
fn dinner(kitchen: &Kitchen, rosa: i64) -> u32 {
    kitchen.telegram.settle();
    kitchen.telegram.tell("Rosa", "/board");
    kitchen.telegram.settle();
    let board = kitchen.telegram.said(rosa).pop().unwrap().text.replace('\u{202f}', " ");
    let clock = regex::Regex::new(r"^Dinner .*?(\d{1,2}):(\d\d) (AM|PM)").unwrap();
    let found = clock.captures(&board).unwrap_or_else(|| panic!("no hour of dinner in {board}"));
    let number = |at: usize| found[at].parse::<u32>().unwrap();
    number(1) % 12 * 60 + number(2) + if &found[3] == "PM" { 720 } else { 0 }
}

/// Arms a kill at the `nth` call from now on, before it is applied or after.
fn arm(kitchen: &Kitchen, nth: usize, after: bool) {
    let program = kitchen.program().clone();
    let kill = move || program.kill();
    if after { kitchen.telegram.after_call(nth, kill) } else { kitchen.telegram.before_call(nth, kill) }
}

/// Waits until the program has been killed; one that makes fewer calls lives.
fn was_killed(kitchen: &Kitchen) -> bool {
    let program = kitchen.program().clone();
    for _ in 0..60 {
        if !program.runs() {
            return true;
        }
        std::thread::sleep(Duration::from_millis(10));
    }
    false
}

/// Every minute dinner moved by was answered, once at least, and dinner stands where the moves leave it.
fn all_moves_count_once(kitchen: &Kitchen, rosa: i64, before: u32, moved: u32) {
    let after = dinner(kitchen, rosa);
    let telegram = &kitchen.telegram;
    assert_eq!(after - before, moved, "{}", telegram.transcript(rosa));
    let answers: Vec<_> = telegram.said(rosa).into_iter().filter(|said| said.labels() == ["Undo"]).collect();
    for minute in before + 1..=before + moved {
        let hour = (minute / 60 + 11) % 12 + 1;
        let clock = format!("{hour}:{:02} {}", minute % 60, if minute < 720 { "AM" } else { "PM" });
        let told = answers.iter().any(|said| said.text.replace('\u{202f}', " ").contains(&clock));
        assert!(told, "nobody was told of {clock}:\n{}", telegram.transcript(rosa));
    }
}

#[test]
fn a_kill_at_any_call_of_a_turn_loses_nothing_and_decides_nothing_twice() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    kitchen.plan("Rosa", rosa);
    let before = dinner(&kitchen, rosa);
    let (mut moved, mut kills) = (0, 0);
    // A turn ends in three calls (the next poll, the answer, the board), in any order.
    // When the board is still to come depends on the sender's pace: go round again until enough turns were cut.
    for round in 0..4 {
        if round > 0 && kills >= 6 {
            break;
        }
        for nth in 0..4 {
            for after in [false, true] {
                arm(&kitchen, nth, after);
                telegram.tell("Rosa", "/move +1 min");
                moved += 1;
                kills += usize::from(was_killed(&kitchen));
                telegram.heal();
                kitchen.reopen();
                telegram.settle();
            }
        }
    }
    assert!(kills >= 6, "only {kills} kills");
    all_moves_count_once(&kitchen, rosa, before, moved);
}

#[test]
fn a_kill_at_any_call_of_the_start_loses_nothing_and_decides_nothing_twice() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    kitchen.plan("Rosa", rosa);
    let before = dinner(&kitchen, rosa);
    let (mut moved, mut kills) = (0, 0);
    for nth in 0..12 {
        for after in [false, true] {
            kitchen.program().kill();
            telegram.tell("Rosa", "/move +1 min");
            moved += 1;
            kitchen.reopen();
            arm(&kitchen, nth, after);
            kills += usize::from(was_killed(&kitchen));
            telegram.heal();
            kitchen.reopen();
            kitchen.wait_for_poll(telegram.call_count());
            telegram.settle();
        }
    }
    assert!(kills >= 20, "only {kills} kills");
    all_moves_count_once(&kitchen, rosa, before, moved);
}

#[test]
fn a_kill_while_a_file_is_fetched_loses_nothing_and_reads_it_once() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    kitchen.plan("Rosa", rosa);
    telegram.settle();
    for after in [false, true] {
        telegram.skip(rosa);
        let program = kitchen.program().clone();
        let kill: Arc<dyn Fn() + Send + Sync> = Arc::new(move || program.kill());
        telegram.fault(Rule::next("getFile", if after { Fault::After(kill) } else { Fault::Before(kill) }));
        let said = telegram.said(rosa).len();
        telegram.upload("Rosa", rosa, "no table.csv", b"not a log\n");
        assert!(was_killed(&kitchen), "it fetches the file");
        telegram.tell("Rosa", "is 158 for 2 minutes safe?");
        kitchen.reopen();
        telegram.expect(rosa, "158");
        telegram.settle();
        // The answer to the question, and one about the file.
        let answers = telegram.said(rosa).len() - said;
        assert_eq!(answers, 2, "{}", telegram.transcript(rosa));
        telegram.heal();
    }
}

#[test]
fn a_kill_at_any_moment_loses_nothing_and_decides_nothing_twice() {
    let seed: u64 = std::env::var("CARVETIME_SEED").ok().and_then(|text| text.parse().ok()).unwrap_or(17);
    println!("CARVETIME_SEED={seed}");
    let mut random = seed;
    let mut draw = |below: u64| {
        random = random.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (random >> 33) % below
    };
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    kitchen.plan("Rosa", rosa);
    let before = dinner(&kitchen, rosa);
    let mut moved = 0;
    for round in 0..12 {
        for _ in 0..=draw(3) {
            telegram.tell("Rosa", "/move +1 min");
            moved += 1;
            std::thread::sleep(Duration::from_millis(draw(30)));
        }
        std::thread::sleep(Duration::from_millis(draw(150)));
        kitchen.reopen();
        if round % 2 == 0 {
            std::thread::sleep(Duration::from_millis(draw(250)));
        } else {
            telegram.settle();
        }
    }
    all_moves_count_once(&kitchen, rosa, before, moved);
}

/// Killed in the middle of the same turns, start after start: what may have ended the program waits until all is calm, and is
/// decided then.
#[test]
fn many_kills_in_a_row_while_it_catches_up_lose_nothing() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    kitchen.plan("Rosa", rosa);
    let before = dinner(&kitchen, rosa);
    kitchen.program().kill();
    // Beside the moves something that takes long to read, on any machine: a kill meets it however fast the moves are.
    let long = "is 158 for 2 minutes safe when it was on the table since one and the bird stood at 150? ".repeat(45);
    let mut moved = 0;
    let doubted = || kitchen.program().log().matches("tried again later").count();
    // It is cut off where the note says that it is hearing or deciding.
    let note = kitchen.data().join("attempt");
    let wait_for = |under_way: bool| {
        let said = || std::fs::read(&note).ok().and_then(|note| note.first().map(|kind| *kind != b'0'));
        let until = Instant::now() + Duration::from_secs(5);
        while said() != Some(under_way) && Instant::now() < until {
            std::thread::sleep(Duration::from_micros(200));
        }
    };
    for _ in 0..40 {
        telegram.tell("Rosa", "/move +1 min");
        telegram.tell("Rosa", long.trim_end());
        moved += 1;
        kitchen.reopen();
        wait_for(false); // what its predecessor left there is read by now
        wait_for(true);
        kitchen.program().kill();
        if doubted() > 1 {
            break;
        }
    }
    assert!(doubted() > 1, "hardly any kill met a turn");
    kitchen.reopen();
    kitchen.wait_for_poll(telegram.call_count());
    telegram.settle();
    for minutes in [2, 4] {
        kitchen.wait_until(kitchen.clock.now() + chrono::TimeDelta::minutes(minutes));
    }
    all_moves_count_once(&kitchen, rosa, before, moved);
}
