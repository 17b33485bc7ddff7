//! The door through which the platform delivers: who is let in, how long it is held open, what 200 promises, and how it is shut.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use carvetime::book::{Book, BookError, Changes, Loss, Row, Shelf, SledBook, UnderWay};
use carvetime::engine::Engine;
use carvetime::room::decide;
use carvetime::telegram::{Options, ServeError, Server, Webhook};
use carvetime::words::Voice;
use carvetime_tests::loopback::{Fault, Loopback, Rule, TOKEN};
use carvetime_tests::program::{Program, carvetime};
use carvetime_tests::stage::free_address;
use std::io::{Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::process::Command;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Condvar, Mutex};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};
use tokio::sync::oneshot;

/// Answered in one message, whatever else stands.
const QUESTION: &str = "2 tbsp table salt in flake kosher";

/// A book whose syncs can be held up, or refused.
struct Slow {
    book: SledBook,
    held: Mutex<bool>,
    let_go: Condvar,
    refuses: AtomicBool,
}

impl Slow {
    fn hold(&self, held: bool) {
        *self.held.lock().unwrap() = held;
        self.let_go.notify_all();
    }
}

impl Book for Slow {
    fn get(&self, shelf: Shelf, key: &[u8]) -> Result<Option<Vec<u8>>, BookError> {
        self.book.get(shelf, key)
    }
    fn rows(&self, shelf: Shelf, from: &[u8], below: &[u8], limit: usize) -> Result<Vec<Row>, BookError> {
        self.book.rows(shelf, from, below, limit)
    }
    fn commit(&self, changes: &Changes) -> Result<(), BookError> {
        self.book.commit(changes)
    }
    fn sync(&self, loss: Loss) -> Result<(), BookError> {
        drop(self.let_go.wait_while(self.held.lock().unwrap(), |held| *held).unwrap());
        if self.refuses.load(Ordering::Relaxed) {
            return Err(BookError::Disk { path: "store".into(), source: std::io::Error::other("no room") });
        }
        self.book.sync(loss)
    }
    fn attempt(&self, under_way: UnderWay) -> Result<(), BookError> {
        self.book.attempt(under_way)
    }
    fn was_attempting(&self) -> UnderWay {
        self.book.was_attempting()
    }
}

/// The bot in this process with its door at `address`.
struct Running {
    telegram: Loopback,
    address: SocketAddr,
    book: Arc<Slow>,
    stop: oneshot::Sender<()>,
    thread: JoinHandle<Result<(), ServeError>>,
    _folder: tempfile::TempDir,
}

fn start() -> Running {
    let (telegram, folder, address) = (Loopback::start(), tempfile::tempdir().unwrap(), free_address());
    let book = SledBook::open(folder.path()).unwrap();
    let book =
        Arc::new(Slow { book, held: Mutex::new(false), let_go: Condvar::new(), refuses: AtomicBool::new(false) });
    let voice = Arc::new(Voice::new());
    let engine = Arc::new(Engine::new(Arc::clone(&book) as _, Arc::clone(&voice) as _, decide).unwrap());
    let bot = Options::new(TOKEN, Some(&telegram.url())).bot().unwrap();
    let mut server = Server::new(bot, engine, voice);
    server.webhook = Some(Webhook { url: "https://cook.example/hook".to_owned(), listen: address });
    server.ask_every = Duration::from_millis(200);
    let (stop, stopped) = oneshot::channel::<()>();
    let thread = std::thread::spawn(move || {
        let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
        runtime.block_on(server.run(async {
            let _ = stopped.await;
        }))
    });
    secret(&telegram);
    Running { telegram, address, book, stop, thread, _folder: folder }
}

impl Running {
    fn stop(self) {
        self.stop.send(()).ok();
        self.thread.join().unwrap().unwrap();
    }
}

/// What the program has told the platform to show.
fn secret(telegram: &Loopback) -> String {
    telegram.wait_calls("the webhook", |calls| {
        calls.iter().any(|call| call.method == "setWebhook" && call.ok == Some(true))
    });
    let set = telegram.calls().into_iter().rev().find(|call| call.method == "setWebhook").unwrap();
    set.args["secret_token"].as_str().unwrap().to_owned()
}

fn connect(address: SocketAddr) -> TcpStream {
    let stream = TcpStream::connect(address).unwrap();
    stream.set_read_timeout(Some(Duration::from_secs(20))).unwrap();
    stream
}

fn head(secret: &str, rest: &str) -> String {
    format!("POST /hook HTTP/1.1\r\nHost: x\r\nX-Telegram-Bot-Api-Secret-Token: {secret}\r\n{rest}\r\n\r\n")
}

fn update(number: u32, text: &str) -> String {
    format!(
        r#"{{"update_id":{number},"message":{{"message_id":{number},"date":{},"chat":{{"id":7,"type":"private","first_name":"Rosa"}},"from":{{"id":7,"is_bot":false,"first_name":"Rosa","language_code":"en"}},"text":"{text}"}}}}"#,
        chrono::Utc::now().timestamp()
    )
}

fn delivery(secret: &str, number: u32, text: &str) -> String {
    let body = update(number, text);
    head(secret, &format!("Connection: close\r\nContent-Length: {}", body.len())) + &body
}

/// The status of the answer; 0: the connection was closed without one.
fn status(stream: &mut TcpStream) -> u16 {
    let mut answer = [0; 256];
    let length = stream.read(&mut answer).unwrap_or(0);
    let text = String::from_utf8_lossy(&answer[..length]).into_owned();
    text.split(' ').nth(1).and_then(|status| status.parse().ok()).unwrap_or(0)
}

fn ask(address: SocketAddr, request: &str) -> u16 {
    let mut stream = connect(address);
    stream.write_all(request.as_bytes()).unwrap();
    status(&mut stream)
}

#[test]
fn it_is_confirmed_when_it_is_durable_and_not_before() {
    let running = start();
    let secret = secret(&running.telegram);
    assert_eq!(ask(running.address, &delivery(&secret, 1, QUESTION)), 200);
    running.book.hold(true);
    let mut stream = connect(running.address);
    stream.write_all(delivery(&secret, 2, QUESTION).as_bytes()).unwrap();
    stream.set_read_timeout(Some(Duration::from_millis(700))).unwrap();
    assert_eq!(status(&mut stream), 0, "no answer while the disk has not got it");
    running.book.hold(false);
    stream.set_read_timeout(Some(Duration::from_secs(20))).unwrap();
    assert_eq!(status(&mut stream), 200);
    // What can't be made durable is not confirmed, and ends the program with the reason.
    running.book.refuses.store(true, Ordering::Relaxed);
    assert_ne!(ask(running.address, &delivery(&secret, 3, QUESTION)), 200);
    let ended = running.thread.join().unwrap();
    assert!(matches!(ended, Err(ServeError::Book(_))), "{ended:?}");
}

#[test]
fn nothing_of_a_request_is_read_before_it_shows_the_secret_and_no_more_than_a_megabyte_after() {
    let running = start();
    let (secret, address) = (secret(&running.telegram), running.address);
    // The bodies these speak of never come: the answer does not wait for them.
    let began = Instant::now();
    assert_eq!(ask(address, &head("guess", "Content-Length: 900000")), 401);
    assert_eq!(ask(address, &head("", "Content-Length: 900000")), 401);
    assert_eq!(ask(address, &head(&secret, "Content-Length: 1048577")), 413);
    assert!(began.elapsed() < Duration::from_secs(4), "{:?}", began.elapsed());
    // As long as it likes without saying how long.
    let mut stream = connect(address);
    stream.write_all(head(&secret, "Transfer-Encoding: chunked").as_bytes()).unwrap();
    let chunk = format!("{:x}\r\n{}\r\n", 64 << 10, "x".repeat(64 << 10));
    for _ in 0..20 {
        if stream.write_all(chunk.as_bytes()).is_err() {
            break;
        }
    }
    assert!(matches!(status(&mut stream), 413 | 0));
    assert_eq!(ask(address, &delivery(&secret, 1, QUESTION)), 200);
    // The largest that is read.
    let text = "gravy ".repeat(1000);
    let body = update(2, &text);
    let body = format!("{body}{}", " ".repeat((1 << 20) - body.len()));
    let request = head(&secret, &format!("Connection: close\r\nContent-Length: {}", body.len())) + &body;
    assert_eq!(ask(address, &request), 200);
    running.stop();
}

#[test]
fn whoever_takes_too_long_is_hung_up_on_and_holds_up_nobody() {
    let running = start();
    let (secret, address) = (secret(&running.telegram), running.address);
    let begun = |text: &str| {
        let mut stream = connect(address);
        stream.write_all(text.as_bytes()).unwrap();
        stream
    };
    let mut half: Vec<TcpStream> = (0..100).map(|_| begun("POST /hook HTTP/1.1\r\nHost: x\r\n")).collect();
    let mut half_told = begun(&(head(&secret, "Content-Length: 500") + "{"));
    let began = Instant::now();
    assert_eq!(ask(address, &delivery(&secret, 1, QUESTION)), 200);
    assert!(began.elapsed() < Duration::from_secs(2), "{:?}", began.elapsed());
    for stream in &mut half {
        assert!(matches!(status(stream), 0 | 408));
    }
    assert!(began.elapsed() < Duration::from_secs(8), "heads: {:?}", began.elapsed());
    assert!(matches!(status(&mut half_told), 0 | 408));
    assert!(began.elapsed() < Duration::from_secs(14), "a body: {:?}", began.elapsed());
    running.stop();
}

#[test]
fn strangers_in_numbers_are_told_to_slow_down_and_the_platform_is_not() {
    let running = start();
    let (secret, address) = (secret(&running.telegram), running.address);
    let told: Vec<u16> = (0..80).map(|_| ask(address, &head("guess", "Content-Length: 0"))).collect();
    let count = |status| told.iter().filter(|told| **told == status).count();
    assert_eq!(count(401) + count(429), told.len(), "{told:?}");
    assert!(count(401) >= 20 && count(429) >= 20, "{told:?}");
    for number in 1..=40 {
        assert_eq!(ask(address, &delivery(&secret, number, QUESTION)), 200);
    }
    running.stop();
}

#[test]
fn a_bot_nobody_speaks_to_notices_that_its_token_is_revoked_or_its_webhook_taken() {
    let running = start();
    std::thread::sleep(Duration::from_millis(700));
    assert!(!running.thread.is_finished(), "all is well");
    running.telegram.set_token_good(false);
    let ended = running.thread.join().unwrap();
    assert!(matches!(ended, Err(ServeError::BadToken)), "{ended:?}");

    let running = start();
    let taken = format!("{}/bot{TOKEN}/deleteWebhook", running.telegram.url().trim_end_matches('/'));
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    runtime.block_on(async { reqwest::Client::new().post(taken).send().await.unwrap() });
    let ended = running.thread.join().unwrap();
    assert!(matches!(ended, Err(ServeError::Conflict)), "{ended:?}");
}

#[test]
fn asked_to_stop_with_half_a_request_and_a_message_that_hangs_it_ends_within_five_seconds() {
    let (telegram, folder, address) = (Loopback::start(), tempfile::tempdir().unwrap(), free_address());
    telegram.deliver_to(&format!("http://{address}"));
    let data = folder.path().join("data");
    let mut command = Command::new(carvetime());
    command.arg("serve").arg("--data").arg(&data);
    command.args(["--webhook", "https://cook.example/hook", "--listen", &address.to_string()]);
    let program = Program::start(command, &telegram, &data);
    let secret = secret(&telegram);
    telegram.fault(Rule::next("sendMessage", Fault::Delay(Duration::from_secs(60))));
    let rosa = telegram.person("Rosa");
    telegram.tell("Rosa", QUESTION);
    telegram.wait_calls("a message", |calls| calls.iter().any(|call| call.method == "sendMessage"));
    let mut half = [connect(address), connect(address)];
    half[0].write_all(b"POST /hook HTTP/1.1\r\nHost: x\r\n").unwrap();
    half[1].write_all((head(&secret, "Content-Length: 500") + "{").as_bytes()).unwrap();
    std::thread::sleep(Duration::from_millis(200));
    let began = Instant::now();
    program.terminate();
    assert_eq!(program.wait(Duration::from_secs(15)).code(), Some(0));
    assert!(began.elapsed() < Duration::from_secs(5), "{:?}", began.elapsed());
    // The message goes out at the next start.
    telegram.heal();
    let program = Program::serve(&telegram, &data);
    telegram.expect(rosa, "flake kosher");
    drop(program);
}
