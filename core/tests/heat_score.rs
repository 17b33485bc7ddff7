//! The forecast scored on logs its prior was not learned from, beside four simple forecasters; carry-over against the truth.
//!
//! The bounds stand where the measured figures are, with a little room: what is asserted is that they don't get worse. Measured (six
//! parts): coverage 81 % (84 / 80 / 86 / 84), median error 14.2 / 6.5 / 3.1 / 1.8 min, pinball 9.4, half-time 73 %; the mean over eight ways
//! to part the logs (`tune_forecast ways`): 80 % (84 / 82 / 83 / 82), 13.9 / 6.9 / 2.9 / 1.8 min, 9.4, 77 %; each log by the other
//! fifty-nine, which is nearest to what ships: 80 % (84 / 83 / 80 / 81), 13.1 / 7.0 / 3.0 / 1.8 min, 9.3, 80 %. Log 194, whose probes show the
//! targets two hours before the truth, makes 1.6 of that pinball by itself.
//!
//! What bounds the far errors is that nobody knows the bird yet, not how the forecast is made. Told some of what only the whole log and the
//! truth can tell, it would be off (six parts, > 120 and 60 to 120 min to go, pinball) by:
//!
//! - nothing told: 14.2 / 6.5 / 9.4; the pit's whole future: 14.7 / 6.3 / 9.0; how fast heat goes through the meat: 13.9 / 6.4 / 8.8;
//! - how the skin takes heat (Biot number, wetness): 8.8 / 4.7 / 7.3; that and the meat's rate: 5.7 / 3.4 / 6.3; every unknown: 3.1 / 2.3 / 6.1;
//! - a prior learned from the scored logs too: 12.4 / 6.5 / 8.6, so that more logs would win little.
//!
//! Two birds with one curve for 90 min part later, by how soon the wet skin holds them back. Three tenths of the far weight is the
//! forecast before any reading (17 min; a straight regression on mass, cooker and setting is off by 19), and four fifths of the rest's
//! squared error is one offset a cook. Tried on held-back logs without gain: slab to more than sphere, vapour pressure, other wander and
//! memory, more or fewer rounds and worths of learning, eight model forms averaged, a regression of what is left on mass, cooker, targets,
//! start and time. Drawing sixty cooks anew moves the far median between 12.0 and 15.6 (eight in ten): smaller gains can't be told from luck.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod cooks;

use carvetime_core::heat::{Doubt, forecast};
use carvetime_core::quantity::in_fahrenheit;
use cooks::score::{Score, Shot, score};
use cooks::{learn, logs, simple};
use std::sync::LazyLock;

static SHOTS: LazyLock<Vec<Shot>> = LazyLock::new(|| learn::cross_validated(&logs()));

fn of<'a>(shots: &'a [Shot], family: impl Fn(&Shot) -> bool + 'a) -> Score {
    score(&shots.iter().filter(|s| family(s)).collect::<Vec<_>>())
}

#[test]
fn four_in_five_truths_lie_in_the_interval_however_far_away_they_are() {
    let all = of(&SHOTS, |_| true);
    assert!((0.76..=0.84).contains(&all.coverage), "{}", all.coverage);
    for covered in all.bucket_coverage {
        assert!((0.73..=0.87).contains(&covered), "{:?}", all.bucket_coverage);
    }
}

#[test]
fn the_median_is_as_near_as_it_was_measured() {
    let all = of(&SHOTS, |_| true);
    for (error, bound) in all.bucket_error.into_iter().zip([15.0, 7.6, 3.5, 2.5]) {
        assert!(error <= bound, "{:?}", all.bucket_error);
    }
    assert!(all.pinball <= 9.8, "{}", all.pinball);
    assert!(all.half_time >= 0.7, "{}", all.half_time);
}

#[test]
fn every_simple_forecaster_is_beaten_clearly() {
    let mine = of(&SHOTS, |_| true);
    for (name, raw) in simple::ALL {
        let shots = simple::cross_validated(&logs(), raw, learn::FOLDS);
        let theirs = of(&shots, |_| true);
        assert!(mine.pinball < 0.7 * theirs.pinball, "{name}: {} against {}", mine.pinball, theirs.pinball);
    }
}

#[test]
fn no_family_of_cooks_is_worse_than_the_heated_sphere() {
    let (_, raw) = simple::ALL[3];
    let sphere = simple::cross_validated(&logs(), raw, learn::FOLDS);
    let mut families: Vec<String> = SHOTS.iter().map(|s| s.family.clone()).collect();
    families.sort();
    families.dedup();
    for family in families {
        let (mine, theirs) = (of(&SHOTS, |s| s.family == family), of(&sphere, |s| s.family == family));
        assert!(mine.pinball < theirs.pinball, "{family}: {:.1} against {:.1}", mine.pinball, theirs.pinball);
    }
}

#[test]
fn undisturbed_logs_rarely_raise_a_doubt_about_change() {
    let (mut raised, mut forecasts) = (0, 0);
    for log in logs() {
        let (cook, readings) = (log.cook(), log.readings());
        for (i, reading) in readings.iter().enumerate().step_by(7) {
            let outlook = forecast(&cook, &readings[..=i], reading.at);
            forecasts += 1;
            raised += usize::from(outlook.doubts.iter().any(|d| matches!(d, Doubt::Changed(_))));
        }
    }
    assert!(raised * 20 < forecasts, "{raised} of {forecasts}");
}

#[test]
fn carry_over_is_foretold_within_a_few_degrees() {
    let mut errors = Vec::new();
    for log in logs() {
        let readings: Vec<_> =
            log.readings().into_iter().filter(|r| cooks::minutes(r.at) <= log.truth.pull_min).collect();
        let outlook = forecast(&log.cook(), &readings, cooks::span(log.truth.pull_min));
        for (spot, peak) in [(outlook.breast, log.truth.breast_peak_f), (outlook.thigh, log.truth.thigh_peak_f)] {
            // A log whose forecast says "not yet" is pulled later there than it was.
            if cooks::minutes(outlook.done.p50) < log.truth.pull_min + 5.0 {
                errors.push(in_fahrenheit(spot.unwrap().peak) - peak);
            }
        }
    }
    errors.sort_by(|a, b| a.abs().total_cmp(&b.abs()));
    let (median, most) = (errors[errors.len() / 2].abs(), errors[errors.len() * 9 / 10].abs());
    let bias = errors.iter().sum::<f64>() / errors.len() as f64;
    assert!(
        errors.len() > 60 && median < 4.0 && most < 7.5,
        "{} spots: median {median:.1}, nine in ten {most:.1}, bias {bias:.1} °F",
        errors.len()
    );
}
