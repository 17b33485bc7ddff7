//! What the platform does to a bot: updates twice and out of order, refusals, floods, broken connections, a second
//! instance, a wrong token, people who block it, groups that move.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::kitchen::Kitchen;
use carvetime_tests::loopback::{Fault, Loopback, Rule};
use carvetime_tests::program::Program;
use std::time::Duration;

/// Answered in one message, whatever else stands.
const QUESTION: &str = "/move";

carvetime_tests::both_ways! {
    a_question_is_answered_and_a_press_too
    updates_that_come_twice_are_answered_once
    updates_out_of_order_are_all_answered
    a_flood_wait_is_waited_out_and_other_chats_go_on
    a_broken_connection_is_tried_again
    a_server_error_is_tried_again
    a_lost_reply_repeats_a_message_rather_than_losing_it
    a_person_who_blocks_the_bot_stops_nobody_else
    a_request_to_stop_is_heeded_at_once
    a_group_that_becomes_a_supergroup_keeps_its_plan
    a_topic_is_answered_in_the_topic
    names_with_markup_direction_marks_and_emoji_break_nothing
    a_long_outage_of_the_network_loses_nothing
}

fn a_question_is_answered_and_a_press_too() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    telegram.tell("Rosa", QUESTION);
    let answer = telegram.expect(rosa, "plan");
    let press = telegram.press_data("Rosa", &answer, "no such data", "(forged)");
    assert!(!telegram.answer(&press).text.is_empty(), "a stale button says that it is stale");
}

fn updates_that_come_twice_are_answered_once() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    for _ in 0..3 {
        telegram.tell("Rosa", QUESTION);
    }
    telegram.settle();
    let answers = telegram.said(rosa).len();
    telegram.deliver_again(3);
    telegram.tell("Rosa", QUESTION);
    telegram.settle();
    assert_eq!(telegram.said(rosa).len(), answers + 1, "{}", telegram.transcript(rosa));
    telegram.deliver_again(4);
    kitchen.reopen();
    telegram.tell("Rosa", QUESTION);
    telegram.settle();
    assert_eq!(telegram.said(rosa).len(), answers + 2, "after a restart: {}", telegram.transcript(rosa));
}

fn updates_out_of_order_are_all_answered() {
    let telegram = Loopback::start();
    let rosa = telegram.person("Rosa");
    telegram.shuffle(Some(7));
    for tablespoons in 1..=6 {
        telegram.tell("Rosa", &format!("{tablespoons} tbsp table salt in flake kosher"));
    }
    let kitchen = Kitchen::with(telegram);
    let telegram = &kitchen.telegram;
    telegram.settle();
    telegram.wait_calls("six answers", |calls| calls.iter().filter(|call| call.method == "sendMessage").count() >= 6);
    telegram.settle();
    assert_eq!(telegram.said(rosa).len(), 6, "{}", telegram.transcript(rosa));
}

fn a_flood_wait_is_waited_out_and_other_chats_go_on() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let (rosa, tom) = (telegram.person("Rosa"), telegram.person("Tom"));
    telegram.fault(Rule::next("sendMessage", Fault::TooMany(2)));
    telegram.tell("Rosa", QUESTION);
    telegram.wait_calls("a refused call", |calls| calls.iter().any(|call| call.ok == Some(false)));
    telegram.tell("Tom", QUESTION);
    telegram.expect(tom, "plan");
    telegram.expect(rosa, "plan");
    telegram.settle();
    assert_eq!(telegram.said(rosa).len(), 1);
    let tries: Vec<_> =
        telegram.calls().into_iter().filter(|call| call.args.get("chat_id") == Some(&rosa.into())).collect();
    assert!(tries[1].at - tries[0].at >= Duration::from_secs(2), "not before the platform's time");
}

fn a_broken_connection_is_tried_again() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    telegram.fault(Rule::next("sendMessage", Fault::Reset));
    telegram.fault(Rule::next("getUpdates", Fault::Reset));
    telegram.tell("Rosa", QUESTION);
    telegram.expect(rosa, "plan");
}

fn a_server_error_is_tried_again() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    telegram.fault(Rule::next("sendMessage", Fault::Refuse(502, "Bad Gateway")));
    telegram.tell("Rosa", QUESTION);
    telegram.expect(rosa, "plan");
}

fn a_lost_reply_repeats_a_message_rather_than_losing_it() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    telegram.fault(Rule::next("sendMessage", Fault::LoseReply));
    telegram.tell("Rosa", QUESTION);
    telegram.wait_calls("two tries", |calls| calls.iter().filter(|call| call.method == "sendMessage").count() >= 2);
    telegram.settle();
    let said = telegram.said(rosa);
    assert!((1..=2).contains(&said.len()), "{}", telegram.transcript(rosa));
}

fn a_person_who_blocks_the_bot_stops_nobody_else() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let (_, tom) = (telegram.person("Rosa"), telegram.person("Tom"));
    telegram.tell("Rosa", QUESTION);
    telegram.block("Rosa");
    telegram.tell("Tom", QUESTION);
    telegram.expect(tom, "plan");
    telegram.settle();
    assert!(kitchen.program().runs());
}

#[test]
fn a_second_instance_ends_one_of_the_two_with_a_line() {
    let kitchen = Kitchen::open();
    let other = tempfile::tempdir().unwrap();
    let second = Program::serve(&kitchen.telegram, &other.path().join("data"));
    let first = kitchen.program().clone();
    for _ in 0..600 {
        if !first.runs() || !second.runs() {
            break;
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    let ended = if first.runs() { second } else { first };
    assert_eq!(ended.wait(Duration::from_secs(1)).code(), Some(1));
    assert_eq!(ended.log().trim().lines().count(), 1, "one line: {}", ended.log());
}

#[test]
fn a_wrong_token_is_one_line_and_exit_status_1() {
    let telegram = Loopback::start();
    telegram.set_token_good(false);
    let folder = tempfile::tempdir().unwrap();
    let program = Program::serve(&telegram, &folder.path().join("data"));
    assert_eq!(program.wait(Duration::from_secs(15)).code(), Some(1));
    let log = program.log();
    assert_eq!(log.trim().lines().count(), 1, "one line: {log}");
    assert!(log.contains("TELOXIDE_TOKEN"), "it says what to look at: {log}");
    assert!(!log.contains(carvetime_tests::loopback::TOKEN), "the token is nobody's business");
}

#[test]
fn a_locked_folder_is_one_line_and_exit_status_1() {
    let kitchen = Kitchen::open();
    let second = Program::serve(&Loopback::start(), &kitchen.data());
    assert_eq!(second.wait(Duration::from_secs(15)).code(), Some(1));
    let log = second.log();
    let folder = kitchen.data().display().to_string();
    assert!(log.trim().lines().count() == 1 && log.contains(&folder), "one line, with the folder: {log}");
}

fn a_request_to_stop_is_heeded_at_once() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    telegram.tell("Rosa", QUESTION);
    telegram.expect(rosa, "plan");
    kitchen.program().terminate();
    let status = kitchen.program().clone().wait(Duration::from_secs(10));
    assert_eq!(status.code(), Some(0));
}

#[test]
fn the_commands_are_set_in_every_language_and_scope() {
    let kitchen = Kitchen::open();
    kitchen.telegram.settle();
    let commands = kitchen.telegram.commands();
    let languages: Vec<&String> = commands.keys().map(|(_, language)| language).collect();
    assert!(languages.iter().any(|language| language.is_empty()), "{commands:?}");
    assert!(languages.iter().any(|language| *language == "es"), "{commands:?}");
    let scopes: std::collections::BTreeSet<&String> = commands.keys().map(|(scope, _)| scope).collect();
    assert!(scopes.len() >= 2, "private chats and groups have their own lists: {scopes:?}");
    assert!(commands.values().all(|list| list.iter().any(|(name, _)| name == "plan")), "{commands:?}");
}

fn a_group_that_becomes_a_supergroup_keeps_its_plan() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let group = telegram.group("Kitchen", &["Rosa", "Tom"]);
    let board = kitchen.plan("Rosa", group);
    let moved = telegram.migrate(group);
    telegram.settle();
    telegram.say("Tom", moved, "/board");
    telegram.expect(moved, &board.text);
}

fn a_topic_is_answered_in_the_topic() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let forum = telegram.forum("Family", &["Rosa"]);
    telegram.say_in("Rosa", forum, 77, "/salt 2 tbsp table salt in flake kosher");
    let answer = telegram.expect(forum, "flake kosher salt");
    assert_eq!(answer.thread, Some(77));
}

fn names_with_markup_direction_marks_and_emoji_break_nothing() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let names = ["<b>Bob</b> & \"Co\"", "נועה לוי", "👨‍👩‍👧‍👦", "\u{202e}evil", &"very long name ".repeat(20)];
    let group = telegram.group("<i>Family</i> & friends", &names);
    kitchen.plan(names[0], group);
    let jobs = ["salt", "temper", "fire", "carve", "stand"];
    for (name, job) in names.iter().zip(jobs) {
        telegram.say(name, group, &format!("/take {job}"));
    }
    telegram.settle();
    telegram.say(names[1], group, "/board");
    telegram.settle();
    let words = telegram.transcript(group);
    assert!(!words.contains("&amp;") && !words.contains("&lt;"), "escaped twice:\n{words}");
    assert!(words.contains("<b>Bob</b> & \"Co\""), "{words}");
    assert!(kitchen.program().runs());
}

fn a_long_outage_of_the_network_loses_nothing() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    let rosa = telegram.person("Rosa");
    telegram.set_offline(true);
    telegram.tell("Rosa", QUESTION);
    std::thread::sleep(Duration::from_secs(2));
    telegram.set_offline(false);
    telegram.expect(rosa, "plan");
}
