//! The Telegram front end around a stand-in for the room: real HTTP against the loopback Bot API server.
//!
//! Faults tried: refusals of every kind, lost replies, a network that is away, a restart with half the work done. What the
//! room says of a bird is tried elsewhere.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::SledBook;
use carvetime::engine::Engine;
use carvetime::room::turn::{File, FileContent};
use carvetime::room::{Bell, BellKind, Button, Document, Heard, How, RoomId, Say, Scene, To, Turn, Urgency, What};
use carvetime::telegram::{Options, ServeError, Server, Webhook};
use carvetime::words::{Arg, Text, Voice};
use carvetime_tests::both;
use carvetime_tests::loopback::{ChatId, Fault, Loopback, Rule, TOKEN};
use carvetime_tests::stage::free_address;
use chrono::{DateTime, TimeDelta, Utc};
use std::path::Path;
use std::sync::Arc;
use std::thread::JoinHandle;
use std::time::Duration;
use tokio::sync::oneshot;

/// Each language has this word with one argument; here it carries whatever a test says.
fn words(text: &str) -> Text {
    Text::new("telegram-unreachable").with("person", Arg::Verbatim(text.to_owned()))
}

/// The stand-in room: what is addressed to it is an instruction a line.
fn obey(scene: &Scene, heard: &Heard, now: DateTime<Utc>) -> Turn {
    let mut turn = Turn { room: Some(scene.room.clone()), ..Turn::default() };
    let here = To::Room(scene.room.id);
    let say = |text: &str| Say::new(here.clone(), words(text));
    let with_button =
        |say: Say| Say { buttons: vec![vec![Button { label: words("Done"), data: "done".into() }]], ..say };
    match &heard.what {
        What::Said { text, addressed: true, edited, .. } => {
            for line in text.lines() {
                let (verb, rest) = line.split_once(' ').unwrap_or((line, ""));
                match verb {
                    "/say" => turn.says.push(say(&format!("{rest}{}", if *edited { " (edited)" } else { "" }))),
                    "/ask" => turn.says.push(Say { key: Some("job".into()), ..with_button(say(rest)) }),
                    "/board" => turn.says.push(Say {
                        key: Some("board".into()),
                        how: How::Edit,
                        urgency: Urgency::Board,
                        pin: true,
                        ..say(rest)
                    }),
                    "/long" => turn.says.push(say(&"gravy ".repeat(1500))),
                    "/file" => turn.says.push(Say {
                        file: Some(File { name: rest.into(), content: FileContent::Bytes(b"\x89PNG bytes".to_vec()) }),
                        ..say("the file")
                    }),
                    "/place" => turn.says.push(Say { ask_place: true, ..say("where?") }),
                    "/reply" => turn.says.push(Say { ask_reply: true, ..say("how heavy?") }),
                    "/tell" => {
                        let by = heard.by.as_ref().unwrap();
                        turn.people.push(carvetime::room::state::Person::new(by));
                        turn.says.push(Say { to: To::Person(by.id), urgency: Urgency::Due, ..with_button(say(rest)) });
                    }
                    "/wake" => {
                        turn.bells = Some(vec![Bell {
                            at: now + TimeDelta::milliseconds(300),
                            kind: BellKind::Note { name: "n".into() },
                        }]);
                    }
                    "/admin" => turn.says.push(say(&format!("admin {:?}", heard.by.as_ref().map(|by| by.admin)))),
                    _ => turn.says.push(say(&format!("heard {line}"))),
                }
            }
        }
        What::Said { .. } => {}
        What::Pressed { data, on, press } => {
            turn.says.push(say(&format!("pressed {data} on {on:?}")));
            turn.says.push(Say { key: on.clone(), how: How::Close, ..say("") });
            if on.is_none() {
                turn.says.push(Say::new(To::Press(press.clone()), words("too late")));
            }
        }
        What::Located { latitude, .. } => turn.says.push(say(&format!("at {latitude:.0}"))),
        What::Rang { .. } => turn.says.push(say("ring ring")),
        What::Welcomed => turn.says.push(say("welcome")),
        What::Removed => turn.room.iter_mut().for_each(|room| room.gone = true),
        What::Document { name, content } => turn.says.push(say(&match content {
            Document::Text(text) => format!("{name}: {} lines", text.lines().count()),
            Document::TooLarge => format!("{name}: too large"),
            Document::Lost => format!("{name}: lost"),
        })),
        What::Unreadable => turn.says.push(say("can't read that")),
        What::Flooded { press } => {
            turn.says.push(Say::new(press.clone().map_or(here.clone(), To::Press), words("too much")));
        }
        What::Left { .. } | What::Came { .. } | What::NotPinned => {}
        What::Migrated { to } => turn.moved = Some(*to),
    }
    turn
}

/// The bot in this process, on its own runtime.
struct Running {
    stop: Option<oneshot::Sender<()>>,
    thread: Option<JoinHandle<Result<(), ServeError>>>,
    engine: Arc<Engine>,
}

impl Running {
    /// It receives as the test wants it, see [`both`].
    fn on(server: &Loopback, data: &Path) -> Self {
        let webhook = both::delivered().then(|| {
            let listen = free_address();
            server.deliver_to(&format!("http://{listen}"));
            Webhook { url: "https://cook.example/hook".to_owned(), listen }
        });
        Self::with(server, data, TOKEN, webhook)
    }

    fn with(server: &Loopback, data: &Path, token: &str, webhook: Option<Webhook>) -> Self {
        let voice = Arc::new(Voice::new());
        let book = Arc::new(SledBook::open(data).unwrap());
        let engine = Arc::new(Engine::new(book, Arc::clone(&voice) as _, obey).unwrap());
        let bot = Options::new(token, Some(&server.url())).bot().unwrap();
        let (stop, stopped) = oneshot::channel::<()>();
        let mut serving = Server::new(bot, Arc::clone(&engine), voice);
        serving.webhook = webhook;
        let thread = std::thread::spawn(move || {
            let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
            runtime.block_on(serving.run(async {
                let _ = stopped.await;
            }))
        });
        Self { stop: Some(stop), thread: Some(thread), engine }
    }

    fn stop(mut self) -> Result<(), ServeError> {
        self.stop.take().unwrap().send(()).ok();
        self.end()
    }

    /// Waits for it to end by itself.
    fn end(&mut self) -> Result<(), ServeError> {
        self.thread.take().unwrap().join().unwrap()
    }
}

/// A server, a running bot and its folder.
fn start() -> (Loopback, tempfile::TempDir, Running) {
    let server = Loopback::start();
    let dir = tempfile::tempdir().unwrap();
    let running = Running::on(&server, dir.path());
    (server, dir, running)
}

/// Waits until `done` holds; fails if it never does.
fn wait(done: impl Fn() -> bool) {
    for _ in 0..1000 {
        if done() {
            return;
        }
        std::thread::sleep(Duration::from_millis(20));
    }
    panic!("waited in vain");
}

/// Waits until nothing is left to send.
fn drained(running: &Running) {
    wait(|| running.engine.waiting() == 0);
}

fn methods(server: &Loopback, wanted: &str) -> usize {
    server.calls().iter().filter(|call| call.method == wanted).count()
}

carvetime_tests::both_ways! {
    a_private_message_is_answered_and_its_edit_too
    in_a_group_commands_are_heard_other_bots_commands_are_not_and_administrators_are_known
    a_board_is_one_message_that_is_edited_and_pinned
    a_press_is_answered_at_once_and_its_buttons_go
    a_private_call_from_a_group_is_pressed_privately_and_heard_in_the_group
    someone_who_never_started_the_bot_is_called_in_the_group
    long_texts_files_places_and_reply_fields_go_as_the_platform_takes_them
    a_bell_rings_by_itself
    answers_go_to_the_topic_they_were_asked_in
    a_group_that_becomes_another_is_followed
    a_chat_that_was_told_to_wait_does_not_hold_up_another
    what_the_platform_finds_malformed_goes_without_markup
    a_lost_reply_repeats_a_message_and_loses_none
    a_network_that_is_away_comes_back
    after_a_restart_an_update_told_again_is_not_decided_again
    a_chat_that_blocked_the_bot_is_left_alone
    stopping_sends_what_is_left
    a_log_sent_as_a_file_is_fetched_and_a_large_one_is_not
    a_file_that_was_being_fetched_at_the_end_is_fetched_at_the_next_start
    whoever_floods_is_told_once_and_the_others_are_heard
}

fn a_private_message_is_answered_and_its_edit_too() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    let id = server.tell("Rosa", "/say <turkey> & salt");
    server.expect(rosa, "<turkey> & salt");
    server.correct("Rosa", rosa, id, "/say turkey");
    server.expect(rosa, "turkey (edited)");
    server.upload("Rosa", rosa, "bird.jpg", b"picture");
    server.expect(rosa, "can't read that");
    server.locate("Rosa", rosa, 41.9, -87.6);
    server.expect(rosa, "at 42");
    running.stop().unwrap();
}

#[test]
fn the_menus_are_set_in_every_language_for_private_chats_and_groups() {
    let (server, _dir, running) = start();
    server.wait_calls("the menus", |calls| {
        calls.iter().filter(|call| call.method == "setMyShortDescription" && call.ok == Some(true)).count() == 2
    });
    let commands = server.commands();
    assert_eq!(commands.len(), 4, "{:?}", commands.keys());
    assert!(commands.values().all(|list| list.len() == 15));
    running.stop().unwrap();
}

fn in_a_group_commands_are_heard_other_bots_commands_are_not_and_administrators_are_known() {
    let (server, _dir, running) = start();
    let group = server.group("Dinner", &["Rosa", "Tom"]);
    server.expect(group, "welcome");
    server.say("Tom", group, "/admin@other_bot");
    server.say("Tom", group, &format!("/admin@{}", server.username()));
    server.expect(group, "admin Some(false)");
    server.say("Rosa", group, "/admin");
    server.expect(group, "admin Some(true)");
    assert_eq!(methods(&server, "getChatAdministrators"), 1, "asked once, then remembered");
    running.stop().unwrap();
}

fn a_board_is_one_message_that_is_edited_and_pinned() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/board one");
    let first = server.expect(rosa, "one");
    server.tell("Rosa", "/board two");
    let second = server.expect(rosa, "two");
    assert_eq!(first.id, second.id);
    server.tell("Rosa", "/board two"); // not modified: no error
    server.tell("Rosa", "/say next");
    server.expect(rosa, "next");
    server.wait_calls("the pin", |calls| calls.iter().any(|call| call.method == "pinChatMessage"));
    drained(&running);
    running.stop().unwrap();
}

fn a_press_is_answered_at_once_and_its_buttons_go() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/ask salted?");
    let message = server.expect(rosa, "salted?");
    let label = message.buttons[0][0].0.clone();
    let press = server.press("Rosa", rosa, &label);
    assert_eq!(server.answer(&press).text, "");
    server.expect(rosa, "pressed done on Some(\"job\")");
    server.settle();
    assert!(server.said(rosa).iter().all(|message| message.buttons.is_empty()));
    // A button nobody knows any more is answered with words.
    server.tell("Rosa", "/say plain");
    let other = server.expect(rosa, "plain");
    let press = server.press_data("Rosa", &other, "old", "old");
    assert!(server.answer(&press).text.contains("too late"));
    running.stop().unwrap();
}

fn a_private_call_from_a_group_is_pressed_privately_and_heard_in_the_group() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    let group = server.group("Dinner", &["Rosa", "Tom"]);
    server.expect(group, "welcome");
    server.say("Rosa", group, "/tell your turn");
    let call = server.expect(rosa, "your turn");
    assert_eq!(call.buttons[0][0].1, format!("r{group}:done"));
    let press = server.press("Rosa", rosa, &call.buttons[0][0].0);
    server.answer(&press);
    server.expect(group, "pressed done");
    running.stop().unwrap();
}

fn someone_who_never_started_the_bot_is_called_in_the_group() {
    let (server, _dir, running) = start();
    let group = server.group("Dinner", &["Ines", "Tom"]);
    server.expect(group, "welcome");
    server.say("Ines", group, "/tell your turn");
    let instead = server.expect(group, "your turn");
    assert!(instead.text.starts_with("Ines"), "{}", instead.text);
    running.stop().unwrap();
}

fn long_texts_files_places_and_reply_fields_go_as_the_platform_takes_them() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/long");
    server.expect(rosa, "gravy");
    server.expect(rosa, "gravy");
    server.expect(rosa, "gravy");
    server.tell("Rosa", "/file chart.png");
    assert!(server.expect(rosa, "the file").photo);
    server.tell("Rosa", "/file plan.ics");
    let file = server.expect(rosa, "the file");
    assert_eq!(file.file.unwrap().name, "plan.ics");
    server.tell("Rosa", "/place");
    assert!(server.expect(rosa, "where?").markup.unwrap().to_string().contains("request_location"));
    server.tell("Rosa", "/reply");
    let asked = server.expect(rosa, "how heavy?");
    assert!(asked.markup.unwrap().to_string().contains("force_reply"));
    assert!(asked.reply_to.is_some());
    running.stop().unwrap();
}

fn a_bell_rings_by_itself() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/wake");
    server.expect(rosa, "ring ring");
    running.stop().unwrap();
}

fn answers_go_to_the_topic_they_were_asked_in() {
    let (server, _dir, running) = start();
    let forum = server.forum("Family", &["Rosa", "Tom"]);
    server.say_in("Rosa", forum, 44, "/say gravy");
    assert_eq!(server.expect(forum, "gravy").thread, Some(44));
    running.stop().unwrap();
}

fn a_group_that_becomes_another_is_followed() {
    let (server, _dir, running) = start();
    let group = server.group("Dinner", &["Rosa", "Tom"]);
    server.expect(group, "welcome");
    let new = server.migrate(group);
    server.say("Rosa", new, "/say still here");
    server.expect(new, "still here");
    server.settle();
    assert!(running.engine.pages().room(RoomId(group)).unwrap().is_none());
    assert!(running.engine.pages().room(RoomId(new)).unwrap().is_some());
    running.stop().unwrap();
}

fn a_chat_that_was_told_to_wait_does_not_hold_up_another() {
    let (server, _dir, running) = start();
    let (rosa, tom) = (server.person("Rosa"), server.person("Tom"));
    server.fault(Rule::next("sendMessage", Fault::TooMany(2)));
    server.tell("Rosa", "/say slow");
    server.wait_calls("the refusal", |calls| calls.iter().any(|call| call.method == "sendMessage"));
    server.tell("Tom", "/say quick");
    server.expect(tom, "quick");
    assert!(server.said(rosa).is_empty());
    server.expect(rosa, "slow");
    running.stop().unwrap();
}

fn what_the_platform_finds_malformed_goes_without_markup() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    server.fault(Rule::next("sendMessage", Fault::Refuse(400, "Bad Request: can't parse entities: no reason")));
    server.tell("Rosa", "/ask a < b");
    let message = server.expect(rosa, "a < b");
    assert!(message.buttons.is_empty());
    running.stop().unwrap();
}

fn a_lost_reply_repeats_a_message_and_loses_none() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    server.fault(Rule::next("sendMessage", Fault::LoseReply));
    server.tell("Rosa", "/say again");
    server.expect(rosa, "again");
    server.expect(rosa, "again");
    server.tell("Rosa", "/say next");
    server.expect(rosa, "next");
    assert_eq!(server.said(rosa).len(), 3);
    running.stop().unwrap();
}

fn a_network_that_is_away_comes_back() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/say before");
    server.expect(rosa, "before");
    server.set_offline(true);
    std::thread::sleep(Duration::from_millis(300));
    server.tell("Rosa", "/say during");
    server.set_offline(false);
    server.expect(rosa, "during");
    running.stop().unwrap();
}

fn after_a_restart_an_update_told_again_is_not_decided_again() {
    let (server, dir, running) = start();
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/board one");
    let board = server.expect(rosa, "one");
    server.settle();
    running.stop().unwrap();
    server.deliver_again(10);
    server.tell("Rosa", "/say meanwhile\n/board two");
    let running = Running::on(&server, dir.path());
    server.expect(rosa, "meanwhile");
    assert_eq!(server.expect(rosa, "two").id, board.id, "the board is still known");
    server.settle();
    assert_eq!(server.said(rosa).len(), 2);
    running.stop().unwrap();
}

#[test]
fn a_bad_token_and_a_second_instance_end_it_with_a_reason() {
    let server = Loopback::start();
    let dir = tempfile::tempdir().unwrap();
    let refused = Running::with(&server, &dir.path().join("a"), "1:wrong", None).end();
    assert!(matches!(refused, Err(ServeError::BadToken)), "{refused:?}");

    let mut first = Running::on(&server, &dir.path().join("b"));
    server.wait_calls("the first poll", |calls| calls.iter().any(|call| call.method == "getUpdates"));
    let second = Running::on(&server, &dir.path().join("c"));
    let ended = first.end();
    assert!(matches!(ended, Err(ServeError::Conflict)), "{ended:?}");
    second.stop().unwrap();
}

fn a_chat_that_blocked_the_bot_is_left_alone() {
    let (server, _dir, running) = start();
    let rosa: ChatId = server.person("Rosa");
    server.tell("Rosa", "/say hello");
    server.expect(rosa, "hello");
    server.fault(Rule::next("sendMessage", Fault::Refuse(403, "Forbidden: bot was blocked by the user")));
    server.tell("Rosa", "/say lost\n/say lost too");
    wait(|| running.engine.pages().room(RoomId(rosa)).unwrap().is_some_and(|room| room.gone));
    assert_eq!(running.engine.waiting(), 0);
    running.stop().unwrap();
}

fn stopping_sends_what_is_left() {
    let (server, _dir, running) = start();
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/say 1\n/say 2\n/say 3\n/say 4");
    server.wait_calls("the first", |calls| calls.iter().any(|call| call.method == "sendMessage"));
    running.stop().unwrap();
    assert_eq!(server.said(rosa).len(), 4);
}

#[test]
fn limits_are_kept_under_a_flood() {
    let (server, _dir, running) = start();
    server.enforce_limits();
    let group = server.group("Dinner", &["Rosa", "Tom"]);
    server.expect(group, "welcome");
    for nth in 0..6 {
        server.say("Rosa", group, &format!("/say flood {nth}"));
    }
    server.expect(group, "flood 5");
    assert_eq!(server.calls().iter().filter(|call| call.ok == Some(false)).count(), 0);
    running.stop().unwrap();
}

/// The most messages that went within any such span.
fn most_within(server: &Loopback, span: Duration) -> usize {
    let sent: Vec<_> = server.calls().into_iter().filter(|call| call.method == "sendMessage").collect();
    let within = |from: &carvetime_tests::loopback::Call| {
        sent.iter().filter(|call| call.at >= from.at && call.at < from.at + span).count()
    };
    sent.iter().map(within).max().unwrap_or(0)
}

fn refused(server: &Loopback) -> usize {
    server.calls().iter().filter(|call| call.ok == Some(false)).count()
}

/// Thirty a second over all, which a hundred and fifty answers at once would break at once.
#[test]
fn the_limit_over_all_chats_is_met_and_kept() {
    let (server, _dir, running) = start();
    server.enforce_limits();
    let names: Vec<String> = (0..150).map(|nth| format!("Cook {nth}")).collect();
    let chats: Vec<ChatId> = names.iter().map(|name| server.person(name)).collect();
    names.iter().for_each(|name| _ = server.tell(name, "/say at once"));
    wait(|| chats.iter().all(|chat| server.said(*chat).len() == 1));
    assert_eq!(refused(&server), 0);
    let most = most_within(&server, Duration::from_secs(1));
    assert!((20..=30).contains(&most), "{most} in a second");
    running.stop().unwrap();
}

/// Twenty a minute in a group: whoever sends faster than that over half a minute is refused.
#[test]
fn the_limit_of_a_group_is_met_and_kept() {
    let (server, _dir, running) = start();
    server.enforce_limits();
    let group = server.group("Dinner", &["Rosa", "Tom"]);
    server.expect(group, "welcome");
    let lines: Vec<String> = (0..40).map(|nth| format!("/say line {nth}.")).collect();
    server.say("Rosa", group, &lines.join("\n"));
    std::thread::sleep(Duration::from_secs(35));
    assert_eq!(refused(&server), 0);
    let most = most_within(&server, Duration::from_secs(30));
    assert!((10..=14).contains(&most), "{most} in half a minute");
    drop(running); // nobody waits for the line
}

/// Eighty messages wait for one group, which hears fifteen a minute; what is due in another chat does not wait for them.
#[test]
fn a_long_line_for_one_group_holds_up_no_other_chat() {
    let (server, _dir, running) = start();
    server.enforce_limits();
    let tom = server.person("Tom");
    let group = server.group("Dinner", &["Rosa", "Li"]);
    server.expect(group, "welcome");
    let lines: Vec<String> = (0..80).map(|nth| format!("/say line {nth}.")).collect();
    server.say("Rosa", group, &lines.join("\n"));
    server.expect(group, "line 0.");
    wait(|| running.engine.waiting() >= 70);
    for _ in 0..2 {
        let began = std::time::Instant::now();
        server.tell("Tom", "/wake"); // due in 300 ms
        server.expect(tom, "ring ring");
        let late = began.elapsed().saturating_sub(Duration::from_millis(300));
        assert!(late < Duration::from_secs(1), "{late:?} late");
    }
    assert!(running.engine.waiting() >= 70, "the line still waits");
    drop(running); // nobody waits for the line
}

#[test]
fn by_webhook_an_update_is_confirmed_when_it_is_durable_and_strangers_are_turned_away() {
    let server = Loopback::start();
    let dir = tempfile::tempdir().unwrap();
    let listen = std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap();
    let webhook = Webhook { url: "https://cook.example/hook{s}/here?x=1".to_owned(), listen };
    let running = Running::with(&server, dir.path(), TOKEN, Some(webhook));
    server.wait_calls("the webhook", |calls| calls.iter().any(|call| call.method == "setWebhook"));
    server.deliver_to(&format!("http://{listen}"));
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/say by webhook");
    server.expect(rosa, "by webhook");
    server.settle();
    assert_eq!(methods(&server, "getUpdates"), 0);

    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    let forged =
        r#"{"update_id":1,"message":{"message_id":1,"date":5,"chat":{"id":7,"type":"private"},"text":"/say x"}}"#;
    let post = |path: &str, secret: Option<&str>| {
        let mut request = reqwest::Client::new().post(format!("http://{listen}{path}")).body(forged);
        if let Some(secret) = secret {
            request = request.header("X-Telegram-Bot-Api-Secret-Token", secret);
        }
        runtime.block_on(async { request.send().await.unwrap().status().as_u16() })
    };
    assert_eq!(post("/hook%7Bs%7D/here", None), 401);
    assert_eq!(post("/hook%7Bs%7D/here", Some("guess")), 401);
    assert_eq!(post("/elsewhere", Some("guess")), 404);
    assert_eq!(running.engine.waiting(), 0);
    running.stop().unwrap();
}

#[test]
fn going_back_from_webhook_to_polling_needs_no_hand() {
    let server = Loopback::start();
    let dir = tempfile::tempdir().unwrap();
    let listen = std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap();
    let webhook = Webhook { url: "https://cook.example/hook".to_owned(), listen };
    let running = Running::with(&server, dir.path(), TOKEN, Some(webhook));
    server.wait_calls("the webhook", |calls| calls.iter().any(|call| call.method == "setWebhook"));
    running.stop().unwrap();
    let rosa = server.person("Rosa");
    server.tell("Rosa", "/say by polling");
    let running = Running::on(&server, dir.path());
    server.expect(rosa, "by polling");
    running.stop().unwrap();
}

fn a_log_sent_as_a_file_is_fetched_and_a_large_one_is_not() {
    let server = Loopback::start();
    let dir = tempfile::tempdir().unwrap();
    let rosa = server.person("Rosa");
    let running = Running::on(&server, dir.path());
    server.upload("Rosa", rosa, "cook.csv", b"minutes,breast_f\n0,40\n30,52\n");
    server.expect(rosa, "cook.csv: 3 lines");
    server.upload("Rosa", rosa, "long.csv", &vec![b'1'; (2 << 20) + 1]);
    server.expect(rosa, "long.csv: too large");
    // Told as small, in the update and when it is asked for, and no smaller for it.
    server.understate_files();
    server.upload("Rosa", rosa, "sly.csv", &vec![b'1'; (2 << 20) + 1]);
    server.expect(rosa, "sly.csv: too large");
    running.stop().unwrap();
}

#[test]
fn a_slow_file_keeps_nobody_waiting() {
    for by_webhook in [false, true] {
        let server = Loopback::start();
        let dir = tempfile::tempdir().unwrap();
        let (rosa, tom) = (server.person("Rosa"), server.person("Tom"));
        let webhook = by_webhook.then(|| {
            let listen = std::net::TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap();
            server.deliver_to(&format!("http://{listen}"));
            Webhook { url: "https://cook.example/hook".to_owned(), listen }
        });
        let running = Running::with(&server, dir.path(), TOKEN, webhook);
        server.fault(Rule::next("getFile", Fault::Delay(Duration::from_secs(5))));
        server.upload("Rosa", rosa, "cook.csv", b"minutes,breast_f\n0,40\n30,52\n");
        server.wait_calls("the fetch", |calls| calls.iter().any(|call| call.method == "getFile"));
        for (name, chat) in [("Tom", tom), ("Rosa", rosa)] {
            let began = std::time::Instant::now();
            server.tell(name, "/say at once");
            server.expect(chat, "at once");
            assert!(began.elapsed() < Duration::from_secs(1), "{name}, webhook {by_webhook}: {:?}", began.elapsed());
        }
        server.expect(rosa, "cook.csv: 3 lines");
        running.stop().unwrap();
    }
}

fn a_file_that_was_being_fetched_at_the_end_is_fetched_at_the_next_start() {
    let server = Loopback::start();
    let dir = tempfile::tempdir().unwrap();
    let rosa = server.person("Rosa");
    let running = Running::on(&server, dir.path());
    server.fault(Rule::next("getFile", Fault::Delay(Duration::from_secs(60))));
    server.upload("Rosa", rosa, "cook.csv", b"minutes,breast_f\n0,40\n30,52\n");
    server.wait_calls("the fetch", |calls| calls.iter().any(|call| call.method == "getFile"));
    wait(|| server.pending() == 0);
    running.stop().unwrap();
    assert_eq!(server.said(rosa).len(), 0);
    let running = Running::on(&server, dir.path());
    server.expect(rosa, "cook.csv: 3 lines");
    running.stop().unwrap();
}

fn whoever_floods_is_told_once_and_the_others_are_heard() {
    let (server, _dir, running) = start();
    let (rosa, tom) = (server.person("Rosa"), server.person("Tom"));
    for n in 0..150 {
        server.tell("Rosa", &format!("/wake {n}"));
    }
    let began = std::time::Instant::now();
    server.tell("Tom", "/say in time");
    server.expect(tom, "in time");
    assert!(began.elapsed() < Duration::from_secs(5), "{:?}", began.elapsed());
    wait(|| server.pending() == 0);
    server.expect(rosa, "too much");
    drained(&running);
    let told = server.said(rosa).iter().filter(|said| said.text.contains("too much")).count();
    assert_eq!(told, 1);
    running.stop().unwrap();
}
