//! Inline mode end to end: somebody types behind the bot's name, by polling and by webhook.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::kitchen::Kitchen;
use carvetime_tests::loopback::Loopback;
use carvetime_tests::program::{Program, carvetime};
use serde_json::Value;
use std::process::Command;
use std::time::Duration;

fn titles(answer: &Value) -> Vec<String> {
    let results = answer["results"].as_array().cloned().unwrap_or_default();
    results.iter().map(|result| result["title"].as_str().unwrap_or_default().to_string()).collect()
}

fn text(answer: &Value, nth: usize) -> String {
    answer["results"][nth]["input_message_content"]["message_text"].as_str().unwrap_or_default().to_string()
}

#[test]
fn a_conversion_comes_in_the_askers_units_and_the_rest_leads_to_the_private_chat() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    telegram.stranger("Rosa", "en");
    let ask = |query: &str| telegram.inline_answer(&telegram.inline("Rosa", query)).0;
    let table = ask("2 tbsp table");
    assert!(titles(&table)[0].contains("36 g"), "{table}");
    assert_eq!(table["is_personal"], true);
    let thaw = text(&ask("how long to thaw a 14 lb turkey"), 0);
    assert!(thaw.contains("14 lb") || thaw.contains("6.4 kg"), "{thaw}");
    let careful = text(&ask("turkey out for 3 hours, ok?"), 0);
    assert!(careful.contains("toxins"), "the caution comes with it: {careful}");
    assert_eq!(titles(&ask("")).len(), 3);
    let unread = ask("2 tb");
    assert!(titles(&unread).is_empty() && unread["button"]["start_parameter"] == "inline", "{unread}");

    // What she sets privately counts from the next query on.
    let rosa = telegram.id("Rosa");
    telegram.tell("Rosa", "/start inline");
    telegram.expect(rosa, "What's first?");
    telegram.tell("Rosa", "/settings español");
    telegram.expect(rosa, "Español");
    assert!(titles(&ask("2 cucharadas de sal fina"))[0].contains("cdas"));
    telegram.tell("Rosa", "mi sal: 1/4 cdta son 0,7 g");
    telegram.expect(rosa, "2,8 g");
    assert!(text(&ask("sal para un pavo de 5 kg"), 0).contains("tu propia sal"));

    // Forgotten, she is a stranger again.
    telegram.tell("Rosa", "/forget");
    telegram.expect(rosa, "?");
    let press = telegram.press("Rosa", rosa, "Sí");
    telegram.answer(&press);
    telegram.settle();
    assert!(!text(&ask("salt for a 12 lb turkey"), 0).contains("tu propia sal"));
    let log = kitchen.program().log();
    assert!(!log.contains("ERROR"), "{log}");
}

#[test]
fn every_keystroke_is_answered_within_a_tenth_of_a_second_and_leaves_no_trace() {
    let kitchen = Kitchen::open();
    let telegram = &kitchen.telegram;
    telegram.stranger("Tom", "en");
    let whole = "2 tbsp table salt in flake kosher";
    let mut times: Vec<Duration> =
        (1..=whole.len()).map(|end| telegram.inline_answer(&telegram.inline("Tom", &whole[..end])).1).collect();
    times.sort();
    let (middle, worst) = (times[times.len() / 2], times[times.len() - 1]);
    eprintln!("inline, from query to answer over HTTP: middle {middle:?}, worst {worst:?} of {}", times.len());
    // Debug build on a busy machine; the platform lets 30 s pass, a person typing about a tenth of one.
    assert!(middle < Duration::from_millis(100), "{times:?}");
    kitchen.program().kill();
    let book = carvetime::book::SledBook::open(&kitchen.data()).unwrap();
    let pages = carvetime::book::Pages::new(std::sync::Arc::new(book));
    let tom = carvetime::room::PersonId(telegram.id("Tom"));
    assert!(pages.person(tom).unwrap().is_none(), "whoever only asks inline is not kept");
}

#[test]
fn by_webhook_it_is_answered_too() {
    let telegram = Loopback::start();
    let folder = tempfile::tempdir().unwrap();
    let listen = std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap();
    let data = folder.path().join("data");
    let mut command = Command::new(carvetime());
    command.arg("serve").arg("--data").arg(&data);
    command.args(["--webhook", "https://cook.example/hook", "--listen", &listen.to_string()]);
    let _program = Program::start(command, &telegram, &data);
    telegram.wait_calls("the webhook", |calls| {
        calls.iter().any(|call| {
            call.method == "setWebhook" && call.args["allowed_updates"].to_string().contains("inline_query")
        })
    });
    telegram.deliver_to(&format!("http://{listen}"));
    telegram.stranger("Li", "en");
    let (answer, _) = telegram.inline_answer(&telegram.inline("Li", "2 tbsp table"));
    assert!(titles(&answer)[0].contains("36 g"), "{answer}");
}
