//! A turkey in an oven whose dial was turned.

use carvetime_core::bird::{Bird, BirdMass, Condition, Form, Kind};
use carvetime_core::heat::{Cook, Profile};
use carvetime_core::quantity::{fahrenheit, pounds};
use carvetime_core::roast::{Cooker, Heat};
use chrono::TimeDelta;

/// A fresh whole bird of so many pounds, the oven at `setting_f` now and at each of `was` until that minute.
pub fn cook(mass_lb: f64, setting_f: f64, was: &[(i64, f64)]) -> Cook {
    Cook {
        bird: Bird {
            kind: Kind::Turkey,
            mass: BirdMass::new(pounds(mass_lb)).unwrap(),
            condition: Condition::Fresh,
            form: Form::Whole,
            stuffed: false,
            solution: None,
        },
        heat: Heat { cooker: Cooker::Oven, setting: fahrenheit(setting_f) },
        start: None,
        breast: Some(fahrenheit(165.0)),
        thigh: Some(fahrenheit(165.0)),
        profile: Profile::default(),
        was_set: was.iter().map(|(until, f)| (TimeDelta::minutes(*until), fahrenheit(*f))).collect(),
    }
}
