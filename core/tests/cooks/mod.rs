//! The sixty synthetic logs of `tests/cooks`: made by a detailed three-dimensional model, not measured on birds.
#![allow(dead_code, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

pub mod learn;
pub mod score;
pub mod simple;

use carvetime_core::bird::{Bird, BirdMass, Condition, Form, Kind};
use carvetime_core::heat::{Cook, Profile, Reading};
use carvetime_core::quantity::{fahrenheit, pounds};
use carvetime_core::roast::{Cooker, Heat};
use chrono::TimeDelta;

/// What is true of a log, known to the scorer only.
#[derive(Debug, Clone)]
pub struct Truth {
    pub family: String,
    pub mode: String,
    pub target_min: f64,
    pub breast_min: f64,
    pub thigh_min: f64,
    pub pull_min: f64,
    pub breast_peak_f: f64,
    pub thigh_peak_f: f64,
    /// Breast and thigh at the pull, °F, and the minutes to each one's peak after it.
    pub at_pull: [(f64, f64); 2],
}

#[derive(Debug, Clone, Copy)]
pub struct Line {
    pub minutes: f64,
    pub pit_f: Option<f64>,
    pub breast_f: Option<f64>,
    pub thigh_f: Option<f64>,
}

#[derive(Debug, Clone)]
pub struct Log {
    pub id: String,
    pub mass_lb: f64,
    pub form: String,
    pub stuffed: bool,
    pub cooker: String,
    pub pit_f: f64,
    pub start_f: Option<f64>,
    pub breast_f: f64,
    pub thigh_f: f64,
    pub lines: Vec<Line>,
    pub truth: Truth,
}

/// All logs, by id.
pub fn logs() -> Vec<Log> {
    let folder = format!("{}/../tests/cooks", env!("CARGO_MANIFEST_DIR"));
    let read =
        |name: &str| std::fs::read_to_string(format!("{folder}/{name}")).unwrap_or_else(|e| panic!("{name}: {e}"));
    let meta: serde_json::Value = serde_json::from_str(&read("meta.json")).unwrap();
    let truths: serde_json::Value = serde_json::from_str(&read("truth.json")).unwrap();
    meta.as_array()
        .unwrap()
        .iter()
        .map(|m| {
            let text = |k: &str| m[k].as_str().unwrap().to_owned();
            let number = |k: &str| m[k].as_f64().unwrap();
            let truth = &truths[m["id"].as_str().unwrap()];
            let minutes = |k: &str| truth[k].as_f64().unwrap();
            Log {
                id: text("id"),
                mass_lb: number("mass_lb"),
                form: text("form"),
                stuffed: m["stuffed"].as_bool().unwrap(),
                cooker: text("cooker"),
                pit_f: number("pit_f"),
                start_f: m["start_f"].as_f64(),
                breast_f: number("breast_f"),
                thigh_f: number("thigh_f"),
                lines: read(&format!("{}.csv", text("id"))).lines().skip(1).map(line).collect(),
                truth: Truth {
                    family: truth["family"].as_str().unwrap().to_owned(),
                    mode: truth["mode"].as_str().unwrap().to_owned(),
                    target_min: minutes("t_target_min"),
                    breast_min: minutes("t_breast_min"),
                    thigh_min: minutes("t_thigh_min"),
                    pull_min: minutes("pull_min"),
                    breast_peak_f: truth["carryover"]["breast_peak_f"].as_f64().unwrap(),
                    thigh_peak_f: truth["carryover"]["thigh_peak_f"].as_f64().unwrap(),
                    at_pull: ["breast", "thigh"].map(|spot| {
                        let of = |what: &str| truth["carryover"][format!("{spot}_{what}")].as_f64().unwrap();
                        (of("at_pull_f"), of("peak_after_min"))
                    }),
                },
            }
        })
        .collect()
}

fn line(text: &str) -> Line {
    let cells: Vec<Option<f64>> = text.split(',').map(|c| c.parse().ok()).collect();
    Line { minutes: cells[0].unwrap(), pit_f: cells[1], breast_f: cells[2], thigh_f: cells[3] }
}

impl Log {
    /// What the program is told of it.
    pub fn cook(&self) -> Cook {
        let bird = Bird {
            kind: Kind::Turkey,
            mass: BirdMass::new(pounds(self.mass_lb)).unwrap(),
            condition: Condition::Fresh,
            form: if self.form == "flat" { Form::Flat } else { Form::Whole },
            stuffed: self.stuffed,
            solution: None,
        };
        let heat = Heat { cooker: Cooker::from_name(&self.cooker).unwrap(), setting: fahrenheit(self.pit_f) };
        Cook {
            bird,
            heat,
            start: self.start_f.map(fahrenheit),
            breast: Some(fahrenheit(self.breast_f)),
            thigh: Some(fahrenheit(self.thigh_f)),
            profile: Profile::default(),
            was_set: Vec::new(),
        }
    }

    /// Its readings.
    pub fn readings(&self) -> Vec<Reading> {
        self.lines
            .iter()
            .map(|l| Reading {
                at: span(l.minutes),
                pit: l.pit_f.map(fahrenheit),
                breast: l.breast_f.map(fahrenheit),
                thigh: l.thigh_f.map(fahrenheit),
                sure: false,
            })
            .collect()
    }
}

/// Minutes as a span.
pub fn span(minutes: f64) -> TimeDelta {
    TimeDelta::milliseconds((minutes * 60_000.0).round() as i64)
}

/// A span in minutes.
pub fn minutes(span: TimeDelta) -> f64 {
    span.num_milliseconds() as f64 / 60_000.0
}
