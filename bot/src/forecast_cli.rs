//! `carvetime forecast FILE.csv`: replays a temperature log and prints the forecast made at every reading.
//!
//! Owns the command's flags, its lines and its JSON. The log's format is [`crate::reading::read_csv`]'s, the forecast
//! [`carvetime_core::heat`]'s. Start at [`run`].

use crate::reading::{CsvProblem, read_csv};
use crate::room::why_wide;
use crate::words::{Arg, Reader, Text, Voice, plain};
use carvetime_core::bird::{Bird, BirdMass, Condition, Form, Kind};
use carvetime_core::heat::{Cook, Doubt, Outlook, Profile, SpotOutlook, State, Suspect, forecast};
use carvetime_core::quantity::{Mass, Temperature, UnitWords, fahrenheit, grams, in_grams, scan};
use carvetime_core::roast::{Cooker, Heat, Spread};
use chrono::TimeDelta;
use serde::Serialize;
use std::io::{self, Write};
use std::path::PathBuf;

/// Flags of the command.
#[derive(Debug, clap::Args)]
pub struct Flags {
    /// The log.
    pub file: PathBuf,
    /// Kind of bird.
    #[arg(long, value_parser = ["turkey", "chicken", "duck", "goose"], default_value = "turkey")]
    pub bird: String,
    /// Mass as sold; the middle of what is usual for the kind if it is left out.
    #[arg(long)]
    pub mass: Option<String>,
    /// How it lies.
    #[arg(long, value_parser = ["whole", "flat", "breast"], default_value = "whole")]
    pub form: String,
    /// Stuffed.
    #[arg(long)]
    pub stuffed: bool,
    /// What gives the heat.
    #[arg(long, value_parser = ["oven", "fan-oven", "smoker"], default_value = "oven")]
    pub cooker: String,
    /// Setting.
    #[arg(long, default_value = "325 F")]
    pub pit: String,
    /// Temperature of the bird as it met the heat.
    #[arg(long)]
    pub start: Option<String>,
    /// Target of the breast.
    #[arg(long, default_value = "165 F")]
    pub breast: String,
    /// Target of the thigh.
    #[arg(long, default_value = "165 F")]
    pub thigh: String,
    /// JSON Lines instead of text.
    #[arg(long)]
    pub json: bool,
}

/// Why the command stopped.
#[derive(Debug)]
pub enum ForecastStop {
    /// A flag that can't be read: wrong usage.
    Flag(Text),
    /// A log that can't be read.
    Log(CsvProblem),
    /// The file or the output.
    File(io::Error),
    /// The output was closed or is full.
    Out(io::Error),
}

/// Readings after which a long log's progress is told.
const LONG_LOG: usize = 500;

/// Runs the command: lines to `out`, progress on a long log to `aside`.
///
/// # Errors
/// [`ForecastStop`].
pub fn run(
    flags: &Flags,
    voice: &Voice,
    reader: &Reader,
    out: &mut impl Write,
    aside: &mut impl Write,
) -> Result<(), ForecastStop> {
    let cook = flags.cook().map_err(ForecastStop::Flag)?;
    let bytes = std::fs::read(&flags.file).map_err(ForecastStop::File)?;
    let readings = read_csv(&String::from_utf8_lossy(&bytes)).map_err(ForecastStop::Log)?;
    let mut told: Vec<Text> = Vec::new();
    for (i, at_once) in readings.iter().enumerate() {
        let outlook = forecast(&cook, &readings[..=i], at_once.at);
        if flags.json {
            let line =
                serde_json::to_string(&Json::of(at_once.at, &outlook)).map_err(|e| ForecastStop::Out(e.into()))?;
            writeln!(out, "{line}").map_err(ForecastStop::Out)?;
        } else {
            let remarks = remarks(&outlook);
            let mut lines = vec![line(at_once.at, &outlook)];
            // A remark is made once, when it arises.
            lines.extend(remarks.iter().filter(|r| !told.contains(r)).cloned());
            told = remarks;
            let said: Vec<String> = lines.iter().map(|text| plain(&voice.label(text, reader))).collect();
            writeln!(out, "{}", said.join("  ")).map_err(ForecastStop::Out)?;
        }
        if (i + 1) % LONG_LOG == 0 {
            let count = |n: usize| Arg::Count(i64::try_from(n).unwrap_or(i64::MAX));
            let text = Text::new("forecast-progress").with("done", count(i + 1)).with("all", count(readings.len()));
            // Progress is a courtesy: nobody may be looking.
            let _ = writeln!(aside, "{}", voice.label(&text, reader));
        }
    }
    out.flush().map_err(ForecastStop::Out)
}

/// What is expected, in one line: `1 h 30 min: done at 2 h 57 min (2 h 48 min to 3 h 10 min)`.
fn line(at: TimeDelta, outlook: &Outlook) -> Text {
    let id = match outlook.state {
        State::Done => "forecast-line-done",
        State::Cooking => "forecast-line",
    };
    let Spread { p10, p50, p90 } = outlook.done;
    Text::new(id)
        .with("at", Arg::Span(at))
        .with("done", Arg::Span(p50))
        .with("from", Arg::Span(p10))
        .with("to", Arg::Span(p90))
}

/// What there is to ask and to doubt.
fn remarks(outlook: &Outlook) -> Vec<Text> {
    outlook.suspects.iter().map(ask_about).chain(outlook.doubts.iter().map(why_wide)).collect()
}

/// Asks about a reading that can't be right.
pub fn ask_about(suspect: &Suspect) -> Text {
    let text = match suspect.meant {
        Some(meant) => Text::new("forecast-suspect-meant").with("meant", Arg::Temperature(meant)),
        None => Text::new("forecast-suspect"),
    };
    text.with("place", Arg::Choice(suspect.place.name())).with("given", Arg::Temperature(suspect.given))
}

#[derive(Serialize)]
struct Json {
    minutes: f64,
    p10: f64,
    p50: f64,
    p90: f64,
    breast: Option<JsonSpot>,
    thigh: Option<JsonSpot>,
    log_reduction: f64,
    state: &'static str,
    doubts: Vec<&'static str>,
    suspects: Vec<JsonSuspect>,
}

#[derive(Serialize)]
struct JsonSpot {
    p10: f64,
    p50: f64,
    p90: f64,
}

#[derive(Serialize)]
struct JsonSuspect {
    place: &'static str,
    slip: &'static str,
}

impl Json {
    fn of(at: TimeDelta, outlook: &Outlook) -> Self {
        let [p10, p50, p90] = quantiles(&outlook.done);
        let suspects = outlook.suspects.iter().filter(|s| s.at == at);
        Self {
            minutes: minutes(at),
            p10,
            p50,
            p90,
            breast: outlook.breast.as_ref().map(JsonSpot::of),
            thigh: outlook.thigh.as_ref().map(JsonSpot::of),
            log_reduction: (outlook.log_reduction * 100.0).round() / 100.0,
            state: outlook.state.name(),
            doubts: outlook.doubts.iter().map(Doubt::name).collect(),
            suspects: suspects.map(|s| JsonSuspect { place: s.place.name(), slip: s.slip.name() }).collect(),
        }
    }
}

impl JsonSpot {
    fn of(spot: &SpotOutlook) -> Self {
        let [p10, p50, p90] = quantiles(&spot.spread);
        Self { p10, p50, p90 }
    }
}

fn quantiles(spread: &Spread) -> [f64; 3] {
    [spread.p10, spread.p50, spread.p90].map(minutes)
}

/// Minutes, to a tenth.
fn minutes(span: TimeDelta) -> f64 {
    (span.num_milliseconds() as f64 / 6000.0).round() / 10.0
}

impl Flags {
    /// The cook these flags tell of.
    fn cook(&self) -> Result<Cook, Text> {
        let kind = match (self.bird.as_str(), self.form.as_str()) {
            ("turkey", "breast") => Kind::TurkeyBreast,
            (name, _) => Kind::from_name(name).unwrap_or(Kind::Turkey),
        };
        let mass = match &self.mass {
            Some(text) => self.mass_of(text)?,
            None => {
                let usual = kind.usual_mass();
                grams(0.5 * (in_grams(usual.low) + in_grams(usual.high)))
            }
        };
        let mass = BirdMass::new(mass).map_err(|error| {
            let range = |mass| Arg::Mass(mass);
            Text::new("forecast-flag-mass-range")
                .with("given", range(error.given))
                .with("low", range(error.low))
                .with("high", range(error.high))
        })?;
        let bird = Bird {
            kind,
            mass,
            condition: Condition::Fresh,
            form: if self.form == "flat" { Form::Flat } else { Form::Whole },
            stuffed: self.stuffed,
            solution: None,
        };
        let breast_alone = self.form == "breast";
        let heat = Heat {
            cooker: Cooker::from_name(&self.cooker).unwrap_or(Cooker::Oven),
            setting: temperature("--pit", &self.pit, SETTINGS_F)?,
        };
        let thigh = if breast_alone { None } else { Some(temperature("--thigh", &self.thigh, TARGETS_F)?) };
        Ok(Cook {
            bird,
            heat,
            start: self.start.as_deref().map(|s| temperature("--start", s, STARTS_F)).transpose()?,
            breast: Some(temperature("--breast", &self.breast, TARGETS_F)?),
            thigh,
            profile: Profile::default(),
            was_set: Vec::new(),
        })
    }

    fn mass_of(&self, text: &str) -> Result<Mass, Text> {
        let found = scan(text, &UnitWords::international());
        let mass = found.first().filter(|_| found.len() == 1).and_then(|f| f.amount.mass());
        mass.ok_or_else(|| Text::new("forecast-flag-mass").with("given", Arg::Verbatim(text.to_owned())))
    }
}

/// °F taken for a setting, a start and a target.
const SETTINGS_F: (f64, f64) = (150.0, 600.0);
const STARTS_F: (f64, f64) = (-20.0, 100.0);
const TARGETS_F: (f64, f64) = (130.0, 212.0);

fn temperature(flag: &'static str, text: &str, (low, high): (f64, f64)) -> Result<Temperature, Text> {
    let found = scan(text, &UnitWords::international());
    let read = found.first().filter(|_| found.len() == 1).and_then(|f| f.amount.temperature());
    let (low, high) = (fahrenheit(low), fahrenheit(high));
    read.filter(|t| low <= *t && *t <= high).ok_or_else(|| {
        Text::new("forecast-flag-temperature")
            .with("flag", Arg::Verbatim(flag.to_owned()))
            .with("given", Arg::Verbatim(text.to_owned()))
            .with("low", Arg::Temperature(low))
            .with("high", Arg::Temperature(high))
    })
}
