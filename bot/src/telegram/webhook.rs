//! Receiving by delivery: a listener that says 200 only when the update is durable.
//!
//! Encryption is left to whatever stands in front of it. Requests without the secret, made anew at every start and told
//! only to the platform, are turned away before anything more of them is read, and so is whoever takes too long.

use super::greeting::complain;
use super::intake::{Intake, WANTED};
use super::pace::{backoff, count};
use super::refusal::{self, Refusal};
use super::{ServeError, Serving, Webhook, inline};
use crate::clock::Clock;
use axum::Router;
use axum::body::{Body, HttpBody, to_bytes};
use axum::extract::{Request, State};
use axum::http::{HeaderValue, Method, StatusCode, header};
use axum::response::{IntoResponse, Response};
use governor::{DefaultDirectRateLimiter, Quota, RateLimiter};
use hyper::server::conn::http1;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use std::pin::pin;
use std::sync::Arc;
use std::time::Duration;
use subtle::ConstantTimeEq;
use teloxide::Bot;
use teloxide::payloads::SetWebhookSetters;
use teloxide::requests::Requester;
use teloxide::types::Update;
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::{Mutex, Semaphore, mpsc, watch};
use tokio::task::JoinSet;
use tokio::time::{sleep, timeout};
use url::Url;

/// The header with the secret.
const SECRET: &str = "x-telegram-bot-api-secret-token";

/// Largest update read.
const MAX_BODY: usize = 1024 * 1024;

/// How long the head of a request may take, from when the last one was answered.
const HEAD_WITHIN: Duration = Duration::from_secs(5);

/// How long the rest of it may take.
const BODY_WITHIN: Duration = Duration::from_secs(10);

/// How long a shutdown waits for a request that does not end.
const LAST_REQUEST: Duration = Duration::from_secs(1);

/// Deliveries at a time; they are taken in one after the other anyway.
const CONNECTIONS: u8 = 4;

/// Connections open at a time, whoever they come from.
const OPEN: usize = 256;

/// Requests without the secret that are told so: 20 at once, then 10 a second.
const STRANGERS: Quota = Quota::per_second(count(10)).allow_burst(count(20));

/// How often the platform is asked whether it still delivers here.
pub const ASK_EVERY: Duration = Duration::from_secs(300);

/// Receives until `ending` turns true. The webhook stays set: updates wait at the platform for the next start.
pub async fn run(
    bot: Bot,
    intake: Intake,
    webhook: Webhook,
    ask_every: Duration,
    mut ending: watch::Receiver<bool>,
) -> Result<(), ServeError> {
    let address = webhook.listen;
    let listener = TcpListener::bind(address).await.map_err(|source| ServeError::Listen { address, source })?;
    let secret = Secret(new_secret()?);
    let (broken, mut breaks) = mpsc::channel(1);
    let url: Url = webhook.url.parse().map_err(|_| ServeError::BadWebhook { url: webhook.url.clone() })?;
    let serving = intake.serving();
    let platform = Platform { bot, url: url.clone(), secret: secret.0.clone(), serving: serving.clone() };
    let (path, strangers) = (url.path().to_owned(), RateLimiter::direct(STRANGERS));
    let door = Door { serving, intake: Mutex::new(intake), path, secret, broken, strangers };
    // No routes: a path with braces in it would be read as a pattern.
    let router = Router::new().fallback(deliver).with_state(Arc::new(door));
    let (mut open, doors) = (JoinSet::new(), ending.clone());
    let served = tokio::select! {
        () = welcome(&listener, &router, &doors, &mut open) => Ok(()),
        error = breaks.recv() => error.map_or(Ok(()), Err),
        refused = platform.watch(ask_every) => Err(refused),
        _ = async { ending.wait_for(|ending| *ending).await.is_ok() } => Ok(()), // the other end is gone: an ending too
    };
    drop(listener);
    if served.is_ok() {
        let last = async { while open.join_next().await.is_some() {} };
        let _ = timeout(LAST_REQUEST, last).await; // what was not confirmed comes again
    }
    served
}

/// Opens to whoever comes, a task each in `open`. Never ends.
async fn welcome(listener: &TcpListener, router: &Router, ending: &watch::Receiver<bool>, open: &mut JoinSet<()>) {
    let seats = Arc::new(Semaphore::new(OPEN));
    loop {
        let Ok(seat) = Arc::clone(&seats).acquire_owned().await else { return };
        while open.try_join_next().is_some() {}
        match listener.accept().await {
            Ok((stream, _)) => {
                let (router, ending) = (router.clone(), ending.clone());
                open.spawn(async move {
                    talk(stream, router, ending).await;
                    drop(seat);
                });
            }
            Err(_) => sleep(Duration::from_millis(50)).await, // no file handles left: some will be given back
        }
    }
}

/// One connection, to its end.
async fn talk(stream: TcpStream, router: Router, mut ending: watch::Receiver<bool>) {
    let mut http = http1::Builder::new();
    http.timer(TokioTimer::new()).header_read_timeout(HEAD_WITHIN);
    let mut connection = pin!(http.serve_connection(TokioIo::new(stream), TowerToHyperService::new(router)));
    tokio::select! {
        _ = connection.as_mut() => return, // whatever ended it: the platform tells again what was not confirmed
        _ = async { ending.wait_for(|ending| *ending).await.is_ok() } => {}
    }
    connection.as_mut().graceful_shutdown();
    let _ = connection.await;
}

/// The platform, as whoever wants its updates delivered sees it.
struct Platform {
    bot: Bot,
    url: Url,
    secret: String,
    serving: Serving,
}

impl Platform {
    /// Tells it where to deliver, and looks every now and then whether it still does: to a bot that nobody speaks to, nothing else says
    /// that its token is not good any more. Returns only if something is wrong.
    async fn watch(&self, every: Duration) -> ServeError {
        if let Err(refused) = self.announce().await {
            return refused;
        }
        loop {
            sleep(every).await;
            match self.bot.get_webhook_info().await {
                Ok(info) => {
                    self.serving.pulse.reachable(true);
                    let here = |url: &Url| (url.host_str() == self.url.host_str()) && url.path() == self.url.path();
                    if !info.url.as_ref().is_some_and(here) {
                        return ServeError::Conflict;
                    }
                    if let Some(message) = info.last_error_message.filter(|_| info.pending_update_count > 0) {
                        tracing::warn!(waiting = info.pending_update_count, message, "the platform can't deliver");
                    }
                }
                Err(error) => match refusal::read(&error) {
                    Refusal::BadToken => return ServeError::BadToken,
                    Refusal::Down => self.serving.pulse.reachable(false),
                    _ => {}
                },
            }
        }
    }

    async fn announce(&self) -> Result<(), ServeError> {
        let mut failures = 0;
        loop {
            let request = self.bot.set_webhook(self.url.clone()).secret_token(&self.secret);
            let Err(error) = request.max_connections(CONNECTIONS).allowed_updates(WANTED).await else { return Ok(()) };
            let wait = match refusal::read(&error) {
                Refusal::Taken(_) => return Ok(()),
                Refusal::BadToken => return Err(ServeError::BadToken),
                Refusal::Wait(wait) => wait,
                Refusal::Down => backoff(failures),
                _ => return Err(ServeError::BadWebhook { url: self.url.to_string() }),
            };
            if failures == 0 {
                complain(&self.bot, &error, self.serving.clock.now(), None);
            }
            failures = failures.saturating_add(1);
            sleep(wait).await;
        }
    }
}

struct Door {
    serving: Serving,
    intake: Mutex<Intake>,
    path: String,
    secret: Secret,
    /// Where the reason goes when nothing can be made durable any more.
    broken: mpsc::Sender<ServeError>,
    /// How many without the secret are told so.
    strangers: DefaultDirectRateLimiter,
}

/// Nothing of a request is read before it has shown the secret.
async fn deliver(State(door): State<Arc<Door>>, request: Request) -> Response {
    let (head, body) = request.into_parts();
    let given = head.headers.get(SECRET).map(HeaderValue::as_bytes).unwrap_or_default();
    let known = door.secret.is(given);
    let here = head.method == Method::POST && head.uri.path() == door.path;
    let status = match (known, here) {
        (true, true) => door.let_in(body).await,
        (true, false) => StatusCode::NOT_FOUND,
        (false, _) if door.strangers.check().is_err() => StatusCode::TOO_MANY_REQUESTS,
        (false, true) => StatusCode::UNAUTHORIZED,
        (false, false) => StatusCode::NOT_FOUND,
    };
    match known {
        true => status.into_response(),
        false => (status, [(header::CONNECTION, "close")]).into_response(),
    }
}

impl Door {
    /// Says 200 only when the update is durable.
    async fn let_in(&self, body: Body) -> StatusCode {
        if body.size_hint().lower() > MAX_BODY as u64 {
            return StatusCode::PAYLOAD_TOO_LARGE;
        }
        let body = match timeout(BODY_WITHIN, to_bytes(body, MAX_BODY)).await {
            Ok(Ok(body)) => body,
            Ok(Err(_)) => return StatusCode::PAYLOAD_TOO_LARGE, // or the other end is gone and hears nothing
            Err(_) => return StatusCode::REQUEST_TIMEOUT,
        };
        let Some(update) = read(&body) else {
            tracing::error!("an update could not be read and was dropped");
            return StatusCode::OK; // it would come again and again
        };
        let rest = inline::take(&self.serving, vec![update]);
        if rest.is_empty() {
            return StatusCode::OK;
        }
        match self.intake.lock().await.take(rest).await {
            Ok(()) => StatusCode::OK,
            Err(error) => {
                let _ = self.broken.try_send(error); // the first reason is the one to tell
                StatusCode::INTERNAL_SERVER_ERROR
            }
        }
    }
}

/// Reads an update whatever the order of its fields: teloxide wants the number first.
pub fn read(body: &[u8]) -> Option<Update> {
    let mut fields: serde_json::Map<String, serde_json::Value> = serde_json::from_slice(body).ok()?;
    let number = fields.remove("update_id")?;
    let rest = serde_json::to_string(&fields).ok()?;
    let comma = if fields.is_empty() { "" } else { "," };
    serde_json::from_str(&format!(r#"{{"update_id":{number}{comma}{}"#, rest.get(1..)?)).ok()
}

/// What only the platform is told. It can be compared in one way: in the same time whatever is wrong with it.
struct Secret(String);

impl Secret {
    fn is(&self, given: &[u8]) -> bool {
        given.ct_eq(self.0.as_bytes()).into()
    }
}

/// 256 bits from the system, in the platform's alphabet.
fn new_secret() -> Result<String, ServeError> {
    let mut bytes = [0; 32];
    getrandom::fill(&mut bytes).map_err(std::io::Error::other)?;
    Ok(crate::book::hex_bytes::encode(&bytes))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use teloxide::types::UpdateKind;

    #[test]
    fn an_update_is_read_whatever_the_order_of_its_fields() {
        let message = r#"{"message_id":1,"date":5,"chat":{"id":7,"type":"private"},"text":"hello"}"#;
        for body in
            [format!(r#"{{"update_id":9,"message":{message}}}"#), format!(r#"{{"message":{message},"update_id":9}}"#)]
        {
            let update = read(body.as_bytes()).unwrap();
            assert_eq!(update.id.0, 9);
            assert!(matches!(update.kind, UpdateKind::Message(_)), "{body}");
        }
        let deep = format!(r#"{{"update_id":9,"message":{}"#, "[".repeat(500_000));
        assert!(read(deep.as_bytes()).is_none());
        assert!(read(deep.replace('[', r#"{"a":"#).as_bytes()).is_none());
        assert!(read(b"{}").is_none());
        assert!(matches!(read(br#"{"update_id":9}"#).unwrap().kind, UpdateKind::Error(_)));
    }

    #[test]
    fn every_start_has_its_own_secret() {
        let (one, two) = (new_secret().unwrap(), new_secret().unwrap());
        assert_eq!(one.len(), 64);
        assert_ne!(one, two);
    }
}
