//! The wire: routing, the four ways to pass parameters, long polling, webhooks, and connections that break.

use super::fault::Fault;
use super::schema::{self, Args, Upload};
use super::world::{Call, Refusal, World};
use super::{limits, methods};
use axum::body::{Body, Bytes};
use axum::extract::{FromRequest, Multipart, Request, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::{Router, extract::DefaultBodyLimit};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::sync::{Arc, Condvar, Mutex, MutexGuard};
use std::time::{Duration, Instant};
use tokio::sync::Notify;

/// Longest wait of a long poll, as on the platform.
const LONGEST_POLL: u64 = 50;

/// The world, and the ways to learn that it changed: `news` wakes waiting polls, `changed` waiting tests.
pub struct Shared {
    pub token: String,
    pub world: Mutex<World>,
    pub news: Notify,
    pub changed: Condvar,
}

impl Shared {
    pub fn world(&self) -> MutexGuard<'_, World> {
        self.world.lock().unwrap_or_else(std::sync::PoisonError::into_inner)
    }
}

pub fn router(shared: Arc<Shared>) -> Router {
    Router::new().fallback(serve).layer(DefaultBodyLimit::max(60 << 20)).with_state(shared)
}

async fn serve(State(shared): State<Arc<Shared>>, request: Request) -> Response {
    let path = request.uri().path().trim_start_matches('/').to_string();
    if shared.world().offline {
        return broken();
    }
    if path.is_empty() {
        // Nothing is asked but the time.
        let date = shared.world().now().format("%a, %d %b %Y %H:%M:%S GMT").to_string();
        return ([(header::DATE, date)], "").into_response();
    }
    if let Some(rest) = path.strip_prefix("file/") {
        return download(&shared, rest);
    }
    let Some((token, method)) = path.strip_prefix("bot").and_then(|rest| rest.split_once('/')) else {
        return refuse(Refusal::new(404, "Not Found"));
    };
    let (good, method) = (token == shared.token && shared.world().token_good, method.to_string());
    if !good {
        return refuse(Refusal::new(401, "Unauthorized"));
    }
    let args = match read(request).await {
        Ok(args) => args,
        Err(error) => {
            shared.world().violations.push(format!("{method}: {error}"));
            return refuse(Refusal::bad(error));
        }
    };
    let Some((name, values, mut wrong)) = schema::check_call(&method, &args) else {
        shared.world().violations.push(format!("{method}: no such method"));
        return refuse(Refusal::new(404, "Not Found"));
    };
    let call = Call { method: name, args: values, files: args.files, at: Instant::now(), ok: None };
    if wrong.is_empty() {
        wrong.extend(limits::check(&call));
    }
    let (number, fault) = {
        let mut world = shared.world();
        let fault = world.faults.meet(&call.method);
        world.calls.push(call.clone());
        if call.method != "getUpdates" {
            world.last_deed = Instant::now();
        }
        for wrong in &wrong {
            let violation = format!("{}: {wrong}", call.method);
            world.violations.push(violation);
        }
        (world.calls.len() - 1, fault)
    };
    shared.changed.notify_all();
    let guard = InFlight::enter(&shared, &call.method);
    let response =
        if let Some(first) = wrong.first() { refuse(Refusal::bad(first)) } else { answer(&shared, &call, fault).await };
    let ok = response.status() == StatusCode::OK;
    drop(guard);
    let mut world = shared.world();
    if let Some(call) = world.calls.get_mut(number) {
        call.ok = Some(ok);
    }
    drop(world);
    shared.changed.notify_all();
    response
}

/// Counts the calls being served, polls apart; also those whose client went away.
struct InFlight<'a>(Option<&'a Shared>);

impl<'a> InFlight<'a> {
    fn enter(shared: &'a Shared, method: &str) -> Self {
        if method == "getUpdates" {
            return Self(None);
        }
        shared.world().in_flight += 1;
        Self(Some(shared))
    }
}

impl Drop for InFlight<'_> {
    fn drop(&mut self) {
        if let Some(shared) = self.0 {
            shared.world().in_flight -= 1;
        }
    }
}

async fn answer(shared: &Arc<Shared>, call: &Call, fault: Option<Fault>) -> Response {
    match fault {
        Some(Fault::TooMany(seconds)) => {
            let mut refusal = Refusal::new(429, format!("Too Many Requests: retry after {seconds}"));
            refusal.parameters = Some(json!({"retry_after": seconds}));
            return refuse(refusal);
        }
        Some(Fault::Refuse(code, description)) => return refuse(Refusal::new(code, description)),
        Some(Fault::Page(status)) => {
            let page = format!("<html>Cannot GET http://127.0.0.1/bot{}/{}</html>", shared.token, call.method);
            return (StatusCode::from_u16(status).unwrap_or(StatusCode::BAD_GATEWAY), page).into_response();
        }
        Some(Fault::Reset) => return broken(),
        Some(Fault::Before(hook)) => {
            hook();
            return broken();
        }
        Some(Fault::Delay(time)) => tokio::time::sleep(time).await,
        _ => {}
    }
    let result = if call.method == "getUpdates" {
        poll(shared, call).await
    } else {
        let result = methods::apply(&mut shared.world(), call);
        shared.news.notify_waiters();
        result
    };
    match fault {
        Some(Fault::LoseReply) => return broken(),
        Some(Fault::After(hook)) => {
            hook();
            return broken();
        }
        _ => {}
    }
    match result {
        Ok(value) => axum::Json(json!({"ok": true, "result": value})).into_response(),
        Err(refusal) => refuse(refusal),
    }
}

async fn poll(shared: &Shared, call: &Call) -> Result<Value, Refusal> {
    let number = |key: &str, default: i64| call.args.get(key).and_then(Value::as_i64).unwrap_or(default);
    let (mut offset, limit) = (number("offset", 0), number("limit", 100).clamp(1, 100) as usize);
    let wait = (number("timeout", 0).max(0) as u64).min(LONGEST_POLL);
    let until = tokio::time::Instant::now() + Duration::from_secs(wait);
    let turn = {
        let mut world = shared.world();
        if world.webhook.is_some() {
            return Err(Refusal::new(
                409,
                "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
            ));
        }
        methods::allow(&mut world, call);
        world.poller += 1;
        if offset < 0 {
            let keep = usize::try_from(-offset).unwrap_or(usize::MAX);
            offset = {
                let first = world.updates.len().saturating_sub(keep);
                world.updates.get(first).map_or(0, |update| update.id)
            };
        }
        while world.updates.front().is_some_and(|update| update.id < offset) {
            let confirmed = world.updates.pop_front();
            world.confirmed.extend(confirmed);
            world.last_deed = Instant::now();
        }
        world.poller
    };
    shared.news.notify_waiters();
    shared.changed.notify_all();
    loop {
        let news = shared.news.notified();
        tokio::pin!(news);
        news.as_mut().enable();
        {
            let mut world = shared.world();
            if world.poller != turn {
                return Err(Refusal::new(
                    409,
                    "Conflict: terminated by other getUpdates request; make sure that only one bot instance is running",
                ));
            }
            world.expire();
            let mut batch: Vec<Value> = Vec::new();
            let replay = std::mem::take(&mut world.replay).min(world.confirmed.len());
            batch.extend(world.confirmed.iter().rev().take(replay).map(|update| update.json.clone()));
            let waiting = world.updates.iter().filter(|update| update.id >= offset);
            batch.extend(waiting.take(limit).map(|update| update.json.clone()));
            batch.truncate(limit);
            if let Some(seed) = &mut world.shuffle {
                shuffle(&mut batch, seed);
            }
            if !batch.is_empty() {
                return Ok(json!(batch));
            }
        }
        if tokio::time::timeout_at(until, news).await.is_err() {
            return Ok(json!([]));
        }
    }
}

/// Any order; the same for the same seed.
fn shuffle(batch: &mut [Value], seed: &mut u64) {
    for last in (1..batch.len()).rev() {
        *seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        batch.swap(last, (*seed >> 33) as usize % (last + 1));
    }
}

fn refuse(refusal: Refusal) -> Response {
    let mut body = json!({"ok": false, "error_code": refusal.code, "description": refusal.description});
    if let Some(parameters) = refusal.parameters {
        body["parameters"] = parameters;
    }
    (StatusCode::from_u16(refusal.code).unwrap_or(StatusCode::BAD_REQUEST), axum::Json(body)).into_response()
}

/// A reply that never comes: its body fails before the first byte and hyper closes the connection. The status is 200
/// because the client must see a broken connection, not a server error.
fn broken() -> Response {
    let body = Body::from_stream(Broken);
    Response::builder().status(StatusCode::OK).header(header::CONTENT_LENGTH, "1000").body(body).unwrap_or_default()
}

struct Broken;

impl futures_core::Stream for Broken {
    type Item = Result<Bytes, std::io::Error>;
    fn poll_next(
        self: std::pin::Pin<&mut Self>,
        _: &mut std::task::Context<'_>,
    ) -> std::task::Poll<Option<Self::Item>> {
        std::task::Poll::Ready(Some(Err(std::io::Error::other("connection closed on purpose"))))
    }
}

fn download(shared: &Shared, rest: &str) -> Response {
    // teloxide writes the path of a file as one segment.
    let rest = rest.replace("%2F", "/");
    let place = rest.strip_prefix("bot").and_then(|rest| rest.split_once("/documents/"));
    match place {
        Some((token, id)) if token == shared.token => match shared.world().files.get(id) {
            Some(file) => file.bytes.clone().into_response(),
            None => refuse(Refusal::new(404, "Not Found")),
        },
        _ => refuse(Refusal::new(401, "Unauthorized")),
    }
}

async fn read(request: Request) -> Result<Args, String> {
    let mut args = Args::default();
    args.text.extend(pairs(request.uri().query().unwrap_or_default()));
    let kind = request.headers().get(header::CONTENT_TYPE).and_then(|v| v.to_str().ok()).unwrap_or_default();
    let kind = kind.split(';').next().unwrap_or_default().trim().to_ascii_lowercase();
    match kind.as_str() {
        "multipart/form-data" => {
            let mut form = Multipart::from_request(request, &()).await.map_err(|error| error.to_string())?;
            while let Some(part) = form.next_field().await.map_err(|error| error.to_string())? {
                let name = part.name().unwrap_or_default().to_string();
                let file = part.file_name().map(str::to_string);
                let mime = part.content_type().unwrap_or_default().to_string();
                let bytes = part.bytes().await.map_err(|error| error.to_string())?.to_vec();
                match file {
                    Some(file) => drop(args.files.insert(name, Upload { name: file, mime, bytes })),
                    None => drop(args.text.insert(name, String::from_utf8(bytes).map_err(|error| error.to_string())?)),
                }
            }
        }
        "application/x-www-form-urlencoded" => {
            let body = Bytes::from_request(request, &()).await.map_err(|error| error.to_string())?;
            args.text.extend(pairs(&String::from_utf8_lossy(&body)));
        }
        _ => {
            let body = Bytes::from_request(request, &()).await.map_err(|error| error.to_string())?;
            if !body.is_empty() {
                match serde_json::from_slice(&body) {
                    Ok(Value::Object(json)) => args.json = json,
                    _ => return Err("can't parse request JSON object".to_string()),
                }
            }
        }
    }
    Ok(args)
}

fn pairs(text: &str) -> BTreeMap<String, String> {
    url_decode::parse(text)
}

/// `application/x-www-form-urlencoded`.
mod url_decode {
    use std::collections::BTreeMap;

    pub fn parse(text: &str) -> BTreeMap<String, String> {
        let pair = |pair: &str| {
            let (key, value) = pair.split_once('=').unwrap_or((pair, ""));
            (decode(key), decode(value))
        };
        text.split('&').filter(|part| !part.is_empty()).map(pair).collect()
    }

    fn decode(text: &str) -> String {
        let mut bytes = Vec::with_capacity(text.len());
        let mut rest = text.as_bytes();
        while let Some((&first, tail)) = rest.split_first() {
            let hex = tail.get(..2).and_then(|hex| u8::from_str_radix(std::str::from_utf8(hex).ok()?, 16).ok());
            match (first, hex) {
                (b'%', Some(byte)) => {
                    bytes.push(byte);
                    rest = &tail[2..];
                }
                (b'+', _) => {
                    bytes.push(b' ');
                    rest = tail;
                }
                _ => {
                    bytes.push(first);
                    rest = tail;
                }
            }
        }
        String::from_utf8_lossy(&bytes).into_owned()
    }
}

/// Delivers updates to `target` (the program's own listener) as the platform would to the webhook's URL: in order, again
/// after a failure, with the secret.
pub async fn deliver(shared: Arc<Shared>, target: String) {
    let client = reqwest::Client::new();
    loop {
        let next = {
            let mut world = shared.world();
            world.expire();
            let first = world.updates.front().map(|update| (update.id, update.json.clone()));
            world.webhook.clone().zip(first)
        };
        let Some(((url, secret), (id, update))) = next else {
            let _ = tokio::time::timeout(Duration::from_millis(20), shared.news.notified()).await;
            continue;
        };
        let path = url.splitn(4, '/').nth(3).unwrap_or_default();
        let mut request = client.post(format!("{target}/{path}")).json(&update);
        if let Some(secret) = secret {
            request = request.header("X-Telegram-Bot-Api-Secret-Token", secret);
        }
        match request.send().await {
            Ok(response) if response.status().is_success() => {
                let mut world = shared.world();
                if world.updates.front().is_some_and(|update| update.id == id) {
                    let confirmed = world.updates.pop_front();
                    world.confirmed.extend(confirmed);
                }
            }
            _ => tokio::time::sleep(Duration::from_millis(50)).await,
        }
        shared.changed.notify_all();
    }
}
