//! The program: reads the command line, runs what it asks for, and decides the exit status.
//!
//! Status 0: done (a reader who closed the pipe is done too). 1: it failed, one line on stderr says what happened and
//! what to do. 2: wrong usage. Only answers go to stdout.

use carvetime::ask::{self, Printed};
use carvetime::book::{self, BookError};
use carvetime::cli::{self, Cli, Command};
use carvetime::engine::Engine;
use carvetime::forecast_cli::{self, Flags, ForecastStop};
use carvetime::memory;
use carvetime::redact;
use carvetime::rehearse::{self, PlayError, Script};
use carvetime::room::decide;
use carvetime::room::state::Taste;
use carvetime::telegram::{self, ServeError};
use carvetime::terminal::{Chat, ChatError, Stage, live, piped};
use carvetime::words::{Arg, Reader, Text, Voice, plain};
use chrono::Utc;
use std::io::{self, ErrorKind, IsTerminal, Write};
use std::path::Path;
use std::process::ExitCode;
use std::sync::Arc;

/// Why the program did not do what it was asked.
enum Stop {
    /// Nobody reads on: that is no error.
    ClosedPipe,
    /// Wrong usage.
    Usage(Text),
    /// What happened, and what to do.
    Failed(Vec<Text>),
    /// The same, in words already.
    Said(String),
}

fn main() -> ExitCode {
    let voice = Arc::new(Voice::new());
    let cli = match cli::read(std::env::args_os().collect(), &voice) {
        Ok(cli) => cli,
        Err(error) => {
            let _ = error.print(); // a closed pipe is not an error
            return ExitCode::from(u8::try_from(error.exit_code()).unwrap_or(2));
        }
    };
    log_to_stderr(&cli);
    let reader = cli.common.reader();
    let told = reader.clone().unwrap_or_else(|_| Reader::new(&cli.common.tag(), chrono_tz::UTC, Utc::now()));
    let stop = match reader {
        Ok(reader) => run(&cli, &voice, &reader),
        Err(text) => Err(Stop::Usage(text)),
    };
    let said = |texts: &[Text]| plain(&voice.render(texts, &told));
    let (status, said) = match stop {
        Ok(()) | Err(Stop::ClosedPipe) => return ExitCode::SUCCESS,
        Err(Stop::Usage(text)) => (2, said(&[text])),
        Err(Stop::Failed(texts)) => (1, said(&texts)),
        Err(Stop::Said(said)) => (1, said),
    };
    let _ = writeln!(redact::stderr(), "{}", said.replace('\n', " ")); // nowhere left to complain
    ExitCode::from(status)
}

/// `RUST_LOG` decides; without it a server tells what it does, and everything else only what went wrong.
fn log_to_stderr(cli: &Cli) {
    let usual = match cli.command {
        Some(Command::Serve { .. }) => "warn,carvetime=info",
        _ => "off,carvetime=error",
    };
    redact::log(usual);
}

fn run(cli: &Cli, voice: &Arc<Voice>, reader: &Reader) -> Result<(), Stop> {
    match &cli.command {
        None | Some(Command::Chat) => chat(cli, voice, reader),
        Some(Command::Serve { webhook, listen, health }) => {
            memory::bound();
            let mut options = telegram::Options::from_env()?;
            options.webhook = webhook.clone().zip(*listen).map(|(url, listen)| telegram::Webhook { url, listen });
            options.health = *health;
            Ok(telegram::serve(&options, &cli.common.data().map_err(Stop::Usage)?, Arc::clone(voice))?)
        }
        Some(Command::Ask { text, json }) => match ask::answer_line(&text.join(" "), reader, voice, *json) {
            Printed::Answer(answer) => Ok(writeln!(io::stdout(), "{answer}")?),
            Printed::NotUnderstood(said) => Err(Stop::Said(said)),
        },
        Some(Command::Forecast(flags)) => forecast(flags, voice, reader),
        Some(Command::Rehearse { file, json }) => rehearse(file, *json, voice, reader),
        Some(Command::Backup { file }) => {
            let book = book::keeper::open_sound(&cli.common.data().map_err(Stop::Usage)?)?;
            let rows = book::backup(&book, file)?;
            print(&rows_moved(Text::new("cli-backed-up"), rows, file), voice, reader)
        }
        Some(Command::Restore { file }) => {
            let rows = book::restore(file, &cli.common.data().map_err(Stop::Usage)?)?;
            print(&rows_moved(Text::new("cli-restored"), rows, file), voice, reader)
        }
    }
}

fn forecast(flags: &Flags, voice: &Voice, reader: &Reader) -> Result<(), Stop> {
    let mut out = io::BufWriter::new(io::stdout().lock());
    forecast_cli::run(flags, voice, reader, &mut out, &mut io::stderr()).map_err(|stop| match stop {
        ForecastStop::Flag(text) => Stop::Usage(text),
        ForecastStop::Log(problem) => Stop::Failed(vec![problem.text()]),
        ForecastStop::File(error) => file_failed(&flags.file, &error),
        ForecastStop::Out(error) => error.into(),
    })
}

fn rows_moved(text: Text, rows: u64, file: &Path) -> Text {
    let rows = Arg::Count(i64::try_from(rows).unwrap_or(i64::MAX));
    text.with("rows", rows).with("path", Arg::Verbatim(file.display().to_string()))
}

fn print(text: &Text, voice: &Voice, reader: &Reader) -> Result<(), Stop> {
    Ok(writeln!(io::stdout(), "{}", voice.label(text, reader))?)
}

fn chat(cli: &Cli, voice: &Arc<Voice>, reader: &Reader) -> Result<(), Stop> {
    let dir = cli.common.data().map_err(Stop::Usage)?;
    let (book, recovered) = book::keeper::open(&dir, Utc::now())?;
    if let Some(recovered) = recovered {
        let path = |path: &Path| Arg::Verbatim(path.display().to_string());
        let missing = i64::try_from(recovered.missing).unwrap_or(i64::MAX);
        let text = Text::new("book-recovered")
            .with("aside", path(&recovered.aside))
            .with("export", path(&recovered.export))
            .with("missing", Arg::Count(missing));
        let _ = writeln!(redact::stderr(), "{}", voice.label(&text, reader)); // nowhere left to complain
    }
    let engine = Engine::new(Arc::new(book), Arc::clone(voice) as _, decide)?;
    engine.export_daily(&dir, Utc::now())?;
    let taste =
        Taste { language: Some(reader.locale.clone()), zone: Some(reader.zone.name().to_owned()), ..Taste::default() };
    // Numbers of messages must be new in every session.
    let mut stage = Stage::new(engine, taste, None, Utc::now().timestamp())?;
    stage.impose(&Taste { language: cli.common.locale.clone(), zone: cli.common.zone.clone(), ..Taste::default() })?;
    let mut chat = Chat::new(stage, Arc::clone(voice), reader.clone(), dir.join("files"));
    let mut out = io::stdout().lock();
    if io::stdin().is_terminal() {
        live(&mut chat, Utc::now, dir.join("history"), &mut out)?;
    } else {
        piped(&mut chat, Utc::now, io::stdin().lock(), &mut out)?;
    }
    Ok(())
}

fn rehearse(file: &Path, json: bool, voice: &Arc<Voice>, reader: &Reader) -> Result<(), Stop> {
    let bytes = std::fs::read(file).map_err(|error| file_failed(file, &error))?;
    let text = String::from_utf8_lossy(&bytes);
    let script = Script::parse(&text, reader.zone, &reader.locale).map_err(|error| {
        let line = Arg::Count(i64::try_from(error.line).unwrap_or(i64::MAX));
        let line = Text::new("cli-script-line").with("line", line);
        Stop::Failed(vec![line.with("reason", error.reason.text().into())])
    })?;
    let mut out = io::BufWriter::new(io::stdout().lock());
    let played = rehearse::rehearse(&script, decide, voice, json, &mut out);
    out.flush()?;
    Ok(played?)
}

fn file_failed(file: &Path, error: &io::Error) -> Stop {
    let what = Text::new("cli-file-failed")
        .with("path", Arg::Verbatim(file.display().to_string()))
        .with("what", Arg::Verbatim(error.to_string()));
    Stop::Failed(vec![what, Text::new("cli-file-failed-do")])
}

fn failed(what: String) -> Stop {
    Stop::Failed(vec![Text::new("cli-failed").with("what", Arg::Verbatim(what)), Text::new("cli-failed-do")])
}

impl From<io::Error> for Stop {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            ErrorKind::BrokenPipe => Self::ClosedPipe,
            _ => failed(error.to_string()),
        }
    }
}

impl From<BookError> for Stop {
    fn from(error: BookError) -> Self {
        let (what, to_do) = error.texts();
        Self::Failed(vec![what, to_do])
    }
}

impl From<ServeError> for Stop {
    fn from(error: ServeError) -> Self {
        let (what, to_do) = error.texts();
        Self::Failed(vec![what, to_do])
    }
}

impl From<ChatError> for Stop {
    fn from(error: ChatError) -> Self {
        match error {
            ChatError::Book(error) => error.into(),
            ChatError::Io(error) => error.into(),
            ChatError::Editor(error) => failed(error.to_string()),
        }
    }
}

impl From<PlayError> for Stop {
    fn from(error: PlayError) -> Self {
        match error {
            PlayError::Book(error) => error.into(),
            PlayError::Out(error) => error.into(),
            other => Self::Failed(other.text().into_iter().collect()),
        }
    }
}
