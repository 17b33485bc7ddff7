//! The loopback server itself: it must behave as the platform does, or every other test proves nothing.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime_tests::loopback::{Fault, Loopback, Rule, TOKEN};
use serde_json::{Value, json};
use std::time::{Duration, Instant};

/// A bot made of nothing but HTTP calls.
struct Bot {
    url: String,
    runtime: tokio::runtime::Runtime,
    client: reqwest::Client,
}

impl Bot {
    fn on(server: &Loopback) -> Self {
        let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(1).enable_all().build().unwrap();
        Self { url: format!("{}/bot{TOKEN}", server.url()), runtime, client: reqwest::Client::new() }
    }

    fn call(&self, method: &str, args: Value) -> Value {
        let request = self.client.post(format!("{}/{method}", self.url)).json(&args).send();
        self.runtime.block_on(async { request.await.unwrap().json().await.unwrap() })
    }

    fn updates(&self, offset: i64) -> Vec<Value> {
        self.call("getUpdates", json!({"offset": offset}))["result"].as_array().unwrap().clone()
    }
}

#[test]
fn an_update_comes_again_until_a_higher_offset_confirms_it() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    server.person("Rosa");
    server.tell("Rosa", "one");
    server.tell("Rosa", "two");
    let first = bot.updates(0);
    assert_eq!(first.len(), 2);
    assert_eq!(bot.updates(0).len(), 2, "asking again confirms nothing");
    let id = first[0]["update_id"].as_i64().unwrap();
    let rest = bot.updates(id + 1);
    assert_eq!(rest.len(), 1);
    assert_eq!(rest[0]["message"]["text"], "two");
    assert_eq!(server.pending(), 1);
    assert_eq!(bot.call("getupdates", json!({"offset": -1}))["result"].as_array().unwrap().len(), 1);
    assert_eq!(bot.updates(id + 2).len(), 0);
}

#[test]
fn a_long_poll_waits_for_news_and_a_second_poller_ends_the_first() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    server.person("Rosa");
    let poll = |timeout: u64| {
        let request = bot.client.post(format!("{}/getUpdates", bot.url)).json(&json!({"timeout": timeout})).send();
        bot.runtime.spawn(async { request.await.unwrap().json::<Value>().await.unwrap() })
    };
    let waiting = poll(30);
    std::thread::sleep(Duration::from_millis(50));
    server.tell("Rosa", "hello");
    let came = bot.runtime.block_on(waiting).unwrap();
    assert_eq!(came["result"][0]["message"]["text"], "hello");
    let id = came["result"][0]["update_id"].as_i64().unwrap();
    assert!(bot.updates(id + 1).is_empty());
    let first = poll(30);
    std::thread::sleep(Duration::from_millis(50));
    let second = poll(0);
    assert_eq!(bot.runtime.block_on(first).unwrap()["error_code"], 409);
    assert_eq!(bot.runtime.block_on(second).unwrap()["ok"], true);
}

#[test]
fn messages_are_sent_edited_pressed_and_read_back() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    let rosa = server.person("Rosa");
    let markup = json!({"inline_keyboard": [[{"text": "Accept", "callback_data": "a:1"}]]});
    let args = json!({"chat_id": rosa, "text": "<b>Plan</b> &amp; go", "parse_mode": "HTML", "reply_markup": markup});
    let sent = bot.call("SendMessage", args.clone());
    assert_eq!(sent["result"]["text"], "Plan & go");
    assert_eq!(sent["result"]["entities"][0]["type"], "bold");
    let id = sent["result"]["message_id"].as_i64().unwrap();
    let mut again = args;
    again["message_id"] = json!(id);
    let same = bot.call("editMessageText", again.clone());
    assert!(same["description"].as_str().unwrap().contains("message is not modified"), "{same}");
    again["text"] = json!("Changed");
    assert_eq!(bot.call("editMessageText", again)["ok"], true);
    let press = server.press("Rosa", rosa, "accept");
    let update = bot.updates(0).pop().unwrap();
    assert_eq!(update["callback_query"]["data"], "a:1");
    assert_eq!(bot.call("answerCallbackQuery", json!({"callback_query_id": press, "text": "Good"}))["ok"], true);
    assert_eq!(server.answer(&press).text, "Good");
    // Each line begins with its time, "11-25 22:42 ", the buttons under it with blanks.
    let transcript = server.transcript(rosa);
    let untimed =
        |line: &str| line.strip_prefix("    ").map_or(line.get(12..).unwrap_or_default(), |_| line).to_owned() + "\n";
    assert_eq!(
        transcript.lines().map(untimed).collect::<String>(),
        "carvetime: Plan & go\n    [Accept]\ncarvetime (edit of 1): Changed\n    [Accept]\nRosa > accept\ncarvetime (notice to Rosa): Good\n"
    );
    assert_eq!(bot.call("answerCallbackQuery", json!({"callback_query_id": "gone"}))["error_code"], 400);
}

#[test]
fn files_go_up_and_come_down() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    let rosa = server.person("Rosa");
    let part = reqwest::multipart::Part::bytes(vec![7; 9]).file_name("plan.ics");
    let form = reqwest::multipart::Form::new()
        .text("chat_id", rosa.to_string())
        .text("document", "attach://file0")
        .part("file0", part);
    let request = bot.client.post(format!("{}/sendDocument", bot.url)).multipart(form).send();
    let sent: Value = bot.runtime.block_on(async { request.await.unwrap().json().await.unwrap() });
    assert_eq!(sent["result"]["document"]["file_name"], "plan.ics");
    server.upload("Rosa", rosa, "log.csv", b"minutes,pit_f");
    let id = bot.updates(0)[0]["message"]["document"]["file_id"].clone();
    let path = bot.call("getFile", json!({"file_id": id}))["result"]["file_path"].as_str().unwrap().to_string();
    let request = bot.client.get(format!("{}/file/bot{TOKEN}/{path}", server.url())).send();
    let bytes = bot.runtime.block_on(async { request.await.unwrap().bytes().await.unwrap() });
    assert_eq!(&bytes[..], b"minutes,pit_f");
}

#[test]
fn what_telegram_would_not_take_is_refused_and_remembered() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    let rosa = server.person("Rosa");
    let long = "x".repeat(4097);
    let data = json!({"inline_keyboard": [[{"text": "A", "callback_data": "d".repeat(65)}]]});
    let bad = [
        json!({"chat_id": rosa, "text": long}),
        json!({"chat_id": rosa, "text": " "}),
        json!({"chat_id": rosa, "text": "a < b", "parse_mode": "HTML"}),
        json!({"chat_id": rosa, "text": "a", "reply_markup": data}),
        json!({"chat_id": rosa, "text": "a", "reply_markup": {"inline_keyboard": [[{"text": "", "callback_data": "d"}]]}}),
        json!({"chat_id": rosa, "text": "a", "disable_notification": "yes"}),
        json!({"chat_id": rosa, "text": "a", "colour": "red"}),
        json!({"text": "a"}),
    ];
    let count = bad.len();
    for args in bad {
        let reply = bot.call("sendMessage", args.clone());
        assert_eq!(reply["error_code"], 400, "{args}");
    }
    assert_eq!(bot.call("sendPigeon", json!({}))["error_code"], 404);
    assert_eq!(server.violations().len(), count + 1, "{:#?}", server.violations());
    assert!(server.said(rosa).is_empty());
    server.clear_violations();
}

#[test]
fn who_may_not_be_written_to_gives_403_and_a_moved_group_says_where() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    let rosa = server.stranger("Rosa", "en");
    let say = |chat: i64| bot.call("sendMessage", json!({"chat_id": chat, "text": "a"}));
    assert_eq!(say(rosa)["error_code"], 403);
    server.tell("Rosa", "/start");
    assert_eq!(say(rosa)["ok"], true);
    server.block("Rosa");
    assert_eq!(say(rosa)["error_code"], 403);
    let group = server.group("Kitchen", &["Rosa", "Tom"]);
    assert_eq!(say(group)["ok"], true);
    let moved = server.migrate(group);
    assert_eq!(say(group)["parameters"]["migrate_to_chat_id"], moved);
    assert_eq!(say(moved)["ok"], true);
    server.remove_bot("Tom", moved);
    assert_eq!(say(moved)["error_code"], 403);
    assert_eq!(bot.call("pinChatMessage", json!({"chat_id": rosa, "message_id": 1}))["error_code"], 403);
}

#[test]
fn privacy_mode_hides_what_is_not_meant_for_the_bot() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    let group = server.group("Kitchen", &["Rosa"]);
    let joined = bot.updates(0).pop().unwrap();
    assert_eq!(joined["my_chat_member"]["new_chat_member"]["status"], "member");
    let after = joined["update_id"].as_i64().unwrap() + 1;
    server.say("Rosa", group, "nice weather");
    assert!(bot.updates(after).is_empty());
    server.say("Rosa", group, "/plan");
    let sent = bot.call("sendMessage", json!({"chat_id": group, "text": "yes?"}));
    server.reply("Rosa", group, sent["result"]["message_id"].as_i64().unwrap(), "14 lb");
    let seen = bot.updates(after);
    assert_eq!(seen[0]["message"]["entities"][0]["type"], "bot_command");
    assert_eq!(seen[1]["message"]["reply_to_message"]["text"], "yes?");
    server.set_privacy(false);
    server.say("Rosa", group, "nice weather");
    assert_eq!(bot.updates(after).len(), 3);
}

#[test]
fn faults_meet_the_call_they_are_meant_for() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    let rosa = server.person("Rosa");
    let args = json!({"chat_id": rosa, "text": "a"});
    server.fault(Rule { method: Some("sendMessage"), skip: 1, times: 1, fault: Fault::TooMany(3) });
    assert_eq!(bot.call("sendMessage", args.clone())["ok"], true);
    assert_eq!(bot.call("getMe", json!({}))["ok"], true);
    assert_eq!(bot.call("sendMessage", args.clone())["parameters"]["retry_after"], 3);
    assert_eq!(bot.call("sendMessage", args.clone())["ok"], true);
    let lost = |fault: Fault| {
        server.fault(Rule::next("sendMessage", fault));
        let request = bot.client.post(format!("{}/sendMessage", bot.url)).json(&args).send();
        bot.runtime.block_on(async { request.await?.json::<Value>().await }).is_err()
    };
    assert!(lost(Fault::Reset));
    assert_eq!(server.said(rosa).len(), 2, "a reset call is not applied");
    assert!(lost(Fault::LoseReply));
    assert_eq!(server.said(rosa).len(), 3, "a call whose reply is lost is applied");
    server.fault(Rule::next("getMe", Fault::Delay(Duration::from_millis(80))));
    let start = Instant::now();
    assert_eq!(bot.call("getMe", json!({}))["ok"], true);
    assert!(start.elapsed() >= Duration::from_millis(80));
    server.set_token_good(false);
    assert_eq!(bot.call("getMe", json!({}))["error_code"], 401);
}

#[test]
fn updates_can_come_twice_and_out_of_order() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    server.person("Rosa");
    for n in 0..8 {
        server.tell("Rosa", &n.to_string());
    }
    let texts = |updates: Vec<Value>| -> Vec<String> {
        updates.iter().map(|update| update["message"]["text"].as_str().unwrap().to_string()).collect()
    };
    let ordered = texts(bot.updates(0));
    server.shuffle(Some(5));
    let mut mixed = texts(bot.updates(0));
    assert_ne!(mixed, ordered);
    mixed.sort();
    assert_eq!(mixed, ordered);
    server.shuffle(None);
    let last = bot.updates(0)[7]["update_id"].as_i64().unwrap();
    assert!(bot.updates(last + 1).is_empty());
    server.deliver_again(2);
    assert_eq!(texts(bot.updates(last + 1)), ["7", "6"]);
}

#[test]
fn form_parameters_work_as_well_as_json() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    let rosa = server.person("Rosa");
    let body = format!("chat_id={rosa}&text=a%20%26+b&disable_notification=true");
    let request = bot.client.post(format!("{}/sendMessage", bot.url));
    let request = request.header("content-type", "application/x-www-form-urlencoded").body(body).send();
    let sent: Value = bot.runtime.block_on(async { request.await.unwrap().json().await.unwrap() });
    assert_eq!(sent["result"]["text"], "a & b");
    assert!(server.said(rosa)[0].silent);
}

#[test]
fn the_flood_limits_bite_when_they_are_enforced() {
    let server = Loopback::start();
    let bot = Bot::on(&server);
    let group = server.group("Kitchen", &["Rosa"]);
    server.enforce_limits();
    let replies: Vec<bool> = (0..21)
        .map(|n| bot.call("sendMessage", json!({"chat_id": group, "text": n.to_string()}))["ok"] == true)
        .collect();
    assert!(replies[..20].iter().all(|ok| *ok) && !replies[20], "{replies:?}");
}
