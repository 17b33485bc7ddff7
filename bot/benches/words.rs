//! How long it takes to put one message into words: `cargo bench -p carvetime --bench words`.
#![allow(clippy::unwrap_used)]

use carvetime::words::{Arg, Reader, Text, Voice};
use carvetime_core::quantity::pounds;
use chrono::{DateTime, TimeDelta};
use divan::{Bencher, black_box};

fn main() {
    divan::main();
}

fn text() -> Text {
    Text::new("units-range")
        .with("from", Arg::Span(TimeDelta::minutes(150)))
        .with("to", Arg::Mass(pounds(14.5)))
        .with("clock", Arg::DayClock(DateTime::UNIX_EPOCH + TimeDelta::hours(30)))
        .with("name", Arg::Verbatim("Rosa".into()))
}

#[divan::bench(args = ["en-US", "es-ES"])]
fn one_message_with_four_arguments(bencher: Bencher<'_, '_>, tag: &str) {
    let voice = Voice::new();
    let reader = Reader::new(tag, chrono_tz::America::Chicago, DateTime::UNIX_EPOCH);
    let text = [text()];
    bencher.bench_local(|| voice.render(black_box(&text), &reader));
}

#[divan::bench]
fn a_locale_for_the_first_time() -> String {
    let reader = Reader::new("es-ES", chrono_tz::America::Chicago, DateTime::UNIX_EPOCH);
    Voice::new().render(&[text()], &reader)
}
