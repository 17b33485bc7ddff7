//! The bot on Telegram: four tasks around the engine.
//!
//! | task | does |
//! |---|---|
//! | `polling` or `webhook` | receives updates, makes them durable (`intake`), only then confirms them |
//! | `turns` (here) | takes the inbox and the due bells through their turns; sleeps to the next bell |
//! | `outbound` | drains the outbox within the platform's limits |
//! | `files` | fetches the files sent to be read |
//!
//! Inline queries (`inline`) pass all four by: they are answered from memory as they come.
//!
//! Owns everything that is Telegram's: updates, limits, refusals, menus. Decides nothing. The token stays in [`Token`] and in
//! the Bot API client; neither is ever printed. Logs hold no personal data. Start at [`serve`]; tests start at [`Server`].

mod exports;
mod files;
mod greeting;
mod health;
mod hear;
mod inline;
mod intake;
mod menu;
mod outbound;
mod pace;
mod patience;
mod polling;
mod pulse;
mod refusal;
pub mod rows;
mod send;
pub mod split;
mod steady;
mod webhook;

use crate::book::{BookError, keeper};
use crate::clock::{Clock, SystemClock, sleep_until};
use crate::engine::{Arrival, Engine};
use crate::reading::Lexicon;
use crate::room::decide;
use crate::words::{Arg, Text, Voice};
use chrono::{DateTime, Utc};
use exports::Exports;
use hear::Identity;
use intake::Intake;
pub use pace::{BOARD_EVERY, Pace};
pub use patience::Patience;
use pulse::{Pulse, Round};
use std::net::SocketAddr;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;
use steady::Steady;
use teloxide::Bot;
use tokio::sync::{Notify, watch};
use tokio::task::JoinHandle;
use tokio::time::{Instant, timeout_at};

/// A bot token. Printing it shows that there is one, not which.
#[derive(Clone)]
pub struct Token(String);

impl std::fmt::Debug for Token {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.write_str("Token(...)")
    }
}

/// How to reach the platform.
#[derive(Debug, Clone)]
pub struct Options {
    /// The token.
    pub token: Token,
    /// Base URL of another Bot API server.
    pub api_url: Option<String>,
    /// Where the platform delivers; without it, it is asked.
    pub webhook: Option<Webhook>,
    /// Where supervisors may ask how it goes.
    pub health: Option<SocketAddr>,
}

/// The platform delivers instead of being asked.
#[derive(Debug, Clone)]
pub struct Webhook {
    /// The address the platform knows: `https`. Whatever answers there passes requests on to `listen`.
    pub url: String,
    /// Where this program listens, without encryption: not meant for the open network.
    pub listen: SocketAddr,
}

impl Options {
    /// From `TELOXIDE_TOKEN` and `TELOXIDE_API_URL`.
    ///
    /// # Errors
    /// [`ServeError::NoToken`].
    pub fn from_env() -> Result<Self, ServeError> {
        let set =
            |name| std::env::var(name).ok().map(|value| value.trim().to_owned()).filter(|value| !value.is_empty());
        let token = Token(set("TELOXIDE_TOKEN").ok_or(ServeError::NoToken)?);
        Ok(Self { token, api_url: set("TELOXIDE_API_URL"), webhook: None, health: None })
    }

    /// With this token and, if given, another server.
    pub fn new(token: &str, api_url: Option<&str>) -> Self {
        Self { token: Token(token.to_owned()), api_url: api_url.map(str::to_owned), webhook: None, health: None }
    }

    /// A client for short requests, with the settings of teloxide.
    ///
    /// # Errors
    /// [`ServeError::BadUrl`] and [`ServeError::NoClient`].
    pub fn bot(&self) -> Result<Bot, ServeError> {
        self.bot_that_waits(SHORT)
    }

    fn bot_that_waits(&self, longest: Duration) -> Result<Bot, ServeError> {
        let client = teloxide::net::default_reqwest_settings().timeout(longest).build();
        let bot = Bot::with_client(&self.token.0, client.map_err(|_| ServeError::NoClient)?);
        let Some(text) = &self.api_url else { return Ok(bot) };
        let bad = || ServeError::BadUrl { url: text.clone() };
        let web = text.starts_with("http://") || text.starts_with("https://");
        Ok(bot.set_api_url(text.parse().ok().filter(|_| web).ok_or_else(bad)?))
    }
}

/// How long stopping may take, whatever hangs; with a second for the runtime it is what README.md promises.
const STOP_WITHIN: Duration = Duration::from_secs(4);

/// Longest wait for an answer that comes at once.
const SHORT: Duration = Duration::from_secs(17);

/// Why serving ended.
#[derive(Debug, thiserror::Error)]
pub enum ServeError {
    /// No token is set.
    #[error("TELOXIDE_TOKEN is not set")]
    NoToken,
    /// The platform does not accept the token.
    #[error("the token is not accepted")]
    BadToken,
    /// Another process serves with this token.
    #[error("another process asks for updates with this token")]
    Conflict,
    /// The book was kept by another bot: a folder or a backup of its.
    #[error("the data belong to another bot")]
    OtherBot,
    /// The base URL is none.
    #[error("{url:?} is no base URL")]
    BadUrl {
        /// What was given.
        url: String,
    },
    /// What answers at the base URL is no Bot API.
    #[error("{url:?} has no Bot API")]
    NoApi {
        /// Where, without what may be secret in it.
        url: String,
    },
    /// The platform does not deliver to this address.
    #[error("{url:?} is refused as a webhook")]
    BadWebhook {
        /// What was given.
        url: String,
    },
    /// Another program listens there, or the address is not ours.
    #[error("{address}: {source}")]
    Listen {
        /// What was given.
        address: SocketAddr,
        /// What the system said.
        source: std::io::Error,
    },
    /// No client for the network could be made.
    #[error("the network client cannot be set up")]
    NoClient,
    /// No threads, no signals.
    #[error("the system refuses: {0}")]
    System(#[from] std::io::Error),
    /// The book cannot be used.
    #[error(transparent)]
    Book(#[from] BookError),
}

impl ServeError {
    /// For a person: what happened, and what to do.
    pub fn texts(&self) -> (Text, Text) {
        let pair = |what, to_do| (Text::new(what), Text::new(to_do));
        match self {
            Self::NoToken => pair("telegram-no-token", "telegram-no-token-do"),
            Self::BadToken => pair("telegram-bad-token", "telegram-bad-token-do"),
            Self::Conflict => pair("telegram-conflict", "telegram-conflict-do"),
            Self::OtherBot => pair("telegram-other-bot", "telegram-other-bot-do"),
            Self::BadUrl { url } => (
                Text::new("telegram-bad-url").with("url", Arg::Verbatim(url.clone())),
                Text::new("telegram-bad-url-do"),
            ),
            Self::NoApi { url } => {
                (Text::new("telegram-no-api").with("url", Arg::Verbatim(url.clone())), Text::new("telegram-no-api-do"))
            }
            Self::BadWebhook { url } => (
                Text::new("telegram-bad-webhook").with("url", Arg::Verbatim(url.clone())),
                Text::new("telegram-bad-webhook-do"),
            ),
            Self::Listen { address, source } => (
                Text::new("telegram-listen")
                    .with("address", Arg::Verbatim(address.to_string()))
                    .with("reason", Arg::Verbatim(source.to_string())),
                Text::new("telegram-listen-do"),
            ),
            Self::NoClient | Self::System(_) => pair("telegram-system", "telegram-system-do"),
            Self::Book(error) => error.texts(),
        }
    }
}

/// What a delivery lets a room hear when nothing can be looked up. For tests: the tasks read with the same functions.
pub fn overhear(delivery: &[u8], id: i64, username: &str) -> Option<Arrival> {
    let (update, me) = (webhook::read(delivery)?, Identity { id, username: username.to_owned() });
    let _ = (hear::needs_admins(&update), hear::needs_key(&update), hear::needs_member(&update));
    let _ = hear::speech(&update);
    let arrival = hear::hear(&update, &me, &intake::Nothing)?;
    let _ = hear::flooded(arrival.clone());
    Some(arrival)
}

/// What the tasks share.
#[derive(Clone)]
struct Serving {
    bot: Bot,
    engine: Arc<Engine>,
    voice: Arc<Voice>,
    clock: Arc<Steady>,
    /// What an operator can watch.
    pulse: Arc<Pulse>,
    /// There may be something to decide.
    turns: Arc<Notify>,
    /// There may be something to send.
    outbound: Arc<Notify>,
    /// There may be a file to fetch.
    files: Arc<Notify>,
    /// How much is listened to.
    patience: Arc<Patience>,
}

/// Serves with the book in `data` until SIGINT or SIGTERM. Blocks.
///
/// # Errors
/// When it cannot start, or cannot go on: see [`ServeError`].
pub fn serve(options: &Options, data: &Path, voice: Arc<Voice>) -> Result<(), ServeError> {
    quiet_panics();
    let bot = options.bot()?;
    let written = keeper::written(data);
    // Beside the opening of the book: the first text need not wait for it.
    std::thread::spawn(Lexicon::read_all);
    let (book, recovered) = keeper::open(data, Utc::now())?;
    if let Some(recovered) = recovered {
        tracing::error!(
            aside = %recovered.aside.display(),
            export = %recovered.export.display(),
            missing = recovered.missing,
            "the saved data was damaged; it is put aside, and the newest export goes on; what was heard and said after it is missing"
        );
    }
    let engine = Engine::new(Arc::new(book), Arc::clone(&voice) as _, decide)?;
    let mut server = Server::new(bot, Arc::new(engine), voice);
    server.data = Some(data.into());
    server.written = written;
    server.webhook = options.webhook.clone();
    server.health = options.health;
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build()?;
    let served = runtime.block_on(async {
        let ended = asked_to_stop()?;
        server.run(ended).await
    });
    runtime.shutdown_timeout(Duration::from_secs(1));
    served
}

/// Serves by long polling until `shutdown` is done.
///
/// # Errors
/// See [`serve`].
pub async fn serve_with(
    bot: Bot,
    engine: Arc<Engine>,
    voice: Arc<Voice>,
    shutdown: impl Future<Output = ()>,
) -> Result<(), ServeError> {
    Server::new(bot, engine, voice).run(shutdown).await
}

/// Everything serving needs.
pub struct Server {
    bot: Bot,
    engine: Arc<Engine>,
    voice: Arc<Voice>,
    /// The time. Whoever sets it by hand calls `set.notify_one()` so that it is looked at.
    pub clock: Arc<dyn Clock>,
    /// See `clock`.
    pub set: Arc<Notify>,
    /// How fast messages may go.
    pub pace: Pace,
    /// How much of what one person or chat says is listened to.
    pub patience: Patience,
    /// Where the platform delivers; without it, it is asked.
    pub webhook: Option<Webhook>,
    /// Where supervisors may ask how it goes.
    pub health: Option<SocketAddr>,
    /// The data directory, for the daily exports; without it there are none.
    pub data: Option<PathBuf>,
    /// When the data was last written, if that is known: a clock that shows an earlier time is wrong.
    pub written: Option<DateTime<Utc>>,
    /// By webhook: how often the platform is asked whether it still delivers here.
    pub ask_every: Duration,
    /// After which silence a loop counts as hanging.
    pub hangs_after: Duration,
}

impl Server {
    /// By the system's clock and long polling, at the platform's pace.
    pub fn new(bot: Bot, engine: Arc<Engine>, voice: Arc<Voice>) -> Self {
        let (clock, set, pace) = (Arc::new(SystemClock), Arc::default(), Pace::default());
        let patience = Patience::default();
        Self {
            bot,
            engine,
            voice,
            clock,
            set,
            pace,
            patience,
            webhook: None,
            health: None,
            data: None,
            written: None,
            ask_every: webhook::ASK_EVERY,
            hangs_after: pulse::STUCK,
        }
    }

    /// Serves until `shutdown` is done.
    ///
    /// # Errors
    /// See [`serve`].
    pub async fn run(self, shutdown: impl Future<Output = ()>) -> Result<(), ServeError> {
        let Self {
            bot,
            engine,
            voice,
            clock,
            set,
            pace,
            patience,
            webhook,
            health,
            data,
            written,
            ask_every,
            hangs_after,
        } = self;
        let (outbound, files, patience) = (Arc::default(), Arc::default(), Arc::new(patience));
        let pulse = Arc::new(Pulse::with_patience(hangs_after));
        let clock = Arc::new(Steady::new(clock));
        let voice_of_menu = Arc::clone(&voice);
        let serving = Serving { bot, engine, voice, clock, pulse, turns: set, outbound, files, patience };
        let pulse = Arc::clone(&serving.pulse);
        let (watched, told) = (watched(health, serving.clone()), health::tell_systemd(&pulse));
        tokio::pin!(shutdown, watched, told);
        // An outage is no failed start: whoever supervises the program hears from it before the platform has answered.
        let me = tokio::select! {
            me = greeting::introduce(&serving.bot, &*serving.clock, &pulse, written) => me?,
            refused = &mut watched => return refused,
            () = &mut told => return Ok(()),
            () = &mut shutdown => return Ok(()),
        };
        let (engine, id) = (Arc::clone(&serving.engine), me.id);
        if !blocking(move || engine.is_kept_by(id)).await? {
            return Err(ServeError::OtherBot);
        }
        pulse.begin();
        tracing::info!(name = me.username, "serving");
        let (end_in, ending_in) = watch::channel(false);
        let (end_out, ending_out) = watch::channel(None);
        let menu_bot = serving.bot.clone();
        let menu = tokio::spawn(async move { menu::publish(&menu_bot, &voice_of_menu).await });
        let home = me.username.clone();
        let mut inbound = receive(&serving, me, webhook.map(|webhook| (webhook, ask_every)), ending_in.clone())?;
        let mut fetching = tokio::spawn(files::run(serving.clone(), ending_in.clone()));
        let mut turns = tokio::spawn(turns(serving.clone(), data, ending_in));
        let mut outbound = tokio::spawn(outbound::run(serving, home, pace, ending_out));
        let all = [&inbound, &fetching, &turns, &outbound].map(JoinHandle::abort_handle);
        // Whichever ends first says why. A task that panics is as good as ended: nothing confirmed is lost by stopping.
        let early = tokio::select! {
            ended = &mut inbound => Some(flatten(ended)),
            ended = &mut fetching => Some(flatten(ended)),
            ended = &mut turns => Some(flatten(ended)),
            ended = &mut outbound => Some(flatten(ended)),
            refused = &mut watched => Some(refused),
            () = &mut told => None,
            () = &mut shutdown => None,
        };
        health::stopping();
        let served = match early {
            Some(ended) => ended,
            None => {
                tracing::info!("stopping");
                let deadline = Instant::now() + STOP_WITHIN;
                end_in.send_replace(true);
                let heard = async { flatten(inbound.await).and(flatten(fetching.await)).and(flatten(turns.await)) };
                // What hangs is cut off: nothing of it was confirmed.
                let heard = timeout_at(deadline, heard).await.unwrap_or(Ok(()));
                end_out.send_replace(Some(deadline));
                heard.and(flatten(outbound.await))
            }
        };
        all.iter().chain([&menu.abort_handle()]).for_each(tokio::task::AbortHandle::abort);
        served
    }
}

/// Answers supervisors, if that is wished; returns only when it can't.
async fn watched(address: Option<SocketAddr>, serving: Serving) -> Result<(), ServeError> {
    match address {
        Some(address) => health::listen(address, serving).await,
        None => std::future::pending().await,
    }
}

/// Starts receiving, one way or the other.
fn receive(
    serving: &Serving,
    me: Identity,
    webhook: Option<(Webhook, Duration)>,
    ending: watch::Receiver<bool>,
) -> Result<JoinHandle<Result<(), ServeError>>, ServeError> {
    let intake = Intake::new(serving.clone(), me);
    let bot = &serving.bot;
    Ok(match webhook {
        Some((webhook, every)) => tokio::spawn(webhook::run(bot.clone(), intake, webhook, every, ending)),
        None => {
            let options = Options::new(bot.token(), Some(bot.api_url().as_str()));
            tokio::spawn(polling::run(options.bot_that_waits(polling::LONGEST)?, intake, ending))
        }
    })
}

fn flatten(ended: Result<Result<(), ServeError>, tokio::task::JoinError>) -> Result<(), ServeError> {
    ended.unwrap_or_else(|error| Err(ServeError::System(std::io::Error::other(error.to_string()))))
}

/// How often it is looked whether calls have to go ahead of their time, while they do.
const LOOK_AHEAD: Duration = Duration::from_secs(5);

/// Takes what was heard and what is due through its turns, until `ending`; then once more.
async fn turns(serving: Serving, data: Option<PathBuf>, mut ending: watch::Receiver<bool>) -> Result<(), ServeError> {
    let mut exports = Exports::new(data);
    loop {
        serving.pulse.beat(Round::Turns);
        let ended = *ending.borrow();
        if serving.clock.jumped() && !ended {
            tokio::select! {
                () = serving.clock.ask(&serving.bot, &serving.pulse) => {}
                _ = ending.changed() => continue,
            }
        }
        let (engine, now) = (Arc::clone(&serving.engine), serving.clock.now());
        exports.look_after(&serving, now).await;
        let (taken, rung, next, crowded) = blocking(move || {
            let (taken, rung) = (engine.work(now)?, engine.ring(now)?);
            Ok((taken, rung, engine.next_bell()?, engine.is_crowded()))
        })
        .await?;
        serving.pulse.turns.inc_by((taken + rung) as u64);
        serving.outbound.notify_one();
        if ended {
            return Ok(());
        }
        let next = next.into_iter().chain(exports.due()).min();
        tokio::select! {
            () = serving.turns.notified() => {}
            () = tokio::time::sleep(sleep_until(next, serving.clock.now())) => {}
            () = tokio::time::sleep(if rung > 0 { Duration::ZERO } else { LOOK_AHEAD }), if crowded => {}
            _ = ending.changed() => {}
        }
    }
}

/// Runs something that waits for the disk where that holds up nobody.
async fn blocking<T: Send + 'static>(
    work: impl FnOnce() -> Result<T, BookError> + Send + 'static,
) -> Result<T, ServeError> {
    match tokio::task::spawn_blocking(work).await {
        Ok(done) => Ok(done?),
        Err(error) => Err(ServeError::System(std::io::Error::other(error.to_string()))),
    }
}

/// Done when the system asks to end: SIGTERM, or SIGINT from a keyboard.
///
/// # Errors
/// Where signals can't be heard.
pub fn asked_to_stop() -> Result<impl Future<Output = ()>, ServeError> {
    #[cfg(unix)]
    let mut terminate = tokio::signal::unix::signal(tokio::signal::unix::SignalKind::terminate())?;
    Ok(async move {
        #[cfg(unix)]
        tokio::select! {
            _ = tokio::signal::ctrl_c() => {}
            _ = terminate.recv() => {}
        }
        #[cfg(not(unix))]
        let _ = tokio::signal::ctrl_c().await;
    })
}

/// A panic's message can quote what people wrote: only its place is logged from now on.
pub fn quiet_panics() {
    std::panic::set_hook(Box::new(|panic| {
        let place = panic.location().map(ToString::to_string).unwrap_or_default();
        tracing::error!(place, "a panic");
    }));
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn printing_the_options_does_not_show_the_token() {
        let options = Options::new("42:very-secret", Some("http://localhost:8081"));
        assert!(!format!("{options:?}").contains("very-secret"));
        assert!(options.bot().is_ok());
    }

    #[tokio::test]
    async fn printing_what_went_wrong_with_a_call_does_not_show_the_token() {
        let bot = Options::new("42:very-secret", Some("http://127.0.0.1:9")).bot().unwrap();
        let error = teloxide::requests::Requester::get_me(&bot).await.unwrap_err();
        let mut shown = format!("{error} {error:?} {:?}", ServeError::System(std::io::Error::other(error.to_string())));
        let mut cause: Option<&dyn std::error::Error> = Some(&error);
        while let Some(error) = cause {
            shown += &format!(" {error} {error:?}");
            cause = error.source();
        }
        assert!(!shown.contains("very-secret"), "{shown}");
    }

    #[test]
    fn an_address_that_is_no_base_url_is_named() {
        for url in ["localhost", "ftp://localhost", "http://", "mailto:cook@example.org"] {
            let refused = Options::new("42:x", Some(url)).bot().err();
            assert!(matches!(refused, Some(ServeError::BadUrl { .. })), "{url}: {refused:?}");
        }
    }
}
