//! Receiving by delivery: a listener that says 200 only when the update is durable.
//!
//! Encryption is left to whatever stands in front of it. Requests without the secret, made anew at every start and told
//! only to the platform, are turned away.

use super::intake::{Intake, WANTED};
use super::pace::backoff;
use super::refusal::{self, Refusal};
use super::{ServeError, Serving, Webhook, inline};
use axum::Router;
use axum::body::Bytes;
use axum::extract::{DefaultBodyLimit, State};
use axum::http::{HeaderMap, Method, StatusCode, Uri};
use std::sync::Arc;
use std::time::Duration;
use subtle::ConstantTimeEq;
use teloxide::Bot;
use teloxide::payloads::SetWebhookSetters;
use teloxide::requests::Requester;
use teloxide::types::Update;
use tokio::net::TcpListener;
use tokio::sync::{Mutex, mpsc, watch};
use tokio::time::sleep;
use url::Url;

/// The header with the secret.
const SECRET: &str = "x-telegram-bot-api-secret-token";

/// Largest update read.
const MAX_BODY: usize = 1024 * 1024;

/// How long a shutdown waits for a request that does not end.
const LAST_REQUEST: Duration = Duration::from_secs(2);

/// Deliveries at a time; they are taken in one after the other anyway.
const CONNECTIONS: u8 = 4;

/// Receives until `ending` turns true. The webhook stays set: updates wait at the platform for the next start.
pub async fn run(
    bot: Bot,
    intake: Intake,
    webhook: Webhook,
    mut ending: watch::Receiver<bool>,
) -> Result<(), ServeError> {
    let address = webhook.listen;
    let listener = TcpListener::bind(address).await.map_err(|source| ServeError::Listen { address, source })?;
    let secret = new_secret()?;
    let (broken, mut breaks) = mpsc::channel(1);
    let url: Url = webhook.url.parse().map_err(|_| ServeError::BadWebhook { url: webhook.url.clone() })?;
    let serving = intake.serving();
    let door =
        Door { serving, intake: Mutex::new(intake), path: url.path().to_owned(), secret: secret.clone(), broken };
    // No routes: a path with braces in it would be read as a pattern.
    let router = Router::new().fallback(deliver).layer(DefaultBodyLimit::max(MAX_BODY)).with_state(Arc::new(door));
    let mut too_late = ending.clone();
    let served = axum::serve(listener, router).with_graceful_shutdown(async move {
        let _ = ending.wait_for(|ending| *ending).await; // the other end is gone: that is an ending too
    });
    tokio::select! {
        ended = served.into_future() => Ok(ended?),
        error = breaks.recv() => error.map_or(Ok(()), Err),
        refused = announce(&bot, &url, &secret) => Err(refused),
        () = async {
            let _ = too_late.wait_for(|ending| *ending).await;
            sleep(LAST_REQUEST).await;
        } => Ok(()),
    }
}

/// Tells the platform where to deliver. Returns only if it refuses.
async fn announce(bot: &Bot, url: &Url, secret: &str) -> ServeError {
    let refused = || ServeError::BadWebhook { url: url.to_string() };
    let mut failures = 0;
    loop {
        let request =
            bot.set_webhook(url.clone()).secret_token(secret).max_connections(CONNECTIONS).allowed_updates(WANTED);
        let wait = match request.await.map_err(|error| refusal::read(&error)) {
            Ok(_) | Err(Refusal::Taken(_)) => return std::future::pending().await,
            Err(Refusal::BadToken) => return ServeError::BadToken,
            Err(Refusal::Wait(wait)) => wait,
            Err(Refusal::Down) => backoff(failures),
            Err(_) => return refused(),
        };
        if failures == 0 {
            tracing::error!("the Bot API cannot be reached; trying again until it can");
        }
        failures = failures.saturating_add(1);
        sleep(wait).await;
    }
}

struct Door {
    serving: Serving,
    intake: Mutex<Intake>,
    path: String,
    secret: String,
    /// Where the reason goes when nothing can be made durable any more.
    broken: mpsc::Sender<ServeError>,
}

async fn deliver(
    State(door): State<Arc<Door>>,
    method: Method,
    uri: Uri,
    headers: HeaderMap,
    body: Bytes,
) -> StatusCode {
    if method != Method::POST || uri.path() != door.path {
        return StatusCode::NOT_FOUND;
    }
    let given = headers.get(SECRET).map(|value| value.as_bytes()).unwrap_or_default();
    if !bool::from(given.ct_eq(door.secret.as_bytes())) {
        return StatusCode::UNAUTHORIZED;
    }
    let Some(update) = read(&body) else {
        tracing::error!("an update could not be read and was dropped");
        return StatusCode::OK; // it would come again and again
    };
    let rest = inline::take(&door.serving, vec![update]);
    if rest.is_empty() {
        return StatusCode::OK;
    }
    match door.intake.lock().await.take(rest).await {
        Ok(()) => StatusCode::OK,
        Err(error) => {
            let _ = door.broken.try_send(error); // the first reason is the one to tell
            StatusCode::INTERNAL_SERVER_ERROR
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
