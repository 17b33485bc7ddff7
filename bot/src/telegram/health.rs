//! What supervisors ask: a listener with `/health` and `/metrics`, and the notices of systemd's service manager (sd_notify(3)).

use super::pulse::Pulse;
use super::{ServeError, Serving, blocking};
use crate::clock::Clock;
use axum::Router;
use axum::extract::State;
use axum::http::{StatusCode, header};
use axum::response::IntoResponse;
use axum::routing::get;
use std::net::SocketAddr;
use tokio::net::TcpListener;

/// The content type of the OpenMetrics specification, version 1.0.0.
const OPEN_METRICS: &str = "application/openmetrics-text; version=1.0.0; charset=utf-8";

/// Answers at `address` for as long as it is polled.
///
/// # Errors
/// [`ServeError::Listen`] where nobody can listen there.
pub async fn listen(address: SocketAddr, serving: Serving) -> Result<(), ServeError> {
    let listener = TcpListener::bind(address).await.map_err(|source| ServeError::Listen { address, source })?;
    let router = Router::new().route("/health", get(health)).route("/metrics", get(metrics)).with_state(serving);
    Ok(axum::serve(listener, router).await?)
}

async fn health(State(serving): State<Serving>) -> (StatusCode, String) {
    match serving.pulse.stuck() {
        None if !serving.pulse.serves() => {
            (StatusCode::SERVICE_UNAVAILABLE, "the Bot API is not reachable yet\n".to_owned())
        }
        None => (StatusCode::OK, "ok\n".to_owned()),
        Some((round, silent)) => {
            (StatusCode::SERVICE_UNAVAILABLE, format!("{round:?} has not gone round for {} s\n", silent.as_secs()))
        }
    }
}

async fn metrics(State(serving): State<Serving>) -> Result<impl IntoResponse, StatusCode> {
    // Where a turn is being taken it waits for it.
    let text = blocking(move || Ok(serving.pulse.text(&serving.engine, serving.clock.now()))).await;
    let text = text.ok().and_then(Result::ok).ok_or(StatusCode::INTERNAL_SERVER_ERROR)?;
    Ok(([(header::CONTENT_TYPE, OPEN_METRICS)], text))
}

/// Tells the service manager that the program has begun, and from then on that it lives, as often as asked for. Never returns.
#[cfg(unix)]
pub async fn tell_systemd(pulse: &Pulse) {
    use sd_notify::NotifyState;
    notify(&[NotifyState::Ready]);
    let Some(within) = sd_notify::watchdog_enabled() else { return std::future::pending().await };
    loop {
        if pulse.stuck().is_none() {
            notify(&[NotifyState::Watchdog]);
        }
        tokio::time::sleep(within / 3).await;
    }
}

/// There is no such service manager here. Never returns.
#[cfg(not(unix))]
pub async fn tell_systemd(_: &Pulse) {
    std::future::pending().await
}

/// Tells the service manager that the program is about to end.
pub fn stopping() {
    #[cfg(unix)]
    notify(&[sd_notify::NotifyState::Stopping]);
}

#[cfg(unix)]
fn notify(states: &[sd_notify::NotifyState<'_>]) {
    if let Err(error) = sd_notify::notify(states) {
        tracing::warn!(%error, "the service manager can't be told");
    }
}
