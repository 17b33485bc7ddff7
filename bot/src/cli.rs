//! The command line: what may be asked of the program, and its help in the reader's language.
//!
//! Owns names of commands and flags. Runs nothing: `main` does. Help sentences are `cli-about-COMMAND` and
//! `cli-help-FLAG` in `locales/*/cli.ftl`.

use crate::words::{Arg, Reader, Text, Voice};
use chrono::Utc;
use chrono_tz::Tz;
use clap::{Args, CommandFactory, FromArgMatches, Parser, Subcommand};
use std::ffi::OsString;
use std::net::SocketAddr;
use std::path::PathBuf;

/// A command line that has been read.
#[derive(Debug, Parser)]
#[command(name = "carvetime", version, disable_help_subcommand = true)]
pub struct Cli {
    /// What to do; talk in this terminal if nothing is named.
    #[command(subcommand)]
    pub command: Option<Command>,
    /// Flags of all commands.
    #[command(flatten)]
    pub common: Common,
}

/// Flags of all commands.
#[derive(Debug, Args)]
pub struct Common {
    /// Where everything is kept.
    #[arg(long, global = true, value_name = "DIR", env = "CARVETIME_DATA")]
    pub data: Option<PathBuf>,
    /// Language, units and clock.
    #[arg(long, global = true, value_name = "TAG")]
    pub locale: Option<String>,
    /// Time zone of the kitchen.
    #[arg(long, global = true, value_name = "IANA_NAME")]
    pub zone: Option<String>,
}

/// What to do.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Talk in this terminal.
    Chat,
    /// Run as a Telegram bot.
    Serve {
        /// The platform delivers to this address instead of being asked.
        #[arg(long, value_name = "URL", requires = "listen")]
        webhook: Option<String>,
        /// Where to listen for that.
        #[arg(long, value_name = "ADDR", requires = "webhook")]
        listen: Option<SocketAddr>,
        /// Where supervisors may ask how it goes.
        #[arg(long, value_name = "ADDR")]
        health: Option<SocketAddr>,
    },
    /// Answer one question.
    Ask {
        /// The question, in one word or many.
        #[arg(required = true, allow_negative_numbers = true)]
        text: Vec<String>,
        /// JSON instead of text.
        #[arg(long)]
        json: bool,
    },
    /// Replay a temperature log.
    Forecast(crate::forecast_cli::Flags),
    /// Play a script.
    Rehearse {
        /// The script.
        file: PathBuf,
        /// JSON Lines instead of text.
        #[arg(long)]
        json: bool,
    },
    /// Write everything into one file.
    Backup {
        /// The file, which must not be there yet.
        file: PathBuf,
    },
    /// Bring a backup back.
    Restore {
        /// The backup.
        file: PathBuf,
    },
}

/// What `TZ` names, as far as it is a zone's name: `America/Chicago`, `:America/Chicago`, and no rule like `CST6CDT,M3.2.0`.
fn of_environment() -> Option<Tz> {
    let name = std::env::var("TZ").ok()?;
    name.strip_prefix(':').unwrap_or(&name).parse().ok()
}

fn of_system() -> Option<Tz> {
    iana_time_zone::get_timezone().ok()?.parse().ok()
}

impl Common {
    /// The language tag: the flag's, else the system's, else English.
    pub fn tag(&self) -> String {
        self.locale.clone().or_else(sys_locale::get_locale).unwrap_or_else(|| "en-US".to_owned())
    }

    /// The zone of the kitchen: the flag's, else the one `TZ` names, else the system's, else UTC.
    ///
    /// # Errors
    /// The sentence for a flag that names no zone.
    pub fn zone(&self) -> Result<Tz, Text> {
        match &self.zone {
            Some(name) => name.parse().map_err(|_| Text::new("cli-no-zone").with("given", Arg::Verbatim(name.clone()))),
            None => Ok(of_environment().or_else(of_system).unwrap_or(Tz::UTC)),
        }
    }

    /// The directory everything is kept in: the flag's, else `CARVETIME_DATA`, else the platform's.
    ///
    /// # Errors
    /// The sentence for a system that has none.
    pub fn data(&self) -> Result<PathBuf, Text> {
        let of_platform = || Some(directories::ProjectDirs::from("", "", "carvetime")?.data_dir().to_owned());
        self.data.clone().or_else(of_platform).ok_or_else(|| Text::new("cli-no-data"))
    }

    /// The person at the command line.
    ///
    /// # Errors
    /// The sentence for a flag that names no zone or no language.
    pub fn reader(&self) -> Result<Reader, Text> {
        let tag = self.tag();
        if self.locale.is_some() && !is_tag(&tag) {
            return Err(Text::new("cli-no-locale").with("given", Arg::Verbatim(tag)));
        }
        Ok(Reader::new(&tag, self.zone()?, Utc::now()))
    }
}

/// Whether `tag` is a language tag.
pub fn is_tag(tag: &str) -> bool {
    tag.parse::<unic_langid::LanguageIdentifier>().is_ok_and(|id| !id.language.is_empty())
}

/// Reads the command line; help comes in the language of `--locale` or of the system.
///
/// # Errors
/// clap's own, which knows its exit status and where to print itself (help and version are such "errors" too).
pub fn read(args: Vec<OsString>, voice: &Voice) -> Result<Cli, clap::Error> {
    let tag = locale_before_reading(&args);
    let common = Common { data: None, locale: tag, zone: None };
    let reader = Reader::new(&common.tag(), Tz::UTC, Utc::now());
    let args = args.into_iter().map(negative_amount);
    let matches = with_help(Cli::command(), voice, &reader).try_get_matches_from(args)?;
    Cli::from_arg_matches(&matches)
}

/// `-5 lb` is an amount, not a flag: it gets a true minus sign, so that it is answered like one.
fn negative_amount(arg: OsString) -> OsString {
    match arg.to_str().and_then(|text| text.strip_prefix('-')) {
        Some(rest) if rest.starts_with(|c: char| c.is_ascii_digit()) => OsString::from(format!("\u{2212}{rest}")),
        _ => arg,
    }
}

/// The value of `--locale`, found without knowing the rest: help has to be written before the line is read.
fn locale_before_reading(args: &[OsString]) -> Option<String> {
    let mut words = args.iter().filter_map(|arg| arg.to_str());
    while let Some(word) = words.next() {
        match word.strip_prefix("--locale") {
            Some("") => return words.next().map(str::to_owned),
            Some(value) => return value.strip_prefix('=').map(str::to_owned),
            None => {}
        }
    }
    None
}

/// The commands with their sentences.
fn with_help(command: clap::Command, voice: &Voice, reader: &Reader) -> clap::Command {
    let label = |text: Text| voice.label(&text, reader);
    let flags = |command: clap::Command| {
        command.mut_args(|arg| {
            let help = label(Text::named("cli-help", arg.get_id().as_str()));
            arg.help(help)
        })
    };
    let about = label(Text::named("cli-about", command.get_name()));
    let names: Vec<String> = command.get_subcommands().map(|sub| sub.get_name().to_owned()).collect();
    names.iter().fold(flags(command.about(about)), |command, name| {
        command.mut_subcommand(name, |sub| flags(sub.about(label(Text::named("cli-about", name)))))
    })
}
